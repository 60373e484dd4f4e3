//! What is said on the scene and where: the stage that is told, people, the line's numbers, things in trouble.
//!
//! It decides what is worth a callout; [`super::callouts`] finds room for it.

use bevy::math::{Rect, Vec2};

use crate::session::Detail;
use crate::session::view::{
    ApplianceState, ApplianceView, Fed, PersonState, PersonView, StageView, StreetView, WireKind,
    WireView,
};
use crate::window::both;
use crate::window::both::Side;
use crate::window::theme;
use crate::window::theme::Ink;

use super::plan::{GROUND, Plan};
use super::rooms::{LEFT, Spot};
use super::routes::Route;
use super::taken;

/// Something to say at a place.
pub(super) struct Call {
    /// What it speaks of: its middle.
    pub(super) at: Vec2,
    /// Where its pointer may end, all of them at that thing.
    pub(super) tips: Vec<Vec2>,
    pub(super) title: String,
    pub(super) text: String,
    pub(super) ink: Ink,
    /// Larger, and placed before the others.
    pub(super) loud: bool,
}

/// How many things in trouble are named at once; a mark stands at each of the others.
const TROUBLES: usize = 3;

/// What is said where, the loud first.
pub(super) fn calls(
    street: &StreetView,
    plan: &Plan,
    stage: Option<&StageView>,
    detail: Detail,
) -> Vec<Call> {
    let at = |id: &str| plan.anchors.get(id).copied();
    let Some(stage) = stage else {
        let mut calls: Vec<Call> = (street.people.iter())
            .filter_map(|p| person(p, at(&p.id)?))
            .collect();
        calls.extend(conductors(street, plan, detail));
        // Where somebody is hurt, no machine is talked of.
        let hurt = street.people.iter().any(is_hurt);
        let troubled = street.appliances.iter().filter(|_| !hurt);
        let troubled = troubled.filter_map(|a| trouble(a, plan.house.spots.get(&a.id)?));
        calls.extend(troubled.take(TROUBLES));
        return calls;
    };
    // While a consequence is told, nothing else is said: not to lie on what it tells of.
    let mut calls = Vec::new();
    let told = street.people.iter().find(|person| person.id == stage.at);
    if let Some(place) = at(&stage.at).filter(|_| !stage.value.is_empty() || told.is_some()) {
        let who = told.map(|p| both::each([&p.label, &p.word], |parts| parts.join(": ")));
        let (title, text) = match who {
            Some(who) if stage.value.is_empty() => (who, String::new()),
            Some(who) => (number(&stage.value).to_owned(), who),
            None => (number(&stage.value).to_owned(), String::new()),
        };
        calls.push(Call {
            at: place,
            tips: vec![place],
            title,
            text,
            ink: theme::PURPLE,
            loud: true,
        });
    }
    let others = street.people.iter().filter(|p| p.id != stage.at);
    calls.extend(
        others
            .filter(|p| is_hurt(p))
            .filter_map(|p| person(p, at(&p.id)?)),
    );
    calls
}

/// A text with a number stands once: it can be read in either language.
fn number(text: &str) -> &str {
    if text.contains(|c: char| c.is_ascii_digit()) {
        both::side(text, Side::First)
    } else {
        text
    }
}

fn is_hurt(view: &PersonView) -> bool {
    matches!(view.state, PersonState::Harmed | PersonState::Unwell)
}

/// The crew when it is here, and anybody who isn't well.
fn person(view: &PersonView, at: Vec2) -> Option<Call> {
    let hurt = is_hurt(view);
    // Four lines would hide the street: what they do is in the answers and in the words of the scene.
    let at_work_in_two = !hurt && both::is_both(&view.word);
    let text = if at_work_in_two { "" } else { &view.word };
    (hurt || view.id == "crew").then(|| Call {
        at,
        tips: sides(taken::person(view, at).inflate(-3.0)),
        title: view.label.clone(),
        text: text.to_owned(),
        ink: if hurt { theme::PURPLE } else { theme::VEST },
        loud: false,
    })
}

/// One callout for each thing that feeds the line, and one for each that feeds drop and cords.
fn conductors(street: &StreetView, plan: &Plan, detail: Detail) -> Vec<Call> {
    let mut told: Vec<(Fed, bool)> = Vec::new();
    let mut calls = Vec::new();
    for wire in &street.wires {
        let on_line = wire.kind == WireKind::Span;
        let told_of = matches!(wire.kind, WireKind::Drop | WireKind::Cord);
        let worth = on_line || (told_of && !wire.volts.is_empty());
        let key = (wire.fed, on_line);
        if !worth || told.contains(&key) || street.broken_spans.contains(&wire.id) {
            continue;
        }
        if let Some(at) = plan.anchors.get(&wire.id) {
            told.push(key);
            let same = street.wires.iter().filter(|other| {
                let spans = on_line && other.kind == WireKind::Span && other.fed == wire.fed;
                let whole = !street.broken_spans.contains(&other.id);
                whole && (spans || other.id == wire.id)
            });
            let routes = same.filter_map(|other| plan.routes.get(&other.id));
            let mut tips: Vec<Vec2> = routes.flat_map(|route| tips_of(route, plan)).collect();
            if tips.is_empty() {
                tips.push(*at);
            }
            calls.push(conductor(wire, (*at, tips), detail));
        }
    }
    calls
}

/// Between two points of a conductor to which a pointer may lead.
const TIP_STEP: f32 = 18.0;

/// Where a pointer may end on a conductor: anywhere out of doors, or in the house where it is nowhere else.
fn tips_of(route: &Route, plan: &Plan) -> Vec<Vec2> {
    let mut tips = Vec::new();
    for piece in &route.pieces {
        for pair in piece.windows(2) {
            let (Some(from), Some(to)) = (pair.first(), pair.last()) else {
                continue;
            };
            let steps = (from.distance(*to) / TIP_STEP).ceil().max(1.0);
            let mut step = 0.5;
            while step < steps {
                tips.push(from.lerp(*to, step / steps));
                step += 1.0;
            }
        }
    }
    let outside = |at: &Vec2| at.y < GROUND && (at.x < LEFT || at.x > plan.house.right + 4.0);
    if tips.iter().any(outside) {
        tips.retain(outside);
    }
    tips
}

/// The middles of a thing's upper edge and of both its sides.
fn sides(rect: Rect) -> Vec<Vec2> {
    let middle = rect.center();
    [
        (middle.x, rect.min.y),
        (rect.min.x, middle.y),
        (rect.max.x, middle.y),
    ]
    .map(Vec2::from)
    .to_vec()
}

fn conductor(wire: &WireView, (at, tips): (Vec2, Vec<Vec2>), detail: Detail) -> Call {
    let numbers: Vec<&str> = [wire.volts.as_str(), wire.amps.as_str()]
        .into_iter()
        .filter(|s| !s.is_empty() && detail != Detail::Live)
        .map(number)
        .collect();
    let (title, text) = if numbers.is_empty() {
        (wire.word.clone(), String::new())
    } else {
        (numbers.join(" · "), wire.word.clone())
    };
    Call {
        at,
        tips,
        title,
        text,
        ink: theme::fed_ink(wire.fed),
        loud: false,
    }
}

/// A machine that is strained or broken, or that the household begins to miss.
fn trouble(view: &ApplianceView, spot: &Spot) -> Option<Call> {
    let strained = matches!(
        view.state,
        ApplianceState::Strained | ApplianceState::Still | ApplianceState::Broken
    );
    (strained || view.worry >= 0.75).then(|| Call {
        at: spot.cover().center(),
        tips: sides(spot.cover()),
        title: view.label.clone(),
        text: view.word.clone(),
        ink: if strained {
            theme::YELLOW
        } else {
            theme::VERMILION.mix(theme::CREAM, 0.4)
        },
        loud: false,
    })
}

#[cfg(test)]
mod tests {
    use crate::window::both::Beside as _;

    use super::*;

    fn street() -> StreetView {
        let wire = |n: u8, fed: Fed| WireView {
            id: format!("span-{n}"),
            from: format!("pole-{}", n - 1),
            to: format!("pole-{n}"),
            fed,
            word: format!("{fed:?}"),
            volts: "7 200 V".to_owned(),
            ..WireView::default()
        };
        let weak = |id: &str| ApplianceView {
            id: id.to_owned(),
            state: ApplianceState::Strained,
            ..ApplianceView::default()
        };
        let pole = |n: u8| crate::session::view::PoleView {
            id: format!("pole-{n}"),
            at_ft: f32::from(n) * 100.0,
            ..crate::session::view::PoleView::default()
        };
        StreetView {
            poles: (0..5).map(pole).collect(),
            wires: vec![
                wire(1, Fed::Utility),
                wire(2, Fed::Utility),
                wire(3, Fed::Generator),
            ],
            appliances: ["fridge", "furnace", "sump", "dryer", "microwave"]
                .map(weak)
                .to_vec(),
            ..StreetView::default()
        }
    }

    #[test]
    fn each_source_of_the_line_is_told_once() {
        let street = street();
        let calls = calls(&street, &Plan::new(&street), None, Detail::Numbers);
        let of = |text: &str| calls.iter().filter(|c| c.text == text).count();
        assert_eq!((of("Utility"), of("Generator")), (1, 1));
    }

    #[test]
    fn the_least_detail_tells_what_feeds_a_thing_and_no_number() {
        let street = street();
        let plan = Plan::new(&street);
        let calls = |detail| calls(&street, &plan, None, detail);
        assert!(calls(Detail::Live).iter().any(|c| c.title == "Utility"));
        assert!(calls(Detail::Live).iter().all(|c| !c.title.contains('V')));
        let numbers = calls(Detail::Numbers);
        assert!(numbers.iter().any(|c| c.title == "7 200 V"));
    }

    #[test]
    fn two_languages_say_words_twice_and_numbers_once() {
        let mut first = street();
        let mut second = street();
        for wire in &mut second.wires {
            wire.word = format!("{}, in other words", wire.word);
        }
        first.beside(&second);
        let calls = calls(&first, &Plan::new(&first), None, Detail::Numbers);
        let utility = calls.iter().find(|c| c.title == "7 200 V");
        let text = utility.map(|c| both::SIDES.map(|side| both::side(&c.text, side)));
        assert_eq!(text, Some(["Utility", "Utility, in other words"]));
    }

    #[test]
    fn a_stage_has_the_word_alone() {
        let street = street();
        let stage = StageView {
            at: "span-3".to_owned(),
            value: "7 000 V".to_owned(),
            ..StageView::default()
        };
        let calls = calls(&street, &Plan::new(&street), Some(&stage), Detail::Numbers);
        assert!(
            calls
                .first()
                .is_some_and(|c| c.loud && c.title == "7 000 V")
        );
        assert_eq!(calls.len(), 1);
    }
}
