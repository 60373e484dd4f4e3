//! What a voltage tester shows, and what may be concluded from it.
//!
//! A tester that stays dark proves nothing by itself: its battery may be flat, its range wrong, or its kind unfit for what it is held to.
//! So it is held to a point known to be live, to the point in question, and to the known point again; only then is "no light" worth something.
//! 29 CFR 1910.333(b)(2)(iv)(B) asks for the check before and after above 600 V (checked in a copy that quotes it); NFPA 70E, 120.6, for every voltage (from memory).
//! Pure logic on volts handed in; not covered: phantom volts on long open wires, direct current, test leads that break.

/// How a tester senses.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Sensing {
    /// Two tips: it sees the volts between them.
    TwoPole,
    /// One tip held near, without contact: it sees volts to earth through the air, and nothing behind metal.
    Proximity,
}

/// A tester.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tester {
    /// How it senses.
    pub sensing: Sensing,
    /// The least volts that it shows.
    pub least_v: f64,
    /// The most volts that it may be held to.
    pub most_v: f64,
    /// Whether its battery has charge.
    pub powered: bool,
}

/// What a point has.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Held {
    /// Volts between the two points touched.
    pub across_v: f64,
    /// Volts to earth; `None` where nothing refers the circuit to earth.
    pub to_earth_v: Option<f64>,
    /// Whether grounded metal lies between the tip and the conductor, as in a shielded cable or a metal case.
    pub shielded: bool,
}

/// What a tester shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Shown {
    /// No light.
    Dark,
    /// Light: volts are there.
    Light,
}

/// What three tests together justify.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Conclusion {
    /// The point is live: a light needs no proof.
    Live,
    /// The point had no volts that this tester sees, and the tester worked before and after.
    ProvedDead,
    /// Dark, and nothing shows that the tester worked before.
    NotTriedBefore,
    /// Dark, and nothing shows that the tester still worked after.
    NotTriedAfter,
    /// Dark on the known live point too: the tester is at fault.
    TesterFailed,
}

/// What a tester shows where it is held; `None` where holding it there is beyond what it is made for.
pub fn shows(tester: &Tester, held: Held) -> Option<Shown> {
    let volts = match tester.sensing {
        Sensing::TwoPole => held.across_v,
        Sensing::Proximity if held.shielded => 0.0,
        Sensing::Proximity => held.to_earth_v.unwrap_or(0.0),
    };
    if held.across_v.max(held.to_earth_v.unwrap_or(0.0)) > tester.most_v {
        None
    } else if tester.powered && volts >= tester.least_v {
        Some(Shown::Light)
    } else {
        Some(Shown::Dark)
    }
}

/// What may be concluded about a point: from the test on it, and from the tests on a point known to be live before and after it, where they were made.
pub fn conclude(before: Option<Shown>, on_point: Shown, after: Option<Shown>) -> Conclusion {
    match (before, on_point, after) {
        (_, Shown::Light, _) => Conclusion::Live,
        (Some(Shown::Dark), ..) | (.., Some(Shown::Dark)) => Conclusion::TesterFailed,
        (None, ..) => Conclusion::NotTriedBefore,
        (Some(Shown::Light), Shown::Dark, None) => Conclusion::NotTriedAfter,
        (Some(Shown::Light), Shown::Dark, Some(Shown::Light)) => Conclusion::ProvedDead,
    }
}

impl Tester {
    /// The usual two-pole tester for a house: 50 to 600 V, by its battery.
    pub const HOUSE: Self = Self {
        sensing: Sensing::TwoPole,
        least_v: 50.0,
        most_v: 600.0,
        powered: true,
    };

    /// A line crew's contact detector on a stick: from a tenth of the nominal 7 200 V, as makers usually set it (common practice).
    pub const LINE: Self = Self {
        sensing: Sensing::TwoPole,
        least_v: 720.0,
        most_v: 15_000.0,
        powered: true,
    };
}

#[cfg(test)]
mod tests {
    use super::*;

    const HOT: Held = Held {
        across_v: 120.0,
        to_earth_v: Some(119.0),
        shielded: false,
    };

    #[test]
    fn a_faulty_or_unfit_tester_stays_dark_on_a_live_wire() {
        let flat = Tester {
            powered: false,
            ..Tester::HOUSE
        };
        let near = Tester {
            sensing: Sensing::Proximity,
            ..Tester::HOUSE
        };
        let wrong_range = Tester {
            least_v: 1000.0,
            ..Tester::HOUSE
        };
        assert_eq!(shows(&Tester::HOUSE, HOT), Some(Shown::Light));
        assert_eq!(shows(&flat, HOT), Some(Shown::Dark));
        assert_eq!(shows(&wrong_range, HOT), Some(Shown::Dark));
        let shielded = Held {
            shielded: true,
            ..HOT
        };
        assert_eq!(shows(&near, HOT), Some(Shown::Light));
        assert_eq!(shows(&near, shielded), Some(Shown::Dark));
        let floating = Held {
            to_earth_v: None,
            ..HOT
        };
        assert_eq!(
            shows(&near, floating),
            Some(Shown::Dark),
            "nothing refers it to earth"
        );
        assert_eq!(shows(&Tester::HOUSE, floating), Some(Shown::Light));
    }

    #[test]
    fn a_line_detector_misses_volts_that_grounds_or_a_low_source_leave_and_that_still_kill() {
        let sagging = Held {
            across_v: 600.0,
            to_earth_v: Some(600.0),
            shielded: false,
        };
        assert_eq!(shows(&Tester::LINE, sagging), Some(Shown::Dark));
        assert_eq!(
            shows(
                &Tester::HOUSE,
                Held {
                    across_v: 7200.0,
                    ..HOT
                }
            ),
            None
        );
    }

    #[test]
    fn only_a_tester_that_lit_before_and_after_proves_a_point_dead() {
        let seen = [None, Some(Shown::Dark), Some(Shown::Light)];
        for before in seen {
            for after in seen {
                assert_eq!(conclude(before, Shown::Light, after), Conclusion::Live);
                let proved = conclude(before, Shown::Dark, after) == Conclusion::ProvedDead;
                let both = before == Some(Shown::Light) && after == Some(Shown::Light);
                assert_eq!(proved, both, "{before:?}, {after:?}");
            }
        }
        assert_eq!(
            conclude(None, Shown::Dark, None),
            Conclusion::NotTriedBefore
        );
        let once = conclude(Some(Shown::Light), Shown::Dark, None);
        assert_eq!(once, Conclusion::NotTriedAfter);
        let died = conclude(Some(Shown::Light), Shown::Dark, Some(Shown::Dark));
        assert_eq!(died, Conclusion::TesterFailed);
    }

    #[test]
    fn a_flat_tester_can_never_prove_a_live_point_dead() {
        let flat = Tester {
            powered: false,
            ..Tester::HOUSE
        };
        let shown = shows(&flat, HOT);
        assert_ne!(
            conclude(shown, shown.unwrap(), shown),
            Conclusion::ProvedDead
        );
    }
}
