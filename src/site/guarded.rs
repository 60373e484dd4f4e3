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
    /// Names of the breakers that are too large for the wire behind them, or whose wire has a size that the table doesn't print.
    pub fn unguarded(&self) -> Vec<&str> {
        let mut names: Vec<&str> = self
            .guarded_wires()
            .into_iter()
            .filter_map(|(breaker, awg)| {
                let control = self.control(breaker)?;
                let rating_a = f64::from(control.plate.rating_a);
                let guards = ampacity::largest_breaker_a(awg).is_some_and(|most| rating_a <= most);
                (!guards).then_some(control.name.as_str())
            })
            .collect();
        names.sort_unstable();
        names.dedup();
        names
    }

    /// Each breaker with the wire behind it.
    fn guarded_wires(&self) -> Vec<(ControlId, Awg)> {
        let circuits = self.circuits.iter().map(|c| (c.breaker, c.awg));
        let inlet = |index: usize| self.inlets.get(index).map(|inlet| inlet.awg);
        let backfeed = self.panel.backfeed.iter();
        let backfeed = backfeed.filter_map(|b| Some((b.breaker, inlet(b.inlet)?)));
        let pairs = self.subpanels.iter().filter_map(|s| Some((s, s.pair?)));
        let pairs = pairs.flat_map(|(sub, pair)| {
            let own = inlet(pair.inlet).map(|awg| (pair.generator, awg));
            [Some((pair.utility, sub.awg)), own].into_iter().flatten()
        });
        let feeders = self.transfers.iter().filter_map(|transfer| {
            let Moved::Subpanel(index) = transfer.load else {
                return None;
            };
            Some((transfer.feeder?, self.subpanels.get(index)?.awg))
        });
        let others = self.transfers.iter().filter_map(|transfer| {
            let OtherSide::Inlet(index) = transfer.other else {
                return None;
            };
            Some((transfer.breaker?, inlet(index)?))
        });
        circuits
            .chain(backfeed)
            .chain(pairs)
            .chain(feeders)
            .chain(others)
            .collect()
    }
}
