//! `elbowroom keys new`.

use super::{complain, print, status};
use crate::service::keys::file::{is_name, read, scope_fault};
use crate::service::keys::{timestamp, token};
use crate::service::operations::Operations;
use clap::{Args, Subcommand};
use jiff::{SignedDuration, Timestamp};
use std::fs::{self, OpenOptions};
use std::io::{self, Write};
use std::os::unix::fs::OpenOptionsExt;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

/// What is done with keys.
#[derive(Clone, Debug, Subcommand)]
pub enum KeysCommand {
    /// Make a key, add it to the file and print its token: once, for only its hash is kept.
    New(NewArguments),
}

/// What the new key is to have.
#[derive(Clone, Debug, Args)]
pub struct NewArguments {
    /// The file of keys; made when it is not there.
    #[arg(long, env = "ELBOWROOM_KEYS", value_name = "FILE")]
    keys: PathBuf,
    /// The name of the key: 1 to 64 letters, digits, '.', '_' or '-'.
    #[arg(long, value_name = "NAME", value_parser = name)]
    name: String,
    /// What it is for: the name of a check, or '*' for everything. Give it as often as needed.
    #[arg(long = "scope", value_name = "SCOPE", required = true)]
    scopes: Vec<String>,
    /// Requests a minute.
    #[arg(long, value_name = "COUNT", value_parser = clap::value_parser!(u32).range(1..=10_000_000))]
    quota: Option<u32>,
    /// When it expires: a date, a date with time and offset, or a number of days such as 90d.
    #[arg(long, value_name = "WHEN", value_parser = end)]
    expires: Option<Timestamp>,
}

fn name(text: &str) -> Result<String, String> {
    let wrong = "1 to 64 letters, digits, '.', '_' or '-'";
    if is_name(text) { Ok(text.to_owned()) } else { Err(wrong.to_owned()) }
}

fn end(text: &str) -> Result<Timestamp, String> {
    let days = text.strip_suffix('d').and_then(|days| days.parse().ok());
    let days = days.filter(|days| (1..=36_500).contains(days));
    let end = days.map_or_else(
        || timestamp::parse(text),
        |days: i64| Timestamp::now().checked_add(SignedDuration::from_hours(24 * days)).ok(),
    );
    match end {
        Some(end) if end > Timestamp::now() => Ok(end),
        Some(_) => Err("is in the past".to_owned()),
        None => Err("a date such as 2027-01-31, or days such as 90d".to_owned()),
    }
}

/// Does what is asked.
pub fn run(command: &KeysCommand) -> ExitCode {
    let KeysCommand::New(arguments) = command;
    let scopes: Vec<String> = Operations::of_the_service().scopes().map(str::to_owned).collect();
    if let Some(wrong) = arguments.scopes.iter().find_map(|scope| scope_fault(scope, &scopes)) {
        return complain(&format!("{wrong}; scopes: *, {}", scopes.join(", ")), status::USAGE);
    }
    let new = token::NewKey {
        name: arguments.name.clone(),
        scopes: arguments.scopes.clone(),
        quota: arguments.quota,
        expires: arguments.expires,
    };
    let Some(made) = token::make(&new) else {
        return complain(&"the system gives no random numbers", status::SYSTEM);
    };
    match add(&arguments.keys, &made.lines, &scopes) {
        Ok(()) => print(&format!("{}\n", made.token), ExitCode::SUCCESS),
        Err(AddFault::File(error)) => {
            complain(&format!("{}: {error}", arguments.keys.display()), status::SYSTEM)
        }
        Err(AddFault::Keys(fault)) => complain(&fault, status::CONFIGURATION),
    }
}

enum AddFault {
    File(io::Error),
    Keys(String),
}

/// Adds lines to the file of keys, whole or not at all: it is read as one before it takes the place of the old one.
fn add(path: &Path, lines: &str, scopes: &[String]) -> Result<(), AddFault> {
    let mut text = match fs::read_to_string(path) {
        Ok(text) => text,
        Err(error) if error.kind() == io::ErrorKind::NotFound => String::new(),
        Err(error) => return Err(AddFault::File(error)),
    };
    if !text.is_empty() {
        text.push_str(if text.ends_with('\n') { "\n" } else { "\n\n" });
    }
    text.push_str(lines);
    read(&text, scopes).map_err(|faults| AddFault::Keys(faults.join("\n")))?;
    let mut beside = path.as_os_str().to_owned();
    beside.push(".new");
    let write = || -> io::Result<()> {
        let mut file = OpenOptions::new().write(true).create_new(true).mode(0o600).open(&beside)?;
        file.write_all(text.as_bytes())?;
        if let Ok(old) = fs::metadata(path) {
            file.set_permissions(old.permissions())?;
        }
        file.sync_all()?;
        fs::rename(&beside, path)
    };
    write().map_err(|error| {
        // a file that another process is writing is left alone
        if error.kind() != io::ErrorKind::AlreadyExists {
            let _ = fs::remove_file(&beside);
        }
        AddFault::File(error)
    })
}
