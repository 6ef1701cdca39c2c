//! The bed and its water, as amounts.

use chrono::NaiveDate;

use super::amounts::Amounts;
use super::case::Case;
use super::quantities::{AmountReason, Quantity};
use super::remarks::Remark;
use super::seedbed::{self, Bed, Climate, Period, Source};
use super::span::DateSpan;
use super::units::{Celsius, SquareMetres, whole_up};

/// Tells the bed that is planted on `planted`, and what water it needs in the days of `span`.
pub(super) fn water(
    case: &Case,
    bed: &Bed,
    (planted, span): (NaiveDate, DateSpan),
    amounts: &mut Amounts,
    remarks: &mut Vec<Remark>,
) -> Vec<Period> {
    let a = &case.assumptions;
    let per_root_m2 = a.bed_area_per_root_m2;
    amounts.add(Quantity::BedArea, bed.area.0, AmountReason::BedArea { per_root_m2 });
    amounts.add(Quantity::BedLength, bed.length.0, AmountReason::BedLength);
    amounts.add(Quantity::BedWidth, bed.width.0, AmountReason::BedWidth { most_m: a.bed_width_m });
    amounts.add(Quantity::BedRows, bed.rows, AmountReason::BedRows { between_cm: bed.between_rows });
    amounts.add(
        Quantity::RootsPerBedRow,
        bed.roots_per_row,
        AmountReason::RootsPerBedRow { along_cm: bed.along_row },
    );
    let assumed;
    let climate = match &case.climate {
        Some(climate) => climate,
        None => {
            let (day_c, night_c) = (Celsius(a.dry_season_tmax_c), Celsius(a.dry_season_tmin_c));
            remarks.push(Remark::NoTemperatures { day_c, night_c });
            assumed = Climate::constant(day_c, night_c);
            &assumed
        }
    };
    let periods = seedbed::schedule(bed, &case.place, climate, (planted, span), a);
    let thirstiest = periods.iter().fold(None, |most: Option<&Period>, period| match most {
        Some(most) if most.daily.0 >= period.daily.0 => Some(most),
        _ => Some(period),
    });
    if let Some(most) = thirstiest {
        // As exact as the weather is known.
        let rounded = |value: f64, scale: f64| (value * scale).round() / scale;
        amounts.add(
            Quantity::WaterPerDay,
            most.daily.0,
            AmountReason::WaterPerDay {
                from: most.when.from,
                bed_m2: bed.area,
                kc: rounded(most.kc, 100.0),
                et0_mm: rounded(most.et0.0, 10.0),
                method: climate.method(),
                rain_mm: rounded(most.rain.0, 10.0),
                reaching: (a.watering_efficiency * 100.0).round(),
            },
        );
        let each = |litres: f64| whole_up(most.daily.0 / litres);
        let (jerrycan, trip) = (a.jerrycan_l, a.litres_per_trip);
        amounts.add(
            Quantity::JerrycansPerDay,
            each(jerrycan),
            AmountReason::JerrycansPerDay { litres: jerrycan },
        );
        amounts.add(Quantity::TripsPerDay, each(trip), AmountReason::TripsPerDay { litres: trip });
        amounts.add(
            Quantity::WaterTotal,
            periods.iter().map(|period| period.total().0).sum::<f64>(),
            AmountReason::WaterTotal { from: span.from, to: span.to },
        );
    }
    remarks.extend(case.source.as_ref().and_then(|source| dry_source(source, &periods, bed)));
    periods
}

/// A remark where the source named cannot give the bed's water.
fn dry_source(source: &Source, periods: &[Period], bed: &Bed) -> Option<Remark> {
    let short = source.shortage(periods)?;
    Some(Remark::WaterShort {
        source: source.name.clone(),
        from: short.first.from,
        gives: (short.share * 100.0).floor(),
        bed_m2: SquareMetres((bed.area.0 * short.share * 10.0).round() / 10.0),
    })
}
