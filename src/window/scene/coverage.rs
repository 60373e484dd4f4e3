//! Where a card may lie on the scene, and to which point its pointer leads.
//!
//! The scene is a grid of cells, each as heavy as what is drawn there: words never, people and the engine hardly ever, the house seldom, sky and earth at no cost.
//! A card goes where what it would cover and the way to what it tells of weigh least together.
//! It does not cover what a card says: see [`super::calls`].

use bevy_egui::egui::{Pos2, Rect, Vec2, pos2, vec2};

use super::plan::count;

/// How heavy it is to lie on something.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Weight {
    /// A house next door, the poles' wood: something is lost, not much.
    Light,
    /// The house, the wires.
    Drawn,
    /// Things in it, devices on the line.
    Thing,
    /// People, the engine, the meter, signs.
    Kept,
    /// Other words.
    Words,
}

impl Weight {
    /// Of each point of a card that lies on it.
    fn of_point(self) -> f64 {
        match self {
            Self::Light => 0.6,
            Self::Drawn => 1.4,
            Self::Thing => 4.0,
            Self::Kept => 40.0,
            Self::Words => 400.0,
        }
    }

    /// Of each point of a pointer's length that crosses it.
    fn of_pointer(self) -> f64 {
        match self {
            Self::Light => 0.0,
            Self::Drawn => 8.0,
            Self::Thing => 20.0,
            Self::Kept => 60.0,
            Self::Words => 400.0,
        }
    }
}

/// Weight of each point of a pointer's length, and of each point of what is more than near.
const AWAY: f64 = 16.0;
const FAR: f64 = 40.0;
/// The longest pointer that is near, points.
const NEAR: f32 = 110.0;
/// What a pointer is longer than at least, points.
const LEAST_POINTER: f32 = 14.0;
/// A cell's side, points; in a large room more, so that there are never too many.
const CELL: f32 = 8.0;
/// The most cells side by side.
const MOST: f32 = 160.0;
/// Of how many cells one is tried as a card's corner.
const STRIDE: usize = 2;

/// What lies where.
pub(super) struct Coverage {
    room: Rect,
    cell: f32,
    columns: usize,
    rows: usize,
    heaviest: Vec<Option<Weight>>,
    /// Sums of the weights above and left of each cell's corner.
    sums: Vec<f64>,
}

impl Coverage {
    pub(super) fn new(room: Rect) -> Self {
        let cell = CELL.max(room.size().max_elem() / MOST);
        let (columns, rows) = (whole(room.width() / cell), whole(room.height() / cell));
        Self {
            room,
            cell,
            columns,
            rows,
            heaviest: vec![None; columns * rows],
            sums: Vec::new(),
        }
    }

    /// Lays something down where a shape says so of the middles of cells within a rectangle.
    pub(super) fn lay_where(&mut self, rect: Rect, weight: Weight, is_in: impl Fn(Pos2) -> bool) {
        let rect = rect.intersect(self.room);
        if !rect.is_positive() {
            return;
        }
        let (from, to) = (self.cell_at(rect.min), self.cell_at(rect.max));
        for row in from.1..=to.1.min(self.rows.saturating_sub(1)) {
            for column in from.0..=to.0.min(self.columns.saturating_sub(1)) {
                let middle = self.corner(column, row) + Vec2::splat(self.cell / 2.0);
                let at = row * self.columns + column;
                if let Some(cell) = self.heaviest.get_mut(at).filter(|_| is_in(middle)) {
                    *cell = (*cell).max(Some(weight));
                }
            }
        }
        self.sums.clear();
    }

    /// Lays a rectangle down.
    pub(super) fn lay(&mut self, rect: Rect, weight: Weight) {
        self.lay_where(rect, weight, |_| true);
    }

    /// Lays a wire down, or whatever else is thin.
    pub(super) fn lay_line(&mut self, from: Pos2, to: Pos2, weight: Weight) {
        let steps = (from.distance(to) / self.cell).ceil().clamp(1.0, 400.0);
        let mut step = 0.0;
        while step <= steps {
            let at = from + (to - from) * (step / steps);
            self.lay(Rect::from_center_size(at, Vec2::splat(2.0)), weight);
            step += 1.0;
        }
    }

    /// The lightest place for a card of this size, and the point that its pointer leads to: one of those that it may lead to, each with the room around it that stays free.
    pub(super) fn find(&mut self, size: Vec2, tips: &[(Pos2, f32)]) -> Option<(Rect, Pos2)> {
        if self.sums.is_empty() {
            self.add_up();
        }
        let bounds = self.room.shrink(4.0);
        let mut best: Option<(Rect, Pos2)> = None;
        let mut least = f64::INFINITY;
        for row in (0..self.rows).step_by(STRIDE) {
            for column in (0..self.columns).step_by(STRIDE) {
                let min = self.corner(column, row) + Vec2::splat(4.0);
                let rect = Rect::from_min_size(min, size);
                if !bounds.contains_rect(rect) {
                    continue;
                }
                let lies = self.weight(rect.expand(4.0));
                if lies >= least {
                    continue;
                }
                for (tip, around) in tips {
                    let end = rect.clamp(*tip);
                    let away = end.distance(*tip) - around;
                    let cost = lies + way(away);
                    if cost >= least {
                        continue;
                    }
                    let cost = cost + self.crossed(*tip, end, *around);
                    if cost < least {
                        (least, best) = (cost, Some((rect, *tip)));
                    }
                }
            }
        }
        best
    }

    /// What a rectangle would lie on.
    fn weight(&self, rect: Rect) -> f64 {
        let rect = rect.intersect(self.room);
        let (from, to) = (self.cell_at(rect.min), self.cell_at(rect.max));
        let to = ((to.0 + 1).min(self.columns), (to.1 + 1).min(self.rows));
        let sum = |(column, row): (usize, usize)| {
            let at = row * (self.columns + 1) + column;
            self.sums.get(at).copied().unwrap_or_default()
        };
        sum(to) - sum((from.0, to.1)) - sum((to.0, from.1)) + sum(from)
    }

    /// What a pointer would cross on its way from what it leads to, past the room that is that thing's own.
    fn crossed(&self, tip: Pos2, end: Pos2, around: f32) -> f64 {
        let length = tip.distance(end);
        let mut gone = around + self.cell;
        let mut cost = 0.0;
        while gone < length {
            let at = tip + (end - tip) * (gone / length);
            let (column, row) = self.cell_at(at);
            let here = self.heaviest.get(row * self.columns + column);
            cost += here
                .copied()
                .flatten()
                .map_or(0.0, |w| w.of_pointer() * f64::from(self.cell));
            gone += self.cell;
        }
        cost
    }

    fn add_up(&mut self) {
        let area = f64::from(self.cell * self.cell);
        self.sums = vec![0.0; (self.columns + 1) * (self.rows + 1)];
        for row in 0..self.rows {
            let mut along = 0.0;
            for column in 0..self.columns {
                let here = self.heaviest.get(row * self.columns + column);
                along += here.copied().flatten().map_or(0.0, |w| w.of_point() * area);
                let above = row * (self.columns + 1) + column + 1;
                let below = above + self.columns + 1;
                let sum = self.sums.get(above).copied().unwrap_or_default() + along;
                if let Some(place) = self.sums.get_mut(below) {
                    *place = sum;
                }
            }
        }
    }

    fn cell_at(&self, at: Pos2) -> (usize, usize) {
        let by = (at - self.room.min) / self.cell;
        (floor(by.x), floor(by.y))
    }

    fn corner(&self, column: usize, row: usize) -> Pos2 {
        let by = vec2(count(column), count(row)) * self.cell;
        pos2(self.room.left() + by.x, self.room.top() + by.y)
    }
}

/// What a pointer of this length weighs; one that is too short to be seen weighs more than one that can be.
fn way(away: f32) -> f64 {
    let short = (LEAST_POINTER - away).max(0.0);
    let far = (away - NEAR).max(0.0);
    f64::from(away.max(0.0) + 5.0 * short) * AWAY + f64::from(far) * FAR
}

/// A number of cells that a length takes, at least one.
fn whole(cells: f32) -> usize {
    floor(cells.ceil()).max(1)
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "clamped first"
)]
fn floor(cells: f32) -> usize {
    cells.clamp(0.0, 4_000.0) as usize
}

#[cfg(test)]
mod tests {
    use super::*;

    fn room() -> Coverage {
        Coverage::new(Rect::from_min_size(Pos2::ZERO, vec2(400.0, 300.0)))
    }

    #[test]
    fn a_card_lies_in_the_sky_beside_what_it_tells_of_and_never_on_words() {
        let mut room = room();
        let house = Rect::from_min_max(pos2(100.0, 150.0), pos2(300.0, 300.0));
        let words = Rect::from_min_max(pos2(0.0, 0.0), pos2(400.0, 60.0));
        room.lay(house, Weight::Drawn);
        room.lay(words, Weight::Words);
        let tip = pos2(200.0, 160.0);
        let found = room.find(vec2(90.0, 40.0), &[(tip, 0.0)]);
        let (rect, to) = found.expect("there is sky");
        assert!(!rect.intersects(house) && !rect.intersects(words), "{rect}");
        assert_eq!(to, tip);
        assert!(rect.clamp(tip).distance(tip) < 40.0, "{rect}");
    }

    #[test]
    fn of_several_points_the_pointer_leads_to_the_one_that_a_free_place_is_near() {
        let mut room = room();
        let all_but_right = Rect::from_min_max(pos2(0.0, 0.0), pos2(250.0, 300.0));
        room.lay(all_but_right, Weight::Kept);
        let tips = [(pos2(20.0, 100.0), 0.0), (pos2(240.0, 100.0), 0.0)];
        let found = room.find(vec2(90.0, 40.0), &tips);
        assert_eq!(found.map(|(_, tip)| tip), Some(tips[1].0));
    }

    #[test]
    fn what_finds_no_free_place_lies_on_what_weighs_least() {
        let mut room = room();
        room.lay(room.room, Weight::Kept);
        let left = Rect::from_min_max(pos2(0.0, 0.0), pos2(150.0, 300.0));
        let mut light = Coverage::new(room.room);
        light.lay(room.room, Weight::Drawn);
        light.lay(left, Weight::Kept);
        let found = light.find(vec2(90.0, 40.0), &[(pos2(20.0, 100.0), 0.0)]);
        assert!(found.is_some_and(|(rect, _)| rect.left() >= 150.0));
    }
}
