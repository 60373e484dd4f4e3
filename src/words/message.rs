//! What is said, before it is said in a language: a message id with typed arguments.
//!
//! The model and the marking hand out messages; only a front end turns one into words, through [`crate::words::Words`].
//! A quantity is one argument that holds the number *and* its unit, so that no language can part them.

use crate::units::DrillTime;

/// A message id of the word files, with its arguments.
#[derive(Debug, Clone, PartialEq)]
pub struct Message {
    /// The id in the Fluent files.
    pub id: String,
    /// Arguments by name.
    pub args: Vec<(&'static str, Arg)>,
}

/// One argument of a message.
#[derive(Debug, Clone, PartialEq)]
pub enum Arg {
    /// A number with its unit, formatted for the reader's language.
    Quantity(f64, Unit),
    /// A range in one unit, from low to high.
    Range(f64, f64, Unit),
    /// A whole count, which also selects plural forms.
    Count(i64),
    /// A length or an instant of drill time, as minutes and seconds.
    Clock(DrillTime),
    /// Another message, said in the same language: the name of a thing, most often.
    Said(Box<Message>),
    /// Text that is the same in every language: a name that a person gave, a file name.
    Verbatim(String),
}

impl Arg {
    /// A length of time in words: a moment below a second, seconds below a minute, minutes and seconds below two hours, hours and minutes above.
    pub fn lasting(time: DrillTime) -> Self {
        const MINUTE: DrillTime = DrillTime::from_secs(60);
        const TWO_HOURS: i64 = 7200;
        if time < DrillTime::from_secs(1) {
            return Self::Said(Box::new(Message::new("lasting-moment")));
        }
        if time < MINUTE {
            return Self::Quantity(time.seconds(), Unit::Seconds);
        }
        let seconds = i64::try_from(time.millis() / 1000).unwrap_or(i64::MAX);
        if seconds >= TWO_HOURS {
            let message = Message::new("lasting-hours")
                .with("hours", Self::Count(seconds / 3600))
                .with("minutes", Self::Count(seconds / 60 % 60));
            return Self::Said(Box::new(message));
        }
        let message = Message::new("lasting-minutes")
            .with("minutes", Self::Count(seconds / 60))
            .with("seconds", Self::Count(seconds % 60));
        Self::Said(Box::new(message))
    }

    /// The same where there is little room: minutes and seconds by their signs.
    pub fn lasting_in_short(time: DrillTime) -> Self {
        let seconds = i64::try_from(time.millis() / 1000).unwrap_or(i64::MAX);
        let (minutes, rest) = (seconds / 60, seconds % 60);
        if minutes == 0 {
            return Self::Quantity(time.seconds(), Unit::Seconds);
        }
        let id = if rest == 0 {
            "lasting-short-minutes"
        } else {
            "lasting-short"
        };
        let message = Message::new(id).with("minutes", Self::Count(minutes));
        Self::Said(Box::new(if rest == 0 {
            message
        } else {
            message.with("seconds", Self::Count(rest))
        }))
    }
}

/// Units that messages speak of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Unit {
    /// Volts.
    Volts,
    /// Amps.
    Amps,
    /// Milliamps.
    Milliamps,
    /// Watts.
    Watts,
    /// Ohms.
    Ohms,
    /// Hertz.
    Hertz,
    /// Degrees Celsius; a language may show Fahrenheit beside it.
    Celsius,
    /// Parts per million.
    Ppm,
    /// Percent.
    Percent,
    /// Feet; a language may show meters beside it.
    Feet,
    /// Gallons.
    Gallons,
    /// Grams.
    Grams,
    /// Degrees of phase angle.
    Degrees,
    /// Seconds.
    Seconds,
    /// A plain number, such as a ratio.
    Plain,
}

impl Message {
    /// A message without arguments.
    pub fn new(id: impl Into<String>) -> Self {
        Self {
            id: id.into(),
            args: Vec::new(),
        }
    }

    /// This message with one more argument.
    #[must_use]
    pub fn with(mut self, name: &'static str, arg: Arg) -> Self {
        self.args.push((name, arg));
        self
    }

    /// This message with a quantity.
    #[must_use]
    pub fn quantity(self, name: &'static str, value: f64, unit: Unit) -> Self {
        self.with(name, Arg::Quantity(value, unit))
    }

    /// This message with another message inside.
    #[must_use]
    pub fn said(self, name: &'static str, message: Self) -> Self {
        self.with(name, Arg::Said(Box::new(message)))
    }

    /// This message with the name of a thing of the site: a control, a position, an appliance, a point.
    /// Names live in the word files under `name-…`.
    #[must_use]
    pub fn name(self, arg: &'static str, thing: &str) -> Self {
        self.said(arg, name_of(thing))
    }
}

/// The message that names a thing of the site.
pub fn name_of(thing: &str) -> Message {
    Message::new(format!("name-{thing}"))
}
