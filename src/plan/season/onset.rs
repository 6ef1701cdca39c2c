//! Rules that say on which day of a record the rains began.
//!
//! Conventions: the onset is the **first** day of the wet window and itself a
//! rain day; the look-ahead begins on the day after the onset; a dry spell
//! that runs past the end of the look-ahead counts with the days it has
//! inside it.

use std::str::FromStr;

use chrono::{Datelike, Days, NaiveDate};
use serde::Serialize;

use super::super::worded::coded;
use super::missing::{self, Between, Filled};
use super::month_day::MonthDay;
use super::percentile::OpenValue;
use super::record::RainRecord;

/// The part of the year in which an onset is looked for, both days included.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Window {
    /// First possible onset.
    pub from: MonthDay,
    /// Last possible onset; where it lies before `from`, in the next year.
    pub until: MonthDay,
}

impl Window {
    /// The window that opens in `year`.
    pub fn in_year(&self, year: i32) -> Option<(NaiveDate, NaiveDate)> {
        let from = self.from.in_year(year)?;
        let until = self.until.in_year(if self.until < self.from { year + 1 } else { year })?;
        Some((from, until))
    }
}

/// When the rains have begun.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum OnsetRule {
    /// A total within some days, rain on enough of them, and no long dry spell soon after.
    Total {
        /// Name of the rule.
        name: &'static str,
        /// Least total of the wet window, mm.
        total_mm: f64,
        /// Length of the wet window, days.
        days: u32,
        /// Least number of rain days in the wet window.
        rain_days: u32,
        /// Days after the onset that are looked at; 0 for none.
        look_ahead: u32,
        /// Longest dry spell allowed in them, days.
        dry_spell: u32,
        /// Least rain of a rain day, mm.
        rain_day_mm: f64,
    },
    /// A wet dekad followed by two that are not dry.
    Dekad {
        /// Least total of the dekad, mm.
        total_mm: f64,
        /// Least total of the next two dekads together, mm.
        next_two_mm: f64,
    },
}

impl OnsetRule {
    /// All rules by name.
    pub const ALL: [OnsetRule; 5] = [
        OnsetRule::THREE_DAY,
        OnsetRule::FIRST_TOTAL,
        OnsetRule::THREE_DAY_21,
        OnsetRule::FIVE_DAY,
        OnsetRule::DEKAD,
    ];

    /// The rule's name in cases and on the command line.
    pub fn name(&self) -> &'static str {
        match self {
            OnsetRule::Total { name, .. } => name,
            OnsetRule::Dekad { .. } => "dekad",
        }
    }

    /// What it asks for.
    pub fn asks(&self) -> OnsetAsks {
        match *self {
            OnsetRule::Total { total_mm, days, rain_days, look_ahead, dry_spell, .. } => {
                OnsetAsks::Total { total_mm, days, rain_days, look_ahead, dry_spell }
            }
            OnsetRule::Dekad { total_mm, next_two_mm } => OnsetAsks::Dekad { total_mm, next_two_mm },
        }
    }

    /// The first day in `from..=until` on which the rains have begun, as far as missing days let it be told.
    pub fn onset(&self, record: &RainRecord, from: NaiveDate, until: NaiveDate) -> Onset {
        let first_day = |rain| self.first_day(&rain, from, until);
        Onset::told(first_day(record.wettest()), first_day(record.driest()))
    }

    /// The first day in `from..=until` on which the rains have begun.
    pub(super) fn first_day(
        &self,
        rain: &Filled<'_>,
        from: NaiveDate,
        until: NaiveDate,
    ) -> Option<NaiveDate> {
        from.iter_days().take_while(|day| *day <= until).find(|day| self.begins_on(rain, *day))
    }

    /// Least rain of a rain day, mm.
    pub fn rain_day_mm(&self) -> f64 {
        match self {
            OnsetRule::Total { rain_day_mm, .. } => *rain_day_mm,
            OnsetRule::Dekad { .. } => OnsetRule::RAIN_DAY_MM,
        }
    }

    /// The rule without a look at the days after the wet window: what a false start fulfils.
    #[must_use]
    pub fn without_look_ahead(self) -> OnsetRule {
        match self {
            OnsetRule::Total { name, total_mm, days, rain_days, dry_spell, rain_day_mm, .. } => {
                OnsetRule::Total { name, total_mm, days, rain_days, look_ahead: 0, dry_spell, rain_day_mm }
            }
            OnsetRule::Dekad { total_mm, .. } => OnsetRule::Dekad { total_mm, next_two_mm: 0.0 },
        }
    }

    /// Whether the rains begin on `day`. More rain on any day never undoes that.
    pub(super) fn begins_on(&self, rain: &Filled<'_>, day: NaiveDate) -> bool {
        match *self {
            OnsetRule::Total { total_mm, days, rain_days, look_ahead, dry_spell, rain_day_mm, .. } => {
                if rain.on(day) < rain_day_mm {
                    return false;
                }
                let mut total = 0.0;
                let mut wet = 0;
                for mm in rain.days(day, days) {
                    total += mm;
                    wet += u32::from(mm >= rain_day_mm);
                }
                if total < total_mm || wet < rain_days {
                    return false;
                }
                let mut dry = 0;
                rain.days(day + Days::new(1), look_ahead).all(|mm| {
                    dry = if mm < rain_day_mm { dry + 1 } else { 0 };
                    dry <= dry_spell
                })
            }
            OnsetRule::Dekad { total_mm, next_two_mm } => {
                let begins = || {
                    let (total, second) = dekad_total(rain, day)?;
                    if total < total_mm {
                        return None;
                    }
                    let (next, third) = dekad_total(rain, second)?;
                    let (after, _) = dekad_total(rain, third)?;
                    (next + after >= next_two_mm).then_some(())
                };
                matches!(day.day(), 1 | 11 | 21) && begins().is_some()
            }
        }
    }
}

/// Rain of the dekad that opens on `first`, and the day the next one opens; `None` at the end of all calendars.
fn dekad_total(rain: &Filled<'_>, first: NaiveDate) -> Option<(f64, NaiveDate)> {
    let next = match first.day() {
        1 => first.with_day(11)?,
        11 => first.with_day(21)?,
        _ => first.with_day(1)?.checked_add_months(chrono::Months::new(1))?,
    };
    let length = u32::try_from((next - first).num_days()).ok()?;
    Some((rain.days(first, length).sum(), next))
}

coded! {
    /// What an onset rule asks for.
    pub enum OnsetAsks {
        /// A total within some days, and no long dry spell soon after.
        Total = "onset-total" {
            /// Least rain of the wet days, millimetres.
            total_mm: f64,
            /// Days in which it falls.
            days: u32,
            /// Days of these with rain, at least.
            rain_days: u32,
            /// Days after the onset that are looked at; 0 where none are.
            look_ahead: u32,
            /// The longest dry spell allowed in them, days.
            dry_spell: u32,
        },
        /// A wet dekad, followed by two that are not dry.
        Dekad = "onset-dekad" {
            /// Least rain of the dekad, millimetres.
            total_mm: f64,
            /// Least rain of the next two dekads together, millimetres.
            next_two_mm: f64,
        },
    }
}

impl FromStr for OnsetRule {
    type Err = ();

    fn from_str(name: &str) -> Result<OnsetRule, ()> {
        OnsetRule::ALL.into_iter().find(|rule| rule.name() == name).ok_or(())
    }
}

/// The outcome of one year.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Onset {
    /// The rains began on this day, whatever fell on missing days.
    On(NaiveDate),
    /// The rule was never met in the window, whatever fell on missing days.
    None,
    /// Missing days leave it open: between these days. Without a last day they may never have begun.
    Between(Between<NaiveDate>),
}

impl Onset {
    /// What the earliest possible and the latest possible onset tell.
    pub(super) fn told(earliest: Option<NaiveDate>, latest: Option<NaiveDate>) -> Onset {
        match missing::told(earliest, latest) {
            (Some(day), _) => Onset::On(day),
            (None, Some(open)) => Onset::Between(open),
            (None, None) => Onset::None,
        }
    }

    /// Whether missing days leave it open.
    pub fn is_open(self) -> bool {
        matches!(self, Onset::Between(_))
    }
}

/// The outcome of the season whose window opened in `year`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct YearOnset {
    /// Year in which the window opened.
    pub year: i32,
    /// Its outcome.
    pub onset: Onset,
}

impl YearOnset {
    /// Days from the window's opening to the onset.
    pub fn days_after_opening(&self, window: &Window) -> Option<f64> {
        let Onset::On(date) = self.onset else { return None };
        self.after_opening(window, date)
    }

    /// Days from the window's opening to the onset, where missing days leave it open.
    pub(super) fn open_days(&self, window: &Window) -> Option<OpenValue> {
        let Onset::Between(open) = self.onset else { return None };
        let last = open.to.or_else(|| Some(window.in_year(self.year)?.1))?;
        Some(OpenValue {
            least: self.after_opening(window, open.from)?,
            greatest: self.after_opening(window, last)?,
            perhaps_none: open.to.is_none(),
        })
    }

    fn after_opening(&self, window: &Window, date: NaiveDate) -> Option<f64> {
        Some((date - window.in_year(self.year)?.0).num_days() as f64)
    }
}

impl RainRecord {
    /// The onset of every year of the record, years without one among them.
    pub fn onsets(&self, rule: &OnsetRule, window: &Window) -> Vec<YearOnset> {
        let Some((first, last)) = self.span() else { return Vec::new() };
        (first.year() - 1..=last.year())
            .filter_map(|year| {
                let (from, until) = window.in_year(year)?;
                (from >= first && from <= last)
                    .then(|| YearOnset { year, onset: rule.onset(self, from, until) })
            })
            .collect()
    }
}
