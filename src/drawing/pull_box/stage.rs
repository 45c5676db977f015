//! One box as it is drawn: how long its sides are, where its entries stand, and how it is known.

use super::facts::{Amount, Facts};
use super::spread::{self, AIRY, Spread};
use crate::checks::pull_box::{
    Axis, AxisSize, Entry, EntryDistanceOf, EntryPlace, PullBoxLayout, PullKind, PullKindOf, SectionSize,
    Wall,
};
use crate::derivation::{Figure, Pointer};
use crate::drawing::sheet::approximate;
use crate::quantity::Decimal;
use rustc_hash::FxHashMap;

/// Which box of a section is drawn.
#[derive(Clone, Copy)]
pub(super) enum Which<'a> {
    /// The given one.
    Given,
    /// The smallest in which every entry has a place.
    LaidOut(&'a PullBoxLayout),
    /// The least that the rules ask.
    Least,
}

/// One side of the box.
#[derive(Clone, Copy)]
pub(super) struct Side {
    pub axis: Axis,
    /// How long it is drawn.
    pub drawn: f64,
    /// What it is in the given or the laid-out box.
    pub figure: Option<Figure>,
    /// The least that the rules ask.
    pub minimum: Option<Figure>,
    /// What the given box lacks.
    pub missing: Option<Amount>,
    /// Whether it is drawn as long as it is only so that the entries have room.
    pub assumed: bool,
}

/// An entry in its place.
pub(super) struct Standing<'a> {
    pub entry: &'a Entry,
    pub diameter: Option<Amount>,
    pub radius: f64,
    /// How far along each of the two directions of its wall.
    pub centre: [f64; 2],
    /// The figures of that, where the place is known.
    pub measures: Option<[(Axis, Amount); 2]>,
    pub misplaced: bool,
}

/// A pull between two entries, by their places in the stage.
pub(super) struct Joined {
    pub ends: [usize; 2],
    pub kind: PullKind,
    pub sized_by_length: bool,
    /// The place of the pull in the request.
    pub pull: usize,
}

/// Two entries that must stand apart, by their places in the stage.
pub(super) struct Apart {
    pub ends: [usize; 2],
    pub rule: &'static str,
    pub required: Figure,
    /// How far apart they are, where both places are known.
    pub measured: Option<Figure>,
}

impl Apart {
    pub fn is_short(&self) -> bool {
        self.measured.is_some_and(|measured| measured.value < self.required.value)
    }
}

/// One box to be drawn.
pub(super) struct Stage<'a> {
    pub size: &'a SectionSize,
    pub which: Which<'a>,
    pub width: Side,
    pub height: Side,
    pub depth: Side,
    pub entries: Vec<Standing<'a>>,
    pub joined: Vec<Joined>,
    pub apart: Vec<Apart>,
}

/// The boxes of a section: the given one and the laid-out one, or else the least.
pub(super) fn stages<'a>(facts: &Facts<'a>, size: &'a SectionSize) -> Vec<Stage<'a>> {
    let mut boxes = Vec::with_capacity(2);
    if size.width.given.is_some() {
        boxes.push(Which::Given);
    }
    boxes.extend(size.layout.as_ref().map(Which::LaidOut));
    if boxes.is_empty() {
        boxes.push(Which::Least);
    }
    boxes.into_iter().map(|which| Stage::of(facts, size, which)).collect()
}

/// What is asked along a direction.
pub(super) const fn asked(size: &SectionSize, axis: Axis) -> &AxisSize {
    match axis {
        Axis::Width => &size.width,
        Axis::Height => &size.height,
        Axis::Depth => &size.depth,
    }
}

impl<'a> Stage<'a> {
    fn of(facts: &Facts<'a>, size: &'a SectionSize, which: Which<'a>) -> Self {
        let mut entries = standing(facts, size, which);
        let sides = |axis| side(size, axis, which);
        let [mut width, mut height, mut depth] = [Axis::Width, Axis::Height, Axis::Depth].map(sides);
        for side in [&mut width, &mut height, &mut depth] {
            lengthen(side, spread::needed(&entries, side.axis));
        }
        let longest = width.drawn.max(height.drawn);
        for side in [&mut width, &mut height].into_iter().filter(|side| side.assumed) {
            // a box that is drawn flat only because nothing is asked of its height would mislead
            side.drawn = side.drawn.max(longest / 2.0);
        }
        let joined = joined(facts, size, &entries);
        let spread = Spread { width: width.drawn, height: height.drawn, depth: depth.drawn };
        spread.place(&mut entries, &joined);
        let apart = apart(size, which, &entries);
        Self { size, which, width, height, depth, entries, joined, apart }
    }

    pub const fn side(&self, axis: Axis) -> &Side {
        match axis {
            Axis::Width => &self.width,
            Axis::Height => &self.height,
            Axis::Depth => &self.depth,
        }
    }

    /// Whether the side walls are shown: where entries are in them, or something is known of the depth.
    pub fn shows_walls(&self) -> bool {
        let in_walls = self.entries.iter().any(|standing| standing.entry.wall != Wall::Back);
        in_walls || self.depth.figure.is_some() || self.depth.minimum.is_some()
    }

    /// The entries of a wall, by their places.
    pub fn on(&self, wall: Wall) -> impl Iterator<Item = (usize, &Standing<'a>)> {
        self.entries.iter().enumerate().filter(move |(_, standing)| standing.entry.wall == wall)
    }
}

fn side(size: &SectionSize, axis: Axis, which: Which<'_>) -> Side {
    let of_axis = asked(size, axis);
    let minimum = of_axis.minimum;
    let figure = match which {
        Which::Given => of_axis.given,
        Which::LaidOut(layout) => Some(layout.side(axis)),
        Which::Least => None,
    };
    let margin =
        of_axis.margin.filter(|margin| matches!(which, Which::Given) && margin.value < Decimal::ZERO);
    let missing = margin.map(|margin| Amount(margin.value.negated(), margin.unit));
    let drawn = figure.or(minimum).map_or(0.0, |figure| approximate(figure.value));
    Side { axis, drawn, figure, minimum, missing, assumed: false }
}

/// Gives a side of which too little is known the length that its entries need.
fn lengthen(side: &mut Side, needed: f64) {
    if side.figure.is_none() && side.drawn < needed {
        side.assumed = true;
        side.drawn = needed * AIRY;
    }
    if side.drawn <= 0.0 {
        side.assumed = true;
        side.drawn = 1.0;
    }
}

/// The entries of a section, with their places where those are known.
fn standing<'a>(facts: &Facts<'a>, size: &SectionSize, which: Which<'a>) -> Vec<Standing<'a>> {
    let of_section = |entry: &Entry| entry.section.as_ref().map(|name| name.as_str()) == size.id.as_deref();
    let entries = facts.request.entries.iter().enumerate().filter(|(_, entry)| of_section(entry));
    let places: FxHashMap<&str, &EntryPlace> = match which {
        Which::LaidOut(layout) => layout.places.iter().map(|place| (place.entry.as_str(), place)).collect(),
        Which::Given | Which::Least => FxHashMap::default(),
    };
    let mut standing: Vec<Standing<'a>> = entries
        .map(|(index, entry)| {
            let measure = |axis: Axis| {
                let amount = match which {
                    Which::LaidOut(_) => places.get(entry.id.as_str())?.along(axis).map(Amount::of),
                    Which::Given | Which::Least => facts.at(position(index, axis)),
                };
                Some((axis, amount?))
            };
            let [along, across] = entry.wall.plane();
            let measures = measure(along).zip(measure(across)).map(|(along, across)| [along, across]);
            let diameter = facts.diameter(entry, index);
            Standing {
                entry,
                diameter,
                radius: diameter.map_or(0.0, Amount::approximate) / 2.0,
                centre: measures
                    .map_or([0.0; 2], |measures| measures.map(|(_, amount)| amount.approximate())),
                measures,
                misplaced: matches!(which, Which::Given) && facts.is_misplaced(index),
            }
        })
        .collect();
    // one whose size could not be established is drawn like the smallest of the others
    let least =
        standing.iter().map(|known| known.radius).filter(|radius| *radius > 0.0).fold(f64::MAX, f64::min);
    let least = if least < f64::MAX { least } else { 1.0 };
    for unknown in standing.iter_mut().filter(|standing| standing.diameter.is_none()) {
        unknown.radius = least;
    }
    standing
}

fn position(index: usize, axis: Axis) -> Pointer {
    let at = Pointer::of(&"/entries/#", index);
    at.member(match axis {
        Axis::Width => &"/position/from_left",
        Axis::Height => &"/position/from_bottom",
        Axis::Depth => &"/position/from_back",
    })
}

/// The places of entries by their ids.
fn by_id<'s>(entries: &'s [Standing<'_>]) -> FxHashMap<&'s str, usize> {
    entries.iter().enumerate().map(|(place, standing)| (standing.entry.id.as_str(), place)).collect()
}

/// The entries of a section that must stand apart; in a laid-out box as far apart as they are there.
fn apart(size: &SectionSize, which: Which<'_>, entries: &[Standing<'_>]) -> Vec<Apart> {
    let places = by_id(entries);
    let place = |id: &String| places.get(id.as_str()).copied();
    let of_pair = |(number, told): (usize, &EntryDistanceOf)| {
        let [first, other] = &told.entries;
        let measured = match which {
            Which::LaidOut(layout) => layout.distances.get(number).map(|placed| placed.measured),
            Which::Given | Which::Least => told.measured,
        };
        let ends = [place(first)?, place(other)?];
        Some(Apart { ends, rule: told.rule, required: told.required, measured })
    };
    size.distances.iter().enumerate().filter_map(of_pair).collect()
}

/// The pulls between entries of the section.
fn joined(facts: &Facts<'_>, size: &SectionSize, entries: &[Standing<'_>]) -> Vec<Joined> {
    let places = by_id(entries);
    let place = |id: &String| places.get(id.as_str()).copied();
    let of_pull = |told: &PullKindOf| {
        let [first, other] = &told.entries;
        Some(Joined {
            ends: [place(first)?, place(other)?],
            kind: told.kind,
            sized_by_length: told.sized_by_length,
            pull: facts.pull(told.at)?,
        })
    };
    size.pulls.iter().filter_map(of_pull).collect()
}
