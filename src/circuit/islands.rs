//! What the graph alone says: which nodes hang together, which have no path to earth, which source feeds what.
//!
//! Union-find over everything that conducts, windings joined only within one winding: an island without earth is
//! found before the factorization, not by its failure (which may not come).
//! "Fed by" is a second union-find over ungrounded nodes, whatever the volts there.
//! What no switch can part is joined once and for all, so a change only looks at what joins such blocks.

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

/// Disjoint sets; the lowest member represents its set, so the answer doesn't depend on the order of joining.
#[derive(Debug, Clone)]
struct Disjoint {
    parent: Vec<u32>,
}

impl Disjoint {
    fn new(n: usize) -> Self {
        Self {
            parent: (0..).take(n).collect(),
        }
    }

    fn reset(&mut self) {
        (0..)
            .zip(&mut self.parent)
            .for_each(|(own, parent)| *parent = own);
    }

    fn find(&mut self, member: u32) -> u32 {
        let mut member = member;
        loop {
            let up = self.parent[member as usize];
            if up == member {
                return member;
            }
            let over = self.parent[up as usize];
            self.parent[member as usize] = over;
            member = over;
        }
    }

    fn join(&mut self, a: u32, b: u32) {
        let (a, b) = (self.find(a), self.find(b));
        self.parent[a.max(b) as usize] = a.min(b);
    }

    /// Points every member straight at the lowest of its set; a parent is never above its member, so one pass does it.
    fn flatten(&mut self) -> &[u32] {
        for member in 0..self.parent.len() {
            self.parent[member] = self.parent[self.parent[member] as usize];
        }
        &self.parent
    }
}

/// A pair that hangs together while a part is there.
#[derive(Debug, Clone, Copy)]
struct Join {
    part: u32,
    a: u32,
    b: u32,
}

/// A way of hanging together.
///
/// What always hangs together is one *block*, numbered in the order of the lowest nodes; only what joins different
/// blocks at times is looked at again.
#[derive(Debug, Clone)]
struct Ways {
    block_of_node: Vec<u32>,
    /// Between blocks.
    at_times: Vec<Join>,
    /// Of blocks.
    sets: Disjoint,
}

impl Ways {
    /// Nodes for which `is_apart` is true are never joined and are all put in the block of node 0.
    fn new(
        layout: &Layout,
        joins: impl Iterator<Item = Join>,
        is_apart: impl Fn(u32) -> bool,
    ) -> Self {
        let is_always = |join: &Join| {
            matches!(
                layout.parts[join.part as usize].kind,
                Kind::Series | Kind::Windings
            )
        };
        let (always, at_times): (Vec<Join>, Vec<Join>) = joins.partition(is_always);
        let mut nodes = Disjoint::new(layout.n_nodes());
        for join in always {
            nodes.join(join.a, join.b);
        }
        let mut block_of_node: Vec<u32> = Vec::with_capacity(layout.n_nodes());
        let mut n_blocks = 0_u32;
        for (node, &lowest) in (0..).zip(nodes.flatten()) {
            block_of_node.push(if node != 0 && is_apart(node) {
                0
            } else if lowest == node {
                n_blocks += 1;
                n_blocks - 1
            } else {
                block_of_node[lowest as usize]
            });
        }
        let between = at_times.into_iter().map(|join| Join {
            part: join.part,
            a: block_of_node[join.a as usize],
            b: block_of_node[join.b as usize],
        });
        Self {
            at_times: between.filter(|join| join.a != join.b).collect(),
            sets: Disjoint::new(n_blocks as usize),
            block_of_node,
        }
    }

    fn n_blocks(&self) -> usize {
        self.sets.parent.len()
    }

    fn find(&mut self, present: &[bool]) {
        self.sets.reset();
        for join in &self.at_times {
            if present[join.part as usize] {
                self.sets.join(join.a, join.b);
            }
        }
        self.sets.flatten();
    }

    /// The lowest block that hangs together with a node; none for an unknown node.
    fn island(&self, node: usize) -> Option<usize> {
        let block = *self.block_of_node.get(node)? as usize;
        Some(self.sets.parent[block] as usize)
    }
}

/// No node: above every other.
const NO_NODE: u32 = u32::MAX;

/// What the graph says of each node.
#[derive(Debug, Clone)]
pub(super) struct Graph {
    /// By conducting anything, and by spreading "fed by".
    conducting: Ways,
    feeding: Ways,
    /// The lowest node and the lowest grounded node of each block that conducts, and the latter of each island.
    lowest: Vec<u32>,
    grounded: Vec<u32>,
    grounded_of_island: Vec<u32>,
    /// Nodes that refer their islands to earth where nothing else does, now and before the last change.
    pub(super) ties: Vec<u32>,
    pub(super) ties_before: Vec<u32>,
    fed_of_island: Vec<SourceSet>,
}

impl Graph {
    pub(super) fn new(layout: &Layout) -> Self {
        let parts = || (0..).zip(&layout.parts);
        let joins = parts().flat_map(|(part, p)| {
            layout
                .ports_of(p)
                .iter()
                .map(move |&(a, b)| Join { part, a, b })
        });
        let conducting = Ways::new(layout, joins, |_| false);
        let joins = parts().flat_map(|(part, p)| feed_joins(layout, part, p));
        let feeding = Ways::new(layout, joins, |node| !is_ungrounded(layout, node));
        let n_blocks = conducting.n_blocks();
        let (mut lowest, mut grounded) = (vec![NO_NODE; n_blocks], vec![NO_NODE; n_blocks]);
        for (node, &block) in (0..).zip(&conducting.block_of_node) {
            lowest[block as usize] = node.min(lowest[block as usize]);
            if !is_ungrounded(layout, node) {
                grounded[block as usize] = node.min(grounded[block as usize]);
            }
        }
        Self {
            lowest,
            grounded_of_island: grounded.clone(),
            grounded,
            ties: Vec::with_capacity(n_blocks),
            ties_before: Vec::with_capacity(n_blocks),
            fed_of_island: vec![SourceSet::EMPTY; feeding.n_blocks()],
            conducting,
            feeding,
        }
    }

    /// Whether a node's island has no path to earth; none for an unknown node.
    #[inline]
    pub(super) fn is_floating(&self, node: usize) -> Option<bool> {
        if self.ties.is_empty() {
            return (node < self.conducting.block_of_node.len()).then_some(false);
        }
        self.conducting.island(node).map(|island| island != 0)
    }

    /// Whether two nodes are of one island; false for an unknown one.
    #[inline]
    pub(super) fn joins(&self, a: usize, b: usize) -> bool {
        let island = self.conducting.island(a);
        island.is_some() && island == self.conducting.island(b)
    }

    /// Whether a node refers its island to earth.
    pub(super) fn is_tie(&self, node: u32) -> bool {
        let island = self.conducting.island(node as usize);
        island.is_some_and(|island| island != 0 && self.tie(island) == node)
    }

    /// What feeds a node; nothing for an unknown one.
    pub(super) fn fed(&self, node: usize) -> SourceSet {
        self.feeding
            .island(node)
            .map_or(SourceSet::EMPTY, |island| self.fed_of_island[island])
    }

    /// Finds islands and their ties, and what is fed, for the elements that are present.
    pub(super) fn update(&mut self, layout: &Layout, present: &[bool]) {
        self.conducting.find(present);
        self.find_ties();
        self.feeding.find(present);
        self.find_fed(layout, present);
    }

    /// A grounded conductor is the natural reference; the lowest node otherwise.
    fn tie(&self, island: usize) -> u32 {
        match self.grounded_of_island[island] {
            NO_NODE => self.lowest[island],
            node => node,
        }
    }

    fn find_ties(&mut self) {
        let islands = &self.conducting.sets.parent;
        self.grounded_of_island.copy_from_slice(&self.grounded);
        for (&island, &node) in islands.iter().zip(&self.grounded) {
            let best = &mut self.grounded_of_island[island as usize];
            *best = node.min(*best);
        }
        core::mem::swap(&mut self.ties, &mut self.ties_before);
        self.ties.clear();
        for block in 1..self.conducting.n_blocks() {
            if self.conducting.sets.parent[block] as usize == block {
                self.ties.push(self.tie(block));
            }
        }
    }

    fn find_fed(&mut self, layout: &Layout, present: &[bool]) {
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
                    if let Some(island) = self.feeding.island(node as usize) {
                        self.fed_of_island[island].insert(ordinal);
                    }
                }
            }
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
