//! The operation of one check, described from its types and its words.

use super::super::media;
use super::super::query::EXPLAIN;
use super::super::register::{CheckEntry, CheckSchemas, with_schema};
use crate::answers::Explain;
use crate::i18n::Catalogue;
use std::borrow::Cow;
use utoipa::openapi::header::HeaderBuilder;
use utoipa::openapi::path::{OperationBuilder, Parameter, ParameterBuilder, ParameterIn, Paths};
use utoipa::openapi::request_body::RequestBodyBuilder;
use utoipa::openapi::schema::{ObjectBuilder, Type};
use utoipa::openapi::{ContentBuilder, HttpMethod, Ref, RefOr, Required, ResponseBuilder, Schema};
use utoipa::{PartialSchema, ToSchema};

/// The schemas and the path of a check.
pub fn describe(check: &CheckEntry) -> (Vec<(String, RefOr<Schema>)>, Paths) {
    let messages = Catalogue::english();
    let CheckSchemas { request, answer, mut all } = (check.schemas)();
    with_schema::<Explain>(&mut all);
    let json = |schema: String| ContentBuilder::new().schema(Some(Ref::from_schema_name(schema))).build();
    let body = RequestBodyBuilder::new()
        .description(Some("What is asked."))
        .required(Some(Required::True))
        .content("application/json", json(request))
        .build();
    let mut answered = ResponseBuilder::new()
        .description("The answer, whatever the verdict.")
        .content("application/json", json(answer));
    if check.draw.is_some() {
        let drawing = with_schema::<DrawingText>(&mut all);
        let link = ObjectBuilder::new().schema_type(Type::String).description(Some("A link (RFC 8288)."));
        let link =
            HeaderBuilder::new().schema(Some(link)).description(Some(messages.fixed("text-header-link")));
        answered = answered.content(media::SVG, json(drawing)).header("Link", link.build());
    }
    let operation = OperationBuilder::new()
        .operation_id(Some(check.name))
        .tag("Checks")
        .summary(Some(messages.fixed(check.title)))
        .description(Some(messages.fixed(check.purpose)))
        .parameter(explain())
        .request_body(Some(body))
        .response("200", answered.build())
        .build();
    let mut paths = Paths::new();
    paths.add_path_operation(check.path, vec![HttpMethod::Post], operation);
    (all, paths)
}

/// A drawing as SVG.
#[derive(Clone, Copy, Debug)]
pub struct DrawingText;

impl PartialSchema for DrawingText {
    fn schema() -> RefOr<Schema> {
        let text = ObjectBuilder::new().schema_type(Type::String);
        text.description(Some("What was checked, drawn to scale as SVG.")).build().into()
    }
}

impl ToSchema for DrawingText {
    fn name() -> Cow<'static, str> {
        "Drawing".into()
    }
}

/// The parameter that says how much of the proof an answer carries.
pub fn explain() -> Parameter {
    ParameterBuilder::new()
        .name(EXPLAIN)
        .parameter_in(ParameterIn::Query)
        .required(Required::False)
        .description(Some(
            "How much of the proof the answer carries: every step, sentences, or nothing. The figures are the same.",
        ))
        .schema(Some(match Explain::schema() {
            RefOr::Ref(reference) => RefOr::Ref(reference),
            RefOr::T(_) => RefOr::Ref(Ref::from_schema_name("Explain")),
        }))
        .build()
}
