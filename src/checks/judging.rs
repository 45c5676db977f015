//! From a request to an evaluation: judged by its check, accounted for, and never by a reading that is open and that nobody chose.

use super::either_units;
use super::retaking::First;
use super::{
    Account, Caution, Check, Entry, Evaluation, Finding, FindingArg, ReadingResult, RuleStatus, Status,
    Verdict,
};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::rulebook::reading::{Point, Standing};
use crate::rulebook::{NOTHING_DESCRIBED, Rulebook};
use smallvec::SmallVec;

/// What a check makes of a request, before the verdict is taken.
#[derive(Clone, Debug)]
pub struct Judgement<O> {
    /// What is answered.
    pub outcome: O,
    /// What was found, rule by rule.
    pub findings: Vec<Finding>,
    /// The proof.
    pub proof: Derivation,
    /// What must be said beside the usual cautions.
    pub cautions: Vec<Caution>,
    /// Whether the request asks for a verdict, or only for a size.
    pub is_judged: bool,
}

/// Evaluates a request under a rulebook.
pub fn evaluate_under<C: Check>(book: &Rulebook, request: &C::Request) -> Evaluation<C::Outcome> {
    follow::<C>(book, request)
}

/// The one way from rules to an evaluation, whether they are an edition's or mutated.
pub(super) fn follow<C: Check>(book: &Rulebook, request: &C::Request) -> Evaluation<C::Outcome> {
    let (mut evaluation, is_judged) = judged_once::<C>(book, request);
    if evaluation.verdict.is_some() {
        if evaluation.verdict != Some(Verdict::Complies) || !open_points(&evaluation.proof).is_empty() {
            take_again::<C>(book, request, &mut evaluation);
        }
        conclude(&mut evaluation);
        if !is_judged && evaluation.verdict != Some(Verdict::Violates) {
            (evaluation.verdict, evaluation.account) = (None, Account::default());
        } else if !is_judged {
            evaluation.account.leave_unasked();
        }
    }
    evaluation.findings.retain(|finding| !finding.is_needless);
    evaluation
}

/// Looks at what is not met in the other system of units, and at what turns on a reading that nobody chose; the rows of the outcome
/// then say what was found in the end.
fn take_again<C: Check>(book: &Rulebook, request: &C::Request, evaluation: &mut Evaluation<C::Outcome>) {
    let first = First::of(&evaluation.findings);
    meet_in_either::<C>(book, request, evaluation);
    let as_read = AsRead {
        verdict: evaluation.verdict,
        statuses: evaluation.findings.iter().map(|finding| finding.status).collect(),
    };
    let points = open_points(&evaluation.proof);
    let others: Vec<ReadOtherwise<C>> =
        points.iter().flat_map(|point| read_otherwise::<C>(*point, book, request)).collect();
    for point in points {
        reopen::<C>(point, &others, book, request, &as_read, evaluation);
    }
    if evaluation.verdict == as_read.verdict {
        reopen_together::<C>(&others, book, request, &as_read, evaluation);
    }
    if let Some(retaking) = first.retaking(&evaluation.findings) {
        C::retake(&mut evaluation.outcome, &retaking);
        C::tell_again(&mut evaluation.outcome, &mut evaluation.findings);
    }
}

/// Ends the proof: what decided each rule that something was found about, where the account comes to the same status.
fn conclude<O>(evaluation: &mut Evaluation<O>) {
    let Evaluation { account, findings, proof, .. } = evaluation;
    for Finding { rule, status, step, at, supply, .. } in findings {
        let came = account.entries().iter().find(|entry| std::ptr::eq(entry.rule, *rule));
        match (status, came.map(|entry| entry.status)) {
            (Status::Violated, Some(RuleStatus::Violated)) => proof.decided(rule, false, *step, at),
            (Status::Satisfied, Some(RuleStatus::Satisfied)) => proof.decided(rule, true, *step, at),
            (Status::NotDetermined, Some(RuleStatus::NotDetermined) | None) => {
                proof.undecided(rule, supply.iter().copied().find(|at| *at != Pointer::ROOT));
            }
            _ => {}
        }
    }
}

/// Evaluates a request under a rulebook whose readings all decide, in either system of units.
fn accounted<C: Check>(book: &Rulebook, request: &C::Request) -> Evaluation<C::Outcome> {
    let mut evaluation = accounted_once::<C>(book, request);
    meet_in_either::<C>(book, request, &mut evaluation);
    evaluation
}

fn meet_in_either<C: Check>(book: &Rulebook, request: &C::Request, evaluation: &mut Evaluation<C::Outcome>) {
    if evaluation.verdict.is_some() && either_units::apply::<C>(book, request, evaluation) {
        draw_up::<C>(request, evaluation);
    }
}

/// Evaluates a request under a rulebook whose readings all decide, in its own system of units.
pub(super) fn accounted_once<C: Check>(book: &Rulebook, request: &C::Request) -> Evaluation<C::Outcome> {
    judged_once::<C>(book, request).0
}

/// The same, and whether the request asks for a verdict. What is violated is a verdict, also where only a size is asked for.
fn judged_once<C: Check>(book: &Rulebook, request: &C::Request) -> (Evaluation<C::Outcome>, bool) {
    let Judgement { outcome, findings, proof, cautions, is_judged } = C::judge(book, request);
    let is_broken = findings.iter().any(|finding| finding.status == Status::Violated);
    let mut evaluation =
        Evaluation { verdict: None, outcome, findings, proof, cautions, account: Account::default() };
    if is_judged || is_broken {
        draw_up::<C>(request, &mut evaluation);
    }
    if is_judged {
        say_what_is_silent(&mut evaluation);
    }
    (evaluation, is_judged)
}

fn draw_up<C: Check>(request: &C::Request, evaluation: &mut Evaluation<C::Outcome>) {
    let Evaluation { findings, proof, .. } = evaluation;
    evaluation.account = Account::of(C::SUBJECTS, request, proof.rulebook().edition, findings, proof);
    evaluation.verdict = Some(Verdict::of(&evaluation.account));
}

/// Silence is said: a rule that is raised and that nothing was found about, and a request of which no rule is left to judge anything.
fn say_what_is_silent<O>(evaluation: &mut Evaluation<O>) {
    let Evaluation { account, findings, .. } = evaluation;
    let silent = account.entries().iter().filter(|entry| !entry.is_accounted_for);
    findings.extend(silent.map(|entry| {
        Finding::new(entry.rule, Status::NotDetermined, "finding-not-accounted-for").supply(Pointer::ROOT)
    }));
    let is_silent = |entry: &Entry| entry.status == RuleStatus::DoesNotApply;
    if account.entries().iter().all(is_silent) {
        let message =
            if account.raises_something() { "finding-nothing-judged" } else { "finding-nothing-described" };
        let finding = Finding::new(&NOTHING_DESCRIBED, Status::NotDetermined, message);
        findings.push(finding.supply(Pointer::ROOT));
    }
}

/// The points that mattered, are open, and that the caller chose no reading of.
pub(super) fn open_points(proof: &Derivation) -> SmallVec<[Point; 2]> {
    let readings = proof.rulebook().readings;
    let is_open = |point: &Point| point.standing() == Standing::Open && !readings.is_chosen(*point);
    proof.consulted().iter().copied().filter(is_open).collect()
}

/// What a request came to under the readings in force, before any of them was left open.
struct AsRead {
    verdict: Option<Verdict>,
    statuses: SmallVec<[Status; 24]>,
}

/// What a request comes to under another reading of a point.
struct ReadOtherwise<C: Check> {
    point: Point,
    book: Rulebook,
    evaluation: Evaluation<C::Outcome>,
}

/// What a request comes to under each other reading of a point.
fn read_otherwise<C: Check>(
    point: Point,
    book: &Rulebook,
    request: &C::Request,
) -> impl Iterator<Item = ReadOtherwise<C>> {
    let followed = book.readings.place(point);
    let places = (0..point.readings().len() as u8).filter(move |place| *place != followed);
    places.map(move |place| {
        let book = book.with_readings(book.readings.with_place(point, place));
        let evaluation = accounted::<C>(&book, request);
        ReadOtherwise { point, book, evaluation }
    })
}

/// Leaves open what another reading of an open point would turn over: whatever is found otherwise under it is not determined.
fn reopen<C: Check>(
    point: Point,
    others: &[ReadOtherwise<C>],
    book: &Rulebook,
    request: &C::Request,
    as_read: &AsRead,
    evaluation: &mut Evaluation<C::Outcome>,
) {
    let mut turned = Turned::default();
    let of_point = || others.iter().filter(|other| other.point == point);
    for other in of_point().filter(|other| other.evaluation.verdict != as_read.verdict) {
        turned.look_at(other, &evaluation.findings, as_read, &[point]);
    }
    if of_point().any(|other| other.evaluation.verdict != as_read.verdict) {
        let here = ReadingResult {
            reading: reading_of(book, point),
            verdict: as_read.verdict,
            figures: turned.figures(&evaluation.findings, evaluation),
        };
        let there = of_point().map(|other| ReadingResult {
            reading: reading_of(&other.book, point),
            verdict: other.evaluation.verdict,
            figures: turned.figures(&evaluation.findings, &other.evaluation),
        });
        let readings = FindingArg::Readings([here].into_iter().chain(there).collect());
        let finding = Finding::new(point.rule(), Status::NotDetermined, "finding-open-reading");
        turned.others.push(finding.with("readings", readings).supply(Pointer::to(point.chosen_at())));
        turned.leave_open::<C>(&[point], book, request, evaluation);
    }
}

/// What no single reading turns over, two together may: then what they turn over is left open.
fn reopen_together<C: Check>(
    others: &[ReadOtherwise<C>],
    book: &Rulebook,
    request: &C::Request,
    as_read: &AsRead,
    evaluation: &mut Evaluation<C::Outcome>,
) {
    for one in others {
        for second in open_points(&one.evaluation.proof).into_iter().filter(|second| *second != one.point) {
            let points = [one.point, second];
            let both = read_otherwise::<C>(second, &one.book, request)
                .find(|both| both.evaluation.verdict != as_read.verdict);
            if let Some(both) = both {
                let mut turned = Turned::default();
                turned.look_at(&both, &evaluation.findings, as_read, &points);
                let finding =
                    Finding::new(one.point.rule(), Status::NotDetermined, "finding-open-readings-together")
                        .with("one", one.point.name())
                        .with("one_reading", reading_of(&both.book, one.point))
                        .with("other", second.name())
                        .with("other_reading", reading_of(&both.book, second));
                let supply = points.map(|point| Pointer::to(point.chosen_at()));
                turned.others.push(supply.into_iter().fold(finding, Finding::supply));
                turned.leave_open::<C>(&points, book, request, evaluation);
                return;
            }
        }
    }
}

/// The reading of a point that is in force.
fn reading_of(book: &Rulebook, point: Point) -> &'static str {
    point.readings()[usize::from(book.readings.place(point))]
}

/// What other readings turn over: places of findings, and what is found there otherwise.
#[derive(Default)]
struct Turned {
    findings: Vec<usize>,
    others: Vec<Finding>,
}

impl Turned {
    fn look_at<C: Check>(
        &mut self,
        other: &ReadOtherwise<C>,
        findings: &[Finding],
        as_read: &AsRead,
        points: &[Point],
    ) {
        for (index, (finding, was)) in findings.iter().zip(&as_read.statuses).enumerate() {
            let same = |found: &&Finding| std::ptr::eq(found.rule, finding.rule) && found.at == finding.at;
            let theirs = other.evaluation.findings.iter().find(same);
            if theirs.map(|found| found.status) != Some(*was) && *was != Status::Advisory {
                self.findings.push(index);
                self.others.extend(theirs.map(|found| Finding {
                    status: Status::NotDetermined,
                    read_as: points.last().map(|point| reading_of(&other.book, *point)),
                    supply: points.iter().map(|point| Pointer::to(point.chosen_at())).collect(),
                    step: None,
                    ..found.clone()
                }));
            }
        }
    }

    /// What is compared, and with what, under a reading: by the first of what is turned over that compares anything there.
    fn figures<O>(&self, findings: &[Finding], under: &Evaluation<O>) -> Option<[Figure; 2]> {
        let turned = self.findings.iter().filter_map(|index| findings.get(*index)).chain(&self.others);
        turned.into_iter().find_map(|turned| {
            let same = |found: &&Finding| std::ptr::eq(found.rule, turned.rule) && found.at == turned.at;
            under.findings.iter().filter(same).find_map(|found| under.proof.compared(found.step?))
        })
    }

    fn leave_open<C: Check>(
        mut self,
        points: &[Point],
        book: &Rulebook,
        request: &C::Request,
        evaluation: &mut Evaluation<C::Outcome>,
    ) {
        for index in self.findings {
            if let Some(finding) = evaluation.findings.get_mut(index) {
                finding.status = Status::NotDetermined;
                finding.read_as = points.last().map(|point| reading_of(book, *point));
                finding.unless.clear();
                finding.supply.extend(points.iter().map(|point| Pointer::to(point.chosen_at())));
            }
        }
        evaluation.findings.append(&mut self.others);
        draw_up::<C>(request, evaluation);
    }
}
