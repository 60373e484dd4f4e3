//! The ways to where a property breaks, written as action files that `play --actions` replays.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use crate::session::PropertyRead;
use crate::words::{Arg, Message, Words};

use super::drill::Checked;
use super::told::told;

/// Writes a file for each property that is broken, or that the drill means not to hold; says which were written.
pub(super) fn write(
    drills: &[Checked],
    folder: &Path,
    words: &Words,
) -> Result<Vec<PathBuf>, (PathBuf, io::Error)> {
    let at = |path: &Path, error| (path.to_owned(), error);
    fs::create_dir_all(folder).map_err(|error| at(folder, error))?;
    let mut written = Vec::new();
    for drill in drills {
        let properties = drill.proof.iter().flat_map(|p| &p.properties);
        for property in properties.filter(|p| shows_a_breach(p)) {
            let path = folder.join(format!("{}.{}.actions", drill.name, property.id));
            let text = text(drill, property, &path, words);
            fs::write(&path, text).map_err(|error| at(&path, error))?;
            written.push(path);
        }
    }
    Ok(written)
}

fn shows_a_breach(property: &PropertyRead) -> bool {
    matches!(property.standing.as_str(), "broken" | "declared") && !property.way.is_empty()
}

fn text(drill: &Checked, property: &PropertyRead, path: &Path, words: &Words) -> String {
    let replay = Message::new("check-replay")
        .with("drill", Arg::Verbatim(drill.drill.clone()))
        .with("seed", Arg::Verbatim(drill.seed.to_string()))
        .with("path", Arg::Verbatim(path.display().to_string()));
    let heading = [told(property), replay].map(|message| format!("# {}", words.say(&message)));
    let mut lines = heading.to_vec();
    lines.extend(property.way.iter().cloned());
    lines.push(String::new());
    lines.join("\n")
}
