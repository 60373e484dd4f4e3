//! The binary: hands the arguments to the terminal or the window and turns the answer into an exit status.

use std::env;
use std::io;
use std::process::ExitCode;

use outage_drill::terminal::{self, Answer, Surroundings};

fn main() -> ExitCode {
    let surroundings = Surroundings::of_this_machine();
    let answer = terminal::run(
        env::args_os(),
        &surroundings,
        &mut io::stdin().lock(),
        &mut io::stdout().lock(),
        &mut io::stderr().lock(),
    );
    ExitCode::from(match answer {
        Answer::Status(status) => status,
        Answer::Window(_) | Answer::Pictures { .. } => 2,
    })
}
