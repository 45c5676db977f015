//! The metal cover of a box: what it is made of, and how thick it is. A listing serves for both.

use super::{BoxMetal, Construction, MetalCover, WALLS};
use crate::checks::inspection::{Given, Sentences};
use crate::derivation::{Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::box_construction::{COVER, COVER_MATERIAL};

const THICKNESS: Sentences = Sentences {
    met: "finding-cover-thick-enough",
    broken: "finding-cover-too-thin",
    open: "finding-cover-thickness-open",
};
const LINING: Sentences = Sentences {
    met: "finding-cover-lined",
    broken: "finding-cover-not-lined",
    open: "finding-cover-material-open",
};
const SAME: Sentences = Sentences {
    met: "finding-cover-same-material",
    broken: "finding-cover-not-lined",
    open: "finding-cover-material-open",
};

const fn of_cover(member: crate::derivation::Pattern) -> Pointer {
    Pointer::to(&"/cover").member(member)
}

impl Construction {
    /// A cover that is listed is judged no further, nor is one that is not metal.
    pub(super) fn cover(&mut self, cover: Option<MetalCover>) {
        let Some(cover) = cover else { return };
        if cover.material == Some(BoxMetal::Nonmetallic) {
            let at = of_cover(&"/material");
            self.inspection.proof.does_not_apply(&COVER_MATERIAL, "nonmetallic-cover", Some(at));
            self.inspection.proof.does_not_apply(&COVER, "nonmetallic-cover", Some(at));
            return;
        }
        if cover.listed == Some(true) {
            self.inspection.granted(&COVER_MATERIAL, of_cover(&"/listed"), "finding-cover-listed");
            self.inspection.granted(&COVER, of_cover(&"/listed"), "finding-cover-listed");
            return;
        }
        if let Some(listed) = cover.listed {
            self.inspection.proof.fact(&COVER_MATERIAL, listed, of_cover(&"/listed"));
            self.inspection.proof.fact(&COVER, listed, of_cover(&"/listed"));
        }
        self.cover_material(cover);
        self.cover_thickness(cover);
    }

    /// Of the material of its box, or lined with insulation.
    fn cover_material(&mut self, cover: MetalCover) {
        let at = of_cover(&"/material");
        let proof = &mut self.inspection.proof;
        if let Some(material) = cover.material {
            proof.word(&COVER_MATERIAL, self.given.material.name(), super::MATERIAL);
            let step = proof.word(&COVER_MATERIAL, material.name(), at);
            if material == self.given.material {
                self.inspection.decided_by(&COVER_MATERIAL, true, at, step, SAME);
                return;
            }
        }
        let lining = cover.lining_thickness.map(|lining| lining.value());
        let limit = proof.stated(&self.book.cover_lining);
        let is_lined = lining.is_some_and(|lining| lining >= limit.value);
        let missing = [
            (cover.material.is_none(), at),
            (lining.is_none(), of_cover(&"/lining_thickness")),
            (cover.listed.is_none(), of_cover(&"/listed")),
        ];
        match missing.into_iter().find(|(is_missing, _)| *is_missing && !is_lined) {
            Some((_, at)) => {
                self.inspection.open(&COVER_MATERIAL, None, at, "finding-cover-material-open");
            }
            None => {
                let (measure, at) = (Measure::Length, of_cover(&"/lining_thickness"));
                let given = Given { value: lining, measure, at };
                self.inspection.limit(&COVER_MATERIAL, given, Relation::AtLeast, limit, LINING);
            }
        }
    }

    /// As thick as its own box. One that is thinner fails only where it is known not to be listed.
    fn cover_thickness(&mut self, cover: MetalCover) {
        let at = of_cover(&"/thickness");
        let (Some(thickness), Some(walls)) = (cover.thickness, self.given.wall_thickness) else {
            let at = if cover.thickness.is_none() { at } else { WALLS };
            self.inspection.open(&COVER, None, at, "finding-cover-thickness-open");
            return;
        };
        let limit = self.inspection.proof.given(&COVER, walls.value(), Measure::Length, WALLS);
        let given = Given { value: Some(thickness.value()), measure: Measure::Length, at };
        if thickness < walls && cover.listed.is_none() {
            let (limit, listed) = ((Relation::AtLeast, limit), of_cover(&"/listed"));
            self.inspection.open_given(&COVER, given, limit, listed, "finding-cover-listed-open");
            return;
        }
        self.inspection.limit(&COVER, given, Relation::AtLeast, limit, THICKNESS);
    }
}
