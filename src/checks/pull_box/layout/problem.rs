//! The constraint problem of a layout: variables, which are lengths, and constraints between them.
//!
//! Lengths are whole numbers of billionths of the unit, so that nothing is rounded. Each entry has two variables, its
//! centre along the two directions of its wall; entries of one row share the variable that positions the row.

use crate::checks::pulls::distances::MinDistance;
use crate::checks::pulls::{Axis, Wall};

/// One entry to be placed.
#[derive(Clone, Copy, Debug)]
pub(super) struct Placeable {
    pub wall: Wall,
    /// The row of its wall; `None` on the back, where it may be anywhere.
    pub row: Option<u32>,
    /// From the centre to the edge that distances between entries are measured from.
    pub radius: i64,
    /// From the centre to the edge of its hole, which is not less.
    pub hole: i64,
}

/// The least distance between two entries, named by their positions, the lesser first.
#[derive(Clone, Copy, Debug)]
pub(super) struct Pair {
    pub ends: [usize; 2],
    pub required: i64,
}

impl Pair {
    pub fn of(distance: &MinDistance) -> Self {
        Self { ends: distance.ends, required: distance.required.value.billionths() }
    }
}

/// What is kept free around entries, and how distances are measured.
#[derive(Clone, Copy, Debug)]
pub(super) struct Spacing {
    /// Between the edges of two entries of a wall.
    pub between: i64,
    /// Between an edge and the walls beside.
    pub to_wall: i64,
    /// Whether distances run between centres, not edges.
    pub centres: bool,
}

/// A length to be found: how far along a direction an entry or a row is.
#[derive(Clone, Copy, Debug)]
pub(super) struct Variable {
    pub axis: Axis,
    /// How near to either end it may come.
    pub margin: i64,
}

/// One of the lengths, at right angles to one another, that lie between two entries. Each is reduced by `less`.
#[derive(Clone, Copy, Debug)]
pub(super) enum Gap {
    /// From the wall at which the direction begins.
    FromOrigin { variable: usize, less: i64 },
    /// From the wall at which it ends.
    FromEnd { variable: usize, less: i64 },
    /// Between two variables.
    Between { one: usize, other: usize, less: i64 },
}

/// The straight-line distance over some gaps is at least so much.
#[derive(Clone, Debug)]
pub(super) struct Distance {
    pub gaps: Vec<Gap>,
    pub at_least: i64,
}

/// Two variables along one direction differ by at least so much.
#[derive(Clone, Copy, Debug)]
pub(super) struct Separation {
    pub one: usize,
    pub other: usize,
    pub by: i64,
    /// Whether the first must be the lesser. It breaks the symmetry of entries that can be exchanged.
    pub in_order: bool,
}

/// The variables and constraints of a layout.
#[derive(Clone, Debug, Default)]
pub(super) struct Problem {
    pub variables: Vec<Variable>,
    pub separations: Vec<Separation>,
    pub distances: Vec<Distance>,
    /// The two variables of each entry, in the order of the directions of its wall.
    pub of_entry: Vec<[usize; 2]>,
}

/// A row, the variable that positions it, and the widest hole of its entries so far.
struct RowVariable {
    wall: Wall,
    number: u32,
    variable: usize,
    hole: i64,
}

impl Problem {
    /// States the problem.
    pub fn new(entries: &[Placeable], pairs: &[Pair], spacing: Spacing) -> Self {
        let mut problem = Self::default();
        let mut rows: Vec<RowVariable> = Vec::new();
        for entry in entries {
            let [along, across] = entry.wall.plane();
            let margin = entry.hole.saturating_add(spacing.to_wall);
            let own = problem.variable(along, margin);
            let other = match entry.row {
                None => problem.variable(across, margin),
                Some(number) => problem.row(&mut rows, entry, number, margin),
            };
            problem.of_entry.push([own, other]);
        }
        problem.separate_rows(&rows, spacing);
        problem.separate_from_rows(entries, &rows, spacing);
        problem.separate_entries(entries, pairs, spacing);
        problem
    }

    fn variable(&mut self, axis: Axis, margin: i64) -> usize {
        self.variables.push(Variable { axis, margin });
        self.variables.len() - 1
    }

    /// The variable that positions the row of an entry, made when the row is first met.
    fn row(&mut self, rows: &mut Vec<RowVariable>, entry: &Placeable, number: u32, margin: i64) -> usize {
        let Placeable { wall, hole, .. } = *entry;
        if let Some(row) = rows.iter_mut().find(|row| row.wall == wall && row.number == number) {
            row.hole = row.hole.max(hole);
            if let Some(variable) = self.variables.get_mut(row.variable) {
                variable.margin = variable.margin.max(margin);
            }
            return row.variable;
        }
        let [_, across] = wall.plane();
        let variable = self.variable(across, margin);
        rows.push(RowVariable { wall, number, variable, hole });
        variable
    }

    /// Rows of a wall lie beside one another, clear of one another.
    fn separate_rows(&mut self, rows: &[RowVariable], spacing: Spacing) {
        for (index, one) in rows.iter().enumerate() {
            for other in rows.iter().skip(index + 1).filter(|other| other.wall == one.wall) {
                let by = one.hole + other.hole + spacing.between;
                self.separate(one.variable, other.variable, by, false);
            }
        }
    }

    /// An entry without a row stays off the lines that it could stand on with entries of the rows of its wall, in either direction:
    /// there it could be taken to be in one row with them.
    fn separate_from_rows(&mut self, entries: &[Placeable], rows: &[RowVariable], spacing: Spacing) {
        for (index, entry) in entries.iter().enumerate().filter(|(_, entry)| entry.row.is_none()) {
            let Some([along, across]) = self.of_entry.get(index).copied() else { continue };
            for row in rows.iter().filter(|row| row.wall == entry.wall) {
                self.separate(across, row.variable, entry.hole + row.hole + spacing.between, false);
            }
            for (place, other) in entries.iter().enumerate() {
                if let (true, Some(_), Some([there, _])) =
                    (other.wall == entry.wall, other.row, self.of_entry.get(place).copied())
                {
                    self.separate(along, there, entry.hole + other.hole + spacing.between, false);
                }
            }
        }
    }

    fn separate(&mut self, one: usize, other: usize, by: i64, in_order: bool) {
        self.separations.push(Separation { one, other, by, in_order });
    }

    fn separate_entries(&mut self, entries: &[Placeable], pairs: &[Pair], spacing: Spacing) {
        for (first, one) in entries.iter().enumerate() {
            for (second, other) in entries.iter().enumerate().skip(first + 1) {
                let pair = pairs.iter().find(|pair| pair.ends == [first, second]);
                let (Some([a, b]), Some([c, d])) =
                    (self.of_entry.get(first).copied(), self.of_entry.get(second).copied())
                else {
                    continue;
                };
                if one.wall != other.wall {
                    if let Some(pair) = pair {
                        self.across_walls((one, [a, b]), (other, [c, d]), pair.required, spacing);
                    }
                    continue;
                }
                let edges = one.radius + other.radius;
                let clear = one.hole + other.hole + spacing.between;
                let required = pair.map_or(0, |pair| pair.required + if spacing.centres { 0 } else { edges });
                if b == d {
                    let in_order = exchangeable(entries, pairs, first, second);
                    self.separate(a, c, clear.max(required), in_order);
                } else if required > 0 || one.row.is_none() || other.row.is_none() {
                    let gaps = vec![
                        Gap::Between { one: a, other: c, less: 0 },
                        Gap::Between { one: b, other: d, less: 0 },
                    ];
                    self.distances.push(Distance { gaps, at_least: clear.max(required) });
                }
            }
        }
    }

    /// The distance between entries of different walls. Between opposite walls the box itself keeps it: the bounds make it
    /// as long as that.
    fn across_walls(
        &mut self,
        (one, [a, b]): (&Placeable, [usize; 2]),
        (other, [c, d]): (&Placeable, [usize; 2]),
        required: i64,
        spacing: Spacing,
    ) {
        if one.wall.opposite() == Some(other.wall) {
            return;
        }
        let axis = |variable: usize| self.variables.get(variable).map(|known| known.axis);
        let along = |[first, second]: [usize; 2], wanted: Axis| {
            if axis(first) == Some(wanted) { first } else { second }
        };
        let less = |radius: i64| if spacing.centres { 0 } else { radius };
        let from = |wall: Wall, variable: usize, radius: i64| match wall.is_origin() {
            true => Gap::FromOrigin { variable, less: less(radius) },
            false => Gap::FromEnd { variable, less: less(radius) },
        };
        let (from_one, from_other) = (one.wall.across(), other.wall.across());
        let shared = Axis::ALL.into_iter().find(|axis| *axis != from_one && *axis != from_other);
        let mut gaps = vec![
            from(one.wall, along([c, d], from_one), other.radius),
            from(other.wall, along([a, b], from_other), one.radius),
        ];
        if let Some(shared) = shared {
            let (one_at, other_at) = (along([a, b], shared), along([c, d], shared));
            gaps.push(Gap::Between { one: one_at, other: other_at, less: less(one.radius + other.radius) });
        }
        self.distances.push(Distance { gaps, at_least: required });
    }
}

/// Whether two entries of one row can be exchanged, with their partners, and leave the problem as it was: they are of one
/// size, and neither has a least distance to anything, or both to one partner each of one size in one row.
fn exchangeable(entries: &[Placeable], pairs: &[Pair], first: usize, second: usize) -> bool {
    let partners = |of: usize| -> Vec<(usize, i64)> {
        pairs
            .iter()
            .filter_map(|pair| match pair.ends {
                [one, other] | [other, one] if one == of => Some((other, pair.required)),
                _ => None,
            })
            .collect()
    };
    let row = |index: usize| entries.get(index).map(|entry| (entry.wall, entry.row));
    let same = |one: usize, other: usize| match (entries.get(one), entries.get(other)) {
        (Some(first), Some(second)) => {
            (first.radius, first.hole) == (second.radius, second.hole)
                && row(one) == row(other)
                && first.row.is_some()
        }
        _ => false,
    };
    if !same(first, second) {
        return false;
    }
    match (&partners(first)[..], &partners(second)[..]) {
        ([], []) => true,
        ([(one, required)], [(other, also)]) => {
            let single = partners(*one).len() == 1 && partners(*other).len() == 1;
            // a partner in another row, so that only one order of each couple is fixed
            let elsewhere = row(*one) != row(first);
            // the order is fixed on the side of the lesser index only
            required == also && single && elsewhere && same(*one, *other) && first < *one && second < *other
        }
        _ => false,
    }
}
