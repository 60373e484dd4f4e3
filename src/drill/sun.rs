//! The solar inverter in a drill: what it sees, when it joins and leaves, what it pushes and into what.
//!
//! It can't tell a generator from the utility; with a generator its watts follow from both frequency laws in closed form.
//! A drill begins with it on the utility since long ago.
//! Not covered: clouds; the sun is steady through a drill.

use crate::apparatus::backpower::{Pushed, Shared, Speed, share};
use crate::apparatus::interconnection::{Due, Grid};
use crate::site::{Site, Solar};
use crate::units::DrillTime;

use super::engine::Drill;
use super::event::Event;
use super::next::whole_millis;
use super::second_source::{DEAD, Follows, SourceEvent};

/// Watts that don't count as a change of what the inverter pushes.
const GRAIN_W: f64 = 0.5;

impl Drill {
    /// What the inverter has at its terminals, and what that is.
    pub(super) fn solar_sees(&self, site: &Site) -> (Grid, Follows) {
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

    pub(super) fn follow_solar(&mut self, site: &Site) -> bool {
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

    pub(super) fn solar_due(&self) -> Option<DrillTime> {
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

    pub(super) fn fire_solar(&mut self, site: &Site) -> bool {
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
}
