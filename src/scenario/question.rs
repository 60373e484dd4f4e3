//! What a drill asks a learner to say: whether a point is live, what feeds it, whether the slide can be trusted, what a breaker is for.
//!
//! A question names what it is about and never its answer: that is taken from the site and the readings of the moment in which it is said.
//! A point is called live from one volt on, as a tester speaks; a fed point below that is dead to the tester and fed all the same, so [`About::FedBy`] asks of the source.

use crate::site::{ControlId, PointReading, Positions, Readings, Site};
use crate::words::{Message, name_of};

/// Volts from which a tester calls a point live.
pub const LIVE_V: f64 = 1.0;

/// Something a learner is asked to say.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Question {
    /// Name, as in action files.
    pub name: String,
    /// What it is about.
    pub about: About,
}

/// What a question is about.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum About {
    /// Whether a point is live.
    Live(String),
    /// What feeds a point.
    FedBy(String),
    /// Whether the slide between main and generator breaker can be trusted.
    SlideFit,
    /// Which appliance hangs on a breaker.
    HangsOn(ControlId),
    /// Whether a breaker is small enough for the wire behind it.
    BreakerFits(ControlId),
    /// How many places join the generator's neutral to ground.
    Bonds,
}

impl Question {
    /// What it is about, in words.
    pub fn subject(&self, site: &Site) -> Message {
        self.about.subject(site)
    }

    /// What is asked, in words.
    pub fn asked(&self, site: &Site) -> Message {
        self.about.asked(site)
    }
}

/// An answer in words: one of the answers there are, or the name of a thing.
pub fn answer_said(answer: &str) -> Message {
    match answer {
        "live" | "dead" | "fit" | "unfit" | "utility" | "generator" | "battery" | "several"
        | "nothing" | "none" | "one" | "two" | "guards" | "too-large" => {
            Message::new(format!("answer-{answer}"))
        }
        thing => name_of(thing),
    }
}

impl About {
    /// What it is about, in words.
    fn subject(&self, site: &Site) -> Message {
        match self {
            Self::Live(point) | Self::FedBy(point) => name_of(point),
            Self::SlideFit => Message::new("name-slide"),
            Self::Bonds => Message::new("name-bonds"),
            Self::HangsOn(breaker) | Self::BreakerFits(breaker) => {
                let control = site.control(*breaker);
                name_of(control.map_or("", |c| c.name.as_str()))
            }
        }
    }

    /// What is asked, in words.
    pub fn asked(&self, site: &Site) -> Message {
        let id = match self {
            Self::Live(_) => "ask-live",
            Self::FedBy(_) => "ask-fed-by",
            Self::SlideFit => "ask-slide",
            Self::HangsOn(_) => "ask-hangs-on",
            Self::Bonds => "ask-bonds",
            Self::BreakerFits(_) => "ask-breaker-fits",
        };
        Message::new(id).said("subject", self.subject(site))
    }

    /// The answers that can be given, by name.
    pub fn answers(&self, site: &Site) -> Vec<String> {
        let fixed = |names: &[&str]| names.iter().map(|n| (*n).to_owned()).collect();
        match self {
            Self::Live(_) => fixed(&["live", "dead"]),
            Self::FedBy(_) => fixed(&["utility", "generator", "battery", "several", "nothing"]),
            Self::SlideFit => fixed(&["fit", "unfit"]),
            Self::BreakerFits(_) => fixed(&["guards", "too-large"]),
            Self::Bonds => fixed(&["none", "one", "two"]),
            Self::HangsOn(_) => {
                let names = site.appliances.iter().map(|a| a.name.clone());
                names.chain(["nothing".to_owned()]).collect()
            }
        }
    }

    /// The right answer as things stand.
    pub fn truth(&self, site: &Site, positions: &Positions, readings: &Readings) -> String {
        match self {
            Self::Live(point) => {
                let live = is_live(readings.point(point));
                if live { "live" } else { "dead" }.to_owned()
            }
            Self::FedBy(point) => readings.point(point).fed.word().to_owned(),
            Self::SlideFit => if site.panel.has_slide() {
                "fit"
            } else {
                "unfit"
            }
            .to_owned(),
            Self::BreakerFits(breaker) => if site.breaker_fits(*breaker) {
                "guards"
            } else {
                "too-large"
            }
            .to_owned(),
            Self::Bonds => match site.set_bonds(positions) {
                0 => "none",
                1 => "one",
                _ => "two",
            }
            .to_owned(),
            Self::HangsOn(breaker) => {
                let circuit = site.circuits.iter().position(|c| c.breaker == *breaker);
                let hangs = site.appliances.iter().find(|a| Some(a.circuit) == circuit);
                hangs.map_or_else(|| "nothing".to_owned(), |a| a.name.clone())
            }
        }
    }
}

/// Whether a tester held there speaks: it tells live from dead, and nothing of the source.
pub fn is_live(reading: PointReading) -> bool {
    reading.volts >= LIVE_V || reading.volts_across >= LIVE_V
}
