//! A pseudo-locale: English with accents and about a third longer, placeables untouched.
//!
//! It shows on sight which text does not come from the word files, and which place is too narrow for a longer language.
//! It does not test right-to-left writing.

use std::borrow::Cow;

/// The transform that the pseudo-locale's bundle applies to every stretch of text.
pub(super) fn transform(text: &str) -> Cow<'_, str> {
    let mut out = String::with_capacity(text.len() * 2);
    for letter in text.chars() {
        let accented = accent(letter);
        out.push(accented);
        if "aeiouAEIOU".contains(letter) {
            out.push(accented);
        }
    }
    Cow::Owned(out)
}

fn accent(letter: char) -> char {
    const PLAIN: &str = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";
    const ACCENTED: &str = "áƀçđéƒǧħíĵķłmñóþqřšŧúvŵxýžÁƁÇĐÉƑǦĦÍĴĶŁMÑÓÞQŘŠŦÚVŴXÝŽ";
    PLAIN
        .chars()
        .position(|plain| plain == letter)
        .and_then(|index| ACCENTED.chars().nth(index))
        .unwrap_or(letter)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_grows_by_about_a_third_and_keeps_digits() {
        let plain = "Turn off the main breaker before you start the generator 240";
        let pseudo = transform(plain);
        let (before, after) = (plain.chars().count(), pseudo.chars().count());
        assert!(
            after * 10 > before * 12 && after * 10 < before * 15,
            "{before} letters became {after}"
        );
        assert!(pseudo.ends_with("240"), "{pseudo}");
    }
}
