//! Breadth first through a space: all states that can be reached, the first way to each, and which of them a goal can still be reached from.
//!
//! Nothing is allocated for a state but its place in growing arrays; each electrical class is judged once.

use super::model::Move;
use super::space::{Code, Facts, Space};
use super::table::Table;

/// States that are kept: with their moves some 2 GiB at most.
const MOST_STATES: usize = 1 << 24;
/// States between two words of how far a search has come.
const WATCHED: usize = 1 << 14;

/// Told now and then how many states a search has met, so that whoever waits can be told too.
pub type Watch<'a> = &'a dyn Fn(usize);

/// What was reached.
#[derive(Debug)]
pub(super) struct Reachable {
    states: Table,
    /// For each state, the index of the state it was first met from and the move; none for the start.
    from: Vec<Option<(u32, Move)>>,
    /// For each state, the index of its electrical class.
    class: Vec<u32>,
    /// What holds in each class.
    facts: Vec<Facts>,
    /// For each class, the first state of it.
    first: Vec<u32>,
    /// Where moves lead, state after state.
    onward: Vec<u32>,
    /// For each state, where its moves begin in `onward`.
    begins: Vec<u32>,
}

/// Searches from a state on.
/// `None` when there are too many states for this machine; nothing is made smaller to fit.
pub(super) fn search(space: &Space<'_>, start: Code, watch: Watch<'_>) -> Option<Reachable> {
    let mut states = Table::new();
    let mut classes = Table::new();
    let mut reached = Reachable {
        states: Table::new(),
        from: vec![None],
        class: Vec::new(),
        facts: Vec::new(),
        first: Vec::new(),
        onward: Vec::new(),
        begins: Vec::new(),
    };
    states.insert(start);
    let mut next = 0;
    while let Some(code) = states.keys().get(next).copied() {
        let here = u32::try_from(next).ok()?;
        let (class, new) = classes.insert(space.electrical(code));
        if new {
            reached.facts.push(space.facts(code));
            reached.first.push(here);
        }
        reached.class.push(class);
        reached
            .begins
            .push(u32::try_from(reached.onward.len()).ok()?);
        let facts = reached.facts.get(usize::try_from(class).ok()?).copied()?;
        space.moves(code, facts, |step, to| {
            let (index, new) = states.insert(to);
            if new {
                reached.from.push(Some((here, step)));
            }
            reached.onward.push(index);
        });
        if states.keys().len() > MOST_STATES {
            return None;
        }
        next += 1;
        if next.is_multiple_of(WATCHED) {
            watch(states.keys().len());
        }
    }
    reached
        .begins
        .push(u32::try_from(reached.onward.len()).ok()?);
    reached.states = states;
    Some(reached)
}

/// Whether a state is reached from another before the story goes on; nothing else is kept of the search.
/// `None` when there are too many states for this machine.
pub(super) fn reaches(space: &Space<'_>, from: Code, wanted: Code) -> Option<bool> {
    let mut states = Table::new();
    states.insert(from);
    let mut next = 0;
    while let Some(code) = states.keys().get(next).copied() {
        if code == wanted {
            return Some(true);
        }
        space.moves_of_devices(code, |_, to| {
            states.insert(to);
        });
        if states.keys().len() > MOST_STATES {
            return None;
        }
        next += 1;
    }
    Some(false)
}

impl Reachable {
    /// The states, in the order in which they were met.
    pub(super) fn states(&self) -> &[Code] {
        self.states.keys()
    }

    /// What holds in each state, in their order.
    pub(super) fn facts(&self) -> impl Iterator<Item = Facts> {
        let class = |c: &u32| self.facts.get(usize::try_from(*c).ok()?).copied();
        self.class.iter().filter_map(class)
    }

    /// Of each electrical class: the index of its first state, that state, and what holds.
    pub(super) fn classes(&self) -> impl Iterator<Item = (usize, Code, Facts)> {
        self.first
            .iter()
            .zip(&self.facts)
            .filter_map(|(first, facts)| {
                let index = usize::try_from(*first).ok()?;
                Some((index, *self.states().get(index)?, *facts))
            })
    }

    /// Bytes that states, moves and classes take.
    pub(super) fn bytes(&self) -> usize {
        self.states.bytes()
            + self.from.capacity() * size_of::<Option<(u32, Move)>>()
            + (self.class.capacity() + self.onward.capacity() + self.begins.capacity())
                * size_of::<u32>()
            + self.facts.capacity() * size_of::<Facts>()
    }

    /// The learner's and the world's moves from the start to a state.
    pub(super) fn way_to(&self, state: usize) -> Vec<Move> {
        let mut way = Vec::new();
        let mut here = state;
        while let Some(Some((before, step))) = self.from.get(here) {
            way.push(*step);
            here = usize::try_from(*before).unwrap_or_default();
        }
        way.reverse();
        way
    }

    /// For each state, where the moves into it begin in the array of those they come from.
    fn backward(&self) -> (Vec<u32>, Vec<u32>) {
        let mut begins = vec![0_u32; self.states().len() + 1];
        for to in &self.onward {
            if let Some(count) = slot(&mut begins, *to + 1) {
                *count += 1;
            }
        }
        let mut sum = 0;
        for count in &mut begins {
            sum += *count;
            *count = sum;
        }
        let mut before = vec![0_u32; self.onward.len()];
        let mut filled = begins.clone();
        for (here, to) in self.moves() {
            if let Some(place) = slot(&mut filled, to) {
                if let Some(entry) = slot(&mut before, *place) {
                    *entry = here;
                }
                *place += 1;
            }
        }
        (begins, before)
    }

    /// Every move, as the state it leaves and the state it leads to.
    fn moves(&self) -> impl Iterator<Item = (u32, u32)> {
        let ends = self.begins.iter().skip(1);
        (0..)
            .zip(self.begins.iter().zip(ends))
            .flat_map(|(here, (begin, end))| {
                let range = usize::try_from(*begin).ok().zip(usize::try_from(*end).ok());
                let onward = range.and_then(|(begin, end)| self.onward.get(begin..end));
                onward.unwrap_or_default().iter().map(move |to| (here, *to))
            })
    }

    /// For each state, whether one of the goals can be reached from it through states that are `allowed`.
    pub(super) fn leads_to(&self, goals: &[bool], allowed: &[bool]) -> Vec<bool> {
        let (begins, before) = self.backward();
        let at = |i: u32| usize::try_from(i).unwrap_or(usize::MAX);
        let mut leads: Vec<bool> = goals.iter().zip(allowed).map(|(g, a)| *g && *a).collect();
        let found = (0_u32..).zip(&leads).filter(|(_, l)| **l);
        let mut queue: Vec<u32> = found.map(|(i, _)| i).collect();
        while let Some(here) = queue.pop() {
            let begin = begins.get(at(here)).copied().unwrap_or_default();
            let end = begins.get(at(here + 1)).copied().unwrap_or_default();
            for from in before.get(at(begin)..at(end)).unwrap_or_default() {
                let free = allowed.get(at(*from)).copied().unwrap_or_default();
                if let Some(lead) = leads.get_mut(at(*from)).filter(|l| free && !**l) {
                    *lead = true;
                    queue.push(*from);
                }
            }
        }
        leads
    }
}

fn slot(of: &mut [u32], index: u32) -> Option<&mut u32> {
    usize::try_from(index).ok().and_then(|i| of.get_mut(i))
}
