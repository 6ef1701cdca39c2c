//! A plan: what comes of a case.

use chrono::NaiveDate;

use super::advice::Advice;
use super::after::VitaminA;
use super::case::Kind;
use super::defaults::{Assumptions, Basis, Default};
use super::growth::PlanBy;
use super::overdue::Overdue;
use super::progress::Judged;
use super::remarks::Remark;
use super::season::{OnsetOutlook, PlantingDelay, RainsReason};
use super::span::DateSpan;
use super::state::State;
use super::ways::Way;

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

/// The season of the group that a farm is of.
#[derive(Debug, Clone, PartialEq)]
pub struct Together {
    /// The group's name.
    pub name: String,
    /// Its season as it stands.
    pub now: State,
    /// Its season as it was planned, where it stands otherwise.
    pub planned: Option<State>,
    /// What must be noticed of it.
    pub remarks: Vec<Remark>,
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
    /// The season as it stands: counted from what is done, from the roots that are left and the rains that came.
    pub now: State,
    /// The season as it was planned, where it stands otherwise.
    pub planned: Option<State>,
    /// The group's season, where the plan is that of one of its farms.
    pub together: Option<Together>,
    /// Steps whose days have passed.
    pub overdue: Vec<Overdue>,
    /// What a serving holds, where the variety's carotene is known. Never a promise.
    pub vitamin_a: Option<VitaminA>,
    /// What waiting with the planting costs and saves, where a rainfall record is known.
    pub planting_delays: Vec<PlantingDelay>,
    /// The checks of the store beside what was to be expected.
    pub store_checks: Vec<Judged>,
    /// What is good to know beside the steps that are not done.
    pub advice: Vec<Advice>,
    /// Ways to have cuttings when the rains come, beside each other: for a large field, little water, or a store
    /// that keeps too few roots.
    pub ways: Vec<Way>,
    /// By whose figures cuttings are counted.
    pub plan_by: PlanBy,
    /// What must be noticed.
    pub remarks: Vec<Remark>,
    /// The values it rests on.
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

    /// The values it rests on, each with where it comes from.
    pub fn defaults(&self) -> Vec<UsedDefault> {
        let used = |(entry, value): (&Default, f64)| {
            let kept = value == entry.value;
            let range = entry.range.filter(|_| kept);
            UsedDefault {
                name: entry.name,
                value,
                low: range.map(|(low, _)| low),
                high: range.map(|(_, high)| high),
                unit: entry.unit,
                basis: kept.then_some(entry.basis),
                source: kept.then_some(entry.source),
            }
        };
        Assumptions::TABLE.iter().zip(self.assumptions.values()).map(used).collect()
    }

    /// The season as it was planned.
    pub fn planned(&self) -> &State {
        self.planned.as_ref().unwrap_or(&self.now)
    }
}
