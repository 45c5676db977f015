//! What a takeoff adds up to: every line accounted for, verdicts by check and by prefix of the references, the rules that are violated, and a
//! bill of what the job needs.
//!
//! Each list is kept in order and has a largest length, so that a summary stays small however long the takeoff is; what
//! goes beyond it is counted in a line of its own.

use super::bill::Bill;
use crate::checks::{BillItem, Verdict};
use serde::{Deserialize, Serialize};
use std::borrow::Cow;
use std::cmp::Ordering;
use utoipa::ToSchema;

/// The most lines of each list of a summary.
pub const MOST_LISTED: usize = 1000;

/// What became of one line.
#[derive(Clone, Debug)]
pub enum Entry {
    /// It was answered.
    Answered {
        /// The caller's own mark.
        reference: Option<String>,
        /// The check.
        check: Cow<'static, str>,
        /// The verdict; `None` when only a size was asked for.
        verdict: Option<Verdict>,
        /// The rules that are violated, each once.
        violated: Vec<Cow<'static, str>>,
        /// What the job needs.
        billed: Option<BillItem>,
    },
    /// It was refused.
    Refused {
        /// The caller's own mark, where it could be read.
        reference: Option<String>,
    },
    /// It was blank.
    Blank,
    /// It was the header of a table.
    Header,
}

/// How many answers there are of each verdict.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Verdicts {
    /// Answers that comply.
    pub complies: u64,
    /// Answers that violate a rule.
    pub violates: u64,
    /// Answers that could not be decided.
    pub not_determined: u64,
    /// Answers to questions that only asked for a size.
    pub sized: u64,
}

impl Verdicts {
    fn count(&mut self, verdict: Option<Verdict>) {
        match verdict {
            Some(Verdict::Complies) => self.complies += 1,
            Some(Verdict::Violates) => self.violates += 1,
            Some(Verdict::NotDetermined) => self.not_determined += 1,
            None => self.sized += 1,
        }
    }

    fn absorb(&mut self, other: Self) {
        let Self { complies, violates, not_determined, sized } = other;
        self.complies += complies;
        self.violates += violates;
        self.not_determined += not_determined;
        self.sized += sized;
    }

    /// Each verdict by its name.
    pub const fn named(self) -> [(&'static str, u64); 4] {
        [
            ("complies", self.complies),
            ("violates", self.violates),
            ("not_determined", self.not_determined),
            ("sized", self.sized),
        ]
    }

    /// All answers together.
    pub const fn answered(&self) -> u64 {
        self.complies + self.violates + self.not_determined + self.sized
    }
}

/// What became of the lines: `received` is the sum of the others.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct LineCounts {
    /// Lines, or items of a list, that were received.
    pub received: u64,
    /// Those that were answered, whatever the verdict.
    pub answered: u64,
    /// Those that were refused: a problem stands in the place of the answer.
    pub refused: u64,
    /// Blank lines, which are answered with nothing.
    pub blank: u64,
    /// The header of a table: 1 for `text/csv`, otherwise 0.
    pub header: u64,
}

/// The verdicts of one check.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct CheckCounts {
    /// The check.
    #[schema(example = "outlet_box_fill")]
    pub check: String,
    /// Its verdicts.
    pub verdicts: Verdicts,
}

/// How many answers violate a rule.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct RuleCount {
    /// The rule; its words are at `/v1/rules/{rule}`.
    #[schema(example = "outlet-volume.scope")]
    pub rule: String,
    /// How many answers.
    pub answers: u64,
}

/// What became of the lines of one place of the job.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct PrefixTotals {
    /// The part of the reference before its first `-`, `/`, `.`, `:`, `_` or space; the whole of one that has none.
    #[schema(example = "exam")]
    pub prefix: String,
    /// The verdicts of its answers.
    pub verdicts: Verdicts,
    /// How many of its lines were refused.
    pub refused: u64,
}

/// What a takeoff adds up to.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[schema(as = TakeoffSummary)]
pub struct Summary {
    /// Whether the takeoff arrived whole. When it did not, a problem before this says why.
    pub complete: bool,
    /// What became of the lines.
    pub lines: LineCounts,
    /// The verdicts, by check.
    pub checks: Vec<CheckCounts>,
    /// The rules that are violated, each with the number of answers that violate it.
    pub rules_violated: Vec<RuleCount>,
    /// What the job needs.
    pub bill: Bill,
    /// The lines by the prefix of their reference.
    pub prefixes: Vec<PrefixTotals>,
    /// The lines without a reference, and those of prefixes that the list has no room for.
    pub no_prefix: OtherTotals,
}

/// What became of the lines that belong to no listed prefix.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct OtherTotals {
    /// The verdicts of their answers.
    pub verdicts: Verdicts,
    /// How many of them were refused.
    pub refused: u64,
}

/// The prefix of a reference: the place of the job that it belongs to.
///
/// ```
/// use elbowroom::takeoff::summary::prefix;
/// assert_eq!(prefix("exam-07/rec-03"), "exam");
/// assert_eq!(prefix("lobby"), "lobby");
/// assert_eq!(prefix("-1"), "-1");
/// ```
pub fn prefix(reference: &str) -> &str {
    match reference.find(['-', '/', '.', ':', '_', ' ']) {
        None | Some(0) => reference,
        Some(end) => reference.get(..end).unwrap_or(reference),
    }
}

impl Summary {
    /// Accounts for one line.
    pub fn add(&mut self, entry: &Entry) {
        self.lines.received += 1;
        match entry {
            Entry::Blank => self.lines.blank += 1,
            Entry::Header => self.lines.header += 1,
            Entry::Refused { reference } => {
                self.lines.refused += 1;
                *self.totals(reference.as_deref().map(prefix)).1 += 1;
            }
            Entry::Answered { reference, check, verdict, violated, billed } => {
                self.lines.answered += 1;
                self.totals(reference.as_deref().map(prefix)).0.count(*verdict);
                if let Some(counts) = self.check(check) {
                    counts.verdicts.count(*verdict);
                }
                for rule in violated {
                    self.violation(rule, 1);
                }
                if let Some(billed) = billed {
                    self.bill.add(*billed, 1);
                }
            }
        }
    }

    /// Adds another part of the same takeoff. It is complete when that part is.
    pub fn absorb(&mut self, other: &Self) {
        let Self { complete, lines, checks, rules_violated, bill, prefixes, no_prefix } = other;
        self.complete = *complete;
        let LineCounts { received, answered, refused, blank, header } = *lines;
        self.lines.received += received;
        self.lines.answered += answered;
        self.lines.refused += refused;
        self.lines.blank += blank;
        self.lines.header += header;
        for counts in checks {
            if let Some(own) = self.check(&counts.check) {
                own.verdicts.absorb(counts.verdicts);
            }
        }
        for count in rules_violated {
            self.violation(&count.rule, count.answers);
        }
        self.bill.absorb(bill);
        for totals in prefixes {
            let (verdicts, refused) = self.totals(Some(&totals.prefix));
            verdicts.absorb(totals.verdicts);
            *refused += totals.refused;
        }
        self.no_prefix.verdicts.absorb(no_prefix.verdicts);
        self.no_prefix.refused += no_prefix.refused;
    }

    /// The verdicts of all checks together.
    pub fn verdicts(&self) -> Verdicts {
        let mut all = Verdicts::default();
        self.checks.iter().for_each(|counts| all.absorb(counts.verdicts));
        all
    }

    fn check(&mut self, check: &str) -> Option<&mut CheckCounts> {
        let new = || CheckCounts { check: check.to_owned(), verdicts: Verdicts::default() };
        line(&mut self.checks, |counts| counts.check.as_str().cmp(check), new)
    }

    fn violation(&mut self, rule: &str, answers: u64) {
        let new = || RuleCount { rule: rule.to_owned(), answers: 0 };
        if let Some(count) = line(&mut self.rules_violated, |count| count.rule.as_str().cmp(rule), new) {
            count.answers += answers;
        }
    }

    /// The verdicts and the number of refusals of a prefix.
    fn totals(&mut self, prefix: Option<&str>) -> (&mut Verdicts, &mut u64) {
        let Some(prefix) = prefix else {
            return (&mut self.no_prefix.verdicts, &mut self.no_prefix.refused);
        };
        let new = || PrefixTotals { prefix: prefix.to_owned(), verdicts: Verdicts::default(), refused: 0 };
        match line(&mut self.prefixes, |totals| totals.prefix.as_str().cmp(prefix), new) {
            Some(totals) => (&mut totals.verdicts, &mut totals.refused),
            None => (&mut self.no_prefix.verdicts, &mut self.no_prefix.refused),
        }
    }
}

/// The line of an ordered list that compares as equal, put in where it is missing; `None` when the list is full.
pub(super) fn line<T>(
    list: &mut Vec<T>,
    compare: impl Fn(&T) -> Ordering,
    new: impl FnOnce() -> T,
) -> Option<&mut T> {
    let at = match list.binary_search_by(compare) {
        Ok(at) => at,
        Err(_) if list.len() >= MOST_LISTED => return None,
        Err(at) => {
            list.insert(at, new());
            at
        }
    };
    list.get_mut(at)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::checks::outlet_fill::Material;
    use crate::quantity::Unit;
    use crate::tables::standard_boxes::StandardBox;
    use proptest::prelude::*;

    fn entry(kind: u8, place: u16) -> Entry {
        let reference = (!place.is_multiple_of(5)).then(|| format!("p{place}-x"));
        let verdicts = [Some(Verdict::Complies), Some(Verdict::Violates), Some(Verdict::NotDetermined), None];
        let boxes: Vec<StandardBox> = StandardBox::all().collect();
        match kind % 7 {
            0 => Entry::Blank,
            1 => Entry::Refused { reference },
            kind => {
                let verdict = verdicts[usize::from(place % 4)];
                Entry::Answered {
                    reference,
                    check: Cow::Borrowed(if kind % 2 == 0 { "one" } else { "another" }),
                    verdict,
                    violated: if verdict == Some(Verdict::Violates) {
                        vec![Cow::Borrowed("a.rule")]
                    } else {
                        Vec::new()
                    },
                    billed: [
                        None,
                        Some(BillItem::Open),
                        Some(BillItem::StandardBox {
                            standard: boxes[usize::from(place) % boxes.len()],
                            gangs: u32::from(place % 3 + 1).into(),
                        }),
                        Some(BillItem::MarkedBox {
                            material: Some(Material::Nonmetallic),
                            volume: u32::from(place).into(),
                            unit: Unit::CubicInch,
                        }),
                    ][usize::from(kind % 4)],
                }
            }
        }
    }

    proptest! {
        /// A takeoff in two parts adds up to what it does in one, and every line is accounted for.
        #[test]
        fn parts_add_up(lines in prop::collection::vec((any::<u8>(), 0_u16..400), 0..300), cut in 0_usize..300) {
            let entries: Vec<Entry> = lines.into_iter().map(|(kind, place)| entry(kind, place)).collect();
            let of = |entries: &[Entry]| {
                let mut summary = Summary { complete: true, ..Summary::default() };
                entries.iter().for_each(|entry| summary.add(entry));
                summary
            };
            let whole = of(&entries);
            let (first, second) = entries.split_at(cut.min(entries.len()));
            let mut parts = of(first);
            // as the summary of the second part arrives: over the wire
            let second = serde_json::to_string(&of(second)).unwrap();
            parts.absorb(&serde_json::from_str(&second).unwrap());
            prop_assert_eq!(&parts, &whole);
            let LineCounts { received, answered, refused, blank, header } = whole.lines;
            prop_assert_eq!(received, answered + refused + blank + header);
            prop_assert_eq!(received, entries.len() as u64);
            prop_assert_eq!(whole.verdicts().answered(), answered);
            let places = whole.prefixes.iter().map(|totals| totals.verdicts.answered() + totals.refused);
            let others = whole.no_prefix.verdicts.answered() + whole.no_prefix.refused;
            prop_assert_eq!(places.sum::<u64>() + others, answered + refused);
        }
    }

    #[test]
    fn a_summary_stays_small_and_loses_nothing() {
        let mut summary = Summary::default();
        for number in 0..3_000_u32 {
            summary.add(&Entry::Answered {
                reference: Some(format!("p{number:04}")),
                check: Cow::Borrowed("one"),
                verdict: None,
                violated: Vec::new(),
                billed: Some(BillItem::MarkedBox {
                    material: None,
                    volume: number.into(),
                    unit: Unit::CubicInch,
                }),
            });
        }
        assert_eq!((summary.prefixes.len(), summary.no_prefix.verdicts.sized), (MOST_LISTED, 2_000));
        assert_eq!((summary.bill.marked_boxes.len(), summary.bill.more), (MOST_LISTED, 2_000));
    }
}
