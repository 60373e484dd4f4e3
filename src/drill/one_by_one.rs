//! In which order loads can be brought on one by one, found by asking the solver at each step.
//!
//! The motor that draws most at a standstill comes first, then the others, then what has no start of its own, the largest first.
//! A load is left out if, with those before it, something would be asked for more than it is made for, a motor would not turn, or something would be starved.
//! A motor that starts by itself, as a pump or a fridge does, has to be able to start again with all that is brought on after it.
//! Nothing is scripted: each step is solved with the positions, the warmth and the sources of the moment that is asked about.
//! Not covered: loads that wait for their thermostat, and time between the steps, which is taken as long enough.
//! Source: the largest motor first, common practice.

use crate::apparatus::guard::Guard;
use crate::apparatus::motor_start::{Driven, Supply, keeps_turning, starts};
use crate::apparatus::waveform::NOMINAL_HZ;
use crate::site::{
    Appliance, Body, ControlId, Demand, Drive, LoadState, Plant, PositionId, Positions, Readings,
    Work,
};

use super::engine::Drill;
use super::trace::Moment;

/// How far the watts of a set may pass its rating by rounding.
const GRAIN: f64 = 1.0 + 1e-6;

/// Volts below which an inverter makes none.
const DEAD_V: f64 = 1.0;
/// Least share of its volts that a thing runs well on: NEMA MG 1-12.44, checked in part.
const LEAST_PU: f64 = 0.9;

/// A load that is brought on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BroughtOn {
    /// Index of the appliance.
    pub appliance: usize,
    /// Watts asked of the source while a motor starts; none for what has no start.
    pub at_start_w: Option<f64>,
    /// Watts asked of the source once it runs with all before it.
    pub then_w: f64,
}

/// Why a load is left out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TooMuch {
    /// The source would be asked for this many watts.
    Asked(f64),
    /// The source would be asked for this many watts whenever this appliance starts again by itself.
    AskedAgain(usize, f64),
    /// This many amps would go through a breaker or a fuse.
    Through(ControlId, f64),
    /// A motor would not turn, at this share of its volts.
    Stands(f64),
    /// Something that runs would get only this share of its volts.
    Starves(f64),
}

/// The order.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct OneByOne {
    /// What can be brought on, in this order.
    pub order: Vec<BroughtOn>,
    /// What has to be left out, and why.
    pub left_out: Vec<(usize, TooMuch)>,
}

/// What the loads are tried on.
struct Bench<'a> {
    drill: &'a Drill,
    plant: Plant,
    positions: Positions,
    drive: Drive,
    states: Vec<LoadState>,
}

impl Drill {
    /// The order in which these appliances can be brought on as things stood in a moment, with what had tripped set again.
    pub fn one_by_one(&self, moment: &Moment, wanted: &[usize]) -> OneByOne {
        let site = self.site();
        let mut positions = moment.positions.clone();
        for (id, ..) in site.guards() {
            if site.stands(&positions, id, "tripped") || site.stands(&positions, id, "blown") {
                positions.set(id, PositionId(1));
            }
        }
        let conditions = &moment.conditions;
        let drive = Drive {
            running: moment.readings.generator.hz > 0.0,
            battery: moment.readings.battery.volts > DEAD_V,
            solar_w: conditions.solar.watts,
            ..Drive::default()
        };
        let mut plant = self.plant().clone();
        plant.set_cords(site, &conditions.cord_states());
        let mut bench = Bench {
            drill: self,
            plant,
            positions,
            drive,
            states: vec![LoadState::Off; site.appliances.len()],
        };
        let mut found = OneByOne::default();
        let mut left: Vec<usize> = Vec::new();
        for appliance in self.largest_motor_first(wanted) {
            match bench.bring_on(appliance) {
                Ok(brought) => found.order.push(brought),
                Err(_) => left.push(appliance),
            }
        }
        // Why it is too much is said of all the rest that runs, and not of what ran before it in the order.
        for appliance in left {
            match bench.bring_on(appliance) {
                Ok(brought) => found.order.push(brought),
                Err(why) => found.left_out.push((appliance, why)),
            }
        }
        found
    }

    /// These appliances, motors by what they draw at a standstill, then the rest by their watts.
    fn largest_motor_first(&self, wanted: &[usize]) -> Vec<usize> {
        let size = |index: usize| match self.site().appliances.get(index).map(|a| &a.work) {
            Some(Work::Motor(motor)) => (1, motor.locked_rotor_amps() * motor.volts),
            Some(Work::Resistive { watts } | Work::Electronic { watts, .. }) => (0, *watts),
            None => (0, 0.0),
        };
        let mut order = wanted.to_vec();
        order.sort_by(|a, b| {
            let ((kind_a, most_a), (kind_b, most_b)) = (size(*a), size(*b));
            (kind_b, most_b)
                .partial_cmp(&(kind_a, most_a))
                .unwrap_or(std::cmp::Ordering::Equal)
        });
        order
    }
}

impl Bench<'_> {
    /// Brings an appliance on, or leaves it off and says why.
    fn bring_on(&mut self, appliance: usize) -> Result<BroughtOn, TooMuch> {
        let tried = self.try_on(appliance);
        if tried.is_err() {
            self.set(appliance, LoadState::Off);
        }
        tried
    }

    fn try_on(&mut self, appliance: usize) -> Result<BroughtOn, TooMuch> {
        let works = self.drill.site().appliances.get(appliance).map(|a| &a.work);
        let at_start_w = if matches!(works, Some(Work::Motor(_))) {
            self.set(appliance, LoadState::LockedRotor);
            Some(self.starts_on(appliance)?)
        } else {
            None
        };
        self.set(appliance, LoadState::Running);
        let readings = self.read();
        self.guards_hold(&readings, |guard| guard.rating_a() * GRAIN)?;
        let then_w = asked_w(&readings);
        if then_w > self.most_w(false) * GRAIN {
            return Err(TooMuch::Asked(then_w));
        }
        self.nothing_starves(&readings)?;
        self.starts_again(appliance)?;
        Ok(BroughtOn {
            appliance,
            at_start_w,
            then_w,
        })
    }

    /// Whether each motor that runs now and starts by itself could start again with all that runs beside it.
    fn starts_again(&mut self, newest: usize) -> Result<(), TooMuch> {
        let by_itself = |(index, a): (usize, &Appliance)| {
            let motor =
                matches!(a.work, Work::Motor(_)) && matches!(a.demand, Demand::Reservoir(_));
            (motor && index != newest).then_some(index)
        };
        let all = self.drill.site().appliances.iter().enumerate();
        let motors: Vec<usize> = all.filter_map(by_itself).collect();
        for motor in motors {
            if self.states.get(motor) != Some(&LoadState::Running) {
                continue;
            }
            self.set(motor, LoadState::LockedRotor);
            let started = self.starts_on(motor);
            self.set(motor, LoadState::Running);
            started.map_err(|why| {
                if let TooMuch::Asked(watts) = why {
                    return TooMuch::AskedAgain(motor, watts);
                }
                why
            })?;
        }
        Ok(())
    }

    /// Watts asked while this motor starts, if the source, the motors and the guards stand it.
    fn starts_on(&mut self, motor: usize) -> Result<f64, TooMuch> {
        let readings = self.read();
        let asked = asked_w(&readings);
        if asked > self.most_w(true) * GRAIN {
            return Err(TooMuch::Asked(asked));
        }
        self.turns(&readings, motor)?;
        self.guards_hold(&readings, Guard::at_once_a)?;
        Ok(asked)
    }

    fn set(&mut self, appliance: usize, state: LoadState) {
        if let Some(own) = self.states.get_mut(appliance) {
            *own = state;
        }
    }

    fn read(&mut self) -> Readings {
        let body = Body { touching: false };
        let site = self.drill.site();
        self.plant
            .read(site, &self.positions, &self.states, self.drive, body)
    }

    /// Watts that the source of the house stands: for a start, or for good.
    fn most_w(&self, start: bool) -> f64 {
        let site = self.drill.site();
        let spec = site.generator.spec_at(&self.positions);
        match (&site.battery, self.drive.running, self.drive.battery) {
            (_, true, _) => {
                if start {
                    spec.surge_w
                } else {
                    spec.rated_w
                }
            }
            (Some(battery), false, true) => {
                if start {
                    battery.surge_w
                } else {
                    battery.rated_w
                }
            }
            _ => f64::INFINITY,
        }
    }

    /// Whether this motor begins to turn, and those that run go on.
    fn turns(&self, readings: &Readings, starting: usize) -> Result<(), TooMuch> {
        let set = readings.generator;
        let appliances = self.drill.site().appliances.iter().zip(&self.states);
        for (index, (appliance, state)) in appliances.enumerate() {
            let reading = readings.appliance(index);
            let alone = reading.fed.generator && !set.tied;
            let supply = Supply {
                v_pu: reading.pu,
                f_pu: if alone { set.hz / NOMINAL_HZ } else { 1.0 },
            };
            let turns = match (&appliance.work, state) {
                (Work::Motor(_), LoadState::LockedRotor) if index == starting => starts(supply),
                (Work::Motor(_), LoadState::Running) => keeps_turning(Driven::Constant, supply),
                _ => true,
            };
            if !turns {
                return Err(TooMuch::Stands(reading.pu));
            }
        }
        Ok(())
    }

    /// Whether everything that runs gets enough volts.
    fn nothing_starves(&self, readings: &Readings) -> Result<(), TooMuch> {
        let states = self.states.iter().enumerate();
        let running = states.filter(|(_, state)| **state == LoadState::Running);
        let shares = running.map(|(index, _)| readings.appliance(index).pu);
        let least = shares.fold(1.0, f64::min);
        if least < LEAST_PU {
            Err(TooMuch::Starves(least))
        } else {
            Ok(())
        }
    }

    /// Whether every closed breaker and fuse carries no more than this; else the one that is farthest beyond it.
    fn guards_hold(&self, readings: &Readings, most: impl Fn(Guard) -> f64) -> Result<(), TooMuch> {
        let closed = self.drill.site().guards();
        let closed = closed.filter(|(id, ..)| self.positions.get(*id) == PositionId(1));
        let over = closed.filter_map(|(id, control, guard)| {
            let amps = readings.amps_of(&control.name);
            (amps > most(guard)).then(|| (amps / most(guard), id, amps))
        });
        let worst = over.max_by(|a, b| a.0.total_cmp(&b.0));
        worst.map_or(Ok(()), |(_, id, amps)| Err(TooMuch::Through(id, amps)))
    }
}

/// Watts asked of the house's own source.
fn asked_w(readings: &Readings) -> f64 {
    let of_battery = readings.battery.asked_w.max(0.0);
    readings.generator.asked_w.max(0.0).max(of_battery)
}
