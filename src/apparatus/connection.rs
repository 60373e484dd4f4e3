//! A plug in a receptacle or in the end of another cord: contact resistance, and the heat of it.
//!
//! Calibrated on the temperature test of UL 498 (from memory): at its rated amps a sound plug and receptacle may rise 30 K.
//! Contacts by their state: sound ones take that rise exactly, loose and burnt ones have so many times the resistance (typical, common practice, no source; a factor of three is met).
//! *C dT/dt = 2 I² r - G (T - T*ambient*)*: linear, in closed form, no integration error but rounding.
//! Not covered: arcing of a contact that moves, growth of resistance as it oxidizes, heat that goes into or comes from the cord.
//! Accuracy: sound: an upper limit; loose or burnt: the order of magnitude.

use crate::units::portable;

/// Rise over the air that a sound connection may have at its rated amps, kelvin; UL 498, from memory.
pub const RISE_K: f64 = 30.0;

/// Temperature at which plug and receptacle deform or discolor, °C; assumption, plastics used there soften from 100 to 150 °C (from memory).
pub const SCORCHED_C: f64 = 120.0;

/// Heat that a plug and its receptacle give off, watts per kelvin; about 60 cm² at 10 W/(m² K), from typical dimensions.
const GIVEN_OFF_W_PER_K: f64 = 0.06;

/// Seconds in which a connection covers 63 % of the way to where it settles: 40 J/K of brass and plastic, from typical dimensions, ± 50 %.
pub const TIME_CONSTANT_S: f64 = 670.0;

/// The state of a connection's contacts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum Contact {
    /// As new.
    #[default]
    Sound,
    /// Loose: the plug falls out by itself, or hangs.
    Loose,
    /// Burnt: pitted or blackened blades.
    Burnt,
}

/// A plug in something that takes it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Connection {
    /// Amps that plug and receptacle are rated for, above 0.
    pub rated_a: f64,
    /// The state of its contacts.
    pub contact: Contact,
}

impl Connection {
    /// Resistance of each of its contacts, ohms.
    pub fn contact_ohm(self) -> f64 {
        let sound = RISE_K * GIVEN_OFF_W_PER_K / (2.0 * self.rated_a * self.rated_a);
        match self.contact {
            Contact::Sound => sound,
            Contact::Loose => 5.0 * sound,
            Contact::Burnt => 20.0 * sound,
        }
    }

    /// Watts at `amps`, in both contacts.
    pub fn heat_w(self, amps: f64) -> f64 {
        2.0 * amps * amps * self.contact_ohm()
    }

    /// Temperature that steady `amps` settle at, °C.
    pub fn settle_c(self, amps: f64, ambient_c: f64) -> f64 {
        ambient_c + self.heat_w(amps) / GIVEN_OFF_W_PER_K
    }

    /// Temperature in °C after `seconds` at `amps`, from `t_c`.
    pub fn temperature_after(self, t_c: f64, amps: f64, ambient_c: f64, seconds: f64) -> f64 {
        let rate = 1.0 / TIME_CONSTANT_S;
        portable::first_order(t_c, self.settle_c(amps, ambient_c) * rate, rate, seconds)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fifteen(contact: Contact) -> Connection {
        Connection {
            rated_a: 15.0,
            contact,
        }
    }

    #[test]
    fn a_sound_connection_rises_thirty_kelvin_at_its_rated_amps_and_no_more() {
        for rated_a in [15.0, 20.0, 30.0, 50.0] {
            let connection = Connection {
                rated_a,
                contact: Contact::Sound,
            };
            let rise = connection.settle_c(rated_a, 25.0) - 25.0;
            assert!((rise - RISE_K).abs() < 1e-9, "{rated_a} A: {rise} K");
        }
    }

    #[test]
    fn a_worse_contact_is_hotter_and_a_loose_one_scorches_under_a_heater() {
        let at = |contact| fifteen(contact).settle_c(12.5, 20.0);
        assert!(at(Contact::Sound) < 50.0, "sound {} °C", at(Contact::Sound));
        assert!(
            at(Contact::Loose) >= SCORCHED_C,
            "loose {} °C",
            at(Contact::Loose)
        );
        assert!(at(Contact::Burnt) > at(Contact::Loose));
    }

    #[test]
    fn a_connection_nears_where_it_settles_and_cools_again_in_one_law() {
        let loose = fifteen(Contact::Loose);
        let hot = loose.temperature_after(20.0, 12.5, 20.0, 5.0 * TIME_CONSTANT_S);
        assert!(
            (hot / loose.settle_c(12.5, 20.0) - 1.0).abs() < 0.01,
            "{hot} °C"
        );
        let parts = loose.temperature_after(
            loose.temperature_after(hot, 0.0, 20.0, 100.0),
            0.0,
            20.0,
            500.0,
        );
        let whole = loose.temperature_after(hot, 0.0, 20.0, 600.0);
        assert!(
            parts < hot && (parts - whole).abs() < 1e-11,
            "{parts} °C, {whole} °C"
        );
    }
}
