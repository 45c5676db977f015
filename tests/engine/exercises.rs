//! Exercises, so many of each topic: every key replays, every choice is another number, every wrong choice is graded back
//! to the misconception that it came from, and a seed stays what it was.
//!
//! `ELBOWROOM_EXERCISES` says how many of each topic, 1,000 unless told; `deploy/checks/long.sh` makes 100,000 with a release build.

use elbowroom::checks::{Check, evaluate, faults_of};
use elbowroom::i18n::{Catalogue, Language};
use elbowroom::quantity::{Decimal, Units};
use elbowroom::rulebook::Edition;
use elbowroom::training::Teachable;
use elbowroom::training::exercises::{Difficulty, Exercise, Spec, Topic, VERSION, exercise_set, make};
use elbowroom::training::grading::{Given, Reason, grade, to_four_decimals};
use serde_json::json;
use std::collections::BTreeSet;

fn how_many() -> u32 {
    std::env::var("ELBOWROOM_EXERCISES").map_or(1_000, |text| text.parse().expect("a number of exercises"))
}

/// What is wrong with an exercise; nothing, one hopes.
fn faults<C: Teachable>(exercise: &Exercise) -> Vec<String> {
    let mut faults = Vec::new();
    let mut fault = |what: String| faults.push(what);
    let request: C::Request = match elbowroom::json::read_value(exercise.request.clone()) {
        Ok(request) => request,
        Err(error) => return vec![format!("the request does not decode: {error}")],
    };
    if !faults_of::<C>(&request).is_empty() {
        fault("the request has faults".to_owned());
    }
    if let Err(error) = exercise.proof.replay() {
        fault(format!("the key does not replay: {error}"));
    }
    let quantity = C::QUANTITIES.iter().find(|quantity| quantity.name == exercise.asks).expect("a quantity");
    let evaluation = evaluate::<C>(&request);
    let figure = (quantity.figure)(&request, &evaluation.outcome).expect("the figure that is asked for");
    let values: BTreeSet<Decimal> = exercise.choices.iter().map(|choice| choice.value).collect();
    if values.len() != 4 || exercise.choices.len() != 4 || values.iter().any(|value| *value <= Decimal::ZERO)
    {
        fault(format!("the choices are {values:?}"));
    }
    for choice in &exercise.choices {
        let given = Given { value: choice.value, unit: exercise.unit };
        let graded = grade::<C>(&request, quantity, Some(given), &[]);
        match choice.wrong {
            None => {
                if choice.value != to_four_decimals(figure.value)
                    || figure.unit != exercise.unit
                    || !graded.right
                {
                    fault(format!("{} is not what the check answers", choice.value));
                }
            }
            Some(held) => {
                let found =
                    |reason: &Reason| matches!(reason, Reason::Misconceptions(ids) if ids[..] == [held]);
                if graded.right || !graded.reasons.iter().any(found) {
                    fault(format!(
                        "{} is not graded back to {}: {:?}",
                        choice.value, held.id, graded.reasons
                    ));
                }
            }
        }
    }
    if exercise.choices.iter().filter(|choice| choice.wrong.is_none()).count() != 1 {
        fault("not one choice is right".to_owned());
    }
    faults
}

/// Makes exercises of a topic in every difficulty, edition and both systems of units.
fn hold(topic: Topic) {
    let difficulties = [Difficulty::Basic, Difficulty::Intermediate, Difficulty::Advanced];
    let mut letters = [0_u32; 4];
    let mut faulty = Vec::new();
    for number in 1..=how_many() {
        let spec = Spec {
            difficulty: difficulties[number as usize % 3],
            edition: Edition::ALL[(number as usize / 3) % 4],
            units: if (number / 12).is_multiple_of(2) { Units::Us } else { Units::Si },
            ..Spec::new(topic, 20_261_125)
        };
        let Some(exercise) = make(&spec, number) else {
            faulty.push(format!("{spec:?} {number}: none could be made"));
            continue;
        };
        let found = elbowroom::of_each_teachable_check!(C => (C::NAME == exercise.check).then(|| faults::<C>(&exercise)));
        let found = found.into_iter().flatten().next().expect("a check that is teachable");
        faulty.extend(found.into_iter().map(|what| format!("{spec:?} {number}: {what}")));
        let right = exercise.choices.iter().position(|choice| choice.wrong.is_none());
        letters[right.expect("a right choice")] += 1;
    }
    println!("{topic:?}: {} exercises, the right choice at {letters:?}", how_many());
    assert!(faulty.is_empty(), "{} faults: {:#?}", faulty.len(), &faulty[..faulty.len().min(5)]);
    // the right choice stands anywhere, as often as not
    assert!(how_many() < 300 || letters.iter().all(|times| times * 5 > how_many()), "{letters:?}");
}

/// One test for each topic, so that they run side by side.
macro_rules! topics {
    ($($name:ident $topic:ident)+) => {
        $(#[test] fn $name() { hold(Topic::$topic); })+

        #[test]
        fn every_topic_is_held() {
            assert_eq!([$(Topic::$topic),+], Topic::ALL);
        }
    };
}

topics! {
    outlet_conductors OutletConductors
    outlet_devices OutletDevices
    outlet_grounding OutletGrounding
    outlet_box_fill OutletBoxFill
    outlet_box_volume OutletBoxVolume
    outlet_box_room OutletBoxRoom
    pull_straight PullStraight
    pull_angle PullAngle
    pull_distance PullDistance
    pull_over_1000_volts PullOver1000Volts
    conduit_bodies ConduitBodies
    raceway_fill RacewayFill
    free_conductors FreeConductors
    box_depths BoxDepths
}

/// The first exercise of each topic, as it was when the generator was published.
#[test]
fn a_seed_gives_what_it_gave() {
    let pinned: Vec<String> = Topic::ALL
        .into_iter()
        .map(|topic| {
            let spec = Spec { difficulty: Difficulty::Intermediate, version: 1, ..Spec::new(topic, 1) };
            let exercise = make(&spec, 1).expect("an exercise");
            let choices: Vec<String> = exercise
                .choices
                .iter()
                .map(|choice| format!("{} {}", choice.value, choice.wrong.map_or("right", |held| held.id)))
                .collect();
            format!("{}: {}", exercise.asks, choices.join(", "))
        })
        .collect();
    let expected: Vec<&str> = include_str!("../data/pinned-exercises.txt").lines().collect();
    assert_eq!(pinned, expected, "{}", pinned.join("\n"));
}

/// What is new comes with a version of its own, or exercises that were made before it would change.
#[test]
fn each_version_knows_the_misconceptions_that_it_knew() {
    fn known_since<C: Teachable>() -> Vec<u32> {
        C::MISCONCEPTIONS.iter().map(|known| known.since).collect()
    }
    let since = elbowroom::of_each_teachable_check!(C => known_since::<C>()).concat();
    assert!(since.iter().all(|since| (1..=VERSION).contains(since)), "raise `exercises::VERSION`");
    let first = since.iter().filter(|since| **since == 1).count();
    assert_eq!(first, 112, "a new misconception has `since` the next version of the generator");
}

/// Without the key nothing in what is sent tells which choice is right, or why another is wrong.
#[test]
fn without_the_key_nothing_tells_it() {
    for topic in Topic::ALL {
        let spec = Spec::new(topic, 99);
        let words = Catalogue::english();
        let shown =
            serde_json::to_value(exercise_set(&spec, 8, false, words).expect("exercises")).expect("JSON");
        let text = shown.to_string();
        for word in ["misconception", "solution", "wrong", "\"key\"", "right answer", "editions"] {
            assert!(!text.contains(word), "{topic:?} says {word}");
        }
        let keyed =
            serde_json::to_value(exercise_set(&spec, 8, true, words).expect("exercises")).expect("JSON");
        for (bare, full) in shown["exercises"]
            .as_array()
            .expect("a list")
            .iter()
            .zip(keyed["exercises"].as_array().expect("a list"))
        {
            assert_eq!(bare["choices"], full["choices"]);
            assert_eq!(full["key"]["wrong"].as_array().expect("the wrong ones").len(), 3);
            assert!(full["key"]["solution"].as_array().is_some_and(|steps| !steps.is_empty()), "{full}");
            assert_eq!(full["key"]["editions"].as_array().expect("editions").len(), 4);
        }
    }
}

/// Sentences are whole in every language: nothing is left of a placeable, and no key stands for a missing sentence.
#[test]
fn every_situation_reads_as_sentences() {
    for words in Language::ALL.map(Catalogue::of) {
        for topic in Topic::ALL {
            for difficulty in [Difficulty::Basic, Difficulty::Intermediate, Difficulty::Advanced] {
                let spec = Spec { difficulty, ..Spec::new(topic, 5) };
                for exercise in exercise_set(&spec, 40, false, words).expect("exercises").exercises {
                    let question = [exercise.question];
                    for sentence in exercise.situation.iter().chain(&question) {
                        let whole =
                            sentence.ends_with(['.', '?']) && !sentence.contains(['{', '}', '$', '_']);
                        let keyed = sentence.contains("situation-") || sentence.contains("question-");
                        assert!(whole && !keyed && !sentence.contains("  "), "{sentence}");
                    }
                }
            }
        }
    }
}

/// The same number, whatever else is asked for beside it.
#[test]
fn an_exercise_does_not_depend_on_its_neighbours() {
    let spec = Spec::new(Topic::OutletBoxFill, 3);
    let alone = make(&spec, 7).expect("an exercise");
    let set = exercise_set(&spec, 10, false, Catalogue::english()).expect("exercises");
    assert_eq!(set.exercises[6].request, alone.request);
    assert_ne!(set.exercises[6].request, set.exercises[7].request);
    let other = make(&Spec::new(Topic::OutletBoxFill, 4), 7).expect("an exercise");
    assert_ne!(json!(other.request), alone.request);
}
