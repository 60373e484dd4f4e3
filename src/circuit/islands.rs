//! What the graph alone says: which nodes hang together, which have no path to earth, which source feeds what.
//!
//! Union-find over everything that conducts, windings joined only within one winding: an island without earth is
//! found before the factorization, not by its failure (which may not come).
//! "Fed by" is a second union-find over ungrounded nodes, whatever the volts there.

use crate::circuit::layout::{Layout, Part};
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

    fn copy(&mut self, other: &Self) {
        self.parent.copy_from_slice(&other.parent);
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

/// A pair of nodes that hang together while a part is there.
#[derive(Debug, Clone, Copy)]
struct Join {
    part: u32,
    a: u32,
    b: u32,
}

/// A way of hanging together: what always does, and what does while its part is there.
#[derive(Debug, Clone)]
struct Ways {
    always: Disjoint,
    at_times: Vec<Join>,
}

impl Ways {
    fn new(layout: &Layout, joins: impl Iterator<Item = Join>) -> Self {
        let mut ways = Self {
            always: Disjoint::new(layout.n_nodes()),
            at_times: Vec::new(),
        };
        for join in joins {
            if matches!(
                layout.parts[join.part as usize].kind,
                Kind::Series | Kind::Windings
            ) {
                ways.always.join(join.a, join.b);
            } else {
                ways.at_times.push(join);
            }
        }
        ways.always.flatten();
        ways
    }

    fn find(&self, sets: &mut Disjoint, present: &[bool]) {
        sets.copy(&self.always);
        for join in &self.at_times {
            if present[join.part as usize] {
                sets.join(join.a, join.b);
            }
        }
    }
}

/// What the graph says of each node.
#[derive(Debug, Clone)]
pub(super) struct Graph {
    /// By conducting anything, and by spreading "fed by".
    conducting: Ways,
    feeding: Ways,
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
    pub(super) fn new(layout: &Layout) -> Self {
        let n_nodes = layout.n_nodes();
        let parts = || (0..).zip(&layout.parts);
        let conducting = parts().flat_map(|(part, p)| {
            layout
                .ports_of(p)
                .iter()
                .map(move |&(a, b)| Join { part, a, b })
        });
        Self {
            conducting: Ways::new(layout, conducting),
            feeding: Ways::new(
                layout,
                parts().flat_map(|(part, p)| feed_joins(layout, part, p)),
            ),
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
        self.conducting.find(&mut self.sets, present);
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
        self.feeding.find(&mut self.sets, present);
        self.fed_of_island.fill(SourceSet::EMPTY);
        let sources = layout.parts[layout.n_plain..]
            .iter()
            .zip(&present[layout.n_plain..]);
        for (ordinal, (part, _)) in sources.enumerate().filter(|(_, (_, present))| **present) {
            for &(a, b) in layout.ports_of(part) {
                for node in [a, b]
                    .into_iter()
                    .filter(|&node| is_ungrounded(layout, node))
                {
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

fn is_ungrounded(layout: &Layout, node: u32) -> bool {
    layout.conductor[node as usize] == Conductor::Ungrounded
}

/// Along each conductor of a part that spreads "fed by"; over all windings of one set.
fn feed_joins(layout: &Layout, part: u32, p: &Part) -> Vec<Join> {
    let is_open = |&node: &u32| is_ungrounded(layout, node);
    let ports = layout.ports_of(p);
    let mut joins = Vec::new();
    if p.kind == Kind::Windings {
        let ends: Vec<u32> = ports
            .iter()
            .flat_map(|&(a, b)| [a, b])
            .filter(is_open)
            .collect();
        joins.extend(ends.windows(2).map(|two| Join {
            part,
            a: two[0],
            b: two[1],
        }));
    } else if p.kind.conducts_feed() {
        let open = ports.iter().filter(|(a, b)| is_open(a) && is_open(b));
        joins.extend(open.map(|&(a, b)| Join { part, a, b }));
    }
    joins
}
