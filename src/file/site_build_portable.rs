//! The portable part of a site file: the generator with its outlets and places, and the cords.

use crate::apparatus::connection::{Connection, Contact};
use crate::apparatus::cord_damage::Damage;
use crate::hazard::monoxide::Placement;
use crate::site::{
    Bond, ControlId, Cord, FarEnd, Found, Generator, Kind, Legs, Place, Plate, Receptacle, Rest,
    Spot,
};
use crate::words::{Arg, Message};

use super::site_build::{Build, legs};
use super::site_file::{
    BondFile, ContactsFile, CordFile, DamageFile, GasFile, GeneratorFile, HouseEndFile, LegFile,
    ReceptacleFile, RestFile, SiteFile, TransferFile,
};

impl Build<'_> {
    pub(super) fn generator(
        &mut self,
        file: &GeneratorFile,
        transfers: &[TransferFile],
    ) -> Generator {
        for (field, value) in [
            ("rated_watts", file.rated_watts),
            ("surge_watts", file.surge_watts),
            ("tank_gallons", file.tank_gallons),
            ("warm_up_seconds", file.warm_up_seconds),
            ("cool_down_seconds", file.cool_down_seconds),
        ] {
            self.positive(&["generator: (", field], value);
        }
        let spec = Self::generator_spec(file);
        let names: Vec<&str> = file.places.iter().map(|p| p.name.as_str()).collect();
        let f = &mut self.furnishing;
        let placement = f.add("generator-place", Kind::Placement, &names, "generator", 0);
        let engine = f.add(
            "engine",
            Kind::Engine,
            &["stopped", "running"],
            "generator",
            0,
        );
        let plate = Plate {
            rating_a: file.output_breaker_amps,
            poles: 2,
            slot: (0, 0),
            fuse: None,
        };
        let output = f.breaker(
            "generator-output",
            Kind::Output,
            "generator",
            plate,
            file.machine.is_automatic(),
        );
        let usable: Vec<u8> = usable_positions(file);
        f.needs((engine, 1), placement, &usable, "refused-in-shed");
        f.holds((engine, 1), placement, "refused-move-running");
        let machine = self.machine(file, transfers, engine);
        let places = file.places.iter().map(|p| Place {
            name: p.name.clone(),
            opening_ft: p.opening_ft,
            exposure: (gas(p.gas_with_window_shut), gas(p.gas_with_window_open)),
            next_door: p.next_door_ft.map(|feet| (feet, at_feet(feet))),
            usable: p.usable,
        });
        let receptacles = match &file.receptacles {
            Some(given) => given.iter().map(|r| self.receptacle(r)).collect(),
            None => vec![Receptacle {
                name: "generator".to_owned(),
                legs: Legs::Both,
                breaker: None,
                gfci: None,
            }],
        };
        Generator {
            spec,
            engine,
            machine,
            output,
            bond: match file.neutral {
                BondFile::Floating => Bond::Floating,
                BondFile::Bonded => Bond::Bonded,
            },
            frame_earth_ohm: file.frame_to_earth_ohm,
            receptacles,
            placement,
            places: places.collect(),
        }
    }

    fn receptacle(&mut self, file: &ReceptacleFile) -> Receptacle {
        let legs = legs(file.leg);
        let f = &mut self.furnishing;
        let breaker = file.breaker_amps.map(|rating_a| {
            let plate = Plate {
                rating_a,
                poles: if legs == Legs::Both { 2 } else { 1 },
                slot: (0, 0),
                fuse: None,
            };
            let name = format!("{}-breaker", file.name);
            f.breaker(&name, Kind::Output, "generator", plate, true)
        });
        let name = format!("{}-gfci", file.name);
        Receptacle {
            name: file.name.clone(),
            legs,
            breaker,
            gfci: file.gfci.then(|| f.gfci(&name, "generator")),
        }
    }

    pub(super) fn cords(
        &mut self,
        file: &SiteFile,
        chosen: &[String],
        generator: &Generator,
    ) -> Vec<Cord> {
        let circuits: Vec<&str> = file.circuits.iter().map(|c| c.name.as_str()).collect();
        let taken: Vec<&CordFile> = file
            .cords
            .iter()
            .filter(|c| chosen.contains(&c.name))
            .collect();
        let mut cords = Vec::new();
        for (index, cord) in taken.iter().enumerate() {
            let mut near = vec![("stowed", Spot::Stowed)];
            for (i, r) in generator.receptacles.iter().enumerate() {
                if fits(file, r, cord) {
                    near.push((r.name.as_str(), Spot::Receptacle(i)));
                }
            }
            let ends = taken.iter().enumerate().filter(|(i, c)| {
                *i != index && joins(c) && cord.leg != LegFile::Both && c.leg != LegFile::Both
            });
            near.extend(ends.map(|(i, c)| (c.name.as_str(), Spot::CordEnd(i))));
            let lent = file
                .neighbor_cord
                .iter()
                .filter(|_| cord.leg != LegFile::Both);
            near.extend(lent.map(|l| (l.name.as_str(), Spot::Lent)));
            cords.extend(self.cord(cord, &near, file, &circuits));
        }
        let usable: Vec<u8> = usable_positions(&file.generator);
        for cord in &cords {
            for (position, spot) in (0_u8..).zip(&cord.near_spots) {
                if matches!(spot, Spot::Receptacle(_)) {
                    let near = (cord.near, position);
                    let f = &mut self.furnishing;
                    f.needs(near, generator.placement, &usable, "refused-in-shed");
                    f.holds(near, generator.placement, "refused-move-corded");
                }
            }
            self.reach(&file.generator, &taken, cord, generator.placement);
        }
        self.single_outlets(file, &cords);
        cords
    }

    /// A cord isn't plugged in at a place from which it doesn't reach the inlet, or the house.
    fn reach(
        &mut self,
        file: &GeneratorFile,
        lengths: &[&CordFile],
        cord: &Cord,
        placement: ControlId,
    ) {
        let own = lengths.iter().find(|c| c.name == cord.name);
        let Some(own) = own else {
            return;
        };
        for (place, index) in file.places.iter().zip(0_u8..) {
            let asked_ft = match cord.far {
                FarEnd::Inlet(_) => place.inlet_ft,
                FarEnd::Connector | FarEnd::Strip(_) => place.cord_ft,
                FarEnd::Blades(..) => None,
            };
            if asked_ft.is_none_or(|feet| feet <= own.length_ft) {
                continue;
            }
            for (position, spot) in (0_u8..).zip(&cord.near_spots) {
                if matches!(spot, Spot::Receptacle(_)) {
                    let near = (cord.near, position);
                    let f = &mut self.furnishing;
                    f.not_both(near, (placement, index), "refused-cord-short");
                }
            }
        }
    }

    /// An outlet that takes one plug: no two cords' ends in it at once.
    fn single_outlets(&mut self, file: &SiteFile, cords: &[Cord]) {
        let given = file.generator.receptacles.iter().flatten().enumerate();
        let single: Vec<usize> = given.filter(|(_, r)| r.single).map(|(i, _)| i).collect();
        let ends = |cord: &Cord, outlet: usize| {
            let at = cord
                .near_spots
                .iter()
                .position(|s| *s == Spot::Receptacle(outlet));
            at.and_then(|at| u8::try_from(at).ok())
                .map(|at| (cord.near, at))
        };
        for outlet in single {
            for (index, one) in cords.iter().enumerate() {
                for other in cords.iter().skip(index + 1) {
                    if let (Some(a), Some(b)) = (ends(one, outlet), ends(other, outlet)) {
                        self.furnishing.not_both(a, b, "refused-outlet-taken");
                    }
                }
            }
        }
    }

    fn cord(
        &mut self,
        cord: &CordFile,
        near: &[(&str, Spot)],
        file: &SiteFile,
        circuits: &[&str],
    ) -> Option<Cord> {
        let named = format!("(name: \"{}\"", cord.name);
        let own = ["cords: [", &named];
        let of = |field: &'static str| [own[0], own[1], field];
        let make = self.make(own, &cord.letters, &cord.gauge, cord.length_ft);
        let end = |part: &str| format!("{}-{part}", cord.name);
        let near_names: Vec<&str> = near.iter().map(|(name, _)| *name).collect();
        let near_control =
            self.furnishing
                .add(&end("generator-end"), Kind::Plug, &near_names, "cords", 0);
        let far = match &cord.house_end {
            HouseEndFile::Inlet => {
                let mut positions = vec!["stowed"];
                positions.extend(file.inlets.iter().map(|i| i.name.as_str()));
                FarEnd::Inlet(self.furnishing.add(
                    &end("house-end"),
                    Kind::Plug,
                    &positions,
                    "cords",
                    0,
                ))
            }
            HouseEndFile::BareBlades { outlet } => {
                let circuit = self.find(&of("outlet"), outlet, "circuit", circuits);
                let position = format!("{outlet}-outlet");
                let positions = ["stowed", position.as_str()];
                FarEnd::Blades(
                    self.furnishing
                        .add(&end("house-end"), Kind::Plug, &positions, "cords", 0),
                    circuit,
                )
            }
            HouseEndFile::Connector => FarEnd::Connector,
            HouseEndFile::TwoPlugStrip => {
                let mut positions = vec!["stowed"];
                positions.extend(file.neighbor_cord.iter().map(|l| l.name.as_str()));
                if file.neighbor_cord.is_none() {
                    self.fault(&of("house_end"), Message::new("error-strip-alone"));
                }
                FarEnd::Strip(self.furnishing.add(
                    &end("second-plug"),
                    Kind::Plug,
                    &positions,
                    "cords",
                    0,
                ))
            }
        };
        let rests: Vec<Rest> = cord.lies.iter().map(|lies| rest(*lies)).collect();
        if rests.is_empty() {
            self.fault(&of("lies"), Message::new("error-cord-lies"));
        }
        let ways: Vec<&str> = rests.iter().map(|rest| rest.name()).collect();
        let lay = self
            .furnishing
            .add(&end("lay"), Kind::Lay, &ways, "cords", 0);
        let found = self.found(&of("damage"), cord);
        Some(Cord {
            name: cord.name.clone(),
            make: make?,
            legs: legs(cord.leg),
            ties_legs: cord.ties_legs,
            grounded: cord.grounded,
            near: near_control,
            near_spots: near.iter().map(|(_, spot)| *spot).collect(),
            far,
            lay,
            rests,
            found,
        })
    }

    /// The state a cord is found in; its plug is the usual one of its volts.
    fn found(&mut self, damage: &[&str], cord: &CordFile) -> Found {
        let damage = match cord.damage {
            DamageFile::Sound => Damage::Sound,
            DamageFile::Crushed => Damage::Crushed,
            DamageFile::Strands { left } => {
                if !(left > 0.0 && left <= 1.0) {
                    let message =
                        Message::new("error-share").with("value", Arg::Verbatim(left.to_string()));
                    self.fault(damage, message);
                }
                Damage::Strands { left }
            }
        };
        let contact = match cord.contacts {
            ContactsFile::Sound => Contact::Sound,
            ContactsFile::Loose => Contact::Loose,
            ContactsFile::Burnt => Contact::Burnt,
        };
        let rated_a = if cord.leg == LegFile::Both || cord.ties_legs {
            HOUSE_PLUG_A
        } else {
            PLUG_A
        };
        Found {
            damage,
            plug: Connection { rated_a, contact },
            in_sun: cord.in_sun,
        }
    }
}

/// The published distance to openings, feet: CPSC, checked.
const SAFE_FT: f64 = 20.0;
/// Amps of the usual 120 V plug, NEMA 5-15.
const PLUG_A: f64 = 15.0;
/// Amps of the usual 120/240 V plug of a generator, NEMA L14-30.
const HOUSE_PLUG_A: f64 = 30.0;

fn rest(lies: RestFile) -> Rest {
    match lies {
        RestFile::Coiled => Rest::Coiled,
        RestFile::HalfCoiled => Rest::HalfCoiled,
        RestFile::Flat => Rest::Flat,
        RestFile::UnderRug => Rest::UnderRug,
        RestFile::Bundled => Rest::Bundled,
        RestFile::InPuddle => Rest::InPuddle,
    }
}

fn usable_positions(file: &GeneratorFile) -> Vec<u8> {
    file.places
        .iter()
        .zip(0_u8..)
        .filter(|(p, _)| p.usable)
        .map(|(_, index)| index)
        .collect()
}

/// Where exhaust goes, as the model has it.
pub(super) fn gas(gas: GasFile) -> Placement {
    match gas {
        GasFile::Indoors => Placement::Garage,
        GasFile::NearOpening => Placement::NearOpening,
        GasFile::FarAway => Placement::TwentyFeetAway,
    }
}

/// Where exhaust goes from this far off an opening that stands open, feet.
fn at_feet(feet: f64) -> Placement {
    if feet < SAFE_FT {
        Placement::NearOpening
    } else {
        Placement::TwentyFeetAway
    }
}

/// Whether a cord's plug goes into an outlet: house cord into a house outlet, 120 V into 120 V.
/// A generator that names no outlets has one of each kind behind one name.
fn fits(file: &SiteFile, receptacle: &Receptacle, cord: &CordFile) -> bool {
    let all_in_one = file.generator.receptacles.is_none();
    all_in_one || (receptacle.legs == Legs::Both) == (cord.leg == LegFile::Both && !cord.ties_legs)
}

/// Whether a cord ends in a connector that takes another plug.
fn joins(cord: &CordFile) -> bool {
    matches!(
        cord.house_end,
        HouseEndFile::Connector | HouseEndFile::TwoPlugStrip
    )
}
