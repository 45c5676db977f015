//! The contents side: what takes an allowance, and what does not (314.16(B)).
//!
//! Inputs are read one list at a time into [`Counted`] entries, each with the figure of its allowances; entries of one
//! item and size then become one line of the tally. So neither the order nor the grouping of inputs changes a figure.

mod conductors;
mod devices;
mod fittings;
mod grounding;

pub(crate) use fittings::{Alike, SizeAndAllowance};
pub(crate) use grounding::GroundingTally;

pub(in crate::checks) use conductors::Loops;

use super::outcome::{Item, NotCounted, Places, TallyLine};
use super::request::{Contents, Many};
use crate::checks::{Finding, Name, Status};
use crate::derivation::{Derivation, Figure, Pattern, Pointer};
use crate::quantity::Measure;
use crate::rulebook::outlet_fill::{ALLOWANCE, CLAMP_ASSEMBLY, CLAMPS, NOTHING, SUM, SUPPORT_FITTINGS};
use crate::rulebook::reading::SmallConductors;
use crate::rulebook::{Rule, Rulebook, outlet_volume, pull};
use crate::tables::conductor_volume;
use crate::trade::{ConductorSize, SizeSet};
use smallvec::SmallVec;
use std::mem;

/// Figures that one step computes with.
pub type Figures = SmallVec<[Figure; 8]>;

/// The count of one space, finished.
pub(in crate::checks) struct Fill {
    /// The sum of everything that could be counted.
    pub required: Figure,
    /// Whether everything could.
    pub complete: bool,
    pub tally: Vec<TallyLine>,
    pub not_counted: Vec<NotCounted>,
    pub findings: Vec<Finding>,
    /// The allowance of the largest conductor present, where something is sized by it.
    pub largest: Option<Figure>,
    /// How many allowances are sized by it.
    pub by_largest: Option<Figure>,
    /// What is not said and takes room or not: the count is of the least, or of the most, that it can come to.
    pub unsaid: SmallVec<[Unsaid; 2]>,
    assemblies: Vec<Figure>,
    allowances: [Option<Figure>; ConductorSize::COUNT],
}

/// How what is not said is taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::checks) enum Bound {
    /// As the least that it can take.
    Least,
    /// As the most that it can take.
    Most,
}

/// A property that is not said, and that takes room or not.
#[derive(Clone, Copy, Debug)]
pub(in crate::checks) struct Unsaid {
    pub rule: &'static Rule,
    /// Where it would be said.
    pub at: Pointer,
    /// What it is taken as for the least and for the most.
    pub values: &'static [&'static str; 2],
    /// The sentence that asks for it.
    pub message: &'static str,
}

impl Fill {
    /// Counts the contents of a box, or of one of its spaces.
    pub fn count(
        proof: &mut Derivation,
        contents: &Contents,
        space: Option<usize>,
        loops: Loops<'_>,
        bound: Bound,
    ) -> Self {
        let book = proof.rulebook().clone();
        let mut counting = Counting {
            proof,
            book,
            contents,
            space,
            counted: SmallVec::new(),
            grounding: SmallVec::new(),
            assemblies: Vec::new(),
            not_counted: Vec::new(),
            findings: Vec::new(),
            allowances: [None; ConductorSize::COUNT],
            present: SizeSet::default(),
            complete: true,
            bound,
            unsaid: SmallVec::new(),
        };
        counting.conductors(loops);
        counting.cables();
        counting.grounding_conductors();
        counting.canopy();
        counting.devices();
        counting.terminal_blocks();
        counting.small_parts();
        if let Some(nothing) = contents.nothing {
            let at = counting.at(&"/contents/nothing", 0);
            counting.proof.fact(&SUM, nothing, at);
        }
        counting.finish()
    }

    /// Leaves open what is not said: for each property the finding that asks for it.
    pub fn leave_open(&mut self, unsaid: impl IntoIterator<Item = Unsaid>) {
        for Unsaid { rule, at, values: _, message } in unsaid {
            self.complete = false;
            open(&mut self.findings, rule, message, at, Some(at));
        }
    }

    /// Leaves everything open: nothing is said about the contents.
    pub fn leave_open_all(&mut self, space: Option<usize>) {
        self.complete = false;
        let place = match space {
            Some(space) => Pointer::of(&"/spaces/#", space).member(&"/contents"),
            None => Pointer::to(&"/contents"),
        };
        open(&mut self.findings, &outlet_volume::SCOPE, "finding-contents-unsaid", place, Some(place));
    }

    /// The allowance of a size, looked up once.
    pub fn allowance_of(&mut self, proof: &mut Derivation, size: ConductorSize) -> Option<Figure> {
        look_up(proof, &mut self.allowances, size)
    }

    /// The volume that is left when clamp assemblies have taken theirs.
    pub fn take_off_assemblies(&self, proof: &mut Derivation, volume: Figure) -> Figure {
        if self.assemblies.is_empty() {
            return volume;
        }
        let taken = proof.sum(&CLAMP_ASSEMBLY, &self.assemblies);
        let left = proof.difference(&CLAMP_ASSEMBLY, volume, taken);
        proof.at_least_zero(&CLAMP_ASSEMBLY, left)
    }

    /// The volume that a box must have for the contents and for clamp assemblies.
    pub fn with_assemblies(&self, proof: &mut Derivation) -> Figure {
        proof.sum_of(&SUM, [self.required].into_iter().chain(self.assemblies.iter().copied()))
    }
}

/// Adds that something is not determined: one finding for each sentence, with every input that it is about.
fn open(
    findings: &mut Vec<Finding>,
    rule: &'static Rule,
    message: &'static str,
    at: Pointer,
    supply: Option<Pointer>,
) {
    let same = |finding: &&mut Finding| finding.message == message && std::ptr::eq(finding.rule, rule);
    match findings.iter_mut().find(same) {
        Some(finding) => {
            finding.at.push(at);
            finding.supply.extend(supply);
        }
        None => {
            let mut finding = Finding::new(rule, Status::NotDetermined, message).at(at);
            finding.supply.extend(supply);
            findings.push(finding);
        }
    }
}

fn look_up(
    proof: &mut Derivation,
    allowances: &mut [Option<Figure>; ConductorSize::COUNT],
    size: ConductorSize,
) -> Option<Figure> {
    let known = &mut allowances[size.index()];
    if known.is_none() {
        *known = conductor_volume::of(size, proof.units()).map(|cell| proof.lookup(&ALLOWANCE, cell, None));
    }
    *known
}

/// Room for as many lines as a tally usually has.
const USUAL_LINES: usize = 8;

/// One input that takes allowances of one size.
struct Counted<'a> {
    what: Item,
    rule: &'static Rule,
    size: ConductorSize,
    allowances: Figure,
    id: Option<&'a Name>,
    at: Pointer,
}

/// Grounding conductors of one size that enter.
#[derive(Clone, Copy, Debug)]
pub struct Entering {
    /// Their size.
    pub size: ConductorSize,
    /// How many there are.
    pub count: Figure,
    /// Whether they are isolated.
    pub isolated: bool,
    /// Where they stand in the request.
    pub at: Pointer,
}

/// The count of one space, under way.
pub struct Counting<'a, 'p> {
    /// The proof.
    pub proof: &'p mut Derivation,
    book: Rulebook,
    contents: &'a Contents,
    space: Option<usize>,
    counted: SmallVec<[Counted<'a>; 8]>,
    grounding: SmallVec<[Entering; 4]>,
    assemblies: Vec<Figure>,
    not_counted: Vec<NotCounted>,
    findings: Vec<Finding>,
    allowances: [Option<Figure>; ConductorSize::COUNT],
    present: SizeSet,
    complete: bool,
    bound: Bound,
    unsaid: SmallVec<[Unsaid; 2]>,
}

impl<'a> Counting<'a, '_> {
    /// The sizes present in the box that have an allowance.
    pub(crate) fn present(&self) -> SizeSet {
        self.present.and(conductor_volume::sizes())
    }

    /// The allowance of a size, looked up once.
    pub(crate) fn allowance_of(&mut self, size: ConductorSize) -> Option<Figure> {
        look_up(self.proof, &mut self.allowances, size)
    }

    fn at(&self, pattern: Pattern, index: usize) -> Pointer {
        let item = Pointer::of(pattern, index);
        match self.space {
            Some(space) => item.under(&"/spaces/#", space),
            None => item,
        }
    }

    fn count_at(&mut self, rule: &'static Rule, count: Option<Many>, item: Pointer) -> Figure {
        self.proof.count(rule, count.map(Many::get), item)
    }

    fn leave_out(&mut self, what: Item, rule: &'static Rule, because: &'static str, at: Pointer) {
        let step = self.proof.does_not_apply(rule, because, Some(at));
        self.not_counted.push(NotCounted { what, rule: rule.id, because, at, step });
    }

    /// Notes that something cannot be counted: one finding for each sentence, with every input that it is about.
    fn open(&mut self, rule: &'static Rule, message: &'static str, at: Pointer, supply: Option<Pointer>) {
        self.complete = false;
        open(&mut self.findings, rule, message, at, supply);
    }

    /// Notes a property that is not said; whether this count takes it as the most that it can come to.
    fn leave_unsaid(&mut self, unsaid: Unsaid) -> bool {
        self.unsaid.push(unsaid);
        self.bound == Bound::Most
    }

    /// The size whose allowance a conductor takes; `None`, with a finding, where the table has none for it.
    fn sized(&mut self, size: ConductorSize, at: Pointer) -> Option<ConductorSize> {
        self.present.insert(size);
        if size >= self.proof.rulebook().pull.applies_from {
            self.open(&pull::APPLIES, "finding-pull-box-size", at, None);
            return None;
        }
        let smallest = self.proof.rulebook().outlet_fill.smallest;
        if size >= smallest {
            return Some(size);
        }
        match self.proof.reading::<SmallConductors>() {
            SmallConductors::AsEighteen => {
                self.present.insert(smallest);
                Some(smallest)
            }
            SmallConductors::NoFigure => {
                self.open(&ALLOWANCE, "finding-no-allowance-published", at, None);
                None
            }
        }
    }

    fn take(
        &mut self,
        what: Item,
        rule: &'static Rule,
        size: ConductorSize,
        allowances: Figure,
        at: Pointer,
    ) {
        self.counted.push(Counted { what, rule, size, allowances, id: None, at });
    }

    /// Clamps and support fittings are sized by the largest conductor present, so they come last.
    fn finish(&mut self) -> Fill {
        let clamps = self.clamps();
        let fittings = self.support_fittings();
        let connectors = self.wire_connectors();
        let grounding = self.grounding_lines();
        let mut tally = self.tally();
        let by_largest: Figures =
            [&clamps, &fittings, &connectors].into_iter().flatten().map(|(figure, _)| *figure).collect();
        let mut largest = None;
        if !by_largest.is_empty() {
            largest = self.largest_present();
            if let Some((size, each)) = largest {
                let for_clamps = (self.book.outlet_fill.clamps_by.apply)(self, (size, each));
                let mut add = |what, rule, part: Option<(Figure, Places)>| {
                    if let Some((allowances, at)) = part {
                        let (size, each) = if what == Item::Clamps { for_clamps } else { (size, each) };
                        let ids = SmallVec::new();
                        put_in_order(
                            &mut tally,
                            line(self.proof, what, rule, size, (allowances, each), ids, at),
                        );
                    }
                };
                add(Item::Clamps, &CLAMPS, clamps);
                add(Item::SupportFittings, &SUPPORT_FITTINGS, fittings);
                add(Item::SmallParts, &NOTHING, connectors);
            }
        }
        for line in grounding {
            put_in_order(&mut tally, line);
        }
        self.devices_differ(&tally);
        let required = if tally.is_empty() {
            self.proof.nothing(&SUM, Measure::Volume)
        } else {
            self.proof.sum_of(&SUM, tally.iter().map(|line| line.volume))
        };
        let by_largest = largest.map(|_| self.proof.sum(&CLAMPS, &by_largest));
        Fill {
            required,
            complete: self.complete,
            tally,
            not_counted: mem::take(&mut self.not_counted),
            findings: mem::take(&mut self.findings),
            largest: largest.map(|(_, each)| each),
            by_largest,
            unsaid: mem::take(&mut self.unsaid),
            assemblies: mem::take(&mut self.assemblies),
            allowances: self.allowances,
        }
    }

    /// One line for each item and size, with all its inputs.
    fn tally(&mut self) -> Vec<TallyLine> {
        let mut lines = Vec::with_capacity(USUAL_LINES);
        self.counted.sort_by_key(|one| (one.what, one.size));
        for group in self.counted.chunk_by(|one, next| (one.what, one.size) == (next.what, next.size)) {
            let Some(first) = group.first() else { continue };
            let (what, rule, size) = (first.what, first.rule, first.size);
            let Some(each) = look_up(self.proof, &mut self.allowances, size) else { continue };
            let (mut at, mut ids) = (Places::new(), SmallVec::new());
            for one in group {
                at.push(one.at);
                ids.extend(one.id.cloned());
            }
            let allowances = self.proof.sum_of(rule, group.iter().map(|one| one.allowances));
            lines.push(line(self.proof, what, rule, size, (allowances, each), ids, at));
        }
        lines
    }
}

/// A line of the tally: a number of allowances, each of a volume.
#[inline]
fn line(
    proof: &mut Derivation,
    what: Item,
    rule: &'static Rule,
    size: ConductorSize,
    (allowances, each): (Figure, Figure),
    ids: SmallVec<[Name; 1]>,
    at: Places,
) -> TallyLine {
    let volume = proof.product(rule, allowances, each, None);
    TallyLine { what, size, allowances, each, volume, rule: rule.id, ids, at }
}

/// Puts a line where its item and size belong; few lines are out of order, and lines are expensive to move.
fn put_in_order(tally: &mut Vec<TallyLine>, line: TallyLine) {
    let place = tally.partition_point(|other| (other.what, other.size) <= (line.what, line.size));
    tally.insert(place, line);
}
