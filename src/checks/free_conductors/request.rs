//! What is asked: the opening, how deep conductors emerge behind it, and the conductors.

use crate::checks::Name;
use crate::checks::request::{interpretations, request};
use crate::quantity::{Count, Length, Offset, converts};
use crate::rulebook::reading::{ContinuousLength, SharedPigtail};
use crate::tables::standard_boxes::StandardBox;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The most items of any list.
pub const MOST_ITEMS: usize = 200;

request! {
    /// The conductors of one box, and its opening: is enough free conductor left, and if not, may a splice make it up?
    ///
    /// Leave `conductors` out to ask only what length is required: the verdict is then null.
    pub struct FreeConductorsRequest {
        /// The units of every length in the request and the answer.
        units,
        interpretations: FreeConductorsInterpretations,
        /// The opening of the box, as it is with rings fitted. Without it nobody can say whether the small-opening rule applies.
        pub opening: Option<BoxOpening>,
        /// How far behind the front edge of the box conductors leave their raceway or sheath, in the request's units; without
        /// what rings and extensions add.
        pub emergence_depth: Option<Offset>,
        /// Rings and extensions fitted to the box: each moves the opening farther from where conductors emerge.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub rings: Vec<Ring>,
        /// The conductors. Leave them out to ask only what is required.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub conductors: Vec<FreeConductor>,
    }
}

interpretations! {
    /// How disputed points of free conductor are to be read.
    pub struct FreeConductorsInterpretations {
        /// Whether a spliced length counts in an edition that does not say so.
        continuous_length: ContinuousLength,
        /// Two short conductors joined in one connector with a single pigtail.
        shared_pigtail: SharedPigtail,
    }
}

/// The opening of a box: width and height, or the diameter of a round one.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct BoxOpening {
    /// Width, in the request's units.
    pub width: Option<Length>,
    /// Height, in the request's units.
    pub height: Option<Length>,
    /// Diameter of a round or octagonal opening, in the request's units.
    pub diameter: Option<Length>,
    /// The gangs of a device box or ring: whatever their number, its opening is about 3 in (75 mm) high, and small.
    pub gangs: Option<Count<100>>,
    /// The row of Table 314.16(A) that the box is of: every one of them has a small opening.
    pub standard: Option<StandardBox>,
}

/// A plaster ring, an extension ring or another part that moves the opening outwards.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Ring {
    /// By how much it moves the opening, in the request's units.
    pub depth: Length,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Count<1000>>,
}

/// What a conductor does in the box.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum FreeConductorRole {
    /// It is spliced to other conductors, or capped for later.
    Spliced,
    /// It ends on a device, a luminaire or a terminal.
    Terminated,
    /// It passes through, neither spliced nor terminated here; an unbroken loop too.
    PassesThrough,
    /// No part of it leaves the box, as with a pigtail or a jumper.
    StaysInside,
}

/// One conductor, insulated or bare.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FreeConductor {
    /// A name, so that the answer can speak of it.
    pub id: Option<Name>,
    /// What it does in the box.
    pub role: FreeConductorRole,
    /// Its free length along the conductor, from where it leaves its raceway or sheath to its end, with any length that
    /// was spliced on. In the request's units.
    pub free_length: Option<Offset>,
    /// How far it reaches outside the opening, where that was measured. Left out: what the free length gives over the depth,
    /// as 300.14 measures both; where the two decide differently, it is refused. In the request's units.
    pub length_outside_opening: Option<Offset>,
    /// How far behind the front edge of the box this conductor emerges, where it differs from the others. Left out: as far as
    /// `emergence_depth` of the box says.
    pub emergence_depth: Option<Offset>,
    /// Where its insulation was damaged, for instance when the wall was cut, and not yet repaired or made up by a splice. Left
    /// out: it is sound.
    pub damage: Option<Damage>,
    /// How it was made longer by a splice, if it was. Left out: it is in one piece.
    pub spliced_to_reach: Option<Extension>,
}

/// Where the insulation of a conductor is damaged.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum DamagePlace {
    /// In the free length inside the box: it can be cut back to sound insulation.
    InsideBox,
    /// Behind the end of the raceway or sheath, in the wall.
    InWall,
}

/// Damaged insulation.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Damage {
    /// Where it is.
    pub place: DamagePlace,
    /// For damage inside the box: the sound length that is left when the conductor is cut back, from where it emerges. In
    /// the request's units.
    pub sound_length: Option<Offset>,
}

/// How a conductor is made longer by a splice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum ExtensionKind {
    /// A length is spliced onto this conductor alone.
    OwnLength,
    /// This conductor and another short one are joined in one connector with a single pigtail.
    SharedPigtail,
}

/// A splice that makes a conductor longer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Extension {
    /// How it is joined.
    pub kind: ExtensionKind,
    /// Whether the splice is inside this box.
    pub splice_inside_box: Option<bool>,
    /// The length in one piece, from where the conductor emerges to the splice. In the request's units. It decides where
    /// only an unspliced length counts.
    pub length_in_one_piece: Option<Offset>,
}

converts! {
    FreeConductorsRequest { opening, emergence_depth, rings, conductors }
    BoxOpening { width, height, diameter }
    Ring { depth }
    FreeConductor { free_length, length_outside_opening, emergence_depth, damage, spliced_to_reach }
    Damage { sound_length }
    Extension { length_in_one_piece }
}
