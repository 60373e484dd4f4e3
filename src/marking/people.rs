//! People: nobody is harmed or put in the way of harm.
//!
//! Sources: IEC 60479-1 and IEEE Std 80 for current through a body; UL 2034 for the alarm; live parts of 50 V or more are guarded (29 CFR 1910.303(g)(2), from memory); refuel only when off and cool (OSHA 3277, checked).

use crate::drill::{Event, IndoorsEvent, Moment, Trace, What};
use crate::hazard::body::Path;
use crate::hazard::shock::{reference_ma, stated_s, times_lethal, zone};
use crate::scenario::Scenario;
use crate::site::{Cord, FarEnd, Site};
use crate::units::DrillTime;
use crate::words::{Arg, Unit, name_of};

use super::episode::episodes;
use super::finding::{Finding, Harm, Rule};
use super::isolation::came;

/// Volts from which bare contacts within reach count as a hazard.
pub(super) const GUARDED_V: f64 = 50.0;
/// Time in which live contacts that a drill begins with have to be made safe: assumption, enough for a look and a walk to the panel.
const MADE_SAFE_IN: DrillTime = DrillTime::from_secs(180);
/// Body for which limits are stated, kilograms: the lighter of the two of IEEE Std 80.
const BODY_KG: f64 = 50.0;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = Vec::new();
    for (index, moment) in trace.moments.iter().enumerate() {
        if let What::Happened(event) = &moment.what {
            found.extend(of_event(site, trace, index, moment, event));
        }
    }
    for episode in episodes(trace, |m| bare_contacts(site, m)) {
        let peak = episode.most(trace, |m| bare_volts(site, m));
        let peak = trace.moments.get(peak);
        let volts = peak.map_or(0.0, |m| bare_volts(site, m));
        let earth = peak.map_or(0.0, |m| one_contact_v(site, m));
        let still = trace.moments.last().filter(|m| bare_contacts(site, m));
        let still = still.is_some() && episode.end + 1 == trace.moments.len();
        let first = trace.moments.get(episode.first);
        let contact = first.and_then(|m| bare_contact(site, m));
        let point = contact.map(|(point, _)| point).unwrap_or_default();
        // Who finds them so hasn't made them so, as long as they are soon made safe.
        let made = episode.first > 0 || episode.length() > MADE_SAFE_IN;
        found.push(
            Finding {
                lasted: episode.length(),
                breach: made,
                ..Finding::breach(Rule::LiveBlades, episode.from, episode.first)
            }
            .with("volts", Arg::Quantity(volts, Unit::Volts))
            .with("earth", Arg::Quantity(earth, Unit::Volts))
            .with("across", Arg::Count(i64::from(volts > earth)))
            .with("lasted", Arg::lasting(episode.length()))
            .with("since", Arg::Clock(episode.from))
            .with("still", Arg::Count(i64::from(still)))
            .with("plugs", Arg::Count(i64::from(of_two_plugs(site, &point))))
            .with(
                "inlet",
                Arg::Count(i64::from(site.inlets.iter().any(|i| i.name == point))),
            )
            .with("came", came(&episode))
            .with(
                "unguarded",
                Arg::Count(i64::from(site.has_unguarded_inlet())),
            )
            .reaching(point),
        );
    }
    found
}

/// A ratio as it is told with "at least": rounded down, as a body is known no better.
fn at_least(times: f64) -> f64 {
    if times >= 2.0 {
        times.floor()
    } else {
        (times * 10.0).floor() / 10.0
    }
}

fn of_event(
    site: &Site,
    trace: &Trace,
    index: usize,
    moment: &Moment,
    event: &Event,
) -> Option<Finding> {
    let at = moment.at;
    if let Event::Shock { volts, amps } = event {
        let lasted = seconds_in_shock(trace, index);
        let seconds = stated_s(lasted);
        let heart_ma = reference_ma(amps.low * 1000.0, Path::LeftHandToFeet);
        let times = times_lethal(heart_ma, seconds, BODY_KG);
        let zone = zone(heart_ma, seconds);
        let finding = Finding::breach(Rule::Shock, at, index)
            .harming(Some(Harm::of_current(zone).unwrap_or(Harm::Hurt)))
            .with("volts", Arg::Range(volts.low, volts.high, Unit::Volts))
            .with("amps", Arg::Range(amps.low, amps.high, Unit::Amps))
            .with("seconds", Arg::Quantity(seconds, Unit::Seconds))
            .with("stated", Arg::Verbatim(beside_stated(lasted).to_owned()))
            .with("times", Arg::Quantity(at_least(times), Unit::Plain))
            .with("crew", Arg::Count(i64::from(site.line_work.is_some())))
            .with("zone", Arg::Said(Box::new(name_of(zone.name()))))
            .reaching(
                site.line
                    .poles
                    .get(site.line.crew_pole)
                    .map_or("", |p| p.name.as_str()),
            );
        return Some(finding);
    }
    if let Event::Alarm { ppm } | Event::Indoors(IndoorsEvent::Unheard { ppm }) = event {
        let own = own_engine(moment);
        let finding = Finding {
            breach: own,
            ..Finding::breach(Rule::Gas, at, index)
        };
        let cohb = moment.conditions.cohb_pct;
        let finding = finding
            .with("ppm", Arg::Quantity(*ppm, Unit::Ppm))
            .with("cohb", Arg::Quantity(cohb, Unit::Percent))
            .with("heard", Arg::Verbatim(heard(event).to_owned()))
            .with(
                "engine",
                Arg::Verbatim(if own { "own" } else { "neighbor" }.to_owned()),
            );
        return Some(finding);
    }
    if let Event::Overcome { cohb_pct }
    | Event::Indoors(IndoorsEvent::PersonOvercome { cohb_pct, .. }) = event
    {
        let cohb = Arg::Quantity(*cohb_pct, Unit::Percent);
        let finding = Finding::breach(Rule::Overcome, at, index);
        return Some(
            finding
                .harming(Some(Harm::MayHaveKilled))
                .with("cohb", cohb),
        );
    }
    let Event::FuelFire { celsius } = event else {
        return None;
    };
    let surface = Arg::Quantity(*celsius, Unit::Celsius);
    Some(Finding::breach(Rule::FuelFire, at, index).with("surface", surface))
}

/// Whether gas can be the house's own doing: its engine runs or has run, or no neighbor's does.
fn own_engine(moment: &Moment) -> bool {
    let engine = moment.conditions.engine;
    let ran = engine.running_since.is_some() || engine.stopped_at.is_some();
    ran || !moment.conditions.indoors.neighbor_runs
}

/// Whether an alarm sounded.
fn heard(event: &Event) -> &'static str {
    if matches!(event, Event::Alarm { .. }) {
        "yes"
    } else {
        "no"
    }
}

/// How a duration lies beside those for which the limit of the heart is stated.
pub(super) fn beside_stated(seconds: f64) -> &'static str {
    if seconds < stated_s(seconds) {
        "shorter"
    } else if seconds > stated_s(seconds) {
        "longer"
    } else {
        "within"
    }
}

/// How long the current lasts, from the shock to the first moment without it.
fn seconds_in_shock(trace: &Trace, index: usize) -> f64 {
    let from = trace.moments.get(index).map(|m| m.at).unwrap_or_default();
    let after = trace.moments.iter().skip(index);
    let end = after
        .filter(|m| m.readings.shock.is_none())
        .map(|m| m.at)
        .next()
        .unwrap_or_else(|| trace.end());
    end.since(from).seconds()
}

/// Whether bare contacts within reach carry volts that have to be guarded.
pub(super) fn bare_contacts(site: &Site, moment: &Moment) -> bool {
    bare_volts(site, moment) >= GUARDED_V
}

/// Volts on bare contacts within reach, at the contact where they are highest.
fn bare_volts(site: &Site, moment: &Moment) -> f64 {
    bare_contact(site, moment).map_or(0.0, |(_, volts)| volts)
}

/// Volts of one contact alone, where bare contacts carry most.
fn one_contact_v(site: &Site, moment: &Moment) -> f64 {
    let contact = bare_contact(site, moment);
    contact.map_or(0.0, |(point, _)| moment.readings.point(&point).volts)
}

/// The bare contact within reach with the highest volts: a blade that hangs free of a cord or strip, a pin of an inlet without its cord.
fn bare_contact(site: &Site, moment: &Moment) -> Option<(String, f64)> {
    let mut bare: Vec<String> = Vec::new();
    let mut covered = vec![false; site.inlets.len()];
    for cord in &site.cords {
        if site.stands(&moment.positions, cord.near, "stowed") {
            bare.push(format!("{}-near-end", cord.name));
        }
        match cord.far {
            FarEnd::Blades(end, _) | FarEnd::Strip(end) => {
                if site.stands(&moment.positions, end, "stowed") {
                    bare.push(format!("{}-far-end", cord.name));
                }
            }
            FarEnd::Inlet(end) => {
                let at = usize::from(moment.positions.get(end).0).checked_sub(1);
                if let Some(slot) = at.and_then(|i| covered.get_mut(i)) {
                    *slot = true;
                }
            }
            FarEnd::Connector => {}
        }
    }
    let inlets = site.inlets.iter().zip(covered).filter(|(_, c)| !c);
    bare.extend(inlets.map(|(inlet, _)| inlet.name.clone()));
    let contacts = bare.into_iter().map(|point| {
        let volts = contact_volts(moment, &point);
        (point, volts)
    });
    contacts.reduce(|most, next| if next.1 > most.1 { next } else { most })
}

/// Whether a bare contact is one of a cord with a plug at each end, and not of an inlet or its cord.
fn of_two_plugs(site: &Site, point: &str) -> bool {
    let own = |c: &&Cord| {
        point
            .strip_prefix(c.name.as_str())
            .is_some_and(|end| end.ends_with("-end"))
    };
    let cord = site.cords.iter().find(own);
    cord.is_some_and(|c| matches!(c.far, FarEnd::Blades(..) | FarEnd::Strip(_)))
}

fn contact_volts(moment: &Moment, point: &str) -> f64 {
    let reading = moment.readings.point(point);
    reading.volts_across.max(reading.volts)
}
