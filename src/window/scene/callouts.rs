//! Words on the scene: goal and hint in the sky, numbers where they arise, names under the ground, and sentences for the pointer.
//!
//! Callouts keep out of each other's way: each tries places around what it speaks of and takes the first that is free.
//! It does not cover the same sentences for keys and screen readers: see [`crate::window::panels::words`].

use bevy::math::Vec2;
use bevy_egui::egui;
use bevy_egui::egui::layers::ShapeIdx;
use bevy_egui::egui::text::LayoutJob;
use bevy_egui::egui::{
    Align2, CornerRadius, Painter, Pos2, Rect, Stroke, StrokeKind, TextFormat, Ui, pos2, vec2,
};

use crate::session::Detail;
use crate::session::view::{StageView, StreetView};
use crate::window::both;
use crate::window::both::Side;
use crate::window::fonts;
use crate::window::mirror;
use crate::window::panels::Page;
use crate::window::theme;
use crate::window::theme::Ink;

use super::calls::{Call, calls};
use super::frame::Frame;
use super::plan::{GROUND, Plan};
use super::{legend, measure, pointers, reach, wires};

/// How the words are shown.
pub(crate) struct Shown<'a> {
    /// The stage of a consequence that is told.
    pub(crate) stage: Option<&'a StageView>,
    /// What the light of the wall is on.
    pub(crate) lit: Option<Vec2>,
    /// Whether there is room for the scene alone.
    pub(crate) narrow: bool,
    /// How much is told of what is electric.
    pub(crate) detail: Detail,
}

/// Paints the words and lets things be pointed at.
pub(crate) fn paint(
    ui: &mut Ui,
    street: &StreetView,
    (plan, frame): (&Plan, Frame),
    shown: &Shown<'_>,
    page: &mut Page<'_>,
) {
    let painter = ui.painter().clone();
    let mut taken = Vec::new();
    let legend = legend::corner(&painter, street, frame, page);
    // The legend lies over the ground when only a part of the street is seen.
    let over = legend.filter(|_| frame.sight().is_part());
    let free_from = over.map_or(f32::NEG_INFINITY, |rect| rect.right() + 6.0);
    taken.extend(names(&painter, street, plan, (frame, free_from)));
    taken.extend(over);
    if !shown.narrow {
        // In a narrow window these stand beside the places; while a consequence is told they would lie on what it tells of.
        if shown.stage.is_none() {
            taken.push(goal(&painter, street, frame, page));
        }
        taken.extend(yard_card(&painter, street, plan, frame, shown.detail));
    }
    taken.push(reach::answer(ui, frame, shown.detail, page));
    taken.extend(measure::figure(&painter, street, plan, (frame, &taken)));
    taken.extend(kept_free(street, plan, frame));
    let calls = calls(street, plan, shown.stage, shown.detail);
    let rings = calls.iter().filter(|call| call.loud);
    taken.extend(rings.map(|call| {
        let reach = 2.0 * frame.points(ring_of(call));
        Rect::from_center_size(point(frame, call.at), vec2(reach, reach))
    }));
    let mut room = Room {
        frame,
        taken,
        spared: spared(street, plan, frame),
    };
    if let Some(at) = shown.lit {
        light(&painter, frame, at);
    }
    let seen = frame.seen();
    // All lines lie below all words.
    let lines: Vec<_> = calls
        .iter()
        .map(|_| painter.add(egui::Shape::Noop))
        .collect();
    for (call, line) in calls.iter().zip(lines) {
        let lit = shown
            .lit
            .is_none_or(|at| point(frame, at).distance(point(frame, call.at)) <= lit_radius(frame));
        if lit && (call.loud || seen.contains(call.at)) {
            room.place(&painter, call, line);
        }
    }
    pointers::answer(ui, street, plan, frame, page);
}

/// How far the ring around what is told reaches, in the plan's units.
const RING: f32 = 44.0;
const RING_OF_PERSON: f32 = 68.0;

/// How far the ring of a loud call reaches; one that says who as well is a person's.
fn ring_of(call: &Call) -> f32 {
    if call.text.is_empty() {
        RING
    } else {
        RING_OF_PERSON
    }
}

/// What callouts lie on only where nothing else is free: things in the house, its panel, the transformer.
fn spared(street: &StreetView, plan: &Plan, frame: Frame) -> Vec<Rect> {
    let on_screen = |min, max| Rect::from_two_pos(point(frame, min), point(frame, max));
    let things = street.appliances.iter().filter_map(|thing| {
        let cover = plan.house.spots.get(&thing.id)?.cover();
        Some(on_screen(cover.min, cover.max))
    });
    let boxes = plan.boxes.values().map(|r| on_screen(r.min, r.max));
    let transformer = plan.anchors.get("transformer").map(|at| {
        let half = Vec2::new(16.0, 34.0);
        on_screen(*at - half, *at + half)
    });
    things.chain(boxes).chain(transformer).collect()
}

/// What no callout may lie on: people, the generator, and the signs at broken wires.
fn kept_free<'a>(
    street: &'a StreetView,
    plan: &'a Plan,
    frame: Frame,
) -> impl Iterator<Item = Rect> + 'a {
    let people = street
        .people
        .iter()
        .map(|person| (person.id.as_str(), PERSON));
    let things = std::iter::once(("generator", GENERATOR));
    let around = move |at: Vec2, (dx, above, below): (f32, f32, f32)| {
        let (min, max) = (at - Vec2::new(dx, above), at + Vec2::new(dx, below));
        Rect::from_two_pos(point(frame, min), point(frame, max))
    };
    let all = people.chain(things);
    let all = all.filter_map(move |(id, reach)| Some(around(*plan.anchors.get(id)?, reach)));
    let signs = wires::signs(street, plan);
    all.chain(signs.into_iter().map(move |(_, at)| around(at, SIGN)))
}

/// How far a person and the generator reach from their anchors: to each side, up and down, in the plan's units.
const PERSON: (f32, f32, f32) = (15.0, 44.0, 14.0);
const GENERATOR: (f32, f32, f32) = (40.0, 34.0, 32.0);
/// The same of a sign at a broken wire.
const SIGN: (f32, f32, f32) = (17.0, 18.0, 12.0);

pub(super) fn screen(frame: Frame) -> Rect {
    let r = frame.room();
    Rect::from_min_max(pos2(r.min.x, r.min.y), pos2(r.max.x, r.max.y))
}

pub(super) fn point(frame: Frame, at: Vec2) -> Pos2 {
    let p = frame.point(at);
    pos2(p.x, p.y)
}

/// Corners of the disk that the light leaves.
const CORNERS: u8 = 96;

/// How far the light of the wall reaches, points.
fn lit_radius(frame: Frame) -> f32 {
    screen(frame).height() * 0.14
}

/// Dims all but a disk around a point, and rings it.
fn light(painter: &Painter, frame: Frame, at: Vec2) {
    let center = point(frame, at);
    let room = screen(frame);
    let radius = lit_radius(frame);
    let beyond = room.size().length();
    let painter = painter.with_clip_rect(room);
    let dim = theme::INK.alpha(0.72).egui();
    let mut shade = egui::Mesh::default();
    for corner in 0..=CORNERS {
        let turn = std::f32::consts::TAU * f32::from(corner) / f32::from(CORNERS);
        let out = vec2(turn.cos(), turn.sin());
        shade.colored_vertex(center + out * radius, dim);
        shade.colored_vertex(center + out * beyond, dim);
        if corner > 0 {
            let last = u32::from(corner) * 2;
            shade.add_triangle(last - 2, last - 1, last);
            shade.add_triangle(last - 1, last, last + 1);
        }
    }
    painter.add(shade);
    painter.circle_stroke(center, radius, Stroke::new(3.0, theme::LEAD.egui()));
}

/// The most of the scene's height that the goal and how far it has come may take.
const MOST_SKY: f32 = 0.27;
/// The same where two languages share it: the column beside it has both whole.
const MOST_SKY_OF_BOTH: f32 = 0.22;
/// A scene that is lower than this has a low sky, points.
const LOW_SCENE: f32 = 400.0;
/// Room that the buttons in the upper right corner of the scene take, points.
const BESIDE_BUTTONS: f32 = 134.0;

/// Goal and hint, in the sky; below them the same in the second language, if there is one and room for it.
fn goal(painter: &Painter, street: &StreetView, frame: Frame, page: &Page<'_>) -> Rect {
    let scene = screen(frame);
    let in_two = page.is_in_two();
    // Where the sky is low, words stand in long lines.
    let low = in_two || scene.height() < LOW_SCENE;
    let width = if low {
        scene.width() - BESIDE_BUTTONS
    } else {
        (scene.width() * 0.56).min(620.0)
    };
    let laid_out = |progress: bool, sides: &[Side]| {
        let mut job = LayoutJob::default();
        job.wrap.max_width = width;
        for side in sides {
            if !job.is_empty() {
                job.append("\n", 0.0, TextFormat::default());
            }
            aim(&mut job, street, *side, progress, page);
        }
        painter.layout_job(job)
    };
    let one = [Side::First];
    let most_of_one = if low { MOST_SKY_OF_BOTH } else { MOST_SKY };
    // What there is no room for is in the words of the scene (F6).
    let galley = [
        (true, both::SIDES.as_slice(), MOST_SKY_OF_BOTH),
        (false, both::SIDES.as_slice(), MOST_SKY_OF_BOTH),
        (true, one.as_slice(), most_of_one),
    ]
    .into_iter()
    .filter(|(_, sides, _)| sides.len() == 1 || in_two)
    .map(|(progress, sides, most)| (laid_out(progress, sides), most))
    .find(|(galley, most)| galley.size().y <= scene.height() * most)
    .map_or_else(|| laid_out(false, &one), |(galley, _)| galley);
    let rect = Rect::from_min_size(
        scene.min + vec2(12.0, 10.0),
        galley.size() + vec2(22.0, 14.0),
    );
    let rect = mirror::across(painter.ctx(), rect, scene);
    ground(painter, rect);
    painter.galley(rect.min + vec2(11.0, 7.0), galley, theme::CREAM.egui());
    rect
}

/// Goal, what was varied, how far it has come, and hint, in one language.
fn aim(job: &mut LayoutJob, street: &StreetView, side: Side, progress: bool, page: &Page<'_>) {
    let (head, size) = if page.is_in_two() {
        (13.5, 13.5)
    } else {
        (14.5, 15.0)
    };
    let ink = match side {
        Side::First => theme::CREAM,
        Side::Second => theme::CREAM.mix(theme::MUTED, 0.6),
    };
    let mut add = |text: &str, font, ink: Ink| {
        job.append(text, 0.0, TextFormat::simple(font, ink.egui()));
    };
    let regular = || fonts::regular(size);
    let heads = [
        ("window-goal", &street.goal, theme::LEAD),
        ("", &street.variation, theme::LEAD),
        ("window-progress", &street.progress, theme::LEAD),
        ("window-hint", &street.hint, theme::SKY_BLUE),
    ];
    for (id, text, head_ink) in heads {
        if text.is_empty() || (id == "window-progress" && !progress) {
            continue;
        }
        if id != "window-goal" {
            add("\n", regular(), ink);
        }
        if !id.is_empty() {
            let word = page.say(id);
            add(both::side(&word, side), fonts::bold(head), head_ink);
            add("  ", regular(), ink);
        }
        add(both::side(text, side), regular(), ink);
    }
}

/// Names under the ground; says where they stand.
fn names(
    painter: &Painter,
    street: &StreetView,
    plan: &Plan,
    (frame, mut free_from): (Frame, f32),
) -> Vec<Rect> {
    let size = frame.points(19.0).clamp(LEAST_TYPE, 12.5);
    let room = screen(frame);
    let name = |at: Vec2, text: &str, ink: Ink| {
        let galley = painter.layout_no_wrap(text.to_owned(), fonts::regular(size), ink.egui());
        let rect = Align2::CENTER_TOP.anchor_size(point(frame, at), galley.size());
        let into = (room.left() + 2.0 - rect.left()).max(0.0);
        let rect = rect.translate(vec2(into, 0.0));
        painter.galley(rect.min, galley, ink.egui());
        rect
    };
    let mut named = Vec::new();
    for pole in &street.poles {
        if let Some((_, x)) = plan.poles.iter().find(|(id, _)| *id == pole.id) {
            // Where poles stand close, only some are named; pointing names the others.
            let at = Vec2::new(*x, GROUND + 17.0);
            if point(frame, at).x >= free_from {
                let rect = name(at, &pole.label, theme::CREAM);
                free_from = rect.right() + rect.width() / 2.0 + 6.0;
                named.push(rect);
            }
        }
    }
    let (air, ink) = if street.alarm {
        (street.air.as_str(), theme::YELLOW)
    } else {
        (street.air.as_str(), theme::CREAM)
    };
    if !air.is_empty() {
        named.push(name(Vec2::new(620.0, 664.0 + 26.0), air, ink));
    }
    named
}

/// The generator in words, under the yard, while the whole street is seen.
fn yard_card(
    painter: &Painter,
    street: &StreetView,
    plan: &Plan,
    frame: Frame,
    detail: Detail,
) -> Option<Rect> {
    if frame.sight().is_part() {
        return None;
    }
    let g = &street.generator;
    let load = match detail {
        Detail::Live => "",
        Detail::Numbers | Detail::Phasors => g.load_words.as_str(),
    };
    let left = Vec2::new(plan.house.right.max(840.0) + 10.0, GROUND);
    let left = point(frame, left).x;
    let bottom = frame.room().max.y - 5.0;
    // The ink of what a generator feeds belongs to an engine that runs.
    let word_ink = if g.running {
        theme::ORANGE
    } else {
        theme::MUTED
    };
    let lines = [
        (g.word.as_str(), fonts::bold(15.0), word_ink),
        (g.place_words.as_str(), fonts::regular(13.5), theme::CREAM),
        (load, fonts::regular(13.5), theme::CREAM),
    ];
    let laid_out = |most: usize, in_both: bool| {
        let mut job = LayoutJob::default();
        job.wrap.max_width = (frame.room().max.x - left - 10.0).max(80.0);
        job.halign = egui::Align::LEFT;
        for (text, font, ink) in lines.iter().take(most).filter(|line| !line.0.is_empty()) {
            if !job.is_empty() {
                job.append("\n", 0.0, TextFormat::default());
            }
            let text = if in_both {
                *text
            } else {
                both::side(text, Side::First)
            };
            both::append(&mut job, text, font, *ink);
        }
        painter.layout_job(job)
    };
    // The distance drawn under the yard stays free, and so does the generator: its own page has what there is no room for.
    let free = bottom - point(frame, Vec2::new(0.0, GROUND + 34.0)).y;
    let galley = (1..=lines.len())
        .rev()
        .map(|most| laid_out(most, true))
        .find(|galley| galley.size().y <= free)
        .unwrap_or_else(|| laid_out(1, false));
    let top = bottom - galley.size().y;
    let rect = Rect::from_min_size(pos2(left, top), galley.size());
    ground(painter, rect.expand2(vec2(8.0, 3.0)));
    painter.galley(rect.min, galley, theme::CREAM.egui());
    Some(rect)
}

/// A ground from which words stand out, whatever is behind it.
pub(super) fn ground(painter: &Painter, rect: Rect) {
    let ink = theme::INK.alpha(0.98).egui();
    painter.rect_filled(rect, CornerRadius::same(8), ink);
}

/// The smallest type on the scene, points.
pub(super) const LEAST_TYPE: f32 = 9.5;

/// Places around a point, the nearest first; `dx` and `dy` lead just past it.
fn around(dx: f32, dy: f32) -> [egui::Vec2; 15] {
    [
        vec2(0.0, -dy),
        vec2(dx * 0.7, -dy),
        vec2(-dx * 0.7, -dy),
        vec2(dx, 0.0),
        vec2(-dx, 0.0),
        vec2(0.0, dy),
        vec2(dx * 0.7, dy),
        vec2(0.0, -dy * 2.0),
        vec2(dx * 0.8, -dy * 2.2),
        vec2(-dx * 0.8, -dy * 2.2),
        vec2(dx * 1.5, -dy),
        vec2(-dx * 1.5, -dy),
        vec2(0.0, -dy * 3.0),
        vec2(dx * 1.6, -dy * 2.4),
        vec2(-dx * 1.6, -dy * 2.4),
    ]
}

/// Where callouts find room.
struct Room {
    frame: Frame,
    /// What they never lie on, as long as anything else is free.
    taken: Vec<Rect>,
    /// What they lie on only where they would have to lie on that.
    spared: Vec<Rect>,
}

impl Room {
    /// The first place around what a call speaks of that is free, or else the one that covers least.
    fn find(&self, at: Pos2, size: egui::Vec2, near: f32) -> Option<Rect> {
        let bounds = screen(self.frame).shrink(6.0);
        let covered = |rects: &[Rect], rect: Rect| -> f32 {
            let common = rects.iter().map(|other| other.expand(4.0).intersect(rect));
            let positive = common.filter(Rect::is_positive);
            positive.map(|common| common.area()).sum()
        };
        let cost = |rect: &Rect| {
            let taken = covered(&self.taken, *rect);
            (taken, covered(&self.spared, *rect))
        };
        let (dx, dy) = (size.x / 2.0 + near, size.y / 2.0 + near);
        let wanted = around(dx, dy).map(|offset| Rect::from_center_size(at + offset, size));
        // What would leave the scene is moved into sight.
        let within = wanted.iter().filter(|rect| bounds.contains_rect(**rect));
        let moved = wanted.iter().map(|rect| inside(*rect, bounds));
        let mut best: Option<((f32, f32), Rect)> = None;
        for rect in within.copied().chain(moved) {
            let cost = cost(&rect);
            if best.is_none_or(|(least, _)| cost < least) {
                best = Some((cost, rect));
            }
        }
        best.map(|(_, rect)| rect)
    }

    /// Finds room for a call and paints it; its line goes where room was kept for it.
    fn place(&mut self, painter: &Painter, call: &Call, line: ShapeIdx) {
        let (title_size, text_size) = if call.loud {
            (22.0, 15.0)
        } else {
            (15.0, 13.5)
        };
        let mut job = LayoutJob::default();
        job.wrap.max_width = if call.loud { 230.0 } else { 190.0 };
        let title = fonts::bold(title_size);
        both::append(&mut job, &call.title, &title, title_ink(call.ink));
        if !call.text.is_empty() {
            job.append("\n", 0.0, TextFormat::default());
            let text = fonts::regular(text_size);
            both::append(&mut job, &call.text, &text, theme::CREAM);
        }
        let galley = painter.layout_job(job);
        let size = galley.size() + vec2(18.0, 10.0);
        let at = point(self.frame, call.at);
        let ring = self.frame.points(ring_of(call));
        let near = if call.loud { ring + 14.0 } else { 26.0 };
        let Some(rect) = self.find(at, size, near) else {
            return;
        };
        let tip = rect.clamp(at);
        // The line begins at the ring, so that what is told stays free.
        let from = if call.loud {
            at + (tip - at).normalized() * ring.min(at.distance(tip))
        } else {
            at
        };
        let stroke = Stroke::new(2.0, call.ink.egui());
        painter.set(line, egui::Shape::line_segment([from, tip], stroke));
        ground(painter, rect);
        let width = if call.loud { 3.0 } else { 1.8 };
        painter.rect_stroke(
            rect,
            CornerRadius::same(7),
            Stroke::new(width, call.ink.egui()),
            StrokeKind::Inside,
        );
        painter.galley(rect.min + vec2(9.0, 5.0), galley, theme::CREAM.egui());
        self.taken.push(rect);
    }
}

/// The ink of a callout's title; harm has the brightest, and a frame that tells it apart.
fn title_ink(ink: Ink) -> Ink {
    let share = if ink == theme::PURPLE { 1.0 } else { 0.25 };
    ink.mix(theme::CREAM, share)
}

/// A rectangle moved into bounds.
fn inside(rect: Rect, bounds: Rect) -> Rect {
    let dx = (bounds.left() - rect.left()).max(0.0) + (bounds.right() - rect.right()).min(0.0);
    let dy = (bounds.top() - rect.top()).max(0.0) + (bounds.bottom() - rect.bottom()).min(0.0);
    rect.translate(vec2(dx, dy))
}
