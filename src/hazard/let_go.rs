//! When a current is felt, when a hand can't open any more, when breathing stops, and for how long one hangs on.
//!
//! The classic figures for adults, 60 Hz, hand to hand or hand to feet: averages and the current that 99.5 % of people can still let go of.
//! A normal distribution is drawn through those two figures, so shares between them are good to about 2 mA; children aren't covered.
//! What the scales of NIOSH and OSHA call a current is in [`Effect`]; their steps overlap, because people differ.
//! Source: IEC 60479-1 and the tests it rests on; NIOSH 98-131; OSHA 3075.

use crate::units::portable;

/// Which of the two groups that were tested.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Adult {
    /// Women.
    Woman,
    /// Men.
    Man,
}

impl Adult {
    /// Current that 99.5 % can let go of, milliamps; checked in a copy that quotes it.
    pub fn surely_lets_go_ma(self) -> f64 {
        match self {
            Self::Woman => 6.0,
            Self::Man => 9.0,
        }
    }

    /// Current at which half can let go, milliamps; from a discussion that quotes the source.
    pub fn half_let_go_ma(self) -> f64 {
        match self {
            Self::Woman => 10.5,
            Self::Man => 16.0,
        }
    }

    /// Current that half of people feel, milliamps; men checked in a copy that quotes it, women part from memory.
    pub fn half_feel_ma(self) -> f64 {
        match self {
            Self::Woman => 0.7,
            Self::Man => 1.1,
        }
    }
}

/// Share of people, 0 to 1, who can still let go at `current_ma` milliamps.
pub fn share_that_lets_go(current_ma: f64, who: Adult) -> f64 {
    let half = who.half_let_go_ma();
    let spread = (half - who.surely_lets_go_ma()) / ONE_IN_200;
    portable::normal_share((half - current_ma) / spread)
}

/// Seconds that a hand stays on: until something clears the current, or until it lets go.
///
/// A current that 99.5 % of women can let go of is dropped within [`STARTLE_S`]; above it the hand may be held, so the source must clear it.
/// Where nothing clears it, [`HELD_S`]: the end of the published figures; nobody knows the real end.
pub fn contact_s(current_ma: f64, cleared_after_s: Option<f64>) -> f64 {
    let by_hand = if current_ma <= Adult::Woman.surely_lets_go_ma() {
        STARTLE_S
    } else {
        HELD_S
    };
    cleared_after_s.map_or(by_hand, |cleared| cleared.min(by_hand))
}

/// A start, and the hand is away: the reaction time of a grown person, from memory, 0.2 to 1 s.
pub const STARTLE_S: f64 = 0.5;

/// The longest time that the zones of IEC 60479-1 are drawn for.
pub const HELD_S: f64 = 10.0;

/// What a current of some seconds does, as two public scales name it; each begins at the current named.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Effect {
    /// Below 1 mA: not felt as a rule.
    None,
    /// 1 mA: tingles (NIOSH 98-131, OSHA 3075).
    Felt,
    /// 6 mA: painful, and women begin not to let go (OSHA 3075).
    Held,
    /// 20 mA: the muscles of breathing seize (NIOSH 98-131).
    BreathStops,
    /// 100 mA: the heart may fibrillate (NIOSH 98-131).
    Fibrillation,
    /// 2 A: the heart stands still, organs burn (NIOSH 98-131).
    Standstill,
}

impl Effect {
    /// Current at which it begins, milliamps.
    pub fn begins_ma(self) -> f64 {
        match self {
            Self::None => 0.0,
            Self::Felt => 1.0,
            Self::Held => 6.0,
            Self::BreathStops => 20.0,
            Self::Fibrillation => 100.0,
            Self::Standstill => 2000.0,
        }
    }
}

/// The effect of a current in milliamps that lasts for some seconds.
pub fn effect(current_ma: f64) -> Effect {
    let severest_first = [
        Effect::Standstill,
        Effect::Fibrillation,
        Effect::BreathStops,
        Effect::Held,
        Effect::Felt,
    ];
    severest_first
        .into_iter()
        .find(|e| current_ma >= e.begins_ma())
        .unwrap_or(Effect::None)
}

/// Standard deviations from the middle at which 0.5 % are left.
const ONE_IN_200: f64 = 2.575_829_303_548_901;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_two_published_figures_of_each_group_lie_on_its_curve() {
        for who in [Adult::Woman, Adult::Man] {
            let half = share_that_lets_go(who.half_let_go_ma(), who);
            let most = share_that_lets_go(who.surely_lets_go_ma(), who);
            assert!((half - 0.5).abs() < 1e-12, "{who:?}: {half}");
            assert!((most - 0.995).abs() < 1e-12, "{who:?}: {most}");
        }
    }

    #[test]
    fn more_current_never_lets_more_people_go_and_women_hang_on_sooner() {
        let mut before = 1.0;
        for tenth in 10..400_i32 {
            let ma = f64::from(tenth) / 10.0;
            let share = share_that_lets_go(ma, Adult::Man);
            assert!(share <= before, "{ma} mA: {share} after {before}");
            assert!(share_that_lets_go(ma, Adult::Woman) <= share, "{ma} mA");
            before = share;
        }
    }

    #[test]
    fn what_can_be_let_go_is_brief_and_what_cannot_lasts_until_it_is_cleared() {
        assert!((contact_s(5.0, None) - STARTLE_S).abs() < 1e-12);
        assert!((contact_s(80.0, None) - HELD_S).abs() < 1e-12);
        assert!((contact_s(80.0, Some(0.025)) - 0.025).abs() < 1e-12);
        assert!((contact_s(80.0, Some(60.0)) - HELD_S).abs() < 1e-12);
    }

    #[test]
    fn each_effect_begins_where_it_is_said_to() {
        let effects = [
            Effect::None,
            Effect::Felt,
            Effect::Held,
            Effect::BreathStops,
            Effect::Fibrillation,
            Effect::Standstill,
        ];
        for pair in effects.windows(2) {
            let begins = pair[1].begins_ma();
            assert_eq!((effect(begins - 1e-6), effect(begins)), (pair[0], pair[1]));
        }
    }
}
