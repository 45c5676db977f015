//! Feeds bytes to everything that reads a request: each check, the comparison of editions, a line of a takeoff, a
//! table, a certificate.
//!
//! The first byte says which; the rest is the body. Whatever comes, nothing may panic or overflow, an answer is JSON with the
//! same bytes each time, and a refusal names at least one fault. The fuzzer looks for inputs with it, and the tests run those that it kept.

use elbowroom::answers::Explain;
use elbowroom::rulebook::Edition;
use elbowroom::service::access::Authorization;
use elbowroom::service::body::read_as;
use elbowroom::service::certificate::{Certificate, SigningKeys, Verification};
use elbowroom::service::problem::{Problem, ProblemKind};
use elbowroom::service::register::{CHECKS, CheckEntry};
use elbowroom::service::takeoff::item;
use elbowroom::takeoff::table::Columns;
use serde_json::{Map, Value};

/// Reads one input and panics when something does not hold.
pub fn read(input: &[u8]) {
    let Some((first, body)) = input.split_first() else { return };
    let place = usize::from(first.wrapping_sub(b'a')) % (CHECKS.len() + 4);
    match CHECKS.get(place) {
        Some(check) => of_check(check, body),
        None if place == CHECKS.len() => of_line(body),
        None if place == CHECKS.len() + 1 => of_table(body),
        None if place == CHECKS.len() + 2 => of_comparison(body),
        None => of_certificate(body),
    }
}

fn of_check(check: &CheckEntry, body: &[u8]) {
    let answer = || (check.evaluate)(body, Explain::Full);
    match answer() {
        Ok(answered) => {
            is_json(&answered.json);
            assert!(
                answer().is_ok_and(|again| again.json == answered.json),
                "the same request is answered otherwise"
            );
            if let Some(draw) = check.draw {
                let drawing = draw(body).expect("what is answered is drawn");
                assert!(
                    drawing.ends_with("</svg>\n") && !drawing.contains("NaN"),
                    "a drawing that is not whole"
                );
            }
        }
        Err(problem) => is_of_the_caller(&problem),
    }
}

fn of_line(line: &[u8]) {
    match item::answer(line, "", Explain::None, &Authorization::default()) {
        Ok((_, answered)) => is_json(&answered.json),
        Err(refusal) => is_of_the_caller(&refusal.problem),
    }
}

/// The first line is the header, every other a row.
fn of_table(table: &[u8]) {
    let mut lines = table.split(|byte| *byte == b'\n');
    let Some(Ok(header)) = lines.next().map(std::str::from_utf8) else { return };
    let Ok(columns) = Columns::read(header) else { return };
    for row in lines {
        match item::answer_row(&columns, row, Explain::None, &Authorization::default()) {
            Ok((_, answered)) => is_json(&answered.json),
            Err(refusal) => is_of_the_caller(&refusal.problem),
        }
    }
}

fn of_comparison(body: &[u8]) {
    let Some((first, body)) = body.split_first() else { return };
    let check = &CHECKS[usize::from(*first) % CHECKS.len()];
    let Ok(request) = serde_json::from_slice::<Map<String, Value>>(body) else { return };
    match (check.compare)(&request, &[Edition::E2023, Edition::E2017]) {
        Ok(json) => is_json(&json),
        Err(problem) => is_of_the_caller(&problem),
    }
}

/// Whatever reads as a certificate is found to be something, in the same words each time.
fn of_certificate(body: &[u8]) {
    let certificate = match read_as::<Certificate>(body) {
        Ok(certificate) => certificate,
        Err(problem) => return is_of_the_caller(&problem),
    };
    let Some(check) = CheckEntry::named(&certificate.check) else { return };
    let found = || {
        let found = Verification::of(check, &certificate, &SigningKeys::default()).expect("a finding");
        serde_json::to_vec(&found).expect("a finding is JSON")
    };
    assert!(found() == found(), "the same certificate is found otherwise");
}

fn is_json(text: &[u8]) {
    assert!(serde_json::from_slice::<Value>(text).is_ok(), "an answer that is no JSON");
}

fn is_of_the_caller(problem: &Problem) {
    assert!(matches!(problem.kind, ProblemKind::MalformedJson | ProblemKind::InvalidRequest), "{problem:?}");
    assert!(!problem.faults.is_empty(), "a refusal without a fault");
    is_json(&problem.to_json());
}
