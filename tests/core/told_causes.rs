//! What is told of a mistake names its own cause, in an order that helps, and with numbers of one moment.

use std::collections::BTreeSet;

use outage_drill::drill::Moment;
use outage_drill::explain::{Explanation, explain};
use outage_drill::file::{Library, Source};
use outage_drill::marking::{Finding, Rule};
use outage_drill::session;
use outage_drill::site::Readings;
use outage_drill::units::DrillTime;
use outage_drill::words::{Arg, Message, REFERENCE, Unit, Words};

use crate::explained::found;
use crate::playing::{list, play_text, shipped};
use crate::told_advice::all;

/// The first finding of a rule in a list, as it is told.
fn told(drill: &str, actions: &str, rule: Rule) -> Explanation {
    let (drill, finding) = found(drill, actions, rule);
    explain(&drill, &finding)
}

/// The ids of the stages.
fn ids(told: &Explanation) -> Vec<&str> {
    told.path.iter().map(|s| s.text.id.as_str()).collect()
}

fn say(message: &Message) -> String {
    Words::new(REFERENCE).say(message)
}

/// What the stage of this id says.
fn stage(told: &Explanation, id: &str) -> String {
    let stage = told.path.iter().find(|s| s.text.id == id);
    say(&stage
        .unwrap_or_else(|| panic!("{id} in {:?}", ids(told)))
        .text)
}

#[test]
fn a_load_that_starves_at_the_end_of_a_cord_is_told_by_the_cord() {
    for (drill, actions) in [
        ("coil-in-the-corner", "coil-in-the-corner-left"),
        ("right-cord", "right-cord-lamp-cord"),
        ("right-cord", "right-cord-long"),
    ] {
        let told = told(drill, actions, Rule::Starved);
        let expected = ["stage-load", "stage-cord-wire", "stage-cord-lost"];
        assert_eq!(ids(&told), expected, "{actions}");
        assert!(!say(&told.now).contains("generator"), "{actions}");
    }
}

#[test]
fn cords_that_are_joined_are_told_together_with_one_that_would_do_for_all_of_their_length() {
    let told = told("daisy", "daisy-left", Rule::Starved);
    assert_eq!(ids(&told), ["stage-load", "stage-cords-joined"]);
    let joined = stage(&told, "stage-cords-joined");
    assert!(joined.contains("orange cord") && joined.contains("red cord"));
    let instead = say(&told.instead);
    assert!(instead.starts_with("Use one cord of "), "{instead}");
}

#[test]
fn a_coiled_cord_is_to_be_laid_out_first_and_only_a_thin_one_is_called_too_thin() {
    let coiled = told(
        "coil-in-the-corner",
        "coil-in-the-corner-left",
        Rule::CordHot,
    );
    let does = stage(&coiled, "stage-cord-does");
    assert!(
        does.contains("13\u{a0}A") && does.contains("thick enough"),
        "{does}"
    );
    assert!(say(&coiled.instead).contains("out flat, with nothing on it"));
    let thin = told("right-cord", "right-cord-lamp-cord", Rule::CordHot);
    let does = stage(&thin, "stage-cord-does");
    assert!(
        does.contains("10\u{a0}A") && does.contains("too little"),
        "{does}"
    );
    assert!(say(&thin.instead).contains("12 AWG"));
}

#[test]
fn wires_that_have_met_are_told_as_a_short_circuit_and_not_as_a_load() {
    let burnt = told("right-cord", "right-cord-lamp-cord-coiled", Rule::Overload);
    assert_eq!(ids(&burnt), ["stage-cord-short", "stage-asked-low"]);
    assert!(say(&burnt.instead).contains("short circuit"));
    let crushed = told("right-cord", "right-cord-crushed", Rule::Tripped);
    assert_eq!(ids(&crushed).first(), Some(&"stage-cord-short"));
    assert!(say(&crushed.why).contains("wires of a cord met"));
}

#[test]
fn the_adapter_on_one_outlet_is_named_for_low_volts_and_for_a_hot_neutral() {
    let starved = told("half-the-house", "half-the-house-sum", Rule::Starved);
    assert!(say(&starved.what).contains("adapter"));
    assert!(
        ids(&starved).contains(&"stage-adapter"),
        "{:?}",
        ids(&starved)
    );
    let hot = told("half-the-house", "half-the-house-sum", Rule::WireHot);
    assert_eq!(ids(&hot)[..2], ["stage-wire-adapter", "stage-wire-shared"]);
    assert!(say(&hot.instead).contains("adapter"));
}

#[test]
fn a_broken_neutral_is_named_on_the_way_and_with_what_not_to_touch() {
    let told = told("no-neutral", "no-neutral-watched", Rule::WrongVolts);
    assert!(say(&told.what).contains("neutral"));
    let ids = ids(&told);
    let at = |id: &str| ids.iter().position(|i| *i == id);
    assert_eq!(at("stage-halves"), Some(6), "after the drop: {ids:?}");
    assert!(say(&told.now).contains("no pipe and no metal case"));
    assert!(say(&told.instead).contains("no other metal"));
    let why = say(&told.why);
    assert!(why.contains("hum and do not turn"), "{why}");
    // 10 s at standstill and rated volts, from memory, and longer by the square of the volts that are left.
    assert!(why.contains("after 27 minutes"), "{why}");
}

#[test]
fn every_number_of_volts_at_the_highest_is_of_the_moment_that_is_shown() {
    for (name, actions, rule) in [
        ("no-neutral", "no-neutral-watched", Rule::WrongVolts),
        ("no-slide", "deadly-main-left-on", Rule::LineFed),
        (
            "visible-break",
            "visible-break-one-word",
            Rule::NoVisibleBreak,
        ),
    ] {
        let (drill, finding) = found(name, actions, rule);
        let moment = &drill.trace().moments[finding.moment];
        let point = moment.readings.point(finding.reaches.as_deref().unwrap());
        let stands = point
            .volts_to_earth
            .filter(|_| rule == Rule::NoVisibleBreak);
        let stands = stands.unwrap_or(point.volts);
        let told = finding.evidence.iter().find(|(name, _)| *name == "volts");
        let Some((_, Arg::Quantity(volts, Unit::Volts))) = told else {
            panic!("{finding:?}");
        };
        // The highest of a line may be a span away.
        assert!((volts - stands).abs() < 1.0, "{finding:?}: {stands}");
        assert!(moment.at >= finding.at, "{rule:?}");
    }
}

#[test]
fn a_jumper_and_welded_contacts_are_told_where_the_energy_passes_them() {
    for (actions, jumper) in [
        ("visible-break-one-word", "stage-jumper-besides"),
        ("visible-break-jumper-left", "stage-jumper"),
    ] {
        let told = told("visible-break", actions, Rule::NoVisibleBreak);
        assert!(say(&told.what).contains("jumper"), "{actions}");
        let ids = ids(&told);
        assert_eq!(ids[1..3], ["stage-welded", jumper]);
        assert!(
            !ids.contains(&"stage-open"),
            "shown where it is live: {ids:?}"
        );
    }
}

#[test]
fn the_blades_of_a_cord_with_two_plugs_are_told_with_the_volts_in_the_hand() {
    let told = told(
        "one-plug-two-ends",
        "one-plug-two-ends-wrong-end",
        Rule::NoTransferEquipment,
    );
    assert!(stage(&told, "stage-two-plugs").contains("240\u{a0}V"));
    assert!(say(&told.why).contains("bare blades stand at 240\u{a0}V"));
}

#[test]
fn a_breaker_that_a_surge_did_not_open_is_told_with_the_time_that_it_needs() {
    let (name, actions) = ("neighbor-helps", "neighbor-helps-two-sources");
    let (drill, finding) = found(name, actions, Rule::SourcesMeet);
    let told = explain(&drill, &finding);
    let held = stage(&told, "stage-surge-held");
    let amps = finding.evidence.iter().find(|(name, _)| *name == "amps");
    let Some((_, Arg::Quantity(amps, _))) = amps else {
        panic!("{finding:?}");
    };
    let output = drill.site().generator.output;
    let (_, _, guard) = drill
        .site()
        .guards()
        .find(|(id, ..)| *id == output)
        .unwrap();
    let opens = guard.seconds_to_open(0.0, *amps).unwrap();
    let shown = Words::new(REFERENCE).quantity(opens, Unit::Seconds);
    assert!(held.contains(&shown), "{held}");
    // A few turns of the engine at 60 Hz are shorter.
    assert!(opens > 5.0 / 60.0, "{opens}");
}

#[test]
fn what_harms_comes_first_and_what_fails_a_run_alone_before_what_was_left_undone() {
    for (drill, actions) in [
        ("no-slide", "deadly-main-left-on"),
        ("hands-off", "standby-service-hands-in"),
        ("neighbor-helps", "neighbor-helps-two-sources"),
    ] {
        let played = play_text(&shipped(drill), 1, &list(actions));
        let weight = |f: &Finding| match (f.breach && f.rule.harms(), f.rule.criterion()) {
            (true, _) => 0,
            (false, c) if f.breach && c.is_critical() => 1,
            (false, _) => 2,
        };
        let order: Vec<(i32, DrillTime)> = played
            .verdict
            .findings
            .iter()
            .map(|f| (weight(f), f.at))
            .collect();
        assert!(order.is_sorted(), "{actions}: {order:?}");
        assert!(order.first().is_some_and(|(w, _)| *w < 2), "{actions}");
    }
}

#[test]
fn a_standby_set_is_told_what_it_needs_and_not_what_cords_need() {
    let late = told("standby-life", "standby-life-kept-off", Rule::GoalLate);
    let instead = say(&late.instead);
    assert!(instead.contains("auto"), "{instead}");
    assert!(!instead.contains("cords"), "{instead}");
    let open = say(&told("hands-off", "standby-service-hands-in", Rule::NotLockedOut).instead);
    for part in ["lock it and tag it", "Keep the key", "let the engine cool"] {
        assert!(open.contains(part), "{open}");
    }
    let caught = told(
        "hands-off",
        "standby-service-hands-in",
        Rule::CaughtByEngine,
    );
    assert!(say(&caught.why).contains("weekly run"));
    let cords = told("no-slide", "collision-main-closed", Rule::GoalLate);
    assert!(say(&cords.instead).contains("extension cord"));
}

#[test]
fn whoever_goes_to_the_sun_s_breaker_is_told_of_wires_live_in_daylight() {
    for rule in [Rule::SunOnGenerator, Rule::PushedBack] {
        let told = told("forgotten-sun", "sun-forgotten", rule);
        for said in [&told.now, &told.instead] {
            assert!(say(said).contains("live in daylight"), "{rule:?}");
        }
    }
}

#[test]
fn what_to_do_now_is_told_at_the_end_only_of_a_danger_that_still_stands() {
    let told = |drill: &str, actions: &str| {
        let text = list(actions);
        let source = Source {
            file: actions,
            text: &text,
        };
        let library = Library::shipped().0;
        let played = session::play(&library, drill, 1, REFERENCE, source).unwrap();
        played.session.debrief().unwrap().findings
    };
    let ended = told("no-slide", "deadly-main-left-on");
    let asked: Vec<&str> = ended
        .iter()
        .filter(|f| !f.now.is_empty())
        .map(|f| f.rule.as_str())
        .collect();
    assert_eq!(asked, ["shock"], "the engine stalled, and somebody is hurt");
    let stands = told("one-plug-two-ends", "one-plug-two-ends-left-on");
    let open: Vec<&str> = stands
        .iter()
        .filter(|f| !f.now.is_empty())
        .map(|f| f.rule.as_str())
        .collect();
    // What was merely left undone is no danger.
    assert_eq!(open, ["no-transfer-equipment"]);
}

#[test]
fn a_set_counts_as_joined_to_the_house_only_while_the_bars_of_a_panel_are_fed() {
    let mut seen = BTreeSet::new();
    for (name, drill, findings) in all() {
        let own = |f: &&Finding| f.rule == Rule::NoTransferEquipment;
        for finding in findings.iter().filter(own) {
            if finding.evidence.contains(&("plugs", Arg::Count(1))) {
                continue;
            }
            let until = finding.at + finding.lasted;
            let buses = drill.site().subpanels.iter();
            let buses: Vec<String> = buses.map(|s| format!("bus-{}", s.name)).collect();
            let on_bars = |m: &Moment| {
                let fed = |bus: &str| m.readings.point(bus).fed.generator;
                fed("bus") || buses.iter().any(|bus| fed(bus))
            };
            let moments = drill.trace().moments.windows(2);
            let within = moments.filter(|pair| pair[0].at >= finding.at && pair[1].at <= until);
            let fed = within.filter(|pair| on_bars(&pair[0]));
            let fed = fed.fold(DrillTime::ZERO, |all, pair| {
                all + pair[1].at.since(pair[0].at)
            });
            let joined = finding.evidence.contains(&("joined", Arg::Count(1)));
            let lasted = if joined { fed } else { finding.lasted };
            let lasted = Arg::lasting(lasted);
            assert!(finding.evidence.contains(&("lasted", lasted)), "{name}");
            let what = say(&explain(drill, finding).what);
            assert_eq!(what.contains("were joined"), joined, "{name}: {what}");
            assert!(joined || fed == DrillTime::ZERO, "{name}: {what}");
            seen.insert((joined, fed < finding.lasted));
        }
    }
    assert!(seen.contains(&(true, true)), "{seen:?}");
}

#[test]
fn two_live_sources_that_one_handle_kept_apart_are_told_as_two() {
    let mut seen = BTreeSet::new();
    for (name, drill, findings) in all() {
        let own = |f: &&Finding| f.rule == Rule::NoTransferEquipment;
        for finding in findings.iter().filter(own) {
            let told = explain(drill, finding);
            let Some(handles) = told.path.iter().find(|s| s.text.id == "stage-handles") else {
                continue;
            };
            let moment = &drill.trace().moments[finding.moment];
            let street = moment.readings.point("service").fed.utility;
            let said = say(&handles.text);
            if said.contains("Only") {
                assert_eq!(said.contains("street had power"), street, "{name}: {said}");
                seen.insert(street);
            }
        }
    }
    assert_eq!(seen.len(), 2, "{seen:?}");
}

#[test]
fn bare_metal_that_still_is_live_is_told_so_and_since_when() {
    let still = told("no-slide", "live-inlet-pins", Rule::LiveBlades);
    let what = say(&still.what);
    assert!(
        what.contains("since 0:10") && what.contains("They still are."),
        "{what}"
    );
    let over = told("inlet-surprise", "inlet-surprise-late", Rule::LiveBlades);
    assert!(!say(&over.what).contains("still"), "{}", say(&over.what));
}

#[test]
fn a_first_fault_without_a_bond_is_told_by_the_volts_to_earth_that_the_network_has() {
    let (drill, finding) = found("silent-frame", "silent-frame-holds", Rule::NothingBonds);
    let readings = &drill.trace().moments[finding.moment].readings;
    let case = readings.point("washer-frame");
    assert_eq!(finding.quantity("frame"), case.volts_to_earth);
    // The ground wires hold the case near earth: its volts to the neutral are those of the neutral to earth.
    assert!(case.volts_to_earth.unwrap() < 1.0);
    assert_eq!(finding.quantity("leg"), Some(case.volts));
    assert!(case.volts > 100.0);
    let said = stage(&explain(&drill, &finding), "stage-no-bond");
    assert!(said.contains("neutral is lifted"), "{said}");
    // What flows by the cord flows by the switch behind it, on either leg.
    for legs in [Readings::amps_of, Readings::less_of] {
        let [cord, switch] = ["inlet-cord", "essentials-transfer"].map(|n| legs(readings, n));
        assert!((cord - switch).abs() < 1e-3, "{cord} A and {switch} A");
    }
}
