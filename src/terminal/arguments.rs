//! The command line: what can be asked, and how it is written.
//!
//! Help texts are English, as those of the argument parser itself are.

use std::path::PathBuf;

use clap::Args;
use clap::Parser;
use clap::Subcommand;

/// Practice switching a home from the utility to a generator and back, safely.
///
/// Without a command, the window opens.
/// Exit status: 0 done or passed, 1 done and not passed, 2 bad input or usage.
#[derive(Debug, Parser)]
#[command(name = "outage-drill", version, disable_help_subcommand = true)]
pub(super) struct Arguments {
    /// What to do.
    #[command(subcommand)]
    pub(super) command: Option<Ask>,
    /// Language to speak, such as en or es; the system's language if left out.
    #[arg(long, global = true, value_name = "TAG")]
    pub(super) language: Option<String>,
    /// Folder with scenarios of your own (sites, drills, lessons, words), in place of the shipped ones.
    #[arg(long, global = true, value_name = "DIR")]
    pub(super) scenarios: Option<PathBuf>,
    /// File with what is true of the place where you teach, for the sheets of lessons.
    #[arg(long, global = true, value_name = "FILE")]
    pub(super) local_facts: Option<PathBuf>,
}

/// The commands.
#[derive(Debug, Subcommand)]
pub(super) enum Ask {
    /// Lists the drills by track, with level, way and directions.
    List {
        /// Lists only the drills of this track: home, class or apprentice.
        #[arg(long, value_name = "TRACK")]
        track: Option<String>,
        /// Prints one JSON document instead of text.
        #[arg(long)]
        json: bool,
    },
    /// Lists the lessons, or prints one as its instructor follows it.
    Lesson(Lesson),
    /// Shows what can be operated in a drill, and how an action is written.
    Actions {
        /// Name of the drill.
        name: String,
    },
    /// Lists the variants of a drill, each with the smallest seed that gives it.
    Variations {
        /// Name of the drill.
        name: String,
    },
    /// Plays a drill as text, from the keyboard or from a file of actions.
    Play(Play),
    /// Plays saved runs again and marks them.
    ///
    /// A folder stands for every file in it, and is told as a roster: one row for each run.
    Mark(Mark),
    /// Walks through the debrief of a saved run, page by page.
    ///
    /// What you say on the first two pages is kept in the run's file and isn't marked.
    Debrief(Debrief),
    /// Says what a learner has shown unaided, how much of it is left, and what to practice when.
    ///
    /// Saved runs count that were played alone, as a test, without going back, on a known day.
    Mastery(Mastery),
    /// Compares two saved runs of one drill: how things stand at the end, what became of whom, and what was found.
    Compare {
        /// Run file: as it was.
        #[arg(value_name = "WAS")]
        was: PathBuf,
        /// Run file: as it was tried otherwise.
        #[arg(value_name = "TRIED")]
        tried: PathBuf,
    },
    /// Reads scenario files, reports every fault, and proves what holds of each drill.
    Check(Check),
    /// Shows the readings of a site with its controls in given positions.
    Read {
        /// Name of the site, or of a drill that stands on it.
        site: String,
        /// How a control stands, as NAME=POSITION; may be given more than once.
        #[arg(long = "set", value_name = "NAME=POSITION")]
        sets: Vec<String>,
        /// Prints one JSON document instead of text.
        #[arg(long)]
        json: bool,
    },
    /// Shows what the models are held against.
    Evidence {
        /// What to show.
        #[command(subcommand)]
        what: Evidence,
    },
    /// Draws screens into files, without a window.
    Picture {
        /// Names of the screens.
        #[arg(required = true, value_name = "SCREEN")]
        screens: Vec<String>,
        /// Folder to write to.
        #[arg(long, value_name = "DIR")]
        out: PathBuf,
    },
    /// Explains the words of the trade: all of them, or one.
    Glossary {
        /// The word, in the language that is spoken.
        #[arg(value_name = "TERM")]
        term: Vec<String>,
        /// Prints one JSON document instead of text.
        #[arg(long)]
        json: bool,
    },
    /// Shows how far each language is translated.
    Languages,
}

/// What can be shown as evidence.
#[derive(Debug, Subcommand)]
pub(super) enum Evidence {
    /// Compares published figures with what the models give, as a table.
    ///
    /// Exit status: 0 if every row is within its tolerance or differs by what it states, 1 if one isn't.
    Published {
        /// Prints one JSON document instead of text.
        #[arg(long)]
        json: bool,
    },
    /// Compares whole networks with published tables and other solvers, as a table.
    ///
    /// Exit status: as that of the published figures.
    Networks {
        /// Prints one JSON document instead of text.
        #[arg(long)]
        json: bool,
    },
    /// Lets simulated learners play, and holds how each run is marked against a second judge.
    ///
    /// Exit status: 0 if the two agree on every run and each rule that is broken on purpose is caught, 1 if not.
    Learners {
        /// How many runs are played.
        #[arg(long, default_value_t = 4000, value_name = "N")]
        runs: usize,
        /// Seed of what the learners do.
        #[arg(long, default_value_t = 1, value_name = "N")]
        seed: u64,
        /// Prints one JSON document instead of text.
        #[arg(long)]
        json: bool,
    },
    /// Plays the mistakes that the drills show, and how each is put right.
    Mistakes {
        /// Prints one JSON document instead of text.
        #[arg(long)]
        json: bool,
    },
}

/// Which lesson, and what of it.
#[derive(Debug, Args)]
pub(super) struct Lesson {
    /// Name of the lesson; all are listed if left out.
    pub(super) name: Option<String>,
    /// Prints only this session's plan, counted from 1.
    #[arg(long, value_name = "N", requires = "name", conflicts_with = "handout")]
    pub(super) session: Option<usize>,
    /// Prints the sheet that learners take home.
    #[arg(long, requires = "name")]
    pub(super) handout: bool,
    /// Prints one JSON document instead of text.
    #[arg(long)]
    pub(super) json: bool,
}

/// How to play.
#[derive(Debug, Args)]
pub(super) struct Play {
    /// Name of the drill.
    pub(super) name: String,
    /// Explains mistakes as they happen; this is how it is played unless asked otherwise.
    #[arg(long, conflicts_with = "assessed")]
    pub(super) coached: bool,
    /// As coached, and shows the next safe step with its reason.
    #[arg(long, conflicts_with_all = ["coached", "assessed"])]
    pub(super) guided: bool,
    /// Gives no help until the end.
    #[arg(long)]
    pub(super) assessed: bool,
    /// Seed of what is left to chance.
    #[arg(long, default_value_t = 1, value_name = "N")]
    pub(super) seed: u64,
    /// Plays this variant, with the smallest seed that gives it.
    #[arg(long, value_name = "NAME", conflicts_with = "seed")]
    pub(super) variation: Option<String>,
    /// Takes the actions from a file, one a line, and marks them.
    #[arg(long, value_name = "FILE")]
    pub(super) actions: Option<PathBuf>,
    /// Writes the run to a file, to be marked again later.
    #[arg(long, value_name = "FILE")]
    pub(super) save: Option<PathBuf>,
    /// A learner's name, to be kept in the saved run; may be given several times.
    #[arg(long, value_name = "NAME")]
    pub(super) learner: Vec<String>,
    /// How learners sit, to be kept in the saved run: alone, in-turns, as-a-team or in-pairs.
    #[arg(long, value_name = "HOW")]
    pub(super) seated: Option<String>,
    /// The day, as 2026-03-01, to be kept in the saved run.
    #[arg(long, value_name = "DATE")]
    pub(super) on: Option<String>,
}

/// Which saved runs to mark, and how they are told.
#[derive(Debug, Args)]
pub(super) struct Mark {
    /// Run files, or folders of them.
    #[arg(required = true, value_name = "PATH")]
    pub(super) paths: Vec<PathBuf>,
    /// Prints a roster, and writes it to a file as comma-separated values.
    #[arg(long, value_name = "FILE", conflicts_with = "json")]
    pub(super) roster: Option<PathBuf>,
    /// Puts a number in the place of each learner's name, for a roster that others see.
    #[arg(long, conflicts_with = "json")]
    pub(super) without_names: bool,
    /// Prints one JSON document instead of text.
    #[arg(long)]
    pub(super) json: bool,
}

/// Whose mastery, and when.
#[derive(Debug, Args)]
pub(super) struct Mastery {
    /// Folder of run files.
    #[arg(value_name = "FOLDER")]
    pub(super) folder: PathBuf,
    /// The learner, by the name that the runs keep.
    ///
    /// A run without a name is taken by its file's, which may go on with a dash and a number or a day: ana.run, ana-2.run.
    #[arg(long, value_name = "NAME")]
    pub(super) learner: String,
    /// The day to tell it for, as 2026-03-01; that of the last run that counts if left out.
    #[arg(long, value_name = "DATE")]
    pub(super) today: Option<String>,
    /// The day on which a season starts that the learner has to be ready for.
    #[arg(long, value_name = "DATE")]
    pub(super) season: Option<String>,
    /// Prints one JSON document instead of text.
    #[arg(long)]
    pub(super) json: bool,
}

/// Which debrief, and in what form.
#[derive(Debug, Args)]
pub(super) struct Debrief {
    /// Run file.
    #[arg(value_name = "FILE")]
    pub(super) file: PathBuf,
    /// Prints everything at once as one JSON document.
    #[arg(long)]
    pub(super) json: bool,
    /// Writes the curves to a file as comma-separated values, a row for each second, and stops there.
    #[arg(long, value_name = "FILE", conflicts_with = "json")]
    pub(super) series: Option<PathBuf>,
}

/// What to check, and how.
#[derive(Debug, Args)]
pub(super) struct Check {
    /// Files or folders; the drills that come with the program if left out.
    #[arg(value_name = "PATH")]
    pub(super) paths: Vec<PathBuf>,
    /// Prints one JSON document instead of text.
    #[arg(long)]
    pub(super) json: bool,
    /// Checks each drill as written and leaves out its variants.
    #[arg(long)]
    pub(super) as_written: bool,
    /// Keeps proofs in a folder and proves again only what has changed.
    #[arg(long, value_name = "DIR")]
    pub(super) cache: Option<PathBuf>,
    /// Writes the ways to where something breaks into a folder, as action files.
    #[arg(long, value_name = "DIR")]
    pub(super) counterexamples: Option<PathBuf>,
    /// How many drills are checked at once; as many as there are cores if left out.
    #[arg(long, value_name = "N")]
    pub(super) threads: Option<usize>,
}
