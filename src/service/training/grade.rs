//! `POST /v1/answers/grade`.

use super::super::check_route::answered;
use super::super::media;
use super::super::openapi::{closed_object, one_of_names};
use super::super::problem::Problem;
use super::super::register::{CheckEntry, with_schema};
use super::super::state::Service;
use super::Received;
use super::exercises_request::ExerciseNamed;
use super::register::{LearnersAnswer, TEACHABLE, TeachableEntry};
use crate::checks::{FaultCode, Faults};
use crate::derivation::Pointer;
use crate::quantity::{Decimal, Unit};
use crate::training::exercises::make;
use crate::training::grading::{Given, GradeView, LearnerLine, MOST_LINES};
use axum::extract::{Request, State};
use axum::response::Response;
use serde::Deserialize;
use serde_json::{Map, Value};
use std::sync::Arc;
use utoipa::openapi::schema::{ArrayBuilder, OneOfBuilder, Schema};
use utoipa::openapi::{Ref, RefOr};
use utoipa::{PartialSchema, ToSchema};

/// A learner's answer to a request of some check, or to an exercise.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GradeRequest {
    check: Option<String>,
    request: Option<Map<String, Value>>,
    exercise: Option<ExerciseNamed>,
    asks: Option<String>,
    answer: Option<LearnerNumber>,
    #[serde(default)]
    tally: Vec<LearnerLine>,
}

/// A number that a learner answers, with its unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LearnerNumber {
    /// The number.
    #[schema(value_type = f64, minimum = 0, maximum = 1_000_000, extensions(("x-decimals" = json!(6))), example = 20.25)]
    value: Decimal,
    /// Its unit.
    unit: Unit,
}

impl PartialSchema for GradeRequest {
    fn schema() -> RefOr<Schema> {
        let closed = || closed_object().property("answer", Ref::from_schema_name("LearnerNumber"));
        let tally = || {
            ArrayBuilder::new()
                .items(Ref::from_schema_name("LearnerLine"))
                .max_items(Some(MOST_LINES))
                .description(Some("The learner's own tally, so that it can be said which line went wrong."))
        };
        let exercise = closed()
            .title(Some("Grade an exercise"))
            .property("exercise", Ref::from_schema_name("ExerciseNamed"))
            .property("tally", tally())
            .required("exercise");
        let teachable =
            TEACHABLE.iter().filter_map(|teachable| Some((teachable, CheckEntry::named(teachable.name)?)));
        let forms = teachable.fold(OneOfBuilder::new().item(exercise), |forms, (teachable, check)| {
            let asks = one_of_names((teachable.quantities)());
            let which = "The figure that was asked for; the first of these unless said otherwise.";
            let form = closed()
                .title(Some(format!("Grade {}", teachable.name)))
                .property("check", one_of_names([teachable.name]).description(Some("The check.")))
                .property("request", Ref::from_schema_name((check.schemas)().request))
                .property("asks", asks.description(Some(which)))
                .required("check")
                .required("request");
            forms.item(if teachable.has_tally { form.property("tally", tally()) } else { form })
        });
        let description =
            "A learner's answer, to a request of some check or to an exercise: a number, a tally, or both.";
        RefOr::T(Schema::OneOf(forms.description(Some(description)).build()))
    }
}

impl ToSchema for GradeRequest {
    fn schemas(schemas: &mut Vec<(String, RefOr<Schema>)>) {
        with_schema::<LearnerNumber>(schemas);
        with_schema::<LearnerLine>(schemas);
        with_schema::<ExerciseNamed>(schemas);
    }
}

/// What is wrong with an answer
///
/// Whether a learner's answer is right, and if not, which misconception gives exactly this figure, or which two together;
/// with the learner's tally, which line went wrong. Everything that fits is listed, most common first, never as a
/// certainty; where nothing fits, the answer says so. Slips are told apart: another unit, a rounded figure, digits
/// exchanged, a wrong sum. With `key=true` the right answer and its steps are told too.
#[utoipa::path(
    post, path = "/v1/answers/grade", tag = "Teaching", operation_id = "grade",
    params(("key" = inline(Option<bool>), Query, description = "Whether the right answer is told. It is not unless asked.")),
    request_body(content = GradeRequest, description = "The answer, and what it answers."),
    responses((status = 200, description = "What was found, right or wrong.", body = GradeView)),
)]
pub async fn grade(State(service): State<Arc<Service>>, request: Request) -> Result<Response, Problem> {
    media::takes_json(request.headers())?;
    let Received { body: asked, key, authorization } = super::read::<GradeRequest>(&service, request).await?;
    let GradeRequest { check, request, exercise, asks, answer, tally } = asked;
    let of_an_exercise = exercise.is_some();
    let (name, request, asks) = match (check, request, exercise) {
        (Some(check), Some(request), None) => (check, Value::Object(request), asks),
        (None, None, Some(named)) => {
            let exercise = make(&named.spec()?, named.number.get()).ok_or_else(Problem::internal)?;
            (exercise.check.to_owned(), exercise.request, Some(exercise.asks.to_owned()))
        }
        _ => return Err(fault(Pointer::ROOT, FaultCode::Conflict, "fault-request-or-exercise", &[])),
    };
    let teachable = TeachableEntry::named(&name).ok_or_else(|| {
        let known: Vec<&str> = TEACHABLE.iter().map(|teachable| teachable.name).collect();
        fault(Pointer::to(&"/check"), FaultCode::UnknownReference, "fault-not-taught", &known)
    })?;
    if !of_an_exercise {
        authorization.covers(teachable.name)?;
    }
    if tally.len() > MOST_LINES {
        return Err(fault(Pointer::to(&"/tally"), FaultCode::TooManyItems, "fault-too-many-lines", &[]));
    }
    if !tally.is_empty() && !teachable.has_tally {
        return Err(fault(Pointer::to(&"/tally"), FaultCode::Conflict, "fault-no-tally", &[]));
    }
    if answer.is_none() && tally.is_empty() {
        return Err(fault(Pointer::to(&"/answer"), FaultCode::MissingMember, "fault-no-answer", &[]));
    }
    let given = answer.map(|LearnerNumber { value, unit }| Given { value, unit });
    let learner = LearnersAnswer { asks, given, tally, key };
    (teachable.grade)(request.to_string().as_bytes(), &learner).map(answered)
}

pub(super) fn fault(at: Pointer, code: FaultCode, message: &'static str, accepted: &[&str]) -> Problem {
    let mut faults = Faults::default();
    faults.add(at, code, message).accepted = accepted.iter().map(|name| (*name).to_owned()).collect();
    Problem::invalid((&faults).into())
}
