//! The elimination order and what follows from it: elimination tree, pattern of the factor, lists of operations.
//!
//! Minimum degree over the union of all elements, present or not, so the order holds for every state of the switches.
//! Among candidates of nearly least degree the one whose subtree is shallowest goes first: a long ladder is then
//! eliminated from many places at once, and the path from a changed entry to the root stays short.
//! How much degree to give away for that is chosen by counting the work of each choice.

use crate::circuit::network::index32;
use std::collections::BTreeSet;

/// Marks the root of an elimination tree.
pub(super) const NO_PARENT: u32 = u32::MAX;

/// One multiplication of the factorization: subtract L at `l` times U at `u`.
#[derive(Debug, Clone, Copy)]
pub(super) struct Product {
    pub(super) l: u32,
    pub(super) u: u32,
}

/// The factor's structure. Rows and columns are in elimination order.
/// An *entry* is a number of the matrix: excesses of the rows 0..n, then off-diagonals column by column.
#[derive(Debug, Clone)]
pub(super) struct Symbolic {
    pub(super) n: usize,
    /// Row of each node; earth has row `n`.
    pub(super) row_of_node: Vec<u32>,
    pub(super) parent: Vec<u32>,
    /// Off-diagonals of column j: `col_start[j]..col_start[j + 1]`.
    pub(super) col_start: Vec<u32>,
    /// Row and column of each off-diagonal.
    pub(super) row: Vec<u32>,
    pub(super) column: Vec<u32>,
    /// Off-diagonals of row j, as (column, position): `row_start[j]..row_start[j + 1]`.
    pub(super) row_start: Vec<u32>,
    pub(super) row_items: Vec<(u32, u32)>,
    /// Products subtracted from off-diagonal e: `product_start[e]..product_start[e + 1]`.
    pub(super) product_start: Vec<u32>,
    pub(super) products: Vec<Product>,
    /// The same products from the side of what they are made of: column by column, for each pair of its off-diagonals
    /// (first, later) where L of the later times U of the first goes, counted from the end of the column.
    pub(super) targets: Vec<u32>,
}

impl Symbolic {
    /// For nodes 1..=n (earth, node 0, is left out) joined by `pairs`.
    pub(super) fn new(n: usize, pairs: &BTreeSet<(u32, u32)>) -> Self {
        let mut neighbors = vec![Vec::new(); n];
        for &(a, b) in pairs {
            if a != 0 && b != 0 && a != b {
                neighbors[a as usize - 1].push(b - 1);
                neighbors[b as usize - 1].push(a - 1);
            }
        }
        let candidates =
            [0, 1, 2].map(|slack| Self::from_elimination(eliminate(neighbors.clone(), slack)));
        let [first, second, third] = candidates;
        let mut best = first;
        for other in [second, third] {
            if other.work() < best.work() {
                best = other;
            }
        }
        best
    }

    /// The work of a change somewhere: mean of refactoring the path from each column, and one substitution.
    fn work(&self) -> u64 {
        let mut path = vec![0_u64; self.n];
        let mut sum = 0;
        for j in (0..self.n).rev() {
            let own = u64::from(self.row_start[j + 1] - self.row_start[j]) * 2
                + u64::from(
                    self.product_start[self.col_start[j + 1] as usize]
                        - self.product_start[self.col_start[j] as usize],
                )
                + 6;
            path[j] = own
                + if self.parent[j] == NO_PARENT {
                    0
                } else {
                    path[self.parent[j] as usize]
                };
            sum += path[j];
        }
        sum / (self.n as u64).max(1) + self.row.len() as u64
    }

    fn from_elimination(columns: Vec<(u32, Vec<u32>)>) -> Self {
        let n = columns.len();
        let mut row_of_node = vec![index32(n); n + 1];
        for (row, (node, _)) in columns.iter().enumerate() {
            row_of_node[*node as usize + 1] = index32(row);
        }
        let mut col_start = vec![0];
        let (mut row, mut column, mut parent) = (Vec::new(), Vec::new(), Vec::new());
        let mut rows: Vec<Vec<(u32, u32)>> = vec![Vec::new(); n];
        for (j, (_, later)) in columns.iter().enumerate() {
            let mut below: Vec<u32> = later
                .iter()
                .map(|&node| row_of_node[node as usize + 1])
                .collect();
            below.sort_unstable();
            parent.push(below.first().copied().unwrap_or(NO_PARENT));
            for &r in &below {
                rows[r as usize].push((index32(j), index32(row.len())));
                row.push(r);
                column.push(index32(j));
            }
            col_start.push(index32(row.len()));
        }
        let mut row_start = vec![0];
        let mut row_items = Vec::new();
        for items in &rows {
            row_items.extend_from_slice(items);
            row_start.push(index32(row_items.len()));
        }
        let (product_start, products) = products(&rows, &col_start, &row);
        let targets = targets(&col_start, &row);
        Self {
            n,
            row_of_node,
            parent,
            col_start,
            row,
            column,
            row_start,
            row_items,
            product_start,
            products,
            targets,
        }
    }

    /// Columns and rows of the off-diagonals that a column has.
    pub(super) fn column(&self, j: usize) -> (core::ops::Range<usize>, &[u32]) {
        let range = self.col_start[j] as usize..self.col_start[j + 1] as usize;
        (range.clone(), &self.row[range])
    }

    /// The rows on the ways from some rows to their roots, ascending; earth is left out.
    pub(super) fn reach(&self, from: impl Iterator<Item = u32>) -> Vec<u32> {
        let mut reached = BTreeSet::new();
        for mut row in from {
            while (row as usize) < self.n && reached.insert(row) {
                row = self.parent[row as usize];
            }
        }
        reached.into_iter().collect()
    }

    /// The position of an off-diagonal.
    pub(super) fn position(&self, row: u32, column: usize) -> Option<usize> {
        position(&self.col_start, &self.row, row, column)
    }
}

fn position(col_start: &[u32], rows: &[u32], row: u32, column: usize) -> Option<usize> {
    let (from, to) = (col_start[column] as usize, col_start[column + 1] as usize);
    rows[from..to].binary_search(&row).ok().map(|k| from + k)
}

/// Where the products of each column's pairs go; the pattern of the factor has a place for every one.
fn targets(col_start: &[u32], row: &[u32]) -> Vec<u32> {
    let mut targets = Vec::new();
    for ends in col_start.windows(2) {
        let below = &row[ends[0] as usize..ends[1] as usize];
        for (first, &column) in below.iter().enumerate() {
            let places = below[first + 1..]
                .iter()
                .filter_map(|&later| position(col_start, row, later, column as usize));
            targets.extend(places.map(|place| index32(place) - ends[1]));
        }
    }
    targets
}

/// For each off-diagonal (i, j) the products L(i, k) U(j, k) over the columns k that both rows have.
fn products(rows: &[Vec<(u32, u32)>], col_start: &[u32], row: &[u32]) -> (Vec<u32>, Vec<Product>) {
    let mut start = vec![0];
    let mut products = Vec::new();
    for j in 0..rows.len() {
        for e in col_start[j]..col_start[j + 1] {
            let (mut upper, mut lower) = (
                rows[j].iter().peekable(),
                rows[row[e as usize] as usize].iter().peekable(),
            );
            while let (Some(&&(ku, u)), Some(&&(kl, l))) = (upper.peek(), lower.peek()) {
                if ku == kl {
                    products.push(Product { l, u });
                }
                if ku <= kl {
                    upper.next();
                }
                if kl <= ku {
                    lower.next();
                }
            }
            start.push(index32(products.len()));
        }
    }
    (start, products)
}

/// Eliminates node by node; gives each with the neighbors that it had at its turn.
/// Takes the shallowest node among those within `slack` of the least degree.
fn eliminate(mut neighbors: Vec<Vec<u32>>, slack: usize) -> Vec<(u32, Vec<u32>)> {
    let n = neighbors.len();
    for list in &mut neighbors {
        list.sort_unstable();
    }
    let mut height = vec![0_u32; n];
    let mut left: Vec<usize> = (0..n).collect();
    let mut order = Vec::with_capacity(n);
    while let Some(least) = left.iter().map(|&v| neighbors[v].len()).min() {
        let near = left
            .iter()
            .copied()
            .filter(|&v| neighbors[v].len() <= least + slack.min(least));
        let Some(chosen) = near.min_by_key(|&v| (height[v], neighbors[v].len(), v)) else {
            break;
        };
        left.retain(|&v| v != chosen);
        let around = core::mem::take(&mut neighbors[chosen]);
        for &u in &around {
            let list = &mut neighbors[u as usize];
            list.extend_from_slice(&around);
            list.sort_unstable();
            list.dedup();
            list.retain(|&v| v != u && v as usize != chosen);
            height[u as usize] = height[u as usize].max(height[chosen] + 1);
        }
        order.push((index32(chosen), around));
    }
    order
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ladder(n: u32) -> BTreeSet<(u32, u32)> {
        (1..n).map(|k| (k, k + 1)).collect()
    }

    #[test]
    fn a_chain_is_eliminated_without_deep_paths() {
        let symbolic = Symbolic::new(255, &ladder(255));
        let depth = |mut j: usize| {
            let mut d = 1;
            while symbolic.parent[j] != NO_PARENT {
                j = symbolic.parent[j] as usize;
                d += 1;
            }
            d
        };
        let deepest = (0..255).map(depth).max().unwrap();
        assert!(deepest <= 24, "deepest path {deepest}");
        assert!(
            symbolic.row.len() < 2 * 255,
            "entries {}",
            symbolic.row.len()
        );
    }

    #[test]
    fn every_node_has_its_own_row_and_earth_has_the_last() {
        let symbolic = Symbolic::new(9, &ladder(9));
        let mut rows = symbolic.row_of_node.clone();
        assert_eq!(rows[0], 9);
        rows.sort_unstable();
        assert_eq!(rows, (0..=9).collect::<Vec<_>>());
    }
}
