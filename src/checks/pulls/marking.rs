//! Listed boxes and conduit bodies that are smaller than the rules require, with what their makers marked on them.

use super::conductor_group::ConductorGroup;
use crate::checks::raceway_fill::sizing::{Load, insulated};
use crate::checks::{Faults, Finding, Status};
use crate::derivation::{Derivation, Figure, Pattern, Pointer, Relation};
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
    /// All conductors that are in it. A conduit body has them in its pulls, and needs none here.
    #[serde(default)]
    #[schema(max_items = 50)]
    pub conductors: Vec<ConductorGroup>,
    /// Whether each raceway holds less than the part of it that Chapter 9 allows: a mark serves below that only. Of a conduit
    /// body it is computed.
    pub raceways_below_full_fill: Option<bool>,
}

/// Conductors that are held, each with its place in the request.
pub type Held<'a> = Vec<(&'a ConductorGroup, Pointer)>;

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
    }

    /// The conductors that it says are in the box, each with its place.
    pub fn said_to_hold(&self) -> Held<'_> {
        self.conductors
            .iter()
            .enumerate()
            .map(|(index, group)| (group, Pointer::of(CONDUCTORS, index)))
            .collect()
    }

    /// Whether it covers what is held, with a finding that says so; `None` where that is not determined. `below_full_fill` is
    /// whether every raceway holds less than Chapter 9 allows, without which a mark does not serve.
    pub fn covers(
        &self,
        proof: &mut Derivation,
        held: &Held<'_>,
        below_full_fill: Option<bool>,
        findings: &mut Vec<Finding>,
    ) -> Option<bool> {
        let at = Pointer::to(&"/marked");
        let (covered, mut finding) = self.by_what_is_marked(proof, held);
        let full = at.member(&"/raceways_below_full_fill");
        if let Some(said) = self.raceways_below_full_fill {
            proof.fact(&MARKED, said, full);
        }
        let covered = match (covered, below_full_fill) {
            (Some(true), Some(false)) => {
                let step = proof.does_not_apply(&MARKED, "at-full-fill", Some(at));
                finding = Finding::new(&MARKED, Status::Advisory, "finding-mark-at-full-fill").step(step);
                Some(false)
            }
            (Some(true), None) => {
                finding = Finding::new(&MARKED, Status::NotDetermined, "finding-mark-fill-open").supply(full);
                None
            }
            (covered, _) => covered,
        };
        findings.push(finding.at(at));
        covered
    }

    fn by_what_is_marked(&self, proof: &mut Derivation, held: &Held<'_>) -> (Option<bool>, Finding) {
        let at = Pointer::to(&"/marked");
        let exceeded = || {
            let count = self.count.get().to_string();
            let finding = Finding::new(&MARKED, Status::Advisory, EXCEEDED);
            finding.with("count", count.as_str()).with("size", self.size.name())
        };
        let covers = |step| Finding::new(&MARKED, Status::Satisfied, COVERS).step(step);
        if !self.listed {
            let step = proof.does_not_apply(&MARKED, "not-listed", Some(at.member(&"/listed")));
            let finding = Finding::new(&MARKED, Status::Advisory, "finding-mark-not-listed");
            return (Some(false), finding.step(step));
        }
        if held.is_empty() {
            let finding = Finding::new(&MARKED, Status::NotDetermined, "finding-mark-without-conductors");
            return (None, finding.supply(at.member(&"/conductors")));
        }
        let within = held.iter().all(|(group, _)| group.size <= self.size);
        let counts: Vec<Figure> =
            held.iter().map(|(group, at)| proof.count(&MARKED, group.count.map(Count::get), *at)).collect();
        let number = proof.sum(&MARKED, &counts);
        let most = proof.count(&MARKED, Some(self.count.get()), at);
        let (few, step) = proof.compare(&MARKED, number, Relation::AtMost, most);
        if few && within {
            return (Some(true), covers(step));
        }
        if !within && proof.reading::<MarkedSize>() == MarkedSize::LargestConductor {
            return (Some(false), exceeded());
        }
        let is_unsaid = |(group, _): &&(&ConductorGroup, Pointer)| group.insulation.is_none() && !group.bare;
        let unsaid: Vec<Pointer> =
            held.iter().filter(is_unsaid).map(|(_, at)| at.member(&"/insulation")).collect();
        if !unsaid.is_empty() {
            let mut finding = Finding::new(&MARKED, Status::NotDetermined, "finding-mark-insulation-open");
            finding.supply = unsaid;
            return (None, finding);
        }
        let Some((area, allowed)) = self.areas(proof, held, most) else {
            return (None, Finding::new(&MARKED, Status::NotDetermined, "finding-mark-open"));
        };
        let (covered, step) = proof.compare(&MARKED, area, Relation::AtMost, allowed);
        (Some(covered), if covered { covers(step) } else { exceeded().step(step) })
    }

    /// The cross-section of all that it holds, and of all that it is marked for.
    fn areas(&self, proof: &mut Derivation, held: &Held<'_>, most: Figure) -> Option<(Figure, Figure)> {
        let default = |_: &mut Derivation| Insulation::Xhhw;
        let mut occupants = Vec::with_capacity(held.len());
        for (group, at) in held {
            occupants.push(group.occupant(proof, *at, default)?);
        }
        let held = Load::of(proof, &occupants)?.total;
        let insulation = (self.insulation.unwrap_or(Insulation::Xhhw), None);
        let marked = insulated(proof, insulation, self.size, most, Some(Pointer::to(&"/marked/size")))?;
        Some((held, proof.product(&MARKED, marked.count, marked.each, None)))
    }
}
