//! The words of drawings.

use chrono::NaiveDate;
use serde::Serialize;

use crate::guidance::Variable;
use crate::language::{Filled, Label, Pack, WordingError};

/// The words of a pack for a plan.
pub(super) struct Words<'a> {
    pub(super) pack: &'a Pack,
    pub(super) filled: Filled<'a>,
}

impl Words<'_> {
    pub(super) fn label(&self, label: Label) -> Result<String, WordingError> {
        self.filled.label(label)
    }

    pub(super) fn centimetres(&self, value: f64) -> Result<String, WordingError> {
        self.pack.label(Label::SizeCm, &[Variable::Cm.number(value)])
    }

    pub(super) fn metres(&self, centimetres: f64) -> Result<String, WordingError> {
        self.pack.label(Label::SizeM, &[Variable::M.number(centimetres / 100.0)])
    }

    pub(super) fn count(&self, count: usize) -> String {
        self.pack.write_number(count as f64, 0)
    }

    pub(super) fn day(&self, day: NaiveDate) -> Result<String, WordingError> {
        self.pack.write_day(day, "BRIEF")
    }
}

/// Words of a drawing with their place.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Caption {
    /// How far they are from the left.
    pub x: f64,
    /// How far the line they stand on is from the top.
    pub y: f64,
    /// What of them is at `x`, as in SVG: `start` or `middle`.
    pub anchor: &'static str,
    /// The words.
    pub text: String,
}
