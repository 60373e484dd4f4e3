//! A network laid out flat: elements, ports, admittance slots. Made once, never changed.
//!
//! Every element is a set of ports (pairs of nodes) with a symmetric admittance matrix over them.
//! A *slot* holds one number of such a matrix; an element whose ports aren't coupled has only the diagonal.
//! Sources follow the other elements.

use crate::circuit::dense::invert;
use crate::circuit::error::NetworkError;
use crate::circuit::load::passive_admittance;
use crate::circuit::network::{BranchId, Conductor, Element, Kind, Make, Network};
use crate::circuit::source::{MAX_GROUPS, MAX_SOURCES, SourceSpec};
use crate::units::Complex;
use core::ops::Range;

/// The most nodes, and the most elements, that the solver takes.
const MAX_SIZE: usize = 1 << 20;

#[derive(Debug, Clone, Copy)]
pub(super) struct Part {
    pub(super) kind: Kind,
    pub(super) first_port: usize,
    pub(super) n_ports: usize,
    pub(super) first_slot: usize,
}

impl Part {
    /// The slot of the admittance between ports `i` and `j`, none if they aren't coupled.
    pub(super) fn slot(&self, i: usize, j: usize) -> Option<usize> {
        if self.kind.has_coupling() {
            Some(self.first_slot + i * self.n_ports + j)
        } else {
            (i == j).then_some(self.first_slot + i)
        }
    }

    pub(super) fn slots(&self) -> Range<usize> {
        self.first_slot..self.first_slot + self.n_slots()
    }

    pub(super) fn n_slots(&self) -> usize {
        if self.kind.has_coupling() {
            self.n_ports * self.n_ports
        } else {
            self.n_ports
        }
    }
}

#[derive(Debug, Clone)]
pub(super) struct Layout {
    /// Nodes with earth first, as they were numbered.
    pub(super) base_v: Vec<f64>,
    pub(super) conductor: Vec<Conductor>,
    pub(super) parts: Vec<Part>,
    pub(super) n_plain: usize,
    /// Node indices of each port.
    pub(super) ports: Vec<(u32, u32)>,
}

/// A layout with the admittances to start from: each slot as it is when its element is present, and which are.
#[derive(Debug)]
pub(super) struct LaidOut {
    pub(super) layout: Layout,
    pub(super) when_present: Vec<Complex>,
    pub(super) present: Vec<bool>,
}

impl Layout {
    pub(super) fn n_nodes(&self) -> usize {
        self.base_v.len()
    }

    /// The index of an element among the parts.
    #[inline]
    pub(super) fn part_index(&self, branch: BranchId) -> Option<usize> {
        match branch.source_ordinal() {
            Some(ordinal) => Some(self.n_plain + ordinal).filter(|&i| i < self.parts.len()),
            None => branch.plain_index().filter(|&i| i < self.n_plain),
        }
    }

    /// Node indices of the ports of a part.
    pub(super) fn ports_of(&self, part: &Part) -> &[(u32, u32)] {
        &self.ports[part.first_port..part.first_port + part.n_ports]
    }

    #[inline]
    pub(super) fn part(&self, branch: BranchId) -> Option<&Part> {
        self.part_index(branch).map(|i| &self.parts[i])
    }
}

/// Checks a network and lays it out.
pub(super) fn lay_out(network: &Network) -> Result<LaidOut, NetworkError> {
    let (nodes, elements, sources) = (&network.nodes, &network.elements, &network.sources);
    if nodes.len() > MAX_SIZE || elements.len() > MAX_SIZE || sources.len() > MAX_SOURCES {
        return Err(NetworkError::Size);
    }
    if let Some(node) = nodes
        .iter()
        .position(|n| !(n.base_v.is_finite() && n.base_v > 0.0))
    {
        return Err(NetworkError::Class {
            node: node.saturating_sub(1),
        });
    }
    let mut out = LaidOut {
        layout: Layout {
            base_v: nodes.iter().map(|n| n.base_v).collect(),
            conductor: nodes.iter().map(|n| n.conductor).collect(),
            parts: Vec::with_capacity(elements.len() + sources.len()),
            n_plain: elements.len(),
            ports: Vec::new(),
        },
        when_present: Vec::new(),
        present: Vec::new(),
    };
    for (index, element) in elements.iter().enumerate() {
        let y = element_admittance(element, index)?;
        let ends = element.ports.iter().map(|&(a, b)| (a.0, b.0));
        out.push(
            element.kind,
            ends,
            &y,
            is_present(element),
            NetworkError::UnknownNode { element: index },
        )?;
        if !element.kind.has_coupling() && element.ports.iter().any(|(a, b)| a == b) {
            return Err(NetworkError::SameEnds { element: index });
        }
    }
    for (source, spec) in sources.iter().enumerate() {
        let y = source_admittance(spec).ok_or(NetworkError::Source { source })?;
        let ends = spec.ports.iter().map(|port| (port.a.0, port.b.0));
        out.push(
            Kind::Source,
            ends,
            &y,
            spec.on,
            NetworkError::Source { source },
        )?;
    }
    Ok(out)
}

impl LaidOut {
    fn push(
        &mut self,
        kind: Kind,
        ends: impl Iterator<Item = (u32, u32)>,
        y: &[Complex],
        present: bool,
        unknown: NetworkError,
    ) -> Result<(), NetworkError> {
        let first_port = self.layout.ports.len();
        self.layout.ports.extend(ends);
        let n_nodes = self.layout.n_nodes();
        let known = |&(a, b): &(u32, u32)| (a as usize) < n_nodes && (b as usize) < n_nodes;
        if !self.layout.ports[first_port..].iter().all(known) {
            return Err(unknown);
        }
        let n_ports = self.layout.ports.len() - first_port;
        self.layout.parts.push(Part {
            kind,
            first_port,
            n_ports,
            first_slot: self.when_present.len(),
        });
        self.when_present.extend_from_slice(y);
        self.present.push(present);
        Ok(())
    }
}

fn is_present(element: &Element) -> bool {
    match element.make {
        Make::Load(load) => load.is_present(),
        Make::Impedance(_) | Make::Matrix(_) | Make::Windings(_) => element.present,
    }
}

fn element_admittance(element: &Element, index: usize) -> Result<Vec<Complex>, NetworkError> {
    let matrix_error = NetworkError::Matrix { element: index };
    let value_error = NetworkError::Impedance { element: index };
    match &element.make {
        Make::Impedance(z) => passive_admittance(*z).map(|y| vec![y]).ok_or(value_error),
        Make::Load(load) => load.nominal().map(|y| vec![y]).ok_or(value_error),
        Make::Windings(windings) => windings
            .admittance()
            .map(<[Complex]>::to_vec)
            .ok_or(matrix_error),
        Make::Matrix(z) => {
            let n = element.ports.len();
            if n == 0 || z.len() != n * n || !is_symmetric(z, n) {
                return Err(matrix_error);
            }
            invert(z, n).ok_or(matrix_error)
        }
    }
}

fn is_symmetric(z: &[Complex], n: usize) -> bool {
    let close =
        |p: Complex, q: Complex| (p - q).norm_sqr() <= 1e-18 * (p.norm_sqr() + q.norm_sqr());
    (0..n).all(|i| (0..i).all(|j| close(z[i * n + j], z[j * n + i])))
}

fn source_admittance(spec: &SourceSpec) -> Option<Vec<Complex>> {
    let in_range = !spec.ports.is_empty()
        && usize::from(spec.group.0) < MAX_GROUPS
        && spec.ceiling.is_none_or(|ceiling| ceiling.is_valid())
        && spec
            .ports
            .iter()
            .all(|port| port.emf_v.is_finite() && port.a != port.b);
    if !in_range {
        return None;
    }
    spec.ports
        .iter()
        .map(|port| passive_admittance(port.z))
        .collect()
}
