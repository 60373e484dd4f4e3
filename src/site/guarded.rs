//! Whether each wire of a house has a breaker that guards it.
//!
//! Copper wire by gauge: the largest breaker is that of [`ampacity::largest_breaker_a`] (NEC 240.4, 60 °C column of Table 310.16).
//! It covers branch circuits, feeders of subpanels and the wires of inlets behind a breaker in the house; not the service, nor cords, which the generator's own devices guard.

use crate::apparatus::ampacity;
use crate::apparatus::conductor::Awg;

use super::control::ControlId;
use super::equipment::{Moved, OtherSide};
use super::parts::Site;

impl Site {
    /// Names of the breakers that are too large for the wire behind them, or whose wire has a size that the table doesn't print; those left out that the site states to be so.
    pub fn unguarded(&self) -> Vec<&str> {
        let wires = self.guarded_wires().into_iter();
        let mut names: Vec<&str> = wires
            .filter(|(breaker, _, stated)| !stated && !self.breaker_fits(*breaker))
            .filter_map(|(breaker, ..)| Some(self.control(breaker)?.name.as_str()))
            .collect();
        names.sort_unstable();
        names.dedup();
        names
    }

    /// Whether a breaker guards every wire behind it.
    pub fn breaker_fits(&self, breaker: ControlId) -> bool {
        let rating_a = self
            .control(breaker)
            .map_or(0.0, |c| f64::from(c.plate.rating_a));
        let wires = self.guarded_wires().into_iter();
        let mut own = wires.filter(|(b, ..)| *b == breaker);
        own.all(|(_, awg, _)| ampacity::largest_breaker_a(awg).is_some_and(|most| rating_a <= most))
    }

    /// Each breaker with the wire behind it, and whether the site states that it is too large.
    fn guarded_wires(&self) -> Vec<(ControlId, Awg, bool)> {
        let circuits = self.circuits.iter().map(|c| (c.breaker, c.awg, false));
        let inlet = |index: usize| self.inlets.get(index).map(|i| (i.awg, i.found_thin));
        let backfeed = self.panel.backfeed.iter().filter_map(|b| {
            let (awg, stated) = inlet(b.inlet)?;
            Some((b.breaker, awg, stated))
        });
        let pairs = self.subpanels.iter().filter_map(|s| Some((s, s.pair?)));
        let pairs = pairs.flat_map(|(sub, pair)| {
            let own = inlet(pair.inlet).map(|(awg, stated)| (pair.generator, awg, stated));
            [Some((pair.utility, sub.awg, false)), own]
                .into_iter()
                .flatten()
        });
        let feeders = self.transfers.iter().filter_map(|transfer| {
            let Moved::Subpanel(index) = transfer.load else {
                return None;
            };
            Some((transfer.feeder?, self.subpanels.get(index)?.awg, false))
        });
        let others = self.transfers.iter().filter_map(|transfer| {
            let OtherSide::Inlet(index) = transfer.other else {
                return None;
            };
            let (awg, stated) = inlet(index)?;
            Some((transfer.breaker?, awg, stated))
        });
        circuits
            .chain(backfeed)
            .chain(pairs)
            .chain(feeders)
            .chain(others)
            .collect()
    }
}
