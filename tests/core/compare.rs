//! Two branches of a drill side by side: what was left, beside what was tried otherwise.

use std::fs;

use outage_drill::file::{Library, Source};
use outage_drill::session::view::CompareView;
use outage_drill::session::{Command, Practice, Rewind, Session, compare, play};

use crate::playing::list;
use crate::terminal::{assert_refused, drill_in};

fn library() -> Library {
    Library::shipped().0
}

/// The text of the run file of a list.
fn saved(name: &str, drill: &str, seed: u64) -> String {
    let text = list(name);
    let source = Source {
        file: name,
        text: &text,
    };
    let played = play(&library(), drill, seed, "en", source).unwrap();
    played.session.saved().unwrap()
}

fn compared(was: &str, tried: &str) -> CompareView {
    let (was, tried) = (saved(was, "no-slide", 1), saved(tried, "no-slide", 1));
    let source = |text| Source {
        file: "a.run",
        text,
    };
    compare(&library(), "en", source(&was), source(&tried)).unwrap()
}

#[test]
fn a_run_beside_itself_differs_in_nothing() {
    let view = compared("deadly-main-left-on", "deadly-main-left-on");
    assert_eq!(view.was, view.tried);
    let nothing = CompareView {
        was: view.was.clone(),
        tried: view.tried.clone(),
        ..CompareView::default()
    };
    assert_eq!(view, nothing);
}

#[test]
fn the_safe_way_beside_the_deadly_one_spares_the_crew_and_loses_its_findings() {
    let view = compared("deadly-main-left-on", "cords-safe");
    let crew = view
        .people
        .iter()
        .find(|d| d.label.contains("crew"))
        .unwrap();
    assert!(crew.was.contains("badly hurt"), "{crew:?}");
    assert!(
        view.gone.iter().any(|g| g.contains("fed the street")),
        "{:?}",
        view.gone
    );
    assert!(view.come.is_empty(), "{:?}", view.come);
    assert!(!view.positions.is_empty() && !view.volts.is_empty());
    let back = compared("cords-safe", "deadly-main-left-on");
    assert_eq!((back.come, back.gone), (view.gone, view.come));
}

#[test]
fn going_back_keeps_the_run_that_was_over_for_comparison() {
    let mut session = Session::new(library(), "en");
    session.apply(Command::Open {
        drill: "no-slide".to_owned(),
        practice: Practice::Coached,
        seed: 1,
    });
    assert_eq!(session.compare(), None);
    for line in list("deadly-main-left-on").lines() {
        session.apply(Command::Do(line.to_owned()));
        while session.consequence().is_some() {
            session.apply(Command::Understood);
        }
    }
    session.apply(Command::Finish);
    let was = session.debrief().unwrap();
    let fed = was
        .findings
        .iter()
        .position(|f| f.rule == "line-fed")
        .unwrap();
    session.apply(Command::Rewind(Rewind::Finding(fed)));
    let left = session.compare().unwrap();
    assert!(session.drill().unwrap().now().millis() <= was.findings[fed].clock_ms);
    // To go back again from a branch that isn't over keeps the run that was.
    session.apply(Command::Do("wait 1s".to_owned()));
    session.apply(Command::Rewind(Rewind::Mistake));
    session.apply(Command::Finish);
    let view = session.compare().unwrap();
    assert_eq!(view.was, left.was);
    assert!(
        view.gone.iter().any(|g| g.contains("fed the street")),
        "{view:?}"
    );
}

#[test]
fn the_terminal_compares_two_files_of_one_drill_and_refuses_those_of_two() {
    let folder = tempfile::tempdir().unwrap();
    let at = |name: &str| folder.path().join(name);
    fs::write(at("was.run"), saved("deadly-main-left-on", "no-slide", 1)).unwrap();
    fs::write(at("tried.run"), saved("cords-safe", "no-slide", 1)).unwrap();
    fs::write(
        at("other.run"),
        saved("slide-overload", "there-and-back", 1),
    )
    .unwrap();
    let answered = drill_in(folder.path(), "", &["compare", "was.run", "tried.run"]);
    assert_eq!(answered.status, Some(0), "{}", answered.err);
    for words in [
        "What became of people",
        "Found then",
        "fed the street",
        "Volts at the end",
    ] {
        assert!(
            answered.out.contains(words),
            "no {words:?} in: {}",
            answered.out
        );
    }
    let answered = drill_in(folder.path(), "", &["compare", "was.run", "other.run"]);
    assert_refused(&answered, &["other.run", "of another drill"]);
}

#[test]
fn a_number_on_the_page_of_findings_goes_back_and_the_drill_goes_on() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(
        folder.path().join("a.run"),
        saved("deadly-main-left-on", "no-slide", 1),
    )
    .unwrap();
    let typed = "\n\n99\n2\nset engine stopped\nfinish\n\n\ncompare\n\n\n";
    let answered = drill_in(folder.path(), typed, &["debrief", "a.run"]);
    assert!(
        answered.err.contains("No finding has this number"),
        "{}",
        answered.err
    );
    assert_eq!(
        answered.out.matches("1. What happened").count(),
        2,
        "{}",
        answered.out
    );
    assert!(
        answered.out.contains("Found then, and not any more:"),
        "{}",
        answered.out
    );
    let kept = fs::read_to_string(folder.path().join("a.run")).unwrap();
    assert_eq!(kept, saved("deadly-main-left-on", "no-slide", 1));
}
