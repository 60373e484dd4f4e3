//! Keeps how a person has the window: what was chosen at once, the window's own size and place when it closes.
//!
//! What can't be kept is told on the desk; the window goes on without it.

use std::path::PathBuf;

use bevy::prelude::*;
use bevy::window::Monitor;

use crate::session::Settings;

use super::desk::{Desk, Size};
use super::link::Open;

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
    if let Some((x, y)) = settings.place {
        app.insert_resource(Stood(IVec2::new(x, y)))
            .add_systems(Update, stand.run_if(resource_exists::<Stood>));
    }
    if let Some(kept) = kept {
        let last = settings;
        app.insert_resource(Keeper { kept, last })
            .add_systems(Last, keep);
    }
}

/// Where the window stood when it was closed.
#[derive(Resource)]
struct Stood(IVec2);

/// Goes back to where the window stood, if that is on a screen that is there; otherwise it stays where the desktop puts it.
fn stand(
    mut commands: Commands<'_, '_>,
    stood: Res<'_, Stood>,
    monitors: Query<'_, '_, &Monitor>,
    mut windows: Query<'_, '_, &mut Window>,
) {
    if monitors.is_empty() {
        return;
    }
    commands.remove_resource::<Stood>();
    if monitors.iter().any(|monitor| is_on(monitor, stood.0)) {
        for mut window in &mut windows {
            window.position.set(stood.0);
        }
    }
}

/// How much of a window's upper left part has to be on a screen, physical pixels: enough to take hold of it.
const HOLD: IVec2 = IVec2::new(160, 40);

/// Whether a window that stands here could be taken hold of on a screen.
fn is_on(monitor: &Monitor, at: IVec2) -> bool {
    let size = UVec2::new(monitor.physical_width, monitor.physical_height).as_ivec2();
    let from = at - monitor.physical_position;
    from.cmpge(IVec2::ZERO).all() && (from + HOLD).cmple(size).all()
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
        place: keeper.last.place,
        ..now.clone()
    };
    // A window that is being drawn larger or moved changes with every frame: its size and place are kept when it closes.
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
    let place = |window: &Window| match window.position {
        WindowPosition::At(at) => Some((at.x, at.y)),
        WindowPosition::Automatic | WindowPosition::Centered(_) => None,
    };
    Settings {
        language,
        text_percent: desk.size.percent(),
        still: desk.still,
        detail: desk.detail,
        size: window.map_or(last.size, size),
        place: window.and_then(place).or(last.place),
        track: desk.track.clone(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_window_goes_back_only_to_where_it_can_be_taken_hold_of() {
        let monitor = Monitor {
            name: None,
            physical_height: 800,
            physical_width: 1280,
            physical_position: IVec2::new(-1280, 0),
            refresh_rate_millihertz: None,
            scale_factor: 1.0,
            video_modes: Vec::new(),
        };
        let is_on = |x, y| is_on(&monitor, IVec2::new(x, y));
        assert!(is_on(-1280, 0) && is_on(-200, 700));
        assert!(!is_on(-100, 20) && !is_on(0, 0) && !is_on(-600, -30) && !is_on(-600, 790));
    }
}
