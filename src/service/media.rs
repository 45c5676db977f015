//! What a body may be sent as, and whether a caller takes JSON.

use super::problem::{Problem, ProblemKind};
use axum::http::{HeaderMap, HeaderName, header};

/// Asks that the body is said to be JSON, in UTF-8 and not encoded: `application/json`, or `application/…+json`.
pub fn sends_json(headers: &HeaderMap) -> Result<(), Problem> {
    let refused = |key, named: Vec<(&'static str, String)>| {
        Err(Problem::told(ProblemKind::UnsupportedMediaType, key, named))
    };
    let given = |text: &str| vec![("given", text.to_owned())];
    if let Some(encoding) =
        text(headers, &header::CONTENT_ENCODING).filter(|encoding| *encoding != "identity")
    {
        return refused("problem-detail-content-encoding", given(encoding));
    }
    let Some(content_type) = text(headers, &header::CONTENT_TYPE) else {
        return refused("problem-detail-no-media-type", Vec::new());
    };
    if content_type == "application/json" {
        return Ok(());
    }
    let mut parts = content_type.split(';').map(str::trim);
    let media_type = parts.next().unwrap_or_default().to_ascii_lowercase();
    let is_json = media_type == "application/json"
        || media_type
            .strip_prefix("application/")
            .is_some_and(|kind| kind.len() > "+json".len() && kind.ends_with("+json"));
    if !is_json {
        return refused("problem-detail-media-type", given(&media_type));
    }
    for (name, value) in parts.filter_map(|parameter| parameter.split_once('=')) {
        let value = value.trim_matches('\u{22}');
        if name.eq_ignore_ascii_case("charset") && !value.eq_ignore_ascii_case("utf-8") {
            return refused("problem-detail-charset", given(value));
        }
    }
    Ok(())
}

/// Asks that the caller takes `application/json`, by the range of the Accept header that speaks of it most closely.
pub fn takes_json(headers: &HeaderMap) -> Result<(), Problem> {
    let mut ranges =
        headers.get_all(header::ACCEPT).iter().filter_map(|value| value.to_str().ok()).peekable();
    if ranges.peek().is_none() {
        return Ok(());
    }
    let mut closest: Option<(u8, bool)> = None;
    for range in ranges.flat_map(|ranges| ranges.split(',')) {
        let mut parts = range.split(';').map(str::trim);
        let closeness = match parts.next().unwrap_or_default().to_ascii_lowercase().as_str() {
            "*/*" => 0,
            "application/*" => 1,
            "application/json" => 2,
            _ => continue,
        };
        let refused = parts
            .filter_map(|parameter| parameter.split_once('='))
            .any(|(name, weight)| name.eq_ignore_ascii_case("q") && is_zero(weight));
        if closest.is_none_or(|(known, _)| closeness > known) {
            closest = Some((closeness, !refused));
        }
    }
    match closest {
        Some((_, true)) => Ok(()),
        _ => Err(Problem::told(ProblemKind::NotAcceptable, "problem-detail-not-acceptable", [])),
    }
}

/// Whether a weight is zero: `0`, `0.`, `0.000`.
fn is_zero(weight: &str) -> bool {
    weight.starts_with('0') && weight.bytes().all(|byte| matches!(byte, b'0' | b'.'))
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
        ] {
            assert!(takes_json(&headers(header::ACCEPT, good)).is_ok(), "{good}");
        }
        for bad in ["text/html", "application/json;q=0, */*", "*/*;q=0.000", "application/problem+json", ""] {
            assert!(takes_json(&headers(header::ACCEPT, bad)).is_err(), "{bad}");
        }
        assert!(takes_json(&HeaderMap::new()).is_ok());
    }
}
