//! `kabla clips import`

use std::path::{Path, PathBuf};

use clap::Args;

use crate::app::{self, Consent, Data, Error, ImportRequest};
use crate::cli::hints;

#[derive(Debug, Args)]
pub(in crate::cli) struct Arguments {
    /// Language tag, e.g. sw.
    #[arg(long, value_name = "TAG")]
    language: String,
    /// The voice that the clips belong to: a folder's name.
    #[arg(long, value_name = "NAME")]
    voice: String,
    /// What was read, as `clips script --json` printed it; all that the voice still lacks where none is given.
    #[arg(long, value_name = "FILE")]
    script: Option<PathBuf>,
    /// A list of cuts, confirmed: it decides instead of the matching.
    #[arg(long, value_name = "FILE")]
    cuts: Option<PathBuf>,
    /// A code for the speaker, e.g. S01; not a name. The first import of a voice needs it.
    #[arg(long, value_name = "CODE")]
    speaker: Option<String>,
    /// What one may do with the recordings. The first import needs it.
    #[arg(long, value_name = "TEXT")]
    rights: Option<String>,
    /// How and when the speaker agreed. The first import needs it.
    #[arg(long, value_name = "TEXT")]
    consent: Option<String>,
    /// How and where the recordings were made. The first import needs it.
    #[arg(long, value_name = "TEXT")]
    made_by: Option<String>,
    /// Sessions read in the script's order, or one file for each phrase, named by its line.
    #[arg(value_name = "RECORDING", required = true)]
    recordings: Vec<PathBuf>,
}

pub(super) fn run(data: &dyn Data, root: Option<&Path>, arguments: Arguments) -> Result<(), Error> {
    let Arguments { language, voice, script, cuts, speaker, rights, consent, made_by, recordings } =
        arguments;
    let request = ImportRequest {
        language: &language,
        voice: &voice,
        script: script.as_deref(),
        cuts: cuts.as_deref(),
        consent: Consent { speaker, rights, consent, made_by },
        recordings: &recordings,
    };
    let imported = app::import(data, root, &request)?;
    let mut text: String = imported.notes.iter().map(|note| hints::in_words(note) + "\n").collect();
    text += &format!("{} clips in {}\n", imported.clips, imported.folder.display());
    if imported.left_out > 0 {
        text += &format!("{} stretches of sound left out, as the list of cuts says\n", imported.left_out);
    }
    super::super::print(&text)
}
