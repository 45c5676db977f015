//! Exercises in words.

use super::{Difficulty, Exercise, Spec, Topic, VERSION, make};
use crate::answers::Ruleset;
use crate::checks::Caution;
use crate::i18n::{Catalogue, summary};
use crate::quantity::{Decimal, Unit, Units};
use crate::rulebook::Edition;
use crate::training::misconception::{MisconceptionView, view_of};
use crate::training::situation::Sentence;
use serde::Serialize;
use serde_json::Value;
use utoipa::ToSchema;

/// Exercises from one seed.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[schema(as = Exercises)]
pub struct ExerciseSet {
    /// The version of the generator that made them. Ask for it again and the same exercises come.
    pub version: u32,
    /// The seed that they were made from.
    pub seed: u64,
    /// What they are about.
    pub topic: Topic,
    /// How much comes together.
    pub difficulty: Difficulty,
    /// The edition.
    pub edition: Edition,
    /// The units.
    pub units: Units,
    /// The exercises.
    pub exercises: Vec<ExerciseView>,
    /// What to know before acting on them.
    pub cautions: Vec<String>,
    /// The rules that they were made under.
    pub ruleset: Ruleset<'static>,
}

/// One exercise.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[schema(as = Exercise)]
pub struct ExerciseView {
    /// Its number, from 1.
    pub number: u32,
    /// The situation that the request describes, in sentences.
    pub situation: Vec<String>,
    /// The question.
    pub question: String,
    /// The check that answers it.
    #[schema(value_type = String, example = "outlet_box_fill")]
    pub check: &'static str,
    /// The figure that is asked for.
    #[schema(value_type = String, example = "required_volume")]
    pub asks: &'static str,
    /// The request that it stands for: what its check takes.
    #[schema(value_type = Object)]
    pub request: Value,
    /// Four choices, one of them right.
    pub choices: Vec<ChoiceView>,
    /// Which is right, and why the others are not; only with `key=true`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub key: Option<ExerciseKey>,
}

/// One choice.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[schema(as = ExerciseChoice)]
pub struct ChoiceView {
    /// Its letter.
    #[schema(value_type = String, example = "A")]
    pub letter: &'static str,
    /// The number, to four decimals.
    #[schema(value_type = f64, example = 18)]
    pub value: Decimal,
    /// Its unit.
    pub unit: Unit,
}

/// The key of an exercise.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct ExerciseKey {
    /// The letter of the right choice.
    #[schema(value_type = String, example = "C")]
    pub letter: &'static str,
    /// The right number.
    #[schema(value_type = f64, example = 18)]
    pub value: Decimal,
    /// Its unit.
    pub unit: Unit,
    /// The steps that lead to it, each as a sentence.
    pub solution: Vec<String>,
    /// Why each of the others is wrong.
    pub wrong: Vec<WrongChoice>,
    /// The right number under every edition.
    pub editions: Vec<InEdition>,
}

/// A wrong choice.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct WrongChoice {
    /// Its letter.
    #[schema(value_type = String, example = "A")]
    pub letter: &'static str,
    /// The misconception that gives it.
    pub misconception: MisconceptionView,
}

/// The right number under one edition.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[schema(as = ExerciseInEdition)]
pub struct InEdition {
    /// The edition.
    pub edition: Edition,
    /// Whether its figures could be verified.
    pub verified: bool,
    /// The number; absent where that edition gives none.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<f64>, example = 15.75)]
    pub value: Option<Decimal>,
}

/// The letters of the choices.
const LETTERS: [&str; 4] = ["A", "B", "C", "D"];

/// The exercises with some numbers; the key only for those who may see it. `None` where one could not be made.
pub fn exercise_set(spec: &Spec, count: u32, key: bool, messages: &Catalogue) -> Option<ExerciseSet> {
    let exercises = (1..=count).map(|number| Some(make(spec, number)?.view(spec.edition, key, messages)));
    let unverified = (!spec.edition.is_verified()).then_some(Caution::UnverifiedEdition);
    let cautions = unverified.into_iter().chain(Caution::USUAL);
    Some(ExerciseSet {
        version: spec.version.min(VERSION),
        seed: spec.seed,
        topic: spec.topic,
        difficulty: spec.difficulty,
        edition: spec.edition,
        units: spec.units,
        exercises: exercises.collect::<Option<_>>()?,
        cautions: cautions.map(|caution| messages.fixed(caution.key()).to_owned()).collect(),
        ruleset: Ruleset::of_edition(spec.edition),
    })
}

impl Exercise {
    /// The question.
    pub fn question(&self) -> Sentence {
        let question = Sentence::new(match self.asks {
            "required_volume" => "question-required-volume",
            "available_volume" if self.request.get("spaces").is_some() => "question-share-of-volume",
            "available_volume" => "question-available-volume",
            "further_conductors" => "question-further-conductors",
            "entry_distance" => "question-entry-distance",
            "most_conductors" => "question-most-conductors",
            "required_length" => "question-required-length",
            "required_depth" => "question-required-depth",
            _ => "question-width",
        });
        match self.request.pointer("/contents/cables/0/size").and_then(Value::as_str) {
            Some(size) if self.asks == "further_conductors" => question.text("size", size),
            _ => question,
        }
    }

    /// The exercise in words.
    pub fn view(&self, edition: Edition, key: bool, messages: &Catalogue) -> ExerciseView {
        let lettered = || LETTERS.into_iter().zip(&self.choices);
        let choices =
            lettered().map(|(letter, choice)| ChoiceView { letter, value: choice.value, unit: self.unit });
        ExerciseView {
            number: self.number,
            situation: self.situation.iter().map(|sentence| sentence.message(messages)).collect(),
            question: self.question().message(messages),
            check: self.check,
            asks: self.asks,
            request: self.request.clone(),
            choices: choices.collect(),
            key: if key { self.key(edition, messages) } else { None },
        }
    }

    fn key(&self, edition: Edition, messages: &Catalogue) -> Option<ExerciseKey> {
        let lettered = || LETTERS.into_iter().zip(&self.choices);
        let (letter, right) = lettered().find(|(_, choice)| choice.wrong.is_none())?;
        let wrong = lettered().filter_map(|(letter, choice)| {
            let held = choice.wrong?;
            Some(WrongChoice { letter, misconception: view_of(held.id, held.rules, edition, messages) })
        });
        let in_edition = |(edition, value): &(Edition, Option<Decimal>)| InEdition {
            edition: *edition,
            verified: edition.is_verified(),
            value: *value,
        };
        Some(ExerciseKey {
            letter,
            value: right.value,
            unit: self.unit,
            solution: summary::leading_to(&self.proof, &[self.step], messages),
            wrong: wrong.collect(),
            editions: self.editions.iter().map(in_edition).collect(),
        })
    }
}
