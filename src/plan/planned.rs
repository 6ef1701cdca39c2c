//! A plan: what comes of a case.

use chrono::NaiveDate;

use super::after::{Harvest, VitaminA};
use super::amounts::Amounts;
use super::case::Kind;
use super::defaults::{Assumptions, Basis};
use super::group::{FieldSize, Share};
use super::growth::PlanBy;
use super::multiply::Cut;
use super::overdue::Overdue;
use super::progress::Judged;
use super::remarks::Remark;
use super::season::{OnsetOutlook, PlantingDelay, RainsReason};
use super::seedbed::{Bed, Period};
use super::span::DateSpan;
use super::steps::StepKind;
use super::store::Filled;
use super::timeline::Step;

/// A value a plan rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct UsedDefault {
    /// Name, as in a case's `[assumptions]`.
    pub name: &'static str,
    /// The value used.
    pub value: f64,
    /// The least that is found in practice or print, where that is known to differ.
    pub low: Option<f64>,
    /// The most.
    pub high: Option<f64>,
    /// Its unit.
    pub unit: &'static str,
    /// How well it is founded.
    pub basis: Option<Basis>,
    /// Where it comes from; `None` where the case gives it.
    pub source: Option<&'static str>,
}

/// A season's plan.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// The case's name.
    pub name: String,
    /// The place's name.
    pub place: String,
    /// The day the plan was asked for, where it was said.
    pub today: Option<NaiveDate>,
    /// The day of the rains that the plan is timed by, or the day they began.
    pub rains: NaiveDate,
    /// What a record says of their onset, until they have begun.
    pub onset_outlook: Option<OnsetOutlook>,
    /// Why then.
    pub rains_why: RainsReason,
    /// The steps in order.
    pub steps: Vec<Step>,
    /// Steps whose days have passed.
    pub overdue: Vec<Overdue>,
    /// The amounts.
    pub amounts: Amounts,
    /// The filled containers, layer by layer.
    pub containers: Vec<Filled>,
    /// The bed.
    pub bed: Bed,
    /// The bed's water, dekad by dekad.
    pub water: Vec<Period>,
    /// The cuts of vines from the bed.
    pub cuts: Vec<Cut>,
    /// The harvest to come.
    pub harvest: Harvest,
    /// What a serving holds, where the variety's carotene is known. Never a promise.
    pub vitamin_a: Option<VitaminA>,
    /// The shares of a group's farms.
    pub farms: Vec<Share>,
    /// A zone's table by field size.
    pub by_field: Vec<FieldSize>,
    /// What waiting with the planting costs and saves, where a rainfall record is known.
    pub planting_delays: Vec<PlantingDelay>,
    /// The checks of the store beside what was to be expected.
    pub store_checks: Vec<Judged>,
    /// By whose figures cuttings are counted.
    pub plan_by: PlanBy,
    /// What must be noticed.
    pub remarks: Vec<Remark>,
    /// The values it rests on.
    pub defaults: Vec<UsedDefault>,
    /// The assumptions, for wordings.
    pub assumptions: Assumptions,
    /// Whom it is for.
    pub kind: Kind,
}

impl Plan {
    /// The day the rains usually begin, or the day they began: what they are said to be expected on.
    pub fn usual_rains(&self) -> NaiveDate {
        self.onset_outlook.map_or(self.rains, |outlook| outlook.days.usual)
    }

    /// From the day on which they may begin to the day by which they have begun in most years; one day
    /// where no more is known, or they began.
    pub fn rains_span(&self) -> DateSpan {
        self.onset_outlook
            .map_or(DateSpan::day(self.rains), |outlook| DateSpan::new(outlook.days.early, outlook.days.late))
    }

    /// The steps of one kind, in order of date.
    pub fn steps_of(&self, kind: StepKind) -> impl Iterator<Item = &Step> {
        self.steps.iter().filter(move |step| step.kind == kind)
    }
}
