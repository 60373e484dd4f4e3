//! Whether somebody can bring a house from how it was built to how a drill starts, one move after the other.
//!
//! Each control that stands otherwise is moved straight to where it has to be, in rounds, as soon as nothing built refuses it.
//! A walk that arrives is a proof that the start can be reached; one that doesn't proves nothing, and a search has to tell.
//! Not covered: what drifts, and whether every step on the way is a wise one.

use crate::drill::take_place;
use crate::scenario::{Happening, Scenario};
use crate::site::{ControlId, Positions};

use super::model::{as_written, by_hand};

/// Whether such a walk arrives at the start of a drill.
pub(super) fn walks(scenario: &Scenario) -> bool {
    let site = &scenario.site;
    let mut here = scenario.as_built.clone();
    if scenario.ran_before.is_some() {
        take_place(site, Happening::Outage, &mut here);
    }
    let ids = || (0..).map(ControlId).zip(&site.controls);
    let mut moved = true;
    while moved {
        moved = false;
        for (id, control) in ids() {
            let wanted = as_written(control, scenario.start.get(id));
            let stands = as_written(control, here.get(id));
            let free = by_hand(control, wanted) && site.refusal(&here, id, wanted).is_none();
            if wanted != stands && free {
                here.set(id, wanted);
                moved = true;
            }
        }
    }
    arrived(scenario, &here)
}

fn arrived(scenario: &Scenario, here: &Positions) -> bool {
    let mut numbered = (0..).map(ControlId).zip(&scenario.site.controls);
    numbered.all(|(id, control)| {
        as_written(control, here.get(id)) == as_written(control, scenario.start.get(id))
    })
}
