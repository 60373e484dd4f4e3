//! How much work a full factorization is, for timings to be held against what the machine can do at most.
//!
//! Counted from the pattern of the factor, which is the same for every state of the switches.
//! Additions, multiplications and divisions of real numbers count as one each; bytes are those of every array read or
//! written once, so they say how far the work stays in which cache.

use crate::circuit::solver::Solver;

/// The size of a factor, and what computing all of it takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Work {
    /// Columns, one for each node but earth.
    pub columns: usize,
    /// Numbers below the diagonal.
    pub off_diagonals: usize,
    /// Products handed from column to column.
    pub products: usize,
}

impl Work {
    /// Operations on real numbers: 8 for each product and its subtraction; 22 for each off-diagonal, of L, of the pivot, of
    /// the excess and of the squares that the pivot is held against; 13 for each pivot.
    pub fn operations(&self) -> usize {
        8 * self.products + 22 * self.off_diagonals + 13 * self.columns
    }

    /// Bytes of the arrays that are read or written: the matrix, U, L, pivots and excesses, and the positions.
    pub fn bytes(&self) -> usize {
        4 * self.products + 52 * self.off_diagonals + 84 * self.columns
    }
}

impl Solver {
    /// The work of factoring everything.
    pub fn work(&self) -> Work {
        Work {
            columns: self.symbolic.n,
            off_diagonals: self.symbolic.row.len(),
            products: self.symbolic.products.len(),
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::circuit::{Conductor, Network, NodeId, Solver};
    use crate::units::Complex;

    #[test]
    fn the_work_of_a_triangle_is_counted_by_hand() {
        let mut network = Network::new();
        let nodes = [(); 3].map(|()| network.node(120.0, Conductor::Ungrounded));
        let one = Complex::ONE;
        for (a, b) in [(0, 1), (1, 2), (2, 0)] {
            network.series(nodes[a], nodes[b], one);
        }
        network.shunt(nodes[0], NodeId::EARTH, one, true);
        let work = Solver::new(network).unwrap().work();
        // two below the first pivot, one below the second, and one product of the first two
        assert_eq!((work.columns, work.off_diagonals, work.products), (3, 3, 1));
        assert_eq!(work.operations(), 8 + 3 * 22 + 3 * 13);
    }
}
