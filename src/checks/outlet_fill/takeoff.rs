//! What a takeoff takes from an answer about an outlet box.

use super::{Enclosure, OutletFillOutcome, OutletFillRequest};
use crate::checks::{BillItem, Evaluation, TakeoffFigures, Verdict};
use crate::quantity::{Decimal, Measure};

/// The volumes of a box without barriers, and the box that the job needs.
pub(super) fn of(request: &OutletFillRequest, evaluation: &Evaluation<OutletFillOutcome>) -> TakeoffFigures {
    let outcome = &evaluation.outcome;
    let (required, available) = match outcome.spaces.as_slice() {
        [whole] => (Some(whole.required), whole.available),
        _ => (None, None),
    };
    let billed = match (evaluation.verdict, &request.enclosure) {
        (Some(Verdict::Complies), Some(enclosure)) => itself(request, enclosure),
        (Some(Verdict::NotDetermined), _) => BillItem::Open,
        // nothing is known to be in it, so no box can be named
        (None, _) if required.is_some_and(|required| required.value == Decimal::ZERO) => BillItem::Open,
        _ => smallest(outcome),
    };
    TakeoffFigures { required, available, billed: Some(billed) }
}

/// A box that complies.
fn itself(request: &OutletFillRequest, enclosure: &Enclosure) -> BillItem {
    if let Some(standard) = enclosure.standard {
        let gangs = enclosure.gangs.filter(|_| standard.shape().is_per_gang());
        return BillItem::StandardBox { standard, gangs: gangs.map_or(1, |gangs| gangs.get()).into() };
    }
    match enclosure.marked_volume {
        Some(mark) => BillItem::MarkedBox {
            material: enclosure.material,
            volume: mark.value(),
            unit: request.units.of(Measure::Volume),
        },
        None => BillItem::Open,
    }
}

/// The smallest standard box that complies: for one that falls short, and for one that was only asked for.
fn smallest(outcome: &OutletFillOutcome) -> BillItem {
    let Some(offer) = &outcome.boxes else { return BillItem::Open };
    let Some(standard) = offer.fits.first().copied() else { return BillItem::Open };
    let gangs = if standard.shape().is_per_gang() { offer.gangs.value } else { Decimal::ONE };
    BillItem::StandardBox { standard, gangs }
}

#[cfg(test)]
mod tests {
    use super::super::OutletFill;
    use super::*;
    use crate::checks::{Check, evaluate};
    use crate::json;
    use serde_json::{Value, json};

    #[test]
    fn a_row_that_says_of_nothing_what_is_in_the_box_names_no_box() {
        let request = json::read_value(json!({"contents": {}})).unwrap();
        let figures = OutletFill::takeoff_figures(&request, &evaluate::<OutletFill>(&request));
        assert_eq!(figures.billed, Some(BillItem::Open));
    }

    fn billed(enclosure: Option<Value>) -> (Option<String>, Option<BillItem>) {
        let mut request = json!({
            "contents": {
                "cables": [{"kind": "NM-B", "size": "12 AWG", "conductors": 2, "grounding": "12 AWG", "count": 2}],
                "devices": [{"kind": "receptacle", "largest_conductor": "12 AWG"}]
            }
        });
        if let Some(enclosure) = enclosure {
            request["enclosure"] = enclosure;
        }
        let request = json::read_value(request).unwrap();
        let takeoff_figures = OutletFill::takeoff_figures(&request, &evaluate::<OutletFill>(&request));
        (takeoff_figures.required.map(|figure| figure.value.to_string()), takeoff_figures.billed)
    }

    fn name(billed: Option<BillItem>) -> String {
        match billed.unwrap() {
            BillItem::StandardBox { standard, gangs } => format!("{} × {gangs}", standard.key()),
            other => format!("{other:?}"),
        }
    }

    /// Four 12 AWG 9.00, a device 4.50, two grounding conductors 2.25: 15.75 in³.
    #[test]
    fn a_box_that_complies_is_billed_and_one_that_does_not_is_replaced_by_the_smallest_that_does() {
        let (required, deep) = billed(Some(json!({"standard": "square-4x2-1/8"})));
        assert_eq!((required.as_deref(), name(deep)), (Some("15.75"), "square-4x2-1/8 × 1".to_owned()));
        // the smallest volume of the table that is at least 15.75 is 18.0, first of its rows square-4x1-1/4
        assert_eq!(name(billed(Some(json!({"standard": "device-3x2x2"}))).1), "square-4x1-1/4 × 1");
        assert_eq!(name(billed(None).1), "square-4x1-1/4 × 1");
        // two gangs of 10.0 comply
        assert_eq!(name(billed(Some(json!({"standard": "device-3x2x2", "gangs": 2}))).1), "device-3x2x2 × 2");
    }

    #[test]
    fn a_marked_box_is_billed_by_its_mark_and_an_unknown_one_is_open() {
        let marked =
            |volume| billed(Some(json!({"material": "nonmetallic", "marked_volume": volume}))).1.unwrap();
        assert!(matches!(marked(20.3), BillItem::MarkedBox { volume, .. } if volume.to_string() == "20.3"));
        assert!(matches!(marked(14.0), BillItem::StandardBox { .. }));
        assert_eq!(billed(Some(json!({"material": "nonmetallic"}))).1, Some(BillItem::Open));
    }
}
