//! The debrief: the learner's own words before the verdict, curves that are the trace's, and what to practice next.

use std::collections::BTreeSet;
use std::fs;

use outage_drill::file::{Library, Seal, Source};
use outage_drill::marking::{Rule, Verdict};
use outage_drill::scenario::course::OUTCOMES;
use outage_drill::session::view::{DebriefView, PHASES, PersonState, Phase};
use outage_drill::session::{Command, Session, play, replay};
use outage_drill::units::DrillTime;

use crate::playing::list;
use crate::terminal::drill_in;

fn library() -> Library {
    Library::shipped().0
}

fn played(name: &str, drill: &str) -> Session {
    let text = list(name);
    let source = Source {
        file: name,
        text: &text,
    };
    play(&library(), drill, 1, "en", source).unwrap().session
}

fn debrief(name: &str, drill: &str) -> DebriefView {
    played(name, drill).debrief().unwrap()
}

/// What was found when, and whether the run passes.
fn found(verdict: &Verdict) -> (bool, Vec<(Rule, DrillTime)>) {
    let findings = verdict.findings.iter().map(|f| (f.rule, f.at));
    (verdict.passed, findings.collect())
}

#[test]
fn pages_follow_each_other_and_the_verdict_is_the_last() {
    let mut session = played("slide-branches-first", "there-and-back");
    assert_eq!(PHASES.last(), Some(&Phase::Verdict));
    for phase in PHASES {
        assert_eq!(session.debrief().unwrap().phase, phase);
        session.apply(Command::Onward);
    }
    assert_eq!(session.debrief().unwrap().phase, Phase::Verdict);
    session.apply(Command::Back);
    assert_eq!(session.debrief().unwrap().phase, Phase::Next);
}

#[test]
fn a_run_that_is_over_is_seen_again_as_it_was_and_stays_as_it_is() {
    let mut session = played("deadly-main-left-on", "no-slide");
    let over = session.debrief().unwrap();
    let moments = session.moments();
    assert!(moments.len() > 5 && moments.is_sorted(), "{moments:?}");
    let mut lines = 0;
    for (place, at) in moments.iter().enumerate() {
        let view = session.seen_again(place).unwrap();
        assert_eq!((view.place, view.clock_ms), (place, at.millis()));
        assert!(view.log.len() >= lines, "{place}");
        lines = view.log.len();
        // The learner says first what happened.
        assert!(view.found.is_empty());
    }
    assert_eq!(lines, over.log.len());
    let harmed = |session: &Session, place: usize| {
        let people = session.seen_again(place).unwrap().street.people;
        people.iter().any(|p| p.state == PersonState::Harmed)
    };
    assert!(!harmed(&session, 0) && harmed(&session, usize::MAX));
    assert_eq!(session.debrief().unwrap(), over);
    while session.debrief().unwrap().phase != Phase::Why {
        session.apply(Command::Onward);
    }
    let shock = over.findings.iter().find(|f| f.rule == "shock").unwrap();
    let place = over.moments.iter().position(|at| *at == shock.clock_ms);
    let view = session.seen_again(place.unwrap()).unwrap();
    assert!(view.found.contains(&shock.what), "{:?}", view.found);
}

#[test]
fn a_pass_says_how_the_drill_ends_as_its_goal_asks() {
    for (list, drill, end, asked) in [
        (
            "slide-branches-first",
            "there-and-back",
            "the house is back on the utility.",
            "the house is back on the utility",
        ),
        (
            "slide-and-close-one-by-one",
            "slide-and-close",
            "the house runs on its own power.",
            "runs on its own source",
        ),
        (
            "where-to-put-it-green",
            "where-to-put-it",
            "all is as this drill asks.",
            "all is as this drill asks",
        ),
        (
            "loose-called",
            "loose-slide",
            "all is as this drill asks.",
            "all is as this drill asks",
        ),
    ] {
        let debrief = debrief(list, drill);
        assert!(debrief.passed, "{list}");
        assert!(
            debrief.summary.ends_with(end),
            "{list}: {}",
            debrief.summary
        );
        let restored = debrief.criteria.last().unwrap();
        assert!(restored.text.contains(asked), "{list}: {}", restored.text);
    }
}

#[test]
fn what_a_learner_says_is_kept_with_the_run_on_its_page_and_marks_nothing() {
    let mut session = played("deadly-main-left-on", "no-slide");
    let before = found(session.verdict().unwrap());
    for text in ["The main\nstayed on.", "Rushed.", "Not kept here."] {
        session.apply(Command::Reflect(text.to_owned()));
        session.apply(Command::Onward);
    }
    assert_eq!(found(session.verdict().unwrap()), before);
    let text = session.saved().unwrap();
    let source = Source {
        file: "a.run",
        text: &text,
    };
    let again = replay(&library(), "en", source).unwrap();
    assert_eq!(found(&again.verdict), before);
    let pages = again.session.debrief().unwrap().pages;
    let said: Vec<&str> = pages.iter().map(|p| p.said.as_str()).collect();
    assert_eq!(said, ["The main stayed on.", "Rushed.", "", "", ""]);
    assert_eq!(again.session.saved().unwrap(), text);
}

#[test]
fn curves_hold_what_the_trace_held_at_each_whole_second() {
    for (name, drill) in [
        ("slide-overload", "there-and-back"),
        ("slide-garage", "there-and-back"),
        ("right-cord-lamp-cord-coiled", "right-cord"),
    ] {
        let session = played(name, drill);
        let view = session.debrief().unwrap();
        let drill = session.drill().unwrap();
        let curve = |name: &str| view.series.iter().find(|s| s.name == name).unwrap();
        let moments = &drill.trace().moments;
        for second in 0..=view.length_ms / 1000 {
            let until = moments
                .iter()
                .take_while(|m| m.at.millis() <= second * 1000);
            let now = until.last().unwrap();
            let load = now.readings.generator.watts.max(0.0);
            assert_eq!(
                curve("load").at(second).to_bits(),
                load.to_bits(),
                "{name} {second}"
            );
            let [one, two] = now.readings.point("bus").legs_v;
            assert_eq!(curve("leg-one").at(second).to_bits(), one.to_bits());
            assert_eq!(curve("leg-two").at(second).to_bits(), two.to_bits());
            assert!(one.max(two).to_bits() == now.readings.point("bus").volts.to_bits());
        }
        assert_eq!(
            curve("load").limit,
            Some(drill.site().generator.spec.rated_w)
        );
    }
}

#[test]
fn gas_and_warmth_have_curves_where_there_were_any() {
    let has = |name: &str, drill: &str, series: &str| {
        let view = debrief(name, drill);
        view.series.iter().any(|s| s.name == series)
    };
    assert!(has("slide-garage", "there-and-back", "air"));
    assert!(!has("slide-branches-first", "there-and-back", "air-garage"));
    let view = debrief("right-cord-lamp-cord-coiled", "right-cord");
    let too_warm = |s: &&outage_drill::session::view::SeriesView| {
        s.unit == "°C" && s.points.iter().any(|(_, c)| Some(*c) > s.limit)
    };
    assert!(view.series.iter().any(|s| too_warm(&s)));
}

#[test]
fn each_finding_is_pinned_in_its_second() {
    let view = debrief("deadly-main-left-on", "no-slide");
    assert!(!view.pins.is_empty());
    assert_eq!(view.pins.len(), view.findings.len());
    for pin in &view.pins {
        assert_eq!(view.findings[pin.finding].clock_ms / 1000, pin.second);
    }
}

#[test]
fn what_comes_next_is_what_was_broken_and_each_drill_named_trains_it() {
    let library = library();
    for (name, drill, first) in [
        ("deadly-main-left-on", "no-slide", "isolate"),
        ("slide-garage", "there-and-back", "place-engine"),
        ("right-cord-lamp-cord-coiled", "right-cord", "choose-cords"),
    ] {
        let next = debrief(name, drill).next;
        assert_eq!(next.len(), 3, "{name}");
        assert!(next.iter().any(|n| n.skill == first), "{name}: {next:?}");
        let distinct: BTreeSet<&str> = next.iter().map(|n| n.drill.as_str()).collect();
        assert_eq!(distinct.len(), 3, "{name}: {next:?}");
        for next in next {
            let teaches = &library.scenario(&next.drill).unwrap().course.teaches;
            assert!(teaches.iter().any(|o| o.name() == next.skill), "{next:?}");
        }
    }
    let passed = debrief("slide-branches-first", "there-and-back");
    assert!(passed.passed);
    let own = &library.scenario("there-and-back").unwrap().course.teaches;
    for next in &passed.next {
        assert!(own.iter().all(|o| o.name() != next.skill), "{next:?}");
    }
}

#[test]
fn every_skill_is_trained_by_a_shipped_drill() {
    let library = library();
    for outcome in OUTCOMES {
        let trained = library
            .scenarios
            .iter()
            .any(|s| s.course.teaches.contains(&outcome));
        assert!(trained, "{}", outcome.name());
    }
}

/// A saved run in a folder: the deadly way.
fn saved() -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    let text = played("deadly-main-left-on", "no-slide").saved().unwrap();
    fs::write(folder.path().join("a.run"), text).unwrap();
    folder
}

#[test]
fn the_terminal_walks_the_pages_and_keeps_what_was_said_in_the_file() {
    let folder = saved();
    let answered = drill_in(
        folder.path(),
        "I hurried.\nSure.\n\n\n",
        &["debrief", "a.run"],
    );
    assert_eq!(answered.status, Some(1), "{}", answered.err);
    let at = |text: &str| {
        let found = answered.out.find(text);
        found.unwrap_or_else(|| panic!("no {text:?} in: {}", answered.out))
    };
    let order = [
        "1. What happened",
        "2. How it felt",
        "3. Why",
        "4. What next",
        "5. The verdict",
    ];
    assert!(order.map(at).is_sorted());
    assert!(at("Not passed") > at("5. The verdict"));
    // Numbers of curves are written as all others.
    assert!(
        answered.out.contains("rated load: 7,500\u{a0}W."),
        "{}",
        answered.out
    );
    let text = fs::read_to_string(folder.path().join("a.run")).unwrap();
    assert!(
        text.contains("\nhappened I hurried.\nfelt Sure.\nseal "),
        "{text}"
    );
    assert_eq!(Seal::of(&text), Seal::Whole);
    let back = drill_in(folder.path(), "\nback\n\n\n\n\n", &["debrief", "a.run"]);
    assert_eq!(
        back.out.matches("You said: I hurried.").count(),
        2,
        "{}",
        back.out
    );
}

#[test]
fn the_debrief_is_given_as_json_and_its_curves_as_a_table() {
    let folder = saved();
    let answered = drill_in(folder.path(), "", &["debrief", "a.run", "--json"]);
    let json: serde_json::Value = serde_json::from_str(&answered.out).unwrap();
    assert_eq!(json["run"]["passed"], false);
    for part in ["pages", "stood", "pins", "next", "series"] {
        assert!(!json[part].as_array().unwrap().is_empty(), "{part}");
    }
    let answered = drill_in(
        folder.path(),
        "",
        &["debrief", "a.run", "--series", "a.csv"],
    );
    assert_eq!(answered.status, Some(0), "{}", answered.err);
    let table = fs::read_to_string(folder.path().join("a.csv")).unwrap();
    let mut rows = table.lines();
    let head: Vec<&str> = rows.next().unwrap().split(',').collect();
    assert_eq!(&head[..2], ["second", "load W"]);
    let seconds = debrief("deadly-main-left-on", "no-slide").length_ms / 1000;
    let mut last = Vec::new();
    for (second, row) in (0..).zip(rows) {
        last = row
            .split(',')
            .map(|cell| cell.parse::<f64>().unwrap())
            .collect();
        assert_eq!(last.len(), head.len());
        assert!((last[0] - f64::from(second)).abs() < 0.5);
    }
    assert_eq!(last[0].to_string(), seconds.to_string());
}

#[test]
fn what_is_said_of_a_run_that_was_changed_does_not_seal_it_again() {
    let folder = saved();
    let path = folder.path().join("a.run");
    let text = fs::read_to_string(&path).unwrap();
    fs::write(&path, text.replacen("seed 1\n", "seed 1\nlearner Eve\n", 1)).unwrap();
    let answered = drill_in(folder.path(), "I hurried.\n\n\n\n\n", &["debrief", "a.run"]);
    let told = "This run was changed after it was saved";
    assert!(answered.out.contains(told), "{}", answered.out);
    let kept = fs::read_to_string(&path).unwrap();
    assert!(kept.contains("\nhappened I hurried.\n"), "{kept}");
    assert_eq!(Seal::of(&kept), Seal::Broken, "{kept}");
}
