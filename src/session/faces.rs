//! The faces of equipment at a place: which handles sit on which, what lights and gauges show, what a tag says.
//!
//! Lights and gauges show what the real ones would: they need no tester, so they are shown in a test too.
//! What feeds the sides of a transfer switch is shown as far as this learner may know it.

use crate::apparatus::generator::GeneratorKind;
use crate::drill::Drill;
use crate::site::{
    Bus, ControlId, Legs, Moved, OtherSide, Positions, Receptacle, Site, Spot, Transfer,
};
use crate::words::{Arg, Message, Unit, name_of};

use super::conductors::{HANDLES, equipment_of};
use super::equipment::{locked, side};
use super::view::{EndView, FaceKind, FaceView, GaugeView, LightView, Side, SocketView};
use super::{Open, Session};

/// Volts from which a source lamp is lit, as a share of the rated volts: common practice.
const LAMP_PU: f64 = 0.5;
/// The end of a load gauge's scale, as a share of the rating.
const LOAD_SCALE: f64 = 1.25;

impl Session {
    /// The faces at a place.
    pub(super) fn faces(&self, open: &Open, place: &str) -> Vec<FaceView> {
        match place {
            "transfer" => self.transfer_faces(open),
            "subpanel" => self.subpanel_faces(open.drill.site()),
            "solar" => self.second_source_faces(open),
            "generator" => vec![self.generator_face(open)],
            _ => Vec::new(),
        }
    }

    /// What a tag on the main handle of a place says.
    pub(super) fn tag(&self, open: &Open, place: &str) -> String {
        let (site, positions) = (open.drill.site(), open.drill.positions());
        self.tag_of(place == "panel" && locked(site, positions, "main"))
    }

    fn tag_of(&self, hangs: bool) -> String {
        if hangs {
            self.words.say_id("face-tag")
        } else {
            String::new()
        }
    }

    fn transfer_faces(&self, open: &Open) -> Vec<FaceView> {
        let site = open.drill.site();
        let mut faces: Vec<FaceView> = Vec::new();
        for transfer in &site.transfers {
            let id = equipment_of(transfer);
            let controls = own_controls(site, transfer);
            if let Some(face) = faces.iter_mut().find(|f| f.id == id) {
                face.controls.extend(controls);
                continue;
            }
            let positions = open.drill.positions();
            faces.push(FaceView {
                id: id.to_owned(),
                title: if id == HANDLES {
                    self.words.say_id("place-transfer")
                } else {
                    self.name(id)
                },
                kind: if transfer.automatic {
                    FaceKind::Controller
                } else {
                    FaceKind::Transfer
                },
                controls,
                lights: self.transfer_lights(&open.drill, transfer),
                ends: self.ends(open, transfer),
                tag: self.tag_of(locked(site, positions, &transfer.name)),
                ..FaceView::default()
            });
        }
        faces
    }

    /// What comes in on both sides of a transfer switch, and what goes out.
    fn ends(&self, open: &Open, transfer: &Transfer) -> Vec<EndView> {
        let site = open.drill.site();
        let (utility, other, load) = points(site, transfer);
        let mut ends = vec![
            self.end(open, "face-utility-side", &utility),
            self.end(open, other_label(transfer.other), &other),
        ];
        if !matches!(transfer.load, Moved::Circuit(_)) {
            ends.push(self.end(open, "face-load-side", &load));
        }
        ends
    }

    fn end(&self, open: &Open, label: &str, point: &str) -> EndView {
        let told = self.told(open, point);
        let mut word = self.words.say_id(told.said);
        if !told.volts.is_empty() {
            word = format!("{word}, {}", told.volts);
        }
        EndView {
            label: self.words.say_id(label),
            fed: told.fed,
            word,
        }
    }

    /// Lamps of an automatic transfer switch: what is there, and where the load hangs.
    fn transfer_lights(&self, drill: &Drill, transfer: &Transfer) -> Vec<LightView> {
        if !transfer.automatic {
            return Vec::new();
        }
        let (site, readings) = (drill.site(), drill.readings());
        let (utility, other, _) = points(site, transfer);
        let there = |point: &str| readings.point(point).volts_across >= LAMP_PU * 240.0;
        let stands = side(site, drill.positions(), transfer.handle);
        vec![
            self.light("light-utility", there(&utility)),
            self.light("light-generator", there(&other)),
            self.light("light-on-utility", stands == Side::Utility),
            self.light("light-on-generator", stands == Side::Other),
        ]
    }

    fn light(&self, label: &str, lit: bool) -> LightView {
        let label = self.words.say_id(label);
        let state = self.words.say_id(if lit { "name-on" } else { "name-off" });
        let sentence = Message::new("street-thing")
            .with("name", Arg::Verbatim(label.clone()))
            .with("state", Arg::Verbatim(state));
        LightView {
            lit,
            warns: false,
            sentence: self.words.say(&sentence),
            label,
        }
    }

    fn subpanel_faces(&self, site: &Site) -> Vec<FaceView> {
        let numbered = site.subpanels.iter().enumerate();
        numbered
            .map(|(index, sub)| {
                let here = site.circuits.iter().filter(|c| c.bus == Bus::Sub(index));
                let mut controls: Vec<ControlId> = here.map(|c| c.breaker).collect();
                let solar = site.solar.as_ref().filter(|s| s.bus == Bus::Sub(index));
                controls.extend(solar.map(|s| s.breaker));
                FaceView {
                    id: sub.name.clone(),
                    title: self.name(&sub.name),
                    kind: FaceKind::Panel,
                    controls: names(site, controls),
                    ..FaceView::default()
                }
            })
            .collect()
    }

    fn second_source_faces(&self, open: &Open) -> Vec<FaceView> {
        let (site, readings) = (open.drill.site(), open.drill.readings());
        let mut faces = Vec::new();
        if let Some(solar) = &site.solar {
            let terminals = readings.point("solar-terminals");
            let amps = readings.amps_of("solar-breaker");
            faces.push(FaceView {
                id: "solar".to_owned(),
                title: self.name("solar"),
                kind: FaceKind::Inverter,
                controls: names(site, [solar.disconnect]),
                lights: vec![
                    self.light("light-grid", terminals.volts_across >= LAMP_PU * 240.0),
                    self.light("light-gives", amps > 0.05),
                ],
                gauges: vec![
                    self.gauge("gauge-gives", amps, Unit::Amps),
                    self.gauge("gauge-most", solar.watts, Unit::Watts),
                ],
                ..FaceView::default()
            });
        }
        if let Some(battery) = &site.battery {
            let outlet = readings.point("battery-outlet");
            let amps = readings.amps_of("battery");
            faces.push(FaceView {
                id: "battery".to_owned(),
                title: self.name("battery"),
                kind: FaceKind::Inverter,
                controls: names(site, [battery.switch]),
                lights: vec![
                    self.light("light-volts", outlet.volts_across >= LAMP_PU * 240.0),
                    self.light("light-gives", amps > 0.05),
                ],
                gauges: vec![
                    self.gauge("gauge-gives", amps, Unit::Amps),
                    self.gauge("gauge-most", battery.rated_w, Unit::Watts),
                ],
                ..FaceView::default()
            });
        }
        faces
    }

    fn gauge(&self, label: &str, value: f64, unit: Unit) -> GaugeView {
        GaugeView {
            label: self.words.say_id(label),
            value: self.words.quantity(value, unit),
            share: None,
            limit: None,
        }
    }

    fn generator_face(&self, open: &Open) -> FaceView {
        let drill = &open.drill;
        let (site, positions) = (drill.site(), drill.positions());
        let set = &site.generator;
        let reading = drill.readings().generator;
        let running = drill.conditions().engine.running_since.is_some();
        let watts = reading.watts.max(0.0);
        let mut gauges = Vec::new();
        if running {
            gauges.push(self.gauge("gauge-volts", reading.volts, Unit::Volts));
            let hertz = set.spec.frequency_hz(watts);
            gauges.push(self.gauge("gauge-hertz", hertz, Unit::Hertz));
        }
        gauges.push(GaugeView {
            share: Some(as_f32(watts / (LOAD_SCALE * set.spec.rated_w))),
            limit: Some(as_f32(1.0 / LOAD_SCALE)),
            ..self.gauge("gauge-load", watts, Unit::Watts)
        });
        let fuel = drill.conditions().fuel_gal;
        gauges.push(GaugeView {
            share: Some(as_f32(fuel / set.spec.tank_gal)),
            ..self.gauge("gauge-tank", fuel, Unit::Gallons)
        });
        let mut lights = vec![self.light("light-runs", running)];
        if matches!(set.spec.kind, GeneratorKind::Inverter(_)) {
            lights.push(LightView {
                warns: true,
                ..self.light("light-overload", reading.limited)
            });
        }
        let mut controls = vec![set.engine, set.output];
        for receptacle in &set.receptacles {
            controls.extend(receptacle.breaker);
            controls.extend(receptacle.gfci);
        }
        FaceView {
            id: "generator".to_owned(),
            title: self.words.say_id("place-generator"),
            kind: FaceKind::Generator,
            controls: names(site, controls),
            lights,
            gauges,
            sockets: (0..set.receptacles.len())
                .filter_map(|i| self.socket(site, positions, i))
                .collect(),
            ..FaceView::default()
        }
    }

    fn socket(&self, site: &Site, positions: &Positions, index: usize) -> Option<SocketView> {
        let receptacle: &Receptacle = site.generator.receptacles.get(index)?;
        let plugged: Vec<String> = site
            .cords
            .iter()
            .filter(|c| c.near_spot(positions) == Spot::Receptacle(index))
            .map(|c| self.name(&c.name))
            .collect();
        let said = if plugged.is_empty() {
            self.words.say_id("socket-empty")
        } else {
            let names = Arg::Verbatim(plugged.join(", "));
            let message = Message::new("socket-plugged").with("names", names);
            self.words.say(&message)
        };
        let name = |id: Option<ControlId>| names(site, id).pop().unwrap_or_default();
        let both_legs = receptacle.legs == Legs::Both;
        let volts = if both_legs { 240.0 } else { 120.0 };
        Some(SocketView {
            id: receptacle.name.clone(),
            label: self.words.label(&name_of(&receptacle.name)),
            rating: self.words.quantity(volts, Unit::Volts),
            both_legs,
            taken: !plugged.is_empty(),
            plugged: said,
            breaker: name(receptacle.breaker),
            gfci: name(receptacle.gfci),
        })
    }
}

/// Points on the utility's side of a transfer switch, on its other side, and at what it moves.
fn points(site: &Site, transfer: &Transfer) -> (String, String, String) {
    let inlet = |i: usize| site.inlets.get(i).map_or("", |i| i.name.as_str());
    let other = match transfer.other {
        OtherSide::Inlet(index) => inlet(index),
        OtherSide::Generator => "generator-outlet",
        OtherSide::Battery => "battery-outlet",
    };
    let (utility, load) = match transfer.load {
        Moved::MainPanel => ("service", "bus".to_owned()),
        Moved::Subpanel(index) => {
            let sub = site.subpanels.get(index).map_or("", |s| s.name.as_str());
            ("bus", format!("bus-{sub}"))
        }
        Moved::Circuit(index) => {
            let circuit = site.circuits.get(index).map_or("", |c| c.name.as_str());
            ("bus", format!("outlet-{circuit}"))
        }
    };
    (utility.to_owned(), other.to_owned(), load)
}

fn other_label(other: OtherSide) -> &'static str {
    match other {
        OtherSide::Inlet(_) | OtherSide::Generator => "face-generator-side",
        OtherSide::Battery => "face-battery-side",
    }
}

/// Handle, breaker and lock of a transfer switch.
fn own_controls(site: &Site, transfer: &Transfer) -> Vec<String> {
    let lock = site.control_id(&format!("{}-lock", transfer.name));
    let all = std::iter::once(transfer.handle)
        .chain(transfer.breaker)
        .chain(lock);
    names(site, all)
}

fn names(site: &Site, ids: impl IntoIterator<Item = ControlId>) -> Vec<String> {
    let controls = ids.into_iter().filter_map(|id| site.control(id));
    controls.map(|c| c.name.clone()).collect()
}

#[expect(clippy::cast_possible_truncation, reason = "for drawing only")]
fn as_f32(value: f64) -> f32 {
    value as f32
}
