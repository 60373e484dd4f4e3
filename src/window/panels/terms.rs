//! The words of the trade: those on the screen first, then all others.

use bevy_egui::egui::{RichText, ScrollArea, Ui};

use crate::session::view::{TermView, TradeView};
use crate::window::fonts;
use crate::window::theme;

use super::{Page, aside, body, subheading, words};

/// The glossary.
pub(crate) fn sheet(ui: &mut Ui, view: &TradeView, page: &mut Page<'_>) {
    words::head(ui, "window-terms", page);
    ScrollArea::vertical()
        .id_salt("terms")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            part(ui, &page.say("window-terms-here"), &view.here);
            part(ui, &page.say("window-terms-others"), &view.others);
        });
}

fn part(ui: &mut Ui, title: &str, terms: &[TermView]) {
    if terms.is_empty() {
        return;
    }
    subheading(ui, title);
    for term in terms {
        let name = RichText::new(&term.name).font(fonts::bold(16.0));
        ui.label(name.color(theme::LEAD.egui()));
        body(ui, &term.meaning);
        aside(ui, &term.source_name());
        ui.add_space(4.0);
    }
}
