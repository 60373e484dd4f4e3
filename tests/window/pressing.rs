//! What one press too many does: nothing. And what is left with one press: a drill opened by mistake, and what else followed.

use super::*;
use crate::window::input::SHORT;

/// Walks with Tab to what brings a wish, presses Enter there, and grants it.
fn press_by_keys(rehearsal: &mut Rehearsal, line: &str) {
    rehearsal.bring(&Wish::Do(Command::Do(line.to_owned())), Hand::Keys);
}

#[test]
fn a_second_enter_on_a_choice_moves_nothing_and_tab_goes_on_from_there() {
    for (drill, place, line) in [
        ("there-and-back", "generator", "set generator-place yard"),
        ("there-and-back", "cords", "set inlet-cord-house-end inlet"),
        ("right-cord", "generator", "set left-socket-breaker off"),
    ] {
        let mut rehearsal = Rehearsal::new("en");
        for wish in [
            Wish::Accept,
            gallery::wish(&format!("open {drill}")),
            Wish::Place(place.to_owned()),
        ] {
            rehearsal.grant(&wish);
        }
        press_by_keys(&mut rehearsal, line);
        let again = rehearsal.press(Key::Enter);
        assert!(again.is_empty(), "{drill}: {line}, then {again:?}");
        let focus = |r: &Rehearsal| r.ctx.memory(egui::Memory::focused);
        assert!(focus(&rehearsal).is_some(), "{drill}: {line}");
    }
}

#[test]
fn the_second_press_of_a_double_press_is_not_for_what_came_into_its_place() {
    let shelf = || {
        let mut rehearsal = Rehearsal::new("en");
        rehearsal.grant(&Wish::Accept);
        rehearsal
    };
    let mut met = 0;
    for at in shelf().targets() {
        let mut rehearsal = shelf();
        let first = rehearsal.click(at);
        let [chosen @ Wish::Choose(_)] = first.as_slice() else {
            continue;
        };
        met += 1;
        rehearsal.grant(chosen);
        let mut second = rehearsal.pass(vec![pressed(at, true)]);
        second.extend(rehearsal.pass(vec![pressed(at, false)]));
        assert!(second.is_empty(), "{chosen:?}, then {second:?}");
    }
    assert!(met > 3, "{met}");
}

#[test]
fn a_drill_opened_by_mistake_is_left_with_one_press() {
    for hand in [Hand::Pointer, Hand::Keys] {
        let mut rehearsal = Rehearsal::new("en");
        for wish in [Wish::Accept, gallery::wish("open there-and-back")] {
            rehearsal.grant(&wish);
        }
        rehearsal.bring(&Wish::Do(Command::Leave), hand);
        assert!(rehearsal.views.street.is_none() && rehearsal.views.debrief.is_none());
        rehearsal.grant(&gallery::wish("open there-and-back"));
        rehearsal.grant(&Wish::Do(Command::Wait(MINUTE)));
        rehearsal.bring(&Wish::Do(Command::Finish), hand);
        assert!(rehearsal.views.debrief.is_some());
    }
}

#[test]
fn the_wait_that_a_hint_asks_for_is_one_press() {
    for hand in [Hand::Pointer, Hand::Keys] {
        for percent in [100, 250] {
            let mut rehearsal = Rehearsal::new("en");
            rehearsal.desk.size = Size::of(percent);
            for line in ["open there-and-back", "hint"] {
                rehearsal.grant(&Wish::Accept);
                rehearsal.grant(&gallery::wish(line));
            }
            let street = rehearsal.views.street.clone().expect("it is open");
            let wait = street.hint_wait.expect("it asks for a wait");
            assert!(![SHORT, MINUTE].contains(&wait.time), "{wait:?}");
            rehearsal.bring(&Wish::Do(Command::Wait(wait.time)), hand);
            let street = rehearsal.views.street.clone().expect("it goes on");
            assert_ne!(street.hint_wait.map(|w| w.time), Some(wait.time));
        }
    }
}

#[test]
fn nothing_in_the_bars_moves_the_drill_while_two_tries_are_compared() {
    let mut rehearsal = backfed();
    for line in [
        "rewind",
        "understood",
        "understood",
        "understood",
        "branches",
    ] {
        rehearsal.grant(&gallery::wish(line));
    }
    let moves = |wish: &Wish| {
        matches!(
            wish,
            Wish::Do(Command::Wait(_) | Command::WaitForEvent | Command::Finish)
        )
    };
    for at in rehearsal.targets() {
        let wishes = rehearsal.click(at);
        assert!(!wishes.iter().any(moves), "{wishes:?} at {at:?}");
    }
    rehearsal.bring(&Wish::Back, Hand::Keys);
    rehearsal.bring(&Wish::Do(Command::WaitForEvent), Hand::Keys);
}

#[test]
fn what_else_followed_is_left_for_the_debrief_with_one_press() {
    for hand in [Hand::Pointer, Hand::Keys] {
        let mut rehearsal = backfed();
        let others = |r: &Rehearsal| r.views.consequence.as_ref().map(|c| c.others.clone());
        assert_ne!(others(&rehearsal).as_deref(), Some(""));
        rehearsal.bring(&Wish::Do(Command::AllUnderstood), hand);
        assert_eq!(others(&rehearsal), None);
        rehearsal.grant(&Wish::Do(Command::Finish));
        let debrief = rehearsal.views.debrief.expect("it is over");
        assert!(debrief.findings.len() > 1);
    }
}

#[test]
fn what_the_consequence_before_has_told_is_not_told_stage_by_stage_again() {
    let mut rehearsal = backfed();
    let harm = rehearsal.views.consequence.as_ref().map(|view| view.harm);
    assert_eq!(harm, Some(true), "who came to harm is told first");
    let mut saved = 0;
    while let Some(view) = rehearsal.views.consequence.clone() {
        assert_eq!(rehearsal.desk.stage, view.n_told);
        assert!(view.n_told == 0 || view.n_told < view.stages.len());
        saved += view.n_told;
        rehearsal.grant(&Wish::Do(Command::Understood));
    }
    assert!(saved > 0, "no way is shared");
}
