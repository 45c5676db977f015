//! A takeoff that is posted to a service: lines go out and answers come in at the same time.
//!
//! Lines travel as NDJSON or as a table and answers as NDJSON, whatever is read and written here, so that every answer can
//! be laid against its line. Lines are kept until they are answered; when a connection fails, a new one begins with the
//! first that was not. An evaluation changes nothing, so sending a line twice is safe.
//!
//! The summary is the service's own. Of a connection that failed there is none: what its answers come to is then added up
//! here, their figures and the bill from an evaluation of the same lines here, as far as it comes to the same verdict.

mod heard;
mod key;
mod window;

use super::input::Input;
use super::progress::Progress;
use super::{Fault, TakeoffArguments};
use crate::answers::Explain;
use crate::service::language;
use crate::service::query::EXPLAIN_VALUES;
use crate::service::takeoff::PATH;
use crate::service::takeoff::form::Form;
use crate::service::takeoff::scribe::Scribe;
use crate::takeoff::lines::Lines;
use crate::takeoff::summary::Summary;
use futures_util::StreamExt;
use heard::Heard;
use reqwest::header::{
    ACCEPT, ACCEPT_LANGUAGE, AUTHORIZATION, CONTENT_TYPE, HeaderMap, HeaderValue, RETRY_AFTER,
};
use reqwest::{Body, Client, Response, StatusCode};
use std::time::Duration;
use tokio::time::sleep;
use window::Window;

/// How often in a row a connection may fail without an answer.
const MOST_FAILURES: u32 = 5;

/// How long is waited after the first failure; twice as long after each further one.
const FIRST_PAUSE: Duration = Duration::from_millis(200);

/// The longest pause, whatever the service asks for.
const LONGEST_PAUSE: Duration = Duration::from_secs(30);

/// How long the service may be silent while lines wait for their answers.
const LONGEST_SILENCE: Duration = Duration::from_secs(60);

/// The longest record that is read.
const LONGEST_RECORD: usize = 64 * 1024 * 1024;

/// Posts a takeoff to a service.
pub(super) async fn evaluate(arguments: &TakeoffArguments, url: &str) -> Result<Summary, Fault> {
    let explain = name_of(arguments.explain());
    let url = format!("{}{PATH}?explain={explain}", url.trim_end_matches('/'));
    let progress = Progress::of(None);
    let input = Input::open(&arguments.file).await.map_err(Fault::Input)?;
    let window = Window::open(input, arguments.form(), progress.clone()).await?;
    let mut post = Post {
        client: client(key::of(arguments.key_file.as_deref())?)?,
        url,
        window,
        scribe: arguments.scribe(),
        summary: Summary::default(),
        progress,
        written: false,
    };
    post.run().await
}

fn client(key: Option<HeaderValue>) -> Result<Client, Fault> {
    // the provider of another part of the program is as good
    let _ = tokio_rustls::rustls::crypto::ring::default_provider().install_default();
    Client::builder()
        .connect_timeout(Duration::from_secs(10))
        .default_headers(key.map(|key| (AUTHORIZATION, key)).into_iter().collect())
        .build()
        .map_err(|error| Fault::Service(told(&error)))
}

fn name_of(explain: Explain) -> &'static str {
    EXPLAIN_VALUES.iter().find(|(_, known)| *known == explain).map_or("full", |(name, _)| name)
}

/// An error with what caused it.
fn told(error: &(dyn std::error::Error + 'static)) -> String {
    let mut told = error.to_string();
    let mut source = error.source();
    while let Some(error) = source {
        told.push_str(": ");
        told.push_str(&error.to_string());
        source = error.source();
    }
    told
}

/// A takeoff that is being posted.
struct Post {
    client: Client,
    url: String,
    window: Window,
    scribe: &'static dyn Scribe,
    summary: Summary,
    progress: Progress,
    written: bool,
}

/// What a connection came to.
enum Came {
    /// Everything was answered.
    Whole,
    /// It failed, and may be tried again after so long.
    Failed { why: String, pause: Option<Duration> },
}

impl Post {
    async fn run(&mut self) -> Result<Summary, Fault> {
        let mut opening = Vec::new();
        self.scribe.open(&mut opening);
        self.write(&opening)?;
        let mut failures = 0;
        loop {
            let answered = self.summary.lines.answered + self.summary.lines.refused;
            match self.connect().await? {
                Came::Whole => break,
                Came::Failed { why, pause } => {
                    let progress = self.summary.lines.answered + self.summary.lines.refused > answered;
                    // a service that gave up waiting for lines which did not come yet has not failed
                    failures = if progress || !self.window.has_unanswered() { 1 } else { failures + 1 };
                    if failures >= MOST_FAILURES {
                        return Err(Fault::Service(why));
                    }
                    let usual = FIRST_PAUSE * 2_u32.saturating_pow(failures - 1);
                    sleep(pause.unwrap_or(usual).min(LONGEST_PAUSE)).await;
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
        self.scribe.close(&self.summary, &mut closing);
        self.write(&closing)?;
        self.progress.finish();
        Ok(self.summary.clone())
    }

    /// Sends what is not answered yet and takes in the answers.
    async fn connect(&mut self) -> Result<Came, Fault> {
        let failed = |why| Ok(Came::Failed { why, pause: None });
        if !self.window.rewind().await {
            return Ok(Came::Whole);
        }
        let request = self
            .client
            .post(&self.url)
            .header(CONTENT_TYPE, self.window.form().media_type())
            .header(ACCEPT, Form::Ndjson.media_type())
            .header(ACCEPT_LANGUAGE, language::spoken().tag())
            .body(Body::wrap_stream(self.window.pieces()));
        let response = match request.send().await {
            Ok(response) => response,
            Err(error) if error.is_builder() => return Err(Fault::RefusedByService(told(&error))),
            Err(error) => return failed(told(&error)),
        };
        if response.status() != StatusCode::OK {
            return refused(response).await;
        }
        let mut partial = Summary::default();
        let mut lines = Lines::new(LONGEST_RECORD);
        let mut pieces = response.bytes_stream();
        let why = loop {
            let piece = match tokio::time::timeout(LONGEST_SILENCE, pieces.next()).await {
                Ok(Some(Ok(piece))) => piece,
                Ok(Some(Err(error))) => break told(&error),
                Ok(None) => break "the connection ended before the summary".to_owned(),
                Err(_) if self.window.is_waiting() => break "the service is silent".to_owned(),
                Err(_) => continue,
            };
            lines.feed(&piece);
            let mut records = Vec::new();
            while let Some(batch) = lines.take() {
                for (_, record) in batch.iter() {
                    let heard = Heard::read(record.unwrap_or_default());
                    match self.hear(heard, record.unwrap_or_default(), &mut partial, &mut records) {
                        Ok(None) => {}
                        Ok(Some(mut summary)) => {
                            self.write_records(records)?;
                            // the header of a table is counted here, once
                            summary.lines.received -= summary.lines.header.min(summary.lines.received);
                            summary.lines.header = 0;
                            self.summary.absorb(&summary);
                            return Ok(Came::Whole);
                        }
                        Err(why) => {
                            self.write_records(records)?;
                            self.summary.absorb(&partial);
                            return failed(why);
                        }
                    }
                }
            }
            self.write_records(records)?;
        };
        self.summary.absorb(&partial);
        failed(why)
    }

    /// Takes in one record: an answer or a problem of the first line that waits, or the summary, which is given back. What
    /// is neither ends the connection.
    fn hear(
        &mut self,
        heard: Option<Heard>,
        record: &[u8],
        partial: &mut Summary,
        records: &mut Vec<u8>,
    ) -> Result<Option<Summary>, String> {
        let Some(heard) = heard else { return Err("the service answers in another form".to_owned()) };
        if let Some(summary) = heard.summary {
            let whole = summary.complete && self.window.is_done();
            return if whole { Ok(Some(summary)) } else { Err("the service gave up".to_owned()) };
        }
        if heard.is_given_up() {
            return Err(heard.detail.unwrap_or_default());
        }
        let Some(sent) = self.window.answered() else {
            return Err("the service answers what was not asked".to_owned());
        };
        let entry = heard.write(record, &sent, &self.window.reading, self.scribe, records);
        partial.add(&entry);
        Ok(None)
    }

    fn write_records(&mut self, mut records: Vec<u8>) -> Result<(), Fault> {
        if !records.is_empty() && !std::mem::replace(&mut self.written, true) {
            records.drain(..self.scribe.separator().min(records.len()));
        }
        self.write(&records)
    }

    fn write(&self, text: &[u8]) -> Result<(), Fault> {
        self.progress.write(text).map_err(Fault::Output)
    }
}

/// What an answer that is no stream comes to: another attempt, or the end.
async fn refused(response: Response) -> Result<Came, Fault> {
    let status = response.status();
    let pause = retry_after(response.headers());
    let text = response.text().await.unwrap_or_default();
    let detail = Heard::read(text.as_bytes()).and_then(|heard| heard.detail).unwrap_or_default();
    let why = format!("{status}: {detail}");
    match status {
        StatusCode::REQUEST_TIMEOUT
        | StatusCode::TOO_MANY_REQUESTS
        | StatusCode::BAD_GATEWAY
        | StatusCode::SERVICE_UNAVAILABLE
        | StatusCode::GATEWAY_TIMEOUT => Ok(Came::Failed { why, pause }),
        _ => {
            let faults = crate::service::takeoff::scribe::faults(text.as_bytes());
            Err(Fault::RefusedByService(format!("{status}: {}", faults.join(" "))))
        }
    }
}

/// How many seconds the service asks to wait.
fn retry_after(headers: &HeaderMap) -> Option<Duration> {
    let seconds = headers.get(RETRY_AFTER)?.to_str().ok()?.parse().ok()?;
    Some(Duration::from_secs(seconds))
}
