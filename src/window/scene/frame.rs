//! The frame that fits the plan into the window, and the room that bars and column leave to it.
//!
//! The plan keeps its proportions and stands on the lower edge of its room; what is left over is sky.

use bevy::math::{Rect, Vec2};

/// Width of the plan.
const WIDTH: f32 = 1120.0;
/// Height of the plan.
const HEIGHT: f32 = 720.0;
/// Height of the bar on top, points.
pub(crate) const TOP_BAR: f32 = 54.0;
/// Height of the bar below, points.
pub(crate) const BOTTOM_BAR: f32 = 92.0;

/// Fits the plan into the window.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Frame {
    /// The window's size in pixels of the engine's logical kind.
    window: Vec2,
    /// The part of it that the scene has.
    pub(crate) rect: Rect,
    /// Pixels per unit of the plan.
    pub(crate) scale: f32,
    /// The plan's upper left corner, pixels from the window's.
    origin: Vec2,
}

impl Frame {
    /// The frame of a drill in a window of this size: bars above and below, the column at the right.
    pub(crate) fn new(window: Vec2) -> Self {
        let right = Self::column(window.x);
        let rect = Rect::new(
            0.0,
            TOP_BAR,
            (window.x - right).max(1.0),
            (window.y - BOTTOM_BAR).max(TOP_BAR + 1.0),
        );
        Self::fit(window, rect)
    }

    /// The frame beside the shelf: the house large in the right half, the rest of the plan cut by the window.
    pub(crate) fn beside(window: Vec2) -> Self {
        let rect = Rect::from_corners(Vec2::ZERO, window.max(Vec2::ONE));
        let scale = rect.height() / (HEIGHT * 0.98);
        let origin = Vec2::new(
            rect.width() * 0.74 - 640.0 * scale,
            rect.height() - HEIGHT * scale,
        );
        Self {
            window,
            rect,
            scale,
            origin,
        }
    }

    /// Width of the column at the right in a window of this width.
    pub(crate) fn column(window_width: f32) -> f32 {
        (window_width * 0.33).clamp(340.0, 600.0)
    }

    fn fit(window: Vec2, rect: Rect) -> Self {
        let scale = (rect.width() / WIDTH).min(rect.height() / HEIGHT);
        let x = rect.min.x + (rect.width() - WIDTH * scale) / 2.0;
        let y = rect.max.y - HEIGHT * scale;
        Self {
            window,
            rect,
            scale,
            origin: Vec2::new(x, y),
        }
    }

    /// Pixels from the window's upper left corner.
    pub(crate) fn pixel(&self, at: Vec2) -> Vec2 {
        self.origin + at * self.scale
    }

    /// The engine's units: from the window's middle, y upward.
    pub(super) fn world(&self, at: Vec2) -> Vec2 {
        let p = self.pixel(at);
        Vec2::new(p.x - self.window.x / 2.0, self.window.y / 2.0 - p.y)
    }

    /// The scene's part of the window in the plan's units.
    pub(super) fn bounds(&self) -> Rect {
        Rect::from_corners(
            (self.rect.min - self.origin) / self.scale,
            (self.rect.max - self.origin) / self.scale,
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_whole_plan_fits_into_small_and_large_windows() {
        for (w, h) in [
            (1024.0, 640.0),
            (1280.0, 720.0),
            (1920.0, 1080.0),
            (3840.0, 2160.0),
        ] {
            let frame = Frame::new(Vec2::new(w, h));
            for corner in [Vec2::ZERO, Vec2::new(WIDTH, HEIGHT)] {
                let p = frame.pixel(corner);
                let rect = frame.rect.inflate(0.5);
                assert!(rect.contains(p), "{w}x{h}: {p} outside {rect:?}");
            }
        }
    }
}
