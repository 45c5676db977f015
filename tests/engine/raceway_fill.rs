//! Raceway fill at its thresholds, its refusals, and what it says beside the figures.

use elbowroom::checks::raceway_fill::{FillLimit, RacewayFill, RacewayFillOutcome, RacewayFillRequest};
use elbowroom::checks::{Evaluation, Verdict, evaluate, faults_of};
use elbowroom::trade::RacewayKind;
use serde_json::{Value, json};

fn evaluated(request: Value) -> Evaluation<RacewayFillOutcome> {
    let request: RacewayFillRequest = elbowroom::json::read_value(request).expect("a request");
    let faults = faults_of::<RacewayFill>(&request);
    assert!(faults.is_empty(), "{faults:?}");
    let evaluation = evaluate::<RacewayFill>(&request);
    assert_eq!(evaluation.proof.replay(), Ok(()));
    evaluation
}

fn messages(evaluation: &Evaluation<RacewayFillOutcome>) -> Vec<&'static str> {
    evaluation.findings.iter().map(|finding| finding.message).collect()
}

/// What was decided, and how.
fn decided(request: Value) -> (Verdict, &'static str) {
    let evaluation = evaluated(request);
    let how = messages(&evaluation).into_iter().find(|message| message.starts_with("finding-fill-"));
    (evaluation.verdict.expect("a verdict"), how.expect("a finding on the fill"))
}

const WITHIN: (Verdict, &str) = (Verdict::Complies, "finding-fill-within");
const RAISED: (Verdict, &str) = (Verdict::Complies, "finding-fill-raised");
const OVER: (Verdict, &str) = (Verdict::Violates, "finding-fill-over");

fn raceway(name: &str) -> Value {
    let (kind, trade_size) = name.split_once(' ').expect("kind and trade size");
    json!({"kind": kind, "trade_size": trade_size})
}

/// Conductors and bare conductors by the row of their table, one of each.
fn rows(raceway: Value, rows: &[&str]) -> Value {
    let (mut conductors, mut bare) = (Vec::new(), Vec::new());
    for row in rows {
        match row.split_once(' ').expect("a row") {
            (size, "AWG stranded") => bare.push(json!({"size": size, "construction": "stranded"})),
            (size, "AWG solid") => bare.push(json!({"size": size, "construction": "solid"})),
            (size, "kcmil stranded") => bare.push(json!({"size": size, "construction": "stranded"})),
            (insulation, size) => conductors.push(json!({"insulation": insulation, "size": size})),
        }
    }
    // the printed columns have few decimals, so that sums can meet them exactly
    let read = json!({"raceway_area": "printed_columns", "units": "as_requested"});
    json!({"raceway": raceway, "conductors": conductors, "bare_conductors": bare, "interpretations": read})
}

fn measured(raceway: Value, diameters: &[&str]) -> Value {
    let measured: Vec<Value> = diameters
        .iter()
        .map(|diameter| json!({"diameter": diameter.parse::<f64>().expect("a number")}))
        .collect();
    json!({"raceway": raceway, "measured_conductors": measured})
}

/// One conductor: 53 % of EMT 3/4 is a circle of 0.599881… in. The step of Note 7 holds for a single conductor too, so the
/// verdict turns where 53 % is 0.8 of its area: at 0.670687… in. No published area is 53 % of a raceway exactly.
#[test]
fn one_conductor_at_53_percent() {
    let one = |diameter| decided(measured(raceway("EMT 3/4"), &[diameter]));
    assert_eq!(one("0.599881"), WITHIN);
    assert_eq!(one("0.599882"), RAISED);
    assert_eq!(one("0.670687"), RAISED);
    assert_eq!(one("0.670688"), OVER);
}

/// Two of different sizes in EMT 1/2, whose printed 31 % are 0.094 in².
#[test]
fn two_conductors_at_31_percent() {
    let two = |list: [&str; 2]| decided(rows(raceway("EMT 1/2"), &list));
    assert_eq!(two(["SF-2 18 AWG", "THHN 4 AWG"]), WITHIN); // 0.0939
    assert_eq!(two(["6 AWG stranded", "2 AWG stranded"]), WITHIN); // 0.0940
    assert_eq!(two(["THHN 4 AWG", "Z 12 AWG"]), OVER); // 0.0941
}

/// Two of one size: 31 % of EMT 3/4 are 1.8 times a circle of 0.341957… in.
#[test]
fn two_conductors_of_one_size_at_the_step() {
    let two = |diameter| decided(measured(raceway("EMT 3/4"), &[diameter, diameter]));
    assert_eq!(two("0.324409"), WITHIN); // 31 % hold two circles of 0.324409… in
    assert_eq!(two("0.324410"), RAISED);
    assert_eq!(two("0.341957"), RAISED);
    assert_eq!(two("0.341958"), OVER);
}

/// Three of different sizes in EMT 1/2, whose printed 40 % are 0.122 in²; and a fourth that takes 0.001.
#[test]
fn three_conductors_at_40_percent() {
    let exactly = ["4 AWG stranded", "3 AWG stranded", "6 AWG stranded"];
    let fill = |list: &[&str]| decided(rows(raceway("EMT 1/2"), list));
    assert_eq!(fill(&["4 AWG stranded", "3 AWG stranded", "XF 12 AWG"]), WITHIN); // 0.121
    assert_eq!(fill(&exactly), WITHIN);
    assert_eq!(fill(&[&exactly[..], &["18 AWG solid"]].concat()), OVER);
}

/// A nipple of two different sizes in EMT 3/4, whose printed 60 % are 0.320 in².
#[test]
fn a_nipple_at_60_percent() {
    let nipple = |other| {
        let mut raceway = raceway("EMT 3/4");
        raceway["length"] = json!(24);
        decided(rows(raceway, &["300 kcmil stranded", other]))
    };
    assert_eq!(nipple("PF 16 AWG"), WITHIN); // 0.3195
    assert_eq!(nipple("10 AWG solid"), WITHIN); // 0.3200
    assert_eq!(nipple("Z 14 AWG"), OVER); // 0.3203
}

/// The printed 40 % of PVC-40 1/2 are 0.114 in²: 22.8 bare 12 AWG solid of 0.005 in², so that 23 are permitted. Fixture
/// wires just smaller and just larger fall on either side.
#[test]
fn the_step_at_eight_tenths() {
    let maximum = |conductors: Value, bare: Value| {
        let request = json!({
            "raceway": raceway("PVC-40 1/2"), "conductors": conductors, "bare_conductors": bare,
            "interpretations": {"raceway_area": "printed_columns"}
        });
        evaluated(request).outcome.fill.expect("a fill").maximum.expect("a maximum").value.to_string()
    };
    let solid = |count: u32| json!([{"size": "12 AWG", "construction": "solid", "count": count}]);
    assert_eq!(maximum(json!([]), solid(1)), "23");
    let in_pvc = |count: u32| {
        let read = json!({"raceway_area": "printed_columns"});
        decided(
            json!({"raceway": raceway("PVC-40 1/2"), "bare_conductors": solid(count), "interpretations": read}),
        )
    };
    assert_eq!([in_pvc(22), in_pvc(23), in_pvc(24)], [WITHIN, RAISED, OVER]);
    // by the diameter: 40 % of 0.284631… in² are 22.77 of them, which falls short of the step
    let by_diameter =
        |count: u32| decided(json!({"raceway": raceway("PVC-40 1/2"), "bare_conductors": solid(count)}));
    assert_eq!([by_diameter(22), by_diameter(23)], [WITHIN, OVER]);
}

/// Different sizes never take the step: 0.2134 in² of one size pass where 0.2133 are permitted, of two sizes they do not.
#[test]
fn the_step_is_for_one_size_only() {
    let fill = |last: Value| {
        let mut conductors = vec![json!({"insulation": "THHN", "size": "14 AWG", "count": 20})];
        conductors.push(last);
        decided(json!({"raceway": raceway("EMT 3/4"), "conductors": conductors}))
    };
    assert_eq!(fill(json!({"insulation": "THHN", "size": "14 AWG", "count": 2})), RAISED);
    // 0.194 and 0.0211 are 0.2151
    assert_eq!(fill(json!({"insulation": "THHN", "size": "10 AWG"})), OVER);
    let mixed = evaluated(json!({
        "conductors": [{"insulation": "THHN", "size": "14 AWG"}, {"insulation": "THHN", "size": "10 AWG"}]
    }));
    assert!(!mixed.outcome.same_size);
}

/// Types that share a row are of one size.
#[test]
fn types_of_one_row_are_one_size() {
    let request = json!({
        "raceway": raceway("EMT 3/4"),
        "conductors": [
            {"insulation": "THHN", "size": "14 AWG", "count": 10},
            {"insulation": "THWN-2", "size": "14 AWG", "count": 12},
        ]
    });
    let evaluation = evaluated(request.clone());
    // and keep the names that the caller gave them
    let names: Vec<_> = evaluation.outcome.tally.iter().filter_map(|line| line.name.as_deref()).collect();
    assert_eq!(names, ["THHN 14 AWG", "THWN-2 14 AWG"]);
    assert!(evaluation.outcome.same_size);
    assert_eq!(decided(request), RAISED);
}

#[test]
fn the_number_decides_the_limit() {
    let limit = |count: u32| {
        let request = json!({
            "raceway": raceway("EMT 2"),
            "conductors": [{"insulation": "THHN", "size": "12 AWG", "count": count}]
        });
        let fill = evaluated(request).outcome.fill.expect("a fill");
        (fill.limit, fill.limit_percent.value.to_string())
    };
    assert_eq!(limit(1), (FillLimit::One, "53".to_owned()));
    assert_eq!(limit(2), (FillLimit::Two, "31".to_owned()));
    assert_eq!(limit(3), (FillLimit::OverTwo, "40".to_owned()));
    assert_eq!(limit(4), (FillLimit::OverTwo, "40".to_owned()));
}

#[test]
fn a_nipple_is_up_to_24_inches_long() {
    let limit = |units: &str, raceway: Value| {
        let request = json!({
            "units": units, "raceway": raceway, "conductors": [{"insulation": "THHN", "size": "12 AWG"}]
        });
        let evaluation = evaluated(request);
        let said = messages(&evaluation).into_iter().find(|message| message.contains("nipple"));
        (evaluation.outcome.fill.expect("a fill").limit, said)
    };
    let long = |length: f64| json!({"kind": "RMC", "trade_size": "1", "length": length});
    let (taken, too_long) = (Some("finding-taken-as-nipple"), Some("finding-too-long-for-nipple"));
    assert_eq!(limit("us", long(23.999999)), (FillLimit::Nipple, taken));
    assert_eq!(limit("us", long(24.0)), (FillLimit::Nipple, taken));
    assert_eq!(limit("us", long(24.000001)), (FillLimit::One, too_long));
    assert_eq!(limit("si", long(599.999999)), (FillLimit::Nipple, taken));
    assert_eq!(limit("si", long(600.0)), (FillLimit::Nipple, taken));
    assert_eq!(limit("si", long(600.000001)), (FillLimit::One, too_long));
    let said = |nipple: bool| json!({"kind": "RMC", "trade_size": "1", "nipple": nipple});
    // one conductor fits either way
    assert_eq!(limit("us", said(true)), (FillLimit::Nipple, taken));
    assert_eq!(limit("us", said(false)), (FillLimit::One, None));
    let both = |length: f64| json!({"kind": "RMC", "trade_size": "1", "length": length, "nipple": true});
    assert_eq!(limit("us", both(24.0)), (FillLimit::Nipple, taken));
    assert_eq!(limit("us", both(25.0)), (FillLimit::One, too_long));
    assert_eq!(limit("us", raceway("RMC 1")), (FillLimit::One, None));
}

/// FMC 4 is 4.000 in wide and PVC-A 1/2 0.700 in: ratios of 3.2 and 2.8 can be met exactly.
#[test]
fn three_conductors_may_jam_from_2_8_to_3_2() {
    let jam = |raceway: Value, diameters: [&str; 3]| {
        let evaluation = evaluated(measured(raceway, &diameters));
        let warned = messages(&evaluation).contains(&"finding-may-jam");
        (evaluation.outcome.fill.expect("a fill").jam_ratio.map(|ratio| ratio.value.to_string()), warned)
    };
    let three = |name: &str, diameter| jam(raceway(name), [diameter; 3]);
    assert!(!three("FMC 4", "1.249999").1);
    assert_eq!(three("FMC 4", "1.25"), (Some("3.2".to_owned()), true));
    assert!(three("FMC 4", "1.250001").1);
    assert!(three("PVC-A 1/2", "0.249999").1);
    assert_eq!(three("PVC-A 1/2", "0.25"), (Some("2.8".to_owned()), true));
    assert!(!three("PVC-A 1/2", "0.250001").1);
    assert_eq!(jam(raceway("FMC 4"), ["1.25", "1.25", "1.24"]), (None, false));
    let four = evaluated(measured(raceway("FMC 4"), &["1.25"; 4]));
    assert_eq!(four.outcome.fill.expect("a fill").jam_ratio, None);
}

/// Four 3/0 AWG THHN are 1.0716 in²: EMT 1-1/2 takes 0.8144, EMT 2 takes 1.3422.
#[test]
fn the_smallest_trade_size_takes_it_and_the_one_below_does_not() {
    let conductors = json!([{"insulation": "THHN", "size": "3/0", "count": 4}]);
    let evaluation = evaluated(json!({"conductors": conductors.clone()}));
    assert_eq!(evaluation.verdict, None);
    assert_eq!(evaluation.outcome.fits.len(), 14);
    // nothing confirms the rows of LFNC-C, so that no verdict is taken from them
    for fit in evaluation.outcome.fits.iter().filter(|fit| fit.kind != RacewayKind::LfncC) {
        let size = fit.trade_size.expect("some trade size takes it");
        let in_raceway = |trade_size: &str| {
            decided(json!({
                "raceway": {"kind": fit.kind, "trade_size": trade_size}, "conductors": conductors.clone()
            }))
        };
        assert_eq!(in_raceway(size.name()).0, Verdict::Complies, "{}", fit.kind);
        let below =
            elbowroom::tables::raceway_dimensions::sizes(fit.kind).filter(|other| *other < size).last();
        if let Some(below) = below {
            assert_eq!(in_raceway(below.name()).0, Verdict::Violates, "{} {below}", fit.kind);
        }
    }
    let emt = evaluation.outcome.fits.iter().find(|fit| fit.kind.name() == "EMT").expect("EMT");
    assert_eq!(emt.trade_size.expect("a size").name(), "2");
}

#[test]
fn asked_kinds_are_sized_once_each_and_the_given_kind_otherwise() {
    let kinds = |request: Value| -> Vec<&str> {
        evaluated(request).outcome.fits.iter().map(|fit| fit.kind.name()).collect()
    };
    let conductors = json!([{"insulation": "THHN", "size": "12 AWG", "count": 9}]);
    assert_eq!(kinds(json!({"raceway": {"kind": "IMC"}, "conductors": conductors})), ["IMC"]);
    let asked = json!({"raceway": {"kind": "IMC"}, "kinds": ["EMT", "RMC", "EMT"], "conductors": conductors});
    assert_eq!(kinds(asked), ["EMT", "RMC"]);
}

/// Two 12 AWG beside what is there: the counts of room are those that the next request confirms.
#[test]
fn room_left_is_exact() {
    let with = |fourteen: u32, twelve: u32| {
        json!({
            "raceway": raceway("EMT 1/2"),
            "conductors": [
                {"insulation": "THHN", "size": "14 AWG", "count": fourteen},
                {"insulation": "THHN", "size": "12 AWG", "count": twelve},
            ]
        })
    };
    let fill = evaluated(with(3, 2)).outcome.fill.expect("a fill");
    // 0.1215 less 0.0557 leaves 0.0658: six of 0.0097, four of 0.0133
    let more: Vec<_> = fill.room_left.iter().map(|room| (room.row, room.more.value.to_string())).collect();
    assert_eq!(more, [(Some("THHN 14 AWG"), "6".to_owned()), (Some("THHN 12 AWG"), "4".to_owned())]);
    assert_eq!([decided(with(9, 2)), decided(with(10, 2))], [WITHIN, OVER]);
    assert_eq!([decided(with(3, 6)), decided(with(3, 7))], [WITHIN, OVER]);
    let overfilled = evaluated(json!({
        "raceway": raceway("EMT 1/2"), "conductors": [{"insulation": "THHN", "size": "10 AWG", "count": 8}]
    }));
    let fill = overfilled.outcome.fill.expect("a fill");
    assert_eq!(fill.maximum.expect("a maximum").value.to_string(), "5");
    assert_eq!(fill.room_left[0].more.value.to_string(), "0");
    assert!(fill.margin.value.to_string().starts_with('-'));
}

/// Bare, compact, cable and measured: each area is the one that its table or its diameter gives.
#[test]
fn every_kind_of_content_counts_with_its_own_area() {
    let evaluation = evaluated(json!({
        "conductors": [
            {"insulation": "RHW", "covering": "without", "size": "8 AWG"},
            {"insulation": "XHHW-2", "size": "250 kcmil", "compact": true, "count": 2},
        ],
        "bare_conductors": [
            {"size": "8 AWG", "construction": "solid"},
            {"size": "8 AWG", "construction": "stranded"},
            {"size": "4 AWG", "construction": "compact"},
        ],
        "cables": [{"diameter": 0.5}, {"major_diameter": 0.4, "count": 2}],
        "measured_conductors": [{"diameter": 0.25, "count": 3}],
        "kinds": ["EMT"],
    }));
    let lines: Vec<(Option<&str>, String, String)> = evaluation
        .outcome
        .tally
        .iter()
        .map(|line| (line.row, line.count.value.to_string(), line.each.value.to_string()))
        .collect();
    let line = |row, count: &str, each: &str| (row, count.to_owned(), each.to_owned());
    assert_eq!(
        lines,
        [
            line(Some("XHHW 250 kcmil"), "2", "0.3421"),
            line(Some("RHH* 8 AWG"), "1", "0.0556"),
            line(Some("8 AWG solid"), "1", "0.013"),
            line(Some("8 AWG stranded"), "1", "0.017"),
            // 0.213² × 0.785398163
            line(Some("bare 4 AWG"), "1", "0.035632729"),
            // 0.4² and 0.5² × 0.785398163
            line(None, "2", "0.125663706"),
            line(None, "1", "0.196349541"),
            // 0.25² × 0.785398163
            line(None, "3", "0.049087385"),
        ]
    );
    assert_eq!(evaluation.outcome.number.value.to_string(), "12");
}

#[test]
fn what_the_tables_lack_is_refused_or_left_open_never_guessed() {
    let open = evaluated(json!({
        "raceway": raceway("EMT 5"), "conductors": [{"insulation": "THHN", "size": "500 kcmil", "count": 4}]
    }));
    assert_eq!(open.verdict, Some(Verdict::NotDetermined));
    assert_eq!(open.outcome.fill, None);
    assert_eq!(open.outcome.fits[0].trade_size.expect("a size").name(), "3");
    assert!(messages(&open).contains(&"finding-raceway-without-figures"));
    let many = |kind: &str| {
        evaluated(json!({
            "raceway": {"kind": kind}, "conductors": [{"insulation": "XHHW", "size": "2000 kcmil", "count": 9}]
        }))
    };
    assert_eq!(many("IMC").outcome.fits[0].trade_size, None);
    assert!(messages(&many("IMC")).contains(&"finding-larger-without-figures"));
    assert!(messages(&many("FMC")).contains(&"finding-no-trade-size"));
    let unconfirmed = evaluated(json!({
        "raceway": raceway("LFNC-C 1/2"), "conductors": [{"insulation": "THHN", "size": "12 AWG"}]
    }));
    assert!(messages(&unconfirmed).contains(&"finding-unconfirmed-dimensions"));
    let certain = evaluated(json!({
        "raceway": raceway("LFNC-B 1/2"), "conductors": [{"insulation": "THHN", "size": "12 AWG"}]
    }));
    assert!(!messages(&certain).contains(&"finding-unconfirmed-dimensions"));
}

/// 40 % of EMT 3/4 are 0.213304… in² by its diameter, 0.213 by the printed column.
#[test]
fn the_other_reading_is_told_where_it_changes_a_trade_size() {
    let with = |diameter: f64| {
        evaluated(json!({
            "raceway": raceway("EMT 3/4"),
            "conductors": [{"insulation": "THHN", "size": "14 AWG", "count": 20}],
            "measured_conductors": [{"diameter": diameter}],
        }))
    };
    let told = |evaluation: &Evaluation<RacewayFillOutcome>| {
        messages(evaluation).contains(&"finding-other-area-size")
    };
    // 0.194 and 0.018991124 are 0.212991124: under both
    let under = with(0.1555);
    assert_eq!((under.verdict, told(&under)), (Some(Verdict::Complies), false));
    // 0.194 and 0.019113450 are 0.213113450: between them
    let between = with(0.156);
    assert_eq!((between.verdict, told(&between)), (Some(Verdict::Complies), true));
    // 0.194 and 0.019359279 are 0.213359279: over both
    let over = with(0.157);
    assert_eq!((over.verdict, told(&over)), (Some(Verdict::Violates), false));
}

#[test]
fn every_fault_is_named() {
    let faults = |request: Value| -> Vec<(String, &'static str)> {
        let request: RacewayFillRequest = elbowroom::json::read_value(request).expect("it decodes");
        faults_of::<RacewayFill>(&request).iter().map(|fault| (fault.at.to_string(), fault.message)).collect()
    };
    let one = |request: Value| {
        let found = faults(request);
        assert_eq!(found.len(), 1, "{found:?}");
        found.into_iter().next().expect("a fault")
    };
    let conductor = |conductor: Value| one(json!({"conductors": [conductor]}));
    let at = |place: &str, message| (place.to_owned(), message);
    assert_eq!(one(json!({})), at("", "fault-nothing-in-raceway"));
    assert_eq!(
        one(
            json!({"conductors": [{"insulation": "THHN", "size": "12", "count": 8000}, {"insulation": "TW", "size": "12"}]})
        ),
        at("", "fault-too-many-conductors")
    );
    assert_eq!(
        one(json!({"raceway": raceway("EMT 3/8"), "conductors": [{"insulation": "THHN", "size": "12"}]})),
        at("/raceway/trade_size", "fault-trade-size-of-kind")
    );
    assert_eq!(
        conductor(json!({"insulation": "RHW-2", "size": "12"})),
        at("/conductors/0/covering", "fault-covering-not-said")
    );
    assert_eq!(
        conductor(json!({"insulation": "THHN", "covering": "with", "size": "12"})),
        at("/conductors/0/covering", "fault-covering-of-other-type")
    );
    assert_eq!(
        conductor(json!({"insulation": "Z", "compact": true, "size": "1/0"})),
        at("/conductors/0/compact", "fault-type-not-compact")
    );
    assert_eq!(
        conductor(json!({"insulation": "THHN", "size": "2000 kcmil"})),
        at("/conductors/0/size", "fault-size-of-insulation")
    );
    assert_eq!(
        conductor(json!({"insulation": "THHN", "compact": true, "size": "12"})),
        at("/conductors/0/size", "fault-size-of-insulation")
    );
    for units in ["us", "si"] {
        let request = json!({"units": units, "conductors": [{"insulation": "RFH-1", "size": "18"}]});
        assert_eq!(faults(request), []);
    }
    assert_eq!(
        one(json!({"bare_conductors": [{"size": "6 AWG", "construction": "solid"}]})),
        at("/bare_conductors/0/size", "fault-size-of-construction")
    );
    assert_eq!(one(json!({"cables": [{"count": 2}]})), at("/cables/0", "fault-cable-without-diameter"));
    assert_eq!(
        one(json!({"cables": [{"diameter": 1, "major_diameter": 1}]})),
        at("/cables/0/major_diameter", "fault-cable-with-two-diameters")
    );
    assert_eq!(faults(json!({"measured_conductors": [{"diameter": 120}]})), []);
    assert_eq!(
        one(json!({"measured_conductors": [{"diameter": 120.000001}]})),
        at("/measured_conductors/0/diameter", "fault-diameter-too-large")
    );
    assert_eq!(
        one(json!({"cables": vec![json!({"diameter": 1}); 201]})),
        at("/cables", "fault-too-many-items")
    );
}

/// The accepted values are those that would do.
#[test]
fn a_refused_size_comes_with_the_accepted_ones() {
    let request = json!({"conductors": [{"insulation": "Z", "size": "250 kcmil"}]});
    let request: RacewayFillRequest = elbowroom::json::read_value(request).expect("it decodes");
    let faults = faults_of::<RacewayFill>(&request);
    let fault = faults.iter().next().expect("a fault");
    assert_eq!(fault.accepted.first().map(String::as_str), Some("14 AWG"));
    assert_eq!(fault.accepted.last().map(String::as_str), Some("4/0 AWG"));
}

/// The largest request that the bounds allow stays inside the range of exact numbers.
#[test]
fn the_largest_request_is_still_exact() {
    let evaluation = evaluated(json!({
        "units": "si", "raceway": raceway("PVC-EB 6"), "cables": [{"diameter": 120, "count": 8000}]
    }));
    // 120² × 0.785398163 = 11309.7335472, times 8000
    assert_eq!(evaluation.outcome.total_area.value.to_string(), "90477868.3776");
    let fill = evaluation.outcome.fill.expect("a fill");
    // over 160.9² × 0.785398163 = 20333.023816256…
    assert_eq!(fill.fill_percent.value.to_string(), "444979.9");
    assert_eq!(evaluation.verdict, Some(Verdict::Violates));
}
