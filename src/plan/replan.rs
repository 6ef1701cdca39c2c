//! When things went otherwise: work that is late, and what the checks of the store found.

use chrono::NaiveDate;

use super::amounts::Amounts;
use super::case::Case;
use super::multiply::{Cuttings, Part, Rate, Unknown};
use super::overdue::{self, Overdue};
use super::progress::{self, Judged};
use super::quantities::{AmountReason, Quantity};
use super::remarks::Remark;
use super::size::Demand;
use super::steps::StepKind;
use super::timeline::{SeasonInputs, Step};
use super::units::{tenths, two_figures_down, two_figures_up};

/// The steps whose days have passed. What the checks of the store show done, is done.
pub(super) fn late(
    case: &Case,
    inputs: &SeasonInputs,
    planned: &[Step],
    first_cut: u32,
    remarks: &mut Vec<Remark>,
) -> Vec<Overdue> {
    let Some(today) = case.today else { return Vec::new() };
    let certain = case.done.is_some();
    let shown = match case.store_checks.last() {
        Some(check) if check.sprouted.is_some() => Some(StepKind::LastCheck),
        Some(_) => Some(StepKind::FillContainer),
        None => None,
    };
    let done = case.done.max(shown);
    let asked = overdue::Asked { today, done, certain, first_cut, by: case.plan_by };
    let overdue = overdue::find(inputs, planned, asked, &case.assumptions);
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

/// What the bed will give, by what the checks of the store found.
pub(super) struct Bedded {
    /// Roots that the bed is made for.
    pub(super) roots: u32,
    /// Cuttings of the first cut.
    pub(super) first: Cuttings,
    /// Cuttings of all cuts after it.
    pub(super) later: Cuttings,
}

/// From what the checks found to what the bed will give, and what can still be done: the judged checks,
/// and the bed where checks are known. `days` are those in the bed until the first cut.
pub(super) fn after_checks(
    case: &Case,
    in_store: (NaiveDate, u32),
    (bed, days, rate): (NaiveDate, f64, &Rate),
    demand: Option<Demand>,
    amounts: &mut Amounts,
    remarks: &mut Vec<Remark>,
) -> (Vec<Judged>, Option<Bedded>) {
    let a = &case.assumptions;
    let Some(progress) = progress::assess(&case.store_checks, in_store, bed, rate.sprouting(), a) else {
        return (Vec::new(), None);
    };
    remarks.extend(progress.remarks);
    let counted = case.store_checks.last().is_some_and(|check| check.sprouted.is_some());
    let unknown = if counted { Unknown::Nothing } else { Unknown::Survival };
    let give =
        |part: Part| rate.ranged(f64::from(progress.sprouting) * rate.per_sprouted(part), part, unknown);
    let (first, later) = (give(Part::First), give(Part::Later));
    let left = progress.left;
    amounts.add(Quantity::RootsLeft, left, AmountReason::RootsLeft);
    amounts.add(Quantity::RootsAtBed, progress.at_bed, AmountReason::RootsAtBed { left, bed });
    amounts.add_cuttings(
        Quantity::CuttingsExpected,
        first,
        AmountReason::CuttingsExpected {
            sprouting: progress.sprouting,
            per_root: tenths(rate.per_sprouted(Part::First)),
            days,
        },
    );
    if let Some(demand) = demand {
        let cuttings = demand.cuttings;
        let short = cuttings.saturating_sub(first.middle);
        amounts.add(
            Quantity::CuttingsShort,
            short,
            AmountReason::CuttingsShort { cuttings, expected: first.middle },
        );
        let season = give(Part::Season).middle;
        remarks.push(match short {
            0 => Remark::Enough { spare: two_figures_down(first.middle - cuttings) },
            short => Remark::CuttingsShort {
                short: two_figures_up(short),
                cuttings,
                area_m2: demand.planted_by(first.middle).floor(),
                field_m2: demand.area.0.round(),
                least_days: a.next_cut_days_first,
                most_days: a.next_cut_days_last,
                still_short: two_figures_up(cuttings.saturating_sub(season)),
            },
        });
    }
    (progress.checks, Some(Bedded { roots: progress.at_bed, first, later }))
}
