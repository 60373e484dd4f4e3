//! Times the window against an empty window of the same engine features, in turns, in one run.
//!
//! Each is opened several times by this program, which starts itself; of each figure the median counts.
//! Prints a table with the ratios and what they may be, and fails when one is more.
//! It needs a display (a virtual one will do) and reads the memory that Linux tells of a process.

#![expect(clippy::print_stdout, reason = "what a timing is for")]
#![expect(clippy::disallowed_methods, reason = "a timing reads the clock")]

use std::process::{Command, ExitCode};
use std::time::{Duration, Instant};

use outage_drill::file::Library;
use outage_drill::session::Session;
use outage_drill::window::{Timed, timed};

/// The screen with most on it: a consequence told on a street with everything that can be drawn.
const BUSIEST: &str = "line-fed-first";
/// How often each window is opened.
const TURNS: usize = 5;
/// The longest that a frame may take on the software adapter, milliseconds: thirty frames a second.
const FRAME_MS: f64 = 1000.0 / 30.0;

/// The figures, in the order in which a window prints them: name, unit, what the ratio may be, what ours may be.
const FIGURES: [(&str, &str, f64, f64); 6] = [
    ("first usable frame", "ms", 1.5, f64::INFINITY),
    ("memory, highest", "MiB", 1.5, f64::INFINITY),
    ("frame while things move, median", "ms", 1.3, FRAME_MS),
    (
        "frame while things move, 95 of 100",
        "ms",
        f64::INFINITY,
        FRAME_MS,
    ),
    (
        "frame while the scene glides, median",
        "ms",
        f64::INFINITY,
        FRAME_MS,
    ),
    (
        "frame while the scene glides, 95 of 100",
        "ms",
        f64::INFINITY,
        FRAME_MS,
    ),
];

fn main() -> ExitCode {
    let begun = Instant::now();
    let mode = std::env::args().nth(1).unwrap_or_default();
    let told = match mode.as_str() {
        "empty" => open(begun, None),
        "ours" => open(begun, Some(BUSIEST)),
        _ => compare(),
    };
    match told {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::FAILURE,
        Err(why) => {
            println!("{why}");
            ExitCode::FAILURE
        }
    }
}

/// Opens one window and prints its figures.
fn open(begun: Instant, screen: Option<&str>) -> Result<bool, String> {
    let session = || {
        let (library, faults) = Library::shipped();
        faults.is_empty().then(|| Session::new(library, "en"))
    };
    let shown = screen.and_then(|screen| Some((session()?, screen)));
    let Timed {
        first,
        moving,
        gliding,
    } = timed(begun, shown).map_err(|why| why.to_string())?;
    let figures = [
        ms(&first),
        highest_mib()?,
        share(&moving, 50),
        share(&moving, 95),
        share(&gliding, 50),
        share(&gliding, 95),
    ];
    println!("{}", figures.map(|figure| figure.to_string()).join(" "));
    Ok(true)
}

/// Opens both windows in turns, prints the table, and says whether all is as it may be.
fn compare() -> Result<bool, String> {
    let (mut empty, mut ours) = (Vec::new(), Vec::new());
    for _ in 0..TURNS {
        empty.push(figures("empty")?);
        ours.push(figures("ours")?);
    }
    println!(
        "{:<42}{:>10}{:>10}{:>8}{:>8}",
        "median of each", "empty", "ours", "ratio", "may be"
    );
    let mut all = true;
    for (place, (name, unit, ratio_most, most)) in FIGURES.into_iter().enumerate() {
        let (empty, ours) = (median(&empty, place), median(&ours, place));
        let ratio = ours / empty;
        let kept = ratio <= ratio_most && ours <= most;
        all &= kept;
        let may = if ratio_most.is_finite() {
            format!("{ratio_most}")
        } else {
            String::new()
        };
        let limit = if most.is_finite() {
            format!("  at most {most:.1} {unit}")
        } else {
            String::new()
        };
        let word = if kept { "" } else { "  TOO MUCH" };
        println!(
            "{:<42}{empty:>10.1}{ours:>10.1}{ratio:>8.2}{may:>8}{limit}{word}",
            format!("{name}, {unit}")
        );
    }
    Ok(all)
}

/// The figures of one window, opened by a process of its own.
fn figures(mode: &str) -> Result<Vec<f64>, String> {
    let program = std::env::current_exe().map_err(|why| why.to_string())?;
    let output = Command::new(program)
        .arg(mode)
        .output()
        .map_err(|why| why.to_string())?;
    let told = String::from_utf8_lossy(&output.stdout);
    let figures: Vec<f64> = told
        .split_whitespace()
        .filter_map(|word| word.parse().ok())
        .collect();
    if output.status.success() && figures.len() == FIGURES.len() {
        Ok(figures)
    } else {
        let why = String::from_utf8_lossy(&output.stderr);
        Err(format!(
            "The window could not be timed ({mode}): {told}{why}"
        ))
    }
}

fn median(turns: &[Vec<f64>], place: usize) -> f64 {
    let mut all: Vec<f64> = turns
        .iter()
        .filter_map(|turn| turn.get(place).copied())
        .collect();
    all.sort_by(f64::total_cmp);
    all.get(all.len() / 2).copied().unwrap_or(f64::NAN)
}

/// The time that so many of a hundred frames keep within, milliseconds.
fn share(frames: &[Duration], of_100: usize) -> f64 {
    let mut frames: Vec<Duration> = frames.to_vec();
    frames.sort();
    frames.get(frames.len() * of_100 / 100).map_or(f64::NAN, ms)
}

fn ms(time: &Duration) -> f64 {
    time.as_secs_f64() * 1e3
}

/// The most memory that this process has held, MiB.
fn highest_mib() -> Result<f64, String> {
    let status = std::fs::read_to_string("/proc/self/status").map_err(|why| why.to_string())?;
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    let kib = line.and_then(|line| line.trim().trim_end_matches(" kB").parse::<f64>().ok());
    kib.map(|kib| kib / 1024.0)
        .ok_or_else(|| "This system doesn't tell the memory of a process.".to_owned())
}
