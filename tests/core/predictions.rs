//! Ask before telling: the truth of a prediction is what really comes of it, it never touches a verdict, and a test never stops for one.

use outage_drill::drill::Drill;
use outage_drill::file::Library;
use outage_drill::scenario::prediction::{Cue, Foretold, Prediction};
use outage_drill::session::{Command, Notice, Practice, Session};
use outage_drill::shipped::LISTS;
use outage_drill::units::DrillTime;
use outage_drill::words::{Message, OFFERED, Unit};

use std::collections::BTreeSet;

use crate::playing::list;

fn open(library: &Library, drill: &str, practice: Practice) -> Session {
    let mut session = Session::new(library.clone(), "en").asking();
    session.apply(Command::Open {
        drill: drill.to_owned(),
        practice,
        seed: 1,
    });
    session
}

fn shipped() -> Library {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    library
}

fn prediction(session: &Session) -> Option<Prediction> {
    let name = session.asked()?.name;
    let all = &session.drill().unwrap().scenario().predictions;
    Some(all.iter().find(|p| p.name == name).unwrap().clone())
}

fn answer(session: &mut Session, sure: u8) {
    let asked = session.asked().unwrap();
    let answer = if asked.number.is_some() {
        "120".to_owned()
    } else {
        asked.choices[0].id.clone()
    };
    let told = session.apply(Command::Predict { answer, sure });
    assert!(told.is_empty(), "{told:?}");
}

/// What a drill that went on by itself reads, in the words in which a truth is told.
fn really(session: &Session, drill: &Drill, about: &Foretold) -> String {
    let (readings, site) = (drill.readings(), drill.site());
    let live = |point: &str| {
        let at = readings.point(point);
        at.volts >= 1.0 || at.volts_across >= 1.0
    };
    let number = |value: f64, unit: Unit| Message::new("value").quantity("value", value, unit);
    let choice = |name: &str| Message::new(format!("answer-{name}"));
    let so = match about {
        Foretold::Volts(point) => number(readings.point(point).volts, Unit::Volts),
        Foretold::Amps(thing) => number(readings.amps_of(thing), Unit::Amps),
        Foretold::Watts => number(readings.generator.asked_w, Unit::Watts),
        Foretold::Heat(index) => {
            let cord = &site.cords[*index];
            let amps = readings.amps_of(&cord.name);
            let celsius = drill.conditions().cord(*index).celsius;
            number(amps * cord.make.voltage_drop_v(amps, celsius), Unit::Watts)
        }
        Foretold::Ppm(_) => number(drill.conditions().ppm(), Unit::Ppm),
        Foretold::Holds(index, _) => {
            let condition = drill.conditions().cord(*index);
            let over = condition.celsius + condition.spot_k > site.cords[*index].make.rated_c();
            choice(if over { "too-hot" } else { "holds" })
        }
        Foretold::LiveOf(one, other) => match (live(one), live(other)) {
            (true, true) => choice("both"),
            (false, false) => choice("neither"),
            (true, false) => Message::new(format!("name-{one}")),
            (false, true) => Message::new(format!("name-{other}")),
        },
        Foretold::Answer(about) => choice(&about.truth(site, drill.positions(), readings)),
    };
    session.say_message(&Message::new("predict-truth").said("truth", so))
}

/// Understands what is held, consequences first.
fn go_on(session: &mut Session) {
    while session.consequence().is_some() {
        session.apply(Command::Understood);
    }
    session.apply(Command::Understood);
}

/// Answers each question that comes, goes on, and holds the truth told to what the drill then reads; the names of those asked.
fn hold_to_the_drill(session: &mut Session) -> Vec<String> {
    let mut asked = Vec::new();
    while let Some(prediction) = prediction(session) {
        answer(session, 70);
        let told = session.reveal().unwrap();
        assert!(!told.stages.is_empty(), "{}", prediction.name);
        let mut drill = session.drill().unwrap().clone();
        go_on(session);
        if matches!(prediction.at, Cue::Before(..)) {
            // Another question before the same deed holds it back: it is passed over in a copy.
            let mut ahead = session.clone();
            while ahead.asked().is_some() {
                go_on(&mut ahead);
            }
            drill = ahead.drill().unwrap().clone();
        }
        drill.advance(prediction.about.wait());
        let really = really(session, &drill, &prediction.about);
        assert_eq!(told.truth, really, "{}", prediction.name);
        asked.push(prediction.name);
    }
    asked
}

#[test]
fn the_truth_told_is_what_the_drill_reads_when_it_has_really_come_to_it() {
    let library = shipped();
    let mut wanted = BTreeSet::new();
    for scenario in &library.scenarios {
        let names = scenario.predictions.iter().map(|p| p.name.clone());
        wanted.extend(names.map(|name| (scenario.name.clone(), name)));
    }
    let drills: BTreeSet<&String> = wanted.iter().map(|(drill, _)| drill).collect();
    assert!(drills.len() >= 12, "{drills:?}");
    let headed = LISTS.iter().filter_map(|(_, text)| {
        let drill = text.lines().find_map(|l| l.strip_prefix("# drill: "))?;
        Some((drill.to_owned(), (*text).to_owned()))
    });
    let mut played: Vec<_> = headed.filter(|(d, _)| drills.contains(d)).collect();
    let off = "set main off".to_owned();
    played.push(("inlet-surprise".to_owned(), off));
    played.push(("loose-slide".to_owned(), list("loose-main-on")));
    for (drill, text) in played {
        let mut session = open(&library, &drill, Practice::Coached);
        let mut asked = hold_to_the_drill(&mut session);
        for line in text.lines() {
            session.apply(Command::Do(line.to_owned()));
            while session.consequence().is_some() {
                session.apply(Command::Understood);
            }
            asked.extend(hold_to_the_drill(&mut session));
        }
        for name in asked {
            wanted.remove(&(drill.clone(), name));
        }
    }
    assert!(wanted.is_empty(), "never asked: {wanted:?}");
}

#[test]
fn what_is_asked_changes_no_bit_of_the_drill_and_no_finding() {
    let library = shipped();
    for (drill, name) in [
        ("slide-and-close", "slide-and-close-one-by-one"),
        ("coil-in-the-corner", "coil-in-the-corner-left"),
        ("garage-door-open", "garage-door-open-wide"),
    ] {
        let end = |practice: Practice| {
            let mut session = open(&library, drill, practice);
            let mut questions = 0;
            for line in list(name).lines() {
                session.apply(Command::Do(line.to_owned()));
                while session.consequence().is_some() {
                    session.apply(Command::Understood);
                }
                while session.asked().is_some() {
                    questions += 1;
                    answer(&mut session, 90);
                    session.apply(Command::Understood);
                }
            }
            session.apply(Command::Finish);
            let run = session.drill().unwrap().run().clone();
            (run, session.verdict().unwrap().clone(), questions)
        };
        let (held, marked, questions) = end(Practice::Coached);
        let (run, verdict, never) = end(Practice::Assessed);
        assert!(questions > 0, "{drill}");
        assert_eq!(never, 0, "{drill}: a test never stops");
        assert_eq!(held, run, "{drill}");
        assert_eq!(marked.findings, verdict.findings, "{drill}");
        assert_eq!(marked.passed, verdict.passed, "{drill}");
    }
}

#[test]
fn a_front_end_that_cannot_ask_is_never_held_up() {
    let mut session = Session::new(shipped(), "en");
    session.apply(Command::Open {
        drill: "one-plug-two-ends".to_owned(),
        practice: Practice::Coached,
        seed: 1,
    });
    assert_eq!(session.asked(), None);
    session.apply(Command::Wait(DrillTime::from_secs(60)));
    assert_eq!(session.log().clock_ms, 60_000);
}

#[test]
fn a_room_s_hands_make_bars_a_choice_each_and_the_right_one_is_marked() {
    // The main was left on: the line up the street stands at thousands of volts.
    let mut session = Session::new(shipped(), "en").asking();
    let drill = "what-the-line-felt".to_owned();
    session.apply(Command::Open {
        drill,
        practice: Practice::Coached,
        seed: 1,
    });
    session.apply(Command::WaitForEvent);
    let asked = session.asked().unwrap();
    let ids: Vec<&str> = asked.choices.iter().map(|c| c.id.as_str()).collect();
    assert_eq!(ids, ["12", "120", "240", "7200"]);
    let counts = [("120", 6), ("240", 3), ("7200", 2)];
    let counts = counts.map(|(id, n)| (id.to_owned(), n)).to_vec();
    assert!(session.apply(Command::Counts(counts)).is_empty());
    let view = session.reveal().unwrap();
    let bars: Vec<_> = view.bars.iter().map(|b| (b.count, b.right)).collect();
    assert_eq!(bars, [(0, false), (6, false), (3, false), (2, true)]);
    let shares: Vec<f32> = view.bars.iter().map(|b| b.share).collect();
    assert_eq!(shares, [0.0, 1.0, 0.5, 1.0 / 3.0]);
    assert_eq!(view.right, None);
    let told: Vec<&str> = view.stages.iter().map(|s| s.at.as_str()).collect();
    assert!(told.starts_with(&["generator"]), "{told:?}");
    assert!(told.contains(&"transformer"), "{told:?}");
    session.apply(Command::Understood);
    session.apply(Command::Finish);
    let debrief = session.debrief().unwrap().predictions;
    assert_eq!(debrief.lines.len(), 1);
    assert!(debrief.lines[0].said.starts_with("2 of 11"), "{debrief:?}");
    assert_eq!(debrief.score, "", "a room isn't asked how sure it is");
}

#[test]
fn while_it_holds_nothing_else_is_done_numbers_are_hidden_and_wrong_answers_are_told() {
    let mut session = open(&shipped(), "one-plug-two-ends", Practice::Coached);
    let told = |notices: Vec<Notice>| matches!(notices.as_slice(), [Notice::Unknown(_)]);
    let volts = |session: &Session| {
        let wires = session.street().unwrap().wires;
        wires.iter().filter(|w| !w.volts.is_empty()).count()
    };
    let choice = |answer: &str, sure| Command::Predict {
        answer: answer.to_owned(),
        sure,
    };
    assert_eq!(volts(&session), 0);
    assert!(told(session.apply(Command::Do("look street".to_owned()))));
    assert!(told(session.apply(Command::Wait(DrillTime::from_secs(9)))));
    assert!(told(session.apply(choice("both", 80))));
    assert!(told(session.apply(choice("bothe", 90))));
    assert!(told(session.apply(Command::Counts(Vec::new()))));
    let hands = vec![("nowhere".to_owned(), 3)];
    assert!(told(session.apply(Command::Counts(hands))));
    assert_eq!(session.drill().unwrap().run().actions.len(), 0);
    assert!(session.apply(choice("both", 90)).is_empty());
    assert_eq!(session.reveal().unwrap().right, Some(false));
    assert!(volts(&session) > 0);
    assert!(told(session.apply(choice("both", 90))), "once is enough");
    session.apply(Command::Understood);
    assert!(told(session.apply(choice("a lot", 90))));
    assert!(session.apply(choice("0", 50)).is_empty());
    assert_eq!(session.reveal().unwrap().right, Some(true));
    session.apply(Command::Understood);
    assert_eq!(session.asked(), None);
    assert!(session.apply(Command::Do("look street".to_owned())).len() > 1);
    session.apply(Command::Finish);
    let debrief = session.debrief().unwrap().predictions;
    // (0.9-0)² and (0.5-1)² are 0.81 and 0.25: 0.53 on average.
    assert!(debrief.score.contains("0.53"), "{debrief:?}");
    assert!(debrief.score.contains("1 of 2"), "{debrief:?}");
}

#[test]
fn what_was_passed_over_or_asked_before_going_back_is_not_asked_again() {
    let mut session = open(&shipped(), "one-plug-two-ends", Practice::Coached);
    session.apply(Command::Understood);
    assert_eq!(session.asked().unwrap().name, "street-line-volts");
    session.apply(Command::Understood);
    assert_eq!(session.asked(), None);
    session.apply(Command::Wait(DrillTime::from_secs(60)));
    let back = outage_drill::session::Rewind::To(DrillTime::ZERO);
    session.apply(Command::Rewind(back));
    session.apply(Command::Wait(DrillTime::from_secs(60)));
    assert_eq!(session.log().clock_ms, 60_000);
    session.apply(Command::Finish);
    assert!(session.debrief().unwrap().predictions.lines.is_empty());
}

#[test]
fn every_shipped_prediction_has_words_of_its_own_in_every_language() {
    let library = shipped();
    for language in OFFERED {
        let session = Session::new(library.clone(), language.tag);
        for scenario in &library.scenarios {
            for prediction in &scenario.predictions {
                let id = format!("predict-{}", prediction.name);
                let text = session.say(&id);
                assert!(text.ends_with('?'), "{}: {id}: {text}", language.tag);
            }
        }
    }
}

#[test]
fn a_question_without_words_of_its_own_is_put_together_with_its_place() {
    let library = shipped();
    let scenario = library.scenario("one-plug-two-ends").unwrap();
    let session = Session::new(library.clone(), "en");
    let said = |about: Foretold| session.say_message(&about.asked(&scenario.site));
    assert!(said(Foretold::Volts("service".to_owned())).contains("street"));
    let hour = said(Foretold::Ppm(DrillTime::from_secs(3600)));
    assert!(hour.contains("60 minutes"), "{hour}");
    assert!(matches!(
        scenario.predictions[0].at,
        Cue::At(DrillTime::ZERO)
    ));
}
