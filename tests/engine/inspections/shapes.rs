//! Requests of any shape, made of bytes so that what fails can be made smaller.

use serde_json::{Map, Value, json};

/// Turns bytes into choices, so that what fails can be made smaller.
pub struct Choices<'a>(pub std::slice::Iter<'a, u8>);

/// What a member of a request may hold.
pub enum Kind {
    Fact,
    Size,
    Word(&'static [&'static str]),
    Object(&'static [(&'static str, Kind)]),
    List(&'static [(&'static str, Kind)]),
    /// One that is always there.
    Always(&'static Kind),
}
use Kind::{Always, Fact, List, Object, Size, Word};

impl Choices<'_> {
    fn next(&mut self, of: usize) -> usize {
        usize::from(self.0.next().copied().unwrap_or(0)) % of
    }

    fn value(&mut self, kind: &Kind) -> Value {
        const SIZES: [f64; 14] =
            [0.04, 0.0625, 0.1, 0.25, 0.4, 0.5, 1.0, 1.5, 2.0, 6.0, 8.0, 48.0, 100.0, 2000.0];
        match kind {
            Fact => json!(self.next(2) == 1),
            Size => json!(SIZES[self.next(SIZES.len())]),
            Word(words) => json!(words[self.next(words.len())]),
            Object(members) => self.object(members),
            List(members) => (0..self.next(4)).map(|_| self.object(members)).collect(),
            Always(kind) => self.value(kind),
        }
    }

    fn object(&mut self, members: &[(&str, Kind)]) -> Value {
        let mut object = Map::new();
        for (member, kind) in members {
            if matches!(kind, Always(_)) || self.next(4) > 0 {
                object.insert((*member).to_owned(), self.value(kind));
            }
        }
        object.into()
    }

    pub fn request(&mut self, members: &[(&str, Kind)]) -> Value {
        let mut request = self.object(members);
        request["edition"] = json!(["2017", "2020", "2023", "2026"][self.next(4)]);
        request["units"] = json!(["us", "si"][self.next(2)]);
        request["accept_unverified_rules"] = json!(true);
        request
    }
}

pub const CONDUCTORS: &[(&str, Kind)] = &[
    (
        "interpretations",
        Object(&[
            ("continuous_length", Word(&["length_counts", "one_piece"])),
            ("shared_pigtail", Word(&["each_alone", "lengthens_both"])),
        ]),
    ),
    ("opening", Object(&[("width", Size), ("height", Size)])),
    ("emergence_depth", Size),
    ("rings", List(&[("depth", Always(&Size))])),
    (
        "conductors",
        List(&[
            (
                "role",
                Always(&Word(&["spliced", "terminated", "terminated", "passes_through", "stays_inside"])),
            ),
            ("free_length", Size),
            ("length_outside_opening", Size),
            ("emergence_depth", Size),
            (
                "damage",
                Object(&[("place", Always(&Word(&["inside_box", "in_wall"]))), ("sound_length", Size)]),
            ),
            (
                "spliced_to_reach",
                Object(&[
                    ("kind", Always(&Word(&["own_length", "shared_pigtail"]))),
                    ("splice_inside_box", Fact),
                    ("length_in_one_piece", Size),
                ]),
            ),
        ]),
    ),
];

pub const DEPTHS: &[(&str, Kind)] = &[
    (
        "enclosure",
        Object(&[
            ("internal_depth", Size),
            ("identified_for_equipment", Fact),
            ("pull_box_with_bending_space", Fact),
            ("volume", Size),
        ]),
    ),
    (
        "equipment",
        List(&[
            ("projection", Size),
            (
                "largest_supply_conductor",
                Word(&["18 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG", "4 AWG", "1/0 AWG"]),
            ),
            ("rear_center_entry", Fact),
            ("listed_for_this_box", Fact),
            ("side_entry", Object(&[("past_centerline", Fact), ("clearance", Size)])),
        ]),
    ),
];

pub const CONSTRUCTION: &[(&str, Kind)] = &[
    (
        "enclosure",
        Always(&Object(&[
            (
                "material",
                Always(&Word(&["sheet_steel", "malleable_iron", "die_cast", "other_cast", "nonmetallic"])),
            ),
            ("volume", Size),
            ("wall_thickness", Size),
            ("listed_as_equal", Fact),
            ("grounding_provision", Fact),
        ])),
    ),
    (
        "cover",
        Object(&[
            ("material", Word(&["sheet_steel", "die_cast", "nonmetallic"])),
            ("thickness", Size),
            ("listed", Fact),
            ("lining_thickness", Size),
        ]),
    ),
];

pub const MOUNTING: &[(&str, Kind)] = &[
    ("stage", Word(&["rough_in", "finished"])),
    (
        "enclosure",
        Object(&[
            ("material", Word(&["metal", "nonmetallic"])),
            ("shape", Word(&["round", "flat_sided"])),
            ("volume", Size),
            ("conduit_body", Fact),
            ("single_gang_in_wall_or_ceiling", Fact),
            ("grounded", Fact),
            ("bonds_all_entries", Fact),
            ("listed_for_damp_locations", Fact),
            ("listed_for_wet_locations", Fact),
        ]),
    ),
    (
        "flush_surface",
        Object(&[("combustible", Fact), ("setback", Size), ("gap", Size), ("flush_cover", Fact)]),
    ),
    ("flush_device", Object(&[("enclosed", Fact), ("own_screws", Fact)])),
    (
        "extension",
        Object(&[
            ("means", Always(&Word(&["extension_ring", "another_box", "cover"]))),
            ("mechanically_secured", Fact),
            ("grounding_continues", Fact),
            ("listed_as_extension", Fact),
            ("cover_stays_on", Fact),
            ("wiring_lets_cover_come_off", Fact),
            ("grounding_independent_of_cover", Fact),
        ]),
    ),
    (
        "cover",
        Object(&[
            ("fitted", Fact),
            ("luminaire_with_open_back", Fact),
            ("screws", Object(&[("match_threads", Fact)])),
            ("combustible_finish", Object(&[("exposed_area", Size), ("covered", Fact)])),
            ("pendant_cord", Object(&[("bushed", Fact)])),
        ]),
    ),
    (
        "access",
        Object(&[
            ("place", Always(&Word(&["underground"]))),
            ("reachable", Fact),
            (
                "under_loose_cover",
                Object(&[
                    ("listed_box", Fact),
                    ("only_loose_material", Fact),
                    ("place_identified", Fact),
                    ("place_described", Fact),
                ]),
            ),
            (
                "finish_opening",
                Object(&[
                    ("interim_amendment_in_force", Fact),
                    ("whole_box_open", Fact),
                    ("fits_device", Fact),
                    ("within_box_walls", Fact),
                    ("off_center", Size),
                    ("long_side", Size),
                    ("short_side", Size),
                ]),
            ),
        ]),
    ),
    (
        "entries",
        List(&[
            (
                "wiring",
                Always(&Word(&[
                    "nonmetallic_sheathed_cable",
                    "underground_feeder_cable",
                    "armored_cable",
                    "metal_raceway",
                    "nonmetallic_raceway",
                    "other",
                ])),
            ),
            ("secured", Fact),
            ("sheath_inside", Size),
            ("clamp_inside", Object(&[("sheath_past", Size)])),
            ("fastened_at", Size),
            ("in_complete_raceway", Fact),
            ("largest_insulated_conductor", Word(&["6 AWG", "4 AWG"])),
            ("insulating_fitting", Fact),
            ("listed_metal_fitting", Fact),
            ("fastened_separation", Fact),
            ("rounded_hub", Fact),
            ("protected_before_conductors", Fact),
            ("locknut_on_side", Fact),
        ]),
    ),
    ("unused_openings", Object(&[("closed_like_the_wall", Fact)])),
    (
        "fasteners",
        List(&[
            ("through", Always(&Word(&["cover_screw", "cover", "wall"]))),
            ("as_maker_specifies", Fact),
            ("blunt", Fact),
            ("reach", Size),
            ("protected_end", Fact),
            ("mounts_box", Fact),
            ("from_adjacent_wall", Size),
        ]),
    ),
    (
        "moisture",
        Object(&[
            ("location", Always(&Word(&["dry", "damp", "wet"]))),
            ("kept_out", Fact),
            ("drain_openings", List(&[("diameter", Always(&Size)), ("listed_fitting", Fact)])),
        ]),
    ),
    (
        "handhole",
        Object(&[
            ("identified", Fact),
            ("wiring_listed_for_wet_locations", Fact),
            ("cover_marked", Fact),
            ("cover_needs_tools", Fact),
            ("cover_weight", Size),
            ("exposed_metal", Object(&[("bonded", Fact)])),
        ]),
    ),
];
