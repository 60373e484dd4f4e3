//! The solver: a network with a fixed elimination order, its state, and what to change of it.
//!
//! Setters only note what changed; [`Solver::solve`] does the least work that gives the answer of a fresh solver to the
//! last bit.
//! An id that doesn't name an element of the right kind is a mistake of the caller: it stops a debug build and changes
//! nothing otherwise.
//! A value out of range leaves its element out, and no answer is called converged while it stands.

use crate::circuit::assembly::{Assembly, joined_pairs};
use crate::circuit::audit::Meeting;
use crate::circuit::error::NetworkError;
use crate::circuit::factor::Factor;
use crate::circuit::layout::{LaidOut, lay_out};
use crate::circuit::load::{Compensated, Load, passive_admittance};
use crate::circuit::network::{BranchId, Kind, Make, Network, index32};
use crate::circuit::ordering::Symbolic;
use crate::circuit::solution::{Meter, Solution, SourceState};
use crate::circuit::source::{Ceiling, Group, MAX_GROUPS, SourceSpec};
use crate::units::Complex;
use crate::units::portable;

/// The answer of the network to one source alone with its EMFs as given.
#[derive(Debug, Clone)]
pub(super) struct Response {
    /// Rows that the forward substitution reaches from the injections, ascending.
    reach: Vec<u32>,
    /// Injected currents by row.
    pub(super) injected: Vec<Complex>,
    /// After the forward substitution.
    forward: Vec<Complex>,
    /// Volts by row, earth last.
    pub(super) volts: Vec<Complex>,
    /// Whether `volts` fit the factor and the injection.
    pub(super) fresh: bool,
}

impl Response {
    /// For injections at `rows` alone.
    pub(super) fn new(symbolic: &Symbolic, rows: impl Iterator<Item = u32>) -> Self {
        let zeros = vec![Complex::ZERO; symbolic.n + 1];
        Self {
            reach: symbolic.reach(rows),
            injected: zeros.clone(),
            forward: zeros.clone(),
            volts: zeros,
            fresh: false,
        }
    }

    /// Finds the volts that the injection makes.
    pub(super) fn solve(&mut self, factor: &Factor, symbolic: &Symbolic) {
        factor.forward(symbolic, &self.reach, &self.injected, &mut self.forward);
        factor.backward(symbolic, &self.forward, &mut self.volts);
        self.fresh = true;
    }
}

/// What changed since the last solve, the most that did.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Change {
    Nothing,
    /// Values of elements that are there.
    Values,
    /// Which elements are there.
    Graph,
    /// Everything is to be derived anew.
    All,
}

/// A network with its elimination order, and its state.
#[derive(Debug, Clone)]
pub struct Solver {
    pub(super) solution: Solution,
    pub(super) symbolic: Symbolic,
    pub(super) assembly: Assembly,
    pub(super) factor: Factor,
    /// Admittance of each slot when its element is present, and as it stands in the matrix.
    pub(super) when_present: Vec<Complex>,
    part_of_slot: Vec<u32>,
    pub(super) in_matrix: Vec<Complex>,
    /// Which elements are present, and which have a value out of range.
    pub(super) present: Vec<bool>,
    pub(super) invalid: Vec<bool>,
    pub(super) n_invalid: usize,
    /// Constant-power loads by element, and which elements those are.
    pub(super) constant: Vec<Option<Compensated>>,
    pub(super) constant_list: Vec<u32>,
    pub(super) changed_slots: Vec<u32>,
    pub(super) is_changed: Vec<bool>,
    pub(super) change: Change,
    /// Rows that refer a floating island to earth.
    pub(super) tied_rows: Vec<bool>,
    /// One for each source, and one for each group's injections of constant-power loads.
    pub(super) responses: Vec<Response>,
    pub(super) compensation: [Response; MAX_GROUPS],
    /// Whether the compensation holds anything but zeros.
    pub(super) is_compensated: bool,
    /// Which groups' volts hold anything but zeros.
    pub(super) is_filled: [bool; MAX_GROUPS],
    /// Whether Kirchhoff's current law held when it was last looked at.
    pub(super) is_balanced: bool,
    /// Space to look at it.
    pub(super) meetings: Vec<Meeting>,
}

impl Solver {
    /// Checks a network, fixes its elimination order and sets aside all the memory that solving takes.
    ///
    /// # Errors
    /// The first thing found wrong with the network.
    pub fn new(network: Network) -> Result<Self, NetworkError> {
        let LaidOut {
            layout,
            when_present,
            present,
        } = lay_out(&network)?;
        let symbolic = Symbolic::new(layout.n_nodes() - 1, &joined_pairs(&layout));
        let assembly = Assembly::new(&layout, &symbolic, when_present.len());
        let (n, n_parts, n_slots) = (symbolic.n, layout.parts.len(), when_present.len());
        let mut constant = vec![None; n_parts];
        for (place, element) in constant.iter_mut().zip(&network.elements) {
            if let Make::Load(load) = element.make {
                *place = compensated(load);
            }
        }
        let responses = layout.parts[layout.n_plain..].iter().map(|part| {
            let ends = layout.ports_of(part).iter().flat_map(|&(a, b)| [a, b]);
            let rows = ends.map(|node| symbolic.row_of_node[node as usize]);
            Response::new(&symbolic, rows)
        });
        let responses = responses.collect();
        let sources = network.sources.iter().map(source_state).collect();
        let part_of_slot = (0..)
            .zip(&layout.parts)
            .flat_map(|(index, part)| part.slots().map(move |_| index));
        let part_of_slot: Vec<u32> = part_of_slot.collect();
        let mut solver = Self {
            solution: Solution::new(layout, &symbolic.row_of_node, sources),
            factor: Factor::new(&symbolic),
            assembly,
            when_present,
            part_of_slot,
            in_matrix: vec![Complex::ZERO; n_slots],
            present,
            invalid: vec![false; n_parts],
            n_invalid: 0,
            constant,
            constant_list: Vec::with_capacity(n_parts),
            changed_slots: Vec::with_capacity(n_slots),
            is_changed: vec![false; n_slots],
            change: Change::All,
            tied_rows: vec![false; n],
            responses,
            compensation: core::array::from_fn(|_| Response::new(&symbolic, 0..index32(n))),
            is_compensated: false,
            is_filled: [false; MAX_GROUPS],
            is_balanced: false,
            meetings: vec![Meeting::default(); n + 1],
            symbolic,
        };
        solver.list_constant();
        solver.restart();
        Ok(solver)
    }

    /// Forgets everything derived, so that the next solve is one from nothing, with the full factorization.
    /// The answer is the same to the last bit; for tests and timing.
    pub fn restart(&mut self) {
        let wanted = self.when_present.iter().zip(&self.part_of_slot);
        let places = self.in_matrix.iter_mut().zip(&mut self.solution.y);
        for ((in_matrix, shown), (&y, &part)) in places.zip(wanted) {
            let y = if self.present[part as usize] {
                y
            } else {
                Complex::ZERO
            };
            *in_matrix = y;
            *shown = y;
        }
        for ordinal in 0..self.responses.len() {
            self.inject(ordinal);
        }
        self.note(Change::All);
    }

    /// Opens or closes a switch.
    pub fn set_switch(&mut self, branch: BranchId, closed: bool) {
        if let Some(index) = self.element(branch, Kind::Switch) {
            self.set_present(index, closed);
        }
    }

    /// Connects or removes a shunt.
    pub fn set_shunt(&mut self, branch: BranchId, connected: bool) {
        if let Some(index) = self.element(branch, Kind::Shunt) {
            self.set_present(index, connected);
        }
    }

    /// Connects or removes coupled conductors, all together.
    pub fn set_coupled(&mut self, branch: BranchId, closed: bool) {
        if let Some(index) = self.element(branch, Kind::Coupled) {
            self.set_present(index, closed);
        }
    }

    /// Changes the impedance of a shunt, ohms; whether it is connected stays.
    pub fn set_shunt_impedance(&mut self, branch: BranchId, z: Complex) {
        if let Some(index) = self.element(branch, Kind::Shunt) {
            self.set_admittance(index, 0, passive_admittance(z));
        }
    }

    /// Changes the impedance of a wire, ohms.
    pub fn set_series_impedance(&mut self, branch: BranchId, z: Complex) {
        if let Some(index) = self.element(branch, Kind::Series) {
            self.set_admittance(index, 0, passive_admittance(z));
        }
    }

    /// Changes what a load takes.
    pub fn set_load(&mut self, branch: BranchId, load: Load) {
        let Some(index) = self.element(branch, Kind::Load) else {
            return;
        };
        let was_constant = self.constant[index].is_some();
        self.constant[index] = compensated(load);
        self.set_admittance(index, 0, load.nominal());
        self.set_present(index, load.is_present());
        if was_constant || self.constant[index].is_some() {
            self.list_constant();
            self.note(Change::Values);
        }
    }

    /// Starts or stops a source.
    pub fn set_source(&mut self, branch: BranchId, on: bool) {
        let Some(ordinal) = self.source(branch) else {
            return;
        };
        self.solution.sources[ordinal].on = on;
        self.set_present(self.solution.layout.n_plain + ordinal, on);
    }

    /// Turns all EMFs of a source by an angle in degrees: the angle at which it is tied to others of its group.
    pub fn set_source_angle(&mut self, branch: BranchId, degrees: f64) {
        let Some(ordinal) = self.source(branch) else {
            return;
        };
        self.solution.sources[ordinal].turn = portable::phasor(1.0, degrees);
        self.note(Change::Values);
    }

    /// Moves a source to another frequency group.
    pub fn set_source_group(&mut self, branch: BranchId, group: Group) {
        let Some(ordinal) = self.source(branch) else {
            return;
        };
        let in_range = usize::from(group.0) < MAX_GROUPS;
        debug_assert!(in_range, "group {} of {MAX_GROUPS}", group.0);
        if in_range {
            self.solution.sources[ordinal].group = usize::from(group.0);
            self.note(Change::Values);
        }
    }

    /// Changes what limits a source; none for fixed EMFs.
    pub fn set_source_ceiling(&mut self, branch: BranchId, ceiling: Option<Ceiling>) {
        let Some(ordinal) = self.source(branch) else {
            return;
        };
        let in_range = ceiling.is_none_or(|c| c.is_valid());
        debug_assert!(in_range, "ceiling out of range: {ceiling:?}");
        if in_range {
            self.solution.sources[ordinal].ceiling = ceiling;
            self.note(Change::Values);
        }
    }

    /// Changes the impedance of one port of a source, ohms.
    pub fn set_source_impedance(&mut self, branch: BranchId, port: usize, z: Complex) {
        let Some(ordinal) = self.source(branch) else {
            return;
        };
        let index = self.solution.layout.n_plain + ordinal;
        if port < self.solution.layout.parts[index].n_ports {
            self.set_admittance(index, port, passive_admittance(z));
            self.inject(ordinal);
        }
    }

    /// Changes the EMF of one port of a source, volts.
    pub fn set_source_emf(&mut self, branch: BranchId, port: usize, emf_v: Complex) {
        let Some(ordinal) = self.source(branch) else {
            return;
        };
        let Some(place) = self.solution.sources[ordinal].emf_v.get_mut(port) else {
            return;
        };
        debug_assert!(emf_v.is_finite(), "EMF {emf_v}");
        if emf_v.is_finite() {
            *place = emf_v;
            self.inject(ordinal);
        }
    }

    fn note(&mut self, change: Change) {
        self.change = self.change.max(change);
    }

    /// The element of this kind that an id names.
    fn element(&self, branch: BranchId, kind: Kind) -> Option<usize> {
        let layout = &self.solution.layout;
        let index = layout
            .part_index(branch)
            .filter(|&i| layout.parts[i].kind == kind);
        debug_assert!(
            index.is_some(),
            "{branch:?} doesn't name a {kind:?} of this network"
        );
        index
    }

    fn source(&self, branch: BranchId) -> Option<usize> {
        self.element(branch, Kind::Source)
            .and(branch.source_ordinal())
    }

    fn set_present(&mut self, index: usize, present: bool) {
        if self.present[index] != present {
            self.present[index] = present;
            self.note(Change::Graph);
            self.refresh(index);
        }
    }

    /// Sets one slot of an element; none is a value out of range, which leaves the slot out.
    fn set_admittance(&mut self, index: usize, port: usize, y: Option<Complex>) {
        let part = self.solution.layout.parts[index];
        let was_invalid = core::mem::replace(&mut self.invalid[index], y.is_none());
        self.n_invalid = self.n_invalid + usize::from(y.is_none()) - usize::from(was_invalid);
        self.when_present[part.first_slot + port] = y.unwrap_or(Complex::ZERO);
        self.note(Change::Values);
        self.refresh(index);
    }

    /// Brings the slots of an element up to what they should be in the matrix.
    pub(super) fn refresh(&mut self, index: usize) {
        let part = self.solution.layout.parts[index];
        for slot in part.slots() {
            let y = if self.present[index] {
                self.when_present[slot]
            } else {
                Complex::ZERO
            };
            self.put(slot, y);
        }
    }

    pub(super) fn put(&mut self, slot: usize, y: Complex) {
        self.solution.y[slot] = y;
        if self.in_matrix[slot] != y {
            self.in_matrix[slot] = y;
            self.note(Change::Values);
            if !self.is_changed[slot] {
                self.is_changed[slot] = true;
                self.changed_slots.push(index32(slot));
            }
        }
    }

    /// Lists the constant-power loads, in the order of the elements.
    fn list_constant(&mut self) {
        self.constant_list.clear();
        let indices = self
            .constant
            .iter()
            .enumerate()
            .filter(|(_, load)| load.is_some())
            .map(|(index, _)| index32(index));
        self.constant_list.extend(indices);
    }

    /// Writes down the Norton currents of a source.
    fn inject(&mut self, ordinal: usize) {
        let part = self.solution.layout.parts[self.solution.layout.n_plain + ordinal];
        let response = &mut self.responses[ordinal];
        response.injected.fill(Complex::ZERO);
        for (port, emf) in self.solution.sources[ordinal].emf_v.iter().enumerate() {
            let current = self.when_present[part.first_slot + port] * emf;
            let Meter { a, b, .. } = self.solution.meters[part.first_port + port];
            response.injected[a as usize] += current;
            response.injected[b as usize] -= current;
        }
        response.fresh = false;
        self.note(Change::Values);
    }
}

fn compensated(load: Load) -> Option<Compensated> {
    match load {
        Load::ConstantPower {
            va,
            rated_v,
            floor_pu,
        } if load.is_present() && load.nominal().is_some() => Some(Compensated {
            va,
            rated_v,
            floor_pu,
            fallen: false,
            volts: rated_v,
        }),
        Load::Off | Load::Impedance(_) | Load::ConstantPower { .. } => None,
    }
}

fn source_state(spec: &SourceSpec) -> SourceState {
    SourceState {
        emf_v: spec.ports.iter().map(|port| port.emf_v).collect(),
        group: usize::from(spec.group.0),
        on: spec.on,
        ceiling: spec.ceiling,
        turn: Complex::ONE,
        scale: 1.0,
        limit: None,
    }
}
