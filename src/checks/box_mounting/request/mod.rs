//! What is asked: the box as it is installed, part by part. Only what is described is looked at.

mod enclosure;
mod surface;
mod wiring;

pub use enclosure::*;
pub use surface::*;
pub use wiring::*;

use crate::checks::request::{interpretations, request};
use crate::quantity::converts;
use crate::rulebook::reading::FeederAsNm;

/// The most items of any list.
pub const MOST_ITEMS: usize = 200;

request! {
    /// A box as it is installed. Each part that is described is inspected; a part that is left out is not asked about.
    pub struct BoxMountingRequest {
        /// The units of every figure in the request and the answer.
        units,
        interpretations: BoxMountingInterpretations,
        /// The box itself, as far as other parts go by it.
        pub enclosure: Option<MountedBox>,
        /// The wall, ceiling or floor in or behind which the box is installed and in which it opens, whatever covers it. Leave
        /// it out for a box on the surface, and for one that does not open in it: in an attic, or above a lay-in ceiling.
        pub flush_surface: Option<FlushSurface>,
        /// A flush device in the box.
        pub flush_device: Option<FlushDevice>,
        /// An extension from a flush box over the surface.
        pub extension: Option<SurfaceExtension>,
        /// How far the installation has come. At rough-in no cover is asked for.
        pub stage: Option<Stage>,
        /// What covers the box.
        pub cover: Option<FittedCover>,
        /// Whether its wiring can be reached.
        pub access: Option<Access>,
        /// What enters the box.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub entries: Vec<WiringEntry>,
        /// Openings in the box that nothing uses.
        pub unused_openings: Option<UnusedOpenings>,
        /// Screws and other fasteners put in on site that reach into the wiring space.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub fasteners: Vec<Fastener>,
        /// Moisture where the box is.
        pub moisture: Option<Moisture>,
        /// For a handhole enclosure: what is particular to it.
        pub handhole: Option<Handhole>,
    }
}

converts! {
    BoxMountingRequest { enclosure, flush_surface, cover, access, entries, fasteners, moisture, handhole }
}

interpretations! {
    /// How disputed points of mounting a box are to be read.
    pub struct BoxMountingInterpretations {
        /// Underground feeder cable that is not secured to a single-gang box.
        uf_as_nm: FeederAsNm,
    }
}
