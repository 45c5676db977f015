//! From pieces of text, as they arrive, to batches of whole lines. What is kept is bounded by the longest line and the
//! size of a batch, however long the text is.
//!
//! A line ends with a line feed; the last one need not. A carriage return before it belongs to the ending. A line of
//! nothing but white space is blank: it is counted, and answered with nothing.

use std::collections::VecDeque;
use std::ops::Range;

/// The most bytes of text that one batch should hold; a line that is longer is a batch of its own.
pub const BATCH_BYTES: usize = 16 * 1024;

/// The most lines of one batch: short lines may have long answers.
pub const BATCH_LINES: usize = 128;

/// One line of a batch.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Line {
    /// Its text, without its ending, as a part of the batch.
    Text(Range<usize>),
    /// It was longer than lines may be, and is not kept.
    TooLong,
}

/// Some lines that follow one another.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Batch {
    /// The number of the first of them, from 1.
    pub first: u64,
    text: Vec<u8>,
    lines: VecDeque<Line>,
}

impl Batch {
    /// A batch of texts that are lines each.
    pub fn of<'a>(first: u64, texts: impl IntoIterator<Item = &'a [u8]>) -> Self {
        let mut batch = Self { first, ..Self::default() };
        for text in texts {
            let start = batch.text.len();
            batch.text.extend_from_slice(text);
            batch.lines.push_back(Line::Text(start..batch.text.len()));
        }
        batch
    }

    /// The lines with their numbers; `None` for one that was too long.
    pub fn iter(&self) -> impl ExactSizeIterator<Item = (u64, Option<&[u8]>)> {
        self.lines.iter().enumerate().map(|(index, line)| {
            let text = match line {
                Line::Text(range) => self.text.get(range.clone()),
                Line::TooLong => None,
            };
            (self.first + index as u64, text)
        })
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
/// lines.feed(b"one\r\ntw");
/// lines.feed(b"o\nfar too long\n\nend");
/// lines.finish();
/// let batch = lines.take().unwrap();
/// let texts: Vec<_> = batch.iter().map(|(number, text)| (number, text.map(str::from_utf8).transpose().unwrap())).collect();
/// assert_eq!(texts, [(1, Some("one")), (2, Some("two")), (3, None), (4, Some("")), (5, Some("end"))]);
/// ```
#[derive(Clone, Debug)]
pub struct Lines {
    longest: usize,
    next: u64,
    text: Vec<u8>,
    lines: VecDeque<Line>,
    /// Where the text of the open line starts.
    start: usize,
    /// Whether the open line is longer than lines may be.
    too_long: bool,
}

impl Lines {
    /// Lines of so many bytes at the most.
    pub const fn new(longest: usize) -> Self {
        Self { longest, next: 1, text: Vec::new(), lines: VecDeque::new(), start: 0, too_long: false }
    }

    /// Takes in a piece.
    pub fn feed(&mut self, mut piece: &[u8]) {
        while let Some(end) = memchr::memchr(b'\n', piece) {
            let (line, rest) = piece.split_at(end);
            self.extend(line);
            self.close();
            piece = rest.get(1..).unwrap_or_default();
        }
        self.extend(piece);
    }

    /// Ends the last line, where its ending is missing.
    pub fn finish(&mut self) {
        if self.is_open() {
            self.close();
        }
    }

    /// Whether a line has begun and not ended.
    pub fn is_open(&self) -> bool {
        self.too_long || self.text.len() > self.start
    }

    /// Whether there is enough for a batch.
    pub fn is_full(&self) -> bool {
        self.lines.len() >= BATCH_LINES || self.start >= BATCH_BYTES
    }

    /// The number of the line that has not ended yet.
    pub fn next_number(&self) -> u64 {
        self.next + self.lines.len() as u64
    }

    /// Takes out the first whole line; `None` when there is none. An inner `None` is a line that was too long.
    pub fn pop(&mut self) -> Option<(u64, Option<Vec<u8>>)> {
        let line = self.lines.pop_front()?;
        let number = self.next;
        self.next += 1;
        let text = match line {
            Line::Text(range) => self.text.get(range).map(<[u8]>::to_vec),
            Line::TooLong => None,
        };
        Some((number, text))
    }

    /// Takes out the whole lines, [`BATCH_LINES`] of them at the most; `None` when there is none.
    pub fn take(&mut self) -> Option<Batch> {
        if self.lines.is_empty() {
            return None;
        }
        let first = self.next;
        if self.lines.len() > BATCH_LINES {
            let rest = self.lines.split_off(BATCH_LINES);
            let lines = std::mem::replace(&mut self.lines, rest);
            self.next += lines.len() as u64;
            let texts = lines.iter().map(|line| match line {
                Line::Text(range) => self.text.get(range.clone()),
                Line::TooLong => None,
            });
            return Some(Batch::of_lines(first, texts));
        }
        let open = self.text.split_off(self.start);
        let text = std::mem::replace(&mut self.text, open);
        let lines = std::mem::take(&mut self.lines);
        self.next += lines.len() as u64;
        self.start = 0;
        Some(Batch { first, text, lines })
    }

    fn extend(&mut self, part: &[u8]) {
        let length = self.text.len() - self.start + part.len();
        if self.too_long || length > self.longest {
            self.too_long = true;
            self.text.truncate(self.start);
        } else {
            self.text.extend_from_slice(part);
        }
    }

    fn close(&mut self) {
        if std::mem::take(&mut self.too_long) {
            self.lines.push_back(Line::TooLong);
            return;
        }
        let end = self.text.len();
        let carriage = self.text.get(self.start..).is_some_and(|line| line.ends_with(b"\r"));
        self.lines.push_back(Line::Text(self.start..end - usize::from(carriage)));
        self.start = end;
    }
}

impl Batch {
    fn of_lines<'a>(first: u64, texts: impl Iterator<Item = Option<&'a [u8]>>) -> Self {
        let mut batch = Self { first, ..Self::default() };
        for text in texts {
            let start = batch.text.len();
            match text {
                Some(text) => {
                    batch.text.extend_from_slice(text);
                    batch.lines.push_back(Line::Text(start..batch.text.len()));
                }
                None => batch.lines.push_back(Line::TooLong),
            }
        }
        batch
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
                let (piece, after) = rest.split_at((*cut).min(rest.len()));
                lines.feed(piece);
                rest = after;
                if cut % 2 == 0 {
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
        assert!(lines.text.capacity() <= 1_100, "{}", lines.text.capacity());
        lines.feed(b"\nafter\n");
        assert_eq!(all(&mut lines), [(1, None), (2, Some(b"after".to_vec()))]);
    }

    #[test]
    fn the_first_line_can_be_taken_alone() {
        let mut lines = Lines::new(100);
        lines.feed(b"header\nfirst\nsec");
        assert_eq!(lines.pop(), Some((1, Some(b"header".to_vec()))));
        assert_eq!(all(&mut lines), [(2, Some(b"first".to_vec()))]);
        assert_eq!(lines.pop(), None);
        lines.finish();
        assert_eq!(all(&mut lines), [(3, Some(b"sec".to_vec()))]);
    }
}
