//! What the searches of a proof depend on, so that drills and variations that are alike in it are searched once.
//!
//! It is the site as built, how what counts stands at the start, the order of the story, and what is asked for at the end.
//! Left out is what no search reads: the hour, the times of the story, seeds, the goal's appliances, and how switches, windows, people and the lay of cords stand while nothing hangs on them.
//! Of the site are left out the warmth of the air, the sun's watts and the levels that reservoirs begin with: states are solved with every load off and every wire as it is tabled.
//! Electrodes stay in: volts to earth hang on them.
//! A safe way is played with all of that, so it is sought for each drill by itself.

use crate::scenario::{Happening, Scenario};
use crate::site::{ControlId, Demand, Kind, PositionId, Positions, Site};

use super::judge::Judge;
use super::space::counted;
use super::{groups, to_be_moved};

/// What the searches of a drill depend on.
#[derive(Debug, Clone, PartialEq)]
pub struct Topic {
    site: Site,
    as_built: Positions,
    start: Positions,
    story: Vec<Happening>,
    back_on_utility: bool,
    at_end: Vec<(ControlId, Vec<String>)>,
}

impl Topic {
    /// The topic of a drill.
    pub fn of(scenario: &Scenario) -> Self {
        let judge = Judge::new(scenario);
        let branches: Vec<usize> = groups(scenario).into_iter().flatten().collect();
        let counted = counted(scenario, &judge, &branches, &to_be_moved(scenario));
        let site = &scenario.site;
        let asked = |c| scenario.goal.at_end.iter().any(|(asked, _)| *asked == c);
        let reads_nothing = |id: &ControlId| {
            let kind = site.control(*id).map(|c| c.kind);
            let idle = [Kind::Switch, Kind::Lay, Kind::Opening, Kind::People];
            kind.is_some_and(|k| idle.contains(&k)) && !counted.contains(id) && !asked(*id)
        };
        let ids = (0..).map(ControlId).zip(&site.controls);
        let idle: Vec<ControlId> = ids.map(|(id, _)| id).filter(reads_nothing).collect();
        let without = |positions: &Positions| {
            let mut positions = positions.clone();
            for control in &idle {
                positions.set(*control, PositionId(0));
            }
            positions
        };
        Self {
            site: in_any_weather(site),
            as_built: without(&scenario.as_built),
            start: without(&scenario.start),
            story: scenario.story.iter().map(|t| t.what).collect(),
            back_on_utility: scenario.goal.back_on_utility,
            at_end: scenario.goal.at_end.clone(),
        }
    }
}

/// A site without what no search reads of it.
fn in_any_weather(site: &Site) -> Site {
    let mut site = site.clone();
    site.ambient_c = 0.0;
    if let Some(solar) = &mut site.solar {
        solar.watts = 0.0;
    }
    for cord in &mut site.cords {
        cord.found.in_sun = false;
    }
    for appliance in &mut site.appliances {
        if let Demand::Reservoir(store) = &mut appliance.demand {
            store.start = 0.0;
        }
    }
    site
}
