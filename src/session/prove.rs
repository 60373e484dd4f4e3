//! What is proved of a drill, for a report: each property with how far it is established and the way that breaks it.

use std::sync::Arc;

use crate::drill::{Action, duration, write_action};
use crate::file::{Library, Source, digest, passing_lists, read_actions};
use crate::proof::{self, Proof, Property, Standing, Terms, Topic, Watch};
use crate::scenario::Scenario;
use crate::scenario::variation;
use crate::units::DrillTime;

use super::vary::VariantRead;

/// What is proved of a drill.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct ProofRead {
    /// Each property.
    pub properties: Vec<PropertyRead>,
    /// States reached; none where the searches are those of another variant.
    pub states: usize,
    /// Electrically distinct ones, each solved once.
    pub solves: usize,
    /// Bytes of the largest table of states, with their moves.
    pub bytes: usize,
    /// The variant whose searches hold for this one too, because nothing that they read is different.
    pub like: Option<String>,
    /// Whether nothing is broken.
    pub sound: bool,
}

/// One property.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct PropertyRead {
    /// Its name: `safe-way`, `goes-on`, `marking-agrees`, `by-construction`, `sound-start`; of what builds up, `fuel`, `overload`, `gas`, `heat`, `order`.
    pub id: String,
    /// How far it is established: `proved`, `shown`, `positions`, `broken`, `not-covered`, `declared`.
    pub standing: String,
    /// The message id that says why it isn't covered.
    pub because: Option<String>,
    /// Actions that show it, or that lead to where it breaks, as an action file has them.
    pub way: Vec<String>,
}

/// Proves the variants of a drill one after the other: what does not depend on what is varied is searched once.
#[derive(Debug, Default)]
pub struct Prover {
    /// What was searched, with the name of the variant it was searched for.
    searched: Vec<(String, Topic, Proof)>,
    /// The last way that passed, to be tried on the next variant.
    way: Vec<Action>,
}

impl Prover {
    /// Proves what can be proved of a variant of a drill; `None` if there is no such variant or its house can't be wired.
    /// `watch` is told now and then how many states a search has met.
    pub fn prove(
        &mut self,
        library: &Library,
        drill: &str,
        variant: &VariantRead,
        watch: Watch<'_>,
    ) -> Option<ProofRead> {
        let scenario = variation::named(library.scenario(drill)?, &variant.name)?;
        let terms = Terms {
            watch,
            try_first: &self.way,
            seed: variant.seed,
            ..Terms::USUAL
        };
        let topic = Topic::of(&scenario);
        let before = self.searched.iter().find(|(_, t, _)| *t == topic);
        let like = before.map(|(name, ..)| name.clone());
        let mut proof = match before {
            Some((_, _, proof)) => proof::prove_like(&scenario, proof, terms),
            None => proof::prove_on(&scenario, terms).ok()?,
        };
        show(&scenario, variant.seed, &mut proof);
        if let Some(Standing::Shown(way)) = proof.standing(Property::SafeWay) {
            self.way.clone_from(way);
        }
        let told = told(&scenario, &proof, like);
        if told.like.is_none() {
            self.searched.push((variant.name.clone(), topic, proof));
        }
        Some(told)
    }
}

/// A digest of everything that a proof of a variant hangs on: the files of the drill, the variant, what is proved and the program that proves it.
/// `None` if there is no such drill.
pub fn proof_digest(
    library: &Library,
    drill: &str,
    variant: &VariantRead,
    program: &str,
) -> Option<String> {
    let scenario = library.scenario(drill)?;
    let version = proof::VERSION.to_string();
    let parts = [&version, program, &scenario.digest, &variant.name];
    Some(digest(&parts))
}

/// Where no way was planned that passes, looks for one among the lists that are kept for the drill.
fn show(scenario: &Arc<Scenario>, seed: u64, proof: &mut Proof) {
    let safe_way = proof.properties.iter_mut();
    let mut safe_way = safe_way.filter(|(p, _)| *p == Property::SafeWay);
    let Some((_, standing)) = safe_way.next() else {
        return;
    };
    if matches!(standing, Standing::Shown(_)) {
        return;
    }
    let lists = passing_lists(&scenario.name).into_iter();
    let mut ways = lists.filter_map(|list| as_actions(scenario, list));
    if let Some(way) = ways.find(|way| proof::passes(scenario, way, seed)) {
        *standing = Standing::Shown(way);
    }
}

/// A list as actions alone: what is to be done at a time is waited for.
fn as_actions(scenario: &Scenario, list: Source<'_>) -> Option<Vec<Action>> {
    let site = &scenario.site;
    let mut actions = Vec::new();
    let mut now = DrillTime::ZERO;
    for line in read_actions(list, scenario).ok()? {
        let takes = duration(site, &line.action);
        let wait = line.at.map_or(DrillTime::ZERO, |at| at.since(now + takes));
        if wait > DrillTime::ZERO {
            actions.push(Action::Wait(wait));
        }
        now = now + wait + takes;
        actions.push(line.action);
    }
    Some(actions)
}

fn told(scenario: &Scenario, proof: &Proof, like: Option<String>) -> ProofRead {
    let properties = proof.properties.iter().map(|(p, s)| (p.name(), s));
    let drift = proof.drift.iter().map(|(part, s)| (part.name(), s));
    let properties = properties.chain(drift).map(|(id, standing)| {
        let (word, because, way) = match standing {
            Standing::Proved => ("proved", None, None),
            Standing::Shown(way) => ("shown", None, Some(way)),
            Standing::ProvedForPositions => ("positions", None, None),
            Standing::Broken(way) => ("broken", None, Some(way)),
            Standing::NotCovered(why) => ("not-covered", Some((*why).to_owned()), None),
            Standing::Declared(way) => ("declared", None, Some(way)),
        };
        let lines = way.into_iter().flatten();
        PropertyRead {
            id: id.to_owned(),
            standing: word.to_owned(),
            because,
            way: lines.map(|a| write_action(&scenario.site, a)).collect(),
        }
    });
    ProofRead {
        properties: properties.collect(),
        states: proof.figures.states,
        solves: proof.figures.solves,
        bytes: proof.figures.bytes,
        like,
        sound: proof.sound(),
    }
}
