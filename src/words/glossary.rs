//! Words of the trade, each explained in a sentence or two, and where they stand in a text.
//!
//! What they mean is in `glossary.ftl` of each language; here is only which there are, and how they are found.
//! A term is found as a whole word in any case, the longest first: in “transfer switch” no “switch” is looked for.

use std::ops::Range;

use super::Words;

/// The terms, by name; `glossary-<name>` holds their forms, and `-meaning` and `-source` the rest.
pub const TERMS: [&str; 45] = [
    "neutral",
    "ground",
    "grounds",
    "hot",
    "leg",
    "backfeed",
    "interlock",
    "slide",
    "transfer-switch",
    "inlet",
    "gfci",
    "bond",
    "inrush",
    "main-breaker",
    "output-breaker",
    "breaker",
    "fuse",
    "panel",
    "service-drop",
    "utility",
    "recloser",
    "cutout",
    "pole-transformer",
    "standby",
    "inverter",
    "volt",
    "amp",
    "watt",
    "ohm",
    "hertz",
    "awg",
    "insulation",
    "lug",
    "lockout",
    "tag",
    "jumper",
    "short-circuit",
    "arc",
    "frame",
    "load",
    "live",
    "proving-source",
    "out-of-step",
    "torque",
    "ppm",
];

/// The signs that stand for a unit behind a number, the same in every language.
const SIGNS: [(&str, &[&str]); 5] = [
    ("volt", &["V"]),
    ("amp", &["A", "mA"]),
    ("watt", &["W"]),
    ("ohm", &["Ω"]),
    ("hertz", &["Hz"]),
];

/// A word of the trade.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Term {
    /// All its forms, its name first.
    pub forms: Vec<String>,
    /// The signs that stand for it behind a number.
    pub signs: &'static [&'static str],
    /// What it means.
    pub meaning: String,
    /// Where that is from.
    pub source: String,
}

/// A term in a text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FoundTerm {
    /// Where it stands, in bytes of the text.
    pub at: Range<usize>,
    /// The term.
    pub term: Term,
}

impl Words {
    /// The glossary, in the order of its names.
    pub fn glossary(&self) -> Vec<Term> {
        let mut terms: Vec<Term> = TERMS.iter().map(|name| self.term(name)).collect();
        terms.sort_by_key(|term| term.forms.first().map(|name| name.to_lowercase()));
        terms
    }

    fn term(&self, name: &str) -> Term {
        let forms = self.say_id(&format!("glossary-{name}"));
        Term {
            forms: forms
                .split(',')
                .map(|form| form.trim().to_owned())
                .collect(),
            signs: SIGNS
                .iter()
                .find(|(own, _)| *own == name)
                .map_or(&[], |(_, signs)| signs),
            meaning: self.say_id(&format!("glossary-{name}-meaning")),
            source: self.say_id(&format!("glossary-{name}-source")),
        }
    }

    /// The terms of a text, each where it first stands, in the order of the text.
    pub fn terms_in(&self, text: &str) -> Vec<FoundTerm> {
        let glossary = self.glossary();
        let mut forms: Vec<(&str, &Term)> = glossary
            .iter()
            .flat_map(|term| term.forms.iter().map(move |form| (form.as_str(), term)))
            .collect();
        forms.sort_by_key(|(form, _)| std::cmp::Reverse(form.chars().count()));
        let words = forms
            .into_iter()
            .map(|(form, term)| (whole_words(text, form), term));
        let signs = glossary.iter().flat_map(|term| {
            let behind = |sign: &&str| (behind_numbers(text, sign), term);
            term.signs.iter().map(behind).collect::<Vec<_>>()
        });
        let mut found: Vec<FoundTerm> = Vec::new();
        let mut taken: Vec<Range<usize>> = Vec::new();
        for (places, term) in words.chain(signs) {
            for at in places {
                if taken.iter().any(|t| t.start < at.end && at.start < t.end) {
                    continue;
                }
                taken.push(at.clone());
                found.push(FoundTerm {
                    at,
                    term: term.clone(),
                });
            }
        }
        found.sort_by_key(|f| f.at.start);
        let mut told: Vec<Term> = Vec::new();
        found.retain(|f| {
            let first = !told.contains(&f.term);
            if first {
                told.push(f.term.clone());
            }
            first
        });
        found
    }
}

/// Where a form stands in a text as a whole word, in any case.
fn whole_words(text: &str, form: &str) -> Vec<Range<usize>> {
    let starts = text.char_indices().map(|(at, _)| at);
    let here = |at: usize| {
        let rest = text.get(at..)?;
        let length = same_but_for_case(rest, form)?;
        let before = text.get(..at).and_then(|t| t.chars().next_back());
        let after = rest.get(length..).and_then(|t| t.chars().next());
        let apart = |c: Option<char>| c.is_none_or(|c| !c.is_alphanumeric());
        (apart(before) && apart(after)).then_some(at..at + length)
    };
    starts.filter_map(here).collect()
}

/// Where a sign stands behind a number and a space.
fn behind_numbers(text: &str, sign: &str) -> Vec<Range<usize>> {
    let places = text.match_indices(sign);
    let is_one = |at: usize| {
        let mut before = text.get(..at).unwrap_or_default().chars().rev();
        let after = text.get(at + sign.len()..).and_then(|t| t.chars().next());
        before.next().is_some_and(char::is_whitespace)
            && before.next().is_some_and(|c| c.is_ascii_digit())
            && after.is_none_or(|c| !c.is_alphanumeric())
    };
    let signs = places.filter(|(at, _)| is_one(*at));
    signs.map(|(at, _)| at..at + sign.len()).collect()
}

/// How many bytes of a text are this form in any case; `None` if it doesn't begin with it.
fn same_but_for_case(text: &str, form: &str) -> Option<usize> {
    let mut letters = text.chars();
    for wanted in form.chars() {
        let letter = letters.next()?;
        if !letter.to_lowercase().eq(wanted.to_lowercase()) {
            return None;
        }
    }
    Some(text.len() - letters.as_str().len())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn names(tag: &str, text: &str) -> Vec<String> {
        let found = Words::new(tag).terms_in(text).into_iter();
        found
            .map(|f| text.get(f.at).unwrap_or_default().to_owned())
            .collect()
    }

    #[test]
    fn the_longest_form_is_taken_and_only_whole_words() {
        let text = "Breakers: the main breaker, the output breaker. A panelist lives upstairs.";
        assert_eq!(
            names("en", text),
            ["Breakers", "main breaker", "output breaker"]
        );
    }

    #[test]
    fn a_sign_behind_a_number_is_a_word_of_the_trade() {
        let text = "A lamp takes 60\u{a0}W at 120\u{a0}V, which is 0.5\u{a0}A. V: for 5 Aces.";
        assert_eq!(names("en", text), ["W", "V", "A"]);
    }

    #[test]
    fn each_language_finds_its_own_words() {
        let text = "El interruptor de transferencia mueve el neutro y el NEUTRO.";
        assert_eq!(
            names("es", text),
            ["interruptor de transferencia", "neutro"]
        );
        assert_eq!(names("en", text), Vec::<String>::new());
    }
}
