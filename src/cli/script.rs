//! `kabla clips script`

use crate::app::{self, Data, Error, PhraseToRecord};

pub(super) fn run(data: &dyn Data, language: &str, json: bool) -> Result<(), Error> {
    let phrases = app::script(data, language)?;
    let line = |phrase| match json {
        true => format!("{}\n", serde_json::json!(phrase)),
        false => in_words(phrase),
    };
    let mut text: String = phrases.iter().map(line).collect();
    if !json {
        text.push_str(&format!("\n{} recordings in all\n", phrases.len()));
    }
    super::print(&text)
}

fn in_words(phrase: &PhraseToRecord) -> String {
    format!("{:<24} {:<7} {}\n", phrase.id, phrase.intonation, phrase.words)
}
