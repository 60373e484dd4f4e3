//! What is varied in a drill, in words: for its views, and for those who choose among its variants.
//!
//! A change that the learner has to find is named only when the drill is over.

use std::sync::Arc;

use crate::file::Library;
use crate::scenario::Scenario;
use crate::scenario::variation::{name, seed_of, variants};
use crate::words::{Arg, Message, Words};

use super::{Open, Session};

/// One of the drills that a file offers.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct VariantRead {
    /// Its name.
    pub name: String,
    /// The smallest seed that gives it.
    pub seed: u64,
    /// Everything that is changed in it, in words; empty for the drill as written.
    pub sentence: String,
}

/// The drills that a file offers, the one as written first; none if there is no drill of this name.
pub fn offered(library: &Library, drill: &str, words: &Words) -> Option<Vec<VariantRead>> {
    let scenario = library.scenario(drill)?;
    let read = |variant: &Arc<Scenario>| {
        let name = name(variant);
        // A seed is found for each, or it isn't offered.
        let seed = seed_of(scenario, &name)?;
        let sentence = told(words, variant, true);
        Some(VariantRead {
            name,
            seed,
            sentence,
        })
    };
    Some(variants(scenario).iter().filter_map(read).collect())
}

impl Session {
    /// The number under which the open drill can be asked for again.
    pub(super) fn seed_said(&self, open: &Open) -> String {
        let seed = Arg::Verbatim(open.drill.run().seed.to_string());
        let message = Message::new("session-seed").with("seed", seed);
        self.words.say(&message)
    }

    /// What is varied in the open drill, as far as this learner may be told.
    pub(super) fn variation_said(&self, open: &Open) -> String {
        told(&self.words, open.drill.scenario(), open.verdict.is_some())
    }
}

/// What is varied, sentence by sentence; with what has to be found where `all` is told.
fn told(words: &Words, scenario: &Scenario, all: bool) -> String {
    let changes = scenario.changes.iter().filter(|c| all || !c.hidden);
    let sentences: Vec<String> = changes
        .map(|c| words.say_id(&format!("variation-{}", c.name)))
        .collect();
    sentences.join(" ")
}
