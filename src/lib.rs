//! One audited rules engine for the electrical trade's boxes and enclosures.
//!
//! The arrows point one way:
//! [`json`] ← [`quantity`] ← [`trade`] ← [`tables`] ← [`rulebook`] ← [`derivation`] ← [`checks`] ← [`i18n`] ← [`answers`] ←
//! [`takeoff`], [`training`], [`drawing`], [`audit`] ← [`service`] ← [`command`].
//!
//! | module | what it is for |
//! |---|---|
//! | [`json`] | JSON text, written fast |
//! | [`quantity`] | exact decimals with units |
//! | [`trade`] | conductor sizes, trade sizes, the nouns of the trade |
//! | [`tables`] | the published tables with their provenance |
//! | [`rulebook`] | what each edition says, as data |
//! | [`derivation`] | proofs: built step by step, replayed, written out |
//! | [`checks`] | one module a check, behind one trait |
//! | [`i18n`] | every sentence that a person reads, from message catalogues |
//! | [`content_policy`] | content security policies (CSP) of pages and drawings |
//! | [`comparison`] | one request under several editions |
//! | [`answers`] | the form that every answer has |
//! | [`takeoff`] | many checks at once: lines, tables in trade words, what they add up to |
//! | [`rng`] | the seeded generator that exercises and the demo are pinned to |
//! | [`training`] | exercises, answer keys, and why an answer is wrong |
//! | [`drawing`] | pictures of boxes and raceways, to scale |
//! | [`audit`] | the conformance cases, run against the engine that holds them |
//! | [`service`] | HTTP: routes, problems, limits, the OpenAPI document |
//! | [`command`] | the command line |
//!
//! Everything left of `service` is pure: no clock, no network, no files, no state that changes. It compiles without
//! any HTTP or async crate (`--no-default-features`).

pub mod answers;
pub mod audit;
pub mod checks;
#[cfg(feature = "service")]
pub mod command;
pub mod comparison;
pub mod content_policy;
pub mod derivation;
pub mod drawing;
pub mod i18n;
pub mod json;
pub mod quantity;
pub mod rng;
pub mod rulebook;
#[cfg(feature = "service")]
pub mod service;
pub mod tables;
pub mod takeoff;
pub mod trade;
pub mod training;
