//! Pictures: screens drawn without a window and without an event loop, for documents and for comparison.
//!
//! Each picture is a list of commands and what lies open, played on a session of its own, drawn on a render target and read back.
//! It does not cover moving things: everything stands still in a picture.

use std::path::Path;
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

use super::desk::Desk;
use super::error::WindowError;
use super::link::{Open, Wish};
use super::probe::probe;
use super::{build, engine, scene};

/// One picture to draw.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Picture {
    /// File name without its ending.
    pub(super) name: String,
    /// What the learner wished before the picture is taken.
    pub(super) wishes: Vec<Wish>,
    /// Width and height in pixels.
    pub(super) size: (u32, u32),
}

/// Frames in which fonts, meshes and words settle before a picture is taken.
const SETTLE: usize = 6;
/// Frames that may pass until the picture is read back.
const PATIENCE: usize = 24;

/// Draws pictures one after the other, each from a session as it is handed in, and writes each as PNG into a folder.
pub(super) fn draw(session: &Session, pictures: &[Picture], out: &Path) -> Result<(), WindowError> {
    let backends = probe()?;
    std::fs::create_dir_all(out)
        .map_err(|why| WindowError::Unwritable(out.to_owned(), why.to_string()))?;
    let mut studio: Option<Studio> = None;
    for picture in pictures {
        // One engine for all pictures of a size that follow each other.
        let studio = match studio.take_if(|studio| studio.size != picture.size) {
            Some(_) => studio.insert(Studio::new(session.clone(), picture.size, backends)),
            None => {
                studio.get_or_insert_with(|| Studio::new(session.clone(), picture.size, backends))
            }
        };
        studio.begin(session.clone());
        let image = studio
            .draw(&picture.wishes)
            .ok_or_else(|| WindowError::NoPicture(picture.name.clone()))?;
        let path = out.join(format!("{}.png", picture.name));
        image
            .save(&path)
            .map_err(|why| WindowError::Unwritable(path, why.to_string()))?;
    }
    Ok(())
}

/// An engine without a window whose frames are driven by hand.
struct Studio {
    app: App,
    size: (u32, u32),
    target: Handle<Image>,
}

impl Studio {
    fn new(session: Session, (width, height): (u32, u32), backends: Backends) -> Self {
        let mut app = App::new();
        let plugins = engine(None, backends)
            .disable::<WinitPlugin>()
            .disable::<PipelinedRenderingPlugin>();
        app.add_plugins(plugins);
        build(&mut app, session);
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
        Self {
            app,
            size: (width, height),
            target,
        }
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
        self.play(wishes);
        self.capture(|_| {})
    }

    /// Plays a script until its screen has settled.
    fn play(&mut self, wishes: &[Wish]) {
        for wish in wishes {
            self.app.world_mut().write_message(wish.clone());
            self.frame();
        }
        for _ in 0..SETTLE {
            self.frame();
        }
    }

    /// Takes the picture; something can be done before each frame until it is there.
    fn capture(&mut self, mut before: impl FnMut(&mut World)) -> Option<image::RgbImage> {
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
            before(self.app.world_mut());
            self.frame();
            if let Ok(image) = receiver.try_recv() {
                return Some(image);
            }
        }
        None
    }
}

#[cfg(test)]
#[path = "../../tests/window/painted.rs"]
mod tests;
