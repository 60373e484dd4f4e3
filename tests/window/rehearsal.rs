//! Whole drills through the screens, by pointer alone, by keys alone and by touch alone, without a window.
//!
//! The screens run in a bare context of the toolkit with made-up input; what is wished goes to a real session.
//! It is compiled into the tests of `src/window/screens`, because screens are nobody else's to call.
//! It does not cover the engine's event loop: a script drives the real window.

#[path = "../../tests/window/operating.rs"]
mod operating;
#[path = "../../tests/window/pressing.rs"]
mod pressing;
#[path = "../../tests/window/reaching.rs"]
mod reaching;
#[path = "../../tests/window/reading.rs"]
mod reading;
#[path = "../../tests/window/teaching.rs"]
mod teaching;

use std::collections::BTreeSet;

use bevy::math::Vec2;
use bevy::prelude::KeyCode;
use bevy_egui::egui;
use bevy_egui::egui::{Event, Key, Modifiers, PointerButton, Pos2, RawInput, Rect, pos2, vec2};

use crate::file::Library;
use crate::session::view::{DebriefView, DrillCard};
use crate::session::{Command, Rewind, Session};
use crate::units::DrillTime;
use crate::window::desk::{Desk, Face, Size};
use crate::window::fonts;
use crate::window::gallery;
use crate::window::input::{MINUTE, wish_of};
use crate::window::link::{Views, Wish, obey};
use crate::window::mirror;
use crate::window::panels::Page;
use crate::window::scene::Drawn;
use crate::words::PSEUDO_FROM_RIGHT;

use super::{Scene, lay_out};

/// Widest a scroll bar is.
const SCROLL_BAR: f32 = 16.0;

const SIZE: Vec2 = Vec2::new(1280.0, 720.0);

/// A session on the shipped scenarios.
fn shipped(language: &str) -> Session {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    Session::new(library, language)
}

/// How a wish is brought about.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
enum Hand {
    Pointer,
    Keys,
    Touch,
}

struct Rehearsal {
    ctx: egui::Context,
    session: Session,
    desk: Desk,
    views: Views,
    drawn: Drawn,
    seen: u32,
    time: f64,
    /// The window's size in pixels, and in points.
    window: Vec2,
    size: Vec2,
    /// What the last pass would draw.
    shapes: Vec<egui::epaint::ClippedShape>,
}

impl Rehearsal {
    fn new(language: &str) -> Self {
        Self::at(language, 100)
    }

    /// With texts of this many percent of their usual size.
    fn at(language: &str, percent: u16) -> Self {
        let session = shipped(language);
        let desk = Desk {
            still: true,
            size: Size::of(percent),
            window: SIZE,
            ..Desk::default()
        };
        let size = SIZE / desk.look().zoom;
        let ctx = egui::Context::default();
        fonts::dress(&ctx);
        let mut rehearsal = Self {
            ctx,
            views: Views::of(&session, &desk),
            drawn: Drawn::of(&Views::of(&session, &desk), &desk, SIZE),
            session,
            desk,
            seen: u32::MAX,
            time: 0.0,
            window: SIZE,
            size,
            shapes: Vec::new(),
        };
        rehearsal.pass(Vec::new());
        rehearsal
    }

    /// One pass with some input; what is wished is only told.
    fn pass(&mut self, mut events: Vec<Event>) -> Vec<Wish> {
        self.time += 0.1;
        // Widgets tell where they were laid out; a hand goes where they are shown.
        mirror::show_events(&self.ctx, &mut events);
        mirror::turn_events(&self.ctx, &mut events);
        let input = RawInput {
            screen_rect: Some(Rect::from_min_size(
                Pos2::ZERO,
                vec2(self.size.x, self.size.y),
            )),
            time: Some(self.time),
            focused: true,
            events,
            ..RawInput::default()
        };
        let say = |id: &str| self.session.say(id);
        let mut wishes = Vec::new();
        let (desk, views, drawn) = (&self.desk, &self.views, &self.drawn);
        let arriving = self.seen != desk.arrivals;
        self.seen = desk.arrivals;
        let ctx = self.ctx.clone();
        let mut output = ctx.run_ui(input, |ui| {
            let mut page = Page::new(&say, arriving);
            let scene = Scene::new(views, desk, drawn, ui.ctx().content_rect().size());
            lay_out(ui.ctx(), &scene, &mut page);
            wishes.append(&mut page.out);
        });
        // Nothing is drawn, so what would be sent to the adapter is let go.
        output.textures_delta.clear();
        self.shapes = output.shapes;
        wishes
    }

    fn grant(&mut self, wish: &Wish) {
        if let Wish::Do(command) = wish {
            obey(&mut self.session, &mut self.desk, command);
        } else {
            self.desk.arrange(wish);
        }
        self.views = Views::of(&self.session, &self.desk);
        self.lay_out();
    }

    /// Lays everything out in the window's size.
    fn lay_out(&mut self) {
        self.desk.window = self.window;
        self.size = self.window / self.desk.look().zoom;
        self.drawn = Drawn::of(&self.views, &self.desk, self.window);
        self.pass(Vec::new());
        self.pass(Vec::new());
    }

    /// Brings a wish about with one hand, and grants it.
    fn bring(&mut self, wish: &Wish, hand: Hand) {
        let found = match hand {
            Hand::Pointer | Hand::Touch => self.by_pointing(wish, hand),
            Hand::Keys => self.by_keys(wish),
        };
        assert!(found, "{hand:?} can't bring about {wish:?}");
        self.grant(wish);
    }

    /// Presses everything that can be pressed, scrolling the column down as needed, until the wish comes.
    fn by_pointing(&mut self, wish: &Wish, hand: Hand) -> bool {
        // Down the column from where it stands, and then once more from its top.
        // Where a list is scrolled: below what stands above it.
        let low = if self.is_narrow() { 0.85 } else { 0.58 };
        let step = (self.size.y * 0.3).min(260.0);
        let turns = if step < 260.0 { 48 } else { 12 };
        for turn in 0..turns * 2 {
            for at in self.targets() {
                let wishes = match hand {
                    Hand::Touch => self.tap(at),
                    Hand::Pointer | Hand::Keys => self.click(at),
                };
                if wishes.contains(wish) {
                    return true;
                }
            }
            let step = if turn + 1 == turns { 9_000.0 } else { -step };
            let column = if self.views.street.is_some() {
                let column = self.desk.look().column(self.size.x);
                pos2(self.size.x - column / 2.0, self.size.y * low)
            } else {
                pos2(self.size.x * 0.2, self.size.y * low)
            };
            match hand {
                Hand::Touch => {
                    self.swipe(column, vec2(0.0, step));
                }
                Hand::Pointer | Hand::Keys => {
                    self.wheel(column, step);
                }
            }
            for _ in 0..6 {
                self.pass(Vec::new());
            }
        }
        false
    }

    fn targets(&self) -> Vec<Pos2> {
        let window = Rect::from_min_size(Pos2::ZERO, vec2(self.size.x, self.size.y));
        self.ctx.viewport(|viewport| {
            let widgets = &viewport.prev_pass.widgets;
            let mut targets: Vec<Pos2> = widgets
                .layers()
                .flat_map(|(_, rects)| rects)
                .filter(|w| w.enabled && w.sense.senses_click() && w.interact_rect.is_positive())
                // A press on a scroll bar would move what is below it.
                .filter(|w| w.interact_rect.width() > SCROLL_BAR)
                .map(|w| w.interact_rect.center())
                .filter(|at| window.contains(*at))
                .collect();
            targets.dedup();
            targets
        })
    }

    fn click(&mut self, at: Pos2) -> Vec<Wish> {
        let mut wishes = self.pass(vec![Event::PointerMoved(at)]);
        wishes.extend(self.pass(vec![pressed(at, true)]));
        wishes.extend(self.pass(vec![pressed(at, false)]));
        wishes
    }

    /// Turns the wheel over a point.
    fn wheel(&mut self, at: Pos2, step: f32) -> Vec<Wish> {
        self.pass(vec![
            Event::PointerMoved(at),
            Event::MouseWheel {
                unit: egui::MouseWheelUnit::Point,
                delta: vec2(0.0, step),
                modifiers: Modifiers::NONE,
                phase: egui::TouchPhase::Move,
            },
        ])
    }

    /// Touches a point, as the engine's bridge tells it: the finger, and a pointer that comes and goes with it.
    fn tap(&mut self, at: Pos2) -> Vec<Wish> {
        let mut wishes = self.pass(finger_down(at));
        wishes.extend(self.pass(finger_up(at)));
        wishes
    }

    /// Moves a finger over the glass.
    fn swipe(&mut self, from: Pos2, by: egui::Vec2) -> Vec<Wish> {
        let mut wishes = self.pass(finger_down(from));
        for share in [0.25, 0.5, 0.75, 1.0] {
            let at = from + by * share;
            let events = vec![
                finger(0, egui::TouchPhase::Move, at),
                Event::PointerMoved(at),
            ];
            wishes.extend(self.pass(events));
        }
        wishes.extend(self.pass(finger_up(from + by)));
        wishes
    }

    /// Tries the keys that work everywhere, then walks with Tab and presses Enter until the wish comes.
    fn by_keys(&mut self, wish: &Wish) -> bool {
        let shortcuts = [
            KeyCode::F2,
            KeyCode::F3,
            KeyCode::F4,
            KeyCode::F7,
            KeyCode::F10,
            KeyCode::F11,
            KeyCode::F12,
            KeyCode::Digit1,
            KeyCode::Digit2,
            KeyCode::Digit3,
            KeyCode::Digit4,
            KeyCode::Digit5,
            KeyCode::Digit6,
        ];
        if shortcuts
            .iter()
            .any(|key| wish_of(*key, &self.views, &self.desk).as_ref() == Some(wish))
        {
            return true;
        }
        for _ in 0..90 {
            if self.press(Key::Enter).contains(wish) {
                return true;
            }
            self.press(Key::Tab);
        }
        false
    }

    fn press(&mut self, key: Key) -> Vec<Wish> {
        let event = |pressed| Event::Key {
            key,
            physical_key: None,
            pressed,
            repeat: false,
            modifiers: Modifiers::NONE,
        };
        let mut wishes = self.pass(vec![event(true)]);
        wishes.extend(self.pass(vec![event(false)]));
        wishes
    }

    /// The place where a control is operated or a deed is done.
    fn place_of(&self, line: &str) -> String {
        let places = self.views.street.iter().flat_map(|s| &s.places);
        let offers = |place: &str| {
            self.session.close(place).is_some_and(|view| {
                let control = line.split(' ').nth(1);
                view.controls.iter().any(|c| Some(c.id.as_str()) == control)
                    || view.deeds.iter().any(|d| d.line == line)
            })
        };
        let found = places.map(|p| &p.id).find(|id| offers(id));
        found
            .cloned()
            .unwrap_or_else(|| panic!("no place offers {line}"))
    }

    fn is_narrow(&self) -> bool {
        crate::window::scene::frame::is_narrow(self.size.x, self.size.y)
    }

    /// In a narrow window the thing that the wish is pressed on may have to be called up first.
    fn face(&mut self, face: Face) {
        if self.is_narrow() && self.views.street.is_some() && self.desk.face != face {
            self.bring(&Wish::Face(face), Hand::Pointer);
        }
    }

    fn play(mut self, hand: Hand) -> DebriefView {
        self.bring(&Wish::Accept, hand);
        self.bring(&Wish::Choose("there-and-back".to_owned()), hand);
        self.bring(&gallery::wish("open there-and-back"), hand);
        self.face(Face::Bars);
        self.bring(&Wish::Do(Command::Wait(MINUTE)), hand);
        for line in gallery::block("on-generator")
            .into_iter()
            .chain(gallery::block("back-again"))
        {
            if let Some(time) = line.strip_prefix("wait ") {
                // Waits are as long at least: the buttons know minutes.
                let minutes = time
                    .strip_suffix('m')
                    .and_then(|m| m.parse().ok())
                    .unwrap_or(2);
                self.face(Face::Bars);
                for _ in 0..minutes {
                    self.bring(&Wish::Do(Command::Wait(MINUTE)), hand);
                }
                continue;
            }
            let place = self.place_of(line);
            if self.desk.place.as_ref() != Some(&place) {
                self.face(Face::Bars);
                self.bring(&Wish::Place(place), hand);
            }
            self.face(Face::Here);
            self.bring(&Wish::Do(Command::Do(line.to_owned())), hand);
        }
        self.face(Face::Bars);
        self.bring(&Wish::Do(Command::Finish), hand);
        self.views
            .debrief
            .expect("the debrief comes after finishing")
    }
}

/// What the toolkit is told of a finger on the glass.
fn finger(number: u64, phase: egui::TouchPhase, pos: Pos2) -> Event {
    Event::Touch {
        device_id: egui::TouchDeviceId(0),
        id: egui::TouchId(number),
        phase,
        pos,
        force: None,
    }
}

/// The pointer that goes with the first finger.
fn pressed(pos: Pos2, pressed: bool) -> Event {
    Event::PointerButton {
        pos,
        button: PointerButton::Primary,
        pressed,
        modifiers: Modifiers::NONE,
    }
}

fn finger_down(at: Pos2) -> Vec<Event> {
    let touch = finger(0, egui::TouchPhase::Start, at);
    vec![touch, Event::PointerMoved(at), pressed(at, true)]
}

fn finger_up(at: Pos2) -> Vec<Event> {
    let touch = finger(0, egui::TouchPhase::End, at);
    vec![touch, pressed(at, false), Event::PointerGone]
}

#[test]
fn a_whole_drill_is_played_by_pointer_alone() {
    let debrief = Rehearsal::new("en").play(Hand::Pointer);
    assert!(
        debrief.passed,
        "{}: {:?}",
        debrief.heading, debrief.criteria
    );
}

#[test]
fn a_whole_drill_is_played_by_touch_alone() {
    let debrief = Rehearsal::new("es").play(Hand::Touch);
    assert!(
        debrief.passed,
        "{}: {:?}",
        debrief.heading, debrief.criteria
    );
}

#[test]
fn a_whole_drill_is_played_by_keys_alone() {
    let debrief = Rehearsal::new("es").play(Hand::Keys);
    assert!(
        debrief.passed,
        "{}: {:?}",
        debrief.heading, debrief.criteria
    );
}

#[test]
fn a_whole_drill_is_played_with_texts_of_two_and_a_half_times_their_size() {
    for (language, hand) in [("en", Hand::Pointer), ("es", Hand::Keys)] {
        let debrief = Rehearsal::at(language, 250).play(hand);
        assert!(debrief.passed, "{}", debrief.heading);
    }
}

#[test]
fn a_whole_drill_is_played_in_a_layout_from_right_to_left() {
    for hand in [Hand::Pointer, Hand::Keys] {
        let debrief = Rehearsal::new(PSEUDO_FROM_RIGHT).play(hand);
        assert!(debrief.passed, "{hand:?}: {}", debrief.heading);
    }
}

/// A drill in which the generator feeds the line: what came of it is held.
fn backfed() -> Rehearsal {
    let mut rehearsal = Rehearsal::new("en");
    for wish in [
        Wish::Accept,
        gallery::wish("open no-slide"),
        gallery::wish("wait 10m"),
    ] {
        rehearsal.grant(&wish);
    }
    for line in gallery::block("backfeed") {
        rehearsal.grant(&gallery::wish(line));
    }
    rehearsal
}

#[test]
fn a_consequence_is_told_stage_by_stage_and_put_away_by_either_hand() {
    for hand in [Hand::Pointer, Hand::Keys] {
        let mut rehearsal = backfed();
        let stages = |r: &Rehearsal| r.views.consequence.as_ref().map(|c| c.stages.len());
        // Several things go wrong at once; the one with a way of energy is told after those before it.
        while stages(&rehearsal).is_some_and(|n| n < 3) {
            rehearsal.bring(&Wish::Do(Command::Understood), hand);
        }
        let n_stages = stages(&rehearsal).expect("a line that is fed is a consequence");
        for stage in rehearsal.desk.stage + 1..n_stages {
            rehearsal.bring(&Wish::Stage(stage), hand);
        }
        rehearsal.bring(&Wish::Do(Command::Understood), hand);
    }
}

#[test]
fn a_run_that_is_over_is_seen_again_and_changed_from_there_by_either_hand() {
    for hand in [Hand::Pointer, Hand::Keys] {
        let mut rehearsal = backfed();
        rehearsal.grant(&Wish::Do(Command::Finish));
        let over = rehearsal.views.debrief.clone().expect("it is over");
        rehearsal.bring(&Wish::Again(Some(0)), hand);
        for place in 1..4 {
            rehearsal.bring(&Wish::Again(Some(place)), hand);
        }
        rehearsal.bring(&Wish::Play, hand);
        rehearsal.bring(&Wish::Play, hand);
        rehearsal.bring(&Wish::Again(Some(2)), hand);
        rehearsal.bring(&Wish::Again(None), hand);
        assert_eq!(rehearsal.views.debrief, Some(over));
        rehearsal.bring(&Wish::Again(Some(0)), hand);
        rehearsal.bring(&Wish::Again(Some(1)), hand);
        let at = rehearsal.views.again.as_ref().map(|view| view.clock_ms);
        let at = DrillTime::from_millis(at.expect("a moment is seen"));
        rehearsal.bring(&Wish::Do(Command::Rewind(Rewind::To(at))), hand);
        assert!(rehearsal.views.debrief.is_none() && rehearsal.views.again.is_none());
        assert_eq!(rehearsal.views.log.clock_ms, at.millis());
    }
}

#[test]
fn nothing_can_be_pressed_but_the_consequence_while_it_is_held() {
    let mut rehearsal = backfed();
    for at in rehearsal.targets() {
        for wish in rehearsal.click(at) {
            assert!(
                matches!(
                    wish,
                    Wish::Stage(_)
                        | Wish::See(_)
                        | Wish::Detail
                        | Wish::Place(_)
                        | Wish::Do(
                            Command::Understood | Command::AllUnderstood | Command::Rewind(_)
                        )
                ),
                "{wish:?} while a consequence is held"
            );
        }
    }
}

#[test]
fn a_slow_and_trembling_hand_presses_a_button_too() {
    let mut rehearsal = Rehearsal::new("en");
    let accepts = |rehearsal: &mut Rehearsal, at: Pos2| {
        let aside = at + vec2(8.0, 5.0);
        rehearsal.pass(vec![Event::PointerMoved(at)]);
        rehearsal.pass(vec![pressed(at, true)]);
        rehearsal.pass(vec![Event::PointerMoved(aside)]);
        for _ in 0..30 {
            rehearsal.pass(Vec::new());
        }
        let wishes = rehearsal.pass(vec![pressed(aside, false)]);
        wishes.contains(&Wish::Accept)
    };
    let targets = rehearsal.targets();
    assert!(targets.into_iter().any(|at| accepts(&mut rehearsal, at)));
}

#[test]
fn the_language_changes_while_the_drill_stays() {
    let mut rehearsal = Rehearsal::new("en");
    rehearsal.bring(&Wish::Accept, Hand::Pointer);
    let choose = Wish::Choose("there-and-back".to_owned());
    rehearsal.bring(&choose, Hand::Pointer);
    rehearsal.bring(&gallery::wish("open there-and-back"), Hand::Pointer);
    rehearsal.bring(&Wish::Do(Command::Wait(MINUTE)), Hand::Pointer);
    let before = rehearsal.views.log.clock_ms;
    rehearsal.bring(&Wish::Do(Command::Speak("es".to_owned())), Hand::Pointer);
    assert_eq!(rehearsal.session.language(), "es");
    assert_eq!(rehearsal.views.log.clock_ms, before);
}

#[test]
fn every_drill_of_the_shelf_is_unfolded_and_opened_by_either_hand() {
    for hand in [Hand::Pointer, Hand::Keys] {
        let mut rehearsal = Rehearsal::new("es");
        rehearsal.bring(&Wish::Accept, hand);
        let shelf = rehearsal.views.shelf.clone();
        let mut opened = BTreeSet::new();
        for (i, track) in shelf.tracks.iter().enumerate() {
            if i > 0 {
                rehearsal.bring(&Wish::Track(track.name.clone()), hand);
            }
            let of = |d: &&DrillCard| d.tracks.contains(&track.name);
            let first = shelf.drills.iter().find(of).map(|d| d.name.clone());
            for drill in shelf.drills.iter().filter(of) {
                if !opened.insert(drill.name.clone()) {
                    continue;
                }
                let chosen = rehearsal.desk.chosen.clone();
                let here = |name: &String| shelf.drills.iter().any(|d| d.name == *name && of(&d));
                let unfolded = chosen.filter(here).or_else(|| first.clone());
                if unfolded.as_ref() != Some(&drill.name) {
                    rehearsal.bring(&Wish::Choose(drill.name.clone()), hand);
                }
                rehearsal.bring(&gallery::wish(&format!("open {}", drill.name)), hand);
                assert!(rehearsal.views.street.is_some(), "{}", drill.name);
                rehearsal.grant(&Wish::Do(Command::Leave));
            }
        }
        assert_eq!(opened.len(), shelf.drills.len());
    }
}
