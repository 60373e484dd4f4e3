//! What is asked to be foretold and what it came to, as views.

use crate::drill::Drill;
use crate::explain::{Stage, reveal};
use crate::marking::{Calibration, GUESS, Lean, SURE, calibration};
use crate::scenario::prediction::{Cue, Foretold, Prediction, Truth, choice_said, nearest};
use crate::scenario::question::About;
use crate::site::Site;
use crate::words::{Arg, Message, Unit, name_of};

use super::ask::{Given, Held, Told};
use super::log::did_message;
use super::view::{AnswerView, AskedView, BarView, CalibrationView, PredictionLine, RevealView};
use super::{Open, Session};

impl Session {
    /// What the drill asks to be foretold, while it holds for an answer.
    pub fn asked(&self) -> Option<AskedView> {
        let held = self.unanswered()?;
        let open = self.open.as_ref()?;
        let about = &held.prediction.about;
        let choices = held.choices();
        Some(AskedView {
            name: held.prediction.name.clone(),
            moment: self.moment(open, held),
            question: self.question(open.drill.site(), &held.prediction),
            known: known(&open.drill, &held.prediction)
                .iter()
                .map(|m| self.words.say(m))
                .collect(),
            number: number_of(about).map(|id| self.words.say_id(id)),
            choices: choices
                .into_iter()
                .map(|id| AnswerView {
                    label: self.words.label(&said(about, &id)),
                    id,
                })
                .collect(),
            sure: SURE.to_vec(),
        })
    }

    /// What was foretold last beside the truth, until the learner goes on.
    pub fn reveal(&self) -> Option<RevealView> {
        let open = self.open.as_ref().filter(|o| o.verdict.is_none())?;
        let held = open.asking.held.as_ref().filter(|h| h.answered)?;
        let given = open.asking.given.last()?;
        let right = match &given.told {
            Told::Said { forecast, .. } => Some(forecast.right),
            Told::Counted(_) => None,
        };
        Some(RevealView {
            question: self.question(open.drill.site(), &held.prediction),
            said: match given.told {
                Told::Said { .. } => self.words.say(&answer(given)),
                Told::Counted(_) => String::new(),
            },
            truth: self.words.say(&truth(given)),
            right,
            stages: self.stages(&computed(&open.drill, held)),
            bars: self.bars(given),
        })
    }

    /// What all predictions of the open drill came to, and those of the session.
    pub(super) fn predictions(&self, open: &Open) -> CalibrationView {
        let line = |given: &Given| PredictionLine {
            clock: self.clock(given.at),
            question: self.question(open.drill.site(), &given.prediction),
            said: self.words.say(&answer(given)),
            truth: self.words.say(&truth(given)),
        };
        let lines: Vec<PredictionLine> = open.asking.given.iter().map(line).collect();
        let score = calibration(&self.forecasts).filter(|_| !lines.is_empty());
        let score = score.map(|c| self.score(&c)).unwrap_or_default();
        CalibrationView { lines, score }
    }

    fn score(&self, calibration: &Calibration) -> String {
        let count = |n: usize| Arg::Count(i64::try_from(n).unwrap_or(i64::MAX));
        let score = Message::new("predict-score")
            .with("right", count(calibration.n_right))
            .with("all", count(calibration.n))
            .quantity("sure", calibration.sure, Unit::Percent)
            .quantity("score", calibration.brier, Unit::Plain)
            .quantity("guess", GUESS, Unit::Plain);
        let lean = calibration.lean().map(|lean| match lean {
            Lean::TooSure => "predict-too-sure",
            Lean::TooShy => "predict-too-shy",
            Lean::Fits => "predict-fits",
        });
        let lean = lean.map(|id| format!(" {}", self.words.say_id(id)));
        self.words.say(&score) + &lean.unwrap_or_default()
    }

    fn moment(&self, open: &Open, held: &Held) -> String {
        let deed = held.deed.as_ref();
        let deed = deed.filter(|_| matches!(held.prediction.at, Cue::Before(..)));
        let message = match deed {
            Some(deed) => {
                let deed = did_message(open.drill.scenario(), &deed.action);
                let deed = self.words.label(&deed);
                Message::new("predict-before").with("deed", Arg::Verbatim(deed))
            }
            None => Message::new("predict-now"),
        };
        self.words.say(&message)
    }

    /// The question in the drill's own words, or one that is put together.
    pub(super) fn question(&self, site: &Site, prediction: &Prediction) -> String {
        let own = format!("predict-{}", prediction.name);
        if self.words.has(&own) {
            self.words.say_id(&own)
        } else {
            self.words.label(&prediction.about.asked(site))
        }
    }

    fn bars(&self, given: &Given) -> Vec<BarView> {
        let Told::Counted(counts) = &given.told else {
            return Vec::new();
        };
        let most = counts.iter().map(|(_, n)| *n).max().unwrap_or_default();
        let right = right_choice(given);
        let bar = |(choice, count): &(String, u32)| BarView {
            label: self.words.label(&said(&given.prediction.about, choice)),
            count: *count,
            share: share(*count, most),
            right: *choice == right,
        };
        counts.iter().map(bar).collect()
    }
}

/// The message that asks for a number; none where one chooses.
fn number_of(about: &Foretold) -> Option<&'static str> {
    match about {
        Foretold::Volts(_) => Some("predict-number-volts"),
        Foretold::Amps(_) => Some("predict-number-amps"),
        Foretold::Watts | Foretold::Heat(_) => Some("predict-number-watts"),
        Foretold::Ppm(_) => Some("predict-number-ppm"),
        Foretold::Holds(..) | Foretold::LiveOf(..) | Foretold::Answer(_) => None,
    }
}

#[expect(clippy::cast_possible_truncation, reason = "for drawing only")]
fn share(count: u32, most: u32) -> f32 {
    (f64::from(count) / f64::from(most.max(1))) as f32
}

/// The choice that is right: a truth by name, or the band that a number is nearest to.
fn right_choice(given: &Given) -> String {
    match &given.truth {
        Truth::Choice(name) => name.clone(),
        Truth::Number(number) => {
            let bands = given.prediction.about.bands(*number);
            let band = bands.get(nearest(bands, *number));
            band.map(ToString::to_string).unwrap_or_default()
        }
    }
}

/// An answer in words: a number with its unit, or a choice.
fn said(about: &Foretold, answer: &str) -> Message {
    match (about.unit(), answer.parse::<f64>()) {
        (Some(unit), Ok(number)) => Message::new("value").quantity("value", number, unit),
        _ => choice_said(answer),
    }
}

/// What was answered: with how sure, or how many of a room were right.
fn answer(given: &Given) -> Message {
    match &given.told {
        Told::Said { answer, forecast } => {
            let id = if forecast.right {
                "predict-said-right"
            } else {
                "predict-said-wrong"
            };
            Message::new(id)
                .said("answer", said(&given.prediction.about, answer))
                .quantity("sure", forecast.sure.into(), Unit::Percent)
        }
        Told::Counted(counts) => {
            let right = right_choice(given);
            let all = counts.iter().map(|(_, n)| i64::from(*n)).sum();
            let hit = counts.iter().filter(|(c, _)| *c == right);
            let hit = hit.map(|(_, n)| i64::from(*n)).sum();
            Message::new("predict-counted")
                .with("right", Arg::Count(hit))
                .with("all", Arg::Count(all))
        }
    }
}

fn truth(given: &Given) -> Message {
    let so = match &given.truth {
        Truth::Number(number) => {
            let unit = given.prediction.about.unit().unwrap_or(Unit::Plain);
            Message::new("value").quantity("value", *number, unit)
        }
        Truth::Choice(name) => choice_said(name),
    };
    Message::new("predict-truth").said("truth", so)
}

/// What bears on a question and may be known before the answer.
fn known(drill: &Drill, prediction: &Prediction) -> Vec<Message> {
    let set = drill.readings().generator;
    let before = matches!(prediction.at, Cue::Before(..));
    let now = |stages: Vec<Stage>| stages.into_iter().map(|s| s.text).collect();
    let mut known: Vec<Message> = match &prediction.about {
        Foretold::Volts(point) | Foretold::Answer(About::Live(point) | About::FedBy(point))
            if before =>
        {
            now(vec![reveal::reading(drill, point)])
        }
        Foretold::LiveOf(one, other) if before => now(vec![
            reveal::reading(drill, one),
            reveal::reading(drill, other),
        ]),
        Foretold::Heat(index) | Foretold::Holds(index, _) => cord(drill, *index),
        Foretold::Watts => {
            let rated = drill.site().generator.spec_at(drill.positions()).rated_w;
            vec![Message::new("predict-known-rated").quantity("rated", rated, Unit::Watts)]
        }
        Foretold::Ppm(_) => now(vec![reveal::room(drill)]),
        Foretold::Volts(_) | Foretold::Amps(_) | Foretold::LiveOf(..) | Foretold::Answer(_) => {
            Vec::new()
        }
    };
    if set.hz > 0.0 && !matches!(prediction.about, Foretold::Ppm(_)) {
        known.push(
            Message::new("gauge-generator")
                .quantity("volts", set.volts, Unit::Volts)
                .quantity("hertz", set.hz, Unit::Hertz)
                .quantity("amps", set.amps, Unit::Amps),
        );
    }
    known
}

/// What can be seen of a cord.
fn cord(drill: &Drill, index: usize) -> Vec<Message> {
    let site = drill.site();
    let Some(cord) = site.cords.get(index) else {
        return Vec::new();
    };
    let lies = cord.rest(drill.positions()).name();
    vec![
        Message::new("predict-known-cord")
            .said("cord", name_of(&cord.name))
            .quantity("length", cord.make.length_ft(), Unit::Feet)
            .with("gauge", Arg::Verbatim(cord.make.awg().to_string()))
            .said("lies", name_of(lies))
            .quantity("carries", cord.make.ampacity_a(), Unit::Amps),
    ]
}

/// How the truth comes about.
fn computed(drill: &Drill, held: &Held) -> Vec<Stage> {
    let ahead = &held.ahead;
    match &held.prediction.about {
        Foretold::Volts(point) | Foretold::Answer(About::Live(point) | About::FedBy(point)) => {
            reveal::volts(ahead, point)
        }
        Foretold::Amps(thing) => reveal::amps(ahead, thing),
        Foretold::Watts => reveal::watts(ahead),
        Foretold::Heat(index) | Foretold::Holds(index, _) => reveal::cord(ahead, *index),
        Foretold::Ppm(_) => reveal::gas(drill, ahead),
        Foretold::LiveOf(one, other) => {
            let both = [one, other].into_iter();
            both.flat_map(|point| reveal::live(ahead, point)).collect()
        }
        Foretold::Answer(
            About::SlideFit | About::HangsOn(_) | About::BreakerFits(_) | About::Bonds,
        ) => Vec::new(),
    }
}
