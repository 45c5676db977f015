//! The entries and pulls of one box, section or conduit body, resolved.

use super::entry::ResolvedEntry;
use super::outcome::{LengthRequirement, PullKindOf};
use super::pull::ResolvedPull;
use super::wall::{Axis, Wall};
use crate::derivation::{Figure, Pattern, Pointer};
use crate::rulebook::Rule;

/// Entries, and the pulls between them, which name entries by their positions here.
pub struct Resolved<'a> {
    pub entries: Vec<ResolvedEntry<'a>>,
    pub pulls: Vec<ResolvedPull>,
}

impl Resolved<'_> {
    /// The positions of the entries of a wall.
    pub fn on(&self, wall: Wall) -> Vec<usize> {
        self.where_wall(|of_entry| of_entry == wall)
    }

    /// The positions of the entries whose wall satisfies a condition.
    pub fn where_wall(&self, condition: impl Fn(Wall) -> bool) -> Vec<usize> {
        let entries = self.entries.iter().enumerate();
        entries.filter(|(_, entry)| condition(entry.wall)).map(|(position, _)| position).collect()
    }

    /// The positions, in order and once each, of the ends of some pulls that satisfy a condition.
    pub fn ends(
        &self,
        of: impl Fn(&ResolvedPull) -> bool,
        condition: impl Fn(&ResolvedEntry<'_>) -> bool,
    ) -> Vec<usize> {
        let mut positions: Vec<usize> = self
            .pulls
            .iter()
            .filter(|pull| of(pull))
            .flat_map(|pull| pull.ends)
            .filter(|position| self.entries.get(*position).is_some_and(&condition))
            .collect();
        positions.sort_unstable();
        positions.dedup();
        positions
    }

    /// What entries count as, without those of unknown size.
    pub fn sizes(&self, positions: &[usize]) -> Vec<Figure> {
        positions.iter().filter_map(|position| self.entries.get(*position)?.size).collect()
    }

    /// A member of each of some entries.
    pub fn places(&self, positions: &[usize], member: Pattern) -> Vec<Pointer> {
        positions.iter().filter_map(|position| Some(self.entries.get(*position)?.at.member(member))).collect()
    }

    /// The rows that would settle whether some entries are in one row with others: those that are not said, else those of the
    /// entries.
    pub fn rows_in_question(&self, row: &[usize], others: &[usize]) -> Vec<Pointer> {
        let is_unsaid =
            |position: &usize| self.entries.get(*position).is_some_and(|entry| !entry.row_is_said);
        let mut unsaid: Vec<usize> = row.iter().chain(others).copied().filter(is_unsaid).collect();
        unsaid.sort_unstable();
        unsaid.dedup();
        self.places(if unsaid.is_empty() { row } else { &unsaid }, &"/row")
    }

    /// The id of the entry at a position.
    pub fn id(&self, position: usize) -> String {
        self.entries.get(position).map(|entry| entry.id.to_owned()).unwrap_or_default()
    }

    /// A requirement of which it is not yet known whether it governs.
    pub fn requirement(
        &self,
        rule: &'static Rule,
        (wall, row): (Option<Wall>, Option<u32>),
        length: Figure,
        positions: &[usize],
    ) -> LengthRequirement {
        let entries = positions.iter().map(|position| self.id(*position)).collect();
        let ends = |pull: &&ResolvedPull| (pull.straight || pull.angle) && pull.ends_at_any(positions);
        let mut unsaid: Vec<Pointer> =
            self.pulls.iter().filter(ends).flat_map(|pull| pull.unsaid.iter().copied()).collect();
        unsaid.dedup();
        let (governs, at_least, at_most) = (false, None, None);
        LengthRequirement { rule, wall, row, length, governs, entries, at_least, at_most, unsaid }
    }

    /// What each pull is, for the answer.
    pub fn kinds(&self) -> Vec<PullKindOf> {
        let kind = |pull: &ResolvedPull| PullKindOf {
            at: pull.at(),
            entries: pull.ends.map(|end| self.id(end)),
            kind: pull.kind,
            sized_by_length: pull.large,
        };
        self.pulls.iter().map(kind).collect()
    }
}

/// A length that a rule requires along a direction.
pub type AxisRequirement = (Axis, LengthRequirement);
