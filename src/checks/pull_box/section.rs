//! A box without barriers, or one section of a divided box: what is evaluated by itself.

use super::request::{InsideBox, PullBoxRequest};
use crate::derivation::Pointer;
use std::collections::HashMap;

/// One box or section, with its entries and pulls by their places in the request.
pub struct Chamber<'a> {
    pub id: Option<&'a str>,
    pub inside: Option<InsideBox>,
    pub inside_at: Pointer,
    /// The places of its entries in the request.
    pub entries: Vec<usize>,
    pub pulls: Vec<Joining>,
}

/// A pull, with the places of its entries among those of the chamber; the first holds all its conductors.
pub struct Joining {
    /// The place of the pull in the request.
    pub pull: usize,
    pub first: usize,
    pub others: Vec<usize>,
}

/// The boxes or sections of a request that has no faults.
pub fn all(request: &PullBoxRequest) -> Vec<Chamber<'_>> {
    let empty = |id, inside, inside_at| Chamber {
        id,
        inside,
        inside_at,
        entries: Vec::with_capacity(request.entries.len()),
        pulls: Vec::with_capacity(request.pulls.len()),
    };
    let mut chambers = Vec::with_capacity(request.sections.len().max(1));
    if request.sections.is_empty() {
        chambers.push(empty(None, request.inside, Pointer::to(&"/box")));
    }
    for (index, section) in request.sections.iter().enumerate() {
        chambers.push(empty(
            Some(section.id.as_str()),
            section.inside,
            Pointer::of(&"/sections/#/box", index),
        ));
    }
    let mut places: HashMap<&str, (usize, usize)> = HashMap::with_capacity(request.entries.len());
    for (index, entry) in request.entries.iter().enumerate() {
        let section = entry.section.as_ref().map(|name| name.as_str());
        let Some(number) = chambers.iter().position(|chamber| chamber.id == section) else { continue };
        let Some(chamber) = chambers.get_mut(number) else { continue };
        places.insert(entry.id.as_str(), (number, chamber.entries.len()));
        chamber.entries.push(index);
    }
    for (pull, asked) in request.pulls.iter().enumerate() {
        let joined: Vec<(usize, usize)> =
            asked.entries.iter().filter_map(|id| places.get(id.as_str()).copied()).collect();
        if let Some(((number, first), others)) = joined.split_first()
            && let Some(chamber) = chambers.get_mut(*number)
        {
            let others = others.iter().map(|(_, place)| *place).collect();
            chamber.pulls.push(Joining { pull, first: *first, others });
        }
    }
    chambers
}
