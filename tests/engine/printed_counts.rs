//! Every count that Table 314.16(A) prints, against the engine.
//!
//! The counts are columns of `src/tables/data/standard-boxes.csv`, each row with its source. They hold for conductors of
//! one size and nothing else in the box.

use elbowroom::checks::outlet_fill::OutletFill;
use elbowroom::checks::{Verdict, evaluate};
use elbowroom::tables::{all, standard_boxes};
use serde_json::json;

/// The printed table has 5 for 8 AWG in the first row, though five allowances of 3.00 in³ are 15.0 in³ and the box has
/// 12.5. Two recollections agree on the 5; whether a later printing corrected it is not known. By volume it is 4.
const KNOWN_EXCEPTION: (&str, &str, i64, i64) = ("octagonal-4x1-1/4", "8 AWG", 5, 4);

#[test]
fn every_printed_count_is_what_the_volume_allows() {
    let table = all().find(standard_boxes::TABLE).expect("the table");
    let (mut compared, mut exceptions) = (0, Vec::new());
    for row in &table.rows {
        for size in ["18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG"] {
            let column = format!("printed_{}_awg", size.trim_end_matches(" AWG"));
            let printed =
                table.number(row.key, &column).expect("a printed count").billionths() / 1_000_000_000;
            let with = |count: i64| {
                // a table row counted by the gang is one gang; a multiple cover has two at the least
                let multiple = row.key.ends_with("multiple-cover");
                let (gangs, count) = if multiple { (2, 2 * count) } else { (1, count) };
                let request = json!({
                    "enclosure": {"standard": row.key, "gangs": gangs},
                    "contents": {"conductors": [{"size": size, "role": "spliced", "count": count}]}
                });
                evaluate::<OutletFill>(&elbowroom::json::read_value(request).expect("a request")).verdict
            };
            compared += 1;
            let computed = (1..).take_while(|count| with(*count) == Some(Verdict::Complies)).count() as i64;
            if computed != printed {
                exceptions.push((row.key, size, printed, computed));
            }
        }
    }
    say(&format!("Table 314.16(A): {compared} printed counts compared, {} exception", exceptions.len()));
    assert_eq!(compared, 168);
    assert_eq!(exceptions, [KNOWN_EXCEPTION]);
}

/// Says what ran, past the capture of the test runner: a count that nobody sees is no count.
fn say(line: &str) {
    use std::io::Write;
    let _ = writeln!(std::io::stderr(), "{line}");
}
