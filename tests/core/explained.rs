//! How each rule's findings come about is told, held to what the lists of `tests/drills` bring about.
//!
//! The table names every rule: a new one has to be given its way, chain or sum here, or the reason why it has none.
//! Every finding of every list is then explained, in both languages, and has to be told as the table says.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Arc, OnceLock};
use std::thread;

use outage_drill::drill::Drill;
use outage_drill::explain::{Explanation, Stage, Told, explain, told};
use outage_drill::file::{Library, Source, read_heading};
use outage_drill::marking::{Finding, Rule};
use outage_drill::scenario::Scenario;
use outage_drill::shipped::LISTS;
use outage_drill::site::{CARRIES_A, Supply, Work};
use outage_drill::words::{Arg, Message, OFFERED, REFERENCE, Words};

use crate::playing::{Played, list, play_text, shipped};
use crate::protection_drills;
use crate::told_cut;
use crate::words::plain::{count_words, grade, left_out, sentences};

/// The table: a rule, how its findings are told, and why they have no stages where they have none.
macro_rules! table {
    ($($rule:ident: $told:ident $($why:literal)?,)+) => {
        /// Every rule, how it is told, and why plainly where it is.
        const TABLE: &[(Rule, Told, &str)] = &[$((Rule::$rule, Told::$told, concat!($($why)?))),+];

        /// Fails to compile while a rule isn't in the table.
        fn of(rule: Rule) -> Told {
            match rule {
                $(Rule::$rule => Told::$told,)+
            }
        }
    };
}

table! {
    LineFed: Way,
    NoTransferEquipment: Way,
    Collision: Way,
    SourcesMeet: Way,
    Shock: Way,
    Touch: Way,
    NothingBonds: Way,
    LiveBlades: Way,
    WetPanel: Way,
    Indoors: Gas,
    Gas: Gas,
    Overcome: Gas,
    GasNextDoor: Gas,
    NoAlarm: Gas,
    StayedIn: Gas,
    FuelIndoors: Fire,
    FuelFire: Fire,
    NotLockedOut: Starter,
    CaughtByEngine: Starter,
    LiveLugs: Way,
    HandTransferLive: Way,
    NotTested: Way,
    TesterUnproved: Way,
    NotGrounded: Way,
    GroundsWrong: Way,
    NoVisibleBreak: Way,
    LiveEnd: Way,
    GroundsLeft: Way,
    NotAsked: Way,
    PlugUnderLoad: Way,
    LivePlug: Way,
    WrongEndFirst: Way,
    StartUnderLoad: Sum,
    NotSettled: Sum,
    AllAtOnce: Sum,
    NoCoolDown: Chain,
    BlindReturn: Way,
    Overload: Sum,
    TooSmallForMotor: Sum,
    ShutOff: Sum,
    RanDry: Store,
    Tripped: Sum,
    FuseBlown: Sum,
    GroundFault: Way,
    ResetIntoFault: Way,
    TwoBonds: Way,
    GroundCarries: Way,
    Damaged: Way,
    Starved: Sum,
    CordHot: Chain,
    WireHot: Chain,
    CordFire: Chain,
    PlugHot: Chain,
    CordUnfit: Way,
    SunOnGenerator: Way,
    PushedBack: Way,
    BatteryOverloaded: Sum,
    BatterySpent: Sum,
    TooNear: Gas,
    NotCalled: Plainly "no energy is in a call that nobody made; the gas and the blood are told with the gas",
    GoalLate: Cut,
    Lost: Store,
    NotRestored: Cut,
    NotBack: Cut,
    WrongVolts: Way,
    SaidDead: Way,
    SaidFit: Plainly "a word about a slide, before any energy passes it; what then passes is told with the line",
    SaidWrong: Plainly "a word beside the truth; no energy follows from it until a hand does",
    Unanswered: Plainly "a word that was never said; it moves nothing",
}

#[test]
fn every_rule_is_told_as_the_table_says_and_one_without_stages_has_a_reason() {
    for (rule, told_so, why) in TABLE {
        assert_eq!(told(*rule), *told_so, "{rule:?}");
        assert_eq!(of(*rule), *told_so, "{rule:?}");
        assert_eq!(why.is_empty(), *told_so != Told::Plainly, "{rule:?}");
    }
}

/// What is wrong with how a finding is told.
fn faults(words: &[Words], drill: &Drill, finding: &Finding) -> Vec<String> {
    let Explanation {
        what,
        path,
        instead,
        ..
    } = explain(drill, finding);
    let ids: Vec<&str> = path.iter().map(|s| s.text.id.as_str()).collect();
    let any = |wanted: &[&str]| wanted.iter().any(|id| ids.contains(id));
    let mut faults = Vec::new();
    let first = |words: &Words| words.say(&instead).contains("largest motor first");
    if words.first().is_some_and(first) && !any(&STARTS) {
        faults.push(format!("{:?}: no motor starts in {ids:?}", finding.rule));
    }
    let told_so = match of(finding.rule) {
        Told::Plainly => ids.is_empty(),
        Told::Way => ids.first().is_some_and(|id| SOURCES.contains(id)) && ids.len() >= 2,
        // Where the air stayed clean there is nothing to tell; `told_gas` holds when.
        Told::Gas => ids.is_empty() || gas_path(&ids),
        Told::Chain | Told::Fire => ids.len() >= 3,
        Told::Cut => told_cut::holds(drill, finding, &ids),
        Told::Store => ids.len() >= 3 && any(&STORES),
        Told::Starter => {
            let harm = ["stage-hands-in", "stage-caught"];
            ids.len() >= 3 && ids.last().is_some_and(|id| harm.contains(id))
        }
        Told::Sum => any(&LOADS) || any(&["stage-opens", "stage-cord-short"]),
    };
    if !told_so {
        faults.push(format!("{:?} is told by {ids:?}", finding.rule));
    }
    if path
        .last()
        .is_some_and(|s| SOURCES.contains(&s.text.id.as_str()))
    {
        faults.push(format!("{:?} ends at its source", finding.rule));
    }
    if two_moments(&path) {
        faults.push(format!("{:?} mixes two moments: {path:?}", finding.rule));
    }
    faults.extend(of_words(words, &what));
    for stage in &path {
        let said = [&stage.text, &stage.value];
        faults.extend(said.into_iter().flat_map(|m| of_words(words, m)));
    }
    faults
}

/// Stages that a way begins with.
const SOURCES: [&str; 9] = [
    "stage-generator",
    "stage-generator-idle",
    "stage-generator-tied",
    "stage-generator-still",
    "stage-generator-stalled",
    "stage-battery",
    "stage-sun",
    "stage-utility",
    "stage-lent",
];
/// Stages that a way of gas begins with.
const EXHAUSTS: [&str; 3] = [
    "stage-exhaust",
    "stage-exhaust-over",
    "stage-exhaust-neighbor",
];
/// Stages that tell what gas does to somebody, or that nobody is there.
const BREATHED: [&str; 4] = [
    "stage-blood",
    "stage-helpless",
    "stage-helpless-ahead",
    "stage-nobody",
];

/// Whether stages lead from an engine by the air of the house to somebody's blood.
fn gas_path(ids: &[&str]) -> bool {
    let ends = ids.first().zip(ids.last());
    let ends = ends.is_some_and(|(a, b)| EXHAUSTS.contains(a) && BREATHED.contains(b));
    ends && (ids.contains(&"stage-house-air") || ids.contains(&"stage-air-next-door"))
}
/// Stages that tell what was in store.
const STORES: [&str; 3] = ["stage-can-wait", "stage-tank", "stage-oil"];
/// Stages that tell of a motor on its way to speed, or that does not get there.
const STARTS: [&str; 2] = ["stage-starting", "stage-stalled"];
/// Stages that tell of a load.
const LOADS: [&str; 3] = ["stage-load", "stage-starting", "stage-stalled"];

/// Gaps in the words of a stage, and numbers that are none.
fn of_words(words: &[Words], message: &Message) -> Vec<String> {
    let mut faults = Vec::new();
    for words in words {
        let said = words.say(message);
        if said.contains(['[', ']', '{', '}']) || below_a_meter(&said) {
            faults.push(format!("{}: {said}", words.tag()));
        }
    }
    let odd = |name: &str, arg: &Arg| {
        let Arg::Quantity(number, _) = arg else {
            return false;
        };
        // A share of nothing means that the source was tried while it was off.
        !number.is_finite() || name == "share" && *number < 1.0
    };
    if message.args.iter().any(|(name, arg)| odd(name, arg)) {
        faults.push(format!("{message:?}"));
    }
    faults
}

/// Whether a text tells of volts that no meter shows.
fn below_a_meter(said: &str) -> bool {
    let words: Vec<&str> = said.split([' ', '\u{a0}', '\u{202f}']).collect();
    words.windows(2).any(|pair| {
        let volts = pair[0].parse::<f64>();
        pair[1].trim_end_matches(['.', ',', ':']) == "V" && volts.is_ok_and(|v| v > 0.0 && v < 0.05)
    })
}

/// Whether the line is told otherwise just before the hands than at them: then two moments, or two kinds of volts, are mixed.
fn two_moments(path: &[Stage]) -> bool {
    let shown = |s: &Stage| match s.value.args.first() {
        Some((_, Arg::Quantity(number, _))) => *number,
        _ => f64::NAN,
    };
    let work = path.iter().find(|s| s.text.id == "stage-work").map(shown);
    let held = path.iter().any(|s| s.text.id == "stage-open");
    let span = path
        .iter()
        .rfind(|s| s.text.id.starts_with("stage-span") && !held);
    let apart = |(work, span): (f64, f64)| (work - span).abs() > 0.01 * work.abs();
    work.zip(span.map(shown)).is_some_and(apart)
}

/// What a list brings about, explained.
pub(crate) struct Explained {
    /// The file of the list.
    pub(crate) file: String,
    /// What it came to.
    pub(crate) played: Played,
    drill: String,
    rules: BTreeSet<Rule>,
    /// What is wrong with how its findings are told.
    faults: Vec<String>,
    /// All that is said of its findings, in English.
    said: Vec<String>,
}

/// Plays a list and explains what it brings about; none for a list without a heading.
fn explained(library: &Library, file: &str, text: &str) -> Option<Explained> {
    let heading = read_heading(Source { file, text }).unwrap()?;
    let scenario = heading.scenarios(library).unwrap().into_iter().next()?;
    Some(of_play(library, &scenario, file, text))
}

/// Plays a text of actions and explains what it brings about.
fn of_play(library: &Library, scenario: &Arc<Scenario>, file: &str, text: &str) -> Explained {
    let played = play_text(scenario, 1, text);
    let findings = &played.verdict.findings;
    let words = Words::new(REFERENCE).with(&library.words);
    let languages = OFFERED.map(|l| Words::new(l.tag));
    let faults = findings
        .iter()
        .flat_map(|f| faults(&languages, &played.drill, f));
    let faults = faults.map(|fault| format!("{file}: {fault}")).collect();
    let said = findings
        .iter()
        .flat_map(|f| said(&words, &explain(&played.drill, f)));
    Explained {
        drill: scenario.name.clone(),
        rules: findings.iter().map(|f| f.rule).collect(),
        faults,
        said: said.collect(),
        file: file.to_owned(),
        played,
    }
}

/// All that is said of a finding but its source.
fn said(words: &Words, told: &Explanation) -> Vec<String> {
    let ends = [&told.what, &told.why, &told.now, &told.instead];
    let stages = told.path.iter().map(|stage| &stage.text);
    ends.into_iter()
        .chain(stages)
        .map(|m| words.say(m))
        .collect()
}

/// What every list brings about, and what comes of doing nothing in each drill; played once for all tests.
pub(crate) fn all() -> &'static [Explained] {
    static ALL: OnceLock<Vec<Explained>> = OnceLock::new();
    ALL.get_or_init(|| {
        let (library, _) = Library::shipped();
        let half = |odd: usize| {
            let lists = LISTS.iter().skip(odd).step_by(2);
            let lists = lists.filter_map(|(file, text)| explained(&library, file, text));
            let idle = library.scenarios.iter().skip(odd).step_by(2);
            let idle = idle.map(|s| of_play(&library, &shipped(&s.name), "nothing done", ""));
            lists.chain(idle).collect::<Vec<Explained>>()
        };
        thread::scope(|scope| {
            let other = scope.spawn(|| half(1));
            let mut all = half(0);
            all.extend(other.join().unwrap());
            all
        })
    })
}

#[test]
fn every_finding_of_every_list_is_told_as_the_table_says() {
    let mut wrong: Vec<String> = all().iter().flat_map(|e| e.faults.clone()).collect();
    let mut met: BTreeSet<Rule> = all().iter().flat_map(|e| e.rules.clone()).collect();
    for own in protection_drills::found_by_no_shipped_drill() {
        for finding in &own.verdict.findings {
            met.insert(finding.rule);
            // Its site is made for a test, and its things have no words.
            wrong.extend(faults(&[], &own.drill, finding));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    let not_met = TABLE.iter().filter(|(rule, ..)| !met.contains(rule));
    let not_met = not_met.filter(|(_, told, _)| *told != Told::Plainly);
    let not_met: Vec<Rule> = not_met.map(|(rule, ..)| *rule).collect();
    assert_eq!(not_met, [], "no list brings them about");
}

/// The highest reading grade of what is said of a drill's mistakes.
const MOST_GRADE: f64 = 6.9;
/// The fewest words that a grade may rest on.
const LEAST_WORDS: u32 = 100;

/// What a drill's marking asks: the titles and the texts of its criteria.
fn asked_of(words: &Words, scenario: &Scenario) -> Vec<String> {
    let criteria = scenario.criteria.iter().map(|c| c.name());
    let parts = |c: &str| match c {
        "restoration" => ["title", "utility"],
        _ => ["title", "text"],
    };
    let ids = criteria.flat_map(|c| parts(c).map(|part| format!("criterion-{c}-{part}")));
    ids.map(|id| words.say_id(&id)).collect()
}

#[test]
fn what_is_said_of_each_drill_s_mistakes_is_for_the_sixth_grade() {
    let named = left_out();
    let mut drills: BTreeMap<&str, BTreeSet<&str>> = BTreeMap::new();
    for explained in all() {
        let said = explained.said.iter().map(String::as_str);
        drills.entry(&explained.drill).or_default().extend(said);
    }
    let (library, _) = Library::shipped();
    let words = Words::new(REFERENCE);
    let asks: BTreeMap<&str, Vec<String>> = library
        .scenarios
        .iter()
        .map(|s| (s.name.as_str(), asked_of(&words, s)))
        .collect();
    for (drill, texts) in &asks {
        let said = drills.entry(drill).or_default();
        said.extend(texts.iter().map(String::as_str));
    }
    let mut wrong = Vec::new();
    for (drill, said) in drills {
        let texts: Vec<&str> = said.into_iter().collect();
        let (grade, n_words) = grade(&texts, &named);
        if n_words < LEAST_WORDS || grade > MOST_GRADE {
            wrong.push(format!("{drill}: grade {grade:.1} over {n_words} words"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn no_sentence_of_an_explanation_has_more_than_twenty_words() {
    let texts = all().iter().flat_map(|e| &e.said);
    let long = texts
        .flat_map(|text| sentences(text))
        .filter(|s| count_words(s) > 20);
    let long: BTreeSet<&str> = long.collect();
    assert!(long.is_empty(), "{long:#?}");
}

/// The first finding of a rule in a list, with the drill it is of.
pub(crate) fn found(drill: &str, actions: &str, rule: Rule) -> (Drill, Finding) {
    let played = play_text(&shipped(drill), 1, &list(actions));
    let mut findings = played.verdict.findings.into_iter();
    let finding = findings.find(|f| f.rule == rule).unwrap();
    (played.drill, finding)
}

#[test]
fn the_way_to_a_fed_line_passes_only_what_is_closed_and_carries_current() {
    let (drill, finding) = found("no-slide", "deadly-two-plugs", Rule::LineFed);
    let moment = &drill.trace().moments[finding.moment];
    let stands = (&moment.positions, &*moment.readings);
    let to = finding.reaches.as_deref().unwrap();
    let way = drill
        .plant()
        .way(stands, Supply::Generator, to, &|_| false)
        .unwrap();
    let things: Vec<&str> = way.iter().map(|p| p.thing).collect();
    for thing in [
        "two-plug-cord",
        "breaker-dryer",
        "main",
        "drop",
        "transformer",
    ] {
        assert!(things.contains(&thing), "{things:?}");
    }
    assert!(way.iter().all(|p| !p.open), "{way:?}");
    let metered = |thing: &&str| moment.readings.names.things.iter().any(|t| t == thing);
    for thing in things.iter().copied().filter(metered) {
        assert!(moment.readings.amps_of(thing) >= CARRIES_A, "{thing}");
    }
    assert_eq!(drill.plant().way(stands, Supply::Sun, to, &|_| true), None);
}

#[test]
fn where_nothing_feeds_a_point_the_open_contacts_on_the_way_are_told() {
    let (drill, finding) = found(
        "one-plug-two-ends",
        "one-plug-two-ends-wrong-end",
        Rule::WrongEndFirst,
    );
    let told = explain(&drill, &finding).path;
    let open = told.iter().filter(|s| s.text.id == "stage-open");
    let open: Vec<&str> = open.map(|s| s.at.as_str()).collect();
    assert_eq!(open.last(), Some(&"main"), "{told:?}");
}

#[test]
fn the_order_that_is_told_has_the_largest_motor_first_and_asks_no_more_than_the_set_is_made_for() {
    let (drill, finding) = found("big-three", "big-three-together", Rule::AllAtOnce);
    let moment = &drill.trace().moments[finding.moment];
    let site = drill.site();
    let wanted: Vec<usize> = (0..site.appliances.len()).collect();
    let found = drill.one_by_one(moment, &wanted);
    let rated_w = site.generator.spec_at(&moment.positions).rated_w;
    let standstill = |index: usize| match &site.appliances[index].work {
        Work::Motor(motor) => motor.locked_rotor_amps() * motor.volts,
        Work::Resistive { .. } | Work::Electronic { .. } => 0.0,
    };
    let sizes: Vec<f64> = found
        .order
        .iter()
        .map(|b| standstill(b.appliance))
        .collect();
    assert!(sizes.first().is_some_and(|size| *size > 0.0), "{found:?}");
    assert!(sizes.is_sorted_by(|a, b| a >= b), "{found:?}");
    assert!(
        found.order.iter().all(|b| b.then_w <= rated_w * 1.001),
        "{found:?}"
    );
    assert_eq!(found.order.len() + found.left_out.len(), wanted.len());
}

#[test]
fn a_dead_line_behind_an_open_cutout_is_told_by_what_stands_behind_it() {
    let (drill, finding) = found(
        "ground-order",
        "ground-order-line-end-first",
        Rule::GroundsWrong,
    );
    let told = explain(&drill, &finding);
    let words = Words::new(REFERENCE);
    let volts = |s: &Stage| match s.value.args.first() {
        Some((_, Arg::Quantity(volts, _))) => *volts,
        _ => f64::NAN,
    };
    let at = told.path.iter().position(|s| s.at == "transformer");
    let behind = at.map_or(&[][..], |at| &told.path[at..]);
    assert!(volts(&behind[0]) > 7000.0, "{behind:?}");
    assert_eq!(behind[1].text.id, "stage-open");
    let last = told.path.last().map(|s| words.say(&s.text));
    assert!(last.is_some_and(|said| said.contains("dead now")));
    assert!(words.say(&told.what).contains("If it had come alive"));
}

#[test]
fn an_untested_line_is_told_as_it_stood_before_a_hand_pulled_it_down() {
    let (drill, finding) = found(
        "engine-on-the-road",
        "engine-on-the-road-assumed-dead",
        Rule::NotTested,
    );
    let told = explain(&drill, &finding);
    let source = told.path.first().map(|s| &s.value.args[0].1);
    assert!(
        matches!(source, Some(Arg::Quantity(volts, _)) if *volts > 200.0),
        "{source:?}"
    );
    assert!(told.heading.args.iter().any(|(name, _)| *name == "at"));
}

/// What is said in English of the first finding of a rule in a list: what, why and what to do next time.
fn told_of(drill: &str, actions: &str, rule: Rule) -> String {
    let (drill, finding) = found(drill, actions, rule);
    let (library, _) = Library::shipped();
    let words = Words::new(REFERENCE).with(&library.words);
    let told = explain(&drill, &finding);
    [told.what, told.why, told.now, told.instead]
        .map(|m| words.say(&m))
        .join(" ")
}

#[test]
fn a_breaker_that_two_sources_tripped_is_not_blamed_on_loads() {
    let told = told_of("no-slide", "collision-main-closed", Rule::Tripped);
    assert!(told.contains("No load was to blame"), "{told}");
    assert!(!told.contains("one at a time"), "{told}");
    let told = told_of("first-transfer", "first-transfer-heavy-leg", Rule::Tripped);
    assert!(!told.contains("No load was to blame"), "{told}");
}

#[test]
fn the_advice_after_a_collision_follows_from_what_joined_the_sources() {
    let told = told_of("no-slide", "collision-main-closed", Rule::Collision);
    assert!(told.contains("before the main breaker goes on"), "{told}");
    let told = told_of(
        "grid-comes-back-early",
        "grid-comes-back-early-main-on",
        Rule::Collision,
    );
    assert!(told.contains("comes back with no warning"), "{told}");
    let told = told_of("no-slide", "collision-main-closed", Rule::LineFed);
    assert!(!told.contains("neighbors were on your generator"), "{told}");
    assert!(!told.contains("Turn the main breaker off before"), "{told}");
}

#[test]
fn a_wet_joint_is_told_as_one_and_the_share_with_the_seconds_it_is_of() {
    let told = told_of("tingle", "tingle-lifted-live", Rule::Touch);
    assert!(told.contains("Water in the joint"), "{told}");
    assert!(!told.contains("Worn insulation"), "{told}");
    assert!(told.contains("stop a heart in 3"), "{told}");
}

#[test]
fn air_that_stays_below_the_deadly_figure_is_told_so_and_never_as_safe() {
    let told = told_of("garage-door-open", "garage-door-open-half", Rule::Indoors);
    assert!(told.contains("still below"), "{told}");
    assert!(told.contains("Point its exhaust away"), "{told}");
    let told = told_of("garage-door-open", "garage-door-open-half", Rule::Gas);
    assert!(told.contains("No share is safe"), "{told}");
}

#[test]
fn loads_that_a_street_joins_are_told_with_the_street() {
    let (drill, finding) = found("no-slide", "deadly-main-left-on", Rule::AllAtOnce);
    let told = explain(&drill, &finding).path;
    let ids: Vec<&str> = told.iter().map(|s| s.text.id.as_str()).collect();
    assert!(
        ids.ends_with(&["stage-street", "stage-asked-street"]),
        "{ids:?}"
    );
}

#[test]
fn what_to_do_while_fuel_burns_is_said() {
    let told = told_of("hot-refuel", "hot-refuel-in-a-rush", Rule::FuelFire);
    assert!(told.contains("Get away"), "{told}");
    assert!(told.contains("fire department"), "{told}");
    assert!(told.contains("no water"), "{told}");
}
