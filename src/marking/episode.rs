//! Stretches of a trace during which something holds.

use crate::drill::{Moment, Trace};
use crate::units::DrillTime;

/// How long one may take to see what is found and to make it safe: common practice.
const TO_ACT: DrillTime = DrillTime::from_secs(60);

/// A stretch.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Episode {
    /// Index of the first moment at which it holds.
    pub(super) first: usize,
    /// Index of the first moment at which it no longer holds, or of the last moment.
    pub(super) end: usize,
    /// When it began.
    pub(super) from: DrillTime,
    /// When it ended.
    pub(super) until: DrillTime,
}

impl Episode {
    /// Its length.
    pub(super) fn length(&self) -> DrillTime {
        self.until.since(self.from)
    }

    /// Whether it is only how things were found, ended as soon as can be asked: nobody's mistake in this drill.
    pub(super) fn found_and_ended(&self) -> bool {
        self.first == 0 && self.length() <= TO_ACT
    }

    /// Index of the moment in it at which `read` is highest, the first of several.
    /// Of what follows at once from one deed only the state counts in which it comes to rest: what is switched on draws with the rest.
    pub(super) fn most(&self, trace: &Trace, read: impl Fn(&Moment) -> f64) -> usize {
        let moments = (self.first..).zip(self.moments(trace));
        let rests =
            moments.filter(|(index, _)| at_rest(trace, *index, |m| read(m) > 0.0) == *index);
        let higher = |a: (usize, f64), b: (usize, f64)| if b.1 > a.1 { b } else { a };
        let most = rests.map(|(index, m)| (index, read(m))).reduce(higher);
        most.map_or(self.first, |(index, _)| index)
    }

    /// The moments in it.
    pub(super) fn moments<'a>(&self, trace: &'a Trace) -> &'a [Moment] {
        trace.moments.get(self.first..=self.end).unwrap_or_default()
    }
}

/// Index of the last moment of the same instant for which `holds`, with nothing moved in between: by then all that is switched on draws.
pub(super) fn at_rest(trace: &Trace, index: usize, holds: impl Fn(&Moment) -> bool) -> usize {
    let Some(own) = trace.moments.get(index) else {
        return index;
    };
    let after = trace.moments.iter().skip(index + 1);
    let same = |m: &&Moment| m.at == own.at && m.positions == own.positions && holds(m);
    index + after.take_while(same).count()
}

/// The stretches of a trace during which `holds`.
pub(super) fn episodes(trace: &Trace, holds: impl Fn(&Moment) -> bool) -> Vec<Episode> {
    let mut found: Vec<Episode> = Vec::new();
    let mut open = false;
    for (index, moment) in trace.moments.iter().enumerate() {
        let now = holds(moment);
        if now && !open {
            found.push(Episode {
                first: index,
                end: index,
                from: moment.at,
                until: moment.at,
            });
        }
        if let (true, Some(last)) = (open || now, found.last_mut()) {
            last.end = index;
            last.until = moment.at;
        }
        open = now;
    }
    found
}
