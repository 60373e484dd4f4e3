//! The controls of a site and what its build makes impossible, from the parts named in a file.
//!
//! One place decides what can be moved, in which positions, and by whom.

use crate::site::{Constraint, Control, ControlId, Kind, Operator, Plate, PositionId, Positions};

/// Collects controls and constraints.
#[derive(Debug, Default)]
pub(super) struct Furnishing {
    pub(super) controls: Vec<Control>,
    pub(super) constraints: Vec<Constraint>,
    starts: Vec<PositionId>,
}

impl Furnishing {
    /// Adds a control that starts in its position of this index.
    pub(super) fn add(
        &mut self,
        name: &str,
        kind: Kind,
        positions: &[&str],
        place: &str,
        start: u8,
    ) -> ControlId {
        let operator = if kind == Kind::Line {
            Operator::World
        } else {
            Operator::Learner
        };
        let id = ControlId(u16::try_from(self.controls.len()).unwrap_or(u16::MAX));
        self.controls.push(Control {
            name: name.to_owned(),
            kind,
            positions: positions.iter().map(|p| (*p).to_owned()).collect(),
            operator,
            place: place.to_owned(),
            plate: Plate::default(),
        });
        self.starts.push(PositionId(start));
        id
    }

    /// Adds a breaker or a fuse.
    pub(super) fn breaker(
        &mut self,
        name: &str,
        kind: Kind,
        place: &str,
        plate: Plate,
        start_on: bool,
    ) -> ControlId {
        let positions = match plate.fuse {
            Some(_) => &["out", "in", "blown"],
            None => &["off", "on", "tripped"],
        };
        let id = self.add(name, kind, positions, place, u8::from(start_on));
        if let Some(control) = self.controls.last_mut() {
            control.plate = plate;
        }
        id
    }

    /// Adds a ground-fault device, set.
    pub(super) fn gfci(&mut self, name: &str, place: &str) -> ControlId {
        self.add(name, Kind::Gfci, &["tripped", "set"], place, 1)
    }

    /// A control that no learner's hand moves.
    pub(super) fn by_the_world(&mut self, control: ControlId) {
        if let Some(control) = self.controls.get_mut(usize::from(control.0)) {
            control.operator = Operator::World;
        }
    }

    /// A control that a device moves, and a hand too.
    pub(super) fn by_both(&mut self, control: ControlId) {
        if let Some(control) = self.controls.get_mut(usize::from(control.0)) {
            control.operator = Operator::Both;
        }
    }

    /// A control that the learner moves.
    pub(super) fn by_the_learner(&mut self, control: ControlId) {
        if let Some(control) = self.controls.get_mut(usize::from(control.0)) {
            control.operator = Operator::Learner;
        }
    }

    /// Leaves everything that isn't on the line to the world: the learner is the line's crew.
    pub(super) fn only_the_line_to_the_learner(&mut self) {
        for control in self.controls.iter_mut().filter(|c| c.kind != Kind::Line) {
            control.operator = Operator::World;
        }
    }

    /// How everything stands when a file says nothing else.
    pub(super) fn start(&self) -> Positions {
        let mut positions = Positions::first(self.controls.len());
        for (index, start) in self.starts.iter().enumerate() {
            if let Ok(index) = u16::try_from(index) {
                positions.set(ControlId(index), *start);
            }
        }
        positions
    }

    /// Two controls can't stand so at once.
    pub(super) fn not_both(&mut self, one: (ControlId, u8), other: (ControlId, u8), why: &str) {
        self.constraints.push(Constraint::NotBoth {
            one: (one.0, PositionId(one.1)),
            other: (other.0, PositionId(other.1)),
            why: why.to_owned(),
        });
    }

    /// A position needs another control to stand in one of some positions.
    pub(super) fn needs(
        &mut self,
        this: (ControlId, u8),
        other: ControlId,
        positions: &[u8],
        why: &str,
    ) {
        self.constraints.push(Constraint::Needs {
            this: (this.0, PositionId(this.1)),
            other: (other, positions.iter().map(|p| PositionId(*p)).collect()),
            why: why.to_owned(),
        });
    }

    /// While a control stands so, another can't be moved.
    pub(super) fn holds(&mut self, holder: (ControlId, u8), held: ControlId, why: &str) {
        self.constraints.push(Constraint::Holds {
            holder: (holder.0, PositionId(holder.1)),
            held,
            why: why.to_owned(),
        });
    }
}
