//! The table of what the training is held to: complete, and every test, file and command in it is there.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use outage_drill::words::{OFFERED, word_files};

use crate::terminal::drill;

const TABLE: &str = include_str!("../../scenarios/TRAINING.md");
const STANDINGS: [&str; 4] = ["met", "in part", "not yet", "by people"];

/// The rows: number, standing, and what shows it.
fn rows() -> Vec<(&'static str, &'static str, &'static str)> {
    let lines = TABLE.lines().filter(|l| l.starts_with("| Q"));
    let cells = lines.map(|l| {
        let cells: Vec<&str> = l.trim_matches('|').split(" | ").map(str::trim).collect();
        let [row, _, standing, shown] = cells[..] else {
            panic!("{l}");
        };
        (row, standing, shown)
    });
    cells.collect()
}

/// The names in backticks of a text.
fn names(text: &str) -> Vec<&str> {
    text.split('`').skip(1).step_by(2).collect()
}

/// The names of all tests of this package.
fn tests() -> BTreeSet<String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut folders = vec![root.join("tests/core"), root.join("src")];
    folders.push(root.join("tests/window"));
    let mut found = BTreeSet::new();
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|e| e == "rs") {
                let text = fs::read_to_string(path).unwrap();
                let functions = text.split("#[test]").skip(1);
                let name = |after: &str| {
                    after
                        .split("fn ")
                        .nth(1)?
                        .split('(')
                        .next()
                        .map(str::to_owned)
                };
                found.extend(functions.filter_map(name));
            }
        }
    }
    found
}

#[test]
fn the_table_has_forty_four_rows_each_with_a_standing() {
    let rows = rows();
    let numbers: Vec<String> = (1..=44).map(|n| format!("Q{n:02}")).collect();
    assert!(
        rows.iter()
            .map(|r| r.0)
            .eq(numbers.iter().map(String::as_str))
    );
    for (row, standing, shown) in rows {
        assert!(STANDINGS.contains(&standing), "{row}: {standing}");
        assert!(shown.ends_with('.'), "{row}: {shown}");
        assert!(
            standing != "met" || !names(shown).is_empty(),
            "{row}: nothing shows it"
        );
    }
}

#[test]
fn each_row_names_only_what_is_there() {
    let (tests, help) = (tests(), drill(&["--help"]).out);
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    for (row, _, shown) in rows() {
        for name in names(shown) {
            let there = if let Some(command) = name.strip_prefix("outage-drill ") {
                let command = command.split(' ').next().unwrap();
                help.contains(&format!("\n  {command} "))
            } else if name.contains(['/', '.']) {
                root.join(name).exists()
            } else {
                name.starts_with("--") || tests.contains(name)
            };
            assert!(there, "{row}: `{name}` isn't there");
        }
    }
}

#[test]
fn no_signal_word_stands_in_running_text() {
    const WORDS: [&str; 9] = [
        "DANGER",
        "WARNING",
        "CAUTION",
        "NOTICE",
        "PELIGRO",
        "ADVERTENCIA",
        "ATENCIÓN",
        "PRECAUCIÓN",
        "AVISO",
    ];
    for file in OFFERED.iter().flat_map(|l| word_files(l.tag)) {
        let found = WORDS.iter().find(|w| file.text.contains(*w));
        assert_eq!(found, None, "{}", file.name);
    }
}
