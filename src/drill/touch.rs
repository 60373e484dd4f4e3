//! Hands on metal: what somebody feels who plugs, switches, starts or fills a thing whose frame is live.
//!
//! Whoever handles a thing has a hand on its frame just before the change and just after it; the worse of the two is felt.
//! The current lasts until a ground-fault device opens, or until the hand lets go; a breaker sees too little of it to trip.
//! Covers appliances with worn insulation or without a ground, and the generator's frame; not bare contacts, which are a finding before anyone touches them.

use crate::apparatus::gfci::Gfci;
use crate::hazard::let_go::contact_s;
use crate::site::{ControlId, Demand, FEET_OHM, Felt, Plug, PositionId, Site, Spot};

use super::action::Action;
use super::engine::Drill;
use super::event::Event;
use super::protection::Astray;

/// Metal that a hand is on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Metal {
    /// The generator's frame.
    Generator,
    /// The case of an appliance, by index.
    Appliance(usize),
    /// The connector of a cord that can lie in a puddle, by index.
    Joint(usize),
}

/// A touch that is felt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Touched {
    /// What the hand is on.
    pub metal: Metal,
    /// Volts across the body.
    pub volts: f64,
    /// Amps through it.
    pub amps: f64,
    /// Seconds until it is cleared or let go.
    pub seconds: f64,
    /// The ground-fault device that opens.
    pub cleared_by: Option<ControlId>,
}

impl Metal {
    /// Its name as a point of the site.
    pub fn point(self, site: &Site) -> String {
        match self {
            Self::Generator => "generator-frame".to_owned(),
            Self::Appliance(index) => {
                let name = site.appliances.get(index).map_or("", |a| a.name.as_str());
                format!("{name}-frame")
            }
            Self::Joint(index) => {
                let name = site.cords.get(index).map_or("", |c| c.name.as_str());
                format!("{name}-joint")
            }
        }
    }

    /// What an action puts a hand on, if it is metal that can be live.
    pub(super) fn handled(site: &Site, action: &Action) -> Option<Self> {
        match action {
            Action::Refuel => Some(Self::Generator),
            Action::Set(control, _) => Self::behind(site, *control),
            Action::Look(_)
            | Action::Test(_)
            | Action::Call(_)
            | Action::Tell(_)
            | Action::Say(..)
            | Action::Wait(_)
            | Action::Happen(_) => None,
        }
    }

    /// The thing that one holds to operate this control.
    fn behind(site: &Site, control: ControlId) -> Option<Self> {
        let generator = &site.generator;
        let of_outlet =
            |r: &crate::site::Receptacle| r.breaker == Some(control) || r.gfci == Some(control);
        let of_cord = |c: &crate::site::Cord| {
            let reaches = c
                .near_spots
                .iter()
                .any(|s| matches!(s, Spot::Receptacle(_)));
            c.near == control && reaches
        };
        let at_generator = generator.engine == control
            || generator.output == control
            || generator.receptacles.iter().any(of_outlet)
            || site.cords.iter().any(of_cord);
        if at_generator {
            return Some(Self::Generator);
        }
        let lifted = |c: &crate::site::Cord| c.lay == control && c.can_be_wet();
        if let Some(index) = site.cords.iter().position(lifted) {
            return Some(Self::Joint(index));
        }
        let mut appliances = site.appliances.iter();
        let index = appliances.position(|a| {
            let by_plug = matches!(&a.plug, Plug::Cord { control: plug, .. } if *plug == control);
            by_plug || matches!(a.demand, Demand::Switch(switch) if switch == control)
        })?;
        Some(Self::Appliance(index))
    }
}

/// The least current that is told of, amps: curve a of IEC 60479-1.
const FELT_A: f64 = 0.0005;

/// Volts to earth below which no body can take that much: 575 ohms, three quarters of it, and its feet.
const FELT_V: f64 = FELT_A * (0.75 * 575.0 + FEET_OHM);

impl Drill {
    /// What a hand on this metal meets as things stand; nothing where it can't be live.
    pub(super) fn feel(&mut self, metal: Metal) -> Felt {
        let point = metal.point(self.site());
        let stands = self.readings().point(&point).volts_to_earth;
        if stands.is_none_or(|volts| volts < FELT_V) {
            return Felt::default();
        }
        self.touch_frame(&point).unwrap_or_default()
    }

    /// Tells of a touch that is felt, before or after the change, and opens the ground-fault device that clears it.
    pub(super) fn touch(&mut self, metal: Metal, before: Felt) {
        let after = self.feel(metal);
        let felt = if after.amps >= before.amps {
            after
        } else {
            before
        };
        if felt.amps < FELT_A {
            return;
        }
        let device = self.device_that_opens(&felt);
        let cleared_s = device.map(|(.., seconds)| seconds);
        let seconds = contact_s(felt.amps * 1000.0, cleared_s);
        self.happen(Event::Touched(Touched {
            metal,
            volts: felt.volts,
            amps: felt.amps,
            seconds,
            cleared_by: device.map(|(control, ..)| control),
        }));
        if let Some((control, residual_a, _)) = device {
            self.ground_fault_opens(control, residual_a, Astray::Fault);
            self.settle();
        }
    }

    /// The first ground-fault device to open on a touch, the amps it misses, and after how many seconds.
    fn device_that_opens(&self, felt: &Felt) -> Option<(ControlId, f64, f64)> {
        const SET: PositionId = PositionId(1);
        let devices = felt.residual_a.iter();
        let set = devices.filter(|(control, _)| self.positions.get(*control) == SET);
        let opens = set.filter_map(|(control, amps)| {
            Some((*control, *amps, Gfci::USUAL.seconds_to_trip(*amps)?))
        });
        opens.reduce(|first, next| if next.2 < first.2 { next } else { first })
    }
}
