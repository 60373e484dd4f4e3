//! Every color of the window, and what goes with it: a pattern and a word, so that no meaning hangs on color alone.
//!
//! The colors that say what feeds a conductor are of the 2008 Color Universal Design set of eight (codes as printed in public code; checked).
//! Nothing outside this file makes a color.
//! Contrast of text on its ground is computed in a test (WCAG 2.2, success criterion 1.4.3: 4.5 to 1; 1.4.11: 3 to 1 for graphics).
//! It does not cover a light scheme for bright halls.

use bevy::color::{Color, ColorToComponents as _, LinearRgba};
use bevy_egui::egui;

use crate::session::view::{ApplianceState, Fed, Jacket, LogKind};
use crate::words::Unit;

/// A color as three bytes and an opacity from 0 to 255, in the sRGB coding.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ink(u8, u8, u8, u8);

impl Ink {
    /// This color with another opacity, 0 clear to 1 solid.
    #[must_use]
    pub fn alpha(self, opacity: f32) -> Self {
        Self(self.0, self.1, self.2, byte(opacity * 255.0))
    }

    /// Whether nothing shows through.
    #[must_use]
    pub fn is_solid(self) -> bool {
        self.3 == u8::MAX
    }

    /// A mixture: 0 gives this color, 1 the other.
    #[must_use]
    pub fn mix(self, other: Self, share: f32) -> Self {
        let t = share.clamp(0.0, 1.0);
        let blend = |a: u8, b: u8| byte(f32::from(a) * (1.0 - t) + f32::from(b) * t);
        Self(
            blend(self.0, other.0),
            blend(self.1, other.1),
            blend(self.2, other.2),
            blend(self.3, other.3),
        )
    }

    /// For panels.
    pub fn egui(self) -> egui::Color32 {
        egui::Color32::from_rgba_unmultiplied(self.0, self.1, self.2, self.3)
    }

    /// For the engine.
    pub fn bevy(self) -> Color {
        Color::srgba_u8(self.0, self.1, self.2, self.3)
    }

    /// For mesh vertices: red, green, blue as a display takes them, opacity.
    pub fn encoded(self) -> [f32; 4] {
        [self.0, self.1, self.2, self.3].map(|part| f32::from(part) / 255.0)
    }

    /// Linear red, green, blue, opacity, for measuring contrast.
    pub fn linear(self) -> [f32; 4] {
        LinearRgba::from(self.bevy()).to_f32_array()
    }
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "clamped to a byte first"
)]
fn byte(value: f32) -> u8 {
    value.round().clamp(0.0, 255.0) as u8
}

/// A color as it was found in a picture.
#[cfg(test)]
pub(super) fn found([r, g, b]: [u8; 3]) -> Ink {
    ink(r, g, b)
}

const fn ink(r: u8, g: u8, b: u8) -> Ink {
    Ink(r, g, b, 255)
}

// The published eight.
/// Black.
pub const BLACK: Ink = ink(0x00, 0x00, 0x00);
/// Orange: a generator.
pub const ORANGE: Ink = ink(0xE6, 0x9F, 0x00);
/// Sky blue: the utility.
pub const SKY_BLUE: Ink = ink(0x56, 0xB4, 0xE9);
/// Bluish green: done, met; a battery.
pub const BLUISH_GREEN: Ink = ink(0x00, 0x9E, 0x73);
/// Yellow: focus and lamplight; the sun on solar panels.
pub const YELLOW: Ink = ink(0xF0, 0xE4, 0x42);
/// Blue.
pub const BLUE: Ink = ink(0x00, 0x72, 0xB2);
/// Vermilion.
pub const VERMILION: Ink = ink(0xD5, 0x5E, 0x00);
/// What wasn't tested: kept apart from the eight for every kind of color vision.
pub const UNTESTED: Ink = ink(0x7C, 0x80, 0xC0);
/// Reddish purple: harm, and two sources at once.
pub const PURPLE: Ink = ink(0xCC, 0x79, 0xA7);

// Grounds and texts of the panels.
/// The darkest ground, behind everything.
pub const INK: Ink = ink(0x14, 0x1D, 0x28);
/// Panels.
pub const PANEL: Ink = ink(0x1B, 0x26, 0x33);
/// Cards and rows on a panel.
pub const RAISED: Ink = ink(0x26, 0x34, 0x44);
/// Buttons.
pub const BUTTON: Ink = ink(0x33, 0x45, 0x58);
/// Buttons under the pointer.
pub const BUTTON_HOVER: Ink = ink(0x40, 0x55, 0x6B);
/// The one button that leads on.
pub const LEAD: Ink = ink(0xF4, 0xDF, 0xB0);
/// Under what is chosen.
pub const CHOSEN: Ink = ink(0x00, 0x60, 0x98);
/// Outlines that matter.
pub const OUTLINE: Ink = ink(0x7E, 0x93, 0xA8);
/// Outlines that only part things.
pub const HAIRLINE: Ink = ink(0x3A, 0x4B, 0x5D);
/// Text.
pub const CREAM: Ink = ink(0xF6, 0xEF, 0xE0);
/// Lesser text.
pub const MUTED: Ink = ink(0xB4, 0xC2, 0xD0);
/// Text on a light ground.
pub const DARK_TEXT: Ink = ink(0x1A, 0x22, 0x2C);

// Things of the scene, by their own light.
/// Wood of poles and crossarms.
pub const WOOD: Ink = ink(0x8A, 0x6A, 0x4B);
/// Galvanized steel, tanks and trucks.
pub const STEEL: Ink = ink(0xA9, 0xB5, 0xBF);
/// Porcelain.
pub const PORCELAIN: Ink = ink(0xDD, 0xE5, 0xEA);
/// Plaster of outer walls.
pub const PLASTER: Ink = ink(0xD9, 0xCB, 0xAF);
/// Roof tiles.
pub const ROOF: Ink = ink(0x8E, 0x4E, 0x55);
/// A lit room.
pub const ROOM_LIT: Ink = ink(0xFA, 0xEB, 0xC8);
/// A dark room.
pub const ROOM_DARK: Ink = ink(0x44, 0x50, 0x63);
/// A lit cellar or garage.
pub const CELLAR_LIT: Ink = ink(0xE2, 0xD3, 0xB5);
/// A dark cellar or garage.
pub const CELLAR_DARK: Ink = ink(0x37, 0x41, 0x50);
/// Floors between stories.
pub const FLOOR: Ink = ink(0xB7, 0xA3, 0x80);
/// White goods.
pub const ENAMEL: Ink = ink(0xE9, 0xEE, 0xF1);
/// Doors, knobs and outlines of white goods.
pub const ENAMEL_LINE: Ink = ink(0x7C, 0x8B, 0x99);
/// Upholstery.
pub const SOFA: Ink = ink(0x6F, 0x8F, 0xA8);
/// Skin of people drawn simply: one tone for all, as paper figures.
pub const PAPER: Ink = ink(0xF2, 0xE6, 0xD0);
/// A worker's vest.
pub const VEST: Ink = ink(0xF0, 0xC2, 0x4E);
/// Clothes at home.
pub const CLOTH: Ink = ink(0xB5, 0x6B, 0x5C);
/// Water.
pub const WATER: Ink = ink(0x3C, 0x8F, 0xC4);
/// Leaves.
pub const LEAF: Ink = ink(0x3F, 0x6B, 0x5C);
/// The engine's housing.
pub const ENGINE: Ink = ink(0x6B, 0x76, 0x84);
/// Rubber, wheels and shadow.
pub const RUBBER: Ink = ink(0x1E, 0x24, 0x2B);
/// Soil.
pub const SOIL: Ink = ink(0x3B, 0x33, 0x30);
/// Neutral conductors, always drawn plain.
pub const NEUTRAL: Ink = ink(0x8B, 0x98, 0xA6);

/// How a conductor's state is drawn, apart from its color.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pattern {
    /// A bare thin line.
    Thin,
    /// Beads on a line.
    Beads,
    /// Chevrons along the flow.
    Chevrons,
    /// Beads and chevrons by turns.
    Mixed,
    /// Open rings, like suns.
    Rings,
    /// Blocks, like cells.
    Blocks,
    /// Cross-ticks.
    Ticks,
    /// Dots without a line.
    Dots,
}

/// Color of what feeds a conductor.
pub fn fed_ink(fed: Fed) -> Ink {
    match fed {
        Fed::Dead => MUTED,
        Fed::Utility => SKY_BLUE,
        Fed::Generator => ORANGE,
        Fed::Solar => YELLOW,
        Fed::Battery => BLUISH_GREEN,
        Fed::Both => PURPLE,
        Fed::Grounded => PORCELAIN,
        Fed::Unknown => UNTESTED,
    }
}

/// Pattern of what feeds a conductor.
pub fn fed_pattern(fed: Fed) -> Pattern {
    match fed {
        Fed::Dead => Pattern::Thin,
        Fed::Utility => Pattern::Beads,
        Fed::Generator => Pattern::Chevrons,
        Fed::Solar => Pattern::Rings,
        Fed::Battery => Pattern::Blocks,
        Fed::Both => Pattern::Mixed,
        Fed::Grounded => Pattern::Ticks,
        Fed::Unknown => Pattern::Dots,
    }
}

/// Color of a cord's jacket.
pub fn jacket_ink(jacket: Jacket) -> Ink {
    match jacket {
        Jacket::Plain => RUBBER.mix(STEEL, 0.35),
        Jacket::Yellow => YELLOW,
        Jacket::Orange => ORANGE,
        Jacket::Red => CLOTH.mix(VERMILION, 0.5),
        Jacket::Blue => BLUE,
        Jacket::Green => LEAF.mix(BLUISH_GREEN, 0.5),
        Jacket::Brown => WOOD,
        Jacket::Gray => STEEL,
        Jacket::White => ENAMEL,
    }
}

/// Message id of the word for what feeds a conductor.
pub fn fed_word(fed: Fed) -> &'static str {
    match fed {
        Fed::Dead => "window-fed-dead",
        Fed::Utility => "window-fed-utility",
        Fed::Generator => "window-fed-generator",
        Fed::Solar => "window-fed-solar",
        Fed::Battery => "window-fed-battery",
        Fed::Both => "window-fed-both",
        Fed::Grounded => "window-fed-grounded",
        Fed::Unknown => "window-fed-unknown",
    }
}

/// The color of a curve, by what it measures; its heading says the same in words.
pub fn curve_ink(of: Unit) -> Ink {
    let inks = [
        (Unit::Volts, SKY_BLUE),
        (Unit::Hertz, CREAM),
        (Unit::Celsius, VERMILION.mix(CREAM, 0.3)),
        (Unit::Ppm, BLUISH_GREEN.mix(CREAM, 0.3)),
    ];
    let own = inks.into_iter().find(|(unit, _)| *unit == of);
    own.map_or(ORANGE, |(_, ink)| ink)
}

/// Color and message id of a kind of log line.
pub fn log_look(kind: LogKind) -> (Ink, &'static str) {
    match kind {
        LogKind::Did => (CREAM, "window-log-did"),
        LogKind::Refused => (YELLOW, "window-log-refused"),
        LogKind::Happened => (SKY_BLUE, "window-log-happened"),
        LogKind::Learnt => (MUTED, "window-log-learnt"),
        LogKind::Mistake => (ORANGE, "window-log-mistake"),
        LogKind::Harm => (PURPLE, "window-log-harm"),
    }
}

/// Whether an appliance has power, for its lamp, screen or drum.
pub fn powered(state: ApplianceState) -> bool {
    match state {
        ApplianceState::NoPower | ApplianceState::Broken => false,
        ApplianceState::Ready
        | ApplianceState::Starting
        | ApplianceState::Running
        | ApplianceState::Strained
        | ApplianceState::Still => true,
    }
}

/// The light of an hour.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Light {
    /// Zenith.
    pub top: Ink,
    /// Halfway down.
    pub middle: Ink,
    /// Horizon.
    pub bottom: Ink,
    /// Hills far off.
    pub hill: Ink,
    /// Grass.
    pub grass: Ink,
    /// How dark it is, 0 day to 1 night.
    pub dark: f32,
}

/// Hours (minutes after midnight) with their light; between them it is mixed.
const LIGHTS: [(u32, Light); 9] = [
    (0, NIGHT),
    (300, NIGHT),
    (390, DAWN),
    (480, DAY),
    (1020, DAY),
    (1110, DUSK),
    (1170, LATE_DUSK),
    (1260, NIGHT),
    (1440, NIGHT),
];
const NIGHT: Light = Light {
    top: ink(0x16, 0x22, 0x3A),
    middle: ink(0x20, 0x32, 0x4E),
    bottom: ink(0x35, 0x49, 0x63),
    hill: ink(0x22, 0x32, 0x47),
    grass: ink(0x2B, 0x3A, 0x3E),
    dark: 1.0,
};
const LATE_DUSK: Light = Light {
    top: ink(0x1E, 0x2C, 0x4C),
    middle: ink(0x3A, 0x47, 0x6B),
    bottom: ink(0x8C, 0x6E, 0x7C),
    hill: ink(0x33, 0x40, 0x58),
    grass: ink(0x38, 0x48, 0x48),
    dark: 0.75,
};
const DUSK: Light = Light {
    top: ink(0x31, 0x45, 0x72),
    middle: ink(0x7A, 0x70, 0x91),
    bottom: ink(0xE2, 0xA2, 0x7C),
    hill: ink(0x4E, 0x57, 0x71),
    grass: ink(0x4D, 0x60, 0x57),
    dark: 0.45,
};
const DAWN: Light = Light {
    top: ink(0x46, 0x66, 0x92),
    middle: ink(0x93, 0x9F, 0xB4),
    bottom: ink(0xEE, 0xC0, 0x9A),
    hill: ink(0x63, 0x74, 0x86),
    grass: ink(0x5B, 0x73, 0x61),
    dark: 0.3,
};
const DAY: Light = Light {
    top: ink(0x5F, 0x93, 0xBE),
    middle: ink(0x9A, 0xBF, 0xD8),
    bottom: ink(0xDC, 0xE6, 0xE4),
    hill: ink(0x86, 0xA2, 0xA4),
    grass: ink(0x7B, 0x97, 0x6C),
    dark: 0.0,
};

/// The light at a minute after midnight; later days count on.
pub fn light(minute_of_day: u32) -> Light {
    let minute = minute_of_day % 1440;
    for pair in LIGHTS.windows(2) {
        if let [(from, a), (to, b)] = pair
            && (*from..*to).contains(&minute)
        {
            let share = ratio(minute - from, to - from);
            return Light {
                top: a.top.mix(b.top, share),
                middle: a.middle.mix(b.middle, share),
                bottom: a.bottom.mix(b.bottom, share),
                hill: a.hill.mix(b.hill, share),
                grass: a.grass.mix(b.grass, share),
                dark: a.dark + (b.dark - a.dark) * share,
            };
        }
    }
    NIGHT
}

#[expect(clippy::cast_precision_loss, reason = "minutes of a day fit exactly")]
fn ratio(part: u32, whole: u32) -> f32 {
    part as f32 / whole as f32
}

impl Light {
    /// The same hour under the clouds of a storm.
    #[must_use]
    pub fn stormy(self) -> Self {
        let over = |ink: Ink, share: f32| ink.mix(STORM, share);
        Self {
            top: over(self.top, 0.72),
            middle: over(self.middle, 0.62),
            bottom: over(self.bottom, 0.5),
            hill: over(self.hill, 0.4),
            grass: over(self.grass, 0.3),
            dark: self.dark.max(0.45),
        }
    }
}

/// The gray of rain clouds.
const STORM: Ink = ink(0x33, 0x3D, 0x4B);

/// Contrast of two colors by the formula of WCAG 2.2, from 1 to 21.
pub fn contrast(one: Ink, other: Ink) -> f32 {
    let luminance = |c: Ink| {
        let [r, g, b, _] = c.linear();
        0.2126 * r + 0.7152 * g + 0.0722 * b
    };
    let (a, b) = (luminance(one), luminance(other));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_stands_out_from_its_ground_by_four_and_a_half() {
        let pairs = [
            ("text on panel", CREAM, PANEL),
            ("text on card", CREAM, RAISED),
            ("text on button", CREAM, BUTTON),
            ("text on hovered button", CREAM, BUTTON_HOVER),
            ("text on ink", CREAM, INK),
            ("lesser text on panel", MUTED, PANEL),
            ("lesser text on card", MUTED, RAISED),
            ("lesser text on button", MUTED, BUTTON),
            ("dark text on the leading button", DARK_TEXT, LEAD),
            ("what is chosen", YELLOW, CHOSEN),
            ("harm on card", PURPLE.mix(CREAM, 0.35), RAISED),
            ("generator word on ink", ORANGE, INK),
            ("utility word on ink", SKY_BLUE, INK),
            ("both word on ink", PURPLE, INK),
            ("solar word on ink", YELLOW, INK),
            ("battery word on ink", BLUISH_GREEN, INK),
        ];
        for (what, text, ground) in pairs {
            let ratio = contrast(text, ground);
            assert!(ratio >= 4.5, "{what}: {ratio:.2}");
        }
        for kind in [
            LogKind::Did,
            LogKind::Refused,
            LogKind::Happened,
            LogKind::Learnt,
            LogKind::Mistake,
            LogKind::Harm,
        ] {
            let ratio = contrast(log_look(kind).0, PANEL);
            assert!(ratio >= 4.5, "{kind:?} on panel: {ratio:.2}");
        }
    }

    #[test]
    fn conductors_stand_out_from_the_night_and_the_ink_by_three() {
        for fed in Fed::ALL {
            for (what, ground) in [("night", NIGHT.middle), ("ink", INK), ("soil", SOIL)] {
                let ratio = contrast(fed_ink(fed), ground);
                assert!(ratio >= 3.0, "{fed:?} on {what}: {ratio:.2}");
            }
        }
    }

    #[test]
    fn every_state_of_a_conductor_has_a_color_a_pattern_and_a_word_of_its_own() {
        for (i, a) in Fed::ALL.iter().enumerate() {
            for b in Fed::ALL.iter().skip(i + 1) {
                assert_ne!(fed_ink(*a), fed_ink(*b), "{a:?} {b:?}");
                assert_ne!(fed_pattern(*a), fed_pattern(*b), "{a:?} {b:?}");
                assert_ne!(fed_word(*a), fed_word(*b), "{a:?} {b:?}");
            }
        }
    }

    #[test]
    fn the_formula_gives_the_published_contrast_of_black_on_white() {
        // WCAG 2.2, definition of contrast ratio: 21 to 1 for black on white.
        let white = ink(255, 255, 255);
        assert!((contrast(BLACK, white) - 21.0).abs() < 0.01);
    }

    #[test]
    fn no_hour_is_black() {
        for minute in 0..1440 {
            let l = light(minute);
            assert!(contrast(l.top, BLACK) > 1.2, "minute {minute}");
            assert!(contrast(l.middle, BLACK) > 1.5, "minute {minute}");
        }
    }
}
