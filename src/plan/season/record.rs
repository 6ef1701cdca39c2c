//! Daily rainfall.

use chrono::{Days, NaiveDate};

/// Rain of consecutive days; a day may be missing.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct RainRecord {
    first: Option<NaiveDate>,
    mm: Vec<Option<f64>>,
}

impl RainRecord {
    /// The record of the given days, in any order. Of a day that occurs twice
    /// the later entry counts; a reader reports it before.
    pub fn from_days(days: impl IntoIterator<Item = (NaiveDate, f64)>) -> RainRecord {
        let mut days: Vec<_> = days.into_iter().filter(|(_, mm)| mm.is_finite() && *mm >= 0.0).collect();
        days.sort_by_key(|(date, _)| *date);
        let Some(first) = days.first().map(|(date, _)| *date) else { return RainRecord::default() };
        let mut mm = Vec::with_capacity(days.len());
        for (date, rain) in days {
            let index = usize::try_from((date - first).num_days()).unwrap_or(0);
            if index >= mm.len() {
                mm.resize(index + 1, None);
            }
            if let Some(slot) = mm.get_mut(index) {
                *slot = Some(rain);
            }
        }
        RainRecord { first: Some(first), mm }
    }

    /// First and last day.
    pub fn span(&self) -> Option<(NaiveDate, NaiveDate)> {
        let first = self.first?;
        Some((first, first.checked_add_days(Days::new(self.mm.len().checked_sub(1)? as u64))?))
    }

    /// Rain of a day in mm; `None` where it is missing.
    pub fn on(&self, day: NaiveDate) -> Option<f64> {
        let index = usize::try_from((day - self.first?).num_days()).ok()?;
        self.mm.get(index).copied().flatten()
    }

    /// Rain of `count` days from `first`; `None` for a missing day.
    pub fn days(&self, first: NaiveDate, count: u32) -> impl Iterator<Item = Option<f64>> + '_ {
        let offset = self.first.map_or(0, |opening| (first - opening).num_days());
        (0..i64::from(count)).map(move |day| {
            usize::try_from(offset + day).ok().and_then(|index| self.mm.get(index).copied().flatten())
        })
    }

    /// Rain of all days of `year`, mm, missing days left out.
    pub fn total(&self, year: i32) -> f64 {
        let Some(first) = NaiveDate::from_ymd_opt(year, 1, 1) else { return 0.0 };
        self.days(first, if first.leap_year() { 366 } else { 365 }).flatten().sum()
    }
}
