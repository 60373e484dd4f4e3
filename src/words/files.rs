//! The word files, built into the program, so that the terminal needs no folder beside it.

use crate::shipped;

/// A word file: its path from the root of the package, and its text.
#[derive(Debug, Clone, Copy)]
pub struct WordFile {
    /// Path.
    pub name: &'static str,
    /// Text, in Fluent syntax.
    pub text: &'static str,
}

/// The word files of a language's folder; none for a folder that is not there.
pub fn word_files(folder: &str) -> Vec<WordFile> {
    let files = match folder {
        "en" => shipped::WORDS_EN,
        "es" => shipped::WORDS_ES,
        _ => &[],
    };
    let file = |(name, text): &(&'static str, &'static str)| WordFile { name, text };
    files.iter().map(file).collect()
}
