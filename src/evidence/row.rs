//! One published figure beside ours, and what is judged of it.
//!
//! A tolerance is the rounding of the print; it is never widened to let ours pass.

use serde::Deserialize;
use serde::de::DeserializeOwned;

use crate::file::Diagnostic;
use crate::file::Source;

use super::section::Section;

/// Path, section and text of a file of rows.
pub(super) type RowFile<'a> = (&'a str, Section, &'a str);

/// Four digits are what a stated difference is written to.
const AS_STATED: Tolerance = Tolerance::Relative(5e-4);

/// A row as it is written, with what it asks.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Row<Ask> {
    quantity: String,
    ask: Ask,
    published: f64,
    tolerance: Tolerance,
    source: String,
    standing: Standing,
    #[serde(default)]
    differs: Option<Difference>,
    /// The formula that this row and others follow from.
    #[serde(default)]
    follows: Option<String>,
}

/// How far the published figure was seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub enum Standing {
    /// Read in the publication, or in a copy that quotes it.
    Checked,
    /// Follows by arithmetic from a published formula or figure.
    Computed,
    /// Not seen in print.
    FromMemory,
}

/// How near ours has to come.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
pub enum Tolerance {
    /// So much, in the unit of the quantity.
    Absolute(f64),
    /// So much of the published figure.
    Relative(f64),
    /// The published figure is a lower limit.
    AtLeast,
    /// The published figure is an upper limit.
    AtMost,
}

/// A known difference: what ours gives, and why.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Difference {
    /// What ours gives, to four digits.
    pub ours: f64,
    /// Why.
    pub why: String,
}

/// A published figure and ours.
#[derive(Debug, Clone, PartialEq)]
pub struct Compared {
    /// The section it belongs to.
    pub section: Section,
    /// What it is, with its unit.
    pub quantity: String,
    /// The published figure; infinite for one without an end.
    pub published: f64,
    /// Ours; NaN where the model has no answer.
    pub ours: f64,
    /// How near ours has to come.
    pub tolerance: Tolerance,
    /// Standard, table, section.
    pub source: String,
    /// How far the figure was seen.
    pub standing: Standing,
    /// The difference that is stated, if one is.
    pub differs: Option<Difference>,
    /// The formula that this row and others follow from, if they do.
    pub follows: Option<String>,
}

/// What is judged of a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Judgement {
    /// Within its tolerance.
    Within,
    /// Beyond its tolerance, by the difference that is stated.
    DiffersAsStated,
    /// Beyond its tolerance, with no reason stated.
    Beyond,
    /// Beyond its tolerance, by another difference than the stated one.
    DiffersOtherwise,
    /// Within its tolerance, though a difference is stated.
    DifferenceHealed,
}

/// Every row of the files, asked and compared, section by section in the order of [`Section::ALL`].
///
/// # Errors
/// Every file that isn't a list of rows, with the place of its first fault.
pub(super) fn ask_all<Ask: DeserializeOwned>(
    files: &[RowFile<'_>],
    ours: impl Fn(&Ask) -> f64,
) -> Result<Vec<Compared>, Vec<Diagnostic>> {
    let mut compared = Vec::new();
    let mut faults = Vec::new();
    for (file, section, text) in files {
        match (Source { file, text }).data::<Vec<Row<Ask>>>() {
            Ok(rows) => compared.extend(rows.into_iter().map(|row| {
                let answer = ours(&row.ask);
                row.compared(*section, answer)
            })),
            Err(mut wrong) => faults.append(&mut wrong),
        }
    }
    compared.sort_by_key(|row| row.section);
    if faults.is_empty() {
        Ok(compared)
    } else {
        Err(faults)
    }
}

impl<Ask> Row<Ask> {
    /// This row with what ours gives.
    fn compared(self, section: Section, ours: f64) -> Compared {
        Compared {
            section,
            quantity: self.quantity,
            published: self.published,
            ours,
            tolerance: self.tolerance,
            source: self.source,
            standing: self.standing,
            differs: self.differs,
            follows: self.follows,
        }
    }
}

impl Tolerance {
    /// Whether ours is near enough to the figure; NaN never is.
    pub fn admits(self, ours: f64, figure: f64) -> bool {
        match self {
            Self::Absolute(most) => (ours - figure).abs() <= most,
            Self::Relative(most) => (ours - figure).abs() <= most * figure.abs(),
            Self::AtLeast => ours >= figure,
            Self::AtMost => ours <= figure,
        }
    }
}

impl Compared {
    /// What is judged of it.
    pub fn judgement(&self) -> Judgement {
        let agrees = self.tolerance.admits(self.ours, self.published);
        match &self.differs {
            None if agrees => Judgement::Within,
            None => Judgement::Beyond,
            Some(_) if agrees => Judgement::DifferenceHealed,
            Some(known) if AS_STATED.admits(self.ours, known.ours) => Judgement::DiffersAsStated,
            Some(_) => Judgement::DiffersOtherwise,
        }
    }

    /// Ours less the published figure; zero where both have no end.
    pub fn difference(&self) -> f64 {
        if self.ours.is_infinite() && self.ours.total_cmp(&self.published).is_eq() {
            0.0
        } else {
            self.ours - self.published
        }
    }
}

impl Judgement {
    /// Whether the row holds: within its tolerance, or different by what is stated.
    pub fn holds(self) -> bool {
        matches!(self, Self::Within | Self::DiffersAsStated)
    }

    /// A name that is the same in every language.
    pub fn id(self) -> &'static str {
        match self {
            Self::Within => "within",
            Self::DiffersAsStated => "differs-as-stated",
            Self::Beyond => "beyond",
            Self::DiffersOtherwise => "differs-otherwise",
            Self::DifferenceHealed => "difference-healed",
        }
    }
}

impl Standing {
    /// A name that is the same in every language.
    pub fn id(self) -> &'static str {
        match self {
            Self::Checked => "checked",
            Self::Computed => "computed",
            Self::FromMemory => "from-memory",
        }
    }
}
