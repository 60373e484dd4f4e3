//! Screens: which panels stand where. Shelf, drill, debrief.
//!
//! One egui pass lays out the screen for the views, in frames where something may have changed (see [`super::standing`]); what was wished goes out as messages.
//! Frames come only after an input, after a change, or while something moves: at rest the window uses next to no processor time.
//! It does not cover what panels say: see [`super::panels`].

mod debrief;
mod drill;
mod lesson;
#[cfg(test)]
#[path = "../../../tests/window/rehearsal.rs"]
mod rehearsal;
mod shelf;

use bevy::prelude::*;
use bevy::window::RequestRedraw;
use bevy_egui::egui;
use bevy_egui::{
    EguiContexts, EguiInput, EguiPostUpdateSet, EguiPreUpdateSet, EguiPrimaryContextPass,
};

use super::desk::{Desk, Face, Sheet};
use super::fonts;
use super::input::Typing;
use super::link::{Open, Pulse, Views, Wish};
use super::mirror;
use super::panels::{Page, branches, faults, room, terms, words};
use super::scene::frame::is_narrow;
use super::scene::{Drawn, Glide};
use super::theme;

/// Whether another frame is wanted soon.
#[derive(Resource, Debug, Default)]
pub(super) struct Again(pub(super) bool);

pub(super) fn plugin(app: &mut App) {
    app.init_resource::<Again>()
        .add_systems(EguiPrimaryContextPass, draw)
        .add_systems(
            PreUpdate,
            quiet
                .after(EguiPreUpdateSet::ProcessInput)
                .before(EguiPreUpdateSet::BeginPass),
        )
        .add_systems(PostUpdate, rest.after(EguiPostUpdateSet::PostProcessOutput));
}

/// What every screen is laid out from.
pub(super) struct Scene<'a> {
    pub(super) views: &'a Views,
    pub(super) desk: &'a Desk,
    pub(super) drawn: &'a Drawn,
    /// Whether there is too little room for all things side by side.
    pub(super) narrow: bool,
}

impl<'a> Scene<'a> {
    /// A window of this size in points.
    fn new(views: &'a Views, desk: &'a Desk, drawn: &'a Drawn, size: egui::Vec2) -> Self {
        Self {
            views,
            desk,
            drawn,
            narrow: is_narrow(size.x, size.y),
        }
    }

    /// Whether two tries of the drill lie side by side.
    fn compares(&self) -> bool {
        self.views.compares(self.desk)
    }
}

fn draw(
    mut contexts: EguiContexts<'_, '_>,
    (open, views, desk, drawn): (Res<'_, Open>, Res<'_, Views>, Res<'_, Desk>, Res<'_, Drawn>),
    mut wishes: MessageWriter<'_, Wish>,
    (mut again, mut typing): (ResMut<'_, Again>, ResMut<'_, Typing>),
    mut seen: Local<'_, Option<u32>>,
) -> Result {
    let ctx = contexts.ctx_mut()?;
    let Some(arrivals) = *seen else {
        fonts::dress(ctx);
        // Fonts come in with the next pass.
        *seen = Some(u32::MAX);
        again.0 = true;
        return Ok(());
    };
    let say = |id: &str| open.0.say(id);
    let mut page = Page::new(&say, arrivals != desk.arrivals);
    *seen = Some(desk.arrivals);
    let zoom = desk.look().zoom;
    if (ctx.zoom_factor() - zoom).abs() > f32::EPSILON {
        ctx.set_zoom_factor(zoom);
        // The size comes in with the next pass.
        again.0 = true;
        return Ok(());
    }
    let scene = Scene::new(&views, &desk, &drawn, ctx.content_rect().size());
    lay_out(ctx, &scene, &mut page);
    // A thing that is new takes its look from what had its id in the pass before, so a pass follows each change.
    again.0 = !page.out.is_empty() || views.is_changed() || desk.is_changed();
    typing.0 = ctx.text_edit_focused();
    wishes.write_batch(page.out);
    Ok(())
}

/// Lays out the screen that the views ask for.
fn lay_out(ctx: &egui::Context, scene: &Scene<'_>, page: &mut Page<'_>) {
    mirror::begin(ctx, scene.views.from_right);
    let mut ui = egui::Ui::new(
        ctx.clone(),
        egui::Id::new("window"),
        egui::UiBuilder::new()
            .layer_id(egui::LayerId::background())
            .max_rect(ctx.content_rect()),
    );
    if let Some(again) = &scene.views.again {
        drill::again(&mut ui, scene, again, page);
    } else if scene.views.debrief.is_some() {
        debrief::screen(&mut ui, scene, page);
    } else if scene.views.street.is_some() && scene.desk.accepted {
        drill::screen(&mut ui, scene, page);
    } else if let (Some(view), Some(teaching)) = (&scene.views.lesson, &scene.desk.teaching) {
        lesson::screen(&mut ui, scene, (view, teaching), page);
    } else {
        shelf::screen(&mut ui, scene, page);
    }
    if let Some(view) = &scene.views.faults {
        faults::sheet(ctx, view);
    }
    // Screen readers say it when the window comes up.
    let title = page.say("window-title");
    ctx.accesskit_node_builder(egui::accesskit_root_id(), |root| root.set_label(title));
    mirror::finish(ctx);
}

/// The sheet that lies on the desk, if one does that a screen of any kind can show; says whether it does.
pub(super) fn sheet(ui: &mut egui::Ui, scene: &Scene<'_>, page: &mut Page<'_>) -> bool {
    match scene.desk.sheet {
        Some(Sheet::Keys) => words::keys(ui, page),
        Some(Sheet::Terms) => terms::sheet(ui, &scene.views.terms, page),
        Some(Sheet::Room) => room::sheet(ui, scene.views, scene.desk, page),
        Some(Sheet::Branches) => match &scene.views.branches {
            Some(view) => branches::sheet(ui, view, page),
            None => return false,
        },
        Some(Sheet::Words) | None => return false,
    }
    true
}

/// The bar of a narrow window: what it can show, the one that is shown marked.
pub(super) fn faces(
    ui: &mut egui::Ui,
    scene: &Scene<'_>,
    faces: &[(Face, &str)],
    page: &mut Page<'_>,
    at_end: impl FnOnce(&mut egui::Ui, &mut Page<'_>),
) {
    let bar = egui::Panel::top("faces").exact_size(scene.desk.look().top_bar());
    let bar = bar.frame(edge(8)).show_separator_line(false);
    bar.show(ui, |ui| {
        ui.horizontal(|ui| {
            for (face, id) in faces {
                let shown = scene.desk.face == *face;
                let text = page.say(id);
                page.choice(ui, (&text, shown), || Wish::Face(*face));
            }
            at_end(ui, page);
        });
    });
}

/// Asks for another frame when a wish waits or something moves; the toolkit asks by itself for what follows from an input.
fn rest(
    mut requests: MessageWriter<'_, RequestRedraw>,
    pulse: Res<'_, Pulse>,
    desk: Res<'_, Desk>,
    (again, glide): (Res<'_, Again>, Res<'_, Glide>),
) {
    if again.0 || glide.0 || (pulse.left_s > 0.0 && !desk.still) {
        requests.write(RequestRedraw);
    }
}

/// Takes out the news, told to the toolkit in every frame, that Shift, Control and the like stand as they did.
/// It counts as an input, an input asks for a frame, and a frame tells it again: the window would never rest.
fn quiet(mut inputs: Query<'_, '_, &mut EguiInput>, mut last: Local<'_, Option<egui::Modifiers>>) {
    for mut input in &mut inputs {
        input.events.retain(|event| {
            if let egui::Event::ModifiersChanged(now) = event {
                last.replace(*now) != Some(*now)
            } else {
                true
            }
        });
    }
}

/// The frame of a panel at the window's edge.
pub(super) fn edge(margin: i8) -> egui::Frame {
    egui::Frame::new()
        .fill(theme::PANEL.egui())
        .inner_margin(egui::Margin::same(margin))
}
