//! Whether a given box is as large as the rules require, and whether its entries are where they must be.

use super::SectionSize;
use super::geometry::{Centre, End, Sides, at_most, distance};
use super::holes::Hole;
use super::placing;
use super::room;
use super::section::Section;
use crate::checks::pulls::comparison::{self, Smaller};
use crate::checks::pulls::distances::MinDistance;
use crate::checks::pulls::entry::ResolvedEntry;
use crate::checks::pulls::{Axis, AxisSize, EntryDistanceOf, LengthRequirement, PerAxis};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::pull::{ENTRY_DISTANCE, PLACEMENT};

/// A box of given dimensions with its entries.
pub(super) struct GivenBox {
    pub sides: PerAxis<Option<Figure>>,
    /// All three sides, where they are given.
    pub whole: Option<Sides>,
    pub smaller: Smaller,
    /// Each entry whose edge is known.
    ends: Vec<Option<End>>,
    /// The hole of each entry, where it is known.
    holes: Vec<Option<Hole>>,
}

impl GivenBox {
    /// Reads the dimensions and the positions; `None` where the section has no dimensions.
    pub fn read(
        proof: &mut Derivation,
        section: &Section<'_>,
        entries: &mut [ResolvedEntry<'_>],
        (smaller, holes): (Smaller, &[Option<Hole>]),
    ) -> Option<Self> {
        let inside = section.inside?;
        let sides = PerAxis::new(|axis| {
            let at = section.inside_at.member(axis.member());
            Some(proof.given(&PLACEMENT, inside.side(axis)?.value(), Measure::Length, at))
        });
        let whole = match (sides.width, sides.height, sides.depth) {
            (Some(width), Some(height), Some(depth)) => Some(Sides { width, height, depth }),
            _ => None,
        };
        let centres: Vec<Option<Centre>> = entries.iter().map(|entry| Centre::given(proof, entry)).collect();
        let end = |(entry, centre): (&mut ResolvedEntry<'_>, Option<Centre>)| {
            Some(End { wall: entry.wall, centre, radius: entry.radius(proof)? })
        };
        let ends = entries.iter_mut().zip(centres).map(end).collect();
        Some(Self { sides, whole, smaller, ends, holes: holes.to_vec() })
    }

    fn end(&self, position: usize) -> Option<End> {
        self.ends.get(position).copied().flatten()
    }

    /// Compares everything: each direction, each distance, each position.
    pub fn compare(
        &self,
        proof: &mut Derivation,
        section: &Section<'_>,
        entries: &[ResolvedEntry<'_>],
        required: &[MinDistance],
        size: &mut SectionSize,
        findings: &mut Vec<Finding>,
    ) {
        for axis in Axis::ALL {
            let place = (axis.name(), section.inside_at.member(axis.member()));
            let smaller = &self.smaller;
            let Some(given) = self.sides[axis] else {
                findings.extend(self.unsaid_side(size.side(axis), place));
                continue;
            };
            findings.extend(comparison::compare_side(
                proof,
                size.side_mut(axis),
                given,
                place,
                smaller,
                |finding, requirement| {
                    finding
                        .with("section", section.id.unwrap_or(""))
                        .with("entries", requirement.entries.join(", ").as_str())
                },
            ));
        }
        findings.extend(room::in_walls(proof, section, &self.sides, entries, (&self.ends, &self.holes)));
        let Some(sides) = &self.whole else {
            let missing = Axis::ALL.into_iter().filter(|axis| self.sides[*axis].is_none());
            let missing = missing.map(|axis| section.inside_at.member(axis.member()));
            findings.extend(self.distances_open(required, missing.collect()));
            return;
        };
        self.compare_distances(proof, sides, entries, required, &mut size.distances, findings);
        placing::compare(proof, sides, entries, (&self.ends, &self.holes), findings);
    }

    /// A direction that was not said: one finding for each rule that requires something of it.
    fn unsaid_side(&self, size: &AxisSize, (axis, at): (&'static str, Pointer)) -> Vec<Finding> {
        let mut findings: Vec<Finding> = Vec::new();
        let Some(required) = size.minimum else { return findings };
        for LengthRequirement { rule, .. } in &size.requirements {
            let is_said = findings.iter().any(|finding| std::ptr::eq(finding.rule, *rule));
            if !is_said && self.smaller.than(rule) != Some(true) {
                let finding = Finding::new(rule, Status::NotDetermined, "finding-box-side-open");
                findings.push(finding.with("axis", axis).with("required", required).supply(at));
            }
        }
        findings
    }

    /// Distances, in a box of which not all is said.
    fn distances_open(&self, required: &[MinDistance], missing: Vec<Pointer>) -> Option<Finding> {
        let open = required.iter().find(|least| self.smaller.than(least.rule) != Some(true))?;
        let mut finding = Finding::new(open.rule, Status::NotDetermined, "finding-distances-without-sides")
            .with("required", open.required)
            .at(open.at);
        finding.supply = missing;
        Some(finding)
    }

    /// Compares the distance of every pair with what is required; where a position is missing, with the most it could be.
    fn compare_distances(
        &self,
        proof: &mut Derivation,
        sides: &Sides,
        entries: &[ResolvedEntry<'_>],
        required: &[MinDistance],
        answered: &mut [EntryDistanceOf],
        findings: &mut Vec<Finding>,
    ) {
        let mut open: Vec<(&MinDistance, &EntryDistanceOf)> = Vec::new();
        let mut enough: Option<Finding> = None;
        for (least, answered) in required.iter().zip(answered) {
            let [Some(first), Some(other)] = least.ends.map(|end| self.end(end)) else { continue };
            let known = first.centre.is_some() && other.centre.is_some();
            let side = sides[first.wall.across()];
            let across = first.wall.opposite() == Some(other.wall) && side.value >= least.required.value;
            let (measured, settled) = match (known, across) {
                (false, true) => (side, true),
                _ => (distance(proof, sides, first, other), known),
            };
            let (holds, mut step) = proof.compare(least.rule, measured, Relation::AtLeast, least.required);
            if known {
                answered.measured = Some(measured);
            }
            let most = if known && !holds { at_most(proof, sides, first, other) } else { None };
            let mut measured = measured;
            let mut messages = match (settled, most.is_some()) {
                (true, false) => ["finding-closer-by-mark", "finding-entries-close"],
                (true, true) => ["finding-never-apart-by-mark", "finding-entries-at-most"],
                (false, _) => ["finding-never-apart-by-mark", "finding-entries-never-apart"],
            };
            let mut unsaid = least.unsaid.to_vec();
            let nearest = measured;
            if let Some(most) = most {
                let is_enough;
                (is_enough, step) = proof.compare(least.rule, most, Relation::AtLeast, least.required);
                measured = most;
                if is_enough {
                    messages[1] = "finding-entries-apart-between";
                    let places = least.ends.iter().filter_map(|end| entries.get(*end));
                    unsaid.extend(places.map(|entry| entry.at.member(&"/position")));
                }
            }
            if holds && settled {
                let new = || Finding::new(least.rule, Status::Satisfied, "finding-entries-apart").step(step);
                enough.get_or_insert_with(new).at.push(least.at);
                continue;
            }
            if holds {
                if self.smaller.than(least.rule) != Some(true) {
                    open.push((least, answered));
                }
                continue;
            }
            findings.push(
                self.smaller
                    .short(least.rule, &unsaid, messages)
                    .with("first", answered.entries[0].as_str())
                    .with("other", answered.entries[1].as_str())
                    .with("measured", measured)
                    .with("least", nearest)
                    .with("required", least.required)
                    .at(least.at)
                    .step(step),
            );
        }
        findings.extend(enough);
        findings.extend(without_positions(entries, &open));
    }
}

/// One finding for all pairs whose distance cannot be told without positions.
fn without_positions(
    entries: &[ResolvedEntry<'_>],
    open: &[(&MinDistance, &EntryDistanceOf)],
) -> Option<Finding> {
    let pairs: Vec<String> = open
        .iter()
        .map(|(least, answered)| {
            let [first, other] = &answered.entries;
            format!("{first}–{other} {} {}", least.required.value, least.required.unit.symbol())
        })
        .collect();
    let (first, _) = open.first()?;
    let mut finding = Finding::new(&ENTRY_DISTANCE, Status::NotDetermined, "finding-positions-missing")
        .with("pairs", pairs.join("; ").as_str());
    finding.rule = first.rule;
    for (least, _) in open {
        finding.at.push(least.at);
        for end in least.ends {
            let Some(entry) = entries.get(end).filter(|entry| entry.position.is_none()) else { continue };
            let at = entry.at.member(&"/position");
            if !finding.supply.contains(&at) {
                finding.supply.push(at);
            }
        }
    }
    Some(finding)
}
