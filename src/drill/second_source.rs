//! The house's further sources: a solar inverter that follows whatever feeds its bus, and a battery that makes a grid of its own.
//!
//! Both look at volts and hertz at their terminals whenever those change; what they do then is due at a computed instant.
//! The inverter can't tell a generator from the utility: it joins whatever fits its window for long enough, and pushes its watts there.
//! The battery takes its panel when the side of the utility goes bad, and gives it back in step when that side has been good for long enough.
//! Every timer is an instant, and the battery's energy is a straight line over a stretch with constant readings.
//! Not covered: the up to two seconds in which an inverter left alone holds up an island; its volts there are taken as none.

use std::sync::Arc;

use crate::apparatus::backpower::{Pushed, Shared, Speed, share};
use crate::apparatus::interconnection::{Due, Grid, Watch};
use crate::site::{Battery, ControlId, OtherSide, PositionId, Readings, Site, Solar, Transfer};
use crate::units::DrillTime;

use super::conditions::Conditions;
use super::engine::Drill;
use super::event::Event;
use super::next::whole_millis;

/// What a solar inverter takes for the grid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Follows {
    /// Nothing is there.
    #[default]
    Nothing,
    /// The utility.
    Utility,
    /// The generator.
    Generator,
    /// The battery.
    Battery,
}

/// What solar and battery do by themselves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SourceEvent {
    /// The solar inverter joins what it takes for the grid.
    SolarJoined {
        /// What that is.
        grid: Follows,
    },
    /// The solar inverter leaves what it followed.
    SolarLeft {
        /// Volts at its terminals.
        volts: f64,
        /// Hertz at its terminals.
        hz: f64,
    },
    /// The solar inverter pushes power back into the generator.
    GeneratorPushed {
        /// Watts that the generator gets.
        watts: f64,
    },
    /// The battery opens its transfer to the utility and feeds its panel.
    BatteryTook,
    /// The battery gives its panel back to the side of the utility.
    BatteryGaveBack,
    /// The battery's inverter is asked for too much and shuts off.
    BatteryOverloaded {
        /// Watts it was asked for.
        watts: f64,
    },
    /// The battery is empty and shuts off.
    BatteryEmpty,
}

/// How the solar inverter stands.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SolarCondition {
    /// Its timers.
    pub watch: Watch,
    /// When it joined the grid last, while it is there.
    pub in_service_since: Option<DrillTime>,
    /// What it takes for the grid.
    pub follows: Follows,
    /// Watts that it pushes.
    pub watts: f64,
    /// Whether it pushes power back into the generator.
    pub pushes_back: bool,
}

/// How the battery stands.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct BatteryCondition {
    /// Watt-hours left.
    pub energy_wh: f64,
    /// Whether its inverter makes the grid of its panel.
    pub carries: bool,
    /// Its timers on the side of the utility.
    pub watch: Watch,
    /// Since when that side is bad while its panel hangs on it.
    pub lost_since: Option<DrillTime>,
    /// How near its inverter is to shutting off, 1 where it does.
    pub overload: f64,
    /// Whether its frequency is raised, because it is full.
    pub raised: bool,
    /// Whether it has shut off and waits for its switch to be turned off and on.
    pub shut: bool,
}

/// Watts that don't count as a change of what the inverter pushes.
const GRAIN_W: f64 = 0.5;
/// Grain of a computed crossing of energy, watt-hours.
const GRAIN_WH: f64 = 1e-6;
/// Seconds in which the battery's inverter forgets an overload: common practice.
const OVERLOAD_FORGOTTEN_S: f64 = 60.0;
/// Volts of a dead line to a source that looks at it.
const DEAD: Grid = Grid {
    v_pu: 0.0,
    hz: 60.0,
};
const UTILITY: PositionId = PositionId(0);
const OFF: PositionId = PositionId(1);
const OTHER: PositionId = PositionId(2);
const ON: PositionId = PositionId(1);

impl BatteryCondition {
    /// As a drill begins.
    pub(super) fn begin(site: &Site) -> Self {
        let energy_wh = |b: &Battery| b.charged_share * b.device().capacity_wh;
        Self {
            energy_wh: site.battery.as_ref().map_or(0.0, energy_wh),
            ..Self::default()
        }
    }
}

impl Conditions {
    /// Lets the battery's energy and its overload drift.
    pub(super) fn drift_battery(&mut self, site: &Site, readings: &Readings, seconds: f64) {
        let Some(battery) = site.battery.as_ref().map(Battery::device) else {
            return;
        };
        let condition = &mut self.battery;
        let reading = readings.battery;
        let watts = reading.watts - reading.charge_w;
        condition.energy_wh = battery.energy_after(condition.energy_wh, watts, seconds);
        match battery
            .seconds_to_shut_off(reading.asked_w)
            .filter(|_| condition.carries)
        {
            Some(shut_s) => condition.overload += seconds / shut_s,
            None => {
                condition.overload = (condition.overload - seconds / OVERLOAD_FORGOTTEN_S).max(0.0);
            }
        }
    }
}

impl Drill {
    /// Lets solar and battery look at what is at their terminals; says whether something electrical changed.
    pub(super) fn follow_second_sources(&mut self) -> bool {
        let site = Arc::clone(&self.scenario().site);
        let battery = self.follow_battery(&site);
        battery || self.follow_solar(&site)
    }

    /// When solar or battery do something by themselves, if everything stays as it is.
    pub(super) fn second_source_due(&self) -> Option<DrillTime> {
        let due = [self.solar_due(), self.battery_due()];
        due.into_iter().flatten().min()
    }

    /// Does what is due; says whether something electrical changed.
    pub(super) fn fire_second_sources(&mut self) -> bool {
        let site = Arc::clone(&self.scenario().site);
        let solar = self.fire_solar(&site);
        let battery = self.fire_battery(&site);
        solar || battery
    }

    /// Brings both into the state in which a drill begins: on the utility for a long time if it is there.
    pub(super) fn begin_second_sources(&mut self) {
        let site = Arc::clone(&self.scenario().site);
        let at = self.committed_at();
        if site.solar.is_some() && self.solar_sees(&site).1 == Follows::Utility {
            self.conditions.solar.in_service_since = Some(at);
        }
        for _ in 0..2 {
            self.follow_second_sources();
            self.read(0.0);
        }
    }

    /// Watts that the battery charges with now.
    pub(super) fn charge_w(&self) -> f64 {
        let site = self.site();
        let (Some(battery), Some(transfer)) = (&site.battery, battery_transfer(site)) else {
            return 0.0;
        };
        let device = battery.device();
        let condition = &self.conditions.battery;
        let room = condition.energy_wh < device.raising_wh(condition.raised);
        let hangs = self.positions.get(transfer.handle) == UTILITY;
        let on = self.positions.get(battery.switch) == ON && !condition.shut;
        let good = condition.watch.fit_since().is_some();
        if room && hangs && on && good {
            device.charge_w
        } else {
            0.0
        }
    }

    /// What the inverter has at its terminals, and what that is.
    fn solar_sees(&self, site: &Site) -> (Grid, Follows) {
        let reading = self.readings().point("solar-terminals");
        let Some(solar) = &site.solar else {
            return (DEAD, Follows::Nothing);
        };
        let v_pu = reading.volts_across / solar.inverter().rated_v;
        let (hz, follows) = if reading.fed.utility {
            (60.0, Follows::Utility)
        } else if reading.fed.generator {
            (self.generator_hz(), Follows::Generator)
        } else if reading.fed.battery {
            (self.battery_hz(site), Follows::Battery)
        } else {
            return (DEAD, Follows::Nothing);
        };
        (Grid { v_pu, hz }, follows)
    }

    /// Frequency of the generator under what it carries now, hertz.
    fn generator_hz(&self) -> f64 {
        let spec = &self.site().generator.spec;
        spec.frequency_hz(self.readings().generator.watts)
    }

    fn battery_hz(&self, site: &Site) -> f64 {
        let device = site.battery.as_ref().map(Battery::device);
        device.map_or(60.0, |d| d.hz(self.conditions.battery.raised))
    }

    /// Watts that the inverter pushes now, and what a generator does with them.
    fn solar_shares(&self, site: &Site) -> (f64, Option<Shared>) {
        let Some(solar) = &site.solar else {
            return (0.0, None);
        };
        let condition = &self.conditions.solar;
        let Some(since) = condition.in_service_since else {
            return (0.0, None);
        };
        let inverter = solar.inverter();
        let in_service_s = self.committed_at().since(since).seconds();
        // At the start of a drill it has been there all day.
        let in_service_s = if since == DrillTime::ZERO {
            f64::MAX
        } else {
            in_service_s
        };
        match condition.follows {
            Follows::Nothing => (0.0, None),
            Follows::Utility => (inverter.output_w(solar.watts, in_service_s, 60.0), None),
            Follows::Battery => {
                let hz = self.battery_hz(site);
                (inverter.output_w(solar.watts, in_service_s, hz), None)
            }
            Follows::Generator => {
                let speed = Speed::of(&site.generator.spec);
                let load_w = self.readings().generator.watts + condition.watts;
                let shared = share(speed, &inverter, load_w, solar.watts, in_service_s);
                (shared.solar_w, Some(shared))
            }
        }
    }

    fn follow_solar(&mut self, site: &Site) -> bool {
        let Some(solar) = &site.solar else {
            return false;
        };
        let at = self.committed_at();
        let (grid, follows) = self.solar_sees(site);
        let condition = &mut self.conditions.solar;
        condition.watch.see(solar.inverter().profile, grid, at);
        condition.follows = follows;
        let (watts, shared) = self.solar_shares(site);
        if (watts - self.conditions.solar.watts).abs() > GRAIN_W {
            self.conditions.solar.watts = watts;
            return true;
        }
        let pushed = shared.filter(|s| s.set != Pushed::Delivers);
        let before = self.conditions.solar.pushes_back;
        self.conditions.solar.pushes_back = pushed.is_some();
        match pushed {
            Some(shared) if !before => self.pushed_back(&shared),
            _ => false,
        }
    }

    /// The inverter pushes more than the house takes into a generator.
    fn pushed_back(&mut self, shared: &Shared) -> bool {
        self.tell_source(SourceEvent::GeneratorPushed {
            watts: -shared.set_w,
        });
        if shared.set == Pushed::ShutsOff {
            self.conditions.engine.broken = true;
            self.stop_engine();
            self.happen(Event::GeneratorBroken);
            return true;
        }
        false
    }

    fn solar_due(&self) -> Option<DrillTime> {
        let inverter = self.site().solar.as_ref()?.inverter();
        let condition = &self.conditions.solar;
        let since = condition.in_service_since;
        let acts = condition.watch.next(inverter.profile, since.is_some());
        let stair = since.filter(|s| *s > DrillTime::ZERO).and_then(|since| {
            let now = self.committed_at().since(since).seconds();
            let next = inverter.next_stair_s(now)?;
            Some(since + whole_millis(next))
        });
        let acts = acts.map(|(at, _)| at);
        [acts, stair].into_iter().flatten().min()
    }

    fn fire_solar(&mut self, site: &Site) -> bool {
        let Some(inverter) = site.solar.as_ref().map(Solar::inverter) else {
            return false;
        };
        let at = self.committed_at();
        let since = self.conditions.solar.in_service_since;
        let watch = self.conditions.solar.watch;
        let due = watch.next(inverter.profile, since.is_some());
        match due.filter(|(when, _)| *when <= at) {
            Some((_, Due::Return)) => {
                self.conditions.solar.in_service_since = Some(at);
                let grid = self.conditions.solar.follows;
                self.tell_source(SourceEvent::SolarJoined { grid });
                true
            }
            Some((_, Due::Leave(_))) => {
                let (grid, _) = self.solar_sees(site);
                let condition = &mut self.conditions.solar;
                condition.in_service_since = None;
                condition.watts = 0.0;
                condition.pushes_back = false;
                condition.watch.begin_waiting();
                self.tell_source(SourceEvent::SolarLeft {
                    volts: grid.v_pu * inverter.rated_v,
                    hz: grid.hz,
                });
                true
            }
            None => (self.solar_shares(site).0 - self.conditions.solar.watts).abs() > GRAIN_W,
        }
    }

    /// What the battery sees on the side of the utility.
    fn battery_sees(&self, site: &Site) -> Grid {
        let (Some(battery), Some(transfer)) = (&site.battery, battery_transfer(site)) else {
            return DEAD;
        };
        let open = transfer
            .feeder
            .is_some_and(|breaker| self.positions.get(breaker) != ON);
        let reading = self.readings().point("bus");
        if open || !reading.fed.any() {
            return DEAD;
        }
        let hz = if reading.fed.utility {
            60.0
        } else {
            self.generator_hz()
        };
        Grid {
            v_pu: reading.volts_across / battery.device().rated_v,
            hz,
        }
    }

    fn follow_battery(&mut self, site: &Site) -> bool {
        let (Some(battery), Some(transfer)) = (&site.battery, battery_transfer(site)) else {
            return false;
        };
        let at = self.committed_at();
        let device = battery.device();
        let seen = self.battery_sees(site);
        let on = self.positions.get(battery.switch) == ON;
        let hangs = self.positions.get(transfer.handle) == UTILITY;
        let condition = &mut self.conditions.battery;
        let charged = condition.watch.fit_since().is_some();
        condition.watch.see(device.profile, seen, at);
        let bad = device.profile.clearing_s(seen).is_some();
        if !on {
            condition.shut = false;
        }
        let able = on && !condition.shut && condition.energy_wh > device.shut_off_wh();
        condition.lost_since = (bad && able && hangs).then(|| condition.lost_since.unwrap_or(at));
        let raised = device.raised(condition.energy_wh + GRAIN_WH, condition.raised);
        let changed = raised != condition.raised;
        condition.raised = raised;
        if condition.carries && !on {
            condition.carries = false;
            self.positions.set(transfer.handle, OFF);
            return true;
        }
        if !condition.carries && !hangs && !bad {
            self.positions.set(transfer.handle, UTILITY);
            return true;
        }
        changed || charged != self.conditions.battery.watch.fit_since().is_some()
    }

    fn battery_due(&self) -> Option<DrillTime> {
        let site = self.site();
        let device = site.battery.as_ref()?.device();
        let condition = &self.conditions.battery;
        let at = self.committed_at();
        let takes = condition
            .lost_since
            .map(|s| s + whole_millis(device.transfer_s));
        let back = condition.watch.next(device.profile, false);
        let back = back.map(|(at, _)| at).filter(|_| condition.carries);
        let reading = self.readings().battery;
        let watts = reading.watts - reading.charge_w;
        let levels = [device.shut_off_wh(), device.raising_wh(condition.raised)];
        let level = levels
            .into_iter()
            .filter_map(|wh| device.seconds_to(wh, condition.energy_wh, watts))
            .map(|s| at + whole_millis(s))
            .min();
        let shut = device
            .seconds_to_shut_off(reading.asked_w)
            .filter(|_| condition.carries)
            .map(|s| at + whole_millis((1.0 - condition.overload).max(0.0) * s));
        [takes, back, level, shut].into_iter().flatten().min()
    }

    fn fire_battery(&mut self, site: &Site) -> bool {
        let (Some(battery), Some(transfer)) = (&site.battery, battery_transfer(site)) else {
            return false;
        };
        let at = self.committed_at();
        let device = battery.device();
        let condition = &mut self.conditions.battery;
        let lost = condition.lost_since;
        if lost.is_some_and(|s| s + whole_millis(device.transfer_s) <= at) {
            condition.lost_since = None;
            condition.carries = true;
            condition.overload = 0.0;
            self.positions.set(transfer.handle, OTHER);
            self.tell_source(SourceEvent::BatteryTook);
            return true;
        }
        if !condition.carries {
            let raised = device.raised(condition.energy_wh + GRAIN_WH, condition.raised);
            return raised != condition.raised;
        }
        let asked_w = self.readings().battery.asked_w;
        let condition = &mut self.conditions.battery;
        if condition.overload >= 1.0 - 1e-9 {
            return self.battery_lets_go(
                transfer.handle,
                SourceEvent::BatteryOverloaded { watts: asked_w },
            );
        }
        if condition.energy_wh <= device.shut_off_wh() + GRAIN_WH {
            return self.battery_lets_go(transfer.handle, SourceEvent::BatteryEmpty);
        }
        let back = condition.watch.next(device.profile, false);
        if back.is_some_and(|(when, _)| when <= at) {
            condition.carries = false;
            condition.overload = 0.0;
            self.positions.set(transfer.handle, UTILITY);
            self.tell_source(SourceEvent::BatteryGaveBack);
            return true;
        }
        let raised = device.raised(condition.energy_wh + GRAIN_WH, condition.raised);
        raised != condition.raised
    }

    fn tell_source(&mut self, event: SourceEvent) {
        self.happen(Event::Source(event));
    }

    /// Its inverter shuts off; its panel is dead until the utility is there again.
    fn battery_lets_go(&mut self, handle: ControlId, event: SourceEvent) -> bool {
        let condition = &mut self.conditions.battery;
        condition.carries = false;
        condition.overload = 0.0;
        condition.shut = true;
        self.positions.set(handle, OFF);
        self.tell_source(event);
        true
    }
}

/// The transfer switch between the utility and the battery.
fn battery_transfer(site: &Site) -> Option<&Transfer> {
    let mut transfers = site.transfers.iter();
    transfers.find(|t| t.other == OtherSide::Battery)
}
