//! `kabla clips`: one file for each of its commands.

mod script;

use clap::Subcommand;

use crate::app::{Data, Error};

#[derive(Debug, Subcommand)]
pub(super) enum Clips {
    /// Every phrase of a language that speech may need.
    Script(script::Arguments),
}

pub(super) fn run(data: &dyn Data, command: Clips) -> Result<(), Error> {
    match command {
        Clips::Script(arguments) => script::run(data, &arguments),
    }
}
