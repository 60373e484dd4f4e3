//! Views as lines of text: the street, a place, the log, a consequence, the debrief.
//!
//! Everything comes from the views of the session; nothing is worked out here.
//! Headings are lines of their own that end in a colon, so that a listener knows what follows.

use crate::session::view::{
    ApplianceView, CloseView, ConsequenceView, ControlView, DebriefView, FindingView, LogKind,
    LogLine, ShelfView, StageView, StreetView, WireView,
};
use crate::session::{Practice, Session};
use crate::words::{Arg, Message, Words};

use super::predict;

fn text(words: &Words, id: &str) -> String {
    words.say_id(id)
}

pub(super) fn with(words: &Words, id: &str, name: &'static str, value: &str) -> String {
    words.say(&Message::new(id).with(name, Arg::Verbatim(value.to_owned())))
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

/// What is said before the first line is typed.
pub(super) fn opening(words: &Words, session: &Session, practice: Practice) -> Vec<String> {
    let shelf = session.shelf();
    let street = session.street().unwrap_or_default();
    let mut lines = vec![street.title.clone()];
    let name = session.drill().map_or("", |d| d.run().scenario.as_str());
    if let Some(card) = shelf.drills.iter().find(|card| card.name == name) {
        lines.push(card.summary.clone());
        lines.push(card.content_note.clone());
    }
    lines.push(with(words, "terminal-goal", "goal", &street.goal));
    lines.push(street.variation.clone());
    lines.push(street.seed.clone());
    lines.push(String::new());
    lines.extend(cautions(&shelf));
    lines.push(String::new());
    let how = match practice {
        Practice::Assessed => "terminal-begin-assessed",
        Practice::Coached => "terminal-begin-coached",
        Practice::Guided => "terminal-begin-guided",
    };
    lines.push(text(words, how));
    lines.push(text(words, "terminal-begin"));
    lines.extend(hint(words, &street));
    lines
}

/// The next step and what is to be typed for it, if one is shown.
pub(super) fn hint(words: &Words, view: &StreetView) -> Vec<String> {
    let mut lines = Vec::new();
    if !view.hint.is_empty() {
        lines.push(with(words, "terminal-hint", "hint", &view.hint));
    }
    if !view.hint_line.is_empty() {
        lines.push(with(words, "terminal-hint-line", "line", &view.hint_line));
    }
    lines
}

/// How everything stands, as far as this learner may be told.
pub(super) fn street(words: &Words, view: &StreetView) -> Vec<String> {
    let mut lines = vec![with(words, "terminal-goal", "goal", &view.goal)];
    lines.extend(hint(words, view));
    let people = view.people.iter().map(|person| person.sentence.clone());
    let neighbors = view.neighbors.iter().map(|n| n.sentence.clone());
    let generator = [view.generator.sentence.clone(), view.air.clone()];
    let parts = [
        ("terminal-wires", line_and_wires(view)),
        ("terminal-appliances", appliances(&view.appliances)),
        ("terminal-people", people.collect()),
        ("terminal-neighbors", neighbors.collect()),
        ("terminal-generator", generator.to_vec()),
    ];
    for (id, sentences) in parts {
        let sentences: Vec<_> = sentences.iter().filter(|s| !s.is_empty()).collect();
        if !sentences.is_empty() {
            lines.push(text(words, id));
            lines.extend(sentences.iter().map(|s| format!("  {s}")));
        }
    }
    lines
}

/// The line's devices, and below them all wires.
fn line_and_wires(view: &StreetView) -> Vec<String> {
    let devices = view.devices.iter().map(|device| device.sentence.clone());
    devices.chain(wires(&view.wires)).collect()
}

/// Wires: those with a number in a sentence each, the others gathered by what is known of them.
fn wires(views: &[WireView]) -> Vec<String> {
    let numbered = |wire: &&WireView| !wire.volts.is_empty() || !wire.amps.is_empty();
    let told = views.iter().filter(numbered).map(|w| w.sentence.clone());
    let rest = views.iter().filter(|w| !numbered(w));
    told.chain(gathered(rest.map(|w| (&w.word, &w.label))))
        .collect()
}

/// Appliances, gathered by how they do.
fn appliances(views: &[ApplianceView]) -> Vec<String> {
    gathered(views.iter().map(|a| (&a.word, &a.label)))
}

/// One line for each word: the word, then everything that it holds for.
fn gathered<'a>(things: impl Iterator<Item = (&'a String, &'a String)>) -> Vec<String> {
    let mut groups: Vec<(&String, Vec<&str>)> = Vec::new();
    for (word, label) in things {
        match groups.iter_mut().find(|(known, _)| *known == word) {
            Some((_, labels)) => labels.push(label),
            None => groups.push((word, vec![label])),
        }
    }
    let line = |(word, labels): (&String, Vec<&str>)| format!("{word}: {}.", labels.join("; "));
    groups.into_iter().map(line).collect()
}

/// What can be operated and done at a place, in the words that an action line takes.
pub(super) fn place(words: &Words, view: &CloseView) -> Vec<String> {
    let mut lines = vec![
        with(words, "terminal-place", "place", &view.title),
        view.description.clone(),
    ];
    lines.extend(on_faces(view));
    lines.extend(view.readings.iter().cloned());
    for phasor in &view.phasors {
        lines.push(phasor.sentence.clone());
        lines.extend(phasor.amps.iter().map(|a| format!("  {}", a.sentence)));
        let uneven = Some(&phasor.uneven).filter(|told| !told.is_empty());
        lines.extend(uneven.map(|told| format!("  {told}")));
    }
    lines.extend(view.controls.iter().map(|c| control(words, c, true)));
    for deed in &view.deeds {
        let known = if deed.known.is_empty() {
            String::new()
        } else {
            format!(" {}.", deed.known)
        };
        let end = if deed.label.ends_with('.') { "" } else { "." };
        lines.push(format!("  {}: {}{end}{known}", deed.line, deed.label));
    }
    lines
}

/// Tags, lights, sides and outlets of the equipment there, a line each.
fn on_faces(view: &CloseView) -> Vec<String> {
    let mut lines = vec![view.tag.clone()];
    for face in &view.faces {
        let said = |text: &String| format!("{}: {text}", face.title);
        lines.extend(Some(&face.tag).filter(|t| !t.is_empty()).map(said));
        lines.extend(face.notes.iter().cloned());
        lines.extend(face.lights.iter().map(|l| said(&l.sentence)));
        let ends = face.ends.iter().map(|e| format!("{}: {}", e.label, e.word));
        lines.extend(ends.map(|e| said(&e)));
        let gauges = face.gauges.iter();
        lines.extend(gauges.map(|g| said(&format!("{}: {}", g.label, g.value))));
        let sockets = face.sockets.iter();
        lines.extend(sockets.map(|s| format!("{}, {}: {}", s.label, s.rating, s.plugged)));
    }
    lines.retain(|line| !line.is_empty());
    lines
}

/// What one sees at a place without touching anything: gauges, and how the controls stand.
pub(super) fn seen(view: &CloseView) -> Vec<String> {
    let controls = gathered(view.controls.iter().map(|c| (&c.position, &c.label)));
    let lines = on_faces(view).into_iter();
    let lines = lines.chain(view.readings.iter().cloned()).chain(controls);
    lines.map(|line| format!("  {line}")).collect()
}

/// A control in one line: its name to type, its label, how it stands if that is wanted, and the positions to type.
pub(super) fn control(words: &Words, control: &ControlView, now: bool) -> String {
    let mut label = control.label.clone();
    if !control.rating.is_empty() {
        label = format!("{label}, {}", control.rating);
    }
    let choices: Vec<String> = control
        .choices
        .iter()
        .map(|choice| {
            if choice.label.to_lowercase() == choice.id {
                choice.id.clone()
            } else if choice.caution.is_empty() {
                format!("{} ({})", choice.id, choice.label)
            } else {
                format!("{} ({}, {})", choice.id, choice.label, choice.caution)
            }
        })
        .collect();
    let choices = with(words, "terminal-choices", "choices", &choices.join(", "));
    let stands = if now {
        with(words, "terminal-stands", "position", &control.position) + " "
    } else {
        String::new()
    };
    format!("  {}: {label}. {stands}{choices}", control.id)
}

/// The way of the energy, stage by stage, numbered.
pub(super) fn stages(stages: &[StageView]) -> Vec<String> {
    stages
        .iter()
        .enumerate()
        .map(|(index, stage)| format!("  {}. {}", index + 1, stage.text))
        .collect()
}

/// A consequence: what happened, what to do now, how it came about, why it matters.
pub(super) fn consequence(words: &Words, view: &ConsequenceView) -> Vec<String> {
    let mut lines = vec![String::new(), view.title.clone()];
    let said = |id: &str, text: &String| {
        let text = Some(text).filter(|t| !t.is_empty());
        text.map(|text| with(words, id, "text", text))
    };
    lines.extend(said("terminal-now", &view.now));
    if !view.stages.is_empty() {
        lines.push(view.heading.clone());
        lines.extend(stages(&view.stages));
    }
    lines.extend(said("terminal-why", &view.why));
    lines
}

/// The verdict with everything it rests on.
pub(super) fn debrief(words: &Words, view: &DebriefView) -> Vec<String> {
    [
        verdict(words, view),
        vec![String::new()],
        findings(words, view),
    ]
    .concat()
}

/// The verdict, the criteria and the predictions.
pub(super) fn verdict(words: &Words, view: &DebriefView) -> Vec<String> {
    let mut lines = vec![
        view.heading.clone(),
        view.summary.clone(),
        view.variation.clone(),
        view.seed.clone(),
    ];
    lines.extend(Some(view.rewound.clone()).filter(|r| !r.is_empty()));
    lines.extend(Some(view.helped.clone()).filter(|h| !h.is_empty()));
    lines.extend([String::new(), text(words, "terminal-criteria")]);
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
    lines.extend(predict::debrief(words, &view.predictions));
    lines
}

/// What was found, each with the way of the energy.
pub(super) fn findings(words: &Words, view: &DebriefView) -> Vec<String> {
    let n_findings = i64::try_from(view.findings.len()).unwrap_or(i64::MAX);
    let count = Message::new("terminal-findings").with("count", Arg::Count(n_findings));
    let mut lines = vec![words.say(&count)];
    for (index, finding) in view.findings.iter().enumerate() {
        lines.push(String::new());
        lines.extend(finding_lines(words, index + 1, finding));
    }
    lines.extend(terms(words, view));
    lines
}

/// The words of the trade in what was found, each with what it means.
fn terms(words: &Words, view: &DebriefView) -> Vec<String> {
    let told = view.findings.iter().flat_map(|finding| {
        let path = finding.path.iter().map(|stage| &stage.text);
        let said = [&finding.what, &finding.now, &finding.why, &finding.instead];
        said.into_iter().chain(path)
    });
    let told: Vec<&str> = told.map(String::as_str).collect();
    let found = words.terms_in(&told.join("\n"));
    if found.is_empty() {
        return Vec::new();
    }
    let found = found.iter().map(|f| {
        let name = f.term.forms.first().cloned().unwrap_or_default();
        format!("  {name}: {}", f.term.meaning)
    });
    let head = [String::new(), text(words, "terminal-terms-here")];
    head.into_iter().chain(found).collect()
}

fn finding_lines(words: &Words, number: usize, finding: &FindingView) -> Vec<String> {
    let mut lines = vec![format!("{number}. {}: {}", finding.clock, finding.what)];
    if finding.critical {
        lines.push(text(words, "terminal-finding-critical"));
    }
    if finding.aside {
        let id = if finding.after_harm {
            "terminal-finding-failed-already"
        } else {
            "terminal-finding-aside"
        };
        lines.push(text(words, id));
    }
    if !finding.now.is_empty() {
        lines.push(with(words, "terminal-now", "text", &finding.now));
    }
    if !finding.path.is_empty() {
        let head = [&finding.step, &finding.heading].map(String::as_str);
        lines.push(head.join(" ").trim_start().to_owned());
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
