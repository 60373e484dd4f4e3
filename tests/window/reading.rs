//! Whether everything that is written on the screens can be read: not cut off, not written over, in sizes, languages and scales of text.
//!
//! The screens are those of the gallery, laid out in a bare context of the toolkit; what it would draw is looked at, shape by shape.
//! How letters stand out from what is behind them is measured on the accepted pictures.
//! It does not cover the words that scroll out of sight, which scrolling brings back.

use std::path::Path;

use egui::Color32;
use egui::epaint::text::PlacedRow;
use egui::epaint::{ClippedShape, Shape, TextShape};
use image::RgbImage;

use crate::window::scene::frame::Look;
use crate::window::theme;
use crate::words::{PSEUDO, PSEUDO_FROM_RIGHT};

use super::*;

/// A piece of text as it would be drawn.
#[derive(Debug, Clone)]
struct Written {
    text: String,
    /// Where the letters of each line are, and the part of the window in which they can be seen.
    rows: Vec<Rect>,
    /// The colors of the letters of each line.
    inks: Vec<Vec<Color32>>,
    clip: Rect,
    elided: bool,
    /// Whether it is as large as WCAG calls large.
    large: bool,
}

impl Written {
    fn of(shape: &TextShape, clip: Rect) -> Option<Self> {
        let text = shape.galley.text().trim().to_owned();
        let placed = shape.galley.rows.iter().map(|placed| {
            let at = shape.pos.to_vec2() + placed.pos.to_vec2();
            let rect = placed.row.visuals.mesh_bounds.translate(at);
            (rect, inks(shape, placed))
        });
        let seen = placed.filter(|(row, _)| row.intersect(clip).is_positive());
        let (rows, inks): (Vec<Rect>, Vec<Vec<Color32>>) = seen.unzip();
        let sections = shape.galley.job.sections.iter();
        let mut fonts = sections.map(|section| &section.format.font_id);
        (!text.is_empty() && !rows.is_empty()).then(|| Self {
            text,
            rows,
            inks,
            clip,
            elided: shape.galley.elided,
            large: fonts.all(is_large),
        })
    }

    /// What can be seen of each line.
    fn seen(&self) -> impl Iterator<Item = Rect> + '_ {
        self.rows.iter().map(|row| row.intersect(self.clip))
    }

    /// Whether letters are lost at the sides, or above and below where nothing scrolls.
    fn is_cut(&self, window: Vec2) -> bool {
        let clip = self.clip.expand(1.0);
        let at_edge = clip.top() < BAR || clip.bottom() > window.y;
        let is_bar = clip.height() < BAR && at_edge;
        let cut = |row: &Rect| {
            let wide = row.left() < clip.left() || row.right() > clip.right();
            let high = row.top() < clip.top() || row.bottom() > clip.bottom();
            wide || (is_bar && high)
        };
        self.elided || self.rows.iter().any(cut)
    }

    /// Where it stands over or under another.
    fn common(&self, other: &Self) -> Option<Rect> {
        let mut pairs = self
            .seen()
            .flat_map(|one| other.seen().map(move |two| (one, two)));
        pairs.find_map(|(one, two)| {
            let common = one.shrink(1.5).intersect(two.shrink(1.5));
            common.is_positive().then_some(common)
        })
    }
}

/// Large by WCAG: 24 px, or 18.66 px and bold.
fn is_large(font: &egui::FontId) -> bool {
    let bold = *font == fonts::bold(font.size);
    font.size >= if bold { 18.66 } else { 24.0 }
}

/// The colors of the letters in a line, as they would be drawn.
fn inks(shape: &TextShape, placed: &PlacedRow) -> Vec<Color32> {
    let visuals = &placed.row.visuals;
    let letters = visuals
        .mesh
        .vertices
        .get(visuals.glyph_vertex_range.clone());
    let mut inks: Vec<Color32> = Vec::new();
    for vertex in letters.unwrap_or_default() {
        let plain = if vertex.color == Color32::PLACEHOLDER {
            shape.fallback_color
        } else {
            vertex.color
        };
        let ink = shape.override_text_color.unwrap_or(plain);
        if !inks.contains(&ink) {
            inks.push(ink);
        }
    }
    inks
}

/// What is lower than this at the upper or lower edge does not scroll, points.
const BAR: f32 = 60.0;

/// Shapes one by one, those within others too.
fn each(shapes: &[ClippedShape], take: &mut impl FnMut(&Shape, Rect)) {
    fn one(shape: &Shape, clip: Rect, take: &mut impl FnMut(&Shape, Rect)) {
        if let Shape::Vec(parts) = shape {
            for part in parts {
                one(part, clip, take);
            }
        } else {
            take(shape, clip);
        }
    }
    for shape in shapes {
        one(&shape.shape, shape.clip_rect, take);
    }
}

/// What can be read in the end: text that a ground was laid over is gone.
fn written(shapes: &[ClippedShape]) -> Vec<Written> {
    let mut all: Vec<Written> = Vec::new();
    each(shapes, &mut |shape, clip| match shape {
        Shape::Rect(rect) if rect.fill.a() > 200 => {
            let ground = rect.rect.intersect(clip);
            all.retain(|text| !text.seen().all(|row| ground.contains_rect(row)));
        }
        Shape::Text(text) => all.extend(Written::of(text, clip)),
        Shape::Rect(_)
        | Shape::Noop
        | Shape::Vec(_)
        | Shape::Circle(_)
        | Shape::Ellipse(_)
        | Shape::LineSegment { .. }
        | Shape::Path(_)
        | Shape::Mesh(_)
        | Shape::QuadraticBezier(_)
        | Shape::CubicBezier(_)
        | Shape::Callback(_) => {}
    });
    all
}

/// What is wrong with what is written.
fn faults(rehearsal: &Rehearsal) -> Vec<String> {
    let all = written(&rehearsal.shapes);
    let mut faults: Vec<String> = Vec::new();
    for (i, one) in all.iter().enumerate() {
        if one.is_cut(rehearsal.size) {
            faults.push(format!(
                "cut: {:?} {:?} in {:?}",
                one.text, one.rows, one.clip
            ));
        }
        for other in all.iter().skip(i + 1) {
            if let Some(common) = one.common(other) {
                let texts = (&one.text, &other.text);
                faults.push(format!("one over the other: {texts:?} at {common:?}"));
            }
        }
    }
    faults
}

#[test]
fn nothing_is_cut_off_or_written_over_on_any_screen() {
    let sizes = [(1024.0, 640.0), (1280.0, 720.0), (1920.0, 1080.0)];
    let mut wrong = Vec::new();
    let mut n_looked_at = 0;
    for language in ["en", "es", PSEUDO, PSEUDO_FROM_RIGHT] {
        for picture in gallery::screens() {
            let mut rehearsal = Rehearsal::new(language);
            for wish in picture.wishes.iter().skip(1) {
                rehearsal.grant(wish);
            }
            for percent in [80, 100, 150, 250] {
                for (width, height) in sizes {
                    // A language a third longer than ours has the usual window to fit into.
                    let strange = [PSEUDO, PSEUDO_FROM_RIGHT].contains(&language);
                    if strange && (percent != 100 || width < 1200.0) {
                        continue;
                    }
                    rehearsal.desk.size = Size::of(percent);
                    rehearsal.window = Vec2::new(width, height);
                    // Tables find their widths by the pass before.
                    rehearsal.lay_out();
                    rehearsal.lay_out();
                    n_looked_at += 1;
                    let found = faults(&rehearsal);
                    wrong.extend(found.into_iter().map(|fault| {
                        format!(
                            "{} {language} {width}x{height} {percent} %: {fault}",
                            picture.name
                        )
                    }));
                }
            }
        }
    }
    assert!(n_looked_at > 900, "{n_looked_at}");
    assert!(
        wrong.is_empty(),
        "{} of {n_looked_at} layouts:\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}

/// One in this many pixels around a line may be of something that it touches.
const TOUCHES: usize = 7;

/// The contrast of a color with all but the worst of what surrounds a line in a picture.
fn contrast_around(picture: &RgbImage, row: Rect, ink: Color32) -> Option<f32> {
    let (left, right) = (pixel(row.left() - 2.0), pixel(row.right() + 1.0));
    let (top, bottom) = (pixel(row.top().floor() - 1.0), pixel(row.bottom().ceil()));
    let sides = (top..=bottom).flat_map(|y| [(left, y), (right, y)]);
    let edges = (left..=right).flat_map(|x| [(x, top), (x, bottom)]);
    let [r, g, b, _] = ink.to_array();
    let ink = theme::found([r, g, b]);
    let mut all: Vec<f32> = sides
        .chain(edges)
        .filter_map(|(x, y)| picture.get_pixel_checked(x, y))
        .map(|pixel| theme::contrast(ink, theme::found(pixel.0)))
        .collect();
    all.sort_by(f32::total_cmp);
    all.get(all.len() / TOUCHES).copied()
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a place in a picture, not below zero"
)]
fn pixel(at: f32) -> u32 {
    at.max(0.0).round() as u32
}

/// A side of a picture.
fn pixels(side: u32) -> f32 {
    u16::try_from(side).map_or(0.0, f32::from)
}

#[test]
fn every_text_stands_out_from_what_is_behind_it_on_the_accepted_pictures() {
    // WCAG 2.2, 1.4.3: 4.5 to 1, and 3 to 1 for large text; what can't be pressed now is exempt.
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/pictures");
    let mut wrong = Vec::new();
    let mut n_measured = 0;
    for screen in gallery::screens() {
        let picture = image::open(folder.join(format!("{}.png", screen.name)));
        let picture = picture.expect("every screen has its picture").to_rgb8();
        let mut rehearsal = Rehearsal::new("en");
        rehearsal.session = rehearsal.session.clone().asking();
        rehearsal.desk.size = Size::default();
        let (width, height) = screen.size;
        rehearsal.window = Vec2::new(pixels(width), pixels(height));
        for wish in &screen.wishes {
            rehearsal.grant(wish);
        }
        // The pictures were taken once everything had found its place.
        rehearsal.lay_out();
        rehearsal.lay_out();
        if rehearsal.desk.look() != Look::default() {
            // Only at the usual size do both stand at the same pixel.
            continue;
        }
        for text in written(&rehearsal.shapes) {
            let least = if text.large { 3.0 } else { 4.5 };
            for (row, ink) in text
                .rows
                .iter()
                .zip(&text.inks)
                .flat_map(|(row, inks)| inks.iter().map(move |ink| (*row, *ink)))
            {
                let whole = text.clip.contains_rect(row);
                if !whole || ink.a() < 255 {
                    continue;
                }
                n_measured += 1;
                let contrast = contrast_around(&picture, row, ink).unwrap_or(0.0);
                if contrast < least {
                    wrong.push(format!(
                        "{}: {:?} {contrast:.2} at {row:?} in {ink:?}",
                        screen.name, text.text
                    ));
                }
            }
        }
    }
    assert!(n_measured > 1_000, "{n_measured}");
    assert!(
        wrong.is_empty(),
        "{} of {n_measured} lines:\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}
