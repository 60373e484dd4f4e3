//! Which languages there are, and which of them to speak.
//!
//! The system's wishes are handed in; this module reads no environment.
//! Negotiation follows the usual rules for language tags: a wish for `es-MX` is met by `es`.

use fluent_langneg::NegotiationStrategy;
use fluent_langneg::convert_vec_str_to_langids_lossy;
use fluent_langneg::negotiate_languages;
use unic_langid::{CharacterDirection, LanguageIdentifier};

/// A language that the program speaks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Language {
    /// Language tag, as in `--language`.
    pub tag: &'static str,
    /// Its name in itself.
    pub name: &'static str,
    /// The locale whose numbers are written when the reader names no country.
    pub(super) numbers: &'static str,
    /// The folder of its word files.
    pub(super) folder: &'static str,
}

/// The language that everything is written in first, and that is spoken when no wish can be met.
pub const REFERENCE: &str = "en";

/// English with accents and a third longer, made by the program to show what is not translated and what does not fit.
pub const PSEUDO: &str = "en-XA";

/// The languages offered to a learner, the reference first.
///
/// Spanish without a country writes numbers as in the United States and Mexico, whose houses have these panels: `7,200` and `2.5`.
/// A tag with a country, such as `es-MX`, brings that country's numbers.
pub const OFFERED: [Language; 2] = [
    Language {
        tag: REFERENCE,
        name: "English",
        numbers: "en-US",
        folder: "en",
    },
    Language {
        tag: "es",
        name: "Español",
        numbers: "es-US",
        folder: "es",
    },
];

/// English in a layout that runs from right to left, made by the program to show that it does.
pub const PSEUDO_FROM_RIGHT: &str = "ar-XB";

/// The pseudo-locales, under the tags that are usual for them.
const TEST_ONLY: [Language; 2] = [
    Language {
        tag: PSEUDO,
        name: "Ḗƞɠŀīşħ",
        numbers: "en-US",
        folder: "en",
    },
    Language {
        tag: PSEUDO_FROM_RIGHT,
        name: "English from the right",
        numbers: "en-US",
        folder: "en",
    },
];

/// The language that meets this one wish, if there is one.
/// A pseudo-locale answers to its own tag only.
pub fn find(tag: &str) -> Option<Language> {
    let own = |pseudo: &Language| tag.eq_ignore_ascii_case(pseudo.tag);
    TEST_ONLY
        .into_iter()
        .find(own)
        .or_else(|| negotiate(&[tag]))
}

/// The tag to speak for these wishes, the dearest first; the reference language if none can be met.
///
/// Tags may come as a system gives them: `es_MX.UTF-8` is read as `es-MX`.
pub fn choose(requested: &[&str]) -> &'static str {
    let tidy: Vec<String> = requested.iter().map(|tag| tidy(tag)).collect();
    let wishes: Vec<&str> = tidy.iter().map(String::as_str).collect();
    negotiate(&wishes).map_or(REFERENCE, |language| language.tag)
}

/// The locale of numbers for a wish: the wish itself where it names a country, else what the language states.
pub(super) fn number_locale(wish: &str, language: Language) -> String {
    let tidy = tidy(wish);
    match tidy.parse::<LanguageIdentifier>() {
        Ok(id) if !TEST_ONLY.contains(&language) && id.region.is_some() => tidy,
        Ok(_) | Err(_) => language.numbers.to_owned(),
    }
}

/// Whether a language is read from right to left, by its tag.
pub(super) fn is_from_right(tag: &str) -> bool {
    let id: Result<LanguageIdentifier, _> = tag.parse();
    id.is_ok_and(|id| id.character_direction() == CharacterDirection::RTL)
}

fn negotiate(wishes: &[&str]) -> Option<Language> {
    let wishes = convert_vec_str_to_langids_lossy(wishes);
    let available = convert_vec_str_to_langids_lossy(OFFERED.map(|language| language.tag));
    let found = negotiate_languages(&wishes, &available, None, NegotiationStrategy::Lookup);
    let tag = found.first()?.to_string();
    OFFERED.into_iter().find(|language| language.tag == tag)
}

fn tidy(tag: &str) -> String {
    tag.split(['.', '@'])
        .next()
        .unwrap_or_default()
        .replace('_', "-")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_wish_with_a_country_is_met_by_its_language() {
        assert_eq!(choose(&["es-MX"]), "es");
        assert_eq!(choose(&["es-419"]), "es");
        assert_eq!(choose(&["en_GB.UTF-8"]), "en");
    }

    #[test]
    fn the_first_wish_that_can_be_met_wins() {
        assert_eq!(choose(&["fr-CA", "es-MX", "en-US"]), "es");
        assert_eq!(choose(&["fr", "de"]), "en");
        assert_eq!(choose(&["C", "POSIX", ""]), "en");
        assert_eq!(choose(&[]), "en");
    }

    #[test]
    fn a_language_that_is_not_there_is_not_found() {
        assert_eq!(find("xx"), None);
        assert_eq!(find("not a tag"), None);
        assert_eq!(find("es").map(|language| language.tag), Some("es"));
        assert_eq!(find("en-xa").map(|language| language.tag), Some(PSEUDO));
        assert_eq!(find("ar-EG"), None);
    }

    #[test]
    fn a_tag_tells_from_which_side_a_language_is_read() {
        for tag in ["ar", "he", "fa", "ur", "az-Arab", PSEUDO_FROM_RIGHT] {
            assert!(is_from_right(tag), "{tag}");
        }
        for language in OFFERED {
            assert!(!is_from_right(language.tag), "{}", language.tag);
        }
    }
}
