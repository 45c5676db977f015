//! Large insulated conductors that a raceway brings in: what protects them, and whether it was there before them.

use super::{EntryWiring, Mounting, WiringEntry};
use crate::checks::Status;
use crate::checks::inspection::Sentences;
use crate::derivation::Pointer;
use crate::rulebook::box_entry::{INSULATING_FITTING, PROTECTED_FIRST};

const FITTING: Sentences = Sentences {
    met: "finding-insulating-fitting",
    broken: "finding-no-insulating-fitting",
    open: "finding-insulating-fitting-open",
};
const FIRST: Sentences = Sentences {
    met: "finding-protected-first",
    broken: "finding-protected-afterwards",
    open: "finding-protected-first-open",
};

impl Mounting {
    /// Large insulated conductors in a raceway: one of four means protects them. What protects them whatever their size is
    /// enough.
    pub(super) fn large_conductors(&mut self, entry: &WiringEntry, item: Pointer) {
        if !matches!(entry.wiring, EntryWiring::MetalRaceway | EntryWiring::NonmetallicRaceway) {
            let at = item.member(&"/wiring");
            self.inspection.proof.does_not_apply(&INSULATING_FITTING, "not-a-raceway", Some(at));
            return;
        }
        let size_at = item.member(&"/largest_insulated_conductor");
        // before an edition names it, such a fitting neither serves nor, while it is there, lets the means be denied
        let listed_metal = entry.listed_metal_fitting;
        let serves = self.book.box_entry.listed_metal_fitting || listed_metal != Some(true);
        let means = [
            (entry.insulating_fitting, item.member(&"/insulating_fitting")),
            (listed_metal.filter(|_| serves), item.member(&"/listed_metal_fitting")),
            (entry.fastened_separation, item.member(&"/fastened_separation")),
            (entry.rounded_hub, item.member(&"/rounded_hub")),
        ];
        let is_protected = means.iter().any(|(given, _)| *given == Some(true));
        match entry.largest_insulated_conductor {
            Some(size) if size < self.book.box_entry.fitting_from => {
                let proof = &mut self.inspection.proof;
                proof.does_not_apply(&INSULATING_FITTING, "no-large-conductor-enters", Some(size_at));
                return;
            }
            None if !is_protected => {
                let finding = "finding-entry-conductor-open";
                self.inspection.open(&INSULATING_FITTING, None, size_at, finding);
                return;
            }
            Some(size) => {
                self.inspection.proof.word(&INSULATING_FITTING, size.name(), size_at);
            }
            None => {}
        }
        let status = self.inspection.any_of(&INSULATING_FITTING, &means, FITTING);
        if status == Status::Satisfied && self.book.box_entry.protected_first {
            self.protected_first(entry, item, size_at);
        }
    }

    /// Whether what protects them was in place before they were pulled in. A hub or boss of the box always is.
    fn protected_first(&mut self, entry: &WiringEntry, item: Pointer, size_at: Pointer) {
        let hub = item.member(&"/rounded_hub");
        let first = entry.protected_before_conductors;
        let first_at = item.member(&"/protected_before_conductors");
        if entry.rounded_hub == Some(true) {
            self.inspection.granted(&PROTECTED_FIRST, hub, "finding-protected-by-hub");
            return;
        }
        let unsaid = if entry.largest_insulated_conductor.is_none() { Some(size_at) } else { None };
        let decides = first == Some(true) || (unsaid.is_none() && entry.rounded_hub.is_some());
        if let (Some(first), true) = (first, decides) {
            let size = entry.largest_insulated_conductor.filter(|_| !first);
            if let Some(size) = size {
                self.inspection.proof.word(&PROTECTED_FIRST, size.name(), size_at);
                self.inspection.proof.fact(&PROTECTED_FIRST, false, hub);
            }
            self.inspection.fact(&PROTECTED_FIRST, Some(first), first_at, FIRST);
            return;
        }
        let supply = if first.is_none() { first_at } else { unsaid.unwrap_or(hub) };
        self.inspection.open(&PROTECTED_FIRST, None, supply, FIRST.open);
    }
}
