//! What is mounted on the line's poles to open it: the recloser at its head, and the switches whose break can be seen.
//!
//! A handle shows what it was told to do, never whether its contacts followed.
//! It does not cover cutouts, grounds, or what a crew does with any of them.

use crate::site::{At, ControlId, PositionId};
use crate::words::{Arg, Message, name_of};

use super::acts::stands_said;
use super::view::{DeviceKind, DeviceState, DeviceView};
use super::{Open, Session};

impl Session {
    /// The devices of the line, from its head on.
    pub(super) fn devices(&self, open: &Open) -> Vec<DeviceView> {
        let (drill, site) = (&open.drill, open.drill.site());
        let positions = drill.positions();
        let line = &site.line;
        let pole = |index: usize| line.poles.get(index).map(|pole| pole.name.clone());
        // Who works on the line knows how it stands; who only lives there sees it once the truth is shown.
        let known = site.line_work.is_some() || open.truth_is_shown();
        let recloser = DeviceView {
            id: "recloser".to_owned(),
            label: self.control_label(open, line.feeder),
            kind: DeviceKind::Recloser,
            pole: pole(0).unwrap_or_default(),
            state: if !known {
                DeviceState::Unknown
            } else if site.stands(positions, line.feeder, "closed") {
                DeviceState::Closed
            } else {
                DeviceState::Open
            },
            sentence: if known {
                self.stands_sentence(open, line.feeder)
            } else {
                self.control_label(open, line.feeder)
            },
            ..DeviceView::default()
        };
        let breaks = site.line_work.iter().flat_map(|work| &work.breaks);
        let switches = breaks.filter_map(|one| {
            let (at, span) = match one.at {
                At::Span(span) => {
                    let span = line.spans.get(span)?;
                    (span.from, span.name.clone())
                }
                At::Tie(pole) => (pole, String::new()),
            };
            let on = |id: ControlId| positions.get(id) == PositionId(1);
            let beside = [one.jumper, one.tag].into_iter().filter(|id| on(*id));
            let told = std::iter::once(one.handle).chain(beside);
            let told: Vec<String> = told.map(|id| self.stands_sentence(open, id)).collect();
            Some(DeviceView {
                id: one.name.clone(),
                label: self.control_label(open, one.handle),
                kind: DeviceKind::Switch,
                pole: pole(at)?,
                span,
                state: if on(one.handle) {
                    DeviceState::Open
                } else {
                    DeviceState::Closed
                },
                jumped: on(one.jumper),
                tagged: on(one.tag),
                sentence: told.join(" · "),
            })
        });
        std::iter::once(recloser).chain(switches).collect()
    }

    fn control_label(&self, open: &Open, id: ControlId) -> String {
        let control = open.drill.site().control(id);
        control.map_or_else(String::new, |c| self.words.label(&name_of(&c.name)))
    }

    /// The control's name and how it stands.
    fn stands_sentence(&self, open: &Open, id: ControlId) -> String {
        let site = open.drill.site();
        let Some(control) = site.control(id) else {
            return String::new();
        };
        let position = site.position_name(open.drill.positions(), id);
        let message = Message::new("street-thing")
            .with("name", Arg::Verbatim(self.control_label(open, id)))
            .with(
                "state",
                Arg::Verbatim(self.words.say(&stands_said(control, position))),
            );
        self.words.say(&message)
    }
}
