//! `kabla man`

use std::path::{Path, PathBuf};

use clap::{Args, Command};
use clap_mangen::Man;

use crate::app::{self, Error};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// Folder for a page of each command; without it the first page is printed.
    #[arg(long, value_name = "DIR")]
    out: Option<PathBuf>,
}

pub(super) fn run(arguments: &Arguments, mut command: Command) -> Result<(), Error> {
    // So that each command's page shows its full name and the options of all.
    command.build();
    let Some(folder) = &arguments.out else {
        return super::print(&String::from_utf8_lossy(&page(&command).1));
    };
    let mut files = Vec::new();
    pages(&command, folder, &mut files);
    app::write_files(&files)?;
    super::print(&files.iter().map(|(path, _)| format!("{}\n", path.display())).collect::<String>())
}

/// The pages of a command and of those below it.
fn pages(command: &Command, folder: &Path, files: &mut Vec<(PathBuf, Vec<u8>)>) {
    let (name, bytes) = page(command);
    files.push((folder.join(name), bytes));
    let shown = command.get_subcommands().filter(|command| !command.is_hide_set());
    shown.for_each(|command| pages(command, folder, files));
}

/// A page's file name and text.
fn page(command: &Command) -> (String, Vec<u8>) {
    let man = Man::new(command.clone());
    let mut bytes = Vec::new();
    // Writing into memory does not fail.
    let _ = man.render(&mut bytes);
    (man.get_filename(), bytes)
}
