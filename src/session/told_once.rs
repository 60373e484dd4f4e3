//! What one finding's stages share with another's, told once.
//!
//! A way that begins or ends as one before it points there; one that is wholly told has no stages of its own.
//! Of gas, what comes from the engine to the alarm is told with the first finding, and with a later one only what the air and the blood have come to by then.
//! Not covered: stages in the middle of two ways.

use crate::explain::{Told, told};
use crate::marking::{Finding, Rule};
use crate::units::DrillTime;
use crate::words::{Arg, Message};

use super::Session;
use super::view::{FindingView, StageView};

/// Stages that two ways have to begin or end with in common, so that they are told once.
const IN_COMMON: usize = 3;

/// Where gas comes from and what warns of it; the air and those who breathe it are elsewhere.
const GAS_COMES: [&str; 5] = ["generator", "window", "garage", "house-door", "gas-alarm"];

impl Session {
    /// A finding's view without the stages that those before it have told.
    pub(super) fn once(
        &self,
        before: &[(&Finding, FindingView)],
        finding: &Finding,
        view: &mut FindingView,
    ) {
        let gas = |rule: Rule| told(rule) == Told::Gas;
        let first = before
            .iter()
            .find(|(f, v)| gas(f.rule) && !v.path.is_empty());
        let before = || before.iter().map(|(_, view)| view);
        if before().any(|other| other.path == view.path) {
            view.path.clear();
            view.heading.clear();
            view.step.clear();
            return;
        }
        if gas(finding.rule) {
            if let Some((_, first)) = first {
                self.gas_once(first, view);
            }
            return;
        }
        if let Some((told, n_stages)) = begins(before(), view) {
            let above = self.above("stage-begins-above", told, view.path.get(n_stages - 1));
            view.path.splice(..n_stages, [above]);
        }
        if let Some((told, n_stages)) = ends(before(), view) {
            let above = self.above("stage-ends-above", told, view.path.last());
            view.path.splice(view.path.len() - n_stages.., [above]);
        }
    }

    /// The stage in place of those that another finding has told, at the last of them.
    fn above(&self, id: &str, told: &FindingView, last: Option<&StageView>) -> StageView {
        let at = Arg::Clock(DrillTime::from_millis(told.clock_ms));
        StageView {
            text: self.words.say(&Message::new(id).with("at", at)),
            ..last.cloned().unwrap_or_default()
        }
    }

    /// Stages of gas without how it comes, where the first finding has told that but for its numbers.
    fn gas_once(&self, first: &FindingView, view: &mut FindingView) {
        let comes = |s: &StageView| GAS_COMES.contains(&s.at.as_str());
        let plain: Vec<String> = first
            .path
            .iter()
            .map(|s| without_numbers(&s.text))
            .collect();
        let known = |s: &StageView| comes(s) && plain.contains(&without_numbers(&s.text));
        let last = view.path.iter().rfind(|s| known(s)).cloned();
        if last.is_some() {
            view.path.retain(|s| !known(s));
            let above = self.above("stage-begins-above", first, last.as_ref());
            view.path.insert(0, above);
        }
    }
}

/// A text without its digits.
fn without_numbers(text: &str) -> String {
    let kept = |c: &char| !c.is_ascii_digit() && !['.', ','].contains(c);
    text.chars().filter(kept).collect()
}

/// The finding with which a way begins alike for longest, and how many stages, if enough.
fn begins<'a>(
    before: impl DoubleEndedIterator<Item = &'a FindingView>,
    view: &FindingView,
) -> Option<(&'a FindingView, usize)> {
    let n_shared = |other: &FindingView| {
        let both = other.path.iter().zip(&view.path);
        both.take_while(|(a, b)| a == b).count()
    };
    let told = before.map(|other| (other, n_shared(other)));
    let enough = told.filter(|(other, n)| *n >= IN_COMMON && other.heading == view.heading);
    // The first of those with most.
    enough.rev().max_by_key(|(_, n)| *n)
}

/// The finding with which a way ends alike for longest, and how many stages, if enough.
fn ends<'a>(
    before: impl DoubleEndedIterator<Item = &'a FindingView>,
    view: &FindingView,
) -> Option<(&'a FindingView, usize)> {
    let n_shared = |other: &FindingView| {
        let both = other.path.iter().rev().zip(view.path.iter().rev());
        both.take_while(|(a, b)| a == b).count()
    };
    let told = before.map(|other| (other, n_shared(other)));
    let enough = told.filter(|(_, n)| *n >= IN_COMMON);
    enough.rev().max_by_key(|(_, n)| *n)
}
