//! The rainy seasons of a record: onset, end, length, dry spells, false starts.
//!
//! Conventions: the end is looked for from a fixed day on, and is the first
//! day of the 20 rainless ones, or the first day on which the soil store is
//! empty. The store is filled from empty on the day of the onset. A dry spell
//! is a run of days without a rain day; the longest one is looked for between
//! the day after the onset and the day before the end. A false start is a day
//! that would be the onset but for the dry spell after it; days in a row count once.

use chrono::{Days, Months, NaiveDate};
use serde::Serialize;

use super::month_day::MonthDay;
use super::onset::percentile;
use super::onset::{Onset, OnsetRule, Window, YearOnset};
use super::record::RainRecord;

/// When the rains have ended.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum EndRule {
    /// The first of so many rainless days.
    Rainless {
        /// How many.
        days: u32,
    },
    /// The first day on which a soil store is empty that loses the same each day.
    SoilStore {
        /// What the store holds at most, mm.
        capacity_mm: f64,
        /// What it loses a day, mm.
        loss_mm: f64,
    },
}

impl EndRule {
    /// The rule's name on the command line.
    pub fn name(&self) -> &'static str {
        match self {
            EndRule::Rainless { .. } => "rainless",
            EndRule::SoilStore { .. } => "soil-store",
        }
    }
}

/// How the seasons of a record are told.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SeasonRule {
    /// When the rains have begun.
    pub onset: OnsetRule,
    /// Where the onset is looked for.
    pub window: Window,
    /// When they have ended.
    pub end: EndRule,
    /// From when on the end is looked for; where it lies before the window's
    /// opening, in the year after.
    pub end_from: MonthDay,
}

/// One season. What missing days leave unknown is absent.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Season {
    /// Year in which the window opened.
    pub year: i32,
    /// Whether days are missing that the onset rule needs.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub onset_unknown: bool,
    /// First day of the rains; absent where they never began or are unknown.
    pub onset: Option<NaiveDate>,
    /// First day after them.
    pub end: Option<NaiveDate>,
    /// Days from onset to end.
    pub length_days: Option<i64>,
    /// Longest dry spell between the two, days.
    pub longest_dry_spell_days: Option<u32>,
    /// False starts before the onset, or in the whole window.
    pub false_starts: Vec<NaiveDate>,
}

/// What the seasons say together.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Outlook {
    /// Onset in the early years (20 %).
    pub p20: Option<MonthDay>,
    /// Onset in the middle year.
    pub p50: Option<MonthDay>,
    /// Onset in the late years (80 %).
    pub p80: Option<MonthDay>,
    /// Share of the judged years in which the rains never began.
    pub none_share: Option<f64>,
    /// Years whose onset could be judged.
    pub judged_years: usize,
    /// How much later the rains begin each ten years: the median slope between
    /// all pairs of years (Theil and Sen); absent for fewer than five onsets.
    pub trend_days_per_decade: Option<f64>,
}

/// Fewer onsets make no trend.
const FEWEST_FOR_TREND: usize = 5;
/// How far an end is looked for, days.
const FARTHEST_END: u32 = 300;

impl SeasonRule {
    /// All seasons whose window opens within the record.
    pub fn seasons(&self, record: &RainRecord) -> Vec<Season> {
        let years = record.onsets(&self.onset, &self.window);
        years.into_iter().filter_map(|year| self.season(record, year.year, year.onset)).collect()
    }

    fn season(&self, record: &RainRecord, year: i32, found: Onset) -> Option<Season> {
        let (from, until) = self.window.in_year(year)?;
        let onset = match found {
            Onset::On(day) => Some(day),
            Onset::None | Onset::Unknown => None,
        };
        let end = onset.and_then(|onset| self.end_after(record, onset, self.end_search(from)?));
        let rain_day_mm = self.onset.rain_day_mm();
        Some(Season {
            year,
            onset_unknown: found == Onset::Unknown,
            onset,
            end,
            length_days: onset.zip(end).map(|(onset, end)| (end - onset).num_days()),
            longest_dry_spell_days: onset.zip(end).and_then(|(onset, end)| {
                let days = u32::try_from((end - onset).num_days() - 1).ok()?;
                longest_dry_spell(record, onset + Days::new(1), days, rain_day_mm)
            }),
            false_starts: self.false_starts(record, from, onset.map_or(until, |onset| onset - Days::new(1))),
        })
    }

    /// The day from which the end is looked for in the season whose window opens on `from`.
    pub(super) fn end_search(&self, from: NaiveDate) -> Option<NaiveDate> {
        self.end_from.next_after(from - Days::new(1))
    }

    /// The end of the rains that began on `onset`; `None` where the record does not reach it.
    pub fn end_after(&self, record: &RainRecord, onset: NaiveDate, search: NaiveDate) -> Option<NaiveDate> {
        let search = search.max(onset + Days::new(1));
        match self.end {
            EndRule::Rainless { days } => {
                let mut dry = 0;
                for ahead in 0..FARTHEST_END + days {
                    let day = search + Days::new(u64::from(ahead));
                    dry = if record.on(day)? < self.onset.rain_day_mm() { dry + 1 } else { 0 };
                    if dry == days {
                        return Some(day - Days::new(u64::from(days - 1)));
                    }
                }
                None
            }
            EndRule::SoilStore { capacity_mm, loss_mm } => {
                let mut store = 0.0;
                let farthest = search + Days::new(u64::from(FARTHEST_END));
                let mut day = onset;
                while day <= farthest {
                    store = (store + record.on(day)? - loss_mm).clamp(0.0, capacity_mm);
                    if day >= search && store == 0.0 {
                        return Some(day);
                    }
                    day = day + Days::new(1);
                }
                None
            }
        }
    }

    fn false_starts(&self, record: &RainRecord, from: NaiveDate, until: NaiveDate) -> Vec<NaiveDate> {
        let unchecked = self.onset.without_look_ahead();
        let mut starts = Vec::new();
        let mut before = false;
        let mut day = from;
        while day <= until {
            let here = unchecked.begins_on(record, day) == Some(true);
            if here && !before {
                starts.push(day);
            }
            before = here;
            day = day + Days::new(1);
        }
        starts
    }

    /// What the seasons say together; `weights` are those of a seasonal outlook.
    pub fn outlook(&self, seasons: &[Season], weights: Option<&[f64]>) -> Outlook {
        let offset = |season: &Season| {
            let opening = self.window.in_year(season.year)?.0;
            Some((f64::from(season.year), (season.onset? - opening).num_days() as f64))
        };
        let onsets: Vec<(f64, f64)> = seasons.iter().filter_map(offset).collect();
        let days: Vec<f64> = onsets.iter().map(|(_, days)| *days).collect();
        let weight = |index: usize| weights.map_or(1.0, |weights| weights.get(index).copied().unwrap_or(0.0));
        let weighed = |counts: fn(&Season) -> bool| {
            let these = seasons.iter().enumerate().filter(|(_, season)| counts(season));
            these.map(|(index, _)| weight(index)).fold(0.0, |sum, weight| sum + weight)
        };
        // Any year without a leap day will do to turn days back into a date.
        let opening = self.window.in_year(2001).map(|(from, _)| from);
        let on = |percent: f64| {
            let days = match weights {
                Some(_) => {
                    let these = seasons.iter().enumerate().filter(|(_, season)| season.onset.is_some());
                    let weights: Vec<f64> = these.map(|(index, _)| weight(index)).collect();
                    weighted_percentile(&days, &weights, percent)?
                }
                None => percentile(&days, percent)?.round(),
            };
            Some(MonthDay::of(opening?.checked_add_days(Days::new(days as u64))?))
        };
        let judged = weighed(|season| !season.onset_unknown);
        let begun = weighed(|season| season.onset.is_some());
        Outlook {
            p20: on(20.0),
            p50: on(50.0),
            p80: on(80.0),
            none_share: (judged > 0.0).then(|| (1.0 - begun / judged).max(0.0)),
            judged_years: seasons.iter().filter(|season| !season.onset_unknown).count(),
            trend_days_per_decade: (onsets.len() >= FEWEST_FOR_TREND)
                .then(|| median_slope(&onsets))
                .flatten()
                .map(|slope| slope * 10.0),
        }
    }

    /// How much each year counts under the chances of a seasonal outlook: each third of
    /// the years, ranked as the outlook does, shares its chance. A year that cannot be ranked counts nothing.
    pub fn weights(&self, record: &RainRecord, years: &[YearOnset], outlook: Chances) -> Vec<f64> {
        let rank = |year: &YearOnset| match outlook {
            Chances::OfOnset(_) => match year.onset {
                Onset::On(_) => year.days_after_opening(&self.window),
                // Rains that never begin are later than the latest.
                Onset::None => Some(f64::INFINITY),
                Onset::Unknown => None,
            },
            Chances::OfTotal(_) => {
                let (from, _) = self.window.in_year(year.year)?;
                let until = from.checked_add_months(Months::new(OUTLOOK_MONTHS))?;
                record.days(from, u32::try_from((until - from).num_days()).ok()?).sum()
            }
        };
        let (Chances::OfOnset(chances) | Chances::OfTotal(chances)) = outlook;
        let ranks: Vec<Option<f64>> = years.iter().map(rank).collect();
        let known: Vec<f64> = ranks.iter().flatten().copied().collect();
        let mut weights = weights_of_thirds(&known, chances).into_iter();
        ranks.iter().map(|rank| rank.and_then(|_| weights.next()).unwrap_or(0.0)).collect()
    }
}

/// What a seasonal outlook says: the chances, in any unit, of the lower, middle and upper third.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Chances {
    /// Of an early, a usual and a late onset.
    OfOnset([f64; 3]),
    /// Of little, usual and much rain in the three months from the window's opening.
    OfTotal([f64; 3]),
}

/// The months whose total an outlook is about.
const OUTLOOK_MONTHS: u32 = 3;

/// How much each value counts where the lower, middle and upper third of them share the given
/// chances. Of a number of values that thirds do not divide, the middle third is the one that differs.
pub fn weights_of_thirds(values: &[f64], [low, usual, high]: [f64; 3]) -> Vec<f64> {
    let count = values.len();
    let outer = ((count as f64) / 3.0).round() as usize;
    let middle = count.saturating_sub(2 * outer);
    let mut order: Vec<(usize, f64)> = values.iter().copied().enumerate().collect();
    order.sort_by(|(_, one), (_, other)| one.total_cmp(other));
    let mut weights = vec![0.0; count];
    for (rank, (index, _)) in order.into_iter().enumerate() {
        if let Some(weight) = weights.get_mut(index) {
            // A third without a value cannot take its chance: it falls to the others.
            *weight = match rank {
                rank if rank < outer => low / outer as f64,
                rank if rank < outer + middle => usual / middle as f64,
                _ => high / outer as f64,
            };
        }
    }
    weights
}

/// The least of the values below or at which lie `percent` of all weight
/// (numpy's method "inverted_cdf" with weights).
pub fn weighted_percentile(values: &[f64], weights: &[f64], percent: f64) -> Option<f64> {
    let mut sorted: Vec<(f64, f64)> = values.iter().copied().zip(weights.iter().copied()).collect();
    sorted.sort_by(|(one, _), (other, _)| one.total_cmp(other));
    let all: f64 = sorted.iter().map(|(_, weight)| weight).sum();
    let mut below = 0.0;
    for (value, weight) in &sorted {
        below += weight;
        if below >= percent / 100.0 * all - 1e-12 {
            return Some(*value);
        }
    }
    sorted.last().map(|(value, _)| *value)
}

/// The longest run of days without a rain day among `days` days from `from`;
/// `None` where a day is missing.
pub fn longest_dry_spell(record: &RainRecord, from: NaiveDate, days: u32, rain_day_mm: f64) -> Option<u32> {
    let (mut longest, mut run) = (0, 0);
    for rain in record.days(from, days) {
        run = if rain? < rain_day_mm { run + 1 } else { 0 };
        longest = longest.max(run);
    }
    Some(longest)
}

/// The median of the slopes between all pairs of points (Theil and Sen).
pub fn median_slope(points: &[(f64, f64)]) -> Option<f64> {
    let mut slopes = Vec::new();
    for (index, (x, y)) in points.iter().enumerate() {
        let later = points.iter().skip(index + 1).filter(|(other, _)| other != x);
        slopes.extend(later.map(|(other_x, other_y)| (other_y - y) / (other_x - x)));
    }
    percentile(&slopes, 50.0)
}
