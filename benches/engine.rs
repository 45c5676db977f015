//! What one evaluation costs, and each part of it: decode, evaluate, put in words, write.

use divan::{Bencher, black_box};
use elbowroom::answers::{Explain, answer};
use elbowroom::checks::evaluate;
use elbowroom::checks::outlet_fill::{OutletFill, OutletFillRequest};
use elbowroom::words::Catalogue;

const OUTLET_BOX: &str = include_str!("data/outlet-box.json");

fn main() {
    if std::env::args().nth(1).as_deref() == Some("--profile") {
        let request: OutletFillRequest = serde_json::from_str(OUTLET_BOX).unwrap();
        for _ in 0..2000 {
            prof_decode();
            prof_eval(&request);
            prof_rest(&request);
            prof_serde(&request);
        }
        return;
    }
    divan::main();
}
#[inline(never)]
fn prof_decode() {
    black_box(serde_json::from_str::<OutletFillRequest>(OUTLET_BOX).unwrap());
}
#[inline(never)]
fn prof_eval(r: &OutletFillRequest) {
    black_box(evaluate::<OutletFill>(r));
}
#[inline(never)]
fn prof_serde(r: &OutletFillRequest) {
    let e = evaluate::<OutletFill>(r);
    let a = prof_answer(r, &e);
    let mut v = Vec::with_capacity(16384);
    prof_serde_write(&a, &mut v);
    assert_eq!(v, prof_write(&a));
}
#[inline(never)]
fn prof_serde_write(
    a: &elbowroom::answers::Answer<'_, elbowroom::checks::outlet_fill::OutletFillOutcome>,
    v: &mut Vec<u8>,
) {
    serde_json::to_writer(v, a).unwrap();
}
#[inline(never)]
fn prof_rest(r: &OutletFillRequest) {
    let e = evaluate::<OutletFill>(r);
    let a = prof_answer(r, &e);
    black_box(prof_write(&a));
}
#[inline(never)]
fn prof_answer<'a>(
    r: &'a OutletFillRequest,
    e: &'a elbowroom::checks::Evaluation<elbowroom::checks::outlet_fill::OutletFillOutcome>,
) -> elbowroom::answers::Answer<'a, elbowroom::checks::outlet_fill::OutletFillOutcome> {
    answer::<OutletFill>(r, e, Explain::Full, Catalogue::english())
}
#[inline(never)]
fn prof_write(
    a: &elbowroom::answers::Answer<'_, elbowroom::checks::outlet_fill::OutletFillOutcome>,
) -> Vec<u8> {
    let mut v = Vec::with_capacity(16384);
    a.write_json(&mut v).unwrap();
    v
}

#[divan::bench]
fn decode() -> OutletFillRequest {
    serde_json::from_str(OUTLET_BOX).unwrap()
}

#[divan::bench]
fn evaluate_full(bencher: Bencher) {
    let request: OutletFillRequest = serde_json::from_str(OUTLET_BOX).unwrap();
    bencher.bench_local(|| evaluate::<OutletFill>(black_box(&request)));
}
#[divan::bench]
fn words(bencher: Bencher) {
    let request: OutletFillRequest = serde_json::from_str(OUTLET_BOX).unwrap();
    let e = evaluate::<OutletFill>(&request);
    bencher.bench_local(|| {
        black_box(prof_answer(&request, &e));
    });
}
#[divan::bench]
fn write_serde(bencher: Bencher) {
    let request: OutletFillRequest = serde_json::from_str(OUTLET_BOX).unwrap();
    let e = evaluate::<OutletFill>(&request);
    let a = prof_answer(&request, &e);
    bencher.bench_local(|| {
        let mut v = Vec::with_capacity(16384);
        prof_serde_write(&a, &mut v);
        v
    });
}
#[divan::bench]
fn write(bencher: Bencher) {
    let request: OutletFillRequest = serde_json::from_str(OUTLET_BOX).unwrap();
    let e = evaluate::<OutletFill>(&request);
    let a = prof_answer(&request, &e);
    eprintln!("{} {}", e.proof.steps().len(), prof_write(&a).len());
    bencher.bench_local(|| prof_write(&a));
}
