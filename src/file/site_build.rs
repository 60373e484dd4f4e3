//! From a site file to a [`Site`], with every fault named on the way.

use crate::apparatus::conductor::Awg;
use crate::apparatus::cord::{self, Loaded};
use crate::apparatus::cord_letters::CordType;
use crate::apparatus::generator::GeneratorSpec;
use crate::apparatus::transformer::CenterTapped;
use crate::hazard::monoxide::Placement;
use crate::site::{
    Circuit, Cord, FarEnd, Generator, Kind, Legs, Line, Neighbor, Panel, Place, Plate, Pole,
    Positions, Service, Site, Span,
};
use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source};
use super::furnish::Furnishing;
use super::site_file::{
    CircuitFile, CordFile, GasFile, GeneratorFile, HouseEndFile, LegFile, LineFile, PanelFile,
    SITE_VERSION, SiteFile,
};

/// What a drill chooses of a site.
pub(super) struct Fitted<'a> {
    pub(super) interlock: bool,
    pub(super) cords: &'a [String],
}

/// A site with the positions it starts in.
pub(super) struct Built {
    pub(super) site: Site,
    pub(super) start: Positions,
}

pub(super) struct Build<'a> {
    source: Source<'a>,
    faults: Vec<Diagnostic>,
    pub(super) furnishing: Furnishing,
}

/// Reads a site file's text.
pub(super) fn parse_site(source: &Source<'_>) -> Result<SiteFile, Vec<Diagnostic>> {
    source.parse(SITE_VERSION, |file: &SiteFile| file.version)
}

/// Builds a site.
pub(super) fn build_site(
    source: Source<'_>,
    file: &SiteFile,
    fitted: &Fitted<'_>,
) -> Result<Built, Vec<Diagnostic>> {
    let mut build = Build {
        source,
        faults: Vec::new(),
        furnishing: Furnishing::default(),
    };
    let line = build.line(&file.line);
    build.positive(&["service", "drop_ft"], file.service.drop_ft);
    build.positive(&["service", "electrode_ohm"], file.service.electrode_ohm);
    let neighbors = build.neighbors(file);
    let panel = build.panel(&file.panel, fitted.interlock);
    let generator = build.generator(&file.generator);
    let cords = build.cords(file, fitted.cords, &generator);
    let appliances = build.appliances(file, &cords);
    build.cord_constraints(&cords, &appliances);
    build
        .furnishing
        .add("window", Kind::Opening, &["shut", "open"], "house", 0);
    build.furnishing.add(
        "household",
        Kind::People,
        &["inside", "outside"],
        "house",
        0,
    );
    build.positive(&["air", "cubic_meters"], file.air.cubic_meters);
    build.positive(
        &["air", "changes_per_hour_window_shut"],
        file.air.changes_per_hour_window_shut,
    );
    build.positive(
        &["air", "changes_per_hour_window_open"],
        file.air.changes_per_hour_window_open,
    );
    if !build.faults.is_empty() {
        return Err(build.faults);
    }
    let start = build.furnishing.start();
    let site = Site {
        name: file.name.clone(),
        line,
        service: Service {
            drop_ft: file.service.drop_ft,
            electrode_ohm: file.service.electrode_ohm,
        },
        neighbors,
        panel,
        appliances,
        generator,
        cords,
        air_m3: file.air.cubic_meters,
        air_changes_per_h: (
            file.air.changes_per_hour_window_shut,
            file.air.changes_per_hour_window_open,
        ),
        controls: build.furnishing.controls,
        constraints: build.furnishing.constraints,
    };
    Ok(Built { site, start })
}

impl Build<'_> {
    pub(super) fn fault(&mut self, trail: &[&str], message: Message) {
        let fault = self.source.at(trail, message);
        self.faults.push(fault);
    }

    /// A number that has to be above zero.
    pub(super) fn positive(&mut self, trail: &[&str], value: f64) -> f64 {
        if value > 0.0 && value.is_finite() {
            return value;
        }
        let field = trail.last().copied().unwrap_or_default().to_owned();
        let message = Message::new("error-not-positive")
            .with("field", Arg::Verbatim(field))
            .with("value", Arg::Verbatim(value.to_string()));
        self.fault(trail, message);
        1.0
    }

    /// A name that has to be one of some names: returns its index.
    pub(super) fn find(
        &mut self,
        trail: &[&str],
        name: &str,
        kind: &'static str,
        known: &[&str],
    ) -> usize {
        if let Some(index) = known.iter().position(|k| *k == name) {
            return index;
        }
        let quoted = format!("\"{name}\"");
        let mut trail = trail.to_vec();
        trail.push(&quoted);
        let message = Message::new("error-unknown-name")
            .with("name", Arg::Verbatim(name.to_owned()))
            .said("kind", Message::new(format!("error-kind-{kind}")));
        let fault = self
            .source
            .at(&trail, message)
            .with_nearest(known.iter().copied());
        self.faults.push(fault);
        0
    }

    fn gauge(&mut self, trail: &[&str], text: &str) -> Awg {
        text.parse().unwrap_or_else(|_| {
            let message = Message::new("error-gauge").with("value", Arg::Verbatim(text.to_owned()));
            self.fault(trail, message);
            Awg::N12
        })
    }

    fn line(&mut self, file: &LineFile) -> Line {
        let names: Vec<&str> = file.poles.iter().map(|p| p.name.as_str()).collect();
        let poles = file.poles.iter().map(|p| Pole {
            name: p.name.clone(),
            electrode_ohm: self.positive(
                &[&format!("\"{}\"", p.name), "electrode_ohm"],
                p.electrode_ohm,
            ),
        });
        let poles: Vec<Pole> = poles.collect();
        let mut spans = Vec::new();
        for span in &file.spans {
            let own = format!("\"{}\"", span.name);
            spans.push(Span {
                name: span.name.clone(),
                from: self.find(&[&own, "from"], &span.from, "pole", &names),
                to: self.find(&[&own, "to"], &span.to, "pole", &names),
                length_ft: self.positive(&[&own, "length_ft"], span.length_ft),
            });
        }
        let span_names: Vec<&str> = file.spans.iter().map(|s| s.name.as_str()).collect();
        for (field, value) in [
            ("volts", file.volts),
            ("source_x_ohm", file.source_x_ohm),
            ("source_electrode_ohm", file.source_electrode_ohm),
            ("footing_ohm", file.footing_ohm),
            ("kva", file.transformer.kva),
            ("resistance_percent", file.transformer.resistance_percent),
            ("reactance_percent", file.transformer.reactance_percent),
            (
                "no_load_loss_percent",
                file.transformer.no_load_loss_percent,
            ),
            ("magnetizing_percent", file.transformer.magnetizing_percent),
        ] {
            self.positive(&["line", field], value);
        }
        let f = &mut self.furnishing;
        Line {
            volts: file.volts,
            source_ohm: (file.source_r_ohm, file.source_x_ohm),
            source_electrode_ohm: file.source_electrode_ohm,
            feeder: f.add("feeder", Kind::Line, &["open", "closed"], "line", 1),
            span_state: f.add("broken-span", Kind::Line, &["whole", "broken"], "line", 0),
            crew: f.add(
                "crew",
                Kind::Line,
                &["away", "testing", "hands-on", "clear"],
                "line",
                0,
            ),
            grounds: f.add("crew-grounds", Kind::Line, &["off", "on"], "line", 0),
            broken_span: self.find(&["breaks_at"], &file.breaks_at, "span", &span_names),
            crew_pole: self.find(&["crew_at"], &file.crew_at, "pole", &names),
            transformer_pole: self.find(&["transformer_at"], &file.transformer_at, "pole", &names),
            transformer: CenterTapped {
                kva: file.transformer.kva,
                primary_v: file.volts,
                half_v: HALF_V,
                r_pu: file.transformer.resistance_percent / 100.0,
                x_pu: file.transformer.reactance_percent / 100.0,
                no_load_loss_pu: file.transformer.no_load_loss_percent / 100.0,
                magnetizing_pu: file.transformer.magnetizing_percent / 100.0,
            },
            footing_ohm: file.footing_ohm,
            poles,
            spans,
        }
    }

    fn neighbors(&mut self, file: &SiteFile) -> Vec<Neighbor> {
        let mut neighbors = Vec::new();
        for n in &file.neighbors {
            let own = format!("\"{}\"", n.name);
            neighbors.push(Neighbor {
                name: n.name.clone(),
                service: Service {
                    drop_ft: self.positive(&[&own, "drop_ft"], n.drop_ft),
                    electrode_ohm: self.positive(&[&own, "electrode_ohm"], n.electrode_ohm),
                },
                leg_watts: (
                    self.positive(&[&own, "leg_1_watts"], n.leg_1_watts),
                    self.positive(&[&own, "leg_2_watts"], n.leg_2_watts),
                ),
            });
        }
        neighbors
    }

    fn panel(&mut self, file: &PanelFile, interlock: bool) -> Panel {
        let plate = |rating_a, poles, slot| Plate {
            rating_a,
            poles,
            slot,
        };
        let f = &mut self.furnishing;
        let main = f.breaker(
            "main",
            Kind::Main,
            "panel",
            plate(file.main_amps, 2, (0, 0)),
            true,
        );
        let lock = f.add("main-lock", Kind::Lock, &["removed", "fitted"], "panel", 0);
        let backfed_plate = plate(file.generator_breaker_amps, 2, (0, 1));
        let backfed = f.breaker(
            "generator-breaker",
            Kind::Backfed,
            "panel",
            backfed_plate,
            false,
        );
        f.needs((lock, 1), main, &[0], "refused-lock-needs-off");
        f.holds((lock, 1), main, "refused-locked");
        if interlock {
            f.not_both((main, 1), (backfed, 1), "refused-interlock");
        }
        let circuits = file.circuits.iter().map(|c| self.circuit(c)).collect();
        Panel {
            main,
            backfed,
            inlet_awg: self.gauge(
                &["inlet_gauge", &format!("\"{}\"", file.inlet_gauge)],
                &file.inlet_gauge,
            ),
            inlet_ft: self.positive(&["inlet_ft"], file.inlet_ft),
            interlock,
            circuits,
        }
    }

    fn circuit(&mut self, c: &CircuitFile) -> Circuit {
        let own = format!("(name: \"{}\", breaker_amps", c.name);
        let legs = legs(c.leg);
        let poles = if legs == Legs::Both { 2 } else { 1 };
        let plate = Plate {
            rating_a: c.breaker_amps,
            poles,
            slot: c.slot,
        };
        let breaker = self.furnishing.breaker(
            &format!("breaker-{}", c.name),
            Kind::Breaker,
            "panel",
            plate,
            true,
        );
        Circuit {
            name: c.name.clone(),
            breaker,
            awg: self.gauge(&[&own, "gauge", &format!("\"{}\"", c.gauge)], &c.gauge),
            length_ft: self.positive(&[&own, "length_ft"], c.length_ft),
            legs,
        }
    }

    fn generator(&mut self, file: &GeneratorFile) -> Generator {
        for (field, value) in [
            ("rated_watts", file.rated_watts),
            ("surge_watts", file.surge_watts),
            ("tank_gallons", file.tank_gallons),
            ("warm_up_seconds", file.warm_up_seconds),
            ("cool_down_seconds", file.cool_down_seconds),
        ] {
            self.positive(&["generator: (", field], value);
        }
        let spec = GeneratorSpec {
            main_breaker_a: f64::from(file.output_breaker_amps),
            warmup_s: file.warm_up_seconds,
            cooldown_s: file.cool_down_seconds,
            tank_gal: file.tank_gallons,
            ..GeneratorSpec::conventional(file.rated_watts, file.surge_watts)
        };
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
        };
        let output = f.breaker("generator-output", Kind::Output, "generator", plate, false);
        let usable: Vec<u8> = usable_positions(file);
        f.needs((engine, 1), placement, &usable, "refused-in-shed");
        f.holds((engine, 1), placement, "refused-move-running");
        let places = file.places.iter().map(|p| Place {
            name: p.name.clone(),
            opening_ft: p.opening_ft,
            exposure: (gas(p.gas_with_window_shut), gas(p.gas_with_window_open)),
            usable: p.usable,
        });
        Generator {
            spec,
            engine,
            output,
            placement,
            places: places.collect(),
        }
    }

    fn cords(&mut self, file: &SiteFile, chosen: &[String], generator: &Generator) -> Vec<Cord> {
        let circuits: Vec<&str> = file
            .panel
            .circuits
            .iter()
            .map(|c| c.name.as_str())
            .collect();
        let mut cords = Vec::new();
        for cord in file.cords.iter().filter(|c| chosen.contains(&c.name)) {
            let built = self.cord(cord, &circuits);
            if let Some(built) = built {
                cords.push(built);
            }
        }
        let usable: Vec<u8> = usable_positions(&file.generator);
        for cord in &cords {
            self.furnishing.needs(
                (cord.near, 1),
                generator.placement,
                &usable,
                "refused-in-shed",
            );
            self.furnishing
                .holds((cord.near, 1), generator.placement, "refused-move-corded");
        }
        cords
    }

    fn cord(&mut self, cord: &CordFile, circuits: &[&str]) -> Option<Cord> {
        let own = format!("(name: \"{}\", letters", cord.name);
        let awg = self.gauge(
            &[&own, "gauge", &format!("\"{}\"", cord.gauge)],
            &cord.gauge,
        );
        let length_ft = self.positive(&[&own, "length_ft"], cord.length_ft);
        let letters = cord.letters.parse::<CordType>();
        if letters.is_err() {
            let message = Message::new("error-cord-letters")
                .with("value", Arg::Verbatim(cord.letters.clone()));
            self.fault(&[&cord.letters], message);
        }
        let make = cord::Cord::new(letters.ok()?, awg, length_ft, Loaded::Two);
        if make.is_none() {
            let message =
                Message::new("error-gauge").with("value", Arg::Verbatim(cord.gauge.clone()));
            self.fault(&[&own, "gauge"], message);
        }
        let end = |part: &str| format!("{}-{part}", cord.name);
        let near = self.furnishing.add(
            &end("generator-end"),
            Kind::Plug,
            &["stowed", "generator"],
            "cords",
            0,
        );
        let far = match &cord.house_end {
            HouseEndFile::Inlet => FarEnd::Inlet(self.furnishing.add(
                &end("house-end"),
                Kind::Plug,
                &["stowed", "inlet"],
                "cords",
                0,
            )),
            HouseEndFile::BareBlades { outlet } => {
                let circuit = self.find(&[&own, "outlet"], outlet, "circuit", circuits);
                let position = format!("{outlet}-outlet");
                let positions = ["stowed", position.as_str()];
                FarEnd::Blades(
                    self.furnishing
                        .add(&end("house-end"), Kind::Plug, &positions, "cords", 0),
                    circuit,
                )
            }
            HouseEndFile::Connector => FarEnd::Connector,
        };
        let lay = self
            .furnishing
            .add(&end("lay"), Kind::Lay, &["coiled", "flat"], "cords", 0);
        Some(Cord {
            name: cord.name.clone(),
            make: make?,
            legs: legs(cord.leg),
            near,
            far,
            lay,
        })
    }
}

/// Volts from a leg to neutral.
pub(super) const HALF_V: f64 = 120.0;

fn usable_positions(file: &GeneratorFile) -> Vec<u8> {
    file.places
        .iter()
        .zip(0_u8..)
        .filter(|(p, _)| p.usable)
        .map(|(_, index)| index)
        .collect()
}

fn legs(leg: LegFile) -> Legs {
    match leg {
        LegFile::Leg1 => Legs::One,
        LegFile::Leg2 => Legs::Two,
        LegFile::Both => Legs::Both,
    }
}

fn gas(gas: GasFile) -> Placement {
    match gas {
        GasFile::Indoors => Placement::Garage,
        GasFile::NearOpening => Placement::NearOpening,
        GasFile::FarAway => Placement::TwentyFeetAway,
    }
}
