//! A third opinion of what reaches what, at the houses of these tests alone: a graph made from the names of controls.

use std::collections::BTreeSet;

use outage_drill::drill::Moment;
use outage_drill::scenario::Scenario;

/// The rules that it knows.
pub(super) const RULES: [&str; 7] = [
    "line-fed",
    "no-transfer-equipment",
    "collision",
    "sources-meet",
    "shock",
    "live-blades",
    "indoors",
];

/// The rules that are broken at some moment; nothing of them is found broken at the start in these tests.
pub(super) fn broken(scenario: &Scenario, moments: &[Moment]) -> BTreeSet<&'static str> {
    let stands = moments.iter().map(|moment| Stand { scenario, moment });
    stands.flat_map(|stand| stand.broken()).collect()
}

/// Places that electricity can reach, at these houses.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Place {
    Winding,
    SetOutlet,
    InletCord,
    TwoPlugCord,
    YellowCord,
    Strip,
    LentCord,
    Inlet,
    ChosenBus,
    DryerOutlet,
    Bus,
    Street,
    Lateral,
    Substation,
}

/// How things stand at a moment, by name.
struct Stand<'a> {
    scenario: &'a Scenario,
    moment: &'a Moment,
}

impl Stand<'_> {
    fn is(&self, control: &str, position: &str) -> bool {
        let site = &self.scenario.site;
        let id = site.control_id(control);
        id.is_some_and(|id| site.position_name(&self.moment.positions, id) == position)
    }

    fn has(&self, control: &str) -> bool {
        self.scenario.site.control_id(control).is_some()
    }

    fn running(&self) -> bool {
        self.moment.conditions.engine.running_since.is_some()
    }

    /// Everything in metallic contact with `from`, by hots.
    fn reach(&self, from: Place) -> Vec<Place> {
        use Place::*;
        let at_set = |end| self.is(end, "left-socket") || self.is(end, "right-socket");
        let joints = [
            (Winding, SetOutlet, self.is("generator-output", "on")),
            (
                SetOutlet,
                InletCord,
                self.is("inlet-cord-generator-end", "generator"),
            ),
            (InletCord, Inlet, self.is("inlet-cord-house-end", "inlet")),
            (
                SetOutlet,
                TwoPlugCord,
                self.is("two-plug-cord-generator-end", "generator"),
            ),
            (
                TwoPlugCord,
                DryerOutlet,
                self.is("two-plug-cord-house-end", "dryer-outlet"),
            ),
            (SetOutlet, YellowCord, at_set("yellow-cord-generator-end")),
            (SetOutlet, Strip, at_set("strip-generator-end")),
            (
                Strip,
                YellowCord,
                self.is("yellow-cord-generator-end", "strip")
                    || self.is("strip-generator-end", "yellow-cord"),
            ),
            (
                LentCord,
                YellowCord,
                self.is("yellow-cord-generator-end", "lent-cord"),
            ),
            (
                LentCord,
                Strip,
                self.is("strip-generator-end", "lent-cord")
                    || self.is("strip-second-plug", "lent-cord"),
            ),
            (DryerOutlet, Bus, self.is("breaker-dryer", "on")),
            (Inlet, Bus, self.is("generator-breaker", "on")),
            (Inlet, ChosenBus, self.is("chosen-generator", "on")),
            (ChosenBus, Bus, self.is("chosen-utility", "on")),
            (Bus, Street, self.is("main", "on")),
            (Street, Lateral, self.is("broken-span", "whole")),
            (Lateral, Substation, self.is("feeder", "closed")),
        ];
        let mut reached = vec![from];
        let mut next = 0;
        while let Some(here) = reached.get(next).copied() {
            next += 1;
            for (a, b, closed) in joints {
                let other = if a == here { b } else { a };
                if closed && (a == here || b == here) && !reached.contains(&other) {
                    reached.push(other);
                }
            }
        }
        reached
    }

    /// The critical rules broken at this instant, as far as one instant tells.
    fn broken(&self) -> BTreeSet<&'static str> {
        let set = if self.running() {
            self.reach(Place::Winding)
        } else {
            Vec::new()
        };
        let utility = self.reach(Place::Substation);
        let lent = if self.has("strip-second-plug") {
            self.reach(Place::LentCord)
        } else {
            Vec::new()
        };
        let live = |p: Place| set.contains(&p) || utility.contains(&p) || lent.contains(&p);
        let strip_hangs =
            self.is("strip-generator-end", "stowed") || self.is("strip-second-plug", "stowed");
        let two_plugs_join = self.is("two-plug-cord-generator-end", "generator")
            && self.is("two-plug-cord-house-end", "dryer-outlet");
        let two_plugs_hang = self.is("two-plug-cord-generator-end", "stowed")
            || self.is("two-plug-cord-house-end", "stowed");
        let bare =
            live(Place::TwoPlugCord) && self.has("two-plug-cord-house-end") && two_plugs_hang
                || live(Place::Strip) && strip_hangs
                || live(Place::YellowCord) && self.is("yellow-cord-generator-end", "stowed")
                || live(Place::InletCord) && self.is("inlet-cord-generator-end", "stowed")
                || live(Place::Inlet) && !self.is("inlet-cord-house-end", "inlet");
        let guarded = ["there-and-back", "ready-panel"];
        let slide = guarded.iter().any(|d| self.scenario.name.starts_with(d));
        let holds = [
            ("line-fed", set.contains(&Place::Street)),
            (
                "no-transfer-equipment",
                set.contains(&Place::Inlet) && !slide
                    || set.contains(&Place::TwoPlugCord) && two_plugs_join,
            ),
            ("collision", set.contains(&Place::Substation)),
            ("sources-meet", lent.contains(&Place::SetOutlet)),
            ("shock", self.is("crew", "hands-on") && live(Place::Street)),
            ("live-blades", bare),
            (
                "indoors",
                self.running() && self.is("generator-place", "garage"),
            ),
        ];
        holds
            .into_iter()
            .filter(|(_, h)| *h)
            .map(|(r, _)| r)
            .collect()
    }
}
