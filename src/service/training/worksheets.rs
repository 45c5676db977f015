//! `POST /v1/worksheets`.

use super::super::language;
use super::super::media;
use super::super::openapi::text_body;
use super::super::problem::Problem;
use super::super::state::Service;
use super::Received;
use super::exercises_request::{WorksheetRequest, number_of};
use crate::i18n::{Catalogue, Language};
use crate::training::worksheet::{self, Sheet};
use axum::extract::{Request, State};
use axum::http::header;
use axum::response::{IntoResponse, Response};
use std::sync::Arc;

text_body!(WorksheetText, "Worksheet", "A sheet of exercises as HTML, made for print.");

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
    media::chosen(request.headers(), &[media::HTML], "problem-detail-not-acceptable-html")?;
    let Received { body: asked, key, .. } = super::read::<WorksheetRequest>(&service, request).await?;
    let spec = asked.spec()?;
    let language = asked.language.map_or_else(language::spoken, Language::from);
    let written = tokio::task::spawn_blocking(move || {
        let title = asked.title.as_ref().map(crate::checks::Reference::as_str);
        let sheet = Sheet { spec, count: number_of(asked.count), title, key };
        worksheet::write(&sheet, Catalogue::of(language))
    });
    let html = written.await.ok().flatten().ok_or_else(Problem::internal)?;
    let headers = [
        (header::CONTENT_TYPE, "text/html; charset=utf-8"),
        (header::CONTENT_SECURITY_POLICY, worksheet::content_security_policy()),
        (header::CONTENT_LANGUAGE, language.tag()),
        (header::VARY, "accept-language"),
    ];
    Ok((headers, html).into_response())
}
