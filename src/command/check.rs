//! `elbowroom check FILE`.

use super::language::LanguageArguments;
use super::{complain, one_of, print, report, status};
use crate::answers::Explain;
use crate::checks::Verdict;
use crate::service::problem::Problem;
use crate::service::query::EXPLAIN_VALUES;
use crate::service::register::{Answered, CHECKS, CheckEntry};
use clap::builder::TypedValueParser;
use clap::{Args, ValueEnum};
use std::io::{self, Read};
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::{fs, str};

/// What is evaluated, and how the answer is written.
#[derive(Clone, Debug, Args)]
pub struct CheckArguments {
    /// The request, as it would be posted; `-` for standard input.
    file: PathBuf,
    /// The check to make.
    #[arg(long, value_name = "NAME", default_value = CHECKS[0].name, value_parser = one_of(CHECKS.iter().map(|check| check.name), CheckEntry::named))]
    check: &'static CheckEntry,
    /// How the answer is written.
    #[arg(long = "as", value_name = "FORM", value_enum, default_value_t = Form::Text)]
    form: Form,
    /// How much of the proof the answer carries: full, summary or none. Text has none unless asked; JSON has all.
    #[arg(long, value_name = "HOW", value_parser = explain_values())]
    explain: Option<Explain>,
    #[command(flatten)]
    language: LanguageArguments,
}

/// How an answer is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
enum Form {
    /// For a person.
    Text,
    /// As the service answers it.
    Json,
}

pub(super) fn explain_values() -> impl TypedValueParser<Value = Explain> {
    one_of(EXPLAIN_VALUES.map(|(name, _)| name), |name| {
        EXPLAIN_VALUES.into_iter().find_map(|(known, explain)| (known == name).then_some(explain))
    })
}

/// Evaluates the file and prints the answer; the exit status says the verdict.
pub fn run(arguments: &CheckArguments) -> ExitCode {
    let body = match read(&arguments.file) {
        Ok(body) => body,
        Err(error) => {
            return complain(&format!("{}: {error}", arguments.file.display()), status::NO_INPUT);
        }
    };
    let explain = arguments.explain.unwrap_or(match arguments.form {
        Form::Text => Explain::None,
        Form::Json => Explain::Full,
    });
    arguments.language.speaking(|| match (arguments.check.evaluate)(&body, explain) {
        Ok(answered) => answer(arguments, &answered),
        Err(problem) => refuse(arguments.form, &problem),
    })
}

fn read(file: &Path) -> io::Result<Vec<u8>> {
    if file != Path::new("-") {
        return fs::read(file);
    }
    let mut body = Vec::new();
    io::stdin().lock().read_to_end(&mut body)?;
    Ok(body)
}

fn answer(arguments: &CheckArguments, answered: &Answered) -> ExitCode {
    let status = match answered.verdict {
        Some(Verdict::Violates) => status::VIOLATES,
        Some(Verdict::NotDetermined) => status::NOT_DETERMINED,
        Some(Verdict::Complies) | None => status::COMPLIES,
    };
    let text = match arguments.form {
        Form::Json => str::from_utf8(&answered.json).map(|json| format!("{json}\n")).ok(),
        Form::Text => serde_json::from_slice(&answered.json)
            .ok()
            .map(|answer| report::of_answer(arguments.check, &answer)),
    };
    match text {
        Some(text) => print(&text, status.into()),
        None => complain(&"the answer cannot be written", status::SOFTWARE),
    }
}

fn refuse(form: Form, problem: &Problem) -> ExitCode {
    match form {
        Form::Json => {
            let json = String::from_utf8_lossy(&problem.to_json()).into_owned();
            print(&format!("{json}\n"), status::USAGE.into())
        }
        Form::Text => complain(&report::of_problem(problem), status::USAGE),
    }
}
