//! The window as the command line knows it: open it, or draw screens; what goes wrong comes back as a message.

use std::path::Path;

use crate::session::Session;
use crate::words::{Arg, Message};

use super::gallery::SCREENS;
use super::picture::{Picture, PictureError, picture};
use super::{Options, WindowError, run};

/// Opens the window and stays until it is closed.
///
/// # Errors
/// Why it could not open, or that it stopped, as a message.
pub fn open(session: Session) -> Result<(), Message> {
    run(session, Options::default()).map_err(|why| match why {
        WindowError::NoDisplay(why) => Message::new(why.message_id()),
        WindowError::Stopped => Message::new("window-stopped"),
    })
}

/// Draws the screens of these names into a folder.
///
/// # Errors
/// A name that isn't known, no adapter, or a folder that can't be written, as a message.
pub fn draw(session: &Session, names: &[String], out: &Path) -> Result<(), Message> {
    let all: Vec<Picture> = SCREENS.iter().map(|screen| screen.picture()).collect();
    let known: Vec<&str> = all.iter().map(|picture| picture.name.as_str()).collect();
    if let Some(name) = names.iter().find(|name| !known.contains(&name.as_str())) {
        return Err(Message::new("window-no-screen")
            .with("name", Arg::Verbatim(name.clone()))
            .with("known", Arg::Verbatim(known.join(", "))));
    }
    let wanted: Vec<Picture> = all
        .into_iter()
        .filter(|picture| names.contains(&picture.name))
        .collect();
    match picture(session, &wanted, Options::default().size, out) {
        Ok(_) => Ok(()),
        Err(PictureError::NoDisplay(why)) => Err(Message::new(why.message_id())),
        Err(PictureError::Nothing(name)) => {
            Err(Message::new("window-no-picture").with("name", Arg::Verbatim(name)))
        }
        Err(PictureError::Written(path, why)) => Err(Message::new("terminal-file-unwritable")
            .with("file", Arg::Verbatim(path.display().to_string()))
            .with("reason", Arg::Verbatim(why.to_string()))),
    }
}
