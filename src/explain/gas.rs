//! The way of gas from the engine into the blood, in the order in which it travels.
//!
//! What the engine gives off at its load, what of it gets in and by which way, what the house's air holds and when an alarm has to sound, what the blood of those inside holds.
//! All of it is of one moment of the run, the one that the heading names; only when somebody can no longer help themselves is a later one, and says so.
//! Air that no alarm would ever sound at is no harm, and has no stages.
//! The home next door is in `next_door`.

use crate::drill::{
    Conditions, Drill, Event, GasFlow, IndoorsEvent, Moment, OVERCOME_PCT, whole_millis,
};
use crate::hazard::air::Outlet;
use crate::hazard::blood::{Activity, Symptoms, reaches_in_s, symptoms};
use crate::hazard::emission::FRESH_O2;
use crate::hazard::monoxide::{CLEAN_PPM, alarm_band};
use crate::marking::Finding;
use crate::site::Garage;
use crate::units::DrillTime;
use crate::words::{Arg, Message, Unit, name_of};

use super::{Stage, value};

/// How far ahead it is told when the blood would be past help if the air stayed as it is: a night, an assumption.
pub(super) const AHEAD: DrillTime = DrillTime::from_secs(8 * 3600);
/// Watts from which an engine counts as loaded.
const LOADED_W: f64 = 1.0;
/// Oxygen that is missing from the air, share by volume, from which it is worth a word.
const SHORT_O2: f64 = 0.001;

/// The stages of a finding about gas, and their heading with the one moment that they show.
pub(super) fn stages(drill: &Drill, finding: &Finding) -> (Message, Vec<Stage>) {
    let moments = drill.trace().moments.iter().skip(finding.moment);
    let until = finding.at + finding.lasted;
    let during = moments.take_while(|m| m.at <= until);
    // While somebody breathes it and the engine carries load, and where there is most of it.
    let weight = |m: &Moment| {
        let runs = m.conditions.engine.running_since.is_some();
        let inside = drill.site().n_inside(&m.positions) > 0;
        let loaded = m.readings.generator.watts >= LOADED_W;
        (runs, inside, loaded, m.conditions.ppm())
    };
    let most = during.reduce(|a, b| if weight(b) > weight(a) { b } else { a });
    let bad = |m: &&Moment| m.conditions.ppm() >= CLEAN_PPM;
    let Some(moment) = most.filter(bad) else {
        return (Message::new("told-way"), Vec::new());
    };
    let heading = Message::new("told-gas-at").with("at", Arg::Clock(moment.at));
    let told = Told { drill, moment };
    let given_off = told.given_off();
    if given_off.is_empty() {
        return (heading, given_off);
    }
    let parts = [given_off, vec![told.house(), told.alarm()], told.blood()];
    (heading, parts.concat())
}

/// A moment of a drill that is told.
struct Told<'a> {
    drill: &'a Drill,
    moment: &'a Moment,
}

/// A stage at a thing, with the number that is shown.
pub(super) fn stage(at: &str, text: Message, shown: Message) -> Stage {
    Stage {
        at: at.to_owned(),
        text,
        value: shown,
    }
}

/// Grams an hour, as the number of a stage.
pub(super) fn hourly(grams: f64) -> Message {
    Message::new("value-hourly").quantity("value", grams, Unit::Grams)
}

/// What of the exhaust an outlet lets into a home, percent.
pub(super) fn share_pct(outlet: Outlet) -> f64 {
    match outlet {
        Outlet::Outdoors(share) => share * 100.0,
        Outlet::Garage | Outlet::House => 100.0,
    }
}

/// What an engine gives off where the air around it is short of oxygen.
fn starved(flow: GasFlow, o2: f64) -> Option<Stage> {
    let text = Message::new("stage-exhaust-starved")
        .quantity("oxygen", o2 * 100.0, Unit::Percent)
        .quantity("gives", flow.gives_g_per_h, Unit::Grams);
    let short = o2 < FRESH_O2 - SHORT_O2;
    short.then(|| stage("generator", text, hourly(flow.gives_g_per_h)))
}

/// Carboxyhemoglobin of those who are up, or of a sleeper by index, percent.
fn cohb_of(conditions: &Conditions, person: Option<usize>) -> f64 {
    let sleeper = person.and_then(|index| conditions.indoors.people.get(index));
    sleeper.map_or(conditions.cohb_pct, |own| own.cohb_pct)
}

impl Told<'_> {
    fn conditions(&self) -> &Conditions {
        &self.moment.conditions
    }

    /// From each engine to the house's air; nothing if none has run.
    fn given_off(&self) -> Vec<Stage> {
        let Moment {
            positions,
            readings,
            ..
        } = self.moment;
        let site = self.drill.site();
        let engine = self.conditions().engine;
        let own = self.conditions().gas_flow(site, positions, readings);
        let neighbors = self.conditions().indoors.neighbors_gas();
        let mut stages = match (own, engine.stopped_at) {
            (Some(flow), _) => self.own_engine(flow),
            (None, Some(stopped)) if neighbors.is_none() => {
                let time = Arg::lasting(self.moment.at.since(stopped));
                let text = Message::new("stage-exhaust-over").with("time", time.clone());
                let shown = Message::new("value").with("value", time);
                vec![stage("generator", text, shown)]
            }
            (None, _) => Vec::new(),
        };
        stages.extend(neighbors.map(|flow| {
            let text = Message::new("stage-exhaust-neighbor")
                .quantity("grams", flow.gives_g_per_h, Unit::Grams)
                .quantity("share", share_pct(flow.outlet), Unit::Percent)
                .quantity("enters", flow.enters_g_per_h, Unit::Grams);
            stage("house", text, hourly(flow.enters_g_per_h))
        }));
        stages
    }

    /// What the house's engine gives off at its load, and the way that it takes.
    fn own_engine(&self, flow: GasFlow) -> Vec<Stage> {
        let site = self.drill.site();
        let watts = self.moment.readings.generator.watts.max(0.0);
        let text = Message::new("stage-exhaust")
            .quantity("watts", watts, Unit::Watts)
            .quantity("fresh", flow.fresh_g_per_h, Unit::Grams);
        let mut stages = vec![stage("generator", text, hourly(flow.fresh_g_per_h))];
        let air = self.conditions().air;
        match (flow.outlet, site.garage) {
            (Outlet::Outdoors(_), _) => stages.push(self.drawn_in(flow)),
            (Outlet::Garage, Some(garage)) => {
                stages.extend(starved(flow, air.garage.o2));
                stages.extend(self.garage(flow, &garage));
            }
            (Outlet::House | Outlet::Garage, _) => {
                stages.extend(starved(flow, air.house.o2));
                let text = Message::new("stage-all-in-house").quantity(
                    "enters",
                    flow.enters_g_per_h,
                    Unit::Grams,
                );
                stages.push(stage("house", text, hourly(flow.enters_g_per_h)));
            }
        }
        stages
    }

    /// What of an engine outdoors is drawn in, from what distance and by which openings.
    fn drawn_in(&self, flow: GasFlow) -> Stage {
        let site = self.drill.site();
        let positions = &self.moment.positions;
        let place = site.generator_place(positions);
        let window = site.control_id("window");
        let stands = window.map_or("", |id| site.position_name(positions, id));
        let by_window = place.is_some_and(|p| p.exposure.0 != p.exposure.1);
        let way = match (window, stands, by_window) {
            (Some(_), "open", true) => "window",
            (Some(_), "open", false) => "besides",
            (Some(_), ..) => "gaps",
            (None, ..) => "openings",
        };
        let feet = place.map_or(0.0, |p| p.opening_ft);
        let text = Message::new("stage-drawn-in")
            .quantity("feet", feet, Unit::Feet)
            .quantity("share", share_pct(flow.outlet), Unit::Percent)
            .quantity("enters", flow.enters_g_per_h, Unit::Grams)
            .with("way", Arg::Verbatim(way.to_owned()))
            .with("stands", Arg::Said(Box::new(name_of(stands))));
        stage("window", text, hourly(flow.enters_g_per_h))
    }

    /// What the garage's air holds, what leaves it for the open, and what passes on into the house.
    fn garage(&self, flow: GasFlow, garage: &Garage) -> [Stage; 2] {
        let site = self.drill.site();
        let positions = &self.moment.positions;
        let ppm = self.conditions().air.garage.co_ppm;
        let door = site.position_name(positions, garage.big_door);
        let holds = Message::new("stage-garage-air")
            .with("door", Arg::Said(Box::new(name_of(door))))
            .quantity("leaves", flow.leaves_g_per_h, Unit::Grams)
            .quantity("ppm", ppm, Unit::Ppm);
        let open = site.stands(positions, garage.house_door, "open");
        let passes = Message::new("stage-garage-passes")
            .with(
                "door",
                Arg::Verbatim(if open { "open" } else { "shut" }.to_owned()),
            )
            .quantity("enters", flow.enters_g_per_h, Unit::Grams);
        [
            stage("garage", holds, value(ppm, Unit::Ppm)),
            stage("house-door", passes, hourly(flow.enters_g_per_h)),
        ]
    }

    /// When the gas that is in the house now began to gather.
    fn since(&self) -> &Moment {
        let moments = &self.drill.trace().moments;
        let before = moments.iter().rev().skip_while(|m| m.at > self.moment.at);
        let gas = before.take_while(|m| m.conditions.ppm() > 0.0);
        gas.last().unwrap_or(self.moment)
    }

    /// What the air of the house has come to.
    fn house(&self) -> Stage {
        let ppm = self.conditions().ppm();
        let time = self.moment.at.since(self.since().at);
        let text = Message::new("stage-house-air")
            .quantity("ppm", ppm, Unit::Ppm)
            .with("time", Arg::lasting(time));
        stage("house", text, value(ppm, Unit::Ppm))
    }

    /// When an alarm has to sound by its standard, and what the one here did.
    fn alarm(&self) -> Stage {
        let site = self.drill.site();
        let band = alarm_band(self.conditions().ppm());
        let minutes = |m: f64| Arg::Quantity(m, Unit::Plain);
        let mut events = self.drill.trace().events();
        let sounded = events.find(|(_, e)| matches!(e, Event::Alarm { .. }));
        let sounded = sounded.filter(|(m, _)| m.at <= self.moment.at);
        let alarm = site.indoors.alarm;
        let text = match (sounded, alarm) {
            (Some((m, _)), _) => Message::new("stage-alarm-sounded").with("at", Arg::Clock(m.at)),
            (None, Some(id)) if !site.alarm_works(&self.moment.positions) => {
                let stands = site.position_name(&self.moment.positions, id);
                let stands = Arg::Said(Box::new(name_of(stands)));
                Message::new("stage-alarm-cannot").with("stands", stands)
            }
            (None, _) => Message::new("stage-alarm-quiet"),
        };
        let text = text
            .quantity("level", band.ppm, Unit::Ppm)
            .with("from", minutes(band.from_min))
            .with("to", minutes(band.to_min));
        let latest = Arg::lasting(whole_millis(band.to_min * 60.0));
        let latest = Message::new("value").with("value", latest);
        stage("gas-alarm", text, latest)
    }

    /// What the blood of each who is inside holds, and when they can no longer help themselves.
    fn blood(&self) -> Vec<Stage> {
        let site = self.drill.site();
        let positions = &self.moment.positions;
        let mut stages = Vec::new();
        if site.household_inside(positions) {
            stages.extend(self.breathed("household", None));
        }
        for (person, own) in site.indoors.people.iter().enumerate() {
            if !site.stands(positions, own.control, "outside") {
                stages.extend(self.breathed(&own.name, Some(person)));
            }
        }
        if stages.is_empty() {
            let ppm = self.conditions().ppm();
            let text = Message::new("stage-nobody");
            stages.push(stage("house", text, value(ppm, Unit::Ppm)));
        }
        stages
    }

    /// What the blood of those who are up holds, or that of a sleeper by index.
    fn breathed(&self, name: &str, person: Option<usize>) -> Vec<Stage> {
        let cohb = cohb_of(self.conditions(), person);
        let moments = &self.drill.trace().moments;
        let start = moments.first().unwrap_or(self.moment);
        let start = cohb_of(&start.conditions, person);
        let felt = symptoms(cohb);
        // Whoever feels nothing yet is told what comes first.
        let level = felt.max(Symptoms::Headache).begin_pct();
        let who = if person.is_some() { "sleeper" } else { "up" };
        let text = Message::new("stage-blood")
            .with("who", Arg::Verbatim(who.to_owned()))
            .name("name", name)
            .quantity("cohb", cohb, Unit::Percent)
            .quantity("start", start, Unit::Percent)
            .with("felt", Arg::Verbatim(felt.name().to_owned()))
            .quantity("level", level, Unit::Percent);
        let blood = stage(name, text, value(cohb, Unit::Percent));
        [Some(blood), self.helpless(name, person)]
            .into_iter()
            .flatten()
            .collect()
    }

    /// When somebody can no longer help themselves: as the run had it, or as it would come if the air stayed as it is.
    fn helpless(&self, name: &str, person: Option<usize>) -> Option<Stage> {
        let overcome = |e: &Event| {
            if let Event::Indoors(IndoorsEvent::PersonOvercome { person: who, .. }) = e {
                person == Some(*who)
            } else {
                person.is_none() && matches!(e, Event::Overcome { .. })
            }
        };
        let mut events = self.drill.trace().events();
        let text = if let Some((m, _)) = events.find(|(_, e)| overcome(e)) {
            Message::new("stage-helpless").with("at", Arg::Clock(m.at))
        } else {
            let cohb = cohb_of(self.conditions(), person);
            let activity = person.map_or(Activity::Sedentary, |_| Activity::Rest);
            let seconds = reaches_in_s(cohb, OVERCOME_PCT, self.conditions().ppm(), activity)?;
            let time = whole_millis((seconds / 60.0).round() * 60.0);
            if time > AHEAD {
                return None;
            }
            Message::new("stage-helpless-ahead").with("time", Arg::lasting(time))
        };
        let text = text.quantity("level", OVERCOME_PCT, Unit::Percent);
        Some(stage(name, text, value(OVERCOME_PCT, Unit::Percent)))
    }
}
