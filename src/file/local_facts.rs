//! What an instructor fills in about the place: whom to ask, whom to call, when storms come.
//!
//! Nothing of it is known to the program; what isn't filled in is told as something to ask the utility.

use serde::Deserialize;

use super::diagnostic::{Diagnostic, Source};
use super::drill_build_found::out_of_range;

/// The version of files of local facts that this program reads.
const LOCAL_VERSION: u32 = 1;
/// What stands where nothing was filled in.
const FILL_IN: &str = "fill in";

/// The facts, by their names in word files.
const FACTS: [&str; 6] = [
    "permit-office",
    "utility",
    "outage-number",
    "line-down-number",
    "generator-notice",
    "emergency-number",
];

/// What is known of the place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LocalFacts {
    /// Each fact by its name, as `local-<name>` in word files; none where it wasn't filled in.
    pub facts: Vec<(&'static str, Option<String>)>,
    /// The month in which the storm season begins, from 1.
    pub season_month: Option<u32>,
}

/// Local facts, a file of their own; `"fill in"` stands for what isn't filled in.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct LocalFactsFile {
    /// Version of the format.
    version: u32,
    /// The office that gives permits for wiring, and how to reach it.
    permit_office: String,
    /// The electric utility.
    utility: String,
    /// The number to call when the power is out.
    outage_number: String,
    /// The number to call for a line that is down.
    line_down_number: String,
    /// Whether and how the utility wants to hear of a generator.
    generator_notice: String,
    /// The emergency number.
    emergency_number: String,
    /// The month in which the storm season begins, 1 to 12; not filled in when left out.
    #[serde(default)]
    storm_season_month: Option<u32>,
}

/// Nothing is filled in.
impl Default for LocalFacts {
    fn default() -> Self {
        Self {
            facts: FACTS.map(|name| (name, None)).to_vec(),
            season_month: None,
        }
    }
}

impl LocalFacts {
    /// Reads a file of local facts.
    ///
    /// # Errors
    /// Every fault of the file.
    pub fn read(source: Source<'_>) -> Result<Self, Vec<Diagnostic>> {
        let parsed = source.parse(LOCAL_VERSION, |file: &LocalFactsFile| file.version);
        let file =
            parsed.map_err(|misread| misread.told(&source, |_, _| false, |f, s| faults(f, &s)))?;
        let wrong = faults(&file, &source);
        if !wrong.is_empty() {
            return Err(wrong);
        }
        let filled = |text: String| Some(text).filter(|t| t != FILL_IN && !t.trim().is_empty());
        let texts = [
            file.permit_office,
            file.utility,
            file.outage_number,
            file.line_down_number,
            file.generator_notice,
            file.emergency_number,
        ];
        Ok(Self {
            facts: FACTS.into_iter().zip(texts.map(filled)).collect(),
            season_month: file.storm_season_month,
        })
    }
}

fn faults(file: &LocalFactsFile, source: &Source<'_>) -> Vec<Diagnostic> {
    let wrong = file.storm_season_month.filter(|m| !(1..=12).contains(m));
    let fault = |month: u32| out_of_range(source, "storm_season_month", month.into());
    wrong.map(fault).into_iter().collect()
}
