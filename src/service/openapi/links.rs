//! Where an answer leads: from a list to what it names, from an answer to the words of a rule and to other editions.

use crate::i18n::Catalogue;
use crate::rulebook::Edition;
use crate::service::register::CheckEntry;
use serde_json::json;
use utoipa::openapi::link::LinkBuilder;
use utoipa::openapi::path::{Operation, Paths};
use utoipa::openapi::{RefOr, Response};

/// From a list to its first member: the operation of the list, that of a member, the parameter and where its value stands.
const LISTS: [(&str, &str, &str, &str, &str); 3] = [
    ("checks", "check", "name", "$response.body#/checks/0/name", "text-link-check"),
    ("rules", "rule", "id", "$response.body#/rules/0/id", "text-link-rule"),
    ("tables", "table", "id", "$response.body#/tables/0/id", "text-link-table"),
];

/// Adds every link.
pub(super) fn add(paths: &mut Paths) {
    let verified = Edition::ALL.into_iter().rev().filter(|edition| edition.is_verified());
    let editions: Vec<&str> = verified.map(Edition::year).collect();
    for operation in paths.paths.values_mut().flat_map(|item| [&mut item.get, &mut item.post]).flatten() {
        let id = operation.operation_id.clone().unwrap_or_default();
        let Some(answered) = answered(operation) else { continue };
        for (list, member, parameter, place, key) in LISTS {
            if id == list {
                let link = LinkBuilder::new().operation_id(member).parameter(parameter, place);
                insert(answered, member, link, key);
            }
        }
        if id == "certify" {
            let link = LinkBuilder::new().operation_id("verify").request_body(Some(json!("$response.body")));
            insert(answered, "verification", link, "text-link-verification");
        }
        if let Some(check) = CheckEntry::named(&id) {
            let link = LinkBuilder::new().operation_id("rule");
            insert(
                answered,
                "rule",
                link.parameter("id", "$response.body#/findings/0/rule"),
                "text-link-rule",
            );
            let certified = json!({"check": check.name, "request": "$request.body"});
            let link = LinkBuilder::new().operation_id("certify").request_body(Some(certified));
            insert(answered, "certificate", link, "text-link-certificate");
            let compared = json!({"check": check.name, "editions": editions, "request": "$request.body"});
            let link = LinkBuilder::new().operation_id("edition_comparison").request_body(Some(compared));
            insert(answered, "other_editions", link, "text-link-other-editions");
        }
    }
}

fn answered(operation: &mut Operation) -> Option<&mut Response> {
    match operation.responses.responses.get_mut("200") {
        Some(RefOr::T(response)) => Some(response),
        _ => None,
    }
}

/// Adds a link, with the key of what it leads to.
fn insert(response: &mut Response, name: &str, link: LinkBuilder, key: &str) {
    let link = link.description(Catalogue::english().fixed(key));
    response.links.insert(name.to_owned(), RefOr::T(link.build()));
}
