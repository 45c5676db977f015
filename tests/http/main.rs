//! The service over HTTP, one module a part of it; and the process around it.

#![expect(clippy::unwrap_used, clippy::panic, reason = "a test that cannot go on fails where it stands")]

mod catalogue;
mod check;
mod documentation;
mod examples;
mod faults;
mod health;
mod openapi;
mod problems;
mod process;
mod schema_agreement;
mod support;
mod takeoff_command;
mod takeoffs;
