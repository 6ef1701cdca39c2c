//! Steps whose days have passed: what can still be done, and what the delay costs.

use chrono::NaiveDate;
use serde::Serialize;

use super::multiply::{months_between, surviving};
use super::timeline::{SeasonInputs, WorkDone, before, lay_out};
use super::units::whole_down;
use super::{Assumptions, DateSpan, Step, StepKind};

/// A step whose days have passed, and what follows if it is not done yet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Overdue {
    /// The step.
    #[serde(rename = "topic")]
    pub kind: StepKind,
    /// When it was due.
    pub due: DateSpan,
    /// What can still be done.
    pub still_possible: &'static str,
    /// The first day on which the field can then be planted.
    pub field_from: NaiveDate,
    /// How much later that is than planned, days.
    pub days_later: i64,
    /// Cuttings at the first cut, then.
    pub cuttings_at_first_cut: u32,
    /// How many fewer these are than planned.
    pub cuttings_fewer: u32,
    /// Whether somebody said that it is not done; otherwise nobody said that it is.
    pub certain: bool,
}

impl Overdue {
    /// What the delay costs, in words.
    pub fn cost(&self) -> String {
        let fewer = |cuttings: u32| format!("about {cuttings} fewer cuttings at the first cut");
        let later =
            || format!("the field from {}, {} days later than planned", self.field_from, self.days_later);
        match (self.days_later, self.cuttings_fewer) {
            (0, 0) => "nothing is lost yet".to_owned(),
            (0, cuttings) => fewer(cuttings),
            (_, 0) => later(),
            (_, cuttings) => format!("{}, with {}", later(), fewer(cuttings)),
        }
    }
}

/// What can still be done when a step's days have passed.
fn still_possible(kind: StepKind) -> &'static str {
    match kind {
        StepKind::MarkPlants => {
            "choose healthy plants now, at the latest while digging: sickness shows less so late, so choose more and keep only the best"
        }
        StepKind::GatherSand => "bring sand now; let it dry and cool first: damp or warm sand rots the roots",
        StepKind::CheckPlants => "look at the marked plants before digging; take nothing from a doubtful one",
        StepKind::CutVines => {
            "cut now if some days are left before digging; if not, dig with care: the skin is soft and wounds easily"
        }
        StepKind::Harvest => {
            "dig as soon as the soil is dry, and look harder for weevil holes: their damage grows every week"
        }
        StepKind::FillContainer => "lay the roots in sand today; leave out those that have shrivelled",
        StepKind::MonthlyCheck => "check today; what rots infects what lies beside it",
        StepKind::PrepareBed => "make the bed now",
        StepKind::LastCheck | StepKind::PlantBed => {
            "plant the roots in the bed today, with the sprouts they have"
        }
        StepKind::WaterBed => "water today: a bed that dries out loses its sprouts",
        StepKind::CutForPlanting | StepKind::PlantField => {
            "cut and plant as soon as the soil is moist; no figure for what late planting costs is published, but the season left is shorter"
        }
        StepKind::FirstHarvest => "dig now: weevil damage grows every week",
    }
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
            let days_later = (field_from - first_day(planned, StepKind::PlantField)?).num_days().max(0);
            let share = (stored(&late)? / stored(planned)?).min(1.0);
            let cuttings = whole_down(f64::from(first_cut) * share);
            Some(Overdue {
                kind,
                due: DateSpan::new(from, last_day(kind)?),
                still_possible: still_possible(kind),
                field_from,
                days_later,
                cuttings_at_first_cut: cuttings,
                cuttings_fewer: first_cut - cuttings,
                certain,
            })
        })
        .collect()
}
