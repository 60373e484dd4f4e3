//! A run that is over plays by itself, moment by moment.
//!
//! It does not cover what is shown of a moment: see [`super::panels::again`].

use bevy::prelude::*;
use bevy::window::RequestRedraw;

use super::WindowSystems;
use super::desk::Desk;
use super::link::{Views, Wish};

/// How long a moment is seen before the next one when they go by themselves, seconds.
const MOMENT_S: f32 = 2.5;

/// Goes on to the next moment of a run that plays by itself; after the last one it stops.
fn play_on(
    (time, views, desk): (Res<'_, Time>, Res<'_, Views>, Res<'_, Desk>),
    mut wishes: MessageWriter<'_, Wish>,
    mut requests: MessageWriter<'_, RequestRedraw>,
    mut seen_s: Local<'_, f32>,
) {
    let plays = desk.again.is_some_and(|watched| watched.plays);
    let Some(again) = views.again.as_ref().filter(|_| plays) else {
        *seen_s = 0.0;
        return;
    };
    if again.place >= again.last {
        wishes.write(Wish::Play);
        return;
    }
    requests.write(RequestRedraw);
    *seen_s += time.delta_secs().min(0.1);
    if *seen_s >= MOMENT_S {
        *seen_s = 0.0;
        wishes.write(Wish::Again(Some(again.place + 1)));
    }
}

pub(super) fn plugin(app: &mut App) {
    app.add_systems(Update, play_on.in_set(WindowSystems::ReadInput));
}
