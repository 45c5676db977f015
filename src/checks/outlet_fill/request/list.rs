//! A list that remembers whether the request wrote it out.

use crate::quantity::{Conversion, Convert};
use serde::{Deserialize, Deserializer, Serialize};
use std::ops::{Deref, DerefMut};

/// A list of things. One written out empty says that there is nothing of its kind; one that is left out says nothing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(transparent)]
pub struct List<T> {
    items: Vec<T>,
    #[serde(skip)]
    is_said: bool,
}

impl<T> List<T> {
    /// A list that says nothing.
    pub const UNSAID: Self = Self { items: Vec::new(), is_said: false };

    /// Whether the request wrote it out, be it empty.
    pub const fn is_said(&self) -> bool {
        self.is_said
    }

    /// Whether it was left out.
    pub const fn is_unsaid(&self) -> bool {
        !self.is_said
    }
}

impl<T> Default for List<T> {
    fn default() -> Self {
        Self::UNSAID
    }
}

impl<T> From<Vec<T>> for List<T> {
    fn from(items: Vec<T>) -> Self {
        Self { items, is_said: true }
    }
}

impl<T: Convert> Convert for List<T> {
    fn convert(&mut self, by: &Conversion) {
        self.items.convert(by);
    }
}

impl<T> Deref for List<T> {
    type Target = Vec<T>;
    fn deref(&self) -> &Vec<T> {
        &self.items
    }
}

impl<T> DerefMut for List<T> {
    fn deref_mut(&mut self) -> &mut Vec<T> {
        &mut self.items
    }
}

impl<'a, T> IntoIterator for &'a List<T> {
    type Item = &'a T;
    type IntoIter = std::slice::Iter<'a, T>;
    fn into_iter(self) -> Self::IntoIter {
        self.items.iter()
    }
}

impl<'a, T> IntoIterator for &'a mut List<T> {
    type Item = &'a mut T;
    type IntoIter = std::slice::IterMut<'a, T>;
    fn into_iter(self) -> Self::IntoIter {
        self.items.iter_mut()
    }
}

impl<'de, T: Deserialize<'de>> Deserialize<'de> for List<T> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Vec::deserialize(deserializer).map(Self::from)
    }
}
