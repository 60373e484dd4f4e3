//! Files with something wrong in them: each fault with its place, what stands there, and what to do; never a panic.

use std::fs;
use std::path::Path;

use outage_drill::file::{Diagnostic, Library, Source, read_actions};
use proptest::prelude::{ProptestConfig, prop, prop_assert, proptest};

use crate::playing::shipped;

pub(crate) const SITE: &str = include_str!("../../scenarios/sites/two-gables.ron");
pub(crate) const DRILL: &str = include_str!("../../scenarios/drills/no-slide.ron");

/// Loads a folder with these two files.
pub(crate) fn load(site: &str, drill: &str) -> (Library, Vec<Diagnostic>) {
    let folder = tempfile::tempdir().unwrap();
    for (kind, name, text) in [
        ("sites", "two-gables.ron", site),
        ("drills", "no-slide.ron", drill),
    ] {
        fs::create_dir_all(folder.path().join(kind)).unwrap();
        fs::write(folder.path().join(kind).join(name), text).unwrap();
    }
    Library::load(folder.path())
}

/// Line and column, from 1, of the first `what` at or after the first `after`.
fn place(text: &str, after: &str, what: &str) -> (usize, usize) {
    let from = text.find(after).unwrap_or_else(|| panic!("no {after}"));
    let at = from
        + text[from..]
            .find(what)
            .unwrap_or_else(|| panic!("no {what}"));
    let before = &text[..at];
    let line_start = before.rfind('\n').map_or(0, |i| i + 1);
    (
        before.matches('\n').count() + 1,
        before[line_start..].chars().count() + 1,
    )
}

pub(crate) struct Case {
    /// What is replaced.
    pub(crate) from: &'static str,
    /// By what.
    pub(crate) to: &'static str,
    /// The message that has to come.
    id: &'static str,
    /// After this text the fault stands.
    after: &'static str,
    /// The offending text.
    offending: &'static str,
    /// The hint that has to come with it.
    hint: Option<&'static str>,
}

pub(crate) const fn case(
    from: &'static str,
    to: &'static str,
    id: &'static str,
    after: &'static str,
    offending: &'static str,
    hint: Option<&'static str>,
) -> Case {
    Case {
        from,
        to,
        id,
        after,
        offending,
        hint,
    }
}

pub(crate) fn check(text: &str, case: &Case, faults: &[Diagnostic], file: &str) {
    let told = faults
        .iter()
        .map(|f| (&f.message.id, f.line, f.column, &f.text))
        .collect::<Vec<_>>();
    let found = faults.iter().find(|f| f.message.id == case.id);
    let found = found.unwrap_or_else(|| panic!("{}: {told:?}", case.to));
    assert!(found.file.ends_with(file), "{}: {}", case.to, found.file);
    let wanted = place(text, case.after, case.offending);
    assert_eq!((found.line, found.column), wanted, "{}: {told:?}", case.to);
    assert_eq!(found.text, case.offending, "{}", case.to);
    assert_eq!(
        found.hint.as_ref().map(|h| h.id.as_str()),
        case.hint,
        "{}",
        case.to
    );
    assert_eq!(
        faults.len(),
        1,
        "{}: one cause, one fault: {told:?}",
        case.to
    );
}

pub(crate) const NEAREST: Option<&str> = Some("error-hint-nearest");
pub(crate) const KNOWN: Option<&str> = Some("error-hint-known");

const SITE_CASES: &[Case] = &[
    case(
        "appliances: [",
        "neighbor_cord: (name: \"over-the-fence\", rated_watts: 1600.0, surge_watts: 2000.0, letters: \"SJTW\", gauge: \"12\", length_ft: 75.0),\n  appliances: [",
        "error-lent-house",
        "neighbor_cord",
        "\"over-the-fence\"",
        None,
    ),
    case(
        "from: \"pole-2\", to: \"pole-3\"",
        "from: \"pole-2\", to: \"pole-9\"",
        "error-unknown-name",
        "span-2",
        "\"pole-9\"",
        NEAREST,
    ),
    case(
        "breaks_at: \"span-2\"",
        "breaks_at: \"nowhere\"",
        "error-unknown-name",
        "breaks_at",
        "\"nowhere\"",
        KNOWN,
    ),
    case(
        "crew_at: \"pole-3\"",
        "crew_at: \"polle-3\"",
        "error-unknown-name",
        "crew_at",
        "\"polle-3\"",
        NEAREST,
    ),
    case(
        "circuit: \"sump\"",
        "circuit: \"cellar\"",
        "error-unknown-name",
        "(name: \"sump\", circuit",
        "\"cellar\"",
        KNOWN,
    ),
    case(
        "outlet: \"dryer\"",
        "outlet: \"drier\"",
        "error-unknown-name",
        "two-plug-cord",
        "\"drier\"",
        NEAREST,
    ),
    case(
        "gauge: \"14\", length_ft: 30.0",
        "gauge: \"41\", length_ft: 30.0",
        "error-gauge",
        "(name: \"furnace\"",
        "\"41\"",
        None,
    ),
    case(
        "(name: \"inlet\", gauge: \"10\"",
        "(name: \"inlet\", gauge: \"ten\"",
        "error-gauge",
        "(name: \"inlet\", gauge",
        "\"ten\"",
        None,
    ),
    case(
        "length_ft: 250.0",
        "length_ft: -250.0",
        "error-not-positive",
        "\"span-2\"",
        "length_ft",
        None,
    ),
    case(
        "drop_ft: 90.0",
        "drop_ft: 0.0",
        "error-not-positive",
        "service: (",
        "drop_ft",
        None,
    ),
    case(
        "drop_ft: 140.0",
        "drop_ft: -1.0",
        "error-not-positive",
        "\"neighbor-2\"",
        "drop_ft",
        None,
    ),
    case(
        "rated_watts: 7500.0",
        "rated_watts: -7500.0",
        "error-not-positive",
        "generator: (",
        "rated_watts",
        None,
    ),
    case(
        "code_letter: 'L'",
        "code_letter: 'I'",
        "error-code-letter",
        "\"sump\", circuit",
        "'",
        None,
    ),
    case(
        "on_level: 0.4, off_level: 0.1",
        "on_level: 0.4, off_level: 0.5",
        "error-store-levels",
        "\"sump\", circuit",
        "on_level",
        None,
    ),
    case(
        "letters: \"STW\"",
        "letters: \"XYZ\"",
        "error-cord-letters",
        "inlet-cord",
        "XYZ",
        None,
    ),
    case(
        "cubic_meters: 380.0",
        "cubic_meters: -380.0",
        "error-not-positive",
        "air: (",
        "cubic_meters",
        None,
    ),
    case(
        "version: 1",
        "version: 2",
        "error-version",
        "version",
        ":",
        None,
    ),
];

const DRILL_CASES: &[Case] = &[
    case(
        "start: {}",
        "predictions: [(name: \"a\", at: Before(\"mian\", \"off\"), about: Watts)], start: {}",
        "error-unknown-name",
        "predictions: [",
        "\"mian\"",
        NEAREST,
    ),
    case(
        "start: {}",
        "predictions: [(name: \"a\", at: Before(\"main\", \"of\"), about: Watts)], start: {}",
        "error-unknown-name",
        "predictions: [",
        "\"of\"",
        NEAREST,
    ),
    case(
        "start: {}",
        "predictions: [(name: \"a\", about: Volts(\"pole-9\"))], start: {}",
        "error-unknown-name",
        "predictions: [",
        "\"pole-9\"",
        NEAREST,
    ),
    case(
        "start: {}",
        "predictions: [(name: \"a\", about: Heat(\"extension-c\"))], start: {}",
        "error-unknown-name",
        "predictions: [",
        "\"extension-c\"",
        NEAREST,
    ),
    case(
        "site: \"two-gables\"",
        "site: \"two-gabels\"",
        "error-unknown-name",
        "site",
        "\"two-gabels\"",
        NEAREST,
    ),
    case(
        "\"extension-b\"]",
        "\"extension-c\"]",
        "error-unknown-name",
        "cords",
        "\"extension-c\"",
        NEAREST,
    ),
    case(
        "start: {}",
        "start: {\"mian\": \"off\"}",
        "error-unknown-name",
        "start: {",
        "\"mian\"",
        NEAREST,
    ),
    case(
        "start: {}",
        "start: {\"main\": \"sideways\"}",
        "error-unknown-name",
        "start: {",
        "\"sideways\"",
        KNOWN,
    ),
    case(
        "[\"fridge\", \"sump\"]",
        "[\"fridge\", \"freezer\"]",
        "error-unknown-name",
        "goal",
        "\"freezer\"",
        KNOWN,
    ),
    case(
        "\"main\": [\"on\"]",
        "\"main\": [\"onn\"]",
        "error-unknown-name",
        "at_end",
        "\"onn\"",
        NEAREST,
    ),
    case(
        "share: 0.5",
        "share: 1.5",
        "error-share",
        "share",
        "share",
        None,
    ),
    case(
        "minute: 30,",
        "minute: 7,",
        "error-story-order",
        "minute: 8",
        "minute: 7",
        None,
    ),
    case(
        "version: 1",
        "version: 9",
        "error-version",
        "version",
        ":",
        None,
    ),
];

#[test]
fn every_fault_of_a_site_file_is_told_once_with_its_place() {
    for case in SITE_CASES {
        assert!(SITE.contains(case.from), "{}", case.from);
        let text = SITE.replacen(case.from, case.to, 1);
        let (library, faults) = load(&text, DRILL);
        check(&text, case, &faults, "two-gables.ron");
        assert!(
            library.scenarios.is_empty(),
            "{}: a drill on a broken site",
            case.to
        );
    }
}

#[test]
fn every_fault_of_a_drill_file_is_told_once_with_its_place() {
    for case in DRILL_CASES {
        assert!(DRILL.contains(case.from), "{}", case.from);
        let text = DRILL.replacen(case.from, case.to, 1);
        let (library, faults) = load(SITE, &text);
        check(&text, case, &faults, "no-slide.ron");
        assert!(library.scenarios.is_empty(), "{}: a broken drill", case.to);
    }
}

/// Loads the site with these texts replaced, and gives the ids of the faults with the lines they stand in.
fn form_faults(changes: &[(&str, &str)]) -> Vec<(String, usize)> {
    let mut text = SITE.to_owned();
    for (from, to) in changes {
        assert!(text.contains(from), "{from}");
        text = text.replacen(from, to, 1);
    }
    let (library, faults) = load(&text, DRILL);
    assert!(library.scenarios.is_empty());
    for fault in &faults {
        let line = text.lines().nth(fault.line - 1).unwrap();
        assert_eq!(fault.shown, line, "{fault:?}");
        assert!(fault.column >= 1 && fault.column <= line.chars().count() + 1);
    }
    let told = faults.iter().map(|f| (f.message.id.clone(), f.line));
    told.collect()
}

/// The line in which `what` stands in the site.
fn line_of(what: &str) -> usize {
    place(SITE, what, what).0
}

#[test]
fn a_misspelt_field_is_both_unknown_and_missing_and_the_nearest_name_is_given() {
    let text = SITE.replacen("footing_ohm: 200.0", "footing_ohms: 200.0", 1);
    let (_, faults) = load(&text, DRILL);
    let ids: Vec<&str> = faults.iter().map(|f| f.message.id.as_str()).collect();
    assert_eq!(ids, ["error-unknown-field", "error-missing-field"]);
    assert_eq!(faults[0].text, "footing_ohms");
    let hint = faults[0].hint.as_ref().unwrap();
    assert_eq!(hint.id, "error-hint-nearest");
}

#[test]
fn ten_faults_of_form_are_told_in_one_pass_each_with_its_line() {
    let told = form_faults(&[
        ("version: 1", "version: one"),
        ("volts: 7200.0", "volts: \"high\""),
        ("source_r_ohm: 0.1", "source_r_ohm: 0.1, colour: 3"),
        ("kva: 25.0", "kva: big"),
        ("drop_ft: 90.0", "drop_foot: 90.0"),
        ("main_amps: 200", "main_amps: 70000"),
        ("leg: Leg1, slot: (1, 2)", "leg: Leg3, slot: (1, 2)"),
        (
            "circuit: \"fridge\", plug: Plug",
            "circuit: fridge, plug: Pulg",
        ),
        ("on_at_start: false", "on_at_start: no"),
    ]);
    let mut wanted = vec![
        ("error-expected-number", line_of("version: 1")),
        ("error-expected-number", line_of("volts: 7200.0")),
        ("error-unknown-field", line_of("source_r_ohm: 0.1")),
        ("error-expected-number", line_of("kva: 25.0")),
        ("error-unknown-field", line_of("drop_ft: 90.0")),
        ("error-missing-field", line_of("drop_ft: 90.0")),
        ("error-number-bounds", line_of("main_amps: 200")),
        ("error-unknown-choice", line_of("leg: Leg1, slot: (1, 2)")),
        (
            "error-expected-text",
            line_of("circuit: \"fridge\", plug: Plug"),
        ),
        (
            "error-unknown-choice",
            line_of("circuit: \"fridge\", plug: Plug"),
        ),
        ("error-expected-true-false", line_of("on_at_start: false")),
    ];
    wanted.sort_by_key(|(_, line)| *line);
    let told: Vec<(&str, usize)> = told.iter().map(|(id, line)| (id.as_str(), *line)).collect();
    assert_eq!(told, wanted);
}

#[test]
fn a_torn_file_is_told_once_where_it_ends() {
    let (_, faults) = load(&SITE[..SITE.len() / 2], DRILL);
    assert_eq!(faults.len(), 1, "{faults:?}");
    assert_eq!(faults[0].message.id, "error-syntax");
}

#[test]
fn a_folder_that_is_not_there_is_told_by_its_name() {
    let (library, faults) = Library::load(Path::new("/no/such/folder"));
    assert!(library.scenarios.is_empty());
    assert!(!faults.is_empty());
    for fault in faults {
        assert_eq!(
            (fault.message.id.as_str(), fault.line),
            ("error-unreadable", 0)
        );
        assert!(fault.file.starts_with("/no/such/folder"));
    }
}

#[test]
fn a_broken_site_does_not_hide_a_drill_that_names_no_site() {
    let broken = SITE.replacen("length_ft: 250.0", "length_ft: -250.0", 1);
    let elsewhere = DRILL.replacen("site: \"two-gables\"", "site: \"nowhere\"", 1);
    let (_, faults) = load(&broken, &elsewhere);
    let mut ids: Vec<&str> = faults.iter().map(|f| f.message.id.as_str()).collect();
    ids.sort_unstable();
    assert_eq!(ids, ["error-not-positive", "error-unknown-name"]);
}

#[test]
fn a_line_of_an_action_file_that_is_not_understood_is_told_with_its_place_and_what_is_near() {
    let scenario = shipped("no-slide");
    let cases = [
        ("set mian off", "mian", 5, NEAREST),
        ("set main offf", "offf", 10, NEAREST),
        ("set main tripped", "tripped", 10, KNOWN),
        ("look streat", "streat", 6, NEAREST),
        ("test buss", "buss", 6, NEAREST),
        ("call nobody", "nobody", 6, KNOWN),
        ("tell neighbor", "neighbor", 6, NEAREST),
        ("wait soon", "soon", 6, None),
        ("@later set main off", "@later", 1, None),
        ("jump", "jump", 1, KNOWN),
        ("main off now", "now", 10, None),
        ("set crew clear", "crew", 5, KNOWN),
    ];
    for (line, offending, column, hint) in cases {
        let text = format!("# a list\nlook street\n{line}\n");
        let source = Source {
            file: "a.actions",
            text: &text,
        };
        let faults = read_actions(source, &scenario).unwrap_err();
        assert_eq!(faults.len(), 1, "{line}: {faults:?}");
        let fault = &faults[0];
        assert_eq!(
            (fault.line, fault.column, fault.text.as_str()),
            (3, column, offending),
            "{line}"
        );
        assert_eq!(fault.message.id, "error-unknown-name", "{line}");
        let told = fault.hint.as_ref().map(|h| h.id.as_str());
        assert!(
            told == hint || hint.is_some() && told.is_some(),
            "{line}: {told:?}"
        );
    }
}

/// A text with a piece taken out and another put in, at a place counted round and round.
fn mangle(text: &str, at: usize, cut: usize, put: &str) -> String {
    let chars: Vec<char> = text.chars().collect();
    let from = at % chars.len();
    let until = (from + cut).min(chars.len());
    let (head, tail) = (&chars[..from], &chars[until..]);
    head.iter()
        .chain(&put.chars().collect::<Vec<_>>())
        .chain(tail)
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn no_mangled_file_is_a_panic_and_each_is_read_or_told(
        which in prop::bool::ANY,
        at in 0_usize..100_000,
        cut in 0_usize..60,
        put in "(|0|-1.0|1e999|NaN|inf|1e-300|1e300|\"\"|\"main\"|\\(|\\)|[|]|\\{|,|é|'|#|[a-z_:0-9. ]{1,12})",
    ) {
        let mangled = mangle(if which { SITE } else { DRILL }, at, cut, &put);
        let (site, drill) = if which { (mangled.as_str(), DRILL) } else { (SITE, mangled.as_str()) };
        let (library, faults) = load(site, drill);
        prop_assert!(!library.scenarios.is_empty() || !faults.is_empty());
        for scenario in &library.scenarios {
            if let Ok(mut drill) = outage_drill::drill::Drill::start(scenario, 1) {
                drill.advance(outage_drill::units::DrillTime::from_secs(90));
                drill.end();
            }
        }
    }

    #[test]
    fn a_number_that_is_none_is_never_let_through(index in 0_usize..200, put in "(-1.0|0.0|NaN|inf|-inf|1e-320|1e308)") {
        let numbers: Vec<(usize, usize)> = numbers_in(SITE);
        let (from, until) = numbers[index % numbers.len()];
        let text = format!("{}{put}{}", &SITE[..from], &SITE[until..]);
        let (library, faults) = load(&text, DRILL);
        prop_assert!(!library.scenarios.is_empty() || !faults.is_empty());
        for scenario in &library.scenarios {
            if let Ok(mut drill) = outage_drill::drill::Drill::start(scenario, 1) {
                drill.advance(outage_drill::units::DrillTime::from_secs(90));
                drill.end();
            }
        }
    }
}

/// Where the numbers with a point stand.
fn numbers_in(text: &str) -> Vec<(usize, usize)> {
    let mut found = Vec::new();
    let mut from = 0;
    while let Some(offset) = text[from..].find(|c: char| c.is_ascii_digit()) {
        let start = from + offset;
        let length = text[start..]
            .find(|c: char| !c.is_ascii_digit() && c != '.')
            .unwrap_or(0);
        if text[start..start + length].contains('.') {
            found.push((start, start + length));
        }
        from = start + length.max(1);
    }
    found
}
