//! `kabla clips`: one file for each of its commands.

mod check;
mod import;
mod script;

use std::path::Path;

use clap::Subcommand;

use crate::app::{Data, Error};

#[derive(Debug, Subcommand)]
pub(super) enum Clips {
    /// Every phrase of a language that speech may need.
    Script(script::Arguments),
    /// How well a voice is recorded, and what is to be recorded again.
    Check(check::Arguments),
    /// Cut a speaker's recordings into the clips of a voice.
    Import(import::Arguments),
}

pub(super) fn run(data: &dyn Data, root: Option<&Path>, command: Clips) -> Result<(), Error> {
    match command {
        Clips::Script(arguments) => script::run(data, &arguments),
        Clips::Check(arguments) => check::run(data, root, &arguments),
        Clips::Import(arguments) => import::run(data, root, arguments),
    }
}
