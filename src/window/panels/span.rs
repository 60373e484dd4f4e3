//! The stretch of a drill that its timeline and curves show: all of it, or a part brought nearer.
//!
//! Never longer than the drill and never past its ends.
//! It does not cover what is drawn: see [`super::timeline`] and [`super::plot`].

/// The shortest stretch, milliseconds.
const SHORTEST_MS: u64 = 4_000;
/// What is seen before and after a moment that is looked up, milliseconds; and when it is looked up once more.
const AROUND_MS: u64 = 60_000;
const CLOSE_MS: u64 = 6_000;

/// A stretch of the drill clock, milliseconds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Span {
    /// Where it begins.
    pub(crate) from_ms: u64,
    /// Where it ends.
    pub(crate) to_ms: u64,
}

impl Span {
    /// All of a drill of this length.
    pub(crate) fn whole(length_ms: u64) -> Self {
        Self {
            from_ms: 0,
            to_ms: length_ms.max(1),
        }
    }

    /// How long it is, milliseconds.
    pub(crate) fn length_ms(self) -> u64 {
        self.to_ms.saturating_sub(self.from_ms).max(1)
    }

    /// A stretch that begins and is as long as said, as far as the drill goes.
    fn fitted(from_ms: u64, length_ms: u64, drill_ms: u64) -> Self {
        let drill_ms = drill_ms.max(1);
        let length_ms = length_ms.max(SHORTEST_MS).min(drill_ms);
        let from_ms = from_ms.min(drill_ms - length_ms);
        Self {
            from_ms,
            to_ms: from_ms + length_ms,
        }
    }

    /// What lies around some moments; closer if they are looked up already.
    pub(crate) fn around(self, first_ms: u64, last_ms: u64, drill_ms: u64) -> Self {
        let of = |margin: u64| {
            let from = first_ms.saturating_sub(margin);
            Self::fitted(from, last_ms.saturating_add(margin) - from, drill_ms)
        };
        let near = of(AROUND_MS);
        if self.length_ms() > near.length_ms() {
            near
        } else {
            of(CLOSE_MS)
        }
    }

    /// Half as long, or twice; a share of it, from 0 to 1, stays where it is.
    pub(crate) fn step(self, nearer: bool, share: f64, drill_ms: u64) -> Self {
        let factor = if nearer { 0.5 } else { 2.0 };
        self.scaled(factor, share, drill_ms)
    }

    /// Longer by a factor, or shorter if it is less than 1.
    #[expect(
        clippy::cast_precision_loss,
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a screen is coarser, and what is negative becomes the start"
    )]
    pub(crate) fn scaled(self, factor: f64, share: f64, drill_ms: u64) -> Self {
        let length = self.length_ms() as f64;
        let longest = drill_ms.max(1) as f64;
        let scaled = (length * factor).max(SHORTEST_MS as f64).min(longest);
        let from = self.from_ms as f64 + (length - scaled) * share.clamp(0.0, 1.0);
        Self::fitted(from.max(0.0) as u64, scaled as u64, drill_ms)
    }

    /// Moved by a share of its length, later if that is positive.
    #[expect(
        clippy::cast_precision_loss,
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a screen is coarser, and what is negative becomes the start"
    )]
    pub(crate) fn moved(self, share: f64, drill_ms: u64) -> Self {
        let from = self.from_ms as f64 + self.length_ms() as f64 * share;
        Self::fitted(from.max(0.0) as u64, self.length_ms(), drill_ms)
    }

    /// Seconds between two marks on a width in points: ten marks at most, and each with room for its words.
    pub(crate) fn second_step(self, width: f32) -> u32 {
        const MARK: f64 = 50.0;
        let seconds = u32::try_from(self.length_ms() / 1_000).unwrap_or(u32::MAX);
        let fits = |step: &u32| {
            let marks = seconds / step;
            marks <= 10 && f64::from(marks) * MARK <= f64::from(width)
        };
        [1, 2, 5, 10, 20, 30, 60, 120, 300, 600, 1_200, 1_800, 3_600]
            .into_iter()
            .find(fits)
            .unwrap_or(7_200)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const DRILL_MS: u64 = 3_600_000;

    #[test]
    fn a_moment_is_brought_nearer_and_then_closer() {
        let near = Span::whole(DRILL_MS).around(600_000, 600_000, DRILL_MS);
        assert_eq!((near.from_ms, near.to_ms), (540_000, 660_000));
        let close = near.around(600_000, 600_000, DRILL_MS);
        assert_eq!((close.from_ms, close.to_ms), (594_000, 606_000));
    }

    #[test]
    fn a_stretch_never_leaves_the_drill() {
        let end = Span::whole(DRILL_MS).around(DRILL_MS, DRILL_MS, DRILL_MS);
        assert_eq!(end.to_ms, DRILL_MS);
        assert_eq!(end.moved(3.0, DRILL_MS), end);
        assert_eq!(end.moved(-99.0, DRILL_MS).from_ms, 0);
        let mut all = end;
        for _ in 0..20 {
            all = all.step(false, 0.5, DRILL_MS);
        }
        assert_eq!(all, Span::whole(DRILL_MS));
        let mut short = all;
        for _ in 0..20 {
            short = short.step(true, 0.5, DRILL_MS);
        }
        assert_eq!(short.length_ms(), SHORTEST_MS);
    }

    #[test]
    fn what_the_pointer_is_on_stays_where_it_is() {
        let half = Span::whole(DRILL_MS).step(true, 0.25, DRILL_MS);
        assert_eq!((half.from_ms, half.to_ms), (450_000, 2_250_000));
    }

    #[test]
    fn a_drill_shorter_than_any_stretch_is_seen_whole() {
        assert_eq!(
            Span::whole(1_000).step(true, 0.5, 1_000),
            Span::whole(1_000)
        );
        assert_eq!(Span::whole(0).around(0, 0, 0), Span::whole(0));
    }

    #[test]
    fn ten_marks_are_the_most() {
        for length_ms in [4_000, 61_000, 600_000, 7_200_000] {
            let span = Span::whole(length_ms);
            assert!(length_ms / 1_000 / u64::from(span.second_step(900.0)) <= 10);
        }
    }
}
