//! The house's part of a site file: appliances with their plugs, and what plugs and outlets make impossible.

use crate::apparatus::motor::{CodeLetter, Motor};
use crate::site::{
    Appliance, ControlId, Cord, Demand, FarEnd, Kind, Legs, Plug, PositionId, Reservoir, Spot, Work,
};
use crate::words::{Arg, Message};

use super::site_build::{Build, HALF_V};
use super::site_file::{ApplianceFile, DemandFile, LegFile, PlugFile, SiteFile, WorkFile};

impl Build<'_> {
    pub(super) fn appliances(&mut self, file: &SiteFile, cords: &[Cord]) -> Vec<Appliance> {
        let circuits: Vec<&str> = file.circuits.iter().map(|c| c.name.as_str()).collect();
        let mut appliances = Vec::new();
        for appliance in &file.appliances {
            let own = format!("(name: \"{}\", circuit", appliance.name);
            let circuit = self.find(&[&own], &appliance.circuit, "circuit", &circuits);
            let both = file
                .circuits
                .get(circuit)
                .is_some_and(|c| c.leg == LegFile::Both);
            let leak_ohm = appliance
                .leak_ohm
                .map(|ohm| self.positive(&[&own, "leak_ohm"], ohm));
            let work = self.work(&own, appliance, both);
            let demand = self.demand(&own, appliance);
            let plugged = matches!(appliance.plug, PlugFile::Plug);
            if appliance.adapter && !(both && plugged) {
                self.fault(&[&own, "adapter"], Message::new("error-adapter"));
            }
            let plug = self.plug(appliance, cords, file, both);
            appliances.push(Appliance {
                name: appliance.name.clone(),
                circuit,
                work,
                demand,
                plug,
                grounded: appliance.grounded,
                leak_ohm,
            });
        }
        appliances
    }

    fn work(&mut self, own: &str, appliance: &ApplianceFile, both: bool) -> Work {
        match &appliance.work {
            WorkFile::Resistive { watts } => Work::Resistive {
                watts: self.positive(&[own, "watts"], *watts),
            },
            WorkFile::Electronic {
                watts,
                power_factor,
            } => Work::Electronic {
                watts: self.positive(&[own, "watts"], *watts),
                power_factor: self.positive(&[own, "power_factor"], *power_factor),
            },
            WorkFile::Motor {
                horsepower,
                code_letter,
                running_watts,
                power_factor,
                seconds_to_speed,
            } => {
                let letter = CodeLetter::new(*code_letter);
                if letter.is_none() {
                    let message = Message::new("error-code-letter")
                        .with("value", Arg::Verbatim(code_letter.to_string()));
                    self.fault(&[own, "code_letter", "'"], message);
                }
                Work::Motor(Motor {
                    hp: self.positive(&[own, "horsepower"], *horsepower),
                    volts: if both { 2.0 * HALF_V } else { HALF_V },
                    letter: letter.unwrap_or(CodeLetter::G),
                    running_w: self.positive(&[own, "running_watts"], *running_watts),
                    running_pf: self.positive(&[own, "power_factor"], *power_factor),
                    accelerate_s: self.positive(&[own, "seconds_to_speed"], *seconds_to_speed),
                })
            }
        }
    }

    fn demand(&mut self, own: &str, appliance: &ApplianceFile) -> Demand {
        match &appliance.demand {
            DemandFile::Switch { on_at_start } => {
                let name = format!("{}-switch", appliance.name);
                let start = u8::from(*on_at_start);
                Demand::Switch(self.furnishing.add(
                    &name,
                    Kind::Switch,
                    &["off", "on"],
                    "house",
                    start,
                ))
            }
            DemandFile::Store {
                start,
                rise_per_hour,
                fall_per_hour,
                on_level,
                off_level,
            } => {
                if !(*off_level >= 0.0 && off_level < on_level && *on_level < 1.0) {
                    self.fault(&[own, "on_level"], Message::new("error-store-levels"));
                }
                Demand::Reservoir(Reservoir {
                    start: *start,
                    rise_per_h: self.positive(&[own, "rise_per_hour"], *rise_per_hour),
                    fall_per_h: self.positive(&[own, "fall_per_hour"], *fall_per_hour),
                    on_level: *on_level,
                    off_level: *off_level,
                })
            }
        }
    }

    fn plug(
        &mut self,
        appliance: &ApplianceFile,
        cords: &[Cord],
        file: &SiteFile,
        both: bool,
    ) -> Plug {
        if matches!(appliance.plug, PlugFile::HardWired) {
            return Plug::Wired;
        }
        let mates = !both || appliance.adapter;
        let fits = |c: &Cord| c.far.takes_plugs() && mates && c.legs != Legs::Both;
        let fitting: Vec<usize> = (0..cords.len())
            .filter(|i| cords.get(*i).is_some_and(fits))
            .collect();
        let mut positions = vec!["wall", "unplugged"];
        positions.extend(
            fitting
                .iter()
                .filter_map(|i| cords.get(*i))
                .map(|c| c.name.as_str()),
        );
        let lent = file.neighbor_cord.iter().filter(|_| mates);
        positions.extend(lent.map(|l| l.name.as_str()));
        let last = u8::try_from(positions.len() - 1).unwrap_or(u8::MAX);
        let name = format!("{}-plug", appliance.name);
        let control = self
            .furnishing
            .add(&name, Kind::Plug, &positions, "house", 0);
        let ends = fitting
            .iter()
            .zip(2_u8..)
            .map(|(cord, position)| (*cord, PositionId(position)));
        Plug::Cord {
            control,
            wall: PositionId(0),
            cords: ends.collect(),
            lent: (mates && file.neighbor_cord.is_some()).then_some(PositionId(last)),
        }
    }

    /// An outlet takes one plug, a cord's connector takes one plug, a strip takes all appliances that come.
    pub(super) fn cord_constraints(&mut self, cords: &[Cord], appliances: &[Appliance]) {
        const TAKEN: &str = "refused-outlet-taken";
        let f = &mut self.furnishing;
        for (index, one) in cords.iter().enumerate() {
            for other in cords.iter().skip(index + 1) {
                for (here, there) in same_spots(one, other) {
                    f.not_both((one.near, here), (other.near, there), TAKEN);
                }
            }
            for appliance in appliances {
                if let Plug::Cord { control, cords, .. } = &appliance.plug {
                    for (at, spot) in (0_u8..).zip(&one.near_spots) {
                        for (_, own) in cords.iter().filter(|(c, _)| *spot == Spot::CordEnd(*c)) {
                            f.not_both((one.near, at), (*control, own.0), TAKEN);
                        }
                    }
                }
            }
            if let FarEnd::Blades(end, circuit) = one.far {
                for appliance in appliances.iter().filter(|a| a.circuit == circuit) {
                    if let Plug::Cord { control, wall, .. } = &appliance.plug {
                        f.not_both((end, 1), (*control, wall.0), TAKEN);
                    }
                }
            }
        }
        let plugs: Vec<_> = appliances
            .iter()
            .filter_map(|a| plug_ends(&a.plug))
            .collect();
        for (index, (control, ends)) in plugs.iter().enumerate() {
            for (other, other_ends) in plugs.iter().skip(index + 1) {
                let one_plug = |cord: usize| {
                    let cord = cords.get(cord);
                    cord.is_none_or(|c| !matches!(c.far, FarEnd::Strip(_)))
                };
                for (cord, position) in ends.iter().filter(|(c, _)| one_plug(*c)) {
                    for (_, other_position) in other_ends.iter().filter(|(c, _)| c == cord) {
                        f.not_both((*control, position.0), (*other, other_position.0), TAKEN);
                    }
                }
            }
        }
    }
}

type Ends<'a> = (ControlId, &'a [(usize, PositionId)]);

fn plug_ends(plug: &Plug) -> Option<Ends<'_>> {
    match plug {
        Plug::Cord { control, cords, .. } => Some((*control, cords)),
        Plug::Wired => None,
    }
}

/// Positions in which the ends of two cords would be in one and the same outlet or connector.
/// The one outlet of a generator that names none stands for one of each kind, so cords of different legs don't meet there.
fn same_spots(one: &Cord, other: &Cord) -> Vec<(u8, u8)> {
    let mut same = Vec::new();
    for (here, spot) in (0_u8..).zip(&one.near_spots) {
        for (there, other_spot) in (0_u8..).zip(&other.near_spots) {
            let outlet = matches!(spot, Spot::Receptacle(_)) && one.legs == other.legs;
            if spot == other_spot && (outlet || matches!(spot, Spot::CordEnd(_))) {
                same.push((here, there));
            }
        }
    }
    same
}
