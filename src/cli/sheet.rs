//! `kabla sheet`

use std::path::PathBuf;

use clap::{Args, ValueEnum};

use super::overrides::OverrideArguments;
use crate::app::{self, BookletRequest, Code, Data, Error, Finding, Paper, SheetFormat, SheetRequest};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// The case, a TOML file; several for a booklet.
    #[arg(required = true, value_name = "CASE")]
    cases: Vec<PathBuf>,
    /// Language tag, e.g. sw; the case's own where none is given.
    #[arg(long, value_name = "TAG")]
    language: Option<String>,
    #[command(flatten)]
    overrides: OverrideArguments,
    /// For this farm of a group alone.
    #[arg(long, value_name = "NAME")]
    farm: Option<String>,
    /// What to make.
    #[arg(long = "as", value_enum, default_value_t = Format::Pdf, value_name = "KIND")]
    kind: Format,
    /// What to print, with --as pdf.
    #[arg(long, value_enum, default_value_t = Print::Farm, value_name = "NAME")]
    format: Print,
    /// The most parts that one text message may take.
    #[arg(long, value_name = "N", default_value_t = 2, value_parser = clap::value_parser!(u8).range(1..=10))]
    parts: u8,
    /// The file to write; without it, CASE-TAG.pdf (or .html, .txt, .csv, .ics) here.
    #[arg(long, value_name = "PATH")]
    out: Option<PathBuf>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Format {
    /// Pages to print.
    Pdf,
    /// One page for a phone or a browser.
    Html,
    /// Plain text.
    Text,
    /// Text messages for phones, by date, as a table.
    Sms,
    /// A calendar file (iCalendar).
    Ics,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Print {
    /// Two pages of A4 that a farm takes home.
    Farm,
    /// Every step in full, for whoever holds the meeting.
    Guide,
    /// A3 for the wall, month by month.
    Calendar,
    /// One side of A4 that folds to eight small pages.
    Card,
    /// A4 to fill in by pen at the checks of the store.
    Record,
    /// The farm sheets of many cases, or of a group and each of its farms, in one file with an index by name.
    Booklet,
}

pub(super) fn run(data: &dyn Data, arguments: &Arguments) -> Result<(), Error> {
    let Arguments { cases, language, overrides, farm, kind, format, parts, out } = arguments;
    let (language, out, overrides) = (language.as_deref(), out.as_deref(), overrides.clone().into());
    let paper = match format {
        Print::Farm => Paper::Farm,
        Print::Guide => Paper::Guide,
        Print::Calendar => Paper::Calendar,
        Print::Card => Paper::Card,
        Print::Record => Paper::Record,
        Print::Booklet if farm.is_some() => {
            return Err(refused("--farm", "a booklet has a sheet for every farm", "leave --farm out"));
        }
        Print::Booklet if *kind == Format::Pdf => {
            let made = app::booklet(data, BookletRequest { cases, overrides, language, out })?;
            return super::table(&[made]);
        }
        Print::Booklet => return Err(refused("--as", "a booklet is printed", "leave --as out")),
    };
    let [case] = cases.as_slice() else {
        return Err(refused(
            "CASE",
            "several cases make a booklet",
            "add --format booklet, or name one case",
        ));
    };
    let format = match kind {
        Format::Pdf => SheetFormat::Pdf(paper),
        Format::Html => SheetFormat::Html,
        Format::Text => SheetFormat::Text,
        Format::Sms => SheetFormat::Sms { most_parts: usize::from(*parts) },
        Format::Ics => SheetFormat::Calendar,
    };
    let made =
        app::sheet(data, SheetRequest { case, overrides, farm: farm.as_deref(), language, format, out })?;
    super::table(&[made])
}

fn refused(field: &str, message: &str, hint: &str) -> Error {
    Error::Input(vec![Finding::error(Code::CONFLICT, message).field(field).hint(hint)])
}
