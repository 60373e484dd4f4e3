//! Cords as they are seen and felt: what is printed on them, and how warm jacket and plug are to the hand.
//!
//! The jacket stands two thirds of the way from the air to the conductor, from typical dimensions; a hand says warm or hot, never a number.
//! Nothing here is computed for a verdict.

use crate::apparatus::connection::Contact;
use crate::apparatus::cord_damage::Damage;
use crate::apparatus::cord_letters::Letters;
use crate::drill::{CordCondition, Drill, Fate};
use crate::site::Cord;
use crate::words::{Arg, Message, Unit, Words, name_of};

/// Share of the conductor's rise that the jacket has.
const JACKET: f64 = 2.0 / 3.0;
/// Temperature that a hand feels as warm, °C; common practice.
const WARM_C: f64 = 35.0;
/// Temperature that a hand can't hold for long, °C; from memory, 50 to 60 °C for plastic.
const HOT_C: f64 = 52.0;

/// What is seen and felt of a cord.
pub(super) fn lines(words: &Words, drill: &Drill, (index, cord): (usize, &Cord)) -> Vec<String> {
    let name = words.label(&name_of(&cord.name));
    let felt = feels(drill.conditions().cord(index), drill.site().ambient_c);
    let lines = seen(cord).chain(felt).map(|id| {
        let cord = Arg::Verbatim(name.clone());
        words.say(&Message::new(id).with("cord", cord))
    });
    std::iter::once(printed(words, cord)).chain(lines).collect()
}

/// What is printed on a cord, and what its letters mean.
fn printed(words: &Words, cord: &Cord) -> String {
    let kind = cord.make.kind();
    let meanings: Vec<String> = kind
        .letters()
        .into_iter()
        .map(|letters| words.say_id(meaning(letters)))
        .collect();
    words.say(
        &Message::new("cord-printed")
            .with("cord", Arg::Verbatim(words.label(&name_of(&cord.name))))
            .with("letters", Arg::Verbatim(kind.to_string()))
            .with("gauge", Arg::Verbatim(cord.make.awg().to_string()))
            .quantity("length", cord.make.length_ft(), Unit::Feet)
            .with("meanings", Arg::Verbatim(meanings.join("; ")))
            .with("ground", Arg::Count(i64::from(cord.grounded))),
    )
}

/// The message that says what a letter means.
fn meaning(letters: Letters) -> &'static str {
    match letters {
        Letters::Heater => "cord-letter-h",
        Letters::Service => "cord-letter-s",
        Letters::Junior => "cord-letter-j",
        Letters::Vacuum => "cord-letter-v",
        Letters::Parallel => "cord-letter-p",
        Letters::RangeDryer => "cord-letter-rd",
        Letters::Elastomer => "cord-letter-e",
        Letters::Thermoplastic => "cord-letter-t",
        Letters::OilJacket => "cord-letter-o",
        Letters::OilAll => "cord-letter-oo",
        Letters::Outdoor => "cord-letter-w",
    }
}

/// What an eye sees of the damage of a cord.
fn seen(cord: &Cord) -> impl Iterator<Item = &'static str> {
    let along = match cord.found.damage {
        Damage::Sound => None,
        Damage::Strands { .. } => Some("cord-seen-frayed"),
        Damage::Crushed => Some("cord-seen-crushed"),
    };
    let plug = match cord.found.plug.contact {
        Contact::Sound => None,
        Contact::Loose => Some("plug-seen-loose"),
        Contact::Burnt => Some("plug-seen-black"),
    };
    [along, plug].into_iter().flatten()
}

/// What a hand feels at the cord and at its plug; nothing where both are cool.
fn feels(cord: CordCondition, ambient_c: f64) -> impl Iterator<Item = &'static str> {
    let jacket_c = ambient_c + JACKET * (cord.hottest_c() - ambient_c);
    let along = if cord.harm.fate > Fate::Whole {
        Some("cord-feels-burnt")
    } else if cord.harm.soft {
        Some("cord-feels-soft")
    } else if jacket_c >= HOT_C {
        Some("cord-feels-hot")
    } else {
        (jacket_c >= WARM_C).then_some("cord-feels-warm")
    };
    let plug = if cord.harm.scorched {
        Some("plug-feels-scorched")
    } else if cord.plug_c >= HOT_C {
        Some("plug-feels-hot")
    } else {
        (cord.plug_c >= WARM_C).then_some("plug-feels-warm")
    };
    [along, plug].into_iter().flatten()
}

#[cfg(test)]
mod tests {
    use crate::drill::AMBIENT_C;

    use super::*;

    #[test]
    fn a_hand_feels_nothing_of_a_cool_cord_and_more_the_hotter_it_is() {
        let felt = |celsius: f64, plug_c: f64| {
            let mut cord = CordCondition::rested(AMBIENT_C);
            cord.celsius = celsius;
            cord.plug_c = plug_c;
            feels(cord, AMBIENT_C).collect::<Vec<_>>()
        };
        assert!(felt(20.0, 20.0).is_empty());
        assert_eq!(felt(50.0, 20.0), ["cord-feels-warm"]);
        assert_eq!(felt(75.0, 40.0), ["cord-feels-hot", "plug-feels-warm"]);
        let mut soft = CordCondition::rested(AMBIENT_C);
        soft.harm.soft = true;
        assert_eq!(
            feels(soft, AMBIENT_C).collect::<Vec<_>>(),
            ["cord-feels-soft"]
        );
    }
}
