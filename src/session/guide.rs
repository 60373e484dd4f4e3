//! The next safe step and its reason, as a hint: shown at once in guided practice, and else on request.
//!
//! What the step is comes from the proof's guide; here it is only put into words.
//! Help fades: once a drill of one way of bringing power was passed in this session, guided practice shows its hints for that way only when asked.
//! What was passed is forgotten with the session.

use crate::drill::{Action, Drill, write_action};
use crate::proof::{Advice, Aim, Guide, Step};
use crate::site::{ControlId, Cord, Kind, PositionId, Site};
use crate::units::DrillTime;
use crate::words::{Arg, Message};

use super::command::{Notice, Practice};
use super::log::did_message;
use super::view::WaitView;
use super::{Open, Session};

/// The help in an open drill.
#[derive(Debug, Clone, Default)]
pub(super) struct Help {
    /// What was worked out last; kept while it isn't shown, so that the next hint goes on with the same way.
    guide: Option<Guide>,
    /// Whether it is shown.
    shown: bool,
    /// How many hints were shown.
    pub(super) n_shown: u32,
}

/// A hint in words.
#[derive(Debug, Clone, Default)]
pub(super) struct Hint {
    /// What to do next, and why.
    pub(super) text: String,
    /// What is to be typed for it.
    pub(super) line: String,
    /// The wait that it asks for, where it is one.
    pub(super) wait: Option<WaitView>,
}

impl Help {
    /// The drill has gone back: what was shown holds no more.
    pub(super) fn rewound(&mut self) {
        if let Some(guide) = self.guide.as_mut() {
            guide.rewound();
        }
        self.shown = false;
    }

    /// Shows what to do next from where a drill stands: a way that is kept at once, and what a search has to find when [`Self::look_on`] has found it.
    fn show(&mut self, drill: &Drill) {
        let fresh = !self.shown || !self.holds(drill);
        self.shown = true;
        if let Some(guide) = self.guide.as_mut() {
            guide.turn_to(drill);
        } else {
            self.guide = Some(Guide::begin(drill));
        }
        self.n_shown += u32::from(fresh);
    }

    /// Goes on with a search for what is shown; says whether it isn't over yet.
    fn look_on(&mut self) -> bool {
        let guide = self.guide.as_mut().filter(|_| self.shown);
        guide.is_some_and(Guide::look_on)
    }

    /// Whether a hint is shown and still holds.
    fn holds(&self, drill: &Drill) -> bool {
        self.guide.as_ref().is_some_and(|g| g.holds(drill))
    }
}

impl Session {
    /// Shows the next step because the learner asks for it.
    pub(super) fn hint(&mut self) -> Vec<Notice> {
        let Some(open) = self.open.as_mut().filter(|o| o.verdict.is_none()) else {
            return vec![Notice::Unknown(self.words.say_id("session-nothing-open"))];
        };
        if open.practice == Practice::Assessed {
            return vec![Notice::Unknown(self.words.say_id("session-no-hint"))];
        }
        open.help.show(&open.drill);
        Vec::new()
    }

    /// Goes on with the search for the next step, by one way that is tried; says whether it isn't over yet.
    /// To be called between two pictures by a front end that is [`Self::looking_on`]; until it says no, a hint says what is safe anyway.
    pub fn look_on(&mut self) -> bool {
        let Some(open) = self.open.as_mut() else {
            return false;
        };
        let Some(guide) = open.help.guide.as_ref() else {
            return false;
        };
        let looked = matches!(guide.advice(), Advice::Looking(_));
        let looks = open.help.look_on();
        self.revision += u64::from(looked && !looks);
        looks
    }

    /// Keeps the hint right after whatever was done: shows the next one where they are shown unasked, and takes away one that doesn't hold any more.
    pub(super) fn guide(&mut self) {
        let unasked = self.guides();
        let Some(open) = self.open.as_mut() else {
            return;
        };
        if open.verdict.is_some() {
            open.help.shown = false;
        } else if unasked {
            open.help.show(&open.drill);
        } else if !open.help.holds(&open.drill) {
            open.help.shown = false;
        }
        if !self.looks_on {
            while self.look_on() {}
        }
    }

    /// Whether hints are shown unasked: in guided practice, until a drill of the same way was passed.
    fn guides(&self) -> bool {
        let open = self.open.as_ref();
        open.is_some_and(|o| {
            o.practice == Practice::Guided && !self.passed.contains(&o.drill.scenario().course.way)
        })
    }

    /// The hint that is shown; empty where none is.
    pub(super) fn hint_said(&self, open: &Open) -> Hint {
        let Some(guide) = open.help.guide.as_ref().filter(|_| open.help.shown) else {
            return Hint::default();
        };
        let said = |id: &str, line: &str| Hint {
            text: self.words.say_id(id),
            line: line.to_owned(),
            wait: None,
        };
        if !open.held.is_empty() {
            return said("guide-read-first", "");
        }
        if self.unanswered().is_some() {
            return said("guide-answer-first", "");
        }
        let site = open.drill.site();
        match guide.advice() {
            Advice::GoBack => said("guide-go-back", "rewind"),
            Advice::Finish => said("guide-finish", "finish"),
            Advice::GetOut => said("guide-get-out", ""),
            Advice::HandsOff => said("guide-hands-off", ""),
            Advice::StopEngine(action) => said("guide-stop-engine", &write_action(site, action)),
            Advice::Looking(Some(action)) => {
                said("guide-looking-stop", &write_action(site, action))
            }
            Advice::Looking(None) => said("guide-looking", ""),
            Advice::Steps(steps) => steps.first().map_or_else(Hint::default, |step| {
                let step = Step {
                    action: left_of(step, &open.drill),
                    ..step.clone()
                };
                let (deed, wait) = if let Action::Wait(time) = &step.action {
                    let deed = Message::new("guide-wait").with("time", Arg::lasting(*time));
                    (deed, Some(self.button_of(*time)))
                } else {
                    (did_message(open.drill.scenario(), &step.action), None)
                };
                let message = Message::new("guide-step")
                    .with("step", Arg::Said(Box::new(deed)))
                    .said("why", Message::new(why(&open.drill, &step)));
                Hint {
                    text: self.words.label(&message),
                    line: write_action(site, &step.action),
                    wait,
                }
            }),
        }
    }
}

impl Session {
    /// A button that waits this long.
    fn button_of(&self, time: DrillTime) -> WaitView {
        let button = Message::new("guide-wait-button").with("time", Arg::lasting_in_short(time));
        WaitView {
            label: self.words.label(&button),
            time,
        }
    }
}

/// A step's action, with what is left of a wait.
fn left_of(step: &Step, drill: &Drill) -> Action {
    if matches!(step.action, Action::Wait(_)) {
        let left = step.at.since(drill.now());
        Action::Wait(DrillTime::from_secs(left.millis().div_ceil(1000)))
    } else {
        step.action.clone()
    }
}

/// The message that says why a step is next, by what it is for and by what is moved.
fn why(drill: &Drill, step: &Step) -> &'static str {
    let site = drill.site();
    match step.aim {
        Aim::Service => "guide-why-service",
        Aim::Safe => "guide-why-safe",
        Aim::SafeStop if matches!(step.action, Action::Wait(_)) => "guide-why-dark",
        Aim::SafeStop => "guide-why-safe-stop",
        Aim::Spare => "guide-why-spare",
        Aim::GetOut if matches!(step.action, Action::Call(_)) => "guide-why-call",
        Aim::GetOut => "guide-why-get-out",
        Aim::Outage if drill.readings().point("service").fed.utility => "guide-why-outage",
        Aim::Outage => "guide-why-outage-now",
        Aim::Reset => "guide-why-reset",
        Aim::Halt => "guide-why-halt",
        Aim::Prepare => why_prepare(site, &step.action),
        Aim::Shed => "guide-why-shed",
        Aim::There => why_moved(drill, &step.action, "guide-why-there"),
        Aim::WarmUp => "guide-why-warm-up",
        Aim::Settle => "guide-why-settle",
        Aim::ByItself => "guide-why-by-itself",
        Aim::Refuel if step.action == Action::Refuel => "guide-why-refuel",
        Aim::Refuel if matches!(step.action, Action::Wait(_)) => "guide-why-cold",
        Aim::Refuel => why_moved(drill, &step.action, "guide-why-low"),
        Aim::Oil => "guide-why-oil",
        Aim::Return if matches!(step.action, Action::Look(_)) => "guide-why-look",
        Aim::Return => "guide-why-return",
        Aim::Cool => "guide-why-cool",
        Aim::Back => why_moved(drill, &step.action, "guide-why-back"),
        Aim::Answer if !matches!(step.action, Action::Say(..)) => "guide-why-find-out",
        Aim::Answer => "guide-why-answer",
        Aim::CutOff => why_cut_off(site, &step.action),
        Aim::Test => "guide-why-test",
        Aim::Ground => "guide-why-ground",
        Aim::Work => "guide-why-work",
        Aim::StepClear => "guide-why-step-clear",
        Aim::Unground => "guide-why-unground",
        Aim::Ask => "guide-why-ask",
        Aim::Close => "guide-why-close",
    }
}

/// The control that is moved, and where to.
fn moved(action: &Action) -> Option<(ControlId, PositionId)> {
    let Action::Set(control, position) = action else {
        return None;
    };
    Some((*control, *position))
}

fn why_prepare(site: &Site, action: &Action) -> &'static str {
    let Some((control, _)) = moved(action) else {
        return "guide-why-prepare";
    };
    if site.indoors.alarm == Some(control) {
        return "guide-why-alarm";
    }
    if site
        .indoors
        .can
        .as_ref()
        .is_some_and(|c| c.control == control)
    {
        return "guide-why-can";
    }
    match site.control(control).map(|c| c.kind) {
        Some(Kind::Placement) => "guide-why-place",
        Some(Kind::Lay) => "guide-why-flat",
        Some(Kind::Opening) => "guide-why-window",
        Some(Kind::Plug) => "guide-why-unplug",
        _ => "guide-why-prepare",
    }
}

fn why_cut_off(site: &Site, action: &Action) -> &'static str {
    let work = site.line_work.as_ref();
    let tag = |control| work.is_some_and(|w| w.breaks.iter().any(|b| b.tag == control));
    match moved(action) {
        Some((control, _)) if tag(control) => "guide-why-tag",
        _ => "guide-why-cut-off",
    }
}

/// Why a part of the switchover itself is moved.
fn why_moved(drill: &Drill, action: &Action, otherwise: &'static str) -> &'static str {
    let Some((control, position)) = moved(action) else {
        return otherwise;
    };
    let kind = drill.site().control(control).map(|c| c.kind);
    match (kind, position.0) {
        (Some(Kind::Main), 0) => "guide-why-main-off",
        (Some(Kind::Main), _) => "guide-why-main-on",
        (Some(Kind::Backfed), 0) => "guide-why-inlet-off",
        (Some(Kind::Backfed), _) => "guide-why-inlet-on",
        (Some(Kind::Output), 0) => "guide-why-output-off",
        (Some(Kind::Output), _) => "guide-why-output-on",
        (Some(Kind::Engine), 0) => "guide-why-stop",
        (Some(Kind::Engine), _) => "guide-why-start",
        (Some(Kind::Transfer), 0) => "guide-why-to-utility",
        (Some(Kind::Transfer), 1) => "guide-why-to-off",
        (Some(Kind::Transfer), _) => "guide-why-to-generator",
        (Some(Kind::Breaker), 0) => "guide-why-load-off",
        (Some(Kind::Breaker), _) => "guide-why-load-on",
        (Some(Kind::Plug), _) => why_plug(drill, (control, position)).unwrap_or(otherwise),
        (Some(Kind::Disconnect), 0) => "guide-why-sun-off",
        (Some(Kind::Gfci), _) => "guide-why-gfci",
        (Some(Kind::Placement), _) => "guide-why-place",
        _ => otherwise,
    }
}

/// Volts below which a cord counts as dead.
const DEAD_V: f64 = 1.0;

/// Why a plug is moved: that a cord is dead is said of one alone that is; `None` where there is nothing more to say.
fn why_plug(drill: &Drill, (control, position): (ControlId, PositionId)) -> Option<&'static str> {
    let site = drill.site();
    let own = |c: &&Cord| c.near == control || c.far.control() == Some(control);
    if let Some(cord) = site.cords.iter().find(own) {
        let ends = ["near-end", "far-end"].map(|end| format!("{}-{end}", cord.name));
        let stands = |end: &String| {
            let reading = drill.readings().point(end);
            reading.volts.max(reading.volts_across)
        };
        let dead = ends.iter().map(stands).all(|volts| volts < DEAD_V);
        return dead.then_some(match position.0 {
            0 => "guide-why-put-away",
            _ => "guide-why-plug",
        });
    }
    let to = site.control(control)?;
    match to.positions.get(usize::from(position.0))?.as_str() {
        "wall" => Some("guide-why-plug-wall"),
        "unplugged" => None,
        _ => Some("guide-why-plug-cord"),
    }
}
