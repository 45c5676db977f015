//! Exact decimals with units.
//!
//! **Invariant:** binary floating point is named only here and in [`json`](crate::json), where JSON numbers are read and
//! written.

mod conversion;
mod counted;
mod decimal;
mod measured;
mod offset;
mod unit;

pub(crate) use conversion::converts;
pub use conversion::{Conversion, Convert};
pub use counted::Count;
pub use decimal::{Decimal, NotADecimal};
pub use measured::{Area, DECIMALS, Length, Volume, Weight, has_at_most_decimals};
pub use offset::Offset;
pub use unit::{Measure, Unit, Units};
