//! The surface around a flush box, the device in it, and extensions over the surface.

use super::{ExtensionMeans, FlushDevice, FlushSurface, Mounting, SurfaceExtension, distance};
use crate::checks::inspection::Sentences;
use crate::derivation::{Figure, Pointer, Relation};
use crate::quantity::Decimal;
use crate::rulebook::Rule;
use crate::rulebook::box_surface::{
    EXTENSION_BOX, EXTENSION_COVER, EXTENSION_RING, FLUSH_DEVICE, GAP, SETBACK,
};

const SET_BACK: Sentences = Sentences {
    met: "finding-setback-small-enough",
    broken: "finding-setback-too-great",
    open: "finding-setback-open",
};
const SET_BACK_IN_COMBUSTIBLE: Sentences = Sentences {
    met: "finding-setback-none",
    broken: "finding-setback-in-combustible",
    open: "finding-setback-open",
};
const GAPS: Sentences =
    Sentences { met: "finding-gap-small-enough", broken: "finding-gap-too-wide", open: "finding-gap-open" };
const ENCLOSED: Sentences = Sentences {
    met: "finding-device-enclosed",
    broken: "finding-device-not-enclosed",
    open: "finding-device-enclosed-open",
};
const OWN_SCREWS: Sentences = Sentences {
    met: "finding-device-own-screws",
    broken: "finding-device-no-own-screws",
    open: "finding-device-own-screws-open",
};
const SECURED: Sentences = Sentences {
    met: "finding-extension-secured",
    broken: "finding-extension-not-secured",
    open: "finding-extension-secured-open",
};
const GROUNDING: Sentences = Sentences {
    met: "finding-extension-grounding",
    broken: "finding-extension-no-grounding",
    open: "finding-extension-grounding-open",
};
const STAYS_ON: Sentences = Sentences {
    met: "finding-extension-cover-stays",
    broken: "finding-extension-cover-falls",
    open: "finding-extension-cover-stays-open",
};
const FLEXIBLE: Sentences = Sentences {
    met: "finding-extension-wiring-flexible",
    broken: "finding-extension-wiring-stiff",
    open: "finding-extension-wiring-flexible-open",
};
const INDEPENDENT: Sentences = Sentences {
    met: "finding-extension-grounding-independent",
    broken: "finding-extension-grounding-dependent",
    open: "finding-extension-grounding-independent-open",
};

/// A yes or no that is asked, where it stands, and what is said of it.
type Asked = (Option<bool>, Pointer, Sentences);

impl Mounting {
    /// Setback and gap. Where it is not known whether the surface burns, what suffices or fails either way is decided.
    pub(super) fn flush_surface(&mut self, surface: Option<FlushSurface>) {
        let Some(FlushSurface { combustible, setback, gap, flush_cover }) = surface else { return };
        let at = |member| Pointer::to(&"/flush_surface").member(member);
        let combustible_at = at(&"/combustible");
        if let Some(combustible) = combustible {
            self.inspection.proof.fact(&SETBACK, combustible, combustible_at);
        }
        let setback = setback.map(|setback| setback.value());
        let book = self.book.box_surface.clone();
        let none = setback == Some(Decimal::ZERO);
        let most = self.value(&book.setback);
        let too_far = setback.is_some_and(|setback| setback > most);
        let given = distance(setback, at(&"/setback"));
        match combustible {
            Some(true) => {
                let limit = self.stated(&book.setback_combustible);
                self.inspection.limit(&SETBACK, given, Relation::AtMost, limit, SET_BACK_IN_COMBUSTIBLE);
            }
            Some(false) => {
                let limit = self.stated(&book.setback);
                self.inspection.limit(&SETBACK, given, Relation::AtMost, limit, SET_BACK);
            }
            None if none => {
                let limit = self.stated(&book.setback_combustible);
                self.inspection.limit(&SETBACK, given, Relation::AtMost, limit, SET_BACK_IN_COMBUSTIBLE);
            }
            None if too_far => {
                let limit = self.stated(&book.setback);
                self.inspection.limit(&SETBACK, given, Relation::AtMost, limit, SET_BACK);
            }
            None if setback.is_some() => {
                let limit = self.stated(&book.setback);
                let finding = "finding-setback-combustible-open";
                let relation = Relation::AtMost;
                self.inspection.open_given(&SETBACK, given, (relation, limit), combustible_at, finding);
            }
            None => {
                self.inspection.open(&SETBACK, None, combustible_at, "finding-combustible-open");
            }
        }
        if combustible == Some(true) {
            self.inspection.proof.does_not_apply(&GAP, "combustible-surface", Some(combustible_at));
            return;
        }
        if flush_cover == Some(false) {
            self.inspection.proof.does_not_apply(&GAP, "no-flush-cover", Some(at(&"/flush_cover")));
            return;
        }
        let limit = self.stated(&book.gap);
        let gap = gap.map(|gap| gap.value());
        self.gap(combustible, (gap, at(&"/gap")), combustible_at, limit);
        if flush_cover.is_none() {
            self.inspection.unless(at(&"/flush_cover"));
        }
    }

    fn gap(
        &mut self,
        combustible: Option<bool>,
        (gap, at): (Option<Decimal>, Pointer),
        combustible_at: Pointer,
        limit: Figure,
    ) {
        let relation = Relation::AtMost;
        let wide = gap.is_some_and(|gap| gap > limit.value);
        let given = distance(gap, at);
        if combustible.is_none() && wide {
            let finding = "finding-gap-combustible-open";
            self.inspection.open_given(&GAP, given, (relation, limit), combustible_at, finding);
            return;
        }
        self.inspection.limit(&GAP, given, relation, limit, GAPS);
    }

    /// A flush device: enclosed, and held by screws of its own.
    pub(super) fn flush_device(&mut self, device: Option<FlushDevice>) {
        let Some(FlushDevice { enclosed, own_screws }) = device else { return };
        let at = |member| Pointer::to(&"/flush_device").member(member);
        self.inspection.fact(&FLUSH_DEVICE, enclosed, at(&"/enclosed"), ENCLOSED);
        self.inspection.fact(&FLUSH_DEVICE, own_screws, at(&"/own_screws"), OWN_SCREWS);
    }

    /// An extension over the surface: a ring, another box, or the cover under conditions.
    pub(super) fn extension(&mut self, extension: Option<SurfaceExtension>) {
        let Some(extension) = extension else { return };
        let at = |member| Pointer::to(&"/extension").member(member);
        let SurfaceExtension { mechanically_secured, grounding_continues, listed_as_extension, .. } =
            extension;
        let secured = (mechanically_secured, at(&"/mechanically_secured"), SECURED);
        let grounding = (grounding_continues, at(&"/grounding_continues"), GROUNDING);
        let (rule, asked): (&'static Rule, Vec<Asked>) = match extension.means {
            ExtensionMeans::ExtensionRing => (&EXTENSION_RING, vec![secured, grounding]),
            ExtensionMeans::AnotherBox => {
                if listed_as_extension != Some(true) {
                    let at = at(&"/listed_as_extension");
                    self.inspection.advise(&EXTENSION_BOX, "finding-extension-not-listed", at);
                }
                (&EXTENSION_BOX, vec![secured, grounding])
            }
            ExtensionMeans::Cover => {
                let independent = at(&"/grounding_independent_of_cover");
                let asked = vec![
                    (extension.cover_stays_on, at(&"/cover_stays_on"), STAYS_ON),
                    (extension.wiring_lets_cover_come_off, at(&"/wiring_lets_cover_come_off"), FLEXIBLE),
                    (extension.grounding_independent_of_cover, independent, INDEPENDENT),
                ];
                (&EXTENSION_COVER, asked)
            }
        };
        for (given, at, sentences) in asked {
            self.inspection.fact(rule, given, at, sentences);
        }
    }
}
