//! Panels, transfer switches, solar and battery as they are seen from afar, in the order in which energy passes them.
//!
//! It does not cover their faces: see [`super::faces`].

use crate::site::{ControlId, Moved, Pair, Positions, Site, Transfer};
use crate::words::{Arg, Message, Unit};

use super::conductors::{HANDLES, equipment_of};
use super::view::{EquipmentKind, EquipmentView, Side};
use super::{Open, Session};

/// Watts up to which an inverter counts as giving nothing.
const LEAST_W: f64 = 1.0;

impl Session {
    /// All equipment of the house.
    pub(super) fn equipment(&self, open: &Open) -> Vec<EquipmentView> {
        let site = open.drill.site();
        let of = |moves: &dyn Fn(&Transfer) -> bool| {
            let found = site.transfers.iter().filter(|t| moves(t));
            found.collect::<Vec<_>>()
        };
        let mut all = Vec::new();
        for transfer in of(&|t| t.load == Moved::MainPanel) {
            all.push(self.transfer(open, &[transfer]));
        }
        all.push(self.plain(open, "panel", EquipmentKind::Panel, "panel"));
        let handles = of(&|t| matches!(t.load, Moved::Circuit(_)));
        if !handles.is_empty() {
            all.push(self.transfer(open, &handles));
        }
        for (index, sub) in site.subpanels.iter().enumerate() {
            for transfer in of(&|t| t.load == Moved::Subpanel(index)) {
                all.push(self.transfer(open, &[transfer]));
            }
            let seen = self.plain(open, &sub.name, EquipmentKind::Subpanel, "subpanel");
            all.push(match sub.pair {
                Some(pair) => self.paired(open, pair, seen),
                None => seen,
            });
        }
        let conditions = open.drill.conditions();
        if site.solar.is_some() {
            let watts = conditions.solar.watts;
            let state = if watts > LEAST_W {
                Message::new("equipment-gives").quantity("watts", watts, Unit::Watts)
            } else {
                Message::new("equipment-waits")
            };
            let seen = self.source(("solar", EquipmentKind::Solar), &state);
            all.push(EquipmentView {
                active: watts > LEAST_W,
                ..seen
            });
        }
        if let Some(battery) = &site.battery {
            let now = &conditions.battery;
            let level = now.energy_wh / (1000.0 * battery.energy_kwh);
            let state = Message::new(match (now.shut, now.carries) {
                (true, _) => "equipment-battery-shut",
                (false, true) => "equipment-battery-carries",
                (false, false) => "equipment-battery-ready",
            });
            let state = state.quantity("charge", 100.0 * level, Unit::Percent);
            let seen = self.source(("battery", EquipmentKind::Battery), &state);
            all.push(EquipmentView {
                active: now.carries,
                level: as_f32(level),
                ..seen
            });
        }
        all
    }

    fn transfer(&self, open: &Open, transfers: &[&Transfer]) -> EquipmentView {
        let (site, positions) = (open.drill.site(), open.drill.positions());
        let sides: Vec<Side> = transfers
            .iter()
            .map(|t| side(site, positions, t.handle))
            .collect();
        let id = transfers.first().map_or(HANDLES, |t| equipment_of(t));
        let label = if id == HANDLES {
            self.words.say_id("place-transfer")
        } else {
            self.name(id)
        };
        let automatic = transfers.iter().any(|t| t.automatic);
        let count = |side| {
            let there = sides.iter().filter(|s| **s == side).count();
            Arg::Count(i64::try_from(there).unwrap_or(i64::MAX))
        };
        let state = match sides.as_slice() {
            [Side::Utility] => Message::new("side-utility"),
            [Side::Off] => Message::new("side-off"),
            [Side::Other] => Message::new("side-other"),
            _ => Message::new("side-counts")
                .with("utility", count(Side::Utility))
                .with("off", count(Side::Off))
                .with("other", count(Side::Other)),
        };
        let tagged = transfers.iter().any(|t| locked(site, positions, &t.name));
        let kind = if automatic {
            EquipmentKind::AutoTransfer
        } else {
            EquipmentKind::Transfer
        };
        EquipmentView {
            sides,
            active: automatic,
            tagged,
            place: "transfer".to_owned(),
            ..self.seen(id, label, kind, &state)
        }
    }

    fn plain(&self, open: &Open, id: &str, kind: EquipmentKind, place: &str) -> EquipmentView {
        let (site, positions) = (open.drill.site(), open.drill.positions());
        let is_main = kind == EquipmentKind::Panel;
        let tagged = is_main && locked(site, positions, "main");
        let main = site.position_name(positions, site.panel.main);
        let (label, state) = if is_main {
            let state = Message::new("equipment-main").name("position", main);
            (self.words.say_id("place-panel"), state)
        } else {
            (self.name(id), Message::new("place-subpanel-about"))
        };
        EquipmentView {
            tagged,
            place: place.to_owned(),
            ..self.seen(id, label, kind, &state)
        }
    }

    /// A chosen bus with what its pair brings to it; both breakers may be off.
    fn paired(&self, open: &Open, pair: Pair, seen: EquipmentView) -> EquipmentView {
        let (site, positions) = (open.drill.site(), open.drill.positions());
        let on = |breaker| site.stands(positions, breaker, "on");
        let (side, state) = match (on(pair.utility), on(pair.generator)) {
            (true, false) => (Side::Utility, "side-utility"),
            (false, true) => (Side::Other, "side-other"),
            (false, false) => (Side::Off, "side-off"),
            (true, true) => (Side::Other, "side-both"),
        };
        let state = Message::new(state);
        EquipmentView {
            sides: vec![side],
            place: seen.place.clone(),
            ..self.seen(&seen.id, seen.label, seen.kind, &state)
        }
    }

    fn source(&self, (id, kind): (&str, EquipmentKind), state: &Message) -> EquipmentView {
        EquipmentView {
            place: "solar".to_owned(),
            ..self.seen(id, self.name(id), kind, state)
        }
    }

    fn seen(&self, id: &str, label: String, kind: EquipmentKind, state: &Message) -> EquipmentView {
        let word = self.words.say(state);
        let sentence = Message::new("street-thing")
            .with("name", Arg::Verbatim(label.clone()))
            .with("state", Arg::Verbatim(word.clone()));
        EquipmentView {
            id: id.to_owned(),
            label,
            kind,
            sentence: self.words.say(&sentence),
            word,
            ..EquipmentView::default()
        }
    }
}

/// The side that a transfer switch's handle is on.
pub(super) fn side(site: &Site, positions: &Positions, handle: ControlId) -> Side {
    match site.position_name(positions, handle) {
        "utility" => Side::Utility,
        "off" => Side::Off,
        _ => Side::Other,
    }
}

/// Whether a lock hangs on the handle of this name.
pub(super) fn locked(site: &Site, positions: &Positions, handle: &str) -> bool {
    let lock = site.control_id(&format!("{handle}-lock"));
    lock.is_some_and(|lock| site.stands(positions, lock, "fitted"))
}

#[expect(clippy::cast_possible_truncation, reason = "for drawing only")]
fn as_f32(value: f64) -> f32 {
    value as f32
}
