//! A folder of scenarios while somebody writes in it: whether its files are as they were when last looked at.
//!
//! It looks at names, sizes and times of change, and never at what stands in a file; so a file saved unchanged counts as changed.
//! It does not cover being told by the system: whoever wants to know has to ask now and then.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use super::diagnostic::Diagnostic;
use super::library::Library;

/// When a file was last changed, as the system tells it, and its size in bytes.
type Mark = (String, u64);

/// A folder of scenarios that is being written in.
#[derive(Debug, Clone)]
pub struct Watched {
    folder: PathBuf,
    seen: BTreeMap<PathBuf, Mark>,
}

impl Watched {
    /// This folder, as it is now.
    pub fn new(folder: &Path) -> Self {
        Self {
            folder: folder.to_owned(),
            seen: marks(folder),
        }
    }

    /// Reads the folder again if a file was changed, added or taken away since it was last looked at.
    pub fn changed(&mut self) -> Option<(Library, Vec<Diagnostic>)> {
        let now = marks(&self.folder);
        if now == self.seen {
            return None;
        }
        self.seen = now;
        Some(Library::load(&self.folder))
    }
}

/// The scenario and word files below a folder; what can't be listed is told when the folder is read.
fn marks(folder: &Path) -> BTreeMap<PathBuf, Mark> {
    let mut found = BTreeMap::new();
    let mut folders = vec![folder.to_owned()];
    while let Some(folder) = folders.pop() {
        let Ok(entries) = fs::read_dir(&folder) else {
            continue;
        };
        for path in entries.filter_map(Result::ok).map(|e| e.path()) {
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|e| e == "ron" || e == "ftl") {
                let about = fs::metadata(&path).ok();
                let mark = about.map_or((String::new(), 0), |m| {
                    (format!("{:?}", m.modified().ok()), m.len())
                });
                found.insert(path, mark);
            }
        }
    }
    found
}
