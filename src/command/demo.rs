//! `elbowroom demo`.

use super::{complain, status};
use crate::takeoff::demo::Job;
use clap::Args;
use std::io::{self, BufWriter, Write};
use std::process::ExitCode;

/// Which job is invented.
#[derive(Clone, Copy, Debug, Args)]
pub struct DemoArguments {
    /// How many boxes it has. A raceway comes with every twelfth.
    #[arg(long, value_name = "NUMBER", default_value_t = 2000)]
    boxes: u64,
    /// Which of the many possible jobs: the same seed is the same job.
    #[arg(long, value_name = "NUMBER", default_value_t = 1)]
    seed: u64,
}

/// Prints the takeoff as NDJSON.
pub fn run(arguments: &DemoArguments) -> ExitCode {
    let mut output = BufWriter::new(io::stdout().lock());
    let written = Job::new(arguments.boxes, arguments.seed)
        .try_for_each(|line| writeln!(output, "{line}"))
        .and_then(|()| output.flush());
    match written {
        Err(error) if error.kind() != io::ErrorKind::BrokenPipe => complain(&error, status::SYSTEM),
        _ => ExitCode::SUCCESS,
    }
}
