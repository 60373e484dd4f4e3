//! The mistakes that a learner must be able to make, by name, and what each puts at risk.
//!
//! The choice and the risks are common practice of the trade; what a mistake does is computed where it is played.

/// What a mistake puts at risk.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Risk {
    /// Somebody's life.
    Life,
    /// Fire.
    Fire,
    /// Equipment.
    Equipment,
    /// The service: power stays out or is lost.
    Service,
}

/// Every mistake and its risks, the connection first, then cords, loads, fuel and air, neutrals, standby units, the line.
/// Its words are `mistake-<name>`.
pub const MISTAKES: [(&str, &[Risk]); 46] = [
    ("two-plug-cord", &[Risk::Life, Risk::Fire]),
    ("main-left-closed", &[Risk::Life]),
    ("altered-panel", &[Risk::Life]),
    ("defeated-interlock", &[Risk::Life]),
    ("main-before-generator-off", &[Risk::Life, Risk::Equipment]),
    ("legs-tied", &[Risk::Life, Risk::Equipment]),
    (
        "two-forty-from-one-twenty",
        &[Risk::Equipment, Risk::Service],
    ),
    ("live-inlet", &[Risk::Life]),
    ("mated-live", &[Risk::Life, Risk::Equipment]),
    ("thin-cord", &[Risk::Fire]),
    ("long-cord", &[Risk::Equipment]),
    ("coiled-cord", &[Risk::Fire]),
    ("pinched-cord", &[Risk::Fire, Risk::Life]),
    ("daisy-chain", &[Risk::Fire, Risk::Service]),
    ("no-ground-pin", &[Risk::Life]),
    ("wet-cord", &[Risk::Life]),
    ("frayed-cord", &[Risk::Fire, Risk::Life]),
    ("window-by-engine", &[Risk::Life]),
    ("over-rating", &[Risk::Equipment, Risk::Service]),
    ("motors-together", &[Risk::Equipment]),
    ("too-small-for-motor", &[Risk::Equipment]),
    ("started-loaded", &[Risk::Equipment]),
    ("no-cool-down", &[Risk::Equipment]),
    ("hot-refuel", &[Risk::Fire, Risk::Life]),
    ("fuel-indoors", &[Risk::Fire]),
    ("engine-indoors", &[Risk::Life]),
    ("engine-near-opening", &[Risk::Life]),
    ("no-alarm", &[Risk::Life]),
    ("nothing-bonds", &[Risk::Life]),
    ("bonded-on-solid-neutral", &[Risk::Service]),
    ("two-sources-one-strip", &[Risk::Life, Risk::Equipment]),
    ("lost-neutral", &[Risk::Equipment, Risk::Fire]),
    ("wrong-breaker", &[Risk::Fire]),
    ("serviced-in-auto", &[Risk::Life]),
    ("live-lugs", &[Risk::Life]),
    ("hand-transfer-live", &[Risk::Life, Risk::Equipment]),
    ("standby-overload", &[Risk::Equipment, Risk::Service]),
    ("left-off", &[Risk::Service]),
    ("forgotten-source", &[Risk::Life]),
    ("assumed-dead", &[Risk::Life]),
    ("no-visible-break", &[Risk::Life]),
    ("unproved-tester", &[Risk::Life]),
    ("grounds-wrong", &[Risk::Life]),
    ("grounds-skipped", &[Risk::Life]),
    ("grounds-left-on", &[Risk::Equipment, Risk::Life]),
    ("re-energized-early", &[Risk::Life, Risk::Equipment]),
];
