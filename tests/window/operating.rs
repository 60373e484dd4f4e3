//! Equipment operated at its face: handles, levers, controllers, the outlets of a set.

use super::*;

/// Opens a drill and does lines of an action file, each at its place.
fn operate(drill: &str, lines: &[&str], hand: Hand) -> Rehearsal {
    let mut rehearsal = Rehearsal::new("en");
    rehearsal.grant(&Wish::Accept);
    rehearsal.grant(&gallery::wish(&format!("open {drill}")));
    for line in lines {
        let place = rehearsal.place_of(line);
        if rehearsal.desk.place.as_ref() != Some(&place) {
            rehearsal.bring(&Wish::Place(place), hand);
        }
        rehearsal.bring(&Wish::Do(Command::Do((*line).to_owned())), hand);
    }
    rehearsal
}

/// How the controls of the open place stand.
fn stands(rehearsal: &Rehearsal, id: &str) -> Option<String> {
    let close = rehearsal.views.close.as_ref()?;
    let control = close.controls.iter().find(|c| c.id == id)?;
    Some(control.position_id.clone())
}

#[test]
fn handles_their_breakers_and_levers_are_moved_by_either_hand() {
    for hand in [Hand::Pointer, Hand::Keys] {
        let lines = [
            "set handle-fridge off",
            "set handle-fridge generator",
            "set handle-sump off",
            "set handle-sump-breaker off",
        ];
        let rehearsal = operate("six-handles", &lines, hand);
        for (id, position) in [
            ("handle-fridge", "generator"),
            ("handle-sump", "off"),
            ("handle-sump-breaker", "off"),
            ("handle-microwave", "utility"),
        ] {
            assert_eq!(
                stands(&rehearsal, id).as_deref(),
                Some(position),
                "{hand:?}: {id}"
            );
        }
        let lines = [
            "set essentials-transfer off",
            "set essentials-transfer-lock fitted",
        ];
        let rehearsal = operate("small-and-quiet", &lines, hand);
        let tagged = |r: &Rehearsal| {
            let close = r.views.close.as_ref();
            close.is_some_and(|c| c.faces.iter().any(|f| !f.tag.is_empty()))
        };
        assert!(tagged(&rehearsal), "{hand:?}");
    }
}

#[test]
fn a_controller_and_the_outlets_of_a_set_are_operated_by_either_hand() {
    for hand in [Hand::Pointer, Hand::Keys] {
        let rehearsal = operate("hands-off", &["set controller off"], hand);
        assert_eq!(stands(&rehearsal, "controller").as_deref(), Some("off"));
        let lines = ["set generator-place yard", "set left-socket-breaker off"];
        let rehearsal = operate("right-cord", &lines, hand);
        assert_eq!(
            stands(&rehearsal, "left-socket-breaker").as_deref(),
            Some("off")
        );
    }
}
