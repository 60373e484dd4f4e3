//! The shader of the panels: the toolkit's own, without what it works out anew for every pixel.
//!
//! The toolkit turns colors to and fro by six powers a pixel, which the software adapter pays for with a third of each frame.
//! It does not cover pictures in panels, of which there are none: their dark parts would come out a little darker.

use bevy::prelude::*;
use bevy::shader::Shader;
use bevy_egui::EguiPlugin;
use bevy_egui::render::EGUI_SHADER_HANDLE;

/// The toolkit, with this shader in place of its own.
pub(crate) struct Inked;

impl Plugin for Inked {
    fn build(&self, app: &mut App) {
        app.add_plugins(EguiPlugin {
            // One texture holds all letters; to choose among several costs time for each pixel.
            bindless_mode_array_size: None,
        });
        let shader = Shader::from_wgsl(include_str!("ink.wgsl"), "ink.wgsl");
        let mut shaders = app.world_mut().resource_mut::<Assets<Shader>>();
        let kept = shaders.insert(EGUI_SHADER_HANDLE.id(), shader);
        // Only an id of a past generation is refused, and this one has none.
        debug_assert!(kept.is_ok());
    }
}
