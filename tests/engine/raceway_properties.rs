//! What must hold for every raceway request, however strange: properties over generated requests.

use elbowroom::checks::raceway_fill::{RacewayFill, RacewayFillOutcome, RacewayFillRequest};
use elbowroom::checks::{Evaluation, Verdict, evaluate, faults_of};
use elbowroom::quantity::{Decimal, Units};
use elbowroom::tables::{compact_conductor_dimensions, conductor_dimensions, raceway_dimensions};
use elbowroom::trade::{Covering, Insulation, RacewayKind};
use proptest::prelude::*;
use proptest::sample::select;
use serde_json::{Value, json};

type Filled = Evaluation<RacewayFillOutcome>;

/// Evaluates a request that must be free of faults, and replays its proof.
fn fill(request: &Value) -> Filled {
    let request: RacewayFillRequest =
        elbowroom::json::read_value(request.clone()).expect("a generated request decodes");
    let faults = faults_of::<RacewayFill>(&request);
    assert!(faults.is_empty(), "{faults:?}");
    let evaluation = evaluate::<RacewayFill>(&request);
    assert_eq!(evaluation.proof.replay(), Ok(()));
    evaluation
}

/// Every conductor that the tables have with an area in both systems.
fn tabulated() -> Vec<Value> {
    let mut conductors = Vec::new();
    for insulation in Insulation::ALL {
        let coverings: &[Option<Covering>] = if insulation.is_made_with_and_without_covering() {
            &[Some(Covering::With), Some(Covering::Without)]
        } else {
            &[None]
        };
        for covering in coverings {
            for size in conductor_dimensions::sizes(*insulation) {
                let found = conductor_dimensions::of(*insulation, *covering, size, Units::Si);
                if found.is_some_and(|found| found.area.is_some()) {
                    let mut conductor = json!({"insulation": insulation, "size": size});
                    if let Some(covering) = covering {
                        conductor["covering"] = json!(covering);
                    }
                    conductors.push(conductor);
                }
            }
        }
        for size in compact_conductor_dimensions::sizes(*insulation) {
            conductors.push(json!({"insulation": insulation, "size": size, "compact": true}));
        }
    }
    conductors
}

/// The small end of the tables, where counts and limits change, twice as often as the rest.
fn conductor() -> impl Strategy<Value = Value> {
    let small = ["THHN", "TW", "XHHW", "Z"].into_iter().flat_map(|insulation| {
        ["14 AWG", "12 AWG", "10 AWG", "8 AWG"].map(|size| json!({"insulation": insulation, "size": size}))
    });
    prop_oneof![2 => select(small.collect::<Vec<_>>()), 1 => select(tabulated())]
}

fn bare() -> impl Strategy<Value = Value> {
    prop_oneof![
        select(vec!["14 AWG", "12 AWG", "10 AWG", "8 AWG"])
            .prop_map(|size| json!({"size": size, "construction": "solid"})),
        select(vec!["8 AWG", "6 AWG", "4/0 AWG"])
            .prop_map(|size| json!({"size": size, "construction": "stranded"})),
        select(vec!["6 AWG", "4/0 AWG"]).prop_map(|size| json!({"size": size, "construction": "compact"})),
    ]
}

/// A diameter in hundredths, so that some are alike.
fn diameter() -> impl Strategy<Value = f64> {
    (5_u32..120).prop_map(|hundredths| f64::from(hundredths) / 100.0)
}

fn cable() -> impl Strategy<Value = Value> {
    (diameter(), any::<bool>())
        .prop_map(|(diameter, round)| json!({(if round { "diameter" } else { "major_diameter" }): diameter}))
}

fn counted(item: impl Strategy<Value = Value>) -> impl Strategy<Value = Value> {
    (item, 1_u32..6).prop_map(|(mut item, count)| {
        item["count"] = json!(count);
        item
    })
}

/// One more thing, and the list that it joins.
fn addition() -> impl Strategy<Value = (&'static str, Value)> {
    prop_oneof![
        counted(conductor()).prop_map(|one| ("conductors", one)),
        counted(bare()).prop_map(|one| ("bare_conductors", one)),
        counted(cable()).prop_map(|one| ("cables", one)),
        counted(diameter().prop_map(|diameter| json!({"diameter": diameter})))
            .prop_map(|one| ("measured_conductors", one)),
    ]
}

const LISTS: [&str; 4] = ["conductors", "bare_conductors", "cables", "measured_conductors"];

fn add(request: &mut Value, (list, item): (&'static str, Value)) {
    request[list].as_array_mut().expect("a list").push(item);
}

/// A request in one of the kinds; half of them hold conductors of one size only.
fn request() -> impl Strategy<Value = Value> {
    let one_size = counted(conductor()).prop_map(|one| vec![("conductors", one)]);
    let several = prop::collection::vec(addition(), 1..6);
    let contents = prop_oneof![one_size, several];
    let readings = (
        select(vec!["unrounded_diameter", "printed_columns"]),
        select(vec!["printed_area", "area_of_diameter"]),
    );
    (select(vec!["us", "si"]), readings, select(RacewayKind::ALL), contents, any::<bool>()).prop_map(
        |(units, (of_raceway, of_conductor), kind, contents, nipple)| {
            // short enough in either unit
            let raceway = if nipple {
                json!({"kind": kind, "length": 20})
            } else {
                json!({"kind": kind, "nipple": false})
            };
            let mut request = json!({
                "units": units, "raceway": raceway,
                "interpretations": {"raceway_area": of_raceway, "conductor_area": of_conductor},
                "conductors": [], "bare_conductors": [], "cables": [], "measured_conductors": [],
            });
            for item in contents {
                add(&mut request, item);
            }
            request
        },
    )
}

fn in_size(request: &Value, size: &str) -> Value {
    let mut sized = request.clone();
    sized["raceway"]["trade_size"] = json!(size);
    // sizes are offered and room is counted in the system of the request
    sized["interpretations"]["units"] = json!("as_requested");
    sized
}

/// The trade sizes of the request's kind that are filled by area: flexible metal conduit of 3/8 has a table of its own.
fn sizes(request: &Value) -> Vec<&'static str> {
    let kind = serde_json::from_value(request["raceway"]["kind"].clone()).expect("a kind");
    let counted = |size: &&str| matches!(kind, RacewayKind::Fmc | RacewayKind::Lfmc) && *size == "3/8";
    raceway_dimensions::sizes(kind).map(|size| size.name()).filter(|size| !counted(size)).collect()
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn adding_conductors_never_lowers_the_fill(request in request(), more in addition()) {
        let size = sizes(&request).pop().expect("a size");
        let before = fill(&in_size(&request, size));
        let mut fuller = request.clone();
        add(&mut fuller, more);
        let after = fill(&in_size(&fuller, size));
        let percent = |filled: &Filled| filled.outcome.fill.as_ref().expect("a fill").fill_percent.value;
        prop_assert!(after.outcome.total_area.value > before.outcome.total_area.value);
        prop_assert!(after.outcome.number.value > before.outcome.number.value);
        prop_assert!(percent(&after) >= percent(&before));
    }

    #[test]
    fn the_order_of_a_list_changes_no_figure(request in request()) {
        let size = sizes(&request).pop().expect("a size");
        let mut turned = request.clone();
        for list in LISTS {
            turned[list].as_array_mut().expect("a list").reverse();
        }
        same_figures(&fill(&in_size(&request, size)), &fill(&in_size(&turned, size)))?;
    }

    #[test]
    fn grouping_changes_no_figure(request in request()) {
        let size = sizes(&request).pop().expect("a size");
        let mut single = request.clone();
        for list in LISTS {
            let items = single[list].as_array().expect("a list").clone();
            let one_by_one = items.iter().flat_map(|item| {
                let mut one = item.clone();
                let count = item["count"].as_u64().expect("a count");
                one.as_object_mut().expect("an item").remove("count");
                std::iter::repeat_n(one, count as usize)
            });
            single[list] = one_by_one.collect();
        }
        same_figures(&fill(&in_size(&request, size)), &fill(&in_size(&single, size)))?;
    }

    /// A nipple whose length is not said is never filled beyond an ordinary run, and complies where that does.
    #[test]
    fn silence_about_a_nipple_buys_nothing(request in request(), place in any::<prop::sample::Index>()) {
        let sizes = sizes(&request);
        let with = |raceway: Value| {
            let mut request = in_size(&request, sizes[place.index(sizes.len())]);
            let given = request["raceway"].as_object_mut().expect("a raceway");
            given.remove("length");
            given.remove("nipple");
            given.extend(raceway.as_object().expect("members").clone());
            fill(&request).verdict
        };
        let (run, short, open) = (with(json!({})), with(json!({"length": 20})), with(json!({"nipple": true})));
        prop_assert_eq!(open, if run == short { run } else { Some(Verdict::NotDetermined) });
    }

    #[test]
    fn a_larger_trade_size_never_turns_complies_into_violates(request in request()) {
        let sizes = sizes(&request);
        let verdicts: Vec<_> = sizes.iter().map(|size| fill(&in_size(&request, size)).verdict).collect();
        // rows that nothing confirms decide nothing
        prop_assume!(!verdicts.contains(&Some(Verdict::NotDetermined)));
        let complies: Vec<bool> = verdicts.iter().map(|verdict| *verdict == Some(Verdict::Complies)).collect();
        prop_assert!(complies.is_sorted(), "{complies:?}");
        // and the size that is offered is the first that complies
        let offered = fill(&request).outcome.fits[0].trade_size.map(|size| size.name());
        let first = complies.iter().position(|complies| *complies).map(|place| sizes[place]);
        prop_assert_eq!(offered, first);
    }

    #[test]
    fn room_left_and_maximum_are_exact(request in request(), place in any::<prop::sample::Index>()) {
        let sizes = sizes(&request);
        let sized = in_size(&request, sizes[place.index(sizes.len())]);
        let filled = fill(&sized);
        prop_assume!(filled.verdict != Some(Verdict::NotDetermined));
        let shown = filled.outcome.fill.expect("a fill");
        let (list, item) = LISTS
            .into_iter()
            .find_map(|list| Some((list, sized[list].as_array()?.first()?.clone())))
            .expect("something");
        let whole = |value: Decimal| value.billionths() / 1_000_000_000;
        let with = |count: i64| {
            let mut more = sized.clone();
            let mut one = item.clone();
            one["count"] = json!(count);
            add(&mut more, (list, one));
            fill(&more)
        };
        // the line that the first item joined
        let same = with(1);
        let line = same.outcome.tally.iter().zip(&filled.outcome.tally).position(|(more, was)| more.count.value != was.count.value);
        let room = whole(shown.room_left[line.expect("a line")].more.value);
        if room > 0 && room < 5000 {
            prop_assert_eq!(with(room).verdict, Some(Verdict::Complies));
        }
        if room < 5000 {
            prop_assert_eq!(with(room + 1).verdict, Some(Verdict::Violates));
        }
        if let Some(maximum) = shown.maximum {
            let left = whole(maximum.value) - whole(filled.outcome.number.value);
            prop_assert_eq!(room, left.max(0));
            prop_assert_eq!(filled.verdict == Some(Verdict::Complies), left >= 0);
        }
    }

    #[test]
    fn no_text_panics(text in "\\PC{0,200}") {
        let _ = elbowroom::json::read::<RacewayFillRequest>(text.as_bytes()).map(|request| {
            if faults_of::<RacewayFill>(&request).is_empty() {
                evaluate::<RacewayFill>(&request);
            }
        });
    }
}

fn same_figures(one: &Filled, other: &Filled) -> Result<(), TestCaseError> {
    let lines = |filled: &Filled| -> Vec<_> {
        filled
            .outcome
            .tally
            .iter()
            .map(|line| (line.what, line.row, line.count.value, line.each.value, line.area.value))
            .collect()
    };
    let shown = |filled: &Filled| {
        let fill = filled.outcome.fill.clone().expect("a fill");
        let room: Vec<_> = fill.room_left.iter().map(|room| room.more.value).collect();
        let maximum = fill.maximum.map(|maximum| maximum.value);
        (fill.limit, fill.allowed_area.value, fill.margin.value, fill.fill_percent.value, maximum, room)
    };
    prop_assert_eq!(lines(one), lines(other));
    prop_assert_eq!(shown(one), shown(other));
    prop_assert_eq!(one.verdict, other.verdict);
    let fits = |filled: &Filled| filled.outcome.fits.iter().map(|fit| fit.trade_size).collect::<Vec<_>>();
    prop_assert_eq!(fits(one), fits(other));
    Ok(())
}
