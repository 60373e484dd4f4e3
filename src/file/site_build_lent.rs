//! The cord that a neighbor lends, as a site file has it, and what any cord is made of.
//!
//! Where one is lent, no other cord reaches the house's wiring: a neighbor's set that meets the utility isn't modeled.

use crate::apparatus::cord::{self, Loaded};
use crate::apparatus::cord_letters::CordType;
use crate::apparatus::generator::GeneratorSpec;
use crate::site::{Appliance, ControlId, Cord, FarEnd, Lent, Plug, Spot};
use crate::words::{Arg, Message};

use super::site_build::Build;
use super::site_file::SiteFile;

impl Build<'_> {
    /// The cord that is lent; its end takes one plug.
    pub(super) fn lent(
        &mut self,
        file: &SiteFile,
        cords: &[Cord],
        appliances: &[Appliance],
    ) -> Option<Lent> {
        let lent = file.neighbor_cord.as_ref()?;
        let own = ["neighbor_cord", "("];
        for (field, value) in [
            ("rated_watts", lent.rated_watts),
            ("surge_watts", lent.surge_watts),
        ] {
            self.positive(&[own[0], own[1], field], value);
        }
        let house = cords.iter().filter(|c| !c.far.takes_plugs());
        let house: Vec<&str> = house.map(|c| c.name.as_str()).collect();
        if !house.is_empty() {
            let quoted = format!("\"{}\"", lent.name);
            let message = Message::new("error-lent-house")
                .with("cords", Arg::Verbatim(house.join(", ")))
                .with("lent", Arg::Verbatim(lent.name.clone()));
            self.fault(&["neighbor_cord", &quoted], message);
        }
        let make = self.make(own, &lent.letters, &lent.gauge, lent.length_ft)?;
        let mut plugs: Vec<(ControlId, u8)> = cords.iter().flat_map(plugs_into_lent).collect();
        plugs.extend(appliances.iter().filter_map(|a| match a.plug {
            Plug::Cord { control, lent, .. } => lent.map(|at| (control, at.0)),
            Plug::Wired => None,
        }));
        for (index, one) in plugs.iter().enumerate() {
            for other in plugs.iter().skip(index + 1).filter(|o| o.0 != one.0) {
                self.furnishing
                    .not_both(*one, *other, "refused-outlet-taken");
            }
        }
        Some(Lent {
            name: lent.name.clone(),
            spec: GeneratorSpec::inverter(lent.rated_watts, lent.surge_watts),
            make,
        })
    }

    /// What a cord is made of, with a fault for what there is no cord of.
    pub(super) fn make(
        &mut self,
        own: [&str; 2],
        letters: &str,
        gauge: &str,
        length_ft: f64,
    ) -> Option<cord::Cord> {
        let awg = self.gauge(&[own[0], own[1], "gauge", &format!("\"{gauge}\"")], gauge);
        let length_ft = self.positive(&[own[0], own[1], "length_ft"], length_ft);
        let Ok(kind) = letters.parse::<CordType>() else {
            let message =
                Message::new("error-cord-letters").with("value", Arg::Verbatim(letters.to_owned()));
            self.fault(&[own[0], own[1], letters], message);
            return None;
        };
        let make = cord::Cord::new(kind, awg, length_ft, Loaded::Two);
        if make.is_none() {
            let message =
                Message::new("error-gauge").with("value", Arg::Verbatim(gauge.to_owned()));
            self.fault(&[own[0], own[1], "gauge"], message);
        }
        make
    }
}

/// The plugs of a cord that go into the end that is lent, with their positions there.
fn plugs_into_lent(cord: &Cord) -> Vec<(ControlId, u8)> {
    let near = (0_u8..).zip(&cord.near_spots);
    let near = near.filter(|(_, spot)| **spot == Spot::Lent);
    let mut plugs: Vec<_> = near.map(|(at, _)| (cord.near, at)).collect();
    if let FarEnd::Strip(end) = cord.far {
        plugs.push((end, 1));
    }
    plugs
}
