//! Files with faults of form and of meaning: both are told in one pass, and nothing that only comes of what stands in for a fault of form.

use crate::wrong_files::{DRILL, SITE, load};

/// A text with these replaced, and the ids of what is then told of the file with it, with the offending texts; each place is held to the text.
fn mixed(is_site: bool, changes: &[(&str, &str)]) -> Vec<(String, String)> {
    let mut text = if is_site { SITE } else { DRILL }.to_owned();
    for (from, to) in changes {
        assert!(text.contains(from), "{from}");
        text = text.replacen(from, to, 1);
    }
    let (library, faults) = if is_site {
        load(&text, DRILL)
    } else {
        load(SITE, &text)
    };
    assert!(library.scenarios.is_empty());
    let told = faults.into_iter().map(|fault| {
        let line = text.lines().nth(fault.line - 1).unwrap();
        let there: String = line.chars().skip(fault.column - 1).collect();
        assert!(there.starts_with(&fault.text), "{fault:?}");
        (fault.message.id, fault.text)
    });
    told.collect()
}

/// Holds what is told of a changed file to these ids and offending texts, in any order.
fn assert_told(is_site: bool, changes: &[(&str, &str)], wanted: &[(&str, &str)]) {
    let mut told = mixed(is_site, changes);
    told.sort();
    let plain = |(id, text): &(&str, &str)| ((*id).to_owned(), (*text).to_owned());
    let mut wanted: Vec<(String, String)> = wanted.iter().map(plain).collect();
    wanted.sort();
    assert_eq!(told, wanted, "{changes:?}");
}

#[test]
fn faults_of_form_and_of_meaning_are_told_of_a_drill_in_one_pass() {
    assert_told(
        false,
        &[
            ("level:", "levle:"),
            ("share: 0.5", "share: half"),
            ("start: {}", "start: {\"mian\": \"off\"}"),
            ("[\"fridge\", \"sump\"]", "[\"fridge\", \"freezer\"]"),
            ("minute: 30,", "minute: 7,"),
        ],
        &[
            ("error-unknown-field", "levle"),
            ("error-missing-field", ""),
            ("error-expected-number", "half"),
            ("error-unknown-name", "\"mian\""),
            ("error-unknown-name", "\"freezer\""),
            ("error-story-order", "minute: 7"),
        ],
    );
    assert_told(
        false,
        &[
            ("share: 0.5", "share: \"half\""),
            ("site: \"two-gables\"", "site: \"two-gabels\""),
            ("minute: 30,", "minute: 7,"),
        ],
        &[
            ("error-expected-number", "\"half\""),
            ("error-unknown-name", "\"two-gabels\""),
            ("error-story-order", "minute: 7"),
        ],
    );
}

#[test]
fn faults_of_form_and_of_meaning_are_told_of_a_site_in_one_pass() {
    assert_told(
        true,
        &[
            ("kva: 25.0", "kva: big"),
            ("leg: Leg1, slot: (1, 2)", "leg: Leg3, slot: (1, 2)"),
            ("breaks_at: \"span-2\"", "breaks_at: \"nowhere\""),
            ("length_ft: 250.0", "length_ft: -250.0"),
            ("circuit: \"sump\"", "circuit: \"cellar\""),
        ],
        &[
            ("error-expected-number", "big"),
            ("error-unknown-choice", "Leg3"),
            ("error-unknown-name", "\"nowhere\""),
            ("error-not-positive", "length_ft"),
            ("error-unknown-name", "\"cellar\""),
        ],
    );
}

#[test]
fn nothing_is_told_that_hangs_on_what_stands_in_for_a_fault_of_form() {
    let lists: [(bool, &[(&str, &str)], &str); 8] = [
        (
            false,
            &[("cords: [", "cords: 3, // [")],
            "error-expected-list",
        ),
        (
            false,
            &[("tracks: [", "tracks: 3, // [")],
            "error-expected-list",
        ),
        (
            false,
            &[("minute: 30,", "minute: late,")],
            "error-expected-number",
        ),
        (false, &[("level: ", "level: x")], "error-expected-number"),
        (
            true,
            &[("length_ft: 250.0", "length_ft: far")],
            "error-expected-number",
        ),
        (
            true,
            &[(
                "on_level: 0.4, off_level: 0.1",
                "on_level: low, off_level: 0.1",
            )],
            "error-expected-number",
        ),
        (
            true,
            &[("name: \"pole-3\"", "name: pole-3")],
            "error-expected-text",
        ),
        (
            true,
            &[(
                "gauge: \"14\", length_ft: 30.0",
                "gauge: 14, length_ft: 30.0",
            )],
            "error-expected-text",
        ),
    ];
    for (is_site, changes, id) in lists {
        let told = mixed(is_site, changes);
        let ids: Vec<&str> = told.iter().map(|(id, _)| id.as_str()).collect();
        assert_eq!(ids, [id], "{changes:?}");
    }
}
