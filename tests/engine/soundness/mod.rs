//! The laws of soundness, each held by one test over every check: over conformance cases, published examples, and requests
//! generated from both. What is said of each is counted in the output of its test.

mod contradictions;
mod open_readings;
mod supply;

use crate::corpus::{self, Asked, Schemas, kind_of, mutated, without};
use elbowroom::checks::{Check, Evaluation, Finding, RuleStatus, Status, Verdict, evaluate, faults_of};
use elbowroom::derivation::DerivationView;
use elbowroom::json;
use elbowroom::of_each_check;
use elbowroom::rulebook::{Rule, geometry};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::LazyLock;

/// The seed of the generated requests: `ELBOWROOM_SEED`, 14 unless said.
static SEED: LazyLock<u64> =
    LazyLock::new(|| std::env::var("ELBOWROOM_SEED").map_or(14, |text| text.parse().expect("a seed")));

static SCHEMAS: LazyLock<Schemas> = LazyLock::new(Schemas::published);

/// Every conformance case and example.
static WHOLE: LazyLock<Vec<Asked>> = LazyLock::new(corpus::whole);

/// Requests generated from them.
static GENERATED: LazyLock<Vec<Asked>> = LazyLock::new(|| mutated(&SCHEMAS, &WHOLE, *SEED));

fn all() -> impl Iterator<Item = &'static Asked> {
    WHOLE.iter().chain(GENERATED.iter())
}

/// What evaluating a request comes to, as far as the laws look at it.
struct Judged {
    verdict: Option<Verdict>,
    /// Rules that apply and that the check said nothing about, and rules of no subject that was described.
    unaccounted: Vec<&'static str>,
    /// Rules of the account that came out well while only an advisory speaks of them, by the keys of its sentence.
    advised: Vec<(&'static str, &'static str)>,
    /// Rules that are violated.
    violated: Vec<&'static str>,
    /// Whether any rule applies. Where what is said lifts all of them nothing is judged, and without it something may be.
    judges: bool,
}

fn judge<C: Check>(request: &Value) -> Option<Judged> {
    let Evaluation { verdict, account, findings, .. } = evaluated::<C>(request)?;
    let entries = account.entries().iter();
    let unaccounted = entries
        .clone()
        .filter(|entry| !entry.is_accounted_for || entry.subject.is_empty())
        .filter(|entry| entry.status != RuleStatus::DoesNotApply)
        .map(|entry| entry.rule.id)
        .collect();
    let about = |rule: &'static Rule| findings.iter().filter(move |finding| std::ptr::eq(finding.rule, rule));
    let only_advised = |rule: &'static Rule| about(rule).all(|finding| finding.status == Status::Advisory);
    let advised = entries
        .clone()
        .filter(|entry| entry.status == RuleStatus::Satisfied && only_advised(entry.rule))
        .flat_map(|entry| about(entry.rule).map(|Finding { rule, message, .. }| (rule.id, *message)))
        .collect();
    let violated = account.rules(RuleStatus::Violated).map(|rule| rule.id).collect();
    let judges = findings.iter().all(|finding| finding.message != "finding-nothing-judged");
    Some(Judged { verdict, unaccounted, advised, violated, judges })
}

/// The evaluation of a request; `None` for one that is refused.
fn evaluated<C: Check>(request: &Value) -> Option<Evaluation<C::Outcome>> {
    let request: C::Request = json::read_value(request.clone()).ok()?;
    faults_of::<C>(&request).is_empty().then(|| evaluate::<C>(&request))
}

/// Judges a request of one check.
type Judge = fn(&Value) -> Option<Judged>;

static JUDGES: LazyLock<BTreeMap<&str, Judge>> =
    LazyLock::new(|| of_each_check!(C => (<C as Check>::NAME, judge::<C> as Judge)).into());

fn verdict_of(check: &str, request: &Value) -> Option<Verdict> {
    JUDGES[check](request)?.verdict
}

/// What may be left out of a request: properties and reliefs, and what is a thing or has a default only for some of its values.
fn droppable(Asked { check, request, .. }: &Asked) -> Vec<String> {
    let mut places = SCHEMAS.droppable(check, request);
    let members = SCHEMAS.members(check, request);
    // metal is what a box is grounded for; the law gives NM cable its grounding conductor
    let also = |member: &corpus::schemas::Member<'_>| match kind_of(&member.at).as_str() {
        "/enclosure/material" => check == "box_mounting" && member.value == "nonmetallic",
        "/contents/cables/grounding" | "/spaces/contents/cables/grounding" => {
            let cable = member.at.rsplit_once('/').and_then(|(cable, _)| request.pointer(cable));
            cable.is_some_and(|cable| cable["kind"] != "NM-B")
        }
        // the law gives a box without a mark so much: what is heavier needs one
        "/box/marked_weight" => {
            let is_fan = request["load"]["kind"] == "ceiling_fan";
            let unmarked = match (is_fan, request["units"] == "si") {
                (false, false) => 50.0,
                (true, false) => 35.0,
                (false, true) => 23.0,
                (true, true) => 16.0,
            };
            request["load"]["weight"].as_f64().is_some_and(|weight| weight > unmarked)
        }
        _ => false,
    };
    places.extend(members.into_iter().filter(also).map(|member| member.at));
    // in 2017 it brings in spare conductors, which are things: those that nobody names are not there
    if request["edition"] == "2017" && request["fan_location"]["spare_conductors"] == true {
        places.retain(|at| at != "/fan_location");
    }
    places
}

#[test]
fn silence_never_buys_approval() {
    let (mut tried, mut drops) = (BTreeMap::<&str, u32>::new(), 0);
    let mut bought = BTreeMap::<String, String>::new();
    for asked in all() {
        let Asked { check, name, request } = asked;
        let Some(judged) = JUDGES[check.as_str()](request) else { continue };
        if !judged.judges || matches!(judged.verdict, None | Some(Verdict::Complies)) {
            continue;
        }
        *tried.entry(check).or_default() += 1;
        for at in droppable(asked) {
            let Some(judged) = JUDGES[check.as_str()](&without(request, &at)) else { continue };
            drops += 1;
            if judged.verdict == Some(Verdict::Complies) {
                let what = format!("{check} {}", kind_of(&at));
                bought.entry(what).or_insert_with(|| format!("{name}: {request}"));
            }
        }
    }
    println!("{drops} members left out of requests that do not comply: {tried:?}");
    assert!(drops > 20_000, "{drops}");
    assert_eq!(tried.len(), JUDGES.len(), "a check of which nothing fails");
    assert!(bought.is_empty(), "approval bought by silence: {bought:#?}");
}

#[test]
fn every_rule_is_accounted_for() {
    let (mut counted, mut forgotten) = (BTreeMap::<&str, u32>::new(), BTreeMap::<String, String>::new());
    for Asked { check, name, request } in all() {
        let Some(judged) = JUDGES[check.as_str()](request) else { continue };
        *counted.entry(check).or_default() += 1;
        for rule in judged.unaccounted {
            forgotten.entry(format!("{check}: {rule}")).or_insert_with(|| format!("{name}: {request}"));
        }
    }
    println!("accounts drawn up: {counted:?}");
    assert!(forgotten.is_empty(), "rules that a check does not account for: {forgotten:#?}");
}

#[test]
fn no_advisory_carries_a_requirement() {
    let mut advised = BTreeMap::<(&str, &str), &str>::new();
    for Asked { check, name, request } in all() {
        for found in JUDGES[check.as_str()](request).map(|judged| judged.advised).unwrap_or_default() {
            advised.entry(found).or_insert(name);
        }
    }
    let unknown: Vec<_> = advised.iter().filter(|(found, _)| !ADVICE.contains(found)).collect();
    assert!(unknown.is_empty(), "{unknown:#?}");
}

/// What is only told about rules that are worked with: where a requirement hangs on it, another finding decides.
const ADVICE: [(&str, &str); 22] = [
    ("enclosure-type.moisture", "finding-moisture-taken-as"),
    ("free-conductor.spliced", "finding-shared-pigtail"),
    ("free-conductor.spliced", "finding-splice-counts"),
    ("free-conductor.spliced", "finding-splice-counts-silent"),
    ("free-conductor.spliced", "finding-splice-may-reach"),
    ("free-conductor.spliced", "finding-splice-may-reach-silent"),
    ("outlet-fill.conductors", "finding-loop-threshold"),
    ("outlet-fill.devices", "finding-devices-differ"),
    ("outlet-volume.assembly", "finding-section-adds-nothing"),
    ("outlet-volume.barrier", "finding-barrier-policy"),
    ("outlet-volume.marked", "finding-inside-measure"),
    ("pull.applies", "finding-sized-by-volume"),
    ("pull.marked-smaller", "finding-full-fill-exceeded"),
    ("pull.marked-smaller", "finding-mark-at-full-fill"),
    ("pull.marked-smaller", "finding-mark-exceeded"),
    ("pull.marked-smaller", "finding-mark-not-listed"),
    ("raceway-fill.nipple", "finding-taken-as-nipple"),
    ("raceway-fill.nipple", "finding-too-long-for-nipple"),
    ("raceway-fill.raceway-area", "finding-other-area-count"),
    ("raceway-fill.raceway-area", "finding-other-area-room"),
    ("raceway-fill.raceway-area", "finding-other-area-size"),
    ("raceway-fill.raceway-area", "finding-unconfirmed-dimensions"),
];

#[test]
fn what_cannot_be_built_violates() {
    let mut found = BTreeSet::new();
    for Asked { check, name, request } in all() {
        let Some(judged) = JUDGES[check.as_str()](request) else { continue };
        let impossible = judged.violated.iter().filter(|rule| rule.starts_with("geometry."));
        for rule in impossible {
            assert_eq!(judged.verdict, Some(Verdict::Violates), "{name}");
            found.insert(*rule);
        }
    }
    let known = [
        &geometry::GANGS,
        &geometry::BARRIERS,
        &geometry::ENTRIES,
        &geometry::RACEWAYS,
        &geometry::POSITIONS,
    ];
    assert_eq!(found, known.map(|rule| rule.id).into_iter().collect(), "never violated by any request");
}

#[test]
fn what_decides_is_in_the_proof() {
    let provers: BTreeMap<&str, fn(&Value) -> Option<String>> =
        of_each_check!(C => (<C as Check>::NAME, proof_text::<C> as fn(&Value) -> Option<String>)).into();
    let (mut decided, mut silent) = (0, BTreeMap::<String, String>::new());
    for asked in WHOLE.iter().filter(|asked| asked.request["edition"] == "2023") {
        let Asked { check, name, request } = asked;
        let verdict = verdict_of(check, request);
        if !matches!(verdict, Some(Verdict::Complies | Verdict::Violates)) {
            continue;
        }
        let Some(proof) = provers[check.as_str()](request) else { continue };
        for at in droppable(asked) {
            let Some(judged) = JUDGES[check.as_str()](&without(request, &at)) else { continue };
            if judged.verdict.is_none() || judged.verdict == verdict {
                continue;
            }
            decided += 1;
            // a size that only chooses a row is told by the row that the step of the whole thing looks up
            let holder = at.rsplit_once('/').map(|(holder, _)| holder).filter(|_| chooses_a_row(&at));
            let places = [Some(at.as_str()), holder];
            if !places.iter().flatten().any(|place| proof.contains(&format!("\"{place}"))) {
                let what = format!("{check} {}", kind_of(&at));
                silent.entry(what).or_insert_with(|| format!("{name}: {request}"));
            }
        }
    }
    println!("{decided} members without which the verdict is another");
    assert!(decided > 500, "{decided}");
    assert!(silent.is_empty(), "facts that decide and are no step: {silent:#?}");
}

fn proof_text<C: Check>(request: &Value) -> Option<String> {
    let Evaluation { proof, .. } = evaluated::<C>(request)?;
    serde_json::to_string(&DerivationView::from(&proof)).ok()
}

fn chooses_a_row(at: &str) -> bool {
    at.contains("/contents/devices/") && at.ends_with("/largest_conductor")
        || at.contains("/pulls/") && at.ends_with("/insulation")
        || at.contains("/marked/conductors/") && at.ends_with("/insulation")
}
