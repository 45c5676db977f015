//! The retransmission window: lines that were sent and not answered, which a retry sends again, and those that come next.

use super::super::Fault;
use super::super::input::Input;
use super::super::progress::Progress;
use crate::service::takeoff::batch::LineKind;
use crate::service::takeoff::form::Form;
use crate::service::takeoff::source::{End, Next, Source};
use crate::takeoff::summary::Entry;
use axum::body::Bytes;
use futures_util::{Stream, StreamExt, stream};
use std::collections::VecDeque;
use std::io;
use std::pin::Pin;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use tokio::sync::Notify;

/// The most bytes of lines that wait for their answers.
const MOST_UNANSWERED_BYTES: usize = 4 * 1024 * 1024;

/// The most bytes that are sent in one piece.
const PIECE_BYTES: usize = 32 * 1024;

/// The longest line that is read here; the service has a limit of its own and says so.
const LONGEST_LINE: usize = 64 * 1024 * 1024;

type Pieces = Pin<Box<dyn Stream<Item = io::Result<Bytes>> + Send>>;

/// A line that was sent.
#[derive(Clone, Debug)]
pub(super) struct SentLine {
    /// Its number, from 1, or the index of its item, from 0.
    pub index: u64,
    /// Its text.
    pub text: Bytes,
}

/// The lines of a takeoff that are not answered yet.
pub(super) struct RetransmissionWindow {
    shared: Arc<Shared>,
    /// The header of a table, which every connection begins with.
    header: Option<Bytes>,
    /// What the lines are.
    pub line_kind: LineKind,
}

struct Shared {
    /// Only held while something is read; never together with `state`.
    source: tokio::sync::Mutex<Source<Pieces>>,
    state: Mutex<State>,
    /// Notified when a line was answered.
    room: Notify,
    line_kind: LineKind,
}

#[derive(Default)]
struct State {
    /// Lines that are not answered, the oldest first.
    unanswered: VecDeque<SentLine>,
    bytes: usize,
    /// How many of them this connection has sent.
    sent: usize,
    /// The number of the connection: older ones get no more lines.
    connection: u64,
    /// Whether everything was read.
    ended: bool,
    /// What became of the lines that are not sent: the header, and blank lines.
    unsent: Vec<Entry>,
    /// Why reading failed, if it did.
    error: Option<io::Error>,
}

impl RetransmissionWindow {
    /// Opens a takeoff.
    pub async fn open(input: Input, form: Form, progress: Progress) -> Result<Self, Fault> {
        let mut source: Source<Pieces> = if form == Form::Json {
            let body = input.whole().await.map_err(Fault::Input)?;
            Source::of_document(body).map_err(Fault::Refused)?
        } else {
            let pieces: Pieces = Box::pin(input.pieces(progress));
            Source::of_lines(pieces, form, LONGEST_LINE, None).await.map_err(Fault::Refused)?
        };
        let line_kind = source.line_kind.clone();
        let header = match &line_kind {
            LineKind::Row(columns) => Some(Bytes::from(format!("{}\n", columns.header()))),
            LineKind::Line | LineKind::Item(_) => None,
        };
        let state = State { unsent: std::mem::take(&mut source.before), ..State::default() };
        let shared = Shared {
            source: tokio::sync::Mutex::new(source),
            state: Mutex::new(state),
            room: Notify::new(),
            line_kind: line_kind.clone(),
        };
        Ok(Self { shared: Arc::new(shared), header, line_kind })
    }

    /// The form in which the lines travel.
    pub const fn form(&self) -> Form {
        match self.line_kind {
            LineKind::Row(_) => Form::Csv,
            LineKind::Line | LineKind::Item(_) => Form::Ndjson,
        }
    }

    /// Starts over with the first line that is not answered, and waits until there is one; false when there will be none.
    pub async fn rewind(&self) -> bool {
        self.shared.state().reconnect();
        while !self.has_unanswered() && !self.is_done() {
            self.shared.read().await;
        }
        self.has_unanswered()
    }

    /// The lines of this connection, as they are to be sent.
    pub fn pieces(&self) -> impl Stream<Item = io::Result<Bytes>> + Send + 'static {
        let shared = Arc::clone(&self.shared);
        let connection = shared.state().connection;
        let rest = stream::unfold(shared, move |shared| async move {
            let piece = shared.next_piece(connection).await?;
            Some((Ok(piece), shared))
        });
        stream::iter(self.header.clone().map(Ok)).chain(rest)
    }

    /// Takes out the oldest line, which was answered; `None` when none was sent.
    pub fn answered(&self) -> Option<SentLine> {
        let mut state = self.shared.state();
        if state.sent == 0 {
            return None;
        }
        let sent = state.unanswered.pop_front()?;
        state.sent -= 1;
        state.bytes -= sent.text.len();
        drop(state);
        self.shared.room.notify_one();
        Some(sent)
    }

    /// Whether there are lines without an answer, sent or not.
    pub fn has_unanswered(&self) -> bool {
        !self.shared.state().unanswered.is_empty()
    }

    /// Whether everything was read and answered.
    pub fn is_done(&self) -> bool {
        let state = self.shared.state();
        state.ended && state.unanswered.is_empty()
    }

    /// What became of the lines that are not sent, and why reading failed, if it did.
    pub fn close(&self) -> (Vec<Entry>, Option<io::Error>) {
        let mut state = self.shared.state();
        (std::mem::take(&mut state.unsent), state.error.take())
    }
}

impl Shared {
    fn state(&self) -> MutexGuard<'_, State> {
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Reads what comes next.
    async fn read(&self) {
        let mut source = self.source.lock().await;
        // another may have read while this waited for its turn
        if self.state().ended {
            return;
        }
        let next = source.next().await;
        let mut state = self.state();
        match next {
            Next::Batch(batch) => {
                batch.iter().for_each(|(number, text)| state.take(number, text, &self.line_kind))
            }
            Next::End(End::Whole) => state.ended = true,
            Next::End(End::Broken { problem, .. }) => {
                state.ended = true;
                state.error = Some(io::Error::other(problem.detail));
            }
        }
    }

    /// The next lines to send on a connection; `None` when there are no more, or another connection has taken over.
    async fn next_piece(&self, connection: u64) -> Option<Bytes> {
        loop {
            let answered = self.room.notified();
            let full = {
                let mut state = self.state();
                if state.connection != connection {
                    return None;
                }
                let piece = state.piece();
                if !piece.is_empty() {
                    return Some(piece.into());
                }
                if state.ended {
                    return None;
                }
                state.bytes > MOST_UNANSWERED_BYTES
            };
            if full { answered.await } else { self.read().await }
        }
    }
}

impl State {
    /// Begins a connection, which sends every line that is not answered.
    const fn reconnect(&mut self) {
        self.sent = 0;
        self.connection += 1;
    }

    /// The next lines that this connection has not sent yet.
    fn piece(&mut self) -> Vec<u8> {
        let mut piece = Vec::new();
        while let Some(line) = self.unanswered.get(self.sent) {
            if !piece.is_empty() && piece.len() + line.text.len() > PIECE_BYTES {
                break;
            }
            piece.extend_from_slice(&line.text);
            piece.push(b'\n');
            self.sent += 1;
        }
        piece
    }

    fn take(&mut self, number: u64, text: Option<&[u8]>, line_kind: &LineKind) {
        // a line that is too long even for here is sent as one that every service refuses
        let text = text.unwrap_or(b"!");
        if line_kind.is_blank(text) {
            self.unsent.push(Entry::Blank);
            return;
        }
        let of_list = line_kind.is_of_list();
        // an item of a document may have line breaks, but only between its parts: within a text they are escaped
        let text: Bytes = match of_list {
            true => {
                text.iter().map(|byte| if matches!(byte, b'\n' | b'\r') { b' ' } else { *byte }).collect()
            }
            false => Bytes::copy_from_slice(text),
        };
        self.bytes += text.len();
        self.unanswered.push_back(SentLine { index: if of_list { number - 1 } else { number }, text });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::path::PathBuf;

    async fn window(name: &str, text: &str, form: Form) -> RetransmissionWindow {
        let file: PathBuf = std::env::temp_dir().join(format!("elbowroom-{name}-{}", std::process::id()));
        std::fs::write(&file, text).unwrap();
        let input = Input::open(&file).await.unwrap();
        let window = RetransmissionWindow::open(input, form, Progress::of(None))
            .await
            .unwrap_or_else(|fault| panic!("{fault}"));
        std::fs::remove_file(file).unwrap();
        window
    }

    async fn sent(window: &RetransmissionWindow) -> String {
        let pieces: Vec<io::Result<Bytes>> = window.pieces().collect().await;
        let pieces: Vec<Bytes> = pieces.into_iter().map(Result::unwrap).collect();
        String::from_utf8(pieces.concat()).unwrap()
    }

    #[tokio::test]
    async fn a_new_connection_begins_with_the_first_line_that_is_not_answered() {
        let window = window("lines", "a\n\nb\nc\n", Form::Ndjson).await;
        assert!(window.rewind().await);
        assert_eq!(sent(&window).await, "a\nb\nc\n");
        assert_eq!(window.answered().unwrap().index, 1);
        let stale = window.pieces();
        assert!(window.rewind().await);
        assert_eq!(stale.collect::<Vec<_>>().await.len(), 0);
        assert_eq!(sent(&window).await, "b\nc\n");
        assert_eq!((window.answered().unwrap().index, window.answered().unwrap().index), (3, 4));
        assert!(window.is_done() && window.answered().is_none() && !window.rewind().await);
        assert_eq!(window.close().0.len(), 1);
    }

    #[tokio::test]
    async fn a_table_begins_with_its_header_each_time_and_items_become_lines() {
        let table = window("table", "Ref,Box\na,4x4x2-1/8\n", Form::Csv).await;
        for _ in 0..2 {
            assert!(table.rewind().await);
            assert_eq!(sent(&table).await, "reference,box\na,4x4x2-1/8\n");
        }
        let list = window("list", "{\"items\": [{\n\"a\":\r\n 1}, 2]}", Form::Json).await;
        assert!(list.rewind().await);
        assert_eq!(sent(&list).await, "{ \"a\":   1}\n2\n");
        assert_eq!(list.answered().unwrap().index, 0);
    }
}
