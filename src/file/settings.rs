//! How a person last had the window: language, size of texts, motion, detail, the window's own size and place, the track of the shelf.
//!
//! Nothing that was learned, and nothing that a drill depends on.
//! It does not cover whether a place is on a screen that is there: the window looks before it goes there.

use std::fs;
use std::io::ErrorKind;
use std::path::Path;

use serde::{Deserialize, Serialize};

use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source};
use super::library::unreadable;

/// How much is told of what is electric.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Detail {
    /// What feeds each thing.
    Live,
    /// Volts, amps and watts as well.
    #[default]
    Numbers,
    /// Phasors as well, where a tester meets both legs.
    Phasors,
}

impl Detail {
    /// The next one; after the last comes the first.
    #[must_use]
    pub fn next(self) -> Self {
        match self {
            Self::Live => Self::Numbers,
            Self::Numbers => Self::Phasors,
            Self::Phasors => Self::Live,
        }
    }
}

/// How a person last had the window.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Settings {
    /// The tag of the language; none as long as nobody chose one.
    pub language: Option<String>,
    /// Size of texts, percent of the usual; 0 as long as nobody chose one: then they grow with the window.
    pub text_percent: u16,
    /// Whether things stand still.
    pub still: bool,
    /// How much is told of what is electric.
    pub detail: Detail,
    /// Width and height of the window in logical pixels.
    pub size: (u32, u32),
    /// Where its upper left corner stood on the desktop, physical pixels; none as long as that isn't known.
    pub place: Option<(i32, i32)>,
    /// The track whose drills the shelf shows.
    pub track: Option<String>,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            language: None,
            text_percent: 0,
            still: false,
            detail: Detail::default(),
            size: (1280, 720),
            place: None,
            track: None,
        }
    }
}

/// The smallest and the largest window that can be asked for, logical pixels.
const LEAST: u32 = 320;
const MOST: u32 = 16_384;

impl Settings {
    /// Reads them; the usual ones if there is no such file yet.
    ///
    /// # Errors
    /// The faults of a file that can't be read as settings, each with its place.
    pub fn read(path: &Path) -> Result<Self, Vec<Diagnostic>> {
        let text = match fs::read_to_string(path) {
            Ok(text) => text,
            Err(why) if why.kind() == ErrorKind::NotFound => return Ok(Self::default()),
            Err(why) => return Err(vec![unreadable(path, &why)]),
        };
        let source = Source {
            file: &path.display().to_string(),
            text: &text,
        };
        let read: Self = source.data()?;
        let (width, height) = read.size;
        Ok(Self {
            size: (width.clamp(LEAST, MOST), height.clamp(LEAST, MOST)),
            ..read
        })
    }

    /// Writes them, with the folder around them if there is none.
    ///
    /// # Errors
    /// That the file can't be written, and why.
    pub fn write(&self, path: &Path) -> Result<(), Message> {
        let told = |why: String| {
            Message::new("window-not-kept")
                .with("file", Arg::Verbatim(path.display().to_string()))
                .with("why", Arg::Verbatim(why))
        };
        let pretty = ron::ser::PrettyConfig::new();
        let text = ron::ser::to_string_pretty(self, pretty).map_err(|why| told(why.to_string()))?;
        path.parent()
            .map_or(Ok(()), fs::create_dir_all)
            .and_then(|()| fs::write(path, text + "\n"))
            .map_err(|why| told(why.to_string()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_written_is_read_again_and_a_missing_file_is_no_fault() {
        let folder = tempfile::tempdir().expect("a folder can be made");
        let path = folder.path().join("below/window.ron");
        assert_eq!(Settings::read(&path).ok(), Some(Settings::default()));
        let settings = Settings {
            language: Some("es".to_owned()),
            text_percent: 175,
            detail: Detail::Phasors,
            still: true,
            size: (1024, 640),
            place: Some((-40, 12)),
            track: Some("class".to_owned()),
        };
        settings.write(&path).expect("they can be written");
        assert_eq!(Settings::read(&path).ok(), Some(settings));
    }

    #[test]
    fn a_broken_file_is_told_with_its_place_and_left_as_it_is() {
        let folder = tempfile::tempdir().expect("a folder can be made");
        let path = folder.path().join("window.ron");
        let text = "(\n  text_procent: 150,\n)";
        fs::write(&path, text).expect("a file can be written");
        let faults = Settings::read(&path).expect_err("there is no such field");
        assert!(faults.iter().any(|f| f.line == 2), "{faults:?}");
        assert_eq!(fs::read_to_string(&path).ok().as_deref(), Some(text));
    }

    #[test]
    fn a_window_of_no_size_is_not_asked_for() {
        let folder = tempfile::tempdir().expect("a folder can be made");
        let path = folder.path().join("window.ron");
        fs::write(&path, "(size: (0, 99999))").expect("a file can be written");
        let read = Settings::read(&path).expect("the form is right");
        assert_eq!(read.size, (LEAST, MOST));
    }
}
