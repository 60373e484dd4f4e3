//! The check of one drill and its variants: that its house can be wired, that wires are guarded, that its numbers settle, that doing nothing is no pass, and what is proved of it.

use crate::file::Library;
use crate::session::{Command, Notice, Practice, ProofRead, Prover, Session, VariantRead, offered};
use crate::terminal::work::now;
use crate::units::DrillTime;
use crate::words::Words;

use super::kept::Kept;

/// Longer than any drill.
const TO_THE_END: DrillTime = DrillTime::from_secs(24 * 3600);

/// What was found of one variant of a drill.
#[derive(Debug)]
pub(super) struct Checked {
    /// The drill's name, with that of the variant behind a plus sign where it isn't the drill as written.
    pub(super) name: String,
    /// The drill's own name.
    pub(super) drill: String,
    /// Whether it is the drill as written.
    pub(super) as_written: bool,
    /// The seed that gives it.
    pub(super) seed: u64,
    /// Whether each property holds, in the order of [`super::PROPERTIES`]; those that could not be looked at are left out.
    pub(super) properties: Vec<bool>,
    /// Breakers that are too large for the wire behind them.
    pub(super) unguarded: Vec<String>,
    /// The ids of messages that the language spoken lacks.
    pub(super) without_words: Vec<String>,
    /// What is proved of it.
    pub(super) proof: Option<ProofRead>,
    /// Whether that is kept from an earlier check.
    pub(super) kept: bool,
    /// Seconds that the proof took.
    pub(super) seconds: f64,
}

impl Checked {
    /// Whether nothing is wrong with it.
    pub(super) fn sound(&self) -> bool {
        let proved = self.proof.as_ref().is_none_or(|p| p.sound);
        proved && self.properties.iter().all(|holds| *holds)
    }
}

/// Checks a drill: all the variants that its file offers, or the drill as written alone.
pub(super) fn check(
    library: &Library,
    name: &str,
    all: bool,
    words: &Words,
    kept: Option<&Kept>,
    watch: &dyn Fn(usize),
) -> Vec<Checked> {
    let variants = offered(library, name, words).unwrap_or_default();
    let wanted = if all { variants.len() } else { 1 };
    let mut prover = Prover::default();
    let mut one = |variant: &VariantRead| {
        let mut checked = played(library, name, variant, words);
        let began = now();
        let before = kept.and_then(|k| k.read(library, name, variant));
        checked.kept = before.is_some();
        checked.proof = before.or_else(|| prover.prove(library, name, variant, watch));
        checked.seconds = began.elapsed().as_secs_f64();
        if let (Some(kept), Some(proof), false) = (kept, &checked.proof, checked.kept) {
            kept.write(library, name, variant, proof);
        }
        checked
    };
    variants.iter().take(wanted).map(&mut one).collect()
}

/// Opens a variant and lets it run to its end with nothing done.
fn played(library: &Library, name: &str, variant: &VariantRead, words: &Words) -> Checked {
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
    let as_written = variant.sentence.is_empty();
    Checked {
        name: if as_written {
            name.to_owned()
        } else {
            format!("{name}+{}", variant.name)
        },
        drill: name.to_owned(),
        as_written,
        seed: variant.seed,
        properties,
        unguarded,
        without_words,
        proof: None,
        kept: false,
        seconds: 0.0,
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
    // A note may be left out.
    let about =
        ["title", "summary", "goal"].map(|part| format!("drill-{}-{part}", drill.scenario().name));
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
