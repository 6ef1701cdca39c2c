//! Steps whose days have passed: what can still be done, and what the delay costs.

use chrono::NaiveDate;
use serde::Serialize;

use super::multiply::{months_between, surviving};
use super::timeline::{Frame, Standing, before, lay_out};
use super::units::whole_down;
use super::{Assumptions, DateSpan, Step, Topic};

/// A step whose days have passed, and what follows if it is not done yet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Overdue {
    /// The step.
    pub topic: Topic,
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
fn still_possible(topic: Topic) -> &'static str {
    match topic {
        Topic::MarkPlants => {
            "choose healthy plants now, at the latest while digging: sickness shows less so late, so choose more and keep only the best"
        }
        Topic::GatherSand => "bring sand now; let it dry and cool first: damp or warm sand rots the roots",
        Topic::CheckPlants => "look at the marked plants before digging; take nothing from a doubtful one",
        Topic::CutVines => {
            "cut now if some days are left before digging; if not, dig with care: the skin is soft and wounds easily"
        }
        Topic::Harvest => {
            "dig as soon as the soil is dry, and look harder for weevil holes: their damage grows every week"
        }
        Topic::FillContainer => "lay the roots in sand today; leave out those that have shrivelled",
        Topic::MonthlyCheck => "check today; what rots infects what lies beside it",
        Topic::PrepareBed => "make the bed now",
        Topic::LastCheck | Topic::PlantBed => "plant the roots in the bed today, with the sprouts they have",
        Topic::WaterBed => "water today: a bed that dries out loses its sprouts",
        Topic::CutForPlanting | Topic::PlantField => {
            "cut and plant as soon as the soil is moist; no figure for what late planting costs is published, but the season left is shorter"
        }
        Topic::FirstHarvest => "dig now: weevil damage grows every week",
    }
}

/// The steps overdue on a day. `done` is the last step that is known to be done; `certain`
/// says that what comes after it is known not to be. `first_cut` is what the plan expects of the first cut.
pub(super) fn find(
    frame: &Frame,
    planned: &[Step],
    today: NaiveDate,
    (done, certain): (Option<Topic>, bool),
    first_cut: u32,
    assumptions: &Assumptions,
) -> Vec<Overdue> {
    let last_day = |topic| planned.iter().filter(|step| step.topic == topic).map(|step| step.when.to).max();
    let first_day = |steps: &[Step], topic| {
        steps.iter().filter(|step| step.topic == topic).map(|step| step.when.from).min()
    };
    let stored = |steps: &[Step]| {
        let (fill, bed) = (first_day(steps, Topic::FillContainer)?, first_day(steps, Topic::PlantBed)?);
        Some(surviving(assumptions.survival_share, months_between(fill, bed), assumptions))
    };
    // Watering belongs to the bed: it is overdue with it.
    Topic::ALL
        .into_iter()
        .filter(|topic| *topic != Topic::WaterBed && done.is_none_or(|done| *topic > done))
        .filter(|topic| last_day(*topic).is_some_and(|last| last < today))
        .filter_map(|topic| {
            let from = first_day(planned, topic)?;
            let standing = Standing { today, done: if certain { done } else { before(topic) } };
            let late = lay_out(&Frame { standing: Some(standing), ..*frame }, assumptions).steps;
            let field_from = first_day(&late, Topic::PlantField)?;
            let days_later = (field_from - first_day(planned, Topic::PlantField)?).num_days().max(0);
            let share = (stored(&late)? / stored(planned)?).min(1.0);
            let cuttings = whole_down(f64::from(first_cut) * share);
            Some(Overdue {
                topic,
                due: DateSpan::new(from, last_day(topic)?),
                still_possible: still_possible(topic),
                field_from,
                days_later,
                cuttings_at_first_cut: cuttings,
                cuttings_fewer: first_cut - cuttings,
                certain,
            })
        })
        .collect()
}
