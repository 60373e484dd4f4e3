//! The window: draws what the session's views say, and sends back what the learner wishes.
//!
//! It holds no rule of the drill; whatever can be done here can be done in the terminal by the same [`Command`](crate::session::Command).
//! Scene: meshes from code (Bevy). Panels: immediate mode (egui), drawn only when something was pressed, has changed or moves.
//! Start reading at `link.rs`: the only place that changes the session.
//! It does not cover sound or touch gestures.

mod access;
mod again;
mod authoring;
mod both;
mod desk;
mod error;
mod fonts;
mod front;
mod gallery;
mod input;
mod keep;
mod link;
mod mirror;
mod output;
mod painting;
mod panels;
mod picture;
mod probe;
mod scene;
mod screens;
mod settings;
mod standing;
mod teach;
pub mod theme;
mod timing;

use std::path::{Path, PathBuf};

use bevy::app::PluginGroupBuilder;
use bevy::ecs::schedule::{Schedules, SingleThreadedExecutor};
use bevy::log::LogPlugin;
use bevy::prelude::*;
use bevy::render::settings::{Backends, WgpuSettings};
use bevy::render::{RenderApp, RenderPlugin};
use bevy::window::{ExitCondition, PresentMode, WindowResolution};
use bevy::winit::{UpdateMode, WinitSettings};

use crate::session::{Session, Settings};

pub use error::WindowError;
pub use front::{draw, open};
pub use link::Wish;
pub use timing::{Timed, timed};

use picture::Picture;
use probe::probe;

/// How the window opens.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Options {
    /// Whether the environment names a display.
    pub display: bool,
    /// How a person last had it.
    pub settings: Settings,
    /// Where that is kept; none keeps nothing.
    pub kept: Option<PathBuf>,
    /// A folder of scenarios that is being written in.
    pub folder: Option<PathBuf>,
}

impl Default for Options {
    fn default() -> Self {
        Self {
            display: true,
            settings: Settings::default(),
            kept: None,
            folder: None,
        }
    }
}

/// The phases of a frame, in this order.
#[derive(SystemSet, Debug, Clone, PartialEq, Eq, Hash)]
pub enum WindowSystems {
    /// Keys become wishes.
    ReadInput,
    /// Wishes go to the session.
    Apply,
    /// Views are taken from the session.
    Project,
    /// The scene is drawn from the views; panels follow in the egui pass.
    Draw,
}

/// Opens the window and stays until it is closed.
///
/// # Errors
/// When there is no display or no adapter, found out before the engine starts; when the engine stops with an error.
pub fn run(session: Session, options: Options) -> Result<(), WindowError> {
    if !options.display || !probe::display_answers() {
        return Err(WindowError::NoDisplay);
    }
    let backends = probe()?;
    let (width, height) = options.settings.size;
    let window = Window {
        title: session.say("window-title"),
        name: Some("outage-drill".to_owned()),
        resolution: WindowResolution::new(width, height),
        present_mode: PresentMode::AutoVsync,
        ..Window::default()
    };
    let mut app = App::new();
    app.add_plugins(engine(Some(window), backends));
    let rest = options.folder.as_ref().map_or(REST, |_| authoring::LOOK);
    app.insert_resource(WinitSettings {
        focused_mode: UpdateMode::reactive_low_power(rest),
        unfocused_mode: UpdateMode::reactive_low_power(rest),
    });
    build(&mut app, session.looking_on());
    settings::plugin(&mut app, options.settings, options.kept);
    if let Some(folder) = &options.folder {
        authoring::watch(&mut app, folder);
    }
    app.add_systems(Startup, |mut commands: Commands<'_, '_>| {
        commands.spawn(scene::camera());
    });
    match app.run() {
        AppExit::Success => Ok(()),
        AppExit::Error(_) => Err(WindowError::Stopped),
    }
}

/// Draws screens of the gallery without a window and writes each as PNG into a folder, which is made if it isn't there.
/// `all` stands for every screen.
///
/// # Errors
/// When a screen is not known, there is no adapter, nothing is read back, or the folder can't be written.
pub fn pictures(session: &Session, screens: &[String], out: &Path) -> Result<(), WindowError> {
    let known = gallery::screens();
    let named = |name: &String| known.iter().find(|p| p.name == *name);
    let all = screens.iter().any(|name| name == ALL);
    if let Some(unknown) = screens.iter().find(|n| *n != ALL && named(n).is_none()) {
        let names = known.into_iter().map(|p| p.name);
        let names = std::iter::once(ALL.to_owned()).chain(names).collect();
        return Err(WindowError::UnknownScreen(unknown.clone(), names));
    }
    let wanted: Vec<Picture> = if all {
        known
    } else {
        screens.iter().filter_map(named).cloned().collect()
    };
    // The window asks for predictions, so its pictures do.
    let session = session.clone().asking();
    picture::draw(&session, &wanted, out)
}

/// What stands for every screen.
const ALL: &str = "all";

/// The longest rest between two frames.
/// It is finite because an endless one keeps the event loop of this engine version spinning.
const REST: std::time::Duration = std::time::Duration::from_mins(1);

/// The engine's plugins with or without a window on a display.
fn engine(window: Option<Window>, backends: Backends) -> PluginGroupBuilder {
    let settings = WgpuSettings {
        backends: Some(backends),
        ..WgpuSettings::default()
    };
    // Without a window a picture is wanted, and it has to be whole in its first frame.
    let synchronous_pipeline_compilation = window.is_none();
    let exit_condition = if window.is_some() {
        ExitCondition::OnPrimaryClosed
    } else {
        ExitCondition::DontExit
    };
    DefaultPlugins
        .set(WindowPlugin {
            primary_window: window,
            exit_condition,
            ..WindowPlugin::default()
        })
        .set(RenderPlugin {
            render_creation: settings.into(),
            synchronous_pipeline_compilation,
            ..RenderPlugin::default()
        })
        .set(LogPlugin {
            level: bevy::log::Level::WARN,
            filter: LOG.to_owned(),
            ..LogPlugin::default()
        })
}

/// What the engine may say on standard error: warnings of the software adapter are no news.
const LOG: &str = "wgpu=error,naga=error,bevy_render=error,bevy_winit=error,bevy_egui=error";

/// Adds everything of ours to an engine.
fn build(app: &mut App, session: Session) {
    app.add_plugins((panels::ink::Inked, output::plugin, painting::plugin));
    app.insert_resource(ClearColor(theme::INK.bevy()));
    app.insert_resource(link::Open(session));
    app.configure_sets(
        Update,
        (
            WindowSystems::ReadInput,
            WindowSystems::Apply,
            WindowSystems::Project,
            WindowSystems::Draw,
        )
            .chain(),
    );
    app.add_plugins((
        link::plugin,
        input::plugin,
        scene::plugin,
        screens::plugin,
        access::plugin,
        again::plugin,
        mirror::plugin,
        keep::plugin,
        standing::plugin,
    ));
    on_one_thread(app.world_mut());
    if let Some(render) = app.get_sub_app_mut(RenderApp) {
        on_one_thread(render.world_mut());
    }
}

/// Has each schedule of a world run its systems one after another, on the thread that called it.
/// Ours are many and short: to hand each to another thread takes longer than to run it.
/// Scene and renderer still work side by side, each on a thread of its own.
fn on_one_thread(world: &mut World) {
    for (_, schedule) in world.resource_mut::<Schedules>().iter_mut() {
        schedule.set_executor(SingleThreadedExecutor::new());
    }
}
