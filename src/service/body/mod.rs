//! From the bytes of a body to a request without faults.
//!
//! The fast path is one run of the strict deserializer. Only when it fails is the body looked at again: by the lenient parser, for
//! members that stand twice, and by the validator, against the schema that the operation publishes, so that every fault is listed.

pub mod lenient;
pub mod schema;
mod validator;
mod vocabulary;

pub use vocabulary::KEYWORDS;

use super::fault_list::{FaultList, FaultView};
use super::problem::Problem;
use crate::checks::{Check, FaultCode, faults_of};
use crate::json;
use serde::de::DeserializeOwned;
use serde_json::Value;
use utoipa::ToSchema;

/// Reads a request of a check; the problem lists every fault.
pub fn read<C: Check>(body: &[u8]) -> Result<C::Request, Problem> {
    match json::read::<C::Request>(body) {
        Ok(request) => {
            let faults = faults_of::<C>(&request);
            if faults.is_empty() { Ok(request) } else { Err(Problem::invalid((&faults).into())) }
        }
        Err(error) => Err(refuse(body, &error, schema::of_request::<C>())),
    }
}

/// Reads a body of another operation against the schema that is published for it. Parts of such a body are only read by the
/// checks, some of them not at all: what decodes is held against the schema as well.
pub fn read_as<T: DeserializeOwned + ToSchema>(body: &[u8]) -> Result<T, Problem> {
    let schema = schema::of::<T>();
    let decoded = json::read::<T>(body).map_err(|error| refuse(body, &error, schema))?;
    let faults = faults_in(body, schema)?;
    if faults.is_empty() { Ok(decoded) } else { Err(Problem::invalid(faults)) }
}

/// Says everything that is wrong with a body that did not decode.
pub(super) fn refuse(body: &[u8], error: &serde_json::Error, schema: schema::Schema<'_>) -> Problem {
    match faults_in(body, schema) {
        Ok(mut faults) => {
            if faults.is_empty() {
                faults.push(not_accepted(error));
            }
            Problem::invalid(faults)
        }
        Err(problem) => problem,
    }
}

/// Every fault of a body, members that stand twice among them; or that it is no JSON.
fn faults_in(body: &[u8], schema: schema::Schema<'_>) -> Result<FaultList, Problem> {
    let read = lenient::read(body)?;
    let mut faults = read.faults;
    validator::validate(schema, &read.value, &read.skipped, &mut faults);
    Ok(faults)
}

/// The fault of a body that the schema accepts and typed decoding does not.
fn not_accepted(error: &serde_json::Error) -> FaultView {
    let named = [("line", error.line().to_string()), ("column", error.column().to_string())];
    FaultView::in_body(String::new(), FaultCode::NotAccepted, "fault-decode-not-accepted", named)
}

/// The problem of a body that did not arrive whole.
pub fn broken_off() -> Problem {
    let fault = FaultView::in_body(String::new(), FaultCode::MalformedJson, "fault-json-incomplete", []);
    Problem::malformed(fault)
}

/// Every fault that a schema finds in a value: what the failure path says of a body.
pub fn faults_under(schema: schema::Schema<'_>, value: &Value) -> FaultList {
    let mut faults = FaultList::default();
    validator::validate(schema, value, &[], &mut faults);
    faults
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::trade::TradeSize;
    use serde_json::json;
    use utoipa::PartialSchema;

    fn codes(faults: &FaultList) -> Vec<(&str, FaultCode)> {
        faults.kept().iter().map(|fault| (fault.pointer.as_deref().unwrap(), fault.code)).collect()
    }

    #[test]
    fn a_value_that_only_decoding_refuses_is_not_accepted_with_its_place() {
        let error = json::read::<u8>(b"\n 300").unwrap_err();
        let schema = json!({"type": "integer"});
        let problem = refuse(b"\n 300", &error, schema::Schema::alone(&schema));
        assert_eq!(codes(&problem.faults), [("", FaultCode::NotAccepted)]);
        assert!(problem.faults.kept()[0].detail.contains('2'), "{:?}", problem.faults);
    }

    #[test]
    fn a_trade_size_is_refused_in_either_form_with_the_sizes_that_are_known() {
        let schema = serde_json::to_value(TradeSize::schema()).unwrap();
        let faults = |value| faults_under(schema::Schema::alone(&schema), &value);
        assert!(faults(json!("1 1/4")).is_empty());
        assert!(faults(json!({"metric_designator": 35})).is_empty());
        let unknown = faults(json!("7"));
        assert_eq!(codes(&unknown), [("", FaultCode::UnknownTradeSize)]);
        assert_eq!(unknown.kept()[0].accepted.len(), TradeSize::all().count());
        assert_eq!(
            codes(&faults(json!({"metric_designator": 36}))),
            [("/metric_designator", FaultCode::UnknownValue)]
        );
        assert_eq!(codes(&faults(json!({}))), [("/metric_designator", FaultCode::MissingMember)]);
        assert_eq!(codes(&faults(json!(4))), [("", FaultCode::WrongType)]);
    }

    #[test]
    fn lists_are_no_objects_and_objects_no_words_for_the_typed_decode_either() {
        use crate::checks::outlet_fill::OutletFillRequest;
        for positional in [
            r#"["2023"]"#,
            r#"{"enclosure": [null]}"#,
            r#"{"contents": {"devices": [["S1", "switch"]]}}"#,
            r#"{"contents": {"clamps": [{"kind": {"internal": null}}]}}"#,
        ] {
            assert!(json::read::<OutletFillRequest>(positional.as_bytes()).is_err(), "{positional}");
        }
    }
}
