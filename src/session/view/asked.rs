//! What a drill asks to be foretold, and what it came to.

use super::StageView;

/// A question that the drill holds for.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct AskedView {
    /// Name of the prediction.
    pub name: String,
    /// When it is: what is about to be done, or that the drill holds here.
    pub moment: String,
    /// The question.
    pub question: String,
    /// What is known so far that bears on it, a sentence each.
    pub known: Vec<String>,
    /// The number that one person answers with, as "Your number, in volts"; none where it is one of the choices.
    pub number: Option<String>,
    /// What can be chosen: by one person where it is no number, by a room always.
    pub choices: Vec<AnswerView>,
    /// How sure one can say to be, percent.
    pub sure: Vec<u8>,
}

/// Something that can be chosen.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct AnswerView {
    /// Its name in a command.
    pub id: String,
    /// Its label.
    pub label: String,
}

/// What was foretold, beside what has come of it.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct RevealView {
    /// The question.
    pub question: String,
    /// What was answered, and how sure; empty for a room.
    pub said: String,
    /// The truth.
    pub truth: String,
    /// Whether the answer was right; none for a room.
    pub right: Option<bool>,
    /// How it comes about, in the order in which one follows from the other.
    pub stages: Vec<StageView>,
    /// What a room chose, a bar a choice; empty where one person answered.
    pub bars: Vec<BarView>,
}

/// One bar of what a room chose.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct BarView {
    /// The choice.
    pub label: String,
    /// How many hands it had.
    pub count: u32,
    /// Its length, as a share of the longest bar.
    pub share: f32,
    /// Whether it is the right one.
    pub right: bool,
}

/// What all predictions of a drill came to.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct CalibrationView {
    /// Each of them, in the order asked: clock, question, answer, truth.
    pub lines: Vec<PredictionLine>,
    /// The score with what it means; empty where nobody said how sure they were.
    pub score: String,
}

/// One prediction, looked back on.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct PredictionLine {
    /// Drill clock.
    pub clock: String,
    /// The question.
    pub question: String,
    /// What was answered, or what the room chose.
    pub said: String,
    /// The truth.
    pub truth: String,
}
