//! From the changes that a drill file names to its variants: every choice is built like a drill of its own.
//!
//! Houses that come out equal are kept once.
//! A fault that several choices share is told once, at the place of the first.

use std::sync::Arc;

use crate::scenario::Scenario;
use crate::scenario::variation::{AS_WRITTEN, Change, MOST_VARIANTS, Variants};
use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source};
use super::drill_build::unknown;
use super::drill_file::DrillFile;
use super::drill_vary::{VariationFile, varied};

/// Reads the variants of a file, each built by `build`; none for a file that names no changes.
///
/// # Errors
/// Names that are taken, unknown or never drawn, too many choices, and every fault of each choice.
pub(super) fn variants(
    source: &Source<'_>,
    file: &DrillFile,
    build: impl Fn(&DrillFile) -> Result<Scenario, Vec<Diagnostic>>,
) -> Result<Variants, Vec<Diagnostic>> {
    if file.variations.is_empty() && file.draw.is_empty() {
        return Ok(Variants::default());
    }
    let dimensions = dimensions(source, file)?;
    let mut all: Vec<Arc<Scenario>> = Vec::new();
    let mut faults: Vec<Diagnostic> = Vec::new();
    for changes in choices(&dimensions) {
        match build(&varied(file, &changes)) {
            Ok(mut scenario) => {
                scenario.changes = changes.iter().map(|c| named(c)).collect();
                if let Some(same) = all.iter().find(|s| s.site == scenario.site) {
                    scenario.site = Arc::clone(&same.site);
                }
                all.push(Arc::new(scenario));
            }
            Err(wrong) => {
                for fault in wrong {
                    if !faults.contains(&fault) {
                        faults.push(fault);
                    }
                }
            }
        }
    }
    if !faults.is_empty() {
        return Err(faults);
    }
    let size = |d: &Vec<_>| u32::try_from(d.len() + 1).unwrap_or(u32::MAX);
    Ok(Variants::new(dimensions.iter().map(size).collect(), all))
}

fn named(change: &VariationFile) -> Change {
    Change {
        name: change.name.clone(),
        hidden: change.hidden,
    }
}

/// The changes of each dimension.
fn dimensions<'a>(
    source: &Source<'_>,
    file: &'a DrillFile,
) -> Result<Vec<Vec<&'a VariationFile>>, Vec<Diagnostic>> {
    let mut faults = Vec::new();
    let names: Vec<&str> = file.variations.iter().map(|v| v.name.as_str()).collect();
    let draw: Vec<Vec<&str>> = if file.draw.is_empty() {
        vec![names.clone()]
    } else {
        let drawn = file.draw.iter();
        drawn
            .map(|d| d.iter().map(String::as_str).collect())
            .collect()
    };
    for (index, name) in names.iter().enumerate() {
        let quoted = format!("\"{name}\"");
        let said = |id: &str| {
            let message = Message::new(id).with("name", Arg::Verbatim((*name).to_owned()));
            source.at(&["variations", &quoted], message)
        };
        if *name == AS_WRITTEN || names.iter().take(index).any(|n| n == name) {
            faults.push(said("error-variation-taken"));
        }
        if draw.iter().flatten().filter(|n| *n == name).count() != 1 {
            faults.push(said("error-variation-drawn"));
        }
    }
    for name in draw.iter().flatten().filter(|n| !names.contains(n)) {
        faults.push(unknown(source, &["draw"], name, "variation", &names));
    }
    let n = draw.iter().map(|d| d.len() + 1);
    if n.fold(1, usize::saturating_mul) > MOST_VARIANTS {
        let most = Arg::Count(i64::try_from(MOST_VARIANTS).unwrap_or(i64::MAX));
        let message = Message::new("error-variations-many").with("most", most);
        faults.push(source.at(&["variations"], message));
    }
    if !faults.is_empty() {
        return Err(faults);
    }
    let find = |name: &str| file.variations.iter().find(|v| v.name == name);
    let changes = |d: &Vec<&str>| d.iter().filter_map(|n| find(n)).collect();
    Ok(draw.iter().map(changes).collect())
}

/// One change of each dimension or none of it, in every way; the last dimension changes fastest.
fn choices<'a>(dimensions: &[Vec<&'a VariationFile>]) -> Vec<Vec<&'a VariationFile>> {
    let mut choices = vec![Vec::new()];
    for dimension in dimensions {
        let with = |chosen: Vec<&'a VariationFile>| {
            let more = dimension.iter().map({
                let chosen = chosen.clone();
                move |change| [chosen.as_slice(), &[*change]].concat()
            });
            std::iter::once(chosen).chain(more).collect::<Vec<_>>()
        };
        choices = choices.into_iter().flat_map(with).collect();
    }
    choices
}
