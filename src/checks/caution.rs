//! What must be said beside an answer.

/// Something to know before acting on an answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Caution {
    /// De-energize, lock out, test before touch.
    DeEnergize,
    /// The authority having jurisdiction and local amendments decide; the work is for licensed persons.
    Authority,
    /// What was computed, and what was not looked at.
    Scope,
    /// Volumes and dimensions are minimums.
    Minimums,
    /// Hazardous (classified) locations have rules of their own.
    HazardousLocation,
    /// Figures were amended on the caller's word.
    Amended,
    /// The edition could not be verified.
    UnverifiedEdition,
}

impl Caution {
    /// What every answer says.
    pub const USUAL: [Self; 4] = [Self::DeEnergize, Self::Authority, Self::Scope, Self::Minimums];

    /// The key of the sentence.
    pub const fn key(self) -> &'static str {
        match self {
            Self::DeEnergize => "caution-de-energize",
            Self::Authority => "caution-authority",
            Self::Scope => "caution-scope",
            Self::Minimums => "caution-minimums",
            Self::HazardousLocation => "caution-hazardous-location",
            Self::Amended => "caution-amended",
            Self::UnverifiedEdition => "caution-unverified-edition",
        }
    }
}
