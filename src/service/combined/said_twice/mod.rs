//! One box, said twice: what the parts of a review state of the same fact must agree.
//!
//! Each statement is a set of what could be: two contradict one another when nothing is in both. Facts that may each be true,
//! and cannot hold together in one box, are no contradiction: a check judges those.

mod enclosure;
mod reading;
mod wiring;

use crate::checks::FaultCode;
use crate::quantity::Units;
use crate::service::fault_list::FaultView;
use reading::{
    body_or_box, box_of_row, carried, hung, listed_if_true, listed_or_not, metal_of_row, metal_or_not,
    none_if_false, none_if_true, not_dry_if_water, number, row, shape_of_row, single_gang, some_if_any,
    some_if_borne_by_box, some_if_carried, some_if_in_floor, some_if_there, some_or_none, trade_size, word,
};
use serde_json::{Map, Value};
use std::collections::BTreeMap;

const FILL: &str = "outlet_box_fill";
const PULL: &str = "pull_box_size";
const BODY: &str = "conduit_body_check";
const RACEWAY: &str = "raceway_fill";
const FREE: &str = "free_conductors";
const DEPTHS: &str = "box_depths";
const SUPPORTS: &str = "box_supports";
const MOUNTING: &str = "box_mounting";
const CONSTRUCTION: &str = "box_construction";
const LUMINAIRE: &str = "luminaire_and_fan_outlets";
const TYPES: &str = "enclosure_types";

/// The parts of a review, by check.
pub(in crate::service::combined) type Parts = BTreeMap<String, Map<String, Value>>;

/// What a part leaves possible of a fact.
#[derive(Clone, Debug, PartialEq)]
enum Says {
    /// One of some words.
    OneOf(Vec<String>),
    /// A number between two, both included.
    Between(f64, f64),
}

impl Says {
    fn word(word: &str) -> Self {
        Self::OneOf(vec![word.to_owned()])
    }

    const fn number(number: f64) -> Self {
        Self::Between(number, number)
    }

    fn agrees(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::OneOf(ours), Self::OneOf(theirs)) => ours.iter().any(|word| theirs.contains(word)),
            (Self::Between(from, to), Self::Between(other_from, other_to)) => {
                from <= other_to && other_from <= to
            }
            (Self::OneOf(_), Self::Between(..)) | (Self::Between(..), Self::OneOf(_)) => true,
        }
    }
}

/// What a part states of a fact, and where.
#[derive(Clone, Debug)]
struct Statement {
    at: String,
    says: Says,
}

/// How a member is read as a statement; `None` where it leaves everything possible.
type Reads = fn(&Value) -> Option<Says>;

/// One fact, and each member that states it: check, place and how the member is read.
type Fact = &'static [(&'static str, &'static str, Reads)];

/// The facts that several checks ask for.
const FACTS: &[Fact] = &[
    // what the box is made of
    &[
        (FILL, "/enclosure/material", word),
        (FILL, "/enclosure/standard", metal_of_row),
        (MOUNTING, "/enclosure/material", word),
        (MOUNTING, "/enclosure/standard", metal_of_row),
        (CONSTRUCTION, "/enclosure/material", metal_or_not),
    ],
    // how many gangs it has
    &[
        (FILL, "/enclosure/gangs", number),
        (MOUNTING, "/enclosure/single_gang_in_wall_or_ceiling", single_gang),
    ],
    // whether it is a box or a conduit body
    &[
        (SUPPORTS, "/enclosure/kind", word),
        (FILL, "/enclosure/standard", box_of_row),
        (MOUNTING, "/enclosure/conduit_body", body_or_box),
    ],
    // whether its sides are flat
    &[
        (MOUNTING, "/enclosure/shape", word),
        (MOUNTING, "/enclosure/standard", shape_of_row),
        (FILL, "/enclosure/standard", shape_of_row),
    ],
    // how wet the place is
    &[(MOUNTING, "/moisture/location", word), (TYPES, "/moisture", word)],
    // the trade size of a conduit body
    &[
        (SUPPORTS, "/enclosure/trade_size", trade_size),
        (BODY, "/body/largest_raceway/trade_size", trade_size),
    ],
    // whether the box is listed
    &[
        (CONSTRUCTION, "/enclosure/listed", listed_or_not),
        (CONSTRUCTION, "/enclosure/listed_as_equal", listed_if_true),
        (MOUNTING, "/access/under_loose_cover/listed_box", listed_or_not),
        (MOUNTING, "/enclosure/listed_for_wet_locations", listed_if_true),
        (MOUNTING, "/enclosure/listed_for_damp_locations", listed_if_true),
        (LUMINAIRE, "/box/listed_for_weight", listed_if_true),
        (LUMINAIRE, "/box/listed_for_fan", listed_if_true),
        (LUMINAIRE, "/box/listed_for_floor", listed_if_true),
        (BODY, "/body/listed", listed_or_not),
    ],
    // whether anything but splices is in the box or carried by it; what the structure carries is neither
    &[
        (SUPPORTS, "/enclosure/devices_or_luminaires", none_if_false),
        (FILL, "/contents/devices", some_if_any),
        (FILL, "/contents/canopy", some_if_there),
        (BODY, "/contents/devices", some_if_any),
        (DEPTHS, "/equipment", some_if_any),
        (MOUNTING, "/flush_device", some_if_there),
        (LUMINAIRE, "/load", some_if_borne_by_box),
    ],
    // whether a device or equipment is in the box
    &[
        (FILL, "/contents/devices", some_or_none),
        (DEPTHS, "/equipment", some_or_none),
        (LUMINAIRE, "/load/kind", some_if_in_floor),
    ],
    // whether anything is in the box
    &[
        (FILL, "/contents/nothing", none_if_true),
        (DEPTHS, "/equipment", some_if_any),
        (FREE, "/conductors", some_if_any),
        (RACEWAY, "/conductors", some_if_any),
        (MOUNTING, "/flush_device", some_if_there),
        (LUMINAIRE, "/load/kind", some_if_carried),
    ],
    // the row of the table that the box is of
    &[
        (FILL, "/enclosure/standard", row),
        (MOUNTING, "/enclosure/standard", row),
        (FREE, "/opening/standard", row),
    ],
    // what hangs from the box
    &[(FILL, "/contents/canopy/kind", hung), (LUMINAIRE, "/load/kind", carried)],
    // whether nothing is in the box, or conductors are drawn through it
    &[(FILL, "/contents/nothing", none_if_true), (PULL, "/pulls", some_if_any)],
    // whether water comes to it
    &[(TYPES, "/conditions", not_dry_if_water), (MOUNTING, "/moisture/location", word)],
];

/// Every fact that two parts state in different ways: each as a fault with both places.
pub(in crate::service::combined) fn contradictions(parts: &Parts, units: Units) -> Vec<FaultView> {
    let review = Review { parts, units };
    let mut pairs: Vec<[Statement; 2]> = Vec::new();
    let mut facts: Vec<Vec<Statement>> = FACTS.iter().map(|fact| review.statements(fact)).collect();
    facts.push(review.volume());
    facts.push(review.depth());
    facts.extend(review.sides());
    facts.push(review.opening());
    facts.push(review.emergence());
    facts.push(review.yokes());
    facts.push(review.gangs_of_opening());
    for statements in &facts {
        for (index, one) in statements.iter().enumerate() {
            pairs.extend(statements[index + 1..].iter().map(|other| [one.clone(), other.clone()]));
        }
    }
    review.wet_braces(&mut pairs);
    review.raceways(&mut pairs);
    review.supply_conductors(&mut pairs);
    review.conductors(&mut pairs);
    review.numbers_of_conductors(&mut pairs);
    if review.is_load_carried_by_structure() {
        let [canopy, none] = [(FILL, "/contents/canopy"), (SUPPORTS, "/enclosure/devices_or_luminaires")]
            .map(|(c, p)| pointer_to(c, p));
        pairs.retain(|[one, other]| ![&one.at, &other.at].iter().all(|at| **at == canopy || **at == none));
    }
    let unnamed = review.devices_without_depth();
    let differing = pairs.iter().filter(|[one, other]| check_of(&one.at) != check_of(&other.at));
    differing
        .filter(|[one, other]| !one.says.agrees(&other.says))
        .map(|[one, other]| fault(&review, one, other))
        .chain(unnamed)
        .collect()
}

fn check_of(at: &str) -> Option<&str> {
    at.split('/').nth(2)
}

fn fault(review: &Review<'_>, one: &Statement, other: &Statement) -> FaultView {
    let named =
        [("here", review.shown(&one.at)), ("there", review.shown(&other.at)), ("other", other.at.clone())];
    let view =
        FaultView::in_body(one.at.clone(), FaultCode::Contradiction, "fault-said-twice-of-one-box", named);
    FaultView { contradicts: Some(other.at.clone()), ..view }
}

struct Review<'a> {
    parts: &'a Parts,
    units: Units,
}

impl Review<'_> {
    /// Units of the request to the inch.
    const fn scale(&self) -> f64 {
        match self.units {
            Units::Us => 1.0,
            Units::Si => 25.4,
        }
    }

    /// Whether what hangs at the box is carried by the structure: its canopy then covers the box and is not held by it.
    fn is_load_carried_by_structure(&self) -> bool {
        self.get(LUMINAIRE, "/load/carried_by_structure") == Some(&Value::Bool(true))
    }

    fn get(&self, check: &str, pointer: &str) -> Option<&Value> {
        let (first, rest) =
            pointer.strip_prefix('/')?.split_once('/').unwrap_or((pointer.strip_prefix('/')?, ""));
        let member = self.parts.get(check)?.get(first)?;
        let found = if rest.is_empty() { member } else { member.pointer(&format!("/{rest}"))? };
        (!found.is_null()).then_some(found)
    }

    fn list(&self, check: &str, pointer: &str) -> &[Value] {
        self.get(check, pointer).and_then(Value::as_array).map_or(&[], Vec::as_slice)
    }

    /// A member as a sentence quotes it: a list or an object by its place alone.
    fn shown(&self, at: &str) -> String {
        let (check, rest) = at.strip_prefix("/checks/").and_then(|at| at.split_once('/')).unwrap_or((at, ""));
        match self.get(check, &format!("/{rest}")) {
            Some(Value::String(text)) => text.clone(),
            Some(value @ (Value::Number(_) | Value::Bool(_))) => value.to_string(),
            _ => rest.to_owned(),
        }
    }

    fn statement(&self, check: &str, pointer: &str, reads: Reads) -> Option<Statement> {
        let says = reads(self.get(check, pointer)?)?;
        Some(Statement { at: pointer_to(check, pointer), says })
    }

    fn statements(&self, fact: Fact) -> Vec<Statement> {
        fact.iter().filter_map(|(check, pointer, reads)| self.statement(check, pointer, *reads)).collect()
    }
}

fn pointer_to(check: &str, pointer: &str) -> String {
    format!("/checks/{check}{pointer}")
}
