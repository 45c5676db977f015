//! Construction of a metal box: are its walls and cover thick enough, and can a grounding conductor be connected?
//!
//! Thickness goes by the metal and, for sheet steel, by the volume. The thicker sheet is for the small box, which is
//! easily turned around.
//!
//! ```
//! use elbowroom::checks::{Verdict, box_construction::BoxConstruction, evaluate};
//! let request = elbowroom::json::read(br#"{
//!     "enclosure": {"material": "sheet_steel", "volume": 21, "wall_thickness": 0.053, "listed_as_equal": false,
//!         "grounding_provision": true}
//! }"#).unwrap();
//! let evaluation = evaluate::<BoxConstruction>(&request);
//! assert_eq!(evaluation.outcome.required_thickness.unwrap().value.to_string(), "0.0625");
//! assert_eq!(evaluation.verdict, Some(Verdict::Violates));
//! ```

mod cover;
mod faults;
mod request;

pub use request::*;

use super::inspection::{Given, Inspection, Requirement, Sentences};
use super::{Check, Faults, InScope, Judgement, Retaking, Subject};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::box_construction::{
    BoxConstruction as Figures, CAST, COVER, COVER_MATERIAL, GROUNDING, LARGE_SHEET_STEEL, LISTED,
    SHEET_STEEL,
};
use crate::rulebook::digest::Reads;
use crate::rulebook::reading::ListingEvidencesConstruction;
use crate::rulebook::{Part, Rule, Rulebook};
use serde::Serialize;
use utoipa::ToSchema;

/// The check of the construction of one metal box.
#[derive(Clone, Copy, Debug)]
pub struct BoxConstruction;

/// The thickness that is required, and what each rule asks.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct BoxConstructionOutcome {
    /// The least thickness of the walls. Absent where it is not determined, and where none is asked.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub required_thickness: Option<Figure>,
    /// What each rule asks of the box.
    pub requirements: Vec<Requirement>,
}

impl Check for BoxConstruction {
    const NAME: &'static str = "box_construction";
    const PATH: &'static str = "/v1/box-construction/check";
    type Request = BoxConstructionRequest;
    type Outcome = BoxConstructionOutcome;
    const SUBJECTS: &'static [Subject<BoxConstructionRequest>] = &SUBJECTS;

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(&[Part::BoxConstruction], &[]);
        &READS
    }

    fn faults(request: &BoxConstructionRequest, faults: &mut Faults) {
        faults::find(request, faults);
    }

    fn retake(outcome: &mut BoxConstructionOutcome, retaking: &Retaking<'_>) {
        retaking.rows(&mut outcome.requirements);
    }

    fn judge(rulebook: &Rulebook, request: &BoxConstructionRequest) -> Judgement<BoxConstructionOutcome> {
        let mut construction = Construction {
            inspection: Inspection::new(Derivation::new(rulebook, request.units)),
            book: rulebook.box_construction.clone(),
            given: request.enclosure,
        };
        let material = request.enclosure.material;
        let is_metal = material != BoxMetal::Nonmetallic;
        let is_judged = is_metal && is_described(request) || has_metal_cover(request);
        let walls = if material == BoxMetal::Nonmetallic {
            construction.inspection.proof.does_not_apply(&GROUNDING, "nonmetallic-box", Some(MATERIAL));
            None
        } else {
            let walls = construction.walls();
            if is_judged {
                construction.thickness(walls);
                construction.grounding();
            }
            walls.determined()
        };
        construction.cover(request.cover);
        let (findings, requirements, proof) = construction.inspection.close();
        let outcome = BoxConstructionOutcome { required_thickness: walls, requirements };
        Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged }
    }
}

/// The box is looked at whole as soon as anything of it is said beyond what its thickness goes by.
static SUBJECTS: [Subject<BoxConstructionRequest>; 2] = [
    Subject {
        name: "box",
        is_described,
        scope: &[
            InScope::when(|request| request.enclosure.material == BoxMetal::SheetSteel, &SHEET_STEEL),
            InScope::when(|_| false, &LARGE_SHEET_STEEL),
            InScope::when(
                |request| {
                    use BoxMetal::{DieCast, MalleableIron, OtherCast};
                    matches!(request.enclosure.material, MalleableIron | DieCast | OtherCast)
                },
                &CAST,
            ),
            InScope::when(|_| false, &LISTED),
            InScope::always(&GROUNDING),
        ],
    },
    Subject {
        name: "cover",
        is_described: |request| request.cover.is_some(),
        scope: &[InScope::always(&COVER_MATERIAL), InScope::always(&COVER)],
    },
];

/// Of a box and a cover that are not metal nothing is asked here, whatever else is said of them.
fn has_metal_cover(request: &BoxConstructionRequest) -> bool {
    request.cover.is_some_and(|cover| cover.material != Some(BoxMetal::Nonmetallic))
}

fn is_described(request: &BoxConstructionRequest) -> bool {
    let ConstructedBox { listed, wall_thickness, listed_as_equal, grounding_provision, .. } =
        request.enclosure;
    wall_thickness.is_some()
        || listed.is_some()
        || listed_as_equal.is_some()
        || grounding_provision.is_some()
        || request.cover.is_some()
}

const MATERIAL: Pointer = Pointer::to(&"/enclosure/material");
const WALLS: Pointer = Pointer::to(&"/enclosure/wall_thickness");
const LISTED_AT_ALL: Pointer = Pointer::to(&"/enclosure/listed");
const LISTED_AS_EQUAL: Pointer = Pointer::to(&"/enclosure/listed_as_equal");
const PROVISION_AT: Pointer = Pointer::to(&"/enclosure/grounding_provision");
const VOLUME: Pointer = Pointer::to(&"/enclosure/volume");

const THICKNESS: Sentences = Sentences {
    met: "finding-walls-thick-enough",
    broken: "finding-walls-too-thin",
    open: "finding-wall-thickness-open",
};
const PROVISION: Sentences = Sentences {
    met: "finding-grounding-provision",
    broken: "finding-no-grounding-provision",
    open: "finding-grounding-provision-open",
};

/// A metal box under inspection.
struct Construction {
    inspection: Inspection,
    book: Figures,
    given: ConstructedBox,
}

/// The least thickness of walls.
#[derive(Clone, Copy)]
enum Walls {
    /// It is known.
    Known(&'static Rule, Figure),
    /// It is one of two, by a volume that was not given: that of a small box, and that of a large one.
    ByVolume(Figure, Figure),
}

impl Walls {
    fn determined(self) -> Option<Figure> {
        match self {
            Self::Known(_, figure) => Some(figure),
            Self::ByVolume(..) => None,
        }
    }

    /// The limit that decides for a thickness; `None` where it depends on the volume.
    fn deciding(self, thickness: Decimal) -> Option<(&'static Rule, Figure)> {
        match self {
            Self::Known(rule, figure) => Some((rule, figure)),
            Self::ByVolume(small, _) if thickness >= small.value => Some((&SHEET_STEEL, small)),
            Self::ByVolume(_, large) if thickness < large.value => Some((&LARGE_SHEET_STEEL, large)),
            Self::ByVolume(..) => None,
        }
    }
}

impl Construction {
    fn walls(&mut self) -> Walls {
        let proof = &mut self.inspection.proof;
        let cast = match self.given.material {
            BoxMetal::MalleableIron | BoxMetal::DieCast => Some(self.book.malleable_or_die_cast),
            BoxMetal::OtherCast => Some(self.book.other_cast),
            BoxMetal::SheetSteel | BoxMetal::Nonmetallic => None,
        };
        if let Some(cast) = cast {
            return Walls::Known(&CAST, proof.stated(&cast));
        }
        let Some(volume) = self.given.volume else {
            let small = proof.stated(&self.book.sheet_steel);
            return Walls::ByVolume(small, proof.stated(&self.book.large_sheet_steel));
        };
        let volume = proof.given(&SHEET_STEEL, volume.value(), Measure::Volume, VOLUME);
        let limit = proof.stated(&self.book.small_up_to);
        let (small, _) = proof.compare(&SHEET_STEEL, volume, Relation::AtMost, limit);
        if small {
            Walls::Known(&SHEET_STEEL, proof.stated(&self.book.sheet_steel))
        } else {
            Walls::Known(&LARGE_SHEET_STEEL, proof.stated(&self.book.large_sheet_steel))
        }
    }

    /// Where the request says that the box is listed.
    fn listing(&self) -> Option<Pointer> {
        let ConstructedBox { listed, listed_as_equal, .. } = self.given;
        let said = [(listed, LISTED_AT_ALL), (listed_as_equal, LISTED_AS_EQUAL)];
        said.into_iter().find(|(is_listed, _)| *is_listed == Some(true)).map(|(_, at)| at)
    }

    /// What nobody measured of a listed box is as its listing asks, unless it is read otherwise.
    fn is_evidenced(&mut self) -> Option<Pointer> {
        let listing = self.listing()?;
        let reading = self.inspection.proof.reading::<ListingEvidencesConstruction>();
        (reading == ListingEvidencesConstruction::Evidence).then_some(listing)
    }

    /// A listing that excepts walls that are thin, where it is not said to be for anything else: of a large box none does, and of one that
    /// may be large its volume is asked for before anything is judged.
    fn excepts_thin_walls(&mut self, walls: Walls, thickness: Decimal) -> Option<Pointer> {
        let least = match walls {
            Walls::Known(rule, _) if rule == &LARGE_SHEET_STEEL => return None,
            Walls::Known(_, least) | Walls::ByVolume(least, _) => least,
        };
        let is_asked = thickness < least.value && self.given.listed_as_equal != Some(false);
        if is_asked { self.is_evidenced() } else { None }
    }

    fn grounding(&mut self) {
        let provision = self.given.grounding_provision;
        if provision.is_none()
            && let Some(listing) = self.is_evidenced()
        {
            self.inspection.granted(&GROUNDING, listing, "finding-listing-evidences-provision");
            return;
        }
        self.inspection.fact(&GROUNDING, provision, PROVISION_AT, PROVISION);
    }

    /// The thickness of the walls, or a listing that serves instead of it. Walls of a large sheet-steel box that were measured
    /// have no such listing.
    fn thickness(&mut self, walls: Walls) {
        let thickness = self.given.wall_thickness.map(|thickness| thickness.value());
        let listed = self.given.listed_as_equal == Some(true);
        let excepted = match walls {
            Walls::Known(rule, _) => rule != &LARGE_SHEET_STEEL,
            Walls::ByVolume(_, large) => thickness.is_some_and(|thickness| thickness >= large.value),
        };
        if listed && excepted {
            if let (Walls::ByVolume(_, large), Some(thickness)) = (walls, thickness) {
                let proof = &mut self.inspection.proof;
                let given = proof.given(&LISTED, thickness, Measure::Length, WALLS);
                proof.compare(&LISTED, given, Relation::AtLeast, large);
            }
            self.inspection.granted(&LISTED, LISTED_AS_EQUAL, "finding-listed-as-equal");
            return;
        }
        if let Some(given) = thickness
            && let Some(listing) = self.excepts_thin_walls(walls, given)
        {
            self.inspection.proof.given(&LISTED, given, Measure::Length, WALLS);
            self.inspection.granted(&LISTED, listing, "finding-listing-excepts-walls");
            return;
        }
        if thickness.is_none()
            && let Some(listing) = self.is_evidenced()
        {
            let rule = match walls {
                Walls::Known(rule, _) => rule,
                Walls::ByVolume(..) => &LISTED,
            };
            self.inspection.granted(rule, listing, "finding-listing-evidences-walls");
            return;
        }
        let limit = match (walls, thickness) {
            (Walls::ByVolume(..), Some(_)) if listed => None,
            (_, Some(thickness)) => walls.deciding(thickness),
            (Walls::Known(rule, limit), None) => Some((rule, limit)),
            (Walls::ByVolume(..), None) => {
                self.inspection.open(&SHEET_STEEL, None, WALLS, "finding-thickness-and-volume-open");
                return;
            }
        };
        match limit {
            Some((rule, limit))
                if thickness.is_some_and(|thickness| thickness < limit.value)
                    && self.given.listed_as_equal.is_none()
                    && self.given.listed != Some(false)
                    && (excepted || matches!(walls, Walls::ByVolume(..))) =>
            {
                let given = Given { value: thickness, measure: Measure::Length, at: WALLS };
                let limit = (Relation::AtLeast, limit);
                let message = "finding-thin-walls-listed-open";
                self.inspection.open_given(rule, given, limit, LISTED_AS_EQUAL, message);
            }
            Some((rule, limit)) => {
                let ConstructedBox { listed, listed_as_equal, .. } = self.given;
                let said = [(listed_as_equal, LISTED_AS_EQUAL), (listed, LISTED_AT_ALL)];
                if let Some((listed, at)) = said.into_iter().find_map(|(said, at)| Some((said?, at))) {
                    self.inspection.proof.fact(&LISTED, listed, at);
                }
                let given = Given { value: thickness, measure: Measure::Length, at: WALLS };
                self.inspection.limit(rule, given, Relation::AtLeast, limit, THICKNESS);
            }
            None => {
                let small = self.inspection.proof.stated(&self.book.sheet_steel);
                let given = Given { value: thickness, measure: Measure::Length, at: WALLS };
                let (limit, finding) = ((Relation::AtLeast, small), "finding-volume-decides-thickness");
                self.inspection.open_given(&SHEET_STEEL, given, limit, VOLUME, finding);
            }
        }
    }
}
