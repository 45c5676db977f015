//! Every case of every check that is drawn: the drawing is well-formed, says what it shows, and keeps to its paper.
//!
//! The drawings are left in the folder for temporary files of the build, to be looked at.

use elbowroom::checks::conduit_body::ConduitBodyCheck;
use elbowroom::checks::outlet_fill::OutletFill;
use elbowroom::checks::pull_box::PullBox;
use elbowroom::checks::raceway_fill::RacewayFill;
use elbowroom::checks::{Check, faults_of};
use elbowroom::drawing::{Drawn, draw};
use elbowroom::i18n::{Catalogue, Language};
use proptest::prelude::*;
use roxmltree::{Document, Node};
use serde_json::{Map, Value, json};
use std::fs;
use std::path::Path;

/// The requests of the conformance cases of a check, one a case, with their names.
fn requests<C: Check>(file: &str) -> Vec<(String, C::Request)> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/conformance").join(file);
    let text = fs::read_to_string(path).expect(file);
    let cases: Vec<Map<String, Value>> = serde_json::from_str(&text).expect(file);
    let mut requests = Vec::new();
    for case in cases.iter().filter(|case| case["check"] == C::NAME) {
        let name = case["name"].as_str().expect("a name").to_owned();
        let mut request = case["request"].clone();
        request["edition"] = case["editions"][0].clone();
        let request: C::Request = elbowroom::json::read_value(request).expect("a request");
        assert!(faults_of::<C>(&request).is_empty(), "{name}");
        requests.push((name, request));
    }
    requests
}

fn number(node: Node<'_, '_>, name: &str) -> f64 {
    node.attribute(name).and_then(|text| text.parse().ok()).expect(name)
}

/// What every drawing keeps to.
fn hold(name: &str, svg: &str) {
    let document =
        Document::parse(svg).map_err(|error| format!("{name}: {error}\n{svg}")).expect("well-formed");
    let root = document.root_element();
    let (width, height) = (number(root, "width"), number(root, "height"));
    assert!(width >= 200.0 && (100.0..6000.0).contains(&height), "{name}: {width} by {height}");
    let told = |tag: &str| root.children().find(|node| node.has_tag_name(tag)).and_then(|node| node.text());
    assert!(told("title").is_some_and(|title| title.len() > 5), "{name} has no title");
    assert!(told("desc").is_some_and(|desc| desc.len() > 60), "{name} has no description");
    for node in document.descendants().filter(Node::is_element) {
        for attribute in node.attributes() {
            let value = attribute.value();
            assert!(!value.contains("NaN") && !value.contains("inf"), "{name}: {value}");
        }
    }
    for text in document.descendants().filter(|node| node.has_tag_name("text")) {
        let (x, y) = (number(text, "x"), number(text, "y"));
        // letters are about as wide as this
        let long = text.text().unwrap_or_default().chars().count() as f64 * 5.0;
        let (from, to) = match text.attribute("text-anchor") {
            Some("middle") => (x - long / 2.0, x + long / 2.0),
            Some("end") => (x - long, x),
            _ => (x, x + long),
        };
        let on_paper = from >= -1.0 && to <= width + 1.0 && y >= 8.0 && y <= height;
        assert!(on_paper, "{name}: «{}» at {x}, {y} of {width} by {height}", text.text().unwrap_or_default());
    }
}

fn hold_all<C: Drawn>(file: &str) {
    let requests = requests::<C>(file);
    assert!(requests.len() >= 20, "{file}: {}", requests.len());
    for (place, (name, request)) in requests.iter().enumerate() {
        hold_one::<C>(name, &format!("{place:03}"), request);
    }
}

/// Draws a request in every language, holds the drawings and leaves them to be looked at.
fn hold_one<C: Drawn>(name: &str, mark: &str, request: &C::Request) -> String {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("drawings");
    fs::create_dir_all(&folder).expect("a folder for drawings");
    for language in Language::ALL {
        let svg = draw::<C>(request, Catalogue::of(language));
        hold(name, &svg);
        assert_eq!(svg, draw::<C>(request, Catalogue::of(language)), "{name}");
        let file = format!("{}-{mark}.{}.svg", C::NAME, language.tag());
        fs::write(folder.join(file), svg).expect("a drawing");
    }
    draw::<C>(request, Catalogue::english())
}

/// Draws a request that no case has, given as JSON.
fn drawn<C: Drawn>(name: &str, request: Value) -> String {
    let request: C::Request = elbowroom::json::read_value(request).expect(name);
    assert!(faults_of::<C>(&request).is_empty(), "{name}");
    hold_one::<C>(name, name, &request)
}

#[test]
fn every_outlet_box_is_drawn() {
    hold_all::<OutletFill>("outlet-box-fill.json");
}

#[test]
fn every_raceway_is_drawn() {
    hold_all::<RacewayFill>("raceway-fill.json");
}

#[test]
fn every_conduit_body_is_drawn() {
    hold_all::<ConduitBodyCheck>("conduit-bodies.json");
}

/// A circle of a drawing: its centre and its radius.
type Circle = [f64; 3];

fn round(svg: &str, is_asked: impl Fn(&str) -> bool) -> Vec<Circle> {
    let document = Document::parse(svg).expect("a drawing");
    let all = document.descendants().filter(|node| node.has_tag_name("circle"));
    let asked = all.filter(|node| node.attribute("class").is_some_and(&is_asked));
    asked.map(|node| ["cx", "cy", "r"].map(|name| number(node, name))).collect()
}

/// How many circles of a drawing look in some way.
fn circles(svg: &str, look: &str) -> usize {
    round(svg, |class| class.starts_with(look)).len()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    /// Fewer than nine lines, so that the ninth filling is that of numbers alone.
    #[test]
    fn conductors_lie_in_their_raceway_and_every_one_is_drawn_or_counted(
        size in prop::sample::select(vec!["1/2", "1", "2", "4"]),
        lines in prop::collection::btree_map(1_u32..1200, 1_u32..36, 1..8),
    ) {
        let measured: Vec<Value> = lines
            .iter()
            .map(|(thousandths, count)| json!({"diameter": f64::from(*thousandths) / 1000.0, "count": count}))
            .collect();
        let request = json!({"raceway": {"kind": "RMC", "trade_size": size}, "measured_conductors": measured});
        let request = elbowroom::json::read_value(request).expect("a request");
        let svg = draw::<RacewayFill>(&request, Catalogue::english());
        hold("some raceway", &svg);
        let wall = round(&svg, |class| class == "firm");
        let [[x, y, inside]] = wall[..] else { panic!("one wall: {wall:?}") };
        let laid = round(&svg, |class| class.starts_with("filling-") && class != "filling-9");
        // places on paper are rounded to tenths
        for (place, [cx, cy, r]) in laid.iter().enumerate() {
            prop_assert!((cx - x).hypot(cy - y) + r <= inside - 1.0 + 0.3, "{:?} is outside", laid[place]);
            for [ox, oy, other] in &laid[..place] {
                prop_assert!((cx - ox).hypot(cy - oy) >= r + other - 0.4, "{:?} and {ox}, {oy}", laid[place]);
            }
        }
        let told = |before: &str| -> u32 {
            let after = svg.split(before).nth(1).unwrap_or("0");
            let digits = after.split(|letter: char| !letter.is_ascii_digit()).next();
            digits.and_then(|digits| digits.parse().ok()).expect("a number")
        };
        let beside = told("Find no place in the circle as drawn: ");
        prop_assert_eq!(laid.len() as u32 + beside, lines.values().sum::<u32>());
        let drawn = round(&svg, |class| class == "short").len() as u32;
        prop_assert_eq!(drawn + told("Not drawn beside the raceway: "), beside);
    }
}

fn conductors(size: &str, count: u32) -> Value {
    json!([{"insulation": "THHN", "size": size, "count": count}])
}

#[test]
fn raceways_at_their_extremes_are_drawn() {
    let emt = |size: &str| json!({"kind": "EMT", "trade_size": size});
    let one = drawn::<RacewayFill>(
        "one-conductor",
        json!({"raceway": emt("4"), "conductors": conductors("14 AWG", 1)}),
    );
    assert_eq!((circles(&one, "filling-1"), circles(&one, "short")), (1, 0));
    let many =
        json!({"raceway": {"kind": "RMC", "trade_size": "6"}, "conductors": conductors("14 AWG", 250)});
    assert_eq!(circles(&drawn::<RacewayFill>("as-many-as-are-laid", many), "filling-1"), 250);
    for count in [1000, 8000] {
        let crowd = json!({"raceway": {"kind": "RMC", "trade_size": "6"}, "conductors": [
            {"insulation": "THHN", "size": "14 AWG", "count": count / 2},
            {"insulation": "THHN", "size": "12 AWG", "count": count / 2},
        ]});
        let crowd = drawn::<RacewayFill>(&format!("crowd-{count}"), crowd);
        assert_eq!(circles(&crowd, "short"), 0);
        assert!(crowd.contains(&format!("{count} are too many to draw one by one")));
    }
    // half of them would fill more than the whole inside
    let over = json!({"raceway": emt("1"), "conductors": conductors("6 AWG", 24)});
    let over = drawn::<RacewayFill>("over-full", over);
    let laid = circles(&over, "filling-1");
    assert!((10..=13).contains(&laid), "{laid}");
    assert_eq!(laid + circles(&over, "short"), 24);
    assert!(over.contains(&format!("Find no place in the circle as drawn: {}", 24 - laid)));
    // a cable as wide as can be asked for beside a raceway as small as there is
    let wide = json!({"units": "si", "raceway": {"kind": "FMC", "trade_size": "3/8"}, "cables": [
        {"diameter": 120}, {"diameter": 3, "count": 2}]});
    assert_eq!(circles(&drawn::<RacewayFill>("wide-cable", wide), "short"), 1);
    // two that the limit of a nipple permits, and that no circle of that width can hold
    let nipple = json!({"raceway": {"kind": "EMT", "trade_size": "1", "length": 24}, "cables": [
        {"diameter": 0.57, "count": 2}]});
    let nipple = drawn::<RacewayFill>("nipple", nipple);
    assert!(nipple.contains(">Violates<"));
    assert_eq!((circles(&nipple, "filling-1"), circles(&nipple, "short")), (1, 1));
    let sizes: Vec<Value> =
        (1..=120).map(|size| json!({"diameter": f64::from(size) / 500.0, "count": 2})).collect();
    let sizes =
        json!({"raceway": emt("4"), "measured_conductors": sizes, "reference": "A long name ".repeat(6)});
    let sizes = drawn::<RacewayFill>("many-sizes", sizes);
    assert!(sizes.contains("60 more lines are not listed here"));
    let untold = json!({"edition": "2023", "raceway": emt("5"), "conductors": conductors("500 kcmil", 3)});
    let untold = drawn::<RacewayFill>("without-figures", untold);
    assert!(untold.contains("no figures for the given trade size") && circles(&untold, "assumed") == 1);
    let none = json!({"conductors": conductors("14 AWG", 7), "cables": [{"diameter": 115, "count": 3}],
        "kinds": ["ENT"], "units": "si"});
    let none = drawn::<RacewayFill>("no-trade-size", none);
    assert!(none.contains("No trade size of the table takes all.") && circles(&none, "short") == 0);
}

fn hub(place: &str, trade_size: &str) -> Value {
    json!({"place": place, "raceway": {"kind": "EMT", "trade_size": trade_size}})
}

fn pull(between: &[&str], size: &str, count: u32) -> Value {
    json!({"between": between, "conductors": [{"size": size, "insulation": "THHN", "count": count}]})
}

#[test]
fn conduit_bodies_at_their_extremes_are_drawn() {
    let all = ["end", "opposite_end", "side", "opposite_side", "back"];
    // too small in every direction, with openings in every wall
    let mut cross = json!({
        "body": {"length": 10, "width": 5, "depth": 2},
        "hubs": all.map(|place| hub(place, "2")),
        "pulls": [
            pull(&["end", "opposite_end"], "4/0 AWG", 3), pull(&["side", "opposite_side"], "4/0 AWG", 3),
            pull(&["end", "back"], "1/0 AWG", 3), pull(&["side", "end"], "1/0 AWG", 3),
        ],
    });
    cross["pulls"][2]["distance"] = json!(7.5);
    let cross = drawn::<ConduitBodyCheck>("short-cross", cross);
    for told in ["6 in short", "11 in short", "1.5 in short", "Too close", "opposite side · EMT 2"] {
        assert!(cross.contains(told), "{told}");
    }
    let wire = |size: &str| json!({"size": size, "insulation": "XHHW-2", "count": 2});
    let groups: Vec<Value> =
        ["14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG", "3 AWG", "2 AWG", "1 AWG", "1/0 AWG"]
            .map(wire)
            .into();
    let pulls: Vec<Value> = (0..50)
        .map(|place| {
            json!({"between": [all[place % 5], all[(place + 1) % 5], all[(place + 2) % 5]],
            "conductors": groups, "spliced": true})
        })
        .collect();
    let spliced = ["14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG"]
        .map(|size| json!({"size": size, "role": "spliced", "count": 200}));
    let crowd = json!({"body": {"length": 1200, "width": 103, "depth": 400.123456}, "units": "si",
        "hubs": all.map(|place| hub(place, "4")), "pulls": pulls,
        "contents": {"conductors": spliced}, "reference": "Ω".repeat(60)});
    drawn::<ConduitBodyCheck>("crowd", crowd);
    // one end only, and the smaller body that its marking permits
    let marked = json!({
        "body": {"length": 7, "width": 1.5, "depth": 2.5},
        "hubs": [hub("opposite_end", "1-1/2"), hub("side", "1-1/2")],
        "pulls": [{"between": ["opposite_end", "side"], "distance": 5,
            "conductors": [{"size": "4 AWG", "insulation": "XHHW", "count": 3}]}],
        "marked": {"listed": true, "count": 3, "size": "4 AWG",
            "conductors": [{"size": "4 AWG", "insulation": "XHHW", "count": 3}]},
    });
    let marked = drawn::<ConduitBodyCheck>("marked", marked);
    assert!(marked.contains(">Complies<") && marked.contains("2 in smaller, by its marking"));
    assert!(marked.contains("Closer, as its marking permits") && !marked.contains("class=\"short\""));
    let long = json!({"body": {"length": 500, "width": 4}, "hubs": [hub("end", "4"), hub("opposite_end", "1/2")],
        "pulls": [pull(&["end", "opposite_end"], "14 AWG", 3), pull(&["opposite_end", "end"], "250 kcmil", 3)]});
    drawn::<ConduitBodyCheck>("long", long);
}

#[test]
fn every_pull_box_is_drawn() {
    hold_all::<PullBox>("pull-boxes.json");
}
