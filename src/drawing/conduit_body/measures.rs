//! How long, wide and deep a body is drawn, and where its openings are.

use super::super::sheet::approximate;
use crate::checks::conduit_body::{ConduitBodyOutcome, ConduitBodyRequest, Hub, HubPlace};
use crate::checks::pull_box::AxisSize;
use crate::derivation::Figure;
use crate::i18n::figure;
use crate::quantity::{Length, Measure, Units};
use crate::rulebook::Rule;
use crate::tables::raceway_dimensions::{self, Dimension};

/// Where the size of one direction comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Known {
    /// The request gives it.
    Given,
    /// The rules ask it.
    Required,
    /// Nobody says it: it is only drawn so.
    Assumed,
}

/// One direction of a body, in the unit of the request.
pub(super) struct Extent {
    /// The member that gives it: `length`.
    pub name: &'static str,
    pub known: Known,
    /// From wall to wall, as drawn.
    pub size: f64,
    /// What is missing to the least that is asked.
    pub missing: f64,
    /// What is given, as a sentence writes it.
    pub given: Option<String>,
    pub minimum: Option<Figure>,
    pub margin: Option<Figure>,
    /// The rule of the requirement that governs.
    pub rule: Option<&'static Rule>,
}

impl Extent {
    fn of(
        name: &'static str,
        given: Option<Length>,
        asked: Option<&AxisSize>,
        assumed: f64,
        units: Units,
    ) -> Self {
        let minimum = asked.and_then(|asked| asked.minimum);
        let least = minimum.map(|minimum| approximate(minimum.value));
        let given_size = given.map(|given| approximate(given.value()));
        let (known, size) = match (given_size, least) {
            (Some(given), _) => (Known::Given, given),
            (None, Some(least)) => (Known::Required, least),
            (None, None) => (Known::Assumed, assumed),
        };
        let missing = least.map_or(0.0, |least| (least - size).max(0.0));
        let given = given.map(|given| figure(given.value(), units.of(Measure::Length)));
        let margin = asked.and_then(|asked| asked.margin);
        let governing = asked.and_then(|asked| asked.requirements.iter().find(|one| one.governs));
        let rule = governing.map(|requirement| requirement.rule);
        Self { name, known, size, missing, given, minimum, margin, rule }
    }

    /// As much as it takes on paper, with what is missing.
    pub fn whole(&self) -> f64 {
        self.size + self.missing
    }
}

/// An opening with the place of its centre: from the end, from the side, and how wide it is.
pub(super) struct Opening<'a> {
    pub hub: &'a Hub,
    /// From the left of the body.
    pub along: f64,
    pub radius: f64,
}

/// A body as it is drawn.
pub(super) struct Measures<'a> {
    pub length: Extent,
    pub width: Extent,
    pub depth: Extent,
    pub openings: Vec<Opening<'a>>,
}

impl<'a> Measures<'a> {
    pub fn of(request: &'a ConduitBodyRequest, outcome: &ConduitBodyOutcome) -> Self {
        let units = request.units;
        let radii: Vec<f64> = request.hubs.iter().map(|hub| radius_of(hub, units)).collect();
        let largest = 2.0 * radii.iter().copied().fold(0.0, f64::max);
        let large = outcome.large_conductors.as_ref();
        let body = &request.body;
        let axis = |of: fn(&crate::checks::conduit_body::LargeInBody) -> &AxisSize| large.map(of);
        let length = Extent::of("length", body.length, axis(|large| &large.length), 3.5 * largest, units);
        let width = Extent::of("width", body.width, axis(|large| &large.width), 1.3 * largest, units);
        let depth = Extent::of("depth", body.depth, axis(|large| &large.depth), 1.3 * largest, units);
        let has = |place| request.hubs.iter().any(|hub| hub.place == place);
        let far = match (has(HubPlace::End), has(HubPlace::OppositeEnd)) {
            (true, false) => 1.0,
            (false, true) => 0.0,
            (true, true) | (false, false) => 0.5,
        };
        let openings = request.hubs.iter().zip(radii).map(|(hub, radius)| {
            // a body with one end turns its conductors at the other
            let room = (length.size - 2.4 * radius).max(0.0);
            let along = match hub.place {
                HubPlace::End => 0.0,
                HubPlace::OppositeEnd => length.size,
                HubPlace::Side | HubPlace::OppositeSide | HubPlace::Back => {
                    (length.size - room) / 2.0 + room * far
                }
            };
            Opening { hub, along, radius }
        });
        let openings = openings.collect();
        Self { length, width, depth, openings }
    }

    /// Whether any length is known, so that the rest can be drawn in proportion.
    pub fn is_to_scale(&self) -> bool {
        [&self.length, &self.width, &self.depth].iter().any(|extent| extent.known != Known::Assumed)
    }

    pub fn opening(&self, place: HubPlace) -> Option<&Opening<'a>> {
        self.openings.iter().find(|opening| opening.hub.place == place)
    }

    /// The widest opening among some places; nothing where there is none.
    pub fn widest(&self, places: &[HubPlace]) -> f64 {
        let among = self.openings.iter().filter(|opening| places.contains(&opening.hub.place));
        among.map(|opening| 2.0 * opening.radius).fold(0.0, f64::max)
    }
}

/// Half the inside of the raceway; of one without figures, half its trade size.
fn radius_of(hub: &Hub, units: Units) -> f64 {
    let inside = raceway_dimensions::of(hub.raceway.kind, hub.raceway.trade_size, Dimension::Diameter, units);
    let diameter = inside.map_or_else(|| hub.raceway.trade_size.figure(units), |cell| cell.value);
    approximate(diameter) / 2.0
}
