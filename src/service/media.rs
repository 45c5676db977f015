//! Content negotiation: what a body may be sent as (Content-Type), and what a caller accepts (Accept).

use super::problem::{Problem, ProblemKind};
use super::quality::thousandths;
use axum::http::{HeaderMap, HeaderName, header};
use mediatype::names::CHARSET;
use mediatype::{MediaType, MediaTypeList, Name, ReadParams, Value};

/// Anything but drawings, pages and takeoffs.
pub const JSON: &str = "application/json";

/// A drawing.
pub const SVG: &str = "image/svg+xml";

/// A page.
pub const HTML: &str = "text/html";

/// Asks that the body is said to be JSON, in UTF-8 and not encoded: `application/json`, or `application/…+json`.
pub fn sends_json(headers: &HeaderMap) -> Result<(), Problem> {
    if text(headers, &header::CONTENT_TYPE) == Some(JSON) && !headers.contains_key(header::CONTENT_ENCODING) {
        return Ok(());
    }
    sends(headers, |media_type| is_json(media_type).then_some(()), "problem-detail-media-type")
}

/// Whether a media type is JSON, plain or of some kind.
pub fn is_json(media_type: &str) -> bool {
    let is_kind = |kind: &str| !kind.is_empty() && !kind.contains('/');
    media_type == JSON
        || media_type
            .strip_prefix("application/")
            .and_then(|kind| kind.strip_suffix("+json"))
            .is_some_and(is_kind)
}

/// What a body is said to be, by its media type in lower case, in UTF-8 and not encoded.
pub fn sends<T>(
    headers: &HeaderMap,
    known: impl Fn(&str) -> Option<T>,
    unknown: &'static str,
) -> Result<T, Problem> {
    let refused = |key, given: &str| {
        Problem::new(ProblemKind::UnsupportedMediaType, key, [("given", given.to_owned())])
    };
    if let Some(encoding) = text(headers, &header::CONTENT_ENCODING).filter(|name| *name != "identity") {
        return Err(refused("problem-detail-content-encoding", encoding));
    }
    let content_type = text(headers, &header::CONTENT_TYPE);
    let content_type = content_type.ok_or_else(|| refused("problem-detail-no-media-type", ""))?;
    let parsed = MediaType::parse(content_type).map_err(|_| refused(unknown, content_type))?;
    let media_type = parsed.essence().to_string().to_ascii_lowercase();
    let found = known(&media_type).ok_or_else(|| refused(unknown, &media_type))?;
    let charset = parsed.get_param(CHARSET);
    match charset.as_ref().map(Value::unquoted_str) {
        Some(charset) if !charset.eq_ignore_ascii_case("utf-8") => {
            Err(refused("problem-detail-charset", &charset))
        }
        _ => Ok(found),
    }
}

/// Asks that the caller takes `application/json`, by the range of the Accept header that speaks of it most closely.
pub fn takes_json(headers: &HeaderMap) -> Result<(), Problem> {
    chosen(headers, &[JSON], "problem-detail-not-acceptable").map(|_| ())
}

/// The index of the media type that the caller takes best, the first of those that it takes alike.
///
/// # Errors
///
/// It takes none of them: the problem `not-acceptable`, with the sentence of a key.
pub fn chosen(headers: &HeaderMap, offered: &[&str], key: &'static str) -> Result<usize, Problem> {
    best(headers, offered).ok_or_else(|| Problem::new(ProblemKind::NotAcceptable, key, []))
}

fn best(headers: &HeaderMap, offered: &[&str]) -> Option<usize> {
    let mut ranges =
        headers.get_all(header::ACCEPT).iter().filter_map(|value| value.to_str().ok()).peekable();
    if ranges.peek().is_none() {
        return Some(0);
    }
    let ranges: Vec<MediaType<'_>> = ranges.flat_map(MediaTypeList::new).flatten().collect();
    let weight = |media_type: &str| {
        let kind = media_type.split('/').next().unwrap_or_default();
        let closeness = |range: &MediaType<'_>| match (range.ty.as_str(), range.subty.as_str()) {
            ("*", "*") => Some(0),
            (ty, "*") if ty.eq_ignore_ascii_case(kind) => Some(1),
            _ if range.essence().to_string().eq_ignore_ascii_case(media_type) => Some(2),
            _ => None,
        };
        // the closest range decides; of two that are as close, the first
        let close = ranges.iter().filter_map(|range| Some((closeness(range)?, range)));
        let closest = close.reduce(|first, next| if next.0 > first.0 { next } else { first });
        closest.map_or(0, |(_, range)| {
            let quality = range.get_param(Name::new_unchecked("q"));
            quality.map_or(1000, |quality| thousandths(quality.as_str()))
        })
    };
    let weights = offered.iter().map(|media_type| weight(media_type)).enumerate();
    weights
        .filter(|(_, weight)| *weight > 0)
        .reduce(|best, next| if next.1 > best.1 { next } else { best })
        .map(|(index, _)| index)
}

fn text<'a>(headers: &'a HeaderMap, name: &HeaderName) -> Option<&'a str> {
    headers.get(name).map(|value| value.to_str().unwrap_or_default())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn headers(name: HeaderName, value: &str) -> HeaderMap {
        HeaderMap::from_iter([(name, value.parse().unwrap())])
    }

    #[test]
    fn json_in_utf8_is_taken_however_it_is_said() {
        for good in [
            "application/json",
            "Application/JSON; charset=UTF-8",
            "application/json;charset=\"utf-8\"",
            "application/json; note=\"a;charset=latin1\"; charset=utf-8",
            "application/json;",
            "application/vnd.box+json",
        ] {
            assert!(sends_json(&headers(header::CONTENT_TYPE, good)).is_ok(), "{good}");
        }
        for bad in
            ["", "text/json", "application/json; charset=latin1", "application/+json", "application/xml"]
        {
            assert!(sends_json(&headers(header::CONTENT_TYPE, bad)).is_err(), "{bad}");
        }
        assert!(sends_json(&HeaderMap::new()).is_err());
        let mut encoded = headers(header::CONTENT_TYPE, "application/json");
        encoded.insert(header::CONTENT_ENCODING, "gzip".parse().unwrap());
        assert!(sends_json(&encoded).is_err());
    }

    #[test]
    fn the_closest_range_decides_whether_json_is_taken() {
        for good in [
            "*/*",
            "application/json",
            "text/html, application/*;q=0.1",
            "*/*;q=0, application/json",
            "text/html,*/*;q=0.8",
            "text/html;note=\"a,b;q=0\", application/json;note=\";q=0\"",
        ] {
            assert!(takes_json(&headers(header::ACCEPT, good)).is_ok(), "{good}");
        }
        for bad in ["text/html", "application/json;q=0, */*", "*/*;q=0.000", "application/problem+json", ""] {
            assert!(takes_json(&headers(header::ACCEPT, bad)).is_err(), "{bad}");
        }
        assert!(takes_json(&HeaderMap::new()).is_ok());
    }

    #[test]
    fn of_several_forms_the_one_with_the_greatest_weight_is_taken_and_the_first_of_equals() {
        let offered = ["text/csv", "application/json", "application/x-ndjson"];
        for (accept, best_of) in [
            ("*/*", Some(0)),
            ("application/*", Some(1)),
            ("application/json, application/x-ndjson", Some(1)),
            ("application/json;q=0.5, application/x-ndjson;q=0.9", Some(2)),
            ("*/*;q=0.1, application/x-ndjson;q=0.2", Some(2)),
            ("text/*;q=0, */*;q=0.3", Some(1)),
            ("text/html", None),
            ("*/*;q=0", None),
        ] {
            assert_eq!(best(&headers(header::ACCEPT, accept), &offered), best_of, "{accept}");
        }
        assert_eq!(best(&HeaderMap::new(), &offered), Some(0));
    }
}
