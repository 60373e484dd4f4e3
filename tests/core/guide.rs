//! The guide for authors, held to itself: its own blocks are put into a folder, checked and played to a pass.

use std::fs;
use std::path::Path;

use crate::terminal::{Answered, assert_refused, drill_in};

const GUIDE: &str = include_str!("../../scenarios/GUIDE.md");

/// Each file that the guide writes out: its name, and the block that follows.
fn files() -> Vec<(String, String)> {
    let mut files = Vec::new();
    let mut rest = GUIDE;
    while let Some((_, after)) = rest.split_once("\nFile `") {
        let (name, after) = after.split_once("`:").unwrap();
        let (_, after) = after.split_once("```").unwrap();
        let (_, after) = after.split_once('\n').unwrap();
        let (block, after) = after.split_once("```").unwrap();
        files.push((name.to_owned(), block.to_owned()));
        rest = after;
    }
    files
}

/// Writes the guide's files into a folder.
fn write(folder: &Path) {
    for (name, text) in files() {
        let path = folder.join(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, text).unwrap();
    }
}

#[test]
fn the_guide_s_own_lesson_is_printed_without_a_gap() {
    let folder = tempfile::tempdir().unwrap();
    write(folder.path());
    for more in [&[][..], &["--handout"], &["--session", "1"]] {
        let own = ["--scenarios", ".", "lesson", "cabin-hour"];
        let told = drill_in(folder.path(), "", &[&own[..], more].concat());
        assert_eq!(told.status, Some(0), "{}", told.err);
        assert!(!told.out.contains('['), "a gap in the words: {}", told.out);
    }
}

#[test]
fn the_guide_s_own_drill_is_sound_and_its_list_of_actions_passes() {
    let folder = tempfile::tempdir().unwrap();
    write(folder.path());
    assert_eq!(files().len(), 7);
    let checked = drill_in(folder.path(), "", &["check", "."]);
    assert_eq!(checked.status, Some(0), "{}{}", checked.out, checked.err);
    let own = ["--scenarios", ".", "play", "cold-milk"];
    let list = ["--actions", "cold-milk.actions"];
    let played = drill_in(folder.path(), "", &[&own[..], &list[..]].concat());
    assert_eq!(played.status, Some(0), "{}{}", played.out, played.err);
    assert!(
        !played.out.contains('['),
        "a gap in the words: {}",
        played.out
    );
}

const WORDS: &str = "words/en/cold-milk.ftl";

/// What a command says of the guide's folder in which one text of its words is replaced.
fn with_words(from: &str, to: &str, command: &[&str]) -> Answered {
    let folder = tempfile::tempdir().unwrap();
    write(folder.path());
    let path = folder.path().join(WORDS);
    let text = fs::read_to_string(&path).unwrap();
    assert!(text.contains(from), "{from}");
    fs::write(path, text.replacen(from, to, 1)).unwrap();
    drill_in(folder.path(), "", command)
}

const LIST: [&str; 3] = ["--scenarios", ".", "list"];
const CHECK: [&str; 3] = ["check", ".", "--as-written"];

#[test]
fn a_folder_s_words_are_spoken_and_a_drill_without_words_is_told_and_goes_by_its_name() {
    let folder = tempfile::tempdir().unwrap();
    write(folder.path());
    let with = drill_in(folder.path(), "", &LIST);
    assert!(with.out.contains("Cold milk"), "{}", with.out);
    assert_eq!((with.status, with.err.as_str()), (Some(0), ""));
    // A lesson can't go without its words; a drill can.
    for without in ["words", "lessons"] {
        fs::remove_dir_all(folder.path().join(without)).unwrap();
    }
    for command in [LIST, CHECK] {
        let without = drill_in(folder.path(), "", &command);
        let said =
            |part: &str| format!("“drill-cold-milk-{part}” is missing. Write it in ./{WORDS}");
        let parts = ["title", "summary", "goal"].map(said);
        assert_refused(&without, &parts.each_ref().map(String::as_str));
        assert!(!without.out.contains("Cold milk"), "{}", without.out);
        assert!(without.out.contains("cold-milk"), "{}", without.out);
    }
    let play = [
        &LIST[..2],
        &["play", "cold-milk", "--actions", "cold-milk.actions"],
    ]
    .concat();
    let played = drill_in(folder.path(), "", &play);
    assert_eq!(played.status, Some(0), "{}{}", played.out, played.err);
}

#[test]
fn a_message_that_is_misspelt_is_told_where_it_stands() {
    let (from, to) = ("drill-cold-milk-title", "drill-cold-milk-titel");
    for command in [LIST, CHECK] {
        let told = with_words(from, to, &command);
        let place = format!("./{WORDS}:1:1: The message “{from}” is missing.");
        let mark = format!("  | {to} = Cold milk\n  | {}\n", "^".repeat(to.len()));
        assert_refused(
            &told,
            &[&place, &mark, "“drill-cold-milk-titel” looks like it."],
        );
        assert!(!told.err.contains("drill-cold-milk-goal"), "{}", told.err);
    }
    let spanish = [&LIST[..], &["--language", "es"]].concat();
    let told = with_words(from, to, &spanish);
    assert_refused(&told, &["Falta el mensaje", "¿Es un descuido?"]);
}

#[test]
fn a_word_file_that_cannot_be_read_is_told_with_its_place_and_what_was_expected() {
    let cases = [
        (
            "-title = Cold",
            "-title Cold",
            "1:23: “=” has to stand here.",
            "Cold",
        ),
        (
            "A small cabin",
            "A { $small cabin",
            "2:38: “}” has to stand here.",
            "cabin,",
        ),
        ("and one good cord", "} one good cord", "2:", "}"),
        (
            "= stove fan",
            "=",
            "6:1: “name-stove-fan” says nothing.",
            "name-stove-fan",
        ),
    ];
    for (from, to, place, offending) in cases {
        for command in [LIST, CHECK] {
            let told = with_words(from, to, &command);
            let place = format!("./{WORDS}:{place}");
            let mark = format!(" {}\n", "^".repeat(offending.len()));
            assert_refused(&told, &[&place, &mark]);
            assert!(!told.err.contains("is missing"), "{}", told.err);
        }
    }
    let both = with_words("-title = Cold", "-title Cold", &LIST);
    assert_eq!(both.out, "", "nothing is listed");
}
