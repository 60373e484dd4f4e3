//! From a drill file's predictions to [`Prediction`]s: controls, positions, points, guards and cords are looked up in the site.

use serde::Deserialize;

use crate::scenario::prediction::{Cue, Foretold, Prediction};
use crate::scenario::question::About;
use crate::site::Site;
use crate::units::DrillTime;
use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source};
use super::drill_build::{find, happening, unknown};
use super::drill_build_found::out_of_range;
use super::drill_file::WhatFile;

/// Minutes that can be foretold.
const MINUTES: std::ops::RangeInclusive<u32> = 1..=240;

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct PredictionFile {
    /// Name; the question in words is `predict-<name>`, and one is put together where there is none.
    name: String,
    /// When it is asked; as the drill begins when left out.
    #[serde(default)]
    at: CueFile,
    /// What is to be foretold.
    about: ForetoldFile,
}

#[derive(Debug, Clone, Deserialize)]
enum CueFile {
    /// Before the learner puts the control of this name in this position.
    Before(String, String),
    /// After the story has done this.
    After(WhatFile),
    /// When an engine has begun to turn.
    EngineStarts,
    /// At this minute of the drill clock.
    Minute(u32),
}

impl Default for CueFile {
    fn default() -> Self {
        Self::Minute(0)
    }
}

#[derive(Debug, Clone, Deserialize)]
enum ForetoldFile {
    /// Volts to neutral at the point of this name.
    Volts(String),
    /// Amps through the breaker, fuse or cord of this name.
    Amps(String),
    /// Watts that the generator is asked for.
    Watts,
    /// Watts that the cord of this name turns into heat.
    Heat(String),
    /// Carbon monoxide indoors in so many minutes, if all stays as it is.
    Ppm(u32),
    /// Whether the cord of this name is no hotter than its insulation is made for in so many minutes, if all stays as it is: holds, too-hot.
    Holds(String, u32),
    /// Which of the points of these two names are live: both, the one, the other, neither.
    LiveOf(String, String),
    /// Whether the point of this name is live: live, dead.
    Live(String),
    /// What feeds the point of this name: utility, generator, battery, several, nothing.
    FedBy(String),
}

/// Looks names up, and gathers the faults of those that aren't there.
struct Finder<'a> {
    source: &'a Source<'a>,
    site: &'a Site,
    points: &'a [String],
    faults: &'a mut Vec<Diagnostic>,
}

/// The predictions of a drill, on its site with the names of its points.
pub(super) fn predictions(
    source: &Source<'_>,
    asked: &[PredictionFile],
    (site, points): (&Site, &[String]),
    faults: &mut Vec<Diagnostic>,
) -> Vec<Prediction> {
    let mut found: Vec<Prediction> = Vec::new();
    let mut finder = Finder {
        source,
        site,
        points,
        faults,
    };
    for file in asked {
        if found.iter().any(|p| p.name == file.name) {
            let message =
                Message::new("error-name-twice").with("name", Arg::Verbatim(file.name.clone()));
            let twice = source.at(&["predictions", &file.name], message);
            finder.faults.push(twice);
        }
        let (at, about) = (finder.cue(&file.at), finder.about(&file.about));
        if let (Some(at), Some(about)) = (at, about) {
            found.push(Prediction {
                name: file.name.clone(),
                at,
                about,
            });
        }
    }
    found
}

impl Finder<'_> {
    fn cue(&mut self, file: &CueFile) -> Option<Cue> {
        match file {
            CueFile::Before(control, position) => {
                match find(self.source, &["predictions"], self.site, control, position) {
                    Ok((control, position)) => Some(Cue::Before(control, position)),
                    Err(fault) => {
                        self.faults.push(*fault);
                        None
                    }
                }
            }
            CueFile::After(what) => Some(Cue::After(happening(*what))),
            CueFile::EngineStarts => Some(Cue::EngineStarts),
            CueFile::Minute(0) => Some(Cue::At(DrillTime::ZERO)),
            CueFile::Minute(minute) => self.minutes(*minute).map(Cue::At),
        }
    }

    fn about(&mut self, file: &ForetoldFile) -> Option<Foretold> {
        Some(match file {
            ForetoldFile::Volts(point) => Foretold::Volts(self.point(point)?),
            ForetoldFile::Amps(thing) => Foretold::Amps(self.carrier(thing)?),
            ForetoldFile::Watts => Foretold::Watts,
            ForetoldFile::Heat(cord) => Foretold::Heat(self.cord(cord)?),
            ForetoldFile::Ppm(minutes) => Foretold::Ppm(self.minutes(*minutes)?),
            ForetoldFile::Holds(cord, minutes) => {
                Foretold::Holds(self.cord(cord)?, self.minutes(*minutes)?)
            }
            ForetoldFile::LiveOf(one, other) => {
                Foretold::LiveOf(self.point(one)?, self.point(other)?)
            }
            ForetoldFile::Live(point) => Foretold::Answer(About::Live(self.point(point)?)),
            ForetoldFile::FedBy(point) => Foretold::Answer(About::FedBy(self.point(point)?)),
        })
    }

    fn point(&mut self, name: &str) -> Option<String> {
        let known: Vec<&str> = self.points.iter().map(String::as_str).collect();
        if !known.contains(&name) {
            let fault = unknown(self.source, &["predictions"], name, "point", &known);
            self.faults.push(fault);
            return None;
        }
        Some(name.to_owned())
    }

    fn cord(&mut self, name: &str) -> Option<usize> {
        let known: Vec<&str> = self.site.cords.iter().map(|c| c.name.as_str()).collect();
        let found = known.iter().position(|c| *c == name);
        if found.is_none() {
            let fault = unknown(self.source, &["predictions"], name, "cord", &known);
            self.faults.push(fault);
        }
        found
    }

    /// What carries amps that are read: a breaker, a fuse or a cord.
    fn carrier(&mut self, name: &str) -> Option<String> {
        let guards = self.site.guards().map(|(_, c, _)| c.name.as_str());
        let cords = self.site.cords.iter().map(|c| c.name.as_str());
        let known: Vec<&str> = guards.chain(cords).collect();
        if !known.contains(&name) {
            let fault = unknown(self.source, &["predictions"], name, "control", &known);
            self.faults.push(fault);
            return None;
        }
        Some(name.to_owned())
    }

    fn minutes(&mut self, minutes: u32) -> Option<DrillTime> {
        if !MINUTES.contains(&minutes) {
            let fault = out_of_range(self.source, "predictions", minutes.into());
            self.faults.push(fault);
            return None;
        }
        Some(DrillTime::from_secs(60 * u64::from(minutes)))
    }
}
