//! The command line, run as a learner runs it: the real binary, its two streams and its exit status.

use std::fs;
use std::io::Write as _;
use std::path::Path;
use std::process::{Command, Stdio};

/// What the binary answered.
pub(crate) struct Answered {
    pub(crate) status: Option<i32>,
    pub(crate) out: String,
    pub(crate) err: String,
}

/// Runs the binary in a folder, with lines typed to it, on a machine without a display that speaks no language of ours.
pub(crate) fn drill_in(folder: &Path, typed: &str, arguments: &[&str]) -> Answered {
    let mut command = Command::new(env!("CARGO_BIN_EXE_outage-drill"));
    command.args(arguments).current_dir(folder);
    for name in [
        "DISPLAY",
        "WAYLAND_DISPLAY",
        "LANGUAGE",
        "LC_ALL",
        "LC_MESSAGES",
    ] {
        command.env_remove(name);
    }
    command.env("LANG", "C");
    let mut child = command
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    // A command that needs no input may have ended before it is typed.
    drop(child.stdin.take().unwrap().write_all(typed.as_bytes()));
    let done = child.wait_with_output().unwrap();
    Answered {
        status: done.status.code(),
        out: String::from_utf8(done.stdout).unwrap(),
        err: String::from_utf8(done.stderr).unwrap(),
    }
}

pub(crate) fn drill(arguments: &[&str]) -> Answered {
    drill_in(Path::new(env!("CARGO_MANIFEST_DIR")), "", arguments)
}

/// Bad input: status 2, nothing said on the first stream, and all of these words on the second.
pub(crate) fn assert_refused(answered: &Answered, words: &[&str]) {
    assert_eq!(
        answered.status,
        Some(2),
        "out: {}\nerr: {}",
        answered.out,
        answered.err
    );
    for word in words {
        assert!(
            answered.err.contains(word),
            "no {word:?} in: {}",
            answered.err
        );
    }
}

#[test]
fn with_no_display_the_bare_command_offers_the_drill_as_text() {
    assert_refused(
        &drill(&[]),
        &["as text", "outage-drill play there-and-back"],
    );
    assert_refused(
        &drill(&["--language", "es"]),
        &["como texto", "outage-drill play there-and-back"],
    );
}

#[test]
fn a_language_that_is_not_there_is_refused_and_the_others_are_named() {
    assert_refused(&drill(&["list", "--language", "xx"]), &["“xx”", "en, es"]);
    assert_refused(
        &drill(&["--language", "not a tag", "list"]),
        &["“not a tag”"],
    );
}

#[test]
fn an_unknown_command_is_a_usage_fault() {
    assert_refused(&drill(&["paly"]), &["paly", "play"]);
    assert_refused(&drill(&["play"]), &["NAME"]);
    assert_refused(
        &drill(&["play", "there-and-back", "--coached", "--assessed"]),
        &["--assessed"],
    );
}

#[test]
fn languages_prints_the_coverage_of_each() {
    let answered = drill(&["languages"]);
    assert_eq!(answered.status, Some(0), "{}", answered.err);
    assert!(
        answered.out.contains("en (English)") && answered.out.contains("es (Español)"),
        "{}",
        answered.out
    );
}

#[test]
fn a_drill_that_is_not_there_is_refused_and_the_others_are_named() {
    for command in [&["play", "no-such"][..], &["actions", "no-such"]] {
        assert_refused(
            &drill(command),
            &["“no-such”", "there-and-back", "no-slide"],
        );
    }
    let spanish = drill(&["play", "no-such", "--language", "es"]);
    assert_refused(&spanish, &["“no-such”", "Use uno de estos"]);
}

#[test]
fn an_action_file_is_refused_whole_with_every_fault_and_its_place() {
    let folder = tempfile::tempdir().unwrap();
    let text = "set main off\nset mian on\nset engine runing\nlook sky\ntest buss\nwait long\nset main off please\n";
    fs::write(folder.path().join("list.actions"), text).unwrap();
    let play = ["play", "there-and-back", "--actions", "list.actions"];
    let english = drill_in(folder.path(), "", &play);
    assert_refused(
        &english,
        &[
            "list.actions:2:5: There is no control named “mian”",
            "Did you mean “main”?",
            "list.actions:3:12: There is no position named “runing”",
            "list.actions:4:6:",
            "list.actions:5:6:",
            "list.actions:6:6:",
            "list.actions:7:14:",
            "6 faults",
        ],
    );
    assert_eq!(english.out, "", "nothing is played");
    let spanish = drill_in(
        folder.path(),
        "",
        &[&play[..], &["--language", "es"]].concat(),
    );
    assert_refused(
        &spanish,
        &[
            "list.actions:2:5: No existe “mian” (mando).",
            "¿Quiso decir “main”?",
            "6 fallas",
        ],
    );
}

#[test]
fn a_file_that_cannot_be_read_is_named() {
    let folder = tempfile::tempdir().unwrap();
    let play = drill_in(
        folder.path(),
        "",
        &["play", "there-and-back", "--actions", "gone"],
    );
    assert_refused(&play, &["gone", "Check the name"]);
    assert_refused(
        &drill_in(folder.path(), "", &["mark", "gone.run"]),
        &["gone.run"],
    );
    assert_refused(&drill_in(folder.path(), "", &["check", "gone"]), &["gone"]);
}

/// A folder with a copy of one shipped drill and all sites and their apparatus, in which one text of one file is replaced.
fn changed(file: &str, from: &str, to: &str) -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    let shipped = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios");
    for part in ["apparatus", "sites", "drills"] {
        fs::create_dir(folder.path().join(part)).unwrap();
        for entry in fs::read_dir(shipped.join(part)).unwrap() {
            let path = entry.unwrap().path();
            let name = path.file_name().unwrap();
            if part == "drills" && name != "there-and-back.ron" {
                continue;
            }
            let mut text = fs::read_to_string(&path).unwrap();
            if name == Path::new(file).file_name().unwrap() {
                assert!(text.contains(from), "{file} no longer has {from}");
                text = text.replacen(from, to, 1);
            }
            fs::write(folder.path().join(part).join(name), text).unwrap();
        }
    }
    folder
}

/// What `check` says of that copy.
fn check_changed(file: &str, from: &str, to: &str) -> Answered {
    let folder = changed(file, from, to);
    drill_in(folder.path(), "", &["check", "."])
}

#[test]
fn a_scenario_file_with_a_wrong_field_is_refused_with_its_place() {
    let wrong = check_changed("sites/two-gables.ron", "main_amps: 200", "main_ampers: 200");
    assert_refused(&wrong, &["sites/two-gables.ron:", "main_ampers"]);
}

#[test]
fn a_scenario_file_with_an_unknown_name_is_refused_with_the_nearest() {
    let wrong = check_changed(
        "drills/there-and-back.ron",
        "\"furnace\", \"sump\"",
        "\"furnise\", \"sump\"",
    );
    assert_refused(
        &wrong,
        &[
            "drills/there-and-back.ron:",
            "“furnise”",
            "Did you mean “furnace”?",
        ],
    );
}

#[test]
fn a_scenario_file_with_a_wire_to_nowhere_is_refused() {
    let wrong = check_changed("sites/two-gables.ron", "to: \"pole-4\"", "to: \"pole-9\"");
    assert_refused(
        &wrong,
        &["sites/two-gables.ron:", "There is no pole named “pole-9”"],
    );
}

#[test]
fn a_scenario_file_with_a_negative_length_is_refused() {
    let wrong = check_changed(
        "sites/two-gables.ron",
        "length_ft: 250.0",
        "length_ft: -250.0",
    );
    assert_refused(
        &wrong,
        &[
            "sites/two-gables.ron:",
            "length_ft",
            "-250",
            "more than zero",
        ],
    );
}

#[test]
fn a_sound_folder_is_read_without_a_fault_and_nothing_is_called_proved() {
    let answered = drill(&["check", "scenarios", "--as-written"]);
    assert_eq!(answered.status, Some(0), "{}", answered.err);
    assert!(answered.out.contains("there-and-back:"), "{}", answered.out);
    assert!(answered.out.contains("Not covered"), "{}", answered.out);
    assert!(!answered.out.contains("proved"), "{}", answered.out);
}

#[test]
fn a_breaker_too_large_for_its_wire_is_named() {
    let from = "(name: \"fridge\", breaker_amps: 20, gauge: \"12\"";
    let to = "(name: \"fridge\", breaker_amps: 20, gauge: \"14\"";
    let wrong = check_changed("sites/two-gables.ron", from, to);
    assert_eq!(wrong.status, Some(1), "{}", wrong.err);
    let named = "Too large for the wire behind it: breaker-fridge";
    assert!(wrong.out.contains(named), "{}", wrong.out);
    let right = check_changed("sites/two-gables.ron", from, from);
    assert!(!right.out.contains("Too large"), "{}", right.out);
}

/// A saved run of a short, unfinished drill.
fn saved_run(folder: &Path) -> String {
    let typed = "set main off\nwait 1m\nfinish\n";
    let answered = drill_in(
        folder,
        typed,
        &["play", "there-and-back", "--save", "a.run"],
    );
    assert_eq!(answered.status, Some(1), "{}", answered.err);
    fs::read_to_string(folder.join("a.run")).unwrap()
}

#[test]
fn a_saved_run_is_marked_again_from_its_file_alone() {
    let folder = tempfile::tempdir().unwrap();
    saved_run(folder.path());
    let answered = drill_in(folder.path(), "", &["mark", "a.run", "--json"]);
    assert_eq!(answered.status, Some(1), "{}", answered.err);
    let document: serde_json::Value = serde_json::from_str(&answered.out).unwrap();
    assert_eq!(document["runs"][0]["passed"], serde_json::json!(false));
    assert!(
        !document["runs"][0]["findings"]
            .as_array()
            .unwrap()
            .is_empty()
    );
}

#[test]
fn a_run_file_that_is_torn_or_of_another_version_or_drill_is_refused() {
    let folder = tempfile::tempdir().unwrap();
    let text = saved_run(folder.path());
    let end = text.find("end ").unwrap();
    let digest = text.find("digest ").unwrap() + 7;
    let cases = [
        (text[..end].to_owned(), "cut short"),
        (text[..digest].to_owned(), "a.run"),
        (text.replace("run 1\n", "run 99\n"), "version 99"),
        (
            format!("{}0000{}", &text[..digest], &text[digest + 4..]),
            "has changed since",
        ),
        (
            text.replace("scenario there-and-back", "scenario elsewhere"),
            "“elsewhere”",
        ),
        (
            text.replace("set main off", "set mian off"),
            "Did you mean “main”?",
        ),
        ("hello\n".to_owned(), "not the head of a run file"),
        (String::new(), "cut short"),
    ];
    for (text, said) in cases {
        fs::write(folder.path().join("a.run"), &text).unwrap();
        assert_refused(
            &drill_in(folder.path(), "", &["mark", "a.run"]),
            &["a.run", said],
        );
    }
}

#[test]
fn a_folder_that_cannot_be_written_is_told_before_the_drill_begins() {
    let folder = tempfile::tempdir().unwrap();
    let save = ["play", "there-and-back", "--save", "gone/a.run"];
    let answered = drill_in(folder.path(), "finish\n", &save);
    assert_refused(&answered, &["gone/a.run", "Choose a folder"]);
}

#[test]
fn a_marked_list_still_shows_its_verdict_when_it_cannot_be_saved() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("list"), "set main off\n").unwrap();
    let play = [
        "play",
        "there-and-back",
        "--actions",
        "list",
        "--save",
        "gone/a.run",
    ];
    let answered = drill_in(folder.path(), "", &play);
    assert_refused(&answered, &["gone/a.run", "The verdict above stands"]);
    assert!(answered.out.contains("Not passed yet"), "{}", answered.out);
}

#[test]
fn an_unknown_site_or_setting_is_refused_with_the_nearest() {
    assert_refused(
        &drill(&["read", "two-gabels"]),
        &["“two-gabels”", "two-gables"],
    );
    let sets = [
        "read",
        "two-gables",
        "--set",
        "mian=off",
        "--set",
        "main=half",
    ];
    assert_refused(
        &drill(&sets),
        &["“mian”", "Did you mean “main”?", "“half”", "2 faults"],
    );
}

#[test]
fn readings_follow_the_positions_that_are_set() {
    let answered = drill(&["read", "two-gables", "--set", "main=off", "--json"]);
    assert_eq!(answered.status, Some(0), "{}", answered.err);
    let document: serde_json::Value = serde_json::from_str(&answered.out).unwrap();
    let points = document["points"].as_array().unwrap();
    let point = |id: &str| points.iter().find(|p| p["id"] == id).unwrap();
    assert_eq!(point("service")["utility"], true);
    assert_eq!(point("bus")["utility"], false);
}

#[test]
fn what_the_world_refuses_is_told_and_the_drill_goes_on() {
    let typed = "set main off\nset generator-breaker on\nset main on\nfoo\nset main-lock fitted\n";
    let answered = drill_in(Path::new("."), typed, &["play", "there-and-back"]);
    assert_eq!(
        answered.status,
        Some(1),
        "the end of the input ends the drill: {}",
        answered.err
    );
    assert!(
        answered.out.contains("Refused: Main breaker: on."),
        "{}",
        answered.out
    );
    assert!(answered.err.contains("“foo”"), "{}", answered.err);
    assert!(
        answered.out.contains("Padlock on the main breaker"),
        "{}",
        answered.out
    );
    assert!(answered.out.contains("Not passed yet"), "{}", answered.out);
}

#[test]
fn leaving_early_marks_nothing() {
    let answered = drill_in(
        Path::new("."),
        "help\nstatus\nquit\n",
        &["play", "no-slide", "--assessed"],
    );
    assert_eq!(answered.status, Some(1), "{}", answered.err);
    assert!(
        answered.out.contains("Nothing was marked."),
        "{}",
        answered.out
    );
    assert!(!answered.out.contains("What counted"), "{}", answered.out);
}

#[test]
fn every_line_is_plain_text() {
    let answered = drill_in(
        Path::new("."),
        "status\nhelp\nwait\nfinish\n",
        &["play", "no-slide"],
    );
    let odd = |c: &char| c.is_control() && *c != '\n' || ('\u{2500}'..='\u{259f}').contains(c);
    assert_eq!(answered.out.chars().find(odd), None);
}

/// A list of actions that is kept for the tests of whole drills.
fn play_kept(drill_name: &str, list: &str, language: &str) -> Answered {
    let file = format!("tests/drills/{list}.actions");
    drill(&[
        "play",
        drill_name,
        "--actions",
        &file,
        "--language",
        language,
    ])
}

#[test]
fn a_right_list_passes_on_both_houses() {
    for (name, list) in [
        ("there-and-back", "slide-branches-first"),
        ("no-slide", "cords-safe"),
    ] {
        let answered = play_kept(name, list, "en");
        assert_eq!(answered.status, Some(0), "{}{}", answered.out, answered.err);
        assert!(answered.out.contains("\nPassed\n"), "{}", answered.out);
    }
}

#[test]
fn the_main_breaker_left_on_is_explained_with_its_volts_and_amps_in_both_languages() {
    let said = [
        (
            "en",
            [
                "Your generator fed the street for ",
                "Across the body were ",
                "Why it matters:",
                "\u{a0}V",
                "\u{a0}A",
            ],
        ),
        (
            "es",
            [
                "Su generador alimentó la calle durante ",
                "Corriente por el cuerpo: de ",
                "Por qué importa:",
                "\u{a0}V",
                "\u{a0}A",
            ],
        ),
    ];
    for (language, words) in said {
        let answered = play_kept("no-slide", "deadly-main-left-on", language);
        assert_eq!(answered.status, Some(1), "{}", answered.err);
        for word in words {
            assert!(
                answered.out.contains(word),
                "{language}: no {word:?} in {}",
                answered.out
            );
        }
    }
}

#[test]
fn the_same_attempt_on_the_interlocked_panel_is_refused_and_recorded() {
    for (language, refused) in [("en", "Refused: "), ("es", "No se pudo: ")] {
        let answered = play_kept("there-and-back", "slide-refused", language);
        assert_ne!(answered.status, Some(2), "{}", answered.err);
        assert!(answered.out.contains(refused), "{}", answered.out);
    }
}

#[test]
fn a_run_that_is_left_early_is_in_its_file_up_to_the_last_line() {
    let folder = tempfile::tempdir().unwrap();
    let typed = "set main off\nwait 1m\nquit\n";
    drill_in(
        folder.path(),
        typed,
        &["play", "there-and-back", "--save", "a.run"],
    );
    let text = fs::read_to_string(folder.path().join("a.run")).unwrap();
    assert!(text.contains("wait 60s"), "{text}");
    let marked = drill_in(folder.path(), "", &["mark", "a.run"]);
    assert_eq!(marked.status, Some(1), "{}", marked.err);
    assert_eq!(
        fs::read_dir(folder.path()).unwrap().count(),
        1,
        "nothing is left beside it"
    );
}

#[test]
fn the_published_figures_are_printed_with_totals_and_all_hold() {
    let answered = drill(&["evidence", "published"]);
    assert_eq!(answered.status, Some(0), "{}", answered.err);
    let head = answered.out.lines().next().unwrap();
    for heading in [
        "Section",
        "Quantity",
        "Published",
        "Ours",
        "Tolerance",
        "Source",
    ] {
        assert!(head.contains(heading), "no {heading} in: {head}");
    }
    let last = answered.out.lines().last().unwrap();
    assert!(last.starts_with("All sections:"), "{last}");
    let spanish = drill(&["evidence", "published", "--language", "es"]);
    assert!(spanish.out.contains("Publicado"), "{}", spanish.out);

    let document = drill(&["evidence", "published", "--json"]).out;
    let document: serde_json::Value = serde_json::from_str(&document).unwrap();
    assert_eq!(document["version"], serde_json::json!(1));
    assert_eq!(document["total"]["wrong"], serde_json::json!(0));
    let rows = document["rows"].as_array().unwrap();
    assert_eq!(document["total"]["rows"], serde_json::json!(rows.len()));
}

#[test]
fn the_whole_networks_are_printed_and_all_hold() {
    let answered = drill(&["evidence", "networks"]);
    assert_eq!(answered.status, Some(0), "{}", answered.err);
    assert!(answered.out.contains("4-node feeder"), "{}", answered.out);
    let document = drill(&["evidence", "networks", "--json"]).out;
    let document: serde_json::Value = serde_json::from_str(&document).unwrap();
    assert_eq!(document["total"]["wrong"], serde_json::json!(0));
}
