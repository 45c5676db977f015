//! What must hold for every request, whatever its shape.

use super::shapes::{CONDUCTORS, CONSTRUCTION, Choices, DEPTHS, Kind, MOUNTING};
use elbowroom::answers::{Explain, answer};
use elbowroom::checks::box_construction::BoxConstruction;
use elbowroom::checks::box_depths::BoxDepths;
use elbowroom::checks::box_mounting::BoxMounting;
use elbowroom::checks::free_conductors::FreeConductors;
use elbowroom::checks::{Check, Evaluation, Status, Verdict, faults_of};
use elbowroom::i18n::Catalogue;
use proptest::prelude::*;
use serde_json::json;

/// Evaluates a request, unless it has faults, and asks of the answer what must hold of every one.
fn holds<C: Check>(members: &[(&str, Kind)], bytes: &[u8]) {
    let request = Choices(bytes.iter()).request(members);
    let request: C::Request = elbowroom::json::read_value(request).expect("a generated request decodes");
    if !faults_of::<C>(&request).is_empty() {
        return;
    }
    let evaluation = elbowroom::checks::evaluate::<C>(&request);
    assert_eq!(evaluation.proof.replay(), Ok(()));
    let Evaluation { verdict, findings, .. } = &evaluation;
    if let Some(verdict) = verdict {
        assert_eq!(*verdict, Verdict::of(&evaluation.account));
    }
    for finding in findings {
        let open = finding.status == Status::NotDetermined;
        assert!(!open || !finding.supply.is_empty(), "{} does not say what to supply", finding.message);
        let decided = matches!(finding.status, Status::Satisfied | Status::Violated);
        assert!(!decided || finding.step.is_some(), "{} has no step", finding.message);
    }
    // a message that lacks an argument is written with the argument's name in braces
    let answer =
        serde_json::to_value(answer::<C>(&request, &evaluation, Explain::Full, Catalogue::english()));
    for finding in answer.expect("an answer is JSON")["findings"].as_array().expect("findings") {
        let message = finding["message"].as_str().expect("a message");
        assert!(!message.contains(['{', '}']) && !message.starts_with("finding-"), "{message}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn free_conductors_of_any_shape(bytes in prop::collection::vec(any::<u8>(), 0..160)) {
        holds::<FreeConductors>(CONDUCTORS, &bytes);
    }

    #[test]
    fn depths_of_any_shape(bytes in prop::collection::vec(any::<u8>(), 0..120)) {
        holds::<BoxDepths>(DEPTHS, &bytes);
    }

    #[test]
    fn construction_of_any_shape(bytes in prop::collection::vec(any::<u8>(), 0..40)) {
        holds::<BoxConstruction>(CONSTRUCTION, &bytes);
    }

    #[test]
    fn mounting_of_any_shape(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        holds::<BoxMounting>(MOUNTING, &bytes);
    }

    #[test]
    fn a_longer_conductor_never_falls_short_where_a_shorter_one_complied(
        depth in 0_u32..200, length in 0_u32..300, more in 0_u32..300, width in 1_u32..200, edition in 0_usize..3,
    ) {
        let with = |length: u32| {
            let tenths = |number: u32| f64::from(number) / 10.0;
            let request = json!({
                "edition": (["2017", "2020", "2023"][edition]),
                "opening": {"width": tenths(width), "height": 12},
                "emergence_depth": tenths(depth),
                "conductors": [{"role": "spliced", "free_length": tenths(length)}]
            });
            let request = elbowroom::json::read_value(request).expect("a request");
            elbowroom::checks::evaluate::<FreeConductors>(&request).verdict
        };
        if with(length) == Some(Verdict::Complies) {
            prop_assert_eq!(with(length + more), Some(Verdict::Complies));
        }
    }

    #[test]
    fn a_deeper_box_never_falls_short_where_a_shallower_one_complied(
        projection in 0_u32..300, depth in 1_u32..400, more in 0_u32..300, size in 0_usize..4, edition in 0_usize..3,
    ) {
        let with = |depth: u32| {
            let hundredths = |number: u32| f64::from(number) / 100.0;
            let request = json!({
                "edition": (["2017", "2020", "2023"][edition]),
                "enclosure": {"internal_depth": hundredths(depth)},
                "equipment": [{
                    "projection": hundredths(projection),
                    "largest_supply_conductor": (["14 AWG", "12 AWG", "10 AWG", "6 AWG"][size]),
                }]
            });
            let request = elbowroom::json::read_value(request).expect("a request");
            elbowroom::checks::evaluate::<BoxDepths>(&request).verdict
        };
        if with(depth) == Some(Verdict::Complies) {
            prop_assert_eq!(with(depth + more), Some(Verdict::Complies));
        }
    }
}
