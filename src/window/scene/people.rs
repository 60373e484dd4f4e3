//! People, as simple paper figures: crew, household, learner.
//!
//! Harm is a ring and words (see the callouts), never a picture of it: a harmed person is drawn as a still figure.
//! It does not cover likeness of anybody.

use bevy::math::Vec2;

use crate::session::view::{PersonState, PersonView, StreetView};
use crate::window::theme;
use crate::window::theme::{Ink, Light};

use super::brush::Brush;
use super::plan::{GROUND, PHASE, Plan, crew_side};
use super::street::outdoors;

/// Paints everybody.
pub(super) fn paint(brush: &mut Brush, street: &StreetView, plan: &Plan, light: Light) {
    for person in &street.people {
        let Some(at) = plan.anchors.get(&person.id).copied() else {
            continue;
        };
        match person.id.as_str() {
            "crew" => {
                let pole = plan.poles.iter().find(|(id, _)| *id == person.place);
                let x = pole.map_or(at.x - 34.0, |(_, x)| *x);
                let side = Vec2::new(crew_side(x), 1.0);
                brush.at_size(Vec2::new(x, GROUND), side, |brush| {
                    crew(brush, person, Vec2::new(x + 34.0, at.y), light);
                });
            }
            "learner" => {
                let indoors = person.place == "house";
                let cloth = if indoors {
                    theme::BLUE
                } else {
                    outdoors(theme::BLUE, light).mix(theme::CREAM, 0.1)
                };
                if light.dark > 0.4 {
                    brush.glow(
                        at + Vec2::new(16.0, -46.0),
                        Vec2::new(52.0, 30.0),
                        theme::ROOM_LIT.alpha(0.28),
                    );
                }
                figure(brush, at, cloth, 1.0, (pose(person), Hair::Short));
                if pose(person) == Pose::Standing {
                    brush.round_rect(
                        at + Vec2::new(-3.0, -66.0),
                        Vec2::new(6.0, 4.0),
                        1.5,
                        theme::YELLOW,
                    );
                }
            }
            _ => {
                let cloth = if person.place == "house" {
                    theme::CLOTH
                } else {
                    outdoors(theme::CLOTH, light)
                };
                let pose = pose(person);
                figure(brush, at, cloth, 0.95, (pose, Hair::Long));
                let child = at - Vec2::X * 24.0;
                let lighter = cloth.mix(theme::CREAM, 0.4);
                figure(brush, child, lighter, 0.66, (pose, Hair::Short));
            }
        }
    }
}

/// How a person is drawn on the ground or in the house.
fn pose(person: &PersonView) -> Pose {
    match person.state {
        PersonState::Unwell | PersonState::Harmed => Pose::Sunk,
        PersonState::Well | PersonState::Working | PersonState::Back => Pose::Standing,
    }
}

fn crew(brush: &mut Brush, person: &PersonView, at: Vec2, light: Light) {
    let vest = outdoors(theme::VEST, light).mix(theme::VEST, 0.5);
    match person.state {
        PersonState::Working | PersonState::Harmed | PersonState::Unwell
            if at.y < GROUND - 100.0 =>
        {
            let bucket = Vec2::new(at.x, PHASE + 62.0);
            let shoulder = bucket + Vec2::new(0.0, -34.0);
            brush.round_rect(
                bucket + Vec2::new(-10.0, -38.0),
                Vec2::new(20.0, 34.0),
                6.0,
                vest,
            );
            let works = person.state == PersonState::Working;
            // Upright at work; the head sinks where somebody is harmed.
            let (head, helmet) = if works {
                (Vec2::new(0.0, -48.0), Vec2::new(0.0, -53.0))
            } else {
                (Vec2::new(-10.0, -39.0), Vec2::new(-13.0, -43.0))
            };
            brush.disk(bucket + head, 9.0, theme::PAPER);
            brush.ellipse(bucket + helmet, Vec2::new(10.5, 6.5), theme::ENAMEL);
            if works {
                let hand = Vec2::new(at.x - 26.0, PHASE + 6.0);
                brush.stroke(
                    &[shoulder, shoulder + Vec2::new(-14.0, -4.0), hand],
                    5.0,
                    vest,
                );
                brush.disk(hand, 4.5, theme::ORANGE.mix(theme::PAPER, 0.3));
            }
            brush.round_rect(
                bucket + Vec2::new(-17.0, -14.0),
                Vec2::new(34.0, 38.0),
                6.0,
                outdoors(theme::PAPER, light),
            );
            if !works {
                let rim = bucket + Vec2::new(-15.0, -17.0);
                brush.stroke(&[shoulder, rim, rim + Vec2::new(-2.0, 24.0)], 5.0, vest);
            }
            brush.rect(
                bucket.x - 17.0,
                bucket.y - 14.0,
                34.0,
                5.0,
                outdoors(theme::STEEL, light),
            );
        }
        PersonState::Well
        | PersonState::Back
        | PersonState::Working
        | PersonState::Unwell
        | PersonState::Harmed => {
            let feet = Vec2::new(at.x - 60.0, GROUND);
            let pose = pose(person);
            figure(brush, feet, vest, 1.0, (pose, Hair::Short));
            let helmet = match pose {
                Pose::Standing => Vec2::new(0.0, -62.0),
                Pose::Sunk => Vec2::new(2.0, -37.0),
            };
            brush.ellipse(feet + helmet, Vec2::new(10.5, 6.5), theme::ENAMEL);
        }
    }
}

/// How somebody carries themselves.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Pose {
    Standing,
    /// On the floor, the head low: not well.
    Sunk,
}

/// How somebody wears their hair.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Hair {
    Short,
    Long,
}

/// A figure; `at` is where its feet are.
fn figure(brush: &mut Brush, at: Vec2, cloth: Ink, size: f32, (pose, hair): (Pose, Hair)) {
    brush.at_size(at, Vec2::splat(size), |brush| {
        let p = |x: f32, y: f32| at + Vec2::new(x, y);
        let trousers = cloth.mix(theme::RUBBER, 0.5);
        let sleeve = cloth.mix(theme::RUBBER, 0.15);
        match pose {
            Pose::Standing => {
                for side in [-1.0, 1.0] {
                    brush.ellipse(p(6.5 * side, -1.5), Vec2::new(5.5, 2.4), theme::RUBBER);
                    let leg = [p(4.2 * side, -28.0), p(5.2 * side, -3.0)];
                    brush.stroke(&leg, 6.6, trousers);
                }
                behind(brush, p(0.0, -58.0), hair);
                torso(brush, at, cloth);
                for side in [-1.0, 1.0] {
                    let arm = [
                        p(8.0 * side, -46.0),
                        p(12.6 * side, -36.0),
                        p(11.4 * side, -26.0),
                    ];
                    brush.stroke(&arm, 4.6, sleeve);
                    brush.disk(p(11.2 * side, -24.6), 2.6, theme::PAPER);
                }
                head(brush, p(0.0, -58.0));
            }
            Pose::Sunk => {
                brush.ellipse(p(25.0, -2.0), Vec2::new(4.6, 2.6), theme::RUBBER);
                let leg = [p(-2.0, -7.0), p(12.0, -15.0), p(22.0, -3.0)];
                brush.stroke(&leg, 7.0, trousers);
                behind(brush, p(2.0, -33.0), hair);
                torso(brush, at + Vec2::new(-4.0, 22.0), cloth);
                let arm = [p(-3.0, -23.0), p(5.0, -13.0), p(13.0, -13.0)];
                brush.stroke(&arm, 4.6, sleeve);
                brush.disk(p(14.0, -13.0), 2.6, theme::PAPER);
                head(brush, p(2.0, -33.0));
            }
        }
    });
}

/// From hips to shoulders, for feet at a place.
fn torso(brush: &mut Brush, feet: Vec2, cloth: Ink) {
    let p = |x: f32, y: f32| feet + Vec2::new(x, y);
    brush.rect(feet.x - 2.6, feet.y - 53.0, 5.2, 6.0, theme::PAPER);
    let sides = [
        p(-7.0, -25.0),
        p(-10.0, -45.0),
        p(-7.0, -49.5),
        p(-3.0, -50.5),
        p(3.0, -50.5),
        p(7.0, -49.5),
        p(10.0, -45.0),
        p(7.0, -25.0),
    ];
    brush.convex(&sides, cloth);
}

/// What of the hair hangs down behind shoulders and head.
fn behind(brush: &mut Brush, head: Vec2, hair: Hair) {
    if hair == Hair::Long {
        let corner = head + Vec2::new(-10.0, -3.0);
        brush.round_rect(corner, Vec2::new(20.0, 17.0), 5.0, hair_ink());
    }
}

fn hair_ink() -> Ink {
    theme::WOOD.mix(theme::RUBBER, 0.55)
}

/// A head with its hair: a cap over the upper half.
fn head(brush: &mut Brush, at: Vec2) {
    brush.disk(at, 8.5, theme::PAPER);
    let cap: Vec<Vec2> = (0..=12_u8)
        .map(|i| {
            let angle = std::f32::consts::PI * (1.0 + f32::from(i) / 12.0);
            at - Vec2::Y + Vec2::from_angle(angle) * 9.2
        })
        .collect();
    brush.convex(&cap, hair_ink());
    for side in [-1.0, 1.0] {
        brush.disk(at + Vec2::new(3.2 * side, 1.6), 1.0, theme::RUBBER);
    }
}
