//! The command line, run as a learner runs it: the real binary, its two streams and its exit status.

use std::io::Write as _;
use std::path::Path;
use std::process::{Command, Stdio};

/// What the binary answered.
struct Answered {
    status: Option<i32>,
    out: String,
    err: String,
}

/// Runs the binary in a folder, with lines typed to it, on a machine without a display that speaks no language of ours.
fn drill_in(folder: &Path, typed: &str, arguments: &[&str]) -> Answered {
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

fn drill(arguments: &[&str]) -> Answered {
    drill_in(Path::new(env!("CARGO_MANIFEST_DIR")), "", arguments)
}

/// Bad input: status 2, nothing said on the first stream, and all of these words on the second.
fn assert_refused(answered: &Answered, words: &[&str]) {
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
