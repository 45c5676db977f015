//! Where the values in force come from: flags over the environment over the settings file over the defaults.
//!
//! clap stops at the first value that is wrong, but an operator wants to see all. So values are first gathered as text, each
//! is then parsed alone by the parser of its field, and only without a fault all of them together.

use super::{Settings, values};
use crate::service::fault_list::nearest;
use clap::builder::Resettable;
use clap::parser::ValueSource;
use clap::{Arg, ArgAction, ArgMatches, Args, Command, FromArgMatches, value_parser};
use std::error::Error;
use std::fmt;
use toml::{Table, Value};

/// Requests a minute from one address when others can reach the service and nothing else is set.
const EXPOSED_RATE_LIMIT: &str = "6000";

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Source {
    Default,
    File,
    Environment,
    Flag,
}

impl fmt::Display for Source {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Default => "default",
            Self::File => "settings file",
            Self::Environment => "environment",
            Self::Flag => "flag",
        })
    }
}

/// A setting and its value in force, as text: empty when there is none, lists separated by commas.
#[derive(Debug)]
struct Given {
    arg: Arg,
    text: String,
    source: Source,
}

/// Every setting with its value in force.
#[derive(Debug)]
pub struct Sources(Vec<Given>);

fn definitions() -> Vec<Arg> {
    let command = Settings::augment_args(Command::new("settings"));
    command.get_arguments().cloned().collect()
}

/// The flags of all settings, which take any text.
pub fn flags() -> impl Iterator<Item = Arg> {
    let flag =
        |arg: Arg| arg.value_parser(value_parser!(String)).value_delimiter(None).action(ArgAction::Set);
    definitions().into_iter().map(flag)
}

impl Sources {
    /// Gathers the values of [`flags`], with the environment, and those of the text of the settings file.
    pub fn gather(flags: &ArgMatches, file: &str, faults: &mut Vec<String>) -> Self {
        let table = file.parse::<Table>().unwrap_or_else(|error| {
            // its own text would show the line, which may hold a secret
            let before = error.span().and_then(|span| file.get(..span.start)).unwrap_or_default();
            let line = before.matches('\n').count() + 1;
            faults.push(format!("settings file: line {line}: {}", error.message()));
            Table::new()
        });
        let definitions = definitions();
        for member in table.keys() {
            let known = || definitions.iter().map(|arg| arg.get_id().as_str());
            if !known().any(|name| name == member) {
                let hint = nearest(member, known()).map(|near| format!("; did you mean {near}?"));
                faults.push(format!("settings file: unknown setting {member}{}", hint.unwrap_or_default()));
            }
        }
        let given = |arg: Arg| {
            let name = arg.get_id().as_str();
            let text = flags.get_one::<String>(name).cloned().unwrap_or_default();
            let (text, source) = match (flags.value_source(name), table.get(name)) {
                (Some(ValueSource::CommandLine), _) => (text, Source::Flag),
                (Some(ValueSource::EnvVariable), _) => (text, Source::Environment),
                (_, Some(value)) => (text_of(value, &arg), Source::File),
                _ => (text, Source::Default),
            };
            Given { arg, text, source }
        };
        let mut sources = Self(definitions.iter().cloned().map(given).collect());
        let is_exposed = sources.is_exposed();
        let rate_limit = sources.0.iter_mut().find(|given| given.arg.get_id() == "rate_limit");
        if let Some(given) = rate_limit.filter(|given| is_exposed && given.source == Source::Default) {
            EXPOSED_RATE_LIMIT.clone_into(&mut given.text);
        }
        sources
    }

    fn text(&self, name: &str) -> Option<&str> {
        let given = self.0.iter().find(|given| given.arg.get_id() == name);
        given.map(|given| given.text.as_str()).filter(|text| !text.is_empty())
    }

    fn is_exposed(&self) -> bool {
        let bind = self.text("bind").and_then(|text| values::address(text).ok());
        bind.is_some_and(|bind| !bind.ip().is_loopback())
    }

    /// Parses every value; or says everything that is wrong, after the faults given.
    pub fn settings(&self, mut faults: Vec<String>) -> Result<Settings, Vec<String>> {
        faults.extend(self.0.iter().filter_map(Given::fault));
        let has_keys = self.text("keys").is_some();
        match self.text("without_keys") {
            Some("false") if self.is_exposed() && !has_keys => faults.push(
                "others can reach the address of --bind: give --keys, or --without-keys to let anyone in"
                    .to_owned(),
            ),
            Some("true") if has_keys => {
                faults.push("--keys and --without-keys contradict each other".to_owned());
            }
            _ => {}
        }
        if self.text("tls_certificate").is_some() != self.text("tls_key").is_some() {
            faults.push("--tls-certificate and --tls-key need each other".to_owned());
        }
        if !faults.is_empty() {
            return Err(faults);
        }
        let given = self.0.iter().filter(|given| !given.text.is_empty()).map(Given::as_flag);
        // the environment has been read; an empty variable stands for a value that is not set
        let command = Settings::augment_args(Command::new("settings"))
            .no_binary_name(true)
            .mut_args(|arg| arg.env(Resettable::Reset));
        let matches = command.try_get_matches_from(given);
        matches
            .and_then(|matches| Settings::from_arg_matches(&matches))
            .map_err(|error| vec![error.to_string()])
    }
}

impl Given {
    fn is_list(&self) -> bool {
        self.arg.get_value_delimiter().is_some()
    }

    fn as_flag(&self) -> String {
        let name = self.arg.get_long().unwrap_or_default();
        if !self.is_list() {
            return format!("--{name}={}", self.text);
        }
        format!("--{name}={}", self.members().collect::<Vec<_>>().join(","))
    }

    fn members(&self) -> impl Iterator<Item = &str> {
        self.text.split(',').map(str::trim).filter(|member| !member.is_empty())
    }

    /// What is wrong with the value: where it was given, and what would be right.
    fn fault(&self) -> Option<String> {
        let reason = if self.text.is_empty() {
            let is_needed = !self.arg.get_default_values().is_empty();
            is_needed.then(|| "is empty".to_owned())?
        } else {
            let alone =
                Command::new("setting").no_binary_name(true).arg(self.arg.clone().env(Resettable::Reset));
            let error = alone.try_get_matches_from([self.as_flag()]).err()?;
            error.source().map_or_else(|| "is not a value of this setting".to_owned(), ToString::to_string)
        };
        let name = self.arg.get_long().unwrap_or_default();
        let place = match (self.source, self.arg.get_env()) {
            (Source::Environment, Some(variable)) => variable.display().to_string(),
            (Source::File, _) => format!("settings file: {}", self.arg.get_id()),
            _ => format!("--{name}"),
        };
        let shown = if self.arg.is_hide_env_values_set() {
            "the value".to_owned()
        } else {
            format!("{:?}", self.text)
        };
        Some(format!("{place}: {shown} {reason}"))
    }
}

/// A value of the file as a flag would write it. What is neither text, number nor truth value is left to the parser of the
/// setting to refuse.
fn text_of(value: &Value, arg: &Arg) -> String {
    match value {
        Value::String(text) => text.clone(),
        Value::Array(members) if arg.get_value_delimiter().is_some() => {
            let members: Vec<String> = members.iter().map(|member| text_of(member, arg)).collect();
            members.join(",")
        }
        other => other.to_string(),
    }
}

/// The values in force as a settings file, each with its source; of a secret only that it is set.
impl fmt::Display for Sources {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let quoted = |text: &str| Value::from(text).to_string();
        for given in &self.0 {
            let (name, text, source) = (given.arg.get_id(), given.text.as_str(), given.source);
            if text.is_empty() {
                writeln!(f, "# {name} is not set")?;
            } else if given.arg.is_hide_env_values_set() {
                writeln!(f, "# {name} is set and not shown  # {source}")?;
            } else if given.is_list() {
                let members: Vec<String> = given.members().map(quoted).collect();
                writeln!(f, "{name} = [{}]  # {source}", members.join(", "))?;
            } else if matches!(text, "true" | "false") {
                writeln!(f, "{name} = {text}  # {source}")?;
            } else {
                writeln!(f, "{name} = {}  # {source}", quoted(text))?;
            }
        }
        Ok(())
    }
}
