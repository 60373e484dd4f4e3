//! The shelf as a view.

use std::sync::Arc;

use crate::scenario::Scenario;
use crate::scenario::course::{TRACKS, Track};
use crate::words::{Arg, Message};

use super::Session;
use super::view::{DrillCard, ShelfView, TrackCard};

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
            tracks: TRACKS.into_iter().map(|t| self.track(t)).collect(),
            drills: self.cards(),
        }
    }

    fn track(&self, track: Track) -> TrackCard {
        let of = |s: &&Arc<Scenario>| s.course.tracks.contains(&track);
        TrackCard {
            name: track.name().to_owned(),
            title: self.words.say_id(&format!("track-{}", track.name())),
            drills: self.library.scenarios.iter().filter(of).count(),
        }
    }

    /// All drills, the easiest first, and among them those that practice the same way together.
    fn cards(&self) -> Vec<DrillCard> {
        let mut scenarios: Vec<_> = self.library.scenarios.iter().collect();
        scenarios.sort_by_key(|s| (s.course.level, s.course.way));
        scenarios.into_iter().map(|s| self.card(s)).collect()
    }

    fn card(&self, scenario: &Scenario) -> DrillCard {
        let name = &scenario.name;
        let about = |part: &str| self.words.say_id(&format!("drill-{name}-{part}"));
        let minutes =
            Arg::Count(i64::try_from(scenario.ends_at.millis() / 60_000).unwrap_or_default());
        let course = &scenario.course;
        let way = format!("way-{}", course.way.name());
        let facts = Message::new("shelf-facts")
            .said("way", Message::new(way.clone()))
            .with("minutes", minutes.clone())
            .with(
                "circuits",
                Arg::Count(i64::try_from(scenario.site.circuits.len()).unwrap_or_default()),
            );
        DrillCard {
            name: name.clone(),
            title: about("title"),
            summary: about("summary"),
            tracks: course.tracks.iter().map(|t| t.name().to_owned()).collect(),
            level: self
                .words
                .say_id(&format!("level-{}", course.level.number())),
            way: self.words.say_id(&way),
            minutes: self
                .words
                .say(&Message::new("shelf-minutes").with("minutes", minutes)),
            facts: self.words.say(&facts),
            content_note: about("note"),
            open: self.words.say_id("shelf-open"),
        }
    }
}
