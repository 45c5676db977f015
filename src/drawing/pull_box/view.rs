//! One box as it is drawn: how long its sides are, where its entries are, and how that is known.

use super::facts::{Amount, Facts};
use super::placement::{self, AIRY, PlacedEntry, PullView};
use crate::checks::pull_box::{
    Axis, Entry, EntryDistanceOf, EntryPlace, PerAxis, PullBoxLayout, PullKindOf, SectionSize, Wall,
};
use crate::derivation::{Figure, Pointer};
use crate::drawing::sheet::approximate;
use crate::quantity::Decimal;
use rustc_hash::FxHashMap;

/// Which box of a section is drawn.
#[derive(Clone, Copy)]
pub(super) enum BoxKind<'a> {
    /// The given one.
    Given,
    /// The smallest in which every entry has a position.
    LaidOut(&'a PullBoxLayout),
    /// The least that the rules require.
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
    /// The least that the rules require.
    pub minimum: Option<Figure>,
    /// What the given box lacks.
    pub missing: Option<Amount>,
    /// Whether it is drawn as long as it is only so that the entries have room.
    pub assumed: bool,
}

/// The least distance between two entries, named by their positions in the view.
pub(super) struct DistanceView {
    pub ends: [usize; 2],
    pub rule: &'static str,
    pub required: Figure,
    /// How far apart they are, where both positions are known.
    pub measured: Option<Figure>,
}

impl DistanceView {
    pub fn is_short(&self) -> bool {
        self.measured.is_some_and(|measured| measured.value < self.required.value)
    }
}

/// One box to be drawn.
pub(super) struct BoxView<'a> {
    pub size: &'a SectionSize,
    pub kind: BoxKind<'a>,
    pub sides: PerAxis<Side>,
    pub entries: Vec<PlacedEntry<'a>>,
    pub pulls: Vec<PullView>,
    pub distances: Vec<DistanceView>,
}

/// The boxes of a section: the given one and the laid-out one, or else the least.
pub(super) fn views<'a>(facts: &Facts<'a>, size: &'a SectionSize) -> Vec<BoxView<'a>> {
    let is_given = Axis::ALL.into_iter().any(|axis| size.side(axis).given.is_some());
    let given = is_given.then_some(BoxKind::Given);
    let laid_out = size.layout.as_ref().map(BoxKind::LaidOut);
    let least = given.is_none() && laid_out.is_none();
    let kinds = given.into_iter().chain(laid_out).chain(least.then_some(BoxKind::Least));
    kinds.map(|kind| BoxView::of(facts, size, kind)).collect()
}

impl<'a> BoxView<'a> {
    fn of(facts: &Facts<'a>, size: &'a SectionSize, kind: BoxKind<'a>) -> Self {
        let mut entries = placed(facts, size, kind);
        let mut sides = PerAxis::new(|axis| {
            let mut side = side(size, axis, kind);
            lengthen(&mut side, placement::needed(&entries, axis));
            side
        });
        let longest = sides.width.drawn.max(sides.height.drawn);
        for side in [&mut sides.width, &mut sides.height].into_iter().filter(|side| side.assumed) {
            // a box that is drawn flat only because nothing is required of its height would mislead
            side.drawn = side.drawn.max(longest / 2.0);
        }
        let pulls = pulls(facts, size, &entries);
        placement::place(&mut entries, &pulls, PerAxis::new(|axis| sides[axis].drawn));
        let distances = distances(size, kind, &entries);
        Self { size, kind, sides, entries, pulls, distances }
    }

    /// Whether the side walls are shown: where entries are in them, or something is known of the depth.
    pub fn shows_walls(&self) -> bool {
        let in_walls = self.entries.iter().any(|placed| placed.entry.wall != Wall::Back);
        in_walls || self.sides.depth.figure.is_some() || self.sides.depth.minimum.is_some()
    }

    /// The id of the entry at a position.
    pub fn id(&self, position: usize) -> &'a str {
        self.entries.get(position).map_or("", |placed| placed.entry.id.as_str())
    }

    /// The entries of a wall, with their positions.
    pub fn on(&self, wall: Wall) -> impl Iterator<Item = (usize, &PlacedEntry<'a>)> {
        self.entries.iter().enumerate().filter(move |(_, placed)| placed.entry.wall == wall)
    }
}

fn side(size: &SectionSize, axis: Axis, kind: BoxKind<'_>) -> Side {
    let of_axis = size.side(axis);
    let minimum = of_axis.minimum;
    let figure = match kind {
        BoxKind::Given => of_axis.given,
        BoxKind::LaidOut(layout) => Some(layout.side(axis)),
        BoxKind::Least => None,
    };
    let margin =
        of_axis.margin.filter(|margin| matches!(kind, BoxKind::Given) && margin.value < Decimal::ZERO);
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

/// The entries of a section, with their positions where those are known.
fn placed<'a>(facts: &Facts<'a>, size: &SectionSize, kind: BoxKind<'a>) -> Vec<PlacedEntry<'a>> {
    let of_section = |entry: &Entry| entry.section.as_ref().map(|name| name.as_str()) == size.id.as_deref();
    let entries = facts.request.entries.iter().enumerate().filter(|(_, entry)| of_section(entry));
    let places: FxHashMap<&str, &EntryPlace> = match kind {
        BoxKind::LaidOut(layout) => layout.places.iter().map(|place| (place.entry.as_str(), place)).collect(),
        BoxKind::Given | BoxKind::Least => FxHashMap::default(),
    };
    let mut placed: Vec<PlacedEntry<'a>> = entries
        .map(|(index, entry)| {
            let measure = |axis: Axis| {
                let amount = match kind {
                    BoxKind::LaidOut(_) => places.get(entry.id.as_str())?.along(axis).map(Amount::of),
                    BoxKind::Given | BoxKind::Least => {
                        let (_, member) = entry.position?.along(axis);
                        facts.at(Pointer::of(&"/entries/#", index).member(member))
                    }
                };
                Some((axis, amount?))
            };
            let [along, across] = entry.wall.plane();
            let measures = measure(along).zip(measure(across)).map(|(along, across)| [along, across]);
            let diameter = facts.diameter(entry, index);
            PlacedEntry {
                entry,
                diameter,
                radius: diameter.map_or(0.0, Amount::approximate) / 2.0,
                centre: measures
                    .map_or([0.0; 2], |measures| measures.map(|(_, amount)| amount.approximate())),
                measures,
                misplaced: matches!(kind, BoxKind::Given) && facts.is_misplaced(index),
            }
        })
        .collect();
    // one whose size could not be established is drawn like the smallest of the others
    let least =
        placed.iter().map(|known| known.radius).filter(|radius| *radius > 0.0).fold(f64::MAX, f64::min);
    let least = if least < f64::MAX { least } else { 1.0 };
    for unknown in placed.iter_mut().filter(|placed| placed.diameter.is_none()) {
        unknown.radius = least;
    }
    placed
}

/// The positions in the view of two entries, by their ids.
struct Positions<'s>(FxHashMap<&'s str, usize>);

impl<'s> Positions<'s> {
    fn of(entries: &'s [PlacedEntry<'_>]) -> Self {
        let ids = entries.iter().map(|placed| placed.entry.id.as_str());
        Self(ids.enumerate().map(|(position, id)| (id, position)).collect())
    }

    fn ends(&self, [first, other]: &[String; 2]) -> Option<[usize; 2]> {
        Some([*self.0.get(first.as_str())?, *self.0.get(other.as_str())?])
    }
}

/// How far apart the entries of a section must be; in a laid-out box with the distances that they have there.
fn distances(size: &SectionSize, kind: BoxKind<'_>, entries: &[PlacedEntry<'_>]) -> Vec<DistanceView> {
    let positions = Positions::of(entries);
    let of_pair = |(number, distance): (usize, &EntryDistanceOf)| {
        let measured = match kind {
            BoxKind::LaidOut(layout) => layout.distances.get(number).map(|placed| placed.measured),
            BoxKind::Given | BoxKind::Least => distance.measured,
        };
        let ends = positions.ends(&distance.entries)?;
        Some(DistanceView { ends, rule: distance.rule, required: distance.required, measured })
    };
    size.distances.iter().enumerate().filter_map(of_pair).collect()
}

/// The pulls between entries of the section.
fn pulls(facts: &Facts<'_>, size: &SectionSize, entries: &[PlacedEntry<'_>]) -> Vec<PullView> {
    let positions = Positions::of(entries);
    let of_pull = |pull: &PullKindOf| {
        let ends = positions.ends(&pull.entries)?;
        let index = facts.pull(pull.at)?;
        let requested = facts.request.pulls.get(index)?;
        let at_ends = ends.into_iter().filter_map(|end| entries.get(end));
        let in_cables = at_ends.filter_map(|placed| placed.entry.cable.as_ref()?.largest());
        Some(PullView {
            ends,
            kind: pull.kind,
            sized_by_length: pull.sized_by_length,
            spliced: requested.spliced,
            largest: requested.largest_conductor.into_iter().chain(in_cables).max(),
            index,
        })
    };
    size.pulls.iter().filter_map(of_pull).collect()
}
