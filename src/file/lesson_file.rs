//! Lesson files as they are written.

use serde::Deserialize;

use super::diagnostic::Source;
use super::drill_file::{OutcomeFile, TrackFile, WhatFile};
use super::mend::Misread;

/// The version of lesson files that this program reads.
const LESSON_VERSION: u32 = 2;

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct LessonFile {
    /// Version of the format.
    version: u32,
    /// Name, small letters and hyphens; its words are `lesson-<name>-title` and `lesson-<name>-about`.
    pub(super) name: String,
    /// Whom it is for.
    pub(super) audience: TrackFile,
    /// What the learners can do after it.
    pub(super) objectives: Vec<ObjectiveFile>,
    /// What to get ready beforehand, each in words as `prepare-<name>`; nothing when left out.
    #[serde(default)]
    pub(super) prepare: Vec<String>,
    /// What is said before the first drill, each in words as `prebrief-<name>`.
    pub(super) prebrief: Vec<String>,
    /// Its sessions in order.
    pub(super) sessions: Vec<SittingFile>,
    /// What is asked when looking back.
    pub(super) debrief: DebriefFile,
    /// Lines of the sheet that goes home, each in words as `handout-<name>`.
    pub(super) handout: Vec<String>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ObjectiveFile {
    /// Name; in words it is `objective-<name>`.
    pub(super) name: String,
    /// The outcome that its drills teach.
    pub(super) teaches: OutcomeFile,
    /// The drills of the plan that teach it.
    pub(super) drills: Vec<String>,
}

/// One session.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct SittingFile {
    /// Name; its title is `sitting-<name>`.
    pub(super) name: String,
    /// How long it takes; its steps have to add up to this.
    pub(super) minutes: u32,
    /// Its steps in order: a prebriefing first, and a debriefing among them.
    pub(super) steps: Vec<StepFile>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct StepFile {
    /// Minute of the session at which it begins: where the step before it ends.
    pub(super) minute: u32,
    /// Minutes of people's time it is given.
    pub(super) minutes: u32,
    /// What is done.
    pub(super) what: DoingFile,
    /// What the instructor does or says, in words `step-<name>`.
    pub(super) say: String,
    /// What the room is asked, each in words as `question-<name>`; nothing when left out.
    #[serde(default)]
    pub(super) ask: Vec<String>,
    /// The moments of the drill at which to stop and ask; none when left out.
    #[serde(default)]
    pub(super) hold: Vec<HoldFile>,
}

/// What is done in a step; a drill is named.
#[derive(Debug, Deserialize)]
pub(super) enum DoingFile {
    /// The rules of the room, before anything else.
    Prebrief,
    /// People speak, sort or write.
    Talk,
    /// The instructor works this drill, and the room looks on.
    Demonstration(String),
    /// The room foretells what this drill then shows.
    Predict(String),
    /// The learners work this drill, with explanations.
    Drill(String),
    /// The learners work this drill without help.
    Assessment(String),
    /// Looking back together.
    Debrief,
    /// Rest.
    Break,
    /// The sheet for home.
    Handout,
}

/// A moment at which to stop and ask.
#[derive(Debug, Deserialize)]
pub(super) enum HoldFile {
    /// The drill's prediction of this name, for which it holds by itself.
    Prediction(String),
    /// After the story has done this; what is asked then is `moment-<name>`.
    After(WhatFile, String),
}

/// What is asked when looking back, phase by phase, each in words as `prompt-<name>`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct DebriefFile {
    /// What happened.
    pub(super) happened: Vec<String>,
    /// How it felt.
    pub(super) felt: Vec<String>,
    /// Why it came so.
    pub(super) why: Vec<String>,
    /// What comes next.
    pub(super) next: Vec<String>,
}

/// Reads a lesson file's text.
pub(super) fn parse_lesson(source: &Source<'_>) -> Result<LessonFile, Misread<LessonFile>> {
    source.parse(LESSON_VERSION, |file: &LessonFile| file.version)
}
