//! The metal cover of a box: one of three ways serves.

use super::{Construction, MetalCover, Walls};
use crate::checks::inspection::{Given, Sentences};
use crate::derivation::{Figure, Pointer, Relation};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::Rule;
use crate::rulebook::box_construction::COVER;

const THICKNESS: Sentences = Sentences {
    met: "finding-cover-thick-enough",
    broken: "finding-cover-too-thin",
    open: "finding-cover-open",
};
const LINING: Sentences =
    Sentences { met: "finding-cover-lined", broken: "finding-cover-too-thin", open: "finding-cover-open" };

impl Construction {
    /// A cover that is listed, thick enough or lined complies; one that is none of them does not; what is missing is
    /// asked for only while it could still serve.
    pub(super) fn cover(&mut self, cover: Option<MetalCover>, walls: Walls) {
        let Some(MetalCover { thickness, listed, lining_thickness }) = cover else { return };
        let at = |member| Pointer::to(&"/cover").member(member);
        if listed == Some(true) {
            self.inspection.granted(&COVER, at(&"/listed"), "finding-cover-listed");
            return;
        }
        let thickness = thickness.map(|thickness| thickness.value());
        let of_walls = thickness.and_then(|thickness| walls.deciding(thickness));
        let thick = thickness.zip(of_walls).map(|(thickness, (_, limit))| thickness >= limit.value);
        if let (Some(true), Some((_, limit))) = (thick, of_walls) {
            self.compare(thickness, at(&"/thickness"), limit, THICKNESS);
            return;
        }
        let lining = self.inspection.proof.stated(&self.book.cover_lining);
        let given = lining_thickness.map(|lining| lining.value());
        let lined = given.map(|given| given >= lining.value);
        match (lined, thick, listed) {
            (Some(true), _, _) => self.compare(given, at(&"/lining_thickness"), lining, LINING),
            (_, None, _) => self.missing(at(&"/thickness"), walls, thickness),
            (None, _, _) => self.missing(at(&"/lining_thickness"), walls, None),
            (_, _, None) => self.missing(at(&"/listed"), walls, None),
            (Some(false), Some(_), Some(_)) => {
                if let Some((_, limit)) = of_walls {
                    self.compare(thickness, at(&"/thickness"), limit, THICKNESS);
                }
            }
        }
    }

    fn compare(&mut self, value: Option<Decimal>, at: Pointer, limit: Figure, sentences: Sentences) {
        let rule: &'static Rule = &COVER;
        let given = Given { value, measure: Measure::Length, at };
        self.inspection.limit(rule, given, Relation::AtLeast, limit, sentences);
    }

    /// Asks for what is missing: the volume where a thickness was given that only the volume can judge.
    fn missing(&mut self, at: Pointer, walls: Walls, thickness: Option<Decimal>) {
        let by_volume = matches!(walls, Walls::ByVolume(..)) && thickness.is_some();
        let at = if by_volume { super::VOLUME } else { at };
        self.inspection.open(&COVER, None, at, "finding-cover-open");
    }
}
