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
use crate::window::fonts;
use crate::window::panels::Page;
use crate::window::theme;
use crate::window::theme::Ink;

use super::calls::{Call, calls};
use super::coverage::{Coverage, Weight};
use super::frame::Frame;
use super::plan::{GROUND, Plan};
use super::rooms::RIGHT;
use super::{goal, legend, measure, pointers, reach, taken};

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
    let words = written(ui, street, (plan, frame), shown, page);
    let calls = calls(street, plan, shown.stage, shown.detail);
    let mut covered = taken::coverage(street, plan, frame);
    taken::words(&mut covered, &words);
    for call in calls.iter().filter(|call| call.loud) {
        let reach = frame.points(ring_of(call));
        taken::disk(&mut covered, point(frame, call.at), reach);
    }
    if let Some(at) = shown.lit {
        light(&painter, frame, at);
        taken::disk(&mut covered, point(frame, at), lit_radius(frame));
    }
    let seen = frame.seen();
    let is_lit = |at: Vec2| {
        let distance = |lit| point(frame, lit).distance(point(frame, at));
        shown
            .lit
            .is_none_or(|lit| distance(lit) <= lit_radius(frame))
    };
    // All lines lie below all words.
    let lines: Vec<_> = calls
        .iter()
        .map(|_| painter.add(egui::Shape::Noop))
        .collect();
    for (call, line) in calls.iter().zip(lines) {
        let in_sight = call.loud || call.tips.iter().any(|tip| seen.contains(*tip));
        if in_sight && is_lit(call.at) {
            place(&painter, call, line, (frame, &mut covered));
        }
    }
    pointers::answer(ui, street, plan, frame, page);
}

/// Paints all words but the callouts, which keep off them; says where they stand.
fn written(
    ui: &mut Ui,
    street: &StreetView,
    (plan, frame): (&Plan, Frame),
    shown: &Shown<'_>,
    page: &mut Page<'_>,
) -> Vec<Rect> {
    let painter = ui.painter().clone();
    let legend = legend::corner(&painter, street, frame, page);
    // The legend lies over the ground when only a part of the street is seen.
    let over = legend.filter(|_| frame.sight().is_part());
    let free_from = over.map_or(f32::NEG_INFINITY, |rect| rect.right() + 6.0);
    let mut words = names(&painter, street, plan, (frame, free_from));
    words.extend(over);
    if shown.narrow {
        // The clock, and what the bar of a narrow window leaves it.
        let clock = Rect::from_min_size(screen(frame).min, vec2(96.0, 40.0));
        words.push(clock);
        words.extend(measure::figure(&painter, street, plan, (frame, &words)));
    } else {
        // In a narrow window these stand beside the places; while a consequence is told they would lie on what it tells of.
        if shown.stage.is_none() && !page.is_in_two() {
            words.push(goal::paint(&painter, street, frame, page));
        }
        // Two languages have it in the bar below.
        let card = if page.is_in_two() {
            None
        } else {
            yard_card(&painter, street, (plan, frame), shown.detail)
        };
        let figure = measure::figure(&painter, street, plan, (frame, card.as_slice()));
        if let Some(card) = card {
            engine_pointer(&painter, street, (plan, frame), (card, figure));
        }
        words.extend(card.into_iter().chain(figure));
    }
    words.push(reach::answer(ui, frame, shown.detail, page));
    words.extend(legend);
    words
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

/// Names under the ground; says where they stand.
fn names(
    painter: &Painter,
    street: &StreetView,
    plan: &Plan,
    (frame, free_from): (Frame, f32),
) -> Vec<Rect> {
    let least = if street.poles.iter().any(|pole| both::is_both(&pole.label)) {
        LEAST_OF_BOTH
    } else {
        LEAST_TYPE
    };
    let size = frame.points(19.0).clamp(least, 12.5 * frame.words());
    let room = screen(frame);
    let laid_out = |at: Vec2, text: &str, ink: Ink| {
        let galley = painter.layout_no_wrap(text.to_owned(), fonts::regular(size), ink.egui());
        let rect = Align2::CENTER_TOP.anchor_size(point(frame, at), galley.size());
        let into = (room.left() + 2.0 - rect.left()).max(0.0);
        (galley, rect.translate(vec2(into, 0.0)))
    };
    let poles = street.poles.iter().filter_map(|pole| {
        let (_, x) = plan.poles.iter().find(|(id, _)| *id == pole.id)?;
        Some((Vec2::new(*x, GROUND + 17.0), pole.label.as_str()))
    });
    let poles: Vec<_> = poles
        .filter(|(at, _)| point(frame, *at).x >= free_from)
        .collect();
    let whole: Vec<Rect> = poles
        .iter()
        .map(|(at, label)| laid_out(*at, label, theme::CREAM).1)
        .collect();
    let apart = whole.windows(2).all(|pair| match pair {
        [one, next] => one.right() + NAME_GAP <= next.left(),
        _ => true,
    });
    let mut named: Vec<Rect> = Vec::new();
    for (nth, (at, label)) in poles.into_iter().enumerate() {
        // Where poles stand close, the first has its name and the others their numbers; pointing names them all.
        let label = if apart || nth == 0 {
            label
        } else {
            label.split_whitespace().last().unwrap_or(label)
        };
        let (galley, rect) = laid_out(at, label, theme::CREAM);
        let free = named
            .last()
            .is_none_or(|before| before.right() + NAME_GAP <= rect.left());
        if free {
            painter.galley(rect.min, galley, theme::CREAM.egui());
            named.push(rect);
        }
    }
    let ink = if street.alarm {
        theme::YELLOW
    } else {
        theme::CREAM
    };
    if !street.air.is_empty() {
        let (galley, rect) = laid_out(Vec2::new(620.0, 664.0 + 26.0), &street.air, ink);
        painter.galley(rect.min, galley, ink.egui());
        named.push(rect);
    }
    named
}

/// Least distance between two names, points.
const NAME_GAP: f32 = 4.0;

/// The generator in words, under the yard, while the whole street is seen or there is earth enough.
fn yard_card(
    painter: &Painter,
    street: &StreetView,
    (plan, frame): (&Plan, Frame),
    detail: Detail,
) -> Option<Rect> {
    let larger = frame.words();
    if frame.sight().is_part() && larger <= 1.0 {
        return None;
    }
    let g = &street.generator;
    let load = match detail {
        Detail::Live => "",
        Detail::Numbers | Detail::Phasors => g.load_words.as_str(),
    };
    let room = screen(frame);
    // No cellar reaches under a garage.
    let left = point(frame, Vec2::new(RIGHT + 22.0, GROUND)).x;
    let left = if larger > 1.0 {
        left.clamp(room.left(), room.right() - 235.0 * larger)
    } else {
        left
    };
    let bottom = room.bottom() - 5.0;
    let lines = [
        (
            g.word.as_str(),
            fonts::bold(15.0 * larger),
            engine_ink(street),
        ),
        (
            g.place_words.as_str(),
            fonts::regular(13.5 * larger),
            theme::CREAM,
        ),
        (load, fonts::regular(13.5 * larger), theme::CREAM),
    ];
    let laid_out = |most: usize| {
        let mut job = LayoutJob::default();
        job.wrap.max_width = (room.right() - left - 10.0).max(80.0);
        job.halign = egui::Align::LEFT;
        for (text, font, ink) in lines.iter().take(most).filter(|line| !line.0.is_empty()) {
            if !job.is_empty() {
                job.append("\n", 0.0, TextFormat::default());
            }
            both::append(&mut job, text, font, *ink);
        }
        painter.layout_job(job)
    };
    // The distance drawn under the yard stays free, and so does the generator: its own page has what there is no room for.
    let free = bottom - point(frame, Vec2::new(0.0, GROUND + 34.0)).y;
    let galley = (1..=lines.len())
        .rev()
        .map(laid_out)
        .find(|galley| galley.size().y <= free)
        .unwrap_or_else(|| laid_out(1));
    let top = bottom - galley.size().y;
    // Under the engine, as far as there is room.
    let wide = galley.size().x;
    let under = point(frame, plan.generator).x - wide / 2.0;
    let left = under.min(room.right() - wide - 10.0).max(left);
    let rect = Rect::from_min_size(pos2(left, top), galley.size());
    ground(painter, rect.expand2(vec2(8.0, 3.0)));
    painter.galley(rect.min, galley, theme::CREAM.egui());
    Some(rect)
}

/// The ink of what a generator feeds belongs to an engine that runs.
pub(crate) fn engine_ink(street: &StreetView) -> Ink {
    if street.generator.running {
        theme::ORANGE
    } else {
        theme::MUTED
    }
}

/// Leads from the engine's card to the engine, past the figure of its distance.
fn engine_pointer(
    painter: &Painter,
    street: &StreetView,
    (plan, frame): (&Plan, Frame),
    (card, figure): (Rect, Option<Rect>),
) {
    let foot = plan.generator + Vec2::Y * 2.0;
    let ways = [0.0, 12.0, 24.0, 36.0, -12.0, -24.0].map(|dx| {
        let tip = point(frame, foot + Vec2::X * dx);
        let x = tip.x.clamp(card.left() + 12.0, card.right() - 12.0);
        [tip, pos2(x, card.top() - 3.0)]
    });
    let crosses = |[tip, end]: &[Pos2; 2]| {
        let around = Rect::from_two_pos(*tip, *end).expand(5.0);
        figure.is_some_and(|figure| figure.intersects(around))
    };
    let free = ways.into_iter().find(|way| !crosses(way));
    let seen = frame.seen().contains(foot);
    if let Some(way) = free.filter(|_| seen) {
        painter.add(pointer(way, engine_ink(street)));
    }
}

/// A ground from which words stand out, whatever is behind it.
pub(super) fn ground(painter: &Painter, rect: Rect) {
    let ink = theme::INK.alpha(0.98).egui();
    painter.rect_filled(rect, CornerRadius::same(8), ink);
}

/// The smallest type on the scene, points.
pub(super) const LEAST_TYPE: f32 = 9.5;
/// The same of names in two languages, which a hall reads, points.
const LEAST_OF_BOTH: f32 = 11.0;

/// Finds room for a call and paints it; its pointer goes where room was kept for it.
fn place(painter: &Painter, call: &Call, line: ShapeIdx, (frame, covered): (Frame, &mut Coverage)) {
    let larger = frame.words();
    let (title_size, text_size, width) = if call.loud {
        (22.0, 15.0, 230.0)
    } else {
        (15.0, 13.5, 190.0)
    };
    let (title_size, text_size) = (title_size * larger, text_size * larger);
    let mut job = LayoutJob::default();
    job.wrap.max_width = width * larger;
    let title = fonts::bold(title_size);
    both::append(&mut job, &call.title, &title, title_ink(call.ink));
    if !call.text.is_empty() {
        job.append("\n", 0.0, TextFormat::default());
        let text = fonts::regular(text_size);
        both::append(&mut job, &call.text, &text, theme::CREAM);
    }
    let galley = painter.layout_job(job);
    let size = galley.size() + vec2(18.0, 10.0);
    // A pointer begins at the ring, so that what is told stays free.
    let ring = if call.loud {
        frame.points(ring_of(call))
    } else {
        0.0
    };
    let seen = frame.seen();
    let tips = call
        .tips
        .iter()
        .filter(|tip| call.loud || seen.contains(**tip));
    let tips: Vec<(Pos2, f32)> = tips.map(|tip| (point(frame, *tip), ring)).collect();
    let Some((rect, tip)) = covered.find(size, &tips) else {
        return;
    };
    let end = rect.clamp(tip);
    let from = tip + (end - tip).normalized() * ring.min(tip.distance(end));
    painter.set(line, pointer([from, end], call.ink));
    ground(painter, rect);
    let width = if call.loud { 3.0 } else { 1.8 };
    painter.rect_stroke(
        rect,
        CornerRadius::same(7),
        Stroke::new(width, call.ink.egui()),
        StrokeKind::Inside,
    );
    painter.galley(rect.min + vec2(9.0, 5.0), galley, theme::CREAM.egui());
    covered.lay(rect.expand(4.0), Weight::Words);
}

/// A line from what is told of to its card, with a dot at the former, on a dark edge that parts it from what it crosses.
fn pointer(ends: [Pos2; 2], ink: Ink) -> egui::Shape {
    let [from, _] = ends;
    let (under, over) = (theme::INK.egui(), ink.egui());
    egui::Shape::Vec(vec![
        egui::Shape::line_segment(ends, Stroke::new(4.0, under)),
        egui::Shape::circle_filled(from, 5.0, under),
        egui::Shape::line_segment(ends, Stroke::new(2.0, over)),
        egui::Shape::circle_filled(from, 3.5, over),
    ])
}

/// The ink of a callout's title; harm has the brightest, and a frame that tells it apart.
fn title_ink(ink: Ink) -> Ink {
    let share = if ink == theme::PURPLE { 1.0 } else { 0.25 };
    ink.mix(theme::CREAM, share)
}
