//! The proof's own judge of the critical rules that show in how things stand: from joints alone, never from the marking or the solver.

use crate::scenario::Scenario;
use crate::site::{FarEnd, Positions, Site, Spot};

use super::joints::{Joints, Place, Reached};

/// What holds of how things stand.
#[expect(clippy::struct_excessive_bools, reason = "one flag a rule")]
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Stand {
    /// A customer's source reaches the utility's side.
    pub line_fed: bool,
    /// A customer's source feeds house wiring that no transfer equipment guards.
    pub unguarded: bool,
    /// The generator is tied to the utility, or to a neighbor's set.
    pub tied: bool,
    /// A neighbor's set reaches the house's own.
    pub meets: bool,
    /// A worker holds a line that something feeds.
    pub shock: bool,
    /// Bare contacts within reach are fed.
    pub bare: bool,
    /// Hands are on a line that nothing visible and tagged cuts off.
    pub unbarred: bool,
    /// Hands are on a line that isn't grounded at the work.
    pub out_of_zone: bool,
}

impl Stand {
    /// Whether a critical rule is broken.
    pub fn breach(self) -> bool {
        self != Self::default()
    }
}

/// Where the utility feeds the line.
const FEEDS: [Place; 2] = [Place::Substation, Place::SecondFeed];

/// Judges how things stand.
#[derive(Debug, Clone)]
pub(super) struct Judge<'a> {
    pub(super) site: &'a Site,
    pub(super) joints: Joints,
    hands_on: Option<crate::site::PositionId>,
}

impl<'a> Judge<'a> {
    pub(super) fn new(scenario: &'a Scenario) -> Self {
        let site = &scenario.site;
        Self {
            site,
            joints: Joints::of(site),
            hands_on: site
                .control(site.line.crew)
                .and_then(|c| c.position("hands-on")),
        }
    }

    /// Whether the engine runs.
    pub(super) fn running(&self, positions: &Positions) -> bool {
        self.site
            .stands(positions, self.site.generator.engine, "running")
    }

    /// What the customer's own sources reach, one entry a source that is on.
    fn own(&self, positions: &Positions) -> Vec<Reached> {
        let mut own = Vec::new();
        if self.running(positions) {
            own.push(self.joints.reach(positions, Place::Winding));
        }
        if self.site.battery.is_some() {
            own.push(self.joints.reach(positions, Place::Battery));
        }
        own.extend(self.lent(positions));
        own
    }

    /// What the set of a neighbor who lends a cord reaches.
    fn lent(&self, positions: &Positions) -> Option<Reached> {
        let lent = self.site.lent.as_ref();
        lent.map(|_| self.joints.reach(positions, Place::Lent))
    }

    /// Whether the set of a neighbor reaches a place.
    fn lent_reaches(&self, positions: &Positions, place: Place) -> bool {
        let reached = self.lent(positions);
        reached.is_some_and(|r| self.joints.has(&r, place))
    }

    /// Whether the line at the crew's pole is dead.
    pub(super) fn line_dead(&self, positions: &Positions) -> bool {
        let pole = Place::Pole(self.site.line.crew_pole);
        let utility = self.joints.reach(positions, Place::Substation);
        let own = self.own(positions);
        !self.joints.has(&utility, pole) && !own.iter().any(|r| self.joints.has(r, pole))
    }

    /// Whether the utility reaches the main bus.
    pub(super) fn on_utility(&self, positions: &Positions) -> bool {
        self.utility_reaches(positions, Place::Bus)
    }

    /// Whether the utility reaches a place, from the head of the line or by its tie.
    pub(super) fn utility_reaches(&self, positions: &Positions, place: Place) -> bool {
        FEEDS
            .iter()
            .any(|feed| self.joints.has(&self.joints.reach(positions, *feed), place))
    }

    /// Whether an own source reaches a place.
    pub(super) fn own_reaches(&self, positions: &Positions, place: Place) -> bool {
        self.own(positions)
            .iter()
            .any(|r| self.joints.has(r, place))
    }

    /// Whether the generator runs and reaches a place.
    pub(super) fn set_reaches(&self, positions: &Positions, place: Place) -> bool {
        let reached = self.joints.reach(positions, Place::Winding);
        self.running(positions) && self.joints.has(&reached, place)
    }

    /// What holds.
    pub(super) fn stand(&self, positions: &Positions) -> Stand {
        if self.site.line_work.is_some() {
            return self.stand_of_line(positions);
        }
        let own = self.own(positions);
        let utility = self.joints.reach(positions, Place::Substation);
        let by_own = |p: Place| own.iter().any(|r| self.joints.has(r, p));
        let live = |p: Place| by_own(p) || self.joints.has(&utility, p);
        let pole = Place::Pole(self.site.line.crew_pole);
        let held = self.hands_on == Some(positions.get(self.site.line.crew));
        Stand {
            line_fed: by_own(Place::Service),
            unguarded: self.unguarded(positions, &by_own),
            tied: by_own(Place::Substation)
                || self.running(positions) && self.lent_reaches(positions, Place::Winding),
            meets: self.lent_reaches(positions, Place::SetOutlet),
            shock: held && live(pole),
            bare: self.bare(positions, &live),
            unbarred: false,
            out_of_zone: false,
        }
    }

    /// Whether the generator is tied to the utility's line.
    pub(super) fn tied(&self, positions: &Positions) -> bool {
        FEEDS.iter().any(|feed| self.own_reaches(positions, *feed))
    }

    fn unguarded(&self, positions: &Positions, fed: &impl Fn(Place) -> bool) -> bool {
        let mut open = self.site.backfed().filter(|(_, held)| !held.blocks());
        let inlet = open.any(|(inlet, _)| fed(Place::Inlet(inlet)));
        let cords = self.site.cords.iter().enumerate();
        let two_plugs = cords
            .filter(|(_, c)| matches!(c.far, FarEnd::Blades(..)))
            .any(|(i, c)| {
                let plugged = matches!(c.near_spot(positions), Spot::Receptacle(_));
                plugged && far_plugged(c.far, positions) && fed(Place::Far(i))
            });
        inlet || two_plugs
    }

    fn bare(&self, positions: &Positions, live: &impl Fn(Place) -> bool) -> bool {
        let mut bare = false;
        let mut covered = vec![false; self.site.inlets.len()];
        for (index, cord) in self.site.cords.iter().enumerate() {
            let near_free = cord.near_spot(positions) == Spot::Stowed;
            bare |= near_free && live(Place::Near(index));
            match cord.far {
                FarEnd::Blades(..) | FarEnd::Strip(_) => {
                    let far_free = !far_plugged(cord.far, positions);
                    bare |= far_free && live(Place::Far(index));
                }
                FarEnd::Inlet(end) => {
                    let at = usize::from(positions.get(end).0).checked_sub(1);
                    if let Some(slot) = at.and_then(|i| covered.get_mut(i)) {
                        *slot = true;
                    }
                }
                FarEnd::Connector => {}
            }
        }
        let open = covered.iter().enumerate().filter(|(_, covered)| !**covered);
        bare || open.map(|(index, _)| Place::Inlet(index)).any(live)
    }
}

fn far_plugged(far: FarEnd, positions: &Positions) -> bool {
    far.control().is_some_and(|end| positions.get(end).0 != 0)
}
