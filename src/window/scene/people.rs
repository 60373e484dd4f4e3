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
                figure(brush, at, cloth, 1.0);
                brush.rect(at.x + 1.0, at.y - 59.0, 6.0, 3.0, theme::YELLOW);
            }
            _ => {
                let cloth = if person.place == "house" {
                    theme::CLOTH
                } else {
                    outdoors(theme::CLOTH, light)
                };
                figure(brush, at, cloth, 0.95);
                figure(
                    brush,
                    at + Vec2::new(-22.0, 0.0),
                    cloth.mix(theme::CREAM, 0.4),
                    0.66,
                );
            }
        }
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
            figure(brush, feet, vest, 1.0);
            brush.ellipse(
                feet + Vec2::new(0.0, -62.0),
                Vec2::new(10.5, 6.5),
                theme::ENAMEL,
            );
        }
    }
}

/// A standing figure; `at` is where its feet are.
fn figure(brush: &mut Brush, at: Vec2, cloth: Ink, size: f32) {
    let p = |x: f32, y: f32| at + Vec2::new(x, y) * size;
    let legs = cloth.mix(theme::RUBBER, 0.5);
    brush.stroke(&[p(-4.0, -28.0), p(-5.0, 0.0)], 6.0 * size, legs);
    brush.stroke(&[p(4.0, -28.0), p(5.0, 0.0)], 6.0 * size, legs);
    brush.round_rect(
        p(-9.0, -50.0),
        Vec2::new(18.0, 26.0) * size,
        6.0 * size,
        cloth,
    );
    brush.stroke(
        &[p(-8.0, -45.0), p(-13.0, -26.0)],
        4.5 * size,
        cloth.mix(theme::RUBBER, 0.15),
    );
    brush.stroke(
        &[p(8.0, -45.0), p(13.0, -26.0)],
        4.5 * size,
        cloth.mix(theme::RUBBER, 0.15),
    );
    brush.disk(p(0.0, -58.0), 8.5 * size, theme::PAPER);
    // Hair: a cap over the upper half of the head.
    let cap: Vec<Vec2> = (0..=12_u8)
        .map(|i| {
            let angle = std::f32::consts::PI * (1.0 + f32::from(i) / 12.0);
            p(0.0, -59.0) + Vec2::from_angle(angle) * 9.2 * size
        })
        .collect();
    brush.convex(&cap, theme::WOOD.mix(theme::RUBBER, 0.55));
}
