//! Apparatus that several sites share: each piece is written once, and a site takes it up by its name.
//!
//! A part of a site that says `like: "name"` has all fields of that piece that it doesn't give itself.
//! They are put into the text of the site before it is read, so that there is one way of reading; `take_up.rs` finds the place of a fault again.
//! The form of each piece is judged here, its meaning where it is taken up; a piece that no site takes up is named, because its meaning is not judged.

use std::collections::BTreeSet;
use std::ops::Range;

use serde::Deserialize;
use serde::de::DeserializeOwned;

use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source};
use super::library::{Text, source};
use super::outline::{Struct, structs};
use super::site_file::{BatteryFile, CordFile, GeneratorFile, TransferFile, TransformerFile};

/// The version of apparatus files that this program reads.
const APPARATUS_VERSION: u32 = 1;
/// The field that names the piece that something is like.
pub(super) const LIKE: &str = "like";
/// The field that no piece hands on.
const NAME: &str = "name";

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct ApparatusFile {
    /// Version of the format.
    version: u32,
    /// Generators, with fields of [Generator](#generator); none when left out.
    #[serde(default)]
    generators: Vec<PieceFile>,
    /// Cords, with fields of [Cord](#cord); none when left out.
    #[serde(default)]
    cords: Vec<PieceFile>,
    /// Pole transformers, with fields of [Transformer](#transformer); none when left out.
    #[serde(default)]
    transformers: Vec<PieceFile>,
    /// Transfer switches, with fields of [Transfer](#transfer); none when left out.
    #[serde(default)]
    transfers: Vec<PieceFile>,
    /// Batteries, with fields of [Battery](#battery); none when left out.
    #[serde(default)]
    batteries: Vec<PieceFile>,
}

/// A piece of apparatus: its name, and any of the fields of what it is; the site gives the others.
#[derive(Debug, Deserialize)]
struct PieceFile {
    /// Name, small letters and hyphens.
    name: String,
    /// Another piece of its kind, whose fields it has too where it doesn't give them itself; none when left out.
    #[serde(default)]
    like: Option<String>,
}

/// What a piece can be.
#[derive(Debug)]
pub(super) struct Kind {
    /// The field of a site that takes it up.
    pub(super) field: &'static str,
    /// What it is called in a fault.
    pub(super) word: &'static str,
    /// The list of the apparatus file that it stands in.
    list: &'static str,
    /// Whether it has a name in a site too.
    named: bool,
    /// The faults of form of one piece in its file.
    form: fn(&Source<'_>, &Struct, &Self) -> Vec<Diagnostic>,
}

/// All that a piece can be.
pub(super) const KINDS: [Kind; 5] = [
    Kind {
        field: "generator",
        word: "generator",
        list: "generators",
        named: false,
        form: form::<GeneratorFile>,
    },
    Kind {
        field: "cords",
        word: "cord",
        list: "cords",
        named: true,
        form: form::<CordFile>,
    },
    Kind {
        field: "transformer",
        word: "transformer",
        list: "transformers",
        named: false,
        form: form::<TransformerFile>,
    },
    Kind {
        field: "transfers",
        word: "transfer",
        list: "transfers",
        named: true,
        form: form::<TransferFile>,
    },
    Kind {
        field: "battery",
        word: "battery",
        list: "batteries",
        named: false,
        form: form::<BatteryFile>,
    },
];

/// A field as it stands in an apparatus file.
#[derive(Debug, Clone)]
pub(super) struct Part {
    /// Its name.
    pub(super) field: String,
    /// Which of the files.
    pub(super) file: usize,
    /// Where in it: name, colon and value.
    pub(super) range: Range<usize>,
}

#[derive(Debug)]
struct Piece {
    kind: &'static Kind,
    name: String,
    /// Where its name stands.
    name_at: usize,
    like: Option<String>,
    /// Where the name of what it is like stands.
    like_at: usize,
    file: usize,
    own: Vec<Part>,
    /// Whether its own fields can be relied on.
    sound: bool,
}

/// The pieces of all apparatus files of a folder.
#[derive(Debug, Default)]
pub(super) struct Apparatus {
    pub(super) texts: Vec<Text>,
    pieces: Vec<Piece>,
    /// Whether a file could not be read, so that nobody knows what it names.
    nameless: bool,
}

impl Apparatus {
    /// The pieces of these files, and what is wrong with them.
    pub(super) fn read(texts: Vec<Text>, faults: &mut Vec<Diagnostic>) -> Self {
        let mut apparatus = Self::default();
        for (index, text) in texts.iter().enumerate() {
            let own = source(text);
            match own.parse(APPARATUS_VERSION, |file: &ApparatusFile| file.version) {
                Ok(file) => apparatus.add(&own, index, &file, faults),
                Err(misread) => {
                    faults.extend(misread.faults);
                    apparatus.nameless = true;
                }
            }
        }
        apparatus.texts = texts;
        for index in 0..apparatus.pieces.len() {
            faults.extend(apparatus.unlike(index));
        }
        apparatus
    }

    fn add(
        &mut self,
        own: &Source<'_>,
        index: usize,
        file: &ApparatusFile,
        faults: &mut Vec<Diagnostic>,
    ) {
        let stands = structs(own.text);
        for kind in &KINDS {
            let there = stands.iter().filter(|s| s.field == kind.list);
            for (piece, at) in file.list(kind).iter().zip(there) {
                let value = |name: &str| at.field(name).map_or(at.whole.start, |f| f.value.start);
                let mut wrong = (kind.form)(own, at, kind);
                if self.piece(kind, &piece.name).is_some() {
                    let message = Message::new("error-name-twice")
                        .with("name", Arg::Verbatim(piece.name.clone()));
                    let quoted = format!("\"{}\"", piece.name);
                    wrong.push(own.at_offset(value(NAME), &quoted, message));
                }
                let fields = at
                    .fields
                    .iter()
                    .filter(|f| ![NAME, LIKE].contains(&f.name.as_str()));
                let parts = fields.map(|f| Part {
                    field: f.name.clone(),
                    file: index,
                    range: f.whole.clone(),
                });
                self.pieces.push(Piece {
                    kind,
                    name: piece.name.clone(),
                    name_at: value(NAME),
                    like: piece.like.clone(),
                    like_at: value(LIKE),
                    file: index,
                    own: parts.collect(),
                    sound: wrong.is_empty(),
                });
                faults.append(&mut wrong);
            }
        }
    }

    fn piece(&self, kind: &Kind, name: &str) -> Option<usize> {
        let is = |p: &Piece| p.kind.field == kind.field && p.name == name;
        self.pieces.iter().position(is)
    }

    /// What a piece hands on, its own fields before those of what it is like; none if that can't be told.
    pub(super) fn parts(&self, kind: &Kind, name: &str) -> Option<Vec<Part>> {
        let mut parts: Vec<Part> = Vec::new();
        let mut passed = Vec::new();
        let mut next = Some(name);
        while let Some(name) = next {
            let index = self.piece(kind, name)?;
            let piece = self.pieces.get(index)?;
            if !piece.sound || passed.contains(&index) {
                return None;
            }
            passed.push(index);
            let had = |part: &&Part| parts.iter().any(|p| p.field == part.field);
            let new: Vec<Part> = piece.own.iter().filter(|p| !had(p)).cloned().collect();
            parts.extend(new);
            next = piece.like.as_deref();
        }
        Some(parts)
    }

    /// The fault that nothing of this kind has this name; none if it is there, or may be.
    pub(super) fn unknown(
        &self,
        own: &Source<'_>,
        at: usize,
        kind: &Kind,
        name: &str,
    ) -> Option<Diagnostic> {
        if self.nameless || self.piece(kind, name).is_some() {
            return None;
        }
        let message = Message::new("error-unknown-name")
            .with("name", Arg::Verbatim(name.to_owned()))
            .said("kind", Message::new(format!("error-kind-{}", kind.word)));
        let known = self.pieces.iter().filter(|p| p.kind.field == kind.field);
        let known: Vec<&str> = known.map(|p| p.name.as_str()).collect();
        let mut fault = own
            .at_offset(at, &format!("\"{name}\""), message)
            .with_nearest(known.iter().copied());
        if known.is_empty() {
            let none = Message::new("error-hint-apparatus")
                .with("list", Arg::Verbatim(kind.list.to_owned()));
            fault.hint = Some(none);
        }
        Some(fault)
    }

    /// The pieces that none of these sites takes up, by itself or through another piece.
    pub(super) fn unused(&self, sites: &[Text]) -> Vec<Diagnostic> {
        let mut used = BTreeSet::new();
        for site in sites {
            for part in structs(&site.text) {
                let kind = KINDS.iter().find(|k| k.field == part.field);
                let name = part
                    .field(LIKE)
                    .and_then(|f| site.text.get(f.value.clone()));
                let mut next = kind
                    .zip(name)
                    .and_then(|(kind, name)| self.piece(kind, name.trim_matches('"')));
                while let Some(index) = next.filter(|index| used.insert(*index)) {
                    let piece = self.pieces.get(index);
                    next = piece.and_then(|p| self.piece(p.kind, p.like.as_deref()?));
                }
            }
        }
        let pieces = self.pieces.iter().enumerate();
        let unused = pieces.filter(|(index, piece)| piece.sound && !used.contains(index));
        let told = unused.filter_map(|(_, piece)| {
            let own = source(self.texts.get(piece.file)?);
            let message =
                Message::new("check-unused-piece").with("name", Arg::Verbatim(piece.name.clone()));
            Some(own.at_offset(piece.name_at, &format!("\"{}\"", piece.name), message))
        });
        told.collect()
    }

    /// What is wrong with what a piece is like: it isn't there, or leads back to the piece.
    fn unlike(&self, index: usize) -> Option<Diagnostic> {
        let piece = self.pieces.get(index)?;
        let own = source(self.texts.get(piece.file)?);
        let like = piece.like.as_deref()?;
        let Some(first) = self.piece(piece.kind, like) else {
            return self.unknown(&own, piece.like_at, piece.kind, like);
        };
        let mut passed = vec![index];
        let mut next = Some(first);
        while let Some(at) = next.filter(|at| !passed.contains(at)) {
            passed.push(at);
            let like = self.pieces.get(at).and_then(|p| p.like.as_deref());
            next = like.and_then(|like| self.piece(piece.kind, like));
        }
        // A circle is told once, at the first of its pieces.
        let round = next == Some(index) && passed.iter().all(|at| index <= *at);
        let names = passed
            .iter()
            .chain(&next)
            .filter_map(|at| self.pieces.get(*at));
        let names: Vec<&str> = names.map(|p| p.name.as_str()).collect();
        let message =
            Message::new("error-like-circle").with("names", Arg::Verbatim(names.join(" → ")));
        round.then(|| own.at_offset(piece.like_at, &format!("\"{like}\""), message))
    }
}

impl ApparatusFile {
    fn list(&self, kind: &Kind) -> &[PieceFile] {
        match kind.field {
            "generator" => &self.generators,
            "cords" => &self.cords,
            "transformer" => &self.transformers,
            "transfers" => &self.transfers,
            _ => &self.batteries,
        }
    }
}

/// The faults of form of one piece, of which fields may be missing.
fn form<T: DeserializeOwned>(own: &Source<'_>, at: &Struct, kind: &Kind) -> Vec<Diagnostic> {
    let hidden = |name: &str| name == LIKE || name == NAME && !kind.named;
    let hidden: Vec<Range<usize>> = at
        .fields
        .iter()
        .filter(|f| hidden(&f.name))
        .map(|f| f.whole.start..with_comma(own.text, f.whole.end))
        .collect();
    // All but the piece is blanked, so that its places stay what they are.
    let alone = own.text.char_indices().map(|(i, c)| {
        let shown = at.whole.contains(&i) && !hidden.iter().any(|h| h.contains(&i));
        if shown || c == '\n' { c } else { ' ' }
    });
    let alone: String = alone.collect();
    let read = Source {
        text: &alone,
        ..*own
    }
    .data::<T>();
    let faults = read.err().unwrap_or_default().into_iter();
    faults
        .filter(|f| f.message.id != "error-missing-field")
        .map(|f| Diagnostic {
            hint: f.hint,
            ..own.at_line(f.line, f.column, &f.text, f.message)
        })
        .collect()
}

/// The end of something with the comma after it.
pub(super) fn with_comma(text: &str, end: usize) -> usize {
    let rest = text.get(end..).unwrap_or_default();
    let blank = rest.len() - rest.trim_start().len();
    let comma = rest.get(blank..).is_some_and(|r| r.starts_with(','));
    end + if comma { blank + 1 } else { 0 }
}
