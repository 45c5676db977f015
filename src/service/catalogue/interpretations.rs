//! The disputed points: where a rule is read in more than one way.

use crate::i18n::Catalogue;
use crate::rulebook::reading::{Point, Standing};
use serde::Serialize;
use utoipa::ToSchema;

/// Every point where inspectors and authors read a rule in more than one way.
#[derive(Debug, Serialize, ToSchema)]
pub struct Interpretations {
    /// The points.
    points: Vec<PointView>,
}

/// A disputed point.
#[derive(Debug, Serialize, ToSchema)]
pub struct PointView {
    /// The point, as `interpretations` of a request names it.
    #[schema(value_type = String, example = "molded_clamps")]
    point: &'static str,
    /// The rule that is read in several ways; its words are at `/v1/rules/{rule}`.
    #[schema(value_type = String, example = "outlet-fill.clamps")]
    rule: &'static str,
    /// What is disputed, in a sentence.
    question: &'static str,
    /// The reading that is followed unless a request chooses another.
    #[schema(value_type = String, example = "counted")]
    default: &'static str,
    /// Whether the default decides where nobody chose a reading.
    standing: Standing,
    /// Every reading, the default first.
    #[schema(value_type = Vec<String>, example = json!(["counted", "not_counted"]))]
    readings: &'static [&'static str],
}

/// The document.
pub fn all(messages: &'static Catalogue) -> Interpretations {
    let view = |point: &Point| PointView {
        point: point.name(),
        rule: point.rule().id,
        question: messages.fixed(point.question()),
        default: point.readings().first().copied().unwrap_or_default(),
        standing: point.standing(),
        readings: point.readings(),
    };
    Interpretations { points: Point::ALL.iter().map(view).collect() }
}
