//! The grounded conductors of a site as a graph: neutrals, equipment grounds, bonds, electrodes, with their ohms.
//!
//! It answers what a ground-fault device's test signal finds: by how many ohms the neutral behind it comes back to the neutral ahead of it on another way.
//! Loops are taken along the one way of least ohms; two ways side by side are a little less.
//! Not covered: the neutrals of the line and of the drops, which are magnetically coupled and end at electrodes too high to matter here.

use crate::circuit::NodeId;

use super::control::{ControlId, PositionId, Positions};

/// A grounded conductor between two nodes, by their places in the list.
#[derive(Debug, Clone)]
struct Way {
    ends: [usize; 2],
    ohm: f64,
    closed_in: Option<(ControlId, PositionId)>,
}

/// All grounded conductors of a site.
#[derive(Debug, Clone, Default)]
pub(super) struct Returns {
    nodes: Vec<NodeId>,
    ways: Vec<Way>,
}

impl Returns {
    /// Adds one.
    pub(super) fn push(
        &mut self,
        ends: [NodeId; 2],
        ohm: f64,
        closed_in: Option<(ControlId, PositionId)>,
    ) {
        let ends = ends.map(|node| self.place(node));
        self.ways.push(Way {
            ends,
            ohm,
            closed_in,
        });
    }

    fn place(&mut self, node: NodeId) -> usize {
        let known = self.nodes.iter().position(|n| *n == node);
        known.unwrap_or_else(|| {
            self.nodes.push(node);
            self.nodes.len() - 1
        })
    }

    /// Ohms of the best way from one node to another that doesn't go through the contacts of `without`; `None` if there is none.
    pub(super) fn ohm(
        &self,
        positions: &Positions,
        from: NodeId,
        to: NodeId,
        without: ControlId,
    ) -> Option<f64> {
        let place = |node: NodeId| self.nodes.iter().position(|n| *n == node);
        let closed = |way: &&Way| {
            way.closed_in.is_none_or(|(control, position)| {
                control != without && positions.get(control) == position
            })
        };
        let ways: Vec<&Way> = self.ways.iter().filter(closed).collect();
        let mut reached = vec![f64::INFINITY; self.nodes.len()];
        *reached.get_mut(place(from)?)? = 0.0;
        // Each pass makes every way known that is one conductor longer.
        while pass(&ways, &mut reached) {}
        let ohm = reached.get(place(to)?).copied()?;
        ohm.is_finite().then_some(ohm)
    }
}

/// Goes over all conductors once in both directions; says whether a better way was found.
fn pass(ways: &[&Way], reached: &mut [f64]) -> bool {
    let mut better = false;
    for way in ways {
        for [here, there] in [way.ends, [way.ends[1], way.ends[0]]] {
            let ohm = reached.get(here).map_or(f64::INFINITY, |ohm| ohm + way.ohm);
            if let Some(best) = reached.get_mut(there).filter(|best| ohm < **best) {
                *best = ohm;
                better = true;
            }
        }
    }
    better
}
