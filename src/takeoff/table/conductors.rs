//! Cables, conductors and grounding conductors as people write them.

use super::cells::{Listed, ambiguous, not_understood, plain, unknown};
use super::{Column, Draft};
use crate::checks::{FaultCode, Faults};
use crate::trade::{ConductorSize, Insulation};
use serde_json::{Map, Value, json};

/// Kinds of cable by what is left of their letters.
const CABLES: [(&str, &str); 13] = [
    ("nmb", "NM-B"),
    ("nm", "NM-B"),
    ("ufb", "UF-B"),
    ("uf", "UF-B"),
    ("ac", "AC"),
    ("mc", "MC"),
    ("ser", "SER"),
    ("seu", "SEU"),
    ("tcer", "TC-ER"),
    ("tc", "TC-ER"),
    ("mi", "MI"),
    ("cord", "cord"),
    ("other", "other"),
];

/// The grounding conductor of a cable.
enum Ground {
    Unstated,
    None,
    AsTheOthers,
    Of(ConductorSize),
}

/// Reads the cables of a box: `2 x 12-2 NM-B w/g`.
pub(super) fn cables(draft: &mut Draft<'_>) {
    for listed in draft.cells.list(Column::Cables) {
        if let Some(cable) = cable(&listed, &mut draft.faults) {
            draft.push(Column::Cables, "/contents/cables", cable);
        }
    }
}

fn cable(listed: &Listed<'_>, faults: &mut Faults) -> Option<Value> {
    let column = Column::Cables;
    let (mut kind, mut make_up, mut ground) = ("other", None, Ground::Unstated);
    let spelled = listed
        .words
        .replace("without", "wo")
        .replace("with", "w")
        .replace("w/o", "wo")
        .replace("w/", "w ")
        .replace("grounding", "g")
        .replace("ground", "g");
    let mut tokens = spelled.split_whitespace().peekable();
    while let Some(token) = tokens.next() {
        let next_is_ground = tokens.peek().is_some_and(|next| *next == "g");
        match (token, plain(token).as_str()) {
            ("no" | "wo", _) if next_is_ground => {
                tokens.next();
                ground = Ground::None;
            }
            ("w", _) if next_is_ground => {
                tokens.next();
                ground = Ground::AsTheOthers;
            }
            ("w", _) => {}
            ("g" | "wg", _) => ground = Ground::AsTheOthers,
            (_, word) if CABLES.iter().any(|(letters, _)| *letters == word) => {
                kind = CABLES.iter().find(|(letters, _)| *letters == word)?.1;
            }
            (token, _) => {
                let sized = token.strip_suffix('g').unwrap_or(token);
                let is_ground = sized.len() < token.len() || next_is_ground;
                match (is_ground, ConductorSize::read(sized), conductors_of(token)) {
                    (true, Some(size), _) => {
                        if next_is_ground {
                            tokens.next();
                        }
                        ground = Ground::Of(size);
                    }
                    (_, _, Some(found)) if make_up.is_none() => make_up = Some(found),
                    _ => {
                        not_understood(faults, column, listed.text, ["12-2 NM-B w/g", "12-2 NM-B no ground"]);
                        return None;
                    }
                }
            }
        }
    }
    let Some((size, conductors)) = make_up else {
        not_understood(faults, column, listed.text, ["12-2 NM-B w/g", "12-2 NM-B no ground"]);
        return None;
    };
    let ground = match ground {
        Ground::None => "none",
        Ground::Of(size) => size.name(),
        // up to 10 AWG a cable's grounding conductor is as large as the others, above it is smaller by the maker's choice
        Ground::AsTheOthers if size <= ConductorSize::read("10")? => size.name(),
        Ground::AsTheOthers => {
            ambiguous(faults, column, listed.text, ["w/10g", "w/8g", "w/6g"]);
            return None;
        }
        Ground::Unstated => {
            ambiguous(faults, column, listed.text, ["w/g", "w/10g", "no ground"]);
            return None;
        }
    };
    let cable = json!({"kind": kind, "size": size.name(), "conductors": conductors, "grounding": ground});
    Some(listed.counted(cable))
}

/// `12-2`, `12/2`, `1/0-3`, `#12-2`: the size, and how many conductors of it.
fn conductors_of(token: &str) -> Option<(ConductorSize, u32)> {
    let (size, conductors) = token.rsplit_once(['-', '/'])?;
    let conductors: u32 = conductors.parse().ok().filter(|number| *number > 0)?;
    Some((ConductorSize::read(size)?, conductors))
}

/// What is left of the words of a thing once some are taken out: its size.
fn size_of(words: &[&str], text: &str, column: Column, faults: &mut Faults) -> Option<ConductorSize> {
    let size = ConductorSize::read(&words.join(" "));
    if size.is_none() {
        let accepted = ConductorSize::all().map(ConductorSize::name);
        unknown(faults, column, FaultCode::UnknownConductorSize, text, accepted);
    }
    size
}

/// Splits the words of a thing into those that a reader knows, and the rest.
fn split<T>(words: &str, known: impl Fn(&str) -> Option<T>) -> (Vec<T>, Vec<&str>) {
    let (mut found, mut rest) = (Vec::new(), Vec::new());
    for word in words.split_whitespace() {
        match known(word) {
            Some(meaning) => found.push(meaning),
            None => rest.push(word),
        }
    }
    (found, rest)
}

/// The meaning of the words when they all mean the same.
fn only<T: PartialEq + Copy>(found: &[T]) -> Result<Option<T>, ()> {
    match found {
        [] => Ok(None),
        [first, rest @ ..] if rest.iter().all(|other| other == first) => Ok(Some(*first)),
        _ => Err(()),
    }
}

/// Reads things that have a size and one word that says what they are: `2 x 14 pigtail`.
fn sized(
    draft: &mut Draft<'_>,
    column: Column,
    pointer: &str,
    member: &str,
    usual: &'static str,
    word: impl Fn(&str) -> Option<&'static str>,
    accepted: &[&str],
) {
    for listed in draft.cells.list(column) {
        let (found, rest) = split(&listed.words, |text| {
            word(text)
                .or_else(|| insulation(text).map(|_| ""))
                .filter(|_| ConductorSize::read(text).is_none())
        });
        let found: Vec<&str> = found.into_iter().filter(|meaning| !meaning.is_empty()).collect();
        let Ok(meaning) = only(&found) else {
            not_understood(&mut draft.faults, column, listed.text, accepted.iter().copied());
            continue;
        };
        let Some(size) = size_of(&rest, listed.text, column, &mut draft.faults) else { continue };
        let thing = json!({"size": size.name(), member: meaning.unwrap_or(usual)});
        draft.push(column, pointer, listed.counted(thing));
    }
}

/// Reads the loose conductors of a box: `4 x 12; 2 x 14 pigtail`.
pub(super) fn in_box(draft: &mut Draft<'_>) {
    let word = |text: &str| {
        Some(match text {
            "terminated" => "terminated",
            "spliced" | "splice" => "spliced",
            "through" | "pass" | "passes" => "passes_through",
            "pigtail" | "pigtails" | "inside" => "stays_inside",
            "solid" | "stranded" | "copper" | "cu" => "",
            _ => return None,
        })
    };
    let accepted = ["4 x 12", "4 x 12 spliced", "4 x 12 through", "2 x 12 pigtail"];
    sized(draft, Column::Conductors, "/contents/conductors", "role", "terminated", word, &accepted);
}

/// Reads the grounding conductors that no cable brings: `2 x 12; 12 isolated`.
pub(super) fn grounds(draft: &mut Draft<'_>) {
    let word = |text: &str| {
        Some(match text {
            "isolated" | "ig" => "isolated",
            "bonding" | "jumper" => "bonding_jumper",
            "pigtail" | "pigtails" | "inside" => "stays_inside",
            "bare" | "green" | "ground" | "grounding" => "",
            _ => return None,
        })
    };
    let accepted = ["2 x 12", "12 isolated", "12 jumper", "12 pigtail"];
    sized(draft, Column::Grounds, "/contents/grounding", "kind", "equipment_grounding", word, &accepted);
}

/// An insulation type in any case, with or without its dash. Wire marked for two types that share their dimensions, such
/// as `THHN/THWN-2`, is the first of them.
fn insulation(text: &str) -> Option<Insulation> {
    let one = |text: &str| {
        let given = plain(text);
        Insulation::ALL.iter().copied().find(|known| plain(known.letters()) == given)
    };
    match text.split_once('/') {
        None => one(text),
        Some((first, second)) => {
            let dual = [Insulation::Thhn, Insulation::Thwn, Insulation::Thwn2];
            let (first, second) = (one(first)?, one(second)?);
            (dual.contains(&first) && dual.contains(&second)).then_some(first)
        }
    }
}

/// What a word means of a conductor in a raceway.
#[derive(Clone, Copy)]
enum Word {
    Insulation(Insulation),
    Bare,
    Construction(&'static str),
    Covering(&'static str),
    Compact,
    Grounding,
    Nothing,
}

/// Reads the conductors of a raceway: `3 x 12 THHN; 1 x 12 THHN ground; 1 x 12 bare solid`.
pub(super) fn in_raceway(draft: &mut Draft<'_>) {
    let usual = draft.cells.get(Column::Insulation).and_then(|given| {
        let found = insulation(given);
        if found.is_none() {
            let accepted = Insulation::ALL.iter().map(|known| known.letters());
            not_understood(&mut draft.faults, Column::Insulation, given, accepted);
        }
        found
    });
    let has_usual = draft.cells.has(Column::Insulation);
    let column = Column::Conductors;
    for listed in draft.cells.list(column) {
        let spelled =
            listed.words.replace("without covering", "uncovered").replace("with covering", "covered");
        let (words, rest) = split(&spelled, word_of);
        let mut thing = Map::new();
        let (mut bare, mut construction, mut types) = (false, None, Vec::new());
        let mut grounds = false;
        for word in words {
            match word {
                Word::Insulation(kind) => types.push(kind),
                Word::Bare => bare = true,
                Word::Construction(kind) => construction = Some(kind),
                Word::Covering(covering) => {
                    thing.insert("covering".to_owned(), covering.into());
                }
                Word::Compact => construction = Some("compact"),
                Word::Grounding => grounds = true,
                Word::Nothing => {}
            }
        }
        let Some(size) = size_of(&rest, listed.text, column, &mut draft.faults) else { continue };
        thing.insert("size".to_owned(), size.name().into());
        let Ok(own) = only(&types) else {
            ambiguous(&mut draft.faults, column, listed.text, types.iter().map(|kind| kind.letters()));
            continue;
        };
        match (bare, own.or(usual), construction) {
            (true, _, Some(construction)) if own.is_none() => {
                thing.insert("construction".to_owned(), construction.into());
                draft.push(column, "/bare_conductors", listed.counted(Value::Object(thing)));
            }
            (true, _, None) if own.is_none() => {
                ambiguous(
                    &mut draft.faults,
                    column,
                    listed.text,
                    ["bare solid", "bare stranded", "bare compact"],
                );
            }
            (false, Some(kind), construction) => {
                thing.insert("insulation".to_owned(), kind.letters().into());
                if construction == Some("compact") {
                    thing.insert("compact".to_owned(), true.into());
                }
                // a bare conductor is one for grounding in any case
                if grounds {
                    thing.insert("equipment_grounding".to_owned(), true.into());
                }
                draft.push(column, "/conductors", listed.counted(Value::Object(thing)));
            }
            // an insulation that was not understood has been reported already
            (false, None, _) if has_usual => {}
            _ => ambiguous(
                &mut draft.faults,
                column,
                listed.text,
                ["3 x 12 THHN", "3 x 12 XHHW-2", "1 x 12 bare solid"],
            ),
        }
    }
}

fn word_of(word: &str) -> Option<Word> {
    if ConductorSize::read(word).is_some() {
        return None;
    }
    Some(match word {
        "bare" => Word::Bare,
        "solid" => Word::Construction("solid"),
        "stranded" => Word::Construction("stranded"),
        "compact" => Word::Compact,
        "covered" => Word::Covering("with"),
        "uncovered" => Word::Covering("without"),
        "ground" | "grounding" => Word::Grounding,
        "copper" | "cu" | "green" => Word::Nothing,
        other => Word::Insulation(insulation(other)?),
    })
}
