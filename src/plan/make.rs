//! From a case to its plan.

use chrono::NaiveDate;

use super::case::{Case, Kind};
use super::planned::Plan;
use super::quantities::Quantity;
use super::remarks::{Refusal, Remark};
use super::season::{self, DryGap, ExpectedRains, Rains, RainsReason};
use super::span::DateSpan;
use super::standing::work_done;
use super::state::{State, first_day};
use super::steps::StepKind;
use super::store::Packings;
use super::timeline::SeasonInputs;
use super::{advice, after, overdue, progress, ways};

/// Makes plans, and keeps what they share: a layer of one container is packed once for all of them.
#[derive(Debug, std::default::Default)]
pub struct Planner {
    packings: Packings,
}

/// Computes the plan of one case.
///
/// ```
/// use kabla::plan::{self, Quantity};
///
/// # let no_files = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
/// # let (case, _) = kabla::case::read("farm.toml", kabla::case::Starter::Farm.text(), &no_files).unwrap();
/// let plan = plan::make(&case)?;
/// assert_eq!(plan.now.amounts.get(Quantity::RootsToStore), Some(95.0));
/// # Ok::<(), plan::Refusal>(())
/// ```
///
/// # Errors
/// As [`Planner::plan`].
pub fn make(case: &Case) -> Result<Plan, Refusal> {
    Planner::default().plan(case)
}

impl Planner {
    /// Computes the plan of a case.
    ///
    /// # Errors
    /// The case leaves no plan to make: no onset in the record, roots that would lie in sand for too long, or no root
    /// that fits into any container.
    pub fn plan(&mut self, case: &Case) -> Result<Plan, Refusal> {
        let a = &case.assumptions;
        let Some(rains) = season::expect(&case.rains, case.risk, case.harvest, a) else {
            return Err(Refusal::NoOnset);
        };
        let inputs = SeasonInputs {
            harvest: DateSpan::new(case.harvest, last_harvest(case)),
            rains,
            began: None,
            maturity: case.variety.days(a),
            spread: case.kind == Kind::Zone,
            work_done: None,
            checks: &[],
        };
        let (planned, of_planned) = State::of(case, &inputs, None, &mut self.packings)?;
        let filled = first_day(&planned.steps, StepKind::FillContainer).unwrap_or(case.harvest);
        let bedded = first_day(&planned.steps, StepKind::PlantBed).unwrap_or(case.harvest);
        refuse_long_storage(case, (filled, bedded), rains.onset)?;

        let mut remarks = season::remarks(&case.rains, rains, a);
        remarks.extend(rains_may_be_late(case, rains));
        remarks.extend(storing_not_needed(case, rains));
        let stored = planned.amounts.get(Quantity::RootsToStore).unwrap_or_default() as u32;
        let (checks, of_checks) = progress::judge(&case.store_checks, (filled, stored), a);
        let work_done = work_done(case);
        let (now, of_now, planned) = if work_done.is_some() || case.rains_began.is_some() {
            let inputs = SeasonInputs { began: case.rains_began, work_done, checks: &checks, ..inputs };
            let (now, remarks) = State::of(case, &inputs, Some(&planned), &mut self.packings)?;
            (now, remarks, Some(planned))
        } else {
            (planned, of_planned, None)
        };
        let first_cut = planned.as_ref().unwrap_or(&now).amounts.get(Quantity::CuttingsAtFirstCut);
        let began = SeasonInputs { began: case.rains_began, ..inputs };
        let overdue = overdue::late(case, &began, first_cut.unwrap_or_default() as u32, &mut remarks);
        remarks.extend(of_checks);
        remarks.extend(of_now);
        let dry = |of: &Remark| matches!(of, Remark::WaterShort { .. } | Remark::WaterLimits { .. });
        let dry = remarks.iter().any(dry);
        let ways = match (case.store_checks.last(), case.rains_began) {
            (_, Some(_)) => Vec::new(),
            (Some(check), None) => {
                let today = case.today.unwrap_or(check.date).max(check.date);
                ways::to_rescue(case, &now, today, rains.onset)
            }
            (None, None) if planned.is_none() => ways::to_plant(case, &now, rains.onset, dry),
            (None, None) => Vec::new(),
        };
        let advice = advice::advice(case, &now);
        Ok(Plan {
            name: case.name.clone(),
            place: case.place.name.clone(),
            today: case.today,
            rains: case.rains_began.unwrap_or(rains.onset),
            onset_outlook: match case.rains_began {
                Some(_) => None,
                None => season::onset_outlook(&case.rains, rains),
            },
            rains_why: match case.rains_began {
                Some(_) => RainsReason::Begun { expected: rains.onset },
                None => season::reason(&case.rains, rains, case.risk, a),
            },
            now,
            planned,
            together: None,
            overdue,
            vitamin_a: after::vitamin_a(&case.variety, a),
            planting_delays: match &case.rains {
                Rains::Observed(observed) => observed.planting_delays.clone(),
                Rains::Usual(_) | Rains::On(_) => Vec::new(),
            },
            store_checks: checks,
            ways,
            advice,
            plan_by: case.plan_by,
            remarks,
            assumptions: a.clone(),
            kind: case.kind,
        })
    }
}

/// Who plans by the early day may wait for the late one. Nothing is said of it once the rains are there.
fn rains_may_be_late(case: &Case, rains: ExpectedRains) -> Option<Remark> {
    let ExpectedRains { onset, late, .. } = rains;
    (case.rains_began.is_none() && late > onset).then_some(Remark::RainsMayBeLate { onset, late })
}

/// Vines live through a short dry time. Nothing is said of it once roots are in the sand, or the rains are there.
fn storing_not_needed(case: &Case, rains: ExpectedRains) -> Option<Remark> {
    let stored = !case.store_checks.is_empty() || case.done >= Some(StepKind::FillContainer);
    let DryGap { from, days, two_seasons } = DryGap::of(&case.rains, rains, case.harvest);
    let kept_days = case.assumptions.vines_kept_days;
    if stored || case.rains_began.is_some() || days as f64 > kept_days {
        return None;
    }
    let days = u32::try_from(days).unwrap_or(0);
    let two_seasons = if two_seasons { "yes" } else { "no" };
    Some(Remark::StoringNotNeeded { days, from, rains: rains.late, kept_days, two_seasons })
}

/// Roots that would lie in sand for most of a year: the harvest is a slip of the pen, or nothing is to be stored.
fn refuse_long_storage(
    case: &Case,
    (filled, bed): (NaiveDate, NaiveDate),
    rains: NaiveDate,
) -> Result<(), Refusal> {
    let days = u32::try_from((bed - filled).num_days()).unwrap_or(0);
    let most_days = case.assumptions.storage_most_days;
    if f64::from(days) <= most_days {
        return Ok(());
    }
    Err(Refusal::StoredTooLong { days, most_days, harvest: case.harvest, bed, rains })
}

/// The last day of the harvest: in a zone nobody digs on the same day.
fn last_harvest(case: &Case) -> NaiveDate {
    let usual = || match case.kind {
        Kind::Zone => {
            let days = case.assumptions.zone_span_days.round().max(1.0) as u64 - 1;
            case.harvest.checked_add_days(chrono::Days::new(days)).unwrap_or(case.harvest)
        }
        Kind::Farm | Kind::Group { .. } => case.harvest,
    };
    case.harvest_until.unwrap_or_else(usual).max(case.harvest)
}
