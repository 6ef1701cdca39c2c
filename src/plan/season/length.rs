//! How long the rains last, against how long a crop grows.
//!
//! Conventions: each year of a record is asked by itself, with its own onset and its own end. In such a year the
//! first cut is planted on the day its rains begin, though not before the plan's first day; a later cut as
//! many days after as the plan leaves between them. Once this season's rains have begun, the plan's own days
//! count in every year. A crop ripens in time where the last of its roots are ripe by the day the rains end. In
//! a year without rains nothing ripens; it is no part of the share once they have begun.
//!
//! Where days are missing, a year counts that ripens the crop, or does not, under all fillings
//! ([`missing`](super::missing)): a later onset and an earlier end never help. Percentiles are those of the
//! years whose onset and end are both certain.

use chrono::NaiveDate;

use super::analysis::SeasonRule;
use super::missing::Filled;
use super::onset::{Onset, YearOnset};
use super::percentile::{percentile, weighted_percentile};
use super::record::RainRecord;

/// The rains of a year, in days after its window's opening.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Stretch {
    onset: i64,
    end: i64,
}

/// The end of rains that are not seen to end.
const NEVER: i64 = i64::MAX;

/// The shortest and the longest that the rains of a year can have been, whatever fell on missing days; nothing
/// where they never began.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct YearLength {
    shortest: Option<Stretch>,
    longest: Option<Stretch>,
}

impl YearLength {
    fn of(rule: &SeasonRule, record: &RainRecord, year: &YearOnset) -> Option<YearLength> {
        let (from, _) = rule.window.in_year(year.year)?;
        let search = rule.end_search(from)?;
        let (earliest, latest) = match year.onset {
            Onset::None => return Some(YearLength { shortest: None, longest: None }),
            Onset::On(day) => (day, Some(day)),
            Onset::Between(open) => (open.from, open.to),
        };
        let days = |day: NaiveDate| (day - from).num_days();
        let stretch = |rain: &Filled<'_>, onset: NaiveDate| Stretch {
            onset: days(onset),
            end: rule.end_of(rain, onset, search).map_or(NEVER, days),
        };
        Some(match latest.filter(|latest| rule.tells_end(year.onset, *latest, search)) {
            Some(latest) => YearLength {
                shortest: Some(stretch(&record.driest(), latest)),
                longest: Some(stretch(&record.wettest(), earliest)),
            },
            None => {
                YearLength { shortest: None, longest: Some(Stretch { onset: days(earliest), end: NEVER }) }
            }
        })
    }

    /// The rains, where no missing day can change them and they end.
    fn certain(&self) -> Option<Stretch> {
        self.shortest.filter(|stretch| self.longest == Some(*stretch) && stretch.end != NEVER)
    }
}

/// The 20, 50 and 80 % percentiles of some days.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Percentiles {
    /// In 20 % of the years it is no more.
    pub p20: f64,
    /// In half of the years.
    pub p50: f64,
    /// In 80 % of the years.
    pub p80: f64,
}

/// The length of the rains in the years of a record.
#[derive(Debug, Clone, PartialEq)]
pub struct RecordedLengths {
    /// The years, with how much each counts.
    years: Vec<(YearLength, f64)>,
    /// Days from onset to end.
    pub days: Option<Percentiles>,
    /// Days from the window's opening to the end.
    pub ends: Option<Percentiles>,
    /// Years whose onset and end are both certain.
    pub certain: u32,
    /// Years in which missing days leave one of them open.
    pub open: u32,
}

impl RecordedLengths {
    /// Of the years of a record; `weights` are those of a seasonal outlook.
    pub fn find(
        record: &RainRecord,
        rule: &SeasonRule,
        years: &[YearOnset],
        weights: Option<&[f64]>,
    ) -> RecordedLengths {
        let weight = |index: usize| weights.map_or(1.0, |weights| weights.get(index).copied().unwrap_or(0.0));
        let years: Vec<(YearLength, f64)> = years
            .iter()
            .enumerate()
            .filter_map(|(index, year)| Some((YearLength::of(rule, record, year)?, weight(index))))
            .collect();
        let certain: Vec<(Stretch, f64)> =
            years.iter().filter_map(|(year, weight)| Some((year.certain()?, *weight))).collect();
        let percentiles = |days: fn(&Stretch) -> i64| {
            let (values, shares): (Vec<f64>, Vec<f64>) =
                certain.iter().map(|(stretch, weight)| (days(stretch) as f64, *weight)).unzip();
            let at = |percent| match weights {
                Some(_) => weighted_percentile(&values, &shares, percent),
                None => percentile(&values, percent),
            };
            Some(Percentiles { p20: at(20.0)?, p50: at(50.0)?, p80: at(80.0)? })
        };
        let count = |count: usize| u32::try_from(count).unwrap_or(u32::MAX);
        let open = years.iter().filter(|(year, _)| year.shortest != year.longest).count();
        RecordedLengths {
            days: percentiles(|stretch| stretch.end - stretch.onset),
            ends: percentiles(|stretch| stretch.end),
            certain: count(certain.len()),
            open: count(open),
            years,
        }
    }

    /// How often a crop is ripe before the rains end, which is planted `later` days after the first cut and grows
    /// for so many days. The first cut is planted `planted` days after the window's opening or, where the
    /// rains have not `begun`, on their onset if that is later. `None` where no year tells.
    pub fn ripening(&self, begun: bool, planted: i64, later: i64, growing: i64) -> Option<Ripening> {
        let in_time = |stretch: Option<Stretch>| {
            stretch.is_some_and(|Stretch { onset, end }| {
                let planted = if begun { planted } else { planted.max(onset) };
                planted.saturating_add(later).saturating_add(growing) <= end
            })
        };
        let (mut judged, mut all, mut ripe) = (0, 0.0, 0.0);
        for (year, weight) in &self.years {
            let ripens = in_time(year.shortest);
            let without_rains = begun && year.longest.is_none();
            if without_rains || ripens != in_time(year.longest) {
                continue;
            }
            judged += 1;
            all += weight;
            ripe += if ripens { *weight } else { 0.0 };
        }
        (all > 0.0).then(|| Ripening { share: (ripe / all).min(1.0), years: Some(judged) })
    }
}

/// How often a crop is ripe before the rains end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ripening {
    /// The share of years; 0 or 1 where one day is known.
    pub share: f64,
    /// Years that could be judged; nothing where the case names the end.
    pub years: Option<u32>,
}
