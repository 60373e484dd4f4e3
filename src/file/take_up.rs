//! A site's text with the apparatus that it takes up put in, and the place of a fault in the files as they were written.

use std::ops::Range;

use crate::words::Message;

use super::apparatus::{Apparatus, KINDS, Kind, LIKE, with_comma};
use super::diagnostic::{Diagnostic, Source, offset};
use super::library::{Text, source};
use super::outline::{Struct, structs};

/// A stretch of the whole text, and where it was written.
#[derive(Debug)]
struct Stretch {
    /// Bytes of the whole text.
    at: Range<usize>,
    /// The apparatus file; none is the site's own.
    file: Option<usize>,
    /// Bytes of that file; fewer than in the whole text where something was put in.
    written: Range<usize>,
}

/// A site's text with all that it takes up.
#[derive(Debug)]
pub(super) struct TakenUp<'a> {
    /// The site's file, and the whole text.
    pub(super) whole: Text,
    /// What it names that isn't there.
    pub(super) faults: Vec<Diagnostic>,
    written: Text,
    apparatus: &'a Apparatus,
    stretches: Vec<Stretch>,
    /// Where the brackets close in which fields are missing because what they are like is not known; bytes of the site's file.
    unfilled: Vec<usize>,
}

impl<'a> TakenUp<'a> {
    /// The text of a site with what it takes up.
    pub(super) fn new(written: Text, apparatus: &'a Apparatus) -> Self {
        let mut taken = Self {
            whole: Text {
                file: written.file.clone(),
                text: String::new(),
            },
            faults: Vec::new(),
            apparatus,
            stretches: Vec::new(),
            unfilled: Vec::new(),
            written: Text {
                file: written.file.clone(),
                text: String::new(),
            },
        };
        let mut done = 0;
        for part in structs(&written.text) {
            let kind = KINDS.iter().find(|k| k.field == part.field);
            let like = part.field(LIKE);
            if let (Some(kind), Some(like)) = (kind, like) {
                taken.put(&written.text, None, done..like.whole.start);
                taken.fill(&written, kind, &part);
                done = with_comma(&written.text, like.whole.end);
            }
        }
        taken.put(&written.text, None, done..written.text.len());
        taken.written = written;
        taken
    }

    /// Puts in the fields that a part of the site doesn't give itself.
    fn fill(&mut self, written: &Text, kind: &Kind, part: &Struct) {
        let own = source(written);
        let Some(like) = part.field(LIKE) else {
            return;
        };
        let at = like.value.start;
        let quoted = written.text.get(like.value.clone()).unwrap_or_default();
        let name = quoted.strip_prefix('"').and_then(|q| q.strip_suffix('"'));
        let Some(name) = name else {
            let message = Message::new("error-expected-text");
            self.faults.push(own.at_offset(at, quoted, message));
            self.unfilled.push(part.whole.end - 1);
            return;
        };
        let apparatus = self.apparatus;
        let Some(parts) = apparatus.parts(kind, name) else {
            self.faults.extend(apparatus.unknown(&own, at, kind, name));
            self.unfilled.push(part.whole.end - 1);
            return;
        };
        for given in parts.iter().filter(|p| part.field(&p.field).is_none()) {
            let text = apparatus.texts.get(given.file).map_or("", |t| &t.text);
            self.put(text, Some(given.file), given.range.clone());
            // On a line of its own: what is put in may end in a comment.
            let begin = self.whole.text.len();
            self.whole.text.push_str("\n, ");
            self.stretches.push(Stretch {
                at: begin..self.whole.text.len(),
                file: None,
                written: at..at,
            });
        }
    }

    fn put(&mut self, text: &str, file: Option<usize>, written: Range<usize>) {
        let begin = self.whole.text.len();
        let own = text.get(written.clone()).unwrap_or_default();
        self.whole.text.push_str(own);
        self.stretches.push(Stretch {
            at: begin..self.whole.text.len(),
            file,
            written,
        });
    }

    /// Whether parts of the site are not known.
    pub(super) fn is_unfilled(&self) -> bool {
        !self.unfilled.is_empty()
    }

    /// The faults of the whole text, each in the file and at the place where it was written, without those that come of what isn't known.
    pub(super) fn placed(&self, faults: Vec<Diagnostic>) -> Vec<Diagnostic> {
        let placed = faults.into_iter().filter_map(|fault| {
            if fault.file != self.whole.file || fault.line == 0 {
                return Some(fault);
            }
            let at = offset(&self.whole.text, fault.line, fault.column);
            let (file, at) = self.written(at);
            let own = file.map_or_else(|| source(&self.written), source);
            let closes = || skip_blank(&own, at);
            if file.is_none()
                && fault.message.id == "error-missing-field"
                && self.unfilled.contains(&closes())
            {
                return None;
            }
            Some(Diagnostic {
                hint: fault.hint,
                ..own.at_offset(at, &fault.text, fault.message)
            })
        });
        placed.collect()
    }

    /// Where a byte of the whole text was written: the apparatus file, or the site's own, and the byte there.
    fn written(&self, at: usize) -> (Option<&Text>, usize) {
        let stretch = self.stretches.iter().find(|s| s.at.contains(&at));
        let Some(stretch) = stretch.or(self.stretches.last()) else {
            return (None, at);
        };
        let file = stretch.file.and_then(|f| self.apparatus.texts.get(f));
        let inside = at.saturating_sub(stretch.at.start);
        (
            file,
            stretch.written.end.min(stretch.written.start + inside),
        )
    }
}

/// The next byte that is not blank.
fn skip_blank(own: &Source<'_>, at: usize) -> usize {
    let rest = own.text.get(at..).unwrap_or_default();
    at + rest.len() - rest.trim_start().len()
}
