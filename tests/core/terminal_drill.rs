//! The drill as text, played as a learner plays it: the real binary, from a file of actions and line by line.
//!
//! What the model computes is held elsewhere; here it is held that it reaches the learner, in each language, with the right exit status.

use std::fs;
use std::path::Path;

use crate::terminal::{Answered, assert_refused, drill, drill_in};

/// The deadly way: the generator feeds the panel while the main breaker is left on and a crew has the line in hand.
const MAIN_LEFT_ON: &str = "\
wait 10m
set generator-place yard
set inlet-cord-lay flat
set inlet-cord-house-end inlet
set inlet-cord-generator-end generator
set engine running
wait 70s
set generator-output on
set generator-breaker on
";

/// A folder for one test, with these files in it.
fn folder(files: &[(&str, &str)]) -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    for (name, text) in files {
        let path = folder.path().join(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, text).unwrap();
    }
    folder
}

/// Plays a list of actions from a file.
fn play(drill: &str, actions: &str, more: &[&str]) -> Answered {
    let folder = folder(&[("a.actions", actions)]);
    let mut arguments = vec!["play", drill, "--actions", "a.actions"];
    arguments.extend(more);
    drill_in(folder.path(), "", &arguments)
}

#[track_caller]
fn assert_says(text: &str, words: &[&str]) {
    for word in words {
        assert!(text.contains(word), "no {word:?} in: {text}");
    }
}

/// The voltages that a text names, in volts.
fn volts_in(text: &str) -> Vec<f64> {
    text.split("\u{a0}V")
        .filter_map(|before| before.rsplit([' ', '\n', '(']).next())
        .filter_map(|number| number.replace([',', '.'], "").parse().ok())
        .collect()
}

#[test]
fn the_main_breaker_left_on_is_explained_in_both_languages_with_volts_and_amps_and_status_1() {
    for (language, words) in [
        (
            "en",
            [
                "Not passed",
                "The path of the energy",
                "Why it matters",
                "Next time",
            ],
        ),
        (
            "es",
            [
                "Todavía no",
                "El camino de la energía",
                "Por qué importa",
                "La próxima vez",
            ],
        ),
    ] {
        let answered = play("no-slide", MAIN_LEFT_ON, &["--language", language]);
        assert_eq!(answered.status, Some(1), "{}", answered.err);
        assert_says(&answered.out, &words);
        let told = |what: &str| answered.out.lines().find(|l| l.contains(what)).unwrap();
        let (line, crew) = match language {
            "en" => ("fed the street", "Across the body"),
            _ => ("alimentó la calle", "por el cuerpo"),
        };
        let on_the_line = volts_in(told(line));
        assert!(
            on_the_line.iter().any(|v| (1000.0..8000.0).contains(v)),
            "{on_the_line:?}"
        );
        assert!(told(crew).contains("\u{a0}A"), "{}", told(crew));
    }
}

#[test]
fn the_interlock_refuses_the_same_attempt_and_the_refusal_is_recorded_in_the_run() {
    let folder = folder(&[("a.actions", MAIN_LEFT_ON)]);
    let arguments = [
        "play",
        "there-and-back",
        "--actions",
        "a.actions",
        "--save",
        "a.run",
    ];
    let played = drill_in(folder.path(), "", &arguments);
    assert_eq!(played.status, Some(1), "{}", played.err);
    assert_says(
        &played.out,
        &[
            "Refused: Generator breaker: on.",
            "The slide of the interlock",
            "Isolation: met",
        ],
    );
    let run = fs::read_to_string(folder.path().join("a.run")).unwrap();
    assert_says(&run, &["set generator-breaker on"]);
    let marked = drill_in(folder.path(), "", &["mark", "a.run"]);
    assert_eq!(marked.status, Some(1), "{}", marked.err);
    let verdict = |text: &str| {
        text[text.find("Not passed").unwrap()..].replace("\nThe run is saved in a.run.\n", "")
    };
    assert_eq!(verdict(&played.out).trim(), verdict(&marked.out).trim());
}

#[test]
fn a_drill_typed_line_by_line_comes_to_the_same_verdict_as_its_file() {
    let typed = format!("help\nstatus\nat panel\nlog\n{MAIN_LEFT_ON}finish\n");
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    let by_hand = drill_in(here, &typed, &["play", "no-slide"]);
    assert_eq!(by_hand.status, Some(1), "{}", by_hand.err);
    let file = play("no-slide", MAIN_LEFT_ON, &[]);
    let verdict = |text: &str| text[text.find("Not passed").unwrap()..].to_owned();
    // By hand the verdict comes last, after what was found.
    assert!(verdict(&file.out).starts_with(&verdict(&by_hand.out)));
    let found = &verdict(&file.out)[verdict(&by_hand.out).len()..];
    assert!(found.lines().count() > 20);
    assert_says(&by_hand.out, &[found.trim()]);
    // In coached practice the way of the energy is told as it happens, before the debrief.
    let before = &by_hand.out[..by_hand.out.find("1. What happened").unwrap()];
    assert_says(
        before,
        &[
            "Goal:",
            "Before you start",
            "  1. The generator makes",
            "Now: Turn the main breaker off at once",
        ],
    );
    // What to do comes before how it came about.
    let at = |part: &str| before.find(part).unwrap();
    assert!(at("Now: Turn the output breaker") < at("  1. The generator makes"));
    let help = "set CONTROL POSITION";
    assert_says(before, &[help, "At Panel:", "0:00> at panel"]);
}

#[test]
fn a_tested_learner_is_told_nothing_about_the_line_until_the_end() {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    let typed = format!("look panel\n{MAIN_LEFT_ON}status\nfinish\n");
    let answered = drill_in(here, &typed, &["play", "no-slide", "--assessed"]);
    let (before, after) = answered.out.split_once("1. What happened").unwrap();
    assert!(
        !before.contains("The path of the energy") && !before.contains("line worker has"),
        "{before}"
    );
    assert_says(before, &["not tested yet: ", "  on: Main breaker; "]);
    assert_says(after, &["The path of the energy"]);
}

#[test]
fn mark_gives_one_json_document_and_nothing_else() {
    let folder = folder(&[
        ("a.actions", MAIN_LEFT_ON),
        ("torn.run", "outage-drill run 1\n"),
    ]);
    let arguments = [
        "play",
        "no-slide",
        "--actions",
        "a.actions",
        "--save",
        "a.run",
    ];
    drill_in(folder.path(), "", &arguments);
    let answered = drill_in(folder.path(), "", &["mark", "a.run", "torn.run", "--json"]);
    assert_eq!(answered.status, Some(2));
    let document: serde_json::Value = serde_json::from_str(&answered.out).unwrap();
    assert_eq!(document["version"], 1);
    assert_eq!(document["runs"][0]["passed"], false);
    assert_eq!(document["faults"][0]["file"], "torn.run");
    let rules: Vec<&str> = document["runs"][0]["findings"]
        .as_array()
        .unwrap()
        .iter()
        .map(|f| f["rule"].as_str().unwrap())
        .collect();
    assert!(
        rules.contains(&"line-fed") && rules.contains(&"shock"),
        "{rules:?}"
    );
}

#[test]
fn check_says_what_holds_of_the_shipped_drills_and_what_it_does_not_cover() {
    let answered = drill(&["check", "--as-written"]);
    assert_eq!(answered.status, Some(0), "{}", answered.err);
    assert_says(
        &answered.out,
        &[
            "there-and-back:",
            "no-slide:",
            "Doing nothing is not a pass",
            "Not covered",
            "safe way",
        ],
    );
    let answered = drill(&["check", "scenarios", "--json", "--as-written"]);
    assert_eq!(answered.status, Some(0), "{}", answered.err);
    let document: serde_json::Value = serde_json::from_str(&answered.out).unwrap();
    let lessons = document["lessons"].as_array().unwrap();
    let evening = lessons.iter().find(|l| l["name"] == "two-hours").unwrap();
    assert_eq!(lessons.len(), 3);
    assert_eq!(
        (&evening["audience"], &evening["minutes"]),
        (&"class".into(), &120.into())
    );
    let drills = evening["drills"].as_array().unwrap();
    assert!(drills.contains(&"garage-door-open".into()), "{evening}");
    for drill in document["drills"].as_array().unwrap() {
        let held = drill["properties"].as_array().unwrap();
        assert_eq!(held.len(), 5, "{drill}");
        assert!(held.iter().all(|p| p["holds"] == true), "{drill}");
        assert_eq!(
            drill["without_words"].as_array().unwrap().len(),
            0,
            "{drill}"
        );
    }
}

#[test]
fn a_drill_that_passes_when_nothing_is_done_is_unsound_with_status_1() {
    let drill = "(version: 1, name: \"idle\", level: 1, tracks: [Class], teaches: [ShowSource], site: \"two-gables\", interlock: Fitted, cords: [], starts_at: (18, 40), \
        ends_after_minutes: 5, start: {}, story: [], goal: (powered: [], within_minutes: 4, at_end: {}), share: 0.5)";
    let site = fs::read_to_string(
        Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios/sites/two-gables.ron"),
    )
    .unwrap();
    let folder = folder(&[
        ("s/sites/two-gables.ron", &site),
        ("s/drills/idle.ron", drill),
        (
            "s/words/en/idle.ftl",
            "drill-idle-title = Idle\ndrill-idle-summary = Rest.\ndrill-idle-goal = Rest.\n",
        ),
    ]);
    let answered = drill_in(folder.path(), "", &["check", "s"]);
    assert_eq!(answered.status, Some(1), "{}{}", answered.out, answered.err);
    assert_says(&answered.out, &["Doing nothing is a pass"]);
    // It has no note, and needs none.
    let told = drill_in(folder.path(), "", &["check", "s", "--json"]);
    let document: serde_json::Value = serde_json::from_str(&told.out).unwrap();
    assert_eq!(
        document["drills"][0]["without_words"],
        serde_json::json!([])
    );
}

#[test]
fn an_empty_folder_holds_no_scenario() {
    let folder = folder(&[("s/sites/readme.txt", ""), ("s/drills/readme.txt", "")]);
    assert_refused(
        &drill_in(folder.path(), "", &["check", "s"]),
        &["s: ", "“sites” and “drills”"],
    );
}

#[test]
fn actions_and_list_name_everything_that_can_be_typed() {
    let answered = drill(&["actions", "no-slide"]);
    assert_eq!(answered.status, Some(0), "{}", answered.err);
    assert_says(
        &answered.out,
        &[
            "set CONTROL POSITION",
            "main: Main breaker, 200\u{a0}A. Positions: off, on.",
            "two-plug-cord-house-end",
            "look street",
            "call utility",
            "refuel",
            "outlet-range",
        ],
    );
    assert_says(
        &drill(&["list"]).out,
        &["there-and-back", "no-slide", "Before you start"],
    );
}

#[test]
fn a_screen_is_refused_where_there_is_no_window_or_no_such_screen() {
    let folder = folder(&[]);
    let answered = drill_in(
        folder.path(),
        "",
        &["picture", "no-such-screen", "--out", "pictures"],
    );
    assert_eq!(answered.status, Some(2), "{}", answered.err);
    assert!(!answered.err.is_empty());
}

#[test]
fn lines_are_plain_text() {
    let typed = format!("status\nat panel\n{MAIN_LEFT_ON}");
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    for language in ["en", "es"] {
        let answered = drill_in(here, &typed, &["play", "no-slide", "--language", language]);
        let odd = |c: &char| {
            c.is_control() && *c != '\n'
                || ('\u{2000}'..='\u{200f}').contains(c)
                || ('\u{2028}'..='\u{202e}').contains(c)
                || ('\u{2060}'..='\u{206f}').contains(c)
                || ('\u{2500}'..='\u{259f}').contains(c)
        };
        let found: Vec<char> = answered.out.chars().filter(odd).collect();
        assert!(found.is_empty(), "{language}: {found:?}");
        assert!(
            !answered.out.contains('[') && !answered.out.contains('{'),
            "{}",
            answered.out
        );
    }
}

#[test]
fn a_typed_drill_asks_before_it_tells_and_a_list_never_stops() {
    let typed = "look street\npredict many sure 70\npredict both sure 70\nskip\nlook street\nskip\nfinish\n";
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    let by_hand = drill_in(here, typed, &["play", "one-plug-two-ends"]);
    let held = "First the question";
    assert_says(
        &by_hand.err,
        &[held, "not one of the choices", "Nothing is asked"],
    );
    assert_eq!(by_hand.err.matches(held).count(), 1, "{}", by_hand.err);
    let told = [
        "Which of the two are live now",
        "predict CHOICE sure 70",
        "You said both and were 70% sure. That is not so.",
        "How it comes about:",
        "predict NUMBER sure 70",
        "What you foresaw.",
        "You were right in 0 of 1 predictions",
        "Your Brier score is 0.49",
    ];
    assert_says(&by_hand.out, &told);
    let room = "counts 1 2\ncounts x\nfinish\n";
    let counted = drill_in(
        here,
        room,
        &["play", "one-plug-two-ends", "--language", "es"],
    );
    assert_says(
        &counted.out,
        &["esto es lo correcto", "##############", "acertaron 2 de 3"],
    );
    for test in [
        drill_in(here, typed, &["play", "one-plug-two-ends", "--assessed"]),
        play("one-plug-two-ends", "look street\n", &[]),
    ] {
        assert!(!test.out.contains("Which of the two"), "{}", test.out);
        assert!(!test.out.contains("foresaw"), "{}", test.out);
    }
}

#[test]
fn guided_practice_tells_the_next_step_and_a_test_refuses_to() {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    let play = |typed: &str, how: &[&str]| {
        let ask: Vec<&str> = ["play", "there-and-back"]
            .iter()
            .chain(how)
            .copied()
            .collect();
        drill_in(here, typed, &ask)
    };
    let guided = play("wait 1m\nfinish\n", &["--guided"]);
    let told = ["Next: Wait", "Type: wait", "Type: set ", "was shown to you"];
    assert_says(&guided.out, &told);
    let asked = play("hint\nfinish\n", &[]);
    assert_says(&asked.out, &["Next: Wait", "was shown to you once"]);
    let test = play("hint\nfinish\n", &["--assessed"]);
    assert_says(&test.err, &["In a test there are no hints"]);
    assert!(!test.out.contains("Next:"), "{}", test.out);
}
