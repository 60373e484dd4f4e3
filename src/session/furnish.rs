//! What things are drawn as and where they stand, by what their names and their work say.
//!
//! A name is in the site's own language of ids (`kitchen-lights`, `well-pump`); a thing whose name says nothing is told by its work.
//! It holds no rule: a wrong guess here makes a wrong picture and nothing else.
//! It does not cover the words for rooms: nothing says them yet.

use crate::apparatus::generator::GeneratorKind;
use crate::site::{Appliance, Cord, FarEnd, Plug, PositionId, Positions, Site, Spot, Work};

use super::view::{ApplianceKind, Building, GeneratorForm, Jacket, OutletView, Room, StandView};

/// Words of names and what is drawn for them; the first that fits is taken.
const KINDS: [(&str, ApplianceKind); 49] = [
    ("light", ApplianceKind::Lamp),
    ("lamp", ApplianceKind::Lamp),
    ("fridge", ApplianceKind::Fridge),
    ("refrigerator", ApplianceKind::Fridge),
    ("freezer", ApplianceKind::Freezer),
    ("microwave", ApplianceKind::Microwave),
    ("kettle", ApplianceKind::Countertop),
    ("toaster", ApplianceKind::Countertop),
    ("coffee", ApplianceKind::Countertop),
    ("urn", ApplianceKind::Countertop),
    ("hot-plate", ApplianceKind::Countertop),
    ("range", ApplianceKind::Range),
    ("oven", ApplianceKind::Range),
    ("stove", ApplianceKind::Range),
    ("furnace", ApplianceKind::Furnace),
    ("blower", ApplianceKind::Furnace),
    ("boiler", ApplianceKind::Furnace),
    ("water-heater", ApplianceKind::WaterHeater),
    ("heat-pump", ApplianceKind::AirConditioner),
    ("air-conditioner", ApplianceKind::AirConditioner),
    ("heater", ApplianceKind::Heater),
    ("dishwasher", ApplianceKind::Range),
    ("washer", ApplianceKind::Drum),
    ("dryer", ApplianceKind::Drum),
    ("sump", ApplianceKind::Sump),
    ("well", ApplianceKind::Well),
    ("fan", ApplianceKind::Fan),
    ("television", ApplianceKind::Television),
    ("screen", ApplianceKind::Television),
    ("computer", ApplianceKind::Computer),
    ("router", ApplianceKind::Computer),
    ("modem", ApplianceKind::Computer),
    ("radio", ApplianceKind::Device),
    ("oxygen", ApplianceKind::Medical),
    ("breathing", ApplianceKind::Medical),
    ("medical", ApplianceKind::Medical),
    ("medicine", ApplianceKind::Medical),
    ("nebulizer", ApplianceKind::Medical),
    ("charger", ApplianceKind::Charger),
    ("opener", ApplianceKind::Machine),
    ("compressor", ApplianceKind::Machine),
    ("dehumidifier", ApplianceKind::Machine),
    ("pump", ApplianceKind::Machine),
    ("saw", ApplianceKind::Machine),
    ("grinder", ApplianceKind::Machine),
    ("drill", ApplianceKind::Machine),
    ("tool", ApplianceKind::Machine),
    ("iron", ApplianceKind::Countertop),
    ("hair", ApplianceKind::Countertop),
];

/// Words of names and the rooms they speak of.
const ROOMS: [(&str, Room); 21] = [
    ("kitchen", Room::Kitchen),
    ("bedroom", Room::Bedroom),
    ("nursery", Room::Bedroom),
    ("upstairs", Room::Bedroom),
    ("bath", Room::Bathroom),
    ("basement", Room::Basement),
    ("cellar", Room::Basement),
    ("laundry", Room::Basement),
    ("utility", Room::Basement),
    ("garage", Room::Garage),
    ("workshop", Room::Garage),
    ("living", Room::Living),
    ("family", Room::Living),
    ("hall", Room::Living),
    ("office", Room::Living),
    ("porch", Room::Outside),
    ("outdoor", Room::Outside),
    ("outside", Room::Outside),
    ("yard", Room::Outside),
    ("deck", Room::Outside),
    ("driveway", Room::Outside),
];

/// Words of the names of cords and the jackets they speak of.
const JACKETS: [(&str, Jacket); 8] = [
    ("yellow", Jacket::Yellow),
    ("orange", Jacket::Orange),
    ("red", Jacket::Red),
    ("blue", Jacket::Blue),
    ("green", Jacket::Green),
    ("brown", Jacket::Brown),
    ("gray", Jacket::Gray),
    ("white", Jacket::White),
];

/// The color of a cord's jacket.
pub(super) fn jacket_of(cord: &str) -> Jacket {
    found(&JACKETS, cord).unwrap_or_default()
}

/// What an appliance is drawn as.
pub(super) fn kind_of(appliance: &Appliance) -> ApplianceKind {
    found(&KINDS, &appliance.name).unwrap_or(match appliance.work {
        Work::Motor(_) => ApplianceKind::Machine,
        Work::Resistive { .. } => ApplianceKind::Heater,
        Work::Electronic { .. } => ApplianceKind::Device,
    })
}

/// The room an appliance stands in.
pub(super) fn room_of(appliance: &Appliance) -> Room {
    found(&ROOMS, &appliance.name).unwrap_or(match kind_of(appliance) {
        ApplianceKind::Fridge
        | ApplianceKind::Microwave
        | ApplianceKind::Countertop
        | ApplianceKind::Range => Room::Kitchen,
        ApplianceKind::Furnace
        | ApplianceKind::WaterHeater
        | ApplianceKind::Drum
        | ApplianceKind::Sump => Room::Basement,
        ApplianceKind::Freezer | ApplianceKind::Machine | ApplianceKind::Charger => Room::Garage,
        ApplianceKind::Well | ApplianceKind::AirConditioner => Room::Outside,
        ApplianceKind::Medical => Room::Bedroom,
        ApplianceKind::Lamp
        | ApplianceKind::Heater
        | ApplianceKind::Fan
        | ApplianceKind::Television
        | ApplianceKind::Computer
        | ApplianceKind::Device => Room::Living,
    })
}

/// The ends of all branch circuits.
pub(super) fn outlets(site: &Site) -> Vec<OutletView> {
    let circuits = site.circuits.iter().enumerate();
    circuits
        .map(|(index, circuit)| {
            let there = site.appliances.iter().filter(|a| a.circuit == index);
            let room = found(&ROOMS, &circuit.name)
                .or_else(|| there.clone().next().map(room_of))
                .unwrap_or_else(|| room_of_kind(&circuit.name));
            OutletView {
                id: format!("outlet-{}", circuit.name),
                room,
                appliances: there.map(|a| a.name.clone()).collect(),
            }
        })
        .collect()
}

/// What the generator is drawn as.
pub(super) fn form_of(site: &Site) -> GeneratorForm {
    match site.generator.spec.kind {
        GeneratorKind::Conventional(_) => GeneratorForm::Portable,
        GeneratorKind::Inverter(_) => GeneratorForm::Inverter,
        GeneratorKind::Standby(_) => GeneratorForm::Standby,
    }
}

/// Words of circuits that only a hall has.
const OF_HALLS: [(&str, Building); 2] = [("stage", Building::Hall), ("pew", Building::Hall)];

/// What kind of building it is, by its circuits.
pub(super) fn building_of(site: &Site) -> Building {
    let mut circuits = site.circuits.iter();
    circuits
        .find_map(|circuit| found(&OF_HALLS, &circuit.name))
        .unwrap_or_default()
}

/// Places where the generator can stand.
pub(super) fn stands(site: &Site) -> Vec<StandView> {
    let places = site.generator.places.iter();
    places
        .map(|place| StandView {
            id: place.name.clone(),
            opening_ft: as_f32(place.opening_ft),
            store: !place.usable,
            room: if place.opening_ft > 0.0 {
                Room::Outside
            } else {
                found(&ROOMS, &place.name).unwrap_or(Room::Garage)
            },
        })
        .collect()
}

/// What both ends of a cord are at: an outlet on the generator, an inlet, an outlet, an appliance, another cord; empty where one lies loose.
pub(super) fn cord_ends(site: &Site, positions: &Positions, cord: &Cord) -> (String, String) {
    let outlet = |circuit: usize| match site.circuits.get(circuit) {
        Some(circuit) => format!("outlet-{}", circuit.name),
        None => String::new(),
    };
    let near = match cord.near_spot(positions) {
        Spot::Stowed => String::new(),
        Spot::Receptacle(_) => "generator".to_owned(),
        Spot::CordEnd(other) => site.cords.get(other).map_or("", |c| &c.name).to_owned(),
        Spot::Outlet(circuit) => outlet(circuit),
        Spot::Inlet(inlet) => site.inlets.get(inlet).map_or("", |i| &i.name).to_owned(),
        Spot::Lent => site.lent.as_ref().map_or("", |l| &l.name).to_owned(),
    };
    let far = match cord.far {
        FarEnd::Inlet(end) | FarEnd::Strip(end) if positions.get(end) != PositionId(0) => {
            site.position_name(positions, end).to_owned()
        }
        FarEnd::Blades(end, circuit) if positions.get(end) != PositionId(0) => outlet(circuit),
        FarEnd::Inlet(_) | FarEnd::Blades(..) => String::new(),
        FarEnd::Connector | FarEnd::Strip(_) => {
            let index = site.cords.iter().position(|c| c.name == cord.name);
            let end = index.map_or(Spot::Stowed, Spot::CordEnd);
            user(site, positions, end).unwrap_or_default()
        }
    };
    (near, far)
}

/// What is plugged into the cord that a neighbor lends; empty where nothing is.
pub(super) fn lent_user(site: &Site, positions: &Positions) -> String {
    let strip = site.cords.iter().find(|c| match c.far {
        FarEnd::Strip(end) => positions.get(end) != PositionId(0),
        FarEnd::Inlet(_) | FarEnd::Blades(..) | FarEnd::Connector => false,
    });
    let other = || user(site, positions, Spot::Lent);
    strip
        .map(|c| c.name.clone())
        .or_else(other)
        .unwrap_or_default()
}

/// What is plugged into a cord's connector: an appliance, or the next cord.
fn user(site: &Site, positions: &Positions, connector: Spot) -> Option<String> {
    let next = site
        .cords
        .iter()
        .find(|c| c.near_spot(positions) == connector);
    let here = |a: &&Appliance| match &a.plug {
        Plug::Wired => false,
        Plug::Cord {
            control,
            cords,
            lent,
            ..
        } => {
            let at = positions.get(*control);
            let ends = cords.iter().map(|(c, p)| (Spot::CordEnd(*c), *p));
            let mut ends = ends.chain(lent.map(|p| (Spot::Lent, p)));
            ends.any(|end| end == (connector, at))
        }
    };
    let appliance = site.appliances.iter().find(here);
    next.map(|c| c.name.clone())
        .or_else(|| appliance.map(|a| a.name.clone()))
}

/// The room of a circuit that nothing is connected to, by the kind of thing its name speaks of.
fn room_of_kind(name: &str) -> Room {
    match found(&KINDS, name) {
        Some(ApplianceKind::Drum | ApplianceKind::Furnace | ApplianceKind::WaterHeater) => {
            Room::Basement
        }
        Some(ApplianceKind::Range | ApplianceKind::Microwave | ApplianceKind::Fridge) => {
            Room::Kitchen
        }
        Some(ApplianceKind::AirConditioner | ApplianceKind::Well) => Room::Outside,
        _ => Room::Living,
    }
}

fn found<T: Copy>(table: &[(&str, T)], name: &str) -> Option<T> {
    let words: Vec<&str> = name.split('-').collect();
    let fits = |word: &str| {
        if word.contains('-') {
            name.contains(word)
        } else {
            words
                .iter()
                .any(|w| *w == word || w.strip_suffix('s') == Some(word) || w.starts_with(word))
        }
    };
    table
        .iter()
        .find(|(word, _)| fits(word))
        .map(|(_, found)| *found)
}

#[expect(clippy::cast_possible_truncation, reason = "for drawing only")]
fn as_f32(value: f64) -> f32 {
    value as f32
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_is_known_by_its_words_and_not_by_parts_of_them() {
        assert_eq!(found(&KINDS, "chest-freezer"), Some(ApplianceKind::Freezer));
        assert_eq!(
            found(&KINDS, "water-heater"),
            Some(ApplianceKind::WaterHeater)
        );
        assert_eq!(found(&KINDS, "space-heater"), Some(ApplianceKind::Heater));
        assert_eq!(found(&KINDS, "stairs"), None);
        assert_eq!(found(&ROOMS, "bathroom-lights"), Some(Room::Bathroom));
    }
}
