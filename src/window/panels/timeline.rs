//! The timeline: what fed each thing over the drill, as strips with color, pattern and word, and findings as pins.
//!
//! A part of the drill can be brought nearer: by a pin, by buttons, by wheel and fingers.
//! Time runs the way that one reads: from right to left in a layout from the right.
//! It does not cover curves: see [`super::plot`].

use bevy_egui::egui;
use bevy_egui::egui::text::LayoutJob;
use bevy_egui::egui::{
    Align2, CornerRadius, Painter, Pos2, Rect, Sense, Stroke, Ui, WidgetInfo, WidgetType, pos2,
    vec2,
};

use crate::session::view::{DebriefView, Fed, FindingView, Phase, TrackView};
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::theme;
use crate::window::theme::Pattern;

use super::span::Span;
use super::{Page, aside};

/// Room for the names at the left, and what stays free at the right.
pub(super) const LABEL: f32 = 150.0;
pub(super) const MARGIN: f32 = 16.0;
const ROW: f32 = 38.0;
const HEAD: f32 = 34.0;
/// Width of a pin's head, how far apart two heads stand, the wider ones too, and within how much two moments are one.
const PIN: f32 = 20.0;
const APART: f32 = 38.0;
const TOGETHER: f32 = 6.0;

/// All tracks over a stretch of the drill, with findings as pins once they are told.
pub(crate) fn panel(ui: &mut Ui, view: &DebriefView, span: Span, page: &mut Page<'_>) {
    let n_rows = (0..view.tracks.len()).fold(0.0, |n, _| n + 1.0);
    let (rect, _) = ui.allocate_exact_size(
        vec2(ui.available_width(), HEAD + ROW * n_rows + 18.0),
        Sense::hover(),
    );
    let bars = Rect::from_min_max(
        pos2(rect.left() + LABEL, rect.top() + HEAD),
        pos2(rect.right() - MARGIN, rect.bottom() - 18.0),
    );
    let scale = Scale { bars, span };
    reach(ui, view.length_ms, &scale, page);
    let mut top = bars.top();
    for track in &view.tracks {
        row(ui, track, top, &scale);
        top += ROW;
    }
    axis(&ui.painter_at(rect), &scale);
    if view.phase >= Phase::Why {
        for pin in pins(view, &scale) {
            self::pin(ui, rect, &pin, view.length_ms, &scale, page);
        }
    }
    legend(ui, view, span, page);
    come_into_sight(ui, rect, span);
}

/// A stretch that was chosen elsewhere on the page is brought into sight.
fn come_into_sight(ui: &Ui, rect: Rect, span: Span) {
    let id = egui::Id::new("timeline-span");
    let last: Option<Span> = ui.data_mut(|data| {
        let last = data.get_temp(id);
        data.insert_temp(id, span);
        last
    });
    if last.is_some_and(|last| last != span) && !ui.clip_rect().intersects(rect) {
        ui.scroll_to_rect(rect, Some(egui::Align::Center));
    }
}

/// A shorter and a longer stretch, all of it, and what is seen now.
pub(super) fn buttons(ui: &mut Ui, view: &DebriefView, span: Span, page: &mut Page<'_>) {
    let (all, length_ms) = (Span::whole(view.length_ms), view.length_ms);
    let ways = [
        ("window-span-nearer", span.step(true, 0.5, length_ms)),
        ("window-span-farther", span.step(false, 0.5, length_ms)),
        ("window-span-earlier", span.moved(-0.5, length_ms)),
        ("window-span-later", span.moved(0.5, length_ms)),
        ("window-span-all", all),
    ];
    ui.horizontal_wrapped(|ui| {
        for (id, change) in ways {
            // What would change nothing is left out, so that no key stroke is spent on it.
            if change == span {
                // The others keep their ids: the toolkit takes a button's look from what had its id before.
                ui.skip_ahead_auto_ids(1);
                continue;
            }
            let name = page.say(id);
            page.quiet(ui, &name, || Wish::Span(Some(change)));
        }
        if span != all {
            // In the order of reading, so that it goes the way that the strips go.
            let (from, to) = (clock(span.from_ms), clock(span.to_ms));
            for part in [from.as_str(), "–", to.as_str()] {
                aside(ui, part);
                ui.add_space(-4.0);
            }
        }
    });
}

/// Two fingers, or the wheel with Control, bring time nearer; a drag moves it.
fn reach(ui: &Ui, length_ms: u64, scale: &Scale, page: &mut Page<'_>) {
    let part = scale.span != Span::whole(length_ms);
    let sense = if part { Sense::DRAG } else { Sense::HOVER };
    let ground = ui.interact(scale.bars, egui::Id::new("timeline-ground"), sense);
    let factor = ui.input(egui::InputState::zoom_delta);
    if (factor - 1.0).abs() > 1e-4
        && let Some(at) = ui.input(|input| input.pointer.hover_pos())
        && ground.contains_pointer()
    {
        let share = f64::from((at.x - scale.bars.left()) / scale.bars.width());
        let span = scale.span.scaled(1.0 / f64::from(factor), share, length_ms);
        page.out.push(Wish::Span(Some(span)));
    }
    let by = ground.drag_delta().x;
    if ground.dragged() && by.abs() > 0.0 {
        let share = f64::from(-by / scale.bars.width());
        let span = scale.span.moved(share, length_ms);
        page.out.push(Wish::Span(Some(span)));
    }
}

/// What was found at one moment, or at moments that can't be told apart.
struct Pin {
    x: f32,
    /// Where its head stands: beside its moment where another one needs the room.
    head: f32,
    first_ms: u64,
    last_ms: u64,
    critical: bool,
    told: Vec<String>,
}

/// The findings within the stretch, in the order of time, those of one moment as one; more of them only where there is no room for so many heads.
fn pins(view: &DebriefView, scale: &Scale) -> Vec<Pin> {
    let width = scale.bars.width();
    let mut near = TOGETHER;
    loop {
        let mut pins = gathered(view, scale, near);
        let heads = pins.iter().fold(0.0, |sum, _| sum + APART);
        if heads <= width || near > width {
            spread(&mut pins, scale.bars.right());
            return pins;
        }
        near *= 1.5;
    }
}

/// The findings within the stretch, those that stand nearer than so many points as one.
fn gathered(view: &DebriefView, scale: &Scale, near: f32) -> Vec<Pin> {
    let seen = scale.span.from_ms..=scale.span.to_ms;
    let mut findings: Vec<&FindingView> = view.findings.iter().collect();
    findings.sort_by_key(|finding| finding.clock_ms);
    let mut pins: Vec<Pin> = Vec::new();
    for finding in findings.into_iter().filter(|f| seen.contains(&f.clock_ms)) {
        let x = scale.x(finding.clock_ms);
        let told = format!("{}: {}", finding.clock, finding.what);
        if let Some(pin) = pins.last_mut().filter(|pin| x - pin.x < near) {
            pin.last_ms = finding.clock_ms;
            pin.critical |= finding.critical;
            pin.told.push(told);
        } else {
            pins.push(Pin {
                x,
                head: x,
                first_ms: finding.clock_ms,
                last_ms: finding.clock_ms,
                critical: finding.critical,
                told: vec![told],
            });
        }
    }
    pins
}

/// Gives each head room: to the right of the one before it, and back where the end is too near.
fn spread(pins: &mut [Pin], end: f32) {
    let mut least = f32::NEG_INFINITY;
    for pin in pins.iter_mut() {
        pin.head = pin.x.max(least);
        least = pin.head + APART;
    }
    let mut most = end;
    for pin in pins.iter_mut().rev() {
        pin.head = pin.head.min(most);
        most = pin.head - APART;
    }
}

/// A pin through all tracks; pressing it brings its moment nearer.
fn pin(ui: &Ui, rect: Rect, pin: &Pin, length_ms: u64, scale: &Scale, page: &mut Page<'_>) {
    let ink = if pin.critical {
        theme::PURPLE
    } else {
        theme::YELLOW
    };
    let painter = ui.painter_at(rect.expand(4.0));
    let middle = pos2(pin.head, rect.top() + 11.0);
    // Where one stands for several, the first and the last of them have their moments marked.
    for x in [pin.x, scale.x(pin.last_ms)] {
        let (bend, foot) = (pos2(x, scale.bars.top()), pos2(x, scale.bars.bottom()));
        painter.line(vec![middle, bend, foot], Stroke::new(2.0, ink.egui()));
    }
    let count = match pin.told.len() {
        1 => String::from("!"),
        several => format!("{several}×"),
    };
    head(&painter, middle, &count, ink);
    let id = egui::Id::new(("pin", pin.first_ms, pin.last_ms));
    let reach = Rect::from_center_size(middle, vec2(30.0, 24.0));
    let response = ui.interact(reach, id, Sense::CLICK);
    let told = format!("{} {}", page.say("window-finding"), pin.told.join("\n"));
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Button, true, &told));
    super::outline_focus(ui, &response);
    let nearer = scale.span.around(pin.first_ms, pin.last_ms, length_ms);
    page.on(&response, || Wish::Span(Some(nearer)));
    response.on_hover_text(told);
}

/// The head of a pin, with how many findings it stands for.
fn head(painter: &Painter, middle: Pos2, count: &str, ink: theme::Ink) {
    let galley = painter.layout_no_wrap(count.to_owned(), fonts::bold(12.0), theme::CREAM.egui());
    let wide = PIN.max(galley.size().x + 12.0);
    painter.rect(
        Rect::from_center_size(middle, vec2(wide, PIN)),
        CornerRadius::same(8),
        theme::INK.egui(),
        Stroke::new(2.5, ink.egui()),
        egui::StrokeKind::Inside,
    );
    let at = Align2::CENTER_CENTER.anchor_size(middle, galley.size());
    painter.galley(at.min, galley, theme::CREAM.egui());
}

/// Time to the screen.
struct Scale {
    bars: Rect,
    span: Span,
}

impl Scale {
    /// Where a moment stands; what is before or after stands at the edge.
    #[expect(
        clippy::cast_precision_loss,
        clippy::cast_possible_truncation,
        reason = "a screen is coarser"
    )]
    fn x(&self, at_ms: u64) -> f32 {
        let since = at_ms.saturating_sub(self.span.from_ms) as f64;
        let share = (since / self.span.length_ms() as f64).min(1.0);
        self.bars.left() + self.bars.width() * share as f32
    }
}

fn row(ui: &Ui, track: &TrackView, top: f32, scale: &Scale) {
    let painter = ui.painter();
    let middle = top + ROW / 2.0;
    let (font, ink) = (fonts::regular(13.5), theme::CREAM.egui());
    let mut job = LayoutJob::simple(track.label.clone(), font, ink, LABEL - 12.0);
    // Every line of a name ends at the strips.
    job.halign = egui::Align::RIGHT;
    let galley = painter.layout_job(job);
    let at = pos2(scale.bars.left() - 8.0, middle - galley.size().y / 2.0);
    painter.galley(at, galley, ink);
    let span = scale.span;
    let seen = |from: u64, to: u64| from <= span.to_ms && to >= span.from_ms;
    let stretches = track.stretches.iter().filter(|s| seen(s.0, s.1));
    let strips: Vec<(Rect, Fed, &str)> = stretches
        .map(|(from, to, fed, word)| {
            let right = scale.x(*to);
            // What lasted an instant is seen at the very end as well.
            let left = scale.x(*from).min(scale.bars.right() - SLIVER);
            let x = left..=right.max((left + SLIVER).min(scale.bars.right()));
            let y = top + 3.0..=top + ROW - 3.0;
            (Rect::from_x_y_ranges(x, y), *fed, word.as_str())
        })
        .collect();
    // What lasted an instant lies on what came after it.
    let (short, long): (Vec<_>, Vec<_>) = strips.iter().partition(|s| s.0.width() <= SLIVER);
    for (place, (rect, fed, word)) in long.into_iter().chain(short).enumerate() {
        strip(painter, rect, fed);
        ui.interact(rect, ui.id().with((&track.label, place)), Sense::hover())
            .on_hover_text(word);
    }
    words(painter, &strips);
}

/// The least width of a strip, points.
const SLIVER: f32 = 9.0;

/// The word of each strip in it where there is room: never over another one, which it would speak of falsely.
/// Pointing tells the others, and the legend tells them all.
fn words(painter: &Painter, strips: &[(Rect, Fed, &str)]) {
    for (rect, fed, word) in strips {
        let ink = theme::fed_ink(*fed).egui();
        let galley = painter.layout_no_wrap((*word).to_owned(), fonts::regular(12.0), ink);
        if galley.size().x + 8.0 <= rect.width() {
            painter.galley(rect.min + vec2(5.0, 1.0), galley, ink);
        }
    }
}

/// What the strips in sight show, a sample and its word each, and what a pin is.
fn legend(ui: &mut Ui, view: &DebriefView, span: Span, page: &Page<'_>) {
    let stretches = || view.tracks.iter().flat_map(|track| &track.stretches);
    let seen = |from: u64, to: u64| from <= span.to_ms && to >= span.from_ms;
    ui.horizontal_wrapped(|ui| {
        ui.add_space(LABEL);
        for fed in Fed::ALL {
            let here = stretches().find(|s| s.2 == fed && seen(s.0, s.1));
            let Some((.., word)) = here else { continue };
            let (rect, _) = ui.allocate_exact_size(vec2(SAMPLE, 16.0), Sense::hover());
            pattern(ui.painter(), rect.left_center(), rect.right(), fed);
            aside(ui, word);
            ui.add_space(10.0);
        }
    });
    if view.phase >= Phase::Why && !view.findings.is_empty() {
        ui.horizontal(|ui| {
            ui.add_space(LABEL);
            let (rect, _) = ui.allocate_exact_size(vec2(PIN, PIN), Sense::hover());
            head(ui.painter(), rect.center(), "!", theme::PURPLE);
            aside(ui, &page.say("window-timeline-pin"));
        });
    }
}

/// Length of a sample, points.
const SAMPLE: f32 = 38.0;

/// A strip: a dark ground, and the pattern along its lower part.
fn strip(painter: &Painter, rect: Rect, fed: Fed) {
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
}

/// A pattern along a level line.
pub(crate) fn pattern(painter: &Painter, from: Pos2, to_x: f32, fed: Fed) {
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

/// Clock times along the bottom.
fn axis(painter: &Painter, scale: &Scale) {
    let bars = scale.bars;
    let step_ms = u64::from(scale.span.second_step(bars.width())) * 1_000;
    let mut at_ms = scale.span.from_ms.next_multiple_of(step_ms);
    while at_ms <= scale.span.to_ms {
        let x = scale.x(at_ms);
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
            clock(at_ms),
            fonts::regular(12.0),
            theme::MUTED.egui(),
        );
        at_ms += step_ms;
    }
}

/// Minutes and seconds of the drill.
fn clock(at_ms: u64) -> String {
    let seconds = at_ms / 1_000;
    format!("{}:{:02}", seconds / 60, seconds % 60)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn heads_keep_apart_and_within_the_strips() {
        let at = |x: f32| Pin {
            x,
            head: x,
            first_ms: 0,
            last_ms: 0,
            critical: false,
            told: Vec::new(),
        };
        let heads = |moments: &[f32]| -> Vec<f32> {
            let mut pins: Vec<Pin> = moments.iter().map(|x| at(*x)).collect();
            spread(&mut pins, 500.0);
            pins.iter().map(|pin| pin.head).collect()
        };
        assert_eq!(heads(&[100.0, 300.0]), [100.0, 300.0]);
        assert_eq!(heads(&[481.0, 500.0]), [500.0 - APART, 500.0]);
        assert_eq!(heads(&[100.0, 110.0]), [100.0, 100.0 + APART]);
    }
}
