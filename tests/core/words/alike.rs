//! One word for one thing and one way of writing numbers, in the words of the program and of the scenarios.

use std::collections::BTreeMap;

use outage_drill::file::Library;
use outage_drill::words::{OFFERED, REFERENCE, word_files};

/// Every line of a language's words, by file and id.
fn lines(tag: &str) -> BTreeMap<String, String> {
    let (library, _) = Library::shipped();
    let own = word_files(tag);
    let texts = own.iter().map(|file| file.text.to_owned());
    let more = library.words.iter().filter(|(folder, _)| folder == tag);
    let texts: Vec<String> = texts.chain(more.map(|(_, text)| text.clone())).collect();
    let mut found = BTreeMap::new();
    for text in texts {
        let mut id = String::new();
        for line in text.lines().filter(|l| !l.starts_with('#')) {
            if let Some((name, _)) = line.split_once(" = ").filter(|_| !line.starts_with(' ')) {
                name.clone_into(&mut id);
            }
            let said: &mut String = found.entry(id.clone()).or_default();
            said.push_str(line);
            said.push('\n');
        }
    }
    found
}

#[test]
fn a_drill_is_a_simulacro_in_all_of_spanish() {
    let english = lines(REFERENCE);
    let exercises = |id: &String| english.get(id).is_some_and(|text| text.contains("exercis"));
    let other: Vec<String> = lines("es")
        .into_iter()
        .filter(|(id, text)| text.to_lowercase().contains("ejercicio") && !exercises(id))
        .map(|(_, text)| text)
        .collect();
    assert!(other.is_empty(), "{}", other.join(""));
}

#[test]
fn numbers_written_into_words_have_a_point_before_their_decimals() {
    for language in OFFERED {
        for text in lines(language.tag).values() {
            let marks = text.match_indices(',');
            let digits = |part: &str| part.chars().take_while(char::is_ascii_digit).count();
            let mut decimal = marks.filter(|(at, _)| {
                let before = text[..*at].ends_with(|c: char| c.is_ascii_digit());
                before && matches!(digits(&text[at + 1..]), 1 | 2)
            });
            assert_eq!(decimal.next(), None, "{}: {text}", language.tag);
        }
    }
}
