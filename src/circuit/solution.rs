//! What a solve says: volts, amps, power, what holds a source back, what is fed, and whether to believe it.
//!
//! Every number is only as good as [`Solution::converged`]: look at it first.
//! Magnitudes are RMS; where sources aren't synchronized they are the root-sum-square over the groups.
//! Ids of another network give zero, none or false.

use crate::circuit::audit::least_currents;
use crate::circuit::islands::{Graph, SourceSet};
use crate::circuit::layout::{Layout, Part};
use crate::circuit::network::{BranchId, Kind, NodeId, index32};
use crate::circuit::source::{Ceiling, Group, Limit, MAX_GROUPS};
use crate::units::Complex;

/// A source as it stands.
#[derive(Debug, Clone)]
pub(super) struct SourceState {
    pub(super) emf_v: Vec<Complex>,
    pub(super) group: usize,
    pub(super) on: bool,
    pub(super) ceiling: Option<Ceiling>,
    /// The closing angle as a phasor of magnitude 1.
    pub(super) turn: Complex,
    pub(super) scale: f64,
    pub(super) limit: Option<Limit>,
}

/// Where to read a port: the rows of its two ends and its admittance, together for speed.
#[derive(Debug, Clone, Copy)]
pub(super) struct Meter {
    pub(super) a: u32,
    pub(super) b: u32,
    /// The slot of its own admittance; of the first of its row where ports are coupled.
    pub(super) slot: u32,
    /// The part of whose coupled ports it is one, or a mark.
    part: u32,
}

/// Marks a port that is coupled with no other.
const ALONE: u32 = u32::MAX;

/// The answer for a network in one state.
#[derive(Debug, Clone)]
pub struct Solution {
    pub(super) layout: Layout,
    pub(super) row_of_node: Vec<u32>,
    /// By port; those of sources follow the first `n_plain_ports`.
    pub(super) meters: Vec<Meter>,
    pub(super) n_plain_ports: usize,
    /// By element but sources: the meter of its first port.
    first_meters: Vec<Meter>,
    /// By row: the least current that counts as one per unit.
    pub(super) least_a: Vec<f64>,
    /// Admittances as the elements show them, constant power included.
    pub(super) y: Vec<Complex>,
    /// Volts by group and row; the last row is earth.
    pub(super) volts: [Vec<Complex>; MAX_GROUPS],
    /// Groups with a source that is on: the first `n_active` of these.
    pub(super) active: [u8; MAX_GROUPS],
    pub(super) n_active: usize,
    pub(super) graph: Graph,
    pub(super) sources: Vec<SourceState>,
    /// Loads that fell back, by element.
    pub(super) fallen: Vec<bool>,
    pub(super) converged: bool,
}

impl Solution {
    /// An answer still without numbers.
    pub(super) fn new(layout: Layout, row_of_node: &[u32], sources: Vec<SourceState>) -> Self {
        let meters: Vec<Meter> = layout
            .parts
            .iter()
            .enumerate()
            .flat_map(|(index, part)| meters(&layout, row_of_node, index, part))
            .collect();
        let plain = &layout.parts[..layout.n_plain];
        let n_slots = layout.parts.iter().map(Part::n_slots).sum();
        Self {
            n_plain_ports: plain.iter().map(|part| part.n_ports).sum(),
            first_meters: plain.iter().map(|part| meters[part.first_port]).collect(),
            meters,
            least_a: least_currents(&layout, row_of_node),
            y: vec![Complex::ZERO; n_slots],
            volts: core::array::from_fn(|_| vec![Complex::ZERO; row_of_node.len()]),
            active: [0; MAX_GROUPS],
            n_active: 0,
            graph: Graph::new(&layout),
            sources,
            fallen: vec![false; layout.n_plain],
            converged: false,
            row_of_node: row_of_node.to_vec(),
            layout,
        }
    }

    /// Whether the other numbers are the solution.
    ///
    /// False when an iteration didn't settle, when nothing defines some voltage (a winding set without its magnetizing
    /// shunt and with nothing connected), when a value set was out of range, or when Kirchhoff's current law is off.
    pub fn converged(&self) -> bool {
        self.converged
    }

    /// Volts to remote earth; none where the node's island has no path to earth.
    #[inline]
    pub fn volts(&self, node: NodeId) -> Option<f64> {
        let floating = self.graph.is_floating(node.index())?;
        (!floating).then(|| self.combine(|volts| self.at(node, volts)))
    }

    /// Whether two nodes are of one island: only then is there a voltage between them.
    #[inline]
    pub fn joins(&self, a: NodeId, b: NodeId) -> bool {
        self.graph.joins(a.index(), b.index())
    }

    /// Volts between two nodes; meaningful within one island, floating or not.
    #[inline]
    pub fn volts_between(&self, a: NodeId, b: NodeId) -> f64 {
        self.combine(|volts| self.at(a, volts) - self.at(b, volts))
    }

    /// The voltage phasor of one group, to earth, or to the reference node of a floating island.
    pub fn phasor(&self, node: NodeId, group: Group) -> Complex {
        let group = usize::from(group.0);
        if group < MAX_GROUPS {
            self.at(node, &self.volts[group])
        } else {
            Complex::ZERO
        }
    }

    /// Amps through an element; the largest of its ports where it has several.
    #[inline]
    pub fn amps(&self, branch: BranchId) -> f64 {
        let meter = branch.plain_index().and_then(|i| self.first_meters.get(i));
        if let Some(meter) = meter.filter(|meter| meter.part == ALONE) {
            return self.combine(|volts| self.y[meter.slot as usize] * meter.across(volts));
        }
        self.most_amps(branch)
    }

    /// The largest of the amps through the ports of an element.
    fn most_amps(&self, branch: BranchId) -> f64 {
        let Some(part) = self.layout.part(branch) else {
            return 0.0;
        };
        let mut largest = 0.0;
        for port in 0..part.n_ports {
            largest = f64::max(
                largest,
                self.sum_squares(|g| self.current(branch, part, port, g)),
            );
        }
        largest.sqrt()
    }

    /// Amps through one port of an element: one EMF of a source, one conductor of several, one winding.
    #[inline]
    pub fn port_amps(&self, branch: BranchId, port: usize) -> f64 {
        self.port(branch, port).map_or(0.0, |part| {
            self.sum_squares(|g| self.current(branch, part, port, g))
                .sqrt()
        })
    }

    /// Amps in conductor `conductor` of coupled conductors.
    pub fn conductor_amps(&self, branch: BranchId, conductor: usize) -> f64 {
        self.port_amps(branch, conductor)
    }

    /// The current phasor of one group through one port: from the first end to the second, out of the positive terminal
    /// of a source.
    pub fn current_phasor(&self, branch: BranchId, port: usize, group: Group) -> Complex {
        let group = usize::from(group.0);
        match self.port(branch, port) {
            Some(part) if group < MAX_GROUPS => self.current(branch, part, port, group),
            _ => Complex::ZERO,
        }
    }

    /// Watts and vars: delivered at the terminals of a source, taken by any other element.
    pub fn power(&self, branch: BranchId) -> Complex {
        let mut sum = Complex::ZERO;
        let Some(part) = self.layout.part(branch) else {
            return sum;
        };
        for g in self.groups() {
            for port in 0..part.n_ports {
                sum += self.drop(part, port, g) * self.current(branch, part, port, g).conj();
            }
        }
        sum
    }

    /// Which ceiling holds a source back from its regulated voltage; none if it holds it, has none or isn't a source.
    pub fn limit(&self, source: BranchId) -> Option<Limit> {
        self.source(source).and_then(|s| s.limit)
    }

    /// The scale of a source's EMFs; 1 without a ceiling, 0 when off.
    pub fn scale(&self, source: BranchId) -> f64 {
        self.source(source)
            .map_or(0.0, |s| if s.on { s.scale } else { 0.0 })
    }

    /// Whether a constant-power load fell back to an impedance.
    pub fn load_fell_back(&self, branch: BranchId) -> bool {
        branch
            .plain_index()
            .and_then(|i| self.fallen.get(i))
            .copied()
            .unwrap_or(false)
    }

    /// Whether a node's island has no path to earth: its volts to earth are not defined.
    pub fn floating(&self, node: NodeId) -> bool {
        self.graph.is_floating(node.index()).unwrap_or(false)
    }

    /// The sources, switched on, that reach a node through closed switches, wires, coupled conductors and windings over
    /// ungrounded nodes; by the graph, whatever the volts.
    pub fn fed_by(&self, node: NodeId) -> SourceSet {
        self.graph.fed(node.index())
    }

    /// Lists the groups with a source that is on, in their order.
    pub(super) fn find_active(&mut self) {
        self.n_active = 0;
        for group in 0..MAX_GROUPS {
            if self.sources.iter().any(|s| s.on && s.group == group) {
                self.active[self.n_active] = u8::try_from(group).unwrap_or(0);
                self.n_active += 1;
            }
        }
    }

    /// Groups with a source that is on.
    #[inline]
    pub(super) fn groups(&self) -> impl Iterator<Item = usize> + '_ {
        self.active
            .iter()
            .take(self.n_active)
            .map(|&group| usize::from(group))
    }

    /// Root-sum-square over the groups of what their volts by row make.
    #[inline]
    pub(super) fn combine(&self, phasor: impl Fn(&[Complex]) -> Complex) -> f64 {
        if self.n_active == 1 {
            let group = usize::from(self.active[0]);
            return phasor(&self.volts[group]).norm_sqr().sqrt();
        }
        self.sum_squares(|group| phasor(&self.volts[group])).sqrt()
    }

    fn sum_squares(&self, phasor: impl Fn(usize) -> Complex) -> f64 {
        let mut sum = 0.0;
        for group in self.groups() {
            sum += phasor(group).norm_sqr();
        }
        sum
    }

    /// Volts across one port.
    #[inline]
    pub(super) fn drop(&self, part: &Part, port: usize, group: usize) -> Complex {
        self.meters[part.first_port + port].across(&self.volts[group])
    }

    /// Amps at a meter of anything but a source, with the volts of one group.
    #[inline]
    pub(super) fn metered(&self, meter: &Meter, volts: &[Complex]) -> Complex {
        if meter.part == ALONE {
            self.y[meter.slot as usize] * meter.across(volts)
        } else {
            self.metered_coupled(meter, volts)
        }
    }

    fn metered_coupled(&self, meter: &Meter, volts: &[Complex]) -> Complex {
        let part = &self.layout.parts[meter.part as usize];
        let ports = &self.meters[part.first_port..part.first_port + part.n_ports];
        let mut sum = Complex::ZERO;
        for (y, other) in self.y[meter.slot as usize..].iter().zip(ports) {
            sum += y * other.across(volts);
        }
        sum
    }

    /// Amps through one port, out of the positive terminal for a source.
    #[inline]
    pub(super) fn current(
        &self,
        branch: BranchId,
        part: &Part,
        port: usize,
        group: usize,
    ) -> Complex {
        let meter = &self.meters[part.first_port + port];
        if part.kind != Kind::Source {
            return self.metered(meter, &self.volts[group]);
        }
        let emf = self
            .source(branch)
            .filter(|s| s.group == group)
            .map_or(Complex::ZERO, |s| s.emf(port));
        self.y[meter.slot as usize] * (emf - meter.across(&self.volts[group]))
    }

    #[inline]
    fn at(&self, node: NodeId, volts: &[Complex]) -> Complex {
        self.row_of_node
            .get(node.index())
            .map_or(Complex::ZERO, |&row| volts[row as usize])
    }

    fn port(&self, branch: BranchId, port: usize) -> Option<&Part> {
        self.layout.part(branch).filter(|part| port < part.n_ports)
    }

    fn source(&self, branch: BranchId) -> Option<&SourceState> {
        branch
            .source_ordinal()
            .and_then(|ordinal| self.sources.get(ordinal))
    }
}

impl Meter {
    /// Volts across it.
    #[inline]
    pub(super) fn across(&self, volts: &[Complex]) -> Complex {
        volts[self.a as usize] - volts[self.b as usize]
    }
}

impl SourceState {
    /// The EMF of a port as it stands: scaled and turned.
    pub(super) fn emf(&self, port: usize) -> Complex {
        self.emf_v
            .get(port)
            .map_or(Complex::ZERO, |emf| emf * self.factor())
    }

    /// What the source's unit solution is multiplied with.
    pub(super) fn factor(&self) -> Complex {
        self.turn * self.scale
    }
}

/// The meters of the ports of a part.
fn meters(layout: &Layout, row_of_node: &[u32], index: usize, part: &Part) -> Vec<Meter> {
    let is_coupled = part.kind.has_coupling();
    let ends = layout.ports_of(part).iter().enumerate();
    let meter = |(port, &(a, b)): (usize, &(u32, u32))| Meter {
        a: row_of_node[a as usize],
        b: row_of_node[b as usize],
        slot: index32(
            part.first_slot
                + if is_coupled {
                    port * part.n_ports
                } else {
                    port
                },
        ),
        part: if is_coupled { index32(index) } else { ALONE },
    };
    ends.map(meter).collect()
}
