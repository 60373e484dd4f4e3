//! The solution held against the laws it must obey, from its own currents and voltages.
//!
//! Not from the matrix: each element's current is computed from the voltages at its ends and summed at the nodes.
//! Per unit here means: of the currents that meet at the node, or of 100 kVA at the node's voltage class where less
//! flows; the powers of all elements together, or 100 kVA.

use crate::circuit::layout::Layout;
use crate::circuit::network::BranchId;
use crate::circuit::solution::{Meter, Solution};
use crate::units::Complex;
use crate::units::portable::magnitude;

/// Volt-amps of one per unit where less flows.
const BASE_VA: f64 = 100_000.0;

/// What meets at a row: the current left over, and how much there was, both parts apart.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Meeting {
    left: Complex,
    size: Complex,
}

impl Solution {
    /// Kirchhoff's current law: the largest sum of currents at any node but earth, per unit.
    pub fn kirchhoff_residual(&self) -> f64 {
        let mut meetings = vec![Meeting::default(); self.row_of_node.len()];
        self.residual(&mut meetings)
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

    /// The same with the caller's space, one meeting for each row with earth last.
    pub(super) fn residual(&self, meetings: &mut [Meeting]) -> f64 {
        let mut largest = 0.0_f64;
        for group in self.groups() {
            self.sum_currents(group, meetings);
            for (meeting, &least) in meetings.iter().zip(&self.least_a) {
                let left = meeting.left.re.abs() + meeting.left.im.abs();
                let size = (meeting.size.re + meeting.size.im).max(least);
                // a value that is not a number must not pass
                if left.is_nan() {
                    return f64::INFINITY;
                }
                if left > largest * size {
                    largest = left / size;
                }
            }
        }
        largest
    }

    /// The currents that meet at each row in one group, and how much there is of them.
    fn sum_currents(&self, group: usize, meetings: &mut [Meeting]) {
        let volts = &self.volts[group][..];
        meetings.fill(Meeting::default());
        let (plain, of_sources) = self.meters.split_at(self.n_plain_ports);
        for meter in plain {
            meet(meetings, meter, self.metered(meter, volts));
        }
        let ports = self.sources.iter().flat_map(|source| {
            let factor = (source.group == group).then(|| source.factor());
            let emfs = source.emf_v.iter();
            emfs.map(move |emf| factor.map_or(Complex::ZERO, |factor| emf * factor))
        });
        for (meter, emf) in of_sources.iter().zip(ports) {
            let current = self.y[meter.slot as usize] * (meter.across(volts) - emf);
            meet(meetings, meter, current);
        }
    }

    fn branch(&self, index: usize) -> BranchId {
        match index.checked_sub(self.layout.n_plain) {
            Some(ordinal) => BranchId::source(ordinal),
            None => BranchId::plain(index),
        }
    }
}

#[inline]
fn meet(meetings: &mut [Meeting], meter: &Meter, current: Complex) {
    let size = Complex::new(current.re.abs(), current.im.abs());
    let from = &mut meetings[meter.a as usize];
    from.left += current;
    from.size += size;
    let to = &mut meetings[meter.b as usize];
    to.left -= current;
    to.size += size;
}

/// The least current that counts as one per unit at each row, amps; earth, where nothing is asked, has no entry.
pub(super) fn least_currents(layout: &Layout, row_of_node: &[u32]) -> Vec<f64> {
    let mut least = vec![0.0; row_of_node.len() - 1];
    for (base_v, &row) in layout.base_v.iter().zip(row_of_node).skip(1) {
        least[row as usize] = BASE_VA / base_v;
    }
    least
}
