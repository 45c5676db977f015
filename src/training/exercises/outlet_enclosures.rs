//! The boxes themselves: their volume, and the room that is left in them.

use super::outlet_boxes::{cable, other_size, place, usual_size};
use super::{Difficulty, Rng, Spec};
use crate::quantity::{Decimal, Units};
use serde_json::{Value, json};

/// A volume that makers mark: a number of half cubic inches, or about the same in cubic centimetres.
fn marked(half_inches: u32, units: Units) -> Value {
    match units {
        Units::Us => json!(Decimal::ten_thousandths(5_000).times(half_inches.into())),
        Units::Si => json!(half_inches * 82 / 10),
    }
}

/// How much volume a box has, with its rings and its barriers.
pub(super) fn volume(rng: &mut Rng, spec: &Spec) -> Value {
    let units = spec.units;
    if spec.difficulty == Difficulty::Advanced && rng.chance(60) {
        return divided(rng, units);
    }
    let standard = rng.pick([
        "square-4x1-1/4",
        "square-4x1-1/2",
        "square-4x2-1/8",
        "square-4-11/16x1-1/2",
        "square-4-11/16x2-1/8",
        "octagonal-4x1-1/2",
        "octagonal-4x2-1/8",
    ]);
    let mut sections = vec![json!({"kind": "plaster_ring", "marked_volume": marked(rng.from(5, 14), units)})];
    if spec.difficulty != Difficulty::Basic || units == Units::Si || rng.chance(40) {
        sections.push(json!({"kind": "extension_ring"}));
    }
    if spec.difficulty != Difficulty::Basic && rng.chance(50) {
        sections.push(json!({"kind": "extension_ring", "standard": standard}));
    }
    json!({"reference": place(rng), "enclosure": {"standard": standard, "sections": sections}, "contents": {}})
}

/// A box that a barrier divides: the share of the first space is asked.
fn divided(rng: &mut Rng, units: Units) -> Value {
    let gangs = rng.from(3, 4);
    let first = rng.from(1, gangs - 1);
    let total = marked(rng.from(34, 46) * gangs, units);
    let space = |id: &str, gangs: u32| json!({"id": id, "gangs": gangs, "contents": {}});
    json!({
        "reference": place(rng),
        "enclosure": {
            "marked_volume": total, "material": "nonmetallic", "gangs": gangs,
            "barriers": [{"material": "nonmetallic"}],
        },
        "spaces": [space("A", first), space("B", gangs - first)],
    })
}

/// How many more conductors of the size of its cables a box takes.
pub(super) fn room(rng: &mut Rng, spec: &Spec) -> Value {
    let size = usual_size(rng);
    let mut cables = vec![cable(size, 2, rng.from(1, 2))];
    if spec.difficulty != Difficulty::Basic {
        cables.push(cable(other_size(rng, size), 2, 1));
    }
    let standard =
        rng.pick(["square-4x1-1/2", "square-4x2-1/8", "square-4-11/16x1-1/2", "square-4-11/16x2-1/8"]);
    let mut enclosure = json!({"standard": standard});
    if spec.difficulty == Difficulty::Advanced {
        enclosure["sections"] =
            json!([{"kind": "plaster_ring", "marked_volume": marked(rng.from(5, 14), spec.units)}]);
    }
    json!({
        "reference": place(rng),
        "enclosure": enclosure,
        "contents": {
            "cables": cables,
            "clamps": [{"kind": "internal", "count": rng.from(2, 4)}],
            "devices": [{"kind": rng.pick(["switch", "receptacle"]), "largest_conductor": size}],
        },
    })
}
