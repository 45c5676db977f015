//! What is asked: the opening, how deep conductors emerge behind it, and the conductors.

use crate::checks::{Amendment, Name, Reference, present};
use crate::quantity::{Count, Length, Offset, Units};
use crate::rulebook::Edition;
use crate::rulebook::reading::{ContinuousLength, Readings, SharedPigtail};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The most items of any list.
pub const MOST_ITEMS: usize = 200;

/// The conductors of one box, and its opening: is enough free conductor left, and if not, may a splice make it up?
///
/// Leave `conductors` out to ask only what length is required: the verdict is then null.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FreeConductorsRequest {
    /// The edition of NFPA 70.
    #[serde(default)]
    pub edition: Edition,
    /// Accept rules that could not be verified. Required to be true for the 2026 edition, whose text was not available.
    #[serde(default, skip_serializing_if = "is_false")]
    pub accept_unverified_rules: bool,
    /// The units of every length in the request and the answer.
    #[serde(default)]
    pub units: Units,
    /// The caller's own mark.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub reference: Option<Reference>,
    /// Local amendments to figures of the rules, each with the caller's citation.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schema(max_items = 200)]
    pub amendments: Vec<Amendment>,
    /// How disputed points are to be read, where not in the default way.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub interpretations: Option<FreeConductorsInterpretations>,
    /// The opening of the box, as it is with rings fitted. Without it nobody can say whether the small-opening rule applies.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub opening: Option<BoxOpening>,
    /// How far behind the front edge of the box conductors leave their raceway or sheath, in the request's units; without
    /// what rings and extensions add.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub emergence_depth: Option<Offset>,
    /// Rings and extensions fitted to the box: each moves the opening farther from where conductors emerge.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schema(max_items = 200)]
    pub rings: Vec<Ring>,
    /// The conductors. Leave them out to ask only what is required.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schema(max_items = 200)]
    pub conductors: Vec<FreeConductor>,
}

fn is_false(flag: &bool) -> bool {
    !flag
}

/// How disputed points of free conductor are to be read.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct FreeConductorsInterpretations {
    /// Whether a spliced length counts in an edition that does not say so.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub continuous_length: Option<ContinuousLength>,
    /// Two short conductors joined in one connector with a single pigtail.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub shared_pigtail: Option<SharedPigtail>,
}

impl FreeConductorsInterpretations {
    /// The readings that are chosen, on top of those given.
    pub fn apply(&self, readings: Readings) -> Readings {
        let Self { continuous_length, shared_pigtail } = *self;
        readings.choose(continuous_length).choose(shared_pigtail)
    }
}

/// The opening of a box: width and height, or the diameter of a round one.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct BoxOpening {
    /// Width, in the request's units.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub width: Option<Length>,
    /// Height, in the request's units.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub height: Option<Length>,
    /// Diameter of a round or octagonal opening, in the request's units.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub diameter: Option<Length>,
}

/// A plaster ring, an extension ring or another part that moves the opening outwards.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Ring {
    /// By how much it moves the opening, in the request's units.
    pub depth: Length,
    /// How many alike. 1 unless said otherwise.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
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
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub id: Option<Name>,
    /// What it does in the box.
    pub role: FreeConductorRole,
    /// Its free length along the conductor, from where it leaves its raceway or sheath to its end, with any length that
    /// was spliced on. In the request's units.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub free_length: Option<Offset>,
    /// How far it reaches outside the opening, where that was measured; otherwise it is computed from the free length
    /// and the depth. In the request's units.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub length_outside_opening: Option<Offset>,
    /// How far behind the front edge of the box this conductor emerges, where it differs from the others.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub emergence_depth: Option<Offset>,
    /// Where its insulation was damaged, for instance when the wall was cut, and not yet repaired or made up by a splice.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub damage: Option<Damage>,
    /// How it was made longer by a splice, if it was.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
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
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
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
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub splice_inside_box: Option<bool>,
    /// The length in one piece, from where the conductor emerges to the splice. In the request's units. It decides where
    /// only an unspliced length counts.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub length_in_one_piece: Option<Offset>,
}
