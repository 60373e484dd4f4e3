//! Answers: what the drill asked was said, and what was said was so at that moment.
//!
//! The last answer to a question counts, and none that was given before the outage.
//! To call a live point dead or an unfit slide fit puts people in the way of harm and is critical; any other wrong answer is not.
//! Source: equipment that has not been tested dead is taken for live, 29 CFR 1910.333(b)(2) (from memory).

use crate::drill::{Action, Event, Learnt, Moment, Trace, What};
use crate::scenario::Scenario;
use crate::scenario::question::{About, Question, answer_said};
use crate::words::Arg;

use super::finding::{Finding, Rule};

/// Wrong answers so far.
pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let wrong = |question: &Question| {
        let (moment, answer) = said(trace, question)?;
        let at = trace.moments.get(moment)?;
        let truth = question
            .about
            .truth(&scenario.site, &at.positions, &at.readings);
        if truth == answer {
            return None;
        }
        let rule = match (truth.as_str(), answer) {
            ("live", "dead") => Rule::SaidDead,
            ("unfit", "fit") => Rule::SaidFit,
            _ => Rule::SaidWrong,
        };
        let said_in_words = |message| Arg::Said(Box::new(message));
        let finding = Finding::breach(rule, at.at, moment)
            .with("subject", said_in_words(question.subject(&scenario.site)))
            .with("asked", said_in_words(question.asked(&scenario.site)))
            .with("said", said_in_words(answer_said(answer)))
            .with("truth", said_in_words(answer_said(&truth)));
        if let (About::Live(point), Rule::SaidDead) = (&question.about, rule) {
            let line = scenario.site.line_work.is_some();
            let finding = finding
                .with("line", Arg::Count(i64::from(line)))
                .with("where", Arg::Verbatim(place(line, point).to_owned()));
            return Some(finding.reaching(point));
        }
        Some(finding)
    };
    scenario.questions.iter().filter_map(wrong).collect()
}

/// Where a point lies that was called dead: on a line that a crew tests, ahead of the main, where nobody of a household has anything to test, or in the house.
fn place(line: bool, point: &str) -> &'static str {
    match (line, point) {
        (true, _) => "line",
        (false, "service") => "street",
        (false, _) => "house",
    }
}

/// Questions that were never answered, which only the end can tell.
pub(super) fn unanswered(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let open = scenario
        .questions
        .iter()
        .filter(|q| said(trace, q).is_none());
    let last = trace.moments.len().saturating_sub(1);
    let crew = scenario.site.line_work.is_some();
    open.map(|question| {
        Finding::breach(Rule::Unanswered, trace.end(), last)
            .with("asked", Arg::Said(Box::new(question.asked(&scenario.site))))
            .with("tested", Arg::Count(i64::from(tested(trace, question))))
            .with("crew", Arg::Count(i64::from(crew)))
    })
    .collect()
}

/// Whether the point that a question is about was tested.
fn tested(trace: &Trace, question: &Question) -> bool {
    let About::Live(asked) = &question.about else {
        return false;
    };
    let own = |m: &Moment| matches!(&m.what, What::Learnt(Learnt::Tested { point, .. }) if point == asked);
    trace.moments.iter().any(own)
}

/// The last answer to a question, and the moment in which it was given.
fn said<'a>(trace: &'a Trace, question: &Question) -> Option<(usize, &'a str)> {
    let outage = |m: &Moment| matches!(m.what, What::Happened(Event::Outage));
    let from = trace.moments.iter().position(outage).unwrap_or_default();
    let moments = trace.moments.iter().enumerate().skip(from);
    let mut said = moments.filter_map(|(index, moment)| {
        let What::Did(Action::Say(name, answer)) = &moment.what else {
            return None;
        };
        (*name == question.name).then_some((index, answer.as_str()))
    });
    said.next_back()
}
