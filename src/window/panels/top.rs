//! The bar on top (title, clock, waits, finish, language, keys) and the bar below (what was answered last, places).
//!
//! It does not cover the log: see [`super::log`].

use bevy_egui::egui;
use bevy_egui::egui::text::{LayoutJob, TextFormat};
use bevy_egui::egui::{Align, Layout, RichText, Ui};

use crate::session::view::{LanguageView, LogView, StreetView};
use crate::session::{Command, Detail, Notice};
use crate::window::both;
use crate::window::both::Side;
use crate::window::desk::Desk;
use crate::window::fonts;
use crate::window::input::{MINUTE, SHORT, way_out};
use crate::window::link::Wish;
use crate::window::scene::callouts::engine_ink;
use crate::window::theme;

use super::{OF_BAR, Page, body, subheading};

/// The bar on top.
pub(crate) fn bar(
    ui: &mut Ui,
    street: &StreetView,
    log: &LogView,
    languages: &[LanguageView],
    page: &mut Page<'_>,
) {
    line(ui, street, languages, page, |ui, page| {
        time(ui, street, log, page);
    });
}

/// A bar with something at its beginning, and at its end what every bar has.
fn line(
    ui: &mut Ui,
    street: &StreetView,
    languages: &[LanguageView],
    page: &mut Page<'_>,
    begins: impl FnOnce(&mut Ui, &mut Page<'_>),
) {
    ui.horizontal_centered(|ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        if page.is_in_two() {
            ui.spacing_mut().button_padding.y = 2.0;
        }
        begins(ui, page);
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            ends(ui, languages, page);
            title(ui, street);
        });
    });
}

/// What drill it is; in two languages one above the other.
fn title(ui: &mut Ui, street: &StreetView) {
    let one = |ui: &mut Ui, side: Side| {
        let text = both::side(&street.title, side);
        let usual = fonts::bold(15.0);
        let painter = ui.painter();
        let galley = painter.layout_no_wrap(text.to_owned(), usual.clone(), theme::MUTED.egui());
        let fits = galley.size().x <= ui.available_width();
        let font = if fits { usual } else { fonts::bold(12.0) };
        let text = RichText::new(text).font(font);
        let label = egui::Label::new(text.color(theme::MUTED.egui())).truncate();
        ui.add(label).on_hover_text(&street.seed);
    };
    if !both::is_both(&street.title) {
        one(ui, Side::First);
        return;
    }
    ui.with_layout(Layout::top_down(Align::Max), |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        ui.add_space(1.0);
        for side in both::SIDES {
            one(ui, side);
        }
    });
}

/// The next step where it is shown, the clock with what lets time pass, what the drill asks for and how far it has come: where the sky has no room for words.
pub(crate) fn aim(ui: &mut Ui, street: &StreetView, log: &LogView, page: &mut Page<'_>) {
    if !street.hint.is_empty() {
        subheading(ui, &page.say("window-hint"));
        body(ui, &street.hint);
    }
    ui.horizontal_wrapped(|ui| time(ui, street, log, page));
    goal(ui, street, page);
}

/// What the drill asks for and how far it has come.
pub(crate) fn goal(ui: &mut Ui, street: &StreetView, page: &Page<'_>) {
    for (id, text) in [
        ("window-goal", &street.goal),
        ("window-progress", &street.progress),
    ] {
        if !text.is_empty() {
            subheading(ui, &both::in_one_line(&page.say(id)));
            body(ui, text);
        }
    }
}

/// The same bar where it has to be wrapped.
pub(crate) fn wrapped(
    ui: &mut Ui,
    street: &StreetView,
    log: &LogView,
    languages: &[LanguageView],
    page: &mut Page<'_>,
) {
    ui.horizontal_wrapped(|ui| {
        time(ui, street, log, page);
        ends(ui, languages, page);
    });
}

/// The bar while two tries are compared: nothing in it moves the drill, and one button goes back to it.
pub(crate) fn comparing(
    ui: &mut Ui,
    street: &StreetView,
    log: &LogView,
    languages: &[LanguageView],
    page: &mut Page<'_>,
) {
    line(ui, street, languages, page, |ui, page| still(ui, log, page));
}

/// What stands in the place of the waits while two tries are compared.
pub(crate) fn still(ui: &mut Ui, log: &LogView, page: &mut Page<'_>) {
    clock(ui, log, page);
    let on = page.say("window-branches-on");
    page.button(ui, &on, || Wish::Back);
    let why = page.say("window-branches-still");
    ui.label(both::written(&why, fonts::regular(14.0), theme::MUTED));
}

/// The wait that the hint asks for, framed as what is suggested; says whether there is one.
pub(crate) fn hinted_wait(ui: &mut Ui, street: &StreetView, page: &mut Page<'_>) -> bool {
    let Some(wait) = &street.hint_wait else {
        return false;
    };
    suggested(ui, &wait.label, Command::Wait(wait.time), page);
    true
}

/// A button for what is suggested.
fn suggested(ui: &mut Ui, text: &str, command: Command, page: &mut Page<'_>) {
    let text = both::written(text, fonts::bold(15.5), theme::LEAD);
    let frame = egui::Stroke::new(1.5, theme::LEAD.egui());
    let response = ui.add(egui::Button::new(text).stroke(frame).wrap());
    page.on(&response, || Wish::Do(command));
}

/// The clock, what lets time pass, and what ends the drill.
fn time(ui: &mut Ui, street: &StreetView, log: &LogView, page: &mut Page<'_>) {
    clock(ui, log, page);
    let asked = street.hint_wait.as_ref().map(|wait| wait.time);
    let offered = [
        ("window-wait-short", Command::Wait(SHORT)),
        ("window-wait-minute", Command::Wait(MINUTE)),
        ("window-wait-event", Command::WaitForEvent),
    ];
    if asked.is_some_and(|time| [SHORT, MINUTE].contains(&time)) || !hinted_wait(ui, street, page) {
        // The others keep their ids when it comes or goes, and with them the keyboard's focus.
        ui.skip_ahead_auto_ids(1);
    }
    for (id, command) in offered {
        let text = page.say(id);
        if asked.is_some_and(|time| command == Command::Wait(time)) {
            suggested(ui, &text, command, page);
        } else {
            page.bar_button(ui, &text, || Wish::Do(command));
        }
    }
    let end = way_out(log);
    let text = page.say(if end == Command::Leave {
        "window-leave-drill"
    } else {
        "window-finish"
    });
    if log.goal_met && log.begun || log.over {
        page.lead(ui, &text, || Wish::Do(end));
    } else {
        page.bar_button(ui, &text, || Wish::Do(end));
    }
}

/// The clock and its unit.
fn clock(ui: &mut Ui, log: &LogView, page: &Page<'_>) {
    let clock = RichText::new(&log.clock)
        .font(fonts::bold(26.0))
        .color(theme::LEAD.egui());
    ui.add_sized([78.0, 32.0], egui::Label::new(clock))
        .on_hover_text(page.say("window-clock"));
    let unit = RichText::new(page.say("window-clock-unit"))
        .font(fonts::regular(12.5))
        .color(theme::MUTED.egui());
    ui.label(unit);
}

/// Language and keys, at the end of a bar. Where two languages are spoken already, none is offered.
pub(crate) fn ends(ui: &mut Ui, languages: &[LanguageView], page: &mut Page<'_>) {
    let keys = page.say("window-keys");
    page.bar_button(ui, &keys, || Wish::Keys);
    if page.is_in_two() {
        return;
    }
    if let Some(now) = languages.iter().position(|l| l.current)
        && let Some(next) = languages.get((now + 1) % languages.len())
    {
        let response = page.button(ui, &next.name, || {
            Wish::Do(Command::Speak(next.tag.clone()))
        });
        response.on_hover_text(page.say("window-key-language"));
    }
}

/// The places and where words are explained, wrapped.
pub(crate) fn wrapped_places(
    ui: &mut Ui,
    street: &StreetView,
    open: Option<&str>,
    page: &mut Page<'_>,
) {
    ui.horizontal_wrapped(|ui| {
        each_place(ui, street, open, page);
        explained(ui, page);
    });
}

/// The bar below: what was answered last, the places, and where words are explained.
pub(crate) fn places(
    ui: &mut Ui,
    (street, log): (&StreetView, &LogView),
    desk: &Desk,
    page: &mut Page<'_>,
) {
    ui.spacing_mut().item_spacing.y = 5.0;
    let notice = desk.notice.as_ref();
    if page.is_in_two() {
        places_of_both(ui, (street, log), desk, page);
        return;
    }
    ui.horizontal(|ui| {
        ui.set_height(30.0);
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            ui.spacing_mut().button_padding.y = 2.0;
            ui.spacing_mut().interact_size.y = 26.0;
            explained(ui, page);
            ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                answer(ui, notice, log, page);
            });
        });
    });
    ui.horizontal(|ui| each_place(ui, street, desk.place.as_deref(), page));
}

/// Height of what was answered last and how the engine stands, in two languages, points.
const OF_BOTH: f32 = 62.0;
/// With more places than this, nothing else stands beside them.
const MANY_PLACES: usize = 7;

/// The same in two languages: what was answered last beside how the engine stands, for which there is no room in the scene; below, places and help.
fn places_of_both(
    ui: &mut Ui,
    (street, log): (&StreetView, &LogView),
    desk: &Desk,
    page: &mut Page<'_>,
) {
    // Where there are many places, help stands beside the engine.
    let crowded = street.places.len() > MANY_PLACES;
    let shares = if crowded { [0.4, 0.32] } else { [0.56, 0.44] };
    let wide = ui.available_width();
    let [of_answer, of_engine] = shares.map(|share| egui::vec2(wide * share, OF_BOTH));
    ui.spacing_mut().button_padding.y = 2.0;
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 0.0;
        let down = Layout::top_down(Align::Min);
        ui.allocate_ui_with_layout(of_answer, down, |ui| {
            ui.set_min_size(of_answer);
            answer(ui, desk.notice.as_ref(), log, page);
        });
        ui.allocate_ui_with_layout(of_engine, down, |ui| {
            engine(ui, street, desk.detail);
        });
        if crowded {
            help_at_the_end(ui, page);
        }
    });
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 5.0;
        each_place(ui, street, desk.place.as_deref(), page);
        if !crowded {
            help_at_the_end(ui, page);
        }
    });
}

fn help_at_the_end(ui: &mut Ui, page: &mut Page<'_>) {
    ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
        ui.spacing_mut().item_spacing.x = 5.0;
        explained(ui, page);
    });
}

/// How the engine stands: its state, its place with the distance, its load; one language below the other.
fn engine(ui: &mut Ui, street: &StreetView, detail: Detail) {
    let g = &street.generator;
    let load = match detail {
        Detail::Live => "",
        Detail::Numbers | Detail::Phasors => g.load_words.as_str(),
    };
    let written = |size: f32| {
        let mut job = LayoutJob::default();
        job.wrap.max_width = ui.available_width();
        for side in both::SIDES {
            let ink = match side {
                Side::First => theme::CREAM,
                Side::Second => theme::CREAM.mix(theme::MUTED, 0.6),
            };
            if !job.is_empty() {
                job.append("\n", 0.0, TextFormat::default());
            }
            let word = TextFormat::simple(fonts::bold(size), engine_ink(street).egui());
            job.append(both::side(&g.word, side), 0.0, word);
            for text in [g.place_words.as_str(), load] {
                let format = TextFormat::simple(fonts::regular(size), ink.egui());
                job.append(both::side(text, side), 6.0, format);
            }
        }
        ui.painter().layout_job(job)
    };
    let sizes = [OF_BAR, 12.5, 11.5];
    let [.., least] = sizes;
    let mut galleys = sizes.into_iter().map(&written);
    let fits = galleys.find(|galley| galley.size().y <= OF_BOTH);
    ui.label(fits.unwrap_or_else(|| written(least)));
}

/// The places with their digits; the open one is marked.
fn each_place(ui: &mut Ui, street: &StreetView, open: Option<&str>, page: &mut Page<'_>) {
    for (number, place) in (1..).zip(&street.places) {
        let is_open = open == Some(place.id.as_str());
        let size = if page.is_in_two() { OF_BAR } else { 15.5 };
        let (font, ink) = if is_open {
            (fonts::bold(size), theme::DARK_TEXT)
        } else {
            (fonts::regular(size), theme::CREAM)
        };
        let mut button = if both::is_both(&place.label) {
            // The digit stands beside both lines.
            let digit = RichText::new(number.to_string());
            let digit = digit.font(font.clone()).color(ink.egui());
            egui::Button::new((digit, both::written(&place.label, font, ink)))
        } else {
            let text = RichText::new(format!("{number}  {}", place.label));
            egui::Button::new(text.font(font).color(ink.egui()))
        };
        if is_open {
            button = button.fill(theme::SKY_BLUE.egui());
        }
        let response = ui.add(button);
        page.on(&response, || {
            if is_open {
                Wish::Back
            } else {
                Wish::Place(place.id.clone())
            }
        });
        response.on_hover_text(&place.sentence);
    }
}

/// Help: the next safe step, the scene in words, and the words of the trade.
fn explained(ui: &mut Ui, page: &mut Page<'_>) {
    what_next(ui, page);
    let words = page.say("window-words");
    page.bar_button(ui, &words, || Wish::Words);
    let terms = page.say("window-terms-short");
    page.bar_button(ui, &terms, || Wish::Terms)
        .on_hover_text(page.say("window-key-terms"));
}

/// What the session answered last, with the word for what kind of answer it is; a long one is smaller.
/// In two languages where the log has it: an answer comes in one.
pub(crate) fn answer(ui: &mut Ui, notice: Option<&Notice>, log: &LogView, page: &Page<'_>) {
    let Some((id, ink, text)) = notice.and_then(look) else {
        return;
    };
    let mut lines = log.lines.iter().rev().map(|line| line.text.as_str());
    let text = lines
        .find(|line| both::side(line, Side::First) == text)
        .unwrap_or(text);
    let sides = if both::is_both(text) {
        both::SIDES.as_slice()
    } else {
        &[Side::First]
    };
    let word = page.say(id);
    let written = |size: f32| {
        let mut job = LayoutJob::default();
        job.wrap.max_width = ui.available_width();
        for side in sides {
            if !job.is_empty() {
                job.append("\n", 0.0, TextFormat::default());
            }
            let word_format = TextFormat::simple(fonts::bold(size), ink.egui());
            job.append(both::side(&word, *side), 0.0, word_format);
            let text_format = TextFormat::simple(fonts::regular(size), theme::CREAM.egui());
            job.append(both::side(text, *side), 8.0, text_format);
        }
        ui.painter().layout_job(job)
    };
    let usual = written(15.0);
    let lines = if sides.len() > 1 { 3 } else { 1 };
    let fits = usual.rows.len() <= lines;
    let galley = if fits { usual } else { written(12.0) };
    ui.label(galley);
}

fn look(notice: &Notice) -> Option<(&'static str, theme::Ink, &str)> {
    match notice {
        Notice::Done(text) => Some(("window-log-did", theme::CREAM, text)),
        Notice::Refused(text) => Some(("window-log-refused", theme::YELLOW, text)),
        Notice::Happened(text) | Notice::Answered(text) => {
            Some(("window-log-happened", theme::SKY_BLUE, text))
        }
        Notice::Learnt(text) => Some(("window-log-learnt", theme::MUTED, text)),
        Notice::Unknown(text) => Some(("window-log-unknown", theme::YELLOW, text)),
        Notice::Consequence | Notice::Over => None,
    }
}

/// Asks for the next step.
fn what_next(ui: &mut Ui, page: &mut Page<'_>) {
    let next = page.say("window-what-next");
    let size = if page.is_in_two() { OF_BAR } else { 14.5 };
    let next = both::written(&next, fonts::bold(size), theme::LEAD);
    let frame = egui::Stroke::new(1.5, theme::LEAD.egui());
    let response = ui.add(egui::Button::new(next).stroke(frame).wrap());
    page.on(&response, || Wish::Do(Command::Hint));
    response.on_hover_text(page.say("window-key-hint"));
}

/// The same at the end of a row, where there is room for it.
pub(crate) fn what_next_at_end(ui: &mut Ui, page: &mut Page<'_>) {
    let next = page.say("window-what-next");
    let words = both::written(&next, fonts::bold(14.5), theme::LEAD);
    let galley = words.into_galley(ui, None, f32::INFINITY, egui::TextStyle::Button);
    let width = galley.size().x + 2.0 * ui.spacing().button_padding.x;
    if width <= ui.available_width() {
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            what_next(ui, page);
        });
    }
}
