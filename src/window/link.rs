//! The link between the session and the engine: the only place that changes the session.
//!
//! Panels and keys write [`Wish`] messages; once a frame they are read in order, and the views are taken afresh.
//! Everything else reads [`Views`] and [`Desk`].
//! It holds no rule of the drill.

use bevy::prelude::*;
use bevy::window::RequestRedraw;

use crate::session::view::{
    AgainView, AskedView, CloseView, CompareView, ConsequenceView, DebriefView, DeedView,
    FaultsView, LanguageView, LessonView, LogView, MomentView, RevealView, ShelfView, StreetView,
    TradeView,
};
use crate::session::{Command, Notice, Seated, Session, Signed};

use super::WindowSystems;
use super::both::Beside as _;
use super::desk::{Desk, Face, Sheet, Watched};
use super::panels::span::Span;
use super::scene::Glide;
use super::scene::sight::See;
use super::teach::Wall;

/// The open session.
#[derive(Resource)]
pub(super) struct Open(pub(super) Session);

/// A wish of the learner: for the session, or for the desk on which its views lie.
#[derive(Message, Debug, Clone, PartialEq)]
pub enum Wish {
    /// For the session.
    Do(Command),
    /// Open a place as a close view.
    Place(String),
    /// Put the close view, the list of words or the list of keys away.
    Back,
    /// The cautions have been read.
    Accept,
    /// Show the drills of a track on the shelf.
    Track(String),
    /// Unfold a drill on the shelf.
    Choose(String),
    /// Another stage of the consequence.
    Stage(usize),
    /// Show or hide the scene in words.
    Words,
    /// Show or hide the keys.
    Keys,
    /// Show or hide the words of the trade.
    Terms,
    /// Show or hide what an instructor needs.
    Room,
    /// Switch motion on or off.
    Motion,
    /// Tell more of what is electric, or after the most, the least.
    Detail,
    /// Larger or smaller texts.
    Size(bool),
    /// What a narrow window shows.
    Face(Face),
    /// See another part of the street.
    See(See),
    /// See a stretch of the drill in its debrief; none sees all of it.
    Span(Option<Span>),
    /// See a moment of the run that is over, by its place; none goes back to the debrief.
    Again(Option<usize>),
    /// Go from moment to moment by itself, or no more.
    Play,
    /// Teach a lesson of the shelf.
    Teach(String),
    /// Turn to a page of the lesson.
    Turn(usize),
    /// The moment of the lesson that was held has been talked about.
    Talked,
    /// Put the lesson away.
    EndLesson,
    /// Show a second language, or only one.
    Second,
    /// Hold the drill for the room, or let it go on.
    Hold,
    /// Put the light on something by its id, or take it away.
    Shine(String),
    /// Show or hide how two branches differ.
    Branches,
    /// Say who sits at the drill, names parted by commas, and how.
    Sign(String, Option<Seated>),
    /// Keep what the window shows as a picture.
    Keep,
    /// Keep the run as a file.
    Record,
}

/// All views of the session as of now.
#[derive(Resource, Default)]
pub(super) struct Views {
    pub(super) shelf: ShelfView,
    pub(super) street: Option<StreetView>,
    pub(super) close: Option<CloseView>,
    pub(super) log: LogView,
    pub(super) consequence: Option<ConsequenceView>,
    pub(super) asked: Option<AskedView>,
    pub(super) reveal: Option<RevealView>,
    pub(super) debrief: Option<DebriefView>,
    pub(super) languages: Vec<LanguageView>,
    pub(super) faults: Option<FaultsView>,
    pub(super) lesson: Option<LessonView>,
    /// The words of the trade, while they are shown.
    pub(super) terms: TradeView,
    /// The turns of events that can come.
    pub(super) turns: Vec<DeedView>,
    pub(super) covered: bool,
    /// Whether there are two branches to compare.
    pub(super) branched: bool,
    /// How they differ, while that is shown.
    pub(super) branches: Option<CompareView>,
    /// The session in the next language, while two are shown; the texts of these views say both then.
    pub(super) second: Option<Box<Session>>,
    /// Whether the language is read from right to left.
    pub(super) from_right: bool,
    /// The moment that is seen again.
    pub(super) again: Option<AgainView>,
}

impl Views {
    /// Whether something is held that has to be dealt with before the drill goes on.
    pub(super) fn held(&self, desk: &Desk) -> bool {
        let asks = self.consequence.is_some() || self.asked.is_some() || self.reveal.is_some();
        asks || desk.wall.held || self.moment(desk).is_some()
    }

    /// Whether two tries lie side by side: nothing of the drill is moved meanwhile.
    pub(super) fn compares(&self, desk: &Desk) -> bool {
        desk.sheet == Some(Sheet::Branches) && self.branches.is_some()
    }

    /// The moment of the lesson that is to be talked about now.
    pub(super) fn moment(&self, desk: &Desk) -> Option<&MomentView> {
        desk.teaching.as_ref()?.moment(self.lesson.as_ref()?)
    }

    /// The tag of the language after the one that is spoken.
    pub(super) fn next_language(&self) -> Option<String> {
        let now = self.languages.iter().position(|l| l.current)?;
        let next = self.languages.get((now + 1) % self.languages.len());
        next.map(|l| l.tag.clone())
    }

    /// The views of a session with what lies on the desk.
    pub(super) fn of(session: &Session, desk: &Desk) -> Self {
        let shows = |sheet| desk.sheet == Some(sheet);
        let again = desk.again.and_then(|w| session.seen_again(w.place));
        let then = again.as_ref().map(|again| again.street.clone());
        Self {
            shelf: session.shelf(),
            street: then.or_else(|| session.street()),
            close: desk.place.as_deref().and_then(|place| session.close(place)),
            log: session.log(),
            consequence: session.consequence(),
            asked: session.asked(),
            reveal: session.reveal(),
            debrief: session.debrief(),
            languages: session.languages(),
            faults: session.faults(),
            lesson: desk
                .teaching
                .as_ref()
                .and_then(|teaching| session.lesson(&teaching.lesson)),
            terms: if shows(Sheet::Terms) {
                session.trade(desk.place.as_deref())
            } else {
                TradeView::default()
            },
            turns: session.turns(),
            covered: session.covered(),
            branched: session.has_branches(),
            branches: shows(Sheet::Branches).then(|| session.compare()).flatten(),
            second: None,
            from_right: session.is_from_right(),
            again,
        }
        .beside(session, desk)
    }

    /// These views with those in the next language beside them, if two are to be shown.
    fn beside(mut self, session: &Session, desk: &Desk) -> Self {
        if let Some(tag) = self.next_language().filter(|_| desk.wall.second) {
            let mut session = session.clone();
            session.apply(Command::Speak(tag));
            let one = Desk {
                wall: Wall::default(),
                place: desk.place.clone(),
                sheet: desk.sheet,
                teaching: desk.teaching.clone(),
                ..Desk::default()
            };
            self.in_both(&Self::of(&session, &one));
            self.second = Some(Box::new(session));
        }
        self
    }

    /// Puts the texts of the same views in another language beside these; shelf, debrief and a run that is seen again keep to one.
    fn in_both(&mut self, other: &Self) {
        self.street.beside(&other.street);
        self.close.beside(&other.close);
        self.log.beside(&other.log);
        self.consequence.beside(&other.consequence);
        self.asked.beside(&other.asked);
        self.reveal.beside(&other.reveal);
        self.lesson.beside(&other.lesson);
        self.terms.beside(&other.terms);
        self.turns.beside(&other.turns);
        self.branches.beside(&other.branches);
    }
}

/// Whether the scene moves, and since when.
#[derive(Resource, Debug, Default)]
pub(super) struct Pulse {
    /// Seconds left in which things move after the last change.
    pub(super) left_s: f32,
    /// Seconds of motion so far.
    pub(super) turn_s: f32,
}

/// How long things move after a change, seconds.
/// Then the scene rests: what moves only repeats what shapes and words say.
const MOTION_S: f32 = 4.0;

pub(super) fn plugin(app: &mut App) {
    app.init_resource::<Views>()
        .init_resource::<Desk>()
        .init_resource::<Pulse>()
        .add_message::<Wish>()
        .add_systems(
            Update,
            (apply, look_on).chain().in_set(WindowSystems::Apply),
        )
        .add_systems(
            Update,
            (project, pulse).chain().in_set(WindowSystems::Project),
        );
}

/// Does what was wished, in order.
fn apply(
    mut wishes: MessageReader<'_, '_, Wish>,
    mut open: ResMut<'_, Open>,
    mut desk: ResMut<'_, Desk>,
    mut glide: ResMut<'_, Glide>,
) {
    for wish in wishes.read() {
        if let Wish::See(_) = wish {
            // Only the scene follows: the panels have not changed.
            desk.bypass_change_detection().arrange(wish);
            glide.0 = true;
        } else if let Wish::Do(command) = wish {
            obey(&mut open.0, &mut desk, command);
        } else if let Wish::Sign(names, seated) = wish {
            desk.kept = Some(sign(&mut open.0, names, *seated));
        } else {
            desk.arrange(wish);
        }
    }
}

/// Goes on with the search for the next step, a piece in each frame, so that the window goes on drawing meanwhile.
fn look_on(mut open: ResMut<'_, Open>, mut requests: MessageWriter<'_, RequestRedraw>) {
    // What comes of it changes the session's revision, which is looked at.
    if open.bypass_change_detection().0.look_on() {
        requests.write(RequestRedraw);
    }
}

/// Says to the session who sits at the drill, and what came of it.
pub(super) fn sign(session: &mut Session, names: &str, seated: Option<Seated>) -> String {
    let names: Vec<String> = names
        .split(',')
        .filter(|name| !name.trim().is_empty())
        .map(str::to_owned)
        .collect();
    match Signed::new(&names, seated, None) {
        Ok(signed) => {
            session.sign(signed);
            session.say("window-signed")
        }
        Err(why) => session.say_message(&why),
    }
}

/// Hands a command to the session and puts on the desk what follows.
pub(super) fn obey(session: &mut Session, desk: &mut Desk, command: &Command) {
    let holds = |session: &Session| session.consequence().is_some() || session.asked().is_some();
    let held = holds(session);
    let notices = session.apply(command.clone());
    // The last notice with words is what the learner reads at once.
    desk.notice = notices
        .iter()
        .rev()
        .find(|n| !matches!(n, Notice::Consequence | Notice::Over))
        .cloned();
    match command {
        Command::Open { .. }
        | Command::Retry
        | Command::Another
        | Command::Leave
        | Command::Finish => {
            desk.place = None;
            desk.sheet = None;
            desk.notice = None;
            desk.face = Face::Here;
            desk.outlook.follow();
            desk.span = None;
            desk.again = None;
            desk.wall.held = false;
            desk.wall.light = None;
            if let Some(teaching) = &mut desk.teaching {
                teaching.begin_drill();
            }
            desk.arrivals += 1;
        }
        Command::Understood
        | Command::AllUnderstood
        | Command::Rewind(_)
        | Command::Predict { .. }
        | Command::Counts(_) => {
            // What the one before has told already is not told again.
            desk.stage = session.consequence().map_or(0, |c| c.n_told);
            desk.again = None;
            // With nothing more to read, one Enter too many must not move a handle.
            if holds(session) || session.reveal().is_some() {
                desk.arrivals += 1;
            }
        }
        Command::Onward | Command::Back => desk.arrivals += 1,
        Command::Speak(_) => desk.spoke = true,
        Command::Do(_)
        | Command::Wait(_)
        | Command::WaitForEvent
        | Command::Hint
        | Command::Cover(_)
        | Command::Reflect(_) => {}
    }
    if !held && holds(session) {
        desk.stage = 0;
        desk.outlook.follow();
        desk.face = Face::Here;
        desk.arrivals += 1;
    }
}

/// What the views depend on.
#[derive(PartialEq)]
struct Shown {
    revision: u64,
    place: Option<String>,
    lesson: Option<String>,
    sheet: Option<Sheet>,
    second: bool,
    again: Option<Watched>,
}

impl Shown {
    fn of(session: &Session, desk: &Desk) -> Self {
        Self {
            revision: session.revision(),
            place: desk.place.clone(),
            lesson: desk.teaching.as_ref().map(|t| t.lesson.clone()),
            sheet: desk.sheet,
            second: desk.wall.second,
            again: desk.again,
        }
    }
}

/// Takes the views afresh when the session or the open place has changed.
fn project(
    open: Res<'_, Open>,
    desk: Res<'_, Desk>,
    mut views: ResMut<'_, Views>,
    mut pulse: ResMut<'_, Pulse>,
    mut seen: Local<'_, Option<Shown>>,
) {
    let session = &open.0;
    let now = Shown::of(session, &desk);
    if seen.as_ref() == Some(&now) && !open.is_added() && !open.is_changed() {
        return;
    }
    *views = Views::of(session, &desk);
    pulse.left_s = MOTION_S;
    *seen = Some(now);
}

/// Lets things move for a while after a change, then rest.
fn pulse(time: Res<'_, Time>, desk: Res<'_, Desk>, mut pulse: ResMut<'_, Pulse>) {
    if desk.still || pulse.left_s <= 0.0 {
        return;
    }
    let step = time.delta_secs().min(0.1);
    pulse.left_s -= step;
    pulse.turn_s += step;
}
