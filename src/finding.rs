//! What is wrong with an input, where, and what to do about it.
//!
//! Readers collect findings and go on, so that one run shows all problems of
//! an input.

use std::fmt;

use serde::Serialize;

/// What a finding is about, by a name that stays when its words change.
///
/// ```
/// use kabla::finding::Code;
///
/// assert_eq!(Code::NOT_A_DATE.name(), "not-a-date");
/// let meaning = Code::ALL.iter().find(|(code, _)| *code == Code::NOT_A_DATE);
/// assert_eq!(meaning, Some(&(Code::NOT_A_DATE, "What should be a date is none of the calendar.")));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
pub struct Code(&'static str);

impl Code {
    /// A code of another list, such as that of a plan's remarks.
    pub const fn new(name: &'static str) -> Code {
        Code(name)
    }

    /// Its name, e.g. `unknown-field`.
    pub fn name(self) -> &'static str {
        self.0
    }
}

/// Declares codes with what they stand for, and the list of them all.
macro_rules! codes {
    ($($NAME:ident = $name:literal: $meaning:literal;)+) => {
        impl Code {
            $(#[doc = $meaning] pub const $NAME: Code = Code($name);)+

            /// The codes of inputs, each with what it stands for.
            pub const ALL: &[(Code, &'static str)] = &[$((Code::$NAME, $meaning)),+];
        }
    };
}

codes! {
    CANNOT_READ = "cannot-read": "A file cannot be read, or is not there.";
    NOT_UTF8 = "not-utf8": "A file is not text in UTF-8.";
    SYNTAX = "syntax": "A text does not keep to the rules of its format.";
    TOO_LARGE = "too-large": "A file is larger than any of its kind.";
    IN_THE_WAY = "in-the-way": "A file or folder would be written where there is one already.";
    NO_DATA = "no-data": "A folder has nothing of what it is asked for.";
    NO_FOLDER = "no-folder": "A folder to write in is not there, or none is named.";

    UNKNOWN_FIELD = "unknown-field": "A field that nothing here has a use for, perhaps misspelt.";
    MISSING_FIELD = "missing-field": "A field that must be given is absent.";
    WRONG_TYPE = "wrong-type": "A value is of another kind than its field.";
    EMPTY = "empty": "A text or a list has nothing in it.";
    TOO_LONG = "too-long": "A text is too long for its place.";
    UNPRINTABLE = "unprintable": "A text has characters that cannot be printed.";
    NOT_A_NUMBER = "not-a-number": "What should be a number is none.";
    NOT_A_DATE = "not-a-date": "What should be a date is none of the calendar.";
    OUT_OF_RANGE = "out-of-range": "A number or a date lies outside its limits.";
    UNKNOWN_NAME = "unknown-name": "A name is not one of those there are.";
    BAD_NAME = "bad-name": "A name or a code cannot be used as one.";
    CONFLICT = "conflict": "Values that exclude each other both stand here.";
    MISMATCH = "mismatch": "Two values do not agree.";
    WRONG_ORDER = "wrong-order": "Dates or numbers stand in the wrong order.";
    DUPLICATE = "duplicate": "The same stands here twice.";
    NO_USE = "no-use": "A field or an option has no use here.";

    MISSING_COLUMN = "missing-column": "A table lacks a column.";
    BROKEN_ROW = "broken-row": "A row of a table cannot be read.";
    DAY_OR_MONTH = "day-or-month": "Nothing tells whether the day or the month of a date comes first.";
    UNUSUAL = "unusual": "A measured value is possible, but hardly ever seen.";
    UNMEASURED = "unmeasured": "Days of a record have no amount.";
    TRACES = "traces": "Traces of rain count as none.";
    GAP = "gap": "Days of a record have no row.";
    SHORT_RECORD = "short-record": "A record has too little in it for what it is asked.";
    SPACING_TAKEN = "spacing-taken": "How cuttings are taken to stand where a case does not say.";
    SEASON_TAKEN = "season-taken": "Which of a record's rainy seasons was taken.";

    PACK_EXISTS = "pack-exists": "A pack would be begun where there is one.";
    UNKNOWN_PACK = "unknown-pack": "There is no language pack of this tag.";
    NO_LANGUAGE = "no-language": "No language is named.";
    BROKEN_MESSAGE = "broken-message": "A message or a rule of a pack cannot be read.";
    MISSING_MESSAGE = "missing-message": "A message that must be in a pack is absent.";
    FACT_LOST = "fact-lost": "A message does not say what must be told at every length.";
    UNUSED_MESSAGE = "unused-message": "Nothing uses a message.";
    UNTRANSLATED = "untranslated": "A text is not translated yet.";
    OUTDATED = "outdated": "The source of a translation has changed.";
    REVIEW_DROPPED = "review-dropped": "A text has changed since its review.";
    UNKNOWN_VALUE = "unknown-value": "A message names a value that there is not.";
    DEAD_VARIANT = "dead-variant": "A variant of a message is never chosen.";
    OWN_NAMES = "own-names": "A pack has its own names of months or weekdays.";
    NO_FONT = "no-font": "No font has some letters.";
    LONG_SENTENCE = "long-sentence": "A sentence is longer than a breath.";
    ABBREVIATION = "abbreviation": "A spoken text has an abbreviation.";
    NO_NUMBER_WORDS = "no-number-words": "Some numbers have no words.";
    UNRECORDABLE = "unrecordable": "A spoken message has what nobody can record.";
    LONG_MESSAGE = "long-message": "A text message takes many parts.";

    NO_VOICE = "no-voice": "A language has no recorded voice.";
    UNKNOWN_VOICE = "unknown-voice": "A language has no voice of this name.";
    STAND_IN_VOICE = "stand-in-voice": "A machine speaks where a person should.";
    NOTHING_TO_PLANT = "nothing-to-plant": "No root is left for the bed: there are no amounts to tell a farmer.";
    NOTHING_TO_RECORD = "nothing-to-record": "A voice has a recording of every phrase.";
    BROKEN_SOUND = "broken-sound": "A sound file cannot be used.";
    RECORD_AGAIN = "record-again": "A clip should be recorded again.";
    MISSING_CLIPS = "missing-clips": "Phrases have no clip.";
    NO_ROOM_TONE = "no-room-tone": "No recording is quiet long enough for a room tone.";
    NOT_A_SCRIPT = "not-a-script": "A text is not a recording script.";
    UNCLEAR_FILE_NAME = "unclear-file-name": "A file's name does not tell its phrase, or is that of another.";
    CONFIRM_CUT = "confirm-cut": "A person must say whether a cut is right.";
    NO_CLIPS = "no-clips": "No clip was written, since cuts are still to be confirmed.";
    BROKEN_CUT = "broken-cut": "A cut does not fit its recording or the script.";
    LIST_CHANGED = "list-changed": "A list of cuts has changed since it was written.";

    NOT_IN_PLAN = "not-in-plan": "The plan has nothing of what is asked for.";
    DOES_NOT_FIT = "does-not-fit": "What is to be said cannot be said in this time.";
    NOT_BUILT_IN = "not-built-in": "The program was built without what is asked for.";
}

/// How much a finding matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
#[non_exhaustive]
pub enum Severity {
    /// The input cannot be used.
    Error,
    /// The result may be wrong or unsafe; somebody should look.
    Warning,
    /// Worth knowing.
    Note,
}

/// Where in the input a finding lies; every part is optional.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
#[non_exhaustive]
pub struct Place {
    /// The file as the user named it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub file: Option<String>,
    /// Line or row, counted from 1.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub line: Option<u32>,
    /// The field's dotted name, e.g. `field.area_m2`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub field: Option<String>,
    /// What it is of all that was asked for, e.g. `today`; a command has an option for it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub argument: Option<&'static str>,
}

/// One problem or remark, with its place and a hint.
///
/// ```
/// use kabla::finding::{Code, Finding};
///
/// let finding = Finding::error(Code::OUT_OF_RANGE, "-3 is not possible")
///     .file("farm.toml")
///     .line(12)
///     .field("field.area_m2")
///     .hint("write a number from 0.01 to 1000000");
/// assert_eq!(
///     finding.to_string(),
///     "error: farm.toml:12: field.area_m2: -3 is not possible\n    hint: write a number from 0.01 to 1000000"
/// );
/// ```
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[non_exhaustive]
pub struct Finding {
    /// What it is about.
    pub code: Code,
    /// How much it matters.
    pub severity: Severity,
    /// Where it lies. In a box, so that a finding is small enough to be an error.
    pub place: Box<Place>,
    /// What is the case.
    pub message: String,
    /// What to do; may be empty.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub hint: String,
    /// What the message names, by the name of what it is, e.g. `language`.
    #[serde(skip)]
    pub values: Vec<(&'static str, String)>,
}

impl Finding {
    fn new(severity: Severity, code: Code, message: impl Into<String>) -> Self {
        let (message, hint, values) = (message.into(), String::new(), Vec::new());
        Finding { code, severity, place: Box::default(), message, hint, values }
    }

    /// A finding that makes the input unusable.
    pub fn error(code: Code, message: impl Into<String>) -> Self {
        Finding::new(Severity::Error, code, message)
    }

    /// A finding that somebody should look at.
    pub fn warning(code: Code, message: impl Into<String>) -> Self {
        Finding::new(Severity::Warning, code, message)
    }

    /// A finding worth knowing.
    pub fn note(code: Code, message: impl Into<String>) -> Self {
        Finding::new(Severity::Note, code, message)
    }

    /// Adds what to do.
    #[must_use]
    pub fn hint(mut self, hint: impl Into<String>) -> Self {
        self.hint = hint.into();
        self
    }

    /// Adds the file.
    #[must_use]
    pub fn file(mut self, file: impl Into<String>) -> Self {
        self.place.file = Some(file.into());
        self
    }

    /// Adds the line or row, counted from 1.
    #[must_use]
    pub fn line(mut self, line: u32) -> Self {
        self.place.line = Some(line);
        self
    }

    /// Adds the field's dotted name.
    #[must_use]
    pub fn field(mut self, field: impl Into<String>) -> Self {
        self.place.field = Some(field.into());
        self
    }

    /// Adds what of the things asked for it is about.
    #[must_use]
    pub fn argument(mut self, argument: &'static str) -> Self {
        self.place.argument = Some(argument);
        self
    }

    /// Adds something that the message names.
    #[must_use]
    pub fn value(mut self, name: &'static str, value: impl Into<String>) -> Self {
        self.values.push((name, value.into()));
        self
    }

    /// Whether this finding makes the input unusable.
    pub fn is_error(&self) -> bool {
        self.severity == Severity::Error
    }
}

impl fmt::Display for Finding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let severity = match self.severity {
            Severity::Error => "error",
            Severity::Warning => "warning",
            Severity::Note => "note",
        };
        write!(f, "{severity}: ")?;
        if let Some(file) = &self.place.file {
            write!(f, "{file}")?;
            if let Some(line) = self.place.line {
                write!(f, ":{line}")?;
            }
            write!(f, ": ")?;
        } else if let Some(line) = self.place.line {
            write!(f, "line {line}: ")?;
        }
        for field in self.place.field.as_deref().into_iter().chain(self.place.argument) {
            write!(f, "{field}: ")?;
        }
        write!(f, "{}", self.message)?;
        if !self.hint.is_empty() {
            write!(f, "\n    hint: {}", self.hint)?;
        }
        Ok(())
    }
}

/// The line (from 1) of a byte offset in a text.
pub fn line_of(text: &str, offset: usize) -> u32 {
    let before = text.as_bytes().get(..offset.min(text.len())).unwrap_or_default();
    let line = before.iter().filter(|byte| **byte == b'\n').count() + 1;
    u32::try_from(line).unwrap_or(u32::MAX)
}
