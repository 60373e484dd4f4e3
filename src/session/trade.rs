//! The words of the trade that stand in what is shown, with what they mean.

use crate::words::Term;

use super::Session;
use super::view::{StageView, TermView, TradeView};

impl Session {
    /// The glossary: first the words in what is shown now, with a close view of `place` if one is open, then all others.
    pub fn trade(&self, place: Option<&str>) -> TradeView {
        let text = self.told_now(place).join("\n");
        let mut here: Vec<TermView> = Vec::new();
        for found in self.terms(&text) {
            let term = term(found.term);
            if !here.contains(&term) {
                here.push(term);
            }
        }
        let others = self.words.glossary().into_iter().map(term);
        let others = others.filter(|term| !here.contains(term)).collect();
        TradeView { here, others }
    }

    /// All that is told now, what is dealt with first.
    fn told_now(&self, place: Option<&str>) -> Vec<String> {
        let mut told = Vec::new();
        if let Some(held) = self.consequence() {
            told.push(held.title);
            told.extend(texts(held.stages));
            told.extend([held.why, held.now]);
        }
        if let Some(asked) = self.asked() {
            told.extend([asked.moment, asked.question]);
            told.extend(asked.known);
            told.extend(asked.choices.into_iter().map(|choice| choice.label));
        }
        if let Some(reveal) = self.reveal() {
            told.push(reveal.truth);
            told.extend(texts(reveal.stages));
        }
        if let Some(close) = place.and_then(|place| self.close(place)) {
            told.extend([close.title, close.description]);
            told.extend(close.controls.into_iter().map(|control| control.sentence));
            told.extend(close.readings);
        }
        if let Some(debrief) = self.debrief() {
            for finding in debrief.findings {
                told.extend([finding.what, finding.now]);
                told.extend(texts(finding.path));
                told.extend([finding.why, finding.instead]);
            }
            told.extend(debrief.criteria.into_iter().map(|criterion| criterion.text));
        }
        if let Some(street) = self.street() {
            told.extend([street.goal, street.hint]);
            told.extend(street.wires.into_iter().map(|wire| wire.sentence));
            told.extend(street.appliances.into_iter().map(|thing| thing.sentence));
        }
        told.extend(self.log().lines.into_iter().map(|line| line.text));
        told
    }
}

fn texts(stages: Vec<StageView>) -> impl Iterator<Item = String> {
    stages.into_iter().map(|stage| stage.text)
}

fn term(term: Term) -> TermView {
    TermView {
        name: term.forms.into_iter().next().unwrap_or_default(),
        meaning: term.meaning,
        source: term.source,
    }
}
