//! `list` as a command: the catalog by track, for a reader and as data.

use serde_json::Value;

use crate::terminal::{assert_refused, drill};

/// The drills that `list --json` tells, with these arguments besides.
fn listed(arguments: &[&str]) -> Vec<Value> {
    let answered = drill(&[&["list", "--json"], arguments].concat());
    assert_eq!(answered.status, Some(0), "{}", answered.err);
    serde_json::from_str(&answered.out).unwrap()
}

#[test]
fn each_track_lists_its_own_drills_and_only_those() {
    let all = listed(&[]);
    let mut n_told = 0;
    for track in ["home", "class", "apprentice"] {
        let own = listed(&["--track", track]);
        let of = |d: &&Value| d["tracks"].as_array().unwrap().contains(&track.into());
        assert!(own.iter().eq(all.iter().filter(of)), "{track}");
        let told = drill(&["list", "--track", track]);
        assert_eq!(told.status, Some(0), "{}", told.err);
        for card in &all {
            let line = format!("\n  {}\n", card["name"].as_str().unwrap());
            assert_eq!(
                told.out.contains(&line),
                own.contains(card),
                "{track}: {line}"
            );
        }
        n_told += own.len();
    }
    let of_all: usize = all
        .iter()
        .map(|d| d["tracks"].as_array().unwrap().len())
        .sum();
    assert!(
        n_told == of_all && n_told > all.len(),
        "{n_told} of {of_all}"
    );
}

#[test]
fn a_drill_is_listed_with_its_level_way_and_directions_in_both_languages() {
    let said = [
        (
            "en",
            [
                "Drills. At home:",
                "Over to your own source and back.",
                "A generator breaker",
            ],
        ),
        (
            "es",
            [
                "Simulacros. En casa:",
                "De la red a su propia fuente y de",
                "Un interruptor del",
            ],
        ),
    ];
    for (language, words) in said {
        let answered = drill(&["list", "--language", language]);
        for word in words {
            assert!(answered.out.contains(word), "{word}: {}", answered.out);
        }
    }
    let all = listed(&[]);
    let first = all.iter().find(|d| d["name"] == "there-and-back").unwrap();
    let wanted = serde_json::json!({
        "name": "there-and-back", "title": "There and back", "site": "two-gables",
        "level": 2, "tracks": ["class", "apprentice", "home"], "way": "interlock",
        "directions": ["out", "back"],
        "teaches": ["isolate", "choose-loads", "run-engine", "go-back"],
        "variations": first["variations"],
    });
    assert_eq!(first, &wanted);
    let variations = first["variations"].as_array().unwrap();
    assert!(
        variations.contains(&"slide-loose+full-pit".into()),
        "{variations:?}"
    );
    for card in &all {
        assert!(!card["teaches"].as_array().unwrap().is_empty(), "{card}");
        assert_eq!(card["variations"][0], "as-written", "{card}");
        assert!((1..=5).contains(&card["level"].as_u64().unwrap()), "{card}");
    }
}

#[test]
fn a_track_that_is_not_there_is_refused_and_the_three_are_named() {
    let track = ["list", "--track", "hoem"];
    assert_refused(&drill(&track), &["“hoem”", "home, class, apprentice"]);
    let spanish = drill(&[&track[..], &["--language", "es", "--json"]].concat());
    assert_refused(
        &spanish,
        &["“hoem”", "Use uno de estos: home, class, apprentice"],
    );
}
