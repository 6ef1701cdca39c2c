//! Language packs: what they say.

use super::{Code, Data, Error, Finding};
use crate::language::Pack;
use crate::language::numerals::NumeralError;

/// A number in one form of a language, e.g. `cardinal`.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SaidNumber {
    /// The form.
    pub form: String,
    /// The words; `None` where the rules of the form do not reach the number.
    pub words: Option<String>,
}

/// The words of a number in a form, or in each form of the language where none is named.
///
/// # Errors
/// Problems of the pack; a text that is no number; a number that has no words in any form asked for.
pub fn say(
    data: &dyn Data,
    language: &str,
    number: &str,
    form: Option<&str>,
) -> Result<Vec<SaidNumber>, Error> {
    let pack = Pack::load(data, language).map_err(Error::Input)?;
    let finding = |error: NumeralError| {
        Finding::error(Code::NO_NUMBER_WORDS, format!("{} ({language}): {error}", pack.name()))
    };
    let refused = |error| {
        let hint = format!("its number words are in locales/{language}/numbers.rbnf");
        Error::Input(vec![finding(error).hint(hint)])
    };
    let number = pack.read_number(number).map_err(|error| Error::Input(vec![finding(error)]))?;
    let forms = form.map_or_else(|| pack.numerals().forms(), |form| vec![form]);
    let mut said = Vec::new();
    let mut beyond = None;
    for form in forms {
        let words = match pack.numerals().say(number, form) {
            Ok(words) => Some(words),
            Err(error @ NumeralError::BeyondRules { .. }) => {
                beyond = beyond.or(Some(error));
                None
            }
            Err(error) => return Err(refused(error)),
        };
        said.push(SaidNumber { form: form.to_owned(), words });
    }
    match beyond {
        Some(error) if said.iter().all(|said| said.words.is_none()) => Err(refused(error)),
        _ => Ok(said),
    }
}
