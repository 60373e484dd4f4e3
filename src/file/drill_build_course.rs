//! From a drill file's words on level, tracks, way and outcomes to a [`Course`].

use crate::scenario::course::{Course, Direction, Level, Outcome, Track, Way};
use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source};
use super::drill_file::{DirectionFile, DrillFile, OutcomeFile, TrackFile, WayFile};

/// Outcomes that one drill may teach.
const TEACHES: std::ops::RangeInclusive<usize> = 1..=4;

/// Where the drill stands in a course; what is out of range is told and taken as a first look.
pub(super) fn course(
    source: &Source<'_>,
    file: &DrillFile,
    faults: &mut Vec<Diagnostic>,
) -> Course {
    let level = Level::of(file.level);
    if level.is_none() {
        let message = Message::new("error-level").with("value", Arg::Count(file.level.into()));
        faults.push(source.at(&["level"], message));
    }
    if file.tracks.is_empty() {
        faults.push(source.at(&["tracks"], Message::new("error-tracks")));
    }
    if !TEACHES.contains(&file.teaches.len()) {
        faults.push(source.at(&["teaches"], Message::new("error-teaches")));
    }
    Course {
        level: level.unwrap_or(Level::FirstLook),
        tracks: file.tracks.iter().copied().map(track).collect(),
        way: way(file.way),
        directions: file.directions.iter().copied().map(direction).collect(),
        teaches: file.teaches.iter().copied().map(outcome).collect(),
    }
}

/// The track of a file.
pub(super) fn track(file: TrackFile) -> Track {
    match file {
        TrackFile::Class => Track::Class,
        TrackFile::Apprentice => Track::Apprentice,
        TrackFile::Home => Track::Home,
    }
}

fn way(file: WayFile) -> Way {
    match file {
        WayFile::ManualSwitch => Way::ManualSwitch,
        WayFile::Interlock => Way::Interlock,
        WayFile::ReadyPanel => Way::ReadyPanel,
        WayFile::Cords => Way::Cords,
        WayFile::Standby => Way::Standby,
        WayFile::Subpanel => Way::Subpanel,
        WayFile::Line => Way::Line,
        WayFile::Other => Way::Other,
    }
}

fn direction(file: DirectionFile) -> Direction {
    match file {
        DirectionFile::Out => Direction::Out,
        DirectionFile::Back => Direction::Back,
    }
}

/// The outcome of a file.
pub(super) fn outcome(file: OutcomeFile) -> Outcome {
    match file {
        OutcomeFile::PlaceEngine => Outcome::PlaceEngine,
        OutcomeFile::Isolate => Outcome::Isolate,
        OutcomeFile::ShowSource => Outcome::ShowSource,
        OutcomeFile::ChooseLoads => Outcome::ChooseLoads,
        OutcomeFile::ChooseCords => Outcome::ChooseCords,
        OutcomeFile::RunEngine => Outcome::RunEngine,
        OutcomeFile::GoBack => Outcome::GoBack,
        OutcomeFile::Recognize => Outcome::Recognize,
        OutcomeFile::Grounding => Outcome::Grounding,
        OutcomeFile::Emergency => Outcome::Emergency,
        OutcomeFile::ExplainHarm => Outcome::ExplainHarm,
        OutcomeFile::LockOut => Outcome::LockOut,
        OutcomeFile::DeadLine => Outcome::DeadLine,
        OutcomeFile::Release => Outcome::Release,
        OutcomeFile::SecondSource => Outcome::SecondSource,
        OutcomeFile::HandOver => Outcome::HandOver,
    }
}
