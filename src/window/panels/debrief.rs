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

use super::{Page, above, aside, body, card, heading, shelf, story};

/// The open page: what it asks or tells, the verdict or what else is the page's own, and below it the way on, always in sight.
pub(crate) fn open_page(ui: &mut Ui, view: &DebriefView, kept: Option<&str>, page: &mut Page<'_>) {
    above(
        ui,
        view.phase.name(),
        page,
        |ui, page| own(ui, view, page),
        |ui, page| {
            ui.add_space(4.0);
            ui.horizontal_wrapped(|ui| {
                lead(ui, view, page);
                if view.phase != Phase::Verdict {
                    page_back(ui, view, page);
                }
            });
            if view.phase == Phase::Verdict {
                others(ui, view, page);
            }
            if let Some(kept) = kept {
                aside(ui, kept);
            }
        },
    );
}

/// The same in a narrow window: below stands the way on alone, all else is scrolled.
pub(crate) fn narrow_page(
    ui: &mut Ui,
    view: &DebriefView,
    page: &mut Page<'_>,
    ends: impl FnOnce(&mut Ui, &mut Page<'_>),
) {
    above(
        ui,
        view.phase.name(),
        page,
        |ui, page| {
            step(ui, view);
            asked(ui, view);
            if view.phase == Phase::Verdict {
                verdict(ui, view, page);
            } else if let Some(head) = open(view).filter(|head| head.answers) {
                said(ui, head, page);
            }
            others(ui, view, page);
            ends(ui, page);
        },
        |ui, page| {
            ui.add_space(4.0);
            lead(ui, view, page);
        },
    );
}

/// What is the open page's own.
fn own(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
    asked(ui, view);
    ui.add_space(4.0);
    match view.phase {
        Phase::Happened | Phase::Felt => {
            if let Some(head) = open(view).filter(|head| head.answers) {
                said(ui, head, page);
            }
        }
        Phase::Why => story::findings(ui, view, page),
        Phase::Next => next(ui, view, page),
        Phase::Verdict => verdict(ui, view, page),
    }
}

/// What the open page asks or tells.
fn asked(ui: &mut Ui, view: &DebriefView) {
    if let Some(head) = open(view) {
        body(ui, &head.ask);
    }
}

/// The verdict and the criteria.
fn verdict(ui: &mut Ui, view: &DebriefView, page: &Page<'_>) {
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
    for said in [&view.rewound, &view.helped] {
        aside(ui, said);
    }
    ui.add_space(6.0);
    for criterion in &view.criteria {
        self::criterion(ui, criterion, page);
    }
}

/// What leads on: to the next page; from the verdict once more where it failed, and to another drill where it passed.
fn lead(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
    if view.phase != Phase::Verdict {
        let onward = page.say("window-onward");
        page.lead(ui, &onward, || Wish::Do(Command::Onward));
    } else if view.passed {
        let leave = page.say("window-leave");
        page.lead(ui, &leave, || Wish::Do(Command::Leave));
    } else {
        let retry = page.say("window-retry");
        page.lead(ui, &retry, || Wish::Do(Command::Retry));
    }
}

/// Where else to go from the open page, quieter than what leads on: first other drills, then what belongs to this run.
fn others(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
    if view.phase == Phase::Verdict {
        ui.horizontal_wrapped(|ui| {
            if view.passed {
                let retry = page.say("window-retry");
                page.quiet(ui, &retry, || Wish::Do(Command::Retry));
            }
            let another = page.say("window-another");
            page.quiet(ui, &another, || Wish::Do(Command::Another))
                .on_hover_text(&view.seed);
            if !view.passed {
                let leave = page.say("window-leave");
                page.quiet(ui, &leave, || Wish::Do(Command::Leave));
            }
        });
    }
    ui.horizontal_wrapped(|ui| {
        page_back(ui, view, page);
        if view.phase == Phase::Verdict {
            let record = page.say("window-record");
            page.quiet(ui, &record, || Wish::Record);
        }
    });
}

/// To the page before, where there is one.
fn page_back(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
    if view.phase != Phase::Happened {
        let text = page.say("window-page-back");
        page.quiet(ui, &text, || Wish::Do(Command::Back));
    }
}

/// The names of all pages side by side, the open one in bold.
pub(crate) fn steps(ui: &mut Ui, view: &DebriefView) {
    for (number, head) in (1..).zip(&view.pages) {
        let here = head.phase == view.phase;
        let text = format!("{number}. {}", head.title);
        let text = if here {
            let font = fonts::bold(16.0);
            RichText::new(text).font(font).color(theme::LEAD.egui())
        } else {
            let font = fonts::regular(14.0);
            RichText::new(text).font(font).color(theme::MUTED.egui())
        };
        ui.label(text);
        ui.add_space(6.0);
    }
}

/// The open page's name, and which of how many it is.
fn step(ui: &mut Ui, view: &DebriefView) {
    let here = view.pages.iter().position(|head| head.phase == view.phase);
    if let (Some(here), Some(head)) = (here, open(view)) {
        let name = format!("{}  {} / {}", head.title, here + 1, view.pages.len());
        let name = RichText::new(name).font(fonts::bold(16.0));
        ui.label(name.color(theme::LEAD.egui()));
    }
}

fn open(view: &DebriefView) -> Option<&PageView> {
    view.pages.iter().find(|head| head.phase == view.phase)
}

/// A field to write in: what stands in it, and what the session held when it was last sent there.
/// It is as high as what is seen of the page leaves to it.
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
    let row = ui.text_style_height(&egui::TextStyle::Body);
    let above = ui.cursor().top() - ui.min_rect().top();
    let room = ui.clip_rect().height() - above - 14.0;
    let field = egui::TextEdit::multiline(&mut text)
        .desired_width(f32::INFINITY)
        .min_size(vec2(0.0, room.clamp(ROWS * row, MOST)))
        .hint_text(page.say("window-said"));
    let response = ui.add(field);
    if response.changed() {
        page.out.push(Wish::Do(Command::Reflect(text.clone())));
    }
    ui.data_mut(|data| data.insert_temp(id, (text, held)));
}

/// The same as a page that scrolls.
pub(crate) fn next_page(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
    ScrollArea::vertical()
        .id_salt("next")
        .auto_shrink([false, false])
        .show(ui, |ui| next(ui, view, page));
}

/// The fewest rows of the field, and the most that it is high, points.
const ROWS: f32 = 2.0;
const MOST: f32 = 900.0;

/// What to practice next, each with the drill that trains it.
fn next(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
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
