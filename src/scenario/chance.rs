//! The only place where chance comes in: a named generator, a seed, one stream a purpose.
//!
//! `ChaCha8Rng` promises the same numbers on every platform and release; whole numbers are drawn here and not by a library's distribution, which may change.
//! A golden test pins the numbers.

use rand::Rng as _;
use rand::SeedableRng as _;
use rand::rngs::ChaCha8Rng;

/// What a number is drawn for; each has a stream of its own, so that a new purpose never shifts the others.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Purpose {
    /// When the world does things.
    Story,
    /// The angle between two sources when they meet.
    ClosingAngle,
    /// How many attempts to start an engine fail.
    Starting,
    /// Which of a file's variants it is.
    Variation,
    /// What a simulated learner does.
    Learner,
}

/// `n` whole numbers, each from 0 to its bound, bound included.
pub fn draw(seed: u64, purpose: Purpose, bounds: &[u32]) -> Vec<u32> {
    let mut generator = ChaCha8Rng::seed_from_u64(seed);
    generator.set_stream(match purpose {
        Purpose::Story => 1,
        Purpose::ClosingAngle => 2,
        Purpose::Starting => 3,
        Purpose::Variation => 4,
        Purpose::Learner => 5,
    });
    bounds
        .iter()
        .map(|bound| scale(generator.next_u32(), *bound))
        .collect()
}

/// Maps 32 random bits to 0..=bound by a multiplication; the bias is below one part in 2^32 / bound.
fn scale(bits: u32, bound: u32) -> u32 {
    let wide = u64::from(bits) * (u64::from(bound) + 1);
    u32::try_from(wide >> 32).unwrap_or(bound)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_seed_draws_the_same_numbers_everywhere() {
        assert_eq!(draw(7, Purpose::Story, &[99, 99, 99, 99]), GOLDEN_STORY);
        assert_eq!(draw(7, Purpose::ClosingAngle, &[359]), GOLDEN_ANGLE);
        assert_eq!(draw(7, Purpose::Starting, &[9]), GOLDEN_STARTING);
        assert_eq!(draw(7, Purpose::Variation, &[99, 99]), GOLDEN_VARIATION);
        assert_eq!(draw(7, Purpose::Learner, &[99, 99]), GOLDEN_LEARNER);
    }

    const GOLDEN_STORY: [u32; 4] = [65, 99, 10, 0];
    const GOLDEN_ANGLE: [u32; 1] = [211];
    const GOLDEN_STARTING: [u32; 1] = [5];
    const GOLDEN_VARIATION: [u32; 2] = [90, 98];
    const GOLDEN_LEARNER: [u32; 2] = [53, 68];
}
