//! The exact number that every figure is made of.

use std::cmp::Ordering;
use std::fmt;
use std::iter::Sum;
use std::ops::{Add, Sub};

/// An exact decimal: a whole number of billionths in 64 bits, so up to ±9.2 thousand million with nine decimals.
///
/// Every published allowance, and a quarter of it, needs at most four decimals, a raceway area from its
/// diameter at most nine. Sums and differences are exact; a product or quotient that needs more than nine
/// decimals says how it was rounded. The bounds on requests keep every figure far inside the range; beyond it
/// arithmetic saturates, it never wraps and never panics.
///
/// ```
/// use elbowroom::quantity::Decimal;
/// let allowance: Decimal = "2.25".parse().unwrap();
/// let quarter = allowance.times("0.25".parse().unwrap());
/// assert_eq!(quarter.to_string(), "0.5625");
/// assert_eq!((allowance + quarter).to_string(), "2.8125");
/// ```
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Decimal(i64);

const BILLION: i64 = 1_000_000_000;

impl Decimal {
    /// Zero.
    pub const ZERO: Self = Self(0);
    /// One.
    pub const ONE: Self = Self(BILLION);

    /// A whole number.
    pub const fn whole(number: i32) -> Self {
        Self(number as i64 * BILLION)
    }

    /// `number` ten-thousandths: the form in which figures are written in the rulebook.
    ///
    /// ```
    /// # use elbowroom::quantity::Decimal;
    /// assert_eq!(Decimal::ten_thousandths(2_500).to_string(), "0.25");
    /// ```
    pub const fn ten_thousandths(number: i64) -> Self {
        Self(number.saturating_mul(BILLION / 10_000))
    }

    /// The number of billionths, for exact comparison outside this type.
    pub const fn billionths(self) -> i64 {
        self.0
    }

    /// The number with these billionths.
    pub const fn from_billionths(billionths: i64) -> Self {
        Self(billionths)
    }

    /// The product, rounded half away from zero at the ninth decimal where it needs more than nine.
    pub fn times(self, other: Self) -> Self {
        // a count times a size, by far the commonest product, needs no wide arithmetic
        if self.is_whole() {
            return Self((self.0 / BILLION).saturating_mul(other.0));
        }
        let exact = i128::from(self.0) * i128::from(other.0);
        Self(narrow(round_half_away(exact, i128::from(BILLION))))
    }

    /// The quotient, rounded towards minus infinity at the ninth decimal; `None` for division by zero.
    pub fn over(self, divisor: Self) -> Option<Self> {
        (divisor.0 != 0).then(|| {
            let exact = i128::from(self.0) * i128::from(BILLION);
            Self(narrow(floor_div(exact, i128::from(divisor.0))))
        })
    }

    /// The quotient, rounded half away from zero at the ninth decimal; `None` when the divisor is not above zero.
    pub fn over_to_nearest(self, divisor: Self) -> Option<Self> {
        (divisor.0 > 0).then(|| {
            let exact = i128::from(self.0) * i128::from(BILLION);
            Self(narrow(round_half_away(exact, i128::from(divisor.0))))
        })
    }

    /// The nearest number with at most so many decimals, a half away from zero.
    pub fn rounded_to(self, decimals: u32) -> Self {
        let step = 10_i64.pow(9_u32.saturating_sub(decimals));
        Self(narrow(round_half_away(i128::from(self.0), i128::from(step)) * i128::from(step)))
    }

    /// The largest multiple of `step` that is not above this number; the number itself when `step` is not positive.
    pub fn floor_to(self, step: Self) -> Self {
        if step.0 <= 0 { self } else { Self(self.0.div_euclid(step.0).saturating_mul(step.0)) }
    }

    /// The smallest multiple of `step` that is not below this number; the number itself when `step` is not positive.
    pub fn ceil_to(self, step: Self) -> Self {
        if step.0 <= 0 { self } else { Self(self.0.saturating_neg()).floor_to(step).negated() }
    }

    /// How many times `divisor` goes into this number, as a whole number: 0 when it does not go in once.
    /// `None` when `divisor` is zero or negative.
    pub fn whole_quotient(self, divisor: Self) -> Option<u32> {
        (divisor.0 > 0).then(|| u32::try_from(self.0.max(0) / divisor.0).unwrap_or(u32::MAX))
    }

    /// The root of the sum of the squares, rounded down at the ninth decimal: the straight-line distance over lengths at
    /// right angles. The squares are exact, so a distance that is a decimal of at most nine places is exact too.
    ///
    /// ```
    /// # use elbowroom::quantity::Decimal;
    /// let legs = [Decimal::whole(3), Decimal::whole(4)];
    /// assert_eq!(Decimal::distance(&legs), Decimal::whole(5));
    /// ```
    pub fn distance(legs: &[Self]) -> Self {
        let square = |leg: &Self| i128::from(leg.0) * i128::from(leg.0);
        let sum = legs.iter().map(square).fold(0_i128, i128::saturating_add);
        Self(narrow(sum.isqrt()))
    }

    /// This number in hundredths of another, rounded to the nearest at the second decimal, a half away from zero. Where that would
    /// read as `limit` without being it, as many more decimals are given as it takes, up to the ninth; a share that even the ninth
    /// does not tell from it is put one beside it there. `None` when the other is not above zero.
    ///
    /// ```
    /// # use elbowroom::quantity::Decimal;
    /// let [part, whole] = ["10.001", "25"].map(|text| text.parse::<Decimal>().unwrap());
    /// assert_eq!(part.percent_of(whole, Decimal::whole(40)).unwrap().to_string(), "40.004");
    /// assert_eq!(part.percent_of(whole, Decimal::whole(100)).unwrap().to_string(), "40");
    /// ```
    pub fn percent_of(self, whole: Self, limit: Self) -> Option<Self> {
        if whole.0 <= 0 {
            return None;
        }
        let (share, unit) = (i128::from(self.0) * 100 * i128::from(BILLION), i128::from(whole.0));
        let against = share.cmp(&(i128::from(limit.0) * unit));
        let rounded = |decimals: u32| {
            let step = 10_i128.pow(9 - decimals);
            Self(narrow(round_half_away(share, unit * step) * step))
        };
        let tells = |share: &Self| against == Ordering::Equal || *share != limit;
        let beside = if against == Ordering::Greater { Self(1) } else { Self(-1) };
        Some((2..=9).map(rounded).find(tells).unwrap_or(limit + beside))
    }

    /// The same size with the other sign.
    pub fn negated(self) -> Self {
        Self(self.0.saturating_neg())
    }

    /// Whether there is no fraction.
    pub const fn is_whole(self) -> bool {
        self.0 % BILLION == 0
    }

    /// The number as JSON writes it. Binary floating point appears here and where a request is read, and nowhere
    /// else: the nearest double of a decimal of up to fifteen digits prints as that decimal again.
    pub(super) fn to_json_number(self) -> f64 {
        // up to 2^53 a double holds the billionths exactly, and one division rounds once
        if self.0.unsigned_abs() <= 1 << f64::MANTISSA_DIGITS {
            return self.0 as f64 / BILLION as f64;
        }
        let (mut digits, mut scale) = (self.0, BILLION);
        while scale > 1 && digits % 10 == 0 {
            digits /= 10;
            scale /= 10;
        }
        digits as f64 / scale as f64
    }

    /// Writes the number as a JSON number, after what `out` holds.
    pub fn write_json(self, out: &mut Vec<u8>) {
        crate::json::number(self.to_json_number(), out);
    }

    /// Reads a JSON number that has at most `decimals` decimals; `None` if it has more, is not finite or is out of range.
    pub(super) fn from_json_number(number: f64, decimals: u32) -> Option<Self> {
        let scale = 10_i64.pow(decimals.min(9));
        let scaled = (number * scale as f64).round();
        let same = scaled.is_finite() && scaled.abs() < 9e15 && scaled / scale as f64 == number;
        same.then(|| (scaled as i64).checked_mul(BILLION / scale)).flatten().map(Self)
    }
}

fn round_half_away(numerator: i128, denominator: i128) -> i128 {
    let half = denominator / 2;
    if numerator >= 0 { (numerator + half) / denominator } else { (numerator - half) / denominator }
}

fn floor_div(numerator: i128, denominator: i128) -> i128 {
    if denominator > 0 { numerator.div_euclid(denominator) } else { (-numerator).div_euclid(-denominator) }
}

fn narrow(wide: i128) -> i64 {
    i64::try_from(wide).unwrap_or(if wide < 0 { i64::MIN } else { i64::MAX })
}

impl Add for Decimal {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }
}

impl Sub for Decimal {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0.saturating_sub(other.0))
    }
}

impl Sum for Decimal {
    fn sum<I: Iterator<Item = Self>>(numbers: I) -> Self {
        numbers.fold(Self::ZERO, Add::add)
    }
}

impl From<u32> for Decimal {
    fn from(number: u32) -> Self {
        Self(i64::from(number) * BILLION)
    }
}

impl fmt::Display for Decimal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.0 < 0 {
            f.write_str("-")?;
        }
        let (whole, mut fraction) =
            (self.0.unsigned_abs() / BILLION as u64, self.0.unsigned_abs() % BILLION as u64);
        f.write_str(itoa::Buffer::new().format(whole))?;
        if fraction == 0 {
            return Ok(());
        }
        let mut text = *b".000000000";
        for digit in text[1..].iter_mut().rev() {
            *digit += (fraction % 10) as u8;
            fraction /= 10;
        }
        f.write_str(str::from_utf8(&text).unwrap_or_default().trim_end_matches('0'))
    }
}

impl fmt::Debug for Decimal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

/// Why a text is not a decimal.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("not a decimal number with at most nine decimals")]
pub struct NotADecimal;

impl std::str::FromStr for Decimal {
    type Err = NotADecimal;

    /// Reads `-12.5`, `12`, `0.0133`: digits, at most one point, at most nine decimals.
    fn from_str(text: &str) -> Result<Self, NotADecimal> {
        let (negative, digits) = text.strip_prefix('-').map_or((false, text), |rest| (true, rest));
        let (whole, fraction) = digits.split_once('.').unwrap_or((digits, ""));
        let plain = |part: &str| part.bytes().all(|byte| byte.is_ascii_digit());
        if whole.is_empty() || fraction.len() > 9 || !plain(whole) || !plain(fraction) {
            return Err(NotADecimal);
        }
        let fraction: i64 = format!("{fraction:0<9}").parse().map_err(|_| NotADecimal)?;
        let billionths = whole
            .parse::<i64>()
            .ok()
            .and_then(|number| number.checked_mul(BILLION))
            .and_then(|number| number.checked_add(fraction))
            .ok_or(NotADecimal)?;
        Ok(Self(if negative { -billionths } else { billionths }))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn decimal(text: &str) -> Decimal {
        text.parse().unwrap()
    }

    #[test]
    fn text_is_exact_both_ways() {
        for text in ["0", "2.25", "0.5625", "-0.2", "100000", "0.000000001", "9223372036.854775807"] {
            assert_eq!(decimal(text).to_string(), text);
        }
        for bad in ["", ".5", "1.0000000001", "1e3", "+1", "1..2", "NaN", "99999999999"] {
            assert_eq!(bad.parse::<Decimal>(), Err(NotADecimal), "{bad}");
        }
    }

    #[test]
    fn rounding_to_a_step_goes_the_stated_way_on_both_sides_of_zero() {
        assert_eq!(decimal("2.26").floor_to(decimal("0.25")), decimal("2.25"));
        assert_eq!(decimal("2.26").ceil_to(decimal("0.25")), decimal("2.5"));
        assert_eq!(decimal("2.25").ceil_to(decimal("0.25")), decimal("2.25"));
        assert_eq!(decimal("-2.26").floor_to(decimal("0.25")), decimal("-2.5"));
        assert_eq!(decimal("7").over(decimal("-3")), Some(decimal("-2.333333334")));
        assert_eq!(decimal("7").over(Decimal::ZERO), None);
    }

    #[test]
    fn the_ends_of_the_range_saturate() {
        let largest = Decimal(i64::MAX);
        assert_eq!(largest + largest, largest);
        assert_eq!(largest.times(largest), largest);
        assert_eq!(largest.times(largest.negated()), Decimal(i64::MIN));
        assert_eq!(Decimal(i64::MIN).negated(), largest);
    }

    proptest! {
        #[test]
        fn a_json_number_prints_as_the_decimal_it_came_from(billionths in -1_000_000_000_000_000_i64..1_000_000_000_000_000) {
            let number = Decimal(billionths);
            let printed = serde_json::to_string(&number.to_json_number()).unwrap();
            let plain = printed.strip_suffix(".0").unwrap_or(&printed);
            if !plain.contains('e') {
                prop_assert_eq!(plain, number.to_string());
            }
        }

        #[test]
        fn a_json_number_of_six_decimals_is_read_exactly(millionths in -1_000_000_000_000_i64..1_000_000_000_000) {
            let number = Decimal(millionths * 1_000);
            let text = number.to_string();
            let read: f64 = serde_json::from_str(&text).unwrap();
            prop_assert_eq!(Decimal::from_json_number(read, 6), Some(number));
        }
    }
}
