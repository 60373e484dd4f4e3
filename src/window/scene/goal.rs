//! What the drill asks for, in the sky: goal, what was varied, how far it has come, and hint.
//!
//! Two languages stand one below the other in a band over the whole window, at all times; the scene is lower by that.
//! It does not cover a narrow window, where the same stands beside the places.

use std::sync::Arc;

use bevy_egui::egui::text::{LayoutJob, TextFormat};
use bevy_egui::egui::{Galley, Painter, Rect, Ui, vec2};

use crate::session::view::StreetView;
use crate::window::both;
use crate::window::both::Side;
use crate::window::fonts;
use crate::window::mirror;
use crate::window::panels::Page;
use crate::window::theme;
use crate::window::theme::Ink;

use super::callouts::{ground, screen};
use super::frame::Frame;
use super::plan::count;

/// The most of the scene's height that the goal and how far it has come may take.
const MOST_SKY: f32 = 0.27;
/// The same where the sky is low.
const MOST_LOW_SKY: f32 = 0.22;
/// A scene that is lower than this has a low sky, points.
const LOW_SCENE: f32 = 400.0;
/// Room that the buttons in the upper right corner of the scene take, points.
const BESIDE_BUTTONS: f32 = 134.0;
/// How far the card is from the scene's edges, and its words from its own, points.
const OUTSIDE: (f32, f32) = (12.0, 10.0);
const INSIDE: (f32, f32) = (11.0, 7.0);

/// Sizes of type for two languages, the first that fits being taken.
const SIZES_OF_BOTH: [f32; 4] = [13.0, 12.5, 12.0, 11.0];
/// Width of a letter and height of a line against the size of type, as a guess.
const LETTER: f32 = 0.49;
const LINE: f32 = 1.37;
/// Letters that how far it has come takes, kept free before it begins, so that the scene stays as it is.
const PROGRESS: f32 = 120.0;
/// Letters of a heading with the gaps around it.
const HEAD: f32 = 10.0;
/// The most lines of both languages, and the band's margin above and below them, points.
const MOST_LINES: f32 = 8.0;
const MARGIN: (f32, f32) = (12.0, 6.0);

/// Height of the band in which both languages stand, in a window of this width, points: a guess from their lengths, made before there are letters to be measured.
pub(super) fn band_height(street: &StreetView, window_width: f32) -> f32 {
    let letters = (window_width - 2.0 * MARGIN.0) / (SIZES_OF_BOTH[0] * LETTER);
    let lines = both::SIDES.map(|side| {
        let n = |text: &str| match both::side(text, side).chars().count() {
            0 => 0.0,
            n => count(n) + HEAD,
        };
        let told = n(&street.progress).max(PROGRESS);
        let all = told + n(&street.goal) + n(&street.variation) + n(&street.hint);
        (all / letters).ceil()
    });
    let lines = lines.iter().sum::<f32>().min(MOST_LINES);
    lines * SIZES_OF_BOTH[0] * LINE + 2.0 * MARGIN.1
}

/// Both languages, all of it, in the band that the scene has left for it; in smaller type where that is long.
pub(crate) fn band(ui: &mut Ui, street: &StreetView, page: &Page<'_>) {
    let room = ui.max_rect().shrink2(vec2(MARGIN.0, MARGIN.1));
    let painter = ui.painter().clone();
    let laid_out = |size: f32| {
        let mut job = LayoutJob::default();
        job.wrap.max_width = room.width();
        for side in both::SIDES {
            if !job.is_empty() {
                job.append("\n", 0.0, TextFormat::default());
            }
            aim(&mut job, street, (side, size, "   "), page);
        }
        painter.layout_job(job)
    };
    let [.., least] = SIZES_OF_BOTH;
    let fits = |galley: &Arc<Galley>| galley.size().y <= room.height() + 3.0;
    let galley = SIZES_OF_BOTH.into_iter().map(laid_out).find(fits);
    let galley = galley.unwrap_or_else(|| laid_out(least));
    let free = (room.height() - galley.size().y).max(0.0);
    let at = room.min + vec2(0.0, free / 2.0);
    painter.galley(at, galley, theme::CREAM.egui());
}

/// Paints it in the sky, in one language; says where.
pub(super) fn paint(painter: &Painter, street: &StreetView, frame: Frame, page: &Page<'_>) -> Rect {
    let scene = screen(frame);
    // Where the sky is low, words stand in long lines.
    let low = scene.height() < LOW_SCENE;
    let size = 15.0 * frame.words();
    let width = if low {
        scene.width() - BESIDE_BUTTONS
    } else {
        let most = scene.width() - BESIDE_BUTTONS - 2.0 * OUTSIDE.0;
        (scene.width() * 0.56).min(620.0).max(size * 38.0).min(most)
    };
    let laid_out = |street: &StreetView| {
        let mut job = LayoutJob::default();
        job.wrap.max_width = width;
        aim(&mut job, street, (Side::First, size, "\n"), page);
        painter.layout_job(job)
    };
    // What there is no room for is in the words of the scene (F6).
    let most = scene.height() * if low { MOST_LOW_SKY } else { MOST_SKY };
    let whole = laid_out(street);
    let galley = if whole.size().y <= most {
        whole
    } else {
        laid_out(&StreetView {
            progress: String::new(),
            goal: street.goal.clone(),
            variation: street.variation.clone(),
            hint: street.hint.clone(),
            ..StreetView::default()
        })
    };
    let corner = scene.min + vec2(OUTSIDE.0, OUTSIDE.1);
    let inside = vec2(INSIDE.0, INSIDE.1);
    let rect = Rect::from_min_size(corner, galley.size() + 2.0 * inside);
    let rect = mirror::across(painter.ctx(), rect, scene);
    ground(painter, rect);
    painter.galley(rect.min + inside, galley, theme::CREAM.egui());
    rect
}

/// Goal, what was varied, how far it has come, and hint, in one language and size of type, parted by something.
fn aim(
    job: &mut LayoutJob,
    street: &StreetView,
    (side, size, parting): (Side, f32, &str),
    page: &Page<'_>,
) {
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
        if text.is_empty() {
            continue;
        }
        if id != "window-goal" {
            add(parting, regular(), ink);
        }
        if !id.is_empty() {
            let word = page.say(id);
            add(both::side(&word, side), fonts::bold(size - 0.5), head_ink);
            add("  ", regular(), ink);
        }
        add(both::side(text, side), regular(), ink);
    }
}
