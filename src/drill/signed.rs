//! Who sat at a drill, how they sat, and on which day: what a run's file says of its learners.
//!
//! All of it may be left out, and nothing of it changes how a run plays or is marked.

use crate::units::Day;
use crate::words::{Arg, Message};

/// How learners sat at the drill.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Seated {
    /// One learner at a machine.
    Alone,
    /// One machine, where one learner after another takes over.
    InTurns,
    /// One machine, where all decide together.
    AsATeam,
    /// Two to a machine.
    InPairs,
}

impl Seated {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Alone, Self::InTurns, Self::AsATeam, Self::InPairs];

    /// Its name in run files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Alone => "alone",
            Self::InTurns => "in-turns",
            Self::AsATeam => "as-a-team",
            Self::InPairs => "in-pairs",
        }
    }

    /// The one with this name.
    ///
    /// # Errors
    /// That there is none, and which there are.
    pub fn named(name: &str) -> Result<Self, Message> {
        let found = Self::ALL.into_iter().find(|s| s.name() == name);
        found.ok_or_else(|| {
            let known = Self::ALL.map(Self::name).join(", ");
            Message::new("error-seated")
                .with("name", Arg::Verbatim(name.to_owned()))
                .with("known", Arg::Verbatim(known))
        })
    }
}

/// Most letters of a name.
const LETTERS: usize = 60;
/// Most learners of one run.
const LEARNERS: usize = 40;

/// Who sat at a drill, how, and when.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Signed {
    learners: Vec<String>,
    seated: Option<Seated>,
    day: Option<Day>,
}

impl Signed {
    /// What is said of the learners; names lose the white space around them.
    ///
    /// # Errors
    /// What is wrong with a name, or that more are named than sit so.
    pub fn new(
        learners: &[String],
        seated: Option<Seated>,
        day: Option<Day>,
    ) -> Result<Self, Message> {
        let mut own: Vec<String> = Vec::new();
        for name in learners {
            let name = sound(name)?;
            if own.contains(&name) {
                return Err(Message::new("error-learner-twice").with("name", Arg::Verbatim(name)));
            }
            own.push(name);
        }
        let most = match seated {
            Some(Seated::Alone) => 1,
            Some(Seated::InPairs) => 2,
            Some(Seated::InTurns | Seated::AsATeam) | None => LEARNERS,
        };
        if own.len() > most {
            let given = i64::try_from(own.len()).unwrap_or(i64::MAX);
            return Err(Message::new("error-learners-many")
                .with("given", Arg::Count(given))
                .with("most", Arg::Count(i64::try_from(most).unwrap_or(i64::MAX))));
        }
        Ok(Self {
            learners: own,
            seated,
            day,
        })
    }

    /// The names, in the order in which they were given.
    pub fn learners(&self) -> &[String] {
        &self.learners
    }

    /// How they sat, if that is known.
    pub fn seated(&self) -> Option<Seated> {
        self.seated
    }

    /// The day, if that is known.
    pub fn day(&self) -> Option<Day> {
        self.day
    }

    /// The learner who takes over from those who sat there `before`: the last of one name more, where they sit in turns.
    pub fn takes_over(&self, before: &Self) -> Option<&str> {
        let in_turns = matches!(self.seated, None | Some(Seated::InTurns));
        let own = before.learners.len();
        let more = own > 0 && self.learners.len() == own + 1;
        let goes_on = more && self.learners.starts_with(&before.learners);
        let last = self.learners.last().filter(|_| goes_on && in_turns);
        last.map(String::as_str)
    }

    /// Whether nothing is said of a second learner.
    pub fn is_alone(&self) -> bool {
        self.learners.len() <= 1 && matches!(self.seated, None | Some(Seated::Alone))
    }
}

/// A name without the white space around it.
fn sound(name: &str) -> Result<String, Message> {
    let name = name.trim();
    if name.is_empty() {
        return Err(Message::new("error-learner-empty"));
    }
    // Signs that break a line or turn it around would forge what a run file or a roster says.
    let odd = |c: char| {
        c.is_control()
            || ('\u{2028}'..='\u{202e}').contains(&c)
            || ('\u{2066}'..='\u{2069}').contains(&c)
    };
    if name.contains(odd) {
        return Err(Message::new("error-learner-odd"));
    }
    if name.chars().count() > LETTERS {
        let most = i64::try_from(LETTERS).unwrap_or(i64::MAX);
        return Err(Message::new("error-learner-long").with("most", Arg::Count(most)));
    }
    Ok(name.to_owned())
}
