//! The command line: `serve` (the default), `check FILE`, `takeoff FILE`, `demo`, `audit`, `keys`, `healthcheck`, `openapi`.

mod audit;
mod check;
mod demo;
mod healthcheck;
mod keys;
mod language;
mod report;
mod serve;
mod takeoff;

use clap::builder::{PossibleValuesParser, TypedValueParser};
use clap::{Parser, Subcommand};
use std::io::{self, Write};
use std::process::ExitCode;

/// Exit statuses: those of a check, and those of `sysexits.h` for what could not be done.
mod status {
    /// It complies, or only a size was asked for.
    pub const COMPLIES: u8 = 0;
    /// It violates a rule.
    pub const VIOLATES: u8 = 1;
    /// A rule applies that could not be decided.
    pub const NOT_DETERMINED: u8 = 2;
    /// The arguments or the request are wrong (EX_USAGE).
    pub const USAGE: u8 = 64;
    /// Lines of a takeoff were refused (EX_DATAERR).
    pub const REFUSED: u8 = 65;
    /// A file cannot be read (EX_NOINPUT).
    pub const NO_INPUT: u8 = 66;
    /// The service cannot be reached, or gave up (EX_UNAVAILABLE).
    pub const UNAVAILABLE: u8 = 69;
    /// The program itself has a fault (EX_SOFTWARE).
    pub const SOFTWARE: u8 = 70;
    /// The operating system refuses (EX_OSERR).
    pub const SYSTEM: u8 = 71;
    /// The settings are wrong (EX_CONFIG).
    pub const CONFIGURATION: u8 = 78;
}

/// Audited box and enclosure calculations for the electrical trade, over HTTP.
#[derive(Debug, Parser)]
#[command(name = "elbowroom", version, args_conflicts_with_subcommands = true)]
struct Arguments {
    #[command(subcommand)]
    command: Option<Command>,
    #[command(flatten)]
    serve: serve::ServeArguments,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// Serve over HTTP (the default).
    Serve(serve::ServeArguments),
    /// Evaluate a request file without a server.
    ///
    /// Exit status: 0 complies or only a size was asked for, 1 violates, 2 not determined, 64 the request or the
    /// arguments are wrong, 66 the file cannot be read.
    Check(check::CheckArguments),
    /// Evaluate a whole takeoff, here or by a service.
    ///
    /// Every line is answered in order, a line that is wrong with what is wrong, and a summary stands at the end. Exit
    /// status: 0 everything complies or only sizes were asked for, 1 something violates a rule, 2 nothing violates but
    /// something is not determined, 65 lines were refused (whatever the others came to), 64 the takeoff as a whole or the
    /// arguments are wrong, 66 the file cannot be read to its end, 69 the service cannot be reached or gave up.
    Takeoff(takeoff::TakeoffArguments),
    /// Print an invented takeoff: the boxes and raceways of a small clinic, one a line.
    Demo(demo::DemoArguments),
    /// Run the conformance cases that are part of the program.
    ///
    /// Exit status: 0 everything agrees, 70 something differs.
    Audit(audit::AuditArguments),
    /// Make keys for callers.
    #[command(subcommand)]
    Keys(keys::KeysCommand),
    /// Ask the service that runs with the same settings whether it is ready; exit status 0 when it is.
    Healthcheck(serve::ServeArguments),
    /// Print the OpenAPI document.
    Openapi,
}

/// Runs the command that the arguments name.
pub fn main() -> ExitCode {
    let arguments = match Arguments::try_parse() {
        Ok(arguments) => arguments,
        Err(error) => {
            let asked_for = !error.use_stderr();
            // a closed output leaves nobody to tell
            let _ = error.print();
            return if asked_for { ExitCode::SUCCESS } else { status::USAGE.into() };
        }
    };
    match arguments.command.unwrap_or(Command::Serve(arguments.serve)) {
        Command::Serve(arguments) => serve::run(&arguments),
        Command::Check(arguments) => check::run(&arguments),
        Command::Takeoff(arguments) => takeoff::run(arguments),
        Command::Demo(arguments) => demo::run(&arguments),
        Command::Audit(arguments) => audit::run(&arguments),
        Command::Keys(command) => keys::run(&command),
        Command::Healthcheck(arguments) => healthcheck::run(&arguments),
        Command::Openapi => print(crate::service::openapi::text(), ExitCode::SUCCESS),
    }
}

/// Reads one of several names.
fn one_of<T: Clone + Send + Sync + 'static>(
    names: impl IntoIterator<Item = &'static str>,
    named: fn(&str) -> Option<T>,
) -> impl TypedValueParser<Value = T> {
    PossibleValuesParser::new(names).try_map(move |name| named(&name).ok_or("no such value"))
}

/// Prints to standard output; a reader that has gone away is no failure.
fn print(text: &str, status: ExitCode) -> ExitCode {
    let mut output = io::stdout().lock();
    match output.write_all(text.as_bytes()).and_then(|()| output.flush()) {
        Err(error) if error.kind() != io::ErrorKind::BrokenPipe => complain(&error, status::SYSTEM),
        _ => status,
    }
}

/// Says on standard error what went wrong.
fn complain(what: &dyn std::fmt::Display, status: u8) -> ExitCode {
    // a closed output leaves nobody to tell
    let _ = writeln!(io::stderr().lock(), "elbowroom: {what}");
    status.into()
}
