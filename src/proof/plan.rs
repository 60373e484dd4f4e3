//! A plan: the fewest careful moves from one state to another, breadth first.
//!
//! Careful is what a person who knows the trade would not call in question: plugs moved and the set carried while the engine is still, the engine stopped and started without load, nothing passed through that breaks a critical rule.
//! A careful way need not be the only safe one.

use crate::scenario::Scenario;
use crate::site::{Bus, ControlId, FarEnd, Kind, Plug, PositionId, Positions, Site, Spot};

use super::joints::Place;
use super::judge::Judge;
use super::model::Move;
use super::space::{Code, Space};
use super::table::Table;

/// There are too many states for a plan.
#[derive(Debug, Clone, Copy)]
pub(super) struct TooLarge;

/// How the moves of a plan are chosen.
#[derive(Debug, Clone, Copy)]
pub(super) struct Manner {
    /// No two machines on cords start at once, and no two cords share an outlet of the set.
    pub(super) sparing: bool,
    /// Plugs are moved while the engine warms up, as long as its output is off.
    pub(super) hurried: bool,
}

/// The fewest careful moves to a state that is a goal, of all that leave these controls `still`; no more than `most_states` are looked at.
pub(super) fn plan(
    space: &Space<'_>,
    start: Code,
    still: &[ControlId],
    Manner { sparing, hurried }: Manner,
    most_states: usize,
    goal: impl Fn(&Positions) -> bool,
) -> Result<Option<Vec<(ControlId, PositionId)>>, TooLarge> {
    let (judge, site) = (space.judge, &space.scenario.site);
    let mut states = Table::new();
    let mut from: Vec<Option<(usize, ControlId, PositionId)>> = vec![None];
    let mut classes = Table::new();
    let mut sound: Vec<bool> = Vec::new();
    states.insert(start);
    let mut next = 0;
    while let Some(code) = states.keys().get(next).copied() {
        let (positions, _) = space.decode(code);
        if goal(&positions) {
            let mut way = Vec::new();
            let mut here = next;
            while let Some(Some((before, control, position))) = from.get(here) {
                way.push((*control, *position));
                here = *before;
            }
            way.reverse();
            return Ok(Some(way));
        }
        space.moves_of_devices(code, |step, to| {
            let Move::Set(control, position) = step else {
                return;
            };
            if still.contains(&control) {
                return;
            }
            let (class, new) = classes.insert(space.electrical(to));
            if new {
                let there = space.decode(to).0;
                sound.push(!judge.stand(&there).breach() && is_sound(judge, site, &there));
            }
            let class = usize::try_from(class).unwrap_or(usize::MAX);
            let free = sound.get(class).copied().unwrap_or_default();
            let careful = careful(judge, site, &positions, control, position)
                || sparing && joins_live(site, &positions, control, position)
                || hurried && moves_dead(site, &positions, control)
                || takes_own_lock(space.scenario, control, position);
            let spared = !sparing
                || !starts_many(site, &positions, control, position)
                    && !shares_outlet(site, &positions, control, position);
            if free && careful && spared && states.insert(to).1 {
                from.push(Some((next, control, position)));
            }
        });
        if from.len() > most_states {
            return Err(TooLarge);
        }
        next += 1;
    }
    Ok(None)
}

/// Whether nothing is passed through that would be found although no line is fed: hands in a set that can start, a set that the sun pushes back into.
fn is_sound(judge: &Judge<'_>, site: &Site, positions: &Positions) -> bool {
    !exposed(site, positions) && !sun_pushes(judge, site, positions) && bonded_once(site, positions)
}

/// Whether hands are in a set that can start.
pub(super) fn exposed(site: &Site, positions: &Positions) -> bool {
    let generator = &site.generator;
    generator.machine.automatic.is_some_and(|automatic| {
        let lock_out = automatic.lock_out(positions, generator.output);
        automatic.open(positions) && !lock_out.safe_for_service()
    })
}

/// Whether the sun would push back into the set as things stand.
pub(super) fn sun_pushes(judge: &Judge<'_>, site: &Site, positions: &Positions) -> bool {
    site.solar.as_ref().is_some_and(|solar| {
        let place = Place::of(solar.bus);
        let joined = [solar.breaker, solar.disconnect]
            .into_iter()
            .all(|c| positions.get(c) == PositionId(1));
        joined && judge.set_reaches(positions, place)
    })
}

/// Whether a move is careful as things stand.
fn careful(
    judge: &Judge<'_>,
    site: &Site,
    positions: &Positions,
    control: ControlId,
    position: PositionId,
) -> bool {
    let running = judge.running(positions);
    let on = position == PositionId(1);
    match site.control(control).map(|c| c.kind) {
        Some(Kind::Plug) => {
            back_at_wall(site, positions, control, position)
                || !running && leaves_no_blades(site, positions, control)
        }
        Some(Kind::Placement) => !running,
        // The breaker of a set that starts by itself is left on.
        Some(Kind::Output) if site.generator.machine.automatic.is_some() => true,
        Some(Kind::Output | Kind::Backfed) => running || !on,
        // Stopped or started only while nothing hangs on it.
        Some(Kind::Engine) => !judge.joints.has(
            &judge.joints.reach(positions, Place::Winding),
            Place::SetOutlet,
        ),
        Some(Kind::Breaker) => !on || comes_back(judge, site, positions, control),
        // Contacts that a controller works are left to it.
        Some(Kind::Transfer) if automatic(site, control) => false,
        Some(Kind::Transfer) => position != PositionId(2) || running,
        Some(Kind::Lock) => false,
        _ => true,
    }
}

/// Whether a lock is taken off that wasn't on at the start: whoever put it on takes it off, and nobody else.
fn takes_own_lock(scenario: &Scenario, control: ControlId, position: PositionId) -> bool {
    let kind = scenario.site.control(control).map(|c| c.kind);
    let off = PositionId(0);
    kind == Some(Kind::Lock) && position == off && scenario.start.get(control) == off
}

/// Whether the plug of a machine goes into the end of a cord, which is made to be plugged into while it is live.
fn joins_live(site: &Site, positions: &Positions, control: ControlId, to: PositionId) -> bool {
    let on = site.position_name(positions, site.generator.output) == "on";
    site.appliances.iter().any(|a| match &a.plug {
        Plug::Cord {
            control: plug,
            cords,
            ..
        } => on && *plug == control && cords.iter().any(|(_, p)| *p == to),
        Plug::Wired => false,
    })
}

/// Whether a plug is moved while nothing comes out of the set: its output is off.
fn moves_dead(site: &Site, positions: &Positions, control: ControlId) -> bool {
    let plug = site.control(control).map(|c| c.kind) == Some(Kind::Plug);
    let off = site.position_name(positions, site.generator.output) == "off";
    plug && off && leaves_no_blades(site, positions, control)
}

/// Whether the plug of a machine that is in nothing goes back into its outlet in the house, which a hand can reach whatever runs.
fn back_at_wall(site: &Site, positions: &Positions, control: ControlId, to: PositionId) -> bool {
    let free = site.position_name(positions, control) == "unplugged";
    site.appliances.iter().any(|a| {
        let at_wall = matches!(&a.plug, Plug::Cord { control: plug, wall, .. } if *plug == control && *wall == to);
        at_wall && free
    })
}

/// Whether the set's output is turned on with more than one machine on its cords.
fn starts_many(site: &Site, positions: &Positions, control: ControlId, to: PositionId) -> bool {
    let many = site.appliances.iter().filter(|a| a.on_a_cord(positions));
    control == site.generator.output && to == PositionId(1) && many.count() > 1
}

/// Whether a cord goes into an outlet of the set that another cord is in already.
fn shares_outlet(site: &Site, positions: &Positions, control: ControlId, to: PositionId) -> bool {
    let mut moved = positions.clone();
    moved.set(control, to);
    let Some(own) = site.cords.iter().find(|c| c.near == control) else {
        return false;
    };
    let spot = own.near_spot(&moved);
    let mut others = site.cords.iter().filter(|c| c.near != control);
    matches!(spot, Spot::Receptacle(_)) && others.any(|c| c.near_spot(&moved) == spot)
}

/// Whether a hand brings a generator to a bus: its branches are off then, and come back one by one.
pub(super) fn is_fed_by_hand(site: &Site, bus: Bus) -> bool {
    bus != Bus::Main || site.panel.has_slide()
}

/// Whether a branch is turned on with power there already, where a generator is brought by hand.
fn comes_back(judge: &Judge<'_>, site: &Site, positions: &Positions, breaker: ControlId) -> bool {
    let branch = site.circuits.iter().find(|c| c.breaker == breaker);
    branch.is_none_or(|c| {
        let bus = Place::of(c.bus);
        !is_fed_by_hand(site, c.bus)
            || judge.own_reaches(positions, bus)
            || judge.utility_reaches(positions, bus)
    })
}

fn automatic(site: &Site, handle: ControlId) -> bool {
    let mut transfers = site.transfers.iter();
    transfers.any(|t| t.handle == handle && t.automatic)
}

/// Whether a cord with two plugs is taken away house end first, from an outlet and a set that are both off.
fn leaves_no_blades(site: &Site, positions: &Positions, control: ControlId) -> bool {
    site.cords.iter().all(|cord| {
        let FarEnd::Blades(end, circuit) = cord.far else {
            return true;
        };
        if control == cord.near {
            return positions.get(end) == PositionId(0);
        }
        let breaker = site.circuits.get(circuit).map(|c| c.breaker);
        let off = |c: ControlId| positions.get(c) == PositionId(0);
        control != end || breaker.is_none_or(off) && off(site.generator.output)
    })
}

/// Whether a set on the house's wiring has its neutral joined to ground at all, and not twice where a ground-fault device would see it.
fn bonded_once(site: &Site, positions: &Positions) -> bool {
    let guarded = site.generator.receptacles.iter().any(|r| r.gfci.is_some());
    !site.set_on_house(positions)
        || match site.set_bonds(positions) {
            0 => false,
            1 => true,
            _ => !guarded,
        }
}
