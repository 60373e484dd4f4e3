//! The readings of a site in given positions, without a drill and without time.
//!
//! Every appliance that is switched on, or that has no switch, is taken as running; nothing is starting and nothing has drifted, but for cords, which are as warm as they settle.
//! The engine makes voltage when its control says so, at an angle of zero to the utility.

use std::sync::Arc;

use crate::apparatus::waveform::Waveform;
use crate::drill::Conditions;
use crate::file::{Diagnostic, Library, Source};
use crate::scenario::Scenario;
use crate::site::{
    Body, ControlId, Demand, Fed, LoadState, Plant, PositionId, Positions, Readings, Site,
};
use crate::units::DrillTime;
use crate::words::{Arg, Message, Unit, Words, name_of};

use super::close::fuel_lasts;
use super::conductors::{fed_by, fed_word};
use super::read_cords::{self, CordRead};
use super::read_gfcis::{self, GfciRead};
use super::read_sources;

/// Below this, volts and amps are not worth a word.
const LEAST: f64 = 0.05;

/// Readings of a site.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SiteRead {
    /// Name of the site.
    pub site: String,
    /// Whether the solution converged; no number counts otherwise.
    pub converged: bool,
    /// Readings at points.
    pub points: Vec<PointRead>,
    /// Currents of things.
    pub things: Vec<ThingRead>,
    /// Cords that carry something.
    pub cords: Vec<CordRead>,
    /// Ground-fault devices.
    pub gfcis: Vec<GfciRead>,
    /// The generator.
    pub generator: GeneratorRead,
    /// Watts that the solar inverter delivers; none where there is none.
    pub solar_watts: Option<f64>,
    /// Watts that the battery delivers; none where there is none.
    pub battery_watts: Option<f64>,
    /// What solar and battery give, a sentence each.
    pub sources: Vec<String>,
}

/// Readings of the generator.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct GeneratorRead {
    /// Volts between its two hots.
    pub volts: f64,
    /// Hertz; 0 while it makes no volts.
    pub hertz: f64,
    /// Watts that it delivers.
    pub watts: f64,
    /// Total harmonic distortion of its volts, percent of the fundamental.
    pub distortion_pct: f64,
    /// Hours that a full tank lasts at this load; `None` while the engine stands, and on piped gas.
    pub fuel_hours: Option<f64>,
    /// All of it in sentences; empty while it stands.
    pub sentences: Vec<String>,
}

/// Readings at a point.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PointRead {
    /// Name, as in action files.
    pub id: String,
    /// Volts to neutral, the higher of its hots.
    pub volts: f64,
    /// Volts between its two hots; 0 where there is one.
    pub volts_across: f64,
    /// Volts to remote earth; `None` where nothing ties it to earth.
    pub volts_to_earth: Option<f64>,
    /// Whether the utility feeds it.
    pub utility: bool,
    /// Whether the generator feeds it.
    pub generator: bool,
    /// All of it in a sentence.
    pub sentence: String,
}

/// The current of a thing.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ThingRead {
    /// Name of the thing.
    pub id: String,
    /// Amps.
    pub amps: f64,
    /// In a sentence; empty where nothing flows.
    pub sentence: String,
}

/// Reads a site, named by itself or by a drill that stands on it, with some controls set.
///
/// # Errors
/// When there is no such site, control or position, or the site can't be wired.
pub fn read(
    library: &Library,
    name: &str,
    sets: &[String],
    words: &Words,
) -> Result<SiteRead, Vec<Diagnostic>> {
    let scenario = find(library, name)?;
    let site = &scenario.site;
    let positions = set_all(site, scenario.start.clone(), sets)?;
    let mut plant = Plant::new(site).map_err(|error| {
        let detail = Arg::Verbatim(error.to_string());
        let message = Message::new("session-broken-site").with("detail", detail);
        vec![GIVEN.whole(message)]
    })?;
    let mut drive = read_sources::drive(site, &positions);
    let body = Body { touching: false };
    let loads = loads(site, &positions);
    let mut readings = plant.read(site, &positions, &loads, drive, body);
    if let Some(sunny) = read_sources::with_sun(site, &readings, drive) {
        drive = sunny;
        readings = plant.read(site, &positions, &loads, drive, body);
    }
    for _ in 0..read_cords::PASSES {
        plant.set_cords(site, &read_cords::states(site, &positions, &readings));
        readings = plant.read(site, &positions, &loads, drive, body);
    }
    let names = Arc::clone(&readings.names);
    let points = names.points.iter().zip(&readings.points);
    let things = names.things.iter().zip(&readings.amps);
    Ok(SiteRead {
        site: site.name.clone(),
        converged: readings.converged,
        points: points
            .map(|(id, reading)| PointRead {
                id: id.clone(),
                volts: reading.volts,
                volts_across: reading.volts_across,
                volts_to_earth: reading.volts_to_earth,
                utility: reading.fed.utility,
                generator: reading.fed.generator,
                sentence: point_sentence(
                    words,
                    id,
                    reading.fed,
                    reading.volts.max(reading.volts_across),
                ),
            })
            .collect(),
        things: things
            .map(|(id, amps)| ThingRead {
                id: id.clone(),
                amps: *amps,
                sentence: thing_sentence(words, id, *amps),
            })
            .collect(),
        cords: read_cords::cords(site, &positions, &readings, words),
        gfcis: read_gfcis::gfcis(site, &readings, words),
        generator: generator_read(words, site, &positions, &readings),
        solar_watts: site.solar.as_ref().map(|_| readings.solar_w),
        battery_watts: site.battery.as_ref().map(|_| readings.battery.watts),
        sources: read_sources::sentences(site, &readings, words),
    })
}

fn generator_read(
    words: &Words,
    site: &Site,
    positions: &Positions,
    readings: &Readings,
) -> GeneratorRead {
    let reading = readings.generator;
    let mut full = Conditions::begin(site, positions);
    full.engine.running_since = (reading.hz > 0.0).then_some(DrillTime::ZERO);
    let fuel_hours = full
        .fuel_hours(site, positions, readings)
        .filter(|hours| hours.is_finite());
    let meter = (reading.hz > 0.0).then(|| {
        Message::new("gauge-generator")
            .quantity("volts", reading.volts, Unit::Volts)
            .quantity("hertz", reading.hz, Unit::Hertz)
            .quantity("amps", reading.amps, Unit::Amps)
    });
    let wave = site
        .generator
        .spec_at(positions)
        .waveform(reading.watts.max(0.0));
    let lasts = fuel_hours.and_then(fuel_lasts);
    GeneratorRead {
        volts: reading.volts,
        hertz: reading.hz,
        watts: reading.watts,
        distortion_pct: wave.distortion_pct,
        fuel_hours,
        sentences: meter
            .into_iter()
            .chain((reading.hz > 0.0).then(|| wave_sentence(&wave)))
            .chain(lasts)
            .map(|message| words.say(&message))
            .collect(),
    }
}

/// What the wave does to what hangs on it.
fn wave_sentence(wave: &Waveform) -> Message {
    let id = match (wave.clean(), wave.backup_accepts()) {
        (true, true) => "read-wave-clean",
        (false, true) => "read-wave-rough",
        (_, false) => "read-wave-refused",
    };
    Message::new(id)
        .quantity("distortion", wave.distortion_pct, Unit::Percent)
        .quantity("gain", wave.clock_gain_s_per_h(), Unit::Seconds)
        .quantity("heat", (wave.copper_heat() - 1.0) * 100.0, Unit::Percent)
}

fn find<'a>(library: &'a Library, name: &str) -> Result<&'a Arc<Scenario>, Vec<Diagnostic>> {
    let all = &library.scenarios;
    let found = all
        .iter()
        .find(|s| s.name == name)
        .or_else(|| all.iter().find(|s| s.site.name == name));
    found.ok_or_else(|| {
        let mut known: Vec<&str> = all.iter().map(|s| s.site.name.as_str()).collect();
        known.extend(all.iter().map(|s| s.name.as_str()));
        known.dedup();
        vec![unknown("site", name, &known)]
    })
}

/// The positions after every `NAME=POSITION`; what the build of things forbids is set all the same.
fn set_all(
    site: &Site,
    mut positions: Positions,
    sets: &[String],
) -> Result<Positions, Vec<Diagnostic>> {
    let mut faults = Vec::new();
    for set in sets {
        let (control, position) = set.split_once('=').unwrap_or((set, ""));
        match place(site, control, position) {
            Ok((id, position)) => positions.set(id, position),
            Err(fault) => faults.push(*fault),
        }
    }
    if faults.is_empty() {
        Ok(positions)
    } else {
        Err(faults)
    }
}

fn place(
    site: &Site,
    name: &str,
    position: &str,
) -> Result<(ControlId, PositionId), Box<Diagnostic>> {
    let found = site
        .control_id(name)
        .and_then(|id| site.control(id).map(|control| (id, control)));
    let Some((id, control)) = found else {
        let known: Vec<&str> = site.controls.iter().map(|c| c.name.as_str()).collect();
        return Err(Box::new(unknown("control", name, &known)));
    };
    let known: Vec<&str> = control.positions.iter().map(String::as_str).collect();
    let found = control.position(position);
    found
        .map(|position| (id, position))
        .ok_or_else(|| Box::new(unknown("position", position, &known)))
}

fn unknown(kind: &str, name: &str, known: &[&str]) -> Diagnostic {
    let kind = Message::new(format!("error-kind-{kind}"));
    let message = if name.is_empty() {
        Message::new("error-missing-word").said("kind", kind)
    } else {
        Message::new("error-unknown-name")
            .with("name", Arg::Verbatim(name.to_owned()))
            .said("kind", kind)
    };
    let fault = Diagnostic {
        text: name.to_owned(),
        ..GIVEN.whole(message)
    };
    fault.with_nearest(known.iter().copied())
}

/// The command line, as the place of a fault.
const GIVEN: Source<'_> = Source {
    file: "read",
    text: "",
};

fn loads(site: &Site, positions: &Positions) -> Vec<LoadState> {
    let running = |demand: &Demand| match demand {
        Demand::Switch(switch) => site.stands(positions, *switch, "on"),
        Demand::Reservoir(_) => true,
    };
    let state = |on: bool| {
        if on {
            LoadState::Running
        } else {
            LoadState::Off
        }
    };
    site.appliances
        .iter()
        .map(|appliance| state(running(&appliance.demand)))
        .collect()
}

fn point_sentence(words: &Words, id: &str, fed: Fed, volts: f64) -> String {
    let fed = fed_word(fed_by(fed));
    let message = Message::new(if volts >= LEAST {
        "street-wire-volts"
    } else {
        "street-wire"
    });
    let name = Arg::Verbatim(words.label(&name_of(id)));
    let message = message.with("name", name).said("fed", Message::new(fed));
    words.say(&if volts >= LEAST {
        message.quantity("volts", volts, Unit::Volts)
    } else {
        message
    })
}

fn thing_sentence(words: &Words, id: &str, amps: f64) -> String {
    if amps < LEAST {
        return String::new();
    }
    words.say(
        &Message::new("read-thing")
            .with("name", Arg::Verbatim(words.label(&name_of(id))))
            .quantity("amps", amps, Unit::Amps),
    )
}
