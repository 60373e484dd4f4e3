//! The site as a graph of things, for telling the way that energy takes.
//!
//! Nodes are the network's; an edge is a wire, a closed contact or a pair of windings, with the name of the thing it belongs to.
//! It answers "by which things does this reach that" for given positions; how much flows is the solver's to say.

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

    /// The steps of the best way from any of some nodes to any of others; `None` if there is no way.
    /// Best is the one with the fewest open contacts, then the fewest steps over what carries nothing, then the fewest steps.
    pub(super) fn way(
        &self,
        walk: &Walk<'_>,
        from: &[NodeId],
        to: &[NodeId],
    ) -> Option<Vec<Step<'_>>> {
        let mut reached: Vec<Reached<'_>> = from.iter().map(|node| Reached::start(*node)).collect();
        let mut settled = vec![false; reached.len()];
        loop {
            let open = (0..reached.len()).filter(|i| settled.get(*i) == Some(&false));
            let here = open.min_by_key(|i| reached.get(*i).map(|r| r.cost))?;
            let (node, cost) = reached.get(here).map(|r| (r.node, r.cost))?;
            if let Some(done) = settled.get_mut(here) {
                *done = true;
            }
            if to.contains(&node) {
                return Some(walk_back(&reached, here));
            }
            for edge in &self.0 {
                let (Some(next), Some((open, idle))) = (edge.beyond(node), walk.enters(edge))
                else {
                    continue;
                };
                let step = Reached {
                    node: next,
                    cost: [
                        cost[0] + u32::from(open),
                        cost[1] + u32::from(idle),
                        cost[2] + 1,
                    ],
                    by: Some((here, edge, open)),
                };
                let known = reached.iter().position(|r| r.node == next);
                match known.and_then(|i| reached.get_mut(i)) {
                    Some(known) if known.cost <= step.cost => {}
                    Some(known) => *known = step,
                    None => {
                        reached.push(step);
                        settled.push(false);
                    }
                }
            }
        }
    }
}

/// How a way may go: where contacts stand, what carries, and which open contacts it may cross.
pub(super) struct Walk<'a> {
    /// How everything stands.
    pub(super) positions: &'a Positions,
    /// Whether a thing carries current, or has no meter to say so.
    pub(super) carries: &'a dyn Fn(&str) -> bool,
    /// Which open contacts may be crossed, as what holds energy back.
    pub(super) crosses: &'a dyn Fn(ControlId) -> bool,
}

impl Walk<'_> {
    /// Whether an edge is entered over an open contact, and whether it is idle; `None` if it isn't entered.
    fn enters(&self, edge: &Edge) -> Option<(bool, bool)> {
        let idle = !(self.carries)(&edge.thing);
        let Some((control, position)) = edge.closed_in else {
            return Some((false, idle));
        };
        let open = self.positions.get(control) != position;
        (!open || (self.crosses)(control)).then_some((open, idle))
    }
}

/// One step of a way.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Step<'a> {
    /// The thing passed.
    pub(super) thing: &'a str,
    /// Whether it stands open there.
    pub(super) open: bool,
    /// Where the step ends.
    pub(super) end: NodeId,
}

impl Edge {
    /// The other end, seen from one of them.
    fn beyond(&self, node: NodeId) -> Option<NodeId> {
        if self.a == node {
            Some(self.b)
        } else {
            (self.b == node).then_some(self.a)
        }
    }
}

/// A node that was reached: open contacts, idle steps and steps to it, and by which edge from which.
struct Reached<'a> {
    node: NodeId,
    cost: [u32; 3],
    by: Option<(usize, &'a Edge, bool)>,
}

impl Reached<'_> {
    fn start(node: NodeId) -> Self {
        Self {
            node,
            cost: [0; 3],
            by: None,
        }
    }
}

fn walk_back<'a>(reached: &[Reached<'a>], end: usize) -> Vec<Step<'a>> {
    let mut steps = Vec::new();
    let mut here = end;
    while let Some(Reached {
        node,
        by: Some((before, edge, open)),
        ..
    }) = reached.get(here)
    {
        steps.push(Step {
            thing: &edge.thing,
            open: *open,
            end: *node,
        });
        here = *before;
    }
    steps.reverse();
    steps
}
