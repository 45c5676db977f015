//! Which entries are in one row of a wall.

use super::entry::Entered;
use super::wall::Wall;
use crate::derivation::Derivation;
use crate::quantity::Length;
use crate::rulebook::pull::AngleRows;
use crate::rulebook::reading::BackWallRow;
use std::collections::BTreeMap;

/// The entries of one row, by their places in the chamber.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// The declared number.
    pub number: Option<u32>,
    pub entries: Vec<usize>,
}

/// The rows of a wall: as declared, and on the back by position where none is declared.
pub fn of_wall(proof: &mut Derivation, entered: &[Entered<'_>], wall: Wall) -> Vec<Row> {
    if proof.rulebook().pull.angle_rows == AngleRows::AsOne {
        let of_wall = entered.iter().enumerate().filter(|(_, entry)| entry.wall() == wall);
        let entries: Vec<usize> = of_wall.map(|(place, _)| place).collect();
        return if entries.is_empty() { Vec::new() } else { vec![Row { number: None, entries }] };
    }
    let mut declared: BTreeMap<u32, Vec<usize>> = BTreeMap::new();
    let mut open: Vec<usize> = Vec::new();
    for (place, entry) in entered.iter().enumerate().filter(|(_, entry)| entry.wall() == wall) {
        match entry.declared_row() {
            Some(number) => declared.entry(number).or_default().push(place),
            None => open.push(place),
        }
    }
    let mut rows: Vec<Row> =
        declared.into_iter().map(|(number, entries)| Row { number: Some(number), entries }).collect();
    rows.extend(undeclared(proof, entered, open));
    rows
}

/// Rows of entries on the back for which none is declared.
fn undeclared(proof: &mut Derivation, entered: &[Entered<'_>], open: Vec<usize>) -> Vec<Row> {
    let one = |entries: Vec<usize>| Row { number: None, entries };
    let position = |place: &usize| {
        let position = entered.get(*place)?.entry.position?;
        Some((position.from_left?, position.from_bottom?))
    };
    let places: Option<Vec<(Length, Length)>> = open.iter().map(position).collect();
    let Some(places) = places.filter(|places| places.len() > 1) else {
        return if open.is_empty() { Vec::new() } else { vec![one(open)] };
    };
    let in_line = |along: fn(&(Length, Length)) -> Length| {
        let mut lines: BTreeMap<Length, Vec<usize>> = BTreeMap::new();
        for (place, centre) in open.iter().zip(&places) {
            lines.entry(along(centre)).or_default().push(*place);
        }
        lines.into_values().map(one).collect::<Vec<Row>>()
    };
    let horizontal = in_line(|(_, from_bottom)| *from_bottom);
    let vertical = in_line(|(from_left, _)| *from_left);
    match proof.reading::<BackWallRow>() {
        BackWallRow::EitherWay => horizontal.into_iter().chain(vertical).collect(),
        BackWallRow::Horizontal => horizontal,
        BackWallRow::Vertical => vertical,
        BackWallRow::OneRow => vec![one(open)],
    }
}
