//! Words: messages in the learner's language.
//!
//! Everything that a learner reads or hears is written in the Fluent files under `assets/words/<language>/`.
//! [`Words`] turns a [`Message`] into a sentence: it writes numbers as the reader's locale does, keeps a number and its unit together, and picks plural forms.
//! It knows no rule of the trade and adds no fact of its own; [`audit`] is what holds the files of all languages to the same ids and arguments.
//! Marks that isolate text of the other writing direction are set for right-to-left languages only; none is shipped yet.

pub mod audit;
mod files;
mod glossary;
mod language;
mod message;
mod number;
mod parts;
mod pseudo;
mod syntax;

use std::fmt;
use std::sync::Arc;

use fluent::FluentArgs;
use fluent::FluentResource;
use fluent::FluentValue;
use fluent::concurrent::FluentBundle;
use fluent_syntax::ast::Pattern;
use unic_langid::CharacterDirection;
use unic_langid::LanguageIdentifier;

pub use files::{WordFile, word_files};
pub use glossary::{FoundTerm, TERMS, Term};
pub use language::{Language, OFFERED, PSEUDO, PSEUDO_FROM_RIGHT, REFERENCE, choose, find};
pub use message::{Arg, Message, Unit, name_of};
pub use number::Numbers;
pub use syntax::{Misread, ids, misread};

use number::Digits;

/// Volts below which a meter shows nothing: assumption, the last digit of a common one.
const LEAST_V: f64 = 0.05;

/// The words of one language.
/// Cheap to clone and safe to share between threads.
#[derive(Clone)]
pub struct Words {
    language: Language,
    numbers: String,
    bundle: Arc<FluentBundle<FluentResource>>,
}

impl Words {
    /// The words for a tag; English if the tag names no language that is there.
    ///
    /// ```
    /// use outage_drill::words::{Message, Unit, Words};
    ///
    /// let line = Message::new("range").quantity("low", 7200.0, Unit::Plain).quantity("high", 7300.0, Unit::Volts);
    /// assert_eq!(Words::new("en").say(&line), "7,200 to 7,300\u{a0}V");
    /// assert_eq!(Words::new("es").say(&line), "de 7,200 a 7,300\u{a0}V");
    /// ```
    pub fn new(tag: &str) -> Self {
        let language = find(tag).unwrap_or(OFFERED[0]);
        Self {
            language,
            numbers: language::number_locale(tag, language),
            bundle: Arc::new(bundle(language, &word_files(language.folder))),
        }
    }

    /// These words with more of them, each a language's folder and a text in Fluent syntax; what is there already is said anew.
    #[must_use]
    pub fn with(&self, more: &[(String, String)]) -> Self {
        let own = more
            .iter()
            .filter(|(folder, _)| folder == self.language.folder);
        let own: Vec<&str> = own.map(|(_, text)| text.as_str()).collect();
        if own.is_empty() {
            return self.clone();
        }
        let mut bundle = bundle(self.language, &word_files(self.language.folder));
        for text in own {
            bundle.add_resource_overriding(resource(text));
        }
        Self {
            bundle: Arc::new(bundle),
            ..self.clone()
        }
    }

    /// The tag of the language spoken.
    pub fn tag(&self) -> &'static str {
        self.language.tag
    }

    /// Whether the language is read from right to left.
    pub fn is_from_right(&self) -> bool {
        language::is_from_right(self.language.tag)
    }

    /// Whether there are words for this id: a message of its own, or a name made of names that have one.
    pub fn has(&self, id: &str) -> bool {
        self.has_own(id) || self.whole(id).is_some()
    }

    /// For a name made of another: the message that makes it, and the id of the other's words, its own or those of its circuit.
    fn whole(&self, id: &str) -> Option<(&'static str, String)> {
        parts::parts(id).find_map(|(message, of)| {
            let own = format!("name-{of}");
            let circuit = format!("name-circuit-{of}");
            let known = if self.has_own(&circuit) { circuit } else { own };
            self.has(&known).then_some((message, known))
        })
    }

    fn has_own(&self, id: &str) -> bool {
        self.bundle
            .get_message(id)
            .is_some_and(|message| message.value().is_some())
    }

    /// A message without arguments, in words.
    pub fn say_id(&self, id: &str) -> String {
        self.format(id, None)
    }

    /// A message in words.
    ///
    /// An id that is not in the files comes back in brackets, and a missing argument as its name in braces.
    pub fn say(&self, message: &Message) -> String {
        let mut args = FluentArgs::with_capacity(message.args.len());
        for (name, arg) in &message.args {
            args.set(*name, self.value(arg));
        }
        self.format(&message.id, Some(&args))
    }

    /// A message in words with a capital first letter: the name of a thing as a label or at the head of a sentence.
    pub fn label(&self, message: &Message) -> String {
        let text = self.say(message);
        let mut letters = text.chars();
        letters.next().map_or_else(String::new, |first| {
            first.to_uppercase().chain(letters).collect()
        })
    }

    /// How numbers are written without words around them.
    pub fn numbers(&self) -> Numbers {
        Numbers {
            locale: self.numbers.clone(),
        }
    }

    /// A quantity in words, as [`Arg::Quantity`] gives it inside a message.
    /// Volts that no meter shows are told as none.
    pub fn quantity(&self, value: f64, unit: Unit) -> String {
        let unseen = unit == Unit::Volts && value.abs() < LEAST_V;
        let value = if unseen { 0.0 } else { value };
        let digits = if unit == Unit::Celsius {
            Digits::Whole
        } else {
            Digits::Single
        };
        number::format(value, digits, &self.numbers).map_or_else(
            || self.say_id("quantity-unknown"),
            |number| self.with_unit(value, unit, number),
        )
    }

    fn value(&self, arg: &Arg) -> FluentValue<'static> {
        match arg {
            Arg::Quantity(value, unit) => self.quantity(*value, *unit).into(),
            Arg::Range(low, high, unit) => self.range(*low, *high, *unit).into(),
            Arg::Count(count) => FluentValue::from(*count),
            Arg::Clock(time) => {
                let seconds = time.millis() / 1000;
                format!("{}:{:02}", seconds / 60, seconds % 60).into()
            }
            Arg::Said(message) => self.say(message).into(),
            Arg::Verbatim(text) => text.clone().into(),
        }
    }

    fn range(&self, low: f64, high: f64, unit: Unit) -> String {
        let whole = low.fract() == 0.0 && high.fract() == 0.0;
        let digits = if whole || unit == Unit::Celsius {
            Digits::Whole
        } else {
            Digits::RangeEnd
        };
        let end = |value: f64| number::format(value, digits, &self.numbers);
        let (Some(low_number), Some(high_number)) = (end(low), end(high)) else {
            return self.say_id("quantity-unknown");
        };
        if low_number == high_number {
            return self.with_unit(high, unit, high_number);
        }
        let mut args = FluentArgs::with_capacity(2);
        args.set("high", self.with_unit(high, unit, high_number));
        let converted = matches!(unit, Unit::Celsius | Unit::Feet);
        args.set(
            "low",
            if converted {
                self.with_unit(low, unit, low_number)
            } else {
                low_number
            },
        );
        self.format("range", Some(&args))
    }

    fn with_unit(&self, value: f64, unit: Unit, number: String) -> String {
        let mut args = FluentArgs::with_capacity(2);
        args.set("number", number);
        let other = match unit {
            Unit::Celsius => Some(("fahrenheit", value * 1.8 + 32.0, Digits::Whole)),
            Unit::Feet => Some(("meters", value * 0.3048, Digits::Meters)),
            Unit::Volts
            | Unit::Amps
            | Unit::Milliamps
            | Unit::Watts
            | Unit::Ohms
            | Unit::Hertz
            | Unit::Ppm
            | Unit::Percent
            | Unit::Gallons
            | Unit::Grams
            | Unit::Degrees
            | Unit::Seconds
            | Unit::Plain => None,
        };
        if let Some((name, value, digits)) = other {
            args.set(
                name,
                number::format(value, digits, &self.numbers).unwrap_or_default(),
            );
        }
        self.format(unit_id(unit), Some(&args))
    }

    /// A name made of the name of what it is a part of.
    fn part(&self, id: &str) -> Option<String> {
        let (message, of) = self.whole(id)?;
        let mut args = FluentArgs::with_capacity(1);
        // Where both say how the one follows the other, as “del calefactor” does in Spanish, that is taken.
        if let (Some(name), Some(whole)) = (self.joined(&of), self.joined(message)) {
            args.set("of", self.pattern(name, None));
            return Some(self.pattern(whole, Some(&args)));
        }
        args.set("of", self.format(&of, None));
        Some(self.format(message, Some(&args)))
    }

    /// How a name follows another, or how a name is made with one that does: its attribute for that.
    fn joined(&self, id: &str) -> Option<&Pattern<&str>> {
        let attribute = self.bundle.get_message(id)?.get_attribute(audit::JOINED)?;
        Some(attribute.value())
    }

    fn format(&self, id: &str, args: Option<&FluentArgs<'_>>) -> String {
        self.bundle
            .get_message(id)
            .and_then(|message| message.value())
            .map(|pattern| self.pattern(pattern, args))
            .or_else(|| self.part(id))
            .unwrap_or_else(|| format!("[{id}]"))
    }

    fn pattern(&self, pattern: &Pattern<&str>, args: Option<&FluentArgs<'_>>) -> String {
        // What goes wrong here shows in the text itself, and the audit lets none of it pass.
        let mut errors = Vec::new();
        let said = self.bundle.format_pattern(pattern, args, &mut errors);
        said.into_owned()
    }
}

impl fmt::Debug for Words {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Words")
            .field("tag", &self.language.tag)
            .field("numbers", &self.numbers)
            .finish_non_exhaustive()
    }
}

impl Default for Words {
    fn default() -> Self {
        Self::new(REFERENCE)
    }
}

fn unit_id(unit: Unit) -> &'static str {
    match unit {
        Unit::Volts => "unit-volts",
        Unit::Amps => "unit-amps",
        Unit::Milliamps => "unit-milliamps",
        Unit::Watts => "unit-watts",
        Unit::Ohms => "unit-ohms",
        Unit::Hertz => "unit-hertz",
        Unit::Celsius => "unit-celsius",
        Unit::Ppm => "unit-ppm",
        Unit::Percent => "unit-percent",
        Unit::Feet => "unit-feet",
        Unit::Gallons => "unit-gallons",
        Unit::Grams => "unit-grams",
        Unit::Degrees => "unit-degrees",
        Unit::Seconds => "unit-seconds",
        Unit::Plain => "unit-plain",
    }
}

/// A bundle of these files; messages that do not parse are left out, and the audit names them.
fn bundle(language: Language, files: &[WordFile]) -> FluentBundle<FluentResource> {
    let id: LanguageIdentifier = language.folder.parse().unwrap_or_default();
    let mut bundle = FluentBundle::new_concurrent(vec![id.clone()]);
    bundle.set_use_isolating(id.character_direction() == CharacterDirection::RTL);
    if language.tag == PSEUDO {
        bundle.set_transform(Some(pseudo::transform));
    }
    for file in files {
        bundle.add_resource_overriding(resource(file.text));
    }
    bundle
}

/// The messages of a text, without those that don't parse.
fn resource(text: &str) -> FluentResource {
    FluentResource::try_new(text.to_owned()).unwrap_or_else(|(resource, _)| resource)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::DrillTime;

    fn say(tag: &str, arg: Arg) -> String {
        Words::new(tag).say(&Message::new("unit-plain").with("number", arg))
    }

    #[test]
    fn a_number_and_its_unit_are_one_piece_in_the_readers_own_writing() {
        let volts = || Arg::Quantity(7200.0, Unit::Volts);
        assert_eq!(say("en", volts()), "7,200\u{a0}V");
        assert_eq!(say("es", volts()), "7,200\u{a0}V");
        assert_eq!(say("es-CO", volts()), "7.200\u{a0}V");
        assert_eq!(say("es", Arg::Quantity(15.0, Unit::Percent)), "15\u{a0}%");
    }

    #[test]
    fn a_range_has_words_of_its_own_and_two_digits_an_end() {
        let range = || Arg::Range(2.04, 3.57, Unit::Amps);
        assert_eq!(say("en", range()), "2.0 to 3.6\u{a0}A");
        assert_eq!(say("es", range()), "de 2.0 a 3.6\u{a0}A");
        assert_eq!(say("en", Arg::Range(2.01, 2.02, Unit::Amps)), "2.0\u{a0}A");
        assert_eq!(
            say("en", Arg::Range(20.0, 30.0, Unit::Amps)),
            "20 to 30\u{a0}A"
        );
        assert_eq!(
            say("en", Arg::Range(0.0, f64::NAN, Unit::Amps)),
            "not known"
        );
    }

    #[test]
    fn lengths_and_temperatures_come_in_both_units_the_readers_own_first() {
        assert_eq!(
            say("en", Arg::Quantity(20.0, Unit::Feet)),
            "20\u{a0}ft (6\u{a0}m)"
        );
        assert_eq!(
            say("es", Arg::Quantity(20.0, Unit::Feet)),
            "6\u{a0}m (20\u{a0}pies)"
        );
        assert_eq!(
            say("en", Arg::Quantity(60.0, Unit::Celsius)),
            "140\u{a0}°F (60\u{a0}°C)"
        );
        assert_eq!(
            say("es", Arg::Quantity(60.0, Unit::Celsius)),
            "60\u{a0}°C (140\u{a0}°F)"
        );
    }

    #[test]
    fn drill_time_reads_as_minutes_and_seconds() {
        assert_eq!(
            say("en", Arg::Clock(DrillTime::from_millis(150_999))),
            "2:30"
        );
        assert_eq!(say("es", Arg::Clock(DrillTime::from_secs(3605))), "60:05");
    }

    #[test]
    fn a_message_can_hold_another_in_the_same_language() {
        let inner = Message::new("unit-percent").with("number", Arg::Count(15));
        assert_eq!(say("es", Arg::Said(Box::new(inner))), "15\u{a0}%");
    }

    #[test]
    fn what_is_missing_shows_itself_and_never_panics() {
        let words = Words::new("en");
        assert_eq!(words.say_id("no-such-message"), "[no-such-message]");
        assert_eq!(words.say_id("unit-plain"), "{$number}");
        assert!(!words.has("no-such-message"));
        assert!(words.has("unit-plain"));
    }

    #[test]
    fn the_pseudo_locale_changes_text_and_leaves_quantities_alone() {
        let words = Words::new(PSEUDO);
        assert_eq!(words.quantity(2.5, Unit::Amps), "2.5\u{a0}A");
        assert_eq!(words.say_id("quantity-unknown"), "ñóóŧ ķñóóŵñ");
    }
}
