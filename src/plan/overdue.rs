//! Steps whose days have passed, and what the delay costs.

use chrono::NaiveDate;

use super::case::Case;
use super::defaults::Assumptions;
use super::growth::{Growth, PlanBy};
use super::multiply::{months_between, surviving};
use super::remarks::Remark;
use super::span::DateSpan;
use super::standing::shown_by;
use super::state::{days_in_bed, first_day};
use super::steps::StepKind;
use super::timeline::{SeasonInputs, Step, WorkDone, before, lay_out};
use super::units::{two_figures_up, whole_down};
use super::worded::{Values, Worded, Wording, coded};

/// A step whose days have passed, and what follows if it is not done yet.
///
/// Its code names what can still be done, the same however late it is; its values tell the cost.
#[derive(Debug, Clone, PartialEq)]
pub struct Overdue {
    /// The step.
    pub kind: StepKind,
    /// When it was due.
    pub due: DateSpan,
    /// The first day on which the field can then be planted.
    pub field_from: NaiveDate,
    /// How much later that is than planned, days.
    pub days_later: u32,
    /// Cuttings at the first cut, then.
    pub cuttings_at_first_cut: u32,
    /// How many fewer these are than planned.
    pub cuttings_fewer: u32,
    /// Whether somebody said that it is not done; otherwise nobody said that it is.
    pub certain: bool,
}

impl Overdue {
    /// What the delay costs.
    pub fn cost(&self) -> Delay {
        let fewer = two_figures_up(self.cuttings_fewer);
        Delay::Cost { field_from: self.field_from, days_later: self.days_later, fewer }
    }
}

impl Worded for Overdue {
    fn code(&self) -> &'static str {
        self.kind.late()
    }

    fn values(&self) -> Values {
        self.cost().values()
    }
}

coded! {
    /// What a delay costs.
    pub enum Delay {
        /// Days, cuttings, both or nothing yet.
        Cost = "late-cost" {
            /// The first day on which the field can then be planted.
            field_from: NaiveDate,
            /// How many days later that is than planned.
            days_later: u32,
            /// How many fewer cuttings the first cut gives than planned.
            fewer: u32,
        },
    }
}

/// What is said of late work: for each step what can still be done, and what the delay costs.
pub fn wordings() -> impl Iterator<Item = Wording> {
    Delay::WORDINGS.iter().flat_map(|cost| {
        let steps = StepKind::ALL.into_iter().map(|kind| Wording { code: kind.late(), ..*cost });
        steps.chain([*cost])
    })
}

/// What late work leaves of that which was planned, as parts of 1.
#[derive(Debug, Clone, Copy)]
struct Kept {
    /// Of the roots: they are longer in the sand.
    roots: f64,
    /// Of what a root gives at the first cut: it is shorter in the bed. More is not counted on, since the
    /// cuts after it come later as well.
    growth: f64,
}

impl Kept {
    /// Of `planned`, where the season goes as `late`.
    fn of(planned: &[Step], late: &[Step], by: PlanBy, assumptions: &Assumptions) -> Kept {
        let stored = |steps: &[Step]| {
            let day = |kind| first_day(steps, kind);
            let days = day(StepKind::FillContainer).zip(day(StepKind::PlantBed));
            let months = days.map_or(0.0, |(fill, bed)| months_between(fill, bed));
            surviving(assumptions.survival_share, months, assumptions)
        };
        let grown = |steps: &[Step]| Growth::of(by, days_in_bed(steps, assumptions), assumptions).first(0.0);
        Kept {
            roots: (stored(late) / stored(planned)).min(1.0),
            growth: (grown(late) / grown(planned)).min(1.0),
        }
    }

    /// Of the cuttings of the first cut.
    fn first(&self) -> f64 {
        self.roots * self.growth
    }
}

/// The steps whose days have passed, and a remark where they are known not to be done. What the checks of the store
/// show done, is done. `first_cut` is what the plan expects of the first cut.
pub(super) fn late(
    case: &Case,
    inputs: &SeasonInputs<'_>,
    first_cut: u32,
    remarks: &mut Vec<Remark>,
) -> Vec<Overdue> {
    let Some(today) = case.today else { return Vec::new() };
    let certain = case.done.is_some();
    let done = case.done.max(case.store_checks.last().map(shown_by));
    let asked = Asked { today, done, certain, first_cut, by: case.plan_by };
    let planned = lay_out(inputs, &case.assumptions).steps;
    let overdue = find(inputs, &planned, asked, &case.assumptions);
    if let Some(worst) = overdue.iter().filter(|step| step.certain).max_by_key(|step| step.days_later) {
        remarks.push(Remark::LateWork {
            steps: u32::try_from(overdue.len()).unwrap_or(u32::MAX),
            today,
            field_from: worst.field_from,
            days_later: worst.days_later,
            fewer: two_figures_up(worst.cuttings_fewer),
        });
    }
    overdue
}

/// What is asked of late work.
#[derive(Debug, Clone, Copy)]
struct Asked {
    /// The day it is.
    today: NaiveDate,
    /// The last step that is known to be done.
    done: Option<StepKind>,
    /// Whether what comes after it is known not to be.
    certain: bool,
    /// Cuttings that the plan expects of the first cut.
    first_cut: u32,
    /// By whose figures.
    by: PlanBy,
}

/// The steps overdue on a day.
fn find(
    inputs: &SeasonInputs<'_>,
    planned: &[Step],
    asked: Asked,
    assumptions: &Assumptions,
) -> Vec<Overdue> {
    let Asked { today, done, certain, first_cut, by } = asked;
    let last_day = |kind| planned.iter().filter(|step| step.kind == kind).map(|step| step.when.to).max();
    StepKind::ALL
        .into_iter()
        .filter(|kind| kind.falls_due() && done.is_none_or(|done| *kind > done))
        .filter(|kind| last_day(*kind).is_some_and(|last| last < today))
        .filter_map(|kind| {
            let from = first_day(planned, kind)?;
            let work_done = WorkDone { today, done: if certain { done } else { before(kind) } };
            let late = lay_out(&SeasonInputs { work_done: Some(work_done), ..*inputs }, assumptions).steps;
            let field_from = first_day(&late, StepKind::PlantField)?;
            let days_later = (field_from - first_day(planned, StepKind::PlantField)?).num_days();
            let kept = Kept::of(planned, &late, by, assumptions);
            let cuttings = whole_down(f64::from(first_cut) * kept.first());
            Some(Overdue {
                kind,
                due: DateSpan::new(from, last_day(kind)?),
                field_from,
                days_later: u32::try_from(days_later).unwrap_or(0),
                cuttings_at_first_cut: cuttings,
                cuttings_fewer: first_cut - cuttings,
                certain,
            })
        })
        .collect()
}
