//! Silence never buys approval.
#![expect(clippy::panic, reason = "x")]
use elbowroom::audit::{self, FILES};
use elbowroom::checks::box_construction::BoxConstruction;
use elbowroom::checks::box_depths::BoxDepths;
use elbowroom::checks::box_mounting::BoxMounting;
use elbowroom::checks::box_supports::BoxSupports;
use elbowroom::checks::conduit_body::ConduitBodyCheck;
use elbowroom::checks::enclosure_types::EnclosureTypes;
use elbowroom::checks::free_conductors::FreeConductors;
use elbowroom::checks::luminaire_and_fan_outlets::LuminaireAndFanOutlets;
use elbowroom::checks::outlet_fill::OutletFill;
use elbowroom::checks::pull_box::PullBox;
use elbowroom::checks::raceway_fill::RacewayFill;
use elbowroom::checks::{Check, Verdict, evaluate, faults_of};
use serde_json::Value;
use std::collections::BTreeMap;

fn verdict<C: Check>(request: &Value) -> Option<Option<Verdict>> {
    let request: C::Request = serde_json::from_value(request.clone()).ok()?;
    if !faults_of::<C>(&request).is_empty() {
        return None;
    }
    Some(evaluate::<C>(&request).verdict)
}
type Run = fn(&Value) -> Option<Option<Verdict>>;
const CHECKS: &[(&str, Run)] = &[
    (OutletFill::NAME, verdict::<OutletFill>),
    (PullBox::NAME, verdict::<PullBox>),
    (ConduitBodyCheck::NAME, verdict::<ConduitBodyCheck>),
    (RacewayFill::NAME, verdict::<RacewayFill>),
    (FreeConductors::NAME, verdict::<FreeConductors>),
    (BoxDepths::NAME, verdict::<BoxDepths>),
    (BoxMounting::NAME, verdict::<BoxMounting>),
    (BoxConstruction::NAME, verdict::<BoxConstruction>),
    (BoxSupports::NAME, verdict::<BoxSupports>),
    (LuminaireAndFanOutlets::NAME, verdict::<LuminaireAndFanOutlets>),
    (EnclosureTypes::NAME, verdict::<EnclosureTypes>),
];
fn members(value: &Value, at: String, all: &mut Vec<String>) {
    match value {
        Value::Object(map) => {
            for (name, member) in map {
                if [
                    "edition",
                    "units",
                    "reference",
                    "amendments",
                    "interpretations",
                    "accept_unverified_rules",
                    "id",
                    "count",
                ]
                .contains(&name.as_str())
                {
                    continue;
                }
                let at = format!("{at}/{name}");
                if !member.is_array() {
                    all.push(at.clone());
                }
                members(member, at, all);
            }
        }
        Value::Array(items) => {
            for (i, item) in items.iter().enumerate() {
                members(item, format!("{at}/{i}"), all)
            }
        }
        _ => {}
    }
}
#[test]
fn drops() {
    let (mut drops, mut bought) = (0, BTreeMap::<String, (usize, String)>::new());
    for (file, text) in FILES {
        for case in audit::read(file, text).unwrap_or_else(|f| panic!("{f}")) {
            let run = CHECKS.iter().find(|(n, _)| *n == case.check).unwrap().1;
            for edition in &case.editions {
                let mut request = case.request.clone();
                request.insert("edition".into(), edition.year().into());
                let request = Value::Object(request);
                let Some(Some(v)) = run(&request) else { continue };
                if v == Verdict::Complies {
                    continue;
                }
                let mut all = vec![];
                members(&request, String::new(), &mut all);
                for at in all {
                    let mut less = request.clone();
                    let (parent, name) = at.rsplit_once('/').unwrap();
                    less.pointer_mut(parent).unwrap().as_object_mut().unwrap().remove(name);
                    let Some(now) = run(&less) else { continue };
                    drops += 1;
                    if now == Some(Verdict::Complies) {
                        let key = format!(
                            "{} {}",
                            case.check,
                            at.split('/').filter(|p| p.parse::<u32>().is_err()).collect::<Vec<_>>().join("/")
                        );
                        let e = bought.entry(key).or_insert((0, format!("{} {}", case.name, edition.year())));
                        e.0 += 1;
                    }
                }
            }
        }
    }
    println!("{drops} drops");
    for (k, (n, e)) in &bought {
        println!("{n:5} {k}   e.g. {e}");
    }
}
