//! The debrief page by page: what the learner says, what to practice next, and last the verdict with its criteria.
//!
//! Met and not met are told by a shape and a word.
//! What happened and why is told beside it: see [`super::story`].

use bevy_egui::egui;
use bevy_egui::egui::{RichText, ScrollArea, Sense, Stroke, Ui, pos2, vec2};

use crate::session::view::{CriterionView, DebriefView, PageView, Phase};
use crate::session::{Command, Practice};
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::theme;

use super::{Page, above, aside, body, card, heading, shelf};

/// The verdict, the criteria, and where to go from here.
pub(crate) fn verdict(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
    above(
        ui,
        "verdict",
        page,
        |ui, page| {
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
            if !view.helped.is_empty() {
                aside(ui, &view.helped);
            }
            ui.add_space(6.0);
            for criterion in &view.criteria {
                self::criterion(ui, criterion, page);
            }
        },
        |ui, page| from_here(ui, view, page),
    );
}

/// Where to go from the verdict.
fn from_here(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
    ui.add_space(4.0);
    ui.horizontal_wrapped(|ui| {
        // What leads on is bright: once more where it failed, another drill where it passed.
        let retry = page.say("window-retry");
        if view.passed {
            page.button(ui, &retry, || Wish::Do(Command::Retry));
        } else {
            page.lead(ui, &retry, || Wish::Do(Command::Retry));
        }
        let another = page.say("window-another");
        page.button(ui, &another, || Wish::Do(Command::Another))
            .on_hover_text(&view.seed);
        let leave = page.say("window-leave");
        if view.passed {
            page.lead(ui, &leave, || Wish::Do(Command::Leave));
        } else {
            page.button(ui, &leave, || Wish::Do(Command::Leave));
        }
        let record = page.say("window-record");
        page.button(ui, &record, || Wish::Record);
        back(ui, page);
    });
}

/// The names of all pages, the open one in bold, and what it asks or tells.
pub(crate) fn pages(ui: &mut Ui, view: &DebriefView) {
    for (number, head) in (1..).zip(&view.pages) {
        let here = head.phase == view.phase;
        let (font, ink) = if here {
            (fonts::bold(16.0), theme::LEAD)
        } else {
            (fonts::regular(14.0), theme::MUTED)
        };
        let title = RichText::new(format!("{number}. {}", head.title));
        ui.label(title.font(font).color(ink.egui()));
    }
    ui.add_space(8.0);
    if let Some(head) = open(view) {
        body(ui, &head.ask);
    }
}

/// What the learner says in their own words, if the page asks for it, and the way on.
pub(crate) fn reflection(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
    if let Some(head) = open(view).filter(|head| head.answers) {
        said(ui, head, page);
    }
    ui.add_space(4.0);
    ui.horizontal_wrapped(|ui| {
        let onward = page.say("window-onward");
        page.lead(ui, &onward, || Wish::Do(Command::Onward));
        if view.phase != Phase::Happened {
            back(ui, page);
        }
    });
}

fn open(view: &DebriefView) -> Option<&PageView> {
    view.pages.iter().find(|head| head.phase == view.phase)
}

fn back(ui: &mut Ui, page: &mut Page<'_>) {
    let text = page.say("window-page-back");
    page.button(ui, &text, || Wish::Do(Command::Back));
}

/// A field to write in: what stands in it, and what the session held when it was last sent there.
fn said(ui: &mut Ui, head: &PageView, page: &mut Page<'_>) {
    let id = egui::Id::new(("said", head.phase.name()));
    let kept = ui.data_mut(|data| data.get_temp::<(String, String)>(id));
    let (mut text, mut held) = kept.unwrap_or_default();
    if head.said != held {
        let squeezed = text.split_whitespace().collect::<Vec<_>>().join(" ");
        if head.said != squeezed {
            text.clone_from(&head.said);
        }
        held.clone_from(&head.said);
    }
    let field = egui::TextEdit::multiline(&mut text)
        .desired_rows(6)
        .desired_width(f32::INFINITY)
        .hint_text(page.say("window-said"));
    let response = ui.add(field);
    if response.changed() {
        page.out.push(Wish::Do(Command::Reflect(text.clone())));
    }
    ui.data_mut(|data| data.insert_temp(id, (text, held)));
}

/// What to practice next, each with the drill that trains it.
pub(crate) fn next(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
    ScrollArea::vertical()
        .id_salt("next")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            for next in &view.next {
                card(ui, theme::OUTLINE, |ui| {
                    heading(ui, &next.title);
                    body(ui, &next.because);
                    let practice = page.say("window-practice-next");
                    page.button(ui, &format!("{practice}: {}", next.drill_title), || {
                        Wish::Do(Command::Open {
                            drill: next.drill.clone(),
                            practice: Practice::Coached,
                            seed: shelf::SEED,
                        })
                    });
                });
                ui.add_space(6.0);
            }
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
                let ink = if view.met {
                    theme::MUTED
                } else {
                    theme::YELLOW
                };
                ui.label(
                    RichText::new(page.say("window-critical"))
                        .font(fonts::bold(12.5))
                        .color(ink.egui()),
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
