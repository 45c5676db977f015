//! What exercises are about.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// Declares the topics, each with the key of its title.
macro_rules! topics {
    ($($(#[$about:meta])+ $topic:ident = $title:literal,)+) => {
        /// What an exercise is about.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema)]
        #[serde(rename_all = "snake_case")]
        pub enum Topic {
            $($(#[$about])+ $topic,)+
        }

        impl Topic {
            /// Every topic.
            pub const ALL: [Self; [$($title),+].len()] = [$(Self::$topic),+];

            /// The key of its title.
            pub const fn title(self) -> &'static str {
                match self {
                    $(Self::$topic => $title,)+
                }
            }
        }
    };
}

topics! {
    /// Which conductors count in a box, and how often.
    OutletConductors = "text-topic-outlet-conductors",
    /// What devices take.
    OutletDevices = "text-topic-outlet-devices",
    /// What grounding conductors take.
    OutletGrounding = "text-topic-outlet-grounding",
    /// All contents of a box together.
    OutletBoxFill = "text-topic-outlet-box-fill",
    /// How much volume a box has.
    OutletBoxVolume = "text-topic-outlet-box-volume",
    /// How many more conductors a box takes.
    OutletBoxRoom = "text-topic-outlet-box-room",
    /// The length of a box for a straight pull.
    PullStraight = "text-topic-pull-straight",
    /// The length of a box for an angle pull, a U pull or a splice.
    PullAngle = "text-topic-pull-angle",
    /// How far entries with the same conductors stand apart.
    PullDistance = "text-topic-pull-distance",
    /// The length of a box over 1000 V.
    #[serde(rename = "pull_over_1000_volts")]
    PullOver1000Volts = "text-topic-pull-over-1000-volts",
    /// How many conductors a conduit body takes.
    ConduitBodies = "text-topic-conduit-bodies",
    /// How full a raceway may be.
    RacewayFill = "text-topic-raceway-fill",
    /// How much free conductor is left at a box.
    FreeConductors = "text-topic-free-conductors",
    /// How deep a box must be for its device.
    BoxDepths = "text-topic-box-depths",
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
