//! From a drill file to a [`Scenario`], with every fault named on the way.

use std::collections::BTreeMap;
use std::sync::Arc;

use crate::drill::take_place;
use crate::drill::whole_millis;
use crate::scenario::variation::Variants;
use crate::scenario::{Criterion, Goal, Happening, Scenario, Timed};
use crate::site::{ControlId, PositionId, Positions, Site};
use crate::units::DrillTime;
use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source};
use super::drill_build_course::course;
use super::drill_build_found::find_site;
use super::drill_build_found::out_of_range;
use super::drill_build_predictions::predictions;
use super::drill_build_questions::questions;
use super::drill_file::{DRILL_VERSION, DrillFile, WhatFile};
use super::mend::Misread;
use super::site_build::Built;

/// Minutes that an engine may have run before a drill begins: a day at most.
const RAN_MINUTES: std::ops::RangeInclusive<f64> = 0.0..=1440.0;

/// Reads a drill file's text.
pub(super) fn parse_drill(source: &Source<'_>) -> Result<DrillFile, Misread<DrillFile>> {
    source.parse(DRILL_VERSION, |file: &DrillFile| file.version)
}

/// Whether the names that a drill speaks of may be lost with a field.
pub(super) fn drill_loses_names(field: &str, _: &str) -> bool {
    ["site", "cords", "name", "variations", "draw"].contains(&field)
}

/// The faults of a drill that can be told without its site.
pub(super) fn faults_without_site(source: &Source<'_>, file: &DrillFile) -> Vec<Diagnostic> {
    let mut faults = Vec::new();
    story(source, file, &mut faults);
    course(source, file, &mut faults);
    share(source, file, &mut faults);
    faults
}

/// Builds a scenario on a site.
pub(super) fn build_drill(
    source: Source<'_>,
    file: &DrillFile,
    built: Built,
    digest: String,
) -> Result<Scenario, Vec<Diagnostic>> {
    let mut faults = Vec::new();
    let Built {
        mut site,
        mut start,
    } = built;
    find_site(&source, file, &mut site, &mut faults);
    let as_built = start.clone();
    if let Some(minutes) = file.engine_minutes {
        if !RAN_MINUTES.contains(&minutes) {
            faults.push(out_of_range(&source, "engine_minutes", minutes));
        }
        take_place(&site, Happening::Outage, &mut start);
        start.set(site.generator.engine, PositionId(1));
    }
    apply_start(&source, &site, &file.start, &mut start, &mut faults);
    let goal = goal(&source, &site, file, &mut faults);
    let story = story(&source, file, &mut faults);
    let course = course(&source, file, &mut faults);
    // Wiring a site for the names of its points is most of the work of reading a drill, and many drills ask nothing.
    let points = if file.questions.is_empty() && file.predictions.is_empty() {
        Vec::new()
    } else {
        site.point_names()
    };
    let known = (&site, points.as_slice());
    let questions = questions(&source, &file.questions, known, &mut faults);
    let predictions = predictions(&source, &file.predictions, known, &mut faults);
    share(&source, file, &mut faults);
    if !faults.is_empty() {
        return Err(faults);
    }
    Ok(Scenario {
        name: file.name.clone(),
        digest,
        course,
        site: Arc::new(site),
        as_built,
        start,
        minute_of_day: file.starts_at.0 * 60 + file.starts_at.1,
        storm: file.storm,
        story,
        goal,
        criteria: vec![
            Criterion::Isolation,
            Criterion::People,
            Criterion::Order,
            Criterion::Load,
            Criterion::Restoration,
        ],
        questions,
        predictions,
        share: file.share,
        oil_hours: file.oil_hours,
        start_misses_up_to: file.start_misses_up_to,
        start_misses_from: file.start_misses_from,
        wet_panel: file.wet_panel,
        ran_before: file.engine_minutes.map(|m| whole_millis(60.0 * m)),
        fuel_gal: file.fuel_gallons,
        ends_at: DrillTime::from_secs(file.ends_after_minutes * 60),
        changes: Vec::new(),
        variants: Variants::default(),
    })
}

fn share(source: &Source<'_>, file: &DrillFile, faults: &mut Vec<Diagnostic>) {
    if !(0.0..=1.0).contains(&file.share) {
        let message =
            Message::new("error-share").with("value", Arg::Verbatim(file.share.to_string()));
        faults.push(source.at(&["share"], message));
    }
}

fn story(source: &Source<'_>, file: &DrillFile, faults: &mut Vec<Diagnostic>) -> Vec<Timed> {
    let mut story: Vec<Timed> = Vec::new();
    for entry in &file.story {
        let at = DrillTime::from_secs(entry.minute * 60 + entry.second);
        let earliest_next = story
            .last()
            .map(|t| t.at + DrillTime::from_secs(u64::from(t.spread_s)));
        if earliest_next.is_some_and(|e| at < e) {
            faults.push(source.at(
                &["story", &format!("minute: {}", entry.minute)],
                Message::new("error-story-order"),
            ));
        }
        let what = happening(entry.what);
        story.push(Timed {
            at,
            spread_s: entry.up_to_seconds_later,
            what,
        });
    }
    story
}

/// What the world does, as a drill file names it.
pub(super) fn happening(what: WhatFile) -> Happening {
    match what {
        WhatFile::Outage => Happening::Outage,
        WhatFile::CrewArrives => Happening::CrewArrives,
        WhatFile::CrewTakesHold => Happening::CrewTakesHold,
        WhatFile::CrewLeaves => Happening::CrewLeaves,
        WhatFile::UtilityReturns => Happening::UtilityReturns,
        WhatFile::UtilityFails => Happening::UtilityFails,
        WhatFile::NeighborAsks => Happening::NeighborAsks,
        WhatFile::NeighborRuns => Happening::NeighborRuns,
        WhatFile::NeutralLost => Happening::NeutralLost,
        WhatFile::LegLost => Happening::LegLost,
        WhatFile::DropMended => Happening::DropMended,
        WhatFile::CustomerStarts => Happening::CustomerStarts,
        WhatFile::TieCloses => Happening::TieCloses,
        WhatFile::SecondCrewClears => Happening::SecondCrewClears,
    }
}

fn goal(source: &Source<'_>, site: &Site, file: &DrillFile, faults: &mut Vec<Diagnostic>) -> Goal {
    let mut appliances = Vec::new();
    let known: Vec<&str> = site.appliances.iter().map(|a| a.name.as_str()).collect();
    for name in &file.goal.powered {
        match site.appliance_index(name) {
            Some(index) => appliances.push(index),
            None => faults.push(unknown(source, &["goal"], name, "appliance", &known)),
        }
    }
    let mut at_end = Vec::new();
    for (control, positions) in &file.goal.at_end {
        for position in positions {
            if let Err(fault) = find(source, &["at_end"], site, control, position) {
                faults.push(*fault);
            }
        }
        if let Some(id) = site.control_id(control) {
            at_end.push((id, positions.clone()));
        }
    }
    Goal {
        appliances,
        within: DrillTime::from_secs(file.goal.within_minutes * 60),
        back_on_utility: file.goal.back_on_utility,
        safe_stop: file.goal.safe_stop,
        at_end,
    }
}

fn apply_start(
    source: &Source<'_>,
    site: &Site,
    given: &BTreeMap<String, String>,
    start: &mut Positions,
    faults: &mut Vec<Diagnostic>,
) {
    for (control, position) in given {
        match find(source, &["start"], site, control, position) {
            Ok((id, position)) => start.set(id, position),
            Err(fault) => faults.push(*fault),
        }
    }
}

/// A control and its position by their names.
pub(super) fn find(
    source: &Source<'_>,
    trail: &[&str],
    site: &Site,
    control: &str,
    position: &str,
) -> Result<(ControlId, PositionId), Box<Diagnostic>> {
    let names: Vec<&str> = site.controls.iter().map(|c| c.name.as_str()).collect();
    let found = site
        .control_id(control)
        .and_then(|id| site.control(id).map(|c| (id, c)));
    let (id, own) =
        found.ok_or_else(|| Box::new(unknown(source, trail, control, "control", &names)))?;
    let positions: Vec<&str> = own.positions.iter().map(String::as_str).collect();
    let quoted = format!("\"{control}\"");
    let mut trail = trail.to_vec();
    trail.push(&quoted);
    let position = own
        .position(position)
        .ok_or_else(|| Box::new(unknown(source, &trail, position, "position", &positions)))?;
    Ok((id, position))
}

/// The fault of a name that isn't among the known ones.
pub(super) fn unknown(
    source: &Source<'_>,
    trail: &[&str],
    name: &str,
    kind: &str,
    known: &[&str],
) -> Diagnostic {
    let quoted = format!("\"{name}\"");
    let mut trail = trail.to_vec();
    trail.push(&quoted);
    let message = Message::new("error-unknown-name")
        .with("name", Arg::Verbatim(name.to_owned()))
        .said("kind", Message::new(format!("error-kind-{kind}")));
    source
        .at(&trail, message)
        .with_nearest(known.iter().copied())
}

/// The fault of a drill that names a cord or a site that isn't there.
pub(super) fn unknown_cords(
    source: &Source<'_>,
    file: &DrillFile,
    known: &[&str],
) -> Vec<Diagnostic> {
    let wrong = file.cords.iter().filter(|c| !known.contains(&c.as_str()));
    wrong
        .map(|c| unknown(source, &["cords"], c, "cord", known))
        .collect()
}

/// The fault of a drill whose site isn't among the known ones.
pub(super) fn unknown_site(source: &Source<'_>, file: &DrillFile, known: &[&str]) -> Diagnostic {
    unknown(source, &["site"], &file.site, "site", known)
}
