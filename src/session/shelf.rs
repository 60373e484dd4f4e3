//! The shelf as a view.

use crate::scenario::Scenario;
use crate::site::{Moved, Site, Transfer};
use crate::words::{Arg, Message};

use super::Session;
use super::view::{DrillCard, ShelfView};

const N_CAUTIONS: usize = 8;

impl Session {
    /// The shelf.
    pub fn shelf(&self) -> ShelfView {
        ShelfView {
            title: self.words.say_id("shelf-title"),
            intro: self.words.say_id("shelf-intro"),
            cautions: (1..=N_CAUTIONS)
                .map(|n| self.words.say_id(&format!("caution-{n}")))
                .collect(),
            cautions_title: self.words.say_id("shelf-cautions-title"),
            cautions_accept: self.words.say_id("shelf-cautions-accept"),
            drills: self.cards(),
        }
    }

    /// All drills, those that practice the same way together.
    fn cards(&self) -> Vec<DrillCard> {
        let mut scenarios: Vec<_> = self.library.scenarios.iter().collect();
        scenarios.sort_by_key(|s| way(&s.site));
        scenarios.into_iter().map(|s| self.card(s)).collect()
    }

    fn card(&self, scenario: &Scenario) -> DrillCard {
        let name = &scenario.name;
        let about = |part: &str| self.words.say_id(&format!("drill-{name}-{part}"));
        let minutes =
            Arg::Count(i64::try_from(scenario.ends_at.millis() / 60_000).unwrap_or_default());
        let facts = Message::new("shelf-facts")
            .with("minutes", minutes.clone())
            .with(
                "circuits",
                Arg::Count(i64::try_from(scenario.site.circuits.len()).unwrap_or_default()),
            );
        DrillCard {
            name: name.clone(),
            title: about("title"),
            summary: about("summary"),
            way: self.words.say_id(way(&scenario.site).heading()),
            minutes: self
                .words
                .say(&Message::new("shelf-minutes").with("minutes", minutes)),
            facts: self.words.say(&facts),
            content_note: about("note"),
            open: self.words.say_id("shelf-open"),
        }
    }
}

/// A way to bring another source to a house, in the order in which the shelf has them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Way {
    /// A generator breaker in the main panel.
    Panel,
    /// A transfer switch with a handle for each of some circuits.
    Handles,
    /// A transfer switch for a subpanel or the whole house.
    Throw,
    /// A transfer switch that works by itself.
    Automatic,
    /// Cords alone.
    Cords,
    /// Solar panels or a battery.
    SecondSource,
}

impl Way {
    fn heading(self) -> &'static str {
        match self {
            Self::Panel => "way-panel",
            Self::Handles => "way-handles",
            Self::Throw => "way-throw",
            Self::Automatic => "way-automatic",
            Self::Cords => "way-cords",
            Self::SecondSource => "way-second-source",
        }
    }
}

/// The way that a site is built for.
fn way(site: &Site) -> Way {
    let single = |t: &Transfer| matches!(t.load, Moved::Circuit(_));
    if site.solar.is_some() || site.battery.is_some() {
        Way::SecondSource
    } else if site.transfers.iter().any(|t| t.automatic) {
        Way::Automatic
    } else if site.panel.backfeed.is_some() {
        Way::Panel
    } else if site.transfers.iter().any(single) {
        Way::Handles
    } else if site.transfers.is_empty() {
        Way::Cords
    } else {
        Way::Throw
    }
}
