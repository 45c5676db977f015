//! A takeoff that is posted to a service: lines go out and answers come in at the same time, with retry and backoff.
//!
//! Lines travel as NDJSON or as a table and answers as NDJSON, whatever is read and written here, so that every answer can
//! be matched with its line. Lines are kept until they are answered. When a connection fails, the retry begins with the first
//! line that is not answered; an evaluation changes nothing, so sending a line twice is safe. The retries of reqwest do not
//! fit: they send a body again from its beginning, and none that is a stream.
//!
//! The summary is the service's own. A connection that failed has none: its answers are added up here, with the figures and
//! the bill of an evaluation of the same lines here, as far as that comes to the same verdict.

mod key;
mod retransmission;
mod server_record;

use super::input::Input;
use super::progress::Progress;
use super::{Fault, TakeoffArguments};
use crate::service::language;
use crate::service::query::EXPLAIN_VALUES;
use crate::service::takeoff::PATH;
use crate::service::takeoff::form::Form;
use crate::service::takeoff::record_writer::{self, RecordWriter};
use crate::takeoff::lines::Lines;
use crate::takeoff::summary::Summary;
use reqwest::header::{ACCEPT, ACCEPT_LANGUAGE, CONTENT_TYPE, HeaderMap, RETRY_AFTER};
use reqwest::{Body, Client, Response, StatusCode};
use retransmission::RetransmissionWindow;
use server_record::ServerRecord;
use std::error::Error;
use std::time::Duration;
use tokio::time::sleep;

/// How often in a row a connection may fail without an answer.
const MOST_FAILURES: u32 = 5;

/// The backoff after the first failure; it doubles with each further one.
const FIRST_BACKOFF: Duration = Duration::from_millis(200);

/// The longest backoff, whatever the service asks for.
const LONGEST_BACKOFF: Duration = Duration::from_secs(30);

/// How long a connection may take, and how long the service may be silent.
const CONNECT_TIMEOUT: Duration = Duration::from_secs(10);
const READ_TIMEOUT: Duration = Duration::from_secs(60);

/// The longest record that is read.
const LONGEST_RECORD: usize = 64 * 1024 * 1024;

/// Posts a takeoff to a service.
pub(super) async fn evaluate(arguments: &TakeoffArguments, url: &str) -> Result<Summary, Fault> {
    let explain = arguments.explain();
    let explain = EXPLAIN_VALUES.iter().find(|(_, known)| *known == explain).map_or("full", |(name, _)| name);
    let progress = Progress::of(None);
    let input = Input::open(&arguments.file).await.map_err(Fault::Input)?;
    let mut post = Post {
        window: RetransmissionWindow::open(input, arguments.form(), progress.clone()).await?,
        key: key::read(arguments.key_file.as_deref())?,
        client: client().map_err(|error| Fault::Service(with_causes(&error)))?,
        url: format!("{}{PATH}?explain={explain}", url.trim_end_matches('/')),
        writer: arguments.writer(),
        summary: Summary::default(),
        progress,
        written: false,
    };
    post.run().await
}

fn client() -> reqwest::Result<Client> {
    // a provider that another part of the program has installed serves as well
    let _ = tokio_rustls::rustls::crypto::ring::default_provider().install_default();
    Client::builder().connect_timeout(CONNECT_TIMEOUT).read_timeout(READ_TIMEOUT).build()
}

/// An error with its causes.
fn with_causes(error: &(dyn Error + 'static)) -> String {
    let mut message = error.to_string();
    let mut source = error.source();
    while let Some(cause) = source {
        message.push_str(&format!(": {cause}"));
        source = cause.source();
    }
    message
}

/// A takeoff that is being posted.
struct Post {
    client: Client,
    key: Option<String>,
    url: String,
    window: RetransmissionWindow,
    writer: &'static dyn RecordWriter,
    summary: Summary,
    progress: Progress,
    /// Whether a record was written, so that the next is separated from it.
    written: bool,
}

/// Why a connection did not answer everything.
enum Failure {
    /// It may be tried again, after the time that the service asks for.
    Retry { why: String, after: Option<Duration> },
    /// It would fail again.
    Final(Fault),
}

impl From<Fault> for Failure {
    fn from(fault: Fault) -> Self {
        Self::Final(fault)
    }
}

fn retry(why: impl Into<String>) -> Failure {
    Failure::Retry { why: why.into(), after: None }
}

impl Post {
    async fn run(&mut self) -> Result<Summary, Fault> {
        let mut opening = Vec::new();
        self.writer.open(&mut opening);
        self.write(&opening)?;
        let mut failures = 0;
        loop {
            let answered = self.answered();
            match self.attempt().await {
                Ok(()) => break,
                Err(Failure::Final(fault)) => return Err(fault),
                Err(Failure::Retry { why, after }) => {
                    // a service that gave up waiting for lines which had not come yet has not failed
                    let progress = self.answered() > answered || !self.window.has_unanswered();
                    failures = if progress { 1 } else { failures + 1 };
                    if failures >= MOST_FAILURES {
                        return Err(Fault::Service(why));
                    }
                    let backoff = FIRST_BACKOFF * 2_u32.pow(failures - 1);
                    sleep(after.unwrap_or(backoff).min(LONGEST_BACKOFF)).await;
                }
            }
        }
        let (unsent, error) = self.window.close();
        if let Some(error) = error {
            return Err(Fault::Input(error));
        }
        unsent.iter().for_each(|entry| self.summary.add(entry));
        self.summary.complete = true;
        let mut closing = Vec::new();
        self.writer.close(&self.summary, &mut closing);
        self.write(&closing)?;
        self.progress.finish();
        Ok(self.summary.clone())
    }

    const fn answered(&self) -> u64 {
        self.summary.lines.answered + self.summary.lines.refused
    }

    /// Sends what is not answered yet and takes in the answers.
    async fn attempt(&mut self) -> Result<(), Failure> {
        if !self.window.rewind().await {
            return Ok(());
        }
        let mut request = self
            .client
            .post(&self.url)
            .header(CONTENT_TYPE, self.window.form().media_type())
            .header(ACCEPT, Form::Ndjson.media_type())
            .header(ACCEPT_LANGUAGE, language::spoken().tag())
            .body(Body::wrap_stream(self.window.pieces()));
        if let Some(key) = &self.key {
            request = request.bearer_auth(key);
        }
        let response = request.send().await.map_err(|error| match with_causes(&error) {
            why if error.is_builder() => Failure::Final(Fault::RefusedByService(why)),
            why => retry(why),
        })?;
        if response.status() != StatusCode::OK {
            return Err(refusal(response).await);
        }
        let mut partial = Summary::default();
        match self.receive(response, &mut partial).await {
            Ok(mut summary) => {
                // the header of a table is counted here, once
                summary.lines.received -= summary.lines.header.min(summary.lines.received);
                summary.lines.header = 0;
                self.summary.absorb(&summary);
                Ok(())
            }
            Err(failure) => {
                self.summary.absorb(&partial);
                Err(failure)
            }
        }
    }

    /// Takes in the answers of one connection until its summary. What they come to is added to `partial`.
    async fn receive(&mut self, mut response: Response, partial: &mut Summary) -> Result<Summary, Failure> {
        let mut lines = Lines::new(LONGEST_RECORD);
        while let Some(mut piece) = response.chunk().await.map_err(|error| retry(with_causes(&error)))? {
            while !piece.is_empty() {
                let _ = piece.split_to(lines.feed(&piece));
                let Some(batch) = lines.take() else { continue };
                let mut records = Vec::new();
                let end = batch.iter().find_map(|(_, record)| {
                    self.accept(record.unwrap_or_default(), partial, &mut records).transpose()
                });
                self.write_records(records)?;
                if let Some(end) = end {
                    return end;
                }
            }
        }
        Err(retry("the connection ended before the summary"))
    }

    /// Takes in one record: the answer to the oldest line, a problem with it, or the summary, which is returned.
    fn accept(
        &self,
        json: &[u8],
        partial: &mut Summary,
        records: &mut Vec<u8>,
    ) -> Result<Option<Summary>, Failure> {
        let Some(record) = ServerRecord::read(json) else {
            return Err(retry("the service does not answer with records of a takeoff"));
        };
        if let Some(summary) = record.summary {
            let is_whole = summary.complete && self.window.is_done();
            return if is_whole { Ok(Some(summary)) } else { Err(retry("the service gave up")) };
        }
        if record.is_retryable() {
            return Err(retry(record.detail.unwrap_or_default()));
        }
        let Some(sent) = self.window.answered() else {
            return Err(retry("the service sent an answer to no line"));
        };
        partial.add(&record.write(json, &sent, &self.window.line_kind, self.writer, records));
        Ok(None)
    }

    fn write_records(&mut self, mut records: Vec<u8>) -> Result<(), Fault> {
        if !records.is_empty() && !std::mem::replace(&mut self.written, true) {
            records.drain(..self.writer.separator().min(records.len()));
        }
        self.write(&records)
    }

    fn write(&self, text: &[u8]) -> Result<(), Fault> {
        self.progress.write(text).map_err(Fault::Output)
    }
}

/// Why a response has no answers, and whether a retry may have them.
async fn refusal(response: Response) -> Failure {
    let status = response.status();
    let after = retry_after(response.headers());
    let text = response.bytes().await.unwrap_or_default();
    if matches!(status.as_u16(), 408 | 429 | 502 | 503 | 504) {
        let detail = ServerRecord::read(&text).and_then(|record| record.detail).unwrap_or_default();
        return Failure::Retry { why: format!("{status}: {detail}"), after };
    }
    let faults = record_writer::faults(&text).join(" ");
    Failure::Final(Fault::RefusedByService(format!("{status}: {faults}")))
}

/// How long the service asks to wait.
fn retry_after(headers: &HeaderMap) -> Option<Duration> {
    headers.get(RETRY_AFTER)?.to_str().ok()?.parse().ok().map(Duration::from_secs)
}
