//! What a load gets at the end of cords, and which cord would do.
//!
//! The load draws a given current; the cord is as hot as that current leaves it, and loses volts accordingly.
//! A cord does if its ampacity carries the load, its conductors settle within their rating, and its volts lost stay within a limit.
//! Limits of volts lost: 3 % for a branch and 5 % for the whole way (NEC 210.19 and 215.2, informational notes, checked); a cord has no limit of its own in the code.
//! Not covered: the source's own drop, reactance, a load whose current follows its voltage (heaters draw a little less, motors a little more).
//! Accuracy: volts ± 3 % of what is lost.

use super::conductor::Awg;
use super::cord::Cord;
use super::cord::Loaded;
use super::cord::gauges;
use super::cord_lay::Lay;
use super::cord_letters::CordType;

/// Share of the volts that a branch circuit may lose, NEC 210.19, informational note; checked.
pub const BRANCH_DROP: f64 = 0.03;
/// Share that feeder and branch may lose together, the same note; checked.
pub const TOTAL_DROP: f64 = 0.05;

/// What is asked of a cord.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Need {
    /// Amps of the load.
    pub amps: f64,
    /// Volts of the source.
    pub volts: f64,
    /// Feet from the source to the load.
    pub length_ft: f64,
    /// How many conductors carry current.
    pub loaded: Loaded,
    /// Air around the cord, °C.
    pub ambient_c: f64,
    /// Share of the volts that may be lost.
    pub drop: f64,
}

/// What a cord makes of a load: the chain from gauge to what arrives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Delivery {
    /// Gauge of the cord.
    pub awg: Awg,
    /// Amps that the table lets it carry.
    pub ampacity_a: f64,
    /// Ohms there and back, as hot as it gets.
    pub ohm: f64,
    /// Volts lost.
    pub lost_v: f64,
    /// Share of the source's volts that is lost.
    pub lost: f64,
    /// Watts of heat along the cord.
    pub heat_w: f64,
    /// Temperature its conductors settle at, °C; infinite if they run away.
    pub settles_c: f64,
}

/// What `cord`, as it lies, makes of `amps` from a source of `volts`.
/// Beyond softening the figures are those of a cord that is kept at the temperature where insulation chars.
pub fn delivery(cord: &Cord, amps: f64, volts: f64, ambient_c: f64, lay: Lay) -> Delivery {
    let settles_c = cord.settle_c(amps, ambient_c, lay);
    let t_c = settles_c.min(super::insulation::CHARRING_C);
    let lost_v = cord.voltage_drop_v(amps, t_c);
    Delivery {
        awg: cord.awg(),
        ampacity_a: cord.ampacity_a(),
        ohm: 2.0 * cord.resistance_ohm(t_c),
        lost_v,
        lost: lost_v / volts,
        heat_w: cord.heat_w(amps, t_c),
        settles_c,
    }
}

/// The thinnest cord of this type, laid out straight, that does what is asked; `None` if none that is made does.
pub fn cord_that_would_do(kind: CordType, need: &Need) -> Option<Delivery> {
    gauges().find_map(|awg| {
        let cord = Cord::new(kind, awg, need.length_ft, need.loaded)?;
        let got = delivery(&cord, need.amps, need.volts, need.ambient_c, Lay::Straight);
        let does = got.ampacity_a >= need.amps
            && got.settles_c <= cord.rated_c() + 1e-9
            && got.lost <= need.drop;
        does.then_some(got)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn outdoor() -> CordType {
        "SJTW".parse().unwrap()
    }

    fn need(amps: f64, length_ft: f64) -> Need {
        Need {
            amps,
            volts: 120.0,
            length_ft,
            loaded: Loaded::Two,
            ambient_c: 30.0,
            drop: TOTAL_DROP,
        }
    }

    #[test]
    fn a_longer_way_or_a_greater_load_never_asks_for_a_thinner_cord() {
        for amps in [2.0, 6.0, 10.0, 12.5, 16.0, 24.0] {
            let mut before: Option<Awg> = None;
            for length_ft in [10.0, 25.0, 50.0, 75.0, 100.0, 150.0, 200.0] {
                let Some(one) = cord_that_would_do(outdoor(), &need(amps, length_ft)) else {
                    continue;
                };
                assert!(
                    before.is_none_or(|b| one.awg <= b),
                    "{amps} A, {length_ft} ft: {one:?}"
                );
                before = Some(one.awg);
            }
        }
    }

    #[test]
    fn the_cord_that_would_do_does_and_the_next_thinner_does_not() {
        for (amps, length_ft) in [(12.5, 100.0), (5.0, 50.0), (16.0, 25.0), (9.0, 150.0)] {
            let asked = need(amps, length_ft);
            let one = cord_that_would_do(outdoor(), &asked).unwrap();
            assert!(
                one.ampacity_a >= amps && one.lost <= TOTAL_DROP && one.settles_c <= 60.0 + 1e-9
            );
            let thinner: Vec<Awg> = gauges().filter(|awg| *awg > one.awg).collect();
            for awg in thinner {
                let cord = Cord::new(outdoor(), awg, length_ft, Loaded::Two).unwrap();
                let got = delivery(&cord, amps, 120.0, 30.0, Lay::Straight);
                let fails =
                    got.ampacity_a < amps || got.lost > TOTAL_DROP || got.settles_c > 60.0 + 1e-9;
                assert!(fails, "{awg} AWG would have done: {got:?}");
            }
        }
        assert_eq!(
            cord_that_would_do(outdoor(), &need(120.0, 50.0)),
            None,
            "no cord carries it"
        );
    }
}
