//! The solution held against the laws it must obey, from its own currents and voltages.
//!
//! Not from the matrix: each element's current is computed from the voltages at its ends and summed at the nodes.
//! Per unit here means: of the currents that meet at the node, or of 100 kVA at the node's voltage class where less
//! flows; the powers of all elements together, or 100 kVA.

use crate::circuit::network::{BranchId, Kind};
use crate::circuit::solution::Solution;
use crate::units::Complex;
use crate::units::portable::magnitude;

/// Volt-amps of one per unit where less flows.
const BASE_VA: f64 = 100_000.0;

/// Sums at each row: the current left over, and the magnitudes that met.
pub(super) type NodeSums = [(Complex, f64)];

impl Solution {
    /// Kirchhoff's current law: the largest sum of currents at any node but earth, per unit.
    pub fn kirchhoff_residual(&self) -> f64 {
        let mut sums = vec![(Complex::ZERO, 0.0); self.row_of_node.len()];
        self.residual(&mut sums)
    }

    /// The law of power: delivered less taken, watts and vars, of all elements together, per unit.
    pub fn power_imbalance(&self) -> f64 {
        let (mut sum, mut size) = (Complex::ZERO, BASE_VA);
        for (index, _) in self.layout.parts.iter().enumerate() {
            let branch = self.branch(index);
            let power = self.power(branch);
            sum += if branch.source_ordinal().is_some() {
                power
            } else {
                -power
            };
            size += magnitude(power);
        }
        magnitude(sum) / size
    }

    /// The same with the caller's space for the sums, one for each row with earth last.
    pub(super) fn residual(&self, sums: &mut NodeSums) -> f64 {
        let mut largest = 0.0_f64;
        for group in self.groups() {
            self.sum_currents(group, sums);
            for (base_v, &row) in self.layout.base_v.iter().zip(&self.row_of_node).skip(1) {
                let (left, size) = sums[row as usize];
                let (left, size) = (left.re.abs() + left.im.abs(), size.max(BASE_VA / base_v));
                // a value that is not a number must not pass
                if left.is_nan() || left > largest * size {
                    largest = if left.is_nan() {
                        f64::INFINITY
                    } else {
                        left / size
                    };
                }
            }
        }
        largest
    }

    /// The currents that meet at each row in one group, and how much there is of them.
    fn sum_currents(&self, group: usize, sums: &mut NodeSums) {
        sums.fill((Complex::ZERO, 0.0));
        for (index, part) in self.layout.parts.iter().enumerate() {
            for port in 0..part.n_ports {
                let (a, b) = self.port_rows[part.first_port + port];
                let current = match part.kind {
                    Kind::Source => -self.current(self.branch(index), part, port, group),
                    Kind::Coupled | Kind::Windings => self.coupled_current(part, port, group),
                    Kind::Series | Kind::Switch | Kind::Shunt | Kind::Load => {
                        self.y[part.first_slot + port] * self.drop(part, port, group)
                    }
                };
                let size = current.re.abs() + current.im.abs();
                let (from, to) = (a as usize, b as usize);
                sums[from] = (sums[from].0 + current, sums[from].1 + size);
                sums[to] = (sums[to].0 - current, sums[to].1 + size);
            }
        }
    }

    fn branch(&self, index: usize) -> BranchId {
        match index.checked_sub(self.layout.n_plain) {
            Some(ordinal) => BranchId::source(ordinal),
            None => BranchId::plain(index),
        }
    }
}
