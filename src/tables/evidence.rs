//! The evidence: which text of the law, or what else, was read for a rule, a figure or a row of a table, and of which edition.
//!
//! What the rules and the tables say of how far they can be trusted follows from it; a test holds them together.

use super::loader::SOURCES;
use super::{Bases, Basis};
use std::sync::LazyLock;

/// One reading of one source.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Evidence {
    /// The id of a rule, the name of a figure, or a table and the key of its row: `standard-boxes/square-4x1-1/2`.
    pub of: String,
    /// The edition that the source speaks of, as the year on its cover; it may be older than those that can be asked for.
    pub edition: String,
    /// The key in the table `sources`.
    pub source: String,
    /// Whether the source says what is said here.
    pub agrees: bool,
    /// What it says otherwise, or what an auditor should know; often empty.
    pub note: String,
}

const TEXT: &str = include_str!("data/evidence.csv");

static ALL: LazyLock<Vec<Evidence>> = LazyLock::new(|| read(TEXT).unwrap_or_default());

/// All of it, in order of what it is about.
pub fn all() -> &'static [Evidence] {
    &ALL
}

/// What was read for a rule, a figure or a row of a table.
pub fn of(name: &str) -> &'static [Evidence] {
    let start = all().partition_point(|evidence| *evidence.of < *name);
    let end = start + all()[start..].iter().take_while(|evidence| evidence.of == name).count();
    &all()[start..end]
}

/// Reads all lines; a fault names the line that it is on.
fn read(text: &str) -> Result<Vec<Evidence>, String> {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let mut rows: Vec<Evidence> = Vec::new();
    for (record, line) in reader.records().zip(2..) {
        let record = record.map_err(|error| format!("line {line}: {error}"))?;
        let field = |place| record.get(place).unwrap_or_default().to_owned();
        let [of, edition, source, agrees, note] = [0, 1, 2, 3, 4].map(field);
        let agrees = match agrees.as_str() {
            "yes" => true,
            "no" => false,
            other => return Err(format!("line {line}: agrees is yes or no, not {other:?}")),
        };
        if let Some(before) = rows.last().filter(|before| before.of > of) {
            return Err(format!("line {line}: {of} is sorted before {}", before.of));
        }
        rows.push(Evidence { of, edition, source, agrees, note });
    }
    Ok(rows)
}

/// How far what was read supports something under each edition; `None` under one that nothing read supports.
///
/// A text of the edition itself is the strongest; then one of an earlier edition and one of a later that agree; then an unofficial copy; then
/// an earlier edition alone. Forums and study notes support nothing by themselves.
pub fn support(evidence: &[Evidence]) -> [Option<Basis>; 3] {
    let kind = |evidence: &Evidence| SOURCES.without_provenance().ok()?.text(&evidence.source, "kind");
    let read: Vec<(&str, &str)> = evidence
        .iter()
        .filter(|evidence| evidence.agrees)
        .filter_map(|evidence| Some((evidence.edition.as_str(), kind(evidence)?)))
        .collect();
    let is_text = |kind: &str| matches!(kind, "law" | "copy");
    Bases::YEARS.map(|year| {
        let of_it =
            |kinds: &[&str]| read.iter().any(|(edition, kind)| *edition == year && kinds.contains(kind));
        let before = read.iter().any(|(edition, kind)| *edition < year && is_text(kind));
        let after = read.iter().any(|(edition, kind)| *edition > year && is_text(kind));
        if of_it(&["law", "handbook", "article"]) {
            Some(Basis::Published)
        } else if before && after && !of_it(&["copy"]) {
            Some(Basis::Bracketed)
        } else if of_it(&["copy"]) {
            Some(Basis::UnofficialCopy)
        } else {
            before.then_some(Basis::EarlierEdition)
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn evidence(edition: &str, source: &str) -> Evidence {
        let [of, edition, source] = ["a", edition, source].map(str::to_owned);
        Evidence { of, edition, source, agrees: true, note: String::new() }
    }

    #[test]
    fn the_strongest_of_each_edition_counts() {
        use Basis::{Bracketed, EarlierEdition, Published, UnofficialCopy};
        let law = |edition| evidence(edition, if edition == "2020" { "cec-2022" } else { "cec-2013" });
        let copy = || evidence("2023", "nfpa70-2023-copy");
        assert_eq!(
            support(&[law("2011"), law("2020"), copy()]),
            [Some(Bracketed), Some(Published), Some(UnofficialCopy)]
        );
        assert_eq!(support(&[law("2011"), copy()]), [Some(Bracketed), Some(Bracketed), Some(UnofficialCopy)]);
        assert_eq!(support(&[law("2011")]), [Some(EarlierEdition); 3]);
        assert_eq!(support(&[law("2020")]), [None, Some(Published), Some(EarlierEdition)]);
        assert_eq!(support(&[evidence("2020", "holt-box-supports")]), [None; 3]);
        let differs = Evidence { agrees: false, ..law("2011") };
        assert_eq!(support(&[differs, law("2020")])[0], None);
    }

    #[test]
    fn what_does_not_read_is_named_with_its_line() {
        let read_whole = read(TEXT).unwrap();
        assert!(read_whole.len() > 1000);
        for (bad, line) in [
            ("of,edition,source,agrees,note\na,2011,cec-2013,maybe,\n", "line 2: "),
            ("of,edition,source,agrees,note\nb,2011,x,yes,\na,2011,x,yes,\n", "line 3: "),
            ("of,edition,source,agrees,note\na,2011,x,yes\n", "line 2: "),
        ] {
            assert!(read(bad).unwrap_err().starts_with(line), "{bad}");
        }
    }
}
