//! A misconception as data: what a learner gets wrong, as a mutation, and the rules that it goes against.

use crate::checks::{Check, Counterfactual, Request as _, evaluate_mutated, rulebook_of};
use crate::derivation::Derivation;
use crate::i18n::Catalogue;
use crate::rulebook::{Edition, MutatedRulebook, Rule, Rulebook, Rules};
use serde::Serialize;
use utoipa::ToSchema;

/// A named departure from the code, as learners make it.
pub struct Misconception<C: Check> {
    /// Its name, never changed once published: `clamp_for_each_cable`.
    pub id: &'static str,
    /// The rules that it goes against.
    pub rules: &'static [&'static Rule],
    /// What it makes of the rules, or of the request.
    pub mutation: Mutation<C>,
    /// The only figure that it is about, by its name; any figure where there is none.
    pub only: Option<&'static str>,
    /// The version of the generator of exercises that it came with: exercises of an earlier version do not know it.
    pub since: u32,
}

/// What a misconception changes.
pub enum Mutation<C: Check> {
    /// Figures, data or strategies of the rules.
    Rules(fn(&mut Rules)),
    /// What the request says; `false` where there is nothing in it to get wrong in this way.
    Request(fn(&mut C::Request) -> bool),
    /// All rules: those of the edition before.
    EditionBefore,
}

impl<C: Check> Clone for Mutation<C> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<C: Check> Copy for Mutation<C> {}

impl<C: Check> Misconception<C> {
    /// A mutation of the rules.
    pub const fn of_rules(
        id: &'static str,
        rules: &'static [&'static Rule],
        mutation: fn(&mut Rules),
    ) -> Self {
        Self { id, rules, mutation: Mutation::Rules(mutation), only: None, since: 1 }
    }

    /// A mutation of the request.
    pub const fn of_request(
        id: &'static str,
        rules: &'static [&'static Rule],
        mutation: fn(&mut C::Request) -> bool,
    ) -> Self {
        Self { id, rules, mutation: Mutation::Request(mutation), only: None, since: 1 }
    }

    /// The edition before.
    pub const fn edition_before(id: &'static str, rules: &'static [&'static Rule]) -> Self {
        Self { id, rules, mutation: Mutation::EditionBefore, only: None, since: 1 }
    }

    /// The same about one figure only.
    pub const fn only_for(self, figure: &'static str) -> Self {
        Self { only: Some(figure), ..self }
    }

    /// Whether it can be held about a figure.
    pub fn is_about(&self, figure: &str) -> bool {
        self.only.is_none_or(|only| only == figure)
    }

    /// Whether it can change what a proof comes to: changed rules cannot where the proof has no step of any of them.
    pub fn can_matter(&self, proof: &Derivation) -> bool {
        match self.mutation {
            Mutation::Rules(_) => {
                self.rules.iter().any(|rule| proof.steps().iter().any(|step| step.rule.id == rule.id))
            }
            Mutation::Request(_) | Mutation::EditionBefore => true,
        }
    }

    /// How an answer speaks of it.
    pub fn view(&self, edition: Edition, messages: &Catalogue) -> MisconceptionView {
        view_of(self.id, self.rules, edition, messages)
    }
}

fn key_of(id: &str) -> String {
    format!("misconception-{}", id.replace('_', "-"))
}

/// How an answer speaks of a misconception.
pub fn view_of(
    id: &'static str,
    rules: &'static [&'static Rule],
    edition: Edition,
    messages: &Catalogue,
) -> MisconceptionView {
    let key = key_of(id);
    let cited = |rule: &&'static Rule| RuleCited {
        rule: rule.id,
        citation: rule.citation(edition).map(|citation| messages.citation(&citation.to_string())),
        title: messages.rule_title(rule.id),
    };
    MisconceptionView {
        id,
        title: messages.fixed(&key).to_owned(),
        why: messages.fixed(&format!("{key}.why")).to_owned(),
        rules: rules.iter().map(cited).collect(),
    }
}

/// A misconception in words.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[schema(as = Misconception)]
pub struct MisconceptionView {
    /// Its name.
    #[schema(value_type = String, example = "device_one_allowance")]
    pub id: &'static str,
    /// What was done, in a few words.
    #[schema(example = "One allowance for a device")]
    pub title: String,
    /// Why that is wrong.
    pub why: String,
    /// Where the code says so.
    pub rules: Vec<RuleCited>,
}

/// A rule, with its place in the edition.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct RuleCited {
    /// The rule; its words are at `/v1/rules/{rule}`.
    #[schema(value_type = String, example = "outlet-fill.devices")]
    pub rule: &'static str,
    /// Where the edition has the rule; absent where it has not.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(example = "314.16(B)(4)")]
    pub citation: Option<String>,
    /// Its title.
    pub title: String,
}

/// Evaluates a request as someone would who holds these misconceptions; `None` where one of them finds nothing in the
/// request to get wrong.
pub fn evaluate_counterfactual<C>(
    request: &C::Request,
    mutations: &[Mutation<C>],
) -> Option<Counterfactual<C::Outcome>>
where
    C: Check<Request: Clone>,
{
    let mut changed: Option<C::Request> = None;
    let mut book: Option<Rulebook> = None;
    for mutation in mutations {
        match mutation {
            Mutation::Request(change) => {
                if !change(changed.get_or_insert_with(|| request.clone())) {
                    return None;
                }
            }
            Mutation::EditionBefore => {
                let before = request.terms().edition.before()?;
                book = Some(rulebook_of::<C>(request, before));
            }
            Mutation::Rules(_) => {}
        }
    }
    let book = book.unwrap_or_else(|| rulebook_of::<C>(request, request.terms().edition));
    let mutated = if mutations.iter().any(|mutation| matches!(mutation, Mutation::Rules(_))) {
        book.mutated(|rules| {
            for mutation in mutations {
                if let Mutation::Rules(change) = mutation {
                    change(rules);
                }
            }
        })
    } else {
        MutatedRulebook::from(book)
    };
    Some(evaluate_mutated::<C>(&mutated, changed.as_ref().unwrap_or(request)))
}
