//! Keeps things as files in the folder where the program was started: what the window shows as a picture, a run to be marked.
//!
//! No file takes the place of another.
//! It does not cover printers: a picture is printed by what shows pictures.

use std::path::{Path, PathBuf};

use bevy::prelude::*;
use bevy::render::view::screenshot::{Screenshot, ScreenshotCaptured};

use crate::words::{Arg, Message};

use super::desk::Desk;
use super::link::{Open, Wish};

pub(super) fn plugin(app: &mut App) {
    app.add_systems(Update, keep.after(super::WindowSystems::Apply));
}

fn keep(
    mut wishes: MessageReader<'_, '_, Wish>,
    mut commands: Commands<'_, '_>,
    open: Res<'_, Open>,
    mut desk: ResMut<'_, Desk>,
) {
    for wish in wishes.read() {
        if *wish == Wish::Keep {
            commands.spawn(Screenshot::primary_window()).observe(write);
        } else if *wish == Wish::Record
            && let Some(run) = open.0.saved()
        {
            let path = free(Path::new("."), "ron");
            let written = std::fs::write(&path, run).map_err(|why| why.to_string());
            desk.kept = Some(told(&open, &path, written));
        }
    }
}

fn write(
    captured: On<'_, '_, ScreenshotCaptured>,
    open: Res<'_, Open>,
    mut desk: ResMut<'_, Desk>,
) {
    let path = free(Path::new("."), "png");
    let picture = captured.image.clone().try_into_dynamic();
    let written = picture
        .map_err(|why| why.to_string())
        .and_then(|picture| picture.to_rgb8().save(&path).map_err(|why| why.to_string()));
    desk.kept = Some(told(&open, &path, written));
}

/// Where it lies, or why it does not.
fn told(open: &Open, path: &Path, written: Result<(), String>) -> String {
    let file = Arg::Verbatim(path.display().to_string());
    let message = match written {
        Ok(()) => Message::new("window-kept").with("file", file),
        Err(why) => Message::new("window-not-kept")
            .with("file", file)
            .with("why", Arg::Verbatim(why)),
    };
    open.0.say_message(&message)
}

/// The first name that no file of the folder has.
fn free(folder: &Path, ending: &str) -> PathBuf {
    let name = |number: u32| folder.join(format!("outage-drill-{number}.{ending}"));
    let taken = (1..u32::MAX).take_while(|number| name(*number).exists());
    name(taken.last().unwrap_or(0) + 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_file_takes_the_place_of_another() {
        let folder = tempfile::tempdir().expect("a folder can be made");
        let first = free(folder.path(), "png");
        assert!(first.ends_with("outage-drill-1.png"));
        std::fs::write(&first, "a picture").expect("a file can be written");
        assert!(free(folder.path(), "png").ends_with("outage-drill-2.png"));
    }
}
