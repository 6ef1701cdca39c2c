//! Daily rainfall as a CSV text with a date and a millimetre column.

use std::collections::BTreeMap;

use chrono::NaiveDate;

use crate::finding::Finding;
use crate::plan::season::RainRecord;

/// More rain than any day on record has seen, mm.
const MOST_MM: f64 = 2000.0;

/// Codes that stand for "not measured".
const MISSING: [&str; 7] = ["", "-", "na", "nan", "-99", "-999", "-9999"];

/// Reads a daily rainfall record: a header row that names the columns `date`
/// and `mm`, then a row a day, dates as year-month-day, decimal points.
///
/// Days without a row and missing-value codes leave the day unknown. All
/// problems come back, each with its row.
pub fn read_rain(name: &str, bytes: &[u8]) -> (RainRecord, Vec<Finding>) {
    let mut findings = Vec::new();
    let Ok(text) = std::str::from_utf8(bytes) else {
        let finding = Finding::error("is not UTF-8 text").file(name).hint("save the table as CSV in UTF-8");
        return (RainRecord::default(), vec![finding]);
    };
    let mut rows =
        text.trim_start_matches('\u{feff}').lines().zip(1u32..).filter(|(row, _)| !row.trim().is_empty());
    let columns =
        rows.next().map(|(header, line)| (cells(header).map(str::to_lowercase).collect::<Vec<_>>(), line));
    let find = |wanted: &[&str]| {
        let (names, _) = columns.as_ref()?;
        names.iter().position(|name| wanted.contains(&name.as_str()))
    };
    let (Some(date_column), Some(mm_column)) = (find(&["date"]), find(&["mm", "rain_mm", "precipitation"]))
    else {
        let line = columns.as_ref().map_or(1, |(_, line)| *line);
        let finding =
            Finding::error("the first row does not name a date and a rain column").file(name).line(line);
        findings.push(finding.hint("write the header row: date,mm"));
        return (RainRecord::default(), findings);
    };
    let mut days: BTreeMap<NaiveDate, (f64, u32)> = BTreeMap::new();
    for (row, line) in rows {
        let mut report = |message: String, field: &str, hint: &str| {
            findings.push(Finding::error(message).file(name).line(line).field(field).hint(hint));
        };
        let row: Vec<&str> = cells(row).collect();
        let (Some(date), Some(mm)) = (row.get(date_column), row.get(mm_column)) else {
            report("the row has too few cells".to_owned(), "date", "give every row a date and a rain amount");
            continue;
        };
        let date = match NaiveDate::parse_from_str(date, "%Y-%m-%d") {
            Ok(parsed) if date.len() == "2019-04-30".len() => parsed,
            _ => {
                report(format!("{date} is not a date of the calendar"), "date", "write dates as 2019-04-30");
                continue;
            }
        };
        if MISSING.contains(&mm.to_lowercase().as_str()) {
            continue;
        }
        match mm.parse::<f64>() {
            Ok(rain) if (0.0..=MOST_MM).contains(&rain) => {
                if let Some((_, earlier)) = days.insert(date, (rain, line)) {
                    report(
                        format!("{date} stands in row {earlier} already"),
                        "date",
                        "keep one row for each day",
                    );
                }
            }
            _ => report(
                format!("{mm} is not an amount of rain"),
                "mm",
                "write millimetres from 0 with a decimal point; leave the cell empty where nothing was measured",
            ),
        }
    }
    if days.is_empty() && findings.is_empty() {
        findings
            .push(Finding::error("has no day with a rain amount").file(name).hint("give a row for each day"));
    }
    (RainRecord::from_days(days.into_iter().map(|(date, (rain, _))| (date, rain))), findings)
}

fn cells(row: &str) -> impl Iterator<Item = &str> {
    row.split(',').map(|cell| cell.trim().trim_matches('"').trim())
}
