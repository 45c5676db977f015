//! The schemas of the published document: which members a request has, and the role of each.

use elbowroom::checks::Check;
use elbowroom::of_each_check;
use serde_json::{Map, Value};
use std::collections::BTreeMap;

/// The published schemas.
pub struct Schemas {
    all: Map<String, Value>,
    roots: BTreeMap<&'static str, String>,
}

fn root<C: Check>() -> String {
    <C::Request as utoipa::ToSchema>::name().into_owned()
}

/// One member that a request has.
pub struct Member<'a> {
    /// Where it stands.
    pub at: String,
    /// What stands there.
    pub value: &'a Value,
    /// Its schema, behind references.
    pub schema: &'a Value,
    /// Its role.
    pub role: &'a str,
}

impl Schemas {
    /// Those of the document that the service publishes.
    pub fn published() -> Self {
        let document: Value =
            serde_json::from_str(elbowroom::service::openapi::text()).expect("the document");
        let all = document["components"]["schemas"].as_object().expect("schemas").clone();
        let roots = of_each_check!(C => (<C as Check>::NAME, root::<C>())).into();
        Self { all, roots }
    }

    /// Every member of a request of a check, at any depth.
    pub fn members<'a>(&'a self, check: &str, request: &'a Value) -> Vec<Member<'a>> {
        let mut found = Vec::new();
        self.collect(&self.all[&self.roots[check]], request, "", &mut found);
        found
    }

    /// The places of a request that hold a property or a relief: what may be left unsaid, and must not buy anything by it.
    pub fn droppable(&self, check: &str, request: &Value) -> Vec<String> {
        let members = self.members(check, request);
        let may_be = |member: &Member<'_>| matches!(member.role, "property" | "relief");
        members.into_iter().filter(may_be).map(|member| member.at).collect()
    }

    fn collect<'a>(&'a self, schema: &'a Value, value: &'a Value, at: &str, found: &mut Vec<Member<'a>>) {
        for (name, member) in self.properties(schema, value) {
            let Some(held) = value.get(name) else { continue };
            let at = format!("{at}/{name}");
            let role = member["x-role"].as_str().unwrap_or_default();
            let schema = self.resolved(member);
            found.push(Member { at: at.clone(), value: held, schema, role });
            match held {
                Value::Array(items) => {
                    for (index, item) in items.iter().enumerate() {
                        self.collect(&schema["items"], item, &format!("{at}/{index}"), found);
                    }
                }
                Value::Object(_) => self.collect(schema, held, &at, found),
                _ => {}
            }
        }
    }

    /// A schema behind its reference.
    fn resolved<'a>(&'a self, schema: &'a Value) -> &'a Value {
        match schema["$ref"].as_str() {
            Some(reference) => self.resolved(&self.all[reference.rsplit('/').next().unwrap_or_default()]),
            None => schema,
        }
    }

    /// The properties of a schema that a value has, each with its schema: through references and choices between kinds.
    fn properties<'a>(&'a self, schema: &'a Value, value: &Value) -> Vec<(&'a str, &'a Value)> {
        let schema = self.resolved(schema);
        let branches = ["oneOf", "anyOf", "allOf"].iter().filter_map(|key| schema[*key].as_array()).flatten();
        let own = schema["properties"].as_object().into_iter().flatten();
        let mut found: Vec<_> = own.map(|(name, schema)| (name.as_str(), schema)).collect();
        for branch in branches.map(|branch| self.resolved(branch)) {
            let of_kind = branch["properties"].as_object().into_iter().flatten().all(|(name, schema)| {
                let named = value.get(name);
                schema["enum"].as_array().is_none_or(|names| named.is_none_or(|named| names.contains(named)))
            });
            if of_kind {
                found.extend(self.properties(branch, value));
            }
        }
        found
    }
}
