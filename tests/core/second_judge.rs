//! The second judge against the marking, on random runs at two houses, at a pair of breakers and where a neighbor lends a cord, and on a line.
//!
//! What reaches what is also asked of a third, which knows these houses alone and by the names of their controls.
//! The runs are short and the story is told fast, so that every breach is met thousands of times.

mod by_name;
mod line;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use outage_drill::drill::{Action, Drill, parse_line};
use outage_drill::evidence::second_judge::{COVERED, judge};
use outage_drill::file::write_run;
use outage_drill::marking::{Rule, Verdict, mark};
use outage_drill::scenario::{Happening, Scenario};
use outage_drill::site::{Constraint, Interlock};
use outage_drill::units::DrillTime;

use crate::playing::{Dice, shipped};

const RUNS: u32 = 100_000;
const CRITICAL: [Rule; 12] = [
    Rule::LineFed,
    Rule::NoTransferEquipment,
    Rule::Collision,
    Rule::SourcesMeet,
    Rule::Shock,
    Rule::Touch,
    Rule::LiveBlades,
    Rule::Indoors,
    Rule::PlugUnderLoad,
    Rule::Gas,
    Rule::Overcome,
    Rule::FuelFire,
];

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
    let strip = all(&[
        "set freezer-plug strip",
        "set strip-generator-end left-socket",
        "set strip-second-plug lent-cord",
    ]);
    let mut beginnings = vec![Vec::new()];
    for at in ["yard", "yard", "patio", "garage"] {
        for cord in [&inlet, &two, &strip, &Vec::new()] {
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
    met: BTreeMap<&'static str, u32>,
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

/// The critical rules that a verdict finds broken, by name.
fn critical(verdict: &Verdict) -> BTreeSet<&'static str> {
    let breaches = verdict.findings.iter().filter(|f| f.breach);
    let critical = breaches.filter(|f| f.rule.criterion().is_critical());
    critical.map(|f| f.rule.name()).collect()
}

/// Plays, marks and judges one run, and compares.
fn compare(stock: &Stock, run: u32, dice: &mut Dice, tally: &mut Tally) {
    let scenario = &stock.scenario;
    let drill = play(dice.pick(&stock.starts), &stock.moves, dice);
    let verdict = mark(scenario, drill.trace());
    let marked = critical(&verdict);
    let own = judge(scenario, &drill.trace().moments);
    let told = || format!("{}{}", write_run(drill.run(), scenario), events(&drill));
    for rule in COVERED.into_iter().filter(|r| !own.unsure.contains(r)) {
        let found = own.broken.contains(rule);
        assert_eq!(
            marked.contains(rule),
            found,
            "run {run}: {rule}\n{}",
            told()
        );
    }
    let third = by_name::broken(scenario, &drill.trace().moments);
    for rule in by_name::RULES {
        let found = own.broken.contains(rule);
        assert_eq!(third.contains(rule), found, "run {run}: {rule}\n{}", told());
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
    // No case of these two houses is worn, no neighbor lends a cord, and through the garage door the gas takes longer than these runs last:
    // here the judges agree on that, and other houses and lists of actions meet the rest.
    let never = [Rule::SourcesMeet, Rule::Touch, Rule::Overcome];
    for rule in CRITICAL {
        let met = tally.met.get(rule.name()).copied().unwrap_or_default();
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
        move |rule: Rule| tally.met.get(rule.name()).copied().unwrap_or_default()
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

#[test]
fn the_two_judges_agree_where_a_neighbor_lends_a_cord_and_a_strip_has_two_plugs() {
    const RUNS: u32 = 4_000;
    let scenario = fast("neighbor-helps", 220.0);
    let starts = (0..4).map(|seed| Drill::start(&scenario, seed).unwrap());
    let stock = Stock {
        starts: starts.collect(),
        moves: moves(&scenario),
        scenario,
    };
    let mut dice = Dice::new(20_261_126);
    let mut tally = Tally::default();
    for run in 0..RUNS {
        compare(&stock, run, &mut dice, &mut tally);
    }
    for rule in [Rule::SourcesMeet, Rule::LiveBlades, Rule::PlugUnderLoad] {
        let met = tally.met.get(rule.name()).copied().unwrap_or_default();
        assert!(met >= 20, "{rule:?} is met {met} times");
    }
    assert!(tally.clean >= 100, "{} runs without a breach", tally.clean);
}
