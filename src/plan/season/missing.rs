//! What a record tells although days are missing in it.
//!
//! On a missing day anything may have fallen: nothing, or any amount. But more rain never
//! makes the rains begin later by any rule, never makes them end earlier, and never
//! lengthens a dry spell. So of all ways to fill the missing days two bound all others: no rain on any
//! of them, and endless rain on each. What comes out the same under both is certain; where it does
//! not, the two are the exact bounds.

use chrono::NaiveDate;
use serde::Serialize;

use super::record::RainRecord;

/// A record whose missing days are filled, those before its first and after its last day among them.
#[derive(Clone, Copy)]
pub(super) struct Filled<'r> {
    record: &'r RainRecord,
    mm: f64,
}

impl Filled<'_> {
    /// Rain of a day, mm; endless on a missing day of the wettest filling.
    pub(super) fn on(&self, day: NaiveDate) -> f64 {
        self.record.on(day).unwrap_or(self.mm)
    }

    /// Rain of `count` days from `first`.
    pub(super) fn days(&self, first: NaiveDate, count: u32) -> impl Iterator<Item = f64> + '_ {
        self.record.days(first, count).map(|rain| rain.unwrap_or(self.mm))
    }
}

impl RainRecord {
    /// No rain on any missing day.
    pub(super) fn driest(&self) -> Filled<'_> {
        Filled { record: self, mm: 0.0 }
    }

    /// Endless rain on every missing day.
    pub(super) fn wettest(&self) -> Filled<'_> {
        Filled { record: self, mm: f64::INFINITY }
    }
}

/// The least and the greatest that something can be, whatever fell on the missing days.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Between<T> {
    /// The least, or the earliest.
    pub from: T,
    /// The greatest, or the latest; absent where there is no bound.
    pub to: Option<T>,
}

/// What is certain where both bounds are the same, or else the bounds. A bound that
/// is absent is beyond all others.
pub(super) fn told<T: PartialEq + Copy>(
    least: Option<T>,
    greatest: Option<T>,
) -> (Option<T>, Option<Between<T>>) {
    match least {
        Some(_) if least == greatest => (least, None),
        Some(from) => (None, Some(Between { from, to: greatest })),
        None => (None, None),
    }
}
