//! Consequence and debrief, as views.

use std::collections::BTreeSet;

use crate::drill::{Beside, Drill, Moment, What};
use crate::explain::{Explanation, Stage, Told, explain, told};
use crate::marking::{Finding, Harm, Rule, Verdict, pressing, speaks_against};
use crate::scenario::Criterion;
use crate::site::{ControlId, Fed as FedBy};
use crate::units::DrillTime;
use crate::words::{Arg, Message};

use super::command::Notice;
use super::conductors::{fed_by, fed_word};
use super::log::event_message;
use super::slide::done_message;
use super::view::{
    ConsequenceView, CriterionView, DebriefView, Fed, FindingView, PHASES, PageView, Phase,
    PinView, StageView, StoodView, TrackView,
};
use super::{Open, Session};

impl Session {
    /// The consequence that is held, if one is.
    pub fn consequence(&self) -> Option<ConsequenceView> {
        let open = self.open.as_ref()?;
        let finding = open.held.first()?;
        let told = explain(&open.drill, finding);
        let stages = self.stages(&told.path);
        let alike = |before: &Finding| {
            let before = self.stages(&explain(&open.drill, before).path);
            let both = stages.iter().zip(&before);
            both.take_while(|(one, other)| one == other).count()
        };
        let n_told = open.understood.iter().map(alike).max().unwrap_or(0);
        let waiting = open.held.len() - 1;
        Some(ConsequenceView {
            title: self.words.say(&told.what),
            heading: self.headed(&told.heading, &told.path),
            n_told: n_told.min(stages.len().saturating_sub(1)),
            stages,
            others: if waiting > 0 {
                let count = Arg::Count(i64::try_from(waiting).unwrap_or(i64::MAX));
                let message = Message::new("consequence-others").with("count", count);
                self.words.say(&message)
            } else {
                String::new()
            },
            why: self.words.say(&told.why),
            now: self.words.say(&told.now),
            harm: matches!(finding.rule, Rule::Shock | Rule::Overcome),
        })
    }

    /// The debrief, once the drill is over.
    pub fn debrief(&self) -> Option<DebriefView> {
        let open = self.open.as_ref()?;
        let verdict = open.verdict.as_ref()?;
        let n_breaches = verdict.findings.iter().filter(|f| f.breach).count();
        let summary = if verdict.passed {
            "debrief-summary-passed"
        } else {
            "debrief-summary-not-passed"
        };
        let count = Arg::Count(i64::try_from(n_breaches).unwrap_or(i64::MAX));
        let end = format!("debrief-end-{}", goal_word(&open.drill));
        let summary = Message::new(summary)
            .with("findings", count)
            .said("end", Message::new(end));
        let pins = verdict.findings.iter().enumerate();
        let pressing = pressing(open.drill.site(), open.drill.trace(), &verdict.findings);
        Some(DebriefView {
            phase: open.phase,
            pages: self.pages(open),
            stood: self.stood(&open.drill),
            pins: pins
                .map(|(finding, f)| PinView {
                    second: f.at.millis() / 1000,
                    finding,
                })
                .collect(),
            next: self.next(open, verdict),
            heading: self.verdict_said(verdict),
            passed: verdict.passed,
            summary: self.words.say(&summary),
            seed: self.seed_said(open),
            variation: self.variation_said(open),
            rewound: if open.rewound > 0 {
                let times = Arg::Count(i64::from(open.rewound));
                let message = Message::new("debrief-rewound").with("times", times);
                self.words.say(&message)
            } else {
                String::new()
            },
            helped: if open.help.n_shown > 0 {
                let times = Arg::Count(i64::from(open.help.n_shown));
                let message = Message::new("debrief-helped").with("times", times);
                self.words.say(&message)
            } else {
                String::new()
            },
            criteria: self.criteria(&open.drill, verdict),
            findings: self.findings(&open.drill, &verdict.findings, pressing),
            predictions: self.predictions(open),
            tracks: self.tracks(open),
            series: self.series(&open.drill),
            moments: self.moments().into_iter().map(DrillTime::millis).collect(),
            length_ms: open.drill.trace().end().millis(),
            log: self.log_lines(open),
        })
    }

    /// Each criterion with what it asks, and when something was found that speaks against it.
    fn criteria(&self, drill: &Drill, verdict: &Verdict) -> Vec<CriterionView> {
        let say = |criterion: &Criterion, part: &str| {
            let id = format!("criterion-{}-{part}", criterion.name());
            self.words.say_id(&id)
        };
        let crew = drill.site().line_work.is_some();
        let no_goal = drill.scenario().goal.appliances.is_empty();
        let text = |criterion: &Criterion| match criterion {
            Criterion::Restoration if no_goal && goal_word(drill) == "utility" => {
                say(criterion, "back")
            }
            Criterion::Restoration => say(criterion, goal_word(drill)),
            Criterion::Isolation | Criterion::Load if crew => say(criterion, "line"),
            Criterion::Isolation | Criterion::People | Criterion::Order | Criterion::Load => {
                say(criterion, "text")
            }
        };
        let view = |(criterion, met): &(Criterion, bool)| CriterionView {
            title: say(criterion, "title"),
            met: *met,
            critical: criterion.is_critical(),
            text: self.ruled(text(criterion)) + &self.against((*criterion, *met), verdict),
        };
        verdict.criteria.iter().map(view).collect()
    }

    /// What a criterion asks for, told as a rule and not as what came of it.
    fn ruled(&self, rule: String) -> String {
        let message = Message::new("criterion-rule").with("rule", Arg::Verbatim(rule));
        self.words.say(&message)
    }

    /// When something was found that speaks against a criterion, or that could go better though it is met; empty where nothing was.
    /// Beside people of whom none came to harm, also what can hurt people though it is judged elsewhere.
    fn against(&self, (criterion, met): (Criterion, bool), verdict: &Verdict) -> String {
        let found = verdict.findings.iter();
        let better = |f: &Finding| !f.breach && f.rule.criterion() == criterion;
        let speaks = |f: &&Finding| {
            if met {
                better(f)
            } else {
                speaks_against(f, criterion)
            }
        };
        let (counted, aside): (Vec<&Finding>, Vec<&Finding>) =
            found.filter(speaks).partition(|f| met || f.breach);
        let times: BTreeSet<DrillTime> = counted.iter().map(|f| f.at).collect();
        let id = if met {
            "criterion-better"
        } else {
            "criterion-against"
        };
        let people = met && criterion == Criterion::People;
        let filed_elsewhere = |f: &&Finding| people && f.breach && f.harm == Some(Harm::CanHurt);
        let can_hurt = verdict.findings.iter().filter(filed_elsewhere);
        self.at_times(id, times)
            + &self.not_shown(aside.first())
            + &self.at_times("criterion-can-hurt", can_hurt.map(|f| f.at).collect())
    }

    /// Why something was rightly not done, in place of a moment at which nothing stood in the way; nothing where nothing was left so.
    fn not_shown(&self, left: Option<&&Finding>) -> String {
        let harm = left.and_then(|f| f.evidence.iter().find(|(name, _)| *name == "harm"));
        harm.map_or_else(String::new, |(name, harm)| {
            let message = Message::new("criterion-not-shown").with(name, harm.clone());
            format!(" {}", self.words.say(&message))
        })
    }

    /// A sentence about some moments; nothing where there are none.
    fn at_times(&self, id: &str, times: BTreeSet<DrillTime>) -> String {
        if times.is_empty() {
            return String::new();
        }
        let times: Vec<String> = times.into_iter().map(|at| self.clock(at)).collect();
        let times = Arg::Verbatim(times.join(", "));
        let message = Message::new(id).with("times", times);
        format!(" {}", self.words.say(&message))
    }

    /// All findings as views; what was said of one before is not said again.
    fn findings(
        &self,
        drill: &Drill,
        findings: &[Finding],
        presses: Option<usize>,
    ) -> Vec<FindingView> {
        let mut views: Vec<FindingView> = Vec::new();
        let mut whole: Vec<(&Finding, FindingView)> = Vec::new();
        for (index, finding) in findings.iter().enumerate() {
            let mut view = self.finding(drill, finding, presses == Some(index));
            view.step = self.parted_said(drill, findings, finding);
            let own = view.clone();
            self.once(&whole, finding, &mut view);
            whole.push((finding, own));
            let same = |v: &&FindingView| v.rule == view.rule;
            let same: Vec<&FindingView> = views.iter().filter(same).collect();
            let said =
                |part: fn(&FindingView) -> &String| same.iter().any(|v| part(v) == part(&view));
            let (why, instead, source) =
                (said(|v| &v.why), said(|v| &v.instead), said(|v| &v.source));
            for (said, part) in [
                (why, &mut view.why),
                (instead, &mut view.instead),
                (source, &mut view.source),
            ] {
                if said {
                    part.clear();
                }
            }
            views.push(view);
        }
        views
    }

    /// What parts the state that a finding shows from another of the same second that is shown too; nothing where there is no other.
    fn parted_said(&self, drill: &Drill, findings: &[Finding], finding: &Finding) -> String {
        let moments = &drill.trace().moments;
        let Some((change, after)) = parted_by(drill, findings, finding) else {
            return String::new();
        };
        let was = change.checked_sub(1).and_then(|i| moments.get(i));
        let what = moments.get(change).and_then(|moment| match &moment.what {
            What::Did(action) => Some(done_message(drill.scenario(), was, action)),
            What::Happened(event) => Some(event_message(drill.site(), event)),
            What::Began | What::Refused(..) | What::Learnt(_) | What::Sampled => None,
        });
        let id = if after {
            "told-step-after"
        } else {
            "told-step-before"
        };
        let said = what.map(|what| {
            let what = Arg::Verbatim(self.words.label(&what));
            self.words.say(&Message::new(id).with("what", what))
        });
        said.unwrap_or_default()
    }

    /// A finding as a view, with what to do now where it is the one that presses.
    fn finding(&self, drill: &Drill, finding: &Finding, presses: bool) -> FindingView {
        let Explanation {
            what,
            heading,
            path,
            why,
            instead,
            source,
            now,
        } = explain(drill, finding);
        let critical = finding.breach && finding.rule.criterion().is_critical();
        FindingView {
            rule: finding.rule.name().to_owned(),
            clock: self.clock(finding.at),
            clock_ms: finding.at.millis(),
            shown_ms: shown_at(drill, finding).millis(),
            critical,
            aside: !finding.breach,
            after_harm: !finding.breach && finding.rule == Rule::NotRestored,
            what: self.words.say(&what),
            now: if presses {
                self.words.say(&now)
            } else {
                String::new()
            },
            step: String::new(),
            heading: self.headed(&heading, &path),
            path: self.stages(&path),
            why: self.words.say(&why),
            instead: self.words.say(&instead),
            source: self.words.say(&source),
        }
    }

    /// What stages are headed with; nothing where there are none.
    fn headed(&self, heading: &Message, path: &[Stage]) -> String {
        if path.is_empty() {
            String::new()
        } else {
            self.words.say(heading)
        }
    }

    /// The verdict in a few words: who or what came to harm first, then whether it is a pass.
    fn verdict_said(&self, verdict: &Verdict) -> String {
        let passed = if verdict.passed {
            "debrief-passed"
        } else {
            "debrief-not-passed"
        };
        let harms = verdict.findings.iter().filter(|f| f.breach);
        let worst = harms.filter_map(|f| f.harm).max();
        let burned = |f: &Finding| f.breach && f.rule.burns();
        let burned = verdict.findings.iter().any(burned);
        let said = worst.and_then(|harm| match harm {
            Harm::CanHurt => None,
            Harm::Hurt => Some("debrief-harm-hurt"),
            Harm::MayHaveKilled => Some("debrief-harm-killed"),
        });
        let said = said
            .into_iter()
            .chain(burned.then_some("debrief-harm-burned"));
        let said: Vec<String> = said
            .chain([passed])
            .map(|id| self.words.say_id(id))
            .collect();
        said.join(" ")
    }

    pub(super) fn stages(&self, path: &[Stage]) -> Vec<StageView> {
        let view = |s: &Stage| StageView {
            at: s.at.clone(),
            text: self.words.label(&s.text),
            value: self.words.say(&s.value),
        };
        path.iter().map(view).collect()
    }

    /// What fed the line, the house and the fridge, over time.
    fn tracks(&self, open: &Open) -> Vec<TrackView> {
        let drill = &open.drill;
        let line = &drill.site().line;
        let pole = line
            .poles
            .get(line.crew_pole)
            .map_or("", |p| p.name.as_str());
        let site = drill.site();
        let own = |label: &str, point: &str| (self.words.say_id(label), point.to_owned());
        let mut rows = vec![own("track-line", pole), own("track-house", "bus")];
        let subpanels = site.subpanels.iter().map(|s| format!("bus-{}", s.name));
        rows.extend(subpanels.map(|point| (self.name(&point), point)));
        rows.extend(site.inlets.iter().map(|i| own("track-inlet", &i.name)));
        if site.inlets.is_empty() {
            let point = "generator-outlet";
            rows.push((self.name(point), point.to_owned()));
        }
        rows.into_iter()
            .map(|(label, point)| TrackView {
                label,
                stretches: self.stretches(drill, |m| m.readings.point(&point).fed),
            })
            .collect()
    }

    fn stretches(
        &self,
        drill: &Drill,
        fed: impl Fn(&Moment) -> FedBy,
    ) -> Vec<(u64, u64, Fed, String)> {
        let mut stretches: Vec<(u64, u64, Fed, String)> = Vec::new();
        for moment in &drill.trace().moments {
            let now = fed_by(fed(moment));
            let at = moment.at.millis();
            match stretches.last_mut() {
                Some(last) if last.2 == now => last.1 = at,
                last => {
                    if let Some(last) = last {
                        last.1 = at;
                    }
                    stretches.push((at, at, now, self.words.say_id(fed_word(now))));
                }
            }
        }
        stretches
    }

    /// The head of each page, with what the learner said there.
    fn pages(&self, open: &Open) -> Vec<PageView> {
        let page = |phase: Phase| {
            let name = phase.name();
            PageView {
                phase,
                title: self.words.say_id(&format!("debrief-{name}-title")),
                ask: self.words.say_id(&format!("debrief-{name}-ask")),
                answers: said_on(&open.beside, phase).is_some(),
                said: said_on(&open.beside, phase).cloned().unwrap_or_default(),
            }
        };
        PHASES.into_iter().map(page).collect()
    }

    /// What stands otherwise at the end than at the start.
    fn stood(&self, drill: &Drill) -> Vec<StoodView> {
        let site = drill.site();
        let start = &drill.scenario().start;
        let ids = (0..).map(ControlId).zip(&site.controls);
        let moved = ids.filter(|(id, _)| start.get(*id) != drill.positions().get(*id));
        moved
            .map(|(id, control)| StoodView {
                label: self.name(&control.name),
                start: self.name(control.said(site.position_name(start, id))),
                end: self.name(control.said(site.position_name(drill.positions(), id))),
            })
            .collect()
    }

    /// Turns to the next page, or to the one before.
    pub(super) fn turn(&mut self, onward: bool) -> Vec<Notice> {
        if let Some(open) = self.open.as_mut().filter(|o| o.verdict.is_some()) {
            let at = PHASES
                .iter()
                .position(|p| *p == open.phase)
                .unwrap_or_default();
            let to = if onward { at + 1 } else { at.saturating_sub(1) };
            open.phase = PHASES.get(to).copied().unwrap_or(open.phase);
        }
        Vec::new()
    }

    /// Keeps what the learner says on the page that is open; the pages that tell keep nothing.
    pub(super) fn reflect(&mut self, text: &str) -> Vec<Notice> {
        if let Some(open) = self.open.as_mut().filter(|o| o.verdict.is_some()) {
            let said = match open.phase {
                Phase::Happened => &mut open.beside.happened,
                Phase::Felt => &mut open.beside.felt,
                Phase::Why | Phase::Next | Phase::Verdict => return Vec::new(),
            };
            let words: Vec<&str> = text.split_whitespace().collect();
            *said = words.join(" ");
        }
        Vec::new()
    }
}

fn said_on(beside: &Beside, phase: Phase) -> Option<&String> {
    match phase {
        Phase::Happened => Some(&beside.happened),
        Phase::Felt => Some(&beside.felt),
        Phase::Why | Phase::Next | Phase::Verdict => None,
    }
}

/// What a drill is to end with, as its goal has it: the house on the utility, on its own source, or something else.
fn goal_word(drill: &Drill) -> &'static str {
    let (site, goal) = (drill.site(), &drill.scenario().goal);
    let engine = site.generator.engine;
    let runs = |(control, wanted): &(ControlId, Vec<String>)| {
        *control == engine && wanted.iter().any(|w| w == "running")
    };
    let last = drill.trace().moments.last();
    let on_utility = |m: &Moment| m.readings.point("bus").fed.utility;
    if goal.back_on_utility && site.line_work.is_some() {
        "line"
    } else if goal.back_on_utility && (!goal.safe_stop || last.is_some_and(on_utility)) {
        "utility"
    } else if !goal.appliances.is_empty() && goal.at_end.iter().any(runs) {
        "own"
    } else {
        "asked"
    }
}

/// What parts the state of its second that a finding shows from another that is shown, by its place in the trace, and whether it is shown after that; much may follow from one deed in one second.
fn parted_by(drill: &Drill, findings: &[Finding], own: &Finding) -> Option<(usize, bool)> {
    let moments = &drill.trace().moments;
    let network = |f: &&Finding| matches!(told(f.rule), Told::Way | Told::Sum);
    let second = |f: &Finding| shown_at(drill, f).millis() / 1000;
    let state = |f: &Finding| moments.get(f.moment).map(|m| &m.readings);
    let same = findings.iter().filter(network);
    let mut shown: Vec<&Finding> = same.filter(|f| second(f) == second(own)).collect();
    shown.sort_by_key(|f| f.moment);
    shown.dedup_by(|a, b| state(a) == state(b));
    let place = shown.iter().position(|f| state(f) == state(own))?;
    let (from, to, after) = match place.checked_sub(1).and_then(|i| shown.get(i)) {
        Some(earlier) => (*earlier, own, true),
        None => (own, *shown.get(1)?, false),
    };
    network(&own).then_some(())?;
    let between = from.moment + 1..=to.moment;
    let did = |i: &usize| {
        moments
            .get(*i)
            .is_some_and(|m| matches!(m.what, What::Did(_)))
    };
    let settled = |i: &usize| moments.get(*i).map(|m| &m.readings) == state(to);
    let tells = |i: &usize| matches!(moments.get(*i)?.what, What::Happened(_)).then_some(*i);
    let deed = between.clone().find(did);
    let change = deed.or_else(|| {
        (0..=between.clone().find(settled)?)
            .rev()
            .find_map(|i| tells(&i))
    });
    Some((change?, after))
}

/// When the moment was that a finding shows.
pub(super) fn shown_at(drill: &Drill, finding: &Finding) -> DrillTime {
    let shown = drill.trace().moments.get(finding.moment);
    shown.map_or(finding.at, |moment| moment.at)
}
