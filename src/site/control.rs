//! Controls, the positions they can stand in, and what one position forbids another.

use crate::apparatus::fuse::Delay;

/// Index of a control within its site.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct ControlId(pub u16);

/// Index of a position within its control.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PositionId(pub u8);

/// What kind of thing a control is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Kind {
    /// A branch breaker: off, on, tripped.
    Breaker,
    /// The main breaker.
    Main,
    /// The breaker that an inlet feeds.
    Backfed,
    /// The breaker on the generator's own face.
    Output,
    /// A ground-fault device: tripped, set.
    Gfci,
    /// The handle or contactor of a transfer switch.
    Transfer,
    /// A disconnect that is only a switch.
    Disconnect,
    /// A lock that holds a handle.
    Lock,
    /// An end of a cord, or an appliance's plug: each position is a place it can be in.
    Plug,
    /// Where a portable thing stands.
    Placement,
    /// The engine switch.
    Engine,
    /// An appliance's or a lamp's switch.
    Switch,
    /// How a cord lies.
    Lay,
    /// A window.
    Opening,
    /// Where people are.
    People,
    /// A part of the line that the utility's people operate.
    Line,
}

/// Who can operate a control.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Operator {
    /// The learner.
    Learner,
    /// Only the world: storm, crew, system operator.
    World,
    /// A device, and the learner's hand where nothing covers it.
    Both,
}

/// Something that stands in one of a few positions.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Control {
    /// Name, as in action files; its words are `name-<name>`.
    pub name: String,
    /// Kind.
    pub kind: Kind,
    /// Names of the positions; the first is how it stands when nothing else is said.
    pub positions: Vec<String>,
    /// Who operates it.
    pub operator: Operator,
    /// Where one goes to operate it: `panel`, `generator`, `cords`, `house`, `line`.
    pub place: String,
    /// Poles, rating in amps and slot for breakers; zeros otherwise.
    pub plate: Plate,
}

/// What is written beside a handle.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Plate {
    /// Rating in amps.
    pub rating_a: u16,
    /// Number of poles.
    pub poles: u8,
    /// Column (1 or 2) and row (from 1) in the panel.
    pub slot: (u8, u8),
    /// That it is a fuse and no breaker, and whether it waits for a motor to start.
    pub fuse: Option<Delay>,
}

impl Control {
    /// The position of this name.
    pub fn position(&self, name: &str) -> Option<PositionId> {
        let index = self.positions.iter().position(|p| p == name)?;
        u8::try_from(index).ok().map(PositionId)
    }

    /// The name of a position's words: a part of the line is open, on or off in its own way; beside a disconnect's trade words stand those of the home.
    pub fn said<'a>(&self, position: &'a str) -> &'a str {
        match (self.kind, position) {
            (Kind::Line, "open") => "line-open",
            (Kind::Line, "on") => "line-on",
            (Kind::Line, "off") => "line-off",
            (Kind::Disconnect, "open") => "disconnect-open",
            (Kind::Disconnect, "closed") => "disconnect-closed",
            _ => position,
        }
    }

    /// Whether this position is reached by itself and never by a hand: tripped, blown.
    pub fn is_by_itself(position: &str) -> bool {
        matches!(position, "tripped" | "blown")
    }

    /// Whether an overcurrent can trip it.
    pub fn is_breaker(&self) -> bool {
        matches!(
            self.kind,
            Kind::Breaker | Kind::Main | Kind::Backfed | Kind::Output
        )
    }
}

/// How every control of a site stands.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Positions(Vec<PositionId>);

impl Positions {
    /// Every control in its first position.
    pub fn first(n_controls: usize) -> Self {
        Self(vec![PositionId(0); n_controls])
    }

    /// How a control stands.
    /// A control of another site stands in its first position.
    pub fn get(&self, control: ControlId) -> PositionId {
        self.0
            .get(usize::from(control.0))
            .copied()
            .unwrap_or(PositionId(0))
    }

    /// Moves a control, without asking whether that is possible.
    pub fn set(&mut self, control: ControlId, position: PositionId) {
        if let Some(slot) = self.0.get_mut(usize::from(control.0)) {
            *slot = position;
        }
    }
}

/// What the build of things makes impossible.
/// A constraint is data, so that a search can reason about it, and so that it can be left out of a house that lacks it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Constraint {
    /// Two controls can't stand so at once: a mechanical interlock, an outlet that takes one plug.
    NotBoth {
        /// One control and its position.
        one: (ControlId, PositionId),
        /// The other control and its position.
        other: (ControlId, PositionId),
        /// The message that says why.
        why: String,
    },
    /// A control can only be brought into a position while another stands in one of some positions.
    Needs {
        /// The control and the position.
        this: (ControlId, PositionId),
        /// The other control and the positions it may stand in.
        other: (ControlId, Vec<PositionId>),
        /// The message that says why.
        why: String,
    },
    /// While a control stands so, another can't be moved at all: a lock, a plugged cord.
    Holds {
        /// The holding control and its position.
        holder: (ControlId, PositionId),
        /// The control that is held.
        held: ControlId,
        /// The message that says why.
        why: String,
    },
}

impl Constraint {
    /// Why moving `control` to `position` is impossible from `positions`, if this constraint makes it so.
    pub fn refuses(
        &self,
        positions: &Positions,
        control: ControlId,
        position: PositionId,
    ) -> Option<&str> {
        let refused = match self {
            Self::NotBoth { one, other, .. } => {
                let meets = |a: &(ControlId, PositionId), b: &(ControlId, PositionId)| {
                    (control, position) == *a && positions.get(b.0) == b.1
                };
                meets(one, other) || meets(other, one)
            }
            Self::Needs { this, other, .. } => {
                (control, position) == *this && !other.1.contains(&positions.get(other.0))
            }
            Self::Holds { holder, held, .. } => {
                control == *held
                    && positions.get(holder.0) == holder.1
                    && positions.get(control) != position
            }
        };
        refused.then_some(self.why())
    }

    fn why(&self) -> &str {
        match self {
            Self::NotBoth { why, .. } | Self::Needs { why, .. } | Self::Holds { why, .. } => why,
        }
    }
}
