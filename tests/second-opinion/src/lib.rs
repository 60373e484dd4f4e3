//! The model of the proof, as a general-purpose model checker wants it.
//!
//! It takes from the program what a drill starts from, what may follow each state and what holds in it ([`Model`]), and nothing else:
//! not the proof's search, nor its packing of states, nor what it leaves out, nor how it finds what a goal is reached from.
//! The checker tells states apart by a hash of 64 bits; two that collide would be taken for one, which is not to be expected among some hundred thousand.

use std::collections::HashMap;
use std::fmt;
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant};

use outage_drill::proof::{Model, ModelMarker, Move, Stand, State};
use outage_drill::scenario::Scenario;
use stateright::{Checker, Model as CheckerModel, Property, StateRecorder};

/// How a marking rule finds what the usual marking finds otherwise.
pub type Marking = fn(Stand) -> Stand;

/// A drill as the checker searches it.
pub struct Forward {
    model: Model<'static>,
    marker: Mutex<ModelMarker<'static>>,
    marking: Marking,
    /// Whether each state is marked, which costs a solve.
    marked: bool,
}

impl fmt::Debug for Forward {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Forward").finish_non_exhaustive()
    }
}

const SEARCHED: &str = "everything is searched";
const LINE: &str = "the line is not fed";
const AGREES: &str = "the marking finds what the judge finds";

impl Forward {
    /// The model of a drill, with a marking that finds this.
    ///
    /// # Panics
    /// When the drill's house can't be wired.
    pub fn new(scenario: &Arc<Scenario>, marking: Marking, marked: bool) -> Self {
        // The checker's threads want a model that lives as long as the program.
        let scenario: &'static Scenario = Box::leak(Box::new((**scenario).clone()));
        let model = Model::of(scenario);
        let marker = Mutex::new(model.marker().expect("the house can be wired"));
        Self {
            model,
            marker,
            marking,
            marked,
        }
    }

    fn agrees(&self, state: &State) -> bool {
        let mut marker = self.marker.lock().unwrap_or_else(PoisonError::into_inner);
        (self.marking)(marker.stand(state)) == self.model.stand(state)
    }
}

impl CheckerModel for Forward {
    type State = State;
    /// A move together with where it leads.
    type Action = (Move, State);

    fn init_states(&self) -> Vec<State> {
        vec![self.model.initial()]
    }

    fn actions(&self, state: &State, actions: &mut Vec<Self::Action>) {
        actions.extend(self.model.moves(state));
    }

    fn next_state(&self, _: &State, (_, next): Self::Action) -> Option<State> {
        Some(next)
    }

    fn properties(&self) -> Vec<Property<Self>> {
        let mut properties = vec![
            // Keeps the checker going when all else has been found to break.
            Property::always(SEARCHED, |_, _| true),
            Property::always(LINE, |forward: &Self, state| {
                !forward.model.stand(state).line_fed
            }),
        ];
        if self.marked {
            properties.push(Property::always(AGREES, Self::agrees));
        }
        properties
    }
}

/// The same moves backward, from where a drill may end well, through states in which nobody is harmed.
struct Backward {
    ends: Vec<State>,
    before: HashMap<State, Vec<State>>,
}

impl CheckerModel for Backward {
    type State = State;
    type Action = State;

    fn init_states(&self) -> Vec<State> {
        self.ends.clone()
    }

    fn actions(&self, state: &State, actions: &mut Vec<State>) {
        actions.extend(self.before.get(state).into_iter().flatten().cloned());
    }

    fn next_state(&self, _: &State, before: State) -> Option<State> {
        Some(before)
    }

    fn properties(&self) -> Vec<Property<Self>> {
        vec![Property::always(SEARCHED, |_, _| true)]
    }
}

/// What the checker finds of a drill.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Opinion {
    /// How many states can be reached.
    pub states: usize,
    /// Whether the line can be fed.
    pub line_fed: bool,
    /// Whether marking and judge agree everywhere.
    pub agrees: bool,
    /// Whether the end stays in reach from every state in which nobody is harmed.
    pub goes_on: bool,
}

/// Asks the checker about a drill.
///
/// # Panics
/// When the drill's house can't be wired.
pub fn ask(scenario: &Arc<Scenario>, marking: Marking) -> Opinion {
    let (recorder, all) = StateRecorder::new_with_accessor();
    let checker = Forward::new(scenario, marking, true)
        .checker()
        .visitor(recorder)
        .spawn_bfs()
        .join();
    let model = Model::of(scenario);
    let all = all();
    let unharmed = |state: &State| !model.stand(state).shock;
    let mut before: HashMap<State, Vec<State>> = HashMap::new();
    for state in all.iter().filter(|s| unharmed(s)) {
        for (_, next) in model.moves(state) {
            before.entry(next).or_default().push(state.clone());
        }
    }
    let ends = all.iter().filter(|s| unharmed(s) && model.ends_well(s));
    let backward = Backward {
        ends: ends.cloned().collect(),
        before,
    };
    let leads = backward.checker().spawn_bfs().join().unique_state_count();
    Opinion {
        states: checker.unique_state_count(),
        line_fed: checker.discovery(LINE).is_some(),
        agrees: checker.discovery(AGREES).is_none(),
        goes_on: leads == all.iter().filter(|s| unharmed(s)).count(),
    }
}

/// How many states the checker meets, and how long it takes, with each state judged and none solved.
///
/// # Panics
/// When the drill's house can't be wired.
pub fn time(scenario: &Arc<Scenario>) -> (usize, Duration) {
    let forward = Forward::new(scenario, |s| s, false);
    let began = Instant::now();
    let checker = forward.checker().spawn_bfs().join();
    (checker.unique_state_count(), began.elapsed())
}
