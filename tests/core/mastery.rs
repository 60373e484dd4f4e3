//! What learners have shown unaided: which runs count, what they show, and when to practice again.

use std::fs;

use outage_drill::file::{Library, Source};
use outage_drill::marking::{Objective, mark};
use outage_drill::scenario::course::{Direction, Outcome, Way};
use outage_drill::session::{Command, Practice, Rewind, Session, Signed, play, remark};
use outage_drill::units::{Day, DrillTime, portable};
use serde_json::Value;

use crate::playing::{list, play_text, shipped};
use crate::terminal::{assert_refused, drill_in};

fn library() -> Library {
    Library::shipped().0
}

/// A run file of a list, as of a test on this day.
fn tested(name: &str, day: &str) -> String {
    let text = list(name);
    let source = Source {
        file: name,
        text: &text,
    };
    let played = play(&library(), "there-and-back", 1, "en", source).unwrap();
    let text = played.session.saved().unwrap();
    text.replace(
        "\nseed 1\n",
        &format!("\nseed 1\npractice assessed\nday {day}\n"),
    )
}

/// The objectives of a learner, by title.
fn asked(files: &[(&str, &str)], arguments: &[&str]) -> Value {
    let folder = tempfile::tempdir().unwrap();
    for (name, text) in files {
        fs::write(folder.path().join(name), text).unwrap();
    }
    let mut all = vec!["mastery", ".", "--learner", "ana", "--json"];
    all.extend(arguments);
    let answered = drill_in(folder.path(), "", &all);
    assert_eq!(answered.status, Some(0), "{}", answered.err);
    serde_json::from_str(&answered.out).unwrap()
}

fn objective(document: &Value, title: &str) -> Value {
    let all = document["objectives"].as_array().unwrap();
    let found = all
        .iter()
        .find(|o| o["title"].as_str().unwrap().contains(title));
    found
        .unwrap_or_else(|| panic!("no {title} in {all:?}"))
        .clone()
}

const OUT: &str = "A generator breaker in the panel. Over to your own source";

#[test]
fn a_test_on_a_known_day_is_kept_as_unaided_and_help_or_going_back_is_not() {
    let day = Day::parse("2026-03-01").unwrap();
    let finished = |practice, goes_back: bool| {
        let mut session = Session::new(library(), "en");
        session.sign(Signed::new(&[], None, Some(day)).unwrap());
        session.apply(Command::Open {
            drill: "there-and-back".to_owned(),
            practice,
            seed: 1,
        });
        session.apply(Command::Do("wait 1m".to_owned()));
        session.apply(Command::Finish);
        if goes_back {
            session.apply(Command::Rewind(Rewind::To(DrillTime::ZERO)));
            session.apply(Command::Finish);
        }
        session.saved().unwrap()
    };
    let alone = finished(Practice::Assessed, false);
    assert!(
        alone.contains("\npractice assessed\nday 2026-03-01\n@"),
        "{alone}"
    );
    for (practice, goes_back) in [(Practice::Coached, false), (Practice::Assessed, true)] {
        let text = finished(practice, goes_back);
        assert!(
            text.contains("\npractice coached\nday 2026-03-01\n"),
            "{text}"
        );
    }
    let source = Source {
        file: "a.run",
        text: &alone,
    };
    assert!(remark(&library(), source).is_ok());
}

#[test]
fn a_pass_shows_what_its_drill_asks_for_and_doing_nothing_shows_nothing() {
    let scenario = shipped("there-and-back");
    let shown = |text: &str, objective: Objective| {
        let played = play_text(&scenario, 1, text);
        let verdict = mark(&scenario, played.drill.trace());
        objective.shown(&scenario, played.drill.trace(), &verdict)
    };
    let out = Objective::Switch(Way::Interlock, Direction::Out);
    let passed = list("slide-branches-first");
    assert_eq!(shown(&passed, out), Some(true));
    assert_eq!(
        shown(&passed, Objective::Switch(Way::Cords, Direction::Out)),
        None
    );
    for objective in Objective::all() {
        assert_ne!(shown("wait 1m\n", objective), Some(true), "{objective:?}");
        let asked = objective.is_asked(&scenario.course);
        assert_eq!(shown(&passed, objective).is_some(), asked, "{objective:?}");
    }
    let garage = list("slide-garage");
    assert_eq!(shown(&garage, out), Some(false));
    let place = Objective::Skill(Outcome::PlaceEngine);
    assert_eq!(
        shown(&garage, place),
        place.is_asked(&scenario.course).then_some(false)
    );
}

#[test]
fn a_folder_tells_recall_refreshers_and_what_to_do_for_a_season() {
    let passed = tested("slide-branches-first", "2026-03-01");
    let files = [("ana.run", passed.as_str())];
    let document = asked(&files, &["--today", "2026-03-02", "--season", "2026-04-05"]);
    assert_eq!(document["runs"], 1);
    let out = objective(&document, OUT);
    assert_eq!((&out["passes"], &out["fails"]), (&1.into(), &0.into()));
    assert_eq!(out["last"], "2026-03-01");
    assert_eq!(out["due"], "2026-03-03");
    assert_eq!(out["is_due"], false);
    assert_eq!(out["for_season"], "2026-04-01");
    let recall = out["recall"].as_f64().unwrap();
    let left = portable::power(2.0, -1.0 / 14.0);
    assert!((recall - left).abs() < 1e-9, "{recall}");
    let never = objective(&document, "Cords alone. Over to");
    assert_eq!(never["last"], Value::Null);
    assert_eq!(never["is_due"], true);
    assert!(!never["drill"].as_str().unwrap().is_empty());
}

#[test]
fn a_fail_is_due_at_once_and_others_and_aided_runs_are_left_out() {
    let passed = tested("slide-branches-first", "2026-03-01");
    let failed = tested("slide-garage", "2026-03-09");
    let aided = passed.replace("assessed", "guided");
    let files = [
        ("ana.run", passed.as_str()),
        ("ana-2.run", failed.as_str()),
        ("ana-3.run", aided.as_str()),
        ("anabel.run", passed.as_str()),
        ("ana-maria.run", passed.as_str()),
    ];
    let document = asked(&files, &["--today", "2026-03-10"]);
    assert_eq!(document["runs"], 2);
    let left_out = document["left_out"].as_array().unwrap();
    assert_eq!(left_out.len(), 1, "{left_out:?}");
    let out = objective(&document, OUT);
    assert_eq!((&out["passes"], &out["fails"]), (&1.into(), &1.into()));
    assert_eq!(out["half_life_days"], 7.0);
    assert_eq!(out["is_due"], true);
    assert_eq!(
        asked(&files, &["--today", "2026-03-09"]),
        asked(&files, &[])
    );
    let first = &document["objectives"][0];
    assert_eq!(first["is_due"], true, "what is due comes first");
}

#[test]
fn a_wrong_day_a_past_season_and_a_missing_folder_are_refused() {
    let folder = tempfile::tempdir().unwrap();
    let ask = |more: &[&str]| {
        let mut all = vec!["mastery", ".", "--learner", "ana"];
        all.extend(more);
        drill_in(folder.path(), "", &all)
    };
    assert_refused(
        &ask(&["--today", "2026-02-29"]),
        &["“2026-02-29” is no day of the calendar"],
    );
    assert_refused(&ask(&[]), &["No run of ana counts here"]);
    let past = ask(&["--today", "2026-03-02", "--season", "2026-03-01"]);
    assert_refused(&past, &["2026-03-01 is before 2026-03-02"]);
    let missing = drill_in(
        folder.path(),
        "",
        &["mastery", "nowhere", "--learner", "ana"],
    );
    assert_refused(&missing, &["nowhere"]);
    let told = ask(&["--today", "2026-03-02"]);
    assert_eq!(told.status, Some(0), "{}", told.err);
    assert!(
        told.out.contains("ana, on 2026-03-02: 0 runs count."),
        "{}",
        told.out
    );
}

#[test]
fn a_test_that_is_typed_keeps_the_day_that_is_given_and_counts() {
    let folder = tempfile::tempdir().unwrap();
    let play = |day: &str| {
        let play = ["play", "there-and-back", "--assessed", "--on", day];
        let arguments = [&play[..], &["--save", "ana.run"]].concat();
        drill_in(folder.path(), "finish\n", &arguments)
    };
    assert_refused(&play("2026-13-01"), &["“2026-13-01” is no day"]);
    assert!(!folder.path().join("ana.run").exists());
    assert_eq!(play("2026-03-01").status, Some(1));
    let told = drill_in(folder.path(), "", &["mastery", ".", "--learner", "ana"]);
    let head = "ana, on 2026-03-01: one run counts.";
    assert!(told.out.starts_with(head), "{}", told.out);
}

#[test]
fn a_run_that_is_not_as_it_was_saved_is_told_and_counts_as_it_stands() {
    let folder = tempfile::tempdir().unwrap();
    let play = ["play", "there-and-back", "--assessed", "--on", "2026-03-01"];
    let arguments = [&play[..], &["--save", "ana.run"]].concat();
    assert_eq!(
        drill_in(folder.path(), "finish\n", &arguments).status,
        Some(1)
    );
    let mastery = ["mastery", ".", "--learner", "ana"];
    let whole = drill_in(folder.path(), "", &mastery).out;
    assert!(!whole.contains("Seal:"), "{whole}");
    let saved = fs::read_to_string(folder.path().join("ana.run")).unwrap();
    let later = saved.replace("day 2026-03-01", "day 2026-04-01");
    fs::write(folder.path().join("ana-2.run"), later).unwrap();
    let seal = saved.lines().find(|l| l.starts_with("seal ")).unwrap();
    let bare = saved.replace(&format!("{seal}\n"), "");
    fs::write(folder.path().join("ana-3.run"), bare).unwrap();
    let told = drill_in(folder.path(), "", &mastery).out;
    for line in [
        "Seal: changed after it was saved. It is taken as it stands: ./ana-2.run",
        "Seal: not sealed. It is taken as it stands: ./ana-3.run",
    ] {
        assert!(told.lines().any(|l| l == line), "{told}");
    }
    let json = [&mastery[..], &["--json"]].concat();
    let document: Value = serde_json::from_str(&drill_in(folder.path(), "", &json).out).unwrap();
    assert_eq!(document["runs"], 3);
    assert_eq!(document["seals"][0]["seal"], "broken");
    assert_eq!(document["seals"][1]["file"], "./ana-3.run");
}

#[test]
fn runs_are_a_learners_by_the_name_they_keep_and_only_those_done_alone_count() {
    let passed = tested("slide-branches-first", "2026-03-01");
    let signed = |lines: &str| passed.replace("\nday ", &format!("\n{lines}\nday "));
    let files = [
        ("x.run", signed("learner ana")),
        ("y.run", signed("learner ana\nseated alone")),
        ("z.run", signed("learner ana\nlearner ben")),
        ("w.run", signed("learner ana\nseated as-a-team")),
        ("ana.run", signed("learner ben")),
    ];
    let files = files.each_ref().map(|(name, text)| (*name, text.as_str()));
    let document = asked(&files, &[]);
    assert_eq!(document["runs"], 2);
    let left_out = document["left_out"].as_array().unwrap();
    let left_out: Vec<&str> = left_out.iter().map(|f| f.as_str().unwrap()).collect();
    assert_eq!(left_out, ["./w.run", "./z.run"]);
}
