//! When the rains begin: from a stated day, or from a daily rainfall record.

mod analysis;
mod course;
mod month_day;
mod onset;
mod planting_delay;
mod record;
mod rules;

pub use analysis::{
    Chances, EndRule, Outlook, Season, SeasonRule, longest_dry_spell, median_slope, weighted_percentile,
    weights_of_thirds,
};
pub use course::{WetSeason, wet_seasons};
pub use month_day::MonthDay;
pub use onset::{Onset, OnsetAsks, OnsetRule, Window, YearOnset, percentile};
pub use planting_delay::PlantingDelay;
pub use record::RainRecord;

use chrono::{Datelike, Days, NaiveDate};

use super::remarks::{Remark, Years};
use super::worded::coded;

/// Which part of the years' onsets a plan is timed by.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Risk {
    /// The early onset (20 % of the years by default): the bed is ready in most years.
    Early,
    /// The middle onset (half of the years).
    Middle,
    /// The late onset (80 % of the years by default).
    Late,
    /// A percentile of one's own, 1 to 99.
    Percentile(f64),
}

/// What is known of the rains at a place.
#[derive(Debug, Clone, PartialEq)]
pub enum Rains {
    /// The rains usually begin on this day of the year; the first one after the harvest counts.
    Usual(MonthDay),
    /// They are expected on this date.
    On(NaiveDate),
    /// Onsets found in a rainfall record.
    Observed(ObservedRains),
}

/// Onsets found in a rainfall record, and how they were found.
#[derive(Debug, Clone, PartialEq)]
pub struct ObservedRains {
    /// One entry a year of the record, years without onset among them.
    pub years: Vec<YearOnset>,
    /// How much each of these years counts, where a seasonal outlook weighs them.
    pub weights: Option<Vec<f64>>,
    /// The rules and the search window.
    pub rule: SeasonRule,
    /// What waiting with the planting costs and saves.
    pub planting_delays: Vec<PlantingDelay>,
}

/// The expected rains of the season to come.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ExpectedRains {
    /// The day the plan is timed by.
    pub onset: NaiveDate,
    /// The day by which the rains have begun in most years; `onset` where only one day is known.
    pub late: NaiveDate,
}

impl ObservedRains {
    /// Finds the onsets of a record. `outlook` are the chances of a seasonal outlook.
    pub fn find(record: &RainRecord, rule: SeasonRule, outlook: Option<Chances>) -> ObservedRains {
        let years = record.onsets(&rule.onset, &rule.window);
        let weights = outlook.map(|chances| rule.weights(record, &years, chances));
        ObservedRains { years, weights, rule, planting_delays: rule.planting_delays(record) }
    }

    /// Days after the window's opening at which `percent` of the years that had an onset have had it.
    pub fn onset_percentile(&self, percent: f64) -> Option<f64> {
        let days = |year: &YearOnset| year.days_after_opening(&self.rule.window);
        match &self.weights {
            None => percentile(&self.years.iter().filter_map(days).collect::<Vec<_>>(), percent),
            Some(weights) => {
                let weighted = self.years.iter().zip(weights);
                let (days, weights): (Vec<f64>, Vec<f64>) =
                    weighted.filter_map(|(year, weight)| Some((days(year)?, *weight))).unzip();
                weighted_percentile(&days, &weights, percent)
            }
        }
    }

    /// Days from `harvest` to the middle onset after it; the most there can be where none is known.
    pub fn days_to_onset(&self, harvest: NaiveDate) -> i64 {
        self.expected(harvest, (50.0, 50.0)).map_or(i64::MAX, |rains| (rains.onset - harvest).num_days())
    }

    /// Years whose season could be judged.
    pub fn judged(&self) -> usize {
        self.years.iter().filter(|year| year.onset != Onset::Unknown).count()
    }

    /// Share of the judged years without an onset.
    pub fn none_share(&self) -> Option<f64> {
        let none = self.years.iter().filter(|year| year.onset == Onset::None).count();
        (self.judged() > 0).then(|| none as f64 / self.judged() as f64)
    }

    /// The opening of the first window that comes wholly after `harvest`,
    /// with the window's days at the early, chosen and late percentile.
    fn expected(&self, harvest: NaiveDate, percents: (f64, f64)) -> Option<ExpectedRains> {
        let chosen = self.onset_percentile(percents.0)?;
        let late = self.onset_percentile(percents.1)?.max(chosen);
        let after = |opening: NaiveDate, days: f64| opening.checked_add_days(Days::new(days.round() as u64));
        (-1..=1)
            .filter_map(|ahead| self.rule.window.from.in_year(harvest.year() + ahead))
            .filter_map(|opening| {
                Some(ExpectedRains { onset: after(opening, chosen)?, late: after(opening, late)? })
            })
            .find(|rains| rains.onset > harvest)
    }
}

/// The percentile a risk stands for.
pub fn risk_percent(risk: Risk, assumptions: &super::Assumptions) -> f64 {
    match risk {
        Risk::Early => assumptions.onset_early_percent,
        Risk::Middle => assumptions.onset_middle_percent,
        Risk::Late => assumptions.onset_late_percent,
        Risk::Percentile(percent) => percent,
    }
}

/// The rains that follow `harvest`; `None` where the record knows none.
pub fn expect(
    rains: &Rains,
    risk: Risk,
    harvest: NaiveDate,
    assumptions: &super::Assumptions,
) -> Option<ExpectedRains> {
    let one = |onset| ExpectedRains { onset, late: onset };
    match rains {
        Rains::Usual(day) => day.next_after(harvest).map(one),
        Rains::On(date) => Some(one(*date)),
        Rains::Observed(observed) => {
            observed.expected(harvest, (risk_percent(risk, assumptions), assumptions.onset_late_percent))
        }
    }
}

coded! {
    /// Why the rains are expected when they are.
    pub enum RainsReason {
        /// They have begun.
        Begun = "why-rains-begun" {
            /// The day they were expected.
            expected: NaiveDate,
        },
        /// The day of the year on which they usually begin.
        Usual = "why-rains-usual" {
            /// That day in this season.
            day: NaiveDate,
        },
        /// The date named in the case.
        Named = "why-rains-named",
        /// What a rainfall record says.
        Observed = "why-rains-observed" {
            /// Years of 100 in which the rains had begun by then.
            percent: f64,
            /// Years with an onset.
            years: u32,
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
            /// The first day on which the rains may begin.
            from: NaiveDate,
            /// The last day on which they may begin.
            until: NaiveDate,
            /// Whether a seasonal outlook weighs the years, yes or no: chooses words.
            outlook: &'static str,
        },
        /// What a rainfall record says, dekad by dekad.
        ObservedDekads = "why-rains-observed-dekads" {
            /// Years of 100 in which the rains had begun by then.
            percent: f64,
            /// Years with an onset.
            years: u32,
            /// Least rain of the dekad, millimetres.
            total_mm: f64,
            /// Least rain of the next two dekads together, millimetres.
            next_two_mm: f64,
            /// The first day on which the rains may begin.
            from: NaiveDate,
            /// The last day on which they may begin.
            until: NaiveDate,
            /// Whether a seasonal outlook weighs the years, yes or no: chooses words.
            outlook: &'static str,
        },
    }
}

/// Why the rains are expected when they are.
pub fn reason(
    rains: &Rains,
    expected: ExpectedRains,
    risk: Risk,
    assumptions: &super::Assumptions,
) -> RainsReason {
    let observed = match rains {
        Rains::Usual(_) => return RainsReason::Usual { day: expected.onset },
        Rains::On(_) => return RainsReason::Named,
        Rains::Observed(observed) => observed,
    };
    let percent = risk_percent(risk, assumptions);
    let with_onset = observed.years.iter().filter(|year| matches!(year.onset, Onset::On(_))).count();
    let years = u32::try_from(with_onset).unwrap_or(u32::MAX);
    let window = observed.rule.window;
    // The window that the onset lies in opened in the same year, or in the one before.
    let year = expected.onset.year();
    let opened = [year, year - 1].into_iter().filter_map(|year| window.in_year(year));
    let (from, until) = opened
        .into_iter()
        .find(|(from, _)| *from <= expected.onset)
        .unwrap_or((expected.onset, expected.late));
    let outlook = if observed.weights.is_some() { "yes" } else { "no" };
    match observed.rule.onset.asks() {
        OnsetAsks::Total { total_mm, days, rain_days, look_ahead, dry_spell } => RainsReason::Observed {
            percent,
            years,
            total_mm,
            days,
            rain_days,
            look_ahead,
            dry_spell,
            from,
            until,
            outlook,
        },
        OnsetAsks::Dekad { total_mm, next_two_mm } => {
            RainsReason::ObservedDekads { percent, years, total_mm, next_two_mm, from, until, outlook }
        }
    }
}

/// What must be noticed of the years of a record.
pub(super) fn remarks(rains: &Rains) -> Vec<Remark> {
    let Rains::Observed(observed) = rains else { return Vec::new() };
    let of = |wanted: Onset| -> Vec<i32> {
        observed.years.iter().filter(|year| year.onset == wanted).map(|year| year.year).collect()
    };
    let count = |years: &[i32]| u32::try_from(years.len()).unwrap_or(u32::MAX);
    let mut remarks = Vec::new();
    let none = of(Onset::None);
    if !none.is_empty() {
        let judged = u32::try_from(observed.judged()).unwrap_or(u32::MAX);
        remarks.push(Remark::YearsWithoutRains { count: count(&none), judged, years: Years(none) });
    }
    let unknown = of(Onset::Unknown);
    if !unknown.is_empty() {
        remarks.push(Remark::YearsUnknown { count: count(&unknown), years: Years(unknown) });
    }
    remarks
}
