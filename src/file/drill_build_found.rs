//! How a drill finds the site that was built: its weather, what it guards, and circuits whose wires were swapped.
//!
//! Wet ground halves the resistance of electrodes and of a lineworker's footing: an assumption within what soils do (moist to wet earth differ by more than that in published tables of resistivity, from memory).
//! Swapped wires change places with all that hangs on them; breakers, their names and their places stay, so that the panel's directory is wrong.
//! Not covered: ground that dries, wind that turns, a circuit that is swapped with one of another voltage.

use crate::site::{Circuit, Demand, FarEnd, Legs, Site};
use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source};
use super::drill_build::unknown;
use super::drill_file::DrillFile;
use super::drill_vary::GroundFile;
use super::site_build_portable::gas;

/// Share of its resistance that an electrode keeps in wet ground: assumption.
const WET_SHARE: f64 = 0.5;
/// Temperatures outdoors that a drill may have, °C: where the models of cords and engines are meant to hold.
const OUTDOORS_C: std::ops::RangeInclusive<f64> = -30.0..=50.0;

/// Brings a site to where a drill finds it.
pub(super) fn find_site(
    source: &Source<'_>,
    file: &DrillFile,
    site: &mut Site,
    faults: &mut Vec<Diagnostic>,
) {
    weather(source, file, site, faults);
    levels(source, file, site, faults);
    for (one, other) in &file.swapped {
        let names: Vec<&str> = site.circuits.iter().map(|c| c.name.as_str()).collect();
        let mut index = |name: &str| {
            let found = names.iter().position(|n| *n == name);
            if found.is_none() {
                faults.push(unknown(source, &["swapped"], name, "circuit", &names));
            }
            found
        };
        let (Some(a), Some(b)) = (index(one), index(other)) else {
            continue;
        };
        if !swap(site, a.min(b), a.max(b)) {
            let message = Message::new("error-swapped")
                .with("one", Arg::Verbatim(one.clone()))
                .with("other", Arg::Verbatim(other.clone()));
            faults.push(source.at(&["swapped", &format!("\"{one}\"")], message));
        }
    }
}

fn weather(source: &Source<'_>, file: &DrillFile, site: &mut Site, faults: &mut Vec<Diagnostic>) {
    let weather = &file.weather;
    if let Some(celsius) = weather.outdoor_celsius {
        if !OUTDOORS_C.contains(&celsius) {
            faults.push(out_of_range(source, "outdoor_celsius", celsius));
        }
        site.ambient_c = celsius;
    }
    if weather.ground == GroundFile::Wet {
        let line = &mut site.line;
        let electrodes = line.poles.iter_mut().map(|p| &mut p.electrode_ohm);
        let neighbors = site
            .neighbors
            .iter_mut()
            .map(|n| &mut n.service.electrode_ohm);
        let frame = site.generator.frame_earth_ohm.as_mut();
        for ohm in electrodes
            .chain(neighbors)
            .chain(frame)
            .chain([&mut line.footing_ohm, &mut site.service.electrode_ohm])
        {
            *ohm *= WET_SHARE;
        }
    }
    if let Some(share) = weather.sun_share {
        if !(0.0..=1.0).contains(&share) {
            faults.push(out_of_range(source, "sun_share", share));
        }
        if let Some(solar) = site.solar.as_mut() {
            solar.watts *= share;
        }
    }
    for name in &weather.cords_in_sun {
        if let Some(cord) = site.cords.iter_mut().find(|c| c.name == *name) {
            cord.found.in_sun = true;
        } else {
            let known: Vec<&str> = site.cords.iter().map(|c| c.name.as_str()).collect();
            faults.push(unknown(source, &["cords_in_sun"], name, "cord", &known));
        }
    }
    for (name, (shut, open)) in &weather.wind {
        let places = &mut site.generator.places;
        if let Some(place) = places.iter_mut().find(|p| p.name == *name) {
            place.exposure = (gas(*shut), gas(*open));
        } else {
            let known: Vec<&str> = places.iter().map(|p| p.name.as_str()).collect();
            faults.push(unknown(source, &["wind"], name, "position", &known));
        }
    }
}

fn levels(source: &Source<'_>, file: &DrillFile, site: &mut Site, faults: &mut Vec<Diagnostic>) {
    let stores = |site: &Site| -> Vec<String> {
        let stores = site
            .appliances
            .iter()
            .filter(|a| matches!(a.demand, Demand::Reservoir(_)));
        stores.map(|a| a.name.clone()).collect()
    };
    for (name, level) in &file.levels {
        if !(0.0..1.0).contains(level) {
            faults.push(out_of_range(source, name, *level));
        }
        let mut own = site.appliances.iter_mut().filter(|a| a.name == *name);
        match own.next().map(|a| &mut a.demand) {
            Some(Demand::Reservoir(store)) => store.start = *level,
            Some(Demand::Switch(_)) | None => {
                let known = stores(site);
                let known: Vec<&str> = known.iter().map(String::as_str).collect();
                faults.push(unknown(source, &["levels"], name, "appliance", &known));
            }
        }
    }
}

/// The fault of a number outside what it may be.
pub(super) fn out_of_range(source: &Source<'_>, field: &str, value: f64) -> Diagnostic {
    let message = Message::new("error-out-of-range")
        .with("field", Arg::Verbatim(field.to_owned()))
        .with("value", Arg::Verbatim(value.to_string()));
    source.at(&[field], message)
}

/// Swaps the wires of two circuits of one panel and one voltage, `a` before `b`; says whether that could be done.
fn swap(site: &mut Site, a: usize, b: usize) -> bool {
    let Some((front, back)) = site.circuits.split_at_mut_checked(b) else {
        return false;
    };
    let (Some(one), Some(other)) = (front.get_mut(a), back.first_mut()) else {
        return false;
    };
    if one.bus != other.bus || (one.legs == Legs::Both) != (other.legs == Legs::Both) {
        return false;
    }
    swap_wires(one, other);
    let swapped = |index: usize| match index {
        i if i == a => b,
        i if i == b => a,
        i => i,
    };
    for appliance in &mut site.appliances {
        appliance.circuit = swapped(appliance.circuit);
    }
    for cord in &mut site.cords {
        if let FarEnd::Blades(_, outlet) = &mut cord.far {
            *outlet = swapped(*outlet);
        }
    }
    true
}

/// What goes with the wire and not with the breaker.
fn swap_wires(one: &mut Circuit, other: &mut Circuit) {
    std::mem::swap(&mut one.awg, &mut other.awg);
    std::mem::swap(&mut one.length_ft, &mut other.length_ft);
    std::mem::swap(&mut one.heat, &mut other.heat);
    std::mem::swap(&mut one.gfci, &mut other.gfci);
}
