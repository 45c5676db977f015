//! Looks for inputs that break what reads a request; see [`readers`].

#![no_main]

mod readers;

libfuzzer_sys::fuzz_target!(|input: &[u8]| readers::read(input));
