//! The trace that a request belongs to, as its caller says (W3C Trace Context, level 1).

use axum::http::{HeaderMap, HeaderName};

const TRACEPARENT: HeaderName = HeaderName::from_static("traceparent");

/// A trace, the span of the caller, and whether the caller records it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TraceContext {
    /// The trace; never zero.
    pub trace: u128,
    /// The span of the caller; never zero.
    pub parent: u64,
    /// Whether the caller records it.
    pub sampled: bool,
}

impl TraceContext {
    /// What the headers say; `None` when they say nothing or nothing valid.
    pub fn of(headers: &HeaderMap) -> Option<Self> {
        Self::read(headers.get(TRACEPARENT)?.to_str().ok()?)
    }

    fn read(text: &str) -> Option<Self> {
        let lower = |byte: u8| matches!(byte, b'0'..=b'9' | b'a'..=b'f');
        let mut parts = text.split('-');
        let mut part = |length| parts.next().filter(|part| part.len() == length && part.bytes().all(lower));
        let (version, trace, parent, flags) = (part(2)?, part(32)?, part(16)?, part(2)?);
        // a later version may have more after what this one has
        if version == "ff" || (version == "00" && parts.next().is_some()) {
            return None;
        }
        let trace = u128::from_str_radix(trace, 16).ok().filter(|trace| *trace != 0)?;
        let parent = u64::from_str_radix(parent, 16).ok().filter(|parent| *parent != 0)?;
        let flags = u8::from_str_radix(flags, 16).ok()?;
        Some(Self { trace, parent, sampled: flags & 1 == 1 })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_valid_parent_is_read_and_anything_else_ignored() {
        let good = "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01";
        let context = TraceContext::read(good).unwrap();
        assert_eq!(context.trace, 0x4bf9_2f35_77b3_4da6_a3ce_929d_0e0e_4736);
        assert_eq!((context.parent, context.sampled), (0x00f0_67aa_0ba9_02b7, true));
        assert!(TraceContext::read(&good.replace("00-4", "cc-4").replace("-01", "-00-more")).is_some());
        for wrong in [
            "",
            "00",
            "ff-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01",
            "00-00000000000000000000000000000000-00f067aa0ba902b7-01",
            "00-4bf92f3577b34da6a3ce929d0e0e4736-0000000000000000-01",
            "00-4BF92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01",
            "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01-more",
            "00_4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01",
            "00-4bf92f3577b34da6a3ce929d0e0e473é-00f067aa0ba902b7-01",
        ] {
            assert_eq!(TraceContext::read(wrong), None, "{wrong}");
        }
    }
}
