//! What ground-fault devices do in a drill, when a breaker that has tripped may be reset, and what a lost neutral or leg does to electronics.
//!
//! A device opens when what goes out doesn't come back, or when its test signal finds the neutral behind it grounded; both come from the circuit, whoever or whatever is the cause.
//! It opens within 25 ms, which is less than the drill counts apart from what follows at once.
//! A bimetal stays hot after its trip; the handle latches when it has cooled.
//! Electronics are under stress while they are on; those that wait in standby are taken as off.
//! Motors see the frequency of the generator where it alone feeds them, by its droop and without the dip of a start.
//! Not covered: devices that fail, and reset buttons that don't hold without power.

use crate::apparatus::gfci;
use crate::apparatus::gfci::Gfci;
use crate::apparatus::motor_start::Supply;
use crate::apparatus::waveform::NOMINAL_HZ;
use crate::site::{ApplianceReading, ControlId, Kind, PositionId, Readings, Site, Work};

use super::conditions::{ApplianceCondition, Phase};
use super::engine::Drill;
use super::event::Event;

/// Where what is missing at a ground-fault device went.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Astray {
    /// The neutral behind it is joined to ground, and so is the one ahead of it: no fault, but two bonds.
    TwoBonds,
    /// Out of a hot, by worn insulation or a body.
    Fault,
}

/// One thing that protection does by itself.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ProtectionEvent {
    /// A ground-fault device opens.
    GroundFault {
        /// Which.
        control: ControlId,
        /// Amps that went another way.
        residual_a: f64,
        /// Where they go.
        astray: Astray,
    },
    /// The neutral of the house's drop comes loose.
    NeutralLost,
    /// One hot of the house's drop comes loose.
    LegLost,
    /// The drop is whole again.
    DropMended,
    /// Electronics are destroyed by high volts.
    Damaged {
        /// Index of the appliance.
        appliance: usize,
        /// Volts across it.
        volts: f64,
    },
}

impl Drill {
    /// Opens the first ground-fault device that sees something go astray; says whether one did.
    pub(super) fn open_ground_fault(&mut self, site: &Site) -> bool {
        let devices = (0..).map(ControlId).zip(&site.controls);
        let mut devices = devices.filter(|(_, c)| c.kind == Kind::Gfci);
        let Some((control, residual_a, astray)) =
            devices.find_map(|(id, _)| self.goes_astray(id).map(|(a, how)| (id, a, how)))
        else {
            return false;
        };
        self.ground_fault_opens(control, residual_a, astray);
        true
    }

    /// A ground-fault device opens.
    pub(super) fn ground_fault_opens(
        &mut self,
        control: ControlId,
        residual_a: f64,
        astray: Astray,
    ) {
        const TRIPPED: PositionId = PositionId(0);
        self.positions.set(control, TRIPPED);
        self.happen(Event::Protection(ProtectionEvent::GroundFault {
            control,
            residual_a,
            astray,
        }));
    }

    /// Residual amps at a device that is set and opens, and where they go.
    fn goes_astray(&self, device: ControlId) -> Option<(f64, Astray)> {
        const SET: PositionId = PositionId(1);
        if self.positions.get(device) != SET {
            return None;
        }
        let (residual_a, loop_ohm) = self.readings().ground_fault(device);
        let grounded = loop_ohm.is_some_and(gfci::sees_grounded_neutral);
        let opens = Gfci::USUAL.seconds_to_trip(residual_a).is_some();
        let astray = if grounded {
            Astray::TwoBonds
        } else {
            Astray::Fault
        };
        (grounded || opens).then_some((residual_a, astray))
    }

    /// A fuse that is put in is a new one, and cold.
    pub(super) fn renew_fuse(&mut self, control: ControlId, position: PositionId) {
        const IN: PositionId = PositionId(1);
        let site = self.site();
        let fuse = site
            .control(control)
            .is_some_and(|c| c.plate.fuse.is_some());
        let heat = self.conditions.breaker_heat.get_mut(usize::from(control.0));
        if let Some(heat) = heat.filter(|_| fuse && position == IN) {
            *heat = 0.0;
        }
    }

    /// Tells of electronics that have just been destroyed.
    pub(super) fn fire_damage(&mut self) {
        let mut destroyed = Vec::new();
        for (index, condition) in self.conditions.appliances.iter_mut().enumerate() {
            if condition.damage >= 1.0 - 1e-9 && !condition.damaged {
                condition.damaged = true;
                destroyed.push(index);
            }
        }
        for appliance in destroyed {
            let volts = self.readings().appliance(appliance).volts;
            self.happen(Event::Protection(ProtectionEvent::Damaged {
                appliance,
                volts,
            }));
        }
    }

    /// Whether a tripped breaker is still too hot for its handle to latch.
    pub(super) fn too_hot_to_latch(&self, control: ControlId) -> bool {
        let site = self.site();
        let mut breakers = site.guards();
        let breaker = breakers.find(|(id, ..)| *id == control);
        let heat = self.conditions().heat_of(control);
        breaker.is_some_and(|(_, _, breaker)| !breaker.closes(heat))
    }
}

/// Volts on electronics that are on, of rated; `None` for anything else.
pub(super) fn stress_pu(
    work: &Work,
    condition: &ApplianceCondition,
    reading: &ApplianceReading,
) -> Option<f64> {
    let on = matches!(work, Work::Electronic { .. }) && condition.phase == Phase::Running;
    (on && !condition.damaged).then_some(reading.pu)
}

/// Amps below which nothing goes through an appliance.
const NONE_A: f64 = 0.001;
/// Share of its volts below which an appliance that no source reaches by wires, and that carries nothing, is dead.
const SHIFTED_PU: f64 = 0.5;

/// Volts and frequency at an appliance, of rated.
///
/// No volts where no source reaches it by wires, nothing goes through it and a loose neutral has shifted by less than half: a hot that is switched off drives nothing.
/// What is fed through another load carries current, and counts.
pub(super) fn supply(readings: &Readings, index: usize) -> Supply {
    let reading = readings.appliance(index);
    let set = readings.generator;
    let alone = reading.fed.generator && !set.tied;
    let f_pu = if alone { set.hz / NOMINAL_HZ } else { 1.0 };
    let shifted = !reading.fed.any() && reading.amps < NONE_A && reading.pu < SHIFTED_PU;
    Supply {
        v_pu: if shifted { 0.0 } else { reading.pu },
        f_pu,
    }
}
