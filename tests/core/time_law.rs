//! The time law: advancing by *a* and then by *b* gives the same bits as advancing by *a + b*, on whole runs cut at random.

use outage_drill::drill::Drill;
use outage_drill::file::{Source, read_actions};
use outage_drill::units::DrillTime;
use proptest::prelude::{ProptestConfig, prop, prop_assert_eq, proptest};

use crate::playing::{every_bit, list, shipped};

/// Plays a list, cutting every wait before an action at the points that `cuts` give, in milliseconds from one to the next.
fn played(list_name: &str, drill_name: &str, seed: u64, cuts: &[u64]) -> Drill {
    let scenario = shipped(drill_name);
    let text = list(list_name);
    let source = Source {
        file: list_name,
        text: &text,
    };
    let lines = read_actions(source, &scenario).unwrap();
    let mut drill = Drill::start(&scenario, seed).unwrap();
    let mut cuts = cuts.iter().cycle();
    for line in lines {
        let takes = outage_drill::drill::duration(&scenario.site, &line.action);
        let at = line.at.unwrap_or(drill.now() + takes).max(drill.now());
        for cut in cuts.by_ref() {
            let next = drill.now() + DrillTime::from_millis(*cut);
            if next >= at {
                break;
            }
            drill.advance(DrillTime::from_millis(*cut));
        }
        drill.act_at(at, &line.action);
    }
    let end = DrillTime::from_secs(50 * 60).min(scenario.ends_at);
    while let Some(cut) = cuts.next().filter(|_| drill.now() < end) {
        drill.advance(DrillTime::from_millis(*cut).min(end.since(drill.now())));
    }
    drill.end();
    drill
}

const LISTS: &[(&str, &str)] = &[
    ("slide-branches-first", "there-and-back"),
    ("slide-garage", "there-and-back"),
    ("slide-air-conditioner", "there-and-back"),
    ("right-cord-lamp-cord-coiled", "right-cord"),
    ("right-cord-crushed", "right-cord"),
    ("deadly-main-left-on", "no-slide"),
    ("deadly-before-the-crew", "no-slide"),
    ("collision-utility-returns", "no-slide"),
    ("loose-main-on", "loose-slide"),
    ("sun-forgotten", "forgotten-sun"),
    ("sun-battery-overloaded", "forgotten-sun"),
    ("inverter-reset", "small-and-quiet"),
    ("standby-service-hands-in", "hands-off"),
    ("standby-outage-ran-dry", "by-itself"),
];

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    #[test]
    fn a_run_cut_anywhere_is_the_same_run_to_the_bit(
        which in 0..LISTS.len(),
        seed in 0_u64..1000,
        cuts in prop::collection::vec(1_u64..90_000, 1..12),
    ) {
        let (list_name, drill_name) = LISTS[which];
        let whole = played(list_name, drill_name, seed, &[3_600_000]);
        let cut = played(list_name, drill_name, seed, &cuts);
        prop_assert_eq!(whole.run(), cut.run());
        prop_assert_eq!(whole.trace().moments.len(), cut.trace().moments.len());
        for (one, other) in whole.trace().moments.iter().zip(&cut.trace().moments) {
            prop_assert_eq!(every_bit(one), every_bit(other), "at {}", one.at);
        }
    }
}
