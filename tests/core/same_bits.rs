//! The same run gives the same bits: in every profile, on every machine, on one thread and on two at once.

use sha2::{Digest as _, Sha256};

use crate::playing::{every_bit, list, play_text, shipped};

/// SHA-256 over every bit of every moment of the runs below.
/// It changes when the model, a shipped scenario or a list of actions changes, and then only by intention.
const GOLDEN: &str = "b940e1c800c0a124e6f35e9a0d7575ec6c7b1a88e5822239ac5340b3bc335e8f";

const LISTS: &[(&str, &str)] = &[
    ("slide-branches-first", "there-and-back"),
    ("slide-locked-and-tested", "there-and-back"),
    ("slide-all-at-once", "there-and-back"),
    ("slide-overload", "there-and-back"),
    ("slide-garage", "there-and-back"),
    ("slide-hot-refuel", "there-and-back"),
    ("cords-safe", "no-slide"),
    ("deadly-main-left-on", "no-slide"),
    ("deadly-before-the-crew", "no-slide"),
    ("main-off-one-handle", "no-slide"),
    ("collision-utility-returns", "no-slide"),
    ("loose-main-on", "loose-slide"),
    ("sun-forgotten", "forgotten-sun"),
    ("sun-battery-overloaded", "forgotten-sun"),
    ("live-blades", "no-slide"),
    ("right-cord-lamp-cord-coiled", "right-cord"),
    ("right-cord-crushed", "right-cord"),
];

fn digest() -> String {
    let mut hash = Sha256::new();
    for (name, drill) in LISTS {
        for seed in [1, 2_026] {
            let played = play_text(&shipped(drill), seed, &list(name));
            for moment in &played.drill.trace().moments {
                for bits in every_bit(moment) {
                    hash.update(bits.to_le_bytes());
                }
            }
        }
    }
    let mut text = String::new();
    for byte in hash.finalize() {
        for half in [byte >> 4, byte & 15] {
            text.extend(char::from_digit(u32::from(half), 16));
        }
    }
    text
}

#[test]
fn whole_runs_give_the_same_bits_in_every_profile_and_on_two_threads_at_once() {
    let alone = digest();
    let (one, two) = std::thread::scope(|scope| {
        let (one, two) = (scope.spawn(digest), scope.spawn(digest));
        (one.join().unwrap(), two.join().unwrap())
    });
    assert_eq!(alone, one, "on a thread of its own");
    assert_eq!(alone, two, "on a thread beside another");
    assert_eq!(alone, GOLDEN);
}
