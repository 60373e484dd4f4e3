//! A brush that paints flat shapes into two meshes: fills, strokes, glows, each with a soft edge one pixel wide.
//!
//! Shapes are given in the plan's units (see [`super::plan`]) with y downward, and land in the engine's units, each nearer than those that were painted before.
//! What nothing shows through goes into a solid mesh, so that a pixel is painted once however much lies behind it; soft edges and glows go into a soft one on top.
//! One brush paints what stands, another what moves, from the same code: each leaves the other's shapes out.
//! Few meshes with colored vertices are few draw calls, which the software adapter needs; the soft edge replaces multisampling.
//! It does not cover curves with holes.
//! Accuracy: circles are polygons whose sides are at most two pixels long.

use bevy::asset::RenderAssetUsages;
use bevy::math::Vec2;
use bevy::mesh::{Indices, Mesh, PrimitiveTopology};
use lyon_tessellation::path::Path;
use lyon_tessellation::{
    BuffersBuilder, FillOptions, FillTessellator, FillVertex, VertexBuffers, math,
};

use crate::window::theme::Ink;

use super::frame::Frame;

/// Paint in two meshes.
#[derive(Debug)]
pub(super) struct Brush {
    frame: Frame,
    /// Where what is painted now has its origin and how large it is, the width turned where it is negative.
    around: (Vec2, Vec2),
    /// How near the shape is that is painted now, from 0 to 1.
    near: f32,
    /// What it paints, and what the shapes are that it is given now.
    paints: Part,
    given: Part,
    solid: Sheet,
    soft: Sheet,
}

/// What stays as it is while nothing changes, or what moves even then.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Part {
    Standing,
    Moving,
}

/// Triangles with colored corners.
#[derive(Debug, Default)]
struct Sheet {
    positions: Vec<[f32; 3]>,
    colors: Vec<[f32; 4]>,
    indices: Vec<u32>,
}

/// How much nearer each shape is than the one before.
const NEARER: f32 = 1.0 / 16_384.0;

/// Width of the soft edge in pixels.
const FEATHER: f32 = 1.0;

impl Brush {
    pub(super) fn new(frame: Frame, paints: Part) -> Self {
        Self {
            frame,
            around: (Vec2::ZERO, Vec2::ONE),
            near: 0.0,
            paints,
            given: Part::Standing,
            solid: Sheet::default(),
            soft: Sheet::default(),
        }
    }

    /// The frame it paints in.
    pub(super) fn frame(&self) -> Frame {
        self.frame
    }

    /// Paints something around a point at another size; with a negative width it is seen from its other side.
    pub(super) fn at_size(&mut self, pivot: Vec2, size: Vec2, paint: impl FnOnce(&mut Self)) {
        let (origin, scale) = self.around;
        let within = (origin + scale * (pivot - pivot * size), scale * size);
        let before = std::mem::replace(&mut self.around, within);
        paint(self);
        self.around = before;
    }

    /// Paints what moves while `moves`, and stands otherwise.
    pub(super) fn moving(&mut self, moves: bool, paint: impl FnOnce(&mut Self)) {
        let given = if moves { Part::Moving } else { self.given };
        let before = std::mem::replace(&mut self.given, given);
        paint(self);
        self.given = before;
    }

    /// Whether something of what moves, or does not, is its part: what a moving brush can leave out as a whole is not worked out for it.
    pub(super) fn wants(&self, moves: bool) -> bool {
        moves || self.paints == Part::Standing
    }

    /// Whether what it is given now is not its part.
    fn leaves_out(&self) -> bool {
        self.given != self.paints
    }

    /// A point of the plan in the engine's units.
    fn world(&self, at: Vec2) -> Vec2 {
        let (origin, size) = self.around;
        self.frame.world(origin + at * size)
    }

    /// Pixels per unit of what is painted now.
    fn scale(&self) -> f32 {
        self.frame.scale * self.around.1.y.abs()
    }

    /// The meshes of all that was painted: the solid one, and the soft one on top.
    pub(super) fn finish(mut self) -> [Mesh; 2] {
        // The nearest comes first, so that what is behind it is left out.
        let nearest_first = self.solid.indices.rchunks(3).flatten().copied();
        self.solid.indices = nearest_first.collect();
        [self.solid.mesh(), self.soft.mesh()]
    }

    /// Begins a shape that lies on all before it.
    fn begin(&mut self) {
        self.near += NEARER;
    }

    /// Where what is filled with an ink goes.
    fn sheet(&mut self, ink: Ink) -> &mut Sheet {
        if ink.is_solid() {
            &mut self.solid
        } else {
            &mut self.soft
        }
    }

    /// A filled polygon of any shape that does not cross itself.
    pub(super) fn fill(&mut self, points: &[Vec2], ink: Ink) {
        if points.len() < 3 || self.leaves_out() {
            return;
        }
        let pixels: Vec<Vec2> = points.iter().map(|p| self.world(*p)).collect();
        let mut path = Path::builder();
        for (i, p) in pixels.iter().enumerate() {
            if i == 0 {
                path.begin(math::point(p.x, p.y));
            } else {
                path.line_to(math::point(p.x, p.y));
            }
        }
        path.end(true);
        let mut buffers: VertexBuffers<[f32; 2], u32> = VertexBuffers::new();
        let filled = FillTessellator::new().tessellate_path(
            &path.build(),
            &FillOptions::default(),
            &mut BuffersBuilder::new(&mut buffers, |vertex: FillVertex<'_>| {
                vertex.position().to_array()
            }),
        );
        if filled.is_err() {
            return;
        }
        self.begin();
        let near = self.near;
        let sheet = self.sheet(ink);
        let base = sheet.n_vertices();
        for [x, y] in buffers.vertices {
            sheet.vertex(Vec2::new(x, y), near, ink);
        }
        let indices = buffers.indices.into_iter().map(|i| base + i);
        sheet.indices.extend(indices);
        self.soften(&pixels, ink);
    }

    /// A filled polygon without a dent.
    pub(super) fn convex(&mut self, points: &[Vec2], ink: Ink) {
        if self.leaves_out() {
            return;
        }
        let pixels: Vec<Vec2> = points.iter().map(|p| self.world(*p)).collect();
        self.begin();
        let near = self.near;
        let sheet = self.sheet(ink);
        let corners = pixels.iter().map(|p| sheet.vertex(*p, near, ink));
        let corners: Vec<u32> = corners.collect();
        if let Some((hub, rest)) = corners.split_first() {
            for pair in rest.windows(2) {
                sheet.indices.push(*hub);
                sheet.indices.extend(pair);
            }
        }
        self.soften(&pixels, ink);
    }

    /// An axis-parallel rectangle.
    pub(super) fn rect(&mut self, x: f32, y: f32, width: f32, height: f32, ink: Ink) {
        let (a, b) = (Vec2::new(x, y), Vec2::new(x + width, y + height));
        self.convex(&[a, Vec2::new(b.x, a.y), b, Vec2::new(a.x, b.y)], ink);
    }

    /// A rectangle with round corners.
    pub(super) fn round_rect(&mut self, corner: Vec2, size: Vec2, radius: f32, ink: Ink) {
        let r = radius.min(size.x / 2.0).min(size.y / 2.0);
        let centers = [
            (corner + Vec2::new(size.x - r, r), -90.0_f32),
            (corner + size - Vec2::splat(r), 0.0),
            (corner + Vec2::new(r, size.y - r), 90.0),
            (corner + Vec2::splat(r), 180.0),
        ];
        let mut points = Vec::new();
        for (center, start) in centers {
            for step in 0..=5_u8 {
                let angle = (start + f32::from(step) * 18.0).to_radians();
                points.push(center + Vec2::from_angle(angle) * r);
            }
        }
        self.convex(&points, ink);
    }

    /// A disk.
    pub(super) fn disk(&mut self, center: Vec2, radius: f32, ink: Ink) {
        self.ellipse(center, Vec2::splat(radius), ink);
    }

    /// A filled ellipse.
    pub(super) fn ellipse(&mut self, center: Vec2, radii: Vec2, ink: Ink) {
        if self.leaves_out() {
            return;
        }
        let sides = sides(radii.max_element() * self.scale());
        let points: Vec<Vec2> = around(sides)
            .map(|a| center + Vec2::from_angle(a) * radii)
            .collect();
        self.convex(&points, ink);
    }

    /// A ring.
    pub(super) fn ring(&mut self, center: Vec2, radius: f32, width: f32, ink: Ink) {
        if self.leaves_out() {
            return;
        }
        let sides = sides(radius * self.scale());
        let mut points: Vec<Vec2> = around(sides)
            .map(|a| center + Vec2::from_angle(a) * radius)
            .collect();
        if let Some(first) = points.first().copied() {
            points.push(first);
        }
        self.stroke(&points, width, ink);
    }

    /// A soft light that fades to nothing at its radii.
    pub(super) fn glow(&mut self, center: Vec2, radii: Vec2, ink: Ink) {
        if self.leaves_out() {
            return;
        }
        let sides = sides(radii.max_element() * self.scale()).min(48);
        self.begin();
        let hub = self.soft.vertex(self.world(center), self.near, ink);
        let rim: Vec<u32> = around(sides)
            .map(|a| {
                let at = self.world(center + Vec2::from_angle(a) * radii);
                self.soft.vertex(at, self.near, ink.alpha(0.0))
            })
            .collect();
        for (i, from) in rim.iter().enumerate() {
            let to = rim.get((i + 1) % rim.len()).copied().unwrap_or(*from);
            self.soft.indices.extend([hub, *from, to]);
        }
    }

    /// A quadrilateral that shades from one color on its first two corners to another on its last two.
    pub(super) fn shade(&mut self, corners: [Vec2; 4], first: Ink, last: Ink) {
        if self.leaves_out() {
            return;
        }
        let [a, b, c, d] = corners.map(|p| self.world(p));
        self.begin();
        let near = self.near;
        let sheet = self.sheet(if first.is_solid() { last } else { first });
        let a = sheet.vertex(a, near, first);
        let b = sheet.vertex(b, near, first);
        let c = sheet.vertex(c, near, last);
        let d = sheet.vertex(d, near, last);
        sheet.indices.extend([a, b, c, a, c, d]);
    }

    /// A line through points, in pixels wide whatever the scale.
    pub(super) fn line(&mut self, points: &[Vec2], pixels: f32, ink: Ink) {
        self.stroke(points, pixels / self.scale(), ink);
    }

    /// A line through points, in the plan's units wide.
    pub(super) fn stroke(&mut self, points: &[Vec2], width: f32, ink: Ink) {
        if self.leaves_out() {
            return;
        }
        let pixels: Vec<Vec2> = points.iter().map(|p| self.world(*p)).collect();
        let half = (width * self.scale() / 2.0).max(0.35);
        let core = (half - FEATHER / 2.0).max(0.0);
        let outer = half + FEATHER / 2.0;
        self.begin();
        let near = self.near;
        let mut previous: Option<([u32; 2], [u32; 4])> = None;
        for (i, at) in pixels.iter().enumerate() {
            let closed = pixels.len() > 2 && pixels.first() == pixels.last();
            let before = i
                .checked_sub(1)
                .or(closed.then(|| pixels.len() - 2))
                .and_then(|j| pixels.get(j));
            let after = pixels
                .get(i + 1)
                .or_else(|| closed.then(|| pixels.get(1)).flatten());
            let normal = miter(before.copied(), *at, after.copied());
            let [left, right] = [*at + normal * core, *at - normal * core];
            let sheet = self.sheet(ink);
            let within = [left, right].map(|at| sheet.vertex(at, near, ink));
            let edges = [
                self.soft.vertex(*at + normal * outer, near, ink.alpha(0.0)),
                self.soft.vertex(left, near, ink),
                self.soft.vertex(right, near, ink),
                self.soft.vertex(*at - normal * outer, near, ink.alpha(0.0)),
            ];
            if let Some(([a, d], [e, f, g, h])) = previous {
                let ([b, c], [i, j, k, l]) = (within, edges);
                self.sheet(ink).indices.extend([a, b, c, a, c, d]);
                self.soft.indices.extend([e, f, j, e, j, i]);
                self.soft.indices.extend([g, h, l, g, l, k]);
            }
            previous = Some((within, edges));
        }
    }

    /// Adds the soft edge outside a filled polygon.
    fn soften(&mut self, pixels: &[Vec2], ink: Ink) {
        let n = pixels.len();
        let at = |i: usize| pixels.get(i % n).copied().unwrap_or_default();
        let area: f32 = (0..n).map(|i| at(i).perp_dot(at(i + 1))).sum();
        let outward = if area > 0.0 { -FEATHER } else { FEATHER };
        let ring: Vec<(u32, u32)> = (0..n)
            .map(|i| {
                let normal = miter(Some(at(i + n - 1)), at(i), Some(at(i + 1)));
                (
                    self.soft.vertex(at(i), self.near, ink),
                    self.soft
                        .vertex(at(i) + normal * outward, self.near, ink.alpha(0.0)),
                )
            })
            .collect();
        for (i, (inner, outer)) in ring.iter().enumerate() {
            let (next_inner, next_outer) =
                ring.get((i + 1) % n).copied().unwrap_or((*inner, *outer));
            let edge = [*inner, *outer, next_outer, *inner, next_outer, next_inner];
            self.soft.indices.extend(edge);
        }
    }
}

impl Sheet {
    /// A mesh that holds nothing gets one triangle without area, because the engine can't hold an empty mesh.
    fn mesh(mut self) -> Mesh {
        if self.indices.is_empty() {
            self.positions.push([0.0; 3]);
            self.colors.push([0.0; 4]);
            self.indices.extend([0, 0, 0]);
        }
        Mesh::new(
            PrimitiveTopology::TriangleList,
            RenderAssetUsages::RENDER_WORLD,
        )
        .with_inserted_attribute(Mesh::ATTRIBUTE_POSITION, self.positions)
        .with_inserted_attribute(Mesh::ATTRIBUTE_COLOR, self.colors)
        .with_inserted_indices(Indices::U32(self.indices))
    }

    fn vertex(&mut self, at: Vec2, near: f32, ink: Ink) -> u32 {
        let index = self.n_vertices();
        self.positions.push([at.x, at.y, near]);
        self.colors.push(ink.encoded());
        index
    }

    #[expect(
        clippy::cast_possible_truncation,
        reason = "a scene has some ten thousand vertices"
    )]
    fn n_vertices(&self) -> u32 {
        self.positions.len() as u32
    }
}

/// Normal at a corner, long enough that both sides keep their width, at most doubled.
fn miter(before: Option<Vec2>, at: Vec2, after: Option<Vec2>) -> Vec2 {
    let left = |from: Vec2, to: Vec2| (to - from).normalize_or_zero().perp();
    let one = before.map(|b| left(b, at));
    let two = after.map(|a| left(at, a));
    match (one, two) {
        (Some(one), Some(two)) => {
            let sum = (one + two).normalize_or_zero();
            let cosine = sum.dot(two).max(0.5);
            if sum == Vec2::ZERO { two } else { sum / cosine }
        }
        (Some(only), None) | (None, Some(only)) => only,
        (None, None) => Vec2::Y,
    }
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "clamped first"
)]
fn sides(radius_px: f32) -> u16 {
    (radius_px * std::f32::consts::TAU / 2.0).clamp(10.0, 96.0) as u16
}

fn around(sides: u16) -> impl Iterator<Item = f32> {
    (0..sides).map(move |i| f32::from(i) / f32::from(sides) * std::f32::consts::TAU)
}

/// Points of a hanging wire between two ends, `sag` units below the straight line in its middle.
pub(super) fn hang(from: Vec2, to: Vec2, sag: f32) -> Vec<Vec2> {
    const STEPS: u8 = 18;
    (0..=STEPS)
        .map(|i| {
            let t = f32::from(i) / f32::from(STEPS);
            from.lerp(to, t) + Vec2::Y * (4.0 * sag * t * (1.0 - t))
        })
        .collect()
}

/// Rounds the corners of a route.
pub(super) fn rounded(points: &[Vec2], radius: f32) -> Vec<Vec2> {
    let mut out = Vec::new();
    for (i, at) in points.iter().enumerate() {
        let (Some(before), Some(after)) = (
            i.checked_sub(1).and_then(|j| points.get(j)),
            points.get(i + 1),
        ) else {
            out.push(*at);
            continue;
        };
        let r = radius
            .min(at.distance(*before) / 2.0)
            .min(at.distance(*after) / 2.0);
        let enter = *at + (*before - *at).normalize_or_zero() * r;
        let leave = *at + (*after - *at).normalize_or_zero() * r;
        for step in 0..=4_u8 {
            let t = f32::from(step) / 4.0;
            out.push(enter.lerp(*at, t).lerp(at.lerp(leave, t), t));
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::window::scene::frame::Look;
    use crate::window::theme;

    fn frame() -> Frame {
        Frame::new(Vec2::new(1280.0, 720.0), Look::default())
    }

    #[test]
    fn a_square_becomes_two_triangles_and_a_soft_edge_of_eight() {
        let mut brush = Brush::new(frame(), Part::Standing);
        brush.rect(10.0, 10.0, 50.0, 50.0, theme::CREAM);
        assert_eq!(brush.solid.indices.len(), 2 * 3);
        assert_eq!(brush.soft.indices.len(), 8 * 3);
    }

    #[test]
    fn what_shows_through_is_soft_and_what_is_painted_later_is_nearer() {
        let mut brush = Brush::new(frame(), Part::Standing);
        brush.rect(10.0, 10.0, 50.0, 50.0, theme::CREAM);
        brush.rect(10.0, 10.0, 50.0, 50.0, theme::CREAM.alpha(0.5));
        assert_eq!(brush.solid.indices.len(), 2 * 3);
        let near = |sheet: &Sheet| sheet.positions.last().map(|p| p[2]);
        assert!(near(&brush.soft) > near(&brush.solid));
    }

    #[test]
    fn a_shape_is_painted_by_the_brush_of_its_part_alone() {
        let corners = |paints: Part, moves: bool| {
            let mut brush = Brush::new(frame(), paints);
            brush.moving(moves, |brush| {
                brush.disk(Vec2::splat(50.0), 20.0, theme::CREAM);
                brush.ring(Vec2::splat(50.0), 20.0, 3.0, theme::CREAM);
                brush.glow(Vec2::splat(50.0), Vec2::splat(30.0), theme::YELLOW);
                brush.fill(&[Vec2::ZERO, Vec2::X * 9.0, Vec2::Y * 9.0], theme::CREAM);
                brush.shade([Vec2::ZERO; 4], theme::CREAM, theme::YELLOW);
            });
            (brush.solid.n_vertices(), brush.soft.n_vertices())
        };
        let stands = corners(Part::Standing, false);
        assert!(stands.0 > 0 && stands.1 > 0);
        assert_eq!(corners(Part::Moving, true), stands);
        assert_eq!(corners(Part::Standing, true), (0, 0));
        assert_eq!(corners(Part::Moving, false), (0, 0));
    }

    #[test]
    fn a_size_within_a_size_is_both() {
        let mut brush = Brush::new(frame(), Part::Standing);
        let (pivot, inner) = (Vec2::new(30.0, 40.0), Vec2::new(50.0, 60.0));
        let mut found = Vec2::ZERO;
        brush.at_size(pivot, Vec2::new(-1.0, 1.0), |brush| {
            brush.at_size(inner, Vec2::splat(2.0), |brush| {
                found = brush.world(inner + Vec2::X);
            });
        });
        // Two to the right of a point 20 to the right of the mirror.
        let there = frame().world(Vec2::new(30.0 - 20.0 - 2.0, 60.0));
        assert!(found.distance(there) < 1e-3, "{found} {there}");
    }

    #[test]
    fn every_index_points_at_a_vertex() {
        let mut brush = Brush::new(frame(), Part::Standing);
        brush.disk(Vec2::splat(50.0), 20.0, theme::CREAM);
        brush.ring(Vec2::splat(50.0), 20.0, 3.0, theme::CREAM);
        brush.glow(Vec2::splat(50.0), Vec2::splat(30.0), theme::YELLOW);
        brush.stroke(
            &hang(Vec2::ZERO, Vec2::new(100.0, 0.0), 10.0),
            2.0,
            theme::CREAM,
        );
        for sheet in [brush.solid, brush.soft] {
            let n = sheet.n_vertices();
            assert!(n > 0 && sheet.indices.iter().all(|i| *i < n));
            assert_eq!(sheet.positions.len(), sheet.colors.len());
        }
    }

    #[test]
    fn a_hanging_wire_ends_where_it_is_tied_and_sags_between() {
        let points = hang(Vec2::ZERO, Vec2::new(100.0, 0.0), 12.0);
        assert_eq!(points.first(), Some(&Vec2::ZERO));
        assert_eq!(points.last(), Some(&Vec2::new(100.0, 0.0)));
        let lowest = points.iter().map(|p| p.y).fold(0.0, f32::max);
        assert!((lowest - 12.0).abs() < 0.1, "{lowest}");
    }
}
