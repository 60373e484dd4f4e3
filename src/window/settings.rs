//! Keeps how a person has the window: what was chosen at once, the window's own size when it closes.
//!
//! What can't be kept is told on the desk; the window goes on without it.

use std::path::PathBuf;

use bevy::prelude::*;

use crate::session::Settings;

use super::link::{Desk, Open, Size};

/// Where settings are kept, and what was kept last.
#[derive(Resource)]
struct Keeper {
    kept: PathBuf,
    last: Settings,
}

/// Lays the desk as it was left, and keeps it from then on.
pub(super) fn plugin(app: &mut App, settings: Settings, kept: Option<PathBuf>) {
    let mut desk = app.world_mut().resource_mut::<Desk>();
    desk.size = Size::of(settings.text_percent);
    desk.still = settings.still;
    desk.detail = settings.detail;
    desk.track.clone_from(&settings.track);
    if let Some(kept) = kept {
        let last = settings;
        app.insert_resource(Keeper { kept, last })
            .add_systems(Last, keep);
    }
}

fn keep(
    mut exits: MessageReader<'_, '_, AppExit>,
    open: Res<'_, Open>,
    windows: Query<'_, '_, &Window>,
    mut keeper: ResMut<'_, Keeper>,
    mut desk: ResMut<'_, Desk>,
) {
    let ends = exits.read().count() > 0;
    let now = now(&open, &desk, windows.iter().next(), &keeper.last);
    let chosen = Settings {
        size: keeper.last.size,
        ..now.clone()
    };
    // A window that is being drawn larger changes with every frame: its size is kept when it closes.
    if chosen != keeper.last || (ends && now != keeper.last) {
        if let Err(why) = now.write(&keeper.kept) {
            desk.kept = Some(open.0.say_message(&why));
        }
        keeper.last = now;
    }
}

fn now(open: &Open, desk: &Desk, window: Option<&Window>, last: &Settings) -> Settings {
    let spoken = open.0.language();
    // As long as nobody chose a language, the system's is spoken, whatever it will be next time.
    let language = if desk.spoke {
        Some(spoken.to_owned())
    } else {
        last.language.clone()
    };
    let size = |window: &Window| {
        let size = window.resolution.size().round().as_uvec2();
        (size.x, size.y)
    };
    Settings {
        language,
        text_percent: desk.size.percent(),
        still: desk.still,
        detail: desk.detail,
        size: window.map_or(last.size, size),
        track: desk.track.clone(),
    }
}
