//! How a frame is painted: whole, or, while nothing but the moving things has changed, only the room in which they move.
//!
//! The picture stays in its texture from frame to frame.
//! A change is painted whole for some frames, until all that came late has come; then what stands in the scene, the ground, is kept beside the picture.
//! From then on a frame is the kept ground, copied back, and on it what moves and the panels, cut to the room.
//! While the scene glides its room is painted with the ground, and what is around it stays.
//! The same shapes at the same places through the same shaders: a picture painted in part is the whole one, bit for bit (tested).
//! It does not cover a second camera, nor one with a part of the target for its own.

use bevy::core_pipeline::core_2d::{AlphaMask2d, Opaque2d, Transparent2d};
use bevy::core_pipeline::upscaling::upscaling;
use bevy::ecs::schedule::{ScheduleBuildSettings, ScheduleLabel};
use bevy::prelude::*;
use bevy::render::extract_resource::ExtractResourcePlugin;
use bevy::render::render_phase::{
    TrackedRenderPass, ViewBinnedRenderPhases, ViewSortedRenderPhases,
};
use bevy::render::render_resource::{
    Extent3d, Origin3d, PipelineCache, RenderPassColorAttachment, RenderPassDescriptor, StoreOp,
    TexelCopyTextureInfo, Texture, TextureAspect, TextureDescriptor, TextureDimension, TextureId,
    TextureUsages,
};
use bevy::render::renderer::{RenderContext, RenderDevice, ViewQuery};
use bevy::render::view::{ExtractedView, ViewDepthTexture, ViewTarget};
use bevy::render::{Render, RenderApp, RenderSystems};
use bevy_egui::render::systems::prepare_egui_render_target_data_system;
use bevy_egui::render::{egui_pass, prepare_egui_pass};
use bevy_egui::{EguiPixelsPerPoint, EguiRenderOutput, egui};

use super::standing::Standing;

/// The schedule of the one camera.
#[derive(ScheduleLabel, Debug, Clone, PartialEq, Eq, Hash, Default)]
pub(super) struct Painting;

/// From where on layers hold what moves.
pub(super) const MOVING: f32 = 3.0;

/// Frames that are painted whole after a change: meshes and letters may come in a frame late.
const LATE: u32 = 4;

/// What is kept from frame to frame.
#[derive(Resource, Debug, Default)]
pub(super) struct Kept {
    /// The texture that holds the picture, and the count of changes that it shows.
    of: Option<(TextureId, u64)>,
    /// The count of glides that it shows.
    glides: u64,
    /// Frames painted before this one since then.
    times: u32,
    /// Whether until the ground is kept only the room is painted.
    room_only: bool,
    ground: Option<Texture>,
    room: URect,
}

impl Kept {
    /// Whether this frame is painted in part.
    pub(super) fn in_part(&self) -> bool {
        self.times > LATE
    }

    /// Whether what is around the room stays as it is.
    pub(super) fn in_room(&self) -> bool {
        self.in_part() || self.room_only
    }

    /// Whether this frame is the last before the ground is kept.
    fn keeps(&self) -> bool {
        self.times == LATE
    }

    fn size(&self) -> Extent3d {
        let size = self.room.size();
        Extent3d {
            width: size.x,
            height: size.y,
            depth_or_array_layers: 1,
        }
    }

    /// The room within a texture.
    fn within<'a>(&self, texture: &'a Texture) -> TexelCopyTextureInfo<'a> {
        TexelCopyTextureInfo {
            texture,
            mip_level: 0,
            origin: Origin3d {
                x: self.room.min.x,
                y: self.room.min.y,
                z: 0,
            },
            aspect: TextureAspect::All,
        }
    }
}

pub(super) fn plugin(app: &mut App) {
    app.add_plugins(ExtractResourcePlugin::<Standing>::default());
    let Some(render) = app.get_sub_app_mut(RenderApp) else {
        return;
    };
    let mut schedule = Schedule::new(Painting);
    // As the engine has it for a camera of its own.
    schedule.set_build_settings(ScheduleBuildSettings {
        auto_insert_apply_deferred: false,
        ..ScheduleBuildSettings::default()
    });
    schedule.add_systems((paint, prepare_egui_pass, egui_pass, upscaling, count).chain());
    let before = (judge, cut)
        .chain()
        .in_set(RenderSystems::Prepare)
        .before(prepare_egui_render_target_data_system);
    render
        .init_resource::<Kept>()
        .add_schedule(schedule)
        .add_systems(Render, before);
}

/// Decides whether this frame is painted whole.
fn judge(
    target: Query<'_, '_, &ViewTarget>,
    standing: Option<Res<'_, Standing>>,
    pipelines: Res<'_, PipelineCache>,
    device: Res<'_, RenderDevice>,
    mut kept: ResMut<'_, Kept>,
) {
    let (Ok(target), Some(standing)) = (target.single(), standing) else {
        *kept = Kept::default();
        return;
    };
    let picture = target.main_texture();
    let whole = UVec2::new(picture.width(), picture.height());
    let room = standing
        .room
        .intersect(URect::from_corners(UVec2::ZERO, whole));
    let of = Some((picture.id(), standing.changes));
    let ready = pipelines.waiting_pipelines().next().is_none() && !room.is_empty();
    if kept.of == of && ready {
        if kept.glides != standing.glides && kept.in_room() {
            kept.times = 0;
            kept.room_only = true;
        }
        kept.glides = standing.glides;
        return;
    }
    *kept = Kept {
        of,
        glides: standing.glides,
        times: 0,
        room_only: false,
        ground: kept.ground.take().filter(|ground| {
            ground.size() == picture.size() && ground.format() == picture.format()
        }),
        room,
    };
    kept.ground.get_or_insert_with(|| {
        device.create_texture(&TextureDescriptor {
            label: Some("ground"),
            size: picture.size(),
            mip_level_count: 1,
            sample_count: 1,
            dimension: TextureDimension::D2,
            format: picture.format(),
            usage: TextureUsages::COPY_SRC | TextureUsages::COPY_DST,
            view_formats: &[],
        })
    });
}

/// Counts the frames that were painted: the engine leaves out those that nobody would see.
fn count(mut kept: ResMut<'_, Kept>) {
    kept.times = kept.times.saturating_add(1);
}

/// Cuts the panels to the room, and leaves out what is not in it.
fn cut(
    kept: Res<'_, Kept>,
    mut panels: Query<'_, '_, (&mut EguiRenderOutput, &EguiPixelsPerPoint)>,
) {
    if !kept.in_room() {
        return;
    }
    for (mut panels, scale) in &mut panels {
        let point = |at: UVec2| {
            let at = at.as_vec2() / scale.pixels_per_point;
            egui::pos2(at.x, at.y)
        };
        let room = egui::Rect::from_min_max(point(kept.room.min), point(kept.room.max));
        panels.paint_jobs.retain_mut(|job| {
            job.clip_rect = job.clip_rect.intersect(room);
            let seen = job.clip_rect.is_positive();
            if let (true, egui::epaint::Primitive::Mesh(mesh)) = (seen, &mut job.primitive) {
                *mesh = seen_of(mesh, job.clip_rect);
            }
            seen
        });
    }
}

/// The triangles of a mesh that may be seen in a room, and their corners.
fn seen_of(mesh: &egui::Mesh, room: egui::Rect) -> egui::Mesh {
    let mut seen = egui::Mesh::with_texture(mesh.texture_id);
    let mut places = vec![None; mesh.vertices.len()];
    for triangle in mesh.triangles() {
        let triangle = triangle.map(|corner| usize::try_from(corner).unwrap_or(usize::MAX));
        let mut around = egui::Rect::NOTHING;
        for corner in triangle {
            if let Some(vertex) = mesh.vertices.get(corner) {
                around.extend_with(vertex.pos);
            }
        }
        if !around.intersects(room) {
            continue;
        }
        for corner in triangle {
            if let (Some(place), Some(vertex)) = (places.get_mut(corner), mesh.vertices.get(corner))
            {
                let next = u32::try_from(seen.vertices.len()).unwrap_or(u32::MAX);
                let place = *place.get_or_insert_with(|| {
                    seen.vertices.push(*vertex);
                    next
                });
                seen.indices.push(place);
            }
        }
    }
    seen
}

/// Paints the ground or copies it back, and what is on it.
fn paint(
    world: &World,
    view: ViewQuery<'_, '_, (&ExtractedView, &ViewTarget, &ViewDepthTexture)>,
    grounds: Res<'_, ViewBinnedRenderPhases<Opaque2d>>,
    movers: Res<'_, ViewBinnedRenderPhases<AlphaMask2d>>,
    softs: Res<'_, ViewSortedRenderPhases<Transparent2d>>,
    kept: Res<'_, Kept>,
    mut ctx: RenderContext<'_, '_>,
) {
    let entity = view.entity();
    let (view, target, depth) = view.into_inner();
    let view = &view.retained_view_entity;
    let (Some(ground), Some(movers), Some(soft), Some(own)) = (
        grounds.get(view),
        movers.get(view),
        softs.get(view),
        &kept.ground,
    ) else {
        return;
    };
    let under = soft.items.values();
    let under = under.take_while(|item| item.sort_key.0 < MOVING).count();
    // Whoever asks for it first clears the picture; what is painted in part is not cleared.
    let cleared = target.get_color_attachment();
    let picture = target.main_texture();
    let cut = |pass: &mut TrackedRenderPass<'_>| {
        if kept.in_room() {
            let (at, size) = (kept.room.min, kept.room.size());
            pass.set_scissor_rect(at.x, at.y, size.x, size.y);
        }
    };
    let painted = if kept.in_part() {
        let (from, to) = (kept.within(own), kept.within(picture));
        ctx.command_encoder()
            .copy_texture_to_texture(from, to, kept.size());
        Ok(())
    } else {
        let picture = if kept.in_room() {
            target.get_color_attachment()
        } else {
            cleared
        };
        let mut pass = onto(&mut ctx, picture, depth);
        cut(&mut pass);
        ground
            .render(&mut pass, world, entity)
            .and_then(|()| soft.render_range(&mut pass, world, entity, ..under))
    };
    if kept.keeps() {
        let (from, to) = (kept.within(picture), kept.within(own));
        ctx.command_encoder()
            .copy_texture_to_texture(from, to, kept.size());
    }
    let mut pass = onto(&mut ctx, target.get_color_attachment(), depth);
    cut(&mut pass);
    let painted = painted
        .and_then(|()| movers.render(&mut pass, world, entity))
        .and_then(|()| soft.render_range(&mut pass, world, entity, under..));
    if let Err(why) = painted {
        error!("{why}");
    }
}

/// Begins to paint shapes on a picture.
fn onto<'a>(
    ctx: &'a mut RenderContext<'_, '_>,
    picture: RenderPassColorAttachment<'_>,
    depth: &ViewDepthTexture,
) -> TrackedRenderPass<'a> {
    ctx.begin_tracked_render_pass(RenderPassDescriptor {
        label: Some("scene"),
        color_attachments: &[Some(picture)],
        depth_stencil_attachment: Some(depth.get_attachment(StoreOp::Store)),
        timestamp_writes: None,
        occlusion_query_set: None,
        multiview_mask: None,
    })
}
