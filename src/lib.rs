//! Outage Drill: a rehearsal room for switching a home from the utility to a generator and back.

pub mod units;

pub mod shipped;

pub mod words;

pub mod circuit;

pub mod apparatus;

pub mod hazard;

pub mod site;

pub mod scenario;

pub mod drill;

pub mod marking;

pub mod explain;

pub mod proof;

pub mod file;

pub mod evidence;

pub mod session;

pub mod terminal;

#[cfg(feature = "window")]
pub mod window;
