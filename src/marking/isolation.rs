//! Isolation: no customer's source ever reaches the utility's side, nor hangs on one unguarded handle.
//!
//! Judged by what each conductor is fed by, whatever the volts.
//! What is found so when the drill begins, and ended within a minute, is told and breaks nothing.
//! Sources: NEC 702.5 (transfer equipment must prevent interconnection; checked in a copy that quotes it);
//! OSHA 3277 and CPSC advice never to connect without it (checked); NIOSH FACE 90-02 (a death by a main left closed; checked).

use crate::drill::{Action, Event, Moment, Trace, What};
use crate::scenario::Scenario;
use crate::site::{Cord, FarEnd, Interlock, Kind, Range, Site, Spot};
use crate::units::DrillTime;
use crate::words::{Arg, Unit, name_of};

use super::episode::{Episode, episodes};
use super::finding::{Finding, Rule};

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = Vec::new();
    for episode in episodes(trace, |m| line_fed(site, m)) {
        found.push(line_fed_finding(site, trace, &episode));
    }
    for episode in episodes(trace, |m| unguarded_volts(site, m).is_some()) {
        found.push(unguarded_finding(site, trace, &episode));
    }
    for (index, moment) in trace.moments.iter().enumerate() {
        if let What::Happened(event) = &moment.what {
            found.extend(collision(site, trace, (index, moment), event));
        }
    }
    for episode in episodes(trace, sources_meet) {
        found.push(sources_meet_finding(site, trace, &episode));
    }
    found
}

/// What joined two sources: the main that was closed, the utility that came back, or the set that was joined to it.
fn joined_by(site: &Site, trace: &Trace, index: usize) -> &'static str {
    let before = trace.moments.get(..=index).unwrap_or_default();
    let deed = before.iter().rev().find_map(|m| {
        if let What::Did(Action::Set(control, _)) = &m.what {
            let main = site.control(*control).map(|c| c.kind) == Some(Kind::Main);
            return Some(if main { "main" } else { "set" });
        }
        (m.what == What::Happened(Event::UtilityReturned)).then_some("utility")
    });
    deed.unwrap_or("utility")
}

/// Two sources that met out of step.
fn collision(
    site: &Site,
    trace: &Trace,
    (index, moment): (usize, &Moment),
    event: &Event,
) -> Option<Finding> {
    let Event::Collision {
        angle_deg,
        slip_hz,
        amps,
        torque,
    } = event
    else {
        return None;
    };
    if sources_meet(moment) {
        return None;
    }
    let rated = site.generator.spec.rated_a();
    let finding = Finding::breach(Rule::Collision, moment.at, index)
        .with("angle", Arg::Quantity(*angle_deg, Unit::Degrees))
        .with("slip", Arg::Quantity(slip_hz.abs(), Unit::Hertz))
        .with("amps", Arg::Quantity(amps.low, Unit::Amps))
        .with("worst", Arg::Quantity(amps.high, Unit::Amps))
        .with("times", Arg::Quantity(amps.high / rated, Unit::Plain))
        .with("torque", Arg::Quantity(torque.high, Unit::Plain))
        .with("crew", Arg::Count(i64::from(site.line_work.is_some())))
        .with(
            "by",
            Arg::Verbatim(joined_by(site, trace, index).to_owned()),
        )
        .reaching("generator-outlet");
    Some(finding)
}

/// Whether the set of a neighbor who lends a cord reaches the outlets of the house's own set, whether that runs or not.
pub(super) fn sources_meet(moment: &Moment) -> bool {
    moment.readings.point("generator-outlet").fed.lent
}

/// Two sets in one place, with the surge where both ran and met out of step.
fn sources_meet_finding(site: &Site, trace: &Trace, episode: &Episode) -> Finding {
    let moments = episode.moments(trace);
    let met = (episode.first..).zip(moments).find_map(|(index, m)| {
        let What::Happened(Event::Collision {
            angle_deg, amps, ..
        }) = &m.what
        else {
            return None;
        };
        Some((index, m.at, *angle_deg, *amps))
    });
    // Where both ran and met, that is what is told; until then the outlets were live alone.
    let (shown, from, angle, amps) =
        met.unwrap_or((episode.first, episode.from, 0.0, Range::default()));
    let lasted = episode.until.since(from);
    let volts = moments.iter().map(|m| m.readings.point("generator-outlet"));
    let volts = volts.map(|p| p.volts).fold(0.0, f64::max);
    let rated = site.generator.spec.rated_a();
    let finding = Finding {
        lasted,
        breach: !episode.found_and_ended(),
        ..Finding::breach(Rule::SourcesMeet, from, shown)
    }
    .with("met", Arg::Count(i64::from(met.is_some())))
    .with("volts", Arg::Quantity(volts, Unit::Volts))
    .with("angle", Arg::Quantity(angle, Unit::Degrees))
    .with("amps", Arg::Quantity(amps.low, Unit::Amps))
    .with("worst", Arg::Quantity(amps.high, Unit::Amps))
    .with("times", Arg::Quantity(amps.high / rated, Unit::Plain))
    .with("lasted", Arg::lasting(episode.length()))
    .reaching("generator-outlet");
    match held(site, moments, amps.low) {
        Some((breaker, opens)) if met.is_some() => finding
            .with("breaker", Arg::Said(Box::new(name_of(breaker))))
            .with("opens", Arg::Quantity(opens, Unit::Seconds)),
        _ => finding,
    }
}

/// The breaker of the outlet that a strip joins to a neighbor's set, its own or the set's, and the seconds after which a cold one opens at these amps, if it did not open.
fn held<'a>(site: &'a Site, moments: &[Moment], amps: f64) -> Option<(&'a str, f64)> {
    let met = moments.first()?;
    let strips = site.cords.iter();
    let mut strips = strips.filter(|c| matches!(c.far, FarEnd::Strip(_)));
    let outlet = strips.find_map(|cord| {
        let Spot::Receptacle(index) = cord.near_spot(&met.positions) else {
            return None;
        };
        site.generator.receptacles.get(index)
    })?;
    let own = outlet.breaker.unwrap_or(site.generator.output);
    let (id, control, guard) = site.guards().find(|(id, ..)| *id == own)?;
    let opened = moments
        .iter()
        .any(|m| matches!(m.what, What::Happened(Event::Tripped { control, .. }) if control == id));
    let opens = guard.seconds_to_open(0.0, amps)?;
    (!opened).then_some((control.name.as_str(), opens))
}

/// Whether the generator reaches the utility's side of the main.
pub(super) fn line_fed(site: &Site, moment: &Moment) -> bool {
    let readings = &moment.readings;
    let line = site
        .line
        .poles
        .iter()
        .any(|p| readings.point(&p.name).fed.customer());
    let neighbors = site
        .neighbors
        .iter()
        .any(|n| readings.point(&n.name).fed.customer());
    line || neighbors || readings.point("service").fed.customer()
}

/// Volts on house wiring that the generator feeds by a way that no transfer equipment guards; none if it feeds none so.
///
/// An inlet without an interlock counts from its pins on, an outlet with a two-plug cord from its contacts on:
/// one handle away from the line is a finding before that handle is moved.
pub(super) fn unguarded_volts(site: &Site, moment: &Moment) -> Option<f64> {
    let mut points = Vec::new();
    for (inlet, _) in site.backfed().filter(|(_, held)| !held.blocks()) {
        let inlet = site.inlets.get(inlet);
        points.extend(inlet.map(|i| i.name.clone()));
    }
    points.extend(two_plugs(site, moment).map(|c| format!("{}-far-end", c.name)));
    let readings = points.iter().map(|p| moment.readings.point(p));
    let fed = readings.filter(|r| r.fed.customer());
    fed.map(|r| r.volts.max(r.volts_across)).reduce(f64::max)
}

/// Cords with two plugs that are in an outlet of the set and in one of the house.
fn two_plugs<'a>(site: &'a Site, moment: &Moment) -> impl Iterator<Item = &'a Cord> {
    site.cords.iter().filter(|cord| {
        let FarEnd::Blades(end, _) = cord.far else {
            return false;
        };
        let plugged = site.position_name(&moment.positions, end) != "stowed";
        plugged && matches!(cord.near_spot(&moment.positions), Spot::Receptacle(_))
    })
}

fn line_fed_finding(site: &Site, trace: &Trace, episode: &Episode) -> Finding {
    let moments = episode.moments(trace);
    let mut fed = moments.iter().filter(|m| line_fed(site, m));
    let tied = fed.all(|m| m.readings.generator.tied);
    // What the generator does alone is told, unless it never was alone.
    let told = |m: &Moment| tied || !m.readings.generator.tied;
    let volts = |m: &Moment| {
        let poles = site.line.poles.iter().map(|p| m.readings.point(&p.name));
        poles
            .filter(|p| p.fed.customer() && told(m))
            .map(|p| p.volts)
            .fold(0.0, f64::max)
    };
    let shown = episode.most(trace, volts);
    let peak = trace.moments.get(shown);
    let highest = peak.map_or(0.0, volts);
    let lit = |m: &Moment| {
        site.neighbors
            .iter()
            .filter(|n| m.readings.point(&n.name).fed.customer())
            .count()
    };
    let alone = || moments.iter().filter(|m| !m.readings.generator.tied);
    let n_lit = alone().map(lit).max().unwrap_or_default();
    let asked = alone()
        .map(|m| m.readings.generator.asked_w)
        .fold(0.0, f64::max);
    Finding {
        lasted: episode.length(),
        breach: !episode.found_and_ended(),
        ..Finding::breach(Rule::LineFed, episode.from, shown)
    }
    .with("volts", Arg::Quantity(highest, Unit::Volts))
    .with(
        "neighbors",
        Arg::Count(i64::try_from(n_lit).unwrap_or_default()),
    )
    .with("asked", Arg::Quantity(asked, Unit::Watts))
    .with(
        "rated",
        Arg::Quantity(site.generator.spec.rated_w, Unit::Watts),
    )
    .with("lasted", Arg::lasting(episode.length()))
    .with("tied", Arg::Count(i64::from(tied)))
    .with("came", came(episode))
    .reaching(peak.map_or("service", |m| line_point(site, m)))
}

/// Where on the utility's side a customer's power stands: at the crew's pole if it gets there.
fn line_point<'a>(site: &'a Site, moment: &Moment) -> &'a str {
    let pole = site
        .line
        .poles
        .get(site.line.crew_pole)
        .map(|p| p.name.as_str());
    let fed = |point: &&str| moment.readings.point(point).fed.customer();
    pole.filter(fed).unwrap_or("service")
}

fn unguarded_finding(site: &Site, trace: &Trace, episode: &Episode) -> Finding {
    let moments = episode.moments(trace);
    let volts = moments
        .iter()
        .filter_map(|m| unguarded_volts(site, m))
        .fold(0.0, f64::max);
    let open = moments
        .iter()
        .all(|m| !site.stands(&m.positions, site.panel.main, "on"));
    let first = moments.first();
    let plugs = first.map_or(0, |m| i64::from(two_plugs(site, m).next().is_some()));
    let near = |m: &Moment| nearness(site, m);
    let shown = episode.most(trace, near);
    let then = trace.moments.get(shown);
    let met = then.map_or(0.0, near) >= MET;
    let tied = then.is_some_and(|m| m.readings.generator.tied);
    let street = then.is_some_and(|m| m.readings.point("service").fed.utility);
    let joined = joined(site, moments);
    let off_when_joined = moments
        .iter()
        .all(|m| !on_bars(site, m) || !site.stands(&m.positions, site.panel.main, "on"));
    // 1 the main was off all along, 2 only for as long as the bars were fed, 0 it was on then.
    let main_open = match (open, joined) {
        (true, _) => 1,
        (false, Some(_)) if off_when_joined && plugs == 0 => 2,
        (false, _) => 0,
    };
    let later = main_on_later(site, moments);
    let lasted = joined.filter(|_| plugs == 0).unwrap_or(episode.length());
    Finding {
        lasted: episode.length(),
        breach: !episode.found_and_ended(),
        ..Finding::breach(Rule::NoTransferEquipment, episode.from, shown)
    }
    .with("met", Arg::Count(i64::from(met)))
    .with("tied", Arg::Count(i64::from(tied)))
    .with("volts", Arg::Quantity(volts, Unit::Volts))
    .with("street", Arg::Count(i64::from(street)))
    .with("joined", Arg::Count(i64::from(joined.is_some())))
    .with("lasted", Arg::lasting(lasted))
    .with("main-open", Arg::Count(main_open))
    .with("interlock", Arg::Count(relied_on(site)))
    .with("plugs", Arg::Count(plugs))
    .with("came", came(episode))
    .with("later", Arg::Count(i64::from(later.is_some())))
    .with("then", Arg::Clock(later.unwrap_or(episode.from)))
    .reaching("service")
}

/// Whether a stretch was there when the learner came, as a count for the words: then it is no deed of theirs.
pub(super) fn came(episode: &Episode) -> Arg {
    Arg::Count(i64::from(episode.from == DrillTime::ZERO))
}

/// When the main came on after the bars had been fed for the last time; none where it was on before that.
fn main_on_later(site: &Site, moments: &[Moment]) -> Option<DrillTime> {
    let last = moments.iter().rposition(|m| on_bars(site, m))?;
    let mut after = moments.iter().skip(last);
    let on = |m: &&Moment| site.stands(&m.positions, site.panel.main, "on");
    after.find(on).map(|m| m.at)
}

/// How long the bars of a panel were fed past all transfer equipment, and not only the pins before its breaker; none if they never were.
fn joined(site: &Site, moments: &[Moment]) -> Option<DrillTime> {
    let pairs = moments.windows(2).filter_map(|pair| {
        let [a, b] = pair else { return None };
        on_bars(site, a).then(|| b.at.since(a.at))
    });
    let lasted = pairs.fold(DrillTime::ZERO, |all, own| all + own);
    let mut all = moments.iter();
    all.any(|m| on_bars(site, m)).then_some(lasted)
}

/// Whether the generator feeds the bars of a panel past all transfer equipment.
fn on_bars(site: &Site, moment: &Moment) -> bool {
    let fed = |bus: &str| moment.readings.point(bus).fed.generator;
    let mut subpanels = site.subpanels.iter();
    unguarded_volts(site, moment).is_some()
        && (fed("bus") || subpanels.any(|s| fed(&format!("bus-{}", s.name))))
}

/// From this nearness on the set and the street were one.
const MET: f64 = 4.0;

/// How near a set that feeds past all transfer equipment is to the street: its power is there, or fewer handles keep it off, the main breaker's before all.
fn nearness(site: &Site, moment: &Moment) -> f64 {
    if unguarded_volts(site, moment).is_none() {
        return 0.0;
    }
    let met = moment.readings.generator.tied || line_fed(site, moment);
    let main = site.stands(&moment.positions, site.panel.main, "on");
    let fed = moment.readings.point("bus").fed.customer();
    let held = if met { MET } else { 0.0 };
    held + 2.0 * f64::from(u8::from(main)) + f64::from(u8::from(fed))
}

/// What was relied upon where transfer equipment should be: 1 an interlock that doesn't fit, 2 one that was taken apart, 0 nothing.
fn relied_on(site: &Site) -> i64 {
    match site.backfed().map(|(_, held)| held).next() {
        Some(Interlock::Misfitted) => 1,
        Some(Interlock::Defeated) => 2,
        Some(Interlock::Fitted | Interlock::Missing) | None => 0,
    }
}
