//! Playing lists of actions in tests: the shipped drills, a list from `tests/drills`, what was found.

use std::collections::BTreeSet;
use std::sync::Arc;

use outage_drill::drill::{Drill, Moment, What};
use outage_drill::file::{Library, Source, read_actions};
use outage_drill::marking::{Rule, Verdict, mark};
use outage_drill::scenario::Scenario;
use outage_drill::scenario::variation::{self, AS_WRITTEN};

/// A list played out and marked.
pub(crate) struct Played {
    pub(crate) drill: Drill,
    pub(crate) verdict: Verdict,
}

impl Played {
    /// Rules found, with whether they break their criterion.
    pub(crate) fn found(&self) -> BTreeSet<(Rule, bool)> {
        let findings = self.verdict.findings.iter();
        findings.map(|f| (f.rule, f.breach)).collect()
    }

    /// Why actions were refused, in order.
    pub(crate) fn refused(&self) -> Vec<String> {
        let moments = self.drill.trace().moments.iter();
        let why = moments.filter_map(|m| {
            if let What::Refused(_, why) = &m.what {
                Some(why.clone())
            } else {
                None
            }
        });
        why.collect()
    }
}

/// The shipped scenario of this name as it is written, whatever the seed.
pub(crate) fn shipped(name: &str) -> Arc<Scenario> {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    variation::named(library.scenario(name).unwrap(), AS_WRITTEN).unwrap()
}

/// Plays a text of actions to the drill's end.
pub(crate) fn play_text(scenario: &Arc<Scenario>, seed: u64, text: &str) -> Played {
    let source = Source {
        file: "actions",
        text,
    };
    let mut drill = Drill::start(scenario, seed).unwrap();
    let lines = read_actions(source, drill.scenario()).unwrap();
    for line in lines {
        match line.at {
            Some(at) => drill.act_at(at, &line.action),
            None => drill.act(&line.action),
        };
    }
    drill.end();
    let verdict = mark(drill.scenario(), drill.trace());
    Played { drill, verdict }
}

/// The text of a list in `tests/drills`.
pub(crate) fn list(name: &str) -> String {
    let path = format!("{}/tests/drills/{name}.actions", env!("CARGO_MANIFEST_DIR"));
    std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{path}: {e}"))
}

/// Dice for random runs: a linear congruential generator whose high bits are mixed, the same everywhere.
pub(crate) struct Dice(u64);

impl Dice {
    pub(crate) fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// A whole number below `bound`.
    pub(crate) fn below(&mut self, bound: u64) -> u64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        let mixed = (self.0 ^ (self.0 >> 33)).wrapping_mul(0xff51_afd7_ed55_8ccd);
        (mixed >> 20) % bound
    }

    /// One of some things.
    pub(crate) fn pick<'a, T>(&mut self, of: &'a [T]) -> &'a T {
        let index = self.below(u64::try_from(of.len()).unwrap());
        &of[usize::try_from(index).unwrap()]
    }
}

/// Every number and every position of a moment, as bits.
pub(crate) fn every_bit(moment: &Moment) -> Vec<u64> {
    let mut bits = vec![moment.at.millis()];
    let r = &moment.readings;
    let mut add = |values: &[f64]| bits.extend(values.iter().map(|v| v.to_bits()));
    for p in &r.points {
        add(&[p.volts, p.volts_across, p.volts_to_earth.unwrap_or(-1.0)]);
        add(&[
            f64::from(u8::from(p.fed.utility)),
            f64::from(u8::from(p.fed.generator)),
            f64::from(u8::from(p.fed.battery)),
        ]);
    }
    add(&r.amps);
    add(&r.residual_a);
    for a in &r.appliances {
        add(&[a.volts, a.pu, a.amps, a.watts]);
    }
    let g = &r.generator;
    add(&[g.volts, g.amps, g.watts, g.asked_w]);
    let b = &r.battery;
    add(&[b.volts, b.watts, b.asked_w, b.charge_w, r.solar_w]);
    if let Some(shock) = &r.shock {
        add(&[
            shock.volts.low,
            shock.volts.high,
            shock.amps.low,
            shock.amps.high,
        ]);
    }
    let c = &moment.conditions;
    for a in &c.appliances {
        add(&[a.level, a.progress, a.heat, a.closed_again.seconds()]);
    }
    add(&c.breaker_heat);
    add(&c.wires);
    for cord in &c.cords {
        add(&[cord.celsius, cord.spot_k, cord.plug_c, cord.solved_c]);
        add(&[cord.charred, cord.kindled]);
    }
    add(&[c.overload, c.fuel_gal, c.ppm(), c.cohb_pct, c.alarm_dose]);
    add(&[g.hz, c.machine.warm_s, c.machine.oil_h]);
    add(&[c.solar.watts, c.battery.energy_wh, c.battery.overload]);
    // Positions, the engine, phases and flags have no numbers of their own to hash: their text has.
    let rest = format!(
        "{:?} {:?} {:?} {:?} {:?} {:?} {:?}",
        moment.what,
        moment.positions,
        c.engine,
        c.cords.iter().map(|cord| cord.harm).collect::<Vec<_>>(),
        c.solar,
        c.battery,
        c.controller
    );
    bits.extend(rest.bytes().map(u64::from));
    bits
}
