//! A run that is over, seen again moment by moment: the street as it stood then, beside what had been done and had happened.
//!
//! It is the same run played to that moment, which comes out the same to the bit; nothing is kept for it, and nothing of the run changes.
//! It doesn't cover trying it another way from there: see [`super::rewind`].

use crate::drill::What;
use crate::explain::explain;
use crate::units::DrillTime;
use crate::words::{Arg, Message};

use super::command::Practice;
use super::debrief::shown_at;
use super::view::{AgainView, Phase};
use super::{Open, Session};

impl Session {
    /// The moments of the run that is over in which something was done or happened or that a finding shows, with its start and its end.
    pub fn moments(&self) -> Vec<DrillTime> {
        let over = |open: &&Open| open.verdict.is_some();
        let Some(open) = self.open.as_ref().filter(over) else {
            return Vec::new();
        };
        let trace = open.drill.trace();
        let told = |what: &What| !matches!(what, What::Began | What::Sampled);
        let moments = trace.moments.iter().filter(|m| told(&m.what)).map(|m| m.at);
        let found = open.verdict.iter().flat_map(|v| &v.findings);
        let shown = found.map(|f| shown_at(&open.drill, f));
        let ends = [DrillTime::ZERO, trace.end()];
        let mut all: Vec<DrillTime> = moments.chain(shown).chain(ends).collect();
        all.sort_unstable();
        all.dedup();
        all
    }

    /// One of those moments, by its place among them; the last for a place behind it.
    pub fn seen_again(&self, place: usize) -> Option<AgainView> {
        let moments = self.moments();
        let last = moments.len().checked_sub(1)?;
        let place = place.min(last);
        let at = *moments.get(place)?;
        let open = self.open.as_ref()?;
        let done = open.drill.run().actions.iter().filter(|a| a.at <= at);
        let run = open.drill.run();
        let drill = run.until(done.count(), at, open.drill.scenario()).ok()?;
        // The learner says first what happened; what was found comes with the page that tells why.
        let told = open.verdict.as_ref().filter(|_| open.phase >= Phase::Why);
        let findings = told.into_iter().flat_map(|v| &v.findings);
        // Much may follow from one deed in one instant: what is told of it is what is shown of it.
        let mut all = open.verdict.iter().flat_map(|v| &v.findings);
        let shown = all.find(|f| shown_at(&open.drill, f) == at);
        let drill = match shown {
            Some(finding) => drill.stood_at(finding.moment),
            None => drill,
        };
        let found = findings
            .filter(|f| f.at == at)
            .map(|f| self.words.say(&explain(&open.drill, f).what));
        let count = |n: usize| Arg::Count(i64::try_from(n).unwrap_or(i64::MAX));
        let said = Message::new("again-place")
            .with("place", count(place + 1))
            .with("of", count(last + 1));
        let mut seen = self.clone();
        seen.open = Some(Open {
            drill,
            verdict: None,
            practice: Practice::Coached,
            left: None,
            ..open.clone()
        });
        Some(AgainView {
            place,
            last,
            said: self.words.say(&said),
            clock: self.clock(at),
            clock_ms: at.millis(),
            street: seen.street_now()?,
            log: seen.log().lines,
            found: found.collect(),
        })
    }
}
