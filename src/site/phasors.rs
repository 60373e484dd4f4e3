//! Volts and amps of both legs as phasors, for who wants to see which leads.
//!
//! They turn with the solver's own reference, so that only angles between them say anything.
//! It does not cover a place where sources that aren't synchronized meet: nothing there stands still.

use crate::circuit::{BranchId, Group, NodeId, Solution};
use crate::units::Complex;

use super::wiring::{LENT, OWN, STORED, UTILITY};

/// Volts and amps of a group of sources below which it doesn't count beside another.
const LEAST_V: f64 = 1.0;
const LEAST_A: f64 = 0.01;

/// Volts of two hots to their neutral; `None` where there is one hot, or no single frequency.
pub(super) fn volts(solution: &Solution, hots: &[NodeId], neutral: NodeId) -> Option<[Complex; 2]> {
    let [one, two] = hots else {
        return None;
    };
    of_one_frequency(LEAST_V, |group| {
        [*one, *two].map(|hot| {
            if solution.joins(hot, neutral) {
                solution.phasor(hot, group) - solution.phasor(neutral, group)
            } else {
                Complex::ZERO
            }
        })
    })
}

/// Amps of two legs, from their first ends to their second; `None` where there is one leg, or no single frequency.
pub(super) fn amps(solution: &Solution, legs: &[BranchId]) -> Option<[Complex; 2]> {
    let [one, two] = legs else {
        return None;
    };
    of_one_frequency(LEAST_A, |group| {
        [*one, *two].map(|branch| solution.current_phasor(branch, 0, group))
    })
}

/// The phasors of the only group that makes more than this; `None` where none or several do.
fn of_one_frequency(least: f64, of: impl Fn(Group) -> [Complex; 2]) -> Option<[Complex; 2]> {
    let all = [UTILITY, OWN, STORED, LENT].map(of);
    let counts = |phasors: &[Complex; 2]| phasors.iter().any(|p| p.norm_sqr() > least * least);
    let mut counting = all.into_iter().filter(counts);
    let first = counting.next();
    first.filter(|_| counting.next().is_none())
}
