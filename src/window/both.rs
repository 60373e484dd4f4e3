//! Two languages in one text: the first, and below it the second in a quieter ink.
//!
//! Texts are joined once, when views are taken; panels write them as any other, so that there is one set of controls.
//! Where a panel puts texts together it does so with [`each`], language by language.
//! It does not cover more than two languages, nor ids and numbers: what is the same in both stands once.

mod views;

use bevy_egui::egui::WidgetText;
use bevy_egui::egui::text::{LayoutJob, TextFormat};
use bevy_egui::egui::{FontId, RichText};

use super::theme;
use super::theme::Ink;

/// Stands between the two: a new line, and a letter that takes no room and is in no text of ours.
const PARTING: &str = "\n\u{2060}";

/// One of the two.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Side {
    First,
    Second,
}

/// Both sides, in their order.
pub(super) const SIDES: [Side; 2] = [Side::First, Side::Second];

/// Both texts in one; one of them where they are the same or the other is empty.
pub(super) fn joined(first: &str, second: &str) -> String {
    if first == second || second.is_empty() {
        first.to_owned()
    } else if first.is_empty() {
        second.to_owned()
    } else {
        [first, PARTING, second].concat()
    }
}

/// Whether a text says something in either language.
pub(super) fn is_both(text: &str) -> bool {
    text.contains(PARTING)
}

/// What one side says; what is the same in both is on either.
pub(super) fn side(text: &str, side: Side) -> &str {
    match (text.split_once(PARTING), side) {
        (Some((first, _)), Side::First) => first,
        (Some((_, second)), Side::Second) => second,
        (None, _) => text,
    }
}

/// Texts put together, in each language by itself.
pub(super) fn each<const N: usize>(
    parts: [&str; N],
    write: impl Fn([&str; N]) -> String,
) -> String {
    if !parts.iter().any(|part| is_both(part)) {
        return write(parts);
    }
    let [first, second] = SIDES.map(|one| write(parts.map(|part| side(part, one))));
    joined(&first, &second)
}

/// Both in one line.
pub(super) fn in_one_line(text: &str) -> String {
    text.replace(PARTING, " · ")
}

/// Adds a text to what is laid out: the first language in its ink, the second below in a quieter one.
pub(super) fn append(job: &mut LayoutJob, text: &str, font: &FontId, ink: Ink) {
    let mut add = |text: &str, ink: Ink| {
        job.append(text, 0.0, TextFormat::simple(font.clone(), ink.egui()));
    };
    add(side(text, Side::First), ink);
    if is_both(text) {
        add("\n", ink);
        add(side(text, Side::Second), quieter(ink));
    }
}

/// A text for a label or a button.
pub(super) fn written(text: &str, font: FontId, ink: Ink) -> WidgetText {
    if !is_both(text) {
        return RichText::new(text).font(font).color(ink.egui()).into();
    }
    let mut job = LayoutJob::default();
    append(&mut job, text, &font, ink);
    job.into()
}

/// The ink of the second language; on light ground there is none that can be read as well.
fn quieter(ink: Ink) -> Ink {
    if ink == theme::DARK_TEXT {
        ink
    } else {
        ink.mix(theme::MUTED, 0.6)
    }
}

/// What has texts, and can have those of another language beside them.
pub(super) trait Beside {
    /// Puts the texts of the same thing in another language beside these.
    fn beside(&mut self, other: &Self);
}

impl Beside for String {
    fn beside(&mut self, other: &Self) {
        if self != other {
            *self = joined(self, other);
        }
    }
}

impl<T: Beside> Beside for Vec<T> {
    fn beside(&mut self, other: &Self) {
        for (one, other) in self.iter_mut().zip(other) {
            one.beside(other);
        }
    }
}

impl<T: Beside> Beside for Option<T> {
    fn beside(&mut self, other: &Self) {
        if let (Some(one), Some(other)) = (self, other) {
            one.beside(other);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_is_parted_into_what_it_was_joined_from() {
        let both = joined("Panel", "Tablero");
        assert_eq!(SIDES.map(|one| side(&both, one)), ["Panel", "Tablero"]);
        assert_eq!(joined("200 A", "200 A"), "200 A");
        assert_eq!(SIDES.map(|one| side("200 A", one)), ["200 A"; 2]);
        assert_eq!(in_one_line(&both), "Panel · Tablero");
    }

    #[test]
    fn what_is_put_together_is_put_together_in_each_language() {
        let state = joined("on", "encendido");
        let text = each([&state, "15 A"], |[state, amps]| format!("{state}, {amps}"));
        let sides = SIDES.map(|one| side(&text, one).to_owned());
        assert_eq!(sides, ["on, 15 A", "encendido, 15 A"]);
        assert_eq!(each(["a", "b"], |parts| parts.concat()), "ab");
    }
}
