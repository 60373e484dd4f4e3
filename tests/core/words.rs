//! The words, held to the program and the languages to each other.
//!
//! Structure, use, plain English and formatting are judged; whether a translation says the same is for people to judge.
//! The reading grade is the Flesch-Kincaid grade with syllables counted by vowel groups: within about one grade of a hand count, from memory.

mod alike;
pub(crate) mod plain;
mod sources;
mod usted;

use std::collections::BTreeMap;
use std::collections::BTreeSet;

use outage_drill::file::Library;
use outage_drill::session::{Command, Practice, Session};
use outage_drill::words::OFFERED;
use outage_drill::words::PSEUDO;
use outage_drill::words::REFERENCE;
use outage_drill::words::TERMS;
use outage_drill::words::Words;
use outage_drill::words::audit;
use outage_drill::words::word_files;
use outage_drill::words::{Arg, Message};

use plain::{count_words, grade, left_out, sentences};
use sources::{Sources, literal_ids};

/// Ids that are put together from a beginning, the name of something, and sometimes an ending.
/// The name must stand somewhere in the sources or the scenarios; the last column says who puts it together.
const BUILT: &[(&str, &[&str], &str)] = &[
    (
        "name-",
        &[
            "",
            "-plug",
            "-switch",
            "-outlet",
            "-lay",
            "-generator-end",
            "-house-end",
            "-near-end",
            "-far-end",
        ],
        "words::name_of, from the ids of a site's controls, positions, points, appliances, places, people",
    ),
    ("name-breaker-", &[""], "site, from a circuit"),
    ("name-circuit-", &[""], "session, from a circuit"),
    ("name-outlet-", &[""], "site, from a circuit"),
    ("name-branch-", &[""], "session, from a circuit"),
    ("name-drop-", &[""], "session, from a neighbor"),
    ("place-", &["", "-about"], "session, from a place"),
    ("close-", &[""], "session, from a place"),
    ("caution-", &[""], "session, by number"),
    ("variation-", &[""], "session, from the change of a variant"),
    (
        "debrief-",
        &["-title", "-ask"],
        "session, from the page of the debrief",
    ),
    ("series-", &[""], "session, from what a curve is of"),
    ("skill-", &[""], "session, from the outcome of a drill"),
    ("way-", &[""], "session, from the way a drill is about"),
    ("track-", &[""], "session, from whom a drill is for"),
    ("lesson-", &["-title", "-about"], "session, from a lesson"),
    ("sitting-", &[""], "session, from a session of a lesson"),
    (
        "objective-",
        &[""],
        "session, from an objective of a lesson",
    ),
    ("prepare-", &[""], "session, from a lesson"),
    ("prebrief-", &[""], "session, from a lesson"),
    ("step-", &[""], "session, from a step of a lesson"),
    ("question-", &[""], "session, from a step of a lesson"),
    ("moment-", &[""], "session, from a moment of a lesson"),
    ("prompt-", &[""], "session, from the debrief of a lesson"),
    ("handout-", &[""], "session, from a lesson"),
    ("doing-", &[""], "session, from what is done in a step"),
    ("phase-", &[""], "session, from a phase of a debrief"),
    ("local-", &[""], "session, from a local fact"),
    ("month-", &[""], "session, by number"),
    ("answer-", &[""], "scenario, from an answer"),
    ("predict-", &[""], "session, from a prediction of a drill"),
    ("level-", &[""], "session, from how hard a drill is"),
    ("mistake-", &[""], "evidence, from a list's heading"),
    ("error-kind-", &[""], "file, from the kind of a name"),
    ("log-", &[""], "drill, from the verb of an action"),
    ("log-happen-", &[""], "session, from a turn of events"),
    ("turn-", &[""], "session, from a turn of events"),
    ("window-seated-", &[""], "window, from how learners sit"),
    ("event-", &[""], "drill, from the kind of an event"),
    ("event-lost-", &[""], "session, from an appliance"),
    ("refused-", &[""], "site, from the constraint that refuses"),
    (
        "finding-",
        &["-what", "-why", "-now", "-instead"],
        "marking, from the rule",
    ),
    ("stage-", &[""], "explain, from the stage of the way"),
    (
        "glossary-",
        &["", "-meaning", "-source"],
        "words, from a term of the glossary",
    ),
    (
        "criterion-",
        &[
            "-title", "-text", "-line", "-utility", "-back", "-own", "-asked",
        ],
        "marking, from the criterion; also from the drill's goal, and whether a crew works a line",
    ),
    ("debrief-end-", &[""], "session, from the drill's goal"),
    (
        "drill-",
        &["-title", "-summary", "-goal", "-note", "-facts"],
        "session, from the drill's name",
    ),
    (
        "state-",
        &[""],
        "session, from the state of an appliance, an engine, a person",
    ),
    ("state-crew-", &[""], "session, from where the crew is"),
    ("fed-", &[""], "session, from what feeds a conductor"),
    (
        "source-",
        &[""],
        "marking, from the publication that a rule rests on",
    ),
];

fn reference() -> audit::Entries {
    audit::read(REFERENCE, &word_files(REFERENCE)).0
}

fn listed(faults: &[impl ToString]) -> String {
    faults
        .iter()
        .map(ToString::to_string)
        .collect::<Vec<_>>()
        .join("\n")
}

#[test]
fn every_language_says_everything_with_the_same_arguments() {
    for language in audit::coverage() {
        assert!(
            language.faults.is_empty(),
            "{}:\n{}",
            language.tag,
            listed(&language.faults)
        );
        assert_eq!(language.present, language.wanted, "{}", language.tag);
        println!(
            "{}: {} of {} messages",
            language.tag, language.present, language.wanted
        );
    }
}

#[test]
fn every_message_is_used() {
    let sources = Sources::read();
    let unused: Vec<String> = reference()
        .iter()
        .filter(|(id, _)| !id.starts_with('-') && !id.contains('.'))
        .filter(|(id, _)| {
            !sources.has_literal(id) && !is_built(id, &sources) && !is_referred_to(id)
        })
        .map(|(id, entry)| format!("{}:{}: `{id}` is not used", entry.file, entry.line))
        .collect();
    assert!(unused.is_empty(), "{}", listed(&unused));
}

fn is_built(id: &str, sources: &Sources) -> bool {
    BUILT.iter().any(|(beginning, endings, _)| {
        endings.iter().any(|ending| {
            id.strip_prefix(beginning)
                .and_then(|rest| rest.strip_suffix(ending))
                .is_some_and(|name| name.parse::<u32>().is_ok() || sources.has_word(name))
        })
    })
}

fn is_referred_to(id: &str) -> bool {
    reference()
        .values()
        .any(|entry| entry.refers_to.contains(id))
}

#[test]
fn every_id_that_the_program_names_is_there() {
    let words = Words::new(REFERENCE);
    let missing: Vec<String> = literal_ids()
        .into_iter()
        .filter(|(id, _)| !words.has(id))
        .map(|(id, place)| format!("{place}: `{id}` is not in the word files"))
        .collect();
    assert!(missing.is_empty(), "{}", listed(&missing));
}

#[test]
fn every_message_formats_in_every_language_without_a_gap() {
    let tags: Vec<&str> = OFFERED
        .iter()
        .map(|language| language.tag)
        .chain([PSEUDO])
        .collect();
    for tag in tags {
        let words = Words::new(tag);
        for (id, text) in samples(&words) {
            assert!(!text.trim().is_empty(), "{tag}: `{id}` is empty");
            assert!(
                !text.contains(['{', '}', '[', ']']),
                "{tag}: `{id}` has a gap: {text}"
            );
            assert!(
                !text.contains(['\u{2068}', '\u{2069}']),
                "{tag}: `{id}` shows marks of direction"
            );
            assert!(!text.contains("  "), "{tag}: `{id}` has two spaces: {text}");
        }
    }
}

/// Every message of the reference, said with sample arguments.
fn samples(words: &Words) -> BTreeMap<String, String> {
    let entries = reference();
    entries
        .keys()
        .filter(|id| !id.starts_with('-') && !id.contains('.'))
        .map(|id| {
            let counts: BTreeSet<&String> = entries
                .values()
                .flat_map(|entry| entry.counts.keys())
                .collect();
            let message = audit::all_variables(&entries, id).into_iter().fold(
                Message::new(id.clone()),
                |m, name| {
                    let arg = if counts.contains(&name) {
                        Arg::Count(2)
                    } else {
                        Arg::Verbatim("x".to_owned())
                    };
                    m.with(Box::leak(name.into_boxed_str()), arg)
                },
            );
            (id.clone(), words.say(&message))
        })
        .collect()
}

/// Terms that a learner will meet elsewhere and that our own words say in other ways.
const NOT_SAID: [&str; 2] = ["backfeed", "inrush"];

#[test]
fn every_term_of_the_glossary_is_said_somewhere_and_no_form_is_two_terms() {
    for language in OFFERED {
        let words = Words::new(language.tag);
        let entries = audit::read(language.tag, &word_files(language.tag)).0;
        let own =
            |id: &String| !id.starts_with("glossary-") && !id.contains('.') && !id.starts_with('-');
        let said: Vec<String> = entries
            .keys()
            .filter(|id| own(id))
            .map(|id| words.say_id(id))
            .collect();
        let said = said.join(" \n ");
        let found = words.terms_in(&said);
        let mut forms = BTreeSet::new();
        for (name, term) in TERMS.iter().zip(
            TERMS
                .iter()
                .map(|name| words.say_id(&format!("glossary-{name}"))),
        ) {
            let is_said = found.iter().any(|f| f.term.forms.join(", ") == term);
            assert_eq!(
                is_said,
                !NOT_SAID.contains(name),
                "{}: {term}",
                language.tag
            );
            for form in term.split(", ") {
                assert!(
                    forms.insert(form.to_lowercase()),
                    "{}: {form} twice",
                    language.tag
                );
            }
        }
        assert!(TERMS.len() >= 35);
    }
}

#[test]
fn a_number_meets_its_unit_in_one_file_only() {
    const UNITS: &[&str] = &[
        "V", "kV", "A", "mA", "W", "kW", "VA", "kVA", "Hz", "Ω", "ohms", "°", "°C", "°F", "ft",
        "m", "gal", "s", "ms", "min", "ppm", "%", "volts", "amps", "watts", "feet", "meters",
        "gallons", "seconds", "percent", "voltios", "amperios", "vatios", "pies", "metros",
        "galones", "segundos",
    ];
    let mut found = Vec::new();
    for language in OFFERED {
        for (id, entry) in audit::read(language.tag, &word_files(language.tag)).0 {
            for text in entry
                .after_arguments
                .iter()
                .filter(|_| !entry.file.ends_with("/units.ftl"))
            {
                let word: String = text
                    .trim_start_matches([' ', '\u{a0}'])
                    .chars()
                    .take_while(|c| c.is_alphanumeric() || "°%Ω".contains(*c))
                    .collect();
                if UNITS.contains(&word.as_str()) {
                    found.push(format!(
                        "{}:{}: `{id}` writes `{word}` beside an argument",
                        entry.file, entry.line
                    ));
                }
            }
        }
    }
    assert!(found.is_empty(), "{}", listed(&found));
}

#[test]
fn no_english_sentence_has_more_than_twenty_words() {
    let mut long = Vec::new();
    for (id, text) in samples(&Words::new(REFERENCE)) {
        for sentence in sentences(&text) {
            let words = count_words(sentence);
            if words > 20 && !id.starts_with("source-") {
                long.push(format!(
                    "`{id}` has a sentence of {words} words: {sentence}"
                ));
            }
        }
    }
    assert!(long.is_empty(), "{}", listed(&long));
}

#[test]
fn explanations_stay_near_the_sixth_grade() {
    let texts = samples(&Words::new(REFERENCE));
    let explained = |id: &str| {
        id.starts_with("finding-") || id.starts_with("caution-") || id.starts_with("stage-")
    };
    let all: Vec<&str> = texts
        .iter()
        .filter(|(id, _)| explained(id))
        .map(|(_, text)| text.as_str())
        .collect();
    let (grade, n_words) = grade(&all, &left_out());
    println!(
        "Flesch-Kincaid grade of {} explanations, {n_words} words: {grade:.1}",
        all.len()
    );
    assert!(
        grade <= 6.0,
        "grade {grade:.1} over {n_words} words; write plainer"
    );
}

#[test]
fn no_text_for_people_is_written_in_the_front_ends() {
    let found = Sources::read().raw_text();
    assert!(
        found.is_empty(),
        "say it through the word files:\n{}",
        listed(&found)
    );
}

#[test]
fn no_view_of_any_drill_has_a_gap_in_any_language() {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    for language in OFFERED {
        for name in library.names() {
            for practice in [Practice::Coached, Practice::Assessed] {
                let mut session = Session::new(library.clone(), language.tag);
                let mut shown = vec![format!("{:?}", session.shelf())];
                session.apply(Command::Open {
                    drill: name.to_owned(),
                    practice,
                    seed: 3,
                });
                for line in every_deed(&session) {
                    shown.push(format!("{:?}", session.apply(Command::Do(line))));
                    shown.push(format!("{:?}", session.consequence()));
                    session.apply(Command::Understood);
                }
                shown.push(views(&session));
                session.apply(Command::Finish);
                shown.push(views(&session));
                let gaps = gaps(&shown.join(" "));
                assert!(gaps.is_empty(), "{} {name}: {gaps:?}", language.tag);
            }
        }
    }
}

/// Every deed and every choice of every control that any place offers.
fn every_deed(session: &Session) -> Vec<String> {
    let places = session.street().unwrap().places;
    let views = places.iter().filter_map(|place| session.close(&place.id));
    views
        .flat_map(|view| {
            let deeds = view.deeds.into_iter().map(|deed| deed.line);
            let choices = view.controls.into_iter().flat_map(|control| {
                let id = control.id;
                control
                    .choices
                    .into_iter()
                    .rev()
                    .map(move |choice| format!("set {id} {}", choice.id))
            });
            choices.chain(deeds).collect::<Vec<_>>()
        })
        .collect()
}

fn views(session: &Session) -> String {
    let street = session.street().unwrap();
    let places: Vec<_> = street
        .places
        .iter()
        .map(|place| session.close(&place.id))
        .collect();
    format!(
        "{street:?}{places:?}{:?}{:?}",
        session.log(),
        session.debrief()
    )
}

/// Ids in brackets and arguments in braces, as words that are missing show themselves.
fn gaps(shown: &str) -> BTreeSet<String> {
    let between = |open: &'static str, close: char| {
        shown.match_indices(open).filter_map(move |(at, _)| {
            let inside = shown[at + open.len()..].split(close).next()?;
            let is_id = inside.contains('-')
                && inside
                    .chars()
                    .all(|c| c.is_ascii_alphanumeric() || c == '-');
            (is_id || open == "{$").then(|| inside.to_owned())
        })
    };
    between("[", ']').chain(between("{$", '}')).collect()
}

#[test]
fn a_gap_is_seen() {
    assert_eq!(
        gaps("[ShelfView { a: \"[name-x]: on\" }] {$volts}").len(),
        2
    );
}
