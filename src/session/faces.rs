//! The faces of equipment at a place: which handles sit on which, what lights and gauges show, what a tag says.
//!
//! Lights and gauges show what the real ones would: they need no tester, so they are shown in a test too.
//! What feeds the sides of a transfer switch is shown as far as this learner may know it.

use crate::drill::{Drill, Follows};
use crate::site::{Bus, ControlId, Cord, Legs, Moved, OtherSide, Site, Transfer};
use crate::words::{Arg, Message, Unit};

use super::conductors::{HANDLES, equipment_of};
use super::equipment::{locked, side};
use super::view::{EndView, FaceKind, FaceView, GaugeView, LightView, Side, SocketView};
use super::{Open, Session, furnish};

/// Volts from which a source lamp is lit, as a share of the rated volts: common practice.
const LAMP_PU: f64 = 0.5;

impl Session {
    /// The faces at a place.
    pub(super) fn faces(&self, open: &Open, place: &str) -> Vec<FaceView> {
        match place {
            "transfer" => self.transfer_faces(open),
            "subpanel" => self.subpanel_faces(open.drill.site()),
            "solar" => self.second_source_faces(open),
            "generator" => self.generator_faces(open),
            "cords" => {
                let lent = self.lent_face(open);
                self.cord_faces(open).into_iter().chain(lent).collect()
            }
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
        for (index, transfer) in site.transfers.iter().enumerate() {
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
                notes: self.controller_notes(&open.drill, index),
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
        let (there_label, on_label) = match transfer.other {
            OtherSide::Battery => ("light-battery", "light-on-battery"),
            OtherSide::Inlet(_) | OtherSide::Generator => ("light-generator", "light-on-generator"),
        };
        vec![
            self.light("light-utility", there(&utility)),
            self.light(there_label, there(&other)),
            self.light("light-on-utility", stands == Side::Utility),
            self.light(on_label, stands == Side::Other),
        ]
    }

    pub(super) fn light(&self, label: &str, lit: bool) -> LightView {
        let label = self.words.say_id(label);
        let state = self
            .words
            .say_id(if lit { "light-yes" } else { "light-no" });
        let sentence = Message::new("street-thing")
            .with("name", Arg::Verbatim(label.clone()))
            .with("state", Arg::Verbatim(state));
        LightView {
            lit,
            warns: false,
            sentence: self.words.label(&sentence),
            label,
        }
    }

    fn subpanel_faces(&self, site: &Site) -> Vec<FaceView> {
        let numbered = site.subpanels.iter().enumerate();
        numbered
            .map(|(index, sub)| {
                let here = site.circuits.iter().filter(|c| c.bus == Bus::Sub(index));
                let pair = sub.pair.iter().flat_map(|p| [p.utility, p.generator]);
                let mut controls: Vec<ControlId> = pair.collect();
                controls.extend(here.map(|c| c.breaker));
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
        let conditions = open.drill.conditions();
        let mut faces = Vec::new();
        if let Some(solar) = &site.solar {
            let terminals = readings.point("solar-terminals");
            let now = &conditions.solar;
            let mut gives = self.gauge("gauge-gives", now.watts, Unit::Watts);
            gives.share = Some(as_f32(now.watts / solar.watts));
            let follows = GaugeView {
                label: self.words.say_id("gauge-follows"),
                value: self.words.label(&Message::new(follows(now.follows))),
                ..GaugeView::default()
            };
            faces.push(FaceView {
                lights: vec![
                    self.light("light-grid", terminals.volts_across >= LAMP_PU * 240.0),
                    self.light("light-gives", now.watts > 1.0),
                ],
                gauges: vec![follows, gives],
                ..self.inverter_face(site, "solar", solar.disconnect)
            });
        }
        if let Some(battery) = &site.battery {
            let outlet = readings.point("battery-outlet");
            let now = &conditions.battery;
            let full = 1000.0 * battery.energy_kwh;
            let charge = 100.0 * now.energy_wh / full;
            faces.push(FaceView {
                lights: vec![
                    self.light("light-volts", outlet.volts_across >= LAMP_PU * 240.0),
                    self.light("light-carries", now.carries),
                    LightView {
                        warns: true,
                        ..self.light("light-shut", now.shut)
                    },
                ],
                gauges: vec![
                    GaugeView {
                        share: Some(as_f32(now.energy_wh / full)),
                        ..self.gauge("gauge-charge", charge, Unit::Percent)
                    },
                    self.gauge("gauge-gives", readings.amps_of("battery"), Unit::Amps),
                    self.gauge("gauge-most", battery.rated_w, Unit::Watts),
                ],
                ..self.inverter_face(site, "battery", battery.switch)
            });
        }
        faces
    }

    fn inverter_face(&self, site: &Site, id: &str, switch: ControlId) -> FaceView {
        FaceView {
            id: id.to_owned(),
            title: self.name(id),
            kind: FaceKind::Inverter,
            controls: names(site, [switch]),
            ..FaceView::default()
        }
    }

    fn cord_faces(&self, open: &Open) -> Vec<FaceView> {
        let site = open.drill.site();
        let numbered = site.cords.iter().enumerate();
        numbered
            .map(|(index, cord)| {
                let far = cord.far.control();
                let controls = [cord.near].into_iter().chain(far).chain([cord.lay]);
                let state = self.told(open, &format!("{}-far-end", cord.name));
                FaceView {
                    id: cord.name.clone(),
                    title: self.name(&cord.name),
                    kind: FaceKind::Cord,
                    controls: names(site, controls),
                    ends: vec![EndView {
                        label: self.name(&format!("{}-far-end", cord.name)),
                        fed: state.fed,
                        word: self.words.say_id(state.said),
                    }],
                    sockets: self.connector(open, cord).into_iter().collect(),
                    notes: super::cords::lines(&self.words, &open.drill, (index, cord)),
                    jacket: furnish::jacket_of(&cord.name),
                    ..FaceView::default()
                }
            })
            .collect()
    }

    /// The end of the cord that a neighbor lends: there is nothing to move on it but what is plugged in.
    fn lent_face(&self, open: &Open) -> Option<FaceView> {
        let (site, positions) = (open.drill.site(), open.drill.positions());
        let lent = site.lent.as_ref()?;
        let state = self.told(open, &lent.name);
        let user = furnish::lent_user(site, positions);
        Some(FaceView {
            id: lent.name.clone(),
            title: self.name(&lent.name),
            kind: FaceKind::Cord,
            ends: vec![EndView {
                label: self.name(&lent.name),
                fed: state.fed,
                word: self.words.say_id(state.said),
            }],
            sockets: vec![self.taken_by(&lent.name, false, &user)],
            ..FaceView::default()
        })
    }

    /// The far end of a cord that takes another plug.
    fn connector(&self, open: &Open, cord: &Cord) -> Option<SocketView> {
        if !cord.far.takes_plugs() {
            return None;
        }
        let (site, positions) = (open.drill.site(), open.drill.positions());
        let (_, user) = furnish::cord_ends(site, positions, cord);
        let end = format!("{}-far-end", cord.name);
        Some(self.taken_by(&end, cord.legs == Legs::Both, &user))
    }

    /// A connector, with what is plugged into it.
    fn taken_by(&self, end: &str, both_legs: bool, user: &str) -> SocketView {
        let plugged = if user.is_empty() {
            Message::new("socket-empty")
        } else {
            Message::new("socket-plugged").with("names", Arg::Verbatim(self.name(user)))
        };
        let volts = if both_legs { 240.0 } else { 120.0 };
        SocketView {
            id: end.to_owned(),
            label: self.name(end),
            rating: self.words.quantity(volts, Unit::Volts),
            both_legs,
            taken: !user.is_empty(),
            plugged: self.words.say(&plugged),
            user: user.to_owned(),
            ..SocketView::default()
        }
    }

    pub(super) fn gauge(&self, label: &str, value: f64, unit: Unit) -> GaugeView {
        GaugeView {
            label: self.words.say_id(label),
            value: self.words.quantity(value, unit),
            share: None,
            limit: None,
        }
    }
}

/// The word for what a solar inverter takes for the grid.
pub(super) fn follows(grid: Follows) -> &'static str {
    match grid {
        Follows::Nothing => "follows-nothing",
        Follows::Utility => "follows-utility",
        Follows::Generator => "follows-generator",
        Follows::Battery => "follows-battery",
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

pub(super) fn names(site: &Site, ids: impl IntoIterator<Item = ControlId>) -> Vec<String> {
    let controls = ids.into_iter().filter_map(|id| site.control(id));
    controls.map(|c| c.name.clone()).collect()
}

#[expect(clippy::cast_possible_truncation, reason = "for drawing only")]
pub(super) fn as_f32(value: f64) -> f32 {
    value as f32
}
