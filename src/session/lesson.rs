//! A lesson as its instructor follows it.

use crate::drill::event_of;
use crate::scenario::Scenario;
use crate::scenario::lesson::{Doing, Hold, Lesson, Objective, Phase, Sitting, Step};
use crate::words::{Arg, Message};

use super::log::event_message;
use super::view::{
    HandoutView, LessonView, MomentView, ObjectiveView, PhaseView, SessionPlanView, StepView,
};
use super::{Practice, Session};

/// Months in a year.
const MONTHS: u32 = 12;

impl Session {
    /// The lesson of this name, for its instructor; none if there is none.
    pub fn lesson(&self, name: &str) -> Option<LessonView> {
        let lesson = self.library.lessons.iter().find(|l| l.name == name)?;
        let about = |part: &str| self.words.say_id(&format!("lesson-{name}-{part}"));
        Some(LessonView {
            name: name.to_owned(),
            title: about("title"),
            about: about("about"),
            track: lesson.track.name().to_owned(),
            audience: self.words.say_id(&format!("track-{}", lesson.track.name())),
            minutes: self.minutes(lesson.minutes()),
            objectives: lesson
                .objectives
                .iter()
                .map(|o| self.objective(o))
                .collect(),
            prepare: self.named("prepare", &lesson.prepare),
            prebrief: self.named("prebrief", &lesson.prebrief),
            sessions: lesson.sittings.iter().map(|s| self.plan(s)).collect(),
            debrief: lesson
                .debrief
                .iter()
                .map(|(p, n)| self.phase(*p, n))
                .collect(),
            handout: self.handout(lesson),
        })
    }

    /// Messages with a common beginning, by their names.
    fn named(&self, begin: &str, names: &[String]) -> Vec<String> {
        let say = |name: &String| self.words.say_id(&format!("{begin}-{name}"));
        names.iter().map(say).collect()
    }

    fn objective(&self, objective: &Objective) -> ObjectiveView {
        ObjectiveView {
            text: self.words.say_id(&format!("objective-{}", objective.name)),
            outcome: objective.outcome.name().to_owned(),
            drills: objective.drills.clone(),
        }
    }

    fn plan(&self, sitting: &Sitting) -> SessionPlanView {
        SessionPlanView {
            title: self.words.say_id(&format!("sitting-{}", sitting.name)),
            minutes: self.minutes(sitting.minutes),
            steps: sitting.steps.iter().map(|s| self.step_view(s)).collect(),
        }
    }

    fn step_view(&self, step: &Step) -> StepView {
        let scenario = step.what.drill().and_then(|name| self.scenario(name));
        let holds = step.holds.iter();
        StepView {
            begins: step.minute,
            ends: step.minute + step.minutes,
            minutes: self.span(step.minute, step.minute + step.minutes),
            kind: step.what.name().to_owned(),
            title: self.step_title(step),
            say: self.words.say_id(&format!("step-{}", step.say)),
            ask: self.named("question", &step.ask),
            note: scenario.map_or(String::new(), |s| self.drill_words(&s.name, "note")),
            drill: to_open(step),
            moments: holds
                .filter_map(|hold| self.hold(hold, scenario?))
                .collect(),
        }
    }

    /// From one minute to another.
    fn span(&self, from: u32, to: u32) -> String {
        let minutes = Message::new("lesson-step-minutes")
            .with("from", Arg::Count(i64::from(from)))
            .with("to", Arg::Count(i64::from(to)));
        self.words.say(&minutes)
    }

    /// What kind of step it is, and the title of its drill.
    pub(super) fn step_title(&self, step: &Step) -> String {
        let kind = Message::new(format!("doing-{}", step.what.name()));
        let message = match step.what.drill() {
            Some(drill) => Message::new("lesson-step-drill")
                .said("kind", kind)
                .with("drill", Arg::Verbatim(self.drill_words(drill, "title"))),
            None => kind,
        };
        self.words.say(&message)
    }

    fn hold(&self, hold: &Hold, scenario: &Scenario) -> Option<MomentView> {
        Some(match hold {
            Hold::Prediction(name) => {
                let prediction = scenario.predictions.iter().find(|p| p.name == *name)?;
                MomentView {
                    when: self.words.say_id("lesson-holds-itself"),
                    ask: self.question(&scenario.site, prediction),
                    reached: false,
                }
            }
            Hold::After(what, ask) => {
                let event = event_message(&scenario.site, &event_of(*what));
                MomentView {
                    when: self
                        .words
                        .say(&Message::new("lesson-hold-after").said("event", event)),
                    ask: self.words.say_id(&format!("moment-{ask}")),
                    reached: self.has_come(&scenario.name, &event_of(*what)),
                }
            }
        })
    }

    fn phase(&self, phase: Phase, prompts: &[String]) -> PhaseView {
        PhaseView {
            title: self.words.say_id(&format!("phase-{}", phase.name())),
            prompts: self.named("prompt", prompts),
        }
    }

    fn handout(&self, lesson: &Lesson) -> HandoutView {
        let local = &self.library.local;
        let fact = |(name, text): &(&str, Option<String>)| {
            let text = text.clone();
            let text = text.unwrap_or_else(|| self.words.say_id("local-not-filled-in"));
            let message = Message::new("local-fact")
                .said("fact", Message::new(format!("local-{name}")))
                .with("text", Arg::Verbatim(text));
            self.words.say(&message)
        };
        let month = |number: u32| Message::new(format!("month-{number}"));
        let again = match local.season_month {
            Some(season) => Message::new("handout-again-season")
                .said("month", month((season + MONTHS - 2) % MONTHS + 1))
                .said("season", month(season)),
            None => Message::new("handout-again"),
        };
        let title = Message::new("handout-title").said(
            "lesson",
            Message::new(format!("lesson-{}-title", lesson.name)),
        );
        let facts_title = if local.facts.iter().all(|(_, text)| text.is_some()) {
            "local-title"
        } else {
            "local-title-open"
        };
        let shelf = self.shelf();
        HandoutView {
            title: self.words.say(&title),
            lines: self.named("handout", &lesson.handout),
            facts_title: self.words.say_id(facts_title),
            facts: local.facts.iter().map(fact).collect(),
            again: self.words.say(&again),
            cautions_title: shelf.cautions_title,
            cautions: shelf.cautions,
        }
    }
}

/// The drill that a step opens, and how it is practiced.
pub(super) fn to_open(step: &Step) -> Option<(String, Practice)> {
    let practice = if matches!(step.what, Doing::Assessment(_)) {
        Practice::Assessed
    } else {
        Practice::Coached
    };
    step.what.drill().map(|drill| (drill.to_owned(), practice))
}
