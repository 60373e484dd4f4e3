//! The guide for authors, held to itself: its own blocks are put into a folder, checked and played to a pass.

use std::fs;
use std::path::Path;

use crate::terminal::drill_in;

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
fn the_guide_s_own_drill_is_sound_and_its_list_of_actions_passes() {
    let folder = tempfile::tempdir().unwrap();
    write(folder.path());
    assert_eq!(files().len(), 4);
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

#[test]
fn a_folder_s_words_are_spoken_and_a_drill_without_words_goes_by_its_name() {
    let folder = tempfile::tempdir().unwrap();
    write(folder.path());
    let list = ["--scenarios", ".", "list"];
    let with = drill_in(folder.path(), "", &list);
    assert!(with.out.contains("Cold milk"), "{}", with.out);
    fs::remove_dir_all(folder.path().join("words")).unwrap();
    let without = drill_in(folder.path(), "", &list);
    assert_eq!(without.status, Some(0), "{}", without.err);
    assert!(!without.out.contains("Cold milk"));
    assert!(without.out.contains("cold-milk"));
}
