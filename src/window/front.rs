//! The window as the command line knows it: open it, or draw screens; what goes wrong comes back as a message.

use std::path::Path;

use crate::session::{Session, Settings};
use crate::words::Message;

use super::{Options, pictures, run};

/// Opens the window as a person last had it and stays until it is closed.
/// Scenarios from a folder are read again as they change; `kept` is where settings are kept.
///
/// # Errors
/// Why it could not open, or that it stopped, as a message.
pub fn open(
    session: Session,
    folder: Option<&Path>,
    settings: Settings,
    kept: Option<&Path>,
) -> Result<(), Message> {
    let options = Options {
        folder: folder.map(Path::to_owned),
        settings,
        kept: kept.map(Path::to_owned),
        ..Options::default()
    };
    run(session, options).map_err(|why| why.message())
}

/// Draws the screens of these names into a folder; `all` stands for every screen.
///
/// # Errors
/// A name that isn't known, no adapter, or a folder that can't be written, as a message.
pub fn draw(session: &Session, names: &[String], out: &Path) -> Result<(), Message> {
    pictures(session, names, out).map_err(|why| why.message())
}
