//! What a crew works, as a part of the network: breaks with their jumpers, cutouts, further transformers, a second feed, grounds, the worker.
//!
//! The worker stands on the pole: through its footing to remote earth, and joined to the neutral once a set of grounds is on there with both ends.
//! A set of grounds is one lead between conductor and neutral; with one end on, it carries nothing.
//! The second feed is in step with the first and as stiff.

use crate::circuit::{BranchId, Conductor, NodeId, Port, SourceSpec};
use crate::units::Complex;

use super::control::PositionId;
use super::line_work::{At, PROVING_SOURCE};
use super::wiring::{BODY_OHM, Builder, CONTACT_OHM, Contact, UTILITY};

const CLOSED: PositionId = PositionId(0);
const PRESENT: PositionId = PositionId(1);
/// The position of grounds in which they carry: its place in `CLAMPS`.
const BOTH_ENDS: PositionId = PositionId(2);

impl Builder<'_> {
    /// The contacts at the near end of a span: a break with its jumper; `None` where the span has none.
    pub(super) fn break_in(
        &mut self,
        span: usize,
        from: NodeId,
        start: NodeId,
    ) -> Option<Vec<BranchId>> {
        let site = self.site;
        let work = site.line_work.as_ref()?;
        let own = work.breaks.iter().find(|b| b.at == At::Span(span))?;
        Some(
            [(own.handle, CLOSED), (own.jumper, PRESENT)]
                .map(|closed_in| self.contact(from, start, closed_in, &own.name))
                .into(),
        )
    }

    /// Contacts of the head switch that stay closed when they are welded.
    pub(super) fn welded_head(&mut self, source: NodeId, first: NodeId) -> Option<BranchId> {
        let contacts = self.site.line_work.as_ref()?.head_contacts;
        Some(self.contact(source, first, (contacts, PRESENT), "feeder"))
    }

    /// What hangs on the poles: the second feed, grounds, further transformers with their customers; returns the second source.
    pub(super) fn line_work(&mut self, poles: &[(NodeId, NodeId)]) -> Option<BranchId> {
        let site = self.site;
        let work = site.line_work.as_ref()?;
        self.point(PROVING_SOURCE, Vec::new(), NodeId::EARTH);
        let mut second = None;
        for own in &work.breaks {
            if let (At::Tie(pole), Some((a, n))) = (own.at, tie_pole(own.at, poles)) {
                second = Some(self.second_feed(pole, a, n));
            }
        }
        for grounds in &work.grounds {
            if let Some((a, n)) = poles.get(grounds.pole).copied() {
                let lead = Complex::new(work.lead_ohm, 0.0);
                let branch = self.network.shunt(a, n, lead, false);
                self.contacts.push(Contact {
                    branch,
                    closed_in: (grounds.control, BOTH_ENDS),
                    shunt: true,
                });
                let name = site.control(grounds.control).map_or("", |c| &c.name);
                self.meter(name, vec![branch]);
            }
        }
        for tap in &work.taps {
            let Some((a, n)) = poles.get(tap.pole).copied() else {
                continue;
            };
            let top = self.cutout(a, tap.cutout);
            let secondary = self.transformer_on(&tap.transformer, (top, n));
            for customer in &tap.customers {
                let thing = format!("drop-{}", customer.name);
                let end = self.drop(&customer.service, secondary, &customer.name, &thing);
                self.neighbor_loads(end, customer.leg_watts);
            }
        }
        second
    }

    /// Behind the cutout over a transformer.
    pub(super) fn cutout(&mut self, a: NodeId, cutout: super::control::ControlId) -> NodeId {
        let top = self
            .network
            .node(self.site.line.volts, Conductor::Ungrounded);
        let name = self.site.control(cutout).map_or("", |c| c.name.as_str());
        self.contact(a, top, (cutout, CLOSED), name);
        top
    }

    fn second_feed(&mut self, pole: usize, a: NodeId, n: NodeId) -> BranchId {
        let site = self.site;
        let line = &site.line;
        let src_a = self.network.node(line.volts, Conductor::Ungrounded);
        let src_n = self.network.node(line.volts, Conductor::Grounded);
        let second = self.network.source(SourceSpec {
            ports: vec![Port {
                a: src_a,
                b: src_n,
                emf_v: Complex::new(line.volts, 0.0),
                z: Complex::new(line.source_ohm.0, line.source_ohm.1),
            }],
            group: UTILITY,
            on: true,
            ceiling: None,
        });
        self.feeds.push(src_a);
        self.electrode(src_n, line.source_electrode_ohm);
        self.network
            .series(src_n, n, Complex::new(CONTACT_OHM, 0.0));
        let breaks = site.line_work.iter().flat_map(|w| &w.breaks);
        for own in breaks.filter(|b| b.at == At::Tie(pole)) {
            let both = [(own.handle, CLOSED), (own.jumper, PRESENT)];
            let contacts = both.map(|closed_in| self.contact(src_a, a, closed_in, &own.name));
            self.meter(&own.name, contacts.into());
        }
        second
    }

    /// The place of a worker's body: from the conductor to remote earth, or to where the worker stands on a line that can be grounded.
    pub(super) fn worker(&mut self, a: NodeId, n: NodeId) -> BranchId {
        let body = Complex::new(BODY_OHM, 0.0);
        let site = self.site;
        let Some(work) = site.line_work.as_ref() else {
            return self.network.shunt(a, NodeId::EARTH, body, false);
        };
        let stand = self.network.node(site.line.volts, Conductor::Grounded);
        let footing = Complex::new(site.line.footing_ohm, 0.0);
        self.network.shunt(stand, NodeId::EARTH, footing, true);
        let own = work.grounds.iter().find(|g| g.pole == site.line.crew_pole);
        if let Some(grounds) = own {
            let band = Complex::new(CONTACT_OHM, 0.0);
            let branch = self.network.shunt(stand, n, band, false);
            self.contacts.push(Contact {
                branch,
                closed_in: (grounds.control, BOTH_ENDS),
                shunt: true,
            });
        }
        self.network.shunt(a, stand, body, false)
    }
}

fn tie_pole(at: At, poles: &[(NodeId, NodeId)]) -> Option<(NodeId, NodeId)> {
    match at {
        At::Tie(pole) => poles.get(pole).copied(),
        At::Span(_) => None,
    }
}
