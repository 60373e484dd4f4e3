//! The site as a graph of things, for telling the way that energy takes.
//!
//! Nodes are the network's; an edge is a wire, a closed contact or a pair of windings, with the name of the thing it belongs to.
//! It answers "by which things does this reach that" for given positions; how much flows is the solver's to say.

use std::collections::VecDeque;

use crate::circuit::NodeId;

use super::control::{ControlId, PositionId, Positions};

/// One step between two nodes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Edge {
    /// One end.
    pub a: NodeId,
    /// The other end.
    pub b: NodeId,
    /// The thing it belongs to.
    pub thing: String,
    /// For a contact: the control and the position in which it is closed.
    pub closed_in: Option<(ControlId, PositionId)>,
}

/// All edges of a site.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Edges(Vec<Edge>);

impl Edges {
    /// Adds an edge.
    pub fn push(&mut self, edge: Edge) {
        self.0.push(edge);
    }

    /// The things passed on the shortest way from one node to another over what is closed, each named once.
    /// `None` if there is no way.
    pub fn way(&self, positions: &Positions, from: NodeId, to: NodeId) -> Option<Vec<&str>> {
        let closed: Vec<&Edge> = self
            .0
            .iter()
            .filter(|e| {
                e.closed_in
                    .is_none_or(|(control, position)| positions.get(control) == position)
            })
            .collect();
        let mut reached: Vec<(NodeId, Option<(usize, &Edge)>)> = vec![(from, None)];
        let mut queue = VecDeque::from([0_usize]);
        while let Some(here) = queue.pop_front() {
            let (node, _) = *reached.get(here)?;
            if node == to {
                return Some(walk_back(&reached, here));
            }
            for edge in &closed {
                let next = if edge.a == node {
                    edge.b
                } else if edge.b == node {
                    edge.a
                } else {
                    continue;
                };
                if reached.iter().all(|(n, _)| *n != next) {
                    queue.push_back(reached.len());
                    reached.push((next, Some((here, edge))));
                }
            }
        }
        None
    }
}

fn walk_back<'a>(reached: &[(NodeId, Option<(usize, &'a Edge)>)], end: usize) -> Vec<&'a str> {
    let mut things: Vec<&str> = Vec::new();
    let mut here = end;
    while let Some((_, Some((before, edge)))) = reached.get(here) {
        if things.last() != Some(&edge.thing.as_str()) {
            things.push(&edge.thing);
        }
        here = *before;
    }
    things.reverse();
    things
}
