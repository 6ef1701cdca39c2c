//! What is wrong with an input, where, and what to do about it.
//!
//! Readers collect findings and go on, so that one run shows all problems of
//! an input.

use std::fmt;

use serde::{Serialize, Serializer};

/// What a finding is about, by a name that stays when its words change.
///
/// ```
/// use kabla::finding::Code;
///
/// assert_eq!(Code::NOT_A_DATE.name(), "not-a-date");
/// assert_eq!(Code::NOT_A_DATE.meaning(), "What should be a date is none of the calendar.");
/// assert!(Code::ALL.contains(&Code::NOT_A_DATE));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Code {
    name: &'static str,
    meaning: &'static str,
}

impl Code {
    /// A code of another list, such as that of a plan's remarks.
    pub const fn new(name: &'static str, meaning: &'static str) -> Code {
        Code { name, meaning }
    }

    /// Its name, e.g. `unknown-field`.
    pub fn name(self) -> &'static str {
        self.name
    }

    /// What it stands for, in a sentence.
    pub fn meaning(self) -> &'static str {
        self.meaning.trim_start()
    }
}

impl Serialize for Code {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.name)
    }
}

/// Declares codes with what they stand for, and the list of them all.
macro_rules! codes {
    ($(#[doc = $meaning:literal] $NAME:ident = $name:literal;)+) => {
        impl Code {
            $(#[doc = $meaning] pub const $NAME: Code = Code::new($name, $meaning);)+

            /// All codes of inputs, in order.
            pub const ALL: &[Code] = &[$(Code::$NAME),+];
        }
    };
}

codes! {
    /// A file cannot be read, or is not there.
    CANNOT_READ = "cannot-read";
    /// A file is not text in UTF-8.
    NOT_UTF8 = "not-utf8";
    /// A text does not keep to the rules of its format.
    SYNTAX = "syntax";
    /// A file is larger than any of its kind.
    TOO_LARGE = "too-large";
    /// A file or folder would be written where there is one already.
    IN_THE_WAY = "in-the-way";
    /// A folder has nothing of what it is asked for.
    NO_DATA = "no-data";
    /// A folder to write in is not there, or none is named.
    NO_FOLDER = "no-folder";

    /// A field that nothing here has a use for, perhaps misspelt.
    UNKNOWN_FIELD = "unknown-field";
    /// A field that must be given is absent.
    MISSING_FIELD = "missing-field";
    /// A value is of another kind than its field.
    WRONG_TYPE = "wrong-type";
    /// A text or a list has nothing in it.
    EMPTY = "empty";
    /// A text is too long for its place.
    TOO_LONG = "too-long";
    /// A text has characters that cannot be printed.
    UNPRINTABLE = "unprintable";
    /// What should be a number is none.
    NOT_A_NUMBER = "not-a-number";
    /// What should be a date is none of the calendar.
    NOT_A_DATE = "not-a-date";
    /// A number or a date lies outside its limits.
    OUT_OF_RANGE = "out-of-range";
    /// A name is not one of those there are.
    UNKNOWN_NAME = "unknown-name";
    /// A name or a code cannot be used as one.
    BAD_NAME = "bad-name";
    /// Values that exclude each other both stand here.
    CONFLICT = "conflict";
    /// Two values do not agree.
    MISMATCH = "mismatch";
    /// Dates or numbers stand in the wrong order.
    WRONG_ORDER = "wrong-order";
    /// The same stands here twice.
    DUPLICATE = "duplicate";
    /// A field or an option has no use here.
    NO_USE = "no-use";

    /// A table lacks a column.
    MISSING_COLUMN = "missing-column";
    /// A row of a table cannot be read.
    BROKEN_ROW = "broken-row";
    /// Nothing tells whether the day or the month of a date comes first.
    DAY_OR_MONTH = "day-or-month";
    /// A measured value is possible, but hardly ever seen.
    UNUSUAL = "unusual";
    /// Days of a record have no amount.
    UNMEASURED = "unmeasured";
    /// Traces of rain count as none.
    TRACES = "traces";
    /// Days of a record have no row.
    GAP = "gap";
    /// A record has too little in it for what it is asked.
    SHORT_RECORD = "short-record";
    /// Which of a record's rainy seasons was taken.
    SEASON_TAKEN = "season-taken";

    /// A pack would be begun where there is one.
    PACK_EXISTS = "pack-exists";
    /// There is no language pack of this tag.
    UNKNOWN_PACK = "unknown-pack";
    /// No language is named.
    NO_LANGUAGE = "no-language";
    /// A message or a rule of a pack cannot be read.
    BROKEN_MESSAGE = "broken-message";
    /// A message that must be in a pack is absent.
    MISSING_MESSAGE = "missing-message";
    /// Nothing uses a message.
    UNUSED_MESSAGE = "unused-message";
    /// A text is not translated yet.
    UNTRANSLATED = "untranslated";
    /// The source of a translation has changed.
    OUTDATED = "outdated";
    /// A text has changed since its review.
    REVIEW_DROPPED = "review-dropped";
    /// A message names a value that there is not.
    UNKNOWN_VALUE = "unknown-value";
    /// A variant of a message is never chosen.
    DEAD_VARIANT = "dead-variant";
    /// A pack has its own names of months or weekdays.
    OWN_NAMES = "own-names";
    /// No font has some letters.
    NO_FONT = "no-font";
    /// A sentence is longer than a breath.
    LONG_SENTENCE = "long-sentence";
    /// A spoken text has an abbreviation.
    ABBREVIATION = "abbreviation";
    /// Some numbers have no words.
    NO_NUMBER_WORDS = "no-number-words";
    /// A spoken message has what nobody can record.
    UNRECORDABLE = "unrecordable";
    /// A text message takes many parts.
    LONG_MESSAGE = "long-message";

    /// A language has no recorded voice.
    NO_VOICE = "no-voice";
    /// A language has no voice of this name.
    UNKNOWN_VOICE = "unknown-voice";
    /// A machine speaks where a person should.
    STAND_IN_VOICE = "stand-in-voice";
    /// A voice has a recording of every phrase.
    NOTHING_TO_RECORD = "nothing-to-record";
    /// A sound file cannot be used.
    BROKEN_SOUND = "broken-sound";
    /// A clip should be recorded again.
    RECORD_AGAIN = "record-again";
    /// Phrases have no clip.
    MISSING_CLIPS = "missing-clips";
    /// No recording is quiet long enough for a room tone.
    NO_ROOM_TONE = "no-room-tone";
    /// A text is not a recording script.
    NOT_A_SCRIPT = "not-a-script";
    /// A file's name does not tell its phrase, or is that of another.
    UNCLEAR_FILE_NAME = "unclear-file-name";
    /// A person must say whether a cut is right.
    CONFIRM_CUT = "confirm-cut";
    /// No clip was written, since cuts are still to be confirmed.
    NO_CLIPS = "no-clips";
    /// A cut does not fit its recording or the script.
    BROKEN_CUT = "broken-cut";
    /// A list of cuts has changed since it was written.
    LIST_CHANGED = "list-changed";

    /// The plan has nothing of what is asked for.
    NOT_IN_PLAN = "not-in-plan";
    /// What is to be said cannot be said in this time.
    DOES_NOT_FIT = "does-not-fit";
    /// The program was built without what is asked for.
    NOT_BUILT_IN = "not-built-in";
    /// A plan has something that must be noticed.
    PLAN = "plan";
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
    /// Where it lies.
    pub place: Place,
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
        Finding { code, severity, place: Place::default(), message, hint, values }
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
