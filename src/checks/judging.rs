//! From a request to an evaluation: judged by its check, accounted for, and never by a reading that is open and that nobody chose.

use super::either_units;
use super::retaking::First;
use super::{Account, Caution, Check, Entry, Evaluation, Finding, FindingArg, RuleStatus, Status, Verdict};
use crate::derivation::{Derivation, Pointer};
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
    let mut evaluation = accounted_once::<C>(book, request);
    if evaluation.verdict.is_some() {
        if evaluation.verdict != Some(Verdict::Complies) || !open_points(&evaluation.proof).is_empty() {
            take_again::<C>(book, request, &mut evaluation);
        }
        conclude(&mut evaluation);
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
    for point in open_points(&evaluation.proof) {
        reopen::<C>(point, book, request, &as_read, evaluation);
    }
    if let Some(retaking) = first.retaking(&evaluation.findings) {
        C::retake(&mut evaluation.outcome, &retaking);
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
    let Judgement { outcome, findings, proof, cautions, is_judged } = C::judge(book, request);
    let mut evaluation =
        Evaluation { verdict: None, outcome, findings, proof, cautions, account: Account::default() };
    if is_judged {
        draw_up::<C>(request, &mut evaluation);
        say_what_is_silent(&mut evaluation);
    }
    evaluation
}

fn draw_up<C: Check>(request: &C::Request, evaluation: &mut Evaluation<C::Outcome>) {
    let Evaluation { findings, proof, .. } = evaluation;
    evaluation.account = Account::of(C::SUBJECTS, request, proof.rulebook().edition, findings, proof);
    evaluation.verdict = Some(Verdict::of(&evaluation.account));
}

/// Silence is said: a rule that is raised and that nothing was found about, and a request that describes nothing.
fn say_what_is_silent<O>(evaluation: &mut Evaluation<O>) {
    let Evaluation { account, findings, .. } = evaluation;
    let silent = account.entries().iter().filter(|entry| !entry.is_accounted_for);
    findings.extend(silent.map(|entry| {
        Finding::new(entry.rule, Status::NotDetermined, "finding-not-accounted-for").supply(Pointer::ROOT)
    }));
    let is_silent = |entry: &Entry| entry.status == RuleStatus::DoesNotApply;
    if !account.raises_something() && account.entries().iter().all(is_silent) {
        let finding = Finding::new(&NOTHING_DESCRIBED, Status::NotDetermined, "finding-nothing-described");
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

/// Leaves open what another reading of an open point would turn over: whatever is found otherwise under it is not determined.
fn reopen<C: Check>(
    point: Point,
    book: &Rulebook,
    request: &C::Request,
    as_read: &AsRead,
    evaluation: &mut Evaluation<C::Outcome>,
) {
    let followed = book.readings.place(point);
    let mut verdicts = vec![(point.readings()[usize::from(followed)], as_read.verdict)];
    let (mut turned, mut others) = (Vec::new(), Vec::new());
    for place in (0..point.readings().len() as u8).filter(|place| *place != followed) {
        let other = accounted::<C>(&book.with_readings(book.readings.with_place(point, place)), request);
        verdicts.push((point.readings()[usize::from(place)], other.verdict));
        if other.verdict == as_read.verdict {
            continue;
        }
        for (index, (finding, was)) in evaluation.findings.iter().zip(&as_read.statuses).enumerate() {
            let same = |found: &&Finding| std::ptr::eq(found.rule, finding.rule) && found.at == finding.at;
            let theirs = other.findings.iter().find(same);
            if theirs.map(|found| found.status) != Some(*was) && *was != Status::Advisory {
                turned.push(index);
                others.extend(theirs.map(|found| Finding {
                    status: Status::NotDetermined,
                    read_as: Some(point.readings()[usize::from(place)]),
                    supply: vec![Pointer::to(point.chosen_at())],
                    step: None,
                    ..found.clone()
                }));
            }
        }
        turned.push(usize::MAX);
    }
    if turned.is_empty() {
        return;
    }
    for index in turned {
        if let Some(finding) = evaluation.findings.get_mut(index) {
            finding.status = Status::NotDetermined;
            finding.read_as = Some(point.readings()[usize::from(followed)]);
            finding.unless.clear();
            finding.supply.push(Pointer::to(point.chosen_at()));
        }
    }
    let finding = Finding::new(point.rule(), Status::NotDetermined, "finding-open-reading");
    let finding = finding.with("readings", FindingArg::Readings(verdicts));
    evaluation.findings.append(&mut others);
    evaluation.findings.push(finding.supply(Pointer::to(point.chosen_at())));
    draw_up::<C>(request, evaluation);
}
