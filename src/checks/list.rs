//! The one list of checks. Whatever is done with every check is a macro that reads it.

/// Hands the list of checks to a macro, after arguments of its own: first the checks that are teachable, then the others,
/// in the order in which they are documented. A line has the type, how the service registers it (`drawn` where its answers
/// can be drawn, `of` where not), and the keys of its title and of what it is for.
#[macro_export]
macro_rules! for_each_check {
    (($($callback:tt)+) $($arguments:tt)*) => {
        $($callback)+! {
            ($($arguments)*)
            teachable {
                $crate::checks::outlet_fill::OutletFill, drawn, "text-outlet-box-fill-title", "text-outlet-box-fill";
                $crate::checks::pull_box::PullBox, drawn, "text-pull-box-title", "text-pull-box";
                $crate::checks::conduit_body::ConduitBodyCheck, drawn, "text-conduit-body-title", "text-conduit-body";
                $crate::checks::raceway_fill::RacewayFill, drawn, "text-raceway-fill-title", "text-raceway-fill";
                $crate::checks::free_conductors::FreeConductors, of, "text-free-conductors-title", "text-free-conductors";
                $crate::checks::box_depths::BoxDepths, of, "text-box-depths-title", "text-box-depths";
                $crate::checks::box_supports::BoxSupports, of, "text-box-supports-title", "text-box-supports";
                $crate::checks::box_mounting::BoxMounting, of, "text-box-mounting-title", "text-box-mounting";
                $crate::checks::box_construction::BoxConstruction, of, "text-box-construction-title", "text-box-construction";
                $crate::checks::luminaire_and_fan_outlets::LuminaireAndFanOutlets, of, "text-luminaire-outlets-title", "text-luminaire-outlets";
            }
            other {
                $crate::checks::enclosure_types::EnclosureTypes, of, "text-enclosure-types-title", "text-enclosure-types";
            }
        }
    };
}

/// An array with one value a check, in which a name stands for its type.
///
/// ```
/// use elbowroom::checks::Check;
/// let names = elbowroom::of_each_check!(C => C::NAME);
/// assert!(names.contains(&"raceway_fill"));
/// ```
#[macro_export]
macro_rules! of_each_check {
    ($name:ident => $each:expr) => { $crate::for_each_check!(($crate::of_each_check) $name, $each) };
    (
        ($name:ident, $each:expr)
        teachable { $($teachable:ty, $_how:ident, $_title:literal, $_purpose:literal;)* }
        other { $($other:ty, $_otherwise:ident, $_other_title:literal, $_other_purpose:literal;)* }
    ) => {
        [$({ type $name = $teachable; $each },)* $({ type $name = $other; $each },)*]
    };
}

/// As [`of_each_check!`], for the checks that are teachable.
#[macro_export]
macro_rules! of_each_teachable_check {
    ($name:ident => $each:expr) => { $crate::for_each_check!(($crate::of_each_teachable_check) $name, $each) };
    (
        ($name:ident, $each:expr)
        teachable { $($teachable:ty, $_how:ident, $_title:literal, $_purpose:literal;)* }
        other { $($_other:tt)* }
    ) => {
        [$({ type $name = $teachable; $each },)*]
    };
}
