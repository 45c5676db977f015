//! What the document says beyond its routes: the service as a whole, the problems of every operation, the examples.

use super::examples::{Example, ExampleSet, Outcome};
use super::links;
use super::{described_text, one_of_names};
use crate::i18n::{Catalogue, Language};
use crate::service::audit;
use crate::service::media::JSON;
use crate::service::operations::Need;
use crate::service::problem::{MEDIA_TYPE, ProblemDocument, ProblemKind};
use crate::service::register::with_schema;
use serde_json::Value;
use utoipa::openapi::example::ExampleBuilder;
use utoipa::openapi::header::HeaderBuilder;
use utoipa::openapi::path::{Operation, ParameterBuilder, ParameterIn, PathItem};
use utoipa::openapi::schema::{ObjectBuilder, Type};
use utoipa::openapi::security::{HttpAuthScheme, HttpBuilder, SecurityRequirement, SecurityScheme};
use utoipa::openapi::tag::TagBuilder;
use utoipa::openapi::{
    Components, ContactBuilder, ContentBuilder, InfoBuilder, LicenseBuilder, OpenApi, Ref, RefOr, Required,
    Response, ResponseBuilder, Server,
};

/// The name of the way in which a key is sent.
const KEY: &str = "key";

/// The whole document, from what the routes say of themselves.
pub fn document(mut document: OpenApi, examples: &ExampleSet) -> OpenApi {
    let messages = Catalogue::english();
    let license = LicenseBuilder::new().name("MIT").identifier(Some("MIT")).build();
    document.info = InfoBuilder::new()
        .title("elbowroom")
        .version(env!("CARGO_PKG_VERSION"))
        .description(Some(messages.fixed("text-api-description")))
        .license(Some(license))
        .contact(Some(ContactBuilder::new().name(Some("The maintainers of elbowroom")).build()))
        .build();
    document.servers = Some(vec![Server::new("/")]);
    // an empty list says that an operation asks for no credentials
    document.security = Some(Vec::new());
    let tag = |(name, key)| TagBuilder::new().name(name).description(Some(messages.fixed(key))).build();
    let tags = [
        ("Checks", "text-tag-checks"),
        ("Certificates", "text-tag-certificates"),
        ("Teaching", "text-tag-teaching"),
        ("Rulebook", "text-tag-rulebook"),
        ("Service", "text-tag-service"),
    ];
    document.tags = Some(tags.map(tag).into());
    let mut schemas = Vec::new();
    with_schema::<ProblemDocument<'static>>(&mut schemas);
    let components = document.components.get_or_insert_default();
    components.schemas.extend(schemas);
    let bearer =
        HttpBuilder::new().scheme(HttpAuthScheme::Bearer).description(Some(messages.fixed("text-key")));
    components.add_security_scheme(KEY, SecurityScheme::Http(bearer.build()));
    declare_language(components);
    for (path, item) in &mut document.paths.paths {
        for (operation, need) in operations(path, item) {
            complete(path, operation, need, examples);
        }
    }
    links::add(&mut document.paths);
    document
}

/// The operations of a path, with what a caller needs for each where keys are asked for.
fn operations<'a>(path: &str, item: &'a mut PathItem) -> impl Iterator<Item = (&'a mut Operation, Need)> {
    let needs = [Need::of(path, false), Need::of(path, true)];
    let [get, post] = [&mut item.get, &mut item.post].map(Option::as_mut);
    [get, post].into_iter().zip(needs).filter_map(|(operation, need)| Some((operation?, need)))
}

fn complete(path: &str, operation: &mut Operation, need: Need, examples: &ExampleSet) {
    use ProblemKind as Kind;
    let mut kinds = vec![Kind::NotAcceptable, Kind::InvalidRequest, Kind::InternalError];
    if !path.starts_with("/health/") {
        kinds.extend([Kind::TooManyRequests, Kind::Overloaded]);
    }
    if need != Need::Nothing {
        kinds.push(Kind::Unauthorized);
        // without a key as well: a service on loopback asks for none
        let none = SecurityRequirement::default();
        operation.security = Some(vec![none, SecurityRequirement::new(KEY, [""; 0])]);
    }
    if need == Need::Scope {
        kinds.push(Kind::Forbidden);
    }
    if operation.request_body.is_some() {
        kinds.extend([Kind::MalformedJson, Kind::RequestTimeout]);
        kinds.extend([Kind::BodyTooLarge, Kind::UnsupportedMediaType]);
    }
    if path.contains('{') {
        kinds.push(Kind::NotFound);
    }
    if operation.operation_id.as_deref() == Some("ready") {
        kinds.push(Kind::NotReady);
    }
    for kind in kinds {
        let status = kind.status().as_str().to_owned();
        operation.responses.responses.insert(status, RefOr::T(problem_response(kind)));
    }
    let is_document = path.starts_with("/v1/") && operation.request_body.is_none();
    if is_document && path != audit::PATH {
        describe_caching(operation);
    }
    let id = operation.operation_id.clone().unwrap_or_default();
    describe_language(operation, &id);
    for example in examples.of(&id) {
        add_example(operation, example);
    }
}

fn problem_response(kind: ProblemKind) -> Response {
    let messages = Catalogue::english();
    let schema = Ref::from_schema_name("Problem");
    let response = ResponseBuilder::new()
        .description(kind.meaning(messages))
        .content(MEDIA_TYPE, ContentBuilder::new().schema(Some(schema)).build());
    let headers: &[(&str, &str)] = match kind {
        ProblemKind::Unauthorized | ProblemKind::Forbidden => {
            &[("WWW-Authenticate", "text-header-www-authenticate")]
        }
        ProblemKind::Overloaded => &[("Retry-After", "text-header-retry-after")],
        ProblemKind::TooManyRequests => &[
            ("Retry-After", "text-header-retry-after"),
            ("RateLimit", "text-header-ratelimit"),
            ("RateLimit-Policy", "text-header-ratelimit-policy"),
        ],
        _ => &[],
    };
    let with_header = |response: ResponseBuilder, (name, key): &(&str, &str)| {
        let description = messages.fixed(key);
        let header = HeaderBuilder::new().schema(Some(described_text(description)));
        response.header(*name, header.description(Some(description)).build())
    };
    headers.iter().fold(response, with_header).build()
}

/// Documents that stay the same carry an entity tag and are answered with 304 to a caller who has them.
fn describe_caching(operation: &mut Operation) {
    let tag = HeaderBuilder::new().schema(Some(described_text("A strong entity tag.")));
    let tag = tag.description(Some("The tag of the content.")).build();
    let not_modified = ResponseBuilder::new()
        .description("The caller has this document: If-None-Match names its tag.")
        .header("ETag", tag.clone())
        .build();
    let responses = &mut operation.responses.responses;
    if let Some(RefOr::T(answered)) = responses.get_mut("200") {
        answered.headers.insert("ETag".to_owned(), RefOr::T(tag));
    }
    responses.insert("304".to_owned(), RefOr::T(not_modified));
}

/// The header by which a caller chooses the language, and the one that says which it is: declared once, referred to
/// everywhere.
fn declare_language(components: &mut Components) {
    let asked = ParameterBuilder::new()
        .name("Accept-Language")
        .parameter_in(ParameterIn::Header)
        .required(Required::False)
        .description(Some(
            "The language of the sentences: English or Spanish. Figures, verdicts, names and codes are the same in both. \
             A request for no language that is available is answered in English.",
        ))
        .schema(Some(ObjectBuilder::new().schema_type(Type::String).examples(["es-MX, es;q=0.9"])));
    let tags = one_of_names(Language::ALL.map(Language::tag));
    let header =
        HeaderBuilder::new().schema(Some(tags.build())).description(Some("The language of the sentences."));
    components.parameters.insert("AcceptLanguage".to_owned(), RefOr::T(asked.build()));
    components.headers.insert("ContentLanguage".to_owned(), RefOr::T(header.build()));
}

/// Every operation tells its problems in the language that is asked for, and all but these its answer too.
fn describe_language(operation: &mut Operation, id: &str) {
    const WITHOUT_WORDS: [&str; 7] =
        ["tables", "table", "amendments", "self_audit", "signing_keys", "live", "ready"];
    let asked = Ref::new("#/components/parameters/AcceptLanguage");
    operation.parameters.get_or_insert_default().push(RefOr::Ref(asked));
    if let Some(RefOr::T(answered)) = operation.responses.responses.get_mut("200")
        && !WITHOUT_WORDS.contains(&id)
    {
        let reference = Ref::new("#/components/headers/ContentLanguage");
        answered.headers.insert("Content-Language".to_owned(), RefOr::Ref(reference));
    }
}

fn add_example(operation: &mut Operation, example: &Example) {
    let shown = |value: &Value, description: String| {
        let shown = ExampleBuilder::new().summary(&example.summary).description(description);
        RefOr::T(shown.value(Some(value.clone())).build())
    };
    let name = || example.name.clone();
    let is_answered = matches!(example.outcome, Some(Outcome::Answer(_)));
    let mut fenced = String::new();
    if let (Some(request), Some(RefOr::T(body))) = (&example.request, &mut operation.request_body)
        && let Some(RefOr::T(content)) = body.content.get_mut(example.sends.as_deref().unwrap_or(JSON))
    {
        if is_answered {
            content.examples.insert(name(), shown(request, String::new()));
        } else {
            // a body that is refused may not stand among the valid ones: it is shown beside its problem
            let text = request.as_str().map(str::to_owned);
            let text = text.unwrap_or_else(|| serde_json::to_string_pretty(request).unwrap_or_default());
            fenced = format!("```{}\n{text}\n```", if request.is_string() { "" } else { "json" });
        }
    }
    let (status, media_type, value) = match &example.outcome {
        Some(Outcome::Answer(answer)) => {
            let special = example.accept.as_deref().or(example.sends.as_deref());
            ("200".to_owned(), special.filter(|_| answer.is_string()).unwrap_or(JSON), answer)
        }
        Some(Outcome::Problem(problem)) => {
            (problem.get("status").map(Value::to_string).unwrap_or_default(), MEDIA_TYPE, problem)
        }
        None => return,
    };
    if let Some(RefOr::T(response)) = operation.responses.responses.get_mut(&status)
        && let Some(RefOr::T(content)) = response.content.get_mut(media_type)
    {
        content.examples.insert(name(), shown(value, fenced));
    }
}
