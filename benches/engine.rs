//! What one outlet-box fill costs in process, part by part: decode, evaluate with the full proof, put in words, write; and
//! the same answer written by serde_json beside it.
//!
//!     cargo bench --bench engine

use divan::{Bencher, black_box};
use elbowroom::answers::{Explain, answer};
use elbowroom::checks::evaluate;
use elbowroom::checks::outlet_fill::{OutletFill, OutletFillRequest};
use elbowroom::words::Catalogue;

const OUTLET_BOX: &str = include_str!("data/outlet-box.json");

fn main() {
    divan::main();
}

fn request() -> OutletFillRequest {
    serde_json::from_str(black_box(OUTLET_BOX)).expect("the request decodes")
}

#[divan::bench]
fn decoded() -> OutletFillRequest {
    request()
}

#[divan::bench]
fn evaluated_with_full_proof(bencher: Bencher) {
    let request = request();
    bencher.bench_local(|| evaluate::<OutletFill>(black_box(&request)));
}

#[divan::bench]
fn put_in_words(bencher: Bencher) {
    let request = request();
    let evaluation = evaluate::<OutletFill>(&request);
    bencher.bench_local(|| {
        drop(black_box(answer::<OutletFill>(&request, &evaluation, Explain::Full, Catalogue::english())));
    });
}

#[divan::bench]
fn written(bencher: Bencher) {
    let request = request();
    let evaluation = evaluate::<OutletFill>(&request);
    let answer = answer::<OutletFill>(&request, &evaluation, Explain::Full, Catalogue::english());
    bencher.bench_local(|| {
        let mut json = Vec::with_capacity(16 * 1024);
        answer.write_json(&mut json).expect("an answer is JSON");
        json
    });
}

#[divan::bench]
fn written_by_serde_json(bencher: Bencher) {
    let request = request();
    let evaluation = evaluate::<OutletFill>(&request);
    let answer = answer::<OutletFill>(&request, &evaluation, Explain::Full, Catalogue::english());
    bencher.bench_local(|| {
        let mut json = Vec::with_capacity(16 * 1024);
        serde_json::to_writer(&mut json, &answer).expect("an answer is JSON");
        json
    });
}
