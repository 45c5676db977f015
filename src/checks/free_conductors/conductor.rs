//! One conductor: which of its length counts, whether that is enough, and what a splice may do about it.

use super::request::{Damage, DamagePlace, Extension, ExtensionKind, FreeConductor, FreeConductorRole};
use super::{ConductorLength, Lengths, SpliceAnswer};
use crate::checks::inspection::Sentences;
use crate::checks::{Name, Status};
use crate::derivation::{Figure, Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::free_conductor::{LENGTH, OUTSIDE, SPLICE_PLACE, SPLICED, SplicedLength, UNBROKEN};
use crate::rulebook::reading::{ContinuousLength, SharedPigtail};

/// The length that counts: what it is, or that it is missing, and where it stands or would stand.
struct Counted {
    figure: Option<Figure>,
    at: Pointer,
    /// Whether it ends before the conductor does, at damage or at a splice.
    cut_off: bool,
    sentences: Sentences,
}

const PLAIN: Sentences = Sentences {
    met: "finding-free-length-enough",
    broken: "finding-free-length-short",
    open: "finding-free-length-open",
};
const CUT_BACK: Sentences = Sentences {
    met: "finding-sound-length-enough",
    broken: "finding-sound-length-short",
    open: "finding-sound-length-open",
};
const IN_ONE_PIECE: Sentences = Sentences {
    met: "finding-unspliced-length-enough",
    broken: "finding-unspliced-length-short",
    open: "finding-unspliced-length-open",
};
const REACH: Sentences =
    Sentences { met: "finding-reach-enough", broken: "finding-reach-short", open: "finding-reach-open" };
const PLACE: Sentences = Sentences {
    met: "finding-splice-inside-box",
    broken: "finding-splice-outside-box",
    open: "finding-splice-place-open",
};

impl Lengths {
    /// What a conductor has and needs; `None` for one that the rule does not cover.
    pub(super) fn conductor(
        &mut self,
        index: usize,
        conductor: &FreeConductor,
        depth: Option<Figure>,
    ) -> Option<ConductorLength> {
        let at = Pointer::of(&"/conductors/#", index);
        let id = conductor.id.as_ref().map(Name::as_str);
        self.inspection.about(id, index);
        match conductor.role {
            FreeConductorRole::PassesThrough => {
                self.inspection.proof.does_not_apply(&UNBROKEN, "unbroken", Some(at));
                return None;
            }
            FreeConductorRole::StaysInside => {
                self.inspection.proof.does_not_apply(&LENGTH, "stays-inside", Some(at));
                return None;
            }
            FreeConductorRole::Spliced | FreeConductorRole::Terminated => {}
        }
        let depth_at = if conductor.emergence_depth.is_some() {
            at.member(&"/emergence_depth")
        } else {
            Pointer::to(&"/emergence_depth")
        };
        let depth = match conductor.emergence_depth {
            Some(own) => self.depth(Some(own), depth_at),
            None => depth,
        };
        let required = self.required(depth);
        let counted = self.counted(conductor, at);
        let mut shortfalls = Vec::new();
        // a reach that was measured counts before the one that the depth would give
        let measured = conductor.length_outside_opening.is_some() && !counted.cut_off;
        let whole = required.filter(|_| !measured);
        let enough = self.long_enough(&counted, whole, &mut shortfalls);
        let reaches = self.reaches(conductor, at, &counted, (depth, depth_at), &mut shortfalls);
        let short = enough == Status::Violated || reaches == Some(Status::Violated);
        let splice = match &conductor.spliced_to_reach {
            Some(extension) => Some(self.made_longer(extension, at, required)),
            None => short.then(|| self.may_be_made_longer(at, required)),
        };
        let short_by = self.inspection.proof.largest(&LENGTH, &shortfalls);
        Some(ConductorLength {
            id: id.map(str::to_owned),
            at,
            required,
            counted: counted.figure,
            short_by,
            splice,
        })
    }

    /// The length that counts for a conductor: up to its damage, and in one piece where only that counts.
    fn counted(&mut self, conductor: &FreeConductor, at: Pointer) -> Counted {
        let mut damage = conductor.damage;
        if damage.is_some_and(|damage| damage.place == DamagePlace::InWall) {
            self.inspection.open(&SPLICE_PLACE, None, at.member(&"/damage"), "finding-damage-in-wall");
            damage = None;
        }
        let (length, at, cut_off, sentences) = match (damage, conductor.spliced_to_reach) {
            (Some(Damage { sound_length, .. }), _) => {
                (sound_length, at.member(&"/damage/sound_length"), true, CUT_BACK)
            }
            (None, Some(extension)) if !self.spliced_length_counts(extension.kind) => {
                let at = at.member(&"/spliced_to_reach/length_in_one_piece");
                (extension.length_in_one_piece, at, true, IN_ONE_PIECE)
            }
            (None, _) => (conductor.free_length, at.member(&"/free_length"), false, PLAIN),
        };
        let proof = &mut self.inspection.proof;
        let figure = length.map(|length| proof.given(&LENGTH, length.value(), Measure::Length, at));
        Counted { figure, at, cut_off, sentences }
    }

    /// Whether a length that a splice makes up counts.
    fn spliced_length_counts(&mut self, kind: ExtensionKind) -> bool {
        let proof = &mut self.inspection.proof;
        if kind == ExtensionKind::SharedPigtail
            && proof.reading::<SharedPigtail>() == SharedPigtail::EachAlone
        {
            return false;
        }
        match proof.rulebook().free_conductor.spliced {
            SplicedLength::Counts => true,
            SplicedLength::Silent => proof.reading::<ContinuousLength>() == ContinuousLength::LengthCounts,
        }
    }

    /// The base length, at every box.
    fn long_enough(
        &mut self,
        counted: &Counted,
        required: Option<Figure>,
        shortfalls: &mut Vec<Figure>,
    ) -> Status {
        let (relation, base) = (Relation::AtLeast, self.base);
        let Some(figure) = counted.figure else {
            return self.inspection.open(&LENGTH, Some((relation, base)), counted.at, counted.sentences.open);
        };
        let status =
            self.inspection.compare(&LENGTH, (figure, counted.at), relation, base, counted.sentences);
        // where the whole requirement is known, what is missing is missing of that
        let required = required.unwrap_or(base);
        if figure.value < required.value {
            shortfalls.push(self.inspection.proof.difference(&LENGTH, required, figure));
        }
        status
    }

    /// The reach outside, at a small opening. What was measured counts before what can be computed; past damage or a
    /// splice that does not count, nothing was measured.
    fn reaches(
        &mut self,
        conductor: &FreeConductor,
        at: Pointer,
        counted: &Counted,
        (depth, depth_at): (Option<Figure>, Pointer),
        shortfalls: &mut Vec<Figure>,
    ) -> Option<Status> {
        if self.small == Some(false) {
            return None;
        }
        let outside_at = at.member(&"/length_outside_opening");
        let measured = conductor.length_outside_opening.filter(|_| !counted.cut_off);
        if measured.is_none() && conductor.length_outside_opening.is_some() {
            self.inspection.proof.does_not_apply(&OUTSIDE, "cut-off-before-its-end", Some(outside_at));
        }
        let reach = match (measured, counted.figure, depth) {
            (Some(measured), _, _) => {
                let proof = &mut self.inspection.proof;
                Some((proof.given(&OUTSIDE, measured.value(), Measure::Length, outside_at), outside_at))
            }
            (None, Some(length), Some(depth)) => {
                let proof = &mut self.inspection.proof;
                let reach = proof.difference(&OUTSIDE, length, depth);
                Some((proof.at_least_zero(&OUTSIDE, reach), counted.at))
            }
            (None, _, _) => None,
        };
        let (relation, limit) = (Relation::AtLeast, self.outside);
        let Some((reach, reach_at)) = reach else {
            let missing = if counted.figure.is_none() { counted.at } else { depth_at };
            return Some(self.inspection.open(&OUTSIDE, Some((relation, limit)), missing, REACH.open));
        };
        if self.small.is_none() && !relation.holds(reach.value, limit.value) {
            let opening = Pointer::to(&"/opening");
            return Some(self.inspection.open(
                &OUTSIDE,
                Some((relation, limit)),
                opening,
                "finding-opening-open",
            ));
        }
        let status = self.inspection.compare(&OUTSIDE, (reach, reach_at), relation, limit, REACH);
        if status == Status::Violated && measured.is_some() {
            shortfalls.push(self.inspection.proof.difference(&OUTSIDE, limit, reach));
        }
        Some(status)
    }

    /// A conductor that was made longer: where the splice stands, and whether its length counts.
    fn made_longer(
        &mut self,
        extension: &Extension,
        at: Pointer,
        must_reach: Option<Figure>,
    ) -> SpliceAnswer {
        let at = at.member(&"/spliced_to_reach");
        let place = at.member(&"/spliced_to_reach/splice_inside_box");
        self.inspection.fact(&SPLICE_PLACE, extension.splice_inside_box, place, PLACE);
        let says = match extension.kind {
            ExtensionKind::OwnLength => "own_length",
            ExtensionKind::SharedPigtail => "shared_pigtail",
        };
        self.inspection.proof.word(&SPLICED, says, at.member(&"/spliced_to_reach/kind"));
        let counts = self.spliced_length_counts(extension.kind);
        let stated_by_edition = self.stated();
        let message = match (extension.kind, counts, stated_by_edition) {
            (ExtensionKind::SharedPigtail, false, _) => "finding-shared-pigtail",
            (_, true, true) => "finding-splice-counts",
            (_, true, false) => "finding-splice-counts-silent",
            (_, false, _) => "finding-splice-does-not-count",
        };
        self.inspection.advise(&SPLICED, message, at);
        SpliceAnswer { counts, stated_by_edition, must_reach }
    }

    /// A conductor that is too short as it is: whether a splice may make it longer, and what it must then reach.
    fn may_be_made_longer(&mut self, at: Pointer, must_reach: Option<Figure>) -> SpliceAnswer {
        let counts = self.spliced_length_counts(ExtensionKind::OwnLength);
        let stated_by_edition = self.stated();
        let message = match (counts, stated_by_edition) {
            (true, true) => "finding-splice-may-reach",
            (true, false) => "finding-splice-may-reach-silent",
            (false, _) => "finding-splice-would-not-count",
        };
        let required = must_reach.unwrap_or(self.base);
        let finding = self.inspection.advise(&SPLICED, message, at);
        finding.arguments.push(("required", required.into()));
        SpliceAnswer { counts, stated_by_edition, must_reach }
    }

    fn stated(&self) -> bool {
        self.inspection.proof.rulebook().free_conductor.spliced == SplicedLength::Counts
    }
}
