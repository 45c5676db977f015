//! One box, said twice: what the parts of a review state of the same fact must agree.
//!
//! Each statement is a set of what could be: two contradict one another when nothing is in both. Facts that may each be true,
//! and cannot hold together in one box, are no contradiction: a check judges those.

use super::super::fault_list::FaultView;
use crate::checks::FaultCode;
use crate::quantity::Units;
use crate::tables::standard_boxes::{Shape, StandardBox};
use crate::trade::{ConductorSize, TradeSize};
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
pub(super) type Parts = BTreeMap<String, Map<String, Value>>;

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
        (CONSTRUCTION, "/enclosure/material", metal_or_not),
    ],
    // how many gangs it has
    &[
        (FILL, "/enclosure/gangs", number),
        (MOUNTING, "/enclosure/single_gang_in_wall_or_ceiling", single_gang),
    ],
    // whether it is a box or a conduit body
    &[(SUPPORTS, "/enclosure/kind", word), (MOUNTING, "/enclosure/conduit_body", body_or_box)],
    // whether its sides are flat
    &[(MOUNTING, "/enclosure/shape", word), (FILL, "/enclosure/standard", shape_of_row)],
    // how wet the place is
    &[(MOUNTING, "/moisture/location", word), (TYPES, "/moisture", word)],
    // the trade size of a conduit body
    &[
        (SUPPORTS, "/enclosure/trade_size", trade_size),
        (BODY, "/body/largest_raceway/trade_size", trade_size),
    ],
    // whether anything but splices is in the box or carried by it
    &[
        (SUPPORTS, "/enclosure/devices_or_luminaires", none_if_false),
        (FILL, "/contents/devices", some_if_any),
        (FILL, "/contents/canopy", some_if_there),
        (BODY, "/contents/devices", some_if_any),
        (DEPTHS, "/equipment", some_if_any),
        (MOUNTING, "/flush_device", some_if_there),
        (LUMINAIRE, "/load/kind", some_if_carried),
    ],
    // whether a device or equipment is in the box
    &[(FILL, "/contents/devices", some_or_none), (DEPTHS, "/equipment", some_or_none)],
    // what hangs from the box
    &[(FILL, "/contents/canopy/kind", hung), (LUMINAIRE, "/load/kind", carried)],
];

/// Every fact that two parts state in different ways: each as a fault with both places.
pub(super) fn contradictions(parts: &Parts, units: Units) -> Vec<FaultView> {
    let review = Review { parts, units };
    let mut pairs: Vec<[Statement; 2]> = Vec::new();
    let mut facts: Vec<Vec<Statement>> = FACTS.iter().map(|fact| review.statements(fact)).collect();
    facts.push(review.volume());
    facts.push(review.depth());
    facts.extend(review.sides());
    facts.push(review.opening());
    facts.push(review.emergence());
    for statements in &facts {
        for (index, one) in statements.iter().enumerate() {
            pairs.extend(statements[index + 1..].iter().map(|other| [one.clone(), other.clone()]));
        }
    }
    review.wet_braces(&mut pairs);
    review.raceways(&mut pairs);
    review.supply_conductors(&mut pairs);
    review.conductors(&mut pairs);
    let differing = pairs.iter().filter(|[one, other]| check_of(&one.at) != check_of(&other.at));
    differing
        .filter(|[one, other]| !one.says.agrees(&other.says))
        .map(|[one, other]| fault(&review, one, other))
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
        Some(Statement { at: place(check, pointer), says })
    }

    fn statements(&self, fact: Fact) -> Vec<Statement> {
        fact.iter().filter_map(|(check, pointer, reads)| self.statement(check, pointer, *reads)).collect()
    }

    fn standard(&self) -> Option<StandardBox> {
        StandardBox::read(self.get(FILL, "/enclosure/standard")?.as_str()?)
    }

    /// Whether rings or covers add to the box: its volume and depth are then not those of its mark or row.
    fn has_sections(&self) -> bool {
        !self.list(FILL, "/enclosure/sections").is_empty()
    }

    /// The volume of the box. A row of the table is a nominal size: a tenth more or less is the same box.
    fn volume(&self) -> Vec<Statement> {
        let mut found = self.statements(&[
            (DEPTHS, "/enclosure/volume", number),
            (SUPPORTS, "/enclosure/volume", number),
            (MOUNTING, "/enclosure/volume", number),
            (CONSTRUCTION, "/enclosure/volume", number),
            (BODY, "/body/marked_volume", number),
        ]);
        if self.has_sections() {
            return found;
        }
        match self.statement(FILL, "/enclosure/marked_volume", number) {
            Some(marked) => found.push(marked),
            None => found.extend(self.standard().and_then(|row| {
                let gangs = self.get(FILL, "/enclosure/gangs").and_then(Value::as_f64).unwrap_or(1.0);
                let each: f64 = row.volume(self.units).value.to_string().parse().ok()?;
                let volume = if row.shape().is_per_gang() { each * gangs } else { each };
                let says = Says::Between(volume * 0.9, volume * 1.1);
                Some(Statement { at: place(FILL, "/enclosure/standard"), says })
            })),
        }
        found
    }

    /// The inside depth of the box. A row of the table is a nominal size: a quarter of an inch more or less is the same box.
    fn depth(&self) -> Vec<Statement> {
        let mut found = self.statements(&[
            (FILL, "/enclosure/inside_dimensions/depth", number),
            (PULL, "/box/depth", number),
            (BODY, "/body/depth", number),
        ]);
        if self.has_sections() {
            return found;
        }
        found.extend(self.statement(DEPTHS, "/enclosure/internal_depth", number));
        found.extend(self.standard().and_then(|row| {
            let inches = row.key().rsplit_once('x').and_then(|(_, depth)| inches(depth))?;
            let scale = match self.units {
                Units::Us => 1.0,
                Units::Si => 25.4,
            };
            let says = Says::Between((inches - 0.25) * scale, (inches + 0.25) * scale);
            Some(Statement { at: place(FILL, "/enclosure/standard"), says })
        }));
        found
    }

    /// The other two inside measures, the longer with the longer: which of them is the width depends on how the box is turned.
    fn sides(&self) -> [Vec<Statement>; 2] {
        let (mut longer, mut shorter) = (Vec::new(), Vec::new());
        for (check, one, other) in [
            (FILL, "/enclosure/inside_dimensions/length", "/enclosure/inside_dimensions/width"),
            (PULL, "/box/width", "/box/height"),
            (BODY, "/body/length", "/body/width"),
        ] {
            let measure = |pointer| self.get(check, pointer).and_then(Value::as_f64);
            let (Some(first), Some(second)) = (measure(one), measure(other)) else { continue };
            let (long, short) = if first < second { (other, one) } else { (one, other) };
            longer.extend(self.statement(check, long, number));
            shorter.extend(self.statement(check, short, number));
        }
        [longer, shorter]
    }

    /// The smallest dimension of the opening.
    fn opening(&self) -> Vec<Statement> {
        let mut found = self.statements(&[
            (FILL, "/opening/smallest_dimension", number),
            (FREE, "/opening/diameter", number),
        ]);
        let side = |pointer| self.statement(FREE, pointer, number);
        found.extend(match (side("/opening/width"), side("/opening/height")) {
            (Some(width), Some(height)) => {
                Some(if measured(&width.says) <= measured(&height.says) { width } else { height })
            }
            (one, other) => one
                .or(other)
                .map(|only| Statement { says: Says::Between(0.0, measured(&only.says)), at: only.at }),
        });
        found
    }

    /// How far behind the opening conductors emerge, where no ring stands between.
    fn emergence(&self) -> Vec<Statement> {
        if self.has_sections() || !self.list(FREE, "/rings").is_empty() {
            return Vec::new();
        }
        self.statements(&[(FILL, "/opening/conductor_depth", number), (FREE, "/emergence_depth", number)])
    }

    /// A wet place, at a wood brace.
    fn wet_braces(&self, pairs: &mut Vec<[Statement; 2]>) {
        for index in 0..self.list(SUPPORTS, "/means").len() {
            let pointer = format!("/means/{index}/brace/wet_location");
            let Some(brace) = self.statement(SUPPORTS, &pointer, wet_or_not) else { continue };
            let others =
                self.statements(&[(MOUNTING, "/moisture/location", word), (TYPES, "/moisture", word)]);
            pairs.extend(others.into_iter().map(|other| [brace.clone(), other]));
        }
    }

    /// Raceways: one that is filled, or that holds the box, is one of those that enter it.
    fn raceways(&self, pairs: &mut Vec<[Statement; 2]>) {
        let entering = |check, list: &str| {
            let sizes: Option<Vec<String>> = self
                .list(check, list)
                .iter()
                .map(|entry| size_of_raceway(entry.pointer("/raceway/trade_size")?))
                .collect();
            let sizes = sizes.filter(|sizes| !sizes.is_empty())?;
            Some(Statement { at: place(check, list), says: Says::OneOf(sizes) })
        };
        let mut single: Vec<Statement> =
            self.statement(RACEWAY, "/raceway/trade_size", trade_size).into_iter().collect();
        for (index, means) in self.list(SUPPORTS, "/means").iter().enumerate() {
            let conduits = means.get("conduits").and_then(Value::as_array).map_or(0, Vec::len);
            single.extend((0..conduits).filter_map(|conduit| {
                let pointer = format!("/means/{index}/conduits/{conduit}/trade_size");
                self.statement(SUPPORTS, &pointer, trade_size)
            }));
        }
        let entering = [entering(PULL, "/entries"), entering(BODY, "/hubs")];
        for all in entering.into_iter().flatten() {
            pairs.extend(single.iter().map(|one| [one.clone(), all.clone()]));
        }
    }

    /// The conductors that supply devices: those of a device with the same name, otherwise those of any.
    fn supply_conductors(&self, pairs: &mut Vec<[Statement; 2]>) {
        let contents = self.contents();
        let devices = || {
            contents.iter().flat_map(|at| {
                let listed = format!("{at}/devices");
                let found = self.list(FILL, &listed).iter().enumerate();
                found.map(move |(index, device)| (format!("{listed}/{index}"), device))
            })
        };
        for (index, equipment) in self.list(DEPTHS, "/equipment").iter().enumerate() {
            let pointer = format!("/equipment/{index}/largest_supply_conductor");
            let Some(supply) = self.statement(DEPTHS, &pointer, conductor_size) else { continue };
            let id = equipment.get("id").filter(|id| !id.is_null());
            let named: Vec<_> =
                devices().filter(|(_, device)| id.is_some() && device.get("id") == id).collect();
            let meant = if named.is_empty() { devices().collect() } else { named };
            let sizes: Option<Vec<String>> =
                meant.iter().map(|(_, device)| size_of_conductor(device.get("largest_conductor")?)).collect();
            let (Some(sizes), Some((first, _))) = (sizes, meant.first()) else { continue };
            let at = match meant.as_slice() {
                [_] => format!("{first}/largest_conductor"),
                _ => first.rsplit_once('/').map_or_else(String::new, |(list, _)| list.to_owned()),
            };
            pairs.push([supply, Statement { at: place(FILL, &at), says: Says::OneOf(sizes) }]);
        }
    }

    /// Conductors that a raceway brings, or that are pulled through, are among those of the box.
    fn conductors(&self, pairs: &mut Vec<[Statement; 2]>) {
        let mut sizes = Vec::new();
        for at in self.contents() {
            for (list, members) in
                [("conductors", &["size"][..]), ("grounding", &["size"]), ("cables", &["size", "grounding"])]
            {
                for thing in self.list(FILL, &format!("{at}/{list}")) {
                    let named = members.iter().filter_map(|member| size_of_conductor(thing.get(*member)?));
                    sizes.extend(named);
                }
            }
        }
        let Some(largest) = sizes.iter().filter_map(|size| ConductorSize::read(size)).max() else { return };
        let at = self.contents().into_iter().next().unwrap_or_default();
        let inside = Statement { at: place(FILL, &at), says: Says::OneOf(sizes) };
        let mut brought = Vec::new();
        for list in ["conductors", "bare_conductors"] {
            for index in 0..self.list(RACEWAY, &format!("/{list}")).len() {
                brought.extend(self.statement(RACEWAY, &format!("/{list}/{index}/size"), conductor_size));
            }
        }
        // a fill that lists none of the large conductors leaves them to the check that sizes by them
        if Some(largest) >= ConductorSize::read("4") {
            for index in 0..self.list(PULL, "/pulls").len() {
                let pointer = format!("/pulls/{index}/largest_conductor");
                brought.extend(self.statement(PULL, &pointer, conductor_size));
            }
        }
        pairs.extend(brought.into_iter().map(|one| [one, inside.clone()]));
    }

    /// Where the fill lists contents: for the whole box, or space by space.
    fn contents(&self) -> Vec<String> {
        let spaces = self.list(FILL, "/spaces").len();
        match self.get(FILL, "/contents") {
            Some(_) => vec!["/contents".to_owned()],
            None => (0..spaces).map(|space| format!("/spaces/{space}/contents")).collect(),
        }
    }
}

fn place(check: &str, pointer: &str) -> String {
    format!("/checks/{check}{pointer}")
}

fn measured(says: &Says) -> f64 {
    match says {
        Says::Between(from, _) => *from,
        Says::OneOf(_) => 0.0,
    }
}

/// `2-1/8` in inches.
fn inches(text: &str) -> Option<f64> {
    text.split('-').try_fold(0.0, |sum, part| {
        let part = match part.split_once('/') {
            Some((over, under)) => over.parse::<f64>().ok()? / under.parse::<f64>().ok()?,
            None => part.parse().ok()?,
        };
        Some(sum + part)
    })
}

fn word(value: &Value) -> Option<Says> {
    value.as_str().map(Says::word)
}

fn number(value: &Value) -> Option<Says> {
    value.as_f64().map(Says::number)
}

fn conductor_size(value: &Value) -> Option<Says> {
    size_of_conductor(value).map(|size| Says::OneOf(vec![size]))
}

fn size_of_conductor(value: &Value) -> Option<String> {
    value.as_str().and_then(ConductorSize::read).map(|size| size.name().to_owned())
}

fn trade_size(value: &Value) -> Option<Says> {
    size_of_raceway(value).map(|size| Says::OneOf(vec![size]))
}

fn size_of_raceway(value: &Value) -> Option<String> {
    let read = match value {
        Value::String(text) => TradeSize::read(text),
        other => {
            let designator = other.get("metric_designator")?.as_i64()?;
            TradeSize::by_metric_designator(i32::try_from(designator).ok()?)
        }
    };
    read.map(|size| size.name().to_owned())
}

fn metal_of_row(_: &Value) -> Option<Says> {
    Some(Says::word("metal"))
}

fn metal_or_not(value: &Value) -> Option<Says> {
    Some(Says::word(if value.as_str()? == "nonmetallic" { "nonmetallic" } else { "metal" }))
}

fn single_gang(value: &Value) -> Option<Says> {
    value.as_bool()?.then_some(Says::number(1.0))
}

fn body_or_box(value: &Value) -> Option<Says> {
    Some(Says::word(if value.as_bool()? { "conduit_body" } else { "box" }))
}

/// Only an octagonal row leaves open what its sides are: the table has round boxes in it too.
fn shape_of_row(value: &Value) -> Option<Says> {
    let row = StandardBox::read(value.as_str()?)?;
    (row.shape() != Shape::Octagonal).then(|| Says::word("flat_sided"))
}

fn wet_or_not(value: &Value) -> Option<Says> {
    let places: &[&str] = if value.as_bool()? { &["wet"] } else { &["dry", "damp"] };
    Some(Says::OneOf(places.iter().map(|place| (*place).to_owned()).collect()))
}

fn none_if_false(value: &Value) -> Option<Says> {
    (!value.as_bool()?).then(|| Says::word("none"))
}

fn some_if_any(value: &Value) -> Option<Says> {
    (!value.as_array()?.is_empty()).then(|| Says::word("some"))
}

fn some_if_there(value: &Value) -> Option<Says> {
    value.is_object().then(|| Says::word("some"))
}

fn some_if_carried(value: &Value) -> Option<Says> {
    (value.as_str()? != "nothing").then(|| Says::word("some"))
}

fn some_or_none(value: &Value) -> Option<Says> {
    Some(Says::word(if value.as_array()?.is_empty() { "none" } else { "some" }))
}

fn hung(value: &Value) -> Option<Says> {
    Some(Says::word(if value.as_str()? == "ceiling_fan" { "fan" } else { "luminaire" }))
}

fn carried(value: &Value) -> Option<Says> {
    Some(Says::word(match value.as_str()? {
        "luminaire" => "luminaire",
        "ceiling_fan" => "fan",
        "nothing" => "nothing",
        _ => return None,
    }))
}
