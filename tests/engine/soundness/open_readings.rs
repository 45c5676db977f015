//! No verdict hangs on an open reading that nobody chose.

use super::{JUDGES, WHOLE, all, evaluated, verdict_of};
use crate::corpus::Asked;
use elbowroom::checks::{Check, FindingArg, ReadingResult, Verdict};
use elbowroom::of_each_check;
use elbowroom::rulebook::reading::{Point, Standing};
use serde_json::{Value, json};
use std::collections::{BTreeMap, BTreeSet};

/// The open points that a check lets a caller choose a reading of.
fn open_points(check: &str) -> Vec<Point> {
    let asked: Vec<&Asked> = WHOLE.iter().filter(|asked| asked.check == check).take(50).collect();
    let takes = |point: &&Point| {
        let reading = point.readings()[0];
        asked.iter().any(|asked| JUDGES[check](&choosing(&asked.request, **point, reading)).is_some())
    };
    Point::ALL.iter().filter(|point| point.standing() == Standing::Open).filter(takes).copied().collect()
}

fn choosing(request: &Value, point: Point, reading: &str) -> Value {
    let mut request = request.clone();
    if request["interpretations"].is_null() {
        request["interpretations"] = json!({});
    }
    request["interpretations"][point.name()] = reading.into();
    request
}

/// Whatever a settled verdict would become under any reading of a point that nobody chose, it is the same verdict.
#[test]
fn no_verdict_hangs_on_an_open_reading_that_nobody_chose() {
    let points: BTreeMap<&str, Vec<Point>> =
        JUDGES.keys().map(|check| (*check, open_points(check))).collect();
    let (mut tried, mut turned) = (BTreeMap::<&str, u32>::new(), BTreeMap::new());
    for Asked { check, name, request } in all() {
        let verdict = verdict_of(check, request);
        if !matches!(verdict, Some(Verdict::Complies | Verdict::Violates)) {
            continue;
        }
        for point in &points[check.as_str()] {
            if !request["interpretations"][point.name()].is_null() {
                continue;
            }
            for reading in point.readings() {
                let Some(judged) = JUDGES[check.as_str()](&choosing(request, *point, reading)) else {
                    continue;
                };
                *tried.entry(point.name()).or_default() += 1;
                if judged.verdict != verdict {
                    let what = format!("{check}, {} read as {reading}", point.name());
                    let from = format!("{verdict:?} is {:?}: {name}: {request}", judged.verdict);
                    turned.entry(what).or_insert(from);
                }
            }
        }
    }
    println!("open readings chosen for settled verdicts: {tried:?}");
    let open: usize = points.values().map(Vec::len).sum();
    assert!(open > 5 && tried.len() > 5, "{tried:?}");
    assert!(turned.is_empty(), "{turned:#?}");
}

/// What an answer says of open points that its verdict turns on: of each point what every reading leads to.
type Told = fn(&Value) -> Vec<(Point, Vec<ReadingResult>)>;

fn told<C: Check>(request: &Value) -> Vec<(Point, Vec<ReadingResult>)> {
    let findings = evaluated::<C>(request).map(|evaluation| evaluation.findings).unwrap_or_default();
    let open = findings.into_iter().filter(|finding| finding.message == "finding-open-reading");
    open.filter_map(|finding| {
        let at = finding.supply.first()?.to_string();
        let point = Point::ALL.iter().find(|point| *point.chosen_at() == at)?;
        let readings = finding.arguments.into_iter().find_map(|(_, argument)| match argument {
            FindingArg::Readings(readings) => Some(readings),
            _ => None,
        });
        Some((*point, readings?))
    })
    .collect()
}

/// The points that no figure need belong to: what is disputed is whether something is so (a hinged cover, whether it is the side that
/// comes off a box over 1000 V; elsewhere it decides a length).
const WITHOUT_FIGURES: [Point; 2] = [Point::FeederAsNm, Point::HingedCover];

/// Where a verdict is left open by a point, each reading stands with its verdict and with the figures that it compares.
#[test]
fn each_reading_of_an_open_point_stands_with_its_figures() {
    let told: BTreeMap<&str, Told> = of_each_check!(C => (<C as Check>::NAME, told::<C> as Told)).into();
    let (mut seen, mut shown) = (BTreeSet::new(), BTreeSet::new());
    for Asked { check, request, .. } in all() {
        for (point, readings) in told[check.as_str()](request) {
            assert_eq!(readings.len(), point.readings().len(), "{request}");
            let verdicts: BTreeSet<_> =
                readings.iter().map(|reading| reading.verdict.map(Verdict::name)).collect();
            assert!(verdicts.len() > 1, "{request}");
            seen.insert(point.name());
            shown.extend(readings.iter().find_map(|reading| reading.figures).map(|_| point.name()));
        }
    }
    let without: BTreeSet<_> = seen.difference(&shown).copied().collect();
    assert!(seen.len() > 5, "{seen:?}");
    assert!(without.is_subset(&WITHOUT_FIGURES.map(Point::name).into()), "without figures: {without:?}");
}
