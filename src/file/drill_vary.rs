//! What a drill file writes to vary itself: named changes, each of which replaces some of its fields.
//!
//! A change makes another drill file of the one as written; it is then read like any other, so that nothing is checked less.
//! Not covered: changes that depend on each other; of two changes of the same field the later dimension's holds.

use std::collections::BTreeMap;

use serde::Deserialize;

use super::drill_file::{DrillFile, InterlockFile, StoryFile, WhatFile};
use super::site_file::GasFile;

/// A named change; what is left out stays as written.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct VariationFile {
    /// Its name; its words are `variation-<name>`.
    pub(super) name: String,
    /// Whether the learner has to find it, so that it is told only at the end; false when left out.
    #[serde(default)]
    pub(super) hidden: bool,
    /// Another find of the slide.
    #[serde(default)]
    pub(super) interlock: Option<InterlockFile>,
    /// Other cords on hand.
    #[serde(default)]
    pub(super) cords: Option<Vec<String>>,
    /// Another hour.
    #[serde(default)]
    pub(super) starts_at: Option<(u32, u32)>,
    /// Another length.
    #[serde(default)]
    pub(super) ends_after_minutes: Option<u64>,
    /// Other hours of oil.
    #[serde(default)]
    pub(super) oil_hours: Option<f64>,
    /// Most attempts to start that fail.
    #[serde(default)]
    pub(super) start_misses_up_to: Option<u32>,
    /// Least attempts to start that fail.
    #[serde(default)]
    pub(super) start_misses_from: Option<u32>,
    /// Fuel at the start, gallons.
    #[serde(default)]
    pub(super) fuel_gallons: Option<f64>,
    /// Levels of these; the others as written.
    #[serde(default)]
    pub(super) levels: BTreeMap<String, f64>,
    /// Pairs of circuits that have changed places.
    #[serde(default)]
    pub(super) swapped: Option<Vec<(String, String)>>,
    /// Other weather.
    #[serde(default)]
    pub(super) weather: Option<WeatherFile>,
    /// Where these stand; the others as written.
    #[serde(default)]
    pub(super) start: BTreeMap<String, String>,
    /// A whole story in place of the one as written.
    #[serde(default)]
    pub(super) story: Option<Vec<StoryFile>>,
    /// Kinds of happenings that come earlier or later.
    #[serde(default)]
    pub(super) story_shift: Vec<ShiftFile>,
    /// Happenings that come besides.
    #[serde(default)]
    pub(super) story_add: Vec<StoryFile>,
    /// What changes in the goal.
    #[serde(default)]
    pub(super) goal: GoalChangeFile,
}

/// A kind of happening with the minutes by which it comes later; earlier if negative.
#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ShiftFile {
    /// What is shifted.
    pub(super) what: WhatFile,
    /// By how many minutes; less than 0 is earlier.
    pub(super) minutes: i64,
}

/// What is changed of a goal.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(super) struct GoalChangeFile {
    /// Other appliances.
    pub(super) powered: Option<Vec<String>>,
    /// Another time, minutes.
    pub(super) within_minutes: Option<u64>,
    /// Whether the house has to be on the utility at the end.
    pub(super) back_on_utility: Option<bool>,
    /// Whether feeding nothing and calling is as good.
    pub(super) safe_stop: Option<bool>,
    /// How these have to stand at the end; the others as written.
    pub(super) at_end: BTreeMap<String, Vec<String>>,
}

/// What of the weather matters in the model.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(super) struct WeatherFile {
    /// Air outdoors, around cords and engine; a cool evening when left out.
    pub(super) outdoor_celsius: Option<f64>,
    /// How the ground is; as the site says when left out.
    pub(super) ground: GroundFile,
    /// Cords that lie in the sun besides those of the site.
    pub(super) cords_in_sun: Vec<String>,
    /// Share of its power that the sun lets a solar array make; all of it when left out.
    pub(super) sun_share: Option<f64>,
    /// Where the wind takes the exhaust, by the engine's place: with the window shut, and with it open.
    pub(super) wind: BTreeMap<String, (GasFile, GasFile)>,
}

/// How the ground is.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Deserialize)]
pub(super) enum GroundFile {
    /// As the site says.
    #[default]
    AsBuilt,
    /// After rain.
    Wet,
}

/// The drill file with these changes made in it, one after the other.
pub(super) fn varied(file: &DrillFile, changes: &[&VariationFile]) -> DrillFile {
    let mut varied = file.clone();
    for change in changes {
        make(&mut varied, change);
    }
    varied
}

fn make(file: &mut DrillFile, change: &VariationFile) {
    put(&mut file.interlock, change.interlock);
    put(&mut file.cords, change.cords.clone());
    put(&mut file.starts_at, change.starts_at);
    put(&mut file.ends_after_minutes, change.ends_after_minutes);
    put(&mut file.start_misses_up_to, change.start_misses_up_to);
    put(&mut file.start_misses_from, change.start_misses_from);
    put(&mut file.swapped, change.swapped.clone());
    put(&mut file.weather, change.weather.clone());
    file.oil_hours = change.oil_hours.or(file.oil_hours);
    file.fuel_gallons = change.fuel_gallons.or(file.fuel_gallons);
    file.levels.extend(change.levels.clone());
    file.start.extend(change.start.clone());
    put(&mut file.story, change.story.clone());
    for shift in &change.story_shift {
        let shifted = file.story.iter_mut().filter(|s| s.what == shift.what);
        for entry in shifted {
            entry.minute = entry.minute.saturating_add_signed(shift.minutes);
        }
    }
    file.story.extend(change.story_add.iter().cloned());
    if !change.story_shift.is_empty() || !change.story_add.is_empty() {
        file.story.sort_by_key(|s| (s.minute, s.second));
    }
    put(&mut file.goal.powered, change.goal.powered.clone());
    put(&mut file.goal.within_minutes, change.goal.within_minutes);
    put(&mut file.goal.back_on_utility, change.goal.back_on_utility);
    put(&mut file.goal.safe_stop, change.goal.safe_stop);
    file.goal.at_end.extend(change.goal.at_end.clone());
}

fn put<T>(field: &mut T, change: Option<T>) {
    if let Some(change) = change {
        *field = change;
    }
}
