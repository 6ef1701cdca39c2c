//! What waiting costs and saves: planting later in the window trades the risk
//! of a false start for a shorter season.

use chrono::{Days, NaiveDate};
use serde::Serialize;

use super::analysis::SeasonRule;
use super::month_day::MonthDay;
use super::onset::Onset;
use super::percentile::percentile;
use super::record::RainRecord;

/// Days from one row of the table to the next.
const STEP: u64 = 10;

/// One choice: plant on the first wet window from this day on, whatever comes after it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PlantingDelay {
    /// The first day on which one would plant.
    pub from: MonthDay,
    /// Years that could be judged: missing days change neither the day of planting nor whether it failed.
    pub years: usize,
    /// Years in which there was a wet window to plant on.
    pub planted_years: usize,
    /// Share of those in which the dry spell came that the rule forbids.
    pub false_start_share: Option<f64>,
    /// Median length of the season left, from planting to the end, days; of
    /// the years planted whose end the record reaches.
    pub median_days_left: Option<f64>,
}

impl SeasonRule {
    /// The choices from the opening of the window to its end, every ten days.
    pub fn planting_delays(&self, record: &RainRecord) -> Vec<PlantingDelay> {
        let years: Vec<(NaiveDate, NaiveDate)> = record
            .onsets(&self.onset, &self.window)
            .iter()
            .filter_map(|year| self.window.in_year(year.year))
            .collect();
        let length = years.iter().map(|(from, until)| (*until - *from).num_days()).max().unwrap_or(-1);
        (0..)
            .step_by(STEP as usize)
            .take_while(|wait| i64::try_from(*wait).is_ok_and(|wait| wait <= length))
            .filter_map(|wait| self.planting_delay(record, &years, wait))
            .collect()
    }

    fn planting_delay(
        &self,
        record: &RainRecord,
        years: &[(NaiveDate, NaiveDate)],
        wait: u64,
    ) -> Option<PlantingDelay> {
        let unchecked = self.onset.without_look_ahead();
        let first = years.first()?.0.checked_add_days(Days::new(wait))?;
        let mut row = PlantingDelay {
            from: MonthDay::of(first),
            years: 0,
            planted_years: 0,
            false_start_share: None,
            median_days_left: None,
        };
        let mut failed = 0;
        let mut left = Vec::new();
        for (from, until) in years {
            let day = match unchecked.onset(record, *from + Days::new(wait), *until) {
                Onset::Between(_) => continue,
                Onset::None => {
                    row.years += 1;
                    continue;
                }
                Onset::On(day) => day,
            };
            let holds = self.onset.begins_on(&record.driest(), day);
            // A year cannot be judged whose missing days may break the dry spell after it.
            if holds != self.onset.begins_on(&record.wettest(), day) {
                continue;
            }
            row.years += 1;
            row.planted_years += 1;
            failed += usize::from(!holds);
            let end = self.end_search(*from).and_then(|search| self.end_after(record, day, search));
            left.extend(end.map(|end| (end - day).num_days() as f64));
        }
        if row.planted_years > 0 {
            row.false_start_share = Some(failed as f64 / row.planted_years as f64);
        }
        row.median_days_left = percentile(&left, 50.0);
        Some(row)
    }
}
