//! Coupled windings as a primitive admittance matrix, without extra unknowns.
//!
//! From the leakage between pairs of windings and the winding resistances, all on one rating: with winding 1 as the
//! reference, Zb has the loop impedances of windings 2..n against it, B is the incidence of turns, and
//! Yw = Bᵀ Zb⁻¹ B (W. H. Kersting, Distribution System Modeling and Analysis, center-tapped transformers;
//! from memory, checked against two independent solvers in the tests).
//! Not covered: magnetizing current and core loss (add shunts), saturation, taps under load.

use crate::circuit::dense::invert;
use crate::circuit::network::NodeId;
use crate::units::Complex;

/// The most windings of one element.
pub(super) const MAX_WINDINGS: usize = 6;

/// Coupled windings: their terminals and their admittance matrix in siemens.
#[derive(Debug, Clone, PartialEq)]
pub struct Windings {
    terminals: Vec<(NodeId, NodeId)>,
    y: Vec<Complex>,
}

/// A transformer with one primary winding and a center-tapped secondary, the two halves interlaced.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CenterTapped {
    /// Ends of the primary winding.
    pub primary: (NodeId, NodeId),
    /// First end, center tap and last end of the secondary.
    pub secondary: (NodeId, NodeId, NodeId),
    /// Rating in volt-amps.
    pub va: f64,
    /// Rated volts of the primary.
    pub primary_v: f64,
    /// Rated volts of one half of the secondary.
    pub half_v: f64,
    /// Resistance, per unit, primary to the full secondary.
    pub r_pu: f64,
    /// Leakage reactance, per unit, primary to the full secondary.
    pub x_pu: f64,
}

impl Windings {
    /// Windings from the leakage between pairs.
    ///
    /// `terminals` in order of the windings, `rated_v` their rated volts, `va` the common rating, `r_pu` each winding's
    /// own resistance, `x_pu` the leakage of the pairs (1,2), (1,3) … (2,3) … in that order, per unit on `va`.
    /// Sizes that don't fit, or values that aren't finite and positive, are reported when the solver is made.
    pub fn from_pairs(
        terminals: &[(NodeId, NodeId)],
        rated_v: &[f64],
        va: f64,
        r_pu: &[f64],
        x_pu: &[f64],
    ) -> Self {
        let n = terminals.len();
        let fits = (2..=MAX_WINDINGS).contains(&n)
            && rated_v.len() == n
            && r_pu.len() == n
            && x_pu.len() == n * (n - 1) / 2
            && rated_v
                .iter()
                .chain([&va])
                .all(|&v| v.is_finite() && v > 0.0)
            && r_pu.iter().all(|&r| r.is_finite() && r >= 0.0);
        let y = if fits {
            admittance(rated_v, va, r_pu, x_pu)
        } else {
            None
        };
        Self {
            terminals: terminals.to_vec(),
            y: y.unwrap_or_default(),
        }
    }

    /// A center-tapped transformer with interlaced secondary halves, from its total R and X.
    ///
    /// Primary 0.5 R + j0.8 X, each half R + j0.4 X, per unit (the interlaced split of the published 25 kVA example:
    /// windings 0.6, 1.2, 1.2 %, leakages 2.04, 2.04, 1.36 % for R 1.2 %, X 1.7 %; checked).
    pub fn center_tapped(spec: CenterTapped) -> Self {
        let (first, tap, last) = spec.secondary;
        Self::from_pairs(
            &[spec.primary, (first, tap), (tap, last)],
            &[spec.primary_v, spec.half_v, spec.half_v],
            spec.va,
            &[0.5 * spec.r_pu, spec.r_pu, spec.r_pu],
            &[1.2 * spec.x_pu, 1.2 * spec.x_pu, 0.8 * spec.x_pu],
        )
    }

    /// The two ends of each winding; the first end is the dotted one.
    pub fn terminals(&self) -> &[(NodeId, NodeId)] {
        &self.terminals
    }

    /// The admittance matrix, row by row, none if the values given don't make one.
    pub(super) fn admittance(&self) -> Option<&[Complex]> {
        let n = self.terminals.len();
        (n > 0 && self.y.len() == n * n).then_some(&self.y)
    }
}

/// Bᵀ Zb⁻¹ B in siemens.
fn admittance(rated_v: &[f64], va: f64, r_pu: &[f64], x_pu: &[f64]) -> Option<Vec<Complex>> {
    let n = rated_v.len();
    let m = n - 1;
    // the leakage of the pair (i, j), i < j, in the order (0,1) (0,2) .. (1,2) ..
    let leakage = |i: usize, j: usize| {
        x_pu.get(i * (2 * n - i - 1) / 2 + (j - i - 1))
            .copied()
            .unwrap_or(f64::NAN)
    };
    let mut zb = vec![Complex::ZERO; m * m];
    for i in 0..m {
        for j in 0..m {
            let z = if i == j {
                Complex::new(r_pu[0] + r_pu[i + 1], leakage(0, i + 1))
            } else {
                let between = leakage(i.min(j) + 1, i.max(j) + 1);
                Complex::new(
                    r_pu[0],
                    0.5 * (leakage(0, i + 1) + leakage(0, j + 1) - between),
                )
            };
            zb[i * m + j] = z / va;
        }
    }
    let yb = invert(&zb, m)?;
    // row i of B: -1/V of the first winding, +1/V of winding i + 1
    let turns = |row: usize, winding: usize| match winding {
        0 => -1.0 / rated_v[0],
        w if w == row + 1 => 1.0 / rated_v[w],
        _ => 0.0,
    };
    let mut y = vec![Complex::ZERO; n * n];
    for p in 0..n {
        for q in 0..n {
            let mut sum = Complex::ZERO;
            for i in 0..m {
                for j in 0..m {
                    sum += yb[i * m + j] * (turns(i, p) * turns(j, q));
                }
            }
            y[p * n + q] = sum;
        }
    }
    y.iter().all(|c| c.is_finite()).then_some(y)
}
