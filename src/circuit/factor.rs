//! The numeric factor L D Lᵀ of the complex-symmetric nodal matrix, without pivoting, column by column.
//!
//! A changed entry only changes the columns on the way from its column to the root of the elimination tree; those are
//! computed anew by exactly the operations of a full factorization, so a partial one gives the same bits.
//! A partial one has each column fetch what it takes from the earlier ones; a full one has each column hand it on, which
//! asks for fewer positions and is faster, and takes the same numbers in the same order.
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

/// A row before its turn in a full factorization: its excess, and the squares of its numbers.
#[derive(Debug, Clone, Copy, Default)]
struct Turn {
    excess: Complex,
    squares: Complex,
}

/// Which pivots are nothing but rounding.
#[derive(Debug, Clone)]
struct Weak {
    rows: Vec<bool>,
    count: usize,
}

impl Weak {
    /// The inverse of a pivot, zero for one that is nothing but rounding against the squares of its row.
    #[inline]
    fn inverse(&mut self, row: usize, pivot: Complex, squares: Complex) -> Complex {
        let size = squares.re + squares.im;
        let is_weak = !size.is_finite() || pivot.norm_sqr() <= WEAK_PIVOT_SQUARED * size;
        if is_weak != self.rows[row] {
            self.rows[row] = is_weak;
            if is_weak {
                self.count += 1;
            } else {
                self.count -= 1;
            }
        }
        if is_weak { Complex::ZERO } else { pivot.inv() }
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
    weak: Weak,
    /// Space for a full factorization.
    turns: Vec<Turn>,
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
            weak: Weak {
                rows: vec![false; n],
                count: 0,
            },
            turns: vec![Turn::default(); n],
            marks: Marks::new(n),
        }
    }

    /// Whether every pivot has digits of its own.
    pub(super) fn is_sound(&self) -> bool {
        self.weak.count == 0
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
            let (column, _) = symbolic.column(j);
            let mut excess = self.a[j];
            let mut squares = by_part(excess);
            for &(k, e) in row(symbolic, j) {
                excess -= product(self.l[e as usize], self.excess[k as usize]);
                squares += by_part(self.a[symbolic.n + e as usize]);
            }
            self.excess[j] = excess;
            let mut pivot = excess;
            for e in column.clone() {
                let mut value = self.a[symbolic.n + e];
                squares += by_part(value);
                let products =
                    symbolic.product_start[e] as usize..symbolic.product_start[e + 1] as usize;
                for two in &symbolic.products[products] {
                    value -= product(self.l[two.l as usize], self.u[two.u as usize]);
                }
                self.u[e] = value;
                pivot -= value;
            }
            let inverse = self.weak.inverse(j, pivot, squares);
            self.inverse_pivot[j] = inverse;
            for (l, u) in self.l[column.clone()].iter_mut().zip(&self.u[column]) {
                *l = product(*u, inverse);
            }
        }
    }

    /// Computes all columns anew: each hands on to the later ones what they take from it, in the order in which
    /// [`Factor::refactor`] has them fetch it.
    pub(super) fn factor_all(&mut self, symbolic: &Symbolic) {
        let (given_excess, given) = self.a.split_at(symbolic.n);
        self.u.copy_from_slice(given);
        for (turn, &excess) in self.turns.iter_mut().zip(given_excess) {
            *turn = Turn {
                excess,
                squares: by_part(excess),
            };
        }
        let mut targets = symbolic.targets.as_slice();
        for j in 0..symbolic.n {
            let (column, rows) = symbolic.column(j);
            let (here, rest) = targets.split_at(rows.len() * rows.len().saturating_sub(1) / 2);
            targets = rest;
            let (until, after) = self.u.split_at_mut(column.end);
            let step = Step {
                own: self.turns[j],
                turns: &mut self.turns,
                weak: |pivot, squares| self.weak.inverse(j, pivot, squares),
                targets: here,
                after,
            };
            let given = &given[column.clone()];
            let u = &until[column.start..];
            let l = &mut self.l[column];
            self.excess[j] = step.own.excess;
            // most columns are short: with their length known ahead there is no loop to run
            self.inverse_pivot[j] = match rows.len() {
                1 => step.take_short::<1>(given, rows, u, l),
                2 => step.take_short::<2>(given, rows, u, l),
                3 => step.take_short::<3>(given, rows, u, l),
                4 => step.take_short::<4>(given, rows, u, l),
                _ => step.take(given, rows, u, l),
            };
        }
    }

    /// Forward substitution z = L⁻¹ b over the rows `reach`, ascending; outside of it both are zero.
    pub(super) fn forward(
        &self,
        symbolic: &Symbolic,
        reach: &[u32],
        b: &[Complex],
        z: &mut [Complex],
    ) {
        for &j in reach {
            z[j as usize] = b[j as usize];
        }
        for &j in reach {
            let own = z[j as usize];
            if own == Complex::ZERO {
                continue;
            }
            let (column, rows) = symbolic.column(j as usize);
            for (l, &i) in self.l[column].iter().zip(rows) {
                z[i as usize] -= l * own;
            }
        }
    }

    /// The rest of the solution: x = L⁻ᵀ D⁻¹ z.
    pub(super) fn backward(&self, symbolic: &Symbolic, z: &[Complex], x: &mut [Complex]) {
        for j in (0..symbolic.n).rev() {
            let mut sum = product(z[j], self.inverse_pivot[j]);
            let (column, rows) = symbolic.column(j);
            for (l, &i) in self.l[column].iter().zip(rows) {
                sum -= product(*l, x[i as usize]);
            }
            x[j] = sum;
        }
    }
}

/// One column's turn in a full factorization.
struct Step<'a, W> {
    own: Turn,
    turns: &'a mut [Turn],
    /// Gives the inverse of the pivot.
    weak: W,
    /// Where the products of the column's pairs go in `after`.
    targets: &'a [u32],
    /// U of the later columns.
    after: &'a mut [Complex],
}

impl<W: FnOnce(Complex, Complex) -> Complex> Step<'_, W> {
    fn take_short<const N: usize>(
        self,
        given: &[Complex],
        rows: &[u32],
        u: &[Complex],
        l: &mut [Complex],
    ) -> Complex {
        let (given, rows, u) = (given.first_chunk(), rows.first_chunk(), u.first_chunk());
        match (given, rows, u, l.first_chunk_mut()) {
            (Some(given), Some(rows), Some(u), Some(l)) => {
                self.take::<[Complex; N], [u32; N]>(given, rows, u, l)
            }
            _ => Complex::ZERO,
        }
    }

    /// Computes L of the column and hands on what the later ones take from it; gives the inverse of the pivot.
    fn take<C, R>(self, given: &C, rows: &R, u: &C, l: &mut C) -> Complex
    where
        C: AsRef<[Complex]> + AsMut<[Complex]> + ?Sized,
        R: AsRef<[u32]> + ?Sized,
    {
        let (given, rows, u, l) = (given.as_ref(), rows.as_ref(), u.as_ref(), l.as_mut());
        let Turn {
            excess,
            mut squares,
        } = self.own;
        let mut pivot = excess;
        for (value, given) in u.iter().zip(given) {
            squares += by_part(*given);
            pivot -= value;
        }
        let inverse = (self.weak)(pivot, squares);
        for (((l, u), given), &i) in l.iter_mut().zip(u).zip(given).zip(rows) {
            *l = product(*u, inverse);
            self.turns[i as usize].squares += by_part(*given);
        }
        // most rows have no way to earth at their turn
        if excess != Complex::ZERO {
            for (l, &i) in l.iter().zip(rows) {
                self.turns[i as usize].excess -= product(*l, excess);
            }
        }
        let mut targets = self.targets.iter();
        for (first, u) in u.iter().enumerate() {
            for (l, &target) in l[first + 1..].iter().zip(targets.by_ref()) {
                self.after[target as usize] -= product(*l, *u);
            }
        }
        inverse
    }
}

fn row(symbolic: &Symbolic, j: usize) -> &[(u32, u32)] {
    &symbolic.row_items[symbolic.row_start[j] as usize..symbolic.row_start[j + 1] as usize]
}

/// The product of two numbers, written so that it takes two numbers at a time: the same bits as `a * b`.
#[inline]
fn product(a: Complex, b: Complex) -> Complex {
    let turned = Complex::new(-a.im, a.re);
    Complex::new(
        a.re * b.re + turned.re * b.im,
        a.im * b.re + turned.im * b.im,
    )
}

/// The squares of both parts of a number.
#[inline]
fn by_part(c: Complex) -> Complex {
    Complex::new(c.re * c.re, c.im * c.im)
}
