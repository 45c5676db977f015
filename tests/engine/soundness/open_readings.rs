//! No verdict hangs on an open reading that nobody chose.

use super::{JUDGES, WHOLE, all, verdict_of};
use crate::corpus::Asked;
use elbowroom::checks::Verdict;
use elbowroom::rulebook::reading::{Point, Standing};
use serde_json::{Value, json};
use std::collections::BTreeMap;

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
