//! Means that fix an enclosure in place: on a surface, on a structure, in a surface, in a ceiling, in concrete.

use super::request::{
    CeilingFramingSupport, CeilingWireSupport, EmbeddedSupport, FieldMadeHoles, FinishedSurfaceSupport,
    InsideFastener, MetalBrace, StructuralSupport, SupportBrace, SupportFasteners, SurfaceSupport,
    ThroughInside, WoodBrace,
};
use super::{Holding, length};
use crate::checks::inspection::{Given, Sentences};
use crate::derivation::Pointer;
use crate::derivation::Relation::{AtLeast, AtMost};
use crate::quantity::{Measure, Volume};
use crate::rulebook::Rule;
use crate::rulebook::box_support::{
    BRACE, CEILING_FRAMING, CEILING_VOLUME, CEILING_WIRES, EMBEDDED, FASTENERS, FINISHED_SURFACE, STRUCTURE,
    SURFACE, THREADS,
};

impl Holding<'_> {
    pub(super) fn surface(&mut self, surface: &SurfaceSupport, at: Pointer) {
        self.inspection.fact(
            &SURFACE,
            surface.rigid,
            at.member(&"/rigid"),
            Sentences {
                met: "finding-surface-rigid",
                broken: "finding-surface-not-rigid",
                open: "finding-surface-rigid-open",
            },
        );
    }

    pub(super) fn structural(&mut self, structural: &StructuralSupport, at: Pointer) {
        let StructuralSupport { rigid, fasteners, brace } = structural;
        self.inspection.fact(
            &STRUCTURE,
            *rigid,
            at.member(&"/rigid"),
            Sentences {
                met: "finding-structure-rigid",
                broken: "finding-structure-not-rigid",
                open: "finding-structure-rigid-open",
            },
        );
        match fasteners {
            Some(fasteners) => self.fasteners(fasteners, at),
            None if brace.is_some() => {
                self.inspection.proof.does_not_apply(&FASTENERS, "no-fasteners", Some(at));
            }
            None => {
                self.inspection.open(
                    &STRUCTURE,
                    None,
                    at.member(&"/fasteners"),
                    "finding-structure-how-open",
                );
            }
        }
        match brace {
            Some(brace) => self.brace(brace, at),
            None => {
                self.inspection.proof.does_not_apply(&BRACE, "no-brace", Some(at));
            }
        }
    }

    fn fasteners(&mut self, fasteners: &SupportFasteners, at: Pointer) {
        let placement = at.member(&"/fasteners/placement");
        match fasteners {
            SupportFasteners::OutsideBrackets(_) | SupportFasteners::MountingHoles(_) => {
                self.inspection.proof.does_not_apply(&FASTENERS, "fastened-outside", Some(placement));
            }
            SupportFasteners::MountingHolesInSeveralSides(_) if self.figures.holes_in_several_sides => {
                self.inspection.proof.does_not_apply(&FASTENERS, "fastened-outside", Some(placement));
            }
            SupportFasteners::MountingHolesInSeveralSides(_) => {
                self.inspection.proof.word(&FASTENERS, "mounting_holes_in_several_sides", placement);
                self.refused(&FASTENERS, placement, "finding-holes-in-several-sides");
            }
            SupportFasteners::FieldMadeHoles(FieldMadeHoles { approved: None }) => {
                self.inspection.proof.word(&FASTENERS, "field_made_holes", placement);
                self.refused(&FASTENERS, placement, "finding-field-holes-unapproved");
                self.inspection.unless(at.member(&"/fasteners/approved"));
            }
            SupportFasteners::FieldMadeHoles(holes) => {
                self.inspection.fact(
                    &FASTENERS,
                    holes.approved,
                    at.member(&"/fasteners/approved"),
                    Sentences {
                        met: "finding-field-holes-approved",
                        broken: "finding-field-holes-not-approved",
                        open: "finding-field-holes-unapproved",
                    },
                );
            }
            SupportFasteners::ThroughInside(inside) => self.through_inside(inside, at),
        }
    }

    /// What a rule does not allow is there.
    pub(super) fn refused(&mut self, rule: &'static Rule, at: Pointer, message: &'static str) {
        let sentences = Sentences { met: message, broken: message, open: message };
        self.inspection.expect(rule, false, Some(true), at, sentences);
    }

    fn through_inside(&mut self, inside: &ThroughInside, at: Pointer) {
        let ThroughInside { fastener, distance, threads_protected } = inside;
        let limit = self.inspection.proof.stated(&self.figures.fastener_distance);
        self.inspection.limit(
            &FASTENERS,
            length(*distance, at.member(&"/fasteners/distance")),
            AtMost,
            limit,
            Sentences {
                met: "finding-fastener-close",
                broken: "finding-fastener-not-close",
                open: "finding-fastener-open",
            },
        );
        match fastener {
            InsideFastener::Nails => {
                let at = at.member(&"/fasteners/fastener");
                self.inspection.proof.does_not_apply(&THREADS, "nails-have-no-threads", Some(at));
            }
            InsideFastener::Screws => {
                self.inspection.fact(
                    &THREADS,
                    *threads_protected,
                    at.member(&"/fasteners/threads_protected"),
                    Sentences {
                        met: "finding-threads-protected",
                        broken: "finding-threads-exposed",
                        open: "finding-threads-open",
                    },
                );
            }
        }
    }

    fn brace(&mut self, brace: &SupportBrace, at: Pointer) {
        match brace {
            SupportBrace::Metal(brace) => self.metal_brace(brace, at),
            SupportBrace::Wood(brace) => self.wood_brace(brace, at),
            SupportBrace::Polymeric(brace) => {
                self.inspection.fact(
                    &BRACE,
                    brace.identified,
                    at.member(&"/brace/identified"),
                    Sentences {
                        met: "finding-brace-identified",
                        broken: "finding-brace-not-identified",
                        open: "finding-brace-identified-open",
                    },
                );
            }
        }
    }

    fn metal_brace(&mut self, brace: &MetalBrace, at: Pointer) {
        let limit = self.inspection.proof.stated(&self.figures.metal_brace);
        self.inspection.limit(
            &BRACE,
            length(brace.thickness, at.member(&"/brace/thickness")),
            AtLeast,
            limit,
            Sentences {
                met: "finding-metal-brace-thick-enough",
                broken: "finding-metal-brace-too-thin",
                open: "finding-metal-brace-open",
            },
        );
        self.inspection.fact(
            &BRACE,
            brace.corrosion_protected,
            at.member(&"/brace/corrosion_protected"),
            Sentences {
                met: "finding-brace-protected",
                broken: "finding-brace-not-protected",
                open: "finding-brace-protected-open",
            },
        );
    }

    fn wood_brace(&mut self, brace: &WoodBrace, at: Pointer) {
        let section = Sentences {
            met: "finding-wood-brace-large-enough",
            broken: "finding-wood-brace-too-small",
            open: "finding-wood-brace-open",
        };
        let figures = self.figures;
        for (given, member, figure) in [
            (brace.nominal_thickness, &"/brace/nominal_thickness", &figures.wood_brace_thickness),
            (brace.nominal_width, &"/brace/nominal_width", &figures.wood_brace_width),
        ] {
            let limit = self.inspection.proof.stated(figure);
            self.inspection.limit(&BRACE, length(given, at.member(member)), AtLeast, limit, section);
        }
        let (wet, treated) = (at.member(&"/brace/wet_location"), at.member(&"/brace/treated"));
        match (brace.wet_location, brace.treated) {
            (Some(false), _) => {
                self.inspection.proof.does_not_apply(&BRACE, "not-wet", Some(wet));
            }
            (None, None | Some(false)) => {
                self.inspection.open(&BRACE, None, wet, "finding-wood-brace-location-open");
            }
            (location, given) => {
                if let Some(is_wet) = location {
                    self.inspection.proof.fact(&BRACE, is_wet, wet);
                }
                self.inspection.fact(
                    &BRACE,
                    given,
                    treated,
                    Sentences {
                        met: "finding-wood-brace-treated",
                        broken: "finding-wood-brace-not-treated",
                        open: "finding-wood-brace-treated-open",
                    },
                );
            }
        }
    }

    pub(super) fn finished_surface(&mut self, finished: &FinishedSurfaceSupport, at: Pointer) {
        self.inspection.fact(
            &FINISHED_SURFACE,
            finished.rigid,
            at.member(&"/rigid"),
            Sentences {
                met: "finding-finished-surface-rigid",
                broken: "finding-finished-surface-not-rigid",
                open: "finding-finished-surface-rigid-open",
            },
        );
        self.inspection.fact(
            &FINISHED_SURFACE,
            finished.fittings_identified,
            at.member(&"/fittings_identified"),
            Sentences {
                met: "finding-surface-fittings-identified",
                broken: "finding-surface-fittings-not-identified",
                open: "finding-surface-fittings-open",
            },
        );
    }

    fn ceiling_volume(&mut self) {
        let limit = self.inspection.proof.stated(&self.figures.ceiling_volume);
        self.inspection.limit(
            &CEILING_VOLUME,
            Given {
                value: self.enclosure.volume.map(Volume::value),
                measure: Measure::Volume,
                at: Pointer::to(&"/enclosure/volume"),
            },
            AtMost,
            limit,
            Sentences {
                met: "finding-ceiling-volume-enough",
                broken: "finding-ceiling-volume-over",
                open: "finding-ceiling-volume-open",
            },
        );
    }

    pub(super) fn ceiling_framing(&mut self, framing: &CeilingFramingSupport, at: Pointer) {
        self.ceiling_volume();
        self.inspection.fact(
            &CEILING_FRAMING,
            framing.fastened,
            at.member(&"/fastened"),
            Sentences {
                met: "finding-framing-fastened",
                broken: "finding-framing-not-fastened",
                open: "finding-framing-fastened-open",
            },
        );
        self.inspection.fact(
            &CEILING_FRAMING,
            framing.framing_secured,
            at.member(&"/framing_secured"),
            Sentences {
                met: "finding-framing-secured",
                broken: "finding-framing-not-secured",
                open: "finding-framing-secured-open",
            },
        );
    }

    pub(super) fn ceiling_wires(&mut self, wires: &CeilingWireSupport, at: Pointer) {
        self.ceiling_volume();
        let asked = [
            (
                wires.independent_wires,
                &"/independent_wires",
                Sentences {
                    met: "finding-wires-independent",
                    broken: "finding-wires-of-ceiling-alone",
                    open: "finding-wires-independent-open",
                },
            ),
            (
                wires.method_identified,
                &"/method_identified",
                Sentences {
                    met: "finding-wire-method-identified",
                    broken: "finding-wire-method-not-identified",
                    open: "finding-wire-method-open",
                },
            ),
            (
                wires.taut,
                &"/taut",
                Sentences {
                    met: "finding-wires-taut",
                    broken: "finding-wires-not-taut",
                    open: "finding-wires-taut-open",
                },
            ),
        ];
        for (given, member, sentences) in asked {
            self.inspection.fact(&CEILING_WIRES, given, at.member(member), sentences);
        }
    }

    pub(super) fn embedded(&mut self, embedded: &EmbeddedSupport, at: Pointer) {
        self.inspection.fact(
            &EMBEDDED,
            embedded.corrosion_identified,
            at.member(&"/corrosion_identified"),
            Sentences {
                met: "finding-embedded-identified",
                broken: "finding-embedded-not-identified",
                open: "finding-embedded-identified-open",
            },
        );
        self.inspection.fact(
            &EMBEDDED,
            embedded.secure,
            at.member(&"/secure"),
            Sentences {
                met: "finding-embedded-secure",
                broken: "finding-embedded-not-secure",
                open: "finding-embedded-secure-open",
            },
        );
    }
}
