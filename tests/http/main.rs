//! The service over HTTP, one module a part of it; and the process around it.

#![expect(clippy::unwrap_used, clippy::panic, reason = "a test that cannot go on fails where it stands")]

mod catalogue;
mod check;
mod combined;
mod documentation;
mod examples;
mod faults;
mod health;
mod language;
mod openapi;
mod problems;
mod process;
mod readme;
mod schema_agreement;
mod support;
mod takeoff_command;
mod takeoffs;
mod training;
