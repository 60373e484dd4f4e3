//! The shelf: cautions, lessons and drills, as plain data.

use crate::session::Practice;

/// The shelf: what can be opened.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct ShelfView {
    /// Heading.
    pub title: String,
    /// One sentence that says what this program is for.
    pub intro: String,
    /// The cautions, one sentence or two each.
    pub cautions: Vec<String>,
    /// Heading of the cautions.
    pub cautions_title: String,
    /// The button that says the cautions have been read.
    pub cautions_accept: String,
    /// Whom drills are for, in the order in which to offer them.
    pub tracks: Vec<TrackCard>,
    /// Lessons, each of one track.
    pub lessons: Vec<LessonCard>,
    /// Heading of the lessons.
    pub lessons_title: String,
    /// Drills, in the order in which to take them.
    pub drills: Vec<DrillCard>,
}

/// A lesson on the shelf.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct LessonCard {
    /// Name.
    pub name: String,
    /// Title.
    pub title: String,
    /// What it is for, in a sentence or two.
    pub about: String,
    /// Name of its track.
    pub track: String,
    /// How long it takes, short.
    pub minutes: String,
    /// What is done at each time.
    pub sittings: Vec<SittingView>,
}

/// What is done at one time of a lesson.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct SittingView {
    /// Title.
    pub title: String,
    /// How long it takes, short.
    pub minutes: String,
    /// Its parts in order.
    pub parts: Vec<PartView>,
}

/// One part of a sitting.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct PartView {
    /// How long it is given, short.
    pub minutes: String,
    /// What kind of step it is, and the drill's title if it has one.
    pub text: String,
    /// The drill to open, and how it is practised; none for a talk.
    pub drill: Option<(String, Practice)>,
}

/// Whom drills are for.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct TrackCard {
    /// Name, as in [`DrillCard::tracks`].
    pub name: String,
    /// Title, a word or two.
    pub title: String,
}

/// A drill on the shelf.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct DrillCard {
    /// Name, as in the command line.
    pub name: String,
    /// Title.
    pub title: String,
    /// What the learner will do, two sentences at most.
    pub summary: String,
    /// Names of the tracks that it belongs to.
    pub tracks: Vec<String>,
    /// How hard it is: the heading it stands under.
    pub level: String,
    /// The way of switching over that it practices.
    pub way: String,
    /// In which directions the learner works it.
    pub directions: String,
    /// How long it takes at most, short.
    pub minutes: String,
    /// Facts: way, minutes, house.
    pub facts: String,
    /// What to be prepared for, if the drill can show harm.
    pub content_note: String,
    /// The button that opens it.
    pub open: String,
    /// The seed that opens another one of its kind than those opened before.
    pub another_seed: u64,
}
