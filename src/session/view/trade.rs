//! Words of the trade as plain data: those in what is shown, and all others.

/// The glossary as it is shown beside something.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct TradeView {
    /// Words in what is shown now, each where it first stands.
    pub here: Vec<TermView>,
    /// All others, by the alphabet.
    pub others: Vec<TermView>,
}

/// A word of the trade.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct TermView {
    /// The word.
    pub name: String,
    /// What it means.
    pub meaning: String,
    /// Where that is from; notes on how it is known stand in angle brackets.
    pub source: String,
}

impl TermView {
    /// The source as a learner reads it: without the notes on how it is known.
    pub fn source_name(&self) -> String {
        super::debrief::without_notes(&self.source)
    }
}
