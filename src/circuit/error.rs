//! What can be wrong with a network: found once, when the solver is made.

use core::error::Error;
use core::fmt;

/// Why a network can't be solved.
/// Elements are counted from 0 in the order in which they were added, sources apart from the others.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum NetworkError {
    /// An element names a node that this network doesn't have.
    UnknownNode {
        /// Which element.
        element: usize,
    },
    /// Both ends of a two-ended element are the same node.
    SameEnds {
        /// Which element.
        element: usize,
    },
    /// An impedance that isn't finite, is zero, or has a negative resistance; a load or rating out of its range.
    Impedance {
        /// Which element.
        element: usize,
    },
    /// A matrix of the wrong size, not symmetric, or without an inverse.
    Matrix {
        /// Which element.
        element: usize,
    },
    /// A source without ports, with an impedance, EMF, group or ceiling out of range.
    Source {
        /// Which source.
        source: usize,
    },
    /// A voltage class that isn't finite and positive.
    Class {
        /// Which node, counted from 0 in the order in which they were added.
        node: usize,
    },
    /// More nodes, elements or sources than the solver takes.
    Size,
}

impl fmt::Display for NetworkError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::UnknownNode { element } => {
                write!(f, "element {element} names a node of another network")
            }
            Self::SameEnds { element } => {
                write!(f, "both ends of element {element} are the same node")
            }
            Self::Impedance { element } => write!(f, "element {element} has a value out of range"),
            Self::Matrix { element } => write!(f, "element {element} has no admittance matrix"),
            Self::Source { source } => write!(f, "source {source} has a value out of range"),
            Self::Class { node } => write!(f, "node {node} has no voltage class"),
            Self::Size => write!(f, "the network is too large"),
        }
    }
}

impl Error for NetworkError {}
