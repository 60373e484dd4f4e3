//! The description of the file formats, held to the types that read them.
//!
//! `scenarios/SCHEMA.md` is written from the fields and their comments; `OUTAGE_DRILL_ACCEPT=1` writes it anew.
//! Ranges are told where a file is read, not here.

use std::collections::BTreeSet;
use std::fmt::Write as _;
use std::fs;
use std::path::Path;

/// A type of the format: its name, its comment, and its fields or choices.
struct Section {
    name: String,
    about: String,
    choices: bool,
    entries: Vec<Entry>,
}

struct Entry {
    name: String,
    kind: String,
    left_out: bool,
    about: String,
    depth: usize,
}

/// All types that the files of an author are read into, in the order of their files; how a window was left is no author's.
fn sections() -> Vec<Section> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/src/file");
    let mut paths: Vec<_> = fs::read_dir(folder)
        .unwrap()
        .map(|e| e.unwrap().path())
        .filter(|p| p.extension().is_some_and(|e| e == "rs") && !p.ends_with("settings.rs"))
        .collect();
    paths.sort();
    let texts = paths.iter().map(|p| fs::read_to_string(p).unwrap());
    texts.flat_map(|text| of(&text)).collect()
}

fn of(text: &str) -> Vec<Section> {
    let lines: Vec<&str> = text.lines().collect();
    let mut sections = Vec::new();
    for (at, line) in lines.iter().enumerate() {
        if !(line.starts_with("#[derive(") && line.contains("Deserialize")) {
            continue;
        }
        let Some(head) = (at..at + 4).find(|i| lines[*i].trim_end().ends_with('{')) else {
            continue;
        };
        let words: Vec<&str> = lines[head].split_whitespace().collect();
        let Some(kind) = words.iter().position(|w| *w == "struct" || *w == "enum") else {
            continue;
        };
        let before = lines[..at].iter().rev();
        let about = before
            .take_while(|l| l.starts_with("///"))
            .map(|l| l.trim_start_matches("///").trim());
        let about: Vec<&str> = about.collect();
        let body = lines[head + 1..].iter().take_while(|l| **l != "}");
        sections.push(Section {
            name: words[kind + 1].trim_end_matches("File").to_owned(),
            about: about.into_iter().rev().collect::<Vec<_>>().join(" "),
            choices: words[kind] == "enum",
            entries: entries(body.copied()),
        });
    }
    sections
}

fn entries<'a>(body: impl Iterator<Item = &'a str>) -> Vec<Entry> {
    let mut entries = Vec::new();
    let (mut about, mut left_out) = (Vec::new(), false);
    for line in body {
        let text = line.trim();
        if let Some(comment) = text.strip_prefix("///") {
            about.push(comment.trim().to_owned());
        } else if text.starts_with("#[") {
            left_out |= text.contains("default");
        } else if text.starts_with(|c: char| c.is_alphabetic()) {
            let text = text.trim_start_matches("pub(super) ").trim_end_matches(',');
            let (name, kind) = text.split_once(": ").unwrap_or_else(|| {
                let end = text.find([' ', '(']).unwrap_or(text.len());
                text.split_at(end)
            });
            entries.push(Entry {
                name: name.to_owned(),
                kind: kind.trim_matches([' ', '{']).to_owned(),
                left_out,
                about: about.join(" "),
                depth: (line.len() - line.trim_start().len()) / 4 - 1,
            });
            (about, left_out) = (Vec::new(), false);
        }
    }
    entries
}

/// A type in words.
fn in_words(kind: &str) -> String {
    let inner = |of: &str| kind.strip_prefix(of).and_then(|k| k.strip_suffix('>'));
    match kind {
        "f64" => "a number".to_owned(),
        "u8" | "u16" | "u32" | "u64" | "i64" | "usize" => "a whole number".to_owned(),
        "String" => "a text in quotes".to_owned(),
        "bool" => "`true` or `false`".to_owned(),
        "char" => "a letter in single quotes".to_owned(),
        "" => String::new(),
        _ => match (inner("Vec<"), inner("Option<"), inner("BTreeMap<")) {
            (Some(of), ..) => format!("a list `[…]` of {}", in_words(of)),
            (_, Some(of), _) => in_words(of),
            (_, _, Some(of)) => {
                let (key, value) = of.split_once(", ").unwrap_or((of, ""));
                format!(
                    "pairs `{{…: …}}` of {} and {}",
                    in_words(key),
                    in_words(value)
                )
            }
            _ if kind.starts_with('(') => {
                let parts = kind.trim_matches(['(', ')']).split(", ").map(in_words);
                format!("`(…)` with {}", parts.collect::<Vec<_>>().join(" and "))
            }
            _ => format!(
                "[{0}](#{1})",
                kind.trim_end_matches("File"),
                kind.trim_end_matches("File").to_lowercase()
            ),
        },
    }
}

fn schema() -> String {
    let mut text = String::from(
        "# The fields of scenario files\n\n\
         Site, apparatus, drill, lesson and local files are RON: fields in round brackets, lists in square ones, texts in quotes, `//` before a comment.\n\
         Units stand in the names of fields or in their meaning.\n\
         A field that may be left out says what it is then; all others have to be there, and a misspelt one is refused.\n\
         A generator, cord, transformer, transfer switch or battery of a site may say `like: \"name\"`: it then has all fields of that piece of the apparatus files which it doesn't give itself.\n\
         `GUIDE.md` shows how to write a drill from the beginning.\n",
    );
    let mut sections = sections();
    let first = [
        "Site",
        "Apparatus",
        "Piece",
        "Drill",
        "Lesson",
        "LocalFacts",
    ];
    sections.sort_by_key(|s| {
        first
            .iter()
            .position(|f| *f == s.name)
            .unwrap_or(first.len())
    });
    for section in &sections {
        write!(text, "\n## {}\n", section.name).unwrap();
        if !section.about.is_empty() {
            write!(text, "\n{}\n", section.about).unwrap();
        }
        text.push_str(if section.choices {
            "\nOne of:\n\n"
        } else {
            "\n"
        });
        for entry in &section.entries {
            let kind = in_words(&entry.kind);
            let kind = if kind.is_empty() {
                kind
            } else {
                format!(", {kind}")
            };
            let left_out = if entry.left_out {
                ", may be left out"
            } else {
                ""
            };
            let indent = "  ".repeat(entry.depth);
            writeln!(
                text,
                "{indent}- `{}`{kind}{left_out}: {}",
                entry.name, entry.about
            )
            .unwrap();
        }
    }
    text
}

#[test]
fn the_kept_description_is_that_of_the_types() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios/SCHEMA.md");
    let schema = schema();
    if std::env::var_os("OUTAGE_DRILL_ACCEPT").is_some() {
        fs::write(&path, &schema).unwrap();
    }
    let kept = fs::read_to_string(&path).unwrap_or_default();
    assert!(
        kept == schema,
        "scenarios/SCHEMA.md is not what the types say"
    );
}

#[test]
fn every_field_and_choice_says_what_it_means_and_every_link_leads_somewhere() {
    let sections = sections();
    let names: BTreeSet<&str> = sections.iter().map(|s| s.name.as_str()).collect();
    assert!(names.contains("Site") && names.contains("Drill") && names.contains("Lesson"));
    for section in &sections {
        assert!(!section.entries.is_empty(), "{}", section.name);
        for entry in &section.entries {
            assert!(!entry.about.is_empty(), "{}: {}", section.name, entry.name);
            let named = entry.kind.split(|c: char| !c.is_alphanumeric());
            for file in named.filter_map(|n| n.strip_suffix("File")) {
                assert!(names.contains(file), "{}: {}", section.name, entry.kind);
            }
        }
    }
}
