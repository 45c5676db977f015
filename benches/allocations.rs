//! How often one request allocates, and how much: `cargo bench --no-default-features --bench allocations`.
//!
//! Counting slows down, so times are in `engine`.

use divan::{AllocProfiler, Bencher, black_box};
use elbowroom::answers::{Explain, answer};
use elbowroom::checks::evaluate;
use elbowroom::checks::outlet_fill::{OutletFill, OutletFillRequest};
use elbowroom::i18n::Catalogue;

#[global_allocator]
static COUNTED: AllocProfiler = AllocProfiler::system();

const OUTLET_BOX: &str = include_str!("data/outlet-box.json");

fn main() {
    divan::main();
}

fn decoded() -> OutletFillRequest {
    elbowroom::json::read(black_box(OUTLET_BOX.as_bytes())).expect("the request decodes")
}

#[divan::bench]
fn decode() {
    drop(black_box(decoded()));
}

#[divan::bench]
fn evaluation(bencher: Bencher) {
    let request = decoded();
    bencher.bench_local(|| drop(black_box(evaluate::<OutletFill>(&request))));
}

#[divan::bench(args = [Explain::Full, Explain::None])]
fn put_in_words(bencher: Bencher, explain: Explain) {
    let request = decoded();
    let evaluation = evaluate::<OutletFill>(&request);
    bencher.bench_local(|| {
        drop(black_box(answer::<OutletFill>(&request, &evaluation, explain, Catalogue::english())));
    });
}
