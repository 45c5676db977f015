//! The clearances and the step that a layout is asked for.

use crate::checks::pull_box::request::LayoutQuestion;
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::{Decimal, Length, Measure, Units};
use crate::rulebook::pull::PLACEMENT;

/// The clearances, as figures of the proof, and the step.
pub(super) struct Clearances {
    /// Between the edges of two entries of a wall.
    pub between: Option<Figure>,
    /// Between an edge and the walls beside.
    pub to_wall: Option<Figure>,
    pub step: Decimal,
}

impl Clearances {
    pub fn read(proof: &mut Derivation, question: &LayoutQuestion) -> Self {
        let mut given = |length: Option<Length>, at| {
            length.map(|length| proof.given(&PLACEMENT, length.value(), Measure::Length, Pointer::to(at)))
        };
        let between = given(question.clearance, &"/layout/clearance");
        let to_wall = given(question.wall_clearance, &"/layout/wall_clearance");
        let [inches, millimetres] = proof.rulebook().pull.search.step;
        let default = match proof.units() {
            Units::Us => inches,
            Units::Si => millimetres,
        };
        let step = question.step.map_or(default, |step| step.value());
        Self { between, to_wall, step }
    }

    /// The clearance at both ends of a wall, as summands.
    pub fn at_both_ends(&self) -> impl Iterator<Item = Figure> {
        self.to_wall.into_iter().flat_map(|clearance| [clearance, clearance])
    }
}
