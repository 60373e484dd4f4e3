//! Guided practice: the next safe step from any state, held to what comes of following it.

use std::thread;

use outage_drill::drill::Drill;
use outage_drill::file::{Library, Source, read_actions, read_heading};
use outage_drill::marking::{Finding, Rule, Verdict, mark, mark_so_far};
use outage_drill::proof::{Advice, Guide};
use outage_drill::session::{Command, Notice, Practice, Session};
use outage_drill::shipped;

/// More steps than any way home has.
const MOST_STEPS: usize = 100;

/// Drills that following the hints from the start doesn't pass, how it ends, and the breaches by then.
/// The walk takes loads one by one and waits, but it doesn't count watts, fuel or starts, and leaves contacts that a controller works to it.
const NOT_PASSED: &[(&str, &str, &str)] = &[
    ("battery-night", "finish", "BatteryOverloaded"),
    ("cords-only-night", "finish", "RanDry"),
    ("flood-pumps", "finish", "AllAtOnce Starved"),
    ("inlet-surprise", "finish", "AllAtOnce"),
    // The main would have to be off before the neutral lets go, which nobody can know.
    ("no-neutral", "hands-off", ""),
    ("oxygen-first", "finish", "ShutOff"),
];

/// States of lists that fail which the guide finds no way home from: the list, the deed after which, and what it says instead.
const NO_WAY: &[(&str, usize, &str)] = &[
    // The plan finds no careful way to the goal: the walk leaves contacts and starting to the controller.
    ("by-itself-nobody-looked", 0, "hands-off"),
    // The set runs or would be started indoors: the walk starts it there, or stays in the gas.
    ("garage-door-open-all-out", 8, "hands-off"),
    ("garage-door-open-half", 9, "hands-off"),
    ("garage-door-open-wide", 7, "hands-off"),
    // Something would not be put back as the drill asks at its end.
    ("grid-comes-back-early-met", 3, "hands-off"),
    // The walk does not call the emergency number.
    ("headache-child-left", 2, "hands-off"),
    ("headache-went-back", 3, "hands-off"),
    // Something would not be put back as the drill asks at its end.
    ("hot-refuel-ran-dry", 1, "hands-off"),
    // As with the first: the controller was left off, and the outage is there.
    ("left-off-late", 0, "hands-off"),
    ("left-off-waited", 0, "hands-off"),
    // The plan finds no careful way to the goal.
    ("main-locked-one-handle", 18, "hands-off"),
    // The volts without a neutral are found too high before the walk turns anything off.
    ("no-neutral-watched", 1, "hands-off"),
    // The plan finds no careful way back from a cord with two plugs.
    ("one-plug-two-ends-left-on", 1, "hands-off"),
    // The plan finds no careful way to the goal.
    ("shed-for-the-set-reset", 3, "hands-off"),
    // There is gas in the house: the alarm has sounded, and the walk does not call for help.
    ("slide-garage-house-door", 57, "get-out"),
    // Something would not be put back as the drill asks at its end.
    ("visible-break-one-word", 10, "hands-off"),
];

/// How many states were tried, and in how many of them somebody was harmed, so that only going back helps.
const TRIED: (usize, usize) = (164, 9);

fn library() -> Library {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    library
}

/// Does what the guide says until it has nothing more to say, and says how that ends.
fn follow(drill: &mut Drill) -> &'static str {
    let mut guide = Guide::new(drill);
    for _ in 0..MOST_STEPS {
        let action = match guide.advice() {
            Advice::Steps(steps) => steps[0].action.clone(),
            Advice::StopEngine(action) => action.clone(),
            Advice::Finish => return "finish",
            Advice::GetOut => return "get-out",
            Advice::HandsOff => return "hands-off",
            Advice::GoBack => return "go-back",
        };
        drill.act(&action);
        guide.follow(drill);
    }
    "goes on"
}

fn ended(drill: &mut Drill) -> Verdict {
    drill.end();
    mark(drill.scenario(), drill.trace())
}

/// The rules of these findings that are breaches, each once.
fn rules<'a>(findings: impl Iterator<Item = &'a Finding>) -> String {
    let mut rules: Vec<String> = findings
        .filter(|f| f.breach)
        .map(|f| format!("{:?}", f.rule))
        .collect();
    rules.sort();
    rules.dedup();
    rules.join(" ")
}

#[test]
fn following_the_hints_from_the_start_passes_every_drill_that_is_not_named() {
    let mut not = Vec::new();
    for scenario in &library().scenarios {
        let mut drill = Drill::start(scenario, 1).unwrap();
        let end = follow(&mut drill);
        let verdict = ended(&mut drill);
        if !verdict.passed || end != "finish" {
            let found = rules(verdict.findings.iter());
            not.push((scenario.name.clone(), end, found));
        }
    }
    let not: Vec<_> = not
        .iter()
        .map(|(name, end, found)| (name.as_str(), *end, found.as_str()))
        .collect();
    assert_eq!(not, NOT_PASSED);
}

/// What comes of following the hints from where a list has got to.
struct Tried {
    list: &'static str,
    deed: usize,
    end: &'static str,
    /// Breaches that a pass can't do without, found on the way, but that it was late.
    new: String,
}

/// One deed of each list that fails, drawn from its name.
fn tried(library: &Library, parity: usize) -> Vec<Tried> {
    let mut tried = Vec::new();
    for (at, (file, text)) in shipped::LISTS.iter().enumerate() {
        let source = Source { file, text };
        let heading = read_heading(source).unwrap().filter(|h| !h.passes);
        let Some(heading) = heading.filter(|_| at % 2 == parity) else {
            continue;
        };
        let scenario = &heading.scenarios(library).unwrap()[0];
        let lines = read_actions(source, scenario).unwrap();
        // Drawn from the name, so that a list more changes no other's.
        let deed = file.bytes().map(usize::from).sum::<usize>() % lines.len();
        let mut drill = Drill::start(scenario, heading.seeds[0]).unwrap();
        for line in &lines[..=deed] {
            match line.at {
                Some(at) => drill.act_at(at, &line.action),
                None => drill.act(&line.action),
            };
        }
        let before = mark_so_far(scenario, drill.trace());
        let end = follow(&mut drill);
        let verdict = ended(&mut drill);
        let late = |f: &Finding| matches!(f.rule, Rule::GoalLate | Rule::Lost);
        let known = |f: &Finding| before.iter().any(|b| (b.rule, b.at) == (f.rule, f.at));
        let new = verdict
            .findings
            .iter()
            .filter(|f| f.rule.criterion().is_needed() && !late(f) && !known(f));
        tried.push(Tried {
            list: file
                .rsplit('/')
                .next()
                .unwrap()
                .trim_end_matches(".actions"),
            deed,
            end,
            new: rules(new),
        });
    }
    tried
}

#[test]
fn following_the_hints_from_the_middle_of_lists_that_fail_ends_safely_or_says_that_there_is_no_way()
{
    let library = library();
    let all = thread::scope(|scope| {
        let odd = scope.spawn(|| tried(&library, 1));
        let mut all = tried(&library, 0);
        all.extend(odd.join().unwrap());
        all
    });
    let harmed = all.iter().filter(|t| t.end == "go-back").count();
    let mut no_way: Vec<(&str, usize, &str)> = all
        .iter()
        .filter(|t| !matches!(t.end, "finish" | "go-back"))
        .map(|t| (t.list, t.deed, t.end))
        .collect();
    no_way.sort_unstable();
    for t in all.iter().filter(|t| t.end == "finish") {
        assert_eq!(t.new, "", "{} after deed {}", t.list, t.deed);
    }
    assert_eq!((all.len(), harmed), TRIED, "{no_way:?}");
    assert_eq!(no_way, NO_WAY);
}

fn opened(drill: &str, practice: Practice) -> Session {
    let mut session = Session::new(library(), "en");
    open(&mut session, drill, practice);
    session
}

fn open(session: &mut Session, drill: &str, practice: Practice) {
    let notices = session.apply(Command::Open {
        drill: drill.to_owned(),
        practice,
        seed: 1,
    });
    assert!(notices.is_empty(), "{notices:?}");
}

/// The hint, and the line to be typed for it.
fn hint(session: &Session) -> (String, String) {
    let street = session.street().unwrap();
    (street.hint, street.hint_line)
}

#[test]
fn typing_what_guided_practice_shows_passes_and_then_help_fades() {
    let mut session = opened("there-and-back", Practice::Guided);
    for _ in 0..MOST_STEPS {
        let (text, line) = hint(&session);
        assert!(!text.is_empty() && !line.is_empty());
        if line == "finish" {
            break;
        }
        session.apply(Command::Do(line));
    }
    session.apply(Command::Finish);
    assert!(session.verdict().is_some_and(|v| v.passed));
    assert_ne!(session.debrief().unwrap().helped, "");
    // The same way again: only when asked.
    open(&mut session, "mixed-labels", Practice::Guided);
    assert_eq!(hint(&session).0, "");
    session.apply(Command::Hint);
    assert_ne!(hint(&session).0, "");
    // Another way: at once.
    open(&mut session, "six-handles", Practice::Guided);
    assert_ne!(hint(&session).0, "");
}

#[test]
fn coached_practice_hints_only_when_asked_and_counts_it_and_a_test_refuses() {
    let mut session = opened("there-and-back", Practice::Coached);
    assert_eq!(hint(&session).0, "");
    session.apply(Command::Hint);
    let (first, line) = hint(&session);
    assert_ne!(first, "");
    session.apply(Command::Do(line));
    assert_eq!(hint(&session).0, "", "it doesn't hold any more");
    session.apply(Command::Finish);
    assert!(session.debrief().unwrap().helped.contains("once"));
    let mut test = opened("there-and-back", Practice::Assessed);
    let refused = test.apply(Command::Hint);
    assert!(
        matches!(refused.as_slice(), [Notice::Unknown(text)] if *text == test.say("session-no-hint"))
    );
    assert_eq!(hint(&test).0, "");
}

#[test]
fn a_question_comes_before_the_next_step() {
    let mut session = Session::new(library(), "en").asking();
    open(&mut session, "one-plug-two-ends", Practice::Guided);
    for _ in 0..MOST_STEPS {
        if session.asked().is_some() {
            break;
        }
        session.apply(Command::Do(hint(&session).1));
    }
    assert!(session.asked().is_some(), "the drill asks on the way home");
    assert_eq!(
        hint(&session),
        (session.say("guide-answer-first"), String::new())
    );
}
