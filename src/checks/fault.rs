//! What is wrong with a request: every fault at once, each with its place, its code and what would be right.

use super::Amendment;
use crate::derivation::Pointer;
use crate::quantity::Units;
use crate::rulebook::amendment::{AMENDABLE, Amendable};
use crate::rulebook::{Edition, Rulebook};
use serde::Serialize;
use utoipa::ToSchema;

/// The most amendments that one request may carry, as every request's schema says.
const MOST_AMENDMENTS: usize = 200;

/// The kinds of fault. The service's table of problems says what each means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, ToSchema)]
#[serde(rename_all = "kebab-case")]
pub enum FaultCode {
    /// The body is not JSON.
    MalformedJson,
    /// A member stands twice in one object.
    DuplicateMember,
    /// A member that the request does not have.
    UnknownMember,
    /// A query parameter that the operation does not have.
    UnknownParameter,
    /// A member that the request must have.
    MissingMember,
    /// A value of another JSON type than asked for.
    WrongType,
    /// A value outside a closed set.
    UnknownValue,
    /// A text that is no conductor size.
    UnknownConductorSize,
    /// A text that is no trade size.
    UnknownTradeSize,
    /// A text that is no standard box.
    UnknownStandardBox,
    /// A number or text outside its bounds.
    OutOfBounds,
    /// A number with more decimals than are kept exactly.
    TooManyDecimals,
    /// A list with more items than are taken.
    TooManyItems,
    /// An identifier that two things carry.
    DuplicateId,
    /// A reference to something that is not there.
    UnknownReference,
    /// Members that cannot stand together, or one without another.
    Conflict,
    /// Two members that state the same fact in different ways.
    Contradiction,
    /// An edition whose text is unverified, without the word that this is accepted.
    UnverifiedEdition,
    /// A text that can be read in more than one way.
    Ambiguous,
    /// A value that no other code describes.
    NotAccepted,
}

impl FaultCode {
    /// Every code, in the order in which they are documented.
    pub const ALL: [Self; 20] = [
        Self::MalformedJson,
        Self::DuplicateMember,
        Self::UnknownMember,
        Self::UnknownParameter,
        Self::MissingMember,
        Self::WrongType,
        Self::UnknownValue,
        Self::UnknownConductorSize,
        Self::UnknownTradeSize,
        Self::UnknownStandardBox,
        Self::OutOfBounds,
        Self::TooManyDecimals,
        Self::TooManyItems,
        Self::DuplicateId,
        Self::UnknownReference,
        Self::Conflict,
        Self::Contradiction,
        Self::UnverifiedEdition,
        Self::Ambiguous,
        Self::NotAccepted,
    ];

    /// The code as a problem writes it, never changed once published.
    pub const fn name(self) -> &'static str {
        match self {
            Self::MalformedJson => "malformed-json",
            Self::DuplicateMember => "duplicate-member",
            Self::UnknownMember => "unknown-member",
            Self::UnknownParameter => "unknown-parameter",
            Self::MissingMember => "missing-member",
            Self::WrongType => "wrong-type",
            Self::UnknownValue => "unknown-value",
            Self::UnknownConductorSize => "unknown-conductor-size",
            Self::UnknownTradeSize => "unknown-trade-size",
            Self::UnknownStandardBox => "unknown-standard-box",
            Self::OutOfBounds => "out-of-bounds",
            Self::TooManyDecimals => "too-many-decimals",
            Self::TooManyItems => "too-many-items",
            Self::DuplicateId => "duplicate-id",
            Self::UnknownReference => "unknown-reference",
            Self::Conflict => "conflict",
            Self::Contradiction => "contradiction",
            Self::UnverifiedEdition => "unverified-edition",
            Self::Ambiguous => "ambiguous",
            Self::NotAccepted => "not-accepted",
        }
    }
}

/// One fault.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// Where it is.
    pub at: Pointer,
    /// The other member, of two that contradict each other.
    pub contradicts: Option<Pointer>,
    /// What kind it is.
    pub code: FaultCode,
    /// The key of the sentence that says what would be right.
    pub message: &'static str,
    /// What the sentence names.
    pub arguments: Vec<(&'static str, String)>,
    /// The values that would be accepted, where the set is closed.
    pub accepted: Vec<String>,
}

/// All faults of one request.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Faults(Vec<Fault>);

impl Faults {
    /// Adds a fault with nothing to name.
    pub fn add(&mut self, at: Pointer, code: FaultCode, message: &'static str) -> &mut Fault {
        let (arguments, accepted, contradicts) = (Vec::new(), Vec::new(), None);
        self.0.push(Fault { at, contradicts, code, message, arguments, accepted });
        let last = self.0.len() - 1;
        &mut self.0[last]
    }

    /// Adds the fault that two members state the same fact in different ways: which of them is right is for the caller to say.
    pub fn contradiction(&mut self, at: Pointer, other: Pointer, message: &'static str) -> &mut Fault {
        let fault = self.add(at, FaultCode::Contradiction, message);
        fault.contradicts = Some(other);
        fault
    }

    /// Whether there is none.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// The faults, in the order in which they were found.
    pub fn iter(&self) -> impl Iterator<Item = &Fault> {
        self.0.iter()
    }

    /// Asks that an edition which nobody could verify is asked for knowingly.
    pub fn edition(&mut self, edition: Edition, accepts_unverified: bool) {
        if !edition.is_verified() && !accepts_unverified {
            self.add(Pointer::to(&"/edition"), FaultCode::UnverifiedEdition, "fault-unverified-edition")
                .accepted = Edition::ALL
                .into_iter()
                .filter(|known| known.is_verified())
                .map(|known| known.year().to_owned())
                .collect();
        }
    }

    /// Asks that amendments name figures that can be amended, each once and within its bounds.
    pub fn amendments(&mut self, amendments: &[Amendment], edition: Edition, units: Units) {
        self.at_most(Pointer::to(&"/amendments"), amendments.len(), MOST_AMENDMENTS);
        let at = |index, member| Pointer::of(&"/amendments/#", index).member(member);
        for (index, amendment) in amendments.iter().enumerate() {
            let Some(amendable) = Amendable::find(amendment.figure.as_str()) else {
                self.add(at(index, &"/figure"), FaultCode::UnknownReference, "fault-not-amendable")
                    .accepted = AMENDABLE.iter().map(|amendable| amendable.figure.to_owned()).collect();
                continue;
            };
            if !Rulebook::of(edition).figures().any(|figure| figure.name == amendable.figure) {
                self.add(at(index, &"/figure"), FaultCode::Conflict, "fault-amendment-not-in-edition")
                    .arguments = vec![("edition", edition.year().to_owned())];
            }
            let most = amendable.most(units);
            if amendment.value < amendable.least || amendment.value > most {
                self.add(at(index, &"/value"), FaultCode::OutOfBounds, "fault-amendment-out-of-bounds")
                    .arguments = vec![("least", amendable.least.to_string()), ("most", most.to_string())];
            }
        }
        self.distinct_ids(
            amendments.iter().enumerate().map(|(index, one)| (one.figure.as_str(), at(index, &"/figure"))),
        );
    }

    /// Asks that a list has no more items than are taken.
    pub fn at_most(&mut self, at: Pointer, items: usize, most: usize) {
        if items > most {
            self.add(at, FaultCode::TooManyItems, "fault-too-many-items").arguments =
                vec![("items", items.to_string()), ("most", most.to_string())];
        }
    }

    /// Asks that no two things carry the same identifier.
    pub fn distinct_ids<'a>(&mut self, ids: impl Iterator<Item = (&'a str, Pointer)>) {
        let mut seen = std::collections::HashSet::new();
        for (id, at) in ids {
            if !seen.insert(id) {
                self.add(at, FaultCode::DuplicateId, "fault-duplicate-id").arguments =
                    vec![("id", id.to_owned())];
            }
        }
    }
}
