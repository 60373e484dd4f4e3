//! How a drill comes to rest after a change, held over every list that is kept.

use outage_drill::drill::{Event, Moment, What};
use outage_drill::file::{Library, Source, read_heading};
use outage_drill::shipped;

use crate::playing::{self, Played, play_text};

/// Times that one appliance or control may change by itself in one instant: it comes on, and what that does takes it off again.
const MOST_CHANGES: usize = 2;

/// What goes on or off, or opens, in a moment by itself.
fn changes(moment: &Moment) -> Option<String> {
    if let What::Happened(
        Event::Running { appliance }
        | Event::LostPower { appliance }
        | Event::Starting { appliance, .. }
        | Event::Stalled { appliance, .. }
        | Event::ProtectorOpened { appliance },
    ) = moment.what
    {
        Some(format!("appliance {appliance}"))
    } else if let What::Happened(Event::Tripped { control, .. }) = moment.what {
        Some(format!("{control:?}"))
    } else {
        None
    }
}

/// What changes more often in one instant than it may; one line each.
fn restless(name: &str, played: &Played) -> Vec<String> {
    let mut counts = std::collections::BTreeMap::new();
    for moment in &played.drill.trace().moments {
        if let Some(what) = changes(moment) {
            *counts.entry((moment.at, what)).or_insert(0) += 1;
        }
    }
    let restless = counts.into_iter().filter(|(_, n)| *n > MOST_CHANGES);
    restless
        .map(|((at, what), n)| format!("{name} at {:.1} s: {what}, {n} times", at.seconds()))
        .collect()
}

#[test]
fn nothing_goes_on_and_off_again_and_again_in_one_instant() {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    let mut all = Vec::new();
    for (file, text) in shipped::LISTS {
        let source = Source { file, text };
        let Some(heading) = read_heading(source).unwrap() else {
            continue;
        };
        for scenario in heading.scenarios(&library).unwrap() {
            all.extend(restless(
                file,
                &play_text(&scenario, heading.seeds[0], text),
            ));
        }
    }
    assert!(all.is_empty(), "{}", all.join("\n"));
}

#[test]
fn a_lamp_behind_an_open_breaker_gets_nothing_though_a_fault_lifts_its_neutral() {
    let scenario = playing::shipped("silent-frame");
    let played = play_text(&scenario, 1, &playing::list("silent-frame-holds"));
    let index_of = |name: &str| {
        let all = &scenario.site.appliances;
        all.iter().position(|a| a.name == name).unwrap()
    };
    let last = played.drill.readings();
    let (washer, lamp) = (index_of("washer"), index_of("kitchen-lights"));
    assert!(last.appliance(washer).volts > 110.0, "its leg is live");
    assert_eq!(last.appliance(lamp).volts.to_bits(), 0.0_f64.to_bits());
}
