//! The end of the rains in the season to come, and what ripens before it.

use chrono::{Days, NaiveDate};

use super::super::worded::coded;
use super::length::{RecordedLengths, Ripening};
use super::month_day::MonthDay;
use super::{ExpectedRains, Rains};

/// When the rains end, as a case says it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RainsEnd {
    /// On this day of the year; the first one after the onset counts.
    Usual(MonthDay),
    /// On this date.
    On(NaiveDate),
}

impl RainsEnd {
    /// The end of the rains that begin on `onset`.
    pub fn after(self, onset: NaiveDate) -> Option<NaiveDate> {
        match self {
            RainsEnd::Usual(day) => day.next_after(onset),
            RainsEnd::On(date) => Some(date),
        }
    }
}

/// How long the rains of a season to come last.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RainsLength {
    /// Days in short seasons: in 20 % of the years they last no longer.
    pub short_days: f64,
    /// Days in the middle season.
    pub usual_days: f64,
    /// Days in long seasons: in 80 % of the years they last no longer.
    pub long_days: f64,
    /// The end in the early years (20 %).
    pub early_end: NaiveDate,
    /// The end in the middle year.
    pub usual_end: NaiveDate,
    /// The end in the late years (80 %).
    pub late_end: NaiveDate,
    /// Years of a record that tell it; nothing where the case names the end.
    pub years: Option<u32>,
}

coded! {
    /// How long the rains last, in words.
    pub enum LengthReason {
        /// By the years of a record.
        Observed = "rains-length-observed" {
            /// Days in short seasons: in 20 % of the years they last no longer.
            short_days: f64,
            /// Days in the middle season.
            usual_days: f64,
            /// Days in long seasons: in 80 % of the years they last no longer.
            long_days: f64,
            /// The end in the early years.
            early_end: NaiveDate,
            /// The end in the middle year.
            usual_end: NaiveDate,
            /// The end in the late years.
            late_end: NaiveDate,
            /// Years that tell it.
            years: u32,
        },
        /// As the case says.
        Named = "rains-length-named" {
            /// Days that they last.
            days: f64,
            /// The first day after them.
            end: NaiveDate,
        },
    }
}

impl RainsLength {
    /// It in words: whole days, down.
    pub fn told(&self) -> LengthReason {
        match self.years {
            Some(years) => LengthReason::Observed {
                short_days: self.short_days.floor(),
                usual_days: self.usual_days.floor(),
                long_days: self.long_days.floor(),
                early_end: self.early_end,
                usual_end: self.usual_end,
                late_end: self.late_end,
                years,
            },
            None => LengthReason::Named { days: self.usual_days, end: self.usual_end },
        }
    }
}

/// What is known of the end of the rains in a season to come.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum End<'a> {
    /// It is on this day.
    On {
        /// The day the rains are expected.
        onset: NaiveDate,
        /// The first day after them.
        end: NaiveDate,
    },
    /// It is as in the years of a record.
    Recorded {
        /// These years.
        lengths: &'a RecordedLengths,
        /// The day the window opens in this season.
        opening: NaiveDate,
        /// Whether this season's rains have begun.
        begun: bool,
    },
}

/// When a crop is planted, and how long it grows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Planting {
    /// The first day on which the plan plants the first cut.
    pub first: NaiveDate,
    /// Days from there to the cut that is asked of.
    pub later_days: f64,
    /// Days from planting until the last roots are ripe, less those for which the soil holds water.
    pub growing_days: f64,
}

impl End<'_> {
    /// What is known of the end of the rains that are `expected`; `None` where nothing is.
    pub fn known(
        rains: &Rains,
        named: Option<RainsEnd>,
        expected: ExpectedRains,
        begun: bool,
    ) -> Option<End<'_>> {
        match rains {
            Rains::Observed(observed) => Some(End::Recorded {
                lengths: &observed.lengths,
                opening: observed.opening_before(expected.onset)?,
                begun,
            }),
            Rains::Usual(_) | Rains::On(_) => {
                let onset = expected.onset;
                Some(End::On { onset, end: named?.after(onset)? })
            }
        }
    }

    /// How often a crop is ripe before the rains end; `None` where no year tells.
    pub fn ripening(&self, planting: Planting) -> Option<Ripening> {
        let Planting { first, later_days, growing_days } = planting;
        let (later, growing) = (later_days.round() as i64, growing_days.round() as i64);
        match *self {
            End::On { end, .. } => {
                let in_time = later.saturating_add(growing) <= (end - first).num_days();
                Some(Ripening { share: f64::from(u8::from(in_time)), years: None })
            }
            End::Recorded { lengths, opening, begun } => {
                lengths.ripening(begun, (first - opening).num_days(), later, growing)
            }
        }
    }

    /// How long the rains last; `None` where no year tells.
    pub fn length(&self) -> Option<RainsLength> {
        match *self {
            End::On { onset, end } => {
                let days = (end - onset).num_days() as f64;
                Some(RainsLength {
                    short_days: days,
                    usual_days: days,
                    long_days: days,
                    early_end: end,
                    usual_end: end,
                    late_end: end,
                    years: None,
                })
            }
            End::Recorded { lengths, opening, .. } => {
                let (days, ends) = lengths.days.zip(lengths.ends)?;
                let date = |days: f64| opening.checked_add_days(Days::new(days.round() as u64));
                Some(RainsLength {
                    short_days: days.p20,
                    usual_days: days.p50,
                    long_days: days.p80,
                    early_end: date(ends.p20)?,
                    usual_end: date(ends.p50)?,
                    late_end: date(ends.p80)?,
                    years: Some(lengths.certain),
                })
            }
        }
    }
}
