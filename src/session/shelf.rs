//! The shelf as a view.

use crate::scenario::Scenario;
use crate::scenario::course::{Direction, Level, TRACKS, Track};
use crate::scenario::lesson::{Lesson, Sitting, Step};
use crate::units::DrillTime;
use crate::words::{Arg, Message};

use super::Session;
use super::lesson::to_open;
use super::view::{DrillCard, LessonCard, PartView, ShelfView, SittingView, TrackCard};

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
            lessons: self
                .library
                .lessons
                .iter()
                .map(|l| self.lesson_card(l))
                .collect(),
            lessons_title: self.words.say_id("shelf-lessons"),
            drills: self.cards(),
        }
    }

    fn lesson_card(&self, lesson: &Lesson) -> LessonCard {
        let about = |part: &str| self.words.say_id(&format!("lesson-{}-{part}", lesson.name));
        let sitting = |sitting: &Sitting| SittingView {
            title: self.words.say_id(&format!("sitting-{}", sitting.name)),
            minutes: self.minutes(sitting.minutes),
            parts: sitting.steps.iter().map(|s| self.part(s)).collect(),
        };
        LessonCard {
            name: lesson.name.clone(),
            title: about("title"),
            about: about("about"),
            track: lesson.track.name().to_owned(),
            minutes: self.minutes(lesson.minutes()),
            sittings: lesson.sittings.iter().map(sitting).collect(),
        }
    }

    fn part(&self, step: &Step) -> PartView {
        PartView {
            minutes: self.minutes(step.minutes),
            text: self.step_title(step),
            drill: to_open(step),
        }
    }

    pub(super) fn minutes(&self, minutes: u32) -> String {
        let minutes = Arg::Count(i64::from(minutes));
        self.words
            .say(&Message::new("shelf-minutes").with("minutes", minutes))
    }

    fn track(&self, track: Track) -> TrackCard {
        TrackCard {
            name: track.name().to_owned(),
            title: self.words.say_id(&format!("track-{}", track.name())),
        }
    }

    /// All drills, the easiest first, and among them those that practice the same way together.
    /// First looks come by their length, so that the shelf begins with the shortest.
    fn cards(&self) -> Vec<DrillCard> {
        let mut scenarios: Vec<_> = self.library.scenarios.iter().collect();
        scenarios.sort_by_key(|s| {
            let first_look = s.course.level == Level::FirstLook;
            let length = if first_look {
                s.ends_at
            } else {
                DrillTime::ZERO
            };
            (s.course.level, length, s.course.way, s.ends_at)
        });
        scenarios.into_iter().map(|s| self.card(s)).collect()
    }

    /// What the word files say of a drill; for one that came without words its name as the title, and nothing else.
    pub(super) fn drill_words(&self, name: &str, part: &str) -> String {
        let id = format!("drill-{name}-{part}");
        match part {
            _ if self.words.has(&id) => self.words.say_id(&id),
            "title" => name.to_owned(),
            _ => String::new(),
        }
    }

    fn card(&self, scenario: &Scenario) -> DrillCard {
        let name = &scenario.name;
        let about = |part: &str| self.drill_words(name, part);
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
            directions: self.words.say_id(directions(&course.directions)),
            minutes: self
                .words
                .say(&Message::new("shelf-most-minutes").with("minutes", minutes)),
            facts: self.words.say(&facts),
            content_note: about("note"),
            open: self.words.say_id("shelf-open"),
            another_seed: self.next_seed,
        }
    }
}

/// The id of what is said of the directions that a drill practices.
fn directions(directions: &[Direction]) -> &'static str {
    let has = |direction| directions.contains(&direction);
    match (has(Direction::Out), has(Direction::Back)) {
        (true, true) => "directions-both",
        (true, false) => "directions-out",
        (false, true) => "directions-back",
        (false, false) => "directions-none",
    }
}
