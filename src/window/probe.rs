//! Finds out whether a display and an adapter can be had, before the engine starts and could stop the program.
//!
//! It asks the graphics library for an adapter; the software adapter counts.
//! Whether a display is named is known to the caller, who reads the environment; whether it answers is asked here.
//! It does not cover an adapter that is lost later.

use bevy::render::settings::Backends;
use bevy::tasks::block_on;

use super::error::WindowError;

/// Whether the display that the environment names answers; the engine stops the program where it doesn't.
#[cfg(target_os = "linux")]
pub(super) fn display_answers() -> bool {
    x11rb::connect(None).is_ok()
}

/// Other systems have one display, and no name for it.
#[cfg(not(target_os = "linux"))]
pub(super) fn display_answers() -> bool {
    true
}

/// Asks for an adapter and says through which interfaces it answers.
/// The native ones come first: asking for the others as well costs time and prints warnings of libraries that nobody needs.
pub(super) fn probe() -> Result<Backends, WindowError> {
    let wanted = Backends::from_env();
    let tries = wanted.map_or(vec![Backends::PRIMARY, Backends::SECONDARY], |only| {
        vec![only]
    });
    tries
        .into_iter()
        .find(|backends| answers(*backends))
        .ok_or(WindowError::NoAdapter)
}

fn answers(backends: Backends) -> bool {
    let mut descriptor = wgpu::InstanceDescriptor::new_without_display_handle_from_env();
    descriptor.backends = backends;
    let instance = wgpu::Instance::new(descriptor);
    block_on(instance.request_adapter(&wgpu::RequestAdapterOptions::default())).is_ok()
}
