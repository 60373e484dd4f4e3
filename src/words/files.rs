//! The word files, built into the program, so that the terminal needs no folder beside it.
//!
//! A file that one language has and another lacks stops the build here.

/// A word file: its name, without the ending, and its text.
#[derive(Debug, Clone, Copy)]
pub struct WordFile {
    /// Name within its language's folder.
    pub name: &'static str,
    /// Text, in Fluent syntax.
    pub text: &'static str,
}

macro_rules! word_files {
    ($($name:literal),* $(,)?) => {
        const ENGLISH: &[WordFile] = &[$(WordFile {
            name: $name,
            text: include_str!(concat!("../../assets/words/en/", $name, ".ftl")),
        }),*];
        const SPANISH: &[WordFile] = &[$(WordFile {
            name: $name,
            text: include_str!(concat!("../../assets/words/es/", $name, ".ftl")),
        }),*];
    };
}

word_files![
    "units", "cautions", "site", "refusals", "errors", "drill", "marking", "session", "terminal",
    "window"
];

/// The word files of a language's folder; none for a folder that is not there.
pub fn word_files(folder: &str) -> &'static [WordFile] {
    match folder {
        "en" => ENGLISH,
        "es" => SPANISH,
        _ => &[],
    }
}
