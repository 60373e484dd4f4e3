//! The window from outside: its pictures against the accepted ones, and what it says when something is missing.
//!
//! Drills played through the screens are tested beside them, in `rehearsal.rs`, which is compiled into the tests of the library; `drive.sh` drives the real window.

#[cfg(test)]
mod color_vision;
#[cfg(test)]
mod pictures;
#[cfg(test)]
mod refusals;

#[cfg(test)]
use outage_drill::file::Library;
#[cfg(test)]
use outage_drill::session::Session;

/// A session on the shipped scenarios.
#[cfg(test)]
fn session() -> Session {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    Session::new(library, "en")
}
