//! Query parameters: only those that an operation has, each once, with values of a closed set.

use super::fault_list::{FaultList, FaultView};
use super::problem::Problem;
use crate::answers::Explain;
use crate::checks::FaultCode;

/// The only query parameter of a check.
pub const EXPLAIN: &str = "explain";

/// Each value of `explain`.
pub const EXPLAIN_VALUES: [(&str, Explain); 3] =
    [("full", Explain::Full), ("summary", Explain::Summary), ("none", Explain::None)];

/// How much of the proof a query asks for; everything when it does not say.
pub fn explain(query: Option<&str>) -> Result<Explain, Problem> {
    explain_or(query, Explain::default())
}

/// How much of the proof a query asks for, with what is meant when it does not say.
pub fn explain_or(query: Option<&str>, usual: Explain) -> Result<Explain, Problem> {
    let [explain] = chosen(query, [(EXPLAIN, &EXPLAIN_VALUES.map(|(name, _)| name))])?;
    Ok(explain.map_or(usual, |place| EXPLAIN_VALUES[place].1))
}

/// Whether a query says yes to the only parameter that an operation has; it says no unless it is there.
pub fn flag(query: Option<&str>, name: &'static str) -> Result<bool, Problem> {
    let [index] = chosen(query, [(name, YES_OR_NO)])?;
    Ok(index == Some(0))
}

/// The values of a parameter that is a flag.
pub const YES_OR_NO: &[&str] = &["true", "false"];

/// For each parameter of an operation the place of its value among those that it takes; `None` where it is not given.
pub fn chosen<const N: usize>(
    query: Option<&str>,
    parameters: [(&str, &[&str]); N],
) -> Result<[Option<usize>; N], Problem> {
    let mut places = [None; N];
    let mut faults = FaultList::default();
    for (parameter, value) in form_urlencoded::parse(query.unwrap_or_default().as_bytes()) {
        let known = parameters.iter().zip(&mut places).find(|((name, _), _)| *name == parameter);
        let Some(((_, values), place)) = known else {
            let named = [("parameter", parameter.to_string())];
            let (code, key) = (FaultCode::UnknownParameter, "fault-query-unknown-parameter");
            let fault = FaultView::in_query(&parameter, code, key, named);
            faults.push(fault.accepting(parameters.map(|(name, _)| name), Some(&parameter)));
            continue;
        };
        if place.is_some() {
            let named = [("parameter", parameter.to_string())];
            let (code, key) = (FaultCode::DuplicateMember, "fault-query-duplicate");
            faults.push(FaultView::in_query(&parameter, code, key, named));
            continue;
        }
        *place = values.iter().position(|known| *known == value);
        if place.is_none() {
            let named = [("parameter", parameter.to_string()), ("given", value.to_string())];
            let fault =
                FaultView::in_query(&parameter, FaultCode::UnknownValue, "fault-query-unknown-value", named);
            faults.push(fault.accepting(values.iter().copied(), Some(&value)));
        }
    }
    if faults.is_empty() { Ok(places) } else { Err(Problem::invalid(faults)) }
}

/// Asks that there is no query.
pub fn none(query: Option<&str>) -> Result<(), Problem> {
    chosen(query, []).map(|[]| ())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_value_is_read_and_every_fault_listed() {
        assert_eq!(explain(None).unwrap(), Explain::Full);
        for (name, value) in EXPLAIN_VALUES {
            assert_eq!(explain(Some(&format!("explain={name}"))).unwrap(), value);
        }
        let faults = explain(Some("explain=ful&detail=1&explain=none&explain=full")).unwrap_err().faults;
        let codes: Vec<FaultCode> = faults.kept().iter().map(|fault| fault.code).collect();
        use FaultCode::{DuplicateMember, UnknownParameter, UnknownValue};
        assert_eq!(codes, [UnknownValue, UnknownParameter, DuplicateMember]);
        assert_eq!(faults.kept()[0].nearest.as_deref(), Some("full"));
        assert!(flag(Some("key=true"), "key").unwrap() && !flag(Some("key=false"), "key").unwrap());
        assert!(flag(Some("k%65y=tru%65"), "key").unwrap());
        assert!(!flag(None, "key").unwrap());
        for wrong in ["key=yes", "key", "keys=true", "key=true&key=true"] {
            assert_eq!(flag(Some(wrong), "key").unwrap_err().faults.kept().len(), 1, "{wrong}");
        }
        let several = [("check", &["fill", "size"][..]), ("key", YES_OR_NO)];
        assert_eq!(chosen(Some("key=false&check=size"), several).unwrap(), [Some(1), Some(1)]);
        assert_eq!(chosen(None, several).unwrap(), [None, None]);
        let faults = chosen(Some("check=fil&key=1&kee=true"), several).unwrap_err().faults;
        let nearest: Vec<_> = faults.kept().iter().map(|fault| fault.nearest.as_deref()).collect();
        assert_eq!(nearest, [Some("fill"), None, Some("key")]);
        assert!(none(None).is_ok() && none(Some("")).is_ok());
        assert!(none(Some("x")).is_err());
    }
}
