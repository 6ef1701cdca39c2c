//! The rows of a plan's tables.

use super::variables::number;
use super::{Column, Table, Value, Values, Variable};
use crate::plan::units::{two_figures_up, whole_up};
use crate::plan::{Plan, SquareMetres};

/// The rows that a plan gives a table.
pub(super) fn rows_of(table: Table, plan: &Plan) -> Vec<Values> {
    let count = |column: Column, count: u32| (column.value(), number(f64::from(count), 0));
    let area = |column: Column, area: SquareMetres| (column.value(), number(area.0, 1));
    match table {
        Table::Cuts => plan
            .now
            .cuts
            .iter()
            .map(|cut| {
                let cuttings = cut.cuttings.told();
                vec![
                    (Column::When.value(), Value::Span(cut.when)),
                    count(Column::Cut, cuttings.middle),
                    Variable::Low.number(f64::from(cuttings.low)),
                    Variable::High.number(f64::from(cuttings.high)),
                    area(Column::Area, cut.told_area()),
                ]
            })
            .collect(),
        Table::Ways => plan
            .ways
            .iter()
            .map(|way| {
                let cuttings = way.told();
                vec![
                    (Column::Way.value(), Value::Name(way.kind.name())),
                    count(Column::Cut, cuttings.middle),
                    Variable::Low.number(f64::from(cuttings.low)),
                    Variable::High.number(f64::from(cuttings.high)),
                    count(Column::Water, two_figures_up(whole_up(way.water.0))),
                    count(Column::Trips, two_figures_up(way.trips)),
                ]
            })
            .collect(),
        Table::Shares => plan
            .now
            .farms
            .iter()
            .map(|farm| {
                vec![
                    (Column::Farm.value(), Value::Text(farm.name.clone())),
                    area(Column::Area, farm.area),
                    count(Column::Cuttings, farm.cuttings),
                    count(Column::Plants, farm.plants),
                    count(Column::Roots, farm.roots),
                ]
            })
            .collect(),
        Table::FieldSizes => plan
            .now
            .by_field
            .iter()
            .map(|row| {
                vec![
                    area(Column::Area, row.area),
                    count(Column::Cuttings, row.cuttings),
                    count(Column::Roots, row.roots),
                    count(Column::Plants, row.plants),
                    area(Column::Bed, row.bed),
                    count(Column::Jerrycans, row.jerrycans_per_day),
                ]
            })
            .collect(),
        Table::PlantLater => plan
            .planting_delays
            .iter()
            .map(|row| {
                let mut values = vec![Variable::Years.number(row.planted_years as f64)];
                let failed = row.false_start_share.map(|share| share * row.planted_years as f64);
                let day = row.from.nearest(plan.rains);
                values.extend(day.map(|day| (Column::From.value(), Value::Date(day))));
                values.extend(failed.map(|failed| (Column::FalseStarts.value(), number(failed, 0))));
                values.extend(
                    row.median_days_left.map(|days| (Column::DaysLeft.value(), number(days.floor(), 0))),
                );
                values
            })
            .collect(),
    }
}
