//! The screens that can be drawn as pictures, each as a short script that a learner could play.
//!
//! A script has one step a line: a line of an action file, or one of `accept`, `open NAME`, `test NAME` (opened as a test), `place ID`,
//! `back`, `words`, `keys`, `stage N`, `understood`, `until` (something happens), `finish`.
//! It does not cover every state of a screen: the pictures are chosen so that a change of look shows in one of them.

use crate::session::{Command, Practice};

use super::link::Wish;
use super::picture::Picture;

/// A screen with its name, the language it speaks, and its script.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Screen {
    /// Name, also of the file.
    pub name: &'static str,
    /// Tag of the language.
    pub language: &'static str,
    /// Steps from the start of the program.
    script: &'static str,
}

/// Every screen.
pub const SCREENS: [Screen; 14] = [
    screen("cautions", "en", ""),
    screen("shelf", "en", "accept"),
    screen("street-before", "en", "accept\nopen there-and-back"),
    screen("street-dark", "en", "accept\nopen there-and-back\nwait 12m"),
    screen(
        "panel-main-off",
        "en",
        concat!(
            "accept\nopen there-and-back\nwait 60s\n",
            "set main off\nset breaker-dryer off\nplace panel"
        ),
    ),
    screen(
        "generator-running",
        "en",
        concat!(
            "accept\nopen there-and-back\nwait 60s\n",
            include_str!("gallery/on_generator.txt"),
            "\nplace generator"
        ),
    ),
    screen(
        "street-on-generator",
        "en",
        concat!(
            "accept\nopen there-and-back\nwait 60s\n",
            include_str!("gallery/on_generator.txt")
        ),
    ),
    screen(
        "test-not-yet-known",
        "es",
        "accept\ntest there-and-back\nwait 9m\ntest bus\nplace panel",
    ),
    screen(
        "cords-in-shed",
        "es",
        "accept\nopen no-slide\nwait 60s\nplace cords",
    ),
    screen(
        "line-fed-first",
        "en",
        concat!(
            "accept\nopen no-slide\nwait 10m\n",
            include_str!("gallery/backfeed.txt"),
            "\nstage 0"
        ),
    ),
    screen(
        "line-fed-last",
        "es",
        concat!(
            "accept\nopen no-slide\nwait 10m\n",
            include_str!("gallery/backfeed.txt"),
            "\nstage 99"
        ),
    ),
    screen(
        "debrief-not-passed",
        "en",
        concat!(
            "accept\nopen no-slide\nwait 10m\n",
            include_str!("gallery/backfeed.txt"),
            "\nunderstood\nfinish"
        ),
    ),
    screen(
        "debrief-passed",
        "es",
        concat!(
            "accept\nopen there-and-back\nwait 60s\n",
            include_str!("gallery/on_generator.txt"),
            "\n",
            include_str!("gallery/back_again.txt"),
            "\nfinish"
        ),
    ),
    screen(
        "in-words",
        "es",
        "accept\nopen there-and-back\nwait 2m\nwords",
    ),
];

const fn screen(name: &'static str, language: &'static str, script: &'static str) -> Screen {
    Screen {
        name,
        language,
        script,
    }
}

/// The screen of this name.
pub fn find(name: &str) -> Option<&'static Screen> {
    SCREENS.iter().find(|screen| screen.name == name)
}

impl Screen {
    /// What to draw.
    pub fn picture(&self) -> Picture {
        let mut wishes = vec![Wish::Do(Command::Speak(self.language.to_owned()))];
        wishes.extend(
            self.script
                .lines()
                .map(str::trim)
                .filter(|line| !line.is_empty())
                .map(wish),
        );
        Picture {
            name: self.name.to_owned(),
            wishes,
        }
    }
}

fn wish(line: &str) -> Wish {
    let (verb, rest) = line.split_once(' ').unwrap_or((line, ""));
    let open = |practice| {
        Wish::Do(Command::Open {
            drill: rest.to_owned(),
            practice,
            seed: 1,
        })
    };
    match (verb, rest) {
        ("accept", "") => Wish::Accept,
        ("open", _) => open(Practice::Coached),
        ("test", "there-and-back" | "no-slide") => open(Practice::Assessed),
        ("place", id) => Wish::Place(id.to_owned()),
        ("back", "") => Wish::Back,
        ("words", "") => Wish::Words,
        ("keys", "") => Wish::Keys,
        ("stage", number) => Wish::Stage(number.parse().unwrap_or_default()),
        ("understood", "") => Wish::Do(Command::Understood),
        ("until", "") => Wish::Do(Command::WaitForEvent),
        ("finish", "") => Wish::Do(Command::Finish),
        _ => Wish::Do(Command::Do(line.to_owned())),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_given_once() {
        for (i, one) in SCREENS.iter().enumerate() {
            assert!(
                SCREENS
                    .iter()
                    .skip(i + 1)
                    .all(|other| other.name != one.name),
                "{}",
                one.name
            );
        }
    }

    #[test]
    fn a_line_that_is_no_step_of_its_own_is_an_action() {
        assert_eq!(
            wish("test bus"),
            Wish::Do(Command::Do("test bus".to_owned()))
        );
        assert_eq!(wish("wait 2m"), Wish::Do(Command::Do("wait 2m".to_owned())));
        assert_eq!(wish("place panel"), Wish::Place("panel".to_owned()));
    }
}
