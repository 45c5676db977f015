//! Raceways and conduit bodies with what is pulled into them.

use super::{Difficulty, Rng, Spec};
use crate::quantity::Units;
use serde_json::{Value, json};

const KINDS: [&str; 4] = ["EMT", "RMC", "IMC", "PVC-40"];

fn trade_size(rng: &mut Rng) -> &'static str {
    rng.pick(["1/2", "3/4", "1", "1-1/4", "1-1/2", "2"])
}

fn small_size(rng: &mut Rng) -> &'static str {
    rng.pick(["14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG"])
}

/// How many conductors of one size a raceway takes.
pub(super) fn fill(rng: &mut Rng, spec: &Spec) -> Value {
    let kind = if spec.difficulty == Difficulty::Basic { "EMT" } else { rng.pick(KINDS) };
    let insulation = match spec.difficulty {
        Difficulty::Basic => "THHN",
        Difficulty::Intermediate => rng.pick(["THHN", "XHHW", "THW"]),
        Difficulty::Advanced => rng.pick(["XHHW", "THW", "TW"]),
    };
    let mut raceway = json!({"kind": kind, "trade_size": trade_size(rng)});
    if spec.difficulty == Difficulty::Advanced && rng.chance(50) {
        raceway["length"] = match spec.units {
            Units::Us => json!(rng.from(10, 24)),
            Units::Si => json!(rng.from(25, 60) * 10),
        };
    }
    json!({"raceway": raceway, "conductors": [{"insulation": insulation, "size": small_size(rng), "count": 3}]})
}

/// How many conductors of one size a conduit body takes.
pub(super) fn body(rng: &mut Rng, spec: &Spec) -> Value {
    let kind = if spec.difficulty == Difficulty::Basic { "EMT" } else { rng.pick(KINDS) };
    let insulation = if spec.difficulty == Difficulty::Advanced { rng.pick(["XHHW", "THW"]) } else { "THHN" };
    let raceway = json!({"kind": kind, "trade_size": trade_size(rng)});
    let other = rng.pick(["opposite_end", "side", "back"]);
    json!({
        "body": {},
        "hubs": [{"place": "end", "raceway": raceway}, {"place": other, "raceway": raceway}],
        "pulls": [{
            "between": ["end", other],
            "conductors": [{"insulation": insulation, "size": small_size(rng), "count": 3}],
        }],
    })
}
