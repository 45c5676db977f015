//! What the OpenAPI document says of a takeoff.

use super::PATH;
use super::form::Form;
use super::list::MOST_ITEMS;
use super::record_writer::TakeoffProblem;
use crate::answers::Explain;
use crate::i18n::Catalogue;
use crate::service::openapi::check_operation::posted;
use crate::service::openapi::{closed_object, described_text, one_of_names};
use crate::service::register::{CHECKS, CheckSchemas, with_schema};
use crate::takeoff::summary::Summary;
use crate::takeoff::table::Column;
use utoipa::openapi::extensions::{Extensions, ExtensionsBuilder};
use utoipa::openapi::path::{PathItem, Paths, PathsBuilder};
use utoipa::openapi::request_body::RequestBodyBuilder;
use utoipa::openapi::schema::{AnyOfBuilder, ArrayBuilder, ObjectBuilder, OneOfBuilder};
use utoipa::openapi::{ContentBuilder, HttpMethod, Ref, RefOr, Required, ResponseBuilder, Schema};

/// The name of the schema of one item.
pub const ITEM_SCHEMA: &str = "TakeoffItem";

/// The schemas and the path of the operation.
pub fn describe() -> (Vec<(String, RefOr<Schema>)>, Paths) {
    let messages = Catalogue::english();
    let mut all = Vec::new();
    with_schema::<Explain>(&mut all);
    let problem = with_schema::<TakeoffProblem<'static>>(&mut all);
    let summary = with_schema::<Summary>(&mut all);
    let (mut items, mut records) = (OneOfBuilder::new(), AnyOfBuilder::new());
    for check in CHECKS {
        let CheckSchemas { request, answer, all: schemas } = (check.schemas)();
        all.extend(schemas);
        let named = format!("{request}Item");
        let item = closed_object()
            .description(Some(messages.fixed(check.title)))
            .property("check", one_of_names([check.name]).description(Some("The check.")))
            .property("request", Ref::from_schema_name(request))
            .required("check")
            .required("request");
        all.push((named.clone(), item.build().into()));
        items = items.item(Ref::from_schema_name(named));
        records = records.item(Ref::from_schema_name(answer));
    }
    let item = items.description(Some("One item of a takeoff: a check, and its request.")).build();
    all.push((ITEM_SCHEMA.to_owned(), RefOr::T(item.into())));
    let list = || ArrayBuilder::new().items(Ref::from_schema_name(ITEM_SCHEMA)).max_items(Some(MOST_ITEMS));
    let described = list().description(Some("The items, in the order in which they are answered.")).build();
    let document = closed_object()
        .title(Some("TakeoffDocument"))
        .description(Some("The items of a takeoff."))
        .property("items", described.clone())
        .required("items");
    let takeoff = OneOfBuilder::new().item(document.build()).item(described);
    let takeoff = takeoff.description(Some("A takeoff: its items as a member, or the list of them alone."));
    all.push(("Takeoff".to_owned(), RefOr::T(takeoff.build().into())));
    let records = records.item(Ref::from_schema_name(problem));
    let records = records.description(Some(
        "The answer to one item, as the operation of its check gives it, or what is wrong with it.",
    ));
    all.push(("TakeoffRecord".to_owned(), RefOr::T(records.build().into())));
    let answers = ArrayBuilder::new()
        .items(Ref::from_schema_name("TakeoffRecord"))
        .description(Some("What each item is answered with, in the same order."));
    let answer = ObjectBuilder::new()
        .description(Some("The answers to a takeoff, and what they add up to."))
        .property("answers", answers.build())
        .property("summary", Ref::from_schema_name(summary))
        .required("answers")
        .required("summary");
    all.push(("TakeoffAnswer".to_owned(), answer.build().into()));
    for (name, key) in [
        ("TakeoffLines", "text-takeoff-lines"),
        ("TakeoffTable", "text-takeoff-table"),
        ("TakeoffAnswerLines", "text-takeoff-answer-lines"),
        ("TakeoffAnswerTable", "text-takeoff-answer-table"),
    ] {
        let text = described_text(messages.fixed(key));
        let text = if name == "TakeoffTable" { text.extensions(Some(roles_of_columns())) } else { text };
        all.push((name.to_owned(), text.build().into()));
    }
    (all, paths(messages))
}

/// The role of the cells of each column of a table: what it means that one is empty.
fn roles_of_columns() -> Extensions {
    let roles: serde_json::Map<String, serde_json::Value> =
        Column::ALL.iter().map(|column| (column.name().to_owned(), column.role().name().into())).collect();
    ExtensionsBuilder::new().add("x-roles", roles).build()
}

fn paths(messages: &Catalogue) -> Paths {
    let content = |schema: &str| ContentBuilder::new().schema(Some(Ref::from_schema_name(schema))).build();
    let mut body = RequestBodyBuilder::new()
        .description(Some(messages.fixed("text-takeoff-body")))
        .required(Some(Required::True));
    let mut answered = ResponseBuilder::new().description(messages.fixed("text-takeoff-answered"));
    for (form, sent, given) in [
        (Form::Json, "Takeoff", "TakeoffAnswer"),
        (Form::Ndjson, "TakeoffLines", "TakeoffAnswerLines"),
        (Form::Csv, "TakeoffTable", "TakeoffAnswerTable"),
    ] {
        body = body.content(form.media_type(), content(sent));
        answered = answered.content(form.media_type(), content(given));
    }
    let operation = posted("takeoff", "text-takeoff-title", "text-takeoff", body, answered);
    PathsBuilder::new().path(PATH, PathItem::new(HttpMethod::Post, operation)).build()
}
