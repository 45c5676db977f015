//! `elbowroom audit`.

use super::language::LanguageArguments;
use super::{complain, print, report, status};
use crate::audit::{AuditSummary, AuditedCase, Case, cases};
use crate::rulebook::digest;
use crate::service::register::CHECKS;
use clap::Args;
use serde_json::{Map, Value, json};
use std::process::ExitCode;

/// How the report of the audit is written.
#[derive(Clone, Copy, Debug, Args)]
pub struct AuditArguments {
    #[command(flatten)]
    language: LanguageArguments,
}

/// Runs every conformance case and prints what they come to, check by check; fails when anything differs.
pub fn run(arguments: &AuditArguments) -> ExitCode {
    let cases = match cases() {
        Ok(cases) => cases,
        Err(fault) => return complain(fault, status::SOFTWARE),
    };
    let (report, agrees) = report(cases);
    let status = if agrees { status::COMPLIES } else { status::SOFTWARE };
    arguments.language.speaking(|| print(&report::of_members(&report), status.into()))
}

/// What cases come to, and whether everything agrees.
fn report(cases: &[Case]) -> (Map<String, Value>, bool) {
    let (mut checks, mut differences) = (Vec::new(), Vec::new());
    for check in CHECKS {
        let mut summary = AuditSummary::default();
        for case in cases.iter().filter(|case| case.check == check.name) {
            let audited = AuditedCase::of(case, None, check.examine);
            summary.add(&audited);
            differences.extend(differences_of(&audited));
        }
        let AuditSummary { cases, evaluations, comparisons, differing, by_basis, source_held_wrong, .. } =
            summary;
        checks.push(json!({
            "check": check.name, "cases": cases, "published": by_basis.published,
            "source_held_wrong": source_held_wrong, "evaluations": evaluations, "comparisons": comparisons,
            "differing": differing,
        }));
    }
    let agrees = differences.is_empty();
    let mut report = Map::new();
    report.insert("version".to_owned(), env!("CARGO_PKG_VERSION").into());
    report.insert("digest".to_owned(), digest::whole().into());
    report.insert("checks".to_owned(), checks.into());
    report.insert("differences".to_owned(), differences.into());
    (report, agrees)
}

/// Each difference of a case: a value, a step that does not replay, or why the request was refused.
fn differences_of(case: &AuditedCase<'_>) -> Vec<Value> {
    let mut differences = Vec::new();
    for examined in case.evaluations.iter().filter(|examined| !examined.agrees) {
        let mut differs = |pointer: &str, expected: &Value, computed: &Value| {
            let (expected, computed) = (expected.to_string(), computed.to_string());
            let edition = examined.edition;
            differences.push(json!({
                "name": case.name, "edition": edition, "pointer": pointer, "expected": expected, "computed": computed,
            }));
        };
        for value in examined.values.iter().filter(|value| !value.agrees) {
            differs(&value.pointer, &value.expected, value.computed.as_ref().unwrap_or(&Value::Null));
        }
        let fault = examined.proof.as_ref().and_then(|proof| proof.fault.as_ref());
        for message in fault.into_iter().chain(&examined.refused) {
            differs("", &Value::Null, &json!(message));
        }
    }
    differences
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_report_shows_every_difference_and_does_not_agree() {
        let mut cases = cases().unwrap()[..2].to_vec();
        assert!(report(&cases).1);
        cases[0].expect.insert("/verdict".to_owned(), json!("altered"));
        cases[1].request.insert("nothing".to_owned(), json!(1));
        let (report, agrees) = report(&cases);
        assert!(!agrees);
        let text = crate::command::report::of_members(&report);
        for part in [&cases[0].name, &cases[1].name, "altered", "unknown field"] {
            assert!(text.contains(part), "{part}: {text}");
        }
        let differing: u64 =
            report["checks"].as_array().unwrap().iter().filter_map(|check| check["differing"].as_u64()).sum();
        let evaluations = cases.iter().map(|case| case.editions.len() as u64).sum::<u64>();
        assert_eq!(differing, evaluations);
    }
}
