//! Cords in a drill: how warm each one and its plug get, what that does to them, and what they do to the circuit.
//!
//! Temperatures follow `apparatus::cord`, `cord_damage` and `connection` in closed form for the amps of the stretch; doses count its middle temperature.
//! The circuit is solved anew when a cord is more than 5 K from the temperature it was solved at, at the clock's fixed instants only.
//! Integration error of that step: below 0.1 K in the cord against a fine integration of cord and load together, and 0.2 V at its end, which the 5 K themselves are worth (tested: 0.06 K and 0.05 V for a heater on 100 ft of 16 AWG).
//! Assumption: conductors that meet through charred insulation set fire to what lies against the cord; without anything there, they only short.
//! Above 400 °C a cord is held there: by then it burns.
//! Not covered: what the fire does next, a load's plug in the cord's own end.

use std::sync::Arc;

use crate::apparatus::connection::SCORCHED_C;
use crate::apparatus::cord_damage::Damage;
use crate::apparatus::cord_lay::Lay;
use crate::apparatus::insulation::{charred_after, ignition_after};
use crate::site::{Cord, CordState, Positions, Readings, Rest, Site};

use super::conditions::{AMBIENT_C, Conditions};
use super::engine::Drill;
use super::event::Event;

/// Kelvin from the temperature a cord was solved at that make it be solved anew.
const SOLVED_WITHIN_K: f64 = 5.0;
/// Temperature at which a cord is held, °C.
const MOST_C: f64 = 400.0;

/// What drifts in a cord.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CordCondition {
    /// Conductor temperature along it, °C.
    pub celsius: f64,
    /// Rise of a damaged place over that, kelvin.
    pub spot_k: f64,
    /// Temperature of its plug, °C.
    pub plug_c: f64,
    /// How far its insulation has charred, 1 is through.
    pub charred: f64,
    /// How near what lies against it has come to fire, 1 is fire.
    pub kindled: f64,
    /// Temperature at which the circuit knows it, °C.
    pub solved_c: f64,
    /// What has become of it.
    pub harm: CordHarm,
}

/// What has become of a cord; nothing of it heals.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct CordHarm {
    /// Its insulation has softened.
    pub soft: bool,
    /// Its plug has scorched.
    pub scorched: bool,
    /// Its conductors have met.
    pub fate: Fate,
}

/// How far it has gone with a cord.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum Fate {
    /// Its conductors are apart.
    #[default]
    Whole,
    /// Its conductors have met.
    Shorted,
    /// What lies against it burns; its conductors have met.
    Burning,
}

impl CordCondition {
    /// A cord that has lain in air of `celsius` °C.
    pub fn rested(celsius: f64) -> Self {
        Self {
            celsius,
            spot_k: 0.0,
            plug_c: celsius,
            charred: 0.0,
            kindled: 0.0,
            solved_c: celsius,
            harm: CordHarm::default(),
        }
    }

    /// Its hottest place, °C: along it, or where it is damaged.
    pub fn hottest_c(&self) -> f64 {
        self.celsius + self.spot_k
    }

    /// What the circuit has to know of it.
    pub fn state(&self) -> CordState {
        CordState {
            celsius: self.solved_c,
            spot_k: self.spot_k,
            shorted: self.harm.fate > Fate::Whole,
        }
    }

    /// Whether it has nothing left to give to air of this temperature, °C.
    fn is_rested(&self, air_c: f64) -> bool {
        let near = |t_c: f64| (t_c - air_c).abs() < 1e-9;
        near(self.celsius) && near(self.plug_c) && self.spot_k.abs() < 1e-9
    }

    /// Lets `seconds` pass at `amps`.
    fn drift(
        &mut self,
        cord: &Cord,
        ambient_c: f64,
        (lay, rest): (Lay, Rest),
        amps: f64,
        seconds: f64,
    ) {
        let before = self.hottest_c();
        let air_c = cord.air_c(ambient_c);
        let damage = cord.found.damage;
        self.spot_k = damage
            .spot_after(&cord.make, self.spot_k, amps, self.celsius, seconds)
            .min(MOST_C);
        self.celsius = cord
            .make
            .temperature_after(self.celsius, amps, air_c, lay, seconds)
            .min(MOST_C);
        self.plug_c = cord
            .found
            .plug
            .temperature_after(self.plug_c, amps, ambient_c, seconds)
            .min(MOST_C);
        let middle = f64::midpoint(before, self.hottest_c());
        self.charred = charred_after(self.charred, middle, seconds);
        if rest.touches() {
            self.kindled = ignition_after(self.kindled, middle, seconds);
        }
    }

    /// What becomes of it at this temperature and with these doses.
    fn judged(&self, damage: Damage, rest: Rest) -> CordHarm {
        let hot = self.hottest_c();
        let soft = self.harm.soft || hot >= damage.softens_at_c();
        let met = self.charred >= 1.0 || (soft && damage == Damage::Crushed);
        // Conductors that meet through char burn an arc into what lies against them.
        let arc = self.charred >= 1.0 && rest.touches();
        let fate = if self.kindled >= 1.0 || arc {
            Fate::Burning
        } else if met {
            Fate::Shorted
        } else {
            Fate::Whole
        };
        CordHarm {
            soft,
            scorched: self.harm.scorched || self.plug_c >= SCORCHED_C,
            fate: self.harm.fate.max(fate),
        }
    }

    fn is_solved_off(&self) -> bool {
        (self.celsius - self.solved_c).abs() > SOLVED_WITHIN_K
    }
}

impl Conditions {
    /// A cord's condition; as if it had rested for an index that isn't there.
    pub fn cord(&self, index: usize) -> CordCondition {
        let known = self.cords.get(index).copied();
        known.unwrap_or_else(|| CordCondition::rested(AMBIENT_C))
    }

    pub(super) fn drift_cords(
        &mut self,
        site: &Site,
        positions: &Positions,
        readings: &Readings,
        seconds: f64,
    ) {
        for (index, (cord, condition)) in site.cords.iter().zip(&mut self.cords).enumerate() {
            let lies = (site.lay_of(positions, index), cord.rest(positions));
            let amps = readings.amps_of(&cord.name);
            if amps > 1e-9 || !condition.is_rested(cord.air_c(site.ambient_c)) {
                condition.drift(cord, site.ambient_c, lies, amps, seconds);
            }
        }
    }

    /// What the circuit has to know of every cord.
    pub(super) fn cord_states(&self) -> Vec<CordState> {
        self.cords.iter().map(CordCondition::state).collect()
    }
}

impl Drill {
    /// Tells what has become of cords since; says whether the circuit has to be solved anew.
    pub(super) fn fire_cords(&mut self) -> bool {
        let site = Arc::clone(&self.scenario().site);
        let mut changed = false;
        for (index, cord) in site.cords.iter().enumerate() {
            changed |= self.fire_cord(index, cord);
        }
        if changed {
            self.solve_cords();
        }
        changed
    }

    fn fire_cord(&mut self, index: usize, cord: &Cord) -> bool {
        let now = self.conditions.cord(index);
        let harm = now.judged(cord.found.damage, cord.rest(&self.positions));
        let solve = now.is_solved_off() || harm.fate != now.harm.fate;
        if !solve && harm == now.harm {
            return false;
        }
        if let Some(condition) = self.conditions.cords.get_mut(index) {
            condition.harm = harm;
            if solve {
                condition.solved_c = condition.celsius;
            }
        }
        let celsius = now.hottest_c();
        if harm.soft && !now.harm.soft {
            self.happen(Event::CordSoft {
                cord: index,
                celsius,
            });
        }
        if harm.scorched && !now.harm.scorched {
            self.happen(Event::PlugScorched {
                cord: index,
                celsius: now.plug_c,
            });
        }
        if harm.fate == Fate::Burning && now.harm.fate < Fate::Burning {
            self.happen(Event::CordFire {
                cord: index,
                celsius,
            });
        } else if harm.fate > now.harm.fate {
            self.happen(Event::CordShorted {
                cord: index,
                celsius,
            });
        }
        solve
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::apparatus::connection::{Connection, Contact};
    use crate::apparatus::cord::{Cord as Make, Loaded};
    use crate::apparatus::cord_lay::SUN_K;
    use crate::site::{ControlId, FarEnd, Found, Legs, Spot};

    fn cord(awg: &str, damage: Damage) -> Cord {
        let kind = "SJTW".parse().unwrap();
        Cord {
            name: "thin-cord".to_owned(),
            make: Make::new(kind, awg.parse().unwrap(), 100.0, Loaded::Two).unwrap(),
            legs: Legs::One,
            ties_legs: false,
            grounded: true,
            near: ControlId(0),
            near_spots: vec![Spot::Stowed],
            far: FarEnd::Connector,
            lay: ControlId(1),
            rests: vec![Rest::Coiled, Rest::Flat],
            found: Found {
                damage,
                plug: Connection {
                    rated_a: 15.0,
                    contact: Contact::Sound,
                },
                in_sun: false,
            },
        }
    }

    /// A heater on a cord from 120 V, the cord solved within 5 K as the drill does it; the cord's °C and the heater's volts.
    fn stepped(cord: &Cord, lay: Lay, seconds: u32) -> (f64, f64) {
        let mut now = CordCondition::rested(AMBIENT_C);
        let volts = |c: &CordCondition| solved(cord, c.solved_c);
        for _ in 0..seconds {
            let amps = volts(&now) / HEATER_OHM;
            now.drift(cord, AMBIENT_C, (lay, Rest::Coiled), amps, 1.0);
            if now.is_solved_off() {
                now.solved_c = now.celsius;
            }
        }
        (now.celsius, volts(&now))
    }

    /// The same, cord and heater together, by the classic fourth-order method in steps of 50 ms.
    fn fine(cord: &Cord, lay: Lay, seconds: u32) -> (f64, f64) {
        let dt = 0.05;
        let slope = |t_c: f64| {
            let amps = solved(cord, t_c) / HEATER_OHM;
            let short = 1e-3;
            let after = cord
                .make
                .temperature_after(t_c, amps, AMBIENT_C, lay, short);
            (after - t_c) / short
        };
        let mut t = AMBIENT_C;
        for _ in 0..seconds * 20 {
            let a = slope(t);
            let b = slope(t + a * dt / 2.0);
            let c = slope(t + b * dt / 2.0);
            let d = slope(t + c * dt);
            t += dt / 6.0 * (a + 2.0 * b + 2.0 * c + d);
        }
        (t, solved(cord, t))
    }

    const HEATER_OHM: f64 = 9.6;

    fn solved(cord: &Cord, t_c: f64) -> f64 {
        120.0 * HEATER_OHM / (HEATER_OHM + 2.0 * cord.make.resistance_ohm(t_c))
    }

    #[test]
    fn a_cord_solved_within_five_kelvin_follows_one_that_is_solved_all_along() {
        let thin = cord("16", Damage::Sound);
        for (lay, seconds) in [
            (Lay::Straight, 600),
            (Lay::Straight, 3600),
            (Lay::Coil { turns: 6 }, 900),
        ] {
            let (ours, fine) = (stepped(&thin, lay, seconds), fine(&thin, lay, seconds));
            let (kelvin, volts) = ((ours.0 - fine.0).abs(), (ours.1 - fine.1).abs());
            assert!(kelvin < 0.1, "{lay:?}: {} °C, fine {} °C", ours.0, fine.0);
            assert!(volts < 0.2, "{lay:?}: {} V, fine {} V", ours.1, fine.1);
        }
    }

    #[test]
    fn a_cord_in_the_sun_is_as_much_warmer_as_the_air_counts_warmer() {
        let mut shady = cord("16", Damage::Sound);
        let lies = (Lay::Straight, Rest::Flat);
        let mut after_a_day = |in_sun| {
            shady.found.in_sun = in_sun;
            let mut now = CordCondition::rested(AMBIENT_C);
            now.drift(&shady, AMBIENT_C, lies, 0.0, 86_400.0);
            now.celsius
        };
        let warmer = after_a_day(true) - after_a_day(false);
        assert!((warmer - SUN_K).abs() < 1e-6, "{warmer} K");
    }

    #[test]
    fn drifting_in_parts_ends_where_drifting_at_once_does() {
        let worn = cord("16", Damage::Strands { left: 0.1 });
        let lies = (Lay::Straight, Rest::Flat);
        let mut parts = CordCondition::rested(AMBIENT_C);
        let mut whole = parts;
        for seconds in [0.4, 0.6] {
            parts.drift(&worn, AMBIENT_C, lies, 12.0, seconds);
        }
        whole.drift(&worn, AMBIENT_C, lies, 12.0, 1.0);
        let apart = (parts.hottest_c() - whole.hottest_c()).abs();
        assert!(apart < 1e-3, "{parts:?} and {whole:?}");
        assert!((parts.plug_c - whole.plug_c).abs() < 1e-11);
    }

    /// What becomes of a thin cord under a heater, in order.
    fn fates(rest: Rest, turns: u32) -> Vec<(bool, Fate)> {
        let thin = cord("18", Damage::Sound);
        let mut now = CordCondition::rested(AMBIENT_C);
        let mut order = Vec::new();
        for _ in 0..3 * 3600 {
            now.drift(&thin, AMBIENT_C, (Lay::Coil { turns }, rest), 12.5, 1.0);
            let harm = now.judged(Damage::Sound, rest);
            if harm != now.harm {
                order.push((harm.soft, harm.fate));
            }
            now.harm = harm;
        }
        order
    }

    #[test]
    fn a_coiled_cord_softens_then_burns_and_one_that_touches_nothing_shorts() {
        let soft = (true, Fate::Whole);
        assert_eq!(fates(Rest::Coiled, 12), [soft, (true, Fate::Burning)]);
        assert_eq!(fates(Rest::Flat, 12), [soft, (true, Fate::Shorted)]);
        assert_eq!(
            fates(Rest::Flat, 1),
            [],
            "laid out straight it only gets too warm"
        );
    }

    #[test]
    fn crushed_insulation_lets_the_conductors_meet_as_soon_as_it_softens() {
        let mut now = CordCondition::rested(AMBIENT_C);
        now.celsius = 79.0;
        assert_eq!(now.judged(Damage::Crushed, Rest::Coiled).fate, Fate::Whole);
        now.celsius = 81.0;
        assert_eq!(
            now.judged(Damage::Crushed, Rest::Coiled).fate,
            Fate::Shorted
        );
        assert_eq!(now.judged(Damage::Sound, Rest::Coiled).fate, Fate::Whole);
    }

    #[test]
    fn nothing_that_happened_to_a_cord_heals_as_it_cools() {
        let mut now = CordCondition::rested(AMBIENT_C);
        now.harm = CordHarm {
            soft: true,
            scorched: true,
            fate: Fate::Burning,
        };
        assert_eq!(now.judged(Damage::Sound, Rest::Coiled), now.harm);
    }
}
