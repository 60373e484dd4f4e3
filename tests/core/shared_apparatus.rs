//! Apparatus that sites share: taken up by name, told at its own place when it is wrong, read again when it is changed.

use std::fs;
use std::path::Path;

use outage_drill::file::{Diagnostic, Library, Watched};
use outage_drill::session::{Command, Practice, Session};

use crate::terminal::drill;
use crate::wrong_files::{DRILL, SITE};

/// What two-gables has as fields of its own, as pieces.
const SHARED: &str = r#"(
  version: 1,
  generators: [
    (name: "plain-set", warm_up_seconds: 60.0, cool_down_seconds: 120.0 // no comma after this
    ),
    (name: "yard-set", like: "plain-set", rated_watts: 7500.0, surge_watts: 9400.0, output_breaker_amps: 30, tank_gallons: 1.0),
  ],
  cords: [
    (name: "house-cord", letters: "SJTW", gauge: "10", length_ft: 99.0, leg: Leg1, house_end: Connector),
  ],
)
"#;

/// What is written out in the site, and what stands there where it is taken up.
const TAKEN: [[&str; 2]; 2] = [
    [
        "rated_watts: 7500.0,\n    surge_watts: 9400.0,\n    output_breaker_amps: 30,\n    tank_gallons: 6.0,\n    warm_up_seconds: 60.0,\n    cool_down_seconds: 120.0,",
        "like: \"yard-set\", tank_gallons: 6.0,",
    ],
    [
        "\"extension-a\", letters: \"SJTW\", gauge: \"12\", length_ft: 50.0, leg: Leg1, house_end: Connector)",
        "\"extension-a\", gauge: \"12\", length_ft: 50.0, like: \"house-cord\")",
    ],
];

fn site() -> String {
    TAKEN.iter().fold(SITE.to_owned(), |text, [from, to]| {
        assert!(text.contains(from), "{from}");
        text.replacen(from, to, 1)
    })
}

/// A folder with this site and this shared apparatus.
fn folder(site: &str, shared: Option<&str>) -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    let files = [
        ("sites/two-gables.ron", Some(site)),
        ("drills/no-slide.ron", Some(DRILL)),
        ("apparatus/shared.ron", shared),
    ];
    for (name, text) in files {
        let path = folder.path().join(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        if let Some(text) = text {
            fs::write(path, text).unwrap();
        }
    }
    fs::create_dir_all(folder.path().join("words")).unwrap();
    folder
}

fn load(site: &str, shared: Option<&str>) -> (Library, Vec<Diagnostic>) {
    Library::load(folder(site, shared).path())
}

/// The faults of a site and shared apparatus in which one text is replaced, as file, line, offending text, message and hint.
fn faults(from: &str, to: &str) -> Vec<(String, String, String, String, Option<String>)> {
    let (own, shared) = (site(), SHARED);
    assert!(own.contains(from) != shared.contains(from), "{from}");
    let (library, faults) = load(
        &own.replacen(from, to, 1),
        Some(&shared.replacen(from, to, 1)),
    );
    assert!(library.scenarios.is_empty(), "a drill on a broken site");
    let told = faults.into_iter().map(|f| {
        let file = Path::new(&f.file).file_name().unwrap().to_str().unwrap();
        let text = if file == "shared.ron" {
            shared.replacen(from, to, 1)
        } else {
            own.replacen(from, to, 1)
        };
        let line = text.lines().nth(f.line - 1).unwrap();
        assert_eq!(f.shown, line, "{f:?}");
        let at = line
            .char_indices()
            .nth(f.column - 1)
            .map_or(line.len(), |(i, _)| i);
        assert!(line[at..].starts_with(&f.text), "{f:?}");
        let hint = f.hint.map(|h| h.id);
        (
            file.to_owned(),
            f.line.to_string(),
            f.text,
            f.message.id,
            hint,
        )
    });
    told.collect()
}

fn assert_told(from: &str, to: &str, wanted: &[[&str; 4]]) {
    let told = faults(from, to);
    let told: Vec<_> = told
        .iter()
        .map(|(file, _, text, id, hint)| {
            let hint = hint.as_deref().unwrap_or_default();
            [file.as_str(), text.as_str(), id.as_str(), hint]
        })
        .collect();
    assert_eq!(told, wanted, "{from} -> {to}");
}

const NEAREST: &str = "error-hint-nearest";

#[test]
fn a_site_that_takes_up_shared_apparatus_is_the_one_with_all_written_out() {
    let (plain, none) = load(SITE, None);
    let (shared, also_none) = load(&site(), Some(SHARED));
    assert_eq!((none.as_slice(), also_none.as_slice()), (&[][..], &[][..]));
    let [plain, shared] = [&plain, &shared].map(|l| &l.scenario("no-slide").unwrap().site);
    assert_eq!(plain, shared);
    let names: Vec<&str> = plain.cords.iter().map(|c| c.name.as_str()).collect();
    assert!(names.contains(&"extension-a"), "{names:?}");
}

#[test]
fn a_name_that_is_not_there_is_told_once_in_the_file_that_says_it_with_the_nearest() {
    let site = "two-gables.ron";
    let unknown = "error-unknown-name";
    assert_told(
        "like: \"yard-set\"",
        "like: \"yard-sets\"",
        &[[site, "\"yard-sets\"", unknown, NEAREST]],
    );
    assert_told(
        "like: \"house-cord\"",
        "like: \"hause-cord\"",
        &[[site, "\"hause-cord\"", unknown, NEAREST]],
    );
    // A generator is no cord, whatever its name.
    assert_told(
        "like: \"house-cord\"",
        "like: \"yard-set\"",
        &[[site, "\"yard-set\"", unknown, "error-hint-known"]],
    );
    assert_told(
        "like: \"plain-set\"",
        "like: \"plane-set\"",
        &[["shared.ron", "\"plane-set\"", unknown, NEAREST]],
    );
}

#[test]
fn a_part_that_takes_up_what_is_not_there_does_not_hide_other_faults() {
    let (own, from) = (site(), "breaks_at: \"span-2\"");
    assert!(own.contains(from));
    let own = own.replacen("like: \"yard-set\"", "like: \"no-such-thing\"", 1);
    let own = own.replacen(from, "breaks_at: \"span-9\"", 1);
    let (_, faults) = load(&own, Some(SHARED));
    let told: Vec<_> = faults.iter().map(|f| f.text.as_str()).collect();
    assert_eq!(told, ["\"span-9\"", "\"no-such-thing\""]);
    // Without any shared file it says where to write one.
    let (_, faults) = load(&site(), None);
    let told: Vec<_> = faults
        .iter()
        .map(|f| (f.text.as_str(), f.hint.as_ref().unwrap().id.as_str()))
        .collect();
    let none = "error-hint-apparatus";
    assert_eq!(told, [("\"yard-set\"", none), ("\"house-cord\"", none)]);
}

#[test]
fn what_leads_back_to_itself_is_told_once_and_nothing_hangs_on_it() {
    assert_told(
        "(name: \"plain-set\",",
        "(name: \"plain-set\", like: \"yard-set\",",
        &[["shared.ron", "\"yard-set\"", "error-like-circle", ""]],
    );
    assert_told(
        "like: \"plain-set\"",
        "like: \"yard-set\"",
        &[["shared.ron", "\"yard-set\"", "error-like-circle", ""]],
    );
}

#[test]
fn a_fault_of_a_piece_is_told_once_at_its_own_place_however_many_take_it_up() {
    let shared = "shared.ron";
    assert_told(
        "surge_watts: 9400.0",
        "serge_watts: 9400.0",
        &[[shared, "serge_watts", "error-unknown-field", NEAREST]],
    );
    assert_told(
        "gauge: \"10\", length_ft: 99.0",
        "gauge: 10, length_ft: 99.0",
        &[[shared, "10", "error-expected-text", ""]],
    );
    assert_told(
        "letters: \"SJTW\", gauge: \"10\", length_ft: 99.0",
        "letters: \"SJTV\", gauge: \"10\", length_ft: 99.0",
        &[[shared, "SJTV", "error-cord-letters", ""]],
    );
    assert_told(
        "surge_watts: 9400.0",
        "surge_watts: -1.0",
        &[[shared, "surge_watts", "error-not-positive", ""]],
    );
    assert_told(
        "(name: \"yard-set\"",
        "(name: \"plain-set\"",
        &[
            [shared, "\"plain-set\"", "error-name-twice", ""],
            [
                "two-gables.ron",
                "\"yard-set\"",
                "error-unknown-name",
                NEAREST,
            ],
        ],
    );
    assert_told(
        "version: 1,\n  generators",
        "version: 7,\n  generators",
        &[[shared, ":", "error-version", ""]],
    );
    // Two sites that take up the same wrong piece.
    let wrong = SHARED.replacen("surge_watts: 9400.0", "surge_watts: -1.0", 1);
    let folder = folder(&site(), Some(&wrong));
    let second = site().replacen("name: \"two-gables\"", "name: \"three-gables\"", 1);
    fs::write(folder.path().join("sites/three-gables.ron"), second).unwrap();
    assert_eq!(Library::load(folder.path()).1.len(), 1);
}

#[test]
fn what_no_piece_and_no_site_says_is_missing_in_the_site() {
    assert_told(
        "rated_watts: 7500.0, ",
        "",
        &[["two-gables.ron", "", "error-missing-field", ""]],
    );
    // Other parts take up nothing.
    assert_told(
        "panel: (",
        "panel: (like: \"house-cord\", ",
        &[[
            "two-gables.ron",
            "like",
            "error-unknown-field",
            "error-hint-known",
        ]],
    );
}

#[test]
fn every_shipped_piece_is_taken_up_by_a_home_or_by_another_piece() {
    assert_eq!(Library::shipped().0.unused_pieces, []);
    assert_eq!(load(&site(), Some(SHARED)).0.unused_pieces, []);
}

#[test]
fn a_piece_that_no_home_takes_up_is_named_because_only_its_form_was_checked() {
    // No cord has such a gauge; as long as nobody takes it up, all that is said is that nobody looked.
    let wrong = "(name: \"other-cord\", gauge: \"99\", like: \"house-cord\"),";
    let more = format!("{wrong}\n    (name: \"house-cord\"");
    let shared = SHARED.replacen("(name: \"house-cord\"", &more, 1);
    let own = folder(&site(), Some(&shared));
    let answered = drill(&["check", "--as-written", own.path().to_str().unwrap()]);
    let said = "No home takes up “other-cord”. Only its form was checked";
    assert!(answered.err.contains(said), "{}", answered.err);
    assert!(
        answered.err.contains("shared.ron:9:12:"),
        "{}",
        answered.err
    );
    let (library, faults) = load(&site(), Some(&shared));
    assert_eq!(faults, []);
    let named: Vec<&str> = library
        .unused_pieces
        .iter()
        .map(|f| f.text.as_str())
        .collect();
    assert_eq!(named, ["\"other-cord\""]);
    // Taken up, it is a fault.
    let taken = site().replacen(
        "gauge: \"12\", length_ft: 50.0, like: \"house-cord\"",
        "like: \"other-cord\", length_ft: 50.0",
        1,
    );
    let (library, faults) = load(&taken, Some(&shared));
    let told: Vec<&str> = faults.iter().map(|f| f.text.as_str()).collect();
    assert_eq!((library.unused_pieces.len(), told), (0, vec!["\"99\""]));
}

#[test]
fn a_piece_that_changes_makes_it_another_drill_and_one_that_nobody_takes_up_does_not() {
    let digest = |shared: &str| {
        let (library, faults) = load(&site(), Some(shared));
        assert_eq!(faults, []);
        library.scenario("no-slide").unwrap().digest.clone()
    };
    let as_it_was = digest(SHARED);
    assert_ne!(digest(&SHARED.replacen("9400.0", "9300.0", 1)), as_it_was);
    let more = "(name: \"other-cord\", gauge: \"12\"),\n    (name: \"house-cord\"";
    assert_eq!(
        digest(&SHARED.replacen("(name: \"house-cord\"", more, 1)),
        as_it_was
    );
}

#[test]
fn a_drill_whose_shared_apparatus_was_changed_begins_again_while_an_author_writes() {
    let folder = folder(&site(), Some(SHARED));
    let mut watched = Watched::new(folder.path());
    let mut session = Session::new(Library::load(folder.path()).0, "en");
    session.apply(Command::Open {
        drill: "no-slide".to_owned(),
        practice: Practice::Coached,
        seed: 1,
    });
    session.apply(Command::Do("set main off".to_owned()));
    let deeds = |session: &Session| session.drill().unwrap().run().actions.len();
    assert_eq!(deeds(&session), 1);
    let path = folder.path().join("apparatus/shared.ron");
    fs::write(&path, SHARED.replacen("9400.0", "nine", 1)).unwrap();
    session.renew(watched.changed().unwrap());
    let place = session.faults().unwrap().faults[0].place.clone();
    assert!(place.contains("shared.ron:6:"), "{place}");
    assert_eq!(deeds(&session), 1, "a fault takes nothing away");
    fs::write(&path, SHARED.replacen("9400.0", "10000.0", 1)).unwrap();
    session.renew(watched.changed().unwrap());
    assert!(session.faults().is_none());
    assert_eq!(deeds(&session), 0);
}
