//! What the engine costs beside other programs, in one run: `cargo run --release --manifest-path benches/compare/Cargo.toml`.
//!
//! Every contender takes its turn in every round, so that whatever else the machine does falls on all alike. Of all rounds
//! the fastest and the middle one are printed, and the ratio of the middle ones.

mod general;

use elbowroom::answers::{Answer, Explain, answer};
use elbowroom::checks::evaluate;
use elbowroom::checks::outlet_fill::{OutletFill, OutletFillOutcome, OutletFillRequest};
use elbowroom::i18n::Catalogue;
use std::hint::black_box;
use std::time::Instant;

const REQUEST: &str = include_str!("../../data/outlet-box.json");
const ROUNDS: usize = 400;
const TURNS: u32 = 250;

/// A name, and what is timed under it.
type Contender<'a> = (&'a str, Box<dyn FnMut() + 'a>);

fn main() {
    let request = decode();
    let evaluation = evaluate::<OutletFill>(&request);
    race(
        "One outlet box evaluated, with every step of its proof; general engines: the bare sum, compiled, nothing decoded",
        vec![
            ("elbowroom", Box::new(|| drop(black_box(evaluate::<OutletFill>(black_box(&request)))))),
            ("zen-expression", general::zen()),
            ("rhai", general::rhai()),
            ("cel-interpreter", general::cel()),
        ],
    );
    for (explain, title) in [(Explain::Full, "with its full proof"), (Explain::None, "without proof")] {
        let ready = answer::<OutletFill>(&request, &evaluation, explain, Catalogue::english());
        let mut text = Vec::new();
        ready.write_json(&mut text).expect("an answer is written");
        assert_eq!(text, serde_json::to_vec(&ready).expect("an answer is JSON"), "the same bytes");
        let (mut a, mut b) = (Vec::new(), Vec::new());
        race(
            &format!("A record of a stream {title}: {} bytes in, {} out", REQUEST.len(), text.len()),
            vec![
                ("serde_json, decode and encode only", Box::new(|| decode_and_encode(&ready, &mut a))),
                ("elbowroom, decode to written answer", Box::new(|| all(explain, &mut b))),
            ],
        );
    }
}

fn decode() -> OutletFillRequest {
    elbowroom::json::read(black_box(REQUEST.as_bytes())).expect("the request decodes")
}

fn decode_and_encode(answer: &Answer<'_, OutletFillOutcome>, out: &mut Vec<u8>) {
    drop(black_box(decode()));
    out.clear();
    serde_json::to_writer(&mut *out, black_box(answer)).expect("an answer is JSON");
    black_box(out);
}

fn all(explain: Explain, out: &mut Vec<u8>) {
    let request = decode();
    let evaluation = evaluate::<OutletFill>(&request);
    out.clear();
    let answer = answer::<OutletFill>(&request, &evaluation, explain, Catalogue::english());
    answer.write_json(out).expect("an answer is written");
    black_box(out);
}

/// Times all contenders in turn and prints them, each with its speed as a multiple of the first one's.
fn race(title: &str, mut contenders: Vec<Contender<'_>>) {
    let mut times: Vec<Vec<f64>> = vec![Vec::with_capacity(ROUNDS); contenders.len()];
    for round in 0..=ROUNDS {
        for ((_, run), times) in contenders.iter_mut().zip(&mut times) {
            let start = Instant::now();
            for _ in 0..TURNS {
                run();
            }
            // the first round warms up
            if round > 0 {
                times.push(start.elapsed().as_secs_f64() * 1e6 / f64::from(TURNS));
            }
        }
    }
    println!("\n{title}\n  {:<38} {:>9} {:>9} {:>8}", "", "fastest", "middle", "speed");
    let mut first = None;
    for ((name, _), times) in contenders.iter().zip(&mut times) {
        times.sort_by(f64::total_cmp);
        let (fastest, middle) = (times[0], times[ROUNDS / 2]);
        let speed = *first.get_or_insert(middle) / middle;
        println!("  {name:<38} {fastest:>6.2} µs {middle:>6.2} µs {speed:>7.2}×");
    }
}
