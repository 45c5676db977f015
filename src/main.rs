//! The command line: parse arguments, call the library, nothing else.

fn main() {}
