//! Enclosure types: which type numbers serve where an enclosure stands (Table 110.28)?
//!
//! The place is put as rows of the table: what every place has, what the words dry, damp and wet are taken to mean, and the
//! conditions that the request names. A type serves when the table rates it for every row. Hazardous (classified)
//! locations are not answered: Articles 500 to 506 decide there.
//!
//! ```
//! use elbowroom::checks::{enclosure_types::EnclosureTypes, evaluate};
//! let request = elbowroom::json::read(br#"{
//!     "location": "outdoor", "conditions": ["windblown_dust", "corrosive_agents"]
//! }"#).unwrap();
//! let serves = evaluate::<EnclosureTypes>(&request).outcome.serves;
//! let names: Vec<&str> = serves.iter().map(|one| one.name()).collect();
//! assert_eq!(names, ["3X", "3SX", "4X", "6P"]);
//! ```

mod indoors;
mod outcome;
mod request;

pub use outcome::{AskedCondition, EnclosureTypesOutcome, RuledOut, TypeAnswer};
pub use request::*;

use super::inspection::Inspection;
use super::{Caution, Check, FaultCode, Faults, Finding, InScope, Judgement, Retaking, Status, Subject};
use crate::derivation::{Derivation, Pointer, StepId};
use crate::rulebook::digest::Reads;
use crate::rulebook::enclosure_type::{HAZARDOUS, INDOOR_ONLY, MOISTURE, SCOPE, SELECTION};
use crate::rulebook::{Part, Rulebook};
use crate::tables;
use crate::tables::enclosure_types::{
    EnclosureCondition as Condition, EnclosureLocation as Location, EnclosureType, EnclosureWord, rated, row,
    words,
};

const TYPE: Pointer = Pointer::to(&"/enclosure_type");
const KIND_AT: Pointer = Pointer::to(&"/enclosure_kind");
const MOISTURE_AT: Pointer = Pointer::to(&"/moisture");
/// What an indoor place may be.
const PLACES: &[&str] = &["dry", "damp", "wet"];

/// The check of which enclosure types serve.
#[derive(Clone, Copy, Debug)]
pub struct EnclosureTypes;

impl Check for EnclosureTypes {
    const NAME: &'static str = "enclosure_types";
    const PATH: &'static str = "/v1/enclosure-types/select";
    type Request = EnclosureTypesRequest;
    type Outcome = EnclosureTypesOutcome;
    const SUBJECTS: &'static [Subject<EnclosureTypesRequest>] = &SUBJECTS;

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(
            &[Part::EnclosureType],
            &[tables::enclosure_types::TABLE, tables::enclosure_types::WORDS_TABLE],
        );
        &READS
    }

    fn faults(request: &EnclosureTypesRequest, faults: &mut Faults) {
        faults.at_most(Pointer::to(&"/conditions"), request.conditions.len(), MOST_ITEMS);
        faults.at_most(Pointer::to(&"/also_marked"), request.also_marked.len(), EnclosureType::ALL.len());
        if let Some(marked) = request.marked_indoor_only.filter(|_| !indoors::has_4x(request)) {
            faults
                .add(indoors::INDOOR_ONLY_AT, FaultCode::Conflict, "fault-indoor-only-without-4x")
                .arguments = vec![("given", marked.to_string())];
        }
        let has_row = |condition: &Condition| row(request.location, *condition).is_some();
        for (index, condition) in request.conditions.iter().enumerate() {
            if !has_row(condition) {
                let at = Pointer::of(&"/conditions/#", index);
                let location = Pointer::to(&"/location");
                let fault = faults.contradiction(at, location, "fault-condition-not-at-location");
                fault.arguments = vec![
                    ("condition", condition.name().to_owned()),
                    ("location", request.location.name().to_owned()),
                ];
                let known = Condition::ALL.iter().filter(|condition| has_row(condition));
                fault.accepted = known.map(|condition| condition.name().to_owned()).collect();
            }
        }
    }

    fn retake(outcome: &mut EnclosureTypesOutcome, retaking: &Retaking<'_>) {
        retaking.rows(&mut outcome.requirements);
    }

    fn judge(rulebook: &Rulebook, request: &EnclosureTypesRequest) -> Judgement<EnclosureTypesOutcome> {
        let mut inspection = Inspection::new(Derivation::new(rulebook, request.units));
        if request.hazardous == Some(true) {
            return hazardous(inspection);
        }
        ordinary(request, &mut inspection);
        match request.enclosure_kind {
            Some(EnclosureKind::Box) => return of_box(request, inspection),
            Some(EnclosureKind::Equipment) => {
                inspection.proof.word(&SCOPE, "equipment", KIND_AT);
            }
            None => {}
        }
        let conditions = asked(request, &mut inspection);
        if let Some(given) = request.enclosure_type {
            inspection.proof.word(&SELECTION, given.name(), TYPE);
        }
        let mut outcome = EnclosureTypesOutcome { conditions, ..EnclosureTypesOutcome::default() };
        let mark = mark(request, &outcome.conditions);
        moisture_unsaid(request, mark.map(|(mark, _)| mark), &mut inspection);
        for enclosure in EnclosureType::ALL {
            let judged = mark.is_some_and(|(mark, _)| mark == *enclosure);
            match answer(&mut inspection, *enclosure, judged, &outcome.conditions) {
                Some(answer) => {
                    outcome.serves.extend(answer.serves.then_some(*enclosure));
                    outcome.types.push(answer);
                }
                None => outcome.not_rated.push(*enclosure),
            }
        }
        if let Some((mark, at)) = mark.filter(|(mark, _)| outcome.not_rated.contains(mark)) {
            let status = without_a_column(request);
            let message = match status {
                Status::Violated => "finding-indoor-type-outdoors",
                _ => "finding-type-not-in-table",
            };
            let step = inspection.proof.word(&SELECTION, mark.name(), at);
            let mut finding = Finding::new(&SELECTION, status, message).with("type", mark.name());
            // outdoors, what it stands would settle it
            if status == Status::NotDetermined
                && request.location == Location::Outdoor
                && request.moisture.is_none()
            {
                finding = finding.supply(MOISTURE_AT);
            }
            inspection.findings.push(finding.at(at).step(step));
        }
        indoors::judge(request, rulebook, &mut inspection);
        tell(&outcome.serves, &mut inspection);
        if request.enclosure_kind.is_none() {
            leave_kind_open(&mut inspection);
        }
        let (findings, requirements, proof) = inspection.close();
        outcome.requirements = requirements;
        Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged: mark.is_some() }
    }
}

/// A type that stands somewhere, or the hazards of the place.
static SUBJECTS: [Subject<EnclosureTypesRequest>; 1] = [Subject {
    name: "type",
    is_described: |request| is_marked(request) || request.hazardous == Some(true),
    scope: &[
        InScope::always(&HAZARDOUS),
        InScope::always(&SELECTION),
        InScope::when(
            |request| request.location == Location::Indoor && request.hazardous != Some(true),
            &MOISTURE,
        ),
        InScope::when(|_| false, &INDOOR_ONLY),
    ],
}];

fn is_marked(request: &EnclosureTypesRequest) -> bool {
    request.enclosure_type.is_some() || !request.also_marked.is_empty()
}

/// The mark that an enclosure is judged by: any one that serves is enough, so the best of them, with its place.
fn mark(request: &EnclosureTypesRequest, conditions: &[AskedCondition]) -> Option<(EnclosureType, Pointer)> {
    let others = request.also_marked.iter().enumerate();
    let others = others.map(|(index, mark)| (*mark, Pointer::of(&"/also_marked/#", index)));
    let marks = request.enclosure_type.map(|mark| (mark, TYPE)).into_iter().chain(others);
    let worth = |(mark, _): &(EnclosureType, Pointer)| {
        let cells: Option<Vec<_>> = conditions.iter().map(|asked| rated(asked.row, *mark)).collect();
        match cells {
            Some(cells) if cells.iter().all(|cell| cell.holds) => Status::Satisfied,
            Some(_) => Status::Violated,
            None => without_a_column(request),
        }
    };
    // of equals the last is taken, so the list is turned around
    let marks: Vec<_> = marks.collect();
    marks.into_iter().rev().max_by_key(worth)
}

/// What a type comes to that the table does not have for the place: a type for indoors fails outdoors as soon as something
/// is named that it would have to stand there, and the table says nothing of the others.
fn without_a_column(request: &EnclosureTypesRequest) -> Status {
    let stands_something = matches!(request.moisture, Some(PlaceMoisture::Damp | PlaceMoisture::Wet))
        || request.conditions.iter().any(|condition| *condition != Condition::IncidentalContact);
    match request.location {
        Location::Outdoor if stands_something => Status::Violated,
        Location::Outdoor | Location::Indoor => Status::NotDetermined,
    }
}

/// Whether the place is an ordinary one must be known before the table decides for a type.
fn ordinary(request: &EnclosureTypesRequest, inspection: &mut Inspection) {
    let at = Pointer::to(&"/hazardous");
    if request.hazardous.is_some() {
        inspection.proof.does_not_apply(&HAZARDOUS, "ordinary-location", Some(at));
    } else if is_marked(request) {
        let finding = Finding::new(&HAZARDOUS, Status::NotDetermined, "finding-hazardous-open");
        inspection.findings.push(finding.at(at).supply(at));
    }
}

/// A hazardous (classified) location: no type is named, whatever else was said.
fn hazardous(mut inspection: Inspection) -> Judgement<EnclosureTypesOutcome> {
    let at = Pointer::to(&"/hazardous");
    inspection.proof.fact(&HAZARDOUS, true, at);
    inspection.proof.does_not_apply(&SELECTION, "hazardous-location", Some(at));
    inspection.findings.push(
        Finding::new(&HAZARDOUS, Status::NotDetermined, "finding-enclosure-in-hazardous-location").at(at),
    );
    let Inspection { proof, findings, .. } = inspection;
    let outcome = EnclosureTypesOutcome::default();
    let cautions = vec![Caution::HazardousLocation];
    Judgement { outcome, findings, proof, cautions, is_judged: true }
}

/// A box, which the table does not judge.
fn of_box(request: &EnclosureTypesRequest, mut inspection: Inspection) -> Judgement<EnclosureTypesOutcome> {
    inspection.proof.word(&SCOPE, "box", KIND_AT);
    for rule in [&SELECTION, &MOISTURE] {
        inspection.proof.does_not_apply(rule, "box-not-in-table", Some(KIND_AT));
    }
    inspection.advise(&SCOPE, "finding-box-not-in-table", KIND_AT);
    let Inspection { proof, findings, .. } = inspection;
    let outcome = EnclosureTypesOutcome::default();
    Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged: is_marked(request) }
}

/// A type that fails does so only where the enclosure is one that the table judges.
fn leave_kind_open(inspection: &mut Inspection) {
    for finding in inspection.findings.iter_mut().filter(|finding| finding.status == Status::Violated) {
        finding.status = Status::NotDetermined;
        finding.supply.push(KIND_AT);
    }
    for row in inspection.requirements.iter_mut().filter(|row| row.status == Status::Violated) {
        row.status = Status::NotDetermined;
    }
}

/// What an enclosure must stand: each row of the table once, with the input that brings it in first.
fn asked(request: &EnclosureTypesRequest, inspection: &mut Inspection) -> Vec<AskedCondition> {
    let location = Pointer::to(&"/location");
    let everywhere = match request.location {
        Location::Indoor => Condition::FallingDirt,
        Location::Outdoor => Condition::RainSnowSleet,
    };
    let named = request.conditions.iter().copied().enumerate();
    let all = [(Condition::IncidentalContact, location), (everywhere, location)]
        .into_iter()
        .chain(by_moisture(request, inspection))
        .chain(named.map(|(index, condition)| (condition, Pointer::of(&"/conditions/#", index))));
    let mut asked: Vec<AskedCondition> = Vec::new();
    for (condition, at) in all {
        let known = asked.iter().any(|earlier| earlier.condition == condition);
        if let (Some(row), false) = (row(request.location, condition), known) {
            asked.push(AskedCondition { condition, row, at });
        }
    }
    asked
}

/// What the words dry, damp and wet bring in. Outdoors every type stands the weather, whatever the word.
fn by_moisture(request: &EnclosureTypesRequest, inspection: &mut Inspection) -> Option<(Condition, Pointer)> {
    let condition = match (request.location, request.moisture) {
        (Location::Outdoor, Some(moisture @ (PlaceMoisture::Damp | PlaceMoisture::Wet))) => {
            let says = if moisture == PlaceMoisture::Wet { "wet" } else { "damp" };
            inspection.proof.word(&SELECTION, says, MOISTURE_AT);
            Condition::RainSnowSleet
        }
        (Location::Indoor, Some(PlaceMoisture::Damp)) => {
            inspection.proof.word(&MOISTURE, "damp", MOISTURE_AT);
            Condition::FallingLiquids
        }
        (Location::Indoor, Some(PlaceMoisture::Wet)) => {
            inspection.proof.word(&MOISTURE, "wet", MOISTURE_AT);
            Condition::Hosedown
        }
        (Location::Indoor, Some(PlaceMoisture::Dry)) => {
            inspection.proof.word(&MOISTURE, "dry", MOISTURE_AT);
            return None;
        }
        (Location::Outdoor, Some(PlaceMoisture::Dry) | None) => return None,
        (Location::Indoor, None) => return None,
    };
    if request.location == Location::Indoor {
        let row_name = row(request.location, condition).unwrap_or_default();
        let finding = Finding::new(&MOISTURE, Status::Advisory, "finding-moisture-taken-as");
        inspection.findings.push(finding.with("row", row_name).at(MOISTURE_AT));
    }
    Some((condition, MOISTURE_AT))
}

/// Indoors the word for how wet the place is decides what water an enclosure must stand: unless the conditions name the water, or
/// the type stands it in a wet place too.
fn moisture_unsaid(
    request: &EnclosureTypesRequest,
    mark: Option<EnclosureType>,
    inspection: &mut Inspection,
) {
    if request.location != Location::Indoor || request.moisture.is_some() {
        return;
    }
    // as much water as a wet place has: the word can then add nothing
    let is_water = |condition: &Condition| {
        use Condition::{Hosedown, ProlongedSubmersion, TemporarySubmersion};
        matches!(condition, Hosedown | TemporarySubmersion | ProlongedSubmersion)
    };
    if let Some(index) = request.conditions.iter().position(is_water) {
        let at = Pointer::of(&"/conditions/#", index);
        inspection.proof.does_not_apply(&MOISTURE, "water-named", Some(at));
        return;
    }
    let places = [Condition::FallingDirt, Condition::FallingLiquids, Condition::Hosedown];
    let cells: Option<Vec<_>> = mark.and_then(|mark| {
        places.iter().map(|condition| rated(row(Location::Indoor, *condition)?, mark)).collect()
    });
    if let Some(cells) = cells.filter(|cells| cells.iter().all(|cell| cell.holds)) {
        let steps: Vec<StepId> =
            cells.into_iter().map(|cell| inspection.proof.affirm(&MOISTURE, cell, None)).collect();
        if let Some((_, step)) = inspection.proof.whatever(&MOISTURE, MOISTURE_AT, PLACES, &steps) {
            let finding = Finding::new(&MOISTURE, Status::Satisfied, "finding-place-moisture-no-matter");
            inspection.findings.push(finding.at(MOISTURE_AT).step(step));
            return;
        }
    }
    let finding = Finding::new(&MOISTURE, Status::NotDetermined, "finding-place-moisture-open");
    inspection.findings.push(finding.at(MOISTURE_AT).supply(MOISTURE_AT));
}

/// What the table says of one type; `None` where it does not have the type for the location.
fn answer(
    inspection: &mut Inspection,
    enclosure: EnclosureType,
    given: bool,
    conditions: &[AskedCondition],
) -> Option<TypeAnswer> {
    let cells: Option<Vec<_>> = conditions.iter().map(|asked| rated(asked.row, enclosure)).collect();
    let mut steps: Vec<StepId> = Vec::with_capacity(conditions.len());
    let mut ruled_out_by = Vec::new();
    for (asked, cell) in conditions.iter().zip(cells?) {
        let step = if given {
            inspection.affirm(&SELECTION, cell, asked.at, "finding-type-rated", "finding-type-not-rated").1
        } else {
            inspection.proof.affirm(&SELECTION, cell, Some(asked.at))
        };
        if !cell.holds {
            ruled_out_by.push(RuledOut { condition: asked.condition, step });
        }
        steps.push(step);
    }
    let is_read = inspection.proof.rulebook().enclosure_words.water_types_dusttight;
    let (words, unread_words) =
        words(enclosure).partition(|word| is_read || !is_of_water_type(*word, enclosure));
    let serves = ruled_out_by.is_empty();
    let step = inspection.proof.every(&SELECTION, &steps);
    Some(TypeAnswer { enclosure_type: enclosure, serves, ruled_out_by, words, unread_words, step })
}

/// Whether the word is dusttight, and the type one of those that stand hosedown or submersion.
const fn is_of_water_type(word: EnclosureWord, enclosure: EnclosureType) -> bool {
    use EnclosureType::{Type4, Type4X, Type6, Type6P};
    matches!(word, EnclosureWord::Dusttight) && matches!(enclosure, Type4 | Type4X | Type6 | Type6P)
}

/// Which types serve, in a sentence, and what no type number speaks of.
fn tell(serves: &[EnclosureType], inspection: &mut Inspection) {
    let names: Vec<&str> = serves.iter().map(|one| one.name()).collect();
    let message = if serves.is_empty() { "finding-no-type-serves" } else { "finding-types-that-serve" };
    let advice = Finding::new(&SELECTION, Status::Advisory, message).with("types", names.join(", ").as_str());
    inspection.findings.push(advice.at(Pointer::to(&"/location")));
    for message in ["finding-enclosure-scope", "finding-enclosure-inside"] {
        inspection.findings.push(Finding::new(&SCOPE, Status::Advisory, message));
    }
}
