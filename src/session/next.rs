//! What to practice next, from what a run shows: the skills whose rules were broken, the gravest first, then skills that the drill didn't ask for.
//!
//! Each comes with a drill that teaches it: of the same way and about as hard, if there is one.

use std::sync::Arc;

use crate::explain::explain;
use crate::marking::{Finding, Verdict};
use crate::scenario::Scenario;
use crate::scenario::course::{OUTCOMES, Outcome};

use super::view::NextView;
use super::{Open, Session};

/// How many things are named.
const N_NEXT: usize = 3;

impl Session {
    pub(super) fn next(&self, open: &Open, verdict: &Verdict) -> Vec<NextView> {
        let here = open.drill.scenario();
        let mut chosen: Vec<NextView> = Vec::new();
        for (skill, finding) in wanted(here, verdict) {
            let taken = |s: &Scenario| chosen.iter().any(|n| n.drill == s.name);
            let drill = match (self.trains(here, skill, taken), finding) {
                (Some(drill), _) => drill,
                (None, Some(_)) => here,
                (None, None) => continue,
            };
            chosen.push(NextView {
                skill: skill.name().to_owned(),
                title: self.words.say_id(&format!("skill-{}", skill.name())),
                because: finding.map_or_else(
                    || self.words.say_id("debrief-next-new"),
                    |f| self.words.say(&explain(&open.drill, f).what),
                ),
                drill: drill.name.clone(),
                drill_title: self.drill_words(&drill.name, "title"),
            });
            if chosen.len() == N_NEXT {
                break;
            }
        }
        chosen
    }

    /// The drill that trains a skill best after this one, but for those that are taken.
    fn trains(
        &self,
        here: &Scenario,
        skill: Outcome,
        taken: impl Fn(&Scenario) -> bool,
    ) -> Option<&Arc<Scenario>> {
        let fits = |s: &&Arc<Scenario>| {
            let course = &s.course;
            let shared = course.tracks.iter().any(|t| here.course.tracks.contains(t));
            course.teaches.contains(&skill) && shared && s.name != here.name && !taken(s)
        };
        self.library.scenarios.iter().filter(fits).min_by_key(|s| {
            let (level, mine) = (s.course.level.number(), here.course.level.number());
            (s.course.way != here.course.way, level.abs_diff(mine), level)
        })
    }
}

/// Skills, each once, with the finding that asks for it.
fn wanted<'a>(here: &'a Scenario, verdict: &'a Verdict) -> Vec<(Outcome, Option<&'a Finding>)> {
    let mut findings: Vec<&Finding> = verdict.findings.iter().collect();
    findings.sort_by_key(|f| (!f.breach, !f.rule.criterion().is_critical()));
    let broken = findings.into_iter().map(|f| (f.rule.skill(), Some(f)));
    let further = OUTCOMES
        .into_iter()
        .filter(|o| !here.course.teaches.contains(o));
    let mut skills: Vec<(Outcome, Option<&Finding>)> = Vec::new();
    for (skill, finding) in broken.chain(further.map(|o| (o, None))) {
        if !skills.iter().any(|(known, _)| *known == skill) {
            skills.push((skill, finding));
        }
    }
    skills
}
