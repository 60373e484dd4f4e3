//! Measures of plain English: sentences, words, and a published reading grade.

use std::collections::BTreeSet;

use outage_drill::words::{REFERENCE, Words};

/// Words that name a thing and have no shorter one, beside those of the glossary.
const NAMES: &[&str] = &[
    "generator",
    "generators",
    "generator's",
    "utility's",
    "monoxide",
    "carbon",
    "appliance",
    "appliances",
    "refrigerator",
    "microwave",
    "electrician",
    "electricity",
    "electrical",
    "neighbor",
    "neighbors",
    "neighbor's",
    "conditioner",
    "emergency",
];

/// The words that a grade leaves out by name: those of the glossary, and names of things.
pub(crate) fn left_out() -> BTreeSet<String> {
    let glossary = Words::new(REFERENCE).glossary().into_iter();
    let forms = glossary.flat_map(|term| term.forms);
    let words = forms.flat_map(|form| {
        let words = form.split_whitespace().map(bare);
        words.collect::<Vec<String>>()
    });
    words
        .chain(NAMES.iter().map(|name| (*name).to_owned()))
        .collect()
}

/// A word in small letters, without the marks around it.
fn bare(word: &str) -> String {
    let kept = |c: &char| c.is_alphabetic() || *c == '\'';
    word.to_lowercase().chars().filter(kept).collect()
}

/// The sentences of a text.
/// A point inside a number or before a small letter ends none.
pub(crate) fn sentences(text: &str) -> Vec<&str> {
    let mut found = Vec::new();
    let mut from = 0;
    for (index, mark) in text.char_indices() {
        let rest = &text[index + mark.len_utf8()..];
        let ends =
            matches!(mark, '.' | '!' | '?') && rest.chars().next().is_none_or(char::is_whitespace);
        if ends || mark == '\n' {
            found.push(text[from..index].trim());
            from = index + mark.len_utf8();
        }
    }
    found.push(text[from..].trim());
    found.retain(|sentence| !sentence.is_empty());
    found
}

/// Words of a sentence: whatever has a letter or a digit.
pub(crate) fn count_words(sentence: &str) -> usize {
    sentence
        .split_whitespace()
        .filter(|word| word.chars().any(char::is_alphanumeric))
        .count()
}

/// The Flesch-Kincaid grade of texts together, and how many words it rests on.
///
/// 0.39 words a sentence + 11.8 syllables a word - 15.59 (Kincaid and others 1975, from memory).
/// Words that are left out by name have no syllables, and the others' are not shared with them.
pub(crate) fn grade(texts: &[&str], left_out: &BTreeSet<String>) -> (f64, u32) {
    let (mut n_sentences, mut n_words, mut n_named, mut n_syllables) = (0_u32, 0_u32, 0_u32, 0_u32);
    for sentence in texts.iter().flat_map(|text| sentences(text)) {
        n_sentences += 1;
        for word in sentence
            .split_whitespace()
            .filter(|word| word.chars().any(char::is_alphanumeric))
        {
            n_words += 1;
            if left_out.contains(&bare(word)) {
                n_named += 1;
            } else {
                n_syllables += syllables(word);
            }
        }
    }
    if n_words == n_named {
        return (0.0, 0);
    }
    let (s, w, y) = (
        f64::from(n_sentences),
        f64::from(n_words),
        f64::from(n_syllables),
    );
    let spoken = f64::from(n_words - n_named);
    (0.39 * w / s + 11.8 * y / spoken - 15.59, n_words)
}

/// Syllables of a word, by its groups of vowels; a silent last `e` counts for none.
fn syllables(word: &str) -> u32 {
    let word = bare(word);
    let vowel = |c: char| "aeiouy".contains(c);
    let mut groups = 0;
    let mut before = false;
    for letter in word.chars() {
        if vowel(letter) && !before {
            groups += 1;
        }
        before = vowel(letter);
    }
    let silent = word.ends_with('e') && !word.ends_with("le")
        || word.ends_with("ed") && !word.ends_with("ted") && !word.ends_with("ded");
    if silent && groups > 1 {
        groups - 1
    } else {
        groups.max(1)
    }
}

#[test]
fn sentences_end_at_marks_and_not_inside_numbers() {
    assert_eq!(
        sentences("Stop. It carries 2.5 amps! Why?\nThat"),
        ["Stop", "It carries 2.5 amps", "Why", "That"]
    );
    assert_eq!(count_words("It carries 2.5 amps"), 4);
}

#[test]
fn plain_text_has_a_low_grade_and_officialese_a_high_one() {
    let named = left_out();
    let (plain, _) = grade(
        &["Turn the main off. Then start the set. Plug in one thing at a time."],
        &named,
    );
    let (stiff, _) = grade(
        &[
            "Notwithstanding the aforementioned considerations, energization necessitates authorization.",
        ],
        &named,
    );
    assert!(plain < 4.0, "{plain}");
    assert!(stiff > 12.0, "{stiff}");
}

#[test]
fn a_word_that_is_left_out_by_name_makes_no_text_harder() {
    let named = left_out();
    assert!(named.contains("transfer") && named.contains("interlock"));
    let with = grade(&["The interlock holds the bar."], &named);
    let without = grade(&["The interlock holds the bar."], &BTreeSet::new());
    assert!(with.0 < without.0, "{with:?} {without:?}");
}
