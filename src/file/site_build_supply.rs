//! The supply part of a site file: panels, circuits, inlets, transfer switches, solar and battery.

use crate::apparatus::branch_wire::BranchWire;
use crate::apparatus::branch_wire::Run;
use crate::apparatus::conductor::Material;
use crate::apparatus::interconnection::Profile;
use crate::site::{
    Backfeed, Battery, Bus, Circuit, ControlId, Inlet, Interlock, Kind, Legs, Moved, NeutralPole,
    OtherSide, Pair, Panel, Plate, Solar, Subpanel, Transfer,
};
use crate::words::{Arg, Message};

use super::furnish::Furnishing;
use super::site_build::{Build, legs};
use super::site_file::{
    CircuitFile, FuseFile, MovesFile, NeutralFile, OtherFile, PanelFile, ProfileFile, SiteFile,
    SubpanelFile, TransferFile,
};

/// Everything between the service and the outlets.
pub(super) struct Supply {
    pub(super) panel: Panel,
    pub(super) subpanels: Vec<Subpanel>,
    pub(super) circuits: Vec<Circuit>,
    pub(super) inlets: Vec<Inlet>,
    pub(super) transfers: Vec<Transfer>,
}

/// The names a transfer switch may refer to, and the feeders of the subpanels.
struct Known<'a> {
    subpanels: Vec<&'a str>,
    circuits: Vec<&'a str>,
    inlets: Vec<&'a str>,
    feeders: Vec<ControlId>,
    battery: bool,
}

impl Build<'_> {
    pub(super) fn supply(&mut self, file: &SiteFile, interlock: Interlock) -> Supply {
        let inlet_names: Vec<&str> = file.inlets.iter().map(|i| i.name.as_str()).collect();
        let sub_names: Vec<&str> = file.subpanels.iter().map(|s| s.name.as_str()).collect();
        let panel = self.panel(&file.panel, &inlet_names, interlock);
        let feeders: Vec<ControlId> = file.subpanels.iter().map(|s| self.feeder(s)).collect();
        let names: Vec<&str> = file.circuits.iter().map(|c| c.name.as_str()).collect();
        let circuits = (0..).zip(&file.circuits).map(|(index, c)| {
            let before: Vec<&str> = names.iter().copied().take(index).collect();
            let neutral_of = c.neutral_of.as_ref().map(|other| {
                let own = format!("(name: \"{}\", breaker_amps", c.name);
                self.find(&[&own, "neutral_of"], other, "circuit", &before)
            });
            Circuit {
                neutral_of,
                ..self.circuit(c, &sub_names)
            }
        });
        let circuits = circuits.collect();
        let fed = file.subpanels.iter().zip(&feeders);
        let subpanels = fed.map(|(s, feeder)| {
            let pair = self.pair(s, *feeder, &inlet_names, interlock);
            self.subpanel(s, pair)
        });
        let subpanels = subpanels.collect();
        let inlets = file.inlets.iter().map(|i| {
            let own = format!("(name: \"{}\", gauge", i.name);
            let awg = self.gauge(&[&own, &format!("\"{}\"", i.gauge)], &i.gauge);
            Inlet {
                name: i.name.clone(),
                awg,
                heat: BranchWire::new(awg, Material::Copper, Run::Hollow),
                length_ft: self.positive(&[&own, "length_ft"], i.length_ft),
                found_thin: i.found_thin,
            }
        });
        let inlets = inlets.collect();
        let known = Known {
            subpanels: sub_names,
            circuits: file.circuits.iter().map(|c| c.name.as_str()).collect(),
            inlets: inlet_names,
            feeders,
            battery: file.battery.is_some(),
        };
        let transfers = file.transfers.iter().map(|t| self.transfer(t, &known));
        let transfers = transfers.collect();
        self.each_moved_once(file);
        Supply {
            panel,
            subpanels,
            circuits,
            inlets,
            transfers,
        }
    }

    fn panel(&mut self, file: &PanelFile, inlets: &[&str], interlock: Interlock) -> Panel {
        let plate = |rating_a, slot| Plate {
            rating_a,
            poles: 2,
            slot,
            fuse: None,
        };
        let f = &mut self.furnishing;
        let main_plate = plate(file.main_amps, (0, 0));
        let main = f.breaker("main", Kind::Main, "panel", main_plate, true);
        let lock = f.add("main-lock", Kind::Lock, &["removed", "fitted"], "panel", 0);
        f.needs((lock, 1), main, &[0], "refused-lock-needs-off");
        f.holds((lock, 1), main, "refused-locked");
        let backfeed = file.backfeed.as_ref().map(|b| {
            let f = &mut self.furnishing;
            let plate = plate(b.breaker_amps, (0, 1));
            let breaker = f.breaker("generator-breaker", Kind::Backfed, "panel", plate, false);
            if interlock.blocks() {
                f.not_both((main, 1), (breaker, 1), "refused-interlock");
            }
            Backfeed {
                breaker,
                inlet: self.find(&["backfeed", "inlet"], &b.inlet, "inlet", inlets),
                interlock,
            }
        });
        Panel { main, backfeed }
    }

    fn feeder(&mut self, file: &SubpanelFile) -> ControlId {
        let plate = Plate {
            rating_a: file.feeder_amps,
            poles: 2,
            slot: file.slot,
            fuse: None,
        };
        let f = &mut self.furnishing;
        if file.pair.is_some() {
            let name = format!("{}-utility", file.name);
            return f.breaker(&name, Kind::Breaker, "subpanel", plate, true);
        }
        let name = format!("breaker-{}", file.name);
        f.breaker(&name, Kind::Breaker, "panel", plate, true)
    }

    /// The pair of a chosen bus: its other breaker, and the bar that lets only one of the two be on.
    fn pair(
        &mut self,
        file: &SubpanelFile,
        utility: ControlId,
        inlets: &[&str],
        interlock: Interlock,
    ) -> Option<Pair> {
        let given = file.pair.as_ref()?;
        let plate = Plate {
            rating_a: given.breaker_amps,
            poles: 2,
            // Beside the other one.
            slot: (file.slot.0 + 1, file.slot.1),
            fuse: None,
        };
        let name = format!("{}-generator", file.name);
        let f = &mut self.furnishing;
        let generator = f.breaker(&name, Kind::Backfed, "subpanel", plate, false);
        if interlock.blocks() {
            f.not_both((utility, 1), (generator, 1), "refused-pair");
        }
        Some(Pair {
            utility,
            generator,
            inlet: self.find(&["pair", "inlet"], &given.inlet, "inlet", inlets),
            interlock,
        })
    }

    fn subpanel(&mut self, file: &SubpanelFile, pair: Option<Pair>) -> Subpanel {
        let own = format!("(name: \"{}\", feeder_amps", file.name);
        Subpanel {
            name: file.name.clone(),
            awg: self.gauge(
                &[&own, "gauge", &format!("\"{}\"", file.gauge)],
                &file.gauge,
            ),
            length_ft: self.positive(&[&own, "length_ft"], file.length_ft),
            pair,
        }
    }

    fn circuit(&mut self, c: &CircuitFile, subpanels: &[&str]) -> Circuit {
        let own = format!("(name: \"{}\", breaker_amps", c.name);
        let legs = legs(c.leg);
        let plate = Plate {
            rating_a: c.breaker_amps,
            poles: if legs == Legs::Both { 2 } else { 1 },
            slot: c.slot,
            fuse: c.fuse.map(FuseFile::delay),
        };
        if c.fuse.is_some() && legs == Legs::Both {
            self.fault(&[&own, "fuse"], Message::new("error-fuse-two-legs"));
        }
        let bus = match &c.panel {
            Some(name) => Bus::Sub(self.find(&[&own, "panel"], name, "subpanel", subpanels)),
            None => Bus::Main,
        };
        let place = if bus == Bus::Main {
            "panel"
        } else {
            "subpanel"
        };
        let kind = if c.fuse.is_some() { "fuse" } else { "breaker" };
        let guard = format!("{kind}-{}", c.name);
        let f = &mut self.furnishing;
        let breaker = f.breaker(&guard, Kind::Breaker, place, plate, true);
        let gfci = c.gfci.then(|| f.gfci(&format!("gfci-{}", c.name), "house"));
        let awg = self.gauge(&[&own, "gauge", &format!("\"{}\"", c.gauge)], &c.gauge);
        Circuit {
            name: c.name.clone(),
            bus,
            breaker,
            guard,
            gfci,
            awg,
            length_ft: self.positive(&[&own, "length_ft"], c.length_ft),
            heat: BranchWire::new(awg, Material::Copper, Run::Hollow),
            legs,
            neutral_of: None,
        }
    }

    fn transfer(&mut self, file: &TransferFile, known: &Known<'_>) -> Transfer {
        let own = format!("(name: \"{}\", moves", file.name);
        let load = match &file.moves {
            MovesFile::MainPanel => Moved::MainPanel,
            MovesFile::Subpanel(name) => {
                Moved::Subpanel(self.find(&[&own], name, "subpanel", &known.subpanels))
            }
            MovesFile::Circuit(name) => {
                Moved::Circuit(self.find(&[&own], name, "circuit", &known.circuits))
            }
        };
        let other = match &file.other {
            OtherFile::Inlet(name) => {
                OtherSide::Inlet(self.find(&[&own, "other"], name, "inlet", &known.inlets))
            }
            OtherFile::Generator => OtherSide::Generator,
            OtherFile::Battery => {
                if !known.battery {
                    self.fault(&[&own, "Battery"], Message::new("error-no-battery"));
                }
                OtherSide::Battery
            }
        };
        if file.cover && !file.automatic {
            self.fault(&[&own, "cover"], Message::new("error-cover-by-hand"));
        }
        let positions = ["utility", "off", "generator"];
        let f = &mut self.furnishing;
        let handle = f.add(&file.name, Kind::Transfer, &positions, "transfer", 0);
        let mut cover = None;
        if file.automatic {
            f.by_the_world(handle);
            cover = file.cover.then(|| cover_of(f, &file.name, handle));
        } else if !matches!(load, Moved::Circuit(_)) {
            let name = format!("{}-lock", file.name);
            let lock = f.add(&name, Kind::Lock, &["removed", "fitted"], "transfer", 0);
            f.holds((lock, 1), handle, "refused-locked");
        }
        let breaker = file.breaker_amps.map(|rating_a| {
            let plate = Plate {
                rating_a,
                poles: 1,
                slot: (0, 0),
                fuse: None,
            };
            let name = format!("{}-breaker", file.name);
            f.breaker(&name, Kind::Breaker, "transfer", plate, true)
        });
        Transfer {
            name: file.name.clone(),
            handle,
            neutral: match file.neutral {
                NeutralFile::Solid => NeutralPole::Solid,
                NeutralFile::Switched => NeutralPole::Switched,
            },
            load,
            feeder: match load {
                Moved::Subpanel(index) => known.feeders.get(index).copied(),
                Moved::MainPanel | Moved::Circuit(_) => None,
            },
            other,
            breaker,
            automatic: file.automatic,
            cover,
        }
    }

    /// A load hangs on one transfer switch, and a subpanel on one at least.
    fn each_moved_once(&mut self, file: &SiteFile) {
        let moved = |name: &str| {
            let hangs = |t: &&TransferFile| match &t.moves {
                MovesFile::Subpanel(n) | MovesFile::Circuit(n) => n == name,
                MovesFile::MainPanel => name.is_empty(),
            };
            file.transfers.iter().filter(hangs).count()
        };
        for sub in &file.subpanels {
            let wanted = usize::from(sub.pair.is_none());
            if moved(&sub.name) != wanted {
                let message = Message::new("error-subpanel-transfer")
                    .with("name", Arg::Verbatim(sub.name.clone()));
                self.fault(&[&format!("(name: \"{}\", feeder_amps", sub.name)], message);
            }
        }
        for circuit in &file.circuits {
            if moved(&circuit.name) > 1 {
                let message = Message::new("error-moved-twice")
                    .with("name", Arg::Verbatim(circuit.name.clone()));
                self.fault(&["transfers", &format!("\"{}\"", circuit.name)], message);
            }
        }
        if moved("") > 1 {
            let message =
                Message::new("error-moved-twice").with("name", Arg::Verbatim("MainPanel".into()));
            self.fault(&["transfers", "MainPanel"], message);
        }
    }

    pub(super) fn solar(&mut self, file: &SiteFile) -> Option<Solar> {
        let solar = file.solar.as_ref()?;
        let subpanels: Vec<&str> = file.subpanels.iter().map(|s| s.name.as_str()).collect();
        let watts = self.positive(&["solar: (", "watts"], solar.watts);
        let bus = match &solar.panel {
            Some(name) => Bus::Sub(self.find(&["solar: (", "panel"], name, "subpanel", &subpanels)),
            None => Bus::Main,
        };
        let plate = Plate {
            rating_a: solar.breaker_amps,
            poles: 2,
            slot: solar.slot,
            fuse: None,
        };
        let place = if bus == Bus::Main {
            "panel"
        } else {
            "subpanel"
        };
        let f = &mut self.furnishing;
        Some(Solar {
            watts,
            bus,
            breaker: f.breaker("solar-breaker", Kind::Breaker, place, plate, true),
            disconnect: f.add(
                "solar-disconnect",
                Kind::Disconnect,
                &["open", "closed"],
                "solar",
                1,
            ),
            profile: match solar.built_to {
                ProfileFile::CategoryI => Profile::CategoryI,
                ProfileFile::CategoryII => Profile::CategoryII,
                ProfileFile::CategoryIII => Profile::CategoryIII,
                ProfileFile::Before2018 => Profile::Before2018,
            },
        })
    }

    pub(super) fn battery(&mut self, file: &SiteFile) -> Option<Battery> {
        let battery = file.battery.as_ref()?;
        Some(Battery {
            rated_w: self.positive(&["battery: (", "rated_watts"], battery.rated_watts),
            surge_w: self.positive(&["battery: (", "surge_watts"], battery.surge_watts),
            energy_kwh: self.positive(&["battery: (", "kilowatt_hours"], battery.kilowatt_hours),
            charged_share: self.share(&["battery: (", "charged_percent"], battery.charged_percent),
            switch: self
                .furnishing
                .add("battery", Kind::Disconnect, &["off", "on"], "solar", 1),
        })
    }

    /// A percentage as a share, from nothing to all.
    fn share(&mut self, trail: &[&str], percent: f64) -> f64 {
        if !(0.0..=100.0).contains(&percent) {
            let message =
                Message::new("error-percent").with("value", Arg::Verbatim(percent.to_string()));
            self.fault(trail, message);
        }
        percent / 100.0
    }
}

/// The cover before an automatic transfer switch's contacts: once it is open, the learner can move them by hand too.
fn cover_of(furnishing: &mut Furnishing, transfer: &str, handle: ControlId) -> ControlId {
    let name = format!("{transfer}-cover");
    let cover = furnishing.add(&name, Kind::Opening, &["shut", "open"], "transfer", 0);
    furnishing.by_both(handle);
    for position in [0, 1, 2] {
        furnishing.needs((handle, position), cover, &[1], "refused-transfer-cover");
    }
    cover
}
