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

/// Lays out the season between `harvest` and the rains.
///
/// However short the dry season, no step comes before one it depends on:
/// where the usual dates would, they are moved and a finding says so.
pub fn lay_out(harvest: NaiveDate, rains: ExpectedRains, assumptions: &Assumptions) -> Timeline {
    let a = assumptions;
    let mut findings = Vec::new();
    let mut steps = Vec::new();
    let mut step = |topic, when, why: String| steps.push(Step { topic, when, why });
    let before_harvest = |days: f64| shift(harvest, -days);
    let onset = rains.onset;

    let fill = DateSpan::new(harvest, shift(harvest, a.fill_within_days));
    let bed_wanted = shift(onset, -7.0 * a.bed_weeks_before_rains_first);
    let bed_from = bed_wanted.max(fill.to);
    let bed_to = shift(onset, -7.0 * a.bed_weeks_before_rains_last).max(bed_from);
    let bed = DateSpan::new(bed_from, bed_to);
    let first_cut = shift(bed_from, a.first_cut_days_after_bed);
    let cut_from = onset.max(first_cut);
    let cut = DateSpan::new(cut_from, shift(rains.late.max(cut_from), a.planting_window_days));

    step(
        Topic::MarkPlants,
        DateSpan::new(
            before_harvest(a.mark_days_before_harvest),
            before_harvest(a.mark_days_before_harvest - a.mark_within_days),
        ),
        format!(
            "{} days before the harvest on {harvest}, while healthy and sick plants can still be told apart",
            a.mark_days_before_harvest
        ),
    );
    step(
        Topic::GatherSand,
        DateSpan::new(before_harvest(a.gather_sand_days_before_harvest), before_harvest(1.0)),
        "before the harvest, so that the sand is dry and cool when the roots are there".to_owned(),
    );
    step(
        Topic::CheckPlants,
        DateSpan::new(
            before_harvest(a.check_days_before_harvest_first),
            before_harvest(a.check_days_before_harvest_last),
        ),
        format!(
            "{} to {} days before the harvest: sickness may have shown since the marking",
            a.check_days_before_harvest_last, a.check_days_before_harvest_first
        ),
    );
    step(
        Topic::CutVines,
        DateSpan::new(
            before_harvest(a.cut_vines_days_before_harvest_first),
            before_harvest(a.cut_vines_days_before_harvest_last),
        ),
        format!(
            "{} to {} days before the harvest, so that the skin toughens",
            a.cut_vines_days_before_harvest_last, a.cut_vines_days_before_harvest_first
        ),
    );
    step(Topic::Harvest, DateSpan::day(harvest), "the harvest date of the case".to_owned());
    step(Topic::FillContainer, fill, "after some hours in shade, before the roots dry out".to_owned());

    let mut check = 1;
    while let Some(date) =
        fill.from.checked_add_months(Months::new(check * a.check_every_months.round().max(1.0) as u32))
    {
        if ((bed_from - date).num_days() as f64) < a.least_days_between_checks || check > 24 {
            break;
        }
        step(
            Topic::MonthlyCheck,
            DateSpan::day(date),
            if check == 1 {
                format!("a month after filling on {}", fill.from)
            } else {
                format!(
                    "{} months after filling on {}",
                    check * a.check_every_months.round() as u32,
                    fill.from
                )
            },
        );
        check += 1;
    }

    step(
        Topic::PrepareBed,
        DateSpan::new(shift(bed_from, -a.prepare_bed_days), shift(bed_from, -1.0)),
        format!("in the {} days before the roots go in", a.prepare_bed_days),
    );
    let weeks = format!(
        "{} to {} weeks before the rains ({onset})",
        a.bed_weeks_before_rains_last, a.bed_weeks_before_rains_first
    );
    step(
        Topic::LastCheck,
        DateSpan::day(bed_from),
        format!("on the day the first roots go to the bed, {weeks}"),
    );
    step(Topic::PlantBed, bed, format!("{weeks}, so that vines are long enough when the rains come"));
    step(
        Topic::WaterBed,
        DateSpan::new(bed_from, cut.from.max(rains.late)),
        "from planting the bed until rain keeps it moist".to_owned(),
    );
    step(
        Topic::CutForPlanting,
        cut,
        if rains.late > onset {
            format!("when the rains have come: from {onset}, in late years from {}", rains.late)
        } else {
            format!("when the rains have come, from about {onset}")
        },
    );
    step(
        Topic::PlantField,
        cut,
        format!("within {} days of the onset, a day or two after each cutting", a.planting_window_days),
    );
    step(
        Topic::FirstHarvest,
        DateSpan::new(shift(cut.from, a.first_harvest_days_first), shift(cut.to, a.first_harvest_days_last)),
        format!("{} to {} days after planting", a.first_harvest_days_first, a.first_harvest_days_last),
    );

    if bed_from > bed_wanted {
        findings.push(
            Finding::warning(format!(
                "the rains are expected on {onset}, too soon after the harvest for storage: the roots go to the bed on {bed_from}"
            ))
            .hint("plant vines from the old field instead, or sprout the roots at once and plant late"),
        );
    }
    if first_cut > onset {
        findings.push(
            Finding::warning(format!(
                "the bed gives its first cuttings on about {first_cut}, after the onset on {onset}"
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
