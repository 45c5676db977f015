//! Slips that are no error about a rule: another unit, a rounded figure, digits exchanged, a wrong sum.

use super::{Given, is_same, to_four_decimals};
use crate::checks;
use crate::derivation::Figure;
use crate::quantity::{Decimal, Unit, Units};
use crate::training::{Quantity, Teachable};

/// A slip.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slip {
    /// The right answer in another unit, converted.
    Converted,
    /// The right answer by the other column of the code, which is not a conversion.
    OtherColumn,
    /// The right number, with the unit of something else.
    WrongUnit,
    /// The number that is right in the other unit, said in this one.
    NumberOfOtherUnit,
    /// The right figure, rounded up.
    RoundedUp,
    /// The right figure, rounded down.
    RoundedDown,
    /// The digits of the right figure, two neighbours exchanged.
    DigitsExchanged,
    /// The right number of allowances, multiplied wrongly.
    Product,
    /// The lines of the tally do not add up to the answer.
    Sum,
}

impl Slip {
    /// The key of its sentence.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Converted => "text-slip-converted",
            Self::OtherColumn => "text-slip-other-column",
            Self::WrongUnit => "text-slip-wrong-unit",
            Self::NumberOfOtherUnit => "text-slip-number-of-other-unit",
            Self::RoundedUp => "text-slip-rounded-up",
            Self::RoundedDown => "text-slip-rounded-down",
            Self::DigitsExchanged => "text-slip-digits-exchanged",
            Self::Product => "text-slip-product",
            Self::Sum => "text-slip-sum",
        }
    }
}

/// The slips that make an answer of the right figure.
pub(super) fn of<C: Teachable>(
    request: &C::Request,
    quantity: &Quantity<C>,
    given: Given,
    figure: Figure,
) -> Vec<Slip> {
    let Given { value, unit } = given;
    if unit != figure.unit {
        return in_another_unit::<C>(request, quantity, given, figure);
    }
    let mut slips = Vec::new();
    if let Some((other, _)) = counterpart(unit) {
        let converted = convert(figure.value, unit, other).is_some_and(|exact| is_rounded(exact, value));
        let column =
            by_other_column(request, quantity, figure).is_some_and(|other| is_same(other.value, value));
        if converted || column {
            slips.push(Slip::NumberOfOtherUnit);
        }
    }
    slips.extend(rounded(figure.value, value));
    if digits_exchanged(to_four_decimals(figure.value), value) {
        slips.push(Slip::DigitsExchanged);
    }
    slips
}

fn in_another_unit<C: Teachable>(
    request: &C::Request,
    quantity: &Quantity<C>,
    given: Given,
    figure: Figure,
) -> Vec<Slip> {
    let Given { value, unit } = given;
    let by_column = by_other_column(request, quantity, figure)
        .is_some_and(|other| other.unit == unit && is_same(other.value, value));
    if by_column {
        return vec![Slip::OtherColumn];
    }
    if convert(figure.value, figure.unit, unit).is_some_and(|exact| is_rounded(exact, value)) {
        return vec![Slip::Converted];
    }
    if is_same(value, figure.value) { vec![Slip::WrongUnit] } else { Vec::new() }
}

/// The figure that the same request has in the other system of units.
fn by_other_column<C: Teachable>(
    request: &C::Request,
    quantity: &Quantity<C>,
    figure: Figure,
) -> Option<Figure> {
    let (_, units) = counterpart(figure.unit)?;
    let mut other = request.clone();
    if !C::in_units(&mut other, units) {
        return None;
    }
    (quantity.figure)(&other, &checks::evaluate::<C>(&other).outcome)
}

/// Units of the same measure in both systems, and how many of the metric one make one of the other, in billionths.
const PAIRS: [(Unit, Unit, i64); 4] = [
    (Unit::Inch, Unit::Millimetre, 25_400_000_000),
    (Unit::SquareInch, Unit::SquareMillimetre, 645_160_000_000),
    (Unit::CubicInch, Unit::CubicCentimetre, 16_387_064_000),
    (Unit::Pound, Unit::Kilogram, 453_592_370),
];

/// The unit of the same measure in the other system, and that system.
fn counterpart(unit: Unit) -> Option<(Unit, Units)> {
    PAIRS.into_iter().find_map(|(us, si, _)| match unit {
        _ if unit == us => Some((si, Units::Si)),
        _ if unit == si => Some((us, Units::Us)),
        _ => None,
    })
}

fn convert(value: Decimal, from: Unit, to: Unit) -> Option<Decimal> {
    PAIRS.into_iter().find_map(|(us, si, factor)| match (from, to) {
        units if units == (us, si) => Some(value.times(Decimal::from_billionths(factor))),
        units if units == (si, us) => value.over(Decimal::from_billionths(factor)),
        _ => None,
    })
}

/// The steps to which a figure may be rounded: whole, tenths, hundredths, thousandths.
const STEPS: [i64; 4] = [1_000_000_000, 100_000_000, 10_000_000, 1_000_000];

/// Whether a number is an exact one, rounded to as many decimals as it has itself.
fn is_rounded(exact: Decimal, number: Decimal) -> bool {
    let to = |step: &i64| {
        let half = Decimal::from_billionths(step / 2);
        (exact + half).floor_to(Decimal::from_billionths(*step))
    };
    is_same(exact, number) || STEPS.iter().any(|step| to(step) == number)
}

fn rounded(exact: Decimal, number: Decimal) -> Option<Slip> {
    let exact = to_four_decimals(exact);
    let steps = || STEPS.iter().map(|step| Decimal::from_billionths(*step));
    if number > exact && steps().any(|step| exact.ceil_to(step) == number) {
        Some(Slip::RoundedUp)
    } else if number < exact && number > Decimal::ZERO && steps().any(|step| exact.floor_to(step) == number) {
        Some(Slip::RoundedDown)
    } else {
        None
    }
}

/// Whether two neighbouring digits of the right figure were exchanged.
fn digits_exchanged(right: Decimal, given: Decimal) -> bool {
    let (right, given) = (right.to_string(), given.to_string());
    let (right, given) = (right.as_bytes(), given.as_bytes());
    if right.len() != given.len() {
        return false;
    }
    let differ: Vec<usize> = (0..right.len()).filter(|place| right[*place] != given[*place]).collect();
    let [first, second] = differ[..] else { return false };
    second == first + 1
        && right[first].is_ascii_digit()
        && right[second].is_ascii_digit()
        && (right[first], right[second]) == (given[second], given[first])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn decimal(text: &str) -> Decimal {
        text.parse().unwrap()
    }

    #[test]
    fn a_rounded_figure_is_told_from_another_one() {
        assert_eq!(rounded(decimal("2.8125"), decimal("3")), Some(Slip::RoundedUp));
        assert_eq!(rounded(decimal("2.8125"), decimal("2.81")), Some(Slip::RoundedDown));
        assert_eq!(rounded(decimal("2.8125"), decimal("2.25")), None);
        assert_eq!(rounded(decimal("18"), decimal("17")), None);
    }

    #[test]
    fn digits_are_exchanged_only_where_two_neighbours_are() {
        assert!(digits_exchanged(decimal("20.25"), decimal("20.52")));
        assert!(!digits_exchanged(decimal("20.25"), decimal("25.20")));
        assert!(!digits_exchanged(decimal("20.25"), decimal("20.35")));
        assert!(digits_exchanged(decimal("12"), decimal("21")));
    }

    #[test]
    fn a_conversion_is_right_to_the_decimals_that_are_given() {
        let exact = convert(decimal("18"), Unit::CubicInch, Unit::CubicCentimetre).unwrap();
        assert!(is_rounded(exact, decimal("295")) && is_rounded(exact, decimal("294.97")));
        assert!(!is_rounded(exact, decimal("295.2")));
        assert_eq!(convert(decimal("18"), Unit::CubicInch, Unit::Inch), None);
    }
}
