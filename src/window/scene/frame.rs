//! The frame that fits the plan into the window, and the room that bars and columns leave to it.
//!
//! The plan keeps its proportions and stands on the lower edge of its room; what is left over is sky, and in a tall room earth as well.
//! Panels measure in points, the scene in the engine's pixels; a point is as many pixels as the text is enlarged.

use bevy::math::{Rect, Vec2};

use super::sight::Sight;

/// Width and height of the plan.
pub(super) const PLAN: Vec2 = Vec2::new(1120.0, 720.0);
/// Height of the bar on top in one language and in two, points.
const TOP_BAR: [f32; 2] = [54.0, 58.0];
/// Height of the bar below in one language and in two, points.
const BOTTOM_BAR: [f32; 2] = [92.0, 128.0];
/// Size of a window whose texts have their usual size, points; in a larger one they are larger, unless somebody chose their size.
const USUAL: Vec2 = Vec2::new(1280.0, 720.0);
/// Least size of a window in points that speaks two languages to a room, if its pixels allow it: what is nearer to the eye would be smaller.
const AFAR: Vec2 = Vec2::new(1024.0, 576.0);
/// Height of the legend below the scene of a narrow window, points.
pub(crate) const LEGEND_BAR: f32 = 50.0;
/// Least width and height in points for scene, column and bars side by side.
const LEAST: Vec2 = Vec2::new(900.0, 470.0);

/// How much of the plan's upper end is nothing but sky.
const ALL_SKY: f32 = 144.0;
/// How much higher than the plan a room may be until it is tall, and what share of the height above that is earth.
const TALL: f32 = 1.25;
const EARTH: f32 = 0.45;
/// The most by which a place is brought nearer in a tall room, and from which height to which things stand.
const MOST_NEAR: f32 = 1.5;
const AROUND: (f32, f32) = (150.0, 690.0);
/// The most by which the scene's words are larger in a tall room.
const MOST_WORDS: f32 = 1.45;

/// How large texts are, and in how many languages they stand beside the scene.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Look {
    /// Pixels to a point.
    pub(crate) zoom: f32,
    /// Whether every text is in two languages.
    pub(crate) second: bool,
}

impl Default for Look {
    fn default() -> Self {
        Self {
            zoom: 1.0,
            second: false,
        }
    }
}

impl Look {
    /// How much texts are enlarged as long as nobody chose their size: a large window is looked at from farther away.
    pub(crate) fn of_window(window: Vec2) -> f32 {
        (window / USUAL).min_element().max(1.0)
    }

    /// How much texts are enlarged at least for a room that reads from afar: the larger the window, the larger they are.
    pub(crate) fn afar(window: Vec2) -> f32 {
        (window / AFAR).min_element().max(1.0)
    }

    /// Width of the column in a window of this width, points.
    /// With two languages the bars are higher, and what the scene can't fill for that is the column's.
    pub(crate) fn column(self, window_width: f32) -> f32 {
        if self.second {
            (window_width * 0.42).clamp(380.0, 760.0)
        } else {
            (window_width * 0.33).clamp(340.0, 600.0)
        }
    }

    /// Height of the bar on top, points.
    pub(crate) fn top_bar(self) -> f32 {
        TOP_BAR[usize::from(self.second)]
    }

    /// Height of the bar below, points.
    pub(crate) fn bottom_bar(self) -> f32 {
        BOTTOM_BAR[usize::from(self.second)]
    }
}

/// Whether a window of this size in points has too little room for scene, column and bars side by side.
pub(crate) fn is_narrow(width: f32, height: f32) -> bool {
    width < LEAST.x || height < LEAST.y
}

/// Fits the plan into the window.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Frame {
    /// The window's size in pixels of the engine's logical kind.
    window: Vec2,
    /// The part of it that the scene has.
    pub(crate) rect: Rect,
    /// Pixels per unit of the plan.
    pub(crate) scale: f32,
    /// Pixels to a point of the panels.
    zoom: f32,
    /// The plan's upper left corner, pixels from the window's.
    origin: Vec2,
    /// What part of the plan is seen.
    sight: Sight,
    /// How much earth there is below the plan when all of it is seen, pixels.
    earth: f32,
    /// How far right of where panels find it the scene is drawn, pixels: the columns stand at its left in a layout from the right.
    shift: f32,
}

impl Frame {
    /// The frame of a drill in a window of this size: bars above and below, the columns at the right.
    /// In a narrow window it has everything between the bar on top and the legend.
    pub(crate) fn new(window: Vec2, look: Look) -> Self {
        let points = window / look.zoom;
        let (right, bottom) = if is_narrow(points.x, points.y) {
            (0.0, LEGEND_BAR)
        } else {
            (look.column(points.x), look.bottom_bar())
        };
        let top = look.top_bar() * look.zoom;
        let rect = Rect::new(
            0.0,
            top,
            (window.x - right * look.zoom).max(1.0),
            (window.y - bottom * look.zoom).max(top + 1.0),
        );
        Self::fit(window, rect, look.zoom)
    }

    /// Whether scene, column and bars are shown one at a time.
    pub(super) fn is_narrow(&self) -> bool {
        let points = self.window / self.zoom;
        is_narrow(points.x, points.y)
    }

    /// The frame beside the shelf: the house large in the half that the shelf leaves, the rest of the plan cut by the window.
    pub(crate) fn beside(window: Vec2, from_right: bool) -> Self {
        let rect = Rect::from_corners(Vec2::ZERO, window.max(Vec2::ONE));
        let scale = rect.height() / (PLAN.y * 0.98);
        let origin = Vec2::new(
            rect.width() * if from_right { 0.26 } else { 0.74 } - 640.0 * scale,
            rect.height() - PLAN.y * scale,
        );
        Self {
            window,
            rect,
            scale,
            zoom: 1.0,
            origin,
            sight: Sight::WHOLE,
            earth: 0.0,
            shift: 0.0,
        }
    }

    /// The same frame drawn at the other side of the window, with its own sides kept.
    pub(super) fn at_the_right(self) -> Self {
        let Rect { min, max } = self.rect;
        Self {
            shift: self.window.x - max.x - min.x,
            ..self
        }
    }

    /// The same frame below a band of some height, points; for that the sky above all things is left out.
    pub(super) fn below(self, band: f32) -> Self {
        let mut rect = self.rect;
        rect.min.y = (rect.min.y + band * self.zoom).min(rect.max.y - 1.0);
        let low = rect.height() / (PLAN.y - ALL_SKY);
        let scale = self.scale.min(low);
        Self::scaled(self.window, rect, (self.zoom, scale), 0.0)
    }

    fn fit(window: Vec2, rect: Rect, zoom: f32) -> Self {
        let scale = (rect.size() / PLAN).min_element();
        let earth = (rect.height() - PLAN.y * scale * TALL).max(0.0) * EARTH;
        Self::scaled(window, rect, (zoom, scale), earth)
    }

    /// The plan at a scale, with some pixels of earth below it.
    fn scaled(window: Vec2, rect: Rect, (zoom, scale): (f32, f32), earth: f32) -> Self {
        let x = rect.min.x + (rect.width() - PLAN.x * scale) / 2.0;
        let y = rect.max.y - earth - PLAN.y * scale;
        Self {
            window,
            rect,
            scale,
            zoom,
            origin: Vec2::new(x, y),
            sight: Sight::WHOLE,
            earth,
            shift: 0.0,
        }
    }

    /// How many times higher the room is than the plan when all of it is seen; 1 unless it is tall.
    fn tallness(&self) -> f32 {
        if self.earth > 0.0 {
            self.rect.height() * self.sight.nearness / (PLAN.y * self.scale)
        } else {
            1.0
        }
    }

    /// How much larger the scene's words are than usual: a tall room has the place.
    pub(super) fn words(&self) -> f32 {
        (self.tallness() * 0.8).clamp(1.0, MOST_WORDS)
    }

    /// What is seen of a place in a tall room, which all of the street would leave empty: the place and as much around it as there is room for.
    pub(super) fn close_up(&self, at: Vec2) -> Option<Sight> {
        let nearness = (self.tallness() * 0.75).min(MOST_NEAR);
        if nearness <= 1.05 {
            return None;
        }
        let whole = self.whole();
        let scale = whole.scale * nearness;
        let seen = whole.rect.size() / scale;
        let upper = AROUND.0 - (seen.y - (AROUND.1 - AROUND.0)) * (1.0 - EARTH);
        let corner = Vec2::new(at.x - seen.x / 2.0, upper);
        Some(Sight {
            nearness,
            middle: corner + (whole.pixel(PLAN / 2.0) - whole.rect.min) / scale,
        })
    }

    /// The same room with a part of the plan in it, as far as the plan reaches.
    pub(crate) fn at(&self, sight: Sight) -> Self {
        let whole = self.whole();
        let middle = whole.pixel(PLAN / 2.0);
        let bounds = self.bounds();
        let scale = whole.scale * sight.nearness;
        let origin = (middle - sight.middle * scale)
            .max(self.rect.max - bounds.max * scale)
            .min(self.rect.min - bounds.min * scale);
        Self {
            scale,
            origin,
            sight: Sight {
                middle: (middle - origin) / scale,
                ..sight
            },
            ..*self
        }
    }

    /// The same room with the whole plan in it.
    pub(crate) fn whole(&self) -> Self {
        let middle = self.pixel(self.sight.middle);
        let scale = self.scale / self.sight.nearness;
        Self {
            scale,
            origin: middle - PLAN / 2.0 * scale,
            sight: Sight::WHOLE,
            ..*self
        }
    }

    /// Whether another frame has the same room for the whole plan.
    pub(super) fn same_room(&self, other: &Self) -> bool {
        let near = |a: Vec2, b: Vec2| a.distance(b) < 0.5;
        near(self.window, other.window)
            && near(self.rect.min, other.rect.min)
            && near(self.rect.max, other.rect.max)
            && near(self.whole().origin, other.whole().origin)
    }

    /// What part of the plan is seen.
    pub(crate) fn sight(&self) -> Sight {
        self.sight
    }

    /// The point of the plan at a point of the window, in points as panels measure.
    pub(crate) fn plan(&self, at: Vec2) -> Vec2 {
        (at * self.zoom - self.origin) / self.scale
    }

    /// The part of the plan that is seen, in its units.
    pub(crate) fn seen(&self) -> Rect {
        Rect::from_corners(
            (self.rect.min - self.origin) / self.scale,
            (self.rect.max - self.origin) / self.scale,
        )
    }

    /// Pixels from the window's upper left corner.
    pub(crate) fn pixel(&self, at: Vec2) -> Vec2 {
        self.origin + at * self.scale
    }

    /// Points from the window's upper left corner, as panels measure.
    pub(crate) fn point(&self, at: Vec2) -> Vec2 {
        self.pixel(at) / self.zoom
    }

    /// A length of the plan in points.
    pub(crate) fn points(&self, length: f32) -> f32 {
        length * self.scale / self.zoom
    }

    /// The part of the window that the scene has, in points.
    pub(crate) fn room(&self) -> Rect {
        Rect::from_corners(self.rect.min / self.zoom, self.rect.max / self.zoom)
    }

    /// The part of the window in which the scene is drawn, pixels.
    pub(crate) fn shown(&self) -> Rect {
        let by = Vec2::new(self.shift, 0.0);
        Rect {
            min: self.rect.min + by,
            max: self.rect.max + by,
        }
    }

    /// The engine's units: from the window's middle, y upward.
    pub(super) fn world(&self, at: Vec2) -> Vec2 {
        let p = self.pixel(at);
        Vec2::new(
            p.x + self.shift - self.window.x / 2.0,
            self.window.y / 2.0 - p.y,
        )
    }

    /// By how much what is painted in this frame is larger in another, and where its middle then is, engine's units.
    pub(super) fn carried(&self, other: &Self) -> (f32, Vec2) {
        let size = other.scale / self.scale;
        (
            size,
            other.world(Vec2::ZERO) - self.world(Vec2::ZERO) * size,
        )
    }

    /// The scene's part of the window in the plan's units, when the whole plan is seen.
    pub(super) fn bounds(&self) -> Rect {
        self.whole().seen()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_painted_for_one_sight_is_carried_to_another() {
        let whole = Frame::new(Vec2::new(1280.0, 720.0), Look::default()).at_the_right();
        let near = whole.at(Sight::WHOLE.nearer(2.4, Vec2::new(300.0, 400.0)));
        for (painted, seen) in [(whole, near), (near, whole), (near, near)] {
            let (size, to) = painted.carried(&seen);
            for at in [Vec2::ZERO, Vec2::new(300.0, 400.0), PLAN] {
                let carried = painted.world(at) * size + to;
                assert!(carried.distance(seen.world(at)) < 0.01, "{carried}");
            }
        }
        assert_eq!(near.carried(&near), (1.0, Vec2::ZERO));
    }

    #[test]
    fn all_that_stands_is_seen_below_a_band_of_words() {
        let look = Look {
            zoom: 1.25,
            second: true,
        };
        let whole = Frame::new(Vec2::new(1280.0, 720.0), look);
        for band in [60.0, 90.0, 170.0] {
            let frame = whole.below(band);
            let top = whole.rect.min.y + band * look.zoom;
            let roof = frame.pixel(Vec2::new(600.0, ALL_SKY)).y;
            assert!(roof + 0.5 >= top && (frame.rect.min.y - top).abs() < 0.5);
            assert!(frame.rect.inflate(0.5).contains(frame.pixel(PLAN)));
        }
    }

    #[test]
    fn a_tall_room_has_earth_below_and_shows_a_place_larger() {
        let square = Frame::new(Vec2::splat(1280.0), Look::default());
        assert!(square.pixel(PLAN).y < square.rect.max.y - 100.0);
        let at = Vec2::new(620.0, 400.0);
        let near = square.close_up(at).map(|sight| square.at(sight));
        let near = near.expect("a square room is tall");
        let seen = near.seen();
        assert!(seen.contains(at) && near.scale > square.scale * 1.3);
        assert!(seen.min.y < AROUND.0 && seen.max.y > AROUND.1, "{seen:?}");
        let usual = Frame::new(Vec2::new(1280.0, 720.0), Look::default());
        assert_eq!((usual.close_up(at), usual.words()), (None, 1.0));
    }

    #[test]
    fn the_whole_plan_fits_into_small_and_large_windows_at_any_size_of_text() {
        for (w, h) in [
            (1024.0, 640.0),
            (1280.0, 720.0),
            (1920.0, 1080.0),
            (3840.0, 2160.0),
        ] {
            for (zoom, second) in [(0.8, false), (1.0, true), (1.5, false), (2.5, true)] {
                let frame = Frame::new(Vec2::new(w, h), Look { zoom, second });
                assert!(frame.scale > 0.2, "{w}x{h} at {zoom}");
                for corner in [Vec2::ZERO, PLAN] {
                    let p = frame.pixel(corner);
                    let rect = frame.rect.inflate(0.5);
                    assert!(rect.contains(p), "{w}x{h} at {zoom}: {p} outside {rect:?}");
                }
            }
        }
    }
}
