//! Structural choices of rules: what is added, which of two counts, how often. Each is a function over the proof, with a name.
//!
//! A subject declares its choices and has a [`Strategy`] for each among its fields, as it has its figures. What a choice takes,
//! and the way of the code, stand in the check that makes it, beside the sums; so nothing here knows a proof. The other ways are
//! in `training`. The name of a strategy is a datum of the rules: digests cover it.

use super::declare::Figures;
use serde::Serialize;
use std::fmt;

/// A structural choice of a rule.
pub trait Choice: Sized + 'static {
    /// The function that makes it.
    type Apply: Copy + Send + Sync;

    /// The way of the code.
    const LAWFUL: Strategy<Self>;
}

/// One way to make a choice.
#[derive(Serialize)]
#[serde(bound = "")]
pub struct Strategy<C: Choice> {
    /// What it is called, unlike every other way to make the same choice.
    #[serde(rename = "strategy")]
    pub name: &'static str,
    /// The function.
    #[serde(skip)]
    pub apply: C::Apply,
}

impl<C: Choice> Strategy<C> {
    /// A function with its name.
    pub const fn new(name: &'static str, apply: C::Apply) -> Self {
        Self { name, apply }
    }
}

impl<C: Choice> Clone for Strategy<C> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<C: Choice> Copy for Strategy<C> {}

impl<C: Choice> fmt::Debug for Strategy<C> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name)
    }
}

impl<C: Choice> PartialEq for Strategy<C> {
    fn eq(&self, other: &Self) -> bool {
        self.name == other.name
    }
}

impl<C: Choice> Eq for Strategy<C> {}

impl<C: Choice> Figures for Strategy<C> {}

/// Declares structural choices, which are types without values.
macro_rules! choices {
    ($($(#[$doc:meta])* $name:ident;)+) => {
        $($(#[$doc])* #[derive(Debug)] pub enum $name {})+
    };
}

pub(super) use choices;
