//! Daily rainfall as people keep it: a table with a date and an amount.
//!
//! What a table says in its own way is read where it can mean one thing only,
//! and reported where it could mean two: nothing is guessed.

use std::collections::BTreeMap;

use chrono::NaiveDate;
use csv::StringRecord;

use crate::finding::Finding;
use crate::plan::season::RainRecord;

/// More rain than any day on record has seen, mm.
const MOST_MM: f64 = 2000.0;
/// More than all but the worst storms bring; worth a look, mm.
const UNUSUAL_MM: f64 = 400.0;
/// Gaps that are listed one by one.
const MOST_GAPS: usize = 5;

/// Codes that stand for "not measured".
const MISSING: [&str; 12] =
    ["", "-", "na", "n/a", "nan", "null", "m", "-99", "-99.9", "-999", "-9999", "-9999.0"];
/// Codes that stand for rain too little to be measured.
const TRACE: [&str; 3] = ["t", "tr", "trace"];

const DATE_COLUMNS: [&str; 2] = ["date", "day_date"];
const RAIN_COLUMNS: [&str; 8] =
    ["mm", "rain", "rain_mm", "rainfall", "rainfall_mm", "precipitation", "precipitation_mm", "prcp"];

/// How dates with the year last are read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DateLayout {
    /// 30/4/2019
    DayFirst,
    /// 4/30/2019
    MonthFirst,
}

/// Reads a daily rainfall record.
///
/// The first row names the columns: `date`, or `year`, `month` and `day`; and `mm`
/// (or `rain`, `rainfall`, `precipitation`, …). Cells are parted by commas,
/// semicolons or tabs; with the latter two, decimals may have a comma. Dates
/// are year-month-day, or have the year last: then the rows themselves must
/// tell day from month, or `layout` does. Trace amounts count as 0 mm.
/// Missing-value codes and days without a row leave the day unknown.
///
/// All problems come back, each with its row; notes say how much was missing.
pub fn read_rain(name: &str, bytes: &[u8], layout: Option<DateLayout>) -> (RainRecord, Vec<Finding>) {
    let fail = |finding: Finding| (RainRecord::default(), vec![finding.file(name)]);
    let Ok(text) = std::str::from_utf8(bytes) else {
        return fail(Finding::error("is not UTF-8 text").hint("save the table as CSV in UTF-8"));
    };
    let text = text.trim_start_matches('\u{feff}');
    let delimiter = delimiter_of(text);
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(delimiter)
        .flexible(true)
        .trim(csv::Trim::All)
        .from_reader(text.as_bytes());
    let header = reader.headers().cloned().unwrap_or_default();
    let Some(columns) = Columns::of(&header) else {
        let finding = Finding::error("the first row does not name a date and a rain column").line(1);
        return fail(finding.hint("write the header row: date,mm (or year,month,day,mm)"));
    };
    let mut table = Table {
        name,
        decimal_comma: delimiter != b',',
        findings: Vec::new(),
        rows: Vec::new(),
        traces: Vec::new(),
    };
    for record in reader.records() {
        match record {
            Ok(record) => table.row(&record, &columns),
            Err(error) => {
                let line = error.position().map_or(1, csv::Position::line);
                table.report(line, "date", error.to_string(), "mend the row");
            }
        }
    }
    table.finish(layout)
}

/// What parts the cells: the first of tab and semicolon that the header has, or a comma.
fn delimiter_of(text: &str) -> u8 {
    let header = text.lines().next().unwrap_or_default();
    if header.contains('\t') {
        b'\t'
    } else if header.contains(';') {
        b';'
    } else {
        b','
    }
}

/// Where the cells stand in a row.
struct Columns {
    date: Dates,
    rain: usize,
}

enum Dates {
    One(usize),
    Three(usize, usize, usize),
}

impl Columns {
    fn of(header: &StringRecord) -> Option<Columns> {
        let names: Vec<String> = header.iter().map(str::to_lowercase).collect();
        let find = |wanted: &[&str]| names.iter().position(|name| wanted.contains(&name.as_str()));
        let date = find(&DATE_COLUMNS)
            .map(Dates::One)
            .or_else(|| Some(Dates::Three(find(&["year"])?, find(&["month"])?, find(&["day"])?)))?;
        Some(Columns { date, rain: find(&RAIN_COLUMNS)? })
    }
}

/// A date as it stands in a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Written {
    Known(NaiveDate),
    /// Two numbers and a year: day and month in one order or the other.
    YearLast(u32, u32, i32),
}

impl Written {
    fn read(text: &str) -> Option<Written> {
        let parts: Vec<&str> = text.split(['-', '/', '.']).collect();
        let [first, second, third] = parts.as_slice() else { return None };
        let digits =
            |part: &str| part.bytes().all(|byte| byte.is_ascii_digit()).then(|| part.parse().ok()).flatten();
        let (a, b, c): (u32, u32, u32) = (digits(first)?, digits(second)?, digits(third)?);
        match (first.len(), third.len()) {
            (4, 1..=2) => NaiveDate::from_ymd_opt(i32::try_from(a).ok()?, b, c).map(Written::Known),
            (1..=2, 4) => {
                let written = Written::YearLast(a, b, i32::try_from(c).ok()?);
                let possible =
                    [DateLayout::DayFirst, DateLayout::MonthFirst].map(|layout| written.date(Some(layout)));
                possible.iter().any(Option::is_some).then_some(written)
            }
            _ => None,
        }
    }

    fn date(self, layout: Option<DateLayout>) -> Option<NaiveDate> {
        match (self, layout) {
            (Written::Known(date), _) => Some(date),
            (Written::YearLast(day, month, year), Some(DateLayout::DayFirst))
            | (Written::YearLast(month, day, year), Some(DateLayout::MonthFirst)) => {
                NaiveDate::from_ymd_opt(year, month, day)
            }
            (Written::YearLast(..), None) => None,
        }
    }
}

/// The rows read so far.
struct Table<'n> {
    name: &'n str,
    decimal_comma: bool,
    findings: Vec<Finding>,
    /// Line, date as written, and rain: `None` where it was not measured.
    rows: Vec<(u64, Written, Option<f64>)>,
    /// Lines with a trace of rain.
    traces: Vec<u64>,
}

impl Table<'_> {
    fn add(&mut self, line: u64, finding: Finding) {
        self.findings.push(finding.file(self.name).line(u32::try_from(line).unwrap_or(u32::MAX)));
    }

    fn report(&mut self, line: u64, field: &str, message: impl Into<String>, hint: &str) {
        self.add(line, Finding::error(message).field(field).hint(hint));
    }

    fn row(&mut self, record: &StringRecord, columns: &Columns) {
        let line = record.position().map_or(1, csv::Position::line);
        let cell = |column: usize| record.get(column);
        let date = match columns.date {
            Dates::One(column) => cell(column).map(|text| (text.to_owned(), Written::read(text))),
            Dates::Three(year, month, day) => {
                cell(year).zip(cell(month)).zip(cell(day)).map(|((year, month), day)| {
                    let text = format!("{year}-{month}-{day}");
                    let date = Written::read(&text);
                    (text, date)
                })
            }
        };
        let (Some((text, date)), Some(rain)) = (date, cell(columns.rain)) else {
            return self.report(
                line,
                "date",
                "the row has too few cells",
                "give every row a date and a rain amount",
            );
        };
        let rain = self.rain(line, rain);
        match date {
            Some(date) => self.rows.extend(rain.map(|rain| (line, date, rain))),
            None => self.report(
                line,
                "date",
                format!("{text} is not a date of the calendar"),
                "write dates as 2019-04-30",
            ),
        }
    }

    /// The amount of a cell; the inner `None` where it was not measured.
    fn rain(&mut self, line: u64, text: &str) -> Option<Option<f64>> {
        let plain = text.to_lowercase();
        if MISSING.contains(&plain.as_str()) {
            return Some(None);
        }
        if TRACE.contains(&plain.as_str()) {
            self.traces.push(line);
            return Some(Some(0.0));
        }
        let plain = if self.decimal_comma { plain.replace(',', ".") } else { plain };
        match plain.parse::<f64>() {
            Ok(rain) if (0.0..=MOST_MM).contains(&rain) => {
                if rain > UNUSUAL_MM {
                    let finding = Finding::warning(format!("{rain} mm in a day is very much")).field("mm");
                    self.add(line, finding.hint("check the decimal point"));
                }
                Some(Some(rain))
            }
            _ => {
                let hint = "write millimetres from 0; leave the cell empty where nothing was measured";
                self.report(line, "mm", format!("{text} is not an amount of rain"), hint);
                None
            }
        }
    }

    fn finish(mut self, layout: Option<DateLayout>) -> (RainRecord, Vec<Finding>) {
        let layout = layout.or_else(|| self.find_layout());
        let mut days: BTreeMap<NaiveDate, (Option<f64>, u64)> = BTreeMap::new();
        for (line, written, rain) in std::mem::take(&mut self.rows) {
            let Some(date) = written.date(layout) else {
                if layout.is_some() {
                    self.report(
                        line,
                        "date",
                        "day and month stand the other way round here",
                        "write all dates in one way",
                    );
                }
                continue;
            };
            match days.get(&date) {
                Some((before, first)) if *before == rain => {
                    let message = format!("{date} stands in row {first} already, with the same amount");
                    self.add(line, Finding::warning(message).field("date").hint("take one of the rows out"));
                }
                Some((_, first)) => {
                    let message = format!("{date} stands in row {first} already, with another amount");
                    self.report(line, "date", message, "keep the row that is right");
                }
                None => {
                    days.insert(date, (rain, line));
                }
            }
        }
        self.note_missing(&days);
        if days.is_empty() && !self.findings.iter().any(Finding::is_error) {
            self.report(1, "date", "has no day with a rain amount", "give a row for each day");
        }
        self.findings.sort_by_key(|finding| finding.place.line);
        let known = days.into_iter().filter_map(|(date, (rain, _))| rain.map(|rain| (date, rain)));
        (RainRecord::from_days(known), self.findings)
    }

    /// Day or month first, where the rows tell; a finding where they do not.
    fn find_layout(&mut self) -> Option<DateLayout> {
        let rows = self.rows.iter().filter(|(_, written, _)| matches!(written, Written::YearLast(..)));
        let only = |layout: DateLayout, other: DateLayout| {
            let rows = rows.clone().map(|(line, written, _)| (*line, *written));
            rows.into_iter()
                .find(|(_, written)| {
                    written.date(Some(layout)).is_some() && written.date(Some(other)).is_none()
                })
                .map(|(line, _)| line)
        };
        let day_first = only(DateLayout::DayFirst, DateLayout::MonthFirst);
        let month_first = only(DateLayout::MonthFirst, DateLayout::DayFirst);
        let first = rows.clone().map(|(line, ..)| *line).next()?;
        match (day_first, month_first) {
            (Some(_), None) => Some(DateLayout::DayFirst),
            (None, Some(_)) => Some(DateLayout::MonthFirst),
            (Some(day), Some(month)) => {
                let message = format!("the day comes first in row {day}, the month in row {month}");
                self.report(
                    day.min(month),
                    "date",
                    message,
                    "write all dates in one way, best as 2019-04-30",
                );
                None
            }
            (None, None) => {
                let message = "no row tells whether the day or the month comes first";
                self.report(
                    first,
                    "date",
                    message,
                    "write dates as 2019-04-30, or say which it is (dates: day-first or month-first)",
                );
                None
            }
        }
    }

    /// Notes the days that were not measured, traces, and days that have no row.
    fn note_missing(&mut self, days: &BTreeMap<NaiveDate, (Option<f64>, u64)>) {
        let unmeasured: Vec<u64> =
            days.values().filter(|(rain, _)| rain.is_none()).map(|(_, line)| *line).collect();
        if let Some(first) = unmeasured.iter().min() {
            let message = format!("{} days have no amount, the first of them in this row", unmeasured.len());
            self.add(
                *first,
                Finding::note(message).field("mm").hint("they stay unknown; a dry day is written 0"),
            );
        }
        if let Some(first) = self.traces.first().copied() {
            let message =
                format!("{} traces of rain count as 0 mm, the first of them in this row", self.traces.len());
            self.add(first, Finding::note(message).field("mm"));
        }
        let mut gaps = 0;
        let mut before: Option<NaiveDate> = None;
        for (date, (_, line)) in days {
            let missing = before.map_or(0, |before| (*date - before).num_days() - 1);
            if let Some(before) = before.filter(|_| missing > 0) {
                gaps += 1;
                if gaps <= MOST_GAPS {
                    let message = format!("{missing} days have no row between {before} and {date}");
                    self.add(*line, Finding::note(message).field("date").hint("they stay unknown"));
                }
            }
            before = Some(*date);
        }
        if gaps > MOST_GAPS {
            self.add(1, Finding::note(format!("{} more gaps without rows", gaps - MOST_GAPS)).field("date"));
        }
    }
}
