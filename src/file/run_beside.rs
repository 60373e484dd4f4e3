//! What a run file keeps beside the run: how it was practised, who sat at it and when, and the learner's own words.
//!
//! ```text
//! practice coached
//! learner Ana
//! learner Ben
//! seated in-turns
//! day 2026-11-26
//! handed 12:30 Ben
//! …
//! happened I turned the main off late.
//! felt Hurried.
//! ```
//!
//! Each of these lines may be left out; `handed` says when a learner took over from the one before.

use crate::drill::{Beside, Practice, Seated, Signed, parse_clock};
use crate::units::{Day, DrillTime};
use crate::words::{Arg, Message};

const PRACTICE: &str = "practice ";
const LEARNER: &str = "learner ";
const SEATED: &str = "seated ";
const DAY: &str = "day ";
const HANDED: &str = "handed ";
const HAPPENED: &str = "happened ";
const FELT: &str = "felt ";

/// The lines that stand before the actions.
pub(super) fn head(beside: &Beside) -> Vec<String> {
    let signed = &beside.signed;
    let practice = beside.practice.map(|p| format!("{PRACTICE}{}", p.name()));
    let learners = signed.learners().iter().map(|n| format!("{LEARNER}{n}"));
    let seated = signed.seated().map(|s| format!("{SEATED}{}", s.name()));
    let day = signed.day().map(|day| format!("{DAY}{day}"));
    let lines = practice.into_iter().chain(learners);
    let handed = beside.handed.iter();
    let handed = handed.map(|(at, name)| format!("{HANDED}{at} {name}"));
    lines.chain(seated).chain(day).chain(handed).collect()
}

/// The lines with the learner's own words, which stand after the actions.
pub(super) fn own_words(beside: &Beside) -> Vec<String> {
    let lines = [(HAPPENED, &beside.happened), (FELT, &beside.felt)];
    let said = lines.into_iter().filter(|(_, text)| !text.is_empty());
    said.map(|(key, text)| format!("{key}{text}")).collect()
}

/// Takes a line that is kept beside a run; says whether it was one.
///
/// # Errors
/// What is wrong with it.
pub(super) fn take(beside: &mut Beside, line: &str) -> Result<bool, Message> {
    let after = |key: &str| line.strip_prefix(key).map(str::trim);
    let practice = after(PRACTICE).and_then(|t| Practice::ALL.into_iter().find(|p| p.name() == t));
    if let Some(text) = after(HAPPENED) {
        text.clone_into(&mut beside.happened);
    } else if let Some(text) = after(FELT) {
        text.clone_into(&mut beside.felt);
    } else if let Some(text) = after(HANDED) {
        let handed = handed(beside, text).ok_or_else(|| {
            Message::new("error-handed").with("text", Arg::Verbatim(text.to_owned()))
        })?;
        beside.handed.push(handed);
    } else if practice.is_some() {
        beside.practice = practice;
    } else if let Some(signed) = signed(&beside.signed, after) {
        beside.signed = signed?;
    } else {
        return Ok(false);
    }
    Ok(true)
}

/// When one of the learners took over, not before the one ahead; none if the text doesn't say so.
fn handed(so_far: &Beside, text: &str) -> Option<(DrillTime, String)> {
    let (clock, name) = text.split_once(' ')?;
    let (at, name) = (parse_clock(clock)?, name.trim().to_owned());
    let after = so_far.handed.last().is_none_or(|(before, _)| *before <= at);
    (after && so_far.signed.learners().contains(&name)).then_some((at, name))
}

/// What is said of the learners with one more line; none if the line says nothing of them.
fn signed<'a>(
    so_far: &Signed,
    after: impl Fn(&str) -> Option<&'a str>,
) -> Option<Result<Signed, Message>> {
    let (seated, day) = (so_far.seated(), so_far.day());
    if let Some(name) = after(LEARNER) {
        let all = [so_far.learners(), &[name.to_owned()]].concat();
        return Some(Signed::new(&all, seated, day));
    }
    if let Some(name) = after(SEATED) {
        let seated = Seated::named(name);
        return Some(seated.and_then(|s| Signed::new(so_far.learners(), Some(s), day)));
    }
    let day = read_day(after(DAY)?);
    Some(day.and_then(|d| Signed::new(so_far.learners(), seated, Some(d))))
}

/// The names in a run file, whether or not the rest of it is sound.
pub fn learners_in(text: &str) -> Vec<&str> {
    let names = text.lines().filter_map(|line| line.strip_prefix(LEARNER));
    names.map(str::trim).collect()
}

/// A day as it is typed.
///
/// # Errors
/// That it is none.
pub fn read_day(text: &str) -> Result<Day, Message> {
    Day::parse(text)
        .ok_or_else(|| Message::new("error-day").with("text", Arg::Verbatim(text.to_owned())))
}
