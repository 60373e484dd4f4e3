//! What was checked, as text and as a document.

use serde_json::Value;
use serde_json::json;

use crate::session::{ProofRead, PropertyRead};
use crate::terminal::output::Output;
use crate::words::{Arg, Message, Unit};

use super::PROPERTIES;
use super::drill::Checked;

/// Bytes in a megabyte.
const MEGABYTE: f64 = 1e6;

/// Tells what was found of a drill and its variants: those of which the same holds as of the drill as written, in a line.
pub(super) fn say_all(variants: &[Checked], output: &mut Output<'_>) {
    for drill in variants {
        let first = variants
            .first()
            .filter(|f| !drill.as_written && alike(f, drill));
        match first {
            Some(first) => say_alike(first, drill, output),
            None => say(drill, output),
        }
    }
}

/// Whether the same holds of two variants, whatever the ways that show it.
fn alike(one: &Checked, other: &Checked) -> bool {
    let standings = |drill: &Checked| {
        let properties = drill.proof.iter().flat_map(|p| &p.properties);
        let said = properties.map(|p| (p.id.clone(), p.standing.clone(), p.because.clone()));
        said.collect::<Vec<_>>()
    };
    one.properties == other.properties
        && one.unguarded == other.unguarded
        && other.without_words.is_empty()
        && standings(one) == standings(other)
}

fn say_alike(first: &Checked, drill: &Checked, output: &mut Output<'_>) {
    let message = Message::new("check-alike")
        .with("name", Arg::Verbatim(drill.name.clone()))
        .with("first", Arg::Verbatim(first.name.clone()));
    output.say(&message);
    if let Some(proof) = &drill.proof {
        say_figures(drill, proof, output);
    }
}

fn say(drill: &Checked, output: &mut Output<'_>) {
    output.line(&format!("{}:", drill.name));
    for ((_, sound, unsound), holds) in PROPERTIES.iter().zip(&drill.properties) {
        let text = output.words.say_id(if *holds { sound } else { unsound });
        output.line(&format!("  {text}"));
    }
    if let Some(proof) = &drill.proof {
        for property in &proof.properties {
            let text = output.words.say(&told(property));
            output.line(&format!("  {text}"));
            for line in &property.way {
                output.line(&format!("    {line}"));
            }
        }
        say_figures(drill, proof, output);
    }
    let lists = [
        ("terminal-check-unguarded", &drill.unguarded),
        ("terminal-check-words", &drill.without_words),
    ];
    for (id, names) in lists.into_iter().filter(|(_, names)| !names.is_empty()) {
        let ids = Arg::Verbatim(names.join(", "));
        let text = output.words.say(&Message::new(id).with("ids", ids));
        output.line(&format!("  {text}"));
    }
}

/// How much was searched for a proof, or why nothing was.
fn say_figures(drill: &Checked, proof: &ProofRead, output: &mut Output<'_>) {
    let message = match &proof.like {
        _ if drill.kept => Message::new("check-kept"),
        Some(first) => Message::new("check-like").with("first", Arg::Verbatim(first.clone())),
        None => figures("check-searched", Figures::of(drill, proof)),
    };
    let text = output.words.say(&message);
    output.line(&format!("  {text}"));
}

/// How much was searched, and how long that took.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Figures {
    states: usize,
    solves: usize,
    bytes: usize,
    seconds: f64,
}

impl Figures {
    fn of(drill: &Checked, proof: &ProofRead) -> Self {
        Self {
            states: proof.states,
            solves: proof.solves,
            bytes: proof.bytes,
            seconds: drill.seconds,
        }
    }

    /// Those of all drills that were proved anew, with the largest table.
    pub(super) fn sum(drills: &[&Checked]) -> Self {
        let new = drills.iter().filter(|d| !d.kept);
        let figures = new.filter_map(|d| Some(Self::of(d, d.proof.as_ref()?)));
        figures.fold(Self::default(), |sum, one| Self {
            states: sum.states + one.states,
            solves: sum.solves + one.solves,
            bytes: sum.bytes.max(one.bytes),
            seconds: sum.seconds + one.seconds,
        })
    }

    /// States a second of one thread, with everything that a proof does.
    fn rate(self) -> f64 {
        if self.seconds > 0.0 {
            number(self.states) / self.seconds
        } else {
            0.0
        }
    }
}

/// A message with figures.
pub(super) fn figures(id: &'static str, figures: Figures) -> Message {
    Message::new(id)
        .with("states", count(figures.states))
        .with("solves", count(figures.solves))
        .quantity("rate", figures.rate(), Unit::Plain)
        .quantity("megabytes", number(figures.bytes) / MEGABYTE, Unit::Plain)
        .quantity("seconds", figures.seconds, Unit::Seconds)
}

/// A property with how far it is established.
pub(super) fn told(property: &PropertyRead) -> Message {
    let claim = Message::new(match property.id.as_str() {
        "safe-way" => "check-claim-safe-way",
        "goes-on" => "check-claim-goes-on",
        "marking-agrees" => "check-claim-marking-agrees",
        "by-construction" => "check-claim-by-construction",
        "fuel" => "check-claim-fuel",
        "overload" => "check-claim-overload",
        "gas" => "check-claim-gas",
        "heat" => "check-claim-heat",
        "order" => "check-claim-order",
        _ => "check-claim-sound-start",
    });
    let told = match property.standing.as_str() {
        "proved" => "check-proved",
        "shown" => "check-shown",
        "positions" => "check-proved-positions",
        "broken" if property.way.is_empty() => "check-broken",
        "broken" => "check-broken-way",
        "declared" => return Message::new("check-declared"),
        _ => "check-not-covered",
    };
    let message = Message::new(told).said("claim", claim);
    match &property.because {
        Some(why) => message.said("why", Message::new(why)),
        None => message,
    }
}

/// A whole number in a message.
pub(super) fn count(number_of: usize) -> Arg {
    Arg::Quantity(number(number_of), Unit::Plain)
}

fn number(count: usize) -> f64 {
    u32::try_from(count).map_or(f64::INFINITY, f64::from)
}

/// A drill's part of the document.
pub(super) fn drill_json(drill: &Checked) -> Value {
    let properties: Vec<Value> = PROPERTIES
        .iter()
        .zip(&drill.properties)
        .map(|((id, ..), holds)| json!({ "id": id, "holds": holds }))
        .collect();
    let proof = drill.proof.as_ref();
    json!({
        "name": drill.name, "seed": drill.seed, "properties": properties, "unguarded": drill.unguarded,
        "without_words": drill.without_words, "kept": drill.kept,
        "proof": proof.map(|p| proof_json(p, Some(drill.seconds))),
    })
}

/// A proof as a document.
pub(super) fn proof_json(proof: &ProofRead, seconds: Option<f64>) -> Value {
    let properties: Vec<Value> = proof
        .properties
        .iter()
        .map(|p| json!({ "id": p.id, "standing": p.standing, "because": p.because, "way": p.way }))
        .collect();
    json!({
        "states": proof.states, "solves": proof.solves, "bytes": proof.bytes, "like": proof.like,
        "seconds": seconds, "properties": properties,
    })
}
