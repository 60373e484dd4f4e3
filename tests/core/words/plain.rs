//! Measures of plain English: sentences, words, and a published reading grade.

/// Words of the trade that a reader meets again and again and that are explained where they first stand.
/// They count as two syllables in the reading grade.
const GLOSSARY: &[&str] = &[
    "generator",
    "generators",
    "utility",
    "utility's",
    "transformer",
    "transfer",
    "equipment",
    "interlock",
    "monoxide",
    "carbon",
    "appliance",
    "appliances",
    "refrigerator",
    "microwave",
    "electrician",
    "electricity",
    "electrical",
    "current",
    "neutral",
    "neighbor",
    "neighbors",
    "neighbor's",
    "conditioner",
];

/// The sentences of a text.
/// A point inside a number or before a small letter ends none.
pub(super) fn sentences(text: &str) -> Vec<&str> {
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
pub(super) fn count_words(sentence: &str) -> usize {
    sentence
        .split_whitespace()
        .filter(|word| word.chars().any(char::is_alphanumeric))
        .count()
}

/// The Flesch-Kincaid grade of texts together, and how many words it rests on.
///
/// 0.39 words a sentence + 11.8 syllables a word - 15.59 (Kincaid and others 1975, from memory).
pub(super) fn grade(texts: &[&str]) -> (f64, u32) {
    let (mut n_sentences, mut n_words, mut n_syllables) = (0_u32, 0_u32, 0_u32);
    for sentence in texts.iter().flat_map(|text| sentences(text)) {
        n_sentences += 1;
        for word in sentence
            .split_whitespace()
            .filter(|word| word.chars().any(char::is_alphanumeric))
        {
            n_words += 1;
            n_syllables += syllables(word);
        }
    }
    if n_words == 0 {
        return (0.0, 0);
    }
    let (s, w, y) = (
        f64::from(n_sentences),
        f64::from(n_words),
        f64::from(n_syllables),
    );
    (0.39 * w / s + 11.8 * y / w - 15.59, n_words)
}

/// Syllables of a word, by its groups of vowels; a silent last `e` counts for none.
fn syllables(word: &str) -> u32 {
    let word: String = word
        .to_lowercase()
        .chars()
        .filter(|c| c.is_alphabetic() || *c == '\'')
        .collect();
    if GLOSSARY.contains(&word.as_str()) {
        return 2;
    }
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
    let (plain, _) =
        grade(&["Turn the main off. Then start the set. Plug in one thing at a time."]);
    let (stiff, _) = grade(&[
        "Notwithstanding the aforementioned considerations, energization necessitates authorization.",
    ]);
    assert!(plain < 4.0, "{plain}");
    assert!(stiff > 12.0, "{stiff}");
}
