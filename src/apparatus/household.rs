//! What household loads take, as ranges, and what a generator of given watts carries of them.
//!
//! The ranges span the charts of public utilities and a magazine (checked in copies that quote them); no federal table was found.
//! Charts disagree by two to four times, so each load is a range and never one figure; figures known as misprints are left out.
//! Sizing: all running watts together at most 90 % of the rating, all starting watts together at most 150 % (public power district guide, checked).
//! Holds for North American loads of ordinary size; a name plate goes before any chart.
//! Not covered: inverter-driven compressors (little start), instant water heaters, electric vehicles.
//! Accuracy: the range itself.

use std::ops::RangeInclusive;

/// Share of a generator's rating that loads may take while all run.
pub const RUNNING_SHARE: f64 = 0.9;
/// Share of a generator's rating that loads may ask for while all start.
pub const STARTING_SHARE: f64 = 1.5;

/// Household loads that charts list.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Household {
    /// Refrigerator or freezer.
    Refrigerator,
    /// Freezer that doesn't frost.
    Freezer,
    /// Fan of a furnace, 1/4 to 1/2 hp.
    FurnaceFan,
    /// Well pump, 1/2 hp.
    WellPump,
    /// Sump pump, 1/3 hp.
    SumpPump,
    /// Air conditioner of a room, 12 000 Btu/h.
    RoomAirConditioner,
    /// Microwave oven.
    Microwave,
    /// Central air conditioner or air heat pump, 3 tons.
    CentralAirConditioner,
    /// Electric water heater.
    WaterHeater,
    /// Coffee maker.
    CoffeeMaker,
    /// Space or oil heater.
    SpaceHeater,
    /// Clothes washer.
    ClothesWasher,
    /// Opener of a garage door, 1/4 hp.
    GarageDoor,
    /// Lamp of light-emitting diodes.
    LedLamp,
}

/// Watts that charts print.
#[derive(Debug, Clone, PartialEq)]
pub struct ChartWatts {
    /// While it runs.
    pub running: RangeInclusive<f64>,
    /// While it starts, all told; as running for what doesn't start.
    pub starting: RangeInclusive<f64>,
}

impl Household {
    /// What charts print for it.
    pub fn chart_watts(self) -> ChartWatts {
        let (running, starting) = match self {
            Self::Refrigerator => (500.0..=1200.0, 750.0..=2900.0),
            Self::Freezer => (720.0..=720.0, 1890.0..=1890.0),
            Self::FurnaceFan => (600.0..=1100.0, 1600.0..=3225.0),
            Self::WellPump => (1000.0..=1000.0, 1950.0..=3100.0),
            Self::SumpPump => (800.0..=1050.0, 1250.0..=3550.0),
            Self::RoomAirConditioner => (1412.0..=2000.0, 1412.0..=8000.0),
            Self::Microwave => (600.0..=1500.0, 600.0..=1500.0),
            Self::CentralAirConditioner => (5400.0..=5400.0, 7200.0..=7200.0),
            Self::WaterHeater => (3000.0..=4500.0, 3000.0..=4500.0),
            Self::CoffeeMaker => (1200.0..=1750.0, 1200.0..=1750.0),
            Self::SpaceHeater => (1100.0..=1500.0, 1100.0..=1800.0),
            Self::ClothesWasher => (1150.0..=1150.0, 2200.0..=2200.0),
            Self::GarageDoor => (550.0..=550.0, 1000.0..=1000.0),
            Self::LedLamp => (9.0..=15.0, 9.0..=15.0),
        };
        ChartWatts { running, starting }
    }
}

/// A load that a generator is sized for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sized {
    /// Watts while it runs.
    pub running_w: f64,
    /// Watts while it starts, all told; not below the running ones.
    pub starting_w: f64,
}

/// Watts of loads together, while all run.
pub fn running_w(loads: &[Sized]) -> f64 {
    loads.iter().map(|load| load.running_w).sum()
}

/// The most watts of loads that are switched on one after another, the heaviest starter last.
/// All others run by then.
pub fn worst_start_w(loads: &[Sized]) -> f64 {
    let extra = loads.iter().map(|load| load.starting_w - load.running_w);
    running_w(loads) + extra.fold(0.0, f64::max)
}

/// The least rating, watts, that carries these loads by the published rule, even if all start together.
pub fn least_rating_w(loads: &[Sized]) -> f64 {
    let starting: f64 = loads.iter().map(|load| load.starting_w).sum();
    (running_w(loads) / RUNNING_SHARE).max(starting / STARTING_SHARE)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn steady(running_w: f64) -> Sized {
        Sized {
            running_w,
            starting_w: running_w,
        }
    }

    #[test]
    fn nothing_starts_with_less_than_it_runs_with() {
        use Household as H;
        for load in [
            H::Refrigerator,
            H::Freezer,
            H::FurnaceFan,
            H::WellPump,
            H::SumpPump,
            H::RoomAirConditioner,
            H::Microwave,
            H::CentralAirConditioner,
            H::WaterHeater,
            H::CoffeeMaker,
            H::SpaceHeater,
            H::ClothesWasher,
            H::GarageDoor,
            H::LedLamp,
        ] {
            let watts = load.chart_watts();
            assert!(watts.running.start() <= watts.running.end(), "{load:?}");
            assert!(watts.starting.start() >= watts.running.start(), "{load:?}");
            assert!(watts.starting.end() >= watts.running.end(), "{load:?}");
        }
    }

    #[test]
    fn the_heaviest_starter_last_is_the_worst_of_any_order() {
        let loads = [
            steady(100.0),
            Sized {
                running_w: 700.0,
                starting_w: 2100.0,
            },
            Sized {
                running_w: 800.0,
                starting_w: 2900.0,
            },
        ];
        let orders = [
            [0, 1, 2],
            [0, 2, 1],
            [1, 0, 2],
            [1, 2, 0],
            [2, 0, 1],
            [2, 1, 0],
        ];
        let peak = |order: [usize; 3]| {
            let mut running = 0.0;
            let mut most = 0.0_f64;
            for load in order.map(|i| loads[i]) {
                most = most.max(running + load.starting_w);
                running += load.running_w;
            }
            most
        };
        let worst = orders.map(peak).into_iter().fold(0.0, f64::max);
        assert!((worst_start_w(&loads) - worst).abs() < 1e-9, "{worst}");
    }

    #[test]
    fn the_rule_asks_for_a_rating_that_both_shares_allow() {
        let loads = [steady(1500.0), steady(3000.0)];
        let rating = least_rating_w(&loads);
        assert!((rating - 5000.0).abs() < 1e-9, "{rating}");
        let starter = Sized {
            running_w: 700.0,
            starting_w: 9000.0,
        };
        assert!((least_rating_w(&[starter]) - 6000.0).abs() < 1e-9);
    }
}
