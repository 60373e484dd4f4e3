//! The debrief as text: one page after another, the learner's own words first and the verdict last.
//!
//! A line on the first two pages is kept; on any page an empty line goes on and `back` goes back.
//! On any page `again 8:30` tells how the street stood then.
//! On the page of findings a number goes back to before that finding, to try it another way, and `compare` tells what came of it.
//! Where the input ends, the pages that are left follow each other.
//!
//! - `--json`: what `mark` gives for a run, and `pages` (`phase`, `title`, `said`), `stood` (`label`, `start`, `end`), `pins` (`second`, `finding`), `next` (`skill`, `title`, `because`, `drill`), `series` (`name`, `label`, `unit`, `limit`, `points` as pairs of second and value; between two points a value runs straight).
//! - `--series`: a head with each curve's name and unit, then a row for each whole second.

use std::io::BufRead;
use std::path::Path;

use serde_json::Value;
use serde_json::json;

use crate::file::{Library, Seal, Source, seal_as_before};
use crate::session::view::{CompareView, DebriefView, DifferView, Phase, SeriesView};
use crate::session::{Command, Notice, Practice, Rewind, Session, compare, parse_clock, replay};
use crate::units::DrillTime;
use crate::words::{Arg, Message, Words};

use super::arguments::Debrief;
use super::output::Output;
use super::play::Lines;
use super::{BAD_INPUT, DONE, JSON_VERSION, faults, play, report, reports};

/// The debrief of a saved run; the status to end with.
pub(super) fn run(
    ask: &Debrief,
    library: &Library,
    typed: bool,
    input: &mut dyn BufRead,
    output: &mut Output<'_>,
) -> u8 {
    let file = ask.file.display().to_string();
    let text = match super::text_of(&ask.file) {
        Ok(text) => text,
        Err(wrong) => return faults::print_and_stop(&[*wrong], output),
    };
    let source = Source {
        file: &file,
        text: &text,
    };
    let mut session = match replay(library, output.words.tag(), source) {
        Ok(played) => played.session,
        Err(wrong) => return faults::print_and_stop(&wrong, output),
    };
    let view = session.debrief().unwrap_or_default();
    if let Some(path) = &ask.series {
        return write(path, &comma_separated(&view), DONE, output);
    }
    if ask.json {
        reports::print_json(&as_json(&file, Seal::of(&text), &view), output);
        return play::passed(&session);
    }
    reports::say_seal(Seal::of(&text), output);
    let mut lines = Lines { input, typed };
    play::rehearse(&mut session, Practice::Coached, None, &mut lines, output);
    let went_back = session.debrief().is_none_or(|v| !v.rewound.is_empty());
    let saved = session.saved().map(|saved| seal_as_before(&saved, &text));
    match saved.filter(|saved| !went_back && *saved != text) {
        Some(saved) => write(&ask.file, &saved, play::passed(&session), output),
        None => play::passed(&session),
    }
}

/// Writes a file and says so; `status` unless that went wrong.
fn write(path: &Path, text: &str, status: u8, output: &mut Output<'_>) -> u8 {
    if let Err(error) = play::write(path, text) {
        output.say_error(&error);
        return BAD_INPUT;
    }
    let file = Arg::Verbatim(path.display().to_string());
    output.say(&Message::new("check-written").with("path", file));
    status
}

/// Walks through the pages to the end of the last; says whether the drill is still over then.
pub(super) fn walk(session: &mut Session, lines: &mut Lines<'_>, output: &mut Output<'_>) -> bool {
    let mut ended = false;
    loop {
        let Some(view) = session.debrief() else {
            return false;
        };
        let page = page(&output.words, &view);
        output.lines(&page);
        if view.phase == Phase::Verdict {
            return true;
        }
        let line = if ended {
            None
        } else {
            output.say_id("terminal-debrief-on");
            output.prompt(&session.log().clock);
            lines.next(output)
        };
        ended = line.is_none();
        output.blank();
        match line.as_deref() {
            Some("back") => session.apply(Command::Back),
            Some("compare") => {
                compared(session, output);
                continue;
            }
            Some(line) if line.starts_with(AGAIN) => {
                again(session, line, output);
                continue;
            }
            Some(number) if view.phase == Phase::Why && !number.is_empty() => {
                if go_back(session, number, output) {
                    return false;
                }
                continue;
            }
            None | Some("") => session.apply(Command::Onward),
            Some(words) => {
                session.apply(Command::Reflect(words.to_owned()));
                session.apply(Command::Onward)
            }
        };
    }
}

/// What a line begins with that asks for a moment.
const AGAIN: &str = "again ";

/// Tells how the street stood at a time of the run, and what had been done and had happened in that moment.
fn again(session: &Session, line: &str, output: &mut Output<'_>) {
    let clock = line.strip_prefix(AGAIN).and_then(parse_clock);
    let Some(at) = clock else {
        output.say_error(&Message::new("terminal-debrief-clock"));
        return;
    };
    let moments = session.moments();
    let place = moments.partition_point(|moment| *moment <= at);
    if let Some(view) = session.seen_again(place.saturating_sub(1)) {
        output.line(&format!("{}  {}", view.clock, view.said));
        let then = view.log.iter().filter(|l| l.clock == view.clock);
        let words = &output.words;
        let lines: Vec<String> = then
            .map(|l| report::log_line(words, l))
            .chain(view.found.iter().cloned())
            .chain(report::street(words, &view.street))
            .collect();
        output.lines(&lines);
    }
}

/// Goes back to before a finding, by its number; says whether it did.
fn go_back(session: &mut Session, number: &str, output: &mut Output<'_>) -> bool {
    let findings = session.verdict().map_or(0, |v| v.findings.len());
    let index = number.parse().ok().and_then(|n: usize| n.checked_sub(1));
    let Some(index) = index.filter(|i| *i < findings) else {
        output.say_error(&Message::new("terminal-debrief-no-number"));
        return false;
    };
    for notice in session.apply(Command::Rewind(Rewind::Finding(index))) {
        if let Notice::Done(text) | Notice::Unknown(text) = notice {
            output.line(&text);
        }
    }
    session.verdict().is_none()
}

/// Tells what the branch that is open leaves otherwise than the one that was left.
pub(super) fn compared(session: &Session, output: &mut Output<'_>) {
    match session.compare() {
        Some(view) => {
            let lines = apart(&output.words, &view);
            output.lines(&lines);
        }
        None => output.say_error(&Message::new("terminal-compare-nothing")),
    }
}

/// Compares two saved runs; the status to end with.
pub(super) fn compare_files(
    was: &Path,
    tried: &Path,
    library: &Library,
    output: &mut Output<'_>,
) -> u8 {
    let texts = super::text_of(was).and_then(|w| Ok((w, super::text_of(tried)?)));
    let (first, second) = match texts {
        Ok(texts) => texts,
        Err(wrong) => return faults::print_and_stop(&[*wrong], output),
    };
    let names = [was, tried].map(|path| path.display().to_string());
    let source = |file, text| Source { file, text };
    let both = (source(&names[0], &first), source(&names[1], &second));
    match compare(library, output.words.tag(), both.0, both.1) {
        Ok(view) => {
            let lines = apart(&output.words, &view);
            output.lines(&lines);
            DONE
        }
        Err(wrong) => faults::print_and_stop(&wrong, output),
    }
}

fn apart(words: &Words, view: &CompareView) -> Vec<String> {
    let head = Message::new("terminal-compare")
        .with("was", Arg::Verbatim(view.was.clone()))
        .with("tried", Arg::Verbatim(view.tried.clone()));
    let differ = |rows: &[DifferView]| {
        let row = |d: &DifferView| {
            let text = Message::new("terminal-compare-row")
                .with("label", Arg::Verbatim(d.label.clone()))
                .with("was", Arg::Verbatim(d.was.clone()))
                .with("tried", Arg::Verbatim(d.tried.clone()));
            words.say(&text)
        };
        rows.iter().map(row).collect::<Vec<_>>()
    };
    let parts = [
        ("terminal-compare-people", differ(&view.people)),
        ("terminal-compare-gone", view.gone.clone()),
        ("terminal-compare-come", view.come.clone()),
        ("terminal-compare-positions", differ(&view.positions)),
        ("terminal-compare-volts", differ(&view.volts)),
    ];
    let mut lines = vec![words.say(&head)];
    for (id, rows) in parts {
        let rows = if rows.is_empty() {
            vec![words.say_id("terminal-compare-none")]
        } else {
            rows
        };
        lines.push(words.say_id(id));
        lines.extend(rows.into_iter().map(|row| format!("  {row}")));
    }
    lines
}

/// The page that is open.
fn page(words: &Words, view: &DebriefView) -> Vec<String> {
    let heads = view.pages.iter().zip(1_i64..);
    let mut lines = Vec::new();
    for (head, number) in heads.filter(|(head, _)| head.phase == view.phase) {
        let title = Message::new("terminal-debrief-page")
            .with("number", Arg::Count(number))
            .with("title", Arg::Verbatim(head.title.clone()));
        lines.extend([words.say(&title), head.ask.clone()]);
        if !head.said.is_empty() {
            lines.push(report::with(
                words,
                "terminal-debrief-said",
                "text",
                &head.said,
            ));
        }
    }
    match view.phase {
        Phase::Happened => {
            lines.extend(view.log.iter().map(|l| report::log_line(words, l)));
            lines.push(words.say_id("terminal-debrief-stood"));
            let stood = view.stood.iter();
            lines.extend(stood.map(|s| format!("  {}: {} → {}", s.label, s.start, s.end)));
        }
        Phase::Felt => {}
        Phase::Why => {
            lines.extend(report::findings(words, view));
            if !view.findings.is_empty() {
                lines.extend([String::new(), words.say_id("terminal-debrief-what-if")]);
            }
            lines.extend([String::new(), words.say_id("terminal-debrief-curves")]);
            lines.extend(view.series.iter().map(|s| format!("  {}", peak(words, s))));
        }
        Phase::Next => {
            for next in &view.next {
                let text = Message::new("terminal-debrief-next")
                    .with("skill", Arg::Verbatim(next.title.clone()))
                    .with("title", Arg::Verbatim(next.drill_title.clone()))
                    .with("drill", Arg::Verbatim(next.drill.clone()));
                lines.push(format!("  {}", words.say(&text)));
                lines.push(format!("    {}", next.because));
            }
        }
        Phase::Verdict => lines.extend(report::verdict(words, view)),
    }
    lines
}

/// The highest point of a curve, beside its limit.
fn peak(words: &Words, series: &SeriesView) -> String {
    let most = series.points.iter().max_by(|a, b| a.1.total_cmp(&b.1));
    let (second, value) = most.copied().unwrap_or_default();
    let amount = |value: f64| Arg::Quantity(value, series.of);
    let message = match series.limit {
        Some(limit) => Message::new("terminal-debrief-peak-limit")
            .with("limit", amount(limit))
            .with("what", Arg::Verbatim(series.limit_label.clone())),
        None => Message::new("terminal-debrief-peak"),
    };
    let message = message
        .with("label", Arg::Verbatim(series.label.clone()))
        .with("value", amount(value))
        .with("clock", Arg::Clock(DrillTime::from_secs(second)));
    words.say(&message)
}

fn as_json(file: &str, seal: Seal, view: &DebriefView) -> Value {
    let pages = view
        .pages
        .iter()
        .map(|p| json!({ "phase": p.phase.name(), "title": p.title, "said": p.said }));
    let stood = view.stood.iter();
    let stood = stood.map(|s| json!({ "label": s.label, "start": s.start, "end": s.end }));
    let pins = view.pins.iter();
    let pins = pins.map(|p| json!({ "second": p.second, "finding": p.finding }));
    let next = view.next.iter().map(
        |n| json!({ "skill": n.skill, "title": n.title, "because": n.because, "drill": n.drill }),
    );
    let series = view.series.iter().map(|s| {
        json!({
            "name": s.name, "label": s.label, "unit": s.unit, "limit": s.limit, "points": s.points,
        })
    });
    json!({
        "version": JSON_VERSION, "run": reports::verdict_json(file, seal, view),
        "pages": pages.collect::<Vec<Value>>(), "stood": stood.collect::<Vec<Value>>(),
        "pins": pins.collect::<Vec<Value>>(), "next": next.collect::<Vec<Value>>(),
        "series": series.collect::<Vec<Value>>(),
    })
}

/// The curves, a column for each and a row for each whole second.
fn comma_separated(view: &DebriefView) -> String {
    let heads = view.series.iter().map(|s| format!("{} {}", s.name, s.unit));
    let head: Vec<String> = ["second".to_owned()].into_iter().chain(heads).collect();
    let mut rows = vec![head.join(",")];
    for second in 0..=view.length_ms / 1000 {
        let values = view.series.iter().map(|s| format!("{:.3}", s.at(second)));
        let row: Vec<String> = [second.to_string()].into_iter().chain(values).collect();
        rows.push(row.join(","));
    }
    rows.push(String::new());
    rows.join("\n")
}
