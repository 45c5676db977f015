//! `POST /v1/worksheets`.

use super::super::language;
use super::super::media;
use super::super::problem::{Problem, ProblemKind};
use super::super::state::Service;
use super::Received;
use super::exercises_request::{WorksheetRequest, number_of};
use crate::i18n::{Catalogue, Language};
use crate::training::worksheet::{self, Sheet};
use axum::extract::{Request, State};
use axum::http::{HeaderValue, header};
use axum::response::{IntoResponse, Response};
use std::borrow::Cow;
use std::sync::Arc;
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::{ObjectBuilder, Schema, Type};
use utoipa::{PartialSchema, ToSchema};

/// A sheet as HTML.
#[derive(Clone, Copy, Debug)]
pub struct WorksheetText;

impl PartialSchema for WorksheetText {
    fn schema() -> RefOr<Schema> {
        let text = ObjectBuilder::new().schema_type(Type::String);
        text.description(Some("A sheet of exercises as HTML, made for print.")).build().into()
    }
}

impl ToSchema for WorksheetText {
    fn name() -> Cow<'static, str> {
        "Worksheet".into()
    }
}

/// A sheet of exercises to print
///
/// HTML made for print on letter or A4 paper: numbered exercises with room for working, and with `key=true` the key on
/// pages of its own. It loads nothing and runs nothing; any browser prints it, or makes a PDF of it.
#[utoipa::path(
    post, path = "/v1/worksheets", tag = "Teaching", operation_id = "worksheet",
    params(("key" = inline(Option<bool>), Query, description = "Whether the key follows, on pages of its own. It does not unless asked.")),
    request_body(content = WorksheetRequest, description = "Which exercises, and how the sheet is titled."),
    responses((status = 200, description = "The sheet.", body = WorksheetText, content_type = "text/html")),
)]
pub async fn worksheet(State(service): State<Arc<Service>>, request: Request) -> Result<Response, Problem> {
    if media::best(request.headers(), &[media::HTML]).is_none() {
        return Err(Problem::new(ProblemKind::NotAcceptable, "problem-detail-not-acceptable-html", []));
    }
    let Received { body: asked, key, .. } = super::read::<WorksheetRequest>(&service, request).await?;
    let spec = asked.spec()?;
    let language = asked.language.map_or_else(language::spoken, Language::from);
    let written = tokio::task::spawn_blocking(move || {
        let title = asked.title.as_ref().map(crate::checks::Reference::as_str);
        let sheet = Sheet { spec, count: number_of(asked.count), title, key };
        worksheet::write(&sheet, Catalogue::of(language))
    });
    let html = written.await.ok().flatten().ok_or_else(Problem::internal)?;
    let policy = HeaderValue::from_static(worksheet::content_security_policy());
    let headers = [
        (header::CONTENT_TYPE, HeaderValue::from_static("text/html; charset=utf-8")),
        (header::CONTENT_SECURITY_POLICY, policy),
        (header::CONTENT_LANGUAGE, HeaderValue::from_static(language.tag())),
        (header::VARY, HeaderValue::from_static("accept-language")),
    ];
    Ok((headers, html).into_response())
}
