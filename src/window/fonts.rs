//! The one typeface of the window, regular and bold, and how panels look.
//!
//! Noto Sans, SIL Open Font License 1.1 (text in `assets/fonts/OFL.txt`); it has Latin letters with all accents, Ω, ° and −.
//! It is built into the program, so that a window needs no folder of assets.
//! It does not cover scripts other than Latin, Greek and Cyrillic.

use std::sync::Arc;

use bevy_egui::egui;
use bevy_egui::egui::{
    CornerRadius, FontData, FontDefinitions, FontFamily, FontId, Stroke, TextStyle,
};

use super::theme;

const REGULAR: &[u8] = include_bytes!("../../assets/fonts/NotoSans-Regular.ttf");
const BOLD: &[u8] = include_bytes!("../../assets/fonts/NotoSans-Bold.ttf");

/// Name of the bold family.
const BOLD_NAME: &str = "bold";

/// Regular type of a size in points.
pub(super) fn regular(size: f32) -> FontId {
    FontId::new(size, FontFamily::Proportional)
}

/// Bold type of a size in points.
pub(super) fn bold(size: f32) -> FontId {
    FontId::new(size, FontFamily::Name(BOLD_NAME.into()))
}

/// The longest press that still counts as one, seconds.
const SLOW_HAND_S: f64 = 20.0;
/// How far a press may move and still count as one, points.
const TREMBLING_HAND: f32 = 12.0;
/// The longest time from one press to the second of a double one, seconds: desktops have half a second, common practice.
const DOUBLE_PRESS_S: f64 = 0.5;

/// Sets typeface, look and patience of a context.
pub(super) fn dress(ctx: &egui::Context) {
    ctx.set_fonts(definitions());
    ctx.set_theme(egui::Theme::Dark);
    ctx.all_styles_mut(style);
    ctx.options_mut(|options| {
        options.zoom_with_keyboard = false;
        // A hand that rests on a button or trembles presses it all the same, and so does a click that a busy machine sees late.
        options.input_options.max_click_duration = SLOW_HAND_S;
        options.input_options.max_click_dist = TREMBLING_HAND;
        options.input_options.max_double_click_delay = DOUBLE_PRESS_S;
    });
}

fn definitions() -> FontDefinitions {
    let mut fonts = FontDefinitions::default();
    let add = |fonts: &mut FontDefinitions, name: &str, bytes: &'static [u8]| {
        fonts
            .font_data
            .insert(name.to_owned(), Arc::new(FontData::from_static(bytes)));
    };
    add(&mut fonts, "regular", REGULAR);
    add(&mut fonts, BOLD_NAME, BOLD);
    for family in [FontFamily::Proportional, FontFamily::Monospace] {
        fonts
            .families
            .entry(family)
            .or_default()
            .insert(0, "regular".to_owned());
    }
    fonts.families.insert(
        FontFamily::Name(BOLD_NAME.into()),
        vec![BOLD_NAME.to_owned(), "regular".to_owned()],
    );
    fonts
}

fn style(style: &mut egui::Style) {
    style.text_styles = [
        (TextStyle::Small, regular(13.0)),
        (TextStyle::Body, regular(15.5)),
        (TextStyle::Button, regular(15.5)),
        (TextStyle::Monospace, regular(15.5)),
        (TextStyle::Heading, bold(21.0)),
    ]
    .into();
    style.animation_time = 0.0;
    // What comes into sight is to be read, not watched; and a picture never hangs on how fast frames come.
    style.scroll_animation = egui::style::ScrollAnimation::none();
    let spacing = &mut style.spacing;
    spacing.item_spacing = egui::vec2(8.0, 7.0);
    spacing.button_padding = egui::vec2(11.0, 6.0);
    spacing.interact_size = egui::vec2(32.0, 32.0);
    spacing.scroll = egui::style::ScrollStyle::solid();
    // A line at the edge of what is scrolled goes out of sight softly, so that none looks cut.
    spacing.scroll.fade = egui::style::ScrollFadeStyle {
        strength: 1.0,
        size: 18.0,
    };
    style.interaction.tooltip_delay = 0.0;
    style.interaction.selectable_labels = false;
    let visuals = &mut style.visuals;
    visuals.override_text_color = None;
    visuals.panel_fill = theme::PANEL.egui();
    visuals.window_fill = theme::PANEL.egui();
    visuals.extreme_bg_color = theme::INK.egui();
    visuals.faint_bg_color = theme::RAISED.egui();
    visuals.window_stroke = Stroke::new(1.5, theme::OUTLINE.egui());
    visuals.selection.bg_fill = theme::CHOSEN.egui();
    visuals.selection.stroke = Stroke::new(2.0, theme::YELLOW.egui());
    let widgets = &mut visuals.widgets;
    for (widget, fill, outline) in [
        (
            &mut widgets.noninteractive,
            theme::PANEL,
            Stroke::new(1.0, theme::HAIRLINE.egui()),
        ),
        (
            &mut widgets.inactive,
            theme::BUTTON,
            Stroke::new(1.2, theme::OUTLINE.egui()),
        ),
        (
            &mut widgets.hovered,
            theme::BUTTON_HOVER,
            Stroke::new(1.6, theme::CREAM.egui()),
        ),
        (
            &mut widgets.active,
            theme::BUTTON_HOVER,
            Stroke::new(3.0, theme::YELLOW.egui()),
        ),
        (
            &mut widgets.open,
            theme::BUTTON_HOVER,
            Stroke::new(1.6, theme::CREAM.egui()),
        ),
    ] {
        widget.bg_fill = fill.egui();
        widget.weak_bg_fill = fill.egui();
        widget.bg_stroke = outline;
        widget.fg_stroke = Stroke::new(1.5, theme::CREAM.egui());
        widget.corner_radius = CornerRadius::same(7);
        widget.expansion = 0.0;
    }
}
