//! The face of the generator, and that of the controller which starts it by itself.
//!
//! A controller says what it is about and how long that still lasts, as its small screen would.

use crate::apparatus::generator::GeneratorKind;
use crate::drill::Drill;
use crate::site::{Automatic, ControlId, Legs, PositionId, Positions, Receptacle, Site, Spot};
use crate::words::{Arg, Message, Unit, name_of};

use super::close::fuel_lasts;
use super::faces::{as_f32, names};
use super::log_machine::controller_message;
use super::view::{FaceKind, FaceView, GaugeView, LightView, SocketView};
use super::{Open, Session};

/// The end of a load gauge's scale, as a share of the rating.
const LOAD_SCALE: f64 = 1.25;

impl Session {
    /// The faces at the generator.
    pub(super) fn generator_faces(&self, open: &Open) -> Vec<FaceView> {
        let set = self.generator_face(&open.drill);
        let machine = &open.drill.site().generator.machine;
        let controller = machine.automatic.as_ref();
        let controller = controller.map(|automatic| self.controller_face(&open.drill, automatic));
        controller.into_iter().chain([set]).collect()
    }

    /// What a controller is about, if the transfer switch of this index has one.
    pub(super) fn controller_notes(&self, drill: &Drill, transfer: usize) -> Vec<String> {
        let machine = &drill.site().generator.machine;
        let automatic = machine.automatic.filter(|a| a.transfer == transfer);
        let note = automatic.map(|automatic| self.about(drill, &automatic));
        note.into_iter().collect()
    }

    fn about(&self, drill: &Drill, automatic: &Automatic) -> String {
        if lives(drill, automatic) {
            let message = controller_message(drill.conditions().controller.phase);
            self.words.say(&message)
        } else {
            self.words.say_id("face-controller-dark")
        }
    }

    fn controller_face(&self, drill: &Drill, automatic: &Automatic) -> FaceView {
        let state = drill.conditions().controller;
        let mode = automatic.mode(drill.positions());
        let deadline = automatic.controller.deadline(state, mode, drill.now());
        let ends = deadline.filter(|at| lives(drill, automatic) && *at > drill.now());
        let timer = ends.map(|ends| {
            let left = ends.since(drill.now());
            let whole = ends.since(state.since).seconds();
            GaugeView {
                label: self.words.say_id("gauge-time-left"),
                value: self.clock(left),
                share: Some(as_f32(left.seconds() / whole)).filter(|_| whole > 0.0),
                limit: None,
            }
        });
        let controls = [automatic.switch, automatic.battery, automatic.cover];
        FaceView {
            id: "controller".to_owned(),
            title: self.name("controller"),
            kind: FaceKind::Controller,
            controls: names(drill.site(), controls),
            gauges: timer.into_iter().collect(),
            notes: vec![self.about(drill, automatic)],
            ..FaceView::default()
        }
    }

    fn generator_face(&self, drill: &Drill) -> FaceView {
        let (site, positions) = (drill.site(), drill.positions());
        let set = &site.generator;
        let machine = &set.machine;
        let mut controls = vec![set.engine];
        controls.extend(machine.output_switch);
        controls.push(set.output);
        controls.extend(machine.idle);
        controls.extend(machine.second);
        controls.extend(machine.oil.map(|oil| oil.level));
        for receptacle in &set.receptacles {
            controls.extend(receptacle.breaker);
            controls.extend(receptacle.gfci);
        }
        FaceView {
            id: "generator".to_owned(),
            title: self.words.say_id("place-generator"),
            kind: FaceKind::Generator,
            controls: names(site, controls),
            lights: self.generator_lights(drill),
            gauges: self.generator_gauges(drill),
            sockets: (0..set.receptacles.len())
                .filter_map(|i| self.socket(site, positions, i))
                .collect(),
            notes: self.fuel_notes(drill),
            ..FaceView::default()
        }
    }

    fn generator_lights(&self, drill: &Drill) -> Vec<LightView> {
        let (set, positions) = (&drill.site().generator, drill.positions());
        let running = drill.conditions().engine.running_since.is_some();
        let warns = |light: LightView| LightView {
            warns: true,
            ..light
        };
        let mut lights = vec![self.light("light-runs", running)];
        if matches!(set.spec.kind, GeneratorKind::Inverter(_)) {
            let held_down = drill.readings().generator.limited;
            let shut = running && !set.machine.lets_out(positions);
            lights.push(warns(self.light("light-overload", held_down || shut)));
        }
        if set.machine.oil.is_some() {
            let low = set.machine.oil_low(positions);
            lights.push(warns(self.light("light-oil", low)));
        }
        lights
    }

    fn generator_gauges(&self, drill: &Drill) -> Vec<GaugeView> {
        let set = &drill.site().generator;
        let reading = drill.readings().generator;
        let rated_w = set.spec_at(drill.positions()).rated_w;
        let watts = reading.watts.max(0.0);
        let mut gauges = Vec::new();
        if drill.conditions().engine.running_since.is_some() {
            gauges.push(self.gauge("gauge-volts", reading.volts, Unit::Volts));
            gauges.push(self.gauge("gauge-hertz", reading.hz, Unit::Hertz));
            gauges.push(self.gauge("gauge-amps", reading.amps, Unit::Amps));
        }
        let load = Message::new("gauge-of")
            .quantity("value", watts, Unit::Watts)
            .quantity("most", rated_w, Unit::Watts);
        gauges.push(GaugeView {
            value: self.words.say(&load),
            share: Some(as_f32(watts / (LOAD_SCALE * rated_w))),
            limit: Some(as_f32(1.0 / LOAD_SCALE)),
            ..self.gauge("gauge-load", watts, Unit::Watts)
        });
        let fuel = drill.conditions().fuel_gal;
        if fuel.is_finite() {
            gauges.push(GaugeView {
                share: Some(as_f32(fuel / set.spec.tank_gal)),
                ..self.gauge("gauge-tank", fuel, Unit::Gallons)
            });
        }
        gauges
    }

    /// Where the fuel comes from if there is no gauge for it, and how long it lasts.
    fn fuel_notes(&self, drill: &Drill) -> Vec<String> {
        let conditions = drill.conditions();
        let piped = !conditions.fuel_gal.is_finite();
        let piped = piped.then(|| Message::new("gauge-piped"));
        let hours = conditions.fuel_hours(drill.site(), drill.positions(), drill.readings());
        let notes = piped.into_iter().chain(hours.and_then(fuel_lasts));
        notes.map(|message| self.words.say(&message)).collect()
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
            ..SocketView::default()
        })
    }
}

/// Whether a controller has its battery.
fn lives(drill: &Drill, automatic: &Automatic) -> bool {
    drill.positions().get(automatic.battery) == PositionId(0)
}
