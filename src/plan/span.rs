//! Days from one to another.

use chrono::NaiveDate;

/// Days from `from` to `to`, both included.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct DateSpan {
    /// First day.
    pub from: NaiveDate,
    /// Last day; never before the first.
    pub to: NaiveDate,
}

impl DateSpan {
    /// A span; the days are put in order.
    pub fn new(a: NaiveDate, b: NaiveDate) -> DateSpan {
        DateSpan { from: a.min(b), to: a.max(b) }
    }

    /// One day.
    pub fn day(day: NaiveDate) -> DateSpan {
        DateSpan { from: day, to: day }
    }

    /// Whether it is one day.
    pub fn is_day(&self) -> bool {
        self.from == self.to
    }
}
