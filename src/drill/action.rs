//! What a person can do, how long it takes, and how it is written.
//!
//! One grammar serves action files, the terminal and the window:
//!
//! ```text
//! # a comment
//! set main off          move a control into a position ("set" may be left out)
//! look street           look at a place
//! test bus              hold a tester at a point
//! call utility          utility, electrician, emergency
//! tell household        household, neighbors
//! say line-side live    answer something the drill asks
//! refuel                pour fuel into the generator's tank
//! wait 2m30s            let time pass
//! happen utility-fails  a turn of events that the instructor makes: sooner, utility-fails, …
//! @12:30 set main on    do it when the drill clock shows 12:30, or at once if it is later
//! ```

use crate::scenario::Scenario;
use crate::site::{Control, ControlId, Kind, PositionId, Site};
use crate::units::DrillTime;

use super::turn::{TURNS, Turn};

/// One thing a person does.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Action {
    /// Brings a control into a position: operate, connect, disconnect, place, fit, remove, lock, send.
    Set(ControlId, PositionId),
    /// Looks at a place.
    Look(Sight),
    /// Holds a tester at a point, by its name.
    Test(String),
    /// Calls somebody.
    Call(Callee),
    /// Tells somebody what is going on.
    Tell(Listener),
    /// Answers a question, by its name and the answer's.
    Say(String, String),
    /// Pours fuel into the generator's tank.
    Refuel,
    /// Lets time pass.
    Wait(DrillTime),
    /// Lets a turn of events come: the instructor's, not the learner's.
    Happen(Turn),
}

/// What can be looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Sight {
    /// The street: lines, neighbors' lights, the crew.
    Street,
    /// The panel and what is fitted to it.
    Panel,
    /// The generator, its meter and where it stands.
    Generator,
    /// The cords in the shed and where they lie.
    Cords,
    /// The house: lamps, machines, the carbon monoxide alarm.
    House,
}

/// Who can be called.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Callee {
    /// The utility's outage line.
    Utility,
    /// A licensed electrician.
    Electrician,
    /// The emergency number.
    Emergency,
}

/// Who can be told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Listener {
    /// The people in the house.
    Household,
    /// The neighbors.
    Neighbors,
}

/// All sights, in the order in which they are offered.
pub const SIGHTS: [Sight; 5] = [
    Sight::Street,
    Sight::Panel,
    Sight::Generator,
    Sight::Cords,
    Sight::House,
];
/// All callees.
pub const CALLEES: [Callee; 3] = [Callee::Utility, Callee::Electrician, Callee::Emergency];
/// All listeners.
pub const LISTENERS: [Listener; 2] = [Listener::Household, Listener::Neighbors];

impl Sight {
    /// Its name in the grammar and in word files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Street => "street",
            Self::Panel => "panel",
            Self::Generator => "generator",
            Self::Cords => "cords",
            Self::House => "house",
        }
    }
}

impl Callee {
    /// Its name in the grammar and in word files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Utility => "utility",
            Self::Electrician => "electrician",
            Self::Emergency => "emergency",
        }
    }
}

impl Listener {
    /// Its name in the grammar and in word files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Household => "household",
            Self::Neighbors => "neighbors",
        }
    }
}

/// Why a line is not an action.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NotAnAction {
    /// The word that isn't understood.
    pub word: String,
    /// What kind of word was expected there.
    pub expected: Expected,
    /// The words that would be understood there.
    pub known: Vec<String>,
}

/// What kind of word an action line lacks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Expected {
    /// A verb or a control.
    Verb,
    /// A control.
    Control,
    /// A position of the control.
    Position,
    /// Something to look at.
    Sight,
    /// A point to test.
    Point,
    /// Somebody to call.
    Callee,
    /// Somebody to tell.
    Listener,
    /// Something that is asked.
    Question,
    /// An answer.
    Answer,
    /// A turn of events.
    Turn,
    /// A length of time such as `2m30s`.
    Time,
    /// Nothing: the line goes on where it should end.
    End,
}

/// A line of an action file: when, and what.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Line {
    /// Not before this time.
    pub at: Option<DrillTime>,
    /// What to do.
    pub action: Action,
}

/// Reads one line; `None` for an empty line or a comment.
///
/// # Errors
/// When a word is not known; the error names it and what is known.
pub fn parse_line(
    scenario: &Scenario,
    points: &[String],
    line: &str,
) -> Result<Option<Line>, NotAnAction> {
    let line = line.split('#').next().unwrap_or_default();
    let mut words = line.split_whitespace().peekable();
    let mut at = None;
    if let Some(word) = words.peek().filter(|w| w.starts_with('@')) {
        at = Some(
            parse_clock(word.trim_start_matches('@'))
                .ok_or_else(|| unknown(word, Expected::Time, Vec::new()))?,
        );
        words.next();
    }
    let words: Vec<&str> = words.collect();
    match words.as_slice() {
        [] if at.is_none() => Ok(None),
        words => parse_action(scenario, points, words).map(|action| Some(Line { at, action })),
    }
}

fn parse_action(
    scenario: &Scenario,
    points: &[String],
    words: &[&str],
) -> Result<Action, NotAnAction> {
    let site = &scenario.site;
    let (action, used) = match words {
        ["set", rest @ ..] => (parse_set(site, rest)?, 3),
        ["look", rest @ ..] => (
            Action::Look(named(rest, Expected::Sight, &SIGHTS, Sight::name)?),
            2,
        ),
        ["call", rest @ ..] => (
            Action::Call(named(rest, Expected::Callee, &CALLEES, Callee::name)?),
            2,
        ),
        ["tell", rest @ ..] => (
            Action::Tell(named(rest, Expected::Listener, &LISTENERS, Listener::name)?),
            2,
        ),
        ["test", rest @ ..] => {
            let word = rest.first().copied().unwrap_or_default();
            let point = points.iter().find(|p| *p == word);
            let point = point.ok_or_else(|| unknown(word, Expected::Point, points.to_vec()))?;
            (Action::Test(point.clone()), 2)
        }
        ["wait", rest @ ..] => {
            let word = rest.first().copied().unwrap_or_default();
            (
                Action::Wait(
                    parse_length(word).ok_or_else(|| unknown(word, Expected::Time, Vec::new()))?,
                ),
                2,
            )
        }
        ["say", rest @ ..] => (parse_say(scenario, rest)?, 3),
        ["refuel", ..] => (Action::Refuel, 1),
        ["happen", rest @ ..] => (
            Action::Happen(named(rest, Expected::Turn, &TURNS, Turn::name)?),
            2,
        ),
        [word, ..] if site.control_id(word).is_some() => (parse_set(site, words)?, 2),
        other => {
            let word = other.first().copied().unwrap_or_default();
            let mut known: Vec<String> = ["set", "look", "test", "call", "tell", "refuel", "wait"]
                .map(str::to_owned)
                .to_vec();
            known.extend(learner_controls(site));
            return Err(unknown(word, Expected::Verb, known));
        }
    };
    match words.get(used) {
        Some(extra) => Err(unknown(extra, Expected::End, Vec::new())),
        None => Ok(action),
    }
}

fn parse_say(scenario: &Scenario, words: &[&str]) -> Result<Action, NotAnAction> {
    let name = words.first().copied().unwrap_or_default();
    let asked = &scenario.questions;
    let question = asked.iter().find(|q| q.name == name).ok_or_else(|| {
        let known = asked.iter().map(|q| q.name.clone()).collect();
        unknown(name, Expected::Question, known)
    })?;
    let word = words.get(1).copied().unwrap_or_default();
    let answers = question.about.answers(&scenario.site);
    if answers.iter().any(|a| a == word) {
        Ok(Action::Say(name.to_owned(), word.to_owned()))
    } else {
        Err(unknown(word, Expected::Answer, answers))
    }
}

fn parse_set(site: &Site, words: &[&str]) -> Result<Action, NotAnAction> {
    let name = words.first().copied().unwrap_or_default();
    let found = site
        .control_id(name)
        .and_then(|id| site.control(id).map(|c| (id, c)));
    let (id, control) = found
        .filter(|(_, c)| c.operator != crate::site::Operator::World)
        .ok_or_else(|| unknown(name, Expected::Control, learner_controls(site)))?;
    let word = words.get(1).copied().unwrap_or_default();
    let position = control
        .position(word)
        .filter(|_| !Control::is_by_itself(word));
    let offered = control
        .positions
        .iter()
        .filter(|p| !Control::is_by_itself(p))
        .cloned()
        .collect();
    let position = position.ok_or_else(|| unknown(word, Expected::Position, offered))?;
    Ok(Action::Set(id, position))
}

fn learner_controls(site: &Site) -> Vec<String> {
    let own = site
        .controls
        .iter()
        .filter(|c| c.operator != crate::site::Operator::World);
    own.map(|c| c.name.clone()).collect()
}

fn named<T: Copy>(
    words: &[&str],
    expected: Expected,
    all: &[T],
    name: fn(T) -> &'static str,
) -> Result<T, NotAnAction> {
    let word = words.first().copied().unwrap_or_default();
    let found = all.iter().copied().find(|t| name(*t) == word);
    found.ok_or_else(|| {
        unknown(
            word,
            expected,
            all.iter().map(|t| name(*t).to_owned()).collect(),
        )
    })
}

fn unknown(word: &str, expected: Expected, known: Vec<String>) -> NotAnAction {
    NotAnAction {
        word: word.to_owned(),
        expected,
        known,
    }
}

/// Reads `90s`, `2m`, `2m30s`, `1h`, or plain seconds.
pub fn parse_length(text: &str) -> Option<DrillTime> {
    let mut seconds = 0_u64;
    let mut digits = String::new();
    for c in text.chars() {
        if c.is_ascii_digit() {
            digits.push(c);
            continue;
        }
        let factor = match c {
            'h' => 3600,
            'm' => 60,
            's' => 1,
            _ => return None,
        };
        seconds = seconds.checked_add(digits.parse::<u64>().ok()?.checked_mul(factor)?)?;
        digits.clear();
    }
    if !digits.is_empty() {
        seconds = seconds.checked_add(digits.parse().ok()?)?;
    }
    (!text.is_empty() && seconds <= 24 * 3600).then(|| DrillTime::from_secs(seconds))
}

/// Reads a drill clock: `12:30` or `12:30.250`; `12:30.5` is half a second past.
pub fn parse_clock(text: &str) -> Option<DrillTime> {
    let (minutes, rest) = text.split_once(':')?;
    let (seconds, fraction) = rest.split_once('.').unwrap_or((rest, "0"));
    if fraction.len() > 3 {
        return None;
    }
    let number = |digits: &str| -> Option<u64> {
        let plain = digits.bytes().all(|b| b.is_ascii_digit());
        plain.then(|| digits.parse().ok()).flatten()
    };
    let millis = number(&format!("{fraction:0<3}")).filter(|_| !fraction.is_empty())?;
    let (minutes, seconds) = (number(minutes)?, number(seconds)?);
    let fits = minutes <= 24 * 60 && seconds < 60;
    fits.then(|| DrillTime::from_millis((minutes * 60 + seconds) * 1000 + millis))
}

/// The action as a line that [`parse_line`] reads back.
pub fn write_action(site: &Site, action: &Action) -> String {
    match action {
        Action::Set(control, position) => {
            let name = site.control(*control).map_or("", |c| c.name.as_str());
            let position = site
                .control(*control)
                .and_then(|c| c.positions.get(usize::from(position.0)));
            format!("set {name} {}", position.map_or("", String::as_str))
        }
        Action::Look(sight) => format!("look {}", sight.name()),
        Action::Test(point) => format!("test {point}"),
        Action::Call(callee) => format!("call {}", callee.name()),
        Action::Tell(listener) => format!("tell {}", listener.name()),
        Action::Say(question, answer) => format!("say {question} {answer}"),
        Action::Refuel => "refuel".to_owned(),
        Action::Wait(time) => format!("wait {}s", time.millis() / 1000),
        Action::Happen(turn) => format!("happen {}", turn.name()),
    }
}

/// How long an action takes from the last one's end to its own effect: walking, looking and doing.
/// Common practice, rounded; a learner can always take longer.
pub fn duration(site: &Site, action: &Action) -> DrillTime {
    match action {
        Action::Set(control, _) => match site.control(*control).map(|c| c.kind) {
            // A line's parts are worked with a stick from the bucket, or by radio with the order repeated back.
            Some(Kind::Placement | Kind::Line) => DrillTime::from_secs(60),
            Some(Kind::People) => DrillTime::from_secs(30),
            Some(Kind::Plug | Kind::Lay | Kind::Lock) => DrillTime::from_secs(15),
            Some(Kind::Engine) => DrillTime::from_secs(10),
            _ => DrillTime::from_secs(4),
        },
        Action::Look(_) => DrillTime::from_secs(8),
        Action::Say(..) => DrillTime::from_secs(5),
        Action::Test(_) | Action::Tell(_) => DrillTime::from_secs(20),
        Action::Call(_) => DrillTime::from_secs(60),
        Action::Refuel => DrillTime::from_secs(90),
        Action::Wait(time) => *time,
        Action::Happen(_) => DrillTime::ZERO,
    }
}
