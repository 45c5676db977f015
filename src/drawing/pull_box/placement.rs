//! Placement of what has no position: evenly along its row, and across from what it is pulled to.

use super::facts::Amount;
use crate::checks::pull_box::{Axis, Entry, PerAxis, PullKind, Wall};
use crate::trade::ConductorSize;
use std::collections::BTreeMap;

/// How much more room than their diameters entries are given where they may have it.
pub(super) const AIRY: f64 = 1.5;

/// An entry as it is drawn.
pub(super) struct PlacedEntry<'a> {
    pub entry: &'a Entry,
    pub diameter: Option<Amount>,
    pub radius: f64,
    /// How far along each of the two directions of its wall.
    pub centre: [f64; 2],
    /// The figures of that, where the position is known.
    pub measures: Option<[(Axis, Amount); 2]>,
    pub misplaced: bool,
}

/// A pull between two entries, named by their positions in the view.
pub(super) struct PullView {
    pub ends: [usize; 2],
    pub kind: PullKind,
    pub sized_by_length: bool,
    pub spliced: bool,
    /// The largest conductor that is said of it, or of a cable at its ends.
    pub largest: Option<ConductorSize>,
    /// The index of the pull in the request.
    pub index: usize,
}

/// What the entries of all walls take along a direction, touching one another.
pub(super) fn needed(entries: &[PlacedEntry<'_>], axis: Axis) -> f64 {
    let of_wall = |wall: Wall| {
        let in_line = |rows: &[Vec<usize>]| {
            rows.iter().map(|row| diameters(entries, row).iter().sum()).fold(0.0, f64::max)
        };
        let side_by_side = |rows: &[Vec<usize>]| {
            rows.iter().map(|row| diameters(entries, row).into_iter().fold(0.0, f64::max)).sum::<f64>()
        };
        let [along, across] = wall.plane();
        let rows = rows(entries, wall, None);
        if along == axis {
            in_line(&rows)
        } else if across == axis {
            side_by_side(&rows)
        } else {
            0.0
        }
    };
    Wall::ALL.into_iter().map(of_wall).fold(0.0, f64::max)
}

fn diameters(entries: &[PlacedEntry<'_>], row: &[usize]) -> Vec<f64> {
    row.iter().filter_map(|position| entries.get(*position)).map(|placed| 2.0 * placed.radius).collect()
}

/// The entries of a wall row by row. On the back, those of no row and no position fill lines of some width, or a square.
fn rows(entries: &[PlacedEntry<'_>], wall: Wall, width: Option<f64>) -> Vec<Vec<usize>> {
    let mut declared: BTreeMap<u32, Vec<usize>> = BTreeMap::new();
    let mut open = Vec::new();
    for (position, placed) in entries.iter().enumerate().filter(|(_, placed)| placed.entry.wall == wall) {
        match placed.entry.row.map(|row| row.get()) {
            Some(row) => declared.entry(row).or_default().push(position),
            None if wall == Wall::Back && placed.measures.is_some() => {}
            None if wall == Wall::Back => open.push(position),
            None => declared.entry(1).or_default().push(position),
        }
    }
    let mut rows: Vec<Vec<usize>> = declared.into_values().collect();
    let square = (1..).find(|side| side * side >= open.len()).unwrap_or(1);
    let (mut line, mut filled) = (Vec::new(), 0.0);
    for position in open {
        let diameter = entries.get(position).map_or(0.0, |placed| 2.0 * placed.radius);
        let is_full = width.map_or(line.len() >= square, |width| filled + diameter > width);
        if is_full && !line.is_empty() {
            rows.push(std::mem::take(&mut line));
            filled = 0.0;
        }
        line.push(position);
        filled += diameter;
    }
    rows.extend((!line.is_empty()).then_some(line));
    rows
}

/// Gives every entry that has no position one, in a box of some inside dimensions.
pub(super) fn place(entries: &mut [PlacedEntry<'_>], pulls: &[PullView], inside: PerAxis<f64>) {
    for wall in Wall::ALL {
        fill(entries, wall, inside);
    }
    for [first, other] in [[Wall::Left, Wall::Right], [Wall::Top, Wall::Bottom]] {
        let count = |wall| entries.iter().filter(|placed| placed.entry.wall == wall).count();
        let wall = if count(first) < count(other) { first } else { other };
        face(entries, pulls, wall, inside);
    }
}

/// Spreads the rows of a wall, and the entries of each row.
fn fill(entries: &mut [PlacedEntry<'_>], wall: Wall, inside: PerAxis<f64>) {
    let [along, across] = wall.plane();
    let rows = rows(entries, wall, Some(inside.width));
    let widest: Vec<f64> =
        rows.iter().map(|row| diameters(entries, row).into_iter().fold(0.0, f64::max)).collect();
    let mut lines = even(&widest, inside[across]);
    if wall == Wall::Back {
        // the first row is the upper one
        lines.iter_mut().for_each(|line| *line = inside.height - *line);
    }
    for (number, (row, line)) in rows.iter().zip(lines).enumerate() {
        let known =
            row.iter().filter_map(|position| entries.get(*position)).find(|one| one.measures.is_some());
        let line = known.map_or(line, |known| known.centre[1]);
        let is_open = |position: &usize| entries.get(*position).is_some_and(|one| one.measures.is_none());
        let open: Vec<usize> = row.iter().copied().filter(is_open).collect();
        let length = inside[along];
        let mut free = match known {
            None => staggered(&diameters(entries, row), length, number, rows.len()),
            Some(_) => in_gaps(entries, row, length),
        };
        if known.is_none() && along == Axis::Height {
            // the first entry is the upper one
            free.iter_mut().for_each(|centre| *centre = length - *centre);
        }
        for (position, centre) in open.into_iter().zip(free) {
            if let Some(placed) = entries.get_mut(position) {
                let within = |centre, axis| within(centre, placed.radius, inside[axis]);
                placed.centre = [within(centre, along), within(line, across)];
            }
        }
    }
}

/// Moves the entries of a wall, where none has a position, to face those of the opposite wall that they are pulled to.
fn face(entries: &mut [PlacedEntry<'_>], pulls: &[PullView], wall: Wall, inside: PerAxis<f64>) {
    let [along, _] = wall.plane();
    for row in rows(entries, wall, None) {
        let mut wanted: Vec<(f64, usize)> = Vec::with_capacity(row.len());
        for position in row {
            let Some(placed) = entries.get(position) else { continue };
            if placed.measures.is_some() {
                wanted.clear();
                break;
            }
            let faced = pulls
                .iter()
                .filter(|pull| pull.kind == PullKind::Straight)
                .find_map(|pull| match pull.ends {
                    [one, other] if one == position => Some(other),
                    [one, other] if other == position => Some(one),
                    _ => None,
                })
                .and_then(|other| entries.get(other));
            wanted.push((faced.unwrap_or(placed).centre[0], position));
        }
        wanted.sort_by(|(one, _), (other, _)| one.total_cmp(other));
        let centres: Vec<f64> = wanted.iter().map(|(centre, _)| *centre).collect();
        let places: Vec<usize> = wanted.iter().map(|(_, position)| *position).collect();
        let radii = |times: f64| -> Vec<f64> {
            diameters(entries, &places).into_iter().map(|whole| times * whole / 2.0).collect()
        };
        let within = |times| settled(&centres, &radii(times), 0.0, inside[along]);
        let Some(settled) = within(AIRY).or_else(|| within(1.0)) else { continue };
        for (position, centre) in places.into_iter().zip(settled) {
            if let Some(placed) = entries.get_mut(position) {
                placed.centre[0] = centre;
            }
        }
    }
}

/// As [`even`], a little aside in each row, so that pulls of one row are not drawn over those of another.
fn staggered(lengths: &[f64], total: f64, row: usize, rows: usize) -> Vec<f64> {
    let mut centres = even(lengths, total);
    let room = (total - lengths.iter().sum::<f64>()) / (lengths.len() as f64 + 1.0);
    if rows > 1 && room > 0.0 {
        let aside = room * (row as f64 / (rows as f64 - 1.0) - 0.5);
        centres.iter_mut().for_each(|centre| *centre += aside);
    }
    centres
}

/// The centres of things of some lengths, with equal room between them; where they have none, crowded in as they must be.
fn even(lengths: &[f64], total: f64) -> Vec<f64> {
    let room = (total - lengths.iter().sum::<f64>()) / (lengths.len() as f64 + 1.0);
    let (first, last) = (lengths.first().copied().unwrap_or(0.0), lengths.last().copied().unwrap_or(0.0));
    let mut before = 0.0;
    let centre = |(position, length): (usize, &f64)| {
        if room < 0.0 && lengths.len() > 1 {
            let from = first / 2.0;
            return from + (total - last / 2.0 - from) * position as f64 / (lengths.len() as f64 - 1.0);
        }
        before += room.max(0.0) + length;
        if room < 0.0 { total / 2.0 } else { before - length / 2.0 }
    };
    lengths.iter().enumerate().map(centre).collect()
}

/// A centre from which nothing reaches over the ends of a length; its middle where there is no such position.
fn within(centre: f64, radius: f64, length: f64) -> f64 {
    if 2.0 * radius >= length { length / 2.0 } else { centre.clamp(radius, length - radius) }
}

/// Centres for the entries of a row that have no position: each in the middle of the widest gap that is left.
fn in_gaps(entries: &[PlacedEntry<'_>], row: &[usize], length: f64) -> Vec<f64> {
    let of_row = || row.iter().filter_map(|position| entries.get(*position));
    let known = of_row().filter(|placed| placed.measures.is_some());
    let mut occupied: Vec<[f64; 2]> = vec![[0.0, 0.0], [length, length]];
    occupied.extend(known.map(|one| [one.centre[0] - one.radius, one.centre[0] + one.radius]));
    let mut centres = Vec::new();
    for placed in of_row().filter(|placed| placed.measures.is_none()) {
        occupied.sort_by(|one, other| one[0].total_cmp(&other[0]));
        let gaps = occupied.iter().zip(occupied.iter().skip(1)).map(|(one, next)| [one[1], next[0]]);
        let widest = gaps.max_by(|one, other| (one[1] - one[0]).total_cmp(&(other[1] - other[0])));
        let [from, to] = widest.unwrap_or([0.0, length]);
        let centre = (from + to) / 2.0;
        occupied.push([centre - placed.radius, centre + placed.radius]);
        centres.push(centre);
    }
    centres
}

/// Places as near as can be to those that are wanted, in their order, without overlap and between two ends; `None` where
/// there is no room. Of every thing half its length is given.
pub(super) fn settled(wanted: &[f64], halves: &[f64], from: f64, to: f64) -> Option<Vec<f64>> {
    let mut offsets = Vec::with_capacity(halves.len());
    let (mut offset, mut before) = (0.0, None::<f64>);
    for half in halves {
        offset += before.map_or(0.0, |before| before + half);
        before = Some(*half);
        offsets.push(offset);
    }
    let least = from + halves.first()?;
    let most = to - halves.last()? - offset;
    if most < least {
        return None;
    }
    // what is left when the room of those before is occupied off must not fall: blocks that would are levelled
    let mut blocks: Vec<(f64, usize)> = Vec::with_capacity(wanted.len());
    for (wanted, offset) in wanted.iter().zip(&offsets) {
        let mut block = (wanted - offset, 1);
        while let Some((level, count)) = blocks.last().copied().filter(|(level, _)| *level > block.0) {
            let all = (count + block.1) as f64;
            block = ((level * count as f64 + block.0 * block.1 as f64) / all, count + block.1);
            blocks.pop();
        }
        blocks.push(block);
    }
    let levels = blocks.into_iter().flat_map(|(level, count)| std::iter::repeat_n(level, count));
    Some(levels.zip(offsets).map(|(level, offset)| level.clamp(least, most) + offset).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn things_are_spread_with_equal_room_and_never_leave_their_ends() {
        assert_eq!(even(&[2.0, 2.0], 10.0), [3.0, 7.0]);
        assert_eq!(even(&[2.0, 4.0], 12.0), [3.0, 8.0]);
        assert_eq!(even(&[4.0, 4.0, 4.0], 10.0), [2.0, 5.0, 8.0]);
        assert_eq!(even(&[4.0], 3.0), [1.5]);
    }

    #[test]
    fn what_wants_the_same_place_settles_around_it() {
        assert_eq!(settled(&[5.0, 5.0], &[1.0, 1.0], 0.0, 10.0), Some(vec![4.0, 6.0]));
        assert_eq!(settled(&[0.0, 9.0], &[1.0, 1.0], 0.0, 10.0), Some(vec![1.0, 9.0]));
        assert_eq!(settled(&[9.0, 9.5], &[1.0, 1.0], 0.0, 10.0), Some(vec![7.0, 9.0]));
        assert_eq!(settled(&[1.0, 2.0], &[3.0, 3.0], 0.0, 10.0), None);
    }
}
