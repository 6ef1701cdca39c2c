//! The season as it is expected to go: its dates, and every amount counted from the roots that there are.

use chrono::NaiveDate;

use super::after::{self, Harvest};
use super::amounts::Amounts;
use super::bed::{self, Watering};
use super::case::{Case, Kind};
use super::defaults::Assumptions;
use super::group::{self, FieldSize, Share};
use super::in_time::{InTime, LateCut};
use super::limits::Means;
use super::multiply::{self, Cut, Rate, months_between};
use super::progress;
use super::quantities::Quantity;
use super::remarks::{Refusal, Remark};
use super::season::RainsLength;
use super::seedbed::{Bed, Period};
use super::size::{Demand, Roots, Sized, Stored};
use super::span::DateSpan;
use super::steps::StepKind;
use super::store::{Filled, Packings};
use super::timeline::{SeasonInputs, Step, Timeline, lay_out};
use super::units::SquareMetres;
use super::{fill, work};

/// A season: as it was planned, or as it stands.
#[derive(Debug, Clone, PartialEq)]
pub struct State {
    /// The steps in order.
    pub steps: Vec<Step>,
    /// The amounts.
    pub amounts: Amounts,
    /// The filled containers, layer by layer.
    pub containers: Vec<Filled>,
    /// The bed.
    pub bed: Bed,
    /// The bed's water, dekad by dekad.
    pub water: Vec<Period>,
    /// The cuts of vines from the bed that are counted on.
    pub cuts: Vec<Cut>,
    /// Those that are not: what they plant is not ripe before the rains end.
    pub late_cuts: Vec<LateCut>,
    /// How long the rains last, where that is known.
    pub rains_length: Option<RainsLength>,
    /// The harvest to come.
    pub harvest: Harvest,
    /// The shares of a group's farms.
    pub farms: Vec<Share>,
    /// A zone's table by field size.
    pub by_field: Vec<FieldSize>,
}

impl State {
    /// The steps of one kind, in order of date.
    pub fn steps_of(&self, kind: StepKind) -> impl Iterator<Item = &Step> {
        self.steps.iter().filter(move |step| step.kind == kind)
    }

    /// The season of a case by these inputs, and what must be noticed of it. Beside `planned` it is counted from
    /// what is left of that.
    ///
    /// # Errors
    /// No root fits into any container.
    pub(super) fn of(
        case: &Case,
        inputs: &SeasonInputs<'_>,
        planned: Option<&State>,
        packings: &mut Packings,
    ) -> Result<(State, Vec<Remark>), Refusal> {
        let a = &case.assumptions;
        let Timeline { steps, remarks: of_dates } = lay_out(inputs, a);
        let (mut amounts, mut remarks) = (Amounts(Vec::with_capacity(32)), Vec::new());
        let bed_day = first_day(&steps, StepKind::PlantBed).unwrap_or(case.harvest);
        let months = months_in_sand(&steps, planned, a);
        let days = days_in_bed(&steps, a);
        let span = |kind| {
            let step = steps.iter().find(|step| step.kind == kind);
            step.map_or(DateSpan::day(case.harvest), |step| step.when)
        };
        let in_time = InTime::of(case, inputs, span(StepKind::CutForPlanting));
        let rate = Rate::of(case.plan_by, months, days, a).counting(in_time.count());
        let stored = Stored { months, bed: bed_day, days, rate: &rate };
        let roots = roots_of(case, planned, bed_day);
        let watering = Watering::of(case, (bed_day, watered(inputs, span(StepKind::WaterBed))));
        let means = Means { watering: &watering, packings };
        let sized = Sized::of(case, (roots, stored), means, &mut amounts, &mut remarks)?;
        let store = fill::fill(case, sized.roots, packings, &mut amounts, &mut remarks)?;
        let bed = Bed::for_roots(sized.bedded, a);
        let water = bed::water(case, &bed, &watering, &mut amounts, &mut remarks);
        remarks.extend(of_dates);
        let waits = sized.demand.is_none_or(|demand| sized.first.middle < demand.cuttings);
        remarks.extend(in_time.remarks(case, inputs, waits));
        let cutting = span(StepKind::CutForPlanting);
        let by_field = match case.kind {
            Kind::Zone if bed.area.0 > 0.0 => {
                let each = watering.peak(bed.area) / bed.area.0;
                group::by_field(&case.field_sizes, case.spacing(), (case.sizing, &rate), each, a)
            }
            _ => Vec::new(),
        };
        let planted = sized.demand.map(|demand| demand.planted_area(sized.season.middle));
        // Farms of a group differ in how densely they plant.
        let usual = case.spacing().density() * (1.0 + a.gap_share);
        let density = Demand::of(case).map_or(usual, |demand| demand.density());
        let cuttings = sized.season.middle.min(sized.demand.map_or(u32::MAX, |demand| demand.cuttings));
        let field = planted.unwrap_or(SquareMetres(f64::from(cuttings) / density));
        work::tell(cuttings, field, a, &mut amounts);
        let state = State {
            cuts: multiply::cuts(in_time.counted(), (sized.first, sized.later), density),
            late_cuts: in_time.late(),
            rains_length: in_time.length(),
            // Nothing is told of a yield that does not ripen in most years, or of none.
            harvest: after::harvest(
                cutting,
                planted.filter(|area| area.0 > 0.0 && in_time.first_ripens(a)),
                &case.variety,
                a,
            ),
            farms: group::shares(&case.farms, (sized.roots, sized.plants), a),
            by_field,
            steps,
            amounts,
            containers: store.filled,
            bed,
            water,
        };
        Ok((state, remarks))
    }
}

/// The first day of a step.
pub(super) fn first_day(steps: &[Step], kind: StepKind) -> Option<NaiveDate> {
    steps.iter().filter(|step| step.kind == kind).map(|step| step.when.from).min()
}

/// Days from the first roots in the bed to the first cut of vines.
pub(super) fn days_in_bed(steps: &[Step], assumptions: &Assumptions) -> f64 {
    let days = first_day(steps, StepKind::PlantBed).zip(first_day(steps, StepKind::CutForPlanting));
    let days = days.map_or(0.0, |(bed, cut)| (cut - bed).num_days() as f64);
    days.max(assumptions.first_cut_days_after_bed.round())
}

/// Months in the sand, exactly.
fn months_exactly(steps: &[Step]) -> f64 {
    let days = first_day(steps, StepKind::FillContainer).zip(first_day(steps, StepKind::PlantBed));
    days.map_or(0.0, |(fill, bed)| months_between(fill, bed))
}

/// Survival is not known to the week: as planned it is counted in whole months, and a delay is added. Most losses
/// come early, so a storage shorter than that of the evidence counts as long.
fn months_in_sand(steps: &[Step], planned: Option<&State>, assumptions: &Assumptions) -> f64 {
    let now = months_exactly(steps);
    let as_planned = planned.map_or(now, |planned| months_exactly(&planned.steps));
    as_planned.round().max(assumptions.survival_months) + (now - as_planned).max(0.0)
}

/// Where the roots stand: once anything is known of the season, plants are marked.
fn roots_of<'a>(case: &Case, planned: Option<&'a State>, bed: NaiveDate) -> Roots<'a> {
    let Some(planned) = planned else { return Roots::ToChoose };
    let stored = planned.amounts.get(Quantity::RootsToStore).unwrap_or_default() as u32;
    let filled = first_day(&planned.steps, StepKind::FillContainer).unwrap_or(case.harvest);
    match progress::ahead(&case.store_checks, (filled, stored), bed, &case.assumptions) {
        Some(progress) => Roots::Left(&planned.amounts, progress),
        None => Roots::Marked(&planned.amounts),
    }
}

/// The days on which the bed is still to be watered: from today, once it is planted.
fn watered(inputs: &SeasonInputs<'_>, whole: DateSpan) -> DateSpan {
    match inputs.work_done {
        Some(work) if work.done == Some(StepKind::PlantBed) => {
            DateSpan::new(whole.from.max(work.today), whole.to.max(work.today))
        }
        _ => whole,
    }
}
