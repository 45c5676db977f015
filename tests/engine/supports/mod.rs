//! What must hold for every request about supports, outlets and enclosure types, and which requests are refused.

mod faults;
mod properties;
mod requests;
