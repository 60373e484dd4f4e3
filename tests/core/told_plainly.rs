//! What is told is told once, of the moment that it is about, and by whatever drives the current.
//!
//! Laws over all lists of `tests/drills`, and for each kind the lists that were once told otherwise.

use outage_drill::explain::{Stage, explain};
use outage_drill::file::Library;
use outage_drill::marking::{Rule, pressing};
use outage_drill::scenario::Criterion;
use outage_drill::words::{Arg, Unit};

use crate::terminal::drill;
use crate::told_advice::{all, one, say, told, word};

/// A number of a stage or of evidence.
fn number(args: &[(&'static str, Arg)], wanted: &str, unit: Unit) -> Option<f64> {
    args.iter().find_map(|(name, arg)| {
        let Arg::Quantity(number, of) = arg else {
            return None;
        };
        (*name == wanted && *of == unit).then_some(*number)
    })
}

#[test]
fn where_a_set_and_the_utility_are_one_the_way_is_told_from_the_utility() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for finding in findings {
            let tied = drill.trace().moments.get(finding.moment);
            let tied = tied.is_some_and(|m| m.readings.generator.tied);
            let outward = [Rule::LineFed, Rule::NoTransferEquipment, Rule::Collision];
            if !tied || !outward.contains(&finding.rule) {
                continue;
            }
            let told = explain(drill, finding);
            assert_eq!(told.path[0].text.id, "stage-utility", "{name}");
            // Below the transformer volts only fall on the way: that is where the current goes.
            let carries = |s: &&Stage| s.text.id.starts_with("stage-carries");
            let down = told.path.iter().skip_while(|s| s.at != "drop");
            let down = down.filter(carries);
            let volts = down.filter_map(|s| number(&s.text.args, "volts", Unit::Volts));
            let volts: Vec<f64> = volts.collect();
            assert!(volts.is_sorted_by(|a, b| a >= b), "{name}: {volts:?}");
            seen += 1;
        }
    }
    assert!(seen > 5, "{seen}");
}

#[test]
fn what_a_load_too_many_would_bring_is_told_of_all_the_rest_that_runs() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for finding in findings.iter().filter(|f| f.rule == Rule::Tripped) {
            let told = explain(drill, finding);
            let left = told
                .path
                .iter()
                .filter(|s| s.text.id == "stage-leave-through");
            let left: Vec<_> = left.collect();
            let side = told.path.iter().any(|s| s.text.id == "stage-one-side");
            let ([left], true) = (left.as_slice(), side) else {
                continue;
            };
            let would = number(&left.text.args, "amps", Unit::Amps).unwrap();
            let saw = number(&finding.evidence, "amps", Unit::Amps).unwrap();
            assert!(
                (would - saw).abs() < 0.02 * saw,
                "{name}: {would} A, {saw} A"
            );
            seen += 1;
        }
    }
    assert!(seen > 1, "{seen}");
}

#[test]
fn of_a_breaker_that_one_side_opened_only_that_side_is_listed_and_both_numbers_are_one() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for finding in findings.iter().filter(|f| f.rule == Rule::Tripped) {
            let told = explain(drill, finding);
            let amps = |id: &str| {
                let stage = told.path.iter().find(|s| s.text.id == id)?;
                number(&stage.text.args, "amps", Unit::Amps)
            };
            let Some(together) = amps("stage-one-side") else {
                continue;
            };
            assert_eq!(Some(together), amps("stage-opens"), "{name}");
            let loads = told.path.iter().filter(|s| s.text.id == "stage-load");
            let loads = loads.filter_map(|s| number(&s.text.args, "amps", Unit::Amps));
            let plain: f64 = loads.sum();
            assert!(plain >= 0.98 * together, "{name}: {plain} A, {together} A");
            assert!(plain < 1.15 * together, "{name}: {plain} A, {together} A");
            seen += 1;
        }
    }
    assert!(seen > 1, "{seen}");
}

#[test]
fn a_danger_that_the_last_deed_brought_has_its_order_now() {
    let (drill, findings) = one("live-inlet-pins");
    let asked = pressing(drill.site(), drill.trace(), findings).unwrap();
    assert_eq!(findings[asked].rule, Rule::LiveBlades);
    let (drill, findings) = one("inlet-surprise-late");
    assert_eq!(pressing(drill.site(), drill.trace(), findings), None);
}

#[test]
fn before_the_outage_nothing_is_told_to_have_been_without_power() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for late in findings.iter().filter(|f| f.rule == Rule::GoalLate) {
            let told = say(&explain(drill, late).what);
            let came = drill.trace().outage_at().is_some();
            assert_eq!(told.starts_with("Without power"), came, "{name}: {told}");
            seen += usize::from(!came);
        }
    }
    assert!(seen > 0);
}

#[test]
fn who_had_a_set_running_and_brought_nothing_on_is_told_to_bring_it_on() {
    let half = told(
        "neighbor-helps",
        "neighbor-helps-half-volts",
        Rule::GoalLate,
    );
    assert!(say(&half.instead).contains("first what matters most"));
    // Where the set fed past all transfer equipment, nothing more is to be put on it.
    let past = told("no-slide", "collision-main-closed", Rule::GoalLate);
    assert!(say(&past.instead).contains("extension cord"));
}

#[test]
fn a_goal_that_leaves_the_engine_running_asks_for_its_output_too() {
    let (library, _) = Library::shipped();
    let mut seen = 0;
    for scenario in &library.scenarios {
        let goal = &scenario.goal;
        let set = &scenario.site.generator;
        let asks = |control, position: &str| {
            let mut at_end = goal.at_end.iter();
            at_end.any(|(id, wanted)| *id == control && wanted.iter().any(|w| w == position))
        };
        if goal.appliances.is_empty() || !asks(set.engine, "running") {
            continue;
        }
        assert!(asks(set.output, "on"), "{}", scenario.name);
        seen += 1;
    }
    assert!(seen > 5, "{seen}");
    let (_, findings) = one("first-transfer-heavy-leg");
    let dark = findings.iter().find(|f| f.rule == Rule::NotRestored);
    assert_eq!(dark.and_then(|f| word(f, "loaded")), Some("tripped"));
}

#[test]
fn an_engine_behind_a_breaker_that_is_on_is_rid_of_its_load_before_it_starts() {
    let greed = told(
        "compressor-greed",
        "compressor-greed-again-and-again",
        Rule::NotRestored,
    );
    assert!(say(&greed.what).contains("engine"));
    assert!(say(&greed.instead).starts_with("Turn its output breaker off"));
}

#[test]
fn back_to_normal_is_missed_for_what_stands_or_was_late_and_not_for_a_call() {
    let mut seen = 0;
    for (name, _, findings) in all() {
        for finding in findings.iter().filter(|f| f.rule == Rule::NotCalled) {
            assert_ne!(finding.rule.criterion(), Criterion::Restoration, "{name}");
            seen += 1;
        }
    }
    assert!(seen > 0);
}

#[test]
fn what_a_cord_carries_is_told_of_a_moment_that_lasts_and_not_of_a_start() {
    for actions in ["tingle-no-pin", "tingle-lifted-live"] {
        let told = told("tingle", actions, Rule::CordUnfit);
        let last = told.path.last().unwrap();
        let stands = number(&last.text.args, "stands", Unit::Volts).unwrap();
        assert!(stands > 108.0, "{actions}: {stands} V");
    }
}

#[test]
fn what_a_hand_is_on_is_not_called_metal_where_it_is_the_joint_of_a_cord() {
    let told = told("tingle", "tingle-lifted-live", Rule::Touch);
    let stages = told.path.iter().map(|s| say(&s.text));
    let all: Vec<String> = [say(&told.what)].into_iter().chain(stages).collect();
    assert!(all.iter().any(|s| s.contains("connector")), "{all:?}");
    assert!(!all.iter().any(|s| s.contains("metal")), "{all:?}");
}

#[test]
fn a_cord_of_two_wires_and_one_whose_pin_is_cut_off_are_told_apart() {
    let end = |drill: &str, actions: &str| {
        let (_, findings) = one(actions);
        let bare = findings
            .iter()
            .find(|f| word(f, "fault") == Some("no-ground"));
        let (played, _) = one(actions);
        let told = explain(played, bare.unwrap_or_else(|| panic!("{drill}: none")));
        say(&told.path.last().unwrap().text)
    };
    assert!(end("right-cord", "right-cord-lamp-cord").contains("two wires"));
    assert!(end("tingle", "tingle-no-pin").contains("pin is cut off"));
}

#[test]
fn one_cord_is_named_for_the_heat_and_for_the_volts() {
    let mut seen = 0;
    for (name, _, findings) in all() {
        let fits = findings
            .iter()
            .filter(|f| [Rule::CordHot, Rule::Starved].contains(&f.rule));
        let fits: Vec<&str> = fits.filter_map(|f| word(f, "fit")).collect();
        assert!(
            fits.windows(2).all(|pair| pair[0] == pair[1]),
            "{name}: {fits:?}"
        );
        seen += usize::from(fits.len() > 1);
    }
    assert!(seen > 1, "{seen}");
    for actions in ["right-cord-long", "coil-in-the-corner-left"] {
        let (drill, findings) = one(actions);
        let hot = findings.iter().find(|f| f.rule == Rule::CordHot).unwrap();
        let instead = say(&explain(drill, hot).instead);
        assert!(
            instead.contains("12 AWG") && !instead.contains("14 AWG"),
            "{instead}"
        );
    }
}

#[test]
fn what_the_ways_of_two_findings_share_is_told_once() {
    let played = drill(&[
        "play",
        "no-slide",
        "--actions",
        "tests/drills/collision-main-closed.actions",
    ]);
    let text = played.out;
    assert_eq!(
        text.matches("The recloser at the head carries").count(),
        1,
        "{text}"
    );
    // The handle, the line, and the return that nobody had looked for, all as the two that met; of the two loads without power the second.
    assert_eq!(
        text.matches("The first steps are as told above").count(),
        4,
        "{text}"
    );
    assert_eq!(
        text.matches("What is left half done waits").count(),
        1,
        "{text}"
    );
}
