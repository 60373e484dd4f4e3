//! Consequence and debrief, as views.

use crate::drill::{Drill, Moment};
use crate::explain::{Explanation, Stage, explain};
use crate::marking::Finding;
use crate::site::Fed as FedBy;
use crate::words::{Arg, Message};

use super::conductors::{fed_by, fed_word};
use super::view::{
    ConsequenceView, CriterionView, DebriefView, Fed, FindingView, SeriesView, StageView, TrackView,
};
use super::{Open, Session};

impl Session {
    /// The consequence that is held, if one is.
    pub fn consequence(&self) -> Option<ConsequenceView> {
        let open = self.open.as_ref()?;
        let finding = open.held.first()?;
        let told = explain(&open.drill, finding);
        Some(ConsequenceView {
            title: self.words.say(&told.what),
            stages: self.stages(&told.path),
            why: self.words.say(&told.why),
            now: self.words.say(&told.now),
            harm: matches!(
                finding.rule,
                crate::marking::Rule::Shock | crate::marking::Rule::Overcome
            ),
        })
    }

    /// The debrief, once the drill is over.
    pub fn debrief(&self) -> Option<DebriefView> {
        let open = self.open.as_ref()?;
        let verdict = open.verdict.as_ref()?;
        let n_breaches = verdict.findings.iter().filter(|f| f.breach).count();
        let heading = if verdict.passed {
            "debrief-passed"
        } else {
            "debrief-not-passed"
        };
        let summary = if verdict.passed {
            "debrief-summary-passed"
        } else {
            "debrief-summary-not-passed"
        };
        let count = Arg::Count(i64::try_from(n_breaches).unwrap_or(i64::MAX));
        Some(DebriefView {
            heading: self.words.say_id(heading),
            passed: verdict.passed,
            summary: self
                .words
                .say(&Message::new(summary).with("findings", count)),
            seed: self.seed_said(open),
            variation: self.variation_said(open),
            rewound: if open.rewound > 0 {
                let times = Arg::Count(i64::from(open.rewound));
                let message = Message::new("debrief-rewound").with("times", times);
                self.words.say(&message)
            } else {
                String::new()
            },
            criteria: verdict
                .criteria
                .iter()
                .map(|(criterion, met)| CriterionView {
                    title: self
                        .words
                        .say_id(&format!("criterion-{}-title", criterion.name())),
                    met: *met,
                    critical: criterion.is_critical(),
                    text: self
                        .words
                        .say_id(&format!("criterion-{}-text", criterion.name())),
                })
                .collect(),
            findings: verdict
                .findings
                .iter()
                .map(|f| self.finding(&open.drill, f))
                .collect(),
            predictions: self.predictions(open),
            tracks: self.tracks(open),
            series: self.series(&open.drill),
            length_ms: open.drill.trace().end().millis(),
            log: self.log_lines(open),
        })
    }

    fn finding(&self, drill: &Drill, finding: &Finding) -> FindingView {
        let Explanation {
            what,
            path,
            why,
            instead,
            source,
            now: _,
        } = explain(drill, finding);
        FindingView {
            rule: finding.rule.name().to_owned(),
            clock: self.clock(finding.at),
            clock_ms: finding.at.millis(),
            critical: finding.breach && finding.rule.criterion().is_critical(),
            what: self.words.say(&what),
            path: self.stages(&path),
            why: self.words.say(&why),
            instead: self.words.say(&instead),
            source: self.words.say(&source),
        }
    }

    pub(super) fn stages(&self, path: &[Stage]) -> Vec<StageView> {
        let view = |s: &Stage| StageView {
            at: s.at.clone(),
            text: self.words.say(&s.text),
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

    fn series(&self, drill: &Drill) -> Vec<SeriesView> {
        let spec = &drill.site().generator.spec;
        let moments = &drill.trace().moments;
        let points = |value: &dyn Fn(&Moment) -> f64| {
            moments.iter().map(|m| (m.at.millis(), value(m))).collect()
        };
        let line = &drill.site().line;
        let pole = line
            .poles
            .get(line.crew_pole)
            .map_or("", |p| p.name.as_str());
        let label = |id: &str| self.words.say_id(id);
        vec![
            SeriesView {
                label: label("series-load"),
                points: points(&|m| m.readings.generator.watts.max(0.0)),
                limit: Some(spec.rated_w),
                limit_label: label("series-load-limit"),
            },
            SeriesView {
                label: label("series-line"),
                points: points(&|m| m.readings.point(pole).volts),
                limit: None,
                limit_label: String::new(),
            },
            SeriesView {
                label: label("series-air"),
                points: points(&|m| m.conditions.ppm()),
                limit: Some(ALARM_PPM),
                limit_label: label("series-air-limit"),
            },
        ]
    }
}

/// Parts per million from which an alarm has to sound within four hours: UL 2034, checked.
const ALARM_PPM: f64 = 70.0;
