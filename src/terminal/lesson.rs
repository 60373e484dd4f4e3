//! Lessons: what there is, a plan that an instructor can read and follow, and the sheet that goes home.
//!
//! The `--json` document of the list is an array with `name`, `title`, `about`, `track` and `minutes` of each lesson.
//! That of a lesson has `version`, `name`, `title`, `about`, `track`, `objectives` (`text`, `outcome`, `drills`), `prepare`, `prebrief`, `sessions`, `debrief` (`title`, `prompts`) and `handout` (`lines`, `facts`, `again`, `cautions`).
//! Each of `sessions` has `title` and `steps` (`begins`, `ends`, `kind`, `title`, `say`, `ask`, `note`, `drill`, `assessed`, `moments` with `when` and `ask`); with `--session` there is only that one.

use serde_json::Value;
use serde_json::json;

use crate::file::Library;
use crate::session::view::{HandoutView, LessonView, SessionPlanView, ShelfView, StepView};
use crate::session::{Practice, Session};
use crate::words::{Arg, Message};

use super::arguments::Lesson;
use super::output::Output;
use super::{BAD_INPUT, DONE, JSON_VERSION, faults, list, reports};

/// Prints the lessons, or what was asked of one; the status to end with.
pub(super) fn run(ask: &Lesson, library: Library, output: &mut Output<'_>) -> u8 {
    if !library.missing_words.is_empty() {
        return faults::print_and_stop(&library.missing_words, output);
    }
    let session = Session::new(library, output.words.tag());
    let shelf = session.shelf();
    let Some(name) = &ask.name else {
        show_list(&shelf, ask.json, output);
        return DONE;
    };
    let Some(mut view) = session.lesson(name) else {
        let names: Vec<&str> = shelf.lessons.iter().map(|l| l.name.as_str()).collect();
        return refuse(&unknown("lesson", name), &names, output);
    };
    if let Some(number) = ask.session {
        let index = number.checked_sub(1).filter(|i| *i < view.sessions.len());
        let Some(index) = index else {
            let numbers: Vec<String> = (1..=view.sessions.len()).map(|n| n.to_string()).collect();
            let numbers: Vec<&str> = numbers.iter().map(String::as_str).collect();
            return refuse(&unknown("session", &number.to_string()), &numbers, output);
        };
        view.sessions = vec![view.sessions.swap_remove(index)];
    }
    if ask.json {
        reports::print_json(&lesson_json(&view), output);
    } else if ask.handout {
        handout(&view.handout, output);
    } else {
        if ask.session.is_none() {
            before(&view, output);
        }
        for plan in &view.sessions {
            session_plan(plan, output);
        }
        debrief(&view, output);
    }
    DONE
}

fn show_list(shelf: &ShelfView, as_json: bool, output: &mut Output<'_>) {
    if as_json {
        let lessons = shelf.lessons.iter().map(|l| {
            json!({
                "name": l.name, "title": l.title, "about": l.about,
                "track": l.track, "minutes": l.minutes,
            })
        });
        reports::print_json(&lessons.collect::<Value>(), output);
    } else {
        output.lines(&list::lessons(&shelf.lessons, &shelf.lessons_title));
    }
}

fn unknown(kind: &str, name: &str) -> Message {
    Message::new("error-unknown-name")
        .with("name", Arg::Verbatim(name.to_owned()))
        .said("kind", Message::new(format!("error-kind-{kind}")))
}

fn refuse(what: &Message, known: &[&str], output: &mut Output<'_>) -> u8 {
    output.say_error(what);
    let names = Arg::Verbatim(known.join(", "));
    output.say_error(&Message::new("error-hint-known").with("names", names));
    BAD_INPUT
}

/// What is read before the first session.
fn before(view: &LessonView, output: &mut Output<'_>) {
    output.line(&format!("{}, {}", view.title, view.minutes));
    output.line(&view.about);
    output.blank();
    output.say_id("lesson-objectives");
    for objective in &view.objectives {
        output.line(&format!("  {}", objective.text));
        output.line(&format!("    {}", objective.drills.join(", ")));
    }
    block("lesson-prepare", &view.prepare, output);
    block("lesson-prebrief", &view.prebrief, output);
    output.blank();
}

/// A heading and lines below it; nothing if there are none.
fn block(heading: &str, lines: &[String], output: &mut Output<'_>) {
    if lines.is_empty() {
        return;
    }
    output.blank();
    output.say_id(heading);
    for line in lines {
        output.line(&format!("  {line}"));
    }
}

fn session_plan(plan: &SessionPlanView, output: &mut Output<'_>) {
    output.line(&format!("{}, {}", plan.title, plan.minutes));
    for step in &plan.steps {
        output.line(&format!("  {}-{} {}", step.begins, step.ends, step.title));
        for line in step_lines(step, output) {
            output.line(&format!("    {line}"));
        }
    }
    output.blank();
}

/// What stands below a step's heading.
fn step_lines(step: &StepView, output: &Output<'_>) -> Vec<String> {
    let mut lines = Vec::new();
    if !step.note.is_empty() {
        lines.push(
            output
                .words
                .say(&Message::new("lesson-note").with("note", Arg::Verbatim(step.note.clone()))),
        );
    }
    lines.push(step.say.clone());
    let ask = |text: &String| {
        let text = Arg::Verbatim(text.clone());
        output
            .words
            .say(&Message::new("lesson-ask").with("text", text))
    };
    lines.extend(step.ask.iter().map(ask));
    for moment in &step.moments {
        lines.push(moment.when.clone());
        lines.push(format!("  {}", ask(&moment.ask)));
    }
    if let Some((drill, practice)) = &step.drill {
        let how = match practice {
            Practice::Coached => "",
            Practice::Guided => " --guided",
            Practice::Assessed => " --assessed",
        };
        let command = Arg::Verbatim(format!("outage-drill play {drill}{how}"));
        let open = Message::new("lesson-open").with("command", command);
        lines.push(output.words.say(&open));
    }
    lines
}

fn debrief(view: &LessonView, output: &mut Output<'_>) {
    output.say_id("lesson-debrief");
    for phase in &view.debrief {
        output.line(&format!("  {}", phase.title));
        for prompt in &phase.prompts {
            output.line(&format!("    {prompt}"));
        }
    }
}

fn handout(view: &HandoutView, output: &mut Output<'_>) {
    output.line(&view.title);
    output.blank();
    output.lines(&view.lines);
    output.line(&view.again);
    output.blank();
    output.line(&view.facts_title);
    for fact in &view.facts {
        output.line(&format!("  {fact}"));
    }
    output.blank();
    output.line(&view.cautions_title);
    for caution in &view.cautions {
        output.line(&format!("  {caution}"));
    }
}

fn lesson_json(view: &LessonView) -> Value {
    let objectives = view
        .objectives
        .iter()
        .map(|o| json!({ "text": o.text, "outcome": o.outcome, "drills": o.drills }));
    let sessions = view.sessions.iter().map(|session| {
        let steps: Vec<Value> = session.steps.iter().map(step_json).collect();
        json!({ "title": session.title, "steps": steps })
    });
    let debrief = view
        .debrief
        .iter()
        .map(|p| json!({ "title": p.title, "prompts": p.prompts }));
    let sheet = &view.handout;
    json!({
        "version": JSON_VERSION, "name": view.name, "title": view.title, "about": view.about,
        "track": view.track, "prepare": view.prepare, "prebrief": view.prebrief,
        "objectives": objectives.collect::<Value>(),
        "sessions": sessions.collect::<Value>(),
        "debrief": debrief.collect::<Value>(),
        "handout": {
            "lines": sheet.lines, "facts": sheet.facts,
            "again": sheet.again, "cautions": sheet.cautions,
        },
    })
}

fn step_json(step: &StepView) -> Value {
    let moments = step
        .moments
        .iter()
        .map(|m| json!({ "when": m.when, "ask": m.ask }));
    let drill = step.drill.as_ref();
    json!({
        "begins": step.begins, "ends": step.ends, "kind": step.kind, "title": step.title,
        "say": step.say, "ask": step.ask, "note": step.note,
        "drill": drill.map(|(name, _)| name),
        "assessed": drill.is_some_and(|(_, practice)| *practice == Practice::Assessed),
        "moments": moments.collect::<Value>(),
    })
}
