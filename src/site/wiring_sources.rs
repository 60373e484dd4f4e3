//! The sources a house may have of its own, and what hangs on their terminals: generator, its outlets, battery, solar.
//!
//! The generator is two halves that share one regulator; its neutral is on its frame or not, as it is built.
//! A battery's inverter makes a grid of its own; a solar inverter only follows one, so it is a load of negative watts and feeds nothing by itself.

use crate::apparatus::generator::Reactance;
use crate::circuit::{BranchId, Load, NodeId, Port, SourceSpec};
use crate::units::Complex;

use super::control::{ControlId, PositionId};
use super::equipment::{Bond, Bus, Receptacle};
use super::parts::Legs;
use super::wiring::{Builder, End, OWN, STORED};
use super::wiring_house::House;

/// Volts between the two hots of a house.
pub(super) const BOTH_V: f64 = 240.0;
/// Resistance and reactance behind a battery inverter's volts, per unit of its rating: holds its volts stiffly, common practice.
const INVERTER_PU: (f64, f64) = (0.01, 0.05);

/// A source with its two hots and the end behind its own breaker or switch.
#[derive(Debug, Clone, Copy)]
pub(super) struct Source {
    pub(super) branch: BranchId,
    pub(super) hots: [NodeId; 2],
    pub(super) out: End,
}

impl Builder<'_> {
    /// The generator: two halves that share one regulator, the breaker on its face, its frame.
    pub(super) fn generator(&mut self) -> Source {
        let generator = &self.site.generator;
        let half = generator.spec.impedance(Reactance::Transient) * 0.5;
        let emf_v = Complex::new(generator.spec.set_v / 2.0, 0.0);
        let output = (generator.output, PositionId(1));
        let bond = generator.bond;
        let set = self.two_halves(emf_v, half, OWN, output, "generator-output");
        self.point(
            "generator-outlet",
            set.out.one.into_iter().chain(set.out.two).collect(),
            set.out.neutral,
        );
        if bond == Bond::Bonded {
            self.bond(set.out.neutral, set.out.ground);
        }
        if let Some(ohm) = generator.frame_earth_ohm {
            self.electrode(set.out.ground, ohm);
        }
        self.frame("generator-frame", set.out.ground, set.out.neutral);
        set
    }

    /// The battery's inverter, with its switch.
    pub(super) fn battery(&mut self) -> Option<Source> {
        let battery = self.site.battery.as_ref()?;
        let base = BOTH_V * BOTH_V / battery.rated_w;
        let half = Complex::new(INVERTER_PU.0, INVERTER_PU.1) * (0.5 * base);
        let emf_v = Complex::new(BOTH_V / 2.0, 0.0);
        let switch = (battery.switch, PositionId(1));
        let source = self.two_halves(emf_v, half, STORED, switch, "battery");
        self.point(
            "battery-outlet",
            source.out.one.into_iter().chain(source.out.two).collect(),
            source.out.neutral,
        );
        Some(source)
    }

    fn two_halves(
        &mut self,
        emf_v: Complex,
        z: Complex,
        group: crate::circuit::Group,
        closed_in: (ControlId, PositionId),
        thing: &str,
    ) -> Source {
        let (one, two, neutral, frame) = (self.hot(), self.hot(), self.grounded(), self.grounded());
        let ports = [(one, neutral), (neutral, two)].map(|(a, b)| Port { a, b, emf_v, z });
        let branch = self.network.source(SourceSpec {
            ports: ports.to_vec(),
            group,
            on: false,
            ceiling: None,
        });
        let (out_one, out_two) = (self.hot(), self.hot());
        let meters = vec![
            self.contact(one, out_one, closed_in, thing),
            self.contact(two, out_two, closed_in, thing),
        ];
        self.meter(thing, meters);
        Source {
            branch,
            hots: [one, two],
            out: End {
                one: Some(out_one),
                two: Some(out_two),
                neutral,
                ground: frame,
            },
        }
    }

    /// The outlets on the generator's face, each behind its own breaker and ground-fault device where it has them.
    pub(super) fn receptacles(&mut self, out: End) -> Vec<End> {
        let receptacles = &self.site.generator.receptacles;
        receptacles
            .iter()
            .map(|r| self.receptacle(r, out))
            .collect()
    }

    fn receptacle(&mut self, receptacle: &Receptacle, out: End) -> End {
        let mut end = End {
            one: out.one.filter(|_| receptacle.legs != Legs::Two),
            two: out.two.filter(|_| receptacle.legs != Legs::One),
            ..out
        };
        if let Some(breaker) = receptacle.breaker {
            let name = format!("{}-breaker", receptacle.name);
            let mut meters = Vec::new();
            for hot in [&mut end.one, &mut end.two] {
                if let Some(before) = *hot {
                    let after = self.hot();
                    meters.push(self.contact(before, after, (breaker, PositionId(1)), &name));
                    *hot = Some(after);
                }
            }
            self.meter(&name, meters);
        }
        if let Some(gfci) = receptacle.gfci {
            let to = self.end([end.one.is_some(), end.two.is_some()]);
            self.gfci(end, to, gfci, &format!("{}-gfci", receptacle.name));
            end = to;
        }
        end
    }

    /// The solar inverter between the two hots of the bus it feeds, behind its breaker and its disconnect.
    pub(super) fn solar(&mut self, house: &House) -> Option<BranchId> {
        let solar = self.site.solar.as_ref()?;
        let bus = match solar.bus {
            Bus::Main => Some(house.bus),
            Bus::Sub(index) => house.subs.get(index).copied(),
        }?;
        let (breaker, disconnect) = (solar.breaker, solar.disconnect);
        let mut hots = Vec::new();
        let mut meters = Vec::new();
        for leg in bus.one.into_iter().chain(bus.two) {
            let (after, terminal) = (self.hot(), self.hot());
            meters.push(self.contact(leg, after, (breaker, PositionId(1)), "solar-breaker"));
            self.contact(
                after,
                terminal,
                (disconnect, PositionId(1)),
                "solar-disconnect",
            );
            hots.push(terminal);
        }
        self.meter("solar-breaker", meters);
        self.point("solar-terminals", hots.clone(), bus.neutral);
        match hots.as_slice() {
            [one, two] => Some(self.network.load(*one, *two, Load::Off)),
            _ => None,
        }
    }
}
