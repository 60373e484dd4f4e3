//! The sections of published values and of whole networks, and what is counted in each.
//!
//! Counted are published figures that ours meets: rows that follow from one formula count once, and a row that differs with a stated reason doesn't count.

use std::collections::BTreeSet;

use super::row::Compared;
use super::row::Judgement;

/// A field of the trade that figures are published in, or a kind of whole network.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Section {
    /// Gauge, geometry and resistance of conductors.
    WireSizes,
    /// Flexible cord.
    Cords,
    /// Ampacity of building wire, the breaker it needs, voltage drop.
    BuildingWire,
    /// Molded-case breakers and fuses.
    Breakers,
    /// Ground-fault circuit interrupters.
    GroundFault,
    /// Bodies, currents through them, and what they do.
    Shock,
    /// Work on lines: distances, steps, touches.
    LineWork,
    /// Rules for optional standby systems.
    StandbyRules,
    /// Times of transfer, and trip times at the interconnection.
    Timing,
    /// Service voltage, transformers, lines.
    UtilitySide,
    /// Ride-through of electronics, and motors.
    RideThrough,
    /// What household loads take.
    HouseholdLoads,
    /// Carbon monoxide.
    CarbonMonoxide,
    /// Fuel, and what altitude and heat take away.
    Fuel,
    /// The split-phase service, asked of two other solvers.
    SplitPhase,
    /// The published 4-node feeder.
    FourNode,
    /// Networks drawn at random, asked of another solver.
    DrawnNetworks,
}

impl Section {
    /// Every section, in order.
    pub const ALL: [Self; 17] = [
        Self::WireSizes,
        Self::Cords,
        Self::BuildingWire,
        Self::Breakers,
        Self::GroundFault,
        Self::Shock,
        Self::LineWork,
        Self::StandbyRules,
        Self::Timing,
        Self::UtilitySide,
        Self::RideThrough,
        Self::HouseholdLoads,
        Self::CarbonMonoxide,
        Self::Fuel,
        Self::SplitPhase,
        Self::FourNode,
        Self::DrawnNetworks,
    ];

    /// A name that is the same in every language.
    pub fn id(self) -> &'static str {
        self.title_id().trim_start_matches("evidence-section-")
    }

    /// The message that names it.
    pub fn title_id(self) -> &'static str {
        match self {
            Self::WireSizes => "evidence-section-wire-sizes",
            Self::Cords => "evidence-section-cords",
            Self::BuildingWire => "evidence-section-building-wire",
            Self::Breakers => "evidence-section-breakers",
            Self::GroundFault => "evidence-section-ground-fault",
            Self::Shock => "evidence-section-shock",
            Self::LineWork => "evidence-section-line-work",
            Self::StandbyRules => "evidence-section-standby-rules",
            Self::Timing => "evidence-section-timing",
            Self::UtilitySide => "evidence-section-utility-side",
            Self::RideThrough => "evidence-section-ride-through",
            Self::HouseholdLoads => "evidence-section-household-loads",
            Self::CarbonMonoxide => "evidence-section-carbon-monoxide",
            Self::Fuel => "evidence-section-fuel",
            Self::SplitPhase => "evidence-section-split-phase",
            Self::FourNode => "evidence-section-four-node",
            Self::DrawnNetworks => "evidence-section-drawn-networks",
        }
    }
}

/// What was counted among rows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Total {
    /// All rows.
    pub rows: usize,
    /// Published figures that ours meets, those of one formula as one.
    pub counted: usize,
    /// Rows within their tolerance.
    pub within: usize,
    /// Rows that differ by what is stated.
    pub differ: usize,
    /// Rows that don't hold.
    pub wrong: usize,
}

/// What is counted in each section that has rows.
pub fn totals(rows: &[Compared]) -> Vec<(Section, Total)> {
    let own = |section| rows.iter().filter(move |row| row.section == section);
    Section::ALL
        .into_iter()
        .map(|section| (section, total(own(section))))
        .filter(|(_, total)| total.rows > 0)
        .collect()
}

/// What is counted among these rows.
pub fn total<'a>(rows: impl IntoIterator<Item = &'a Compared>) -> Total {
    let mut total = Total::default();
    let mut formulas = BTreeSet::new();
    for row in rows {
        total.rows += 1;
        match row.judgement() {
            Judgement::Within => {
                total.within += 1;
                let known = row.follows.as_deref();
                if known.is_none_or(|formula| formulas.insert((row.section, formula))) {
                    total.counted += 1;
                }
            }
            Judgement::DiffersAsStated => total.differ += 1,
            Judgement::Beyond | Judgement::DiffersOtherwise | Judgement::DifferenceHealed => {
                total.wrong += 1;
            }
        }
    }
    total
}
