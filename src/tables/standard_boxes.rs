//! Standard metal boxes and their volumes: Table 314.16(A).

use super::loader::File;
use super::table::{Cell, Column, Value};
use crate::quantity::{Decimal, Unit, Units};
use crate::trade::text_schema;
use serde::de::{self, Deserializer, Visitor};
use serde::{Deserialize, Serialize, Serializer};
use smallvec::SmallVec;
use std::fmt;
use std::sync::LazyLock;
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::Schema;
use utoipa::{PartialSchema, ToSchema};

/// The id of the table.
pub const TABLE: &str = "standard-boxes";

pub(super) static FILE: File = File::new(
    TABLE,
    "Table 314.16(A)",
    &[
        Column::text("shape"),
        Column::figures("length_in", Unit::Inch),
        Column::figures("width_in", Unit::Inch),
        Column::figures("depth_in", Unit::Inch),
        Column::text("per_gang"),
        Column::figures("volume_in3", Unit::CubicInch),
        Column::figures("volume_cm3", Unit::CubicCentimetre),
        Column::figures("printed_18_awg", Unit::One),
        Column::figures("printed_16_awg", Unit::One),
        Column::figures("printed_14_awg", Unit::One),
        Column::figures("printed_12_awg", Unit::One),
        Column::figures("printed_10_awg", Unit::One),
        Column::figures("printed_8_awg", Unit::One),
        Column::figures("printed_6_awg", Unit::One),
    ],
    include_str!("data/standard-boxes.csv"),
);

/// What kind of box a row of the table is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Shape {
    /// Round or octagonal.
    Octagonal,
    /// Square.
    Square,
    /// A gangable device box, and a utility box of one gang.
    Device,
    /// A masonry box, counted by the gang.
    Masonry,
    /// A cast box (FS or FD) with one cover, one gang.
    SingleCover,
    /// A cast box (FS or FD) with a cover over several gangs.
    MultipleCover,
}

impl Shape {
    /// Every shape, in the order of its declaration.
    const ALL: [Self; 6] =
        [Self::Octagonal, Self::Square, Self::Device, Self::Masonry, Self::SingleCover, Self::MultipleCover];

    fn read(text: &str) -> Option<Self> {
        Some(match text {
            "octagonal" => Self::Octagonal,
            "square" => Self::Square,
            "device" => Self::Device,
            "masonry" => Self::Masonry,
            "fs-single-cover" | "fd-single-cover" => Self::SingleCover,
            "fs-multiple-cover" | "fd-multiple-cover" => Self::MultipleCover,
            _ => return None,
        })
    }

    /// Whether the volume in the table is for one gang.
    pub const fn is_per_gang(self) -> bool {
        !matches!(self, Self::Octagonal | Self::Square)
    }

    /// Whether a box of this shape can have a number of gangs in the sense of the table: its volume is then that of all.
    pub const fn takes_gangs(self, gangs: u32) -> bool {
        match self {
            Self::Octagonal | Self::Square | Self::SingleCover => gangs == 1,
            Self::Device | Self::Masonry => gangs >= 1,
            Self::MultipleCover => gangs >= 2,
        }
    }
}

/// A standard metal box: a row of the table, ordered as the table is. Written as its key, `square-4x1-1/2`.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct StandardBox(u8);

/// Several standard boxes: as many as the table has fit without an allocation.
pub type StandardBoxes = SmallVec<[StandardBox; 24]>;

struct Known {
    key: &'static str,
    shape: Shape,
    volume: [Cell; 2],
    size: Size,
}

/// The nominal size of a standard box in inches, as far as its name has it.
#[derive(Clone, Copy, Debug)]
pub struct Size {
    /// The face: length and width. An octagonal box has one figure for both, a cast box none.
    pub face: Option<[Decimal; 2]>,
    /// The depth.
    pub depth: Decimal,
}

static KNOWN: LazyLock<Vec<Known>> = LazyLock::new(|| {
    let Some(table) = FILE.table() else { return Vec::new() };
    table
        .rows
        .iter()
        .filter_map(|row| {
            let Some(Value::Text(shape)) = row.values.first() else { return None };
            let volume = [table.cell(row.key, "volume_in3")?, table.cell(row.key, "volume_cm3")?];
            let inches = |column| table.cell(row.key, column).map(|cell| cell.value);
            let face = inches("length_in").map(|length| [length, inches("width_in").unwrap_or(length)]);
            let size = Size { face, depth: inches("depth_in")? };
            Some(Known { key: row.key, shape: Shape::read(shape)?, volume, size })
        })
        .collect()
});

impl StandardBox {
    /// Every box of the table, in its order.
    pub fn all() -> impl Iterator<Item = Self> {
        (0..KNOWN.len() as u8).map(Self)
    }

    /// Reads a key, in any case and with or without spaces.
    ///
    /// ```
    /// use elbowroom::tables::standard_boxes::StandardBox;
    /// assert_eq!(StandardBox::read("Square-4 x 1-1/2").unwrap().key(), "square-4x1-1/2");
    /// ```
    pub fn read(text: &str) -> Option<Self> {
        let same = |key: &str| {
            let written = text.bytes().filter(|byte| *byte != b' ').map(|byte| byte.to_ascii_lowercase());
            key.bytes().eq(written)
        };
        Self::all().find(|known| same(known.key()))
    }

    /// The key of the row.
    pub fn key(self) -> &'static str {
        KNOWN[usize::from(self.0)].key
    }

    /// What kind of box it is.
    pub fn shape(self) -> Shape {
        KNOWN[usize::from(self.0)].shape
    }

    /// Its nominal size, for one gang where the table counts by the gang.
    pub fn size(self) -> Size {
        KNOWN[usize::from(self.0)].size
    }

    /// Its volume, for one gang where the table counts by the gang.
    pub fn volume(self, units: Units) -> Cell {
        KNOWN[usize::from(self.0)].volume[units as usize]
    }
}

/// What is asked of a standard box.
#[derive(Clone, Copy, Debug)]
pub struct Choice {
    /// The volume needed.
    pub needed: Decimal,
    /// The volume that sections add to it.
    pub added: Decimal,
    /// The gangs that its devices need, 1 at the least.
    pub gangs: Decimal,
    /// The most gangs for which a square box is offered.
    pub square: Decimal,
    /// The most gangs for which an octagonal box is offered.
    pub octagonal: Decimal,
}

impl Choice {
    /// The boxes that serve, smallest first; boxes of one volume in the order of the table.
    pub fn boxes(&self, units: Units) -> StandardBoxes {
        let gangs = self.gangs;
        let fits = |shape| match shape {
            Shape::Square => gangs <= self.square,
            Shape::Octagonal => gangs <= self.octagonal,
            Shape::SingleCover => gangs <= Decimal::ONE,
            Shape::MultipleCover => gangs > Decimal::ONE,
            Shape::Device | Shape::Masonry => true,
        };
        let fits = Shape::ALL.map(fits);
        let in_order = |boxes: &[SizedBox]| {
            let too_small = boxes.partition_point(|sized| sized.volume + self.added < self.needed);
            let mut serving = StandardBoxes::new();
            for sized in boxes.iter().skip(too_small) {
                if fits[sized.shape as usize] {
                    serving.push(sized.standard);
                }
            }
            serving
        };
        match gangs.whole_quotient(Decimal::ONE) {
            Some(few @ 1..=FEW_GANGS) => in_order(&IN_ORDER[units as usize][few as usize - 1]),
            _ => in_order(&by_volume(gangs, units)),
        }
    }
}

/// A box with its volume for some number of gangs.
struct SizedBox {
    volume: Decimal,
    standard: StandardBox,
    shape: Shape,
}

fn by_volume(gangs: Decimal, units: Units) -> Vec<SizedBox> {
    let sized = |standard: StandardBox| {
        let shape = standard.shape();
        let one = standard.volume(units).value;
        let volume = if shape.is_per_gang() { gangs.times(one) } else { one };
        SizedBox { volume, standard, shape }
    };
    let mut boxes: Vec<SizedBox> = StandardBox::all().map(sized).collect();
    boxes.sort_unstable_by_key(|sized| (sized.volume, sized.standard));
    boxes
}

/// The most gangs for which the order of boxes is kept ready.
const FEW_GANGS: u32 = 6;

static IN_ORDER: LazyLock<[Vec<Vec<SizedBox>>; 2]> = LazyLock::new(|| {
    [Units::Us, Units::Si].map(|units| (1..=FEW_GANGS).map(|gangs| by_volume(gangs.into(), units)).collect())
});

impl fmt::Debug for StandardBox {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.key())
    }
}

impl Serialize for StandardBox {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.key())
    }
}

impl<'de> Deserialize<'de> for StandardBox {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Key;
        impl Visitor<'_> for Key {
            type Value = StandardBox;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("the key of a standard box such as \"square-4x1-1/2\"")
            }
            fn visit_str<E: de::Error>(self, text: &str) -> Result<StandardBox, E> {
                StandardBox::read(text).ok_or_else(|| de::Error::custom("unknown standard box"))
            }
        }
        deserializer.deserialize_str(Key)
    }
}

impl PartialSchema for StandardBox {
    fn schema() -> RefOr<Schema> {
        text_schema(
            "A standard metal box by its key in the table `standard-boxes`: shape and trade size, as in `square-4x1-1/2`, `octagonal-4x2-1/8`, `device-3x2x3-1/2`, `masonry-3-3/4x2x2-1/2`, `fs-single-cover`.",
            "standard-box",
            "device-3x2x3-1/2",
        )
    }
}

impl ToSchema for StandardBox {}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_shape_stands_at_its_own_place() {
        assert!(Shape::ALL.iter().enumerate().all(|(place, shape)| *shape as usize == place));
    }

    #[test]
    fn every_row_of_the_file_is_a_known_box() {
        assert_eq!(StandardBox::all().count(), FILE.table().unwrap().rows.len());
        assert_eq!(StandardBox::all().count(), 24);
    }
}
