//! What a takeoff takes from an answer about a raceway.

use super::{RacewayFillOutcome, RacewayFillRequest};
use crate::checks::{BillItem, Evaluation, TakeoffFigures, Verdict};

/// The area of what goes in, the area allowed for it, and the raceway that the job needs: the one that was given where it
/// complies, otherwise the smallest of its kind that does. Where several kinds were to be sized nobody said which is meant,
/// and nothing is billed.
pub(super) fn of(
    request: &RacewayFillRequest,
    evaluation: &Evaluation<RacewayFillOutcome>,
) -> TakeoffFigures {
    let RacewayFillOutcome { total_area, fill, fits, .. } = &evaluation.outcome;
    let given = request.raceway.and_then(|raceway| Some((raceway.kind, raceway.trade_size?)));
    let billed = match (evaluation.verdict, given) {
        (Some(Verdict::Complies), Some((kind, trade_size))) => Some(BillItem::Raceway { kind, trade_size }),
        (Some(Verdict::NotDetermined), _) => Some(BillItem::Open),
        _ => match (request.raceway, fits.as_slice()) {
            (Some(given), fits) => fits.iter().find(|fit| fit.kind == given.kind),
            (None, [only]) => Some(only),
            (None, _) => None,
        }
        .map(|fit| match fit.trade_size {
            Some(trade_size) => BillItem::Raceway { kind: fit.kind, trade_size },
            None => BillItem::Open,
        }),
    };
    TakeoffFigures {
        required: Some(*total_area),
        available: fill.as_ref().map(|fill| fill.allowed_area),
        billed,
    }
}

#[cfg(test)]
mod tests {
    use super::super::RacewayFill;
    use super::*;
    use crate::checks::{Check, evaluate};
    use crate::json;
    use serde_json::{Value, json};

    fn billed(raceway: Value, kinds: Value) -> Option<BillItem> {
        let mut request =
            json!({"kinds": kinds, "conductors": [{"insulation": "THHN", "size": "12 AWG", "count": 12}]});
        if !raceway.is_null() {
            request["raceway"] = raceway;
        }
        let request = json::read_value(request).unwrap();
        RacewayFill::takeoff_figures(&request, &evaluate::<RacewayFill>(&request)).billed
    }

    /// Twelve 12 AWG THHN: 12 × 0.0133 = 0.1596 in². EMT 1/2 may hold 0.122, 3/4 0.213.
    #[test]
    fn a_raceway_that_falls_short_is_replaced_by_the_smallest_of_its_kind() {
        let text = |billed: Option<BillItem>| match billed {
            Some(BillItem::Raceway { kind, trade_size }) => format!("{kind} {trade_size}"),
            other => format!("{other:?}"),
        };
        let none = || json!([]);
        assert_eq!(text(billed(json!({"kind": "EMT", "trade_size": "1"}), none())), "EMT 1");
        assert_eq!(text(billed(json!({"kind": "EMT", "trade_size": "1/2"}), none())), "EMT 3/4");
        assert_eq!(text(billed(json!({"kind": "EMT"}), none())), "EMT 3/4");
        assert_eq!(text(billed(Value::Null, json!(["EMT"]))), "EMT 3/4");
        assert_eq!(billed(Value::Null, none()), None);
    }
}
