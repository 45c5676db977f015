//! Local amendments: a jurisdiction states another figure than the code does.
//!
//! A rulebook keeps the figures that it was amended in, and every step that states one takes the amended value and says
//! so. Only the figures listed here can be amended, each between its own bounds.

use super::RuleFigure;
use crate::quantity::{Decimal, Units};

/// A figure that a local amendment may change, and how far.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Amendable {
    /// The name of the figure.
    pub figure: &'static str,
    /// The least that it may become, in either system of units.
    pub least: Decimal,
    /// The most that it may become, in inches and their powers, or pounds.
    pub most_us: Decimal,
    /// The most that it may become, in millimetres and their powers, or kilograms.
    pub most_si: Decimal,
}

const fn number(figure: &'static str, most: i32) -> Amendable {
    size(figure, most, most)
}

const fn size(figure: &'static str, most_us: i32, most_si: i32) -> Amendable {
    let (most_us, most_si) = (Decimal::whole(most_us), Decimal::whole(most_si));
    Amendable { figure, least: Decimal::ZERO, most_us, most_si }
}

/// Every figure that can be amended.
pub static AMENDABLE: [Amendable; 105] = [
    size("box-access.handhole-cover.over", 1000, 500),
    size("box-access.opening.diameter", 48, 1200),
    size("box-access.opening.long-side", 48, 1200),
    size("box-access.opening.off-center", 48, 1200),
    size("box-access.opening.short-side", 48, 1200),
    size("box-access.opening.small-up-to", 10_000, 165_000),
    size("box-construction.cover-lining", 1, 25),
    size("box-construction.large-sheet-steel", 1, 25),
    size("box-construction.malleable-or-die-cast", 1, 25),
    size("box-construction.other-cast", 1, 25),
    size("box-construction.sheet-steel", 1, 25),
    size("box-construction.small-up-to", 10_000, 165_000),
    size("box-depth.12-or-10-awg", 12, 300),
    size("box-depth.12-or-10-awg.behind", 12, 300),
    size("box-depth.12-or-10-awg.over", 12, 300),
    size("box-depth.8-to-4-awg", 12, 300),
    size("box-depth.large-equipment.behind", 12, 300),
    size("box-depth.large-equipment.over", 12, 300),
    size("box-depth.over-4-awg-in-pull-box.over", 10_000, 165_000),
    size("box-depth.plain", 12, 300),
    size("box-depth.rear-center-entry.behind", 12, 300),
    size("box-depth.up-to-14-awg", 12, 300),
    size("box-entry.sheath", 12, 300),
    size("box-entry.single-gang.fastened-within", 120, 3000),
    size("box-protection.cover-screws", 12, 300),
    size("box-protection.drain-openings.least", 12, 300),
    size("box-protection.drain-openings.most", 12, 300),
    size("box-protection.fasteners-through-cover", 12, 300),
    size("box-protection.fasteners-through-wall", 12, 300),
    size("box-protection.fasteners-through-wall.large-over", 10_000, 165_000),
    size("box-protection.fasteners-through-wall.near-corner", 12, 300),
    size("box-protection.fasteners-through-wall.near-within", 12, 300),
    size("box-support.brace.metal-thickness", 1, 25),
    size("box-support.brace.wood-thickness", 12, 300),
    size("box-support.brace.wood-width", 12, 300),
    size("box-support.ceiling.volume", 10_000, 165_000),
    size("box-support.fasteners.distance", 12, 300),
    number("box-support.loaded-raceways.conduits", 20),
    size("box-support.loaded-raceways.secured", 120, 3000),
    size("box-support.loaded-raceways.volume", 10_000, 165_000),
    size("box-support.luminaire-on-conduit.before-support", 120, 3000),
    size("box-support.luminaire-on-conduit.beyond-support", 120, 3000),
    size("box-support.luminaire-on-conduit.extent", 120, 3000),
    size("box-support.luminaire-on-conduit.height", 600, 15_000),
    size("box-support.luminaire-on-conduit.horizontal", 600, 15_000),
    size("box-support.luminaire-on-conduit.nipple", 120, 3000),
    size("box-support.luminaire-on-conduit.support-spacing", 120, 3000),
    size("box-support.luminaire-on-conduit.weight", 1000, 500),
    number("box-support.raceways.conduits", 20),
    size("box-support.raceways.secured", 120, 3000),
    size("box-support.raceways.secured-one-side", 120, 3000),
    size("box-support.raceways.volume", 10_000, 165_000),
    size("box-support.stem.extent", 120, 3000),
    size("box-support.stem.height", 600, 15_000),
    size("box-support.stem.horizontal", 600, 15_000),
    size("box-support.stem.rigid", 120, 3000),
    size("box-surface.canopy-finish", 1500, 1_000_000),
    size("box-surface.gap", 12, 300),
    size("box-surface.setback.combustible", 12, 300),
    size("box-surface.setback.noncombustible", 12, 300),
    number("conduit-body.area.multiple", 10),
    size("fan-outlet.weight", 1000, 500),
    size("fan-outlet.weight-without-mark", 1000, 500),
    size("free-conductor.length", 36, 900),
    size("free-conductor.outside", 36, 900),
    size("free-conductor.small-opening", 48, 1200),
    number("luminaire-outlet.light-equipment.screw-number", 24),
    number("luminaire-outlet.light-equipment.screws", 20),
    size("luminaire-outlet.light-equipment.weight", 1000, 500),
    number("luminaire-outlet.light.screw-number", 24),
    number("luminaire-outlet.light.screws", 20),
    size("luminaire-outlet.light.weight", 1000, 500),
    size("luminaire-outlet.ordinary", 1000, 500),
    number("outlet-fill.canopy.wires", 20),
    number("outlet-fill.clamps.allowances", 10),
    number("outlet-fill.conductors.long-loop", 10),
    number("outlet-fill.conductors.loop-multiple", 10),
    number("outlet-fill.devices.allowances-per-gang", 10),
    number("outlet-fill.grounding.each-beyond", 10),
    number("outlet-fill.grounding.together", 100),
    number("outlet-fill.support-fittings.allowances", 10),
    number("outlet-fill.terminal-blocks.allowances", 10),
    number("outlet-fill.wire-connectors.allowances", 10),
    size("outlet-volume.barrier.metal", 100, 1650),
    size("outlet-volume.barrier.nonmetallic", 100, 1650),
    number("over-1000-volts.angle.nonshielded", 200),
    number("over-1000-volts.angle.shielded", 200),
    number("over-1000-volts.bending-radius.nonshielded", 200),
    number("over-1000-volts.bending-radius.overall", 200),
    number("over-1000-volts.bending-radius.shielded", 200),
    number("over-1000-volts.entry-exit.nonshielded", 200),
    number("over-1000-volts.entry-exit.shielded", 200),
    number("over-1000-volts.straight.nonshielded", 200),
    number("over-1000-volts.straight.shielded", 200),
    number("pull.angle.multiple", 50),
    size("pull.distribution-blocks.volume", 10_000, 165_000),
    number("pull.entry-distance.multiple", 50),
    size("pull.racking.side", 1000, 25_000),
    number("pull.straight.multiple", 50),
    number("pull.straight.others-multiple", 10),
    number("raceway-fill.nipple", 100),
    size("raceway-fill.nipple-length", 48, 1200),
    number("raceway-fill.one", 100),
    number("raceway-fill.over-two", 100),
    number("raceway-fill.two", 100),
];

impl Amendable {
    /// The figure with a name, if it can be amended.
    ///
    /// ```
    /// use elbowroom::rulebook::amendment::Amendable;
    /// assert!(Amendable::find("outlet-fill.devices.allowances-per-gang").is_some());
    /// assert!(Amendable::find("outlet-volume.unit-cube").is_none());
    /// ```
    pub fn find(figure: &str) -> Option<&'static Self> {
        AMENDABLE.iter().find(|amendable| amendable.figure == figure)
    }

    /// The most that it may become in one system.
    pub const fn most(&self, units: Units) -> Decimal {
        match units {
            Units::Us => self.most_us,
            Units::Si => self.most_si,
        }
    }
}

/// A figure as amended, in the units that the request is judged in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Amended {
    /// The name of the figure.
    pub figure: &'static str,
    /// What it becomes.
    pub value: Decimal,
}

/// What a figure is under some amendments, and whether one of them changed it.
pub(super) fn value(figure: &RuleFigure, units: Units, amended: &[Amended]) -> (Decimal, bool) {
    match amended.iter().find(|amended| amended.figure == figure.name) {
        Some(amended) => (amended.value, true),
        None => (figure.value(units), false),
    }
}
