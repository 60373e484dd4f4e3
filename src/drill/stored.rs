//! The battery in a drill: when it takes its panel and gives it back, what it charges with, when it shuts off.
//!
//! Its energy is a straight line over a stretch with constant readings, so its crossings are computed instants.
//! It takes whatever is good on the side of the utility for the utility, a generator too, and charges from it.
//! It goes back in step, without a gap; taking its panel leaves it dead for the time on its plate.
//! Not covered: a fault behind its inverter.

use crate::apparatus::interconnection::{Grid, Profile};
use crate::site::{Battery, ControlId, OtherSide, PositionId, Readings, Site, Transfer};
use crate::units::DrillTime;

use super::conditions::Conditions;
use super::engine::Drill;
use super::next::whole_millis;
use super::second_source::{BatteryCondition, DEAD, SourceEvent};

/// Grain of a computed crossing of energy, watt-hours.
const GRAIN_WH: f64 = 1e-6;
/// Seconds in which its inverter forgets an overload: common practice.
const OVERLOAD_FORGOTTEN_S: f64 = 60.0;
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

    /// Since when it may charge, at an instant: as long as the side of the utility is fit to come back to, and after a dip once it has been so for the whole delay.
    /// So a charger whose own watts pull a weak set down lets go and stays off, and doesn't come and go.
    fn may_charge(&self, profile: Profile, at: DrillTime) -> Option<DrillTime> {
        let (back, _) = self.watch.next(profile, false)?;
        self.charges_since.or((back <= at).then_some(at))
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
        if room && hangs && on && condition.charges_since.is_some() {
            device.charge_w
        } else {
            0.0
        }
    }

    pub(super) fn battery_hz(&self, site: &Site) -> f64 {
        let device = site.battery.as_ref().map(Battery::device);
        device.map_or(60.0, |d| d.hz(self.conditions.battery.raised))
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

    pub(super) fn follow_battery(&mut self, site: &Site) -> bool {
        let (Some(battery), Some(transfer)) = (&site.battery, battery_transfer(site)) else {
            return false;
        };
        let at = self.committed_at();
        let device = battery.device();
        let seen = self.battery_sees(site);
        let on = self.positions.get(battery.switch) == ON;
        let hangs = self.positions.get(transfer.handle) == UTILITY;
        let condition = &mut self.conditions.battery;
        let charged = condition.charges_since;
        condition.watch.see(device.profile, seen, at);
        let bad = device.profile.clearing_s(seen).is_some();
        if !on {
            condition.shut = false;
        }
        let able = on && !condition.shut && condition.energy_wh > device.shut_off_wh();
        let waits = bad && able && !condition.carries;
        condition.lost_since = waits.then(|| condition.lost_since.unwrap_or(at));
        condition.charges_since = condition.may_charge(device.profile, at);
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
        changed || charged != self.conditions.battery.charges_since
    }

    pub(super) fn battery_due(&self) -> Option<DrillTime> {
        let site = self.site();
        let device = site.battery.as_ref()?.device();
        let condition = &self.conditions.battery;
        let at = self.committed_at();
        let takes = condition
            .lost_since
            .map(|s| s + whole_millis(device.transfer_s));
        let back = condition.watch.next(device.profile, false);
        let back = back
            .map(|(at, _)| at)
            .filter(|_| condition.carries || condition.charges_since.is_none());
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

    pub(super) fn fire_battery(&mut self, site: &Site) -> bool {
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
        let back = condition.watch.next(device.profile, false);
        let comes_back = back.is_some_and(|(when, _)| when <= at);
        if !condition.carries {
            let raised = device.raised(condition.energy_wh + GRAIN_WH, condition.raised);
            return raised != condition.raised || comes_back && condition.charges_since.is_none();
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
        if comes_back {
            condition.carries = false;
            condition.overload = 0.0;
            self.positions.set(transfer.handle, UTILITY);
            self.tell_source(SourceEvent::BatteryGaveBack);
            return true;
        }
        let raised = device.raised(condition.energy_wh + GRAIN_WH, condition.raised);
        raised != condition.raised
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
