//! Copper and aluminum branch wiring in a wall: how hot it gets under the breaker it has.
//!
//! The thermal balance of `conductor_heat`, calibrated on the 90 °C column of NEC 310.16, which no breaker rule has rounded down; the 75 °C column then comes out within its rounding.
//! The 60 °C figures of 14 and 12 AWG lie below ours: they are those of the small-conductor rule, not of heat.
//! Limits: 60 °C where the cable or its terminals ask for that column (NM cable, NEC 334.80, from memory), 90 °C of the insulation.
//! Not covered: several cables through one hole (see `ampacity::company_factor`), splices and terminals, which are often hotter.
//! Accuracy: settled temperatures ± 5 K at the tabled amps; in thermal insulation an assumption; times ± 50 %.

use super::ampacity::Column;
use super::ampacity::TABLE_AMBIENT_C;
use super::ampacity::allowable_a;
use super::conductor::Awg;
use super::conductor::Material;
use super::conductor::Strand;
use super::conductor_heat::Around;
use super::conductor_heat::ConductorHeat;
use super::conductor_heat::Tabled;

/// Temperature up to which NM cable may be loaded, °C; NEC 334.80, from memory.
pub const LOADED_C: f64 = 60.0;
/// Temperature that its insulation stands, °C; NEC 334.112, from memory.
pub const INSULATION_C: f64 = 90.0;

/// Where a branch wire runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Run {
    /// In a hollow wall, a raceway or along a surface, as the table means it.
    Hollow,
    /// In thermal insulation all around, for a foot and a half or more.
    /// Assumption: half the amps, so four times the thermal resistance; IEC 60364-5-52 gives that factor, from memory.
    Insulated,
}

/// A wire of a branch circuit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BranchWire {
    heat: ConductorHeat,
    run: Run,
}

impl BranchWire {
    /// A wire of this size and metal; `None` for sizes that the table doesn't print.
    /// Assumption: insulation, jacket and the equipment ground store five times what the metal does (from typical dimensions, ± 50 %).
    pub fn new(awg: Awg, material: Material, run: Run) -> Option<Self> {
        let tabled = Tabled {
            amps: allowable_a(awg, material, Column::C90)?,
            rated_c: Column::C90.celsius(),
            ambient_c: TABLE_AMBIENT_C,
        };
        let strand = if awg.number() >= 10 {
            Strand::Solid
        } else {
            Strand::Stranded
        };
        Some(Self {
            heat: ConductorHeat::new(tabled, awg, material, strand, 6.0),
            run,
        })
    }

    /// Temperature that steady `amps` settle at, °C; infinite if they run away.
    pub fn settle_c(&self, amps: f64, ambient_c: f64) -> f64 {
        self.heat.settle_c(amps, self.around(ambient_c))
    }

    /// Temperature in °C after `seconds` at `amps`, from `t_c`.
    pub fn temperature_after(&self, t_c: f64, amps: f64, ambient_c: f64, seconds: f64) -> f64 {
        self.heat
            .temperature_after(t_c, amps, self.around(ambient_c), seconds)
    }

    /// Steady amps that settle at `t_c` °C.
    pub fn amps_that_settle_at(&self, t_c: f64, ambient_c: f64) -> f64 {
        self.heat.amps_that_settle_at(t_c, self.around(ambient_c))
    }

    fn around(&self, ambient_c: f64) -> Around {
        Around {
            ambient_c,
            heat_factor: match self.run {
                Run::Hollow => 1.0,
                Run::Insulated => 4.0,
            },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn wire(number: i8, run: Run) -> BranchWire {
        BranchWire::new(Awg::new(number).unwrap(), Material::Copper, run).unwrap()
    }

    #[test]
    fn the_right_breaker_keeps_a_branch_wire_within_its_sixty_degrees() {
        for (number, breaker_a) in [(14, 15.0), (12, 20.0), (10, 30.0)] {
            let t_c = wire(number, Run::Hollow).settle_c(breaker_a, TABLE_AMBIENT_C);
            assert!(
                t_c <= LOADED_C + 1.0,
                "{number} AWG at {breaker_a} A settles at {t_c} °C"
            );
        }
    }

    #[test]
    fn a_breaker_too_big_for_the_wire_lets_it_pass_its_insulation() {
        let t_c = wire(14, Run::Hollow).settle_c(30.0, TABLE_AMBIENT_C);
        assert!(t_c > INSULATION_C, "14 AWG under 30 A settles at {t_c} °C");
        let packed = wire(14, Run::Insulated).settle_c(20.0, TABLE_AMBIENT_C);
        assert!(
            packed > INSULATION_C,
            "in insulation, 20 A settle at {packed} °C"
        );
    }

    #[test]
    fn half_the_amps_in_insulation_are_as_hot_as_all_of_them_in_a_hollow_wall() {
        let (hollow, packed) = (wire(12, Run::Hollow), wire(12, Run::Insulated));
        let (a, b) = (hollow.settle_c(30.0, 30.0), packed.settle_c(15.0, 30.0));
        assert!((a - b).abs() < 1e-9, "{a} °C and {b} °C");
    }

    #[test]
    fn a_size_off_the_table_makes_no_branch_wire() {
        assert!(BranchWire::new(Awg::new(20).unwrap(), Material::Copper, Run::Hollow).is_none());
        assert!(BranchWire::new(Awg::new(14).unwrap(), Material::Aluminum, Run::Hollow).is_none());
    }
}
