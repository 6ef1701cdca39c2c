//! What is wrong with an input, where, and what to do about it.
//!
//! Readers collect findings and go on, so that one run shows all problems of
//! an input.

use std::fmt;

use serde::Serialize;

/// How much a finding matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
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
}

/// One problem or remark, with its place and a hint.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Finding {
    /// How much it matters.
    pub severity: Severity,
    /// Where it lies.
    pub place: Place,
    /// What is the case.
    pub message: String,
    /// What to do; may be empty.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub hint: String,
}

impl Finding {
    fn new(severity: Severity, message: impl Into<String>) -> Self {
        Finding { severity, place: Place::default(), message: message.into(), hint: String::new() }
    }

    /// A finding that makes the input unusable.
    pub fn error(message: impl Into<String>) -> Self {
        Finding::new(Severity::Error, message)
    }

    /// A finding that somebody should look at.
    pub fn warning(message: impl Into<String>) -> Self {
        Finding::new(Severity::Warning, message)
    }

    /// A finding worth knowing.
    pub fn note(message: impl Into<String>) -> Self {
        Finding::new(Severity::Note, message)
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
        if let Some(field) = &self.place.field {
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
