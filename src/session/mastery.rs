//! What a learner has shown unaided, how much of it is left, and what to practice when.
//!
//! Counted are saved runs that were played alone, as a test, without going back, on a day that is known.

use crate::file::Library;
use crate::marking::{Memory, Objective, WANTED};
use crate::scenario::course::Direction;
use crate::units::Day;
use crate::words::{Message, Words};

use super::Practice;
use super::practise::Played;

/// What a learner's runs show.
#[derive(Debug, Clone, Default)]
pub struct Shown {
    tries: Vec<(Objective, Day, bool)>,
    /// How many runs count.
    pub runs: usize,
    /// The day of the last of them.
    pub last: Option<Day>,
}

/// One objective, as it stands for a learner.
#[derive(Debug, Clone, PartialEq)]
pub struct MasteryRead {
    /// The objective, in words.
    pub title: String,
    /// On how many tries it was shown.
    pub passes: usize,
    /// On how many it was not.
    pub fails: usize,
    /// What is left of it; none if it was never tried.
    pub memory: Option<Memory>,
    /// What is recalled today, 0 to 1.
    pub recall: f64,
    /// Whether a refresher is due today.
    pub is_due: bool,
    /// The day of the refresher that keeps it until the season; none if it keeps without, or no season was named.
    pub for_season: Option<Day>,
    /// The easiest drill that asks for it, by name; empty if there is none.
    pub drill: String,
}

impl Shown {
    /// Counts a run; says whether it counts.
    pub fn add(&mut self, played: &Played) -> bool {
        let Some(open) = &played.session.open else {
            return false;
        };
        let signed = &open.beside.signed;
        let unaided = open.beside.practice == Some(Practice::Assessed) && signed.is_alone();
        let Some(day) = signed.day().filter(|_| unaided) else {
            return false;
        };
        let shown =
            |o: Objective| o.shown(open.drill.scenario(), open.drill.trace(), &played.verdict);
        let tries = Objective::all().into_iter();
        self.tries
            .extend(tries.filter_map(|o| shown(o).map(|passed| (o, day, passed))));
        self.runs += 1;
        self.last = self.last.max(Some(day));
        true
    }

    /// How each objective stands on a day, with a season to be ready for; what is due comes first, and what was never tried last.
    pub fn read(
        &self,
        library: &Library,
        words: &Words,
        today: Day,
        season: Option<Day>,
    ) -> Vec<MasteryRead> {
        let read = |objective: Objective| {
            let own = self.tries.iter().filter(|(o, ..)| *o == objective);
            let tries: Vec<(Day, bool)> = own.map(|(_, day, passed)| (*day, *passed)).collect();
            let memory = Memory::of(&tries);
            let passes = tries.iter().filter(|(_, passed)| *passed).count();
            let asked = library.scenarios.iter();
            let asked = asked.filter(|s| objective.is_asked(&s.course));
            let drill = asked.min_by_key(|s| s.course.level);
            let recall = memory.map_or(0.0, |m| m.recall(today));
            MasteryRead {
                title: words.say(&title(objective)),
                passes,
                fails: tries.len() - passes,
                memory,
                recall,
                is_due: memory.is_some_and(|m| m.due() <= today) || recall < WANTED,
                for_season: season.and_then(|later| match memory {
                    Some(memory) => memory.refresh_for(later, today),
                    None => Some(today),
                }),
                drill: drill.map_or_else(String::new, |s| s.name.clone()),
            }
        };
        let mut all: Vec<MasteryRead> = Objective::all().into_iter().map(read).collect();
        all.sort_by_key(|m| (m.memory.is_none(), m.memory.map(|m| m.due())));
        all
    }
}

fn title(objective: Objective) -> Message {
    match objective {
        Objective::Switch(way, direction) => {
            let direction = match direction {
                Direction::Out => "directions-out",
                Direction::Back => "directions-back",
            };
            Message::new("mastery-switch")
                .said("way", Message::new(format!("way-{}", way.name())))
                .said("direction", Message::new(direction))
        }
        Objective::Skill(skill) => Message::new(format!("skill-{}", skill.name())),
    }
}
