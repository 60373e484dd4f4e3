//! Line work: nobody's hands are on a line that isn't cut off for all to see, tested dead with a proved tester, and grounded at the work.
//!
//! Judged by how things stand and by what the testers showed, never by a list of steps; where a rule is broken several times the first time is told.
//! Only the conductor at the crew's own pole is judged as the work; the far end of a broken wire is judged in `live_end`.
//! Sources: 29 CFR 1926.961 (opening, tags, testing; checked in a digest), 1926.962 and 1910.269(n) (grounds at the work, earth end first, line end off first; checked in digests);
//! the low range and the test before and after: NIOSH 88-104 and NFPA 70E (checked); customers asked before the line is alive again: common practice, from the reason of NEC 702.5.

use crate::drill::{Action, Event, Learnt, LineEvent, Listener, Moment, Trace, What};
use crate::hazard::tester::{Conclusion, Shown, conclude};
use crate::scenario::Scenario;
use crate::site::{Break, Clamps, ControlId, LineWork, PROVING_SOURCE, PositionId, Site};
use crate::units::DrillTime;
use crate::words::{Arg, Unit, name_of};

use super::episode::{Episode, episodes};
use super::finding::{Finding, Rule};
use super::live_end;

/// The least volts that a tester has to show to be worth something on a line that a small source may feed: those of one leg of a house.
const LOW_RANGE_V: f64 = 120.0;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let Some(work) = &site.line_work else {
        return Vec::new();
    };
    let mut found: Vec<Finding> = clamps(site, work, trace).into_iter().collect();
    found.extend(tests(site, work, trace));
    for (rule, holds) in STANDING {
        let stretches = episodes(trace, |m| holds(site, work, m));
        found.extend(
            stretches
                .first()
                .map(|e| standing_finding(site, work, trace, rule, e)),
        );
    }
    found.extend(live_end::finding(site, work, trace));
    found.extend(grounds_left(site, work, trace));
    found.extend(not_asked(trace));
    found
}

type Holds = fn(&Site, &LineWork, &Moment) -> bool;

/// Rules that show in how things stand.
const STANDING: [(Rule, Holds); 3] = [
    (Rule::NoVisibleBreak, |s, _, m| no_visible_break(s, m)),
    (Rule::NotGrounded, not_grounded),
    (Rule::GroundsWrong, grounds_elsewhere),
];

/// Hands on the line while a way for the utility's power is left.
pub(super) fn no_visible_break(site: &Site, moment: &Moment) -> bool {
    holds_line(site, moment) && site.way_left(&moment.positions)
}

/// Hands on the line with no zone of equal potential at the work.
pub(super) fn out_of_zone(site: &Site, moment: &Moment) -> bool {
    site.line_work.is_some() && holds_line(site, moment) && !site.in_zone(&moment.positions)
}

fn not_grounded(site: &Site, work: &LineWork, moment: &Moment) -> bool {
    out_of_zone(site, moment) && work.sets_on(&moment.positions) == 0
}

fn grounds_elsewhere(site: &Site, work: &LineWork, moment: &Moment) -> bool {
    out_of_zone(site, moment) && work.sets_on(&moment.positions) > 0
}

fn holds_line(site: &Site, moment: &Moment) -> bool {
    site.stands(&moment.positions, site.line.crew, "hands-on")
}

/// The name of a pole.
pub(super) fn pole_name(site: &Site, pole: usize) -> &str {
    site.line.poles.get(pole).map_or("", |p| p.name.as_str())
}

/// Volts to earth on the conductor at a pole.
pub(super) fn volts_at(site: &Site, moment: &Moment, pole: usize) -> f64 {
    let reading = moment.readings.point(pole_name(site, pole));
    reading.volts_to_earth.unwrap_or(reading.volts)
}

/// Volts below which a line is told as dead: no hand feels them, and no tester shows them.
const DEAD_V: f64 = 1.0;

/// A finding with the volts that hands or clamps met, and whether the line was dead then.
fn with_volts(finding: Finding, volts: f64) -> Finding {
    finding
        .with("volts", Arg::Quantity(volts, Unit::Volts))
        .with("dead", Arg::Count(i64::from(volts < DEAD_V)))
}

fn standing_finding(
    site: &Site,
    work: &LineWork,
    trace: &Trace,
    rule: Rule,
    episode: &Episode,
) -> Finding {
    let volts = |m: &Moment| volts_at(site, m, site.line.crew_pole);
    let shown = episode.most(trace, |m| volts(m).round());
    let peak = trace.moments.get(shown);
    let sets = episode
        .moments(trace)
        .first()
        .map_or(0, |m| work.sets_on(&m.positions))
        .try_into()
        .unwrap_or_default();
    let finding = Finding {
        lasted: episode.length(),
        ..Finding::breach(rule, episode.from, shown)
    };
    let highest = peak.map_or(0.0, volts);
    let before = episode.first.checked_sub(1);
    let untouched = before.and_then(|i| trace.moments.get(i)).map_or(0.0, volts);
    let finding = with_volts(finding, highest)
        .reaching(pole_name(site, site.line.crew_pole))
        .with("untouched", Arg::Quantity(untouched, Unit::Volts))
        .with(
            "pulled",
            Arg::Count(i64::from(untouched > PULLED * highest)),
        );
    if rule == Rule::GroundsWrong {
        finding
            .with("how", Arg::Count(ELSEWHERE))
            .with("sets", Arg::Count(sets))
    } else {
        finding
            .with("lasted", Arg::lasting(until_harm(trace, episode)))
            .with("zone", Arg::Count(peak.map_or(0, |m| zoned(site, m))))
            .with(
                "customer",
                Arg::Count(peak.map_or(0, |m| by_customer(site, m))),
            )
            .with("jumper", Arg::Count(peak.map_or(0, |m| jumpers(work, m))))
            .with("break", Arg::Said(Box::new(name_of(jumped(work, peak)))))
    }
}

/// Times the volts of hands on a line from which they were plainly higher just before: a body pulls a small source down.
const PULLED: f64 = 1.2;

/// Whether grounds at the work keep all that hands meet at the same volts, as a count for the words.
fn zoned(site: &Site, moment: &Moment) -> i64 {
    i64::from(site.in_zone(&moment.positions))
}

/// Whether a customer's source alone is on the line at the work, as a count for the words.
fn by_customer(site: &Site, moment: &Moment) -> i64 {
    let fed = moment
        .readings
        .point(pole_name(site, site.line.crew_pole))
        .fed;
    i64::from(fed.customer() && !fed.utility)
}

/// How long it lasted before somebody was hurt by it: from there on hands are not held there by choice.
fn until_harm(trace: &Trace, episode: &Episode) -> DrillTime {
    let mut during = episode.moments(trace).iter();
    let hurt = during.find(|m| matches!(m.what, What::Happened(Event::Shock { .. })));
    let until = hurt.map_or(episode.until, |m| m.at);
    until.since(episode.from)
}

/// What jumpers do in a moment: 0 there is none, 1 one goes around an open break, 2 one hangs beside closed blades.
fn jumpers(work: &LineWork, moment: &Moment) -> i64 {
    let there = |jumper: ControlId| moment.positions.get(jumper) != PositionId(0);
    if work.breaks.iter().any(|b| b.is_jumped(&moment.positions)) {
        1
    } else if work.breaks.iter().any(|b| there(b.jumper)) {
        2
    } else {
        0
    }
}

/// The break that a jumper goes around in a moment, one that is open first.
fn jumped<'a>(work: &'a LineWork, moment: Option<&Moment>) -> &'a str {
    let there = |b: &&Break| moment.is_some_and(|m| m.positions.get(b.jumper) != PositionId(0));
    let open = |b: &&Break| moment.is_some_and(|m| b.is_jumped(&m.positions));
    let found = work.breaks.iter().find(open);
    let found = found.or_else(|| work.breaks.iter().find(there));
    found.map_or("", |b| b.name.as_str())
}

/// How grounds are wrong: the line end went on first, the earth end came off first, or they hang elsewhere than at the work.
const LINE_END_FIRST: i64 = 0;
const EARTH_END_FIRST: i64 = 1;
const ELSEWHERE: i64 = 2;

/// The first clamp that was moved in the wrong order.
fn clamps(site: &Site, work: &LineWork, trace: &Trace) -> Option<Finding> {
    trace.moments.windows(2).zip(1..).find_map(|(pair, index)| {
        let [before, after] = pair else { return None };
        let moved = work.grounds.iter().find(|g| {
            g.clamps(&after.positions) == Clamps::LineEnd
                && g.clamps(&before.positions) != Clamps::LineEnd
        })?;
        let how = match moved.clamps(&before.positions) {
            Clamps::BothEnds => EARTH_END_FIRST,
            Clamps::Off | Clamps::EarthEnd | Clamps::LineEnd => LINE_END_FIRST,
        };
        let volts = volts_at(site, after, moved.pole);
        let sets = work.sets_on(&after.positions);
        Some(
            with_volts(Finding::breach(Rule::GroundsWrong, after.at, index), volts)
                .with("how", Arg::Count(how))
                .with("sets", Arg::Count(i64::try_from(sets).unwrap_or_default()))
                .reaching(pole_name(site, moved.pole)),
        )
    })
}

/// The first time that somebody trusted the line without having the right to: hands on it, or the line end of grounds put on it.
fn tests(site: &Site, work: &LineWork, trace: &Trace) -> Vec<Finding> {
    let mut found: Vec<Finding> = Vec::new();
    for (pair, index) in trace.moments.windows(2).zip(1..) {
        let [before, after] = pair else { continue };
        let Some(pole) = trusted_pole(site, work, before, after) else {
            continue;
        };
        let seen = trace.moments.get(..=index).unwrap_or_default();
        // A touch may pull the line down: told is the moment that was worse for the hand.
        let (was, is) = (volts_at(site, before, pole), volts_at(site, after, pole));
        let (volts, shown) = if was > is {
            (was, index - 1)
        } else {
            (is, index)
        };
        let finding = match shown_dead(site, work, seen, pole) {
            Ok(()) => continue,
            Err(Lacking::Test { lit }) => Finding::breach(Rule::NotTested, after.at, shown)
                .with("lit", Arg::Count(i64::from(lit))),
            Err(Lacking::Proof { why, tester }) => {
                let name = work.testers.get(tester).map_or("", |t| t.name.as_str());
                let least = work.testers.get(tester).map_or(0.0, |t| t.make.least_v);
                Finding::breach(Rule::TesterUnproved, after.at, shown)
                    .with("why", Arg::Count(why))
                    .with("tester", Arg::Said(Box::new(name_of(name))))
                    .with("least", Arg::Quantity(least, Unit::Volts))
            }
        };
        if found.iter().all(|f| f.rule != finding.rule) {
            let before = Arg::Count(i64::from(shown < index));
            let finding = with_volts(finding, volts).with("before", before);
            found.push(finding.reaching(pole_name(site, pole)));
        }
    }
    found
}

/// The pole at which the line was taken for dead between two moments.
fn trusted_pole(site: &Site, work: &LineWork, before: &Moment, after: &Moment) -> Option<usize> {
    if holds_line(site, after) && !holds_line(site, before) {
        return Some(site.line.crew_pole);
    }
    let on = |c: Clamps| matches!(c, Clamps::BothEnds | Clamps::LineEnd);
    let clamped = work
        .grounds
        .iter()
        .find(|g| on(g.clamps(&after.positions)) && !on(g.clamps(&before.positions)));
    clamped.map(|g| g.pole)
}

/// What lacks for taking a line for dead.
enum Lacking {
    /// A test since the line was last closed anywhere, or its answer was that it is live.
    Test { lit: bool },
    /// The proof of the tester: 0 not tried before, 1 not tried after, 2 dark on the known source too, 3 blind to low volts.
    Proof { why: i64, tester: usize },
}

/// Whether the line was shown to be dead at a pole.
fn shown_dead(site: &Site, work: &LineWork, seen: &[Moment], pole: usize) -> Result<(), Lacking> {
    let name = pole_name(site, pole);
    let tests = tests_since_closed(site, work, seen);
    let Some(at) = tests.iter().rposition(|(point, ..)| *point == name) else {
        return Err(Lacking::Test { lit: false });
    };
    let Some((_, tester, lit)) = tests.get(at).copied() else {
        return Err(Lacking::Test { lit: false });
    };
    let known = |(point, own, lit): &(&str, usize, bool)| {
        (*point == PROVING_SOURCE && *own == tester).then(|| shown(*lit))
    };
    let before = tests.iter().take(at).rev().find_map(known);
    let after = tests.iter().skip(at).find_map(known);
    let proof = |why| Err(Lacking::Proof { why, tester });
    match conclude(before, shown(lit), after) {
        Conclusion::Live => Err(Lacking::Test { lit: true }),
        Conclusion::NotTriedBefore => proof(0),
        Conclusion::NotTriedAfter => proof(1),
        Conclusion::TesterFailed => proof(2),
        Conclusion::ProvedDead => {
            let make = work.testers.get(tester).map(|t| t.make);
            if make.is_some_and(|m| m.least_v <= LOW_RANGE_V) {
                Ok(())
            } else {
                proof(3)
            }
        }
    }
}

/// What testers showed since the line was last closed anywhere: where, which tester, whether it lit up.
pub(super) fn tests_since_closed<'a>(
    site: &Site,
    work: &LineWork,
    seen: &'a [Moment],
) -> Vec<(&'a str, usize, bool)> {
    let closed = seen.iter().rposition(
        |m| matches!(&m.what, What::Did(Action::Set(c, p)) if joins(site, work, *c, *p)),
    );
    let since = seen.iter().skip(closed.map_or(0, |i| i + 1));
    let tests = since.filter_map(|m| {
        let What::Learnt(Learnt::Detected { point, tester, lit }) = &m.what else {
            return None;
        };
        Some((point.as_str(), *tester, *lit))
    });
    tests.collect()
}

fn shown(lit: bool) -> Shown {
    if lit { Shown::Light } else { Shown::Dark }
}

/// Whether a deed joins the line to something that may feed it.
fn joins(site: &Site, work: &LineWork, control: ControlId, position: PositionId) -> bool {
    let closing =
        |handle: ControlId, closed: u8| (handle, PositionId(closed)) == (control, position);
    closing(site.line.feeder, 1)
        || closing(work.home_cutout, 0)
        || work.taps.iter().any(|t| closing(t.cutout, 0))
        || work.breaks.iter().any(|b| closing(b.handle, 0))
}

/// Grounds that carry the utility's fault current.
fn grounds_left(site: &Site, work: &LineWork, trace: &Trace) -> Option<Finding> {
    let amps = |m: &Moment| {
        let names = work.grounds.iter().filter_map(|g| site.control(g.control));
        names
            .map(|c| m.readings.amps_of(&c.name))
            .fold(0.0, f64::max)
    };
    let episodes = episodes(trace, |m| amps(m) >= work.trips_a);
    let episode = episodes.first()?;
    let index = episode.first;
    let moment = trace.moments.get(index)?;
    let sets = i64::try_from(work.sets_on(&moment.positions)).unwrap_or_default();
    let own = |control: ControlId| work.grounds.iter().any(|g| g.control == control);
    let clamp = |m: &Moment| matches!(m.what, What::Did(Action::Set(c, _)) if own(c));
    let mut pairs = trace.moments.windows(2).skip(index);
    let taken = pairs.any(|p| matches!(p, [a, b] if amps(a) >= work.trips_a && clamp(b)));
    // A switch that opens on a fault ends it within the instant; welded contacts leave it to what is upstream of the line.
    let head = moment.positions.get(work.head_contacts);
    let welded = head != PositionId(0) && episode.length() > DrillTime::ZERO;
    Some(
        Finding {
            lasted: episode.length(),
            ..Finding::breach(Rule::GroundsLeft, moment.at, index)
        }
        .with("lasted", Arg::lasting(episode.length()))
        .with("amps", Arg::Quantity(amps(moment), Unit::Amps))
        .with("sets", Arg::Count(sets))
        .with("taken", Arg::Count(i64::from(taken)))
        .with("welded", Arg::Count(i64::from(welded)))
        .with("by", Arg::Verbatim(fed_by(site, trace, index).to_owned()))
        .reaching(pole_name(site, most_loaded(site, work, moment))),
    )
}

/// The deed that let the utility into the grounds: a line that was mended, or something that was closed.
fn fed_by(site: &Site, trace: &Trace, index: usize) -> &'static str {
    let until = trace.moments.get(..=index).unwrap_or_default();
    let deed = until.iter().rev().find_map(|m| {
        let What::Did(Action::Set(control, _)) = m.what else {
            return None;
        };
        Some(control)
    });
    if deed == Some(site.line.span_state) {
        "mended"
    } else {
        "closed"
    }
}

/// The pole whose grounds carry most.
fn most_loaded(site: &Site, work: &LineWork, moment: &Moment) -> usize {
    let amps = |control: ControlId| {
        let name = site.control(control).map_or("", |c| c.name.as_str());
        moment.readings.amps_of(name)
    };
    let grounds = work.grounds.iter().map(|g| (g.pole, amps(g.control)));
    let most = grounds.reduce(|most, next| if next.1 > most.1 { next } else { most });
    most.map_or(site.line.crew_pole, |(pole, _)| pole)
}

/// The utility reaches the customers before these have said that they are off their own sources.
fn not_asked(trace: &Trace) -> Option<Finding> {
    let served = |m: &Moment| m.readings.point("service").fed.utility;
    let (mut asked, mut back) = (false, false);
    for (pair, index) in trace.moments.windows(2).zip(1..) {
        let [before, after] = pair else { continue };
        asked |= after.what == What::Did(Action::Tell(Listener::Neighbors));
        back |= after.what == What::Happened(Event::Line(LineEvent::CustomersBack));
        if served(before) && !served(after) {
            (asked, back) = (false, false);
        }
        if served(after) && !served(before) && !back {
            let running = after.conditions.engine.running_since.is_some();
            return Some(
                Finding::breach(Rule::NotAsked, after.at, index)
                    .with("asked", Arg::Count(i64::from(asked)))
                    .with("running", Arg::Count(i64::from(running)))
                    .reaching("service"),
            );
        }
    }
    None
}
