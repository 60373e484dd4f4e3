//! A second judge of the critical rules, written from positions and raw readings alone, against the marking.
//!
//! It has a graph of its own made from the names of controls, its own integration of gas and blood, and its own cooling of the muffler.
//! It reads neither the marking nor what the solver says about which source feeds what.
//! The runs are short and the story is told fast, so that every breach is met thousands of times.

mod air;
mod line;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use outage_drill::drill::{Action, Drill, Moment, What, parse_line};
use outage_drill::file::write_run;
use outage_drill::marking::{Rule, mark};
use outage_drill::scenario::{Happening, Scenario};
use outage_drill::site::{Constraint, Interlock};
use outage_drill::units::DrillTime;

use crate::playing::{Dice, shipped};
use air::Air;
use outage_drill::units::portable;

const RUNS: u32 = 100_000;
const CRITICAL: [Rule; 11] = [
    Rule::LineFed,
    Rule::NoTransferEquipment,
    Rule::Collision,
    Rule::Shock,
    Rule::Touch,
    Rule::LiveBlades,
    Rule::Indoors,
    Rule::PlugUnderLoad,
    Rule::Gas,
    Rule::Overcome,
    Rule::FuelFire,
];

/// What the oracle says of a run: rules that are broken, and those too near their limit to be judged by other arithmetic.
#[derive(Default)]
struct Judgment {
    broken: BTreeSet<Rule>,
    unsure: BTreeSet<Rule>,
}

/// Places that electricity can reach, as the oracle sees the house.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Place {
    Winding,
    SetOutlet,
    InletCord,
    TwoPlugCord,
    Inlet,
    ChosenBus,
    DryerOutlet,
    Bus,
    Street,
    Lateral,
    Substation,
}

/// How things stand at a moment, by name.
struct Stand<'a> {
    scenario: &'a Scenario,
    moment: &'a Moment,
}

impl Stand<'_> {
    fn is(&self, control: &str, position: &str) -> bool {
        let site = &self.scenario.site;
        let id = site.control_id(control);
        id.is_some_and(|id| site.position_name(&self.moment.positions, id) == position)
    }

    fn has(&self, control: &str) -> bool {
        self.scenario.site.control_id(control).is_some()
    }

    fn running(&self) -> bool {
        self.moment.conditions.engine.running_since.is_some()
    }

    /// Everything in metallic contact with `from`, by hots.
    fn reach(&self, from: Place) -> Vec<Place> {
        use Place::*;
        let joints = [
            (Winding, SetOutlet, self.is("generator-output", "on")),
            (
                SetOutlet,
                InletCord,
                self.is("inlet-cord-generator-end", "generator"),
            ),
            (InletCord, Inlet, self.is("inlet-cord-house-end", "inlet")),
            (
                SetOutlet,
                TwoPlugCord,
                self.is("two-plug-cord-generator-end", "generator"),
            ),
            (
                TwoPlugCord,
                DryerOutlet,
                self.is("two-plug-cord-house-end", "dryer-outlet"),
            ),
            (DryerOutlet, Bus, self.is("breaker-dryer", "on")),
            (Inlet, Bus, self.is("generator-breaker", "on")),
            (Inlet, ChosenBus, self.is("chosen-generator", "on")),
            (ChosenBus, Bus, self.is("chosen-utility", "on")),
            (Bus, Street, self.is("main", "on")),
            (Street, Lateral, self.is("broken-span", "whole")),
            (Lateral, Substation, self.is("feeder", "closed")),
        ];
        let mut reached = vec![from];
        let mut next = 0;
        while let Some(here) = reached.get(next).copied() {
            next += 1;
            for (a, b, closed) in joints {
                let other = if a == here { b } else { a };
                if closed && (a == here || b == here) && !reached.contains(&other) {
                    reached.push(other);
                }
            }
        }
        reached
    }

    /// The critical rules broken at this instant, as far as one instant tells.
    fn broken(&self) -> BTreeSet<Rule> {
        let set = if self.running() {
            self.reach(Place::Winding)
        } else {
            Vec::new()
        };
        let utility = self.reach(Place::Substation);
        let live = |p: Place| set.contains(&p) || utility.contains(&p);
        let two_plugs_join = self.is("two-plug-cord-generator-end", "generator")
            && self.is("two-plug-cord-house-end", "dryer-outlet");
        let two_plugs_hang = self.is("two-plug-cord-generator-end", "stowed")
            || self.is("two-plug-cord-house-end", "stowed");
        let bare =
            live(Place::TwoPlugCord) && self.has("two-plug-cord-house-end") && two_plugs_hang
                || live(Place::InletCord) && self.is("inlet-cord-generator-end", "stowed")
                || live(Place::Inlet) && !self.is("inlet-cord-house-end", "inlet");
        let guarded = ["there-and-back", "ready-panel"];
        let slide = guarded.iter().any(|d| self.scenario.name.starts_with(d));
        let holds = [
            (Rule::LineFed, set.contains(&Place::Street)),
            (
                Rule::NoTransferEquipment,
                set.contains(&Place::Inlet) && !slide
                    || set.contains(&Place::TwoPlugCord) && two_plugs_join,
            ),
            (Rule::Collision, set.contains(&Place::Substation)),
            (
                Rule::Shock,
                self.is("crew", "hands-on") && live(Place::Street),
            ),
            (Rule::LiveBlades, bare),
            (
                Rule::Indoors,
                self.running() && self.is("generator-place", "garage"),
            ),
        ];
        holds
            .into_iter()
            .filter(|(_, h)| *h)
            .map(|(r, _)| r)
            .collect()
    }
}

/// Amps in a cord whose end is moved, just before or right after; 0 where none is.
fn arc_amps(scenario: &Scenario, moments: &[Moment], index: usize) -> f64 {
    let What::Did(Action::Set(control, _)) = &moments[index].what else {
        return 0.0;
    };
    let name = scenario.site.control(*control).map_or("", |c| &c.name);
    let cord = name
        .strip_suffix("-generator-end")
        .or_else(|| name.strip_suffix("-house-end"));
    let seen = moments[..=index].iter().rev().take(2);
    let amps = seen.map(|m| cord.map_or(0.0, |c| m.readings.amps_of(c)));
    amps.fold(0.0, f64::max)
}

/// Volts to earth on the generator's metal while somebody handles it, before the deed or right after it; 0 while nobody does.
fn frame_volts(scenario: &Scenario, moments: &[Moment], index: usize) -> f64 {
    let moment = &moments[index];
    let at_the_set = if let What::Did(Action::Set(control, _)) = &moment.what {
        let name = scenario.site.control(*control).map_or("", |c| &c.name);
        name == "engine" || name == "generator-output" || name.ends_with("-generator-end")
    } else {
        moment.what == What::Did(Action::Refuel)
    };
    if !at_the_set {
        return 0.0;
    }
    let after = moments[index..].iter().take_while(|m| m.at == moment.at);
    let seen = moments[..index].iter().rev().take(1).chain(after);
    let volts = seen.filter_map(|m| m.readings.point("generator-frame").volts_to_earth);
    volts.fold(0.0, f64::max)
}

fn judge(scenario: &Scenario, moments: &[Moment]) -> Judgment {
    let mut judgment = Judgment::default();
    let mut air = Air::FRESH;
    for (index, moment) in moments.iter().enumerate() {
        let stand = Stand { scenario, moment };
        judgment.broken.extend(stand.broken());
        let arc_a = arc_amps(scenario, moments, index);
        if (0.485..0.515).contains(&arc_a) {
            judgment.unsure.insert(Rule::PlugUnderLoad);
        } else if arc_a >= 0.5 {
            judgment.broken.insert(Rule::PlugUnderLoad);
        }
        let frame_v = frame_volts(scenario, moments, index);
        // 40 V drive some 17 mA through a body on damp ground, 12 V some 4 mA; 5 mA may hold the hand.
        if frame_v >= 40.0 {
            judgment.broken.insert(Rule::Touch);
        } else if frame_v >= 12.0 {
            judgment.unsure.insert(Rule::Touch);
        }
        if let What::Did(Action::Refuel) = moment.what {
            // 20 °C + 380 K e^(-t/400 s) stays above 100 °C for 623 s.
            let engine = &moment.conditions.engine;
            let hot = engine.stopped_at.map(|at| moment.at.since(at).seconds());
            if stand.running() || hot.is_some_and(|s| s < 400.0 * portable::ln(380.0 / 80.0)) {
                judgment.broken.insert(Rule::FuelFire);
            }
        }
        if let Some(next) = moments.get(index + 1) {
            air.pass(&stand, next.at.since(moment.at).seconds());
        }
    }
    for (rule, reached) in [(Rule::Gas, air.alarmed), (Rule::Overcome, air.most / 40.0)] {
        if (0.97..1.03).contains(&reached) {
            judgment.unsure.insert(rule);
        } else if reached >= 1.0 {
            judgment.broken.insert(rule);
        }
    }
    judgment
}

/// The shipped drill with its story told in a minute, and with this much air in the house; a small house has a small garage.
fn fast(name: &str, air_m3: f64) -> Arc<Scenario> {
    let mut scenario = shipped(name).as_ref().clone();
    let mut site = scenario.site.as_ref().clone();
    site.air_m3 = air_m3;
    if let Some(garage) = site.garage.as_mut().filter(|_| air_m3 < 1.0) {
        garage.air_m3 = 0.2;
        garage.to_house_m3_per_h = (0.5, 4.0);
    }
    scenario.site = Arc::new(site);
    for timed in &mut scenario.story {
        let (at, spread_s) = match timed.what {
            Happening::Outage => (2, 0),
            Happening::CrewArrives => (6, 3),
            Happening::CrewTakesHold => (10, 6),
            Happening::CrewLeaves => (20, 3),
            Happening::UtilityReturns => (24, 8),
            Happening::NeutralLost
            | Happening::LegLost
            | Happening::DropMended
            | Happening::UtilityFails
            | Happening::NeighborAsks
            | Happening::CustomerStarts
            | Happening::TieCloses
            | Happening::SecondCrewClears
            | Happening::NeighborRuns => continue,
        };
        timed.at = DrillTime::from_secs(at);
        timed.spread_s = spread_s;
    }
    scenario.ends_at = DrillTime::from_secs(60);
    Arc::new(scenario)
}

/// Actions to draw from, and beginnings that lead towards danger.
struct Moves {
    any: Vec<Action>,
    beginnings: Vec<Vec<Action>>,
}

/// What is moved most often.
const HANDLES: [&str; 6] = [
    "main",
    "generator-breaker",
    "generator-output",
    "engine",
    "chosen-utility",
    "chosen-generator",
];

fn moves(scenario: &Scenario) -> Moves {
    let site = &scenario.site;
    let points = site.point_names();
    let parse = |line: &str| {
        parse_line(scenario, &points, line)
            .ok()
            .flatten()
            .map(|l| l.action)
    };
    let mut any = Vec::new();
    for control in &site.controls {
        let handle = HANDLES.contains(&control.name.as_str());
        let often = if handle {
            5
        } else if control.name.contains("cord") || control.name == "breaker-dryer" {
            3
        } else {
            1
        };
        for position in &control.positions {
            any.extend(
                std::iter::repeat_n(parse(&format!("set {} {position}", control.name)), often)
                    .flatten(),
            );
        }
    }
    for line in [
        "refuel",
        "refuel",
        "call utility",
        "look street",
        "test bus",
        "tell household",
        "wait 5s",
    ] {
        any.extend(parse(line));
    }
    let all = |lines: &[&str]| lines.iter().filter_map(|l| parse(l)).collect::<Vec<_>>();
    let run = ["set engine running", "set generator-output on"];
    let place = |at: &str| parse(&format!("set generator-place {at}"));
    let inlet = all(&[
        "set inlet-cord-house-end inlet",
        "set inlet-cord-generator-end generator",
    ]);
    let two = all(&[
        "set dryer-plug unplugged",
        "set two-plug-cord-house-end dryer-outlet",
        "set two-plug-cord-generator-end generator",
    ]);
    let mut beginnings = vec![Vec::new()];
    for at in ["yard", "yard", "patio", "garage"] {
        for cord in [&inlet, &two, &Vec::new()] {
            let mut begin: Vec<Action> =
                place(at).into_iter().chain(cord.iter().cloned()).collect();
            beginnings.push(begin.clone());
            begin.extend(all(&run));
            beginnings.push(begin.clone());
            begin.extend(all(&["set generator-breaker on"]));
            beginnings.push(begin.clone());
            begin.extend(all(&["set main off", "set generator-breaker on"]));
            begin.extend(all(&["set chosen-utility off", "set chosen-generator on"]));
            beginnings.push(begin);
        }
    }
    Moves { any, beginnings }
}

fn events(drill: &Drill) -> String {
    let events = drill
        .trace()
        .events()
        .map(|(m, e)| format!("{} {e:?}", m.at));
    events.collect::<Vec<_>>().join("\n")
}

fn play(start: &Drill, moves: &Moves, dice: &mut Dice) -> Drill {
    let mut drill = start.clone();
    let begin = dice.pick(&moves.beginnings).clone();
    let more = 3 + dice.below(10);
    let rest: Vec<Action> = (0..more).map(|_| dice.pick(&moves.any).clone()).collect();
    let pace = 1 + dice.below(6);
    for action in begin.iter().chain(&rest) {
        let wait = DrillTime::from_millis(200 + dice.below(pace * 1000));
        let at = drill.now() + wait;
        drill.act_at(at, action);
    }
    if dice.below(4) == 0 {
        drill.advance(DrillTime::from_secs(dice.below(60)));
    }
    drill.end();
    drill
}

/// How often each rule was broken, how many runs broke none, and how many judgments were left open.
#[derive(Default)]
struct Tally {
    met: BTreeMap<Rule, u32>,
    clean: u32,
    unsure: u32,
}

impl Tally {
    fn add(mut self, other: &Self) -> Self {
        for (rule, met) in &other.met {
            *self.met.entry(*rule).or_default() += met;
        }
        self.clean += other.clean;
        self.unsure += other.unsure;
        self
    }
}

/// What runs are drawn from.
struct Stock {
    scenario: Arc<Scenario>,
    starts: Vec<Drill>,
    moves: Moves,
}

fn stock() -> Vec<Stock> {
    let drills = [
        ("no-slide", 380.0),
        ("no-slide", 0.005),
        ("there-and-back", 380.0),
        ("there-and-back", 0.005),
    ];
    let stock = drills.map(|(name, air_m3)| {
        let scenario = fast(name, air_m3);
        let starts = (0..16)
            .map(|seed| Drill::start(&scenario, seed).unwrap())
            .collect();
        let moves = moves(&scenario);
        Stock {
            scenario,
            starts,
            moves,
        }
    });
    stock.into()
}

/// Plays, marks and judges one run, and compares.
fn compare(stock: &Stock, run: u32, dice: &mut Dice, tally: &mut Tally) {
    let scenario = &stock.scenario;
    let drill = play(dice.pick(&stock.starts), &stock.moves, dice);
    let verdict = mark(scenario, drill.trace());
    let breaches = verdict.findings.iter().filter(|f| f.breach);
    let marked: BTreeSet<Rule> = breaches
        .map(|f| f.rule)
        .filter(|r| r.criterion().is_critical())
        .collect();
    let own = judge(scenario, &drill.trace().moments);
    for rule in CRITICAL.into_iter().filter(|r| !own.unsure.contains(r)) {
        assert_eq!(
            marked.contains(&rule),
            own.broken.contains(&rule),
            "run {run}: {rule:?}\n{}{}",
            write_run(drill.run(), scenario),
            events(&drill)
        );
    }
    assert!(
        marked.is_empty() || !verdict.passed,
        "run {run} passes with a critical breach"
    );
    assert!(
        drill.trace().moments.iter().all(|m| m.readings.converged),
        "run {run} did not converge"
    );
    tally.clean += u32::from(own.broken.is_empty());
    tally.unsure += u32::try_from(own.unsure.len()).unwrap();
    for rule in own.broken {
        *tally.met.entry(rule).or_default() += 1;
    }
}

#[test]
fn the_marking_and_a_judge_of_raw_readings_agree_on_every_critical_rule_in_a_hundred_thousand_runs()
{
    const SHARES: u32 = 4;
    let stock = stock();
    let stock = &stock;
    let share = |share: u32| {
        let mut dice = Dice::new(20_260_101 + u64::from(share));
        let mut tally = Tally::default();
        for run in (share * RUNS / SHARES)..((share + 1) * RUNS / SHARES) {
            // Two of five runs on the deadly house with its own air.
            let which = [0, 0, 1, 2, 3][usize::try_from(run % 5).unwrap()];
            compare(&stock[which], run, &mut dice, &mut tally);
        }
        tally
    };
    let tally = std::thread::scope(|scope| {
        let shares: Vec<_> = (0..SHARES).map(|n| scope.spawn(move || share(n))).collect();
        shares
            .into_iter()
            .fold(Tally::default(), |sum, s| sum.add(&s.join().unwrap()))
    });
    println!(
        "{} runs without a breach, {} judgments unsure, {:?}",
        tally.clean, tally.unsure, tally.met
    );
    // No case of these two houses is worn, and through the garage door the gas takes longer than these runs last:
    // here the judges agree on that, and lists of actions meet the rest.
    let never = [Rule::Touch, Rule::Overcome];
    for rule in CRITICAL {
        let met = tally.met.get(&rule).copied().unwrap_or_default();
        let enough = if never.contains(&rule) {
            met == 0
        } else {
            met >= 200
        };
        assert!(enough, "{rule:?} was met {met} times");
    }
    assert!(
        tally.clean >= 10_000,
        "{} runs without a breach",
        tally.clean
    );
    assert!(
        tally.unsure <= RUNS / 50,
        "{} judgments unsure",
        tally.unsure
    );
}

/// The ready panel with its story told fast, and the same with the bar gone from between the two breakers.
fn ready_panels() -> [Arc<Scenario>; 2] {
    let sound = fast("ready-panel", 340.0);
    let mut loose = sound.as_ref().clone();
    let mut site = loose.site.as_ref().clone();
    loose.name = "no-bar".to_owned();
    for pair in site.subpanels.iter_mut().filter_map(|s| s.pair.as_mut()) {
        pair.interlock = Interlock::Defeated;
    }
    let pair: Vec<_> = ["chosen-utility", "chosen-generator"]
        .iter()
        .filter_map(|name| site.control_id(name))
        .collect();
    site.constraints.retain(|c| match c {
        Constraint::NotBoth { one, other, .. } => {
            !pair.contains(&one.0) || !pair.contains(&other.0)
        }
        Constraint::Needs { .. } | Constraint::Holds { .. } => true,
    });
    loose.site = Arc::new(site);
    [sound, Arc::new(loose)]
}

#[test]
fn the_two_judges_agree_on_a_pair_of_breakers_with_its_bar_and_without() {
    const EACH: u32 = 3_000;
    let met = ready_panels().map(|scenario| {
        let starts = (0..4).map(|seed| Drill::start(&scenario, seed).unwrap());
        let stock = Stock {
            starts: starts.collect(),
            moves: moves(&scenario),
            scenario,
        };
        let mut dice = Dice::new(20_261_125);
        let mut tally = Tally::default();
        for run in 0..EACH {
            compare(&stock, run, &mut dice, &mut tally);
        }
        move |rule| tally.met.get(&rule).copied().unwrap_or_default()
    });
    let [sound, loose] = met;
    for rule in [Rule::LineFed, Rule::NoTransferEquipment, Rule::Collision] {
        assert_eq!(sound(rule), 0, "{rule:?} with the bar");
    }
    for rule in [Rule::LineFed, Rule::NoTransferEquipment] {
        assert!(loose(rule) >= 20, "{rule:?} met {} times", loose(rule));
    }
    assert_eq!(sound(Rule::LiveBlades), 0, "bare pins with the bar");
    let pins = loose(Rule::LiveBlades);
    assert!(pins >= 5, "bare pins are met {pins} times");
}
