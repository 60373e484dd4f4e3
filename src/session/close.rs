//! A place seen close: what can be operated, tested, looked at and asked there, as a view.

use crate::drill::{Action, CALLEES, Drill, Known, LISTENERS, Sight, write_action};
use crate::scenario::Scenario;
use crate::scenario::question::is_live;
use crate::site::{
    Control, ControlId, Interlock, Kind, Moved, Operator, PositionId, Site, Transfer,
};
use crate::units::DrillTime;
use crate::words::{Arg, Message, Unit, name_of};

use super::acts::{act_said, stands_said, touches};
use super::equipment::locked;
use super::log::did_message;
use super::phasors::points_at;
use super::view::{ChoiceView, CloseView, ControlKind, ControlView, DeedView, ShownView};
use super::{Open, Practice, Session};

/// Places that open as a close view, in the order in which they are offered.
const PLACES: [&str; 10] = [
    "panel",
    "transfer",
    "subpanel",
    "solar",
    "generator",
    "cords",
    "house",
    "line",
    "phone",
    "answers",
];

/// Places of a drill that open as a close view: those where nothing can be operated are left out, but for street and phone.
pub(super) fn places(scenario: &Scenario) -> impl Iterator<Item = &'static str> + '_ {
    let site = &scenario.site;
    let offered = |place: &&str| match *place {
        "answers" => !scenario.questions.is_empty(),
        "line" | "phone" => true,
        _ if site.line_work.is_some() => false,
        "transfer" | "subpanel" | "solar" => site.controls.iter().any(|c| c.place == *place),
        _ => true,
    };
    PLACES.into_iter().filter(offered)
}

impl Session {
    /// A place seen close; `None` if no drill is open or the place isn't there.
    pub fn close(&self, place: &str) -> Option<CloseView> {
        let open = self.open.as_ref()?;
        let site = open.drill.site();
        let place = places(open.drill.scenario()).find(|p| *p == place)?;
        let controls = site
            .controls
            .iter()
            .enumerate()
            .filter(|(_, c)| c.place == place && c.operator != Operator::World);
        Some(CloseView {
            place: place.to_owned(),
            title: self.words.say_id(&format!("place-{place}")),
            description: self.description(open, place),
            test: match open.practice {
                Practice::Assessed => self.words.say_id("close-test"),
                Practice::Coached | Practice::Guided => String::new(),
            },
            controls: controls
                .filter_map(|(i, c)| self.control(&open.drill, i, c))
                .collect(),
            deeds: self.deeds(open, place),
            interlock: place == "panel" && site.panel.has_slide(),
            readings: self.in_sight(open, place),
            phasors: self.phasors(open, place),
            faces: self.faces(open, place),
            tag: self.tag(open, place),
        })
    }

    fn description(&self, open: &Open, place: &str) -> String {
        self.words.say(&seen_there(open.drill.site(), place))
    }

    fn control(&self, drill: &Drill, index: usize, control: &Control) -> Option<ControlView> {
        let id = ControlId(u16::try_from(index).ok()?);
        let stands = drill.positions().get(id);
        let position_id = control.positions.get(usize::from(stands.0))?;
        let choices = control
            .positions
            .iter()
            .zip(0_u8..)
            .filter(|(p, _)| !Control::is_by_itself(p));
        let name = self.words.label(&name_of(&control.name));
        let label = self.handle_label(drill.site(), id, &name);
        let position = self.words.say(&stands_said(control, position_id));
        let rating = if control.plate.rating_a > 0 {
            self.words
                .quantity(f64::from(control.plate.rating_a), Unit::Amps)
        } else {
            String::new()
        };
        let sentence = self.words.say(
            &Message::new("close-control")
                .with("name", Arg::Verbatim(name))
                .with("position", Arg::Verbatim(position.clone())),
        );
        Some(ControlView {
            id: control.name.clone(),
            label,
            kind: kind_view(control.kind),
            position,
            position_id: position_id.clone(),
            rating,
            choices: choices
                .map(|(p, i)| ChoiceView {
                    cord: drill.site().cords.iter().any(|c| c.name == *p),
                    ..self.choice(control, p, PositionId(i) == stands)
                })
                .collect(),
            slot: control.plate.slot,
            poles: control.plate.poles,
            tagged: locked(drill.site(), drill.positions(), &control.name),
            sentence,
        })
    }

    /// What stands beside a handle: a branch breaker is known by what it feeds.
    fn handle_label(&self, site: &Site, id: ControlId, name: &str) -> String {
        let moved = |t: &Transfer| match t.load {
            Moved::Circuit(circuit) if t.handle == id => site.circuits.get(circuit),
            Moved::Circuit(_) | Moved::MainPanel | Moved::Subpanel(_) => None,
        };
        let own = site.circuits.iter().find(|c| c.breaker == id);
        let circuit = own.or_else(|| site.transfers.iter().find_map(moved));
        circuit.map_or_else(
            || name.to_owned(),
            |c| self.words.label(&name_of(&format!("circuit-{}", c.name))),
        )
    }

    fn choice(&self, control: &Control, position: &str, current: bool) -> ChoiceView {
        let label = if current {
            stands_said(control, position)
        } else {
            act_said(control, position)
        };
        let caution = if touches(control, position) {
            self.words.say_id("act-touches")
        } else {
            String::new()
        };
        ChoiceView {
            id: position.to_owned(),
            label: self.words.label(&label),
            caution,
            current,
            ..ChoiceView::default()
        }
    }

    fn deeds(&self, open: &Open, place: &str) -> Vec<DeedView> {
        let drill = &open.drill;
        let site = drill.site();
        let known = open.known();
        let mut actions = Vec::new();
        match place {
            "panel" => {
                actions.push(Action::Look(Sight::Panel));
                actions.extend(points_at(place).iter().map(|point| test(point)));
            }
            "generator" => {
                actions.push(Action::Look(Sight::Generator));
                actions.extend(points_at(place).iter().map(|point| test(point)));
                if site.generator.spec.burn.fuel.is_poured() {
                    actions.push(Action::Refuel);
                }
            }
            "cords" => {
                actions.push(Action::Look(Sight::Cords));
                actions.extend(site.inlets.iter().map(|i| test(&i.name)));
                actions.extend(
                    site.cords
                        .iter()
                        .map(|c| test(&format!("{}-far-end", c.name))),
                );
            }
            "house" => {
                actions.push(Action::Look(Sight::House));
                actions.push(Action::Tell(crate::drill::Listener::Household));
                actions.extend(
                    site.circuits
                        .iter()
                        .map(|c| test(&format!("outlet-{}", c.name))),
                );
            }
            "line" => {
                actions.push(Action::Look(Sight::Street));
                if site.line_work.is_some() {
                    actions.extend(site.point_names().into_iter().map(Action::Test));
                }
            }
            "phone" => {
                actions.extend(CALLEES.map(Action::Call));
                actions.extend(LISTENERS.map(Action::Tell));
            }
            "answers" => {
                for question in &drill.scenario().questions {
                    let answers = question.about.answers(site).into_iter();
                    actions.extend(answers.map(|a| Action::Say(question.name.clone(), a)));
                }
            }
            _ => {}
        }
        let scenario = drill.scenario();
        actions
            .iter()
            .map(|a| self.deed(scenario, &known, a))
            .collect()
    }

    fn deed(&self, scenario: &Scenario, known: &Known, action: &Action) -> DeedView {
        let label = match action {
            Action::Look(sight) => Message::new("deed-look").name("place", sight.name()),
            Action::Test(point) => Message::new("deed-test").name("point", point),
            Action::Call(callee) => Message::new("deed-call").name("who", callee.name()),
            Action::Tell(listener) => Message::new("deed-tell").name("who", listener.name()),
            Action::Say(..) | Action::Happen(_) => did_message(scenario, action),
            Action::Refuel | Action::Set(..) | Action::Wait(_) => Message::new("deed-refuel"),
        };
        let (point, shown) = match action {
            Action::Test(point) => (
                self.words.label(&name_of(point)),
                self.shown_at(known, point),
            ),
            Action::Look(_)
            | Action::Call(_)
            | Action::Tell(_)
            | Action::Say(..)
            | Action::Happen(_)
            | Action::Refuel
            | Action::Set(..)
            | Action::Wait(_) => (String::new(), None),
        };
        DeedView {
            line: write_action(&scenario.site, action),
            label: self.words.label(&label),
            known: self.known_from(known, action),
            point,
            shown,
        }
    }

    /// What a tester showed at a point since something was moved last.
    fn shown_at(&self, known: &Known, point: &str) -> Option<ShownView> {
        let (at, reading) = known.points.get(point)?;
        let live = is_live(*reading);
        let word = if live { "tester-live" } else { "tester-dead" };
        let volts = reading.volts.max(reading.volts_across);
        Some(ShownView {
            volts: self
                .words
                .quantity(if live { volts } else { 0.0 }, Unit::Volts),
            word: self.words.say_id(word),
            at: self
                .words
                .say(&Message::new("tester-at").with("time", Arg::Clock(*at))),
            last: known.points.values().all(|(other, _)| other <= at),
        })
    }

    fn known_from(&self, known: &Known, action: &Action) -> String {
        match action {
            Action::Test(point) => {
                known
                    .points
                    .get(point)
                    .map_or_else(String::new, |(at, reading)| {
                        let id = if is_live(*reading) {
                            "known-live"
                        } else {
                            "known-dead"
                        };
                        let mut message = Message::new(id).with("time", Arg::Clock(*at));
                        if is_live(*reading) {
                            message = message.quantity(
                                "volts",
                                reading.volts.max(reading.volts_across),
                                Unit::Volts,
                            );
                        }
                        self.words.say(&message)
                    })
            }
            Action::Look(sight) => known.seen.get(sight).map_or_else(String::new, |at| {
                self.words
                    .say(&Message::new("known-seen").with("time", Arg::Clock(*at)))
            }),
            Action::Say(question, answer) => match known.said.get(question) {
                Some((at, said)) if said == answer => self
                    .words
                    .say(&Message::new("known-said").with("time", Arg::Clock(*at))),
                _ => String::new(),
            },
            Action::Call(_)
            | Action::Tell(_)
            | Action::Refuel
            | Action::Set(..)
            | Action::Wait(_)
            | Action::Happen(_) => String::new(),
        }
    }

    /// What is in plain sight besides lights and gauges: how the engine does, and where it stands.
    fn in_sight(&self, open: &Open, place: &str) -> Vec<String> {
        if place != "generator" {
            return Vec::new();
        }
        let view = self.generator(&open.drill);
        let engine = Message::new("street-thing")
            .with("name", Arg::Verbatim(self.words.label(&name_of("engine"))))
            .with("state", Arg::Verbatim(view.word));
        vec![self.words.say(&engine), view.place_words]
    }
}

/// How long the fuel lasts; nothing for a supply without an end.
pub(super) fn fuel_lasts(hours: f64) -> Option<Message> {
    let lasts = DrillTime::from_hours(hours)?;
    Some(Message::new("gauge-fuel-lasts").with("time", Arg::lasting(lasts)))
}

/// What one sees at a place.
pub(super) fn seen_there(site: &Site, place: &str) -> Message {
    match place {
        "panel" => Message::new(match site.panel.backfeed.map(|b| b.interlock) {
            Some(Interlock::Fitted) => "close-panel-interlock",
            Some(Interlock::Missing) => "close-panel-no-interlock",
            Some(Interlock::Misfitted) => "close-panel-misfitted",
            Some(Interlock::Defeated) => "close-panel-defeated",
            None => plain_panel(site),
        }),
        "line" if site.line_work.is_some() => Message::new("close-line-work"),
        "subpanel" if site.subpanels.iter().any(|s| s.pair.is_some()) => {
            let mut pairs = site.subpanels.iter().filter_map(|s| s.pair);
            let holds = pairs.all(|p| p.interlock.blocks());
            Message::new(if holds {
                "close-pair"
            } else {
                "close-pair-loose"
            })
        }
        "generator" if site.generator.machine.automatic.is_some() => {
            Message::new("close-generator-standby")
        }
        other => Message::new(format!("close-{other}")),
    }
}

/// What is seen of a panel whose main bars no generator feeds: where a generator comes in instead, and what keeps it from the street.
fn plain_panel(site: &Site) -> &'static str {
    let mut pairs = site.subpanels.iter().filter_map(|s| s.pair).peekable();
    if pairs.peek().is_none() {
        let none = site.transfers.is_empty();
        return if none {
            "close-panel-plain"
        } else {
            "close-panel-transfer"
        };
    }
    if pairs.all(|p| p.interlock.blocks()) {
        "close-panel-pair"
    } else {
        "close-panel-pair-loose"
    }
}

fn test(point: &str) -> Action {
    Action::Test(point.to_owned())
}

fn kind_view(kind: Kind) -> ControlKind {
    match kind {
        Kind::Breaker | Kind::Output | Kind::Line => ControlKind::Breaker,
        Kind::Main => ControlKind::Main,
        Kind::Backfed => ControlKind::BackfedBreaker,
        Kind::Lock => ControlKind::Lock,
        Kind::Plug => ControlKind::Plug,
        Kind::Placement => ControlKind::Placement,
        Kind::Engine => ControlKind::Engine,
        Kind::Switch => ControlKind::Switch,
        Kind::Disconnect => ControlKind::Disconnect,
        Kind::Gfci => ControlKind::Gfci,
        Kind::Transfer => ControlKind::Transfer,
        Kind::Lay => ControlKind::Lay,
        Kind::Opening => ControlKind::Opening,
        Kind::People => ControlKind::People,
    }
}
