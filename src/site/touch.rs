//! A hand on metal: the body as one more branch between a frame and earth, solved with everything else.
//!
//! The body's resistance follows its touch voltage (IEC 60479-1, half of people), by iteration; its feet stand on damp ground or concrete.
//! Ground-fault devices see what the body takes; what clears it, and when, is for the drill to say.
//! Not covered: a hand on a frame and the other on grounded metal, gloves, dry floors of wood.

use crate::hazard::body::{Path, Percentile, path_ohm};
use crate::units::Complex;

use super::control::ControlId;
use super::plant::{Plant, residual_a};
use super::wiring_sources::BOTH_V;

/// From the soles of both feet to remote earth, ohms: 1.5 times soil of 100 ohm-meters (IEEE Std 80).
pub const FEET_OHM: f64 = 150.0;

/// Passes that settle a body's resistance on its touch voltage.
const PASSES: usize = 6;

/// From the hand on the metal to the feet.
const PATH: Path = Path::LeftHandToFeet;

/// What a hand on metal meets.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Felt {
    /// Volts across the body.
    pub volts: f64,
    /// Amps through it.
    pub amps: f64,
    /// What each ground-fault device misses while the hand is there, amps.
    pub residual_a: Vec<(ControlId, f64)>,
}

impl Plant {
    /// What a hand on this frame meets in the positions of the last read; `None` for a frame that isn't there.
    pub fn touch_frame(&mut self, frame: &str) -> Option<Felt> {
        let at = self.wiring.frames.iter().find(|f| f.name == frame)?.body;
        self.solver.set_shunt(at, true);
        let mut ohm = path_ohm(BOTH_V / 2.0, Percentile::P50, PATH);
        let mut felt = Felt::default();
        for _ in 0..PASSES {
            let whole = Complex::new(ohm + FEET_OHM, 0.0);
            self.solver.set_shunt_impedance(at, whole);
            felt.amps = self.solver.solve().amps(at);
            felt.volts = felt.amps * ohm;
            ohm = path_ohm(felt.volts, Percentile::P50, PATH);
        }
        let solution = self.solver.solve();
        let devices = self.wiring.gfcis.iter();
        felt.residual_a = devices
            .map(|g| (g.control, residual_a(solution, g)))
            .collect();
        self.solver.set_shunt(at, false);
        Some(felt)
    }
}
