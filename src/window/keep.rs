//! Keeps what the window shows as a picture, in the folder where the program was started: a handout, a debrief, a curve.
//!
//! It does not cover printers: a picture is printed by what shows pictures.

use std::path::{Path, PathBuf};

use bevy::prelude::*;
use bevy::render::view::screenshot::{Screenshot, ScreenshotCaptured};

use crate::words::{Arg, Message};

use super::link::{Desk, Open, Wish};

pub(super) fn plugin(app: &mut App) {
    app.add_systems(Update, keep.after(super::WindowSystems::Apply));
}

fn keep(mut wishes: MessageReader<'_, '_, Wish>, mut commands: Commands<'_, '_>) {
    if wishes.read().filter(|wish| **wish == Wish::Keep).count() > 0 {
        commands.spawn(Screenshot::primary_window()).observe(write);
    }
}

fn write(
    captured: On<'_, '_, ScreenshotCaptured>,
    open: Res<'_, Open>,
    mut desk: ResMut<'_, Desk>,
) {
    let path = free(Path::new("."));
    let file = Arg::Verbatim(path.display().to_string());
    let picture = captured.image.clone().try_into_dynamic();
    let written = picture
        .map_err(|why| why.to_string())
        .and_then(|picture| picture.to_rgb8().save(&path).map_err(|why| why.to_string()));
    let message = match written {
        Ok(()) => Message::new("window-kept").with("file", file),
        Err(why) => Message::new("window-not-kept")
            .with("file", file)
            .with("why", Arg::Verbatim(why)),
    };
    desk.kept = Some(open.0.say_message(&message));
}

/// The first name that no file of the folder has.
fn free(folder: &Path) -> PathBuf {
    let name = |number: u32| folder.join(format!("outage-drill-{number}.png"));
    let taken = (1..u32::MAX).take_while(|number| name(*number).exists());
    name(taken.last().unwrap_or(0) + 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_picture_never_takes_the_place_of_another() {
        let folder = tempfile::tempdir().expect("a folder can be made");
        let first = free(folder.path());
        assert!(first.ends_with("outage-drill-1.png"));
        std::fs::write(&first, "a picture").expect("a file can be written");
        assert!(free(folder.path()).ends_with("outage-drill-2.png"));
    }
}
