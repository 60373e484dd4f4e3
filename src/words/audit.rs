//! Holds the word files of all languages to each other: same ids, same arguments, nothing that fails to parse.
//!
//! It reads the files as Fluent syntax and judges structure only; whether a translation says the same is for people to judge.
//! Plural categories are the cardinal ones of the Unicode locale data, from memory, for the languages listed here.

use std::collections::BTreeMap;
use std::collections::BTreeSet;
use std::fmt;

use fluent_syntax::ast;
use fluent_syntax::parser;

use super::OFFERED;
use super::REFERENCE;
use super::WordFile;
use super::word_files;

/// Something wrong in a word file.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Fault {
    /// Language folder.
    pub language: String,
    /// File name, without its ending.
    pub file: String,
    /// Line, from 1.
    pub line: usize,
    /// What is wrong, in English: it is for those who write the files.
    pub what: String,
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}:{}: {}", self.file, self.line, self.what)
    }
}

/// A message or one of its attributes, as far as the audit needs to know it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Entry {
    /// File name, without its ending.
    pub file: String,
    /// Line, from 1.
    pub line: usize,
    /// Arguments that the text uses itself.
    pub variables: BTreeSet<String>,
    /// Those among them that select plural forms, with the categories that have a form of their own.
    pub counts: BTreeMap<String, BTreeSet<String>>,
    /// Messages and terms that the text refers to.
    pub refers_to: BTreeSet<String>,
    /// Stretches of text that directly follow an argument.
    pub after_arguments: Vec<String>,
}

/// Every message of one language, by id; attributes under `id.attribute`, terms under `-id`.
pub type Entries = BTreeMap<String, Entry>;

/// How far a language is translated.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Coverage {
    /// Language tag.
    pub tag: &'static str,
    /// The language's name in itself.
    pub name: &'static str,
    /// Messages of the reference language.
    pub wanted: usize,
    /// Those of them that this language has.
    pub present: usize,
    /// Faults of its files.
    pub faults: Vec<Fault>,
}

/// How far each language that is offered is translated.
pub fn coverage() -> Vec<Coverage> {
    let (reference, _) = read(REFERENCE, &word_files(REFERENCE));
    OFFERED
        .iter()
        .map(|language| {
            let (entries, mut faults) = read(language.folder, &word_files(language.folder));
            if language.folder != REFERENCE {
                faults.extend(compare(&reference, language.folder, &entries));
            }
            faults.extend(plural_faults(language.folder, &entries));
            let present = reference
                .keys()
                .filter(|id| entries.contains_key(*id))
                .count();
            Coverage {
                tag: language.tag,
                name: language.name,
                wanted: reference.len(),
                present,
                faults,
            }
        })
        .collect()
}

/// Reads a language's files: its entries, and what does not parse or comes twice.
pub fn read(language: &str, files: &[WordFile]) -> (Entries, Vec<Fault>) {
    let mut entries = Entries::new();
    let mut faults = Vec::new();
    for file in files {
        let fault = |line, what| Fault {
            language: language.to_owned(),
            file: file.name.to_owned(),
            line,
            what,
        };
        let resource = match parser::parse(file.text) {
            Ok(resource) => resource,
            Err((resource, errors)) => {
                faults.extend(errors.iter().map(|e| {
                    fault(
                        line_at(file.text, e.pos.start),
                        format!("does not parse: {}", e.kind),
                    )
                }));
                resource
            }
        };
        for (id, entry) in resource.body.iter().flat_map(|body| entries_of(file, body)) {
            let line = entry.line;
            if let Some(first) = entries.insert(id.clone(), entry) {
                faults.push(fault(
                    line,
                    format!(
                        "`{id}` is already in {}.ftl, line {}",
                        first.file, first.line
                    ),
                ));
            }
        }
    }
    for (id, entry) in &entries {
        for target in entry
            .refers_to
            .iter()
            .filter(|target| !entries.contains_key(*target))
        {
            faults.push(Fault {
                language: language.to_owned(),
                file: entry.file.clone(),
                line: entry.line,
                what: format!("`{id}` refers to `{target}`, which is not there"),
            });
        }
    }
    (entries, faults)
}

/// What a language lacks, has too much, or says with other arguments than the reference.
pub fn compare(reference: &Entries, language: &str, entries: &Entries) -> Vec<Fault> {
    let fault = |entry: &Entry, what| Fault {
        language: language.to_owned(),
        file: entry.file.clone(),
        line: entry.line,
        what,
    };
    let mut faults = Vec::new();
    for (id, wanted) in reference.iter().filter(|(id, _)| !id.starts_with('-')) {
        match entries.get(id) {
            None => faults.push(fault(
                wanted,
                format!("`{id}` is missing (the line is that of the reference)"),
            )),
            Some(entry) if entry.variables != wanted.variables => faults.push(fault(
                entry,
                format!(
                    "`{id}` uses {:?}, the reference {:?}",
                    entry.variables, wanted.variables
                ),
            )),
            Some(_) => {}
        }
    }
    for (id, entry) in entries
        .iter()
        .filter(|(id, _)| !id.starts_with('-') && !reference.contains_key(*id))
        .filter(|(id, _)| !is_joined(id))
    {
        faults.push(fault(entry, format!("`{id}` is not in the reference")));
    }
    faults
}

/// The attribute that says how a name follows another: “del calefactor” where the name alone is “calefactor”.
/// A language that joins them without a change has none.
pub const JOINED: &str = "of";

fn is_joined(id: &str) -> bool {
    id.split_once('.')
        .is_some_and(|(_, attribute)| attribute == JOINED)
}

/// All arguments that a message needs, those of messages it refers to among them.
pub fn all_variables(entries: &Entries, id: &str) -> BTreeSet<String> {
    let mut wanted = vec![id.to_owned()];
    let mut seen = BTreeSet::new();
    let mut variables = BTreeSet::new();
    while let Some(id) = wanted.pop() {
        let Some(entry) = entries.get(&id) else {
            continue;
        };
        if seen.insert(id) {
            variables.extend(entry.variables.iter().cloned());
            wanted.extend(entry.refers_to.iter().cloned());
        }
    }
    variables
}

/// Plural categories that a choice by count must name, besides the default form.
///
/// Spanish has a third one, for whole millions, which the default form covers: no drill counts that far.
const PLURALS: [(&str, &[&str]); 2] = [("en", &["one"]), ("es", &["one"])];

/// Choices by count that leave out a category of their language.
fn plural_faults(language: &str, entries: &Entries) -> Vec<Fault> {
    let needed = PLURALS
        .iter()
        .find(|(name, _)| *name == language)
        .map_or(&[] as &[&str], |(_, needed)| *needed);
    let mut faults = Vec::new();
    for (id, entry) in entries {
        for (variable, given) in &entry.counts {
            for category in needed.iter().filter(|category| !given.contains(**category)) {
                faults.push(Fault {
                    language: language.to_owned(),
                    file: entry.file.clone(),
                    line: entry.line,
                    what: format!("`{id}` chooses by ${variable} without a form for `{category}`"),
                });
            }
        }
    }
    faults
}

fn entries_of(file: &WordFile, body: &ast::Entry<&str>) -> Vec<(String, Entry)> {
    let (id, value, attributes) = match body {
        ast::Entry::Message(message) => (
            message.id.name.to_owned(),
            message.value.as_ref(),
            &message.attributes,
        ),
        ast::Entry::Term(term) => (
            format!("-{}", term.id.name),
            Some(&term.value),
            &term.attributes,
        ),
        ast::Entry::Comment(_)
        | ast::Entry::GroupComment(_)
        | ast::Entry::ResourceComment(_)
        | ast::Entry::Junk { .. } => return Vec::new(),
    };
    let line = line_of(file.text, &id);
    let own = value.map(|pattern| (id.clone(), pattern));
    let others = attributes
        .iter()
        .map(|attribute| (format!("{id}.{}", attribute.id.name), &attribute.value));
    own.into_iter()
        .chain(others)
        .map(|(id, pattern)| {
            let mut entry = Entry {
                file: file.name.to_owned(),
                line,
                variables: BTreeSet::new(),
                counts: BTreeMap::new(),
                refers_to: BTreeSet::new(),
                after_arguments: Vec::new(),
            };
            walk(pattern, &mut entry);
            (id, entry)
        })
        .collect()
}

fn walk(pattern: &ast::Pattern<&str>, entry: &mut Entry) {
    let mut after_argument = false;
    for element in &pattern.elements {
        match element {
            ast::PatternElement::TextElement { value } => {
                if after_argument {
                    entry.after_arguments.push((*value).to_owned());
                }
                after_argument = false;
            }
            ast::PatternElement::Placeable { expression } => {
                after_argument = true;
                walk_expression(expression, entry);
            }
        }
    }
}

fn walk_expression(expression: &ast::Expression<&str>, entry: &mut Entry) {
    match expression {
        ast::Expression::Inline(inline) => walk_inline(inline, entry),
        ast::Expression::Select { selector, variants } => {
            walk_inline(selector, entry);
            if let ast::InlineExpression::VariableReference { id } = selector
                && let Some(categories) = plural_categories(variants)
            {
                entry
                    .counts
                    .entry(id.name.to_owned())
                    .or_default()
                    .extend(categories);
            }
            for variant in variants {
                walk(&variant.value, entry);
            }
        }
    }
}

/// The plural categories that these variants name, if they choose by a number at all.
fn plural_categories(variants: &[ast::Variant<&str>]) -> Option<BTreeSet<String>> {
    const CATEGORIES: [&str; 5] = ["zero", "one", "two", "few", "many"];
    let mut by_number = false;
    let mut found = BTreeSet::new();
    for variant in variants {
        match &variant.key {
            ast::VariantKey::Identifier { name } if CATEGORIES.contains(name) => {
                found.insert((*name).to_owned());
            }
            ast::VariantKey::Identifier { .. } => {}
            ast::VariantKey::NumberLiteral { .. } => by_number = true,
        }
    }
    (by_number || !found.is_empty()).then_some(found)
}

fn walk_inline(inline: &ast::InlineExpression<&str>, entry: &mut Entry) {
    match inline {
        ast::InlineExpression::VariableReference { id } => {
            entry.variables.insert(id.name.to_owned());
        }
        ast::InlineExpression::MessageReference { id, attribute } => {
            let attribute = attribute
                .as_ref()
                .map(|attribute| format!(".{}", attribute.name))
                .unwrap_or_default();
            entry.refers_to.insert(format!("{}{attribute}", id.name));
        }
        ast::InlineExpression::TermReference { id, .. } => {
            entry.refers_to.insert(format!("-{}", id.name));
        }
        ast::InlineExpression::Placeable { expression } => walk_expression(expression, entry),
        ast::InlineExpression::StringLiteral { .. }
        | ast::InlineExpression::NumberLiteral { .. }
        | ast::InlineExpression::FunctionReference { .. } => {}
    }
}

/// The line, from 1, on which a message or term begins.
fn line_of(text: &str, id: &str) -> usize {
    let starts = |line: &str| {
        line.strip_prefix(id)
            .is_some_and(|rest| rest.trim_start().starts_with('='))
    };
    text.lines().position(starts).map_or(1, |index| index + 1)
}

/// The line, from 1, of a place in a text.
fn line_at(text: &str, position: usize) -> usize {
    text.bytes()
        .take(position)
        .filter(|byte| *byte == b'\n')
        .count()
        + 1
}

#[cfg(test)]
mod tests {
    use super::*;

    fn whats(text: &'static str, other: &'static str) -> Vec<String> {
        let (reference, mut faults) = read("en", &[WordFile { name: "a", text }]);
        let (entries, more) = read(
            "es",
            &[WordFile {
                name: "a",
                text: other,
            }],
        );
        faults.extend(more);
        faults.extend(compare(&reference, "es", &entries));
        faults.extend(plural_faults("es", &entries));
        faults.iter().map(ToString::to_string).collect()
    }

    #[test]
    fn equal_structure_is_no_fault() {
        assert_eq!(
            whats("a = One { $x }\n", "a = Uno { $x }\n"),
            Vec::<String>::new()
        );
    }

    #[test]
    fn a_missing_an_extra_and_a_double_message_are_named_with_their_line() {
        assert_eq!(
            whats("a = A\nb = B\n", "a = A\nc = C\na = A\n"),
            [
                "a:1: `a` is already in a.ftl, line 1",
                "a:2: `b` is missing (the line is that of the reference)",
                "a:2: `c` is not in the reference",
            ]
        );
    }

    #[test]
    fn other_arguments_are_a_fault_in_the_text_and_in_attributes() {
        let faults = whats(
            "a = { $x }\n    .b = { $y }\n",
            "a = { $z }\n    .b = { $y } { $w }\n",
        );
        assert_eq!(faults.len(), 2, "{faults:?}");
    }

    #[test]
    fn how_a_name_follows_another_is_each_languages_own_affair() {
        let faults = whats("a = lamp\n", "a = lámpara\n    .of = de la lámpara\n");
        assert_eq!(faults, Vec::<String>::new());
        assert_eq!(whats("a = lamp\n", "a = lámpara\n    .x = X\n").len(), 1);
    }

    #[test]
    fn what_does_not_parse_is_named_with_its_line() {
        let faults = whats("a = A\nb = B\n", "a = A\nb = { $x\n");
        assert!(
            faults
                .iter()
                .any(|fault| fault.contains("a:2") || fault.contains("a:3")),
            "{faults:?}"
        );
    }

    #[test]
    fn a_choice_by_count_needs_a_form_for_one() {
        let text = "a = { $n ->\n    [0] none\n   *[other] { $n }\n }\n";
        assert_eq!(
            whats(text, text),
            ["a:1: `a` chooses by $n without a form for `one`"]
        );
    }

    #[test]
    fn a_reference_to_nothing_is_a_fault() {
        let faults = whats("a = { b }\n", "a = { b }\n");
        assert!(faults[0].contains("refers to `b`"), "{faults:?}");
    }
}
