//! The boundary between the model and the front ends: one shelf, one open drill, in one language.
//!
//! A front end sends a [`Command`] and shows the notices and views it gets back; it holds no rule.
//! The views are complete: a screen reader, a text drill and a picture can be made from them alone.
//! In assessed practice the views show what this learner knows, and the truth only when the drill is over.

mod acts;
mod again;
mod ask;
mod ask_view;
mod close;
mod command;
mod compare;
mod conductors;
mod cords;
mod debrief;
mod equipment;
mod faces;
mod faces_generator;
mod furnish;
mod guide;
mod lesson;
mod line_devices;
mod log;
mod log_indoors;
mod log_line;
mod log_machine;
mod mastery;
mod next;
mod phasors;
mod practise;
mod prove;
mod read;
mod read_cords;
mod read_gfcis;
mod read_sources;
mod renew;
mod rewind;
mod series;
mod shelf;
mod slide;
mod street;
mod teach;
mod told_once;
mod trade;
mod vary;
pub mod view;

use std::sync::Arc;

use crate::drill::{Beside, Drill, Known, Run};
use crate::file::{Diagnostic, Library, write_run};
use crate::marking::{Finding, Forecast, Verdict};
use crate::scenario::Scenario;
use crate::scenario::course::Way;
use crate::units::DrillTime;
use crate::words::{FoundTerm, Message, OFFERED, Words, find};

pub use crate::drill::{Seated, Signed, parse_clock};
pub use crate::file::{Detail, Settings, Watched, read_day};
pub use command::{Command, Notice, Practice};
pub use compare::compare;
pub use mastery::{MasteryRead, Shown};
pub use practise::{Played, play, remark, replay};
pub use prove::{ProofRead, PropertyRead, Prover, proof_digest};
pub use read::{GeneratorRead, PointRead, SiteRead, ThingRead, read};
pub use read_cords::CordRead;
pub use read_gfcis::GfciRead;
pub use rewind::Rewind;
pub use vary::{VariantRead, offered};

use ask::Step;
use view::{LanguageView, Phase};

/// The longest time that waiting for something to happen may take.
const LONGEST_WAIT: DrillTime = DrillTime::from_secs(600);

/// A session of one front end.
#[derive(Debug, Clone)]
pub struct Session {
    library: Arc<Library>,
    words: Words,
    open: Option<Open>,
    revision: u64,
    /// The seed after the greatest that was opened: what another drill of a kind is opened with.
    next_seed: u64,
    /// Whether the front end can ask for predictions; a drill never holds for them otherwise.
    asks: bool,
    /// Whether the front end calls [`Self::look_on`] between its pictures; a hint is worked out before it is shown otherwise.
    looks_on: bool,
    /// Who sits at its drills, how and when, as far as the front end was told.
    signed: Signed,
    /// What was foretold in all drills of this session.
    forecasts: Vec<Forecast>,
    /// What is wrong with the scenarios since they were last sound, while an author writes.
    faults: Vec<Diagnostic>,
    /// Ways of bringing power of which a drill was passed in this session.
    passed: Vec<Way>,
    /// Whether an instructor has covered what wasn't tested.
    covered: bool,
}

/// A drill that is open.
#[derive(Debug, Clone)]
struct Open {
    drill: Drill,
    practice: Practice,
    /// Findings that have been told as they happened.
    told: Vec<(crate::marking::Rule, DrillTime)>,
    /// Findings that are held and not yet understood.
    held: Vec<Finding>,
    /// The findings of the same hold that were understood before.
    understood: Vec<Finding>,
    /// The verdict, once the drill is over.
    verdict: Option<Verdict>,
    /// How often the learner went back.
    rewound: u32,
    /// The branch that was left when the learner went back.
    left: Option<Box<Self>>,
    /// What is kept beside the run.
    beside: Beside,
    /// The page of the debrief that is open.
    phase: Phase,
    /// What was asked to be foretold, and what is being asked.
    asking: ask::Asking,
    /// The hints that are shown.
    help: guide::Help,
}

impl Open {
    fn truth_is_shown(&self) -> bool {
        self.practice != Practice::Assessed || self.verdict.is_some()
    }

    fn known(&self) -> Known {
        Known::from_trace(self.drill.trace())
    }
}

impl Session {
    /// A session on these scenarios, in the language of this tag; English if the tag names none that is there.
    pub fn new(library: Library, language: &str) -> Self {
        Self {
            words: Words::new(language).with(&library.words),
            library: Arc::new(library),
            open: None,
            revision: 0,
            next_seed: 2,
            asks: false,
            looks_on: false,
            signed: Signed::default(),
            forecasts: Vec::new(),
            faults: Vec::new(),
            passed: Vec::new(),
            covered: false,
        }
    }

    /// This session for a front end that shows [`Self::asked`] and [`Self::reveal`]: drills that aren't tests hold for predictions.
    #[must_use]
    pub fn asking(self) -> Self {
        Self { asks: true, ..self }
    }

    /// This session for a front end that calls [`Self::look_on`] between its pictures, so that it goes on drawing while a hint is worked out.
    #[must_use]
    pub fn looking_on(self) -> Self {
        Self {
            looks_on: true,
            ..self
        }
    }

    /// The words of the trade in a text that is shown, each where it first stands, with its meaning and source.
    pub fn terms(&self, text: &str) -> Vec<FoundTerm> {
        self.words.terms_in(text)
    }

    /// Says who sits here, how and when: kept with the drill that is open and with those that follow.
    /// A name more than before, while a drill goes on in turns, is a learner who takes over at this moment.
    pub fn sign(&mut self, signed: Signed) {
        self.revision += 1;
        if let Some(open) = self.open.as_mut() {
            if let Some(name) = signed.takes_over(&open.beside.signed)
                && open.verdict.is_none()
            {
                let handed = (open.drill.now(), name.to_owned());
                open.beside.handed.push(handed);
            }
            open.beside.signed = signed.clone();
        }
        self.signed = signed;
    }

    /// Hands the drill over to another learner, in turns.
    ///
    /// # Errors
    /// What is wrong with the name, or that nobody is named who could hand over.
    pub fn hand_over(&mut self, name: &str) -> Result<(), Message> {
        if self.signed.learners().is_empty() {
            return Err(Message::new("error-handed-first"));
        }
        let names = [self.signed.learners(), &[name.to_owned()]].concat();
        let signed = Signed::new(&names, Some(Seated::InTurns), self.signed.day())?;
        self.sign(signed);
        Ok(())
    }

    /// Carries out a command.
    pub fn apply(&mut self, command: Command) -> Vec<Notice> {
        self.revision += 1;
        let notices = self.obey(command);
        self.guide();
        notices
    }

    fn obey(&mut self, command: Command) -> Vec<Notice> {
        match command {
            Command::Open {
                drill,
                practice,
                seed,
            } => self.open(&drill, practice, seed),
            Command::Speak(tag) => self.speak(&tag),
            Command::Leave => {
                self.open = None;
                Vec::new()
            }
            Command::Retry => self.again(|seed| seed),
            Command::Another => self.again(|seed| seed.wrapping_add(1)),
            Command::Understood => match self.open.as_mut().filter(|o| !o.held.is_empty()) {
                Some(open) => {
                    let finding = open.held.remove(0);
                    open.understood.push(finding);
                    Vec::new()
                }
                None => self.go_on(),
            },
            Command::AllUnderstood => {
                if let Some(open) = self.open.as_mut() {
                    open.held.clear();
                }
                Vec::new()
            }
            Command::Predict { answer, sure } => self.predict(&answer, sure),
            Command::Counts(counts) => self.count(&counts),
            Command::Rewind(rewind) => self.rewind(rewind),
            Command::Hint => self.hint(),
            Command::Cover(covered) => {
                self.covered = covered;
                Vec::new()
            }
            Command::Finish => self.finish(),
            Command::Onward => self.turn(true),
            Command::Back => self.turn(false),
            Command::Reflect(text) => self.reflect(&text),
            Command::Do(line) => self.act(&line),
            Command::Wait(time) => self.step(Step::Wait(time)),
            Command::WaitForEvent => self.step(Step::WaitForEvent),
        }
    }

    /// A message in the session's language, by id: a front end's own labels.
    pub fn say(&self, id: &str) -> String {
        self.words.say_id(id)
    }

    /// A message with arguments in the session's language.
    pub fn say_message(&self, message: &Message) -> String {
        self.words.say(message)
    }

    /// The tag of the language spoken.
    pub fn language(&self) -> &str {
        self.words.tag()
    }

    /// Whether the language that is spoken is read from right to left.
    pub fn is_from_right(&self) -> bool {
        self.words.is_from_right()
    }

    /// The languages there are.
    pub fn languages(&self) -> Vec<LanguageView> {
        let view = |l: &crate::words::Language| LanguageView {
            tag: l.tag.to_owned(),
            name: l.name.to_owned(),
            current: l.tag == self.words.tag(),
        };
        OFFERED.iter().map(view).collect()
    }

    /// A number that grows with every command: views read at the same revision are equal.
    pub fn revision(&self) -> u64 {
        self.revision
    }

    /// The scenarios.
    pub fn library(&self) -> &Library {
        &self.library
    }

    /// The drill that is open, for what is stored of it.
    pub fn drill(&self) -> Option<&Drill> {
        self.open.as_ref().map(|o| &o.drill)
    }

    /// The text of the run file of the drill that is open.
    pub fn saved(&self) -> Option<String> {
        let open = self.open.as_ref()?;
        let run = Run {
            beside: open.beside.clone(),
            ..open.drill.run().clone()
        };
        Some(write_run(&run, open.drill.scenario()))
    }

    /// The verdict of the drill that is open, once it is over.
    pub fn verdict(&self) -> Option<&Verdict> {
        self.open.as_ref().and_then(|o| o.verdict.as_ref())
    }

    fn scenario(&self, name: &str) -> Option<&Arc<Scenario>> {
        self.library.scenario(name)
    }

    fn open(&mut self, name: &str, practice: Practice, seed: u64) -> Vec<Notice> {
        let Some(scenario) = self.scenario(name) else {
            let text = Message::new("session-no-drill")
                .with("name", crate::words::Arg::Verbatim(name.to_owned()));
            return vec![Notice::Unknown(self.words.say(&text))];
        };
        match Drill::start(scenario, seed) {
            Ok(drill) => {
                self.next_seed = self.next_seed.max(seed.saturating_add(1));
                self.open = Some(Open {
                    drill,
                    practice,
                    told: Vec::new(),
                    held: Vec::new(),
                    understood: Vec::new(),
                    verdict: None,
                    rewound: 0,
                    left: None,
                    beside: Beside {
                        signed: self.signed.clone(),
                        practice: Some(practice),
                        ..Beside::default()
                    },
                    phase: Phase::default(),
                    asking: ask::Asking::default(),
                    help: guide::Help::default(),
                });
                self.hold_for_due();
                Vec::new()
            }
            Err(error) => {
                let detail = crate::words::Arg::Verbatim(error.to_string());
                vec![Notice::Unknown(self.words.say(
                    &Message::new("session-broken-site").with("detail", detail),
                ))]
            }
        }
    }

    /// Opens the open drill from its start, with a seed that comes of its own.
    fn again(&mut self, seed: impl FnOnce(u64) -> u64) -> Vec<Notice> {
        let Some(open) = self.open.take() else {
            return Vec::new();
        };
        let run = open.drill.run();
        self.open(&run.scenario, open.practice, seed(run.seed))
    }

    fn speak(&mut self, tag: &str) -> Vec<Notice> {
        if let Some(language) = find(tag) {
            self.words = Words::new(language.tag).with(&self.library.words);
            Vec::new()
        } else {
            let name = crate::words::Arg::Verbatim(tag.to_owned());
            vec![Notice::Unknown(self.words.say(
                &Message::new("session-no-language").with("name", name),
            ))]
        }
    }
}
