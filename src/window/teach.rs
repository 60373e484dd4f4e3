//! What lies on the desk of somebody who teaches: the page of a lesson, and how the wall shows a drill.
//!
//! The lesson itself is a view of the session; here is only how far one has come in it.

use crate::session::view::{LessonView, MomentView, StepView};

/// A lesson that is being taught.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Teaching {
    /// Its name.
    pub(super) lesson: String,
    /// The page: 0 is what comes before, then a page a step.
    pub(super) page: usize,
    /// How many moments of the drill that is open were dealt with.
    asked: usize,
}

impl Teaching {
    /// A lesson at its beginning.
    pub(super) fn new(lesson: &str) -> Self {
        Self {
            lesson: lesson.to_owned(),
            page: 0,
            asked: 0,
        }
    }

    /// Turns to a page.
    pub(super) fn turn(&mut self, page: usize) {
        self.page = page;
    }

    /// A drill begins: none of its moments has been dealt with.
    pub(super) fn begin_drill(&mut self) {
        self.asked = 0;
    }

    /// The moment that is held was talked about.
    pub(super) fn talked(&mut self) {
        self.asked += 1;
    }

    /// The step of the page; none on the page before all steps.
    pub(super) fn step<'a>(&self, view: &'a LessonView) -> Option<&'a StepView> {
        steps(view).nth(self.page.checked_sub(1)?)
    }

    /// The moment that has come and was not talked about yet.
    pub(super) fn moment<'a>(&self, view: &'a LessonView) -> Option<&'a MomentView> {
        let moments = &self.step(view)?.moments;
        moments.iter().filter(|m| m.reached).nth(self.asked)
    }
}

/// All steps of a lesson, session after session.
pub(super) fn steps(view: &LessonView) -> impl Iterator<Item = &StepView> {
    view.sessions.iter().flat_map(|session| &session.steps)
}

/// How the wall shows a drill to a room.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(super) struct Wall {
    /// Whether a second language stands beside the first.
    pub(super) second: bool,
    /// Whether the drill is held for the room to talk.
    pub(super) held: bool,
    /// What the light is on, by its id; all else is dimmed.
    pub(super) light: Option<String>,
}

impl Wall {
    /// Puts the light on something, or takes it away from there.
    pub(super) fn shine(&mut self, at: &str) {
        self.light = (self.light.as_deref() != Some(at)).then(|| at.to_owned());
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn lesson() -> LessonView {
        let moment = |ask: &str, reached| MomentView {
            ask: ask.to_owned(),
            reached,
            ..MomentView::default()
        };
        let step = StepView {
            moments: vec![
                moment("first", true),
                moment("second", false),
                moment("third", true),
            ],
            ..StepView::default()
        };
        LessonView {
            sessions: vec![crate::session::view::SessionPlanView {
                steps: vec![step],
                ..Default::default()
            }],
            ..LessonView::default()
        }
    }

    #[test]
    fn moments_are_held_once_each_as_they_come() {
        let view = lesson();
        let mut teaching = Teaching::new("any");
        assert_eq!(teaching.moment(&view), None, "before all steps");
        teaching.turn(1);
        let ask = |teaching: &Teaching| teaching.moment(&view).map(|m| m.ask.clone());
        assert_eq!(ask(&teaching).as_deref(), Some("first"));
        teaching.talked();
        assert_eq!(ask(&teaching).as_deref(), Some("third"));
        teaching.talked();
        assert_eq!(ask(&teaching), None);
        teaching.begin_drill();
        assert_eq!(ask(&teaching).as_deref(), Some("first"));
    }

    #[test]
    fn the_light_goes_on_and_off() {
        let mut wall = Wall::default();
        wall.shine("panel");
        assert_eq!(wall.light.as_deref(), Some("panel"));
        wall.shine("crew");
        assert_eq!(wall.light.as_deref(), Some("crew"));
        wall.shine("crew");
        assert_eq!(wall.light, None);
    }
}
