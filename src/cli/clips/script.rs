//! `kabla clips script`

use std::path::PathBuf;

use clap::Args;

use crate::app::{self, Data, Error, ScriptRequest};

#[derive(Debug, Args)]
pub(in crate::cli) struct Arguments {
    /// Language tag, e.g. sw.
    #[arg(long, value_name = "TAG")]
    language: String,
    /// The voice; the pack's own where none is given. A new name begins a new voice.
    #[arg(long, value_name = "NAME")]
    voice: Option<String>,
    /// Only what the messages of this case need; may be given again. Without it everything is listed, and the example cases tell what comes first.
    #[arg(long = "case", value_name = "CASE")]
    cases: Vec<PathBuf>,
    /// Also what is recorded already.
    #[arg(long)]
    all: bool,
    /// Print one JSON object a line.
    #[arg(long, conflicts_with = "out")]
    json: bool,
    /// The file to write: .pdf, .txt or .jsonl; may be given again. Without it the script is printed.
    #[arg(long, value_name = "FILE")]
    out: Vec<PathBuf>,
}

pub(super) fn run(data: &dyn Data, arguments: &Arguments) -> Result<(), Error> {
    let Arguments { language, voice, cases, all, json, out } = arguments;
    let request = ScriptRequest { language, voice: voice.as_deref(), cases, all: *all };
    let script = app::script(data, &request)?;
    if !out.is_empty() {
        return super::super::table(&script.write(data, out)?);
    }
    script.remarks().iter().for_each(|remark| eprintln!("{remark}"));
    if script.is_complete() {
        eprintln!("--all lists what is recorded, --voice NAME begins another voice");
    }
    match *json {
        true => super::super::print(&script.json_lines()),
        false => super::super::print(&String::from_utf8_lossy(&script.text(data)?)),
    }
}
