//! What can be operated in a drill, place by place, and how an action is written.

use crate::file::Library;
use crate::session::{Command, Notice, Practice, Session};
use crate::words::{Arg, Message};

use super::output::Output;
use super::{BAD_INPUT, DONE, play, report};

/// Prints the grammar and everything that it can name in this drill; the status to end with.
pub(super) fn run(name: &str, library: Library, output: &mut Output<'_>) -> u8 {
    if library.scenario(name).is_none() {
        return play::unknown_drill(name, &library, output);
    }
    let mut session = Session::new(library, output.words.tag());
    let open = Command::Open {
        drill: name.to_owned(),
        practice: Practice::Assessed,
        seed: 1,
    };
    if let Some(Notice::Unknown(text)) = session.apply(open).first() {
        output.error(text);
        return BAD_INPUT;
    }
    output.say_id("terminal-grammar");
    let lines = play::grammar(output);
    output.lines(&lines);
    for place in session.street().unwrap_or_default().places {
        let Some(view) = session.close(&place.id) else {
            continue;
        };
        output.blank();
        let title = Arg::Verbatim(view.title.clone());
        output.say(&Message::new("terminal-place").with("place", title));
        for control in &view.controls {
            let line = report::control(&output.words, control, false);
            output.line(&line);
        }
        for deed in &view.deeds {
            output.line(&format!("  {}: {}.", deed.line, deed.label));
        }
    }
    if let Some(drill) = session.drill() {
        output.blank();
        let points = Arg::Verbatim(drill.site().point_names().join(", "));
        output.say(&Message::new("terminal-points").with("points", points));
    }
    DONE
}
