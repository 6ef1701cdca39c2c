//! The bed and its water, as amounts.

use chrono::NaiveDate;

use super::amounts::Amounts;
use super::case::{Case, Hands};
use super::defaults::Assumptions;
use super::quantities::{AmountReason, Quantity};
use super::remarks::Remark;
use super::seedbed::{self, Bed, Period, Source};
use super::span::DateSpan;
use super::units::{Celsius, SquareMetres, round_up, tenths_down, whole_down, whole_up};

/// The water that a bed of roots takes, of whatever size.
pub(super) struct Watering {
    per_square_metre: Vec<Period>,
    /// The one in which it takes most.
    thirstiest: Option<Period>,
    /// Whether it begins before shoots show.
    bare: bool,
}

impl Watering {
    /// Of a bed that is planted on `planted`, in the days of `span`.
    pub(super) fn of(case: &Case, (planted, span): (NaiveDate, DateSpan)) -> Watering {
        let a = &case.assumptions;
        let (area, soil) = (SquareMetres(1.0), Some(case.soil.unwrap_or_default()));
        let climate = case.climate_or_usual();
        let per_square_metre: Vec<Period> =
            seedbed::schedule(area, &case.place, &climate, (planted, span), soil, a).collect();
        let depth = |period: &Period| period.depth.0;
        let thirstiest = per_square_metre.iter().max_by(|one, other| depth(one).total_cmp(&depth(other)));
        Watering {
            thirstiest: thirstiest.copied(),
            per_square_metre,
            bare: span.from < seedbed::shoots_on(planted, a),
        }
    }

    /// What a bed of so large an area takes, dekad by dekad.
    pub(super) fn on(&self, area: SquareMetres) -> impl Iterator<Item = Period> {
        self.per_square_metre.iter().map(move |period| period.on(area))
    }

    /// Litres a day when it takes most.
    pub(super) fn peak(&self, area: SquareMetres) -> f64 {
        self.thirstiest.map_or(0.0, |period| period.on(area).daily.0)
    }
}

/// Tells the bed, and what water it needs.
pub(super) fn water(
    case: &Case,
    bed: &Bed,
    watering: &Watering,
    amounts: &mut Amounts,
    remarks: &mut Vec<Remark>,
) -> Vec<Period> {
    tell_strips(bed, &case.assumptions, amounts);
    if case.climate.is_none() {
        remarks.push(Remark::NoTemperatures {
            day_c: Celsius(case.assumptions.dry_season_tmax_c),
            night_c: Celsius(case.assumptions.dry_season_tmin_c),
        });
    }
    let periods: Vec<Period> = watering.on(bed.area).collect();
    tell_water(case, bed, (&periods, watering.bare), amounts);
    remarks.extend(case.source.as_ref().and_then(|source| dry_source(source, &periods, bed)));
    remarks.extend(heavy(case, bed, watering.peak(bed.area)));
    periods
}

/// Trips to the water for so many litres.
pub(super) fn trips(litres: f64, assumptions: &Assumptions) -> u32 {
    whole_up(litres / assumptions.litres_per_trip)
}

/// Hours of so many trips, of all who make them together.
pub(super) fn hours(trips: u32, assumptions: &Assumptions) -> f64 {
    round_up(f64::from(trips) * assumptions.minutes_per_trip / 60.0, 0.1)
}

fn tell_strips(bed: &Bed, a: &Assumptions, amounts: &mut Amounts) {
    let per_root_m2 = a.bed_area_per_root_m2;
    let &Bed { strips, path, .. } = bed;
    amounts.add(Quantity::BedArea, bed.area.0, AmountReason::BedArea { per_root_m2 });
    amounts.add(Quantity::BedLength, bed.length().0, AmountReason::BedLength { strips });
    let width = AmountReason::BedWidth { strips, path_m: path, most_m: a.bed_width_m };
    amounts.add(Quantity::BedWidth, bed.width().0, width);
    if strips > 1 {
        let longest_m = a.bed_strip_length_m;
        amounts.add(Quantity::BedStrips, strips, AmountReason::BedStrips { longest_m });
        amounts.add(Quantity::StripLength, bed.strip_length.0, AmountReason::StripLength);
        let most_m = a.bed_width_m;
        amounts.add(Quantity::StripWidth, bed.strip_width.0, AmountReason::StripWidth { most_m });
        amounts.add(Quantity::BedPath, path.0, AmountReason::BedPath);
    }
    let between_cm = bed.between_rows;
    let rows = AmountReason::BedRows { between_cm, strips, per_strip: bed.rows_per_strip };
    amounts.add(Quantity::BedRows, bed.rows(), rows);
    let along = AmountReason::RootsPerBedRow { along_cm: bed.along_row };
    amounts.add(Quantity::RootsPerBedRow, bed.roots_per_row, along);
}

/// Tells the water; that until shoots show where the bed is still `bare`.
fn tell_water(case: &Case, bed: &Bed, (periods, bare): (&[Period], bool), amounts: &mut Amounts) {
    let a = &case.assumptions;
    let thirstiest = periods.iter().fold(None, |most: Option<&Period>, period| match most {
        Some(most) if most.daily.0 >= period.daily.0 => Some(most),
        _ => Some(period),
    });
    let (Some(most), Some(first), Some(last)) = (thirstiest, periods.first(), periods.last()) else { return };
    // As exact as the weather is known.
    let rounded = |value: f64, scale: f64| (value * scale).round() / scale;
    if bare {
        let soil = case.soil.map_or("unknown", |soil| soil.name());
        let days = a.shoots_days;
        let every = AmountReason::WateringUntilShoots { soil, days };
        amounts.add(Quantity::WateringDaysUntilShoots, first.every_days, every);
        let each = AmountReason::WaterUntilShoots {
            days: first.every_days,
            bed_m2: bed.area,
            kc: rounded(first.kc, 100.0),
            et0_mm: rounded(first.et0.0, 10.0),
        };
        amounts.add(Quantity::WaterUntilShoots, first.each_time.0, each);
    }
    amounts.add(
        Quantity::WaterPerDay,
        most.daily.0,
        AmountReason::WaterPerDay {
            from: most.when.from,
            bed_m2: bed.area,
            kc: rounded(most.kc, 100.0),
            et0_mm: rounded(most.et0.0, 10.0),
            method: case.climate_or_usual().method(),
            rain_mm: rounded(most.rain.0, 10.0),
            reaching: (a.watering_efficiency * 100.0).round(),
        },
    );
    let (jerrycan, trip) = (a.jerrycan_l, a.litres_per_trip);
    amounts.add(
        Quantity::JerrycansPerDay,
        whole_up(most.daily.0 / jerrycan),
        AmountReason::JerrycansPerDay { litres: jerrycan },
    );
    let trips = trips(most.daily.0, a);
    amounts.add(Quantity::TripsPerDay, trips, AmountReason::TripsPerDay { litres: trip });
    let minutes = a.minutes_per_trip;
    amounts.add(Quantity::WaterHours, hours(trips, a), AmountReason::WaterHours { trips, minutes });
    amounts.add(
        Quantity::WaterTotal,
        periods.iter().map(|period| period.total().0).sum::<f64>(),
        AmountReason::WaterTotal { from: first.when.from, to: last.when.to },
    );
}

/// A remark where the source named cannot give the bed's water.
fn dry_source(source: &Source, periods: &[Period], bed: &Bed) -> Option<Remark> {
    let short = source.shortage(periods)?;
    Some(Remark::WaterShort {
        source: source.name.clone(),
        from: short.first.from,
        gives: (short.share * 100.0).floor(),
        bed_m2: SquareMetres(tenths_down(bed.area.0 * short.share)),
    })
}

/// A remark where the bed takes more trips to the water than those who carry can keep up.
fn heavy(case: &Case, bed: &Bed, peak: f64) -> Option<Remark> {
    let a = &case.assumptions;
    let usual = Hands { people: whole_up(a.water_people), hours_per_day: a.water_hours_per_day };
    let hands = case.hands.unwrap_or(usual);
    let (needed, possible) = (trips(peak, a), hands.trips(a));
    if needed <= possible {
        return None;
    }
    let share = f64::from(possible) * a.litres_per_trip / peak;
    let roots = whole_down(f64::from(bed.roots) * share);
    let hours = hours(needed, a);
    Some(Remark::WaterHeavy {
        litres: peak,
        trips: needed,
        hours: round_up(hours, 1.0),
        people: hands.people,
        hours_each: round_up(hours / f64::from(hands.people.max(1)), 0.1),
        most_hours: hands.hours_per_day,
        roots,
        bed_m2: SquareMetres(tenths_down(f64::from(roots) * a.bed_area_per_root_m2)),
    })
}
