//! The shipped lessons, held to the drills, and what an instructor reads of them.

use std::collections::BTreeSet;
use std::fs;

use outage_drill::file::Library;
use outage_drill::scenario::lesson::{Doing, Hold, Lesson, Phase};
use outage_drill::session::{Practice, Session};
use outage_drill::words::OFFERED;
use serde_json::Value;

use crate::terminal::{assert_refused, drill, drill_in};

fn library() -> Library {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    library
}

fn lesson(name: &str) -> Lesson {
    let library = library();
    let found = library.lessons.iter().find(|l| l.name == name);
    Lesson::clone(found.unwrap())
}

#[test]
fn the_shipped_packs_are_a_class_a_course_and_six_evenings_of_the_promised_length() {
    let minutes = |name: &str| -> Vec<u32> {
        let lesson = lesson(name);
        lesson.sittings.iter().map(|s| s.minutes).collect()
    };
    assert_eq!(minutes("two-hours"), [120]);
    assert_eq!(minutes("four-meetings"), [120; 4]);
    let evenings = minutes("six-evenings");
    assert_eq!(evenings.len(), 6);
    assert!(
        evenings.iter().all(|m| (15..=20).contains(m)),
        "{evenings:?}"
    );
    assert_eq!(library().lessons.len(), 3);
}

#[test]
fn every_drill_of_a_pack_is_for_its_audience_and_serves_an_objective() {
    let library = library();
    for lesson in &library.lessons {
        let taught: BTreeSet<&str> = lesson
            .objectives
            .iter()
            .flat_map(|o| o.drills.iter().map(String::as_str))
            .collect();
        for step in lesson.steps() {
            let Some(drill) = step.what.drill() else {
                continue;
            };
            let course = &library.scenario(drill).unwrap().course;
            assert!(
                course.tracks.contains(&lesson.track),
                "{}: {drill}",
                lesson.name
            );
            assert!(taught.contains(drill), "{}: {drill}", lesson.name);
        }
    }
}

#[test]
fn a_pack_asks_before_it_shows_and_looks_back_in_four_phases() {
    for lesson in &library().lessons {
        let predicts = lesson
            .steps()
            .filter(|s| matches!(s.what, Doing::Predict(_)));
        for step in predicts {
            let asks = |h: &Hold| matches!(h, Hold::Prediction(_));
            assert!(step.holds.iter().any(asks), "{}: {}", lesson.name, step.say);
        }
        let phases: Vec<Phase> = lesson.debrief.iter().map(|(phase, _)| *phase).collect();
        let wanted = [Phase::Happened, Phase::Felt, Phase::Why, Phase::Next];
        assert_eq!(phases, wanted);
    }
}

#[test]
fn what_an_instructor_reads_has_no_gap_in_any_language_and_warns_of_what_is_hard() {
    for language in OFFERED {
        let session = Session::new(library(), language.tag);
        for card in session.shelf().lessons {
            let view = session.lesson(&card.name).unwrap();
            let shown = format!("{view:?}");
            for part in [
                "lesson",
                "step",
                "question",
                "moment",
                "prompt",
                "handout",
                "local",
                "month",
                "sitting",
                "objective",
                "prebrief",
                "prepare",
                "doing",
                "phase",
            ] {
                assert!(!shown.contains(&format!("[{part}-")), "{part} {shown}");
            }
            for step in view.sessions.iter().flat_map(|s| &s.steps) {
                let Some((name, practice)) = &step.drill else {
                    continue;
                };
                assert_eq!(*practice == Practice::Assessed, step.kind == "assessment");
                let note = session.say(&format!("drill-{name}-note"));
                assert_eq!(step.note, note, "{name}");
                assert!(!note.starts_with('['), "{name}");
            }
        }
    }
}

#[test]
fn the_command_prints_the_plan_one_session_the_sheet_and_the_same_as_data() {
    let list = drill(&["lesson"]);
    for name in ["two-hours", "four-meetings", "six-evenings"] {
        assert!(list.out.contains(name), "{}", list.out);
    }
    let whole = drill(&["lesson", "four-meetings"]);
    let second = drill(&["lesson", "four-meetings", "--session", "2"]);
    assert!(whole.out.contains("open-the-box") && whole.out.contains("loose-slide"));
    assert!(!second.out.contains("open-the-box") && second.out.contains("loose-slide"));
    assert!(
        whole.out.contains("play storm-board --assessed"),
        "{}",
        whole.out
    );
    let data = drill(&["lesson", "four-meetings", "--session", "2", "--json"]);
    let data: Value = serde_json::from_str(&data.out).unwrap();
    let steps = data["sessions"][0]["steps"].as_array().unwrap();
    assert_eq!(data["sessions"].as_array().unwrap().len(), 1);
    assert_eq!(steps.last().unwrap()["ends"], 120);
    assert_eq!(steps[1]["drill"], "loose-slide");
    assert!(
        steps[1]["moments"][0]["ask"]
            .as_str()
            .unwrap()
            .ends_with('?')
    );
    assert_refused(
        &drill(&["lesson", "two-hour"]),
        &["“two-hour”", "two-hours"],
    );
    assert_refused(
        &drill(&["lesson", "two-hours", "--session", "2"]),
        &["“2”", "1"],
    );
    assert_refused(&drill(&["lesson", "two-hours", "--session", "0"]), &["“0”"]);
}

pub(crate) const FACTS: &str = include_str!("../../scenarios/local.ron");

#[test]
fn the_sheet_tells_what_was_filled_in_and_leaves_room_for_the_rest() {
    let folder = tempfile::tempdir().unwrap();
    let bare = drill(&["lesson", "two-hours", "--handout"]);
    assert_eq!(bare.out.matches("____\n").count(), 6, "{}", bare.out);
    let filled = FACTS
        .replacen(
            "outage_number: \"fill in\"",
            "outage_number: \"555 0100\"",
            1,
        )
        .replacen("storm_season_month: None", "storm_season_month: 1", 1);
    fs::write(folder.path().join("facts.ron"), &filled).unwrap();
    let ask = [
        "lesson",
        "two-hours",
        "--handout",
        "--local-facts",
        "facts.ron",
    ];
    let told = drill_in(folder.path(), "", &ask).out;
    assert_eq!(told.matches("____\n").count(), 5, "{told}");
    assert!(told.contains("555 0100"), "{told}");
    assert!(
        told.contains("December") && told.contains("January"),
        "{told}"
    );
}
