//! What a drill asks to be foretold, as text: asked where it holds, answered by one person or a room, and looked back on.

use crate::session::view::{AskedView, CalibrationView, RevealView};
use crate::session::{Command, Notice, Session};
use crate::words::{Arg, Message, Words};

use super::output::Output;
use super::{play, report};

/// The longest bar of a room's chart, in signs.
const BAR: u16 = 30;

/// Asks what the drill holds for, if it does.
pub(super) fn ask(session: &Session, output: &mut Output<'_>) {
    if let Some(view) = session.asked() {
        let lines = asked(&output.words, &view);
        output.lines(&lines);
    }
}

/// Takes an answer, tells what it came to, and goes on; or goes on without one.
pub(super) fn answer(session: &mut Session, line: &[&str], output: &mut Output<'_>) {
    let command = match line {
        ["predict", answer @ .., "sure", sure] => Command::Predict {
            answer: answer.join(" "),
            sure: sure.trim_end_matches('%').parse().unwrap_or_default(),
        },
        ["counts", counts @ ..] => match hands(session, counts) {
            Some(counts) => Command::Counts(counts),
            None => return ask_again(session, output),
        },
        ["skip"] if session.asked().is_some() => {
            play::carry_out(session, Command::Understood, output);
            return;
        }
        _ => return ask_again(session, output),
    };
    let notices = session.apply(command);
    for notice in &notices {
        if let Notice::Unknown(text) = notice {
            output.error(text);
        }
    }
    if let Some(view) = session.reveal() {
        let lines = revealed(&output.words, &view);
        output.lines(&lines);
        play::carry_out(session, Command::Understood, output);
    }
}

/// A line that is no answer: says how one is written, or that nothing is asked.
fn ask_again(session: &Session, output: &mut Output<'_>) {
    if let Some(view) = session.asked() {
        let lines = how(&output.words, &view);
        output.lines(&lines);
    } else {
        let text = session.say("session-nothing-asked");
        output.error(&text);
    }
}

/// The hands of each choice, in the order of the choices; none if they can't be read as such.
fn hands(session: &Session, counts: &[&str]) -> Option<Vec<(String, u32)>> {
    let choices = session.asked()?.choices;
    if counts.is_empty() || counts.len() > choices.len() {
        return None;
    }
    let pairs = choices.into_iter().zip(counts);
    pairs
        .map(|(choice, count)| Some((choice.id, count.parse().ok()?)))
        .collect()
}

fn asked(words: &Words, view: &AskedView) -> Vec<String> {
    let mut lines = vec![String::new(), view.moment.clone()];
    lines.extend(view.known.iter().map(|known| format!("  {known}")));
    lines.push(view.question.clone());
    lines.extend(how(words, view));
    lines
}

/// How an answer is written.
fn how(words: &Words, view: &AskedView) -> Vec<String> {
    let listed = |text: &dyn Fn(&crate::session::view::AnswerView) -> String| {
        view.choices.iter().map(text).collect::<Vec<_>>().join(", ")
    };
    let one = if view.number.is_some() {
        words.say_id("terminal-ask-number")
    } else {
        let choices = listed(&|c| {
            if c.id == c.label.to_lowercase() {
                c.id.clone()
            } else {
                format!("{} ({})", c.id, c.label)
            }
        });
        report::with(words, "terminal-ask-choice", "choices", &choices)
    };
    let bands = listed(&|c| c.label.clone());
    vec![
        one,
        report::with(words, "terminal-ask-room", "choices", &bands),
        words.say_id("terminal-ask-skip"),
    ]
}

fn revealed(words: &Words, view: &RevealView) -> Vec<String> {
    let mut lines = vec![String::new()];
    lines.extend(Some(view.said.clone()).filter(|said| !said.is_empty()));
    for bar in &view.bars {
        let id = if bar.right {
            "terminal-bar-right"
        } else {
            "terminal-bar"
        };
        let text = Message::new(id)
            .with("label", Arg::Verbatim(bar.label.clone()))
            .with("count", Arg::Count(i64::from(bar.count)));
        let signs = (1..=BAR).filter(|n| f32::from(*n) <= bar.share * f32::from(BAR) + 0.5);
        let signs: String = signs.map(|_| '#').collect();
        let width = usize::from(BAR);
        lines.push(format!("  {signs:<width$} {}", words.say(&text)));
    }
    lines.push(view.truth.clone());
    if !view.stages.is_empty() {
        lines.push(words.say_id("terminal-how"));
        lines.extend(report::stages(&view.stages));
    }
    lines.push(String::new());
    lines
}

/// All predictions of a drill, and the score over the session; nothing where none was answered.
pub(super) fn debrief(words: &Words, view: &CalibrationView) -> Vec<String> {
    if view.lines.is_empty() {
        return Vec::new();
    }
    let mut lines = vec![String::new(), words.say_id("terminal-predictions")];
    for line in &view.lines {
        let verbatim = |text: &String| Arg::Verbatim(text.clone());
        let text = Message::new("terminal-prediction")
            .with("clock", verbatim(&line.clock))
            .with("question", verbatim(&line.question))
            .with("said", verbatim(&line.said))
            .with("truth", verbatim(&line.truth));
        lines.push(format!("  {}", words.say(&text)));
    }
    lines.extend(Some(view.score.clone()).filter(|score| !score.is_empty()));
    lines
}
