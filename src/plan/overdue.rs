//! Steps whose days have passed, and what the delay costs.

use chrono::NaiveDate;

use super::defaults::Assumptions;
use super::multiply::{months_between, surviving};
use super::span::DateSpan;
use super::steps::StepKind;
use super::timeline::{SeasonInputs, Step, WorkDone, before, lay_out};
use super::units::whole_down;
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
        Delay::Cost { field_from: self.field_from, days_later: self.days_later, fewer: self.cuttings_fewer }
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

/// The steps overdue on a day. `done` is the last step that is known to be done; `certain`
/// says that what comes after it is known not to be. `first_cut` is what the plan expects of the first cut.
pub(super) fn find(
    inputs: &SeasonInputs,
    planned: &[Step],
    today: NaiveDate,
    (done, certain): (Option<StepKind>, bool),
    first_cut: u32,
    assumptions: &Assumptions,
) -> Vec<Overdue> {
    let last_day = |kind| planned.iter().filter(|step| step.kind == kind).map(|step| step.when.to).max();
    let first_day =
        |steps: &[Step], kind| steps.iter().filter(|step| step.kind == kind).map(|step| step.when.from).min();
    let stored = |steps: &[Step]| {
        let (fill, bed) = (first_day(steps, StepKind::FillContainer)?, first_day(steps, StepKind::PlantBed)?);
        Some(surviving(assumptions.survival_share, months_between(fill, bed), assumptions))
    };
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
            let share = (stored(&late)? / stored(planned)?).min(1.0);
            let cuttings = whole_down(f64::from(first_cut) * share);
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
