//! The timeline: what fed each thing over the drill, as strips with color, pattern and word, and findings as pins.
//!
//! It does not cover zoom.

use bevy_egui::egui;
use bevy_egui::egui::{Align2, CornerRadius, Painter, Pos2, Rect, Sense, Stroke, Ui, pos2, vec2};

use crate::session::view::{DebriefView, Fed, Phase, TrackView};
use crate::window::fonts;
use crate::window::theme;
use crate::window::theme::Pattern;

use super::Page;

pub(super) const LABEL: f32 = 176.0;
const ROW: f32 = 38.0;
const HEAD: f32 = 22.0;

/// All tracks over the length of the drill, with findings as pins once they are told.
pub(crate) fn panel(ui: &mut Ui, view: &DebriefView, page: &Page<'_>) {
    let n_rows = (0..view.tracks.len()).fold(0.0, |n, _| n + 1.0);
    let (rect, _) = ui.allocate_exact_size(
        vec2(ui.available_width(), HEAD + ROW * n_rows + 18.0),
        Sense::hover(),
    );
    let painter = ui.painter_at(rect);
    let bars = Rect::from_min_max(
        pos2(rect.left() + LABEL, rect.top() + HEAD),
        pos2(rect.right() - 12.0, rect.bottom() - 18.0),
    );
    let scale = Scale {
        left: bars.left(),
        width: bars.width(),
        length_ms: view.length_ms.max(1),
    };
    let mut top = bars.top();
    for track in &view.tracks {
        row(ui, &painter, track, top, &scale);
        top += ROW;
    }
    axis(&painter, bars, &scale);
    for finding in view.findings.iter().filter(|_| view.phase >= Phase::Why) {
        let x = scale.x(finding.clock_ms);
        let ink = if finding.critical {
            theme::PURPLE
        } else {
            theme::YELLOW
        };
        painter.line_segment(
            [pos2(x, rect.top() + 12.0), pos2(x, bars.bottom())],
            Stroke::new(2.0, ink.egui()),
        );
        painter.circle(
            pos2(x, rect.top() + 9.0),
            7.0,
            theme::INK.egui(),
            Stroke::new(2.5, ink.egui()),
        );
        let pin = Rect::from_center_size(pos2(x, rect.top() + 9.0), vec2(20.0, 20.0));
        ui.interact(
            pin,
            ui.id().with(("pin", finding.clock_ms, &finding.rule)),
            Sense::hover(),
        )
        .on_hover_text(format!(
            "{} {}: {}",
            page.say("window-finding"),
            finding.clock,
            finding.what
        ));
    }
}

/// Time to the screen.
struct Scale {
    left: f32,
    width: f32,
    length_ms: u64,
}

impl Scale {
    #[expect(
        clippy::cast_precision_loss,
        clippy::cast_possible_truncation,
        reason = "a screen is coarser"
    )]
    fn x(&self, at_ms: u64) -> f32 {
        self.left + self.width * (at_ms as f64 / self.length_ms as f64).min(1.0) as f32
    }
}

fn row(ui: &Ui, painter: &Painter, track: &TrackView, top: f32, scale: &Scale) {
    let middle = top + ROW / 2.0;
    let galley = painter.layout(
        track.label.clone(),
        fonts::regular(13.5),
        theme::CREAM.egui(),
        LABEL - 12.0,
    );
    let at = Align2::RIGHT_CENTER.anchor_size(pos2(scale.left - 8.0, middle), galley.size());
    painter.galley(at.min, galley, theme::CREAM.egui());
    for (from, to, fed, word) in &track.stretches {
        let strip = Rect::from_min_max(
            pos2(scale.x(*from), top + 3.0),
            pos2(scale.x(*to), top + ROW - 3.0),
        );
        self::strip(painter, strip, *fed, word);
        ui.interact(strip, ui.id().with((&track.label, from)), Sense::hover())
            .on_hover_text(word);
    }
}

/// A strip: a dark ground, the pattern along its lower part, the word above where it fits.
fn strip(painter: &Painter, rect: Rect, fed: Fed, word: &str) {
    let ink = theme::fed_ink(fed).egui();
    painter.rect_filled(rect, CornerRadius::same(3), theme::INK.egui());
    painter.rect_stroke(
        rect,
        CornerRadius::same(3),
        Stroke::new(1.0, ink),
        egui::StrokeKind::Inside,
    );
    let inner = painter.with_clip_rect(rect.shrink(1.0).intersect(painter.clip_rect()));
    pattern(
        &inner,
        pos2(rect.left() + 3.0, rect.bottom() - 7.0),
        rect.right() - 3.0,
        fed,
    );
    let galley = painter.layout_no_wrap(word.to_owned(), fonts::regular(12.0), ink);
    // Where there is no room for the word, pointing tells it.
    if galley.size().x + 8.0 <= rect.width() {
        inner.galley(pos2(rect.left() + 5.0, rect.top() + 1.0), galley, ink);
    }
}

/// A pattern along a level line.
pub(super) fn pattern(painter: &Painter, from: Pos2, to_x: f32, fed: Fed) {
    let ink = theme::fed_ink(fed).egui();
    let kind = theme::fed_pattern(fed);
    let y = from.y;
    if kind != Pattern::Dots {
        let width = if kind == Pattern::Thin { 1.2 } else { 2.0 };
        painter.line_segment([from, pos2(to_x, y)], Stroke::new(width, ink));
    }
    let mut x = from.x + 5.0;
    let mut even = true;
    while x < to_x {
        match (kind, even) {
            (Pattern::Thin, _) => {}
            (Pattern::Dots, _) => {
                painter.circle_filled(pos2(x, y), 1.5, ink);
            }
            (Pattern::Beads, _) => {
                painter.circle_filled(pos2(x, y), 3.4, ink);
            }
            (Pattern::Mixed, true) => {
                painter.circle_filled(pos2(x, y), 3.4, theme::SKY_BLUE.egui());
            }
            (Pattern::Rings, _) => {
                painter.circle_filled(pos2(x, y), 4.0, ink);
                painter.circle_filled(pos2(x, y), 2.2, theme::INK.egui());
            }
            (Pattern::Blocks, _) => {
                let block = Rect::from_center_size(pos2(x, y), vec2(8.0, 6.0));
                painter.rect_filled(block, CornerRadius::ZERO, ink);
            }
            (Pattern::Ticks, _) => {
                painter.line_segment([pos2(x, y - 4.5), pos2(x, y + 4.5)], Stroke::new(2.0, ink));
            }
            (Pattern::Chevrons, _) => chevron(painter, pos2(x, y), ink),
            (Pattern::Mixed, false) => chevron(painter, pos2(x, y), theme::ORANGE.egui()),
        }
        even = !even;
        x += if kind == Pattern::Dots { 7.0 } else { 15.0 };
    }
}

fn chevron(painter: &Painter, at: Pos2, ink: egui::Color32) {
    let points = vec![
        at + vec2(-3.0, -4.5),
        at + vec2(3.0, 0.0),
        at + vec2(-3.0, 4.5),
    ];
    painter.line(points, Stroke::new(2.0, ink));
}

/// Minutes between two marks along a drill of this length.
pub(super) fn minute_step(length_ms: u64) -> u32 {
    let minutes = length_ms / 60_000;
    [1, 2, 5, 10, 20, 30, 60]
        .into_iter()
        .find(|step| minutes / u64::from(*step) <= 10)
        .unwrap_or(120)
}

/// Minutes along the bottom.
fn axis(painter: &Painter, bars: Rect, scale: &Scale) {
    let minutes = scale.length_ms / 60_000;
    let step = u64::from(minute_step(scale.length_ms));
    let mut minute = 0;
    while minute <= minutes {
        let x = scale.x(minute * 60_000);
        painter.line_segment(
            [pos2(x, bars.bottom()), pos2(x, bars.bottom() + 4.0)],
            Stroke::new(1.0, theme::MUTED.egui()),
        );
        let align = if x > bars.right() - 16.0 {
            Align2::RIGHT_TOP
        } else {
            Align2::CENTER_TOP
        };
        painter.text(
            pos2(x, bars.bottom() + 4.0),
            align,
            format!("{minute}:00"),
            fonts::regular(12.0),
            theme::MUTED.egui(),
        );
        minute += step;
    }
}
