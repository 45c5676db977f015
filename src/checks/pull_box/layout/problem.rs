//! What a layout must satisfy, as lengths that are to be found and conditions between them.
//!
//! Lengths are whole numbers of billionths of the unit, so that nothing is rounded. Each entry has two of them, its
//! centre along the two directions of its wall; entries of one row share the length that places the row.

use crate::checks::pulls::Axis;
use crate::checks::pulls::Wall;
use crate::checks::pulls::distances::Apart;

/// One entry to be placed.
#[derive(Clone, Copy, Debug)]
pub(super) struct Placeable {
    pub wall: Wall,
    /// The row of its wall; `None` on the back, where it may stand anywhere.
    pub row: Option<u32>,
    pub radius: i64,
}

/// Two entries that must stand apart.
#[derive(Clone, Copy, Debug)]
pub(super) struct Pair {
    pub between: [usize; 2],
    pub required: i64,
}

impl Pair {
    pub fn of(apart: &Apart) -> Self {
        Self { between: apart.between, required: apart.required.value.billionths() }
    }
}

/// The room that is asked around entries.
#[derive(Clone, Copy, Debug)]
pub(super) struct Room {
    /// Between the edges of two entries of a wall.
    pub between: i64,
    /// Between an edge and the walls beside.
    pub to_wall: i64,
    /// Whether distances run between centres, not edges.
    pub centres: bool,
}

/// A length to be found: how far along a direction something is.
#[derive(Clone, Copy, Debug)]
pub(super) struct Variable {
    pub axis: Axis,
    /// How near to either end it may come.
    pub margin: i64,
}

/// One of the lengths, at right angles to one another, that lie between two entries.
#[derive(Clone, Copy, Debug)]
pub(super) enum Gap {
    /// From the wall at which the direction begins, less so much.
    FromOrigin { variable: usize, less: i64 },
    /// From the wall at which it ends.
    FromEnd { variable: usize, less: i64 },
    /// Between two things, less so much.
    Between { one: usize, other: usize, less: i64 },
}

/// A straight-line distance that must be kept.
#[derive(Clone, Debug)]
pub(super) struct Distance {
    pub gaps: Vec<Gap>,
    pub at_least: i64,
}

/// Two lengths along one direction that must differ by so much.
#[derive(Clone, Copy, Debug)]
pub(super) struct Separation {
    pub one: usize,
    pub other: usize,
    pub by: i64,
    /// Whether the first is to be the lesser: of things that can be exchanged, one order is as good as another.
    pub in_order: bool,
}

/// All of it.
#[derive(Clone, Debug, Default)]
pub(super) struct Problem {
    pub variables: Vec<Variable>,
    pub separations: Vec<Separation>,
    pub distances: Vec<Distance>,
    /// The two variables of each entry, in the order of the directions of its wall.
    pub of_entry: Vec<[usize; 2]>,
}

/// A row under construction: its wall and number, the variable that places it, and its widest radius.
struct Line {
    wall: Wall,
    number: u32,
    variable: usize,
    radius: i64,
}

impl Problem {
    /// States the problem.
    pub fn new(entries: &[Placeable], pairs: &[Pair], room: Room) -> Self {
        let mut problem = Self::default();
        let mut lines: Vec<Line> = Vec::new();
        for entry in entries {
            let [along, across] = entry.wall.plane();
            let margin = entry.radius.saturating_add(room.to_wall);
            let own = problem.variable(along, margin);
            let placed = match entry.row {
                None => problem.variable(across, margin),
                Some(number) => problem.line(&mut lines, entry.wall, number, across, entry.radius, room),
            };
            problem.of_entry.push([own, placed]);
        }
        problem.rows_apart(&lines, room);
        problem.entries_apart(entries, pairs, room);
        problem
    }

    fn variable(&mut self, axis: Axis, margin: i64) -> usize {
        self.variables.push(Variable { axis, margin });
        self.variables.len() - 1
    }

    /// The variable that places a row, made when the row is first met.
    fn line(
        &mut self,
        lines: &mut Vec<Line>,
        wall: Wall,
        number: u32,
        across: Axis,
        radius: i64,
        room: Room,
    ) -> usize {
        if let Some(line) = lines.iter_mut().find(|line| line.wall == wall && line.number == number) {
            line.radius = line.radius.max(radius);
            if let Some(variable) = self.variables.get_mut(line.variable) {
                variable.margin = variable.margin.max(radius.saturating_add(room.to_wall));
            }
            return line.variable;
        }
        let variable = self.variable(across, radius.saturating_add(room.to_wall));
        lines.push(Line { wall, number, variable, radius });
        variable
    }

    /// Rows of a wall lie beside one another, clear of one another.
    fn rows_apart(&mut self, lines: &[Line], room: Room) {
        for (place, one) in lines.iter().enumerate() {
            for other in lines.iter().skip(place + 1).filter(|other| other.wall == one.wall) {
                let by = one.radius + other.radius + room.between;
                self.separate(one.variable, other.variable, by, false);
            }
        }
    }

    fn separate(&mut self, one: usize, other: usize, by: i64, in_order: bool) {
        self.separations.push(Separation { one, other, by, in_order });
    }

    fn entries_apart(&mut self, entries: &[Placeable], pairs: &[Pair], room: Room) {
        for (first, one) in entries.iter().enumerate() {
            for (second, other) in entries.iter().enumerate().skip(first + 1) {
                let pair = pairs.iter().find(|pair| pair.between == [first, second]);
                let (Some([a, b]), Some([c, d])) =
                    (self.of_entry.get(first).copied(), self.of_entry.get(second).copied())
                else {
                    continue;
                };
                if one.wall != other.wall {
                    if let Some(pair) = pair {
                        self.across_walls((one, [a, b]), (other, [c, d]), pair.required, room);
                    }
                    continue;
                }
                let edges = one.radius + other.radius;
                let clear = edges + room.between;
                let asked = pair.map_or(0, |pair| pair.required + if room.centres { 0 } else { edges });
                if b == d {
                    let alike = exchangeable(entries, pairs, first, second);
                    self.separate(a, c, clear.max(asked), alike);
                } else if asked > 0 || one.row.is_none() || other.row.is_none() {
                    let gaps = vec![
                        Gap::Between { one: a, other: c, less: 0 },
                        Gap::Between { one: b, other: d, less: 0 },
                    ];
                    self.distances.push(Distance { gaps, at_least: clear.max(asked) });
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
        room: Room,
    ) {
        if one.wall.opposite() == Some(other.wall) {
            return;
        }
        let axis = |variable: usize| self.variables.get(variable).map(|known| known.axis);
        let along = |[first, second]: [usize; 2], wanted: Axis| {
            if axis(first) == Some(wanted) { first } else { second }
        };
        let less = |radius: i64| if room.centres { 0 } else { radius };
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

/// Whether two entries of one row can change places, with their partners, and leave the problem as it was: they are of
/// one size, and neither is asked to stand apart from anything, or both from one partner each of one size in one row.
fn exchangeable(entries: &[Placeable], pairs: &[Pair], first: usize, second: usize) -> bool {
    let partners = |place: usize| -> Vec<(usize, i64)> {
        pairs
            .iter()
            .filter_map(|pair| match pair.between {
                [one, other] if one == place => Some((other, pair.required)),
                [other, one] if one == place => Some((other, pair.required)),
                _ => None,
            })
            .collect()
    };
    let same = |one: usize, other: usize| match (entries.get(one), entries.get(other)) {
        (Some(one), Some(other)) => {
            one.radius == other.radius && one.wall == other.wall && one.row == other.row && one.row.is_some()
        }
        _ => false,
    };
    if !same(first, second) {
        return false;
    }
    match (&partners(first)[..], &partners(second)[..]) {
        ([], []) => true,
        ([(one, asked)], [(other, also)]) => {
            let single = partners(*one).len() == 1 && partners(*other).len() == 1;
            // a partner in another row, so that only one order of each couple is fixed
            let elsewhere = entries.get(*one).map(|entry| (entry.wall, entry.row))
                != entries.get(first).map(|entry| (entry.wall, entry.row));
            // the order is fixed on the side of the lesser place only
            asked == also && single && elsewhere && same(*one, *other) && first < *one && second < *other
        }
        _ => false,
    }
}
