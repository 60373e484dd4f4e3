//! Ask before telling: at the moments that a drill chooses it holds, asks for a prediction, and goes on when that has been looked back on.
//!
//! Time passes and deeds are done as ever; only where a prediction's moment lies on the way do they stop there and wait, and what comes of it is the same to the bit.
//! A front end that can't show a question is never held up, and neither is a test.
//! Predictions are no actions: a saved run doesn't hold them, and they touch no verdict.

use crate::drill::{Action, Drill, Timed, duration};
use crate::marking::{Forecast, SURE, is_right};
use crate::scenario::prediction::{Cue, Prediction, Truth};
use crate::units::DrillTime;
use crate::words::{Arg, Message};

use super::command::{Notice, Practice};
use super::{LONGEST_WAIT, Session};

/// One step of a drill.
#[derive(Debug, Clone)]
pub(super) enum Step {
    /// Lets time pass.
    Wait(DrillTime),
    /// Lets time pass until something happens.
    WaitForEvent,
    /// Does an action, whose effect comes at this instant or after its usual time.
    Do(Option<DrillTime>, Action),
}

/// What has been asked in an open drill.
#[derive(Debug, Clone, Default)]
pub(super) struct Asking {
    watch: Watch,
    pub(super) held: Option<Held>,
    pub(super) given: Vec<Given>,
}

/// What is looked out for.
#[derive(Debug, Clone, Default)]
struct Watch {
    /// How many moments of the drill have been looked at.
    seen: usize,
    /// Predictions that have had their moment, by index.
    posed: Vec<usize>,
}

/// A prediction that the drill holds for.
#[derive(Debug, Clone)]
pub(super) struct Held {
    pub(super) prediction: Prediction,
    pub(super) truth: Truth,
    /// The drill played on to where the truth was read.
    pub(super) ahead: Drill,
    /// The deed that waits for the answer.
    pub(super) deed: Option<Timed>,
    /// Whether it has been answered, so that the truth may be shown.
    pub(super) answered: bool,
}

/// A prediction that has been answered.
#[derive(Debug, Clone)]
pub(super) struct Given {
    pub(super) at: DrillTime,
    pub(super) prediction: Prediction,
    pub(super) truth: Truth,
    pub(super) told: Told,
}

/// What was answered.
#[derive(Debug, Clone)]
pub(super) enum Told {
    /// By one person.
    Said { answer: String, forecast: Forecast },
    /// By a room: how many hands each choice had, in the order of the choices.
    Counted(Vec<(String, u32)>),
}

impl Asking {
    /// Whether what is asked may be just what numbers in sight would tell.
    pub(super) fn hides(&self) -> bool {
        let open = self.held.as_ref().filter(|h| !h.answered);
        open.is_some_and(|h| !matches!(h.prediction.at, Cue::Before(..)))
    }

    /// The drill has gone back; what has been asked is not asked again.
    pub(super) fn rewound(&mut self, drill: &Drill) {
        self.held = None;
        self.watch.seen = self.watch.seen.min(drill.trace().moments.len());
    }
}

impl Held {
    /// The choices by name: the bands of a number, or what can be said.
    pub(super) fn choices(&self) -> Vec<String> {
        let about = &self.prediction.about;
        match self.truth {
            Truth::Number(number) => {
                let bands = about.bands(number).iter();
                bands.map(ToString::to_string).collect()
            }
            Truth::Choice(_) => about.choices(self.ahead.site()),
        }
    }
}

impl Watch {
    /// Lets time pass to an instant, or to the first prediction on the way; a deed that waits is kept with it.
    fn advance(&mut self, drill: &mut Drill, to: DrillTime, deed: Option<&Timed>) -> Option<Held> {
        loop {
            let index = drill.advance_to_cue(to, self.seen, &self.posed)?;
            self.posed.push(index);
            let prediction = drill.scenario().predictions.get(index)?.clone();
            if let Some((truth, ahead)) = drill.foresee(&prediction.about, None) {
                return Some(Held {
                    prediction,
                    truth,
                    ahead,
                    deed: deed.cloned(),
                    answered: false,
                });
            }
        }
    }

    /// The prediction to be asked before a deed, if one is.
    fn before(&mut self, drill: &Drill, deed: &Timed) -> Option<Held> {
        let mut cued = drill.cued_before(&deed.action);
        cued.find_map(|(index, prediction)| {
            if self.posed.contains(&index) {
                return None;
            }
            let (truth, ahead) = drill.foresee(&prediction.about, Some(deed))?;
            self.posed.push(index);
            Some(Held {
                prediction: prediction.clone(),
                truth,
                ahead,
                deed: Some(deed.clone()),
                answered: false,
            })
        })
    }

    /// Takes a step as far as no prediction lies on the way.
    fn step(&mut self, drill: &mut Drill, step: Step) -> Option<Held> {
        let held = match step {
            Step::Wait(time) => {
                let to = drill.now() + time;
                self.advance(drill, to, None)
            }
            Step::WaitForEvent => {
                let mut ahead = drill.clone();
                ahead.advance_to_event(LONGEST_WAIT);
                self.advance(drill, ahead.now(), None)
            }
            Step::Do(at, action) => {
                let at = at.unwrap_or_else(|| drill.now() + duration(drill.site(), &action));
                self.act(drill, Timed { at, action })
            }
        };
        if held.is_none() {
            self.seen = drill.trace().moments.len();
        }
        held
    }

    fn act(&mut self, drill: &mut Drill, deed: Timed) -> Option<Held> {
        // A wait that is broken off is over: the learner waits again, or does something else.
        let waits = matches!(deed.action, Action::Wait(_));
        let kept = Some(&deed).filter(|_| !waits);
        let held = self
            .advance(drill, deed.at, kept)
            .or_else(|| self.before(drill, &deed));
        if held.is_some() {
            return held;
        }
        drill.act_at(deed.at, &deed.action);
        let now = drill.now();
        self.advance(drill, now, None)
    }
}

/// Takes a step without looking out for anything.
fn take(drill: &mut Drill, step: Step) {
    match step {
        Step::Wait(time) => drill.advance(time),
        Step::WaitForEvent => drill.advance_to_event(LONGEST_WAIT),
        Step::Do(Some(at), action) => {
            drill.act_at(at, &action);
        }
        Step::Do(None, action) => {
            drill.act(&action);
        }
    }
}

impl Session {
    /// Whether the open drill may hold for predictions.
    fn may_ask(&self) -> bool {
        let open = self.open.as_ref().filter(|o| o.verdict.is_none());
        self.asks && open.is_some_and(|o| o.practice != Practice::Assessed)
    }

    /// Takes a step of the open drill, and holds where a prediction is asked; of a wait for something to happen it says how long it was and what ended it.
    pub(super) fn step(&mut self, step: Step) -> Vec<Notice> {
        let from = self.drill().map(Drill::now);
        let from = from.filter(|_| matches!(step, Step::WaitForEvent));
        let mut notices = self.taken(step);
        let waited = from.and_then(|from| self.waited(from, &notices));
        notices.extend(waited);
        notices
    }

    /// How long a wait for something to happen was, and what ended it; nothing where it couldn't begin.
    fn waited(&self, from: DrillTime, notices: &[Notice]) -> Option<Notice> {
        let open = self.open.as_ref()?;
        if notices.iter().any(|n| matches!(n, Notice::Unknown(_))) {
            return None;
        }
        let lasted = Arg::lasting(open.drill.now().since(from));
        // What happens first ends a wait; the rest follows from it.
        let happened = notices.iter().find_map(|notice| match notice {
            Notice::Happened(text) => Some(text.clone()),
            Notice::Done(_)
            | Notice::Refused(_)
            | Notice::Learnt(_)
            | Notice::Answered(_)
            | Notice::Consequence
            | Notice::Over
            | Notice::Unknown(_) => None,
        });
        let message = if let Some(what) = happened {
            Message::new("session-waited-happened").with("what", Arg::Verbatim(what))
        } else if open.asking.held.is_some() {
            Message::new("session-waited-asked")
        } else if notices.contains(&Notice::Consequence) {
            Message::new("session-waited-told")
        } else if open.verdict.is_some() {
            Message::new("session-waited-over")
        } else {
            Message::new("session-waited-nothing")
        };
        let text = self.words.say(&message.with("time", lasted));
        Some(Notice::Answered(text))
    }

    /// Takes a step of the open drill, and holds where a prediction is asked.
    fn taken(&mut self, step: Step) -> Vec<Notice> {
        if !self.may_ask() {
            return self.pass(|drill| take(drill, step));
        }
        let Some(open) = self.open.as_ref() else {
            return Vec::new();
        };
        if open.asking.held.is_some() {
            return self.unknown("session-predict-first");
        }
        let mut watch = open.asking.watch.clone();
        let mut held = None;
        let notices = self.pass(|drill| held = watch.step(drill, step));
        if let Some(open) = self.open.as_mut() {
            open.asking.watch = watch;
            open.asking.held = held.filter(|_| open.verdict.is_none());
        }
        notices
    }

    /// Holds for a prediction whose moment is now.
    pub(super) fn hold_for_due(&mut self) {
        if self.may_ask()
            && let Some(open) = self.open.as_mut()
        {
            let now = open.drill.now();
            open.asking.held = open.asking.watch.advance(&mut open.drill, now, None);
        }
    }

    /// Goes on from a prediction, answered or passed over.
    pub(super) fn go_on(&mut self) -> Vec<Notice> {
        let held = self.open.as_mut().and_then(|o| o.asking.held.take());
        if let Some(deed) = held.and_then(|h| h.deed) {
            return self.step(Step::Do(Some(deed.at), deed.action));
        }
        self.hold_for_due();
        Vec::new()
    }

    /// Answers what is asked, for one person.
    pub(super) fn predict(&mut self, answer: &str, sure: u8) -> Vec<Notice> {
        let Some(held) = self.unanswered() else {
            return self.unknown("session-nothing-asked");
        };
        if !SURE.contains(&sure) {
            return self.unknown("session-how-sure");
        }
        let choices = held.choices();
        let by_number = held.prediction.about.unit().is_some();
        let known = by_number || choices.iter().any(|c| c == answer);
        let right = is_right(&held.prediction.about, answer, &held.truth).filter(|_| known);
        let Some(right) = right else {
            return if by_number {
                self.unknown("session-not-a-number")
            } else {
                self.not_a_choice(answer, &choices)
            };
        };
        let forecast = Forecast { sure, right };
        self.forecasts.push(forecast);
        let answer = answer.to_owned();
        self.give(Told::Said { answer, forecast })
    }

    /// Answers what is asked, for a room.
    pub(super) fn count(&mut self, counts: &[(String, u32)]) -> Vec<Notice> {
        let Some(held) = self.unanswered() else {
            return self.unknown("session-nothing-asked");
        };
        let choices = held.choices();
        if let Some((wrong, _)) = counts.iter().find(|(c, _)| !choices.contains(c)) {
            return self.not_a_choice(wrong, &choices);
        }
        let hands = |choice: &String| {
            let own = counts.iter().filter(|(c, _)| c == choice);
            own.fold(0u32, |sum, (_, n)| sum.saturating_add(*n))
        };
        let counted: Vec<(String, u32)> = choices.iter().map(|c| (c.clone(), hands(c))).collect();
        if counted.iter().all(|(_, n)| *n == 0) {
            return self.unknown("session-no-hands");
        }
        self.give(Told::Counted(counted))
    }

    /// The prediction that waits for an answer.
    pub(super) fn unanswered(&self) -> Option<&Held> {
        let open = self.open.as_ref().filter(|o| o.verdict.is_none())?;
        open.asking.held.as_ref().filter(|h| !h.answered)
    }

    fn give(&mut self, told: Told) -> Vec<Notice> {
        if let Some(open) = self.open.as_mut()
            && let Some(held) = open.asking.held.as_mut()
        {
            held.answered = true;
            open.asking.given.push(Given {
                at: open.drill.now(),
                prediction: held.prediction.clone(),
                truth: held.truth.clone(),
                told,
            });
        }
        Vec::new()
    }

    fn unknown(&self, id: &str) -> Vec<Notice> {
        vec![Notice::Unknown(self.words.say_id(id))]
    }

    fn not_a_choice(&self, answer: &str, choices: &[String]) -> Vec<Notice> {
        let message = Message::new("session-not-a-choice")
            .with("answer", Arg::Verbatim(answer.to_owned()))
            .with("choices", Arg::Verbatim(choices.join(", ")));
        vec![Notice::Unknown(self.words.say(&message))]
    }
}
