//! Times the circuit solver: one load changed and solved, one switch changed and solved, and a solve from nothing.
//!
//! Every node voltage and every branch current is read after each solve, and a sample of the answers is held against a
//! fresh solver.
//! Also counts what solving allocates, which must be nothing.
//! Prints one line for each network: name, nodes, then microseconds of the best batch, and the volts to earth summed over
//! all nodes before any change, to hold against another solver.
//! Machine-dependent; the ratio to another solver measured in the same run is what counts (`compare_solver.sh`).

#![expect(clippy::print_stdout, reason = "what a timing is for")]
#![expect(clippy::disallowed_methods, reason = "a timing reads the clock")]

#[path = "../tests/core/circuit_lateral.rs"]
mod circuit_lateral;
#[path = "../tests/core/circuit_networks.rs"]
mod circuit_networks;

use circuit_lateral::{Lateral, lateral};
use circuit_networks::{Case, c, split_phase};
use outage_drill::circuit::{BranchId, Load, NodeId, Solution, Solver};
use stats_alloc::{INSTRUMENTED_SYSTEM, Region, StatsAlloc};
use std::alloc::System;
use std::hint::black_box;
use std::process::ExitCode;
use std::time::Instant;

#[global_allocator]
static ALLOCATOR: &StatsAlloc<System> = &INSTRUMENTED_SYSTEM;

const BATCHES: usize = 15;
/// Time of one batch, about, in seconds.
const BATCH_S: f64 = 0.02;

/// Plain congruential numbers: the same changes in every run.
struct Draw(u64);

impl Draw {
    fn next(&mut self, below: usize) -> usize {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).unwrap_or(0) % below
    }

    /// A resistance in 15 to 60 ohms.
    fn ohms(&mut self) -> f64 {
        15.0 + 45.0 * f64::from(u32::try_from(self.next(1 << 20)).unwrap_or(0)) / f64::from(1 << 20)
    }
}

/// Reads everything that a solve delivers.
fn read_all(s: &Solution, nodes: &[NodeId], branches: &[BranchId]) -> f64 {
    let volts: f64 = nodes.iter().map(|&n| s.volts(n).unwrap_or(0.0)).sum();
    let amps: f64 = branches.iter().map(|&b| s.amps(b)).sum();
    volts + amps
}

/// Microseconds of one call: the best of several batches.
fn time(mut call: impl FnMut()) -> f64 {
    let mut count = 1_u32;
    loop {
        let start = Instant::now();
        (0..count).for_each(|_| call());
        if start.elapsed().as_secs_f64() > BATCH_S {
            break;
        }
        count *= 2;
    }
    let batch = |call: &mut dyn FnMut()| {
        let start = Instant::now();
        (0..count).for_each(|_| call());
        start.elapsed().as_secs_f64() * 1e6 / f64::from(count)
    };
    (0..BATCHES)
        .map(|_| batch(&mut call))
        .fold(f64::INFINITY, f64::min)
}

/// Holds the answers as they stand against a solver of its own that is made from nothing.
fn is_fresh(solver: &mut Solver, nodes: &[NodeId], branches: &[BranchId]) -> bool {
    let mut fresh = solver.clone();
    fresh.restart();
    let (ours, theirs) = (solver.solve(), fresh.solve());
    let same = |a: f64, b: f64| a.to_bits() == b.to_bits();
    ours.converged()
        && nodes.iter().all(|&n| {
            same(
                ours.volts_between(n, NodeId::EARTH),
                theirs.volts_between(n, NodeId::EARTH),
            )
        })
        && branches.iter().all(|&b| same(ours.amps(b), theirs.amps(b)))
}

/// Times one network; false if an answer was wrong or memory was asked for.
fn run(name: &str, built: &Lateral) -> bool {
    let Lateral {
        network,
        nodes,
        branches,
        loads,
        bonds,
    } = built;
    let Ok(mut solver) = Solver::new(network.clone()) else {
        return false;
    };
    let mut draw = Draw(1);
    let first = solver.solve();
    let sum_v: f64 = nodes
        .iter()
        .map(|&n| first.volts(n).unwrap_or(f64::NAN))
        .sum();
    let mut sound = first.converged();
    for _ in 0..50 {
        solver.set_load(
            loads[draw.next(loads.len())],
            Load::Impedance(c(draw.ohms(), 0.0)),
        );
        solver.solve();
        sound &= is_fresh(&mut solver, nodes, branches);
    }
    let region = Region::new(ALLOCATOR);
    let load_us = time(|| {
        solver.set_load(
            loads[draw.next(loads.len())],
            Load::Impedance(c(draw.ohms(), 0.0)),
        );
        black_box(read_all(solver.solve(), nodes, branches));
    });
    let solve_us = time(|| {
        solver.set_load(
            loads[draw.next(loads.len())],
            Load::Impedance(c(draw.ohms(), 0.0)),
        );
        black_box(solver.solve());
    });
    let mut closed = true;
    let mut bond = 0;
    let switch_us = time(|| {
        if closed {
            bond = draw.next(bonds.len());
        }
        closed = !closed;
        solver.set_switch(bonds[bond], closed);
        black_box(read_all(solver.solve(), nodes, branches));
    });
    let full_us = time(|| {
        if closed {
            bond = draw.next(bonds.len());
        }
        closed = !closed;
        solver.set_switch(bonds[bond], closed);
        solver.restart();
        black_box(read_all(solver.solve(), nodes, branches));
    });
    let used = region.change();
    let allocations = used.allocations + used.reallocations;
    sound &= is_fresh(&mut solver, nodes, branches) && allocations == 0;
    println!(
        "{name} nodes {} load {load_us:.3} solve {solve_us:.3} switch {switch_us:.3} full {full_us:.3} sum {sum_v:.9} \
         allocations {allocations} {}",
        nodes.len(),
        if sound { "sound" } else { "WRONG" },
    );
    sound
}

/// The split-phase service fed backwards, in the shape of a lateral: its loads and the poles of its main.
fn service() -> Lateral {
    let built = split_phase(Case::Backfeed);
    let nodes = built
        .panel
        .iter()
        .chain(&built.pole)
        .chain(&built.generator)
        .copied()
        .collect();
    let loads = built.loads.to_vec();
    let branches = loads
        .iter()
        .chain(&built.main)
        .chain([&built.generator_source])
        .copied()
        .collect();
    Lateral {
        network: built.network,
        nodes,
        branches,
        loads,
        bonds: built.main.to_vec(),
    }
}

fn main() -> ExitCode {
    let asked: Vec<usize> = std::env::args()
        .filter_map(|arg| arg.parse().ok())
        .collect();
    let mut sound = true;
    if asked.is_empty() {
        sound &= run("service", &service());
    }
    let usual = [1, 3, 10, 40, 100];
    for &houses in if asked.is_empty() { &usual[..] } else { &asked } {
        sound &= run(&format!("lateral {houses}"), &lateral(houses));
    }
    if sound {
        ExitCode::SUCCESS
    } else {
        ExitCode::FAILURE
    }
}
