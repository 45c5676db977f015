//! What one request costs in process, part by part: decoding, evaluating, putting in words, writing.
//!
//! `cargo bench --no-default-features --bench engine`. Ratios to other programs are in `benches/compare/`.

use divan::{Bencher, black_box};
use elbowroom::answers::{Answer, Explain, answer};
use elbowroom::checks::outlet_fill::OutletFill;
use elbowroom::checks::pull_box::PullBox;
use elbowroom::checks::{Check, Evaluation, evaluate};
use elbowroom::i18n::Catalogue;

fn main() {
    divan::main();
}

/// A check with a request that is usual for it.
trait Case {
    type Of: Check;
    const REQUEST: &str;
}

/// Two cables, two devices of different sizes, clamps, grounding, a ring.
struct OutletBox;

impl Case for OutletBox {
    type Of = OutletFill;
    const REQUEST: &str = include_str!("data/outlet-box.json");
}

/// Twelve entries: three straight pulls and three angle pulls.
struct TwelveEntries;

impl Case for TwelveEntries {
    type Of = PullBox;
    const REQUEST: &str = include_str!("data/pull-box.json");
}

type Request<C> = <<C as Case>::Of as Check>::Request;
type Outcome<C> = <<C as Case>::Of as Check>::Outcome;

fn decoded<C: Case>() -> Request<C> {
    elbowroom::json::read(black_box(C::REQUEST.as_bytes())).expect("the request decodes")
}

fn evaluated<C: Case>(request: &Request<C>) -> Evaluation<Outcome<C>> {
    evaluate::<C::Of>(black_box(request))
}

fn told<'a, C: Case>(
    request: &'a Request<C>,
    evaluation: &'a Evaluation<Outcome<C>>,
    explain: Explain,
) -> Answer<'a, Outcome<C>> {
    answer::<C::Of>(black_box(request), black_box(evaluation), explain, Catalogue::english())
}

fn written<O: serde::Serialize>(answer: &Answer<'_, O>, out: &mut Vec<u8>) {
    out.clear();
    black_box(answer).write_json(out).expect("an answer is written");
}

fn written_by_serde_json<O: serde::Serialize>(answer: &Answer<'_, O>, out: &mut Vec<u8>) {
    out.clear();
    serde_json::to_writer(out, black_box(answer)).expect("an answer is written");
}

// what is made is dropped inside the measured part: an allocation that is kept for later makes the next one dear

#[divan::bench(types = [OutletBox, TwelveEntries], sample_size = 200)]
fn a_decode<C: Case>(bencher: Bencher) {
    bencher.bench_local(|| drop(black_box(decoded::<C>())));
}

#[divan::bench(types = [OutletBox, TwelveEntries], sample_size = 200)]
fn b_evaluate<C: Case>(bencher: Bencher) {
    let request = decoded::<C>();
    bencher.bench_local(|| drop(black_box(evaluated::<C>(&request))));
}

#[divan::bench(types = [OutletBox, TwelveEntries], sample_size = 200)]
fn c_put_in_words<C: Case>(bencher: Bencher) {
    let request = decoded::<C>();
    let evaluation = evaluated::<C>(&request);
    bencher.bench_local(|| drop(black_box(told::<C>(&request, &evaluation, Explain::Full))));
}

#[divan::bench(types = [OutletBox, TwelveEntries], sample_size = 200)]
fn d_write<C: Case>(bencher: Bencher) {
    let request = decoded::<C>();
    let evaluation = evaluated::<C>(&request);
    let answer = told::<C>(&request, &evaluation, Explain::Full);
    let mut out = Vec::new();
    bencher.bench_local(|| written(&answer, &mut out));
}

#[divan::bench(types = [OutletBox, TwelveEntries], sample_size = 200)]
fn d_write_by_serde_json<C: Case>(bencher: Bencher) {
    let request = decoded::<C>();
    let evaluation = evaluated::<C>(&request);
    let answer = told::<C>(&request, &evaluation, Explain::Full);
    let mut out = Vec::new();
    bencher.bench_local(|| written_by_serde_json(&answer, &mut out));
}

/// Everything, from bytes to bytes, as a stream does it for each line.
fn from_bytes_to_bytes<C: Case>(bencher: Bencher, explain: Explain) {
    let mut out = Vec::new();
    bencher.bench_local(|| {
        let request = decoded::<C>();
        let evaluation = evaluated::<C>(&request);
        written(&told::<C>(&request, &evaluation, explain), &mut out);
    });
}

#[divan::bench(types = [OutletBox, TwelveEntries], sample_size = 200)]
fn e_all_with_full_proof<C: Case>(bencher: Bencher) {
    from_bytes_to_bytes::<C>(bencher, Explain::Full);
}

#[divan::bench(types = [OutletBox, TwelveEntries], sample_size = 200)]
fn e_all_without_proof<C: Case>(bencher: Bencher) {
    from_bytes_to_bytes::<C>(bencher, Explain::None);
}

/// The ceiling of a stream: decoding the request, and writing an answer that is there already.
#[divan::bench(types = [OutletBox, TwelveEntries], sample_size = 200)]
fn f_ceiling_of_serde_json<C: Case>(bencher: Bencher) {
    let request = decoded::<C>();
    let evaluation = evaluated::<C>(&request);
    let answer = told::<C>(&request, &evaluation, Explain::Full);
    let mut out = Vec::new();
    bencher.bench_local(|| {
        drop(black_box(decoded::<C>()));
        written_by_serde_json(&answer, &mut out);
    });
}
