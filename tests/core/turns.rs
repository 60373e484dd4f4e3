//! What an instructor makes happen while a drill runs: it comes, what follows is computed, it is kept in the run, and never in a test.

use outage_drill::drill::{Action, Drill, Event, Outcome, TURNS, Turn};
use outage_drill::file::{Library, Source, read_run, write_run};
use outage_drill::scenario::Happening;
use outage_drill::session::{Command, Notice, Practice, Session};
use outage_drill::units::DrillTime;

use crate::playing::{every_bit, shipped};

fn begun(drill: &str, minutes: u64) -> Drill {
    let mut drill = Drill::start(&shipped(drill), 1).expect("a shipped drill starts");
    drill.advance(DrillTime::from_secs(60 * minutes));
    drill
}

fn turn(drill: &mut Drill, turn: Turn) -> Outcome {
    drill.act(&Action::Happen(turn))
}

fn has(drill: &Drill, wanted: &Event) -> bool {
    drill.trace().events().any(|(_, event)| event == wanted)
}

#[test]
fn what_comes_next_comes_at_once_and_the_rest_follows_at_its_distance() {
    let mut drill = begun("there-and-back", 0);
    let told: Vec<_> = drill.scenario().story.iter().map(|t| t.what).collect();
    assert_eq!(told.first(), Some(&Happening::Outage));
    let due = drill.clone();
    assert_eq!(turn(&mut drill, Turn::Sooner), Outcome::Done);
    assert_eq!(drill.trace().outage_at(), Some(DrillTime::ZERO));
    // What was a minute and more away has moved with it: as far from the outage as before.
    let since_outage = |mut drill: Drill| {
        drill.advance(DrillTime::from_secs(3600));
        let outage = drill.trace().outage_at().expect("the outage comes");
        let returned = drill.trace().return_at().expect("the utility returns");
        returned.since(outage)
    };
    assert_eq!(since_outage(drill), since_outage(due));
}

#[test]
fn the_utility_fails_once_more_and_comes_back_when_it_is_let() {
    let mut drill = begun("there-and-back", 60);
    assert!(
        drill.readings().point("bus").volts > 100.0,
        "the utility is back"
    );
    assert_eq!(turn(&mut drill, Turn::UtilityFails), Outcome::Done);
    assert!(drill.readings().point("bus").volts < 1.0);
    assert!(!drill.turns().contains(&Turn::UtilityFails));
    assert_eq!(turn(&mut drill, Turn::UtilityReturns), Outcome::Done);
    assert!(drill.readings().point("bus").volts > 100.0);
}

#[test]
fn the_utility_does_not_return_into_the_hands_of_a_crew_or_onto_a_broken_span() {
    let mut drill = begun("there-and-back", 0);
    let mut offered = Vec::new();
    for _ in 0..60 {
        drill.advance(DrillTime::from_secs(60));
        if drill.turns().contains(&Turn::UtilityReturns) {
            offered.push(drill.now());
        }
    }
    assert!(
        offered.is_empty(),
        "the story brings it back itself: {offered:?}"
    );
    let refused = turn(&mut begun("there-and-back", 10), Turn::UtilityReturns);
    assert_eq!(refused, Outcome::Refused("refused-no-turn".to_owned()));
}

#[test]
fn a_wire_of_the_drop_comes_loose_and_is_mended() {
    let mut drill = begun("there-and-back", 0);
    assert_eq!(turn(&mut drill, Turn::LegLost), Outcome::Done);
    assert!(
        !drill.turns().contains(&Turn::NeutralLost),
        "one loose wire at a time"
    );
    assert_eq!(turn(&mut drill, Turn::DropMended), Outcome::Done);
    assert!(drill.turns().contains(&Turn::NeutralLost));
}

#[test]
fn a_dry_tank_stops_the_engine() {
    let mut drill = begun("small-and-quiet", 2);
    assert_eq!(turn(&mut drill, Turn::TankDry), Outcome::Done);
    assert_eq!(
        turn(&mut drill, Turn::TankDry),
        Outcome::Refused("refused-no-turn".to_owned())
    );
    let engine = drill.site().generator.engine;
    let running = drill
        .site()
        .control(engine)
        .and_then(|c| c.position("running"));
    let start = Action::Set(engine, running.expect("an engine can run"));
    assert_eq!(
        drill.act(&start),
        Outcome::Refused("refused-no-fuel".to_owned())
    );
}

#[test]
fn a_run_with_turns_is_read_back_and_plays_to_the_same_bits() {
    let mut drill = begun("there-and-back", 1);
    for one in TURNS {
        turn(&mut drill, one);
        drill.advance(DrillTime::from_secs(90));
    }
    drill.end();
    assert!(has(&drill, &Event::OutOfFuel) || drill.conditions().fuel_gal <= 0.0);
    let scenario = shipped("there-and-back");
    let text = write_run(drill.run(), &scenario);
    let source = Source {
        file: "a.run",
        text: &text,
    };
    let run = read_run(source, &Library::shipped().0).expect("it is read back");
    let again = run.replay(&scenario).expect("it plays again");
    let bits =
        |drill: &Drill| -> Vec<Vec<u64>> { drill.trace().moments.iter().map(every_bit).collect() };
    assert_eq!(bits(&drill), bits(&again));
}

#[test]
fn nothing_is_made_to_happen_in_a_test() {
    for (practice, offered) in [(Practice::Coached, true), (Practice::Assessed, false)] {
        let mut session = Session::new(Library::shipped().0, "en");
        session.apply(Command::Open {
            drill: "there-and-back".to_owned(),
            practice,
            seed: 1,
        });
        assert_eq!(!session.turns().is_empty(), offered, "{practice:?}");
        let notices = session.apply(Command::Do("happen sooner".to_owned()));
        let refused = matches!(notices.as_slice(), [Notice::Refused(_)]);
        assert_eq!(refused, !offered, "{practice:?}: {notices:?}");
    }
}
