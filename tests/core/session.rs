//! The boundary that both front ends share: commands in, notices and views out.

use outage_drill::file::Library;
use outage_drill::session::view::{Fed, Flow, LogKind, WireKind};
use outage_drill::session::{Command, Notice, Practice, Rewind, Session, offered};
use outage_drill::units::DrillTime;
use outage_drill::units::portable::phasor;

/// The deadly way on the house without an interlock, up to the moment before the line is fed.
const NEARLY: [&str; 7] = [
    "wait 1m",
    "set generator-place yard",
    "set generator-breaker on",
    "set inlet-cord-house-end inlet",
    "set inlet-cord-generator-end generator",
    "set engine running",
    "wait 1m5s",
];

fn opened(drill: &str, practice: Practice) -> Session {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    let mut session = Session::new(library, "en");
    let drill = drill.to_owned();
    let notices = session.apply(Command::Open {
        drill,
        practice,
        seed: 1,
    });
    assert!(notices.is_empty(), "{notices:?}");
    session
}

fn do_all(session: &mut Session, lines: &[&str]) -> Vec<Notice> {
    lines
        .iter()
        .flat_map(|line| session.apply(Command::Do((*line).to_owned())))
        .collect()
}

fn wire(session: &Session, id: &str) -> outage_drill::session::view::WireView {
    let street = session.street().expect("a drill is open");
    street
        .wires
        .into_iter()
        .find(|w| w.id == id)
        .expect("a wire of this id")
}

#[test]
fn a_coached_learner_sees_the_truth_and_an_assessed_one_what_was_tested() {
    let coached = opened("there-and-back", Practice::Coached);
    assert_eq!(wire(&coached, "bus").fed, Fed::Utility);
    assert!(wire(&coached, "bus").volts.contains('V'));
    let mut assessed = opened("there-and-back", Practice::Assessed);
    assert_eq!(wire(&assessed, "bus").fed, Fed::Unknown);
    assert_eq!(wire(&assessed, "bus").volts, "");
    do_all(&mut assessed, &["wait 1m", "test bus"]);
    assert_eq!(wire(&assessed, "bus").fed, Fed::Dead);
    assert_eq!(wire(&assessed, "drop").fed, Fed::Unknown);
}

#[test]
fn a_test_is_stale_once_something_was_moved() {
    let mut session = opened("there-and-back", Practice::Assessed);
    do_all(&mut session, &["wait 1m", "test bus", "set main off"]);
    assert_eq!(wire(&session, "bus").fed, Fed::Unknown);
}

#[test]
fn a_tester_tells_live_from_dead_and_nothing_of_the_source() {
    let mut session = opened("there-and-back", Practice::Assessed);
    do_all(&mut session, &["test bus"]);
    let bus = wire(&session, "bus");
    assert_eq!(bus.fed, Fed::Unknown);
    assert_eq!(bus.word, session.say("fed-live"));
    assert!(!bus.volts.is_empty());
}

#[test]
fn a_wire_on_the_ground_is_never_told_to_be_dead_but_to_a_line_worker() {
    let mut session = opened("there-and-back", Practice::Coached);
    do_all(&mut session, &["wait 2m", "look street"]);
    let street = session.street().expect("open");
    let fallen = street.broken_spans.first().expect("the storm broke a span");
    assert_ne!(wire(&session, fallen).fed, Fed::Dead);
    let beside = street.wires.iter().filter(|w| w.kind == WireKind::Span);
    assert!(
        beside
            .filter(|w| w.id != *fallen)
            .all(|w| w.fed == Fed::Dead)
    );
    let told = wire(&session, fallen).word;
    assert!(told.contains("treated as live"), "{told}");

    let mut session = opened("visible-break", Practice::Coached);
    do_all(&mut session, &["set feeder open"]);
    let street = session.street().expect("open");
    assert!(street.fallen_spans.is_empty() && !street.broken_spans.is_empty());
    let told = street.broken_spans.iter().map(|id| wire(&session, id).word);
    assert!(told.into_iter().all(|word| !word.contains("treated")));
}

#[test]
fn a_coached_mistake_is_held_at_once_and_an_assessed_one_stays_sealed() {
    let mut coached = opened("no-slide", Practice::Coached);
    do_all(&mut coached, &NEARLY);
    assert!(coached.consequence().is_none());
    let notices = do_all(&mut coached, &["set generator-output on"]);
    assert!(notices.contains(&Notice::Consequence), "{notices:?}");
    let held = coached.consequence().expect("a consequence is held");
    assert!(
        held.stages.iter().any(|s| s.at == "transformer"),
        "{held:?}"
    );
    let hint = |session: &mut Session| {
        session.apply(Command::Hint);
        session.street().expect("open").hint
    };
    let read_first = coached.say("guide-read-first");
    assert_eq!(hint(&mut coached), read_first);
    coached.apply(Command::Understood);
    assert_ne!(coached.consequence(), Some(held));
    while coached.consequence().is_some() {
        coached.apply(Command::Understood);
    }
    assert_ne!(hint(&mut coached), read_first);

    let mut assessed = opened("no-slide", Practice::Assessed);
    do_all(&mut assessed, &NEARLY);
    let notices = do_all(&mut assessed, &["set generator-output on"]);
    assert!(!notices.contains(&Notice::Consequence), "{notices:?}");
    assert!(assessed.consequence().is_none() && assessed.debrief().is_none());
    assessed.apply(Command::Finish);
    let debrief = assessed.debrief().expect("the drill is over");
    assert!(!debrief.passed && debrief.findings.iter().any(|f| f.rule == "line-fed"));
}

#[test]
fn a_refused_action_is_an_answer_and_the_drill_goes_on() {
    let mut session = opened("there-and-back", Practice::Coached);
    let notices = do_all(&mut session, &["set generator-breaker on"]);
    assert!(
        matches!(notices.as_slice(), [Notice::Refused(why)] if !why.contains('[')),
        "{notices:?}"
    );
    assert_eq!(
        session.log().lines.last().map(|l| l.kind),
        Some(LogKind::Refused)
    );
    let notices = do_all(&mut session, &["set main off"]);
    assert!(
        notices.iter().any(|n| matches!(n, Notice::Done(_))),
        "{notices:?}"
    );
}

#[test]
fn an_unknown_word_is_answered_with_the_nearest_known_one() {
    let mut session = opened("there-and-back", Practice::Coached);
    let notices = do_all(&mut session, &["set man off"]);
    assert!(
        matches!(notices.as_slice(), [Notice::Unknown(text)] if text.contains("main")),
        "{notices:?}"
    );
    let before = session.log().clock_ms;
    do_all(
        &mut session,
        &["dance", "test moon", "look nowhere", "wait soon"],
    );
    assert_eq!(
        session.log().clock_ms,
        before,
        "what is not understood takes no time"
    );
}

#[test]
fn another_language_says_the_same_drill() {
    let mut session = opened("there-and-back", Practice::Coached);
    let english = session.street().expect("open").goal;
    session.apply(Command::Speak("es".to_owned()));
    let spanish = session.street().expect("open").goal;
    assert_ne!(english, spanish);
    assert_eq!(session.languages().iter().filter(|l| l.current).count(), 1);
    assert!(matches!(
        session.apply(Command::Speak("tlh".to_owned())).as_slice(),
        [Notice::Unknown(_)]
    ));
}

#[test]
fn try_again_starts_the_same_drill_with_the_same_seed() {
    let mut session = opened("no-slide", Practice::Coached);
    do_all(&mut session, &NEARLY);
    session.apply(Command::Finish);
    session.apply(Command::Retry);
    assert_eq!(session.log().clock_ms, 0);
    assert!(session.debrief().is_none() && session.street().is_some());
    let run = session.drill().map(outage_drill::drill::Drill::run);
    assert_eq!(run.map(|r| (r.seed, r.actions.len())), Some((1, 0)));
}

#[test]
fn another_one_starts_the_same_drill_with_the_next_seed_and_says_what_is_varied() {
    let mut session = opened("there-and-back", Practice::Assessed);
    let (library, _) = Library::shipped();
    let words = outage_drill::words::Words::new("en");
    let offered = offered(&library, "there-and-back", &words).unwrap();
    assert!(offered.len() > 3);
    let seed = |s: &Session| s.drill().map(|d| d.run().seed).unwrap();
    let mut told = Vec::new();
    for expected in 2..100 {
        session.apply(Command::Another);
        assert_eq!(seed(&session), expected);
        assert_eq!(session.shelf().drills[0].another_seed, expected + 1);
        let street = session.street().unwrap();
        let hidden = offered.iter().find(|v| v.name == "slide-loose").unwrap();
        assert!(!street.variation.contains(&hidden.sentence));
        session.apply(Command::Finish);
        let all = session.debrief().unwrap().variation;
        assert!(all.len() >= street.variation.len());
        assert!(offered.iter().any(|v| v.sentence == all), "{all}");
        told.push(all);
    }
    assert!(offered.iter().all(|v| told.contains(&v.sentence)));
}

#[test]
fn waiting_for_something_ends_with_it_or_after_ten_minutes() {
    let mut session = opened("there-and-back", Practice::Coached);
    session.apply(Command::WaitForEvent);
    assert_eq!(
        session.log().clock_ms,
        30_000,
        "the outage comes at half a minute"
    );
    for _ in 0..40 {
        let before = session.log().clock_ms;
        session.apply(Command::WaitForEvent);
        let after = session.log().clock_ms;
        assert!(after - before <= 600_000, "{before} to {after}");
    }
    assert!(
        session.log().over && session.debrief().is_some(),
        "the drill ends by itself"
    );
    assert!(matches!(
        session
            .apply(Command::Wait(DrillTime::from_secs(1)))
            .as_slice(),
        [Notice::Unknown(_)]
    ));
}

#[test]
fn every_place_and_every_deed_can_be_opened_and_done() {
    let mut session = opened("no-slide", Practice::Coached);
    let places = session.street().expect("open").places;
    for place in places {
        let close = session
            .close(&place.id)
            .expect("a place of the street opens");
        for deed in &close.deeds {
            let notices = session.apply(Command::Do(deed.line.clone()));
            assert!(
                !notices.iter().any(|n| matches!(n, Notice::Unknown(_))),
                "{}: {notices:?}",
                deed.line
            );
        }
        for control in &close.controls {
            for choice in &control.choices {
                let line = format!("set {} {}", control.id, choice.id);
                let notices = session.apply(Command::Do(line.clone()));
                assert!(
                    !notices.iter().any(|n| matches!(n, Notice::Unknown(_))),
                    "{line}: {notices:?}"
                );
            }
        }
    }
    assert!(session.close("attic").is_none());
}

#[test]
fn an_assessed_learner_sees_the_crew_as_it_was_at_the_last_look() {
    let mut session = opened("there-and-back", Practice::Assessed);
    let crew = |session: &Session| {
        let people = session.street().expect("open").people;
        people
            .into_iter()
            .find(|p| p.id == "crew")
            .expect("a crew")
            .word
    };
    session.apply(Command::Wait(DrillTime::from_secs(600)));
    assert_eq!(crew(&session), session.say("state-crew-unseen"));
    do_all(&mut session, &["look street"]);
    assert_eq!(crew(&session), session.say("state-crew-hands-on"));
    session.apply(Command::Wait(DrillTime::from_secs(1500)));
    assert_eq!(
        crew(&session),
        session.say("state-crew-hands-on"),
        "not looked again"
    );
}

#[test]
fn going_back_before_a_mistake_brings_everything_back_as_it_was() {
    let mut session = opened("no-slide", Practice::Coached);
    do_all(&mut session, &NEARLY);
    while session.consequence().is_some() {
        session.apply(Command::Understood);
    }
    let (log, street) = (session.log().lines, session.street());
    do_all(&mut session, &["set generator-output on"]);
    assert!(session.consequence().is_some(), "the line is fed");
    session.apply(Command::Rewind(Rewind::Mistake));
    assert!(session.consequence().is_none());
    assert_eq!(session.log().lines, log);
    assert_eq!(session.street(), street);
    do_all(&mut session, &["set engine stopped"]);
    session.apply(Command::Finish);
    assert!(!session.debrief().unwrap().rewound.is_empty());
}

#[test]
fn a_test_is_rewound_only_when_it_is_over() {
    let mut session = opened("there-and-back", Practice::Assessed);
    do_all(&mut session, &["set engine running"]);
    let refused = session.apply(Command::Rewind(Rewind::To(DrillTime::ZERO)));
    assert!(matches!(refused.as_slice(), [Notice::Unknown(_)]));
    session.apply(Command::Finish);
    assert!(session.verdict().is_some());
    session.apply(Command::Rewind(Rewind::Finding(0)));
    assert!(session.verdict().is_none(), "it goes on from there");
}

#[test]
fn phasors_of_volts_and_amps_make_the_watts_that_the_solver_tells() {
    let mut session = opened("there-and-back", Practice::Coached);
    let lines = [
        "wait 1m",
        "set main off",
        "set generator-place yard",
        "set inlet-cord-lay flat",
        "set inlet-cord-house-end inlet",
        "set inlet-cord-generator-end generator",
        "set engine running",
        "wait 70s",
        "set generator-output on",
        "set generator-breaker on",
        "wait 10s",
    ];
    for line in lines {
        do_all(&mut session, &[line]);
        while session.consequence().is_some() {
            session.apply(Command::Understood);
        }
    }
    let drill = session.drill().expect("a drill is open");
    let watts = drill.readings().generator.watts;
    let close = session.close("generator").expect("a place");
    let [dial] = close.phasors.as_slice() else {
        panic!("one point at the generator: {:?}", close.phasors);
    };
    let turned = dial.degrees.expect("both legs are live");
    // A set with one winding for both legs: they stand half a turn apart, but for what each drops.
    assert!(turned.abs() > 170.0, "{turned}");
    let power = |amps: &outage_drill::session::view::TurnedView| {
        let (volts, angle) = if amps.leg == 1 {
            (dial.legs_v[0], amps.degrees)
        } else {
            (dial.legs_v[1], amps.degrees - turned)
        };
        volts * phasor(amps.amps, angle).re
    };
    let told: f64 = dial.amps.iter().map(power).sum();
    assert!(watts > 500.0, "{watts}");
    assert!((told - watts).abs() < 0.01 * watts, "{told} for {watts}");
}

#[test]
fn current_shows_on_what_carries_it_also_past_a_breaker_that_carries_none() {
    let mut session = opened("six-handles", Practice::Coached);
    let running = [
        "wait 60s",
        "set generator-place yard",
        "set inlet-cord-house-end inlet",
        "set inlet-cord-generator-end generator",
        "set engine running",
        "wait 70s",
        "set generator-output on",
    ];
    do_all(&mut session, &running);
    assert_eq!(wire(&session, "branch-fridge").flow, Flow::None);
    let moved = [
        "set handle-fridge off",
        "set handle-fridge generator",
        "wait 5s",
    ];
    do_all(&mut session, &moved);
    let fridge = wire(&session, "branch-fridge");
    assert_eq!((fridge.fed, fridge.flow), (Fed::Generator, Flow::Forward));

    let mut session = opened("no-slide", Practice::Coached);
    do_all(&mut session, &["wait 1m", "set main off"]);
    do_all(&mut session, &NEARLY);
    do_all(&mut session, &["set generator-output on", "wait 5s"]);
    let bus = wire(&session, "bus");
    assert_eq!((bus.fed, bus.flow), (Fed::Generator, Flow::Backward));
}
