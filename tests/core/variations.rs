//! Variations: which drill a seed gives, that every one of them is met and met as often as the others, and that each is a drill that stands.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;
use std::sync::Arc;

use outage_drill::drill::Drill;
use outage_drill::file::{Diagnostic, Library, Source, read_heading, read_run, write_run};
use outage_drill::scenario::variation::{
    AS_WRITTEN, MOST_VARIANTS, name, named, variant, variants,
};
use outage_drill::scenario::{Happening, Scenario};
use outage_drill::shipped;
use outage_drill::site::{Demand, Interlock};

use crate::playing::every_bit;

/// Seeds among which every variant has to be met.
const SEEDS: std::ops::RangeInclusive<u64> = 1..=200;

/// Two Gables with two dimensions of changes; `more` stands among them.
fn library(more: &str) -> (Library, Vec<Diagnostic>) {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios");
    let folder = tempfile::tempdir().unwrap();
    for part in ["sites", "drills"] {
        fs::create_dir(folder.path().join(part)).unwrap();
    }
    let copy = |file: &str| fs::read_to_string(root.join(file)).unwrap();
    let site = copy("sites/two-gables.ron");
    fs::write(folder.path().join("sites/two-gables.ron"), site).unwrap();
    let drill = copy("drills/there-and-back.ron");
    let drill = match drill.find("  variations:") {
        Some(at) => drill[..at].to_owned(),
        None => drill.trim_end().trim_end_matches(')').to_owned(),
    };
    fs::write(
        folder.path().join("drills/varied.ron"),
        format!("{drill}\n{more}\n)\n"),
    )
    .unwrap();
    Library::load(folder.path())
}

const TWO_DIMENSIONS: &str = r#"
  variations: [
    (name: "early", story_shift: [(what: UtilityReturns, minutes: -2)]),
    (name: "flicker", story_add: [
      (minute: 38, what: UtilityFails), (minute: 40, what: UtilityReturns),
    ]),
    (name: "loose", hidden: true, interlock: Misfitted, goal: (safe_stop: true)),
    (name: "swapped", hidden: true, swapped: [("fridge", "washer")]),
    (name: "full-pit", levels: {"sump": 0.6}, weather: (ground: Wet, outdoor_celsius: 2.0)),
  ],
  draw: [["early", "flicker"], ["loose", "swapped", "full-pit"]],
"#;

fn varied() -> Arc<Scenario> {
    let (library, faults) = library(TWO_DIMENSIONS);
    assert!(faults.is_empty(), "{faults:?}");
    Arc::clone(&library.scenarios[0])
}

/// How often each variant comes in some seeds.
fn met(scenario: &Arc<Scenario>, seeds: impl Iterator<Item = u64>) -> BTreeMap<String, u32> {
    let mut met = BTreeMap::new();
    for seed in seeds {
        *met.entry(name(&variant(scenario, seed))).or_default() += 1;
    }
    met
}

#[test]
fn a_seed_gives_the_same_variant_everywhere() {
    let scenario = varied();
    let names: Vec<String> = (1..=8).map(|s| name(&variant(&scenario, s))).collect();
    assert_eq!(names, GOLDEN);
}

const GOLDEN: [&str; 8] = [
    "as-written",
    "flicker+full-pit",
    "loose",
    "as-written",
    "early+loose",
    "early+loose",
    "early+loose",
    "loose",
];

#[test]
fn seed_1_gives_the_drill_as_it_is_written() {
    let (shipped, _) = Library::shipped();
    let all = shipped
        .scenarios
        .iter()
        .chain([&varied()])
        .cloned()
        .collect::<Vec<_>>();
    for scenario in all {
        let first = variant(&scenario, 1);
        assert_eq!(name(&first), AS_WRITTEN);
        let bare = Scenario {
            variants: first.variants.clone(),
            ..scenario.as_ref().clone()
        };
        assert_eq!(*first, bare, "{}", scenario.name);
    }
}

#[test]
fn every_variant_is_met_soon_and_as_often_as_the_others() {
    let (shipped, _) = Library::shipped();
    for scenario in shipped.scenarios.iter().chain([&varied()]) {
        let n = variants(scenario).len();
        assert!(n <= MOST_VARIANTS, "{}", scenario.name);
        assert_eq!(met(scenario, SEEDS).len(), n, "{}", scenario.name);
        // Of n in many draws each comes about once in n: five standard deviations, and more than that is not chance.
        let draws = 4_000_u32;
        let share = 1.0 / f64::from(u32::try_from(n).unwrap());
        let wide = 5.0 * (f64::from(draws) * share * (1.0 - share)).sqrt();
        for (name, times) in met(scenario, 1..=u64::from(draws)) {
            let off = (f64::from(times) - f64::from(draws) * share).abs();
            assert!(off <= wide, "{}: {name} comes {times} times", scenario.name);
        }
    }
}

#[test]
fn a_change_changes_what_it_says_and_houses_that_are_equal_are_one() {
    let scenario = varied();
    let of = |name: &str| named(&scenario, name).unwrap();
    let plain = of(AS_WRITTEN);
    let sump = |s: &Scenario| {
        let index = s.site.appliance_index("sump").unwrap();
        match &s.site.appliances[index].demand {
            Demand::Reservoir(store) => store.start,
            Demand::Switch(_) => 0.0,
        }
    };
    assert!(Arc::ptr_eq(&plain.site, &of("early").site));
    assert!(of("early").story[4].at < plain.story[4].at);
    let story: Vec<Happening> = of("flicker").story.iter().map(|t| t.what).collect();
    assert_eq!(
        story[4..],
        [
            Happening::UtilityReturns,
            Happening::UtilityFails,
            Happening::UtilityReturns
        ]
    );
    let slide = |s: &Scenario| s.site.panel.backfeed.map(|b| b.interlock);
    assert_eq!(slide(&of("early+loose")), Some(Interlock::Misfitted));
    assert!(of("loose").goal.safe_stop && !plain.goal.safe_stop);
    let wet = of("flicker+full-pit");
    assert!(sump(&wet) > sump(&plain));
    assert!(wet.site.line.footing_ohm < plain.site.line.footing_ohm);
    assert!(wet.site.ambient_c < plain.site.ambient_c);
}

#[test]
fn a_breaker_of_a_wrong_directory_feeds_what_the_other_one_names() {
    let scenario = varied();
    let opened = |variant: &str, breaker: &str| {
        let scenario = named(&scenario, variant).unwrap();
        let mut drill = Drill::start(&scenario, 1).unwrap();
        let site = Arc::clone(&scenario.site);
        let line = format!("set {breaker} off");
        let points = &site.point_names();
        let action = outage_drill::drill::parse_line(&scenario, points, &line)
            .unwrap()
            .unwrap();
        drill.act(&action.action);
        let fridge = site.appliance_index("fridge").unwrap();
        drill.readings().appliance(fridge).pu > 0.5
    };
    assert!(!opened(AS_WRITTEN, "breaker-fridge"));
    assert!(opened("swapped", "breaker-fridge"));
    assert!(!opened("swapped", "breaker-washer"));
}

#[test]
fn a_stored_run_comes_back_as_the_variant_of_its_seed_to_the_bit() {
    let (library, _) = library(TWO_DIMENSIONS);
    let scenario = &library.scenarios[0];
    for seed in 1..=12 {
        let mut drill = Drill::start(scenario, seed).unwrap();
        drill.advance(outage_drill::units::DrillTime::from_secs(2_700));
        drill.end();
        let text = write_run(drill.run(), drill.scenario());
        let source = Source {
            file: "run",
            text: &text,
        };
        let again = read_run(source, &library)
            .unwrap()
            .replay(scenario)
            .unwrap();
        assert_eq!(again.scenario(), &variant(scenario, seed));
        let bits = |d: &Drill| d.trace().moments.iter().map(every_bit).collect::<Vec<_>>();
        assert_eq!(bits(&drill), bits(&again), "seed {seed}");
    }
}

#[test]
fn faults_of_variations_are_told_in_one_pass_and_once_each() {
    let (_, faults) = library(
        r#"
  variations: [
    (name: "as-written"),
    (name: "wrong", cords: ["no-cord"]),
    (name: "warm", weather: (outdoor_celsius: 90.0), levels: {"television": 0.2}),
    (name: "crossed", swapped: [("fridge", "dryer"), ("fridge", "nothing")]),
  ],
"#,
    );
    let ids: Vec<&str> = faults.iter().map(|f| f.message.id.as_str()).collect();
    assert_eq!(ids, ["error-variation-taken"]);
    let (_, faults) = library(
        r#"
  variations: [
    (name: "wrong", cords: ["no-cord"]),
    (name: "warm", weather: (outdoor_celsius: 90.0), levels: {"television": 0.2}),
    (name: "crossed", swapped: [("fridge", "dryer"), ("fridge", "nothing")]),
  ],
  draw: [["wrong", "warm"], ["crossed"]],
"#,
    );
    let mut ids: Vec<&str> = faults.iter().map(|f| f.message.id.as_str()).collect();
    ids.sort_unstable();
    assert_eq!(
        ids,
        [
            "error-out-of-range",
            "error-swapped",
            "error-unknown-name",
            "error-unknown-name",
            "error-unknown-name"
        ]
    );
    let (_, faults) =
        library("  variations: [(name: \"a\"), (name: \"b\")],\n  draw: [[\"a\", \"c\"]],");
    let ids: Vec<&str> = faults.iter().map(|f| f.message.id.as_str()).collect();
    assert_eq!(ids, ["error-variation-drawn", "error-unknown-name"]);
}

#[test]
fn every_variant_of_every_shipped_drill_is_passed_by_some_list() {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    let mut passed = BTreeSet::new();
    for (path, text) in shipped::LISTS {
        let heading = read_heading(Source { file: path, text }).unwrap();
        if let Some(heading) = heading.filter(|h| h.passes) {
            let names = heading.variations.into_iter();
            passed.extend(names.map(|name| (heading.drill.clone(), name)));
        }
    }
    let mut open = Vec::new();
    for scenario in &library.scenarios {
        let names = variants(scenario).into_iter().map(|v| name(&v));
        let own = names.map(|name| (scenario.name.clone(), name));
        open.extend(own.filter(|v| !passed.contains(v)));
    }
    assert!(open.is_empty(), "no list passes these: {open:?}");
}
