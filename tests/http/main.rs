//! The service over HTTP, one module a part of it; and the process around it.

#![expect(clippy::unwrap_used, clippy::panic, reason = "a test that cannot go on fails where it stands")]

mod access;
mod catalogue;
mod certificates;
mod check;
mod combined;
mod connections;
#[path = "../corpus/mod.rs"]
mod corpus;
mod documentation;
mod drawings;
mod examples;
mod faults;
mod fuzz_corpus;
mod health;
mod keys;
mod language;
mod links;
mod openapi;
mod problems;
mod process;
mod readme;
mod schema_agreement;
mod self_audit;
mod settings;
mod shutdown;
mod soundness;
mod support;
#[cfg(feature = "client")]
mod takeoff_client;
mod takeoff_command;
mod takeoffs;
mod telemetry;
mod tls;
mod training;
mod ui;
