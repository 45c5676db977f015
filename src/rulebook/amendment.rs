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
    /// The most that it may become, in inches and their powers.
    pub most_us: Decimal,
    /// The most that it may become, in millimetres and their powers.
    pub most_si: Decimal,
}

const fn number(figure: &'static str, most: i32) -> Amendable {
    Amendable { figure, least: Decimal::ZERO, most_us: Decimal::whole(most), most_si: Decimal::whole(most) }
}

const fn size(figure: &'static str, most_us: i32, most_si: i32) -> Amendable {
    Amendable {
        figure,
        least: Decimal::ZERO,
        most_us: Decimal::whole(most_us),
        most_si: Decimal::whole(most_si),
    }
}

/// Every figure that can be amended.
pub static AMENDABLE: [Amendable; 36] = [
    number("conduit-body.area.multiple", 10),
    size("free-conductor.length", 36, 900),
    size("free-conductor.outside", 36, 900),
    size("free-conductor.small-opening", 48, 1200),
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

/// A figure as amended, in the units of the request that amends it.
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
