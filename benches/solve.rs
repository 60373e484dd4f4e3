//! Times the circuit solver: one load changed and solved, one switch changed and solved, and a solve from nothing.
//!
//! Every node voltage and every branch current is read after each solve, and a sample of the answers is held against a
//! fresh solver.
//! Also counts what solving allocates, which must be nothing.
//! Prints one line for each network: name, nodes, then microseconds of a change, and the volts to earth summed over
//! all nodes before any change, to hold against another solver.
//! `load` is a load changed, `solve` the same with nothing read, `switch` a switch changed, `full` the same with everything
//! derived and factored anew, `unread` that with nothing read.
//! A second line says what the arithmetic of a full factorization, and the memory that it touches, would take alone on this
//! machine.
//! Machine-dependent; the ratio to another solver measured in the same run is what counts (`compare_solver.sh`).

#![expect(clippy::print_stdout, reason = "what a timing is for")]
#![expect(clippy::disallowed_methods, reason = "a timing reads the clock")]

#[path = "../tests/core/circuit_lateral.rs"]
mod circuit_lateral;
#[path = "../tests/core/circuit_networks.rs"]
mod circuit_networks;

use circuit_lateral::{Lateral, lateral};
use circuit_networks::{Case, c, split_phase};
use outage_drill::circuit::{BranchId, Load, NodeId, Solution, Solver, Work};
use stats_alloc::{INSTRUMENTED_SYSTEM, Region, StatsAlloc};
use std::alloc::System;
use std::hint::black_box;
use std::process::ExitCode;
use std::time::Instant;

#[global_allocator]
static ALLOCATOR: &StatsAlloc<System> = &INSTRUMENTED_SYSTEM;

/// How many changes are made in a row.
const CHANGES: u32 = 64;
/// How often they are made; of each stretch of them the best time counts.
const REPEATS: u32 = 60;
/// Seconds of a stretch, about: short, so that many pass without an interruption on a busy machine.
const STRETCH_S: f64 = 0.0003;

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

    /// A resistance in 15 to 60 ohms; another for each `shift` in 0 to 1.
    fn ohms(&mut self, shift: f64) -> f64 {
        let share = f64::from(u32::try_from(self.next(1 << 20)).unwrap_or(0)) / f64::from(1 << 20);
        15.0 + 45.0 * (share + shift).fract()
    }
}

/// Reads everything that a solve delivers.
fn read_all(s: &Solution, nodes: &[NodeId], branches: &[BranchId]) -> f64 {
    let volts: f64 = nodes.iter().map(|&n| s.volts(n).unwrap_or(0.0)).sum();
    let amps: f64 = branches.iter().map(|&b| s.amps(b)).sum();
    volts + amps
}

/// Microseconds of one call: the mean over all changes of the best that each stretch of them took.
/// The changes are the same in every repeat, places and values, so that none is the best by luck of the draw.
fn time(mut call: impl FnMut(&mut Draw, f64)) -> f64 {
    let mut best_s = [f64::INFINITY; CHANGES as usize];
    let mut stretch = CHANGES;
    for repeat in 0..REPEATS {
        let mut draw = Draw(1);
        let mut made = 0;
        for best in &mut best_s {
            if made == CHANGES {
                break;
            }
            let start = Instant::now();
            for _ in 0..stretch {
                // the second half goes to the same places with other values
                if made == CHANGES / 2 {
                    draw = Draw(1);
                }
                call(&mut draw, if made < CHANGES / 2 { 0.0 } else { 0.5 });
                made += 1;
            }
            *best = best.min(start.elapsed().as_secs_f64());
        }
        if repeat == 0 {
            let whole_s = best_s[0];
            best_s.fill(f64::INFINITY);
            while stretch > 1 && whole_s * f64::from(stretch) / f64::from(CHANGES) > STRETCH_S {
                stretch /= 2;
            }
        }
    }
    let sum_s: f64 = best_s.iter().filter(|s| s.is_finite()).sum();
    sum_s * 1e6 / f64::from(CHANGES)
}

/// What this machine does at most where everything is at hand: operations on real numbers in a microsecond, in long runs of
/// independent complex multiplications and subtractions, and bytes read and written in one, in copies of `bytes`.
fn peaks(bytes: usize) -> (f64, f64) {
    const RUN: u16 = 256;
    let l = vec![c(0.3, 0.4); usize::from(RUN)];
    let mut sums = l.clone();
    let run_us = time(|_, shift| {
        let factor = black_box(c(1e-3 * shift, 1e-3));
        for (sum, l) in sums.iter_mut().zip(black_box(&l)) {
            *sum -= l * factor;
        }
    });
    black_box(&sums);
    let from = vec![1_u8; bytes / 2];
    let mut to = from.clone();
    let copy_us = time(|_, _| to.copy_from_slice(black_box(&from)));
    black_box(&to);
    let bytes = f64::from(u32::try_from(bytes).unwrap_or(u32::MAX));
    (8.0 * f64::from(RUN) / run_us, bytes / copy_us)
}

/// Prints what arithmetic and memory alone would take for a full factorization, in microseconds.
fn print_bound(name: &str, work: Work) {
    let (operations, bytes) = (work.operations(), work.bytes());
    let (per_us, bytes_per_us) = peaks(bytes);
    let of = |count: usize| f64::from(u32::try_from(count).unwrap_or(u32::MAX));
    println!(
        "bound {name}: {} columns, {} off-diagonals, {} products; {operations} operations at {per_us:.0} a microsecond take \
         {:.3}, {bytes} bytes at {bytes_per_us:.0} a microsecond take {:.3}",
        work.columns,
        work.off_diagonals,
        work.products,
        of(operations) / per_us,
        of(bytes) / bytes_per_us,
    );
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

/// Microseconds of a change and the solve after it.
struct Times {
    /// A load changed, everything read.
    load: f64,
    /// The same with nothing read.
    solve: f64,
    /// A switch changed, everything read.
    switch: f64,
    /// The same with everything derived and factored anew.
    full: f64,
    /// The same with nothing read.
    unread: f64,
}

fn times(solver: &mut Solver, built: &Lateral) -> Times {
    let Lateral {
        nodes,
        branches,
        loads,
        bonds,
        ..
    } = built;
    let change_load = |solver: &mut Solver, draw: &mut Draw, shift: f64| {
        let load = loads[draw.next(loads.len())];
        solver.set_load(load, Load::Impedance(c(draw.ohms(shift), 0.0)));
    };
    let mut open = None;
    let mut change_switch = |solver: &mut Solver, draw: &mut Draw| match open.take() {
        Some(bond) => solver.set_switch(bond, true),
        None => solver.set_switch(*open.insert(bonds[draw.next(bonds.len())]), false),
    };
    Times {
        load: time(|draw, shift| {
            change_load(solver, draw, shift);
            black_box(read_all(solver.solve(), nodes, branches));
        }),
        solve: time(|draw, shift| {
            change_load(solver, draw, shift);
            black_box(solver.solve());
        }),
        switch: time(|draw, _| {
            change_switch(solver, draw);
            black_box(read_all(solver.solve(), nodes, branches));
        }),
        full: time(|draw, _| {
            change_switch(solver, draw);
            solver.restart();
            black_box(read_all(solver.solve(), nodes, branches));
        }),
        unread: time(|draw, _| {
            change_switch(solver, draw);
            solver.restart();
            black_box(solver.solve());
        }),
    }
}

/// Times one network; false if an answer was wrong or memory was asked for.
fn run(name: &str, built: &Lateral) -> bool {
    let Lateral {
        network,
        nodes,
        branches,
        loads,
        ..
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
            Load::Impedance(c(draw.ohms(0.0), 0.0)),
        );
        solver.solve();
        sound &= is_fresh(&mut solver, nodes, branches);
    }
    let region = Region::new(ALLOCATOR);
    let Times {
        load,
        solve,
        switch,
        full,
        unread,
    } = times(&mut solver, built);
    let used = region.change();
    let allocations = used.allocations + used.reallocations;
    sound &= is_fresh(&mut solver, nodes, branches) && allocations == 0;
    println!(
        "{name} nodes {} load {load:.3} solve {solve:.3} switch {switch:.3} full {full:.3} unread {unread:.3} \
         sum {sum_v:.9} allocations {allocations} {}",
        nodes.len(),
        if sound { "sound" } else { "WRONG" },
    );
    print_bound(name, solver.work());
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
