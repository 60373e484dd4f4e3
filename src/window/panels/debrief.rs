//! The debrief: verdict, criteria, findings with the way of energy, timeline, curves, what was done.
//!
//! Met and not met are told by a shape and a word.
//! It does not cover replay.

use bevy_egui::egui;
use bevy_egui::egui::{RichText, ScrollArea, Sense, Stroke, Ui, pos2, vec2};

use crate::session::view::{CriterionView, DebriefView, FindingView};
use crate::session::{Command, Rewind};
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::theme;

use super::{Page, aside, body, card, heading, plot, timeline};

/// The verdict, the criteria, and where to go from here.
pub(crate) fn verdict(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
    let buttons = 96.0;
    ScrollArea::vertical()
        .id_salt("verdict")
        .auto_shrink([false, false])
        .max_height((ui.available_height() - buttons).max(100.0))
        .show(ui, |ui| {
            let ink = if view.passed {
                theme::LEAD
            } else {
                theme::PURPLE.mix(theme::CREAM, 0.35)
            };
            ui.label(
                RichText::new(&view.heading)
                    .font(fonts::bold(25.0))
                    .color(ink.egui()),
            );
            body(ui, &view.summary);
            if !view.variation.is_empty() {
                body(ui, &view.variation);
            }
            if !view.rewound.is_empty() {
                aside(ui, &view.rewound);
            }
            ui.add_space(6.0);
            for criterion in &view.criteria {
                self::criterion(ui, criterion, page);
            }
        });
    ui.add_space(4.0);
    ui.horizontal(|ui| {
        let retry = page.say("window-retry");
        page.lead(ui, &retry, || Wish::Do(Command::Retry));
        let another = page.say("window-another");
        page.button(ui, &another, || Wish::Do(Command::Another))
            .on_hover_text(&view.seed);
        let leave = page.say("window-leave");
        page.button(ui, &leave, || Wish::Do(Command::Leave));
    });
}

fn criterion(ui: &mut Ui, view: &CriterionView, page: &Page<'_>) {
    ui.horizontal_top(|ui| {
        let (rect, _) = ui.allocate_exact_size(vec2(24.0, 24.0), Sense::hover());
        mark(ui.painter(), rect.center(), view.met);
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 1.0;
            let word = page.say(if view.met {
                "window-met"
            } else {
                "window-not-met"
            });
            let ink = if view.met {
                theme::CREAM
            } else {
                theme::PURPLE.mix(theme::CREAM, 0.35)
            };
            ui.label(
                RichText::new(format!("{}: {word}", view.title))
                    .font(fonts::bold(16.0))
                    .color(ink.egui()),
            );
            aside(ui, &view.text);
            if view.critical {
                ui.label(
                    RichText::new(page.say("window-critical"))
                        .font(fonts::bold(12.5))
                        .color(theme::YELLOW.egui()),
                );
            }
        });
    });
    ui.add_space(2.0);
}

/// A tick in a filled square for met, a cross in an open one for not met.
fn mark(painter: &egui::Painter, at: egui::Pos2, met: bool) {
    let square = egui::Rect::from_center_size(at, vec2(20.0, 20.0));
    let p = |x: f32, y: f32| pos2(at.x + x, at.y + y);
    if met {
        painter.rect_filled(square, 5.0, theme::BLUISH_GREEN.egui());
        painter.line(
            vec![p(-5.5, 0.5), p(-1.5, 5.0), p(6.0, -5.0)],
            Stroke::new(3.0, theme::CREAM.egui()),
        );
    } else {
        let stroke = Stroke::new(2.5, theme::PURPLE.egui());
        painter.rect_stroke(square, 5.0, stroke, egui::StrokeKind::Inside);
        painter.line_segment([p(-5.0, -5.0), p(5.0, 5.0)], stroke);
        painter.line_segment([p(-5.0, 5.0), p(5.0, -5.0)], stroke);
    }
}

/// Timeline, findings, curves and log, in one scroll.
pub(crate) fn story(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
    ScrollArea::vertical()
        .id_salt("story")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            heading(ui, &page.say("window-timeline"));
            timeline::panel(ui, view, page);
            ui.add_space(8.0);
            heading(ui, &page.say("window-findings"));
            if view.findings.is_empty() {
                body(ui, &page.say("window-no-findings"));
            }
            for (index, finding) in view.findings.iter().enumerate() {
                self::finding(ui, finding, index, page);
                ui.add_space(4.0);
            }
            for series in &view.series {
                plot::panel(ui, series, view.length_ms);
                ui.add_space(6.0);
            }
            heading(ui, &page.say("window-log"));
            for line in &view.log {
                aside(
                    ui,
                    &format!(
                        "{}  {}: {}",
                        line.clock,
                        page.say(theme::log_look(line.kind).1),
                        line.text
                    ),
                );
            }
        });
}

fn finding(ui: &mut Ui, view: &FindingView, index: usize, page: &mut Page<'_>) {
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
        if !view.path.is_empty() {
            ui.horizontal_wrapped(|ui| {
                for (i, stage) in view.path.iter().enumerate() {
                    if i > 0 {
                        ui.label(
                            RichText::new("›")
                                .font(fonts::bold(18.0))
                                .color(theme::ORANGE.egui()),
                        );
                    }
                    let shown = if stage.value.is_empty() {
                        &stage.text
                    } else {
                        &stage.value
                    };
                    ui.label(
                        RichText::new(shown)
                            .font(fonts::bold(15.5))
                            .color(theme::LEAD.egui()),
                    )
                    .on_hover_text(&stage.text);
                }
            });
            for stage in &view.path {
                aside(ui, &stage.text);
            }
        }
        for (id, text) in [
            ("window-why", &view.why),
            ("window-instead", &view.instead),
            ("window-source", &view.source),
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
        let here = page.say("window-from-here");
        page.button(ui, &here, || {
            Wish::Do(Command::Rewind(Rewind::Finding(index)))
        });
    });
}
