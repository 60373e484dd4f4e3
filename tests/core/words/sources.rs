//! The program's own text, searched for message ids and for text that should have come from the word files.
//!
//! A small reader of Rust tokens, good enough for this package: line comments, string and raw string literals, attributes.
//! It doesn't know macros or nested block comments.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use std::path::PathBuf;

/// Literals of the front ends that are no text for people, or for people only who write files.
const NOT_FOR_LEARNERS: &[(&str, &str)] = &[
    (
        "outage-drill play {FIRST_DRILL}",
        "a command to type, the same in every language",
    ),
    (
        "outage-drill play {drill}{how}",
        "a command to type, the same in every language",
    ),
];

/// Files of the front ends that hold scripts of wishes, in the grammar of action files, and no text for people.
const SCRIPTS: &[&str] = &["src/window/gallery.rs"];

/// A file with its text.
struct File {
    path: String,
    text: String,
}

/// Everything under `src` and `scenarios`.
pub(super) struct Sources {
    rust: Vec<File>,
    literals: BTreeSet<String>,
    words: BTreeSet<String>,
}

impl Sources {
    pub(super) fn read() -> Self {
        let rust = files("src", "rs");
        let ron = files("scenarios", "ron");
        let literals = rust
            .iter()
            .flat_map(|file| literals(&file.text))
            .map(|(_, text)| text)
            .collect();
        let is_part = |c: char| c.is_ascii_alphanumeric() || c == '-';
        let words = rust
            .iter()
            .flat_map(literals_of)
            .chain(ron.iter().map(|file| file.text.clone()))
            .flat_map(|text| {
                text.split(|c| !is_part(c))
                    .map(str::to_owned)
                    .collect::<Vec<_>>()
            })
            .collect();
        Self {
            rust,
            literals,
            words,
        }
    }

    /// Whether some string literal of the program is exactly this.
    pub(super) fn has_literal(&self, text: &str) -> bool {
        self.literals.contains(text)
    }

    /// Whether this stands as a whole in a string literal of the program or anywhere in a scenario file.
    pub(super) fn has_word(&self, name: &str) -> bool {
        self.words.contains(name)
    }

    /// String literals of the front ends that read like text: two words or more.
    pub(super) fn raw_text(&self) -> Vec<String> {
        let front = self.rust.iter().filter(|file| {
            (file.path.starts_with("src/window") || file.path.starts_with("src/terminal"))
                && !SCRIPTS.contains(&file.path.as_str())
        });
        front
            .flat_map(|file| {
                literals(&before_tests(&file.text))
                    .into_iter()
                    .map(move |(line, text)| (file, line, text))
            })
            .filter(|(_, _, text)| {
                reads_like_text(text)
                    && !NOT_FOR_LEARNERS.iter().any(|(allowed, _)| allowed == text)
            })
            .map(|(file, line, text)| format!("{}:{line}: {text:?}", file.path))
            .collect()
    }
}

fn literals_of(file: &File) -> Vec<String> {
    literals(&file.text)
        .into_iter()
        .map(|(_, text)| text)
        .collect()
}

/// Message ids that the program names outright, with the place.
pub(super) fn literal_ids() -> Vec<(String, String)> {
    const CALLS: &[&str] = &["Message::new(\"", "say_id(\"", ".say(\""];
    let mut found = Vec::new();
    for file in files("src", "rs") {
        let text = before_tests(&file.text);
        for (index, line) in text
            .lines()
            .enumerate()
            .filter(|(_, line)| !line.trim_start().starts_with("//"))
        {
            for call in CALLS {
                for (at, _) in line.match_indices(call) {
                    let rest = &line[at + call.len()..];
                    let id = rest.split('"').next().unwrap_or_default();
                    found.push((id.to_owned(), format!("{}:{}", file.path, index + 1)));
                }
            }
            for (at, _) in line.match_indices("name_of(\"") {
                let id = line[at + 9..].split('"').next().unwrap_or_default();
                found.push((format!("name-{id}"), format!("{}:{}", file.path, index + 1)));
            }
        }
    }
    found
}

/// Two words of letters with a space between them, what stands in braces left out.
fn reads_like_text(text: &str) -> bool {
    let mut depth = 0_u32;
    let outside = text.chars().filter(|c| match c {
        '{' => {
            depth += 1;
            false
        }
        '}' => {
            depth = depth.saturating_sub(1);
            false
        }
        _ => depth == 0,
    });
    let outside: String = outside.collect();
    let letters = |word: &&str| word.chars().filter(|c| c.is_alphabetic()).count() > 1;
    outside.split(' ').filter(letters).count() > 1
}

/// The file up to its own tests, which stand last.
fn before_tests(text: &str) -> String {
    text.split("#[cfg(test)]")
        .next()
        .unwrap_or_default()
        .to_owned()
}

fn files(folder: &str, ending: &str) -> Vec<File> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut waiting = vec![root.join(folder)];
    let mut paths: Vec<PathBuf> = Vec::new();
    while let Some(folder) = waiting.pop() {
        let Ok(entries) = fs::read_dir(&folder) else {
            continue;
        };
        for path in entries.map(|entry| entry.unwrap().path()) {
            if path.is_dir() {
                waiting.push(path);
            } else if path.extension().is_some_and(|found| found == ending) {
                paths.push(path);
            }
        }
    }
    paths.sort();
    paths
        .into_iter()
        .map(|path| File {
            text: fs::read_to_string(&path).unwrap(),
            path: path
                .strip_prefix(root)
                .unwrap()
                .to_string_lossy()
                .into_owned(),
        })
        .collect()
}

/// String literals with their lines, those of comments and attributes left out.
fn literals(text: &str) -> Vec<(usize, String)> {
    let bytes: Vec<char> = text.chars().collect();
    let mut found = Vec::new();
    let (mut at, mut line) = (0, 1);
    while at < bytes.len() {
        match bytes[at] {
            '\n' => line += 1,
            '/' if bytes.get(at + 1) == Some(&'/') => at = skip_to(&bytes, at, '\n') - 1,
            '#' if matches!(bytes.get(at + 1), Some('[' | '!')) => {
                let end = end_of_attribute(&bytes, at);
                line += bytes[at..end].iter().filter(|c| **c == '\n').count();
                at = end;
                continue;
            }
            '\'' if bytes.get(at + 2) == Some(&'\'') => at += 2,
            '\'' if bytes.get(at + 1) == Some(&'\\') => at = skip_to(&bytes, at + 3, '\''),
            'r' if bytes.get(at + 1) == Some(&'"')
                || bytes.get(at + 1) == Some(&'#') && bytes.get(at + 2) == Some(&'"') =>
            {
                let hashes = usize::from(bytes[at + 1] == '#');
                let from = at + 2 + hashes;
                let mut end = from;
                while end < bytes.len()
                    && !(bytes[end] == '"' && (hashes == 0 || bytes.get(end + 1) == Some(&'#')))
                {
                    end += 1;
                }
                found.push((line, bytes[from..end].iter().collect()));
                line += bytes[from..end].iter().filter(|c| **c == '\n').count();
                at = end + hashes;
            }
            '"' => {
                let from = at + 1;
                let end = end_of_string(&bytes, from);
                found.push((line, bytes[from..end].iter().collect()));
                line += bytes[from..end].iter().filter(|c| **c == '\n').count();
                at = end;
            }
            _ => {}
        }
        at += 1;
    }
    found
}

fn skip_to(bytes: &[char], from: usize, wanted: char) -> usize {
    (from..bytes.len())
        .find(|at| bytes[*at] == wanted)
        .unwrap_or(bytes.len())
}

fn end_of_string(bytes: &[char], from: usize) -> usize {
    let mut at = from;
    while at < bytes.len() && bytes[at] != '"' {
        at += if bytes[at] == '\\' { 2 } else { 1 };
    }
    at.min(bytes.len())
}

/// Just after the bracket that closes an attribute.
fn end_of_attribute(bytes: &[char], from: usize) -> usize {
    let mut depth = 0;
    let mut at = from;
    while at < bytes.len() {
        match bytes[at] {
            '[' => depth += 1,
            ']' => {
                depth -= 1;
                if depth == 0 {
                    return at + 1;
                }
            }
            '"' => at = end_of_string(bytes, at + 1),
            _ => {}
        }
        at += 1;
    }
    at
}

#[test]
fn literals_are_found_and_comments_and_attributes_are_not() {
    let text = "// \"no\"\n#[expect(x, reason = \"not this\")]\nf(\"a b\", '\"', r\"c\", '\\'', \"d\\\"e\");\n";
    let found: Vec<(usize, String)> = literals(text);
    assert_eq!(
        found,
        [
            (3, "a b".to_owned()),
            (3, "c".to_owned()),
            (3, "d\\\"e".to_owned())
        ]
    );
}

#[test]
fn text_is_told_from_ids() {
    assert!(reads_like_text("Turn off"));
    assert!(!reads_like_text("turn-off {} {}"));
    assert!(!reads_like_text("{clock}: {text}, {rating}"));
}
