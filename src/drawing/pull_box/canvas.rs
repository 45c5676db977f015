//! What a box is drawn on: the sheet, its frame, and what of the paper is occupied.

use super::facts::Facts;
use super::frame::Frame;
use super::occupied::{Area, Occupied};
use super::view::BoxView;
use crate::drawing::sheet::{Anchor, Letters, Point, Sheet, text_width};

/// One box under construction.
pub(super) struct Canvas<'c, 'w> {
    pub sheet: &'c mut Sheet<'w>,
    pub facts: &'c Facts<'c>,
    pub view: &'c BoxView<'c>,
    pub frame: Frame,
    pub occupied: Occupied,
}

impl Canvas<'_, '_> {
    /// One line of text, over which nothing else is to be written.
    pub fn write(&mut self, point: Point, anchor: Anchor, letters: Letters, text: &str) {
        self.write_as_wide(point, anchor, letters, text, text_width(text));
    }

    /// The same, with its width.
    pub fn write_as_wide(&mut self, point: Point, anchor: Anchor, letters: Letters, text: &str, width: f64) {
        self.sheet.text(point, anchor, letters, text);
        self.occupied.take(Area::of_text(point, anchor, width));
    }
}
