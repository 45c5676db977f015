//! Listed boxes and conduit bodies that are smaller than the rules require, with what their makers marked on them.

use super::conductor_group::ConductorGroup;
use crate::checks::raceway_fill::sizing::{Load, insulated};
use crate::checks::{Faults, Finding, Status};
use crate::derivation::{Derivation, Figure, Pattern, Pointer, Relation, StepId};
use crate::quantity::Count;
use crate::rulebook::pull::MARKED;
use crate::rulebook::reading::MarkedSize;
use crate::trade::{ConductorSize, Insulation};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The permanent marking of a listed box or conduit body: the number and size of conductors that it may hold.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Marking {
    /// Whether it is listed.
    pub listed: bool,
    /// The most conductors of that size.
    pub count: Count<1000>,
    /// The largest size.
    pub size: ConductorSize,
    /// The insulation that the marking names; XHHW where it names none.
    pub insulation: Option<Insulation>,
    /// All conductors that are in it.
    #[schema(min_items = 1, max_items = 50)]
    pub conductors: Vec<ConductorGroup>,
}

/// The most groups of conductors.
const MOST_GROUPS: usize = 50;

const CONDUCTORS: Pattern = &"/marked/conductors/#";
const COVERS: &str = "finding-mark-covers";
const EXCEEDED: &str = "finding-mark-exceeded";

impl Marking {
    /// What is wrong with it.
    pub fn faults(&self, faults: &mut Faults) {
        let at = Pointer::to(&"/marked/conductors");
        faults.at_most(at, self.conductors.len(), MOST_GROUPS);
        if self.conductors.is_empty() {
            faults.add(at, crate::checks::FaultCode::MissingMember, "fault-empty-list");
        }
    }

    /// Whether it covers what the box holds, with a finding that says so; `None` where the tables lack a cross-section.
    pub fn covers(&self, proof: &mut Derivation, findings: &mut Vec<Finding>) -> Option<bool> {
        let at = Pointer::to(&"/marked");
        let mut report = |covered: Option<bool>, status, message, step: Option<StepId>| {
            let mut finding = Finding::new(&MARKED, status, message).at(at);
            if message == EXCEEDED {
                let count = self.count.get().to_string();
                finding = finding.with("count", count.as_str()).with("size", self.size.name());
            }
            finding.step = step;
            findings.push(finding);
            covered
        };
        if !self.listed {
            let step = proof.does_not_apply(&MARKED, "not-listed", Some(at.member(&"/listed")));
            return report(Some(false), Status::Advisory, "finding-mark-not-listed", Some(step));
        }
        let within = self.conductors.iter().all(|group| group.size <= self.size);
        let counts: Vec<Figure> = self
            .conductors
            .iter()
            .enumerate()
            .map(|(index, group)| {
                proof.count(&MARKED, group.count.map(Count::get), Pointer::of(CONDUCTORS, index))
            })
            .collect();
        let number = proof.sum(&MARKED, &counts);
        let most = proof.count(&MARKED, Some(self.count.get()), at);
        let (few, step) = proof.compare(&MARKED, number, Relation::AtMost, most);
        if few && within {
            return report(Some(true), Status::Satisfied, COVERS, Some(step));
        }
        if !within && proof.reading::<MarkedSize>() == MarkedSize::LargestConductor {
            return report(Some(false), Status::Advisory, EXCEEDED, None);
        }
        let Some((held, allowed)) = self.areas(proof, most) else {
            return report(None, Status::NotDetermined, "finding-mark-open", None);
        };
        let (covered, step) = proof.compare(&MARKED, held, Relation::AtMost, allowed);
        if covered {
            report(Some(true), Status::Satisfied, COVERS, Some(step))
        } else {
            report(Some(false), Status::Advisory, EXCEEDED, Some(step))
        }
    }

    /// The cross-section of all that it holds, and of all that it is marked for.
    fn areas(&self, proof: &mut Derivation, most: Figure) -> Option<(Figure, Figure)> {
        let default = |_: &mut Derivation| Insulation::Xhhw;
        let mut held = Vec::with_capacity(self.conductors.len());
        for (index, group) in self.conductors.iter().enumerate() {
            held.push(group.occupant(proof, Pointer::of(CONDUCTORS, index), default)?);
        }
        let held = Load::of(proof, &held)?.total;
        let insulation = (self.insulation.unwrap_or(Insulation::Xhhw), None);
        let marked = insulated(proof, insulation, self.size, most, Some(Pointer::to(&"/marked/size")))?;
        Some((held, proof.product(&MARKED, marked.count, marked.each, None)))
    }
}
