//! The lines between here and the service: those that were sent and not answered, and those that come next.

use super::super::Fault;
use super::super::input::Input;
use super::super::progress::Progress;
use crate::service::takeoff::batch::Reading;
use crate::service::takeoff::form::Form;
use crate::service::takeoff::source::{End, Next, Source};
use crate::takeoff::lines::is_blank;
use crate::takeoff::summary::Entry;
use axum::body::Bytes;
use futures_util::{Stream, StreamExt, stream};
use std::collections::VecDeque;
use std::io;
use std::pin::Pin;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use tokio::sync::Notify;

/// The most bytes of lines that wait for their answers.
const MOST_WAITING: usize = 4 * 1024 * 1024;

/// The most bytes that are sent in one piece.
const PIECE: usize = 32 * 1024;

/// The longest line that is read here; the service has a limit of its own and says so.
const LONGEST_LINE: usize = 64 * 1024 * 1024;

type Pieces = Pin<Box<dyn Stream<Item = io::Result<Bytes>> + Send>>;

/// A line that was sent.
#[derive(Clone, Debug)]
pub(super) struct Sent {
    /// Its number, from 1, or the place of its item, from 0.
    pub place: u64,
    /// Its text.
    pub text: Bytes,
}

/// The lines of a takeoff that are not answered yet.
pub(super) struct Window {
    shared: Arc<Shared>,
    /// The header of a table, which every connection begins with.
    header: Option<Bytes>,
    /// What the lines are.
    pub reading: Reading,
}

struct Shared {
    /// Only held while something is read; never together with `state`.
    source: tokio::sync::Mutex<Source<Pieces>>,
    state: Mutex<State>,
    /// Told when a line was answered.
    room: Notify,
    of_list: bool,
}

struct State {
    /// Lines that are not answered, the first the oldest.
    waiting: VecDeque<Sent>,
    bytes: usize,
    /// How many of them this connection has sent.
    sent: usize,
    /// Counts the connections: what an older one still asks for is not given.
    connection: u64,
    /// Whether everything was read.
    ended: bool,
    /// What became of the lines that are not sent: the header, and blank lines.
    unsent: Vec<Entry>,
    /// Why reading failed, if it did.
    error: Option<io::Error>,
}

impl Window {
    /// Opens a takeoff.
    pub async fn open(input: Input, form: Form, progress: Progress) -> Result<Self, Fault> {
        let mut source: Source<Pieces> = if form == Form::Json {
            let body = input.whole().await.map_err(Fault::Input)?;
            Source::of_document(body).map_err(Fault::Refused)?
        } else {
            let pieces: Pieces = Box::pin(input.pieces(progress));
            Source::of_lines(pieces, form, LONGEST_LINE, None).await.map_err(Fault::Refused)?
        };
        let reading = source.reading.clone();
        let header = match &reading {
            Reading::Row(columns) => Some(Bytes::from(format!("{}\n", columns.header()))),
            Reading::Line | Reading::Item(_) => None,
        };
        let state = State {
            waiting: VecDeque::new(),
            bytes: 0,
            sent: 0,
            connection: 0,
            ended: false,
            unsent: std::mem::take(&mut source.before),
            error: None,
        };
        let shared = Shared {
            source: tokio::sync::Mutex::new(source),
            state: Mutex::new(state),
            room: Notify::new(),
            of_list: reading.is_of_list(),
        };
        Ok(Self { shared: Arc::new(shared), header, reading })
    }

    /// The form in which the lines travel.
    pub const fn form(&self) -> Form {
        match self.reading {
            Reading::Row(_) => Form::Csv,
            Reading::Line | Reading::Item(_) => Form::Ndjson,
        }
    }

    /// Begins again with the first line that is not answered. Waits until there is one; false when there is none to come.
    pub async fn rewind(&self) -> bool {
        {
            let mut state = self.shared.state();
            state.sent = 0;
            state.connection += 1;
        }
        loop {
            {
                let state = self.shared.state();
                if !state.waiting.is_empty() || state.ended {
                    return !state.waiting.is_empty();
                }
            }
            self.shared.read().await;
        }
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

    /// Takes out the first line that waits: it was answered. `None` when nothing was asked.
    pub fn answered(&self) -> Option<Sent> {
        let mut state = self.shared.state();
        if state.sent == 0 {
            return None;
        }
        let sent = state.waiting.pop_front()?;
        state.sent -= 1;
        state.bytes -= sent.text.len();
        drop(state);
        self.shared.room.notify_one();
        Some(sent)
    }

    /// Whether lines were sent and not answered.
    pub fn is_waiting(&self) -> bool {
        self.shared.state().sent > 0
    }

    /// Whether lines wait for their answers, sent or not.
    pub fn has_unanswered(&self) -> bool {
        !self.shared.state().waiting.is_empty()
    }

    /// Whether everything was read and answered.
    pub fn is_done(&self) -> bool {
        let state = self.shared.state();
        state.ended && state.waiting.is_empty()
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
                batch.iter().for_each(|(number, text)| state.take(number, text, self.of_list))
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
                state.bytes > MOST_WAITING
            };
            if full { answered.await } else { self.read().await }
        }
    }
}

impl State {
    /// The lines that this connection has not sent yet, so many as one piece has.
    fn piece(&mut self) -> Vec<u8> {
        let mut piece = Vec::new();
        while let Some(line) = self.waiting.get(self.sent) {
            if !piece.is_empty() && piece.len() + line.text.len() > PIECE {
                break;
            }
            piece.extend_from_slice(&line.text);
            piece.push(b'\n');
            self.sent += 1;
        }
        piece
    }

    fn take(&mut self, number: u64, text: Option<&[u8]>, of_list: bool) {
        // a line that is too long even for here is sent as one that every service refuses
        let text = text.unwrap_or(b"!");
        if !of_list && is_blank(text) {
            self.unsent.push(Entry::Blank);
            return;
        }
        // an item of a document may have line breaks, but only between its parts: within a text they are escaped
        let text: Bytes = match of_list {
            true => {
                text.iter().map(|byte| if matches!(byte, b'\n' | b'\r') { b' ' } else { *byte }).collect()
            }
            false => Bytes::copy_from_slice(text),
        };
        self.bytes += text.len();
        self.waiting.push_back(Sent { place: if of_list { number - 1 } else { number }, text });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::path::PathBuf;

    async fn window(name: &str, text: &str, form: Form) -> Window {
        let file: PathBuf = std::env::temp_dir().join(format!("elbowroom-{name}-{}", std::process::id()));
        std::fs::write(&file, text).unwrap();
        let input = Input::open(&file).await.unwrap();
        let window =
            Window::open(input, form, Progress::of(None)).await.unwrap_or_else(|fault| panic!("{fault}"));
        std::fs::remove_file(file).unwrap();
        window
    }

    async fn sent(window: &Window) -> String {
        let pieces: Vec<io::Result<Bytes>> = window.pieces().collect().await;
        let pieces: Vec<Bytes> = pieces.into_iter().map(Result::unwrap).collect();
        String::from_utf8(pieces.concat()).unwrap()
    }

    #[tokio::test]
    async fn a_new_connection_begins_with_the_first_line_that_is_not_answered() {
        let window = window("lines", "a\n\nb\nc\n", Form::Ndjson).await;
        assert!(window.rewind().await);
        assert_eq!(sent(&window).await, "a\nb\nc\n");
        assert_eq!(window.answered().unwrap().place, 1);
        let stale = window.pieces();
        assert!(window.rewind().await);
        assert_eq!(stale.collect::<Vec<_>>().await.len(), 0);
        assert_eq!(sent(&window).await, "b\nc\n");
        assert_eq!((window.answered().unwrap().place, window.answered().unwrap().place), (3, 4));
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
        assert_eq!(list.answered().unwrap().place, 0);
    }
}
