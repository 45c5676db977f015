//! What a finding asks for is what was left out: a fact is taken out of a request that was decided, and where that leaves the
//! verdict open, some finding names the place of the fact.

use super::{WHOLE, droppable, evaluated, verdict_of};
use crate::corpus::{Asked, kind_of, without};
use elbowroom::checks::{Check, Status, Verdict};
use elbowroom::of_each_check;
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// What findings of one check ask for, of a request.
type Asker = fn(&Value) -> Vec<(String, bool)>;

/// The places that findings ask to be supplied, each with whether the finding is one that leaves the verdict open.
fn asked_for<C: Check>(request: &Value) -> Vec<(String, bool)> {
    let findings = evaluated::<C>(request).map(|evaluation| evaluation.findings).unwrap_or_default();
    let asks = findings.iter().flat_map(|finding| {
        let leaves_open = finding.status == Status::NotDetermined;
        finding.supply.iter().map(move |at| (at.to_string(), leaves_open))
    });
    asks.collect()
}

/// Whether one place is the other, or within it.
fn is_at_or_within(inner: &str, outer: &str) -> bool {
    inner.strip_prefix(outer).is_some_and(|rest| rest.is_empty() || rest.starts_with('/'))
}

#[test]
fn what_was_left_out_is_what_is_asked_for() {
    let askers: BTreeMap<&str, Asker> =
        of_each_check!(C => (<C as Check>::NAME, asked_for::<C> as Asker)).into();
    let (mut opened, mut checks, mut unasked) = (0, BTreeSet::new(), BTreeMap::<String, String>::new());
    for asked in WHOLE.iter().filter(|asked| asked.request["edition"] == "2023") {
        let Asked { check, name, request } = asked;
        if !matches!(verdict_of(check, request), Some(Verdict::Complies | Verdict::Violates)) {
            continue;
        }
        for at in droppable(asked) {
            let less = without(request, &at);
            if verdict_of(check, &less) != Some(Verdict::NotDetermined) {
                continue;
            }
            opened += 1;
            checks.insert(check);
            let places = askers[check.as_str()](&less);
            assert!(places.iter().all(|(_, leaves_open)| *leaves_open), "{name}: decided, and asks for more");
            let names = |place: &str| is_at_or_within(&at, place) || is_at_or_within(place, &at);
            let what = format!("{check} {}", kind_of(&at));
            let is_asked = match ANOTHER_FACT_DECIDES.contains(&&*what) {
                true => !places.is_empty(),
                false => places.iter().any(|(place, _)| !place.is_empty() && names(place)),
            };
            if !is_asked {
                unasked.entry(what).or_insert_with(|| format!("{name}: asks for {places:?}: {request}"));
            }
        }
    }
    println!("{opened} verdicts left open, of {} checks", checks.len());
    assert!(opened > 300, "{opened}");
    assert!(unasked.is_empty(), "left out and not asked for: {unasked:#?}");
}

/// What was left out decided alone, and something else is asked for that would decide as well: a listing instead of a measure, a
/// measure instead of a clearance, the kind of thing instead of a property of it.
const ANOTHER_FACT_DECIDES: [&str; 38] = [
    "box_construction /enclosure/listed_as_equal",
    "box_depths /equipment/side_entry/clearance",
    "box_mounting /access/finish_opening/diameter",
    "box_mounting /access/finish_opening/long_side",
    "box_mounting /access/finish_opening/off_center",
    "box_mounting /access/finish_opening/short_side",
    "box_mounting /access/finish_opening/whole_box_open",
    "box_mounting /access/finish_opening/within_box_walls",
    "box_mounting /cover/fitted",
    "box_mounting /enclosure/conduit_body",
    "box_mounting /enclosure/material",
    "box_mounting /enclosure/single_gang_in_wall_or_ceiling",
    "box_mounting /enclosure/standard",
    "box_mounting /enclosure/volume",
    "box_mounting /entries/fastened_at",
    "box_mounting /entries/in_complete_raceway",
    "box_mounting /entries/insulating_fitting",
    "box_mounting /entries/locknut_on_side",
    "box_mounting /flush_surface/combustible",
    "box_mounting /flush_surface/setback",
    "box_mounting /handhole/cover_weight",
    "box_supports /means/brace/treated",
    "box_supports /means/entries_on_one_side",
    "box_supports /means/height",
    "box_supports /means/horizontal_clearance",
    "box_supports /means/swivel_hangers",
    "conduit_body_check /body/short_radius",
    "conduit_body_check /marked",
    "conduit_body_check /pulls/conductors/insulation",
    "free_conductors /conductors/free_length",
    "free_conductors /conductors/length_outside_opening",
    "free_conductors /opening",
    "free_conductors /opening/height",
    "free_conductors /opening/width",
    "luminaire_and_fan_outlets /fan_location/framing_access_through_box",
    "outlet_box_fill /enclosure/inside_dimensions",
    "outlet_box_fill /enclosure/standard",
    "raceway_fill /conductors/equipment_grounding",
];
