//! From a lesson file to a [`Lesson`]: drills, moments and messages are looked up, and the minutes are added up.

use std::collections::BTreeSet;
use std::sync::Arc;

use crate::scenario::Scenario;
use crate::scenario::lesson::{Doing, Hold, Lesson, Objective, Phase, Sitting, Step};
use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source};
use super::drill_build::{happening, unknown};
use super::drill_build_course::{outcome, track};
use super::lesson_file::{DoingFile, HoldFile, LessonFile, ObjectiveFile, SittingFile, StepFile};
use super::library::Broken;

/// What a lesson may name.
#[derive(Debug, Clone, Copy)]
pub(super) struct Known<'a> {
    /// The drills.
    pub(super) scenarios: &'a [Arc<Scenario>],
    /// Drills whose own faults are told already.
    pub(super) unsound: &'a Broken,
    /// The ids of all messages.
    pub(super) ids: &'a BTreeSet<String>,
}

/// Builds a lesson.
///
/// # Errors
/// Every fault of meaning, each at its place.
pub(super) fn build_lesson(
    source: &Source<'_>,
    file: &LessonFile,
    known: Known<'_>,
) -> Result<Lesson, Vec<Diagnostic>> {
    let mut faults = Vec::new();
    let mut reader = Reader {
        source,
        known,
        faults: &mut faults,
    };
    let lesson = Lesson {
        name: file.name.clone(),
        track: track(file.audience),
        objectives: reader.objectives(file),
        prepare: reader.words(&["prepare:"], "prepare", &file.prepare),
        prebrief: reader.words(&["prebrief:"], "prebrief", &file.prebrief),
        sittings: reader.sittings(&file.sessions),
        debrief: reader.debrief(file),
        handout: reader.words(&["handout:"], "handout", &file.handout),
    };
    reader.whole(&lesson);
    if faults.is_empty() {
        Ok(lesson)
    } else {
        Err(faults)
    }
}

/// Looks names up, and gathers the faults.
struct Reader<'a> {
    source: &'a Source<'a>,
    known: Known<'a>,
    faults: &'a mut Vec<Diagnostic>,
}

impl<'a> Reader<'a> {
    fn fault(&mut self, trail: &[&str], message: Message) {
        self.faults.push(self.source.at(trail, message));
    }

    /// A name that isn't there, after this trail.
    fn unknown(&mut self, trail: &[&str], name: &str, kind: &str, known: &[&str]) {
        self.faults
            .push(unknown(self.source, trail, name, kind, known));
    }

    /// The scenario of a drill that is named after this trail; none either of one that is unsound.
    fn drill(&mut self, trail: &[&str], name: &str) -> Option<&'a Scenario> {
        let scenarios: &'a [Arc<Scenario>] = self.known.scenarios;
        let found = scenarios.iter().find(|s| s.name == name);
        if found.is_none() && !self.known.unsound.may_be(name) {
            let sound = scenarios.iter().map(|s| s.name.as_str());
            let unsound = self.known.unsound.named.iter().map(String::as_str);
            let names: Vec<&str> = sound.chain(unsound).collect();
            self.unknown(trail, name, "drill", &names);
        }
        found.map(Arc::as_ref)
    }

    /// A message that is named after this trail.
    fn word(&mut self, trail: &[&str], begin: &str, name: &str) {
        let ids = self.known.ids;
        if !ids.contains(&format!("{begin}-{name}")) {
            let named = |id: &'a String| id.strip_prefix(begin)?.strip_prefix('-');
            let names: Vec<&str> = ids.iter().filter_map(named).collect();
            self.unknown(trail, name, "message", &names);
        }
    }

    fn words(&mut self, trail: &[&str], begin: &str, names: &[String]) -> Vec<String> {
        for name in names {
            self.word(trail, begin, name);
        }
        if names.is_empty() && begin != "prepare" {
            self.fault(trail, Message::new("error-lesson-empty"));
        }
        names.to_vec()
    }

    fn names_once<'n>(&mut self, field: &str, names: impl Iterator<Item = &'n String>) {
        let mut seen = BTreeSet::new();
        for name in names {
            if !seen.insert(name) {
                let quoted = quoted(name);
                let message =
                    Message::new("error-name-twice").with("name", Arg::Verbatim(name.clone()));
                self.fault(&[field, &quoted, "name:", &quoted], message);
            }
        }
    }

    fn objectives(&mut self, file: &LessonFile) -> Vec<Objective> {
        let own = &file.objectives;
        self.names_once("objectives:", own.iter().map(|o| &o.name));
        if own.is_empty() {
            self.fault(&["objectives:"], Message::new("error-lesson-empty"));
        }
        own.iter().map(|o| self.objective(o, file)).collect()
    }

    fn objective(&mut self, own: &ObjectiveFile, file: &LessonFile) -> Objective {
        let name = quoted(&own.name);
        let trail = ["objectives:", &name];
        self.word(&trail[..1], "objective", &own.name);
        if own.drills.is_empty() {
            self.fault(&trail, Message::new("error-lesson-objective-bare"));
        }
        let wanted = outcome(own.teaches);
        let steps = file.sessions.iter().flat_map(|s| &s.steps);
        let planned: Vec<String> = steps
            .filter_map(|s| doing(&s.what).drill().map(str::to_owned))
            .collect();
        let is_known = |drill: &String| self.known.scenarios.iter().any(|s| s.name == *drill);
        // One that isn't there may be meant.
        let all_known = planned.iter().all(is_known);
        for drill in &own.drills {
            let Some(scenario) = self.drill(&trail, drill) else {
                continue;
            };
            let at = [trail[0], trail[1], &quoted(drill)];
            if !scenario.course.teaches.contains(&wanted) {
                let taught = scenario.course.teaches.iter().map(|o| format!("{o:?}"));
                let taught = Arg::Verbatim(taught.collect::<Vec<_>>().join(", "));
                let message = Message::new("error-lesson-not-taught").with("taught", taught);
                self.fault(&at, message);
            } else if all_known && !planned.contains(drill) {
                self.fault(&at, Message::new("error-lesson-not-planned"));
            }
        }
        Objective {
            name: own.name.clone(),
            outcome: wanted,
            drills: own.drills.clone(),
        }
    }

    fn sittings(&mut self, files: &[SittingFile]) -> Vec<Sitting> {
        self.names_once("sessions:", files.iter().map(|s| &s.name));
        if files.is_empty() {
            self.fault(&["sessions:"], Message::new("error-lesson-empty"));
        }
        files.iter().map(|file| self.sitting(file)).collect()
    }

    fn sitting(&mut self, file: &SittingFile) -> Sitting {
        let name = quoted(&file.name);
        let mut trail = vec!["sessions:", name.as_str()];
        self.word(&trail[..1], "sitting", &file.name);
        self.minutes(&trail, file);
        let mut steps = Vec::new();
        for step in &file.steps {
            trail.push("minute:");
            steps.push(self.step(&trail, step));
        }
        let begins = steps.first().is_some_and(|s| s.what == Doing::Prebrief);
        let looks_back = steps.iter().any(|s| s.what == Doing::Debrief);
        for (there, id) in [
            (begins, "error-lesson-prebrief"),
            (looks_back, "error-lesson-debrief"),
        ] {
            if !there {
                self.fault(&trail[..2], Message::new(id));
            }
        }
        Sitting {
            name: file.name.clone(),
            minutes: file.minutes,
            steps,
        }
    }

    /// The first place at which the minutes of a session don't add up; what comes after it follows from it.
    fn minutes(&mut self, trail: &[&str], file: &SittingFile) {
        let mut trail = trail.to_vec();
        let mut end = 0_u32;
        for step in &file.steps {
            if step.minute != end {
                let wanted = Message::new("error-lesson-minute").with("wanted", count(end));
                let written = format!("minute: {}", step.minute);
                trail.push(&written);
                return self.fault(&trail, wanted);
            }
            trail.push("minute:");
            if step.minutes == 0 {
                let message = Message::new("error-not-positive")
                    .with("field", Arg::Verbatim("minutes".to_owned()))
                    .with("value", count(0));
                trail.push("minutes: 0");
                return self.fault(&trail, message);
            }
            end = end.saturating_add(step.minutes);
        }
        if end != file.minutes {
            let written = format!("minutes: {}", file.minutes);
            let message = Message::new("error-lesson-length").with("sum", count(end));
            self.fault(&[trail[0], trail[1], &written], message);
        }
    }

    /// A step, at the end of this trail.
    fn step(&mut self, trail: &[&str], file: &StepFile) -> Step {
        let what = doing(&file.what);
        let scenario = what.drill().and_then(|drill| self.drill(trail, drill));
        self.word(trail, "step", &file.say);
        for name in &file.ask {
            self.word(trail, "question", name);
        }
        if !file.hold.is_empty() && matches!(what, Doing::Assessment(_)) {
            self.fault(
                &[trail, &["hold"]].concat(),
                Message::new("error-lesson-hold-test"),
            );
        }
        if !file.hold.is_empty() && what.drill().is_none() {
            self.fault(
                &[trail, &["hold"]].concat(),
                Message::new("error-lesson-hold-talk"),
            );
        }
        let trail = [trail, &["hold"]].concat();
        let holds = file.hold.iter().map(|h| self.hold(&trail, h, scenario));
        Step {
            minute: file.minute,
            minutes: file.minutes,
            holds: holds.collect(),
            what,
            say: file.say.clone(),
            ask: file.ask.clone(),
        }
    }

    fn hold(&mut self, trail: &[&str], file: &HoldFile, scenario: Option<&Scenario>) -> Hold {
        match file {
            HoldFile::Prediction(name) => {
                let names = scenario.map(|s| s.predictions.iter().map(|p| p.name.as_str()));
                let names: Option<Vec<&str>> = names.map(Iterator::collect);
                if let Some(names) = names.filter(|n| !n.contains(&name.as_str())) {
                    self.unknown(trail, name, "prediction", &names);
                }
                Hold::Prediction(name.clone())
            }
            HoldFile::After(what, ask) => {
                let what = happening(*what);
                // A file names what happens as the program does.
                let names = scenario.map(|s| s.story.iter().map(|t| format!("{:?}", t.what)));
                let names: Option<Vec<String>> = names.map(Iterator::collect);
                let name = format!("{what:?}");
                if let Some(names) = names.filter(|n| !n.contains(&name)) {
                    let message = Message::new("error-lesson-event")
                        .with("name", Arg::Verbatim(name.clone()));
                    let at = [trail, &[name.as_str()]].concat();
                    let names = names.iter().map(String::as_str);
                    self.faults
                        .push(self.source.at(&at, message).with_nearest(names));
                }
                self.word(trail, "moment", ask);
                Hold::After(what, ask.clone())
            }
        }
    }

    fn debrief(&mut self, file: &LessonFile) -> Vec<(Phase, Vec<String>)> {
        let own = &file.debrief;
        let phases = [
            (Phase::Happened, "happened:", &own.happened),
            (Phase::Felt, "felt:", &own.felt),
            (Phase::Why, "why:", &own.why),
            (Phase::Next, "next:", &own.next),
        ];
        let phases = phases.map(|(phase, field, names)| {
            let names = self.words(&["debrief:", field], "prompt", names);
            (phase, names)
        });
        phases.to_vec()
    }

    /// What a lesson as a whole has to have.
    fn whole(&mut self, lesson: &Lesson) {
        let is_test = |step: &Step| matches!(step.what, Doing::Assessment(_));
        if !lesson.sittings.is_empty() && !lesson.steps().any(is_test) {
            self.fault(&["sessions:"], Message::new("error-lesson-assessment"));
        }
    }
}

fn quoted(name: &str) -> String {
    format!("\"{name}\"")
}

fn count(minutes: u32) -> Arg {
    Arg::Count(minutes.into())
}

fn doing(file: &DoingFile) -> Doing {
    match file {
        DoingFile::Prebrief => Doing::Prebrief,
        DoingFile::Talk => Doing::Talk,
        DoingFile::Demonstration(drill) => Doing::Demonstration(drill.clone()),
        DoingFile::Predict(drill) => Doing::Predict(drill.clone()),
        DoingFile::Drill(drill) => Doing::Drill(drill.clone()),
        DoingFile::Assessment(drill) => Doing::Assessment(drill.clone()),
        DoingFile::Debrief => Doing::Debrief,
        DoingFile::Break => Doing::Break,
        DoingFile::Handout => Doing::Handout,
    }
}
