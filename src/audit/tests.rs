use super::*;
use crate::checks::outlet_fill::OutletFill;
use crate::json::same;
use serde_json::json;

fn case() -> Case {
    let text = FILES.iter().find(|(name, _)| *name == "outlet-box-fill.json").unwrap().1;
    read("outlet-box-fill.json", text).unwrap().remove(0)
}

#[test]
fn a_case_that_is_altered_is_shown_as_differing_with_both_values() {
    let good = case();
    let examined = AuditedCase::of(&good, None, examine::<OutletFill>);
    assert!(examined.agrees() && examined.evaluations.len() == good.editions.len());
    let mut altered = good.clone();
    let (pointer, expected) = altered.expect.iter_mut().next().unwrap();
    let pointer = pointer.clone();
    *expected = json!("altered");
    let examined = AuditedCase::of(&altered, None, examine::<OutletFill>);
    let mut summary = AuditSummary::default();
    summary.add(&examined);
    assert_eq!((summary.agreeing, summary.differing), (0, good.editions.len()));
    for examined in &examined.evaluations {
        let value = examined.values.iter().find(|value| value.pointer == pointer).unwrap();
        assert!(!value.agrees && !examined.agrees);
        assert_eq!(value.expected, json!("altered"));
        assert!(same(value.computed.as_ref().unwrap(), &good.expect[&pointer]));
        assert!(examined.proof.as_ref().unwrap().replays);
    }
}

#[test]
fn what_is_nowhere_in_the_answer_differs_and_what_is_refused_says_why() {
    let mut altered = case();
    altered.expect.insert("/nowhere".to_owned(), json!(null));
    let examined = examine::<OutletFill>(&altered, Edition::E2023);
    let value = examined.values.iter().find(|value| value.pointer == "/nowhere").unwrap();
    assert!(!value.agrees && value.computed.is_none() && !examined.agrees);
    for (member, value) in [("units", json!("cubits")), ("edition_of", json!(1))] {
        let mut altered = case();
        altered.request.insert(member.to_owned(), value);
        let examined = examine::<OutletFill>(&altered, Edition::E2023);
        assert!(!examined.agrees && examined.proof.is_none(), "{member}");
        assert!(examined.refused.is_some_and(|why| why.contains(' ')), "{member}");
    }
    let examined = examine::<OutletFill>(&case(), Edition::E2026);
    assert!(examined.refused.is_some_and(|why| why.contains("unverified")), "an edition to accept knowingly");
}

#[test]
fn a_file_with_a_fault_is_refused_with_the_case_and_the_reason() {
    let text = FILES.iter().find(|(name, _)| *name == "raceway-fill.json").unwrap().1;
    let good: Value = serde_json::from_str(text).unwrap();
    let first = || good[0].clone();
    let with = |member: &str, value: Value| {
        let mut case = first();
        case[member] = value;
        json!([case])
    };
    let source = |source: Value| with("source", source);
    for (file, part) in [
        (json!([]), "no cases"),
        (json!([first(), first()]), "twice"),
        (with("name", json!("")), "no name"),
        (with("expect", json!({})), "expected"),
        (with("editions", json!([])), "edition"),
        (with("editions", json!(["1999"])), "1999"),
        (with("expects", json!({})), "expects"),
        (with("note", json!("")), "note"),
        (with("source_disagrees", json!("so")), "says nothing"),
        (source(json!({"basis": "guessed", "title": "x"})), "guessed"),
        (source(json!({"basis": "derived", "title": ""})), "no source"),
        (source(json!({"basis": "published", "title": "x", "address": "https://example.org"})), "address"),
    ] {
        let mut file = file;
        if part == "says nothing" {
            file[0].as_object_mut().unwrap().remove("source_says");
        }
        let fault = read("cases.json", &file.to_string()).unwrap_err().to_string();
        assert!(fault.starts_with("cases.json: ") && fault.contains(part), "{part}: {fault}");
    }
}

#[test]
fn a_filter_takes_by_check_basis_and_edition() {
    let case = case();
    let takes = |filter: Filter| filter.takes(&case);
    assert!(takes(Filter::default()));
    assert!(takes(Filter { check: Some("outlet_box_fill"), ..Filter::default() }));
    assert!(!takes(Filter { check: Some("raceway_fill"), ..Filter::default() }));
    for basis in CaseBasis::ALL {
        assert_eq!(takes(Filter { basis: Some(basis), ..Filter::default() }), basis == case.source.basis);
    }
    for edition in Edition::ALL {
        assert_eq!(
            takes(Filter { edition: Some(edition), ..Filter::default() }),
            case.editions.contains(&edition)
        );
    }
}
