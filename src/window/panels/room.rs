//! What an instructor needs in front of a room: how the wall shows the drill, what to point at, what to let happen.
//!
//! Everything here can be done by keys: Tab walks through it, and the turns of events have digits while it is open.
//! Names are typed here and shown nowhere else in the window: on a wall they stay hidden.

use bevy_egui::egui::{Button, CollapsingHeader, Id, Key, ScrollArea, TextEdit, Ui};

use crate::session::view::{DeedView, StreetView};
use crate::session::{Command, Seated};
use crate::window::both;
use crate::window::desk::Desk;
use crate::window::fonts;
use crate::window::link::{Views, Wish};
use crate::window::theme;

use super::{Page, aside, body, card, choice, heading, subheading, words};

/// The sheet.
pub(crate) fn sheet(ui: &mut Ui, views: &Views, desk: &Desk, page: &mut Page<'_>) {
    words::head(ui, "window-room", page);
    ScrollArea::vertical()
        .id_salt("room")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            aside(ui, &page.say("window-room-away"));
            if desk.teaching.is_some() && views.street.is_some() {
                subheading(ui, &page.say("window-room-lesson"));
                let back = page.say("window-room-to-lesson");
                page.button(ui, &back, || Wish::Do(Command::Leave));
            }
            wall(ui, views, desk, page);
            if let Some(street) = &views.street {
                light(ui, street, desk, page);
                turns(ui, &views.turns, page);
            }
            seats(ui, desk, page);
        });
}

/// How the wall shows it.
fn wall(ui: &mut Ui, views: &Views, desk: &Desk, page: &mut Page<'_>) {
    subheading(ui, &page.say("window-room-wall"));
    ui.horizontal_wrapped(|ui| {
        switch(
            ui,
            "window-room-second",
            desk.wall.second,
            Wish::Second,
            page,
        );
        if views.street.is_some() {
            let cover = Wish::Do(Command::Cover(!views.covered));
            switch(ui, "window-room-cover", views.covered, cover, page);
            switch(ui, "window-room-hold", desk.wall.held, Wish::Hold, page);
        }
    });
    ui.horizontal_wrapped(|ui| {
        body(ui, &page.say("window-room-size"));
        let smaller = ui.add_enabled(desk.can_be_smaller(), Button::new("−"));
        page.on(&smaller, || Wish::Size(false));
        body(ui, &format!("{:.0} %", desk.look().zoom * 100.0));
        page.button(ui, "+", || Wish::Size(true));
    });
}

fn switch(ui: &mut Ui, id: &str, on: bool, wish: Wish, page: &mut Page<'_>) {
    let text = page.say(id);
    page.choice(ui, (&text, on), || wish);
}

/// What can be let happen, each with its digit.
fn turns(ui: &mut Ui, turns: &[DeedView], page: &mut Page<'_>) {
    subheading(ui, &page.say("window-room-turns"));
    if turns.is_empty() {
        aside(ui, &page.say("window-room-no-turns"));
    }
    for (number, turn) in (1..).zip(turns) {
        let text = both::each([&turn.label], |[label]| format!("{number}  {label}"));
        page.button(ui, &text, || Wish::Do(Command::Do(turn.line.clone())));
    }
}

/// Who sits at the drill, and how; the run keeps it.
fn seats(ui: &mut Ui, desk: &Desk, page: &mut Page<'_>) {
    subheading(ui, &page.say("window-room-seats"));
    let id = Id::new("seats");
    let kept: Option<(String, Option<Seated>)> = ui.data(|data| data.get_temp(id));
    let (mut names, mut seated) = kept.unwrap_or_default();
    let field = TextEdit::singleline(&mut names)
        .password(true)
        .desired_width(f32::INFINITY)
        .hint_text(both::in_one_line(&page.say("window-room-names")));
    let field = ui.add(field);
    let entered = field.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
    ui.horizontal_wrapped(|ui| {
        for one in Seated::ALL {
            let text = page.say(&format!("window-seated-{}", one.name()));
            if choice(ui, &text, seated == Some(one)).clicked() {
                seated = Some(one);
            }
        }
    });
    let sign = page.say("window-room-sign");
    let sign = page.button(ui, &sign, || Wish::Sign(names.clone(), seated));
    if entered {
        // Where Enter was pressed on the names, the keyboard goes on from here.
        sign.request_focus();
    }
    if let Some(kept) = &desk.kept {
        aside(ui, kept);
    }
    ui.data_mut(|data| data.insert_temp(id, (names, seated)));
}

/// What the light can be put on, a group of things at a time; the longest is folded until it is wanted.
fn light(ui: &mut Ui, street: &StreetView, desk: &Desk, page: &mut Page<'_>) {
    subheading(ui, &page.say("window-room-light"));
    let people = street.people.iter().map(|p| (&p.id, &p.label));
    let neighbors = street.neighbors.iter().map(|n| (&n.id, &n.label));
    let poles = street.poles.iter().map(|p| (&p.id, &p.label));
    let things = street.appliances.iter().map(|a| (&a.id, &a.label));
    let equipment = street.equipment.iter().map(|e| (&e.id, &e.label));
    spots(ui, "window-room-light-people", people, desk, page);
    spots(ui, "window-room-light-equipment", equipment, desk, page);
    let along = neighbors.chain(poles);
    spots(ui, "window-room-light-street", along, desk, page);
    spots(ui, "window-room-light-house", things, desk, page);
}

/// A group of things to put the light on, folded unless it is lit.
fn spots<'a>(
    ui: &mut Ui,
    id: &str,
    things: impl Iterator<Item = (&'a String, &'a String)>,
    desk: &Desk,
    page: &mut Page<'_>,
) {
    let things: Vec<_> = things.collect();
    let lit = |id: &String| desk.wall.light.as_ref() == Some(id);
    if things.is_empty() {
        return;
    }
    let title = both::written(&page.say(id), fonts::regular(15.5), theme::CREAM);
    CollapsingHeader::new(title)
        .id_salt(id)
        .default_open(things.len() <= FEW || things.iter().any(|(id, _)| lit(id)))
        .show(ui, |ui| {
            ui.horizontal_wrapped(|ui| {
                for (id, label) in things {
                    page.choice(ui, (label, lit(id)), || Wish::Shine(id.clone()));
                }
            });
        });
}

/// So many things of a group are shown at once.
const FEW: usize = 6;

/// What stands in the column while the drill is held for the room.
pub(crate) fn hold(ui: &mut Ui, page: &mut Page<'_>) {
    card(ui, theme::LEAD, |ui| {
        let title = page.say("window-room-held");
        ui.label(both::written(&title, fonts::bold(28.0), theme::LEAD));
        heading(ui, &page.say("window-room-look-here"));
    });
    ui.add_space(8.0);
    let on = page.say("window-asked-on");
    page.lead(ui, &on, || Wish::Hold);
}
