//! `elbowroom takeoff FILE`.

mod input;
mod progress;
#[cfg(feature = "client")]
mod remote;
mod text;

use super::check::explain_values;
use super::language::LanguageArguments;
use super::{complain, report, status};
use crate::answers::Explain;
use crate::service::Limits;
use crate::service::access::Authorization;
use crate::service::language;
use crate::service::problem::Problem;
use crate::service::takeoff::batch::Job;
use crate::service::takeoff::form::Form;
use crate::service::takeoff::record_writer::{self, RecordWriter};
use crate::service::takeoff::source::Source;
use crate::service::takeoff::stream::Answers;
use crate::service::worker_pool::WorkerPool;
use crate::takeoff::summary::Summary;
use clap::{Args, ValueEnum};
use input::Input;
use progress::Progress;
use std::io;
use std::path::PathBuf;
use std::process::ExitCode;
use text::Text;

/// What is evaluated, where, and how the answers are written.
#[derive(Clone, Debug, Args)]
pub struct TakeoffArguments {
    /// The takeoff; `-` for standard input.
    file: PathBuf,
    /// The form of the takeoff. It follows from the name of the file (.json, .csv; anything else is NDJSON).
    #[arg(long, value_name = "FORM", value_enum)]
    form: Option<Form>,
    /// How the answers are written.
    #[arg(long = "as", value_name = "FORM", value_enum, default_value_t = Written::Text)]
    written: Written,
    /// How much of the proof the answers carry: full, summary or none. JSON and NDJSON have all unless asked otherwise.
    #[arg(long, value_name = "HOW", value_parser = explain_values())]
    explain: Option<Explain>,
    /// Post the takeoff to a service instead of evaluating it here: https://host, or http://host:8314.
    ///
    /// Lines are sent and answered at the same time. When the connection fails, the lines that were not answered are sent
    /// again; an evaluation changes nothing, so that is safe. Five attempts without an answer end it.
    #[cfg(feature = "client")]
    #[arg(long, value_name = "URL")]
    to: Option<String>,
    /// A file that holds the key for the service. Without it the environment variable ELBOWROOM_KEY is the key.
    ///
    /// A key is never an argument: arguments can be seen by everyone on the machine. It is not sent on when the service
    /// sends the caller elsewhere.
    #[cfg(feature = "client")]
    #[arg(long, value_name = "FILE", env = "ELBOWROOM_KEY_FILE")]
    key_file: Option<PathBuf>,
    #[command(flatten)]
    language: LanguageArguments,
}

/// A form of the answers.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
enum Written {
    /// For a person: what does not comply, and the summary.
    Text,
    /// One JSON document.
    Json,
    /// One record a line.
    Ndjson,
    /// A table.
    Csv,
}

impl TakeoffArguments {
    fn form(&self) -> Form {
        let by_name = || match self.file.extension().and_then(|extension| extension.to_str()) {
            Some("json") => Form::Json,
            Some("csv") => Form::Csv,
            _ => Form::Ndjson,
        };
        self.form.unwrap_or_else(by_name)
    }

    fn writer(&self) -> &'static dyn RecordWriter {
        match self.written {
            Written::Text => &Text,
            Written::Json => record_writer::of(Form::Json),
            Written::Ndjson => record_writer::of(Form::Ndjson),
            Written::Csv => record_writer::of(Form::Csv),
        }
    }

    fn explain(&self) -> Explain {
        self.explain.unwrap_or(match self.written {
            Written::Text | Written::Csv => Explain::None,
            Written::Json | Written::Ndjson => Explain::Full,
        })
    }
}

/// Why a takeoff has no summary.
#[derive(Debug, thiserror::Error)]
enum Fault {
    /// The file cannot be read.
    #[error(transparent)]
    Input(io::Error),
    /// The output cannot be written.
    #[error(transparent)]
    Output(io::Error),
    /// The takeoff as a whole is refused.
    #[error("{}", report::of_problem(.0))]
    Refused(Problem),
    /// The key cannot be read, or is not valid.
    #[cfg(feature = "client")]
    #[error("{0}")]
    Key(String),
    /// The service refuses the takeoff as a whole.
    #[cfg(feature = "client")]
    #[error("{0}")]
    RefusedByService(String),
    /// The service cannot be reached, or gave up.
    #[cfg(feature = "client")]
    #[error("{0}")]
    Service(String),
}

impl Fault {
    const fn status(&self) -> u8 {
        match self {
            Self::Input(_) => status::NO_INPUT,
            Self::Output(_) => status::SYSTEM,
            Self::Refused(_) => status::USAGE,
            #[cfg(feature = "client")]
            Self::Key(_) | Self::RefusedByService(_) => status::USAGE,
            #[cfg(feature = "client")]
            Self::Service(_) => status::UNAVAILABLE,
        }
    }
}

/// Evaluates the takeoff and writes its answers; the exit status says what they come to.
pub fn run(arguments: TakeoffArguments) -> ExitCode {
    let runtime = match tokio::runtime::Builder::new_multi_thread().enable_all().build() {
        Ok(runtime) => runtime,
        Err(error) => return complain(&error, status::SYSTEM),
    };
    let language = arguments.language.language();
    let summary = runtime.block_on(language::within(language, async {
        #[cfg(feature = "client")]
        if let Some(url) = &arguments.to {
            return remote::evaluate(&arguments, url).await;
        }
        evaluate(&arguments).await
    }));
    // a read of standard input that will never end is not waited for
    runtime.shutdown_background();
    match summary {
        Ok(summary) => status_of(&summary).into(),
        // a reader that has gone away is no failure
        Err(Fault::Output(error)) if error.kind() == io::ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(fault) => {
            let message = language::speaking(language, || fault.to_string());
            complain(&format!("{}: {message}", arguments.file.display()), fault.status())
        }
    }
}

fn status_of(summary: &Summary) -> u8 {
    let verdicts = summary.verdicts();
    match (summary.complete, summary.lines.refused, verdicts.violates, verdicts.not_determined) {
        (false, ..) => status::NO_INPUT,
        (true, 1.., ..) => status::REFUSED,
        (true, 0, 1.., _) => status::VIOLATES,
        (true, 0, 0, 1..) => status::NOT_DETERMINED,
        (true, 0, 0, 0) => status::COMPLIES,
    }
}

/// Evaluates a takeoff without a service.
async fn evaluate(arguments: &TakeoffArguments) -> Result<Summary, Fault> {
    let form = arguments.form();
    let input = Input::open(&arguments.file).await.map_err(Fault::Input)?;
    let progress = Progress::of(input.length);
    let longest_line = Limits::default().max_body_size;
    let source = match form {
        Form::Json => Source::of_document(input.whole().await.map_err(Fault::Input)?),
        Form::Ndjson | Form::Csv => {
            Source::of_lines(input.pieces(progress.clone()), form, longest_line, None).await
        }
    };
    let source = source.map_err(Fault::Refused)?;
    let job = Job {
        line_kind: source.line_kind.clone(),
        writer: arguments.writer(),
        explain: arguments.explain(),
        longest_line,
        authorization: Authorization::default(),
        service: None,
    };
    let mut answers = Answers::to(source, job, &WorkerPool::of_this_machine());
    while let Some(piece) = answers.next().await {
        progress.write(&piece).map_err(Fault::Output)?;
    }
    progress.finish();
    Ok(answers.summary().clone())
}
