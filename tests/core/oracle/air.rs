//! The second judge's own arithmetic of air: two rooms, oxygen, blood and the alarm, by small steps.

use outage_drill::units::portable;

use super::Stand;

/// Gas and oxygen in garage and house, and gas in the blood of those inside, integrated by small steps.
pub(super) struct Air {
    /// Parts per million in the garage and in the house.
    ppm: [f64; 2],
    /// Shares of oxygen there.
    oxygen: [f64; 2],
    dose: f64,
    blood: f64,
    pub(super) alarmed: f64,
    pub(super) most: f64,
}

/// Air that passes in a second, cubic meters: garage to outdoors, house to outdoors, one to the other.
struct Draft {
    garage: f64,
    house: f64,
    between: f64,
}

impl Air {
    /// Fresh air, and blood of somebody who has breathed it.
    pub(super) const FRESH: Self = Self {
        ppm: [0.0; 2],
        oxygen: [0.209; 2],
        dose: 0.0,
        blood: 0.8,
        alarmed: 0.0,
        most: 0.0,
    };

    /// What the engine breathes decides what it gives; grams to ppm and to liters at 25 °C.
    pub(super) fn pass(&mut self, stand: &Stand<'_>, seconds: f64) {
        let in_garage = stand.is("generator-place", "garage");
        let inside = stand.is("household", "inside");
        let draft = Draft::of(stand);
        let fastest = (draft.house + draft.between) / stand.scenario.site.air_m3;
        let engine_s: f64 = if in_garage && stand.running() {
            0.1
        } else {
            0.5
        };
        let step_s = engine_s.min(0.1 / fastest);
        let mut left = seconds;
        while left > 0.0 {
            let dt = left.min(step_s);
            left -= dt;
            let before = self.ppm[1];
            self.blow(stand, &draft, in_garage, dt);
            let middle = f64::midpoint(before, self.ppm[1]);
            self.dose += if middle >= 60.0 {
                dt / alarm_s(middle)
            } else {
                -self.dose * dt / 1800.0
            };
            self.breathe(if inside { middle } else { 0.0 }, dt);
            self.alarmed = self.alarmed.max(self.dose);
            self.most = self.most.max(self.blood);
        }
    }

    /// One step of both rooms.
    fn blow(&mut self, stand: &Stand<'_>, draft: &Draft, in_garage: bool, dt: f64) {
        let site = &stand.scenario.site;
        // Without a garage there is a room that nothing goes in or out of.
        let volumes = [site.garage.map_or(1.0, |g| g.air_m3), site.air_m3];
        let (gas_g, oxygen_g) = if stand.running() {
            let breathed = if in_garage { self.oxygen[0] } else { 0.209 };
            emitted(stand, breathed)
        } else {
            (0.0, 0.0)
        };
        let share = if in_garage {
            [1.0, 0.0]
        } else if stand.is("generator-place", "patio") && stand.is("window", "open")
            || stand.is("generator-place", "lean-to")
        {
            [0.0, 0.05]
        } else {
            [0.0, 0.002]
        };
        let out = [draft.garage, draft.house];
        for (values, fresh, source, shares) in [
            (&mut self.ppm, 0.0, gas_g * 1000.0 / (28.01 / 24.45), share),
            (
                &mut self.oxygen,
                0.209,
                -oxygen_g / 32.0 * 0.02445,
                [share[0], 0.0],
            ),
        ] {
            let crossing = (values[1] - values[0]) * draft.between;
            let flow = |room: usize, other: f64| {
                (fresh - values[room]) * out[room] + other + source * shares[room]
            };
            let flows = [flow(0, crossing), flow(1, -crossing)];
            for room in 0..2 {
                values[room] += flows[room] / volumes[room] * dt;
            }
        }
    }

    /// Coburn, Forster and Kane: affinity 218, 100 mmHg of oxygen, 30 mL/min/mmHg, 6 L/min, 5.5 L of blood, 0.2 mL of oxygen a mL.
    fn breathe(&mut self, ppm: f64, dt: f64) {
        let resistance = 1.0 / 30.0 + 713.0 / 6000.0;
        let held = self.blood / 100.0 * 0.2;
        let back = held * 100.0 / (218.0 * (0.2 - held));
        let flow = 0.007 + (ppm * 1e-6 * 713.0 - back) / resistance;
        self.blood = ((held + flow / 5500.0 * dt / 60.0) / 0.2 * 100.0).min(99.9);
    }
}

impl Draft {
    fn of(stand: &Stand<'_>) -> Self {
        let site = &stand.scenario.site;
        let pick = |open: bool, pair: (f64, f64)| if open { pair.1 } else { pair.0 };
        let house = pick(stand.is("window", "open"), site.air_changes_per_h);
        let Some(garage) = site.garage else {
            return Self {
                garage: 0.0,
                house: house * site.air_m3 / 3600.0,
                between: 0.0,
            };
        };
        let big = pick(stand.is("garage-door", "open"), garage.changes_per_h);
        let door = pick(stand.is("house-door", "open"), garage.to_house_m3_per_h);
        Self {
            garage: big * garage.air_m3 / 3600.0,
            house: house * site.air_m3 / 3600.0,
            between: door / 3600.0,
        }
    }
}

/// Grams of gas given and of oxygen taken in a second: 500 g/h at half load in fresh air, eight times that at 17 % of oxygen, none at 14 %.
fn emitted(stand: &Stand<'_>, oxygen: f64) -> (f64, f64) {
    let spec = &stand.scenario.site.generator.spec;
    let fuel = spec.fuel_gal_per_h(stand.moment.readings.generator.watts.max(0.0));
    let half = spec.fuel_gal_per_h(spec.rated_w / 2.0);
    let fuel_g = fuel * 3.785_411_784 * 740.0 / 3600.0;
    let rich = 500.0 / 3600.0 * fuel / half;
    let times = if oxygen >= 0.209 {
        1.0
    } else {
        8.0_f64.min(1.0 + 7.0 * (0.209 - oxygen) / 0.039)
    };
    let breath = ((oxygen - 0.14) / 0.03).clamp(0.0, 1.0);
    // No more than nine tenths of the fuel's carbon, 12 grams in 13.875.
    let gas = (rich * times).min(0.9 * fuel_g / 13.875 * 28.01) * breath;
    // CH1.85 needs 1.4625 molecules of oxygen for each carbon, half a one less where it leaves as monoxide.
    let taken = fuel_g * breath / 13.875 * 1.4625 * 31.998 - gas * 16.0 / 28.01;
    (gas, taken.max(0.0))
}

/// UL 2034, middles of the bands: 70 ppm in 120 min, 150 in 22.4, 400 in 7.75; straight on logarithmic axes.
fn alarm_s(ppm: f64) -> f64 {
    let ((p, s), (q, t)) = if ppm < 150.0 {
        ((70.0, 7200.0), (150.0, 1341.6))
    } else {
        ((150.0, 1341.6), (400.0, 464.8))
    };
    let slope = portable::ln(t / s) / portable::ln(q / p);
    s * portable::power(ppm / p, slope)
}
