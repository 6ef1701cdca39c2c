//! `kabla clips script`

use crate::app::{self, Data, Error};

pub(super) fn run(data: &dyn Data, language: &str, json: bool) -> Result<(), Error> {
    let phrases = app::script(data, language)?;
    for phrase in &phrases {
        if json {
            println!("{}", serde_json::json!(phrase));
        } else {
            println!("{:<24} {:<7} {}", phrase.id, phrase.intonation, phrase.words);
        }
    }
    if !json {
        println!("\n{} recordings in all", phrases.len());
    }
    Ok(())
}
