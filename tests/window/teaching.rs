//! A class taught through the screens from start to finish, and what an instructor does in front of a room.

use crate::session::view::{LogView, StepView};
use crate::session::{Rewind, Seated};
use crate::window::both;
use crate::window::link::sign;
use crate::window::teach::steps;

use super::*;

/// What was passed on the way through a lesson.
#[derive(Default)]
struct Taught {
    pages: usize,
    drills: Vec<String>,
}

/// Turns every page of a lesson, opens each drill and comes back to its page.
fn teach(rehearsal: &mut Rehearsal, lesson: &str, hand: Hand) -> Taught {
    let mut taught = Taught::default();
    rehearsal.bring(&Wish::Teach(lesson.to_owned()), hand);
    let view = rehearsal.views.lesson.clone().expect("the lesson is open");
    let all: Vec<StepView> = steps(&view).cloned().collect();
    for (number, step) in (1..).zip(&all) {
        rehearsal.bring(&Wish::Turn(number), hand);
        taught.pages += 1;
        let Some((drill, practice)) = step.drill.clone() else {
            continue;
        };
        let open = Command::Open {
            drill: drill.clone(),
            practice,
            seed: 1,
        };
        rehearsal.bring(&Wish::Do(open), hand);
        assert!(rehearsal.views.street.is_some(), "{drill} is open");
        rehearsal.bring(&Wish::Room, Hand::Keys);
        rehearsal.bring(&Wish::Do(Command::Leave), hand);
        assert!(rehearsal.views.lesson.is_some(), "back from {drill}");
        taught.drills.push(drill);
    }
    taught
}

#[test]
fn the_class_of_two_hours_is_taught_from_start_to_finish_by_either_hand() {
    for (language, hand) in [("en", Hand::Pointer), ("es", Hand::Keys)] {
        let mut rehearsal = Rehearsal::new(language);
        rehearsal.bring(&Wish::Accept, hand);
        let lessons = rehearsal.views.shelf.lessons.clone();
        let class = lessons.iter().find(|lesson| lesson.name == "two-hours");
        let track = class.expect("the lesson is on the shelf").track.clone();
        if rehearsal.desk.track.as_ref() != Some(&track) {
            rehearsal.bring(&Wish::Track(track), hand);
        }
        rehearsal.bring(&Wish::Choose("two-hours".to_owned()), hand);
        let taught = teach(&mut rehearsal, "two-hours", hand);
        assert_eq!(taught.pages, 15);
        assert_eq!(taught.drills.len(), 9, "{:?}", taught.drills);
        rehearsal.bring(&Wish::EndLesson, hand);
        assert!(rehearsal.views.lesson.is_none());
    }
}

#[test]
fn every_lesson_is_taught_by_keys() {
    let mut rehearsal = Rehearsal::new("en");
    rehearsal.bring(&Wish::Accept, Hand::Keys);
    for lesson in rehearsal.views.shelf.lessons.clone() {
        rehearsal.bring(&Wish::Track(lesson.track.clone()), Hand::Keys);
        if rehearsal.desk.chosen.as_ref() != Some(&lesson.name) {
            rehearsal.bring(&Wish::Choose(lesson.name.clone()), Hand::Keys);
        }
        let taught = teach(&mut rehearsal, &lesson.name, Hand::Keys);
        assert!(taught.pages > 10, "{}", lesson.name);
        rehearsal.bring(&Wish::EndLesson, Hand::Keys);
    }
}

/// A drill that is open, with the instructor's sheet.
fn in_front_of_a_room(drill: &str) -> Rehearsal {
    let mut rehearsal = Rehearsal::new("en");
    rehearsal.grant(&Wish::Accept);
    rehearsal.grant(&gallery::wish(&format!("open {drill}")));
    rehearsal.grant(&Wish::Room);
    rehearsal
}

#[test]
fn a_drill_that_is_held_takes_nothing_but_the_way_on() {
    let mut rehearsal = in_front_of_a_room("there-and-back");
    rehearsal.grant(&Wish::Room);
    rehearsal.grant(&Wish::Hold);
    let clock = rehearsal.views.log.clock_ms;
    for at in rehearsal.targets() {
        for wish in rehearsal.click(at) {
            assert!(
                matches!(
                    wish,
                    Wish::Hold | Wish::Place(_) | Wish::See(_) | Wish::Detail
                ),
                "{wish:?}"
            );
        }
    }
    for key in [KeyCode::F2, KeyCode::F3, KeyCode::F10, KeyCode::Digit1] {
        assert_eq!(
            wish_of(key, &rehearsal.views, &rehearsal.desk),
            None,
            "{key:?}"
        );
    }
    rehearsal.bring(&Wish::Hold, Hand::Keys);
    rehearsal.bring(&Wish::Do(Command::Wait(MINUTE)), Hand::Keys);
    assert!(rehearsal.views.log.clock_ms > clock);
}

#[test]
fn two_languages_stand_in_one_set_of_controls() {
    let mut rehearsal = in_front_of_a_room("there-and-back");
    rehearsal.bring(&Wish::Second, Hand::Pointer);
    rehearsal.grant(&Wish::Room);
    let spoken = rehearsal.views.second.as_ref().expect("a second language");
    assert_eq!(spoken.language(), "es");
    rehearsal.grant(&Wish::Place("panel".to_owned()));
    let off = Wish::Do(Command::Do("set main off".to_owned()));
    let pressed: usize = rehearsal
        .targets()
        .into_iter()
        .map(|at| {
            rehearsal
                .click(at)
                .into_iter()
                .filter(|w| *w == off)
                .count()
        })
        .sum();
    assert_eq!(pressed, 1, "once for both languages");
    rehearsal.grant(&off);
    let last = |log: LogView| log.lines.last().map(|line| line.text.clone());
    let told = last(rehearsal.views.log.clone()).expect("it is in the log");
    let [first, second] = both::SIDES.map(|side| Some(both::side(&told, side).to_owned()));
    let spoken = rehearsal.views.second.as_ref().expect("a second language");
    assert_eq!(first, last(rehearsal.session.log()));
    assert_eq!(second, last(spoken.log()));
    assert_ne!(first, second);
}

#[test]
fn readings_are_covered_and_shown_again() {
    let mut rehearsal = in_front_of_a_room("there-and-back");
    let volts = |r: &Rehearsal| {
        let street = r.views.street.as_ref().expect("a drill is open");
        street.wires.iter().filter(|w| !w.volts.is_empty()).count()
    };
    assert!(volts(&rehearsal) > 0);
    rehearsal.bring(&Wish::Do(Command::Cover(true)), Hand::Pointer);
    assert_eq!(volts(&rehearsal), 0);
    rehearsal.bring(&Wish::Do(Command::Cover(false)), Hand::Keys);
    assert!(volts(&rehearsal) > 0);
}

#[test]
fn a_turn_of_events_comes_by_its_digit() {
    let mut rehearsal = in_front_of_a_room("there-and-back");
    let first = rehearsal
        .views
        .turns
        .first()
        .cloned()
        .expect("a turn is offered");
    let wish = wish_of(KeyCode::Digit1, &rehearsal.views, &rehearsal.desk);
    assert_eq!(wish, Some(Wish::Do(Command::Do(first.line.clone()))));
    let lines = rehearsal.views.log.lines.len();
    rehearsal.bring(&Wish::Do(Command::Do(first.line)), Hand::Keys);
    assert!(
        rehearsal.views.log.lines.len() > lines + 1,
        "the turn and what came of it"
    );
}

#[test]
fn the_words_of_the_trade_on_the_screen_come_first() {
    let mut rehearsal = in_front_of_a_room("there-and-back");
    rehearsal.grant(&Wish::Place("panel".to_owned()));
    rehearsal.bring(&Wish::Terms, Hand::Pointer);
    let terms = &rehearsal.views.terms;
    let here = |name: &str| terms.here.iter().any(|term| term.name == name);
    assert!(here("breaker") || here("main breaker"), "{:?}", terms.here);
    assert!(!terms.others.is_empty());
    assert!(terms.here.iter().all(|term| !terms.others.contains(term)));
}

#[test]
fn a_run_says_who_sat_at_it_and_a_wrong_seating_is_refused() {
    let mut rehearsal = in_front_of_a_room("there-and-back");
    let said = sign(&mut rehearsal.session, "Ada, , Bo", Some(Seated::InTurns));
    assert_eq!(said, rehearsal.session.say("window-signed"));
    let saved = rehearsal.session.saved().expect("a run is open");
    assert!(saved.contains("Ada") && saved.contains("Bo"), "{saved}");
    let said = sign(&mut rehearsal.session, "Cy, Di", Some(Seated::Alone));
    assert_ne!(said, rehearsal.session.say("window-signed"));
    assert_eq!(
        rehearsal.session.saved(),
        Some(saved),
        "nothing has changed"
    );
}

#[test]
fn two_branches_are_compared_once_the_learner_has_gone_back() {
    for hand in [Hand::Pointer, Hand::Keys] {
        let mut rehearsal = backfed();
        assert!(!rehearsal.views.branched);
        rehearsal.grant(&Wish::Do(Command::Rewind(Rewind::Mistake)));
        while rehearsal.views.consequence.is_some() {
            rehearsal.grant(&Wish::Do(Command::Understood));
        }
        rehearsal.bring(&Wish::Branches, hand);
        let view = rehearsal.views.branches.as_ref().expect("two branches");
        assert!(!view.gone.is_empty() || !view.positions.is_empty());
    }
}
