//! A box and what is fitted to it, in sentences.

use super::{Sentence, counted, measured};
use crate::checks::outlet_fill::{Barrier, Enclosure, Gangs, Material, Section, SectionKind};
use crate::quantity::{Measure, Units, Volume};
use crate::tables::standard_boxes::{Shape, StandardBox};

/// A box with its sections and barriers.
pub(super) fn of_enclosure(enclosure: &Enclosure, units: Units) -> Vec<Sentence> {
    let gangs = enclosure.gangs.map_or(1, Gangs::get);
    let mark = enclosure.marked_volume.map(|volume| volume_text(volume, units));
    let own = match (enclosure.standard, mark) {
        (Some(standard), Some(mark)) => {
            standard_box("situation-box-standard-marked", standard).text("volume", mark)
        }
        (Some(standard), None) => standard_box("situation-box-standard", standard),
        (None, mark) => Sentence::new(match enclosure.material {
            Some(Material::Nonmetallic) => "situation-box-nonmetallic",
            Some(Material::Metal) | None => "situation-box-metal",
        })
        .text("volume", mark.unwrap_or_default()),
    };
    let sections = enclosure.sections.iter().map(|one| section(one, units));
    let barriers = enclosure.barriers.iter().map(barrier);
    std::iter::once(own.count(gangs)).chain(sections).chain(barriers).collect()
}

fn volume_text(volume: Volume, units: Units) -> String {
    measured(volume.value(), Measure::Volume, units)
}

fn standard_box(key: &'static str, standard: StandardBox) -> Sentence {
    let shape = match standard.shape() {
        Shape::Octagonal => "situation-shape-octagonal",
        Shape::Square => "situation-shape-square",
        Shape::Device => "situation-shape-device",
        Shape::Masonry => "situation-shape-masonry",
        Shape::SingleCover | Shape::MultipleCover => "situation-shape-cast",
    };
    let name = standard.key();
    let dimensions = name.split_once('-').map_or(name, |(_, dimensions)| dimensions);
    Sentence::new(key).word("shape", shape).text("dimensions", dimensions.replace('x', " × "))
}

fn section(section: &Section, units: Units) -> Sentence {
    let kind = match section.kind {
        SectionKind::PlasterRing => "situation-section-plaster-ring",
        SectionKind::ExtensionRing => "situation-section-extension-ring",
        SectionKind::RaisedCover => "situation-section-raised-cover",
        SectionKind::DomedCover => "situation-section-domed-cover",
    };
    let key = match (section.marked_volume, section.standard) {
        (Some(_), _) => "situation-section-marked",
        (None, Some(_)) => "situation-section-standard",
        (None, None) => "situation-section-unmarked",
    };
    let mark = section.marked_volume.map(|mark| volume_text(mark, units));
    counted(key, section.count).word("section", kind).text_of("volume", mark)
}

fn barrier(barrier: &Barrier) -> Sentence {
    let key = match barrier.material {
        Some(Material::Metal) => "situation-barrier-metal",
        Some(Material::Nonmetallic) => "situation-barrier-nonmetallic",
        None => "situation-barrier",
    };
    counted(key, barrier.count)
}
