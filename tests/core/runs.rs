//! Run files: what is stored plays out to the same bits and the same verdict, and a bad file says what is wrong with it.

use std::sync::Arc;

use outage_drill::drill::{Beside, Seated, Signed};
use outage_drill::file::{Diagnostic, Library, Seal, Source, read_run, seal_as_before, write_run};
use outage_drill::marking::mark;
use outage_drill::session::{Command, Practice, Rewind, Session};
use outage_drill::units::{Day, DrillTime};

use crate::playing::{every_bit, list, play_text, shipped};

fn library() -> Library {
    Library::shipped().0
}

fn stored(name: &str, drill: &str, seed: u64) -> String {
    let scenario = shipped(drill);
    write_run(
        play_text(&scenario, seed, &list(name)).drill.run(),
        &scenario,
    )
}

fn faults(text: &str) -> Vec<Diagnostic> {
    read_run(
        Source {
            file: "a.run",
            text,
        },
        &library(),
    )
    .unwrap_err()
}

/// The only fault of a text: its message id, line, column and offending text.
fn fault(text: &str) -> (String, usize, usize, String) {
    let found = faults(text);
    assert_eq!(found.len(), 1, "{found:?}");
    let only = &found[0];
    assert_eq!(only.file, "a.run");
    (
        only.message.id.clone(),
        only.line,
        only.column,
        only.text.clone(),
    )
}

fn head_of(text: &str, lines: usize) -> String {
    text.split_inclusive('\n').take(lines).collect()
}

#[test]
fn a_stored_run_is_read_back_as_it_was_and_replays_to_the_bit_and_to_the_same_verdict() {
    let lists = [
        ("slide-branches-first", "there-and-back"),
        ("slide-refused", "there-and-back"),
        ("slide-garage", "there-and-back"),
        ("deadly-main-left-on", "no-slide"),
        ("deadly-before-the-crew", "no-slide"),
        ("collision-utility-returns", "no-slide"),
    ];
    for (name, drill) in lists {
        let scenario = shipped(drill);
        let played = play_text(&scenario, 5, &list(name));
        let text = write_run(played.drill.run(), &scenario);
        let run = read_run(
            Source {
                file: "a.run",
                text: &text,
            },
            &library(),
        )
        .unwrap();
        assert_eq!(&run, played.drill.run(), "{name}");
        assert_eq!(write_run(&run, &scenario), text, "{name}");
        let again = run.replay(&scenario).unwrap();
        let (one, other) = (&played.drill.trace().moments, &again.trace().moments);
        assert_eq!(one.len(), other.len(), "{name}");
        for (a, b) in one.iter().zip(other) {
            assert_eq!(every_bit(a), every_bit(b), "{name} at {}", a.at);
        }
        assert_eq!(mark(&scenario, again.trace()), played.verdict, "{name}");
    }
}

#[test]
fn another_seed_is_another_run() {
    let scenario = shipped("there-and-back");
    let text = list("slide-branches-first");
    let returns = |seed| play_text(&scenario, seed, &text).drill.trace().return_at();
    let times: std::collections::BTreeSet<_> = (0..8).map(returns).collect();
    assert!(times.len() > 4, "{times:?}");
}

#[test]
fn a_run_cut_short_anywhere_says_so_and_is_never_taken_for_a_whole_one() {
    let text = stored("slide-branches-first", "there-and-back", 1);
    let lines = text.lines().count();
    for kept in 0..lines {
        let cut = head_of(&text, kept);
        let found = faults(&cut);
        assert!(
            found.iter().any(|f| f.message.id == "error-run-cut"),
            "{kept} lines: {found:?}"
        );
    }
    let end = text.trim_end().rfind('\n').unwrap() + 1;
    for kept in (0..end).step_by(7) {
        assert!(!faults(&text[..kept]).is_empty(), "{kept} bytes");
    }
}

#[test]
fn a_run_of_another_version_of_the_program_names_both() {
    let text = stored("slide-nothing", "there-and-back", 1).replacen("run 1", "run 7", 1);
    assert_eq!(
        fault(&text),
        ("error-run-version".to_owned(), 1, 18, "7".to_owned())
    );
}

#[test]
fn a_file_that_is_no_run_is_refused_in_its_first_line() {
    for text in [
        "garbage\n",
        "\u{fffd}\u{0}\u{1}\n",
        "set main off\n",
        "(version: 1)\n",
    ] {
        let (id, line, column, _) = fault(text);
        assert_eq!(
            (id.as_str(), line, column),
            ("error-run-head", 1, 1),
            "{text:?}"
        );
    }
    assert_eq!(fault("").0, "error-run-cut");
}

#[test]
fn a_run_of_a_changed_scenario_is_refused() {
    let text = stored("slide-nothing", "there-and-back", 1);
    let digest = shipped("there-and-back").digest.clone();
    let other = digest.replace(|c: char| c.is_ascii_digit(), "0");
    let (id, line, column, _) = fault(&text.replace(&digest, &other));
    assert_eq!((id.as_str(), line, column), ("error-run-changed", 3, 8));
    let changed = text.replace("scenario there-and-back", "scenario no-slide");
    assert_eq!(
        fault(&changed).0,
        "error-run-changed",
        "the digest belongs to the other drill"
    );
}

#[test]
fn a_run_of_an_unknown_scenario_names_the_nearest() {
    let text = stored("slide-nothing", "there-and-back", 1);
    let found = faults(&text.replace("scenario there-and-back", "scenario there-and-bakc"));
    let only = &found[0];
    assert_eq!(
        (only.message.id.as_str(), only.line, only.column),
        ("error-unknown-name", 2, 10)
    );
    assert_eq!(
        only.hint.as_ref().map(|h| h.id.as_str()),
        Some("error-hint-nearest")
    );
}

#[test]
fn lines_that_make_no_sense_are_each_told_with_their_place() {
    let text = stored("slide-nothing", "there-and-back", 1);
    let head = head_of(&text, 4);
    let cases = [
        ("@1:00 set mian off\n", "error-unknown-name", 5, 11, "mian"),
        (
            "@1:00 set main sideways\n",
            "error-unknown-name",
            5,
            16,
            "sideways",
        ),
        ("@1:77 set main off\n", "error-unknown-name", 5, 1, "@1:77"),
        ("set main off\n", "error-run-line", 5, 1, "set main off"),
        ("@1:00\n", "error-missing-word", 5, 1, ""),
        ("@1:00 set crew away\n", "error-unknown-name", 5, 11, "crew"),
        (
            "@1:00 set main tripped\n",
            "error-unknown-name",
            5,
            16,
            "tripped",
        ),
        ("@1:00 refuel now\n", "error-unknown-name", 5, 14, "now"),
    ];
    for (line, id, row, column, offending) in cases {
        let found = fault(&format!("{head}{line}end 2:00\n"));
        assert_eq!(
            found,
            (id.to_owned(), row, column, offending.to_owned()),
            "{line}"
        );
    }
    let late = format!("{head}@2:00 set main off\n@1:00 set main on\nend 3:00\n");
    assert_eq!(fault(&late).0, "error-run-backwards");
    let after = format!("{head}end 1:00\n@2:00 set main off\n");
    assert_eq!(
        fault(&after).0,
        "error-run-line",
        "nothing comes after the end"
    );
    let seed = head.replace("seed 1", "seed one");
    let found = fault(&format!("{seed}end 1:00\n"));
    assert_eq!(found, ("error-run-seed".to_owned(), 4, 6, "one".to_owned()));
}

#[test]
fn an_end_before_the_last_action_is_refused() {
    let head = head_of(&stored("slide-nothing", "there-and-back", 1), 4);
    let text = format!("{head}@2:00 set main off\nend 1:00\n");
    assert_eq!(fault(&text).0, "error-run-backwards");
}

#[test]
fn a_drill_of_a_shared_scenario_leaves_it_as_it_was() {
    let scenario = shipped("no-slide");
    let before = scenario.as_ref().clone();
    let _played = play_text(&scenario, 1, &list("deadly-main-left-on"));
    assert_eq!(*scenario, before);
    assert_eq!(Arc::strong_count(&scenario), 2, "the drill holds it once");
}

#[test]
fn what_is_said_of_the_learners_is_read_back_and_each_bad_line_of_it_is_told() {
    let text = stored("slide-nothing", "there-and-back", 1);
    let signed = |lines: &str| text.replacen("seed 1\n", &format!("seed 1\n{lines}"), 1);
    let source = |text| Source {
        file: "a.run",
        text,
    };
    let whole =
        signed("practice guided\nlearner Ana\nlearner Ben\nseated in-pairs\nday 2026-03-01\n");
    let run = read_run(source(&whole), &library()).unwrap();
    let said = &run.beside.signed;
    assert_eq!(said.learners(), ["Ana", "Ben"]);
    assert_eq!(said.seated(), Some(Seated::InPairs));
    assert_eq!(said.day(), Day::parse("2026-03-01"));
    let again = write_run(&run, &shipped("there-and-back"));
    assert_eq!(read_run(source(&again), &library()).unwrap(), run);
    assert_eq!(seal_as_before(&again, &whole), whole);
    let old = read_run(source(&text), &library()).unwrap();
    assert_eq!(old.beside, Beside::default());
    for (lines, id, line) in [
        ("learner \n", "error-learner-empty", 5),
        ("learner Ana\nlearner Ana\n", "error-learner-twice", 6),
        (
            "learner Ana\nlearner Ben\nseated alone\n",
            "error-learners-many",
            7,
        ),
        ("seated upright\n", "error-seated", 5),
        ("handed 2:00 Ben\n", "error-handed", 5),
        (
            "learner Ana\nlearner Ben\nhanded 2:00 Ben\nhanded 1:00 Ben\n",
            "error-handed",
            8,
        ),
        ("day 2026-2-1\n", "error-day", 5),
    ] {
        let (found, at, column, _) = fault(&signed(lines));
        assert_eq!((found.as_str(), at, column), (id, line, 1), "{lines}");
    }
}

#[test]
fn who_sits_there_is_kept_with_the_drill_that_is_open_and_with_those_that_follow() {
    let mut session = Session::new(library(), "en");
    let sign = |name: &str| Signed::new(&[name.to_owned()], Some(Seated::Alone), None).unwrap();
    session.sign(sign("Ana"));
    session.apply(Command::Open {
        drill: "there-and-back".to_owned(),
        practice: Practice::Coached,
        seed: 1,
    });
    let names = |session: &Session| learners_in(&session.saved().unwrap()).join(",");
    assert_eq!(names(&session), "Ana");
    session.apply(Command::Rewind(Rewind::To(DrillTime::ZERO)));
    assert_eq!(names(&session), "Ana");
    session.sign(sign("Ben"));
    assert_eq!(names(&session), "Ben");
    session.apply(Command::Another);
    assert_eq!(names(&session), "Ben");
}

#[test]
fn when_a_learner_takes_over_is_kept_told_in_the_debrief_and_forgotten_with_what_is_undone() {
    let mut session = Session::new(library(), "en");
    assert!(session.hand_over("Ben").is_err(), "nobody sits there");
    session.sign(Signed::new(&["Ana".to_owned()], None, None).unwrap());
    session.apply(Command::Open {
        drill: "there-and-back".to_owned(),
        practice: Practice::Coached,
        seed: 1,
    });
    for (minutes, name) in [(2, "Ben"), (3, "Cleo")] {
        session.apply(Command::Wait(DrillTime::from_secs(60 * minutes)));
        session.hand_over(name).unwrap();
    }
    assert!(session.hand_over("Ana").is_err(), "named twice");
    let text = session.saved().unwrap();
    let lines = "seated in-turns\nhanded 2:00 Ben\nhanded 5:00 Cleo\n";
    assert!(text.contains(lines), "{text}");
    session.apply(Command::Rewind(Rewind::To(DrillTime::from_secs(180))));
    let text = session.saved().unwrap();
    assert!(text.contains("handed 2:00 Ben\n") && !text.contains("handed 5:00"));
    session.apply(Command::Finish);
    let run = read_run(
        Source {
            file: "a.run",
            text: &session.saved().unwrap(),
        },
        &library(),
    );
    let handed = vec![(DrillTime::from_secs(120), "Ben".to_owned())];
    assert_eq!(run.unwrap().beside.handed, handed);
    let log = session.debrief().unwrap().log;
    let told = log.iter().find(|l| l.text == "Ben takes over.").unwrap();
    assert_eq!(told.clock, "2:00");
}

/// The names in the text of a run file.
fn learners_in(text: &str) -> Vec<String> {
    let names = outage_drill::file::learners_in(text);
    names.into_iter().map(str::to_owned).collect()
}

#[test]
fn each_line_that_is_changed_added_or_left_out_breaks_the_seal_and_it_stays_broken() {
    let text = stored("slide-nothing", "there-and-back", 1);
    assert_eq!(Seal::of(&text), Seal::Whole);
    assert_eq!(Seal::of(&text.replace('\n', "\r\n")), Seal::Whole);
    let lines: Vec<&str> = text.lines().collect();
    let joined = |lines: &[&str]| lines.join("\n") + "\n";
    for at in 0..lines.len() {
        let mut without = lines.clone();
        let left_out = without.remove(at);
        let is_seal = left_out.starts_with("seal ");
        let expected = if is_seal { Seal::Missing } else { Seal::Broken };
        assert_eq!(Seal::of(&joined(&without)), expected, "{left_out}");
        let changed = format!("{left_out}0");
        let mut edited = lines.clone();
        edited[at] = &changed;
        assert_eq!(Seal::of(&joined(&edited)), Seal::Broken, "{changed}");
        let mut longer = lines.clone();
        longer.insert(at, "felt Fine.");
        assert_eq!(Seal::of(&joined(&longer)), Seal::Broken, "line {at}");
        // What is saved over it doesn't mend it.
        for before in [joined(&without), joined(&edited)] {
            let again = seal_as_before(&joined(&longer), &before);
            assert_ne!(Seal::of(&again), Seal::Whole, "{before}");
        }
    }
    assert_eq!(seal_as_before(&text, &text), text);
}
