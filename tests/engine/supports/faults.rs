//! Which requests are refused, and where the fault is.

use elbowroom::checks::box_supports::BoxSupports;
use elbowroom::checks::enclosure_types::EnclosureTypes;
use elbowroom::checks::luminaire_and_fan_outlets::LuminaireAndFanOutlets;
use elbowroom::checks::{Check, faults_of};
use serde_json::{Value, json};

/// The codes of a request's faults, with their places.
fn faults<C: Check>(request: &Value) -> Vec<String> {
    let request: C::Request = elbowroom::json::read_value(request.clone()).expect("a request decodes");
    faults_of::<C>(&request).iter().map(|fault| format!("{} {}", fault.at, fault.message)).collect()
}

#[test]
fn contradictions_are_faults() {
    let supported = |enclosure: Value, means: Value| {
        faults::<BoxSupports>(&json!({"enclosure": enclosure, "means": [means]}))
    };
    assert_eq!(
        supported(json!({"trade_size": "1"}), json!({"kind": "surface"})),
        ["/enclosure/trade_size fault-trade-size-of-box"]
    );
    assert_eq!(
        supported(
            json!({}),
            json!({
                "kind": "luminaire_on_conduit", "conduits": [{"kind": "RMC"}],
                "secured_directly": true, "nipple_length": 2
            })
        ),
        ["/means/0/nipple_length fault-nipple-and-direct"]
    );
    for kind in ["raceways", "luminaire_on_conduit"] {
        assert_eq!(supported(json!({}), json!({"kind": kind})), ["/means/0/kind fault-held-by-no-raceway"]);
    }
    for means in [
        json!({"kind": "luminaire_on_conduit", "conduits": [{"kind": "RMC"}]}),
        json!({"kind": "conduit_pendant", "conduit": "RMC"}),
    ] {
        assert_eq!(
            supported(json!({"devices_or_luminaires": false}), means),
            ["/means/0/kind fault-luminaire-and-none"]
        );
    }
    assert_eq!(
        supported(
            json!({}),
            json!({"kind": "structural_member", "fasteners": {
                "placement": "through_inside", "fastener": "nails", "threads_protected": true
            }})
        ),
        ["/means/0/fasteners/threads_protected fault-threads-of-nails"]
    );
    assert_eq!(
        faults::<LuminaireAndFanOutlets>(&json!({
            "load": {"kind": "luminaire", "position": "wall"}, "fan_location": {"dwelling": true}
        })),
        ["/fan_location fault-fan-location-of-no-ceiling"]
    );
    assert_eq!(
        faults::<EnclosureTypes>(
            &json!({"location": "indoor", "conditions": ["hosedown", "windblown_dust"]})
        ),
        ["/conditions/1 fault-condition-not-at-location"]
    );
}

#[test]
fn long_lists_are_faults() {
    let many = |item: Value, number: usize| Value::Array(vec![item; number]);
    let conduit = json!({"kind": "RMC"});
    for (number, expected) in [(200, 0), (201, 1)] {
        let means = many(json!({"kind": "surface"}), number);
        assert_eq!(faults::<BoxSupports>(&json!({"enclosure": {}, "means": means})).len(), expected);
        for kind in ["raceways", "luminaire_on_conduit"] {
            let means = json!([{"kind": kind, "conduits": many(conduit.clone(), number)}]);
            assert_eq!(faults::<BoxSupports>(&json!({"enclosure": {}, "means": means})).len(), expected);
        }
        let conditions = many(json!("hosedown"), number);
        let request = json!({"location": "indoor", "conditions": conditions});
        assert_eq!(faults::<EnclosureTypes>(&request).len(), expected);
    }
}

#[test]
fn what_is_no_member_or_no_word_does_not_decode() {
    let refused = |request: Value| {
        assert!(
            elbowroom::json::read_value::<<BoxSupports as Check>::Request>(request.clone()).is_err(),
            "{request}"
        );
    };
    refused(json!({"enclosure": {}, "means": [{"kind": "glue"}]}));
    refused(json!({"enclosure": {}, "means": [{"kind": "surface", "taut": true}]}));
    refused(json!({"enclosure": {}, "means": [{"kind": "surface", "rigid": null}]}));
    refused(json!({"enclosure": {}, "means": [{"rigid": true}]}));
    refused(json!({"enclosure": {}, "means": [], "mean": []}));
}
