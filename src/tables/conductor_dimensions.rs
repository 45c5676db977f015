//! Dimensions of insulated conductors and fixture wires: Chapter 9, Table 5.

use super::by_size::BySize;
use super::loader::File;
use super::table::{Cell, Column, Row, Table, Value};
use crate::quantity::{Unit, Units};
use crate::trade::{ConductorSize, Covering, Insulation};
use std::sync::LazyLock;

/// The id of the table.
pub const TABLE: &str = "conductor-dimensions";

/// The columns of Tables 5 and 5A alike. `types` holds the type letters of a row, set apart by spaces; a star
/// marks a type without outer covering, as the code prints it.
pub(super) const COLUMNS: &[Column] = &[
    Column::text("types"),
    Column::figures("diameter_in", Unit::Inch),
    Column::figures("area_in2", Unit::SquareInch),
    Column::figures("diameter_mm", Unit::Millimetre),
    Column::figures("area_mm2", Unit::SquareMillimetre),
];

/// The columns of Table 5, in which one conductor has two areas.
const OWN_COLUMNS: &[Column] = &[
    COLUMNS[0],
    COLUMNS[1],
    COLUMNS[2],
    COLUMNS[3],
    COLUMNS[4],
    Column::figures("area_of_diameter_in2", Unit::SquareInch),
    Column::figures("area_of_diameter_mm2", Unit::SquareMillimetre),
];

pub(super) static FILE: File =
    File::new(TABLE, "Chapter 9, Table 5", OWN_COLUMNS, include_str!("data/conductor-dimensions.csv"));

/// The dimensions of one conductor. Either may be absent where the code prints none or no figure was available.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Dimensions {
    /// The outside diameter.
    pub diameter: Option<Cell>,
    /// The cross-section with its insulation.
    pub area: Option<Cell>,
    /// The cross-section of the diameter, where the code prints another one beside it.
    pub area_of_diameter: Option<Cell>,
}

impl Dimensions {
    /// The dimensions that a row has in one system, in the columns that Tables 5, 5A and 8 share.
    pub(super) fn of_row(table: &'static Table, key: &str, units: Units) -> Option<Self> {
        table.row(key)?;
        let [diameter, area, area_of_diameter] = match units {
            Units::Us => ["diameter_in", "area_in2", "area_of_diameter_in2"],
            Units::Si => ["diameter_mm", "area_mm2", "area_of_diameter_mm2"],
        }
        .map(|column| table.cell(key, column));
        Some(Self { diameter, area, area_of_diameter })
    }
}

/// Reads a table of the columns above into one line for each type: those that the letters name, then those with a star.
pub(super) fn by_type(file: &'static File) -> Vec<BySize<Dimensions>> {
    let line = |letters: String| {
        let names = |row: &&Row| {
            let types = row.values.first();
            matches!(types, Some(Value::Text(types)) if types.split(' ').any(|one| one == letters))
        };
        let rows: Vec<&Row> = file.table().into_iter().flat_map(|table| &table.rows).filter(names).collect();
        BySize::new(|size, units| {
            let of_size = |row: &&&Row| row.key.split_once(' ').is_some_and(|(_, read)| read == size.name());
            Dimensions::of_row(file.table()?, rows.iter().find(of_size)?.key, units)
        })
    };
    let letters = || Insulation::ALL.iter().map(|insulation| insulation.letters());
    letters().map(str::to_owned).chain(letters().map(|bare| format!("{bare}*"))).map(line).collect()
}

static BY_TYPE: LazyLock<Vec<BySize<Dimensions>>> = LazyLock::new(|| by_type(&FILE));

/// The dimensions of an insulated conductor or fixture wire; `None` for a size that the table does not have.
///
/// A type that is made with and without an outer covering needs `covering` to say which; for any other it is ignored.
///
/// ```
/// use elbowroom::{quantity::Units, tables::conductor_dimensions, trade::{ConductorSize, Covering, Insulation}};
/// let twelve = ConductorSize::read("12").unwrap();
/// let area = |insulation, covering| {
///     let found = conductor_dimensions::of(insulation, covering, twelve, Units::Us)?;
///     found.area.map(|cell| cell.value.to_string())
/// };
/// assert_eq!(area(Insulation::Thwn2, None).as_deref(), Some("0.0133"));
/// assert_eq!(area(Insulation::Rhw, Some(Covering::Without)).as_deref(), Some("0.026"));
/// assert_eq!(area(Insulation::Rhw, None), None);
/// ```
pub fn of(
    insulation: Insulation,
    covering: Option<Covering>,
    size: ConductorSize,
    units: Units,
) -> Option<Dimensions> {
    let starred = match (insulation.is_made_with_and_without_covering(), covering) {
        (false, _) | (true, Some(Covering::With)) => 0,
        (true, Some(Covering::Without)) => Insulation::COUNT,
        (true, None) => return None,
    };
    BY_TYPE.get(insulation.index() + starred)?.of(size, units)
}

/// The sizes that the table has for a type, smallest first, with and without outer covering alike.
pub fn sizes(insulation: Insulation) -> impl Iterator<Item = ConductorSize> {
    ConductorSize::all().filter(move |size| {
        [Covering::With, Covering::Without]
            .into_iter()
            .any(|covering| of(insulation, Some(covering), *size, Units::Us).is_some())
    })
}

/// The thinnest and the thickest type that each size is made in: in that order, each with its outer covering where it may have one.
static EXTREMES: LazyLock<Vec<Option<Extremes>>> =
    LazyLock::new(|| ConductorSize::all().map(find_extremes).collect());

/// Two types of insulation, and what they are called.
#[derive(Clone, Copy, Debug)]
pub struct Extremes {
    /// The types.
    pub types: [Insulation; 2],
    /// Their letters.
    pub letters: [&'static str; 2],
}

fn find_extremes(size: ConductorSize) -> Option<Extremes> {
    let mut areas = Vec::with_capacity(Insulation::COUNT);
    for insulation in Insulation::ALL {
        let area = |units| Some(of(*insulation, Some(Covering::With), size, units)?.area);
        if let (Some(us), Some(si)) = (area(Units::Us), area(Units::Si)) {
            si?;
            areas.push((us?.value, *insulation));
        }
    }
    areas.sort_by_key(|(area, _)| *area);
    let types = [areas.first()?.1, areas.last()?.1];
    Some(Extremes { types, letters: types.map(Insulation::letters) })
}

/// The thinnest and the thickest type of insulation that a size is made in; `None` for a size that the table does not have,
/// or of one type without a cross-section.
///
/// ```
/// use elbowroom::{tables::conductor_dimensions, trade::ConductorSize};
/// let twelve = ConductorSize::read("12").unwrap();
/// let [_, thickest] = conductor_dimensions::extremes(twelve).unwrap().types;
/// assert!(thickest.is_made_with_and_without_covering());
/// ```
pub fn extremes(size: ConductorSize) -> Option<&'static Extremes> {
    EXTREMES.get(size.index())?.as_ref()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Decimal;

    /// Every type letter of the file is a known type, and no type has two rows of one size.
    #[test]
    fn every_type_of_every_row_is_known_and_unambiguous() {
        for file in [&FILE, &super::super::compact_conductor_dimensions::FILE] {
            let table = file.table().unwrap();
            let mut seen = std::collections::HashSet::new();
            for row in &table.rows {
                let Value::Text(types) = row.values[0] else { panic!("{}", row.key) };
                let (first, size) = row.key.split_once(' ').unwrap();
                assert_eq!(types.split(' ').next(), Some(first), "{}", row.key);
                assert!(ConductorSize::read(size).is_some_and(|read| read.name() == size), "{}", row.key);
                for letters in types.split(' ').filter(|letters| *letters != "bare") {
                    let bare = letters.trim_end_matches('*');
                    let known = Insulation::ALL.iter().find(|known| known.letters() == bare);
                    let known = known.unwrap_or_else(|| panic!("{}: {letters}", row.key));
                    assert!(bare == letters || known.is_made_with_and_without_covering(), "{letters}");
                    assert!(seen.insert((letters, size)), "{letters} {size} stands twice");
                }
            }
        }
        assert_eq!(FILE.table().unwrap().rows.len(), 161);
    }

    #[test]
    fn every_type_has_some_size_and_a_covering_decides_between_two_rows() {
        for insulation in Insulation::ALL {
            assert!(sizes(*insulation).count() > 0, "{insulation}");
        }
        for insulation in [Insulation::Rhh, Insulation::Rhw, Insulation::Rhw2] {
            for size in sizes(insulation) {
                let area = |covering| of(insulation, Some(covering), size, Units::Us).unwrap().area.unwrap();
                assert!(area(Covering::Without).value < area(Covering::With).value, "{insulation} {size}");
            }
        }
    }

    /// The printed area is that of the printed diameter, to the last digit that is printed.
    #[test]
    fn areas_are_those_of_the_diameters() {
        let table = FILE.table().unwrap();
        let quarter_pi: Decimal = "0.785398163".parse().unwrap();
        for row in &table.rows {
            let figure = |column| table.number(row.key, column);
            let diameter = figure("diameter_in").unwrap();
            let area = figure("area_of_diameter_in2").or(figure("area_in2")).unwrap();
            let off = diameter.times(diameter).times(quarter_pi) - area;
            let off = if off < Decimal::ZERO { off.negated() } else { off };
            assert!(off <= Decimal::ten_thousandths(1) + "0.00002".parse().unwrap(), "{}: {off}", row.key);
        }
    }

    /// The one conductor whose printed area is not that of its printed diameter has both; every figure stands in both systems.
    #[test]
    fn one_conductor_has_two_areas() {
        let rows = &FILE.table().unwrap().rows;
        let has = |row: &Row, column: usize| row.values[column] != Value::Absent;
        assert!(rows.iter().all(|row| (0..5).all(|column| has(row, column))));
        let two: Vec<&str> =
            rows.iter().filter(|row| has(row, 5) && has(row, 6)).map(|row| row.key).collect();
        assert_eq!(two, ["RFH-1 18 AWG"]);
        assert_eq!(rows.iter().filter(|row| has(row, 5) || has(row, 6)).count(), 1);
    }
}
