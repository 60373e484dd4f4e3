//! The binary: hands the arguments to the terminal or the window and turns the answer into an exit status.

fn main() {}
