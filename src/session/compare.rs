//! Two branches of a drill side by side: the run as it was left when the learner went back, and as it was tried otherwise.
//!
//! What stands, volts and people are those of each branch's own end.
//! Where one of the two isn't over, findings that only an end can judge are left out of both.

use crate::drill::Drill;
use crate::explain::explain;
use crate::file::{Diagnostic, Library, Source};
use crate::marking::{Finding, mark, mark_so_far};
use crate::site::ControlId;
use crate::words::{Message, Unit};

use super::practise::{Played, replay};
use super::view::{CompareView, DifferView};
use super::{Open, Session};

impl Session {
    /// Whether there are two branches to compare.
    pub fn has_branches(&self) -> bool {
        self.open.as_ref().is_some_and(|open| open.left.is_some())
    }

    /// The branch that was left beside the one that is open; none if the learner never went back.
    pub fn compare(&self) -> Option<CompareView> {
        let tried = self.open.as_ref()?;
        let was = tried.left.as_deref()?;
        let over = was.verdict.is_some() && tried.verdict.is_some();
        let (before, after) = (findings(&was.drill, over), findings(&tried.drill, over));
        let told = |drill: &Drill, findings: Vec<&Finding>| {
            let line = |f: &&Finding| self.words.say(&explain(drill, f).what);
            findings.iter().map(line).collect()
        };
        Some(CompareView {
            was: self.clock(was.drill.now()),
            tried: self.clock(tried.drill.now()),
            positions: self.positions_apart(&was.drill, &tried.drill),
            volts: self.volts_apart(&was.drill, &tried.drill),
            people: self.people_apart(was, tried),
            gone: told(&was.drill, without(&before, &after)),
            come: told(&tried.drill, without(&after, &before)),
        })
    }

    fn positions_apart(&self, was: &Drill, tried: &Drill) -> Vec<DifferView> {
        let site = tried.site();
        let stands = |drill: &Drill, id| self.name(site.position_name(drill.positions(), id));
        let controls = (0..).map(ControlId).zip(&site.controls);
        let apart = controls.map(|(id, control)| DifferView {
            label: self.name(&control.name),
            was: stands(was, id),
            tried: stands(tried, id),
        });
        apart.filter(DifferView::differs).collect()
    }

    /// Volts at both legs of the panel, at the outlets and on the line.
    fn volts_apart(&self, was: &Drill, tried: &Drill) -> Vec<DifferView> {
        let site = tried.site();
        let volts = |v: f64| self.words.quantity(v, Unit::Volts);
        let legs = ["series-leg-one", "series-leg-two"].into_iter().enumerate();
        let legs = legs.map(|(index, id)| {
            let leg = |drill: &Drill| {
                let legs_v = drill.readings().point("bus").legs_v;
                volts(legs_v.get(index).copied().unwrap_or_default())
            };
            DifferView {
                label: self.words.say_id(id),
                was: leg(was),
                tried: leg(tried),
            }
        });
        let outlets = site.circuits.iter().map(|c| format!("outlet-{}", c.name));
        let pole = site.line.poles.get(site.line.crew_pole);
        let points = outlets.chain(pole.map(|p| p.name.clone()));
        let points = points.map(|point| {
            let at = |drill: &Drill| volts(drill.readings().point(&point).volts);
            DifferView {
                label: self.name(&point),
                was: at(was),
                tried: at(tried),
            }
        });
        legs.chain(points).filter(DifferView::differs).collect()
    }

    /// What became of people, and of what appliances are and guard.
    fn people_apart(&self, was: &Open, tried: &Open) -> Vec<DifferView> {
        let people = self.people(was).into_iter().zip(self.people(tried));
        let people = people.map(|(a, b)| DifferView {
            label: a.label,
            was: a.word,
            tried: b.word,
        });
        let site = tried.drill.site();
        let things = site
            .appliances
            .iter()
            .enumerate()
            .map(|(index, appliance)| {
                let fate = |drill: &Drill| self.words.say_id(fate(drill, index));
                DifferView {
                    label: self.name(&appliance.name),
                    was: fate(&was.drill),
                    tried: fate(&tried.drill),
                }
            });
        people.chain(things).filter(DifferView::differs).collect()
    }
}

/// Compares two saved runs of the same drill and seed.
///
/// # Errors
/// When either can't be read, or the second is of another drill or seed than the first.
pub fn compare(
    library: &Library,
    language: &str,
    was: Source<'_>,
    tried: Source<'_>,
) -> Result<CompareView, Vec<Diagnostic>> {
    let first = replay(library, language, was)?.session;
    let Played { mut session, .. } = replay(library, language, tried)?;
    let other = || vec![tried.whole(Message::new("error-run-other"))];
    let (Some(was), Some(open)) = (first.open, session.open.as_mut()) else {
        return Err(other());
    };
    let drill = |open: &Open| (open.drill.run().scenario.clone(), open.drill.run().seed);
    if drill(&was) != drill(open) {
        return Err(other());
    }
    open.left = Some(Box::new(was));
    session.compare().ok_or_else(other)
}

fn findings(drill: &Drill, over: bool) -> Vec<Finding> {
    if over {
        mark(drill.scenario(), drill.trace()).findings
    } else {
        mark_so_far(drill.scenario(), drill.trace())
    }
}

/// Those of `these` whose rule `others` doesn't have as often.
fn without<'a>(these: &'a [Finding], others: &[Finding]) -> Vec<&'a Finding> {
    let count = |all: &[Finding], f: &Finding| all.iter().filter(|o| o.rule == f.rule).count();
    let numbered = these.iter().enumerate();
    let more = numbered.filter(|(index, finding)| {
        count(these.get(..*index).unwrap_or_default(), finding) >= count(others, finding)
    });
    more.map(|(_, finding)| finding).collect()
}

/// The id of what became of an appliance.
fn fate(drill: &Drill, index: usize) -> &'static str {
    let condition = drill.conditions().appliances.get(index);
    match condition {
        Some(c) if c.damaged => "state-broken",
        Some(c) if c.lost => "compare-lost",
        _ => "compare-unharmed",
    }
}
