//! The crew's part of a site file: breaks, cutouts, testers and grounds, and whose hands may move what.
//!
//! On a line that a crew works, the learner is the crew: what stands in the house is the customers'.

use crate::apparatus::transformer::CenterTapped;
use crate::hazard::tester::{Sensing, Tester};
use crate::site::{
    At, Break, CLAMPS, Clamps, ControlId, Grounds, HandTester, Kind, Line, LineWork, Tap,
};
use crate::words::{Arg, Message};

use super::site_build::{Build, HALF_V};
use super::site_file::TransformerFile;
use super::site_file_line::{AtFile, BreakFile, LineWorkFile};

/// Names of poles and spans, for what refers to them.
struct Known<'a> {
    poles: Vec<&'a str>,
    spans: Vec<&'a str>,
}

impl Build<'_> {
    pub(super) fn line_work(&mut self, file: &LineWorkFile, line: &Line) -> LineWork {
        let known = Known {
            poles: line.poles.iter().map(|p| p.name.as_str()).collect(),
            spans: line.spans.iter().map(|s| s.name.as_str()).collect(),
        };
        let positions = ["sound", "welded"];
        let f = &mut self.furnishing;
        let head_contacts = f.add("feeder-contacts", Kind::Line, &positions, "line", 0);
        let breaks = file.breaks.iter().map(|b| self.line_break(b, line, &known));
        let breaks: Vec<Break> = breaks.collect();
        let home = known.poles.get(line.transformer_pole).copied();
        let home_cutout = self.line_control(
            &format!("cutout-{}", home.unwrap_or_default()),
            &["closed", "open"],
        );
        let taps = file.taps.iter().map(|tap| {
            let own = format!("(pole: \"{}\"", tap.pole);
            let pole = self.find(&[&own], &tap.pole, "pole", &known.poles);
            Tap {
                pole,
                transformer: self.transformer(&own, &tap.transformer, line.volts),
                cutout: self.line_control(&format!("cutout-{}", tap.pole), &["closed", "open"]),
                customers: tap.customers.iter().map(|n| self.neighbor(n)).collect(),
            }
        });
        let taps = taps.collect();
        let grounds = file.grounds_at.iter().map(|pole| Grounds {
            pole: self.find(&["grounds_at"], pole, "pole", &known.poles),
            control: self.grounds(&format!("grounds-{pole}")),
        });
        let grounds = grounds.collect();
        let names: Vec<&str> = file.testers.iter().map(|t| t.name.as_str()).collect();
        let tester = self.line_control("tester", &names);
        let testers = file.testers.iter().map(|tester| {
            let own = format!("(name: \"{}\"", tester.name);
            HandTester {
                name: tester.name.clone(),
                make: Tester {
                    sensing: Sensing::TwoPole,
                    least_v: self.positive(&[&own, "least_volts"], tester.least_volts),
                    most_v: self.positive(&[&own, "most_volts"], tester.most_volts),
                    powered: true,
                },
                battery: self.furnishing.add(
                    &format!("{}-battery", tester.name),
                    Kind::Line,
                    &["good", "spent"],
                    "line",
                    0,
                ),
            }
        });
        let testers = testers.collect();
        let second_crew = file.second_crew.then(|| self.second_crew(line, &breaks));
        self.crew_rules(line);
        LineWork {
            head_contacts,
            trips_a: self.positive(&["line_work", "trips_amps"], file.trips_amps),
            breaks,
            home_cutout,
            taps,
            grounds,
            lead_ohm: self.positive(&["line_work", "lead_milliohm"], file.lead_milliohm) / 1000.0,
            tester,
            testers,
            second_crew,
        }
    }

    /// A control of the line that the crew works.
    fn line_control(&mut self, name: &str, positions: &[&str]) -> ControlId {
        let control = self.furnishing.add(name, Kind::Line, positions, "line", 0);
        self.furnishing.by_the_learner(control);
        control
    }

    fn line_break(&mut self, file: &BreakFile, line: &Line, known: &Known<'_>) -> Break {
        let own = format!("(name: \"{}\"", file.name);
        let at = match &file.at {
            AtFile::Span(span) => At::Span(self.find(&[&own, "Span"], span, "span", &known.spans)),
            AtFile::Tie(pole) => At::Tie(self.find(&[&own, "Tie"], pole, "pole", &known.poles)),
        };
        if at == At::Span(line.broken_span) {
            let message = Message::new("error-break-in-broken-span")
                .with("name", Arg::Verbatim(file.name.clone()));
            self.fault(&[&own], message);
        }
        let handle = self.line_control(&file.name, &["closed", "open"]);
        let jumper = self.line_control(&format!("jumper-{}", file.name), &["absent", "present"]);
        let tag = self.line_control(&format!("tag-{}", file.name), &["off", "on"]);
        let f = &mut self.furnishing;
        // Who hangs the tag stands under the blades and sees them.
        f.needs((tag, 1), handle, &[1], "refused-blades-closed");
        f.needs((tag, 1), jumper, &[0], "refused-jumper-there");
        f.holds((tag, 1), handle, "refused-tagged");
        f.holds((tag, 1), jumper, "refused-tagged");
        f.needs((jumper, 1), jumper, &[], "refused-no-jumper");
        Break {
            name: file.name.clone(),
            at,
            handle,
            tag,
            jumper,
        }
    }

    /// A set of grounds: one clamp at a time.
    fn grounds(&mut self, name: &str) -> ControlId {
        const ONE: &str = "refused-one-clamp";
        let control = self.line_control(name, &CLAMPS.map(Clamps::name));
        let f = &mut self.furnishing;
        for (position, from) in [(0, [1, 3]), (2, [1, 3]), (1, [0, 2]), (3, [0, 2])] {
            f.needs((control, position), control, &from, ONE);
        }
        control
    }

    fn second_crew(&mut self, line: &Line, breaks: &[Break]) -> ControlId {
        let positions = ["away", "working", "clear"];
        let f = &mut self.furnishing;
        let crew = f.add("second-crew", Kind::Line, &positions, "line", 0);
        // Their own tags hang at head and tie as long as they work.
        f.holds((crew, 1), line.feeder, "refused-second-crew");
        for tie in breaks.iter().filter(|b| matches!(b.at, At::Tie(_))) {
            f.holds((crew, 1), tie.handle, "refused-second-crew");
        }
        crew
    }

    /// The crew orders the head switch, mends the wire with its hands on it, and has nothing else to do with the customers' things.
    fn crew_rules(&mut self, line: &Line) {
        let f = &mut self.furnishing;
        f.only_the_line_to_the_learner();
        for control in [line.feeder, line.crew, line.span_state] {
            f.by_the_learner(control);
        }
        f.needs(
            (line.span_state, 0),
            line.crew,
            &[2],
            "refused-out-of-reach",
        );
        f.needs(
            (line.span_state, 1),
            line.span_state,
            &[],
            "refused-no-reason",
        );
    }

    fn transformer(&mut self, own: &str, file: &TransformerFile, volts: f64) -> CenterTapped {
        for (field, value) in [
            ("kva", file.kva),
            ("resistance_percent", file.resistance_percent),
            ("reactance_percent", file.reactance_percent),
            ("no_load_loss_percent", file.no_load_loss_percent),
            ("magnetizing_percent", file.magnetizing_percent),
        ] {
            self.positive(&[own, field], value);
        }
        CenterTapped {
            kva: file.kva,
            primary_v: volts,
            half_v: HALF_V,
            r_pu: file.resistance_percent / 100.0,
            x_pu: file.reactance_percent / 100.0,
            no_load_loss_pu: file.no_load_loss_percent / 100.0,
            magnetizing_pu: file.magnetizing_percent / 100.0,
        }
    }
}
