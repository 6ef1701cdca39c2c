//! `kabla clips script`

use clap::Args;

use crate::app::{self, Data, Error, PhraseToRecord};

#[derive(Debug, Args)]
pub(in crate::cli) struct Arguments {
    /// Language tag, e.g. sw.
    #[arg(long, value_name = "TAG")]
    language: String,
    /// Print one JSON object a line.
    #[arg(long)]
    json: bool,
}

pub(super) fn run(data: &dyn Data, arguments: &Arguments) -> Result<(), Error> {
    let Arguments { language, json } = arguments;
    let phrases = app::script(data, language)?;
    let line = |phrase| match *json {
        true => format!("{}\n", serde_json::json!(phrase)),
        false => in_words(phrase),
    };
    let mut text: String = phrases.iter().map(line).collect();
    if !*json {
        text.push_str(&format!("\n{} recordings in all\n", phrases.len()));
    }
    super::super::print(&text)
}

fn in_words(phrase: &PhraseToRecord) -> String {
    format!("{:<24} {:<7} {}\n", phrase.id, phrase.intonation, phrase.words)
}
