//! The window from outside: its pictures against the accepted ones, and what it says when something is missing.
//!
//! Drills played through the screens are tested beside them, in `rehearsal.rs`, which is compiled into the tests of the library; `drive.sh` drives the real window.

mod pictures;
mod refusals;

use outage_drill::file::Library;
use outage_drill::session::Session;

/// A session on the shipped scenarios.
fn session() -> Session {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    Session::new(library, "en")
}
