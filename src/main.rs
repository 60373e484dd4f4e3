//! The binary: gives the command line its streams, its surroundings and its window, and ends with its status.

use std::env;
use std::io;
use std::process::ExitCode;

use outage_drill::terminal::{self, Streams, Surroundings, Window};

fn main() -> ExitCode {
    ExitCode::from(terminal::run(
        env::args_os(),
        &Surroundings::of_this_machine(),
        WINDOW,
        Streams {
            input: &mut io::stdin().lock(),
            out: &mut io::stdout(),
            err: &mut io::stderr(),
        },
    ))
}

#[cfg(feature = "window")]
const WINDOW: Option<Window> = Some(Window {
    open: outage_drill::window::open,
    draw: outage_drill::window::draw,
});

#[cfg(not(feature = "window"))]
const WINDOW: Option<Window> = None;
