//! How far a figure can be trusted.

use serde::Serialize;
use utoipa::ToSchema;

/// Where a figure or a rule comes from, under one edition.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Basis {
    /// Read in a published source, named beside it: for the law, in a text of that very edition.
    Published,
    /// Read alike in the text of an earlier edition and of a later one.
    Bracketed,
    /// Read in an unofficial copy of the edition only. Compare with print.
    UnofficialCopy,
    /// Read in the text of an earlier edition only; that it still stands is recalled. Compare with print.
    EarlierEdition,
    /// Written from knowledge of the code, with no printed copy open. Compare with print before relying on it.
    Recalled,
    /// What the trade commonly does where the code is silent.
    CommonPractice,
    /// Authors or inspectors differ; the reading that was used is named.
    Disputed,
    /// Arithmetic and geometry: no code has to say it.
    Arithmetic,
    /// Not confirmed by anything. Compare with print.
    Unconfirmed,
}

impl Basis {
    const ALL: [Self; 9] = [
        Self::Published,
        Self::Bracketed,
        Self::UnofficialCopy,
        Self::EarlierEdition,
        Self::Recalled,
        Self::CommonPractice,
        Self::Disputed,
        Self::Arithmetic,
        Self::Unconfirmed,
    ];

    /// The word as tables and answers write it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Published => "published",
            Self::Bracketed => "bracketed",
            Self::UnofficialCopy => "unofficial_copy",
            Self::EarlierEdition => "earlier_edition",
            Self::Recalled => "recalled",
            Self::CommonPractice => "common_practice",
            Self::Disputed => "disputed",
            Self::Arithmetic => "arithmetic",
            Self::Unconfirmed => "unconfirmed",
        }
    }

    /// Reads the word; `None` for any other.
    pub fn read(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|basis| basis.name() == text)
    }
}

/// Where a figure or a rule comes from under each edition: 2017, 2020 and 2023.
///
/// ```
/// use elbowroom::tables::{Bases, Basis};
/// let bases = Bases::read("bracketed published unofficial_copy").unwrap();
/// assert_eq!(bases.0[1], Basis::Published);
/// assert_eq!(Bases::read("recalled"), Some(Bases::all(Basis::Recalled)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bases(pub [Basis; 3]);

impl Bases {
    /// The years of the editions, in order.
    pub const YEARS: [&'static str; 3] = ["2017", "2020", "2023"];

    /// The same under every edition.
    pub const fn all(basis: Basis) -> Self {
        Self([basis; 3])
    }

    /// Reads one word for all editions, or three with a space between.
    pub fn read(text: &str) -> Option<Self> {
        let words: Option<Vec<Basis>> = text.split(' ').map(Basis::read).collect();
        match words?.as_slice() {
            [all] => Some(Self::all(*all)),
            [first, second, third] => Some(Self([*first, *second, *third])),
            _ => None,
        }
    }

    /// What is read again by [`Self::read`].
    pub fn name(self) -> String {
        let [first, second, third] = self.0.map(Basis::name);
        if first == second && second == third {
            first.to_owned()
        } else {
            format!("{first} {second} {third}")
        }
    }
}
