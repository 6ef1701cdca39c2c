//! The daily records that a case may name.

use std::ops::RangeInclusive;

use chrono::NaiveDate;

use super::daily::{self, Measure};
use super::headings::{DateLayout, Headings};
use crate::finding::{Code, Finding};
use crate::plan::Celsius;
use crate::plan::season::RainRecord;

/// More rain than any day on record has seen, mm, and more than all but the worst storms bring.
const MOST_MM: f64 = 2000.0;
const UNUSUAL_MM: f64 = 400.0;
/// Colder and hotter than any farm.
const TEMPERATURES: RangeInclusive<f64> = -60.0..=60.0;
const GREATEST: [&str; 7] =
    ["tmax", "t max", "temp max", "max temp", "max", "maximum temperature", "max temperature"];
const LEAST: [&str; 7] =
    ["tmin", "t min", "temp min", "min temp", "min", "minimum temperature", "min temperature"];

/// Reads a daily rainfall record: a date, and `mm` (or `rain`, `Rainfall (mm)`, `precipitation`, …).
/// Trace amounts count as 0 mm. The layouts of dates and cells are those of all daily records: dates as
/// year-month-day, or with the year last where the rows or `layout` tell day from month; cells parted by
/// commas, semicolons or tabs.
///
/// All problems come back, each with its row; notes say how much was missing.
pub fn read_rain(name: &str, bytes: &[u8], layout: Option<DateLayout>) -> (RainRecord, Vec<Finding>) {
    let rain = Measure {
        headings: Headings {
            names: &["rain", "rainfall", "precipitation", "precip", "prcp"],
            units: &["mm", "millimetre", "millimetres", "millimeter", "millimeters"],
            unit_alone: true,
        },
        field: "mm",
        noun: "an amount of rain",
        hint: "write millimetres from 0; leave the cell empty where nothing was measured",
        possible: 0.0..=MOST_MM,
        unusual: UNUSUAL_MM,
        trace: true,
    };
    let (days, findings) = daily::read(name, bytes, layout, &[rain]);
    let known = days.into_iter().filter_map(|(date, [rain])| rain.map(|rain| (date, rain)));
    (RainRecord::from_days(known), findings)
}

/// A day with its greatest and least temperature.
pub type TemperatureDay = (NaiveDate, Celsius, Celsius);

/// Reads a daily temperature record: a date, `tmax` and `tmin` in °C. Layouts as in [`read_rain`].
///
/// All problems come back, each with its row; days without both values are left out, and a note says how many.
pub fn read_temperatures(
    name: &str,
    bytes: &[u8],
    layout: Option<DateLayout>,
) -> (Vec<TemperatureDay>, Vec<Finding>) {
    let measure = |names, field, noun| Measure {
        headings: Headings { names, units: &["c", "celsius"], unit_alone: false },
        field,
        noun,
        hint: "write degrees Celsius; leave the cell empty where nothing was measured",
        possible: TEMPERATURES,
        unusual: f64::INFINITY,
        trace: false,
    };
    let most = measure(&GREATEST, "tmax", "a greatest temperature");
    let least = measure(&LEAST, "tmin", "a least temperature");
    let (days, mut findings) = daily::read(name, bytes, layout, &[most, least]);
    let mut known = Vec::with_capacity(days.len());
    let mut crossed = Vec::new();
    for (date, values) in days {
        match values {
            [Some(most), Some(least)] if most < least => crossed.push(date),
            [Some(most), Some(least)] => known.push((date, Celsius(most), Celsius(least))),
            _ => {}
        }
    }
    if let Some(first) = crossed.first() {
        let message = format!(
            "on {} days the greatest temperature lies below the least, first on {first}",
            crossed.len()
        );
        let finding = Finding::error(Code::WRONG_ORDER, message).file(name).field("tmax");
        findings.push(finding.hint("check whether the two columns are swapped"));
    }
    (known, findings)
}
