//! Digests cover everything that a verdict can turn on: a change of any datum shows in the digests of the checks that can read
//! it, and in no other; and no proof names anything that its check does not declare.

use elbowroom::audit;
use elbowroom::checks::{Check, evaluate};
use elbowroom::derivation::{Operation, StepView};
use elbowroom::quantity::Decimal;
use elbowroom::rulebook::digest::{Law, Reads, whole, whole_under};
use elbowroom::rulebook::pull::AngleAdds;
use elbowroom::rulebook::reading::Point;
use elbowroom::rulebook::{Edition, Part, Rulebook, Strategy};
use elbowroom::tables::{self, Bases, Basis, Table, Value};
use elbowroom::trade::ConductorSize;
use serde_json::{Value as Json, json};
use std::collections::BTreeSet;

/// A check: what it reads, and what its proofs name beside that.
struct Known {
    name: &'static str,
    reads: fn() -> &'static Reads,
    undeclared: fn() -> BTreeSet<String>,
}

static CHECKS: &[Known] = &elbowroom::of_each_check!(C => Known {
    name: C::NAME,
    reads: C::reads,
    undeclared: undeclared::<C>,
});

fn undeclared<C: Check>() -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    let cases = audit::cases().expect("cases");
    for case in cases.iter().filter(|case| case.check == C::NAME) {
        for edition in &case.editions {
            let mut request = case.request.clone();
            request.insert("edition".to_owned(), edition.year().into());
            let request: C::Request = serde_json::from_value(Json::Object(request)).expect("a request");
            let evaluation = evaluate::<C>(&request);
            for (index, step) in evaluation.proof.steps().iter().enumerate() {
                if !C::reads().has_rule(step.rule) {
                    found.insert(format!("{} has a step of {}", C::NAME, step.rule.id));
                }
                if let Operation::Read { point, .. } = step.operation
                    && !C::reads().has_rule(point.rule())
                {
                    found.insert(format!("{} reads the point {}", C::NAME, point.name()));
                }
                let view = serde_json::to_value(StepView::at(&evaluation.proof, index)).expect("a step");
                if let Some(table) = view["table"].as_str().filter(|table| !C::reads().has_table(table)) {
                    found.insert(format!("{} reads the table {table}", C::NAME));
                }
            }
            let rules = evaluation.findings.iter().map(|finding| finding.rule);
            for rule in rules.filter(|rule| !C::reads().has_rule(rule)) {
                found.insert(format!("{} finds something about {}", C::NAME, rule.id));
            }
        }
    }
    found
}

#[test]
fn no_proof_names_what_its_check_does_not_declare() {
    let found: BTreeSet<String> = CHECKS.iter().flat_map(|check| (check.undeclared)()).collect();
    assert!(found.is_empty(), "{found:#?}");
}

fn law() -> Law {
    Rulebook::of(Edition::E2023).law()
}

fn tables() -> Vec<Table> {
    tables::all().iter().cloned().collect()
}

/// The checks whose digest a change shows in, and whether it shows in the whole one.
fn marked(law: &Law, tables: &[Table]) -> (BTreeSet<&'static str>, bool) {
    let changed = |check: &&Known| {
        (check.reads)().digest_under(law, tables.iter()) != (check.reads)().digest(Edition::E2023)
    };
    let editions = Edition::ALL
        .map(|edition| if edition == Edition::E2023 { law.clone() } else { Rulebook::of(edition).law() });
    let checks = CHECKS.iter().filter(changed).map(|check| check.name).collect();
    (checks, whole_under(&editions, tables.iter()) != whole())
}

fn readers(part: Part) -> BTreeSet<&'static str> {
    let reads = |check: &&Known| (check.reads)().parts().any(|known| known == part);
    CHECKS.iter().filter(reads).map(|check| check.name).collect()
}

#[test]
fn what_is_not_changed_has_the_same_digests_and_every_check_and_edition_its_own() {
    assert_eq!(marked(&law(), &tables()), (BTreeSet::new(), false));
    let all: BTreeSet<&str> = CHECKS
        .iter()
        .flat_map(|check| Edition::ALL.map(|edition| (check.reads)().digest(edition)))
        .chain([whole()])
        .collect();
    assert_eq!(all.len(), CHECKS.len() * Edition::ALL.len() + 1);
}

/// The pointers of all data that are not made of others.
fn leaves(value: &Json, at: &str, found: &mut Vec<String>) {
    match value {
        Json::Object(members) if !members.is_empty() => {
            members.iter().for_each(|(name, member)| leaves(member, &format!("{at}/{name}"), found));
        }
        Json::Array(items) if !items.is_empty() => {
            items.iter().enumerate().for_each(|(index, item)| leaves(item, &format!("{at}/{index}"), found));
        }
        _ => found.push(at.to_owned()),
    }
}

#[test]
fn every_datum_of_an_edition_shows_in_the_digests_of_the_checks_that_read_its_part() {
    let (law, tables) = (law(), tables());
    let mut bends = 0;
    for (place, (part, said)) in law.said.iter().enumerate() {
        let mut found = Vec::new();
        leaves(said, "", &mut found);
        for (index, pointer) in found.iter().enumerate() {
            let mut bent = law.clone();
            let datum = bent.said[place].1.pointer_mut(pointer).expect("a datum");
            *datum = match datum.take() {
                Json::Bool(yes) => json!(!yes),
                Json::String(text) => json!(format!("{text} or so")),
                Json::Number(number) => json!(number.as_f64().expect("a number") + 1.0),
                _ => json!("something"),
            };
            bends += 1;
            if index == 0 {
                assert_eq!(marked(&bent, &tables), (readers(*part), true), "{part:?}{pointer}");
                continue;
            }
            // that it shows in no other digest follows from the first datum of the part
            for Known { name, reads, .. } in CHECKS.iter().filter(|check| readers(*part).contains(check.name))
            {
                let digest = reads().digest_under(&bent, tables.iter());
                assert_ne!(digest, reads().digest(Edition::E2023), "{name}: {part:?}{pointer}");
            }
        }
    }
    assert!(bends > 600, "only {bends} data were changed");
}

#[test]
fn figures_and_structure_of_the_rules_themselves_show_in_what_is_said() {
    let book = Rulebook::of(Edition::E2023);
    let said = |law: &Law| law.said.iter().map(|(_, said)| said.to_string()).collect::<String>();
    let all = said(&book.law());
    for figure in book.figures() {
        let written = serde_json::to_string(&figure).expect("a figure");
        assert_eq!(all.matches(&written).count(), 1, "{}", figure.name);
    }
    let bends = [
        (Part::OutletFill, book.mutated(|rules| rules.outlet_fill.clamps_by.name = "smallest")),
        (Part::OutletFill, book.mutated(|rules| rules.outlet_fill.grounding_beyond = None)),
        (Part::OutletFill, book.mutated(|rules| rules.outlet_fill.yoke.si = Decimal::whole(3))),
        (Part::Pull, book.mutated(|rules| rules.pull.applies_from = ConductorSize::AWG_6)),
        (
            Part::Pull,
            book.mutated(|rules| {
                rules.pull.angle_adds = Strategy::<AngleAdds>::new("nothing", |_, _, _, _| None)
            }),
        ),
        (Part::Pull, book.mutated(|rules| rules.pull.search.conditions += 1)),
        (Part::BoxEntry, book.mutated(|rules| rules.box_entry.relieves_in_raceway ^= true)),
        (Part::BoxDepth, book.mutated(|rules| rules.box_depth.rear_center = None)),
    ];
    for (part, bent) in bends {
        assert_eq!(marked(&bent.law(), &tables()), (readers(part), true), "{part:?}");
    }
}

#[test]
fn the_reading_of_a_disputed_point_shows_where_its_rule_is_read() {
    for point in Point::ALL {
        let part = Part::ALL.iter().find(|part| part.has(point.rule())).expect("every rule is in a part");
        let mut bent = law();
        bent.readings = bent.readings.with_place(*point, 1);
        assert_eq!(marked(&bent, &tables()), (readers(*part), true), "{}", point.name());
    }
}

#[test]
fn every_column_and_row_of_a_table_shows_in_the_digests_of_the_checks_that_read_it() {
    let (law, tables) = (law(), tables());
    let declared: BTreeSet<&str> = tables
        .iter()
        .map(|table| table.id)
        .filter(|id| CHECKS.iter().any(|check| (check.reads)().has_table(id)))
        .collect();
    assert!(declared.len() >= 12, "{declared:?}");
    for place in 0..tables.len() {
        let id = tables[place].id;
        let reading: Vec<&'static Reads> =
            CHECKS.iter().map(|check| (check.reads)()).filter(|reads| reads.has_table(id)).collect();
        let names: BTreeSet<&str> =
            CHECKS.iter().filter(|check| (check.reads)().has_table(id)).map(|check| check.name).collect();
        let changed = |bend: &dyn Fn(&mut Table)| {
            let mut bent = tables.clone();
            bend(&mut bent[place]);
            bent
        };
        let first = changed(&|table| table.rows[0].values[0] = Value::Text("something else"));
        assert_eq!(marked(&law, &first), (names, true), "{id}");
        let every_row = (0..tables[place].rows.len()).map(|row| (row, 0));
        let every_column = (0..tables[place].columns.len()).map(|column| (0, column));
        let mut bends: Vec<Vec<Table>> = every_row
            .chain(every_column)
            .map(|(row, column)| {
                changed(&|table| {
                    table.rows[row].values[column] = match table.rows[row].values[column] {
                        Value::Number(number) => Value::Number(number + Decimal::ONE),
                        Value::Text(_) => Value::Absent,
                        Value::Absent => Value::Number(Decimal::ONE),
                    }
                })
            })
            .collect();
        bends.push(changed(&|table| table.rows[0].bases = Bases::all(Basis::Disputed)));
        bends.push(changed(&|table| table.rows.swap(0, 1)));
        bends.push(changed(&|table| table.columns[0].name = "another"));
        for bent in bends {
            for reads in &reading {
                let digest = reads.digest_under(&law, bent.iter());
                assert_ne!(digest, reads.digest(Edition::E2023), "{id}");
            }
        }
    }
}
