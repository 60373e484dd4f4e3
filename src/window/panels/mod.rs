//! Panels: each a function from a view to widgets, with wishes as its only result and no engine type in it.
//!
//! They are drawn anew in every egui pass and keep nothing between passes but what is unfolded.
//! Every text comes from a view or by id from the word files.

pub(super) mod again;
pub(super) mod asked;
pub(super) mod branches;
pub(super) mod breakers;
pub(super) mod close;
pub(super) mod consequence;
pub(super) mod debrief;
pub(super) mod faces;
pub(super) mod faults;
pub(super) mod ink;
pub(super) mod lesson;
pub(super) mod log;
pub(super) mod phasors;
pub(super) mod plot;
pub(super) mod room;
pub(super) mod shelf;
pub(super) mod span;
pub(super) mod story;
pub(super) mod terms;
mod tester;
pub(super) mod timeline;
pub(super) mod top;
pub(super) mod words;

use bevy_egui::egui;
use bevy_egui::egui::{
    Align, CornerRadius, Frame, Layout, Margin, Response, ScrollArea, Stroke, Ui, WidgetText,
};

use crate::session::Session;

use super::both;
use super::fonts;
use super::link::Wish;
use super::theme;
use super::theme::Ink;

/// What a panel writes with: the words, where its wishes go, and whether something has just come up.
pub(super) struct Page<'a> {
    say: &'a dyn Fn(&str) -> String,
    /// Wishes so far.
    pub(super) out: Vec<Wish>,
    arriving: bool,
    in_two: bool,
}

impl<'a> Page<'a> {
    /// A page; `arriving` gives the keyboard's focus to the first leading button.
    pub(super) fn new(say: &'a dyn Fn(&str) -> String, arriving: bool) -> Self {
        Self {
            say,
            out: Vec::new(),
            arriving,
            in_two: false,
        }
    }

    /// A label of the window's own.
    pub(super) fn say(&self, id: &str) -> String {
        (self.say)(id)
    }

    /// Whether every label is in two languages, the second below the first.
    pub(super) fn is_in_two(&self) -> bool {
        self.in_two
    }

    /// Lets something be written in the language of a second session too, if there is one.
    pub(super) fn in_both(&mut self, second: Option<&Session>, add: impl FnOnce(&mut Page<'_>)) {
        let Some(second) = second else {
            add(self);
            return;
        };
        let own = self.say;
        let say = |id: &str| both::joined(&own(id), &second.say(id));
        let mut page = Page {
            say: &say,
            out: std::mem::take(&mut self.out),
            arriving: self.arriving,
            in_two: true,
        };
        add(&mut page);
        (self.out, self.arriving) = (page.out, page.arriving);
    }

    /// A wish, if the thing was pressed.
    pub(super) fn on(&mut self, response: &Response, wish: impl FnOnce() -> Wish) {
        if response.clicked() && !is_second_of_another(response) {
            self.out.push(wish());
        }
        follow_focus(response);
    }

    /// A plain button.
    pub(super) fn button(
        &mut self,
        ui: &mut Ui,
        text: &str,
        wish: impl FnOnce() -> Wish,
    ) -> Response {
        let text: WidgetText = if both::is_both(text) {
            both::written(text, fonts::regular(15.5), theme::CREAM)
        } else {
            text.into()
        };
        let response = ui.add(egui::Button::new(text).wrap());
        self.on(&response, wish);
        response
    }

    /// A button for what is not the way on: smaller, and on the ground of its panel.
    pub(super) fn quiet(
        &mut self,
        ui: &mut Ui,
        text: &str,
        wish: impl FnOnce() -> Wish,
    ) -> Response {
        let text = both::written(text, fonts::regular(14.0), theme::CREAM);
        let button = egui::Button::new(text).fill(theme::PANEL.egui());
        let edge = Stroke::new(1.0, theme::OUTLINE.egui());
        let response = ui
            .scope(|ui| {
                ui.spacing_mut().button_padding.y = 3.0;
                ui.spacing_mut().interact_size.y = 26.0;
                ui.add(button.stroke(edge).wrap())
            })
            .inner;
        outline_focus(ui, &response);
        self.on(&response, wish);
        response
    }

    /// A plain button of a bar: two languages have both lines in the height that the bar has.
    pub(super) fn bar_button(
        &mut self,
        ui: &mut Ui,
        text: &str,
        wish: impl FnOnce() -> Wish,
    ) -> Response {
        if !both::is_both(text) {
            return self.button(ui, text, wish);
        }
        let text = both::written(text, fonts::regular(OF_BAR), theme::CREAM);
        let response = ui.add(egui::Button::new(text).wrap());
        self.on(&response, wish);
        response
    }

    /// One of several choices, or a switch: framed as every button, and with a tick where it is chosen.
    pub(super) fn choice(
        &mut self,
        ui: &mut Ui,
        (text, chosen): (&str, bool),
        wish: impl FnOnce() -> Wish,
    ) -> Response {
        let response = choice(ui, text, chosen);
        self.on(&response, wish);
        response
    }

    /// The one button that leads on; it takes the focus when its panel has just come up.
    pub(super) fn lead(
        &mut self,
        ui: &mut Ui,
        text: &str,
        wish: impl FnOnce() -> Wish,
    ) -> Response {
        let text = both::written(text, fonts::bold(16.0), theme::DARK_TEXT);
        let response = ui.add(egui::Button::new(text).fill(theme::LEAD.egui()).wrap());
        self.focus_first(&response);
        outline_focus(ui, &response);
        self.on(&response, wish);
        response
    }

    /// Gives a thing the focus if it is the first that asks since its panel came up.
    /// The panel stays where it opened, so that its heading is read first.
    pub(super) fn focus_first(&mut self, response: &Response) {
        if std::mem::take(&mut self.arriving) {
            response.request_focus();
            let came = (response.id, response.ctx.cumulative_pass_nr());
            let place = egui::Id::new(CAME);
            response.ctx.data_mut(|data| data.insert_temp(place, came));
        }
    }

    /// Whether a panel has just come up and nothing in it has asked for the focus yet.
    pub(super) fn arrives(&self) -> bool {
        self.arriving
    }
}

/// Size of type in the bars in two languages.
pub(super) const OF_BAR: f32 = 13.5;

/// What a choice looks like, for those that are kept by the toolkit until they are sent.
pub(super) fn choice(ui: &mut Ui, text: &str, chosen: bool) -> Response {
    let (text, ink) = if chosen {
        let ticked = both::each([text], |[text]| format!("✔ {text}"));
        (ticked, theme::YELLOW)
    } else {
        (text.to_owned(), theme::CREAM)
    };
    let text = both::written(&text, fonts::regular(15.5), ink);
    ui.add(egui::Button::new(text).selected(chosen).wrap())
}

/// Whether a press is the second of a double press whose first one met something else, which has made room for this since.
fn is_second_of_another(response: &Response) -> bool {
    let Some(at) = response.interact_pointer_pos() else {
        return false;
    };
    let place = egui::Id::new("pressed-last");
    // The toolkit gives an id again to what takes a thing's turn: the place tells them apart.
    let pressed = (response.id, response.rect);
    let last = response.ctx.data_mut(|data| {
        let last = data.get_temp::<((egui::Id, egui::Rect), egui::Pos2)>(place);
        data.insert_temp(place, (pressed, at));
        last
    });
    let other = last.filter(|(before, from)| *before != pressed && from.distance(at) < TREMBLE);
    response.double_clicked() && other.is_some()
}

/// How far apart two presses of a double press may be, points.
const TREMBLE: f32 = 12.0;

/// Something to scroll, and below it what stays in sight: it gets as much room as it takes.
pub(super) fn above(
    ui: &mut Ui,
    name: &str,
    page: &mut Page<'_>,
    scrolled: impl FnOnce(&mut Ui, &mut Page<'_>),
    below: impl FnOnce(&mut Ui, &mut Page<'_>),
) {
    let id = ui.id().with(name);
    let taken: f32 = ui.data(|data| data.get_temp(id)).unwrap_or(90.0);
    let all = ui.available_height();
    ScrollArea::vertical()
        .id_salt(name)
        .auto_shrink([false, true])
        .max_height((all - taken).max(LEAST_SCROLL))
        .show(ui, |ui| scrolled(ui, page));
    let top = ui.cursor().top();
    below(ui, page);
    let takes = ui.cursor().top() - top;
    if (takes - taken).abs() > 0.5 {
        ui.data_mut(|data| data.insert_temp(id, takes));
        ui.ctx().request_repaint();
    }
}

/// Keeps room free below a list, so that at its end what is seen begins with a whole part of it: `tops` says where parts begin.
/// To be called at the end of what is scrolled.
pub(super) fn end_whole(ui: &mut Ui, tops: &[f32]) {
    let (end, seen) = (ui.cursor().top(), ui.clip_rect().height());
    let first_seen = end - seen;
    if tops.first().is_none_or(|top| *top >= first_seen) {
        return;
    }
    if let Some(top) = tops.iter().find(|top| **top >= first_seen) {
        ui.add_space(top - first_seen);
    }
}

/// The least height of what is scrolled, points.
const LEAST_SCROLL: f32 = 80.0;

/// Brings what the keyboard has walked to into sight; what was given the focus as its panel came up stays where it is.
pub(super) fn follow_focus(response: &Response) {
    let came = response
        .ctx
        .data(|data| data.get_temp::<(egui::Id, u64)>(egui::Id::new(CAME)));
    let now = (response.id, response.ctx.cumulative_pass_nr());
    if response.gained_focus() && came != Some(now) {
        response.scroll_to_me(None);
    }
}

/// Under which the toolkit keeps what was given the focus last, and in which pass.
const CAME: &str = "came-into-focus";

/// Draws the focus ring around something that paints itself.
pub(super) fn outline_focus(ui: &Ui, response: &Response) {
    if response.has_focus() {
        let rect = response.rect.expand(3.0);
        let stroke = Stroke::new(3.0, theme::YELLOW.egui());
        ui.painter().rect_stroke(
            rect,
            CornerRadius::same(8),
            stroke,
            egui::StrokeKind::Outside,
        );
    }
}

/// A raised card.
pub(super) fn card<R>(ui: &mut Ui, edge: Ink, add: impl FnOnce(&mut Ui) -> R) -> R {
    Frame::new()
        .fill(theme::RAISED.egui())
        .stroke(Stroke::new(1.5, edge.egui()))
        .corner_radius(CornerRadius::same(9))
        .inner_margin(Margin::symmetric(11, 8))
        .show(ui, |ui| {
            ui.set_width(ui.available_width());
            add(ui)
        })
        .inner
}

/// A heading.
pub(super) fn heading(ui: &mut Ui, text: &str) {
    ui.label(both::written(text, fonts::bold(20.0), theme::CREAM));
}

/// A heading, and at the other end the way back; gives what the latter was answered with.
pub(super) fn titled(ui: &mut Ui, title: &str, page: &mut Page<'_>) -> Response {
    ui.horizontal(|ui| {
        // Two languages stand side by side where they can: below is what one came for.
        let line = both::in_one_line(title);
        let font = fonts::bold(20.0);
        let galley = ui
            .painter()
            .layout_no_wrap(line.clone(), font, theme::CREAM.egui());
        let fits = galley.size().x + BACK <= ui.available_width();
        heading(ui, if fits { &line } else { title });
        let end = Layout::right_to_left(Align::Center);
        ui.with_layout(end, |ui| {
            let back = page.say("window-back");
            let back = if fits { both::in_one_line(&back) } else { back };
            page.button(ui, &back, || Wish::Back)
        })
        .inner
    })
    .inner
}

/// The widest that the way back is in two languages, points.
const BACK: f32 = 150.0;

/// A smaller heading.
pub(super) fn subheading(ui: &mut Ui, text: &str) {
    ui.label(both::written(text, fonts::bold(15.0), theme::MUTED));
}

/// Running text.
pub(super) fn body(ui: &mut Ui, text: &str) {
    ui.label(both::written(text, fonts::regular(15.5), theme::CREAM));
}

/// Lesser text.
pub(super) fn aside(ui: &mut Ui, text: &str) {
    if !text.is_empty() {
        ui.label(both::written(text, fonts::regular(14.0), theme::MUTED));
    }
}
