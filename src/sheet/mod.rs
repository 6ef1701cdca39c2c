//! Guidance on paper: written sentences become PDF, HTML and plain text.
//!
//! The templates read a sheet's facts as data. No markup is ever assembled
//! from anybody's text, so a farm called `#panic()` or `<script>` prints as
//! itself.

mod airings;
mod drawing;
mod facts;
mod html;
mod ics;
mod pdf;
mod script;
mod sms;
mod template;

pub use airings::{Airing, AiringLabels, Airings, Told, airings_calendar, airings_table};
pub use drawing::{Caption, Drawing, DrawingKind, drawings};
pub use facts::{Bars, Entry, Facts, Labels, Measure, Month, Row, TableFacts, TipFacts};
pub use html::{html, text};
pub use ics::ics;
pub use pdf::{Paper, Pdf, Printer};
pub use script::{Listed, Passage, Script, ScriptLabels};
pub use sms::{Alphabet, Cost, SmsOptions, TextMessage, Work, cost, sms, sms_left_out, sms_table};
pub use template::render;

use crate::language::WordingError;

/// Why a sheet could not be made.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum SheetError {
    /// A wording is missing or cannot be resolved.
    #[error(transparent)]
    Wording(#[from] WordingError),
    /// A template, font or picture is missing.
    #[error("{0} is missing")]
    Missing(String),
    /// Letters that no font has, which would print as boxes.
    #[error(
        "no font has {letters} as in \"{text}\"\n    hint: write it in other letters, or put a font that has them (.ttf or .otf) beside the others into a fonts folder"
    )]
    NoFont {
        /// The letters.
        letters: String,
        /// The text they stand in.
        text: String,
    },
    /// A template cannot be read or does not fit the facts.
    #[error(
        "{file}: {message}\n    hint: correct it, or take it out of your folder: the program has its own"
    )]
    Template {
        /// The template.
        file: String,
        /// What is wrong, with the line where it is known.
        message: String,
    },
    /// A sheet reaches beyond its paper, or a part of it beyond its place.
    #[error(
        "{file}: the sheet does not fit on its paper: {what}\n    hint: shorten names in the case or texts in the pack"
    )]
    TooFull {
        /// The template.
        file: String,
        /// What does not fit, with its page.
        what: String,
    },
}
