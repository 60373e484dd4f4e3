//! Advice follows what a run came to: nothing that hurts, and no two orders that speak against each other.
//!
//! Laws over all lists of `tests/drills`, and for each kind of advice the lists that once got the advice of another cause.

use outage_drill::drill::{Drill, Event, LineEvent};
use outage_drill::explain::{Explanation, explain};
use outage_drill::marking::{Finding, Rule, pressing};
use outage_drill::site::Cord;
use outage_drill::units::DrillTime;
use outage_drill::words::{Arg, Message, OFFERED, REFERENCE, Words};

use crate::explained::{self, found};
use crate::playing::Played;

pub(crate) fn say(message: &Message) -> String {
    Words::new(REFERENCE).say(message)
}

pub(crate) fn told(drill: &str, actions: &str, rule: Rule) -> Explanation {
    let (drill, finding) = found(drill, actions, rule);
    explain(&drill, &finding)
}

/// What each list came to: its file, the drill at its end, its findings.
pub(crate) fn all() -> impl Iterator<Item = (&'static str, &'static Drill, &'static [Finding])> {
    explained::all().iter().map(|e| {
        let Played { drill, verdict } = &e.played;
        (e.file.as_str(), drill, verdict.findings.as_slice())
    })
}

/// What one list came to.
pub(crate) fn one(actions: &str) -> (&'static Drill, &'static [Finding]) {
    let mut lists = all().filter(|(name, ..)| name.contains(&format!("{actions}.")));
    let (_, drill, findings) = lists.next().unwrap();
    (drill, findings)
}

/// The word in a piece of evidence.
pub(crate) fn word<'a>(finding: &'a Finding, name: &str) -> Option<&'a str> {
    let (_, arg) = finding.evidence.iter().find(|(own, _)| *own == name)?;
    match arg {
        Arg::Verbatim(word) => Some(word),
        Arg::Said(message) => Some(message.id.as_str()),
        Arg::Quantity(..) | Arg::Range(..) | Arg::Count(_) | Arg::Clock(_) => None,
    }
}

#[test]
fn after_somebody_is_hurt_or_something_burns_no_handle_is_asked_for() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        if !findings.iter().any(|f| f.breach && f.rule.harms()) {
            continue;
        }
        for left in findings {
            assert_ne!(left.rule, Rule::NotBack, "{name}");
            if left.rule == Rule::NotRestored {
                assert_eq!(word(left, "control"), None, "{name}");
                seen += 1;
            }
        }
        let end = findings.first().map(|f| f.rule);
        let asked = pressing(drill.site(), drill.trace(), findings);
        assert!(
            asked.is_some() || end == Some(Rule::Touch),
            "{name}: no help is called"
        );
    }
    assert!(seen > 5, "{seen}");
}

#[test]
fn what_was_left_undone_takes_power_away_before_it_brings_any_back() {
    let takes = [
        "name-off",
        "name-stopped",
        "name-stowed",
        "name-line-off",
        "name-clear",
    ];
    let brings = [
        "name-on",
        "name-running",
        "name-line-closed",
        "name-closed",
        "name-utility",
    ];
    let mut seen = 0;
    for (name, _, findings) in all() {
        let left = findings.iter().filter(|f| f.rule == Rule::NotRestored);
        let wanted: Vec<&str> = left.filter_map(|f| word(f, "wanted")).collect();
        let first = wanted.iter().position(|w| brings.contains(w));
        let last = wanted.iter().rposition(|w| takes.contains(w));
        if let (Some(first), Some(last)) = (first, last) {
            assert!(last < first, "{name}: {wanted:?}");
            seen += 1;
        }
    }
    assert!(seen > 3, "{seen}");
}

#[test]
fn a_load_that_the_utility_feeds_is_never_told_to_ask_less_of_the_generator() {
    for (name, drill, findings) in all() {
        for starved in findings.iter().filter(|f| f.rule == Rule::Starved) {
            let moment = &drill.trace().moments[starved.moment];
            let own = word(starved, "cause");
            let fed = drill.site().appliances.iter().enumerate().find(|(_, a)| {
                word(starved, "appliance") == Some(format!("name-{}", a.name).as_str())
            });
            let (index, _) = fed.unwrap_or_else(|| panic!("{name}: {starved:?}"));
            if !moment.readings.appliance(index).fed.customer() {
                let words = ["neutral", "halved", "start"];
                assert!(
                    own.is_some_and(|w| words.contains(&w)),
                    "{name}: {starved:?}"
                );
            }
        }
    }
    let (drill, findings) = one("slide-back-all-at-once");
    let starved = findings.iter().filter(|f| f.rule == Rule::Starved);
    for told in starved.map(|f| explain(drill, f)) {
        assert!(say(&told.what).contains("neutral"), "{}", say(&told.what));
        assert!(!say(&told.instead).contains("Run less"));
    }
}

#[test]
fn an_order_that_works_counts_the_pump_that_starts_by_itself() {
    let told = told(
        "shed-for-the-set",
        "shed-for-the-set-all-on",
        Rule::Overload,
    );
    let left_off: Vec<String> = told
        .path
        .iter()
        .map(|s| say(&s.text))
        .filter(|s| s.starts_with("Leave this off"))
        .collect();
    for load in ["dryer", "heat strips"] {
        assert!(left_off.iter().any(|s| s.contains(load)), "{left_off:?}");
    }
    let ordered = told.path.iter().map(|s| say(&s.text));
    let ordered: Vec<String> = ordered.filter(|s| s.starts_with("An order")).collect();
    assert!(
        ordered.iter().any(|s| s.contains("well pump")),
        "{ordered:?}"
    );
}

#[test]
fn one_order_is_given_for_how_things_stand_and_not_one_for_each_case() {
    for (drill, actions, rule, wanted) in [
        (
            "one-plug-two-ends",
            "one-plug-two-ends-kept",
            Rule::NoTransferEquipment,
            "Leave the main breaker off",
        ),
        (
            "inlet-surprise",
            "inlet-surprise-left",
            Rule::LiveBlades,
            "Turn the generator breaker in the panel off",
        ),
        (
            "no-slide",
            "live-inlet-pins",
            Rule::LiveBlades,
            "Turn the generator breaker in the panel off",
        ),
    ] {
        let told = told(drill, actions, rule);
        let now = say(&told.now);
        assert!(now.contains(wanted), "{actions}: {now}");
    }
    for offered in OFFERED {
        let words = Words::new(offered.tag);
        for (name, drill, findings) in all() {
            for finding in findings {
                let now = words.say(&explain(drill, finding).now);
                for branch in ["If the utility", "If not", "Si la red", "Si no "] {
                    assert!(!now.contains(branch), "{name}: {now}");
                }
            }
        }
    }
}

#[test]
fn insulation_is_called_worn_only_where_some_is() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for touch in findings.iter().filter(|f| f.rule == Rule::Touch) {
            let leaks = drill.site().appliances.iter().any(|a| a.leak_ohm.is_some());
            if word(touch, "cause") == Some("worn") {
                assert!(leaks, "{name}");
                seen += 1;
            }
        }
    }
    assert!(seen > 0);
    let lifted = told("tingle", "tingle-lifted-live", Rule::Touch);
    let instead = say(&lifted.instead);
    assert!(
        instead.starts_with("Turn the output breaker on the generator off"),
        "{instead}"
    );
    let wet = told("tingle", "tingle-lifted-live", Rule::CordUnfit);
    assert!(say(&wet.instead).contains("lift the joint out of the water"));
}

#[test]
fn a_ruined_cord_is_thrown_away_and_a_cord_that_is_named_lies_there() {
    for (drill, actions) in [
        ("right-cord", "right-cord-crushed"),
        ("right-cord", "right-cord-lamp-cord"),
        ("coil-in-the-corner", "coil-in-the-corner-left"),
    ] {
        let told = told(drill, actions, Rule::CordHot);
        assert!(
            say(&told.instead).starts_with("Throw this cord away"),
            "{actions}"
        );
        assert!(say(&told.now).contains("throw it away"), "{actions}");
    }
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for finding in findings {
            if let Some(fit) = word(finding, "fit") {
                let own = |c: &&Cord| format!("name-{}", c.name) == fit;
                let cord = drill.site().cords.iter().find(own);
                let cord = cord.unwrap_or_else(|| panic!("{name}: {fit}"));
                assert!(cord.grounded && cord.make.kind().outdoor, "{name}: {fit}");
                seen += 1;
            }
        }
    }
    assert!(seen > 1, "{seen}");
}

#[test]
fn the_place_that_is_advised_is_one_of_the_house_s_and_far_enough() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for near in findings.iter().filter(|f| f.rule == Rule::TooNear) {
            let place = word(near, "place").unwrap();
            let own = drill.site().generator.places.iter();
            let mut own = own.filter(|p| format!("name-{}", p.name) == place);
            assert!(own.any(|p| p.opening_ft >= 20.0), "{name}: {place}");
            seen += 1;
        }
    }
    assert!(seen > 1, "{seen}");
}

#[test]
fn who_mends_a_line_into_welded_contacts_is_told_of_the_break_and_of_no_closing() {
    let told = told("visible-break", "visible-break-one-word", Rule::GroundsLeft);
    let instead = say(&told.instead);
    assert!(
        instead.contains("before you mend") && !instead.contains("Close"),
        "{instead}"
    );
    let (drill, findings) = one("visible-break-one-word");
    let left = findings.iter().filter(|f| f.rule == Rule::NotRestored);
    let said: Vec<String> = left.map(|f| say(&explain(drill, f).what)).collect();
    assert!(said.iter().any(|s| s.contains("welded")), "{said:?}");
    assert!(
        !said.iter().any(|s| s.contains("should be: closed")),
        "{said:?}"
    );
}

#[test]
fn who_asked_for_too_much_is_told_the_load_that_did_and_no_other() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for over in findings.iter().filter(|f| f.rule == Rule::Overload) {
            if word(over, "cause") != Some("load") {
                continue;
            }
            let told = explain(drill, over);
            let loads: Vec<String> = told.path.iter().map(|s| format!("name-{}", s.at)).collect();
            let most = word(over, "most").unwrap();
            let short = told.path.iter().any(|s| s.text.id == "stage-cord-short");
            assert!(
                short || loads.iter().any(|l| l == most),
                "{name}: {most} in {loads:?}"
            );
            seen += 1;
        }
    }
    assert!(seen > 3, "{seen}");
    for (drill, actions, wanted) in [
        ("hall-night", "hall-night-third-urn", "coffee urn C"),
        (
            "compressor-greed",
            "compressor-greed-again-and-again",
            "compressor",
        ),
        ("ready-panel", "ready-panel-branches-on", "compressor"),
        ("no-slide", "deadly-main-left-on", "whole street"),
    ] {
        let instead = say(&told(drill, actions, Rule::Overload).instead);
        assert!(instead.contains(wanted), "{actions}: {instead}");
        assert!(!instead.contains("dryer"), "{actions}: {instead}");
    }
}

#[test]
fn a_breaker_that_one_side_alone_opened_is_told_with_what_hangs_there() {
    let tripped = told("first-transfer", "first-transfer-heavy-leg", Rule::Tripped);
    let side = tripped
        .path
        .iter()
        .position(|s| s.text.id == "stage-one-side");
    let behind = &tripped.path[..side.unwrap()];
    for load in ["microwave", "space-heater", "insulin-fridge"] {
        assert!(behind.iter().any(|s| s.at == load), "{load} in {behind:?}");
    }
    assert!(!behind.iter().any(|s| s.at == "furnace"), "{behind:?}");
    assert!(say(&tripped.instead).contains("each side"));
    let urn = told("hall-night", "hall-night-third-urn", Rule::Tripped);
    let left = urn.path.iter().find(|s| s.text.id == "stage-leave-through");
    let left = say(&left.unwrap().text);
    assert!(
        left.contains("output breaker"),
        "the one that opened: {left}"
    );
}

#[test]
fn a_slide_that_holds_nothing_is_named_and_is_to_be_mended() {
    for (drill, actions) in [
        ("loose-slide", "loose-relied"),
        ("cover-off-tour", "cover-off-tour-relied"),
        ("cover-off-tour", "cover-off-tour-main-first"),
    ] {
        let told = told(drill, actions, Rule::NoTransferEquipment);
        let instead = say(&told.instead);
        assert!(
            instead.contains("slide") && instead.contains("replace"),
            "{instead}"
        );
        let end = told.path.last().map(|s| say(&s.text)).unwrap();
        assert!(!end.contains("no slide"), "{actions}: {end}");
    }
}

#[test]
fn what_is_unfit_of_a_cord_is_a_stage_and_one_lasting_state_is_told_once() {
    let frayed = told(
        "cords-only-night",
        "cords-only-night-frayed",
        Rule::CordUnfit,
    );
    let end = frayed.path.last().map(|s| say(&s.text)).unwrap();
    assert!(end.contains("strands"), "{end}");
    let bare = told("tingle", "tingle-no-pin", Rule::CordUnfit);
    assert!(
        say(&bare.what).contains("ground pin"),
        "{}",
        say(&bare.what)
    );
    assert!(!say(&bare.what).contains("lamp"), "{}", say(&bare.what));
    for actions in ["right-cord-long", "right-cord-lamp-cord"] {
        let (drill, findings) = one(actions);
        let starved: Vec<&Finding> = findings
            .iter()
            .filter(|f| f.rule == Rule::Starved)
            .collect();
        assert_eq!(starved.len(), 1, "{actions}");
        let source = say(&explain(drill, starved[0]).source);
        assert!(!source.contains("Torque"), "a heater has none: {source}");
    }
}

#[test]
fn a_machine_on_half_its_volts_is_told_by_whose_cord_and_how_often_it_was_tried() {
    let told = told("neighbor-helps", "neighbor-helps-half-volts", Rule::Starved);
    let ids: Vec<&str> = told.path.iter().map(|s| s.text.id.as_str()).collect();
    for id in ["stage-half-plug", "stage-half-tries"] {
        assert!(ids.contains(&id), "{ids:?}");
    }
    assert!(say(&told.instead).contains("leave it unplugged"));
}

#[test]
fn welded_contacts_that_cannot_open_on_a_fault_are_seen_in_the_run() {
    let (drill, findings) = one("visible-break-one-word");
    let seen = drill.trace().events();
    let seen = seen.filter(|(_, e)| matches!(e, Event::Line(LineEvent::CannotOpen { .. })));
    assert_eq!(seen.count(), 1, "once, and not at each deed");
    let fed = findings
        .iter()
        .find(|f| f.rule == Rule::GroundsLeft)
        .unwrap();
    assert!(fed.lasted > DrillTime::ZERO, "nothing opened it");
    let now = say(&explain(drill, fed).now);
    assert!(
        now.starts_with("Stay away"),
        "the line is still live: {now}"
    );
}

#[test]
fn whoever_still_breathes_gas_at_the_end_is_told_to_get_out() {
    for actions in ["window-cord-near", "window-cord-open"] {
        let (drill, findings) = one(actions);
        let inside = drill.site().n_inside(drill.positions());
        assert!(inside > 0, "{actions}");
        let asked = pressing(drill.site(), drill.trace(), findings).unwrap();
        let now = say(&explain(drill, &findings[asked]).now);
        assert!(now.starts_with("Get everyone out"), "{actions}: {now}");
    }
}

#[test]
fn a_danger_that_stands_at_the_end_has_its_order_now() {
    for (actions, rule, wanted) in [
        (
            "standby-service-hands-in",
            Rule::CaughtByEngine,
            "switch the controller off, from outside",
        ),
        (
            "wrong-breaker-dryer",
            Rule::WireHot,
            "generator off and stop the engine. Then feel the wall",
        ),
        (
            "half-the-house-sum",
            Rule::WireHot,
            "generator off and stop the engine. Then feel the wall",
        ),
        (
            "slide-back-all-at-once",
            Rule::WrongVolts,
            "Turn the main breaker off",
        ),
        ("tingle-lifted-live", Rule::Touch, "see a doctor"),
        (
            "cover-off-tour-main-first",
            Rule::Collision,
            "Turn the generator breaker in the panel off",
        ),
    ] {
        let (drill, findings) = one(actions);
        let asked = pressing(drill.site(), drill.trace(), findings);
        let asked = asked.unwrap_or_else(|| panic!("{actions}: nothing now"));
        let finding = &findings[asked];
        assert_eq!(finding.rule, rule, "{actions}");
        let now = say(&explain(drill, finding).now);
        assert!(now.contains(wanted), "{actions}: {now}");
    }
    for actions in ["slide-back-all-at-once", "standby-service-hands-in"] {
        let (_, findings) = one(actions);
        let named = findings.iter().filter_map(|f| word(f, "control"));
        assert_eq!(named.count(), 0, "{actions}: a handle is asked for");
    }
}

#[test]
fn an_engine_is_rid_of_its_load_before_it_is_stopped() {
    let (_, findings) = one("one-plug-two-ends-kept");
    let left = findings.iter().filter(|f| f.rule == Rule::NotRestored);
    let wanted: Vec<&str> = left.filter_map(|f| word(f, "wanted")).collect();
    assert!(
        wanted.starts_with(&["name-off", "name-stopped", "name-stowed"]),
        "{wanted:?}"
    );
}
