//! Pull boxes and what enters them.

use super::{Difficulty, Rng, Spec};
use crate::quantity::{Decimal, Units};
use serde_json::{Value, json};

/// Trade sizes of rigid metal conduit with their outside diameters, in ten-thousandths of an inch and tenths of a
/// millimetre.
const CONDUITS: [(&str, i64, i64); 8] = [
    ("1", 13_150, 334),
    ("1-1/4", 16_600, 422),
    ("1-1/2", 19_000, 483),
    ("2", 23_750, 603),
    ("2-1/2", 28_750, 730),
    ("3", 35_000, 889),
    ("3-1/2", 40_000, 1_016),
    ("4", 45_000, 1_143),
];

/// Conductors that make a pull box of a box.
const LARGE: [&str; 6] = ["4 AWG", "2 AWG", "1/0 AWG", "4/0 AWG", "350 kcmil", "500 kcmil"];

/// A conduit: its place among the known ones.
fn conduit(rng: &mut Rng, least: usize) -> usize {
    least + rng.below((CONDUITS.len() - least) as u32) as usize
}

fn entry(id: &str, wall: &str, size: usize, with_diameter: Option<Units>) -> Value {
    let (name, inches, tenths) = CONDUITS[size.min(CONDUITS.len() - 1)];
    let mut raceway = json!({"kind": "RMC", "trade_size": name});
    match with_diameter {
        Some(Units::Us) => raceway["outside_diameter"] = json!(Decimal::ten_thousandths(inches)),
        Some(Units::Si) => raceway["outside_diameter"] = json!(Decimal::ten_thousandths(tenths * 1_000)),
        None => {}
    }
    json!({"id": id, "wall": wall, "raceway": raceway})
}

fn pull(rng: &mut Rng, from: &str, to: &str) -> Value {
    json!({"entries": [from, to], "largest_conductor": rng.pick(LARGE)})
}

/// Straight pulls from left to right, beside others.
pub(super) fn straight(rng: &mut Rng, spec: &Spec) -> Value {
    let diameter = rng.chance(50).then_some(spec.units);
    let (first, second) = (conduit(rng, 2), conduit(rng, 0));
    let mut entries = vec![
        entry("A", "left", first, diameter),
        entry("B", "right", first, diameter),
        entry("C", "left", second, diameter),
        entry("D", "right", second, diameter),
    ];
    let mut pulls = vec![pull(rng, "A", "B"), pull(rng, "C", "D")];
    if spec.difficulty != Difficulty::Basic {
        let third = conduit(rng, 0);
        entries.extend([entry("E", "left", third, diameter), entry("F", "right", third, diameter)]);
        pulls.push(pull(rng, "E", "F"));
    }
    if spec.difficulty == Difficulty::Advanced {
        let turned = conduit(rng, 0);
        entries.extend([entry("G", "left", turned, diameter), entry("H", "bottom", turned, diameter)]);
        pulls.push(pull(rng, "G", "H"));
    }
    json!({"entries": entries, "pulls": pulls})
}

/// Angle pulls from the left wall, in one row or two.
pub(super) fn angle(rng: &mut Rng, spec: &Spec) -> Value {
    let diameter = rng.chance(30).then_some(spec.units);
    let sizes = [conduit(rng, 2), conduit(rng, 0), conduit(rng, 0), conduit(rng, 0)];
    let turned = if spec.difficulty == Difficulty::Basic { 2 } else { 3 };
    let names = [("A", "B"), ("C", "D"), ("E", "F")];
    let (mut entries, mut pulls) = (Vec::new(), Vec::new());
    for ((from, to), size) in names.into_iter().zip(sizes).take(turned) {
        let mut own = entry(from, "left", size, diameter);
        if spec.difficulty == Difficulty::Advanced && from == "E" {
            own["row"] = json!(2);
        }
        entries.extend([own, entry(to, "bottom", size, diameter)]);
        let mut one = pull(rng, from, to);
        if rng.chance(25) {
            one["spliced"] = json!(true);
        }
        pulls.push(one);
    }
    if spec.difficulty != Difficulty::Basic && rng.chance(50) {
        let through = sizes[3];
        entries.extend([entry("G", "left", through, diameter), entry("H", "right", through, diameter)]);
        pulls.push(pull(rng, "G", "H"));
    }
    json!({"entries": entries, "pulls": pulls})
}

/// Entries that hold the same conductors, of sizes that differ.
pub(super) fn distance(rng: &mut Rng, spec: &Spec) -> Value {
    let (one, other) = (conduit(rng, 0), conduit(rng, 0));
    let to = match spec.difficulty {
        Difficulty::Basic => "bottom",
        Difficulty::Intermediate => rng.pick(["bottom", "top"]),
        Difficulty::Advanced => rng.pick(["bottom", "top", "left"]),
    };
    let diameter = Some(spec.units);
    let mut entries = vec![entry("A", "left", one, diameter), entry("B", to, other, diameter)];
    let mut pulls = vec![pull(rng, "A", "B")];
    if spec.difficulty != Difficulty::Basic {
        let through = conduit(rng, 0);
        entries.extend([entry("C", "left", through, diameter), entry("D", "right", through, diameter)]);
        pulls.push(pull(rng, "C", "D"));
    }
    json!({"entries": entries, "pulls": pulls})
}

/// A cable of some diameter in hundredths of an inch, or in millimetres.
fn cable(rng: &mut Rng, units: Units, covering: &str) -> Value {
    let diameter = match units {
        Units::Us => json!(Decimal::ten_thousandths(i64::from(rng.from(90, 260)) * 100)),
        Units::Si => json!(rng.from(23, 66)),
    };
    json!({"outside_diameter": diameter, "covering": covering})
}

/// Cables of a system over 1000 V in raceways.
pub(super) fn over_1000_volts(rng: &mut Rng, spec: &Spec) -> Value {
    let covering = rng.pick(["shielded", "shielded", "lead_covered", "nonshielded"]);
    let own = cable(rng, spec.units, covering);
    let to = if spec.difficulty == Difficulty::Basic { "right" } else { rng.pick(["right", "bottom"]) };
    let mut entries = Vec::new();
    let mut enter = |id: &str, wall: &str, row: u32, size: usize, cable: &Value| {
        let mut own = entry(id, wall, size, None);
        own["cables_over_1000_volts"] = json!([cable]);
        if wall == "left" && spec.difficulty == Difficulty::Advanced {
            own["row"] = json!(row);
        }
        entries.push(own);
    };
    enter("A", "left", 1, 7, &own);
    enter("B", to, 1, 7, &own);
    let mut pulls = vec![json!({"entries": ["A", "B"]})];
    if spec.difficulty != Difficulty::Basic {
        let second = cable(rng, spec.units, covering);
        enter("C", "left", 2, 5, &second);
        enter("D", "right", 1, 5, &second);
        pulls.push(json!({"entries": ["C", "D"]}));
    }
    json!({"over_1000_volts": true, "entries": entries, "pulls": pulls})
}
