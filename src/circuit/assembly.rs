//! The nodal matrix from the admittance slots, entry by entry.
//!
//! Instead of the diagonal each row has its *excess*: the sum of the row, which is what leads to earth.
//! The diagonal follows from it without cancellation, so a small admittance beside a large one keeps its digits.
//! An entry is always summed anew over everything that contributes to it, in a fixed order: changing a value there and
//! back gives the same bits, and no rounding builds up.

use crate::circuit::layout::Layout;
use crate::circuit::network::index32;
use crate::circuit::ordering::Symbolic;
use crate::units::Complex;
use std::collections::BTreeSet;

/// A contribution of a slot to an entry.
#[derive(Debug, Clone, Copy)]
struct Contribution {
    slot: u32,
    entry: u32,
    factor: f64,
}

/// What contributes to which entry.
#[derive(Debug, Clone)]
pub(super) struct Assembly {
    /// Every contribution, slot by slot.
    all: Vec<Contribution>,
    /// Contributions to entry e: `start[e]..start[e + 1]`, as (slot, factor).
    start: Vec<u32>,
    terms: Vec<(u32, f64)>,
    /// Entries that slot s touches: `slot_start[s]..slot_start[s + 1]`.
    slot_start: Vec<u32>,
    slot_entries: Vec<u32>,
}

/// Pairs of node indices that any element joins.
pub(super) fn joined_pairs(layout: &Layout) -> BTreeSet<(u32, u32)> {
    let mut pairs = BTreeSet::new();
    for_each_term(layout, |_, p, q, _| {
        pairs.insert((p.min(q), p.max(q)));
    });
    pairs
}

/// Calls `visit` with slot, two different nodes and factor, for every contribution off the diagonal.
///
/// Earth counts as a node here, so the rows of the matrix with earth sum to zero and the diagonal is implied.
fn for_each_term(layout: &Layout, mut visit: impl FnMut(usize, u32, u32, f64)) {
    for part in &layout.parts {
        for i in 0..part.n_ports {
            for j in i..part.n_ports {
                let Some(slot) = part.slot(i, j) else {
                    continue;
                };
                let (a, b) = layout.ports[part.first_port + i];
                let (c, d) = layout.ports[part.first_port + j];
                // the number stands at (p, q) for port i against j and at (q, p) for j against i
                let places = [(a, c, 1.0), (a, d, -1.0), (b, c, -1.0), (b, d, 1.0)];
                let places = if i == j { &places[1..2] } else { &places[..] };
                for &(p, q, factor) in places.iter().filter(|(p, q, _)| p != q) {
                    visit(slot, p, q, factor);
                }
            }
        }
    }
}

impl Assembly {
    pub(super) fn new(layout: &Layout, symbolic: &Symbolic, n_slots: usize) -> Self {
        let n = symbolic.n;
        let n_entries = n + symbolic.row.len();
        let mut of_entry: Vec<Vec<(u32, f64)>> = vec![Vec::new(); n_entries];
        let mut of_slot: Vec<BTreeSet<u32>> = vec![BTreeSet::new(); n_slots];
        let mut all = Vec::new();
        for_each_term(layout, |slot, p, q, factor| {
            let (p, q) = (
                symbolic.row_of_node[p as usize] as usize,
                symbolic.row_of_node[q as usize] as usize,
            );
            // what leads to earth is the excess of the row, with the opposite sign
            let (entry, factor) = if p == n || q == n {
                (Some(p.min(q)), -factor)
            } else {
                (
                    symbolic
                        .position(index32(p.max(q)), p.min(q))
                        .map(|e| n + e),
                    factor,
                )
            };
            if let Some(entry) = entry {
                of_entry[entry].push((index32(slot), factor));
                of_slot[slot].insert(index32(entry));
                all.push(Contribution {
                    slot: index32(slot),
                    entry: index32(entry),
                    factor,
                });
            }
        });
        let (mut start, mut terms) = (vec![0], Vec::new());
        for list in &of_entry {
            terms.extend_from_slice(list);
            start.push(index32(terms.len()));
        }
        let (mut slot_start, mut slot_entries) = (vec![0], Vec::new());
        for list in &of_slot {
            slot_entries.extend(list);
            slot_start.push(index32(slot_entries.len()));
        }
        Self {
            all,
            start,
            terms,
            slot_start,
            slot_entries,
        }
    }

    /// The entries that a slot touches.
    pub(super) fn entries(&self, slot: usize) -> &[u32] {
        &self.slot_entries[self.slot_start[slot] as usize..self.slot_start[slot + 1] as usize]
    }

    /// Sums all entries: each over its slots in the order in which [`Assembly::sum`] takes them.
    pub(super) fn sum_all(&self, y: &[Complex], entries: &mut [Complex]) {
        entries.fill(Complex::ZERO);
        for contribution in &self.all {
            entries[contribution.entry as usize] +=
                y[contribution.slot as usize] * contribution.factor;
        }
    }

    /// An entry summed over its slots.
    pub(super) fn sum(&self, entry: usize, y: &[Complex]) -> Complex {
        let mut sum = Complex::ZERO;
        for &(slot, factor) in
            &self.terms[self.start[entry] as usize..self.start[entry + 1] as usize]
        {
            sum += y[slot as usize] * factor;
        }
        sum
    }
}
