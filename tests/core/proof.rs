//! The proof of the shipped drills, and what it is worth: it has to fail on scenarios and marking rules that are wrong, each for its reason.

use std::collections::BTreeSet;
use std::mem::discriminant;
use std::sync::Arc;

use outage_drill::drill::{Drill, Moment};
use outage_drill::file::{Library, Source, read_heading};
use outage_drill::marking::mark;
use outage_drill::proof::{
    Model, Part, Property, Scope, Stand, Standing, Terms, drift, marked, prove, prove_on, stands,
};
use outage_drill::scenario::variation::AS_WRITTEN;
use outage_drill::scenario::{Happening, Scenario};
use outage_drill::session::{Prover, VariantRead};
use outage_drill::shipped;
use outage_drill::site::{
    Constraint, ControlId, FarEnd, Interlock, Kind, Moved, Plug, PositionId, Site,
};

use crate::playing::shipped;

/// A drill with something changed in its site or itself.
fn changed(name: &str, change: impl FnOnce(&mut Site, &mut Scenario)) -> Arc<Scenario> {
    let mut scenario = (*shipped(name)).clone();
    let mut site = (*scenario.site).clone();
    change(&mut site, &mut scenario);
    scenario.site = Arc::new(site);
    Arc::new(scenario)
}

fn standing(scenario: &Arc<Scenario>, property: Property) -> Standing {
    let proof = prove(scenario, &marked).unwrap();
    proof.standing(property).unwrap().clone()
}

fn is_broken(scenario: &Arc<Scenario>, property: Property) -> bool {
    matches!(standing(scenario, property), Standing::Broken(_))
}

/// The constraint that is the slide between main and generator breaker.
fn slide(site: &mut Site) -> &mut Constraint {
    let found = site.constraints.iter_mut();
    let mut slides = found
        .filter(|c| matches!(c, Constraint::NotBoth { why, .. } if why == "refused-interlock"));
    slides.next().expect("the slide is fitted")
}

#[test]
fn every_shipped_drill_is_sound_and_has_a_safe_way() {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    for scenario in &library.scenarios {
        let as_written = VariantRead {
            name: AS_WRITTEN.to_owned(),
            seed: 1,
            sentence: String::new(),
        };
        let name = &scenario.name;
        let mut prover = Prover::default();
        let proof = prover.prove(&library, name, &as_written, &|_| {}).unwrap();
        assert!(proof.sound, "{name}: {:?}", proof.properties);
        assert!(proof.states > 100, "{name}: {}", proof.states);
        let mut ways = proof.properties.iter().filter(|p| p.id == "safe-way");
        assert!(ways.all(|p| p.standing == "shown"), "{name}");
    }
}

/// A shipped drill in a house made small: switches, locks and what people do are held where they stand, and all but a few circuits, handles and cords.
fn held(name: &str) -> Arc<Scenario> {
    let scenario = shipped(name);
    let site = &scenario.site;
    let idle = [
        Kind::Switch,
        Kind::Lay,
        Kind::Opening,
        Kind::People,
        Kind::Lock,
    ];
    let ids = (0..).map(ControlId).zip(&site.controls);
    let mut held: Vec<ControlId> = ids
        .filter(|(_, c)| idle.contains(&c.kind))
        .map(|(id, _)| id)
        .collect();
    held.extend(site.appliances.iter().filter_map(|a| match &a.plug {
        Plug::Cord { control, .. } => Some(*control),
        Plug::Wired => None,
    }));
    for circuit in site.circuits.iter().skip(3) {
        held.push(circuit.breaker);
        held.extend(circuit.gfci);
    }
    let handles = site
        .transfers
        .iter()
        .filter(|t| matches!(t.load, Moved::Circuit(_)));
    for transfer in handles.skip(2) {
        held.push(transfer.handle);
        held.extend(transfer.breaker);
    }
    for cord in site.cords.iter().skip(2) {
        held.push(cord.near);
        if let FarEnd::Inlet(end) | FarEnd::Blades(end, _) = cord.far {
            held.push(end);
        }
    }
    changed(name, |site, scenario| {
        for id in held {
            let stands = usize::from(scenario.start.get(id).0);
            let control = &mut site.controls[usize::from(id.0)];
            control.positions.swap(0, stands);
            control.positions.truncate(1);
            scenario.start.set(id, PositionId(0));
        }
    })
}

/// Houses of every kind of equipment.
const HOUSES: [&str; 7] = [
    "there-and-back",
    "no-slide",
    "six-handles",
    "by-itself",
    "small-and-quiet",
    "right-cord",
    "forgotten-sun",
];

#[test]
fn states_packed_into_numbers_are_the_states_of_the_model() {
    for name in HOUSES {
        let scenario = held(name);
        let model = Model::of(&scenario);
        let mut seen = BTreeSet::from([model.initial()]);
        let mut queue = vec![model.initial()];
        let mut found = BTreeSet::new();
        while let Some(state) = queue.pop() {
            found.insert(model.stand(&state));
            for (_, next) in model.moves(&state) {
                if seen.insert(next.clone()) {
                    queue.push(next);
                }
            }
        }
        let terms = Terms {
            scope: Scope::Whole,
            ..Terms::USUAL
        };
        let proof = prove_on(&scenario, terms).unwrap();
        assert_eq!(proof.figures.states, seen.len(), "{name}");
        assert_eq!(stands(&scenario, Scope::Whole), Some(found), "{name}");
    }
}

#[test]
fn what_is_left_out_of_a_search_changes_nothing_that_is_found() {
    for name in HOUSES {
        let scenario = held(name);
        let parted = stands(&scenario, Scope::Parted);
        assert_eq!(parted, stands(&scenario, Scope::Whole), "{name}");
        let [parted, whole] = [Scope::Parted, Scope::Whole].map(|scope| {
            let terms = Terms {
                scope,
                ..Terms::USUAL
            };
            prove_on(&scenario, terms).unwrap()
        });
        for property in [Property::MarkingAgrees, Property::ByConstruction] {
            let [one, other] =
                [&parted, &whole].map(|p| discriminant(p.standing(property).unwrap()));
            assert_eq!(one, other, "{name}: {property:?}");
        }
    }
}

#[test]
fn a_safe_way_passes_with_other_seeds_too() {
    for name in ["there-and-back", "no-slide", "six-handles"] {
        let scenario = shipped(name);
        let Standing::Shown(way) = standing(&scenario, Property::SafeWay) else {
            panic!("{name}: no safe way is shown");
        };
        let mut drill = Drill::start(&scenario, 1).unwrap();
        for action in &way {
            drill.act(action);
        }
        drill.end();
        let verdict = mark(&scenario, drill.trace());
        assert!(verdict.passed, "{name}: {:?}", verdict.findings);
    }
}

#[test]
fn equipment_that_is_safe_by_construction_is_told_from_equipment_that_is_not() {
    for (name, declared) in [
        ("there-and-back", false),
        ("six-handles", false),
        ("no-slide", true),
    ] {
        let found = standing(&shipped(name), Property::ByConstruction);
        assert_eq!(found == Standing::Proved, !declared, "{name}: {found:?}");
        if declared {
            let Standing::Declared(way) = found else {
                panic!("{name}: {found:?}");
            };
            let scenario = shipped(name);
            let mut drill = Drill::start(&scenario, 1).unwrap();
            for action in &way {
                drill.act(action);
            }
            let fed = drill.readings().point("service").fed.generator;
            assert!(fed, "{name}: the way feeds the line when it is played");
        }
    }
}

/// A house so small that everything can be searched at once: three circuits and one place for the generator.
fn small(name: &str) -> Arc<Scenario> {
    let keep = ["fridge", "furnace", "dryer"];
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty());
    let scenario = library.scenario(name).unwrap();
    changed(name, |site, _| {
        let gone: Vec<_> = scenario
            .site
            .circuits
            .iter()
            .filter(|c| !keep.contains(&c.name.as_str()))
            .map(|c| c.breaker)
            .collect();
        // Controls that are no longer there to be moved: held where they stand.
        for (index, control) in site.controls.iter_mut().enumerate() {
            let id = ControlId(u16::try_from(index).unwrap());
            let idle = ["lay", "lock", "plug", "switch", "window", "household"];
            if gone.contains(&id) || idle.iter().any(|i| control.name.ends_with(i)) {
                control.positions.truncate(1);
            }
        }
    })
}

#[test]
fn searching_branch_by_branch_loses_nothing_against_searching_all_at_once() {
    for name in ["there-and-back", "no-slide"] {
        let scenario = small(name);
        let parted = stands(&scenario, Scope::Parted).unwrap();
        let whole = stands(&scenario, Scope::Whole).unwrap();
        assert_eq!(parted, whole, "{name}");
        let harmless = parted.iter().all(|s| !s.breach());
        assert_eq!(harmless, name == "there-and-back", "{name}: {parted:?}");
    }
}

#[test]
fn a_slide_that_does_not_block_is_found_out() {
    let gone = changed("there-and-back", |site, _| {
        site.constraints.retain(
            |c| !matches!(c, Constraint::NotBoth { why, .. } if why == "refused-interlock"),
        );
    });
    let wrong_handle = changed("there-and-back", |site, _| {
        let range = site.control_id("breaker-range").unwrap();
        if let Constraint::NotBoth { one, .. } = slide(site) {
            one.0 = range;
        }
    });
    let wrong_position = changed("there-and-back", |site, _| {
        if let Constraint::NotBoth { other, .. } = slide(site) {
            other.1 = PositionId(0);
        }
    });
    let one_way = changed("there-and-back", |site, _| {
        let backfed = site.panel.backfeed.unwrap().breaker;
        let main = site.panel.main;
        *slide(site) = Constraint::Needs {
            this: (backfed, PositionId(1)),
            other: (main, vec![PositionId(0)]),
            why: "refused-interlock".to_owned(),
        };
    });
    for (what, scenario) in [
        ("gone", gone),
        ("on the wrong handle", wrong_handle),
        ("in the wrong position", wrong_position),
        ("only one way", one_way),
    ] {
        assert!(
            is_broken(&scenario, Property::ByConstruction),
            "a slide that is {what}"
        );
    }
}

#[test]
fn a_goal_out_of_reach_is_found_out() {
    let no_place = changed("there-and-back", |site, _| {
        for c in &mut site.constraints {
            if let Constraint::Needs { why, other, .. } = c
                && why == "refused-in-shed"
            {
                other.1.clear();
            }
        }
    });
    let not_moved = changed("six-handles", |site, scenario| {
        scenario
            .goal
            .appliances
            .push(site.appliance_index("water-heater").unwrap());
    });
    let locked = changed("there-and-back", |site, _| {
        let lock = site.control_id("main-lock").unwrap();
        let main = site.panel.main;
        site.constraints.push(Constraint::Holds {
            holder: (lock, PositionId(0)),
            held: main,
            why: "refused-locked".to_owned(),
        });
    });
    let against_itself = changed("there-and-back", |site, scenario| {
        scenario
            .goal
            .at_end
            .push((site.panel.main, vec!["off".to_owned()]));
    });
    for (what, scenario) in [
        ("no place for the engine", no_place),
        ("an appliance that no handle moves", not_moved),
        ("a main breaker that can't be moved", locked),
        ("an end that contradicts itself", against_itself),
    ] {
        assert!(is_broken(&scenario, Property::SafeWay), "{what}");
    }
}

#[test]
fn an_end_that_some_state_can_not_come_back_to_is_found_out() {
    let no_return = changed("there-and-back", |_, scenario| {
        scenario
            .story
            .retain(|t| t.what != Happening::UtilityReturns);
    });
    let trap = changed("there-and-back", |site, _| {
        let inlet = site.control_id("inlet-cord-house-end").unwrap();
        site.constraints.push(Constraint::Holds {
            holder: (inlet, PositionId(1)),
            held: inlet,
            why: "refused-locked".to_owned(),
        });
    });
    let engine_for_good = changed("six-handles", |site, _| {
        let handle = site.control_id("handle-sump").unwrap();
        site.constraints.push(Constraint::Holds {
            holder: (handle, PositionId(2)),
            held: handle,
            why: "refused-locked".to_owned(),
        });
    });
    for (what, scenario) in [
        ("a utility that never returns", no_return),
        ("a cord that never comes off", trap),
        ("a handle that sticks", engine_for_good),
    ] {
        assert!(is_broken(&scenario, Property::GoesOn), "{what}");
    }
}

#[test]
fn a_start_that_no_sound_house_comes_to_is_found_out() {
    let both_on = changed("there-and-back", |site, scenario| {
        scenario
            .start
            .set(site.panel.backfeed.unwrap().breaker, PositionId(1));
    });
    let in_the_shed = changed("there-and-back", |site, scenario| {
        scenario.start.set(site.generator.engine, PositionId(1));
    });
    for (what, scenario) in [
        ("both breakers on", both_on),
        ("an engine that runs in the shed", in_the_shed),
    ] {
        assert!(is_broken(&scenario, Property::SoundStart), "{what}");
    }
}

/// A marking rule that is wrong in one respect.
type Wrong = fn(&Scenario, &Moment, Stand) -> Stand;

fn stands_at(scenario: &Scenario, moment: &Moment, control: &str, position: &str) -> bool {
    let id = scenario.site.control_id(control);
    id.is_some_and(|id| scenario.site.stands(&moment.positions, id, position))
}

fn volts(moment: &Moment, point: &str) -> f64 {
    moment.readings.point(point).volts
}

/// Rules that are wrong on the house without a slide, and what is wrong with them.
const WRONG: &[(&str, Wrong)] = &[
    ("never finds the line fed", |_, _, s| Stand {
        line_fed: false,
        ..s
    }),
    ("never finds it unguarded", |_, _, s| Stand {
        unguarded: false,
        ..s
    }),
    ("never finds two sources tied", |_, _, s| Stand {
        tied: false,
        ..s
    }),
    ("never finds a shock", |_, _, s| Stand { shock: false, ..s }),
    ("never finds bare contacts", |_, _, s| Stand {
        bare: false,
        ..s
    }),
    ("forgets the dryer outlet", |c, m, s| Stand {
        unguarded: s.unguarded && !stands_at(c, m, "two-plug-cord-house-end", "dryer-outlet"),
        ..s
    }),
    ("forgets the inlet", |c, m, s| Stand {
        unguarded: s.unguarded && !stands_at(c, m, "inlet-cord-house-end", "inlet"),
        ..s
    }),
    ("looks at the handles and not at what is fed", |c, m, s| {
        Stand {
            line_fed: stands_at(c, m, "main", "on") && stands_at(c, m, "generator-breaker", "on"),
            ..s
        }
    }),
    ("takes a running engine for a fed line", |c, m, s| Stand {
        line_fed: s.line_fed || stands_at(c, m, "engine", "running"),
        ..s
    }),
    (
        "asks for line volts before it calls the line fed",
        |_, m, s| Stand {
            line_fed: s.line_fed && volts(m, "pole-4") > 7000.0,
            ..s
        },
    ),
    ("lets a crew that only tests be shocked", |c, m, s| Stand {
        shock: s.shock || s.line_fed && stands_at(c, m, "crew", "testing"),
        ..s
    }),
    (
        "lets the utility's own volts pass for a backfeed",
        |_, m, s| Stand {
            line_fed: s.line_fed || volts(m, "service") > 100.0,
            ..s
        },
    ),
    ("forgets the pins of the inlet", |c, m, s| Stand {
        bare: s.bare && stands_at(c, m, "inlet-cord-house-end", "inlet"),
        ..s
    }),
    ("forgets the blades at the generator's end", |c, m, s| {
        Stand {
            bare: s.bare && !stands_at(c, m, "two-plug-cord-generator-end", "stowed"),
            ..s
        }
    }),
    ("forgets the blades at the house end", |c, m, s| Stand {
        bare: s.bare && !stands_at(c, m, "two-plug-cord-house-end", "stowed"),
        ..s
    }),
    (
        "finds two sources tied only while the main is on",
        |c, m, s| Stand {
            tied: s.tied && !stands_at(c, m, "broken-span", "whole"),
            ..s
        },
    ),
];

#[test]
fn a_wrong_marking_rule_is_found_out_with_a_way_that_shows_it() {
    let scenario = shipped("no-slide");
    for (what, wrong) in WRONG {
        let marker = |s: &Scenario, m: &Moment| wrong(s, m, marked(s, m));
        let proof = prove(&scenario, &marker).unwrap();
        let found = proof.standing(Property::MarkingAgrees).unwrap();
        assert!(
            matches!(found, Standing::Broken(_)),
            "a rule that {what}: {found:?}"
        );
    }
}

#[test]
fn a_rule_that_lets_a_neighbors_set_meet_the_own_one_is_found_out() {
    let scenario = shipped("neighbor-helps");
    let lets = |s: &Scenario, m: &Moment| Stand {
        meets: false,
        ..marked(s, m)
    };
    let proof = prove(&scenario, &lets).unwrap();
    assert!(matches!(
        proof.standing(Property::MarkingAgrees),
        Some(Standing::Broken(_))
    ));
}

#[test]
fn a_rule_that_blames_a_fitted_slide_is_found_out() {
    let scenario = shipped("there-and-back");
    assert_eq!(
        scenario.site.panel.backfeed.map(|b| b.interlock),
        Some(Interlock::Fitted)
    );
    let blames = |s: &Scenario, m: &Moment| Stand {
        unguarded: m.readings.point("inlet").fed.generator,
        ..marked(s, m)
    };
    let proof = prove(&scenario, &blames).unwrap();
    assert!(matches!(
        proof.standing(Property::MarkingAgrees),
        Some(Standing::Broken(_))
    ));
}

/// What a bound says of every run, and the finding that would give it the lie.
const BOUNDED: [(Part, &str); 2] = [(Part::Fuel, "RanDry"), (Part::Overload, "Overload")];

#[test]
fn what_a_bound_proves_of_every_run_is_found_by_no_kept_list() {
    let (library, _) = Library::shipped();
    let mut n_found = 0;
    for (file, text) in shipped::LISTS {
        let Some(heading) = read_heading(Source { file, text }).unwrap() else {
            continue;
        };
        let found = |rule: &str| heading.finds.iter().any(|(name, _)| name == rule);
        for scenario in heading.scenarios(&library).unwrap() {
            let standings = drift(&scenario);
            for (part, rule) in BOUNDED.iter().filter(|(_, rule)| found(rule)) {
                let proved = standings.contains(&(*part, Standing::Proved));
                assert!(!proved, "{file} finds {rule}, which is proved away");
                n_found += 1;
            }
        }
    }
    assert!(n_found >= 10, "{n_found}");
}
