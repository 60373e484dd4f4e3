//! The second judge of line work against the marking, on random runs of the drills at one line.

use std::collections::BTreeMap;
use std::sync::Arc;

use outage_drill::drill::{Action, Drill, parse_line, write_action};
use outage_drill::evidence::second_judge::judge;
use outage_drill::marking::{Rule, mark};
use outage_drill::scenario::{Happening, Scenario};
use outage_drill::units::DrillTime;

use super::critical;
use crate::playing::{Dice, shipped};

const RUNS: u32 = 2_000;
const RULES: [Rule; 10] = [
    Rule::NotTested,
    Rule::TesterUnproved,
    Rule::NotGrounded,
    Rule::GroundsWrong,
    Rule::NoVisibleBreak,
    Rule::LiveEnd,
    Rule::GroundsLeft,
    Rule::NotAsked,
    Rule::Shock,
    Rule::Collision,
];
/// The shipped drill with its customer in a hurry.
fn fast(name: &str) -> Arc<Scenario> {
    let mut scenario = shipped(name).as_ref().clone();
    for timed in &mut scenario.story {
        if timed.what == Happening::CustomerStarts {
            timed.at = DrillTime::from_secs(4);
            timed.spread_s = 20;
        }
    }
    Arc::new(scenario)
}

/// Deeds to draw from.
const DEEDS: &[&str] = &[
    "feeder closed",
    "feeder open",
    "disconnect open",
    "disconnect closed",
    "jumper-disconnect absent",
    "tag-disconnect on",
    "tag-disconnect off",
    "cutout-pole-5 open",
    "cutout-pole-5 closed",
    "cutout-pole-4 open",
    "cutout-pole-4 closed",
    "tester low-range",
    "tester detector",
    "tester old-detector",
    "tester tall-detector",
    "crew hands-on",
    "crew hands-on",
    "crew clear",
    "broken-span whole",
    "test proving-source",
    "test proving-source",
    "test pole-3",
    "test pole-3",
    "test pole-2",
    "grounds-pole-3 earth-end",
    "grounds-pole-3 both-ends",
    "grounds-pole-3 line-end",
    "grounds-pole-3 off",
    "grounds-pole-2 earth-end",
    "grounds-pole-2 both-ends",
    "grounds-pole-2 off",
    "grounds-pole-4 earth-end",
    "grounds-pole-4 both-ends",
    "grounds-pole-4 line-end",
    "tell neighbors",
    "wait 4m",
];

/// A way through the whole job.
const WHOLE_WAY: &[&str] = &[
    "disconnect open",
    "jumper-disconnect absent",
    "tag-disconnect on",
    "cutout-pole-5 open",
    "tester low-range",
    "test proving-source",
    "test pole-3",
    "test proving-source",
    "grounds-pole-3 earth-end",
    "grounds-pole-3 both-ends",
    "crew hands-on",
    "broken-span whole",
    "crew clear",
    "grounds-pole-3 earth-end",
    "grounds-pole-3 off",
    "tell neighbors",
    "wait 4m",
    "tag-disconnect off",
    "disconnect closed",
    "feeder closed",
    "cutout-pole-5 closed",
];

/// A way from three sets of grounds back to the utility, with nobody asked.
const GIVEN_BACK: &[&str] = &[
    "grounds-pole-4 earth-end",
    "grounds-pole-4 off",
    "grounds-pole-3 earth-end",
    "grounds-pole-3 off",
    "grounds-pole-2 earth-end",
    "grounds-pole-2 off",
    "tag-disconnect off",
    "disconnect closed",
    "feeder closed",
    "cutout-pole-5 closed",
];

/// Ways to a joining with the head closed: with grounds at the work, with none, on the far side only, on both.
const JOINED: [&[&str]; 4] = [
    &[
        "feeder closed",
        "grounds-pole-3 earth-end",
        "grounds-pole-3 both-ends",
        "crew hands-on",
        "broken-span whole",
    ],
    &["feeder closed", "crew hands-on", "broken-span whole"],
    &[
        "grounds-pole-2 earth-end",
        "grounds-pole-2 both-ends",
        "crew hands-on",
        "broken-span whole",
    ],
    &[
        "grounds-pole-2 earth-end",
        "grounds-pole-2 both-ends",
        "grounds-pole-3 earth-end",
        "grounds-pole-3 both-ends",
        "crew hands-on",
        "broken-span whole",
    ],
];

/// Actions to draw from, and beginnings that lead towards the work.
fn moves(scenario: &Scenario) -> (Vec<Action>, Vec<Vec<Action>>) {
    let parse = |line: &str| {
        let parsed = parse_line(scenario, &scenario.site.point_names(), line);
        parsed.unwrap().unwrap().action
    };
    let any = DEEDS.iter().map(|l| parse(l)).collect();
    let whole: Vec<Action> = WHOLE_WAY.iter().map(|l| parse(l)).collect();
    let cuts = [0, 0, 3, 4, 8, 10, 11, 12, 15, 17, 21];
    let mut beginnings: Vec<Vec<Action>> = cuts.iter().map(|n| whole[..*n].to_vec()).collect();
    let given_back: Vec<Action> = GIVEN_BACK.iter().map(|l| parse(l)).collect();
    beginnings.extend([10, 10, 10, 9, 6, 4].map(|n| given_back[..n].to_vec()));
    let joined = JOINED.map(|way| way.iter().map(|l| parse(l)).collect());
    beginnings.extend(joined);
    (any, beginnings)
}

#[test]
fn the_marking_of_line_work_agrees_with_a_judge_of_names_and_testers_in_thousands_of_runs() {
    let drills = [
        "engine-on-the-road",
        "visible-break",
        "ground-order",
        "return-of-grounds",
    ];
    let stock: Vec<_> = drills
        .iter()
        .map(|name| {
            let scenario = fast(name);
            let (any, beginnings) = moves(&scenario);
            (scenario, any, beginnings)
        })
        .collect();
    let mut dice = Dice::new(20_261_125);
    let mut met: BTreeMap<&str, u32> = BTreeMap::new();
    let mut clean = 0;
    for run in 0..RUNS {
        let (scenario, any, beginnings) = dice.pick(&stock);
        let mut drill = Drill::start(scenario, dice.below(16)).unwrap();
        let begin = dice.pick(beginnings).clone();
        let more = dice.below(9);
        let rest: Vec<Action> = (0..more).map(|_| dice.pick(any).clone()).collect();
        for action in begin.iter().chain(&rest) {
            if let Action::Wait(time) = action {
                drill.advance(*time);
                continue;
            }
            let at = drill.now() + DrillTime::from_millis(200 + dice.below(4000));
            drill.act_at(at, action);
        }
        drill.end();
        let verdict = mark(scenario, drill.trace());
        let marked = critical(&verdict);
        let own = judge(scenario, &drill.trace().moments).broken;
        let done: Vec<String> = drill
            .run()
            .actions
            .iter()
            .map(|t| format!("@{} {}", t.at, write_action(&scenario.site, &t.action)))
            .collect();
        assert_eq!(
            marked,
            own,
            "run {run} of {}:\n{}",
            scenario.name,
            done.join("\n")
        );
        assert!(
            marked.is_empty() || !verdict.passed,
            "run {run} passes with a breach"
        );
        clean += u32::from(own.is_empty());
        for rule in own {
            *met.entry(rule).or_default() += 1;
        }
    }
    println!("{clean} runs without a breach, {met:?}");
    for rule in RULES {
        let met = met.get(rule.name()).copied().unwrap_or_default();
        assert!(met >= 15, "{rule:?} was met {met} times");
    }
    assert!(clean >= 500, "{clean} runs without a breach");
}
