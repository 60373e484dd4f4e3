//! Outage Drill: a rehearsal room for switching a home from the utility to a generator and back.

pub mod apparatus;
pub mod circuit;
pub mod hazard;
pub mod session;
pub mod units;
pub mod words;
