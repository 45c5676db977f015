//! The command line: parse arguments, call the library, nothing else.

use elbowroom::command;
use std::process::ExitCode;

fn main() -> ExitCode {
    command::main()
}
