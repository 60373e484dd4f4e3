//! Reports that need no drill in progress: saved runs, scenario files, readings, languages.
//!
//! Each `--json` document has a `version`, which changes when its shape does:
//!
//! - `mark`: `faults` (see [`faults::json`]) and `runs`, each with `file`, `seal` (`whole`, `broken` or `missing`), `passed`, `criteria` (`title`, `met`, `critical`) and `findings` (`rule`, `clock_ms`, `critical`, `what`, `now` (empty unless the danger still stood at the end), `path`, `why`, `instead`, `source`; a stage of the path has `at`, `text`, `value`).
//! - `read`: `site`, `converged`, `generator_watts`, `generator` (`volts`, `hertz`, `watts`, `distortion_percent`, `fuel_hours`: on a full tank, null while it stands or on piped gas), `solar_watts` and `battery_watts` (null where there is none), `points` (`id`, `volts`, `volts_across`, `volts_to_earth`, `utility`, `generator`) `things` (`id`, `amps`) and `cords` (`id`, `amps`, `lost_volts`, `settles_celsius`, null for one that runs away, `ampacity_amps`), `gfcis` (`id`, `residual_milliamps`, `neutral_loop_ohms`, null without a loop, `opens`).

use std::path::Path;
use std::path::PathBuf;

use serde_json::Value;
use serde_json::json;

use crate::file::{Diagnostic, Library, Seal, Source};
use crate::session::view::{DebriefView, StageView};
use crate::session::{Played, SiteRead, read, replay};
use crate::words::audit;
use crate::words::{Arg, Message};

use super::output::Output;
use super::{BAD_INPUT, DONE, JSON_VERSION, NOT_PASSED, faults, report};

/// Recomputes saved runs and prints their verdicts; a file that can't be marked does not keep the others from it.
pub(super) fn mark(
    files: &[PathBuf],
    as_json: bool,
    library: &Library,
    output: &mut Output<'_>,
) -> u8 {
    let mut all_pass = true;
    let mut found = Vec::new();
    let mut runs = Vec::new();
    for path in files {
        let file = path.display().to_string();
        let (seal, view) = match verdict(path, &file, library, output.words.tag()) {
            Ok(marked) => marked,
            Err(mut wrong) => {
                found.append(&mut wrong);
                continue;
            }
        };
        all_pass &= view.passed;
        if as_json {
            runs.push(verdict_json(&file, seal, &view));
        } else {
            output.line(&file);
            say_seal(seal, output);
            let lines = report::debrief(&output.words, &view);
            output.lines(&lines);
            output.blank();
        }
    }
    faults::print(&found, output);
    if as_json {
        let wrong = found.iter().map(|fault| faults::json(fault, &output.words));
        let wrong: Vec<Value> = wrong.collect();
        print_json(
            &json!({ "version": JSON_VERSION, "runs": runs, "faults": wrong }),
            output,
        );
    }
    match (found.is_empty(), all_pass) {
        (false, _) => BAD_INPUT,
        (true, false) => NOT_PASSED,
        (true, true) => DONE,
    }
}

fn verdict(
    path: &Path,
    file: &str,
    library: &Library,
    language: &str,
) -> Result<(Seal, DebriefView), Vec<Diagnostic>> {
    let text = super::text_of(path).map_err(|wrong| vec![*wrong])?;
    let played = replay(library, language, Source { file, text: &text })?;
    let view = played.session.debrief().unwrap_or_default();
    Ok((Seal::of(&text), view))
}

/// Says of a run whose seal isn't whole what that tells.
pub(super) fn say_seal(seal: Seal, output: &mut Output<'_>) {
    match seal {
        Seal::Whole => {}
        Seal::Broken => output.say_id("terminal-seal-broken"),
        Seal::Missing => output.say_id("terminal-seal-missing"),
    }
}

/// A saved run, played out again and marked.
pub(super) fn replayed(
    path: &Path,
    file: &str,
    library: &Library,
    language: &str,
) -> Result<Played, Vec<Diagnostic>> {
    let text = super::text_of(path).map_err(|wrong| vec![*wrong])?;
    replay(library, language, Source { file, text: &text })
}

/// The readings of a site.
pub(super) fn site(
    name: &str,
    sets: &[String],
    as_json: bool,
    library: &Library,
    output: &mut Output<'_>,
) -> u8 {
    let view = match read(library, name, sets, &output.words) {
        Ok(view) => view,
        Err(found) => return faults::print_and_stop(&found, output),
    };
    if as_json {
        print_json(&readings_json(&view), output);
    } else {
        output.say_id("read-points");
        for point in &view.points {
            output.line(&format!("  {} ({})", point.sentence, point.id));
        }
        output.say_id("read-things");
        for thing in view
            .things
            .iter()
            .filter(|thing| !thing.sentence.is_empty())
        {
            output.line(&format!("  {} ({})", thing.sentence, thing.id));
        }
        if !view.cords.is_empty() {
            output.say_id("read-cords");
        }
        for cord in &view.cords {
            output.line(&format!("  {} ({})", cord.sentence, cord.id));
        }
        if !view.gfcis.is_empty() {
            output.say_id("read-gfcis");
        }
        for gfci in &view.gfcis {
            output.line(&format!("  {} ({})", gfci.sentence, gfci.id));
        }
        for sentence in &view.generator.sentences {
            output.line(&format!("  {sentence} (generator)"));
        }
        for sentence in &view.sources {
            output.line(&format!("  {sentence}"));
        }
        output.say_id("read-taken");
    }
    if !view.converged {
        output.say_error(&Message::new("read-not-converged"));
        return NOT_PASSED;
    }
    DONE
}

/// How far each language is translated; not passed if one of them is incomplete.
pub(super) fn languages(output: &mut Output<'_>) -> u8 {
    let mut status = DONE;
    for language in audit::coverage() {
        let count = |n: usize| Arg::Count(i64::try_from(n).unwrap_or(i64::MAX));
        output.say(
            &Message::new("terminal-language")
                .with("tag", Arg::Verbatim(language.tag.to_owned()))
                .with("name", Arg::Verbatim(language.name.to_owned()))
                .with("present", count(language.present))
                .with("wanted", count(language.wanted)),
        );
        for fault in &language.faults {
            output.error(&fault.to_string());
            status = NOT_PASSED;
        }
    }
    status
}

pub(super) fn verdict_json(file: &str, seal: Seal, view: &DebriefView) -> Value {
    let stage =
        |stage: &StageView| json!({ "at": stage.at, "text": stage.text, "value": stage.value });
    let criteria: Vec<Value> = view
        .criteria
        .iter()
        .map(|c| json!({ "title": c.title, "met": c.met, "critical": c.critical }))
        .collect();
    let findings: Vec<Value> = view
        .findings
        .iter()
        .map(|f| {
            json!({
                "rule": f.rule, "clock_ms": f.clock_ms, "critical": f.critical, "what": f.what, "now": f.now,
                "path": f.path.iter().map(stage).collect::<Vec<Value>>(),
                "why": f.why, "instead": f.instead, "source": f.source,
            })
        })
        .collect();
    json!({
        "file": file, "seal": seal.name(), "passed": view.passed, "criteria": criteria,
        "findings": findings,
    })
}

fn readings_json(view: &SiteRead) -> Value {
    let points: Vec<Value> = view
        .points
        .iter()
        .map(|p| {
            json!({
                "id": p.id, "volts": p.volts, "volts_across": p.volts_across,
                "volts_to_earth": p.volts_to_earth, "utility": p.utility, "generator": p.generator,
            })
        })
        .collect();
    let things: Vec<Value> = view
        .things
        .iter()
        .map(|t| json!({ "id": t.id, "amps": t.amps }))
        .collect();
    let cords: Vec<Value> = view
        .cords
        .iter()
        .map(|c| {
            json!({
                "id": c.id, "amps": c.amps, "lost_volts": c.lost_v,
                "settles_celsius": c.settles_c, "ampacity_amps": c.ampacity_a,
            })
        })
        .collect();
    let gfcis: Vec<Value> = view
        .gfcis
        .iter()
        .map(|g| {
            json!({
                "id": g.id, "residual_milliamps": g.residual_ma,
                "neutral_loop_ohms": g.neutral_loop_ohm, "opens": g.opens,
            })
        })
        .collect();
    json!({
        "version": JSON_VERSION, "site": view.site, "converged": view.converged,
        "generator_watts": view.generator.watts,
        "generator": {
            "volts": view.generator.volts, "hertz": view.generator.hertz,
            "watts": view.generator.watts, "distortion_percent": view.generator.distortion_pct,
            "fuel_hours": view.generator.fuel_hours,
        },
        "solar_watts": view.solar_watts, "battery_watts": view.battery_watts,
        "points": points, "things": things, "cords": cords, "gfcis": gfcis,
    })
}

pub(super) fn print_json(value: &Value, output: &mut Output<'_>) {
    output.line(&format!("{value:#}"));
}
