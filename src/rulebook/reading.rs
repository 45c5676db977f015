//! Interpretation points: where a rule is read in more than one way.

use super::{
    Rule, box_construction, box_depth, box_entry, conduit_body, free_conductor, luminaire_outlet,
    outlet_fill, outlet_volume, over_1000_volts, pull, raceway_fill, unit_systems,
};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// Declares every interpretation point: its rule, and its readings with the default first.
// names are taken as `tt`: behind `literal` the schema derive does not see what serde renames to
macro_rules! points {
    ($($(#[doc = $doc:literal])+ $standing:ident $point:ident $name:tt by $rule:path {
        $($(#[doc = $reading_doc:literal])+ $reading:ident $text:tt),+ $(,)?
    })+) => {
        /// A place where inspectors and authors read a rule in more than one way.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        #[repr(u8)]
        pub enum Point { $($(#[doc = $doc])+ $point),+ }

        impl Point {
            /// Every point.
            pub const ALL: &'static [Self] = &[$(Self::$point),+];

            /// The name that a request uses.
            pub const fn name(self) -> &'static str {
                match self { $(Self::$point => $name),+ }
            }

            /// Whether its default decides, or a verdict that turns on it is not determined until the caller chooses.
            pub const fn standing(self) -> Standing {
                match self { $(Self::$point => Standing::$standing),+ }
            }

            /// The place in a request where its reading is chosen.
            pub const fn chosen_at(self) -> &'static &'static str {
                match self { $(Self::$point => &concat!("/interpretations/", $name)),+ }
            }

            /// The rule that is read in several ways.
            pub const fn rule(self) -> &'static Rule {
                match self { $(Self::$point => &$rule),+ }
            }

            /// The key of the sentence that says what is disputed.
            pub const fn question(self) -> &'static str {
                match self { $(Self::$point => concat!("point-", $name)),+ }
            }

            /// The names of its readings, the default first.
            pub const fn readings(self) -> &'static [&'static str] {
                match self { $(Self::$point => &[$($text),+]),+ }
            }
        }

        $(
            $(#[doc = $doc])+
            #[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
            #[repr(u8)]
            pub enum $point {
                $($(#[doc = $reading_doc])+ #[serde(rename = $text)] $reading),+
            }

            impl Reading for $point {
                const POINT: Point = Point::$point;
                const ALL: &'static [Self] = &[$(Self::$reading),+];
                fn place(self) -> u8 {
                    self as u8
                }
            }
        )+
    };
}

/// Whether the default reading of a point decides.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// Settled by print or by plain text: the default decides, and the other readings are named.
    Settled,
    /// Open: where the verdict turns on it and nobody chose a reading, it is not determined.
    Open,
}

impl Standing {
    /// The word as answers write it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Settled => "settled",
            Self::Open => "open",
        }
    }
}

/// One way to read a point.
pub trait Reading: Copy + 'static {
    /// The point that is read.
    const POINT: Point;
    /// Its readings, the default first.
    const ALL: &'static [Self];
    /// The place of this reading among them.
    fn place(self) -> u8;
}

points! {
    /// More than four small fixture wires come from a canopy: whether only those past four count, or all of them.
    Settled CanopyWires "canopy_wires" by outlet_fill::CANOPY {
        /// The relief is for at most four wires: with a fifth, all count.
        AllCount "all_count",
        /// Four are left out whatever their number; those past four count.
        ExcessCounts "excess_counts",
    }
    /// Whether the canopy of a ceiling fan is a luminaire's canopy.
    Open FanCanopy "fan_canopy" by outlet_fill::CANOPY {
        /// A fan is not a luminaire: its leads count.
        NotALuminaire "not_a_luminaire",
        /// The canopy is similar to a luminaire's: its small leads may be left out.
        AsALuminaire "as_a_luminaire",
    }
    /// Whether spring tabs molded into a plastic box are internal clamps, or are already taken off its marked volume.
    Open MoldedClamps "molded_clamps" by outlet_fill::CLAMPS {
        /// They are internal clamps: one allowance.
        Counted "counted",
        /// The marked volume already leaves them out: no allowance.
        NotCounted "not_counted",
    }
    /// What a bonding jumper that enters is counted as in an edition that names only grounding conductors.
    Open BondingJumpers "bonding_jumpers" by outlet_fill::GROUNDING {
        /// It joins the grounding conductors, as in the editions that name it.
        WithGrounding "with_grounding",
        /// It is a conductor like any other: one allowance.
        AsConductor "as_conductor",
    }
    /// Which conductor sizes a device that comes with its own leads.
    Settled DeviceLeads "device_leads" by outlet_fill::DEVICES {
        /// The largest circuit conductor joined to the leads.
        CircuitConductor "circuit_conductor",
        /// The leads themselves, since they are what is connected to the device.
        Leads "leads",
    }
    /// How long a loop must be to count twice when the small-opening rule asks for more than the base length.
    Settled LoopThreshold "loop_threshold" by outlet_fill::CONDUCTORS {
        /// Twice the free length that this opening and depth ask for.
        TwiceRequired "twice_required",
        /// Twice the base free length, whatever the opening.
        TwiceBase "twice_base",
    }
    /// Whether splicing terminals on a mounting rail are terminal blocks, or splicing connectors.
    Settled RailSplices "rail_splices" by outlet_fill::TERMINAL_BLOCKS {
        /// They are a terminal block assembly: one allowance.
        TerminalBlock "terminal_block",
        /// They are splicing connectors: no allowance.
        Connector "connector",
    }
    /// What a conductor smaller than 18 AWG takes up, for which no allowance is published.
    Settled SmallConductors "small_conductors" by outlet_fill::ALLOWANCE {
        /// No figure is invented: the answer is not determined.
        NoFigure "no_figure",
        /// As much as an 18 AWG conductor.
        AsEighteen "as_18_awg",
    }
    /// A box over the size that must be marked, with no mark and not in the table: whether its inside measure serves.
    Settled UnmarkedLargeBox "unmarked_large_box" by outlet_volume::MARKED {
        /// Length times width times depth, measured inside.
        InsideMeasure "inside_measure",
        /// Only a mark establishes a volume.
        MarkOnly "mark_only",
    }
    /// Which raceways of a row the angle rule counts: all of them, or only those of angle pulls, U pulls and splices.
    Settled AngleSum "angle_sum" by pull::ANGLE {
        /// Every entry of the row, those of straight pulls included.
        AllInRow "all_in_row",
        /// Only entries of angle pulls, U pulls and splices.
        AngleOnly "angle_only",
    }
    /// What a row is on the back wall, where none is declared and positions are given.
    Open BackWallRow "back_wall_row" by pull::ANGLE {
        /// Entries in line either way: both directions are computed, the larger counts.
        EitherWay "either_way",
        /// Entries at the same height.
        Horizontal "horizontal",
        /// Entries above one another.
        Vertical "vertical",
        /// All entries of the back wall are one row.
        OneRow "one_row",
    }
    /// From where to where the distance between two entries is measured.
    Open EntryDistance "entry_distance" by pull::ENTRY_DISTANCE {
        /// Between their nearest edges.
        EdgeToEdge "edge_to_edge",
        /// Between their centres.
        CentreToCentre "centre_to_centre",
    }
    /// Whether a conductor that is spliced in the box is the same conductor on both sides of the splice.
    Open SplicedConductor "spliced_conductor" by pull::ENTRY_DISTANCE {
        /// It is: the entries must be far enough apart.
        Same "same_conductor",
        /// It is not: no distance is asked between the entries.
        NotSame "not_same_conductor",
    }
    /// Whether conductors that are spliced between opposite walls also follow the straight rule.
    Settled StraightSplice "straight_splice" by pull::STRAIGHT {
        /// Splices follow the angle rule only.
        AngleRule "angle_rule",
        /// Both rules are computed, the larger counts.
        LargerOfBoth "larger_of_both",
    }
    /// Whether a pull between entries on opposite walls that are out of line is a straight pull.
    Settled OffsetEntries "offset_entries" by pull::STRAIGHT {
        /// It is a straight pull.
        Straight "straight_pull",
        /// The straight and the angle rule are both computed, the larger counts, and the entry distance is asked.
        LargerOfBoth "larger_of_both",
    }
    /// Whether a hinged cover is a removable one.
    Open HingedCover "hinged_cover" by pull::REMOVABLE_COVER {
        /// A hinged cover is not removable.
        NotRemovable "not_removable",
        /// A hinged cover serves like a removable one.
        Removable "removable",
    }
    /// The kind of raceway that a cable is taken to be in.
    Settled CableRaceway "cable_raceway" by pull::CABLES {
        /// Electrical metallic tubing.
        Emt "emt",
        /// Rigid metal conduit.
        Rmc "rmc",
        /// Rigid PVC conduit, schedule 80, which has the least room inside.
        Pvc80 "pvc_80",
    }
    /// The insulation that the conductors of a cable are taken to have, where it is not said.
    Settled CableInsulation "cable_insulation" by pull::CABLES {
        /// XHHW.
        Xhhw "xhhw",
        /// THHN.
        Thhn "thhn",
    }
    /// Whether a marked conductor size is also the largest single conductor that may be used.
    Settled MarkedSize "marked_size" by pull::MARKED {
        /// No conductor may be larger than the marked size.
        LargestConductor "largest_conductor",
        /// Only the total cross-section counts.
        TotalArea "total_area",
    }
    /// Whether a listed conduit body that is not a short-radius one has the cross-section that is asked.
    Settled ListedBodyArea "listed_body_area" by conduit_body::AREA {
        /// It has: bodies are listed with it.
        Meets "meets",
        /// Its cross-section must be known.
        Measured "measured",
    }
    /// Whether splices of conductors larger than 6 AWG, which have no volume allowance, are counted in a conduit body.
    Open LargeSpliceCount "large_splice_count" by conduit_body::SPLICES {
        /// They are not counted: a marked volume and rigid support are all that is asked.
        NotCounted "not_counted",
        /// They must fit the marked volume, and no allowance says how.
        Counted "counted",
    }
    /// Whose diameter counts over 1000 V in a cable of several conductors.
    Settled CableDiameter "cable_diameter" by over_1000_volts::STRAIGHT {
        /// That of the whole cable.
        Cable "cable",
        /// That of its largest single conductor.
        SingleConductor "single_conductor",
    }
    /// Whether a free length that a splice makes up counts in an edition that does not say so.
    Settled ContinuousLength "continuous_length" by free_conductor::SPLICED {
        /// The length counts, in one piece or spliced.
        LengthCounts "length_counts",
        /// Only a length in one piece counts.
        OnePiece "one_piece",
    }
    /// Whether two short conductors may be joined in one connector with a single pigtail.
    Open SharedPigtail "shared_pigtail" by free_conductor::SPLICED {
        /// Each must be long enough on its own before it is joined.
        EachAlone "each_alone",
        /// The pigtail lengthens both.
        LengthensBoth "lengthens_both",
    }
    /// Whether underground feeder cable is the nonmetallic-sheathed cable that an edition alone names where a clamp may be left out.
    Open FeederAsNm "uf_as_nm" by box_entry::SINGLE_GANG {
        /// It is not: the cable that is named is another.
        NotNm "nm_only",
        /// It is, where it is installed as nonmetallic-sheathed cable.
        AsNm "as_nm",
    }
    /// Behind which equipment on 12 or 10 AWG an entry at the center of the back asks for room.
    Open RearCenterEntry "rear_center_entry" by box_depth::REAR_CENTER {
        /// Behind any such equipment.
        AnyEquipment "any_equipment",
        /// Only behind equipment that projects more than the limit of that paragraph.
        ProjectingEquipment "projecting_equipment",
    }
    /// Whether a box takes equipment that projects exactly as far as the box is deep.
    Open EqualDepth "equal_depth" by box_depth::EQUIPMENT {
        /// It does: the depth is no less than the projection.
        Accommodates "accommodates",
        /// It does not: the equipment would touch the back.
        DoesNot "does_not_accommodate",
    }
    /// Whether a listing of a metal box is evidence of its thickness and of its means to connect a grounding conductor.
    Settled ListingEvidencesConstruction "listing_evidences_construction" by box_construction::LISTED {
        /// It is: boxes are listed with them.
        Evidence "evidence",
        /// Each must be known, as of a box that is not listed.
        EachKnown "each_known",
    }
    /// Which ceiling boxes are marked inside with the weight that they carry.
    Settled InteriorWeightMark "interior_weight_mark" by luminaire_outlet::MARK {
        /// Those that carry a heavier luminaire than a box without a mark may.
        HeavyLoads "heavy_loads",
        /// Every one.
        EveryBox "every_box",
    }
    /// The inside area of a raceway: computed from its diameter, or read in the rounded columns beside it.
    Settled RacewayArea "raceway_area" by raceway_fill::AREA {
        /// A quarter of π times the square of the tabulated inside diameter, not rounded.
        UnroundedDiameter "unrounded_diameter",
        /// The printed area, and the printed share of it.
        PrintedColumns "printed_columns",
    }
    /// The area of a conductor whose printed area is not that of its printed diameter.
    Open ConductorArea "conductor_area" by raceway_fill::CONDUCTORS {
        /// The area that is printed.
        Printed "printed_area",
        /// That of the diameter printed beside it, which the printed counts of conductors follow.
        OfDiameter "area_of_diameter",
    }
    /// How wide electrical nonmetallic tubing is in an edition that was not read, between two texts whose tables differ.
    Open EntDimensions "ent_dimensions" by raceway_fill::AREA {
        /// As the text of 2011 has it, which is narrower.
        AsBefore "as_in_2011",
        /// As in 2020.
        AsAfter "as_in_2020",
    }
    /// What decides how many conductors flexible metal conduit of trade size 3/8 takes.
    Open FmcThreeEighths "fmc_three_eighths" by raceway_fill::THREE_EIGHTHS {
        /// The table for that trade size.
        Table "table",
        /// The percentages of other raceways.
        Percentage "percentage",
    }
    /// Whether a demand is met where it is met in either system of units, or only in that of the request.
    Settled UnitsOfMeasure "units" by unit_systems::EITHER {
        /// In either, each worked wholly in one system.
        Either "either",
        /// Only in the system that the request is in.
        AsRequested "as_requested",
    }
}

/// The reading in force at every point.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Readings {
    #[serde(serialize_with = "<[u8]>::serialize")]
    places: [u8; Point::ALL.len()],
    /// The points that the caller chose a reading of, one bit each.
    chosen: u64,
}

impl Readings {
    /// The default reading of every point.
    pub const DEFAULT: Self = Self { places: [0; Point::ALL.len()], chosen: 0 };

    /// The reading of one point.
    ///
    /// ```
    /// use elbowroom::rulebook::reading::{MoldedClamps, Readings};
    /// assert_eq!(Readings::DEFAULT.of::<MoldedClamps>(), MoldedClamps::Counted);
    /// ```
    pub fn of<R: Reading>(&self) -> R {
        R::ALL[usize::from(self.place(R::POINT))]
    }

    /// The place of the reading in force among those of a point.
    pub const fn place(&self, point: Point) -> u8 {
        self.places[point as usize]
    }

    /// Whether the caller chose the reading of a point.
    pub const fn is_chosen(&self, point: Point) -> bool {
        self.chosen & (1 << point as u32) != 0
    }

    /// These readings with one point read as asked; as before when nothing is asked.
    pub fn choose<R: Reading>(mut self, reading: Option<R>) -> Self {
        if let Some(reading) = reading {
            self.places[R::POINT as usize] = reading.place();
            self.chosen |= 1 << R::POINT as u32;
        }
        self
    }

    /// These readings with one point read in the way that has this place among its readings.
    pub fn with_place(mut self, point: Point, place: u8) -> Self {
        self.chosen |= 1 << point as u32;
        self.places[point as usize] = place.min(point.readings().len() as u8 - 1);
        self
    }
}
