//! A second judge of line work, written from positions, names and what testers showed, against the marking.
//!
//! It has a graph of its own for one line and walks forward through a run, where the marking looks back.
//! It reads neither the marking nor what the solver says about which source feeds what.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use outage_drill::drill::{
    Action, Drill, Event, Learnt, LineEvent, Moment, What, parse_line, write_action,
};
use outage_drill::marking::{Rule, mark};
use outage_drill::scenario::{Happening, Scenario};
use outage_drill::units::DrillTime;

use crate::playing::{Dice, shipped};

const RUNS: u32 = 2_000;
const RULES: [Rule; 9] = [
    Rule::NotTested,
    Rule::TesterUnproved,
    Rule::NotGrounded,
    Rule::GroundsWrong,
    Rule::NoVisibleBreak,
    Rule::GroundsLeft,
    Rule::NotAsked,
    Rule::Shock,
    Rule::Collision,
];
const POLES: [&str; 3] = ["pole-2", "pole-3", "pole-4"];

/// How things stand at a moment, by name.
struct Stand<'a> {
    scenario: &'a Scenario,
    moment: &'a Moment,
}

impl Stand<'_> {
    fn at(&self, control: &str) -> &str {
        let site = &self.scenario.site;
        let id = site.control_id(control).unwrap();
        site.position_name(&self.moment.positions, id)
    }

    fn is(&self, control: &str, position: &str) -> bool {
        self.at(control) == position
    }

    fn hands(&self) -> bool {
        self.is("crew", "hands-on")
    }

    /// The utility at pole 2, behind recloser and disconnect.
    fn utility_at_2(&self) -> bool {
        let head = self.is("feeder", "closed") || self.is("feeder-contacts", "welded");
        head && (self.is("disconnect", "closed") || self.is("jumper-disconnect", "present"))
    }

    /// The utility at pole 3 and beyond.
    fn utility_at_3(&self) -> bool {
        self.utility_at_2() && self.is("broken-span", "whole")
    }

    /// The customer's set at pole 3.
    fn own_at_3(&self) -> bool {
        self.moment.conditions.engine.running_since.is_some()
            && ["generator-output", "generator-breaker", "main"]
                .iter()
                .all(|b| self.is(b, "on"))
            && self.is("cutout-pole-5", "closed")
    }

    fn set_on(&self, pole: &str) -> bool {
        self.is(&format!("grounds-{pole}"), "both-ends")
    }

    /// Whether the utility feeds a set of grounds.
    fn fault(&self) -> bool {
        self.utility_at_2() && self.set_on("pole-2")
            || self.utility_at_3() && (self.set_on("pole-3") || self.set_on("pole-4"))
    }

    /// Whether a body bridges something: a hand on a wire that is fed, and not on grounds at the same pole.
    fn shock(&self) -> bool {
        let held = self.hands() || self.is("grounds-pole-3", "line-end");
        let here = self.set_on("pole-3") || self.set_on("pole-4");
        let joined = self.is("broken-span", "whole");
        let grounded = here || joined && self.set_on("pole-2");
        let own = self.own_at_3() && (!grounded || self.fault());
        held && !self.set_on("pole-3") && (self.utility_at_3() || own)
    }

    fn broken(&self) -> BTreeSet<Rule> {
        let hands = self.hands();
        let some = POLES.iter().any(|p| {
            let at = format!("grounds-{p}");
            self.is(&at, "both-ends") || self.is(&at, "line-end")
        });
        let cut = self.is("disconnect", "open")
            && self.is("jumper-disconnect", "absent")
            && self.is("tag-disconnect", "on");
        let away = hands && !self.set_on("pole-3");
        let wrong_end = POLES
            .iter()
            .any(|p| self.is(&format!("grounds-{p}"), "line-end"));
        let holds = [
            (Rule::NoVisibleBreak, hands && !cut),
            (Rule::NotGrounded, away && !some),
            (Rule::GroundsWrong, away && some || wrong_end),
            (Rule::GroundsLeft, self.fault()),
            (Rule::Shock, self.shock()),
            (Rule::Collision, self.own_at_3() && self.utility_at_3()),
        ];
        holds
            .into_iter()
            .filter(|(_, h)| *h)
            .map(|(r, _)| r)
            .collect()
    }
}

/// The last test at a pole, with what the same tester showed on the proving source around it.
struct Test {
    tester: usize,
    lit: bool,
    before: Option<bool>,
    after: Option<bool>,
}

/// What the crew has learnt since the line was last closed anywhere.
#[derive(Default)]
struct Notes {
    tests: BTreeMap<String, Test>,
    proved: BTreeMap<usize, bool>,
}

impl Notes {
    fn read(&mut self, what: &What) {
        if let What::Learnt(Learnt::Detected { point, tester, lit }) = what {
            if point == "proving-source" {
                self.proved.insert(*tester, *lit);
                for test in self.tests.values_mut().filter(|t| t.tester == *tester) {
                    test.after.get_or_insert(*lit);
                }
            } else {
                let test = Test {
                    tester: *tester,
                    lit: *lit,
                    before: self.proved.get(tester).copied(),
                    after: None,
                };
                self.tests.insert(point.clone(), test);
            }
        }
    }

    /// The rule that trusting a pole breaks.
    fn trust(&self, pole: &str, testers: &[&str]) -> Option<Rule> {
        match self.tests.get(pole) {
            None => Some(Rule::NotTested),
            Some(test) if test.lit => Some(Rule::NotTested),
            Some(test) => {
                let works = test.before == Some(true) && test.after == Some(true);
                let low = testers[test.tester] == "low-range";
                (!works || !low).then_some(Rule::TesterUnproved)
            }
        }
    }
}

/// Whether a deed closes something, by its line.
fn closes(line: &str) -> bool {
    [
        "feeder",
        "disconnect",
        "cutout-pole-2",
        "cutout-pole-4",
        "cutout-pole-5",
    ]
    .iter()
    .any(|c| line == format!("set {c} closed"))
}

fn judge(scenario: &Scenario, moments: &[Moment]) -> BTreeSet<Rule> {
    let work = scenario.site.line_work.as_ref().unwrap();
    let testers: Vec<&str> = work.testers.iter().map(|t| t.name.as_str()).collect();
    let mut broken = BTreeSet::new();
    let mut notes = Notes::default();
    let mut back = false;
    let first = Stand {
        scenario,
        moment: &moments[0],
    };
    broken.extend(first.broken());
    for pair in moments.windows(2) {
        let [old, new] = [&pair[0], &pair[1]].map(|moment| Stand { scenario, moment });
        broken.extend(new.broken());
        if let What::Did(action) = &new.moment.what
            && closes(&write_action(&scenario.site, action))
        {
            notes = Notes::default();
        }
        notes.read(&new.moment.what);
        if new.hands() && !old.hands() {
            broken.extend(notes.trust("pole-3", &testers));
        }
        for pole in POLES {
            let at = format!("grounds-{pole}");
            let on = |s: &Stand<'_>| s.is(&at, "both-ends") || s.is(&at, "line-end");
            if on(&new) && !on(&old) {
                broken.extend(notes.trust(pole, &testers));
            }
        }
        back |= new.moment.what == What::Happened(Event::Line(LineEvent::CustomersBack));
        let served = |s: &Stand<'_>| s.utility_at_3() && s.is("cutout-pole-5", "closed");
        if served(&old) && !served(&new) {
            back = false;
        }
        if served(&new) && !served(&old) && !back {
            broken.insert(Rule::NotAsked);
        }
    }
    broken
}

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
    let mut met: BTreeMap<Rule, u32> = BTreeMap::new();
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
        let breaches = verdict.findings.iter().filter(|f| f.breach);
        let marked: BTreeSet<Rule> = breaches
            .map(|f| f.rule)
            .filter(|r| RULES.contains(r))
            .collect();
        let own = judge(scenario, &drill.trace().moments);
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
        let met = met.get(&rule).copied().unwrap_or_default();
        assert!(met >= 15, "{rule:?} was met {met} times");
    }
    assert!(clean >= 500, "{clean} runs without a breach");
}
