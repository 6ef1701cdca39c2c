//! `kabla case`

use std::path::PathBuf;

use clap::{Args, ValueEnum};

use crate::app::{self, Error, Starter};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// Whom it is about.
    #[arg(value_enum)]
    of: Of,
    /// The file to write; without it the case is printed.
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
}

#[derive(Debug, Clone, Copy, PartialEq, ValueEnum)]
enum Of {
    /// One farm.
    Farm,
    /// A group of farmers with one store and one bed.
    Group,
    /// A rain zone, for radio.
    Zone,
}

pub(super) fn run(arguments: &Arguments) -> Result<(), Error> {
    let starter = match arguments.of {
        Of::Farm => Starter::Farm,
        Of::Group => Starter::Group,
        Of::Zone => Starter::Zone,
    };
    let Some(out) = &arguments.out else { return super::print(starter.text()) };
    app::begin_case(starter, out)?;
    let out = out.display();
    super::print(&format!("{out}\nPut in your own details, then run: kabla plan {out}\n"))
}
