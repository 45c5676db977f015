//! The editions of the code that can be asked for.

use crate::answers::Ruleset;
use crate::i18n::Catalogue;
use crate::rulebook::Edition;
use serde::Serialize;
use utoipa::ToSchema;

/// Every edition that can be asked for, oldest first.
#[derive(Debug, Serialize, ToSchema)]
pub struct Editions {
    /// The editions.
    editions: Vec<EditionView>,
}

/// An edition of NFPA 70.
#[derive(Debug, Serialize, ToSchema)]
pub struct EditionView {
    /// The edition, as a request names it.
    edition: Edition,
    /// Its title.
    #[schema(example = "NFPA 70, 2023 edition")]
    title: String,
    /// Whether a request that names no edition is answered under this one.
    is_default: bool,
    /// The edition whose figures and section numbers serve for this one: another one where no text was at hand.
    figures_of: Edition,
    /// Whether a request must say that it accepts unverified rules.
    must_accept_unverified_rules: bool,
    /// What an answer under this edition is made under.
    ruleset: Ruleset<'static>,
}

/// The document.
pub fn all(messages: &Catalogue) -> Editions {
    let view = |edition: Edition| EditionView {
        edition,
        title: messages.sentence("text-edition-title", [("year", edition.year().to_owned())]),
        is_default: edition == Edition::default(),
        figures_of: edition.figures_of(),
        must_accept_unverified_rules: !edition.is_verified(),
        ruleset: Ruleset::of_edition(edition),
    };
    Editions { editions: Edition::ALL.into_iter().map(view).collect() }
}
