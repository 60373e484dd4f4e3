//! While an author writes: the folder is looked at twice a second, and read again when a file has changed.
//!
//! Only a window that was opened on a folder does so; what changes is told by the session.

use std::path::Path;
use std::time::Duration;

use bevy::prelude::*;

use crate::session::{Notice, Watched};

use super::WindowSystems;
use super::desk::Desk;
use super::link::Open;

/// How often the folder is looked at, and so how long the window rests at most.
pub(super) const LOOK: Duration = Duration::from_millis(500);

/// The folder that is being written in.
#[derive(Resource)]
struct Folder {
    watched: Watched,
    next: Timer,
}

/// Looks at this folder.
pub(super) fn watch(app: &mut App, folder: &Path) {
    app.insert_resource(Folder {
        watched: Watched::new(folder),
        next: Timer::new(LOOK, TimerMode::Repeating),
    })
    .add_systems(Update, look.in_set(WindowSystems::ReadInput));
}

fn look(
    time: Res<'_, Time>,
    mut folder: ResMut<'_, Folder>,
    mut open: ResMut<'_, Open>,
    mut desk: ResMut<'_, Desk>,
) {
    if !folder.next.tick(time.delta()).just_finished() {
        return;
    }
    let Some(read) = folder.watched.changed() else {
        return;
    };
    let notice: Option<Notice> = open.0.renew(read).pop();
    desk.notice = notice;
}
