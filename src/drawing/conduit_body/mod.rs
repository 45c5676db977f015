//! A conduit body: seen from its cover and from the side where its lengths matter, and gauges where areas and volumes do.

mod lists;
mod measures;
mod strands;
mod view;

use super::Drawn;
use super::gauge::{Balance, Gauge, Share, Span, citation_named, citation_of};
use super::head::{self, BELOW, MARGIN, name_of};
use super::sheet::{Anchor, Letters, Sheet, at};
use crate::checks::conduit_body::{ConduitBodyCheck, ConduitBodyOutcome, ConduitBodyRequest, Hub, HubPlace};
use crate::checks::{Evaluation, Finding, Status};
use crate::i18n::Catalogue;
use crate::rulebook::Rule;
use measures::Measures;

const WIDTH: f64 = 720.0;
/// How high a bar is that compares two sizes.
const LOW_BAR: f64 = 18.0;

impl Drawn for ConduitBodyCheck {
    fn draw(request: &Self::Request, evaluation: &Evaluation<Self::Outcome>, messages: &Catalogue) -> String {
        let title = messages.sentence("drawing-body-title", [("shape", name_of(evaluation.outcome.shape))]);
        let page = Page { request, evaluation, messages };
        let measures = Measures::of(request, &evaluation.outcome);
        head::page::<Self>(request, evaluation, (&title, WIDTH), messages, |sheet| {
            let mut y = page.views(sheet, &measures, BELOW);
            for list in [Page::pulls, Page::requirements, Page::distances, Page::small, Page::splices] {
                y = list(&page, sheet, y);
            }
            y + MARGIN / 2.0
        })
    }
}

/// What is drawn of one answer.
struct Page<'a> {
    request: &'a ConduitBodyRequest,
    evaluation: &'a Evaluation<ConduitBodyOutcome>,
    messages: &'a Catalogue,
}

impl Page<'_> {
    fn outcome(&self) -> &ConduitBodyOutcome {
        &self.evaluation.outcome
    }

    fn citation(&self, rule: &Rule) -> String {
        citation_of(rule, self.request.edition, self.messages)
    }

    /// Where the rule with a name stands.
    fn citation_named(&self, id: &str) -> String {
        citation_named(id, self.request.edition, self.messages)
    }

    /// Whether what falls short of a rule counts against the body: what is marked on one may let it be smaller.
    fn counts_against(&self, rule: &str) -> bool {
        let counts = |finding: &&Finding| matches!(finding.status, Status::Violated | Status::NotDetermined);
        self.evaluation.findings.iter().filter(counts).any(|finding| finding.rule.id == rule)
    }

    /// An opening in words.
    fn opening(&self, place: HubPlace) -> String {
        self.opening_named(&name_of(place))
    }

    /// An opening by its name in an answer.
    fn opening_named(&self, name: &str) -> String {
        self.messages.fixed(&format!("word-opening-{}", name.replace([' ', '_'], "-"))).to_owned()
    }

    /// Several openings, one after another.
    fn openings(&self, names: &[String]) -> String {
        names.iter().map(|name| self.opening_named(name)).collect::<Vec<_>>().join(" – ")
    }

    /// The heading of a part; returns where its first line may stand.
    fn heading(&self, sheet: &mut Sheet<'_>, top: f64, text: &str) -> f64 {
        sheet.text(at(MARGIN, top + 22.0), Anchor::Start, Letters::Strong, text);
        sheet.describe(format!("{text}:"));
        top + 28.0
    }
}

/// A gauge that compares what is required with what there is; one thing is taken, so it has no legend.
fn comparison(most: Option<Span>, taken: Span, balance: Option<Balance>) -> Gauge {
    let share = Share { text: taken.text.clone(), citation: String::new(), size: taken.size };
    Gauge { whole: None, most, joint: None, taken, balance, shares: vec![share], bar: LOW_BAR }
}

/// `EMT 2`.
fn raceway_of(hub: &Hub) -> String {
    format!("{} {}", hub.raceway.kind, hub.raceway.trade_size)
}
