//! The variants of a drill: what is changed in each, and the smallest seed that gives it.

use crate::file::Library;
use crate::session::offered;
use crate::words::{Arg, Message};

use super::output::Output;
use super::{DONE, play};

/// Prints the variants of a drill; the status to end with.
pub(super) fn run(name: &str, library: &Library, output: &mut Output<'_>) -> u8 {
    let Some(variants) = offered(library, name, &output.words) else {
        return play::unknown_drill(name, library, output);
    };
    for variant in variants {
        let seed = Message::new("terminal-variant")
            .with("name", Arg::Verbatim(variant.name))
            .with("seed", Arg::Verbatim(variant.seed.to_string()));
        output.say(&seed);
        if !variant.sentence.is_empty() {
            output.line(&format!("  {}", variant.sentence));
        }
    }
    DONE
}

/// The smallest seed that gives the variant of this name; what to say if there is no such variant.
pub(super) fn seed_of(
    library: &Library,
    drill: &str,
    wanted: &str,
    output: &Output<'_>,
) -> Result<u64, Message> {
    let variants = offered(library, drill, &output.words).unwrap_or_default();
    let found = variants.iter().find(|v| v.name == wanted);
    found.map(|v| v.seed).ok_or_else(|| {
        let names: Vec<String> = variants.into_iter().map(|v| v.name).collect();
        Message::new("terminal-no-variant")
            .with("name", Arg::Verbatim(wanted.to_owned()))
            .with("names", Arg::Verbatim(names.join(", ")))
    })
}
