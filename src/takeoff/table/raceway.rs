//! A row about a raceway.

use super::cells::{ambiguous, not_understood, plain, unknown};
use super::{Column, Draft, conductors};
use crate::checks::FaultCode;
use crate::quantity::Measure;
use crate::trade::{RacewayKind, TradeSize};

/// Reads the row.
pub(super) fn read(draft: &mut Draft<'_>) {
    kind(draft);
    if let Some(size) = trade_size(draft) {
        draft.put(Column::TradeSize, "/raceway/trade_size", size.name().into());
    }
    if let Some(length) = draft.cells.measured(Column::Length, Measure::Length, &mut draft.faults) {
        draft.put(Column::Length, "/raceway/length", length);
    }
    if let Some(nipple) = draft.cells.yes_or_no(Column::Nipple, &mut draft.faults) {
        draft.put(Column::Nipple, "/raceway/nipple", nipple.into());
    }
    conductors::in_raceway(draft);
}

/// The kinds that a text could mean: `emt`, `PVC-40`, `schedule 40 PVC`, `rigid`.
fn kinds(given: &str) -> Vec<RacewayKind> {
    let spelled = plain(given);
    let spelled = spelled.replace("schedule", "").replace("sch", "");
    let several: &[RacewayKind] = match spelled.as_str() {
        "40pvc" => &[RacewayKind::Pvc40],
        "80pvc" => &[RacewayKind::Pvc80],
        "rigid" | "rigidmetal" | "grc" => &[RacewayKind::Rmc],
        "pvc" => &[RacewayKind::Pvc40, RacewayKind::Pvc80, RacewayKind::PvcA, RacewayKind::PvcEb],
        "lfnc" => &[RacewayKind::LfncA, RacewayKind::LfncB, RacewayKind::LfncC],
        "flex" => &[RacewayKind::Fmc, RacewayKind::Lfmc, RacewayKind::Ent],
        "liquidtight" => &[RacewayKind::Lfmc, RacewayKind::LfncB],
        _ => return RacewayKind::ALL.iter().copied().filter(|kind| plain(kind.name()) == spelled).collect(),
    };
    several.to_vec()
}

fn kind(draft: &mut Draft<'_>) {
    let Some(given) = draft.cells.get(Column::Raceway) else {
        let needs_kind = [Column::TradeSize, Column::Length, Column::Nipple];
        if needs_kind.iter().any(|column| draft.cells.has(*column)) {
            draft.faults.add(Column::Raceway.pointer(), FaultCode::MissingMember, "fault-table-raceway");
        }
        return;
    };
    match kinds(given).as_slice() {
        [only] => draft.put(Column::Raceway, "/raceway/kind", only.name().into()),
        [] => {
            let accepted = RacewayKind::ALL.iter().map(|kind| kind.name());
            not_understood(&mut draft.faults, Column::Raceway, given, accepted);
        }
        several => {
            let meanings = several.iter().map(|kind| kind.name());
            ambiguous(&mut draft.faults, Column::Raceway, given, meanings);
        }
    }
}

/// A trade size in inches, or a metric designator that says so: `16 mm`, `MD 16`.
fn trade_size(draft: &mut Draft<'_>) -> Option<TradeSize> {
    let given = draft.cells.get(Column::TradeSize)?;
    let spelled = given.to_lowercase();
    let inches =
        spelled.trim_end_matches("inches").trim_end_matches("inch").trim_end_matches("in").trim_end();
    let metric = spelled.strip_suffix("mm").or_else(|| spelled.strip_prefix("md"));
    let size = match metric {
        Some(designator) => designator.trim().parse().ok().and_then(TradeSize::by_metric_designator),
        None if inches.starts_with('.') => TradeSize::read(&format!("0{inches}")),
        None => TradeSize::read(inches),
    };
    if size.is_none() {
        let accepted = TradeSize::all().map(TradeSize::name);
        unknown(&mut draft.faults, Column::TradeSize, FaultCode::UnknownTradeSize, given, accepted);
    }
    size
}
