//! What people bring along: the cord that a neighbor lends, and an adapter on a plug.
//!
//! The set at the other end of that cord is a source of 120 V with a step of its own.
//! An adapter gives a machine for both hots one of them and the neutral.

use crate::apparatus::cord::RATED_C;
use crate::apparatus::generator::Reactance;
use crate::circuit::{BranchId, NodeId, Port, SourceSpec};
use crate::units::Complex;

use super::lent::LENT_V;
use super::wiring::{Builder, End, LENT};

impl Builder<'_> {
    /// The set of a neighbor who lends a cord, its hot, and the end of that cord.
    pub(super) fn lent(&mut self) -> Option<(BranchId, NodeId, End)> {
        let lent = self.site.lent.as_ref()?;
        let (set, end) = (self.end([true, false]), self.end([true, false]));
        let (hot, out) = set.one.zip(end.one)?;
        let source = self.network.source(SourceSpec {
            ports: vec![Port {
                a: hot,
                b: set.neutral,
                emf_v: Complex::new(LENT_V, 0.0),
                z: lent.impedance(Reactance::Transient),
            }],
            group: LENT,
            on: true,
            ceiling: Some(lent.ceiling()),
        });
        let wire = lent.make.impedance_ohm(RATED_C);
        let branch = self.series(hot, out, wire, &lent.name);
        self.grounded_wire(set.neutral, end.neutral, wire);
        self.grounded_wire(set.ground, end.ground, wire);
        self.meter(&lent.name, vec![branch]);
        self.point(&lent.name, vec![out], end.neutral);
        Some((source, hot, end))
    }

    /// An end as a plug meets it: to a plug for both hots an adapter gives the neutral in place of the second.
    pub(super) fn adapted(&mut self, end: End, plug: End) -> End {
        match (plug.one.zip(plug.two), end.one.xor(end.two)) {
            (Some(_), Some(hot)) => End {
                one: Some(hot),
                two: Some(end.neutral),
                neutral: self.grounded(),
                ground: end.ground,
            },
            _ => end,
        }
    }
}
