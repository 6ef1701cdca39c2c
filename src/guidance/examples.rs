//! Each consequence once, as it is read while its phrases are recorded.

use chrono::NaiveDate;

use super::Statement;
use super::tell::consequences;
use crate::plan::{Remark, SquareMetres, Years};

/// Each consequence as plausible farms have it, and again where a number asks for other words.
pub fn consequence_examples() -> Vec<Statement> {
    let day = |year, month, day| NaiveDate::from_ymd_opt(year, month, day).unwrap_or_default();
    let (harvest, bed, rains) = (day(2027, 6, 10), day(2027, 9, 30), day(2027, 11, 25));
    let (first_m2, area_m2, field_m2) = (93.0, 315.0, 450.0);
    let remarks = [
        Remark::LateWork { steps: 1, today: bed, field_from: rains, days_later: 13, fewer: 430 },
        Remark::FastLoss { day: harvest, healthy: 34, roots: 40, expected: 38, worst: 37, next: "check" },
        Remark::LimitedAtHand {
            limit: "plants",
            roots: 28,
            wanted: 40,
            lacking: 16.0,
            first_m2,
            area_m2,
            field_m2,
        },
        Remark::ContainersTooSmall {
            left_over: 12,
            roots: 40,
            more: 1,
            fit: 28,
            first_m2,
            area_m2,
            field_m2,
        },
        Remark::SandShort {
            has_l: 60.0,
            needs_l: 80.0,
            more_l: 20,
            fit: 28,
            roots: 40,
            first_m2,
            area_m2,
            field_m2,
        },
        Remark::WaterLimits {
            source: String::new(),
            from: rains,
            per: "day",
            gives_l: 60.0,
            needs_l: 120.0,
            more_l: 60,
            bed_m2: SquareMetres(7.0),
            fit: 28,
            roots: 40,
            first_m2,
            area_m2,
            field_m2,
        },
        Remark::HandsShort {
            people: 1,
            hours_each: 2.0,
            trips: 12,
            hours: 4.0,
            bed_m2: SquareMetres(7.0),
            fit: 28,
            roots: 40,
            first_m2,
            area_m2,
            field_m2,
        },
        Remark::WaterShort { source: String::new(), from: rains, gives: 60.0, bed_m2: SquareMetres(7.0) },
        Remark::WaterHeavy {
            litres: 280.0,
            trips: 14,
            hours: 5.0,
            people: 2,
            hours_each: 2.5,
            most_hours: 2.0,
            roots: 70,
            bed_m2: SquareMetres(26.0),
        },
        Remark::RainsTooSoon { rains: bed, bed: harvest },
        Remark::StoringNotNeeded { days: 70, from: harvest, rains: bed, kept_days: 90.0, two_seasons: "no" },
        Remark::LongInSand { days: 190, evidence_days: 150.0 },
        Remark::BedLate { cut: rains, came: "no", onset: bed },
        Remark::FieldWaits {
            cuttings: 750,
            low: 280,
            high: 1800,
            area_m2: 200.0,
            field_m2,
            least_days: 28.0,
            most_days: 42.0,
            roots: 210,
        },
        Remark::CuttingsShort {
            short: 480,
            cuttings: 1500,
            area_m2: 300.0,
            field_m2,
            later_cuts: 2,
            least_days: 28.0,
            most_days: 42.0,
            still_short: 51,
        },
        Remark::RainsTooShort {
            planted: rains,
            most_days: 120.0,
            of_100: 30.0,
            known: "record",
            usual_days: 90.0,
            end: day(2028, 2, 20),
            helps: "quicker",
            early_days: 105.0,
            early_of_100: 60.0,
        },
        Remark::CutsTooLate {
            cut: 3,
            more: 0,
            from: day(2028, 1, 20),
            to: day(2028, 3, 2),
            ripe: day(2028, 5, 19),
            of_100: 10.0,
            known: "record",
            end: day(2028, 4, 20),
            counted: "no",
        },
        Remark::RainsMayBeLate { onset: bed, late: rains },
        Remark::YearsWithoutRains { count: 3, judged: 19, years: Years(vec![2008, 2009, 2021]) },
    ];
    // What is said otherwise by a number.
    let others = [
        Remark::LateWork { steps: 1, today: bed, field_from: rains, days_later: 13, fewer: 0 },
        Remark::ContainersTooSmall {
            left_over: 12,
            roots: 40,
            more: 0,
            fit: 28,
            first_m2,
            area_m2,
            field_m2,
        },
        Remark::CuttingsShort {
            short: 480,
            cuttings: 1500,
            area_m2: 300.0,
            field_m2,
            later_cuts: 0,
            least_days: 28.0,
            most_days: 42.0,
            still_short: 480,
        },
    ];
    consequences(&remarks, None).chain(consequences(&others, None)).collect()
}
