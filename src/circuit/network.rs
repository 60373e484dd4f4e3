//! A network under construction: nodes and elements, in the order in which they were added.
//!
//! Nothing is checked here; [`Solver::new`](crate::circuit::Solver::new) checks the whole and says what is wrong.
//! Impedances are in ohms at the one frequency of the study, voltages are RMS phasors in volts.
//! Not covered: frequency dependence, saturation, arcs.

use crate::circuit::load::Load;
use crate::circuit::source::SourceSpec;
use crate::circuit::windings::Windings;
use crate::units::Complex;

/// A place where elements meet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct NodeId(pub(super) u32);

impl NodeId {
    /// Remote earth: the one place that is at 0 V by definition.
    pub const EARTH: Self = Self(0);

    pub(super) fn index(self) -> usize {
        self.0 as usize
    }
}

/// An element of a network, of any kind.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct BranchId(u32);

/// What marks the id of a source: sources are numbered apart, so that a set of them is a set of bits.
const SOURCE_MARK: u32 = 1 << 31;

impl BranchId {
    pub(super) fn plain(index: usize) -> Self {
        Self(index32(index) & !SOURCE_MARK)
    }

    pub(super) fn source(ordinal: usize) -> Self {
        Self(index32(ordinal) | SOURCE_MARK)
    }

    /// The ordinal of a source, none for any other element.
    #[inline]
    pub(super) fn source_ordinal(self) -> Option<usize> {
        (self.0 & SOURCE_MARK != 0).then_some((self.0 & !SOURCE_MARK) as usize)
    }

    #[inline]
    pub(super) fn plain_index(self) -> Option<usize> {
        (self.0 & SOURCE_MARK == 0).then_some(self.0 as usize)
    }
}

/// An index that fits 32 bits; the solver refuses networks for which it would not.
pub(super) fn index32(index: usize) -> u32 {
    u32::try_from(index).unwrap_or(u32::MAX)
}

/// Whether being fed spreads over a node.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Conductor {
    /// A conductor that a source can feed.
    Ungrounded,
    /// A neutral, an equipment ground, a frame: may carry current and volts, but is never said to be fed.
    Grounded,
}

/// What an element is, apart from its ports and its admittance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Kind {
    Series,
    Switch,
    Coupled,
    Windings,
    Shunt,
    Load,
    Source,
}

impl Kind {
    /// Whether the ports of one element are coupled with each other.
    pub(super) fn has_coupling(self) -> bool {
        matches!(self, Self::Coupled | Self::Windings)
    }

    /// Whether "fed by" spreads from one end of each port to the other.
    pub(super) fn conducts_feed(self) -> bool {
        matches!(
            self,
            Self::Series | Self::Switch | Self::Coupled | Self::Windings
        )
    }
}

/// What an element is made of, as given: turned into admittances when the solver is made.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Make {
    Impedance(Complex),
    Matrix(Vec<Complex>),
    Windings(Windings),
    Load(Load),
}

#[derive(Debug, Clone, PartialEq)]
pub(super) struct Element {
    pub(super) kind: Kind,
    pub(super) ports: Vec<(NodeId, NodeId)>,
    pub(super) make: Make,
    pub(super) present: bool,
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Node {
    pub(super) base_v: f64,
    pub(super) conductor: Conductor,
}

/// A network, built element by element.
///
/// ```
/// use outage_drill::circuit::{Conductor, Group, Load, Network, NodeId, Port, Solver, SourceSpec};
/// use outage_drill::units::Complex;
///
/// let mut network = Network::new();
/// let hot = network.node(120.0, Conductor::Ungrounded);
/// let ohms = |re| Complex::new(re, 0.0);
/// let port = Port { a: hot, b: NodeId::EARTH, emf_v: ohms(120.0), z: ohms(2.0) };
/// network.source(SourceSpec { ports: vec![port], group: Group(0), on: true, ceiling: None });
/// let load = network.load(hot, NodeId::EARTH, Load::Impedance(ohms(10.0)));
/// let mut solver = Solver::new(network).unwrap();
/// let solution = solver.solve();
/// assert!(solution.converged());
/// assert!((solution.volts(hot).unwrap() - 100.0).abs() < 1e-9);
/// assert!((solution.amps(load) - 10.0).abs() < 1e-9);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Network {
    pub(super) nodes: Vec<Node>,
    pub(super) elements: Vec<Element>,
    pub(super) sources: Vec<SourceSpec>,
}

impl Default for Network {
    fn default() -> Self {
        Self::new()
    }
}

impl Network {
    /// A network of nothing but earth.
    pub fn new() -> Self {
        let earth = Node {
            base_v: 1.0,
            conductor: Conductor::Grounded,
        };
        Self {
            nodes: vec![earth],
            elements: Vec::new(),
            sources: Vec::new(),
        }
    }

    /// Adds a node of the voltage class `base_v` volts, which scales the tolerances there.
    pub fn node(&mut self, base_v: f64, kind: Conductor) -> NodeId {
        self.nodes.push(Node {
            base_v,
            conductor: kind,
        });
        NodeId(index32(self.nodes.len() - 1))
    }

    /// Adds a wire of `z` ohms from `a` to `b`; being fed spreads over it.
    pub fn series(&mut self, a: NodeId, b: NodeId, z: Complex) -> BranchId {
        self.add(Kind::Series, vec![(a, b)], Make::Impedance(z), true)
    }

    /// Adds a switch: a small real resistance when closed, absent when open.
    /// Resistances of 0.1 to 1 milliohm keep ten digits of the current through it.
    pub fn switch(&mut self, a: NodeId, b: NodeId, resistance_ohm: f64, closed: bool) -> BranchId {
        let z = Complex::new(resistance_ohm, 0.0);
        self.add(Kind::Switch, vec![(a, b)], Make::Impedance(z), closed)
    }

    /// Adds coupled conductors from `from[i]` to `to[i]`, with their series impedance matrix in ohms, row by row.
    /// The matrix must be symmetric and invertible.
    /// Being fed spreads along each conductor, not from one to the next.
    pub fn coupled(
        &mut self,
        from: &[NodeId],
        to: &[NodeId],
        z: &[Complex],
        closed: bool,
    ) -> BranchId {
        let ports = from.iter().copied().zip(to.iter().copied()).collect();
        let make = if from.len() == to.len() {
            z.to_vec()
        } else {
            Vec::new()
        };
        self.add(Kind::Coupled, ports, Make::Matrix(make), closed)
    }

    /// Adds coupled windings; being fed spreads over all of them.
    /// They carry no core loss and no magnetizing current: add both as shunts, or nothing defines the volts per turn
    /// once every winding is open, and the answer is marked as not converged.
    pub fn windings(&mut self, spec: Windings) -> BranchId {
        let ports = spec.terminals().to_vec();
        self.add(Kind::Windings, ports, Make::Windings(spec), true)
    }

    /// Adds a passive element of `z` ohms that does not spread being fed, connected or absent.
    pub fn shunt(&mut self, a: NodeId, b: NodeId, z: Complex, connected: bool) -> BranchId {
        self.add(Kind::Shunt, vec![(a, b)], Make::Impedance(z), connected)
    }

    /// Adds a load; it does not spread being fed.
    pub fn load(&mut self, a: NodeId, b: NodeId, load: Load) -> BranchId {
        self.add(Kind::Load, vec![(a, b)], Make::Load(load), true)
    }

    /// Adds a source.
    pub fn source(&mut self, spec: SourceSpec) -> BranchId {
        self.sources.push(spec);
        BranchId::source(self.sources.len() - 1)
    }

    fn add(
        &mut self,
        kind: Kind,
        ports: Vec<(NodeId, NodeId)>,
        make: Make,
        present: bool,
    ) -> BranchId {
        self.elements.push(Element {
            kind,
            ports,
            make,
            present,
        });
        BranchId::plain(self.elements.len() - 1)
    }
}
