//! Dates of the steps, counted back from the rains and the harvest.

use chrono::{Days, Months, NaiveDate};
use serde::Serialize;

use super::season::ExpectedRains;
use super::{Assumptions, Finding};

/// The steps of a season, in their usual order.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Topic {
    /// Choose healthy plants and put a stick beside each.
    MarkPlants,
    /// Take what is needed and dry it: sand.
    GatherSand,
    /// Look at the marked plants again.
    CheckPlants,
    /// Cut the vines back so that the skin toughens.
    CutVines,
    /// Dig and choose the roots.
    Harvest,
    /// Lay roots and sand in layers.
    FillContainer,
    /// Take out, look, throw away, pack again.
    MonthlyCheck,
    /// Make the bed.
    PrepareBed,
    /// Check for the last time and keep the sprouts.
    LastCheck,
    /// Lay the roots in the bed.
    PlantBed,
    /// Keep the bed moist.
    WaterBed,
    /// Cut the vines to plant.
    CutForPlanting,
    /// Plant them.
    PlantField,
    /// Try the first roots.
    FirstHarvest,
}

impl Topic {
    /// All topics in order.
    pub const ALL: [Topic; 14] = [
        Topic::MarkPlants,
        Topic::GatherSand,
        Topic::CheckPlants,
        Topic::CutVines,
        Topic::Harvest,
        Topic::FillContainer,
        Topic::MonthlyCheck,
        Topic::PrepareBed,
        Topic::LastCheck,
        Topic::PlantBed,
        Topic::WaterBed,
        Topic::CutForPlanting,
        Topic::PlantField,
        Topic::FirstHarvest,
    ];

    /// The topic's name in plans, packs and on the command line.
    pub fn name(self) -> &'static str {
        match self {
            Topic::MarkPlants => "mark-plants",
            Topic::GatherSand => "gather-sand",
            Topic::CheckPlants => "check-plants",
            Topic::CutVines => "cut-vines",
            Topic::Harvest => "harvest",
            Topic::FillContainer => "fill-container",
            Topic::MonthlyCheck => "monthly-check",
            Topic::PrepareBed => "prepare-bed",
            Topic::LastCheck => "last-check",
            Topic::PlantBed => "plant-bed",
            Topic::WaterBed => "water-bed",
            Topic::CutForPlanting => "cut-for-planting",
            Topic::PlantField => "plant-field",
            Topic::FirstHarvest => "first-harvest",
        }
    }
}

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
    pub topic: Topic,
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
pub struct Frame {
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
    pub standing: Option<Standing>,
}

/// How far the work has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Standing {
    /// The day it is.
    pub today: NaiveDate,
    /// The last step that is done; `None` where none is.
    pub done: Option<Topic>,
}

impl Frame {
    /// A step that is not done cannot lie in the past.
    fn open(&self, topic: Topic) -> Option<NaiveDate> {
        self.standing.filter(|standing| standing.done.is_none_or(|done| topic > done)).map(|at| at.today)
    }

    fn no_earlier(&self, topic: Topic, when: DateSpan) -> DateSpan {
        match self.open(topic) {
            Some(today) => DateSpan::new(when.from.max(today), when.to.max(today)),
            None => when,
        }
    }
}

/// Lays out the season between the harvest and the rains.
///
/// However short the dry season, and however late the work, no step comes before one
/// it depends on: where the usual dates would, they are moved and a finding says so.
pub fn lay_out(frame: &Frame, assumptions: &Assumptions) -> Timeline {
    let a = assumptions;
    let mut findings = Vec::new();
    let mut steps = Vec::with_capacity(20);
    let mut step = |topic, when, why: String| steps.push(Step { topic, when, why });
    let spread = |day: NaiveDate| {
        DateSpan::new(day, if frame.spread { shift(day, a.zone_span_days - 1.0) } else { day })
    };

    let harvest = frame.no_earlier(Topic::Harvest, frame.harvest);
    // In a zone the first farms begin early and the last ones late.
    let before_harvest = |topic, first: f64, last: f64| {
        let usual = DateSpan::new(shift(harvest.from, -first), shift(harvest.to, -last));
        let when = frame.no_earlier(topic, usual);
        DateSpan::new(when.from.min(harvest.from), when.to.min(harvest.to))
    };
    let fill = frame
        .no_earlier(Topic::FillContainer, DateSpan::new(harvest.from, shift(harvest.to, a.fill_within_days)));
    let expected = frame.rains.onset;
    let onset = frame.began.unwrap_or(expected);
    let late = frame.began.unwrap_or(frame.rains.late);
    // Once the rains are there, nothing is gained by waiting with the bed.
    let before_rains = |weeks: f64| shift(expected, -7.0 * weeks).min(onset);
    let bed_wanted = before_rains(a.bed_weeks_before_rains_first);
    let bed_usual = bed_wanted.max(fill.to);
    let bed_from = frame.open(Topic::PlantBed).map_or(bed_usual, |today| bed_usual.max(today));
    let bed_to = before_rains(a.bed_weeks_before_rains_last).max(bed_from);
    let bed = DateSpan::new(bed_from, bed_to);
    let first_cut = shift(bed_from, a.first_cut_days_after_bed);
    let cut_from = onset.max(first_cut);
    let cut_from = frame.open(Topic::CutForPlanting).map_or(cut_from, |today| cut_from.max(today));
    let cut = DateSpan::new(cut_from, shift(late.max(cut_from), a.planting_window_days));

    let harvest_day = harvest.from;
    step(
        Topic::MarkPlants,
        before_harvest(
            Topic::MarkPlants,
            a.mark_days_before_harvest,
            a.mark_days_before_harvest - a.mark_within_days,
        ),
        format!(
            "{} days before the harvest on {harvest_day}, while healthy and sick plants can still be told apart",
            a.mark_days_before_harvest
        ),
    );
    step(
        Topic::GatherSand,
        before_harvest(Topic::GatherSand, a.gather_sand_days_before_harvest, 1.0),
        "before the harvest, so that the sand is dry and cool when the roots are there".to_owned(),
    );
    step(
        Topic::CheckPlants,
        before_harvest(
            Topic::CheckPlants,
            a.check_days_before_harvest_first,
            a.check_days_before_harvest_last,
        ),
        format!(
            "{} to {} days before the harvest: sickness may have shown since the marking",
            a.check_days_before_harvest_last, a.check_days_before_harvest_first
        ),
    );
    step(
        Topic::CutVines,
        before_harvest(
            Topic::CutVines,
            a.cut_vines_days_before_harvest_first,
            a.cut_vines_days_before_harvest_last,
        ),
        format!(
            "{} to {} days before the harvest, so that the skin toughens",
            a.cut_vines_days_before_harvest_last, a.cut_vines_days_before_harvest_first
        ),
    );
    step(Topic::Harvest, harvest, "the harvest date of the case".to_owned());
    step(Topic::FillContainer, fill, "after some hours in shade, before the roots dry out".to_owned());

    for (date, months) in checks(frame, fill.from, bed_from, a) {
        let why = match months {
            Some(1) => format!("a month after filling on {}", fill.from),
            Some(months) => format!("{months} months after filling on {}", fill.from),
            None => "an earlier check is overdue".to_owned(),
        };
        step(Topic::MonthlyCheck, spread(date), why);
    }

    let prepare = frame.no_earlier(
        Topic::PrepareBed,
        DateSpan::new(shift(bed_from, -a.prepare_bed_days), shift(bed_from, -1.0)),
    );
    step(
        Topic::PrepareBed,
        DateSpan::new(prepare.from.min(bed_from), prepare.to.min(bed_from)),
        format!("in the {} days before the roots go in", a.prepare_bed_days),
    );
    let weeks = format!(
        "{} to {} weeks before the rains ({expected})",
        a.bed_weeks_before_rains_last, a.bed_weeks_before_rains_first
    );
    let weeks =
        if bed_from > bed_usual { format!("as soon as it can be; it was due {weeks}") } else { weeks };
    let last_check = frame.open(Topic::LastCheck).map_or(bed_usual.min(bed_from), |_| bed_from);
    step(
        Topic::LastCheck,
        DateSpan::new(last_check, spread(last_check).to.min(bed_to).max(last_check)),
        format!("on the day the first roots go to the bed, {weeks}"),
    );
    step(Topic::PlantBed, bed, format!("{weeks}, so that vines are long enough when the rains come"));
    step(
        Topic::WaterBed,
        DateSpan::new(bed_from, cut.from.max(late)),
        "from planting the bed until rain keeps it moist".to_owned(),
    );
    step(
        Topic::CutForPlanting,
        cut,
        match frame.began {
            Some(began) => format!("the rains have come, on {began}"),
            None if late > onset => {
                format!("when the rains have come: from {onset}, in late years from {late}")
            }
            None => format!("when the rains have come, from about {onset}"),
        },
    );
    step(
        Topic::PlantField,
        cut,
        format!("within {} days of the onset, a day or two after each cutting", a.planting_window_days),
    );
    let (ripe_first, ripe_last) = frame.maturity;
    step(
        Topic::FirstHarvest,
        DateSpan::new(shift(cut.from, ripe_first), shift(cut.to, ripe_last)),
        format!("{ripe_first} to {ripe_last} days after planting"),
    );

    if bed_usual > bed_wanted {
        findings.push(
            Finding::warning(format!(
                "the rains are expected on {expected}, too soon after the harvest for storage: the roots go to the bed on {bed_from}"
            ))
            .hint("plant vines from the old field instead, or sprout the roots at once and plant late"),
        );
    }
    if first_cut > onset {
        let came = if frame.began.is_some() { "the rains came" } else { "the onset" };
        findings.push(
            Finding::warning(format!(
                "the bed gives its first cuttings on about {first_cut}, after {came} on {onset}"
            ))
            .hint("plant what vines you have at the onset; the bed fills the rest"),
        );
    }
    let stored = (bed_from - fill.from).num_days();
    if stored as f64 > a.storage_evidence_days {
        findings.push(
            Finding::warning(format!(
                "the roots would stay {stored} days in sand, longer than the {} days the survival figures come from",
                a.storage_evidence_days
            ))
            .hint("store more roots than the plan says, and ask the local extension office"),
        );
    }
    steps.sort_by_key(|step: &Step| (step.when.from, step.topic));
    Timeline { steps, findings }
}

/// The days of the monthly checks, each with the months since filling; without months
/// the one check that stands for all that are overdue.
fn checks(
    frame: &Frame,
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
    if let Some(today) = frame.open(Topic::MonthlyCheck) {
        let planned = days.len();
        days.retain(|(date, _)| *date >= today);
        if days.len() < planned && worth_it(today) {
            days.insert(0, (today, None));
        }
    }
    days
}

/// The step before `topic` in the usual order.
pub(super) fn before(topic: Topic) -> Option<Topic> {
    Topic::ALL.into_iter().take_while(|other| *other != topic).last()
}
