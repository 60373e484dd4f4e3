//! What is proved of a drill, for a report: each property with how far it is established and the way that breaks it.

use crate::drill::write_action;
use crate::file::Library;
use crate::proof::{self, Standing};
use crate::scenario::variation;

/// What is proved of a drill.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct ProofRead {
    /// Each property.
    pub properties: Vec<PropertyRead>,
    /// States reached.
    pub states: usize,
    /// Electrically distinct ones, each solved once.
    pub solves: usize,
    /// Whether nothing is broken.
    pub sound: bool,
}

/// One property.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct PropertyRead {
    /// Its name: `safe-way`, `goes-on`, `marking-agrees`, `by-construction`, `sound-start`.
    pub id: &'static str,
    /// How far it is established: `proved`, `shown`, `positions`, `broken`, `not-covered`, `declared`.
    pub standing: &'static str,
    /// The message id that says why it isn't covered.
    pub because: Option<&'static str>,
    /// Actions that show it, or that lead to where it breaks, as an action file has them.
    pub way: Vec<String>,
}

/// Proves what can be proved of a variant of a drill; `None` if there is no such variant or its house can't be wired.
pub fn prove(library: &Library, drill: &str, variant: &str) -> Option<ProofRead> {
    let scenario = variation::named(library.scenario(drill)?, variant)?;
    let proof = proof::prove(&scenario, &proof::marked).ok()?;
    let properties = proof.properties.iter().map(|(property, standing)| {
        let (word, because, way) = match standing {
            Standing::Proved => ("proved", None, None),
            Standing::Shown(way) => ("shown", None, Some(way)),
            Standing::ProvedForPositions => ("positions", None, None),
            Standing::Broken(way) => ("broken", None, Some(way)),
            Standing::NotCovered(why) => ("not-covered", Some(*why), None),
            Standing::Declared(way) => ("declared", None, Some(way)),
        };
        let lines = way.into_iter().flatten();
        PropertyRead {
            id: property.name(),
            standing: word,
            because,
            way: lines.map(|a| write_action(&scenario.site, a)).collect(),
        }
    });
    Some(ProofRead {
        properties: properties.collect(),
        states: proof.figures.states,
        solves: proof.figures.solves,
        sound: proof.sound(),
    })
}
