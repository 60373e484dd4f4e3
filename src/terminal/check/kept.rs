//! Proofs kept from earlier checks, in a folder that the user names.
//!
//! Each is a file called by a digest of everything the proof hangs on: the drill's files, the variant, what is proved, and the program itself.
//! So a proof that anything could have changed is never found again; old files can be deleted at any time.
//! A file that can't be read or is torn counts as none; that one can't be written only costs time.

use std::env;
use std::fs;
use std::path::PathBuf;

use serde_json::Value;

use crate::file::{Library, digest};
use crate::session::{ProofRead, PropertyRead, VariantRead, proof_digest};
use crate::terminal::JSON_VERSION;

use super::told::proof_json;

/// A folder of proofs.
#[derive(Debug)]
pub(super) struct Kept {
    folder: PathBuf,
    /// The digest of the program.
    program: String,
}

impl Kept {
    /// The proofs in a folder; none if the program can't read itself, so that nothing would say what proved them.
    pub(super) fn open(folder: PathBuf) -> Option<Self> {
        let program = fs::read(env::current_exe().ok()?).ok()?;
        fs::create_dir_all(&folder).ok()?;
        Some(Self {
            folder,
            program: digest(&[program]),
        })
    }

    fn path(&self, library: &Library, drill: &str, variant: &VariantRead) -> Option<PathBuf> {
        let digest = proof_digest(library, drill, variant, &self.program)?;
        Some(self.folder.join(format!("{digest}.json")))
    }

    /// The proof of a variant, if it is kept.
    pub(super) fn read(
        &self,
        library: &Library,
        drill: &str,
        variant: &VariantRead,
    ) -> Option<ProofRead> {
        let text = fs::read_to_string(self.path(library, drill, variant)?).ok()?;
        proof_from(&serde_json::from_str(&text).ok()?)
    }

    /// Keeps the proof of a variant.
    pub(super) fn write(
        &self,
        library: &Library,
        drill: &str,
        variant: &VariantRead,
        proof: &ProofRead,
    ) {
        if let Some(path) = self.path(library, drill, variant) {
            let mut document = proof_json(proof, None);
            document["version"] = JSON_VERSION.into();
            document["sound"] = proof.sound.into();
            // What isn't written is proved anew.
            drop(fs::write(path, document.to_string()));
        }
    }
}

fn proof_from(document: &Value) -> Option<ProofRead> {
    let text = |value: &Value, name: &str| value[name].as_str().map(str::to_owned);
    let count = |name: &str| usize::try_from(document[name].as_u64()?).ok();
    let lines = |property: &Value| -> Option<Vec<String>> {
        let way = property["way"].as_array()?.iter();
        way.map(|line| line.as_str().map(str::to_owned)).collect()
    };
    (document["version"] == JSON_VERSION).then_some(())?;
    let properties = document["properties"].as_array()?.iter().map(|property| {
        Some(PropertyRead {
            id: text(property, "id")?,
            standing: text(property, "standing")?,
            because: text(property, "because"),
            way: lines(property)?,
        })
    });
    Some(ProofRead {
        properties: properties.collect::<Option<Vec<_>>>()?,
        states: count("states")?,
        solves: count("solves")?,
        bytes: count("bytes")?,
        like: text(document, "like"),
        sound: document["sound"].as_bool()?,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_proof_that_is_kept_is_read_back_as_it_was() {
        let proof = ProofRead {
            properties: vec![PropertyRead {
                id: "goes-on".to_owned(),
                standing: "broken".to_owned(),
                because: None,
                way: vec!["set main off".to_owned(), "wait 5s".to_owned()],
            }],
            states: 12,
            solves: 3,
            bytes: 4096,
            like: Some("as-written".to_owned()),
            sound: false,
        };
        let mut document = proof_json(&proof, None);
        document["version"] = JSON_VERSION.into();
        document["sound"] = false.into();
        assert_eq!(proof_from(&document), Some(proof));
        document["version"] = (JSON_VERSION + 1).into();
        assert_eq!(proof_from(&document), None);
    }
}
