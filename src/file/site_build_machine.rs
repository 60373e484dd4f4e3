//! The machine part of a site file: which kind of set it is, its oil, its switches, its controller.
//!
//! What is left out isn't there: a set without a word of its kind is a plain one without idle control.

use serde::Deserialize;

use crate::apparatus::auto_transfer::Controller;
use crate::apparatus::fuel::Fuel;
use crate::apparatus::generator::GeneratorSpec;
use crate::apparatus::standby::Standby;
use crate::apparatus::transfer_timers::{Exerciser, Timers};
use crate::site::{Automatic, ControlId, Kind, Machine, Oil};
use crate::units::DrillTime;

use super::site_build::Build;
use super::site_file::{GeneratorFile, TransferFile};

/// Air in which a standby set is rated, °C: the mild evening of the drills.
const AIR_C: f64 = 15.0;

/// Which kind of set it is.
#[derive(Debug, Clone, Copy, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) enum KindFile {
    /// Engine and wound machine.
    #[default]
    Conventional,
    /// Electronics make the wave.
    Inverter,
    /// Bolted down, on gas; its plate is for propane at sea level.
    Standby { fuel: FuelFile, altitude_ft: f64 },
}

/// What a standby set burns.
#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum FuelFile {
    /// Natural gas from the street.
    NaturalGas,
    /// Propane from a tank.
    Propane,
}

/// The machine's own parts.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct MachineFile {
    /// Hours of running from full oil to low; endless when left out.
    #[serde(default)]
    oil_hours: Option<f64>,
    /// Whether the engine can slow down while little draws.
    #[serde(default)]
    idle_control: bool,
    /// Whether a second set of the same kind and the kit for the two are there.
    #[serde(default)]
    second_set: bool,
    /// What starts it without a hand.
    #[serde(default)]
    controller: Option<ControllerFile>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct ControllerFile {
    /// The transfer switch it works, by name.
    transfer: String,
    /// How long it waits for each step.
    times: TimesFile,
    /// Seconds that the load stays on the set after the utility is back; the table's when left out.
    #[serde(default)]
    retransfer_delay_seconds: Option<u64>,
    /// When it exercises.
    #[serde(default)]
    exercise: Option<ExerciseFile>,
}

/// A table of times.
#[derive(Debug, Clone, Copy, Deserialize)]
enum TimesFile {
    /// A small home controller.
    Home,
    /// A supply under NFPA 110.
    Nfpa110,
}

#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
struct ExerciseFile {
    /// The minute of the drill in which this week's run begins.
    minute: u64,
    /// How long it runs, minutes.
    lasts_minutes: u64,
}

impl MachineFile {
    /// Whether something starts the set without a hand.
    pub(super) fn is_automatic(&self) -> bool {
        self.controller.is_some()
    }
}

impl Build<'_> {
    /// What its plate says.
    pub(super) fn generator_spec(file: &GeneratorFile) -> GeneratorSpec {
        let base = match file.kind {
            KindFile::Conventional => {
                GeneratorSpec::conventional(file.rated_watts, file.surge_watts)
            }
            KindFile::Inverter => GeneratorSpec::inverter(file.rated_watts, file.surge_watts),
            KindFile::Standby { fuel, altitude_ft } => {
                let fuel = match fuel {
                    FuelFile::NaturalGas => Fuel::NaturalGas,
                    FuelFile::Propane => Fuel::Propane,
                };
                let standby = Standby::usual(file.rated_watts, fuel, altitude_ft);
                GeneratorSpec::standby(standby, file.tank_gallons, AIR_C)
            }
        };
        let tank_gal = if base.tank_gal.is_finite() {
            file.tank_gallons
        } else {
            base.tank_gal
        };
        GeneratorSpec {
            main_breaker_a: f64::from(file.output_breaker_amps),
            warmup_s: file.warm_up_seconds,
            cooldown_s: file.cool_down_seconds,
            tank_gal,
            ..base
        }
    }

    /// Its own parts and switches.
    pub(super) fn machine(
        &mut self,
        file: &GeneratorFile,
        transfers: &[TransferFile],
        engine: ControlId,
    ) -> Machine {
        let inverter = matches!(file.kind, KindFile::Inverter);
        let parts = &file.machine;
        let oil_hours = parts
            .oil_hours
            .map(|hours| self.positive(&["machine: (", "oil_hours"], hours));
        let automatic = parts
            .controller
            .as_ref()
            .map(|c| self.automatic(c, transfers, engine));
        let f = &mut self.furnishing;
        let place = "generator";
        let oil = oil_hours.map(|hours| {
            let level = f.add(
                "generator-oil",
                Kind::Switch,
                &["full", "down", "low"],
                place,
                0,
            );
            f.needs((level, 0), engine, &[0], "refused-oil-running");
            for emptier in [1, 2] {
                f.needs((level, emptier), engine, &[], "refused-oil-drain");
            }
            if let Some(automatic) = &automatic {
                f.needs((level, 0), automatic.cover, &[1], "refused-cover-shut");
            }
            Oil { level, hours }
        });
        let idle = parts
            .idle_control
            .then(|| f.add("idle-control", Kind::Switch, &["off", "on"], place, 1));
        let output_switch =
            inverter.then(|| f.add("inverter-output", Kind::Switch, &["on", "off"], place, 0));
        let second = parts.second_set.then(|| {
            let second = f.add(
                "second-set",
                Kind::Switch,
                &["stopped", "running"],
                place,
                0,
            );
            f.needs((second, 1), engine, &[1], "refused-second-alone");
            second
        });
        Machine {
            oil,
            idle,
            output_switch,
            second,
            automatic,
        }
    }

    fn automatic(
        &mut self,
        file: &ControllerFile,
        transfers: &[TransferFile],
        engine: ControlId,
    ) -> Automatic {
        let names: Vec<&str> = transfers.iter().map(|t| t.name.as_str()).collect();
        let transfer = self.find(
            &["controller: (", "transfer"],
            &file.transfer,
            "transfer",
            &names,
        );
        let table = match file.times {
            TimesFile::Home => Timers::HOME,
            TimesFile::Nfpa110 => Timers::NFPA_110,
        };
        let timers = Timers {
            retransfer_delay: file
                .retransfer_delay_seconds
                .map_or(table.retransfer_delay, DrillTime::from_secs),
            ..table
        };
        let exerciser = file.exercise.map(|e| Exerciser {
            first: DrillTime::from_secs(60 * e.minute),
            lasts: DrillTime::from_secs(60 * e.lasts_minutes),
            ..Exerciser::WEEKLY
        });
        let f = &mut self.furnishing;
        let place = "generator";
        let switch = f.add(
            "controller",
            Kind::Switch,
            &["auto", "off", "test"],
            place,
            0,
        );
        let battery = f.add(
            "starter-battery",
            Kind::Disconnect,
            &["connected", "disconnected"],
            place,
            0,
        );
        let cover = f.add(
            "generator-cover",
            Kind::Opening,
            &["shut", "open"],
            place,
            0,
        );
        f.by_the_world(engine);
        f.needs((battery, 1), engine, &[0], "refused-battery-running");
        Automatic {
            switch,
            battery,
            cover,
            transfer,
            controller: Controller { timers, exerciser },
        }
    }
}
