//! Every wish of a learner gets an answer in words: a wait says how long it was and what ended it, a slide says what it does or why it stays.
//!
//! Beside them what a view says first or not at all: harm before the verdict, no heading over nothing, no number where nothing was measured.

use outage_drill::explain::{Told, explain, told};
use outage_drill::file::{Library, Source};
use outage_drill::marking::Rule;
use outage_drill::session::view::{DebriefView, WireKind};
use outage_drill::session::{Command, Notice, Practice, Session, play};
use outage_drill::units::portable;
use outage_drill::words::{Arg, REFERENCE, Unit};

use crate::explained;
use crate::playing::list;

fn opened(drill: &str, practice: Practice) -> Session {
    let mut session = Session::new(Library::shipped().0, REFERENCE);
    session.apply(Command::Open {
        drill: drill.to_owned(),
        practice,
        seed: 1,
    });
    session
}

/// The one answer among what a command led to.
fn answer(notices: &[Notice]) -> &str {
    let answers: Vec<&str> = notices
        .iter()
        .filter_map(|n| match n {
            Notice::Answered(text) => Some(text.as_str()),
            Notice::Done(_)
            | Notice::Refused(_)
            | Notice::Happened(_)
            | Notice::Learnt(_)
            | Notice::Consequence
            | Notice::Over
            | Notice::Unknown(_) => None,
        })
        .collect();
    let [one] = answers.as_slice() else {
        panic!("not one answer: {notices:?}");
    };
    one
}

#[test]
fn a_wait_for_something_to_happen_says_how_long_it_was_and_what_ended_it() {
    let mut session = opened("there-and-back", Practice::Coached);
    let notices = session.apply(Command::WaitForEvent);
    let told = answer(&notices);
    assert!(told.contains("30\u{a0}s"), "{told}");
    let happened = notices.iter().find_map(|n| match n {
        Notice::Happened(text) => Some(text),
        Notice::Done(_)
        | Notice::Refused(_)
        | Notice::Learnt(_)
        | Notice::Answered(_)
        | Notice::Consequence
        | Notice::Over
        | Notice::Unknown(_) => None,
    });
    assert!(told.contains(happened.unwrap()), "{told}");
}

#[test]
fn a_wait_in_which_nothing_happens_says_so_and_the_longest_is_ten_minutes() {
    let mut session = opened("there-and-back", Practice::Coached);
    let mut quiet = Vec::new();
    for _ in 0..60 {
        if session.verdict().is_some() {
            break;
        }
        let notices = session.apply(Command::WaitForEvent);
        let told = answer(&notices).to_owned();
        if !notices.iter().any(|n| matches!(n, Notice::Happened(_))) {
            quiet.push(told);
        }
        while session.consequence().is_some() {
            session.apply(Command::Understood);
        }
    }
    let ten = quiet.iter().any(|told| told.contains("10 minutes"));
    assert!(ten, "{quiet:?}");
    // In a test what cannot be seen ends a wait without being told.
    let mut assessed = opened("there-and-back", Practice::Assessed);
    for _ in 0..12 {
        let notices = assessed.apply(Command::WaitForEvent);
        let told = answer(&notices);
        assert!(!told.contains("crew"), "{told}");
    }
}

#[test]
fn a_slide_says_what_it_does_with_a_handle_and_why_it_stays() {
    let mut session = opened("there-and-back", Practice::Coached);
    let stays = |session: &mut Session| {
        let notices = session.apply(Command::Do("set slide up".to_owned()));
        answer(&notices).to_owned()
    };
    let mut told = vec![stays(&mut session)];
    let moved = |session: &mut Session, line: &str| {
        let notices = session.apply(Command::Do(line.to_owned()));
        let Some(Notice::Done(text)) = notices.first() else {
            panic!("{line}: {notices:?}");
        };
        assert!(text.contains("The slide"), "{line}: {text}");
        assert!(session.log().lines.iter().any(|l| l.text == *text));
        text.clone()
    };
    moved(&mut session, "set main off");
    told.push(stays(&mut session));
    let on = moved(&mut session, "set generator-breaker on");
    assert!(on.contains("main breaker"), "{on}");
    told.push(stays(&mut session));
    moved(&mut session, "set generator-breaker off");
    let ids = [
        "slide-stays-main",
        "slide-by-itself",
        "slide-stays-generator",
    ];
    assert_eq!(told, ids.map(|id| session.say(id)));
}

#[test]
fn where_no_slide_is_there_nothing_is_said_of_one() {
    let mut session = opened("no-slide", Practice::Coached);
    let notices = session.apply(Command::Do("slide up".to_owned()));
    assert!(
        matches!(notices.as_slice(), [Notice::Unknown(_)]),
        "{notices:?}"
    );
    let notices = session.apply(Command::Do("set main off".to_owned()));
    assert!(
        matches!(notices.first(), Some(Notice::Done(text)) if !text.contains("slide")),
        "{notices:?}"
    );
}

/// A kept list as it was played, and its debrief.
pub(crate) fn debrief(drill: &str, actions: &str) -> (Session, DebriefView) {
    let text = list(actions);
    let source = Source {
        file: actions,
        text: &text,
    };
    let played = play(&Library::shipped().0, drill, 1, REFERENCE, source).unwrap();
    let view = played.session.debrief().unwrap();
    (played.session, view)
}

#[test]
fn a_verdict_says_first_who_or_what_came_to_harm() {
    for (drill, actions, harm) in [
        ("there-and-back", "slide-hot-refuel", "debrief-harm-burned"),
        ("no-slide", "deadly-two-plugs", "debrief-harm-killed"),
        ("tingle", "tingle-lifted-live", "debrief-harm-hurt"),
        ("hands-off", "standby-service-hands-in", "debrief-harm-hurt"),
    ] {
        let (session, view) = debrief(drill, actions);
        let first = session.say(harm);
        assert!(
            view.heading.starts_with(&first),
            "{actions}: {}",
            view.heading
        );
    }
    let (session, view) = debrief("there-and-back", "slide-nothing");
    assert_eq!(view.heading, session.say("debrief-not-passed"));
}

#[test]
fn no_finding_without_stages_has_a_heading_for_them() {
    let mut n_plain = 0;
    for (drill, actions) in [
        ("there-and-back", "slide-hot-refuel"),
        ("there-and-back", "slide-nothing"),
        ("there-and-back", "slide-half-way"),
        ("garage-door-open", "garage-door-open-half"),
        ("no-slide", "deadly-two-plugs"),
        ("first-light", "first-light-early"),
        ("headache", "headache-stayed"),
    ] {
        for finding in debrief(drill, actions).1.findings {
            let rule = &finding.rule;
            assert_eq!(
                finding.heading.is_empty(),
                finding.path.is_empty(),
                "{rule}"
            );
            n_plain += u32::from(finding.path.is_empty());
        }
    }
    assert!(n_plain >= 5, "{n_plain}");
}

/// Stages that tell nothing of how a thing stands, but for what holds the energy back or lies behind that.
const BEHIND: [&str; 4] = [
    "stage-open",
    "stage-behind",
    "stage-behind-on",
    "stage-work",
];

#[test]
fn no_stage_shows_no_volts_beside_something_that_is_live() {
    let ways = explained::all().iter().flat_map(|e| {
        let findings = e.played.verdict.findings.iter();
        findings.map(move |f| (e, f))
    });
    let mut n_stages = 0;
    let mut wrong = Vec::new();
    for (e, finding) in ways.filter(|(_, f)| told(f.rule) == Told::Way && f.rule != Rule::NotAsked)
    {
        for stage in explain(&e.played.drill, finding).path {
            n_stages += 1;
            let dead = |args: &[(&str, Arg)]| {
                let none = |arg: &Arg| matches!(arg, Arg::Quantity(v, Unit::Volts) if *v < 0.5);
                args.iter().any(|(_, arg)| none(arg))
            };
            let untold = dead(&stage.value.args) && !dead(&stage.text.args);
            let behind = BEHIND.contains(&stage.text.id.as_str());
            if untold && !behind {
                wrong.push(format!("{}: {:?} {stage:?}", e.file, finding.rule));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(n_stages > 1000, "{n_stages}");
}

#[test]
fn amps_of_two_sides_that_differ_are_both_told_leg_1_first_and_add_up_to_the_watts() {
    let session = opened("there-and-back", Practice::Coached);
    let street = session.street().unwrap();
    let drop = street.wires.iter().find(|w| w.kind == WireKind::Drop);
    let told = &drop.expect("a house has a drop").amps;
    let amps = told.split(" and ").map(|side| {
        let digits = side.trim_end_matches('A').trim();
        digits.parse::<f64>().expect(told)
    });
    let amps: Vec<f64> = amps.collect();
    let readings = session.drill().unwrap().readings();
    let reading = readings.point("bus");
    let legs = readings.phasors_of("drop").expect("a drop has two legs");
    let (Some(volts), [one, two]) = (reading.phasors, legs) else {
        panic!("the utility's volts are one turning pair");
    };
    let exact = [one, two].map(portable::magnitude);
    assert_eq!(amps.len(), 2, "{told}");
    for (own, exact) in amps.iter().zip(exact) {
        assert!((own - exact).abs() < 0.006 * exact, "{told}: {exact}");
    }
    // Both legs' volts times their amps are the watts that the house takes, but for what its motors borrow.
    let apparent: f64 = volts
        .iter()
        .zip(&amps)
        .map(|(v, a)| portable::magnitude(*v) * a)
        .sum();
    let watts = volts
        .iter()
        .zip([one, two])
        .map(|(v, a)| (v * a.conj()).re)
        .sum::<f64>()
        .abs();
    assert!(
        watts <= apparent * 1.006 && watts > 0.8 * apparent,
        "{watts} of {apparent}"
    );
}
