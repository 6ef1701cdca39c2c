//! The command line: parses, calls the use case, prints. Nothing else prints.
#![allow(clippy::print_stdout, clippy::print_stderr)]

mod band;
mod case;
mod clips;
mod completions;
mod demo;
mod hints;
mod language;
mod man;
mod output;
mod overrides;
mod plan;
mod progress;
mod rains;
mod segment;
mod sheet;
mod speak;

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use clap::{CommandFactory as _, Parser, Subcommand};

use crate::app::{CacheFolder, Cached, Data, Embedded, Error, Folder, Templates, VoiceError};
use output::{columns, print, print_json, table};
use overrides::OverrideArguments;

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
    /// A case to begin from, with a line on every field.
    Case(case::Arguments),
    /// Dates and amounts of a case, each with its reason.
    Plan {
        /// The case, a TOML file.
        case: PathBuf,
        /// Language of the steps' titles; en where none is given.
        #[arg(long, value_name = "TAG", default_value = "en")]
        language: String,
        #[command(flatten)]
        overrides: OverrideArguments,
        /// The plan of this farm of a group.
        #[arg(long, value_name = "NAME")]
        farm: Option<String>,
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
    /// What lets a shell complete these commands.
    Completions(completions::Arguments),
    /// Manual pages.
    Man(man::Arguments),
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

fn fail(error: &Error) -> ExitCode {
    eprintln!("{}", hints::error_in_words(error));
    ExitCode::from(exit_code(error))
}

/// 2 for wrong input, 3 for phrases without a recording, 1 for the rest.
fn exit_code(error: &Error) -> u8 {
    match error {
        Error::Voice(VoiceError::Missing { .. }) => 3,
        Error::Input(_) | Error::Voice(VoiceError::Bank(_)) | Error::Wording(_) | Error::Sheet(_) => 2,
        _ => 1,
    }
}

fn call(data: &dyn Data, root: Option<&Path>, command: Command) -> Result<(), Error> {
    match command {
        Command::Demo { out } => demo::run(data, &out),
        Command::Plan { case, language, overrides, farm, json } => {
            plan::run(data, &case, &language, (overrides.into(), farm.as_deref()), json)
        }
        Command::Case(arguments) => case::run(&arguments),
        Command::Completions(arguments) => completions::run(&arguments, Arguments::command()),
        Command::Man(arguments) => man::run(&arguments, Arguments::command()),
        Command::Rains(arguments) => rains::run(&arguments),
        Command::Sheet(arguments) => sheet::run(data, &arguments),
        Command::Speak(arguments) => speak::run(data, arguments),
        Command::Segment(arguments) => segment::run(data, arguments),
        Command::Language(command) => language::run(data, root, command),
        Command::Clips(command) => clips::run(data, root, command),
    }
}
