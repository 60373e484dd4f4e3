//! Scenario files and run files: RON on disk to and from domain values, with every fault named.
//!
//! The only module with file formats, and the only one below the front ends that may read a disk.
//! The formats have types and version numbers of their own, so that they never freeze the model.
//! A file is read in one pass that reports every fault it finds, of form and of meaning; a bracket or a comma that is missing hides what comes after it.

mod apparatus;
mod diagnostic;
mod drill_build;
mod drill_build_course;
mod drill_build_found;
mod drill_build_predictions;
mod drill_build_questions;
mod drill_build_variants;
mod drill_file;
mod drill_vary;
mod furnish;
mod guess;
mod lesson_build;
mod lesson_file;
mod library;
mod list_heading;
mod local_facts;
mod mend;
mod outline;
mod run_beside;
mod run_file;
mod seal;
mod settings;
mod site_build;
mod site_build_air;
mod site_build_house;
mod site_build_indoors;
mod site_build_lent;
mod site_build_line;
mod site_build_machine;
mod site_build_portable;
mod site_build_supply;
mod site_file;
mod site_file_cords;
mod site_file_line;
mod take_up;
mod watch;
mod words_folder;

pub use diagnostic::{Diagnostic, Source};
pub use library::{Library, digest};
pub use list_heading::{Heading, passing_lists, read_heading};
pub use local_facts::LocalFacts;
pub use run_beside::{learners_in, read_day};
pub use run_file::{RUN_VERSION, not_understood, read_actions, read_run, write_run};
pub use seal::{Seal, seal_as_before};
pub use settings::{Detail, Settings};
pub use watch::Watched;
