//! The second judge's own arithmetic of air: two rooms and the home next door, oxygen, blood and alarms, by small steps.

use crate::drill::Moment;
use crate::hazard::monoxide::Placement;
use crate::scenario::Scenario;
use crate::site::Place;
use crate::units::portable;

use super::{Judgment, Stand, stands};

/// Percent of carboxyhemoglobin that overcomes.
const OVERCOME_PCT: f64 = 40.0;
/// Grams an hour that a neighbor's engine beside an opening lets in: a twentieth of 500.
const FROM_NEIGHBOR_G_PER_H: f64 = 25.0;

pub(super) fn judge(scenario: &Scenario, moments: &[Moment], judgment: &mut Judgment) {
    let mut air = Air::fresh(scenario);
    let all = stands(scenario, moments);
    for (stand, next) in all.clone().zip(all.skip(1)) {
        air.pass(&stand, next.moment.at.since(stand.moment.at).seconds());
    }
    judgment.weigh("gas", air.gas);
    judgment.weigh("gas-next-door", air.next_door.most);
    judgment.weigh("overcome", air.most / OVERCOME_PCT);
    if air.not_ours >= 0.97 {
        // Whose gas it was that sounded first hangs on the second.
        judgment.unsure.insert("gas");
    }
}

/// Gas and oxygen in garage and house, and gas in the blood of those inside, integrated by small steps.
struct Air {
    /// Parts per million in the garage and in the house.
    ppm: [f64; 2],
    /// Shares of oxygen there.
    oxygen: [f64; 2],
    alarm: Alarm,
    next_door: Alarm,
    next_door_ppm: f64,
    /// Blood of those who are awake, and of each who sleeps, percent.
    blood: Vec<f64>,
    /// The most in anybody's blood.
    most: f64,
    /// How near the alarm came while the house's own engine ran or had run, or no other did.
    gas: f64,
    /// How near it came by a neighbor's engine alone.
    not_ours: f64,
}

/// What an alarm has gathered, and the most of it.
#[derive(Default)]
struct Alarm {
    dose: f64,
    most: f64,
}

impl Alarm {
    fn pass(&mut self, ppm: f64, dt: f64) {
        self.dose += if ppm >= 60.0 {
            dt / alarm_s(ppm)
        } else {
            -self.dose * dt / 1800.0
        };
        self.most = self.most.max(self.dose);
    }
}

/// How somebody breathes: diffusion, mL/min/mmHg, and ventilation, mL/min.
const AWAKE: (f64, f64) = (30.0, 6000.0);
const ASLEEP: (f64, f64) = (25.0, 4200.0);

/// Where the exhaust goes: shares of it into garage and house, and the room whose air the engine breathes.
struct Exhaust {
    shares: [f64; 2],
    breathes: Option<usize>,
}

/// Air that passes in a second, cubic meters: garage to outdoors, house to outdoors, one to the other.
struct Draft {
    garage: f64,
    house: f64,
    between: f64,
}

impl Air {
    /// Fresh air, and blood of people who have breathed it.
    fn fresh(scenario: &Scenario) -> Self {
        Self {
            ppm: [0.0; 2],
            oxygen: [0.209; 2],
            alarm: Alarm::default(),
            next_door: Alarm::default(),
            next_door_ppm: 0.0,
            blood: vec![0.8; 1 + scenario.site.indoors.people.len()],
            most: 0.0,
            gas: 0.0,
            not_ours: 0.0,
        }
    }

    fn pass(&mut self, stand: &Stand<'_>, seconds: f64) {
        let draft = Draft::of(stand);
        let exhaust = Exhaust::of(stand);
        let burns = Engine::of(stand);
        let fastest = (draft.house + draft.between) / stand.scenario.site.air_m3;
        let beside = exhaust.breathes.is_some() && stand.running();
        let engine_s: f64 = if beside { 0.1 } else { 0.5 };
        let step_s = engine_s.min(0.1 / fastest);
        let breathing = breathing(stand);
        let engine = stand.moment.conditions.engine;
        let ours = stand.running() || engine.stopped_at.is_some();
        let ours = ours || !stand.moment.conditions.indoors.neighbor_runs;
        let (mut left, mut near) = (seconds, 0.0_f64);
        while left > 0.0 {
            let dt = left.min(step_s);
            left -= dt;
            let before = self.ppm[1];
            self.blow(stand, &draft, &exhaust, &burns, dt);
            self.blow_next_door(stand, &burns, dt);
            let middle = f64::midpoint(before, self.ppm[1]);
            self.alarm.pass(middle, dt);
            near = near.max(self.alarm.dose);
            for (blood, breathes) in self.blood.iter_mut().zip(&breathing) {
                let (lungs, inside) = *breathes;
                *blood = breathe(*blood, if inside { middle } else { 0.0 }, lungs, dt);
                self.most = self.most.max(*blood);
            }
        }
        let of = if ours {
            &mut self.gas
        } else {
            &mut self.not_ours
        };
        *of = of.max(near);
    }

    /// One step of both rooms.
    fn blow(
        &mut self,
        stand: &Stand<'_>,
        draft: &Draft,
        exhaust: &Exhaust,
        engine: &Engine,
        dt: f64,
    ) {
        let site = &stand.scenario.site;
        // Without a garage there is a room that nothing goes in or out of.
        let volumes = [site.garage.map_or(1.0, |g| g.air_m3), site.air_m3];
        let breathed = exhaust.breathes.map_or(0.209, |room| self.oxygen[room]);
        let (gas_g, oxygen_g) = engine.emits(breathed);
        let mut gas = exhaust.shares.map(|share| share * gas_g);
        if stand.moment.conditions.indoors.neighbor_runs {
            gas[1] += FROM_NEIGHBOR_G_PER_H / 3600.0;
        }
        let taken = [0, 1].map(|room| {
            let own = exhaust.breathes == Some(room);
            if own { -oxygen_g } else { 0.0 }
        });
        let out = [draft.garage, draft.house];
        let ppm_of = 1000.0 / (28.01 / 24.45);
        let share_of = 0.02445 / 32.0;
        for (values, fresh, sources) in [
            (&mut self.ppm, 0.0, gas.map(|g| g * ppm_of)),
            (&mut self.oxygen, 0.209, taken.map(|g| g * share_of)),
        ] {
            let crossing = (values[1] - values[0]) * draft.between;
            let flow = |room: usize, other: f64| {
                (fresh - values[room]) * out[room] + other + sources[room]
            };
            let flows = [flow(0, crossing), flow(1, -crossing)];
            for room in 0..2 {
                values[room] += flows[room] / volumes[room] * dt;
            }
        }
    }

    /// One step of the home next door.
    fn blow_next_door(&mut self, stand: &Stand<'_>, engine: &Engine, dt: f64) {
        let Some(home) = stand.scenario.site.indoors.next_door else {
            return;
        };
        let faces = place(stand).and_then(|p| p.next_door);
        let share = faces.map_or(0.0, |(_, placement)| drawn_in(placement));
        let source = engine.emits(0.209).0 * share * 1000.0 / (28.01 / 24.45);
        let before = self.next_door_ppm;
        let leaves = before * home.changes_per_h / 3600.0;
        self.next_door_ppm += (source / home.air_m3 - leaves) * dt;
        self.next_door
            .pass(f64::midpoint(before, self.next_door_ppm), dt);
    }
}

/// Everybody's breathing, and whether they are inside.
fn breathing(stand: &Stand<'_>) -> Vec<((f64, f64), bool)> {
    let site = &stand.scenario.site;
    let awake = site.control_id("household");
    let awake = awake.is_none_or(|id| stand.at(id, "inside"));
    let asleep = site.indoors.people.iter();
    let asleep = asleep.map(|p| (ASLEEP, !stand.at(p.control, "outside")));
    [(AWAKE, awake)].into_iter().chain(asleep).collect()
}

/// Coburn, Forster and Kane: affinity 218, 100 mmHg of oxygen, 5.5 L of blood, 0.2 mL of oxygen a mL.
fn breathe(blood: f64, ppm: f64, (diffusion, ventilation): (f64, f64), dt: f64) -> f64 {
    let resistance = 1.0 / diffusion + 713.0 / ventilation;
    let held = blood / 100.0 * 0.2;
    let back = held * 100.0 / (218.0 * (0.2 - held));
    let flow = 0.007 + (ppm * 1e-6 * 713.0 - back) / resistance;
    ((held + flow / 5500.0 * dt / 60.0) / 0.2 * 100.0).min(99.9)
}

/// The place where the set stands.
fn place<'a>(stand: &Stand<'a>) -> Option<&'a Place> {
    let set = &stand.scenario.site.generator;
    set.places.iter().find(|p| stand.at(set.placement, &p.name))
}

/// The share of an engine's exhaust outdoors that is drawn in.
fn drawn_in(placement: Placement) -> f64 {
    match placement {
        Placement::NearOpening => 0.05,
        Placement::TwentyFeetAway => 0.002,
        Placement::Garage | Placement::House => 0.0,
    }
}

impl Exhaust {
    fn of(stand: &Stand<'_>) -> Self {
        let open = stand.is("window", "open");
        let exposure = place(stand).map(|p| if open { p.exposure.1 } else { p.exposure.0 });
        let garage = stand.scenario.site.garage.is_some();
        let (shares, breathes) = match exposure {
            Some(Placement::Garage) if garage => ([1.0, 0.0], Some(0)),
            Some(Placement::Garage | Placement::House) => ([0.0, 1.0], Some(1)),
            Some(outdoors) => {
                let shut = place(stand).map(|p| p.exposure.0);
                let (calm, aired) = stand.scenario.site.air_changes_per_h;
                // What comes in brings the gas along: twice the air, twice the gas.
                let times = if open && shut == Some(Placement::NearOpening) {
                    aired / calm
                } else {
                    1.0
                };
                ([0.0, (drawn_in(outdoors) * times).min(1.0)], None)
            }
            None => ([0.0; 2], None),
        };
        Self { shares, breathes }
    }
}

impl Draft {
    fn of(stand: &Stand<'_>) -> Self {
        let site = &stand.scenario.site;
        let pick = |open: bool, pair: (f64, f64)| if open { pair.1 } else { pair.0 };
        let house = pick(stand.is("window", "open"), site.air_changes_per_h);
        let house = house * site.air_m3 / 3600.0;
        let Some(garage) = site.garage else {
            return Self {
                garage: 0.0,
                house,
                between: 0.0,
            };
        };
        let big = if stand.at(garage.big_door, "half") {
            garage.half_changes_per_h
        } else {
            pick(stand.at(garage.big_door, "open"), garage.changes_per_h)
        };
        let door = pick(
            stand.at(garage.house_door, "open"),
            garage.to_house_m3_per_h,
        );
        Self {
            garage: big * garage.air_m3 / 3600.0,
            house,
            between: door / 3600.0,
        }
    }
}

/// What an engine burns and gives in fresh air, grams a second; nothing while it stands still.
struct Engine {
    fuel_g: f64,
    fresh_g: f64,
}

impl Engine {
    /// 500 g/h at half load, and by the fuel at any other.
    fn of(stand: &Stand<'_>) -> Self {
        if !stand.running() {
            return Self {
                fuel_g: 0.0,
                fresh_g: 0.0,
            };
        }
        let set = &stand.scenario.site.generator;
        let spec = set.spec_at(&stand.moment.positions);
        let fuel = spec.fuel_gal_per_h(stand.moment.readings.generator.watts.max(0.0));
        let half = spec.fuel_gal_per_h(spec.rated_w / 2.0);
        Self {
            fuel_g: fuel * 3.785_411_784 * 740.0 / 3600.0,
            fresh_g: 500.0 / 3600.0 * fuel / half,
        }
    }

    /// Gas given and oxygen taken in air with so much oxygen: eight times the gas at 17 %, none at 14 %.
    fn emits(&self, oxygen: f64) -> (f64, f64) {
        let times = if oxygen >= 0.209 {
            1.0
        } else {
            8.0_f64.min(1.0 + 7.0 * (0.209 - oxygen) / 0.039)
        };
        let breath = ((oxygen - 0.14) / 0.03).clamp(0.0, 1.0);
        // No more than nine tenths of the fuel's carbon, 12 grams in 13.875.
        let most = 0.9 * self.fuel_g / 13.875 * 28.01;
        let gas = (self.fresh_g * times).min(most) * breath;
        // CH1.85 needs 1.4625 molecules of oxygen for each carbon, half a one less where it leaves as monoxide.
        let taken = self.fuel_g * breath / 13.875 * 1.4625 * 31.998 - gas * 16.0 / 28.01;
        (gas, taken.max(0.0))
    }
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
