//! From a site file to a [`Site`], with every fault named on the way.

use crate::apparatus::conductor::Awg;
use crate::apparatus::transformer::CenterTapped;
use crate::drill::AMBIENT_C;
use crate::site::{Interlock, Kind, Legs, Line, Neighbor, Pole, Positions, Service, Site, Span};
use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source};
use super::furnish::Furnishing;
use super::mend::Misread;
use super::site_file::{LegFile, LineFile, NeighborFile, SITE_VERSION, SiteFile};

/// What a drill chooses of a site.
pub(super) struct Fitted<'a> {
    pub(super) interlock: Interlock,
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
pub(super) fn parse_site(source: &Source<'_>) -> Result<SiteFile, Misread<SiteFile>> {
    source.parse(SITE_VERSION, |file: &SiteFile| file.version)
}

/// Whether the names that the parts of a site speak of may be lost with a field: a name, or a list or a part that has names in it.
pub(super) fn site_loses_names(field: &str, value: &str) -> bool {
    field == "name" || value.starts_with(['(', '[', '{'])
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
    let supply = build.supply(file, fitted.interlock);
    let generator = build.generator(&file.generator, &file.transfers);
    let (solar, battery) = (build.solar(file), build.battery(file));
    let cords = build.cords(file, fitted.cords, &generator);
    let appliances = build.appliances(file, &cords);
    let lent = build.lent(file, &cords, &appliances);
    build.cord_constraints(&cords, &appliances);
    build.window(&file.air, &cords);
    build.furnishing.add(
        "household",
        Kind::People,
        &["inside", "outside"],
        "house",
        0,
    );
    let garage = build.air(&file.air);
    // Last, when everything that stands in the house is known.
    let line_work = file.line_work.as_ref().map(|w| build.line_work(w, &line));
    let indoors = build.indoors(&file.air);
    if !build.faults.is_empty() {
        return Err(build.faults);
    }
    let start = build.furnishing.start();
    let site = Site {
        name: file.name.clone(),
        line,
        line_work,
        service: Service {
            drop_ft: file.service.drop_ft,
            electrode_ohm: file.service.electrode_ohm,
        },
        neighbors,
        panel: supply.panel,
        subpanels: supply.subpanels,
        circuits: supply.circuits,
        inlets: supply.inlets,
        transfers: supply.transfers,
        appliances,
        generator,
        solar,
        battery,
        lent,
        cords,
        ambient_c: AMBIENT_C,
        air_m3: file.air.cubic_meters,
        air_changes_per_h: (
            file.air.changes_per_hour_window_shut,
            file.air.changes_per_hour_window_open,
        ),
        garage,
        indoors,
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

    pub(super) fn gauge(&mut self, trail: &[&str], text: &str) -> Awg {
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
            drop_neutral: f.add("drop-neutral", Kind::Line, &["whole", "broken"], "line", 0),
            drop_leg: f.add("drop-leg", Kind::Line, &["whole", "broken"], "line", 0),
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
            neighbors.push(self.neighbor(n));
        }
        neighbors
    }

    pub(super) fn neighbor(&mut self, n: &NeighborFile) -> Neighbor {
        let own = format!("\"{}\"", n.name);
        Neighbor {
            name: n.name.clone(),
            service: Service {
                drop_ft: self.positive(&[&own, "drop_ft"], n.drop_ft),
                electrode_ohm: self.positive(&[&own, "electrode_ohm"], n.electrode_ohm),
            },
            leg_watts: (
                self.positive(&[&own, "leg_1_watts"], n.leg_1_watts),
                self.positive(&[&own, "leg_2_watts"], n.leg_2_watts),
            ),
        }
    }
}

/// Volts from a leg to neutral.
pub(super) const HALF_V: f64 = 120.0;

/// Legs as the model has them.
pub(super) fn legs(leg: LegFile) -> Legs {
    match leg {
        LegFile::Leg1 => Legs::One,
        LegFile::Leg2 => Legs::Two,
        LegFile::Both => Legs::Both,
    }
}
