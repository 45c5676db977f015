//! Inside dimensions of raceways: Chapter 9, Table 4.

use super::loader::File;
use super::table::{Cell, Column};
use crate::quantity::{Unit, Units};
use crate::trade::{RacewayKind, TradeSize};
use std::sync::LazyLock;

/// The id of the table.
pub const TABLE: &str = "raceway-dimensions";

/// The id of the table of electrical nonmetallic tubing as the edition of 2011 prints it.
pub const EARLIER_ENT_TABLE: &str = "earlier-ent-dimensions";

const COLUMNS: &[Column] = &[
    Column::text("kind"),
    Column::text("trade_size"),
    Column::figures("metric_designator", Unit::One),
    Column::figures("diameter_in", Unit::Inch),
    Column::figures("area_in2", Unit::SquareInch),
    Column::figures("area_53_in2", Unit::SquareInch),
    Column::figures("area_31_in2", Unit::SquareInch),
    Column::figures("area_40_in2", Unit::SquareInch),
    Column::figures("area_60_in2", Unit::SquareInch),
    Column::figures("diameter_mm", Unit::Millimetre),
    Column::figures("area_mm2", Unit::SquareMillimetre),
    Column::figures("area_53_mm2", Unit::SquareMillimetre),
    Column::figures("area_31_mm2", Unit::SquareMillimetre),
    Column::figures("area_40_mm2", Unit::SquareMillimetre),
    Column::figures("area_60_mm2", Unit::SquareMillimetre),
];

pub(super) static FILE: File =
    File::new(TABLE, "Chapter 9, Table 4", COLUMNS, include_str!("data/raceway-dimensions.csv"));

pub(super) static EARLIER_ENT_FILE: File = File::new(
    EARLIER_ENT_TABLE,
    "Chapter 9, Table 4",
    COLUMNS,
    include_str!("data/earlier-ent-dimensions.csv"),
);

/// Which inside dimension of a raceway.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(u8)]
pub enum Dimension {
    /// The nominal inside diameter.
    Diameter,
    /// The whole cross-section, as printed.
    Area,
    /// The printed area for one conductor or cable.
    AreaForOne,
    /// The printed area for two.
    AreaForTwo,
    /// The printed area for more than two.
    AreaForMore,
    /// The printed area for a nipple.
    AreaForNipple,
}

impl Dimension {
    const ALL: [Self; 6] = [
        Self::Diameter,
        Self::Area,
        Self::AreaForOne,
        Self::AreaForTwo,
        Self::AreaForMore,
        Self::AreaForNipple,
    ];

    const fn column(self, units: Units) -> &'static str {
        match (units, self) {
            (Units::Us, Self::Diameter) => "diameter_in",
            (Units::Us, Self::Area) => "area_in2",
            (Units::Us, Self::AreaForOne) => "area_53_in2",
            (Units::Us, Self::AreaForTwo) => "area_31_in2",
            (Units::Us, Self::AreaForMore) => "area_40_in2",
            (Units::Us, Self::AreaForNipple) => "area_60_in2",
            (Units::Si, Self::Diameter) => "diameter_mm",
            (Units::Si, Self::Area) => "area_mm2",
            (Units::Si, Self::AreaForOne) => "area_53_mm2",
            (Units::Si, Self::AreaForTwo) => "area_31_mm2",
            (Units::Si, Self::AreaForMore) => "area_40_mm2",
            (Units::Si, Self::AreaForNipple) => "area_60_mm2",
        }
    }
}

/// The figures of one row, by system and dimension.
type Figures = [[Option<Cell>; Dimension::ALL.len()]; 2];

/// One row for each kind and trade size: absent where the table has none.
static ROWS: LazyLock<Vec<Option<Figures>>> = LazyLock::new(|| {
    let kinds = RacewayKind::ALL.iter();
    kinds.flat_map(|kind| TradeSize::all().map(|size| find(*kind, size))).collect()
});

fn find(kind: RacewayKind, size: TradeSize) -> Option<Figures> {
    let table = FILE.table()?;
    let row = table.row(&format!("{} {}", kind.table_name(), size.name()))?;
    Some(
        [Units::Us, Units::Si]
            .map(|units| Dimension::ALL.map(|dimension| table.cell(row.key, dimension.column(units)))),
    )
}

fn row(kind: RacewayKind, size: TradeSize) -> Option<&'static Figures> {
    ROWS.get(kind.index() * TradeSize::COUNT + size.index())?.as_ref()
}

/// One inside dimension of a raceway; `None` for a trade size that the kind does not come in, and where no figure
/// was available.
///
/// ```
/// use elbowroom::quantity::Units;
/// use elbowroom::tables::raceway_dimensions::{self, Dimension};
/// use elbowroom::trade::{RacewayKind, TradeSize};
/// let three_quarters = TradeSize::read("3/4").unwrap();
/// let inside = raceway_dimensions::of(RacewayKind::Emt, three_quarters, Dimension::Diameter, Units::Us);
/// assert_eq!(inside.unwrap().value.to_string(), "0.824");
/// ```
pub fn of(kind: RacewayKind, size: TradeSize, dimension: Dimension, units: Units) -> Option<Cell> {
    row(kind, size)?[units as usize][dimension as usize]
}

/// One inside dimension of electrical nonmetallic tubing as the edition of 2011 prints it; `None` for a trade size that it lacks.
pub fn of_earlier_ent(size: TradeSize, dimension: Dimension, units: Units) -> Option<Cell> {
    EARLIER_ENT_FILE.cell(&format!("ENT {}", size.name()), dimension.column(units))
}

/// The trade sizes of a kind that have figures, smallest first.
pub fn sizes(kind: RacewayKind) -> impl Iterator<Item = TradeSize> {
    TradeSize::all().filter(move |size| of(kind, *size, Dimension::Diameter, Units::Us).is_some())
}

/// The trade sizes that the code permits for a kind but whose figures were not available, smallest first.
///
/// ```
/// use elbowroom::tables::raceway_dimensions;
/// use elbowroom::trade::RacewayKind;
/// let missing: Vec<&str> = raceway_dimensions::without_figures(RacewayKind::Emt).map(|size| size.name()).collect();
/// assert_eq!(missing, ["5", "6"]);
/// ```
pub fn without_figures(kind: RacewayKind) -> impl Iterator<Item = TradeSize> {
    TradeSize::all().filter(move |size| {
        row(kind, *size).is_some() && of(kind, *size, Dimension::Diameter, Units::Us).is_none()
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tables::{Bases, Basis, Value};

    /// Every row of the file is some kind in some trade size, and is written so.
    #[test]
    fn every_row_of_the_file_is_reached() {
        let table = FILE.table().unwrap();
        let reached = RacewayKind::ALL
            .iter()
            .filter(|kind| **kind != RacewayKind::Hdpe)
            .flat_map(|kind| sizes(*kind).chain(without_figures(*kind)));
        assert_eq!(reached.count(), table.rows.len());
        assert_eq!(table.rows.len(), 138);
        for row in &table.rows {
            let [Value::Text(kind), Value::Text(size), Value::Number(designator), ..] = row.values[..] else {
                panic!("{}", row.key);
            };
            assert_eq!(row.key, format!("{kind} {size}"));
            let size = TradeSize::read(size).unwrap();
            assert_eq!(size.metric_designator().to_string(), designator.to_string());
        }
    }

    /// A trade size with an inch figure has every figure, and each grows with the trade size.
    #[test]
    fn every_dimension_grows_with_the_trade_size() {
        for kind in RacewayKind::ALL {
            for units in [Units::Us, Units::Si] {
                for dimension in Dimension::ALL {
                    let figures: Vec<_> =
                        sizes(*kind).map(|size| of(*kind, size, dimension, units).unwrap().value).collect();
                    assert!(figures.is_sorted_by(|one, next| one < next), "{kind} {dimension:?}");
                }
            }
        }
    }

    #[test]
    fn what_nobody_could_confirm_says_so() {
        for size in sizes(RacewayKind::LfncC) {
            let cell = of(RacewayKind::LfncC, size, Dimension::Diameter, Units::Us).unwrap();
            assert_eq!(cell.bases, Bases::all(Basis::Unconfirmed));
        }
        let missing: Vec<RacewayKind> =
            RacewayKind::ALL.iter().copied().filter(|kind| without_figures(*kind).count() > 0).collect();
        assert_eq!(
            missing,
            [
                RacewayKind::Emt,
                RacewayKind::Ent,
                RacewayKind::Imc,
                RacewayKind::LfncA,
                RacewayKind::LfncB,
                RacewayKind::LfncC
            ]
        );
    }
}
