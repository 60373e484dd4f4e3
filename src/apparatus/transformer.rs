//! The pole transformer: one high winding, two 120 V halves in series, interlaced secondary.
//!
//! From the name plate (kVA, % resistance, % reactance, no-load loss, magnetizing current) to the numbers a circuit needs.
//! The split is the published interlaced one: Z0 = 0.5 R + j0.8 X for the high winding, Z1 = Z2 = R + j0.4 X for each half.
//! Every transformer carries its core-loss and magnetizing shunt: without it a winding set with nothing connected has no defined volts per turn.
//! Not covered: saturation, inrush, non-interlaced secondaries, taps, fuses.

use crate::units::Complex;

/// Name-plate and test data of a single-phase center-tapped transformer, per unit on its own rating.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CenterTapped {
    /// Rating, kilovolt-amperes.
    pub kva: f64,
    /// Rated volts of the high winding.
    pub primary_v: f64,
    /// Rated volts of each secondary half.
    pub half_v: f64,
    /// Load-loss resistance, full secondary, per unit.
    pub r_pu: f64,
    /// Leakage reactance, full secondary, per unit.
    pub x_pu: f64,
    /// No-load loss, per unit.
    pub no_load_loss_pu: f64,
    /// Reactive part of the exciting current, per unit.
    pub magnetizing_pu: f64,
}

impl CenterTapped {
    /// A 25 kVA, 7 200 V to 120/240 V pole transformer.
    /// R 1.2 %, X 1.7 %, no-load loss 0.2 %: a published example, checked in a copy that quotes it; magnetizing current 0.5 % from memory.
    pub const POLE_25_KVA: Self = Self {
        kva: 25.0,
        primary_v: 7200.0,
        half_v: 120.0,
        r_pu: 0.012,
        x_pu: 0.017,
        no_load_loss_pu: 0.002,
        magnetizing_pu: 0.005,
    };

    /// Resistance of the high winding and of each half, per unit on the rating.
    pub fn winding_r_pu(&self) -> [f64; 3] {
        [0.5 * self.r_pu, self.r_pu, self.r_pu]
    }

    /// Leakage reactance of the pairs high–half 1, high–half 2 and half 1–half 2, per unit on the rating.
    pub fn pair_leakage_pu(&self) -> [f64; 3] {
        [1.2 * self.x_pu, 1.2 * self.x_pu, 0.8 * self.x_pu]
    }

    /// Series impedance of the high winding and of each half, in ohms at its own voltage.
    pub fn winding_impedance_ohm(&self) -> [Complex; 3] {
        let half = Complex::new(self.r_pu, 0.4 * self.x_pu) * self.base_ohm(self.half_v);
        [
            Complex::new(0.5 * self.r_pu, 0.8 * self.x_pu) * self.base_ohm(self.primary_v),
            half,
            half,
        ]
    }

    /// Ohms of the core-loss shunt across the high winding.
    pub fn core_loss_ohm(&self) -> f64 {
        self.base_ohm(self.primary_v) / self.no_load_loss_pu
    }

    /// Ohms of the magnetizing shunt across the high winding, reactive.
    pub fn magnetizing_ohm(&self) -> f64 {
        self.base_ohm(self.primary_v) / self.magnetizing_pu
    }

    /// Turns of the high winding for each turn of one half.
    pub fn turns_ratio(&self) -> f64 {
        self.primary_v / self.half_v
    }

    fn base_ohm(&self, volts: f64) -> f64 {
        volts * volts / (self.kva * 1000.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const POLE: CenterTapped = CenterTapped::POLE_25_KVA;

    /// Series impedance seen at one voltage with the high winding behind the turns.
    fn seen_from_low(halves: f64) -> Complex {
        let [high, first, second] = POLE.winding_impedance_ohm();
        let ratio = halves / POLE.turns_ratio();
        let low = if halves > 1.5 { first + second } else { first };
        high * (ratio * ratio) + low
    }

    #[test]
    fn the_whole_secondary_sees_the_name_plate_impedance() {
        // 0.012 + j0.017 per unit on 240 V and 25 kVA: base 2.304 ohm.
        let z = seen_from_low(2.0) / 2.304;
        assert!(
            (z - Complex::new(0.012, 0.017)).norm_sqr() < 1e-24,
            "full winding {z} pu"
        );
    }

    #[test]
    fn one_half_sees_one_and_a_half_times_the_resistance_and_1_2_times_the_reactance() {
        let z = seen_from_low(1.0) / 0.576;
        assert!(
            (z - Complex::new(0.018, 0.0204)).norm_sqr() < 1e-24,
            "one half {z} pu"
        );
    }

    #[test]
    fn the_pairs_are_sums_of_the_star() {
        let [high, first, _] = POLE.winding_impedance_ohm();
        let (high, half) = (high.im / 2073.6, first.im / 0.576);
        let [high_first, high_second, halves] = POLE.pair_leakage_pu();
        assert!(
            (high_first - high - half).abs() < 1e-15 && (high_second - high - half).abs() < 1e-15
        );
        assert!(
            (halves - 2.0 * half).abs() < 1e-15,
            "between halves {halves}, twice {half}"
        );
    }
}
