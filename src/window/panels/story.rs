//! What happened in a drill: its timeline, the findings with the way of energy, curves, what was done.
//!
//! How the street looked then is seen again elsewhere: see [`super::again`].

use bevy_egui::egui;
use bevy_egui::egui::{RichText, ScrollArea, Sense, Stroke, Ui, vec2};

use crate::session::view::{DebriefView, FindingView, StageView};
use crate::session::{Command, Rewind};
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::theme;

use super::span::Span;
use super::{Page, aside, body, card, heading, plot, subheading, timeline};

/// The facts alone: the timeline, how things stood at the start and at the end, what was done.
pub(crate) fn facts(ui: &mut Ui, view: &DebriefView, span: Option<Span>, page: &mut Page<'_>) {
    ScrollArea::vertical()
        .id_salt("facts")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            let span = span.unwrap_or(Span::whole(view.length_ms));
            time(ui, view, span, page);
            heading(ui, &page.say("window-stood"));
            for stood in &view.stood {
                body(
                    ui,
                    &format!("{}: {} › {}", stood.label, stood.start, stood.end),
                );
            }
            ui.add_space(8.0);
            log(ui, view, page);
        });
}

/// Timeline, findings, curves and log, in one scroll.
pub(crate) fn whole(ui: &mut Ui, view: &DebriefView, span: Option<Span>, page: &mut Page<'_>) {
    ScrollArea::vertical()
        .id_salt("story")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            let span = span.unwrap_or_else(|| telling(view));
            time(ui, view, span, page);
            findings(ui, view, page);
            curves(ui, view, span);
            log(ui, view, page);
        });
}

/// The same without the findings, which stand beside it.
pub(crate) fn run(ui: &mut Ui, view: &DebriefView, span: Option<Span>, page: &mut Page<'_>) {
    ScrollArea::vertical()
        .id_salt("run")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            let span = span.unwrap_or_else(|| telling(view));
            time(ui, view, span, page);
            curves(ui, view, span);
            log(ui, view, page);
        });
}

/// The timeline with its heading, and the way to see it all again.
fn time(ui: &mut Ui, view: &DebriefView, span: Span, page: &mut Page<'_>) {
    ui.horizontal_wrapped(|ui| {
        heading(ui, &page.say("window-timeline"));
        ui.add_space(8.0);
        let watch = page.say("window-watch");
        page.button(ui, &watch, || Wish::Again(Some(0)));
    });
    timeline::buttons(ui, view, span, page);
    timeline::panel(ui, view, span, page);
    ui.add_space(8.0);
}

/// All that was found, each on a card.
pub(super) fn findings(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
    heading(ui, &page.say("window-findings"));
    if view.findings.is_empty() {
        body(ui, &page.say("window-no-findings"));
    }
    for (index, finding) in view.findings.iter().enumerate() {
        self::finding(ui, view, (finding, index), page);
        ui.add_space(4.0);
    }
}

fn curves(ui: &mut Ui, view: &DebriefView, span: Span) {
    for series in &view.series {
        plot::panel(ui, series, span);
        ui.add_space(6.0);
    }
}

/// The stretch that tells most: that in which all was found, where it is short beside the drill.
fn telling(view: &DebriefView) -> Span {
    let all = Span::whole(view.length_ms);
    let clocks = || view.findings.iter().map(|finding| finding.clock_ms);
    let Some((first, last)) = clocks().min().zip(clocks().max()) else {
        return all;
    };
    let near = all.around(first, last, view.length_ms);
    if near.length_ms() * 2 <= all.length_ms() {
        near
    } else {
        all
    }
}

fn finding(
    ui: &mut Ui,
    debrief: &DebriefView,
    (view, index): (&FindingView, usize),
    page: &mut Page<'_>,
) {
    let edge = if view.critical {
        theme::PURPLE
    } else {
        theme::OUTLINE
    };
    card(ui, edge, |ui| {
        ui.horizontal_wrapped(|ui| {
            ui.label(
                RichText::new(&view.clock)
                    .font(fonts::bold(15.5))
                    .color(theme::LEAD.egui()),
            );
            ui.label(
                RichText::new(&view.what)
                    .font(fonts::bold(15.5))
                    .color(theme::CREAM.egui()),
            );
        });
        if view.aside {
            let id = if view.after_harm {
                "window-finding-failed-already"
            } else {
                "window-finding-advice"
            };
            subheading(ui, &page.say(id));
        }
        if !view.step.is_empty() {
            aside(ui, &view.step);
        }
        path(ui, &view.path);
        told(ui, view, page);
        ui.horizontal_wrapped(|ui| {
            let here = page.say("window-from-here");
            page.button(ui, &here, || {
                Wish::Do(Command::Rewind(Rewind::Finding(index)))
            });
            let watch = page.say("window-watch-moment");
            let place = debrief.moments.partition_point(|at| *at < view.shown_ms);
            page.quiet(ui, &watch, || Wish::Again(Some(place)));
            let moment = page.say("window-see-moment");
            page.quiet(ui, &moment, || {
                let all = Span::whole(debrief.length_ms);
                let at = view.shown_ms;
                Wish::Span(Some(all.around(at, at, debrief.length_ms)))
            });
        });
    });
}

/// What to do now, why it matters, what to do next time, and where that is from.
fn told(ui: &mut Ui, view: &FindingView, page: &Page<'_>) {
    for (id, text) in [
        ("window-now", &view.now),
        ("window-why", &view.why),
        ("window-instead", &view.instead),
        ("window-source", &view.source_name()),
    ] {
        if !text.is_empty() {
            ui.horizontal_top(|ui| {
                ui.vertical(|ui| {
                    ui.set_width(108.0);
                    let label = RichText::new(page.say(id)).font(fonts::bold(14.0));
                    ui.label(label.color(theme::MUTED.egui()));
                });
                ui.vertical(|ui| body(ui, text));
            });
        }
    }
}

/// The way of energy, stage by stage: the value that matters, and what it means.
fn path(ui: &mut Ui, path: &[StageView]) {
    if path.is_empty() {
        return;
    }
    ui.add_space(2.0);
    for (place, stage) in path.iter().enumerate() {
        ui.horizontal_top(|ui| {
            let (rail, _) = ui.allocate_exact_size(vec2(14.0, 18.0), Sense::hover());
            onward(ui, rail, place + 1 == path.len());
            if !stage.value.is_empty() {
                ui.vertical(|ui| {
                    ui.set_width(VALUE);
                    let value = RichText::new(&stage.value).font(fonts::bold(14.5));
                    ui.label(value.color(theme::LEAD.egui()));
                });
            }
            ui.vertical(|ui| aside(ui, &stage.text));
        });
    }
    ui.add_space(4.0);
}

/// Width of the column of values, points.
const VALUE: f32 = 92.0;

/// A mark that points to the stage below, or a dot at the last one.
fn onward(ui: &Ui, rail: egui::Rect, last: bool) {
    let at = rail.center();
    let ink = theme::ORANGE.egui();
    if last {
        ui.painter().circle_filled(at, 4.0, ink);
    } else {
        let points = vec![
            at + vec2(-5.0, -3.0),
            at + vec2(0.0, 3.0),
            at + vec2(5.0, -3.0),
        ];
        ui.painter().line(points, Stroke::new(2.2, ink));
    }
}

fn log(ui: &mut Ui, view: &DebriefView, page: &Page<'_>) {
    heading(ui, &page.say("window-log"));
    for line in &view.log {
        let kind = page.say(theme::log_look(line.kind).1);
        aside(ui, &format!("{}  {kind}: {}", line.clock, line.text));
    }
}
