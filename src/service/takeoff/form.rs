//! The forms in which a takeoff is sent and answered.

use crate::service::media;
use crate::service::problem::Problem;
use axum::http::HeaderMap;
use clap::ValueEnum;

/// A form.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum Form {
    /// One JSON document.
    Json,
    /// One item or answer a line.
    Ndjson,
    /// A table.
    Csv,
}

impl Form {
    /// Every form.
    pub const ALL: [Self; 3] = [Self::Json, Self::Ndjson, Self::Csv];

    /// The media type.
    pub const fn media_type(self) -> &'static str {
        match self {
            Self::Json => media::JSON,
            Self::Ndjson => "application/x-ndjson",
            Self::Csv => "text/csv",
        }
    }

    fn named(media_type: &str) -> Option<Self> {
        match media_type {
            "application/x-ndjson" | "application/ndjson" | "application/jsonl" => Some(Self::Ndjson),
            "text/csv" => Some(Self::Csv),
            other => media::is_json(other).then_some(Self::Json),
        }
    }

    /// The form that a takeoff is sent in.
    pub fn sent(headers: &HeaderMap) -> Result<Self, Problem> {
        media::sends(headers, Self::named, "problem-detail-takeoff-media-type")
    }

    /// The form that the caller wants the answers in: the one of the takeoff, unless it asks for another.
    pub fn wanted(headers: &HeaderMap, sent: Self) -> Result<Self, Problem> {
        let mut offered = vec![sent];
        offered.extend(Self::ALL.into_iter().filter(|form| *form != sent));
        let media_types: Vec<&str> = offered.iter().map(|form| form.media_type()).collect();
        media::chosen(headers, &media_types, "problem-detail-takeoff-not-acceptable")
            .map(|best| offered[best])
    }
}
