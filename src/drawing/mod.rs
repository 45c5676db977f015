//! Pictures of what was checked, to scale, as SVG.
//!
//! A drawing shows what an evaluation found; it decides nothing. Lengths on it are in the proportion of the figures of the
//! answer, and every figure that is written on it is one of them. What a shade or a colour says, a hatching or a word
//! says too, and so does its description, for those who cannot see it.
//!
//! Places on paper are binary floating point: nothing of the proof depends on them.

mod conduit_body;
mod cross_section;
mod gauge;
mod geometry;
mod head;
mod outlet_fill;
mod packing;
mod pull_box;
mod raceway_fill;
mod sheet;
mod svg;
mod traced;

pub use sheet::style;

use crate::checks::{Check, Evaluation};
use crate::i18n::Catalogue;

/// A check whose answers can be drawn.
pub trait Drawn: Check {
    /// The drawing of a request and what it came to: one SVG document.
    fn draw(request: &Self::Request, evaluation: &Evaluation<Self::Outcome>, messages: &Catalogue) -> String;
}

/// Draws a request under the rulebook that it asks for.
///
/// ```
/// use elbowroom::{checks::outlet_fill::OutletFill, drawing, i18n::Catalogue};
/// let request = elbowroom::json::read(br#"{
///     "contents": {"conductors": [{"size": "12 AWG", "role": "spliced", "count": 4}]}
/// }"#).unwrap();
/// let svg = drawing::draw::<OutletFill>(&request, Catalogue::english());
/// assert!(svg.starts_with("<svg ") && svg.contains("9 in³"));
/// ```
pub fn draw<C: Drawn>(request: &C::Request, messages: &Catalogue) -> String {
    C::draw(request, &crate::checks::evaluate::<C>(request), messages)
}
