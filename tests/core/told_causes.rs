//! What is told of a mistake names its own cause, in an order that helps, and with numbers of one moment.

use outage_drill::explain::{Explanation, explain};
use outage_drill::marking::Rule;
use outage_drill::words::{Message, REFERENCE, Words};

use crate::explained::found;

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
        let instead = say(&told.instead);
        assert!(instead.contains("shorter cord"), "{actions}: {instead}");
        assert!(!say(&told.now).contains("generator"), "{actions}");
    }
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
        does.contains("13\u{a0}A") && does.contains("not too thin"),
        "{does}"
    );
    assert!(say(&coiled.instead).starts_with("Lay the cord out flat"));
    let thin = told("right-cord", "right-cord-lamp-cord", Rule::CordHot);
    let does = stage(&thin, "stage-cord-does");
    assert!(
        does.contains("10\u{a0}A") && does.contains("too little"),
        "{does}"
    );
    assert!(say(&thin.instead).contains("16 AWG"));
}

#[test]
fn wires_that_have_met_are_told_as_a_short_circuit_and_not_as_a_load() {
    let burnt = told("right-cord", "right-cord-lamp-cord-coiled", Rule::Overload);
    assert_eq!(ids(&burnt), ["stage-cord-short", "stage-asked"]);
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
