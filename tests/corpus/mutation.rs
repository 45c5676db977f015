//! Requests made of others: numbers moved, members left out, lists shortened or doubled, values of closed sets exchanged.

use super::schemas::Member;
use super::{Asked, Schemas, without};
use elbowroom::rng::Rng;
use elbowroom::trade::ConductorSize;
use serde_json::{Number, Value};

/// How many requests are made of each.
const MUTATIONS: usize = 3;

/// Conductor sizes that are put in one another's place: either side of the sizes at which other rules begin.
const CONDUCTORS: [&str; 7] = ["18 AWG", "14 AWG", "12 AWG", "10 AWG", "6 AWG", "4 AWG", "3/0 AWG"];
/// Those that may end on a device of an outlet box, or be the grounding conductor of a cable.
const ON_DEVICES: [&str; 4] = ["14 AWG", "12 AWG", "10 AWG", "6 AWG"];
/// Trade sizes that are put in one another's place.
const TRADE_SIZES: [&str; 5] = ["1/2", "3/4", "1", "2", "4"];

/// What every request carries says nothing of what is installed, and is left as it is.
const LEFT_ALONE: [&str; 5] = ["/edition", "/reference", "/amendments", "/interpretations", "/units"];

/// Requests with one to three changes each, the same for the same seed, whatever stands before them.
pub fn mutated(schemas: &Schemas, from: &[Asked], seed: u64) -> Vec<Asked> {
    let mut made = Vec::with_capacity(from.len() * MUTATIONS);
    for asked in from {
        let mut rng = Rng::of(&[seed, number_of(asked)]);
        for number in 0..MUTATIONS {
            let mut request = asked.request.clone();
            for _ in 0..rng.from(1, 3) {
                request = changed(schemas, &asked.check, request, &mut rng);
            }
            let name = format!("{}, mutation {number}", asked.name);
            made.push(Asked { check: asked.check.clone(), name, request });
        }
    }
    made
}

/// A number for a request, by its check and by what it is called (FNV-1a). An example is called by its file, wherever that lies.
fn number_of(asked: &Asked) -> u64 {
    let name = asked.name.rsplit_once("/examples/").map_or(asked.name.as_str(), |(_, file)| file);
    let bytes = asked.check.bytes().chain(name.bytes());
    bytes.fold(0xCBF2_9CE4_8422_2325, |number, byte| {
        (number ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01B3)
    })
}

fn changed(schemas: &Schemas, check: &str, request: Value, rng: &mut Rng) -> Value {
    let members: Vec<Member<'_>> = schemas
        .members(check, &request)
        .into_iter()
        .filter(|member| !LEFT_ALONE.iter().any(|at| member.at.starts_with(at)))
        .collect();
    if members.is_empty() {
        return request;
    }
    let member = &members[rng.below(members.len() as u32) as usize];
    let at = member.at.clone();
    let other = if rng.chance(20) { None } else { exchanged(member, rng) };
    match other {
        None => without(&request, &at),
        Some(other) => {
            let mut request = request.clone();
            if let Some(value) = request.pointer_mut(&at) {
                *value = other;
            }
            if is_made(&request, &at) { request } else { without(&request, &at) }
        }
    }
}

/// Whether what a size was put into is made: no cable has a grounding conductor larger than the others in it.
fn is_made(request: &Value, at: &str) -> bool {
    let whole = at.rsplit_once('/').and_then(|(cable, _)| request.pointer(cable));
    let size = |member: &str| ConductorSize::read(whole?[member].as_str()?);
    size("grounding") <= size("size")
}

/// Another value in the place of one; `None` where there is nothing to put there.
fn exchanged(member: &Member<'_>, rng: &mut Rng) -> Option<Value> {
    let closed = member.schema["enum"].as_array();
    match (member.value, closed) {
        (Value::Bool(is), _) => Some((!is).into()),
        (_, Some(values)) => Some(values[rng.below(values.len() as u32) as usize].clone()),
        (Value::Number(number), None) => moved(number, rng),
        (Value::Array(items), None) => Some(relisted(items, rng)),
        (Value::String(_), None)
            if member.at.contains("/devices/") && member.at.ends_with("/largest_conductor")
                || member.at.contains("/cables/") && member.at.ends_with("/grounding") =>
        {
            Some(rng.pick(ON_DEVICES).into())
        }
        (Value::String(text), None) if text.ends_with("AWG") || text.ends_with("kcmil") => {
            Some(rng.pick(CONDUCTORS).into())
        }
        (Value::String(_), None) if member.at.ends_with("trade_size") => Some(rng.pick(TRADE_SIZES).into()),
        _ => None,
    }
}

fn moved(number: &Number, rng: &mut Rng) -> Option<Value> {
    if let Some(whole) = number.as_u64() {
        let moved = [whole + 1, whole.saturating_sub(1), whole * 2, whole / 2, 0];
        return Some(moved[rng.below(5) as usize].into());
    }
    let value = number.as_f64()?;
    let moved = [value + 0.125, value - 0.125, value * 2.0, value / 2.0, 0.0][rng.below(5) as usize];
    Number::from_f64((moved * 1e4).round() / 1e4).map(Value::Number)
}

/// A list with an item less, or with one twice. A name stands for one thing only, so the second loses it.
fn relisted(items: &[Value], rng: &mut Rng) -> Value {
    let mut items = items.to_vec();
    if items.is_empty() {
        return Value::Array(items);
    }
    let place = rng.below(items.len() as u32) as usize;
    if rng.chance(50) {
        items.remove(place);
    } else {
        let mut again = items[place].clone();
        if let Some(name) = again.get_mut("id") {
            *name = format!("{}-again", name.as_str().unwrap_or("it")).into();
        }
        items.push(again);
    }
    Value::Array(items)
}
