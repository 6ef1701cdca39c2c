//! Days of the year.

use std::fmt;
use std::str::FromStr;

use chrono::{Datelike, NaiveDate};
use serde::{Serialize, Serializer};

/// A day of the year, as in "about the 15th of October".
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct MonthDay {
    month: u32,
    day: u32,
}

impl MonthDay {
    /// The day, or `None` where no year has it. 29 February counts: in other
    /// years it stands for 28 February.
    pub fn new(month: u32, day: u32) -> Option<MonthDay> {
        NaiveDate::from_ymd_opt(2024, month, day).map(|_| MonthDay { month, day })
    }

    /// The day of the year of `date`.
    pub fn of(date: NaiveDate) -> MonthDay {
        MonthDay { month: date.month(), day: date.day() }
    }

    /// This day in `year`.
    pub fn in_year(self, year: i32) -> Option<NaiveDate> {
        NaiveDate::from_ymd_opt(year, self.month, self.day)
            .or_else(|| NaiveDate::from_ymd_opt(year, self.month, self.day.saturating_sub(1)))
    }

    /// The such day nearest to `date`.
    pub fn nearest(self, date: NaiveDate) -> Option<NaiveDate> {
        let days = (-1..=1).filter_map(|ahead| self.in_year(date.year() + ahead));
        days.min_by_key(|day| (*day - date).num_days().abs())
    }

    /// The last such day before `date`.
    pub fn last_before(self, date: NaiveDate) -> Option<NaiveDate> {
        (-1..=0).rev().filter_map(|ahead| self.in_year(date.year() + ahead)).find(|day| *day < date)
    }

    /// The first such day after `date`.
    pub fn next_after(self, date: NaiveDate) -> Option<NaiveDate> {
        (0..=1).filter_map(|ahead| self.in_year(date.year() + ahead)).find(|day| *day > date)
    }
}

impl FromStr for MonthDay {
    type Err = ();

    fn from_str(text: &str) -> Result<MonthDay, ()> {
        let (month, day) = text.split_once('-').ok_or(())?;
        let number = |part: &str| {
            let fits = (1..=2).contains(&part.len()) && part.bytes().all(|byte| byte.is_ascii_digit());
            if fits { part.parse().map_err(|_| ()) } else { Err(()) }
        };
        MonthDay::new(number(month)?, number(day)?).ok_or(())
    }
}

impl Serialize for MonthDay {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl fmt::Display for MonthDay {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:02}-{:02}", self.month, self.day)
    }
}
