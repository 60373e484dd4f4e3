//! Many saved runs marked at once: a row for each learner, whatever else lies in the folder.

use std::fs;
use std::path::Path;

use crate::terminal::{Answered, drill_in};

/// Lists that are played, and whether they pass.
const LISTS: [(&str, &str, bool); 2] = [
    ("there-and-back", "slide-branches-first", true),
    ("open-the-box", "open-the-box-live-lugs", false),
];

/// Saves the run of a list, and gives its text.
fn save(folder: &Path, (drill, list, passes): (&str, &str, bool), name: &str) -> String {
    let list = format!("{}/tests/drills/{list}.actions", env!("CARGO_MANIFEST_DIR"));
    let play = ["play", drill, "--actions", &list, "--save", name];
    let answered = drill_in(folder, "", &play);
    assert_eq!(
        answered.status,
        Some(i32::from(!passes)),
        "{}",
        answered.err
    );
    fs::read_to_string(folder.join(name)).unwrap()
}

/// A folder with the runs of two learners.
fn class() -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    fs::create_dir(folder.path().join("class")).unwrap();
    save(folder.path(), LISTS[0], "class/ana.run");
    save(folder.path(), LISTS[1], "class/ben.run");
    folder
}

/// The cells of a sheet, the headings first.
fn sheet(path: &Path) -> Vec<Vec<String>> {
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .from_path(path)
        .unwrap();
    let rows = reader.records().map(|row| {
        let row = row.unwrap();
        row.iter().map(str::to_owned).collect()
    });
    rows.collect()
}

fn roster(folder: &Path, language: &str) -> Answered {
    let mark = ["mark", "class", "--roster", "class/sheet.csv"];
    drill_in(folder, "", &[&mark[..], &["--language", language]].concat())
}

#[test]
fn a_folder_of_runs_is_marked_with_a_row_for_each_learner() {
    let folder = class();
    let answered = drill_in(folder.path(), "", &["mark", "class"]);
    assert_eq!(answered.status, Some(1), "{}", answered.err);
    let lines: Vec<Vec<&str>> = answered
        .out
        .lines()
        .map(|line| {
            line.split("  ")
                .map(str::trim)
                .filter(|c| !c.is_empty())
                .collect()
        })
        .collect();
    assert_eq!(
        lines[0],
        [
            "Learner", "Drill", "Seed", "Practice", "Date", "Seated", "Seal", "Verdict", "Broken"
        ]
    );
    assert_eq!(
        lines[1],
        [
            "ana",
            "there-and-back",
            "1",
            "not known",
            "not known",
            "not known",
            "as saved",
            "passed"
        ]
    );
    assert_eq!(
        [lines[2][0], lines[2][1], lines[2][7]],
        ["ben", "open-the-box", "not passed"]
    );
    assert!(lines[2][8].contains("live-lugs"), "{:?}", lines[2]);
    assert!(
        answered.out.contains("2 runs were marked: 1 passed."),
        "{}",
        answered.out
    );
    fs::remove_file(folder.path().join("class/ben.run")).unwrap();
    let answered = drill_in(folder.path(), "", &["mark", "class"]);
    assert_eq!(answered.status, Some(0), "{}", answered.err);
}

#[test]
fn what_is_no_run_is_told_with_its_reason_and_stops_nothing() {
    let folder = class();
    let room = folder.path().join("class");
    let ana = fs::read_to_string(room.join("ana.run")).unwrap();
    let end = ana.rfind("end ").unwrap();
    let digest = ana.find("digest ").unwrap() + 7;
    let faulty = [
        (
            "a-letter.txt",
            "Dear Ana\n".to_owned(),
            "not the head of a run file",
        ),
        ("cut.run", ana[..end].to_owned(), "cut short"),
        (
            "edited.run",
            format!("{}@599:00.000 look street\nend 599:00.000\n", &ana[..end]),
            "changed after it was saved",
        ),
        (
            "older.run",
            format!("{}0000{}", &ana[..digest], &ana[digest + 4..]),
            "has changed since",
        ),
    ];
    for (name, text, _) in &faulty {
        fs::write(room.join(name), text).unwrap();
    }
    fs::write(room.join(".hidden"), "no run").unwrap();
    for _ in 0..2 {
        // The second time the sheet lies there too, and is no run of a learner's.
        let answered = roster(folder.path(), "en");
        assert_eq!(answered.status, Some(2), "{}", answered.err);
        assert!(
            answered.out.contains("2 runs were marked: 1 passed."),
            "{}",
            answered.out
        );
        assert!(
            answered.err.contains("4 files could not be marked"),
            "{}",
            answered.err
        );
        let rows = sheet(&room.join("sheet.csv"));
        assert_eq!(rows.len(), 1 + 2 + faulty.len(), "{rows:?}");
        for (name, _, why) in &faulty {
            assert!(
                answered.err.contains(&format!("class/{name}")),
                "{}",
                answered.err
            );
            let stem = name.split('.').next().unwrap();
            let row = rows.iter().find(|row| row[0] == stem).unwrap();
            assert!(row[9].contains(why), "{row:?}");
            assert_eq!(row[7], "", "no verdict: {row:?}");
        }
        let ana = rows.iter().find(|row| row[0] == "ana").unwrap();
        assert_eq!(
            [&ana[1], &ana[7], &ana[8], &ana[9]],
            ["there-and-back", "passed", "", ""]
        );
    }
}

#[test]
fn no_cell_of_the_sheet_is_a_formula() {
    let folder = class();
    let room = folder.path().join("class");
    for name in ["=1+1", "+1", "-1", "@now"] {
        fs::copy(room.join("ana.run"), room.join(format!("{name}.run"))).unwrap();
    }
    roster(folder.path(), "en");
    let rows = sheet(&room.join("sheet.csv"));
    let names: Vec<&str> = rows.iter().map(|row| row[0].as_str()).collect();
    assert_eq!(
        names,
        ["Learner", "'+1", "'-1", "'=1+1", "'@now", "ana", "ben"]
    );
    let first = |cell: &String| cell.chars().next();
    let formula = |cell: &String| first(cell).is_some_and(|c| "=+-@".contains(c));
    assert!(!rows.iter().flatten().any(formula), "{rows:?}");
}

#[test]
fn a_roster_speaks_the_language_and_says_where_it_cannot_be_written() {
    let folder = class();
    let answered = roster(folder.path(), "es");
    assert!(answered.out.contains("no aprobó"), "{}", answered.out);
    assert_eq!(
        sheet(&folder.path().join("class/sheet.csv"))[0][0],
        "Participante"
    );
    let gone = ["mark", "class", "--roster", "gone/sheet.csv"];
    let answered = drill_in(folder.path(), "", &gone);
    assert_eq!(answered.status, Some(2));
    assert!(answered.err.contains("gone/sheet.csv"), "{}", answered.err);
    assert!(
        answered.out.contains("ana"),
        "the table stands: {}",
        answered.out
    );
}

#[test]
fn a_folder_is_told_in_full_as_json() {
    let folder = class();
    let document = |paths: &[&str]| -> serde_json::Value {
        let answered = drill_in(folder.path(), "", &[&["mark"], paths, &["--json"]].concat());
        serde_json::from_str(&answered.out).unwrap()
    };
    let whole = document(&["class"]);
    assert_eq!(whole, document(&["class/ana.run", "class/ben.run"]));
    assert_eq!(whole["runs"].as_array().unwrap().len(), 2);
}

#[test]
fn a_row_says_whether_it_was_a_test_as_the_run_file_does() {
    let folder = tempfile::tempdir().unwrap();
    fs::create_dir(folder.path().join("class")).unwrap();
    for (name, how) in [
        ("class/cy.run", "--assessed"),
        ("class/di.run", "--coached"),
    ] {
        let play = ["play", "there-and-back", how, "--save", name];
        drill_in(folder.path(), "finish\n", &play);
    }
    roster(folder.path(), "en");
    let rows = sheet(&folder.path().join("class/sheet.csv"));
    assert_eq!(rows[1][..4], ["cy", "there-and-back", "1", "test"]);
    assert_eq!(rows[2][..4], ["di", "there-and-back", "1", "coached"]);
    // A spoilt word is told.
    let path = folder.path().join("class/cy.run");
    let text = fs::read_to_string(&path).unwrap();
    fs::write(&path, text.replace("practice assessed", "practice asleep")).unwrap();
    let answered = roster(folder.path(), "en");
    assert!(answered.err.contains("“practice”"), "{}", answered.err);
}

/// Plays the list that passes, with what is said of its learners.
fn signed(folder: &Path, name: &str, said: &[&str]) -> Answered {
    let list = format!(
        "{}/tests/drills/{}.actions",
        env!("CARGO_MANIFEST_DIR"),
        LISTS[0].1
    );
    let play = ["play", LISTS[0].0, "--actions", &list, "--save", name];
    drill_in(folder, "", &[&play[..], said].concat())
}

#[test]
fn a_row_names_who_sat_at_it_how_and_when_or_numbers_in_their_place() {
    let folder = tempfile::tempdir().unwrap();
    let room = folder.path().join("class");
    fs::create_dir(&room).unwrap();
    let turns = [
        "--learner",
        "Zoë",
        "--learner",
        " Ben ",
        "--seated",
        "in-turns",
    ];
    signed(
        folder.path(),
        "class/a.run",
        &[&turns[..], &["--on", "2026-03-01"]].concat(),
    );
    signed(folder.path(), "class/b.run", &["--learner", "Ben"]);
    signed(folder.path(), "class/cy.run", &[]);
    fs::write(room.join("dora.run"), "learner Dora\n").unwrap();
    roster(folder.path(), "en");
    let rows = sheet(&room.join("sheet.csv"));
    let seen = |row: usize| [&rows[row][0], &rows[row][4], &rows[row][5]];
    assert_eq!(seen(1), ["Zoë, Ben", "2026-03-01", "in turns"]);
    assert_eq!(seen(2), ["Ben", "not known", "not known"]);
    assert_eq!(seen(3), ["cy", "not known", "not known"]);
    assert_eq!(seen(4), ["dora", "", ""]);

    let mark = [
        "mark",
        "class",
        "--roster",
        "class/sheet.csv",
        "--without-names",
    ];
    let answered = drill_in(folder.path(), "", &mark);
    assert_eq!(answered.status, Some(2), "{}", answered.err);
    let rows = sheet(&room.join("sheet.csv"));
    let who: Vec<&str> = rows.iter().map(|row| row[0].as_str()).collect();
    assert_eq!(who, ["Learner", "1, 2", "2", "3", "4"]);
    let all = format!("{rows:?}{}{}", answered.out, answered.err).to_lowercase();
    for name in ["zoë", "ben", "cy.", "dora"] {
        assert!(!all.contains(name), "{name} in {all}");
    }
    assert!(all.contains("with names to see why"), "{all}");
}

#[test]
fn a_name_a_seat_or_a_day_that_cannot_be_kept_is_refused_before_the_drill() {
    let folder = tempfile::tempdir().unwrap();
    let long = "a".repeat(61);
    for (said, why) in [
        (&["--learner", " "][..], "name is empty"),
        (&["--learner", "a\nend 0:00"], "cannot be shown on one line"),
        (&["--learner", "a\u{202e}b"], "cannot be shown on one line"),
        (&["--learner", &long], "60 letters at most"),
        (
            &["--learner", "Ana", "--learner", "Ana "],
            "“Ana” is named twice",
        ),
        (
            &["--learner", "a", "--learner", "b", "--seated", "alone"],
            "2 learners are named, and only one sits",
        ),
        (
            &[
                "--learner",
                "a",
                "--learner",
                "b",
                "--learner",
                "c",
                "--seated",
                "in-pairs",
            ],
            "2 at most sit like this",
        ),
        (
            &["--seated", "in-turn"],
            "alone, in-turns, as-a-team, in-pairs",
        ),
        (
            &["--on", "2026-02-30"],
            "“2026-02-30” is no day of the calendar",
        ),
    ] {
        let answered = signed(folder.path(), "a.run", said);
        assert_eq!(answered.status, Some(2), "{said:?}: {}", answered.err);
        assert!(answered.err.contains(why), "{said:?}: {}", answered.err);
        assert_eq!(answered.out, "", "nothing is played");
        assert!(!folder.path().join("a.run").exists());
    }
}

#[test]
fn a_row_tells_whether_the_run_is_as_it_was_saved() {
    let folder = class();
    let room = folder.path().join("class");
    let ana = fs::read_to_string(room.join("ana.run")).unwrap();
    let seal = ana.lines().find(|l| l.starts_with("seal ")).unwrap();
    let eve = ana.replacen("seed 1\n", "seed 1\nlearner Eve\n", 1);
    fs::write(room.join("eve.run"), eve).unwrap();
    fs::write(room.join("fay.run"), ana.replace(&format!("{seal}\n"), "")).unwrap();
    roster(folder.path(), "en");
    let rows = sheet(&room.join("sheet.csv"));
    let seen = |name: &str| {
        let row = rows.iter().find(|row| row[0] == name).unwrap();
        [row[6].clone(), row[7].clone()]
    };
    assert_eq!(seen("ana"), ["as saved", "passed"]);
    assert_eq!(seen("Eve"), ["changed after it was saved", "passed"]);
    assert_eq!(seen("fay"), ["not sealed", "passed"]);
    for (name, told) in [
        ("ana.run", ""),
        ("eve.run", "This run was changed after it was saved"),
        ("fay.run", "This run is not sealed"),
    ] {
        let path = format!("class/{name}");
        let out = drill_in(folder.path(), "", &["mark", &path]).out;
        assert!(out.contains(told), "{out}");
        assert_eq!(out.contains("This run "), !told.is_empty(), "{out}");
    }
}

#[test]
fn a_hand_over_is_told_by_the_clock_and_names_nobody() {
    let folder = class();
    let path = folder.path().join("class/ana.run");
    let text = fs::read_to_string(&path).unwrap();
    let signed = "seed 1\nlearner Ana\nlearner Ben\nseated in-turns\nhanded 12:30 Ben\n";
    fs::write(&path, text.replacen("seed 1\n", signed, 1)).unwrap();
    for (without, who) in [(&[][..], "Ana, Ben"), (&["--without-names"], "1, 2")] {
        let answered = drill_in(folder.path(), "", &[&["mark", "class"], without].concat());
        let row = answered.out.lines().find(|l| l.contains("there-and-back"));
        let row = row.unwrap();
        assert!(row.contains("in turns, handed over at 12:30"), "{row}");
        assert!(row.contains(who), "{row}");
    }
}
