//! Doing and waiting: from a line to an action, from what followed to notices.

use std::cmp::Reverse;

use crate::drill::{Action, Beside, Drill, NotAnAction, What, parse_line};
use crate::file::{Diagnostic, Library, Source, not_understood, read_actions, read_run};
use crate::marking::{Verdict, mark, mark_so_far};
use crate::scenario::variation;
use crate::words::{Arg, Message};

use super::ask::{Asking, Step};
use super::command::{Command, Notice, Practice};
use super::guide::Help;
use super::log::{event_message, learnt_message, refused_message};
use super::slide::done_message;
use super::view::Phase;
use super::{Open, Session};

/// What a list of actions came to.
#[derive(Debug, Clone)]
pub struct Played {
    /// The session, with the drill over.
    pub session: Session,
    /// The verdict.
    pub verdict: Verdict,
}

/// Plays a list of actions from a file and marks it.
///
/// # Errors
/// When the drill is not known or a line is not understood; nothing is played then.
pub fn play(
    library: &Library,
    drill: &str,
    seed: u64,
    language: &str,
    actions: Source<'_>,
) -> Result<Played, Vec<Diagnostic>> {
    let scenario = library.scenario(drill).ok_or_else(|| {
        let message =
            Message::new("session-no-drill").with("name", Arg::Verbatim(drill.to_owned()));
        vec![
            Source {
                file: drill,
                text: "",
            }
            .whole(message),
        ]
    })?;
    let lines = read_actions(actions, &variation::variant(scenario, seed))?;
    let mut session = Session::new(library.clone(), language);
    session.apply(Command::Open {
        drill: drill.to_owned(),
        practice: Practice::Coached,
        seed,
    });
    if let Some(open) = session.open.as_mut() {
        // A list is nobody's practice.
        open.beside.practice = None;
        for line in &lines {
            match line.at {
                Some(at) => open.drill.act_at(at, &line.action),
                None => open.drill.act(&line.action),
            };
        }
    }
    Ok(finished(session))
}

/// Plays a saved run again from its file alone and marks it.
///
/// # Errors
/// When the file is torn, of another version, or of a scenario that isn't there or has changed.
pub fn replay(
    library: &Library,
    language: &str,
    run_file: Source<'_>,
) -> Result<Played, Vec<Diagnostic>> {
    let (drill, beside) = replayed(library, run_file)?;
    let mut session = Session::new(library.clone(), language);
    session.open = Some(Open {
        drill,
        practice: Practice::Coached,
        told: Vec::new(),
        held: Vec::new(),
        understood: Vec::new(),
        verdict: None,
        rewound: 0,
        left: None,
        beside,
        phase: Phase::default(),
        asking: Asking::default(),
        help: Help::default(),
    });
    Ok(finished(session))
}

/// Plays a saved run again and marks it, and tells what its file keeps beside it; nothing is said of it.
///
/// # Errors
/// As those of [`replay`].
pub fn remark(
    library: &Library,
    run_file: Source<'_>,
) -> Result<(Drill, Verdict, Beside), Vec<Diagnostic>> {
    let (drill, beside) = replayed(library, run_file)?;
    let verdict = mark(drill.scenario(), drill.trace());
    Ok((drill, verdict, beside))
}

/// The drill of a saved run, at its end, and what its file keeps beside it.
fn replayed(library: &Library, run_file: Source<'_>) -> Result<(Drill, Beside), Vec<Diagnostic>> {
    let run = read_run(run_file, library)?;
    let broken = |detail: String| {
        let message = Message::new("session-broken-site").with("detail", Arg::Verbatim(detail));
        vec![run_file.whole(message)]
    };
    let scenario = library
        .scenario(&run.scenario)
        .ok_or_else(|| broken(run.scenario.clone()))?;
    let drill = run
        .replay(scenario)
        .map_err(|error| broken(error.to_string()))?;
    let again = drill.run();
    if (&again.actions, again.ended_at) != (&run.actions, run.ended_at) {
        return Err(vec![run_file.whole(Message::new("error-run-edited"))]);
    }
    Ok((drill, run.beside))
}

fn finished(mut session: Session) -> Played {
    session.apply(Command::Finish);
    let verdict = session.verdict().cloned().unwrap_or_else(|| Verdict {
        passed: false,
        criteria: Vec::new(),
        findings: Vec::new(),
    });
    Played { session, verdict }
}

impl Session {
    pub(super) fn act(&mut self, line: &str) -> Vec<Notice> {
        let Some(open) = self.open.as_ref() else {
            return vec![Notice::Unknown(self.words.say_id("session-nothing-open"))];
        };
        if let Some(answer) = self.slide_asked(open, line) {
            return answer;
        }
        match parse_line(
            open.drill.scenario(),
            &open.drill.readings().names.points,
            line,
        ) {
            Ok(None) => Vec::new(),
            Ok(Some(line)) if matches!(line.action, Action::Happen(_)) && !open.may_be_turned() => {
                vec![Notice::Refused(self.words.say_id("session-no-turn"))]
            }
            Ok(Some(line)) => self.step(Step::Do(line.at, line.action)),
            Err(wrong) => vec![Notice::Unknown(self.not_understood(&wrong))],
        }
    }

    fn not_understood(&self, wrong: &NotAnAction) -> String {
        let (message, hint) = not_understood(wrong);
        let hint = hint.map(|h| format!(" {}", self.words.say(&h)));
        self.words.say(&message) + &hint.unwrap_or_default()
    }

    /// Lets the drill do something and tells what followed.
    pub(super) fn pass(&mut self, step: impl FnOnce(&mut Drill)) -> Vec<Notice> {
        let Some(open) = self.open.as_mut().filter(|o| o.verdict.is_none()) else {
            return vec![Notice::Unknown(self.words.say_id("session-nothing-open"))];
        };
        let seen = open.drill.trace().moments.len();
        step(&mut open.drill);
        let mut notices = self.told_since(seen);
        if self.coach() {
            notices.push(Notice::Consequence);
        }
        if self
            .open
            .as_ref()
            .is_some_and(|o| o.drill.over() && o.verdict.is_none())
        {
            notices.extend(self.finish());
        }
        notices
    }

    /// What the learner notices of the moments from `seen` on.
    fn told_since(&self, seen: usize) -> Vec<Notice> {
        let Some(open) = self.open.as_ref() else {
            return Vec::new();
        };
        let drill = &open.drill;
        let moments = &drill.trace().moments;
        let before = |index: usize| index.checked_sub(1).and_then(|i| moments.get(i));
        let news = moments.iter().enumerate().skip(seen);
        news.filter_map(|(index, m)| match &m.what {
            What::Did(Action::Wait(_)) | What::Began | What::Sampled => None,
            What::Did(action) => Some(Notice::Done(self.words.label(&done_message(
                drill.scenario(),
                before(index),
                action,
            )))),
            What::Refused(action, why) => Some(Notice::Refused(
                self.words
                    .label(&refused_message(drill.scenario(), action, why)),
            )),
            What::Learnt(learnt) => Some(Notice::Learnt(
                self.words.label(&learnt_message(drill.site(), learnt)),
            )),
            What::Happened(event) => {
                let shown =
                    open.truth_is_shown() || super::log::is_plain_to_see(open.drill.site(), event);
                shown.then(|| {
                    Notice::Happened(self.words.label(&event_message(drill.site(), event)))
                })
            }
        })
        .collect()
    }

    /// Holds the mistakes that have not been explained yet, in coached practice; says whether there is one to explain.
    fn coach(&mut self) -> bool {
        let Some(open) = self
            .open
            .as_mut()
            .filter(|o| o.practice != Practice::Assessed)
        else {
            return false;
        };
        let findings = mark_so_far(open.drill.scenario(), open.drill.trace());
        let fresh: Vec<_> = findings
            .into_iter()
            .filter(|f| !open.told.contains(&(f.rule, f.at)))
            .collect();
        if open.held.is_empty() {
            open.understood.clear();
        }
        for finding in fresh {
            open.told.push((finding.rule, finding.at));
            if finding.breach {
                open.held.push(finding);
            }
        }
        // Who came to harm is told first: help for them comes before all else.
        open.held.sort_by_key(|finding| Reverse(finding.harm));
        !open.held.is_empty()
    }

    /// Ends the drill and marks it.
    pub(super) fn finish(&mut self) -> Vec<Notice> {
        let Some(open) = self.open.as_mut() else {
            return vec![Notice::Unknown(self.words.say_id("session-nothing-open"))];
        };
        end_and_mark(open);
        let way = open.drill.scenario().course.way;
        if self.verdict().is_some_and(|v| v.passed) && !self.passed.contains(&way) {
            self.passed.push(way);
        }
        vec![Notice::Over]
    }
}

fn end_and_mark(open: &mut Open) {
    if open.verdict.is_none() {
        open.drill.end();
        open.held.clear();
        open.verdict = Some(mark(open.drill.scenario(), open.drill.trace()));
    }
}
