//! The layout from right to left, for languages that are read so: what was laid out from left to right changes sides.
//!
//! Panels, texts and what can be pressed are turned over about the window's middle; a text keeps its letters, and its lines begin at the other edge.
//! Time runs as one reads, so timeline and curves begin at the right too.
//! What pictures a real thing keeps its own sides and only goes to its new place ([`steady`]): the street, a panel's face, a phasor.
//! What is said on the street is read from the right all the same: its lines begin at the other edge ([`steady_with_words`]), and what is no part of the picture, as the goal and the buttons in the sky, is laid out [`across`] its room.
//! A pointer comes in turned over in the same way, so that no panel knows of it, and so does what a screen reader is told of places.
//! It does not cover the order of letters within a line, which is the toolkit's, nor a second language that is read the other way.

use std::ops::Range;
use std::sync::Arc;

use bevy::prelude::*;
use bevy_egui::egui::epaint::{ClippedShape, EllipseShape, Galley, RectShape, TextShape};
use bevy_egui::egui::layers::ShapeIdx;
use bevy_egui::egui::{
    Context, CornerRadius, Event, Id, Key, LayerId, Pos2, Shape, Ui, pos2, vec2,
};
use bevy_egui::{
    EguiContext, EguiFullOutput, EguiInput, EguiPostUpdateSet, EguiPreUpdateSet, egui,
};

pub(super) fn plugin(app: &mut App) {
    app.add_systems(
        PreUpdate,
        turn_input
            .after(EguiPreUpdateSet::ProcessInput)
            .before(EguiPreUpdateSet::BeginPass),
    )
    .add_systems(
        PostUpdate,
        turn_told
            .after(EguiPostUpdateSet::EndPass)
            .before(EguiPostUpdateSet::ProcessOutput),
    );
}

/// How the pass that is laid out now is turned, and what of it keeps its sides.
#[derive(Debug, Clone, Default)]
struct Turning {
    from_right: bool,
    steady: Vec<Steady>,
}

/// What keeps its own sides.
#[derive(Debug, Clone)]
struct Steady {
    layer: LayerId,
    shapes: Range<usize>,
    /// The whole of it, as it was laid out.
    rect: egui::Rect,
    /// What of it can be seen and pressed.
    seen: egui::Rect,
    /// Whether the lines of its words begin at the other edge.
    words: bool,
}

impl Turning {
    fn id() -> Id {
        Id::new("mirror")
    }

    fn of(ctx: &Context) -> Self {
        ctx.data(|data| data.get_temp(Self::id()))
            .unwrap_or_default()
    }

    fn keep(self, ctx: &Context) {
        ctx.data_mut(|data| data.insert_temp(Self::id(), self));
    }

    /// What keeps its sides at a point of the layout, unless something lies on top of it.
    fn at(&self, ctx: &Context, at: Pos2) -> Option<&Steady> {
        let top = ctx.layer_id_at(at);
        self.steady
            .iter()
            .find(|s| s.seen.contains(at) && top.is_none_or(|top| top == s.layer))
    }
}

/// Two places that change with each other: left of the one is as far as right of the other.
#[derive(Debug, Clone, Copy)]
struct Turn {
    /// The sum of both.
    sum: f32,
}

impl Turn {
    /// About the window's middle.
    fn window(ctx: &Context) -> Self {
        let all = ctx.content_rect();
        Self {
            sum: all.left() + all.right(),
        }
    }

    fn x(self, x: f32) -> f32 {
        self.sum - x
    }

    fn point(self, at: &mut Pos2) {
        at.x = self.x(at.x);
    }

    fn rect(self, rect: egui::Rect) -> egui::Rect {
        egui::Rect::from_x_y_ranges(self.x(rect.right())..=self.x(rect.left()), rect.y_range())
    }
}

/// Begins a pass that is laid out from left to right and shown so or turned over.
pub(super) fn begin(ctx: &Context, from_right: bool) {
    Turning {
        from_right,
        steady: Vec::new(),
    }
    .keep(ctx);
}

/// Whether the pass that is laid out now is turned over.
pub(super) fn from_right(ctx: &Context) -> bool {
    Turning::of(ctx).from_right
}

/// The place that a rectangle has in a room that keeps its sides: the same, or as far from the other edge.
pub(super) fn across(ctx: &Context, rect: egui::Rect, room: egui::Rect) -> egui::Rect {
    if from_right(ctx) {
        let turn = Turn {
            sum: room.left() + room.right(),
        };
        turn.rect(rect)
    } else {
        rect
    }
}

/// Lays out what pictures a real thing: in a layout from the right it changes places but not its own sides.
pub(super) fn steady<R>(ui: &mut Ui, add: impl FnOnce(&mut Ui) -> R) -> R {
    keeping(ui, false, add)
}

/// The same where something is said in the picture: the lines of its words begin at the other edge, each text where it stands.
pub(super) fn steady_with_words<R>(ui: &mut Ui, add: impl FnOnce(&mut Ui) -> R) -> R {
    keeping(ui, true, add)
}

fn keeping<R>(ui: &mut Ui, words: bool, add: impl FnOnce(&mut Ui) -> R) -> R {
    let ctx = ui.ctx().clone();
    if !Turning::of(&ctx).from_right {
        return add(ui);
    }
    let next = |ui: &Ui| ctx.graphics_mut(|g| g.entry(ui.layer_id()).next_idx().0);
    let (begun, room) = (next(ui), ui.available_rect_before_wrap());
    let out = add(ui);
    let left = ui.available_rect_before_wrap();
    // What is only painted has all the room there is.
    let rect = if left.top() > room.top() {
        room.with_max_y(left.top())
    } else {
        room
    };
    let mut turning = Turning::of(&ctx);
    // What is drawn within something steady belongs to it.
    turning.steady.retain(|s| s.shapes.start < begun);
    turning.steady.push(Steady {
        layer: ui.layer_id(),
        shapes: begun..next(ui),
        rect,
        seen: rect.intersect(ui.clip_rect()),
        words,
    });
    turning.keep(&ctx);
    out
}

/// Ends the pass: turns over what was drawn, where the language is read from right to left.
pub(super) fn finish(ctx: &Context) {
    let turning = Turning::of(ctx);
    if !turning.from_right {
        return;
    }
    let turn = Turn::window(ctx);
    let mut layers: Vec<LayerId> = ctx.memory(|memory| memory.layer_ids().collect());
    if !layers.contains(&LayerId::background()) {
        layers.push(LayerId::background());
    }
    ctx.graphics_mut(|graphics| {
        for layer in layers {
            let Some(list) = graphics.get_mut(layer) else {
                continue;
            };
            for index in 0..list.next_idx().0 {
                let held = |s: &&Steady| s.layer == layer && s.shapes.contains(&index);
                let steady = turning.steady.iter().find(held);
                list.mutate_shape(ShapeIdx(index), |shape| {
                    if let Some(steady) = steady {
                        bring(shape, steady, turn);
                    } else {
                        shape.clip_rect = turn.rect(shape.clip_rect);
                        turn_over(&mut shape.shape, turn);
                    }
                });
            }
        }
    });
}

/// Brings a shape that keeps its sides to its new place.
fn bring(shape: &mut ClippedShape, steady: &Steady, turn: Turn) {
    let by = vec2(turn.rect(steady.rect).left() - steady.rect.left(), 0.0);
    let clip = shape.clip_rect;
    let own = clip.width() < steady.rect.width() - 1.0;
    shape.clip_rect = if own {
        clip.translate(by)
    } else {
        turn.rect(clip)
    };
    shape.shape.translate(by);
    if steady.words {
        turn_words(&mut shape.shape);
    }
}

/// A text stays where it is, and its lines begin at the other edge.
fn turn_words(shape: &mut Shape) {
    if let Shape::Vec(shapes) = shape {
        shapes.iter_mut().for_each(turn_words);
    } else if let Shape::Text(text) = shape
        && text.angle == 0.0
    {
        turn_lines(Arc::make_mut(&mut text.galley));
    }
}

fn turn_over(shape: &mut Shape, turn: Turn) {
    match shape {
        Shape::Noop | Shape::Callback(_) => {}
        Shape::Vec(shapes) => shapes.iter_mut().for_each(|shape| turn_over(shape, turn)),
        Shape::Circle(circle) => turn.point(&mut circle.center),
        Shape::Ellipse(EllipseShape { center, angle, .. }) => {
            turn.point(center);
            *angle = -*angle;
        }
        Shape::LineSegment { points, .. } => points.iter_mut().for_each(|at| turn.point(at)),
        Shape::Path(path) => path.points.iter_mut().for_each(|at| turn.point(at)),
        Shape::Rect(RectShape {
            rect,
            corner_radius,
            angle,
            ..
        }) => {
            *rect = turn.rect(*rect);
            let CornerRadius { nw, ne, sw, se } = *corner_radius;
            *corner_radius = CornerRadius {
                nw: ne,
                ne: nw,
                sw: se,
                se: sw,
            };
            *angle = -*angle;
        }
        Shape::Text(text) => turn_text(text, turn),
        Shape::Mesh(mesh) => {
            for vertex in &mut Arc::make_mut(mesh).vertices {
                turn.point(&mut vertex.pos);
            }
        }
        Shape::QuadraticBezier(curve) => curve.points.iter_mut().for_each(|at| turn.point(at)),
        Shape::CubicBezier(curve) => curve.points.iter_mut().for_each(|at| turn.point(at)),
    }
}

/// A text goes to the other side as a whole, and each of its lines to the other edge.
fn turn_text(text: &mut TextShape, turn: Turn) {
    if text.angle == 0.0 {
        let all = text.galley.rect;
        text.pos.x = turn.x(text.pos.x) - all.left() - all.right();
        turn_lines(Arc::make_mut(&mut text.galley));
    } else {
        let seen = text.visual_bounding_rect();
        text.pos.x += turn.rect(seen).left() - seen.left();
    }
}

fn turn_lines(galley: &mut Galley) {
    let turn = Turn {
        sum: galley.rect.left() + galley.rect.right(),
    };
    for placed in &mut galley.rows {
        let glyphs = &placed.row.glyphs;
        // The space at which a line was broken is not seen: without it the lines begin below one another.
        let last = glyphs.iter().rev().find(|g| !g.chr.is_whitespace());
        if let (Some(first), Some(last)) = (glyphs.first(), last.or(glyphs.last())) {
            // A line may begin with room for what stands before it.
            let ends = first.pos.x + last.max_x();
            placed.pos.x = turn.x(placed.pos.x) - ends;
        }
    }
    galley.mesh_bounds = turn.rect(galley.mesh_bounds);
}

/// Turns over where pointer and fingers are, and the arrows that walk to the left and to the right.
pub(super) fn turn_events(ctx: &Context, events: &mut [Event]) {
    let turning = Turning::of(ctx);
    if !turning.from_right {
        return;
    }
    let turn = Turn::window(ctx);
    let place = |at: &mut Pos2| {
        turn.point(at);
        if let Some(steady) = turning.at(ctx, *at) {
            let own = steady.rect.left() + steady.rect.right();
            *at = pos2(own - at.x, at.y);
        }
    };
    let typed = ctx.text_edit_focused();
    let focus = ctx.memory(egui::Memory::focused);
    let focus = focus.and_then(|id| ctx.read_response(id));
    let walks = !typed && focus.is_none_or(|f| turning.at(ctx, f.rect.center()).is_none());
    for event in events {
        if let Event::PointerMoved(at)
        | Event::PointerButton { pos: at, .. }
        | Event::Touch { pos: at, .. } = event
        {
            place(at);
        } else if let Event::Key { key, .. } = event
            && walks
        {
            if *key == Key::ArrowLeft {
                *key = Key::ArrowRight;
            } else if *key == Key::ArrowRight {
                *key = Key::ArrowLeft;
            }
        }
    }
}

/// Takes events on what was laid out to where it is shown: the way back of [`turn_events`].
#[cfg(test)]
pub(super) fn show_events(ctx: &Context, events: &mut [Event]) {
    let turning = Turning::of(ctx);
    let turn = Turn::window(ctx);
    for event in events.iter_mut().filter(|_| turning.from_right) {
        if let Event::PointerMoved(at)
        | Event::PointerButton { pos: at, .. }
        | Event::Touch { pos: at, .. } = event
        {
            match turning.at(ctx, *at) {
                Some(s) => at.x += turn.rect(s.rect).left() - s.rect.left(),
                None => turn.point(at),
            }
        }
    }
}

fn turn_input(mut contexts: Query<'_, '_, (&mut EguiContext, &mut EguiInput)>) {
    for (mut context, mut input) in &mut contexts {
        turn_events(context.get_mut(), &mut input.events);
    }
}

/// Turns over the places that a screen reader is told.
fn turn_told(mut contexts: Query<'_, '_, (&mut EguiContext, &mut EguiFullOutput)>) {
    for (mut context, mut output) in &mut contexts {
        let ctx = context.get_mut();
        let turning = Turning::of(ctx);
        let told = output.0.as_mut();
        let told = told.and_then(|told| told.platform_output.accesskit_update.as_mut());
        let Some(told) = told.filter(|_| turning.from_right) else {
            continue;
        };
        let turn = Turn::window(ctx);
        for (_, node) in &mut told.nodes {
            let Some(mut bounds) = node.bounds() else {
                continue;
            };
            let middle = [bounds.x0.midpoint(bounds.x1), bounds.y0.midpoint(bounds.y1)];
            #[expect(clippy::cast_possible_truncation, reason = "places in a window")]
            let middle = Pos2::from(middle.map(|at| at as f32));
            let held = turning.steady.iter().find(|s| s.seen.contains(middle));
            let width = bounds.x1 - bounds.x0;
            bounds.x0 = match held {
                Some(s) => bounds.x0 + f64::from(turn.rect(s.rect).left() - s.rect.left()),
                None => f64::from(turn.sum) - bounds.x1,
            };
            bounds.x1 = bounds.x0 + width;
            node.set_bounds(bounds);
        }
    }
}

#[cfg(test)]
mod tests {
    use bevy_egui::egui::{FontId, RawInput, Sense, Stroke};

    use super::*;
    use crate::window::theme;

    /// A pass in a window a hundred points wide.
    fn pass(ctx: &Context, from_right: bool, mut add: impl FnMut(&mut Ui)) -> Vec<ClippedShape> {
        let all = egui::Rect::from_min_size(Pos2::ZERO, vec2(100.0, 60.0));
        let input = RawInput {
            screen_rect: Some(all),
            ..RawInput::default()
        };
        let mut output = ctx.run_ui(input, |ui| {
            begin(ui.ctx(), from_right);
            add(ui);
            finish(ui.ctx());
        });
        output.textures_delta.clear();
        output.shapes
    }

    fn circles(shapes: &[ClippedShape]) -> Vec<f32> {
        let of = |shape: &ClippedShape| {
            if let Shape::Circle(circle) = &shape.shape {
                Some(circle.center.x)
            } else {
                None
            }
        };
        shapes.iter().filter_map(of).collect()
    }

    #[test]
    fn what_is_drawn_changes_sides_and_what_is_steady_only_its_place() {
        let ctx = Context::default();
        let dot = |ui: &mut Ui, x: f32| {
            let at = pos2(x, 30.0);
            ui.painter().circle_filled(at, 2.0, theme::CREAM.egui());
        };
        let draw = |ui: &mut Ui| {
            dot(ui, 10.0);
            let left = egui::Rect::from_min_max(Pos2::ZERO, pos2(40.0, 60.0));
            let builder = egui::UiBuilder::new().max_rect(left);
            ui.scope_builder(builder, |ui| {
                steady(ui, |ui| {
                    dot(ui, 10.0);
                    dot(ui, 30.0);
                });
            });
        };
        assert_eq!(circles(&pass(&ctx, false, draw)), [10.0, 10.0, 30.0]);
        assert_eq!(circles(&pass(&ctx, true, draw)), [90.0, 70.0, 90.0]);
    }

    #[test]
    fn a_pointer_meets_what_it_sees() {
        let ctx = Context::default();
        let spot = egui::Rect::from_min_max(pos2(5.0, 5.0), pos2(15.0, 15.0));
        let mut clicked = false;
        for (step, pressed) in [None, Some(true), Some(false), None]
            .into_iter()
            .enumerate()
        {
            let at = pos2(90.0, 10.0);
            let mut events = vec![Event::PointerMoved(at)];
            events.extend(pressed.map(|pressed| Event::PointerButton {
                pos: at,
                button: egui::PointerButton::Primary,
                pressed,
                modifiers: egui::Modifiers::NONE,
            }));
            turn_events(&ctx, &mut events);
            let input = RawInput {
                screen_rect: Some(egui::Rect::from_min_size(Pos2::ZERO, vec2(100.0, 60.0))),
                events: if step == 0 { Vec::new() } else { events },
                ..RawInput::default()
            };
            let mut output = ctx.run_ui(input, |ui| {
                begin(ui.ctx(), true);
                clicked |= ui.interact(spot, Id::new("spot"), Sense::click()).clicked();
                finish(ui.ctx());
            });
            output.textures_delta.clear();
        }
        assert!(clicked);
    }

    #[test]
    fn the_lines_of_a_text_begin_at_the_right_edge() {
        let ctx = Context::default();
        let write = |ui: &mut Ui| {
            let text = "a long line of words\nshort".to_owned();
            let font = FontId::proportional(8.0);
            let galley = ui.painter().layout(text, font, theme::CREAM.egui(), 90.0);
            ui.painter()
                .galley(pos2(3.0, 3.0), galley, theme::CREAM.egui());
            let line = [pos2(3.0, 40.0), pos2(20.0, 40.0)];
            ui.painter()
                .line_segment(line, Stroke::new(1.0, theme::CREAM.egui()));
        };
        let _fonts = pass(&ctx, true, write);
        let shapes = pass(&ctx, true, write);
        let mut n_rows = 0;
        for shape in &shapes {
            let Shape::Text(text) = &shape.shape else {
                continue;
            };
            for row in &text.galley.rows {
                n_rows += 1;
                let right = text.pos.x + row.rect().right();
                assert!((right - 97.0).abs() < 1.0, "{right}");
            }
        }
        assert!(n_rows > 1, "{n_rows}");
    }
}
