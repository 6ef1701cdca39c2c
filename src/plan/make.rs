//! From a case to its plan.

use chrono::NaiveDate;

use super::amounts::Amounts;
use super::case::{Case, Kind};
use super::defaults::{Assumptions, Default};
use super::growth::days_in_bed;
use super::limits::Means;
use super::multiply::{self, Cuttings, Part, Rate, Unknown, months_between};
use super::overdue::Kept;
use super::planned::{Plan, UsedDefault};
use super::remarks::Refusal;
use super::season::{self, Rains, RainsReason};
use super::seedbed::Bed;
use super::size::{Demand, Sized, Stored};
use super::span::DateSpan;
use super::steps::StepKind;
use super::store::Packings;
use super::timeline::{SeasonInputs, Step, WorkDone, lay_out};
use super::units::whole_down;
use super::{after, bed, fill, group, replan, work};

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
/// assert_eq!(plan.amounts.get(Quantity::RootsToStore), Some(95.0));
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
        let mut remarks = season::remarks(&case.rains, case.risk, case.harvest, a);
        let inputs = SeasonInputs {
            harvest: DateSpan::new(case.harvest, last_harvest(case)),
            rains,
            began: case.rains_began,
            maturity: case.variety.days(a),
            spread: case.kind == Kind::Zone,
            work_done: None,
        };
        let planned = lay_out(&inputs, a);
        let work_done = case.today.zip(case.done).map(|(today, done)| WorkDone { today, done: Some(done) });
        let now = match work_done {
            Some(_) => lay_out(&SeasonInputs { work_done, ..inputs }, a),
            None => planned.clone(),
        };
        let first_day = |steps: &[Step], kind| {
            steps.iter().find(|step| step.kind == kind).map_or(case.harvest, |step| step.when.from)
        };
        // Survival is not known to the week: it is counted in whole months. Most losses come early,
        // so a storage shorter than that of the evidence counts as long.
        let filled = first_day(&planned.steps, StepKind::FillContainer);
        let bedded = first_day(&planned.steps, StepKind::PlantBed);
        refuse_long_storage(case, (filled, bedded), rains.onset)?;
        let months = months_between(filled, bedded).round();
        let months = months.max(a.survival_months);

        let days = days_in_bed(&planned.steps, a);
        let rate = Rate::of(case.plan_by, months, days, a);
        let stored = Stored { months, days, rate: &rate };

        let mut amounts = Amounts(Vec::with_capacity(32));
        let demand = Demand::of(case);
        let watered = planned.steps.iter().find(|step| step.kind == StepKind::WaterBed);
        let watered = watered.map_or(DateSpan::day(case.harvest), |step| step.when);
        let means = Means::of(case, watered, &mut self.packings);
        let sized = Sized::of(case, demand, stored, means, &mut amounts, &mut remarks)?;
        let store = fill::fill(case, sized.roots, &mut self.packings, &mut amounts, &mut remarks)?;
        let overdue = replan::late(case, &inputs, &planned.steps, sized.first.middle, &mut remarks);
        let in_store = (first_day(&now.steps, StepKind::FillContainer), sized.roots);
        let bed_day = first_day(&now.steps, StepKind::PlantBed);
        let days_now = days_in_bed(&now.steps, a);
        let rate_now = Rate::of(case.plan_by, months, days_now, a);
        let in_bed = (bed_day, days_now, &rate_now);
        let (store_checks, bedded) =
            replan::after_checks(case, in_store, in_bed, sized.demand, &mut amounts, &mut remarks);
        let bed = Bed::for_roots(bedded.as_ref().map_or(sized.roots, |bedded| bedded.roots), a);
        let span = |kind| {
            let step = now.steps.iter().find(|step| step.kind == kind);
            step.map_or(DateSpan::day(case.harvest), |step| step.when)
        };
        let water = bed::water(case, &bed, span(StepKind::WaterBed), &mut amounts, &mut remarks);
        remarks.extend(now.remarks);
        let cutting = span(StepKind::CutForPlanting);
        let cuttings = bedded.map_or_else(
            || {
                let kept = Kept::of(&planned.steps, &now.steps, case.plan_by, a);
                let (first, season) = (sized.first.middle, sized.season.middle);
                let left = |planned: u32, part, share: f64| {
                    let exact = f64::from(sized.roots) * rate.per_stored(part) * share;
                    let middle = whole_down(f64::from(planned) * share);
                    Cuttings { middle, ..rate_now.ranged(exact, part, Unknown::Survival) }
                };
                let later = left(season.saturating_sub(first), Part::Later, kept.roots);
                (left(first, Part::First, kept.first()), later)
            },
            |bedded| (bedded.first, bedded.later),
        );
        let area = sized.demand.map(|_| sized.planted.area);
        work::tell(sized.planted.cuttings, sized.planted.area, a, &mut amounts);
        let peak = water.iter().map(|period| period.daily.0).fold(0.0, f64::max);
        let by_field = match case.kind {
            Kind::Zone if bed.area.0 > 0.0 => {
                group::by_field(&case.field_sizes, case.spacing(), (case.sizing, &rate), peak / bed.area.0, a)
            }
            _ => Vec::new(),
        };
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
            overdue,
            cuts: multiply::cuts(cutting, cuttings, case.spacing().density() * (1.0 + a.gap_share), a),
            harvest: after::harvest(cutting, area, &case.variety, a),
            vitamin_a: after::vitamin_a(&case.variety, a),
            farms: group::shares(&case.farms, (sized.roots, sized.plants), a),
            by_field,
            planting_delays: match &case.rains {
                Rains::Observed(observed) => observed.planting_delays.clone(),
                Rains::Usual(_) | Rains::On(_) => Vec::new(),
            },
            steps: now.steps,
            amounts,
            containers: store.filled,
            bed,
            water,
            store_checks,
            plan_by: case.plan_by,
            remarks,
            defaults: used(a),
            assumptions: a.clone(),
            kind: case.kind,
        })
    }
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

fn used(assumptions: &Assumptions) -> Vec<UsedDefault> {
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
    Assumptions::TABLE.iter().zip(assumptions.values()).map(used).collect()
}
