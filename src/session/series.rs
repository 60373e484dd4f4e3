//! The curves of a debrief: what a run's trace held at each whole second.
//!
//! A trace records every change and every ten seconds, so between two of its moments a value is held as it was last.
//! Cords, wires and air that stay within 1 °C or 1 ppm are left out.

use crate::apparatus::branch_wire::INSULATION_C;
use crate::drill::{Drill, Moment};
use crate::words::{Message, Unit, name_of};

use super::Session;
use super::view::SeriesView;

/// Parts per million from which an alarm has to sound within four hours: UL 2034, checked.
const ALARM_PPM: f64 = 70.0;

/// A curve before it is drawn: its name, what it is of, its unit with the sign of it.
type Head = (String, Message, (&'static str, Unit));

/// A limit with the id of its label.
type Limit = Option<(f64, &'static str)>;

impl Session {
    /// The curves of a drill.
    pub(super) fn series(&self, drill: &Drill) -> Vec<SeriesView> {
        let mut all = self.loads(drill);
        all.extend(self.volts(drill));
        all.extend(self.warmth(drill));
        all.extend(self.gas(drill));
        all
    }

    fn loads(&self, drill: &Drill) -> Vec<SeriesView> {
        let site = drill.site();
        let rated = |m: &Moment| site.generator.spec_at(&m.positions).rated_w;
        let most = drill.trace().moments.iter().map(rated).fold(0.0, f64::max);
        let head = |name: &str| {
            (
                name.to_owned(),
                Message::new(format!("series-{name}")),
                ("W", Unit::Watts),
            )
        };
        let limit = |watts| Some((watts, "series-load-limit"));
        let generator = self.curve(drill, head("load"), limit(most), &|m| {
            m.readings.generator.watts.max(0.0)
        });
        let battery = site.battery.as_ref().map(|b| {
            self.curve(drill, head("battery"), limit(b.rated_w), &|m| {
                m.readings.battery.watts
            })
        });
        let solar = site.solar.as_ref().map(|s| {
            self.curve(drill, head("solar"), limit(s.watts), &|m| {
                m.readings.solar_w
            })
        });
        [Some(generator), battery, solar]
            .into_iter()
            .flatten()
            .collect()
    }

    fn volts(&self, drill: &Drill) -> Vec<SeriesView> {
        let line = &drill.site().line;
        let pole = line
            .poles
            .get(line.crew_pole)
            .map_or("", |p| p.name.as_str());
        let head = |name: &str, unit| {
            (
                name.to_owned(),
                Message::new(format!("series-{name}")),
                unit,
            )
        };
        vec![
            self.curve(drill, head("leg-one", ("V", Unit::Volts)), None, &|m| {
                m.readings.point("bus").legs_v[0]
            }),
            self.curve(drill, head("leg-two", ("V", Unit::Volts)), None, &|m| {
                m.readings.point("bus").legs_v[1]
            }),
            self.curve(drill, head("line", ("V", Unit::Volts)), None, &|m| {
                m.readings.point(pole).volts
            }),
            self.curve(drill, head("frequency", ("Hz", Unit::Hertz)), None, &|m| {
                m.readings.generator.hz
            }),
        ]
    }

    /// Cords and wires in walls, those that warmed.
    fn warmth(&self, drill: &Drill) -> Vec<SeriesView> {
        let site = drill.site();
        let head = |name: &str| (name.to_owned(), name_of(name), ("°C", Unit::Celsius));
        let cords = site.cords.iter().enumerate().map(|(index, cord)| {
            let limit = Some((cord.make.rated_c(), "series-heat-limit"));
            self.curve(drill, head(&cord.name), limit, &|m| {
                m.conditions.cord(index).hottest_c()
            })
        });
        let wires = site.wires().enumerate().map(|(index, wire)| {
            let limit = Some((INSULATION_C, "series-heat-limit"));
            self.curve(drill, head(&wire.name), limit, &|m| {
                m.conditions.wire_c(index)
            })
        });
        cords.chain(wires).filter(moves).collect()
    }

    /// Carbon monoxide, room by room, where there was any.
    fn gas(&self, drill: &Drill) -> Vec<SeriesView> {
        let rooms: [(&str, &dyn Fn(&Moment) -> f64); 3] = [
            ("air", &|m| m.conditions.ppm()),
            ("air-garage", &|m| m.conditions.air.garage.co_ppm),
            ("air-next-door", &|m| m.conditions.indoors.next_door.ppm),
        ];
        let curves = rooms.into_iter().map(|(name, ppm)| {
            let head = (
                name.to_owned(),
                Message::new(format!("series-{name}")),
                ("ppm", Unit::Ppm),
            );
            self.curve(drill, head, Some((ALARM_PPM, "series-air-limit")), ppm)
        });
        curves.filter(moves).collect()
    }

    fn curve(
        &self,
        drill: &Drill,
        (name, label, (unit, of)): Head,
        limit: Limit,
        value: &dyn Fn(&Moment) -> f64,
    ) -> SeriesView {
        SeriesView {
            name,
            label: self.words.label(&label),
            unit,
            of,
            points: thinned(&each_second(&drill.trace().moments, value)),
            limit: limit.map(|(value, _)| value),
            limit_label: limit.map_or_else(String::new, |(_, id)| self.words.say_id(id)),
            numbers: self.words.numbers(),
        }
    }
}

fn moves(series: &SeriesView) -> bool {
    let values = || series.points.iter().map(|(_, value)| *value);
    values().fold(f64::MIN, f64::max) - values().fold(f64::MAX, f64::min) >= 1.0
}

/// The value at each whole second, as the last moment until then had it.
fn each_second(moments: &[Moment], value: &dyn Fn(&Moment) -> f64) -> Vec<(u64, f64)> {
    let mut points: Vec<(u64, f64)> = Vec::new();
    let mut held = 0.0;
    for moment in moments {
        let due = moment.at.millis().div_ceil(1000);
        let next = points.last().map_or(0, |(second, _)| second + 1);
        points.extend((next..due).map(|second| (second, held)));
        held = value(moment);
        if let Some(last) = points.last_mut().filter(|(s, _)| *s == due) {
            last.1 = held;
        } else if moment.at.millis() == due * 1000 {
            points.push((due, held));
        }
    }
    points
}

/// Without the seconds that a line through the others passes anyway.
fn thinned(points: &[(u64, f64)]) -> Vec<(u64, f64)> {
    let same =
        |a: Option<&(u64, f64)>, value: f64| a.is_some_and(|p| p.1.to_bits() == value.to_bits());
    let kept = points.iter().enumerate().filter(|(index, (_, value))| {
        let before = index.checked_sub(1).and_then(|i| points.get(i));
        !(same(before, *value) && same(points.get(index + 1), *value))
    });
    kept.map(|(_, point)| *point).collect()
}
