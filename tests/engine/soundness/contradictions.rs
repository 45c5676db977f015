//! Two members that state the same fact differently are refused, with both places.

use elbowroom::checks::{Check, FaultCode, faults_of};
use elbowroom::json;
use elbowroom::of_each_check;
use serde_json::{Value, json};
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

/// A request for each contradiction that a check finds: the check, the key of the fault, and the request.
fn contradictory() -> Vec<(&'static str, &'static str, Value)> {
    let nm = json!([{"kind": "NM-B", "size": "12 AWG", "conductors": 2}]);
    let two_entries = json!([
        {"id": "a", "wall": "left", "raceway": {"trade_size": "2"}, "position": {"from_bottom": 4, "from_back": 3}},
        {"id": "b", "wall": "right", "raceway": {"trade_size": "2"}, "position": {"from_bottom": 9, "from_back": 3}}
    ]);
    let hubs = json!([
        {"place": "end", "raceway": {"kind": "EMT", "trade_size": "2"}},
        {"place": "side", "raceway": {"kind": "EMT", "trade_size": "2"}}
    ]);
    let large = json!([{"size": "3/0 AWG", "count": 3}]);
    let small = json!([{"size": "12 AWG", "insulation": "THHN", "count": 2}]);
    vec![
        (
            "outlet_box_fill",
            "fault-mark-below-table",
            json!({"enclosure": {"standard": "square-4x2-1/8", "marked_volume": 20}, "contents": {"cables": nm}}),
        ),
        (
            "outlet_box_fill",
            "fault-mark-below-table",
            json!({"enclosure": {"standard": "square-4x2-1/8", "sections": [{"kind": "extension_ring", "standard": "square-4x2-1/8", "marked_volume": 20}]}, "contents": {"cables": nm}}),
        ),
        (
            "outlet_box_fill",
            "fault-shares-are-not-the-box",
            json!({"enclosure": {"marked_volume": 40, "gangs": 2, "barriers": [{"material": "nonmetallic"}]}, "spaces": [{"id": "a", "gangs": 1, "contents": {"cables": nm}}, {"id": "b", "gangs": 2, "contents": {"cables": nm}}]}),
        ),
        (
            "outlet_box_fill",
            "fault-nothing-and-something",
            json!({"enclosure": {"marked_volume": 40}, "contents": {"nothing": true, "cables": nm}}),
        ),
        (
            "outlet_box_fill",
            "fault-molded-clamp-in-metal-box",
            json!({"enclosure": {"marked_volume": 40, "material": "metal"}, "contents": {"cables": nm, "clamps": [{"kind": "molded"}]}}),
        ),
        (
            "outlet_box_fill",
            "fault-ring-narrower-than-box",
            json!({"enclosure": {"marked_volume": 40, "gangs": 2, "sections": [{"kind": "plaster_ring", "gangs": 1, "marked_volume": 4}]}, "contents": {"cables": nm}}),
        ),
        (
            "outlet_box_fill",
            "fault-deeper-than-box",
            json!({"enclosure": {"standard": "square-4x1-1/4"}, "opening": {"smallest_dimension": 2, "conductor_depth": 5}, "contents": {"conductors": [{"size": "14 AWG", "role": "loop", "loop_length": 14, "count": 8}]}}),
        ),
        (
            "outlet_box_fill",
            "fault-opening-wider-than-box",
            json!({"enclosure": {"standard": "device-3x2x3-1/2"}, "opening": {"smallest_dimension": 8}, "contents": {"cables": nm}}),
        ),
        (
            "outlet_box_fill",
            "fault-ring-wider-than-box",
            json!({"enclosure": {"standard": "square-4x2-1/8", "sections": [{"kind": "plaster_ring", "gangs": 7, "marked_volume": 4}]}, "contents": {"cables": nm}}),
        ),
        (
            "outlet_box_fill",
            "fault-extension-of-another-box",
            json!({"enclosure": {"standard": "square-4x1-1/4", "sections": [{"kind": "extension_ring", "standard": "square-4-11/16x2-1/8"}]}, "contents": {"cables": nm}}),
        ),
        (
            "box_mounting",
            "fault-metal-box-bonds-entries",
            json!({"enclosure": {"material": "metal", "bonds_all_entries": true}}),
        ),
        (
            "box_mounting",
            "fault-nonmetallic-box-grounded",
            json!({"enclosure": {"material": "nonmetallic", "grounded": true}}),
        ),
        (
            "box_mounting",
            "fault-single-gang-body",
            json!({"enclosure": {"single_gang_in_wall_or_ceiling": true, "conduit_body": true}}),
        ),
        (
            "box_mounting",
            "fault-single-gang-round",
            json!({"enclosure": {"single_gang_in_wall_or_ceiling": true, "shape": "round"}}),
        ),
        (
            "box_mounting",
            "fault-sheath-past-clamp-longer",
            json!({"entries": [{"wiring": "nonmetallic_sheathed_cable", "sheath_inside": 0.5, "clamp_inside": {"sheath_past": 0.75}}]}),
        ),
        (
            "box_mounting",
            "fault-standard-box-is-metal",
            json!({"enclosure": {"standard": "square-4x1-1/2", "material": "nonmetallic"}}),
        ),
        (
            "box_mounting",
            "fault-standard-box-is-no-body",
            json!({"enclosure": {"standard": "square-4x1-1/2", "conduit_body": true}}),
        ),
        (
            "box_mounting",
            "fault-standard-box-is-not-round",
            json!({"enclosure": {"standard": "square-4x1-1/2", "shape": "round"}}),
        ),
        (
            "box_mounting",
            "fault-standard-box-is-not-single-gang",
            json!({"enclosure": {"standard": "square-4x1-1/2", "single_gang_in_wall_or_ceiling": true}}),
        ),
        (
            "box_supports",
            "fault-held-by-no-raceway",
            json!({"enclosure": {"kind": "box"}, "means": [{"kind": "raceways", "conduits": []}]}),
        ),
        (
            "box_supports",
            "fault-luminaire-and-none",
            json!({"enclosure": {"kind": "box", "devices_or_luminaires": false}, "means": [{"kind": "conduit_pendant", "conduit": "RMC"}]}),
        ),
        (
            "luminaire_and_fan_outlets",
            "fault-framing-through-box-and-not-at-all",
            json!({"load": {"kind": "nothing"}, "box": {}, "fan_location": {"framing_access": false, "framing_access_through_box": true}}),
        ),
        (
            "box_supports",
            "fault-fastened-beyond-unbroken",
            json!({"enclosure": {"kind": "box"}, "means": [{"kind": "luminaire_on_conduit", "conduits": [{"kind": "RMC", "unbroken_before_support": 12, "fastened_before_support": 13}]}]}),
        ),
        (
            "free_conductors",
            "fault-round-opening-with-gangs",
            json!({"opening": {"diameter": 4, "gangs": 1}, "conductors": [{"role": "spliced", "free_length": 8}]}),
        ),
        (
            "free_conductors",
            "fault-reach-longer-than-conductor",
            json!({"opening": {"gangs": 1}, "emergence_depth": 2, "conductors": [{"role": "spliced", "free_length": 6, "length_outside_opening": 5}]}),
        ),
        (
            "free_conductors",
            "fault-large-opening-of-small-box",
            json!({"opening": {"gangs": 1, "width": 9, "height": 9}, "conductors": [{"role": "spliced", "free_length": 8}]}),
        ),
        (
            "free_conductors",
            "fault-damage-outside-of-box",
            json!({"opening": {"gangs": 1}, "conductors": [{"role": "stays_inside", "damage": {"place": "in_wall"}}]}),
        ),
        (
            "enclosure_types",
            "fault-condition-not-at-location",
            json!({"location": "indoor", "conditions": ["rain_snow_sleet"]}),
        ),
        (
            "conduit_body_check",
            "fault-unmarked-and-marked",
            json!({"body": {"unmarked": true, "marked_volume": 12}, "hubs": hubs, "pulls": [{"between": ["end", "side"], "conductors": large}]}),
        ),
        (
            "conduit_body_check",
            "fault-mark-list-and-pulls",
            json!({"marked": {"listed": true, "size": "1/0 AWG", "count": 3, "conductors": [{"size": "1/0 AWG", "count": 3}]}, "hubs": hubs, "pulls": [{"between": ["end", "side"], "conductors": large}]}),
        ),
        (
            "conduit_body_check",
            "fault-distances-differ",
            json!({"hubs": hubs, "pulls": [{"between": ["end", "side"], "conductors": large, "distance": 12}, {"between": ["side", "end"], "conductors": large, "distance": 13}]}),
        ),
        (
            "conduit_body_check",
            "fault-mark-list-and-pulls",
            json!({"marked": {"listed": true, "size": "3/0 AWG", "count": 3, "conductors": [{"size": "3/0 AWG", "count": 3, "insulation": "THHN"}]}, "hubs": hubs, "pulls": [{"between": ["end", "side"], "conductors": [{"size": "3/0 AWG", "count": 3, "insulation": "XHHW"}]}]}),
        ),
        (
            "pull_box_size",
            "fault-mark-list-and-pulls",
            json!({"marked": {"listed": true, "size": "1/0 AWG", "count": 3, "conductors": [{"size": "1/0 AWG", "count": 3}]}, "entries": two_entries, "pulls": [{"entries": ["a", "b"], "largest_conductor": "4/0 AWG"}]}),
        ),
        (
            "pull_box_size",
            "fault-offset-and-positions",
            json!({"box": {"width": 16, "height": 16, "depth": 8}, "entries": two_entries, "pulls": [{"entries": ["a", "b"], "largest_conductor": "4/0 AWG", "offset": false}]}),
        ),
        (
            "pull_box_size",
            "fault-row-and-positions",
            json!({"box": {"width": 16, "height": 16, "depth": 8}, "entries": [
                {"id": "a", "wall": "left", "row": 1, "raceway": {"trade_size": "2"}, "position": {"from_bottom": 4, "from_back": 3}},
                {"id": "b", "wall": "left", "row": 2, "raceway": {"trade_size": "2"}, "position": {"from_bottom": 9, "from_back": 3}}
            ], "pulls": [{"entries": ["a", "b"], "largest_conductor": "4/0 AWG"}]}),
        ),
        (
            "pull_box_size",
            "fault-box-unmarked-and-marked",
            json!({"unmarked": true, "marked": {"listed": true, "size": "4/0 AWG", "count": 3}, "entries": two_entries, "box": {"width": 16, "height": 16, "depth": 8}, "pulls": [{"entries": ["a", "b"], "largest_conductor": "4/0 AWG"}]}),
        ),
        (
            "conduit_body_check",
            "fault-distance-beyond-body",
            json!({"body": {"length": 12, "width": 3, "depth": 4}, "hubs": hubs, "pulls": [{"between": ["end", "side"], "conductors": large, "distance": 13.1}]}),
        ),
        (
            "conduit_body_check",
            "fault-cross-section-over-sides",
            json!({"body": {"cross_section": 13, "width": 3, "depth": 4}, "hubs": hubs, "pulls": [{"between": ["end", "side"], "conductors": large}]}),
        ),
        (
            "conduit_body_check",
            "fault-volume-over-sides",
            json!({"body": {"marked_volume": 145, "length": 12, "width": 3, "depth": 4}, "hubs": hubs, "pulls": [{"between": ["end", "side"], "conductors": large}]}),
        ),
        (
            "conduit_body_check",
            "fault-largest-raceway-under-opening",
            json!({"body": {"largest_raceway": {"kind": "EMT", "trade_size": "1"}}, "hubs": hubs, "pulls": [{"between": ["end", "side"], "conductors": large}]}),
        ),
        (
            "conduit_body_check",
            "fault-distance-within-body",
            json!({"body": {"length": 16}, "hubs": [{"place": "end", "raceway": {"kind": "EMT", "trade_size": "2"}}, {"place": "opposite_end", "raceway": {"kind": "EMT", "trade_size": "2"}}], "pulls": [{"between": ["end", "opposite_end"], "conductors": large, "distance": 1}]}),
        ),
        (
            "conduit_body_check",
            "fault-opening-larger-than-body",
            json!({"body": {"width": 0.5}, "hubs": hubs, "pulls": [{"between": ["end", "side"], "conductors": large}]}),
        ),
        (
            "conduit_body_check",
            "fault-body-listed-and-not",
            json!({"body": {"listed": true}, "marked": {"listed": false, "size": "3/0 AWG", "count": 3}, "hubs": hubs, "pulls": [{"between": ["end", "side"], "conductors": large}]}),
        ),
        (
            "conduit_body_check",
            "fault-listed-body-without-area",
            json!({"body": {"listed": true, "cross_section": 0.1}, "hubs": hubs, "pulls": [{"between": ["end", "side"], "conductors": small}]}),
        ),
        (
            "conduit_body_check",
            "fault-splices-not-in-contents",
            json!({"hubs": hubs, "pulls": [{"between": ["end", "side"], "conductors": small, "spliced": true}], "contents": {"conductors": [{"size": "12 AWG", "role": "spliced", "count": 2}]}}),
        ),
        (
            "pull_box_size",
            "fault-outside-smaller-than-trade-size",
            json!({"entries": [{"id": "a", "wall": "left", "raceway": {"trade_size": "2", "outside_diameter": 1}}, {"id": "b", "wall": "right", "raceway": {"trade_size": "2"}}], "pulls": [{"entries": ["a", "b"], "largest_conductor": "4/0 AWG"}]}),
        ),
        (
            "pull_box_size",
            "fault-outside-not-of-raceway",
            json!({"entries": [{"id": "a", "wall": "left", "raceway": {"kind": "RMC", "trade_size": "2", "outside_diameter": 8}}, {"id": "b", "wall": "right", "raceway": {"trade_size": "2"}}], "pulls": [{"entries": ["a", "b"], "largest_conductor": "4/0 AWG"}]}),
        ),
        (
            "pull_box_size",
            "fault-cable-thinner-than-conductors",
            json!({"entries": [{"id": "a", "wall": "left", "cable": {"conductors": [{"size": "4/0 AWG", "insulation": "THHN", "count": 4}], "outside_diameter": 0.2}}, {"id": "b", "wall": "right", "raceway": {"trade_size": "2"}}], "pulls": [{"entries": ["a", "b"], "largest_conductor": "4/0 AWG"}]}),
        ),
        (
            "pull_box_size",
            "fault-pull-larger-than-cable",
            json!({"entries": [{"id": "a", "wall": "left", "cable": {"conductors": [{"size": "10 AWG"}]}}, {"id": "b", "wall": "right", "raceway": {"trade_size": "2"}}], "pulls": [{"entries": ["a", "b"], "largest_conductor": "4/0 AWG"}]}),
        ),
        (
            "pull_box_size",
            "fault-cables-of-one-pull-differ",
            json!({"over_1000_volts": true, "entries": [{"id": "a", "wall": "left", "cables_over_1000_volts": [{"outside_diameter": 2, "covering": "shielded"}]}, {"id": "b", "wall": "right", "cables_over_1000_volts": [{"outside_diameter": 1, "covering": "shielded"}]}], "pulls": [{"entries": ["a", "b"]}]}),
        ),
        (
            "box_mounting",
            "fault-cover-and-not-reached",
            json!({"flush_surface": {"setback": 0}, "cover": {"fitted": true}, "access": {"place": "building", "reachable": false}}),
        ),
        (
            "luminaire_and_fan_outlets",
            "fault-listed-box-not-identified",
            json!({"load": {"kind": "luminaire", "position": "wall", "weight": 4}, "box": {"identified": false, "listed_for_weight": true}}),
        ),
        (
            "raceway_fill",
            "fault-short-and-no-nipple",
            json!({"raceway": {"kind": "EMT", "trade_size": "1", "length": 20, "nipple": false}, "conductors": [{"insulation": "THHN", "size": "12 AWG"}]}),
        ),
        (
            "luminaire_and_fan_outlets",
            "fault-ceiling-fan-on-wall",
            json!({"load": {"kind": "ceiling_fan", "position": "wall", "weight": 30}}),
        ),
        (
            "luminaire_and_fan_outlets",
            "fault-fan-location-of-no-ceiling",
            json!({"load": {"kind": "luminaire", "position": "wall", "weight": 4}, "fan_location": {"dwelling": true}}),
        ),
        (
            "luminaire_and_fan_outlets",
            "fault-weight-marked-and-not",
            json!({"load": {"kind": "luminaire", "position": "wall", "weight": 4}, "box": {"weight_marked": false, "marked_weight": 75}}),
        ),
        (
            "box_construction",
            "fault-listed-and-not",
            json!({"enclosure": {"material": "die_cast", "listed": false, "listed_as_equal": true}}),
        ),
        (
            "box_construction",
            "fault-listed-without-provision",
            json!({"enclosure": {"material": "die_cast", "listed": true, "grounding_provision": false}}),
        ),
        (
            "box_construction",
            "fault-listed-with-thin-walls",
            json!({"enclosure": {"material": "sheet_steel", "volume": 150, "listed": true, "wall_thickness": 0.05}}),
        ),
        (
            "free_conductors",
            "fault-reach-shorter-than-conductor",
            json!({"opening": {"gangs": 1}, "emergence_depth": 2, "conductors": [{"role": "spliced", "free_length": 6, "length_outside_opening": 2}]}),
        ),
        (
            "luminaire_and_fan_outlets",
            "fault-fan-box-marked-outside",
            json!({"load": {"kind": "ceiling_fan", "weight": 30}, "box": {"listed_for_fan": true, "marked_inside": false}}),
        ),
        (
            "box_mounting",
            "fault-handhole-in-building",
            json!({"handhole": {"identified": true}, "access": {"place": "building"}}),
        ),
        (
            "box_mounting",
            "fault-underground-is-wet",
            json!({"access": {"place": "underground", "reachable": true}, "moisture": {"location": "dry"}}),
        ),
        (
            "box_mounting",
            "fault-underground-and-in-surface",
            json!({"handhole": {"identified": true}, "flush_surface": {"setback": 0, "gap": 0}}),
        ),
        (
            "box_mounting",
            "fault-handhole-of-another-kind",
            json!({"handhole": {"identified": true}, "enclosure": {"standard": "square-4x1-1/2"}}),
        ),
        (
            "box_mounting",
            "fault-box-listed-and-not",
            json!({"enclosure": {"listed_for_wet_locations": true}, "access": {"place": "underground", "reachable": false, "under_loose_cover": {"listed_box": false}}}),
        ),
        (
            "box_mounting",
            "fault-volume-not-of-row",
            json!({"enclosure": {"standard": "square-4x1-1/2", "volume": 120}}),
        ),
        (
            "box_mounting",
            "fault-single-gang-too-large",
            json!({"enclosure": {"single_gang_in_wall_or_ceiling": true, "volume": 300}}),
        ),
        (
            "box_mounting",
            "fault-whole-box-and-fits-device",
            json!({"access": {"place": "building", "finish_opening": {"whole_box_open": true, "fits_device": true}}}),
        ),
        (
            "box_mounting",
            "fault-whole-box-in-narrow-opening",
            json!({"access": {"place": "building", "finish_opening": {"whole_box_open": true, "long_side": 0.5, "short_side": 0.5}}}),
        ),
        (
            "box_mounting",
            "fault-whole-box-off-center",
            json!({"access": {"place": "building", "finish_opening": {"whole_box_open": true, "off_center": 9, "long_side": 4, "short_side": 4}}}),
        ),
        (
            "free_conductors",
            "fault-opening-wider-than-gangs",
            json!({"opening": {"gangs": 1, "width": 9}, "conductors": [{"role": "spliced", "free_length": 8}]}),
        ),
    ]
}

/// The contradictions of a request: the key of the fault, and both places.
type Contradictions = fn(&Value) -> Vec<(&'static str, String, String)>;

fn contradictions<C: Check>(request: &Value) -> Vec<(&'static str, String, String)> {
    let request: C::Request = json::read_value(request.clone()).expect("a request of the right form");
    let faults = faults_of::<C>(&request);
    let said_twice = faults.iter().filter(|fault| fault.code == FaultCode::Contradiction);
    said_twice
        .map(|fault| {
            let other = fault.contradicts.expect("the other place");
            (fault.message, fault.at.to_string(), other.to_string())
        })
        .collect()
}

#[test]
fn two_members_that_state_one_fact_differently_are_refused_with_both_places() {
    let checks: BTreeMap<&str, Contradictions> =
        of_each_check!(C => (<C as Check>::NAME, contradictions::<C> as Contradictions)).into();
    for (check, key, request) in contradictory() {
        let found = checks[check](&request);
        let [(message, at, other)] = &found[..] else { panic!("{key}: {found:?}") };
        assert_eq!(*message, key);
        for place in [at, other] {
            assert!(request.pointer(place).is_some(), "{key}: {place}");
        }
        assert_ne!(at, other, "{key}");
    }
}

/// The other members that say the same: each beside what it contradicts, and what is at the bound and no contradiction.
#[test]
fn what_lies_underground_and_what_is_too_large_is_refused_however_it_is_said() {
    let underground = json!({"place": "underground", "reachable": true});
    let refused = [
        ("box_mounting", json!({"access": underground, "moisture": {"location": "damp"}})),
        ("box_mounting", json!({"access": underground, "flush_surface": {"setback": 0, "gap": 0}})),
        (
            "box_mounting",
            json!({"access": underground, "enclosure": {"single_gang_in_wall_or_ceiling": true}}),
        ),
        (
            "box_mounting",
            json!({"access": {"place": "underground", "reachable": true, "finish_opening": {"fits_device": true}}}),
        ),
        ("box_mounting", json!({"handhole": {}, "moisture": {"location": "dry"}})),
        ("box_mounting", json!({"handhole": {}, "enclosure": {"conduit_body": true}})),
        ("box_mounting", json!({"enclosure": {"standard": "square-4x1-1/2", "volume": 18.8}})),
        ("box_mounting", json!({"enclosure": {"single_gang_in_wall_or_ceiling": true, "volume": 50.1}})),
        ("free_conductors", json!({"opening": {"standard": "square-4x1-1/2", "diameter": 5.1}})),
        ("free_conductors", json!({"opening": {"gangs": 3, "width": 7.6}})),
    ];
    let allowed = [
        ("box_mounting", json!({"access": underground, "moisture": {"location": "wet"}})),
        ("box_mounting", json!({"enclosure": {"standard": "square-4x1-1/2", "volume": 18.9}})),
        ("box_mounting", json!({"enclosure": {"standard": "square-4x1-1/2", "volume": 23.1}})),
        ("box_mounting", json!({"enclosure": {"standard": "device-3x2x3-1/2", "volume": 36}})),
        ("box_mounting", json!({"enclosure": {"single_gang_in_wall_or_ceiling": true, "volume": 50}})),
        ("free_conductors", json!({"opening": {"gangs": 1, "width": 5}})),
        ("free_conductors", json!({"opening": {"gangs": 3, "width": 7.5}})),
    ];
    let checks: BTreeMap<&str, Contradictions> =
        of_each_check!(C => (<C as Check>::NAME, contradictions::<C> as Contradictions)).into();
    for (cases, expected) in [(&refused[..], 1), (&allowed[..], 0)] {
        for (check, request) in cases {
            assert_eq!(checks[check](request).len(), expected, "{request}");
        }
    }
}

/// A contradiction that a check finds and of which there is no request here would go unnoticed if it were lost.
#[test]
fn every_contradiction_that_a_check_finds_has_a_request() {
    let tried: BTreeSet<&str> = contradictory().into_iter().map(|(_, key, _)| key).collect();
    let mut files = Vec::new();
    sources(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src/checks"), &mut files);
    let mut sites = 0;
    for file in files {
        let text = std::fs::read_to_string(&file).expect("a source");
        for call in text.split(".contradiction(").skip(1) {
            let key = call.split('"').find(|text| text.starts_with("fault-")).expect("the key of a sentence");
            assert!(tried.contains(key), "{key} of {}", file.display());
            sites += 1;
        }
    }
    assert_eq!(contradictory().len(), sites, "one request for each place that finds a contradiction");
}

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            sources(&path, found);
        } else {
            found.push(path);
        }
    }
}
