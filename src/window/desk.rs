//! What lies on the desk: how the views are shown, apart from what they say.
//!
//! Wishes that are for the desk alone are done here; the session isn't touched.
//! It does not cover what follows from a command: see [`super::link`].

use bevy::prelude::*;

use crate::session::{Detail, Notice};

use super::link::Wish;
use super::panels::span::Span;
use super::scene::frame::Look;
use super::scene::sight::Outlook;
use super::teach::{Teaching, Wall};

/// What a narrow window shows, one at a time.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Face {
    /// What is being dealt with.
    #[default]
    Here,
    /// The scene, or the curves of a debrief.
    There,
    /// Time, places and what was answered last.
    Bars,
}
/// What lies on the desk: how the views are shown, apart from what they say.
#[derive(Resource, Debug, Default)]
pub(super) struct Desk {
    /// The place that is open as a close view.
    pub(super) place: Option<String>,
    /// The stage of the consequence that is told.
    pub(super) stage: usize,
    /// The track whose drills the shelf shows; the first one at the start.
    pub(super) track: Option<String>,
    /// The drill that is unfolded on the shelf; the first one at the start.
    pub(super) chosen: Option<String>,
    /// Whether the cautions were read since the start.
    pub(super) accepted: bool,
    /// What lies on top of a close view or the log.
    pub(super) sheet: Option<Sheet>,
    /// What a narrow window shows.
    pub(super) face: Face,
    /// The size of texts, by its place among all sizes.
    pub(super) size: Size,
    /// The window's size, pixels of the engine's logical kind.
    pub(super) window: Vec2,
    /// What part of the street is seen.
    pub(super) outlook: Outlook,
    /// What stretch of the drill its debrief shows; none is all of it.
    pub(super) span: Option<Span>,
    /// What of a run that is over is seen again.
    pub(super) again: Option<Watched>,
    /// The lesson that is being taught.
    pub(super) teaching: Option<Teaching>,
    /// How the wall shows a drill.
    pub(super) wall: Wall,
    /// Whether motion is switched off.
    pub(super) still: bool,
    /// How much is told of what is electric.
    pub(super) detail: Detail,
    /// Whether a language was chosen here.
    pub(super) spoke: bool,
    /// Where the picture that was kept last lies, or why it does not.
    pub(super) kept: Option<String>,
    /// What the session answered last.
    pub(super) notice: Option<Notice>,
    /// Grows when the keyboard's focus should go to the first thing of what has just come up.
    pub(super) arrivals: u32,
}

/// A moment of a run that is over.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Watched {
    /// Its place among all moments.
    pub(super) place: usize,
    /// Whether the next one follows by itself.
    pub(super) plays: bool,
}

/// A sheet of text that can be laid on the desk.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Sheet {
    /// The scene in words.
    Words,
    /// The keys.
    Keys,
    /// The words of the trade.
    Terms,
    /// What an instructor needs.
    Room,
    /// How two branches differ.
    Branches,
}

/// How large texts are: a place among [`SIZES`]; as long as nobody chose one, they grow with the window.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) struct Size(Option<usize>);

/// Sizes of texts, percent of the usual one.
pub(super) const SIZES: [u16; 8] = [80, 100, 125, 150, 175, 200, 225, 250];

impl Size {
    /// The size of this many percent; that of the window if there is none.
    pub(super) fn of(percent: u16) -> Self {
        Self(SIZES.iter().position(|size| *size == percent))
    }

    /// Percent of the usual size; 0 as long as nobody chose one.
    pub(super) fn percent(self) -> u16 {
        let chosen = self.0.and_then(|at| SIZES.get(at));
        chosen.copied().unwrap_or(0)
    }

    /// The next size above or below what is shown; the same where there is none.
    fn step(self, larger: bool, zoom: f32) -> Self {
        let shown_percent = zoom * 100.0;
        let above = |size: &u16| f32::from(*size) > shown_percent + 0.5;
        let below = |size: &u16| f32::from(*size) < shown_percent - 0.5;
        let found = if larger {
            SIZES.iter().position(above)
        } else {
            SIZES.iter().rposition(below)
        };
        found.map_or(self, |at| Self(Some(at)))
    }
}

impl Desk {
    /// How large texts are, and in how many languages.
    /// What two languages are shown to is a room: they are never smaller than can be read from its back.
    pub(super) fn look(&self) -> Look {
        let chosen = match self.size.percent() {
            0 => Look::of_window(self.window),
            percent => f32::from(percent) / 100.0,
        };
        let second = self.wall.second;
        let zoom = if second {
            chosen.max(Look::afar(self.window))
        } else {
            chosen
        };
        Look { zoom, second }
    }

    /// Whether smaller texts can be had.
    pub(super) fn can_be_smaller(&self) -> bool {
        let zoom = self.look().zoom;
        let least = if self.wall.second {
            Look::afar(self.window)
        } else {
            f32::from(SIZES[0]) / 100.0
        };
        zoom > least
    }

    /// Does what a wish asks of the desk alone.
    pub(super) fn arrange(&mut self, wish: &Wish) {
        match wish {
            Wish::Do(_) | Wish::Sign(..) | Wish::Keep | Wish::Record => {}
            // In a run that is over nothing is operated.
            Wish::Place(_) if self.again.is_some() => {}
            Wish::Place(place) => {
                self.place = Some(place.clone());
                self.sheet = None;
                self.face = Face::Here;
                self.arrivals += 1;
            }
            Wish::Back => {
                if self.sheet.take().is_none() && self.again.take().is_none() {
                    self.place = None;
                }
            }
            Wish::Accept => {
                self.accepted = true;
                self.arrivals += 1;
            }
            Wish::Track(track) => {
                self.track = Some(track.clone());
                self.arrivals += 1;
            }
            Wish::Choose(drill) => {
                self.chosen = Some(drill.clone());
                self.arrivals += 1;
            }
            Wish::See(change) => self.outlook.see(*change),
            Wish::Span(span) => self.span = *span,
            Wish::Again(place) => {
                let plays = self.again.is_some_and(|watched| watched.plays);
                self.again = place.map(|place| Watched { place, plays });
                // What goes on by itself leaves the keyboard's focus where it is.
                if !plays {
                    self.arrivals += 1;
                }
            }
            Wish::Play => {
                if let Some(watched) = &mut self.again {
                    watched.plays = !watched.plays;
                }
            }
            Wish::Stage(stage) => {
                self.stage = *stage;
                self.outlook.follow();
                self.arrivals += 1;
            }
            Wish::Words => self.turn(Sheet::Words),
            Wish::Keys => self.turn(Sheet::Keys),
            Wish::Terms => self.turn(Sheet::Terms),
            Wish::Room => self.turn(Sheet::Room),
            Wish::Branches => self.turn(Sheet::Branches),
            Wish::Motion => self.still = !self.still,
            Wish::Detail => self.detail = self.detail.next(),
            Wish::Size(larger) => self.size = self.size.step(*larger, self.look().zoom),
            Wish::Face(face) => {
                self.face = *face;
                self.arrivals += 1;
            }
            Wish::Second => self.wall.second = !self.wall.second,
            Wish::Hold => {
                self.wall.held = !self.wall.held;
                self.arrivals += 1;
            }
            Wish::Shine(at) => self.wall.shine(at),
            Wish::Teach(lesson) => self.teach(Some(Teaching::new(lesson))),
            Wish::EndLesson => self.teach(None),
            Wish::Turn(page) => self.in_lesson(|teaching| teaching.turn(*page)),
            Wish::Talked => self.in_lesson(Teaching::talked),
        }
    }

    /// Takes up a lesson, or puts it away.
    fn teach(&mut self, teaching: Option<Teaching>) {
        self.teaching = teaching;
        self.sheet = None;
        self.arrivals += 1;
    }

    /// Goes on in the lesson.
    fn in_lesson(&mut self, go: impl FnOnce(&mut Teaching)) {
        if let Some(teaching) = &mut self.teaching {
            go(teaching);
        }
        self.sheet = None;
        self.arrivals += 1;
    }

    /// Lays a sheet down, or takes it away if it lies there.
    fn turn(&mut self, sheet: Sheet) {
        self.sheet = (self.sheet != Some(sheet)).then_some(sheet);
        self.arrivals += 1;
    }
}
