//! Equipment and load: nothing was overloaded; too few volts are in `starved`, cords in `cords`.
//!
//! Sources: running load within the rating (common practice, 702.4 for what the user picks).

use crate::drill::{Event, MachineEvent, Moment, Phase, Trace, What};
use crate::scenario::Scenario;
use crate::site::{CARRIES_A, Control, Kind, Site, Work};
use crate::units::DrillTime;
use crate::words::{Arg, Unit, name_of};

use super::episode::{Episode, episodes};
use super::finding::{Finding, Rule};

/// How long a generator may be asked for more than it is rated for before that counts: starts are shorter.
pub(super) const BRIEF: DrillTime = DrillTime::from_secs(10);

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = Vec::new();
    let mut stalls: Vec<(Finding, i64)> = Vec::new();
    for (index, moment) in trace.moments.iter().enumerate() {
        let What::Happened(event) = &moment.what else {
            continue;
        };
        let finding = of_event(site, trace, (index, moment), event);
        let Some(stall) = finding.as_ref().filter(|f| f.rule == Rule::Overload) else {
            found.extend(finding);
            continue;
        };
        // The same load that is tried again is one mistake.
        let load = |f: &Finding| f.evidence.iter().find(|(name, _)| *name == "most").cloned();
        match stalls.iter_mut().find(|(own, _)| load(own) == load(stall)) {
            Some((_, times)) => *times += 1,
            None => stalls.extend(finding.map(|f| (f, 1))),
        }
    }
    let told = |(finding, times): (Finding, i64)| finding.with("times", Arg::Count(times));
    found.extend(stalls.into_iter().map(told));
    let all = episodes(trace, |m| too_much(site, m));
    let long = all.iter().filter(|e| e.length() >= BRIEF);
    found.extend(long.map(|e| too_much_asked(site, trace, e)));
    found
}

/// What is asked for at the end of a run counts as it stands, however briefly it has stood: nobody is there to take it off again.
/// A motor that starts in that moment is no more than a start.
pub(super) fn at_end(scenario: &Scenario, trace: &Trace) -> Option<Finding> {
    let site = &scenario.site;
    let last = trace.moments.last().filter(|m| too_much(site, m))?;
    let mut phases = last.conditions.appliances.iter().map(|c| c.phase);
    if phases.any(|p| p == Phase::Starting) || site.line_work.is_some() {
        return None;
    }
    let all = episodes(trace, |m| too_much(site, m));
    let stands = all.last().filter(|e| e.length() < BRIEF)?;
    Some(too_much_asked(site, trace, stands))
}

/// Watts that the generator is made for, as things stand.
fn rated_w(site: &Site, moment: &Moment) -> f64 {
    site.generator.spec_at(&moment.positions).rated_w
}

/// Whether the generator is asked for more than it is made for, by loads and not by another source.
fn too_much(site: &Site, moment: &Moment) -> bool {
    let generator = &moment.readings.generator;
    generator.asked_w > rated_w(site, moment) && !generator.tied
}

/// A stretch in which the generator was asked for too much, shown where that was most.
fn too_much_asked(site: &Site, trace: &Trace, episode: &Episode) -> Finding {
    let asked = |m: &Moment| m.readings.generator.asked_w;
    let shown = episode.most(trace, asked);
    let of = |read: &dyn Fn(&Moment) -> f64| trace.moments.get(shown).map_or(0.0, read);
    Finding {
        lasted: episode.length(),
        ..Finding::breach(Rule::Overload, episode.from, shown)
    }
    .with("watts", Arg::Quantity(of(&asked), Unit::Watts))
    .with(
        "rated",
        Arg::Quantity(of(&|m| rated_w(site, m)), Unit::Watts),
    )
    .with("short", shorted(site, trace, shown))
    .with("times", Arg::Count(1))
    .with_most(site, trace, episode.end)
}

fn of_event(
    site: &Site,
    trace: &Trace,
    (index, moment): (usize, &Moment),
    event: &Event,
) -> Option<Finding> {
    if let Event::EngineStalled { watts } = event {
        let finding = Finding::breach(Rule::Overload, moment.at, index)
            .with("watts", Arg::Quantity(*watts, Unit::Watts))
            .with(
                "rated",
                Arg::Quantity(site.generator.spec.rated_w, Unit::Watts),
            )
            .with("short", shorted(site, trace, index));
        return Some(finding.with_most(site, trace, index));
    }
    if let Event::Machine(MachineEvent::ShutOff { watts, most_a }) = event {
        let spec = site.generator.spec_at(&moment.positions);
        let most_a_leg = spec.current_max_a();
        let finding = Finding::breach(Rule::ShutOff, moment.at, index)
            .with("leg", Arg::Count(i64::from(most_a.is_some())))
            .with("watts", Arg::Quantity(*watts, Unit::Watts))
            .with("rated", Arg::Quantity(spec.rated_w, Unit::Watts))
            .with("most", Arg::Quantity(most_a_leg, Unit::Amps));
        return Some(finding);
    }
    let low_oil = *event == Event::Machine(MachineEvent::LowOil);
    if low_oil || *event == Event::OutOfFuel {
        let oil = i64::from(low_oil);
        return Some(Finding::breach(Rule::RanDry, moment.at, index).with("oil", Arg::Count(oil)));
    }
    if let Event::Tripped { control, amps } = event {
        let control = site.control(*control)?;
        let (rule, thing) = match control.plate.fuse {
            Some(_) => (Rule::FuseBlown, "fuse"),
            None => (Rule::Tripped, "breaker"),
        };
        let finding = Finding::breach(rule, moment.at, index)
            .with(thing, Arg::Said(Box::new(name_of(&control.name))))
            .with("amps", Arg::Quantity(*amps, Unit::Amps))
            .with(
                "rated",
                Arg::Quantity(f64::from(control.plate.rating_a), Unit::Amps),
            )
            .with("short", shorted(site, trace, index))
            .with("met", Arg::Count(i64::from(met(trace, index))))
            .with(
                "side",
                Arg::Count(i64::from(one_side(trace, (index, control)))),
            );
        return Some(finding);
    }
    None
}

impl Finding {
    /// This finding with what asked for most until a moment, and whether the street hung on the generator too.
    fn with_most(self, site: &Site, trace: &Trace, until: usize) -> Self {
        let before = trace.moments.get(..=until).unwrap_or_default();
        let asked = |m: &&Moment| m.readings.generator.asked_w > 0.0;
        let Some(last) = before.iter().rposition(|m| asked(&m)) else {
            return self.with("cause", Arg::Verbatim("none".to_owned()));
        };
        let ran = before.get(..=last).unwrap_or_default();
        let street = ran
            .last()
            .is_some_and(|m| m.readings.point("service").fed.customer());
        let cause = match most(site, ran) {
            _ if street => "street",
            Some(_) => "load",
            None => "none",
        };
        self.with("cause", Arg::Verbatim(cause.to_owned())).with(
            "most",
            Arg::Said(Box::new(name_of(most(site, ran).unwrap_or_default()))),
        )
    }
}

/// What asks a source of the household for most in the last of these moments, a motor by what its start takes; of equals, the one that came on last.
fn most<'a>(site: &'a Site, moments: &[Moment]) -> Option<&'a str> {
    let last = moments.last()?;
    let draws = |m: &Moment, index: usize| m.readings.appliance(index).amps >= CARRIES_A;
    let fed = |index: &usize| draws(last, *index) && last.readings.appliance(*index).fed.customer();
    let watts = |index: usize| {
        let phase = last.conditions.appliances.get(index).map(|c| c.phase);
        let stands = matches!(phase, Some(Phase::Starting | Phase::Stalled));
        match site.appliances.get(index).map(|a| &a.work) {
            Some(Work::Resistive { watts } | Work::Electronic { watts, .. }) => *watts,
            Some(Work::Motor(motor)) if stands => motor.locked_rotor_amps() * motor.volts,
            Some(Work::Motor(_)) | None => last.readings.appliance(index).watts,
        }
    };
    let came_on = |index: usize| moments.iter().rposition(|m| !draws(m, index));
    let loads = (0..site.appliances.len()).filter(fed);
    let most = loads.max_by(|a, b| {
        let by_watts = watts(*a).total_cmp(&watts(*b));
        by_watts.then(came_on(*a).cmp(&came_on(*b)))
    })?;
    site.appliances.get(most).map(|a| a.name.as_str())
}

/// Whether a breaker of both legs opened though one of them carried no more than it is made for: then the other side alone was too much.
fn one_side(trace: &Trace, (index, control): (usize, &Control)) -> bool {
    let both = matches!(control.kind, Kind::Output | Kind::Backfed | Kind::Main);
    let before = index.checked_sub(1).and_then(|i| trace.moments.get(i));
    let rated = f64::from(control.plate.rating_a);
    both && before.is_some_and(|m| {
        let carried = m.readings.amps_of(&control.name) > rated;
        carried && m.readings.less_of(&control.name) <= rated
    })
}

/// Whether two sources met out of step in the same instant, just before something opened.
fn met(trace: &Trace, index: usize) -> bool {
    let before = trace.moments.get(..=index).unwrap_or_default();
    let now = before.last().map(|m| m.at);
    let mut same = before.iter().rev().take_while(|m| Some(m.at) == now);
    same.any(|m| matches!(m.what, What::Happened(Event::Collision { .. })))
}

/// Whether the wires of a cord have met and take the current, now or just before something opened, as a count for the words.
fn shorted(site: &Site, trace: &Trace, index: usize) -> Arg {
    let moments = trace.moments.get(index.saturating_sub(1)..=index);
    let met = moments.unwrap_or_default().iter().any(|moment| {
        let mut cords = site.cords.iter().zip(&moment.conditions.cords);
        cords.any(|(cord, condition)| {
            condition.state().shorted && moment.readings.amps_of(&cord.name) >= CARRIES_A
        })
    });
    Arg::Count(i64::from(met))
}
