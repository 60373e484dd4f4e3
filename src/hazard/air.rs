//! Carbon monoxide and oxygen in two rooms: an attached garage and the house behind it.
//!
//! Each is one well-mixed volume that changes air with the outdoors and with the other through a door or its cracks, the same amount each way.
//! Wind-free: what the openings let through is handed in; [`doorway_m3_per_h`] gives what a warm and a cold room exchange by themselves.
//! The linear part is solved in closed form; the engine's dependence on oxygen is taken at the middle of steps of a second.
//! Integration error against fourth-order steps of a tenth of a second over four hours: below 1e-6 of the peak (tested).
//! Not covered: corners that gas doesn't reach, more rooms, wind, fans, the weight of warm exhaust.

use crate::hazard::emission::{Engine, Exhaust, FRESH_O2};
use crate::hazard::monoxide::MG_PER_M3_PER_PPM;
use crate::units::portable;

/// The two rooms, cubic meters.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rooms {
    /// The garage.
    pub garage_m3: f64,
    /// The house.
    pub house_m3: f64,
}

/// Air that passes in an hour, cubic meters.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Exchange {
    /// Between the garage and the outdoors.
    pub garage_out: f64,
    /// Between the house and the outdoors.
    pub house_out: f64,
    /// Between the two, each way.
    pub between: f64,
    /// Carbon monoxide that another engine outdoors lets into the house, grams an hour.
    pub drawn_in_g_per_h: f64,
}

/// What is in a room's air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mix {
    /// Carbon monoxide, parts per million.
    pub co_ppm: f64,
    /// Oxygen, share by volume.
    pub o2: f64,
}

impl Mix {
    /// Fresh air.
    pub const FRESH: Self = Self {
        co_ppm: 0.0,
        o2: FRESH_O2,
    };
}

/// The air of both rooms.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    /// In the garage.
    pub garage: Mix,
    /// In the house.
    pub house: Mix,
}

impl Default for Air {
    fn default() -> Self {
        Self::FRESH
    }
}

impl Air {
    /// Fresh air in both.
    pub const FRESH: Self = Self {
        garage: Mix::FRESH,
        house: Mix::FRESH,
    };
}

/// Where an engine's exhaust goes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Outlet {
    /// Into the garage, all of it; the engine breathes the garage's air.
    Garage,
    /// Into the house itself, as from a basement; the engine breathes the house's air.
    House,
    /// Outdoors, with this share of it drawn into the house; the engine breathes fresh air.
    Outdoors(f64),
}

/// The air after `seconds`, with an engine running or none.
///
/// Steps of a second from the start and a last shorter one, so that cutting a stretch at a whole second changes no bit.
pub fn after(
    air: Air,
    rooms: Rooms,
    exchange: Exchange,
    engine: Option<(Engine, Outlet)>,
    seconds: f64,
) -> Air {
    let mut now = air;
    let mut left = seconds;
    while left > 0.0 {
        let step_s = left.min(STEP_S);
        now = step(now, rooms, exchange, engine, step_s);
        left -= step_s;
    }
    now
}

/// Cubic meters an hour, each way, through a door of this size between rooms that differ by `difference_k` kelvins.
///
/// The orifice law of a doorway, (Cd/3) W √(g H³ ΔT/T) with Cd = 0.6 and T = 293 K; from memory, good to a third.
pub fn doorway_m3_per_h(width_m: f64, height_m: f64, difference_k: f64) -> f64 {
    let drive = 9.81 * height_m * height_m * height_m * difference_k.abs() / 293.0;
    0.6 / 3.0 * width_m * drive.sqrt() * 3600.0
}

/// The longest step.
const STEP_S: f64 = 1.0;

/// Liters of a mole at 25 °C and one atmosphere, in cubic meters a gram of oxygen.
const M3_PER_G_O2: f64 = 24.45e-3 / 31.998;

/// One step with the engine taken at its middle.
fn step(
    air: Air,
    rooms: Rooms,
    exchange: Exchange,
    engine: Option<(Engine, Outlet)>,
    seconds: f64,
) -> Air {
    let flow = Flow::new(rooms, exchange);
    let Some((engine, outlet)) = engine else {
        return flow.pass(air, Exhaust::default(), Outlet::Garage, seconds);
    };
    let exhaust = |air: &Air| match outlet {
        Outlet::Garage => engine.exhaust(air.garage.o2),
        Outlet::House => engine.exhaust(air.house.o2),
        Outlet::Outdoors(_) => engine.exhaust(FRESH_O2),
    };
    let middle = flow.pass(air, exhaust(&air), outlet, seconds / 2.0);
    flow.pass(air, exhaust(&middle), outlet, seconds)
}

/// How two rooms exchange: x' = A x + s for the excess of a gas over the outdoors.
struct Flow {
    rooms: Rooms,
    /// Rates a second: out of the garage, into it from the house, into the house from it, out of the house.
    rate: [f64; 4],
    /// What another engine adds to the house, parts per million a second.
    drawn_in_ppm_per_s: f64,
}

impl Flow {
    fn new(rooms: Rooms, exchange: Exchange) -> Self {
        let between = exchange.between / 3600.0;
        let out = (
            exchange.garage_out / 3600.0 + between,
            exchange.house_out / 3600.0 + between,
        );
        let drawn_in = exchange.drawn_in_g_per_h * 1000.0 / MG_PER_M3_PER_PPM / 3600.0;
        Self {
            rooms,
            drawn_in_ppm_per_s: drawn_in / rooms.house_m3,
            rate: [
                -out.0 / rooms.garage_m3,
                between / rooms.garage_m3,
                between / rooms.house_m3,
                -out.1 / rooms.house_m3,
            ],
        }
    }

    fn pass(&self, air: Air, exhaust: Exhaust, outlet: Outlet, seconds: f64) -> Air {
        let ppm_m3 = exhaust.co_g_per_h * 1000.0 / MG_PER_M3_PER_PPM / 3600.0;
        let o2_m3 = -exhaust.o2_g_per_h * M3_PER_G_O2 / 3600.0;
        let (garage_m3, house_m3) = (self.rooms.garage_m3, self.rooms.house_m3);
        let (co, o2) = match outlet {
            Outlet::Garage => ((ppm_m3 / garage_m3, 0.0), (o2_m3 / garage_m3, 0.0)),
            Outlet::House => ((0.0, ppm_m3 / house_m3), (0.0, o2_m3 / house_m3)),
            Outlet::Outdoors(share) => ((0.0, share * ppm_m3 / house_m3), (0.0, 0.0)),
        };
        let co = (co.0, co.1 + self.drawn_in_ppm_per_s);
        let co = self.solve((air.garage.co_ppm, air.house.co_ppm), co, seconds);
        let missing = (air.garage.o2 - FRESH_O2, air.house.o2 - FRESH_O2);
        let missing = self.solve(missing, o2, seconds);
        Air {
            garage: Mix {
                co_ppm: co.0,
                o2: FRESH_O2 + missing.0,
            },
            house: Mix {
                co_ppm: co.1,
                o2: FRESH_O2 + missing.1,
            },
        }
    }

    /// x + (∫ e^(A t) dt) (A x + s), by the two eigenvalues of A, which are real.
    fn solve(&self, x: (f64, f64), source: (f64, f64), seconds: f64) -> (f64, f64) {
        let [a, b, c, d] = self.rate;
        let slope = (a * x.0 + b * x.1 + source.0, c * x.0 + d * x.1 + source.1);
        let half = (a - d) / 2.0;
        let root = (half * half + b * c).sqrt();
        let (fast, slow) = (f64::midpoint(a, d) - root, f64::midpoint(a, d) + root);
        let gain = |rate: f64| portable::first_order(0.0, 1.0, -rate, seconds);
        let (fast_gain, slow_gain) = (gain(fast), gain(slow));
        // f(A) = f(slow) + (A - slow) (f(slow) - f(fast)) / (slow - fast).
        let tilt = if root > 0.0 {
            (slow_gain - fast_gain) / (slow - fast)
        } else {
            0.0
        };
        let turned = (
            (a - slow) * slope.0 + b * slope.1,
            c * slope.0 + (d - slow) * slope.1,
        );
        (
            x.0 + slow_gain * slope.0 + tilt * turned.0,
            x.1 + slow_gain * slope.1 + tilt * turned.1,
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::hazard::emission::Make;

    const ROOMS: Rooms = Rooms {
        garage_m3: 90.0,
        house_m3: 300.0,
    };

    fn exchange(garage: f64, house: f64, between: f64) -> Exchange {
        Exchange {
            garage_out: garage,
            house_out: house,
            between,
            drawn_in_g_per_h: 0.0,
        }
    }

    fn indoors() -> (Engine, Outlet) {
        (Engine::gasoline(Make::Stock, 0.85, 0.85), Outlet::Garage)
    }

    /// Runge and Kutta's fourth-order steps of a tenth of a second on the equations as they are written in words.
    fn reference(exchange: Exchange, seconds: i32) -> [f64; 4] {
        let engine = Engine::gasoline(Make::Stock, 0.85, 0.85);
        let slope = |x: [f64; 4]| {
            let exhaust = engine.exhaust(x[2]);
            let out = |gas: f64, fresh: f64, m3: f64| (fresh - gas) * m3 / 3600.0;
            let between = |here: f64, there: f64| (there - here) * exchange.between / 3600.0;
            let co = exhaust.co_g_per_h * 1000.0 / MG_PER_M3_PER_PPM / 3600.0;
            let o2 = exhaust.o2_g_per_h * M3_PER_G_O2 / 3600.0;
            let (g, h) = (exchange.garage_out, exchange.house_out);
            [
                (out(x[0], 0.0, g) + between(x[0], x[1]) + co) / ROOMS.garage_m3,
                (out(x[1], 0.0, h) + between(x[1], x[0])) / ROOMS.house_m3,
                (out(x[2], FRESH_O2, g) + between(x[2], x[3]) - o2) / ROOMS.garage_m3,
                (out(x[3], FRESH_O2, h) + between(x[3], x[2])) / ROOMS.house_m3,
            ]
        };
        let dt = 0.1;
        let moved = |x: [f64; 4], k: [f64; 4], by: f64| {
            [
                x[0] + k[0] * by,
                x[1] + k[1] * by,
                x[2] + k[2] * by,
                x[3] + k[3] * by,
            ]
        };
        let mut x = [0.0, 0.0, FRESH_O2, FRESH_O2];
        for _ in 0..seconds * 10 {
            let k1 = slope(x);
            let k2 = slope(moved(x, k1, dt / 2.0));
            let k3 = slope(moved(x, k2, dt / 2.0));
            let k4 = slope(moved(x, k3, dt));
            for (k, weight) in [(k1, 1.0), (k2, 2.0), (k3, 2.0), (k4, 1.0)] {
                x = moved(x, k, dt / 6.0 * weight);
            }
        }
        x
    }

    #[test]
    fn steps_of_a_second_agree_with_a_fine_reference_over_four_hours() {
        for flows in [exchange(60.0, 150.0, 25.0), exchange(20.0, 90.0, 600.0)] {
            let fine = reference(flows, 14_400);
            let ours = after(Air::FRESH, ROOMS, flows, Some(indoors()), 14_400.0);
            let pairs = [
                (ours.garage.co_ppm, fine[0]),
                (ours.house.co_ppm, fine[1]),
                (ours.garage.o2, fine[2]),
                (ours.house.o2, fine[3]),
            ];
            for (ours, fine) in pairs {
                assert!(
                    (ours / fine - 1.0).abs() < 1e-6,
                    "{flows:?}: {ours}, {fine}"
                );
            }
        }
    }

    #[test]
    fn a_stretch_cut_at_whole_seconds_has_the_same_bits() {
        let flows = exchange(60.0, 150.0, 25.0);
        let whole = after(Air::FRESH, ROOMS, flows, Some(indoors()), 1800.0);
        let part = after(Air::FRESH, ROOMS, flows, Some(indoors()), 731.0);
        assert_eq!(after(part, ROOMS, flows, Some(indoors()), 1069.0), whole);
    }

    #[test]
    fn one_open_room_settles_where_the_air_carries_off_what_is_let_in() {
        // 25 g/h of gas into 150 m³/h of fresh air, nothing from the garage.
        let engine = Engine::gasoline(Make::Stock, 0.85, 0.85);
        let outside = Some((engine, Outlet::Outdoors(0.05)));
        let air = after(
            Air::FRESH,
            ROOMS,
            exchange(10.0, 150.0, 0.0),
            outside,
            400_000.0,
        );
        let settled = 25_000.0 / 150.0 / MG_PER_M3_PER_PPM;
        assert!((air.house.co_ppm / settled - 1.0).abs() < 1e-9, "{air:?}");
        assert_eq!(air.garage, Mix::FRESH);
    }

    #[test]
    fn gas_drawn_in_from_elsewhere_settles_like_the_same_share_of_an_own_engine() {
        let engine = Engine::gasoline(Make::Stock, 0.85, 0.85);
        let own = Some((engine, Outlet::Outdoors(0.05)));
        let aired = exchange(10.0, 150.0, 0.0);
        let drawn = Exchange {
            drawn_in_g_per_h: 0.05 * engine.exhaust(FRESH_O2).co_g_per_h,
            ..aired
        };
        let ours = after(Air::FRESH, ROOMS, aired, own, 5000.0).house.co_ppm;
        let theirs = after(Air::FRESH, ROOMS, drawn, None, 5000.0).house.co_ppm;
        assert!((ours / theirs - 1.0).abs() < 1e-12, "{ours}, {theirs} ppm");
    }

    #[test]
    fn gas_is_neither_made_nor_lost_between_closed_rooms() {
        let start = Air {
            garage: Mix {
                co_ppm: 5000.0,
                o2: 0.18,
            },
            house: Mix::FRESH,
        };
        let amount =
            |air: &Air| air.garage.co_ppm * ROOMS.garage_m3 + air.house.co_ppm * ROOMS.house_m3;
        let end = after(start, ROOMS, exchange(0.0, 0.0, 600.0), None, 7200.0);
        assert!(
            (amount(&end) / amount(&start) - 1.0).abs() < 1e-10,
            "{end:?}"
        );
        assert!(
            (end.garage.co_ppm / end.house.co_ppm - 1.0).abs() < 1e-6,
            "{end:?}"
        );
    }

    #[test]
    fn the_worst_garage_is_shut_with_its_house_door_open_and_the_best_is_the_other_way() {
        // As the tests of NIST in a house with an attached garage found.
        let peak = |garage, between| {
            let flows = exchange(garage, 150.0, between);
            after(Air::FRESH, ROOMS, flows, Some(indoors()), 7200.0)
                .house
                .co_ppm
        };
        let (shut, open) = (60.0, 3000.0);
        let (cracks, door) = (25.0, 600.0);
        let order = [peak(open, cracks), peak(shut, cracks), peak(shut, door)];
        assert!(order.is_sorted(), "{order:?} ppm");
        assert!(order[2] > 10.0 * order[0], "{order:?} ppm");
    }

    #[test]
    fn a_shut_garage_starves_its_engine_and_never_runs_out_of_oxygen() {
        let flows = exchange(20.0, 150.0, 25.0);
        let mut air = Air::FRESH;
        let mut most = 0.0_f64;
        for _ in 0..240 {
            air = after(air, ROOMS, flows, Some(indoors()), 60.0);
            assert!(
                air.garage.o2 > 0.14 && air.house.o2 > air.garage.o2,
                "{air:?}"
            );
            most = most.max(air.garage.co_ppm);
        }
        assert!(most > 10_000.0, "{most} ppm");
    }
}
