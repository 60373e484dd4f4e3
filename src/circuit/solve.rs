//! One solve: graph, matrix, factor, the response to each source, then scales and constant-power loads until settled.
//!
//! The response to each source is kept apart and the answer is their sum, so a scale, an angle or a group changes
//! nothing but the sum.
//! Constant power is iterated by injecting what a load takes beyond its admittance in the matrix; a load that has
//! fallen back stands in the matrix with its impedance.
//! Every solve starts from rated voltage and full scale, so the answer doesn't depend on earlier ones.

use crate::circuit::load::Compensated;
use crate::circuit::regulate::{PortLine, Sums, lower_for_current};
use crate::circuit::solution::{Meter, Solution};
use crate::circuit::solver::{Change, Solver};
use crate::circuit::source::Limit;
use crate::units::Complex;

/// What refers a floating island to earth, siemens; it carries no current, so its size doesn't show.
const TIE_SIEMENS: Complex = Complex::new(1.0, 0.0);
/// Rounds of constant-power loads before giving up.
const MAX_ROUNDS: usize = 2000;
/// Rounds over the limited sources before giving up.
const MAX_SWEEPS: usize = 200;
/// The last step of a load's voltage and of a source's scale, and the estimate of what is still missing, per unit.
const STEP_PU: f64 = 1e-11;
const MISSING_PU: f64 = 1e-10;
/// The largest Kirchhoff residual of a solution, per unit.
const RESIDUAL_PU: f64 = 1e-9;

impl Solver {
    /// The answer for the network as it stands.
    /// Allocates nothing.
    pub fn solve(&mut self) -> &Solution {
        if self.change > Change::Nothing {
            self.update();
            self.change = Change::Nothing;
        }
        &self.solution
    }

    fn update(&mut self) {
        self.forget_fallen();
        let is_only_values = self.change <= Change::Values && self.constant_list.is_empty();
        if self.change >= Change::Graph {
            self.update_topology();
        }
        if self.change == Change::All {
            self.factor_all();
        } else {
            self.update_factor();
        }
        self.solution.find_active();
        for source in &mut self.solution.sources {
            source.scale = 1.0;
            source.limit = None;
        }
        if self.is_compensated {
            for compensation in &mut self.compensation {
                compensation.volts.fill(Complex::ZERO);
            }
            self.is_compensated = false;
        }
        let settled = self.settle();
        let is_sound = self.factor.is_sound() && self.n_invalid == 0;
        // another value in a linear network of the same graph keeps the residual that was found for it
        if !is_only_values || !self.is_balanced {
            self.is_balanced = self.solution.residual(&mut self.meetings) <= RESIDUAL_PU;
        }
        self.solution.converged = settled && is_sound && self.is_balanced;
    }

    /// Back to the admittance at rated voltage for loads that fell back in the last solve.
    fn forget_fallen(&mut self) {
        for position in 0..self.constant_list.len() {
            let index = self.constant_list[position] as usize;
            if let Some(load) = &mut self.constant[index] {
                load.fallen = false;
                load.volts = load.rated_v;
                self.refresh(index);
            }
        }
        self.solution.fallen.fill(false);
    }

    fn update_topology(&mut self) {
        self.solution
            .graph
            .update(&self.solution.layout, &self.present);
        for position in 0..self.solution.graph.ties_before.len() {
            let node = self.solution.graph.ties_before[position];
            let is_tie = self.solution.graph.is_tie(node);
            self.put_tie(node, is_tie);
        }
        for position in 0..self.solution.graph.ties.len() {
            self.put_tie(self.solution.graph.ties[position], true);
        }
    }

    /// Ties a node to earth or not.
    fn put_tie(&mut self, node: u32, is_tie: bool) {
        let row = self.symbolic.row_of_node[node as usize] as usize;
        if self.tied_rows[row] != is_tie {
            self.tied_rows[row] = is_tie;
            self.put_entry(row);
        }
    }

    /// Sums an entry anew and marks what depends on it.
    fn put_entry(&mut self, entry: usize) {
        let n = self.symbolic.n;
        let mut value = self.assembly.sum(entry, &self.in_matrix);
        let column = if entry < n {
            if self.tied_rows[entry] {
                value += TIE_SIEMENS;
            }
            entry
        } else {
            self.symbolic.column[entry - n] as usize
        };
        self.factor.a[entry] = value;
        self.factor.mark(&self.symbolic, column);
    }

    /// Sums the whole matrix anew and factors all of it.
    fn factor_all(&mut self) {
        self.assembly.sum_all(&self.in_matrix, &mut self.factor.a);
        for &node in &self.solution.graph.ties {
            let row = self.symbolic.row_of_node[node as usize] as usize;
            self.factor.a[row] += TIE_SIEMENS;
        }
        self.is_changed.fill(false);
        self.changed_slots.clear();
        self.factor.marks.clear();
        self.factor.factor_all(&self.symbolic);
        self.update_responses(true);
    }

    /// Brings matrix, factor and responses up to date with the changed slots.
    fn update_factor(&mut self) {
        for position in 0..self.changed_slots.len() {
            let slot = self.changed_slots[position] as usize;
            self.is_changed[slot] = false;
            for k in 0..self.assembly.entries(slot).len() {
                self.put_entry(self.assembly.entries(slot)[k] as usize);
            }
        }
        self.changed_slots.clear();
        let is_refactored = self.factor.marks.any();
        if is_refactored {
            self.factor.refactor(&self.symbolic);
            self.factor.marks.clear();
        }
        self.update_responses(is_refactored);
    }

    /// Solves for the sources whose response doesn't fit factor and injection any more.
    fn update_responses(&mut self, is_refactored: bool) {
        for (response, source) in self.responses.iter_mut().zip(&self.solution.sources) {
            response.fresh &= !is_refactored;
            if source.on && !response.fresh {
                response.solve(&self.factor, &self.symbolic);
            }
        }
    }

    /// Scales and constant-power loads, in turn until they stand still.
    fn settle(&mut self) -> bool {
        let regulated = self.regulate();
        self.superpose();
        if self.constant_list.is_empty() {
            return regulated;
        }
        self.measure_loads();
        let mut last_step = f64::INFINITY;
        for _ in 0..MAX_ROUNDS {
            if self.respond() {
                self.update_factor();
            }
            self.compensate();
            let regulated = self.regulate();
            self.superpose();
            let step = self.measure_loads();
            let rate = step / last_step;
            let missing = if rate < 1.0 {
                step * rate / (1.0 - rate)
            } else {
                f64::INFINITY
            };
            if regulated && (step == 0.0 || (step <= STEP_PU && missing <= MISSING_PU)) {
                return true;
            }
            last_step = step;
        }
        false
    }

    /// Lets each constant-power load answer to its voltage; true if one fell back or recovered.
    fn respond(&mut self) -> bool {
        let mut moved = false;
        for position in 0..self.constant_list.len() {
            let index = self.constant_list[position] as usize;
            let slot = self.solution.layout.parts[index].first_slot;
            let Some(load) = &mut self.constant[index] else {
                continue;
            };
            let before = load.fallen;
            let y = load.respond();
            let fallen = load.fallen;
            if fallen != before {
                moved = true;
                let stands = if fallen { y } else { self.when_present[slot] };
                self.put(slot, stands);
                self.solution.fallen[index] = fallen;
            }
            self.solution.y[slot] = y;
        }
        moved
    }

    /// Injects what constant-power loads take beyond their admittance in the matrix, and solves for it.
    fn compensate(&mut self) {
        self.is_compensated = true;
        for group in self.solution.groups() {
            let compensation = &mut self.compensation[group];
            compensation.injected.fill(Complex::ZERO);
            for &index in &self.constant_list {
                let part = &self.solution.layout.parts[index as usize];
                let beyond = self.solution.y[part.first_slot] - self.in_matrix[part.first_slot];
                let current = beyond * self.solution.drop(part, 0, group);
                let Meter { a, b, .. } = self.solution.meters[part.first_port];
                compensation.injected[a as usize] -= current;
                compensation.injected[b as usize] += current;
            }
            compensation.solve(&self.factor, &self.symbolic);
        }
    }

    /// Reads the loads' voltages; the largest change, per unit of rated voltage.
    fn measure_loads(&mut self) -> f64 {
        let mut largest = 0.0_f64;
        for &index in &self.constant_list {
            let part = &self.solution.layout.parts[index as usize];
            let meter = &self.solution.meters[part.first_port];
            let volts = self.solution.combine(|volts| meter.across(volts));
            if let Some(load) = &mut self.constant[index as usize] {
                let Compensated {
                    rated_v,
                    volts: before,
                    ..
                } = *load;
                let step = (volts - before).abs() / rated_v;
                largest = if step.is_nan() {
                    f64::INFINITY
                } else {
                    largest.max(step)
                };
                load.volts = volts;
            }
        }
        largest
    }

    /// Sums the responses to all sources, group by group.
    fn superpose(&mut self) {
        for (group, volts) in self.solution.volts.iter_mut().enumerate() {
            let mut is_begun = false;
            if self.is_compensated {
                volts.copy_from_slice(&self.compensation[group].volts);
                is_begun = true;
            }
            for (response, source) in self.responses.iter().zip(&self.solution.sources) {
                if !source.on || source.group != group {
                    continue;
                }
                let factor = source.factor();
                let pairs = volts.iter_mut().zip(&response.volts);
                if is_begun {
                    pairs.for_each(|(sum, unit)| *sum += unit * factor);
                } else {
                    pairs.for_each(|(sum, unit)| *sum = unit * factor);
                }
                is_begun = true;
            }
            if !is_begun && core::mem::replace(&mut self.is_filled[group], false) {
                volts.fill(Complex::ZERO);
            }
            self.is_filled[group] |= is_begun;
        }
    }

    /// Finds the scale of every limited source; false if they don't come to rest.
    fn regulate(&mut self) -> bool {
        let limited = self
            .solution
            .sources
            .iter()
            .filter(|s| s.on && s.ceiling.is_some())
            .count();
        for _ in 0..if limited == 0 { 0 } else { MAX_SWEEPS } {
            let mut largest = 0.0_f64;
            for ordinal in 0..self.solution.sources.len() {
                let Some((scale, limit)) = self.scale(ordinal) else {
                    continue;
                };
                let source = &mut self.solution.sources[ordinal];
                largest = largest.max((scale - source.scale).abs());
                source.scale = scale;
                source.limit = limit;
            }
            if limited == 1 || largest <= STEP_PU {
                return true;
            }
        }
        limited == 0
    }

    /// The scale of a limited source with all others as they are, and what holds it; none for any other source.
    fn scale(&self, ordinal: usize) -> Option<(f64, Option<Limit>)> {
        let source = &self.solution.sources[ordinal];
        let ceiling = source.ceiling.as_ref().filter(|_| source.on)?;
        let part = &self.solution.layout.parts[self.solution.layout.n_plain + ordinal];
        let mut sums = Sums::default();
        for port in 0..part.n_ports {
            sums.add(&self.port_line(ordinal, port));
        }
        for group in self.solution.groups().filter(|&g| g != source.group) {
            let (mut voltage, mut power_w) = (Complex::ZERO, 0.0);
            for port in 0..part.n_ports {
                let volts = self.port_volts(ordinal, port, group, None);
                voltage += self.port_line(ordinal, port).turned_back() * volts;
                power_w -= (volts * (self.in_matrix[part.first_slot + port] * volts).conj()).re;
            }
            sums.add_foreign(voltage, power_w);
        }
        let (mut scale, mut limit) = sums.scale(ceiling);
        for port in 0..part.n_ports {
            let mut foreign_squared = 0.0;
            for group in self.solution.groups().filter(|&g| g != source.group) {
                let volts = self.port_volts(ordinal, port, group, None);
                foreign_squared += (self.in_matrix[part.first_slot + port] * volts).norm_sqr();
            }
            if let Some(lower) = lower_for_current(
                &self.port_line(ordinal, port),
                foreign_squared,
                ceiling,
                scale,
            ) {
                (scale, limit) = (lower, Some(Limit::Current));
            }
        }
        Some((scale, limit))
    }

    /// A port of a source as a function of the source's scale.
    fn port_line(&self, ordinal: usize, port: usize) -> PortLine {
        let source = &self.solution.sources[ordinal];
        let part = &self.solution.layout.parts[self.solution.layout.n_plain + ordinal];
        let Meter { a, b, .. } = self.solution.meters[part.first_port + port];
        let own = &self.responses[ordinal].volts;
        PortLine {
            others_v: self.port_volts(ordinal, port, source.group, Some(ordinal)),
            own_v: source.turn * (own[a as usize] - own[b as usize]),
            emf_v: source.turn * source.emf_v[port],
            y: self.in_matrix[part.first_slot + port],
        }
    }

    /// Volts at a port of a source in one group, without the response to the source `but`.
    fn port_volts(&self, ordinal: usize, port: usize, group: usize, but: Option<usize>) -> Complex {
        let part = &self.solution.layout.parts[self.solution.layout.n_plain + ordinal];
        let Meter { a, b, .. } = self.solution.meters[part.first_port + port];
        let (a, b) = (a as usize, b as usize);
        let compensation = &self.compensation[group].volts;
        let mut volts = compensation[a] - compensation[b];
        for (other, (response, source)) in self
            .responses
            .iter()
            .zip(&self.solution.sources)
            .enumerate()
        {
            if source.on && source.group == group && Some(other) != but {
                volts += source.factor() * (response.volts[a] - response.volts[b]);
            }
        }
        volts
    }
}
