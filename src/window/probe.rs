//! Finds out whether a window can be had, before the engine starts and could stop the program.
//!
//! It asks the graphics library for an adapter; the software adapter counts.
//! Whether there is a display is known to the caller, who reads the environment.
//! It does not cover an adapter that is lost later.

use std::fmt;

use bevy::render::settings::Backends;
use bevy::tasks::block_on;

/// Why no window can be had.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoDisplay {
    /// The environment names no display.
    Display,
    /// No graphics adapter answers, not even one in software.
    Adapter,
}

impl NoDisplay {
    /// Message id of the sentence that says so and what helps.
    pub fn message_id(self) -> &'static str {
        match self {
            Self::Display => "window-no-display",
            Self::Adapter => "window-no-adapter",
        }
    }
}

impl fmt::Display for NoDisplay {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.message_id())
    }
}

/// Asks for an adapter and says through which interfaces it answers.
/// The native ones come first: asking for the others as well costs time and prints warnings of libraries that nobody needs.
///
/// # Errors
/// When none answers.
pub fn probe() -> Result<Backends, NoDisplay> {
    let wanted = Backends::from_env();
    let tries = wanted.map_or(vec![Backends::PRIMARY, Backends::SECONDARY], |only| {
        vec![only]
    });
    tries
        .into_iter()
        .find(|backends| answers(*backends))
        .ok_or(NoDisplay::Adapter)
}

fn answers(backends: Backends) -> bool {
    let mut descriptor = wgpu::InstanceDescriptor::new_without_display_handle_from_env();
    descriptor.backends = backends;
    let instance = wgpu::Instance::new(descriptor);
    block_on(instance.request_adapter(&wgpu::RequestAdapterOptions::default())).is_ok()
}
