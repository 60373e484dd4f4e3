//! The far end of a broken wire: nobody joins it to the work by hand while it is live.
//!
//! Whoever joins two ends has both in hand, and a test and grounds at one pole say nothing of the wire beyond the gap.
//! Judged in the moment just before the joining, by volts and never by what was looked at; the first time is told.
//! Not covered: the current through whoever joins and the arc, as no body lies across the gap in the network; work on a live line with the tools and rules for it; what the neutral alone brings along from a fault, which `Rule::GroundsLeft` tells.
//! Sources: 29 CFR 1926.962(c) and 1910.269(n), nobody exposed to a difference of potential (checked in digests);
//! live from 50 V on, as for other live parts, 29 CFR 1910.303(g)(2) (from memory); to test and ground both sides of a gap: from memory.

use crate::drill::{Action, Moment, Trace, What};
use crate::site::{Clamps, LineWork, Site};
use crate::words::{Arg, Unit, name_of};

use super::finding::{Finding, Rule};
use super::line::{pole_name, tests_since_closed, volts_at};
use super::people::GUARDED_V;

/// The first time that a wire was joined to a live far end.
pub(super) fn finding(site: &Site, work: &LineWork, trace: &Trace) -> Option<Finding> {
    let far = site.far_pole()?;
    let mut pairs = trace.moments.windows(2).zip(1..);
    pairs.find_map(|(pair, index)| {
        let [before, after] = pair else { return None };
        if !is_joined(site, before, after) {
            return None;
        }
        let volts = met_v(site, before, far);
        if volts < GUARDED_V {
            return None;
        }
        let seen = trace.moments.get(..index).unwrap_or_default();
        let hung = work.clamps_at(far, &before.positions) == Clamps::BothEnds;
        Some(
            Finding::breach(Rule::LiveEnd, after.at, index - 1)
                .with("volts", Arg::Quantity(volts, Unit::Volts))
                .with("end", Arg::Said(Box::new(name_of(pole_name(site, far)))))
                .with("tested", Arg::Count(tested(site, work, seen, far)))
                .with("grounds", Arg::Count(i64::from(hung)))
                .reaching(pole_name(site, far)),
        )
    })
}

/// Whether hands have joined the broken span between two moments.
fn is_joined(site: &Site, before: &Moment, after: &Moment) -> bool {
    let span = site.line.span_state;
    let whole = |m: &Moment| site.stands(&m.positions, span, "whole");
    let did = matches!(after.what, What::Did(Action::Set(control, _)) if control == span);
    did && whole(after) && !whole(before)
}

/// Volts between the far end and what the worker is at, who takes it in hand while holding the work.
///
/// Grounds at the work put the wire there and the worker at the volts of the neutral: then it is the far end against the neutral that hands bridge.
/// A far end that is clamped to the neutral as well gives next to nothing there, even while a fault lifts both.
/// The neutral of the far pole is taken for that of the work. While a fault stands in grounds at the far end, the rods beyond the gap draw a share of it along the neutral: some tens of volts from pole to pole, left out here.
/// With no grounds at the work the worker is at the volts of the earth below, and it is the far end to earth.
fn met_v(site: &Site, moment: &Moment, far: usize) -> f64 {
    if site.in_zone(&moment.positions) {
        moment.readings.point(pole_name(site, far)).volts
    } else {
        volts_at(site, moment, far)
    }
}

/// What the last test at a pole showed since the line was last closed anywhere: 0 there was none, 1 the tester stayed dark, 2 it lit up.
fn tested(site: &Site, work: &LineWork, seen: &[Moment], pole: usize) -> i64 {
    let name = pole_name(site, pole);
    let tests = tests_since_closed(site, work, seen);
    let last = tests.iter().rfind(|(point, ..)| *point == name);
    last.map_or(0, |(.., lit)| 1 + i64::from(*lit))
}
