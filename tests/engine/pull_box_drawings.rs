//! What must hold for the drawing of every pull box, however strange: scale, places, room for words, size.

use elbowroom::checks::faults_of;
use elbowroom::checks::pull_box::{PullBox, PullBoxRequest};
use elbowroom::drawing::draw;
use elbowroom::i18n::{Catalogue, Language};
use proptest::prelude::*;
use proptest::sample::select;
use roxmltree::{Document, Node};
use serde_json::{Value, json};

/// A rectangle on paper: left, top, right, bottom.
type Area = [f64; 4];

/// What is read of one box: its walls in the order in which they are drawn, and its entries.
#[derive(Default)]
struct Plan {
    /// Left, right, top, bottom.
    walls: Vec<Area>,
    entries: Vec<Rim>,
}

struct Rim {
    told: String,
    centre: [f64; 2],
    radius: f64,
    /// Whether it is drawn as being where it must not be.
    is_put_outside: bool,
}

impl Plan {
    fn back(&self) -> Area {
        let (left, top) = (self.walls[0], self.walls[2]);
        [left[2], left[1], top[2], left[3]]
    }

    fn wall_of(&self, rim: &Rim) -> Area {
        let walls = ["left wall", "right wall", "top wall", "bottom wall"];
        let place = walls.iter().position(|wall| rim.told.contains(wall));
        place.map_or_else(|| self.back(), |place| self.walls[place])
    }
}

fn number(node: Node<'_, '_>, name: &str) -> f64 {
    node.attribute(name).and_then(|text| text.parse().ok()).expect(name)
}

fn drawn(request: &Value) -> String {
    drawn_in(request, Language::English)
}

fn drawn_in(request: &Value, language: Language) -> String {
    let request: PullBoxRequest = elbowroom::json::read_value(request.clone()).expect("a request");
    let faults = faults_of::<PullBox>(&request);
    assert!(faults.is_empty(), "{faults:?}");
    draw::<PullBox>(&request, Catalogue::of(language))
}

/// The boxes of a drawing whose walls are shown.
fn plans(svg: &str) -> Vec<Plan> {
    let document = Document::parse(svg).expect("well-formed");
    let mut plans: Vec<Plan> = Vec::new();
    for node in document.descendants() {
        let class = node.attribute("class").unwrap_or_default();
        if node.has_tag_name("rect") && matches!(class, "thin" | "assumed") {
            if plans.last().is_none_or(|plan| plan.walls.len() == 4) {
                plans.push(Plan::default());
            }
            let [x, y] = ["x", "y"].map(|name| number(node, name));
            let wall = [x, y, x + number(node, "width"), y + number(node, "height")];
            plans.last_mut().expect("one").walls.push(wall);
        }
        let is_rim = node.has_tag_name("circle") && matches!(class, "filling-9" | "assumed-rim" | "short");
        if is_rim {
            let group = node.parent().expect("a group");
            let title =
                group.children().find(|child| child.has_tag_name("title")).and_then(|title| title.text());
            let told = title.expect("what it is").to_owned();
            let centre = ["cx", "cy"].map(|name| number(node, name));
            // a box of entries in the back alone, of whose depth nothing is known, has no walls to read its scale from
            let Some(plan) = plans.last_mut() else { continue };
            plan.entries.push(Rim {
                told,
                centre,
                radius: number(node, "r"),
                is_put_outside: class == "short",
            });
        }
    }
    plans
}

/// About where the words of a drawing stand; a little less than they take, whatever the font.
fn words(svg: &str) -> Vec<(String, Area)> {
    let document = Document::parse(svg).expect("well-formed");
    let texts = document.descendants().filter(|node| node.has_tag_name("text"));
    texts
        .map(|node| {
            let text = node.text().unwrap_or_default().to_owned();
            let is_small = node.attribute("class").is_some_and(|class| class.contains("small"));
            let width = text.chars().count() as f64 * if is_small { 5.8 } else { 7.0 };
            let (x, y) = (number(node, "x"), number(node, "y"));
            let left = match node.attribute("text-anchor") {
                Some("middle") => x - width / 2.0,
                Some("end") => x - width,
                _ => x,
            };
            (text, [left, y - 8.0, left + width, y])
        })
        .collect()
}

fn meet(one: &Area, other: &Area) -> bool {
    one[0] < other[2] && other[0] < one[2] && one[1] < other[3] && other[1] < one[3]
}

/// Nothing that is written runs over anything else that is.
fn no_words_meet(svg: &str) {
    let words = words(svg);
    for (place, (text, area)) in words.iter().enumerate() {
        for (other, beside) in &words[place + 1..] {
            assert!(!meet(area, beside), "«{text}» runs over «{other}»");
        }
    }
}

/// Tenths of a pixel are all that places on paper have.
const ROUNDING: f64 = 0.2;

/// Every entry that its wall is large enough for lies within it, unless a caller puts it elsewhere.
fn entries_lie_within(plan: &Plan) {
    for rim in plan.entries.iter().filter(|rim| !rim.is_put_outside) {
        let [left, top, right, bottom] = plan.wall_of(rim);
        let ([x, y], radius) = (rim.centre, rim.radius);
        if 2.0 * radius <= (right - left).min(bottom - top) {
            let within = x - radius >= left - ROUNDING
                && x + radius <= right + ROUNDING
                && y - radius >= top - ROUNDING
                && y + radius <= bottom + ROUNDING;
            assert!(within, "{}: {x}, {y}, {radius}", rim.told);
        }
    }
}

const WALLS: [&str; 5] = ["left", "right", "top", "bottom", "back"];

fn entry() -> impl Strategy<Value = Value> {
    let size = select(vec!["1/2", "1", "2", "3", "4", "6"]);
    (select(WALLS.to_vec()), size, proptest::option::of(1_u32..4)).prop_map(|(wall, size, row)| {
        let mut entry = json!({"wall": wall, "raceway": {"trade_size": size}});
        if let Some(row) = row {
            entry["row"] = json!(row);
        }
        entry
    })
}

/// Up to some number of entries with pulls between them, one for every two; no box and no layout.
fn pull_box(most: usize) -> impl Strategy<Value = Value> {
    let pull = (0_usize..1000, 1_usize..1000, select(vec!["8 AWG", "4/0 AWG", "500 kcmil"]), any::<bool>());
    (prop::collection::vec(entry(), 2..=most), prop::collection::vec(pull, 1..=most)).prop_map(
        |(mut entries, pulls)| {
            let count = entries.len();
            for (place, entry) in entries.iter_mut().enumerate() {
                entry["id"] = json!(format!("E{place}"));
            }
            let pulls: Vec<Value> = pulls
                .into_iter()
                .map(|(first, step, size, spliced)| {
                    let first = first % count;
                    let other = (first + 1 + step % (count - 1)) % count;
                    let ends = [format!("E{first}"), format!("E{other}")];
                    json!({"entries": ends, "largest_conductor": size, "spliced": spliced})
                })
                .collect();
            json!({"entries": entries, "pulls": pulls})
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn entries_lie_within_their_walls_and_words_apart(request in pull_box(14)) {
        for language in Language::ALL {
            let svg = drawn_in(&request, language);
            no_words_meet(&svg);
        }
        let plans = plans(&drawn(&request));
        let in_the_back = request["entries"].as_array().unwrap().iter().all(|entry| entry["wall"] == "back");
        prop_assert!(in_the_back || plans.len() == 1);
        plans.iter().for_each(entries_lie_within);
    }

    #[test]
    fn a_given_box_is_drawn_in_one_scale(
        request in pull_box(8),
        sides in [2_u32..90, 2_u32..90, 2_u32..20],
        places in proptest::option::of(prop::collection::vec([0_u32..=100, 0_u32..=100], 8)),
    ) {
        let [width, height, depth] = sides;
        let mut request = request;
        let places = places.unwrap_or_default();
        for (entry, hundredths) in request["entries"].as_array_mut().unwrap().iter_mut().zip(places) {
            let [one, other] = match entry["wall"].as_str() {
                Some("left" | "right") => [("from_bottom", height), ("from_back", depth)],
                Some("back") => [("from_left", width), ("from_bottom", height)],
                _ => [("from_left", width), ("from_back", depth)],
            };
            let along = |side: u32, part: u32| f64::from(side * part + 1) / 100.0;
            // rows that the positions deny are refused
            entry.as_object_mut().unwrap().remove("row");
            entry["position"] =
                json!({one.0: along(one.1, hundredths[0]), other.0: along(other.1, hundredths[1])});
        }
        request["box"] = json!({"width": width, "height": height, "depth": depth});
        request["racked"] = json!(true);
        let svg = drawn(&request);
        no_words_meet(&svg);
        let plans = plans(&svg);
        prop_assert_eq!(plans.len(), 1);
        let plan = &plans[0];
        entries_lie_within(plan);
        let back = plan.back();
        let drawn = [back[2] - back[0], back[3] - back[1], plan.walls[0][2] - plan.walls[0][0]];
        let entry = request["entries"][0]["raceway"]["trade_size"].as_str().unwrap();
        let diameter = if entry == "1/2" { 0.5 } else { entry.parse().unwrap() };
        // of the longest side, in which rounding is least
        let scale = drawn.iter().copied().fold(0.0, f64::max) / f64::from(width.max(height).max(depth));
        for (drawn, side) in drawn.into_iter().zip(sides) {
            prop_assert!((drawn - scale * f64::from(side)).abs() <= ROUNDING);
        }
        let rim = 2.0 * plan.entries[0].radius;
        prop_assert!((rim - scale * diameter).abs() <= ROUNDING, "{} {} {}", rim, scale, diameter);
    }

    #[test]
    fn entries_of_a_layout_do_not_overlap(request in pull_box(7), clearance in 0_u32..3) {
        let mut request = request;
        request["layout"] = json!({"clearance": f64::from(clearance) / 2.0 + 0.25});
        let svg = drawn(&request);
        no_words_meet(&svg);
        let request: PullBoxRequest = elbowroom::json::read_value(request).unwrap();
        let found = elbowroom::checks::evaluate::<PullBox>(&request);
        prop_assume!(found.outcome.sections[0].layout.is_some());
        let plans = plans(&svg);
        prop_assert_eq!(plans.len(), 1);
        let plan = &plans[0];
        entries_lie_within(plan);
        for (place, one) in plan.entries.iter().enumerate() {
            for other in &plan.entries[place + 1..] {
                let far = (one.centre[0] - other.centre[0]).hypot(one.centre[1] - other.centre[1]);
                let touches = far < one.radius + other.radius - ROUNDING;
                prop_assert!(!touches || plan.wall_of(one) != plan.wall_of(other), "{}", one.told);
            }
        }
    }
}

#[test]
fn words_of_every_case_stand_apart() {
    let file = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/conformance/pull-boxes.json");
    let cases: Vec<Value> = serde_json::from_str(&std::fs::read_to_string(file).unwrap()).unwrap();
    let mut boxes = 0;
    for case in cases.iter().filter(|case| case["check"] == "pull_box_size") {
        let mut request = case["request"].clone();
        request["edition"] = case["editions"][0].clone();
        for language in Language::ALL {
            no_words_meet(&drawn_in(&request, language));
        }
        boxes += plans(&drawn(&request)).iter().inspect(|plan| entries_lie_within(plan)).count();
    }
    assert!(boxes > 80, "{boxes}");
}

/// As many entries and pulls as a request may have, with the longest ids.
fn largest(walls: &[&str], joined: usize) -> Value {
    let id = |place: usize| format!("{place:03}{}", "é".repeat(61));
    let entries: Vec<Value> = (0..100)
        .map(|place| {
            json!({"id": id(place), "wall": walls[place % walls.len()], "raceway": {"trade_size": "1"}})
        })
        .collect();
    let pulls: Vec<Value> = (0..200)
        .map(|pull| {
            let ends: Vec<String> = (0..joined).map(|end| id((pull + end * 7) % 100)).collect();
            json!({"entries": ends, "largest_conductor": "1 AWG"})
        })
        .collect();
    json!({"entries": entries, "pulls": pulls})
}

#[test]
fn the_largest_request_is_a_drawing_of_bounded_size() {
    for walls in [&WALLS[..], &["top"], &["left"], &["back"], &["top", "bottom"]] {
        let svg = drawn(&largest(walls, 2));
        no_words_meet(&svg);
        let document = Document::parse(&svg).expect("well-formed");
        let height = number(document.root_element(), "height");
        assert!(height < 6000.0 && svg.len() < 1_000_000, "{walls:?}: {height}, {} bytes", svg.len());
    }
    let svg = drawn(&largest(&WALLS, 10));
    assert!(svg.len() < 4_000_000, "{} bytes", svg.len());
}

#[test]
fn names_of_a_caller_are_never_markup() {
    let name = "<script>\"&' -->]]>";
    let request = json!({
        "reference": name,
        "entries": [
            {"id": name, "wall": "left", "raceway": {"trade_size": "3"}},
            {"id": "</title><b>", "wall": "back", "raceway": {"trade_size": "3"}},
        ],
        "pulls": [{"id": name, "entries": [name, "</title><b>"], "largest_conductor": "4/0 AWG"}],
    });
    let svg = drawn(&request);
    assert!(!svg.contains("<script") && !svg.contains("<b>") && svg.contains("&lt;script&gt;"));
    assert_eq!(plans(&svg)[0].entries.len(), 2);
}

#[test]
fn what_is_short_is_drawn_as_short_and_told() {
    let sides = |width: f64| {
        json!({
            "entries": [
                {"id": "A", "wall": "left", "raceway": {"trade_size": "3"}},
                {"id": "B", "wall": "right", "raceway": {"trade_size": "3"}},
            ],
            "pulls": [{"entries": ["A", "B"], "largest_conductor": "4/0 AWG"}],
            "box": {"width": width, "height": 12, "depth": 6},
        })
    };
    let short = drawn(&sides(20.0));
    assert!(short.contains("<rect class=\"short\"") && short.contains(">4 in short</text>"));
    assert!(short.contains("Width 20 in, Least width 24 in, 4 in short."));
    let enough = drawn(&sides(24.0));
    assert!(!enough.contains("class=\"short\"") && !enough.contains("in short"));
}

#[test]
fn a_distance_is_drawn_as_long_as_it_is_and_with_what_is_required() {
    let svg = drawn(&json!({
        "entries": [
            {"id": "A", "wall": "left", "raceway": {"trade_size": "3"},
             "position": {"from_bottom": 2, "from_back": 4}},
            {"id": "B", "wall": "left", "raceway": {"trade_size": "3"},
             "position": {"from_bottom": 22, "from_back": 4}},
        ],
        "pulls": [{"entries": ["A", "B"], "largest_conductor": "4/0 AWG"}],
        "box": {"width": 24, "height": 24, "depth": 8},
    }));
    assert!(svg.contains(">17 in &lt; 18 in</text>"));
    assert!(svg.contains("A – B: least 18 in, 17 in measured, too close."));
    let document = Document::parse(&svg).expect("well-formed");
    let back = plans(&svg)[0].back();
    let scale = (back[3] - back[1]) / 24.0;
    let long = |node: Node<'_, '_>| (number(node, "y1") - number(node, "y2")).abs();
    let lines = document.descendants().filter(|node| node.has_tag_name("line"));
    let distances = lines.filter(|node| node.attribute("class") == Some("short")).map(long);
    assert!(distances.into_iter().any(|long| (long - 17.0 * scale).abs() < 3.0 * ROUNDING));
}
