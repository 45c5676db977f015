//! What every request carries: edition, units, the caller's mark, amendments and interpretations.

use super::Terms;
use crate::quantity::{Conversion, Convert};
use crate::rulebook::reading::Readings;
use serde::de::DeserializeOwned;
use utoipa::ToSchema;

/// The request of a check, as [`request!`] declares it.
pub trait Request: Convert + Clone + DeserializeOwned + ToSchema + 'static {
    /// Edition, units, the caller's mark, amendments.
    fn terms(&self) -> Terms<'_>;

    /// The readings that the request chooses, on top of those given.
    fn readings(&self, readings: Readings) -> Readings;

    /// The same request in the other system of units, but for its amendments, which a rulebook holds.
    fn in_other_units(&self, by: &Conversion) -> Self;
}

/// Declares the request of a check: what every request carries, and then what this one asks. `units` says of which figures
/// they are the units; `interpretations` stands where the check has disputed points of its own.
macro_rules! request {
    (
        @declare [$interpretations:ty] [$($units_doc:literal)+]
        $(#[doc = $doc:literal])+
        pub struct $name:ident { $($members:tt)* }
    ) => {
        $(#[doc = $doc])+
        #[derive(Clone, Debug, PartialEq, Eq, serde::Serialize, serde::Deserialize, utoipa::ToSchema)]
        #[serde(deny_unknown_fields)]
        pub struct $name {
            /// The edition of NFPA 70.
            #[serde(default)]
            pub edition: $crate::rulebook::Edition,
            /// Accept rules that could not be verified. Required to be true for the 2026 edition, whose text was not available.
            #[serde(default)]
            pub accept_unverified_rules: bool,
            $(#[doc = $units_doc])+
            #[serde(default)]
            pub units: $crate::quantity::Units,
            /// The caller's own mark.
            pub reference: Option<$crate::checks::Reference>,
            /// Local amendments to figures of the rules, each with the caller's citation.
            #[serde(default)]
            #[schema(max_items = 200)]
            pub amendments: Vec<$crate::checks::Amendment>,
            /// How disputed points are to be read, where not in the default way.
            pub interpretations: Option<$interpretations>,
            $($members)*
        }

        impl $crate::checks::Request for $name {
            fn terms(&self) -> $crate::checks::Terms<'_> {
                $crate::checks::Terms {
                    edition: self.edition,
                    accept_unverified_rules: self.accept_unverified_rules,
                    units: self.units,
                    reference: self.reference.as_ref().map($crate::checks::Reference::as_str),
                    amendments: &self.amendments,
                }
            }

            fn readings(&self, readings: $crate::rulebook::reading::Readings) -> $crate::rulebook::reading::Readings {
                match &self.interpretations {
                    Some(chosen) => <$interpretations>::apply(chosen, readings),
                    None => readings,
                }
            }

            fn in_other_units(&self, by: &$crate::quantity::Conversion) -> Self {
                let mut other = self.clone();
                other.units = by.to;
                $crate::quantity::Convert::convert(&mut other, by);
                other
            }
        }
    };
    (
        $(#[doc = $doc:literal])+
        pub struct $name:ident {
            $(#[doc = $units_doc:literal])+
            units,
            interpretations: $interpretations:ty,
            $($members:tt)*
        }
    ) => {
        $crate::checks::request::request! {
            @declare [$interpretations] [$($units_doc)+] $(#[doc = $doc])+ pub struct $name { $($members)* }
        }
    };
    (
        $(#[doc = $doc:literal])+
        pub struct $name:ident {
            $(#[doc = $units_doc:literal])+
            units,
            $($members:tt)*
        }
    ) => {
        $crate::checks::request::request! {
            @declare [$crate::checks::UnitsInterpretations] [$($units_doc)+]
            $(#[doc = $doc])+ pub struct $name { $($members)* }
        }
    };
}

/// Declares how disputed points of a check are to be read: each member names a point, and holds the reading that is chosen.
macro_rules! interpretations {
    (
        $(#[doc = $doc:literal])+
        pub struct $name:ident { $($(#[doc = $member_doc:literal])+ $member:ident: $point:ty,)* }
    ) => {
        $(#[doc = $doc])+
        #[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize, serde::Deserialize, utoipa::ToSchema)]
        #[serde(deny_unknown_fields)]
        pub struct $name {
            $($(#[doc = $member_doc])+ pub $member: Option<$point>,)*
            /// Whether a demand is met where it is met in either system of units, or only in that of the request.
            pub units: Option<$crate::rulebook::reading::UnitsOfMeasure>,
        }

        impl $name {
            /// The readings that are chosen, on top of those given.
            pub fn apply(&self, readings: $crate::rulebook::reading::Readings) -> $crate::rulebook::reading::Readings {
                readings$(.choose(self.$member))*.choose(self.units)
            }
        }
    };
}

pub(crate) use {interpretations, request};

interpretations! {
    /// How disputed points are to be read, for a check that has none of its own.
    pub struct UnitsInterpretations {}
}
