//! Flexible metal conduit of trade size 3/8, plain or liquidtight: what it takes is counted by Table 348.22, not by area.

use super::request::{FittingPlace, RacewayConductor, RacewayFillRequest, RacewayGiven, Wires};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::rulebook::raceway_fill::THREE_EIGHTHS;
use crate::rulebook::reading::FmcThreeEighths;
use crate::tables::flexible_three_eighths;
use crate::trade::{ConductorSize, Insulation, RacewayKind, TradeSize};

/// Whether a raceway is counted by the table.
pub(super) fn is_counted(kind: RacewayKind, size: TradeSize) -> bool {
    matches!(kind, RacewayKind::Fmc | RacewayKind::Lfmc) && size.name() == "3/8"
}

/// Whether the table decides, and not the percentages of other raceways: of plain flexible metal conduit the code's sentence lets both be
/// read.
pub(super) fn follows_table(proof: &mut Derivation, kind: RacewayKind) -> bool {
    kind != RacewayKind::Fmc || proof.reading::<FmcThreeEighths>() == FmcThreeEighths::Table
}

/// How many conductors are to be judged: those of the table, apart from one equipment grounding conductor of the same size.
struct Count {
    insulation: Insulation,
    size: ConductorSize,
    conductors: u32,
    /// Whether one grounding conductor was left out of the count; `None` where nobody says what the conductors are.
    grounding: Option<bool>,
    at: Pointer,
}

/// What the table comes to.
pub(super) struct Counted {
    pub finding: Finding,
    /// The most conductors, and how many of the same are there, apart from one equipment grounding conductor; `None` where that is open.
    pub numbers: Option<(Figure, Figure)>,
}

/// Judges the count. Liquidtight conduit is counted with its fittings outside.
pub(super) fn judge(proof: &mut Derivation, request: &RacewayFillRequest, raceway: RacewayGiven) -> Counted {
    let at = Pointer::to(&"/raceway");
    let open = |message, supply| {
        let finding = Finding::new(&THREE_EIGHTHS, Status::NotDetermined, message);
        Counted { finding: finding.at(at).supply(supply), numbers: None }
    };
    let found = counted(request)
        .and_then(|count| Some((flexible_three_eighths::of(count.insulation, count.size)?, count)));
    let Some(([inside, outside], count)) = found else {
        return open("finding-not-in-three-eighths-table", Pointer::to(&"/conductors"));
    };
    for (index, conductor) in request.conductors.iter().enumerate() {
        if let Some(grounding) = conductor.equipment_grounding {
            let at = Pointer::of(&"/conductors/#", index).member(&"/equipment_grounding");
            proof.fact(&THREE_EIGHTHS, grounding, at);
        }
    }
    let number = proof.count(&THREE_EIGHTHS, Some(count.conductors), count.at);
    let fits = |cell, proof: &mut Derivation| {
        let most = proof.lookup(&THREE_EIGHTHS, cell, Some(count.at));
        (most, proof.compare(&THREE_EIGHTHS, number, Relation::AtMost, most).1)
    };
    let place =
        if raceway.kind == RacewayKind::Lfmc { Some(FittingPlace::Outside) } else { raceway.fittings };
    let fittings_at = Pointer::to(&"/raceway/fittings");
    if let Some(said) = raceway.fittings {
        let says = if said == FittingPlace::Inside { "inside" } else { "outside" };
        proof.word(&THREE_EIGHTHS, says, fittings_at);
    }
    let mut surely = None;
    let (most, step) = match place {
        Some(FittingPlace::Inside) => fits(inside, proof),
        Some(FittingPlace::Outside) => fits(outside, proof),
        None => {
            let ((fewest, within), (most, without)) = (fits(inside, proof), fits(outside, proof));
            match proof.whatever(&THREE_EIGHTHS, fittings_at, &["inside", "outside"], &[within, without]) {
                Some((_, step)) => {
                    surely = Some(fewest);
                    (most, step)
                }
                None => return open("finding-fittings-not-said", fittings_at),
            }
        }
    };
    let fits = proof.holds(step);
    if !fits
        && count.grounding.is_none()
        && number.value.billionths() - most.value.billionths() <= 1_000_000_000
    {
        return open("finding-grounding-not-said", count.at.member(&"/equipment_grounding"));
    }
    let (status, message) = match fits {
        true => (Status::Satisfied, "finding-three-eighths-within"),
        false => (Status::Violated, "finding-three-eighths-over"),
    };
    let finding = Finding::new(&THREE_EIGHTHS, status, message).with("number", number).with("most", most);
    Counted { finding: finding.at(at).step(step), numbers: Some((surely.unwrap_or(most), number)) }
}

/// What the table can count: insulated conductors of one type and size, and no more than one bare conductor, of that size.
fn counted(request: &RacewayFillRequest) -> Option<Count> {
    let RacewayFillRequest { conductors, bare_conductors, cables, measured_conductors, .. } = request;
    let first = conductors.first().filter(|_| cables.is_empty() && measured_conductors.is_empty())?;
    let alike = |one: &RacewayConductor| {
        (one.insulation, one.size, one.compact) == (first.insulation, first.size, false)
    };
    let of = |count: Option<Wires>| count.map_or(1, Wires::get);
    let bare: u32 = bare_conductors.iter().map(|one| of(one.count)).sum();
    let bare_is_grounding = bare == 1 && bare_conductors.iter().all(|one| one.size == first.size);
    if !conductors.iter().all(alike) || !(bare == 0 || bare_is_grounding) {
        return None;
    }
    let number: u32 = conductors.iter().map(|one| of(one.count)).sum();
    let claimed = conductors.iter().any(|one| one.equipment_grounding == Some(true));
    let is_unsaid = conductors.iter().any(|one| one.equipment_grounding.is_none());
    let grounding = if bare_is_grounding || claimed { Some(true) } else { (!is_unsaid).then_some(false) };
    let at = conductors.iter().position(|one| one.equipment_grounding.is_none()).unwrap_or(0);
    Some(Count {
        insulation: first.insulation,
        size: first.size,
        conductors: number - u32::from(claimed && !bare_is_grounding),
        grounding,
        at: Pointer::of(&"/conductors/#", at),
    })
}
