//! Variations: what a drill's file offers beside the drill as it is written, and which of it a seed gives.
//!
//! A file names changes and lists them in dimensions; a seed picks one of each dimension, all alike often.
//! Seed 1 always gives the drill as it is written, so that it is the same wherever nobody asks for another.
//! Each variant is a whole scenario of its own, which plays, is marked and is proved like any other; those with the same house share it.
//! Not covered: chance within a variant, which is drawn from other streams of the same seed.

use std::sync::Arc;

use super::Scenario;
use super::chance::{Purpose, draw};

/// The name of no change.
pub const AS_WRITTEN: &str = "as-written";

/// Most variants that one file may offer.
pub const MOST_VARIANTS: usize = 24;

/// The seed that gives the drill as it is written.
const PLAIN_SEED: u64 = 1;

/// The seeds among which one is looked for that gives a variant: far more than any file offers variants.
const SEEDS: std::ops::Range<u64> = 1..1_000;

/// A change that a file names.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Change {
    /// Its name; its words are `variation-<name>`.
    pub name: String,
    /// Whether the learner has to find it: it is then named only when the drill is over.
    pub hidden: bool,
}

/// The variants of a file, beside each other.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Variants {
    /// How many changes each dimension offers, no change included.
    sizes: Vec<u32>,
    /// A scenario for each choice, the last dimension changing fastest.
    all: Vec<Arc<Scenario>>,
}

impl Variants {
    /// Variants of these sizes; `all` has one for each choice, the last dimension changing fastest.
    pub fn new(sizes: Vec<u32>, all: Vec<Arc<Scenario>>) -> Self {
        Self { sizes, all }
    }

    /// The one that a seed gives.
    fn of(&self, seed: u64) -> Option<&Arc<Scenario>> {
        let bounds: Vec<u32> = self.sizes.iter().map(|n| n.saturating_sub(1)).collect();
        let drawn = draw(seed, Purpose::Variation, &bounds);
        let plain = draw(PLAIN_SEED, Purpose::Variation, &bounds);
        let mut index = 0_u32;
        for ((size, drawn), plain) in self.sizes.iter().zip(drawn).zip(plain) {
            index = index * size + (drawn + size - plain) % size;
        }
        self.all.get(usize::try_from(index).ok()?)
    }
}

/// The drill that a seed gives: a scenario of its own where the file offers several.
pub fn variant(scenario: &Arc<Scenario>, seed: u64) -> Arc<Scenario> {
    Arc::clone(scenario.variants.of(seed).unwrap_or(scenario))
}

/// Every drill that some seed gives, the one as written first.
pub fn variants(scenario: &Arc<Scenario>) -> Vec<Arc<Scenario>> {
    if scenario.variants.all.is_empty() {
        vec![Arc::clone(scenario)]
    } else {
        scenario.variants.all.clone()
    }
}

/// The variant of this name, as [`name`] gives it.
pub fn named(scenario: &Arc<Scenario>, wanted: &str) -> Option<Arc<Scenario>> {
    variants(scenario).into_iter().find(|v| name(v) == wanted)
}

/// What a variant is called: its changes joined by a plus sign, or [`AS_WRITTEN`].
pub fn name(variant: &Scenario) -> String {
    let names: Vec<&str> = variant.changes.iter().map(|c| c.name.as_str()).collect();
    if names.is_empty() {
        AS_WRITTEN.to_owned()
    } else {
        names.join("+")
    }
}

/// The smallest seed that gives the variant of this name; none if there is no such variant.
pub fn seed_of(scenario: &Arc<Scenario>, wanted: &str) -> Option<u64> {
    SEEDS
        .into_iter()
        .find(|seed| name(&variant(scenario, *seed)) == wanted)
}
