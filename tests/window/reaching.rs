//! The street brought nearer and moved: by wheel and drag, by fingers, by the buttons in its corner.

use crate::window::scene::sight::See;

use super::*;

fn opened() -> Rehearsal {
    let mut rehearsal = Rehearsal::new("en");
    for wish in [Wish::Accept, gallery::wish("open there-and-back")] {
        rehearsal.grant(&wish);
    }
    rehearsal
}

/// A point of the scene where nothing can be pressed.
const SKY: Pos2 = pos2(500.0, 150.0);

fn grant_all(rehearsal: &mut Rehearsal, wishes: &[Wish]) {
    assert!(!wishes.is_empty(), "nothing was wished");
    for wish in wishes {
        assert!(matches!(wish, Wish::See(_)), "{wish:?}");
        rehearsal.grant(wish);
    }
}

#[test]
fn the_wheel_brings_the_street_nearer_and_a_drag_moves_it() {
    let mut rehearsal = opened();
    assert!(!rehearsal.drawn.frame.sight().is_part());
    rehearsal.wheel(SKY, 200.0);
    let wishes = rehearsal.pass(Vec::new());
    grant_all(&mut rehearsal, &wishes);
    let near = rehearsal.drawn.frame;
    assert!(near.sight().is_part());
    let mut wishes = rehearsal.pass(vec![Event::PointerMoved(SKY)]);
    wishes.clear();
    rehearsal.pass(vec![pressed(SKY, true)]);
    wishes.extend(rehearsal.pass(vec![Event::PointerMoved(SKY + vec2(30.0, 20.0))]));
    rehearsal.pass(vec![pressed(SKY + vec2(30.0, 20.0), false)]);
    grant_all(&mut rehearsal, &wishes);
    let moved = rehearsal.drawn.frame;
    let shift = moved.point(Vec2::ZERO) - near.point(Vec2::ZERO);
    assert!(shift.distance(Vec2::new(30.0, 20.0)) < 0.5, "{shift}");
    assert!(!wishes.contains(&Wish::Place("generator".to_owned())));
}

#[test]
fn two_fingers_bring_the_street_nearer() {
    let mut rehearsal = opened();
    let right = SKY + vec2(60.0, 0.0);
    rehearsal.pass(finger_down(SKY));
    rehearsal.pass(vec![finger(1, egui::TouchPhase::Start, right)]);
    let mut wishes = Vec::new();
    for step in [20.0, 40.0, 60.0] {
        let at = right + vec2(step, 0.0);
        wishes.extend(rehearsal.pass(vec![finger(1, egui::TouchPhase::Move, at)]));
    }
    grant_all(&mut rehearsal, &wishes);
    let nearer = |wish: &Wish| matches!(wish, Wish::See(See::Nearer(_)));
    assert!(wishes.iter().any(nearer));
    assert!(rehearsal.drawn.frame.sight().is_part());
}

#[test]
fn the_buttons_in_the_corner_bring_it_nearer_and_back_by_every_hand() {
    for hand in [Hand::Pointer, Hand::Touch, Hand::Keys] {
        let mut rehearsal = opened();
        let nearer = See::step(&rehearsal.drawn.frame, true);
        rehearsal.bring(&Wish::See(nearer), hand);
        assert!(rehearsal.drawn.frame.sight().is_part());
        rehearsal.bring(&Wish::See(See::Whole), hand);
        assert!(!rehearsal.drawn.frame.sight().is_part());
    }
}

#[test]
fn the_scene_follows_what_is_told_until_somebody_looks_elsewhere() {
    let mut rehearsal = backfed();
    while rehearsal
        .views
        .consequence
        .as_ref()
        .is_some_and(|c| c.stages.len() < 3)
    {
        rehearsal.grant(&Wish::Do(Command::Understood));
    }
    let first = rehearsal.drawn.frame.sight();
    assert!(first.is_part());
    rehearsal.grant(&Wish::Stage(4));
    assert_ne!(rehearsal.drawn.frame.sight(), first);
    rehearsal.grant(&Wish::See(See::Whole));
    assert!(!rehearsal.drawn.frame.sight().is_part());
    rehearsal.grant(&Wish::Stage(5));
    assert!(rehearsal.drawn.frame.sight().is_part());
}
