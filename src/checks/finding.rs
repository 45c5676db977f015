//! What a check finds about one rule.

use super::{Account, Name, RuleStatus};
use crate::derivation::{Figure, Pointer, StepId};
use crate::rulebook::Rule;
use serde::{Deserialize, Serialize};
use smallvec::SmallVec;
use utoipa::ToSchema;

/// The answer to "does this comply?". Absent when only a size was asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// Every rule in the scope of what was described is satisfied or does not apply.
    Complies,
    /// At least one rule is violated.
    Violates,
    /// No rule is violated by what was given, but a rule that applies could not be decided: the findings say what to supply.
    NotDetermined,
}

/// What is found about one rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Status {
    /// The rule is violated.
    Violated,
    /// The rule applies and cannot be decided from what was given.
    NotDetermined,
    /// The rule is satisfied.
    Satisfied,
    /// Something to know that decides nothing.
    Advisory,
}

/// One thing that a sentence names: words of the trade, a figure of the answer, or a plain number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FindingArg {
    /// Words that are the same in every language, such as a conductor size or an identifier.
    Text(String),
    /// Words that are the same in every language and never change.
    Name(&'static str),
    /// Words that each language has its own of: the keys of their messages, written one after another.
    Words(Vec<&'static str>),
    /// A figure, written with its unit.
    Figure(Figure),
    /// Things with what they take, written one after another.
    AllowanceGroups(Vec<AllowanceGroup>),
    /// Readings of a disputed point, each with what it leads to.
    Readings(Vec<ReadingResult>),
}

/// What one reading of a disputed point leads to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ReadingResult {
    /// The reading.
    pub reading: &'static str,
    /// The verdict under it.
    pub verdict: Option<Verdict>,
    /// What is compared under it, and with what, where that is a comparison.
    pub figures: Option<[Figure; 2]>,
}

/// What some things of one size take together.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AllowanceGroup {
    /// The caller's names for them.
    pub names: SmallVec<[Name; 1]>,
    /// The size that they are counted by.
    pub size: &'static str,
    /// How many allowances.
    pub allowances: Figure,
    /// What one allowance is.
    pub each: Figure,
}

impl From<Figure> for FindingArg {
    fn from(figure: Figure) -> Self {
        Self::Figure(figure)
    }
}

impl From<&str> for FindingArg {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}

/// A finding: one rule, what is found about it, and the sentence that says so.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Finding {
    /// The rule.
    pub rule: &'static Rule,
    /// What is found.
    pub status: Status,
    /// The key of the sentence in the message catalogues.
    pub message: &'static str,
    /// What the sentence names.
    pub arguments: SmallVec<[(&'static str, FindingArg); 3]>,
    /// The inputs that it is about.
    pub at: Vec<Pointer>,
    /// The inputs that would decide it.
    pub supply: Vec<Pointer>,
    /// The reliefs that would lift a rule that is violated: what an installer adds or an authority grants, and nobody claimed.
    pub unless: Vec<Pointer>,
    /// The step of the proof that decides it.
    pub step: Option<StepId>,
    /// The part of what is judged that it is about, from 0, where there are several: a section, a space.
    pub part: Option<usize>,
    /// Whether it is about a way to satisfy a rule that another way makes needless: it then decides nothing.
    pub is_superseded: bool,
    /// The reading of an open point under which it is found, where another comes to something else.
    pub read_as: Option<&'static str>,
    /// Whether it asks for what can no longer change anything: nobody is asked.
    pub is_needless: bool,
}

impl Finding {
    /// A finding that names nothing yet.
    pub fn new(rule: &'static Rule, status: Status, message: &'static str) -> Self {
        let (arguments, at, supply, unless) = (SmallVec::new(), Vec::new(), Vec::new(), Vec::new());
        Self {
            rule,
            status,
            message,
            arguments,
            at,
            supply,
            unless,
            step: None,
            part: None,
            is_superseded: false,
            read_as: None,
            is_needless: false,
        }
    }

    /// What was compared, and with what, where it is met in the other system of units.
    pub(super) fn met_by(&self) -> Option<[Figure; 2]> {
        let figure = |wanted: &str| {
            self.arguments.iter().find_map(|(name, argument)| match argument {
                FindingArg::Figure(figure) if *name == wanted => Some(*figure),
                _ => None,
            })
        };
        Some([figure("there")?, figure("other_limit")?])
    }

    /// Names something in the sentence.
    pub fn with(mut self, name: &'static str, argument: impl Into<FindingArg>) -> Self {
        self.arguments.push((name, argument.into()));
        self
    }

    /// Says which input it is about.
    pub fn at(mut self, at: Pointer) -> Self {
        self.at.push(at);
        self
    }

    /// Says which input would decide it.
    pub fn supply(mut self, at: Pointer) -> Self {
        self.supply.push(at);
        self
    }

    /// Says which relief would lift the rule.
    pub fn unless(mut self, at: Pointer) -> Self {
        self.unless.push(at);
        self
    }

    /// Lets it decide nothing, since another way satisfies the rule: what this one lacks is only worth knowing.
    pub fn supersede(&mut self) {
        self.status = Status::Advisory;
        self.is_superseded = true;
        self.supply.clear();
        self.unless.clear();
    }

    /// Says which step decides it.
    pub fn step(mut self, step: StepId) -> Self {
        self.step = Some(step);
        self
    }
}

impl Verdict {
    /// The verdict as an answer writes it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Complies => "complies",
            Self::Violates => "violates",
            Self::NotDetermined => "not_determined",
        }
    }

    /// The verdict that an account comes to: a violation decides, then anything open. An account in which no rule is
    /// satisfied vouches for nothing.
    pub fn of(account: &Account) -> Self {
        match account.entries().iter().map(|entry| entry.status).min() {
            Some(RuleStatus::Violated) => Self::Violates,
            Some(RuleStatus::NotDetermined) => Self::NotDetermined,
            Some(RuleStatus::Satisfied) => Self::Complies,
            Some(RuleStatus::DoesNotApply) | None => Self::NotDetermined,
        }
    }

    /// The verdict about a part of what is judged, from the findings about that part alone.
    pub fn of_part<'a>(findings: impl IntoIterator<Item = &'a Finding>) -> Self {
        let worst = findings.into_iter().map(|finding| finding.status).min();
        match worst {
            Some(Status::Violated) => Self::Violates,
            Some(Status::NotDetermined) | None => Self::NotDetermined,
            Some(Status::Satisfied | Status::Advisory) => Self::Complies,
        }
    }
}
