//! What exercises are about.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// What an exercise is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Topic {
    /// Which conductors count in a box, and how often.
    OutletConductors,
    /// What devices take.
    OutletDevices,
    /// What grounding conductors take.
    OutletGrounding,
    /// All contents of a box together.
    OutletBoxFill,
    /// How much volume a box has.
    OutletBoxVolume,
    /// How many more conductors a box takes.
    OutletBoxRoom,
    /// The length of a box for a straight pull.
    PullStraight,
    /// The length of a box for an angle pull, a U pull or a splice.
    PullAngle,
    /// How far entries with the same conductors stand apart.
    PullDistance,
    /// The length of a box over 1000 V.
    #[serde(rename = "pull_over_1000_volts")]
    PullOver1000Volts,
    /// How many conductors a conduit body takes.
    ConduitBodies,
    /// How full a raceway may be.
    RacewayFill,
    /// How much free conductor is left at a box.
    FreeConductors,
    /// How deep a box must be for its device.
    BoxDepths,
}

impl Topic {
    /// Every topic.
    pub const ALL: [Self; 14] = [
        Self::OutletConductors,
        Self::OutletDevices,
        Self::OutletGrounding,
        Self::OutletBoxFill,
        Self::OutletBoxVolume,
        Self::OutletBoxRoom,
        Self::PullStraight,
        Self::PullAngle,
        Self::PullDistance,
        Self::PullOver1000Volts,
        Self::ConduitBodies,
        Self::RacewayFill,
        Self::FreeConductors,
        Self::BoxDepths,
    ];

    /// The key of its title.
    pub const fn title(self) -> &'static str {
        match self {
            Self::OutletConductors => "text-topic-outlet-conductors",
            Self::OutletDevices => "text-topic-outlet-devices",
            Self::OutletGrounding => "text-topic-outlet-grounding",
            Self::OutletBoxFill => "text-topic-outlet-box-fill",
            Self::OutletBoxVolume => "text-topic-outlet-box-volume",
            Self::OutletBoxRoom => "text-topic-outlet-box-room",
            Self::PullStraight => "text-topic-pull-straight",
            Self::PullAngle => "text-topic-pull-angle",
            Self::PullDistance => "text-topic-pull-distance",
            Self::PullOver1000Volts => "text-topic-pull-over-1000-volts",
            Self::ConduitBodies => "text-topic-conduit-bodies",
            Self::RacewayFill => "text-topic-raceway-fill",
            Self::FreeConductors => "text-topic-free-conductors",
            Self::BoxDepths => "text-topic-box-depths",
        }
    }
}

/// How much comes together in one exercise.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Difficulty {
    /// One rule at a time, sizes alike.
    #[default]
    Basic,
    /// Several rules, sizes that differ.
    Intermediate,
    /// Everything that a job brings.
    Advanced,
}

impl Difficulty {
    /// The key of its name.
    pub const fn title(self) -> &'static str {
        match self {
            Self::Basic => "text-difficulty-basic",
            Self::Intermediate => "text-difficulty-intermediate",
            Self::Advanced => "text-difficulty-advanced",
        }
    }
}
