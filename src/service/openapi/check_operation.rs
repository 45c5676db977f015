//! The operation of one check, described from its types and its words.

use super::super::media;
use super::super::query::EXPLAIN;
use super::super::register::{CheckEntry, CheckSchemas, with_schema};
use super::{described_text, text_body};
use crate::answers::Explain;
use crate::i18n::Catalogue;
use utoipa::openapi::header::HeaderBuilder;
use utoipa::openapi::path::{
    Operation, OperationBuilder, Parameter, ParameterBuilder, ParameterIn, PathItem, Paths, PathsBuilder,
};
use utoipa::openapi::request_body::RequestBodyBuilder;
use utoipa::openapi::{ContentBuilder, HttpMethod, Ref, RefOr, Required, ResponseBuilder, Schema};

/// The schemas and the path of a check.
pub fn describe(check: &CheckEntry) -> (Vec<(String, RefOr<Schema>)>, Paths) {
    let messages = Catalogue::english();
    let CheckSchemas { request, answer, mut all } = (check.schemas)();
    with_schema::<Explain>(&mut all);
    let json = |schema: String| ContentBuilder::new().schema(Some(Ref::from_schema_name(schema))).build();
    let body = RequestBodyBuilder::new()
        .description(Some("What is asked."))
        .required(Some(Required::True))
        .content(media::JSON, json(request));
    let mut answered = ResponseBuilder::new()
        .description("The answer, whatever the verdict.")
        .content(media::JSON, json(answer));
    if check.draw.is_some() {
        let drawing = with_schema::<DrawingText>(&mut all);
        let link = HeaderBuilder::new().schema(Some(described_text("A link (RFC 8288).")));
        let link = link.description(Some(messages.fixed("text-header-link")));
        answered = answered.content(media::SVG, json(drawing)).header("Link", link.build());
    }
    let operation = posted(check.name, check.title, check.purpose, body, answered);
    (all, PathsBuilder::new().path(check.path, PathItem::new(HttpMethod::Post, operation)).build())
}

/// An operation that is posted to and takes `explain`, with the keys of its title and of what it is for.
pub fn posted(
    id: &str,
    title: &str,
    purpose: &str,
    body: RequestBodyBuilder,
    answered: ResponseBuilder,
) -> Operation {
    let messages = Catalogue::english();
    OperationBuilder::new()
        .operation_id(Some(id))
        .tag("Checks")
        .summary(Some(messages.fixed(title)))
        .description(Some(messages.fixed(purpose)))
        .parameter(explain())
        .request_body(Some(body.build()))
        .response("200", answered.build())
        .build()
}

text_body!(DrawingText, "Drawing", "What was checked, drawn to scale as SVG.");

/// The parameter that says how much of the proof an answer carries.
fn explain() -> Parameter {
    ParameterBuilder::new()
        .name(EXPLAIN)
        .parameter_in(ParameterIn::Query)
        .required(Required::False)
        .description(Some(
            "How much of the proof the answer carries: every step, sentences, or nothing. The figures are the same.",
        ))
        .schema(Some(Ref::from_schema_name("Explain")))
        .build()
}
