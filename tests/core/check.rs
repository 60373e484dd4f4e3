//! `check` as a command: its figures, what it keeps, and the ways it writes, which play to the breach that they show.

use std::fs;

use outage_drill::marking::Rule;
use serde_json::Value;

use crate::playing::{play_text, shipped};
use crate::terminal::drill;

/// The document of a check of the shipped drills as they are written.
fn document(arguments: &[&str]) -> Value {
    let asked = [&["check", "--json", "--as-written"], arguments].concat();
    let answered = drill(&asked);
    assert_eq!(answered.status, Some(0), "{}", answered.err);
    serde_json::from_str(&answered.out).unwrap()
}

/// A document without the times that it tells.
fn timeless(mut document: Value) -> Value {
    for drill in document["drills"].as_array_mut().unwrap() {
        drill["proof"]["seconds"] = Value::Null;
    }
    document
}

#[test]
fn what_is_proved_and_in_which_order_does_not_hang_on_the_threads() {
    let one = timeless(document(&["--threads", "1"]));
    let three = timeless(document(&["--threads", "3"]));
    assert_eq!(one, three);
}

#[test]
fn a_proof_that_is_kept_is_told_as_kept_and_says_the_same() {
    let folder = tempfile::tempdir().unwrap();
    let cache = folder.path().to_str().unwrap();
    let (first, second) = (document(&["--cache", cache]), document(&["--cache", cache]));
    let pairs = first["drills"].as_array().unwrap().iter();
    for (new, kept) in pairs.zip(second["drills"].as_array().unwrap()) {
        assert_eq!((&new["kept"], &kept["kept"]), (&false.into(), &true.into()));
        assert_eq!(new["proof"]["properties"], kept["proof"]["properties"]);
        assert_eq!(new["proof"]["states"], kept["proof"]["states"]);
    }
}

#[test]
fn the_ways_that_are_written_play_to_the_breach_that_they_show() {
    let folder = tempfile::tempdir().unwrap();
    let ways = folder.path().join("ways");
    document(&["--counterexamples", ways.to_str().unwrap()]);
    let mut n_played = 0;
    for entry in fs::read_dir(&ways).unwrap() {
        let path = entry.unwrap().path();
        let name = path.file_name().unwrap().to_str().unwrap().to_owned();
        let (drill, property) = name.split_once('.').unwrap();
        assert_eq!(property, "by-construction.actions", "{name}");
        let played = play_text(&shipped(drill), 1, &fs::read_to_string(&path).unwrap());
        let found = played.found();
        assert!(found.contains(&(Rule::LineFed, true)), "{name}: {found:?}");
        assert!(!played.verdict.passed, "{name}");
        n_played += 1;
    }
    assert!(n_played >= 2, "only {n_played} drills mean not to be safe");
}
