//! Power that was wanted, what was in store and what was kept waiting are told by what the drill computed, over all lists of `tests/drills`.
//!
//! What is told as open stands open, what is told to have run out adds up, and no way that nothing guards is told as one that power should take.

use std::collections::BTreeSet;

use outage_drill::apparatus::generator::{EXHAUST_COOL_C, exhaust_c};
use outage_drill::drill::{Drill, Moment};
use outage_drill::explain::{Explanation, Stage, explain};
use outage_drill::marking::{Finding, Rule, SUPPLIED_PU};
use outage_drill::site::{Control, ControlId, Demand, FarEnd, Kind, Plug, Supply};
use outage_drill::units::DrillTime;
use outage_drill::words::{Arg, Unit, name_of};

use crate::told_advice::{all, one, say, told, word};

/// Stages that tell of a contact that holds energy back.
const OPEN: [&str; 2] = ["stage-open", "stage-unplugged"];

/// Stages that a way ends with, where power was wanted.
const WANTED: [&str; 3] = ["stage-gets", "stage-came", "stage-house-then"];

/// Whether a finding about power that was wanted is told as it has to be: from a source to what it gets, or not at all where no energy is in it.
pub(crate) fn holds(drill: &Drill, finding: &Finding, ids: &[&str]) -> bool {
    if finding.rule == Rule::NotRestored {
        // A handle outside the network, or work that ended with harm.
        return ids.is_empty() || ids.len() >= 2;
    }
    // Before the outage, and in the instant of it, nothing is cut.
    let all = drill.site().appliances.iter().enumerate();
    let fed = all.filter(|(_, a)| {
        let said = Arg::Said(Box::new(name_of(&a.name)));
        finding.evidence.contains(&("appliance", said))
    });
    let pu = |index: usize| shown(drill, finding).readings.appliance(index).pu;
    let fed = fed.map(|(index, _)| pu(index)).any(|pu| pu >= SUPPLIED_PU);
    let ends = ids.last().is_some_and(|id| WANTED.contains(id));
    if fed {
        ids.is_empty()
    } else {
        ends && ids.len() >= 2
    }
}

/// Every finding of these rules, explained.
fn each(rules: &[Rule]) -> Vec<(&'static str, &'static Drill, &'static Finding, Explanation)> {
    let found = all().flat_map(|(name, drill, findings)| {
        let own = findings.iter().filter(|f| rules.contains(&f.rule));
        own.map(move |f| (name, drill, f, explain(drill, f)))
    });
    found.collect()
}

fn number(stage: &Stage, wanted: &str, unit: Unit) -> Option<f64> {
    stage.text.args.iter().find_map(|(name, arg)| {
        let Arg::Quantity(number, of) = arg else {
            return None;
        };
        (*name == wanted && *of == unit).then_some(*number)
    })
}

fn by_id<'a>(told: &'a Explanation, id: &str) -> Option<&'a Stage> {
    told.path.iter().find(|s| s.text.id == id)
}

/// The moment that a finding's way shows.
fn shown<'a>(drill: &'a Drill, finding: &Finding) -> &'a Moment {
    &drill.trace().moments[finding.moment]
}

/// How an appliance is told to get its volts.
fn how(stage: &Stage) -> Option<&str> {
    stage.text.args.iter().find_map(|(name, arg)| {
        let Arg::Verbatim(word) = arg else {
            return None;
        };
        (*name == "how").then_some(word.as_str())
    })
}

/// Whether an appliance's plug is in the wall outlet, and that is dead.
fn gets_from_the_wall(drill: &Drill, finding: &Finding, index: usize) -> bool {
    let moment = shown(drill, finding);
    let Plug::Cord { control, wall, .. } = &drill.site().appliances[index].plug else {
        return false;
    };
    let dead = moment.readings.appliance(index).pu < SUPPLIED_PU;
    moment.positions.get(*control) == *wall && dead
}

#[test]
fn what_is_told_as_open_or_unplugged_stands_so_at_that_moment() {
    let mut seen = 0;
    let rules = [Rule::GoalLate, Rule::NotRestored, Rule::NotBack, Rule::Lost];
    for (name, drill, finding, told) in each(&rules) {
        let site = drill.site();
        let moment = shown(drill, finding);
        for stage in told
            .path
            .iter()
            .filter(|s| OPEN.contains(&s.text.id.as_str()))
        {
            let stands = |id: ControlId| site.position_name(&moment.positions, id);
            let cord = site.cords.iter().find(|c| c.name == stage.at);
            let ends = cord.map(|c| [Some(c.near), c.far.control()]);
            let ends = ends.into_iter().flatten().flatten();
            let own = site.control_id(&stage.at).into_iter();
            let transfers = site.transfers.iter().filter(|t| t.name == stage.at);
            let handles: Vec<ControlId> =
                ends.chain(own).chain(transfers.map(|t| t.handle)).collect();
            // A broken span has no handle.
            if handles.is_empty() && stage.at.starts_with("span-") {
                continue;
            }
            let closed = ["on", "closed", "set", "whole"];
            let open = handles.iter().any(|id| !closed.contains(&stands(*id)));
            assert!(open, "{name}: {:?} is told open: {handles:?}", stage.at);
            seen += 1;
        }
    }
    assert!(seen > 20, "{seen}");
}

#[test]
fn what_gets_no_power_is_told_with_the_volts_that_it_reads_and_an_open_contact() {
    let mut seen = 0;
    for (name, drill, finding, told) in each(&[Rule::GoalLate]) {
        let Some(gets) = by_id(&told, "stage-gets") else {
            continue;
        };
        let site = drill.site();
        let index = site.appliance_index(&gets.at).unwrap();
        let reading = shown(drill, finding).readings.appliance(index);
        assert_eq!(number(gets, "volts", Unit::Volts), Some(reading.volts));
        let open = told.path.iter().any(|s| OPEN.contains(&s.text.id.as_str()));
        let still = ["stage-generator-still", "stage-generator-stalled"];
        let still = still.iter().any(|id| by_id(&told, id).is_some());
        let low = gets
            .text
            .args
            .contains(&("how", Arg::Verbatim("low".to_owned())));
        let unplugged = say(&gets.text).contains("nowhere");
        // Its plug is at the wall, and the way leads to a cord.
        let elsewhere = how(gets) == Some("elsewhere") && gets_from_the_wall(drill, finding, index);
        assert!(
            open || still || low || unplugged || elsewhere,
            "{name}: {told:#?}"
        );
        seen += 1;
    }
    assert!(seen > 10, "{seen}");
}

#[test]
fn a_way_that_nothing_guards_is_never_told_as_one_that_power_should_take() {
    let mut seen = BTreeSet::new();
    for (name, drill, _, told) in each(&[Rule::GoalLate, Rule::Lost]) {
        let site = drill.site();
        let bare = site.cords.iter();
        let bare = bare.filter(|c| matches!(c.far, FarEnd::Blades(..) | FarEnd::Strip(_)));
        let pins = site.backfed().filter(|(_, held)| !held.blocks());
        let pins = pins.filter_map(|(i, _)| site.inlets.get(i));
        let breakers = site.panel.backfeed.iter().filter(|b| !b.interlock.blocks());
        let breakers = breakers.filter_map(|b| site.control(b.breaker));
        let unsafe_ways: Vec<&str> = bare
            .map(|c| c.name.as_str())
            .chain(pins.map(|i| i.name.as_str()))
            .chain(breakers.map(|c| c.name.as_str()))
            .collect();
        for stage in &told.path {
            assert!(
                !unsafe_ways.contains(&stage.at.as_str()),
                "{name}: {stage:?}"
            );
        }
        seen.extend(unsafe_ways.into_iter().map(str::to_owned));
    }
    assert!(seen.len() > 1, "no list has such a way: {seen:?}");
}

#[test]
fn a_share_that_was_gone_and_the_rest_that_lasted_are_the_whole_time_without_power() {
    let mut seen = 0;
    for (name, drill, finding, told) in each(&[Rule::Lost]) {
        let goes = by_id(&told, "stage-can-wait").unwrap();
        let share = number(goes, "share", Unit::Percent).unwrap() / 100.0;
        let site = drill.site();
        let index = site.appliance_index(&goes.at).unwrap();
        let Demand::Reservoir(store) = &site.appliances[index].demand else {
            panic!("{name}: nothing in store");
        };
        let level = |m: &Moment| m.conditions.appliances[index].level;
        // A crossing is computed to the whole millisecond.
        let grain = store.rise_per_h / 3_600_000.0;
        let past = level(shown(drill, finding)) - 1.0;
        assert!((-1e-9..=grain + 1e-9).contains(&past), "{name}: {past}");
        let began = drill.trace().moments.iter();
        let before = began.take_while(|m| m.at <= finding.at);
        let began = before.filter(|m| (level(m) - share).abs() < 1e-9).last();
        let began = began.unwrap_or_else(|| panic!("{name}: {share}"));
        let rest_h = finding.at.since(began.at).seconds() / 3600.0;
        let all = share + rest_h * store.rise_per_h;
        assert!((all - 1.0).abs() < 1e-3, "{name}: {all}");
        let lasted = Arg::lasting(finding.at.since(began.at));
        let rest = by_id(&told, "stage-rest-lasted").unwrap();
        assert!(
            rest.text.args.contains(&("time", lasted)),
            "{name}: {rest:?}"
        );
        seen += 1;
    }
    assert!(seen > 4, "{seen}");
}

#[test]
fn fuel_that_was_there_is_what_the_engine_burned_at_the_loads_that_are_told() {
    let mut seen = 0;
    for (name, drill, finding, told) in each(&[Rule::RanDry]) {
        let dark = told.path.last().unwrap();
        assert_eq!(dark.text.id, "stage-went-dark", "{name}");
        let Some(tank) = by_id(&told, "stage-tank") else {
            assert!(by_id(&told, "stage-oil").is_some(), "{name}");
            continue;
        };
        let held = number(tank, "held", Unit::Gallons).unwrap();
        let burned = by_id(&told, "stage-burned").unwrap();
        let rate = number(burned, "rate", Unit::Gallons).unwrap();
        let mean_w = number(burned, "watts", Unit::Watts).unwrap();
        assert!(
            held > 0.0 && held <= drill.site().generator.spec.tank_gal,
            "{name}"
        );
        // A line through no load and full load: the mean of what is burned is what is burned at the mean.
        let spec = drill.site().generator.spec;
        let at_mean = spec.fuel_gal_per_h(mean_w);
        assert!(
            (rate - at_mean).abs() < 0.02 * at_mean,
            "{name}: {rate}, {at_mean}"
        );
        assert!(shown(drill, finding).conditions.fuel_gal <= 0.0, "{name}");
        seen += 1;
    }
    assert!(seen > 1, "{seen}");
}

#[test]
fn a_muffler_is_told_as_hot_as_it_is_and_for_as_long_as_it_is_so() {
    let mut seen = 0;
    for (name, drill, finding, told) in each(&[Rule::NoCoolDown]) {
        let muffler = by_id(&told, "stage-muffler").unwrap();
        let surface = number(muffler, "surface", Unit::Celsius);
        assert_eq!(surface, Some(exhaust_c(0.0)), "{name}");
        let cools = by_id(&told, "stage-muffler-cools").unwrap();
        let limit = number(cools, "cooled", Unit::Celsius);
        assert_eq!(limit, Some(EXHAUST_COOL_C));
        let told_s = (1..3600).find(|s| exhaust_c(f64::from(*s)) <= EXHAUST_COOL_C);
        let whole = DrillTime::from_secs(u64::try_from(told_s.unwrap() - 1).unwrap());
        assert!(
            cools.text.args.contains(&("hot", Arg::lasting(whole))),
            "{cools:?}"
        );
        let load = by_id(&told, "stage-last-load").unwrap();
        let watts = number(load, "watts", Unit::Watts).unwrap();
        let before = &drill.trace().moments[..finding.moment];
        let last = before.iter().rfind(|m| m.readings.generator.watts > 1.0);
        let gave = last.map(|m| m.readings.generator.watts);
        assert_eq!(gave, Some(watts), "{name}");
        seen += 1;
    }
    assert!(seen > 3, "{seen}");
}

#[test]
fn a_start_under_hands_is_told_from_what_asked_for_it_by_the_battery_to_the_hands() {
    let caught = told(
        "hands-off",
        "standby-service-hands-in",
        Rule::CaughtByEngine,
    );
    let ids: Vec<&str> = caught.path.iter().map(|s| s.text.id.as_str()).collect();
    assert_eq!(ids.first(), Some(&"stage-start-asked"));
    assert_eq!(ids.last(), Some(&"stage-caught"));
    assert!(say(&by_id(&caught, "stage-starter-battery").unwrap().text).contains("can turn"));
    for (name, drill, finding, told) in each(&[Rule::NotLockedOut]) {
        let automatic = drill.site().generator.machine.automatic.unwrap();
        let moment = shown(drill, finding);
        let lock_out = automatic.lock_out(&moment.positions, drill.site().generator.output);
        let said = |id: &str| say(&by_id(&told, id).unwrap().text);
        let off = said("stage-controller").contains("is off");
        assert_eq!(off, lock_out.controller_off, "{name}");
        let off = said("stage-starter-battery").contains("disconnected");
        assert_eq!(off, lock_out.battery_off, "{name}");
        let off = said("stage-set-breaker").contains("is off");
        assert_eq!(off, lock_out.breaker_open, "{name}");
    }
}

#[test]
fn vapor_of_a_can_is_as_rich_as_the_times_that_are_told_and_what_burns_say() {
    let mut seen = 0;
    for (name, _, finding, told) in each(&[Rule::FuelIndoors]) {
        let air = by_id(&told, "stage-floor-air").unwrap();
        let mix = number(air, "mix", Unit::Percent).unwrap();
        let lit = by_id(&told, "stage-can-lit").unwrap();
        let burns = number(lit, "burns", Unit::Percent).unwrap();
        let times = finding.evidence.iter().find(|(name, _)| *name == "times");
        let Some((_, Arg::Quantity(times, _))) = times else {
            panic!("{name}: {finding:?}");
        };
        assert!((mix - times * burns).abs() < 1e-9, "{name}: {mix}");
        let flame = word(finding, "lights") == Some("flame");
        assert_eq!(say(&lit.text).contains("flame"), flame, "{name}");
        seen += 1;
    }
    assert!(seen > 1, "{seen}");
}

#[test]
fn a_return_that_nobody_had_looked_for_is_told_by_what_the_street_then_gave() {
    for actions in ["collision-main-closed", "collision-undone"] {
        let (drill, findings) = one(actions);
        let blind = findings
            .iter()
            .find(|f| f.rule == Rule::BlindReturn)
            .unwrap();
        let told = explain(drill, blind);
        assert_eq!(told.path[0].text.id, "stage-utility", "{actions}");
        let last = told.path.last().unwrap();
        assert_eq!(last.text.id, "stage-blind");
        let stands = (
            &shown(drill, blind).positions,
            &*shown(drill, blind).readings,
        );
        let way = drill
            .plant()
            .way(stands, Supply::Utility, "bus", &|_| false);
        assert_eq!(
            way.is_some(),
            by_id(&told, "stage-open").is_none(),
            "{actions}"
        );
    }
}

#[test]
fn of_a_handle_that_was_left_only_one_outside_the_network_is_told_without_a_way() {
    let mut seen = 0;
    for (name, drill, finding, told) in each(&[Rule::NotRestored]) {
        let site = drill.site();
        let mut controls = site.controls.iter();
        let own = controls.find(|c| {
            let said = Arg::Said(Box::new(name_of(&c.name)));
            finding.evidence.contains(&("control", said))
        });
        let Some(control) = own.filter(|c| matches!(c.kind, Kind::Breaker | Kind::Main)) else {
            continue;
        };
        let last = told
            .path
            .last()
            .unwrap_or_else(|| panic!("{name}: {}", control.name));
        assert_eq!(last.at, control.name, "{name}");
        seen += 1;
    }
    assert!(seen > 5, "{seen}");
}

/// The control that a finding about what was left names.
fn left<'a>(drill: &'a Drill, finding: &Finding) -> Option<(ControlId, &'a Control)> {
    let site = drill.site();
    let mut controls = site.controls.iter();
    let own = controls.find(|c| {
        let said = Arg::Said(Box::new(name_of(&c.name)));
        finding.evidence.contains(&("control", said))
    })?;
    Some((site.control_id(&own.name)?, own))
}

#[test]
fn what_was_left_under_volts_is_told_from_what_feeds_it_and_with_nothing_that_holds_them_back() {
    let mut seen = BTreeSet::new();
    for (name, drill, finding, told) in each(&[Rule::NotRestored]) {
        let Some((id, _)) = left(drill, finding) else {
            continue;
        };
        let mut cords = drill.site().cords.iter();
        let Some(cord) = cords.find(|c| c.near == id || c.far.control() == Some(id)) else {
            continue;
        };
        let end = format!("{}-far-end", cord.name);
        let reading = shown(drill, finding).readings.point(&end);
        let (true, Some(first)) = (reading.volts >= 1.0, told.path.first()) else {
            continue;
        };
        let feeds = match first.text.id.as_str() {
            "stage-utility" => reading.fed.utility,
            "stage-lent" => reading.fed.lent,
            "stage-generator-still" | "stage-generator-stalled" => false,
            id => id.starts_with("stage-generator") && reading.fed.generator,
        };
        assert!(feeds, "{name}: {told:#?}");
        assert!(by_id(&told, "stage-open").is_none(), "{name}: {told:#?}");
        seen.insert(first.text.id.clone());
    }
    assert!(seen.contains("stage-lent") && seen.len() > 1, "{seen:?}");
}

#[test]
fn a_handle_that_brings_the_utility_is_told_from_the_utilitys_line() {
    let mut seen = BTreeSet::new();
    for (name, drill, finding, told) in each(&[Rule::NotRestored]) {
        let Some((id, control)) = left(drill, finding) else {
            continue;
        };
        let mut pairs = drill.site().subpanels.iter().filter_map(|s| s.pair);
        let brings = control.kind == Kind::Main || pairs.any(|p| p.utility == id);
        let Some(first) = told.path.first().filter(|_| brings) else {
            continue;
        };
        assert_eq!(first.text.id, "stage-utility", "{name}");
        seen.insert(control.name.as_str());
    }
    assert!(seen.contains("chosen-utility"), "{seen:?}");
    assert!(seen.contains("main"), "{seen:?}");
}

#[test]
fn while_the_street_is_dark_a_plug_that_a_cord_could_feed_is_told_by_that_cord() {
    let mut seen = 0;
    for (name, drill, finding, told) in each(&[Rule::GoalLate]) {
        let gets = by_id(&told, "stage-gets").filter(|s| how(s) == Some("elsewhere"));
        let Some(gets) = gets else {
            continue;
        };
        let index = drill.site().appliance_index(&gets.at).unwrap();
        let street = shown(drill, finding).readings.point("service").fed.utility;
        assert!(!street, "{name}");
        assert!(by_id(&told, "stage-utility").is_none(), "{name}: {told:#?}");
        assert!(gets_from_the_wall(drill, finding, index), "{name}");
        seen += 1;
    }
    assert!(seen > 1, "{seen}");
    let freezer = told(
        "neighbor-helps",
        "neighbor-helps-half-volts",
        Rule::GoalLate,
    );
    let first = freezer.path.first().map(|s| s.text.id.as_str());
    assert!(first.is_some_and(|id| id.starts_with("stage-generator")));
    assert!(by_id(&freezer, "stage-generator-still").is_none());
}

#[test]
fn a_part_of_the_house_that_runs_on_its_own_source_is_told_beside_the_main_panel() {
    let mut seen = 0;
    for (name, drill, finding, told) in each(&[Rule::NotBack]) {
        let Some(house) = by_id(&told, "stage-house-then") else {
            continue;
        };
        let readings = &shown(drill, finding).readings;
        let subpanels = drill.site().subpanels.iter();
        let mut buses = subpanels.map(|s| readings.point(&format!("bus-{}", s.name)));
        let part = buses.any(|bus| bus.fed.customer());
        let main = readings.point("bus").fed.customer();
        let crew = drill.site().line_work.is_some();
        let said = say(&house.text).contains("smaller panel");
        assert_eq!(said, part && !main && !crew, "{name}: {house:?}");
        seen += usize::from(said);
    }
    assert!(seen > 0, "no list has such a part");
}

#[test]
fn a_house_whose_wires_only_the_street_may_feed_is_told_that_and_not_the_volts_it_was_not_to_have()
{
    let mut kinds = BTreeSet::new();
    for (name, drill, findings) in all() {
        let site = drill.site();
        // Proper equipment for a source of its own: an inlet behind a lock or a transfer switch, a battery, a set that is built in.
        let mut blocked = site.backfed().filter(|(_, held)| held.blocks());
        let proper = blocked.next().is_some()
            || !site.transfers.is_empty()
            || site.battery.is_some()
            || site.generator.machine.automatic.is_some();
        for finding in findings.iter().filter(|f| f.rule == Rule::NotBack) {
            let told = explain(drill, finding);
            let last = told.path.last().unwrap();
            let said = say(&last.text);
            let street = said.contains("nothing else may feed");
            let fed = |word: &str| ("fed", Arg::Verbatim(word.to_owned()));
            let dark = last.text.args.contains(&fed("dark"));
            assert!(!(street && proper), "{name}: {said}");
            assert!(!dark || proper, "{name}: {said}");
            kinds.insert((street, dark));
        }
    }
    assert!(
        kinds.contains(&(true, false)) && kinds.contains(&(false, true)),
        "{kinds:?}"
    );
}
