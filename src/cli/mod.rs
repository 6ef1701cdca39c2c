//! The command line: parses, calls the use case, prints. Nothing else prints.
#![allow(clippy::print_stdout, clippy::print_stderr)]

mod band;
mod clips;
mod demo;
mod language;
mod plan;
mod progress;
mod rains;
mod segment;
mod sheet;
mod speak;

use std::io::{self, Write as _};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use chrono::NaiveDate;
use clap::{Args, Parser, Subcommand};

use crate::app::{CacheFolder, Cached, Data, Embedded, Error, Folder, Overrides, Risk, StepKind, Templates};

/// Counts a sweet potato season back from the rains, and says it on paper and
/// aloud in the farmer's language.
#[derive(Debug, Parser)]
#[command(name = "kabla", version, about, disable_help_subcommand = true)]
struct Arguments {
    /// Read packs, templates, fonts or clips from this folder: those it has replace the program's own.
    #[arg(long, global = true, value_name = "DIR")]
    data: Option<PathBuf>,
    /// Take templates and pictures from this folder where it has them, e.g. header.typ.
    #[arg(long, global = true, value_name = "DIR")]
    templates: Option<PathBuf>,
    /// Keep prepared clips in this folder; without it in $KABLA_CACHE, or the user's cache folder.
    #[arg(long, global = true, value_name = "DIR")]
    cache: Option<PathBuf>,
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// Run everything on a case that comes with the program.
    Demo {
        /// Folder for what is made.
        #[arg(long, value_name = "DIR", default_value = "kabla-demo")]
        out: PathBuf,
    },
    /// Dates and amounts of a case, each with its reason.
    Plan {
        /// The case, a TOML file.
        case: PathBuf,
        /// Language of the steps' titles; en where none is given.
        #[arg(long, value_name = "TAG", default_value = "en")]
        language: String,
        #[command(flatten)]
        overrides: OverrideArguments,
        /// Print JSON.
        #[arg(long)]
        json: bool,
    },
    /// Onset and end of the rains in each year of a daily record.
    Rains(rains::Arguments),
    /// Sheets of a case: to print, for phones, as text or as a calendar file.
    Sheet(sheet::Arguments),
    /// Spoken messages of a case, stitched from recorded clips.
    Speak(speak::Arguments),
    /// A radio segment of exact length for a week, or the season's plan of segments.
    Segment(segment::Arguments),
    /// What a speaker records.
    #[command(subcommand)]
    Clips(clips::Clips),
    /// What a translator needs.
    #[command(subcommand)]
    Language(language::Language),
}

/// What goes before the case's own.
#[derive(Debug, Clone, Args)]
struct OverrideArguments {
    /// Count from this day (year-month-day), not from the case's own.
    #[arg(long, value_name = "DATE")]
    today: Option<NaiveDate>,
    /// The last step that is done: what is overdue after it is planned anew from today.
    #[arg(long, value_name = "STEP", value_parser = topic)]
    done: Option<StepKind>,
    /// Time the plan by this part of the years' onsets: early, middle, late, or a percentage.
    #[arg(long, value_name = "RISK", value_parser = risk)]
    risk: Option<Risk>,
    /// Store so many roots that the cuttings suffice in this many of 100 seasons.
    #[arg(long = "sure", value_name = "PERCENT", value_parser = percent)]
    confidence: Option<f64>,
}

impl From<OverrideArguments> for Overrides {
    fn from(of: OverrideArguments) -> Overrides {
        Overrides { today: of.today, done: of.done, risk: of.risk, confidence_percent: of.confidence }
    }
}

fn topic(name: &str) -> Result<StepKind, String> {
    let known = || StepKind::ALL.map(StepKind::name).join(", ");
    StepKind::from_name(name).ok_or_else(|| format!("topics are {}", known()))
}

fn risk(text: &str) -> Result<Risk, String> {
    match text {
        "early" => Ok(Risk::Early),
        "middle" => Ok(Risk::Middle),
        "late" => Ok(Risk::Late),
        other => percent(other)
            .map(Risk::Percentile)
            .map_err(|_| "write early, middle, late, or per cents from 1 to 99".to_owned()),
    }
}

fn percent(text: &str) -> Result<f64, String> {
    text.parse()
        .ok()
        .filter(|percent| (1.0..=99.0).contains(percent))
        .ok_or_else(|| "write a percentage from 1 to 99".to_owned())
}

/// Reads a command without running it; its first word is the program's name.
///
/// # Errors
/// What clap has to say of it.
pub fn parse(command: &[String]) -> Result<(), clap::Error> {
    Arguments::try_parse_from(command).map(drop)
}

/// Runs the command line of this process.
pub fn run() -> ExitCode {
    let arguments = Arguments::parse();
    let root = arguments.data.clone();
    let begins = match arguments.command {
        Command::Language(language::Language::New { .. }) => Some("locales"),
        Command::Clips(clips::Clips::Import(_)) => Some("audio"),
        _ => None,
    };
    // A pack or a voice may be begun in a folder that holds nothing yet.
    let is_there = |folder: &PathBuf| begins.is_none_or(|part| folder.join(part).is_dir());
    let folder = arguments.data.filter(is_there);
    let folder = match folder.map(Folder::open).transpose() {
        Ok(folder) => folder,
        Err(finding) => return fail(&Error::Input(vec![finding])),
    };
    let data: &dyn Data = match &folder {
        Some(folder) => folder,
        None => &Embedded,
    };
    let templates = match arguments.templates.map(|folder| Templates::over(data, folder)).transpose() {
        Ok(templates) => templates,
        Err(finding) => return fail(&Error::Input(vec![finding])),
    };
    let data = templates.as_ref().map_or(data, |templates| templates as &dyn Data);
    let cache = arguments.cache.map(CacheFolder);
    let cache = cache.or_else(|| CacheFolder::of_user(|name| std::env::var_os(name).map(PathBuf::from)));
    let cached = cache.map(|folder| Cached { data, folder });
    let data = cached.as_ref().map_or(data, |cached| cached as &dyn Data);
    let ended = call(data, root.as_deref(), arguments.command);
    if let Some(cached) = &cached {
        cached.folder.tidy();
    }
    match ended {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => fail(&error),
    }
}

/// Prints a text. Whoever closes the other end has seen enough; that is no failure.
fn print(text: &str) -> Result<(), Error> {
    match io::stdout().lock().write_all(text.as_bytes()) {
        Err(error) if error.kind() != io::ErrorKind::BrokenPipe => {
            Err(Error::Write { path: PathBuf::from("standard output"), source: error })
        }
        _ => Ok(()),
    }
}

/// Rows with their columns under each other, a line each.
fn columns<const N: usize>(rows: &[[String; N]]) -> String {
    let widths: [usize; N] = std::array::from_fn(|column| {
        let cells = rows.iter().filter_map(|row| row.get(column));
        cells.map(|cell| cell.chars().count()).max().unwrap_or(0)
    });
    let line = |row: &[String; N]| {
        let cells = row.iter().zip(widths).map(|(cell, width)| format!("{cell:<width$}"));
        cells.collect::<Vec<_>>().join("  ").trim_end().to_owned() + "\n"
    };
    rows.iter().map(line).collect()
}

/// Prints JSON.
fn print_json(value: &serde_json::Value) -> Result<(), Error> {
    print(&format!("{value:#}\n"))
}

fn fail(error: &Error) -> ExitCode {
    // Findings say themselves how much they matter.
    let prefix = if matches!(error, Error::Input(_)) { "" } else { "error: " };
    eprintln!("{prefix}{error}");
    ExitCode::from(error.exit_code())
}

fn call(data: &dyn Data, root: Option<&Path>, command: Command) -> Result<(), Error> {
    match command {
        Command::Demo { out } => demo::run(data, &out),
        Command::Plan { case, language, overrides, json } => {
            plan::run(data, &case, &language, overrides.into(), json)
        }
        Command::Rains(arguments) => rains::run(&arguments),
        Command::Sheet(arguments) => sheet::run(data, &arguments),
        Command::Speak(arguments) => speak::run(data, arguments),
        Command::Segment(arguments) => segment::run(data, arguments),
        Command::Language(command) => language::run(data, root, command),
        Command::Clips(command) => clips::run(data, root, command),
    }
}
