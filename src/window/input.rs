//! Keys that work everywhere, beside Tab, arrows, Enter and Space, which walk and press what has the focus.
//!
//! Function keys and digits only, so that no letter of any keyboard or screen reader is taken.
//! It does not cover remapping.

use bevy::prelude::*;

use crate::session::Command;
use crate::units::DrillTime;

use super::WindowSystems;
use super::link::{Desk, Sheet, Views, Wish};

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

pub(super) fn plugin(app: &mut App) {
    app.add_systems(Update, read_keys.in_set(WindowSystems::ReadInput));
}

fn read_keys(
    keys: Res<'_, ButtonInput<KeyCode>>,
    views: Res<'_, Views>,
    desk: Res<'_, Desk>,
    mut wishes: MessageWriter<'_, Wish>,
) {
    let command = keys.any_pressed([KeyCode::ControlLeft, KeyCode::ControlRight]);
    for key in keys.get_just_pressed() {
        if command {
            wishes.write_batch(size_of(*key));
        } else if let Some(wish) = wish_of(*key, &views, &desk) {
            wishes.write(wish);
        }
    }
}

/// What a key wishes for together with Control: larger or smaller texts.
fn size_of(key: KeyCode) -> Option<Wish> {
    let larger = [KeyCode::Equal, KeyCode::NumpadAdd].contains(&key);
    let smaller = [KeyCode::Minus, KeyCode::NumpadSubtract].contains(&key);
    (larger || smaller).then_some(Wish::Size(larger))
}

/// What a key wishes for as things stand.
pub(super) fn wish_of(key: KeyCode, views: &Views, desk: &Desk) -> Option<Wish> {
    anywhere(key, views).or_else(|| in_drill(key, views, desk))
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
    let known = [
        (KeyCode::F2, Wish::Do(Command::Wait(SHORT))),
        (KeyCode::F3, Wish::Do(Command::Wait(MINUTE))),
        (KeyCode::F4, Wish::Do(Command::WaitForEvent)),
        (KeyCode::F5, Wish::Do(Command::Hint)),
        (KeyCode::F6, Wish::Words),
        (KeyCode::F10, Wish::Do(Command::Finish)),
    ];
    known
        .into_iter()
        .find(|(k, _)| *k == key)
        .map(|(_, wish)| wish)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::session::view::{LanguageView, PlaceView, StreetView};

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
    fn every_key_has_one_meaning() {
        for (i, (key, ..)) in KEYS.iter().enumerate() {
            assert!(
                KEYS.iter().skip(i + 1).all(|(other, ..)| other != key),
                "{key:?}"
            );
        }
    }
}
