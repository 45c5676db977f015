//! Lengths that an inspector measures: free conductor, depth of boxes.

use super::{Difficulty, Rng, Spec};
use crate::quantity::{Decimal, Units};
use serde_json::{Value, json};

/// A number of eighths of an inch, or about as many millimetres.
fn eighths(number: u32, units: Units) -> Value {
    match units {
        Units::Us => json!(Decimal::ten_thousandths(1_250).times(number.into())),
        Units::Si => json!(number * 3),
    }
}

/// How much free conductor a box asks for.
pub(super) fn free(rng: &mut Rng, spec: &Spec) -> Value {
    let units = spec.units;
    let side = |inches: u32| match units {
        Units::Us => json!(inches),
        Units::Si => json!(inches * 25),
    };
    let (width, height) = match spec.difficulty {
        Difficulty::Basic => (side(4), side(4)),
        Difficulty::Intermediate => (side(rng.from(2, 5)), side(rng.from(4, 7))),
        Difficulty::Advanced => (side(rng.from(4, 7)), side(rng.from(6, 12))),
    };
    let mut request = json!({
        "reference": super::outlet_boxes::place(rng),
        "opening": {"width": width, "height": height},
        "emergence_depth": eighths(rng.from(8, 40), units),
    });
    if spec.difficulty != Difficulty::Basic {
        request["rings"] = json!([{"depth": eighths(rng.from(4, 16), units)}]);
    }
    request
}

/// How deep a box must be for the device in it.
pub(super) fn depth(rng: &mut Rng, spec: &Spec) -> Value {
    let rear = spec.difficulty != Difficulty::Basic && rng.chance(60);
    let size = match spec.difficulty {
        Difficulty::Basic => rng.pick(["12 AWG", "10 AWG"]),
        Difficulty::Intermediate => rng.pick(["14 AWG", "12 AWG", "10 AWG"]),
        Difficulty::Advanced => rng.pick(["12 AWG", "10 AWG", "8 AWG", "6 AWG"]),
    };
    let projection = eighths(rng.from(9, 22), spec.units);
    json!({
        "reference": super::outlet_boxes::place(rng),
        "equipment": [{"projection": projection, "largest_supply_conductor": size, "rear_center_entry": rear}],
    })
}
