//! Pictures: screens drawn without a window and without an event loop, for documents and for comparison.
//!
//! Each picture is a list of commands and what lies open, played on a session of its own, drawn on a render target and read back.
//! It does not cover moving things: everything stands still in a picture.

use std::path::{Path, PathBuf};
use std::sync::mpsc;

use bevy::asset::RenderAssetUsages;
use bevy::camera::RenderTarget;
use bevy::prelude::*;
use bevy::render::pipelined_rendering::PipelinedRenderingPlugin;
use bevy::render::render_resource::{
    Extent3d, PollType, TextureDimension, TextureFormat, TextureUsages,
};
use bevy::render::renderer::RenderDevice;
use bevy::render::settings::Backends;
use bevy::render::view::screenshot::{Screenshot, ScreenshotCaptured};
use bevy::winit::WinitPlugin;

use crate::session::Session;

use super::link::{Desk, Open, Wish};
use super::{NoDisplay, build, engine, probe, scene};

/// One picture to draw.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Picture {
    /// File name without its ending.
    pub name: String,
    /// What the learner wished before the picture is taken.
    pub wishes: Vec<Wish>,
}

/// Why pictures could not be drawn.
#[derive(Debug)]
#[non_exhaustive]
pub enum PictureError {
    /// There is no adapter.
    NoDisplay(NoDisplay),
    /// The engine gave no picture back.
    Nothing(String),
    /// The picture could not be written.
    Written(PathBuf, image::ImageError),
}

impl std::fmt::Display for PictureError {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::NoDisplay(what) => write!(f, "{what}"),
            Self::Nothing(name) => f.write_str(name),
            Self::Written(path, why) => write!(f, "{}: {why}", path.display()),
        }
    }
}

impl std::error::Error for PictureError {}

/// Frames in which fonts, meshes and words settle before a picture is taken.
const SETTLE: usize = 6;
/// Frames that may pass until the picture is read back.
const PATIENCE: usize = 24;

/// Draws pictures one after the other, each from a session as it is handed in, and writes each as PNG into a folder.
///
/// # Errors
/// When there is no adapter, when nothing is read back, or when the folder can't be written.
pub fn picture(
    session: &Session,
    pictures: &[Picture],
    size: (u32, u32),
    out_dir: &Path,
) -> Result<Vec<PathBuf>, PictureError> {
    let backends = probe().map_err(PictureError::NoDisplay)?;
    let mut studio = Studio::new(session.clone(), size, backends);
    let mut paths = Vec::new();
    for picture in pictures {
        studio.begin(session.clone());
        let image = studio
            .draw(&picture.wishes)
            .ok_or_else(|| PictureError::Nothing(picture.name.clone()))?;
        let path = out_dir.join(format!("{}.png", picture.name));
        image
            .save(&path)
            .map_err(|why| PictureError::Written(path.clone(), why))?;
        paths.push(path);
    }
    Ok(paths)
}

/// An engine without a window whose frames are driven by hand.
struct Studio {
    app: App,
    target: Handle<Image>,
}

impl Studio {
    fn new(session: Session, (width, height): (u32, u32), backends: Backends) -> Self {
        let mut app = App::new();
        let plugins = engine(None, backends)
            .disable::<WinitPlugin>()
            .disable::<PipelinedRenderingPlugin>();
        app.add_plugins(plugins);
        build(&mut app, session, true);
        app.finish();
        app.cleanup();
        let extent = Extent3d {
            width,
            height,
            depth_or_array_layers: 1,
        };
        let mut image = Image::new_uninit(
            extent,
            TextureDimension::D2,
            TextureFormat::Rgba8UnormSrgb,
            RenderAssetUsages::RENDER_WORLD,
        );
        image.texture_descriptor.usage |= TextureUsages::RENDER_ATTACHMENT;
        let target = app.world_mut().resource_mut::<Assets<Image>>().add(image);
        app.world_mut()
            .spawn((scene::camera(), RenderTarget::from(target.clone())));
        Self { app, target }
    }

    fn frame(&mut self) {
        self.app.update();
        let device = self.app.world().resource::<RenderDevice>().wgpu_device();
        if let Err(why) = device.poll(PollType::Wait {
            submission_index: None,
            timeout: None,
        }) {
            bevy::log::warn!("{why}");
        }
    }

    /// Lays a fresh session on a cleared desk.
    fn begin(&mut self, session: Session) {
        let world = self.app.world_mut();
        *world.resource_mut::<Desk>() = Desk {
            still: true,
            ..Desk::default()
        };
        *world.resource_mut::<Open>() = Open(session);
        self.frame();
    }

    fn draw(&mut self, wishes: &[Wish]) -> Option<image::RgbImage> {
        for wish in wishes {
            self.app.world_mut().write_message(wish.clone());
            self.frame();
        }
        for _ in 0..SETTLE {
            self.frame();
        }
        let (sender, receiver) = mpsc::channel();
        self.app
            .world_mut()
            .spawn(Screenshot::image(self.target.clone()))
            .observe(move |captured: On<'_, '_, ScreenshotCaptured>| {
                if let Ok(image) = captured.image.clone().try_into_dynamic() {
                    sender.send(image.to_rgb8()).unwrap_or_default();
                }
            });
        for _ in 0..PATIENCE {
            self.frame();
            if let Ok(image) = receiver.try_recv() {
                return Some(image);
            }
        }
        None
    }
}
