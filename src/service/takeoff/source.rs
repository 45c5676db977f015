//! From a body or a file to batches of lines: whatever has arrived is handed on at once, and no more is kept than a batch.

use super::batch::{LineKind, line_too_long};
use super::form::Form;
use super::item::not_utf8;
use super::line_stream::LineStream;
use super::list::List;
use crate::checks::FaultCode;
use crate::service::body::lenient::append;
use crate::service::fault_list::{FaultList, FaultView};
use crate::service::limits::Limits;
use crate::service::problem::Problem;
use crate::takeoff::lines::{BATCH_BYTES, BATCH_LINES, Batch, is_blank};
use crate::takeoff::summary::Entry;
use crate::takeoff::table::{Column, Columns, HeaderFault};
use axum::body::Bytes;
use futures_util::Stream;
use std::ops::Range;
use std::time::Duration;

/// Why a takeoff ends.
#[derive(Clone, Debug)]
pub enum End {
    /// It is whole.
    Whole,
    /// It broke off. A line that had begun is lost; `line` is its number.
    Broken {
        /// Why.
        problem: Problem,
        /// The number of the line that had begun.
        line: Option<u64>,
    },
}

/// What comes next.
#[derive(Debug)]
pub enum Next {
    /// Lines.
    Batch(Batch),
    /// The end.
    End(End),
}

/// A takeoff, as it arrives.
pub struct Source<S> {
    supply: Supply<S>,
    /// What the lines are.
    pub line_kind: LineKind,
    /// What became of the lines before the first batch: the header of a table, and blank lines before it.
    pub before: Vec<Entry>,
}

enum Supply<S> {
    Stream {
        lines: Box<LineStream<S>>,
        /// The lines that came with the header of a table.
        after_header: Option<Batch>,
    },
    List {
        body: Bytes,
        items: Vec<Range<usize>>,
        next: usize,
    },
}

impl<S, E> Source<S>
where
    S: Stream<Item = Result<Bytes, E>> + Unpin,
{
    /// A takeoff that is a stream of lines. It breaks off when no whole line arrives for as long as `pause`.
    ///
    /// The header of a table is read here, so that a header with faults refuses the whole.
    pub async fn of_lines(
        pieces: S,
        form: Form,
        longest_line: usize,
        pause: Option<Duration>,
    ) -> Result<Self, Problem> {
        let mut lines = Box::new(LineStream::new(pieces, longest_line, pause));
        let (mut line_kind, mut before, mut after_header) = (LineKind::Line, Vec::new(), None);
        while form == Form::Csv && line_kind == LineKind::Line {
            let mut batch = match lines.next().await {
                Next::Batch(batch) if before.len() <= BATCH_LINES => batch,
                Next::End(End::Broken { problem, .. }) => return Err(problem),
                Next::Batch(_) | Next::End(End::Whole) => return Err(no_header()),
            };
            while let Some(line) = batch.pop() {
                let line = line.ok_or_else(|| line_too_long(longest_line))?;
                if !is_blank(line) {
                    line_kind = LineKind::Row(columns(line)?);
                    before.push(Entry::Header);
                    break;
                }
                before.push(Entry::Blank);
            }
            after_header = Some(batch).filter(|batch| batch.iter().len() > 0);
        }
        Ok(Self { supply: Supply::Stream { lines, after_header }, line_kind, before })
    }

    /// What comes next. Waits until there is something, and no longer.
    pub async fn next(&mut self) -> Next {
        match &mut self.supply {
            Supply::Stream { lines, after_header } => match after_header.take() {
                Some(batch) => Next::Batch(batch),
                None => lines.next().await,
            },
            Supply::List { body, items, next } => list_batch(body, items, next),
        }
    }
}

impl<S> Source<S> {
    /// A takeoff that is one JSON document.
    pub fn of_document(body: Bytes) -> Result<Self, Problem> {
        let list = List::read(&body)?;
        let line_kind = LineKind::Item(list.above);
        Ok(Self { supply: Supply::List { body, items: list.items, next: 0 }, line_kind, before: Vec::new() })
    }
}

fn no_header() -> Problem {
    let fault = FaultView::in_body(String::new(), FaultCode::MissingMember, "fault-table-no-header", []);
    Problem::invalid(FaultList::of(fault))
}

/// The columns of a header; the problem lists every name that is no column.
fn columns(header: &[u8]) -> Result<Columns, Problem> {
    let Ok(header) = std::str::from_utf8(header) else {
        return Err(Problem::invalid(FaultList::of(not_utf8(header))));
    };
    let wrong = match Columns::read(header) {
        Ok(columns) => return Ok(columns),
        Err(wrong) => wrong,
    };
    let mut faults = FaultList::default();
    for fault in wrong {
        if faults.is_full() {
            faults.count_one();
        } else {
            faults.push(view_of(&fault));
        }
    }
    Err(Problem::invalid(faults))
}

fn view_of(fault: &HeaderFault) -> FaultView {
    let of_column = |name: &str, code, key| {
        let shortened: String = name.chars().take(80).collect();
        let mut pointer = String::new();
        append(&mut pointer, &shortened);
        FaultView::in_body(pointer, code, key, [("column", shortened)])
    };
    match fault {
        HeaderFault::Unknown(name) => of_column(name, FaultCode::UnknownMember, "fault-table-unknown-column")
            .accepting(Column::ALL.iter().map(|column| column.name()), Some(name)),
        HeaderFault::Twice(name) => of_column(name, FaultCode::DuplicateMember, "fault-table-column-twice"),
        HeaderFault::Quote => {
            FaultView::in_body(String::new(), FaultCode::NotAccepted, "fault-table-quote", [])
        }
    }
}

/// The next items of a list.
fn list_batch(body: &Bytes, items: &[Range<usize>], next: &mut usize) -> Next {
    let rest = items.get(*next..).unwrap_or_default();
    let mut bytes = 0;
    let fits = |item: &&Range<usize>| {
        let before = bytes;
        bytes += item.len();
        before < BATCH_BYTES
    };
    let some: Vec<&[u8]> = rest
        .iter()
        .take(BATCH_LINES)
        .take_while(fits)
        .map(|item| body.get(item.clone()).unwrap_or_default())
        .collect();
    if some.is_empty() {
        return Next::End(End::Whole);
    }
    let first = *next as u64 + 1;
    *next += some.len();
    Next::Batch(Batch::of(first, some))
}

/// Takes in a body that is one JSON document.
pub async fn receive(body: axum::body::Body, limits: Limits) -> Result<Bytes, Problem> {
    let limits = Limits { max_body_size: limits.max_takeoff_size, ..limits };
    crate::service::check_route::receive(body, limits).await
}

#[cfg(test)]
mod tests {
    use super::*;
    use futures_util::stream;

    type Piece = Result<Bytes, ()>;

    async fn all(pieces: Vec<Piece>, form: Form) -> (Vec<(u64, String)>, End) {
        let source = Source::of_lines(stream::iter(pieces), form, 100, None).await;
        let mut source = source.unwrap_or_else(|problem| panic!("{problem:?}"));
        let mut lines = Vec::new();
        loop {
            match source.next().await {
                Next::Batch(batch) => lines.extend(batch.iter().map(|(number, text)| {
                    (number, text.map(|text| String::from_utf8_lossy(text).into_owned()).unwrap_or_default())
                })),
                Next::End(end) => return (lines, end),
            }
        }
    }

    fn piece(text: &str) -> Piece {
        Ok(Bytes::copy_from_slice(text.as_bytes()))
    }

    #[tokio::test]
    async fn lines_keep_their_numbers_across_pieces_and_a_broken_line_is_told() {
        let (lines, end) = all(vec![piece("a\nb"), piece("c\n"), piece("\nd"), Err(())], Form::Ndjson).await;
        let expected = [(1, "a"), (2, "bc"), (3, "")].map(|(number, text)| (number, text.to_owned()));
        assert_eq!(lines, expected);
        assert!(matches!(end, End::Broken { line: Some(4), .. }), "{end:?}");
        let (lines, end) = all(vec![piece("a\nb")], Form::Ndjson).await;
        assert_eq!((lines.len(), matches!(end, End::Whole)), (2, true));
    }

    #[tokio::test]
    async fn a_large_piece_is_handed_on_in_batches() {
        let text: String = (0..10_000).map(|number| format!("{number}\n")).collect();
        let mut source = Source::of_lines(stream::iter([piece(&text)]), Form::Ndjson, 100, None)
            .await
            .unwrap_or_else(|_| panic!());
        let (mut lines, mut batches) = (0, 0);
        while let Next::Batch(batch) = source.next().await {
            assert!(batch.iter().len() <= BATCH_LINES);
            lines += batch.iter().len();
            batches += 1;
        }
        assert_eq!(lines, 10_000);
        assert!(batches >= 10_000 / BATCH_LINES, "{batches}");
    }

    #[tokio::test]
    async fn the_header_of_a_table_is_read_first() {
        let pieces = vec![piece("\n\nrefer"), piece("ence,box\nx,4x4x2-1/8\ny,")];
        let mut source = Source::of_lines(stream::iter(pieces), Form::Csv, 100, None)
            .await
            .unwrap_or_else(|problem| panic!("{problem:?}"));
        assert_eq!(source.before.len(), 3);
        let Next::Batch(batch) = source.next().await else { panic!("no lines") };
        assert_eq!(batch.first, 4);
    }
}
