//! The shader of the panels: the toolkit's own, without what it works out anew for every pixel.
//!
//! The toolkit turns colors to and fro by six powers a pixel, which the software adapter pays for with a third of each frame.
//! Here they stay encoded, as the whole picture is (see [`crate::window::output`]).
//! It does not cover pictures in panels, of which there are none.

use bevy::prelude::*;
use bevy::render::render_resource::{PipelineCache, SpecializedRenderPipelines, TextureFormat};
use bevy::render::{Render, RenderApp, RenderSystems};
use bevy::shader::Shader;
use bevy_egui::EguiPlugin;
use bevy_egui::render::systems::{EguiPipelines, queue_pipelines_system};
use bevy_egui::render::{EGUI_SHADER_HANDLE, EguiPipeline, EguiPipelineKey};

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
        if let Some(render) = app.get_sub_app_mut(RenderApp) {
            let own = onto_encoded
                .in_set(RenderSystems::Queue)
                .after(queue_pipelines_system);
            render.add_systems(Render, own);
        }
    }
}

/// The toolkit takes the picture for one that encodes what is painted; this one is encoded already.
fn onto_encoded(
    cache: Res<'_, PipelineCache>,
    mut made: ResMut<'_, SpecializedRenderPipelines<EguiPipeline>>,
    pipeline: Res<'_, EguiPipeline>,
    mut chosen: ResMut<'_, EguiPipelines>,
) {
    let key = EguiPipelineKey {
        target_format: TextureFormat::Rgba8Unorm,
    };
    for id in chosen.0.values_mut() {
        *id = made.specialize(&cache, &pipeline, key);
    }
}
