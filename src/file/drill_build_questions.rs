//! From a drill file's questions to [`Question`]s: points, breakers and names are looked up in the site.

use serde::Deserialize;

use crate::scenario::question::{About, Question};
use crate::site::Site;
use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source};
use super::drill_build::unknown;

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct QuestionFile {
    /// Name, as in action files: `say <name> <answer>`.
    name: String,
    /// What it is about.
    about: AboutFile,
}

#[derive(Debug, Clone, Deserialize)]
enum AboutFile {
    /// Whether the point of this name is live: live, dead.
    Live(String),
    /// What feeds the point of this name: utility, generator, battery, several, nothing.
    FedBy(String),
    /// Whether the slide between main and generator breaker can be trusted: fit, unfit.
    SlideFit,
    /// Whether the breaker of this name is small enough for the wire behind it: guards, too-large.
    BreakerFits(String),
    /// How many places join the generator's neutral to ground: none, one, two.
    Bonds,
    /// Which appliance hangs on the breaker of this name: the appliance, or nothing.
    HangsOn(String),
}

/// The questions of a drill, on its site with the names of its points.
pub(super) fn questions(
    source: &Source<'_>,
    asked: &[QuestionFile],
    (site, points): (&Site, &[String]),
    faults: &mut Vec<Diagnostic>,
) -> Vec<Question> {
    let points: Vec<&str> = points.iter().map(String::as_str).collect();
    let breakers: Vec<&str> = site
        .circuits
        .iter()
        .filter_map(|c| site.control(c.breaker))
        .map(|c| c.name.as_str())
        .collect();
    let any_breaker: Vec<&str> = site
        .controls
        .iter()
        .filter(|c| c.is_breaker())
        .map(|c| c.name.as_str())
        .collect();
    let mut questions: Vec<Question> = Vec::new();
    for file in asked {
        if questions.iter().any(|q| q.name == file.name) {
            let message =
                Message::new("error-name-twice").with("name", Arg::Verbatim(file.name.clone()));
            faults.push(source.at(&["questions", &file.name], message));
        }
        let mut known = |name: &String, kind: &str, all: &[&str]| {
            let there = all.contains(&name.as_str());
            if !there {
                faults.push(unknown(source, &["questions"], name, kind, all));
            }
            there
        };
        let about = match &file.about {
            AboutFile::Live(point) if known(point, "point", &points) => About::Live(point.clone()),
            AboutFile::FedBy(point) if known(point, "point", &points) => {
                About::FedBy(point.clone())
            }
            AboutFile::SlideFit => About::SlideFit,
            AboutFile::Bonds => About::Bonds,
            AboutFile::HangsOn(breaker) if known(breaker, "control", &breakers) => {
                match site.control_id(breaker) {
                    Some(id) => About::HangsOn(id),
                    None => continue,
                }
            }
            AboutFile::BreakerFits(breaker) if known(breaker, "control", &any_breaker) => {
                match site.control_id(breaker) {
                    Some(id) => About::BreakerFits(id),
                    None => continue,
                }
            }
            AboutFile::Live(_)
            | AboutFile::FedBy(_)
            | AboutFile::HangsOn(_)
            | AboutFile::BreakerFits(_) => continue,
        };
        questions.push(Question {
            name: file.name.clone(),
            about,
        });
    }
    questions
}
