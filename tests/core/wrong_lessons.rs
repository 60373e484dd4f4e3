//! Wrong lesson packs and local facts: each fault with its place, what stands there, and what to do.

use std::fs;
use std::path::Path;

use outage_drill::file::{Diagnostic, Library, LocalFacts, Source};

use crate::lessons::FACTS;
use crate::terminal::{assert_refused, drill_in};
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

/// A folder with two drills, their sites with what those take up, and this lesson.
fn folder(lesson: &str) -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    let own = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios");
    for file in [
        "sites/two-gables.ron",
        "sites/blue-door.ron",
        "apparatus/cords.ron",
        "apparatus/generators.ron",
        "apparatus/line.ron",
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
        "Drill(\"slide-and-close\"), say: \"pairs-out\",\n        hold: [Prediction(\"panel-or-street\"), ",
        "Drill(\"no-slide\"), say: \"pairs-out\",\n        hold: [",
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
fn faults_of_a_lesson_are_told_beside_those_of_a_drill_and_none_hangs_on_that_drill() {
    let text = LESSON.replacen("say: \"alone\"", "say: \"alon\"", 1);
    // The second is broken so that nobody knows its name, and both are named by the lesson.
    for (from, to, offending) in [
        (
            "site: \"two-gables\"",
            "site: \"two-gabels\"",
            "\"two-gabels\"",
        ),
        ("name: \"no-slide\"", "nam: \"no-slide\"", "nam"),
    ] {
        let folder = folder(&text);
        let path = folder.path().join("drills/no-slide.ron");
        let drill = fs::read_to_string(&path).unwrap();
        assert!(drill.contains(from), "{from}");
        fs::write(path, drill.replacen(from, to, 1)).unwrap();
        let (library, mut faults) = Library::load(folder.path());
        assert!(library.lessons.is_empty());
        faults.retain(|f| f.message.id != "error-missing-field");
        let told: Vec<&str> = faults.iter().map(|f| f.text.as_str()).collect();
        assert_eq!(told, [offending, "\"alon\""], "{from}");
    }
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
