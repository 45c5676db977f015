//! What is put into outlet boxes.

use super::{Difficulty, Rng, Spec};
use crate::quantity::Units;
use serde_json::{Value, json};

/// Places where boxes are, as the situation names them.
const PLACES: [&str; 8] =
    ["kitchen", "garage", "workshop", "hallway", "office", "basement", "laundry", "living-room"];

/// Sizes that branch circuits are wired with.
const USUAL: [&str; 3] = ["14 AWG", "12 AWG", "10 AWG"];

pub(super) fn place(rng: &mut Rng) -> &'static str {
    rng.pick(PLACES)
}

pub(super) fn cable(size: &str, conductors: u32, number: u32) -> Value {
    json!({"kind": "NM-B", "size": size, "conductors": conductors, "grounding": size, "count": number})
}

/// Another size than one, of the usual ones.
pub(super) fn other_size(rng: &mut Rng, size: &str) -> &'static str {
    let others: Vec<&'static str> = USUAL.into_iter().filter(|other| *other != size).collect();
    others.get(rng.below(others.len() as u32) as usize).copied().unwrap_or(USUAL[0])
}

pub(super) fn usual_size(rng: &mut Rng) -> &'static str {
    rng.pick(["14 AWG", "12 AWG", "12 AWG", "10 AWG"])
}

/// Loose conductors that end, are spliced, pass through, loop and stay inside.
pub(super) fn conductors(rng: &mut Rng, spec: &Spec) -> Value {
    let size = usual_size(rng);
    let second = if spec.difficulty == Difficulty::Basic { size } else { other_size(rng, size) };
    let mut list = vec![
        json!({"size": size, "role": "spliced", "count": 2 * rng.from(1, 4)}),
        json!({"size": second, "role": "passes_through", "count": rng.from(1, 4)}),
        json!({"size": size, "role": "stays_inside", "count": rng.from(1, 3)}),
    ];
    if spec.difficulty != Difficulty::Basic {
        list.push(json!({"size": second, "role": "terminated", "count": rng.from(1, 3)}));
    }
    if spec.difficulty == Difficulty::Advanced {
        let length = match (spec.units, rng.chance(50)) {
            (Units::Us, true) => 14,
            (Units::Us, false) => 8,
            (Units::Si, true) => 350,
            (Units::Si, false) => 200,
        };
        let looped = rng.from(1, 3);
        list.push(json!({"size": size, "role": "loop", "loop_length": length, "count": looped}));
    }
    json!({"reference": place(rng), "contents": {"conductors": list}})
}

/// Devices on yokes, with the cables that feed them.
pub(super) fn devices(rng: &mut Rng, spec: &Spec) -> Value {
    let size = usual_size(rng);
    let mut cables = vec![cable(size, rng.pick([2, 2, 3]), rng.from(1, 3))];
    let mut list = Vec::new();
    let kind = |rng: &mut Rng| rng.pick(["switch", "receptacle", "protective_device", "control"]);
    match spec.difficulty {
        Difficulty::Basic => {
            list.push(json!({"kind": kind(rng), "largest_conductor": size, "count": rng.from(1, 2)}));
        }
        Difficulty::Intermediate => {
            let other = other_size(rng, size);
            cables.push(cable(other, 2, rng.from(1, 2)));
            list.push(json!({"kind": kind(rng), "largest_conductor": size}));
            let second = rng.pick(["combination", "switch", "receptacle"]);
            list.push(json!({"kind": second, "largest_conductor": other}));
        }
        Difficulty::Advanced => {
            let heavy = rng.pick(["10 AWG", "8 AWG", "6 AWG"]);
            let gangs = rng.pick([1, 2, 2]);
            cables.push(json!({"kind": "NM-B", "size": heavy, "conductors": 3, "grounding": "10 AWG"}));
            list.push(json!({"kind": "receptacle", "largest_conductor": heavy, "gangs": gangs}));
            list.push(json!({"kind": "combination", "largest_conductor": size}));
        }
    }
    let mut contents = json!({"cables": cables, "devices": list});
    if rng.chance(60) {
        let clamp = rng.pick(["internal", "internal", "external"]);
        contents["clamps"] = json!([{"kind": clamp, "count": rng.from(2, 4)}]);
    }
    json!({"reference": place(rng), "contents": contents})
}

/// Grounding conductors: mostly more than four.
pub(super) fn grounding(rng: &mut Rng, spec: &Spec) -> Value {
    let size = usual_size(rng);
    let mut cables = vec![cable(size, 2, rng.from(3, 6))];
    let mut grounding = Vec::new();
    if spec.difficulty == Difficulty::Basic {
        let jumpers = rng.from(1, 2);
        grounding.push(json!({"size": size, "kind": "stays_inside", "count": jumpers}));
    } else {
        let other = other_size(rng, size);
        cables.push(cable(other, 2, rng.from(1, 3)));
        grounding.push(json!({"size": size, "kind": "bonding_jumper"}));
    }
    if spec.difficulty == Difficulty::Advanced {
        grounding.push(
            json!({"size": rng.pick(["12 AWG", "10 AWG"]), "kind": "isolated", "count": rng.from(1, 2)}),
        );
        grounding.push(json!({"size": size, "kind": "stays_inside", "count": rng.from(1, 3)}));
    }
    json!({"reference": place(rng), "contents": {"cables": cables, "grounding": grounding}})
}

/// Everything that a box may hold.
pub(super) fn everything(rng: &mut Rng, spec: &Spec) -> Value {
    let advanced = spec.difficulty == Difficulty::Advanced;
    let size = usual_size(rng);
    let other = if spec.difficulty == Difficulty::Basic { size } else { other_size(rng, size) };
    let mut cables = vec![cable(size, 2, rng.from(1, 3))];
    if other != size {
        cables.push(cable(other, rng.pick([2, 3]), rng.from(1, 2)));
    }
    let mut contents = json!({
        "cables": cables,
        "clamps": [{"kind": "internal", "count": rng.from(2, 4)}],
        "devices": [{"kind": rng.pick(["switch", "receptacle"]), "largest_conductor": other}],
        "small_parts": [{"kind": "wire_connector", "count": rng.from(2, 5)}],
    });
    if rng.chance(50) {
        contents["conductors"] = json!([{"size": size, "role": "stays_inside", "count": rng.from(1, 3)}]);
    }
    if spec.difficulty != Difficulty::Basic {
        contents["support_fittings"] = json!([
            {"kind": "stud", "count": rng.from(1, 2)},
            {"kind": "hickey"},
        ]);
    }
    if advanced && rng.chance(50) {
        contents["terminal_blocks"] = json!([{"kind": "terminal_block", "largest_conductor": size}]);
    }
    if advanced && rng.chance(50) {
        let wires = rng.pick(["18 AWG", "16 AWG", "14 AWG"]);
        let kind = rng.pick(["domed_luminaire", "domed_luminaire", "flat_luminaire"]);
        contents["canopy"] =
            json!({"kind": kind, "fixture_wires": [{"size": wires, "count": rng.from(2, 4)}]});
    }
    json!({"reference": place(rng), "contents": contents})
}
