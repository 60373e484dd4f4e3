//! Numbers as a reader writes them: separators of the locale, and no more digits than mean something.
//!
//! Single values show three significant digits without trailing zeros; from 100 to 10 000 they are whole, so that a rating shows as it is stamped.
//! Ends of a range show two significant digits, because a range says that more isn't known.
//! Separators come from the Unicode locale data compiled into `icu_decimal`.

use fixed_decimal::Decimal;
use icu_decimal::DecimalFormatter;
use icu_decimal::options::DecimalFormatterOptions;
use icu_locale_core::Locale;

/// How many digits a value deserves.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Digits {
    /// A value on its own: three significant, whole from 100 to 10 000.
    Single,
    /// An end of a range: two significant, zeros kept so that both ends look alike.
    RangeEnd,
    /// Whole numbers only.
    Whole,
    /// One decimal below 3, whole above: meters beside feet.
    Meters,
}

/// How whole numbers are written where no sentence stands around them: at the marks of a scale.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Numbers {
    pub(super) locale: String,
}

impl Numbers {
    /// A value to the whole unit, without its sign.
    pub fn whole(&self, value: f64) -> String {
        format(value.abs(), Digits::Whole, &self.locale).unwrap_or_default()
    }
}

/// `value` in the digits of `locale`, or nothing if it is no finite number.
pub(super) fn format(value: f64, digits: Digits, locale: &str) -> Option<String> {
    if !value.is_finite() {
        return None;
    }
    let decimals = decimals(value.abs(), digits);
    let mut text = format!("{:.decimals$}", rounded(value, digits));
    if digits == Digits::Single && text.contains('.') {
        text.truncate(text.trim_end_matches('0').trim_end_matches('.').len());
    }
    if text.trim_matches(['-', '0', '.']).is_empty() {
        "0".clone_into(&mut text);
    }
    let decimal: Decimal = text.parse().ok()?;
    let locale: Locale = locale.parse().ok()?;
    let formatter =
        DecimalFormatter::try_new(locale.into(), DecimalFormatterOptions::default()).ok()?;
    Some(formatter.format(&decimal).to_string())
}

/// Decimals to show; below a millionth nothing is worth showing.
fn decimals(size: f64, digits: Digits) -> usize {
    let significant = match digits {
        Digits::Single => 3,
        Digits::RangeEnd => 2,
        Digits::Whole => return 0,
        Digits::Meters => return usize::from(size < 3.0),
    };
    if size < 1e-6 {
        return 0;
    }
    let mut decimals = 0;
    let mut scaled = size;
    let whole_from = if significant == 3 { 99.95 } else { 9.95 };
    while scaled < whole_from && decimals < 8 {
        scaled *= 10.0;
        decimals += 1;
    }
    decimals
}

/// The value rounded where the digits that it deserves end before the decimal point.
fn rounded(value: f64, digits: Digits) -> f64 {
    let (from, most) = match digits {
        Digits::Single => (10_000.0, 1000.0),
        Digits::RangeEnd => (100.0, 100.0),
        Digits::Whole | Digits::Meters => return value,
    };
    if value.abs() < from {
        return value;
    }
    let mut step = 1.0;
    while value.abs() / step >= most {
        step *= 10.0;
    }
    (value / step).round() * step
}

#[cfg(test)]
mod tests {
    use super::*;

    fn en(value: f64) -> String {
        format(value, Digits::Single, "en-US").unwrap()
    }

    #[test]
    fn a_value_shows_three_significant_digits_and_whole_numbers_from_100() {
        assert_eq!(en(7200.0), "7,200");
        assert_eq!(en(7198.4), "7,198");
        assert_eq!(en(60_499.0), "60,500");
        assert_eq!(en(12_500.0), "12,500");
        assert_eq!(en(240.4), "240");
        assert_eq!(en(99.96), "100");
        assert_eq!(en(15.34), "15.3");
        assert_eq!(en(2.044), "2.04");
        assert_eq!(en(30.0), "30");
        assert_eq!(en(0.012_34), "0.0123");
        assert_eq!(en(0.0), "0");
        assert_eq!(en(-0.000_000_1), "0");
        assert_eq!(en(-12.5), "-12.5");
    }

    #[test]
    fn the_ends_of_a_range_show_two_significant_digits() {
        let end = |value| format(value, Digits::RangeEnd, "en-US").unwrap();
        assert_eq!(end(2.0), "2.0");
        assert_eq!(end(3.57), "3.6");
        assert_eq!(end(12.4), "12");
        assert_eq!(end(0.05), "0.050");
        assert_eq!(end(9.96), "10");
        assert_eq!(end(2046.0), "2,000");
        assert_eq!(end(2175.3), "2,200");
    }

    #[test]
    fn separators_follow_the_locale() {
        let one = |locale| format(7200.0, Digits::Single, locale).unwrap();
        assert_eq!(one("es-CO"), "7.200");
        assert_eq!(one("es-MX"), "7,200");
        assert_eq!(format(2.5, Digits::Single, "es-CO").unwrap(), "2,5");
    }

    #[test]
    fn a_mark_of_a_scale_is_written_as_in_a_sentence() {
        let of = |locale: &str| Numbers {
            locale: locale.to_owned(),
        };
        assert_eq!(of("en-US").whole(10_000.0), "10,000");
        assert_eq!(of("es-CO").whole(-7_499.6), "7.500");
        assert_eq!(of("en-US").whole(0.2), "0");
    }

    #[test]
    fn what_is_no_number_is_not_written_as_one() {
        assert_eq!(format(f64::NAN, Digits::Single, "en-US"), None);
        assert_eq!(format(f64::INFINITY, Digits::RangeEnd, "en-US"), None);
    }
}
