//! When things went otherwise: work that is late, and what the checks of the store found.

use chrono::NaiveDate;

use super::amounts::Amounts;
use super::case::Case;
use super::multiply::{self, Sizing};
use super::overdue::{self, Overdue};
use super::progress::{self, Judged};
use super::quantities::{AmountReason, Quantity};
use super::remarks::Remark;
use super::size::Demand;
use super::steps::StepKind;
use super::timeline::{SeasonInputs, Step};
use super::units::whole_down;

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
    let overdue = overdue::find(inputs, planned, today, (done, certain), first_cut, &case.assumptions);
    if let Some(worst) = overdue.iter().filter(|step| step.certain).max_by_key(|step| step.days_later) {
        remarks.push(Remark::LateWork {
            steps: u32::try_from(overdue.len()).unwrap_or(u32::MAX),
            today,
            field_from: worst.field_from,
            days_later: worst.days_later,
            fewer: worst.cuttings_fewer,
        });
    }
    overdue
}

/// From what the checks found to what the bed will give, and what can still be
/// done. Returns the judged checks, and the roots that the bed is made for, where checks are known.
pub(super) fn after_checks(
    case: &Case,
    in_store: (NaiveDate, u32),
    bed: NaiveDate,
    demand: Option<Demand>,
    amounts: &mut Amounts,
    remarks: &mut Vec<Remark>,
) -> (Vec<Judged>, Option<u32>) {
    let a = &case.assumptions;
    let Some(progress) = progress::assess(&case.store_checks, in_store, bed, a) else {
        return (Vec::new(), None);
    };
    remarks.extend(progress.remarks);
    let give = |sizing| whole_down(f64::from(progress.sprouting) * multiply::per_sprouted(sizing, a));
    let (first, season) = (give(Sizing::FirstPlanting), give(Sizing::BedSeason));
    let left = progress.left;
    amounts.add(Quantity::RootsLeft, left, AmountReason::RootsLeft);
    amounts.add(Quantity::RootsAtBed, progress.at_bed, AmountReason::RootsAtBed { left, bed });
    amounts.add(
        Quantity::CuttingsExpected,
        first,
        AmountReason::CuttingsExpected {
            sprouting: progress.sprouting,
            per_root: a.cuttings_per_root_first_cut,
        },
    );
    if let Some(demand) = demand {
        let cuttings = demand.cuttings;
        let short = cuttings.saturating_sub(first);
        amounts.add(
            Quantity::CuttingsShort,
            short,
            AmountReason::CuttingsShort { cuttings, expected: first },
        );
        remarks.push(match short {
            0 => Remark::Enough { spare: first - cuttings },
            short => Remark::CuttingsShort {
                short,
                cuttings,
                area_m2: demand.planted_by(first).round(),
                field_m2: demand.area.0.round(),
                least_days: a.next_cut_days_first,
                most_days: a.next_cut_days_last,
                still_short: cuttings.saturating_sub(season),
            },
        });
    }
    (progress.checks, Some(progress.at_bed))
}
