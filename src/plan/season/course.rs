//! The rainy seasons that a record has in its mean year, for those who do not name them.
//!
//! The mean rain of each calendar day is smoothed over a month. Whether a year has one rainy season
//! or two is told by its harmonics: two where the half-yearly wave is stronger than the
//! yearly one. One season runs from the least to the greatest sum of departures from the mean day;
//! two are the two longest-fed stretches above the mean (after Liebmann and others 2012, J. Climate 25,
//! and Dunning and others 2016, J. Geophys. Res. Atmos. 121, both from memory).

use std::f64::consts::PI;

use chrono::{Datelike, Days, NaiveDate};
use serde::Serialize;

use super::month_day::MonthDay;
use super::onset::Window;
use super::record::RainRecord;

/// A rainy season of the mean year.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct WetSeason {
    /// Mean first day.
    pub from: MonthDay,
    /// Mean last day.
    pub until: MonthDay,
    /// Mean rain in it.
    pub mm: f64,
    /// Where its onset is looked for: from some weeks before its mean first day to the middle of the season.
    pub window: Window,
}

/// Days of the mean year; 29 February counts to the 28th.
const DAYS: usize = 365;
/// Any year without a leap day will do to count days.
const COMMON_YEAR: i32 = 2001;
/// Days over which the mean year is smoothed.
const SMOOTHED: usize = 31;
/// How long before its mean first day one season's onset may come, and one of two.
const EARLIER_OF_ONE: usize = 50;
const EARLIER_OF_TWO: usize = 30;

/// The rainy seasons of the mean year in order of the calendar; none where the record leaves
/// a day of the year without a value, or it never rains.
pub fn wet_seasons(record: &RainRecord) -> Vec<WetSeason> {
    let Some(mean) = mean_year(record) else { return Vec::new() };
    let smooth = smoothed(&mean);
    let average = mean.iter().sum::<f64>() / DAYS as f64;
    if average <= 0.0 {
        return Vec::new();
    }
    let two = amplitude(&mean, 2) > amplitude(&mean, 1);
    let mut stretches =
        if two { above(&smooth, average) } else { vec![from_least_to_greatest(&mean, average)] };
    let rain = |from: usize, days: usize| (0..days).map(|day| at(&mean, from + day)).sum::<f64>();
    let surplus =
        |&(from, days): &(usize, usize)| (0..days).map(|day| at(&smooth, from + day) - average).sum::<f64>();
    stretches.sort_by(|one, other| surplus(other).total_cmp(&surplus(one)));
    stretches.truncate(2);
    let dry_before = |from: usize| {
        // Back to the end of the season before, or all year where there is no other.
        stretches
            .iter()
            .map(|&(start, days)| (from + 2 * DAYS - (start + days) % DAYS) % DAYS)
            .filter(|gap| *gap > 0)
            .min()
            .unwrap_or(0)
    };
    let mut seasons: Vec<_> = stretches
        .iter()
        .filter_map(|&(from, days)| {
            let earlier = if stretches.len() > 1 { EARLIER_OF_TWO } else { EARLIER_OF_ONE };
            let opening = from + DAYS - earlier.min(dry_before(from));
            Some(WetSeason {
                from: day_of(from)?,
                until: day_of(from + days - 1)?,
                mm: (rain(from, days) * 10.0).round() / 10.0,
                window: Window { from: day_of(opening)?, until: day_of(from + days / 2)? },
            })
        })
        .collect();
    seasons.sort_by_key(|season| season.from);
    seasons
}

/// From when on the end of the rains is looked for where nobody says: the middle of the rainy season that
/// the window's onsets belong to, however late the window closes. Where the record does not tell that
/// season, or its middle is over when the window opens, the middle of the window.
pub fn end_search_from(record: &RainRecord, window: &Window) -> MonthDay {
    let after_opening = |day: MonthDay| -> Option<usize> {
        let opening = window.from.in_year(COMMON_YEAR)?;
        let day = day.in_year(COMMON_YEAR)?;
        usize::try_from((day - opening).num_days().rem_euclid(DAYS as i64)).ok()
    };
    let middle_of_window = || {
        let (from, until) = window.in_year(COMMON_YEAR)?;
        Some(MonthDay::of(from + Days::new(u64::try_from((until - from).num_days() / 2).ok()?)))
    };
    let window_days = after_opening(window.until).unwrap_or(0);
    // Days of the window that lie in a season.
    let shared = |season: &WetSeason| {
        let (first, last) = (after_opening(season.from)?, after_opening(season.until)?);
        Some(match first <= last {
            true => (window_days + 1).saturating_sub(first).min(last - first + 1),
            // It has begun when the window opens.
            false => last.min(window_days) + 1 + (window_days + 1).saturating_sub(first),
        })
    };
    let seasons = wet_seasons(record);
    let season = seasons.iter().filter_map(|season| Some((shared(season).filter(|days| *days > 0)?, season)));
    season
        .max_by_key(|(days, _)| *days)
        .map(|(_, season)| (season.window.until, season.until))
        .filter(|(middle, last)| after_opening(*middle) <= after_opening(*last))
        .map(|(middle, _)| middle)
        .or_else(middle_of_window)
        .unwrap_or(window.until)
}

fn mean_year(record: &RainRecord) -> Option<Vec<f64>> {
    let (first, last) = record.span()?;
    let days = u32::try_from((last - first).num_days() + 1).ok()?;
    let (mut sums, mut counts) = (vec![0.0; DAYS], vec![0.0; DAYS]);
    let mut date = first;
    for rain in record.days(first, days) {
        // Days after 28 February move up by one in leap years.
        let index = date.ordinal0() as usize - usize::from(date.leap_year() && date.ordinal0() > 58);
        if let (Some(rain), Some(sum), Some(count)) = (rain, sums.get_mut(index), counts.get_mut(index)) {
            *sum += rain;
            *count += 1.0;
        }
        date = date.succ_opt()?;
    }
    sums.iter().zip(&counts).map(|(sum, count)| (*count > 0.0).then(|| sum / count)).collect()
}

/// The value of a day, counted on past the year's end.
fn at(year: &[f64], day: usize) -> f64 {
    year.get(day % DAYS).copied().unwrap_or_default()
}

fn smoothed(year: &[f64]) -> Vec<f64> {
    let mean = |day: usize| {
        let from = day + DAYS - SMOOTHED / 2;
        (0..SMOOTHED).map(|ahead| at(year, from + ahead)).sum::<f64>() / SMOOTHED as f64
    };
    (0..DAYS).map(mean).collect()
}

/// The amplitude of the wave that runs `times` a year.
fn amplitude(year: &[f64], times: u32) -> f64 {
    let turn = |day: usize| 2.0 * PI * f64::from(times) * day as f64 / DAYS as f64;
    let part = |wave: fn(f64) -> f64| -> f64 {
        year.iter().enumerate().map(|(day, rain)| rain * wave(turn(day))).sum()
    };
    part(f64::cos).hypot(part(f64::sin))
}

/// First day and length of the stretch in which the sum of departures climbs from its least to its greatest.
fn from_least_to_greatest(year: &[f64], average: f64) -> (usize, usize) {
    // The sum over two years, so that the season may run over the year's end.
    let mut sum = 0.0;
    let sums: Vec<f64> = (0..2 * DAYS)
        .map(|day| {
            sum += at(year, day) - average;
            sum
        })
        .collect();
    let least = (0..DAYS).min_by(|one, other| at(&sums, *one).total_cmp(&at(&sums, *other))).unwrap_or(0);
    let value = |day: usize| sums.get(day).copied().unwrap_or_default();
    let greatest =
        (least..least + DAYS).max_by(|one, other| value(*one).total_cmp(&value(*other))).unwrap_or(least);
    ((least + 1) % DAYS, (greatest - least).max(1))
}

/// First day and length of each stretch above the average.
fn above(year: &[f64], average: f64) -> Vec<(usize, usize)> {
    let wet = |day: usize| at(year, day) > average;
    let starts = (0..DAYS).filter(|day| wet(*day) && !wet(day + DAYS - 1));
    starts.map(|start| (start, (0..DAYS).take_while(|ahead| wet(start + ahead)).count())).collect()
}

fn day_of(day: usize) -> Option<MonthDay> {
    NaiveDate::from_yo_opt(COMMON_YEAR, u32::try_from(day % DAYS).ok()? + 1).map(MonthDay::of)
}
