//! A box without barriers, or one section of a divided box: what is evaluated by itself.

use super::request::{InsideBox, Pull, PullBoxRequest};
use crate::checks::pulls::pull::RequestedPull;
use crate::derivation::Pointer;
use crate::tables::wire_bending_space::Stranding;
use std::collections::HashMap;

/// One box or section, with its entries and pulls.
pub(super) struct Section<'a> {
    pub id: Option<&'a str>,
    pub inside: Option<InsideBox>,
    pub inside_at: Pointer,
    /// The indices of its entries in the request.
    pub entries: Vec<usize>,
    pub pulls: Vec<RequestedPull>,
}

/// The boxes or sections of a request that has no faults.
pub(super) fn all(request: &PullBoxRequest) -> Vec<Section<'_>> {
    let empty = |id, inside, inside_at| Section {
        id,
        inside,
        inside_at,
        entries: Vec::with_capacity(request.entries.len()),
        pulls: Vec::with_capacity(request.pulls.len()),
    };
    let mut sections = Vec::with_capacity(request.sections.len().max(1));
    if request.sections.is_empty() {
        sections.push(empty(None, request.inside, Pointer::to(&"/box")));
    }
    for (index, section) in request.sections.iter().enumerate() {
        let at = Pointer::of(&"/sections/#/box", index);
        sections.push(empty(Some(section.id.as_str()), section.inside, at));
    }
    // the section of each entry, and the position of the entry in it
    let mut positions: HashMap<&str, (usize, usize)> = HashMap::with_capacity(request.entries.len());
    for (index, entry) in request.entries.iter().enumerate() {
        let id = entry.section.as_ref().map(|name| name.as_str());
        let Some(number) = sections.iter().position(|section| section.id == id) else { continue };
        let Some(section) = sections.get_mut(number) else { continue };
        positions.insert(entry.id.as_str(), (number, section.entries.len()));
        section.entries.push(index);
    }
    for (index, pull) in request.pulls.iter().enumerate() {
        let mut ends = pull.entries.iter().filter_map(|id| positions.get(id.as_str()).copied());
        if let Some((number, first)) = ends.next()
            && let Some(section) = sections.get_mut(number)
        {
            let others = ends.map(|(_, position)| position).collect();
            section.pulls.push(requested(pull, index, first, others));
        }
    }
    sections
}

fn requested(pull: &Pull, index: usize, first: usize, others: Vec<usize>) -> RequestedPull {
    let Pull { largest_conductor, insulated, spliced, offset, compact_aa8000, .. } = *pull;
    let stranding = if compact_aa8000 { Stranding::CompactAa8000 } else { Stranding::Plain };
    RequestedPull { index, first, others, largest_conductor, insulated, spliced, offset, stranding }
}
