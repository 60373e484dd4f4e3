//! Proof: what holds of a drill over everything that can be reached in it, before a learner meets it.
//!
//! All positions that matter are searched, with what drifts over-approximated (see `model`), and with what can't matter left out (see `space`).
//! The marking is held against a judge that reads the parts of the site alone (see `judge`), and a safe way is found and played (see `way`).
//! What is proved so: isolation, live contacts and touch as they follow from how things stand; that a goal stays in reach; that equipment which is called safe can't be brought to feed the line.
//! What builds up over time (fuel, overload, gas, heat) is bounded where a bound suffices (see `drift`); that and what depends on the order of moves is covered by sample otherwise: by playing, and by the second judge of the tests.

mod begin;
mod bench;
mod drift;
mod found;
mod guide;
mod hurry;
mod joints;
mod judge;
mod judge_line;
mod kept;
mod line_way;
mod model;
mod plan;
mod prepare;
mod search;
mod space;
mod step;
mod table;
mod topic;
mod walk;
mod walk_care;
mod walk_goal;
mod walk_standby;
mod way;

use std::collections::BTreeSet;
use std::fmt;
use std::sync::Arc;

use crate::circuit::NetworkError;
use crate::drill::{Action, Moment};
use crate::marking::{Rule, standing};
use crate::scenario::Happening;
use crate::scenario::Scenario;
use crate::scenario::Timed;
use crate::site::ControlId;
use crate::units::DrillTime;

pub use drift::{Part, drift};
pub use guide::{Advice, Guide, lead};
pub use hurry::{before_any_deed, too_late};
pub use judge::Stand;
pub use model::{Model, ModelMarker, Move, State};
pub use search::Watch;
pub use step::{Aim, Step};
pub use topic::Topic;
pub use way::Way;

use bench::Bench;
use found::Found;
use joints::{Joints, is_moved};
use judge::Judge;
use search::{reaches, search};
use space::Space;

/// The version of what is proved and how: a result kept from another version is worth nothing.
pub const VERSION: u32 = 5;

/// How far a property is established.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Standing {
    /// It holds in everything that can be reached.
    Proved,
    /// It holds, and these actions show it: they were played and passed.
    Shown(Vec<Action>),
    /// It holds of all positions that can be reached; what drifts is left out.
    ProvedForPositions,
    /// It doesn't hold; the actions lead to where it breaks.
    Broken(Vec<Action>),
    /// It was not established; the message id says why.
    NotCovered(&'static str),
    /// The drill doesn't claim it: what is found is how short the way to harm is.
    Declared(Vec<Action>),
}

/// The properties, in the order in which they are told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Property {
    /// A safe way leads to the goal.
    SafeWay,
    /// From every state in which nobody is harmed, the goal can still be reached.
    GoesOn,
    /// No run with a breach passes, and no breach is marked where there is none.
    MarkingAgrees,
    /// Equipment that is called safe can't be brought to feed the line.
    ByConstruction,
    /// The start can be reached from a sound installation.
    SoundStart,
}

impl Property {
    /// Its name in reports and word files.
    pub fn name(self) -> &'static str {
        match self {
            Self::SafeWay => "safe-way",
            Self::GoesOn => "goes-on",
            Self::MarkingAgrees => "marking-agrees",
            Self::ByConstruction => "by-construction",
            Self::SoundStart => "sound-start",
        }
    }
}

/// How much was searched.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Figures {
    /// States reached, over all spaces.
    pub states: usize,
    /// Electrically distinct ones among them, each solved once.
    pub solves: usize,
    /// Bytes of the largest table of states, with their moves.
    pub bytes: usize,
}

/// What was established of a drill.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Proof {
    /// Each property and how far it is established.
    pub properties: Vec<(Property, Standing)>,
    /// What builds up over time, part by part, and how far it is established.
    pub drift: Vec<(Part, Standing)>,
    /// How much was searched.
    pub figures: Figures,
}

impl Proof {
    /// Whether nothing is broken.
    pub fn sound(&self) -> bool {
        let mut standings = self.properties.iter().map(|(_, s)| s);
        standings.all(|s| !matches!(s, Standing::Broken(_)))
    }

    /// How far a property is established.
    pub fn standing(&self, property: Property) -> Option<&Standing> {
        let found = self.properties.iter().find(|(p, _)| *p == property);
        found.map(|(_, standing)| standing)
    }
}

/// What marks a moment by how things stand in it.
pub type Marker<'a> = &'a dyn Fn(&Scenario, &Moment) -> Stand;

/// The marking that everyone uses, as far as it judges how things stand.
pub fn marked(scenario: &Scenario, moment: &Moment) -> Stand {
    let rules = standing(&scenario.site, moment);
    Stand {
        line_fed: rules.contains(&Rule::LineFed),
        unguarded: rules.contains(&Rule::NoTransferEquipment),
        tied: moment.readings.generator.tied,
        meets: rules.contains(&Rule::SourcesMeet),
        shock: moment.readings.shock.is_some(),
        bare: rules.contains(&Rule::LiveBlades),
        unbarred: rules.contains(&Rule::NoVisibleBreak),
        out_of_zone: rules.contains(&Rule::NotGrounded),
    }
}

/// How a drill is to be proved.
#[derive(Clone, Copy)]
pub struct Terms<'a> {
    /// What marks each state.
    pub marker: Marker<'a>,
    /// How much is searched at once.
    pub scope: Scope,
    /// Who is told how far a search has come.
    pub watch: Watch<'a>,
    /// A way to try before one is planned: that of a drill much like this one.
    pub try_first: &'a [Action],
    /// The seed that a safe way is played with.
    pub seed: u64,
}

impl fmt::Debug for Terms<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Terms").finish_non_exhaustive()
    }
}

impl Terms<'_> {
    /// The marking that everyone uses, branch by branch, watched by nobody.
    pub const USUAL: Self = Terms {
        marker: &marked,
        scope: Scope::Parted,
        watch: &|_| {},
        try_first: &[],
        seed: 1,
    };
}

/// Establishes what can be established of a drill, marked by `marker`.
///
/// # Errors
/// When the site can't be wired, which a checked file rules out.
pub fn prove(scenario: &Arc<Scenario>, marker: Marker<'_>) -> Result<Proof, NetworkError> {
    let terms = Terms {
        marker,
        ..Terms::USUAL
    };
    prove_on(scenario, terms)
}

/// Establishes what can be established of a drill on these terms.
///
/// # Errors
/// When the site can't be wired, which a checked file rules out.
pub fn prove_on(scenario: &Arc<Scenario>, terms: Terms<'_>) -> Result<Proof, NetworkError> {
    let judge = Judge::new(scenario);
    let mut bench = Bench::new(scenario)?;
    let mut figures = Figures::default();
    let mut found = Found::default();
    let (groups, also) = parts(scenario, terms.scope);
    for branches in groups {
        let space = Space::new(scenario, &judge, &branches, &also, &scenario.start);
        let searched = space.as_ref().and_then(|space| {
            let start = space.code(&scenario.start, 0);
            search(space, start, terms.watch).map(|reached| (space, reached))
        });
        let Some((space, reached)) = searched else {
            found.too_large = true;
            continue;
        };
        figures.states += reached.states().len();
        figures.bytes = figures.bytes.max(reached.bytes());
        found.look(space, &reached, &mut bench, terms.marker);
    }
    figures.solves = bench.solves;
    let properties = vec![
        (Property::SafeWay, safe_way(scenario, &judge, terms)),
        (Property::GoesOn, found.goes_on()),
        (Property::MarkingAgrees, found.agrees()),
        (Property::ByConstruction, found.by_construction(scenario)),
        (Property::SoundStart, sound_start(scenario, &judge, terms)),
    ];
    Ok(Proof {
        properties,
        drift: drift(scenario),
        figures,
    })
}

/// What is established of a drill whose [`Topic`] is that of another that is proved: all its searches, and a safe way of its own.
pub fn prove_like(scenario: &Arc<Scenario>, other: &Proof, terms: Terms<'_>) -> Proof {
    let judge = Judge::new(scenario);
    let properties = other.properties.iter().map(|(property, standing)| {
        let standing = match property {
            Property::SafeWay => safe_way(scenario, &judge, terms),
            Property::GoesOn
            | Property::MarkingAgrees
            | Property::ByConstruction
            | Property::SoundStart => standing.clone(),
        };
        (*property, standing)
    });
    Proof {
        properties: properties.collect(),
        drift: drift(scenario),
        figures: Figures::default(),
    }
}

/// How much of a drill is searched at once.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scope {
    /// The trunk with one branch at a time, as a proof does.
    Parted,
    /// Everything that can be moved, at once: for small houses, to test that nothing is lost by parting.
    Whole,
}

/// The branches that are searched together, group by group, and the controls that count besides.
fn parts(scenario: &Scenario, scope: Scope) -> (Vec<Vec<usize>>, Vec<ControlId>) {
    let site = &scenario.site;
    match scope {
        Scope::Parted => (groups(scenario), to_be_moved(scenario)),
        Scope::Whole => (
            vec![(0..site.circuits.len()).collect()],
            model::everything(site),
        ),
    }
}

/// Controls that stand otherwise at the start than they have to at the end: whatever hangs on them, they have to be brought there.
/// Branch breakers aside, which whoever can reach them can close.
fn to_be_moved(scenario: &Scenario) -> Vec<ControlId> {
    let site = &scenario.site;
    let leaf = |control| site.circuits.iter().any(|c| c.breaker == control);
    let asked = scenario.goal.at_end.iter().filter(|(control, wanted)| {
        let stands = site.position_name(&scenario.start, *control);
        !leaf(*control) && !wanted.iter().any(|w| w == stands)
    });
    asked.map(|(control, _)| *control).collect()
}

/// Everything that ever holds of how things stand, over all that can be reached; `None` when there are too many states.
pub fn stands(scenario: &Scenario, scope: Scope) -> Option<BTreeSet<Stand>> {
    let judge = Judge::new(scenario);
    let (groups, also) = parts(scenario, scope);
    let mut all = BTreeSet::new();
    for branches in groups {
        let space = Space::new(scenario, &judge, &branches, &also, &scenario.start)?;
        let reached = search(&space, space.code(&scenario.start, 0), &|_| {})?;
        all.extend(reached.classes().map(|(_, _, facts)| facts.stand));
    }
    Some(all)
}

/// Branches that are searched together: those that cords can reach, and with them one of those that have a handle of their own.
fn groups(scenario: &Scenario) -> Vec<Vec<usize>> {
    let attached = Joints::attached(&scenario.site);
    let (moved, corded): (Vec<usize>, Vec<usize>) = attached
        .into_iter()
        .partition(|c| is_moved(&scenario.site, *c));
    if moved.is_empty() {
        return vec![corded];
    }
    let with = |m: usize| corded.iter().copied().chain([m]).collect();
    moved.into_iter().map(with).collect()
}

fn safe_way(scenario: &Arc<Scenario>, judge: &Judge<'_>, terms: Terms<'_>) -> Standing {
    if !terms.try_first.is_empty() && way::passes(scenario, terms.try_first, terms.seed) {
        return Standing::Shown(terms.try_first.to_vec());
    }
    let line = scenario.site.line_work.is_some();
    if hurry::over_before(scenario) || !line && hurry::out_of_reach(scenario, judge) {
        return Standing::Broken(Vec::new());
    }
    let by_itself = scenario.site.transfers.iter().any(|t| t.automatic);
    let way = match &scenario.site.line_work {
        Some(work) => line_way::safe_way(scenario, work, terms.seed),
        None => way::safe_way(scenario, judge, terms.seed),
    };
    match way {
        Way::None if by_itself => Standing::NotCovered("proof-by-itself"),
        Way::Passed(way) => Standing::Shown(way),
        Way::None => Standing::Broken(Vec::new()),
        Way::NotPassed(_) => Standing::NotCovered("proof-way-not-passed"),
        Way::TooLarge => Standing::NotCovered("proof-too-large"),
    }
}

/// Whether these actions pass a drill when they are played with this seed.
pub fn passes(scenario: &Arc<Scenario>, way: &[Action], seed: u64) -> bool {
    way::passes(scenario, way, seed)
}

/// Whether the start can be reached from the house as it was built, before the story begins.
fn sound_start(scenario: &Scenario, judge: &Judge<'_>, terms: Terms<'_>) -> Standing {
    if scenario.as_built == scenario.start {
        return Standing::Proved;
    }
    if scenario.site.line_work.is_some() {
        return Standing::NotCovered("proof-line-found");
    }
    if begin::walks(scenario) {
        return Standing::ProvedForPositions;
    }
    // An outage that came before the start is told first.
    let mut whole = scenario.clone();
    let told = usize::from(scenario.ran_before.is_some());
    if told == 1 {
        let outage = Timed {
            at: DrillTime::ZERO,
            spread_s: 0,
            what: Happening::Outage,
        };
        whole.story.insert(0, outage);
    }
    let scenario = &whole;
    let (groups, also) = parts(scenario, terms.scope);
    let mut branches: Vec<usize> = groups.into_iter().flatten().collect();
    branches.sort_unstable();
    branches.dedup();
    let found = Space::new(scenario, judge, &branches, &also, &scenario.as_built).and_then(|s| {
        let start = s.code(&scenario.start, told);
        reaches(&s, s.code(&scenario.as_built, 0), start)
    });
    match found {
        Some(true) => Standing::ProvedForPositions,
        Some(false) => Standing::Broken(Vec::new()),
        None => Standing::NotCovered("proof-too-large"),
    }
}
