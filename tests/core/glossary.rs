//! The glossary as a learner asks for it: on the command line, inside a drill, and in a text that a session shows.

use outage_drill::file::Library;
use outage_drill::session::Session;

use crate::terminal::{assert_refused, drill, drill_in};

#[test]
fn the_glossary_tells_all_words_or_one_in_each_language_and_as_data() {
    let all = drill(&["glossary", "--language", "en"]);
    assert_eq!(all.status, Some(0), "{}", all.err);
    assert!(all.out.lines().count() >= 35, "{}", all.out);
    let one = drill(&["glossary", "Transfer", "Switch", "--language", "en"]);
    assert_eq!(one.status, Some(0), "{}", one.err);
    assert!(
        one.out.starts_with("transfer switch: ") && one.out.contains("NEC"),
        "{}",
        one.out
    );
    let spanish = drill(&["glossary", "neutro", "--language", "es"]);
    assert!(spanish.out.starts_with("neutro: "), "{}", spanish.out);
    let data = drill(&["glossary", "neutral", "--json", "--language", "en"]);
    let read: serde_json::Value = serde_json::from_str(&data.out).unwrap();
    assert_eq!(read["terms"][0]["name"], "neutral");
    assert!(read["terms"][0]["source"].is_string(), "{read}");
}

#[test]
fn a_word_that_is_not_there_is_refused_and_the_others_are_named() {
    let answered = drill(&["glossary", "flux", "--language", "en"]);
    assert_refused(&answered, &["flux", "neutral", "interlock"]);
}

#[test]
fn what_tells_a_word_inside_a_drill_and_leaves_the_drill_as_it_is() {
    let typed = "what interlock\nwhat flux\nwhat\nquit\n";
    let folder = tempfile::tempdir().unwrap();
    let arguments = ["play", "there-and-back", "--language", "en"];
    let told = drill_in(folder.path(), typed, &arguments).out;
    for words in ["interlock: ", "in the glossary: flux", "The words: "] {
        assert!(told.contains(words), "no {words:?} in: {told}");
    }
    assert_eq!(told.matches("0:00> ").count(), 4, "{told}");
}

#[test]
fn a_session_finds_the_words_of_a_text_that_it_shows() {
    let (library, _) = Library::shipped();
    let text = "The transfer switch moves the neutral too. A neutral that floats is no fault.";
    let found = Session::new(library, "en").terms(text);
    let words: Vec<&str> = found.iter().map(|f| &text[f.at.clone()]).collect();
    assert_eq!(words, ["transfer switch", "neutral"]);
    assert!(
        found
            .iter()
            .all(|f| !f.term.meaning.is_empty() && !f.term.source.is_empty())
    );
}

#[test]
fn the_words_of_the_trade_in_what_was_found_are_explained_below_it() {
    let list = "tests/drills/visible-break-one-word.actions";
    let play = ["play", "visible-break", "--actions", list, "--language"];
    let told = drill(&[&play[..], &["en"]].concat()).out;
    let (found, terms) = told.split_once("Words of the trade in this").unwrap();
    for name in ["recloser", "jumper", "grounds"] {
        assert!(found.contains(name), "{found}");
        assert!(terms.contains(&format!("\n  {name}: ")), "{terms}");
    }
    assert!(!terms.contains("interlock"), "{terms}");
    let told = drill(&[&play[..], &["es"]].concat()).out;
    let (_, terms) = told.split_once("Palabras del oficio").unwrap();
    assert!(terms.contains("\n  reconectador: "), "{terms}");
}
