//! Published values against ours: one row a figure, each asked of the real function.
//!
//! The rows are `tests/published/<section>.ron`; a row is its quantity, what to ask, the published figure, its tolerance, its source and how far that was seen.
//! A row may say that ours differs, by how much and why; then it is the difference that is held, and a difference that heals is a failure too.

use std::fs;
use std::path::PathBuf;

use serde::Deserialize;

mod air;
mod cord;
mod device;
mod people;
mod wire;

/// Every section, so that a file which isn't there or isn't listed fails.
const SECTIONS: &[&str] = &[
    "body",
    "breakers",
    "conductors",
    "cords",
    "lines",
    "monoxide",
    "motors",
    "shock",
    "transformers",
    "voltage-drop",
];

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Row {
    quantity: String,
    ask: Ask,
    published: f64,
    tolerance: Tolerance,
    source: String,
    standing: Standing,
    #[serde(default)]
    differs: Option<Difference>,
}

/// What a row asks of the models.
#[derive(Debug, Deserialize)]
enum Ask {
    Wire(wire::Ask),
    Cord(cord::Ask),
    Device(device::Ask),
    People(people::Ask),
    Air(air::Ask),
}

/// How far the published figure was seen.
#[derive(Debug, Clone, Copy, Deserialize)]
enum Standing {
    /// Read in the publication, or in a copy that quotes it.
    Checked,
    /// Follows by arithmetic from a published formula or figure.
    Computed,
    /// Not seen in print.
    FromMemory,
}

#[derive(Debug, Clone, Copy, Deserialize)]
enum Tolerance {
    Absolute(f64),
    Relative(f64),
    AtLeast,
    AtMost,
}

/// A known difference: what ours gives, and why.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Difference {
    ours: f64,
    why: String,
}

impl Ask {
    fn ours(&self) -> f64 {
        match self {
            Self::Wire(ask) => ask.ours(),
            Self::Cord(ask) => ask.ours(),
            Self::Device(ask) => ask.ours(),
            Self::People(ask) => ask.ours(),
            Self::Air(ask) => ask.ours(),
        }
    }
}

impl Tolerance {
    fn admits(self, ours: f64, figure: f64) -> bool {
        match self {
            Self::Absolute(most) => (ours - figure).abs() <= most,
            Self::Relative(most) => (ours - figure).abs() <= most * figure.abs(),
            Self::AtLeast => ours >= figure,
            Self::AtMost => ours <= figure,
        }
    }
}

impl Row {
    /// What is wrong with this row of a section, in words that name everything; `None` when it holds.
    fn fault(&self, section: &str) -> Option<String> {
        let ours = self.ask.ours();
        let agrees = self.tolerance.admits(ours, self.published);
        let wrong = match &self.differs {
            None if agrees => return None,
            None => "not within the tolerance".to_owned(),
            Some(known) if agrees => format!("stated to differ ({}), but agrees", known.why),
            // Four digits are what a stated difference is written to.
            Some(known) if Tolerance::Relative(5e-4).admits(ours, known.ours) => return None,
            Some(known) => format!("stated to give {} ({})", known.ours, known.why),
        };
        Some(format!(
            "{section}: {}: {wrong}\n  published {}, ours {ours}, tolerance {:?}, source {} ({:?})",
            self.quantity, self.published, self.tolerance, self.source, self.standing
        ))
    }
}

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/published")
}

fn rows(section: &str) -> Vec<Row> {
    let file = folder().join(format!("{section}.ron"));
    let text = fs::read_to_string(&file).unwrap_or_else(|why| panic!("{}: {why}", file.display()));
    ron::Options::default()
        .with_default_extension(ron::extensions::Extensions::IMPLICIT_SOME)
        .from_str(&text)
        .unwrap_or_else(|why| panic!("{}: {why}", file.display()))
}

#[test]
fn every_published_value_is_met_or_its_difference_is_explained() {
    let mut faults = Vec::new();
    for section in SECTIONS {
        faults.extend(rows(section).iter().filter_map(|row| row.fault(section)));
    }
    assert!(
        faults.is_empty(),
        "{} rows fail:\n{}",
        faults.len(),
        faults.join("\n")
    );
}

#[test]
fn every_section_is_listed_and_has_eight_rows_or_more() {
    let mut files: Vec<String> = fs::read_dir(folder())
        .unwrap()
        .map(|entry| {
            entry
                .unwrap()
                .path()
                .file_stem()
                .unwrap()
                .to_string_lossy()
                .into_owned()
        })
        .collect();
    files.sort();
    assert_eq!(files, SECTIONS, "files of tests/published against the list");
    for section in SECTIONS {
        let n_rows = rows(section).len();
        assert!(n_rows >= 8, "{section} has {n_rows} rows");
    }
}

#[test]
fn a_wrong_row_is_reported_with_everything_needed_to_judge_it() {
    let row = |published: f64, differs: Option<Difference>| Row {
        quantity: "10 AWG cord, A".to_owned(),
        ask: ron::from_str("Cord(AmpacityA(awg: \"10\", loaded: Two))").unwrap(),
        published,
        tolerance: Tolerance::Absolute(0.5),
        source: "a table".to_owned(),
        standing: Standing::Checked,
        differs,
    };
    let told = |ours: f64| {
        Some(Difference {
            ours,
            why: "a reason".to_owned(),
        })
    };
    assert_eq!(row(30.0, None).fault("cords"), None);
    assert_eq!(
        row(33.0, told(30.0)).fault("cords"),
        None,
        "an explained difference holds"
    );
    let fault = row(33.0, None).fault("cords").unwrap();
    for part in [
        "cords",
        "10 AWG cord, A",
        "33",
        "30",
        "0.5",
        "a table",
        "Checked",
    ] {
        assert!(fault.contains(part), "{part} is missing from: {fault}");
    }
    assert!(
        row(33.0, told(31.0)).fault("cords").is_some(),
        "another difference than the stated one"
    );
    assert!(
        row(30.0, told(30.0)).fault("cords").is_some(),
        "a difference that has healed"
    );
}
