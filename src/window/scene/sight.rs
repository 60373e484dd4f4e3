//! What part of the plan the scene shows: nearer or farther, moved, and back to what was seen before.
//!
//! While a consequence is told, the scene follows it by itself, until somebody chooses another sight.
//! Never farther than the whole plan and never past its edges: see [`super::frame::Frame::at`].
//! It does not cover turning the scene.

use bevy::math::Vec2;

use super::frame::{Frame, PLAN};

/// The nearest that things can be brought.
const NEAREST: f32 = 8.0;
/// How near a stage of a consequence is brought: the next poles are still to be seen.
const TOLD: f32 = 1.7;
/// How much nearer a press of a key or button brings things.
const STEP: f32 = 1.4;
/// The share of the room by which a press of a key moves it.
const STRIDE: f32 = 0.2;
/// How many sights can be gone back to.
const KEPT: usize = 64;
/// How fast a glide comes to its end, one in this many seconds.
const PACE_S: f32 = 0.12;

/// A part of the plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sight {
    /// How much nearer than the whole plan, from 1.
    pub(super) nearness: f32,
    /// The point of the plan that stands where the plan's middle stands when all of it is seen.
    pub(super) middle: Vec2,
}

impl Default for Sight {
    fn default() -> Self {
        Self::WHOLE
    }
}

impl Sight {
    /// All of the plan.
    pub(crate) const WHOLE: Self = Self {
        nearness: 1.0,
        middle: Vec2::new(PLAN.x / 2.0, PLAN.y / 2.0),
    };

    /// Whether there is more of the plan than can be seen.
    pub(crate) fn is_part(self) -> bool {
        self.nearness > 1.0
    }

    /// A stage of a consequence, at its point of the plan.
    pub(super) fn of_stage(at: Vec2) -> Self {
        Self {
            nearness: TOLD,
            middle: at,
        }
    }

    /// Nearer by a factor, or farther if it is less than 1; a point of the plan stays where it is.
    pub(crate) fn nearer(self, factor: f32, about: Vec2) -> Self {
        let nearness = (self.nearness * factor).clamp(1.0, NEAREST);
        Self {
            nearness,
            middle: about + (self.middle - about) * (self.nearness / nearness),
        }
    }

    /// Moved by a length of the plan.
    pub(crate) fn moved(self, by: Vec2) -> Self {
        Self {
            middle: self.middle + by,
            ..self
        }
    }

    /// On the way to another after some seconds, and whether it has arrived.
    pub(super) fn toward(self, goal: Self, seconds: f32) -> (Self, bool) {
        let share = 1.0 - (-seconds / PACE_S).exp();
        let nearness = self.nearness * (goal.nearness / self.nearness).powf(share);
        let middle = self.middle.lerp(goal.middle, share);
        let near = (nearness / goal.nearness - 1.0).abs() < 0.002
            && middle.distance(goal.middle) * goal.nearness < 0.5;
        (
            if near {
                goal
            } else {
                Self { nearness, middle }
            },
            near,
        )
    }
}

/// A change of what is seen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum See {
    /// Brought nearer or farther.
    Nearer(Sight),
    /// Moved by hand: it follows at once.
    Moved(Sight),
    /// All of the plan.
    Whole,
    /// What was seen before.
    Before,
}

impl See {
    /// A step nearer or farther, about the middle of what is seen.
    pub(crate) fn step(frame: &Frame, nearer: bool) -> Self {
        let factor = if nearer { STEP } else { 1.0 / STEP };
        Self::Nearer(frame.sight().nearer(factor, frame.seen().center()))
    }

    /// A stride in a direction, right and down being positive.
    pub(crate) fn stride(frame: &Frame, direction: Vec2) -> Self {
        Self::Moved(
            frame
                .sight()
                .moved(direction * frame.seen().size() * STRIDE),
        )
    }
}

/// What somebody chose to see, and what was seen before.
#[derive(Debug, Default)]
pub(crate) struct Outlook {
    /// None as long as the scene may follow what is told.
    chosen: Option<Sight>,
    before: Vec<Option<Sight>>,
    last: Option<See>,
}

impl Outlook {
    /// Changes what is seen.
    /// Steps of one kind that follow each other are gone back to as one.
    pub(crate) fn see(&mut self, change: See) {
        if change == See::Before {
            if let Some(before) = self.before.pop() {
                self.chosen = before;
            }
        } else {
            let kind = |see: &See| std::mem::discriminant(see);
            if self.last.as_ref().map(kind) != Some(kind(&change)) {
                self.before.push(self.chosen);
                let over = self.before.len().saturating_sub(KEPT);
                self.before.drain(..over);
            }
            self.chosen = Some(match change {
                See::Nearer(sight) | See::Moved(sight) => sight,
                See::Whole | See::Before => Sight::WHOLE,
            });
        }
        self.last = Some(change);
    }

    /// Lets the scene follow by itself again.
    pub(crate) fn follow(&mut self) {
        *self = Self::default();
    }

    /// What is to be seen, unless somebody chose something else: what is told now.
    pub(super) fn sight(&self, told: Option<Sight>) -> Sight {
        self.chosen.or(told).unwrap_or(Sight::WHOLE)
    }

    /// Whether the scene is under the hand and may not lag.
    pub(super) fn is_held(&self) -> bool {
        matches!(self.last, Some(See::Moved(_)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::window::scene::frame::Look;

    fn frame() -> Frame {
        Frame::new(Vec2::new(1280.0, 720.0), Look::default())
    }

    #[test]
    fn the_point_under_the_pointer_stays_when_things_come_nearer() {
        let about = Vec2::new(300.0, 400.0);
        let before = frame().at(Sight::WHOLE.nearer(2.0, Vec2::new(500.0, 400.0)));
        let after = before.at(before.sight().nearer(1.7, about));
        assert!(before.pixel(about).distance(after.pixel(about)) < 0.01);
    }

    #[test]
    fn nothing_beyond_the_plan_comes_into_sight() {
        let whole = frame().bounds();
        for far in [Vec2::splat(-9_000.0), Vec2::splat(9_000.0)] {
            for factor in [0.1, 1.0, 3.0, 100.0] {
                let sight = Sight::WHOLE.nearer(factor, Vec2::ZERO).moved(far);
                let frame = frame().at(sight);
                let seen = frame.seen();
                assert!(whole.inflate(0.1).contains(seen.min), "{seen:?}");
                assert!(whole.inflate(0.1).contains(seen.max), "{seen:?}");
                assert!(frame.sight().nearness <= NEAREST);
                assert!(
                    frame
                        .whole()
                        .pixel(Vec2::ZERO)
                        .distance(self::frame().pixel(Vec2::ZERO))
                        < 0.01
                );
            }
        }
    }

    #[test]
    fn a_row_of_steps_is_gone_back_to_at_once_and_the_scene_follows_again() {
        let mut outlook = Outlook::default();
        let told = Some(Sight::of_stage(Vec2::new(100.0, 206.0)));
        assert_eq!(
            outlook.sight(told),
            Sight::of_stage(Vec2::new(100.0, 206.0))
        );
        let two = Sight::WHOLE.nearer(2.0, Vec2::ZERO);
        outlook.see(See::Nearer(two));
        outlook.see(See::Nearer(two.nearer(2.0, Vec2::ZERO)));
        outlook.see(See::Whole);
        assert_eq!(outlook.sight(told), Sight::WHOLE);
        outlook.see(See::Before);
        assert_eq!(outlook.sight(told), two.nearer(2.0, Vec2::ZERO));
        outlook.see(See::Before);
        assert_eq!(
            outlook.sight(told),
            Sight::of_stage(Vec2::new(100.0, 206.0))
        );
        outlook.see(See::Before);
        assert_eq!(outlook.sight(None), Sight::WHOLE);
    }

    #[test]
    fn a_glide_arrives_within_a_second() {
        let goal = Sight::of_stage(Vec2::new(60.0, 206.0));
        let mut now = Sight::WHOLE;
        let mut steps = 0;
        loop {
            let (next, arrived) = now.toward(goal, 1.0 / 30.0);
            now = next;
            steps += 1;
            if arrived {
                break;
            }
            assert!(steps < 30, "{now:?}");
        }
        assert_eq!(now, goal);
        assert!(steps > 5, "a jump is no glide");
    }
}
