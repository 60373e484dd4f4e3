//! The shelf as a view.

use crate::scenario::Scenario;
use crate::words::{Arg, Message};

use super::Session;
use super::view::{DrillCard, ShelfView};

const N_CAUTIONS: usize = 8;

impl Session {
    /// The shelf.
    pub fn shelf(&self) -> ShelfView {
        ShelfView {
            title: self.words.say_id("shelf-title"),
            intro: self.words.say_id("shelf-intro"),
            cautions: (1..=N_CAUTIONS)
                .map(|n| self.words.say_id(&format!("caution-{n}")))
                .collect(),
            cautions_title: self.words.say_id("shelf-cautions-title"),
            cautions_accept: self.words.say_id("shelf-cautions-accept"),
            drills: self.cards(),
        }
    }

    /// All drills, those that practice the same way together.
    fn cards(&self) -> Vec<DrillCard> {
        let mut scenarios: Vec<_> = self.library.scenarios.iter().collect();
        scenarios.sort_by_key(|s| (s.course.way, s.course.level));
        scenarios.into_iter().map(|s| self.card(s)).collect()
    }

    fn card(&self, scenario: &Scenario) -> DrillCard {
        let name = &scenario.name;
        let about = |part: &str| self.words.say_id(&format!("drill-{name}-{part}"));
        let minutes =
            Arg::Count(i64::try_from(scenario.ends_at.millis() / 60_000).unwrap_or_default());
        let facts = Message::new("shelf-facts")
            .with("minutes", minutes.clone())
            .with(
                "circuits",
                Arg::Count(i64::try_from(scenario.site.circuits.len()).unwrap_or_default()),
            );
        DrillCard {
            name: name.clone(),
            title: about("title"),
            summary: about("summary"),
            way: self
                .words
                .say_id(&format!("way-{}", scenario.course.way.name())),
            minutes: self
                .words
                .say(&Message::new("shelf-minutes").with("minutes", minutes)),
            facts: self.words.say(&facts),
            content_note: about("note"),
            open: self.words.say_id("shelf-open"),
        }
    }
}
