//! Two searches of one model: the proof's own, all at once, and a general-purpose checker's.
//! Both have to meet as many states and come to the same verdict on each property, on small houses and on wrong ones.

use std::sync::Arc;
use std::time::Instant;

use outage_drill::file::Library;
use outage_drill::proof::{Property, Scope, Stand, Standing, Terms, marked, prove_on, stands};
use outage_drill::scenario::{Happening, Scenario};
use outage_drill::site::{Constraint, ControlId, PositionId, Site};
use second_opinion::{Marking, Opinion, ask, time};

/// A shipped drill in a house made small: what is not among these controls can't be moved.
fn small(
    name: &str,
    moved: &[&str],
    change: impl FnOnce(&mut Site, &mut Scenario),
) -> Arc<Scenario> {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    let mut scenario = (**library.scenario(name).unwrap()).clone();
    let mut site = (*scenario.site).clone();
    for (index, control) in site.controls.iter_mut().enumerate() {
        if control.operator == outage_drill::site::Operator::World {
            continue;
        }
        if !moved.contains(&control.name.as_str()) {
            let id = ControlId(u16::try_from(index).unwrap());
            // Held where it stands: the one position that is left is that one.
            let stands = usize::from(scenario.start.get(id).0);
            control.positions.swap(0, stands);
            control.positions.truncate(1);
            scenario.start.set(id, PositionId(0));
        }
    }
    scenario.goal.at_end.retain(|(control, _)| {
        let name = site.control(*control).map_or("", |c| c.name.as_str());
        moved.contains(&name)
    });
    change(&mut site, &mut scenario);
    scenario.site = Arc::new(site);
    Arc::new(scenario)
}

/// What the proof's own search finds, all at once.
fn own(scenario: &Arc<Scenario>, marking: Marking) -> Opinion {
    let marker = |s: &Scenario, m: &outage_drill::drill::Moment| marking(marked(s, m));
    let terms = Terms {
        marker: &marker,
        scope: Scope::Whole,
        ..Terms::USUAL
    };
    let proof = prove_on(scenario, terms).unwrap();
    let broken = |property| match proof.standing(property).unwrap() {
        Standing::Broken(_) | Standing::Declared(_) => true,
        Standing::Proved | Standing::ProvedForPositions => false,
        other => panic!("{property:?}: {other:?}"),
    };
    Opinion {
        states: proof.figures.states,
        line_fed: broken(Property::ByConstruction),
        agrees: !broken(Property::MarkingAgrees),
        goes_on: !broken(Property::GoesOn),
    }
}

const SLIDE: &[&str] = &[
    "main",
    "main-lock",
    "generator-breaker",
    "generator-place",
    "engine",
    "generator-output",
    "inlet-cord-generator-end",
    "inlet-cord-house-end",
    "breaker-fridge",
    "breaker-sump",
];
const TWO_PLUGS: &[&str] = &[
    "main",
    "generator-breaker",
    "generator-place",
    "engine",
    "generator-output",
    "inlet-cord-house-end",
    "two-plug-cord-generator-end",
    "two-plug-cord-house-end",
    "breaker-dryer",
    "dryer-plug",
];
const HANDLES: &[&str] = &[
    "main",
    "generator-place",
    "engine",
    "generator-output",
    "inlet-cord-generator-end",
    "inlet-cord-house-end",
    "handle-sump",
    "handle-sump-breaker",
    "breaker-sump",
];
const STANDBY: &[&str] = &[
    "main",
    "generator-output",
    "generator-oil",
    "generator-cover",
    "starter-battery",
    "controller",
];

/// Every house, with what is meant to be found of it: whether the line can be fed, whether the marking agrees, whether the end stays in reach.
fn houses() -> Vec<(&'static str, Arc<Scenario>, Marking, [bool; 3])> {
    let as_built = |_: &mut Site, _: &mut Scenario| {};
    let usual: Marking = |s| s;
    let sound = [false, true, true];
    vec![
        (
            "a slide",
            small("there-and-back", SLIDE, as_built),
            usual,
            sound,
        ),
        (
            "no slide",
            small("no-slide", TWO_PLUGS, as_built),
            usual,
            [true, true, true],
        ),
        (
            "a handle",
            small("six-handles", HANDLES, as_built),
            usual,
            sound,
        ),
        (
            "a set that works by itself",
            small("by-itself", STANDBY, as_built),
            usual,
            sound,
        ),
        (
            "a slide taken away",
            small("there-and-back", SLIDE, |site, _| {
                site.constraints.retain(
                    |c| !matches!(c, Constraint::NotBoth { why, .. } if why == "refused-interlock"),
                );
            }),
            usual,
            [true, true, true],
        ),
        (
            "a utility that never returns",
            small("there-and-back", SLIDE, |_, scenario| {
                scenario
                    .story
                    .retain(|t| t.what != Happening::UtilityReturns);
            }),
            usual,
            [false, true, false],
        ),
        (
            "a cord that never comes off",
            small("there-and-back", SLIDE, |site, _| {
                let inlet = site.control_id("inlet-cord-house-end").unwrap();
                site.constraints.push(Constraint::Holds {
                    holder: (inlet, PositionId(1)),
                    held: inlet,
                    why: "refused-locked".to_owned(),
                });
            }),
            usual,
            [false, true, false],
        ),
        (
            "a rule that never finds the line fed",
            small("no-slide", TWO_PLUGS, as_built),
            |s| Stand {
                line_fed: false,
                ..s
            },
            [true, false, true],
        ),
        (
            "a rule that forgets bare contacts",
            small("no-slide", TWO_PLUGS, as_built),
            |s| Stand { bare: false, ..s },
            [true, false, true],
        ),
    ]
}

#[test]
fn both_searches_meet_the_same_states_and_come_to_the_same_verdicts() {
    println!("{:<40} {:>8}  line fed, agrees, goes on", "house", "states");
    for (what, scenario, marking, meant) in houses() {
        let (ours, theirs) = (own(&scenario, marking), ask(&scenario, marking));
        assert_eq!(ours, theirs, "{what}");
        let found = [ours.line_fed, ours.agrees, ours.goes_on];
        println!("{what:<40} {:>8}  {found:?}", ours.states);
        assert_eq!(found, meant, "{what}");
    }
}

#[test]
fn the_searches_are_timed_in_one_run() {
    println!(
        "{:<40} {:>8} {:>14} {:>14} {:>7}",
        "house", "states", "ours /s", "checker /s", "times"
    );
    for (what, scenario, _, _) in houses().into_iter().take(4) {
        let (states, theirs) = time(&scenario);
        let began = Instant::now();
        let found = stands(&scenario, Scope::Whole).unwrap();
        let ours = began.elapsed();
        assert!(!found.is_empty());
        let n = f64::from(u32::try_from(states).unwrap());
        let (a, b) = (n / ours.as_secs_f64(), n / theirs.as_secs_f64());
        println!("{what:<40} {states:>8} {a:>14.0} {b:>14.0} {:>7.1}", a / b);
    }
}
