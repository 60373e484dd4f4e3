//! Lists of actions that say in their heading what has to come of them: each is played with each of its seeds and held to it.
//!
//! What is asserted is the verdict and the exact set of rules found; numbers are held elsewhere.

use std::collections::BTreeSet;
use std::thread;

use outage_drill::evidence::mistakes::mistakes;
use outage_drill::file::{Heading, Library, Source, read_heading};
use outage_drill::scenario::variation;
use outage_drill::shipped;

use crate::playing::play_text;
use crate::terminal::drill;

/// Every list that has a heading, by its name.
fn headed() -> Vec<(String, Heading, &'static str)> {
    let lists = shipped::LISTS.iter().filter_map(|(path, text)| {
        let heading = read_heading(Source { file: path, text }).unwrap_or_else(|f| panic!("{f:?}"));
        let name = path.rsplit('/').next().unwrap_or(path);
        heading.map(|h| (name.trim_end_matches(".actions").to_owned(), h, *text))
    });
    lists.collect()
}

/// What a list gives otherwise than its heading says; one line each.
fn wrong(library: &Library, name: &str, heading: &Heading, text: &str) -> Vec<String> {
    let scenarios = match heading.scenarios(library) {
        Ok(scenarios) => scenarios,
        Err(other) => return vec![format!("{name}: there is no drill or variation {other}")],
    };
    let wanted: BTreeSet<(String, bool)> = heading.finds.iter().cloned().collect();
    let mut wrong = Vec::new();
    let all = scenarios
        .iter()
        .flat_map(|s| heading.seeds.iter().map(move |seed| (s, seed)));
    for (scenario, seed) in all {
        let name = format!("{name}, {}", variation::name(scenario));
        let played = play_text(scenario, *seed, text);
        let found: BTreeSet<(String, bool)> = played
            .found()
            .into_iter()
            .map(|(rule, breach)| (format!("{rule:?}"), breach))
            .collect();
        if found != wanted {
            wrong.push(format!(
                "{name}, seed {seed}: finds {found:?} and not {wanted:?}"
            ));
        }
        if played.verdict.passed != heading.passes {
            let passed = played.verdict.passed;
            wrong.push(format!("{name}, seed {seed}: passed is {passed}"));
        }
    }
    wrong
}

#[test]
fn every_list_gives_what_its_heading_says() {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    let lists = headed();
    let (even, odd): (Vec<_>, Vec<_>) = lists.iter().enumerate().partition(|(i, _)| i % 2 == 0);
    let play = |part: Vec<(usize, &(String, Heading, &'static str))>| -> Vec<String> {
        let wrong = part
            .into_iter()
            .flat_map(|(_, (name, heading, text))| wrong(&library, name, heading, text));
        wrong.collect()
    };
    let wrong = thread::scope(|scope| {
        let other = scope.spawn(|| play(odd));
        let mut wrong = play(even);
        wrong.extend(other.join().unwrap());
        wrong
    });
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn every_list_that_puts_a_mistake_right_is_there_and_for_the_same_drill() {
    let lists = headed();
    for (name, heading, _) in &lists {
        for other in heading.recovers.iter().chain(&heading.rewinds) {
            let found = lists.iter().find(|(n, _, _)| n == other);
            let (_, found, _) = found.unwrap_or_else(|| panic!("{name}: there is no list {other}"));
            assert_eq!(found.drill, heading.drill, "{name}");
            assert!(
                heading.rewinds.is_none() || found.passes,
                "{name}: {other} has to pass"
            );
        }
    }
}

#[test]
fn every_list_has_a_heading_or_is_played_by_some_test() {
    let tests = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/core");
    let texts = std::fs::read_dir(tests).unwrap().filter_map(|entry| {
        let path = entry.unwrap().path();
        let rust = path.extension().is_some_and(|e| e == "rs");
        rust.then(|| std::fs::read_to_string(path).unwrap())
    });
    let own: String = texts.collect();
    let headed = headed();
    for (path, _) in shipped::LISTS {
        let name = path
            .rsplit('/')
            .next()
            .unwrap_or(path)
            .trim_end_matches(".actions");
        let played =
            headed.iter().any(|(n, _, _)| n == name) || own.contains(&format!("\"{name}\""));
        assert!(played, "{name} has no heading and is played by no test");
    }
}

#[test]
fn all_forty_six_mistakes_are_made_found_and_put_right_as_the_kept_table_says() {
    let printed = drill(&["--language", "en", "evidence", "mistakes"]);
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/scenarios/MISTAKES.md");
    let kept = std::fs::read_to_string(path).unwrap();
    let rows = |text: &str| -> Vec<String> {
        let rows = text.lines().filter(|l| l.starts_with('|'));
        rows.map(str::to_owned).collect()
    };
    assert_eq!(rows(&printed.out), rows(&kept));
    let all = mistakes().unwrap();
    let not_held: Vec<&str> = all.iter().filter(|m| !m.holds()).map(|m| m.name).collect();
    assert_eq!((all.len(), not_held), (46, Vec::new()));
}

#[test]
fn every_drill_has_a_list_that_passes_and_one_that_fails_and_there_are_fifty_of_them() {
    let (library, _) = Library::shipped();
    let lists = headed();
    for scenario in &library.scenarios {
        for passes in [true, false] {
            let own = |h: &Heading| h.drill == scenario.name && h.passes == passes;
            let found = lists.iter().any(|(_, h, _)| own(h));
            assert!(found, "{}: no list that passes: {passes}", scenario.name);
        }
    }
    let sites: BTreeSet<&str> = library
        .scenarios
        .iter()
        .map(|s| s.site.name.as_str())
        .collect();
    let lines = library
        .scenarios
        .iter()
        .filter(|s| s.site.line_work.is_some());
    let lines: BTreeSet<&str> = lines.map(|s| s.site.name.as_str()).collect();
    assert!(library.scenarios.len() >= 50, "{}", library.scenarios.len());
    assert!(
        sites.len() - lines.len() >= 16 && lines.len() == 2,
        "{sites:?}"
    );
}
