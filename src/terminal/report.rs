//! Views as lines of text: the street, a place, the log, a consequence, the debrief.
//!
//! Everything comes from the views of the session; nothing is worked out here.
//! Headings are lines of their own that end in a colon, so that a listener knows what follows.

use crate::session::view::{
    CloseView, ConsequenceView, ControlView, DebriefView, FindingView, LogKind, LogLine, ShelfView,
    StageView, StreetView,
};
use crate::words::{Arg, Message, Words};

fn text(words: &Words, id: &str) -> String {
    words.say_id(id)
}

fn with(words: &Words, id: &str, name: &'static str, value: &str) -> String {
    words.say(&Message::new(id).with(name, Arg::Verbatim(value.to_owned())))
}

/// The shelf: title, cautions, drills.
pub(super) fn shelf(words: &Words, view: &ShelfView) -> Vec<String> {
    let mut lines = vec![view.title.clone(), view.intro.clone(), String::new()];
    lines.extend(cautions(view));
    lines.push(String::new());
    lines.push(text(words, "terminal-drills"));
    for card in &view.drills {
        lines.push(format!("  {}", card.name));
        for line in [&card.title, &card.summary, &card.facts, &card.content_note] {
            if !line.is_empty() {
                lines.push(format!("    {line}"));
            }
        }
    }
    lines
}

/// The cautions, numbered.
pub(super) fn cautions(view: &ShelfView) -> Vec<String> {
    let numbered = view
        .cautions
        .iter()
        .enumerate()
        .map(|(index, caution)| format!("  {}. {caution}", index + 1));
    [view.cautions_title.clone()]
        .into_iter()
        .chain(numbered)
        .collect()
}

/// One line of the log, its kind in a word.
pub(super) fn log_line(words: &Words, line: &LogLine) -> String {
    let kind = match line.kind {
        LogKind::Did => "terminal-kind-did",
        LogKind::Refused => "terminal-kind-refused",
        LogKind::Happened => "terminal-kind-happened",
        LogKind::Learnt => "terminal-kind-learnt",
        LogKind::Mistake => "terminal-kind-mistake",
        LogKind::Harm => "terminal-kind-harm",
    };
    format!("{} {}: {}", line.clock, text(words, kind), line.text)
}

/// How everything stands, as far as this learner may be told.
pub(super) fn street(words: &Words, view: &StreetView) -> Vec<String> {
    let mut lines = vec![view.title.clone(), view.goal.clone()];
    if !view.hint.is_empty() {
        lines.push(with(words, "terminal-hint", "hint", &view.hint));
    }
    let mut part = |id: &str, sentences: Vec<&String>| {
        let sentences: Vec<String> = sentences
            .into_iter()
            .filter(|s| !s.is_empty())
            .map(|s| format!("  {s}"))
            .collect();
        if !sentences.is_empty() {
            lines.push(text(words, id));
            lines.extend(sentences);
        }
    };
    part(
        "terminal-wires",
        view.wires.iter().map(|wire| &wire.sentence).collect(),
    );
    part(
        "terminal-appliances",
        view.appliances
            .iter()
            .map(|appliance| &appliance.sentence)
            .collect(),
    );
    part(
        "terminal-people",
        view.people.iter().map(|person| &person.sentence).collect(),
    );
    part(
        "terminal-neighbors",
        view.neighbors
            .iter()
            .map(|neighbor| &neighbor.sentence)
            .collect(),
    );
    part(
        "terminal-generator",
        vec![&view.generator.sentence, &view.air],
    );
    lines
}

/// What can be operated and done at a place, in the words that an action line takes.
pub(super) fn place(words: &Words, view: &CloseView) -> Vec<String> {
    let mut lines = vec![with(words, "terminal-place", "place", &view.title)];
    for control in &view.controls {
        lines.extend(control_lines(words, control));
    }
    for deed in &view.deeds {
        lines.push(format!("  {} ({})", deed.line, deed.label));
    }
    lines
}

fn control_lines(words: &Words, control: &ControlView) -> Vec<String> {
    let mut label = control.label.clone();
    if !control.rating.is_empty() {
        label = format!("{label}, {}", control.rating);
    }
    let stands = with(words, "terminal-stands", "position", &control.position);
    let mut lines = vec![format!("  {} ({label}). {stands}", control.id)];
    for choice in &control.choices {
        lines.push(format!(
            "    set {} {} ({})",
            control.id, choice.id, choice.label
        ));
    }
    lines
}

/// The way of the energy, stage by stage, numbered.
fn stages(stages: &[StageView]) -> Vec<String> {
    stages
        .iter()
        .enumerate()
        .map(|(index, stage)| format!("  {}. {}", index + 1, stage.text))
        .collect()
}

/// A consequence, told from its first stage to what to do now.
pub(super) fn consequence(words: &Words, view: &ConsequenceView) -> Vec<String> {
    let mut lines = vec![String::new(), view.title.clone()];
    if !view.stages.is_empty() {
        lines.push(text(words, "terminal-path"));
        lines.extend(stages(&view.stages));
    }
    for (id, value) in [("terminal-why", &view.why), ("terminal-now", &view.now)] {
        if !value.is_empty() {
            lines.push(with(words, id, "text", value));
        }
    }
    lines.push(String::new());
    lines
}

/// The verdict with everything it rests on.
pub(super) fn debrief(words: &Words, view: &DebriefView) -> Vec<String> {
    let mut lines = vec![
        view.heading.clone(),
        view.summary.clone(),
        String::new(),
        text(words, "terminal-criteria"),
    ];
    for criterion in &view.criteria {
        let id = match (criterion.met, criterion.critical) {
            (true, true) => "terminal-criterion-met-critical",
            (true, false) => "terminal-criterion-met",
            (false, true) => "terminal-criterion-missed-critical",
            (false, false) => "terminal-criterion-missed",
        };
        lines.push(format!(
            "  {} {}",
            with(words, id, "title", &criterion.title),
            criterion.text
        ));
    }
    lines.push(String::new());
    let n_findings = i64::try_from(view.findings.len()).unwrap_or(i64::MAX);
    lines.push(words.say(&Message::new("terminal-findings").with("count", Arg::Count(n_findings))));
    for (index, finding) in view.findings.iter().enumerate() {
        lines.push(String::new());
        lines.extend(finding_lines(words, index + 1, finding));
    }
    lines
}

fn finding_lines(words: &Words, number: usize, finding: &FindingView) -> Vec<String> {
    let mut lines = vec![format!("{number}. {}: {}", finding.clock, finding.what)];
    if finding.critical {
        lines.push(text(words, "terminal-finding-critical"));
    }
    if !finding.path.is_empty() {
        lines.push(text(words, "terminal-path"));
        lines.extend(stages(&finding.path));
    }
    for (id, value) in [
        ("terminal-why", &finding.why),
        ("terminal-instead", &finding.instead),
        ("terminal-source", &finding.source),
    ] {
        if !value.is_empty() {
            lines.push(with(words, id, "text", value));
        }
    }
    lines
}
