//! Words on the scene: goal and hint in the sky, numbers where they arise, names under the ground, the legend, and sentences for the pointer.
//!
//! Callouts keep out of each other's way: each tries places around what it speaks of and takes the first that is free.
//! It does not cover the same sentences for keys and screen readers: see [`crate::window::panels::words`].

use std::sync::Arc;

use bevy::math::Vec2;
use bevy_egui::egui;
use bevy_egui::egui::text::LayoutJob;
use bevy_egui::egui::{
    Align2, CornerRadius, Galley, Painter, Pos2, Rect, RichText, Sense, Stroke, StrokeKind,
    TextFormat, Ui, pos2, vec2,
};

use crate::session::Detail;
use crate::session::view::{EquipmentKind, Fed, StageView, StreetView};
use crate::window::fonts;
use crate::window::link::Spoken;
use crate::window::panels::{Page, timeline};
use crate::window::theme;
use crate::window::theme::Ink;

use super::brush::Brush;
use super::calls::{Call, calls};
use super::frame::Frame;
use super::plan::{GROUND, Plan};
use super::{pointers, reach};

/// How the words are shown.
pub(crate) struct Shown<'a> {
    /// The stage of a consequence that is told.
    pub(crate) stage: Option<&'a StageView>,
    /// Whether there is room for the scene alone.
    pub(crate) narrow: bool,
    /// The second language, if there is one.
    pub(crate) second: Option<&'a Spoken>,
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
    names(&painter, street, plan, frame);
    if !shown.narrow {
        // In a narrow window these stand beside the places; while a consequence is told they would lie on what it tells of.
        if shown.stage.is_none() {
            taken.push(goal(&painter, street, frame, shown.second, page));
        }
        taken.extend(yard_card(&painter, street, plan, frame, shown.detail));
    }
    legend(&painter, street, frame.whole(), shown.second, page);
    let scene = screen(frame);
    taken.push(reach::answer(ui, frame, shown.detail, page));
    taken.extend(kept_free(street, plan, frame));
    let seen = frame.seen();
    for call in calls(street, plan, shown.stage, shown.detail) {
        if !call.loud && !seen.contains(call.at) {
            continue;
        }
        place(&painter, &call, frame, scene, &mut taken);
    }
    pointers::answer(ui, street, plan, frame, page);
}

/// What no callout may lie on: people, and the generator.
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
    people
        .chain(things)
        .filter_map(move |(id, (dx, above, below))| {
            let at = plan.anchors.get(id)?;
            let (min, max) = (*at - Vec2::new(dx, above), *at + Vec2::new(dx, below));
            Some(Rect::from_two_pos(point(frame, min), point(frame, max)))
        })
}

/// How far a person and the generator reach from their anchors: to each side, up and down, in the plan's units.
const PERSON: (f32, f32, f32) = (15.0, 44.0, 14.0);
const GENERATOR: (f32, f32, f32) = (28.0, 6.0, 32.0);

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

/// Dims all but a disk around a point, and rings it.
pub(crate) fn light(painter: &Painter, frame: Frame, at: Vec2) {
    let center = point(frame, at);
    let room = screen(frame);
    let radius = room.height() * 0.14;
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

/// The most of the scene's height that goals in two languages, or with how far they have come, may take.
const MOST_SKY: f32 = 0.27;

/// Goal and hint, in the sky; below them the same in the second language, if there is one and room for it.
fn goal(
    painter: &Painter,
    street: &StreetView,
    frame: Frame,
    second: Option<&Spoken>,
    page: &Page<'_>,
) -> Rect {
    let scene = screen(frame);
    let width = (scene.width() * 0.56).min(620.0);
    let own = |id: &str| page.say(id);
    let spoken = second.and_then(|s| Some((s, s.views.street.as_ref()?)));
    let laid_out = |progress: bool, both: bool| {
        let mut job = LayoutJob::default();
        job.wrap.max_width = width;
        aim(&mut job, street, &own, progress);
        if let Some((spoken, street)) = spoken.filter(|_| both) {
            job.append("\n", 0.0, TextFormat::default());
            aim(&mut job, street, &|id| spoken.session.say(id), progress);
        }
        painter.layout_job(job)
    };
    let fits = |galley: &Arc<Galley>| galley.size().y <= scene.height() * MOST_SKY;
    // What there is no room for is in the words of the scene (F6).
    let galley = [(true, true), (true, false)]
        .into_iter()
        .map(|(progress, both)| laid_out(progress, both))
        .find(fits)
        .unwrap_or_else(|| laid_out(false, false));
    let rect = Rect::from_min_size(
        scene.min + vec2(12.0, 10.0),
        galley.size() + vec2(22.0, 14.0),
    );
    ground(painter, rect);
    painter.galley(rect.min + vec2(11.0, 7.0), galley, theme::CREAM.egui());
    rect
}

/// Goal, what was varied, how far it has come, and hint, in one language.
fn aim(job: &mut LayoutJob, street: &StreetView, say: &dyn Fn(&str) -> String, progress: bool) {
    let mut add = |text: &str, font, ink: Ink| {
        job.append(text, 0.0, TextFormat::simple(font, ink.egui()));
    };
    let regular = || fonts::regular(15.0);
    add(&say("window-goal"), fonts::bold(14.5), theme::LEAD);
    add(&format!("  {}", street.goal), regular(), theme::CREAM);
    if !street.variation.is_empty() {
        add(&format!("\n{}", street.variation), regular(), theme::CREAM);
    }
    if progress && !street.progress.is_empty() {
        add("\n", regular(), theme::CREAM);
        add(&say("window-progress"), fonts::bold(14.5), theme::LEAD);
        add(&format!("  {}", street.progress), regular(), theme::CREAM);
    }
    if !street.hint.is_empty() {
        add("\n", regular(), theme::CREAM);
        add(&say("window-hint"), fonts::bold(14.5), theme::SKY_BLUE);
        add(&format!("  {}", street.hint), regular(), theme::CREAM);
    }
}

/// Names under the ground.
fn names(painter: &Painter, street: &StreetView, plan: &Plan, frame: Frame) {
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
    // The legend lies over the ground when only a part of the street is seen.
    let mut free_from = if frame.sight().is_part() {
        point(
            frame.whole(),
            Vec2::new(frame.bounds().min.x + LEGEND_WIDTH, 0.0),
        )
        .x
    } else {
        f32::NEG_INFINITY
    };
    for pole in &street.poles {
        if let Some((_, x)) = plan.poles.iter().find(|(id, _)| *id == pole.id) {
            // Where poles stand close, only some are named; pointing names the others.
            let at = Vec2::new(*x, GROUND + 17.0);
            if point(frame, at).x >= free_from {
                let rect = name(at, &pole.label, theme::CREAM);
                free_from = rect.right() + rect.width() / 2.0 + 6.0;
            }
        }
    }
    let (air, ink) = if street.alarm {
        (street.air.as_str(), theme::YELLOW)
    } else {
        (street.air.as_str(), theme::CREAM)
    };
    if !air.is_empty() {
        name(Vec2::new(620.0, 664.0 + 26.0), air, ink);
    }
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
    let mut job = LayoutJob::default();
    let left = Vec2::new(plan.house.right.max(840.0) + 10.0, GROUND);
    let left = point(frame, left).x;
    job.wrap.max_width = (frame.room().max.x - left - 10.0).max(80.0);
    job.halign = egui::Align::LEFT;
    for (text, font, ink) in [
        (g.word.as_str(), fonts::bold(15.0), theme::ORANGE),
        (load, fonts::regular(13.5), theme::CREAM),
        (g.place_words.as_str(), fonts::regular(13.5), theme::CREAM),
    ] {
        if !text.is_empty() {
            if !job.is_empty() {
                job.append("\n", 0.0, TextFormat::default());
            }
            job.append(text, 0.0, TextFormat::simple(font, ink.egui()));
        }
    }
    let galley = painter.layout_job(job);
    // At the lower edge, so that the distance drawn under the yard stays free.
    let top = frame.room().max.y - galley.size().y - 5.0;
    let rect = Rect::from_min_size(pos2(left, top), galley.size());
    ground(painter, rect.expand2(vec2(8.0, 3.0)));
    painter.galley(rect.min, galley, theme::CREAM.egui());
    Some(rect)
}

/// A ground from which words stand out, whatever is behind it.
fn ground(painter: &Painter, rect: Rect) {
    let ink = theme::INK.alpha(0.98).egui();
    painter.rect_filled(rect, CornerRadius::same(8), ink);
}

/// What the legend explains: second sources only where the street has them.
fn legend_of(street: &StreetView) -> impl Iterator<Item = Fed> + '_ {
    let has = |kind| street.equipment.iter().any(|e| e.kind == kind);
    Fed::ALL.into_iter().filter(move |fed| match fed {
        Fed::Solar => has(EquipmentKind::Solar),
        Fed::Battery => has(EquipmentKind::Battery),
        Fed::Utility | Fed::Generator | Fed::Both | Fed::Grounded | Fed::Unknown | Fed::Dead => {
            true
        }
    })
}

/// The distance between two lines of the legend, in the plan's units.
fn pitch(street: &StreetView) -> f32 {
    if legend_of(street).count() > 6 {
        18.4
    } else {
        25.0
    }
}

/// The size of the legend's type, points; none where it would be too small to read, or where it has a bar of its own.
fn legend_type(street: &StreetView, frame: Frame) -> Option<f32> {
    let size = frame.points(pitch(street)) * 0.92;
    (size >= LEAST_TYPE && !frame.is_narrow()).then(|| size.min(13.5))
}

/// The smallest type on the scene, points.
const LEAST_TYPE: f32 = 9.5;

/// Where the samples of the legend are: under the line, where nothing else is.
pub(super) fn legend_places(street: &StreetView, frame: Frame) -> Vec<(Fed, Vec2)> {
    if legend_type(street, frame).is_none() {
        return Vec::new();
    }
    let left = frame.bounds().min.x + 14.0;
    let pitch = pitch(street);
    (0_u8..)
        .zip(legend_of(street))
        .map(|(i, fed)| (fed, Vec2::new(left, 570.0 + pitch * (f32::from(i) + 0.4))))
        .collect()
}

/// The ground of the legend where it lies over things.
pub(super) fn legend_ground(brush: &mut Brush, places: &[(Fed, Vec2)]) {
    if let (Some((_, first)), Some((_, last))) = (places.first(), places.last()) {
        let corner = *first - Vec2::new(12.0, 16.0);
        let size = Vec2::new(LEGEND_WIDTH, last.y - first.y + 32.0);
        brush.round_rect(corner, size, 8.0, theme::INK.alpha(0.85));
    }
}

/// Width of the legend's ground, in the plan's units.
const LEGEND_WIDTH: f32 = 330.0;

fn legend(
    painter: &Painter,
    street: &StreetView,
    frame: Frame,
    second: Option<&Spoken>,
    page: &Page<'_>,
) {
    let Some(size) = legend_type(street, frame) else {
        return;
    };
    for (fed, at) in legend_places(street, frame) {
        let id = theme::fed_word(fed);
        let layout = |text| painter.layout_no_wrap(text, fonts::regular(size), theme::CREAM.egui());
        let one = page.say(id);
        let both = second.map(|spoken| layout(format!("{one} · {}", spoken.session.say(id))));
        // Two languages stand here only where there is room for them; the columns have both anyway.
        let fits = |galley: &Arc<Galley>| galley.size().x <= frame.points(LEGEND_WIDTH - 70.0);
        let galley = both.filter(fits).unwrap_or_else(|| layout(one));
        let at = point(frame, at + Vec2::new(60.0, 0.0));
        let at = Align2::LEFT_CENTER.anchor_size(at, galley.size());
        painter.galley(at.min, galley, theme::CREAM.egui());
    }
}

/// What feeds the conductors of this street, as samples with their words in rows: where the sky has no room for the legend.
pub(crate) fn legend_row(ui: &mut Ui, street: &StreetView, page: &Page<'_>) {
    let there = |fed: &Fed| street.wires.iter().any(|wire| wire.fed == *fed);
    ui.spacing_mut().item_spacing = vec2(6.0, 2.0);
    ui.spacing_mut().interact_size.y = 16.0;
    ui.horizontal_wrapped(|ui| {
        for fed in legend_of(street).filter(there) {
            ui.horizontal(|ui| {
                let (sample, _) = ui.allocate_exact_size(vec2(38.0, 16.0), Sense::hover());
                timeline::pattern(ui.painter(), sample.left_center(), sample.right(), fed);
                let word = RichText::new(page.say(theme::fed_word(fed)));
                ui.label(word.font(fonts::regular(12.5)).color(theme::CREAM.egui()));
                ui.add_space(6.0);
            });
        }
    });
}

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

fn place(painter: &Painter, call: &Call, frame: Frame, scene: Rect, taken: &mut Vec<Rect>) {
    let (title_size, text_size) = if call.loud {
        (22.0, 15.0)
    } else {
        (15.0, 13.5)
    };
    let mut job = LayoutJob::default();
    job.wrap.max_width = 190.0;
    job.append(
        &call.title,
        0.0,
        TextFormat::simple(fonts::bold(title_size), title_ink(call.ink).egui()),
    );
    if !call.text.is_empty() {
        job.append("\n", 0.0, TextFormat::default());
        job.append(
            &call.text,
            0.0,
            TextFormat::simple(fonts::regular(text_size), theme::CREAM.egui()),
        );
    }
    let galley = painter.layout_job(job);
    let size = galley.size() + vec2(18.0, 10.0);
    let at = point(frame, call.at);
    let near = if call.loud { 46.0 } else { 26.0 };
    let (dx, dy) = (size.x / 2.0 + near, size.y / 2.0 + near);
    let offsets = around(dx, dy);
    let bounds = scene.shrink(6.0);
    let covered = |rect: Rect| -> f32 {
        let common = taken.iter().map(|other| other.expand(4.0).intersect(rect));
        let positive = common.filter(Rect::is_positive);
        positive.map(|common| common.area()).sum()
    };
    let wanted = offsets.map(|offset| Rect::from_center_size(at + offset, size));
    let free = |rect: &Rect| bounds.contains_rect(*rect) && covered(*rect) <= 0.0;
    // Where no place near is free, one that was moved into sight and covers least.
    let moved = wanted.map(|rect| inside(rect, bounds));
    let least = |a: &Rect, b: &Rect| covered(*a).total_cmp(&covered(*b));
    let Some(rect) = wanted
        .into_iter()
        .find(free)
        .or_else(|| moved.into_iter().min_by(least))
    else {
        return;
    };
    let tip = rect.clamp(at);
    painter.line_segment([at, tip], Stroke::new(2.0, call.ink.egui()));
    ground(painter, rect);
    let width = if call.loud { 3.0 } else { 1.8 };
    painter.rect_stroke(
        rect,
        CornerRadius::same(7),
        Stroke::new(width, call.ink.egui()),
        StrokeKind::Inside,
    );
    painter.galley(rect.min + vec2(9.0, 5.0), galley, theme::CREAM.egui());
    taken.push(rect);
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
