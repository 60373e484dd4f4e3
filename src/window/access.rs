//! Screen readers: what they press and where they go is handed to the toolkit, whose tree of controls they read.
//!
//! The toolkit sends its tree out by itself; requests do not come back without this.
//! Things on the scene have nodes of their own where they can be pressed; all else is in the list of words (F6).
//! Checked with the accessibility bus of Linux; it does not cover other systems, where nothing was tried.

use std::time::Duration;

use bevy::a11y::{AccessibilityRequested, ActionRequest};
use bevy::prelude::*;
use bevy::winit::{UpdateMode, WinitSettings};
use bevy_egui::{EguiInput, EguiPreUpdateSet, egui};

/// How long the window may rest while somebody listens: a request does not wake it.
const LISTEN: Duration = Duration::from_millis(50);

pub(super) fn plugin(app: &mut App) {
    app.add_message::<ActionRequest>();
    app.add_systems(
        PreUpdate,
        answer
            .after(EguiPreUpdateSet::ProcessInput)
            .before(EguiPreUpdateSet::BeginPass),
    )
    .add_systems(Update, wake.run_if(resource_exists::<WinitSettings>));
}

/// Hands requests to the toolkit.
fn answer(
    mut requests: MessageReader<'_, '_, ActionRequest>,
    mut inputs: Query<'_, '_, &mut EguiInput>,
) {
    for request in requests.read() {
        for mut input in &mut inputs {
            let event = egui::Event::AccessKitActionRequest((**request).clone());
            input.events.push(event);
        }
    }
}

/// Looks for requests often, from when somebody listens.
fn wake(
    requested: Option<Res<'_, AccessibilityRequested>>,
    mut settings: ResMut<'_, WinitSettings>,
    mut awake: Local<'_, bool>,
) {
    if !*awake && requested.is_some_and(|requested| requested.get()) {
        *awake = true;
        settings.focused_mode = UpdateMode::reactive_low_power(LISTEN);
        settings.unfocused_mode = UpdateMode::reactive_low_power(LISTEN);
    }
}
