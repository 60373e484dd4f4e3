//! The numeric factor L D Lᵀ of the complex-symmetric nodal matrix, without pivoting, column by column from the left.
//!
//! A changed entry only changes the columns on the way from its column to the root of the elimination tree; those are
//! computed anew by exactly the operations of a full factorization, so a partial one gives the same bits.
//! The pivots are never subtracted from diagonals: with A 1 = e (the excess of the rows) it follows that
//! D (Lᵀ 1) = L⁻¹ e, so a pivot is the row's excess at its turn less the column below it.
//! For admittances of like sign nothing cancels there (the idea of W. K. Grassmann, M. I. Taksar and D. P. Heyman,
//! 1985; from memory).
//! Without pivoting the growth stays small while resistances are positive (N. J. Higham, Factorizing complex symmetric
//! matrices with positive definite real and imaginary parts, 1998; from memory).
//! A pivot that is nothing but rounding is noticed: then nothing defines that row, and the answer isn't converged.

use crate::circuit::ordering::{NO_PARENT, Symbolic};
use crate::units::Complex;

/// Smallest pivot against the numbers of its row, squared: below it few digits left are more than rounding.
const WEAK_PIVOT_SQUARED: f64 = 1e-24;

/// Columns to compute anew, as bits.
#[derive(Debug, Clone)]
pub(super) struct Marks {
    words: Vec<u64>,
    any: bool,
}

impl Marks {
    fn new(n: usize) -> Self {
        Self {
            words: vec![0; n.div_ceil(64)],
            any: false,
        }
    }

    pub(super) fn any(&self) -> bool {
        self.any
    }

    pub(super) fn clear(&mut self) {
        self.words.fill(0);
        self.any = false;
    }

    fn insert(&mut self, column: usize) -> bool {
        let (word, bit) = (column / 64, 1 << (column % 64));
        let is_new = self.words[word] & bit == 0;
        self.words[word] |= bit;
        self.any = true;
        is_new
    }

    /// Marked columns, ascending.
    fn iter(&self) -> impl Iterator<Item = usize> + '_ {
        self.words.iter().enumerate().flat_map(|(index, &word)| {
            let mut rest = word;
            core::iter::from_fn(move || {
                if rest == 0 {
                    return None;
                }
                let bit = rest.trailing_zeros() as usize;
                rest &= rest - 1;
                Some(index * 64 + bit)
            })
        })
    }
}

#[derive(Debug, Clone)]
pub(super) struct Factor {
    /// The matrix: excesses of the rows, then off-diagonals where the factor has them.
    pub(super) a: Vec<Complex>,
    /// L below the diagonal.
    l: Vec<Complex>,
    /// L times the pivot of its column.
    u: Vec<Complex>,
    /// Excess of each row at its turn.
    excess: Vec<Complex>,
    inverse_pivot: Vec<Complex>,
    weak: Vec<bool>,
    n_weak: usize,
    pub(super) marks: Marks,
}

impl Factor {
    pub(super) fn new(symbolic: &Symbolic) -> Self {
        let (n, off) = (symbolic.n, symbolic.row.len());
        Self {
            a: vec![Complex::ZERO; n + off],
            l: vec![Complex::ZERO; off],
            u: vec![Complex::ZERO; off],
            excess: vec![Complex::ZERO; n],
            inverse_pivot: vec![Complex::ZERO; n],
            weak: vec![false; n],
            n_weak: 0,
            marks: Marks::new(n),
        }
    }

    /// Whether every pivot has digits of its own.
    pub(super) fn is_sound(&self) -> bool {
        self.n_weak == 0
    }

    /// Marks a column and all that depend on it.
    pub(super) fn mark(&mut self, symbolic: &Symbolic, column: usize) {
        let mut j = column;
        while self.marks.insert(j) && symbolic.parent[j] != NO_PARENT {
            j = symbolic.parent[j] as usize;
        }
    }

    /// Computes the marked columns anew.
    pub(super) fn refactor(&mut self, symbolic: &Symbolic) {
        for j in self.marks.iter() {
            let column = symbolic.col_start[j] as usize..symbolic.col_start[j + 1] as usize;
            let mut excess = self.a[j];
            let mut size = excess.norm_sqr();
            for &(k, e) in row(symbolic, j) {
                excess -= self.l[e as usize] * self.excess[k as usize];
                size += self.a[symbolic.n + e as usize].norm_sqr();
            }
            self.excess[j] = excess;
            let mut pivot = excess;
            for e in column.clone() {
                let mut value = self.a[symbolic.n + e];
                size += value.norm_sqr();
                let products =
                    symbolic.product_start[e] as usize..symbolic.product_start[e + 1] as usize;
                for product in &symbolic.products[products] {
                    value -= self.l[product.l as usize] * self.u[product.u as usize];
                }
                self.u[e] = value;
                pivot -= value;
            }
            let is_weak = !size.is_finite() || pivot.norm_sqr() <= WEAK_PIVOT_SQUARED * size;
            if is_weak != self.weak[j] {
                self.weak[j] = is_weak;
                if is_weak {
                    self.n_weak += 1;
                } else {
                    self.n_weak -= 1;
                }
            }
            let inverse = if is_weak { Complex::ZERO } else { pivot.inv() };
            self.inverse_pivot[j] = inverse;
            for (l, u) in self.l[column.clone()].iter_mut().zip(&self.u[column]) {
                *l = u * inverse;
            }
        }
    }

    /// Forward substitution of all rows: z = L⁻¹ b.
    pub(super) fn forward(&self, symbolic: &Symbolic, b: &[Complex], z: &mut [Complex]) {
        for j in 0..symbolic.n {
            z[j] = self.forward_row(symbolic, j, b, z);
        }
    }

    /// Forward substitution of the marked rows only; the others are as they were.
    pub(super) fn forward_marked(&self, symbolic: &Symbolic, b: &[Complex], z: &mut [Complex]) {
        for j in self.marks.iter() {
            z[j] = self.forward_row(symbolic, j, b, z);
        }
    }

    fn forward_row(&self, symbolic: &Symbolic, j: usize, b: &[Complex], z: &[Complex]) -> Complex {
        let mut sum = b[j];
        for &(k, e) in row(symbolic, j) {
            sum -= self.l[e as usize] * z[k as usize];
        }
        sum
    }

    /// The rest of the solution: x = L⁻ᵀ D⁻¹ z.
    pub(super) fn backward(&self, symbolic: &Symbolic, z: &[Complex], x: &mut [Complex]) {
        for j in (0..symbolic.n).rev() {
            let mut sum = z[j] * self.inverse_pivot[j];
            let (from, to) = (
                symbolic.col_start[j] as usize,
                symbolic.col_start[j + 1] as usize,
            );
            for (l, &i) in self.l[from..to].iter().zip(&symbolic.row[from..to]) {
                sum -= l * x[i as usize];
            }
            x[j] = sum;
        }
    }
}

fn row(symbolic: &Symbolic, j: usize) -> &[(u32, u32)] {
    &symbolic.row_items[symbolic.row_start[j] as usize..symbolic.row_start[j + 1] as usize]
}
