//! Why a number has no words.

use super::number::{MOST_PLACES, Number};

/// Why a number has no words.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum NumeralError {
    /// The rules have no public set of this name.
    #[error("there are no rules for the form `{form}`; there are {}", .known.join(", "))]
    UnknownForm {
        /// The form asked for.
        form: String,
        /// The forms there are.
        known: Vec<String>,
    },
    /// The rules of this form do not reach this number.
    #[error("the rules of the form `{form}` have no words for {number}")]
    BeyondRules {
        /// The number asked for.
        number: Number,
        /// The form asked for.
        form: String,
    },
    /// The rules send this number round in a circle, or through more rules than any number needs.
    #[error("the rules of the form `{form}` come to no end for {number}")]
    Endless {
        /// A number for which this happens.
        number: Number,
        /// The form asked for.
        form: String,
    },
    /// The form has too many different words to list, as in a language that writes a number as one word.
    #[error("the rules of the form `{form}` make too many different words to list")]
    TooManyWords {
        /// The form asked for.
        form: String,
    },
    /// The text is no number in plain digits.
    #[error(
        "`{text}` is not a number such as 12, -3 or 5.25 (at most {MOST_PLACES} digits behind the point)"
    )]
    NotANumber {
        /// The text.
        text: String,
    },
    /// The text may be a number of thousands or one with three decimals.
    #[error("`{text}` may be thousands or decimals; write thousands without a sign between the digits")]
    Doubtful {
        /// The text.
        text: String,
    },
}
