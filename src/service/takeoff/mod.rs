//! Whole takeoffs: many items in, their answers out in the same order, line by line.
//!
//! | module | what it is for |
//! |---|---|
//! | [`form`] | the forms in which a takeoff is sent and answered |
//! | [`source`] | from a body or a file to batches of lines |
//! | [`arriving`] | lines that arrive, and how long they are waited for |
//! | [`list`] | the items of one JSON document |
//! | [`item`] | one item: which check it names, and its answer or what is wrong with it |
//! | [`batch`] | the answers to a batch, and what the summary takes from them |
//! | [`scribe`] | answers, problems and the summary, written in one of the forms |
//! | [`stream`] | both ends and the processors between them, in order and in bounded memory |
//! | [`route`], [`operation`] | `POST /v1/takeoffs`, served and described |

pub mod arriving;
pub mod batch;
pub mod form;
pub mod item;
pub mod list;
pub mod operation;
pub mod route;
pub mod scribe;
pub mod source;
pub mod stream;

/// The path of the operation.
pub const PATH: &str = "/v1/takeoffs";
