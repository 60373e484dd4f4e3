//! The shelf: what this is for, the cautions once per start, the drills.
//!
//! It does not cover records.

use bevy_egui::egui::{Align, Atom, Button, Rect, RichText, ScrollArea, Ui, vec2};

use crate::session::view::{DrillCard, LessonCard, ShelfView};
use crate::session::{Command, Practice};
use crate::window::desk::Desk;
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::theme;

use super::{Page, above, aside, body, card, heading, subheading};

/// What is drawn by chance in a drill that is opened from the shelf.
/// One value, so that a class sees the same drill on every machine.
pub(super) const SEED: u64 = 1;

/// The cautions, until they have been read.
pub(crate) fn cautions(ui: &mut Ui, view: &ShelfView, page: &mut Page<'_>) {
    heading(ui, &view.cautions_title);
    above(
        ui,
        "cautions",
        page,
        |ui, _| {
            for caution in &view.cautions {
                ui.horizontal_top(|ui| {
                    ui.label(
                        RichText::new("•")
                            .font(fonts::bold(15.5))
                            .color(theme::LEAD.egui()),
                    );
                    ui.vertical(|ui| body(ui, caution));
                });
            }
        },
        |ui, page| {
            ui.add_space(4.0);
            page.lead(ui, &view.cautions_accept, || Wish::Accept);
        },
    );
}

/// The lessons and drills of one track, the drills under how hard each is; one is unfolded, the first drill if none was chosen.
/// In a narrow window what starts a drill stands right below its name.
pub(crate) fn drills(
    ui: &mut Ui,
    view: &ShelfView,
    (desk, narrow): (&Desk, bool),
    page: &mut Page<'_>,
) {
    let track = desk.track.as_deref();
    let track = track.or_else(|| view.tracks.first().map(|t| t.name.as_str()));
    tracks(ui, view, track, page);
    let own = |drill: &&DrillCard| track.is_some_and(|t| drill.tracks.iter().any(|d| d == t));
    let drills: Vec<&DrillCard> = view.drills.iter().filter(own).collect();
    let chosen = desk.chosen.as_deref();
    let known = |name: &str| {
        let mut lessons = view
            .lessons
            .iter()
            .filter(|l| Some(l.track.as_str()) == track);
        drills.iter().any(|d| d.name == name) || lessons.any(|l| l.name == name)
    };
    let known = chosen.filter(|name| known(name));
    let chosen = known.or_else(|| drills.first().map(|d| d.name.as_str()));
    let mut level = "";
    ScrollArea::vertical()
        .id_salt("drills")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = 5.0;
            lessons(ui, view, track, desk, page);
            for drill in drills {
                let top = ui.cursor().top();
                if drill.level != level {
                    level = &drill.level;
                    subheading(ui, level);
                }
                if chosen == Some(drill.name.as_str()) {
                    unfolded(ui, top, page, |ui, page| one(ui, drill, narrow, page));
                } else {
                    folded(ui, drill, page);
                }
            }
        });
}

/// Whom the drills are for, side by side; the one that is shown is bold and underlined.
fn tracks(ui: &mut Ui, view: &ShelfView, shown: Option<&str>, page: &mut Page<'_>) {
    ui.horizontal_wrapped(|ui| {
        for track in &view.tracks {
            let label = RichText::new(&track.title);
            let (label, fill) = if shown == Some(track.name.as_str()) {
                let label = label.font(fonts::bold(15.0)).underline();
                (label.color(theme::LEAD.egui()), theme::RAISED)
            } else {
                let label = label.font(fonts::regular(15.0));
                (label.color(theme::CREAM.egui()), theme::INK)
            };
            let response = ui.add(Button::new(label).fill(fill.egui()));
            page.on(&response, || Wish::Track(track.name.clone()));
        }
    });
    ui.add_space(4.0);
}

/// The lessons of a track; one that was chosen is unfolded into its parts.
fn lessons(ui: &mut Ui, view: &ShelfView, track: Option<&str>, desk: &Desk, page: &mut Page<'_>) {
    let own: Vec<&LessonCard> = view
        .lessons
        .iter()
        .filter(|l| Some(l.track.as_str()) == track)
        .collect();
    if !own.is_empty() {
        subheading(ui, &view.lessons_title);
    }
    for lesson in own {
        if desk.chosen.as_deref() == Some(lesson.name.as_str()) {
            let top = ui.cursor().top();
            unfolded(ui, top, page, |ui, page| plan(ui, lesson, page));
        } else {
            row(
                ui,
                [&lesson.title, &lesson.minutes, &lesson.about],
                &lesson.name,
                page,
            );
        }
    }
}

/// What is done in a lesson, part by part, with a button for each drill.
fn plan(ui: &mut Ui, lesson: &LessonCard, page: &mut Page<'_>) {
    heading(ui, &lesson.title);
    body(ui, &lesson.about);
    let teach = page.say("window-teach");
    page.lead(ui, &teach, || Wish::Teach(lesson.name.clone()));
    for sitting in &lesson.sittings {
        subheading(ui, &format!("{} · {}", sitting.title, sitting.minutes));
        for part in &sitting.parts {
            ui.horizontal_wrapped(|ui| {
                aside(ui, &part.minutes);
                match &part.drill {
                    Some((drill, practice)) => {
                        let (drill, practice) = (drill.clone(), *practice);
                        page.button(ui, &part.text, || {
                            Wish::Do(Command::Open {
                                drill,
                                practice,
                                seed: SEED,
                            })
                        });
                    }
                    None => body(ui, &part.text),
                }
            });
        }
    }
}

/// A drill of which only the title shows; pressing it unfolds it.
fn folded(ui: &mut Ui, drill: &DrillCard, page: &mut Page<'_>) {
    row(
        ui,
        [&drill.title, &drill.minutes, &drill.summary],
        &drill.name,
        page,
    );
}

/// A line with title and minutes, what it is about on hovering; pressing it unfolds what has this name.
fn row(ui: &mut Ui, texts: [&str; 3], name: &str, page: &mut Page<'_>) {
    let [title, minutes, about] = texts;
    let title = RichText::new(title)
        .font(fonts::bold(16.0))
        .color(theme::CREAM.egui());
    let facts = RichText::new(minutes)
        .font(fonts::regular(13.5))
        .color(theme::MUTED.egui());
    let size = vec2(ui.available_width(), 34.0);
    let button = Button::new((title, Atom::grow(), facts))
        .fill(theme::RAISED.egui())
        .truncate();
    // By its name it is told from the row that takes its place once it is unfolded.
    let response = ui.push_id(name, |ui| ui.add_sized(size, button)).inner;
    page.on(&response, || Wish::Choose(name.to_owned()));
    response.on_hover_text(about);
}

/// What is unfolded, on a card; one that has just come up is brought into sight from `top` on, where what heads it begins.
fn unfolded(ui: &mut Ui, top: f32, page: &mut Page<'_>, add: impl FnOnce(&mut Ui, &mut Page<'_>)) {
    let comes = page.arrives();
    card(ui, theme::LEAD, |ui| add(ui, page));
    if comes {
        // Of a card that is higher than what is seen, the upper part is what counts.
        let bottom = ui.cursor().top();
        let high = bottom - top > ui.clip_rect().height() - 8.0;
        let x = ui.min_rect().x_range();
        let top = top + 2.0;
        let part = Rect::from_x_y_ranges(x, top..=if high { top } else { bottom });
        ui.scroll_to_rect(part, high.then_some(Align::TOP));
    }
}

fn one(ui: &mut Ui, drill: &DrillCard, narrow: bool, page: &mut Page<'_>) {
    heading(ui, &drill.title);
    // Where not all of it can be seen at once, the warning and the way in come first.
    if narrow {
        note(ui, drill);
        ways(ui, drill, page);
    }
    body(ui, &drill.summary);
    aside(ui, &drill.facts);
    if !narrow {
        note(ui, drill);
        ways(ui, drill, page);
    }
}

/// What may be hard to see in a drill.
fn note(ui: &mut Ui, drill: &DrillCard) {
    if !drill.content_note.is_empty() {
        ui.label(
            RichText::new(&drill.content_note)
                .font(fonts::regular(14.0))
                .color(theme::YELLOW.egui()),
        );
    }
}

/// The ways in which a drill is opened.
fn ways(ui: &mut Ui, drill: &DrillCard, page: &mut Page<'_>) {
    ui.horizontal_wrapped(|ui| {
        let open = |practice, seed| {
            let drill = drill.name.clone();
            move || {
                Wish::Do(Command::Open {
                    drill,
                    practice,
                    seed,
                })
            }
        };
        page.lead(ui, &drill.open, open(Practice::Coached, SEED));
        let another = page.say("window-another");
        let coached = open(Practice::Coached, drill.another_seed);
        page.button(ui, &another, coached);
        let guided = page.say("window-open-guided");
        page.button(ui, &guided, open(Practice::Guided, SEED))
            .on_hover_text(page.say("window-guided-means"));
        let assessed = page.say("window-open-assessed");
        page.button(ui, &assessed, open(Practice::Assessed, SEED))
            .on_hover_text(page.say("window-assessed-means"));
    });
}
