//! Tests of the whole without a window, in one binary.

#[cfg(test)]
mod answers;
#[cfg(test)]
mod catalog;
#[cfg(test)]
mod check;
#[cfg(test)]
mod circuit_backfeed;
#[cfg(test)]
mod circuit_by_hand;
#[cfg(test)]
mod circuit_constant_power;
#[cfg(test)]
mod circuit_drawn;
#[cfg(test)]
mod circuit_four_node;
#[cfg(test)]
mod circuit_invariants;
#[cfg(test)]
mod circuit_islands;
#[cfg(test)]
mod circuit_lateral;
#[cfg(test)]
mod circuit_lost_conductor;
#[cfg(test)]
mod circuit_networks;
#[cfg(test)]
mod circuit_sources;
#[cfg(test)]
mod circuit_split_phase;
#[cfg(test)]
mod compare;
#[cfg(test)]
mod cords;
#[cfg(test)]
mod coverage;
#[cfg(test)]
mod debrief;
#[cfg(test)]
mod drills;
#[cfg(test)]
mod drills_sources;
#[cfg(test)]
mod explained;
#[cfg(test)]
mod glossary;
#[cfg(test)]
mod guide;
#[cfg(test)]
mod guided;
#[cfg(test)]
mod household_loads;
#[cfg(test)]
mod lasting;
#[cfg(test)]
mod layout;
#[cfg(test)]
mod learners;
#[cfg(test)]
mod lessons;
#[cfg(test)]
mod line_work;
#[cfg(test)]
mod lists;
#[cfg(test)]
mod live_end;
#[cfg(test)]
mod machines;
#[cfg(test)]
mod mastery;
#[cfg(test)]
mod mixed_faults;
#[cfg(test)]
mod playing;
#[cfg(test)]
mod predictions;
#[cfg(test)]
mod proof;
#[cfg(test)]
mod protection_drills;
#[cfg(test)]
mod published;
#[cfg(test)]
mod renewing;
#[cfg(test)]
mod roster;
#[cfg(test)]
mod runs;
#[cfg(test)]
mod same_bits;
#[cfg(test)]
mod schema;
#[cfg(test)]
mod second_judge;
#[cfg(test)]
mod session;
#[cfg(test)]
mod settling;
#[cfg(test)]
mod shared_apparatus;
#[cfg(test)]
mod sources_apart;
#[cfg(test)]
mod terminal;
#[cfg(test)]
mod terminal_drill;
#[cfg(test)]
mod time_law;
#[cfg(test)]
mod told_advice;
#[cfg(test)]
mod told_causes;
#[cfg(test)]
mod told_cut;
#[cfg(test)]
mod told_danger;
#[cfg(test)]
mod told_fitting;
#[cfg(test)]
mod told_gas;
#[cfg(test)]
mod told_numbers;
#[cfg(test)]
mod told_once;
#[cfg(test)]
mod told_orders;
#[cfg(test)]
mod told_plainly;
#[cfg(test)]
mod told_safely;
#[cfg(test)]
mod touch;
#[cfg(test)]
mod training;
#[cfg(test)]
mod traps;
#[cfg(test)]
mod turns;
#[cfg(test)]
mod variations;
#[cfg(test)]
mod ways_home;
#[cfg(test)]
mod words;
#[cfg(test)]
mod wrong_drills;
#[cfg(test)]
mod wrong_files;
#[cfg(test)]
mod wrong_lessons;
