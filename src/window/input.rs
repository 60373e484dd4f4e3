//! Keys that work everywhere, beside Tab, arrows, Enter and Space, which walk and press what has the focus.
//!
//! No letter of any keyboard or screen reader is taken, and while something is typed only function keys are.
//! It does not cover remapping.

use bevy::prelude::*;

use crate::session::Command;
use crate::session::view::LogView;
use crate::units::DrillTime;

use super::WindowSystems;
use super::desk::{Desk, Sheet};
use super::link::{Views, Wish};
use super::scene::Drawn;
use super::scene::frame::Frame;
use super::scene::sight::See;

/// Keys with the message id of what they do, in the order in which they are listed for the learner.
pub(super) const KEYS: [(KeyCode, &str, &str); 14] = [
    (KeyCode::F1, "F1", "window-key-keys"),
    (KeyCode::F2, "F2", "window-wait-short"),
    (KeyCode::F3, "F3", "window-wait-minute"),
    (KeyCode::F4, "F4", "window-wait-event"),
    (KeyCode::F5, "F5", "window-key-hint"),
    (KeyCode::F6, "F6", "window-key-words"),
    (KeyCode::F7, "F7", "window-key-terms"),
    (KeyCode::F8, "F8", "window-key-language"),
    (KeyCode::F9, "F9", "window-key-motion"),
    (KeyCode::F10, "F10", "window-finish"),
    (KeyCode::F11, "F11", "window-key-room"),
    (KeyCode::F12, "F12", "window-key-hold"),
    (KeyCode::Escape, "Esc", "window-key-back"),
    (KeyCode::PrintScreen, "PrtSc", "window-keep"),
];

const DIGITS: [KeyCode; 9] = [
    KeyCode::Digit1,
    KeyCode::Digit2,
    KeyCode::Digit3,
    KeyCode::Digit4,
    KeyCode::Digit5,
    KeyCode::Digit6,
    KeyCode::Digit7,
    KeyCode::Digit8,
    KeyCode::Digit9,
];

/// Ten seconds and one minute: the waits of the two buttons.
pub(super) const SHORT: DrillTime = DrillTime::from_secs(10);
pub(super) const MINUTE: DrillTime = DrillTime::from_secs(60);

/// Keys of what is seen of the street, in the order in which they are listed.
pub(super) const SIGHT_KEYS: [(&str, &str); 5] = [
    ("+", "window-key-nearer"),
    ("−", "window-key-farther"),
    ("Shift", "window-key-move"),
    ("Home", "window-key-whole"),
    ("Backspace", "window-key-before"),
];

/// Whether letters and digits go into a field of text.
#[derive(Resource, Debug, Default)]
pub(super) struct Typing(pub(super) bool);

pub(super) fn plugin(app: &mut App) {
    app.init_resource::<Typing>();
    app.add_systems(Update, read_keys.in_set(WindowSystems::ReadInput));
}

fn read_keys(
    keys: Res<'_, ButtonInput<KeyCode>>,
    (views, desk, drawn): (Res<'_, Views>, Res<'_, Desk>, Res<'_, Drawn>),
    typing: Res<'_, Typing>,
    mut wishes: MessageWriter<'_, Wish>,
    mut exits: MessageWriter<'_, AppExit>,
) {
    // What was let go within the frame counts as held with the key that came before.
    let held = |pair: [KeyCode; 2]| {
        keys.any_pressed(pair) || keys.any_just_pressed(pair) || keys.any_just_released(pair)
    };
    let command = held([KeyCode::ControlLeft, KeyCode::ControlRight]);
    let shift = held([KeyCode::ShiftLeft, KeyCode::ShiftRight]);
    for key in keys.get_just_pressed() {
        if command && *key == KeyCode::KeyQ {
            exits.write(AppExit::Success);
        } else if command {
            wishes.write_batch(size_of(*key));
        } else if !typing.0 || works_while_typing(*key) {
            let on_scene = views.street.is_some() && views.debrief.is_none();
            let change = sight_of(*key, shift, &drawn.frame).filter(|_| on_scene);
            wishes.write_batch(
                change
                    .map(Wish::See)
                    .or_else(|| wish_of(*key, &views, &desk)),
            );
        }
    }
}

/// What a key wishes for together with Control: larger or smaller texts.
fn size_of(key: KeyCode) -> Option<Wish> {
    let larger = [KeyCode::Equal, KeyCode::NumpadAdd].contains(&key);
    let smaller = [KeyCode::Minus, KeyCode::NumpadSubtract].contains(&key);
    (larger || smaller).then_some(Wish::Size(larger))
}

/// Whether a key is none that a field of text needs.
fn works_while_typing(key: KeyCode) -> bool {
    KEYS.iter().any(|(known, ..)| *known == key)
}

/// What a key changes about what is seen of the street.
fn sight_of(key: KeyCode, shift: bool, frame: &Frame) -> Option<See> {
    let (nearer, farther) = (See::step(frame, true), See::step(frame, false));
    let plain = [
        (KeyCode::Equal, nearer),
        (KeyCode::NumpadAdd, nearer),
        (KeyCode::Minus, farther),
        (KeyCode::NumpadSubtract, farther),
        (KeyCode::Home, See::Whole),
        (KeyCode::Backspace, See::Before),
    ];
    let strides = [
        (KeyCode::ArrowLeft, Vec2::NEG_X),
        (KeyCode::ArrowRight, Vec2::X),
        (KeyCode::ArrowUp, Vec2::NEG_Y),
        (KeyCode::ArrowDown, Vec2::Y),
    ];
    let strides = strides.map(|(key, way)| (key, See::stride(frame, way)));
    let shifted = strides.into_iter().filter(|_| shift);
    let mut known = plain.into_iter().chain(shifted);
    known.find(|(k, _)| *k == key).map(|(_, see)| see)
}

/// What a key wishes for as things stand.
pub(super) fn wish_of(key: KeyCode, views: &Views, desk: &Desk) -> Option<Wish> {
    anywhere(key, views).or_else(|| in_drill(key, views, desk))
}

/// How a drill is ended: one that was opened by mistake holds nothing that could be looked back on, and is left.
pub(super) fn way_out(log: &LogView) -> Command {
    if log.begun || log.over {
        Command::Finish
    } else {
        Command::Leave
    }
}

fn anywhere(key: KeyCode, views: &Views) -> Option<Wish> {
    let speak = || {
        let tag = views.next_language();
        tag.map(|tag| Wish::Do(Command::Speak(tag)))
    };
    let hold = || views.street.is_some().then_some(Wish::Hold);
    let known = [
        (KeyCode::F1, Some(Wish::Keys)),
        (KeyCode::F7, Some(Wish::Terms)),
        (KeyCode::F8, speak()),
        (KeyCode::F9, Some(Wish::Motion)),
        (KeyCode::F11, Some(Wish::Room)),
        (KeyCode::F12, hold()),
        (KeyCode::Escape, Some(Wish::Back)),
        (KeyCode::PrintScreen, Some(Wish::Keep)),
    ];
    known.into_iter().find(|(k, _)| *k == key)?.1
}

/// Keys of the drill rest while a consequence or a question is held, before the cautions are read, and in the debrief.
/// Those that move it rest while two tries are compared.
fn in_drill(key: KeyCode, views: &Views, desk: &Desk) -> Option<Wish> {
    let street = views.street.as_ref().filter(|_| views.debrief.is_none())?;
    if !desk.accepted {
        return None;
    }
    if desk.sheet == Some(Sheet::Room) {
        // The digits are those of the turns of events while they can be read.
        let turn = DIGITS.iter().position(|digit| *digit == key)?;
        let line = views.turns.get(turn)?.line.clone();
        return Some(Wish::Do(Command::Do(line)));
    }
    if views.held(desk) {
        return None;
    }
    if let Some(index) = DIGITS.iter().position(|digit| *digit == key) {
        return street
            .places
            .get(index)
            .map(|place| Wish::Place(place.id.clone()));
    }
    let moves = [
        (KeyCode::F2, Wish::Do(Command::Wait(SHORT))),
        (KeyCode::F3, Wish::Do(Command::Wait(MINUTE))),
        (KeyCode::F4, Wish::Do(Command::WaitForEvent)),
        (KeyCode::F10, Wish::Do(way_out(&views.log))),
    ];
    let known = [
        (KeyCode::F5, Wish::Do(Command::Hint)),
        (KeyCode::F6, Wish::Words),
    ];
    let moves = moves.into_iter().filter(|_| !views.compares(desk));
    known
        .into_iter()
        .chain(moves)
        .find(|(k, _)| *k == key)
        .map(|(_, wish)| wish)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::session::view::{LanguageView, PlaceView, StreetView};
    use crate::window::scene::frame::Look;

    fn views() -> Views {
        let place = |id: &str| PlaceView {
            id: id.to_owned(),
            ..PlaceView::default()
        };
        let language = |tag: &str, current| LanguageView {
            tag: tag.to_owned(),
            current,
            ..LanguageView::default()
        };
        Views {
            street: Some(StreetView {
                places: vec![place("panel"), place("generator")],
                ..StreetView::default()
            }),
            languages: vec![language("en", false), language("es", true)],
            ..Views::default()
        }
    }

    fn accepted() -> Desk {
        Desk {
            accepted: true,
            ..Desk::default()
        }
    }

    #[test]
    fn digits_open_places_in_their_order_and_no_others() {
        assert_eq!(
            wish_of(KeyCode::Digit2, &views(), &accepted()),
            Some(Wish::Place("generator".to_owned()))
        );
        assert_eq!(wish_of(KeyCode::Digit3, &views(), &accepted()), None);
    }

    #[test]
    fn the_language_key_goes_round() {
        let speak = Wish::Do(Command::Speak("en".to_owned()));
        assert_eq!(wish_of(KeyCode::F8, &views(), &accepted()), Some(speak));
    }

    #[test]
    fn no_key_moves_the_drill_before_the_cautions_are_read() {
        assert_eq!(wish_of(KeyCode::F3, &views(), &Desk::default()), None);
    }

    #[test]
    fn what_moves_the_drill_rests_while_two_tries_are_compared() {
        let views = Views {
            branches: Some(crate::session::view::CompareView::default()),
            ..views()
        };
        let comparing = Desk {
            sheet: Some(Sheet::Branches),
            ..accepted()
        };
        for key in [KeyCode::F2, KeyCode::F3, KeyCode::F4, KeyCode::F10] {
            assert_eq!(wish_of(key, &views, &comparing), None, "{key:?}");
            assert!(wish_of(key, &views, &accepted()).is_some(), "{key:?}");
        }
    }

    #[test]
    fn keys_move_the_scene_and_leave_letters_to_what_is_typed() {
        let frame = Frame::new(Vec2::new(1280.0, 720.0), Look::default());
        let nearer = frame.sight().nearer(1.4, frame.seen().center());
        let change = sight_of(KeyCode::NumpadAdd, false, &frame);
        assert_eq!(change, Some(See::Nearer(nearer)));
        assert_eq!(sight_of(KeyCode::ArrowLeft, false, &frame), None);
        assert!(sight_of(KeyCode::ArrowLeft, true, &frame).is_some());
        for key in [
            KeyCode::Digit1,
            KeyCode::Minus,
            KeyCode::Backspace,
            KeyCode::Home,
        ] {
            assert!(!works_while_typing(key), "{key:?}");
        }
        assert!(works_while_typing(KeyCode::F12));
    }

    #[test]
    fn every_key_has_one_meaning() {
        for (i, (key, ..)) in KEYS.iter().enumerate() {
            assert!(
                KEYS.iter().skip(i + 1).all(|(other, ..)| other != key),
                "{key:?}"
            );
        }
    }
}
