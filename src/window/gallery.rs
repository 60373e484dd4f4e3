//! The screens that can be drawn as pictures, each as a short script that a learner could play.
//!
//! The scripts are in `gallery.txt`, which says how they are written.
//! It does not cover every state of a screen: the pictures are chosen so that a change of look shows in one of them.

use bevy::math::Vec2;

use crate::session::{Command, Practice, Rewind};

use super::desk::Face;
use super::link::Wish;
use super::panels::span::Span;
use super::picture::Picture;
use super::scene::sight::{See, Sight};

const SCRIPTS: &str = include_str!("gallery.txt");

/// What is drawn by chance in the drills of the gallery.
const SEED: u64 = 1;

/// The size of a picture that names none.
const SIZE: (u32, u32) = (1280, 720);

/// How sure the learner of the gallery is of a prediction, percent.
const SURE: u8 = 70;

/// A part of the file: its heading in words, and its steps.
type Part = (Vec<&'static str>, Vec<&'static str>);

/// Every screen, in the order of the file.
pub(super) fn screens() -> Vec<Picture> {
    parts()
        .iter()
        .filter_map(|(head, steps)| match head.as_slice() {
            ["screen", name, language, size @ ..] => {
                let mut wishes = vec![Wish::Do(Command::Speak((*language).to_owned()))];
                for step in steps {
                    match step.strip_prefix("use ") {
                        Some(name) => wishes.extend(block(name).into_iter().map(wish)),
                        None => wishes.push(wish(step)),
                    }
                }
                Some(Picture {
                    name: (*name).to_owned(),
                    wishes,
                    size: size.first().map_or(SIZE, |size| self::size(size)),
                })
            }
            _ => None,
        })
        .collect()
}

/// The steps of a block.
pub(super) fn block(name: &str) -> Vec<&'static str> {
    let found = parts()
        .into_iter()
        .find(|(head, _)| *head == ["block", name]);
    found.map(|(_, steps)| steps).unwrap_or_default()
}

fn parts() -> Vec<Part> {
    let mut parts: Vec<Part> = Vec::new();
    let lines = SCRIPTS.lines().map(str::trim);
    for line in lines.filter(|line| !line.is_empty() && !line.starts_with('#')) {
        if line.starts_with("block ") || line.starts_with("screen ") {
            parts.push((line.split(' ').collect(), Vec::new()));
        } else if let Some((_, steps)) = parts.last_mut() {
            steps.push(line);
        }
    }
    parts
}

/// A part of the street that can be named: its left, its middle or its right end, near.
pub(super) fn near(place: &str) -> See {
    let at = match place {
        "line" => Vec2::new(200.0, 300.0),
        "house" => Vec2::new(620.0, 480.0),
        _ => Vec2::new(980.0, 500.0),
    };
    See::Nearer(Sight::default().nearer(2.4, at))
}

/// Width and height as they are written, parted by an x.
fn size(written: &str) -> (u32, u32) {
    let sides = written.split_once('x');
    let read = sides.and_then(|(w, h)| Some((w.parse().ok()?, h.parse().ok()?)));
    read.unwrap_or(SIZE)
}

/// A stretch of the drill: its first and its last second.
fn span(seconds: &str) -> Option<Span> {
    let (from, to) = seconds.split_once(' ')?;
    Some(Span {
        from_ms: from.parse::<u64>().ok()? * 1_000,
        to_ms: to.parse::<u64>().ok()? * 1_000,
    })
}

/// What a step wishes for.
pub(super) fn wish(line: &str) -> Wish {
    let (verb, rest) = line.split_once(' ').unwrap_or((line, ""));
    let open = |practice| {
        Wish::Do(Command::Open {
            drill: rest.to_owned(),
            practice,
            seed: SEED,
        })
    };
    match (verb, rest) {
        ("accept", "") => Wish::Accept,
        ("open", _) => open(Practice::Coached),
        ("assess", _) => open(Practice::Assessed),
        ("place", id) => Wish::Place(id.to_owned()),
        ("back", "") => Wish::Back,
        ("watch", place) => Wish::Again(place.parse().ok()),
        ("words", "") => Wish::Words,
        ("terms", "") => Wish::Terms,
        ("room", "") => Wish::Room,
        ("second", "") => Wish::Second,
        ("branches", "") => Wish::Branches,
        ("rewind", "") => Wish::Do(Command::Rewind(Rewind::Mistake)),
        ("hold", "") => Wish::Hold,
        ("larger", "") => Wish::Size(true),
        ("detail", "") => Wish::Detail,
        ("there", "") => Wish::Face(Face::There),
        ("bars", "") => Wish::Face(Face::Bars),
        ("see", place) => Wish::See(near(place)),
        ("span", seconds) => Wish::Span(span(seconds)),
        ("cover", "") => Wish::Do(Command::Cover(true)),
        ("shine", id) => Wish::Shine(id.to_owned()),
        ("teach", name) => Wish::Teach(name.to_owned()),
        ("turn", number) => Wish::Turn(number.parse().unwrap_or_default()),
        ("keys", "") => Wish::Keys,
        ("stage", number) => Wish::Stage(number.parse().unwrap_or_default()),
        ("predict", answer) => Wish::Do(Command::Predict {
            answer: answer.to_owned(),
            sure: SURE,
        }),
        ("understood", "") => Wish::Do(Command::Understood),
        ("until", "") => Wish::Do(Command::WaitForEvent),
        ("hint", "") => Wish::Do(Command::Hint),
        ("finish", "") => Wish::Do(Command::Finish),
        ("onward", "") => Wish::Do(Command::Onward),
        ("reflect", words) => Wish::Do(Command::Reflect(words.to_owned())),
        _ => Wish::Do(Command::Do(line.to_owned())),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_given_once_and_no_script_is_lost() {
        let screens = screens();
        let written = SCRIPTS.lines().filter(|l| l.starts_with("screen ")).count();
        assert_eq!(screens.len(), written);
        for (i, one) in screens.iter().enumerate() {
            let again = screens.iter().skip(i + 1).any(|o| o.name == one.name);
            assert!(!again, "{}", one.name);
        }
    }

    #[test]
    fn a_size_is_read_and_one_that_is_not_given_is_the_usual() {
        assert_eq!(size("1024x640"), (1024, 640));
        let sizes: Vec<(u32, u32)> = screens().iter().map(|screen| screen.size).collect();
        assert!(sizes.contains(&SIZE) && sizes.contains(&(1024, 640)));
    }

    #[test]
    fn a_shared_block_is_played_where_it_is_used() {
        let screens = screens();
        let screen = screens.iter().find(|s| s.name == "street-on-generator");
        let step = Wish::Do(Command::Do("set generator-breaker on".to_owned()));
        assert!(screen.is_some_and(|s| s.wishes.contains(&step)));
    }

    #[test]
    fn a_line_that_is_no_step_of_its_own_is_an_action() {
        let action = |line: &str| Wish::Do(Command::Do(line.to_owned()));
        assert_eq!(wish("test bus"), action("test bus"));
        assert_eq!(wish("wait 2m"), action("wait 2m"));
        assert_eq!(wish("place panel"), Wish::Place("panel".to_owned()));
    }
}
