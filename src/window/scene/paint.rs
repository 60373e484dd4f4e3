//! The material of everything that a [`super::brush::Brush`] paints: the colors of its corners, through a shader as short as can be.
//!
//! The engine's own material works out textures, tints and positions for every pixel, which the software adapter pays for.
//! Colors stay encoded, as the whole picture is (see [`crate::window::output`]).
//! It does not cover a target that takes linear colors.

use bevy::asset::uuid_handle;
use bevy::prelude::*;
use bevy::render::render_resource::AsBindGroup;
use bevy::shader::{Shader, ShaderRef};
use bevy::sprite_render::{AlphaMode2d, Material2d, Material2dPlugin};

/// Paint.
#[derive(Debug, Clone, Asset, TypePath, AsBindGroup)]
pub(super) struct Paint {
    pub(super) kind: Kind,
}

/// What is painted with it: each kind has a phase of its own in [`crate::window::painting`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    /// What stands still, and nothing shows through.
    Ground,
    /// What moves, and nothing shows through.
    Moving,
    /// What is behind shows through.
    Soft,
}

const SHADER: Handle<Shader> = uuid_handle!("5f0b6f0e-7a1c-4a3e-9a51-3f1d2f7f6f11");

impl Material2d for Paint {
    fn vertex_shader() -> ShaderRef {
        SHADER.into()
    }

    fn fragment_shader() -> ShaderRef {
        SHADER.into()
    }

    fn alpha_mode(&self) -> AlphaMode2d {
        match self.kind {
            Kind::Ground => AlphaMode2d::Opaque,
            // The shader leaves no pixel out: it is the phase that is wanted.
            Kind::Moving => AlphaMode2d::Mask(0.5),
            Kind::Soft => AlphaMode2d::Blend,
        }
    }
}

pub(super) fn plugin(app: &mut App) {
    app.add_plugins(Material2dPlugin::<Paint>::default());
    // The shader is there at once: a window never starts blank.
    let shader = Shader::from_wgsl(include_str!("paint.wgsl"), "paint.wgsl");
    let mut shaders = app.world_mut().resource_mut::<Assets<Shader>>();
    let kept = shaders.insert(SHADER.id(), shader);
    // Only an id of a past generation is refused, and this one has none.
    debug_assert!(kept.is_ok());
}
