//! A site with a solver on it: positions and load states in, readings out.
//!
//! The generator is held by its regulator, its field's and its engine's ceilings while it stands alone.
//! Tied to the utility it has a fixed EMF behind its subtransient impedance at a given angle, the case of the first cycles.
//! A body's resistance follows its touch voltage (IEC 60479-1), by iteration.
//! All that is read of one moment is of one state of the sources; the higher current of a set's first cycles counts only for whether a touch harms.

use std::sync::Arc;

use crate::apparatus::generator::{GeneratorSpec, Reactance};
use crate::apparatus::gfci;
use crate::apparatus::waveform::NOMINAL_HZ;
use crate::circuit::{BranchId, Ceiling, Limit, Load, NetworkError, NodeId, Solution, Solver};
use crate::hazard::body::{Path, Percentile, path_ohm};
use crate::units::Complex;

use super::control::Positions;
use super::line_work::PROVING_SOURCE;
use super::parts::{Appliance, Site, Work};
use super::phasors;
use super::readings::{
    ApplianceReading, BatteryReading, Fed, GeneratorReading, Names, PointReading, Range, Readings,
    Shock,
};
use super::rest::CordState;
use super::wiring::{Gfci, LENT, OWN, STORED, UTILITY, Wiring, wire};
use super::wiring_house::cord_wire_ohm;
use super::wiring_sources::BOTH_V;

/// Passes that settle a body's resistance on its touch voltage; above 1000 V it is constant, so few are needed.
const BODY_PASSES: usize = 6;
/// From the hand on the wire to the feet.
const PATH: Path = Path::LeftHandToFeet;
/// Below this fraction of rated volts a constant-power load behaves as an impedance.
const FLOOR_PU: f64 = 0.8;

/// Volts at which the electronics of a ground-fault device work: two thirds of rated, common practice.
const WORKS_FROM_V: f64 = 80.0;

/// Amps through a line worker from which a touch counts as harm: below them no heart is expected to stop, however long it lasts (IEC 60479-1, the long end of curve c1; checked in a copy that quotes it).
const HARMS_A: f64 = 0.04;

/// Most volts that a battery's inverter makes, per unit: common practice.
const INVERTER_EMF_MAX_PU: f64 = 1.1;

/// How a load stands electrically.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LoadState {
    /// Takes nothing.
    Off,
    /// Runs.
    Running,
    /// A motor that does not turn yet.
    LockedRotor,
}

/// How the house's own sources are driven.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Drive {
    /// Whether the engine turns the machine at speed.
    pub running: bool,
    /// Angle of the generator to the utility in degrees, used only when the two are tied.
    pub angle_deg: f64,
    /// Whether the engine runs at its slow speed.
    pub slow: bool,
    /// Whether the battery's inverter makes volts.
    pub battery: bool,
    /// Watts that the solar inverter pushes into whatever it follows.
    pub solar_w: f64,
    /// Watts that the battery charges with from the side of the utility.
    pub charge_w: f64,
}

/// A body between the line and earth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Body {
    /// Whether hands are on the conductor.
    pub touching: bool,
}

/// A site, its network, and a solver with the last solution.
#[derive(Debug, Clone)]
pub struct Plant {
    pub(super) solver: Solver,
    pub(super) wiring: Wiring,
    /// The generator's figures in the positions of the last read.
    spec: GeneratorSpec,
    names: Arc<Names>,
}

impl Plant {
    /// Wires a site.
    ///
    /// # Errors
    /// When the network has an impossible element, which a checked site file rules out.
    pub fn new(site: &Site) -> Result<Self, NetworkError> {
        let wiring = wire(site);
        let names = Names {
            points: wiring.points.iter().map(|p| p.name.clone()).collect(),
            things: wiring.meters.iter().map(|m| m.thing.clone()).collect(),
            gfcis: wiring.gfcis.iter().map(|g| g.control).collect(),
        };
        Ok(Self {
            solver: Solver::new(wiring.network.clone())?,
            wiring,
            spec: site.generator.spec,
            names: Arc::new(names),
        })
    }

    /// Tells the solver how warm each cord is, in the order of the site's, and whether its conductors meet.
    pub fn set_cords(&mut self, site: &Site, states: &[CordState]) {
        let cords = site.cords.iter().zip(&self.wiring.cords).zip(states);
        for ((cord, wires), state) in cords {
            let whole = cord_wire_ohm(cord, *state);
            let hot_c = state.celsius + state.spot_k;
            let spot = cord.found.damage.added_ohm(&cord.make, hot_c);
            for (index, branch) in wires.wires.iter().enumerate() {
                let here = if index == 0 { spot } else { 0.0 };
                self.solver.set_series_impedance(*branch, whole + here);
            }
            self.solver.set_switch(wires.short, state.shorted);
        }
    }

    /// Readings for these positions, loads and this drive.
    pub fn read(
        &mut self,
        site: &Site,
        positions: &Positions,
        loads: &[LoadState],
        drive: Drive,
        body: Body,
    ) -> Readings {
        self.spec = site.generator.spec_at(positions);
        if drive.slow {
            self.spec = self.spec.at_slow_speed();
        }
        self.set(site, positions, loads, drive);
        self.regulate(drive, Reactance::Transient);
        let (solver, wiring) = (&mut self.solver, &self.wiring);
        solver.set_shunt(wiring.body, false);
        solver.set_source_group(wiring.generator, OWN);
        if let Some((source, [hot, _])) = wiring.battery {
            solver.set_source_group(source, STORED);
            let follows = fed_at(solver.solve(), wiring, hot).utility;
            if follows {
                solver.set_source_group(source, UTILITY);
            }
        }
        let solution = solver.solve();
        let utility = fed_at(solution, wiring, wiring.generator_hots[0]).utility;
        let mut hots = wiring.generator_hots.iter();
        let lent = hots.any(|hot| fed_at(solution, wiring, *hot).lent);
        let tied = (utility || lent) && drive.running;
        self.hold_lent(site, lent && tied);
        if tied {
            self.regulate(drive, Reactance::Subtransient);
            let group = if utility { UTILITY } else { LENT };
            self.solver.set_source_group(self.wiring.generator, group);
            self.solver
                .set_source_angle(self.wiring.generator, drive.angle_deg);
        }
        let (solver, wiring) = (&mut self.solver, &self.wiring);
        let fed = fed_at(solver.solve(), wiring, wiring.crew_node);
        let touched = body.touching && fed.any();
        let harms =
            touched && (site.line_work.is_none() || self.first_a(site, drive, tied) >= HARMS_A);
        let shock = touched.then(|| self.shock(site)).filter(|_| harms);
        self.report(site, positions, drive, tied, shock)
    }

    fn set(&mut self, site: &Site, positions: &Positions, loads: &[LoadState], drive: Drive) {
        for contact in &self.wiring.contacts {
            let closed = positions.get(contact.closed_in.0) == contact.closed_in.1;
            if contact.shunt {
                self.solver.set_shunt(contact.branch, closed);
            } else {
                self.solver.set_switch(contact.branch, closed);
            }
        }
        for ((appliance, branch), state) in
            site.appliances.iter().zip(&self.wiring.loads).zip(loads)
        {
            self.solver.set_load(
                *branch,
                load_of(&appliance.work, rated_v(site, appliance.circuit), *state),
            );
        }
        self.solver.set_source(self.wiring.generator, drive.running);
        if let (Some((source, _)), Some(battery)) = (self.wiring.battery, &site.battery) {
            self.solver.set_source(source, drive.battery);
            let ceiling = Ceiling {
                set_v: BOTH_V,
                emf_max_pu: INVERTER_EMF_MAX_PU,
                power_max_w: battery.surge_w,
                current_max_a: f64::INFINITY,
            };
            let ceiling = drive.battery.then_some(ceiling);
            self.solver.set_source_ceiling(source, ceiling);
        }
        let taken = [
            (self.wiring.solar, -drive.solar_w),
            (self.wiring.charger, drive.charge_w),
        ];
        for (branch, watts) in taken {
            let Some(branch) = branch else { continue };
            self.solver.set_load(branch, converter_load(watts));
        }
    }

    fn regulate(&mut self, drive: Drive, reactance: Reactance) {
        let spec = &self.spec;
        let half = spec.impedance(reactance) * 0.5;
        let fixed = matches!(reactance, Reactance::Subtransient);
        let ceiling = (drive.running && !fixed).then_some(Ceiling {
            set_v: spec.set_v,
            emf_max_pu: spec.field_max_pu,
            power_max_w: spec.surge_w,
            current_max_a: spec.current_max_a(),
        });
        self.solver
            .set_source_ceiling(self.wiring.generator, ceiling);
        for port in 0..2 {
            self.solver
                .set_source_impedance(self.wiring.generator, port, half);
        }
    }

    /// The set of a neighbor: regulated while it stands alone, a fixed EMF while it is tied to the generator.
    fn hold_lent(&mut self, site: &Site, tied: bool) {
        let (Some((source, _)), Some(lent)) = (self.wiring.lent, &site.lent) else {
            return;
        };
        let (ceiling, reactance) = if tied {
            (None, Reactance::Subtransient)
        } else {
            (Some(lent.ceiling()), Reactance::Transient)
        };
        self.solver.set_source_ceiling(source, ceiling);
        self.solver
            .set_source_impedance(source, 0, lent.impedance(reactance));
    }

    /// The most amps of the first cycles: a stiff field, and a body that resists little.
    /// Harm is judged by it, so that none is missed; what is told of a shock goes with what the rest of the moment shows.
    fn first_a(&mut self, site: &Site, drive: Drive, tied: bool) -> f64 {
        if !tied {
            self.regulate(drive, Reactance::Subtransient);
        }
        let (_, amps) = self.touch(site, Percentile::P5);
        if !tied {
            self.regulate(drive, Reactance::Transient);
        }
        amps
    }

    /// Volts and amps of the worker's body as it resists more or less, with all sources held as in everything else that is read.
    /// More amps go with fewer volts: a small source gives way.
    /// Leaves the solver at the median body, whose volts and amps the report then carries, and which lie between the two.
    fn shock(&mut self, site: &Site) -> Shock {
        let most = self.touch(site, Percentile::P5);
        let least = self.touch(site, Percentile::P95);
        self.touch(site, Percentile::P50);
        Shock {
            volts: Range {
                low: most.0.min(least.0),
                high: most.0.max(least.0),
            },
            amps: Range {
                low: least.1.min(most.1),
                high: least.1.max(most.1),
            },
        }
    }

    /// Solves with a body at the line; returns touch volts and amps.
    fn touch(&mut self, site: &Site, percentile: Percentile) -> (f64, f64) {
        let body = self.wiring.body;
        self.solver.set_shunt(body, true);
        let mut ohm = path_ohm(site.line.volts, percentile, PATH);
        let mut felt = (0.0, 0.0);
        // Where the worker can stand on the grounds, the footing is a part of the network.
        let footing = if site.line_work.is_some() {
            0.0
        } else {
            site.line.footing_ohm
        };
        for _ in 0..BODY_PASSES {
            self.solver
                .set_shunt_impedance(body, Complex::new(ohm + footing, 0.0));
            let amps = self.solver.solve().amps(body);
            felt = (amps * ohm, amps);
            ohm = path_ohm(felt.0, percentile, PATH);
        }
        felt
    }

    fn report(
        &mut self,
        site: &Site,
        positions: &Positions,
        drive: Drive,
        tied: bool,
        shock: Option<Shock>,
    ) -> Readings {
        let solution = self.solver.solve();
        let wiring = &self.wiring;
        let points = wiring.points.iter().map(|p| {
            let leg =
                |hot: Option<&NodeId>| hot.map_or(0.0, |h| volts_across(solution, *h, p.neutral));
            let legs_v = [leg(p.hots.first()), leg(p.hots.get(1))];
            PointReading {
                volts: legs_v[0].max(legs_v[1]),
                legs_v,
                volts_across: match p.hots.as_slice() {
                    [one, two] => volts_across(solution, *one, *two),
                    _ => 0.0,
                },
                phasors: phasors::volts(solution, &p.hots, p.neutral),
                volts_to_earth: p
                    .hots
                    .iter()
                    .filter_map(|h| solution.volts(*h))
                    .reduce(f64::max),
                fed: p
                    .hots
                    .iter()
                    .map(|h| fed_at(solution, wiring, *h))
                    .fold(Fed::default(), Fed::or),
            }
        });
        let meters = |of: fn(f64, f64) -> f64| {
            let legs = wiring.meters.iter().map(move |m| {
                let of_leg = |leg| {
                    let ways = m.branches.iter().skip(leg).step_by(m.legs);
                    ways.map(|b| solution.amps(*b)).fold(0.0, f64::max)
                };
                (0..m.legs).map(of_leg).reduce(of).unwrap_or_default()
            });
            legs.collect()
        };
        let legs = wiring.meters.iter();
        let legs_a = legs.map(|m| phasors::amps(solution, &m.branches));
        let residual_a = wiring.gfcis.iter().map(|g| residual_a(solution, g));
        let gfcis = wiring.gfcis.iter();
        let neutral_loop_ohm = gfcis.map(|g| neutral_loop_ohm(solution, wiring, positions, g));
        let loads = wiring.loads.iter().zip(&wiring.load_nodes);
        let appliances =
            site.appliances.iter().zip(loads).map(|(a, (load, ends))| {
                appliance_reading(site, solution, wiring, a, (*load, *ends))
            });
        let generator = generator_reading(&self.spec, solution, wiring, (drive, tied));
        Readings {
            converged: solution.converged(),
            points: points.collect(),
            amps: meters(f64::max),
            less_a: meters(f64::min),
            legs_a: legs_a.collect(),
            residual_a: residual_a.collect(),
            neutral_loop_ohm: neutral_loop_ohm.collect(),
            appliances: appliances.collect(),
            generator,
            battery: battery_reading(solution, wiring),
            solar_w: wiring.solar.map_or(0.0, |b| -solution.power(b).re),
            shock,
            names: Arc::clone(&self.names),
        }
    }
}

fn battery_reading(solution: &Solution, wiring: &Wiring) -> BatteryReading {
    let charge_w = wiring.charger.map_or(0.0, |c| solution.power(c).re);
    let Some((source, [one, two])) = wiring.battery else {
        return BatteryReading::default();
    };
    let volts = solution.volts_between(one, two);
    let watts = solution.power(source).re;
    let pu = volts / BOTH_V;
    BatteryReading {
        volts,
        watts,
        asked_w: match solution.limit(source) {
            Some(Limit::Power) if pu > 0.0 => watts / (pu * pu),
            _ => watts,
        },
        charge_w,
    }
}

/// An inverter or a charger that takes or gives constant watts between the two hots.
fn converter_load(watts: f64) -> Load {
    if watts == 0.0 {
        return Load::Off;
    }
    Load::ConstantPower {
        va: Complex::new(watts, 0.0),
        rated_v: BOTH_V,
        floor_pu: FLOOR_PU,
    }
}

/// What an appliance gets, from its load and the two nodes that this hangs between.
fn appliance_reading(
    site: &Site,
    solution: &Solution,
    wiring: &Wiring,
    appliance: &Appliance,
    (load, (a, b)): (BranchId, (NodeId, NodeId)),
) -> ApplianceReading {
    let volts = volts_across(solution, a, b);
    ApplianceReading {
        volts,
        pu: volts / rated_v(site, appliance.circuit),
        amps: solution.amps(load),
        watts: solution.power(load).re,
        fed: fed_at(solution, wiring, a),
    }
}

/// Hertz that the set makes; the utility's while it is tied to that.
fn hertz(spec: &GeneratorSpec, drive: Drive, tied: bool, watts: f64) -> f64 {
    match (drive.running, tied) {
        (false, _) => 0.0,
        (true, true) => NOMINAL_HZ,
        (true, false) => spec.frequency_hz(watts),
    }
}

fn generator_reading(
    spec: &GeneratorSpec,
    solution: &Solution,
    wiring: &Wiring,
    (drive, tied): (Drive, bool),
) -> GeneratorReading {
    let [one, two] = wiring.generator_hots;
    let port_amps = |port| solution.port_amps(wiring.generator, port);
    let Complex {
        re: watts,
        im: vars,
    } = solution.power(wiring.generator);
    GeneratorReading {
        volts: solution.volts_between(one, two),
        amps: port_amps(0).max(port_amps(1)),
        watts,
        vars,
        asked_w: asked_w(spec, solution, wiring),
        hz: hertz(spec, drive, tied, watts),
        limited: solution.limit(wiring.generator).is_some(),
        tied,
    }
}

/// Watts the generator is asked for: while the engine holds it down, what the loads would take at its set volts.
fn asked_w(spec: &GeneratorSpec, solution: &Solution, wiring: &Wiring) -> f64 {
    let watts = solution.power(wiring.generator).re;
    let [one, two] = wiring.generator_hots;
    let pu = solution.volts_between(one, two) / spec.set_v;
    match solution.limit(wiring.generator) {
        Some(Limit::Power | Limit::Current) if pu > 0.0 => watts / (pu * pu),
        _ => watts,
    }
}

/// Volts between two nodes; 0 where nothing ties the one to the other, because then there is no value.
fn volts_across(solution: &Solution, one: NodeId, other: NodeId) -> f64 {
    if solution.joins(one, other) {
        solution.volts_between(one, other)
    } else {
        0.0
    }
}

/// What returns to the source by another way than through a ground-fault device, amps.
/// Groups that aren't synchronized are combined by root-sum-square.
pub(super) fn residual_a(solution: &Solution, gfci: &Gfci) -> f64 {
    let squares = [UTILITY, OWN, STORED, LENT].map(|group| {
        let phasors = gfci.branches.iter();
        gfci::residual(phasors.map(|b| solution.current_phasor(*b, 0, group))).norm_sqr()
    });
    squares.iter().sum::<f64>().sqrt()
}

/// Ohms of the loop through the neutral behind a ground-fault device and a ground back to its fed side; none while nothing feeds it.
fn neutral_loop_ohm(
    solution: &Solution,
    wiring: &Wiring,
    positions: &Positions,
    gfci: &Gfci,
) -> Option<f64> {
    let (hot, neutral) = gfci.line;
    let works = volts_across(solution, hot?, neutral) >= WORKS_FROM_V;
    works.then_some(())?;
    let ways = &wiring.returns;
    ways.ohm(positions, gfci.load_neutral, neutral, gfci.control)
}

fn rated_v(site: &Site, circuit: usize) -> f64 {
    match site.circuits.get(circuit).map(|c| c.legs) {
        Some(super::parts::Legs::Both) => 240.0,
        _ => 120.0,
    }
}

fn load_of(work: &Work, volts: f64, state: LoadState) -> Load {
    match (work, state) {
        (_, LoadState::Off) => Load::Off,
        (Work::Motor(motor), LoadState::LockedRotor) => {
            Load::Impedance(motor.locked_rotor_impedance())
        }
        (Work::Motor(motor), LoadState::Running) => Load::ConstantPower {
            va: motor.running_va(),
            rated_v: motor.volts,
            floor_pu: FLOOR_PU,
        },
        (Work::Resistive { watts }, _) => Load::Impedance(Complex::new(volts * volts / watts, 0.0)),
        (
            Work::Electronic {
                watts,
                power_factor,
            },
            _,
        ) => {
            let reactive = watts * (1.0 / (power_factor * power_factor) - 1.0).max(0.0).sqrt();
            Load::ConstantPower {
                va: Complex::new(*watts, reactive),
                rated_v: volts,
                floor_pu: FLOOR_PU,
            }
        }
    }
}

fn fed_at(solution: &Solution, wiring: &Wiring, node: NodeId) -> Fed {
    let set = solution.fed_by(node);
    Fed {
        utility: set.contains(wiring.utility) || wiring.second.is_some_and(|s| set.contains(s)),
        generator: set.contains(wiring.generator),
        battery: wiring.battery.is_some_and(|(b, _)| set.contains(b)),
        lent: wiring.lent.is_some_and(|(l, _)| set.contains(l)),
    }
}

impl Fed {
    /// Fed by what either is fed by.
    #[must_use]
    pub fn or(self, other: Self) -> Self {
        Self {
            utility: self.utility || other.utility,
            generator: self.generator || other.generator,
            battery: self.battery || other.battery,
            lent: self.lent || other.lent,
        }
    }

    /// Whether anything feeds it.
    pub fn any(self) -> bool {
        self.utility || self.customer()
    }

    /// Whether a customer's own source feeds it, be it the house's or a neighbor's.
    pub fn customer(self) -> bool {
        self.generator || self.battery || self.lent
    }

    /// What feeds it, in a word; a neighbor's set is a generator, too.
    pub fn word(self) -> &'static str {
        let words = [
            (self.utility, "utility"),
            (self.generator, "generator"),
            (self.lent, "generator"),
            (self.battery, "battery"),
        ];
        let mut feeding = words.iter().filter(|(feeds, _)| *feeds);
        match (feeding.next(), feeding.next()) {
            (None, _) => "nothing",
            (Some((_, one)), None) => one,
            _ => "several",
        }
    }
}

impl Site {
    /// The names of all points of a site where the learner can hold a tester: on a line that a crew works, its poles and the proving source.
    pub fn point_names(&self) -> Vec<String> {
        let points = wire(self).points.into_iter().map(|p| p.name);
        let poles = |name: &String| {
            name == PROVING_SOURCE || self.line.poles.iter().any(|p| p.name == *name)
        };
        points
            .filter(|name| self.line_work.is_none() || poles(name))
            .collect()
    }
}
