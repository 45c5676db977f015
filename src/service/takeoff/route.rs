//! `POST /v1/takeoffs`.

use super::batch::Job;
use super::form::Form;
use super::source::{self, Source};
use super::stream::Answers;
use super::{operation, record_writer};
use crate::answers::Explain;
use crate::service::access::Authorization;
use crate::service::language;
use crate::service::problem::Problem;
use crate::service::query;
use crate::service::state::Service;
use axum::body::{Body, BodyDataStream};
use axum::extract::{Request, State};
use axum::http::{HeaderValue, header, request};
use axum::response::{IntoResponse, Response};
use axum::routing::post;
use std::sync::Arc;
use utoipa_axum::router::UtoipaMethodRouter;

/// The route and its part of the OpenAPI document.
pub fn route() -> UtoipaMethodRouter<Arc<Service>> {
    let (schemas, paths) = operation::describe();
    let handler = |State(service): State<Arc<Service>>, request: Request| async move {
        let authorization = Authorization::of(&request);
        let (parts, body) = request.into_parts();
        handle(&service, authorization, &parts, body).await.unwrap_or_else(Problem::into_response)
    };
    (schemas, paths, post(handler))
}

/// How much of the proof the answers carry when the caller does not say: a table has no place for any.
pub const fn usual_explain(form: Form) -> Explain {
    match form {
        Form::Csv => Explain::None,
        Form::Json | Form::Ndjson => Explain::Full,
    }
}

async fn handle(
    service: &Arc<Service>,
    authorization: Authorization,
    parts: &request::Parts,
    body: Body,
) -> Result<Response, Problem> {
    let sent = Form::sent(&parts.headers)?;
    let wanted = Form::wanted(&parts.headers, sent)?;
    let explain = query::explain_or(parts.uri.query(), usual_explain(wanted))?;
    let limits = service.limits;
    let longest_line = limits.max_body_size;
    let source: Source<BodyDataStream> = match sent {
        Form::Json => Source::of_document(source::receive(body, limits).await?)?,
        Form::Ndjson | Form::Csv => {
            let pieces = body.into_data_stream();
            Source::of_lines(pieces, sent, longest_line, Some(limits.body_timeout)).await?
        }
    };
    let job = Job {
        line_kind: source.line_kind.clone(),
        writer: record_writer::of(wanted),
        explain,
        longest_line,
        authorization,
        service: Some(Arc::clone(service)),
    };
    let answers = Answers::to(source, job, &service.worker_pool);
    let media_type = HeaderValue::from_static(wanted.media_type());
    let answers = Body::from_stream(answers.into_stream());
    Ok(([(header::CONTENT_TYPE, media_type)], language::headers(), answers).into_response())
}
