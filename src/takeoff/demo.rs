//! An invented job: the boxes and raceways of a small clinic, as many boxes as are asked for, the same for the same seed.
//!
//! Receptacles, switches, ceiling and junction boxes in rooms, with the cables that would be there. Everything that decides is
//! said, so that most rows are settled; some boxes are too small, a few have no mark yet, and for some only the size is asked.
//! Every line is valid.

use crate::checks::Check;
use crate::checks::outlet_fill::OutletFill;
use crate::checks::raceway_fill::RacewayFill;
use crate::rng::Rng;
use serde_json::{Value, json};

/// How many boxes one raceway comes with.
const BOXES_FOR_A_RACEWAY: u64 = 12;

/// A job of some boxes, and the raceways that come with them.
///
/// ```
/// use elbowroom::takeoff::demo::Job;
/// let lines: Vec<String> = Job::new(24, 1).collect();
/// assert_eq!(lines.len(), 26);
/// assert_eq!(lines, Job::new(24, 1).collect::<Vec<String>>());
/// assert_ne!(lines, Job::new(24, 2).collect::<Vec<String>>());
/// ```
#[derive(Clone, Debug)]
pub struct Job {
    boxes: u64,
    made: u64,
    owes_raceway: bool,
    chance: Chance,
    room: Room,
}

impl Job {
    /// A job of `boxes` boxes, different for each seed.
    pub fn new(boxes: u64, seed: u64) -> Self {
        let mut chance = Chance(Rng::new(seed));
        let room = Room::next(None, &mut chance);
        Self { boxes, made: 0, owes_raceway: false, chance, room }
    }
}

/// The takeoff, a line of NDJSON at a time.
impl Iterator for Job {
    type Item = String;

    fn next(&mut self) -> Option<String> {
        if std::mem::take(&mut self.owes_raceway) {
            let reference = self.room.reference("run");
            return Some(raceway(&mut self.chance, &reference));
        }
        if self.made == self.boxes {
            return None;
        }
        self.made += 1;
        self.owes_raceway = self.made.is_multiple_of(BOXES_FOR_A_RACEWAY);
        if self.room.boxes == 0 {
            self.room = Room::next(Some(&self.room), &mut self.chance);
        }
        self.room.boxes -= 1;
        let chance = &mut self.chance;
        Some(match chance.below(100) {
            0..42 => receptacle(chance, &self.room.reference("rec")),
            42..62 => switches(chance, &self.room.reference("sw")),
            62..83 => ceiling(chance, &self.room.reference("lum")),
            _ => junction(chance, &self.room.reference("jb")),
        })
    }
}

/// Chances, drawn by remainders: the same seed is the same job in every version.
#[derive(Clone, Debug)]
struct Chance(Rng);

impl Chance {
    /// A number below `most`.
    const fn below(&mut self, most: u64) -> u64 {
        self.0.next() % most
    }

    /// Whether something happens that does so in `times` of a hundred cases.
    const fn percent(&mut self, times: u64) -> bool {
        self.below(100) < times
    }

    const fn one_of<T: Copy, const N: usize>(&mut self, things: [T; N]) -> T {
        things[self.below(N as u64) as usize]
    }
}

/// The rooms of the clinic: how many of each, and about how many boxes one has.
const ROOMS: [(&str, u64, u64); 14] = [
    ("lobby", 1, 24),
    ("hall", 4, 18),
    ("exam", 24, 12),
    ("procedure", 4, 20),
    ("lab", 2, 28),
    ("imaging", 1, 22),
    ("nurse", 3, 22),
    ("office", 8, 9),
    ("break", 1, 14),
    ("records", 1, 8),
    ("toilet", 6, 4),
    ("storage", 4, 5),
    ("mechanical", 2, 12),
    ("roof", 1, 6),
];

#[derive(Clone, Debug)]
struct Room {
    kind: usize,
    number: u64,
    boxes: u64,
    things: u64,
}

impl Room {
    /// The room after another; after the last comes the first again, on the next floor.
    fn next(before: Option<&Self>, chance: &mut Chance) -> Self {
        let (kind, number) = match before {
            None => (0, 1),
            Some(before) => {
                let (_, rooms, _) = ROOMS[before.kind];
                let kind = (before.kind + 1) % ROOMS.len();
                let (_, next_rooms, _) = ROOMS[kind];
                match before.number / rooms {
                    _ if !before.number.is_multiple_of(rooms) => (before.kind, before.number + 1),
                    floors if kind == 0 => (kind, floors * next_rooms + 1),
                    floors => (kind, (floors - 1) * next_rooms + 1),
                }
            }
        };
        let (_, _, usual) = ROOMS[kind];
        Self { kind, number, boxes: usual + chance.below(usual / 2 + 1), things: 0 }
    }

    fn reference(&mut self, thing: &str) -> String {
        self.things += 1;
        let (kind, ..) = ROOMS[self.kind];
        format!("{kind}-{:02}/{thing}-{:02}", self.number, self.things)
    }
}

fn line(check: &str, request: &Value) -> String {
    json!({"check": check, "request": request}).to_string()
}

/// The box that was drawn: mostly the first, which is large enough, sometimes one of the others.
fn drawn(chance: &mut Chance, usual: Value, small: Value) -> Option<Value> {
    match chance.below(100) {
        0..88 => Some(usual),
        88..96 => Some(small),
        96..99 => None,
        _ => Some(json!({"material": "nonmetallic"})),
    }
}

fn cables(chance: &mut Chance, size: &str, conductors: u64, count: u64) -> Value {
    let kind = chance.one_of(["MC", "MC", "MC", "NM-B"]);
    json!({"kind": kind, "size": size, "conductors": conductors, "grounding": size, "count": count})
}

fn with_box(reference: &str, enclosure: Option<Value>, contents: Value) -> String {
    let mut request = json!({"reference": reference});
    if let Some(enclosure) = enclosure {
        request["enclosure"] = enclosure;
    }
    request["contents"] = contents;
    line(OutletFill::NAME, &request)
}

/// A receptacle on a 20 A circuit: one to three cables of 12 AWG.
fn receptacle(chance: &mut Chance, reference: &str) -> String {
    let runs = 1 + chance.below(2) + u64::from(chance.percent(15));
    let kind = if chance.percent(18) { "protective_device" } else { "receptacle" };
    let ring = chance.one_of([3.3, 4.5, 6.0]);
    let square = json!({
        "standard": "square-4x2-1/8",
        "sections": [{"kind": "plaster_ring", "marked_volume": ring}]
    });
    let marked = chance.one_of([20.3, 22.5, 34.0]);
    let usual = match chance.below(10) {
        0 => json!({"material": "nonmetallic", "marked_volume": marked}),
        1 => json!({"standard": "square-4-11/16x2-1/8"}),
        _ => square,
    };
    let small = chance.one_of(["device-3x2x2-1/2", "device-4x2-1/8x1-7/8", "device-3x2x3-1/2"]);
    let enclosure = drawn(chance, usual, json!({"standard": small}));
    let clamps = chance.percent(30);
    let mut contents = json!({
        "cables": [cables(chance, "12 AWG", 2, runs)],
        "devices": [{"kind": kind, "largest_conductor": "12 AWG"}]
    });
    contents["clamps"] = if clamps { json!([{"kind": "internal", "count": runs}]) } else { json!([]) };
    with_box(reference, enclosure, contents)
}

/// One to three switches and controls for lights on 14 AWG or 12 AWG.
fn switches(chance: &mut Chance, reference: &str) -> String {
    let gangs = 1 + chance.below(3);
    let size = if chance.percent(60) { "14 AWG" } else { "12 AWG" };
    let devices: Vec<Value> = (1..=gangs)
        .map(|number| {
            let kind = if chance.percent(35) { "control" } else { "switch" };
            json!({"id": format!("S{number}"), "kind": kind, "largest_conductor": size})
        })
        .collect();
    let usual = match gangs {
        1 => json!({"standard": "square-4x2-1/8"}),
        _ => json!({"standard": "device-3x2x3-1/2", "gangs": gangs}),
    };
    let small = json!({"standard": "device-3x2x2", "gangs": gangs});
    let enclosure = drawn(chance, usual, small);
    let travelers = chance.percent(25);
    let mut list = vec![cables(chance, size, 2, gangs)];
    if travelers {
        list.push(cables(chance, size, 3, 1));
    }
    with_box(reference, enclosure, json!({"cables": list, "devices": devices, "clamps": []}))
}

/// A luminaire on a ceiling box.
fn ceiling(chance: &mut Chance, reference: &str) -> String {
    let runs = 1 + chance.below(3);
    let canopy = if chance.percent(65) { "domed_luminaire" } else { "flat_luminaire" };
    let wire = if chance.percent(70) { "18 AWG" } else { "16 AWG" };
    let enclosure =
        drawn(chance, json!({"standard": "octagonal-4x2-1/8"}), json!({"standard": "octagonal-4x1-1/4"}));
    let mut contents = json!({
        "cables": [cables(chance, "14 AWG", 2, runs)],
        "canopy": {
            "kind": canopy,
            "fixture_wires": [{"size": wire, "count": 2 + 2 * chance.below(2)}],
            "grounding": [{"size": wire}]
        },
        "clamps": []
    });
    if chance.percent(20) {
        contents["support_fittings"] = json!([{"kind": if chance.percent(70) { "stud" } else { "hickey" }}]);
    }
    with_box(reference, enclosure, contents)
}

/// Splices above a ceiling: conductors from raceways.
fn junction(chance: &mut Chance, reference: &str) -> String {
    let size = chance.one_of(["12 AWG", "12 AWG", "10 AWG"]);
    let spliced = 4 + 2 * chance.below(4);
    let through = 2 * chance.below(3);
    let mut conductors = vec![json!({"size": size, "role": "spliced", "count": spliced})];
    if through > 0 {
        conductors.push(json!({"size": "12 AWG", "role": "passes_through", "count": through}));
    }
    let enclosure =
        drawn(chance, json!({"standard": "square-4-11/16x2-1/8"}), json!({"standard": "square-4x1-1/2"}));
    let contents = json!({
        "conductors": conductors,
        "grounding": [{"size": size, "kind": "equipment_grounding", "count": 2 + chance.below(3)}],
        "small_parts": [{"kind": "wire_connector", "count": spliced / 2}]
    });
    with_box(reference, enclosure, contents)
}

/// A run of raceway: branch circuits, or a feeder whose trade size is asked.
fn raceway(chance: &mut Chance, reference: &str) -> String {
    let feeder = chance.percent(30);
    let request = if feeder {
        let size = chance.one_of(["2 AWG", "1/0 AWG", "3/0 AWG", "250 kcmil"]);
        json!({
            "reference": reference,
            "raceway": {"kind": "EMT"},
            "conductors": [
                {"insulation": "XHHW-2", "size": size, "count": 4},
                {"insulation": "THWN-2", "size": "6 AWG"}
            ]
        })
    } else {
        let wires = 3 + chance.below(10);
        let usual = if wires > 9 { "3/4" } else { "1/2" };
        let kind = if chance.percent(80) { "EMT" } else { "PVC-40" };
        let mut raceway = json!({"kind": kind, "trade_size": usual});
        if chance.percent(10) {
            raceway["length"] = json!(18.0);
        }
        json!({
            "reference": reference,
            "raceway": raceway,
            "conductors": [{"insulation": "THHN", "size": "12 AWG", "count": wires}, {"insulation": "THHN", "size": "12 AWG"}]
        })
    };
    line(RacewayFill::NAME, &request)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_job_has_as_many_boxes_as_asked_and_no_mark_twice() {
        let mut marks = std::collections::BTreeSet::new();
        let (mut boxes, mut lines) = (0, 0);
        for line in Job::new(5_000, 7) {
            let item: Value = serde_json::from_str(&line).unwrap();
            boxes += u64::from(item["check"] == OutletFill::NAME);
            lines += 1;
            assert!(marks.insert(item["request"]["reference"].as_str().unwrap().to_owned()), "{line}");
        }
        assert_eq!((boxes, lines), (5_000, 5_000 + 5_000 / BOXES_FOR_A_RACEWAY));
    }
}
