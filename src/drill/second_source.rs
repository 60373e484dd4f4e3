//! The house's further sources: a solar inverter that follows whatever feeds its bus, and a battery that makes a grid of its own.
//!
//! Both look at volts and hertz at their terminals whenever those change; what they do then is due at a computed instant.
//! What each does is in `sun` and `stored`; this file is how they stand, what they tell, and when the engine asks them.
//! Every timer is an instant, and the battery's energy is a straight line over a stretch with constant readings.
//! Not covered: the up to two seconds in which an inverter left alone holds up an island; its volts there are taken as none.

use std::sync::Arc;

use crate::apparatus::interconnection::{Grid, Watch};
use crate::units::DrillTime;

use super::engine::Drill;
use super::event::Event;

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
    /// Since when it may charge from the side of the utility, while that is good enough.
    pub charges_since: Option<DrillTime>,
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

/// Volts of a dead line to a source that looks at it.
pub(super) const DEAD: Grid = Grid {
    v_pu: 0.0,
    hz: 60.0,
};

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
            let battery = &mut self.conditions.battery;
            battery.charges_since = battery.watch.fit_since();
            self.read(0.0);
        }
    }

    /// Frequency of the generator under what it carries now, hertz.
    pub(super) fn generator_hz(&self) -> f64 {
        let spec = &self.site().generator.spec;
        spec.frequency_hz(self.readings().generator.watts)
    }

    pub(super) fn tell_source(&mut self, event: SourceEvent) {
        self.happen(Event::Source(event));
    }
}
