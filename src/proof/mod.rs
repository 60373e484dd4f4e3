//! Proof: what holds of a drill over everything that can be reached in it, before a learner meets it.
//!
//! All positions that matter are searched, with what drifts over-approximated (see `space`).
//! The marking is held against a judge that reads the parts of the site alone (see `judge`), and a safe way is found and played (see `way`).
//! What is proved so: isolation, live contacts and touch as they follow from how things stand; that a goal stays in reach; that equipment which is called safe can't be brought to feed the line.
//! Not covered: what builds up over time (gas, heat, overload, fuel) and what depends on the order of moves; playing and the second judge of the tests cover those by sample.

mod joints;
mod judge;
mod search;
mod space;
mod way;

use std::collections::BTreeSet;
use std::sync::Arc;

use crate::circuit::NetworkError;
use crate::drill::{Action, Conditions, EngineCondition, Moment, What};
use crate::marking::{Rule, standing};
use crate::scenario::Scenario;
use crate::site::{Body, ControlId, Drive, FarEnd, Kind, LoadState, Plant, Positions};
use crate::units::DrillTime;

pub use judge::Stand;
pub use way::Way;

use joints::{Joints, is_moved};
use judge::Judge;
use search::{Reachable, search};
use space::{Move, Space};

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
}

/// What was established of a drill.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Proof {
    /// Each property and how far it is established.
    pub properties: Vec<(Property, Standing)>,
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
    let rules = standing(scenario, moment);
    Stand {
        line_fed: rules.contains(&Rule::LineFed),
        unguarded: rules.contains(&Rule::NoTransferEquipment),
        tied: moment.readings.generator.tied,
        shock: moment.readings.shock.is_some(),
        bare: rules.contains(&Rule::LiveBlades),
    }
}

/// Establishes what can be established of a drill, marked by `marker`.
///
/// # Errors
/// When the site can't be wired, which a checked file rules out.
pub fn prove(scenario: &Arc<Scenario>, marker: Marker<'_>) -> Result<Proof, NetworkError> {
    let judge = Judge::new(scenario);
    let mut bench = Bench::new(scenario)?;
    let mut figures = Figures::default();
    let mut found = Found::default();
    for branches in groups(scenario) {
        let space = Space::new(scenario, &judge, &branches, &[], &scenario.start);
        let start = space.as_ref().map(|s| s.code(&scenario.start, 0));
        let reachable = space
            .as_ref()
            .zip(start)
            .and_then(|(s, start)| search(s, start));
        match space.as_ref().zip(reachable) {
            Some((space, reachable)) => {
                figures.states += reachable.states.len();
                found.look(&judge, space, &reachable, &mut bench, marker);
            }
            None => found.too_large = true,
        }
    }
    figures.solves = bench.solves;
    let properties = vec![
        (Property::SafeWay, safe_way(scenario, &judge)),
        (Property::GoesOn, found.goes_on()),
        (Property::MarkingAgrees, found.agrees()),
        (Property::ByConstruction, found.by_construction(scenario)),
        (Property::SoundStart, sound_start(scenario, &judge)),
    ];
    Ok(Proof {
        properties,
        figures,
    })
}

/// How much of a drill is searched at once.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scope {
    /// The trunk with one branch at a time, as a proof does.
    Parted,
    /// Everything that can be moved, at once: for small houses, to test that nothing is lost by parting.
    Whole,
}

/// Everything that ever holds of how things stand, over all that can be reached; `None` when there are too many states.
pub fn stands(scenario: &Scenario, scope: Scope) -> Option<BTreeSet<Stand>> {
    let judge = Judge::new(scenario);
    let site = &scenario.site;
    let (groups, also) = match scope {
        Scope::Parted => (groups(scenario), Vec::new()),
        Scope::Whole => (
            vec![(0..site.circuits.len()).collect()],
            (0..)
                .map(ControlId)
                .zip(&site.controls)
                .filter(|(_, c)| c.kind != Kind::Line)
                .map(|(id, _)| id)
                .collect(),
        ),
    };
    let mut all = BTreeSet::new();
    for branches in groups {
        let space = Space::new(scenario, &judge, &branches, &also, &scenario.start)?;
        let reachable = search(&space, space.code(&scenario.start, 0))?;
        all.extend(
            reachable
                .states
                .iter()
                .map(|c| judge.stand(&space.decode(*c).0)),
        );
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

/// Solves states for the marking to look at.
struct Bench<'a> {
    scenario: &'a Scenario,
    plant: Plant,
    loads: Vec<LoadState>,
    solves: usize,
}

impl<'a> Bench<'a> {
    fn new(scenario: &'a Scenario) -> Result<Self, NetworkError> {
        Ok(Self {
            scenario,
            plant: Plant::new(&scenario.site)?,
            loads: vec![LoadState::Off; scenario.site.appliances.len()],
            solves: 0,
        })
    }

    fn moment(&mut self, judge: &Judge<'_>, positions: &Positions) -> Moment {
        let site = &self.scenario.site;
        let running = judge.running(positions);
        let drive = Drive {
            running,
            battery: site.battery.is_some(),
            ..Drive::default()
        };
        let body = Body {
            touching: site.stands(positions, site.line.crew, "hands-on"),
        };
        self.solves += 1;
        let readings = self.plant.read(site, positions, &self.loads, drive, body);
        let conditions = Conditions {
            engine: EngineCondition {
                running_since: running.then_some(DrillTime::ZERO),
                ..EngineCondition::default()
            },
            ..Conditions::begin(site, positions)
        };
        Moment {
            at: DrillTime::ZERO,
            what: What::Began,
            positions: positions.clone(),
            readings: Arc::new(readings),
            conditions: Arc::new(conditions),
        }
    }
}

/// What the searches have found.
#[derive(Default)]
struct Found {
    too_large: bool,
    stuck: Option<Vec<Action>>,
    disagrees: Option<Vec<Action>>,
    feeds_line: Option<Vec<Action>>,
}

impl Found {
    fn look(
        &mut self,
        judge: &Judge<'_>,
        space: &Space<'_>,
        reachable: &Reachable,
        bench: &mut Bench<'_>,
        marker: Marker<'_>,
    ) {
        let scenario = space.scenario;
        let mut solved = BTreeSet::new();
        let mut stands = Vec::with_capacity(reachable.states.len());
        let mut goals = Vec::with_capacity(reachable.states.len());
        for (index, code) in reachable.states.iter().enumerate() {
            let (positions, stage) = space.decode(*code);
            let stand = judge.stand(&positions);
            goals.push(!stand.breach() && at_end(scenario, judge, &positions, stage));
            if stand.line_fed && self.feeds_line.is_none() {
                self.feeds_line = Some(actions(&reachable.way_to(index)));
            }
            stands.push(stand);
            if solved.insert(space.electrical(*code)) {
                let moment = bench.moment(judge, &positions);
                if marker(scenario, &moment) != stand && self.disagrees.is_none() {
                    self.disagrees = Some(actions(&reachable.way_to(index)));
                }
            }
        }
        let unharmed: Vec<bool> = stands.iter().map(|s| !s.shock).collect();
        let leads = reachable.leads_to(space, &goals, &unharmed);
        let stuck = leads
            .iter()
            .zip(&unharmed)
            .position(|(l, unharmed)| *unharmed && !l);
        if let (Some(index), None) = (stuck, &self.stuck) {
            self.stuck = Some(actions(&reachable.way_to(index)));
        }
    }

    fn of(&self, found: Option<&Vec<Action>>, otherwise: Standing) -> Standing {
        match found {
            Some(way) => Standing::Broken(way.clone()),
            None if self.too_large => Standing::NotCovered("proof-too-large"),
            None => otherwise,
        }
    }

    fn goes_on(&self) -> Standing {
        self.of(self.stuck.as_ref(), Standing::ProvedForPositions)
    }

    fn agrees(&self) -> Standing {
        self.of(self.disagrees.as_ref(), Standing::ProvedForPositions)
    }

    fn by_construction(&self, scenario: &Scenario) -> Standing {
        let site = &scenario.site;
        let two_plugs = site
            .cords
            .iter()
            .any(|c| matches!(c.far, FarEnd::Blades(..)));
        let guarded = site.panel.backfeed.is_none_or(|b| b.interlock.blocks());
        match &self.feeds_line {
            Some(way) if two_plugs || !guarded => Standing::Declared(way.clone()),
            way => self.of(way.as_ref(), Standing::Proved),
        }
    }
}

/// Whether a state is one in which the drill may end well: the story told, everything counted as it should stand.
fn at_end(scenario: &Scenario, judge: &Judge<'_>, positions: &Positions, stage: usize) -> bool {
    let goal = &scenario.goal;
    let back = !goal.back_on_utility || judge.on_utility(positions);
    // Branch breakers outside of the space are left open there; whoever can reach them can close them.
    let site = &scenario.site;
    let leaf = |control| site.circuits.iter().any(|c| c.breaker == control);
    let stand = goal
        .at_end
        .iter()
        .filter(|(c, _)| !leaf(*c))
        .all(|(control, wanted)| {
            let stands = site.position_name(positions, *control);
            wanted.iter().any(|w| w == stands)
        });
    stage == scenario.story.len() && back && stand
}

fn safe_way(scenario: &Arc<Scenario>, judge: &Judge<'_>) -> Standing {
    const SEED: u64 = 1;
    let by_itself = scenario.site.transfers.iter().any(|t| t.automatic);
    match way::safe_way(scenario, judge, SEED) {
        Way::None if by_itself => Standing::NotCovered("proof-by-itself"),
        Way::Passed(way) => Standing::Shown(way),
        Way::None => Standing::Broken(Vec::new()),
        Way::NotPassed(_) => Standing::NotCovered("proof-way-not-passed"),
        Way::TooLarge => Standing::NotCovered("proof-too-large"),
    }
}

/// Whether the start can be reached from the house as it was built.
fn sound_start(scenario: &Scenario, judge: &Judge<'_>) -> Standing {
    if scenario.as_built == scenario.start {
        return Standing::Proved;
    }
    let branches = Joints::attached(&scenario.site);
    let Some(space) = Space::new(scenario, judge, &branches, &[], &scenario.as_built) else {
        return Standing::NotCovered("proof-too-large");
    };
    let Some(reachable) = search(&space, space.code(&scenario.as_built, 0)) else {
        return Standing::NotCovered("proof-too-large");
    };
    let start = space.code(&scenario.start, 0);
    if reachable.states.contains(&start) {
        Standing::ProvedForPositions
    } else {
        Standing::Broken(Vec::new())
    }
}

/// The learner's part of a way, as actions.
fn actions(way: &[Move]) -> Vec<Action> {
    let set = |step: &Move| match step {
        Move::Set(control, position) => Some(Action::Set(*control, *position)),
        Move::World => None,
    };
    way.iter().filter_map(set).collect()
}
