//! Dates of the steps, counted back from the rains and the harvest.

use chrono::{Days, Months, NaiveDate};
use serde::Serialize;

use super::season::ExpectedRains;
use super::{Assumptions, Finding, StepKind};
use crate::finding::Code;

/// Days from `from` to `to`, both included.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
pub struct DateSpan {
    /// First day.
    pub from: NaiveDate,
    /// Last day; never before the first.
    pub to: NaiveDate,
}

impl DateSpan {
    /// A span; the days are put in order.
    pub fn new(a: NaiveDate, b: NaiveDate) -> DateSpan {
        DateSpan { from: a.min(b), to: a.max(b) }
    }

    /// One day.
    pub fn day(day: NaiveDate) -> DateSpan {
        DateSpan { from: day, to: day }
    }

    /// Whether it is one day.
    pub fn is_day(&self) -> bool {
        self.from == self.to
    }
}

/// A step with its dates and the reason for them.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Step {
    /// What to do.
    #[serde(rename = "topic")]
    pub kind: StepKind,
    /// When.
    #[serde(flatten)]
    pub when: DateSpan,
    /// Why then.
    pub why: String,
}

/// All steps of a season in order of their first day.
#[derive(Debug, Clone, PartialEq)]
pub struct Timeline {
    /// The steps.
    pub steps: Vec<Step>,
    /// What should be known about the dates.
    pub findings: Vec<Finding>,
}

/// Moves a date; dates beyond the calendar stay at its end.
fn shift(date: NaiveDate, days: f64) -> NaiveDate {
    let count = Days::new(days.abs().round() as u64);
    if days < 0.0 {
        date.checked_sub_days(count).unwrap_or(NaiveDate::MIN)
    } else {
        date.checked_add_days(count).unwrap_or(NaiveDate::MAX)
    }
}

/// What the dates of a season hang on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SeasonInputs {
    /// When the old field is dug: a day, or in a zone the days of all its farms.
    pub harvest: DateSpan,
    /// When the rains are expected.
    pub rains: ExpectedRains,
    /// When they began, where they have.
    pub began: Option<NaiveDate>,
    /// Days from planting to the first ripe roots and to the last.
    pub maturity: (f64, f64),
    /// Whether many farms follow the same dates: then no step is one day.
    pub spread: bool,
    /// How far the work has come, where somebody says.
    pub work_done: Option<WorkDone>,
}

/// How far the work has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WorkDone {
    /// The day it is.
    pub today: NaiveDate,
    /// The last step that is done; `None` where none is.
    pub done: Option<StepKind>,
}

impl SeasonInputs {
    /// A step that is not done cannot lie in the past.
    fn open(&self, kind: StepKind) -> Option<NaiveDate> {
        self.work_done.filter(|work| work.done.is_none_or(|done| kind > done)).map(|work| work.today)
    }

    fn no_earlier(&self, kind: StepKind, when: DateSpan) -> DateSpan {
        match self.open(kind) {
            Some(today) => DateSpan::new(when.from.max(today), when.to.max(today)),
            None => when,
        }
    }
}

/// Lays out the season between the harvest and the rains.
///
/// However short the dry season, and however late the work, no step comes before one
/// it depends on: where the usual dates would, they are moved and a finding says so.
pub fn lay_out(inputs: &SeasonInputs, assumptions: &Assumptions) -> Timeline {
    let a = assumptions;
    let mut findings = Vec::new();
    let mut steps = Vec::with_capacity(20);
    let mut step = |kind, when, why: String| steps.push(Step { kind, when, why });
    let spread = |day: NaiveDate| {
        DateSpan::new(day, if inputs.spread { shift(day, a.zone_span_days - 1.0) } else { day })
    };

    let harvest = inputs.no_earlier(StepKind::Harvest, inputs.harvest);
    // In a zone the first farms begin early and the last ones late.
    let before_harvest = |kind, first: f64, last: f64| {
        let usual = DateSpan::new(shift(harvest.from, -first), shift(harvest.to, -last));
        let when = inputs.no_earlier(kind, usual);
        DateSpan::new(when.from.min(harvest.from), when.to.min(harvest.to))
    };
    let fill = inputs.no_earlier(
        StepKind::FillContainer,
        DateSpan::new(harvest.from, shift(harvest.to, a.fill_within_days)),
    );
    let expected = inputs.rains.onset;
    let onset = inputs.began.unwrap_or(expected);
    let late = inputs.began.unwrap_or(inputs.rains.late);
    // Once the rains are there, nothing is gained by waiting with the bed.
    let before_rains = |weeks: f64| shift(expected, -7.0 * weeks).min(onset);
    let bed_wanted = before_rains(a.bed_weeks_before_rains_first);
    let bed_usual = bed_wanted.max(fill.to);
    let bed_from = inputs.open(StepKind::PlantBed).map_or(bed_usual, |today| bed_usual.max(today));
    let bed_to = before_rains(a.bed_weeks_before_rains_last).max(bed_from);
    let bed = DateSpan::new(bed_from, bed_to);
    let first_cut = shift(bed_from, a.first_cut_days_after_bed);
    let cut_from = onset.max(first_cut);
    let cut_from = inputs.open(StepKind::CutForPlanting).map_or(cut_from, |today| cut_from.max(today));
    let cut = DateSpan::new(cut_from, shift(late.max(cut_from), a.planting_window_days));

    let harvest_day = harvest.from;
    step(
        StepKind::MarkPlants,
        before_harvest(
            StepKind::MarkPlants,
            a.mark_days_before_harvest,
            a.mark_days_before_harvest - a.mark_within_days,
        ),
        format!(
            "{} days before the harvest on {harvest_day}, while healthy and sick plants can still be told apart",
            a.mark_days_before_harvest
        ),
    );
    step(
        StepKind::GatherSand,
        before_harvest(StepKind::GatherSand, a.gather_sand_days_before_harvest, 1.0),
        "before the harvest, so that the sand is dry and cool when the roots are there".to_owned(),
    );
    step(
        StepKind::CheckPlants,
        before_harvest(
            StepKind::CheckPlants,
            a.check_days_before_harvest_first,
            a.check_days_before_harvest_last,
        ),
        format!(
            "{} to {} days before the harvest: sickness may have shown since the marking",
            a.check_days_before_harvest_last, a.check_days_before_harvest_first
        ),
    );
    step(
        StepKind::CutVines,
        before_harvest(
            StepKind::CutVines,
            a.cut_vines_days_before_harvest_first,
            a.cut_vines_days_before_harvest_last,
        ),
        format!(
            "{} to {} days before the harvest, so that the skin toughens",
            a.cut_vines_days_before_harvest_last, a.cut_vines_days_before_harvest_first
        ),
    );
    step(StepKind::Harvest, harvest, "the harvest date of the case".to_owned());
    step(StepKind::FillContainer, fill, "after some hours in shade, before the roots dry out".to_owned());

    for (date, months) in checks(inputs, fill.from, bed_from, a) {
        let why = match months {
            Some(1) => format!("a month after filling on {}", fill.from),
            Some(months) => format!("{months} months after filling on {}", fill.from),
            None => "an earlier check is overdue".to_owned(),
        };
        step(StepKind::MonthlyCheck, spread(date), why);
    }

    let prepare = inputs.no_earlier(
        StepKind::PrepareBed,
        DateSpan::new(shift(bed_from, -a.prepare_bed_days), shift(bed_from, -1.0)),
    );
    step(
        StepKind::PrepareBed,
        DateSpan::new(prepare.from.min(bed_from), prepare.to.min(bed_from)),
        format!("in the {} days before the roots go in", a.prepare_bed_days),
    );
    let weeks = format!(
        "{} to {} weeks before the rains ({expected})",
        a.bed_weeks_before_rains_last, a.bed_weeks_before_rains_first
    );
    let weeks =
        if bed_from > bed_usual { format!("as soon as it can be; it was due {weeks}") } else { weeks };
    let last_check = inputs.open(StepKind::LastCheck).map_or(bed_usual.min(bed_from), |_| bed_from);
    step(
        StepKind::LastCheck,
        DateSpan::new(last_check, spread(last_check).to.min(bed_to).max(last_check)),
        format!("on the day the first roots go to the bed, {weeks}"),
    );
    step(StepKind::PlantBed, bed, format!("{weeks}, so that vines are long enough when the rains come"));
    step(
        StepKind::WaterBed,
        DateSpan::new(bed_from, cut.from.max(late)),
        "from planting the bed until rain keeps it moist".to_owned(),
    );
    step(
        StepKind::CutForPlanting,
        cut,
        match inputs.began {
            Some(began) => format!("the rains have come, on {began}"),
            None if late > onset => {
                format!("when the rains have come: from {onset}, in late years from {late}")
            }
            None => format!("when the rains have come, from about {onset}"),
        },
    );
    step(
        StepKind::PlantField,
        cut,
        format!("within {} days of the onset, a day or two after each cutting", a.planting_window_days),
    );
    let (ripe_first, ripe_last) = inputs.maturity;
    step(
        StepKind::FirstHarvest,
        DateSpan::new(shift(cut.from, ripe_first), shift(cut.to, ripe_last)),
        format!("{ripe_first} to {ripe_last} days after planting"),
    );

    if bed_usual > bed_wanted {
        findings.push(
            Finding::warning(Code::PLAN, format!(
                "the rains are expected on {expected}, too soon after the harvest for storage: the roots go to the bed on {bed_from}"
            ))
            .hint("plant vines from the old field instead, or sprout the roots at once and plant late"),
        );
    }
    if first_cut > onset {
        let came = if inputs.began.is_some() { "the rains came" } else { "the onset" };
        findings.push(
            Finding::warning(
                Code::PLAN,
                format!("the bed gives its first cuttings on about {first_cut}, after {came} on {onset}"),
            )
            .hint("plant what vines you have at the onset; the bed fills the rest"),
        );
    }
    let stored = (bed_from - fill.from).num_days();
    if stored as f64 > a.storage_evidence_days {
        findings.push(
            Finding::warning(Code::PLAN, format!(
                "the roots would stay {stored} days in sand, longer than the {} days the survival figures come from",
                a.storage_evidence_days
            ))
            .hint("store more roots than the plan says, and ask the local extension office"),
        );
    }
    steps.sort_by_key(|step: &Step| (step.when.from, step.kind));
    Timeline { steps, findings }
}

/// The days of the monthly checks, each with the months since filling; without months
/// the one check that stands for all that are overdue.
fn checks(
    inputs: &SeasonInputs,
    filled: NaiveDate,
    bed: NaiveDate,
    assumptions: &Assumptions,
) -> Vec<(NaiveDate, Option<u32>)> {
    let every = assumptions.check_every_months.round().max(1.0) as u32;
    let worth_it = |date: NaiveDate| (bed - date).num_days() as f64 >= assumptions.least_days_between_checks;
    let mut days: Vec<_> = (1..=24)
        .map_while(|times| {
            let months = times * every;
            let date = filled.checked_add_months(Months::new(months)).filter(|date| worth_it(*date))?;
            Some((date, Some(months)))
        })
        .collect();
    if let Some(today) = inputs.open(StepKind::MonthlyCheck) {
        let planned = days.len();
        days.retain(|(date, _)| *date >= today);
        if days.len() < planned && worth_it(today) {
            days.insert(0, (today, None));
        }
    }
    days
}

/// The step before one in the usual order.
pub(super) fn before(kind: StepKind) -> Option<StepKind> {
    StepKind::ALL.into_iter().take_while(|other| *other != kind).last()
}
