//! Whole takeoffs: many items in, their answers out in the same order, line by line.
//!
//! | module | what it is for |
//! |---|---|
//! | [`form`] | the forms in which a takeoff is sent and answered |
//! | [`source`] | from a body or a file to batches of lines |
//! | [`line_stream`] | lines that arrive, with a timeout for the next |
//! | [`list`] | the items of one JSON document |
//! | [`item`] | one item: which check it names, and its answer or what is wrong with it |
//! | [`batch`] | the answers to a batch, and what the summary takes from them |
//! | [`record_writer`] | answers, problems and the summary, written in one of the forms |
//! | [`stream`] | answers in order, evaluated by the worker pool in bounded memory |
//! | [`route`], [`operation`] | `POST /v1/takeoffs`, served and described |

pub mod batch;
pub mod form;
pub mod item;
pub mod line_stream;
pub mod list;
pub mod operation;
pub mod record_writer;
pub mod route;
pub mod source;
pub mod stream;

/// The path of the operation.
pub const PATH: &str = "/v1/takeoffs";
