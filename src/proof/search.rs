//! Breadth first through a space: all states that can be reached, the first way to each, and which of them a goal can still be reached from.

use super::space::{Code, Move, Space};

/// What was reached.
#[derive(Debug)]
pub(super) struct Reachable {
    /// States in the order in which they were met.
    pub(super) states: Vec<Code>,
    /// For each, the index of the state it was first met from and the move; none for the start.
    from: Vec<Option<(u32, Move)>>,
}

/// One bit a number.
struct Bits(Vec<u64>);

impl Bits {
    fn new(size: u64) -> Option<Self> {
        let words = usize::try_from(size / 64 + 1).ok()?;
        (words <= MOST_WORDS).then(|| Self(vec![0; words]))
    }

    /// Sets a bit; says whether it was clear.
    fn take(&mut self, code: Code) -> bool {
        let word = usize::try_from(code / 64)
            .ok()
            .and_then(|i| self.0.get_mut(i));
        word.is_some_and(|word| {
            let bit = 1 << (code % 64);
            let clear = *word & bit == 0;
            *word |= bit;
            clear
        })
    }
}

/// Numbers of states for which there is room: 256 MiB.
const MOST_WORDS: usize = 1 << 25;
/// States that are kept: with their moves some 2 GiB at most.
const MOST_STATES: usize = 1 << 24;

/// Searches from a state on.
/// `None` when the space is too large for this machine; nothing is made smaller to fit.
pub(super) fn search(space: &Space<'_>, start: Code) -> Option<Reachable> {
    let mut seen = Bits::new(space.size())?;
    let mut states = vec![start];
    let mut from = vec![None];
    seen.take(start);
    let mut next = 0;
    while let Some(code) = states.get(next).copied() {
        let here = u32::try_from(next).ok()?;
        for (step, to) in space.moves(code) {
            if seen.take(to) {
                states.push(to);
                from.push(Some((here, step)));
            }
        }
        if states.len() > MOST_STATES {
            return None;
        }
        next += 1;
    }
    Some(Reachable { states, from })
}

impl Reachable {
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

    /// The moves between states, as indices to and from, in order of where they lead.
    fn backward(&self, space: &Space<'_>) -> Vec<(u32, u32)> {
        let mut order: Vec<(Code, u32)> = self.states.iter().copied().zip(0..).collect();
        order.sort_unstable();
        let index = |code: Code| {
            let found = order.binary_search_by_key(&code, |(c, _)| *c).ok()?;
            order.get(found).map(|(_, index)| *index)
        };
        let mut backward = Vec::new();
        for (here, code) in (0..).zip(&self.states) {
            let moves = space.moves(*code).into_iter();
            backward.extend(moves.filter_map(|(_, to)| Some((index(to)?, here))));
        }
        backward.sort_unstable();
        backward
    }

    /// For each state, whether one of the goals can be reached from it through states that are `allowed`.
    pub(super) fn leads_to(
        &self,
        space: &Space<'_>,
        goals: &[bool],
        allowed: &[bool],
    ) -> Vec<bool> {
        let backward = self.backward(space);
        let is = |flags: &[bool], i: u32| {
            let at = usize::try_from(i).ok().and_then(|i| flags.get(i));
            at.copied().unwrap_or_default()
        };
        let mut leads: Vec<bool> = goals.iter().zip(allowed).map(|(g, a)| *g && *a).collect();
        let mut queue: Vec<u32> = (0..)
            .zip(&leads)
            .filter(|(_, l)| **l)
            .map(|(i, _)| i)
            .collect();
        while let Some(here) = queue.pop() {
            let first = backward.partition_point(|(to, _)| *to < here);
            let into = backward
                .iter()
                .skip(first)
                .take_while(|(to, _)| *to == here);
            for (_, before) in into {
                if is(allowed, *before) && !is(&leads, *before) {
                    if let Some(slot) = usize::try_from(*before).ok().and_then(|i| leads.get_mut(i))
                    {
                        *slot = true;
                    }
                    queue.push(*before);
                }
            }
        }
        leads
    }
}
