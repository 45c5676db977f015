//! Many checks at once: the lines of a takeoff, what they add up to, and tables in trade words.
//!
//! | module | what it is for |
//! |---|---|
//! | [`lines`] | from pieces of text to batches of lines, in bounded memory |
//! | [`table`] | a line of a CSV in trade words as the request of a check |
//! | [`summary`] | every line accounted for |
//! | [`bill`] | what the job needs |
//! | [`row`] | an answer, a refusal or a summary as rows of a CSV |
//! | [`demo`] | an invented job of any size |

pub mod bill;
pub mod demo;
pub mod lines;
pub mod row;
pub mod summary;
pub mod table;
