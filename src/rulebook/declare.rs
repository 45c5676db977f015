//! Macros by which each subject declares its rules and its figures, and the trait that lists the figures.

use super::{Edition, RuleFigure};
use crate::quantity::Decimal;
use crate::trade::ConductorSize;

/// The source of a rule for which nothing was read but the texts in the evidence.
pub(super) const RECALLED: &str = "nothing else was read";

/// Declares rules, and lists them as `RULES`: the id, the section, the basis and the source of each.
///
/// One section stands for every edition; a list has those of 2017, 2020 and 2023, with `-` for an edition without the rule. So with
/// the basis.
macro_rules! rules {
    ($($(#[$doc:meta])* $name:ident: $id:literal, $sections:tt, $bases:tt, $source:expr;)+) => {
        $(
            $(#[$doc])*
            pub static $name: $crate::rulebook::Rule = $crate::rulebook::Rule {
                id: $id,
                sections: rules!(@sections $sections),
                bases: rules!(@bases $bases),
                source: $source,
            };
        )+

        /// The rules of this subject.
        pub static RULES: &[&$crate::rulebook::Rule] = &[$(&$name),+];
    };
    (@sections [$($section:tt),+]) => { [$(rules!(@section $section)),+] };
    (@sections $section:literal) => { [Some($section); 3] };
    (@bases [$($basis:ident),+]) => { $crate::rulebook::Bases([$($crate::rulebook::Basis::$basis),+]) };
    (@bases $basis:ident) => { $crate::rulebook::Bases::all($crate::rulebook::Basis::$basis) };
    (@section -) => { None };
    (@section $section:literal) => { Some($section) };
}

/// Declares what an edition says on a subject. Every [`RuleFigure`] among the fields is thereby listed in the table of
/// figures.
macro_rules! subject {
    ($(
        $(#[$meta:meta])*
        pub struct $name:ident { $($(#[$doc:meta])* pub $field:ident: $kind:ty,)+ }
    )+) => {$(
        $(#[$meta])*
        #[derive(Clone, Debug, PartialEq, Eq, serde::Serialize)]
        pub struct $name { $($(#[$doc])* pub $field: $kind),+ }

        impl $crate::rulebook::declare::Figures for $name {
            fn list(&self, figures: &mut Vec<$crate::rulebook::RuleFigure>) {
                $($crate::rulebook::declare::Figures::list(&self.$field, figures);)+
            }
        }
    )+};
}

/// What may be a field of a subject.
pub(super) trait Figures {
    /// Adds the figures that it holds to a list; a datum that is no figure adds none.
    fn list(&self, _figures: &mut Vec<RuleFigure>) {}
}

impl Figures for RuleFigure {
    fn list(&self, figures: &mut Vec<RuleFigure>) {
        figures.push(*self);
    }
}

impl<T: Figures> Figures for Option<T> {
    fn list(&self, figures: &mut Vec<RuleFigure>) {
        self.iter().for_each(|held| held.list(figures));
    }
}

impl Figures for bool {}
impl Figures for ConductorSize {}
impl Figures for Decimal {}
impl Figures for Edition {}
