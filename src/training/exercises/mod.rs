//! Exercises: problems made from a seed, with wrong choices that are what misconceptions give.
//!
//! An exercise is a request to a check. Its situation is described from the request, so words and numbers cannot disagree; the
//! right choice is what the check answers; each wrong one is what it answers under a named misconception.
//!
//! The same version, seed and number give the same exercise for ever, as long as the rules themselves are not corrected.
//!
//! ```
//! use elbowroom::training::exercises::{Spec, Topic, make};
//! let exercise = make(&Spec::new(Topic::OutletGrounding, 7), 1).unwrap();
//! assert_eq!(exercise.choices.len(), 4);
//! assert_eq!(exercise.choices.iter().filter(|choice| choice.wrong.is_none()).count(), 1);
//! ```

mod lengths;
mod outlet_boxes;
mod outlet_enclosures;
mod pull_boxes;
mod raceways;
mod topic;
mod view;

pub use crate::rng::Rng;
pub use topic::{Difficulty, Topic};
pub use view::{ChoiceView, ExerciseKey, ExerciseSet, ExerciseView, InEdition, WrongChoice, exercise_set};

use super::grading::{Diagnosed, to_four_decimals};
use super::situation::Sentence;
use super::{Misconception, Quantity, Teachable, evaluate_counterfactual};
use crate::checks::box_depths::BoxDepths;
use crate::checks::conduit_body::ConduitBodyCheck;
use crate::checks::free_conductors::FreeConductors;
use crate::checks::outlet_fill::OutletFill;
use crate::checks::pull_box::PullBox;
use crate::checks::raceway_fill::RacewayFill;
use crate::checks::{self, evaluate_under, faults_of, rulebook_of};
use crate::derivation::{Derivation, StepId};
use crate::json;
use crate::quantity::{Decimal, Unit, Units};
use crate::rulebook::Edition;
use serde_json::{Map, Value, json};

/// The version of the generator. What is made from a seed changes only with it.
pub const VERSION: u32 = 1;

/// The most exercises of one request.
pub const MOST: u32 = 50;

/// The largest seed: the largest whole number that every reader of JSON keeps exactly.
pub const LARGEST_SEED: u64 = (1 << 53) - 1;

/// How many situations are drawn at the most until one has three wrong choices.
const MOST_DRAWS: u32 = 400;

/// How many wrong choices there are.
const WRONG: usize = 3;

/// What is to be made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Spec {
    /// What it is about.
    pub topic: Topic,
    /// How much comes together.
    pub difficulty: Difficulty,
    /// The edition.
    pub edition: Edition,
    /// The units.
    pub units: Units,
    /// Where it begins.
    pub seed: u64,
    /// The version of the generator.
    pub version: u32,
}

impl Spec {
    /// Basic exercises about a topic under the usual edition.
    pub fn new(topic: Topic, seed: u64) -> Self {
        let (difficulty, edition, units) = Default::default();
        Self { topic, difficulty, edition, units, seed, version: VERSION }
    }
}

/// One choice of an exercise.
#[derive(Clone, Copy, Debug)]
pub struct Choice {
    /// The number.
    pub value: Decimal,
    /// The misconception that gives it; `None` for the right one.
    pub wrong: Option<Diagnosed>,
}

/// One exercise.
#[derive(Clone, Debug)]
pub struct Exercise {
    /// Its number, from 1.
    pub number: u32,
    /// What it is about.
    pub topic: Topic,
    /// The check that answers it.
    pub check: &'static str,
    /// The figure that is asked for.
    pub asks: &'static str,
    /// The request that it stands for.
    pub request: Value,
    /// The situation that the request describes.
    pub situation: Vec<Sentence>,
    /// The unit of its choices.
    pub unit: Unit,
    /// The choices, in the order in which they are shown.
    pub choices: Vec<Choice>,
    /// The proof of the right one.
    pub proof: Derivation,
    /// The step that makes it.
    pub step: StepId,
    /// The figure under every edition.
    pub editions: Vec<(Edition, Option<Decimal>)>,
}

/// Draws a request about something.
type Make = fn(&mut Rng, &Spec) -> Value;

/// The exercise with a number; `None` where no situation could be drawn, which a test rules out.
pub fn make(spec: &Spec, number: u32) -> Option<Exercise> {
    let outlet = |asks, make: Make| build::<OutletFill>(spec, number, asks, make);
    let pull = |asks, make: Make| build::<PullBox>(spec, number, asks, make);
    match spec.topic {
        Topic::OutletConductors => outlet("required_volume", outlet_boxes::conductors),
        Topic::OutletDevices => outlet("required_volume", outlet_boxes::devices),
        Topic::OutletGrounding => outlet("required_volume", outlet_boxes::grounding),
        Topic::OutletBoxFill => outlet("required_volume", outlet_boxes::everything),
        Topic::OutletBoxVolume => outlet("available_volume", outlet_enclosures::volume),
        Topic::OutletBoxRoom => outlet("further_conductors", outlet_enclosures::room),
        Topic::PullStraight => pull("width", pull_boxes::straight),
        Topic::PullAngle => pull("width", pull_boxes::angle),
        Topic::PullDistance => pull("entry_distance", pull_boxes::distance),
        Topic::PullOver1000Volts => pull("width", pull_boxes::over_1000_volts),
        Topic::ConduitBodies => build::<ConduitBodyCheck>(spec, number, "most_conductors", raceways::body),
        Topic::RacewayFill => build::<RacewayFill>(spec, number, "most_conductors", raceways::fill),
        Topic::FreeConductors => build::<FreeConductors>(spec, number, "required_length", lengths::free),
        Topic::BoxDepths => build::<BoxDepths>(spec, number, "required_depth", lengths::depth),
    }
}

fn build<C: Teachable>(spec: &Spec, number: u32, asks: &'static str, make: Make) -> Option<Exercise> {
    let quantity = C::QUANTITIES.iter().find(|quantity| quantity.name == asks)?;
    let mut rng = Rng::of(&[spec.seed, spec.topic as u64, spec.difficulty as u64, u64::from(number)]);
    (0..MOST_DRAWS).find_map(|_| {
        let drawn = make(&mut rng, spec);
        let said = with_terms(drawn, spec)?;
        let request: C::Request = json::read_value(said.clone()).ok()?;
        if !faults_of::<C>(&request).is_empty() {
            return None;
        }
        let mut exercise = of_request::<C>(spec, number, quantity, &request, &mut rng)?;
        leave_unsaid(&mut exercise.request, &said);
        Some(exercise)
    })
}

/// A drawn request with what every request says.
fn with_terms(drawn: Value, spec: &Spec) -> Option<Value> {
    let Value::Object(drawn) = drawn else { return None };
    let mut request = Map::new();
    request.insert("edition".to_owned(), spec.edition.year().into());
    if !spec.edition.is_verified() {
        request.insert("accept_unverified_rules".to_owned(), true.into());
    }
    request.insert("units".to_owned(), serde_json::to_value(spec.units).ok()?);
    request.extend(drawn);
    Some(Value::Object(request))
}

/// Takes out of a request what was not drawn and says nothing: absent members, flags that are not set, empty lists.
fn leave_unsaid(written: &mut Value, drawn: &Value) {
    match (written, drawn) {
        (Value::Object(members), drawn) => members.retain(|name, member| {
            let said = drawn.get(name);
            leave_unsaid(member, said.unwrap_or(&Value::Null));
            said.is_some() || !matches!(member, Value::Null | Value::Bool(false)) && *member != json!([])
        }),
        (Value::Array(items), Value::Array(drawn)) => {
            items.iter_mut().zip(drawn).for_each(|(item, drawn)| leave_unsaid(item, drawn));
        }
        _ => {}
    }
}

fn of_request<C: Teachable>(
    spec: &Spec,
    number: u32,
    quantity: &Quantity<C>,
    request: &C::Request,
    rng: &mut Rng,
) -> Option<Exercise> {
    let evaluation = checks::evaluate::<C>(request);
    let figure = (quantity.figure)(request, &evaluation.outcome)?;
    let right = to_four_decimals(figure.value);
    let mut wrong: Vec<Choice> = Vec::new();
    let known = C::MISCONCEPTIONS.iter();
    let known = known.filter(|known| known.since <= spec.version && known.is_about(quantity.name));
    for known in known {
        if let Some(value) = wrong_value(request, quantity, known, (right, figure.unit))
            && wrong.iter().all(|choice| choice.value != value)
        {
            wrong.push(Choice { value, wrong: Some(Diagnosed { id: known.id, rules: known.rules }) });
        }
    }
    if right <= Decimal::ZERO || wrong.len() < WRONG {
        return None;
    }
    rng.shuffle(&mut wrong);
    wrong.truncate(WRONG);
    let mut choices = wrong;
    choices.push(Choice { value: right, wrong: None });
    rng.shuffle(&mut choices);
    let in_edition = |edition| {
        let outcome = evaluate_under::<C>(&rulebook_of::<C>(request, edition), request).outcome;
        (edition, (quantity.figure)(request, &outcome).map(|figure| to_four_decimals(figure.value)))
    };
    Some(Exercise {
        number,
        topic: spec.topic,
        check: C::NAME,
        asks: quantity.name,
        request: serde_json::to_value(request).ok()?,
        situation: C::situation(request),
        unit: figure.unit,
        choices,
        step: figure.step,
        proof: evaluation.proof,
        editions: Edition::ALL.into_iter().map(in_edition).collect(),
    })
}

/// What a misconception makes of the right figure, where that is plausible: another number, above zero, and not so far
/// off that nobody would believe it.
fn wrong_value<C: Teachable>(
    request: &C::Request,
    quantity: &Quantity<C>,
    known: &Misconception<C>,
    (right, unit): (Decimal, Unit),
) -> Option<Decimal> {
    let counterfactual = evaluate_counterfactual::<C>(request, &[known.mutation])?;
    let figure = (quantity.figure)(request, counterfactual.outcome()).filter(|figure| figure.unit == unit)?;
    let value = to_four_decimals(figure.value);
    let five = Decimal::whole(5);
    let near = value.times(five) >= right && value <= right.times(five);
    (value != right && value > Decimal::ZERO && near).then_some(value)
}
