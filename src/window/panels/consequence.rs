//! A consequence, held and told stage by stage in the order in which energy travels.
//!
//! The ring on the scene shows where each stage is; the numbers are those of the view.
//! Plain words, no picture of harm.

use bevy_egui::egui::{Align, Id, Rect, RichText, Sense, Stroke, Ui, vec2};

use crate::session::view::{ConsequenceView, LogKind, StageView};
use crate::session::{Command, Rewind};
use crate::window::both;
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::theme;

use super::{Page, above, body, card, log, subheading};

/// The consequence at a stage.
pub(crate) fn panel(ui: &mut Ui, view: &ConsequenceView, stage: usize, page: &mut Page<'_>) {
    // What leads on stays in sight below what is read.
    above(
        ui,
        "consequence",
        page,
        |ui, page| told(ui, view, stage, page),
        |ui, page| ways(ui, view, stage, page),
    );
}

/// What happened, what to do, and the way of the energy up to this stage.
fn told(ui: &mut Ui, view: &ConsequenceView, stage: usize, page: &Page<'_>) {
    let begun = ui.cursor().top();
    let mut tops = vec![begun];
    let sizes = Sizes::of(ui, view, stage);
    ui.spacing_mut().item_spacing.y = sizes.gap;
    subheading(ui, &page.say("window-held"));
    title(ui, view, sizes.title, page);
    if !view.now.is_empty() {
        tops.push(ui.cursor().top());
        card(ui, theme::LEAD, |ui| {
            subheading(ui, &page.say("window-now"));
            let font = fonts::regular(sizes.now);
            ui.label(both::written(&view.now, font, theme::CREAM));
        });
    }
    ui.add_space(2.0);
    tops.push(ui.cursor().top());
    if !view.heading.is_empty() {
        subheading(ui, &view.heading);
    }
    for (i, at) in view.stages.iter().enumerate().take(stage + 1) {
        if i > 0 {
            tops.push(ui.cursor().top());
        }
        one(ui, at, i, (i == stage).then_some(sizes.value));
    }
    if stage == 0 {
        Sizes::fit(ui, view, ui.cursor().top() - begun);
    }
    if stage + 1 >= view.stages.len() {
        ui.add_space(4.0);
        card(ui, theme::OUTLINE, |ui| {
            subheading(ui, &page.say("window-why"));
            body(ui, &view.why);
        });
    }
    // The first stage is read from the top, with what happened; a later one stands in sight whole.
    let from = if stage == 0 { 0 } else { first_of(ui, &tops) };
    open_at(ui, (&view.title, stage), &tops, from);
}

/// Size of the value of the stage that is told.
pub(super) const VALUE: f32 = 27.0;

/// How large what happened, what to do and the value of a stage are.
#[derive(Clone, Copy)]
struct Sizes {
    title: f32,
    now: f32,
    value: f32,
    gap: f32,
}

impl Sizes {
    const USUAL: Self = Self {
        title: 19.0,
        now: 15.5,
        value: VALUE,
        gap: 7.0,
    };
    const DENSE: Self = Self {
        title: 16.5,
        now: 14.0,
        value: 20.0,
        gap: 4.0,
    };

    /// Under what the toolkit keeps whether a consequence is told densely in a room of this height.
    fn place(ui: &Ui, view: &ConsequenceView) -> Id {
        Id::new(("consequence-dense", &view.title, seen(ui).round().to_bits()))
    }

    /// Dense for the first stage where the usual sizes have not left room for it.
    fn of(ui: &Ui, view: &ConsequenceView, stage: usize) -> Self {
        let place = Self::place(ui, view);
        let dense = stage == 0 && ui.data(|data| data.get_temp(place)).unwrap_or(false);
        if dense { Self::DENSE } else { Self::USUAL }
    }

    /// Keeps in mind that the first stage does not come into sight with what stands above it.
    fn fit(ui: &Ui, view: &ConsequenceView, high: f32) {
        let place = Self::place(ui, view);
        let known: Option<bool> = ui.data(|data| data.get_temp(place));
        if known.is_none() {
            ui.data_mut(|data| data.insert_temp(place, high > seen(ui)));
            ui.ctx().request_repaint();
        }
    }
}

/// The first part from which all that follows fits into what is seen; the last one if none does.
fn first_of(ui: &Ui, tops: &[f32]) -> usize {
    let (end, room) = (ui.cursor().top(), seen(ui));
    let fits = tops.iter().position(|top| end - top <= room);
    fits.unwrap_or(tops.len().saturating_sub(1))
}

/// Height of what is seen of the part that is scrolled.
fn seen(ui: &Ui) -> f32 {
    ui.clip_rect().height()
}

/// Scrolls to a part once for each stage, so that it begins at the upper edge and nothing is cut there.
fn open_at(ui: &mut Ui, stage: (&str, usize), tops: &[f32], from: usize) {
    let (Some(top), Some(first)) = (tops.get(from), tops.first()) else {
        return;
    };
    let missing = top + seen(ui) - ui.cursor().top();
    if from > 0 && missing > 0.0 {
        ui.add_space(missing);
    }
    let place = Id::new("consequence-opened");
    let now = (Id::new(stage), seen(ui).round(), (top - first).round());
    let opened: Option<(Id, f32, f32)> = ui.data_mut(|data| {
        let opened = data.get_temp(place);
        data.insert_temp(place, now);
        opened
    });
    if opened != Some(now) {
        let x = ui.min_rect().x_range();
        let part = Rect::from_x_y_ranges(x, *top..=*top + 1.0);
        ui.scroll_to_rect(part, Some(Align::TOP));
        ui.ctx().request_repaint();
    }
}

/// The way on, and the ways back.
fn ways(ui: &mut Ui, view: &ConsequenceView, stage: usize, page: &mut Page<'_>) {
    let last = view.stages.len().saturating_sub(1);
    ui.add_space(4.0);
    ui.horizontal_wrapped(|ui| {
        if stage < last {
            let next = page.say("window-next");
            page.lead(ui, &next, || Wish::Stage(stage + 1));
            let count = format!("{} / {}", stage + 1, last + 1);
            ui.label(
                RichText::new(count)
                    .font(fonts::regular(15.0))
                    .color(theme::MUTED.egui()),
            );
        } else {
            let understood = page.say("window-understood");
            page.lead(ui, &understood, || Wish::Do(Command::Understood));
            let back = page.say("window-go-back");
            page.button(ui, &back, || Wish::Do(Command::Rewind(Rewind::Mistake)));
            if last > 0 {
                let again = page.say("window-again");
                page.button(ui, &again, || Wish::Stage(0));
            }
        }
        others(ui, view, page);
    });
}

/// What happened; harm with a mark and a word of its own, in the brightest ink, so that nobody has to tell it by its color.
fn title(ui: &mut Ui, view: &ConsequenceView, size: f32, page: &Page<'_>) {
    let mut ink = theme::YELLOW;
    if view.harm {
        ink = theme::CREAM;
        ui.horizontal(|ui| {
            let (rect, _) = ui.allocate_exact_size(vec2(20.0, 20.0), Sense::hover());
            log::mark(ui.painter(), rect.center(), LogKind::Harm);
            ui.label(
                RichText::new(page.say("window-log-harm"))
                    .font(fonts::bold(17.0))
                    .color(theme::log_look(LogKind::Harm).0.egui()),
            );
        });
    }
    ui.label(both::written(&view.title, fonts::bold(size), ink));
}

/// Leaves what else followed from the same thing for the debrief.
fn others(ui: &mut Ui, view: &ConsequenceView, page: &mut Page<'_>) {
    if !view.others.is_empty() {
        page.quiet(ui, &view.others, || Wish::Do(Command::AllUnderstood));
    }
}

/// A stage: its number in a disk, the value that matters, the sentence. The current one has a value of this size; earlier ones stay, smaller.
pub(super) fn one(ui: &mut Ui, stage: &StageView, index: usize, current: Option<f32>) {
    let value = current.unwrap_or(16.0);
    let current = current.is_some();
    ui.horizontal_top(|ui| {
        let (rect, _) = ui.allocate_exact_size(vec2(26.0, 26.0), Sense::hover());
        let center = rect.center();
        let (fill, ink) = if current {
            (theme::LEAD, theme::DARK_TEXT)
        } else {
            (theme::RAISED, theme::MUTED)
        };
        ui.painter().circle(
            center,
            12.0,
            fill.egui(),
            Stroke::new(1.5, theme::OUTLINE.egui()),
        );
        ui.painter().text(
            center,
            bevy_egui::egui::Align2::CENTER_CENTER,
            index + 1,
            fonts::bold(14.0),
            ink.egui(),
        );
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 1.0;
            if !stage.value.is_empty() {
                ui.label(
                    RichText::new(&stage.value)
                        .font(fonts::bold(value))
                        .color(theme::CREAM.egui()),
                );
            }
            let ink = if current { theme::CREAM } else { theme::MUTED };
            let size = if current { 16.0 } else { 13.5 };
            ui.label(
                RichText::new(&stage.text)
                    .font(fonts::regular(size))
                    .color(ink.egui()),
            );
        });
    });
    ui.add_space(3.0);
}
