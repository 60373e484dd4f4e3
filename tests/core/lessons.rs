//! The shipped lessons, held to the drills and to each other; and wrong packs, each fault at its place.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use outage_drill::file::{Diagnostic, Library, LocalFacts, Source};
use outage_drill::scenario::lesson::{Doing, Hold, Lesson, Phase};
use outage_drill::session::{Practice, Session};
use outage_drill::words::OFFERED;
use serde_json::Value;

use crate::terminal::{assert_refused, drill, drill_in};
use crate::wrong_files::{Case, KNOWN, NEAREST, case, check};

const LESSON: &str = r#"(
  version: 2,
  name: "own",
  audience: Class,
  objectives: [
    (name: "refuse-unsafe", teaches: Recognize, drills: ["no-slide"]),
    (name: "apart-first", teaches: Isolate, drills: ["slide-and-close"]),
  ],
  prebrief: ["roles", "real"],
  sessions: [
    (name: "evening", minutes: 50, steps: [
      (minute: 0, minutes: 5, what: Prebrief, say: "welcome"),
      (minute: 5, minutes: 15, what: Drill("slide-and-close"), say: "pairs-out",
        hold: [Prediction("panel-or-street"), After(CrewTakesHold, "crew-in-danger")]),
      (minute: 20, minutes: 10, what: Debrief, say: "look-back", ask: ["which-way"]),
      (minute: 30, minutes: 20, what: Assessment("no-slide"), say: "alone"),
    ]),
  ],
  debrief: (happened: ["what-you-saw"], felt: ["how-it-felt"], why: ["why-so"], next: ["next-time"]),
  handout: ["line-down"],
)
"#;

const UNKNOWN: &str = "error-unknown-name";

/// A folder with two drills, their sites, and this lesson.
fn folder(lesson: &str) -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    let own = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios");
    for file in [
        "sites/two-gables.ron",
        "sites/blue-door.ron",
        "drills/no-slide.ron",
        "drills/slide-and-close.ron",
    ] {
        let to = folder.path().join(file);
        fs::create_dir_all(to.parent().unwrap()).unwrap();
        fs::copy(own.join(file), to).unwrap();
    }
    fs::create_dir_all(folder.path().join("lessons")).unwrap();
    fs::write(folder.path().join("lessons/own.ron"), lesson).unwrap();
    folder
}

fn load(lesson: &str) -> (Library, Vec<Diagnostic>) {
    Library::load(folder(lesson).path())
}

const CASES: &[Case] = &[
    case(
        "[\"no-slide\"]",
        "[\"no-slid\"]",
        UNKNOWN,
        "refuse-unsafe",
        "\"no-slid\"",
        NEAREST,
    ),
    case(
        "Assessment(\"no-slide\")",
        "Assessment(\"zzz\")",
        UNKNOWN,
        "minute: 30",
        "\"zzz\"",
        KNOWN,
    ),
    case(
        "Prediction(\"panel-or-street\")",
        "Prediction(\"panel-or-sreet\")",
        UNKNOWN,
        "hold",
        "\"panel-or-sreet\"",
        NEAREST,
    ),
    case(
        "After(CrewTakesHold",
        "After(CrewLeaves",
        "error-lesson-event",
        "hold",
        "CrewLeaves",
        NEAREST,
    ),
    case(
        "\"crew-in-danger\"",
        "\"crew-in-dangr\"",
        UNKNOWN,
        "hold",
        "\"crew-in-dangr\"",
        NEAREST,
    ),
    case(
        "say: \"look-back\"",
        "say: \"look-bak\"",
        UNKNOWN,
        "minute: 20",
        "\"look-bak\"",
        NEAREST,
    ),
    case(
        "ask: [\"which-way\"]",
        "ask: [\"which-wy\"]",
        UNKNOWN,
        "minute: 20",
        "\"which-wy\"",
        NEAREST,
    ),
    case(
        "happened: [\"what-you-saw\"]",
        "happened: [\"what-you-sow\"]",
        UNKNOWN,
        "debrief",
        "\"what-you-sow\"",
        NEAREST,
    ),
    case(
        "handout: [\"line-down\"]",
        "handout: [\"line-dwn\"]",
        UNKNOWN,
        "handout",
        "\"line-dwn\"",
        NEAREST,
    ),
    case(
        "prebrief: [\"roles\"",
        "prebrief: [\"rolls\"",
        UNKNOWN,
        "prebrief",
        "\"rolls\"",
        NEAREST,
    ),
    case(
        "name: \"apart-first\"",
        "name: \"apart-frist\"",
        UNKNOWN,
        "objectives",
        "\"apart-frist\"",
        NEAREST,
    ),
    case(
        "name: \"evening\"",
        "name: \"evning\"",
        UNKNOWN,
        "sessions",
        "\"evning\"",
        NEAREST,
    ),
    case(
        "teaches: Recognize",
        "teaches: Grounding",
        "error-lesson-not-taught",
        "refuse-unsafe",
        "\"no-slide\"",
        None,
    ),
    case(
        "Drill(\"slide-and-close\")",
        "Drill(\"no-slide\")",
        "error-lesson-not-planned",
        "apart-first",
        "\"slide-and-close\"",
        None,
    ),
    case(
        "[\"slide-and-close\"]",
        "[]",
        "error-lesson-objective-bare",
        "objectives",
        "\"apart-first\"",
        None,
    ),
    case(
        "name: \"apart-first\"",
        "name: \"refuse-unsafe\"",
        "error-name-twice",
        "Recognize",
        "\"refuse-unsafe\"",
        None,
    ),
    case(
        "minute: 20",
        "minute: 21",
        "error-lesson-minute",
        "sessions",
        "minute: 21",
        None,
    ),
    case(
        "minutes: 15",
        "minutes: 16",
        "error-lesson-minute",
        "sessions",
        "minute: 20",
        None,
    ),
    case(
        "minutes: 5,",
        "minutes: 0,",
        "error-not-positive",
        "minute: 0",
        "minutes: 0",
        None,
    ),
    case(
        "minutes: 50",
        "minutes: 60",
        "error-lesson-length",
        "evening",
        "minutes: 60",
        None,
    ),
    case(
        "what: Prebrief",
        "what: Talk",
        "error-lesson-prebrief",
        "sessions",
        "\"evening\"",
        None,
    ),
    case(
        "what: Debrief",
        "what: Talk",
        "error-lesson-debrief",
        "sessions",
        "\"evening\"",
        None,
    ),
    case(
        "Assessment",
        "Drill",
        "error-lesson-assessment",
        "objectives",
        "sessions:",
        None,
    ),
    case(
        "say: \"alone\"",
        "say: \"alone\", hold: [After(CrewTakesHold, \"crew-in-danger\")]",
        "error-lesson-hold-test",
        "minute: 30",
        "hold",
        None,
    ),
    case(
        "say: \"welcome\"",
        "say: \"welcome\", hold: [After(Outage, \"crew-in-danger\")]",
        "error-lesson-hold-talk",
        "minute: 0",
        "hold",
        None,
    ),
    case(
        "handout: [\"line-down\"]",
        "handout: []",
        "error-lesson-empty",
        "debrief",
        "handout:",
        None,
    ),
    case(
        "felt: [\"how-it-felt\"]",
        "felt: []",
        "error-lesson-empty",
        "debrief",
        "felt:",
        None,
    ),
    case(
        "audience",
        "audiense",
        "error-unknown-field",
        "name",
        "audiense",
        NEAREST,
    ),
];

#[test]
fn a_sound_pack_has_no_fault_and_a_wrong_one_tells_each_at_its_place() {
    let (library, faults) = load(LESSON);
    assert!(faults.is_empty(), "{faults:?}");
    assert_eq!(library.lessons.len(), 1);
    for case in CASES {
        assert!(LESSON.contains(case.from), "{}", case.from);
        let text = LESSON.replacen(case.from, case.to, 1);
        let (library, mut faults) = load(&text);
        assert!(library.lessons.is_empty(), "{}", case.to);
        // A misspelt field is missing under its right name too.
        faults.retain(|f| f.message.id != "error-missing-field");
        check(&text, case, &faults, "own.ron");
    }
}

#[test]
fn faults_of_form_and_of_meaning_are_told_of_a_lesson_in_one_pass() {
    let text = LESSON.replacen("minutes: 15", "minutes: few", 1);
    let text = text.replacen("say: \"alone\"", "say: \"alon\"", 1);
    let (_, faults) = load(&text);
    let told = faults.iter().map(|f| (f.line, f.text.as_str()));
    assert_eq!(told.collect::<Vec<_>>(), [(13, "few"), (16, "\"alon\"")]);
}

#[test]
fn a_title_that_no_language_of_the_folder_has_is_told_by_the_check_with_its_file() {
    let folder = folder(LESSON);
    let (library, _) = Library::load(folder.path());
    let missing = library.missing_words.iter();
    let own: Vec<&Diagnostic> = missing.filter(|m| m.file.ends_with("own.ftl")).collect();
    assert_eq!(own.len(), 2, "{own:?}");
    assert!(own.iter().all(|m| m.file.ends_with("lessons-own.ftl")));
    let lesson = drill_in(folder.path(), "", &["--scenarios", ".", "lesson", "own"]);
    assert_refused(&lesson, &["lesson-own-title", "lessons-own.ftl"]);
}

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

const FACTS: &str = include_str!("../../scenarios/local.ron");

#[test]
fn the_sheet_tells_what_was_filled_in_and_to_ask_for_the_rest() {
    let folder = tempfile::tempdir().unwrap();
    let bare = drill(&["lesson", "two-hours", "--handout"]);
    assert_eq!(
        bare.out.matches("ask your utility").count(),
        6,
        "{}",
        bare.out
    );
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
    assert_eq!(told.matches("ask your utility").count(), 5, "{told}");
    assert!(told.contains("555 0100"), "{told}");
    assert!(
        told.contains("December") && told.contains("January"),
        "{told}"
    );
}

#[test]
fn local_facts_of_a_folder_are_read_and_a_month_that_is_none_is_told_at_its_place() {
    let lesson = folder(LESSON);
    let text = FACTS.replacen("None", "13", 1);
    fs::write(lesson.path().join("local.ron"), &text).unwrap();
    let (_, faults) = Library::load(lesson.path());
    assert_eq!(faults.len(), 1, "{faults:?}");
    assert_eq!(faults[0].message.id, "error-out-of-range");
    assert_eq!(faults[0].text, "storm_season_month");
    fs::write(
        lesson.path().join("local.ron"),
        FACTS.replacen("None", "6", 1),
    )
    .unwrap();
    let (library, faults) = Library::load(lesson.path());
    assert!(faults.is_empty(), "{faults:?}");
    assert_eq!(library.local.season_month, Some(6));
    let misspelt = FACTS.replacen("permit_office", "permit_ofice", 1);
    let source = Source {
        file: "local.ron",
        text: &misspelt,
    };
    let faults = LocalFacts::read(source).unwrap_err();
    assert!(
        faults.iter().any(|f| f.text == "permit_ofice"),
        "{faults:?}"
    );
}
