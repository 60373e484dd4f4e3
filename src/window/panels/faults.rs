//! What is wrong with the scenarios that an author is writing, over whatever screen is open.

use bevy_egui::egui;
use bevy_egui::egui::text::LayoutJob;
use bevy_egui::egui::{Align2, RichText, ScrollArea, Stroke, TextFormat, Ui};

use crate::session::view::{FaultView, FaultsView};
use crate::window::fonts;
use crate::window::theme;

use super::{aside, body, subheading};

/// Every fault, with its line and the offending text marked.
pub(crate) fn sheet(ctx: &egui::Context, view: &FaultsView) {
    let room = ctx.content_rect();
    egui::Window::new("faults")
        .title_bar(false)
        .resizable(false)
        .anchor(Align2::CENTER_BOTTOM, [0.0, -60.0])
        .fixed_size([room.width() * 0.7, room.height() * 0.45])
        .show(ctx, |ui| {
            subheading(ui, &view.title);
            ScrollArea::vertical()
                .auto_shrink([false, true])
                .show(ui, |ui| {
                    for fault in &view.faults {
                        one(ui, fault);
                        ui.add_space(6.0);
                    }
                });
        });
}

fn one(ui: &mut Ui, fault: &FaultView) {
    let place = RichText::new(&fault.place).font(fonts::bold(15.0));
    ui.label(place.color(theme::LEAD.egui()));
    body(ui, &fault.what);
    if let Some([before, text, after]) = &fault.line {
        let plain = |ink: theme::Ink| TextFormat::simple(fonts::regular(15.0), ink.egui());
        let marked = TextFormat {
            underline: Stroke::new(2.0, theme::YELLOW.egui()),
            ..plain(theme::YELLOW)
        };
        let mut line = LayoutJob::default();
        line.append(before.trim_start(), 12.0, plain(theme::MUTED));
        line.append(text, 0.0, marked);
        line.append(after, 0.0, plain(theme::MUTED));
        ui.label(line);
    }
    if let Some(hint) = &fault.hint {
        aside(ui, hint);
    }
}
