//! Days of work, task by task.

use super::amounts::Amounts;
use super::defaults::Assumptions;
use super::growth::{Points, points};
use super::quantities::{AmountReason, Quantity};
use super::units::{SquareMetres, round_up};

/// The field for which the figure of ridging holds, square metres.
const RIDGED_M2: f64 = 300.0;
/// The cuttings for which the other figures hold.
const CUTTINGS: f64 = 1000.0;

/// What is told of work.
pub(super) const QUANTITIES: [Quantity; 6] = [
    Quantity::WorkRidging,
    Quantity::WorkBed,
    Quantity::WorkWatering,
    Quantity::WorkCutting,
    Quantity::WorkPlanting,
    Quantity::WorkTotal,
];

/// Tells the days of work for so many cuttings, and the field that they plant.
pub(super) fn tell(cuttings: u32, field: SquareMetres, a: &Assumptions, amounts: &mut Amounts) {
    let ridging = AmountReason::WorkOnField { area_m2: field, per_m2: RIDGED_M2 };
    let on_cuttings = AmountReason::WorkOnCuttings { cuttings, per: CUTTINGS };
    let thousands = f64::from(cuttings) / CUTTINGS;
    let tasks = [
        (Quantity::WorkRidging, points!(a, ridging_days_per_300_m2), field.0 / RIDGED_M2, ridging),
        (Quantity::WorkBed, points!(a, bed_days_per_1000_cuttings), thousands, on_cuttings.clone()),
        (Quantity::WorkWatering, points!(a, watering_days_per_1000_cuttings), thousands, on_cuttings.clone()),
        (Quantity::WorkCutting, points!(a, cutting_days_per_1000_cuttings), thousands, on_cuttings.clone()),
        (Quantity::WorkPlanting, points!(a, planting_days_per_1000_cuttings), thousands, on_cuttings),
    ];
    let mut sum = Points { low: 0.0, middle: 0.0, high: 0.0 };
    let mut add = |quantity, days: Points, why| {
        let told = |days: f64| round_up(days, 0.1);
        let (low, middle, high) = (told(days.low), told(days.middle), told(days.high));
        if days.is_certain() {
            amounts.add(quantity, middle, why);
        } else {
            amounts.add_range(quantity, middle, (low, high), why);
        }
    };
    for (quantity, days, times, why) in tasks {
        let Points { low, middle, high } = days;
        let days = Points { low: low * times, middle: middle * times, high: high * times };
        sum =
            Points { low: sum.low + days.low, middle: sum.middle + days.middle, high: sum.high + days.high };
        add(quantity, days, why);
    }
    add(Quantity::WorkTotal, sum, AmountReason::WorkTotal);
}
