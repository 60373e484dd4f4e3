//! The link between the session and the engine: the only place that changes the session.
//!
//! Panels and keys write [`Wish`] messages; once a frame they are read in order, and the views are taken afresh.
//! Everything else reads [`Views`] and [`Desk`].
//! It holds no rule of the drill.

use bevy::prelude::*;

use crate::session::view::{
    AskedView, CloseView, ConsequenceView, DebriefView, FaultsView, LanguageView, LogView,
    RevealView, ShelfView, StreetView,
};
use crate::session::{Command, Notice, Session};

use super::WindowSystems;

/// The open session.
#[derive(Resource)]
pub(super) struct Open(pub(super) Session);

/// A wish of the learner: for the session, or for the desk on which its views lie.
#[derive(Message, Debug, Clone, PartialEq, Eq)]
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
    /// Switch motion on or off.
    Motion,
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
}

impl Views {
    /// Whether something is held that has to be dealt with before the drill goes on.
    pub(super) fn held(&self) -> bool {
        self.consequence.is_some() || self.asked.is_some() || self.reveal.is_some()
    }

    /// The views of a session with what lies on the desk.
    pub(super) fn of(session: &Session, desk: &Desk) -> Self {
        Self {
            shelf: session.shelf(),
            street: session.street(),
            close: desk.place.as_deref().and_then(|place| session.close(place)),
            log: session.log(),
            consequence: session.consequence(),
            asked: session.asked(),
            reveal: session.reveal(),
            debrief: session.debrief(),
            languages: session.languages(),
            faults: session.faults(),
        }
    }
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
    /// Whether motion is switched off.
    pub(super) still: bool,
    /// What the session answered last.
    pub(super) notice: Option<Notice>,
    /// Grows when the keyboard's focus should go to the first thing of what has just come up.
    pub(super) arrivals: u32,
}

/// A sheet of text that can be laid on the desk.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Sheet {
    /// The scene in words.
    Words,
    /// The keys.
    Keys,
}

impl Desk {
    /// Does what a wish asks of the desk alone.
    pub(super) fn arrange(&mut self, wish: &Wish) {
        match wish {
            Wish::Do(_) => {}
            Wish::Place(place) => {
                self.place = Some(place.clone());
                self.sheet = None;
                self.arrivals += 1;
            }
            Wish::Back => {
                if self.sheet.take().is_none() {
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
            Wish::Stage(stage) => {
                self.stage = *stage;
                self.arrivals += 1;
            }
            Wish::Words => self.turn(Sheet::Words),
            Wish::Keys => self.turn(Sheet::Keys),
            Wish::Motion => self.still = !self.still,
        }
    }

    /// Lays a sheet down, or takes it away if it lies there.
    fn turn(&mut self, sheet: Sheet) {
        self.sheet = (self.sheet != Some(sheet)).then_some(sheet);
        self.arrivals += 1;
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
        .add_systems(Update, apply.in_set(WindowSystems::Apply))
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
) {
    for wish in wishes.read() {
        if let Wish::Do(command) = wish {
            obey(&mut open.0, &mut desk, command);
        } else {
            desk.arrange(wish);
        }
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
            desk.arrivals += 1;
        }
        Command::Understood | Command::Rewind(_) | Command::Predict { .. } | Command::Counts(_) => {
            desk.stage = 0;
            desk.arrivals += 1;
        }
        Command::Onward | Command::Back => desk.arrivals += 1,
        Command::Do(_)
        | Command::Wait(_)
        | Command::WaitForEvent
        | Command::Hint
        | Command::Speak(_)
        | Command::Reflect(_) => {}
    }
    if !held && holds(session) {
        desk.stage = 0;
        desk.arrivals += 1;
    }
}

/// Takes the views afresh when the session or the open place has changed.
fn project(
    open: Res<'_, Open>,
    desk: Res<'_, Desk>,
    mut views: ResMut<'_, Views>,
    mut pulse: ResMut<'_, Pulse>,
    mut seen: Local<'_, Option<(u64, Option<String>)>>,
) {
    let session = &open.0;
    let now = (session.revision(), desk.place.clone());
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
