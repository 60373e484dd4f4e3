//! A lesson as its instructor follows it, as plain data.

use crate::session::Practice;

/// A lesson: what to get ready, what to say, and the minute plan.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct LessonView {
    /// Name.
    pub name: String,
    /// Title.
    pub title: String,
    /// What it is for, in a sentence or two.
    pub about: String,
    /// Name of its track.
    pub track: String,
    /// Whom it is for, a word or two.
    pub audience: String,
    /// How long it takes, short.
    pub minutes: String,
    /// What the learners can do after it.
    pub objectives: Vec<ObjectiveView>,
    /// What to get ready beforehand.
    pub prepare: Vec<String>,
    /// What to say before the first drill.
    pub prebrief: Vec<String>,
    /// Its sessions in order.
    pub sessions: Vec<SessionPlanView>,
    /// What to ask when looking back, phase by phase.
    pub debrief: Vec<PhaseView>,
    /// The sheet that goes home.
    pub handout: HandoutView,
}

/// Something the learners can do after a lesson.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct ObjectiveView {
    /// What it is, a sentence.
    pub text: String,
    /// Name of the outcome that its drills are marked for.
    pub outcome: String,
    /// Names of the drills that teach it.
    pub drills: Vec<String>,
}

/// One session of a lesson.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct SessionPlanView {
    /// Title.
    pub title: String,
    /// How long it takes, short.
    pub minutes: String,
    /// Its steps in order.
    pub steps: Vec<StepView>,
}

/// One step of a session.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct StepView {
    /// Minute of the session at which it begins.
    pub begins: u32,
    /// Minute at which it ends.
    pub ends: u32,
    /// Both with their unit, short.
    pub minutes: String,
    /// Name of what kind of step it is, as in lesson files, small.
    pub kind: String,
    /// Its heading: what kind of step it is, and the drill's title if it has one.
    pub title: String,
    /// What to do or say.
    pub say: String,
    /// What to ask the room.
    pub ask: Vec<String>,
    /// What to say before a drill that can show harm; empty if it can't.
    pub note: String,
    /// The drill to open, and how it is practiced; none for a step without one.
    pub drill: Option<(String, Practice)>,
    /// The moments at which to stop and ask.
    pub moments: Vec<MomentView>,
}

/// A moment of a drill at which to stop and ask.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct MomentView {
    /// When it comes.
    pub when: String,
    /// What to ask.
    pub ask: String,
    /// Whether the drill that is open has come to it; never for a prediction, for which the drill holds by itself.
    pub reached: bool,
}

/// A phase of a debrief.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct PhaseView {
    /// What it is about, a few words.
    pub title: String,
    /// What to ask.
    pub prompts: Vec<String>,
}

/// The sheet that goes home.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct HandoutView {
    /// Title.
    pub title: String,
    /// What to remember.
    pub lines: Vec<String>,
    /// Heading of the local facts.
    pub facts_title: String,
    /// What is known of the place, a sentence each; what isn't is told as something to ask.
    pub facts: Vec<String>,
    /// When to practice again.
    pub again: String,
    /// Heading of the cautions.
    pub cautions_title: String,
    /// The cautions.
    pub cautions: Vec<String>,
}
