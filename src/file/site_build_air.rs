//! From a site file to the air of a house and of its garage.
//!
//! A file gives volumes and how often the house's air is changed; what passes the garage's doors is an assumption that is the same for all.
//! A big door that stops half-way is a doorway of half the height; air from under a floor is handed in.
//! Not covered: a house door left ajar, fans, wind.

use crate::hazard::air::doorway_m3_per_h;
use crate::site::{Garage, Kind};

use super::site_build::Build;
use super::site_file::AirFile;

/// How much warmer a garage with an engine in it is than the air beside it, kelvins: assumption.
const WARMER_K: f64 = 3.0;
/// Width and height of a garage's big door, meters: for one car, common.
const BIG_DOOR_M: (f64, f64) = (2.4, 2.1);
/// Width and height of a door of the house, meters: common.
const HOUSE_DOOR_M: (f64, f64) = (0.8, 2.0);
/// Air changes an hour of a garage with its doors shut: assumption, 0.3 to 3.
const SHUT_CHANGES_PER_H: f64 = 0.7;
/// Cubic meters an hour, each way, through the cracks of a shut door and of the wall around it, driven by a garage that an engine heats: assumption, 5 to 100.
const CRACKS_M3_PER_H: f64 = 60.0;

impl Build<'_> {
    /// Checks what a file says of air, and builds the garage if it has one.
    pub(super) fn air(&mut self, file: &AirFile) -> Option<Garage> {
        self.positive(&["air", "cubic_meters"], file.cubic_meters);
        self.positive(
            &["air", "changes_per_hour_window_shut"],
            file.changes_per_hour_window_shut,
        );
        self.positive(
            &["air", "changes_per_hour_window_open"],
            file.changes_per_hour_window_open,
        );
        let air_m3 = file.garage_cubic_meters?;
        self.positive(&["air", "garage_cubic_meters"], air_m3);
        if let Some(through_floor) = file.cubic_meters_per_hour_through_floor {
            let field = ["air", "cubic_meters_per_hour_through_floor"];
            self.positive(&field, through_floor);
        }
        let through = |door: (f64, f64)| doorway_m3_per_h(door.0, door.1, WARMER_K);
        let big: &[&str] = if file.garage_door_stops_half_way {
            &["shut", "half", "open"]
        } else {
            &["shut", "open"]
        };
        let mut door = |name: &str, positions: &[&str]| {
            self.furnishing
                .add(name, Kind::Opening, positions, "house", 0)
        };
        let cracks = file.cubic_meters_per_hour_through_floor;
        let half = (BIG_DOOR_M.0, BIG_DOOR_M.1 / 2.0);
        Some(Garage {
            air_m3,
            changes_per_h: (SHUT_CHANGES_PER_H, through(BIG_DOOR_M) / air_m3),
            half_changes_per_h: through(half) / air_m3,
            to_house_m3_per_h: (cracks.unwrap_or(CRACKS_M3_PER_H), through(HOUSE_DOOR_M)),
            big_door: door("garage-door", big),
            house_door: door("house-door", &["shut", "open"]),
        })
    }
}
