//! Gasoline that is spilled or poured: whether it can catch fire, and how much air it can make burnable.
//!
//! Gasoline gives off burnable vapor at any temperature that a yard has; what it needs is a spark, a flame or a surface hot enough.
//! Figures are ranges over grades, so a danger is judged by the end that is worse.
//! A hot surface in the open must be well above the temperature of ignition in a closed flask; that margin isn't counted on here.
//! Vapor in a room is taken as mixed into its lowest part, because it is heavier than air; how fast a pool dries isn't modeled, all of it is counted.
//! Not covered: diesel, propane, static sparks, how a fire spreads.

/// Gasoline begins to give off burnable vapor at this temperature, °C: -50 °F (fire service reference, checked; -45 °F in others).
pub const FLASH_POINT_C: f64 = (-50.0 - 32.0) / 1.8;

/// The lowest temperature of a surface that may light it, °C: 444 °F for the grade that lights first (fire service reference, checked; up to 853 °F for others).
pub const LEAST_IGNITION_C: f64 = (444.0 - 32.0) / 1.8;

/// Vapor in air that burns, percent by volume: from, to.
/// 1.2 from a fire service reference (checked; 1.4 in most), 7.6 from the same.
pub const BURNS_PCT: (f64, f64) = (1.2, 7.6);

/// Weight of gasoline's vapor over that of air at the least: fire service reference, checked.
pub const VAPOR_DENSITY: f64 = 2.48;

/// What is near when fuel is poured.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Pour {
    /// Surface of the muffler, °C.
    pub muffler_c: f64,
    /// Whether the engine runs.
    pub running: bool,
    /// Whether a pilot light or a burner is in the same room.
    pub flame: bool,
}

/// What lights a spill.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Igniter {
    /// Nothing near can.
    Nothing,
    /// A surface at or above the lowest ignition temperature.
    HotSurface,
    /// The sparks and the exhaust of an engine that runs.
    Engine,
    /// A flame in the room: vapor creeps along the floor to it.
    Flame,
}

/// What lights gasoline spilled while pouring, if anything near can.
pub fn igniter(pour: &Pour) -> Igniter {
    if pour.flame {
        Igniter::Flame
    } else if pour.running {
        Igniter::Engine
    } else if pour.muffler_c >= LEAST_IGNITION_C {
        Igniter::HotSurface
    } else {
        Igniter::Nothing
    }
}

/// Grams of vapor from filling `gallons` into a tank without recovery, spills apart: what the liquid pushes out.
///
/// 1 320 mg for each liter: EPA AP-42, section 5.2, filling of vehicle tanks; from memory.
pub fn displaced_g(gallons: f64) -> f64 {
    gallons * L_PER_GAL * 1.320
}

/// Grams that are spilled in such a filling as a rule: 80 mg for each liter, from the same table.
pub fn spilled_g(gallons: f64) -> f64 {
    gallons * L_PER_GAL * 0.080
}

/// Cubic meters of air that so many grams of vapor make just burnable.
pub fn burnable_m3(grams: f64) -> f64 {
    let vapor_m3 = grams / MOLAR_G * 24.45e-3;
    vapor_m3 / (BURNS_PCT.0 / 100.0)
}

/// Share of the least burnable mixture that so many grams make in the lowest 30 cm of a room with this floor: 1 burns.
pub fn share_of_burnable(grams: f64, floor_m2: f64) -> f64 {
    burnable_m3(grams) / (floor_m2 * LOWEST_M)
}

/// Liters of a gallon.
const L_PER_GAL: f64 = 3.785_411_784;

/// Grams of a mole of gasoline's vapor: its density times that of air.
const MOLAR_G: f64 = VAPOR_DENSITY * 28.96;

/// Height in which vapor lies before it mixes, meters: assumption.
const LOWEST_M: f64 = 0.3;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gasoline_gives_off_burnable_vapor_on_the_coldest_night() {
        const { assert!(FLASH_POINT_C < -40.0 && LEAST_IGNITION_C > 200.0) };
    }

    #[test]
    fn a_cold_stopped_engine_outdoors_lights_nothing_and_each_other_state_does() {
        let cold = Pour {
            muffler_c: 20.0,
            ..Pour::default()
        };
        assert_eq!(igniter(&cold), Igniter::Nothing);
        let hot = Pour {
            muffler_c: 350.0,
            ..cold
        };
        assert_eq!(igniter(&hot), Igniter::HotSurface);
        let runs = Pour {
            running: true,
            ..hot
        };
        assert_eq!(igniter(&runs), Igniter::Engine);
        let pilot = Pour {
            flame: true,
            ..cold
        };
        assert_eq!(igniter(&pilot), Igniter::Flame);
    }

    #[test]
    fn a_cup_of_gasoline_can_make_a_whole_garage_floor_burnable() {
        // A U.S. cup, 237 mL of 0.74 g each, on the floor of a garage of 36 m².
        let share = share_of_burnable(175.0, 36.0);
        assert!((0.4..1.0).contains(&share), "{share}");
        assert!(share_of_burnable(2.7 * 175.0, 36.0) > 1.0);
    }

    #[test]
    fn a_careful_filling_spills_little_and_pushes_out_more() {
        assert!(spilled_g(5.0) < displaced_g(5.0));
        let indoors = share_of_burnable(spilled_g(5.0) + displaced_g(5.0), 36.0);
        assert!(indoors < 0.25, "{indoors} of what burns");
    }
}
