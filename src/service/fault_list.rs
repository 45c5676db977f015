//! Faults as a problem lists them: each in words, up to a limit, the rest counted.

use super::language;
use crate::checks::{Fault, FaultCode, Faults};
use serde::Serialize;
use utoipa::ToSchema;

/// The most faults that one problem lists.
pub const MOST_LISTED: usize = 100;

/// One fault of a request: where it is, what kind it is, and what would be right.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[schema(as = Fault)]
pub struct FaultView {
    /// Where it is in the body, as a JSON Pointer (RFC 6901); empty for the whole body.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(format = "json-pointer", example = "/contents/cables/0/size")]
    pub pointer: Option<String>,
    /// The query parameter that it is in, where it is not in the body.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(example = "explain")]
    pub parameter: Option<String>,
    /// The other member, where two state the same fact in different ways.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false, format = "json-pointer", example = "/enclosure/gangs")]
    pub contradicts: Option<String>,
    /// What kind it is. The codes are stable; `/v1/problems/invalid-request` says what each means.
    pub code: FaultCode,
    /// What would be right, in a sentence.
    #[schema(example = "13 AWG is not a conductor size.")]
    pub detail: String,
    /// The values or names that are accepted, where there is a closed set of them.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub accepted: Vec<String>,
    /// The accepted value or name that is most like what was given.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(example = "devices")]
    pub nearest: Option<String>,
}

impl FaultView {
    /// A fault in the body, told by a message and what it names.
    pub fn in_body<'a>(
        pointer: String,
        code: FaultCode,
        key: &'static str,
        named: impl IntoIterator<Item = (&'a str, String)>,
    ) -> Self {
        let detail = language::messages().sentence(key, named);
        let (accepted, nearest) = (Vec::new(), None);
        Self { pointer: Some(pointer), parameter: None, contradicts: None, code, detail, accepted, nearest }
    }

    /// A fault in the query, told by a message and what it names.
    pub fn in_query<'a>(
        parameter: &str,
        code: FaultCode,
        key: &'static str,
        named: impl IntoIterator<Item = (&'a str, String)>,
    ) -> Self {
        let view = Self::in_body(String::new(), code, key, named);
        Self { pointer: None, parameter: Some(parameter.to_owned()), ..view }
    }

    /// With the closed set of what is accepted, and the nearest of it to what was given.
    pub fn accepting<'a>(mut self, accepted: impl IntoIterator<Item = &'a str>, given: Option<&str>) -> Self {
        self.accepted = accepted.into_iter().map(str::to_owned).collect();
        self.nearest = given.and_then(|given| nearest(given, self.accepted.iter().map(String::as_str)));
        self
    }
}

impl From<&Fault> for FaultView {
    fn from(fault: &Fault) -> Self {
        let Fault { at, contradicts, code, message, arguments, accepted } = fault;
        let named = arguments.iter().map(|(name, text)| (*name, text.clone()));
        let view = Self::in_body(at.to_string(), *code, message, named);
        Self { accepted: accepted.clone(), contradicts: contradicts.map(|other| other.to_string()), ..view }
    }
}

/// The faults that a problem lists, and how many more there are.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct FaultList {
    kept: Vec<FaultView>,
    more: usize,
}

impl FaultList {
    /// One fault.
    pub fn of(fault: FaultView) -> Self {
        Self { kept: vec![fault], more: 0 }
    }

    /// Adds a fault; past the most that are listed it is only counted.
    pub fn push(&mut self, fault: FaultView) {
        if self.is_full() {
            self.more += 1;
        } else {
            self.kept.push(fault);
        }
    }

    /// Says that every fault is below a place of the body.
    pub fn move_below(&mut self, place: &str) {
        for pointer in self.kept.iter_mut().filter_map(|fault| fault.pointer.as_mut()) {
            pointer.insert_str(0, place);
        }
    }

    /// Counts a fault that is not listed.
    pub const fn count_one(&mut self) {
        self.more += 1;
    }

    /// Whether a further fault would only be counted: there is no need to put it in words.
    pub const fn is_full(&self) -> bool {
        self.kept.len() >= MOST_LISTED
    }

    /// The same faults with their places in the body said in another way.
    pub fn with_places(mut self, place: impl Fn(&str) -> String) -> Self {
        for fault in &mut self.kept {
            fault.pointer = fault.pointer.take().map(|pointer| place(&pointer));
        }
        self
    }

    /// The faults that are listed.
    pub fn kept(&self) -> &[FaultView] {
        &self.kept
    }

    /// How many more there are.
    pub const fn more(&self) -> usize {
        self.more
    }

    /// How many there are, listed or not.
    pub const fn len(&self) -> usize {
        self.kept.len() + self.more
    }

    /// Whether there is none.
    pub const fn is_empty(&self) -> bool {
        self.len() == 0
    }
}

impl From<&Faults> for FaultList {
    fn from(faults: &Faults) -> Self {
        let mut list = Self::default();
        for fault in faults.iter() {
            if list.is_full() {
                list.count_one();
            } else {
                list.push(fault.into());
            }
        }
        list
    }
}

/// Words of the trade that mean one of the accepted names, though they are spelled in another way.
const MEANINGS: &[(&str, &[&str])] = &[
    ("pvc", &["PVC-40"]),
    ("pvc schedule 40", &["PVC-40"]),
    ("schedule 40", &["PVC-40"]),
    ("sch 40", &["PVC-40"]),
    ("pvc schedule 80", &["PVC-80"]),
    ("schedule 80", &["PVC-80"]),
    ("sch 80", &["PVC-80"]),
    ("rigid", &["RMC"]),
    ("grc", &["RMC"]),
    ("rigid metal conduit", &["RMC"]),
    ("thinwall", &["EMT"]),
    ("flex", &["FMC"]),
    ("greenfield", &["FMC"]),
    ("sealtite", &["LFMC"]),
    ("liquidtight", &["LFMC"]),
    ("lfnc", &["LFNC-B"]),
    ("smurf tube", &["ENT"]),
    ("smurf", &["ENT"]),
    ("poly", &["HDPE"]),
    ("nm", &["NM-B"]),
    ("nmc", &["NM-B"]),
    ("romex", &["NM-B"]),
    ("uf", &["UF-B"]),
    ("bx", &["AC"]),
    ("tc", &["TC-ER"]),
    ("so", &["cord"]),
    ("sjo", &["cord"]),
    ("soow", &["cord"]),
    ("plastic", &["nonmetallic"]),
    ("pvc box", &["nonmetallic"]),
    ("fiberglass", &["nonmetallic"]),
    ("steel", &["metal", "sheet_steel"]),
    ("aluminum", &["metal"]),
    ("imperial", &["us"]),
    ("inch", &["us"]),
    ("metric", &["si"]),
    ("gfci", &["protective_device"]),
    ("afci", &["protective_device"]),
    ("dimmer", &["control"]),
    ("timer", &["control"]),
    ("sensor", &["control"]),
    ("outlet", &["receptacle"]),
    ("duplex", &["receptacle"]),
    ("pigtail", &["stays_inside"]),
    ("jumper", &["stays_inside"]),
    ("through", &["passes_through"]),
    ("loop", &["passes_through"]),
    ("capped", &["terminated", "spliced"]),
    ("square", &["flat_sided"]),
    ("octagonal", &["flat_sided"]),
    ("fan", &["ceiling_fan"]),
    ("paddle fan", &["ceiling_fan"]),
    ("light", &["luminaire"]),
    ("fixture", &["luminaire"]),
    ("smoke alarm", &["equipment"]),
    ("mud ring", &["plaster_ring"]),
    ("plaster ring", &["plaster_ring"]),
    ("bonding", &["bonding_jumper"]),
    ("egc", &["equipment_grounding"]),
    ("ground", &["equipment_grounding"]),
    ("4 square", &["square-4x1-1/2"]),
    ("1900", &["square-4x1-1/2"]),
    ("handy", &["device-4x2-1/8x1-1/2"]),
    ("handy box", &["device-4x2-1/8x1-1/2"]),
    // types that are none of the tables of raceway fill, and look like others that are
    ("mtw", &[]),
    ("use", &[]),
    ("use-2", &[]),
];

/// The known name that means what was given, or is spelled most like it; `None` when none is much like it. Of editions it is
/// the one that is nearest in time.
///
/// ```
/// use elbowroom::service::fault_list::nearest;
/// assert_eq!(nearest("devises", ["devices", "cables"].into_iter()), Some("devices".to_owned()));
/// assert_eq!(nearest("xyz", ["devices", "cables"].into_iter()), None);
/// assert_eq!(nearest("2008", ["2017", "2020", "2023"].into_iter()), Some("2017".to_owned()));
/// assert_eq!(nearest("PVC", ["EMT", "PVC-A", "PVC-40"].into_iter()), Some("PVC-40".to_owned()));
/// assert_eq!(nearest("MTW", ["THHN", "TW"].into_iter()), None);
/// assert_eq!(nearest("LFNC", ["LFMC", "LFNC-B"].into_iter()), Some("LFNC-B".to_owned()));
/// ```
pub fn nearest<'a>(given: &str, known: impl Iterator<Item = &'a str>) -> Option<String> {
    const MOST_CHARACTERS: usize = 80;
    if given.chars().count() > MOST_CHARACTERS {
        return None;
    }
    let given = given.trim().to_lowercase();
    let known: Vec<&str> = known.collect();
    if let Some(meant) = meant(&given, &known) {
        return meant.map(str::to_owned);
    }
    if let Some(year) = nearest_year(&given, &known) {
        return Some(year.to_owned());
    }
    known
        .into_iter()
        .map(|name| (name, strsim::normalized_damerau_levenshtein(&given, &name.to_lowercase())))
        .filter(|(_, likeness)| *likeness >= 0.5)
        .max_by(|(_, left), (_, right)| left.total_cmp(right))
        .map(|(name, _)| name.to_owned())
}

/// The name that is meant; `None` where the meaning of what was given is not known, `Some(None)` where it is known to be none of
/// these names.
fn meant<'a>(given: &str, known: &[&'a str]) -> Option<Option<&'a str>> {
    // the rows of the table of boxes that are named octagonal are those of round boxes too
    if let Some(row) = given.strip_prefix("round-") {
        let row = format!("octagonal-{row}");
        if let Some(name) = known.iter().copied().find(|name| *name == row) {
            return Some(Some(name));
        }
    }
    let is_insulation = known.contains(&"THHN");
    let mut meant = MEANINGS.iter().filter(|(word, _)| *word == given);
    meant.find_map(|(_, meanings)| match meanings {
        [] => is_insulation.then_some(None),
        _ => known.iter().copied().find(|name| meanings.contains(name)).map(Some),
    })
}

fn nearest_year<'a>(given: &str, known: &[&'a str]) -> Option<&'a str> {
    let year = |text: &str| text.parse::<u16>().ok().filter(|year| (1900..2100).contains(year));
    let given = year(given)?;
    let years: Option<Vec<(u16, &str)>> = known.iter().map(|name| Some((year(name)?, *name))).collect();
    years?.into_iter().min_by_key(|(year, _)| year.abs_diff(given)).map(|(_, name)| name)
}
