//! Onset of the rains.

use chrono::NaiveDate;
use kabla::plan::season::{MonthDay, Onset, OnsetRule, RainRecord, Window, percentile};

use crate::expected::rows;

fn seattle() -> RainRecord {
    let days = rows("seattle-onset", "seattle-weather.csv").into_iter().map(|row| {
        let date = NaiveDate::parse_from_str(&row["date"], "%Y/%m/%d").unwrap();
        (date, row["precipitation"].parse().unwrap())
    });
    RainRecord::from_days(days)
}

fn day(text: &str) -> MonthDay {
    text.parse().unwrap()
}

#[test]
fn onsets_and_totals_of_an_open_record() {
    let record = seattle();
    let window = Window { from: day("08-01"), until: day("12-31") };
    for (column, total_mm) in [("onset_20mm", 20.0), ("onset_25mm", 25.0)] {
        let rule = OnsetRule::Total {
            name: "handbook",
            total_mm,
            days: 3,
            rain_days: 1,
            look_ahead: 30,
            dry_spell: 6,
            rain_day_mm: 1.0,
        };
        let onsets = record.onsets(&rule, &window);
        let expected = rows("seattle-onset", "cases.csv");
        assert_eq!(onsets.len(), expected.len());
        for (onset, row) in onsets.iter().zip(expected) {
            let found = match onset.onset {
                Onset::On(date) => date.to_string(),
                Onset::None => "none".to_owned(),
                Onset::Unknown => "unknown".to_owned(),
            };
            assert_eq!(
                (onset.year.to_string(), found),
                (row["year"].clone(), row[column].clone()),
                "{column}"
            );
            let total: f64 = row["total_mm"].parse().unwrap();
            assert!((record.total(onset.year) - total).abs() < 0.05);
        }
    }
}

#[test]
fn percentiles_as_numpy_has_them() {
    for row in rows("percentiles", "cases.csv") {
        let values: Vec<f64> = row["values"].split(';').map(|value| value.parse().unwrap()).collect();
        let expected: f64 = row["expected"].parse().unwrap();
        let found = percentile(&values, row["percent"].parse().unwrap()).unwrap();
        assert!((found - expected).abs() < 1e-9, "{row:?}: {found}");
    }
    assert_eq!(percentile(&[], 50.0), None);
    assert_eq!(percentile(&[1.0, f64::NAN], 50.0), None);
}

#[test]
fn missing_days_make_a_year_unknown_not_dry() {
    let date = |month, day| NaiveDate::from_ymd_opt(2020, month, day).unwrap();
    let window = Window { from: day("10-01"), until: day("10-31") };
    // Dry but for one wet spell; day 20 is missing, before any onset.
    let days = (1..=31).filter(|d| *d != 20).map(|d| (date(10, d), if d == 25 { 40.0 } else { 0.0 }));
    let record = RainRecord::from_days(days);
    let onsets = record.onsets(&OnsetRule::FIRST_TOTAL, &window);
    assert_eq!(onsets.len(), 1);
    assert_eq!(onsets[0].onset, Onset::Unknown);
}

#[test]
fn each_rule_sees_what_it_is_for() {
    let date = |month, day| NaiveDate::from_ymd_opt(2021, month, day).unwrap();
    let window = Window { from: day("10-01"), until: day("12-31") };
    // 22 mm on 5 October, then nothing until steady rain from 11 November.
    let start = date(9, 1);
    let record = RainRecord::from_days((0..180).map(|offset| {
        let day = start + chrono::Days::new(offset);
        let rain = if day == date(10, 5) {
            22.0
        } else if day >= date(11, 11) {
            6.0
        } else {
            0.0
        };
        (day, rain)
    }));
    let onset = |rule: OnsetRule| record.onsets(&rule, &window)[0].onset;
    assert_eq!(onset(OnsetRule::FIRST_TOTAL), Onset::On(date(10, 5)), "the false start");
    assert_eq!(onset(OnsetRule::THREE_DAY), Onset::None, "6 mm a day are 18 mm in three days");
    assert_eq!(onset(OnsetRule::FIVE_DAY), Onset::On(date(11, 11)));
    assert_eq!(onset(OnsetRule::DEKAD), Onset::On(date(11, 11)));
}

#[test]
fn windows_may_cross_the_year() {
    let window = Window { from: day("11-15"), until: day("02-28") };
    let (from, until) = window.in_year(2023).unwrap();
    assert_eq!((from.to_string(), until.to_string()), ("2023-11-15".to_owned(), "2024-02-28".to_owned()));
    assert_eq!(day("02-29").in_year(2023).unwrap().to_string(), "2023-02-28");
    assert!("02-30".parse::<MonthDay>().is_err());
}
