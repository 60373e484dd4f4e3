//! What a drill asks a learner to foretell, before it shows: a number, a place or an outcome, at a moment that the drill chooses.
//!
//! A prediction names its moment and what it is about, and never its answer: that is read off the drill itself, played on from that moment.
//! It is no part of the task, so it counts neither for a pass nor against it.
//! The bands that a room votes on are round steps of each unit; they are chosen by the truth, but not so that its place among them tells it.

use crate::site::{ControlId, PositionId, Site};
use crate::units::DrillTime;
use crate::words::{Message, Unit, name_of};

use super::Happening;
use super::question::{About, answer_said};

/// How many bands a room chooses from.
const BANDS: usize = 4;

/// Something a learner is asked to foretell.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Prediction {
    /// Name; its words are `predict-<name>`.
    pub name: String,
    /// When it is asked.
    pub at: Cue,
    /// What it is about.
    pub about: Foretold,
}

/// When a prediction is asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Cue {
    /// The learner is about to put a control so, and nothing refuses it.
    Before(ControlId, PositionId),
    /// The story has done it.
    After(Happening),
    /// An engine has begun to turn.
    EngineStarts,
    /// The drill's clock has come so far.
    At(DrillTime),
}

/// What a prediction is about, right after the deed or as things stand.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Foretold {
    /// Volts to neutral at a point, the higher of its hots.
    Volts(String),
    /// Amps through a breaker, a fuse or a cord.
    Amps(String),
    /// Watts that the generator is asked for.
    Watts,
    /// Watts that a cord turns into heat, by its index.
    Heat(usize),
    /// Carbon monoxide indoors after so long, if nobody touches anything.
    Ppm(DrillTime),
    /// Whether a cord is still no hotter than its insulation is made for after so long, if nobody touches anything.
    Holds(usize, DrillTime),
    /// Which of two points are live.
    LiveOf(String, String),
    /// The answer to a question of the same kind as those that are marked.
    Answer(About),
}

/// What has come of it.
#[derive(Debug, Clone, PartialEq)]
pub enum Truth {
    /// A number, in the unit of what was asked.
    Number(f64),
    /// One of the choices, by name.
    Choice(String),
}

impl Foretold {
    /// The unit of its number; none where it is a choice.
    pub fn unit(&self) -> Option<Unit> {
        match self {
            Self::Volts(_) => Some(Unit::Volts),
            Self::Amps(_) => Some(Unit::Amps),
            Self::Watts | Self::Heat(_) => Some(Unit::Watts),
            Self::Ppm(_) => Some(Unit::Ppm),
            Self::Holds(..) | Self::LiveOf(..) | Self::Answer(_) => None,
        }
    }

    /// How long it is let stand before the truth is read.
    pub fn wait(&self) -> DrillTime {
        match self {
            Self::Ppm(time) | Self::Holds(_, time) => *time,
            Self::Volts(_)
            | Self::Amps(_)
            | Self::Watts
            | Self::Heat(_)
            | Self::LiveOf(..)
            | Self::Answer(_) => DrillTime::ZERO,
        }
    }

    /// The choices by name; none where it is a number.
    pub fn choices(&self, site: &Site) -> Vec<String> {
        let fixed = |names: &[&str]| names.iter().map(|n| (*n).to_owned()).collect();
        match self {
            Self::Holds(..) => fixed(&["holds", "too-hot"]),
            Self::LiveOf(one, other) => fixed(&["both", one, other, "neither"]),
            Self::Answer(about) => about.answers(site),
            Self::Volts(_) | Self::Amps(_) | Self::Watts | Self::Heat(_) | Self::Ppm(_) => {
                Vec::new()
            }
        }
    }

    /// The bands that a room chooses from, rising; none where it is no number.
    pub fn bands(&self, truth: f64) -> &'static [f64] {
        let ladder: &'static [f64] = match self {
            Self::Volts(_) => &[0.0, 12.0, 120.0, 240.0, 7200.0],
            Self::Amps(_) => &[0.0, 0.5, 2.0, 8.0, 30.0, 120.0],
            Self::Watts => &[0.0, 300.0, 1000.0, 3000.0, 9000.0, 27_000.0],
            Self::Heat(_) => &[0.0, 3.0, 12.0, 50.0, 200.0, 800.0],
            Self::Ppm(_) => &[0.0, 9.0, 70.0, 400.0, 1600.0, 6400.0],
            Self::Holds(..) | Self::LiveOf(..) | Self::Answer(_) => return &[],
        };
        let rung = nearest(ladder, truth);
        let first = rung
            .saturating_sub(rung % BANDS)
            .min(ladder.len().saturating_sub(BANDS));
        ladder.get(first..first + BANDS).unwrap_or(ladder)
    }

    /// The question in words; `name-…` of cords, points and guards.
    pub fn asked(&self, site: &Site) -> Message {
        let cord = |index: usize| name_of(site.cords.get(index).map_or("", |c| c.name.as_str()));
        let within = |id: &str, time: DrillTime| {
            Message::new(id).with("time", crate::words::Arg::lasting(time))
        };
        match self {
            Self::Volts(point) => Message::new("foretell-volts").name("point", point),
            Self::Amps(thing) => Message::new("foretell-amps").name("thing", thing),
            Self::Watts => Message::new("foretell-watts"),
            Self::Heat(index) => Message::new("foretell-heat").said("cord", cord(*index)),
            Self::Ppm(time) => within("foretell-ppm", *time),
            Self::Holds(index, time) => within("foretell-holds", *time).said("cord", cord(*index)),
            Self::LiveOf(one, other) => Message::new("foretell-live-of")
                .name("one", one)
                .name("other", other),
            Self::Answer(about) => about.asked(site),
        }
    }
}

/// A choice in words.
pub fn choice_said(choice: &str) -> Message {
    match choice {
        "holds" | "too-hot" | "both" | "neither" => Message::new(format!("answer-{choice}")),
        other => answer_said(other),
    }
}

/// The rung of a rising ladder that a number is nearest to, in ratio; below half the first step up it is the lowest.
pub fn nearest(ladder: &[f64], number: f64) -> usize {
    let middle = |pair: &[f64]| match pair {
        [low, high] if *low > 0.0 => (low * high).sqrt(),
        [_, high] => high / 2.0,
        _ => f64::INFINITY,
    };
    ladder
        .windows(2)
        .take_while(|pair| number >= middle(pair))
        .count()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_is_put_to_the_rung_that_is_nearest_in_ratio() {
        let ladder = [0.0, 12.0, 120.0, 240.0, 7200.0];
        let rungs = [0.0, 5.9, 6.0, 37.0, 38.0, 169.0, 170.0, 1314.0, 1315.0, 9e9];
        let found: Vec<usize> = rungs.iter().map(|n| nearest(&ladder, *n)).collect();
        assert_eq!(found, [0, 0, 1, 1, 2, 2, 3, 3, 4, 4]);
    }

    #[test]
    fn the_bands_hold_the_truth_s_own_and_are_four() {
        for about in [
            Foretold::Volts(String::new()),
            Foretold::Amps(String::new()),
            Foretold::Watts,
            Foretold::Heat(0),
            Foretold::Ppm(DrillTime::ZERO),
        ] {
            for truth in [0.0, 0.4, 7.0, 118.0, 900.0, 7100.0, 40_000.0] {
                let bands = about.bands(truth);
                assert_eq!(bands.len(), BANDS);
                let rung = nearest(bands, truth);
                let lower = rung == 0 || truth >= bands[rung] / 10.0;
                assert!(lower, "{about:?} {truth} {bands:?}");
            }
        }
    }
}
