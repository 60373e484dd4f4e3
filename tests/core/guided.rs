//! Guided practice: the next safe step from any state, held to what comes of following it.

use std::thread;

use outage_drill::drill::{Action, Drill};
use outage_drill::file::{Heading, Library, Source, read_actions, read_heading};
use outage_drill::marking::{Finding, Rule, Verdict, mark, mark_so_far};
use outage_drill::proof::{Advice, Guide, lead};
use outage_drill::session::{Command, Notice, Practice, Session};
use outage_drill::shipped;

/// More steps than any way home has.
const MOST_STEPS: usize = 100;

/// Drills that following the hints from the start doesn't pass, how it ends, and the breaches by then; each needs a reason.
const NOT_PASSED: &[(&str, &str, &str)] = &[];

/// States of lists that fail which the guide finds no way home from: the list, the deed after which, and what it says instead.
const NO_WAY: &[(&str, usize, &str)] = &[];

/// How many states were tried, and in how many of them somebody was harmed, so that only going back helps.
const TRIED: (usize, usize) = (172, 9);

fn library() -> Library {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    library
}

/// Does what the guide says until it has nothing more to say, and says how that ends.
fn follow(drill: &mut Drill) -> &'static str {
    match lead(drill) {
        Advice::Finish => "finish",
        Advice::GetOut => "get-out",
        Advice::HandsOff => "hands-off",
        Advice::GoBack => "go-back",
        Advice::Steps(_) | Advice::StopEngine(_) | Advice::Looking(_) => "goes on",
    }
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

/// Breaches that a pass can't do without, found after what was found `before`, but that it was late.
fn new(before: &[Finding], verdict: &Verdict) -> String {
    let late = |f: &Finding| matches!(f.rule, Rule::GoalLate | Rule::Lost);
    let known = |f: &Finding| before.iter().any(|b| (b.rule, b.at) == (f.rule, f.at));
    let all = verdict.findings.iter();
    rules(all.filter(|f| f.rule.criterion().is_needed() && !late(f) && !known(f)))
}

/// What comes of following the hints from where a list has got to.
struct Tried {
    list: &'static str,
    deed: usize,
    end: &'static str,
    /// Breaches that a pass can't do without, found on the way, but that it was late.
    new: String,
}

/// A list played up to one of its deeds, and which one that is: drawn from its name, so that a list more changes no other's.
fn drawn(library: &Library, source: Source<'_>, heading: &Heading) -> (Drill, usize) {
    let scenario = &heading.scenarios(library).unwrap()[0];
    let lines = read_actions(source, scenario).unwrap();
    let deed = source.file.bytes().map(usize::from).sum::<usize>() % lines.len();
    let mut drill = Drill::start(scenario, heading.seeds[0]).unwrap();
    for line in &lines[..=deed] {
        match line.at {
            Some(at) => drill.act_at(at, &line.action),
            None => drill.act(&line.action),
        };
    }
    (drill, deed)
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
        let (mut drill, deed) = drawn(library, source, &heading);
        let before = mark_so_far(drill.scenario(), drill.trace());
        let end = follow(&mut drill);
        let verdict = ended(&mut drill);
        tried.push(Tried {
            list: file
                .rsplit('/')
                .next()
                .unwrap()
                .trim_end_matches(".actions"),
            deed,
            end,
            new: new(&before, &verdict),
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
        // A wait that is asked for is one press as well.
        let wait = session.street().unwrap().hint_wait;
        assert_eq!(wait.is_some(), line.starts_with("wait "), "{line}");
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
/// The states of every third list, one of each, as [`tried`] draws them.
fn states(library: &Library) -> Vec<(&'static str, Drill)> {
    let mut states = Vec::new();
    for (file, text) in shipped::LISTS.iter().step_by(3) {
        let source = Source { file, text };
        let Some(heading) = read_heading(source).unwrap() else {
            continue;
        };
        states.push((*file, drawn(library, source, &heading).0));
    }
    states
}

/// The steps that a way still has; none where it isn't one.
fn steps(advice: &Advice) -> Vec<Action> {
    if let Advice::Steps(steps) = advice {
        steps.iter().map(|s| s.action.clone()).collect()
    } else {
        Vec::new()
    }
}

#[test]
fn what_was_found_once_is_told_at_once_from_every_place_that_it_leads_through() {
    let (mut asked, mut at_once) = (0, 0);
    for (list, drill) in states(&library()) {
        let mut guide = Guide::begin(&drill);
        while guide.look_on() {}
        let found = guide.advice().clone();
        guide.rewound();
        guide.turn_to(&drill);
        assert_eq!(*guide.advice(), found, "{list}: asked again");
        let way = steps(&found);
        let mut ahead = drill.clone();
        for (index, action) in way.iter().enumerate().take(9) {
            ahead.act(action);
            if index % 4 != 0 {
                continue;
            }
            guide.rewound();
            guide.turn_to(&ahead);
            asked += 1;
            if matches!(guide.advice(), Advice::Looking(_)) {
                continue;
            }
            at_once += 1;
            let kept = steps(guide.advice());
            // What is told leads home as the whole way does.
            let before = mark_so_far(drill.scenario(), ahead.trace());
            let mut led = ahead.clone();
            for action in &kept {
                led.act(action);
            }
            let verdict = ended(&mut led);
            assert_eq!(new(&before, &verdict), "", "{list} after step {index}");
        }
    }
    // A few don't stand where the way was when it was found: an engine takes another pull, a crew another minute.
    assert!(
        asked > 150 && at_once * 20 > asked * 19,
        "{at_once} of {asked}"
    );
}

#[test]
fn while_a_way_is_looked_for_a_hint_says_what_is_safe_and_the_way_follows() {
    let mut session = Session::new(library(), "en").looking_on();
    open(&mut session, "there-and-back", Practice::Guided);
    assert_eq!(
        hint(&session),
        (session.say("guide-looking"), String::new())
    );
    let looked = session.revision();
    while session.look_on() {}
    assert!(session.revision() > looked);
    let at_once = opened("there-and-back", Practice::Guided);
    assert_eq!(hint(&session), hint(&at_once));
    assert!(!session.look_on(), "nothing is left to look for");
}
