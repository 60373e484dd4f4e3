//! What stands still from frame to frame, so that it is neither laid out nor painted again.
//!
//! Panels are laid out when there was an input, when what they tell has changed, when the toolkit wants to go on, and while a screen reader listens.
//! In all other frames what the last pass painted is handed over again.
//! What of the picture is painted again is decided by [`super::painting`], which is told here how often more than the moving things has changed.
//! It does not cover a toolkit that changes what it shows without a request of its own.

use bevy::a11y::AccessibilityRequested;
use bevy::prelude::*;
use bevy::render::extract_resource::ExtractResource;
use bevy_egui::egui;
use bevy_egui::{EguiContext, EguiInput, EguiPostUpdateSet, EguiRenderOutput};

use super::desk::Desk;
use super::link::{Open, Views};
use super::scene::Drawn;
use super::screens::Again;

/// What stands still.
#[derive(Resource, ExtractResource, Debug, Clone, Default, PartialEq, Eq)]
pub(super) struct Standing {
    /// Counts the frames in which more than the moving things and what is seen of the street was new.
    pub(super) changes: u64,
    /// Counts the frames in which another part of the street was seen, and nothing else was new.
    pub(super) glides: u64,
    /// Where things move, pixels of the target.
    pub(super) room: URect,
    /// Whether panels are laid out in this frame.
    laid_out: bool,
}

pub(super) fn plugin(app: &mut App) {
    let laid_out = |standing: Res<'_, Standing>| standing.laid_out;
    app.init_resource::<Standing>()
        .add_systems(PostUpdate, look.before(EguiPostUpdateSet::EndPass))
        .configure_sets(PostUpdate, EguiPostUpdateSet::EndPass.run_if(laid_out))
        .configure_sets(
            PostUpdate,
            EguiPostUpdateSet::ProcessOutput.run_if(laid_out),
        )
        .add_systems(PostUpdate, keep.after(EguiPostUpdateSet::ProcessOutput));
}

/// What of an input is no event.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Around {
    window: Option<egui::Rect>,
    pixels_per_point: Option<f32>,
    focused: bool,
}

impl Around {
    fn of(input: &egui::RawInput) -> Self {
        Self {
            window: input.screen_rect,
            pixels_per_point: input.viewport().native_pixels_per_point,
            focused: input.focused,
        }
    }
}

/// Looks for what has changed since the frame before.
fn look(
    (open, views, desk, drawn): (Res<'_, Open>, Res<'_, Views>, Res<'_, Desk>, Res<'_, Drawn>),
    (again, listened): (Res<'_, Again>, Option<Res<'_, AccessibilityRequested>>),
    mut panels: Query<'_, '_, (&mut EguiContext, &EguiInput, &Camera)>,
    mut last: Local<'_, Option<Around>>,
    mut standing: ResMut<'_, Standing>,
) {
    let told = open.is_changed() || views.is_changed() || desk.is_changed();
    let listened = listened.is_some_and(|listened| listened.get());
    let mut new = told || again.0 || listened;
    for (mut context, input, camera) in &mut panels {
        let around = Around::of(input);
        let around_changed = last.replace(around) != Some(around);
        let files = input.hovered_files.len() + input.dropped_files.len();
        new |= !input.events.is_empty()
            || files > 0
            || around_changed
            || context.get_mut().has_requested_repaint();
        let scale = camera.target_scaling_factor().unwrap_or(1.0);
        let room = drawn.frame.shown();
        // A pixel more: the toolkit rounds where it ends a leader at the edge.
        standing.room = URect::from_corners(
            (room.min * scale - 1.0).floor().as_uvec2(),
            (room.max * scale + 1.0).ceil().as_uvec2(),
        );
    }
    let glides = drawn.is_changed() && !new;
    standing.changes += u64::from(new);
    standing.glides += u64::from(glides);
    standing.laid_out = new || glides;
}

/// Keeps what a pass painted, and hands it over again where there was none.
fn keep(
    standing: Res<'_, Standing>,
    mut outputs: Query<'_, '_, &mut EguiRenderOutput>,
    mut kept: Local<'_, Vec<egui::ClippedPrimitive>>,
) {
    for mut output in &mut outputs {
        if standing.laid_out {
            kept.clone_from(&output.paint_jobs);
        } else {
            output.paint_jobs.clone_from(&kept);
        }
    }
}
