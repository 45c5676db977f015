//! The laws of soundness, each held over every conformance case: silence never buys approval, and every rule is accounted for.

use elbowroom::audit::{self, Case, FILES};
use elbowroom::checks::{Check, Evaluation, RuleStatus, Verdict, evaluate, faults_of};
use elbowroom::json;
use elbowroom::of_each_check;
use elbowroom::rulebook::Edition;
use serde_json::{Map, Value};
use std::collections::BTreeMap;

/// What evaluating a request comes to, as far as the laws look at it; `None` for one that is refused.
struct Judged {
    verdict: Option<Verdict>,
    /// Rules that apply and that the check said nothing about, and rules of no subject that was described.
    unaccounted: Vec<&'static str>,
}

fn judge<C: Check>(request: &Value) -> Option<Judged> {
    let request: C::Request = json::read_value(request.clone()).ok()?;
    if !faults_of::<C>(&request).is_empty() {
        return None;
    }
    let Evaluation { verdict, account, .. } = evaluate::<C>(&request);
    let entries = account.entries().iter();
    let unaccounted = entries
        .filter(|entry| !entry.is_accounted_for || entry.subject.is_empty())
        .filter(|entry| entry.status != RuleStatus::DoesNotApply)
        .map(|entry| entry.rule.id)
        .collect();
    Some(Judged { verdict, unaccounted })
}

/// Judges a request of one check.
type Judge = fn(&Value) -> Option<Judged>;

fn schema_name<C: Check>() -> String {
    <C::Request as utoipa::ToSchema>::name().into_owned()
}

fn judge_of(name: &str) -> Judge {
    let all: &[(&str, Judge)] = &of_each_check!(C => (<C as Check>::NAME, judge::<C> as Judge));
    all.iter().find(|(known, _)| *known == name).expect("a check").1
}

/// The request of a case in one of its editions.
fn request_in(case: &Case, edition: Edition) -> Value {
    let mut request = case.request.clone();
    request.insert("edition".to_owned(), edition.year().into());
    Value::Object(request)
}

/// Every request of every conformance case and of every published example, with the name of its check and of the case.
fn requests() -> Vec<(String, String, Value)> {
    let mut requests = examples();
    for (file, text) in FILES {
        for case in audit::read(file, text).expect("a file of cases") {
            for edition in &case.editions {
                let name = format!("{} ({})", case.name, edition.year());
                requests.push((case.check.clone(), name, request_in(&case, *edition)));
            }
        }
    }
    requests
}

/// The requests among the published examples of the checks.
fn examples() -> Vec<(String, String, Value)> {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("openapi/examples");
    let checks: &[&str] = &of_each_check!(C => <C as Check>::NAME);
    let mut found = Vec::new();
    for check in checks {
        for file in std::fs::read_dir(root.join(check)).expect("examples of the check") {
            let path = file.expect("a file").path();
            let name = path.display().to_string();
            if name.ends_with(".request.json") {
                let text = std::fs::read_to_string(&path).expect("a request");
                found.extend(
                    serde_json::from_str(&text).ok().map(|request| ((*check).to_owned(), name, request)),
                );
            }
        }
    }
    assert!(found.len() > checks.len());
    found
}

/// The schemas of the published document.
fn schemas() -> Map<String, Value> {
    let document: Value = serde_json::from_str(elbowroom::service::openapi::text()).expect("the document");
    document["components"]["schemas"].as_object().expect("schemas").clone()
}

/// The properties of a schema that a value has, each with its schema: through references and choices between kinds.
fn properties<'a>(
    schema: &'a Value,
    value: &Value,
    schemas: &'a Map<String, Value>,
) -> Vec<(&'a str, &'a Value)> {
    if let Some(reference) = schema["$ref"].as_str() {
        let name = reference.rsplit('/').next().unwrap_or_default();
        return properties(&schemas[name], value, schemas);
    }
    let branches = ["oneOf", "anyOf", "allOf"].iter().filter_map(|key| schema[*key].as_array()).flatten();
    let mut found: Vec<_> = schema["properties"]
        .as_object()
        .into_iter()
        .flatten()
        .map(|(name, schema)| (name.as_str(), schema))
        .collect();
    for branch in branches {
        let of_kind = branch["properties"].as_object().into_iter().flatten().all(|(name, schema)| {
            schema["enum"]
                .as_array()
                .is_none_or(|names| value.get(name).is_none_or(|named| names.contains(named)))
        });
        if of_kind {
            found.extend(properties(branch, value, schemas));
        }
    }
    found
}

/// The places of a request that hold a property or a relief: what may be left unsaid, and must not buy anything by it.
fn droppable(schema: &Value, value: &Value, at: &str, schemas: &Map<String, Value>, found: &mut Vec<String>) {
    for (name, member) in properties(schema, value, schemas) {
        let Some(held) = value.get(name) else { continue };
        let at = format!("{at}/{name}");
        if matches!(member["x-role"].as_str(), Some("property" | "relief")) {
            found.push(at.clone());
        }
        match held {
            Value::Array(items) => {
                for (index, item) in items.iter().enumerate() {
                    droppable(&member["items"], item, &format!("{at}/{index}"), schemas, found);
                }
            }
            Value::Object(_) => droppable(member, held, &at, schemas, found),
            _ => {}
        }
    }
}

fn without(request: &Value, at: &str) -> Value {
    let mut less = request.clone();
    let (parent, name) = at.rsplit_once('/').expect("a member");
    if let Some(Value::Object(members)) = less.pointer_mut(parent) {
        members.remove(name);
    }
    less
}

#[test]
fn silence_never_buys_approval() {
    let schemas = schemas();
    let roots: BTreeMap<&str, String> = of_each_check!(C => (<C as Check>::NAME, schema_name::<C>())).into();
    let (mut drops, mut bought) = (0, BTreeMap::<String, String>::new());
    for (check, name, request) in requests() {
        let judge = judge_of(&check);
        let Some(verdict) = judge(&request).and_then(|judged| judged.verdict) else { continue };
        if verdict == Verdict::Complies {
            continue;
        }
        let mut places = Vec::new();
        droppable(&schemas[&roots[check.as_str()]], &request, "", &schemas, &mut places);
        for at in places {
            let Some(judged) = judge(&without(&request, &at)) else { continue };
            drops += 1;
            if judged.verdict == Some(Verdict::Complies) {
                let member: Vec<&str> = at.split('/').filter(|part| part.parse::<usize>().is_err()).collect();
                bought.entry(format!("{check} {}", member.join("/"))).or_insert(name.clone());
            }
        }
    }
    println!("{drops} members left out of requests that do not comply");
    assert!(drops > 5000, "{drops}");
    assert!(bought.is_empty(), "approval bought by silence: {bought:#?}");
}

#[test]
fn every_rule_is_accounted_for() {
    let mut forgotten = BTreeMap::new();
    for (check, name, request) in requests() {
        for rule in judge_of(&check)(&request).map(|judged| judged.unaccounted).unwrap_or_default() {
            forgotten.entry(format!("{check}: {rule}")).or_insert(name.clone());
        }
    }
    assert!(forgotten.is_empty(), "rules that a check does not account for: {forgotten:#?}");
}
