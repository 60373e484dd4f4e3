//! Two sources that meet out of step: how hard, at which slip, and what is left of the generator.
//!
//! The solver gives the current at the angle drawn and at half a turn; the impedance between the two follows from the latter.
//! Torque and harm follow from the closed form of `closing`; a set that doesn't fall into step passes every angle, so the worst counts.
//! The other source is the utility, or the set of a neighbor who lends a cord: that one is taken for as stiff in its pace as the utility, and its electronics for too slow to cut the first surge.
//! Not covered: what the household's electronics make of the beat, and a second meeting before anything has opened.

use std::sync::Arc;

use crate::apparatus::closing::{Closing, Harm, WORST_CURRENT_DEG, WORST_TORQUE_DEG};
use crate::apparatus::conventional::FLYWHEEL_S;
use crate::apparatus::generator::Reactance;
use crate::site::Range;
use crate::units::portable;

use super::engine::Drill;
use super::event::Event;

impl Drill {
    /// Two sources meet: the current at the angle drawn and at the worst one, the torque, and whether the set survives.
    pub(super) fn collide(&mut self) {
        let angle_deg = self.closing_angle_deg;
        let amps = self.readings().generator.amps;
        let worst_a = self.read_at(WORST_CURRENT_DEG).generator.amps.max(amps);
        let site = Arc::clone(&self.scenario().site);
        let spec = &site.generator.spec;
        // A neighbor's cord reaches one half of the winding only.
        let lent = self.readings().point("generator-outlet").fed.lent;
        let share = if lent { 0.5 } else { 1.0 };
        let own = spec.impedance(Reactance::Subtransient) * share;
        let set_v = spec.set_v * share;
        let opposed_v = 2.0 * set_v;
        let closing = Closing {
            utility_v: set_v,
            set_v,
            between: own * (opposed_v / worst_a / portable::magnitude(own)),
        };
        let slip_hz = self.slip_hz();
        let torque = closing.torque_times(angle_deg, spec.rated_w);
        let worst_torque = closing.torque_times(WORST_TORQUE_DEG, spec.rated_w);
        self.happen(Event::Collision {
            angle_deg,
            slip_hz,
            amps: Range {
                low: amps,
                high: worst_a,
            },
            torque: Range {
                low: torque,
                high: worst_torque.max(torque),
            },
        });
        let falls_in = closing.falls_into_step(angle_deg, slip_hz, spec.rated_w, FLYWHEEL_S);
        let passed_deg = if falls_in {
            angle_deg
        } else {
            WORST_CURRENT_DEG
        };
        if closing.harm(passed_deg, slip_hz, spec.rated_w, own) == Harm::Damaged {
            self.conditions.engine.broken = true;
            self.stop_engine();
            self.happen(Event::GeneratorBroken);
        }
    }

    /// How much faster than the utility the generator turned before they met, hertz.
    fn slip_hz(&self) -> f64 {
        let moments = self.trace().moments.iter().rev();
        let before = moments.map(|m| m.readings.generator).find(|g| !g.tied);
        let watts = before.map_or(0.0, |g| g.watts);
        self.site().generator.spec.frequency_hz(watts) - 60.0
    }
}
