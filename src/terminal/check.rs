//! The check of scenario files: every fault with its place, then what holds of each drill that could be read.
//!
//! Of a drill it is checked that its house can be wired, that each breaker is small enough for its wire, that its first answer settles, and that a run in which nothing is done settles at every moment and is no pass.
//! Each variant that a drill's file offers is checked like a drill of its own, called by both names with a plus sign.
//! Then everything that can be reached in it is searched, and each property is told as proved, proved for positions only, unsound or not covered.
//!
//! The `--json` document has `version`, `faults` (see [`faults::json`]), `drills` and `not_covered`, what no drill's proof covers.
//! Each of `drills` has `name`, `properties` (`id`, `holds`), `unguarded`, the names of breakers too large for their wires, `without_words`, the ids of messages that its names would need in the language spoken,
//! and `proof`: `states`, `solves` and `properties` (`id`, `standing`, `because`, `way`, the lines of an action file).

use std::path::Path;
use std::path::PathBuf;

use serde_json::Value;
use serde_json::json;

use crate::file::{Diagnostic, Library};
use crate::session::{
    Command, Notice, Practice, ProofRead, PropertyRead, Session, VariantRead, offered, prove,
};
use crate::units::DrillTime;
use crate::words::{Arg, Message, Unit, Words};

use super::output::Output;
use super::{BAD_INPUT, DONE, JSON_VERSION, NOT_PASSED, faults};

/// Longer than any drill.
const TO_THE_END: DrillTime = DrillTime::from_secs(24 * 3600);
/// The properties that are checked, in order: the id, what is said where it holds, and where it does not.
const PROPERTIES: [(&str, &str, &str); 5] = [
    ("wired", "check-wired", "check-not-wired"),
    ("guarded", "check-guarded", "check-not-guarded"),
    ("start", "check-start", "check-not-start"),
    ("settles", "check-settles", "check-not-settles"),
    ("idle", "check-idle", "check-not-idle"),
];
/// What no proof covers: the id, and what is said.
const NOT_COVERED: [(&str, &str); 2] =
    [("drift", "check-open-drift"), ("order", "check-open-order")];

/// What was found of one drill.
struct Checked {
    name: String,
    /// Whether each property holds, in the order of [`PROPERTIES`]; those that could not be looked at are left out.
    properties: Vec<bool>,
    /// Breakers that are too large for the wire behind them.
    unguarded: Vec<String>,
    without_words: Vec<String>,
    proof: Option<ProofRead>,
}

/// Reads scenario files and checks what can be checked; the status to end with.
pub(super) fn run(paths: &[PathBuf], as_json: bool, output: &mut Output<'_>) -> u8 {
    let (libraries, found) = read_all(paths);
    let drills: Vec<Checked> = libraries
        .iter()
        .flat_map(|library| {
            let names = library.names().into_iter();
            names.flat_map(|name| {
                let variants = offered(library, name, &output.words).unwrap_or_default();
                let one = |variant: &VariantRead| drill(library, name, variant, &output.words);
                variants.iter().map(one).collect::<Vec<_>>()
            })
        })
        .collect();
    faults::print(&found, output);
    if as_json {
        let document = document(&drills, &found, &output.words);
        output.line(&format!("{document:#}"));
    } else {
        for drill in &drills {
            say(drill, output);
        }
        if !drills.is_empty() {
            output.say_id("terminal-check-not-covered");
            for (_, id) in NOT_COVERED {
                let text = output.words.say_id(id);
                output.line(&format!("  {text}"));
            }
        }
    }
    let sound = drills.iter().all(|d| {
        d.properties.iter().all(|holds| *holds) && d.proof.as_ref().is_none_or(|p| p.sound)
    });
    match (found.is_empty(), sound) {
        (false, _) => BAD_INPUT,
        (true, false) => NOT_PASSED,
        (true, true) => DONE,
    }
}

/// The libraries of the paths, or the one that is shipped, and every fault.
fn read_all(paths: &[PathBuf]) -> (Vec<Library>, Vec<Diagnostic>) {
    let mut libraries = Vec::new();
    let mut found = Vec::new();
    let mut keep = |(library, mut faults): (Library, Vec<Diagnostic>)| {
        libraries.push(library);
        found.append(&mut faults);
    };
    if paths.is_empty() {
        keep(Library::shipped());
    }
    let mut folders: Vec<&Path> = Vec::new();
    for path in paths {
        match path.metadata() {
            Ok(_) if folders.contains(&folder_of(path)) => {}
            Ok(_) => {
                folders.push(folder_of(path));
                let (library, mut faults) = Library::load(folder_of(path));
                if library.scenarios.is_empty() && faults.is_empty() {
                    faults.push(super::whole(path, Message::new("terminal-check-empty")));
                }
                keep((library, faults));
            }
            Err(error) => keep((Library::default(), vec![super::unreadable(path, &error)])),
        }
    }
    (libraries, found)
}

/// The scenario folder of a path: itself, or of a file in its `sites` or `drills` the folder above them.
fn folder_of(path: &Path) -> &Path {
    let levels = if path.is_file() { 2 } else { 0 };
    path.ancestors().nth(levels).unwrap_or(path)
}

fn drill(library: &Library, name: &str, variant: &VariantRead, words: &Words) -> Checked {
    let mut session = Session::new(library.clone(), words.tag());
    let opened = session.apply(Command::Open {
        drill: name.to_owned(),
        practice: Practice::Coached,
        seed: variant.seed,
    });
    let mut properties = vec![!matches!(opened.first(), Some(Notice::Unknown(_)))];
    let without_words = missing(&session, words);
    let mut unguarded = Vec::new();
    if let Some(drill) = session.drill() {
        unguarded.extend(drill.site().unguarded().into_iter().map(str::to_owned));
        properties.push(unguarded.is_empty());
        properties.push(drill.readings().converged);
        session.apply(Command::Wait(TO_THE_END));
    }
    if let (Some(drill), Some(verdict)) = (session.drill(), session.verdict()) {
        let mut moments = drill.trace().moments.iter();
        properties.push(moments.all(|m| m.readings.converged));
        properties.push(!verdict.passed);
    }
    Checked {
        name: called(name, variant),
        properties,
        unguarded,
        without_words,
        proof: prove(library, name, &variant.name),
    }
}

/// The drill's name, with that of its variant where it isn't the drill as written.
fn called(name: &str, variant: &VariantRead) -> String {
    if variant.sentence.is_empty() {
        name.to_owned()
    } else {
        format!("{name}+{}", variant.name)
    }
}

/// The ids of the messages that what can be operated, tested or used in a drill needs and the language does not have.
fn missing(session: &Session, words: &Words) -> Vec<String> {
    let Some(drill) = session.drill() else {
        return Vec::new();
    };
    let places = session.street().unwrap_or_default().places;
    let controls = places
        .iter()
        .filter_map(|place| session.close(&place.id))
        .flat_map(|view| view.controls);
    let mut names: Vec<String> = controls
        .flat_map(|c| c.choices.into_iter().map(|choice| choice.id).chain([c.id]))
        .collect();
    names.extend(drill.site().appliances.iter().map(|a| a.name.clone()));
    names.extend(drill.readings().names.points.iter().cloned());
    let changes = drill.scenario().changes.iter();
    let varied = changes.map(|c| format!("variation-{}", c.name));
    let about = ["title", "summary", "goal", "note"]
        .map(|part| format!("drill-{}-{part}", drill.scenario().name));
    let mut ids: Vec<String> = names
        .iter()
        .map(|name| format!("name-{name}"))
        .chain(about)
        .chain(varied)
        .filter(|id| !words.has(id))
        .collect();
    ids.sort();
    ids.dedup();
    ids
}

fn say(drill: &Checked, output: &mut Output<'_>) {
    output.line(&format!("{}:", drill.name));
    for ((_, sound, unsound), holds) in PROPERTIES.iter().zip(&drill.properties) {
        let text = output.words.say_id(if *holds { sound } else { unsound });
        output.line(&format!("  {text}"));
    }
    if let Some(proof) = &drill.proof {
        say_proof(proof, output);
    }
    if !drill.unguarded.is_empty() {
        let ids = Arg::Verbatim(drill.unguarded.join(", "));
        let message = Message::new("terminal-check-unguarded").with("ids", ids);
        let text = output.words.say(&message);
        output.line(&format!("  {text}"));
    }
    if !drill.without_words.is_empty() {
        let ids = Arg::Verbatim(drill.without_words.join(", "));
        let message = Message::new("terminal-check-words").with("ids", ids);
        let text = output.words.say(&message);
        output.line(&format!("  {text}"));
    }
}

/// What is proved of a drill, with the way to where a property breaks as an action file has it.
fn say_proof(proof: &ProofRead, output: &mut Output<'_>) {
    for property in &proof.properties {
        let text = output.words.say(&told(property));
        output.line(&format!("  {text}"));
        for line in &property.way {
            output.line(&format!("    {line}"));
        }
    }
    let figures = Message::new("check-searched")
        .with("states", count(proof.states))
        .with("solves", count(proof.solves));
    let text = output.words.say(&figures);
    output.line(&format!("  {text}"));
}

fn told(property: &PropertyRead) -> Message {
    let claim = Message::new(match property.id {
        "safe-way" => "check-claim-safe-way",
        "goes-on" => "check-claim-goes-on",
        "marking-agrees" => "check-claim-marking-agrees",
        "by-construction" => "check-claim-by-construction",
        _ => "check-claim-sound-start",
    });
    let told = match property.standing {
        "proved" => "check-proved",
        "shown" => "check-shown",
        "positions" => "check-proved-positions",
        "broken" if property.way.is_empty() => "check-broken",
        "broken" => "check-broken-way",
        "declared" => return Message::new("check-declared"),
        _ => "check-not-covered",
    };
    let message = Message::new(told).said("claim", claim);
    match property.because {
        Some(why) => message.said("why", Message::new(why)),
        None => message,
    }
}

fn count(number: usize) -> Arg {
    Arg::Quantity(
        u32::try_from(number).map_or(f64::INFINITY, f64::from),
        Unit::Plain,
    )
}

fn proof_json(proof: &ProofRead) -> Value {
    let properties: Vec<Value> = proof
        .properties
        .iter()
        .map(|p| json!({ "id": p.id, "standing": p.standing, "because": p.because, "way": p.way }))
        .collect();
    json!({ "states": proof.states, "solves": proof.solves, "properties": properties })
}

fn document(drills: &[Checked], found: &[Diagnostic], words: &Words) -> Value {
    let drills: Vec<Value> = drills
        .iter()
        .map(|drill| {
            let properties: Vec<Value> = PROPERTIES
                .iter()
                .zip(&drill.properties)
                .map(|((id, ..), holds)| json!({ "id": id, "holds": holds }))
                .collect();
            json!({ "name": drill.name, "properties": properties, "unguarded": drill.unguarded, "without_words": drill.without_words, "proof": drill.proof.as_ref().map(proof_json) })
        })
        .collect();
    let found: Vec<Value> = found
        .iter()
        .map(|fault| faults::json(fault, words))
        .collect();
    let not_covered = NOT_COVERED.map(|(id, _)| id);
    json!({
        "version": JSON_VERSION, "drills": drills, "faults": found, "not_covered": not_covered,
    })
}
