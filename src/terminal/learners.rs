//! The report of simulated learners: how many passed, whether marking and second judge agree, whether rules broken on purpose are caught, how long it takes to mark again.
//!
//! Runs are shared among the machine's cores; what is told of them hangs on the seed and their number alone, but for the seconds.
//! Not passed if the two judges differ on a run, if a run passes with a breach, if an expert fails, if a rule broken on purpose isn't caught, if a run is marked otherwise the second time, or if guided help breaks a critical rule or doesn't lead to a pass in time.
//!
//! The `--json` document has `version`, `seed`, `runs`, `learners`, `rules`, `disagreements`, `passed_with_a_breach`, `broken`, `not_judged`, `marked_again` and `guided`.
//! Each of `learners` has `kind`, `mistake` (or null), `passed` and `failed`; of `rules` `rule`, `both`, `neither` and `unsure`, numbers of runs; of `disagreements` `learner`, `drill`, `seed`, `rule` and `marked`; of `broken` `rule`, `how` and `caught_in`; of `not_judged` `rule` and `runs`.
//! `marked_again` has `runs`, `same` and `seconds`; `guided` has `states`, those from which a pass was possible, `passed`, `too_late` and `endangered`.

use std::collections::BTreeMap;

use serde_json::{Value, json};

use crate::evidence::learners::broken::{Broken, broken_rules};
use crate::evidence::learners::led::{AFTER_PCT, End, Led, led};
use crate::evidence::learners::{
    Agreement, Count, Disagreement, Kind, Outcome, Stock, agreement, counts, mark_again,
    not_judged, passed_with_a_breach,
};
use crate::words::{Arg, Message, Unit};

use super::output::Output;
use super::work::{cores, now, share};
use super::{DONE, JSON_VERSION, NOT_PASSED, faults};

/// Of so many runs one is marked again.
const MARKED_AGAIN: usize = 4;

/// Of so many runs one is gone on with from within as the guide says; a number that comes by every kind of learner.
const GUIDED: usize = 13;

/// What is told of the runs.
struct Told<'a> {
    counts: BTreeMap<(Kind, Option<&'a str>), Count>,
    rules: Vec<Agreement>,
    disagreements: Vec<Disagreement>,
    with_a_breach: usize,
    broken: Vec<Broken>,
    not_judged: BTreeMap<&'static str, usize>,
    again: Again,
    guided: Vec<Led>,
}

/// What came of marking runs again.
struct Again {
    runs: usize,
    same: usize,
    seconds: f64,
}

/// Lets learners play so many runs, and prints what came of them.
pub(super) fn run(runs: usize, seed: u64, as_json: bool, output: &mut Output<'_>) -> u8 {
    let stock = match Stock::of(seed) {
        Ok(stock) => stock,
        Err(found) => return faults::print_and_stop(&found, output),
    };
    let play = |number: usize, _: &dyn Fn(usize)| stock.play(number);
    let outcomes = share(runs, cores(), play, |progress| {
        output.say_error(&numbers(
            "learners-progress",
            &[("done", progress.done), ("all", runs)],
        ));
    });
    let outcomes: Vec<Outcome> = outcomes.into_iter().flatten().collect();
    let (rules, disagreements) = agreement(&outcomes);
    let told = Told {
        counts: counts(&outcomes),
        rules,
        disagreements,
        with_a_breach: passed_with_a_breach(&outcomes),
        broken: broken_rules(&outcomes),
        not_judged: not_judged(&outcomes),
        again: again(&outcomes),
        guided: guided(&outcomes),
    };
    if as_json {
        let document = document(&told, seed, outcomes.len());
        output.line(&format!("{document:#}"));
    } else {
        output.say(&numbers("learners-runs", &[("runs", outcomes.len())]));
        say(&told, output);
    }
    if told.holds() { DONE } else { NOT_PASSED }
}

/// Marks the first runs again, on all cores.
fn again(outcomes: &[Outcome]) -> Again {
    let runs = outcomes.len().div_ceil(MARKED_AGAIN);
    let began = now();
    let mark = |number: usize, _: &dyn Fn(usize)| outcomes.get(number).is_some_and(mark_again);
    let same = share(runs, cores(), mark, |_| {});
    Again {
        runs,
        same: same.into_iter().filter(|same| *same).count(),
        seconds: began.elapsed().as_secs_f64(),
    }
}

/// What guided help makes of states within one run in so many, on all cores.
fn guided(outcomes: &[Outcome]) -> Vec<Led> {
    let from = |number: usize, _: &dyn Fn(usize)| -> Vec<Led> {
        let outcome = outcomes.get(number * GUIDED);
        let states = outcome.into_iter().flat_map(|outcome| {
            let states = AFTER_PCT.into_iter();
            states.filter_map(|after_pct| led(outcome, after_pct))
        });
        states.collect()
    };
    let all = share(outcomes.len().div_ceil(GUIDED), cores(), from, |_| {});
    all.into_iter().flatten().collect()
}

impl Told<'_> {
    fn led_to(&self, end: &End) -> usize {
        self.guided.iter().filter(|l| l.end == *end).count()
    }

    /// States from which a pass is possible.
    fn in_time(&self) -> usize {
        self.guided.len() - self.led_to(&End::TooLate)
    }

    fn endangered(&self) -> impl Iterator<Item = &Led> {
        self.guided.iter().filter(|l| !l.broken.is_empty())
    }

    fn caught(&self) -> usize {
        self.broken.iter().filter(|b| b.caught_in > 0).count()
    }

    fn experts_failed(&self) -> usize {
        let experts = self.counts.get(&(Kind::Expert, None));
        experts.map_or(0, |count| count.failed)
    }

    fn holds(&self) -> bool {
        self.disagreements.is_empty()
            && self.with_a_breach == 0
            && self.experts_failed() == 0
            && self.caught() == self.broken.len()
            && self.again.same == self.again.runs
            && self.endangered().next().is_none()
            && self.led_to(&End::Passed) == self.in_time()
    }
}

fn say(told: &Told<'_>, output: &mut Output<'_>) {
    output.blank();
    for kind in Kind::ALL {
        say_kind(told, kind, output);
    }
    output.blank();
    say_agreement(told, output);
    output.blank();
    let caught = [("caught", told.caught()), ("all", told.broken.len())];
    output.say(&numbers("learners-broken", &caught));
    for broken in told.broken.iter().filter(|b| b.caught_in == 0) {
        let message = named("learners-not-caught", "rule", broken.rule);
        output.say_error(&message.said("how", Message::new(broken.how.message_id())));
    }
    let again = [("runs", told.again.runs), ("same", told.again.same)];
    let again = numbers("learners-again", &again);
    output.say(&again.quantity("elapsed", told.again.seconds, Unit::Seconds));
    say_guided(told, output);
}

fn say_guided(told: &Told<'_>, output: &mut Output<'_>) {
    let guided = [
        ("passed", told.led_to(&End::Passed)),
        ("all", told.in_time()),
        ("late", told.led_to(&End::TooLate)),
    ];
    output.say(&numbers("learners-guided", &guided));
    for led in &told.guided {
        if let End::Failed(rules) = &led.end {
            let message = named("learners-not-led", "drill", &led.drill)
                .with("seed", Arg::Verbatim(led.seed.to_string()))
                .with("deeds", count(led.n_deeds))
                .with("rules", Arg::Verbatim(rules.join(", ")));
            output.say_error(&message);
        }
    }
    for led in told.endangered() {
        for rule in &led.broken {
            let message = named("learners-endangered", "drill", &led.drill);
            output.say_error(&message.with("rule", Arg::Verbatim((*rule).to_owned())));
        }
    }
}

/// How many runs of a kind passed, and under it each mistake that was meant.
fn say_kind(told: &Told<'_>, kind: Kind, output: &mut Output<'_>) {
    let own = || told.counts.iter().filter(|((of, _), _)| *of == kind);
    let with = |message: Message, passed: usize, failed: usize| {
        let passed = message.with("passed", count(passed));
        passed.with("failed", count(failed))
    };
    let sum = |part: fn(&Count) -> usize| own().map(|(_, c)| part(c)).sum();
    let (passed, failed) = (sum(|c| c.passed), sum(|c| c.failed));
    let all = Message::new("learners-kind").said("kind", Message::new(kind.message_id()));
    output.say(&with(all, passed, failed));
    for ((_, way), of) in own() {
        if let Some(way) = way {
            let mistake = named("learners-mistake", "mistake", way);
            let text = output.words.say(&with(mistake, of.passed, of.failed));
            output.line(&format!("  {text}"));
        }
    }
}

fn say_agreement(told: &Told<'_>, output: &mut Output<'_>) {
    let sum = |part: fn(&Agreement) -> usize| told.rules.iter().map(part).sum::<usize>();
    let agreed = sum(|r| r.both + r.neither);
    output.say(&numbers(
        "learners-agreed",
        &[
            ("agreed", agreed),
            ("all", agreed + told.disagreements.len()),
            ("rules", told.rules.len()),
            ("unsure", sum(|r| r.unsure)),
        ],
    ));
    for rule in &told.rules {
        let own = [("both", rule.both), ("neither", rule.neither)];
        let message = named("learners-rule", "rule", rule.rule);
        let message = own
            .into_iter()
            .fold(message, |m, (n, c)| m.with(n, count(c)));
        let text = output
            .words
            .say(&message.with("unsure", count(rule.unsure)));
        output.line(&format!("  {text}"));
    }
    for (rule, runs) in &told.not_judged {
        let message = named("learners-not-judged", "rule", rule);
        output.say(&message.with("runs", count(*runs)));
    }
    for differ in &told.disagreements {
        let id = if differ.marked {
            "learners-marked-alone"
        } else {
            "learners-judged-alone"
        };
        let message = named(id, "drill", &differ.drill)
            .with("seed", Arg::Verbatim(differ.seed.to_string()))
            .with("rule", Arg::Verbatim(differ.rule.to_owned()))
            .said("kind", Message::new(differ.kind.message_id()));
        output.say_error(&message);
    }
    if told.with_a_breach > 0 {
        let runs = [("runs", told.with_a_breach)];
        output.say_error(&numbers("learners-passed-with-a-breach", &runs));
    }
}

fn count(n: usize) -> Arg {
    Arg::Count(i64::try_from(n).unwrap_or(i64::MAX))
}

fn numbers(id: &'static str, all: &[(&'static str, usize)]) -> Message {
    let message = Message::new(id);
    all.iter()
        .fold(message, |m, (name, n)| m.with(name, count(*n)))
}

fn named(id: &'static str, argument: &'static str, name: &str) -> Message {
    Message::new(id).with(argument, Arg::Verbatim(name.to_owned()))
}

fn document(told: &Told<'_>, seed: u64, runs: usize) -> Value {
    let learners = told.counts.iter().map(|((kind, mistake), c)| {
        json!({ "kind": kind.name(), "mistake": mistake, "passed": c.passed, "failed": c.failed })
    });
    let rules = told.rules.iter().map(
        |r| json!({ "rule": r.rule, "both": r.both, "neither": r.neither, "unsure": r.unsure }),
    );
    let disagreements = told.disagreements.iter().map(|d| {
        json!({ "learner": d.kind.name(), "drill": d.drill, "seed": d.seed, "rule": d.rule, "marked": d.marked })
    });
    let broken = told
        .broken
        .iter()
        .map(|b| json!({ "rule": b.rule, "how": b.how.name(), "caught_in": b.caught_in }));
    let not_judged = told.not_judged.iter();
    let not_judged = not_judged.map(|(rule, runs)| json!({ "rule": rule, "runs": runs }));
    let again = &told.again;
    json!({
        "version": JSON_VERSION, "seed": seed, "runs": runs,
        "learners": learners.collect::<Vec<Value>>(), "rules": rules.collect::<Vec<Value>>(),
        "disagreements": disagreements.collect::<Vec<Value>>(),
        "passed_with_a_breach": told.with_a_breach,
        "broken": broken.collect::<Vec<Value>>(),
        "not_judged": not_judged.collect::<Vec<Value>>(),
        "guided": {
            "states": told.in_time(), "passed": told.led_to(&End::Passed),
            "too_late": told.led_to(&End::TooLate),
            "endangered": told.endangered().count(),
        },
        "marked_again": { "runs": again.runs, "same": again.same, "seconds": again.seconds },
    })
}
