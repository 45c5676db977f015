//! How a member is read as a statement: `None` where it leaves everything possible.

use super::Says;
use crate::tables::standard_boxes::{Shape, StandardBox};
use crate::trade::{ConductorSize, TradeSize};
use serde_json::Value;

pub(super) fn word(value: &Value) -> Option<Says> {
    value.as_str().map(Says::word)
}

pub(super) fn number(value: &Value) -> Option<Says> {
    value.as_f64().map(Says::number)
}

pub(super) fn conductor_size(value: &Value) -> Option<Says> {
    size_of_conductor(value).map(|size| Says::OneOf(vec![size]))
}

pub(super) fn size_of_conductor(value: &Value) -> Option<String> {
    value.as_str().and_then(ConductorSize::read).map(|size| size.name().to_owned())
}

pub(super) fn trade_size(value: &Value) -> Option<Says> {
    size_of_raceway(value).map(|size| Says::OneOf(vec![size]))
}

pub(super) fn size_of_raceway(value: &Value) -> Option<String> {
    let read = match value {
        Value::String(text) => TradeSize::read(text),
        other => {
            let designator = other.get("metric_designator")?.as_i64()?;
            TradeSize::by_metric_designator(i32::try_from(designator).ok()?)
        }
    };
    read.map(|size| size.name().to_owned())
}

pub(super) fn metal_of_row(_: &Value) -> Option<Says> {
    Some(Says::word("metal"))
}

pub(super) fn metal_or_not(value: &Value) -> Option<Says> {
    Some(Says::word(if value.as_str()? == "nonmetallic" { "nonmetallic" } else { "metal" }))
}

pub(super) fn single_gang(value: &Value) -> Option<Says> {
    value.as_bool()?.then_some(Says::number(1.0))
}

pub(super) fn body_or_box(value: &Value) -> Option<Says> {
    Some(Says::word(if value.as_bool()? { "conduit_body" } else { "box" }))
}

/// Only an octagonal row leaves open what its sides are: the table has round boxes in it too.
pub(super) fn shape_of_row(value: &Value) -> Option<Says> {
    let row = StandardBox::read(value.as_str()?)?;
    (row.shape() != Shape::Octagonal).then(|| Says::word("flat_sided"))
}

pub(super) fn wet_or_not(value: &Value) -> Option<Says> {
    let places: &[&str] = if value.as_bool()? { &["wet"] } else { &["dry", "damp"] };
    Some(Says::OneOf(places.iter().map(|place| (*place).to_owned()).collect()))
}

pub(super) fn none_if_false(value: &Value) -> Option<Says> {
    (!value.as_bool()?).then(|| Says::word("none"))
}

pub(super) fn some_if_any(value: &Value) -> Option<Says> {
    (!value.as_array()?.is_empty()).then(|| Says::word("some"))
}

pub(super) fn some_if_there(value: &Value) -> Option<Says> {
    value.is_object().then(|| Says::word("some"))
}

pub(super) fn some_if_in_floor(value: &Value) -> Option<Says> {
    (value.as_str()? == "floor_receptacle").then(|| Says::word("some"))
}

pub(super) fn none_if_true(value: &Value) -> Option<Says> {
    value.as_bool()?.then(|| Says::word("none"))
}

pub(super) fn row(value: &Value) -> Option<Says> {
    StandardBox::read(value.as_str()?).map(|row| Says::word(row.key()))
}

pub(super) fn some_if_carried(value: &Value) -> Option<Says> {
    (value.as_str()? != "nothing").then(|| Says::word("some"))
}

/// A load that the box carries or has in it.
pub(super) fn some_if_borne_by_box(load: &Value) -> Option<Says> {
    let by_structure = load.get("carried_by_structure") == Some(&Value::Bool(true));
    if by_structure { None } else { some_if_carried(load.get("kind")?) }
}

pub(super) fn listed_or_not(value: &Value) -> Option<Says> {
    Some(Says::word(if value.as_bool()? { "listed" } else { "unlisted" }))
}

pub(super) fn listed_if_true(value: &Value) -> Option<Says> {
    value.as_bool()?.then(|| Says::word("listed"))
}

pub(super) fn some_or_none(value: &Value) -> Option<Says> {
    Some(Says::word(if value.as_array()?.is_empty() { "none" } else { "some" }))
}

pub(super) fn hung(value: &Value) -> Option<Says> {
    Some(Says::word(if value.as_str()? == "ceiling_fan" { "fan" } else { "luminaire" }))
}

pub(super) fn carried(value: &Value) -> Option<Says> {
    Some(Says::word(match value.as_str()? {
        "luminaire" => "luminaire",
        "ceiling_fan" => "fan",
        "floor_receptacle" => "receptacle",
        "nothing" => "nothing",
        _ => return None,
    }))
}

pub(super) fn box_of_row(_: &Value) -> Option<Says> {
    Some(Says::word("box"))
}

/// A place that rain or other water comes to is damp or wet.
pub(super) fn not_dry_if_water(value: &Value) -> Option<Says> {
    const WATER: [&str; 4] = ["rain_snow_sleet", "hosedown", "temporary_submersion", "prolonged_submersion"];
    let mut named = value.as_array()?.iter().filter_map(Value::as_str);
    let places = ["damp", "wet"].map(str::to_owned);
    named.any(|condition| WATER.contains(&condition)).then(|| Says::OneOf(places.into()))
}
