//! The figures that a request may amend, and how far.

use crate::quantity::{Decimal, Unit, Units};
use crate::rulebook::amendment::AMENDABLE;
use crate::rulebook::{Edition, Rulebook};
use serde::Serialize;
use utoipa::ToSchema;

/// Every figure that a local amendment may change.
#[derive(Debug, Serialize, ToSchema)]
pub struct Amendments {
    /// The figures.
    figures: Vec<AmendableView>,
}

/// A figure that a local amendment may change, and how far.
#[derive(Debug, Serialize, ToSchema)]
#[schema(as = Amendable)]
pub struct AmendableView {
    /// The name, as `amendments` of a request gives it: the row of the table `rule-figures`.
    #[schema(value_type = String, example = "outlet-fill.wire-connectors.allowances")]
    figure: &'static str,
    /// The rule that states it.
    #[schema(value_type = String, example = "outlet-fill.no-allowance")]
    rule: &'static str,
    /// The unit in `us`; `1` for a plain number.
    unit_us: Unit,
    /// The unit in `si`.
    unit_si: Unit,
    /// The least that it may become, in either system.
    #[schema(value_type = f64, example = 0)]
    least: Decimal,
    /// The most that it may become in `us`.
    #[schema(value_type = f64, example = 10)]
    most_us: Decimal,
    /// The most that it may become in `si`.
    #[schema(value_type = f64, example = 10)]
    most_si: Decimal,
}

/// The document.
pub fn all() -> Amendments {
    let stated = |name: &str| {
        let figures = |edition: Edition| Rulebook::of(edition).figures();
        Edition::ALL.into_iter().flat_map(figures).find(|figure| figure.name == name)
    };
    let view = |amendable: &crate::rulebook::amendment::Amendable| {
        let figure = stated(amendable.figure)?;
        Some(AmendableView {
            figure: figure.name,
            rule: figure.rule.id,
            unit_us: Units::Us.of(figure.measure),
            unit_si: Units::Si.of(figure.measure),
            least: amendable.least,
            most_us: amendable.most_us,
            most_si: amendable.most_si,
        })
    };
    Amendments { figures: AMENDABLE.iter().filter_map(view).collect() }
}
