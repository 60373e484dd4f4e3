//! A broken wire that is joined by hand: found where its far end is live, not found where it is dead or at the volts of the work, and never led into by hints.
//!
//! Held to every drill of line work, with its wire broken and its story cut down to the other crew's leaving, and to every list of `tests/drills`.

use std::sync::Arc;

use outage_drill::drill::{Action, Drill, Moment, Outcome, What};
use outage_drill::explain::explain;
use outage_drill::file::{Library, Source, read_actions};
use outage_drill::marking::{Finding, Rule, mark};
use outage_drill::proof::{Advice, Guide};
use outage_drill::scenario::{Happening, Scenario};
use outage_drill::site::{At, Clamps, PositionId, Site};
use outage_drill::units::DrillTime;
use outage_drill::words::{Arg, REFERENCE, Words};

use crate::explained;
use crate::playing::{Played, list, play_text, shipped};

/// Every drill of line work, its wire broken, with no customer's set and no tie that closes; another crew leaves after a minute.
fn broken() -> Vec<Arc<Scenario>> {
    let (library, _) = Library::shipped();
    let lines = library.scenarios.iter().map(|s| shipped(&s.name));
    let lines = lines.filter(|s| s.site.line_work.is_some());
    let cut = |scenario: Arc<Scenario>| {
        let mut scenario = scenario.as_ref().clone();
        let line = &scenario.site.line;
        scenario.start.set(line.span_state, PositionId(1));
        let leaves = |what| what == Happening::SecondCrewClears;
        scenario.story.retain(|timed| leaves(timed.what));
        for timed in &mut scenario.story {
            (timed.at, timed.spread_s) = (DrillTime::from_secs(60), 0);
        }
        Arc::new(scenario)
    };
    lines.map(cut).collect()
}

/// A line that is worked by name.
struct Crew {
    drill: Drill,
}

impl Crew {
    fn at(scenario: &Arc<Scenario>) -> Self {
        let mut crew = Self {
            drill: Drill::start(scenario, 1).unwrap(),
        };
        crew.drill.act(&Action::Wait(DrillTime::from_secs(120)));
        let work = crew.site().line_work.clone().unwrap();
        for grounds in &work.grounds {
            if grounds.clamps(crew.drill.positions()) == Clamps::BothEnds {
                crew.clamp(grounds.pole, ["earth-end", "off"]);
            }
        }
        crew
    }

    fn site(&self) -> Arc<Site> {
        Arc::clone(&self.drill.scenario().site)
    }

    /// Brings a control into a position that nothing refuses.
    fn set(&mut self, control: &str, position: &str) {
        let id = self.site().control_id(control).unwrap();
        let to = self.site().control(id).unwrap().position(position).unwrap();
        if self.drill.positions().get(id) != to {
            let came = self.drill.act(&Action::Set(id, to));
            assert_eq!(came, Outcome::Done, "{control} {position}");
        }
    }

    fn clamp(&mut self, pole: usize, ends: [&str; 2]) {
        let pole = self.site().line.poles[pole].name.clone();
        for end in ends {
            self.set(&format!("grounds-{pole}"), end);
        }
    }

    fn ground(&mut self, pole: usize) {
        self.clamp(pole, ["earth-end", "both-ends"]);
    }

    /// Cuts the head off for all to see, or joins it; the head is on the far side of each shipped line.
    fn head(&mut self, live: bool) {
        let work = self.site().line_work.clone().unwrap();
        let head = work.breaks.iter().find(|b| matches!(b.at, At::Span(_)));
        let name = head.unwrap().name.clone();
        if live {
            self.set(&format!("tag-{name}"), "off");
            self.set(&name, "closed");
            self.set("feeder", "closed");
        } else {
            self.set("feeder", "open");
            self.set(&name, "open");
            self.set(&format!("jumper-{name}"), "absent");
            self.set(&format!("tag-{name}"), "on");
        }
    }

    fn join(mut self) -> Played {
        self.set("crew", "hands-on");
        self.set("broken-span", "whole");
        self.drill.end();
        let verdict = mark(self.drill.scenario(), self.drill.trace());
        Played {
            drill: self.drill,
            verdict,
        }
    }
}

/// What is found of the far end.
fn told(played: &Played) -> Vec<&Finding> {
    let findings = played.verdict.findings.iter();
    findings.filter(|f| f.rule == Rule::LiveEnd).collect()
}

fn arg<'a>(finding: &'a Finding, name: &str) -> &'a Arg {
    let found = finding.evidence.iter().find(|(own, _)| *own == name);
    &found.unwrap().1
}

fn volts(finding: &Finding) -> f64 {
    let Arg::Quantity(volts, _) = arg(finding, "volts") else {
        panic!("{finding:?}");
    };
    *volts
}

#[test]
fn in_every_drill_of_line_work_a_live_far_end_is_found_when_it_is_joined_and_a_dead_one_is_not() {
    let drills = broken();
    assert_eq!(drills.len(), 8);
    for scenario in &drills {
        let (name, line) = (&scenario.name, &scenario.site.line);
        let far = scenario.site.far_pole().unwrap();
        assert_eq!(far, line.spans[line.broken_span].from, "{name}");
        for (live, grounded) in [(true, true), (true, false), (false, true), (false, false)] {
            let mut crew = Crew::at(scenario);
            crew.head(live);
            if grounded {
                crew.ground(line.crew_pole);
            }
            let played = crew.join();
            let found = told(&played);
            assert_eq!(found.len(), usize::from(live), "{name} {live} {grounded}");
            for finding in found {
                assert!((7_000.0..7_300.0).contains(&volts(finding)), "{finding:?}");
                let pole = &line.poles[far].name;
                assert_eq!(finding.reaches.as_ref(), Some(pole), "{name}");
                assert!(finding.breach && !played.verdict.passed, "{name}");
            }
        }
    }
}

#[test]
fn a_far_end_that_is_grounded_with_the_work_is_none_even_while_a_fault_lifts_both() {
    let mut faults = 0;
    for scenario in &broken() {
        let line = &scenario.site.line;
        let far = scenario.site.far_pole().unwrap();
        let joined = |places: &[usize]| {
            let mut crew = Crew::at(scenario);
            crew.head(true);
            for pole in places {
                crew.ground(*pole);
            }
            crew.join()
        };
        let both = joined(&[far, line.crew_pole]);
        assert!(told(&both).is_empty(), "{}", scenario.name);
        let away = joined(&[far]);
        // Only welded contacts leave a fault standing; all else has opened, and the line is dead.
        let welded = scenario.site.line_work.as_ref().unwrap().head_contacts;
        let fault = scenario.start.get(welded) != PositionId(0);
        let found = told(&away);
        assert_eq!(found.len(), usize::from(fault), "{}", scenario.name);
        for finding in found {
            assert!(volts(finding) > 500.0, "{finding:?}");
            assert_eq!(arg(finding, "grounds"), &Arg::Count(1));
            faults += 1;
        }
    }
    assert_eq!(faults, 2);
}

/// Each joining of a wire in a run: the moment just before it, and when it was.
fn joinings(drill: &Drill) -> Vec<(&Moment, DrillTime)> {
    let span = drill.site().line.span_state;
    let joined = |m: &Moment| m.what == What::Did(Action::Set(span, PositionId(0)));
    let pairs = drill.trace().moments.windows(2);
    let own = pairs.filter(|p| joined(&p[1]));
    own.map(|p| (&p[0], p[1].at)).collect()
}

#[test]
fn in_every_list_the_first_joining_to_an_end_that_something_feeds_is_told_and_no_other() {
    let (mut live, mut dead) = (0, 0);
    for own in explained::all() {
        let drill = &own.played.drill;
        let Some(work) = drill.site().line_work.clone() else {
            assert!(told(&own.played).is_empty(), "{}", own.file);
            continue;
        };
        let far = drill.site().far_pole().unwrap();
        let name = &drill.site().line.poles[far].name;
        let (mut fed, mut unfed) = (Vec::new(), 0);
        for (before, at) in joinings(drill) {
            let there = work.clamps_at(far, &before.positions) == Clamps::BothEnds;
            let same = there && drill.site().in_zone(&before.positions);
            if before.readings.point(name).fed.any() && !same {
                fed.push(at);
            } else {
                unfed += 1;
            }
        }
        let told: Vec<DrillTime> = told(&own.played).iter().map(|f| f.at).collect();
        assert_eq!(told, fed[..fed.len().min(1)], "{}", own.file);
        live += fed.len();
        dead += unfed;
    }
    assert!(live > 1 && dead > 5, "{live} {dead}");
}

#[test]
fn the_way_to_a_live_end_leads_from_the_utility_to_the_gap_with_the_volts_before_the_joining() {
    for (actions, jumper) in [
        ("visible-break-one-word", "stage-jumper-besides"),
        ("visible-break-jumper-left", "stage-jumper"),
    ] {
        let (drill, finding) = explained::found("visible-break", actions, Rule::LiveEnd);
        assert_eq!(
            drill.trace().moments[finding.moment + 1].at,
            finding.at,
            "the moment before"
        );
        let told = explain(&drill, &finding);
        let ids: Vec<&str> = told.path.iter().map(|s| s.text.id.as_str()).collect();
        assert_eq!(ids[..3], ["stage-utility", "stage-welded", jumper]);
        assert_eq!(ids.last(), Some(&"stage-gap"), "{ids:?}");
        assert!(!ids.contains(&"stage-open"), "{ids:?}");
        let shown = told.path.iter().skip(3).map(|s| {
            let Some((_, Arg::Quantity(volts, _))) = s.value.args.first() else {
                panic!("{s:?}");
            };
            *volts
        });
        let shown: Vec<f64> = shown.collect();
        let stood = volts(&finding);
        assert!(stood > 7_000.0, "{stood}");
        let same = |v: &f64| (v - stood).abs() < 0.01 * stood;
        assert!(shown.iter().all(same), "{shown:?}");
    }
}

/// What is said of a list with more lines before its hands go on the line.
fn said_with(more: &str) -> String {
    let text = list("visible-break-one-word");
    let text = text.replace("set crew hands-on", &format!("{more}\nset crew hands-on"));
    let played = play_text(&shipped("visible-break"), 1, &text);
    let (library, _) = Library::shipped();
    let words = Words::new(REFERENCE).with(&library.words);
    let found = told(&played);
    let [finding] = found.as_slice() else {
        panic!("{found:?}");
    };
    let told = explain(&played.drill, finding);
    [told.what, told.now, told.instead]
        .map(|m| words.say(&m))
        .join(" ")
}

#[test]
fn it_is_told_whether_the_far_end_was_tested_and_what_would_have_been_right() {
    let said = said_with("");
    assert!(said.contains("Nobody had tested that end"), "{said}");
    assert!(said.contains("pole 2") && said.contains("No grounds hung there"));
    assert!(said.contains("Have the utility cut it off"), "{said}");
    assert!(said.contains("Test both ends") && said.contains("both sides of the gap"));
    let lit = said_with("test pole-2");
    assert!(lit.contains("had lit up there"), "{lit}");
    // Made for another line, it stays dark at these volts.
    let dark = said_with("set tester tall-detector\ntest pole-2");
    assert!(dark.contains("had stayed dark there"), "{dark}");
    let before_closing = said_with("test pole-2\nset cutout-pole-4 open\nset cutout-pole-4 closed");
    assert!(before_closing.contains("Nobody had tested that end"));
}

/// Follows the hints to their end; says how often they had the wire joined, and that its far end was dead each time.
fn joined_by_hints(mut drill: Drill) -> usize {
    let far = drill.site().far_pole().unwrap();
    let far = drill.site().line.poles[far].name.clone();
    let join = Action::Set(drill.site().line.span_state, PositionId(0));
    let mut joined = 0;
    let mut guide = Guide::new(&drill);
    for _ in 0..100 {
        let Advice::Steps(steps) = guide.advice() else {
            break;
        };
        let action = steps[0].action.clone();
        if action == join {
            let fed = drill.readings().point(&far).fed;
            assert!(!fed.any(), "{}: {fed:?}", drill.scenario().name);
            joined += 1;
        }
        drill.act(&action);
        guide.follow(&drill);
    }
    joined
}

/// A drill that has got as far as hands on the line in a list.
fn with_hands_on(scenario: &Arc<Scenario>, text: &str) -> Drill {
    let (before, _) = text.split_once("set broken-span whole").unwrap();
    let source = Source {
        file: "actions",
        text: before,
    };
    let mut drill = Drill::start(scenario, 1).unwrap();
    for line in read_actions(source, scenario).unwrap() {
        match line.at {
            Some(at) => drill.act_at(at, &line.action),
            None => drill.act(&line.action),
        };
    }
    drill
}

#[test]
fn hints_have_the_far_end_dead_before_they_have_the_wire_joined() {
    for actions in ["visible-break-one-word", "visible-break-jumper-left"] {
        let drill = with_hands_on(&shipped("visible-break"), &list(actions));
        assert_eq!(joined_by_hints(drill), 1, "{actions}");
    }
    for scenario in &broken() {
        let mut crew = Crew::at(scenario);
        crew.head(true);
        crew.ground(scenario.site.line.crew_pole);
        crew.set("crew", "hands-on");
        let asked = scenario.goal.at_end.iter();
        let span = scenario.site.line.span_state;
        let asked = asked.filter(|(control, _)| *control == span).count();
        assert_eq!(joined_by_hints(crew.drill), asked, "{}", scenario.name);
    }
}

#[test]
fn hints_have_a_customer_cut_off_who_feeds_the_far_end_alone() {
    let mut scenario = shipped("ground-order").as_ref().clone();
    let mut site = scenario.site.as_ref().clone();
    // The house with the set hangs beyond the gap.
    site.line.transformer_pole = site.far_pole().unwrap();
    let pole = site.line.poles[site.line.transformer_pole].name.clone();
    scenario.site = Arc::new(site);
    let scenario = Arc::new(scenario);
    let text = "wait 1m\nset tester low-range\ntest proving-source\ntest pole-3\ntest proving-source\n\
        set grounds-pole-3 earth-end\nset grounds-pole-3 both-ends\nset crew hands-on\nset broken-span whole\n";
    let drill = with_hands_on(&scenario, text);
    assert!(!drill.site().way_left(drill.positions()), "cut off");
    assert!(drill.readings().point(&pole).fed.customer(), "and live");
    assert_eq!(joined_by_hints(drill), 1);
    let played = play_text(&scenario, 1, text);
    let found = told(&played);
    assert_eq!(found.len(), 1);
    let told = explain(&played.drill, found[0]);
    assert_eq!(told.path[0].at, "generator", "{:?}", told.path);
    let said = Words::new(REFERENCE).say(&told.now);
    assert!(said.contains("Have the customer"), "{said}");
}
