//! `kabla completions`

use clap::{Args, Command};
use clap_complete::{Shell, generate};

use crate::app::Error;

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// The shell that completes.
    #[arg(value_enum)]
    shell: Shell,
}

pub(super) fn run(arguments: &Arguments, mut command: Command) -> Result<(), Error> {
    let name = command.get_name().to_owned();
    let mut script = Vec::new();
    generate(arguments.shell, &mut command, name, &mut script);
    super::print(&String::from_utf8_lossy(&script))
}
