//! The bed's climate, and where its water comes from.

use super::given::{Open, open_named, required};
use super::headings::DateLayout;
use super::records::read_temperatures;
use crate::finding::Code;
use crate::plan::seedbed::{Air, Climate, FEWEST_DAYS, Soil, Source as Spring};
use crate::plan::{Assumptions, Celsius, Hands, Litres, MetresPerSecond, Millimetres};
use crate::toml_reader::{Source, TomlTable};

pub(super) fn read_climate(source: &Source<'_>, table: TomlTable<'_>, open: Open<'_>) -> Option<Climate> {
    let given = table.is_given();
    let record = table.text("temperature_record");
    let from_record = record.and_then(|path| read_record(source, &table, &path, open));
    let monthly = read_monthly(&table, given && !table.has("temperature_record"));
    let air = read_air(&table);
    let rain = table.monthly("rain_mm", 0.0..=2000.0).map(|months| months.map(Millimetres));
    table.finish();
    let climate = from_record.or(monthly)?;
    Some(Climate { air, rain, ..climate })
}

/// Temperatures month by month.
fn read_monthly(table: &TomlTable<'_>, wanted: bool) -> Option<Climate> {
    let tmax = table.monthly("tmax_c", -30.0..=55.0);
    let tmin = table.monthly("tmin_c", -40.0..=45.0);
    if wanted {
        let hint = |which: &str| {
            format!(
                "write the mean {which} temperature of a day, once or for twelve months, or name a temperature_record"
            )
        };
        required(table, "tmax_c", &hint("greatest"), tmax);
        required(table, "tmin_c", &hint("least"), tmin);
    }
    if !wanted && (table.has("tmax_c") || table.has("tmin_c")) {
        let key = if table.has("tmax_c") { "tmax_c" } else { "tmin_c" };
        let message = "temperatures and temperature_record both stand here";
        table.problem(Code::CONFLICT, key, message, "keep one of them");
        return None;
    }
    let (tmax, tmin) = tmax.zip(tmin)?;
    if tmax.iter().zip(tmin.iter()).any(|(most, least)| most < least) {
        table.problem(
            Code::WRONG_ORDER,
            "tmax_c",
            "a greatest temperature lies below the least one",
            "check whether the two lines are swapped",
        );
    }
    Some(Climate { tmax: tmax.map(Celsius), tmin: tmin.map(Celsius), air: None, rain: None })
}

/// The monthly means of a daily record.
fn read_record(source: &Source<'_>, table: &TomlTable<'_>, path: &str, open: Open<'_>) -> Option<Climate> {
    let layouts = [("day-first", DateLayout::DayFirst), ("month-first", DateLayout::MonthFirst)];
    let layout = table.choice("dates", &layouts);
    let bytes = open_named(table, "temperature_record", path, open)?;
    let (days, findings) = read_temperatures(path, &bytes, layout);
    let failed = findings.iter().any(crate::finding::Finding::is_error);
    for finding in findings {
        source.add_foreign(finding);
    }
    if failed {
        return None;
    }
    match Climate::of_days(&days) {
        Ok(climate) => Some(climate),
        Err(months) => {
            let months: Vec<String> = months.iter().map(u32::to_string).collect();
            table.problem(
                Code::SHORT_RECORD,
                "temperature_record",
                format!("{path} has fewer than {FEWEST_DAYS} days in these months: {}", months.join(", ")),
                "complete the record, or write tmax_c and tmin_c instead",
            );
            None
        }
    }
}

/// Humidity, wind and sunshine: all three, or none.
fn read_air(table: &TomlTable<'_>) -> Option<Air> {
    const FIELDS: [&str; 3] = ["humidity_percent", "wind_m_s", "sunshine_h"];
    let humidity = table.monthly("humidity_percent", 1.0..=100.0);
    let wind = table.monthly("wind_m_s", 0.0..=20.0);
    let sunshine_hours = table.monthly("sunshine_h", 0.0..=24.0);
    if FIELDS.iter().any(|field| table.has(field)) {
        for field in FIELDS.iter().filter(|field| !table.has(field)) {
            let hint = "Penman–Monteith needs humidity_percent, wind_m_s (2 m above ground) and sunshine_h; take them out for Hargreaves";
            table.missing(field, hint);
        }
    }
    Some(Air { humidity: humidity?, wind: wind?.map(MetresPerSecond), sunshine_hours: sunshine_hours? })
}

/// The soil of the bed.
pub(super) fn read_soil(table: TomlTable<'_>) -> Option<Soil> {
    let soil = table.choice("soil", &Soil::NAMED);
    if table.is_given() && !table.has("soil") {
        table.missing("soil", "write soil = \"sand\", \"loam\" or \"clay\"");
    }
    table.finish();
    soil
}

/// Who carries the bed's water; what is not said is as usual.
pub(super) fn read_hands(table: TomlTable<'_>, assumptions: &Assumptions) -> Option<Hands> {
    let people = table.whole("people", 1..=1000);
    let hours = table.number("hours_per_day", 0.1..=24.0);
    if table.is_given() && !table.has("people") && !table.has("hours_per_day") {
        table.missing("people", "write how many carry water: people = 2; or hours_per_day = 2");
    }
    let given = table.is_given();
    table.finish();
    given.then(|| Hands {
        people: people.unwrap_or(assumptions.water_people.round().max(1.0) as u32),
        hours_per_day: hours.unwrap_or(assumptions.water_hours_per_day),
    })
}

/// Where the bed's water comes from, and what it can give.
pub(super) fn read_source(table: TomlTable<'_>) -> Option<Spring> {
    if !table.is_given() {
        return None;
    }
    let name = required(
        &table,
        "source",
        "name where the water comes from: source = \"the dug well\"",
        table.text("source"),
    );
    let daily = table.monthly("litres_per_day", 0.0..=1e7);
    let stored = table.number("stored_litres", 0.0..=1e9);
    if !table.has("litres_per_day") && !table.has("stored_litres") {
        let hint =
            "write litres_per_day, once or for twelve months; or stored_litres where nothing refills it";
        table.missing("litres_per_day", hint);
    }
    table.finish();
    Some(Spring { name: name?, daily: daily.map(|months| months.map(Litres)), stored: stored.map(Litres) })
}
