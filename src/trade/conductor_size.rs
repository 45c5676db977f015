//! Conductor sizes as the trade writes them.

use crate::trade::text_schema;
use serde::de::{self, Deserializer, Visitor};
use serde::{Deserialize, Serialize, Serializer};
use std::fmt;
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::Schema;
use utoipa::{PartialSchema, ToSchema};

/// The size of one conductor, from 24 AWG to 2000 kcmil. Ordered: a larger conductor is a greater size.
///
/// Read leniently where only one meaning is possible, written always in one form.
///
/// ```
/// use elbowroom::trade::ConductorSize;
/// for text in ["12", "#12", "12 awg", "No. 12", "12 AWG"] {
///     assert_eq!(ConductorSize::read(text).unwrap().name(), "12 AWG");
/// }
/// assert!(ConductorSize::read("250 MCM").unwrap() > ConductorSize::read("4/0").unwrap());
/// assert!(ConductorSize::read("13").is_none());
/// ```
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct ConductorSize(u8);

const NAMES: [&str; 35] = [
    "24 AWG",
    "22 AWG",
    "20 AWG",
    "18 AWG",
    "16 AWG",
    "14 AWG",
    "12 AWG",
    "10 AWG",
    "8 AWG",
    "6 AWG",
    "4 AWG",
    "3 AWG",
    "2 AWG",
    "1 AWG",
    "1/0 AWG",
    "2/0 AWG",
    "3/0 AWG",
    "4/0 AWG",
    "250 kcmil",
    "300 kcmil",
    "350 kcmil",
    "400 kcmil",
    "500 kcmil",
    "600 kcmil",
    "700 kcmil",
    "750 kcmil",
    "800 kcmil",
    "900 kcmil",
    "1000 kcmil",
    "1100 kcmil",
    "1200 kcmil",
    "1250 kcmil",
    "1500 kcmil",
    "1750 kcmil",
    "2000 kcmil",
];

impl ConductorSize {
    /// 18 AWG, the smallest size with a published volume allowance.
    pub const AWG_18: Self = Self(3);
    /// 14 AWG.
    pub const AWG_14: Self = Self(5);
    /// 10 AWG.
    pub const AWG_10: Self = Self(7);
    /// 8 AWG.
    pub const AWG_8: Self = Self(8);
    /// 6 AWG, the largest size with a published volume allowance.
    pub const AWG_6: Self = Self(9);
    /// 4 AWG, the smallest size that makes a pull box of a box.
    pub const AWG_4: Self = Self(10);
    /// How many sizes there are.
    pub const COUNT: usize = NAMES.len();

    /// Every size, smallest first.
    pub fn all() -> impl DoubleEndedIterator<Item = Self> {
        (0..NAMES.len() as u8).map(Self)
    }

    /// The size at a place among all; the caller knows that there is one.
    pub(super) const fn at(place: u8) -> Self {
        Self(place)
    }

    /// The place of this size among all, from 0.
    pub const fn index(self) -> usize {
        self.0 as usize
    }

    /// The canonical text: `12 AWG`, `4/0 AWG`, `250 kcmil`.
    pub fn name(self) -> &'static str {
        NAMES[self.index()]
    }

    /// Reads a size as people write it; `None` when it is no size, or could be more than one.
    pub fn read(text: &str) -> Option<Self> {
        let (digits, kcmil) = split_unit(text.trim());
        let digits = strip_mark(digits);
        Self::all().find(|size| {
            let (name, unit) = size.name().split_once(' ').unwrap_or((size.name(), ""));
            name == digits && kcmil.is_none_or(|kcmil| kcmil == (unit == "kcmil"))
        })
    }
}

/// The number of a size, and whether its unit says kcmil; `None` when no unit is written.
fn split_unit(text: &str) -> (&str, Option<bool>) {
    for (suffix, kcmil) in [("awg", false), ("kcmil", true), ("mcm", true)] {
        let at = text.len().saturating_sub(suffix.len());
        if let (Some(head), Some(tail)) = (text.get(..at), text.get(at..))
            && tail.eq_ignore_ascii_case(suffix)
        {
            return (head.trim_end(), Some(kcmil));
        }
    }
    (text, None)
}

fn strip_mark(text: &str) -> &str {
    let unmarked = text.strip_prefix('#').or_else(|| {
        let (head, tail) = (text.get(..2)?, text.get(2..)?);
        head.eq_ignore_ascii_case("no").then(|| tail.strip_prefix('.').unwrap_or(tail))
    });
    unmarked.unwrap_or(text).trim_start()
}

impl fmt::Display for ConductorSize {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

impl fmt::Debug for ConductorSize {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

impl Serialize for ConductorSize {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.name())
    }
}

impl<'de> Deserialize<'de> for ConductorSize {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Text;
        impl Visitor<'_> for Text {
            type Value = ConductorSize;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a conductor size such as \"12 AWG\"")
            }
            fn visit_str<E: de::Error>(self, text: &str) -> Result<ConductorSize, E> {
                ConductorSize::read(text).ok_or_else(|| de::Error::custom("unknown conductor size"))
            }
        }
        deserializer.deserialize_str(Text)
    }
}

impl PartialSchema for ConductorSize {
    fn schema() -> RefOr<Schema> {
        text_schema(
            "A conductor size: `18 AWG` … `4/0 AWG`, `250 kcmil` … `2000 kcmil`. `12`, `#12` and `No. 12` are read as `12 AWG`.",
            "conductor-size",
            "12 AWG",
        )
    }
}

impl ToSchema for ConductorSize {}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_size_reads_its_own_name_and_its_bare_number() {
        for size in ConductorSize::all() {
            assert_eq!(ConductorSize::read(size.name()), Some(size));
            let number = size.name().split_once(' ').unwrap().0;
            assert_eq!(ConductorSize::read(number), Some(size), "{number}");
            assert_eq!(ConductorSize::read(&format!("#{number}")), Some(size), "#{number}");
        }
        assert_eq!(ConductorSize::AWG_18.name(), "18 AWG");
        assert_eq!(ConductorSize::AWG_14.name(), "14 AWG");
        assert_eq!(ConductorSize::AWG_8.name(), "8 AWG");
        assert_eq!(ConductorSize::AWG_6.name(), "6 AWG");
        assert_eq!(ConductorSize::AWG_4.name(), "4 AWG");
    }

    #[test]
    fn what_is_no_size_is_refused() {
        for text in ["", "#", "12 kcmil", "250 AWG", "5", "11", "4 / 0", "no", "½", "12 AWG AWG", "é12"] {
            assert_eq!(ConductorSize::read(text), None, "{text}");
        }
    }
}
