//! Typed values.

use chrono::NaiveDate;

use crate::plan::DateSpan;

/// A typed value of a statement.
#[derive(Debug, Clone, PartialEq)]
pub enum Value {
    /// A number with the decimals it is to be written with.
    Number(f64, u8),
    /// A day.
    Date(NaiveDate),
    /// Days from one to another, both included.
    Span(DateSpan),
    /// One of a few names that wordings tell apart, such as `ridges` and `mounds`.
    Name(&'static str),
    /// A text from the case: printed as it is, never spoken.
    Text(String),
}

/// The values a message may use, with the kind of each.
pub type Values = Vec<(&'static str, Value)>;
