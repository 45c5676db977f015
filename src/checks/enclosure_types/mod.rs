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

mod outcome;
mod request;

pub use outcome::{AskedCondition, EnclosureTypesOutcome, RuledOut, TypeAnswer};
pub use request::*;

use super::inspection::Inspection;
use super::{Caution, Check, FaultCode, Faults, Finding, Judgement, Status, Subject};
use crate::derivation::{Derivation, Pointer, StepId};
use crate::rulebook::digest::Reads;
use crate::rulebook::enclosure_type::{HAZARDOUS, MOISTURE, SCOPE, SELECTION};
use crate::rulebook::{Part, Rulebook};
use crate::tables;
use crate::tables::enclosure_types::{
    EnclosureCondition as Condition, EnclosureLocation as Location, EnclosureType, rated, row, words,
};

const TYPE: Pointer = Pointer::to(&"/enclosure_type");
const MOISTURE_AT: Pointer = Pointer::to(&"/moisture");

/// The check of which enclosure types serve.
#[derive(Clone, Copy, Debug)]
pub struct EnclosureTypes;

impl Check for EnclosureTypes {
    const NAME: &'static str = "enclosure_types";
    const PATH: &'static str = "/v1/enclosure-types/select";
    type Request = EnclosureTypesRequest;
    type Outcome = EnclosureTypesOutcome;
    const SUBJECTS: &'static [Subject<EnclosureTypesRequest>] =
        &[Subject { name: "enclosure_types", is_described: |_| true, scope: &[] }];

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(
            &[Part::EnclosureType],
            &[tables::enclosure_types::TABLE, tables::enclosure_types::WORDS_TABLE],
        );
        &READS
    }

    fn faults(request: &EnclosureTypesRequest, faults: &mut Faults) {
        faults.at_most(Pointer::to(&"/conditions"), request.conditions.len(), MOST_ITEMS);
        let has_row = |condition: &Condition| row(request.location, *condition).is_some();
        for (index, condition) in request.conditions.iter().enumerate() {
            if !has_row(condition) {
                let at = Pointer::of(&"/conditions/#", index);
                let fault = faults.add(at, FaultCode::Conflict, "fault-condition-not-at-location");
                fault.arguments = vec![
                    ("condition", condition.name().to_owned()),
                    ("location", request.location.name().to_owned()),
                ];
                let known = Condition::ALL.iter().filter(|condition| has_row(condition));
                fault.accepted = known.map(|condition| condition.name().to_owned()).collect();
            }
        }
    }

    fn judge(rulebook: &Rulebook, request: &EnclosureTypesRequest) -> Judgement<EnclosureTypesOutcome> {
        let mut inspection = Inspection::new(Derivation::new(rulebook, request.units));
        if request.hazardous {
            return hazardous(inspection);
        }
        let conditions = asked(request, &mut inspection);
        if let Some(given) = request.enclosure_type {
            inspection.proof.word(&SELECTION, given.name(), TYPE);
        }
        let mut outcome = EnclosureTypesOutcome { conditions, ..EnclosureTypesOutcome::default() };
        for enclosure in EnclosureType::ALL {
            let given = request.enclosure_type == Some(*enclosure);
            match answer(&mut inspection, *enclosure, given, &outcome.conditions) {
                Some(answer) => {
                    outcome.serves.extend(answer.serves.then_some(*enclosure));
                    outcome.types.push(answer);
                }
                None => outcome.not_rated.push(*enclosure),
            }
        }
        if let Some(given) = request.enclosure_type.filter(|given| outcome.not_rated.contains(given)) {
            let finding = Finding::new(&SELECTION, Status::NotDetermined, "finding-type-not-in-table");
            inspection.findings.push(finding.with("type", given.name()).at(TYPE));
        }
        tell(&outcome.serves, &mut inspection);
        let Inspection { proof, requirements, findings, .. } = inspection;
        outcome.requirements = requirements;
        Judgement {
            outcome,
            findings,
            proof,
            cautions: Vec::new(),
            is_judged: request.enclosure_type.is_some(),
        }
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
        (Location::Outdoor, Some(PlaceMoisture::Damp | PlaceMoisture::Wet)) => Condition::RainSnowSleet,
        (Location::Indoor, Some(PlaceMoisture::Damp)) => Condition::FallingLiquids,
        (Location::Indoor, Some(PlaceMoisture::Wet)) => Condition::Hosedown,
        (_, Some(PlaceMoisture::Dry)) | (Location::Outdoor, None) => return None,
        (Location::Indoor, None) => {
            let is_water = |condition: &Condition| {
                use Condition::{FallingLiquids, Hosedown, ProlongedSubmersion, TemporarySubmersion};
                matches!(condition, FallingLiquids | Hosedown | TemporarySubmersion | ProlongedSubmersion)
            };
            if !request.conditions.iter().any(is_water) {
                let finding = Finding::new(&MOISTURE, Status::NotDetermined, "finding-place-moisture-open");
                inspection.findings.push(finding.at(MOISTURE_AT).supply(MOISTURE_AT));
            }
            return None;
        }
    };
    if request.location == Location::Indoor {
        let row_name = row(request.location, condition).unwrap_or_default();
        let finding = Finding::new(&MOISTURE, Status::Advisory, "finding-moisture-taken-as");
        inspection.findings.push(finding.with("row", row_name).at(MOISTURE_AT));
    }
    Some((condition, MOISTURE_AT))
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
    let (serves, words) = (ruled_out_by.is_empty(), words(enclosure).collect());
    let step = inspection.proof.every(&SELECTION, &steps);
    Some(TypeAnswer { enclosure_type: enclosure, serves, ruled_out_by, words, step })
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
