//! Numbers that are told of a finding agree with each other, over all lists of `tests/drills`.
//!
//! What is in series carries the same amps, what is listed adds up to what is told in all, and what is headed with a number shows that number.

use std::collections::BTreeMap;

use outage_drill::drill::{Drill, Event, MachineEvent, Moment, What};
use outage_drill::explain::{Explanation, Stage, explain};
use outage_drill::marking::{Finding, Rule};
use outage_drill::site::FarEnd;
use outage_drill::words::{Arg, Message, REFERENCE, Unit, Words};

use crate::explained::{all, found};

/// Share by which two numbers that are the same may differ as they are told: three digits each.
const ROUNDING: f64 = 0.01;

/// A number that a message is given.
fn number(message: &Message, wanted: &str) -> Option<f64> {
    of_args(&message.args, wanted)
}

fn of_args(args: &[(&'static str, Arg)], wanted: &str) -> Option<f64> {
    args.iter().find_map(|(name, arg)| {
        let Arg::Quantity(number, _) = arg else {
            return None;
        };
        (*name == wanted).then_some(*number)
    })
}

fn differ(a: f64, b: f64, by: f64) -> bool {
    (a - b).abs() > by * a.abs().max(b.abs())
}

/// Amps that a stage tells, and nothing else.
fn amps(stage: &Stage) -> Option<f64> {
    match stage.value.args.first() {
        Some((_, Arg::Quantity(amps, Unit::Amps))) => Some(*amps),
        _ => None,
    }
}

/// Things that have to carry the same, one after the other: the drop and the main, an inlet and its cord and its breaker.
fn in_series(drill: &Drill, one: &str, next: &str) -> bool {
    let site = drill.site();
    let inlet = |thing: &str| site.inlets.iter().any(|i| i.name == thing);
    let cord = |thing: &str| {
        let mut cords = site.cords.iter();
        cords.any(|c| c.name == thing && matches!(c.far, FarEnd::Inlet(_)) && !c.ties_legs)
    };
    let pair = |a: &str, b: &str| {
        (a == "drop" && b == "main")
            || (cord(a) && inlet(b))
            || (inlet(a) && b == "generator-breaker")
    };
    pair(one, next) || pair(next, one)
}

/// What is wrong with the numbers of a finding.
fn faults(drill: &Drill, finding: &Finding) -> Vec<String> {
    let told = explain(drill, finding);
    let mut faults = apart(drill, &told.path);
    faults.extend(sums(finding, &told));
    faults.extend(headline(finding, &told));
    faults.extend(above_its_side(&told));
    let of = |fault: String| format!("{:?}: {fault}", finding.rule);
    faults.into_iter().map(of).collect()
}

/// Neighbors in a series whose amps differ.
fn apart(drill: &Drill, path: &[Stage]) -> Vec<String> {
    let series = path
        .windows(2)
        .filter(|pair| in_series(drill, &pair[0].at, &pair[1].at));
    let told = series.filter_map(|pair| Some((amps(&pair[0])?, amps(&pair[1])?, pair)));
    let apart = told.filter(|(a, b, _)| differ(*a, *b, ROUNDING));
    apart
        .map(|(a, b, pair)| {
            format!(
                "{} A at the {}, {} A at the {}",
                a, pair[0].at, b, pair[1].at
            )
        })
        .collect()
}

/// Stages of loads, and what the wires on the way take.
const USED: [&str; 4] = [
    "stage-load",
    "stage-starting",
    "stage-stalled",
    "stage-on-the-way",
];

/// Listed watts that don't add up to what is told of all.
fn sums(finding: &Finding, told: &Explanation) -> Option<String> {
    let by_id = |wanted: &str| told.path.iter().find(|s| s.text.id.starts_with(wanted));
    let total = by_id("stage-asked")?;
    // What leaves for the street, a guard of one circuit or a short circuit lets nothing be added up.
    let part = ["stage-street", "stage-opens", "stage-cord-short"];
    if part.iter().any(|id| by_id(id).is_some()) {
        return None;
    }
    let of_all = number(&total.text, "watts")?;
    let used = told
        .path
        .iter()
        .filter(|s| USED.contains(&s.text.id.as_str()));
    let listed: f64 = used.filter_map(|s| number(&s.text, "watts")).sum();
    let wires = by_id("stage-on-the-way").and_then(|s| number(&s.text, "watts"));
    let much = wires.is_some_and(|w| w > 0.25 * of_all);
    (differ(listed, of_all, 0.03) || much).then(|| {
        format!(
            "{listed} W listed, {of_all} W in all, {wires:?} W on the way, at {:?}",
            finding.at
        )
    })
}

/// A load on the low side of a broken neutral that is told to get more than that side has.
fn above_its_side(told: &Explanation) -> Option<String> {
    let of = |id: &str, name: &str| {
        let stage = told.path.iter().find(|s| s.text.id == id)?;
        number(&stage.text, name)
    };
    let (gets, has) = (of("stage-low-volts", "volts")?, of("stage-halves", "rest")?);
    (gets > (1.0 + ROUNDING) * has).then(|| format!("{gets} V of {has} V"))
}

/// A number of the finding that its own stages don't show.
fn headline(finding: &Finding, told: &Explanation) -> Option<String> {
    let evidence = |name: &str| of_args(&finding.evidence, name);
    let asked = |name: &str| {
        let mut asked = told
            .path
            .iter()
            .filter(|s| s.text.id.starts_with("stage-asked"));
        asked.find_map(|s| number(&s.text, name))
    };
    let starts = |s: &&Stage| ["stage-starting", "stage-stalled"].contains(&s.text.id.as_str());
    let motors = || {
        let motors = told.path.iter().filter(starts);
        motors.filter_map(|s| number(&s.text, "amps")).sum()
    };
    let (said, shown) = if finding.rule == Rule::AllAtOnce {
        (evidence("amps"), Some(motors()))
    } else if finding.rule == Rule::Overload {
        (evidence("watts"), asked("asked"))
    } else if [Rule::StartUnderLoad, Rule::NotSettled].contains(&finding.rule) {
        (evidence("watts"), asked("watts"))
    } else {
        return None;
    };
    let (said, shown) = (said?, shown?);
    differ(said, shown, ROUNDING).then(|| format!("{said} is said, {shown} is shown"))
}

#[test]
fn amps_in_series_agree_watts_add_up_and_a_headline_is_what_its_stages_show() {
    let wrong = all().iter().flat_map(|e| {
        let drill = &e.played.drill;
        let findings = e.played.verdict.findings.iter();
        let wrong = findings.flat_map(|f| faults(drill, f));
        let wrong = wrong.chain(above_its_source(drill));
        wrong.map(|fault| format!("{}: {fault}", e.file))
    });
    let wrong: Vec<String> = wrong.collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// Motors that are told more of their volts than the set is told to make in the same instant.
fn above_its_source(drill: &Drill) -> Vec<String> {
    let mut sags: BTreeMap<u64, f64> = BTreeMap::new();
    let mut wrong = Vec::new();
    for moment in &drill.trace().moments {
        let at = moment.at.millis();
        if let What::Happened(Event::Machine(MachineEvent::Dip {
            volts,
            recovery_s: None,
        })) = moment.what
        {
            let made = moment.readings.generator.volts;
            if differ(volts, made, ROUNDING) {
                wrong.push(format!(
                    "{:?}: sags to {volts} V, makes {made} V",
                    moment.at
                ));
            }
            sags.insert(at, volts);
        }
        if let What::Happened(Event::Stalled { appliance, pu }) = moment.what {
            let rated = drill.scenario().site.generator.spec.rated_v;
            let own = moment.readings.appliance(appliance).fed.generator;
            // One leg may stand a little higher than half of both.
            let most = sags
                .get(&at)
                .map_or(f64::INFINITY, |volts| 1.05 * volts / rated);
            if own && pu > most {
                wrong.push(format!("{:?}: a motor gets {pu} of its volts", moment.at));
            }
        }
    }
    wrong
}

#[test]
fn a_number_that_is_not_the_stages_own_is_caught() {
    let (drill, mut finding) = found("no-slide", "deadly-main-left-on", Rule::AllAtOnce);
    assert_eq!(faults(&drill, &finding), [""; 0]);
    for (_, arg) in finding
        .evidence
        .iter_mut()
        .filter(|(name, _)| *name == "amps")
    {
        *arg = Arg::Quantity(23.7, Unit::Amps);
    }
    assert_eq!(faults(&drill, &finding).len(), 1);
    let (drill, finding) = found("ground-order", "ground-order-hot-clamp", Rule::Shock);
    let mut path = explain(&drill, &finding).path;
    assert_eq!(apart(&drill, &path), [""; 0]);
    let drop = path.iter_mut().find(|s| s.at == "drop").unwrap();
    drop.value = Message::new("value").quantity("value", 85.0, Unit::Amps);
    let main = path.iter_mut().find(|s| s.at == "main").unwrap();
    main.value = Message::new("value").quantity("value", 88.0, Unit::Amps);
    assert_eq!(apart(&drill, &path).len(), 1);
}

#[test]
fn a_plug_with_load_on_one_side_alone_is_told_with_the_volts_of_that_side() {
    let rule = Rule::PlugUnderLoad;
    let (drill, finding) = found("first-return", "first-return-cord-pulled", rule);
    let volts = of_args(&finding.evidence, "volts").unwrap();
    let point = finding.reaches.as_deref().unwrap();
    let before = &drill.trace().moments[finding.moment - 1];
    let reading = before.readings.point(point);
    assert!(before.readings.less_of("long-cord") < 0.5);
    // The load pulls its own side down and lifts the other.
    let [one, two] = reading.legs_v;
    assert!(
        (volts - one.min(two)).abs() < 1e-9,
        "{volts} of {one} and {two}"
    );
    assert!(volts < reading.volts_across / 2.0 && one.max(two) > reading.volts_across / 2.0);
}

#[test]
fn a_cord_that_got_too_hot_is_told_from_when_on_and_when_it_was_hottest() {
    let words = Words::new(REFERENCE);
    let mut seen = 0;
    for e in all() {
        let drill = &e.played.drill;
        let findings = e.played.verdict.findings.iter();
        for finding in findings.filter(|f| f.rule == Rule::CordHot) {
            let when = finding.evidence.iter().find(|(name, _)| *name == "when");
            let Some((_, Arg::Clock(when))) = when else {
                panic!("{}", e.file);
            };
            let reached = of_args(&finding.evidence, "reached").unwrap();
            let trace = drill.trace();
            let mut at = trace.moments.iter().filter(|m| m.at == *when);
            let n_cords = drill.site().cords.len();
            let is_it = |m: &Moment, i: usize| m.conditions.cord(i).hottest_c() >= reached;
            let hottest = at.any(|m| (0..n_cords).any(|i| is_it(m, i)));
            assert!(hottest, "{}", e.file);
            let told = words.say(&explain(drill, finding).what);
            assert!(told.starts_with("From then on"), "{told}");
            seen += u32::from(*when > finding.at);
        }
    }
    assert!(seen > 2, "{seen}");
}

#[test]
fn a_cord_that_is_too_long_for_its_gauge_is_told_so_with_the_length_that_would_do() {
    let (drill, finding) = found("right-cord", "right-cord-long", Rule::Starved);
    let number = |name: &str| of_args(&finding.evidence, name).unwrap();
    let told = explain(&drill, &finding);
    let words = Words::new(REFERENCE);
    // Under its rug it got hot; laid out flat it would just have kept the volts.
    assert!(words.say(&told.what).contains("give off its heat"));
    // Volts lost go with the length; one in twenty may be lost, of a cord laid out flat, in steps of five feet.
    let flat = number("near") - number("flat");
    let share = |feet: f64| flat * feet / number("length") / number("near");
    let would = number("would");
    assert!(share(would) <= 0.05 && share(would + 5.0) > 0.05, "{would}");
    let instead = words.say(&told.instead);
    let would = words.quantity(number("would"), Unit::Feet);
    assert!(instead.contains(&would), "{instead}");
    // A cord that carries more than it is made for is too thin, however short.
    let (_, thin) = found("right-cord", "right-cord-lamp-cord", Rule::Starved);
    assert!(thin.evidence.contains(&("long", Arg::Count(0))));
}

#[test]
fn motors_that_start_together_are_shown_at_one_instant_and_the_log_s_own_instants_are_named() {
    let words = Words::new(REFERENCE);
    let mut seen = 0;
    for e in all() {
        let drill = &e.played.drill;
        let findings = e.played.verdict.findings.iter();
        for finding in findings.filter(|f| f.rule == Rule::AllAtOnce) {
            let told = explain(drill, finding);
            assert!(
                words.say(&told.why).contains("The log gives each"),
                "{}",
                e.file
            );
            let logged = drill.trace().events().filter(|(m, _)| m.at == finding.at);
            for (_, event) in logged {
                let Event::Starting { appliance, amps } = event else {
                    continue;
                };
                let name = &drill.site().appliances[*appliance].name;
                let stage = told.path.iter().find(|s| s.at == *name);
                let drawn = stage.and_then(|s| number(&s.text, "amps"));
                let shown = &drill.trace().moments[finding.moment];
                let stands = shown.readings.appliance(*appliance).amps;
                assert!(
                    drawn.is_none_or(|a| !differ(a, stands, ROUNDING)),
                    "{}: {name}",
                    e.file
                );
                seen += u32::from(drawn.is_some_and(|a| differ(a, *amps, ROUNDING)));
            }
        }
    }
    assert!(seen > 2, "{seen}");
}
