//! What is to be recorded.

use serde::Serialize;

use super::super::{Data, Error};
use crate::language::{Intonation, Pack, Role};

/// A phrase that a speaker records.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct PhraseToRecord {
    /// Where it stands in the pack.
    pub id: String,
    /// The words.
    pub words: String,
    /// `medial` where the sentence goes on after it, `final` where it ends.
    pub intonation: &'static str,
    /// `phrase`, `number`, `date` or `unit`.
    pub kind: &'static str,
}

/// All phrases of a language that speech may need.
///
/// # Errors
/// Problems of the pack.
pub fn script(data: &dyn Data, language: &str) -> Result<Vec<PhraseToRecord>, Error> {
    let pack = Pack::load(data, language).map_err(Error::Input)?;
    let phrases = pack.phrases().map_err(Error::Input)?;
    let to_record = phrases.into_iter().map(|phrase| PhraseToRecord {
        id: phrase.id,
        words: phrase.words,
        intonation: match phrase.ending {
            Intonation::Medial => "medial",
            Intonation::Final => "final",
        },
        kind: match phrase.role {
            Role::Phrase => "phrase",
            Role::Number => "number",
            Role::Date => "date",
            Role::Unit => "unit",
        },
    });
    Ok(to_record.collect())
}
