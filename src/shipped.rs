//! The texts that the program carries: sites, their apparatus, drills, words and the lists of actions that show what they teach.
//!
//! Each is a path from the root of the package and a text, in order of their names; `scenarios/build.rs` lists them.
//! What they mean is read elsewhere.

include!(concat!(env!("OUT_DIR"), "/shipped.rs"));
