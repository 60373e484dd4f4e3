//! What the shipped drills cover: six ways, both directions, at least two homes each; sixteen outcomes; levels of each track.
//!
//! That a way is worked in a direction is not taken from what a drill's file says: the list that passes is played, and its trace has to show that the equipment of that way was moved so and that power then came from there.

use std::collections::{BTreeMap, BTreeSet};

use outage_drill::drill::{Action, Drill, Moment, What};
use outage_drill::file::{Heading, Library, Source, read_heading};
use outage_drill::scenario::course::{Direction, LEVELS, Level, OUTCOMES, SOUND_WAYS, TRACKS, Way};
use outage_drill::shipped;
use outage_drill::site::{ControlId, Moved, Plug, PositionId, Site};

use crate::playing::play_text;

/// The table: which list shows a way worked in a direction, at which home.
const TABLE: &str = include_str!("../../scenarios/ways.md");
/// Share of its rated volts from which an appliance counts as supplied.
const SUPPLIED_PU: f64 = 0.85;

/// A row of the table.
struct Row {
    way: String,
    direction: String,
    home: String,
    drill: String,
    list: String,
}

fn rows() -> Vec<Row> {
    let lines = TABLE.lines().filter(|l| l.starts_with("| "));
    let cells = lines.map(|l| {
        let cells = l.trim_matches('|').split('|');
        cells.map(|c| c.trim().to_owned()).collect::<Vec<_>>()
    });
    // The first two are the heading and the line under it.
    let rows = cells.skip(2).map(|c| {
        let [way, direction, home, drill, list] = <[String; 5]>::try_from(c).unwrap();
        Row {
            way,
            direction,
            home,
            drill,
            list,
        }
    });
    rows.collect()
}

fn library() -> Library {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    library
}

/// A list's heading and text.
fn list(name: &str) -> Option<(Heading, &'static str)> {
    let end = format!("/{name}.actions");
    let (path, text) = shipped::LISTS
        .iter()
        .find(|(path, _)| path.ends_with(&end))?;
    let heading = read_heading(Source { file: path, text }).unwrap()?;
    Some((heading, text))
}

/// Whether a moment is the learner's move of a control to a position.
fn is_set(moment: &Moment, control: ControlId, position: PositionId) -> bool {
    moment.what == What::Did(Action::Set(control, position))
}

/// The moment at which the equipment of a way was last moved in a direction, as the trace has it.
fn moved_at(drill: &Drill, way: Way, direction: Direction) -> Option<usize> {
    let site = drill.site();
    let moments = &drill.trace().moments;
    let wanted = wanted(site, way, direction);
    let stands = |m: &Moment, (control, position): (ControlId, PositionId)| {
        m.positions.get(control) == position
    };
    (1..moments.len()).rev().find(|at| {
        let (before, now) = (&moments[at - 1], &moments[*at]);
        wanted.iter().any(|w| match way {
            Way::Standby => !stands(before, *w) && stands(now, *w),
            Way::ManualSwitch
            | Way::Interlock
            | Way::ReadyPanel
            | Way::Cords
            | Way::Subpanel
            | Way::Line
            | Way::Other => is_set(now, w.0, w.1) && apart(site, now),
        })
    })
}

/// Whether main and generator breaker are not both on.
fn apart(site: &Site, moment: &Moment) -> bool {
    let on = |control| site.stands(&moment.positions, control, "on");
    let both = |b: outage_drill::site::Backfeed| on(b.breaker) && on(site.panel.main);
    let mut pairs = site.subpanels.iter().filter_map(|s| s.pair);
    !site.panel.backfeed.is_some_and(both) && !pairs.any(|p| on(p.utility) && on(p.generator))
}

/// Controls of a way with the positions that are a move in this direction.
fn wanted(site: &Site, way: Way, direction: Direction) -> Vec<(ControlId, PositionId)> {
    let out = direction == Direction::Out;
    let position = |control: ControlId, name: &str| {
        let position = site.control(control)?.position(name)?;
        Some((control, position))
    };
    let handles = |automatic: bool, moves: fn(Moved) -> bool| {
        let handles = site
            .transfers
            .iter()
            .filter(|t| t.automatic == automatic && moves(t.load));
        let to = if out { "generator" } else { "utility" };
        handles.filter_map(|t| position(t.handle, to)).collect()
    };
    match way {
        Way::ManualSwitch => handles(false, |m| !matches!(m, Moved::Subpanel(_))),
        Way::Subpanel => handles(false, |m| matches!(m, Moved::Subpanel(_))),
        Way::Standby => handles(true, |_| true),
        Way::ReadyPanel => {
            let pairs = site.subpanels.iter().filter_map(|s| s.pair);
            let held = pairs.filter(|p| p.interlock.blocks());
            let side = held.map(|p| if out { p.generator } else { p.utility });
            side.filter_map(|c| position(c, "on")).collect()
        }
        Way::Interlock => {
            let guarded = site.panel.backfeed.filter(|b| b.interlock.blocks());
            let control = guarded.map(|b| if out { b.breaker } else { site.panel.main });
            control
                .and_then(|c| position(c, "on"))
                .into_iter()
                .collect()
        }
        Way::Cords => {
            let plugs = site.appliances.iter().filter_map(|a| match &a.plug {
                Plug::Cord {
                    control,
                    wall,
                    cords,
                    ..
                } => Some((*control, *wall, cords)),
                Plug::Wired => None,
            });
            let spots = plugs.flat_map(|(control, wall, cords)| {
                let to: Vec<PositionId> = if out {
                    cords.iter().map(|(_, at)| *at).collect()
                } else {
                    vec![wall]
                };
                to.into_iter().map(move |at| (control, at))
            });
            spots.collect()
        }
        Way::Line | Way::Other => Vec::new(),
    }
}

/// Whether some appliance was supplied after a moment: out of the utility's reach, or by it at the end with the set out of the way.
fn supplied_after(drill: &Drill, at: usize, direction: Direction) -> bool {
    let site = drill.site();
    let supplied =
        |m: &Moment| (0..site.appliances.len()).any(|i| m.readings.appliance(i).pu >= SUPPLIED_PU);
    let open = |m: &Moment| site.stands(&m.positions, site.line.feeder, "open");
    let mut after = drill.trace().moments.iter().skip(at);
    match direction {
        Direction::Out => after.any(|m| open(m) && supplied(m)),
        Direction::Back => after
            .next_back()
            .is_some_and(|m| !open(m) && supplied(m) && !m.readings.generator.tied),
    }
}

#[test]
fn each_row_is_what_its_list_does() {
    let library = library();
    for row in rows() {
        let say = format!("{}, {}, {}", row.way, row.direction, row.drill);
        let scenario = library
            .scenario(&row.drill)
            .unwrap_or_else(|| panic!("{say}: no drill"));
        let way = SOUND_WAYS.into_iter().find(|w| w.name() == row.way);
        let way = way.unwrap_or_else(|| panic!("{say}: no way"));
        let direction = match row.direction.as_str() {
            "out" => Direction::Out,
            "back" => Direction::Back,
            other => panic!("{say}: {other}"),
        };
        assert_eq!(scenario.site.name, row.home, "{say}");
        assert_eq!(scenario.course.way, way, "{say}");
        assert!(scenario.course.directions.contains(&direction), "{say}");
        let (heading, text) = list(&row.list).unwrap_or_else(|| panic!("{say}: {}", row.list));
        assert!(heading.passes && heading.drill == row.drill, "{say}");
        let scenario = &heading.scenarios(&library).unwrap()[0];
        let played = play_text(scenario, heading.seeds[0], text);
        assert!(played.verdict.passed, "{say}");
        let at = moved_at(&played.drill, way, direction);
        let at = at.unwrap_or_else(|| panic!("{say}: its equipment is not moved"));
        assert!(
            supplied_after(&played.drill, at, direction),
            "{say}: nothing is supplied so"
        );
    }
}

#[test]
fn no_drill_says_of_itself_what_the_table_does_not_show() {
    let told: BTreeSet<(String, String)> =
        rows().into_iter().map(|r| (r.drill, r.direction)).collect();
    let mut missing = Vec::new();
    for scenario in library().scenarios {
        if !SOUND_WAYS.contains(&scenario.course.way) {
            continue;
        }
        for direction in &scenario.course.directions {
            let word = match direction {
                Direction::Out => "out",
                Direction::Back => "back",
            };
            let row = (scenario.name.clone(), word.to_owned());
            missing.extend((!told.contains(&row)).then_some(row));
        }
    }
    assert!(missing.is_empty(), "{missing:?}");
}

#[test]
fn each_way_is_worked_out_and_back_at_two_homes_or_more() {
    let mut homes: BTreeMap<(String, String), BTreeSet<String>> = BTreeMap::new();
    for row in rows() {
        homes
            .entry((row.way, row.direction))
            .or_default()
            .insert(row.home);
    }
    for way in SOUND_WAYS {
        for direction in ["out", "back"] {
            let found = homes.get(&(way.name().to_owned(), direction.to_owned()));
            let n = found.map_or(0, BTreeSet::len);
            assert!(n >= 2, "{} {direction}: {found:?}", way.name());
        }
    }
}

#[test]
fn each_outcome_is_taught_by_two_drills_or_more() {
    let library = library();
    for outcome in OUTCOMES {
        let taught = library
            .scenarios
            .iter()
            .filter(|s| s.course.teaches.contains(&outcome));
        let names: Vec<&str> = taught.map(|s| s.name.as_str()).collect();
        assert!(names.len() >= 2, "{outcome:?}: {names:?}");
    }
}

#[test]
fn each_track_goes_from_a_first_look_to_an_assessment() {
    let library = library();
    for track in TRACKS {
        let drills = library
            .scenarios
            .iter()
            .filter(|s| s.course.tracks.contains(&track));
        let levels: BTreeSet<Level> = drills.map(|s| s.course.level).collect();
        for level in LEVELS.into_iter().filter(|l| *l != Level::Expert) {
            assert!(levels.contains(&level), "{}: {level:?}", track.name());
        }
    }
}
