//! What is asked: the box as it is installed, part by part. Only what is described is looked at.

mod enclosure;
mod surface;
mod wiring;

pub use enclosure::*;
pub use surface::*;
pub use wiring::*;

use crate::checks::request::request;
use crate::quantity::converts;

/// The most items of any list.
pub const MOST_ITEMS: usize = 200;

request! {
    /// A box as it is installed. Each part that is described is inspected; a part that is left out is not asked about.
    pub struct BoxMountingRequest {
        /// The units of every figure in the request and the answer.
        units,
        /// The box itself, as far as other parts go by it.
        #[schema(extensions(("x-role" = json!("thing"))))]
        pub enclosure: Option<MountedBox>,
        /// The wall or ceiling around a box with a flush-type cover or faceplate. Leave it out for a surface-mounted box.
        #[schema(extensions(("x-role" = json!("thing"))))]
        pub flush_surface: Option<FlushSurface>,
        /// A flush device in the box.
        #[schema(extensions(("x-role" = json!("thing"))))]
        pub flush_device: Option<FlushDevice>,
        /// An extension from a flush box over the surface.
        #[schema(extensions(("x-role" = json!("thing"))))]
        pub extension: Option<SurfaceExtension>,
        /// What covers the box.
        #[schema(extensions(("x-role" = json!("thing"))))]
        pub cover: Option<FittedCover>,
        /// Whether its wiring can be reached.
        #[schema(extensions(("x-role" = json!("thing"))))]
        pub access: Option<Access>,
        /// What enters the box.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub entries: Vec<WiringEntry>,
        /// Openings in the box that nothing uses.
        #[schema(extensions(("x-role" = json!("thing"))))]
        pub unused_openings: Option<UnusedOpenings>,
        /// Screws and other fasteners put in on site that reach into the wiring space.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub fasteners: Vec<Fastener>,
        /// Moisture where the box is.
        #[schema(extensions(("x-role" = json!("thing"))))]
        pub moisture: Option<Moisture>,
        /// For a handhole enclosure: what is particular to it.
        #[schema(extensions(("x-role" = json!("thing"))))]
        pub handhole: Option<Handhole>,
    }
}

converts! {
    BoxMountingRequest { enclosure, flush_surface, cover, access, entries, fasteners, moisture, handhole }
}
