//! `elbowroom serve`.

use super::{complain, print, status};
use crate::service::run::{self, BoundAddresses, RunFault};
use crate::service::settings::{Settings, Sources, sources};
use clap::{ArgMatches, Args, Command, Error, FromArgMatches};
use std::path::PathBuf;
use std::process::ExitCode;
use std::{fs, panic};

#[derive(Args, Clone, Debug)]
struct FileArguments {
    /// Read settings from this file (TOML); flags and the environment take precedence
    #[arg(long, env = "ELBOWROOM_SETTINGS", value_name = "FILE")]
    settings: Option<PathBuf>,
    /// Print the settings in force and where each comes from, without secrets, and exit
    #[arg(long)]
    print_settings: bool,
}

/// The settings as the command line gives them, not parsed yet.
#[derive(Clone, Debug)]
pub struct ServeArguments {
    file: FileArguments,
    flags: ArgMatches,
}

impl Args for ServeArguments {
    fn augment_args(command: Command) -> Command {
        FileArguments::augment_args(command).args(sources::flags())
    }

    fn augment_args_for_update(command: Command) -> Command {
        Self::augment_args(command)
    }
}

impl FromArgMatches for ServeArguments {
    fn from_arg_matches(matches: &ArgMatches) -> Result<Self, Error> {
        Ok(Self { file: FileArguments::from_arg_matches(matches)?, flags: matches.clone() })
    }

    fn update_from_arg_matches(&mut self, matches: &ArgMatches) -> Result<(), Error> {
        *self = Self::from_arg_matches(matches)?;
        Ok(())
    }
}

impl ServeArguments {
    /// The settings in force and where each comes from; or everything that is wrong with them.
    pub fn settings(&self) -> Result<(Sources, Settings), Vec<String>> {
        let mut faults = Vec::new();
        let file = self.file.settings.as_ref().map(|path| {
            fs::read_to_string(path).unwrap_or_else(|error| {
                faults.push(format!("settings file: {}: {error}", path.display()));
                String::new()
            })
        });
        let sources = Sources::gather(&self.flags, &file.unwrap_or_default(), &mut faults);
        let settings = sources.settings(faults)?;
        Ok((sources, settings))
    }
}

/// Serves until the shutdown signal.
pub fn run(arguments: &ServeArguments) -> ExitCode {
    let (sources, settings) = match arguments.settings() {
        Ok(settings) => settings,
        Err(faults) => return complain_of_each(&faults),
    };
    if arguments.file.print_settings {
        return print(&sources.to_string(), ExitCode::SUCCESS);
    }
    settings.log_format.begin(&settings.log);
    // the location of a panic, never its message: that could hold part of a request
    panic::set_hook(Box::new(|panic| {
        let location = panic.location().map(ToString::to_string).unwrap_or_default();
        tracing::error!(location, "panic");
    }));
    let listening = |addresses: BoundAddresses| {
        let metrics = addresses.metrics.map(|address| format!("; metrics: http://{address}/metrics"));
        let (base, documentation) = (addresses.base(), addresses.documentation());
        let metrics = metrics.unwrap_or_default();
        print(
            &format!(
                "elbowroom is listening on {base}; page: {base}/; documentation: {documentation}{metrics}\n"
            ),
            ExitCode::SUCCESS,
        );
    };
    match run::serve(&settings, listening) {
        Ok(()) => ExitCode::SUCCESS,
        Err(RunFault::Files(faults)) => complain_of_each(&faults),
        Err(fault @ (RunFault::Bind(..) | RunFault::System(_))) => complain(&fault, status::SYSTEM),
        Err(fault @ RunFault::Start(_)) => complain(&fault, status::SOFTWARE),
    }
}

fn complain_of_each(faults: &[String]) -> ExitCode {
    faults.iter().fold(ExitCode::SUCCESS, |_, fault| complain(fault, status::CONFIGURATION))
}
