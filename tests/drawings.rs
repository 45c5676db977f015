//! Every case of every check that is drawn: the drawing is well-formed, says what it shows, and keeps to its paper.
//!
//! The drawings are left in the folder for temporary files of the build, to be looked at.

use elbowroom::checks::outlet_fill::OutletFill;
use elbowroom::checks::pull_box::PullBox;
use elbowroom::checks::{Check, faults_of};
use elbowroom::drawing::{Drawn, draw};
use elbowroom::words::{Catalogue, Language};
use roxmltree::{Document, Node};
use serde_json::{Map, Value};
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
        let request: C::Request = serde_json::from_value(request).expect("a request");
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
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("drawings");
    fs::create_dir_all(&folder).expect("a folder for drawings");
    let requests = requests::<C>(file);
    assert!(requests.len() >= 20, "{file}: {}", requests.len());
    for (place, (name, request)) in requests.iter().enumerate() {
        for language in Language::ALL {
            let svg = draw::<C>(request, Catalogue::of(language));
            hold(name, &svg);
            assert_eq!(svg, draw::<C>(request, Catalogue::of(language)), "{name}");
            let file = format!("{}-{place:03}.{}.svg", C::NAME, language.tag());
            fs::write(folder.join(file), svg).expect("a drawing");
        }
    }
}

#[test]
fn every_outlet_box_is_drawn() {
    hold_all::<OutletFill>("outlet-box-fill.json");
}

#[test]
fn every_pull_box_is_drawn() {
    hold_all::<PullBox>("pull-boxes.json");
}
