//! Where the parts of a text of ours stand: its structs, lists and fields, by their brackets and commas.
//!
//! It reads no values and finds no faults; of a text that the reader of the format refuses, what it says means nothing.

use std::ops::Range;

/// A field of a struct.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Field {
    /// Its name.
    pub(super) name: String,
    /// Name, colon and value, as bytes of the text.
    pub(super) whole: Range<usize>,
    /// The value.
    pub(super) value: Range<usize>,
}

/// A struct that stands somewhere in a text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Struct {
    /// The field whose value it is, or in whose list it is; empty for the whole text.
    pub(super) field: String,
    /// From its bracket to the one that closes it.
    pub(super) whole: Range<usize>,
    /// Its fields in order.
    pub(super) fields: Vec<Field>,
}

impl Struct {
    /// Its field of this name.
    pub(super) fn field(&self, name: &str) -> Option<&Field> {
        self.fields.iter().find(|f| f.name == name)
    }
}

/// All structs of a text, each before those that stand in it.
pub(super) fn structs(text: &str) -> Vec<Struct> {
    let mut found = Vec::new();
    collect(text, skip(text, 0)..text.len(), "", &mut found);
    found
}

/// The structs of a value.
fn collect(text: &str, value: Range<usize>, field: &str, found: &mut Vec<Struct>) {
    let own = text.get(value.clone()).unwrap_or_default();
    let Some(bracket) = own.find(|c| "([{\"'".contains(c)) else {
        return;
    };
    let open = value.start + bracket;
    match own.get(bracket..=bracket) {
        Some("(") => {
            let items = items(text, open);
            let fields: Vec<Field> = items.iter().filter_map(|i| named(text, i)).collect();
            found.push(Struct {
                field: field.to_owned(),
                whole: open..value.end,
                fields: fields.clone(),
            });
            for f in fields {
                collect(text, f.value, &f.name, found);
            }
        }
        Some("[") => {
            for item in items(text, open) {
                collect(text, item, field, found);
            }
        }
        _ => {}
    }
}

/// An item of a struct as a field, if it has a name.
fn named(text: &str, item: &Range<usize>) -> Option<Field> {
    let own = text.get(item.clone())?;
    let end = own.find(|c: char| !c.is_alphanumeric() && c != '_')?;
    let colon = item.start + own.len() - own.get(end..)?.trim_start().len();
    text.get(colon..)?.starts_with(':').then(|| Field {
        name: own.get(..end).unwrap_or_default().to_owned(),
        whole: item.clone(),
        value: skip(text, colon + 1)..item.end,
    })
}

/// What stands between the commas of the bracket that opens at a place.
fn items(text: &str, open: usize) -> Vec<Range<usize>> {
    let mut items = Vec::new();
    let mut at = skip(text, open + 1);
    loop {
        let end = value_end(text, at);
        let own = text.get(at..end).unwrap_or_default().trim_end();
        if own.is_empty() {
            return items;
        }
        items.push(at..at + own.len());
        if !text.get(end..).is_some_and(|t| t.starts_with(',')) {
            return items;
        }
        at = skip(text, end + 1);
    }
}

/// The next place that is neither blank nor in a comment.
fn skip(text: &str, from: usize) -> usize {
    let mut at = from;
    loop {
        let rest = text.get(at..).unwrap_or_default();
        let there = rest.trim_start();
        at += rest.len() - there.len();
        if !there.starts_with("//") {
            return at;
        }
        at += there.find('\n').unwrap_or(there.len());
    }
}

/// Where the value that begins at or after a place ends: at its comma, or at the bracket that closes what it stands in.
pub(super) fn value_end(text: &str, from: usize) -> usize {
    let rest = text.get(from..).unwrap_or_default();
    let mut depth = 0_usize;
    let mut quoted = false;
    let mut comment = false;
    let mut before = ' ';
    for (i, c) in rest.char_indices() {
        match c {
            '\n' => comment = false,
            _ if comment => {}
            '"' if before != '\\' => quoted = !quoted,
            _ if quoted => {}
            '/' if before == '/' => comment = true,
            '(' | '[' | '{' => depth += 1,
            ')' | ']' | '}' | ',' if depth == 0 => return from + i,
            ')' | ']' | '}' => depth -= 1,
            _ => {}
        }
        before = c;
    }
    text.len()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn structs_are_found_with_their_fields_whatever_stands_in_comments_and_texts() {
        let text = "// (no: 1)\n(a: (b: 1, c: \"), d: (\"), // e: (f: 2),\n  g: [(h: (1, 2)), (i: X(j: 3.0)),],\n)\n";
        let found = structs(text);
        let names = |s: &Struct| s.fields.iter().map(|f| f.name.clone()).collect::<Vec<_>>();
        let told: Vec<_> = found
            .iter()
            .map(|s| (s.field.as_str(), names(s).join(" ")))
            .collect();
        let told: Vec<_> = told.iter().map(|(f, n)| (*f, n.as_str())).collect();
        assert_eq!(
            told,
            [
                ("", "a g"),
                ("a", "b c"),
                ("g", "h"),
                ("h", ""),
                ("g", "i"),
                ("i", "j"),
            ]
        );
        let value = |s: &Struct, name: &str| text.get(s.field(name).unwrap().value.clone());
        assert_eq!(value(&found[1], "c"), Some("\"), d: (\""));
        assert_eq!(value(&found[5], "j"), Some("3.0"));
        assert_eq!(
            text.get(found[1].whole.clone()),
            Some("(b: 1, c: \"), d: (\")")
        );
    }
}
