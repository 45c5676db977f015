//! A proof as JSON text: what [`StepView`](super::StepView) describes, written from the steps themselves.
//!
//! A proof is most of an answer. Everything in it but numbers, step names and places stands in the program, so it is put
//! together from whole pieces of text; a test holds it against what `serde_json` makes of the same proof, byte for byte.

use super::{Derivation, Operation, Outcome, Step, StepId};
use crate::json;
use crate::rulebook::{Basis, Rule, figures_table};
use crate::tables::standard_boxes;
use smallvec::SmallVec;
use std::ops::Range;
use std::ptr;

/// The rules that a proof has named so far, each with the place of its text.
type Rules = SmallVec<[(&'static Rule, Basis, Range<usize>); 16]>;

impl Derivation {
    /// Writes the proof.
    ///
    /// ```
    /// use elbowroom::derivation::{Derivation, DerivationView};
    /// use elbowroom::quantity::{Measure, Units};
    /// use elbowroom::rulebook::{Edition, Rulebook, outlet_fill::SUM};
    /// let mut proof = Derivation::new(Rulebook::of(Edition::E2023), Units::Us);
    /// proof.nothing(&SUM, Measure::Volume);
    /// let mut written = Vec::new();
    /// proof.write_json(&mut written);
    /// assert_eq!(written, serde_json::to_vec(&DerivationView::from(&proof)).unwrap());
    /// ```
    pub fn write_json(&self, out: &mut Vec<u8>) {
        let mut rules = Rules::new();
        put(out, r#"{"steps":["#);
        for (index, step) in self.steps.iter().enumerate() {
            put(out, if index == 0 { r#"{"id":""# } else { r#",{"id":""# });
            StepId(index as u32).put(|piece| put(out, piece));
            self.write_step(step, &mut rules, out);
        }
        put(out, "]}");
    }

    fn write_step(&self, step: &Step, rules: &mut Rules, out: &mut Vec<u8>) {
        member(out, r#"","op":""#, step.operation.name());
        self.write_rule(step, rules, out);
        self.write_operands(step, out);
        self.write_operation(step.operation, out);
        self.write_outcome(step.outcome, out);
        if step.amended {
            put(out, r#","amended":true"#);
        }
        if let Some(at) = step.at {
            put(out, r#","at":""#);
            at.put(|piece| put(out, piece));
            put(out, "\"");
        }
        put(out, "}");
    }

    /// The rule of a step, copied from where the proof named it last.
    fn write_rule(&self, step: &Step, rules: &mut Rules, out: &mut Vec<u8>) {
        let same = |(rule, basis, _): &&(&Rule, Basis, Range<usize>)| {
            ptr::eq(*rule, step.rule) && *basis == step.basis
        };
        if let Some((_, _, written)) = rules.iter().find(same) {
            return out.extend_from_within(written.clone());
        }
        let start = out.len();
        member(out, r#"","rule":""#, step.rule.id);
        if let Some(citation) = self.citation(step.rule) {
            let [section, remark] = citation.parts();
            member(out, r#"","citation":""#, section);
            put(out, remark);
        }
        member(out, r#"","basis":""#, step.basis.name());
        rules.push((step.rule, step.basis, start..out.len()));
    }

    /// Closes the text of the basis, and lists what is computed with.
    fn write_operands(&self, step: &Step, out: &mut Vec<u8>) {
        let Some((first, others)) = self.operands(step).split_first() else {
            return put(out, "\"");
        };
        put(out, r#"","of":[""#);
        first.put(|piece| put(out, piece));
        for other in others {
            put(out, r#"",""#);
            other.put(|piece| put(out, piece));
        }
        put(out, r#""]"#);
    }

    fn write_operation(&self, operation: Operation, out: &mut Vec<u8>) {
        match operation {
            Operation::Lookup { table, row, column } | Operation::Affirm { table, row, column } => {
                write_cell(table, row, column, out)
            }
            Operation::Stated { figure, units } => {
                let column = figures_table::column(self.rulebook.edition, units);
                write_cell(figures_table::TABLE, figure, column, out);
            }
            Operation::Compare(relation) => quoted(out, r#","relation":""#, relation.symbol()),
            Operation::Read { point, reading } => {
                member(out, r#","point":""#, point.name());
                quoted(out, r#"","reading":""#, reading);
            }
            Operation::DoesNotApply { because } => quoted(out, r#","because":""#, because),
            Operation::Account { status, wants } => {
                match wants {
                    Some(true) => put(out, r#","wants":true"#),
                    Some(false) => put(out, r#","wants":false"#),
                    None => {}
                }
                quoted(out, r#","status":""#, status.name());
            }
            Operation::SelectBoxes => quoted(out, r#","table":""#, standard_boxes::TABLE),
            Operation::Word { says } => quoted(out, r#","says":""#, says),
            Operation::Whatever { values } => {
                put(out, r#","values":["#);
                for (index, value) in values.iter().enumerate() {
                    quoted(out, if index == 0 { "\"" } else { ",\"" }, value);
                }
                put(out, "]");
            }
            _ => {}
        }
    }

    fn write_outcome(&self, outcome: Outcome, out: &mut Vec<u8>) {
        match outcome {
            Outcome::Equals(value, unit) => {
                put(out, r#","equals":"#);
                value.write_json(out);
                quoted(out, r#","unit":""#, unit.name());
            }
            Outcome::Holds(true) => put(out, r#","holds":true"#),
            Outcome::Holds(false) => put(out, r#","holds":false"#),
            Outcome::Selects => {
                put(out, r#","selects":["#);
                for (index, standard) in self.selected().iter().enumerate() {
                    quoted(out, if index == 0 { "\"" } else { ",\"" }, standard.key());
                }
                put(out, "]");
            }
            Outcome::Noted => {}
        }
    }
}

fn write_cell(table: &str, row: &str, column: &str, out: &mut Vec<u8>) {
    member(out, r#","table":""#, table);
    put(out, r#"","row":"#);
    json::text(row, out);
    quoted(out, r#","column":""#, column);
}

#[inline(always)]
fn put(out: &mut Vec<u8>, piece: &str) {
    out.extend_from_slice(piece.as_bytes());
}

/// A member, but for the quote that closes its text.
#[inline(always)]
fn member(out: &mut Vec<u8>, name: &'static str, text: &str) {
    put(out, name);
    put(out, text);
}

#[inline(always)]
fn quoted(out: &mut Vec<u8>, name: &'static str, text: &str) {
    member(out, name, text);
    put(out, "\"");
}
