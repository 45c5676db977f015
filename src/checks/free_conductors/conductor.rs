//! One conductor: which of its length counts, whether that is enough, and what a splice may do about it.

use super::request::{Damage, DamagePlace, Extension, ExtensionKind, FreeConductor, FreeConductorRole};
use super::subjects::leaves_the_box;
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
    /// What is known of it where it is missing.
    bound: Option<Bounded>,
}

/// A length that one which is missing has at the least, or at the most.
#[derive(Clone, Copy)]
struct Bounded {
    figure: Figure,
    at: Pointer,
    sentences: Sentences,
    /// What a comparison must come to for the bound to decide it: a least length that is enough, a most that is not.
    decides: bool,
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
const AT_LEAST: Sentences = Sentences {
    met: "finding-free-length-at-least",
    broken: "finding-free-length-open",
    open: "finding-free-length-open",
};
const AT_MOST: Sentences = Sentences {
    met: "finding-free-length-open",
    broken: "finding-free-length-short",
    open: "finding-free-length-open",
};
const REACH: Sentences =
    Sentences { met: "finding-reach-enough", broken: "finding-reach-short", open: "finding-reach-open" };
const REACH_AT_MOST: Sentences = Sentences {
    met: "finding-reach-enough",
    broken: "finding-reach-short-at-most",
    open: "finding-reach-unknown",
};
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
        if conductor.damage.is_some() && !leaves_the_box(conductor) {
            self.inspection.open(&SPLICE_PLACE, None, at.member(&"/damage"), "finding-damage-of-unspliced");
        }
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
        let counted = self.counted(conductor, at, depth);
        let mut shortfalls = Vec::new();
        // a reach that was measured counts before the one that the depth would give
        let measured = conductor.length_outside_opening.is_some() && !counted.cut_off;
        let whole = required.filter(|_| !measured);
        let depth_open = depth.is_none().then_some(depth_at);
        let enough = self.long_enough(&counted, whole, depth_open, &mut shortfalls);
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
    fn counted(&mut self, conductor: &FreeConductor, at: Pointer, depth: Option<Figure>) -> Counted {
        let (item, mut damage) = (at, conductor.damage);
        if damage.is_some_and(|damage| damage.place == DamagePlace::InWall) {
            self.inspection.open(&SPLICE_PLACE, None, at.member(&"/damage"), "finding-damage-in-wall");
            damage = None;
        }
        let (length, at, cut_off, sentences) = match (damage, conductor.spliced_to_reach) {
            (Some(Damage { sound_length, .. }), _) => {
                (sound_length, at.member(&"/damage/sound_length"), true, CUT_BACK)
            }
            (None, Some(extension)) if !self.spliced_length_counts(extension.kind) => {
                // what it would be where a spliced length counts
                if let Some(whole) = conductor.free_length {
                    let at = at.member(&"/free_length");
                    self.inspection.proof.given(&LENGTH, whole.value(), Measure::Length, at);
                }
                let at = at.member(&"/spliced_to_reach/length_in_one_piece");
                (extension.length_in_one_piece, at, true, IN_ONE_PIECE)
            }
            (None, _) => (conductor.free_length, at.member(&"/free_length"), false, PLAIN),
        };
        let proof = &mut self.inspection.proof;
        let figure = length.map(|length| proof.given(&LENGTH, length.value(), Measure::Length, at));
        let bound = if figure.is_none() { self.bound(conductor, item, cut_off, depth) } else { None };
        Counted { figure, at, cut_off, sentences, bound }
    }

    /// What is known of a length that nobody gives: a part is no longer than the whole conductor, and a conductor is at least as
    /// long as what reaches outside the opening and what lies behind it.
    fn bound(
        &mut self,
        conductor: &FreeConductor,
        item: Pointer,
        cut_off: bool,
        depth: Option<Figure>,
    ) -> Option<Bounded> {
        let proof = &mut self.inspection.proof;
        if cut_off {
            let at = item.member(&"/free_length");
            let whole = conductor.free_length?.value();
            let figure = proof.given(&LENGTH, whole, Measure::Length, at);
            return Some(Bounded { figure, at, sentences: AT_MOST, decides: false });
        }
        let at = item.member(&"/length_outside_opening");
        let outside = conductor.length_outside_opening?.value();
        let outside = proof.given(&LENGTH, outside, Measure::Length, at);
        let depth = match depth {
            None => self.least_depth(),
            known => known,
        };
        let proof = &mut self.inspection.proof;
        let figure = depth.map_or(outside, |depth| proof.sum(&LENGTH, &[outside, depth]));
        Some(Bounded { figure, at, sentences: AT_LEAST, decides: true })
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
        depth_at: Option<Pointer>,
        shortfalls: &mut Vec<Figure>,
    ) -> Status {
        let (relation, base) = (Relation::AtLeast, self.base);
        let (figure, at, sentences) = match (counted.figure, counted.bound) {
            (Some(figure), _) => (figure, counted.at, counted.sentences),
            // what it has at the least is enough, or what it has at the most is not
            (None, Some(Bounded { figure, at, sentences, decides }))
                if relation.holds(figure.value, base.value) == decides =>
            {
                (figure, at, sentences)
            }
            (None, bound) => {
                let status =
                    self.inspection.open(&LENGTH, Some((relation, base)), counted.at, counted.sentences.open);
                if let (Some(finding), true) =
                    (self.inspection.findings.last_mut(), bound.is_some_and(|bound| bound.decides))
                {
                    finding.supply.extend(depth_at);
                }
                return status;
            }
        };
        let status = self.inspection.compare(&LENGTH, (figure, at), relation, base, sentences);
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
            return Some(self.reach_open(counted, depth_at));
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

    /// A reach that can be neither measured nor computed: too short where even the least depth leaves too little.
    fn reach_open(&mut self, counted: &Counted, depth_at: Pointer) -> Status {
        let (relation, limit) = (Relation::AtLeast, self.outside);
        if let (Some(true), Some(length), Some(least)) = (self.small, counted.figure, self.least_depth()) {
            let proof = &mut self.inspection.proof;
            let reach = proof.difference(&OUTSIDE, length, least);
            let reach = proof.at_least_zero(&OUTSIDE, reach);
            if !relation.holds(reach.value, limit.value) {
                return self.inspection.compare(
                    &OUTSIDE,
                    (reach, counted.at),
                    relation,
                    limit,
                    REACH_AT_MOST,
                );
            }
        }
        let missing = if counted.figure.is_none() { counted.at } else { depth_at };
        let message = if self.small == Some(true) { "finding-reach-unknown" } else { REACH.open };
        let status = self.inspection.open(&OUTSIDE, Some((relation, limit)), missing, message);
        if let (Some(finding), None) = (self.inspection.findings.last_mut(), self.small) {
            finding.supply.push(Pointer::to(&"/opening"));
        }
        status
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
