//! Reading Rust source just far enough to see which paths it names.
//!
//! Comments and literals are blanked first, so that only code counts.
//! It does not resolve names: a path is what is written, with every `use` group spelled out.

/// A path as written, and the line it starts on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Named {
    /// Line, counted from 1.
    pub(crate) line: usize,
    /// The names between the double colons; `*` for everything.
    pub(crate) segments: Vec<String>,
    /// Whether a group opens right after the first name, as in `crate::{`.
    pub(crate) grouped_at_root: bool,
}

/// The text with comments and the insides of string and character literals turned into spaces.
pub(crate) fn code_only(text: &str) -> String {
    let bytes = text.as_bytes();
    let mut out = bytes.to_vec();
    let mut at = 0;
    while at < bytes.len() {
        let end = match bytes[at] {
            b'/' if bytes.get(at + 1) == Some(&b'/') => line_end(bytes, at),
            b'/' if bytes.get(at + 1) == Some(&b'*') => block_end(bytes, at),
            b'"' => string_end(bytes, at),
            b'r' if !follows_name(bytes, at) => raw_string_end(bytes, at).unwrap_or(at),
            b'\'' => character_end(bytes, at).unwrap_or(at),
            _ => at,
        };
        if end == at {
            at += 1;
            continue;
        }
        out[at..end]
            .iter_mut()
            .filter(|byte| **byte != b'\n')
            .for_each(|byte| *byte = b' ');
        at = end;
    }
    String::from_utf8(out).expect("only whole literals and comments were replaced by spaces")
}

/// Every path of two names or more, and every `use` of a single name.
pub(crate) fn paths(code: &str) -> Vec<Named> {
    let bytes = code.as_bytes();
    let mut found = Vec::new();
    let mut at = 0;
    let mut after_use = false;
    while at < bytes.len() {
        if !starts_name(bytes[at]) || follows_name(bytes, at) {
            after_use &= bytes[at].is_ascii_whitespace() || bytes[at] == b':';
            at += 1;
            continue;
        }
        let line = bytes[..at].split(|byte| *byte == b'\n').count();
        let mut leaves = Vec::new();
        let (end, grouped_at_root) = tree(bytes, at, &[], &mut leaves);
        for segments in leaves {
            if segments.len() > 1 || after_use {
                found.push(Named {
                    line,
                    segments,
                    grouped_at_root,
                });
            }
        }
        after_use = &code[at..end] == "use";
        at = end;
    }
    found
}

/// Reads one path or group from `at`; returns where it ends and whether its first name opens a group.
fn tree(
    bytes: &[u8],
    at: usize,
    prefix: &[String],
    leaves: &mut Vec<Vec<String>>,
) -> (usize, bool) {
    let mut segments = prefix.to_vec();
    let mut at = at;
    loop {
        let end = name_end(bytes, at);
        segments.push(String::from_utf8_lossy(&bytes[at..end]).into_owned());
        let Some(next) = after_colons(bytes, end) else {
            leaves.push(segments);
            return (end, false);
        };
        match bytes.get(next) {
            Some(b'{') => {
                let root = segments.len() == 1;
                return (group(bytes, next + 1, &segments, leaves), root);
            }
            Some(b'*') => {
                segments.push("*".to_owned());
                leaves.push(segments);
                return (next + 1, false);
            }
            Some(byte) if starts_name(*byte) => at = next,
            _ => {
                leaves.push(segments);
                return (end, false);
            }
        }
    }
}

/// Reads the inside of a `{...}` group; returns the place after its closing brace.
fn group(bytes: &[u8], at: usize, prefix: &[String], leaves: &mut Vec<Vec<String>>) -> usize {
    let mut at = at;
    while at < bytes.len() {
        match bytes[at] {
            b'}' => return at + 1,
            b'*' => {
                let mut segments = prefix.to_vec();
                segments.push("*".to_owned());
                leaves.push(segments);
                at += 1;
            }
            byte if starts_name(byte) => at = tree(bytes, at, prefix, leaves).0,
            _ => at += 1,
        }
    }
    at
}

/// The place after `::` and spaces around it, if that is what follows.
fn after_colons(bytes: &[u8], at: usize) -> Option<usize> {
    let colons = skip_space(bytes, at);
    (bytes.get(colons..colons + 2) == Some(b"::")).then(|| skip_space(bytes, colons + 2))
}

fn skip_space(bytes: &[u8], at: usize) -> usize {
    at + bytes[at..]
        .iter()
        .take_while(|byte| byte.is_ascii_whitespace())
        .count()
}

fn starts_name(byte: u8) -> bool {
    byte.is_ascii_alphabetic() || byte == b'_'
}

fn name_end(bytes: &[u8], at: usize) -> usize {
    at + bytes[at..]
        .iter()
        .take_while(|byte| byte.is_ascii_alphanumeric() || **byte == b'_')
        .count()
}

fn follows_name(bytes: &[u8], at: usize) -> bool {
    at > 0 && (bytes[at - 1].is_ascii_alphanumeric() || bytes[at - 1] == b'_')
}

fn line_end(bytes: &[u8], at: usize) -> usize {
    at + bytes[at..]
        .iter()
        .take_while(|byte| **byte != b'\n')
        .count()
}

fn block_end(bytes: &[u8], at: usize) -> usize {
    let (mut at, mut depth) = (at + 2, 1);
    while at < bytes.len() && depth > 0 {
        match bytes.get(at..at + 2) {
            Some(b"/*") => (at, depth) = (at + 2, depth + 1),
            Some(b"*/") => (at, depth) = (at + 2, depth - 1),
            _ => at += 1,
        }
    }
    at.min(bytes.len())
}

fn string_end(bytes: &[u8], at: usize) -> usize {
    let mut at = at + 1;
    while at < bytes.len() {
        match bytes[at] {
            b'\\' => at += 2,
            b'"' => return at + 1,
            _ => at += 1,
        }
    }
    bytes.len()
}

fn raw_string_end(bytes: &[u8], at: usize) -> Option<usize> {
    let hashes = bytes[at + 1..]
        .iter()
        .take_while(|byte| **byte == b'#')
        .count();
    let open = at + 1 + hashes;
    if bytes.get(open) != Some(&b'"') {
        return None;
    }
    let close: Vec<u8> = std::iter::once(b'"')
        .chain(std::iter::repeat_n(b'#', hashes))
        .collect();
    let length = bytes[open + 1..]
        .windows(close.len())
        .position(|window| window == close)?;
    Some(open + 1 + length + close.len())
}

/// The end of a character literal; none for a lifetime, which has no closing quote.
fn character_end(bytes: &[u8], at: usize) -> Option<usize> {
    if bytes.get(at + 1) == Some(&b'\\') {
        let close = bytes[at + 3..].iter().position(|byte| *byte == b'\'')?;
        return Some(at + 3 + close + 1);
    }
    let text = std::str::from_utf8(&bytes[at + 1..(at + 5).min(bytes.len())]);
    let width = match text {
        Ok(text) => text.chars().next()?.len_utf8(),
        Err(error) => std::str::from_utf8(&bytes[at + 1..at + 1 + error.valid_up_to()])
            .ok()?
            .chars()
            .next()?
            .len_utf8(),
    };
    (bytes.get(at + 1 + width) == Some(&b'\'')).then_some(at + 2 + width)
}

#[cfg(test)]
mod tests {
    use super::{code_only, paths};

    fn written(text: &str) -> Vec<String> {
        paths(&code_only(text))
            .iter()
            .map(|named| named.segments.join("::"))
            .collect()
    }

    #[test]
    fn comments_and_literals_name_nothing() {
        let text = "// a::b\n/* c::d /* e::f */ g::h */ \"i::j \\\" k::l\" r#\"m::n\" o::p\"# '\\'' ':' 'é' fn x<'a>() {}";
        assert_eq!(written(text), Vec::<String>::new());
    }

    #[test]
    fn groups_are_spelled_out() {
        let expected = ["std::fs", "std::io::Read", "std::io::*", "ron", "a::b"];
        assert_eq!(
            written("use std::{fs, io::{Read, *}};\nuse ron as r;\nlet c = a :: b::<u8>();"),
            expected
        );
    }

    #[test]
    fn lines_and_groups_at_the_root_are_known() {
        let found =
            paths("\n\nuse crate::{\n    units::Volts,\n};\nuse crate::units::{Amps, Volts};");
        assert_eq!(
            found.iter().map(|named| named.line).collect::<Vec<_>>(),
            [3, 6, 6]
        );
        assert_eq!(
            found
                .iter()
                .map(|named| named.grouped_at_root)
                .collect::<Vec<_>>(),
            [true, false, false]
        );
    }

    #[test]
    fn lifetimes_are_not_the_start_of_a_literal() {
        assert_eq!(
            written("fn f<'a>(x: &'a str) -> std::fs::File { 'outer: loop {} }"),
            ["std::fs::File"]
        );
    }
}
