//! What must hold of every pull box: larger raceways never need less, mirror images are alike, the least box complies and
//! no smaller one does, every layout complies when it is asked about as a given box, and every proof replays.

use elbowroom::checks::conduit_body::ConduitBodyCheck;
use elbowroom::checks::pull_box::{PullBox, PullBoxOutcome, SectionSize};
use elbowroom::checks::{Check, Evaluation, Status, Verdict, evaluate, faults_of};
use elbowroom::derivation::Figure;
use proptest::prelude::*;
use serde_json::{Value, json};

const SIZES: [&str; 13] =
    ["3/8", "1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4", "5", "6"];
const WALLS: [&str; 5] = ["left", "right", "top", "bottom", "back"];
const CONDUCTORS: [&str; 6] = ["12 AWG", "4 AWG", "1/0 AWG", "4/0 AWG", "500 kcmil", "2000 kcmil"];

fn size(request: &Value) -> Evaluation<PullBoxOutcome> {
    let request = elbowroom::json::read_value(request.clone()).expect("the request decodes");
    let faults = faults_of::<PullBox>(&request);
    let told: Vec<String> = faults.iter().map(|fault| format!("{} {}", fault.at, fault.message)).collect();
    assert!(faults.is_empty(), "{told:?}");
    let evaluation = evaluate::<PullBox>(&request);
    assert_eq!(evaluation.proof.replay(), Ok(()));
    evaluation
}

fn minimums(section: &SectionSize) -> [Option<Figure>; 3] {
    [section.width.minimum, section.height.minimum, section.depth.minimum]
}

fn number(figure: Figure) -> Value {
    serde_json::to_value(figure.value).expect("a number")
}

/// Entries, each with its wall, row and size, and pulls between them.
#[derive(Clone, Debug)]
struct Asked {
    entries: Vec<(usize, Option<u32>, usize)>,
    pulls: Vec<(usize, usize, usize, bool)>,
    cover: &'static str,
    units: &'static str,
    interpretations: Value,
}

impl Asked {
    fn request(&self) -> Value {
        let entries: Vec<Value> = self
            .entries
            .iter()
            .enumerate()
            .map(|(index, (wall, row, size))| {
                let mut entry = json!({
                    "id": format!("E{index}"), "wall": WALLS[*wall], "raceway": {"trade_size": SIZES[*size]},
                });
                if let Some(row) = row {
                    entry["row"] = json!(row);
                }
                entry
            })
            .collect();
        let pulls: Vec<Value> = self
            .pulls
            .iter()
            .map(|(one, other, conductor, spliced)| {
                json!({
                    "entries": [format!("E{one}"), format!("E{other}")],
                    "largest_conductor": CONDUCTORS[*conductor], "spliced": spliced, "insulated": true,
                })
            })
            .collect();
        json!({
            "entries": entries, "pulls": pulls, "cover": self.cover, "units": self.units,
            "interpretations": self.interpretations,
        })
    }

    fn with_layout(&self) -> Value {
        let mut request = self.request();
        let step = if self.units == "us" { json!(0.25) } else { json!(5) };
        request["layout"] = json!({"step": step, "clearance": step});
        request
    }
}

fn interpretations() -> impl Strategy<Value = Value> {
    let one = |name: &'static str, readings: &'static [&'static str]| {
        (0..readings.len()).prop_map(move |place| (name, readings[place]))
    };
    (
        one("angle_sum", &["all_in_row", "angle_only"]),
        one("entry_distance", &["edge_to_edge", "centre_to_centre"]),
        one("spliced_conductor", &["same_conductor", "not_same_conductor"]),
        one("straight_splice", &["angle_rule", "larger_of_both"]),
        one("hinged_cover", &["not_removable", "removable"]),
    )
        .prop_map(|(one, two, three, four, five)| {
            Value::Object(
                [one, two, three, four, five]
                    .map(|(name, reading)| (name.to_owned(), json!(reading)))
                    .into_iter()
                    .collect(),
            )
        })
}

fn asked(most: usize) -> impl Strategy<Value = Asked> {
    let entries = prop::collection::vec((0..5_usize, prop::option::of(1..3_u32), 0..SIZES.len()), 2..=most);
    let settings = (
        prop::sample::select(vec!["removable", "hinged", "fixed"]),
        prop::sample::select(vec!["us", "si"]),
        interpretations(),
    );
    (entries, settings).prop_flat_map(move |(entries, (cover, units, interpretations))| {
        let count = entries.len();
        let pull = (0..count, 1..count, 0..CONDUCTORS.len(), any::<bool>())
            .prop_map(move |(one, by, conductor, spliced)| (one, (one + by) % count, conductor, spliced));
        prop::collection::vec(pull, 1..=count).prop_map(move |pulls| Asked {
            entries: entries.clone(),
            pulls,
            cover,
            units,
            interpretations: interpretations.clone(),
        })
    })
}

/// What a wall becomes in a mirror between left and right, and in one between top and bottom.
const LEFT_RIGHT: [usize; 5] = [1, 0, 2, 3, 4];
const TOP_BOTTOM: [usize; 5] = [0, 1, 3, 2, 4];

fn mirrored(asked: &Asked, walls: [usize; 5]) -> Asked {
    let mut other = asked.clone();
    for (wall, _, _) in &mut other.entries {
        *wall = walls[*wall];
    }
    other
}

/// The request with the dimensions and positions of a layout.
fn as_given_box(request: &Value, section: &SectionSize) -> Value {
    let layout = section.layout.as_ref().expect("a layout");
    let mut given = request.clone();
    given.as_object_mut().expect("a request").remove("layout");
    given["box"] = json!({
        "width": number(layout.width), "height": number(layout.height), "depth": number(layout.depth),
    });
    given["racked"] = json!(true);
    for (index, place) in layout.places.iter().enumerate() {
        let mut position = json!({});
        for (member, length) in [
            ("from_left", place.from_left),
            ("from_bottom", place.from_bottom),
            ("from_back", place.from_back),
        ] {
            if let Some(length) = length {
                position[member] = number(length);
            }
        }
        given["entries"][index]["position"] = position;
    }
    given
}

/// Whether any pull is sized by length; a box without one is left to the volume rules.
fn any_large(section: &SectionSize) -> bool {
    section.pulls.iter().any(|pull| pull.sized_by_length)
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 128, ..ProptestConfig::default() })]

    #[test]
    fn a_larger_raceway_never_shrinks_the_box(asked in asked(7), which in any::<prop::sample::Index>()) {
        let before = size(&asked.request());
        let mut larger = asked.clone();
        let place = which.index(larger.entries.len());
        larger.entries[place].2 = (larger.entries[place].2 + 1).min(SIZES.len() - 1);
        let after = size(&larger.request());
        let (before, after) = (&before.outcome.sections[0], &after.outcome.sections[0]);
        for (before, after) in minimums(before).into_iter().zip(minimums(after)) {
            prop_assert_eq!(before.is_some(), after.is_some());
            prop_assert!(after.map(|after| after.value) >= before.map(|before| before.value));
        }
        for (before, after) in before.distances.iter().zip(&after.distances) {
            prop_assert!(after.required.value >= before.required.value);
        }
    }

    #[test]
    fn mirror_images_have_the_same_dimensions(asked in asked(5)) {
        let sides = |asked: &Asked| {
            let evaluation = size(&asked.with_layout());
            let section = &evaluation.outcome.sections[0];
            let laid_out = section.layout.as_ref().filter(|layout| layout.proven_smallest).map(|layout| {
                [layout.width.value, layout.height.value, layout.depth.value]
            });
            (minimums(section).map(|minimum| minimum.map(|figure| figure.value)), laid_out)
        };
        let (minimum, laid_out) = sides(&asked);
        for walls in [LEFT_RIGHT, TOP_BOTTOM] {
            let (mirrored_minimum, mirrored_layout) = sides(&mirrored(&asked, walls));
            prop_assert_eq!(minimum, mirrored_minimum);
            if let (Some(one), Some(other)) = (laid_out, mirrored_layout) {
                prop_assert_eq!(one, other);
            }
        }
    }

    #[test]
    fn every_layout_complies_when_it_is_asked_about_as_a_given_box(asked in asked(7)) {
        let request = asked.with_layout();
        let evaluation = size(&request);
        let section = &evaluation.outcome.sections[0];
        prop_assume!(section.layout.is_some());
        let given = size(&as_given_box(&request, section));
        let told: Vec<_> = given.findings.iter()
            .filter(|finding| matches!(finding.status, Status::Violated | Status::NotDetermined))
            .map(|finding| (finding.rule.id, finding.message)).collect();
        // a conductor that no raceway of its size could hold has no box
        prop_assume!(!told.iter().any(|(rule, _)| *rule == "geometry.raceways"));
        if any_large(section) {
            prop_assert_eq!(given.verdict, Some(Verdict::Complies), "{:?}", told);
        } else {
            prop_assert_eq!(told, vec![("pull.applies", "finding-sized-by-volume")]);
        }
    }

    #[test]
    fn the_least_box_is_large_enough_and_nothing_smaller_is(asked in asked(7)) {
        let request = asked.request();
        let evaluation = size(&request);
        let section = &evaluation.outcome.sections[0];
        let names = ["width", "height", "depth"];
        let with = |less: Option<usize>| {
            let mut given = request.clone();
            given["box"] = json!({"width": 9000, "height": 9000, "depth": 9000});
            given["racked"] = json!(true);
            given["unmarked"] = json!(true);
            // the least is that of the system of the request
            given["interpretations"]["units"] = json!("as_requested");
            for (place, (name, minimum)) in names.iter().zip(minimums(section)).enumerate() {
                let Some(minimum) = minimum else { continue };
                let tick = elbowroom::quantity::Decimal::ten_thousandths(if less == Some(place) { 1 } else { 0 });
                given["box"][name] = serde_json::to_value(minimum.value - tick).expect("a number");
            }
            size(&given)
        };
        let short = |evaluation: &Evaluation<PullBoxOutcome>| {
            let short = |finding: &&elbowroom::checks::Finding| {
                finding.message == "finding-side-short" && finding.status == Status::Violated
            };
            evaluation.findings.iter().filter(short).count()
        };
        prop_assert_eq!(short(&with(None)), 0);
        for (place, minimum) in minimums(section).into_iter().enumerate() {
            if minimum.is_some() {
                let smaller = with(Some(place));
                prop_assert!(short(&smaller) > 0);
                prop_assert_eq!(smaller.verdict, Some(Verdict::Violates));
            }
        }
    }

    #[test]
    fn no_text_panics(text in "\\PC{0,200}") {
        fn read<C: Check>(text: &str) {
            if let Ok(request) = elbowroom::json::read::<C::Request>(text.as_bytes()) && faults_of::<C>(&request).is_empty() {
                evaluate::<C>(&request);
            }
        }
        read::<PullBox>(&text);
        read::<ConduitBodyCheck>(&text);
    }
}

/// Forty entries: eight rows and the back, straight, angle and U pulls.
fn forty() -> Value {
    let mut entries = Vec::new();
    let mut pulls = Vec::new();
    for index in 0..8 {
        let (row, turn) = (1 + index / 4, index % 4);
        for (wall, size) in
            [("left", "2"), ("right", "2"), ("bottom", "1-1/2"), ("top", "1-1/2"), ("back", "1-1/4")]
        {
            entries.push(json!({
                "id": format!("{wall}{index}"), "wall": wall, "row": row, "raceway": {"trade_size": size},
            }));
        }
        if turn < 2 {
            pulls.push(json!({"entries": [format!("left{index}"), format!("right{index}")], "largest_conductor": "4/0 AWG", "insulated": true}));
            pulls.push(json!({"entries": [format!("bottom{index}"), format!("back{index}")], "largest_conductor": "1/0 AWG", "insulated": true}));
        } else {
            pulls.push(json!({"entries": [format!("left{index}"), format!("bottom{index}")], "largest_conductor": "3/0 AWG", "insulated": true}));
            pulls.push(json!({"entries": [format!("right{index}"), format!("top{index}")], "largest_conductor": "3/0 AWG", "insulated": true}));
        }
    }
    json!({"entries": entries, "pulls": pulls, "cover": "removable", "layout": {"clearance": 0.5, "wall_clearance": 0.5}})
}

#[test]
fn forty_entries_have_a_place() {
    let request = forty();
    let evaluation = size(&request);
    let section = &evaluation.outcome.sections[0];
    let layout = section.layout.as_ref().expect("a layout");
    assert_eq!(layout.places.len(), 40);
    assert_eq!(size(&as_given_box(&request, section)).verdict, Some(Verdict::Complies));
}
