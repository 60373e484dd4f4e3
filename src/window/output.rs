//! How the finished picture comes to the display: copied pixel by pixel, its colors made linear by a polynomial.
//!
//! Scene and panels are painted in encoded colors (sRGB), as the display takes them: to make each linear and back costs the software adapter an eighth of a frame.
//! The engine's own copy works out three powers a pixel; the polynomial gives the same 256 steps of each color, off by 0.3 of a step at most.
//! It does not cover a camera whose picture is larger or smaller than its target.

use bevy::asset::uuid_handle;
use bevy::camera::CompositingSpace;
use bevy::core_pipeline::blit::{BlitPipeline, init_blit_pipeline};
use bevy::prelude::*;
use bevy::render::{RenderApp, RenderStartup};
use bevy::shader::Shader;

/// In what the picture is put together.
pub(super) const SPACE: CompositingSpace = CompositingSpace::Srgb;

const SHADER: Handle<Shader> = uuid_handle!("0a6d1f7b-5d0c-4c36-8e4a-2b7f9c1d3e52");

pub(super) fn plugin(app: &mut App) {
    let shader = Shader::from_wgsl(include_str!("output.wgsl"), "output.wgsl");
    let mut shaders = app.world_mut().resource_mut::<Assets<Shader>>();
    let kept = shaders.insert(SHADER.id(), shader);
    // Only an id of a past generation is refused, and this one has none.
    debug_assert!(kept.is_ok());
    if let Some(render) = app.get_sub_app_mut(RenderApp) {
        render.add_systems(RenderStartup, take_over.after(init_blit_pipeline));
    }
}

fn take_over(mut blit: ResMut<'_, BlitPipeline>) {
    blit.fragment_shader = SHADER;
}

#[cfg(test)]
mod tests {
    use crate::units::portable;

    /// What a target makes of a linear color: IEC 61966-2-1, from memory.
    fn encode(linear: f64) -> f64 {
        if linear <= 0.003_130_8 {
            linear * 12.92
        } else {
            1.055 * portable::power(linear, 1.0 / 2.4) - 0.055
        }
    }

    #[test]
    fn each_of_the_256_steps_of_a_color_comes_out_as_it_went_in() {
        let line = include_str!("output.wgsl").lines();
        let line = line.filter(|l| l.contains("return c *"));
        let parts: Vec<&str> = line.flat_map(|l| l.split(['(', ' ', ')', ';'])).collect();
        let mut factors: Vec<f64> = parts.iter().filter_map(|p| p.parse().ok()).collect();
        // The last one is taken away.
        let last = factors.pop().expect("the polynomial has factors");
        factors.push(-last);
        assert_eq!(factors.len(), 6, "{factors:?}");
        for step in 0..=255_u8 {
            let encoded = f64::from(step) / 255.0;
            let linear = factors.iter().rev().fold(0.0, |sum, f| (sum + f) * encoded);
            let off = encode(linear) * 255.0 - f64::from(step);
            assert!(off.abs() < 0.3, "step {step} is off by {off}");
        }
    }
}
