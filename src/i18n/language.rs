//! The languages that there is a catalogue for.

use unic_langid::LanguageIdentifier;

/// A language of what people read. What programs read (member names, identifiers, codes) has none.
///
/// ```
/// use elbowroom::i18n::Language;
/// assert_eq!(Language::default(), Language::English);
/// assert_eq!(Language::Spanish.tag(), "es");
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Language {
    /// English of the United States.
    #[default]
    English,
    /// Spanish in the words of the trade as used in the United States and Mexico.
    Spanish,
}

impl Language {
    /// Every language, the default first.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// The language as BCP 47 names it, without a region: one catalogue serves all regions.
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }

    /// The language that a BCP 47 tag or the name of a POSIX locale names, whatever its region; `None` for any other.
    ///
    /// ```
    /// use elbowroom::i18n::Language;
    /// assert_eq!(Language::named("es-US"), Some(Language::Spanish));
    /// assert_eq!(Language::named("es_MX.UTF-8"), Some(Language::Spanish));
    /// assert_eq!(Language::named("C.UTF-8"), None);
    /// ```
    pub fn named(name: &str) -> Option<Self> {
        let tag = name.split(['.', '@']).next().unwrap_or_default();
        let named: LanguageIdentifier = tag.parse().ok()?;
        Self::ALL.into_iter().find(|known| named.language.as_str() == known.tag())
    }

    /// The messages as they are written, one file a subject.
    pub(super) const fn texts(self) -> &'static [&'static str] {
        /// The files that every language has, and those that only this one needs.
        macro_rules! files {
            ($folder:literal $(, $own:literal)*) => {
                &[
                    $(include_str!(concat!($folder, "/", $own)),)*
                    include_str!(concat!($folder, "/common.ftl")),
                    include_str!(concat!($folder, "/ui.ftl")),
                    include_str!(concat!($folder, "/outlet-boxes.ftl")),
                    include_str!(concat!($folder, "/free-conductors.ftl")),
                    include_str!(concat!($folder, "/pull-boxes.ftl")),
                    include_str!(concat!($folder, "/conduit-bodies.ftl")),
                    include_str!(concat!($folder, "/raceways.ftl")),
                    include_str!(concat!($folder, "/box-depths.ftl")),
                    include_str!(concat!($folder, "/box-construction.ftl")),
                    include_str!(concat!($folder, "/box-mounting.ftl")),
                    include_str!(concat!($folder, "/box-supports.ftl")),
                    include_str!(concat!($folder, "/luminaire-and-fan-outlets.ftl")),
                    include_str!(concat!($folder, "/enclosure-types.ftl")),
                    include_str!(concat!($folder, "/drawings.ftl")),
                    include_str!(concat!($folder, "/service.ftl")),
                    include_str!(concat!($folder, "/takeoffs.ftl")),
                    include_str!(concat!($folder, "/certificates.ftl")),
                    include_str!(concat!($folder, "/training-misconceptions.ftl")),
                    include_str!(concat!($folder, "/training-grading.ftl")),
                    include_str!(concat!($folder, "/training-exercises.ftl")),
                    include_str!(concat!($folder, "/training-worksheets.ftl")),
                ]
            };
        }
        match self {
            Self::English => files!("en"),
            // a name is its own label in English
            Self::Spanish => files!("es", "labels.ftl"),
        }
    }
}
