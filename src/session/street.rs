//! The street in one section, as a view.

use crate::drill::{Drill, Learnt, Phase, Sight, What};
use crate::marking::supplied_since;
use crate::site::{Appliance, ApplianceReading, CARRIES_A, Demand, Site};
use crate::units::portable;
use crate::words::{Arg, Message, Unit, name_of};

use super::close::places;
use super::view::{
    ApplianceState, ApplianceView, Doorway, GeneratorView, NeighborView, PersonState, PersonView,
    PlaceView, PoleView, StreetView,
};
use super::{Open, Practice, Session, furnish};

/// Volts below which nothing glows.
const GLOW_V: f64 = 30.0;
/// Share of its volts below which nothing waits for a hand on its switch with a lamp lit: an assumption.
const WAITS_PU: f64 = 0.5;
/// Share of its volts below which a thing is told as without power.
const DEAD_PU: f64 = 0.1;
/// Volts of a leg, at which a lamp shines as it should.
const LEG_V: f64 = 120.0;
/// A filament's light goes with about the 3.4th power of its volts, and how bright that seems with about its root: common practice.
const GLOW_POWER: f64 = 1.7;

impl Session {
    /// The street, if a drill is open.
    /// While a consequence is held, in the moment that it tells of.
    pub fn street(&self) -> Option<StreetView> {
        let held = self.open.as_ref()?.held.first();
        let Some(moment) = held.map(|finding| finding.moment) else {
            return self.street_now();
        };
        let mut seen = self.clone();
        seen.open = seen.open.map(|open| Open {
            drill: open.drill.stood_at(moment),
            ..open
        });
        seen.street_now()
    }

    /// The street as the drill stands.
    pub(super) fn street_now(&self) -> Option<StreetView> {
        let open = self.open.as_ref()?;
        let drill = &open.drill;
        let scenario = drill.scenario();
        let site = drill.site();
        let about = |part: &str| self.drill_words(&scenario.name, part);
        let hint = self.hint_said(open);
        let minutes = u32::try_from(drill.now().millis() / 60_000).unwrap_or_default();
        Some(StreetView {
            title: self.title_said(open, about("title")),
            goal: about("goal"),
            hint: hint.text,
            hint_line: hint.line,
            hint_wait: hint.wait,
            seed: self.seed_said(open),
            variation: self.variation_said(open),
            poles: self.poles(site),
            wires: self.wires(open),
            broken_spans: broken_spans(drill),
            fallen_spans: if site.line_work.is_none() {
                broken_spans(drill)
            } else {
                Vec::new()
            },
            devices: self.devices(open),
            people: self.people(open),
            neighbors: site
                .neighbors
                .iter()
                .map(|n| self.neighbor(drill, &n.name))
                .collect(),
            appliances: (0..site.appliances.len())
                .filter_map(|i| self.appliance(drill, i))
                .collect(),
            outlets: furnish::outlets(site),
            equipment: self.equipment(open),
            generator: self.generator_from_afar(drill),
            places: places(scenario).map(|p| self.place(p)).collect(),
            progress: self.progress(drill),
            air: self.air(drill),
            alarm: drill.conditions().alarm,
            minute_of_day: (scenario.minute_of_day + minutes) % (24 * 60),
            storm: scenario.storm,
            window_open: site
                .control_id("window")
                .is_some_and(|id| site.stands(drill.positions(), id, "open")),
            garage_door: doorway(drill, "garage-door"),
            house_door: doorway(drill, "house-door"),
            building: furnish::building_of(site),
        })
    }

    /// What the goal asks for: each appliance with whether it has had power, and the time that is left.
    fn progress(&self, drill: &Drill) -> String {
        let (goal, trace) = (&drill.scenario().goal, drill.trace());
        let Some(outage) = trace.outage_at() else {
            return String::new();
        };
        let appliance = |index: &usize| drill.site().appliances.get(*index);
        let wanted = goal.appliances.iter();
        let wanted = wanted.filter_map(|i| Some((appliance(i)?, supplied_since(trace, *i))));
        let (mut said, mut waits) = (Vec::new(), false);
        for (appliance, since) in wanted {
            waits |= since.is_none();
            let id = if since.is_some() {
                "goal-had"
            } else {
                "goal-waits"
            };
            let thing = Message::new(id).name("thing", &appliance.name);
            said.push(self.words.label(&thing));
        }
        let due = outage + goal.within;
        if waits && due > drill.now() {
            let left = Arg::Clock(due - drill.now());
            said.push(
                self.words
                    .say(&Message::new("goal-left").with("time", left)),
            );
        }
        said.join(" · ")
    }

    pub(super) fn name(&self, thing: &str) -> String {
        self.words.label(&name_of(thing))
    }

    fn poles(&self, site: &Site) -> Vec<PoleView> {
        let mut at_ft = 0.0;
        let mut views = Vec::new();
        for (index, pole) in site.line.poles.iter().enumerate() {
            views.push(PoleView {
                id: pole.name.clone(),
                label: self.name(&pole.name),
                at_ft,
                transformer: index == site.line.transformer_pole,
            });
            at_ft += site
                .line
                .spans
                .get(index)
                .map_or(0.0, |s| as_f32(s.length_ft));
        }
        views
    }

    fn place(&self, id: &str) -> PlaceView {
        PlaceView {
            id: id.to_owned(),
            label: self.words.say_id(&format!("place-{id}")),
            sentence: self.words.say_id(&format!("place-{id}-about")),
        }
    }

    /// The drill's title; of a test it says that it is one.
    fn title_said(&self, open: &Open, title: String) -> String {
        if open.practice == Practice::Assessed {
            let title = Arg::Verbatim(title);
            self.words
                .say(&Message::new("street-title-test").with("title", title))
        } else {
            title
        }
    }

    fn neighbor(&self, drill: &Drill, name: &str) -> NeighborView {
        let reading = drill.readings().point(name);
        let lit = reading.volts >= GLOW_V;
        let id = if lit {
            "street-neighbor-lit"
        } else {
            "street-neighbor-dark"
        };
        let label = self.name(name);
        let sentence = self
            .words
            .say(&Message::new(id).with("name", Arg::Verbatim(label.clone())));
        NeighborView {
            id: name.to_owned(),
            label,
            glow: glow(reading.volts / LEG_V),
            sentence,
        }
    }

    pub(super) fn people(&self, open: &Open) -> Vec<PersonView> {
        let drill = &open.drill;
        let site = drill.site();
        let conditions = drill.conditions();
        let (crew, crew_state) = crew_as_shown(open);
        let pole = site.line.poles.get(site.line.crew_pole);
        let place = match crew {
            "away" | UNSEEN => "away",
            _ => pole.map_or("", |p| p.name.as_str()),
        };
        let inside = site
            .control_id("household")
            .is_none_or(|id| site.stands(drill.positions(), id, "inside"));
        let household = match (conditions.overcome, conditions.alarm && inside) {
            (true, _) => PersonState::Harmed,
            (false, true) => PersonState::Unwell,
            (false, false) => PersonState::Well,
        };
        let crew_word = if crew_state == PersonState::Harmed {
            "state-harmed".to_owned()
        } else {
            format!("state-crew-{crew}")
        };
        vec![
            self.person("crew", place, crew_state, &crew_word),
            self.person(
                "household",
                if inside { "house" } else { "outside" },
                household,
                person_word(household),
            ),
        ]
    }

    fn person(&self, id: &str, place: &str, state: PersonState, word: &str) -> PersonView {
        let label = self.name(id);
        let word = self.words.say_id(word);
        let sentence = self.words.say(
            &Message::new("street-thing")
                .with("name", Arg::Verbatim(label.clone()))
                .with("state", Arg::Verbatim(word.clone())),
        );
        PersonView {
            id: id.to_owned(),
            label,
            place: place.to_owned(),
            state,
            word,
            sentence,
        }
    }

    fn appliance(&self, drill: &Drill, index: usize) -> Option<ApplianceView> {
        let appliance = drill.site().appliances.get(index)?;
        let condition = drill.conditions().appliances.get(index)?;
        let reading = drill.readings().appliance(index);
        let powered = reading.pu >= WAITS_PU;
        let state = match (condition.phase, powered) {
            _ if condition.damaged => ApplianceState::Broken,
            (Phase::Running, _) if reading.pu < 0.9 || reading.pu > 1.1 => ApplianceState::Strained,
            (Phase::Running, _) => ApplianceState::Running,
            (Phase::Starting, _) => ApplianceState::Starting,
            (Phase::Stalled | Phase::Protected, _) => ApplianceState::Still,
            (Phase::NoPower, _) | (Phase::Resting, false) => ApplianceState::NoPower,
            (Phase::Resting, true) => ApplianceState::Ready,
        };
        let label = self.name(&appliance.name);
        let word = self
            .words
            .say(&appliance_word(state, condition.phase, &reading));
        let sentence = self.words.say(
            &Message::new("street-thing")
                .with("name", Arg::Verbatim(label.clone()))
                .with("state", Arg::Verbatim(word.clone())),
        );
        let worry = worry(appliance, condition.level);
        Some(ApplianceView {
            id: appliance.name.clone(),
            label,
            kind: furnish::kind_of(appliance),
            room: furnish::room_of(appliance),
            state,
            word,
            glow: if condition.phase == Phase::Running && reading.amps >= CARRIES_A {
                glow(reading.pu)
            } else {
                0.0
            },
            worry,
            sentence,
        })
    }

    /// The generator without its load while an instructor has covered the readings.
    fn generator_from_afar(&self, drill: &Drill) -> GeneratorView {
        let mut view = self.generator(drill);
        if self.covered {
            view.load_words.clear();
            let seen = Message::new("street-thing")
                .with("name", Arg::Verbatim(self.name("generator")))
                .with("state", Arg::Verbatim(view.word.clone()));
            view.sentence = self.words.say(&seen);
        }
        view
    }

    pub(super) fn generator(&self, drill: &Drill) -> GeneratorView {
        let site = drill.site();
        let spec = site.generator.spec_at(drill.positions());
        let conditions = drill.conditions();
        let reading = drill.readings().generator;
        let running = conditions.engine.running_since.is_some();
        let place = site.generator_place(drill.positions());
        let feet = place.map_or(0.0, |p| p.opening_ft);
        let place_name = place.map_or("", |p| p.name.as_str());
        let word = self.words.say_id(
            match (conditions.engine.broken, running, reading.watts > 50.0) {
                (true, ..) => "state-engine-broken",
                (false, false, _) => "state-engine-stopped",
                (false, true, _) if !conditions.engine.announced => "state-engine-warming",
                (false, true, true) => "state-engine-loaded",
                (false, true, false) => "state-engine-idle",
            },
        );
        let load_words = self.words.say(
            &Message::new("generator-load")
                .quantity("watts", reading.watts.max(0.0), Unit::Watts)
                .quantity("rated", spec.rated_w, Unit::Watts),
        );
        let stands = if feet > 0.0 {
            Message::new("generator-place").quantity("feet", feet, Unit::Feet)
        } else {
            Message::new("generator-place-indoors")
        };
        let place_words = self.words.say(&stands.name("place", place_name));
        let sentence = self.words.say(
            &Message::new("generator-sentence")
                .with("state", Arg::Verbatim(word.clone()))
                .with("place", Arg::Verbatim(place_words.clone()))
                .with("load", Arg::Verbatim(load_words.clone())),
        );
        GeneratorView {
            place: place_name.to_owned(),
            form: furnish::form_of(site),
            second: site
                .generator
                .machine
                .second
                .map(|_| site.generator.machine.running(drill.positions()) > 1 && running),
            stands: furnish::stands(site),
            place_words,
            opening_ft: as_f32(feet),
            opening_words: if feet > 0.0 {
                self.words.quantity(feet, Unit::Feet)
            } else {
                String::new()
            },
            running,
            word,
            load: as_f32(reading.watts.max(0.0) / spec.rated_w),
            load_words,
            fuel: as_f32(fuel_share(conditions.fuel_gal, spec.tank_gal)),
            sentence,
        }
    }

    fn air(&self, drill: &Drill) -> String {
        const WORTH_SAYING_PPM: f64 = 9.0;
        let ppm = drill.conditions().ppm();
        if ppm < WORTH_SAYING_PPM {
            return String::new();
        }
        self.words
            .say(&Message::new("street-air").quantity("ppm", ppm, Unit::Ppm))
    }
}

/// What the crew is said to do while the learner has not looked at the street.
const UNSEEN: &str = "unseen";

/// What the crew does, and how it is: now where the truth is shown, else as it was when the learner last looked at the street.
fn crew_as_shown(open: &Open) -> (&str, PersonState) {
    let drill = &open.drill;
    let site = drill.site();
    // A learner who is the crew knows what it does.
    if open.truth_is_shown() || site.line_work.is_some() {
        let crew = site.position_name(drill.positions(), site.line.crew);
        let harmed = drill.conditions().crew_harmed;
        return (
            crew,
            if harmed {
                PersonState::Harmed
            } else {
                crew_state(crew)
            },
        );
    }
    let looked = drill.trace().moments.iter().rev().find(|m| {
        let saw = |l: &Learnt| matches!(l, Learnt::Saw { sight, .. } if *sight == Sight::Street);
        matches!(&m.what, What::Learnt(learnt) if saw(learnt))
    });
    let crew = looked.map_or(UNSEEN, |m| site.position_name(&m.positions, site.line.crew));
    (crew, crew_state(crew))
}

fn crew_state(crew: &str) -> PersonState {
    match crew {
        "hands-on" => PersonState::Working,
        "testing" => PersonState::Back,
        _ => PersonState::Well,
    }
}

fn broken_spans(drill: &Drill) -> Vec<String> {
    let line = &drill.site().line;
    let broken = drill
        .site()
        .stands(drill.positions(), line.span_state, "broken");
    let span = line.spans.get(line.broken_span).filter(|_| broken);
    span.map(|s| s.name.clone()).into_iter().collect()
}

/// How brightly a lamp shines at a share of its volts.
fn glow(share: f64) -> f32 {
    if share * LEG_V < GLOW_V {
        0.0
    } else {
        as_f32(portable::power(share.min(1.0), GLOW_POWER))
    }
}

/// How a door of this name stands, if there is one.
fn doorway(drill: &Drill, name: &str) -> Doorway {
    let site = drill.site();
    let Some(id) = site.control_id(name) else {
        return Doorway::None;
    };
    match site.position_name(drill.positions(), id) {
        "open" => Doorway::Open,
        "half" => Doorway::Half,
        _ => Doorway::Shut,
    }
}

fn person_word(state: PersonState) -> &'static str {
    match state {
        PersonState::Well | PersonState::Working | PersonState::Back => "state-well",
        PersonState::Unwell => "state-unwell",
        PersonState::Harmed => "state-harmed",
    }
}

fn appliance_word(state: ApplianceState, phase: Phase, reading: &ApplianceReading) -> Message {
    let (watts, volts) = (reading.watts, reading.volts);
    match state {
        ApplianceState::NoPower if reading.pu > DEAD_PU => {
            Message::new("state-too-few").quantity("volts", volts, Unit::Volts)
        }
        ApplianceState::NoPower => Message::new("state-no-power"),
        ApplianceState::Ready => Message::new("state-ready"),
        ApplianceState::Starting => Message::new("state-starting"),
        ApplianceState::Running => {
            Message::new("state-running").quantity("watts", watts, Unit::Watts)
        }
        ApplianceState::Strained | ApplianceState::Still => {
            let id = match phase {
                Phase::Protected => return Message::new("state-protected"),
                Phase::Stalled => "state-stalled",
                Phase::Running | Phase::Starting | Phase::NoPower | Phase::Resting => {
                    if reading.pu > 1.0 {
                        "state-too-high"
                    } else {
                        "state-strained"
                    }
                }
            };
            Message::new(id).quantity("volts", volts, Unit::Volts)
        }
        ApplianceState::Broken => Message::new("state-broken"),
    }
}

fn worry(appliance: &Appliance, level: f64) -> f32 {
    match appliance.demand {
        Demand::Reservoir(_) => as_f32(level.clamp(0.0, 1.0)),
        Demand::Switch(_) => 0.0,
    }
}

#[expect(clippy::cast_possible_truncation, reason = "for drawing only")]
fn as_f32(value: f64) -> f32 {
    value as f32
}

/// Share of the tank that is full; piped gas is always there.
fn fuel_share(left: f64, tank: f64) -> f64 {
    if tank.is_finite() { left / tank } else { 1.0 }
}
