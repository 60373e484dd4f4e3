//! Drills that are wrong on purpose, in `tests/wrong`: the check has to catch each, for the reason that its heading states and for no other.
//!
//! A heading says `// caught: goes-on safe-way`, or `// caught: +variant safe-way` where only a variant is wrong and the drill as written is sound.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use outage_drill::file::Library;
use outage_drill::marking::Rule;
use serde_json::Value;

use crate::playing::play_text;
use crate::terminal::drill;

/// Reasons by the name of the drill or variant that they are expected of.
type Reasons = BTreeMap<String, BTreeSet<String>>;

/// What the headings expect.
fn expected() -> Reasons {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/wrong/drills");
    let mut expected = Reasons::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let name = path.file_stem().unwrap().to_str().unwrap().to_owned();
        let text = fs::read_to_string(&path).unwrap();
        let caught = text.lines().find_map(|l| l.strip_prefix("// caught: "));
        let mut words = caught
            .unwrap_or_else(|| panic!("{name} has no reason"))
            .split(' ')
            .peekable();
        let variant = words.next_if(|w| w.starts_with('+')).unwrap_or_default();
        let reasons = words.map(str::to_owned).collect();
        expected.insert(format!("{name}{variant}"), reasons);
    }
    expected
}

/// What is found wrong of each drill and variant: properties that don't hold, and what is broken of its proof.
fn found(document: &Value) -> Reasons {
    let mut found = Reasons::new();
    for drill in document["drills"].as_array().unwrap() {
        let held = drill["properties"].as_array().unwrap().iter();
        let broken = held.filter(|p| p["holds"] == false);
        let proved = drill["proof"]["properties"].as_array().unwrap().iter();
        let unsound = proved.filter(|p| p["standing"] == "broken");
        let ids = broken.chain(unsound).map(|p| p["id"].as_str().unwrap());
        let ids: BTreeSet<String> = ids.map(str::to_owned).collect();
        if !ids.is_empty() {
            found.insert(drill["name"].as_str().unwrap().to_owned(), ids);
        }
    }
    found
}

#[test]
fn every_wrong_drill_is_caught_for_its_reason_and_its_way_shows_it() {
    let folder = tempfile::tempdir().unwrap();
    let ways = folder.path().to_str().unwrap();
    let answered = drill(&["check", "tests/wrong", "--json", "--counterexamples", ways]);
    assert_eq!(answered.status, Some(1), "{}", answered.err);
    let (expected, found) = (
        expected(),
        found(&serde_json::from_str(&answered.out).unwrap()),
    );
    assert!(expected.len() >= 25, "{}", expected.len());
    println!("{:<44} caught", "wrong drill");
    for (name, reasons) in &found {
        println!("{name:<44} {reasons:?}");
    }
    assert_eq!(found, expected);
    let (library, faults) = Library::load(Path::new(concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/tests/wrong"
    )));
    assert!(faults.is_empty(), "{faults:?}");
    let mut n_played = 0;
    for entry in fs::read_dir(folder.path()).unwrap() {
        let path = entry.unwrap().path();
        let file = path.file_name().unwrap().to_str().unwrap().to_owned();
        let (name, property) = file.split_once('.').unwrap();
        let Some(scenario) = library.scenario(name) else {
            continue;
        };
        let played = play_text(scenario, 1, &fs::read_to_string(&path).unwrap());
        assert!(!played.verdict.passed, "{file}");
        if property == "by-construction.actions" {
            assert!(played.found().contains(&(Rule::LineFed, true)), "{file}");
        }
        n_played += 1;
    }
    assert!(n_played >= 3, "only {n_played} ways were played");
}
