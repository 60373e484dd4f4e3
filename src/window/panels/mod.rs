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
    Align, CornerRadius, Frame, Layout, Margin, Response, RichText, ScrollArea, Stroke, Ui,
};

use crate::session::Session;

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
}

impl<'a> Page<'a> {
    /// A page; `arriving` gives the keyboard's focus to the first leading button.
    pub(super) fn new(say: &'a dyn Fn(&str) -> String, arriving: bool) -> Self {
        Self {
            say,
            out: Vec::new(),
            arriving,
        }
    }

    /// A label of the window's own.
    pub(super) fn say(&self, id: &str) -> String {
        (self.say)(id)
    }

    /// Lets something be written in the language of another session; the focus stays where it is.
    pub(super) fn in_other(&mut self, session: &Session, add: impl FnOnce(&mut Page<'_>)) {
        let say = |id: &str| session.say(id);
        let mut other = Page::new(&say, false);
        add(&mut other);
        self.out.append(&mut other.out);
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
        let response = ui.add(egui::Button::new(text).wrap());
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
        let text = RichText::new(text)
            .font(fonts::bold(16.0))
            .color(theme::DARK_TEXT.egui());
        let response = ui.add(egui::Button::new(text).fill(theme::LEAD.egui()).wrap());
        self.focus_first(&response);
        outline_focus(ui, &response);
        self.on(&response, wish);
        response
    }

    /// Gives a thing the focus if it is the first that asks since its panel came up.
    pub(super) fn focus_first(&mut self, response: &Response) {
        if std::mem::take(&mut self.arriving) {
            response.request_focus();
            response.scroll_to_me(Some(Align::Center));
        }
    }
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

/// The least height of what is scrolled, points.
const LEAST_SCROLL: f32 = 80.0;

/// Brings what the keyboard has walked to into sight.
pub(super) fn follow_focus(response: &Response) {
    if response.gained_focus() {
        response.scroll_to_me(None);
    }
}

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
    ui.label(
        RichText::new(text)
            .font(fonts::bold(20.0))
            .color(theme::CREAM.egui()),
    );
}

/// A heading, and at the other end the way back; gives what the latter was answered with.
pub(super) fn titled(ui: &mut Ui, title: &str, page: &mut Page<'_>) -> Response {
    ui.horizontal(|ui| {
        heading(ui, title);
        let end = Layout::right_to_left(Align::Center);
        ui.with_layout(end, |ui| {
            let back = page.say("window-back");
            page.button(ui, &back, || Wish::Back)
        })
        .inner
    })
    .inner
}

/// A smaller heading.
pub(super) fn subheading(ui: &mut Ui, text: &str) {
    ui.label(
        RichText::new(text)
            .font(fonts::bold(15.0))
            .color(theme::MUTED.egui()),
    );
}

/// Running text.
pub(super) fn body(ui: &mut Ui, text: &str) {
    ui.label(
        RichText::new(text)
            .font(fonts::regular(15.5))
            .color(theme::CREAM.egui()),
    );
}

/// Lesser text.
pub(super) fn aside(ui: &mut Ui, text: &str) {
    if !text.is_empty() {
        ui.label(
            RichText::new(text)
                .font(fonts::regular(14.0))
                .color(theme::MUTED.egui()),
        );
    }
}
