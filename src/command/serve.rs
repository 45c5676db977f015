//! `elbowroom serve`.

use super::{complain, print, status};
use crate::service::run::{self, BoundAddresses, RunFault};
use crate::service::settings::list::{Form, SETTINGS};
use crate::service::settings::{self, SettingFault, Settings, Values};
use clap::parser::ValueSource;
use clap::{Arg, ArgAction, ArgMatches, Args, Command, Error, FromArgMatches};
use std::collections::BTreeMap;
use std::path::PathBuf;
use std::process::ExitCode;
use std::{env, fs, panic};

/// How the service is reached and what it allows, as the command line says it.
#[derive(Clone, Debug, Default)]
pub struct ServeArguments {
    flags: BTreeMap<&'static str, String>,
    file: Option<PathBuf>,
    print: bool,
}

impl Args for ServeArguments {
    fn augment_args(command: Command) -> Command {
        let command = command
            .arg(
                Arg::new("settings")
                    .long("settings")
                    .value_name("FILE")
                    .env("ELBOWROOM_SETTINGS")
                    .value_parser(clap::value_parser!(PathBuf))
                    .help("Read settings from this file (TOML); the environment and flags outweigh it"),
            )
            .arg(
                Arg::new("print-settings")
                    .long("print-settings")
                    .action(ArgAction::SetTrue)
                    .help("Print the settings in force, without secrets, and end"),
            );
        SETTINGS.iter().fold(command, |command, setting| {
            let default = if setting.default.is_empty() {
                String::new()
            } else {
                format!(", default: {}", setting.default)
            };
            let help = format!("{} [env: {}{default}]", setting.help, setting.variable());
            let arg = Arg::new(setting.name).long(setting.name).help(help);
            command.arg(match setting.form {
                Form::Switch => arg.action(ArgAction::SetTrue),
                _ => arg.value_name(setting.value),
            })
        })
    }

    fn augment_args_for_update(command: Command) -> Command {
        Self::augment_args(command)
    }
}

impl FromArgMatches for ServeArguments {
    fn from_arg_matches(matches: &ArgMatches) -> Result<Self, Error> {
        let mut arguments = Self::default();
        arguments.update_from_arg_matches(matches)?;
        Ok(arguments)
    }

    fn update_from_arg_matches(&mut self, matches: &ArgMatches) -> Result<(), Error> {
        for setting in SETTINGS {
            if matches.value_source(setting.name) != Some(ValueSource::CommandLine) {
                continue;
            }
            let text = match setting.form {
                Form::Switch => Some("true".to_owned()),
                _ => matches.get_one::<String>(setting.name).cloned(),
            };
            self.flags.extend(text.map(|text| (setting.name, text)));
        }
        self.file = matches.get_one::<PathBuf>("settings").cloned();
        self.print = matches.get_flag("print-settings");
        Ok(())
    }
}

impl ServeArguments {
    /// The settings in force and where each comes from; or everything that is wrong with them.
    pub fn settings(&self) -> Result<(Values, Settings), Vec<SettingFault>> {
        let mut faults = Vec::new();
        let file = self.file.as_ref().and_then(|path| {
            fs::read_to_string(path)
                .map_err(|error| faults.push(SettingFault::of_file(&format!("{}: {error}", path.display()))))
                .ok()
        });
        let values = Values::gather(&self.flags, |name| env::var(name).ok(), file.as_deref(), &mut faults);
        let settings = Settings::read(&values, faults)?;
        Ok((values, settings))
    }
}

/// Serves until told to stop.
pub fn run(arguments: &ServeArguments) -> ExitCode {
    let (values, settings) = match arguments.settings() {
        Ok(read) => read,
        Err(faults) => return complain_of_each(faults.iter().map(ToString::to_string)),
    };
    if arguments.print {
        return print(&settings::shown(&values, &settings), ExitCode::SUCCESS);
    }
    settings.log_form.begin(&settings.log);
    // the place of a panic, never its message: that could hold part of a request
    panic::set_hook(Box::new(|panic| {
        let place = panic.location().map(ToString::to_string).unwrap_or_default();
        tracing::error!(place, "panic");
    }));
    let listening = |reached: BoundAddresses| {
        let metrics = reached.metrics.map(|address| format!("; metrics: http://{address}/metrics"));
        let (base, documentation) = (reached.base(), reached.documentation());
        let metrics = metrics.unwrap_or_default();
        print(
            &format!("elbowroom listens on {base}; page: {base}/; documentation: {documentation}{metrics}\n"),
            ExitCode::SUCCESS,
        );
    };
    match run::serve(&settings, listening) {
        Ok(()) => ExitCode::SUCCESS,
        Err(RunFault::Files(faults)) => complain_of_each(faults.into_iter()),
        Err(fault @ (RunFault::Bind(..) | RunFault::System(_))) => complain(&fault, status::SYSTEM),
        Err(fault @ RunFault::Start(_)) => complain(&fault, status::SOFTWARE),
    }
}

fn complain_of_each(faults: impl Iterator<Item = String>) -> ExitCode {
    faults.fold(ExitCode::SUCCESS, |_, fault| complain(&fault, status::CONFIGURATION))
}
