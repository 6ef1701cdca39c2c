//! A day as messages see it: in the Gregorian and in the Ethiopian calendar.

use chrono::{Datelike, NaiveDate};
use icu_calendar::Date;
use icu_calendar::cal::Ethiopian;

/// A day of a calendar.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CalendarDay {
    /// Year.
    pub year: i32,
    /// Month, from 1.
    pub month: u8,
    /// Day of the month, from 1.
    pub day: u8,
}

/// The day in the Ethiopian calendar: twelve months of thirty days and a
/// thirteenth of five or six. Years are counted from the incarnation (ʿĀmata Məḥrat).
/// `None` for a day that is out of the calendar's reach.
pub fn ethiopic(date: NaiveDate) -> Option<CalendarDay> {
    let (month, day) = (u8::try_from(date.month()).ok()?, u8::try_from(date.day()).ok()?);
    let date = Date::try_new_iso(date.year(), month, day).ok()?.to_calendar(Ethiopian::new());
    Some(CalendarDay {
        year: date.year().era()?.year,
        month: date.month().ordinal,
        day: date.day_of_month().0,
    })
}

/// Which seven days of its month a day lies in, from 1; days after the 28th are the fifth.
pub fn week_of_month(date: NaiveDate) -> u32 {
    date.day0() / 7 + 1
}
