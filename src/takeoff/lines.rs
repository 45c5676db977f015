//! From pieces of text, as they arrive, to batches of whole lines, in memory bounded by the longest line and the size of a
//! batch.
//!
//! A line ends with a line feed, the last one need not. A carriage return before it belongs to the ending. A line of nothing
//! but white space is blank: it is counted, and not answered.
//!
//! `LinesCodec` of tokio-util does not fit: it refuses text that is not UTF-8, which here is the fault of one line, and
//! allocates each line.

use std::collections::VecDeque;
use std::ops::Range;

/// The most bytes of text that one batch should hold; a longer line is a batch of its own.
pub const BATCH_BYTES: usize = 16 * 1024;

/// The most lines of one batch: short lines may have long answers.
pub const BATCH_LINES: usize = 128;

/// Consecutive lines.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Batch {
    /// The number of the first line, from 1.
    pub first: u64,
    text: Vec<u8>,
    /// Each line without its ending, as a part of the text; `None` for one that was too long, which is not kept.
    lines: VecDeque<Option<Range<usize>>>,
}

impl Batch {
    /// A batch of lines.
    pub fn of<'a>(first: u64, texts: impl IntoIterator<Item = &'a [u8]>) -> Self {
        let mut batch = Self { first, ..Self::default() };
        for text in texts {
            let start = batch.text.len();
            batch.text.extend_from_slice(text);
            batch.lines.push_back(Some(start..batch.text.len()));
        }
        batch
    }

    /// The lines with their numbers; `None` for one that was too long.
    pub fn iter(&self) -> impl ExactSizeIterator<Item = (u64, Option<&[u8]>)> {
        self.lines.iter().enumerate().map(|(index, line)| {
            let text = line.clone().and_then(|range| self.text.get(range));
            (self.first + index as u64, text)
        })
    }

    /// Takes out the first line; an inner `None` is a line that was too long.
    pub fn pop(&mut self) -> Option<Option<&[u8]>> {
        let line = self.lines.pop_front()?;
        self.first += 1;
        Some(line.and_then(|range| self.text.get(range)))
    }

    /// How many bytes of text it holds.
    pub fn bytes(&self) -> usize {
        self.text.len()
    }
}

/// Takes in pieces of text and gives out batches of whole lines.
///
/// ```
/// use elbowroom::takeoff::lines::Lines;
/// let mut lines = Lines::new(8);
/// for piece in ["one\r\ntw", "o\nfar too long\n\nend"] {
///     assert_eq!(lines.feed(piece.as_bytes()), piece.len());
/// }
/// lines.finish();
/// let batch = lines.take().unwrap();
/// let texts: Vec<_> = batch.iter().map(|(number, text)| (number, text.map(str::from_utf8).transpose().unwrap())).collect();
/// assert_eq!(texts, [(1, Some("one")), (2, Some("two")), (3, None), (4, Some("")), (5, Some("end"))]);
/// ```
#[derive(Clone, Debug)]
pub struct Lines {
    longest: usize,
    batch: Batch,
    /// Where the text of the open line starts.
    start: usize,
    /// Whether the open line is longer than lines may be.
    too_long: bool,
}

impl Lines {
    /// Lines of at most `longest` bytes.
    pub fn new(longest: usize) -> Self {
        Self { longest, batch: Batch { first: 1, ..Batch::default() }, start: 0, too_long: false }
    }

    /// Takes in a piece until a batch is full, and returns how many bytes were taken.
    pub fn feed(&mut self, piece: &[u8]) -> usize {
        let mut rest = piece;
        while !self.is_full() && !rest.is_empty() {
            match memchr::memchr(b'\n', rest) {
                Some(end) => {
                    let (line, after) = rest.split_at(end);
                    self.extend(line);
                    self.close();
                    rest = after.get(1..).unwrap_or_default();
                }
                None => self.extend(std::mem::take(&mut rest)),
            }
        }
        piece.len() - rest.len()
    }

    /// Ends the last line, where its ending is missing.
    pub fn finish(&mut self) {
        if self.is_open() {
            self.close();
        }
    }

    /// Whether a line has begun and not ended.
    pub fn is_open(&self) -> bool {
        self.too_long || self.batch.text.len() > self.start
    }

    /// Whether there is enough for a batch.
    pub fn is_full(&self) -> bool {
        self.batch.lines.len() >= BATCH_LINES || self.start >= BATCH_BYTES
    }

    /// The number of the line that has not ended yet.
    pub fn next_number(&self) -> u64 {
        self.batch.first + self.batch.lines.len() as u64
    }

    /// Takes out the whole lines; `None` when there are none.
    pub fn take(&mut self) -> Option<Batch> {
        if self.batch.lines.is_empty() {
            return None;
        }
        let open = self.batch.text.split_off(std::mem::take(&mut self.start));
        let rest = Batch { first: self.next_number(), text: open, lines: VecDeque::new() };
        Some(std::mem::replace(&mut self.batch, rest))
    }

    fn extend(&mut self, part: &[u8]) {
        let text = &mut self.batch.text;
        if self.too_long || text.len() - self.start + part.len() > self.longest {
            self.too_long = true;
            text.truncate(self.start);
        } else {
            text.extend_from_slice(part);
        }
    }

    fn close(&mut self) {
        let line = if std::mem::take(&mut self.too_long) {
            None
        } else {
            let start = std::mem::replace(&mut self.start, self.batch.text.len());
            let line = self.batch.text.get(start..).unwrap_or_default();
            Some(start..start + line.strip_suffix(b"\r").unwrap_or(line).len())
        };
        self.batch.lines.push_back(line);
    }
}

/// Whether a line is blank.
pub fn is_blank(line: &[u8]) -> bool {
    line.iter().all(u8::is_ascii_whitespace)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn all(lines: &mut Lines) -> Vec<(u64, Option<Vec<u8>>)> {
        let mut all = Vec::new();
        while let Some(batch) = lines.take() {
            assert!(batch.iter().len() <= BATCH_LINES);
            all.extend(batch.iter().map(|(number, text)| (number, text.map(<[u8]>::to_vec))));
        }
        all
    }

    proptest! {
        /// However a text is cut into pieces, and whenever batches are taken, its lines are the same.
        #[test]
        fn pieces_make_no_difference(
            texts in prop::collection::vec("[ab\r]{0,12}", 0..300),
            cuts in prop::collection::vec(1_usize..40, 1..20),
            ends in any::<bool>(),
        ) {
            let mut text = texts.join("\n");
            if ends && !text.is_empty() {
                text.push('\n');
            }
            let longest = 8;
            let expected: Vec<Option<Vec<u8>>> = text
                .split_inclusive('\n')
                .map(|line| line.strip_suffix('\n').unwrap_or(line))
                .map(|line| (line.len() <= longest).then(|| line.strip_suffix('\r').unwrap_or(line).into()))
                .collect();
            let (mut lines, mut found, mut rest) = (Lines::new(longest), Vec::new(), text.as_bytes());
            for cut in cuts.iter().cycle() {
                if rest.is_empty() {
                    break;
                }
                let piece = rest.split_at((*cut).min(rest.len())).0;
                let taken = lines.feed(piece);
                rest = rest.split_at(taken).1;
                if cut % 2 == 0 || lines.is_full() {
                    found.extend(all(&mut lines));
                }
            }
            lines.finish();
            found.extend(all(&mut lines));
            let numbers: Vec<u64> = found.iter().map(|(number, _)| *number).collect();
            prop_assert_eq!(numbers, (1..=expected.len() as u64).collect::<Vec<u64>>());
            prop_assert_eq!(lines.next_number(), expected.len() as u64 + 1);
            prop_assert_eq!(found.into_iter().map(|(_, text)| text).collect::<Vec<_>>(), expected);
        }
    }

    #[test]
    fn a_line_without_end_takes_no_room() {
        let mut lines = Lines::new(100);
        for _ in 0..10_000 {
            lines.feed(&[b'x'; 1_000]);
        }
        assert!(lines.batch.text.capacity() <= 1_100, "{}", lines.batch.text.capacity());
        lines.feed(b"\nafter\n");
        assert_eq!(all(&mut lines), [(1, None), (2, Some(b"after".to_vec()))]);
    }

    #[test]
    fn the_first_line_can_be_taken_alone() {
        let mut lines = Lines::new(100);
        lines.feed(b"header\nfirst\nsec");
        let mut batch = lines.take().unwrap();
        assert_eq!(batch.pop(), Some(Some(&b"header"[..])));
        assert_eq!(batch.iter().collect::<Vec<_>>(), [(2, Some(&b"first"[..]))]);
        lines.finish();
        assert_eq!(all(&mut lines), [(3, Some(b"sec".to_vec()))]);
    }
}
