//! The rainy seasons of a record: onset, end, length, dry spells, false starts.
//!
//! Conventions: the end is looked for from a fixed day on, and is the first
//! day of the 20 rainless ones, or the first day on which the soil store is
//! empty. The store is filled from empty on the day of the onset. A dry spell
//! is a run of days without a rain day; the longest one is looked for between
//! the day after the onset and the day before the end. A false start is a day
//! that would be the onset but for the dry spell after it; days in a row count once.
//!
//! Where days are missing, only what they cannot change is told; for the rest the bounds are ([`Between`]).

use chrono::{Days, Months, NaiveDate};
use serde::Serialize;

use super::missing::{Between, Filled, told};
use super::month_day::MonthDay;
use super::onset::{Onset, OnsetRule, Window, YearOnset};
use super::percentile::{OpenValue, percentile, percentile_bounds, weighted_percentile};
use super::record::RainRecord;
use super::trend::Slope;

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

/// One season. What missing days leave open is absent, and its bounds stand beside it where they are known.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Season {
    /// Year in which the window opened.
    pub year: i32,
    /// Whether missing days leave the onset open.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub onset_unknown: bool,
    /// First day of the rains; absent where they never began or missing days leave it open.
    pub onset: Option<NaiveDate>,
    /// Where missing days leave the onset open: its bounds. Without a last day the rains may never have begun.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub onset_between: Option<Between<NaiveDate>>,
    /// First day after them.
    pub end: Option<NaiveDate>,
    /// The end's bounds, where missing days leave it open. There is no last day where it may lie beyond the search.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub end_between: Option<Between<NaiveDate>>,
    /// Days from onset to end.
    pub length_days: Option<i64>,
    /// Their bounds, where missing days leave them open.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub length_days_between: Option<Between<i64>>,
    /// Longest dry spell between onset and end, days.
    pub longest_dry_spell_days: Option<u32>,
    /// Its bounds, where onset and end are certain and missing days leave it open.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub longest_dry_spell_days_between: Option<Between<u32>>,
    /// False starts before the onset, or in the whole window, that are certain.
    pub false_starts: Vec<NaiveDate>,
}

/// What the seasons say together. Years whose onset missing days leave open are no part of it, except in the bounds.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Outlook {
    /// Onset in the early years (20 %).
    pub p20: Option<MonthDay>,
    /// Onset in the middle year.
    pub p50: Option<MonthDay>,
    /// Onset in the late years (80 %).
    pub p80: Option<MonthDay>,
    /// Between which days each of the three lies, whatever fell on missing days; absent where no
    /// year is open, and under a seasonal outlook.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub between: Option<OutlookBounds>,
    /// Share of the judged years in which the rains never began.
    pub none_share: Option<f64>,
    /// Years whose onset could be judged.
    pub judged_years: usize,
    /// Years whose onset missing days leave open.
    pub open_years: usize,
    /// How much later the rains begin each ten years: the median slope between
    /// all pairs of years; absent for too few years with an onset.
    pub trend_days_per_decade: Option<f64>,
    /// Its 95 % interval.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub trend_between: Option<Between<f64>>,
    /// Whether the interval leaves no doubt which way it goes.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub trend_clear: Option<bool>,
}

/// Bounds of the early, middle and late onset.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct OutlookBounds {
    /// Of the onset in the early years.
    pub p20: Between<MonthDay>,
    /// Of the onset in the middle year.
    pub p50: Between<MonthDay>,
    /// Of the onset in the late years.
    pub p80: Between<MonthDay>,
}

/// How far an end is looked for, days.
const FARTHEST_END: u32 = 300;

impl SeasonRule {
    /// All seasons whose window opens within the record.
    pub fn seasons(&self, record: &RainRecord) -> Vec<Season> {
        let years = record.onsets(&self.onset, &self.window);
        years.into_iter().filter_map(|year| self.season(record, year)).collect()
    }

    fn season(&self, record: &RainRecord, YearOnset { year, onset: found }: YearOnset) -> Option<Season> {
        let (from, until) = self.window.in_year(year)?;
        let search = self.end_search(from)?;
        let (onset, onset_between, earliest) = match found {
            Onset::On(day) => (Some(day), None, Some(day)),
            Onset::None => (None, None, None),
            Onset::Between(open) => (None, Some(open), Some(open.from)),
        };
        let latest = onset.or(onset_between.and_then(|open| open.to));
        let judged = latest.is_some_and(|latest| self.tells_end(found, latest, search));
        let first_end = |rain, onset: Option<NaiveDate>| {
            let onset = onset.filter(|_| judged)?;
            Some((onset, self.end_of(&rain, onset, search)?))
        };
        // The driest filling has the latest onset, the earliest end and so the shortest season.
        let shortest = first_end(record.driest(), latest);
        let longest = first_end(record.wettest(), earliest);
        let day = |bounds: Option<(NaiveDate, NaiveDate)>| bounds.map(|(_, end)| end);
        let days =
            |bounds: Option<(NaiveDate, NaiveDate)>| bounds.map(|(onset, end)| (end - onset).num_days());
        let (end, end_between) = told(day(shortest), day(longest));
        let (length_days, length_days_between) = told(days(shortest), days(longest));
        let spell = onset.zip(end).and_then(|(onset, end)| {
            let days = u32::try_from((end - onset).num_days() - 1).ok()?;
            Some(self.dry_spell_bounds(record, onset + Days::new(1), days))
        });
        let (longest_dry_spell_days, longest_dry_spell_days_between) =
            spell.map_or((None, None), |(least, greatest)| told(Some(least), Some(greatest)));
        Some(Season {
            year,
            onset_unknown: found.is_open(),
            onset,
            onset_between,
            end,
            end_between,
            length_days,
            length_days_between,
            longest_dry_spell_days,
            longest_dry_spell_days_between,
            false_starts: self.false_starts(
                record,
                from,
                earliest.map_or(until, |onset| onset - Days::new(1)),
            ),
        })
    }

    /// Whether the end of rains that begin on `latest` at the latest can be told: not where it is looked for from
    /// the onset itself, and that is open.
    pub(super) fn tells_end(&self, onset: Onset, latest: NaiveDate, search: NaiveDate) -> bool {
        !onset.is_open() || latest < search
    }

    /// The day from which the end is looked for in the season whose window opens on `from`.
    pub(super) fn end_search(&self, from: NaiveDate) -> Option<NaiveDate> {
        self.end_from.next_after(from - Days::new(1))
    }

    /// The end of the rains that began on `onset`; `None` where the record does not reach it, or
    /// missing days leave it open.
    pub fn end_after(&self, record: &RainRecord, onset: NaiveDate, search: NaiveDate) -> Option<NaiveDate> {
        let earliest = self.end_of(&record.driest(), onset, search)?;
        self.end_of(&record.wettest(), onset, search).filter(|latest| *latest == earliest)
    }

    /// The end of the rains that began on `onset`; `None` where the search does not reach it. More rain on
    /// any day never makes it earlier.
    pub(super) fn end_of(&self, rain: &Filled<'_>, onset: NaiveDate, search: NaiveDate) -> Option<NaiveDate> {
        let search = search.max(onset + Days::new(1));
        match self.end {
            EndRule::Rainless { days } => {
                let mut dry = 0;
                for (day, mm) in search.iter_days().zip(rain.days(search, FARTHEST_END + days)) {
                    dry = if mm < self.onset.rain_day_mm() { dry + 1 } else { 0 };
                    if dry == days {
                        return Some(day - Days::new(u64::from(days - 1)));
                    }
                }
                None
            }
            EndRule::SoilStore { capacity_mm, loss_mm } => {
                let farthest = search + Days::new(u64::from(FARTHEST_END));
                let days = u32::try_from((farthest - onset).num_days() + 1).ok()?;
                let mut store = 0.0;
                for (day, mm) in onset.iter_days().zip(rain.days(onset, days)) {
                    store = (store + mm - loss_mm).clamp(0.0, capacity_mm);
                    if day >= search && store == 0.0 {
                        return Some(day);
                    }
                }
                None
            }
        }
    }

    /// The least and the greatest that the longest dry spell among `days` days from `from` can be.
    fn dry_spell_bounds(&self, record: &RainRecord, from: NaiveDate, days: u32) -> (u32, u32) {
        let longest = |rain: Filled<'_>| longest_run(rain.days(from, days), self.onset.rain_day_mm());
        (longest(record.wettest()), longest(record.driest()))
    }

    /// The days from `from` to `until`, none of which can be the onset, that are a false start whatever
    /// fell on missing days. Of a run of them the first counts; a day that may be one parts no run.
    fn false_starts(&self, record: &RainRecord, from: NaiveDate, until: NaiveDate) -> Vec<NaiveDate> {
        let unchecked = self.onset.without_look_ahead();
        let (driest, wettest) = (record.driest(), record.wettest());
        let mut starts = Vec::new();
        let mut within = false;
        for day in from.iter_days().take_while(|day| *day <= until) {
            if unchecked.begins_on(&driest, day) {
                if !within {
                    starts.push(day);
                }
                within = true;
            } else if !unchecked.begins_on(&wettest, day) {
                within = false;
            }
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
        let date = |days: f64| Some(MonthDay::of(opening?.checked_add_days(Days::new(days.round() as u64))?));
        let on = |percent: f64| {
            let days = match weights {
                Some(_) => {
                    let these = seasons.iter().enumerate().filter(|(_, season)| season.onset.is_some());
                    let weights: Vec<f64> = these.map(|(index, _)| weight(index)).collect();
                    weighted_percentile(&days, &weights, percent)?
                }
                None => percentile(&days, percent)?,
            };
            date(days)
        };
        let open = |season: &Season| {
            let onset = Onset::Between(season.onset_between?);
            YearOnset { year: season.year, onset }.open_days(&self.window)
        };
        let open: Vec<OpenValue> = seasons.iter().filter_map(open).collect();
        let between = |percent: f64| {
            let (least, greatest) = percentile_bounds(&days, &open, percent)?;
            Some(Between { from: date(least)?, to: Some(date(greatest)?) })
        };
        let bounds = || Some(OutlookBounds { p20: between(20.0)?, p50: between(50.0)?, p80: between(80.0)? });
        let trend = if onsets.len() >= Slope::LEAST_YEARS { Slope::of(&onsets) } else { None };
        let judged = weighed(|season| !season.onset_unknown);
        let begun = weighed(|season| season.onset.is_some());
        Outlook {
            p20: on(20.0),
            p50: on(50.0),
            p80: on(80.0),
            none_share: (judged > 0.0).then(|| (1.0 - begun / judged).max(0.0)),
            judged_years: seasons.iter().filter(|season| !season.onset_unknown).count(),
            open_years: open.len(),
            between: if open.is_empty() || weights.is_some() { None } else { bounds() },
            trend_days_per_decade: trend.map(|slope| slope.median * 10.0),
            trend_between: trend.map(|slope| Between { from: slope.low * 10.0, to: Some(slope.high * 10.0) }),
            trend_clear: trend.map(Slope::is_clear),
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
                Onset::Between(_) => None,
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

/// The longest run of days without a rain day among `days` days from `from`;
/// `None` where missing days leave it open.
pub fn longest_dry_spell(record: &RainRecord, from: NaiveDate, days: u32, rain_day_mm: f64) -> Option<u32> {
    let longest = longest_run(record.driest().days(from, days), rain_day_mm);
    (longest == longest_run(record.wettest().days(from, days), rain_day_mm)).then_some(longest)
}

fn longest_run(rain: impl Iterator<Item = f64>, rain_day_mm: f64) -> u32 {
    let (mut longest, mut run) = (0, 0);
    for mm in rain {
        run = if mm < rain_day_mm { run + 1 } else { 0 };
        longest = longest.max(run);
    }
    longest
}
