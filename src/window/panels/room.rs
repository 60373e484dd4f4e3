//! What an instructor needs in front of a room: how the wall shows the drill, what to point at, what to let happen.
//!
//! Everything here can be done by keys: Tab walks through it, and the turns of events have digits while it is open.
//! Names are typed here and shown nowhere else in the window: on a wall they stay hidden.

use bevy_egui::egui::{Button, Id, Key, RichText, ScrollArea, TextEdit, Ui};

use crate::session::view::{DeedView, StreetView};
use crate::session::{Command, Seated};
use crate::window::desk::Desk;
use crate::window::fonts;
use crate::window::link::{Views, Wish};
use crate::window::theme;

use super::{Page, aside, body, card, heading, subheading, words};

/// The sheet.
pub(crate) fn sheet(ui: &mut Ui, views: &Views, desk: &Desk, page: &mut Page<'_>) {
    words::head(ui, "window-room", page);
    ScrollArea::vertical()
        .id_salt("room")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            if desk.teaching.is_some() && views.street.is_some() {
                subheading(ui, &page.say("window-room-lesson"));
                let back = page.say("window-room-to-lesson");
                page.button(ui, &back, || Wish::Do(Command::Leave));
            }
            wall(ui, views, desk, page);
            if let Some(street) = &views.street {
                turns(ui, &views.turns, page);
                light(ui, street, desk, page);
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
        page.button(ui, "−", || Wish::Size(false));
        body(ui, &format!("{} %", desk.size.percent()));
        page.button(ui, "+", || Wish::Size(true));
    });
}

/// A button that says by a tick and by its edge whether it is on.
fn switch(ui: &mut Ui, id: &str, on: bool, wish: Wish, page: &mut Page<'_>) {
    let text = if on {
        format!("✔ {}", page.say(id))
    } else {
        page.say(id)
    };
    let response = ui.add(Button::selectable(on, text));
    page.on(&response, || wish);
}

/// What can be let happen, each with its digit.
fn turns(ui: &mut Ui, turns: &[DeedView], page: &mut Page<'_>) {
    subheading(ui, &page.say("window-room-turns"));
    if turns.is_empty() {
        aside(ui, &page.say("window-room-no-turns"));
    }
    for (number, turn) in (1..).zip(turns) {
        let text = format!("{number}  {}", turn.label);
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
        .hint_text(page.say("window-room-names"));
    let field = ui.add(field);
    let entered = field.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
    ui.horizontal_wrapped(|ui| {
        for one in Seated::ALL {
            let text = page.say(&format!("window-seated-{}", one.name()));
            if ui
                .add(Button::selectable(seated == Some(one), text))
                .clicked()
            {
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

/// What the light can be put on.
fn light(ui: &mut Ui, street: &StreetView, desk: &Desk, page: &mut Page<'_>) {
    subheading(ui, &page.say("window-room-light"));
    let people = street.people.iter().map(|p| (&p.id, &p.label));
    let neighbors = street.neighbors.iter().map(|n| (&n.id, &n.label));
    let poles = street.poles.iter().map(|p| (&p.id, &p.label));
    let things = street.appliances.iter().map(|a| (&a.id, &a.label));
    let equipment = street.equipment.iter().map(|e| (&e.id, &e.label));
    let all = equipment
        .chain(people)
        .chain(neighbors)
        .chain(poles)
        .chain(things);
    ui.horizontal_wrapped(|ui| {
        for (id, label) in all {
            let on = desk.wall.light.as_deref() == Some(id.as_str());
            let response = ui.add(Button::selectable(on, label.as_str()));
            page.on(&response, || Wish::Shine(id.clone()));
        }
    });
}

/// What stands in the column while the drill is held for the room.
pub(crate) fn hold(ui: &mut Ui, page: &mut Page<'_>) {
    card(ui, theme::LEAD, |ui| {
        let title = RichText::new(page.say("window-room-held")).font(fonts::bold(28.0));
        ui.label(title.color(theme::LEAD.egui()));
        heading(ui, &page.say("window-room-look-here"));
    });
    ui.add_space(8.0);
    let on = page.say("window-asked-on");
    page.lead(ui, &on, || Wish::Hold);
}
