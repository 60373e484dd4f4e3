//! Times the window beside an empty one of the same engine: until it can be used, each frame while things move, the memory held.
//!
//! Both draw on without a rest, and neither waits for the display: what is left is the work.
//! A frame's time is that between two frames' ends.
//! The empty window runs the engine as it comes, with a system's work handed to whatever thread is free; ours runs it on one thread for each world.
//! It does not cover what the display server does after a picture is handed over.

use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Arc, Mutex};
use std::time::{Duration, Instant};

use bevy::diagnostic::FrameCount;
use bevy::prelude::*;
use bevy::render::render_resource::PipelineCache;
use bevy::render::{Render, RenderApp, RenderSystems};
use bevy::window::{PresentMode, WindowResolution};
use bevy::winit::WinitSettings;
use bevy_egui::{EguiPlugin, EguiPrimaryContextPass};

use crate::session::{Session, Settings};

use super::error::WindowError;
use super::link::{Pulse, Wish};
use super::probe::probe;
use super::scene::sight::See;
use super::{WindowSystems, build, engine, gallery, scene};

/// Frames until the first picture has gone through the pipelined renderer.
const FIRST: u32 = 3;
/// Frames in which a screen comes up before it is timed.
const SETTLE: usize = 60;
/// Frames that are timed, of each kind.
const TIMED: usize = 240;
/// Frames of a glide before it is turned around.
const GLIDE: usize = 20;

/// What was timed.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Timed {
    /// From the given moment to the end of the first frame that shows everything.
    pub first: Duration,
    /// Frames while conductors, appliances and people move.
    pub moving: Vec<Duration>,
    /// Frames while the scene also glides nearer and away.
    pub gliding: Vec<Duration>,
}

/// Opens an empty window, or with a session the window, first as it starts and then with a screen of the gallery; closes it by itself.
/// `begun` is the moment from which the first frame is counted.
///
/// # Errors
/// When the screen is not known, there is no adapter, or the engine stops with an error.
pub fn timed(begun: Instant, shown: Option<(Session, &str)>) -> Result<Timed, WindowError> {
    let backends = probe()?;
    let (width, height) = Settings::default().size;
    let window = Window {
        resolution: WindowResolution::new(width, height),
        present_mode: PresentMode::AutoNoVsync,
        ..Window::default()
    };
    let mut app = App::new();
    app.add_plugins(engine(Some(window), backends));
    let mut watch = Watch::new(begun);
    if let Some((session, name)) = shown {
        let screens = gallery::screens();
        let Some(screen) = screens.iter().find(|screen| screen.name == name) else {
            let names = screens.into_iter().map(|screen| screen.name).collect();
            return Err(WindowError::UnknownScreen(name.to_owned(), names));
        };
        watch.wishes.clone_from(&screen.wishes);
        build(&mut app, session);
        app.add_systems(Update, play.before(WindowSystems::Apply))
            .add_systems(Startup, |mut commands: Commands<'_, '_>| {
                commands.spawn(scene::camera());
            });
    } else {
        // The toolkit runs, with nothing to lay out.
        app.add_plugins(EguiPlugin::default())
            .add_systems(EguiPrimaryContextPass, || {})
            .add_systems(Startup, |mut commands: Commands<'_, '_>| {
                commands.spawn((Camera2d, Msaa::Off));
            });
    }
    let timed = Arc::clone(&watch.timed);
    count_pipelines(&mut app, Arc::clone(&watch.waiting));
    app.insert_resource(watch)
        .insert_resource(WinitSettings::continuous())
        .add_systems(Last, look);
    match app.run() {
        AppExit::Success => Ok(timed.lock().map(|timed| timed.clone()).unwrap_or_default()),
        AppExit::Error(_) => Err(WindowError::Stopped),
    }
}

/// What is timed, and how far it has come.
#[derive(Resource)]
struct Watch {
    begun: Instant,
    /// Pipelines that the renderer has not built yet; until it has said so, more than any.
    waiting: Arc<AtomicUsize>,
    /// What brings the screen up.
    wishes: Vec<Wish>,
    /// Frames since the first one that showed everything.
    frames: usize,
    /// The end of the frame before.
    last: Duration,
    timed: Arc<Mutex<Timed>>,
}

impl Watch {
    fn new(begun: Instant) -> Self {
        Self {
            begun,
            waiting: Arc::new(AtomicUsize::new(usize::MAX)),
            wishes: Vec::new(),
            frames: 0,
            last: Duration::ZERO,
            timed: Arc::default(),
        }
    }
}

/// Has the renderer say how many pipelines it still waits for.
fn count_pipelines(app: &mut App, waiting: Arc<AtomicUsize>) {
    if let Some(render) = app.get_sub_app_mut(RenderApp) {
        let count = move |pipelines: Res<'_, PipelineCache>| {
            waiting.store(pipelines.waiting_pipelines().count(), Ordering::Relaxed);
        };
        render.add_systems(Render, count.in_set(RenderSystems::Cleanup));
    }
}

/// Brings the screen up once the window has shown what it starts with, keeps it moving, then lets it glide as well.
fn play(
    mut watch: ResMut<'_, Watch>,
    mut pulse: ResMut<'_, Pulse>,
    mut wishes: MessageWriter<'_, Wish>,
) {
    if watch.frames == 0 {
        return;
    }
    pulse.left_s = 1.0;
    wishes.write_batch(watch.wishes.drain(..));
    let gliding = watch.frames.checked_sub(SETTLE + TIMED);
    if let Some(frame) = gliding.filter(|frame| frame.is_multiple_of(GLIDE)) {
        wishes.write(if (frame / GLIDE).is_multiple_of(2) {
            Wish::See(gallery::near("house"))
        } else {
            Wish::See(See::Whole)
        });
    }
}

/// Notes the end of a frame.
fn look(
    frames: Res<'_, FrameCount>,
    mut watch: ResMut<'_, Watch>,
    mut exits: MessageWriter<'_, AppExit>,
) {
    let now = watch.begun.elapsed();
    let took = now.saturating_sub(watch.last);
    watch.last = now;
    let shown = watch.waiting.load(Ordering::Relaxed) == 0 && frames.0 >= FIRST;
    if watch.frames == 0 && !shown {
        return;
    }
    let frame = watch.frames;
    watch.frames += 1;
    if let Ok(mut timed) = watch.timed.lock() {
        if frame == 0 {
            timed.first = now;
        } else if frame >= SETTLE + TIMED {
            timed.gliding.push(took);
        } else if frame >= SETTLE {
            timed.moving.push(took);
        }
    }
    if frame + 1 == SETTLE + 2 * TIMED {
        exits.write(AppExit::Success);
    }
}
