//! A demand is met if it is met in either system of units (90.9(D)).
//!
//! Each demand is worked wholly in one system: where something is not met in the system of the request, the request is converted and
//! judged again in the other one. What is met there is met; a demand is violated only where it fails in both, and what combines
//! several demands is met where each of them is, in either system. Only then is anything judged twice.

use super::judging::{accounted_once, open_points};
use super::{Account, Check, Evaluation, Finding, FindingArg, Request as _, RuleStatus, Status, Verdict};
use crate::derivation::{Derivation, Operation, Outcome, Pointer, Step, StepId};
use crate::rulebook::reading::UnitsOfMeasure;
use crate::rulebook::{Rule, Rulebook};
use std::ptr;

/// What the other system says about a finding.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Other<'a> {
    /// The demand is met there, as a step of its proof says.
    Met(StepId),
    /// It cannot be decided there.
    Open(&'a Finding),
    /// It is about a way that another way makes needless there.
    Needless,
    /// It is not asked there, as the last step about it says, if there is one.
    NotAsked(Option<StepId>),
}

/// Lets what is met in the other system of units be met; whether anything changed.
pub(super) fn apply<C: Check>(
    book: &Rulebook,
    request: &C::Request,
    evaluation: &mut Evaluation<C::Outcome>,
) -> bool {
    let fails = |finding: &Finding| matches!(finding.status, Status::Violated | Status::NotDetermined);
    let either = book.readings.of::<UnitsOfMeasure>() == UnitsOfMeasure::Either;
    if !either || !evaluation.findings.iter().any(fails) {
        return false;
    }
    let units = request.terms().units;
    let converted = request.in_other_units(&book.unit_systems.conversion(units.other()));
    let other = accounted_once::<C>(&book.for_other_units(units), &converted);
    let differ: Vec<(usize, Other<'_>)> = (0..evaluation.findings.len())
        .filter(|index| fails(&evaluation.findings[*index]))
        .filter_map(|index| Some((index, told(index, evaluation, &other)?)))
        .collect();
    if differ.is_empty() {
        // a reading that is open may matter there only
        let known = evaluation.proof.consulted();
        if open_points(&other.proof).iter().any(|point| !known.contains(point)) {
            evaluation.proof.append(&other.proof, &[]);
        }
        return false;
    }
    evaluation.proof.reading::<UnitsOfMeasure>();
    let asked_there = asked_only_there(evaluation, &other);
    let deciding: Vec<StepId> = differ.iter().filter_map(|(_, other)| other.step()).collect();
    let lifting = differ
        .iter()
        .filter(|(_, told)| matches!(told, Other::NotAsked(Some(_))))
        .filter_map(|(index, _)| lifted_by(&other.proof, evaluation.findings[*index].rule));
    // the steps that lift a rule come after those that decide, so that each of these is found at its place
    let wanted: Vec<StepId> = deciding.into_iter().chain(lifting).collect();
    let mut here = evaluation.proof.append(&other.proof, &wanted).into_iter();
    let mut met = Vec::new();
    for (index, told) in differ {
        let finding = &mut evaluation.findings[index];
        match told {
            Other::Met(_) => {
                let step = here.next();
                met.extend(finding.step.zip(step));
                be_met(finding, &evaluation.proof, step);
            }
            Other::Open(open) => {
                finding.status = Status::NotDetermined;
                finding.message = "finding-open-in-other-units";
                finding.supply.clone_from(&open.supply);
                finding.unless.clear();
            }
            Other::Needless => finding.supersede(),
            Other::NotAsked(step) => {
                finding.supersede();
                finding.message = "finding-not-asked-in-other-units";
                finding.step = step.and_then(|_| here.next());
            }
        }
    }
    for (index, open) in asked_there {
        evaluation.findings[index] = open;
    }
    meet_combined(evaluation, &met);
    true
}

/// What is not asked for here because the way that it is about is broken, and there is not broken but open.
fn asked_only_there<O>(here: &Evaluation<O>, other: &Evaluation<O>) -> Vec<(usize, Finding)> {
    if other.verdict == Some(Verdict::Violates) {
        return Vec::new();
    }
    let needless = (0..here.findings.len()).filter(|index| here.findings[*index].is_needless);
    needless
        .filter_map(|index| Some((index, counterpart(index, &here.findings, &other.findings)?.clone())))
        .filter(|(_, there)| there.status == Status::NotDetermined)
        .collect()
}

impl Other<'_> {
    const fn step(self) -> Option<StepId> {
        match self {
            Self::Met(step) => Some(step),
            Self::NotAsked(step) => step,
            Self::Open(_) | Self::Needless => None,
        }
    }
}

fn be_met(finding: &mut Finding, proof: &Derivation, step: Option<StepId>) {
    let compared = |step: Option<StepId>| step.and_then(|step| proof.compared(step));
    let (here, there) = (compared(finding.step), compared(step));
    let combines = |step: StepId| {
        let step = proof.steps().get(step.index());
        step.is_some_and(|step| matches!(step.operation, Operation::Every | Operation::Any))
    };
    let is_combined = finding.step.is_some_and(combines);
    finding.status = Status::Satisfied;
    finding.step = step;
    finding.supply.clear();
    finding.unless.clear();
    finding.arguments.retain(|(_, argument)| matches!(argument, FindingArg::Text(_)));
    finding.message = match (here, there) {
        (Some(_), Some(_)) => "finding-met-in-other-units-by-figures",
        (None, Some(_)) => "finding-met-in-other-units-by-figures-there",
        _ if is_combined => "finding-met-in-either-units",
        _ => "finding-met-in-other-units",
    };
    let of_request = here.filter(|_| there.is_some()).map(|[here, limit]| [("here", here), ("limit", limit)]);
    let of_other = there.map(|[there, limit]| [("there", there), ("other_limit", limit)]);
    let named = of_request.into_iter().chain(of_other).flatten();
    finding.arguments.extend(named.map(|(name, figure)| (name, FindingArg::Figure(figure))));
}

/// What the other system says about a finding, where that is better than what is found here.
fn told<'a, O>(index: usize, here: &Evaluation<O>, other: &'a Evaluation<O>) -> Option<Other<'a>> {
    let finding = here.findings.get(index)?;
    let rule = finding.rule;
    let met = |step, about: &Finding| other.proof.deciding(rule, step, &about.at).map(Other::Met);
    if let Some(same) = counterpart(index, &here.findings, &other.findings) {
        return match same.status {
            // nobody is asked for it there because the way that it is about is broken already
            _ if same.is_needless && other.verdict == Some(Verdict::Violates) => None,
            _ if same.is_superseded => Some(Other::Needless),
            Status::Satisfied => met(same.step, same),
            Status::NotDetermined if finding.status == Status::Violated => Some(Other::Open(same)),
            _ => None,
        };
    }
    let found =
        |status| other.findings.iter().find(|found| ptr::eq(found.rule, rule) && found.status == status);
    let said = found(Status::Satisfied).and_then(|found| met(found.step, found));
    let shown = || shown_by_steps(finding, &here.proof, &other.proof).map(Other::Met);
    match came(&other.account, rule) {
        // the rule fails there in something else that it asks
        Some(RuleStatus::Violated) => met_of_input(finding, &here.proof, &other.proof).map(Other::Met),
        Some(RuleStatus::NotDetermined) => {
            found(Status::NotDetermined).filter(|_| finding.status == Status::Violated).map(Other::Open)
        }
        Some(RuleStatus::Satisfied) if said.is_some() => said,
        Some(RuleStatus::Satisfied | RuleStatus::DoesNotApply) | None => shown().or_else(|| {
            // that is no way out where the other system asks for something else instead, and that fails
            let is_asked_here = |open: &Finding| {
                here.findings.iter().any(|found| ptr::eq(found.rule, open.rule) && is_decided(found))
            };
            let fails = |found: &&Finding| matches!(found.status, Status::Violated | Status::NotDetermined);
            let asks_nothing_else = other.findings.iter().filter(fails).all(is_asked_here);
            // nor for what is only open here, where the other system fails: it does not come so far as to ask
            let stops = finding.status == Status::NotDetermined && other.verdict == Some(Verdict::Violates);
            (asks_nothing_else && !stops).then(|| Other::NotAsked(not_asked_by(&other.proof, rule)))
        }),
    }
}

/// The last step that lifts a rule.
fn lifted_by(proof: &Derivation, rule: &Rule) -> Option<StepId> {
    let lifts =
        |step: &Step| ptr::eq(step.rule, rule) && matches!(step.operation, Operation::DoesNotApply { .. });
    proof.steps().iter().rposition(lifts).map(StepId::at)
}

/// The step by which a rule is not asked: the comparison upon which it is lifted, otherwise what lifts it, otherwise the last about it.
fn not_asked_by(proof: &Derivation, rule: &Rule) -> Option<StepId> {
    let Some(lifted) = lifted_by(proof, rule) else { return proof.last_of(rule) };
    let before = lifted.index().checked_sub(1);
    let compares = |index: &usize| {
        let step = &proof.steps()[*index];
        ptr::eq(step.rule, rule) && matches!(step.operation, Operation::Compare { .. })
    };
    Some(before.filter(compares).map_or(lifted, StepId::at))
}

fn is_decided(finding: &Finding) -> bool {
    finding.status != Status::Advisory
}

/// The step by which a rule that is silent where it is met is met: of all that ask what failed here, none fails there; or what was not
/// said does not matter there.
fn shown_by_steps(finding: &Finding, here: &Derivation, other: &Derivation) -> Option<StepId> {
    let of_rule = || other.steps().iter().enumerate().filter(|(_, step)| ptr::eq(step.rule, finding.rule));
    let failed = finding.step.and_then(|step| here.steps().get(step.index()));
    let asks = |step: &Step| match failed {
        Some(failed) => step.operation == failed.operation,
        None => {
            matches!(step.operation, Operation::Whatever { .. })
                && step.at.is_some_and(|at| finding.at.contains(&at))
        }
    };
    let mut asking = of_rule().filter(|(_, step)| asks(step));
    let fails = |step: &Step| match failed {
        Some(failed) => step.outcome == failed.outcome || !matches!(step.outcome, Outcome::Holds(_)),
        None => step.outcome != Outcome::Holds(true),
    };
    if asking.clone().any(|(_, step)| fails(step)) {
        return None;
    }
    asking.next_back().map(|(index, _)| StepId::at(index))
}

/// The step by which what is given there is met there, where the same comparison of the same input fails here, whatever else the rule
/// asks.
fn met_of_input(finding: &Finding, here: &Derivation, other: &Derivation) -> Option<StepId> {
    let failed = here.steps().get(finding.step?.index())?;
    let input = input_of(failed, here)?;
    let of_input = |step: &Step| step.operation == failed.operation && input_of(step, other) == Some(input);
    let same = other.steps().iter().enumerate().filter(|(_, step)| ptr::eq(step.rule, finding.rule));
    let mut same = same.filter(|(_, step)| of_input(step));
    if same.clone().any(|(_, step)| step.outcome != Outcome::Holds(true)) {
        return None;
    }
    same.next_back().map(|(index, _)| StepId::at(index))
}

/// Where what a step compares was given.
fn input_of(step: &Step, proof: &Derivation) -> Option<Pointer> {
    if !matches!(step.operation, Operation::Compare(_)) {
        return None;
    }
    let step_of = |id: &StepId| proof.steps().get(id.index());
    let given = step_of(proof.operands(step).first()?)?;
    match given.operation {
        Operation::Converted => step_of(proof.operands(given).first()?)?.at,
        _ => given.at,
    }
}

/// What combines demands is met where each of them is, in either system. Only where nothing else is violated: another way that fails
/// is then none that would have to be left out.
fn meet_combined<O>(evaluation: &mut Evaluation<O>, met: &[(StepId, StepId)]) {
    let Evaluation { findings, proof, .. } = evaluation;
    let violated = || {
        let of_status = |finding: &&Finding| finding.status == Status::Violated;
        findings.iter().filter(of_status)
    };
    let is_met = |finding: &Finding| finding.step.is_some_and(|step| holds_now(step, proof, met));
    if violated().next().is_none() || !violated().all(is_met) {
        return;
    }
    let unsaid = ask_again(findings);
    for finding in findings.iter_mut().filter(|finding| finding.status == Status::Violated) {
        if unsaid.is_empty() {
            let step = finding.step.and_then(|step| combined_again(step, finding.rule, proof, met));
            be_met(finding, proof, step);
        } else {
            finding.status = Status::NotDetermined;
            finding.message = "finding-open-in-other-units";
            finding.supply.extend(&unsaid);
            finding.unless.clear();
            finding.step = None;
        }
    }
}

/// Asks again for what nobody was asked for because the way that it is about was broken; where it is.
fn ask_again(findings: &mut [Finding]) -> Vec<Pointer> {
    let mut unsaid = Vec::new();
    for finding in findings.iter_mut().filter(|finding| finding.is_needless) {
        finding.status = Status::NotDetermined;
        (finding.is_needless, finding.is_superseded) = (false, false);
        finding.supply.extend(&finding.at);
        unsaid.extend(&finding.at);
    }
    unsaid
}

/// Whether a step holds, with those taken for it that are met in the other system.
fn holds_now(step: StepId, proof: &Derivation, met: &[(StepId, StepId)]) -> bool {
    if met.iter().any(|(failed, _)| *failed == step) {
        return true;
    }
    let Some(combined) = proof.steps().get(step.index()) else { return false };
    let mut of = proof.operands(combined).iter().map(|part| holds_now(*part, proof, met));
    match combined.operation {
        Operation::Every => of.all(|holds| holds),
        Operation::Any => of.any(|holds| holds),
        _ => proof.holds(step),
    }
}

/// A step that combines what another does, with those that are met in the other system in place of those that failed.
fn combined_again(
    step: StepId,
    rule: &'static Rule,
    proof: &mut Derivation,
    met: &[(StepId, StepId)],
) -> Option<StepId> {
    if let Some((_, there)) = met.iter().find(|(failed, _)| *failed == step) {
        return Some(*there);
    }
    let combined = proof.steps().get(step.index())?;
    let operation = combined.operation;
    let of = proof.operands(combined).to_vec();
    match operation {
        Operation::Every | Operation::Any => {
            let of: Vec<StepId> =
                of.into_iter().filter_map(|part| combined_again(part, rule, proof, met)).collect();
            if operation == Operation::Every { proof.every(rule, &of) } else { proof.any(rule, &of) }
        }
        _ => Some(step),
    }
}

/// The finding about the same rule, the same places and the same things, and as many of them before it.
fn counterpart<'a>(index: usize, here: &[Finding], other: &'a [Finding]) -> Option<&'a Finding> {
    let finding = here.get(index)?;
    let same = |found: &&Finding| is_about_the_same(found, finding);
    let before = here[..index].iter().filter(same).count();
    other.iter().filter(same).nth(before)
}

fn is_about_the_same(one: &Finding, other: &Finding) -> bool {
    fn named(finding: &Finding) -> impl Iterator<Item = (&'static str, &str)> {
        finding.arguments.iter().filter_map(|(name, argument)| match argument {
            FindingArg::Text(text) => Some((*name, text.as_str())),
            _ => None,
        })
    }
    ptr::eq(one.rule, other.rule) && one.at == other.at && named(one).eq(named(other))
}

fn came(account: &Account, rule: &Rule) -> Option<RuleStatus> {
    account.entries().iter().find(|entry| ptr::eq(entry.rule, rule)).map(|entry| entry.status)
}
