//! What the graph alone says: which nodes hang together, which have no path to earth, which source feeds what.
//!
//! Union-find over everything that conducts, windings joined only within one winding: an island without earth is
//! found before the factorization, not by its failure (which may not come).
//! "Fed by" is a second union-find over ungrounded nodes, whatever the volts there.

use crate::circuit::layout::Layout;
use crate::circuit::network::{BranchId, Conductor, Kind};

/// A set of sources.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct SourceSet(u64);

impl SourceSet {
    /// No source.
    pub const EMPTY: Self = Self(0);

    /// Whether `source` is among them; false for anything that isn't a source.
    pub fn contains(self, source: BranchId) -> bool {
        source
            .source_ordinal()
            .is_some_and(|ordinal| ordinal < 64 && self.0 >> ordinal & 1 == 1)
    }

    /// Whether no source is among them.
    pub fn is_empty(self) -> bool {
        self.0 == 0
    }

    /// How many there are.
    pub fn len(self) -> usize {
        self.0.count_ones() as usize
    }

    /// The sources, in the order in which they were added to the network.
    pub fn iter(self) -> impl Iterator<Item = BranchId> {
        (0..64)
            .filter(move |ordinal| self.0 >> ordinal & 1 == 1)
            .map(BranchId::source)
    }

    /// The sources of either set.
    #[must_use]
    pub fn union(self, other: Self) -> Self {
        Self(self.0 | other.0)
    }

    pub(super) fn insert(&mut self, ordinal: usize) {
        self.0 |= 1 << ordinal;
    }
}

/// Disjoint sets of nodes; the lowest node represents its set, so the answer doesn't depend on the order of joining.
#[derive(Debug, Clone)]
pub(super) struct Disjoint {
    parent: Vec<u32>,
}

impl Disjoint {
    pub(super) fn new(n: usize) -> Self {
        Self {
            parent: (0..).take(n).collect(),
        }
    }

    fn reset(&mut self) {
        for (parent, own) in self.parent.iter_mut().zip(0..) {
            *parent = own;
        }
    }

    fn find(&mut self, node: u32) -> u32 {
        let mut node = node;
        loop {
            let up = self.parent[node as usize];
            if up == node {
                return node;
            }
            let over = self.parent[up as usize];
            self.parent[node as usize] = over;
            node = over;
        }
    }

    fn join(&mut self, a: u32, b: u32) {
        let (a, b) = (self.find(a), self.find(b));
        self.parent[a.max(b) as usize] = a.min(b);
    }

    /// Points every node straight at the lowest of its set; a parent is never above its node, so one pass does it.
    fn flatten(&mut self) -> &[u32] {
        for node in 0..self.parent.len() {
            self.parent[node] = self.parent[self.parent[node] as usize];
        }
        &self.parent
    }
}

/// What the graph says of each node.
#[derive(Debug, Clone)]
pub(super) struct Graph {
    sets: Disjoint,
    /// Node that refers its island to earth where nothing else does; 0 for islands that have earth.
    tie_of_island: Vec<usize>,
    /// Nodes with a tie, true for each.
    pub(super) tied: Vec<bool>,
    /// Whether each node's island has no path to earth.
    pub(super) floating: Vec<bool>,
    fed_of_island: Vec<SourceSet>,
    pub(super) fed: Vec<SourceSet>,
}

impl Graph {
    pub(super) fn new(n_nodes: usize) -> Self {
        Self {
            sets: Disjoint::new(n_nodes),
            tie_of_island: vec![0; n_nodes],
            tied: vec![false; n_nodes],
            floating: vec![false; n_nodes],
            fed_of_island: vec![SourceSet::EMPTY; n_nodes],
            fed: vec![SourceSet::EMPTY; n_nodes],
        }
    }

    /// Finds islands and their ties, and what is fed, for the elements that are present.
    pub(super) fn update(&mut self, layout: &Layout, present: &[bool]) {
        self.find_islands(layout, present);
        self.find_fed(layout, present);
    }

    fn find_islands(&mut self, layout: &Layout, present: &[bool]) {
        self.sets.reset();
        for (part, _) in layout
            .parts
            .iter()
            .zip(present)
            .filter(|(_, present)| **present)
        {
            for &(a, b) in &layout.ports[part.first_port..part.first_port + part.n_ports] {
                self.sets.join(a, b);
            }
        }
        let island = self.sets.flatten();
        self.tie_of_island.fill(0);
        let is_grounded = |node: usize| layout.conductor[node] == Conductor::Grounded;
        for (node, &island) in island.iter().enumerate() {
            self.floating[node] = island != 0;
            self.tied[node] = false;
            // a grounded conductor is the natural reference; the lowest node otherwise
            let tie = &mut self.tie_of_island[island as usize];
            if island != 0 && (*tie == 0 || (is_grounded(node) && !is_grounded(*tie))) {
                *tie = node;
            }
        }
        for &tie in self.tie_of_island.iter().filter(|&&tie| tie != 0) {
            self.tied[tie] = true;
        }
    }

    fn find_fed(&mut self, layout: &Layout, present: &[bool]) {
        let is_open = |node: u32| layout.conductor[node as usize] == Conductor::Ungrounded;
        self.sets.reset();
        for (part, _) in layout
            .parts
            .iter()
            .zip(present)
            .filter(|(part, present)| **present && part.kind.conducts_feed())
        {
            let ports = &layout.ports[part.first_port..part.first_port + part.n_ports];
            let mut wound = None;
            for &(a, b) in ports {
                if is_open(a) && is_open(b) {
                    self.sets.join(a, b);
                }
                if part.kind == Kind::Windings {
                    for node in [a, b].into_iter().filter(|&node| is_open(node)) {
                        self.sets.join(*wound.get_or_insert(node), node);
                    }
                }
            }
        }
        self.fed_of_island.fill(SourceSet::EMPTY);
        let sources = layout.parts[layout.n_plain..]
            .iter()
            .zip(&present[layout.n_plain..]);
        for (ordinal, (part, _)) in sources.enumerate().filter(|(_, (_, present))| **present) {
            for &(a, b) in &layout.ports[part.first_port..part.first_port + part.n_ports] {
                for node in [a, b].into_iter().filter(|&node| is_open(node)) {
                    let island = self.sets.find(node) as usize;
                    self.fed_of_island[island].insert(ordinal);
                }
            }
        }
        for (node, &island) in self.sets.flatten().iter().enumerate() {
            self.fed[node] = match layout.conductor[node] {
                Conductor::Ungrounded => self.fed_of_island[island as usize],
                Conductor::Grounded => SourceSet::EMPTY,
            };
        }
    }
}
