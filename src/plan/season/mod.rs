//! When the rains begin: from a stated day, or from a daily rainfall record.

mod analysis;
mod course;
mod dry_gap;
mod end;
mod length;
mod missing;
mod month_day;
mod onset;
mod percentile;
mod planting_delay;
mod record;
mod rules;
mod trend;

pub use analysis::{
    Chances, EndRule, Outlook, OutlookBounds, Season, SeasonRule, longest_dry_spell, weights_of_thirds,
};
pub use course::{WetSeason, end_search_from, wet_seasons};
pub use dry_gap::DryGap;
pub use end::{End, LengthReason, Planting, RainsEnd, RainsLength};
pub use length::{Percentiles, RecordedLengths, Ripening};
pub use missing::Between;
pub use month_day::MonthDay;
pub use onset::{Onset, OnsetAsks, OnsetRule, Window, YearOnset};
pub use percentile::{percentile, weighted_percentile};
pub use planting_delay::PlantingDelay;
pub use record::RainRecord;
pub use trend::{Slope, median_slope};

use percentile::{OpenValue, percentile_bounds};

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
    onset_days: Box<OnsetDays>,
    /// The rules and the search window.
    pub rule: SeasonRule,
    /// What waiting with the planting costs and saves.
    pub planting_delays: Vec<PlantingDelay>,
    /// How long the rains last.
    pub lengths: Box<RecordedLengths>,
    /// The rainy seasons of the mean year.
    pub wet_seasons: Vec<WetSeason>,
}

/// The expected rains of the season to come. Where only one day is known, all four are that day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ExpectedRains {
    /// The day the plan is timed by.
    pub onset: NaiveDate,
    /// The day from which they may begin: in the early years they have.
    pub early: NaiveDate,
    /// The day by which they have begun in half of the years.
    pub usual: NaiveDate,
    /// The day by which they have begun in most years, and not before `onset`.
    pub late: NaiveDate,
}

impl ExpectedRains {
    /// Rains of which one day is known.
    pub fn on(day: NaiveDate) -> ExpectedRains {
        ExpectedRains { onset: day, early: day, usual: day, late: day }
    }
}

/// What a record says of the onset in the season to come.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OnsetOutlook {
    /// The days of the early, the middle and the late years.
    pub days: ExpectedRains,
    /// Share of the judged years in which the rains never began.
    pub none_share: f64,
}

impl ObservedRains {
    /// Finds the onsets of a record. `outlook` are the chances of a seasonal outlook.
    pub fn find(record: &RainRecord, rule: SeasonRule, outlook: Option<Chances>) -> ObservedRains {
        let years = record.onsets(&rule.onset, &rule.window);
        let weights = outlook.map(|chances| rule.weights(record, &years, chances));
        ObservedRains {
            planting_delays: rule.planting_delays(record),
            lengths: Box::new(RecordedLengths::find(record, &rule, &years, weights.as_deref())),
            wet_seasons: wet_seasons(record),
            onset_days: Box::new(OnsetDays::of(&years, &rule.window, weights.as_deref())),
            years,
            weights,
            rule,
        }
    }

    /// Days after the window's opening at which `percent` of the years that had an onset have had it.
    pub fn onset_percentile(&self, percent: f64) -> Option<f64> {
        self.onset_days.percentile(percent)
    }

    /// The bounds of that percentile, whatever fell on missing days; `None` where no year is open, and
    /// under a seasonal outlook.
    fn percentile_bounds(&self, percent: f64) -> Option<(f64, f64)> {
        let window = &self.rule.window;
        let open: Vec<OpenValue> = self.years.iter().filter_map(|year| year.open_days(window)).collect();
        if open.is_empty() || self.weights.is_some() {
            return None;
        }
        percentile_bounds(&self.onset_days.days, &open, percent)
    }

    /// Days from `harvest` to the middle onset after it; the most there can be where none is known.
    pub fn days_to_onset(&self, harvest: NaiveDate) -> i64 {
        let middle = Percents { timed: 50.0, early: 50.0, usual: 50.0, late: 50.0 };
        self.expected(harvest, middle).map_or(i64::MAX, |rains| (rains.onset - harvest).num_days())
    }

    /// Years whose onset could be judged: missing days cannot change it.
    pub fn judged(&self) -> usize {
        self.years.iter().filter(|year| !year.onset.is_open()).count()
    }

    /// Share of the judged years without an onset.
    pub fn none_share(&self) -> Option<f64> {
        let none = self.years.iter().filter(|year| year.onset == Onset::None).count();
        (self.judged() > 0).then(|| none as f64 / self.judged() as f64)
    }

    /// The day on which the window opened that an onset on `day` lies in.
    pub(super) fn opening_before(&self, day: NaiveDate) -> Option<NaiveDate> {
        let opened = [day.year(), day.year() - 1].into_iter();
        opened.filter_map(|year| self.rule.window.from.in_year(year)).find(|opening| *opening <= day)
    }

    /// The rains by these percentiles in the first window whose timed day comes after `harvest`.
    fn expected(&self, harvest: NaiveDate, percents: Percents) -> Option<ExpectedRains> {
        let onsets = &self.onset_days;
        let timed = onsets.percentile(percents.timed)?;
        let early = onsets.percentile(percents.early)?.min(timed);
        let usual = onsets.percentile(percents.usual)?;
        let late = onsets.percentile(percents.late)?.max(timed);
        (-1..=1)
            .filter_map(|ahead| self.rule.window.from.in_year(harvest.year() + ahead))
            .filter_map(|opening| {
                let [onset, early, usual, late] =
                    [timed, early, usual, late].map(|days| days_after(opening, days));
                Some(ExpectedRains { onset: onset?, early: early?, usual: usual?, late: late? })
            })
            .find(|rains| rains.onset > harvest)
    }
}

/// The onsets of the years that had one, in days after the window's opening, ascending.
#[derive(Debug, Clone, PartialEq)]
struct OnsetDays {
    days: Vec<f64>,
    /// How much each of them counts, where a seasonal outlook weighs them.
    weights: Option<Vec<f64>>,
}

impl OnsetDays {
    fn of(years: &[YearOnset], window: &Window, weights: Option<&[f64]>) -> OnsetDays {
        let each = weights.into_iter().flatten().copied().chain(std::iter::repeat(1.0));
        let weighted = years.iter().zip(each);
        let mut days: Vec<(f64, f64)> =
            weighted.filter_map(|(year, weight)| Some((year.days_after_opening(window)?, weight))).collect();
        days.sort_by(|(one, _), (other, _)| one.total_cmp(other));
        let (days, each) = days.into_iter().unzip();
        OnsetDays { days, weights: weights.map(|_| each) }
    }

    fn percentile(&self, percent: f64) -> Option<f64> {
        match &self.weights {
            None => percentile(&self.days, percent),
            Some(weights) => weighted_percentile(&self.days, weights, percent),
        }
    }
}

fn days_after(opening: NaiveDate, days: f64) -> Option<NaiveDate> {
    opening.checked_add_days(Days::new(days.round() as u64))
}

/// The percentiles of the years' onsets that a plan speaks of.
#[derive(Clone, Copy)]
struct Percents {
    timed: f64,
    early: f64,
    usual: f64,
    late: f64,
}

impl Percents {
    fn of(risk: Risk, assumptions: &super::Assumptions) -> Percents {
        Percents {
            timed: risk_percent(risk, assumptions),
            early: assumptions.onset_early_percent,
            usual: assumptions.onset_middle_percent,
            late: assumptions.onset_late_percent,
        }
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
    match rains {
        Rains::Usual(day) => day.next_after(harvest).map(ExpectedRains::on),
        Rains::On(date) => Some(ExpectedRains::on(*date)),
        Rains::Observed(observed) => observed.expected(harvest, Percents::of(risk, assumptions)),
    }
}

/// What a record says of these rains.
pub(super) fn onset_outlook(rains: &Rains, days: ExpectedRains) -> Option<OnsetOutlook> {
    let Rains::Observed(observed) = rains else { return None };
    Some(OnsetOutlook { days, none_share: observed.none_share()? })
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
            /// The day the plan is timed by.
            timed: NaiveDate,
            /// Years of 100 with an onset in which the rains had begun by then.
            percent: f64,
            /// Years of 100 with an onset in which they had begun by the early day.
            early_percent: f64,
            /// Years of 100 with an onset in which they had begun by the usual day.
            usual_percent: f64,
            /// Years of 100 with an onset in which they had begun by the late day.
            late_percent: f64,
            /// Years with an onset.
            years: u32,
            /// Years in which they never began.
            none: u32,
            /// Years that could be judged.
            judged: u32,
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
            /// The day the plan is timed by.
            timed: NaiveDate,
            /// Years of 100 with an onset in which the rains had begun by then.
            percent: f64,
            /// Years of 100 with an onset in which they had begun by the early day.
            early_percent: f64,
            /// Years of 100 with an onset in which they had begun by the usual day.
            usual_percent: f64,
            /// Years of 100 with an onset in which they had begun by the late day.
            late_percent: f64,
            /// Years with an onset.
            years: u32,
            /// Years in which they never began.
            none: u32,
            /// Years that could be judged.
            judged: u32,
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
    let Percents { timed: percent, early: early_percent, usual: usual_percent, late: late_percent } =
        Percents::of(risk, assumptions);
    let count = |wanted: fn(Onset) -> bool| {
        let these = observed.years.iter().filter(|year| wanted(year.onset));
        u32::try_from(these.count()).unwrap_or(u32::MAX)
    };
    let years = count(|onset| matches!(onset, Onset::On(_)));
    let none = count(|onset| onset == Onset::None);
    let judged = count(|onset| !onset.is_open());
    let timed = expected.onset;
    let window = observed.rule.window;
    // The window that the onset lies in opened in the same year, or in the one before.
    let opened = [timed.year(), timed.year() - 1].into_iter().filter_map(|year| window.in_year(year));
    let (from, until) = opened.into_iter().find(|(from, _)| *from <= timed).unwrap_or((timed, expected.late));
    let outlook = if observed.weights.is_some() { "yes" } else { "no" };
    match observed.rule.onset.asks() {
        OnsetAsks::Total { total_mm, days, rain_days, look_ahead, dry_spell } => RainsReason::Observed {
            timed,
            percent,
            early_percent,
            usual_percent,
            late_percent,
            years,
            none,
            judged,
            total_mm,
            days,
            rain_days,
            look_ahead,
            dry_spell,
            from,
            until,
            outlook,
        },
        OnsetAsks::Dekad { total_mm, next_two_mm } => RainsReason::ObservedDekads {
            timed,
            percent,
            early_percent,
            usual_percent,
            late_percent,
            years,
            none,
            judged,
            total_mm,
            next_two_mm,
            from,
            until,
            outlook,
        },
    }
}

/// What must be noticed of the years of a record, in the season of the rains that are `expected`.
pub(super) fn remarks(
    rains: &Rains,
    expected: ExpectedRains,
    assumptions: &super::Assumptions,
) -> Vec<Remark> {
    let Rains::Observed(observed) = rains else { return Vec::new() };
    let of = |wanted: fn(Onset) -> bool| -> Vec<i32> {
        observed.years.iter().filter(|year| wanted(year.onset)).map(|year| year.year).collect()
    };
    let count = |years: &[i32]| u32::try_from(years.len()).unwrap_or(u32::MAX);
    let mut remarks = Vec::new();
    let none = of(|onset| onset == Onset::None);
    if !none.is_empty() {
        let judged = u32::try_from(observed.judged()).unwrap_or(u32::MAX);
        remarks.push(Remark::YearsWithoutRains { count: count(&none), judged, years: Years(none) });
    }
    let open = of(Onset::is_open);
    if let (false, Some(opening)) = (open.is_empty(), observed.opening_before(expected.onset)) {
        let bounds = |percent: f64| {
            let (least, greatest) = observed.percentile_bounds(percent)?;
            Some((days_after(opening, least)?, days_after(opening, greatest)?))
        };
        let (early, late) = (bounds(assumptions.onset_early_percent), bounds(assumptions.onset_late_percent));
        let bounded = if early.is_some() && late.is_some() { "yes" } else { "no" };
        let (early_from, early_to) = early.unwrap_or((expected.early, expected.early));
        let (late_from, late_to) = late.unwrap_or((expected.late, expected.late));
        remarks.push(Remark::YearsUnknown {
            count: count(&open),
            years: Years(open),
            bounded,
            early_from,
            early_to,
            late_from,
            late_to,
        });
    }
    remarks
}
